use super::strength::Brine;
use super::table::{
    MOLAR_MASS_WATER, PITZER, SATURATED_ACTIVITY, SATURATED_HUMIDITY, WATER_ACTIVITY,
};
use crate::cite::Cited;
use crate::level::{InWaterPhase, Level, SodiumChloride};
use crate::range::{OutOfRange, Range, bounds};
use crate::units::{Reading, Scale};

bounds! {
    ACTIVITY: "water activity", "", 0.0, 1.0;
    TABLED: "salt in the water phase, where its water activity is tabled", "%", 0.0, 26.0;
    SHORT: "salt in the water phase, where the short formula holds", "%", 0.0, 12.0;
    MOLALITY: "molality of salt, where the equation holds", "mol/kg", 0.0, 6.0;
}

/// Water activity of salt water at 25 °C: a row.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct TabledActivity {
    /// Percent of salt by mass.
    pub percent: f64,
    /// The water activity.
    pub activity: f64,
    /// How far the published models lie apart.
    pub spread: f64,
}

/// Parameters of the Pitzer equation: a row.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pitzer {
    /// β⁰.
    pub beta0: f64,
    /// β¹.
    pub beta1: f64,
    /// C.
    pub c: f64,
    /// A of Debye and Hückel.
    pub a: f64,
    /// b.
    pub b: f64,
    /// α.
    pub alpha: f64,
    /// The highest molality it was fitted to.
    pub most: f64,
}

/// Relative humidity over a saturated salt: a row.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SaturatedHumidity {
    /// The salt, as a formula.
    pub salt: &'static str,
    /// The lowest temperature, °C.
    pub lowest: f64,
    /// The highest temperature, °C.
    pub highest: f64,
    /// A.
    pub a: f64,
    /// B, kelvin.
    pub b: f64,
}

/// Water activity of a saturated salt: a row.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SaturatedActivity {
    /// The salt, as a formula.
    pub salt: &'static str,
    /// k₁, kelvin.
    pub k1: f64,
    /// k₂.
    pub k2: f64,
}

/// The water activity of salt water, which is the *most* that a food with so much salt in its
/// water can have: whatever else is dissolved only lowers it, and salt that is not in the
/// water raises it. It is an estimate, never a measurement, and proves no limit.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct AtMostActivity(f64);

impl AtMostActivity {
    /// The bound, 0 to 1.
    #[must_use]
    pub const fn value(self) -> f64 {
        self.0
    }
}

/// The water activity of salt water by table `salt/water-activity`: the row at or below the
/// level, with the spread of the published models added. It reads too wet, never too dry.
///
/// # Errors
/// [`OutOfRange`] above 26 percent, the last row.
///
/// ```
/// use greenweight::{cure::Level, salt::water_activity};
///
/// let bound = water_activity(Level::percent(3.7)?)?;
/// // The row of 3.5 percent prints 0.979 55.
/// assert!(bound.value() >= 0.979_55 && bound.value() < 0.9798);
/// assert!(water_activity(Level::percent(26.5)?).is_err());
/// # Ok::<(), greenweight::range::OutOfRange>(())
/// ```
pub fn water_activity(
    phase: Level<SodiumChloride, InWaterPhase>,
) -> Result<AtMostActivity, OutOfRange> {
    let percent = TABLED.check(phase.as_percent())?;
    let row = WATER_ACTIVITY.iter().rev().find(|row| row.value.percent <= percent);
    let most = row.map_or(1.0, |row| row.value.activity + row.value.spread);
    Ok(AtMostActivity(most.min(1.0)))
}

/// The water activity of salt water by the short formula 1 − 0.005 247 1 p − 0.000 122 06 p².
///
/// Up to 12 percent it reads between 0.0001 and 0.0006 too high, which is the safe way; beyond
/// that it strays, and is refused. The coefficients are from memory (attributed to Resnik and
/// Chirife), the error was found against table `salt/water-activity`.
///
/// # Errors
/// [`OutOfRange`] above 12 percent.
pub fn water_activity_by_short_formula(
    phase: Level<SodiumChloride, InWaterPhase>,
) -> Result<AtMostActivity, OutOfRange> {
    let p = SHORT.check(phase.as_percent())?;
    Ok(AtMostActivity(1.0 - 0.005_247_1 * p - 0.000_122_06 * p * p))
}

