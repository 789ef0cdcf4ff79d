use uom::si::f64::Time;

use super::table::{
    PACKAGING_BARRIERS_ACTIVITY, PACKAGING_BARRIERS_PH, PACKS_ELSEWHERE_OLDER, PACKS_ELSEWHERE_UK,
    PACKS_ELSEWHERE_UK_ACTIVITY, PACKS_ELSEWHERE_UK_FRESH, PACKS_ELSEWHERE_UK_PH,
    PACKS_ELSEWHERE_UK_SALT, PACKS_FOOD_CODE_COLD_DAYS, PACKS_FOOD_CODE_COLD_WITHIN,
    PACKS_FOOD_CODE_FISH, PACKS_FOOD_CODE_LIFE, PACKS_FOOD_CODE_OPENED,
    PACKS_FOOD_CODE_OPENED_TIME, PACKS_FOOD_CODE_WEEK_DAYS,
};
use super::{Cell, cell};
use crate::authority::Authority;
use crate::cite::Cited;
use crate::finding::{Answer, Finding, Force, Limit, Mend, Missing, Place, Rule, Verdict};
use crate::food::Food;
use crate::range::Range;

const BARRIER: Rule =
    Rule::new("shelf/packaging-barrier", "what a pack without air rests on", Force::Safety);
const LIFE: Rule = Rule::new("shelf/pack-life", "days in a pack without air", Force::Safety);
const STABLE: Rule = Rule::new(
    "shelf/interaction",
    "dry and acid enough to need neither time nor temperature",
    Force::Safety,
);

/// The rules of this room.
pub const RULES: [Rule; 3] = [BARRIER, LIFE, STABLE];

const HOW_LONG: Missing =
    Missing::new("how long the pack is kept", "write for = \"… days\" on the step that keeps it");

const ANALYSIS: Missing = Missing::new(
    "the water activity or the pH that the pack rests on",
    "write analysis = { water_activity = …, ph = … }, or pack it with air or frozen",
);
const EDITION: Missing = Missing::new(
    "which time this edition prints: older ones print a shorter one, and it was not read",
    "keep to the shorter time, or name the edition that counts where you are",
);
const FROZEN_BEFORE: Missing = Missing::new(
    "that the fish is frozen before it is packed",
    "write a step with do = \"freeze\" before the pack",
);
const LABEL: Missing = Missing::new(
    "that such a pack always bears the time and date it was made, and is opened in time",
    "label every pack so; a pack that is kept longer rests on water activity or pH by an analysis",
)
.answered_by(Answer::Outside);
const ON_THE_SPOT: &str = "Meat that was cured on the spot is no barrier, whatever its nitrite: only meat cured in an inspected plant and received in its pack. What 120 ppm nitrite and 3.5 % brine allow is slow cooling, not this.";
const FISH: &str = "Frozen before, during and after: pack it with air, or freeze it first and keep it frozen in its pack. A shop needs a variance for anything else.";
const WHO: &str = "A shop needs a plan, approved beforehand, for every pack without air.";

/// What is known of a food that is packed without air.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Packed {
    /// The food.
    pub food: Food,
    /// Whether it is raw: the own flora of raw meat and poultry without a cure competes.
    pub raw: bool,
    /// Whether a curing agent was added here.
    pub cured_here: bool,
    /// Whether it is frozen when it is packed, where that is known.
    pub frozen_before: Option<bool>,
    /// Whether it is frozen all the time that it is packed.
    pub frozen: bool,
    /// Whether the pack is opened after the time that it is kept.
    pub opened: bool,
    /// Water activity.
    pub activity: Option<f64>,
    /// pH.
    pub ph: Option<f64>,
    /// Salt in its water, percent.
    pub brine: Option<Range<f64>>,
    /// How long it is kept packed, without the time in a freezer.
    pub kept: Option<Range<Time>>,
    /// Where it stands in the document.
    pub place: Place,
}

fn at_most(most: f64, known: Option<f64>) -> Option<bool> {
    known.and_then(|known| Limit::AtMost(most).met_by(known))
}

/// Whether an authority says how long a pack without air is kept cold.
#[must_use]
pub fn says_pack_life(authority: Authority, food: Food) -> bool {
    authority == Authority::GreatBritain || (authority.is_food_code() && food != Food::Fish)
}

/// Holds a pack without air against the rules of an authority: what it rests on, and how long it
/// is kept.
pub fn check_pack(packed: &Packed, authority: Authority, report: &mut impl FnMut(Finding)) {
    if authority.is_food_code() {
        barrier(packed).into_iter().for_each(&mut *report);
        if !packed.frozen && says_pack_life(authority, packed.food) {
            let (now, then) =
                (life(packed, &PACKS_FOOD_CODE_LIFE), life(packed, &PACKS_ELSEWHERE_OLDER));
            let doubted = authority == Authority::UsFoodCode2013
                && now.verdict == Verdict::Meets
                && then.verdict != Verdict::Meets;
            report(if doubted {
                Finding { verdict: Verdict::Unproven, ..then }.missing(EDITION)
            } else {
                now
            });
        }
    }
    if authority == Authority::GreatBritain && !packed.frozen {
        british(packed, report);
    }
}

