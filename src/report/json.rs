use serde::Serialize;

use super::{CAUTIONS, Checkup, Lines, Unread, VERSION, words};
use crate::cite::{Seen, Standing};
use crate::finding::{Finding, Force, Measure, Verdict};
use crate::recipe::Checked;

#[derive(Serialize)]
struct Report<'a> {
    version: u32,
    files: Vec<File<'a>>,
    unread: Vec<NotRead>,
    cautions: [&'static str; 4],
}

#[derive(Serialize)]
struct File<'a> {
    path: String,
    title: &'a str,
    held_to: Vec<&'static str>,
    verdict: Verdict,
    findings: Vec<Found<'a>>,
}

#[derive(Serialize)]
struct Found<'a> {
    rule: &'static str,
    asks: &'static str,
    force: Force,
    component: &'a str,
    verdict: Verdict,
    past_advice: bool,
    found: Option<Figure>,
    limit: Option<Bound>,
    margin: Option<String>,
    sources: Vec<Cited>,
    missing: Option<&'static str>,
    say: Option<&'static str>,
    mend: Option<String>,
    note: Option<&'static str>,
    line: usize,
    column: usize,
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

/// The same report for a machine. Its shape is `report.schema.json`.
///
/// # Errors
/// Only when serialising fails, which finite numbers and text do not.
pub fn to_json(checkups: &[Checkup<'_>], unread: &[Unread]) -> Result<String, serde_json::Error> {
    let report = Report {
        version: VERSION,
        files: checkups.iter().map(file).collect(),
        unread: unread.iter().map(not_read).collect(),
        cautions: CAUTIONS,
    };
    serde_json::to_string_pretty(&report)
}

fn file<'a>(checkup: &'a Checkup<'a>) -> File<'a> {
    let lines = Lines::new(checkup.text);
    File {
        path: checkup.path.display().to_string(),
        title: &checkup.recipe.title,
        held_to: checkup.recipe.held_to.iter().map(|authority| authority.key()).collect(),
        verdict: checkup.verdict(),
        findings: checkup.findings.iter().map(|checked| found(checkup, checked, &lines)).collect(),
    }
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
        found: figure(finding),
        limit: bound(finding),
        margin: words::margin(finding),
        sources: sources(finding),
        missing: finding.missing.map(|missing| missing.what),
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

fn sources(finding: &Finding) -> Vec<Cited> {
    let rows = finding.rows.into_iter().flatten();
    rows.map(|row| Cited {
        key: row.citation.source.key,
        document: row.citation.to_string(),
        place: row.citation.place,
        standing: row.citation.standing,
        seen: row.citation.seen,
        table: row.table,
        row: row.key,
        note: row.note,
    })
    .collect()
}

fn number(measure: &Measure) -> (f64, &'static str) {
    (words::number(measure), words::unit(measure))
}

fn not_read(unread: &Unread) -> NotRead {
    let lines = Lines::new(&unread.text);
    let faults = unread.faults.iter().map(|fault| {
        let (line, column) = lines.of(fault.place.start);
        FaultAt { line, column, message: fault.message.clone(), help: fault.help.clone() }
    });
    NotRead { path: unread.path.display().to_string(), faults: faults.collect() }
}
