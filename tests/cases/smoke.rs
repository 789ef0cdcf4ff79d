use greenweight::authority::Authority;
use greenweight::finding::Place;
use greenweight::food::Food;
use greenweight::range::Range;
use greenweight::smoke::{ColdSmoke, check};
use greenweight::units::hours;
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
