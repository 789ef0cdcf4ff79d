use core::cmp::Ordering;
use core::fmt::{self, Write};

use crate::range::against;

/// Relative width up to which a range is one value and the rounding of its arithmetic.
const ONE_VALUE: f64 = 1e-9;
/// A value with no more digits than this is printed in full.
const IN_FULL: i32 = 6;
/// Digits of a value that has more.
const ROUNDED: i32 = 4;
/// Digits that tell any two `f64` apart, and one for a power of ten misjudged by one.
const ALL: i32 = 18;

/// A value and the nearest limits on either side of it.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Held {
    value: f64,
    below: Option<f64>,
    above: Option<f64>,
    is_limit: bool,
}

impl Held {
    const fn new(value: f64) -> Self {
        Self { value, below: None, above: None, is_limit: false }
    }

    fn beside(self, limit: f64) -> Self {
        match against(self.value, limit) {
            Some(Ordering::Greater) if self.below.is_none_or(|below| below < limit) => {
                Self { below: Some(limit), ..self }
            }
            Some(Ordering::Less) if self.above.is_none_or(|above| above > limit) => {
                Self { above: Some(limit), ..self }
            }
            Some(Ordering::Equal) if !self.is_limit => {
                Self { value: limit, is_limit: true, ..self }
            }
            _ => self,
        }
    }

    /// Whether `printed` lies to every limit as the value does.
    fn allows(&self, printed: f64) -> bool {
        let lies = |limit: Option<f64>, as_it_should| {
            limit.is_none_or(|limit| against(printed, limit) == Some(as_it_should))
        };
        lies(self.below, Ordering::Greater)
            && lies(self.above, Ordering::Less)
            && (!self.is_limit || against(printed, self.value) == Some(Ordering::Equal))
    }
}

/// Where a printed number lies to the true one.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Rounding {
    Nearest,
    Down,
    Up,
}

/// A number in decimal, without an allocator.
#[derive(Clone, Copy)]
struct Decimal {
    bytes: [u8; 64],
    length: usize,
}

impl Write for Decimal {
    fn write_str(&mut self, text: &str) -> fmt::Result {
        let end = self.length.saturating_add(text.len());
        let free = self.bytes.get_mut(self.length..end).ok_or(fmt::Error)?;
        free.copy_from_slice(text.as_bytes());
        self.length = end;
        Ok(())
    }
}

impl Decimal {
    fn as_str(&self) -> &str {
        let text = self.bytes.get(..self.length).and_then(|bytes| core::str::from_utf8(bytes).ok());
        let text = text.unwrap_or("");
        if !text.contains('.') || text.contains('e') {
            return text;
        }
        let text = text.trim_end_matches('0').trim_end_matches('.');
        if text == "-0" { "0" } else { text }
    }

    fn value(&self) -> Option<f64> {
        self.as_str().parse().ok()
    }

    fn written(number: fmt::Arguments<'_>) -> Option<Self> {
        let mut decimal = Self { bytes: [0; 64], length: 0 };
        decimal.write_fmt(number).ok()?;
        Some(decimal)
    }

    /// `value` in `digits` significant digits; a whole part is always given in full.
    fn of(value: f64, digits: i32, rounding: Rounding) -> Option<Self> {
        let power = power_of_ten(value)?;
        let after_point = digits.saturating_sub(1).saturating_sub(power);
        let places = usize::try_from(after_point).unwrap_or(0);
        let nearest = Self::written(format_args!("{value:.places$}"))?;
        let printed = nearest.value()?;
        let step = match (rounding, against(printed, value)?) {
            (Rounding::Down, Ordering::Greater) => -1.0,
            (Rounding::Up, Ordering::Less) => 1.0,
            _ => return Some(nearest),
        };
        // One in the last place; adding it may miss by a rounding that printing undoes.
        let mut last = 1.0;
        for _ in 0..places {
            last /= 10.0;
        }
        Self::written(format_args!("{:.places$}", printed + step * last))
    }

    /// The shortest print of sensible precision that crosses no limit.
    fn beside(held: &Held, rounding: Rounding) -> Option<Self> {
        let value = held.value;
        let keeps = |decimal: &Self| {
            decimal.value().is_some_and(|printed| {
                held.allows(printed)
                    && match (rounding, against(printed, value)) {
                        (_, Some(Ordering::Equal)) | (Rounding::Nearest, _) => true,
                        (Rounding::Down, order) => order == Some(Ordering::Less),
                        (Rounding::Up, order) => order == Some(Ordering::Greater),
                    }
            })
        };
        if let Some(full) = Self::of(value, IN_FULL, Rounding::Nearest).filter(keeps)
            && full.value().and_then(|printed| against(printed, value)) == Some(Ordering::Equal)
        {
            return Some(full);
        }
        (ROUNDED..=ALL).find_map(|digits| Self::of(value, digits, rounding).filter(keeps))
    }
}

