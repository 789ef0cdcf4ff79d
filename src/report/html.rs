use maud::{DOCTYPE, Markup, PreEscaped, html};

use super::{
    CAUTIONS, Checkup, Drawn, Lines, SHORT_CAUTION, drawings, visible, visible_lines, words,
};
use crate::cite::Row;
use crate::cure::Pump;
use crate::finding::{Finding, Measure, Place, Verdict};
use crate::range::Range;
use crate::recipe::{Checked, Component, CurePlan, Step};
use crate::units::{Amount, Reading, Scale, Shown, Time, seconds, show_duration, show_mass};

/// One recipe as a page of HTML that needs no other file and no script: what is made of what, every step
/// with its temperatures and clocks, the records drawn, every finding, and the documents they come from.
/// It can be read on a telephone and printed; nothing is said by colour alone.
#[must_use]
pub fn to_html(checkup: &Checkup<'_>) -> String {
    let recipe = &checkup.recipe;
    let sources = sources(checkup);
    let lines = Lines::new(checkup.text);
    let verdict = checkup.verdict();
    let held: Vec<_> = recipe.held_to.iter().map(|authority| authority.key()).collect();
    // A record that cannot be drawn is in the findings all the same.
    let drawn = drawings(checkup).unwrap_or_default();
    let page = Page { checkup, lines: &lines, sources: &sources };
    let of = |verdict| checkup.findings.iter().filter(move |c| c.finding.verdict == verdict);
    let counts = [Verdict::Breaks, Verdict::Unproven, Verdict::Meets];
    let counts = counts.map(|verdict| (verdict, of(verdict).count()));
    let written = html! {
        (DOCTYPE)
        html lang="en" {
            head {
                meta charset="utf-8";
                meta name="viewport" content="width=device-width, initial-scale=1";
                title { (recipe.title) }
                style { (PreEscaped(include_str!("page.css"))) }
            }
            body {
                header {
                    h1 { (recipe.title) }
                    p .board.(verdict.words()) { (sign(verdict)) " " strong { (verdict) } }
                    p { (SHORT_CAUTION) }
                    p {
                        "Held to " (held.join(", "))
                        @if let Some(profile) = recipe.profile { " (" (profile.key) ": " (profile.says) ")" }
                        ": "
                        @for (n, (verdict, count)) in counts.iter().enumerate() {
                            @if n > 0 { ", " }
                            (count) " " (verdict)
                        }
                        @if checkup.accepted() > 0 { ", " (checkup.accepted()) " accepted with a reason" }
                        "."
                    }
                    (page.open())
                    p .dim { (visible(&checkup.path.display().to_string())) }
                }
                main {
                    p .dim {
                        "How to read the steps. Bar: around the food. Dot: inside it. Dashed: a limit that a finding of the step names. Below a finding, filled: how long it was; mark: the limit of it."
                    }
                    @for (n, component) in recipe.components.iter().enumerate() {
                        (page.component(n, component, drawn.iter().find(|drawn| drawn.component == n)))
                    }
                    (page.in_vain())
                    section {
                        h2 { "Documents" }
                        @if sources.is_empty() { p { "None: no figure of a document was needed." } }
                        ol {
                            @for row in &sources {
                                li id=(format!("document-{}", row.citation.source.key)) {
                                    (row.citation.source.title)
                                    @if !row.citation.source.edition.is_empty() { ", " (row.citation.source.edition) }
                                }
                            }
                        }
                    }
                }
                footer {
                    h2 { "Cautions" }
                    ul { @for caution in CAUTIONS { li { (caution) } } }
                    p .dim { "Made by greenweight " (env!("CARGO_PKG_VERSION")) "." }
                }
            }
        }
    };
    visible_lines(&written.into_string()).into_owned()
}

/// A sign beside the word, for whoever sees no colours.
const fn sign(verdict: Verdict) -> &'static str {
    match verdict {
        Verdict::Meets => "✓",
        Verdict::Unproven => "?",
        Verdict::Breaks => "✗",
    }
}

/// A row of each document that is cited, in the order of the findings.
fn sources(checkup: &Checkup<'_>) -> Vec<&'static Row> {
    let mut sources: Vec<&'static Row> = Vec::new();
    for row in checkup.findings.iter().flat_map(|c| c.finding.rows).flatten() {
        if !sources.iter().any(|known| known.citation.source.key == row.citation.source.key) {
            sources.push(row);
        }
    }
    sources
}

struct Page<'p, 'a> {
    checkup: &'p Checkup<'a>,
    lines: &'p Lines<'p>,
    sources: &'p [&'static Row],
}

