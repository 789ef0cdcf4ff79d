//! Findings as text for a cook, as JSON for a machine and as SARIF for code hosts. All say the same.

mod json;
#[cfg(feature = "calendar")]
mod label;
mod lines;
mod sarif;
mod text;
mod words;

use std::path::PathBuf;

use crate::finding::{Finding, Verdict};
use crate::recipe::{Checked, Fault, Recipe};

pub use json::to_json;
#[cfg(feature = "calendar")]
#[cfg_attr(docsrs, doc(cfg(feature = "calendar")))]
pub use label::{Label, labels};
pub use lines::Lines;
pub use sarif::to_sarif;
pub use text::to_text;

/// The version of the JSON report.
pub const VERSION: u32 = 1;

/// What every report ends with.
pub const CAUTIONS: [&str; 4] = [
    "This holds what the recipe says against published figures. It does not know what was done.",
    "\"Meets\" is about the rule named, not about the food. Rules this version does not hold are not judged.",
    "Weigh curing premixes, never spoon them; keep them labelled and away from children. A very small amount of neat nitrite can kill.",
    "Local codes and licensed practice come first. For sale, have the process checked by someone licensed to.",
];

/// A document that was checked.
#[derive(Debug)]
pub struct Checkup<'a> {
    /// Its path, as it was given.
    pub path: PathBuf,
    /// Its text.
    pub text: &'a str,
    /// What it says.
    pub recipe: Recipe<'a>,
    /// What was found.
    pub findings: Vec<Checked>,
}

impl<'a> Checkup<'a> {
    /// Checks a recipe.
    #[must_use]
    pub fn new(path: PathBuf, text: &'a str, recipe: Recipe<'a>) -> Self {
        let findings = recipe.check();
        Self { path, text, recipe, findings }
    }

    /// The worst verdict: *breaks* before *unproven* before *meets*. A recipe about
    /// which no rule has anything to say proves nothing.
    #[must_use]
    pub fn verdict(&self) -> Verdict {
        self.findings
            .iter()
            .map(|checked| checked.finding.verdict)
            .max()
            .unwrap_or(Verdict::Unproven)
    }

    /// The findings on one component, counted from zero.
    pub fn findings_of(&self, component: usize) -> impl Iterator<Item = Finding> + '_ {
        let of = move |checked: &&Checked| checked.component == component;
        self.findings.iter().filter(of).map(|checked| checked.finding)
    }

    /// What the component of a finding is called.
    #[must_use]
    pub fn component(&self, checked: &Checked) -> &str {
        self.recipe.components.get(checked.component).map_or("", |component| &component.name)
    }
}

/// A document that could not be read.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Unread {
    /// Its path, as it was given.
    pub path: PathBuf,
    /// Its text, as far as it is text.
    pub text: String,
    /// Why.
    pub faults: Vec<Fault>,
}
