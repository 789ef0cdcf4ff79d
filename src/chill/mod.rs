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

mod check;
mod clock;
mod ferment;
mod growth;
mod warm;
#[rustfmt::skip]
mod table;

pub use check::{Cooling, Formula, Holds, RULES, answers, check};
pub use clock::{Leg, LegClock};
pub use ferment::{
    DegreeHours, Ferment, check_fermentation, degree_hours, degree_hours_between,
    longest_fermentation,
};
pub use growth::{Growth, Rate, listeria_rate_at};
pub use table::*;
pub use warm::{WarmTime, says_how_long, warm};
