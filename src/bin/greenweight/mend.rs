//! Changes to a document that mend what was found in it, each tried before it is shown.

use std::io::Write;
use std::path::{Path, PathBuf};
use std::process::ExitCode;

use similar::TextDiff;
use toml_edit::{Document, Item, Table};

use greenweight::finding::{Mend, Verdict};
use greenweight::recipe::Checked;
use greenweight::report::{Checkup, Layout, Outcome, cautions, visible_lines};
use greenweight::units::{Mass, MassUnit, show_duration};

use crate::files::{self, named};
use crate::output::{Output, complain, shown, unwritten};

pub(crate) fn mend_all(arguments: &[PathBuf], write: bool) -> ExitCode {
    let (mut any, mut failed) = (false, false);
    let mut out = Output::new();
    let mut printed = Ok(());
    for named in named(arguments) {
        let document = files::Document::open(&named);
        if document.check_or_explain().is_none() {
            failed = true;
            continue;
        }
        let before = document.text.as_deref().unwrap_or_default();
        let after = mended(&document);
        if after == before {
            continue;
        }
        any = true;
        let name = shown(&document.path);
        // What was asked for is done, whether or not it can be shown.
        if write && let Err(error) = replace(&document.path, &after) {
            complain(format!("{name} cannot be written: {error}"));
            failed = true;
        }
        let difference = TextDiff::from_lines(before, &after);
        let difference = difference.unified_diff().header(&name, &name).to_string();
        printed = printed.and_then(|()| out.write_all(visible_lines(&difference).as_bytes()));
    }
    if any {
        let end = format!("\n{}", cautions(Layout::default()));
        printed = printed.and_then(|()| out.write_all(end.as_bytes()));
    }
    if let Err(error) = printed.and_then(|()| out.flush()) {
        complain(unwritten(&error));
        failed = true;
    }
    match (failed, any && !write) {
        (true, _) => ExitCode::from(2),
        (false, true) => ExitCode::from(1),
        (false, false) => ExitCode::SUCCESS,
    }
}

/// The document with every change that helps, one at a time: the findings are gone through until none of their
/// changes does.
fn mended(document: &files::Document) -> String {
    let mut text = document.text.as_deref().unwrap_or_default().to_owned();
    // Each change that is kept leaves less to mend, so there is an end.
    while let Some(better) = gone_through(&document.path, &text) {
        text = better;
    }
    text
}

/// The document after one way through its findings; `None` where no change helped.
fn gone_through(path: &Path, text: &str) -> Option<String> {
    let (mut better, mut from) = (None, 0);
    loop {
        let text = better.as_deref().unwrap_or(text);
        let document = files::Document { path: path.to_owned(), text: Ok(text.to_owned()) };
        let Outcome::Checked(checkup) = document.check() else { return better };
        let open = open(&checkup);
        let later = checkup.findings.iter().enumerate().skip(from);
        let mut next =
            later.filter_map(|(n, checked)| Some((n, helpful(&checkup, checked, open)?)));
        let Some((n, text)) = next.next() else { return better };
        (better, from) = (Some(text), n);
    }
}

/// The document with the change of a finding, where the check of it finds less to mend and nothing else worse.
fn helpful(checkup: &Checkup<'_>, checked: &Checked, open: [usize; 3]) -> Option<String> {
    if checked.finding.is_met() || checkup.recipe.accepted(checked).is_some() {
        return None;
    }
    let text = changed(checkup, checked)?;
    let changed = files::Document { path: checkup.path.clone(), text: Ok(text.clone()) };
    match changed.check() {
        Outcome::Checked(after) if helps(open, self::open(&after)) => Some(text),
        _ => None,
    }
}

/// How many findings break, are unproven, and are past advice.
fn open(checkup: &Checkup<'_>) -> [usize; 3] {
    let count =
        |wanted: fn(&Checked) -> bool| checkup.findings.iter().filter(|c| wanted(c)).count();
    [
        count(|checked| checked.finding.verdict == Verdict::Breaks),
        count(|checked| checked.finding.verdict == Verdict::Unproven),
        count(|checked| checked.finding.past_advice),
    ]
}

fn helps(before: [usize; 3], after: [usize; 3]) -> bool {
    before != after && before.iter().zip(after).all(|(&before, after)| after <= before)
}

