use greenweight::authority::Authority;
use greenweight::cite::Date;
use greenweight::finding::{Limit, Measure, Place, Placed, Verdict};
use greenweight::food::Food;
use greenweight::range::Range;
use greenweight::shelf::{Packed, check_pack};
use greenweight::store::{
    Afterwards, Cold, Heats, Keeping, Pack, Shape, Span, Thaw, Thawing, chart_row, check,
    check_thaw, equivalent_time, latest_use, life_between, q10, thaw_time, thaw_turkey,
};
use greenweight::units::{Reading, Scale, Time, centimeters, days, read_tolerance};
use serde_json::json;

use super::case::{Answer, Case, answer_of};

const DAY: f64 = 86_400.0;

pub fn day(text: &str) -> Date {
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
        mixed: false,
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
        mixed: false,
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

fn reading(case: &Case, name: &str) -> Reading {
    case.reading(name).unwrap_or_else(|| panic!("{}: no {name}", case.key))
}

fn frozen(case: &Case) -> Pack {
    let shape = match case.maybe_word("shape") {
        None | Some("slab") => Shape::Slab,
        Some("cylinder") => Shape::Cylinder,
        Some("sphere") => Shape::Sphere,
        other => panic!("{}: {other:?} has no shape", case.key),
    };
    let meters = |m: f64| centimeters(m * 100.0);
    let size = meters(case.number("size_m"));
    let pack = Pack::new(shape, size, case.number("surface"), case.number("conductivity")).unwrap();
    match case.maybe("wrapping_m") {
        Some(thickness) => {
            pack.wrapped(meters(thickness), case.number("wrapping_conductivity")).unwrap()
        }
        None => pack,
    }
}

pub fn plank(case: &Case) -> Answer {
    let time = frozen(case)
        .by_plank(case.number("latent"), reading(case, "freezing"), reading(case, "around"))
        .unwrap();
    Answer::from([("hours", json!(time.value / 3600.0))])
}

pub fn plank_ratio(case: &Case) -> Answer {
    let time = |shape| {
        let pack = Pack::new(shape, centimeters(7.0), 30.0, 1.2).unwrap();
        let at = |c| Reading::new(c, Scale::Celsius).unwrap();
        pack.by_plank(2.5e8, at(-1.25), at(-40.0)).unwrap()
    };
    let shape = if case.word("shape") == "sphere" { Shape::Sphere } else { Shape::Slab };
    Answer::from([("ratio", json!((time(shape) / time(Shape::Slab)).value))])
}

fn heats(case: &Case) -> (Heats, Span) {
    let heats = Heats {
        unfrozen: case.number("unfrozen"),
        latent: case.maybe("latent").unwrap_or(2e8),
        frozen: case.number("frozen"),
    };
    let span = Span {
        start: reading(case, "start"),
        middle: reading(case, "middle"),
        around: reading(case, "around"),
    };
    (heats, span)
}

fn middle(time: Range<Time>) -> Answer {
    Answer::from([("hours", json!((time.low() + time.high()).value / 7200.0))])
}

pub fn freezing_time(case: &Case) -> Answer {
    let (heats, span) = heats(case);
    middle(frozen(case).freezing_time(heats, span).unwrap())
}

pub fn freezing_regression(case: &Case) -> Answer {
    let (heats, span) = heats(case);
    let freezing = reading(case, "freezing");
    let enthalpy = case.number("enthalpy");
    middle(frozen(case).slab_by_regression(heats, enthalpy, freezing, span).unwrap())
}

pub fn equivalent(case: &Case) -> Answer {
    let at = reading(case, "temperature");
    let row = equivalent_time(at).unwrap();
    let z = case.number("z");
    let formula = 10.0 * 10f64.powf((90.0 - at.value()) / z);
    Answer::from([("minutes", json!(row.value.time.value / 60.0)), ("by_formula", json!(formula))])
}

pub fn turkey(case: &Case) -> Answer {
    let row = thaw_turkey(case.mass("mass")).unwrap().value;
    let (fridge, water) = (row.refrigerator, row.cold_water);
    Answer::from([
        ("refrigerator_from", json!(fridge.0.value / DAY)),
        ("refrigerator_to", json!(fridge.1.value / DAY)),
        ("water_from", json!(water.0.value / 3600.0)),
        ("water_to", json!(water.1.value / 3600.0)),
    ])
}

fn thawing(case: &Case) -> Thawing {
    let named = |how: &Thawing| how.key() == case.word("how");
    Thawing::ALL.into_iter().find(named).unwrap()
}

pub fn thaws(case: &Case) -> Answer {
    let time = thaw_time(thawing(case), case.mass("mass")).unwrap();
    Answer::from([("hours", json!(time.high().value / 3600.0))])
}

pub fn refreeze(case: &Case) -> Answer {
    let thaw = Thaw {
        food: Food::GroundMeat,
        raw: true,
        how: Some(thawing(case)),
        at: Reading::new(38.0, Scale::Fahrenheit).ok().map(Placed::from),
        thermometer: read_tolerance("0 °F").ok(),
        time: None,
        piece: None,
        airless: false,
        afterwards: Afterwards {
            cooked_next: true,
            frozen_again: Some(Place::default()),
            ..Afterwards::default()
        },
        place: Place::default(),
    };
    let mut findings = Vec::new();
    check_thaw(&thaw, Authority::UsConsumer, &mut |finding| findings.push(finding));
    let breaks =
        findings.iter().any(|f| f.rule.id == "store/refreeze" && f.verdict == Verdict::Breaks);
    Answer::from([("allowed", json!(!breaks))])
}

pub fn opened(case: &Case) -> Answer {
    let of = |name: &str| days(case.number(name));
    let latest = latest_use(of("unopened_days"), of("opened_on_day"), of("opened_days"));
    Answer::from([("latest_day", json!(latest.value / DAY))])
}

fn lives(case: &Case) -> [(Reading, Time); 2] {
    ["a", "b"].map(|end| {
        let months = case.number(&format!("{end}_months"));
        (reading(case, end), days(months * 30.0))
    })
}

pub fn between(case: &Case) -> Answer {
    let [a, b] = lives(case);
    let life = life_between(a, b, reading(case, "at")).unwrap();
    Answer::from([("months", json!(life.value / DAY / 30.0))])
}

pub fn of_ten_kelvin(case: &Case) -> Answer {
    let [a, b] = lives(case);
    Answer::from([("q10", json!(q10(a, b).unwrap()))])
}

pub fn airless(case: &Case) -> Answer {
    let kept = case.maybe("kept_days").unwrap_or(1.0);
    let packed = Packed {
        food: Food::from_key(case.word("food")).unwrap(),
        raw: case.flag("raw").unwrap(),
        cured_here: case.flag("cured_here").unwrap_or(false),
        frozen_before: None,
        frozen: false,
        opened: false,
        activity: case.maybe("activity"),
        ph: case.maybe("ph"),
        brine: case.maybe("brine").and_then(|percent| Range::exactly(percent).ok()),
        kept: Range::exactly(days(kept)).ok(),
        place: Place::default(),
    };
    let authority = Authority::from_key(case.word("authority")).unwrap();
    let mut findings = Vec::new();
    check_pack(&packed, authority, &mut |finding| findings.push(finding));
    let mut answer = Answer::from([("limited", json!(false))]);
    for finding in findings {
        let verdict = json!(finding.verdict.words());
        if finding.rule.id == "shelf/packaging-barrier" {
            answer.insert("barrier", verdict);
        } else if let Some(Limit::AtMost(Measure::Duration(most))) = finding.limit {
            answer.insert("life", verdict);
            answer.insert("days", json!(most.value / DAY));
            answer.insert("limited", json!(true));
        }
    }
    answer
}

pub fn enthalpy(case: &Case) -> Answer {
    let (heats, span) = (
        Heats {
            unfrozen: case.number("unfrozen"),
            latent: case.number("latent"),
            frozen: case.number("frozen"),
        },
        [reading(case, "start"), reading(case, "freezing"), reading(case, "mean")],
    );
    let [start, freezing, mean] = span;
    Answer::from([("total", json!(heats.in_place_of_latent(start, freezing, mean)))])
}
