use crate::authority::Authority;
use crate::finding::Limit;
use crate::level::{Agent, Ascorbate, Level, OnGreenWeight};

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

/// Additives that a rule takes together.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum AdditiveGroup {
    /// Ascorbic and erythorbic acid.
    AscorbicAcids,
    /// Sodium ascorbate and sodium erythorbate.
    Ascorbate,
    /// Citric acid and sodium citrate.
    Citrates,
    /// Fumaric acid.
    FumaricAcid,
    /// Glucono-delta-lactone.
    GluconoDeltaLactone,
    /// Sodium acid pyrophosphate.
    AcidPyrophosphate,
    /// Phosphates.
    Phosphates,
}

/// What the limit of an additive is divided by.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum AdditiveBasis {
    /// The green weight.
    GreenWeight,
    /// The finished product.
    FinishedWeight,
}

/// A row that limits an additive which goes with a cure.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct AdditiveLimit {
    /// Whose limit it is.
    pub authority: Authority,
    /// What it limits.
    pub group: AdditiveGroup,
    /// The methods it is for.
    pub methods: &'static [Method],
    /// The product it is for, where it is for one alone.
    pub product_key: Option<&'static str>,
    /// What it is divided by.
    pub on: AdditiveBasis,
    /// The limit in mg/kg.
    pub limit: Limit<f64>,
}

/// Which agents a row of a named product is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Agents {
    /// Nitrites.
    Nitrite,
    /// Nitrates.
    Nitrate,
    /// Both together.
    Both,
}

/// As what a row counts its agents.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum CountedAs {
    /// As the nitrite ion.
    NitriteIon,
    /// As the nitrate ion.
    NitrateIon,
    /// As sodium nitrite.
    SodiumNitrite,
    /// As sodium nitrate.
    SodiumNitrate,
    /// As the salt itself, sodium or potassium, by weight.
    SaltsAsWeighed,
    /// Nitrate and nitrite together, as sodium nitrite.
    NitrateAndNitriteAsSodiumNitrite,
    /// The row does not say.
    NotStated,
}

/// When and over what a row of a named product is measured.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum MeasuredOn {
    /// Ingoing, before smoking, cooking or fermenting.
    Ingoing,
    /// Ingoing, on the whole product when the cure is added.
    IngoingOnProduct,
    /// In the cheese milk.
    CheeseMilk,
    /// In the finished product.
    FinishedProduct,
    /// The residue at the end of the process.
    ResidualAtEndOfProcess,
    /// The residue through the whole shelf life.
    ResidualThroughShelfLife,
    /// The residue.
    Residual,
    /// What is present in the food.
    PresentInTheFood,
    /// The row does not say.
    NotStated,
}

/// A row that limits nitrite or nitrate in a named product.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct ProductLimit {
    /// Whose limit it is.
    pub authority: Authority,
    /// The key of the product, which several rows may share.
    pub product_key: &'static str,
    /// The product, as the document names it.
    pub product: &'static str,
    /// What it is about.
    pub agents: Agents,
    /// As what it is counted.
    pub counted_as: CountedAs,
    /// When and over what it is measured.
    pub measured_on: MeasuredOn,
    /// The limit in mg/kg.
    pub limit: Limit<f64>,
    /// A ceiling of the residue that holds besides, mg/kg.
    pub residual_cap: Option<f64>,
    /// A residue above which the cause is to be looked for, mg/kg. Not a limit.
    pub investigate_above: Option<f64>,
    /// Whether a later document replaced it.
    pub superseded: bool,
}
