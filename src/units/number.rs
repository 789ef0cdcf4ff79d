//! Numbers as people write them: 0.2, 1/4, 1 1/4, 1¼.

use core::str::Chars;

use super::{Kind, ReadError, ReadProblem};

/// A place in a text that is read once, from left to right.
#[derive(Clone)]
pub(super) struct Cursor<'a> {
    text: &'a str,
    left: Chars<'a>,
    kind: Kind,
}

impl<'a> Cursor<'a> {
    /// The first character that is not a space.
    pub(super) fn new(text: &'a str, kind: Kind) -> Result<Self, ReadError> {
        let mut cursor = Self { text, left: text.chars(), kind };
        cursor.skip_spaces();
        if cursor.peek().is_none() {
            return Err(cursor.error_from(0, ReadProblem::Empty(kind)));
        }
        Ok(cursor)
    }

    pub(super) const fn kind(&self) -> Kind {
        self.kind
    }

    pub(super) fn at(&self) -> usize {
        self.text.len().saturating_sub(self.left.as_str().len())
    }

    pub(super) fn peek(&self) -> Option<char> {
        self.left.clone().next()
    }

    pub(super) fn bump(&mut self) {
        self.left.next();
    }

    /// The characters while `holds` is true of them.
    pub(super) fn take_while(&mut self, holds: impl Fn(char) -> bool) -> &'a str {
        let start = self.at();
        while self.peek().is_some_and(&holds) {
            self.bump();
        }
        self.text.get(start..self.at()).unwrap_or("")
    }

    /// Whether there were spaces.
    pub(super) fn skip_spaces(&mut self) -> bool {
        !self.take_while(char::is_whitespace).is_empty()
    }

    pub(super) fn starts_number(&self) -> bool {
        self.peek().is_some_and(|c| c.is_ascii_digit() || c == '.' || vulgar(c).is_some())
    }

    /// The rest without its last spaces.
    pub(super) fn end_of_text(&self) -> usize {
        self.at().saturating_add(self.left.as_str().trim_end().len())
    }

    pub(super) fn error_from(&self, start: usize, problem: ReadProblem) -> ReadError {
        ReadError::new(problem, start, self.at())
    }

    /// An error at the rest of this word.
    pub(super) fn error_at_word(&self, problem: ReadProblem) -> ReadError {
        let mut after = self.clone();
        after.take_while(|c| !c.is_whitespace());
        after.error_from(self.at(), problem)
    }

    /// An error at the next character.
    pub(super) fn error_here(&self, problem: ReadProblem) -> ReadError {
        let mut after = self.clone();
        after.bump();
        after.error_from(self.at(), problem)
    }
}

#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Form {
    Whole,
    Decimal,
    Fraction,
    Mixed,
}

/// A number as two whole ones below 2^53, so that one division gives the `f64`
/// nearest to what is written.
#[derive(Clone, Copy)]
pub(super) struct Number {
    numerator: f64,
    divisor: f64,
    decimals: usize,
    pub(super) form: Form,
    pub(super) start: usize,
    pub(super) end: usize,
}

impl Number {
    pub(super) fn value(&self) -> f64 {
        self.numerator / self.divisor
    }

    /// The value times a whole number.
    pub(super) fn times(&self, factor: f64) -> f64 {
        self.numerator * factor / self.divisor
    }

    /// The value times a power of ten, rounded once.
    pub(super) fn shifted(&self, power: usize) -> f64 {
        match (self.form, power.checked_sub(self.decimals)) {
            (Form::Decimal, Some(up)) => self.numerator * ten_to(up),
            (Form::Decimal, None) => self.numerator / ten_to(self.decimals.saturating_sub(power)),
            _ => self.numerator * ten_to(power) / self.divisor,
        }
    }

    /// The value with a whole number added.
    pub(super) fn plus_whole(&self, whole: f64) -> Self {
        Self { numerator: whole * self.divisor + self.numerator, ..*self }
    }
}

/// Decimals a number may have: 10^22 is the largest power of ten that is exact.
const MOST_DECIMALS: usize = 22;
const MOST_DIGITS: usize = 15;
const TOO_LARGE: f64 = 1e9;
const FINEST_FRACTION: f64 = 1000.0;

const fn ten_to(power: usize) -> f64 {
    const POWERS: [f64; MOST_DECIMALS + 1] = [
        1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15, 1e16,
        1e17, 1e18, 1e19, 1e20, 1e21, 1e22,
    ];
    match POWERS.split_at_checked(power) {
        Some((_, [value, ..])) => *value,
        _ => f64::NAN,
    }
}

