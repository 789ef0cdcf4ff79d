use core::marker::PhantomData;

use super::mass::milligram;
use super::number::{Cursor, Form, is_dash, number};
use super::reading::TOLERANCE;
use super::volume::{
    australian_tablespoon, imperial_fluid_ounce, imperial_gallon, imperial_pint, metric_cup,
    metric_tablespoon, metric_teaspoon, milliliter, us_cup, us_fluid_ounce, us_gallon, us_pint,
    us_quart, us_tablespoon, us_teaspoon,
};
use super::word::{Placed, Unit, between, end, may_be_mixed, no_range, unit};
use super::{
    Kind, Mass, ReadError, ReadProblem, Reading, Scale, TemperatureInterval, Volume, grams,
    kilograms, liters, ounces, pounds,
};
use crate::range::Range;

/// Whose spoons, cups, pints and gallons a document uses.
///
/// A tablespoon holds 14.8, 15 or 20 mL, and a pint 473 or 568 mL, as the country
/// has it. The sizes are those of [`volume`](super::volume).
///
/// | | tsp | tbsp | cup | fl oz | pt | qt | gal |
/// |---|---|---|---|---|---|---|---|
/// | US | yes | yes | yes | yes | yes | yes | yes |
/// | metric | 5 mL | 15 mL | 250 mL | | | | |
/// | Imperial | | | | yes | yes | yes | yes |
/// | Australian | 5 mL | 20 mL | 250 mL | | | | |
///
/// ```
/// use greenweight::units::Measures;
///
/// assert_eq!(Measures::from_name("Australian"), Some(Measures::Australian));
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub enum Measures {
    /// US customary: the gallon of 231 cubic inches and its parts.
    UsCustomary,
    /// Metric spoons of 5 and 15 mL and a cup of 250 mL.
    Metric,
    /// Imperial: the gallon of 4.546 09 L and its parts. Spoons and cups have no one size.
    Imperial,
    /// Australian: as metric, with a tablespoon of 20 mL.
    Australian,
}

impl Measures {
    /// The name a document states: `US`, `metric`, `Imperial` or `Australian`.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::UsCustomary => "US",
            Self::Metric => "metric",
            Self::Imperial => "Imperial",
            Self::Australian => "Australian",
        }
    }

    /// The measures of that [`name`](Self::name), in either case.
    #[must_use]
    pub fn from_name(name: &str) -> Option<Self> {
        [Self::UsCustomary, Self::Metric, Self::Imperial, Self::Australian]
            .into_iter()
            .find(|measures| measures.name().eq_ignore_ascii_case(name))
    }

    fn volume(self, value: f64, unit: Unit) -> Result<Volume, ReadProblem> {
        Ok(match (self, unit) {
            (Self::UsCustomary, Unit::Teaspoon) => Volume::new::<us_teaspoon>(value),
            (Self::UsCustomary, Unit::Tablespoon) => Volume::new::<us_tablespoon>(value),
            (Self::UsCustomary, Unit::Cup) => Volume::new::<us_cup>(value),
            (Self::UsCustomary, Unit::FluidOunce) => Volume::new::<us_fluid_ounce>(value),
            (Self::UsCustomary, Unit::Pint) => Volume::new::<us_pint>(value),
            (Self::UsCustomary, Unit::Quart) => Volume::new::<us_quart>(value),
            (Self::UsCustomary, Unit::Gallon) => Volume::new::<us_gallon>(value),
            (Self::Metric | Self::Australian, Unit::Teaspoon) => {
                Volume::new::<metric_teaspoon>(value)
            }
            (Self::Metric | Self::Australian, Unit::Cup) => Volume::new::<metric_cup>(value),
            (Self::Metric, Unit::Tablespoon) => Volume::new::<metric_tablespoon>(value),
            (Self::Australian, Unit::Tablespoon) => Volume::new::<australian_tablespoon>(value),
            (Self::Imperial, Unit::FluidOunce) => Volume::new::<imperial_fluid_ounce>(value),
            (Self::Imperial, Unit::Pint) => Volume::new::<imperial_pint>(value),
            (Self::Imperial, Unit::Quart) => Volume::new::<imperial_gallon>(value * 0.25),
            (Self::Imperial, Unit::Gallon) => Volume::new::<imperial_gallon>(value),
            (Self::Imperial, _) => return Err(ReadProblem::ImperialSpoonOrCup),
            _ => return Err(ReadProblem::NotOfTheseMeasures(self)),
        })
    }
}

/// What the amount of an ingredient says.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Amount {
    /// A weight, as on a scale.
    Weighed(Mass),
    /// A volume: liters, milliliters, spoons, cups, fluid ounces, pints, quarts or gallons.
    ByVolume(Volume),
}

