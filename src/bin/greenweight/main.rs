//! The `greenweight` command: arguments, files, exit status; nothing else.

use std::collections::BTreeSet;
use std::io::{self, IsTerminal, Write};
use std::path::{Path, PathBuf};
use std::process::ExitCode;

use annotate_snippets::{AnnotationKind, Level, Renderer, Snippet};
use clap::{Parser, Subcommand, ValueEnum};

use greenweight::finding::{Force, Place, Verdict};
use greenweight::recipe::{Fault, RULES, Recipe};
use greenweight::report::{Checkup, Unread, labels, to_json, to_sarif, to_text};

/// Holds recipes against published food-safety figures.
#[derive(Parser)]
#[command(version, arg_required_else_help = true)]
struct Arguments {
    #[command(subcommand)]
    verb: Verb,
}

#[derive(Subcommand)]
enum Verb {
    /// Check recipe documents. Exit status: 0 all meet, 1 something breaks or is
    /// unproven, 2 something could not be read.
    Check {
        /// Recipe documents (.toml), or folders of them.
        #[arg(required = true, value_name = "FILE_OR_FOLDER")]
        paths: Vec<PathBuf>,
        /// How to print what was found.
        #[arg(long, value_enum, default_value = "text")]
        format: Format,
        /// Draw every record of a cook into this folder, as SVG.
        #[arg(long, value_name = "FOLDER")]
        plots: Option<PathBuf>,
    },
    /// A recipe for another batch: what to weigh out, what does not scale, and the check of
    /// it. Exit status as for check.
    Scale {
        /// A recipe document (.toml).
        path: PathBuf,
        /// How many times the batch, as 2.5.
        #[arg(long)]
        times: f64,
    },
    /// The label of every component that says when it was made: what, how cold, use by, freeze by. Exit
    /// status: 0 all have a day of use, 1 one has none, 2 something could not be read.
    Label {
        /// A recipe document (.toml).
        path: PathBuf,
    },
    /// Every rule that a recipe can meet or break, room by room: its identity, what it asks, its force.
    Rules,
    /// How much of this curing premix for this much meat, under this authority.
    Dose(Box<Dosing>),
}

#[derive(clap::Args)]
struct Dosing {
    /// Whose limits: us-fsis, european-union, great-britain, denmark, canada.
    #[arg(long, value_name = "AUTHORITY")]
    held_to: String,
    /// The green weight, as "7 lb".
    #[arg(long)]
    meat: String,
    /// Strength of the premix in sodium nitrite, from the label, as "6.25 %".
    #[arg(long, value_name = "PERCENT")]
    sodium_nitrite: String,
    /// The smallest step of the scale, as "0.1 g".
    #[arg(long)]
    scale: String,
    /// ground, dry-rub, pumped or immersion (for us-fsis).
    #[arg(long)]
    method: Option<String>,
    /// Weight of the whole pickle (pumped, immersion).
    #[arg(long)]
    pickle: Option<String>,
    /// Pickle pumped in or picked up, of green weight, as "10 %".
    #[arg(long)]
    taken_up: Option<String>,
    /// An immersion that lasts until meat and pickle are at equilibrium.
    #[arg(long)]
    equilibrium: bool,
    /// Which product of the authority's table, as "eu/heat-treated".
    #[arg(long)]
    cured_as: Option<String>,
    /// Weight of all other ingredients than the meat and the premix, as "1.2 kg" (for
    /// authorities that divide by the whole product).
    #[arg(long, default_value = "0 g")]
    other: String,
    /// The day whose limits count, as "2026-01-31".
    #[arg(long)]
    date: Option<String>,
}

#[derive(Clone, Copy, PartialEq, Eq, ValueEnum)]
enum Format {
    /// For a person.
    Text,
    /// For a machine.
    Json,
    /// For code hosts: SARIF 2.1.0.
    Sarif,
}

mod dose;
mod plot;
mod record;
mod scale;