pub(super) const fn vulgar(c: char) -> Option<(f64, f64)> {
    Some(match c {
        '½' => (1.0, 2.0),
        '⅓' => (1.0, 3.0),
        '⅔' => (2.0, 3.0),
        '¼' => (1.0, 4.0),
        '¾' => (3.0, 4.0),
        '⅕' => (1.0, 5.0),
        '⅖' => (2.0, 5.0),
        '⅗' => (3.0, 5.0),
        '⅘' => (4.0, 5.0),
        '⅙' => (1.0, 6.0),
        '⅚' => (5.0, 6.0),
        '⅛' => (1.0, 8.0),
        '⅜' => (3.0, 8.0),
        '⅝' => (5.0, 8.0),
        '⅞' => (7.0, 8.0),
        _ => return None,
    })
}

pub(super) const fn is_dash(c: char) -> bool {
    matches!(c, '-' | '\u{2010}' | '\u{2011}' | '\u{2013}' | '\u{2014}' | '\u{2212}')
}

const fn is_bar(c: char) -> bool {
    matches!(c, '/' | '\u{2044}')
}

/// A digit, or something that stands for one, and is not read.
pub(super) fn is_foreign_digit(c: char) -> bool {
    !c.is_ascii() && c.is_numeric() && vulgar(c).is_none()
}

#[derive(Clone, Copy, Default)]
struct Digits {
    value: f64,
    count: usize,
    significant: usize,
}

/// Digits that continue `before`, which stood on the other side of a decimal point.
fn digits(cursor: &mut Cursor<'_>, before: Digits) -> Digits {
    let mut seen = Digits { count: 0, ..before };
    while let Some(digit) = cursor.peek().filter(char::is_ascii_digit).and_then(|c| c.to_digit(10))
    {
        cursor.bump();
        seen.count = seen.count.saturating_add(1);
        if digit > 0 || seen.significant > 0 {
            seen.significant = seen.significant.saturating_add(1);
        }
        if seen.significant <= MOST_DIGITS {
            seen.value = seen.value * 10.0 + f64::from(digit);
        }
    }
    seen
}

/// The number at the cursor, which afterwards stands just behind it.
pub(super) fn number(cursor: &mut Cursor<'_>) -> Result<Number, ReadError> {
    let start = cursor.at();
    let number = match cursor.peek() {
        Some(c) if c.is_ascii_digit() || c == '.' => decimal_or_fraction(cursor, start)?,
        Some(c) if is_dash(c) => {
            return Err(cursor.error_at_word(ReadProblem::Negative(cursor.kind())));
        }
        Some('+') => return Err(cursor.error_at_word(ReadProblem::PlusSign)),
        Some(c) if is_foreign_digit(c) => {
            return Err(cursor.error_here(ReadProblem::ForeignDigits));
        }
        Some(c) => match vulgar(c) {
            Some(parts) => {
                cursor.bump();
                fraction(cursor, start, 0.0, parts, Form::Fraction)?
            }
            None => return Err(cursor.error_at_word(ReadProblem::NotANumber(cursor.kind()))),
        },
        None => return Err(cursor.error_at_word(ReadProblem::NotANumber(cursor.kind()))),
    };
    if number.value() >= TOO_LARGE {
        return Err(ReadError::new(ReadProblem::TooLarge, start, number.end));
    }
    Ok(number)
}

fn decimal_or_fraction(cursor: &mut Cursor<'_>, start: usize) -> Result<Number, ReadError> {
    let whole = digits(cursor, Digits::default());
    if cursor.peek() == Some('.') {
        return decimal(cursor, start, whole);
    }
    checked_digits(cursor, start, whole)?;
    if cursor.peek().is_some_and(is_bar) {
        let below = below_bar(cursor, start)?;
        return fraction(cursor, start, 0.0, (whole.value, below), Form::Fraction);
    }
    not_foreign_nor_exponent(cursor, start)?;
    let end = cursor.at();
    let spaced = cursor.skip_spaces();
    match cursor.peek() {
        Some(c) if c.is_ascii_digit() => {
            let above = digits(cursor, Digits::default());
            checked_digits(cursor, start, above)?;
            if !cursor.peek().is_some_and(is_bar) {
                return Err(cursor.error_from(start, ReadProblem::SpacedDigits));
            }
            let below = below_bar(cursor, start)?;
            fraction(cursor, start, whole.value, (above.value, below), Form::Mixed)
        }
        Some('.') => Err(cursor.error_here(ReadProblem::SpacedDigits)),
        Some(c) if spaced && is_bar(c) => Err(cursor.error_here(ReadProblem::SpacedSlash)),
        Some(c) => match vulgar(c) {
            Some(parts) => {
                cursor.bump();
                fraction(cursor, start, whole.value, parts, Form::Mixed)
            }
            None => Ok(whole_number(whole.value, start, end)),
        },
        None => Ok(whole_number(whole.value, start, end)),
    }
}

const fn whole_number(numerator: f64, start: usize, end: usize) -> Number {
    Number { numerator, divisor: 1.0, decimals: 0, form: Form::Whole, start, end }
}

