use super::number::{Cursor, Form, Number, number};
use super::word::{Unit, between, end, may_be_mixed, unit};
use super::{Kind, ReadError, ReadProblem, Time, seconds};
use crate::range::Range;

/// Reads a duration, or a range of them: `90 min`, `1 h 30 min`, `1 1/2 h`, `3 months`,
/// `20-25 min`, `2 to 3 days`.
///
/// Units are s, min, h, days, weeks, months and years, also spelled out. Parts run from
/// the larger unit to the smaller, each less than one of the unit before it, and only
/// the last may have a fraction. The ends of a range stand on either side of a hyphen,
/// a dash or `to`.
///
/// A month counts 30 days and a year 365, because a limit must not become longer by
/// being converted: a month of 31 days would allow a day more than most printed ones.
/// A time that *was kept* for so many months may have been longer; count its days.
///
/// # Errors
/// A [`ReadError`]: [`ReadProblem::FallingRange`] for `25-20 min`,
/// [`ReadProblem::HyphenOrRange`] for `1-1/2 h`, and those of a number or a unit not
/// read.
///
/// ```
/// use greenweight::units::{minutes, read_duration};
///
/// let dwell = read_duration("20-25 min")?;
/// assert_eq!((dwell.low(), dwell.high()), (minutes(20.0), minutes(25.0)));
/// assert!(read_duration("1 h 30 min")?.is_exact());
/// # Ok::<(), greenweight::units::ReadError>(())
/// ```
pub fn read_duration(text: &str) -> Result<Range<Time>, ReadError> {
    let mut cursor = Cursor::new(text, Kind::Duration)?;
    let first = number(&mut cursor)?;
    cursor.skip_spaces();
    let (low, high, last) = if let Some(mark) = between(&mut cursor)? {
        let second = number(&mut cursor)?;
        if may_be_mixed(mark, &first, &second) {
            return Err(ReadError::new(ReadProblem::HyphenOrRange, first.start, second.end));
        }
        let seconds = one_unit(&mut cursor, &second)?.0;
        if cursor.starts_number() {
            let end = cursor.end_of_text();
            return Err(ReadError::new(ReadProblem::RangeOfParts, first.start, end));
        }
        (first.times(seconds), second.times(seconds), second.end)
    } else {
        let low = parts(&mut cursor, first)?;
        if between(&mut cursor)?.is_some() {
            let second = number(&mut cursor)?;
            cursor.skip_spaces();
            (low, parts(&mut cursor, second)?, second.end)
        } else {
            (low, low, first.end)
        }
    };
    end(&cursor)?;
    Range::new(seconds(low), seconds(high))
        .map_err(|_| ReadError::new(ReadProblem::FallingRange, first.start, last))
}

/// The seconds in the unit after `number`, and the unit.
fn one_unit(cursor: &mut Cursor<'_>, number: &Number) -> Result<(f64, Unit, usize), ReadError> {
    let placed = unit(cursor, number)?;
    match placed.unit.seconds() {
        Some(seconds) => Ok((seconds, placed.unit, placed.end)),
        None => Err(placed.error(ReadProblem::WrongKind(Kind::Duration))),
    }
}

/// The seconds of one duration, which may have several parts.
fn parts(cursor: &mut Cursor<'_>, first: Number) -> Result<f64, ReadError> {
    let mut part = first;
    let (mut one, mut unit, _) = one_unit(cursor, &part)?;
    let mut total = part.times(one);
    while cursor.starts_number() {
        if part.form != Form::Whole {
            return Err(ReadError::new(ReadProblem::PartNotWhole, part.start, part.end));
        }
        part = number(cursor)?;
        cursor.skip_spaces();
        if between(cursor)?.is_some() {
            let end = cursor.end_of_text();
            return Err(ReadError::new(ReadProblem::RangeOfParts, first.start, end));
        }
        let (smaller, smaller_unit, end) = one_unit(cursor, &part)?;
        let fail = |problem| Err(ReadError::new(problem, part.start, end));
        if smaller >= one {
            return fail(ReadProblem::PartOrder);
        }
        // Twelve months of 30 days are shorter than a year of 365.
        let whole = match (unit, smaller_unit) {
            (Unit::Year, Unit::Month) => 12.0 * smaller,
            _ => one,
        };
        if part.times(smaller) >= whole {
            return fail(ReadProblem::PartTooLarge);
        }
        total += part.times(smaller);
        (one, unit) = (smaller, smaller_unit);
    }
    Ok(total)
}
