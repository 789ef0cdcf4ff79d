//! Humid air at the temperatures of a smokehouse.
//!
//! A wet surface stays near the wet bulb of the air around it until it dries, however hot the
//! oven: 180 °F at 10 % relative humidity holds it near 106 °F. An oven's temperature is not a
//! surface's, and neither is the core's.
//!
//! - p_sat: ln p = c₋₁/T + c₀ + c₁T + c₂T² + c₃T³ + c₄T⁴ + c ln T (p in Pa, T in K);
//! - W = 0.621945 pᵥ/(p − pᵥ), in kg of water to kg of dry air;
//! - the thermodynamic wet bulb t*: W = ((2501 − 2.326 t*) Wₛ(t*) − 1.006 (t − t*)) /
//!   (2501 + 1.86 t − 4.186 t*), and its like below freezing;
//! - relative humidity = pᵥ / p_sat(t). *Percentage humidity*, W / Wₛ, is another number.
//!
//! The coefficients and their source stand in the table `cook/humid-air`. The gas is taken as
//! perfect: up to 121 °C the wet bulb stays within 0.06 K of a real gas.
//!
//! ```
//! use greenweight::cook::air;
//! use greenweight::units::{Reading, Scale};
//!
//! let celsius = |value| Reading::new(value, Scale::Celsius);
//! let sea = air::standard_pressure(0.0)?;
//! let percent = air::relative_humidity(celsius(80.0)?, celsius(60.0)?, sea)?;
//! assert!((percent - 39.648).abs() < 0.002);
//! let wet = air::wet_bulb(celsius(80.0)?, percent, sea)?;
//! assert!((wet.value() - 60.0).abs() < 1e-6);
//! # Ok::<(), air::AirError>(())
//! ```

use super::table::{
    HUMIDITY_RATIO, PRESSURE_BY_ALTITUDE, SATURATION_OVER_ICE, SATURATION_OVER_WATER, WET_BULB_ICE,
    WET_BULB_WATER,
};
use crate::range::{OutOfRange, bounds};
use crate::units::{Reading, Scale};

const COLDEST: f64 = -50.0;

bounds! {
    DRY: "dry bulb", "°C", COLDEST, 150.0;
    SATURATED: "temperature of saturated vapour", "°C", -100.0, 200.0;
    PRESSURE: "pressure of the air", "Pa", 50_000.0, 120_000.0;
    HUMIDITY: "relative humidity", "%", 0.0, 100.0;
    ALTITUDE: "altitude", "m", -500.0, 5_000.0;
}

/// Coefficients of the pressure of saturated vapour.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Saturation {
    pub(super) c_inverse: f64,
    pub(super) c0: f64,
    pub(super) c1: f64,
    pub(super) c2: f64,
    pub(super) c3: f64,
    pub(super) c4: f64,
    pub(super) c_ln: f64,
}

/// Coefficients of the thermodynamic wet bulb, kJ/kg and kJ/(kg K).
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct WetBulb {
    pub(super) latent: f64,
    pub(super) latent_slope: f64,
    pub(super) air: f64,
    pub(super) vapour: f64,
    pub(super) water: f64,
}

/// Coefficients of the pressure at an altitude.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Barometer {
    pub(super) at_sea: f64,
    pub(super) per_metre: f64,
    pub(super) power: f64,
}

/// Why humid air has no answer.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum AirError {
    /// An input outside its range.
    #[error(transparent)]
    OutOfRange(#[from] OutOfRange),
    /// A wet bulb above the dry bulb.
    #[error("a wet bulb of {wet} °C is above the dry bulb of {dry} °C: are they swapped?")]
    WetAboveDry {
        /// The wet bulb, °C.
        wet: f64,
        /// The dry bulb, °C.
        dry: f64,
    },
    /// A wet bulb so far below the dry bulb that the air would hold less than no water.
    #[error("a wet bulb of {wet} °C is too low for a dry bulb of {dry} °C: did its wick run dry?")]
    TooDry {
        /// The wet bulb, °C.
        wet: f64,
        /// The dry bulb, °C.
        dry: f64,
    },
    /// Vapour that would need more than the whole pressure: above the boiling point.
    #[error(
        "{percent} % at {dry} °C takes a vapour pressure of {vapour} Pa, of {pressure} Pa in all"
    )]
    Boils {
        /// The relative humidity asked for, percent.
        percent: f64,
        /// The dry bulb, °C.
        dry: f64,
        /// The vapour's pressure, Pa.
        vapour: f64,
        /// The pressure of the air, Pa.
        pressure: f64,
    },
}

fn saturation(celsius: f64) -> f64 {
    let c = if celsius < 0.01 { &SATURATION_OVER_ICE.value } else { &SATURATION_OVER_WATER.value };
    let t = celsius + 273.15;
    let powers = t * (c.c1 + t * (c.c2 + t * (c.c3 + t * c.c4)));
    libm::exp(c.c_inverse / t + c.c0 + powers + c.c_ln * libm::log(t))
}

