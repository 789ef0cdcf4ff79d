//! Curing agents: levels with a basis, how much premix, and the limits.
//!
//! Three different numbers must not be mixed. *Ingoing* is what goes into the meat,
//! on its green weight; *residual* is what an analysis finds in the finished
//! product; and the figures for fish and home-cure mixes are on the finished product
//! as well. Here they are different types: see [`Level`].
//!
//! | symbol | meaning | unit |
//! |---|---|---|
//! | m | mass of curing premix | kg |
//! | s | strength of the premix, mg of agent per kg of premix | mg/kg |
//! | W | green weight of the meat block | kg |
//! | P | weight of the whole batch of pickle | kg |
//! | p | pump, as a fraction of green weight | |
//!
//! Ground meat and dry rub: level = m s / W ([`ingoing`]), and its inverse
//! m = level W / s ([`largest_premix`], [`smallest_premix`], [`premix_window`]).
//! Pumped: level = m s p / P ([`pumped`]). Immersed: by pick-up the same with the pick-up
//! for p ([`immersed`]); at equilibrium level = m s / (W + P) ([`equilibrated`]). Where a
//! recipe does not say which, both are worked out and the range between them is judged. A pump
//! that varies is a range, and so is the level.
//!
//! In the finished product: level × W / F, F being the weight of the batch when it is done. What
//! was added can only grow less: a limit of what may be *in* the product is met when even all of
//! it would be under, and is never broken by a recipe. In cheese: m s / the weight of the milk.
//! Skin takes up no cure: W of an immersed or rubbed belly is its weight without
//! skin ([`skin_free`]). An ascorbate with its water of crystallisation counts × 198.106 /
//! 216.121 ([`Addition`]). A premix that is all the salt of a recipe has a window for nitrite
//! and one for salt, which may not meet ([`premix_for_nitrite_and_salt`]).
//!
//! | type | when, and over what |
//! |---|---|
//! | [`OnGreenWeight`] | ingoing, on the meat before anything is added |
//! | [`OnProductAsMade`] | ingoing, on everything when the cure is added |
//! | [`OnMeatAndPickle`] | meat and pickle come to rest together |
//! | [`OnCheeseMilk`] | on the milk of a cheese |
//! | [`OnFinishedWeight`] | what went in, on the finished product |
//! | [`Residual`] | what an analysis finds |
//! | [`InPremix`] | the strength of a premix |
//!
//! # What the authorities weigh
//!
//! A figure such as "150 mg/kg of nitrite" means nothing until four things are fixed:
//! what is weighed, when, over what, and from which day.
//!
//! | authority | counted as | when | over what |
//! |---|---|---|---|
//! | United States, inspected meat | the salt itself, one figure for sodium and potassium; in bacon each its own | ingoing; and 200 ppm in the finished product, as sodium nitrite | green weight |
//! | United States, fish and home-cure mixes | sodium nitrite, sodium nitrate | in the finished product | finished weight |
//! | United States, accelerators and phosphates | the substance, an ascorbate without its water | ingoing; phosphates and pyrophosphate in the finished product too | green weight; finished weight |
//! | European Union from 9 October 2025 | the ion | ingoing, and a cap of the residue | the product as made |
//! | European Union before, Great Britain | sodium nitrite, sodium nitrate | ingoing; some traditional products by residue only | the product as made |
//! | Denmark | sodium nitrite | ingoing | the product as made |
//! | Canada | the salt itself | ingoing, before smoking, cooking, fermenting | not said: both readings are judged |
//! | Codex | the ion | residue | the food |
//! | Australia and New Zealand | nitrate and nitrite together, as sodium nitrite | present | the food |
//! | Japan | the nitrite ion | residue | the food |
//!
//! An ingoing limit can be proven from a recipe. A residue cannot: that finding is
//! *unproven* and asks for an analysis.
//!
//! # The tables
#![doc = include_str!("../../references/pages/cure/us-ingoing.md")]
#![doc = include_str!("../../references/pages/cure/us-bacon.md")]
#![doc = include_str!("../../references/pages/cure/us-accelerators.md")]
#![doc = include_str!("../../references/pages/cure/us-phosphates.md")]
#![doc = include_str!("../../references/pages/cure/us-fda.md")]

mod additive;
mod bacon;
mod batch;
mod check;
mod claim;
mod convert;
mod dose;
mod limit;
mod method;
mod premix;
mod product;
mod residue;
#[rustfmt::skip]
mod table;