/// A document as it was found, or why it was not.
struct Document {
    path: PathBuf,
    text: Result<String, (String, String)>,
}

fn main() -> ExitCode {
    match Arguments::parse().verb {
        Verb::Check { paths, format, plots } => check_all(&paths, format, plots.as_deref()),
        Verb::Scale { path, times } => scale_one(path, times),
        Verb::Label { path } => label_one(path),
        Verb::Rules => {
            print!("{}", rules());
            ExitCode::SUCCESS
        }
        Verb::Dose(dosing) => match dosing.answer() {
            Ok(answer) => {
                print!("{answer}");
                ExitCode::SUCCESS
            }
            Err(message) => {
                eprintln!("{message}");
                ExitCode::from(2)
            }
        },
    }
}

fn check_all(paths: &[PathBuf], format: Format, plots: Option<&Path>) -> ExitCode {
    let documents: Vec<_> = documents(paths);
    let (mut checkups, mut unread) = (Vec::new(), Vec::new());
    for document in &documents {
        match check(document) {
            Ok(checkup) => checkups.push(checkup),
            Err(fault) => unread.push(fault),
        }
    }
    let report = match format {
        Format::Text => Ok(to_text(&checkups)),
        Format::Json => to_json(&checkups, &unread).map(|json| json + "\n"),
        Format::Sarif => to_sarif(&checkups, &unread).map(|sarif| sarif + "\n"),
    };
    let colour = io::stderr().is_terminal();
    for document in &unread {
        eprintln!("{}", explained(document, colour));
    }
    let printed = report
        .map_err(io::Error::from)
        .and_then(|report| io::stdout().write_all(report.as_bytes()));
    if let Err(error) = printed {
        // Whoever closed the pipe has read enough.
        if error.kind() != io::ErrorKind::BrokenPipe {
            eprintln!("the report could not be written: {error}");
            return ExitCode::from(2);
        }
    }
    if let Some(Err(message)) = plots.map(|folder| plot::draw_all(&checkups, folder)) {
        eprintln!("{message}");
        return ExitCode::from(2);
    }
    let worst = checkups.iter().map(Checkup::verdict).max();
    match worst {
        _ if !unread.is_empty() => ExitCode::from(2),
        Some(Verdict::Meets) => ExitCode::SUCCESS,
        _ => ExitCode::from(1),
    }
}

fn rules() -> String {
    let mut text = String::new();
    for rule in RULES.iter().flat_map(|room| room.iter()) {
        let force = match rule.force {
            Force::Quality => " (quality)",
            Force::Advice => " (advice)",
            _ => "",
        };
        text.push_str(&format!("{:<28} {}{force}\n", rule.id, rule.asks));
    }
    text
}

fn label_one(path: PathBuf) -> ExitCode {
    let document = file(path);
    let Some(checkup) = check_or_explain(&document) else { return ExitCode::from(2) };
    let labels = labels(&checkup);
    if labels.is_empty() {
        eprintln!("no component says when it was made: write made_on = 2026-01-31 in it");
        return ExitCode::from(2);
    }
    for (n, label) in labels.iter().enumerate() {
        let apart = if n > 0 { "\n" } else { "" };
        print!("{apart}{label}");
    }
    if labels.iter().all(|label| label.use_by.is_ok()) {
        ExitCode::SUCCESS
    } else {
        ExitCode::from(1)
    }
}

fn scale_one(path: PathBuf, times: f64) -> ExitCode {
    let document = file(path);
    let Some(checkup) = check_or_explain(&document) else { return ExitCode::from(2) };
    let text = document.text.as_deref().unwrap_or_default();
    let scaled = match checkup.recipe.times(times) {
        Ok(scaled) => scaled,
        Err(error) => {
            eprintln!("--times: {error}");
            return ExitCode::from(2);
        }
    };
    print!("{}", scale::in_words(&scaled, text, times));
    let checkup = Checkup::new(document.path.clone(), text, scaled.recipe);
    let verdict = checkup.verdict();
    print!("{}", to_text(&[checkup]));
    if verdict == Verdict::Meets { ExitCode::SUCCESS } else { ExitCode::from(1) }
}

