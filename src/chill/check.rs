use uom::si::f64::{TemperatureInterval, Time};

use super::clock::{Leg, LegClock};
use super::table::{
    AUSTRALIA, COOLING_US, CURED_CONDITIONS, FOOD_CODE_COOLING, SLOW_COOL_CONDITIONS,
    UNITED_KINGDOM,
};
use crate::authority::Authority;
use crate::cite::{Cited, Date, Row};
use crate::finding::{
    Finding, Force, Limit, Mend, Missing, Place, READINGS_BETWEEN, Rule, THERMOMETER, Verdict,
};
use crate::range::Range;
use crate::trace::{Point, Segment, longest_gap, whole_seconds};
use crate::units::{PrintedTemperature, Reading, Scale, seconds};

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
const BEGINS_LOW: Missing = Missing::new(
    "that it begins at the start of the clock: the first row may be below it, and the time before is not known",
    "write a row from the end of the cook, above the start of the clock by more than the thermometer may be off",
);
const STANDS: Missing = Missing::new(
    "that it goes on cooling down to 40 °F: it stands still, or takes too long after the last stretch",
    "go on chilling it down to 40 °F without a stop, and write the temperatures as [[component.cooling]] rows",
);
const NOT_COLD: Missing = Missing::new(
    "that it surely comes down to the end of the schedule: by its thermometer it may be warmer",
    "go on until the thermometer shows less than that by as much as it may be off, as 38 °F for 40 °F by one of 2 °F, and write that row too",
);
const NOBODY: Missing = Missing::new(
    "an authority that says how fast cooked food is cooled: the schedule below is that of another, and it is not kept",
    "cool it as the schedule asks, in shallow pans or small pieces, or add the authority you cook under to held_to",
);
/// Food that is no colder after so long, in seconds, stands still. No document prints it: it is a screen, as long as
/// readings by hand may lie apart.
const STANDSTILL: f64 = 3600.0;
const CURVE: Missing = Missing::new(
    "how the middle cools: its temperatures after the cook",
    "write them as [[component.cooling]] rows with after and inside, from above 135 °F down to 40 °F",
);
const CONDITIONS: Missing = Missing::new(
    "what the product holds: nitrite, ascorbate or erythorbate, salt in its water, or water activity",
    "a cured schedule counts only with its conditions: write the cure, the accelerator, or an analysis",
);
const REVIEW: &str = "Out of its limits a product goes to expert review. No computation clears it.";

const UPHELD: &str = "The edition in force was not read. This row prints the same figure or a stricter one, and judges beside what is remembered of it.";

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

/// A way of cooling that an authority prints.
struct Schedule {
    /// Its name in the table of its legs.
    name: &'static str,
    legs: &'static [Cited<Leg>],
    /// What a product must hold for it.
    needs: Needs,
    /// Whether the food falls without a stop from the end of the cook down to the cold.
    falls: bool,
    /// Schedules of the same subject that were read or reported and print the same or less. Where this one is
    /// from memory, they judge beside it and are named.
    upheld_by: &'static [&'static str],
}

impl Schedule {
    const fn of_any_product(name: &'static str, legs: &'static [Cited<Leg>]) -> Self {
        Self { name, legs, needs: &[], falls: false, upheld_by: &[] }
    }

    /// Its legs on a day.
    fn on(&self, day: Option<Date>) -> impl Iterator<Item = &'static Cited<Leg>> {
        self.legs
            .iter()
            .filter(move |leg| leg.value.schedule == self.name && leg.row.in_force.on(day))
    }

    /// The legs that uphold it, of any edition.
    fn upholding(&self) -> impl Iterator<Item = &'static Cited<Leg>> {
        self.legs.iter().filter(|leg| self.upheld_by.contains(&leg.value.schedule))
    }
}

