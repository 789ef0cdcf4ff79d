//! Verdicts, limits and findings.
//!
//! A [`Limit`] is held against what is known of a quantity, a [`Range`], and the
//! answer is a [`Verdict`]: it *meets* when every value in the range does,
//! *breaks* when none does, and is *unproven* in between. A [`Finding`] carries the
//! verdict with everything needed to argue with it.
//!
//! ```
//! use greenweight::{finding::{Limit, Verdict}, range::Range};
//!
//! let ceiling = Limit::AtMost(156.25);
//! assert_eq!(ceiling.judge(&Range::new(138.0, 141.0)?), Verdict::Meets);
//! assert_eq!(ceiling.judge(&Range::new(150.0, 160.0)?), Verdict::Unproven);
//! assert_eq!(ceiling.judge(&Range::new(157.0, 158.0)?), Verdict::Breaks);
//! # Ok::<(), greenweight::range::RangeError>(())
//! ```

use core::cmp::Ordering;
use core::fmt;
use uom::si::f64::{Mass, TemperatureInterval, Time};
use uom::si::{Dimension, Quantity, Units};

use crate::cite::Row;
use crate::range::{Range, against};
use crate::units::{PrintedTemperature, Reading, Scale};

/// What a check found.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize), serde(rename_all = "kebab-case"))]
pub enum Verdict {
    /// The limit is met by everything the quantity may be.
    Meets,
    /// It cannot be told: something is missing, or the range straddles the limit.
    Unproven,
    /// The limit is broken by everything the quantity may be.
    Breaks,
}

impl Verdict {
    /// In words: `meets`, `unproven` or `breaks`.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Meets => "meets",
            Self::Unproven => "unproven",
            Self::Breaks => "breaks",
        }
    }
}

/// A quantity that can be held against a limit, values closer than
/// [`SAME`](crate::range::SAME) being one.
pub trait Comparable: Copy {
    /// How the two compare, `None` when they cannot be.
    fn against(self, other: Self) -> Option<Ordering>;
    /// Whether it is a number that something measured can have.
    fn is_finite(self) -> bool;
}

impl Comparable for f64 {
    fn against(self, other: Self) -> Option<Ordering> {
        against(self, other)
    }
    fn is_finite(self) -> bool {
        self.is_finite()
    }
}

impl<D: Dimension + ?Sized, U: Units<f64> + ?Sized> Comparable for Quantity<D, U, f64> {
    fn against(self, other: Self) -> Option<Ordering> {
        self.value.against(other.value)
    }
    fn is_finite(self) -> bool {
        self.value.is_finite()
    }
}

impl Comparable for Reading {
    fn against(self, other: Self) -> Option<Ordering> {
        self.value().against(other.on(self.scale()).value())
    }
    fn is_finite(self) -> bool {
        self.value().is_finite()
    }
}

/// A limit with the operator its document prints.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(tag = "kind", content = "value", rename_all = "kebab-case")
)]
pub enum Limit<T> {
    /// No more than this.
    AtMost(T),
    /// Less than this.
    Below(T),
    /// No less than this.
    AtLeast(T),
    /// More than this.
    Above(T),
    /// This, neither more nor less.
    Exactly(T),
    /// From the first to the second, both included.
    Between(T, T),
}

impl<T> Limit<T> {
    /// The operator in words.
    #[must_use]
    pub const fn operator(&self) -> &'static str {
        match self {
            Self::AtMost(_) => "at most",
            Self::Below(_) => "below",
            Self::AtLeast(_) => "at least",
            Self::Above(_) => "above",
            Self::Exactly(_) => "exactly",
            Self::Between(..) => "from",
        }
    }

    /// The same limit on a converted quantity.
    pub fn map<U>(self, convert: impl Fn(T) -> U) -> Limit<U> {
        match self {
            Self::AtMost(a) => Limit::AtMost(convert(a)),
            Self::Below(a) => Limit::Below(convert(a)),
            Self::AtLeast(a) => Limit::AtLeast(convert(a)),
            Self::Above(a) => Limit::Above(convert(a)),
            Self::Exactly(a) => Limit::Exactly(convert(a)),
            Self::Between(a, b) => Limit::Between(convert(a), convert(b)),
        }
    }
}