impl Page<'_, '_> {
    fn component(&self, n: usize, component: &Component<'_>, drawn: Option<&Drawn>) -> Markup {
        let of = self.checkup.findings.iter().filter(|checked| checked.component == n);
        let findings: Vec<_> = of.map(|checked| (self.checkup.step_of(checked), checked)).collect();
        let general = findings.iter().filter(|(step, _)| step.is_none());
        let general: Vec<_> = general.map(|(_, checked)| *checked).collect();
        html! {
            section {
                h2 { (component.name) }
                p .dim { (component.food.key().replace('-', " ")) @if component.raw { ", sold raw" } }
                @if !component.ingredients.is_empty() {
                    h3 { "What goes in" }
                    table .tight {
                        @for ingredient in &component.ingredients {
                            tr {
                                td { (ingredient.name) }
                                td { (self.written(ingredient.place, ingredient.amount)) }
                                td .dim { (ingredient.kind.key().replace('-', " ")) }
                            }
                        }
                    }
                }
                @if let Some(cure) = &component.cure {
                    h3 { "How it is cured" }
                    p { (cured(cure)) }
                }
                @if !component.steps.is_empty() {
                    h3 { "What is done" }
                    (self.steps(component, &findings))
                }
                @if let Some(drawn) = drawn {
                    @for svg in [&drawn.record, &drawn.cooling].into_iter().flatten() {
                        figure tabindex="0" { (PreEscaped(svg)) }
                    }
                }
                @if !general.is_empty() {
                    h3 { "Findings on the whole" }
                    @for checked in general { (self.finding(checked)) }
                }
            }
        }
    }

    /// An amount as its document writes it.
    fn written(&self, place: Place, amount: Option<Amount>) -> String {
        let text = self.checkup.text.get(place.start..place.end).unwrap_or_default();
        match amount {
            Some(_) if text.starts_with(['"', '\'']) => text.trim_matches(['"', '\'']).to_owned(),
            Some(Amount::Weighed(mass)) => show_mass(mass).to_string(),
            _ => String::new(),
        }
    }

    /// The steps, each with the findings that point into it.
    fn steps(&self, component: &Component<'_>, findings: &[(Option<usize>, &Checked)]) -> Markup {
        let axis = Axis::of(component, findings.iter().map(|(_, checked)| &checked.finding));
        let mut began = Some(0.0);
        html! {
            ol .steps {
                @for (n, step) in component.steps.iter().enumerate() {
                    @let of = findings.iter().filter(|(at, _)| *at == Some(n));
                    @let of: Vec<_> = of.map(|(_, checked)| *checked).collect();
                    li {
                        div {
                            div .what { (n.saturating_add(1)) ". " (step.kind.key().replace('-', " ")) }
                            div .dim { (begins(began)) }
                            @for said in said(step) { div { (said) } }
                        }
                        div { @if let Some(axis) = &axis { (axis.strip(step, &of)) } }
                        div .more { @for checked in of { (self.finding(checked)) } }
                    }
                    @let time = step.time.map(|time| time.value.high().value);
                    @let passed = match (began, time) {
                        (Some(began), Some(time)) => Some(began + time),
                        // What only says how it ends takes a time that nobody wrote.
                        _ => None,
                    };
                    ({ began = passed; PreEscaped("") })
                }
            }
        }
    }

    fn finding(&self, checked: &Checked) -> Markup {
        let finding = &checked.finding;
        let accepted = self.checkup.recipe.accepted(checked);
        let class = match finding.verdict {
            _ if accepted.is_some() => "accepted",
            Verdict::Meets if finding.past_advice => "note",
            verdict => verdict.words(),
        };
        let word = if finding.past_advice { "past advice" } else { finding.verdict.words() };
        let (line, _) = self.lines.of(finding.place.start);
        let force = words::force(finding.rule);
        let rows: Vec<_> = finding.rows.into_iter().flatten().collect();
        let open = !finding.is_met();
        html! {
            details .finding.(class) open[open] id=[open.then(|| self.anchor(checked))] {
                summary .head {
                    (sign(finding.verdict)) " " (finding.rule.asks) ": " (word)
                    @if finding.is_from_memory() { ", by a figure from memory" }
                }
                @if let Some(accepted) = accepted { p { strong { "Accepted: " } (accepted.reason) } }
                (clock(finding))
                dl {
                    @if let Some(found) = words::found(finding) { dt { "found" } dd { (found) } }
                    @if let Some(missing) = words::missing(finding) { dt { "missing" } dd { (missing) } }
                    @if let Some(limit) = words::limit(finding) { dt { "limit" } dd { (limit) } }
                    @if let Some(mend) = words::mend(finding) { dt { "mend" } dd { (mend) } }
                    @for row in rows {
                        dt { "printed" } dd { "“" (row.printed) "”" }
                        dt { "source" }
                        dd {
                            a href=(format!("#document-{}", row.citation.source.key)) {
                                "[" (self.number(row)) "] "
                            }
                            (row.citation.place) ", " (row.citation.standing.words()) ", " (row.citation.seen.words())
                            @if row.is_from_memory() {
                                @match self.checkup.recipe.confirmation(row) {
                                    Some(confirmed) => strong { " (" (words::confirmation(confirmed)) ")" },
                                    None => strong { " (check it)" },
                                }
                            }
                            @if !row.note.is_empty() { ". " (row.note) }
                        }
                    }
                    @if let Some(note) = finding.note { dt { "note" } dd { (note) } }
                }
                p .dim { code { (finding.rule.id) } ", line " (line) (force) }
            }
        }
    }

