//! Quantities known only between two ends, and the named bounds of an input.
//!
//! A scale shows whole divisions, a spoon is filled by hand, a thermometer is right
//! to a degree or two. A [`Range`] holds what is known: the true value lies
//! between `low` and `high`, both included. Arithmetic on ranges rounds outward by
//! one unit in the last place, so the true value never escapes.
//!
//! ```
//! use greenweight::{range::Range, units::{grams, Mass}};
//!
//! // 3 g on a scale that shows whole grams.
//! let cure = Range::weighed(grams(3.0), grams(1.0))?;
//! assert_eq!((cure.low(), cure.high()), (grams(2.5), grams(3.5)));
//! # Ok::<(), Box<dyn std::error::Error>>(())
//! ```

use core::cmp::Ordering;
use core::fmt;
use core::marker::PhantomData;
use core::ops::{Add, Div, Mul, Sub};
use uom::si::f64::{Mass, Volume};
use uom::si::{Dimension, Quantity, Units};

/// The range an input may lie in, with the name that error messages give it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bounds {
    field: &'static str,
    unit: &'static str,
    low: f64,
    high: f64,
}

impl Bounds {
    /// Bounds of `field`, both ends allowed.
    #[must_use]
    pub const fn new(field: &'static str, unit: &'static str, low: f64, high: f64) -> Self {
        Self { field, unit, low, high }
    }

    /// The value itself when it lies inside.
    ///
    /// # Errors
    /// [`OutOfRange`] otherwise, and for every value that is not a number.
    pub fn check(&self, value: f64) -> Result<f64, OutOfRange> {
        if value >= self.low && value <= self.high {
            Ok(value)
        } else {
            Err(OutOfRange { bounds: *self, value })
        }
    }
}

/// Declares named [`Bounds`].
macro_rules! bounds {
    ($($(#[$doc:meta])* $vis:vis $name:ident: $field:expr, $unit:expr, $low:expr, $high:expr;)+) => {
        $($(#[$doc])* $vis const $name: $crate::range::Bounds =
            $crate::range::Bounds::new($field, $unit, $low, $high);)+
    };
}
pub(crate) use bounds;

/// A value outside the range allowed for it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OutOfRange {
    bounds: Bounds,
    value: f64,
}

impl OutOfRange {
    /// What the value was given for.
    #[must_use]
    pub const fn field(&self) -> &'static str {
        self.bounds.field
    }

    /// The value that was given.
    #[must_use]
    pub const fn value(&self) -> f64 {
        self.value
    }

    /// The lowest and the highest value allowed, in [`Self::unit`].
    #[must_use]
    pub const fn allowed(&self) -> (f64, f64) {
        (self.bounds.low, self.bounds.high)
    }

    /// The unit of the value and of the range allowed.
    #[must_use]
    pub const fn unit(&self) -> &'static str {
        self.bounds.unit
    }
}

impl fmt::Display for OutOfRange {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Bounds { field, unit, low, high } = self.bounds;
        let space = if unit.is_empty() { "" } else { " " };
        write!(f, "{field} of {}{space}{unit} is outside {low} to {high}{space}{unit}", self.value)
    }
}

impl core::error::Error for OutOfRange {}

/// Relative difference below which two values are one: sixteen units in the last place,
/// some ten million times finer than any scale.
///
/// Conversions between customary and metric units cost a few units in the last place of
/// an `f64`; 1 oz to 100 lb written in grams still equals 625 mg/kg.
pub const SAME: f64 = 16.0 * f64::EPSILON;

/// How two values compare when those closer than [`SAME`] are one; `None` when either is
/// not a number. Beside infinity nothing is near: the smaller value sets the measure.
#[must_use]
pub fn against(value: f64, other: f64) -> Option<Ordering> {
    let near = SAME * value.abs().min(other.abs());
    if near.is_finite() && (value - other).abs() <= near {
        Some(Ordering::Equal)
    } else {
        value.partial_cmp(&other)
    }
}

