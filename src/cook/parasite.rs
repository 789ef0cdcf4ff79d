use uom::si::f64::{Length, Time};

use crate::cite::Cited;
use crate::finding::Limit;
use crate::units::{PrintedTemperature, Reading};

/// A row of freezing against a parasite. It says nothing of bacteria, which freezing does not
/// kill, and no cooking endpoint is made of it.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Freezing {
    /// The temperature it is frozen at, at most.
    pub freeze: PrintedTemperature,
    /// The temperature it is kept at, at most; the clock runs there.
    pub store: PrintedTemperature,
    /// How thick a piece may be; `None` where the row does not go by that.
    pub thickest: Option<Length>,
    /// The time.
    pub time: Time,
}

/// The row with the shortest time that a food frozen and kept like this satisfies; `None` where
/// it satisfies none. A row that goes by thickness is not satisfied by a piece of unknown
/// thickness, and a temperature between two rows counts as the warmer.
///
/// ```
/// use greenweight::cook::{TRICHINA_FREEZING_GROUP1, freezing_row};
/// use greenweight::units::{Reading, Scale, days, inches};
///
/// // 0 °F is not printed: 5 °F is the next warmer row.
/// let home = Reading::new(0.0, Scale::Fahrenheit)?;
/// let row = freezing_row(&TRICHINA_FREEZING_GROUP1, home, home, Some(inches(6.0)));
/// assert_eq!(row.map(|row| row.value.time), Some(days(20.0)));
/// assert!(freezing_row(&TRICHINA_FREEZING_GROUP1, home, home, None).is_none());
/// # Ok::<(), greenweight::range::OutOfRange>(())
/// ```
#[must_use]
pub fn freezing_row(
    table: &'static [Cited<Freezing>],
    frozen_at: Reading,
    kept_at: Reading,
    thickness: Option<Length>,
) -> Option<&'static Cited<Freezing>> {
    let cold = |printed: PrintedTemperature, reading: Reading| {
        Limit::AtMost(printed.on(reading.scale())).met_by(reading) == Some(true)
    };
    let thin = |row: &Freezing| match (row.thickest, thickness) {
        (None, _) => true,
        (Some(thickest), Some(thickness)) => {
            Limit::AtMost(thickest.value).met_by(thickness.value) == Some(true)
        }
        (Some(_), None) => false,
    };
    let satisfied = table.iter().filter(|row| {
        cold(row.value.freeze, frozen_at) && cold(row.value.store, kept_at) && thin(&row.value)
    });
    satisfied.min_by(|a, b| a.value.time.value.total_cmp(&b.value.time.value))
}