/// Reads a weight: `250 g`, `0.2 oz`, `1 1/4 oz`, `1¼ oz`, `2 lb 3 oz`, `1 kg 200 g`.
///
/// Units are mg, g, kg and the avoirdupois oz and lb, also spelled out. A number is
/// whole, a decimal with a point, a fraction, or a mixed number with a space or a
/// fraction sign; it is below 10^9 and has at most 15 significant digits. A whole
/// number of pounds may be followed by less than 16 oz, one of kilograms by less than
/// 1000 g. No-break spaces are spaces. `11/4 oz` is eleven quarters of an ounce,
/// 2.75 oz.
///
/// The number is the `f64` nearest to what is written.
///
/// # Errors
/// A [`ReadError`] for everything else, with the part at fault and how to write it.
///
/// ```
/// use greenweight::units::{ounces, read_mass};
///
/// assert_eq!(read_mass("1 1/4 oz")?, ounces(1.25));
/// assert_eq!(read_mass("2 lb 3 oz")?, ounces(35.0));
/// assert!(read_mass("1-1/4 oz").is_err());
/// # Ok::<(), greenweight::units::ReadError>(())
/// ```
pub fn read_mass(text: &str) -> Result<Mass, ReadError> {
    let mut cursor = Cursor::new(text, Kind::Weight)?;
    match ingredient(&mut cursor, None, false)? {
        (Amount::Weighed(mass), _) => Ok(mass),
        (Amount::ByVolume(_), unit) => Err(unit.error(ReadProblem::VolumeForWeight)),
    }
}

/// Reads a weight as [`read_mass`] does, or a volume: `4 tsp`, `1/2 cup`, `1 fl oz`,
/// `1 gal`, `250 mL`, `1.5 l`.
///
/// Spoons, cups, fluid ounces, pints, quarts and gallons need `measures`, and only
/// those that these define. `oz` alone is always the avoirdupois ounce, a weight; for
/// what is poured, use [`read_liquid_amount`].
///
/// # Errors
/// A [`ReadError`]: [`ReadProblem::WhoseMeasures`] without `measures`,
/// [`ReadProblem::ImperialSpoonOrCup`] and [`ReadProblem::NotOfTheseMeasures`] for a
/// unit they do not define, and those of [`read_mass`].
///
/// ```
/// use greenweight::units::{Amount, Measures, ReadProblem, Volume, read_amount, volume::us_teaspoon};
///
/// let cure = read_amount("4 tsp", Some(Measures::UsCustomary))?;
/// assert_eq!(cure, Amount::ByVolume(Volume::new::<us_teaspoon>(4.0)));
///
/// let error = read_amount("4 tsp", None).unwrap_err();
/// assert_eq!(error.problem(), ReadProblem::WhoseMeasures);
/// # Ok::<(), greenweight::units::ReadError>(())
/// ```
pub fn read_amount(text: &str, measures: Option<Measures>) -> Result<Amount, ReadError> {
    let mut cursor = Cursor::new(text, Kind::Amount)?;
    Ok(ingredient(&mut cursor, measures, false)?.0)
}

/// Reads the amount of a liquid: as [`read_amount`], but a bare `oz` is refused, for it
/// may be a weight or a volume. `2 lb 3 oz` is a weight.
///
/// # Errors
/// [`ReadProblem::OunceOfLiquid`], and those of [`read_amount`].
///
/// ```
/// use greenweight::units::{Measures, ReadProblem, read_liquid_amount};
///
/// let error = read_liquid_amount("8 oz", Some(Measures::UsCustomary)).unwrap_err();
/// assert_eq!(error.problem(), ReadProblem::OunceOfLiquid);
/// ```
pub fn read_liquid_amount(text: &str, measures: Option<Measures>) -> Result<Amount, ReadError> {
    let mut cursor = Cursor::new(text, Kind::Amount)?;
    Ok(ingredient(&mut cursor, measures, true)?.0)
}

