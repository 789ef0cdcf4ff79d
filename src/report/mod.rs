//! Findings as text for a cook, as JSON for a machine, as SARIF for code hosts, as JUnit for builds and as a page
//! for a reader. All say the same.
//!
//! A report is written document by document, so that ten thousand take no more memory than one: a [`Part`] is
//! rendered, on any thread, and a [`Report`] writes the parts in the order they are given.
//!
//! ```
//! use greenweight::{recipe::Recipe, report::{Checkup, Format, Outcome, Layout, Part, Report}};
//!
//! let text = "title = \"Invented\"\nheld_to = [\"us-consumer\"]\n[[component]]\nname = \"roast\"\nfood = \"whole-meat\"";
//! let checkup = Checkup::new("roast.toml".into(), text, Recipe::read(text)?);
//! let format = Format::Text(Layout::default());
//! let mut report = Report::new(format, Vec::new())?;
//! report.add(Part::new(format, &Outcome::Checked(checkup))?)?;
//! let (summary, printed) = report.finish()?;
//! assert_eq!(summary.unproven, 1);
//! assert!(String::from_utf8(printed)?.starts_with("Invented (roast.toml)"));
//! # Ok::<(), Box<dyn std::error::Error>>(())
//! ```

#[cfg(feature = "html")]
mod drawings;
#[cfg(feature = "html")]
mod html;
mod json;
mod junit;
#[cfg(feature = "calendar")]
mod label;
mod lines;
mod rules;
mod rules_table;
mod sarif;
mod text;
mod words;
mod write;

use std::path::PathBuf;

use crate::finding::{Finding, Place, Verdict};
use crate::recipe::{Checked, Confirmed, Fault, Recipe};

pub use crate::visible::{is_unprintable, visible, visible_lines};
#[cfg(feature = "calendar")]
#[cfg_attr(docsrs, doc(cfg(feature = "calendar")))]
pub use label::{CookThrough, Label, NotMet, Says, labels};
pub use lines::Lines;
pub use rules::{InWords, in_words};
pub use text::{Layout, cautions};
pub use write::{Format, Part, Report, Summary};
#[cfg(feature = "html")]
#[cfg_attr(docsrs, doc(cfg(feature = "html")))]
pub use {
    drawings::{Drawn, drawings},
    html::to_html,
};

/// The version of the JSON report.
pub const VERSION: u32 = 1;

/// What every report says, beside what it found.
pub const CAUTIONS: [&str; 4] = [
    "This compares what the recipe says with the figures cited. Some of them are from memory: check those. It cannot know what was done.",
    "\"Meets\" is about the rule named, not about the food. Rules this version does not hold are not judged.",
    CURING_CAUTION,
    "Local codes and licensed practice come first. Before you sell, have the process checked by a licensed process authority.",
];

/// The one of them that belongs to whatever is cured.
pub const CURING_CAUTION: &str = "Weigh curing premixes, never spoon them; keep them labelled and away from children. A very small amount of neat nitrite can kill: blue lips or dizziness after eating are an emergency.";

/// What is said where there is room for one line only.
pub const SHORT_CAUTION: &str =
    "Some figures are from memory: check those. Local codes and licensed practice come first.";

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

    /// Whether every finding meets, or is accepted in the document with a reason. Where no rule has
    /// anything to say nothing is settled.
    #[must_use]
    pub fn settled(&self) -> bool {
        let settled = |checked: &Checked| {
            checked.finding.verdict == Verdict::Meets || self.recipe.accepted(checked).is_some()
        };
        !self.findings.is_empty() && self.findings.iter().all(settled)
    }

    /// How many findings are accepted in the document.
    #[must_use]
    pub fn accepted(&self) -> usize {
        self.findings.iter().filter(|checked| self.recipe.accepted(checked).is_some()).count()
    }

    /// The findings on one component, counted from zero.
    pub fn findings_of(&self, component: usize) -> impl Iterator<Item = Finding> + '_ {
        let of = move |checked: &&Checked| checked.component == component;
        self.findings.iter().filter(of).map(|checked| checked.finding)
    }

    /// Whether a finding rests on a row that the recipe confirms.
    #[must_use]
    pub fn rests_on(&self, confirmed: &Confirmed<'_>) -> bool {
        let mut rows = self.findings.iter().flat_map(|checked| checked.finding.rows).flatten();
        rows.any(|row| confirmed.row.is(row))
    }

    /// The step of its component that a finding points into, counted from zero: the last that begins before
    /// it, where no ingredient or cure does after that.
    #[must_use]
    pub fn step_of(&self, checked: &Checked) -> Option<usize> {
        let component = self.recipe.components.get(checked.component)?;
        let at = checked.finding.place.start;
        let before = |place: &Place| place.end > 0 && place.start <= at;
        let steps = component.steps.iter().map(|step| step.place).enumerate();
        let (n, step) = steps.filter(|(_, place)| before(place)).max_by_key(|(n, _)| *n)?;
        let others = component.ingredients.iter().map(|ingredient| ingredient.place);
        let mut others = others.chain(component.cure.map(|cure| cure.place));
        let between = others.any(|place| before(&place) && place.start > step.start);
        if between { None } else { Some(n) }
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

/// What became of a document.
#[derive(Debug)]
pub enum Outcome<'a> {
    /// It was checked.
    Checked(Checkup<'a>),
    /// It could not be read.
    Unread(Unread),
}