/// Why a range could not be made.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum RangeError {
    /// The lower end lies above the upper one, or an end is not a number.
    #[error("a range runs from its lower to its upper end, and both are finite numbers")]
    Ends,
    /// The divisor may be zero.
    #[error("a range that holds zero cannot divide")]
    ZeroDivisor,
    /// An input is outside its own bounds.
    #[error(transparent)]
    OutOfRange(#[from] OutOfRange),
}

/// A quantity that has neighbours just below and just above it.
///
/// Implemented for `f64`, for every `uom` quantity and for the levels of this crate.
pub trait Measured: Copy + PartialOrd {
    /// The next value below.
    #[must_use]
    fn just_below(self) -> Self;
    /// The next value above.
    #[must_use]
    fn just_above(self) -> Self;
    /// Neither infinite nor "not a number".
    #[must_use]
    fn is_finite(self) -> bool;
    /// Zero.
    const ZERO: Self;
}

impl Measured for f64 {
    fn just_below(self) -> Self {
        self.next_down()
    }
    fn just_above(self) -> Self {
        self.next_up()
    }
    fn is_finite(self) -> bool {
        self.is_finite()
    }
    const ZERO: Self = 0.0;
}

impl<D: Dimension + ?Sized, U: Units<f64> + ?Sized> Measured for Quantity<D, U, f64> {
    fn just_below(self) -> Self {
        Self { value: self.value.next_down(), ..self }
    }
    fn just_above(self) -> Self {
        Self { value: self.value.next_up(), ..self }
    }
    fn is_finite(self) -> bool {
        self.value.is_finite()
    }
    const ZERO: Self = Self { dimension: PhantomData, units: PhantomData, value: 0.0 };
}

/// What is known of a quantity: it lies between `low` and `high`, both included.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Range<T> {
    low: T,
    high: T,
}

impl<T: Copy + PartialOrd> Range<T> {
    /// From `low` to `high`.
    ///
    /// # Errors
    /// [`RangeError::Ends`] when `low` is above `high` or either is not a number.
    pub fn new(low: T, high: T) -> Result<Self, RangeError> {
        if low <= high { Ok(Self { low, high }) } else { Err(RangeError::Ends) }
    }

    /// A range whose ends the caller has in order.
    pub(crate) const fn ordered(low: T, high: T) -> Self {
        Self { low, high }
    }

    /// A value known exactly.
    ///
    /// # Errors
    /// [`RangeError::Ends`] when it is not a number.
    pub fn exactly(value: T) -> Result<Self, RangeError> {
        Self::new(value, value)
    }

    /// The lower end.
    #[must_use]
    pub const fn low(&self) -> T {
        self.low
    }

    /// The upper end.
    #[must_use]
    pub const fn high(&self) -> T {
        self.high
    }

    /// Whether `value` may be the true one.
    #[must_use]
    pub fn contains(&self, value: T) -> bool {
        self.low <= value && value <= self.high
    }

    /// Whether the two ends are the same.
    #[must_use]
    pub fn is_exact(&self) -> bool {
        self.low >= self.high
    }

    /// Both ends through the same conversion, which must not swap them.
    ///
    /// # Errors
    /// What the conversion returns, or [`RangeError::Ends`] where it swaps them.
    pub fn try_map<U: Copy + PartialOrd, E: From<RangeError>>(
        self,
        convert: impl Fn(T) -> Result<U, E>,
    ) -> Result<Range<U>, E> {
        Ok(Range::new(convert(self.low)?, convert(self.high)?)?)
    }
}

impl<A: Measured> Range<A> {
    fn around<B: Copy, C: Measured>(
        self,
        other: Range<B>,
        operation: impl Fn(A, B) -> C,
    ) -> Result<Range<C>, RangeError> {
        let corners = [
            operation(self.low, other.low),
            operation(self.low, other.high),
            operation(self.high, other.low),
            operation(self.high, other.high),
        ];
        let [first, ..] = corners;
        let (mut low, mut high) = (first, first);
        for corner in corners {
            if !corner.is_finite() {
                return Err(RangeError::Ends);
            }
            if corner < low {
                low = corner;
            }
            if corner > high {
                high = corner;
            }
        }
        Range::new(low.just_below(), high.just_above())
    }

