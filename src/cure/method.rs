use uom::si::f64::Mass;

use super::CureError;
use super::premix::Premix;
use crate::level::{
    Agent, InPremix, Level, NitriteSalts, OnGreenWeight, OnMeatAndPickle, SodiumChloride,
};
use crate::range::{Measured as _, OutOfRange, Range, bounds};
use crate::units::{floor_to_division, kilograms};

bounds! {
    GREEN: "green weight", "kg", 1e-6, 1e6;
    ADDED: "mass of curing premix", "kg", 0.0, 1e6;
    PICKLE: "weight of the pickle", "kg", 1e-6, 1e6;
    PUMP: "pump, as a fraction of green weight", "", 0.0, 1.0;
}

/// The weight of the meat block before anything is added: meat, meat byproduct and
/// poultry. Water, ice, binders and spices are not in it.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct GreenWeight(Mass);

/// A mass of curing premix, or of any ingredient that carries a curing agent.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct PremixMass(Mass);

/// The weight of a whole batch of pickle: water, salt, sugar, cure, everything.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct PickleWeight(Mass);

/// Pickle taken up, as a fraction of green weight: 0.1 is a 10 percent pump.
///
/// fraction = (weight after − green weight) / green weight. Dividing by the pumped
/// weight instead understates it.
#[derive(Debug, Clone, Copy, PartialEq, PartialOrd)]
pub struct Pump(f64);

macro_rules! weights {
    ($($name:ident in $bounds:ident;)+) => {
        $(impl $name {
            /// The weight as a checked input.
            ///
            /// # Errors
            /// [`OutOfRange`] when it is negative, not a number or beyond any batch; a
            /// weight that divides may not be zero either.
            pub fn new(mass: Mass) -> Result<Self, OutOfRange> {
                $bounds.check(mass.value)?;
                Ok(Self(mass))
            }

            /// The mass.
            #[must_use]
            pub const fn mass(self) -> Mass {
                self.0
            }

            /// Both ends of a range as checked inputs.
            ///
            /// # Errors
            /// [`CureError::OutOfRange`] as for [`Self::new`].
            pub fn range(masses: Range<Mass>) -> Result<Range<Self>, CureError> {
                masses.try_map(|mass| Ok(Self::new(mass)?))
            }
        })+
    };
}

weights! {
    GreenWeight in GREEN;
    PremixMass in ADDED;
    PickleWeight in PICKLE;
}

impl PremixMass {
    /// None of it.
    pub(super) const NONE: Self = Self(Mass::ZERO);
}

impl Pump {
    /// A fraction from 0 to 1; 10 percent is 0.1.
    ///
    /// # Errors
    /// [`OutOfRange`] outside that: a 12 here would be a percent number.
    pub fn new(fraction: f64) -> Result<Self, OutOfRange> {
        Ok(Self(PUMP.check(fraction)?))
    }

    /// The fraction that two weighings give.
    ///
    /// # Errors
    /// [`OutOfRange`] when the piece lost weight or more than doubled it.
    ///
    /// ```
    /// use greenweight::{cure::{GreenWeight, Pump}, units::kilograms};
    ///
    /// let pump = Pump::from_weights(GreenWeight::new(kilograms(10.0))?, kilograms(11.2))?;
    /// assert!((pump.fraction() - 0.12).abs() < 1e-12);
    /// # Ok::<(), greenweight::range::OutOfRange>(())
    /// ```
    pub fn from_weights(green: GreenWeight, after: Mass) -> Result<Self, OutOfRange> {
        Self::new(((after - green.0) / green.0).value)
    }

    /// The fraction.
    #[must_use]
    pub const fn fraction(self) -> f64 {
        self.0
    }
}

