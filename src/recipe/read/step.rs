use super::{duration, percent};
use crate::cite::Date;
use crate::cook::{Moisture, air};
use crate::recipe::document::{Step, StepKind};
use crate::recipe::keys::{Fault, Faults, Keys, fault, nearest};
use crate::recipe::validate::{self, belongs};
use crate::shelf::PH;
use crate::store::{Thawing, chart_keys, chart_row};
use crate::units::read_temperature;

pub(super) const STEP: &[&str] = &[
    "do", "at", "for", "to", "hold", "come_up", "humidity", "wet_bulb", "moisture", "ph", "like",
    "vacuum", "how",
];

pub(super) fn step(keys: &Keys<'_, '_>, date: Option<Date>, faults: &mut Faults) -> Option<Step> {
    let asks = "what is done in this step?";
    let kind = keys.required_word("do", asks, &StepKind::ALL, StepKind::key, faults);
    let like = keys.text("like", faults).and_then(|text| {
        let row = chart_row(text.text, date);
        if row.is_none() {
            let near = nearest(text.text, chart_keys());
            faults.push(Fault {
                message: "`like` names a row of the storage chart, and on the day of the recipe there is none of this name"
                    .to_owned(),
                help: Some(match near {
                    Some(near) => format!("did you mean `{near}`?"),
                    None => "references/pages/store/cold-food.md lists the rows".to_owned(),
                }),
                place: text.place,
            });
        }
        row
    });
    let step = Step {
        kind: kind?,
        at: keys.placed("at", read_temperature, faults),
        time: duration(keys, "for", faults),
        to: keys.placed("to", read_temperature, faults),
        hold: duration(keys, "hold", faults),
        humidity: humidity(keys, faults),
        moisture: keys.word("moisture", &Moisture::ALL, Moisture::key, faults),
        ph: keys.plain_number("ph", &PH, faults),
        come_up: duration(keys, "come_up", faults),
        like,
        vacuum: keys.yes("vacuum", faults).unwrap_or(false),
        how: keys.word("how", &Thawing::ALL, Thawing::key, faults),
        place: keys.place,
    };
    refuse_misplaced(keys, step.kind, faults);
    if let Some(place) = validate::thaw_of_its_own(&step) {
        fault(faults, place, validate::PART_OF_THE_COOK);
    }
    if let Some(to) = validate::above_its_air(&step) {
        fault(faults, to.place, validate::ABOVE_AT);
    }
    Some(step)
}

fn refuse_misplaced(keys: &Keys<'_, '_>, kind: StepKind, faults: &mut Faults) {
    let belongs = |key| Some((key, belongs(key)?));
    for (key, kinds) in keys.names().filter_map(belongs) {
        let Some(value) = keys.value(key).filter(|_| !kinds.contains(&kind)) else { continue };
        let kinds: Vec<_> = kinds.iter().map(|kind| format!("\"{}\"", kind.key())).collect();
        faults.push(Fault {
            message: format!("`{key}` says nothing on a step with do = \"{}\"", kind.key()),
            help: Some(match key {
                "to" => "how food cools is written as [[component.cooling]] rows; `to` belongs to a step that cooks".to_owned(),
                "vacuum" => "write a step with do = \"pack\" and vacuum = true before it, and one with do = \"open\" after".to_owned(),
                _ => format!("it belongs to {}", kinds.join(", ")),
            }),
            place: value.span().into(),
        });
    }
}

/// The relative humidity around the food: as stated, or from its wet bulb at the pressure of sea
/// level, which is the least that the two bulbs can mean higher up.
fn humidity(keys: &Keys<'_, '_>, faults: &mut Faults) -> Option<f64> {
    let stated = percent(keys, "humidity", faults);
    let Some(wet) = keys.placed("wet_bulb", read_temperature, faults) else { return stated };
    if stated.is_some() {
        fault(faults, wet.place, "`humidity` and `wet_bulb` say the same: write one of them");
        return None;
    }
    let Some(dry) = keys.quantity("at", read_temperature, faults) else {
        fault(faults, wet.place, "`wet_bulb` needs the dry bulb beside it: write `at`");
        return None;
    };
    let sea = air::standard_pressure(0.0).ok()?;
    match air::relative_humidity(dry, wet.value, sea) {
        Ok(percent) => Some(percent),
        Err(error) => {
            fault(faults, wet.place, error.to_string());
            None
        }
    }
}
