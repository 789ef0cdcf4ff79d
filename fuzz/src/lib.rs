//! What has to hold for every input, one function a fuzz target. They panic when it does not.

mod check;
mod mutate;
mod quantity;
mod recipe;
mod record;

pub use check::check;
pub use mutate::mutated;
pub use quantity::quantity;
pub use recipe::recipe;
pub use record::record;

/// A stretch of bytes lies inside a text and between two of its characters.
fn lies_in(text: &str, start: usize, end: usize) {
    assert!(text.get(start..end).is_some(), "{start}..{end} is no part of {text:?}");
}
