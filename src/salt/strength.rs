use core::cmp::Ordering;

use uom::si::f64::{Mass, MassDensity};

use super::table::{
    DENSITY, FREEZING_POINT, MOLAR_MASS_NACL, SALOMETER_CANNING_GRADING_SCALE,
    SALOMETER_STANDARD_SCALE, SOLUBILITY, SPECIFIC_VOLUME, WATER,
};
use crate::cite::Cited;
use crate::level::{Level, OnProductAsMade, SodiumChloride};
use crate::range::{OutOfRange, against, bounds};
use crate::units::{Reading, Scale};

bounds! {
    STRENGTH: "strength of a brine", "%", 0.0, 100.0;
    DEGREES: "degrees of the salometer", "degrees", 0.0, 110.0;
    IN_BRINE: "salt in a litre of brine", "g", 0.0, 311.272;
    TABLED: "strength of a brine whose density is tabled", "%", 0.0, 26.0;
    MOLALITY: "molality of a brine whose volume is tabled", "mol/kg", 0.1, 5.0;
    CELSIUS: "temperature of a brine whose volume is tabled", "°C", 0.0, 50.0;
    FREEZING: "strength of a brine whose freezing point is tabled", "%", 0.0, 23.31;
    DISSOLVING: "temperature of a brine whose solubility is tabled", "°F", -6.0, 227.5;
    PER_WATER: "salt to a kilogram of water", "g", 0.0, 1e6;
}

/// Density of a brine at 20 °C: a row.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Density {
    /// Percent of salt by mass.
    pub percent: f64,
    /// Kilograms to the cubic metre.
    pub kg_per_m3: f64,
}

/// Specific volume of a brine: a row.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SpecificVolume {
    /// Temperature.
    pub celsius: f64,
    /// Moles of salt to the kilogram of water.
    pub molality: f64,
    /// Cubic centimetres to the gram of brine.
    pub cm3_per_g: f64,
}

/// How much salt a brine holds: a row.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Solubility {
    /// Temperature.
    pub fahrenheit: f64,
    /// Percent of salt by mass at saturation.
    pub percent: f64,
}

/// How far salt lowers the freezing point: a row.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct FreezingPoint {
    /// Percent of salt by mass.
    pub percent: f64,
    /// Kelvin below 0 °C.
    pub depression: f64,
}

/// Which salometer: several instruments are called by this name, and their degrees differ.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Salometer(f64);

impl Salometer {
    /// The standard scale: 100 degrees are 26.395 percent by mass at 60 °F.
    pub const STANDARD: Self = Self(SALOMETER_STANDARD_SCALE.value);
    /// The scale for canning and grading: 100 degrees are 25 percent.
    pub const CANNING: Self = Self(SALOMETER_CANNING_GRADING_SCALE.value);

    /// A scale of which 100 degrees are so many percent.
    ///
    /// # Errors
    /// [`OutOfRange`] outside 0 to 100 percent.
    pub fn of_percent_at_100(percent: f64) -> Result<Self, OutOfRange> {
        Ok(Self(STRENGTH.check(percent)?))
    }

    /// Percent by mass at 100 degrees.
    #[must_use]
    pub const fn percent_at_100(self) -> f64 {
        self.0
    }
}

/// The strength of a brine: its salt as a share of all of it, by mass.
///
/// Three different figures are called grams per litre, and degrees are a fourth; each has a
/// name here, and none is a bare number:
///
/// ```
/// use greenweight::salt::{Brine, Salometer};
///
/// let brine = Brine::of_degrees(80.0, Salometer::STANDARD)?;
/// assert!((brine.percent() - 21.116).abs() < 1e-9);
/// assert!((brine.grams_per_liter_of_water() - 267.2).abs() < 0.1);
/// assert!((brine.grams_per_liter_of_brine()? - 244.3).abs() < 0.2);
/// # Ok::<(), greenweight::range::OutOfRange>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Brine(f64);

impl Brine {
    /// A brine of so many percent by mass, 0 to 100: above what dissolves it is a slurry, see
    /// [`Self::dissolves_at`].
    ///
    /// # Errors
    /// [`OutOfRange`] outside 0 to 100 percent.
    pub fn of_percent(percent: f64) -> Result<Self, OutOfRange> {
        Ok(Self(STRENGTH.check(percent)?))
    }

