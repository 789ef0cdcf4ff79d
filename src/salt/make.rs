use uom::si::f64::Mass;

use super::strength::Brine;
use crate::cure::Pump;
use crate::level::{
    InWaterPhase, Level, OnGreenWeight, OnMeatAndPickle, OnProductAsMade, SodiumChloride,
};
use crate::range::{Bounds, OutOfRange, bounds};

bounds! {
    WEIGHT: "weight", "kg", 0.0, 1e6;
    MOISTURE: "moisture", "%", 0.0, 100.0;
    TARGET: "strength to be reached", "%", 0.0, 99.9;
}

/// A share of water in a food, by mass.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Moisture(f64);

impl Moisture {
    /// From percent of the food, 0 to 100.
    ///
    /// # Errors
    /// [`OutOfRange`] outside that.
    pub fn of_percent(percent: f64) -> Result<Self, OutOfRange> {
        Ok(Self(MOISTURE.check(percent)?))
    }

    /// Percent of the food.
    #[must_use]
    pub const fn percent(self) -> f64 {
        self.0
    }
}

fn weight(mass: Mass) -> Result<f64, OutOfRange> {
    WEIGHT.check(mass.value)
}

/// The salt that makes a brine of some water.
///
/// salt = W p / (100 − p).
///
/// # Errors
/// [`OutOfRange`] for a weight that is none, and for a strength above 99.9 percent.
pub fn salt_for(brine: Brine, water: Mass) -> Result<Mass, OutOfRange> {
    weight(water)?;
    let percent = TARGET.check(brine.percent())?;
    Ok(water * (percent / (100.0 - percent)))
}

/// The salt that brings a brine to a higher strength.
///
/// salt = B (p₂ − p₁) / (100 − p₂).
///
/// # Errors
/// [`OutOfRange`] when it is strong enough already.
///
/// ```
/// use greenweight::salt::{Brine, Salometer, strengthen};
/// use greenweight::units::kilograms;
///
/// let degrees = |degrees| Brine::of_degrees(degrees, Salometer::STANDARD);
/// // 100 L of 70 degrees, used, to 80 degrees.
/// let used = degrees(70.0)?;
/// let mass = greenweight::units::liters(100.0) * used.density()?;
/// let salt = strengthen(mass, used, degrees(80.0)?)?;
/// assert!((salt.value - 3.79).abs() < 0.04);
/// # Ok::<(), greenweight::range::OutOfRange>(())
/// ```
pub fn strengthen(brine: Mass, from: Brine, to: Brine) -> Result<Mass, OutOfRange> {
    weight(brine)?;
    let (low, high) = (from.percent(), TARGET.check(to.percent())?);
    Bounds::new("strength of the brine to be strengthened", "%", 0.0, high).check(low)?;
    Ok(brine * ((high - low) / (100.0 - high)))
}

/// The water that brings a brine to a lower strength.
///
/// water = B (p₁ − p₂) / p₂.
///
/// # Errors
/// [`OutOfRange`] when it is weak enough already, and for water as the target.
pub fn weaken(brine: Mass, from: Brine, to: Brine) -> Result<Mass, OutOfRange> {
    weight(brine)?;
    let (high, low) = (from.percent(), to.percent());
    let bounds = Bounds::new("strength to be reached", "%", f64::MIN_POSITIVE, high);
    bounds.check(low)?;
    Ok(brine * ((high - low) / low))
}

/// Two brines mixed.
///
/// # Errors
/// [`OutOfRange`] when both weigh nothing.
pub fn mixed(first: Mass, a: Brine, second: Mass, b: Brine) -> Result<Brine, OutOfRange> {
    let (m, n) = (weight(first)?, weight(second)?);
    Brine::of_percent((m * a.percent() + n * b.percent()) / (m + n))
}

/// Meat and brine at rest together: what the salt is divided by is the question.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Tub {
    /// The meat.
    pub meat: Mass,
    /// The water in the meat.
    pub moisture: Moisture,
    /// The water that is added.
    pub water: Mass,
}

impl Tub {
    /// The salt on everything: N / (M + V + N).
    ///
    /// Reaching rest takes time that nothing here computes: measure.
    ///
    /// # Errors
    /// [`OutOfRange`] for weights that are none.
    pub fn at_rest(
        &self,
        salt: Mass,
    ) -> Result<Level<SodiumChloride, OnMeatAndPickle>, OutOfRange> {
        let (m, v, n) = (weight(self.meat)?, weight(self.water)?, weight(salt)?);
        Level::new(1e6 * n / (m + v + n))
    }

    /// The salt in all the water: N / (M w + V + N).
    ///
    /// # Errors
    /// [`OutOfRange`] for weights that are none.
    ///
    /// ```
    /// use greenweight::{salt::{Moisture, Tub}, units::{grams, kilograms}};
    ///
    /// let tub = Tub {
    ///     meat: kilograms(1.0),
    ///     moisture: Moisture::of_percent(70.0)?,
    ///     water: kilograms(1.0),
    /// };
    /// assert!((tub.water_phase_at_rest(grams(40.0))?.as_percent() - 2.2989).abs() < 1e-4);
    /// // On everything it is another figure, of another type.
    /// assert!((tub.at_rest(grams(40.0))?.as_percent() - 1.9608).abs() < 1e-4);
    /// # Ok::<(), greenweight::range::OutOfRange>(())
    /// ```
    pub fn water_phase_at_rest(
        &self,
        salt: Mass,
    ) -> Result<Level<SodiumChloride, InWaterPhase>, OutOfRange> {
        let n = weight(salt)?;
        Level::new(1e6 * n / (self.all_water()? + n))
    }

    /// The salt that brings all the water to a level: p (M w + V) / (100 − p).
    ///
    /// # Errors
    /// [`OutOfRange`] for weights that are none, and for a level above 99.9 percent.
    pub fn salt_for(&self, level: Level<SodiumChloride, InWaterPhase>) -> Result<Mass, OutOfRange> {
        let percent = TARGET.check(level.as_percent())?;
        Ok(crate::units::kilograms(self.all_water()? * percent / (100.0 - percent)))
    }

    /// How much of the salt is in the meat at rest: as much of it as of the water.
    ///
    /// # Errors
    /// [`OutOfRange`] for weights that are none.
    pub fn salt_in_meat(&self, salt: Mass) -> Result<Mass, OutOfRange> {
        weight(salt)?;
        let in_meat = weight(self.meat)? * self.moisture.0 / 100.0;
        let all = self.all_water()?;
        Ok(if all > 0.0 { salt * (in_meat / all) } else { salt * 0.0 })
    }

    fn all_water(&self) -> Result<f64, OutOfRange> {
        Ok(weight(self.meat)? * self.moisture.0 / 100.0 + weight(self.water)?)
    }
}

/// The salt that a pumped or picked-up brine brings, on green weight: c × pump.
#[must_use]
pub fn pumped_in(brine: Brine, pump: Pump) -> Level<SodiumChloride, OnGreenWeight> {
    Level::of(brine.percent() * 1e4 * pump.fraction())
}

/// The same on the pumped weight: c × pump / (1 + pump). Green weight is not pumped weight.
#[must_use]
pub fn in_pumped(brine: Brine, pump: Pump) -> Level<SodiumChloride, OnProductAsMade> {
    Level::of(brine.percent() * 1e4 * pump.fraction() / (1.0 + pump.fraction()))
}
