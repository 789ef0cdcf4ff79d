use core::fmt;
use core::ops::Range;

use super::Measures;

/// What a text was read as. Error messages name it and show how one is written.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Kind {
    /// A weight, by [`read_mass`](super::read_mass).
    Weight,
    /// A weight or a volume, by [`read_amount`](super::read_amount).
    Amount,
    /// A concentration, by [`read_concentration`](super::read_concentration).
    Concentration,
    /// A temperature, by [`read_temperature`](super::read_temperature).
    Temperature,
    /// The tolerance of a thermometer, by [`read_tolerance`](super::read_tolerance).
    Tolerance,
    /// A duration, by [`read_duration`](super::read_duration).
    Duration,
}

impl Kind {
    /// How one is written, for instance `` `250 g` or `1 1/4 oz` ``.
    #[must_use]
    pub const fn example(self) -> &'static str {
        match self {
            Self::Weight => "`250 g` or `1 1/4 oz`",
            Self::Amount => "`250 g`, `1 1/4 oz`, `4 tsp` or `250 mL`",
            Self::Concentration => "`156 ppm`, `250 mg/kg` or `6.25 %`",
            Self::Temperature => "`155 °F` or `68.3 °C`",
            Self::Tolerance => "`2 °F` or `0.5 °C`",
            Self::Duration => "`1 h 30 min`, `20 to 25 min` or `3 months`",
        }
    }

    const fn units(self) -> &'static str {
        match self {
            Self::Weight => "mg, g, kg, oz or lb",
            Self::Amount => "mg, g, kg, oz, lb, mL, L, tsp, tbsp, cup, fl oz, pt, qt or gal",
            Self::Concentration => "ppm, mg/kg, g/kg or %",
            Self::Temperature | Self::Tolerance => "°F or °C",
            Self::Duration => "s, min, h, days, weeks, months or years",
        }
    }
}

impl fmt::Display for Kind {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Self::Weight => "weight",
            Self::Amount => "weight or volume",
            Self::Concentration => "concentration",
            Self::Temperature => "temperature",
            Self::Tolerance => "tolerance",
            Self::Duration => "duration",
        })
    }
}

