//! After the fire: cooling clocks, degree-hours of a fermentation, and growth for information.
//!
//! A clock runs on the warmest part, from reading to reading. Legs are clocks of their own: the
//! United States give the second one from the start of the first, Australia from its end. What broke a
//! clock goes to expert review; growth that is predicted clears nothing.
//!
//! # The tables
#![doc = include_str!("../../references/pages/chill/cooling-us.md")]
#![doc = include_str!("../../references/pages/chill/food-code-cooling.md")]
#![doc = include_str!("../../references/pages/chill/australia.md")]
#![doc = include_str!("../../references/pages/chill/degree-hours.md")]
#![doc = include_str!("../../references/pages/chill/warm-time.md")]
#![doc = include_str!("../../references/pages/chill/growth-limits.md")]
#![doc = include_str!("../../references/pages/chill/growth-models.md")]
#![doc = include_str!("../../references/pages/chill/exposure.md")]
#![doc = include_str!("../../references/pages/chill/exposure-summary.md")]

mod check;
mod clock;
mod date_mark;
mod exposure;
mod ferment;
mod growth;
mod limits;
mod warm;
#[rustfmt::skip]
mod table;

pub use check::{
    Cooling, Formula, Holds, RULES, answers, check, check_unheld, cools_any_food, legs,
};
pub use clock::{Leg, LegClock};
#[cfg(feature = "calendar")]
pub use date_mark::last_day;
pub use date_mark::{date_mark, day_of_use};
pub use exposure::{
    Exposure, ReadyToEat, exposed_organisms, exposure, ready_to_eat, says_exposure,
};
pub use ferment::{
    DegreeHours, Ferment, check_fermentation, degree_hours, degree_hours_between,
    longest_fermentation,
};
pub use growth::{Growth, Model, Prediction, Rate, growth_models, listeria_rate_at};
pub use limits::{Factor, GrowthLimit, Pathogen, growth_limits, strictest_growth};
pub use table::*;
pub use warm::{Stay, WarmTime, Was, always_short, nearer_to_cold, says_how_long, warm};
