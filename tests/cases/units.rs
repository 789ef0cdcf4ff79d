use greenweight::finding::Limit;
use greenweight::range::Range;
use greenweight::units::{
    Amount, Measures, Reading, Scale, Volume, read_amount, read_concentration, read_mass,
    read_temperature, read_tolerance,
};
use serde_json::json;

use super::case::{Answer, Case};

pub fn mass(case: &Case) -> Answer {
    Answer::from([("kilograms", json!(read_mass(case.word("text")).unwrap().value))])
}

pub fn same_mass(case: &Case) -> Answer {
    let mass = |name| read_mass(case.word(name)).unwrap();
    Answer::from([("same", json!(mass("a") == mass("b")))])
}

fn poured(case: &Case, text: &str, measures: &str) -> Volume {
    let measures = case.maybe_word(measures).and_then(Measures::from_name);
    match read_amount(case.word(text), measures).unwrap() {
        Amount::ByVolume(volume) => volume,
        Amount::Weighed(_) => panic!("{}: {text} is a weight", case.key),
    }
}

pub fn volume(case: &Case) -> Answer {
    Answer::from([("milliliters", json!(poured(case, "text", "measures").value * 1e6))])
}

pub fn two_volumes(case: &Case) -> Answer {
    let (a, b) = (poured(case, "a", "a_measures").value, poured(case, "b", "b_measures").value);
    Answer::from([
        ("ratio", json!(a / b)),
        ("percent", json!((a / b - 1.0) * 100.0)),
        ("difference_ml", json!((a - b) * 1e6)),
    ])
}

pub fn density(case: &Case) -> Answer {
    let mass = read_mass(case.word("mass")).unwrap();
    let density = mass / poured(case, "volume", "measures");
    Answer::from([("grams_per_liter", json!(density.value))])
}

pub fn concentration(case: &Case) -> Answer {
    Answer::from([("mg_per_kg", json!(read_concentration(case.word("text")).unwrap()))])
}

pub fn celsius(case: &Case) -> Answer {
    let reading = Reading::new(case.number("fahrenheit"), Scale::Fahrenheit).unwrap();
    Answer::from([("celsius", json!(reading.on(Scale::Celsius).value()))])
}

pub fn tolerance(case: &Case) -> Answer {
    Answer::from([("kelvin", json!(read_tolerance(case.word("text")).unwrap().value))])
}

pub fn judge_reading(case: &Case) -> Answer {
    let temperature = |name| read_temperature(case.word(name)).unwrap();
    let tolerance = read_tolerance(case.word("tolerance")).unwrap();
    let known: Range<Reading> = temperature("reading").within(tolerance).unwrap();
    let limit = match case.maybe_word("at_least") {
        Some(_) => Limit::AtLeast(temperature("at_least")),
        None => Limit::AtMost(temperature("at_most")),
    };
    Answer::from([
        ("low", json!(known.low().value())),
        ("high", json!(known.high().value())),
        ("verdict", json!(limit.judge(&known).words())),
    ])
}