static FSIS: [Schedule; 5] = [
    Schedule {
        upheld_by: &["fsis-1999-1"],
        ..Schedule::of_any_product("fsis-2021-1.1", &COOLING_US)
    },
    Schedule::of_any_product("fsis-2021-1.2", &COOLING_US),
    Schedule {
        falls: true,
        upheld_by: &["fsis-1999-2", "fsis-1999-2-warning"],
        ..Schedule::of_any_product("fsis-2021-2", &COOLING_US)
    },
    Schedule {
        needs: &CURED_CONDITIONS,
        upheld_by: &["fsis-1999-cured"],
        ..Schedule::of_any_product("fsis-2021-3-cured", &COOLING_US)
    },
    Schedule {
        needs: &SLOW_COOL_CONDITIONS,
        // Of the conditions on how it cools, the other one is about the surface, which no row here shows. The law of
        // a state that prints the same upholds no federal schedule.
        falls: true,
        ..Schedule::of_any_product("fsis-2021-4-cured-salt", &COOLING_US)
    },
];
static RETAIL: [Schedule; 1] = [Schedule::of_any_product("food-code", &FOOD_CODE_COOLING)];
static AUSTRALIAN: [Schedule; 1] = [Schedule::of_any_product("australia", &AUSTRALIA)];
static BRITISH: [Schedule; 1] = [Schedule::of_any_product("uncured-maximum", &UNITED_KINGDOM)];

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
/// use greenweight::units::seconds;
///
/// let cooling = Cooling {
///     curve: &[],
///     cooked_to: None,
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
    let judged = move |leg: &&Cited<Leg>| row.is_some_and(|row| row.key == leg.row.key);
    // Several schedules may lie in one table.
    let tables = || schedules(authority).iter().map(|schedule| schedule.legs);
    let table = tables().find(|legs| legs.iter().any(|leg| judged(&leg))).unwrap_or_default();
    let schedule = table.iter().find(judged).map(|leg| leg.value.schedule);
    table.iter().filter(move |leg| Some(leg.value.schedule) == schedule)
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
    /// How hot its warmest part was at the end of the cook, where that is known: of what was never at the start of a
    /// clock the time counts from the end of the cook.
    pub cooked_to: Option<Reading>,
    /// How far the probe may be off; none stated proves nothing.
    pub thermometer: Option<TemperatureInterval>,
    /// What the product holds.
    pub holds: Holds,
    /// Where it stands in the document.
    pub place: Place,
}

/// Holds a cooling curve against the schedules of an authority on a day: the best of them counts,
/// and of that its worst leg is reported.
///
/// A schedule that is from memory is held beside one that was read or reported and prints the same or less, where
/// there is one: both must be kept, and the second is named.
#[must_use]
pub fn check(cooling: &Cooling<'_>, authority: Authority, day: Option<Date>) -> Option<Finding> {
    let judged = schedules(authority).iter().filter_map(|schedule| cooling.by(schedule, day));
    judged.reduce(Finding::or_better).map(|finding| match finding.verdict {
        Verdict::Meets => finding,
        _ if authority == Authority::GreatBritain && cooling.holds.nitrite.is_some() => {
            finding.note(CURED_TOO)
        }
        _ => finding.note(REVIEW),
    })
}

/// What a cooling curve shows where none of the authorities held says how fast food is cooled: nothing where it keeps
/// a schedule that is held here, whoever prints it; otherwise it is unproven beside the one it comes nearest to.
///
/// ```
/// use greenweight::chill::{Cooling, Holds, check_unheld};
/// use greenweight::finding::{Place, Verdict};
/// use greenweight::trace::Point;
/// use greenweight::units::{Reading, Scale, hours, read_tolerance};
///
/// let at = |hour, celsius| Point::new(hours(hour), Reading::new(celsius, Scale::Celsius).unwrap());
/// let of = |curve: &[Point]| {
///     let thermometer = read_tolerance("1 °C").ok();
///     let (vouched, holds, place) = (hours(24.0), Holds::default(), Place::default());
///     check_unheld(&Cooling { curve, cooked_to: None, vouched, thermometer, holds, place }, None)
/// };
/// let fast = [at(0.0, 75.0)?, at(1.0, 18.0)?, at(4.0, 2.0)?];
/// let slow = [at(0.0, 75.0)?, at(20.0, 2.0)?];
/// assert!(of(&fast).is_none());
/// assert_eq!(of(&slow).map(|finding| finding.verdict), Some(Verdict::Unproven));
/// # Ok::<(), greenweight::trace::TraceError>(())
/// ```
#[must_use]
pub fn check_unheld(cooling: &Cooling<'_>, day: Option<Date>) -> Option<Finding> {
    // What a cured product may do is no measure for any other, and no analysis of the finished food tells which it was.
    let all = Authority::ALL.into_iter().flat_map(schedules).filter(|one| one.needs.is_empty());
    let best = all.filter_map(|one| cooling.by(one, day)).reduce(Finding::or_better)?;
    (best.verdict != Verdict::Meets).then(|| best.left_open(NOBODY).note(REVIEW))
}

