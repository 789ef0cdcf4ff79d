use greenweight::units::{
    Amount, Mass, MassUnit, Measures, ReadError, Shown, ShownRange, Time, read_amount,
    read_concentration, read_duration, read_liquid_amount, read_mass, read_temperature,
    read_tolerance, show_duration, show_mass, show_mass_like,
};

const MEASURES: [Option<Measures>; 5] = [
    None,
    Some(Measures::UsCustomary),
    Some(Measures::Metric),
    Some(Measures::Imperial),
    Some(Measures::Australian),
];

/// How far two numbers may be apart and still be one, relative to a limit: as the
/// documentation of `Shown` says.
const SAME: f64 = 16.0 * f64::EPSILON;

/// A print gives at least four digits.
const FOUR_DIGITS: f64 = 5.1e-4;

/// Every reader on the text and on each of its lines; what is read is sound and can be
/// printed beside any limit without crossing it. Lines that are numbers, and what the
/// lines read as, are the values and the limits.
pub fn quantity(text: &str) {
    let mut numbers = read(text);
    if text.contains('\n') {
        numbers.extend(text.lines().take(6).flat_map(read));
    }
    numbers.truncate(8);
    for &value in &numbers {
        for limit in numbers.iter().copied().chain(near(value)) {
            shown_beside(value, limit);
            for &other in &numbers {
                range_beside(value, other, limit);
            }
        }
    }
}

/// Runs every reader; gives the numbers that were read.
fn read(text: &str) -> Vec<f64> {
    let mut numbers: Vec<f64> = text.trim().parse().ok().into_iter().collect();
    let mass = held(text, read_mass(text));
    if let Some(mass) = mass {
        sound(mass.value);
        numbers.push(MassUnit::Gram.count(mass));
        printed_mass(mass);
    }
    for measures in MEASURES {
        let amount = held(text, read_amount(text, measures));
        match amount {
            Some(Amount::Weighed(weighed)) => {
                assert_eq!(mass, Some(weighed), "two readers, one text: {text:?}");
            }
            Some(Amount::ByVolume(volume)) => {
                assert_eq!(mass, None, "a volume that is a weight: {text:?}");
                sound(volume.value);
            }
            None => assert_eq!(mass, None, "a weight that is no amount: {text:?}"),
        }
        if let Some(liquid) = held(text, read_liquid_amount(text, measures)) {
            assert_eq!(amount, Some(liquid), "two readers, one text: {text:?}");
        }
    }
    if let Some(level) = held(text, read_concentration(text)) {
        assert!((0.0..=1e6).contains(&level), "{level} mg/kg from {text:?}");
        numbers.push(level);
    }
    if let Some(reading) = held(text, read_temperature(text)) {
        let kelvin = reading.temperature().value;
        assert!((0.0..=1000.0).contains(&kelvin), "{kelvin} K from {text:?}");
        numbers.push(reading.value());
        let again = read_temperature(&reading.to_string()).expect("a printed reading is read");
        assert!((again.value() - reading.value()).abs() < 0.0051, "{reading:?} printed {again:?}");
    }
    if let Some(tolerance) = held(text, read_tolerance(text)) {
        assert!((0.0..=50.0).contains(&tolerance.value), "{} K from {text:?}", tolerance.value);
    }
    if let Some(range) = held(text, read_duration(text)) {
        for time in [range.low(), range.high()] {
            sound(time.value);
            numbers.push(time.value);
            printed_duration(time);
        }
        assert!(range.low() <= range.high(), "a falling range from {text:?}");
    }
    numbers
}

/// What was read; an error has its place in the text, and words.
fn held<T>(text: &str, read: Result<T, ReadError>) -> Option<T> {
    match read {
        Ok(value) => Some(value),
        Err(error) => {
            crate::lies_in(text, error.span().start, error.span().end);
            assert!(!error.to_string().is_empty());
            None
        }
    }
}

fn sound(value: f64) {
    assert!(value.is_finite() && value >= 0.0 && value.is_sign_positive(), "read as {value}");
}

/// A printed mass reads as the same mass, to the digits that are printed.
fn printed_mass(mass: Mass) {
    let kilograms = mass.value;
    for unit in [MassUnit::Gram, MassUnit::Kilogram, MassUnit::Ounce, MassUnit::Pound] {
        // Outside, a print has a power of ten or more digits than are read.
        if !(1e-6..9e8).contains(&unit.count(mass)) {
            continue;
        }
        for text in [show_mass(mass).to_string(), show_mass_like(mass, unit).to_string()] {
            if let Ok(again) = read_mass(&text) {
                let apart = (again.value - kilograms).abs();
                assert!(apart <= FOUR_DIGITS * kilograms, "{kilograms} kg printed {text}");
            } else {
                assert!(kilograms < 1e-8, "{kilograms} kg printed {text}, which is not read");
            }
        }
    }
}

/// A printed duration reads as the same, to the digits that are printed.
fn printed_duration(time: Time) {
    let text = show_duration(time).to_string();
    if time.value != 0.0 && !(1e-6..7e13).contains(&time.value) {
        return;
    }
    let again = read_duration(&text).expect("a printed duration is read");
    assert!(again.is_exact(), "{text}");
    let apart = (again.low().value - time.value).abs();
    assert!(apart <= 5.1e-4 + FOUR_DIGITS * time.value, "{} s printed {text}", time.value);
}

/// Numbers a few roundings and a few digits away from a value.
fn near(value: f64) -> impl Iterator<Item = f64> {
    let roundings = [0.0, 1.0, 15.0, 17.0, 33.0, 1000.0];
    let relative = roundings.into_iter().map(|n| n * f64::EPSILON).chain([1e-9, 1e-6, 1e-4, 1e-2]);
    relative.flat_map(move |part| [value * (1.0 + part), value * (1.0 - part)])
}

/// The print of `value` lies to the limit as `value` does.
fn on_its_side(printed: f64, value: f64, limit: f64) -> bool {
    if limit.is_nan() || value.is_nan() {
        return true;
    }
    let same = |a: f64| a == limit || (a - limit).abs() <= SAME * limit.abs();
    if limit.is_infinite() {
        return printed.is_finite() == value.is_finite();
    }
    match same(value) {
        true => same(printed),
        false => (printed > limit) == (value > limit) && printed != limit,
    }
}

fn shown_beside(value: f64, limit: f64) {
    let text = Shown::new(value, "g").beside(limit).to_string();
    let printed: f64 = text.strip_suffix(" g").and_then(|n| n.parse().ok()).expect("a number");
    assert!(on_its_side(printed, value, limit), "{value:?} beside {limit:?} printed {text}");
}

fn range_beside(one: f64, other: f64, limit: f64) {
    let text = ShownRange::new(one, other, "g").beside(limit).to_string();
    if one.is_nan() || other.is_nan() {
        return;
    }
    let (low, high) = (one.min(other), one.max(other));
    let ends = text.strip_suffix(" g").expect("a unit");
    let ends = ends.split_once(" to ").unwrap_or((ends, ends));
    let ends: [f64; 2] = [ends.0, ends.1].map(|end| end.parse().expect("a number"));
    assert!(ends[0] <= ends[1], "{low:?} to {high:?} printed {text}");
    assert!(
        on_its_side(ends[0], low, limit) && on_its_side(ends[1], high, limit),
        "{low:?} to {high:?} beside {limit:?} printed {text}"
    );
}
