use std::io::{self, Write};

use percent_encoding::{AsciiSet, NON_ALPHANUMERIC, utf8_percent_encode};
use serde_json::{Value, json};

use super::{CAUTIONS, Checkup, Lines, SHORT_CAUTION, Unread, in_words, visible, words};
use crate::finding::{Force, Place, Rule, Verdict};
use crate::recipe::{Checked, Fault, rules};

const SCHEMA: &str =
    "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

/// What stands in a path as it is.
const PATH: &AsciiSet =
    &NON_ALPHANUMERIC.remove(b'/').remove(b'-').remove(b'_').remove(b'.').remove(b'~');

pub(super) fn begin(out: &mut impl Write) -> io::Result<()> {
    let described: Vec<_> = rules().map(reporting).collect();
    let driver = json!({
        "name": env!("CARGO_PKG_NAME"),
        "version": env!("CARGO_PKG_VERSION"),
        "fullDescription": { "text": CAUTIONS.join(" ") },
        "rules": described,
    });
    let driver = serde_json::to_string_pretty(&driver)?;
    write!(
        out,
        "{{\n\"$schema\": \"{SCHEMA}\",\n\"version\": \"2.1.0\",\n\"runs\": [{{\n\"tool\": {{ \"driver\": {driver} }},\n\"columnKind\": \"unicodeCodePoints\",\n\"results\": ["
    )
}

pub(super) fn end(out: &mut impl Write, notifications: &str) -> io::Result<()> {
    let successful = notifications.is_empty();
    writeln!(
        out,
        "\n],\n\"invocations\": [{{\n\"executionSuccessful\": {successful},\n\"toolExecutionNotifications\": [\n{notifications}\n]\n}}]\n}}]\n}}"
    )
}

/// The results of a document, apart by commas.
pub(super) fn results(checkup: &Checkup<'_>) -> Result<String, serde_json::Error> {
    let lines = Lines::new(checkup.text);
    let shown = checkup.findings.iter().filter(|checked| !checked.finding.is_met());
    apart_by_commas(shown.map(|checked| result(checkup, checked, &lines)))
}

/// Why a document could not be read, apart by commas.
pub(super) fn notifications(unread: &Unread) -> Result<String, serde_json::Error> {
    let lines = Lines::new(&unread.text);
    apart_by_commas(unread.faults.iter().map(|fault| notification(unread, fault, &lines)))
}

fn apart_by_commas(items: impl Iterator<Item = Value>) -> Result<String, serde_json::Error> {
    let items = items.map(|item| serde_json::to_string_pretty(&item));
    Ok(items.collect::<Result<Vec<_>, _>>()?.join(",\n"))
}

fn reporting(rule: &Rule) -> Value {
    let level = match rule.force {
        Force::Safety => "error",
        Force::Quality => "warning",
        Force::Advice => "note",
    };
    let words = in_words(rule);
    let (why, mend) = words.map_or(("", ""), |words| (words.why, words.mend));
    json!({
        "id": rule.id,
        "shortDescription": { "text": rule.asks },
        "fullDescription": { "text": why },
        "help": { "text": format!("{mend} {SHORT_CAUTION}") },
        "defaultConfiguration": { "level": level },
    })
}

fn result(checkup: &Checkup<'_>, checked: &Checked, lines: &Lines<'_>) -> Value {
    let finding = &checked.finding;
    let component = visible(checkup.component(checked));
    let seen: Vec<_> = finding.rows.into_iter().flatten().map(|row| row.citation.seen).collect();
    let level = match (finding.verdict, finding.rule.force) {
        (Verdict::Breaks, Force::Safety) => "error",
        (Verdict::Breaks | Verdict::Unproven, _) => "warning",
        (Verdict::Meets, _) => "note",
    };
    let index = rules().position(|rule| rule.id == finding.rule.id);
    let accepted = checkup.recipe.accepted(checked);
    let suppressed =
        accepted.map(|accepted| json!({ "kind": "inSource", "justification": accepted.reason }));
    json!({
        "ruleId": finding.rule.id,
        "ruleIndex": index,
        "kind": "fail",
        "level": level,
        "message": { "text": format!("{component}: {}", words::sentences(finding, &checkup.recipe)) },
        "locations": [{
            "physicalLocation": {
                "artifactLocation": { "uri": uri(checkup.path.display().to_string()) },
                "region": region(finding.place, lines),
            },
            "logicalLocations": [{ "name": component }],
        }],
        "suppressions": suppressed.into_iter().collect::<Vec<_>>(),
        "properties": { "verdict": finding.verdict.words(), "seen": seen },
    })
}

fn notification(unread: &Unread, fault: &Fault, lines: &Lines<'_>) -> Value {
    let help = fault.help.as_ref().map_or(String::new(), |help| format!(" ({help})"));
    json!({
        "level": "error",
        "message": { "text": visible(&format!("{}{help}", fault.message)) },
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
