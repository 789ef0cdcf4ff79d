//! The words that stand for units.

use super::number::{Cursor, Form, Number, is_dash, is_foreign_digit, number};
use super::{Kind, ReadError, ReadProblem};

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Unit {
    Milligram,
    Gram,
    Kilogram,
    Ounce,
    Pound,
    Milliliter,
    Liter,
    Teaspoon,
    Tablespoon,
    Cup,
    FluidOunce,
    Pint,
    Quart,
    Gallon,
    PartsPerMillion,
    GramPerKilogram,
    Percent,
    Celsius,
    Fahrenheit,
    /// A degree of a scale not said.
    Degree,
    Second,
    Minute,
    Hour,
    Day,
    Week,
    Month,
    Year,
}

impl Unit {
    pub(super) const fn is_volume(self) -> bool {
        matches!(
            self,
            Self::Milliliter
                | Self::Liter
                | Self::Teaspoon
                | Self::Tablespoon
                | Self::Cup
                | Self::FluidOunce
                | Self::Pint
                | Self::Quart
                | Self::Gallon
        )
    }

    /// Seconds in one; a month has 30 days and a year 365.
    pub(super) const fn seconds(self) -> Option<f64> {
        Some(match self {
            Self::Second => 1.0,
            Self::Minute => 60.0,
            Self::Hour => 3600.0,
            Self::Day => 86_400.0,
            Self::Week => 604_800.0,
            Self::Month => 2_592_000.0,
            Self::Year => 31_536_000.0,
            _ => return None,
        })
    }
}

/// One word. Symbols of metric units are read as they are written, for `Mg` is not
/// `mg`; words and customary abbreviations in either case.
fn known(word: &str) -> Option<Unit> {
    Some(match word {
        "g" => Unit::Gram,
        "oz" => Unit::Ounce,
        "lb" => Unit::Pound,
        "kg" | "Kg" | "KG" => Unit::Kilogram,
        "mg" => Unit::Milligram,
        "tsp" => Unit::Teaspoon,
        "mL" | "ml" => Unit::Milliliter,
        "L" | "l" => Unit::Liter,
        "%" => Unit::Percent,
        "mg/kg" => Unit::PartsPerMillion,
        "g/kg" => Unit::GramPerKilogram,
        "°F" | "℉" => Unit::Fahrenheit,
        "°C" | "℃" => Unit::Celsius,
        _ => return in_either_case(word),
    })
}

fn in_either_case(word: &str) -> Option<Unit> {
    let mut buffer = [0_u8; 12];
    let lower = buffer.get_mut(..word.len())?;
    lower.copy_from_slice(word.as_bytes());
    lower.make_ascii_lowercase();
    Some(match &*lower {
        b"gram" | b"grams" => Unit::Gram,
        b"kilo" | b"kilos" | b"kilogram" | b"kilograms" => Unit::Kilogram,
        b"milligram" | b"milligrams" => Unit::Milligram,
        b"oz" | b"ounce" | b"ounces" => Unit::Ounce,
        b"lb" | b"lbs" | b"pound" | b"pounds" => Unit::Pound,
        b"milliliter" | b"milliliters" | b"millilitre" | b"millilitres" => Unit::Milliliter,
        b"liter" | b"liters" | b"litre" | b"litres" => Unit::Liter,
        b"tsp" | b"teaspoon" | b"teaspoons" => Unit::Teaspoon,
        b"tbsp" | b"tablespoon" | b"tablespoons" => Unit::Tablespoon,
        b"cup" | b"cups" => Unit::Cup,
        b"pt" | b"pint" | b"pints" => Unit::Pint,
        b"qt" | b"quart" | b"quarts" => Unit::Quart,
        b"gal" | b"gallon" | b"gallons" => Unit::Gallon,
        b"ppm" => Unit::PartsPerMillion,
        b"percent" => Unit::Percent,
        b"f" | b"degf" | b"fahrenheit" | b"\xc2\xb0f" => Unit::Fahrenheit,
        b"c" | b"degc" | b"celsius" | b"\xc2\xb0c" => Unit::Celsius,
        b"\xc2\xb0" | b"deg" | b"degree" | b"degrees" => Unit::Degree,
        b"s" | b"sec" | b"secs" | b"second" | b"seconds" => Unit::Second,
        b"min" | b"mins" | b"minute" | b"minutes" => Unit::Minute,
        b"h" | b"hr" | b"hrs" | b"hour" | b"hours" => Unit::Hour,
        b"d" | b"day" | b"days" => Unit::Day,
        b"wk" | b"wks" | b"week" | b"weeks" => Unit::Week,
        b"month" | b"months" => Unit::Month,
        b"yr" | b"yrs" | b"year" | b"years" => Unit::Year,
        _ => return None,
    })
}

fn is_of_word(c: char) -> bool {
    !c.is_whitespace() && !c.is_numeric() && !matches!(c, ',' | '.' | '±') && !is_dash(c)
}

/// A unit and where it stands.
#[derive(Debug, Clone, Copy)]
pub(super) struct Placed {
    pub(super) unit: Unit,
    pub(super) start: usize,
    pub(super) end: usize,
}

