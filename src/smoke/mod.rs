//! Cold and hot smoke: how warm the chamber may be, how hot a fish gets, and how much salt its water holds.
//!
//! Authorities define cold smoking by the protein of the flesh, and limit it by the air of the chamber. A warm
//! stage before cooking is a stage of the cook. What smoke leaves on food is limited too: the hydrocarbons
//! below come from fire that smoulders badly and from fat that drips on it.
//!
//! # The tables
#![doc = include_str!("../../references/pages/smoke/cold-ceilings.md")]
#![doc = include_str!("../../references/pages/smoke/hot-fish.md")]
#![doc = include_str!("../../references/pages/smoke/water-phase-salt.md")]
#![doc = include_str!("../../references/pages/smoke/brining.md")]
#![doc = include_str!("../../references/pages/smoke/definitions.md")]
#![doc = include_str!("../../references/pages/smoke/pah.md")]
#![doc = include_str!("../../references/pages/smoke/wood.md")]

mod check;
mod fish;
#[rustfmt::skip]
mod table;

use uom::si::f64::Time;

use crate::authority::Authority;
use crate::food::Food;
use crate::units::PrintedTemperature;

pub use check::{ColdSmoke, RULES, answers, check, meat_never_cooked, says_how_long, unanswered};
pub use fish::{HotSmoke, SmokedFish, WaterPhase, check_brining, check_fish, cooks_fish, variance};
pub use table::{
    BRINING_ROOM, BRINING_ROOM_TIME, BRINING_START, CHUB, COLD_CEILINGS, HOT_FISH, VARIANCE,
    WATER_PHASE_SALT,
};

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