/// The power of ten of the first digit, for values a fixed number of decimals suits.
fn power_of_ten(value: f64) -> Option<i32> {
    let mut left = value.abs();
    if left > 0.0 && !(1e-9..1e17).contains(&left) || !left.is_finite() {
        return None;
    }
    let mut power = 0_i32;
    while left >= 10.0 {
        left /= 10.0;
        power = power.saturating_add(1);
    }
    while left < 1.0 && left > 0.0 {
        left *= 10.0;
        power = power.saturating_sub(1);
    }
    Some(power)
}

/// Values too small or too large for decimals are printed in powers of ten, in all
/// their digits.
fn write_number(f: &mut fmt::Formatter<'_>, decimal: Option<&Decimal>, held: &Held) -> fmt::Result {
    match decimal {
        Some(decimal) => f.write_str(decimal.as_str()),
        None => write!(f, "{:e}", held.value),
    }
}

fn write_unit(f: &mut fmt::Formatter<'_>, unit: &str) -> fmt::Result {
    if unit.is_empty() { Ok(()) } else { write!(f, " {unit}") }
}

/// A value printed with its unit, that never crosses a limit by being rounded.
///
/// Up to six significant digits are printed in full; of a value with more, four, and
/// the whole part always. Beside a limit, as many more are printed as it takes for the
/// print to lie to the limit as the value does: 155.97 is not printed as 156 beside
/// 156. A value that differs from a limit by no more than 16 × 2^−52 of it is the
/// limit, reckoned in another order, and is printed as the limit.
///
/// ```
/// use greenweight::units::Shown;
///
/// assert_eq!(Shown::new(139.5, "mg/kg").to_string(), "139.5 mg/kg");
/// assert_eq!(Shown::new(155.9971, "ppm").to_string(), "156 ppm");
/// assert_eq!(Shown::new(155.9971, "ppm").beside(156.0).to_string(), "155.997 ppm");
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Shown {
    held: Held,
    unit: &'static str,
}

impl Shown {
    /// `value` in `unit`, which is printed after a space; an empty one is not.
    #[must_use]
    pub const fn new(value: f64, unit: &'static str) -> Self {
        Self { held: Held::new(value), unit }
    }

    /// Never crossing `limit`, in the same unit. Any number of limits may be given; one
    /// that is not a number is passed over.
    #[must_use]
    pub fn beside(self, limit: f64) -> Self {
        Self { held: self.held.beside(limit), ..self }
    }
}

impl fmt::Display for Shown {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let decimal = Decimal::beside(&self.held, Rounding::Nearest);
        write_number(f, decimal.as_ref(), &self.held)?;
        write_unit(f, self.unit)
    }
}

/// A range printed with its unit: `138.7 to 140.2 mg/kg`.
///
/// The low end is rounded down and the high end up, so that what is printed holds what
/// was reckoned, and neither end crosses a limit. A range that is one value, up to the
/// rounding of its arithmetic (10^−9 of it), is printed as one value.
///
/// ```
/// use greenweight::units::ShownRange;
///
/// let found = ShownRange::new(138.7321, 140.1234, "mg/kg");
/// assert_eq!(found.to_string(), "138.7 to 140.2 mg/kg");
/// assert_eq!(ShownRange::new(156.0, 156.0, "ppm").to_string(), "156 ppm");
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ShownRange {
    low: Held,
    high: Held,
    unit: &'static str,
}

impl ShownRange {
    /// From `low` to `high` in `unit`. Ends given in falling order are swapped.
    #[must_use]
    pub fn new(low: f64, high: f64, unit: &'static str) -> Self {
        let (low, high) = if low > high { (high, low) } else { (low, high) };
        Self { low: Held::new(low), high: Held::new(high), unit }
    }

    /// Neither end crossing `limit`, in the same unit. Any number of limits may be
    /// given; one that is not a number is passed over.
    #[must_use]
    pub fn beside(self, limit: f64) -> Self {
        Self { low: self.low.beside(limit), high: self.high.beside(limit), ..self }
    }

    /// Both ends as one value, when they are one and lie to every limit alike.
    fn one_value(&self) -> Option<Decimal> {
        let (low, high) = (self.low.value, self.high.value);
        let width = high - low;
        if !width.is_finite() || width > ONE_VALUE * high.abs().max(low.abs()) {
            return None;
        }
        let held = if self.high.is_limit { &self.high } else { &self.low };
        let decimal = Decimal::beside(held, Rounding::Nearest)?;
        let printed = decimal.value()?;
        (self.low.allows(printed) && self.high.allows(printed)).then_some(decimal)
    }
}

impl fmt::Display for ShownRange {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if let Some(value) = self.one_value() {
            f.write_str(value.as_str())?;
            return write_unit(f, self.unit);
        }
        let low = Decimal::beside(&self.low, Rounding::Down);
        let high = Decimal::beside(&self.high, Rounding::Up);
        write_number(f, low.as_ref(), &self.low)?;
        if low.is_none() || low.as_ref().map(Decimal::as_str) != high.as_ref().map(Decimal::as_str)
        {
            f.write_str(" to ")?;
            write_number(f, high.as_ref(), &self.high)?;
        }
        write_unit(f, self.unit)
    }
}