impl Placed {
    pub(super) const fn error(&self, problem: ReadProblem) -> ReadError {
        ReadError::new(problem, self.start, self.end)
    }
}

/// The unit after `number`; the cursor then stands at what follows it and its spaces.
pub(super) fn unit(cursor: &mut Cursor<'_>, number: &Number) -> Result<Placed, ReadError> {
    let kind = cursor.kind();
    cursor.skip_spaces();
    let start = cursor.at();
    let word = cursor.take_while(is_of_word);
    if word.is_empty() {
        return Err(match cursor.peek() {
            None if matches!(kind, Kind::Temperature | Kind::Tolerance) => {
                ReadError::new(ReadProblem::ScaleMissing, number.start, number.end)
            }
            None => ReadError::new(ReadProblem::BareNumber(kind), number.start, number.end),
            Some(',') => cursor.error_here(ReadProblem::Comma),
            Some(c) if is_dash(c) => cursor.error_here(ReadProblem::Hyphen),
            Some(c) if is_foreign_digit(c) => cursor.error_here(ReadProblem::ForeignDigits),
            Some(_) => cursor.error_here(ReadProblem::UnknownUnit(kind)),
        });
    }
    let unit = if word.eq_ignore_ascii_case("fl") || word.eq_ignore_ascii_case("fluid") {
        full_stop(cursor)?;
        cursor.skip_spaces();
        match known(cursor.take_while(is_of_word)) {
            Some(Unit::Ounce) => Some(Unit::FluidOunce),
            _ => None,
        }
    } else {
        match known(word) {
            Some(Unit::Degree) => Some(degree(cursor)),
            other => other,
        }
    };
    let end = cursor.at();
    let Some(unit) = unit else {
        return Err(cursor.error_from(start, ReadProblem::UnknownUnit(kind)));
    };
    full_stop(cursor)?;
    cursor.skip_spaces();
    Ok(Placed { unit, start, end })
}

/// The scale after `°`, when one is named.
fn degree(cursor: &mut Cursor<'_>) -> Unit {
    let mut after = cursor.clone();
    after.skip_spaces();
    match known(after.take_while(is_of_word)) {
        Some(scale @ (Unit::Fahrenheit | Unit::Celsius)) => {
            *cursor = after;
            scale
        }
        _ => Unit::Degree,
    }
}

/// The full stop of an abbreviation, as in `2 oz.`.
fn full_stop(cursor: &mut Cursor<'_>) -> Result<(), ReadError> {
    if cursor.peek() == Some('.') {
        let stop = cursor.clone();
        cursor.bump();
        if cursor.starts_number() {
            return Err(stop.error_at_word(ReadProblem::BrokenNumber));
        }
    }
    Ok(())
}

/// What stands between the two ends of a range.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Between {
    Dash,
    To,
}

/// Steps over a dash or a `to` that a number follows.
pub(super) fn between(cursor: &mut Cursor<'_>) -> Result<Option<Between>, ReadError> {
    let Some(c) = cursor.peek().filter(|&c| is_dash(c) || matches!(c, 't' | 'T')) else {
        return Ok(None);
    };
    let mut after = cursor.clone();
    let mark = if is_dash(c) {
        after.bump();
        Between::Dash
    } else if after.take_while(is_of_word).eq_ignore_ascii_case("to") {
        Between::To
    } else {
        return Ok(None);
    };
    after.skip_spaces();
    if after.starts_number() || after.peek().is_some_and(is_dash) {
        *cursor = after;
        return Ok(Some(mark));
    }
    match mark {
        Between::Dash => Err(cursor.error_here(ReadProblem::Hyphen)),
        Between::To => Ok(None),
    }
}

/// Whether a dash stands between a whole number and a fraction, as in `1-1/2`.
pub(super) fn may_be_mixed(mark: Between, before: &Number, after: &Number) -> bool {
    mark == Between::Dash && before.form == Form::Whole && after.form == Form::Fraction
}

/// Refuses a range after `first`, where one value is meant.
pub(super) fn no_range(cursor: &mut Cursor<'_>, first: &Number) -> Result<(), ReadError> {
    cursor.skip_spaces();
    let Some(mark) = between(cursor)? else {
        return Ok(());
    };
    let second = number(cursor)?;
    let problem = if may_be_mixed(mark, first, &second) {
        ReadProblem::Hyphen
    } else {
        ReadProblem::RangeNotRead(cursor.kind())
    };
    Err(ReadError::new(problem, first.start, second.end))
}

/// The end of the text, after the quantity.
pub(super) fn end(cursor: &Cursor<'_>) -> Result<(), ReadError> {
    let kind = cursor.kind();
    let Some(c) = cursor.peek() else {
        return Ok(());
    };
    if c == ',' {
        return Err(cursor.error_here(ReadProblem::Comma));
    }
    let start = cursor.at();
    let problem = match between(&mut cursor.clone())? {
        Some(_) if kind != Kind::Duration => ReadProblem::RangeNotRead(kind),
        _ => ReadProblem::TrailingText(kind),
    };
    Err(ReadError::new(problem, start, cursor.end_of_text()))
}