/// The ingoing level that a mass of premix gives when it is mixed into ground meat
/// or rubbed on as a dry cure.
///
/// level = premix × strength / green weight, in mg/kg. Basis: the green weight
/// (Processing Inspectors' Calculations Handbook, FSIS Directive 7620.3, chapter 3,
/// page 11); the expression follows from it.
///
/// ```
/// use greenweight::cure::{GreenWeight, Level, PremixMass, ingoing};
/// use greenweight::units::{ounces, pounds};
///
/// // A quarter of an ounce of a premix with 6.25 % sodium nitrite, to 7 lb of meat.
/// let premix = PremixMass::new(ounces(0.25))?;
/// let strength = Level::<greenweight::cure::SodiumNitrite, _>::percent(6.25)?;
/// let level = ingoing(premix, strength, GreenWeight::new(pounds(7.0))?);
/// assert!((level.mg_per_kg() - 139.508_928_571).abs() < 1e-8);
/// # Ok::<(), greenweight::range::OutOfRange>(())
/// ```
#[must_use]
pub fn ingoing<A: Agent>(
    premix: PremixMass,
    strength: Level<A, InPremix>,
    green: GreenWeight,
) -> Level<A, OnGreenWeight> {
    Level::of(premix.0.value * strength.mg_per_kg() / green.0.value)
}

/// [`ingoing`] for inputs known between two ends.
///
/// # Errors
/// Never for inputs that exist; the ends of a range of levels are in order.
pub fn ingoing_between<A: Agent>(
    premix: Range<PremixMass>,
    strength: Range<Level<A, InPremix>>,
    green: Range<GreenWeight>,
) -> Range<Level<A, OnGreenWeight>> {
    let low = ingoing(premix.low(), strength.low(), green.high());
    let high = ingoing(premix.high(), strength.high(), green.low());
    outward(low, high)
}

/// A product and a quotient each cost half a unit in the last place; two units either
/// way hold them, and a level never falls below zero.
fn outward<A: Agent>(
    low: Level<A, OnGreenWeight>,
    high: Level<A, OnGreenWeight>,
) -> Range<Level<A, OnGreenWeight>> {
    let low = low.just_below().just_below();
    let low = if low.mg_per_kg() < 0.0 { Level::of(0.0) } else { low };
    Range::ordered(low, high.just_above().just_above())
}

/// The largest mass of premix that stays at or below a ceiling: the inverse of
/// [`ingoing`].
///
/// premix = ceiling × green weight / strength.
///
/// The result never gives more than the ceiling when it is put back into [`ingoing`],
/// to the last bit.
///
/// # Errors
/// [`CureError::NoAgent`] when the premix holds none of the agent.
///
/// ```
/// use greenweight::cure::{GreenWeight, Level, SodiumNitrite, ingoing, largest_premix};
/// use greenweight::units::kilograms;
///
/// let green = GreenWeight::new(kilograms(1.0))?;
/// let strength = Level::<SodiumNitrite, _>::percent(6.25)?;
/// let premix = largest_premix(Level::new(156.25)?, strength, green)?;
/// assert_eq!(premix.mass(), kilograms(0.0025));
/// assert_eq!(ingoing(premix, strength, green).mg_per_kg(), 156.25);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn largest_premix<A: Agent>(
    ceiling: Level<A, OnGreenWeight>,
    strength: Level<A, InPremix>,
    green: GreenWeight,
) -> Result<PremixMass, CureError> {
    let mass = inverse(ceiling, strength, green)?;
    Ok(below(mass, |mass| ingoing(PremixMass(mass), strength, green) <= ceiling))
}

/// The smallest mass of premix that reaches a minimum, to the last bit.
///
/// # Errors
/// [`CureError::NoAgent`] when the premix holds none of the agent.
pub fn smallest_premix<A: Agent>(
    minimum: Level<A, OnGreenWeight>,
    strength: Level<A, InPremix>,
    green: GreenWeight,
) -> Result<PremixMass, CureError> {
    let mass = inverse(minimum, strength, green)?;
    Ok(above(mass, |mass| ingoing(PremixMass(mass), strength, green) >= minimum))
}

