use greenweight::authority::Authority;
use greenweight::cite::Cited;
use greenweight::cook::{
    self, Animals, Bird, ComeUp, Freezing, Hold, Lethality, Product, Resistance, Verdicts,
    food_code, freezing_row, hold_row, humidity_options as options_for, poultry_time,
};
use greenweight::food::Food;
use greenweight::trace::{Point, Segment, Track};
use greenweight::units::{
    Length, Reading, Scale, TemperatureInterval, Time, centimeters, hours, inches, minutes, pounds,
    read_tolerance, seconds,
};
use serde_json::json;

use super::case::{Answer, Case};
use super::cook::required_table;

fn fahrenheit(value: f64) -> Reading {
    Reading::new(value, Scale::Fahrenheit).unwrap()
}

fn celsius(value: f64) -> Reading {
    Reading::new(value, Scale::Celsius).unwrap()
}

fn table(case: &Case, name: &str) -> &'static [Cited<Hold>] {
    match case.word(name) {
        "food-code-2017-roast" => food_code(Authority::UsFoodCode2017, Food::WholeMeat, false),
        "food-code-2022-roast" => food_code(Authority::UsFoodCode2022, Food::WholeMeat, false),
        "food-code-2017-ground" => food_code(Authority::UsFoodCode2017, Food::GroundMeat, false),
        "food-code-2017-poultry" => food_code(Authority::UsFoodCode2017, Food::Casseroles, true),
        "food-code-2017-intact" => food_code(Authority::UsFoodCode2017, Food::Fish, false),
        "trichina" => &cook::TRICHINA_HEAT,
        other => panic!("{}: table {other}", case.key),
    }
}

pub fn hold(case: &Case) -> Answer {
    let row = hold_row(table(case, "table"), fahrenheit(case.number("fahrenheit"))).unwrap().value;
    let printed = row.temperature.on(Scale::Fahrenheit).value();
    Answer::from([("seconds", json!(row.time.value)), ("row_f", json!(printed))])
}

fn bird(case: &Case) -> Bird {
    match case.word("bird") {
        "chicken" => Bird::Chicken,
        "turkey" => Bird::Turkey,
        _ => Bird::Other,
    }
}

pub fn poultry(case: &Case) -> Answer {
    let reading = fahrenheit(case.number("fahrenheit"));
    let time = poultry_time(reading, bird(case), case.maybe("fat")).unwrap().unwrap();
    Answer::from([("seconds", json!(time.value))])
}

pub fn poultry_span(case: &Case) -> Answer {
    let reading = fahrenheit(case.number("fahrenheit"));
    let fats = (1..=12).map(f64::from);
    let times: Vec<f64> = [Bird::Chicken, Bird::Turkey]
        .iter()
        .flat_map(|&bird| {
            fats.clone()
                .map(move |fat| poultry_time(reading, bird, Some(fat)).unwrap().unwrap().value)
        })
        .collect();
    let least = times.iter().copied().fold(f64::INFINITY, f64::min);
    let most = times.iter().copied().fold(0.0, f64::max);
    Answer::from([("least_s", json!(least)), ("most_s", json!(most))])
}

/// Cases say what lies between their readings: a straight line.
fn ever() -> Time {
    seconds(f64::INFINITY)
}

fn verdicts(product: Product, at: Reading, time: f64) -> Verdicts {
    let exact = read_tolerance("0 °F").unwrap();
    let mut verdicts = Verdicts::new(product, exact, ever()).unwrap();
    for after in [0.0, time].iter().take(if time > 0.0 { 2 } else { 1 }) {
        verdicts.next(Point::new(seconds(*after), at).unwrap()).unwrap();
    }
    verdicts
}

pub fn held(case: &Case) -> Answer {
    let product = match case.word("product") {
        "meat" => Product::Meat,
        _ => Product::Table(table(case, "product")),
    };
    let at = fahrenheit(case.number("fahrenheit"));
    let verdicts = verdicts(product, at, case.number("seconds"));
    let asks = match product {
        Product::Table(rows) => hold_row(rows, at).map(|row| row.value.time.value),
        _ => None,
    };
    Answer::from([("meets", json!(verdicts.met().next().is_some())), ("asks_s", json!(asks))])
}

pub fn reheat(case: &Case) -> Answer {
    let rows = food_code(Authority::UsFoodCode2022, Food::Leftovers, false);
    let at = fahrenheit(case.number("fahrenheit"));
    let hot = verdicts(Product::Table(rows), at, case.number("seconds")).met().next().is_some();
    let soon = minutes(case.number("minutes_on_the_way"))
        <= cook::FOOD_CODE_2022_OTHER_REHEAT_WITHIN.value;
    Answer::from([("meets", json!(hot && soon))])
}

