use greenweight::authority::Authority;
use greenweight::cite::Date;
use greenweight::finding::{Place, Placed, Verdict};
use greenweight::food::Food;
use greenweight::range::Range;
use greenweight::store::{Cold, Keeping, chart_row, check};
use greenweight::units::{Reading, Scale, Time, days, read_tolerance};
use serde_json::json;

use super::case::{Answer, Case, answer_of};

const DAY: f64 = 86_400.0;

fn day(text: &str) -> Date {
    let mut parts = text.split('-').map(|part| part.parse::<u16>().unwrap());
    let mut next = || parts.next().unwrap();
    let (year, month, day) = (next(), next(), next());
    Date::new(year, month.try_into().unwrap(), day.try_into().unwrap()).unwrap()
}

fn verdicts(keeping: &Keeping) -> Answer {
    let mut findings = Vec::new();
    check(keeping, Authority::UsConsumer, &mut |finding| findings.push(finding));
    answer_of(&findings)
}

pub fn chart(case: &Case) -> Answer {
    let row = chart_row(case.word("like"), case.maybe_word("on").map(day)).unwrap();
    let upper = |time: Option<Range<Time>>| time.map(|time| time.high().value / DAY);
    // Thirty years: past whatever the chart says of the freezer.
    let forever = Keeping {
        cold: Cold::Freezer,
        like: Some(row),
        at: Reading::new(0.0, Scale::Fahrenheit).ok().map(Placed::from),
        time: Range::exactly(days(10_000.0)).ok().map(Placed::from),
        thermometer: read_tolerance("0 °F").ok(),
        food: Food::GroundMeat,
        raw: false,
        vacuum: false,
        place: Place::default(),
    };
    let breaks = verdicts(&forever)["verdict"] != json!(Verdict::Meets.words());
    let mut answer = Answer::from([("freezer_time_is_a_limit", json!(breaks))]);
    if let Some(time) = upper(row.value.refrigerate.time()) {
        answer.insert("refrigerate_days", json!(time));
    }
    if let Some(time) = upper(row.value.freeze.time()) {
        answer.insert("freeze_days", json!(time));
    }
    answer
}

pub fn keep(case: &Case) -> Answer {
    verdicts(&Keeping {
        cold: match case.word("where") {
            "refrigerator" => Cold::Refrigerator,
            "freezer" => Cold::Freezer,
            other => panic!("{}: nothing is kept in a {other}", case.key),
        },
        like: Some(chart_row(case.word("like"), None).unwrap()),
        at: case.reading("at").map(Placed::from),
        time: Range::exactly(days(case.number("days"))).ok().map(Placed::from),
        thermometer: read_tolerance("0 °F").ok(),
        food: Food::GroundMeat,
        raw: false,
        vacuum: false,
        place: Place::default(),
    })
}
