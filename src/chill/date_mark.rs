use core::cmp::Ordering;

use uom::si::f64::Time;

use super::table::FOOD_CODE_2022_DATE_MARK_DAYS;
use crate::authority::Authority;
#[cfg(feature = "calendar")]
use crate::cite::Date;
use crate::finding::{Finding, Force, Limit, Mend, Missing, Place, Rule, Verdict};
use crate::range::{Range, against};
use crate::units::days;

pub(super) const DATE: Rule =
    Rule::new("chill/date-mark", "used within the days of its date mark", Force::Safety);

const HOW_LONG: Missing = Missing::new("how long it is kept", "write for = \"… days\" on the step");
const PAUSED: &str = "The day it is made or opened is day 1. Days in a freezer do not count, and do not start the count again. A mixture takes the date of its oldest part.";

/// Which day it is when a time is over, as a time: day 1 is the day on which it begins.
///
/// At what hour it begins is not known: half a day may end on day 1 or day 2.
///
/// ```
/// use greenweight::{chill::day_of_use, range::Range, units::days};
///
/// let six = day_of_use(Range::exactly(days(6.0))?);
/// assert_eq!((six.low(), six.high()), (days(7.0), days(7.0)));
/// let half = day_of_use(Range::exactly(days(0.5))?);
/// assert_eq!((half.low(), half.high()), (days(1.0), days(2.0)));
/// # Ok::<(), greenweight::range::RangeError>(())
/// ```
#[must_use]
pub fn day_of_use(kept: Range<Time>) -> Range<Time> {
    let one = days(1.0);
    let (low, high) = (kept.low() / one, kept.high() / one);
    // Sums of days are whole days to the last digits.
    let whole = |days: f64, otherwise: fn(f64) -> f64| {
        let nearest = libm::round(days);
        if against(days, nearest) == Some(Ordering::Equal) { nearest } else { otherwise(days) }
    };
    let (low, high) = (whole(low.value, libm::floor), whole(high.value, libm::ceil));
    Range::ordered(days(low + 1.0), days(high + 1.0))
}

/// The last day on which food that was made, or opened, on a day may be used by the Food Code.
///
/// ```
/// use greenweight::{chill::last_day, cite::Date};
///
/// // Opened on Monday 3 August 2026: to be used by Sunday.
/// assert_eq!(last_day(Date::new(2026, 8, 3)?), Some(Date::new(2026, 8, 9)?));
/// # Ok::<(), greenweight::range::OutOfRange>(())
/// ```
#[cfg(feature = "calendar")]
#[cfg_attr(docsrs, doc(cfg(feature = "calendar")))]
#[must_use]
pub fn last_day(made: Date) -> Option<Date> {
    made.later(FOOD_CODE_2022_DATE_MARK_DAYS.value - days(1.0))
}

/// Ready-to-eat food that a shop keeps cold for so long, without the time in a freezer; `None` for
/// other authorities, and for what is kept no more than a day.
#[must_use]
pub fn date_mark(kept: Option<Range<Time>>, authority: Authority, place: Place) -> Option<Finding> {
    if !authority.is_food_code() {
        return None;
    }
    let row = &FOOD_CODE_2022_DATE_MARK_DAYS;
    let limit = Limit::AtMost(row.value);
    let finding =
        |verdict| Finding::new(&DATE, verdict).limit(limit).row(&row.row).note(PAUSED).at(place);
    let Some(kept) = kept else {
        return Some(finding(Verdict::Unproven).missing(HOW_LONG));
    };
    if kept.high() <= days(1.0) {
        return None;
    }
    let day = day_of_use(kept);
    let found = finding(limit.judge(&day)).found(&day);
    Some(found.or_mend(Mend::KeepFor(row.value - days(1.0))))
}