/// The document with the one change that a finding computed, where it is a change of the document.
fn changed(checkup: &Checkup<'_>, checked: &Checked) -> Option<String> {
    let finding = &checked.finding;
    let mend = finding.mend?;
    let component = checkup.recipe.components.get(checked.component)?;
    let document = Document::parse(checkup.text).ok()?;
    let inside = |list: &str, n: usize| {
        let components = document.get("component")?.as_array_of_tables()?;
        let items = components.get(checked.component)?.get(list)?.as_array_of_tables()?;
        items.get(n).cloned()
    };
    let of_step = |key: &str, written: String| {
        set(checkup.text, &inside("step", checkup.step_of(checked)?)?, key, &written)
    };
    let of_ingredient = |mass: Mass, most: bool| {
        let mut ingredients = component.ingredients.iter().enumerate();
        let (n, ingredient) = ingredients.find(|(_, i)| i.place == finding.place)?;
        let scale = ingredient.scale.or(checkup.recipe.instruments.scale);
        set(checkup.text, &inside("ingredient", n)?, "amount", &weighed(mass, scale, most))
    };
    match mend {
        Mend::UseAtMost(most) => of_ingredient(most, true),
        Mend::Weigh(mass) => of_ingredient(mass, false),
        Mend::CookTo(to) => of_step("to", to.to_string()),
        Mend::HoldFor(time) => of_step("hold", show_duration(time).to_string()),
        Mend::KeepAtOrBelow(at) => of_step("at", at.to_string()),
        Mend::KeepFor(time) => of_step("for", show_duration(time).to_string()),
        // The others change what is bought or how it is measured, and no figure of the document.
        _ => None,
    }
}

/// A mass as the scale shows it; a most, rounded down.
fn weighed(mass: Mass, scale: Option<Mass>, most: bool) -> String {
    let step = scale.map_or(1e-4, |scale| scale.value);
    // A step that is met but for its last bit is met.
    let whole = |count: f64| {
        if most { (count * (1.0 + 4.0 * f64::EPSILON)).floor() } else { count.round() }
    };
    let mass = Mass { value: whole(mass.value / step) * step, ..mass };
    let unit = match scale {
        Some(scale) if in_ounces(scale) => MassUnit::Ounce,
        _ if mass.value < 1.0 => MassUnit::Gram,
        _ => MassUnit::Kilogram,
    };
    let digits = 10_000.0;
    format!("{} {}", whole(unit.count(mass) * digits) / digits, unit.symbol())
}

/// Whether the steps of a scale are thousandths of an ounce, and not of a gram.
fn in_ounces(scale: Mass) -> bool {
    let odd = |unit: MassUnit| {
        let thousandths = unit.count(scale) * 1000.0;
        (thousandths - thousandths.round()).abs() > 1e-6
    };
    odd(MassUnit::Gram) && !odd(MassUnit::Ounce)
}

/// The text with one value set: only its own bytes change, or a line is added to its table.
fn set(text: &str, table: &Table, key: &str, written: &str) -> Option<String> {
    let span = |item: &Item| item.span();
    let (at, new) = match table.get(key) {
        Some(item) => (span(item)?, format!("\"{written}\"")),
        None => {
            let last =
                table.iter().filter_map(|(_, item)| span(item)).map(|span| span.end).max()?;
            let line = text.get(last..)?.find('\n').map_or(text.len(), |n| last + n + 1);
            let end = if text.contains("\r\n") { "\r\n" } else { "\n" };
            (line..line, format!("{key} = \"{written}\"{end}"))
        }
    };
    Some([text.get(..at.start)?, &new, text.get(at.end..)?].concat())
}

/// Writes beside the document first, so that it is there whole or as it was.
fn replace(path: &Path, text: &str) -> std::io::Result<()> {
    let path = path.canonicalize()?;
    let folder = path.parent().unwrap_or(Path::new("."));
    let mut file = tempfile::NamedTempFile::new_in(folder)?;
    file.write_all(text.as_bytes())?;
    std::fs::set_permissions(file.path(), std::fs::metadata(&path)?.permissions())?;
    file.persist(&path)?;
    Ok(())
}
