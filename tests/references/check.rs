use greenweight::units::{Reading, Scale, read_amount, read_duration};

use greenweight_references::{Row, Table};

fn part(row: &Row, name: &str) -> Option<f64> {
    row.inner("reckoned").get(name).map(|value| value.as_float().unwrap())
}

/// The figure in mg/kg again, from the masses that the words name.
pub fn reckon_again(table: &Table) {
    for row in &table.rows {
        let need = |name: &str| part(row, name).unwrap_or_else(|| panic!("{}: {name}", row.key));
        let mg_per_kg = match (part(row, "agent_oz"), part(row, "agent_lb")) {
            (Some(oz), None) => oz / (need("meat_lb") * 16.0) * 1e6,
            (None, Some(lb)) => {
                let pickle = need("pickle_us_gal") * need("pickle_lb_per_us_gal");
                lb / pickle * need("pump_percent") / 100.0 * 1e6
            }
            _ => panic!("{}: one of agent_oz and agent_lb", row.key),
        };
        assert!((mg_per_kg - row.number("mg_per_kg")).abs() < 1e-9, "{}: {mg_per_kg}", row.key);
        let amount = row.printed.split(" to ").next().unwrap();
        let greenweight::units::Amount::Weighed(read) = read_amount(amount, None).unwrap() else {
            panic!("{}: {amount} is not a weight", row.key)
        };
        let kg = part(row, "agent_oz")
            .map_or_else(|| need("agent_lb") * 0.453_592_37, |oz| oz * 0.028_349_523_125);
        assert!((read.value - kg).abs() < 1e-15, "{}: the words say {amount}", row.key);
    }
}

/// The library's conversions, of a level of 1000, against the factors. A factor from weights of
/// five figures may lie just outside the interval for potassium, whose weight is rounded.
pub fn convert_again(table: &Table) {
    use greenweight::cure::{
        Level, NitrateIon, NitriteIon, OnGreenWeight, PotassiumNitrate, PotassiumNitrite,
        SodiumNitrate, SodiumNitrite,
    };
    fn of<A: greenweight::cure::Agent>() -> Level<A, OnGreenWeight> {
        Level::new(1000.0).unwrap()
    }
    let converted = [
        ("nano2-to-no2", of::<SodiumNitrite>().as_nitrite_ion().mg_per_kg()),
        ("kno2-to-no2", of::<PotassiumNitrite>().as_nitrite_ion().mg_per_kg()),
        ("nano3-to-no3", of::<SodiumNitrate>().as_nitrate_ion().mg_per_kg()),
        ("kno3-to-no3", of::<PotassiumNitrate>().as_nitrate_ion().mg_per_kg()),
        ("no2-to-nano2", of::<NitriteIon>().as_sodium_nitrite().mg_per_kg()),
        ("no3-to-nano3", of::<NitrateIon>().as_sodium_nitrate().mg_per_kg()),
        ("kno2-to-nano2", of::<PotassiumNitrite>().as_sodium_nitrite().mg_per_kg()),
        ("nano2-to-kno2", of::<SodiumNitrite>().as_potassium_nitrite().mg_per_kg()),
        ("kno3-to-nano3", of::<PotassiumNitrate>().as_sodium_nitrate().mg_per_kg()),
    ];
    for (key, level) in converted {
        let row = table.rows.iter().find(|row| row.key == key).unwrap();
        assert!((level / 1000.0 - row.number("factor")).abs() < 1e-6, "{key}: {level}");
        let (low, high) = row.pair("factor_interval").unwrap();
        let slack = if key.contains('k') { 5e-6 } else { 1e-6 };
        assert!((low - slack..=high + slack).contains(&(level / 1000.0)), "{key}: {level}");
    }
}

/// The molar masses again, from the five-figure atomic weights.
pub fn weigh_atoms(table: &Table) {
    for row in &table.rows {
        let sum: f64 = row
            .inner("atoms")
            .iter()
            .map(|(element, count)| {
                let weight = match element.as_str() {
                    "C" => 12.011,
                    "H" => 1.008,
                    "N" => 14.007,
                    "O" => 15.999,
                    "Na" => 22.990,
                    "K" => 39.098,
                    other => panic!("{other}"),
                };
                weight * count.as_integer().unwrap() as f64
            })
            .sum();
        assert!((sum - row.number("g_per_mol")).abs() < 1e-9, "{}: {sum}", row.key);
        assert!(
            row.printed.starts_with(&format!("{sum:.3}")),
            "{}: prints {}",
            row.key,
            row.printed
        );
    }
}