impl<T: Copy> Limit<T> {
    /// The figures of the limit: one, or the two of a window.
    #[must_use]
    pub const fn figures(&self) -> (T, Option<T>) {
        match *self {
            Self::AtMost(a)
            | Self::Below(a)
            | Self::AtLeast(a)
            | Self::Above(a)
            | Self::Exactly(a) => (a, None),
            Self::Between(a, b) => (a, Some(b)),
        }
    }
}

impl<T: Comparable + PartialOrd> Limit<T> {
    /// Whether one value meets the limit; `None` when it cannot be compared.
    #[must_use]
    pub fn met_by(&self, value: T) -> Option<bool> {
        Some(match *self {
            Self::AtMost(a) => value.against(a)?.is_le(),
            Self::Below(a) => value.against(a)?.is_lt(),
            Self::AtLeast(a) => value.against(a)?.is_ge(),
            Self::Above(a) => value.against(a)?.is_gt(),
            Self::Exactly(a) => value.against(a)?.is_eq(),
            Self::Between(a, b) => value.against(a)?.is_ge() && value.against(b)?.is_le(),
        })
    }

    /// The limit held against everything the quantity may be. A range may be open to the side on which nothing is
    /// limited; the end that has to meet the limit, and the limit itself, are finite or it is *unproven*.
    ///
    /// ```
    /// use greenweight::{finding::{Limit, Verdict}, range::Range};
    ///
    /// let open = Range::new(2.0, f64::INFINITY)?;
    /// assert_eq!(Limit::AtLeast(1.0).judge(&open), Verdict::Meets);
    /// assert_eq!(Limit::AtLeast(1.0).judge(&Range::exactly(f64::INFINITY)?), Verdict::Unproven);
    /// # Ok::<(), greenweight::range::RangeError>(())
    /// ```
    #[must_use]
    pub fn judge(&self, known: &Range<T>) -> Verdict {
        let (Some(low), Some(high)) = (self.met_by(known.low()), self.met_by(known.high())) else {
            return Verdict::Unproven;
        };
        // Between two values that both miss a window lies the window itself, unless
        // both miss it on the same side.
        let (first, second) = self.figures();
        let outside = known.high() < first || known.low() > second.unwrap_or(first);
        match (low, high) {
            (true, true) if self.rests_on_numbers(known) => Verdict::Meets,
            (false, false) if outside || matches!(self, Self::Below(_) | Self::Above(_)) => {
                Verdict::Breaks
            }
            _ => Verdict::Unproven,
        }
    }

    /// Whether the figures of the limit are finite, and the ends of what is known that have to meet it.
    fn rests_on_numbers(&self, known: &Range<T>) -> bool {
        let (first, second) = self.figures();
        let (low, high) = (known.low().is_finite(), known.high().is_finite());
        let ends = match self {
            Self::AtMost(_) | Self::Below(_) => high,
            Self::AtLeast(_) | Self::Above(_) => low,
            Self::Exactly(_) | Self::Between(..) => low && high,
        };
        ends && first.is_finite() && second.is_none_or(Comparable::is_finite)
    }
}

/// A value of one of the kinds a report prints.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(tag = "kind", content = "value", rename_all = "kebab-case")
)]
pub enum Measure {
    /// A level in mg/kg, of a substance, on a basis.
    Level {
        /// Milligrams per kilogram of the basis.
        mg_per_kg: f64,
        /// What is weighed.
        agent: &'static str,
        /// What it is divided by.
        basis: &'static str,
    },
    /// A temperature.
    Temperature(Reading),
    /// A length of time.
    Duration(Time),
    /// A length of time at a temperature.
    Held(Held),
    /// A mass.
    Mass(Mass),
    /// A share of a food.
    Share(Share),
    /// A reduction, in powers of ten.
    Logs(Logs),
    /// Degrees above a base, times hours.
    DegreeHours(DegreeHours),
}

