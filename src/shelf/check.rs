use super::table::{PACKAGING_BARRIERS_ACTIVITY, PACKAGING_BARRIERS_PH};
use super::{Cell, cell};
use crate::authority::Authority;
use crate::cite::Cited;
use crate::finding::{Finding, Force, Limit, Missing, Place, Rule, Verdict};

const BARRIER: Rule =
    Rule::new("shelf/packaging-barrier", "what a pack without air rests on", Force::Safety);
const STABLE: Rule = Rule::new(
    "shelf/interaction",
    "dry and acid enough to need neither time nor temperature",
    Force::Safety,
);

/// The rules of this room.
pub const RULES: [Rule; 2] = [BARRIER, STABLE];

const ANALYSIS: Missing = Missing::new(
    "the water activity or the pH that the pack rests on",
    "write analysis = { water_activity = …, ph = … }, or pack it with air or frozen",
);
const ON_THE_SPOT: &str = "Meat that was cured on the spot is no barrier, whatever its nitrite: only meat cured in an inspected plant and received in its pack. What 120 ppm nitrite and 3.5 % brine allow is slow cooling, not this.";
const WHO: &str = "A shop needs a plan, approved beforehand, for every pack without air.";

/// What is known of a food that is packed without air.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Packed {
    /// Whether it is raw meat, poultry or vegetables, whose own flora competes.
    pub raw: bool,
    /// Whether a curing agent was added here.
    pub cured_here: bool,
    /// Water activity.
    pub activity: Option<f64>,
    /// pH.
    pub ph: Option<f64>,
    /// Where it stands in the document.
    pub place: Place,
}

fn at_most(most: f64, known: Option<f64>) -> Option<bool> {
    known.and_then(|known| Limit::AtMost(most).met_by(known))
}

/// Holds a pack without air against the Food Code; `None` for another authority, and for food
/// whose own flora is the barrier.
#[must_use]
pub fn check_pack(packed: &Packed, authority: Authority) -> Option<Finding> {
    if !authority.is_food_code() || packed.raw {
        return None;
    }
    let (dry, sour) = (&PACKAGING_BARRIERS_ACTIVITY, &PACKAGING_BARRIERS_PH);
    let by_activity = at_most(dry.value, packed.activity);
    let by_ph = at_most(sour.value, packed.ph);
    let finding = |verdict| {
        let finding = Finding::new(&BARRIER, verdict).row(&dry.row).row(&sour.row).at(packed.place);
        finding.note(if packed.cured_here { ON_THE_SPOT } else { WHO })
    };
    Some(match (by_activity, by_ph) {
        (Some(true), _) | (_, Some(true)) => finding(Verdict::Meets),
        (Some(false), Some(false)) => finding(Verdict::Breaks),
        _ => finding(Verdict::Unproven).missing(ANALYSIS),
    })
}

/// Whether a food needs neither time nor temperature by the Food Code: the cell that says so.
/// `None` where it does need them, where it is not known, and for another authority.
///
/// Table B counts, that of food which was not heated in its final state and then packaged: it is the
/// stricter one.
#[must_use]
pub fn needs_none(
    activity: Option<f64>,
    ph: Option<f64>,
    authority: Authority,
) -> Option<&'static Cited<Cell>> {
    let cell = cell(false, activity?, ph?).ok()??;
    (authority.is_food_code() && cell.value.needs_none).then_some(cell)
}

/// The finding on a food that needs neither.
#[must_use]
pub fn stable(cell: &'static Cited<Cell>, place: Place) -> Finding {
    Finding::new(&STABLE, Verdict::Meets).row(&cell.row).at(place)
}
