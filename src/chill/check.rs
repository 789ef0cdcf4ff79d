use uom::si::f64::{TemperatureInterval, Time};

use super::clock::{Leg, LegClock};
use super::table::{
    AUSTRALIA, COOLING_US, CURED_CONDITIONS, FOOD_CODE_COOLING, SLOW_COOL_CONDITIONS,
    UNITED_KINGDOM,
};
use crate::authority::Authority;
use crate::cite::{Cited, Date};
use crate::finding::{Finding, Force, Limit, Mend, Missing, Place, Rule, THERMOMETER, Verdict};
use crate::range::Range;
use crate::trace::{Point, Segment, longest_gap, whole_seconds};
use crate::units::{PrintedTemperature, Scale};

const COOLING: Rule =
    Rule::new("chill/cooling", "cooled fast enough after the cook", Force::Safety);

/// The rules of this room.
pub const RULES: [Rule; 5] = [
    COOLING,
    super::warm::WARM,
    super::exposure::EXPOSED,
    super::date_mark::DATE,
    super::ferment::DEGREES,
];

const AGAIN: Missing = Missing::new(
    "that it stays cooled: after the end of this stretch it is warmer again",
    "cool it in one go; what warmed again goes by its time in the warm, and to expert review",
);
const CURVE: Missing = Missing::new(
    "how the middle cools: its temperatures after the cook",
    "write them as [[component.cooling]] rows with after and inside, from above 135 °F down to 40 °F",
);
const CONDITIONS: Missing = Missing::new(
    "what the product holds: nitrite, ascorbate or erythorbate, salt in its water, or water activity",
    "a cured schedule counts only with its conditions: write the cure, the accelerator, or an analysis",
);
const REVIEW: &str = "Out of its limits a product goes to expert review. No computation clears it.";

const CURED_TOO: &str = "The schedule is that of uncured meat. Of the slower one for cured meat the stages were not read, and cured meat is held to this one. Out of its limits a product goes to expert review. No computation clears it.";

/// What a product must hold for a schedule of cured products; a figure that is not named is not
/// asked for.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Formula {
    /// Nitrite, ingoing, mg/kg, at least.
    pub nitrite: Option<f64>,
    /// Ascorbate or erythorbate, ingoing, mg/kg, at least.
    pub ascorbate: Option<f64>,
    /// Salt in the water phase, percent, at least.
    pub brine: Option<f64>,
    /// Water activity, at most.
    pub activity: Option<f64>,
}

/// What is known of a product's formula.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Holds {
    /// Nitrite, ingoing on green weight, mg/kg.
    pub nitrite: Option<Range<f64>>,
    /// Ascorbates and erythorbates, ingoing on green weight, mg/kg.
    pub ascorbate: Option<Range<f64>>,
    /// Salt in the water of the finished product, percent.
    pub brine: Option<Range<f64>>,
    /// Water activity.
    pub activity: Option<f64>,
}

impl Formula {
    /// Whether a product holds what is asked; *unproven* for whatever is not known of it.
    #[must_use]
    pub fn held_by(&self, holds: &Holds) -> Verdict {
        let least = |asked: Option<f64>, known: Option<Range<f64>>| match (asked, known) {
            (None, _) => Verdict::Meets,
            (Some(asked), Some(known)) => Limit::AtLeast(asked).judge(&known),
            (Some(_), None) => Verdict::Unproven,
        };
        let most = match (self.activity, holds.activity) {
            (None, _) => Verdict::Meets,
            (Some(asked), Some(known)) => match Limit::AtMost(asked).met_by(known) {
                Some(true) => Verdict::Meets,
                Some(false) => Verdict::Breaks,
                None => Verdict::Unproven,
            },
            (Some(_), None) => Verdict::Unproven,
        };
        let figures = [
            least(self.nitrite, holds.nitrite),
            least(self.ascorbate, holds.ascorbate),
            least(self.brine, holds.brine),
            most,
        ];
        figures.into_iter().max().unwrap_or(Verdict::Unproven)
    }
}

/// Conditions of which one is enough; none for a schedule of any product.
type Needs = &'static [Cited<Formula>];

