//! Fat, water and protein: what lots hold, blends of them, losses, and what a name may hold.
//!
//! | symbol | meaning | unit |
//! |---|---|---|
//! | wᵢ, cᵢ | weight of a lot, and its share of a component | kg, % |
//! | a, b, t | two lots and a target | % |
//! | M, P, P₂ | moisture, protein, protein not of the meat | % |
//! | F | fat | % |
//! | Y, d | yield of cooking, change of a component to 100 g raw | %, g |
//!
//! A label such as "25 % fat" is not an analysis: [`Lot::labelled`] gives it a range. Fat trim
//! is not pure fat, and fat tissue is not fat: back fat holds 89 percent, the separable fat of
//! pork 66. What a composition says of a name is about labels and never about safety.
//!
//! With the feature `least-cost`, the cheapest of many blends is found as a linear programme.
//!
//! # The tables
#![doc = include_str!("../../references/pages/fat/product-limits.md")]
#![doc = include_str!("../../references/pages/fat/label-error.md")]
#![doc = include_str!("../../references/pages/fat/spoon-fill.md")]

mod check;
#[cfg(feature = "least-cost")]
mod cost;
mod limit;
mod lot;
// A printed 3.14 g of ash is not π.
#[allow(clippy::approx_constant)]
#[rustfmt::skip]
mod table;
mod table_rows;

pub use check::{Named, RULES, name_keys, named, target};
#[cfg(feature = "least-cost")]
#[cfg_attr(docsrs, doc(cfg(feature = "least-cost")))]
pub use cost::{Cheapest, NoBlend, Offer, Wanted, cheapest};
pub use limit::{CompositionLimit, CountryHam, LeastProtein, WeightGain};
pub use lot::{
    FatError, Lot, Part, added_water, after_cooking, blend, change_in_cooking, meat_fat_for,
    moisture_to_protein, most_water, protein_fat_free, share_of_first, to_add,
};
pub use table::{
    ADDED_WATER_FREE_OTHER_PROTEIN, ADDED_WATER_WATER_TO_PROTEIN, COMPOSITION, COOKING_YIELD,
    COUNTRY_HAM, LABEL_ERROR, MEASURES, PRODUCT_LIMITS, PROTEIN_FAT_FREE, SPOON_FILL_LEAST,
    SPOON_FILL_MOST, WEIGHT_GAIN,
};
pub use table_rows::{
    Composition, Cooked, CookingYield, KitchenMeasure, find_composition, find_measures, find_yields,
};