fn inverse<A: Agent>(
    level: Level<A, OnGreenWeight>,
    strength: Level<A, InPremix>,
    green: GreenWeight,
) -> Result<Mass, CureError> {
    solved::<A>(level.mg_per_kg() * green.0.value, strength.mg_per_kg())
}

/// agent / per_kilogram, as a mass that a kitchen can have.
fn solved<A: Agent>(agent: f64, per_kilogram: f64) -> Result<Mass, CureError> {
    if per_kilogram <= 0.0 {
        return Err(CureError::NoAgent { agent: A::NAME });
    }
    Ok(kilograms(ADDED.check(agent / per_kilogram)?))
}

/// The masses of premix between a minimum and a ceiling.
///
/// # Errors
/// [`CureError::EmptyWindow`] when the minimum is above the ceiling, or when they are so
/// close that no mass lies between them to the last bit;
/// [`CureError::NoAgent`] when the premix holds none of the agent.
pub fn premix_window<A: Agent>(
    minimum: Level<A, OnGreenWeight>,
    ceiling: Level<A, OnGreenWeight>,
    strength: Level<A, InPremix>,
    green: GreenWeight,
) -> Result<Range<PremixMass>, CureError> {
    let empty =
        CureError::EmptyWindow { minimum: minimum.mg_per_kg(), ceiling: ceiling.mg_per_kg() };
    if minimum > ceiling {
        return Err(empty);
    }
    let low = smallest_premix(minimum, strength, green)?;
    let high = largest_premix(ceiling, strength, green)?;
    Range::new(low, high).map_err(|_| empty)
}

/// The masses of a premix that bring both nitrite and all of the salt to their targets, for
/// a nitrite salt used as the whole salt of a recipe.
///
/// It is the window for nitrite and the window for salt where they overlap, each as in
/// [`premix_window`]. Where the premix does not say its salt, every salt it may hold must
/// meet the target.
///
/// # Errors
/// [`CureError::NotBoth`] when no mass of a premix of this strength meets both, with both
/// windows; [`CureError::EmptyWindow`] when one target alone cannot be met;
/// [`CureError::NoAgent`] when the premix may hold none of one.
///
/// ```
/// use greenweight::cure::{CureError, GreenWeight, Level, Premix, premix_for_nitrite_and_salt};
/// use greenweight::{range::Range, units::kilograms};
///
/// let green = GreenWeight::new(kilograms(10.0))?;
/// let nitrite = Range::new(Level::new(60.0)?, Level::new(120.0)?)?;
/// let salt = Range::new(Level::percent(1.8)?, Level::percent(2.2)?)?;
/// let premix = |nitrite, salt| {
///     Premix::new().with_sodium_nitrite(Level::percent(nitrite)?)?.with_salt(Level::percent(salt)?)
/// };
/// let weak = premix_for_nitrite_and_salt(nitrite, salt, &premix(0.5, 99.5)?, green)?;
/// assert!(weak.contains(greenweight::cure::PremixMass::new(kilograms(0.2))?));
/// let strong = premix_for_nitrite_and_salt(nitrite, salt, &premix(6.25, 93.75)?, green);
/// assert!(matches!(strong, Err(CureError::NotBoth { .. })));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn premix_for_nitrite_and_salt(
    nitrite: Range<Level<NitriteSalts, OnGreenWeight>>,
    salt: Range<Level<SodiumChloride, OnGreenWeight>>,
    premix: &Premix,
    green: GreenWeight,
) -> Result<Range<PremixMass>, CureError> {
    let for_nitrite = premix_window(nitrite.low(), nitrite.high(), premix.nitrite(), green)?;
    let brings = premix.salt();
    let least = smallest_premix(salt.low(), brings.low(), green)?;
    let most = largest_premix(salt.high(), brings.high(), green)?;
    let for_salt = Range::new(least, most).map_err(|_| CureError::EmptyWindow {
        minimum: salt.low().mg_per_kg(),
        ceiling: salt.high().mg_per_kg(),
    })?;
    let low = if for_nitrite.low() > least { for_nitrite.low() } else { least };
    let high = if for_nitrite.high() < most { for_nitrite.high() } else { most };
    Range::new(low, high).map_err(|_| CureError::NotBoth { nitrite: for_nitrite, salt: for_salt })
}

