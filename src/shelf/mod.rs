//! Whether a food needs time and temperature for its safety, by its water activity and pH together.
//!
//! # The tables
#![doc = include_str!("../../references/pages/shelf/interaction-a.md")]
#![doc = include_str!("../../references/pages/shelf/interaction-b.md")]
#![doc = include_str!("../../references/pages/shelf/packaging-barriers.md")]
#![doc = include_str!("../../references/pages/shelf/packs-food-code.md")]
#![doc = include_str!("../../references/pages/shelf/packs-elsewhere.md")]

mod check;
#[rustfmt::skip]
mod table;

use core::cmp::Ordering;

use crate::cite::Cited;
use crate::range::{OutOfRange, against, bounds};

pub use check::{CookChill, Packed, RULES, check_pack, needs_none, stable};
pub use table::*;

bounds! {
    ACTIVITY: "water activity", "", 0.0, 1.0;
    PH: "pH", "", 0.0, 14.0;
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
/// [`OutOfRange`] for a water activity outside 0 to 1 or a pH outside 0 to 14.
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