/// Why a text was not read. The message says what is wrong and how to write it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, thiserror::Error)]
#[non_exhaustive]
pub enum ReadProblem {
    /// Nothing but spaces.
    #[error("nothing is written here: write a {0}, as in {example}", example = .0.example())]
    Empty(Kind),
    /// No number at the beginning, or after a range's `to`.
    #[error("this is not a number: begin with a number in digits, as in {}", .0.example())]
    NotANumber(Kind),
    /// A number and nothing after it: `7`.
    #[error("a bare number: say the unit, as in {}", .0.example())]
    BareNumber(Kind),
    /// A temperature or a tolerance without its scale: `155`, `155°`.
    #[error("say which scale: write `°F` or `°C` after the number")]
    ScaleMissing,
    /// A unit this crate does not read.
    #[error("this unit is not read for a {0}: write {units}", units = .0.units())]
    UnknownUnit(Kind),
    /// A unit of something else: `5 min` where a weight stands.
    #[error("this unit does not measure a {0}: write {example}", example = .0.example())]
    WrongKind(Kind),
    /// A spoon, a cup or a liter where a weight stands: `3 tsp`.
    #[error(
        "a spoon, a cup or a liter is not a weight: weigh it and write it as in `5 g` or `0.2 oz`"
    )]
    VolumeForWeight,
    /// `1,5 kg`, `1,000 g`, `1.250,0 g`.
    #[error(
        "a comma is not read: write 1.5 for one and a half and 1500 for fifteen hundred, and no comma between parts"
    )]
    Comma,
    /// `1-1/4 oz`, `2-lb`.
    #[error(
        "a hyphen is not read here: write `1 1/4` for one and a quarter, and a space before the unit"
    )]
    Hyphen,
    /// `1-1/2 h`, which may be one and a half or a range.
    #[error(
        "this reads in two ways: write `1 1/2 h` for one and a half hours, or `1 to 2 h` for a range"
    )]
    HyphenOrRange,
    /// `1 250 g`, `1 .5 oz`.
    #[error("a space does not group digits: write 1250 for twelve hundred and fifty")]
    SpacedDigits,
    /// `1 / 4 oz`.
    #[error("write a fraction without spaces around its bar: `1/4`")]
    SpacedSlash,
    /// `1 5/4 oz`.
    #[error(
        "the fraction of a mixed number is below one: write `2 1/4` or `9/4` for two and a quarter"
    )]
    ImproperInMixed,
    /// `1.5/2 oz`, `1.5 1/2 oz`.
    #[error("a number is a decimal or a fraction, not both: write 0.75 or 3/4")]
    DecimalInFraction,
    /// `1.2.3 g`.
    #[error("a number has one decimal point: write 1250.5 for twelve hundred and fifty and a half")]
    TwoPoints,
    /// `5. oz`.
    #[error("digits follow a decimal point: write `5` or `5.0`")]
    PointWithoutDigits,
    /// `1/0 oz`.
    #[error("a fraction has no zero below its bar: write it as in `1/4`")]
    DivisionByZero,
    /// A fraction of more than a thousand parts.
    #[error("the number below the bar is at most 1000: write a finer fraction as a decimal")]
    FractionTooFine,
    /// Digits of another script, full-width or raised ones, or a fraction sign not read.
    #[error("write numbers in the digits 0 to 9, and this fraction as in `1/7`")]
    ForeignDigits,
    /// `1e3 g`.
    #[error("powers of ten are not read: write 1000 for `1e3`")]
    Exponent,
    /// `-5 g`.
    #[error("a {0} is not negative: write the number without a sign")]
    Negative(Kind),
    /// `+5 g`.
    #[error("write the number without `+`")]
    PlusSign,
    /// More than 15 significant digits, or more than 22 after the point.
    #[error(
        "too many digits: write at most 15 digits that count and at most 22 after the decimal point"
    )]
    TooManyDigits,
    /// A number of a thousand million or more.
    #[error("the number is too large: write one below 1000000000, or a larger unit")]
    TooLarge,
    /// Two numbers run into each other: `1/2/3`, `½4`, `1/2 1/2`.
    #[error("this is not one number: write it as 1.25, 1 1/4 or 1¼")]
    BrokenNumber,
    /// `20-25 g` where one value stands.
    #[error("a range is not read here: write one number, as in {}", .0.example())]
    RangeNotRead(Kind),
    /// `25-20 min`.
    #[error("a range runs from its lower to its upper end: write `20 to 25 min`")]
    FallingRange,
    /// `1 h 20-25 min`.
    #[error("write both ends of the range in full: `1 h 20 min to 1 h 25 min`")]
    RangeOfParts,
    /// Spoons, cups, pints or gallons in a document that does not say whose.
    #[error(
        "the document must state whose measures these are: US, metric, Imperial or Australian; or give g or mL"
    )]
    WhoseMeasures,
    /// A unit these measures do not define exactly: a metric gallon.
    #[error("{measures} measures have no exact size for this unit here: give g or mL", measures = .0.name())]
    NotOfTheseMeasures(Measures),
    /// An Imperial spoon or cup.
    #[error("Imperial spoons and cups have no one size; weigh or give mL")]
    ImperialSpoonOrCup,
    /// `8 oz` of a liquid, which may be a weight or a volume.
    #[error(
        "`oz` of a liquid reads in two ways: write `fl oz` for a volume or `g`/`lb` for a weight"
    )]
    OunceOfLiquid,
    /// `3 oz 2 lb`.
    #[error("the larger unit comes first: write `2 lb 3 oz` or `1 h 30 min`")]
    PartOrder,
    /// `2 lb 16 oz`, `1 h 90 min`.
    #[error(
        "a smaller part is less than one of the larger unit: write `3 lb` for `2 lb 16 oz` and `2 h 30 min` for `1 h 90 min`"
    )]
    PartTooLarge,
    /// `2.5 lb 3 oz`.
    #[error(
        "only the last part has a fraction: write `2 lb 11 oz` for two and a half pounds and three ounces"
    )]
    PartNotWhole,
    /// `1 cup 2 tbsp`, `2 lb 200 g`.
    #[error(
        "two units are read together only as in `2 lb 3 oz` or `1 kg 200 g`: write this in one unit"
    )]
    PartUnits,
    /// A concentration above 100 %.
    #[error(
        "a concentration is at most 100 %, which is 1000000 mg/kg: check the number and its unit"
    )]
    AboveTheWhole,
    /// Below absolute zero or above 1000 K.
    #[error(
        "no kitchen has this temperature: check the number and its scale, as in `155 °F` or `68.3 °C`"
    )]
    TemperatureOutOfRange,
    /// Wider than 50 °C.
    #[error(
        "no thermometer has this tolerance: check the number and its scale, as in `2 °F` or `1 °C`"
    )]
    ToleranceOutOfRange,
    /// Something after the quantity: `250 g meat`.
    #[error("text after the {0}: write the quantity alone, as in {example}", example = .0.example())]
    TrailingText(Kind),
}

/// A text that was not read as a quantity: why, and which part of it is at fault.
///
/// ```
/// use greenweight::units::{Kind, ReadProblem, read_mass};
///
/// let error = read_mass("1,5 kg").unwrap_err();
/// assert_eq!(error.problem(), ReadProblem::Comma);
/// assert_eq!("1,5 kg".get(error.span()), Some(","));
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, thiserror::Error)]
#[error("{problem}")]
pub struct ReadError {
    problem: ReadProblem,
    start: usize,
    end: usize,
}

impl ReadError {
    pub(super) const fn new(problem: ReadProblem, start: usize, end: usize) -> Self {
        Self { problem, start, end }
    }

    /// What is wrong.
    #[must_use]
    pub const fn problem(&self) -> ReadProblem {
        self.problem
    }

    /// The bytes at fault, counted from the start of the text. Both ends lie within
    /// the text and between two of its characters; the span is empty only where
    /// something is missing.
    #[must_use]
    pub const fn span(&self) -> Range<usize> {
        self.start..self.end
    }
}
