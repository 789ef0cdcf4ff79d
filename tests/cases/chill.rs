use greenweight::authority::Authority;
use greenweight::chill::{
    self, COOLING_US, Cooling, Growth, Holds, LegClock, Model, Rate, SLOW_COOL_CONDITIONS, Stay,
    Was, check,
};
use greenweight::cite::Cited;
use greenweight::finding::{Finding, Place, Verdict};
use greenweight::food::Food;
use greenweight::range::Range;
use greenweight::shelf::{
    CookChill, Packed, SHELF_STABLE_ACIDIFIED, SHELF_STABLE_CANADA, SHELF_STABLE_SEAFOOD, cell,
    check_pack,
};
use greenweight::trace::{Point, Track};
use greenweight::units::{Reading, Scale, TemperatureInterval, days, hours, read_tolerance};
use serde_json::json;

use super::case::{Answer, Case};

pub fn listeria_rate(case: &Case) -> Answer {
    let five = Reading::new(5.0, Scale::Celsius).unwrap();
    let rate = case.number("log10") / case.number("days");
    let at_5 = chill::listeria_rate_at(rate, case.reading("temperature").unwrap(), five);
    Answer::from([("per_day_at_5", json!(at_5))])
}

pub fn grown(case: &Case) -> Answer {
    let law = Rate::SquareRoot { b: 1.0, least: 0.0 };
    let mut growth = Growth::new(law, case.number("h0"), case.number("room")).unwrap();
    growth.add_at(case.number("rate"), hours(case.number("hours"))).unwrap();
    Answer::from([("log10", json!(growth.log10()))])
}

fn rate(case: &Case, law: Rate) -> f64 {
    law.at(case.reading("temperature").unwrap())
}

pub fn cardinal(case: &Case) -> Answer {
    let of = |name: &str| case.number(name);
    let (least, best, most) = (of("least_c"), of("best_c"), of("most_c"));
    let law = Rate::Cardinal { least, best, most, at_best: of("at_best") };
    Answer::from([("rate", json!(rate(case, law)))])
}

pub fn square_root(case: &Case) -> Answer {
    // √log10 to √ln.
    let b = case.number("b_log10") * std::f64::consts::LN_10.sqrt();
    let least = Reading::new(case.number("least_c"), Scale::Celsius).unwrap();
    let law = Rate::square_root(b, least).unwrap();
    Answer::from([("rate_log10", json!(rate(case, law) / std::f64::consts::LN_10))])
}

pub fn square_root_to_maximum(case: &Case) -> Answer {
    let of = |name: &str| case.number(name);
    let (b, c) = (of("b"), of("c"));
    let law = Rate::SquareRootToMaximum { b, c, least: of("least_c"), most: of("most_c") };
    Answer::from([("rate", json!(rate(case, law)))])
}

pub fn degree_hours(case: &Case) -> Answer {
    let scale = if case.word("scale") == "c" { Scale::Celsius } else { Scale::Fahrenheit };
    let stages: Vec<_> = case
        .word("stages")
        .split(' ')
        .map(|stage| {
            let (time, degrees) = stage.split_once("h@").unwrap();
            let at = Reading::new(degrees.parse().unwrap(), scale).unwrap();
            (at, hours(time.parse().unwrap()))
        })
        .collect();
    let (sum, row) = chill::degree_hours(&stages, scale).unwrap();
    Answer::from([
        ("degree_hours", json!(sum)),
        ("most", json!(row.value.most)),
        ("meets", json!(sum <= row.value.most)),
    ])
}

pub fn longest_fermentation(case: &Case) -> Answer {
    let longest = chill::longest_fermentation(case.reading("temperature").unwrap()).unwrap();
    Answer::from([("hours", json!(longest.value / 3600.0))])
}

fn curve(case: &Case) -> Vec<Point> {
    let (name, scale) = match case.maybe_word("curve_c") {
        Some(_) => ("curve_c", Scale::Celsius),
        None => ("curve", Scale::Fahrenheit),
    };
    let point = |pair: &str| {
        let (at, degrees) = pair.split_once(':').unwrap();
        let reading = Reading::new(degrees.parse().unwrap(), scale).unwrap();
        Point::new(hours(at.parse().unwrap()), reading).unwrap()
    };
    case.word(name).split(' ').map(point).collect()
}

pub fn cooled(case: &Case) -> Answer {
    let curve = curve(case);
    let cooling = Cooling {
        cooked_to: None,
        curve: &curve,
        vouched: hours(f64::INFINITY),
        thermometer: read_tolerance("0 °F").ok(),
        holds: Holds::default(),
        place: Place::default(),
    };
    let authority = Authority::from_key(case.word("authority")).unwrap();
    let verdict = check(&cooling, authority, None).unwrap().verdict;
    Answer::from([("meets", json!(verdict == Verdict::Meets))])
}

pub fn slow_cure(case: &Case) -> Answer {
    let leg = COOLING_US
        .iter()
        .find(|row| row.value.schedule == "california-910.15-b-cured-slow")
        .unwrap();
    let mut clock = LegClock::new(
        leg,
        Scale::Fahrenheit,
        read_tolerance("0 °F").unwrap(),
        hours(f64::INFINITY),
    );
    let mut track = Track::new();
    for point in curve(case) {
        if let Some(segment) = track.next(point).unwrap() {
            clock.add(&segment);
        }
    }
    let in_time = clock.time().is_some_and(|time| time.high() <= leg.value.most);
    let exactly = |name: &str| Range::exactly(case.number(name)).ok();
    let holds = Holds { nitrite: exactly("nitrite"), brine: exactly("brine"), ..Holds::default() };
    let held =
        SLOW_COOL_CONDITIONS.iter().any(|formula| formula.value.held_by(&holds) == Verdict::Meets);
    Answer::from([("meets", json!(in_time && held))])
}

