//! The recipe document: a TOML text that a person writes, read with a place for
//! every value, and held against every rule that applies.
//!
//! ```
//! use greenweight::{finding::Verdict, recipe::Recipe};
//!
//! let recipe = Recipe::read(r#"
//!     title = "Test batch"
//!     held_to = ["us-fsis"]
//!
//!     [instruments]
//!     scale = "0.1 g"
//!
//!     [[component]]
//!     name = "sausage"
//!     food = "ground-meat"
//!     raw = true
//!     cure = { method = "ground" }
//!
//!     [[component.ingredient]]
//!     name = "pork shoulder"
//!     kind = "meat"
//!     from = "pork"
//!     amount = "7 lb"
//!
//!     [[component.ingredient]]
//!     name = "curing salt"
//!     kind = "curing-premix"
//!     strength = { sodium-nitrite = "6.25 %" }
//!     amount = "1 1/4 oz"
//! "#)?;
//!
//! let worst = recipe.check().iter().map(|checked| checked.finding.verdict).max();
//! assert_eq!(worst, Some(Verdict::Breaks));
//! # Ok::<(), greenweight::recipe::Unreadable>(())
//! ```

mod accept;
mod check;
mod composing;
mod confirm;
mod cooking;
mod curing;
mod document;
mod keeping;
mod keys;
mod names;
mod read;
#[rustfmt::skip]
mod remembered;
mod scale;
mod smoking;
mod validate;
mod warm;

pub use check::{Checked, RULES, rules};
pub use document::{
    Accepted, Animal, Component, Confirmed, CurePlan, Ingredient, Instruments, Kind, Proximates,
    Recipe, RecordFile, Remembered, Step, StepKind,
};
pub use keys::{Fault, Unreadable};
pub use read::LARGEST;
pub use scale::{Scaled, Unscaled};
pub use validate::{FieldPath, Impossible, Problem};