/// The ingoing level of pumped or massaged meat.
///
/// level = premix × strength / pickle × pump, in mg/kg of green weight. The pickle is
/// weighed: 100 US gallons are 1000 lb only for a pickle of 10 lb to the gallon.
#[must_use]
pub fn pumped<A: Agent>(
    premix: PremixMass,
    strength: Level<A, InPremix>,
    pickle: PickleWeight,
    pump: Pump,
) -> Level<A, OnGreenWeight> {
    Level::of(premix.0.value * strength.mg_per_kg() / pickle.0.value * pump.0)
}

/// The ingoing level of immersed meat by its pick-up: the handbook's first method, for
/// cures too short to come to rest.
///
/// level = premix × strength / pickle × pick-up, in mg/kg of green weight: the meat
/// takes nothing beyond the pickle it visibly absorbs. The expression is that of
/// [`pumped`], with the pick-up in place of the pump (Processing Inspectors'
/// Calculations Handbook, FSIS Directive 7620.3, chapter 3; the expression from memory).
#[must_use]
pub fn immersed<A: Agent>(
    premix: PremixMass,
    strength: Level<A, InPremix>,
    pickle: PickleWeight,
    pick_up: Pump,
) -> Level<A, OnGreenWeight> {
    pumped(premix, strength, pickle, pick_up)
}

/// The level of immersed meat at equilibrium: the handbook's second method, for cures
/// long enough that meat and pickle are one system.
///
/// level = premix × strength / (green weight + pickle), in mg/kg of both together
/// (source as for [`immersed`]). Of one tub the two methods can differ tenfold:
///
/// ```
/// use greenweight::cure::{
///     GreenWeight, Level, PickleWeight, PremixMass, Pump, SodiumNitrite, equilibrated, immersed,
/// };
/// use greenweight::units::{grams, kilograms};
///
/// let (nitrite, pure) = (PremixMass::new(grams(10.0))?, Level::<SodiumNitrite, _>::percent(100.0)?);
/// let (green, pickle) = (GreenWeight::new(kilograms(10.0))?, PickleWeight::new(kilograms(10.0))?);
/// let one = immersed(nitrite, pure, pickle, Pump::new(0.05)?);
/// let two = equilibrated(nitrite, pure, green, pickle).as_ingoing();
/// assert!((one.mg_per_kg() - 50.0).abs() < 1e-9 && (two.mg_per_kg() - 500.0).abs() < 1e-9);
/// # Ok::<(), greenweight::range::OutOfRange>(())
/// ```
#[must_use]
pub fn equilibrated<A: Agent>(
    premix: PremixMass,
    strength: Level<A, InPremix>,
    green: GreenWeight,
    pickle: PickleWeight,
) -> Level<A, OnMeatAndPickle> {
    Level::of(premix.0.value * strength.mg_per_kg() / (green.0 + pickle.0).value)
}

/// [`equilibrated`] for inputs known between two ends, as the ingoing level that the
/// second method holds against a limit.
pub fn equilibrated_between<A: Agent>(
    premix: Range<PremixMass>,
    strength: Range<Level<A, InPremix>>,
    green: Range<GreenWeight>,
    pickle: Range<PickleWeight>,
) -> Range<Level<A, OnGreenWeight>> {
    let low = equilibrated(premix.low(), strength.low(), green.high(), pickle.high());
    let high = equilibrated(premix.high(), strength.high(), green.low(), pickle.low());
    let once = outward(low.as_ingoing(), high.as_ingoing());
    outward(once.low(), once.high())
}

