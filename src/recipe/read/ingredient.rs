use super::{mass, percent};
use crate::cure::{Level, Premix};
use crate::range::DIVISION;
use crate::recipe::document::{Animal, Ingredient, Kind};
use crate::recipe::keys::{Faults, Keys, fault};
use crate::recipe::names::names_a_cure;
use crate::recipe::validate::{self, weighs};
use crate::units::{Measures, read_amount, read_concentration, read_liquid_amount};

pub(super) const INGREDIENT: &[&str] = &[
    "name",
    "kind",
    "amount",
    "scale",
    "from",
    "strength",
    "fat",
    "fat_error",
    "skin",
    "hydrated",
    "part",
    "liquid",
];
const STRENGTH: &[&str] =
    &["sodium-nitrite", "potassium-nitrite", "sodium-nitrate", "potassium-nitrate", "salt"];

pub(super) fn ingredient<'i>(
    keys: &Keys<'_, 'i>,
    measures: Option<Measures>,
    faults: &mut Faults,
) -> Ingredient<'i> {
    let asks = "what is this ingredient?";
    let kind = keys.required_word("kind", asks, &Kind::ALL, Kind::key, faults);
    let kind = kind.unwrap_or(Kind::Other);
    let name = keys.required_name("name", faults);
    if kind != Kind::CuringPremix && names_a_cure(&name) {
        let place = keys.value("name").map_or(keys.place, |value| value.span().into());
        fault(faults, place, validate::CURES);
    }
    let liquid = keys.yes("liquid", faults).unwrap_or(kind == Kind::Water);
    let amount = keys.bounded(
        "amount",
        |text| {
            if liquid { read_liquid_amount(text, measures) } else { read_amount(text, measures) }
        },
        |amount| weighs(amount, kind),
        faults,
    );
    if keys.value("part").is_some() {
        keys.word("part", &["pickle"], |part| part, faults);
    }
    if keys.value("strength").is_some() && kind != Kind::CuringPremix {
        let place = keys.value("strength").map_or(keys.place, |value| value.span().into());
        fault(faults, place, validate::STRENGTH);
    }
    Ingredient {
        name,
        kind,
        amount,
        place: keys.value("amount").map_or(keys.place, |value| value.span().into()),
        scale: mass(keys, "scale", &DIVISION, faults),
        from: keys.word("from", &Animal::ALL, Animal::key, faults),
        strength: keys.table("strength", STRENGTH, faults).and_then(|keys| strength(&keys, faults)),
        fat: percent(keys, "fat", faults),
        fat_error: percent(keys, "fat_error", faults),
        skin_on: keys.yes("skin", faults),
        hydrated: hydrated(keys, kind, faults),
        in_pickle: keys.value("part").is_some(),
    }
}

fn hydrated(keys: &Keys<'_, '_>, kind: Kind, faults: &mut Faults) -> bool {
    let hydrated = keys.yes("hydrated", faults).unwrap_or(false);
    if hydrated && !validate::crystallises(kind) {
        let place = keys.value("hydrated").map_or(keys.place, |value| value.span().into());
        fault(faults, place, validate::HYDRATED);
    }
    hydrated
}

fn strength(keys: &Keys<'_, '_>, faults: &mut Faults) -> Option<Premix> {
    let before = faults.len();
    let mut level = |key| keys.quantity(key, read_concentration, faults).unwrap_or(0.0);
    let levels = [
        level("sodium-nitrite"),
        level("potassium-nitrite"),
        level("sodium-nitrate"),
        level("potassium-nitrate"),
    ];
    let [na2, k2, na3, k3] = levels;
    let salt = keys.quantity("salt", read_concentration, faults);
    if faults.len() > before {
        return None;
    }
    if levels.iter().all(|&level| level <= 0.0) {
        fault(faults, keys.place, validate::NO_AGENT);
        return None;
    }
    let premix = || {
        let premix = Premix::new()
            .with_sodium_nitrite(Level::new(na2)?)?
            .with_potassium_nitrite(Level::new(k2)?)?
            .with_sodium_nitrate(Level::new(na3)?)?
            .with_potassium_nitrate(Level::new(k3)?)?;
        match salt {
            Some(salt) => premix.with_salt(Level::new(salt)?),
            None => Ok(premix),
        }
    };
    match premix() {
        Ok(premix) => Some(premix),
        Err(error) => {
            fault(faults, keys.place, error.to_string());
            None
        }
    }
}
