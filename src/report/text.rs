use std::fmt::Write;

use anstyle::{AnsiColor, Style};

use super::{CAUTIONS, Checkup, Lines, Summary, visible, words};
use crate::finding::{Finding, Verdict};
use crate::recipe::Checked;

/// How a report for a person is set.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Layout {
    /// Characters in a line, at most, where words allow it; taken as 40 where it is less.
    pub width: usize,
    /// Whether headings are coloured, by the escape sequences of ECMA-48. Nothing is said by colour alone.
    pub colour: bool,
}

impl Default for Layout {
    /// 92 characters, without colour.
    fn default() -> Self {
        Self { width: 92, colour: false }
    }
}

impl Layout {
    fn painted(self, colour: AnsiColor, text: &str) -> String {
        if !self.colour {
            return text.to_owned();
        }
        let style = Style::new().bold().fg_color(Some(colour.into()));
        format!("{style}{text}{style:#}")
    }
}

/// What stands at the end of a report: how many came out how, where there are several, and the cautions.
pub(super) fn end(summary: &Summary, layout: Layout) -> String {
    let mut out = String::new();
    if summary.documents() > 1 {
        let counts = [
            (summary.breaks, "breaks"),
            (summary.unproven, "unproven"),
            (summary.meets, "meets"),
            (summary.accepted, "of these accepted with a reason"),
            (summary.unread, "could not be read"),
        ];
        let counts = counts.into_iter().filter(|(n, _)| *n > 0);
        let counts: Vec<_> = counts.map(|(n, what)| format!("{n} {what}")).collect();
        let counts = counts.join(", ");
        wrapped(&mut out, layout, &format!("{} documents: ", summary.documents()), "  ", &counts);
        out.push('\n');
    }
    if summary.documents() > summary.unread {
        out.push_str(&cautions(layout));
    }
    out
}

/// The cautions as a list, for the end of whatever is printed.
#[must_use]
pub fn cautions(layout: Layout) -> String {
    let mut out = "Cautions\n".to_owned();
    for caution in CAUTIONS {
        wrapped(&mut out, layout, "  - ", "    ", caution);
    }
    out
}

/// What was found in one recipe.
pub(super) fn recipe(checkup: &Checkup<'_>, layout: Layout) -> String {
    let mut out = String::new();
    let recipe = &checkup.recipe;
    let lines = Lines::new(checkup.text);
    let held: Vec<_> = recipe.held_to.iter().map(|authority| authority.key()).collect();
    let profile = recipe.profile.map_or(String::new(), |profile| format!(" ({})", profile.key));
    let accepted = match checkup.accepted() {
        0 => String::new(),
        n => format!(", {n} accepted"),
    };
    let verdict = checkup.verdict();
    let head = format!("{} ({})", recipe.title, checkup.path.display());
    wrapped(&mut out, layout, "", "  ", &head);
    let held = format!("held to {}{profile}: {verdict}{accepted}", held.join(", "));
    wrapped(&mut out, layout, "", "  ", &held);
    out.push('\n');
    let reason = |checked: &Checked| recipe.accepted(checked).map(|accepted| &accepted.reason);
    let noted = |checked: &&Checked| checked.finding.past_advice && reason(checked).is_none();
    let of = |verdict: Verdict| {
        let open = move |c: &&Checked| c.finding.verdict == verdict && !c.finding.past_advice;
        checkup.findings.iter().filter(open).filter(|checked| reason(checked).is_none())
    };
    let sections = [
        ("BREAKS", AnsiColor::Red, of(Verdict::Breaks).collect::<Vec<_>>()),
        ("UNPROVEN: what is missing", AnsiColor::Yellow, of(Verdict::Unproven).collect()),
        (
            "ACCEPTED in the document, and why",
            AnsiColor::Yellow,
            checkup.findings.iter().filter(|checked| reason(checked).is_some()).collect(),
        ),
        (
            "NOTES: advice, not limits",
            AnsiColor::Blue,
            checkup.findings.iter().filter(noted).collect(),
        ),
        ("MEETS", AnsiColor::Green, of(Verdict::Meets).collect()),
    ];
    if checkup.findings.is_empty() {
        out.push_str("No rule has anything to say about this recipe, so nothing is proven.\n\n");
    }
    for (heading, colour, findings) in sections {
        if findings.is_empty() {
            continue;
        }
        let heading = layout.painted(colour, &format!("{heading} ({})", findings.len()));
        let _ = writeln!(out, "{heading}");
        for checked in findings {
            finding(&mut out, layout, checkup, checked, &lines);
        }
        out.push('\n');
    }
    for confirmed in &recipe.confirmed {
        let (line, _) = lines.of(confirmed.place.start);
        let row = confirmed.row;
        let said = format!(
            "line {line}: {}/{} prints \"{}\": {}{}",
            row.table,
            row.key,
            row.printed,
            words::confirmation(confirmed),
            if checkup.rests_on(confirmed) { "" } else { ". No finding rests on it" },
        );
        wrapped(&mut out, layout, "Confirmed, ", "  ", &said);
        out.push('\n');
    }
    for (n, accepted, why) in recipe.accepted_in_vain(&checkup.findings) {
        let component = recipe.components.get(n).map_or("", |component| &component.name);
        let (line, _) = lines.of(accepted.place.start);
        let said = format!("line {line}: [{}] in {component}: {why}", accepted.rule.id);
        wrapped(&mut out, layout, "Not accepted, ", "  ", &said);
        out.push('\n');
    }
    out
}

fn finding(
    out: &mut String,
    layout: Layout,
    checkup: &Checkup<'_>,
    checked: &Checked,
    lines: &Lines<'_>,
) {
    let component = checkup.component(checked);
    let finding: &Finding = &checked.finding;
    let (line, _) = lines.of(finding.place.start);
    let force = words::force(finding.rule);
    let head =
        format!("{component}: {} [{}], line {line}{force}", finding.rule.asks, finding.rule.id);
    wrapped(out, layout, "  ", "    ", &head);
    let mut field = |name: &str, value: &str| {
        wrapped(out, layout, &format!("    {name:<8}"), "            ", value);
    };
    if let Some(accepted) = checkup.recipe.accepted(checked) {
        field("reason", &format!("{}, and accepted: {}", finding.verdict, accepted.reason));
    }
    if let Some(found) = words::found(finding) {
        field("found", &found);
    }
    if let Some(missing) = words::missing(finding) {
        field("missing", &missing);
    }
    if let Some(limit) = words::limit(finding) {
        field("limit", &limit);
    }
    if let Some(margin) = words::margin(finding) {
        field("margin", &margin);
    }
    for row in finding.rows.into_iter().flatten() {
        field("printed", &format!("\"{}\"", row.printed));
        field("source", &words::source(row, &checkup.recipe));
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

/// Writes words in lines of at most the width of the page.
fn wrapped(out: &mut String, layout: Layout, first: &str, rest: &str, text: &str) {
    let most = layout.width.max(40);
    out.push_str(first);
    let mut width = first.chars().count();
    let mut fresh = true;
    // A line end that is written out no longer parts words.
    for word in visible(text).split_whitespace() {
        let length = word.chars().count();
        if !fresh && width.saturating_add(length).saturating_add(1) > most {
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
