use core::cmp::Ordering;

use super::CureError;
use super::method::PremixMass;
use super::table::PREMIX_STRENGTH;
use crate::cite::Cited;
use crate::finding::Limit;
use crate::level::{
    InPremix, Level, NitrateSalts, NitriteSalts, PotassiumNitrate, PotassiumNitrite,
    SodiumChloride, SodiumNitrate, SodiumNitrite,
};
use crate::range::{Range, against};

/// A strength at which nitrite is commonly sold.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct SoldStrength {
    /// The nitrite in it.
    pub nitrite: Range<Level<NitriteSalts, InPremix>>,
    /// Whether it is no premix, but the salt itself.
    pub neat: bool,
}

/// The strongest premix that is commonly sold.
pub(super) fn strongest_sold() -> Option<&'static Cited<SoldStrength>> {
    let premixes = PREMIX_STRENGTH.iter().filter(|row| !row.value.neat);
    let most = |row: &Cited<SoldStrength>| row.value.nitrite.high();
    premixes.reduce(|a, b| if most(b) > most(a) { b } else { a })
}

/// The strength of a curing premix by agent, as its label gives it. What is not
/// named is zero: a label names every curing agent.
///
/// ```
/// use greenweight::cure::{Level, Premix};
///
/// let premix = Premix::new().with_sodium_nitrite(Level::percent(6.25)?)?;
/// assert_eq!(premix.nitrite().mg_per_kg(), 62_500.0);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Premix {
    sodium_nitrite: Level<SodiumNitrite, InPremix>,
    potassium_nitrite: Level<PotassiumNitrite, InPremix>,
    sodium_nitrate: Level<SodiumNitrate, InPremix>,
    potassium_nitrate: Level<PotassiumNitrate, InPremix>,
    salt: Option<Level<SodiumChloride, InPremix>>,
}

impl Premix {
    /// A premix without any curing agent.
    #[must_use]
    pub const fn new() -> Self {
        Self {
            sodium_nitrite: Level::of(0.0),
            potassium_nitrite: Level::of(0.0),
            sodium_nitrate: Level::of(0.0),
            potassium_nitrate: Level::of(0.0),
            salt: None,
        }
    }

    fn whole(self) -> Result<Self, CureError> {
        let salt = self.salt.map_or(0.0, Level::mg_per_kg);
        let sum = self.agents() + salt;
        // "6.1 % and 93.9 %" add up to one unit in the last place more than the whole.
        match against(sum, 1e6) {
            Some(Ordering::Less | Ordering::Equal) => Ok(self),
            _ => Err(CureError::MoreThanWhole { sum }),
        }
    }

    /// With this much sodium nitrite.
    ///
    /// # Errors
    /// [`CureError::MoreThanWhole`] when the agents add up to more than the premix.
    pub fn with_sodium_nitrite(
        mut self,
        level: Level<SodiumNitrite, InPremix>,
    ) -> Result<Self, CureError> {
        self.sodium_nitrite = level;
        self.whole()
    }

    /// With this much potassium nitrite.
    ///
    /// # Errors
    /// [`CureError::MoreThanWhole`] when the agents add up to more than the premix.
    pub fn with_potassium_nitrite(
        mut self,
        level: Level<PotassiumNitrite, InPremix>,
    ) -> Result<Self, CureError> {
        self.potassium_nitrite = level;
        self.whole()
    }

    /// With this much sodium nitrate.
    ///
    /// # Errors
    /// [`CureError::MoreThanWhole`] when the agents add up to more than the premix.
    pub fn with_sodium_nitrate(
        mut self,
        level: Level<SodiumNitrate, InPremix>,
    ) -> Result<Self, CureError> {
        self.sodium_nitrate = level;
        self.whole()
    }

    /// With this much potassium nitrate.
    ///
    /// # Errors
    /// [`CureError::MoreThanWhole`] when the agents add up to more than the premix.
    pub fn with_potassium_nitrate(
        mut self,
        level: Level<PotassiumNitrate, InPremix>,
    ) -> Result<Self, CureError> {
        self.potassium_nitrate = level;
        self.whole()
    }

    /// With this much common salt. Where a label does not say how much of the rest is salt,
    /// it is not known, and [`Self::salt`] is a range.
    ///
    /// # Errors
    /// [`CureError::MoreThanWhole`] when it all adds up to more than the premix.
    pub fn with_salt(mut self, level: Level<SodiumChloride, InPremix>) -> Result<Self, CureError> {
        self.salt = Some(level);
        self.whole()
    }

    /// The curing agents together, mg/kg.
    fn agents(&self) -> f64 {
        self.nitrite().mg_per_kg() + self.nitrate().mg_per_kg()
    }

