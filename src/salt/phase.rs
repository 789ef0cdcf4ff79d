use uom::si::f64::Mass;

use super::make::Moisture;
use crate::level::{
    InWaterPhase, Level, OnFinishedWeight, OnGreenWeight, OnProductAsMade, SodiumChloride,
};
use crate::range::{OutOfRange, bounds};
use crate::units::kilograms;

bounds! {
    ADDED: "everything added, as a share of green weight", "", 0.0, 100.0;
    LOSS: "share of weight lost", "", 0.0, 0.99;
    TOGETHER: "salt and moisture together", "%", 0.0, 100.0;
    WHOLE: "salt, of the mix", "%", 0.0, 99.9;
    BASE: "weight", "kg", 0.0, 1e6;
}

type Salt<B> = Level<SodiumChloride, B>;

/// Everything that is added to meat, salt included, as a share of its green weight.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Added(f64);

impl Added {
    /// A share from 0 to 100: 0.25 is a quarter of the green weight.
    ///
    /// # Errors
    /// [`OutOfRange`] outside that.
    pub fn new(share: f64) -> Result<Self, OutOfRange> {
        Ok(Self(ADDED.check(share)?))
    }
}

/// The share of weight that a food loses by drying or cooking.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Loss(f64);

impl Loss {
    /// A share from 0 to 0.99.
    ///
    /// # Errors
    /// [`OutOfRange`] outside that.
    pub fn new(share: f64) -> Result<Self, OutOfRange> {
        Ok(Self(LOSS.check(share)?))
    }

    /// The share.
    #[must_use]
    pub const fn share(self) -> f64 {
        self.0
    }
}

/// Salt on green weight as salt on the mix: S / (1 + a).
///
/// Two percent on the meat is less than two percent of what is made of it.
#[must_use]
pub fn of_mix(on_green: Salt<OnGreenWeight>, added: Added) -> Salt<OnProductAsMade> {
    Level::of(on_green.mg_per_kg() / (1.0 + added.0))
}

/// Salt on the mix as salt on green weight: S (1 + a).
///
/// # Errors
/// [`OutOfRange`] when that is more than the green weight itself.
pub fn of_green(
    of_mix: Salt<OnProductAsMade>,
    added: Added,
) -> Result<Salt<OnGreenWeight>, OutOfRange> {
    Level::new(of_mix.mg_per_kg() * (1.0 + added.0))
}

/// Salt on the mix as salt of the finished product, when all of it stays: S / (1 − L).
///
/// In drying all of it does; in cooking some leaves with the drip, and this is the most there
/// can be (from memory; no printed example was found).
///
/// # Errors
/// [`OutOfRange`] when the loss would leave less than the salt.
///
/// ```
/// use greenweight::{cure::Level, salt::{Loss, after_loss}};
///
/// let finished = after_loss(Level::percent(2.5)?, Loss::new(0.3)?)?;
/// assert!((finished.as_percent() - 3.5714).abs() < 1e-4);
/// # Ok::<(), greenweight::range::OutOfRange>(())
/// ```
pub fn after_loss(
    of_mix: Salt<OnProductAsMade>,
    loss: Loss,
) -> Result<Salt<OnFinishedWeight>, OutOfRange> {
    Level::new(of_mix.mg_per_kg() / (1.0 - loss.0))
}

/// Moisture after a loss that is all water: (W − L) / (1 − L).
///
/// # Errors
/// [`OutOfRange`] when more is lost than there is water.
pub fn moisture_after_loss(moisture: Moisture, loss: Loss) -> Result<Moisture, OutOfRange> {
    Moisture::of_percent((moisture.percent() - 100.0 * loss.0) / (1.0 - loss.0))
}

/// Salt in the water of a finished product: 100 S / (S + W), both in percent of the product.
///
/// Source: Maine, chapter 359, section 2. W is 100 less all solids, and the salt is one of
/// them.
///
/// # Errors
/// [`OutOfRange`] when salt and moisture are more than the product.
///
/// ```
/// use greenweight::{cure::Level, salt::{Moisture, in_water_phase}};
///
/// // A brined cheese of 2.9 % salt and 52.9 % moisture.
/// let phase = in_water_phase(Level::percent(2.9)?, Moisture::of_percent(52.9)?)?;
/// assert!((phase.as_percent() - 5.197).abs() < 1e-3);
/// # Ok::<(), greenweight::range::OutOfRange>(())
/// ```
pub fn in_water_phase(
    salt: Salt<OnFinishedWeight>,
    moisture: Moisture,
) -> Result<Salt<InWaterPhase>, OutOfRange> {
    let (s, w) = (salt.as_percent(), moisture.percent());
    let together = TOGETHER.check(s + w)?;
    Level::percent(100.0 * s / together)
}

/// The salt of a finished product that gives a level in its water: W p / (100 − p).
///
/// # Errors
/// [`OutOfRange`] above 99.9 percent, and when salt and moisture are more than the product.
pub fn for_water_phase(
    phase: Salt<InWaterPhase>,
    moisture: Moisture,
) -> Result<Salt<OnFinishedWeight>, OutOfRange> {
    let p = WHOLE.check(phase.as_percent())?;
    let s = moisture.percent() * p / (100.0 - p);
    TOGETHER.check(s + moisture.percent())?;
    Level::percent(s)
}

/// The salt for a level on green weight: M p / 100.
///
/// # Errors
/// [`OutOfRange`] for a weight that is none.
pub fn salt_on_green(target: Salt<OnGreenWeight>, green: Mass) -> Result<Mass, OutOfRange> {
    Ok(kilograms(BASE.check(green.value)? * target.mg_per_kg() / 1e6))
}

/// The salt for a level on the finished mix, of which it is itself a part: M p / (100 − p), M
/// being everything else.
///
/// # Errors
/// [`OutOfRange`] for a weight that is none, and above 99.9 percent.
///
/// ```
/// use greenweight::{cure::Level, salt::{salt_of_mix, salt_on_green}, units::kilograms};
///
/// let of_mix = salt_of_mix(Level::percent(2.5)?, kilograms(1.0))?;
/// let on_green = salt_on_green(Level::percent(2.5)?, kilograms(1.0))?;
/// assert!((of_mix.value - 0.025641).abs() < 1e-6 && on_green == kilograms(0.025));
/// # Ok::<(), greenweight::range::OutOfRange>(())
/// ```
pub fn salt_of_mix(target: Salt<OnProductAsMade>, rest: Mass) -> Result<Mass, OutOfRange> {
    let p = WHOLE.check(target.as_percent())?;
    Ok(kilograms(BASE.check(rest.value)? * p / (100.0 - p)))
}

/// The plain salt to add beside what other ingredients bring already: premixes, salted
/// meats, a pickle.
///
/// # Errors
/// [`OutOfRange`] when they bring more than the target, and for weights that are none.
pub fn plain_salt(
    target: Mass,
    brought: impl IntoIterator<Item = Mass>,
) -> Result<Mass, OutOfRange> {
    let mut sum = 0.0;
    for mass in brought {
        sum += BASE.check(mass.value)?;
    }
    let target = BASE.check(target.value)?;
    let brought = crate::range::Bounds::new("salt that is brought already", "kg", 0.0, target);
    Ok(kilograms(target - brought.check(sum)?))
}
