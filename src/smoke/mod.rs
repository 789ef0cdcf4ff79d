//! Cold smoking: how warm the chamber may be.
//!
//! # The tables
#![doc = include_str!("../../references/pages/smoke/cold-ceilings.md")]

mod check;
#[rustfmt::skip]
mod table;

use uom::si::f64::Time;

use crate::authority::Authority;
use crate::food::Food;
use crate::units::PrintedTemperature;

pub use check::{ColdSmoke, RULES, answers, check, meat_never_cooked, unanswered};
pub use table::COLD_CEILINGS;

/// A ceiling of the chamber air while a food is smoked cold.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Ceiling {
    /// The food.
    pub food: Food,
    /// Whether it is only for fish packed in air.
    pub air_packed_only: bool,
    /// Whose ceiling it is; `None` for a practice without a document.
    pub authority: Option<Authority>,
    /// The temperature of the air, at most.
    pub temperature: PrintedTemperature,
    /// The time at it, at most, drying included.
    pub time: Option<Time>,
}