/// Degrees above a base, times hours, on a scale.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct DegreeHours {
    /// The sum.
    pub sum: f64,
    /// The scale of its degrees.
    pub scale: Scale,
}

impl PartialOrd for DegreeHours {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        if self.scale == other.scale { self.sum.partial_cmp(&other.sum) } else { None }
    }
}

/// A reduction of what lives in a food, in powers of ten.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Logs(pub f64);

impl Comparable for Logs {
    fn against(self, other: Self) -> Option<Ordering> {
        self.0.against(other.0)
    }
    fn is_finite(self) -> bool {
        self.0.is_finite()
    }
}

/// A share of a food, in percent.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Share {
    /// Percent.
    pub percent: f64,
    /// Of what, and in what: "fat, of the product".
    pub of: &'static str,
}

impl PartialOrd for Share {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        if self.of == other.of { self.percent.partial_cmp(&other.percent) } else { None }
    }
}

impl Comparable for Share {
    fn against(self, other: Self) -> Option<Ordering> {
        if self.of == other.of { self.percent.against(other.percent) } else { None }
    }
    fn is_finite(self) -> bool {
        self.percent.is_finite()
    }
}

/// A length of time at a temperature. It compares by its time.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Held {
    /// The time.
    pub time: Time,
    /// The temperature it is held at.
    pub at: Reading,
}

impl PartialOrd for Held {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        self.time.partial_cmp(&other.time)
    }
}

impl PartialOrd for Measure {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        match (self, other) {
            (
                Self::Level { mg_per_kg: a, agent: x, basis: p },
                Self::Level { mg_per_kg: b, agent: y, basis: q },
            ) if x == y && p == q => a.partial_cmp(b),
            (Self::Temperature(a), Self::Temperature(b)) => a.partial_cmp(b),
            (Self::Duration(a), Self::Duration(b)) => a.partial_cmp(b),
            (Self::Mass(a), Self::Mass(b)) => a.partial_cmp(b),
            (Self::Held(a), Self::Held(b)) => a.partial_cmp(b),
            (Self::Share(a), Self::Share(b)) => a.partial_cmp(b),
            (Self::Logs(a), Self::Logs(b)) => a.partial_cmp(b),
            (Self::DegreeHours(a), Self::DegreeHours(b)) => a.partial_cmp(b),
            _ => None,
        }
    }
}

impl Measure {
    /// The number, on its own scale or in the base unit: mg/kg, degrees, seconds, kilograms, percent, powers of ten.
    #[must_use]
    pub const fn number(&self) -> f64 {
        match self {
            Self::Level { mg_per_kg, .. } => *mg_per_kg,
            Self::Temperature(reading) => reading.value(),
            Self::Duration(time) | Self::Held(Held { time, .. }) => time.value,
            Self::Mass(mass) => mass.value,
            Self::Share(share) => share.percent,
            Self::Logs(logs) => logs.0,
            Self::DegreeHours(found) => found.sum,
        }
    }
}

impl Comparable for Measure {
    fn against(self, other: Self) -> Option<Ordering> {
        if let (Self::Temperature(a), Self::Temperature(b)) = (self, other) {
            return a.against(b);
        }
        // Only of one kind, agent and basis are there two to compare.
        self.partial_cmp(&other)?;
        self.number().against(other.number())
    }
    fn is_finite(self) -> bool {
        self.number().is_finite()
    }
}

impl From<Reading> for Measure {
    fn from(value: Reading) -> Self {
        Self::Temperature(value)
    }
}

impl From<Time> for Measure {
    fn from(value: Time) -> Self {
        Self::Duration(value)
    }
}

impl From<Held> for Measure {
    fn from(value: Held) -> Self {
        Self::Held(value)
    }
}

impl From<DegreeHours> for Measure {
    fn from(value: DegreeHours) -> Self {
        Self::DegreeHours(value)
    }
}