impl Cooling<'_> {
    /// One schedule, by its worst leg; `None` where it is not in force.
    fn by(&self, schedule: &Schedule, day: Option<Date>) -> Option<Finding> {
        let judged = |leg: &'static Cited<Leg>| match self.curve {
            [] => Finding::unproven(&COOLING, CURVE, self.place)
                .row(&leg.row)
                .limit(Limit::AtMost(leg.value.most)),
            curve => judge(self, curve, leg),
        };
        let own = schedule.on(day).map(judged).reduce(Finding::or_worse)?;
        let legs = match schedule.upholding().map(judged).reduce(Finding::or_worse) {
            // Both are kept: the one that somebody read is named.
            Some(upheld) if upheld.verdict >= own.verdict => upheld.note(UPHELD),
            _ => own,
        };
        let finding = match legs.verdict {
            Verdict::Meets => match self.falls(schedule, day) {
                Ok(()) => legs,
                Err(missing) => legs.left_open(missing),
            },
            _ => legs,
        };
        let Some((held, condition)) = formula(schedule.needs, &self.holds) else {
            return Some(finding);
        };
        Some(match (held, finding.verdict) {
            // It is named, so that one from memory proves nothing.
            (Verdict::Meets, _) => finding.row(condition),
            (Verdict::Breaks, _) => Finding { verdict: Verdict::Breaks, ..finding },
            // A condition that is not proven leaves the schedule unproven, whatever the clocks say.
            (Verdict::Unproven, Verdict::Meets) => finding.left_open(CONDITIONS),
            (Verdict::Unproven, _) => finding,
        })
    }

    /// Whether the curve falls from the end of the cook down to the cold, where the schedule asks for it: without a gap
    /// and without standing still, and after the last leg within the time that another option of the same document
    /// gives for more than that.
    fn falls(&self, schedule: &Schedule, day: Option<Date>) -> Result<(), Missing> {
        if !schedule.falls {
            return Ok(());
        }
        let (Some(top), Some(cold), Some(last)) =
            (option_1().next(), option_1().last(), schedule.on(day).last())
        else {
            return Err(CURVE);
        };
        let at = |printed| celsius(printed, self.curve);
        let (start, tail, end) = (at(top.value.from), at(last.value.to), at(cold.value.to));
        let off = self.thermometer.unwrap_or_default().value;
        let mut fell: Option<(f64, f64)> = None;
        let mut tail_began: Option<f64> = None;
        let mut ended = false;
        for stretch in stretches(from_the_heat(self.curve, start)) {
            let (at, value) = (stretch.to().seconds(), stretch.to().celsius());
            if ended && value > end + off {
                return Err(AGAIN);
            }
            if ended || value >= start {
                continue;
            }
            if stretch.is_gap(self.vouched) {
                return Err(READINGS_BETWEEN);
            }
            let (last, lowest) = *fell.get_or_insert((at, value));
            if value < lowest {
                fell = Some((at, value));
            } else if at - last >= STANDSTILL {
                return Err(STANDS);
            }
            if value <= tail {
                // Between two readings the temperature runs straight.
                let warmer = stretch.from().celsius();
                let share = (warmer - tail) / (warmer - value);
                let crossed = || stretch.from().seconds() + stretch.seconds() * share;
                tail_began.get_or_insert_with(crossed);
            }
            if value + off <= end {
                let long = tail_began.is_some_and(|began| at - began > cold.value.most.value);
                if long && tail > end {
                    return Err(STANDS);
                }
                ended = true;
            }
        }
        if ended { Ok(()) } else { Err(NOT_COLD) }
    }
}

/// The condition that a product comes nearest to; of equal ones the first that somebody read. `None` where there is
/// none.
fn formula(needs: Needs, holds: &Holds) -> Option<(Verdict, &'static Row)> {
    let each = needs.iter().map(|formula| (formula.value.held_by(holds), &formula.row));
    each.min_by_key(|(verdict, row)| (*verdict, row.is_from_memory()))
}

/// The legs of the first option of the federal guideline, as they were reported: the last ends in the cold, and bounds
/// what another option leaves open.
fn option_1() -> impl Iterator<Item = &'static Cited<Leg>> {
    FSIS.iter().take(1).flat_map(Schedule::upholding)
}

/// A curve from where it is first at or above a temperature: a record may begin with the cold, raw food.
fn from_the_heat(curve: &[Point], celsius: f64) -> &[Point] {
    let first = curve.iter().position(|point| point.celsius() >= celsius);
    first.and_then(|first| curve.get(first..)).unwrap_or_default()
}

/// The stretches between the points of a curve. It runs forward; what does not is no part of it.
fn stretches(curve: &[Point]) -> impl Iterator<Item = Segment> + Clone {
    curve.windows(2).filter_map(|pair| match *pair {
        [from, to] if from.seconds() < to.seconds() => Some(Segment { from, to }),
        _ => None,
    })
}

/// A printed temperature in degrees Celsius, by the figure that is printed on the scale of a curve.
fn celsius(printed: PrintedTemperature, curve: &[Point]) -> f64 {
    let scale = curve.first().map_or(Scale::Celsius, |point| point.scale());
    printed.on(scale).on(Scale::Celsius).value()
}