fn ingredient(
    cursor: &mut Cursor<'_>,
    measures: Option<Measures>,
    liquid: bool,
) -> Result<(Amount, Placed), ReadError> {
    let first = number(cursor)?;
    no_range(cursor, &first)?;
    let larger = unit(cursor, &first)?;
    if cursor.kind() == Kind::Weight && larger.unit.is_volume() {
        return Err(larger.error(ReadProblem::VolumeForWeight));
    }
    let mass = if cursor.starts_number() {
        let second = number(cursor)?;
        no_range(cursor, &second)?;
        let smaller = unit(cursor, &second)?;
        let fail = |problem| Err(ReadError::new(problem, first.start, smaller.end));
        let parts = match (larger.unit, smaller.unit) {
            (Unit::Pound, Unit::Ounce) => 16.0,
            (Unit::Kilogram, Unit::Gram) => 1000.0,
            (Unit::Ounce, Unit::Pound) | (Unit::Gram, Unit::Kilogram) => {
                return fail(ReadProblem::PartOrder);
            }
            _ => return fail(ReadProblem::PartUnits),
        };
        if first.form != Form::Whole {
            return Err(ReadError::new(ReadProblem::PartNotWhole, first.start, first.end));
        }
        if second.value() >= parts {
            return Err(ReadError::new(ReadProblem::PartTooLarge, second.start, smaller.end));
        }
        let value = second.plus_whole(first.value() * parts).value();
        if smaller.unit == Unit::Ounce { ounces(value) } else { grams(value) }
    } else {
        let value = first.value();
        match larger.unit {
            Unit::Milligram => Mass::new::<milligram>(value),
            Unit::Gram => grams(value),
            Unit::Kilogram => kilograms(value),
            Unit::Ounce if liquid => return Err(larger.error(ReadProblem::OunceOfLiquid)),
            Unit::Ounce => ounces(value),
            Unit::Pound => pounds(value),
            unit if unit.is_volume() => {
                end(cursor)?;
                let volume = match (unit, measures) {
                    (Unit::Milliliter, _) => Ok(Volume::new::<milliliter>(value)),
                    (Unit::Liter, _) => Ok(liters(value)),
                    (_, None) => Err(ReadProblem::WhoseMeasures),
                    (_, Some(measures)) => measures.volume(value, unit),
                };
                let volume = volume.map_err(|problem| larger.error(problem))?;
                return Ok((Amount::ByVolume(volume), larger));
            }
            _ => return Err(larger.error(ReadProblem::WrongKind(cursor.kind()))),
        }
    };
    end(cursor)?;
    Ok((Amount::Weighed(mass), larger))
}

/// Reads a concentration by mass and gives it in mg/kg, which is parts per million:
/// `156 ppm`, `250 mg/kg`, `5 g/kg`, `6.25 %`.
///
/// 1 % = 10 000 mg/kg, 1 g/kg = 1000 mg/kg. The result is the `f64` nearest to what is
/// written, rounded once, so `6.25 %` is 62 500 exactly.
///
/// # Errors
/// A [`ReadError`]: [`ReadProblem::AboveTheWhole`] above 100 %, and those of a number
/// or a unit not read.
///
/// ```
/// use greenweight::units::read_concentration;
///
/// assert_eq!(read_concentration("6.25 %")?, 62_500.0);
/// assert_eq!(read_concentration("156 ppm")?, 156.0);
/// # Ok::<(), greenweight::units::ReadError>(())
/// ```
pub fn read_concentration(text: &str) -> Result<f64, ReadError> {
    let mut cursor = Cursor::new(text, Kind::Concentration)?;
    let value = number(&mut cursor)?;
    no_range(&mut cursor, &value)?;
    let unit = unit(&mut cursor, &value)?;
    let power = power_of(&unit)?;
    end(&cursor)?;
    let ppm = value.shifted(power);
    if ppm > 1e6 {
        return Err(ReadError::new(ReadProblem::AboveTheWhole, value.start, unit.end));
    }
    Ok(ppm)
}

/// Reads a concentration that may be known between two: `10 %`, `8 to 12 %`, `8-12 %`.
///
/// # Errors
/// As for [`read_concentration`], and [`ReadProblem::FallingRange`] for a range whose first
/// end is above its second.
///
/// ```
/// use greenweight::units::read_concentrations;
///
/// let pump = read_concentrations("8 to 12 %")?;
/// assert_eq!((pump.low(), pump.high()), (80_000.0, 120_000.0));
/// assert!(read_concentrations("10 %")?.is_exact());
/// # Ok::<(), greenweight::units::ReadError>(())
/// ```
pub fn read_concentrations(text: &str) -> Result<Range<f64>, ReadError> {
    let mut cursor = Cursor::new(text, Kind::Concentration)?;
    let first = number(&mut cursor)?;
    cursor.skip_spaces();
    let second = match between(&mut cursor)? {
        Some(mark) => {
            let second = number(&mut cursor)?;
            if may_be_mixed(mark, &first, &second) {
                return Err(ReadError::new(ReadProblem::HyphenOrRange, first.start, second.end));
            }
            Some(second)
        }
        None => None,
    };
    let last = second.as_ref().unwrap_or(&first);
    let unit = unit(&mut cursor, last)?;
    let power = power_of(&unit)?;
    end(&cursor)?;
    let (low, high) = (first.shifted(power), last.shifted(power));
    if low > 1e6 || high > 1e6 {
        return Err(ReadError::new(ReadProblem::AboveTheWhole, first.start, unit.end));
    }
    Range::new(low, high)
        .map_err(|_| ReadError::new(ReadProblem::FallingRange, first.start, last.end))
}