/// A schedule: its name, the table of its legs, and what a product must hold for it.
type Schedule = (&'static str, &'static [Cited<Leg>], Needs);

static FSIS: [Schedule; 5] = [
    ("fsis-2021-1.1", &COOLING_US, &[]),
    ("fsis-2021-1.2", &COOLING_US, &[]),
    ("fsis-2021-2", &COOLING_US, &[]),
    ("fsis-2021-3-cured", &COOLING_US, &CURED_CONDITIONS),
    ("fsis-2021-4-cured-salt", &COOLING_US, &SLOW_COOL_CONDITIONS),
];
static RETAIL: [Schedule; 1] = [("food-code", &FOOD_CODE_COOLING, &[])];
static AUSTRALIAN: [Schedule; 1] = [("australia", &AUSTRALIA, &[])];
static BRITISH: [Schedule; 1] = [("uncured-maximum", &UNITED_KINGDOM, &[])];

/// The schedules of an authority. Each is enough by itself.
fn schedules(authority: Authority) -> &'static [Schedule] {
    match authority {
        Authority::UsFsis => &FSIS,
        _ if authority.is_food_code() => &RETAIL,
        Authority::AustraliaNewZealand => &AUSTRALIAN,
        Authority::GreatBritain => &BRITISH,
        _ => &[],
    }
}

/// Whether an authority says how fast food is cooled.
#[must_use]
pub fn answers(authority: Authority) -> bool {
    !schedules(authority).is_empty()
}

/// The legs of the schedule that a finding on cooling was judged by.
///
/// ```
/// use greenweight::authority::Authority;
/// use greenweight::chill::{Cooling, Holds, check, legs};
/// use greenweight::finding::Place;
///
/// use greenweight::units::seconds;
///
/// let cooling = Cooling {
///     curve: &[],
///     vouched: seconds(0.0),
///     thermometer: None,
///     holds: Holds::default(),
///     place: Place::default(),
/// };
/// let finding = check(&cooling, Authority::UsFoodCode2022, None).ok_or("no schedule")?;
/// assert_eq!(legs(Authority::UsFoodCode2022, &finding).count(), 2);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn legs(authority: Authority, finding: &Finding) -> impl Iterator<Item = &'static Cited<Leg>> {
    let row = finding.rows.into_iter().flatten().next();
    let judged = |leg: &&Cited<Leg>| row.is_some_and(|row| row.key == leg.row.key);
    let all = move || schedules(authority).iter().flat_map(|(_, rows, _)| rows.iter());
    let schedule = all().find(judged).map(|leg| leg.value.schedule);
    // Several schedules may lie in one table.
    let table = schedules(authority).iter().find(|(name, ..)| Some(*name) == schedule);
    let rows = table.map_or(&[][..], |(_, rows, _)| rows);
    rows.iter().filter(move |leg| Some(leg.value.schedule) == schedule)
}

/// Whether the schedules of an authority are for any cooked food, and not for meat alone.
#[must_use]
pub fn cools_any_food(authority: Authority) -> bool {
    authority.is_food_code() || authority == Authority::AustraliaNewZealand
}

/// How a food cools.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cooling<'a> {
    /// The warmest part, from the end of the cook.
    pub curve: &'a [Point],
    /// The longest time between two readings for which they [vouch](crate::trace::vouched).
    pub vouched: Time,
    /// How far the probe may be off; none stated proves nothing.
    pub thermometer: Option<TemperatureInterval>,
    /// What the product holds.
    pub holds: Holds,
    /// Where it stands in the document.
    pub place: Place,
}