/// What it rests on in a shop of the United States.
fn barrier(packed: &Packed) -> Option<Finding> {
    if packed.food == Food::Fish {
        let finding = |verdict| {
            let finding = Finding::new(&BARRIER, verdict).row(&PACKS_FOOD_CODE_FISH.row);
            finding.note(FISH).at(packed.place)
        };
        return Some(match (packed.frozen_before, packed.frozen) {
            (Some(true), true) => finding(Verdict::Meets),
            (None, true) => finding(Verdict::Unproven).missing(FROZEN_BEFORE),
            _ => finding(Verdict::Breaks),
        });
    }
    // Of meat that was cured here the own flora does not count.
    let competes = packed.raw && packed.food.is_meat() && !packed.cured_here;
    if competes || packed.frozen {
        return None;
    }
    let (dry, sour) = (&PACKAGING_BARRIERS_ACTIVITY, &PACKAGING_BARRIERS_PH);
    let by_activity = at_most(dry.value, packed.activity);
    let by_ph = at_most(sour.value, packed.ph);
    let finding = |verdict| {
        let finding = Finding::new(&BARRIER, verdict).row(&dry.row).row(&sour.row).at(packed.place);
        finding.note(if packed.cured_here { ON_THE_SPOT } else { WHO })
    };
    // A pack that is opened so soon needs no plan, and rests on its label.
    let soon = Limit::AtMost(PACKS_FOOD_CODE_OPENED_TIME.value);
    let opened =
        packed.opened && packed.kept.is_some_and(|kept| soon.judge(&kept) == Verdict::Meets);
    Some(match (by_activity, by_ph) {
        (Some(true), _) | (_, Some(true)) => finding(Verdict::Meets),
        _ if opened => Finding::new(&BARRIER, Verdict::Unproven)
            .row(&PACKS_FOOD_CODE_OPENED.row)
            .missing(LABEL)
            .at(packed.place),
        (Some(false), Some(false)) => finding(Verdict::Breaks),
        _ => finding(Verdict::Unproven).missing(ANALYSIS),
    })
}

fn life(packed: &Packed, row: &'static Cited<Time>) -> Finding {
    let limit = Limit::AtMost(row.value);
    let finding =
        |verdict| Finding::new(&LIFE, verdict).row(&row.row).limit(limit).at(packed.place);
    let Some(kept) = packed.kept else {
        return finding(Verdict::Unproven).missing(HOW_LONG);
    };
    let found = finding(limit.judge(&kept)).found(&kept);
    found.or_mend(Mend::KeepFor(row.value))
}

/// Ten days, or thirteen for fresh red meat, unless one of the controls holds throughout.
fn british(packed: &Packed, report: &mut impl FnMut(Finding)) {
    let acid = at_most(PACKS_ELSEWHERE_UK_PH.value, packed.ph) == Some(true);
    let dry = at_most(PACKS_ELSEWHERE_UK_ACTIVITY.value, packed.activity) == Some(true);
    let salt = Limit::AtLeast(PACKS_ELSEWHERE_UK_SALT.value);
    let salty = packed.brine.is_some_and(|brine| salt.judge(&brine) == Verdict::Meets);
    let control = [
        (acid, &PACKS_ELSEWHERE_UK_PH.row),
        (dry, &PACKS_ELSEWHERE_UK_ACTIVITY.row),
        (salty, &PACKS_ELSEWHERE_UK_SALT.row),
    ];
    if let Some((_, row)) = control.into_iter().find(|(holds, _)| *holds) {
        report(Finding::new(&BARRIER, Verdict::Meets).row(row).at(packed.place));
        return;
    }
    let fresh = packed.raw && !packed.cured_here && packed.food == Food::WholeMeat;
    report(life(packed, if fresh { &PACKS_ELSEWHERE_UK_FRESH } else { &PACKS_ELSEWHERE_UK }));
}

/// How food that was cooked and sealed hot is kept: from when it reached 41 °F.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CookChill {
    /// The time until it was at 34 °F, where it was.
    pub to_34: Option<Time>,
    /// The time at 41 °F or below after that, or from the start.
    pub at_41: Time,
    /// The time from packing until it is eaten, without that in a freezer.
    pub from_packing: Time,
}

impl CookChill {
    /// Whether it keeps to one of the ways of the Food Code: seven days at 41 °F; or 34 °F within 48
    /// hours and used within thirty days, of which at most seven at 41 °F.
    ///
    /// ```
    /// use greenweight::{shelf::CookChill, units::{days, hours}};
    ///
    /// let kept = CookChill { to_34: Some(hours(48.0)), at_41: days(7.0), from_packing: days(30.0) };
    /// assert!(kept.keeps_to_the_code());
    /// assert!(!CookChill { to_34: None, ..kept }.keeps_to_the_code());
    /// ```
    #[must_use]
    pub fn keeps_to_the_code(&self) -> bool {
        let within = |time: Time, most: Time| Limit::AtMost(most).met_by(time) == Some(true);
        let a_week = within(self.at_41, PACKS_FOOD_CODE_WEEK_DAYS.value);
        let cold = self.to_34.is_some_and(|time| within(time, PACKS_FOOD_CODE_COLD_WITHIN.value));
        let month = within(self.from_packing, PACKS_FOOD_CODE_COLD_DAYS.value);
        let short = within(self.from_packing, PACKS_FOOD_CODE_WEEK_DAYS.value);
        a_week && ((cold && month) || short)
    }
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

/// Whether the Food Code would ask neither time nor temperature of a food by what is known of it, the rest taken at its
/// worst: whoever else is asked, hours in the warm break nothing then, and are not proven.
#[must_use]
pub fn may_need_none(activity: Option<f64>, ph: Option<f64>) -> bool {
    let known = activity.is_some() || ph.is_some();
    let (activity, ph) = (activity.unwrap_or(1.0), ph.unwrap_or(7.0));
    known && needs_none(Some(activity), Some(ph), Authority::UsFoodCode2022).is_some()
}

/// The finding on a food that needs neither.
#[must_use]
pub fn stable(cell: &'static Cited<Cell>, place: Place) -> Finding {
    Finding::new(&STABLE, Verdict::Meets).row(&cell.row).at(place)
}
