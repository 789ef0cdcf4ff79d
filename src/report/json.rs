use std::io::{self, Write};

use serde::Serialize;

use super::{Checkup, Lines, Unread, VERSION, words};
use crate::cite::{Seen, Standing};
use crate::finding::{Finding, Force, Measure, Verdict};
use crate::recipe::Checked;

#[derive(Serialize)]
struct File<'a> {
    path: String,
    title: &'a str,
    profile: Option<&'static str>,
    held_to: Vec<&'static str>,
    verdict: Verdict,
    settled: bool,
    findings: Vec<Found<'a>>,
    confirmed: Vec<ConfirmedRow<'a>>,
    accepted_in_vain: Vec<InVain<'a>>,
}

/// A row from memory, and who says to have read it.
#[derive(Serialize)]
struct ConfirmedRow<'a> {
    table: &'static str,
    row: &'static str,
    printed: &'static str,
    document: &'a str,
    place: &'a str,
    on: String,
    line: usize,
    /// Whether a finding rests on it.
    used: bool,
}

#[derive(Serialize)]
struct InVain<'a> {
    rule: &'static str,
    component: &'a str,
    reason: &'a str,
    why: &'static str,
    line: usize,
}

#[derive(Serialize)]
struct Found<'a> {
    rule: &'static str,
    asks: &'static str,
    force: Force,
    component: &'a str,
    verdict: Verdict,
    past_advice: bool,
    accepted: Option<&'a str>,
    found: Option<Figure>,
    limit: Option<Bound>,
    margin: Option<String>,
    sources: Vec<Cited>,
    missing: Option<&'static str>,
    gap: Option<Gap>,
    say: Option<&'static str>,
    mend: Option<String>,
    note: Option<&'static str>,
    line: usize,
    column: usize,
}

/// A gap between two readings, in seconds since the record began.
#[derive(Serialize)]
struct Gap {
    from: f64,
    to: f64,
}

/// A figure in words, and as numbers with their unit.
#[derive(Serialize)]
struct Figure {
    text: String,
    nominal: Option<f64>,
    low: f64,
    /// `null` where it is not known how high it may be.
    high: Option<f64>,
    unit: &'static str,
}

#[derive(Serialize)]
struct Bound {
    text: String,
    operator: &'static str,
    figure: f64,
    second: Option<f64>,
    unit: &'static str,
    printed: Option<&'static str>,
}

#[derive(Serialize)]
struct Cited {
    key: &'static str,
    document: String,
    place: &'static str,
    standing: Standing,
    seen: Seen,
    /// Whether the recipe confirms the row.
    confirmed: bool,
    table: &'static str,
    row: &'static str,
    note: &'static str,
}

#[derive(Serialize)]
struct NotRead {
    path: String,
    faults: Vec<FaultAt>,
}

#[derive(Serialize)]
struct FaultAt {
    line: usize,
    column: usize,
    message: String,
    help: Option<String>,
}

pub(super) fn begin(out: &mut impl Write) -> io::Result<()> {
    write!(out, "{{\n\"version\": {VERSION},\n\"files\": [")
}

pub(super) fn end(out: &mut impl Write, unread: &str, cautions: &[&str]) -> io::Result<()> {
    let cautions = serde_json::to_string_pretty(cautions)?;
    writeln!(out, "\n],\n\"unread\": [\n{unread}\n],\n\"cautions\": {cautions}\n}}")
}

pub(super) fn file(checkup: &Checkup<'_>) -> Result<String, serde_json::Error> {
    let lines = Lines::new(checkup.text);
    let recipe = &checkup.recipe;
    let in_vain = recipe.accepted_in_vain(&checkup.findings);
    serde_json::to_string_pretty(&File {
        path: checkup.path.display().to_string(),
        title: &recipe.title,
        profile: recipe.profile.map(|profile| profile.key),
        held_to: recipe.held_to.iter().map(|authority| authority.key()).collect(),
        verdict: checkup.verdict(),
        settled: checkup.settled(),
        findings: checkup.findings.iter().map(|checked| found(checkup, checked, &lines)).collect(),
        confirmed: recipe
            .confirmed
            .iter()
            .map(|confirmed| ConfirmedRow {
                table: confirmed.row.table,
                row: confirmed.row.key,
                printed: confirmed.row.printed,
                document: &confirmed.document,
                place: &confirmed.at,
                on: confirmed.on.to_string(),
                line: lines.of(confirmed.place.start).0,
                used: checkup.rests_on(confirmed),
            })
            .collect(),
        accepted_in_vain: in_vain
            .map(|(n, accepted, why)| InVain {
                rule: accepted.rule.id,
                component: recipe.components.get(n).map_or("", |component| &component.name),
                reason: &accepted.reason,
                why,
                line: lines.of(accepted.place.start).0,
            })
            .collect(),
    })
}

fn found<'a>(checkup: &'a Checkup<'a>, checked: &Checked, lines: &Lines<'_>) -> Found<'a> {
    let finding = &checked.finding;
    let (line, column) = lines.of(finding.place.start);
    Found {
        rule: finding.rule.id,
        asks: finding.rule.asks,
        force: finding.rule.force,
        component: checkup.component(checked),
        verdict: finding.verdict,
        past_advice: finding.past_advice,
        accepted: checkup.recipe.accepted(checked).map(|accepted| accepted.reason.as_ref()),
        found: figure(finding),
        limit: bound(finding),
        margin: words::margin(finding),
        sources: sources(finding, checkup),
        missing: finding.missing.map(|missing| missing.what),
        gap: finding.gap.map(|gap| Gap { from: gap.low().value, to: gap.high().value }),
        say: finding.missing.map(|missing| missing.say),
        mend: words::mend(finding),
        note: finding.note,
        line,
        column,
    }
}

fn figure(finding: &Finding) -> Option<Figure> {
    let range = finding.found?;
    let (low, unit) = number(&range.low());
    let (high, _) = number(&range.high());
    Some(Figure {
        text: words::found(finding)?,
        nominal: finding.nominal.map(|nominal| number(&nominal).0),
        low,
        high: high.is_finite().then_some(high),
        unit,
    })
}

fn bound(finding: &Finding) -> Option<Bound> {
    let limit = finding.limit?;
    let (first, second) = limit.figures();
    let (figure, unit) = number(&first);
    Some(Bound {
        text: words::limit(finding)?,
        operator: limit.operator(),
        figure,
        second: second.map(|second| number(&second).0),
        unit,
        printed: finding.rows.into_iter().flatten().next().map(|row| row.printed),
    })
}

fn sources(finding: &Finding, checkup: &Checkup<'_>) -> Vec<Cited> {
    let rows = finding.rows.into_iter().flatten();
    rows.map(|row| Cited {
        key: row.citation.source.key,
        document: row.citation.to_string(),
        place: row.citation.place,
        standing: row.citation.standing,
        seen: row.citation.seen,
        confirmed: checkup.recipe.confirmation(row).is_some(),
        table: row.table,
        row: row.key,
        note: row.note,
    })
    .collect()
}

fn number(measure: &Measure) -> (f64, &'static str) {
    (measure.number(), words::unit(measure))
}

pub(super) fn not_read(unread: &Unread) -> Result<String, serde_json::Error> {
    let lines = Lines::new(&unread.text);
    let faults = unread.faults.iter().map(|fault| {
        let (line, column) = lines.of(fault.place.start);
        FaultAt { line, column, message: fault.message.clone(), help: fault.help.clone() }
    });
    let path = unread.path.display().to_string();
    serde_json::to_string_pretty(&NotRead { path, faults: faults.collect() })
}