/// Both figures of a row that prints two scales are one temperature, to the half
/// unit of the last digit printed, unless the row's note says what it misprints.
pub fn compare_scales(table: &Table) {
    for row in &table.rows {
        let (Some(f), Some(c)) = (row.maybe_number("fahrenheit"), row.maybe_number("celsius"))
        else {
            continue;
        };
        let exact = Reading::new(f, Scale::Fahrenheit).unwrap().on(Scale::Celsius).value();
        let step = if c.fract() == 0.0 { 0.5 } else { 0.0501 };
        assert!(
            (exact - c).abs() <= step || row.note.contains(&format!("{c} °C")),
            "{}, {}: {f} °F is {exact} °C",
            table.path,
            row.key
        );
    }
}

/// The days of the storage chart again, from its words.
pub fn read_durations_again(table: &Table) {
    for row in &table.rows {
        for (words, days) in [("refrigerate", "refrigerate_days"), ("freeze", "freeze_days")] {
            match (read_duration(row.words(words)), row.pair(days)) {
                (Ok(read), Some((low, high))) => {
                    let got = (read.low().value / 86_400.0, read.high().value / 86_400.0);
                    assert_eq!(got, (low, high), "{}: {words}", row.key);
                }
                (Err(_), None) => {}
                other => panic!("{}: {words}: {other:?}", row.key),
            }
        }
    }
}

/// Dwell times fall, and the 7-log time is never the shorter.
pub fn falls(table: &Table) {
    assert_eq!(table.rows.len(), 31);
    for pair in table.rows.windows(2) {
        let [cooler, hotter] = pair else { unreachable!() };
        assert_eq!(cooler.number("fahrenheit") + 1.0, hotter.number("fahrenheit"));
        for column in ["dwell_6_5_log_s", "dwell_7_log_s"] {
            assert!(cooler.number(column) >= hotter.number(column), "{}", hotter.key);
        }
    }
    for row in &table.rows {
        assert!(row.number("dwell_7_log_s") >= row.number("dwell_6_5_log_s"), "{}", row.key);
    }
}

/// The constants of `units` against the rows that define them.
pub fn weigh_units(table: &Table) {
    use greenweight::units::{mass, volume};
    use uom::si::f64::{Mass, Volume};
    let grams = |mass: Mass| mass.get::<mass::gram>();
    let ml = |volume: Volume| volume.get::<volume::milliliter>();
    let declared = [
        ("avoirdupois-pound", grams(Mass::new::<mass::pound>(1.0)) / 1000.0),
        ("avoirdupois-ounce", grams(Mass::new::<mass::ounce>(1.0))),
        ("us-gallon", ml(Volume::new::<volume::us_gallon>(1.0)) / 1000.0),
        ("us-liquid-quart", ml(Volume::new::<volume::us_quart>(1.0)) / 1000.0),
        ("us-liquid-pint", ml(Volume::new::<volume::us_pint>(1.0))),
        ("us-cup", ml(Volume::new::<volume::us_cup>(1.0))),
        ("us-fluid-ounce", ml(Volume::new::<volume::us_fluid_ounce>(1.0))),
        ("us-tablespoon", ml(Volume::new::<volume::us_tablespoon>(1.0))),
        ("us-teaspoon", ml(Volume::new::<volume::us_teaspoon>(1.0))),
        ("imperial-gallon", ml(Volume::new::<volume::imperial_gallon>(1.0)) / 1000.0),
        ("imperial-pint", ml(Volume::new::<volume::imperial_pint>(1.0))),
        ("imperial-fluid-ounce", ml(Volume::new::<volume::imperial_fluid_ounce>(1.0))),
        ("metric-cup-australia", ml(Volume::new::<volume::metric_cup>(1.0))),
        ("metric-tablespoon-australia", ml(Volume::new::<volume::australian_tablespoon>(1.0))),
        ("metric-teaspoon", ml(Volume::new::<volume::metric_teaspoon>(1.0))),
        ("metric-tablespoon-nz-uk-canada-usage", ml(Volume::new::<volume::metric_tablespoon>(1.0))),
    ];
    for (key, value) in declared {
        let row =
            table.rows.iter().find(|row| row.key == key).unwrap_or_else(|| panic!("no row {key}"));
        let printed: f64 = row.words("value").parse().unwrap();
        assert!(
            (value / printed - 1.0).abs() < 4.0 * f64::EPSILON,
            "{key}: {value} against {printed}"
        );
    }
}