fn ratio(vapour: f64, pressure: f64) -> f64 {
    HUMIDITY_RATIO.value * vapour / (pressure - vapour)
}

/// The humidity ratio of air with these bulbs: below zero where the wet one is too low.
fn ratio_of_bulbs(dry: f64, wet: f64, pressure: f64) -> f64 {
    let c = if wet < 0.01 { &WET_BULB_ICE.value } else { &WET_BULB_WATER.value };
    let saturated = ratio(saturation(wet), pressure);
    ((c.latent - c.latent_slope * wet) * saturated - c.air * (dry - wet))
        / (c.latent + c.vapour * dry - c.water * wet)
}

fn celsius(reading: Reading) -> Result<f64, AirError> {
    Ok(DRY.check(reading.on(Scale::Celsius).value())?)
}

/// The pressure of saturated water vapour, in Pa: over ice below 0.01 °C.
///
/// # Errors
/// [`AirError::OutOfRange`] outside −100 to 200 °C.
pub fn saturation_pressure(at: Reading) -> Result<f64, AirError> {
    Ok(saturation(SATURATED.check(at.on(Scale::Celsius).value())?))
}

/// The pressure of the standard atmosphere at an altitude in metres, in Pa.
///
/// # Errors
/// [`AirError::OutOfRange`] outside −500 to 5000 m.
pub fn standard_pressure(metres: f64) -> Result<f64, AirError> {
    let c = &PRESSURE_BY_ALTITUDE.value;
    Ok(c.at_sea * libm::pow(1.0 - c.per_metre * ALTITUDE.check(metres)?, c.power))
}

/// The humidity ratio of air, kg of water to kg of dry air, from its bulbs and pressure (Pa).
///
/// # Errors
/// [`AirError`] for a bulb outside −50 to 150 °C, a pressure outside 50 to 120 kPa, a wet bulb
/// above the dry bulb, or one too far below it.
pub fn humidity_ratio(dry: Reading, wet: Reading, pressure: f64) -> Result<f64, AirError> {
    let (dry, wet, pressure) = (celsius(dry)?, celsius(wet)?, PRESSURE.check(pressure)?);
    if wet > dry {
        return Err(AirError::WetAboveDry { wet, dry });
    }
    let ratio = ratio_of_bulbs(dry, wet, pressure);
    if ratio < 0.0 || !ratio.is_finite() {
        return Err(AirError::TooDry { wet, dry });
    }
    Ok(ratio)
}

/// The relative humidity of air in percent, from its bulbs and pressure (Pa).
///
/// # Errors
/// As for [`humidity_ratio`].
pub fn relative_humidity(dry: Reading, wet: Reading, pressure: f64) -> Result<f64, AirError> {
    let ratio = humidity_ratio(dry, wet, pressure)?;
    let vapour = pressure * ratio / (HUMIDITY_RATIO.value + ratio);
    Ok(100.0 * vapour / saturation(celsius(dry)?))
}

/// The wet bulb of air of a relative humidity in percent, at a pressure (Pa): about what a wet
/// surface in it stays at until it dries, on the scale of the dry bulb. Radiation lifts a real
/// surface some kelvin above it.
///
/// # Errors
/// [`AirError`] for an input outside its range, and for vapour that would boil.
///
/// ```
/// use greenweight::cook::air;
/// use greenweight::units::{Reading, Scale};
///
/// // Computed with PsychroLib 2.5.0: 121.98 °F.
/// let oven = Reading::new(180.0, Scale::Fahrenheit)?;
/// let surface = air::wet_bulb(oven, 20.0, 101_325.0)?;
/// assert!((surface.value() - 121.98).abs() < 0.01);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn wet_bulb(dry: Reading, percent: f64, pressure: f64) -> Result<Reading, AirError> {
    let scale = dry.scale();
    let (dry, pressure) = (celsius(dry)?, PRESSURE.check(pressure)?);
    let percent = HUMIDITY.check(percent)?;
    let vapour = saturation(dry) * percent / 100.0;
    if vapour >= pressure {
        return Err(AirError::Boils { percent, dry, vapour, pressure });
    }
    let wanted = ratio(vapour, pressure);
    // Saturation at the wet bulb stays below the pressure of the air.
    let boiling = |at: f64| saturation(at) >= pressure;
    let (mut low, mut high) = (COLDEST, dry);
    // Each step halves 200 K: after sixty nothing is left between the two.
    for _ in 0..60 {
        let middle = (low + high) * 0.5;
        if boiling(middle) || ratio_of_bulbs(dry, middle, pressure) > wanted {
            high = middle;
        } else {
            low = middle;
        }
    }
    Ok(Reading::new((low + high) * 0.5, Scale::Celsius)?.on(scale))
}