fn endpoint(case: &Case) -> (Time, Reading) {
    (hours(case.number("cook_h")), fahrenheit(case.number("endpoint_f")))
}

pub fn humid_time(case: &Case) -> Answer {
    let (time, endpoint) = endpoint(case);
    let option = case.number("option");
    let found = (1..=4).find(|&n| f64::from(n) == option).unwrap();
    let humid = cook::humid_time(usize::try_from(found).unwrap(), time, endpoint).unwrap().unwrap();
    Answer::from([("hours", json!(humid.value / 3600.0))])
}

pub fn humidity_options(case: &Case) -> Answer {
    let (time, endpoint) = endpoint(case);
    let options: Vec<_> = options_for(time, endpoint).map(|(n, _, _)| n.to_string()).collect();
    Answer::from([("options", json!(options.join(" ")))])
}

pub fn large_piece(case: &Case) -> Answer {
    let exempt =
        cook::large_piece(pounds(case.number("piece_lb")), fahrenheit(case.number("oven_f")));
    Answer::from([("exempt", json!(exempt))])
}

fn line(points: &[(f64, Reading)]) -> Vec<Segment> {
    let mut track = Track::new();
    let point = |&(at, reading): &(f64, Reading)| Point::new(seconds(at), reading).unwrap();
    points.iter().filter_map(|at| track.next(point(at)).unwrap()).collect()
}

pub fn come_up(case: &Case) -> Answer {
    let mut clock = ComeUp::new(ever());
    let at = |f| fahrenheit(f);
    for segment in line(&[(0.0, at(50.0)), (case.number("minutes") * 60.0, at(130.0))]) {
        clock.add(&segment);
    }
    Answer::from([("meets", json!(clock.within_limit()))])
}

/// Five hours in the band, a lethal row or none, and five hours again.
pub fn come_up_again(case: &Case) -> Answer {
    let mut clock = ComeUp::new(ever());
    let band = line(&[(0.0, fahrenheit(50.0)), (18_000.0, fahrenheit(131.0))]);
    clock.add(&band[0]);
    if case.flag("first_cook_lethal").unwrap() {
        clock.restart();
    }
    clock.add(&band[0]);
    Answer::from([("starts_again", json!(clock.within_limit()))])
}

pub fn required(case: &Case) -> Answer {
    let animals = match case.word("animals") {
        "some-poultry" => Animals::SomePoultry,
        _ => Animals::NoPoultry,
    };
    let table = required_table(Food::from_key(case.word("food")).unwrap(), animals);
    Answer::from([("table", json!(table))])
}

fn kelvin(value: f64) -> TemperatureInterval {
    TemperatureInterval::new::<uom::si::temperature_interval::kelvin>(value)
}

pub fn equivalent(case: &Case) -> Answer {
    let reference = case.reading("reference").unwrap();
    let time = seconds(case.number("reference_s"));
    let mut resistance = Resistance::new(time, reference, kelvin(case.number("z_c"))).unwrap();
    if let Some(above) = case.maybe("z_above_c") {
        resistance = resistance.with_z_above(kelvin(above)).unwrap();
    }
    let at = case.reading("temperature").unwrap();
    let time = resistance.time_for(1.0, at).value;
    Answer::from([
        ("rate", json!(resistance.rate(at))),
        ("seconds", json!(time)),
        ("minutes", json!(time / 60.0)),
    ])
}

fn numbers(text: &str) -> Vec<f64> {
    text.split(' ').map(|number| number.parse().unwrap()).collect()
}

pub fn fitted(case: &Case) -> Answer {
    let temperatures = numbers(case.word("temperatures_c"));
    let times = numbers(case.word("seconds"));
    let pairs: Vec<_> =
        temperatures.iter().zip(&times).map(|(&t, &d)| (celsius(t), seconds(d))).collect();
    let at = celsius(case.maybe("at_c").unwrap_or(60.0));
    let line = Resistance::fit(&pairs, at).unwrap();
    let logs = case.maybe("logs").unwrap_or(1.0);
    Answer::from([
        ("z_c", json!(line.z().value)),
        ("minutes", json!(line.time_for(logs, at).value / 60.0)),
    ])
}

