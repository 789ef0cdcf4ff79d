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

pub mod air;
mod check;
mod hold;
mod humidity;
mod lethality;
mod parasite;
mod process;
mod record;
#[rustfmt::skip]
mod table;

use uom::si::f64::Time;

use crate::authority::Authority;
use crate::food::Food;
use crate::units::PrintedTemperature;

pub use check::{
    Animals, Plan, RULES, answers, check, completes, dwell_row, endpoint_row, served_raw,
    table_for, unanswered,
};
pub use hold::{Hold, food_code, hold_row};
pub use humidity::{
    HumidityOption, LargePiece, Moisture, humid_time, humidity_options, large_piece,
};
pub use lethality::{Lethality, Resistance};
pub use parasite::{Freezing, freezing_row};
pub use process::{Aim, Process, Stage, hot_holding, partial, unread_record};
pub use record::{Bird, ComeUp, Product, RowHeld, Verdicts, poultry_time};
pub use table::*;

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

/// A row that gives the time at a temperature for a 5-log reduction.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Dwell5 {
    /// The temperature of the coldest part, at least.
    pub temperature: PrintedTemperature,
    /// The time; zero where the row prints 0 s.
    pub time: Time,
}

/// A row that gives the time at a temperature for a 7-log reduction in poultry, by its fat.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct PoultryDwell {
    /// The temperature of the coldest part, at least.
    pub temperature: PrintedTemperature,
    /// Seconds at 1 to 12 percent of fat; zero where the row prints 0 s.
    pub seconds_by_fat: [f64; 12],
}

/// How long a product may be between two temperatures while it heats.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct ComeUpLimit {
    /// From this temperature.
    pub low_fahrenheit: f64,
    /// To this one.
    pub high_fahrenheit: f64,
    /// At most this long.
    pub most: Time,
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
