//! The `greenweight` command: arguments, files, exit status; nothing else.

use std::io::{self, IsTerminal};
use std::path::PathBuf;
use std::process::ExitCode;

use clap::{CommandFactory, FromArgMatches, Parser, Subcommand, ValueEnum};

use greenweight::authority::Profile;
use greenweight::finding::Force;
use greenweight::recipe::rules;
use greenweight::report::{Checkup, Format, Layout, Outcome, cautions, in_words, labels, visible};

use check::{Drawings, check_all};
use files::Document;
use output::{complain, print};

/// Compares recipes with food-safety figures, and says of each where it comes from.
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
        /// Recipe documents (.toml), folders of them, or patterns as 'recipes/**/*.toml'.
        #[arg(required = true, value_name = "FILE_OR_FOLDER")]
        paths: Vec<PathBuf>,
        /// How to print what was found.
        #[arg(long, value_enum, default_value = "text")]
        format: Form,
        /// Count no finding as accepted: the exit status is as if the documents accepted nothing. The reasons are
        /// printed all the same.
        #[arg(long)]
        no_accepted: bool,
        /// Draw every record of a cook into this folder, as SVG.
        #[arg(long, value_name = "FOLDER")]
        plots: Option<PathBuf>,
        /// Write a page for each recipe into this folder, as HTML: steps, temperatures, clocks, findings, sources.
        #[arg(long, value_name = "FOLDER")]
        pages: Option<PathBuf>,
        #[command(flatten)]
        setting: Setting,
    },
    /// A recipe for another batch: what to weigh out, what does not scale, and the check of
    /// it. Exit status as for check.
    Scale {
        /// A recipe document (.toml).
        path: PathBuf,
        /// How many times the batch, as 2.5.
        #[arg(long)]
        times: f64,
        #[command(flatten)]
        setting: Setting,
    },
    /// A commented document to begin with, for a kind of product; without one, the list of kinds.
    New {
        /// The kind of product, as cooked-sausage.
        kind: Option<String>,
        /// Write it into this file, which must not be there yet; left out, it is printed.
        #[arg(long, value_name = "FILE")]
        into: Option<PathBuf>,
    },
    /// Changes that mend what a check found, where one computed change does: shown as a difference, with
    /// comments and layout kept. Exit status: 0 there are none or they were written, 1 they were shown, 2
    /// something could not be read or written.
    Mend {
        /// Recipe documents (.toml), folders of them, or patterns.
        #[arg(required = true, value_name = "FILE_OR_FOLDER")]
        paths: Vec<PathBuf>,
        /// Write the changes into the documents.
        #[arg(long)]
        write: bool,
    },
    /// The label of every component that says when it was made: what, how cold, use by, freeze by. Exit
    /// status: 0 all have a day of use, 1 one has none, 2 something could not be read.
    Label {
        /// A recipe document (.toml).
        path: PathBuf,
    },
    /// Every rule that a recipe can meet or break, room by room: its identity, what it asks, its force.
    Rules {
        /// The identity of one, as cook/come-up: why it is, how to mend it, its sources and examples.
        rule: Option<String>,
    },
    /// Every kind of kitchen that a document may name as its profile, and the authorities it chooses.
    Profiles,
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
    /// What is cured: ground-meat, whole-meat, raw-ham, bacon, poultry, ground-poultry, fish. Left out, the
    /// strictest figure for the method counts.
    #[arg(long)]
    food: Option<String>,
    /// A food for infants: it may hold no nitrite.
    #[arg(long)]
    for_infants: bool,
    /// Whether a belly is weighed with its skin, which takes up no cure: true or false. Left out, it may be.
    #[arg(long)]
    skin: Option<bool>,
    /// ground, dry-rub, pumped or immersion.
    #[arg(long)]
    method: Option<String>,
    /// Weight of the whole pickle with its premix (pumped, immersion).
    #[arg(long)]
    pickle: Option<String>,
    /// Pickle pumped in or picked up, of green weight, as "10 %".
    #[arg(long)]
    taken_up: Option<String>,
    /// An immersion that lasts until meat and pickle are at equilibrium.
    #[arg(long)]
    equilibrium: bool,
    /// How long an immersion lasts, as "12 h". Under a day its pick-up alone counts; from a day on, and left out,
    /// so does the level that meat and pickle come to.
    #[arg(long = "for", value_name = "TIME")]
    lasts: Option<String>,
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
enum Form {
    /// For a person.
    Text,
    /// For a machine.
    Json,
    /// For code hosts: SARIF 2.1.0.
    Sarif,
    /// For builds: JUnit XML.
    Junit,
}

/// How text is set.
#[derive(clap::Args)]
struct Setting {
    /// Characters in a line of text; left out, as many as the terminal has, or 92.
    #[arg(long, value_name = "CHARACTERS", value_parser = clap::value_parser!(u16).range(40..=500))]
    width: Option<u16>,
    /// Whether headings are coloured.
    #[arg(long, value_enum, default_value = "auto")]
    colour: Colour,
}

#[derive(Clone, Copy, PartialEq, Eq, ValueEnum)]
enum Colour {
    /// On a terminal, unless NO_COLOR is set.
    Auto,
    /// Always.
    Always,
    /// Never.
    Never,
}

