use crate::finding::Rule;

use super::rules_table::IN_WORDS;

/// A rule in words.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[non_exhaustive]
pub struct InWords {
    /// The identity of the rule.
    pub rule: &'static str,
    /// What can go wrong, and what it asks.
    pub why: &'static str,
    /// How to mend it.
    pub mend: &'static str,
    /// All of this as Markdown, with its tables and with recipes that meet it, break it and leave it unproven.
    pub page: &'static str,
}

/// What is said of a rule; every rule of [`rules`](crate::recipe::rules) has words.
///
/// ```
/// use greenweight::recipe::rules;
/// use greenweight::report::in_words;
///
/// assert!(rules().all(|rule| in_words(rule).is_some()));
/// ```
#[must_use]
pub fn in_words(rule: &Rule) -> Option<&'static InWords> {
    IN_WORDS.iter().find(|words| words.rule == rule.id)
}