fn verdict_of(finding: Option<Finding>) -> Answer {
    let verdict = finding.map_or(Verdict::Meets, |finding| finding.verdict);
    Answer::from([
        ("meets", json!(verdict == Verdict::Meets)),
        ("breaks", json!(verdict == Verdict::Breaks)),
    ])
}

pub fn warm(case: &Case) -> Answer {
    let authority = Authority::from_key(case.word("authority")).unwrap();
    let time = Range::exactly(hours(case.number("hours"))).ok();
    let was = if case.maybe_word("was") == Some("hot") { Was::Hot } else { Was::Cold };
    let stays = [Stay {
        at: case.reading("temperature").unwrap(),
        off: TemperatureInterval::default(),
        time,
        was,
    }];
    verdict_of(chill::warm(&stays, authority, Place::default()))
}

pub fn ready_to_eat(case: &Case) -> Answer {
    let stay = |stay: &str| {
        let (time, f) = stay.split_once('@').unwrap();
        Stay {
            off: TemperatureInterval::default(),
            at: Reading::new(f.parse().unwrap(), Scale::Fahrenheit).unwrap(),
            time: Range::exactly(hours(time.parse().unwrap())).ok(),
            was: Was::Cold,
        }
    };
    let stays: Vec<_> = case.word("stays").split(' ').map(stay).collect();
    verdict_of(chill::ready_to_eat(&stays, case.flag("cooked").unwrap(), Place::default()))
}

pub fn exposure(case: &Case) -> Answer {
    let row = chill::exposure(case.word("organism"), case.reading("temperature").unwrap());
    let most = row.unwrap().value.most;
    Answer::from([("within", json!(hours(case.number("hours")) <= most))])
}

pub fn date_mark(case: &Case) -> Answer {
    let last = chill::last_day(super::store::day(case.word("made"))).unwrap();
    Answer::from([("last_day", json!(last.to_string()))])
}

pub fn cook_chill(case: &Case) -> Answer {
    let kept = CookChill {
        to_34: case.maybe("to_34_hours").map(hours),
        at_41: days(case.number("at_41_days")),
        from_packing: days(case.number("from_packing_days")),
    };
    Answer::from([("meets", json!(kept.keeps_to_the_code()))])
}

fn model(case: &Case) -> &'static Model {
    let named = |row: &&Cited<Model>| row.row.key == case.word("model");
    &chill::growth_models().find(named).unwrap().value
}

pub fn model_rate(case: &Case) -> Answer {
    let rate = rate(case, model(case).rate);
    let log10 = 24.0 * rate / std::f64::consts::LN_10;
    Answer::from([
        ("per_hour", json!(rate)),
        ("log10_per_day", json!(log10)),
        ("doubling_min", json!(60.0 * 2f64.ln() / rate)),
    ])
}

pub fn model_stage(case: &Case) -> Answer {
    let half = days(case.number("days") * 0.5);
    let at = |c: f64| Reading::new(c, Scale::Celsius).unwrap();
    let segment = |c: f64| {
        let mut track = Track::new();
        track.next(Point::new(hours(0.0), at(c)).unwrap()).unwrap();
        track.next(Point::new(half, at(c)).unwrap()).unwrap().unwrap()
    };
    let (mean, sd) = (case.number("mean_c"), case.number("sd_c"));
    let stage = [segment(mean - sd), segment(mean + sd)];
    let predicted = model(case).predict(case.number("start"), stage).unwrap();
    Answer::from([("log10", json!(predicted.log10))])
}

pub fn interaction(case: &Case) -> Answer {
    let packaged = case.word("table") == "a";
    let cell = cell(packaged, case.number("activity"), case.number("ph")).unwrap().unwrap();
    Answer::from([("needs_none", json!(cell.value.needs_none))])
}

pub fn barrier(case: &Case) -> Answer {
    let packed = Packed {
        food: Food::GroundMeat,
        raw: false,
        cured_here: case.flag("cured_here").unwrap(),
        frozen_before: None,
        frozen: false,
        opened: false,
        activity: case.maybe("activity"),
        ph: case.maybe("ph"),
        brine: None,
        kept: None,
        place: Place::default(),
    };
    let mut findings = Vec::new();
    check_pack(&packed, Authority::UsFoodCode2022, &mut |finding| findings.push(finding));
    Answer::from([("meets", json!(findings[0].verdict == Verdict::Meets))])
}

pub fn shelf_stable(case: &Case) -> Answer {
    let rule = match case.word("rule") {
        "acidified" => &SHELF_STABLE_ACIDIFIED,
        "seafood" => &SHELF_STABLE_SEAFOOD,
        "canada" => &SHELF_STABLE_CANADA,
        other => panic!("{}: no rule {other}", case.key),
    };
    let holds = rule.value.holds(case.maybe("activity"), case.maybe("ph"), case.maybe("brine"));
    Answer::from([("stable", json!(holds == Some(true)))])
}