impl Setting {
    fn layout(&self) -> Layout {
        let terminal = io::stdout().is_terminal();
        // A terminal of any width is read; a line longer than a book's is not.
        let columns = || {
            let (width, _) = terminal_size::terminal_size_of(io::stdout())?;
            terminal.then_some(width.0.min(120))
        };
        let width = self.width.or_else(columns).map_or(Layout::default().width, usize::from);
        let silenced = std::env::var_os("NO_COLOR").is_some_and(|value| !value.is_empty());
        let colour = match self.colour {
            Colour::Auto => terminal && !silenced,
            Colour::Always => true,
            Colour::Never => false,
        };
        Layout { width, colour }
    }
}

mod check;
mod dose;
mod draw;
mod files;
mod mend;
mod new;
mod output;
mod record;
mod scale;

fn main() -> ExitCode {
    let arguments = match arguments() {
        Ok(arguments) => arguments,
        // What was asked for, as the help is, is no error.
        Err(told) if !told.use_stderr() => return print(&told.to_string(), ExitCode::SUCCESS),
        Err(wrong) => {
            complain(wrong.to_string().trim_end());
            return ExitCode::from(2);
        }
    };
    match arguments.verb {
        Verb::Check { paths, format, no_accepted, plots, pages, setting } => {
            let format = match format {
                Form::Text => Format::Text(setting.layout()),
                Form::Json => Format::Json,
                Form::Sarif => Format::Sarif,
                Form::Junit => Format::Junit,
            };
            let drawings = Drawings { plots: plots.as_deref(), pages: pages.as_deref() };
            check_all(&paths, format, &drawings, no_accepted)
        }
        Verb::Scale { path, times, setting } => scale_one(path, times, setting.layout()),
        Verb::New { kind, into } => print_or_explain(new::start(kind.as_deref(), into.as_deref())),
        Verb::Mend { paths, write } => mend::mend_all(&paths, write),
        Verb::Label { path } => label_one(path),
        Verb::Rules { rule } => print_or_explain(rules_in_words(rule.as_deref())),
        Verb::Profiles => print_or_explain(Ok(profiles())),
        Verb::Dose(dosing) => print_or_explain(dosing.answer()),
    }
}

/// What the command line says; or why not, or the help that it asks for, with the cautions below it.
fn arguments() -> Result<Arguments, clap::Error> {
    let foot = cautions(Layout::default());
    let command = Arguments::command().after_help(foot.clone());
    let command = command.mut_subcommands(|verb| verb.after_help(foot.clone()));
    let matches = command.clone().try_get_matches().map_err(|wrong| {
        // A message repeats the arguments, so they are parsed again with what steers a terminal written out.
        let shown = std::env::args_os().map(|given| visible(&given.to_string_lossy()).into_owned());
        command.try_get_matches_from(shown).err().unwrap_or(wrong)
    });
    Arguments::from_arg_matches(&matches?)
}

/// An answer, or why there is none.
fn print_or_explain(answer: Result<String, String>) -> ExitCode {
    match answer {
        Ok(answer) => print(&answer, ExitCode::SUCCESS),
        Err(message) => {
            complain(message);
            ExitCode::from(2)
        }
    }
}

/// A list, with the cautions below it.
fn with_cautions(list: &str) -> String {
    format!("{list}\n{}", cautions(Layout::default()))
}

fn rules_in_words(one: Option<&str>) -> Result<String, String> {
    let mut all = rules();
    if let Some(id) = one {
        let words = all.find(|rule| rule.id == id).and_then(in_words);
        let words = words.ok_or_else(|| {
            format!("there is no rule `{}`: `greenweight rules` lists them all", visible(id))
        })?;
        return Ok(words.page.to_owned());
    }
    let mut text = String::new();
    for rule in all {
        let force = match rule.force {
            Force::Quality => " (quality)",
            Force::Advice => " (advice)",
            _ => "",
        };
        text.push_str(&format!("{:<28} {}{force}\n", rule.id, rule.asks));
    }
    Ok(with_cautions(&text))
}

fn profiles() -> String {
    let line = |profile: &Profile| {
        let chosen: Vec<_> = profile.authorities.iter().map(|authority| authority.key()).collect();
        format!("{:<28} {}: {}\n", profile.key, profile.says, chosen.join(", "))
    };
    with_cautions(&Profile::ALL.iter().map(line).collect::<String>())
}

fn label_one(path: PathBuf) -> ExitCode {
    let document = Document::at(path);
    let Some(checkup) = document.check_or_explain() else { return ExitCode::from(2) };
    let labels = labels(&checkup);
    if labels.is_empty() {
        complain("no component says when it was made: write made_on = 2026-01-31 in it");
        return ExitCode::from(2);
    }
    let printed: Vec<_> = labels.iter().map(ToString::to_string).collect();
    let all = labels.iter().all(|label| label.use_by().is_some());
    print(&with_cautions(&printed.join("\n")), ExitCode::from(u8::from(!all)))
}

fn scale_one(path: PathBuf, times: f64, layout: Layout) -> ExitCode {
    let document = Document::at(path);
    let Some(checkup) = document.check_or_explain() else { return ExitCode::from(2) };
    let text = document.text.as_deref().unwrap_or_default();
    let scaled = match checkup.recipe.times(times) {
        Ok(scaled) => scaled,
        Err(error) => {
            complain(format!("--times: {error}"));
            return ExitCode::from(2);
        }
    };
    let mut said = scale::in_words(&scaled, text, times);
    let checkup = Checkup::new(document.path.clone(), text, scaled.recipe);
    match Format::Text(layout).report(&Outcome::Checked(checkup)) {
        Ok((summary, report)) => {
            said.push_str(&report);
            print(&said, ExitCode::from(u8::from(!summary.settled())))
        }
        Err(error) => {
            complain(output::unwritten(&error));
            ExitCode::from(2)
        }
    }
}
