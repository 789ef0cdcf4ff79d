use super::{duration, percent};
use crate::cure::{Analysis, Level, Method, Pump, SodiumNitrate, SodiumNitrite};
use crate::range::Range;
use crate::recipe::document::{CurePlan, Proximates};
use crate::recipe::keys::{Fault, Faults, Keys, fault};
use crate::recipe::validate::{OTHER_PROTEIN, TAKEN_UP, ends, too_much_other_protein, whole};
use crate::shelf::{ACTIVITY, PH};
use crate::units::{read_concentration, read_concentrations, read_temperature};

pub(super) const CURE: &[&str] = &[
    "method",
    "pump",
    "pick_up",
    "equilibrium",
    "sugar",
    "culture",
    "at",
    "for",
    "ingoing_nitrite",
];
pub(super) const ANALYSIS: &[&str] = &[
    "nitrite",
    "nitrate",
    "as",
    "fat",
    "moisture",
    "protein",
    "other_protein",
    "salt",
    "water_activity",
    "ph",
];

pub(super) fn cure(keys: &Keys<'_, '_>, faults: &mut Faults) -> CurePlan {
    let method = keys.word("method", &Method::ALL, Method::key, faults);
    let mut fraction = |key, of: Method| {
        let both = |pump: &Range<f64>| ends(&TAKEN_UP, pump.low(), pump.high());
        let pump = keys.bounded(key, read_concentrations, both, faults)?;
        if method.is_some_and(|method| method != of) {
            let place = keys.value(key).map_or(keys.place, |value| value.span().into());
            let message = format!("`{key}` belongs to a cure of method \"{}\"", of.key());
            fault(faults, place, message);
        }
        let fraction = |level: f64| Pump::new(level / 1e6).ok();
        Range::new(fraction(pump.low())?, fraction(pump.high())?).ok()
    };
    let pump = fraction("pump", Method::Pumped);
    let pick_up = fraction("pick_up", Method::Immersion);
    CurePlan {
        method,
        taken_up: pump.or(pick_up),
        equilibrium: keys.yes("equilibrium", faults),
        sugar_percent: keys.quantity("sugar", read_concentration, faults).map(|ppm| ppm / 1e4),
        culture: keys.yes("culture", faults),
        claimed: keys.placed("ingoing_nitrite", read_concentration, faults),
        at: keys.placed("at", read_temperature, faults),
        time: duration(keys, "for", faults),
        place: keys.place,
    }
}

pub(super) fn analysis(keys: &Keys<'_, '_>, faults: &mut Faults) -> Analysis {
    let ions = keys.word("as", &["ions", "sodium-salts"], |word| word, faults);
    let agents = ["nitrite", "nitrate"].iter().any(|key| keys.value(key).is_some());
    if keys.value("as").is_none() && agents {
        faults.push(Fault {
            message: "`as` is missing: as what does the laboratory count its figures?".to_owned(),
            help: Some("it is \"ions\" (NO2, NO3) or \"sodium-salts\" (NaNO2, NaNO3)".to_owned()),
            place: keys.place,
        });
    }
    let mut level = |key| keys.quantity(key, read_concentration, faults);
    let (nitrite, nitrate) = (level("nitrite"), level("nitrate"));
    if ions == Some("ions") {
        return Analysis {
            nitrite: nitrite.and_then(|level| Level::new(level).ok()),
            nitrate: nitrate.and_then(|level| Level::new(level).ok()),
        };
    }
    let nitrite = nitrite.and_then(|level| Level::<SodiumNitrite, _>::new(level).ok());
    let nitrate = nitrate.and_then(|level| Level::<SodiumNitrate, _>::new(level).ok());
    Analysis {
        nitrite: nitrite.map(Level::<SodiumNitrite, _>::as_nitrite_ion),
        nitrate: nitrate.map(Level::<SodiumNitrate, _>::as_nitrate_ion),
    }
}

pub(super) fn proximates(keys: &Keys<'_, '_>, faults: &mut Faults) -> Proximates {
    let found = Proximates {
        fat: percent(keys, "fat", faults),
        moisture: percent(keys, "moisture", faults),
        protein: percent(keys, "protein", faults),
        other_protein: percent(keys, "other_protein", faults),
        salt: percent(keys, "salt", faults),
        water_activity: keys.plain_number("water_activity", &ACTIVITY, faults),
        ph: keys.plain_number("ph", &PH, faults),
    };
    if let Err(error) = whole(&found) {
        fault(faults, keys.place, error.to_string());
    }
    if too_much_other_protein(&found) {
        let place = keys.value("other_protein").map_or(keys.place, |value| value.span().into());
        fault(faults, place, OTHER_PROTEIN);
    }
    found
}