    /// The common salt that the premix brings: as stated, or between nothing and all that
    /// is not a curing agent.
    ///
    /// ```
    /// use greenweight::cure::{Level, Premix};
    ///
    /// let premix = Premix::new().with_sodium_nitrite(Level::percent(6.25)?)?;
    /// assert_eq!(premix.salt().low().mg_per_kg(), 0.0);
    /// assert_eq!(premix.salt().high().mg_per_kg(), 937_500.0);
    /// assert!(premix.with_salt(Level::percent(93.0)?)?.salt().is_exact());
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    #[must_use]
    pub fn salt(&self) -> Range<Level<SodiumChloride, InPremix>> {
        match self.salt {
            Some(salt) => Range::ordered(salt, salt),
            None => Range::ordered(Level::of(0.0), Level::of((1e6 - self.agents()).max(0.0))),
        }
    }

    /// Sodium nitrite.
    #[must_use]
    pub const fn sodium_nitrite(&self) -> Level<SodiumNitrite, InPremix> {
        self.sodium_nitrite
    }

    /// Potassium nitrite.
    #[must_use]
    pub const fn potassium_nitrite(&self) -> Level<PotassiumNitrite, InPremix> {
        self.potassium_nitrite
    }

    /// Sodium nitrate.
    #[must_use]
    pub const fn sodium_nitrate(&self) -> Level<SodiumNitrate, InPremix> {
        self.sodium_nitrate
    }

    /// Potassium nitrate.
    #[must_use]
    pub const fn potassium_nitrate(&self) -> Level<PotassiumNitrate, InPremix> {
        self.potassium_nitrate
    }

    /// Both nitrites, as weighed.
    #[must_use]
    pub fn nitrite(&self) -> Level<NitriteSalts, InPremix> {
        self.sodium_nitrite.as_weighed() + self.potassium_nitrite.as_weighed()
    }

    /// Whether it holds more nitrite than any premix that is commonly sold: neat nitrite, or near it. No
    /// kitchen scale weighs it safely.
    ///
    /// Source: table `cure/premix-strength`, common practice.
    ///
    /// ```
    /// use greenweight::cure::{Level, Premix};
    ///
    /// let holding = |percent| Premix::new().with_sodium_nitrite(Level::percent(percent)?);
    /// assert!(!holding(6.25)?.is_beyond_a_premix());
    /// assert!(holding(12.0)?.is_beyond_a_premix());
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    #[must_use]
    pub fn is_beyond_a_premix(&self) -> bool {
        strongest_sold().is_some_and(|row| {
            Limit::AtMost(row.value.nitrite.high()).met_by(self.nitrite()) != Some(true)
        })
    }

    /// Both nitrates, as weighed.
    #[must_use]
    pub fn nitrate(&self) -> Level<NitrateSalts, InPremix> {
        self.sodium_nitrate.as_weighed() + self.potassium_nitrate.as_weighed()
    }
}

impl Premix {
    /// Two premixes mixed: each agent at the mean of its strengths, weighted by mass.
    ///
    /// strength = (m₁ s₁ + m₂ s₂) / (m₁ + m₂). With plain salt for the second this dilutes
    /// a premix to another strength. The salt is known when it is known of both.
    ///
    /// # Errors
    /// [`CureError::OutOfRange`] when both masses are zero.
    ///
    /// ```
    /// use greenweight::cure::{Level, Premix, PremixMass};
    /// use greenweight::units::grams;
    ///
    /// let strong = Premix::new().with_sodium_nitrite(Level::percent(6.25)?)?;
    /// let weak = Premix::mixed(PremixMass::new(grams(80.0))?, &strong, PremixMass::new(grams(920.0))?, &Premix::new())?;
    /// assert_eq!(weak.sodium_nitrite().mg_per_kg(), 5_000.0);
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    pub fn mixed(
        first: PremixMass,
        a: &Self,
        second: PremixMass,
        b: &Self,
    ) -> Result<Self, CureError> {
        let (m, n) = (first.mass().value, second.mass().value);
        BOTH.check(m + n)?;
        let mean = |a: f64, b: f64| (m * a + n * b) / (m + n);
        Ok(Self {
            sodium_nitrite: Level::of(mean(
                a.sodium_nitrite.mg_per_kg(),
                b.sodium_nitrite.mg_per_kg(),
            )),
            potassium_nitrite: Level::of(mean(
                a.potassium_nitrite.mg_per_kg(),
                b.potassium_nitrite.mg_per_kg(),
            )),
            sodium_nitrate: Level::of(mean(
                a.sodium_nitrate.mg_per_kg(),
                b.sodium_nitrate.mg_per_kg(),
            )),
            potassium_nitrate: Level::of(mean(
                a.potassium_nitrate.mg_per_kg(),
                b.potassium_nitrate.mg_per_kg(),
            )),
            salt: a.salt.zip(b.salt).map(|(a, b)| Level::of(mean(a.mg_per_kg(), b.mg_per_kg()))),
        })
    }
}

crate::range::bounds! {
    BOTH: "mass of both premixes together", "kg", 1e-9, 2e6;
}

impl Default for Premix {
    fn default() -> Self {
        Self::new()
    }
}
