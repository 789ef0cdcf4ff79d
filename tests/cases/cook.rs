use greenweight::authority::Authority;
use greenweight::cook::{Animals, Bird, FSIS_MEAT_5_LOG, Plan, Process, check, dwell_row};
use greenweight::finding::{Finding, Place};
use greenweight::food::Food;
use greenweight::range::Range;
use greenweight::units::{
    PrintedTemperature, Reading, Scale, TemperatureInterval, Time, read_tolerance, seconds,
};
use serde_json::json;

use super::case::{Answer, Case, answer_of};

fn lookup(reading: Reading) -> PrintedTemperature {
    dwell_row(reading).unwrap().value.temperature
}

pub fn dwell(case: &Case) -> Answer {
    let reading = Reading::new(case.number("fahrenheit"), Scale::Fahrenheit).unwrap();
    let row = dwell_row(reading).unwrap().value;
    let time = match case.number("logs") {
        7.0 => row.for_7_log,
        6.5 => row.for_6_5_log,
        5.0 => {
            let row = FSIS_MEAT_5_LOG.iter().find(|row| row.value.temperature == lookup(reading));
            row.unwrap().value.time
        }
        other => panic!("{}: no column of {other} log", case.key),
    };
    Answer::from([("seconds", json!(time.value))])
}

/// The tolerance of the thermometer, in degrees Fahrenheit.
pub fn thermometer(case: &Case) -> Option<TemperatureInterval> {
    case.maybe("thermometer_f").map(|f| read_tolerance(&format!("{f} °F")).unwrap())
}

fn time(case: &Case, name: &str) -> Option<Range<Time>> {
    case.maybe(name).map(|s| Range::exactly(seconds(s)).unwrap())
}

pub fn cook(case: &Case) -> Answer {
    let plan = Plan {
        food: Food::from_key(case.word("food")).unwrap(),
        animals: match case.word("animals") {
            "no-poultry" => Animals::NoPoultry,
            "some-poultry" => Animals::SomePoultry,
            _ => Animals::Unknown,
        },
        bird: Bird::Other,
        fat: None,
        planned: true,
        inside: case.reading("inside"),
        thermometer: thermometer(case),
        held: time(case, "held_s"),
        gap: None,
        rested: time(case, "rested_s"),
        place: Place::default(),
    };
    let authority = Authority::from_key(case.word("authority")).unwrap();
    let mut findings = Vec::new();
    let process = Process::unknown(plan.place);
    check(&plan, &process, authority, None, &mut |finding| findings.push(finding));
    // How it got there is another question.
    findings.retain(|finding: &Finding| ["cook/endpoint", "cook/rest"].contains(&finding.rule.id));
    answer_of(&findings)
}

/// The table that the federal guideline is asked for.
pub fn required_table(food: Food, animals: Animals) -> &'static str {
    let inside = Reading::new(150.0, Scale::Fahrenheit).ok();
    let held = Range::exactly(seconds(1.0)).ok();
    let plan = Plan {
        food,
        animals,
        bird: Bird::Other,
        fat: None,
        planned: true,
        inside,
        thermometer: None,
        held,
        gap: None,
        rested: None,
        place: Place::default(),
    };
    let mut table = None;
    let process = Process::unknown(plan.place);
    check(&plan, &process, Authority::UsFsis, None, &mut |finding| {
        table = table.or(finding.rows[0].map(|row| row.table));
    });
    table.unwrap()
}