    /// What is to be mended or answered for, each with the way to it.
    fn open(&self) -> Markup {
        let order = |checked: &&Checked| core::cmp::Reverse(checked.finding.verdict);
        let open = |checked: &&Checked| checked.finding.verdict != Verdict::Meets;
        let mut found: Vec<_> = self.checkup.findings.iter().filter(open).collect();
        found.sort_by_key(order);
        html! {
            @if !found.is_empty() {
                ul .open {
                    @for checked in found {
                        @let finding = &checked.finding;
                        @let accepted = self.checkup.recipe.accepted(checked).is_some();
                        li .(finding.verdict.words()) {
                            (sign(finding.verdict)) " "
                            a href=(format!("#{}", self.anchor(checked))) {
                                (self.checkup.component(checked)) ": " (finding.rule.asks)
                            }
                            " " (finding.verdict) @if accepted { ", accepted" }
                            @if let Some(limit) = words::limit(finding) { " (" (limit) ")" }
                        }
                    }
                }
            }
        }
    }

    fn anchor(&self, checked: &Checked) -> String {
        let at = self.checkup.findings.iter().position(|other| core::ptr::eq(other, checked));
        format!("finding-{}", at.unwrap_or_default())
    }

    fn number(&self, row: &Row) -> usize {
        let key = row.citation.source.key;
        let at = self.sources.iter().position(|known| known.citation.source.key == key);
        at.map_or(0, |at| at.saturating_add(1))
    }

    fn in_vain(&self) -> Markup {
        let recipe = &self.checkup.recipe;
        let in_vain: Vec<_> = recipe.accepted_in_vain(&self.checkup.findings).collect();
        html! {
            @if !in_vain.is_empty() {
                section {
                    h2 { "Not accepted" }
                    ul {
                        @for (_, accepted, why) in in_vain {
                            li { code { (accepted.rule.id) } ": " (why) }
                        }
                    }
                }
            }
        }
    }
}

fn begins(at: Option<f64>) -> String {
    match at {
        Some(at) if at > 0.0 => format!("after {}", show_duration(seconds(at))),
        Some(_) => "at the beginning".to_owned(),
        None => "then".to_owned(),
    }
}

fn time(range: Range<Time>) -> String {
    words::times(range.low(), range.high())
}

/// How a cure reaches the meat, in words.
fn cured(cure: &CurePlan) -> String {
    let method = cure.method.map(|method| method.key().replace('-', " "));
    let percent = |pump: Pump| Shown::new(100.0 * pump.fraction(), "%");
    let taken = cure.taken_up.map(|taken| {
        let (low, high) = (percent(taken.low()).to_string(), percent(taken.high()).to_string());
        let share = words::ends(&low, &high);
        format!("{share} of green weight taken up")
    });
    let at = cure.at.map(|at| format!("at {}", at.value));
    let time = cure.time.map(|range| format!("for {}", time(range.value)));
    let said: Vec<_> = [method, taken, at, time].into_iter().flatten().collect();
    if said.is_empty() { "the document does not say".to_owned() } else { said.join(", ") }
}

/// What a step says, in words.
fn said(step: &Step) -> Vec<String> {
    let shown = |reading: Reading| format!("{reading}");
    let mut said = Vec::new();
    let mut add = |said_of: Option<String>| said.extend(said_of);
    add(step.at.map(|at| format!("at {}", shown(at.value))));
    add(step.time.map(|range| format!("for {}", time(range.value))));
    add(step.to.map(|to| format!("to {} inside", shown(to.value))));
    add(step.hold.map(|hold| format!("held {}", time(hold.value))));
    add(step.come_up.map(|come_up| format!("coming up in {}", time(come_up.value))));
    add(step.moisture.map(|moisture| moisture.key().replace('-', " ")));
    add(step.how.map(|how| how.key().replace('-', " ")));
    add(step.vacuum.then(|| "without air".to_owned()));
    add(step.like.map(|row| format!("like {}", row.row.key)));
    said
}

