use super::agent::{Agent, Ascorbate, OnGreenWeight};
use super::level::Level;
use crate::authority::Authority;
use crate::finding::Limit;

/// How a cure reaches the meat.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize), serde(rename_all = "kebab-case"))]
#[non_exhaustive]
pub enum Method {
    /// Mixed into ground or chopped meat.
    Ground,
    /// Rubbed on dry.
    DryRub,
    /// Pumped, injected or massaged in as a pickle.
    Pumped,
    /// Immersed in a cover pickle.
    Immersion,
}

impl Method {
    /// Every method.
    pub const ALL: [Self; 4] = [Self::Ground, Self::DryRub, Self::Pumped, Self::Immersion];

    /// Its key in tables and in recipe documents.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Ground => "ground",
            Self::DryRub => "dry-rub",
            Self::Pumped => "pumped",
            Self::Immersion => "immersion",
        }
    }

    /// The method with that key.
    #[must_use]
    pub fn from_key(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|method| method.key() == key)
    }
}

/// A row that limits what goes into meat other than bacon.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct IngoingLimit<A: Agent> {
    /// Whose limit it is.
    pub authority: Authority,
    /// The methods it is for.
    pub methods: &'static [Method],
    /// The limit.
    pub limit: Limit<Level<A, OnGreenWeight>>,
    /// The whole number that inspectors work with, where it is known.
    pub working_figure: Option<u32>,
}

/// Which of the five formulas for bacon.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum BaconFormula {
    /// Pumped or massaged, the standard amount.
    Pumped,
    /// Pumped or massaged, alternative A.
    PumpedA,
    /// Pumped or massaged, alternative B, with sugar and a lactic culture.
    PumpedB,
    /// Immersed.
    Immersion,
    /// Dry cured.
    DryCure,
}

/// A row that limits or prescribes what goes into bacon.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct BaconLimit<A: Agent> {
    /// Whose limit it is.
    pub authority: Authority,
    /// Which formula.
    pub formula: BaconFormula,
    /// The amount prescribed, or the ceiling.
    pub limit: Limit<Level<A, OnGreenWeight>>,
    /// The ascorbate or erythorbate prescribed with it.
    pub ascorbate: Option<Level<Ascorbate, OnGreenWeight>>,
    /// The fermentable sugar prescribed with it, at least, in percent.
    pub sugar_percent: Option<f64>,
    /// Whether a lactic culture is prescribed with it.
    pub lactic_culture: bool,
}
