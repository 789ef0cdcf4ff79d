use core::cmp::Ordering;
use core::marker::PhantomData;
use uom::si::f64::{TemperatureInterval, ThermodynamicTemperature};

use crate::range::{OutOfRange, Range, bounds};

bounds! {
    /// Temperatures a kitchen thermometer can show, in kelvin: absolute zero to 1000 K.
    pub(crate) TEMPERATURE: "temperature", "K", 0.0, 1000.0;
    /// Tolerance of a thermometer, in kelvin.
    pub(crate) TOLERANCE: "thermometer tolerance", "K", 0.0, 50.0;
}

/// The scale a thermometer is read on.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Scale {
    /// Degrees Celsius.
    Celsius,
    /// Degrees Fahrenheit.
    Fahrenheit,
}

impl Scale {
    /// How the scale is written: `°C` or `°F`.
    #[must_use]
    pub const fn symbol(self) -> &'static str {
        match self {
            Self::Celsius => "°C",
            Self::Fahrenheit => "°F",
        }
    }

    const fn per_kelvin(self) -> f64 {
        match self {
            Self::Celsius => 1.0,
            Self::Fahrenheit => 1.8,
        }
    }
}

/// A temperature as it was read, on the scale it was read on.
///
/// Tables print one temperature twice, 155 °F and 68.3 °C, and the two are not
/// equal to the last digit. A cook who reads 68.3 on a Celsius thermometer has
/// met the row, so a reading keeps its scale and is held against the figure
/// printed on that scale.
///
/// t/°C = (t/°F − 32) / 1.8, T/K = t/°C + 273.15.
///
/// ```
/// use greenweight::units::{Reading, Scale};
///
/// let done = Reading::new(155.0, Scale::Fahrenheit)?;
/// assert_eq!(done.on(Scale::Celsius).value(), (155.0 - 32.0) / 1.8);
/// # Ok::<(), greenweight::range::OutOfRange>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Reading {
    value: f64,
    scale: Scale,
}

impl Reading {
    /// A reading of `value` on `scale`.
    ///
    /// # Errors
    /// [`OutOfRange`] when it is not a number, below absolute zero or above 1000 K.
    pub fn new(value: f64, scale: Scale) -> Result<Self, OutOfRange> {
        let reading = Self { value, scale };
        TEMPERATURE.check(reading.kelvin())?;
        Ok(reading)
    }

    /// A reading for a generated table, whose figures are tested, in a `const`.
    pub(crate) const fn printed(value: f64, scale: Scale) -> Self {
        Self { value, scale }
    }

    /// The number on the scale.
    #[must_use]
    pub const fn value(self) -> f64 {
        self.value
    }

    /// The scale it was read on.
    #[must_use]
    pub const fn scale(self) -> Scale {
        self.scale
    }

    fn kelvin(self) -> f64 {
        match self.scale {
            Scale::Celsius => self.value + 273.15,
            Scale::Fahrenheit => (self.value + 459.67) / 1.8,
        }
    }

    /// The same temperature on another scale.
    #[must_use]
    pub fn on(self, scale: Scale) -> Self {
        let value = match (self.scale, scale) {
            (Scale::Fahrenheit, Scale::Celsius) => (self.value - 32.0) / 1.8,
            (Scale::Celsius, Scale::Fahrenheit) => self.value * 1.8 + 32.0,
            _ => self.value,
        };
        Self { value, scale }
    }

    /// The thermodynamic temperature.
    #[must_use]
    pub fn temperature(self) -> ThermodynamicTemperature {
        ThermodynamicTemperature {
            dimension: PhantomData,
            units: PhantomData,
            value: self.kelvin(),
        }
    }

    /// What the temperature may be when the thermometer is right to within
    /// `tolerance` either way. A tolerance is a difference: 2 °F is 1.11 K, and the
    /// 32 °F between the two zeros plays no part.
    ///
    /// # Errors
    /// [`OutOfRange`] when the tolerance is negative, over 50 K or not a number.
    pub fn within(self, tolerance: TemperatureInterval) -> Result<Range<Self>, OutOfRange> {
        let half = TOLERANCE.check(tolerance.value)? * self.scale.per_kelvin();
        // 1.8 × (2 / 1.8) may miss 2 in its last digit; a tolerance is written with
        // few digits, so the nearest millionth of a degree is the one meant.
        let half = nearest_millionth(half);
        let end = |value| Self { value, scale: self.scale };
        Ok(Range::ordered(end(self.value - half), end(self.value + half)))
    }
}

/// Rounds to six decimals without `std`: adding and taking away 1.5 × 2^52 leaves a
/// whole number.
fn nearest_millionth(value: f64) -> f64 {
    const WHOLE: f64 = 6_755_399_441_055_744.0;
    ((value * 1e6 + WHOLE) - WHOLE) / 1e6
}

impl PartialOrd for Reading {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        if self.scale == other.scale {
            self.value.partial_cmp(&other.value)
        } else {
            self.kelvin().partial_cmp(&other.kelvin())
        }
    }
}

/// A temperature as a document prints it: on one scale, or on both, where the two
/// figures need not agree to the last digit.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum PrintedTemperature {
    /// Printed in degrees Fahrenheit only.
    Fahrenheit(f64),
    /// Printed in degrees Celsius only.
    Celsius(f64),
    /// Printed on both scales, Fahrenheit first.
    Both(f64, f64),
}

impl PrintedTemperature {
    /// The figure that a reading on `scale` is held against: the one printed on that
    /// scale, or the conversion where none is.
    ///
    /// ```
    /// use greenweight::units::{PrintedTemperature, Scale};
    ///
    /// let row = PrintedTemperature::Both(155.0, 68.3);
    /// assert_eq!(row.on(Scale::Celsius).value(), 68.3);
    /// assert_eq!(row.on(Scale::Fahrenheit).value(), 155.0);
    /// ```
    #[must_use]
    pub fn on(self, scale: Scale) -> Reading {
        let printed = match (self, scale) {
            (Self::Celsius(t) | Self::Both(_, t), Scale::Celsius) => Reading::printed(t, scale),
            (Self::Fahrenheit(t) | Self::Both(t, _), _) => Reading::printed(t, Scale::Fahrenheit),
            (Self::Celsius(t), _) => Reading::printed(t, Scale::Celsius),
        };
        printed.on(scale)
    }
}