/// A clock that ran, against its end: both on one track, which is as long as the longer of them and a quarter.
fn clock(finding: &Finding) -> Markup {
    let of = |measure: &Measure| match measure {
        Measure::Duration(time) => Some(time.value),
        Measure::Held(held) => Some(held.time.value),
        _ => None,
    };
    let ran = finding.found.and_then(|found| of(&found.high()));
    let end = finding.limit.and_then(|limit| of(&limit.figures().0));
    let (Some(ran), Some(end)) = (ran.filter(|ran| ran.is_finite()), end) else { return html! {} };
    let track = 1.25 * ran.max(end);
    if track <= 0.0 {
        return html! {};
    }
    let percent = |time: f64| format!("{:.1}%", 100.0 * time / track);
    html! {
        div .clock role="img" aria-label="how long it was, and the mark of the limit" {
            div .ran style=(format!("width:{}", percent(ran))) {}
            div .end style=(format!("left:{}", percent(end))) {}
        }
    }
}

/// The temperatures of the steps of a component on one axis.
struct Axis {
    scale: Scale,
    low: f64,
    high: f64,
}

const WIDTH: f64 = 440.0;

impl Axis {
    fn of<'f>(
        component: &Component<'_>,
        findings: impl Iterator<Item = &'f Finding>,
    ) -> Option<Self> {
        let steps = component.steps.iter();
        let mut readings: Vec<Reading> =
            steps.flat_map(|step| [step.at, step.to]).flatten().map(|at| at.value).collect();
        let scale = readings.first()?.scale();
        readings.extend(findings.flat_map(limits));
        let values = || readings.iter().map(|reading| reading.on(scale).value());
        let (low, high) =
            (values().fold(f64::INFINITY, f64::min), values().fold(f64::NEG_INFINITY, f64::max));
        let margin = (0.08 * (high - low)).max(5.0);
        Some(Self { scale, low: low - margin, high: high + margin })
    }

    fn x(&self, reading: Reading) -> f64 {
        WIDTH * (reading.on(self.scale).value() - self.low) / (self.high - self.low)
    }

    /// Around the food, inside it, and the limits that its findings name.
    fn strip(&self, step: &Step, findings: &[&Checked]) -> Markup {
        let around = step.at.map(|at| at.value);
        let inside = step.to.map(|to| to.value);
        if around.is_none() && inside.is_none() {
            return html! {};
        }
        let limits: Vec<_> = findings.iter().flat_map(|checked| limits(&checked.finding)).collect();
        let label = |x: f64| if x > 0.7 * WIDTH { ("end", -6.0) } else { ("start", 6.0) };
        let one = |x: f64| format!("{x:.1}");
        html! {
            svg .strip viewBox=(format!("0 0 {WIDTH} 56")) role="img" aria-label="temperatures of this step" {
                line .axis x1="0" x2=(WIDTH) y1="28" y2="28" {}
                @if let Some(at) = around {
                    @let x = self.x(at);
                    @let (anchor, aside) = label(x);
                    rect .around x="0" y="22" height="12" width=(one(x)) {}
                    text x=(one(x + aside)) y="50" text-anchor=(anchor) { "around " (at) }
                }
                @if let Some(to) = inside {
                    @let x = self.x(to);
                    @let (anchor, aside) = label(x);
                    circle .inside cx=(one(x)) cy="28" r="6" {}
                    text x=(one(x + aside)) y="14" text-anchor=(anchor) { "inside " (to) }
                }
                @for limit in limits {
                    line .limit x1=(one(self.x(limit))) x2=(one(self.x(limit))) y1="18" y2="38" {}
                }
            }
        }
    }
}

/// The temperatures that the limit of a finding names.
fn limits(finding: &Finding) -> impl Iterator<Item = Reading> + use<> {
    let figures = finding.limit.map(|limit| limit.figures());
    let (first, second) = figures.map_or((None, None), |(a, b)| (Some(a), b));
    [first, second].into_iter().flatten().filter_map(|measure| match measure {
        Measure::Temperature(reading) => Some(reading),
        Measure::Held(held) => Some(held.at),
        _ => None,
    })
}