fn power_of(unit: &Placed) -> Result<usize, ReadError> {
    match unit.unit {
        Unit::PartsPerMillion => Ok(0),
        Unit::GramPerKilogram => Ok(3),
        Unit::Percent => Ok(4),
        _ => Err(unit.error(ReadProblem::WrongKind(Kind::Concentration))),
    }
}

fn scale(unit: &Placed, kind: Kind) -> Result<Scale, ReadError> {
    match unit.unit {
        Unit::Fahrenheit => Ok(Scale::Fahrenheit),
        Unit::Celsius => Ok(Scale::Celsius),
        Unit::Degree => Err(unit.error(ReadProblem::ScaleMissing)),
        _ => Err(unit.error(ReadProblem::WrongKind(kind))),
    }
}

/// Reads a temperature on its own scale: `155 °F`, `155 degF`, `155F`, `68.3 °C`,
/// `-18 °C`.
///
/// A minus is a hyphen, a minus sign or a dash, before the number without a space.
///
/// # Errors
/// A [`ReadError`]: [`ReadProblem::ScaleMissing`] for `155` and `155°`,
/// [`ReadProblem::TemperatureOutOfRange`] below absolute zero and above 1000 K, and
/// those of a number or a unit not read.
///
/// ```
/// use greenweight::units::{Scale, read_temperature};
///
/// let cooked = read_temperature("68.3 °C")?;
/// assert_eq!((cooked.value(), cooked.scale()), (68.3, Scale::Celsius));
/// # Ok::<(), greenweight::units::ReadError>(())
/// ```
pub fn read_temperature(text: &str) -> Result<Reading, ReadError> {
    let mut cursor = Cursor::new(text, Kind::Temperature)?;
    let start = cursor.at();
    let below_zero = cursor.peek().is_some_and(is_dash);
    if below_zero {
        cursor.bump();
    }
    let value = number(&mut cursor)?;
    no_range(&mut cursor, &value)?;
    let unit = unit(&mut cursor, &value)?;
    let scale = scale(&unit, Kind::Temperature)?;
    end(&cursor)?;
    // Taken from zero, so that `-0` is zero.
    let degrees = if below_zero { 0.0 - value.value() } else { value.value() };
    Reading::new(degrees, scale)
        .map_err(|_| ReadError::new(ReadProblem::TemperatureOutOfRange, start, unit.end))
}

/// Reads how far a thermometer may be off: `2 °F`, `±2 °F`, `+-2 degF`, `0.5 °C`.
///
/// It is a difference: ΔT/K = Δt/°C = Δt/°F / 1.8, and the 32 °F between the two zeros
/// plays no part.
///
/// # Errors
/// A [`ReadError`]: [`ReadProblem::ScaleMissing`] for `2` and `2°`,
/// [`ReadProblem::ToleranceOutOfRange`] above 50 K, and those of a number or a unit not
/// read.
///
/// ```
/// use greenweight::units::read_tolerance;
///
/// assert_eq!(read_tolerance("±2 °F")?.value, 2.0 / 1.8);
/// # Ok::<(), greenweight::units::ReadError>(())
/// ```
pub fn read_tolerance(text: &str) -> Result<TemperatureInterval, ReadError> {
    let mut cursor = Cursor::new(text, Kind::Tolerance)?;
    let start = cursor.at();
    either_way(&mut cursor);
    let value = number(&mut cursor)?;
    no_range(&mut cursor, &value)?;
    let unit = unit(&mut cursor, &value)?;
    let kelvin = match scale(&unit, Kind::Tolerance)? {
        Scale::Celsius => value.value(),
        Scale::Fahrenheit => value.value() / 1.8,
    };
    end(&cursor)?;
    match TOLERANCE.check(kelvin) {
        Ok(value) => Ok(TemperatureInterval { dimension: PhantomData, units: PhantomData, value }),
        Err(_) => Err(ReadError::new(ReadProblem::ToleranceOutOfRange, start, unit.end)),
    }
}

/// Steps over `±`, `+-` or `+/-`.
fn either_way(cursor: &mut Cursor<'_>) {
    let mut after = cursor.clone();
    match after.peek() {
        Some('±') => after.bump(),
        Some('+') => {
            after.bump();
            if after.peek() == Some('/') {
                after.bump();
            }
            if !after.peek().is_some_and(is_dash) {
                return;
            }
            after.bump();
        }
        _ => return,
    }
    after.skip_spaces();
    *cursor = after;
}
