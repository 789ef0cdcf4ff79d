use uom::si::f64::{TemperatureInterval, Time};

use super::Ceiling;
use super::table::COLD_CEILINGS;
use crate::authority::Authority;
use crate::cite::{Cited, Date};
use crate::finding::{Answer, Finding, Force, Limit, Mend, Missing, Place, Placed, Rule, Verdict};
use crate::food::Food;
use crate::range::Range;
use crate::units::Reading;

const CHAMBER: Rule =
    Rule::new("smoke/cold-chamber", "a chamber cool enough for cold smoking", Force::Safety);
const CHEESE: Rule =
    Rule::new("smoke/cheese-chamber", "a chamber too cool to melt cheese", Force::Quality);
const ANSWERED: Rule = Rule::new(
    "smoke/authority",
    "an authority that says how warm cold smoke may be",
    Force::Safety,
);

/// The rules of this room.
pub const RULES: [Rule; 7] = [
    CHAMBER,
    CHEESE,
    ANSWERED,
    super::fish::SALT,
    super::fish::HOT,
    super::fish::BRINING,
    super::fish::VARIED,
];

const HOW_WARM: Missing =
    Missing::new("how warm the chamber is", "write at = \"… °F\" on the step");
const HOW_LONG: Missing = Missing::new("how long it is smoked", "write for = \"… h\" on the step");
const MEAT: Missing = Missing::new(
    "what makes a cold-smoked meat safe: its cure and its drying, or a cook that follows",
    "cook it afterwards, or have the cure and the drying checked by someone licensed to",
);

/// A cold smoke, as the recipe plans it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ColdSmoke {
    /// The food.
    pub food: Food,
    /// Whether it is cooked afterwards, so that this is a stage of the cook.
    pub cooked_later: bool,
    /// The temperature of the chamber.
    pub at: Option<Reading>,
    /// How far the thermometer may be off.
    pub thermometer: Option<TemperatureInterval>,
    /// For how long.
    pub time: Option<Range<Time>>,
    /// Where it stands in the document.
    pub place: Place,
}

/// Whether an authority, or the practice of the trade, has a ceiling for a food.
#[must_use]
pub fn answers(authority: Option<Authority>, food: Food) -> bool {
    COLD_CEILINGS.iter().any(|row| applies(row, authority, food))
}

/// Whether an authority has a ceiling for a food that says for how long, too.
#[must_use]
pub fn says_how_long(authority: Authority, food: Food) -> bool {
    COLD_CEILINGS.iter().any(|row| applies(row, Some(authority), food) && row.value.time.is_some())
}

/// The finding when none of the authorities of a recipe has a ceiling for the food.
#[must_use]
pub fn unanswered(place: Place) -> Finding {
    Finding::new(&ANSWERED, Verdict::Unproven).at(place).missing(
        Missing::new(
            "an authority that says how warm cold smoke may be for this food",
            "add one to held_to, for example \"us-fda\" for fish",
        )
        .answered_by(Answer::NoTable),
    )
}

fn applies(row: &Cited<Ceiling>, authority: Option<Authority>, food: Food) -> bool {
    row.value.food == food && row.value.authority == authority && !row.value.air_packed_only
}

/// Checks a cold smoke against the ceilings of one authority, or with `None` against
/// the practice of the trade.
///
/// Where a document gives several pairs of temperature and time, one of them must
/// hold; nothing is read between them.
pub fn check(
    smoke: &ColdSmoke,
    authority: Option<Authority>,
    day: Option<Date>,
    report: &mut impl FnMut(Finding),
) {
    let rule = if smoke.food == Food::Cheese { &CHEESE } else { &CHAMBER };
    let rows = || {
        COLD_CEILINGS
            .iter()
            .filter(|row| applies(row, authority, smoke.food) && row.row.in_force.on(day))
    };
    if rows().next().is_none() {
        return;
    }
    let Some(at) = smoke.at else {
        report(Finding::new(rule, Verdict::Unproven).missing(HOW_WARM).at(smoke.place));
        return;
    };
    let found = rows().map(|row| hold(smoke, rule, at, row));
    found.reduce(Finding::or_better).into_iter().for_each(report);
}

fn hold(
    smoke: &ColdSmoke,
    rule: &'static Rule,
    at: Reading,
    row: &'static Cited<Ceiling>,
) -> Finding {
    let placed = Placed { value: at, place: smoke.place };
    let finding =
        Finding::at_or_below(rule, row.value.temperature, &row.row, placed, smoke.thermometer);
    if finding.verdict != Verdict::Meets {
        return finding;
    }
    let Some(longest) = row.value.time else {
        return finding;
    };
    let Some(time) = smoke.time else {
        return finding.left_open(HOW_LONG);
    };
    let limit = Limit::AtMost(longest);
    let taken = Range::ordered(time.high(), time.high());
    match limit.judge(&taken) {
        Verdict::Meets => finding,
        verdict => Finding::new(rule, verdict)
            .found(&time)
            .limit(limit)
            .row(&row.row)
            .at(smoke.place)
            .mend(Mend::KeepFor(longest)),
    }
}

/// A meat smoked cold and never cooked: no ceiling of the chamber makes it safe.
#[must_use]
pub fn meat_never_cooked(smoke: &ColdSmoke) -> Option<Finding> {
    let rests_on_cure = smoke.food.is_meat() && !smoke.cooked_later;
    rests_on_cure.then(|| Finding::new(&CHAMBER, Verdict::Unproven).missing(MEAT).at(smoke.place))
}
