//! Whether a food needs time and temperature for its safety, by its water activity and pH together.
//!
//! # The tables
#![doc = include_str!("../../references/pages/shelf/interaction-a.md")]
#![doc = include_str!("../../references/pages/shelf/interaction-b.md")]
#![doc = include_str!("../../references/pages/shelf/packaging-barriers.md")]
#![doc = include_str!("../../references/pages/shelf/packs-food-code.md")]
#![doc = include_str!("../../references/pages/shelf/packs-elsewhere.md")]
#![doc = include_str!("../../references/pages/shelf/shelf-stable.md")]

mod check;
#[rustfmt::skip]
mod table;

use core::cmp::Ordering;

use crate::cite::Cited;
use crate::finding::Limit;
use crate::range::{OutOfRange, against, bounds};

pub use check::{
    CookChill, Packed, RULES, check_pack, may_need_none, needs_none, says_pack_life, stable,
};
pub use table::*;

bounds! {
    // Of food: common practice, no source. The driest cracker lies above it; a sensor that failed shows zero.
    pub(crate) ACTIVITY: "water activity", "", 0.05, 1.0;
    // Of food: common practice, no source. From the juice of limes to what is cured in lye.
    pub(crate) PH: "pH", "", 1.5, 13.0;
}

/// A cell of the tables: bands of water activity and pH, with whether each end belongs to it, as
/// (from, above it, to, up to it).
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Cell {
    /// The band of water activity.
    pub activity: (f64, bool, f64, bool),
    /// The band of pH.
    pub ph: (f64, bool, f64, bool),
    /// Whether such a food needs neither time nor temperature; otherwise the product has to be
    /// assessed, and needs both until then.
    pub needs_none: bool,
}

/// When a product keeps without cold, by one authority.
///
/// ```
/// use greenweight::shelf::{SHELF_STABLE_ACIDIFIED, SHELF_STABLE_SEAFOOD};
///
/// // 21 CFR 114 takes pH 4.6 itself; Alaska's seafood has to be below it.
/// assert_eq!(SHELF_STABLE_ACIDIFIED.value.holds(Some(0.95), Some(4.6), None), Some(true));
/// assert_eq!(SHELF_STABLE_SEAFOOD.value.holds(Some(0.95), Some(4.6), Some(5.0)), Some(false));
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct ShelfStable {
    /// By its pH alone.
    pub ph: Option<Limit<f64>>,
    /// By its water activity alone.
    pub activity: Option<Limit<f64>>,
    /// The rule is for food above this water activity; what is drier it does not ask.
    pub only_above: Option<f64>,
    /// By the salt in its water alone, percent, at least.
    pub salt: Option<f64>,
    /// By pH and water activity together, both at most.
    pub both: Option<(f64, f64)>,
}

impl ShelfStable {
    /// Whether a product meets any of its limits; `None` where what is known does not tell.
    #[must_use]
    pub fn holds(
        &self,
        activity: Option<f64>,
        ph: Option<f64>,
        brine: Option<f64>,
    ) -> Option<bool> {
        let by = |limit: Option<Limit<f64>>, known: Option<f64>| match (limit, known) {
            (None, _) => Some(false),
            (Some(limit), Some(known)) => limit.met_by(known),
            (Some(_), None) => None,
        };
        let both = match self.both {
            None => Some(false),
            Some((most, driest)) => {
                match (by(Some(Limit::AtMost(most)), ph), by(Some(Limit::AtMost(driest)), activity))
                {
                    (Some(false), _) | (_, Some(false)) => Some(false),
                    (Some(true), Some(true)) => Some(true),
                    _ => None,
                }
            }
        };
        let dry = by(self.only_above.map(Limit::AtMost), activity);
        let ways = [
            by(self.ph, ph),
            by(self.activity, activity),
            by(self.salt.map(Limit::AtLeast), brine),
            both,
            dry,
        ];
        if ways.contains(&Some(true)) {
            return Some(true);
        }
        if ways.contains(&None) { None } else { Some(false) }
    }
}

fn inside((low, above, high, up_to): (f64, bool, f64, bool), value: f64) -> bool {
    let low = match against(value, low) {
        Some(Ordering::Greater) => true,
        Some(Ordering::Equal) => !above,
        _ => false,
    };
    let high = match against(value, high) {
        Some(Ordering::Less) => true,
        Some(Ordering::Equal) => up_to,
        _ => false,
    };
    low && high
}

/// The cell of a food: of Table A for one that was heated to kill vegetative cells *and then
/// packaged*, of Table B for every other.
///
/// # Errors
/// [`OutOfRange`] for a water activity outside 0.05 to 1 or a pH outside 1.5 to 13: no food has it.
///
/// ```
/// use greenweight::shelf::cell;
///
/// // At 0.92 exactly the first row of Table A still counts.
/// assert!(cell(true, 0.92, 6.0)?.is_some_and(|cell| cell.value.needs_none));
/// // The same food, not packaged after it was heated, has to be assessed.
/// assert!(cell(false, 0.92, 6.0)?.is_some_and(|cell| !cell.value.needs_none));
/// # Ok::<(), greenweight::range::OutOfRange>(())
/// ```
pub fn cell(
    heated_and_packaged: bool,
    activity: f64,
    ph: f64,
) -> Result<Option<&'static Cited<Cell>>, OutOfRange> {
    let (activity, ph) = (ACTIVITY.check(activity)?, PH.check(ph)?);
    let table: &'static [Cited<Cell>] =
        if heated_and_packaged { &INTERACTION_A } else { &INTERACTION_B };
    Ok(table.iter().find(|cell| inside(cell.value.activity, activity) && inside(cell.value.ph, ph)))
}
