//! Levels: milligrams of something in a kilogram of something else, with both in the type.

use core::cmp::Ordering;
use core::fmt;
use core::marker::PhantomData;
use core::ops::{Add, Sub};

mod agent;

pub use agent::{
    AcidPyrophosphate, Agent, Ascorbate, AscorbicAcids, Ascorbics, Basis, Citrates, CuringSalts,
    FumaricAcid, GluconoDeltaLactone, InPremix, InWaterPhase, NitrateIon, NitrateSalts, NitriteIon,
    NitriteSalts, OnCheeseMilk, OnFinishedWeight, OnGreenWeight, OnMeatAndPickle, OnProductAsMade,
    Phosphates, PotassiumNitrate, PotassiumNitrite, Residual, SodiumChloride, SodiumNitrate,
    SodiumNitrite,
};

use crate::finding::{Comparable, Measure};
use crate::range::{Measured, OutOfRange, bounds};

bounds! {
    pub(crate) LEVEL: "level", "mg/kg", 0.0, 1e6;
}

/// Milligrams of an agent per kilogram of a basis, the "ppm" of the trade.
///
/// The agent and the basis are part of the type. 80 mg/kg of nitrite ion is not
/// 80 mg/kg of sodium nitrite, ingoing is not residual, green weight is not finished
/// weight, and none of these compare:
///
/// ```compile_fail,E0308
/// use greenweight::cure::{Level, NitriteIon, OnGreenWeight, SodiumNitrite};
/// let ion = Level::<NitriteIon, OnGreenWeight>::new(80.0)?;
/// let salt = Level::<SodiumNitrite, OnGreenWeight>::new(80.0)?;
/// assert!(ion < salt);
/// # Ok::<(), greenweight::range::OutOfRange>(())
/// ```
///
/// ```compile_fail,E0308
/// use greenweight::cure::{Level, OnGreenWeight, Residual, SodiumNitrite};
/// let ingoing = Level::<SodiumNitrite, OnGreenWeight>::new(150.0)?;
/// let residual = Level::<SodiumNitrite, Residual>::new(200.0)?;
/// assert!(ingoing < residual);
/// # Ok::<(), greenweight::range::OutOfRange>(())
/// ```
///
/// ```compile_fail,E0308
/// use greenweight::cure::{Level, OnFinishedWeight, OnGreenWeight, SodiumNitrite};
/// let green = Level::<SodiumNitrite, OnGreenWeight>::new(150.0)?;
/// let finished = Level::<SodiumNitrite, OnFinishedWeight>::new(150.0)?;
/// assert!(green < finished);
/// # Ok::<(), greenweight::range::OutOfRange>(())
/// ```
///
/// The conversion is a function with a name:
///
/// ```
/// use greenweight::cure::{Level, NitriteIon, OnGreenWeight, SodiumNitrite};
/// let ion = Level::<NitriteIon, OnGreenWeight>::new(80.0)?;
/// let salt = Level::<SodiumNitrite, OnGreenWeight>::new(119.97)?;
/// assert!(salt < ion.as_sodium_nitrite());
/// # Ok::<(), greenweight::range::OutOfRange>(())
/// ```
pub struct Level<A, B> {
    mg_per_kg: f64,
    of: PhantomData<(A, B)>,
}

impl<A: Agent, B: Basis> Level<A, B> {
    /// A level in mg/kg, from 0 to 1 000 000.
    ///
    /// # Errors
    /// [`OutOfRange`] outside that, and for what is not a number.
    pub fn new(mg_per_kg: f64) -> Result<Self, OutOfRange> {
        Ok(Self::of(LEVEL.check(mg_per_kg)?))
    }

    /// A level from a percentage, from 0 to 100. 6.25 is 62 500 mg/kg.
    ///
    /// # Errors
    /// [`OutOfRange`] outside that, and for what is not a number.
    pub fn percent(percent: f64) -> Result<Self, OutOfRange> {
        Self::new(percent * 1e4)
    }

    /// A level worked out from valid inputs, or of a generated table.
    pub(crate) const fn of(mg_per_kg: f64) -> Self {
        Self { mg_per_kg, of: PhantomData }
    }

    /// Milligrams per kilogram.
    #[must_use]
    pub const fn mg_per_kg(self) -> f64 {
        self.mg_per_kg
    }

    /// Percent by mass.
    #[must_use]
    pub fn as_percent(self) -> f64 {
        self.mg_per_kg / 1e4
    }
}

impl<A, B> Clone for Level<A, B> {
    fn clone(&self) -> Self {
        *self
    }
}

impl<A, B> Copy for Level<A, B> {}

impl<A, B> PartialEq for Level<A, B> {
    fn eq(&self, other: &Self) -> bool {
        self.mg_per_kg.eq(&other.mg_per_kg)
    }
}

impl<A, B> PartialOrd for Level<A, B> {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        self.mg_per_kg.partial_cmp(&other.mg_per_kg)
    }
}

impl<A, B> Comparable for Level<A, B> {
    fn against(self, other: Self) -> Option<Ordering> {
        self.mg_per_kg.against(other.mg_per_kg)
    }
    fn is_finite(self) -> bool {
        self.mg_per_kg.is_finite()
    }
}

impl<A: Agent, B: Basis> Measured for Level<A, B> {
    fn just_below(self) -> Self {
        Self::of(self.mg_per_kg.next_down())
    }
    fn just_above(self) -> Self {
        Self::of(self.mg_per_kg.next_up())
    }
    fn is_finite(self) -> bool {
        self.mg_per_kg.is_finite()
    }
    const ZERO: Self = Self::of(0.0);
}

/// Two additions of one agent on one basis.
impl<A: Agent, B: Basis> Add for Level<A, B> {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self::of(self.mg_per_kg + other.mg_per_kg)
    }
}

impl<A: Agent, B: Basis> Sub for Level<A, B> {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self::of(self.mg_per_kg - other.mg_per_kg)
    }
}

impl<A: Agent, B: Basis> fmt::Debug for Level<A, B> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{} mg/kg {}, {}", self.mg_per_kg, A::NAME, B::NAME)
    }
}

impl<A: Agent, B: Basis> From<Level<A, B>> for Measure {
    fn from(level: Level<A, B>) -> Self {
        Self::Level { mg_per_kg: level.mg_per_kg, agent: A::NAME, basis: B::NAME }
    }
}