pub fn fitted_table(case: &Case) -> Answer {
    let (from, to) = (case.number("from_f"), case.number("to_f"));
    let rows: Vec<(f64, Time)> = match case.word("table") {
        "fsis-meat-5-log" => cook::FSIS_MEAT_5_LOG
            .iter()
            .map(|row| (row.value.temperature.on(Scale::Fahrenheit).value(), row.value.time))
            .collect(),
        "turkey-12" => cook::FSIS_POULTRY_DWELL_TURKEY
            .iter()
            .map(|row| {
                let [.., time] = row.value.seconds_by_fat;
                (row.value.temperature.on(Scale::Fahrenheit).value(), seconds(time))
            })
            .collect(),
        other => panic!("{}: table {other}", case.key),
    };
    let pairs: Vec<_> = rows
        .into_iter()
        .filter(|(f, _)| (from..=to).contains(f))
        .map(|(f, time)| (fahrenheit(f), time))
        .collect();
    let line = Resistance::fit(&pairs, celsius(60.0)).unwrap();
    Answer::from([("z_c", json!(line.z().value))])
}

pub fn equation(case: &Case) -> Answer {
    let (intercept, slope) = (case.number("intercept"), case.number("slope"));
    // D is a minute where the line crosses zero.
    let one_minute = celsius(intercept / slope);
    let resistance = Resistance::new(minutes(1.0), one_minute, kelvin(1.0 / slope)).unwrap();
    let d = resistance.time_for(1.0, case.reading("temperature").unwrap());
    Answer::from([("d_s", json!(d.value)), ("z_c", json!(resistance.z().value))])
}

fn on_fahrenheit(case: &Case, d: f64) -> Resistance {
    let z = read_tolerance(&format!("{} °F", case.number("z_f"))).unwrap();
    Resistance::new(seconds(d), case.reading("reference").unwrap(), z).unwrap()
}

fn counted(resistance: Resistance, points: &[(f64, Reading)]) -> Lethality {
    let mut lethality = Lethality::new(resistance, fahrenheit(32.0), ever()).unwrap();
    for segment in line(points) {
        lethality.add(&segment);
    }
    lethality
}

pub fn integrated(case: &Case) -> Answer {
    let points: Vec<_> = case
        .word("record")
        .split(' ')
        .map(|pair| {
            let (at, f) = pair.split_once(':').unwrap();
            (at.parse().unwrap(), fahrenheit(f.parse().unwrap()))
        })
        .collect();
    let lethality = counted(on_fahrenheit(case, case.number("d_s")), &points);
    Answer::from([
        ("f_s", json!(lethality.equivalent().value)),
        ("lower_s", json!(lethality.equivalent_by_lower_ends().value)),
        ("logs", json!(lethality.logs())),
        ("lower_logs", json!(lethality.logs_by_lower_ends())),
    ])
}

pub fn one_step(case: &Case) -> Answer {
    let z = read_tolerance(&format!("{} °F", case.number("z_f"))).unwrap();
    let (low, high) = (fahrenheit(140.0), fahrenheit(140.0 + case.number("step_f")));
    let resistance = Resistance::new(minutes(1.0), low, z).unwrap();
    let lethality = counted(resistance, &[(0.0, low), (1.0, high)]);
    let exact = lethality.equivalent().value;
    let mean = (resistance.rate(low) + resistance.rate(high)) / 2.0;
    Answer::from([
        ("trapezoid", json!(mean / exact)),
        ("lower", json!(lethality.equivalent_by_lower_ends().value / exact)),
    ])
}

pub fn logs_of_hold(case: &Case) -> Answer {
    let resistance = on_fahrenheit(case, case.number("d_s"));
    let at = fahrenheit(case.number("fahrenheit"));
    match case.maybe("logs") {
        Some(logs) => Answer::from([("seconds", json!(resistance.time_for(logs, at).value))]),
        None => {
            let held = counted(resistance, &[(0.0, at), (case.number("seconds"), at)]);
            Answer::from([("logs", json!(held.logs()))])
        }
    }
}

pub fn freezing(case: &Case) -> Answer {
    let thickness: Option<Length> =
        case.maybe("thickness_in").map(inches).or(case.maybe("thickness_cm").map(centimeters));
    let frozen = case.reading("frozen").unwrap();
    let kept = case.reading("kept").unwrap_or(frozen);
    let of = |table: &'static [Cited<Freezing>]| freezing_row(table, frozen, kept, thickness);
    let row = match case.word("table") {
        "fish" => of(&cook::FISH_FREEZING),
        "trichina-europe" => of(&cook::TRICHINA_FREEZING_EUROPE),
        _ => of(&cook::TRICHINA_FREEZING_GROUP1).or_else(|| of(&cook::TRICHINA_FREEZING_GROUP2)),
    };
    let enough = row.zip(case.maybe("hours")).is_some_and(|(row, h)| hours(h) >= row.value.time);
    let days = row.map(|row| row.value.time.value / 86_400.0);
    Answer::from([("days", json!(days)), ("meets", json!(enough))])
}