impl From<Logs> for Measure {
    fn from(value: Logs) -> Self {
        Self::Logs(value)
    }
}

impl From<Share> for Measure {
    fn from(value: Share) -> Self {
        Self::Share(value)
    }
}

impl From<Mass> for Measure {
    fn from(value: Mass) -> Self {
        Self::Mass(value)
    }
}

/// What a rule is about: whether missing it can hurt somebody.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize), serde(rename_all = "kebab-case"))]
#[non_exhaustive]
pub enum Force {
    /// A safety limit.
    Safety,
    /// A limit of quality: broken, the food is spoiled for its purpose, not dangerous.
    Quality,
    /// Advice: to depart from it is a note, never a break.
    Advice,
}

/// A rule, which many findings may come from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[non_exhaustive]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Rule {
    /// Its identity, which does not change: `room/what-it-asks`.
    pub id: &'static str,
    /// What it asks, in a few words.
    pub asks: &'static str,
    /// What missing it means.
    pub force: Force,
}

impl Rule {
    pub(crate) const fn new(id: &'static str, asks: &'static str, force: Force) -> Self {
        Self { id, asks, force }
    }
}

/// A change that would mend a finding, computed by the inverse of the formula that
/// found it.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
#[cfg_attr(
    feature = "serde",
    derive(serde::Serialize),
    serde(tag = "kind", content = "value", rename_all = "kebab-case")
)]
pub enum Mend {
    /// Use at most this mass of the named ingredient.
    UseAtMost(Mass),
    /// Weigh out this mass, neither more nor less.
    Weigh(Mass),
    /// Use all curing ingredients at this share of their written masses.
    UseShare(f64),
    /// Leave the ingredient out.
    LeaveOut,
    /// The scale is too coarse for this batch: use one with at most this division.
    FinerScale(Mass),
    /// Bring the inside to at least this temperature by the thermometer.
    CookTo(Reading),
    /// Hold the inside at the temperature for at least this long.
    HoldFor(Time),
    /// Have the product acid within this long at the hottest chamber.
    AcidWithin(Time),
    /// Cool it through this stretch in at most this long.
    CoolWithin(Time),
    /// Keep the surface moist, the same way, for at least this long.
    KeepMoistFor(Time),
    /// Keep the chamber at or below this temperature by the thermometer.
    KeepAtOrBelow(Reading),
    /// Keep it hot: at or above this temperature by the thermometer.
    KeepAtOrAbove(Reading),
    /// Keep for at most this long.
    KeepFor(Time),
    /// Heat it in at most this long.
    HeatWithin(Time),
    /// Bring at least this share into it.
    BringTo(Share),
}

/// Something a verdict would need and the recipe does not say.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[non_exhaustive]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Missing {
    /// What is missing.
    pub what: &'static str,
    /// How to say it.
    pub say: &'static str,
    /// Who can say it.
    pub answer: Answer,
}

/// Who can say what is missing.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize), serde(rename_all = "kebab-case"))]
#[non_exhaustive]
pub enum Answer {
    /// Whoever writes the recipe: a weight, a time, a temperature, a method, a row.
    Writer,
    /// A laboratory, a process authority or a procedure of the house: no key of a document proves it.
    Outside,
    /// Nobody whose tables are held here: they have no figure for it.
    NoTable,
}

impl Missing {
    /// What whoever writes the recipe can say.
    pub(crate) const fn new(what: &'static str, say: &'static str) -> Self {
        Self { what, say, answer: Answer::Writer }
    }

    /// The same, where somebody other than the writer can say it.
    pub(crate) const fn answered_by(self, answer: Answer) -> Self {
        Self { answer, ..self }
    }
}

/// What every room misses that rests on a temperature somebody read.
pub(crate) const THERMOMETER: Missing = Missing::new(
    "how far the thermometer may be off",
    "write its tolerance under [instruments], as thermometer = \"2 °F\"",
);

