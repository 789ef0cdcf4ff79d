use std::fmt;

use super::Checkup;
use super::words::temperature;
use crate::cite::Date;
use crate::finding::{Finding, Force, Limit, Measure, Verdict};
use crate::recipe::{Component, StepKind};
use crate::store::chart_row;
use crate::units::{Reading, Time, days};

/// What a label on a pack may say of one component.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Label {
    /// What it is.
    pub what: String,
    /// The day it was made, which is day 1.
    pub made: Date,
    /// The day it was packed, where it is.
    pub packed: Option<Date>,
    /// How cold it is kept, at most, in a refrigerator.
    pub keep_at: Option<Reading>,
    /// The last day of its use; or why there is none.
    pub use_by: Result<Date, String>,
    /// Whether it may as well be frozen until then: no chart says that it does not freeze.
    pub freezes: bool,
    /// Until when it is at its best in a freezer: advice about quality.
    pub best_frozen: Option<Date>,
}

/// The labels of a checked recipe: one for each component that says when it was made.
///
/// A day of use is the earliest that any rule it is held to, and the recipe itself, gives. Where any rule of
/// safety is broken or unproven there is none. Days are counted to the safe side: a pack that may be
/// kept ten days has its tenth on the day after nine.
#[must_use]
pub fn labels(checkup: &Checkup<'_>) -> Vec<Label> {
    let components = checkup.recipe.components.iter().enumerate();
    components
        .filter_map(|(n, component)| {
            let found: Vec<_> = checkup.findings_of(n).collect();
            label(component, &found)
        })
        .collect()
}

fn label(component: &Component<'_>, findings: &[Finding]) -> Option<Label> {
    let made = component.made_on?;
    let of = |rule: &str| findings.iter().filter(move |f| f.rule.id == rule).collect::<Vec<_>>();
    let ceilings = of("store/fridge-temperature");
    let keep_at = ceilings.iter().filter_map(|finding| match finding.limit {
        Some(Limit::AtMost(Measure::Temperature(at))) => Some(at),
        _ => None,
    });
    // The lower end of what a chart says of the freezer is its advice.
    let frozen = component.steps.iter().filter(|step| step.kind == StepKind::Freeze);
    let best = frozen.filter_map(|step| step.like?.value.freeze.time());
    let best_frozen = best.map(|time| time.low()).reduce(shorter);
    let packs = component.steps.iter().any(|step| step.kind == StepKind::Pack);
    // What a rule names of the chart counts like what the recipe names.
    let chart = |f: &Finding| f.rows.into_iter().flatten().find_map(|row| chart_row(row.key, None));
    let named = component.steps.iter().filter_map(|step| step.like);
    let mut likes =
        named.chain(findings.iter().filter(|f| f.rule.id.starts_with("store/")).filter_map(chart));
    Some(Label {
        what: component.name.to_string(),
        made,
        packed: component.packed_on.or_else(|| packs.then_some(made)),
        keep_at: keep_at.reduce(|a, b| if b < a { b } else { a }),
        use_by: use_by(component, findings, made),
        freezes: likes.all(|row| row.value.freeze.time().is_some()),
        best_frozen: best_frozen.and_then(|time| made.later(time)),
    })
}

fn use_by(component: &Component<'_>, findings: &[Finding], made: Date) -> Result<Date, String> {
    let rests = || findings.iter().filter(|finding| finding.rule.force == Force::Safety);
    if let Some(open) = rests().find(|finding| finding.verdict != Verdict::Meets) {
        return Err(format!("{}: {}", open.rule.asks, open.verdict.words()));
    }
    let cold = component.steps.iter().filter(|step| step.kind == StepKind::Refrigerate);
    let planned = cold.filter_map(|step| step.time).map(|time| time.value.high());
    let planned = planned.reduce(|a, b| a + b);
    let limits = rests().filter_map(|finding| {
        let most = most(finding)?;
        Some(match finding.rule.id {
            // The day it is made is the first of these.
            "chill/date-mark" | "shelf/pack-life" => most - days(1.0),
            "store/fridge-time" | "store/garlic-in-oil" | "store/fresh-sauce" => most,
            _ => return None,
        })
    });
    let rule = limits.reduce(shorter).ok_or_else(|| "no rule says how long it keeps".to_owned())?;
    let time = planned.map_or(rule, |planned| shorter(planned, rule));
    made.later(time).ok_or_else(|| "the calendar ends before it".to_owned())
}

/// The time that a finding allows.
fn most(finding: &Finding) -> Option<Time> {
    match finding.limit {
        Some(Limit::AtMost(Measure::Duration(most))) => Some(most),
        _ => None,
    }
}

fn shorter(a: Time, b: Time) -> Time {
    if b < a { b } else { a }
}

impl fmt::Display for Label {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        writeln!(f, "{}", self.what)?;
        writeln!(f, "  made on    {}", self.made)?;
        if let Some(packed) = self.packed {
            writeln!(f, "  packed on  {packed}")?;
        }
        if let Some(at) = self.keep_at {
            writeln!(f, "  keep at    {} or below", temperature(at))?;
        }
        match &self.use_by {
            Ok(day) => {
                writeln!(f, "  use by     {day}")?;
                if self.freezes {
                    writeln!(f, "  freeze by  {day}")?;
                }
            }
            Err(why) => writeln!(f, "  use by     not given ({why})")?,
        }
        if let Some(day) = self.best_frozen {
            writeln!(
                f,
                "  frozen     at its best until {day}; kept at 0 °F (−18 °C) it stays safe"
            )?;
        }
        Ok(())
    }
}
