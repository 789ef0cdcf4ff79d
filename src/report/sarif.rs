use percent_encoding::{AsciiSet, NON_ALPHANUMERIC, utf8_percent_encode};
use serde_json::{Value, json};

use super::{Checkup, Lines, Unread, words};
use crate::finding::{Finding, Force, Place, Rule, Verdict};
use crate::recipe::{Checked, Fault, RULES};

/// What stands in a path as it is.
const PATH: &AsciiSet =
    &NON_ALPHANUMERIC.remove(b'/').remove(b'-').remove(b'_').remove(b'.').remove(b'~');

/// The same for code hosts, as SARIF 2.1.0: every finding that breaks, is unproven or departs from advice,
/// on its line. What meets is left out.
///
/// An unproven finding fails the check as a broken one does, and is a warning; only a broken limit of
/// safety is an error, and advice is a note.
///
/// # Errors
/// Only when serialising fails, which text and whole numbers do not.
pub fn to_sarif(checkups: &[Checkup<'_>], unread: &[Unread]) -> Result<String, serde_json::Error> {
    let rules: Vec<&Rule> = RULES.iter().flat_map(|room| room.iter()).collect();
    let mut results = Vec::new();
    for checkup in checkups {
        let lines = Lines::new(checkup.text);
        let shown = |checked: &&Checked| {
            checked.finding.verdict != Verdict::Meets || checked.finding.past_advice
        };
        for checked in checkup.findings.iter().filter(shown) {
            results.push(result(checkup, checked, &rules, &lines));
        }
    }
    let notifications: Vec<_> = unread
        .iter()
        .flat_map(|unread| {
            let lines = Lines::new(&unread.text);
            unread.faults.iter().map(move |fault| notification(unread, fault, &lines))
        })
        .collect();
    serde_json::to_string_pretty(&json!({
        "$schema": "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json",
        "version": "2.1.0",
        "runs": [{
            "tool": { "driver": {
                "name": env!("CARGO_PKG_NAME"),
                "version": env!("CARGO_PKG_VERSION"),
                "rules": rules.iter().map(|rule| reporting(rule)).collect::<Vec<_>>(),
            }},
            "columnKind": "unicodeCodePoints",
            "invocations": [{
                "executionSuccessful": unread.is_empty(),
                "toolExecutionNotifications": notifications,
            }],
            "results": results,
        }],
    }))
}

fn reporting(rule: &Rule) -> Value {
    let level = match rule.force {
        Force::Safety => "error",
        Force::Quality => "warning",
        Force::Advice => "note",
    };
    json!({
        "id": rule.id,
        "shortDescription": { "text": rule.asks },
        "defaultConfiguration": { "level": level },
    })
}

fn result(checkup: &Checkup<'_>, checked: &Checked, rules: &[&Rule], lines: &Lines<'_>) -> Value {
    let finding = &checked.finding;
    let component = checkup.component(checked);
    let level = match (finding.verdict, finding.rule.force) {
        (Verdict::Breaks, Force::Safety) => "error",
        (Verdict::Breaks | Verdict::Unproven, _) => "warning",
        (Verdict::Meets, _) => "note",
    };
    let index = rules.iter().position(|rule| rule.id == finding.rule.id);
    json!({
        "ruleId": finding.rule.id,
        "ruleIndex": index,
        "kind": "fail",
        "level": level,
        "message": { "text": message(component, finding) },
        "locations": [{
            "physicalLocation": {
                "artifactLocation": { "uri": uri(checkup.path.display().to_string()) },
                "region": region(finding.place, lines),
            },
            "logicalLocations": [{ "name": component }],
        }],
        "properties": { "verdict": finding.verdict.words() },
    })
}

/// What a reader sees beside the line: the verdict, the figures, the document and the mend.
fn message(component: &str, finding: &Finding) -> String {
    let mut text = format!("{component}: {}: {}.", finding.rule.asks, finding.verdict.words());
    let mut add = |name: &str, value: Option<String>| {
        if let Some(value) = value {
            text.push_str(&format!(" {name}: {value}."));
        }
    };
    add("Found", words::found(finding));
    add("Limit", words::limit(finding));
    add("Missing", finding.missing.map(|missing| missing.what.to_owned()));
    let source = finding.rows.into_iter().flatten().next();
    add("Source", source.map(|row| row.citation.to_string()));
    add("Mend", words::mend(finding));
    add("Note", finding.note.map(|note| note.trim_end_matches('.').to_owned()));
    text
}

fn notification(unread: &Unread, fault: &Fault, lines: &Lines<'_>) -> Value {
    let help = fault.help.as_ref().map_or(String::new(), |help| format!(" ({help})"));
    json!({
        "level": "error",
        "message": { "text": format!("{}{help}", fault.message) },
        "locations": [{ "physicalLocation": {
            "artifactLocation": { "uri": uri(unread.path.display().to_string()) },
            "region": region(fault.place, lines),
        }}],
    })
}

fn region(place: Place, lines: &Lines<'_>) -> Value {
    let ((line, column), (end_line, end_column)) = (lines.of(place.start), lines.of(place.end));
    json!({
        "startLine": line,
        "startColumn": column,
        "endLine": end_line,
        "endColumn": end_column,
    })
}

fn uri(path: String) -> String {
    let path = path.replace('\\', "/");
    utf8_percent_encode(&path, PATH).to_string()
}