    /// A brine of so much salt and so much water.
    ///
    /// percent = 100 S / (S + W).
    ///
    /// # Errors
    /// [`OutOfRange`] when both are zero, or one is negative.
    pub fn of(salt: Mass, water: Mass) -> Result<Self, OutOfRange> {
        let percent = 100.0 * (salt / (salt + water)).value;
        Ok(Self(STRENGTH.check(percent)?))
    }

    /// A brine that shows so many degrees, 0 to 110, on a salometer at 60 °F.
    ///
    /// percent = degrees × percent at 100 / 100 (table `salt/salometer`).
    ///
    /// # Errors
    /// [`OutOfRange`] outside that.
    pub fn of_degrees(degrees: f64, scale: Salometer) -> Result<Self, OutOfRange> {
        Ok(Self(DEGREES.check(degrees)? * scale.0 / 100.0))
    }

    /// A brine of so many grams of salt to a kilogram of water.
    ///
    /// percent = 100 r / (1000 + r).
    ///
    /// # Errors
    /// [`OutOfRange`] outside 0 to 1 000 000 g.
    pub fn of_grams_per_kilogram_of_water(grams: f64) -> Result<Self, OutOfRange> {
        let grams = PER_WATER.check(grams)?;
        Ok(Self(100.0 * grams / (1000.0 + grams)))
    }

    /// A brine of so many grams of salt to a litre of water at 20 °C.
    ///
    /// # Errors
    /// [`OutOfRange`] outside 0 to 1 000 000 g to the kilogram.
    pub fn of_grams_per_liter_of_water(grams: f64) -> Result<Self, OutOfRange> {
        Self::of_grams_per_kilogram_of_water(grams / (WATER.value / 1000.0))
    }

    /// A brine that holds so many grams of salt in a litre at 20 °C: the inverse of
    /// [`Self::grams_per_liter_of_brine`], found by halving.
    ///
    /// # Errors
    /// [`OutOfRange`] outside 0 to 311.272 g, the last row of the table.
    pub fn of_grams_per_liter_of_brine(grams: f64) -> Result<Self, OutOfRange> {
        let grams = IN_BRINE.check(grams)?;
        let (mut low, mut high) = (0.0_f64, 26.0_f64);
        // Sixty halvings of 26 are under a unit in the last place.
        for _ in 0..60 {
            let middle = f64::midpoint(low, high);
            if Self(middle).grams_per_liter_of_brine()? < grams {
                low = middle;
            } else {
                high = middle;
            }
        }
        Ok(Self(high))
    }

    /// Percent by mass.
    #[must_use]
    pub const fn percent(self) -> f64 {
        self.0
    }

    /// The same as a level.
    #[must_use]
    pub fn level(self) -> Level<SodiumChloride, OnProductAsMade> {
        Level::of(self.0 * 1e4)
    }

    /// Degrees of a salometer at 60 °F.
    #[must_use]
    pub fn degrees(self, scale: Salometer) -> f64 {
        100.0 * self.0 / scale.0
    }

    /// Grams of salt to a kilogram of water: 1000 p / (100 − p).
    #[must_use]
    pub fn grams_per_kilogram_of_water(self) -> f64 {
        1000.0 * self.0 / (100.0 - self.0)
    }

    /// Grams of salt to a litre of water at 20 °C.
    #[must_use]
    pub fn grams_per_liter_of_water(self) -> f64 {
        self.grams_per_kilogram_of_water() * (WATER.value / 1000.0)
    }

    /// Grams of salt in a litre of the brine at 20 °C: 10 p × density.
    ///
    /// # Errors
    /// [`OutOfRange`] above 26 percent, the last row of the table.
    pub fn grams_per_liter_of_brine(self) -> Result<f64, OutOfRange> {
        Ok(self.0 / 100.0 * self.density()?.value)
    }

    /// Moles of salt to the kilogram of water.
    #[must_use]
    pub fn molality(self) -> f64 {
        self.grams_per_kilogram_of_water() / MOLAR_MASS_NACL.value
    }

    /// Density at 20 °C, on straight lines between the rows of table `salt/density`, from
    /// water up. The lines are off by less than 0.1 kg/m³.
    ///
    /// # Errors
    /// [`OutOfRange`] above 26 percent, the last row.
    pub fn density(self) -> Result<MassDensity, OutOfRange> {
        let percent = TABLED.check(self.0)?;
        let rows = DENSITY.iter().map(|row| (row.value.percent, row.value.kg_per_m3));
        let points = core::iter::once((0.0, WATER.value)).chain(rows);
        Ok(density_of(between(points, percent)))
    }