/// What is missing where a limit of safety would be met that nobody read.
pub(crate) const REMEMBERED: Missing = Missing::new(
    "somebody who read the limit: its figure is from memory",
    "read it in its document and write [[confirmed]] with the row, what it prints, the document, the place and the day; or have it checked by someone licensed to",
);

/// What is missing of a record with a gap.
pub(crate) const READINGS_BETWEEN: Missing = Missing::new(
    "readings that are close enough together",
    "give the readings of the gap; of a logger that seldom reads, write interval = \"… min\" in recorded_in",
);

/// A stretch of a document, in bytes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, Default)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Place {
    /// The first byte.
    pub start: usize,
    /// The byte after the last.
    pub end: usize,
}

/// A value and where it stands in the document.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Placed<T> {
    /// The value.
    pub value: T,
    /// Where it stands.
    pub place: Place,
}

impl<T> From<T> for Placed<T> {
    /// A value that stands in no document.
    fn from(value: T) -> Self {
        Self { value, place: Place::default() }
    }
}

/// A verdict and what it rests on.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Finding {
    /// The rule.
    pub rule: &'static Rule,
    /// The verdict.
    pub verdict: Verdict,
    /// What was found by the figures as written.
    pub nominal: Option<Measure>,
    /// What was found, between what it may be.
    pub found: Option<Range<Measure>>,
    /// The limit it was held against.
    pub limit: Option<Limit<Measure>>,
    /// The rows the limit comes from, the governing one first.
    pub rows: [Option<&'static Row>; 2],
    /// What is missing, when the verdict is *unproven* for want of it.
    pub missing: Option<Missing>,
    /// The gap between two readings that leaves it *unproven*: from when to when, since the record began.
    pub gap: Option<Range<Time>>,
    /// What would mend it.
    pub mend: Option<Mend>,
    /// A remark that belongs in every report of this finding.
    pub note: Option<&'static str>,
    /// Whether advice was departed from. The verdict of advice is never *breaks*.
    pub past_advice: bool,
    /// Where in the document the figure stands.
    pub place: Place,
}

impl Finding {
    /// A finding with nothing but its verdict, to be filled with the builder methods.
    #[must_use]
    pub const fn new(rule: &'static Rule, verdict: Verdict) -> Self {
        Self {
            rule,
            verdict,
            nominal: None,
            found: None,
            limit: None,
            rows: [None, None],
            missing: None,
            gap: None,
            mend: None,
            note: None,
            past_advice: false,
            place: Place { start: 0, end: 0 },
        }
    }

    /// Whether there is nothing to mend: it meets, and departs from no advice.
    #[must_use]
    pub fn is_met(&self) -> bool {
        self.verdict == Verdict::Meets && !self.past_advice
    }

    /// Memory never meets: a met limit of safety that rests on a row from memory is *unproven*, unless somebody
    /// confirmed the row.
    #[must_use]
    pub fn unless_remembered(self, confirmed: impl Fn(&Row) -> bool) -> Self {
        let remembered = |row: &Row| row.is_from_memory() && !confirmed(row);
        let rests = self.verdict == Verdict::Meets && self.rule.force == Force::Safety;
        if rests && self.rows.into_iter().flatten().any(remembered) {
            return self.left_open(REMEMBERED);
        }
        self
    }

    /// Whether what was found meets the limit, whoever has read its row.
    pub(crate) fn is_within(&self) -> bool {
        let meets = |(found, limit): (_, Limit<_>)| limit.judge(&found) == Verdict::Meets;
        self.found.zip(self.limit).is_some_and(meets)
    }

    /// Whether it rests on a figure that nobody read.
    pub(crate) fn is_from_memory(&self) -> bool {
        self.rows.into_iter().flatten().any(Row::is_from_memory)
    }

    /// The better of two answers, where one is enough. Of equal verdicts it is the one that does not rest on
    /// memory, which could turn it into *unproven*; otherwise this one.
    pub(crate) fn or_better(self, other: Self) -> Self {
        let rank = |finding: &Self| (finding.verdict, finding.is_from_memory());
        if rank(&other) < rank(&self) { other } else { self }
    }

