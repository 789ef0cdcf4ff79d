use std::fmt;

use super::words::{confirmation, temperature};
use super::{Checkup, SHORT_CAUTION, visible};
use crate::authority::Authority;
use crate::cite::{Cited, Date};
use crate::cook::{Animals, Endpoint, endpoint_row};
use crate::finding::{Finding, Force, Limit, Measure, Rule, Verdict};
use crate::recipe::{Component, Confirmed, Recipe, StepKind};
use crate::store::chart_row;
use crate::units::{PrintedTemperature, Reading, Scale, Time, days, seconds, show_duration};

/// The label of one component.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Label {
    /// What it is.
    pub what: String,
    /// Who says to have read which figure from memory.
    pub confirmed: Vec<String>,
    /// By whose rules it counts.
    pub rules: Vec<Authority>,
    /// What it may say; or every rule of safety that is not met, and then it says nothing else.
    pub says: Result<Says, Vec<NotMet>>,
}

/// What the label may say of a component that meets every rule of safety.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Says {
    /// The day it was made, which is day 1.
    pub made: Date,
    /// The day it was packed, where the document writes it.
    pub packed: Option<Date>,
    /// How whoever eats it has to cook it, where it is raw.
    pub raw: Option<CookThrough>,
    /// How cold it is kept, at most, in a refrigerator: the colder of what is planned and what the rules allow.
    pub keep_at: Option<Reading>,
    /// The last day of its use; or why there is none.
    pub use_by: Result<Date, String>,
    /// Whether it may as well be frozen until then: no chart says that it does not freeze.
    pub freezes: bool,
    /// Until when it is at its best in a freezer: advice about quality.
    pub best_frozen: Option<Date>,
}

/// A rule of safety that a component does not meet.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[non_exhaustive]
pub struct NotMet {
    /// The rule.
    pub rule: &'static Rule,
    /// Whether it breaks or is unproven.
    pub verdict: Verdict,
}

/// How raw food is cooked by whoever eats it.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct CookThrough {
    /// The hottest inside temperature that the authorities print for it, with its rest; `None` where
    /// they print no single one that was read.
    pub to: Option<&'static Cited<Endpoint>>,
}

impl Label {
    /// The last day of its use, where there is one.
    #[must_use]
    pub fn use_by(&self) -> Option<Date> {
        self.says.as_ref().ok()?.use_by.as_ref().ok().copied()
    }
}

/// The labels of a checked recipe: one for each component that says when it was made.
///
/// Where any rule of safety is broken or unproven the label says that, and nothing else. A day of use is the
/// earliest that any rule it is held to, and the recipe itself, gives. Days are counted to the safe side: a pack
/// that may be kept ten days has its tenth on the day after nine.
#[must_use]
pub fn labels(checkup: &Checkup<'_>) -> Vec<Label> {
    let components = checkup.recipe.components.iter().enumerate();
    components
        .filter_map(|(n, component)| {
            let made = component.made_on?;
            let found: Vec<_> = checkup.findings_of(n).collect();
            let not_met = not_met(&found);
            let refused = !not_met.is_empty();
            let recipe = &checkup.recipe;
            let rows = || found.iter().flat_map(|finding| finding.rows).flatten();
            let rests = |c: &&Confirmed<'_>| rows().any(|row| c.row.is(row));
            Some(Label {
                what: component.name.to_string(),
                confirmed: recipe.confirmed.iter().filter(rests).map(confirmation).collect(),
                rules: checkup.recipe.held_to.clone(),
                says: if refused {
                    Err(not_met)
                } else {
                    Ok(says(&checkup.recipe, component, &found, made))
                },
            })
        })
        .collect()
}

/// What breaks stands before what is unproven, and each rule once.
fn not_met(findings: &[Finding]) -> Vec<NotMet> {
    let mut open = Vec::new();
    for verdict in [Verdict::Breaks, Verdict::Unproven] {
        let safety = |f: &&Finding| f.rule.force == Force::Safety && f.verdict == verdict;
        for finding in findings.iter().filter(safety) {
            let one = NotMet { rule: finding.rule, verdict };
            if !open.contains(&one) {
                open.push(one);
            }
        }
    }
    open
}

fn says(recipe: &Recipe<'_>, component: &Component<'_>, findings: &[Finding], made: Date) -> Says {
    // The lower end of what a chart says of the freezer is its advice.
    let frozen = component.steps.iter().filter(|step| step.kind == StepKind::Freeze);
    let best = frozen.filter_map(|step| step.like?.value.freeze.time());
    let best_frozen = best.map(|time| time.low()).reduce(shorter);
    // What a rule names of the chart counts like what the recipe names.
    let chart = |f: &Finding| f.rows.into_iter().flatten().find_map(|row| chart_row(row.key, None));
    let named = component.steps.iter().filter_map(|step| step.like);
    let mut likes =
        named.chain(findings.iter().filter(|f| f.rule.id.starts_with("store/")).filter_map(chart));
    Says {
        made,
        packed: component.packed_on,
        raw: component.raw.then(|| cook_through(recipe, component)),
        keep_at: keep_at(component, findings),
        use_by: use_by(component, findings, made),
        freezes: likes.all(|row| row.value.freeze.time().is_some()),
        best_frozen: best_frozen.and_then(|time| made.later(time)),
    }
}