/// The osmotic coefficient of salt water at 25 °C by the Pitzer equation, up to 6 mol to the
/// kilogram of water:
///
/// φ = 1 − A √m / (1 + b √m) + m (β⁰ + β¹ exp(−α √m)) + m² C.
///
/// # Errors
/// [`OutOfRange`] above 6 mol/kg.
pub fn osmotic_coefficient(molality: f64) -> Result<f64, OutOfRange> {
    let m = MOLALITY.check(molality)?;
    let Pitzer { beta0, beta1, c, a, b, alpha, .. } = PITZER.value;
    let root = libm::sqrt(m);
    let second = beta0 + beta1 * libm::exp(-alpha * root);
    Ok(1.0 - a * root / (1.0 + b * root) + m * second + m * m * c)
}

/// The water activity of a brine at 25 °C by the Pitzer equation: exp(−2 m φ Mw).
///
/// Unlike [`water_activity`] it is the middle of what the models say, not a bound.
///
/// # Errors
/// [`OutOfRange`] above 6 mol/kg, a little short of saturation.
pub fn water_activity_of(brine: Brine) -> Result<f64, OutOfRange> {
    let m = brine.molality();
    Ok(libm::exp(-2.0 * m * osmotic_coefficient(m)? * MOLAR_MASS_WATER.value / 1000.0))
}

/// The water activity of several solutes in one water, each by itself in all of it: the
/// product (Ross; from memory). It leaves out how the solutes act on each other.
///
/// # Errors
/// [`OutOfRange`] for a water activity outside 0 to 1.
pub fn water_activity_together(alone: impl IntoIterator<Item = f64>) -> Result<f64, OutOfRange> {
    let mut product = 1.0;
    for activity in alone {
        product *= ACTIVITY.check(activity)?;
    }
    Ok(product)
}

/// The row of a saturated salt, by its formula.
#[must_use]
pub fn saturated_humidity(salt: &str) -> Option<&'static Cited<SaturatedHumidity>> {
    SATURATED_HUMIDITY.iter().find(|row| row.value.salt == salt)
}

/// The row of a saturated salt's water activity, by its formula.
#[must_use]
pub fn saturated_activity(salt: &str) -> Option<&'static Cited<SaturatedActivity>> {
    SATURATED_ACTIVITY.iter().find(|row| row.value.salt == salt)
}

impl SaturatedHumidity {
    /// The relative humidity in percent at a temperature, A exp(B / T), within 2 either way:
    /// what a hygrometer in a closed jar with the wet salt should show.
    ///
    /// # Errors
    /// [`OutOfRange`] outside the temperatures of the row.
    pub fn at(&self, temperature: Reading) -> Result<Range<f64>, OutOfRange> {
        let celsius = temperature.on(Scale::Celsius).value();
        let bounds = crate::range::Bounds::new(
            "temperature of the saturated salt",
            "°C",
            self.lowest,
            self.highest,
        );
        let kelvin = bounds.check(celsius)? + 273.15;
        let middle = self.a * libm::exp(self.b / kelvin);
        Ok(Range::ordered((middle - 2.0).max(0.0), (middle + 2.0).min(100.0)))
    }
}

bounds! {
    SALT_KELVIN: "temperature of the saturated salt", "K", 273.15, 333.15;
}

impl SaturatedActivity {
    /// The water activity at a temperature: exp(k₁ / T − k₂).
    ///
    /// # Errors
    /// [`OutOfRange`] outside 0 to 60 °C.
    pub fn at(&self, temperature: Reading) -> Result<f64, OutOfRange> {
        let kelvin = SALT_KELVIN.check(temperature.on(Scale::Celsius).value() + 273.15)?;
        Ok(libm::exp(self.k1 / kelvin - self.k2))
    }
}
