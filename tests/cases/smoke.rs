use greenweight::authority::Authority;
use greenweight::finding::Place;
use greenweight::food::Food;
use greenweight::level::Level;
use greenweight::range::Range;
use greenweight::smoke::{CHUB, ColdSmoke, SmokedFish, check, check_fish};
use greenweight::units::{hours, minutes};
use serde_json::json;

use super::case::{Answer, Case, answer_of};
use super::cook::thermometer;

pub fn cold_smoke(case: &Case) -> Answer {
    let smoke = ColdSmoke {
        food: Food::from_key(case.word("food")).unwrap(),
        cooked_later: false,
        at: case.reading("chamber"),
        thermometer: thermometer(case),
        time: case.maybe("hours").map(|h| Range::exactly(hours(h)).unwrap()),
        place: Place::default(),
    };
    let authority = case.maybe_word("authority").map(|key| Authority::from_key(key).unwrap());
    let mut findings = Vec::new();
    check(&smoke, authority, None, &mut |finding| findings.push(finding));
    let mut answer = answer_of(&findings);
    let first = findings[0];
    answer.insert("force", json!(format!("{:?}", first.rule.force).to_lowercase()));
    let standing = first.rows[0].unwrap().citation.standing;
    let key = match standing {
        greenweight::cite::Standing::CommonPractice => "common-practice",
        other => other.words(),
    };
    answer.insert("standing", json!(key));
    answer
}

pub fn smoked_fish(case: &Case) -> Answer {
    let inside = case.reading("inside");
    let level = |name: &str| case.maybe(name).and_then(|level| Range::exactly(level).ok());
    let fish = SmokedFish {
        cold: inside.is_none(),
        airless: case.flag("airless").unwrap(),
        brine: level("brine"),
        nitrite: case.maybe("nitrite").map(|level| Level::new(level).unwrap()),
        less_salt: case.flag("less_salt").unwrap_or(false),
        inside,
        thermometer: thermometer(case),
        held: case.maybe("minutes").and_then(|n| Range::exactly(minutes(n)).ok()),
        place: Place::default(),
    };
    let authority = Authority::from_key(case.word("authority")).unwrap();
    let mut findings = Vec::new();
    check_fish(&fish, authority, &mut |finding| findings.push(finding));
    let of_rule = |id: &str| findings.iter().find(|finding| finding.rule.id == id);
    let words = |id: &str| json!(of_rule(id).map_or("none", |finding| finding.verdict.words()));
    Answer::from([("salt", words("smoke/water-phase-salt")), ("heat", words("smoke/hot-fish"))])
}

pub fn smoked_chub(case: &Case) -> Answer {
    let kept = CHUB.value.kept(
        case.reading("inside").unwrap(),
        minutes(case.number("minutes")),
        hours(case.number("to_50_hours")),
        hours(case.number("to_38_hours")),
    );
    Answer::from([("meets", json!(kept))])
}