use crate::range::{OutOfRange, Range, RangeError};

pub use crate::level::{
    AcidPyrophosphate, Agent, Ascorbate, AscorbicAcids, Ascorbics, Basis, Citrates, CuringSalts,
    FumaricAcid, GluconoDeltaLactone, InPremix, Level, NitrateIon, NitrateSalts, NitriteIon,
    NitriteSalts, OnCheeseMilk, OnFinishedWeight, OnGreenWeight, OnMeatAndPickle, OnProductAsMade,
    Phosphates, PotassiumNitrate, PotassiumNitrite, Residual, SodiumChloride, SodiumNitrate,
    SodiumNitrite,
};
pub use additive::{Addition, Additive, ingoing_levels};
pub use bacon::skin_free;
pub use batch::{Batch, Cure, Pickle, Weighed};
#[cfg(feature = "recipe")]
pub(crate) use check::PREMIX_STRENGTH as PREMIX_STRENGTH_RULE;
pub use check::{RULES, answers, check, strengths, unanswered};
pub use claim::claim;
pub use convert::Substance;
pub use dose::{Dose, NoDose, dose};
pub use limit::{
    AdditiveBasis, AdditiveGroup, AdditiveLimit, Agents, BaconFormula, BaconLimit, CountedAs,
    IngoingLimit, MeasuredOn, Method, ProductLimit,
};
pub use method::{
    GreenWeight, PickleWeight, PremixMass, Pump, equilibrated, equilibrated_between, immersed,
    ingoing, ingoing_between, largest_at_equilibrium, largest_in_pickle, largest_premix,
    largest_reading, premix_for_nitrite_and_salt, premix_window, pumped, pumped_between,
    smallest_premix,
};
pub use premix::{Premix, SoldStrength};
pub use product::{product_keys, product_rows};
pub use residue::{Analysis, unexplained};
pub use table::{
    AUSTRALIA_NEW_ZEALAND, CANADA, CODEX, DENMARK, EU, GREAT_BRITAIN, JAPAN, NITRATE_PRACTICE,
    PREMIX_STRENGTH, US_ACCELERATORS, US_BACON_NITRATE, US_BACON_POTASSIUM, US_BACON_SKIN,
    US_BACON_SODIUM, US_BACON_TOLERANCE, US_BACON_WEIGHT, US_CITRIC_REPLACEMENT, US_FDA,
    US_INFANT_NO_NITRATE, US_INFANT_NO_NITRITE, US_INGOING_NITRATE, US_INGOING_NITRITE, US_MINIMUM,
    US_PHOSPHATES, US_RESIDUAL,
};

/// Why a question about a cure has no answer.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum CureError {
    /// An input is outside its bounds.
    #[error(transparent)]
    OutOfRange(#[from] OutOfRange),
    /// Two inputs do not make a range.
    #[error(transparent)]
    Range(RangeError),
    /// The premix does not hold the agent at all.
    #[error("the premix holds no {agent}, so no mass of it reaches a level")]
    NoAgent {
        /// The agent that was asked for.
        agent: &'static str,
    },
    /// The minimum is above the ceiling.
    #[error("no mass of premix gives at least {minimum} and at most {ceiling} mg/kg")]
    EmptyWindow {
        /// The minimum, mg/kg.
        minimum: f64,
        /// The ceiling, mg/kg.
        ceiling: f64,
    },
    /// The masses of premix that meet one target all miss the other.
    #[error(
        "no mass of this premix meets both: nitrite takes {} to {} kg of it, and salt {} to {} kg",
        nitrite.low().mass().value, nitrite.high().mass().value,
        salt.low().mass().value, salt.high().mass().value
    )]
    NotBoth {
        /// The masses of premix that meet the target for nitrite.
        nitrite: Range<PremixMass>,
        /// The masses of premix that meet the target for salt.
        salt: Range<PremixMass>,
    },
    /// The strengths of a premix add up to more than the premix.
    #[error("the agents of the premix add up to {sum} mg/kg, more than the premix weighs")]
    MoreThanWhole {
        /// The sum, mg/kg.
        sum: f64,
    },
}

impl From<RangeError> for CureError {
    fn from(error: RangeError) -> Self {
        match error {
            RangeError::OutOfRange(error) => Self::OutOfRange(error),
            other => Self::Range(other),
        }
    }
}