/// The same for one document, whose faults go to the reader.
fn check_or_explain(document: &Document) -> Option<Checkup<'_>> {
    check(document)
        .map_err(|unread| eprintln!("{}", explained(&unread, io::stderr().is_terminal())))
        .ok()
}

fn check(document: &Document) -> Result<Checkup<'_>, Unread> {
    let not_read =
        |text: &str, faults| Unread { path: document.path.clone(), text: text.to_owned(), faults };
    match &document.text {
        Ok(text) => match Recipe::read(text) {
            Ok(mut recipe) => match record::read_all(&document.path, &mut recipe) {
                Ok(()) => Ok(Checkup::new(document.path.clone(), text, recipe)),
                Err(faults) => Err(not_read(text, faults)),
            },
            Err(error) => Err(not_read(text, error.faults)),
        },
        Err((message, help)) => {
            let fault = Fault {
                message: message.clone(),
                help: Some(help.clone()).filter(|help| !help.is_empty()),
                place: Place::default(),
            };
            Err(not_read("", vec![fault]))
        }
    }
}

/// The documents that the paths name, folders in the order of their names.
fn documents(paths: &[PathBuf]) -> Vec<Document> {
    let mut found = Vec::new();
    for path in paths {
        if path.is_dir() {
            let before = found.len();
            let mut seen = BTreeSet::new();
            folder(path, &mut seen, &mut found);
            if found.len() == before {
                let text = Err(("there is no .toml file in this folder".to_owned(), String::new()));
                found.push(Document { path: path.clone(), text });
            }
        } else {
            found.push(file(path.clone()));
        }
    }
    found
}

fn folder(path: &Path, seen: &mut BTreeSet<PathBuf>, found: &mut Vec<Document>) {
    // A link back to a folder that was visited would go on for ever.
    if path.canonicalize().is_ok_and(|real| !seen.insert(real)) {
        return;
    }
    let entries = match std::fs::read_dir(path) {
        Ok(entries) => entries,
        Err(error) => {
            let text = Err((format!("the folder cannot be read: {error}"), String::new()));
            found.push(Document { path: path.to_owned(), text });
            return;
        }
    };
    let mut inside: Vec<_> = entries.flatten().map(|entry| entry.path()).collect();
    inside.sort();
    for path in inside {
        if path.is_dir() {
            folder(&path, seen, found);
        } else if path.extension().is_some_and(|ending| ending == "toml") {
            found.push(file(path));
        }
    }
}

fn file(path: PathBuf) -> Document {
    let text = match std::fs::read(&path) {
        Err(error) => Err((format!("the file cannot be read: {error}"), String::new())),
        Ok(bytes) => String::from_utf8(bytes).map_err(|error| {
            let at = error.utf8_error().valid_up_to();
            (
                format!("the file is not UTF-8 text: byte {at} starts no character"),
                "save it as UTF-8".to_owned(),
            )
        }),
    };
    Document { path, text }
}

/// Every fault of a document with its line, and a caret under it.
fn explained(document: &Unread, colour: bool) -> String {
    let path = document.path.display().to_string();
    let renderer = if colour { Renderer::styled() } else { Renderer::plain() };
    let mut out = Vec::new();
    for fault in &document.faults {
        let title = Level::ERROR.primary_title(&fault.message);
        let group = if document.text.is_empty() {
            title.element(annotate_snippets::Origin::path(&path))
        } else {
            let end = fault.place.end.min(document.text.len());
            let span = fault.place.start.min(end)..end;
            title.element(
                Snippet::source(&document.text)
                    .path(&path)
                    .annotation(AnnotationKind::Primary.span(span)),
            )
        };
        let group = match &fault.help {
            Some(help) => group.element(Level::HELP.message(help)),
            None => group,
        };
        out.push(renderer.render(&[group]).to_string());
    }
    out.join("\n")
}
