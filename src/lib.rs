//! scaffold
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
pub mod cite;
pub mod cook;
pub mod cure;
pub mod finding;
pub mod food;
pub mod range;
#[cfg(feature = "recipe")]
#[cfg_attr(docsrs, doc(cfg(feature = "recipe")))]
pub mod recipe;
#[cfg(feature = "report")]
#[cfg_attr(docsrs, doc(cfg(feature = "report")))]
pub mod report;
pub mod smoke;
pub mod store;
pub mod units;