/// The coldest refrigerator that is planned for what is finished, or the limit where that is colder.
fn keep_at(component: &Component<'_>, findings: &[Finding]) -> Option<Reading> {
    let ceilings = findings.iter().filter(|f| f.rule.id == "store/fridge-temperature");
    let ceilings = ceilings.filter_map(|finding| match finding.limit {
        Some(Limit::AtMost(Measure::Temperature(at))) => Some(at),
        _ => None,
    });
    let finished = component.last_cook().map_or(0, |cook| cook.saturating_add(1));
    let kept = component.steps.iter().skip(finished);
    let kept = kept.filter(|step| step.kind == StepKind::Refrigerate);
    let planned = kept.filter_map(|step| Some(step.at?.value));
    ceilings.chain(planned).reduce(|a, b| if b < a { b } else { a })
}

/// The hottest endpoint that the authorities held print for this raw food, with the longer rest where two are
/// equally hot.
fn cook_through(recipe: &Recipe<'_>, component: &Component<'_>) -> CookThrough {
    let animals = component.animals();
    // An animal that is not named may be a bird.
    let told = animals != Animals::Unknown || !component.food.is_raw_meat();
    // The single endpoint of plants counts only with their humidity.
    let kitchens = recipe.held_to.iter().filter(|&&authority| authority != Authority::UsFsis);
    let rows = kitchens
        .filter_map(|&authority| endpoint_row(authority, component.food, animals, recipe.date));
    let read = rows.filter(|row| told && !row.row.is_from_memory());
    let order = |row: &Cited<Endpoint>| {
        (row.value.temperature.on(Scale::Fahrenheit).value(), row.value.rest.value)
    };
    CookThrough { to: read.reduce(|a, b| if order(b) > order(a) { b } else { a }) }
}

fn use_by(component: &Component<'_>, findings: &[Finding], made: Date) -> Result<Date, String> {
    let cold = component.steps.iter().filter(|step| step.kind == StepKind::Refrigerate);
    let planned = cold.filter_map(|step| step.time).map(|time| time.value.high());
    let planned = planned.reduce(|a, b| a + b);
    let safety = findings.iter().filter(|finding| finding.rule.force == Force::Safety);
    let limits = safety.filter_map(|finding| {
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
    let day = made.later(time).ok_or_else(|| "the calendar ends before it".to_owned())?;
    match component.packed_on {
        Some(packed) if packed > day => {
            Err(format!("it is packed on {packed}, and its days end on {day}"))
        }
        _ => Ok(day),
    }
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
        writeln!(f, "{}", visible(&self.what))?;
        match &self.says {
            Ok(says) => write!(f, "{says}")?,
            Err(open) => {
                let broken = open.iter().any(|one| one.verdict == Verdict::Breaks);
                f.write_str(if broken {
                    "  DO NOT USE. It does not meet:\n"
                } else {
                    "  DO NOT USE. There is no label until this is proven:\n"
                })?;
                for NotMet { rule, verdict } in open {
                    writeln!(f, "  - {} [{}]: {verdict}", rule.asks, rule.id)?;
                }
            }
        }
        let rules: Vec<_> = self.rules.iter().map(|authority| authority.key()).collect();
        let rules = if rules.is_empty() { "nobody".to_owned() } else { rules.join(", ") };
        for confirmed in &self.confirmed {
            writeln!(f, "  A figure here is from memory; {}.", visible(confirmed))?;
        }
        writeln!(f, "  Counted by the rules of {rules}. {SHORT_CAUTION}")
    }
}

impl fmt::Display for Says {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if let Some(raw) = self.raw {
            writeln!(f, "  {raw}")?;
        }
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
        match self.best_frozen {
            Some(day) => writeln!(f, "  frozen     at its best until {day}"),
            None => Ok(()),
        }
    }
}

impl fmt::Display for CookThrough {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("RAW: cook it through before eating")?;
        let Some(Cited { value, .. }) = self.to else { return Ok(()) };
        match value.temperature {
            PrintedTemperature::Fahrenheit(inside) => write!(f, ", to {inside} °F inside")?,
            PrintedTemperature::Celsius(inside) => write!(f, ", to {inside} °C inside")?,
            PrintedTemperature::Both(fahrenheit, celsius) => {
                write!(f, ", to {fahrenheit} °F ({celsius} °C) inside")?;
            }
        }
        if value.rest > seconds(0.0) {
            write!(f, ", and let it rest for {}", show_duration(value.rest))?;
        }
        Ok(())
    }
}