    /// The sum.
    ///
    /// # Errors
    /// [`RangeError::Ends`] when the result is not finite.
    pub fn plus<B, C>(self, other: Range<B>) -> Result<Range<C>, RangeError>
    where
        A: Add<B, Output = C>,
        B: Measured,
        C: Measured,
    {
        self.around(other, |a, b| a + b)
    }

    /// The difference. The two are taken to be independent, so a range less itself
    /// is not zero.
    ///
    /// # Errors
    /// [`RangeError::Ends`] when the result is not finite.
    pub fn minus<B, C>(self, other: Range<B>) -> Result<Range<C>, RangeError>
    where
        A: Sub<B, Output = C>,
        B: Measured,
        C: Measured,
    {
        self.around(other, |a, b| a - b)
    }

    /// The product.
    ///
    /// # Errors
    /// [`RangeError::Ends`] when the result is not finite.
    pub fn times<B, C>(self, other: Range<B>) -> Result<Range<C>, RangeError>
    where
        A: Mul<B, Output = C>,
        B: Measured,
        C: Measured,
    {
        self.around(other, |a, b| a * b)
    }

    /// The quotient.
    ///
    /// # Errors
    /// [`RangeError::ZeroDivisor`] when the divisor may be zero, [`RangeError::Ends`]
    /// when the result is not finite.
    pub fn over<B, C>(self, other: Range<B>) -> Result<Range<C>, RangeError>
    where
        A: Div<B, Output = C>,
        B: Measured,
        C: Measured,
    {
        if other.contains(B::ZERO) {
            return Err(RangeError::ZeroDivisor);
        }
        self.around(other, |a, b| a / b)
    }
}

bounds! {
    /// Masses a scale can show, in kilograms: up to a thousand tonnes.
    pub SHOWN_MASS: "mass on the scale", "kg", 0.0, 1e6;
    /// The smallest step of a scale, in kilograms.
    pub DIVISION: "scale division", "kg", 1e-9, 1e3;
    /// How many spoons.
    pub SPOONS: "number of spoons", "", 0.0, 1e6;
    /// How full a spoon is, as a share of its nominal volume.
    pub FILL: "fill of a spoon", "", 0.0, 3.0;
}

impl Range<Mass> {
    /// What a mass may be when a scale of this smallest `division` shows `shown`:
    /// half a division either way, and never below zero.
    ///
    /// # Errors
    /// [`RangeError::OutOfRange`] for a mass or a division that no scale has.
    pub fn weighed(shown: Mass, division: Mass) -> Result<Self, RangeError> {
        SHOWN_MASS.check(shown.value)?;
        DIVISION.check(division.value)?;
        let half = division * 0.5;
        let low = if shown > half { shown - half } else { Mass::ZERO };
        Self::new(low, shown + half)
    }
}

/// A range of masses, wider by an error either way and never below zero.
pub(crate) fn widened(range: Range<Mass>, error: Mass) -> Range<Mass> {
    let low = if range.low > error { range.low - error } else { Mass::ZERO };
    Range { low, high: range.high + error }
}

impl Range<Volume> {
    /// What `count` fillings of a spoon of nominal volume `spoon` may hold, when
    /// each is filled to between `fill.low()` and `fill.high()` of it.
    ///
    /// # Errors
    /// [`RangeError::OutOfRange`] for a count or a fill that is out of the question.
    pub fn spooned(count: f64, spoon: Volume, fill: Range<f64>) -> Result<Self, RangeError> {
        SPOONS.check(count)?;
        FILL.check(fill.low)?;
        FILL.check(fill.high)?;
        Range::exactly(spoon * count)?.times(fill)
    }
}
