//! Food-safety figures for curing, cooking, smoking and storing meat: typed units,
//! cited tables, and checks that say *meets*, *breaks* or *unproven*.
//!
//! ```
//! use greenweight::cure::{GreenWeight, Level, PremixMass, SodiumNitrite, ingoing};
//! use greenweight::units::{ounces, pounds};
//!
//! // "One and a quarter" heard for "a quarter": 1 1/4 oz of a premix with 6.25 % sodium
//! // nitrite to 7 lb of ground meat.
//! let green = GreenWeight::new(pounds(7.0))?;
//! let strength = Level::<SodiumNitrite, _>::percent(6.25)?;
//! let level = ingoing(PremixMass::new(ounces(1.25))?, strength, green);
//! assert!(level > Level::new(156.25)?, "four times what the law allows");
//! # Ok::<(), greenweight::range::OutOfRange>(())
//! ```
//!
//! # Where to look
//!
//! | question | room |
//! |---|---|
//! | How do I write a mass, a temperature, a time; how is one read and printed? | [`units`] |
//! | What do I know of a quantity? | [`range`] |
//! | How is a limit judged, and what does a finding say? | [`finding`] |
//! | Where does a figure come from? | [`cite`] |
//! | How much curing salt? | [`cure`] |
//! | How much salt, how strong a brine, which water activity? | [`salt`] |
//! | How much fat, water and protein; which blend? | [`fat`] |
//! | How hot inside, and for how long? | [`cook`] |
//! | How is a record of temperatures read? | [`trace`] |
//! | How fast must it cool, how long may it be warm, how does it ferment, what may grow? | [`chill`] |
//! | Does it need cold at all; what does a pack without air rest on? | [`shelf`] |
//! | How warm may cold smoke be, how hot hot smoke; how much salt in smoked fish? | [`smoke`] |
//! | How cold and how long does it keep; how is it frozen and thawed? | [`store`] |
//!
//! With the feature `recipe`, a whole recipe document is read and checked; with `report`, its findings
//! are printed as text, JSON, SARIF and JUnit; with `html`, as a page. [`guide`] shows three ways to use it.
//!
//! # Cautions
//!
//! The library compares what it is told with the figures it cites. Some of these are from memory:
//! [`cite::Seen`] says which. It gives no all-clear and no substitute for local codes, a licensed
//! process authority or a laboratory.
#![cfg_attr(not(feature = "std"), no_std)]
#![cfg_attr(docsrs, feature(doc_cfg))]
#![warn(unreachable_pub)]
#![cfg_attr(
    not(test),
    deny(
        clippy::unwrap_used,
        clippy::expect_used,
        clippy::panic,
        clippy::todo,
        clippy::unimplemented,
        clippy::indexing_slicing,
        clippy::string_slice,
        clippy::as_conversions,
        clippy::float_cmp
    )
)]

// `uom`'s `unit!` calls further macros of its own by their bare names.
#[macro_use]
extern crate uom;

pub mod authority;
pub mod chill;
pub mod cite;
pub mod cook;
pub mod cure;
pub mod fat;
pub mod finding;
pub mod food;
pub mod guide;
pub mod level;
pub mod range;
#[cfg(feature = "recipe")]
#[cfg_attr(docsrs, doc(cfg(feature = "recipe")))]
pub mod recipe;
#[cfg(feature = "report")]
#[cfg_attr(docsrs, doc(cfg(feature = "report")))]
pub mod report;
pub mod salt;
pub mod shelf;
pub mod smoke;
pub mod store;
pub mod trace;
pub mod units;
// Without a report nobody but the reader of names and the drawings asks.
#[cfg(any(feature = "recipe", feature = "plot"))]
#[cfg_attr(not(feature = "report"), allow(dead_code, unreachable_pub))]
mod visible;

/// The examples of the README are tests.
#[cfg(doctest)]
#[doc = include_str!("../README.md")]
struct Readme;