    /// Density at a temperature, on straight lines between the rows of table
    /// `salt/specific-volume`, first along the strength and then along the temperature.
    ///
    /// # Errors
    /// [`OutOfRange`] outside 0 to 50 °C and 0.1 to 5 mol to the kilogram of water.
    pub fn density_at(self, temperature: Reading) -> Result<MassDensity, OutOfRange> {
        let celsius = CELSIUS.check(temperature.on(Scale::Celsius).value())?;
        // A strength worked back from a molality of the table's edge is the edge itself.
        let edge =
            |edge| against(self.molality(), edge).is_some_and(Ordering::is_eq).then_some(edge);
        let molality = edge(0.1).or(edge(5.0)).unwrap_or(self.molality());
        let molality = MOLALITY.check(molality)?;
        let along_strength = |celsius: f64| {
            let rows = SPECIFIC_VOLUME.iter().map(|row| row.value);
            let of_it = rows.filter(move |row| (row.celsius - celsius).abs() < 1e-9);
            between(of_it.map(|row| (row.molality, row.cm3_per_g)), molality)
        };
        let mut last = f64::NEG_INFINITY;
        let temperatures = SPECIFIC_VOLUME.iter().filter_map(|row| {
            let celsius = row.value.celsius;
            (celsius > last).then(|| {
                last = celsius;
                (celsius, along_strength(celsius))
            })
        });
        Ok(density_of(1000.0 / between(temperatures, celsius)))
    }

    /// How far below 0 °C it begins to freeze, in kelvin, on straight lines between the rows
    /// of table `salt/freezing-point`.
    ///
    /// # Errors
    /// [`OutOfRange`] above 23.31 percent, the eutectic.
    pub fn freezing_depression(self) -> Result<f64, OutOfRange> {
        let percent = FREEZING.check(self.0)?;
        let rows = FREEZING_POINT.iter().map(|row| (row.value.percent, row.value.depression));
        Ok(between(core::iter::once((0.0, 0.0)).chain(rows), percent))
    }

    /// The strongest brine at a temperature: what salt there is beyond it stays undissolved.
    /// On straight lines between the rows of table `salt/solubility`.
    ///
    /// # Errors
    /// [`OutOfRange`] below −6 °F, the eutectic, and above 227.5 °F, where it boils.
    pub fn saturated_at(temperature: Reading) -> Result<Self, OutOfRange> {
        let fahrenheit = DISSOLVING.check(temperature.on(Scale::Fahrenheit).value())?;
        let rows = SOLUBILITY.iter().map(|row| (row.value.fahrenheit, row.value.percent));
        Ok(Self(between(rows, fahrenheit)))
    }

    /// Whether all of the salt dissolves at a temperature.
    ///
    /// # Errors
    /// As for [`Self::saturated_at`].
    pub fn dissolves_at(self, temperature: Reading) -> Result<bool, OutOfRange> {
        Ok(self <= Self::saturated_at(temperature)?)
    }
}

/// The row of table `salt/solubility` at or below a temperature: what holds there, the safe way
/// round, up to where cold water first dissolves it all.
#[must_use]
pub fn solubility_row(temperature: Reading) -> Option<&'static Cited<Solubility>> {
    let fahrenheit = temperature.on(Scale::Fahrenheit).value();
    SOLUBILITY.iter().rev().find(|row| row.value.fahrenheit <= fahrenheit)
}

fn density_of(kg_per_m3: f64) -> MassDensity {
    MassDensity::new::<uom::si::mass_density::kilogram_per_cubic_meter>(kg_per_m3)
}

/// The value at `x` on straight lines through points in rising order. Outside them, the
/// nearest point's: callers check their bounds first.
fn between(points: impl Iterator<Item = (f64, f64)>, x: f64) -> f64 {
    let mut before: Option<(f64, f64)> = None;
    for (next_x, next_y) in points {
        if x <= next_x {
            return match before {
                Some((last_x, last_y)) if next_x > last_x => {
                    last_y + (next_y - last_y) * (x - last_x) / (next_x - last_x)
                }
                _ => next_y,
            };
        }
        before = Some((next_x, next_y));
    }
    before.map_or(f64::NAN, |(_, y)| y)
}