/// [`pumped`] for inputs known between two ends.
pub fn pumped_between<A: Agent>(
    premix: Range<PremixMass>,
    strength: Range<Level<A, InPremix>>,
    pickle: Range<PickleWeight>,
    pump: Range<Pump>,
) -> Range<Level<A, OnGreenWeight>> {
    let low = pumped(premix.low(), strength.low(), pickle.high(), pump.low());
    let high = pumped(premix.high(), strength.high(), pickle.low(), pump.high());
    let widened = outward(low, high);
    outward(widened.low(), widened.high())
}

/// The largest mass of premix in a batch of pickle that pumps in, or lets be picked up,
/// no more than a ceiling: the inverse of [`pumped`] and [`immersed`].
///
/// premix = ceiling × pickle / (strength × pump).
///
/// # Errors
/// [`CureError::NoAgent`] when the premix holds none of the agent or nothing is pumped.
pub fn largest_in_pickle<A: Agent>(
    ceiling: Level<A, OnGreenWeight>,
    strength: Level<A, InPremix>,
    pickle: PickleWeight,
    pump: Pump,
) -> Result<PremixMass, CureError> {
    let agent = ceiling.mg_per_kg() * pickle.0.value;
    let mass = solved::<A>(agent, strength.mg_per_kg() * pump.0)?;
    Ok(below(mass, |mass| pumped(PremixMass(mass), strength, pickle, pump) <= ceiling))
}

/// The largest mass of premix in a tub that comes to rest at no more than a ceiling: the
/// inverse of [`equilibrated`].
///
/// premix = ceiling × (green weight + pickle) / strength.
///
/// # Errors
/// [`CureError::NoAgent`] when the premix holds none of the agent.
pub fn largest_at_equilibrium<A: Agent>(
    ceiling: Level<A, OnGreenWeight>,
    strength: Level<A, InPremix>,
    green: GreenWeight,
    pickle: PickleWeight,
) -> Result<PremixMass, CureError> {
    let agent = ceiling.mg_per_kg() * (green.0 + pickle.0).value;
    let mass = solved::<A>(agent, strength.mg_per_kg())?;
    let reached = |mass| equilibrated(PremixMass(mass), strength, green, pickle).as_ingoing();
    Ok(below(mass, |mass| reached(mass) <= ceiling))
}

/// The mass itself, or one of the few just below it that a condition holds for: the
/// rounding of the formulas is a few units in the last place.
#[inline]
fn below(mut mass: Mass, holds: impl Fn(Mass) -> bool) -> PremixMass {
    for _ in 0..8 {
        if holds(mass) {
            break;
        }
        mass = mass.just_below();
    }
    PremixMass(mass)
}

/// The mirror of [`below`].
#[inline]
fn above(mut mass: Mass, holds: impl Fn(Mass) -> bool) -> PremixMass {
    for _ in 0..8 {
        if holds(mass) {
            break;
        }
        mass = mass.just_above();
    }
    PremixMass(mass)
}

/// The coarsest step of a scale by which a mass can be weighed out. A reading of one step may be off by half of it,
/// so three halves must fit.
pub(super) fn coarsest_step(most: PremixMass) -> Mass {
    most.0 / 1.5
}

/// The largest reading of a scale that stays at or below a mass, when the scale may be
/// off by half a division: the most a cook can be told to weigh out.
///
/// `None` when not even one division fits, and the batch is too small for the scale.
#[must_use]
pub fn largest_reading(most: PremixMass, division: Option<Mass>) -> Option<Mass> {
    let Some(division) = division else {
        return Some(most.0);
    };
    let room = most.0 - division * 0.5;
    let reading = floor_to_division(room, division).ok()?;
    (reading.value > 0.0).then_some(reading)
}
