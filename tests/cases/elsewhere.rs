//! Cases of the room `cure` about authorities that go by product, and about what was found in
//! food.

use greenweight::authority::Authority;
use greenweight::cite::{Cited, Date};
use greenweight::cure::{
    Agents, GreenWeight, InPremix, Level, NitrateIon, NitriteIon, OnGreenWeight, PremixMass,
    ProductLimit, Residual, SodiumNitrate, SodiumNitrite, US_RESIDUAL, ingoing, largest_premix,
    product_rows,
};
use greenweight::units::kilograms;
use greenweight_references::References;
use serde_json::json;

use super::case::{Answer, Case};

fn mg_per_kg(level: f64) -> Answer {
    Answer::from([("mg_per_kg", json!(level))])
}

pub fn ion_as_sodium_nitrate(case: &Case) -> Answer {
    let ion = Level::<NitrateIon, OnGreenWeight>::new(case.number("mg_per_kg")).unwrap();
    mg_per_kg(ion.as_sodium_nitrate().mg_per_kg())
}

pub fn sodium_nitrate_as_ion(case: &Case) -> Answer {
    let salt = Level::<SodiumNitrate, OnGreenWeight>::new(case.number("mg_per_kg")).unwrap();
    mg_per_kg(salt.as_nitrate_ion().mg_per_kg())
}

fn salt(mg_per_kg: f64) -> Level<SodiumNitrite, OnGreenWeight> {
    Level::new(mg_per_kg).unwrap()
}

fn ion(mg_per_kg: f64) -> Level<NitriteIon, OnGreenWeight> {
    Level::new(mg_per_kg).unwrap()
}

pub fn stricter(case: &Case) -> Answer {
    let as_salt = ion(case.number("ion_mg_per_kg")).as_sodium_nitrite();
    let by_salt = salt(case.number("sodium_nitrite_mg_per_kg")) < as_salt;
    Answer::from([("stricter", json!(if by_salt { "sodium-nitrite" } else { "ion" }))])
}

pub fn cut(case: &Case) -> Answer {
    let before = salt(case.number("sodium_nitrite_before_mg_per_kg"));
    let after = ion(case.number("ion_after_mg_per_kg")).as_sodium_nitrite();
    let left = after.mg_per_kg() / before.mg_per_kg();
    Answer::from([("percent", json!((1.0 - left) * 100.0))])
}

/// The product is divided by, premix and all, so it stands for the green weight here.
pub fn premix_for_ion(case: &Case) -> Answer {
    let strength = Level::<SodiumNitrite, InPremix>::percent(case.number("strength_percent"));
    let product = GreenWeight::new(case.mass("product")).unwrap();
    let target = ion(case.number("ion_mg_per_kg"));
    let mass = largest_premix(target, strength.unwrap().as_nitrite_ion(), product).unwrap();
    Answer::from([("grams", json!(mass.mass().value * 1000.0))])
}

pub fn mixed_up(case: &Case) -> Answer {
    let green = GreenWeight::new(kilograms(1.0)).unwrap();
    let strength = |name| Level::percent(case.number(name)).unwrap();
    let intended = salt(case.number("intended_mg_per_kg"));
    let premix: PremixMass = largest_premix(intended, strength("assumed_percent"), green).unwrap();
    mg_per_kg(ingoing::<SodiumNitrite>(premix, strength("used_percent"), green).mg_per_kg())
}

fn day(case: &Case) -> Option<Date> {
    let parts: Vec<u16> =
        case.maybe_word("date")?.split('-').map(|part| part.parse().unwrap()).collect();
    let small = |n: u16| u8::try_from(n).unwrap();
    Some(Date::new(parts[0], small(parts[1]), small(parts[2])).unwrap())
}

fn rows<'a>(case: &'a Case) -> impl Iterator<Item = &'static Cited<ProductLimit>> + 'a {
    let authority = Authority::from_key(case.word("authority")).unwrap();
    product_rows(authority, case.word("product_key"), day(case))
}

/// A word of an enumeration as a table writes it: `NitriteIon` is `nitrite-ion`.
fn key_of(value: impl std::fmt::Debug) -> String {
    let mut key = String::new();
    for c in format!("{value:?}").chars() {
        if c.is_uppercase() && !key.is_empty() {
            key.push('-');
        }
        key.extend(c.to_lowercase());
    }
    key
}

pub fn lookup(case: &Case) -> Answer {
    let agents = match case.word("agent") {
        "nitrite" => Agents::Nitrite,
        "nitrate" => Agents::Nitrate,
        other => panic!("{}: no agent {other}", case.key),
    };
    let found: Vec<_> = rows(case).filter(|row| row.value.agents == agents).collect();
    let mut answer = Answer::from([("rows", json!(found.len() as f64))]);
    if let Some(row) = found.first().map(|row| row.value) {
        answer.insert("mg_per_kg", json!(row.limit.figures().0));
        answer.insert("counted_as", json!(key_of(row.counted_as)));
        answer.insert("measured_on", json!(key_of(row.measured_on)));
        answer.insert("residual_cap_mg_per_kg", json!(row.residual_cap));
        answer.insert("investigate_above_mg_per_kg", json!(row.investigate_above));
    }
    answer
}

pub fn product_level(case: &Case) -> Answer {
    let level = case.number("mg_per_kg");
    let meets = rows(case).all(|row| row.value.limit.met_by(level).unwrap());
    assert!(rows(case).count() > 0, "{}: no row", case.key);
    Answer::from([("meets", json!(meets))])
}

pub fn ratio(case: &Case) -> Answer {
    let limit = rows(case).next().unwrap().value.limit.figures().0;
    // What was found is counted as the ion already.
    Answer::from([("times", json!(case.number("mg_per_kg") / ion(limit).mg_per_kg()))])
}

pub fn fda_analysis(case: &Case) -> Answer {
    let level = case.number("mg_per_kg");
    let key = case.word("product_key");
    let row = product_rows(Authority::UsFda, key, None).next().unwrap();
    let fish = if key.contains("tuna") { "tuna" } else { "salmon" };
    let references = References::read();
    let action = references
        .table("cure/us-fda-action")
        .rows
        .iter()
        .find(|row| row.words("product").contains(fish));
    let exceeds = action.unwrap().number("sodium_nitrite_mg_per_kg_exceeds");
    Answer::from([
        ("meets", json!(row.value.limit.met_by(level).unwrap())),
        ("over_action_level", json!(level > exceeds)),
    ])
}

pub fn home_cure(case: &Case) -> Answer {
    let meets = |agents, level| {
        let mut rows = product_rows(Authority::UsFda, "fda/home-cure", None);
        let row = rows.find(|row| row.value.agents == agents).unwrap();
        json!(row.value.limit.met_by(case.number(level)).unwrap())
    };
    Answer::from([
        ("nitrite_meets", meets(Agents::Nitrite, "nitrite_mg_per_kg")),
        ("nitrate_meets", meets(Agents::Nitrate, "nitrate_mg_per_kg")),
    ])
}

pub fn analysed(case: &Case) -> Answer {
    let level = case.number("mg_per_kg");
    let met = match case.word("agent") {
        "nitrite" => US_RESIDUAL.value.met_by(Level::<_, Residual>::new(level).unwrap()).unwrap(),
        _ => {
            let mut rows = product_rows(Authority::UsFda, "fda/home-cure", None);
            let row = rows.find(|row| row.value.agents == Agents::Nitrate).unwrap();
            row.value.limit.met_by(level).unwrap()
        }
    };
    Answer::from([("verdict", json!(if met { "meets" } else { "breaks" }))])
}
