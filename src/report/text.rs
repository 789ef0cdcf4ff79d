use std::fmt::Write;

use super::{CAUTIONS, Checkup, Lines, words};
use crate::cite::Seen;
use crate::finding::{Finding, Force, Verdict};
use crate::recipe::Checked;

/// The width of a line of the report.
const WIDTH: usize = 92;

/// The report of some recipes for a person to read: of each, what breaks first, then
/// what is unproven and what to add, then what meets, and at the end the cautions.
#[must_use]
pub fn to_text(checkups: &[Checkup<'_>]) -> String {
    let mut out = String::new();
    for checkup in checkups {
        recipe(&mut out, checkup);
    }
    if !checkups.is_empty() {
        out.push_str("Cautions\n");
        for caution in CAUTIONS {
            wrapped(&mut out, "  - ", "    ", caution);
        }
    }
    out
}

fn recipe(out: &mut String, checkup: &Checkup<'_>) {
    let lines = Lines::new(checkup.text);
    let held: Vec<_> = checkup.recipe.held_to.iter().map(|authority| authority.key()).collect();
    // Writing to a String cannot fail.
    let _ = writeln!(out, "{} ({})", checkup.recipe.title, checkup.path.display());
    let _ = writeln!(out, "held to {}: {}\n", held.join(", "), checkup.verdict());
    let noted = |checked: &&Checked| checked.finding.past_advice;
    let of = |verdict: Verdict| {
        checkup.findings.iter().filter(move |c| c.finding.verdict == verdict && !noted(c))
    };
    let sections = [
        ("BREAKS", of(Verdict::Breaks).collect::<Vec<_>>()),
        ("UNPROVEN: what is missing", of(Verdict::Unproven).collect()),
        ("NOTES: advice, not limits", checkup.findings.iter().filter(noted).collect()),
        ("MEETS", of(Verdict::Meets).collect()),
    ];
    if checkup.findings.is_empty() {
        out.push_str("No rule has anything to say about this recipe, so nothing is proven.\n\n");
    }
    for (heading, findings) in sections {
        if findings.is_empty() {
            continue;
        }
        let _ = writeln!(out, "{heading} ({})", findings.len());
        for checked in findings {
            finding(out, checkup.component(checked), &checked.finding, &lines);
        }
        out.push('\n');
    }
}

fn finding(out: &mut String, component: &str, finding: &Finding, lines: &Lines<'_>) {
    let (line, _) = lines.of(finding.place.start);
    let force = match finding.rule.force {
        Force::Safety => "",
        Force::Quality => ", a limit of quality",
        Force::Advice => ", advice",
    };
    let head =
        format!("{component}: {} [{}], line {line}{force}", finding.rule.asks, finding.rule.id);
    wrapped(out, "  ", "    ", &head);
    let mut field = |name: &str, value: &str| {
        wrapped(out, &format!("    {name:<8}"), "            ", value);
    };
    if let Some(found) = words::found(finding) {
        field("found", &found);
    }
    if let Some(missing) = finding.missing {
        field("missing", missing.what);
    }
    if let Some(limit) = words::limit(finding) {
        field("limit", &limit);
    }
    if let Some(margin) = words::margin(finding) {
        field("margin", &margin);
    }
    for row in finding.rows.into_iter().flatten() {
        field("printed", &format!("\"{}\"", row.printed));
        let warning = if row.citation.seen == Seen::Memory {
            " (this figure is from memory: check it)"
        } else {
            ""
        };
        field("source", &format!("{}{warning}", row.citation));
        if !row.note.is_empty() {
            field("", row.note);
        }
    }
    if let Some(mend) = words::mend(finding) {
        field("mend", &mend);
    }
    if let Some(note) = finding.note {
        field("note", note);
    }
}

/// Writes words in lines of at most [`WIDTH`] characters.
fn wrapped(out: &mut String, first: &str, rest: &str, text: &str) {
    out.push_str(first);
    let mut width = first.chars().count();
    let mut fresh = true;
    for word in text.split_whitespace() {
        let length = word.chars().count();
        if !fresh && width.saturating_add(length).saturating_add(1) > WIDTH {
            out.push('\n');
            out.push_str(rest);
            width = rest.chars().count();
            fresh = true;
        }
        if !fresh {
            out.push(' ');
            width = width.saturating_add(1);
        }
        out.push_str(word);
        width = width.saturating_add(length);
        fresh = false;
    }
    out.push('\n');
}
