use core::fmt;

use super::mass::{gram, kilogram, ounce, pound};
use super::{Mass, Reading, Shown, Time, grams, kilograms};
use crate::range::{DIVISION, OutOfRange, SHOWN_MASS};

/// A unit a mass is printed in.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum MassUnit {
    /// Grams, `g`.
    Gram,
    /// Kilograms, `kg`.
    Kilogram,
    /// Avoirdupois ounces, `oz`.
    Ounce,
    /// Avoirdupois pounds, `lb`.
    Pound,
}

impl MassUnit {
    /// How the unit is written.
    #[must_use]
    pub const fn symbol(self) -> &'static str {
        match self {
            Self::Gram => "g",
            Self::Kilogram => "kg",
            Self::Ounce => "oz",
            Self::Pound => "lb",
        }
    }

    /// The number of these units in `mass`, as limits beside a printed mass are given.
    #[must_use]
    pub fn count(self, mass: Mass) -> f64 {
        match self {
            Self::Gram => mass.get::<gram>(),
            Self::Kilogram => mass.get::<kilogram>(),
            Self::Ounce => mass.get::<ounce>(),
            Self::Pound => mass.get::<pound>(),
        }
    }
}

/// A mass to be printed in grams, or from one kilogram on in kilograms.
///
/// ```
/// use greenweight::units::{grams, kilograms, show_mass};
///
/// assert_eq!(show_mass(grams(6.2)).to_string(), "6.2 g");
/// assert_eq!(show_mass(kilograms(2.5)).to_string(), "2.5 kg");
/// ```
#[must_use]
pub fn show_mass(mass: Mass) -> Shown {
    let unit = if mass.value.abs() < 1.0 { MassUnit::Gram } else { MassUnit::Kilogram };
    show_mass_like(mass, unit)
}

/// A mass to be printed in `unit`. Limits beside it are in that unit too.
///
/// ```
/// use greenweight::units::{MassUnit, grams, pounds, show_mass_like};
///
/// assert_eq!(show_mass_like(pounds(0.0125), MassUnit::Ounce).to_string(), "0.2 oz");
///
/// let most = MassUnit::Gram.count(grams(6.25));
/// let weighed = show_mass_like(grams(6.250_03), MassUnit::Gram).beside(most);
/// assert_eq!(weighed.to_string(), "6.25003 g");
/// ```
#[must_use]
pub fn show_mass_like(mass: Mass, unit: MassUnit) -> Shown {
    Shown::new(unit.count(mass), unit.symbol())
}

const DAY: f64 = 86_400.0;
const HOUR: f64 = 3600.0;
const MINUTE: f64 = 60.0;
/// Seconds from which on a duration is printed in days alone.
const LONG: f64 = 1e11;

struct ShownDuration(f64);

/// A duration to be printed in days, hours, minutes and seconds, leaving out what is
/// zero: `3 days`, `1 h 30 min`, `45 s`. Below a minute it has the digits [`Shown`]
/// gives it; above, it is rounded to the millisecond.
///
/// [`read_duration`](super::read_duration) reads what is printed.
///
/// ```
/// use greenweight::units::{minutes, seconds, show_duration};
///
/// assert_eq!(show_duration(minutes(90.0)).to_string(), "1 h 30 min");
/// assert_eq!(show_duration(seconds(22.0)).to_string(), "22 s");
/// ```
#[must_use]
pub fn show_duration(time: Time) -> impl fmt::Display {
    ShownDuration(time.value)
}

impl fmt::Display for ShownDuration {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let size = self.0.abs();
        if !(MINUTE..LONG).contains(&size) {
            return if size >= LONG && size.is_finite() {
                Shown::new(self.0 / DAY, "days").fmt(f)
            } else {
                Shown::new(self.0, "s").fmt(f)
            };
        }
        if self.0 < 0.0 {
            f.write_str("-")?;
        }
        let milliseconds = whole_below(size * 1000.0 + 0.5);
        let mut left = milliseconds;
        let mut between = "";
        for (seconds, one, more) in
            [(DAY, " day", " days"), (HOUR, " h", " h"), (MINUTE, " min", " min")]
        {
            let count = whole_below(left / (seconds * 1000.0));
            left -= count * seconds * 1000.0;
            if count > 0.0 {
                write!(f, "{between}{count}{}", if count > 1.0 { more } else { one })?;
                between = " ";
            }
        }
        if left > 0.0 {
            write!(f, "{between}{} s", left / 1000.0)?;
        }
        Ok(())
    }
}

/// The largest whole number not above `value`, for 0 ≤ `value` < 2^53.
fn whole_below(value: f64) -> f64 {
    value - value % 1.0
}

impl fmt::Display for Reading {
    /// The number with at most two decimals and its scale: `155 °F`, `68.33 °C`. To
    /// print a reading beside a limit, hold its value as a [`Shown`] instead.
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let hundredths = self.value() * 100.0;
        // Away from zero at a half; no reading is near 2^53 hundredths.
        let size = whole_below(hundredths.abs() + 0.5) / 100.0;
        let sign = if self.value() < 0.0 && size > 0.0 { "-" } else { "" };
        write!(f, "{sign}{size} {}", self.scale().symbol())
    }
}

/// The coarsest scale that kitchens have with steps of at most this: 1 g, 0.1 g or 0.01 g. `None` where all
/// of them are too coarse.
///
/// ```
/// use greenweight::units::{grams, kitchen_scale};
///
/// assert_eq!(kitchen_scale(grams(0.37)), Some(grams(0.1)));
/// assert_eq!(kitchen_scale(grams(0.001)), None);
/// ```
#[must_use]
pub fn kitchen_scale(at_most: Mass) -> Option<Mass> {
    [grams(1.0), grams(0.1), grams(0.01)].into_iter().find(|step| *step <= at_most)
}

/// The most a scale of this smallest `division` can show without going above `mass`:
/// the largest whole number of divisions in it, and never more than `mass`.
///
/// floor(m / d) × d. A mass that is a whole number of divisions up to the rounding of
/// its arithmetic stays that number: 6.2 g on a scale of 0.1 g is 6.2 g.
///
/// # Errors
/// [`OutOfRange`] for a mass or a division that no scale has
/// ([`SHOWN_MASS`], [`DIVISION`]).
///
/// ```
/// use greenweight::units::{floor_to_division, grams};
///
/// assert_eq!(floor_to_division(grams(6.27), grams(0.5))?, grams(6.0));
/// assert!(floor_to_division(grams(6.27), grams(0.0)).is_err());
/// # Ok::<(), greenweight::range::OutOfRange>(())
/// ```
pub fn floor_to_division(mass: Mass, division: Mass) -> Result<Mass, OutOfRange> {
    SHOWN_MASS.check(mass.value)?;
    DIVISION.check(division.value)?;
    let exact = mass.value / division.value;
    let count = whole_below(exact);
    // A quotient a few roundings short of the next whole number is that number.
    let next = count + 1.0;
    let close = (16.0 * f64::EPSILON * next).min(1e-3);
    let count = if next - exact <= close { next } else { count };
    Ok(kilograms((division.value * count).min(mass.value)))
}
