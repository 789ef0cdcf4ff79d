//! Cooking endpoints: how hot inside, and for how long.
//!
//! The same temperature carries different times in different tables, and none of them
//! stands in for another: a row is chosen by authority, edition and class of food, and
//! only then by temperature. Tables are stepped. The row at or below the coldest
//! reading counts, with the thermometer taken at its worst.
//!
//! # The tables
#![doc = include_str!("../../references/pages/cook/us-consumer.md")]
#![doc = include_str!("../../references/pages/cook/fsis-meat-dwell.md")]
#![doc = include_str!("../../references/pages/cook/fsis-poultry-single.md")]

mod check;
#[rustfmt::skip]
mod table;

use uom::si::f64::Time;

use crate::authority::Authority;
use crate::food::Food;
use crate::units::PrintedTemperature;

pub use check::{Animals, Plan, RULES, answers, check, dwell_row, unanswered};
pub use table::{FSIS_MEAT_DWELL, FSIS_POULTRY_SINGLE, US_CONSUMER};

/// A row that gives one inside temperature and a rest.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Endpoint {
    /// Whose row it is.
    pub authority: Authority,
    /// The class of food.
    pub food: Food,
    /// The inside temperature, at least.
    pub temperature: PrintedTemperature,
    /// The rest that belongs to it; zero where none is printed.
    pub rest: Time,
}

/// A row that gives the time at a temperature.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Dwell {
    /// The temperature of the coldest part, at least.
    pub temperature: PrintedTemperature,
    /// The time for a 6.5-log reduction of *Salmonella*; zero where the row prints 0 s.
    pub for_6_5_log: Time,
    /// The time for a 7-log reduction; zero where the row prints 0 s.
    pub for_7_log: Time,
}
