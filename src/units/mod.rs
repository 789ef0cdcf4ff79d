//! Exact units, and quantities as people write them.
//!
//! The quantities are those of [`uom`]: [`Mass`], [`Volume`], [`Time`],
//! [`ThermodynamicTemperature`] and [`TemperatureInterval`]. The customary units
//! here are declared with `uom`'s own macro from their exact definitions,
//! because the ones `uom` ships are rounded to seven figures and disagree: 16 of
//! its ounces make 0.999 999 82 of its pound.
//!
//! ```
//! use greenweight::units::{Mass, mass::{ounce, pound}};
//!
//! assert_eq!(Mass::new::<ounce>(16.0), Mass::new::<pound>(1.0));
//! ```
//!
//! # Reading and printing
//!
//! [`read_mass`], [`read_amount`], [`read_concentration`], [`read_temperature`],
//! [`read_tolerance`] and [`read_duration`] read what a recipe says. What could be
//! read in two ways is refused with a [`ReadError`] that says how to write it.
//! [`Shown`] prints a value without ever crossing the limit it stands beside.
//!
//! ```
//! use greenweight::units::{ounces, read_mass, Shown};
//!
//! let error = read_mass("1-1/4 oz").unwrap_err();
//! assert!(error.to_string().contains("write `1 1/4` for one and a quarter"));
//! assert_eq!(read_mass("1 1/4 oz")?, ounces(1.25));
//!
//! assert_eq!(Shown::new(156.0031, "ppm").to_string(), "156 ppm");
//! assert_eq!(Shown::new(156.0031, "ppm").beside(156.0).to_string(), "156.003 ppm");
//! # Ok::<(), greenweight::units::ReadError>(())
//! ```

// Whole numbers are counted here; elsewhere sums are of `f64` and cannot overflow.
#[deny(clippy::arithmetic_side_effects)]
mod duration;
mod exact;
#[deny(clippy::arithmetic_side_effects)]
mod number;
#[deny(clippy::arithmetic_side_effects)]
mod print;
mod problem;
mod read;
mod reading;
mod show;
mod word;

pub use duration::read_duration;
pub use exact::{
    centimeters, days, gallons, grams, hours, inches, kilograms, liters, mass, minutes, ounces,
    pounds, seconds, volume,
};
pub use print::{Shown, ShownRange};
pub use problem::{Kind, ReadError, ReadProblem};
pub use read::{
    Amount, Measures, read_amount, read_concentration, read_concentrations, read_liquid_amount,
    read_mass, read_temperature, read_tolerance,
};
pub use reading::{PrintedTemperature, Reading, Scale};
#[cfg(feature = "recipe")]
pub(crate) use reading::{TEMPERATURE, TOLERANCE};
pub use show::{
    MassUnit, floor_to_division, kitchen_scale, show_duration, show_mass, show_mass_like,
};
pub use uom::si::f64::{Length, Mass, TemperatureInterval, ThermodynamicTemperature, Time, Volume};