/// Whether it warms on the way from the start of a leg to its end, or is warmer again after the end, by more than the
/// thermometer may be off. Hot again above the start before it was at the end, the leg begins again.
fn warms_again(curve: &[Point], leg: &Cited<Leg>, off: TemperatureInterval) -> bool {
    let (from, end) = (celsius(leg.value.from, curve), celsius(leg.value.to, curve));
    let mut lowest = f64::INFINITY;
    for value in from_the_heat(curve, from).iter().map(|point| point.celsius()) {
        let cold = lowest <= end;
        if value >= from && !cold {
            lowest = f64::INFINITY;
            continue;
        }
        // Cold, it may be as warm as the end of the leg.
        if value > off.value + if cold { end } else { lowest } {
            return true;
        }
        lowest = lowest.min(value);
    }
    false
}

fn judge(cooling: &Cooling<'_>, curve: &[Point], leg: &'static Cited<Leg>) -> Finding {
    let scale = curve.first().map_or(Scale::Celsius, |point| point.scale());
    let off = cooling.thermometer.unwrap_or_default();
    let mut clock = LegClock::new(leg, scale, off, cooling.vouched);
    stretches(curve).for_each(|stretch| clock.add(&stretch));
    let limit = Limit::AtMost(leg.value.most);
    let finding =
        |verdict| Finding::new(&COOLING, verdict).limit(limit).row(&leg.row).at(cooling.place);
    // Rows that begin below the start, or may, show only a part of the clock, unless the food was never hotter.
    let surely_at_start = celsius(leg.value.from, curve) + off.value;
    let begins_low = curve.iter().all(|point| point.celsius() < surely_at_start);
    let time = if begins_low { from_the_top(cooling, curve, leg) } else { clock.time() };
    let Some(exact) = time else {
        return finding(Verdict::Unproven).missing(CURVE);
    };
    let never_hotter = |to: Reading| to.on(Scale::Celsius).value() < surely_at_start;
    let all_of_it = !begins_low || cooling.cooked_to.is_some_and(never_hotter);
    if !all_of_it && limit.judge(&exact) != Verdict::Breaks {
        return finding(Verdict::Unproven).missing(BEGINS_LOW);
    }
    if warms_again(curve, leg, off) {
        return finding(Verdict::Unproven).missing(AGAIN);
    }
    let time = whole_seconds(&exact);
    let verdict = limit.judge(&exact);
    let found = finding(verdict);
    let found = if time.high().value.is_finite() { found.found(&time) } else { found };
    match (verdict, cooling.thermometer) {
        (Verdict::Meets, None) => found.left_open(THERMOMETER),
        (Verdict::Meets, Some(_)) => found,
        (Verdict::Breaks, _) => found.mend(Mend::CoolWithin(leg.value.most)),
        (Verdict::Unproven, _) if time.high().value.is_finite() => {
            found.in_gap(gap_at(cooling, curve, leg))
        }
        (Verdict::Unproven, _) => found.missing(NOT_COLD),
    }
}

/// How long it takes from its hottest reading down to the end of a leg, between what the probe allows.
fn from_the_top(cooling: &Cooling<'_>, curve: &[Point], leg: &Cited<Leg>) -> Option<Range<Time>> {
    let (end, off) = (celsius(leg.value.to, curve), cooling.thermometer.unwrap_or_default().value);
    let top = curve.iter().reduce(|a, b| if b.celsius() >= a.celsius() { b } else { a })?;
    let falls = stretches(curve).filter(|fall| fall.from().seconds() >= top.seconds());
    // As early as the coldest line may have crossed the end, and as late as the warmest.
    let crosses = |off: f64, late: bool| {
        falls.clone().find(|fall| fall.to().celsius() + off <= end).map(|fall| {
            let (a, b) = (fall.from().celsius() + off, fall.to().celsius() + off);
            let share = if a > end { (a - end) / (a - b) } else { 0.0 };
            let share =
                if fall.is_gap(cooling.vouched) { f64::from(u8::from(late)) } else { share };
            fall.from().seconds() + fall.seconds() * share - top.seconds()
        })
    };
    let last = curve.last()?.seconds() - top.seconds();
    let (low, high) = (crosses(-off, false).unwrap_or(last), crosses(off, true));
    let high = high.unwrap_or(f64::INFINITY);
    Some(Range::ordered(seconds(low.min(high)), seconds(high)))
}

/// The longest gap in which it falls to the start or to the end of a leg.
fn gap_at(cooling: &Cooling<'_>, curve: &[Point], leg: &Cited<Leg>) -> Option<Range<Time>> {
    let off = cooling.thermometer.unwrap_or_default().value.abs();
    let falls_to = |gap: &Segment, to: PrintedTemperature| {
        let to = celsius(to, curve);
        gap.from().celsius() + off >= to && gap.to().celsius() - off <= to
    };
    longest_gap(curve, cooling.vouched, |gap| {
        falls_to(gap, leg.value.from) || falls_to(gap, leg.value.to)
    })
}
