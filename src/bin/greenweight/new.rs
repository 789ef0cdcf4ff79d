//! Documents to begin with.

use std::fs::File;
use std::io::Write;
use std::path::Path;

use greenweight::report::{CAUTIONS, CURING_CAUTION, visible};

use crate::output::shown;

/// A document to begin with, its kind and what that is.
struct Start(&'static str, &'static str, &'static str);

const STARTS: [Start; 10] = [
    Start(
        "cooked-sausage",
        "a cured sausage or loaf, smoked and cooked",
        include_str!("starts/cooked-sausage.toml"),
    ),
    Start("fresh-sausage", "a raw sausage or burger", include_str!("starts/fresh-sausage.toml")),
    Start(
        "fermented-sausage",
        "a semi-dry sausage, fermented and cooked",
        include_str!("starts/fermented-sausage.toml"),
    ),
    Start(
        "dry-cured-belly",
        "a belly rubbed with a cure, smoked and cooked",
        include_str!("starts/dry-cured-belly.toml"),
    ),
    Start(
        "brined-ham",
        "a ham or loin cured in a brine and cooked",
        include_str!("starts/brined-ham.toml"),
    ),
    Start("roast", "whole meat without a cure", include_str!("starts/roast.toml")),
    Start("poultry", "a bird without a cure", include_str!("starts/poultry.toml")),
    Start(
        "hot-smoked-fish",
        "fish brined and smoked hot",
        include_str!("starts/hot-smoked-fish.toml"),
    ),
    Start("smoked-cheese", "a hard cheese smoked cold", include_str!("starts/smoked-cheese.toml")),
    Start(
        "fresh-sauce",
        "a cold sauce of yogurt or cream",
        include_str!("starts/fresh-sauce.toml"),
    ),
];

const HEAD: &str = "\
# A document to begin with. Every figure in it is an example: write yours.
# A line that begins with \"#?\" wants what only you know, from a label, a scale, a thermometer or a laboratory: take
# the \"#? \" away and write it for the \"…\". Until then the check says what is missing. The README explains every key.
";

/// A start as it is printed; or written, and where.
pub(crate) fn start(kind: Option<&str>, into: Option<&Path>) -> Result<String, String> {
    let Some(kind) = kind else { return Ok(list()) };
    let found = STARTS.iter().find(|Start(name, ..)| *name == kind);
    let Start(_, _, body) =
        found.ok_or_else(|| format!("there is no `{}`; there are\n{}", visible(kind), list()))?;
    let text = format!("{HEAD}{}{body}", comments(body));
    let Some(path) = into else { return Ok(text) };
    let unwritten = |error| format!("{} cannot be written: {error}", shown(path));
    // Nobody's document is overwritten.
    let mut file = File::create_new(path).map_err(unwritten)?;
    file.write_all(text.as_bytes()).map_err(unwritten)?;
    Ok(format!("{} is written; now: greenweight check {}\n", shown(path), shown(path)))
}

/// The cautions as comments, a sentence a line: that on cures where there is one.
fn comments(body: &str) -> String {
    let cured = body.contains("curing-premix");
    let of = CAUTIONS.into_iter().filter(|&caution| cured || caution != CURING_CAUTION);
    let sentences = of.flat_map(|caution| caution.split_inclusive(". "));
    let lines: String = sentences.map(|sentence| format!("# {}\n", sentence.trim_end())).collect();
    lines + "\n"
}

fn list() -> String {
    let lines = STARTS.iter().map(|Start(name, what, _)| format!("{name:<18} {what}\n"));
    lines.collect()
}