/// Holds a cooling curve against the schedules of an authority on a day: the best of them counts,
/// and of that its worst leg is reported.
#[must_use]
pub fn check(cooling: &Cooling<'_>, authority: Authority, day: Option<Date>) -> Option<Finding> {
    let unproven =
        |missing| Finding::new(&COOLING, Verdict::Unproven).missing(missing).at(cooling.place);
    let mut best: Option<Finding> = None;
    for (name, rows, needs) in schedules(authority) {
        let legs =
            rows.iter().filter(|row| row.value.schedule == *name && row.row.in_force.on(day));
        let formula = formula(needs, &cooling.holds);
        let mut worst: Option<Finding> = None;
        for leg in legs {
            let finding = match cooling.curve {
                [] => unproven(CURVE).row(&leg.row).limit(Limit::AtMost(leg.value.most)),
                curve => judge(cooling, curve, leg),
            };
            if worst.is_none_or(|worst| finding.verdict > worst.verdict) {
                worst = Some(finding);
            }
        }
        let Some(worst) = worst else { continue };
        // A condition that is not proven leaves the schedule unproven, whatever the clocks say.
        let finding = match formula {
            Verdict::Meets => worst,
            Verdict::Breaks => Finding { verdict: Verdict::Breaks, ..worst },
            Verdict::Unproven if worst.verdict == Verdict::Meets => {
                Finding { verdict: Verdict::Unproven, ..worst }.missing(CONDITIONS)
            }
            Verdict::Unproven => worst,
        };
        if best.is_none_or(|best| finding.verdict < best.verdict) {
            best = Some(finding);
        }
    }
    best.map(|finding| match finding.verdict {
        Verdict::Meets => finding,
        _ if authority == Authority::GreatBritain && cooling.holds.nitrite.is_some() => {
            finding.note(CURED_TOO)
        }
        _ => finding.note(REVIEW),
    })
}

fn formula(needs: Needs, holds: &Holds) -> Verdict {
    let each = needs.iter().map(|formula| formula.value.held_by(holds));
    each.min().unwrap_or(Verdict::Meets)
}

/// Whether it is warmer again after it was at the end of a leg.
fn warms_again(curve: &[Point], leg: &Cited<Leg>) -> bool {
    let end = |point: &Point| leg.value.to.on(point.scale()).value();
    let value = |point: &Point| point.reading().map_or(f64::NAN, |reading| reading.value());
    let mut later = curve.iter().skip_while(|point| value(point) > end(point));
    later.any(|point| value(point) > end(point))
}

fn judge(cooling: &Cooling<'_>, curve: &[Point], leg: &'static Cited<Leg>) -> Finding {
    let scale = curve.first().map_or(Scale::Celsius, |point| point.scale());
    let off = cooling.thermometer.unwrap_or_default();
    let mut clock = LegClock::new(leg, scale, off, cooling.vouched);
    for pair in curve.windows(2) {
        // A curve runs forward; what does not is no part of it.
        if let [from, to] = *pair
            && from.seconds() < to.seconds()
        {
            clock.add(&Segment { from, to });
        }
    }
    let limit = Limit::AtMost(leg.value.most);
    let finding =
        |verdict| Finding::new(&COOLING, verdict).limit(limit).row(&leg.row).at(cooling.place);
    let Some(exact) = clock.time() else {
        return finding(Verdict::Unproven).missing(CURVE);
    };
    if warms_again(curve, leg) {
        return finding(Verdict::Unproven).missing(AGAIN);
    }
    let time = whole_seconds(&exact);
    let verdict = limit.judge(&exact);
    let found = finding(verdict);
    let found = if time.high().value.is_finite() { found.found(&time) } else { found };
    match (verdict, cooling.thermometer) {
        (Verdict::Meets, None) => {
            Finding { verdict: Verdict::Unproven, ..found }.missing(THERMOMETER)
        }
        (Verdict::Meets, Some(_)) => found,
        (Verdict::Breaks, _) => found.mend(Mend::CoolWithin(leg.value.most)),
        (Verdict::Unproven, _) if time.high().value.is_finite() => {
            found.in_gap(gap_at(cooling, curve, leg))
        }
        (Verdict::Unproven, _) => found.missing(CURVE),
    }
}

/// The longest gap in which it falls to the start or to the end of a leg.
fn gap_at(cooling: &Cooling<'_>, curve: &[Point], leg: &Cited<Leg>) -> Option<Range<Time>> {
    let off = cooling.thermometer.unwrap_or_default().value.abs();
    let falls_to = |gap: &Segment, to: PrintedTemperature| {
        let to = to.on(gap.from().scale()).on(Scale::Celsius).value();
        gap.from().celsius() + off >= to && gap.to().celsius() - off <= to
    };
    longest_gap(curve, cooling.vouched, |gap| {
        falls_to(gap, leg.value.from) || falls_to(gap, leg.value.to)
    })
}