fn decimal(cursor: &mut Cursor<'_>, start: usize, whole: Digits) -> Result<Number, ReadError> {
    cursor.bump();
    let all = digits(cursor, whole);
    if cursor.peek() == Some('.') {
        cursor.take_while(|c| c.is_ascii_digit() || c == '.');
        return Err(cursor.error_from(start, ReadProblem::TwoPoints));
    }
    if all.count == 0 {
        let problem = if whole.count == 0 {
            ReadProblem::NotANumber(cursor.kind())
        } else {
            ReadProblem::PointWithoutDigits
        };
        return Err(cursor.error_from(start, problem));
    }
    if all.count > MOST_DECIMALS {
        return Err(cursor.error_from(start, ReadProblem::TooManyDigits));
    }
    checked_digits(cursor, start, all)?;
    not_foreign_nor_exponent(cursor, start)?;
    let end = cursor.at();
    let mut after = cursor.clone();
    let spaced = after.skip_spaces();
    match after.peek() {
        Some(c) if is_bar(c) || vulgar(c).is_some() => {
            after.bump();
            return Err(after.error_from(start, ReadProblem::DecimalInFraction));
        }
        Some(c) if spaced && (c.is_ascii_digit() || c == '.') => {
            after.take_while(|c| c.is_ascii_digit() || c == '.');
            let problem = if after.peek().is_some_and(is_bar) {
                ReadProblem::DecimalInFraction
            } else {
                ReadProblem::SpacedDigits
            };
            return Err(after.error_from(start, problem));
        }
        _ => {}
    }
    Ok(Number {
        numerator: all.value,
        divisor: ten_to(all.count),
        decimals: all.count,
        form: Form::Decimal,
        start,
        end,
    })
}

/// The number below the bar the cursor stands at.
fn below_bar(cursor: &mut Cursor<'_>, start: usize) -> Result<f64, ReadError> {
    cursor.bump();
    let from = cursor.at();
    let below = digits(cursor, Digits::default());
    match cursor.peek() {
        Some(c) if below.count == 0 && c.is_whitespace() => {
            return Err(cursor.error_from(start, ReadProblem::SpacedSlash));
        }
        Some('.') => {
            let mut after = cursor.clone();
            after.bump();
            let problem = if after.peek().is_some_and(|c| c.is_ascii_digit()) {
                ReadProblem::DecimalInFraction
            } else {
                ReadProblem::PointWithoutDigits
            };
            return Err(after.error_from(start, problem));
        }
        _ if below.count == 0 => return Err(cursor.error_from(start, ReadProblem::BrokenNumber)),
        _ => {}
    }
    if below.significant == 0 {
        return Err(cursor.error_from(start, ReadProblem::DivisionByZero));
    }
    if below.significant > MOST_DIGITS || below.value > FINEST_FRACTION {
        return Err(cursor.error_from(from, ReadProblem::FractionTooFine));
    }
    Ok(below.value)
}

/// A fraction or a mixed number whose last character was just read.
fn fraction(
    cursor: &Cursor<'_>,
    start: usize,
    whole: f64,
    (above, below): (f64, f64),
    form: Form,
) -> Result<Number, ReadError> {
    let mut after = cursor.clone();
    not_foreign_nor_exponent(&after, start)?;
    after.skip_spaces();
    if after.starts_number() || after.peek().is_some_and(is_bar) {
        after.bump();
        return Err(after.error_from(start, ReadProblem::BrokenNumber));
    }
    if form == Form::Mixed && above >= below {
        return Err(cursor.error_from(start, ReadProblem::ImproperInMixed));
    }
    Ok(Number {
        numerator: whole * below + above,
        divisor: below,
        decimals: 0,
        form,
        start,
        end: cursor.at(),
    })
}

fn checked_digits(cursor: &Cursor<'_>, start: usize, digits: Digits) -> Result<(), ReadError> {
    if digits.significant > MOST_DIGITS {
        return Err(cursor.error_from(start, ReadProblem::TooManyDigits));
    }
    Ok(())
}

fn not_foreign_nor_exponent(cursor: &Cursor<'_>, start: usize) -> Result<(), ReadError> {
    let Some(c) = cursor.peek().filter(|&c| !c.is_ascii() || matches!(c, 'e' | 'E')) else {
        return Ok(());
    };
    if is_foreign_digit(c) {
        return Err(cursor.error_here(ReadProblem::ForeignDigits));
    }
    if matches!(c, 'e' | 'E') {
        let mut after = cursor.clone();
        after.bump();
        if after.peek().is_some_and(|c| is_dash(c) || c == '+') {
            after.bump();
        }
        if !after.take_while(|c| c.is_ascii_digit()).is_empty() {
            return Err(after.error_from(start, ReadProblem::Exponent));
        }
    }
    Ok(())
}