    /// The worse of two answers that both count; of equal verdicts this one.
    pub(crate) fn or_worse(self, other: Self) -> Self {
        if other.verdict > self.verdict { other } else { self }
    }

    /// The same, *unproven* for want of something, whatever its figure says.
    pub(crate) fn left_open(self, missing: Missing) -> Self {
        Self { verdict: Verdict::Unproven, mend: None, ..self }.missing(missing)
    }

    /// What is not proven, for want of something.
    pub(crate) fn unproven(rule: &'static Rule, missing: Missing, place: Place) -> Self {
        Self::new(rule, Verdict::Unproven).missing(missing).at(place)
    }

    /// A temperature held against a ceiling: *unproven* where it meets and nobody says how far the
    /// thermometer may be off.
    pub(crate) fn at_or_below(
        rule: &'static Rule,
        ceiling: PrintedTemperature,
        row: &'static Row,
        at: Placed<Reading>,
        thermometer: Option<TemperatureInterval>,
    ) -> Self {
        let (at, place) = (at.value, at.place);
        let ceiling = ceiling.on(at.scale());
        let limit = Limit::AtMost(ceiling);
        let within = thermometer.and_then(|tolerance| at.within(tolerance).ok());
        let known = within.unwrap_or(Range::ordered(at, at));
        let finding = Self::new(rule, limit.judge(&known))
            .nominal(at)
            .found(&known)
            .limit(limit)
            .row(row)
            .at(place);
        let lowest = thermometer.and_then(|tolerance| ceiling.within(tolerance).ok());
        match (finding.verdict, within) {
            (Verdict::Meets, Some(_)) => finding,
            (Verdict::Meets, None) => finding.left_open(THERMOMETER),
            _ => finding.mend(Mend::KeepAtOrBelow(lowest.map_or(ceiling, |range| range.low()))),
        }
    }

    /// With what was found.
    #[must_use]
    pub fn found<T: Into<Measure> + Copy + PartialOrd>(mut self, known: &Range<T>) -> Self {
        self.found = Some(Range::ordered(known.low().into(), known.high().into()));
        self
    }

    /// With what was found by the figures as written.
    #[must_use]
    pub fn nominal(mut self, value: impl Into<Measure>) -> Self {
        self.nominal = Some(value.into());
        self
    }

    /// With the limit.
    #[must_use]
    pub fn limit<T: Into<Measure>>(mut self, limit: Limit<T>) -> Self {
        self.limit = Some(limit.map(Into::into));
        self
    }

    /// With the row the limit comes from.
    #[must_use]
    pub const fn row(mut self, row: &'static Row) -> Self {
        self.rows = match self.rows {
            [None, _] => [Some(row), None],
            [first, _] => [first, Some(row)],
        };
        self
    }

    /// With what is missing.
    #[must_use]
    pub const fn missing(mut self, missing: Missing) -> Self {
        self.missing = Some(missing);
        self
    }

    /// With the gap between two readings that leaves it unproven; unchanged where there is none.
    pub(crate) fn in_gap(self, gap: Option<Range<Time>>) -> Self {
        match gap {
            Some(_) => Self { gap, ..self.missing(READINGS_BETWEEN) },
            None => self,
        }
    }

    /// With a mend.
    #[must_use]
    pub const fn mend(mut self, mend: Mend) -> Self {
        self.mend = Some(mend);
        self
    }

    /// With a mend, unless it meets and needs none.
    pub(crate) fn or_mend(self, mend: Mend) -> Self {
        if self.verdict == Verdict::Meets { self } else { self.mend(mend) }
    }

    /// With a remark.
    #[must_use]
    pub const fn note(mut self, note: &'static str) -> Self {
        self.note = Some(note);
        self
    }

    /// At a place in the document.
    #[must_use]
    pub const fn at(mut self, place: Place) -> Self {
        self.place = place;
        self
    }
}

impl fmt::Display for Verdict {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(self.words())
    }
}
