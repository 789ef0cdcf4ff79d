//! Refrigerator limits and freezer advice.
//!
//! Days in a refrigerator are a limit. Months in a freezer are advice about quality:
//! food kept at 0 °F or colder stays safe, so a time past the advice is a note and
//! never a break. The two are different types that do not compare:
//!
//! ```compile_fail,E0308
//! use greenweight::store::chart_row;
//! let row = chart_row("sausage/cooked", None).unwrap();
//! assert!(row.value.refrigerate == row.value.freeze);
//! ```
//!
//! # The tables
#![doc = include_str!("../../references/pages/store/cold-food.md")]
#![doc = include_str!("../../references/pages/store/home-temperatures.md")]
#![doc = include_str!("../../references/pages/store/cold-holding.md")]
#![doc = include_str!("../../references/pages/store/ham-chart.md")]
#![doc = include_str!("../../references/pages/store/sausage-chart.md")]
#![doc = include_str!("../../references/pages/store/freezer-chart.md")]
#![doc = include_str!("../../references/pages/store/thaw.md")]
#![doc = include_str!("../../references/pages/store/thaw-turkey.md")]
#![doc = include_str!("../../references/pages/store/garlic-in-oil.md")]
#![doc = include_str!("../../references/pages/store/practical-life.md")]

mod check;
mod freezing;
mod sauce;
mod thaw;
#[rustfmt::skip]
mod table;

use uom::si::f64::Time;

use crate::authority::Authority;
use crate::cite::Cited;
use crate::finding::Limit;
use crate::range::Range;
use crate::units::{PrintedTemperature, Reading};

pub use check::{
    Cold, Keeping, RULES, answers, chart_keys, chart_row, check, kept_otherwise, unanswered,
};
pub use freezing::{
    EquivalentTime, Heats, LifeUsed, NotFreezing, Pack, PracticalLife, Shape, Span,
    equivalent_time, life_between, practical_life, q10,
};
pub use sauce::{FRESH_SAUCE, GarlicInOil, Sauce, check_sauce, garlic_in_oil};
pub use table::*;
pub use thaw::{
    Afterwards, Thaw, ThawBird, Thawing, check_thaw, says_thawing, thaw_time, thaw_turkey,
};
#[cfg(feature = "recipe")]
pub(crate) use {sauce::ACIDIFIED, thaw::left_thawed};

/// How long a food keeps in a refrigerator: a limit. It does not compare with
/// [`FreezerTime`], which is advice about quality.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FridgeTime(pub(crate) Keeps);

/// How long a food is at its best in a freezer: advice about quality, never a limit.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FreezerTime(pub(crate) Keeps);

/// A storage time as a chart prints it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(crate) struct Keeps {
    pub(crate) printed: &'static str,
    pub(crate) days: Option<(f64, f64)>,
}

macro_rules! times {
    ($($name:ident)+) => {
        $(impl $name {
            /// What the chart prints, which may be words: "do not freeze".
            #[must_use]
            pub const fn printed(&self) -> &'static str {
                self.0.printed
            }

            /// The time, where the chart prints one. The upper end is the limit, the
            /// lower end the advice. A month counts 30 days and a year 365.
            #[must_use]
            pub fn time(&self) -> Option<Range<Time>> {
                self.0.days.map(|(low, high)| {
                    Range::ordered(crate::units::days(low), crate::units::days(high))
                })
            }
        })+
    };
}

times!(FridgeTime FreezerTime);

/// A row of a storage chart.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Storage {
    /// The food, as the chart names it.
    pub item: &'static str,
    /// The edition of the chart.
    pub edition: &'static str,
    /// In the refrigerator.
    pub refrigerate: FridgeTime,
    /// In the freezer.
    pub freeze: FreezerTime,
    /// From when the times count, empty where the chart does not say.
    pub counted_from: &'static str,
}

/// How cold an authority has food kept.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct ColdHolding {
    /// Whose row it is.
    pub authority: Authority,
    /// Whether it is for fish alone.
    pub fish: bool,
    /// The temperature, at most.
    pub temperature: PrintedTemperature,
}

/// Whether a temperature is cold by the rule of any authority: what is warmer has clocks of its own.
#[must_use]
pub fn cold_somewhere(at: Reading) -> bool {
    let met = |row: &Cited<ColdHolding>| {
        Limit::AtMost(row.value.temperature.on(at.scale())).met_by(at) == Some(true)
    };
    COLD_HOLDING.iter().any(met)
}

/// The last time at which a food may be used that was opened after some time: the earlier of the end
/// of its unopened time, and of its opened time counted from then. Opening never makes a food keep
/// longer.
///
/// ```
/// use greenweight::{store::latest_use, units::days};
///
/// // Two weeks unopened, five days opened: opened on day 10 it is used by day 14.
/// assert_eq!(latest_use(days(14.0), days(10.0), days(5.0)), days(14.0));
/// assert_eq!(latest_use(days(14.0), days(2.0), days(5.0)), days(7.0));
/// ```
#[must_use]
pub fn latest_use(unopened: Time, opened_after: Time, opened: Time) -> Time {
    let from_opening = opened_after + opened;
    if from_opening < unopened { from_opening } else { unopened }
}
