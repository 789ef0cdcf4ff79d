//! The documents that arguments name, and what each says.

use std::collections::BTreeSet;
use std::fs::File;
use std::io::{self, IsTerminal, Read};
use std::path::{Path, PathBuf};
use std::time::SystemTime;

use annotate_snippets::{AnnotationKind, Level, Renderer, Snippet};

use greenweight::cite::Date;
use greenweight::finding::Place;
use greenweight::recipe::{Fault, LARGEST, Recipe};
use greenweight::report::{Checkup, Outcome, Unread, visible};

use crate::output::{complain_in_colour, shown};
use crate::record;

/// A path that arguments name, or why there is none.
pub(crate) struct Named {
    pub(crate) path: PathBuf,
    wrong: Option<&'static str>,
}

/// A document as it was found, or why it was not.
pub(crate) struct Document {
    pub(crate) path: PathBuf,
    pub(crate) text: Result<String, Fault>,
}

/// The paths that arguments name: files, folders in the order of their names, and patterns such as
/// `recipes/**/*.toml`, for shells that leave them as they are.
pub(crate) fn named(arguments: &[PathBuf]) -> Vec<Named> {
    let mut found = Vec::new();
    for path in arguments {
        match pattern(path) {
            None => file_or_folder(path.clone(), &mut found),
            Some(pattern) => {
                let before = found.len();
                for path in pattern.flatten() {
                    let pipe = waits(&path);
                    file_or_folder(path, &mut found);
                    if let (true, Some(last)) = (pipe, found.last_mut()) {
                        last.wrong = Some(PIPE);
                    }
                }
                if found.len() == before {
                    let wrong = "no file is named so, and none has a name of this pattern";
                    found.push(Named { path: path.clone(), wrong: Some(wrong) });
                }
            }
        }
    }
    found
}

fn file_or_folder(path: PathBuf, found: &mut Vec<Named>) {
    if !path.is_dir() {
        found.push(Named { path, wrong: None });
        return;
    }
    let before = found.len();
    folder(&path, &mut BTreeSet::new(), found);
    if found.len() == before {
        found.push(Named { path, wrong: Some("there is no .toml file in this folder") });
    }
}

const PIPE: &str = "it is not a plain file: a pipe or a device is read where its own name is given";

/// Whether it is there, and neither a file nor a folder: reading it may never end.
fn waits(path: &Path) -> bool {
    path.metadata().is_ok_and(|found| !found.is_file() && !found.is_dir())
}

fn pattern(path: &Path) -> Option<glob::Paths> {
    let text = path.to_str().filter(|text| text.contains(['*', '?', '[']))?;
    if path.exists() { None } else { glob::glob(text).ok() }
}

fn folder(path: &Path, seen: &mut BTreeSet<PathBuf>, found: &mut Vec<Named>) {
    // A link back to a folder that was visited would go on for ever.
    if path.canonicalize().is_ok_and(|real| !seen.insert(real)) {
        return;
    }
    let Ok(entries) = std::fs::read_dir(path) else {
        found.push(Named { path: path.to_owned(), wrong: Some("the folder cannot be read") });
        return;
    };
    let mut inside: Vec<_> = entries.flatten().map(|entry| entry.path()).collect();
    inside.sort();
    for path in inside {
        if path.is_dir() {
            folder(&path, seen, found);
        } else if path.extension().is_some_and(|ending| ending == "toml") {
            let wrong = waits(&path).then_some(PIPE);
            found.push(Named { path, wrong });
        }
    }
}

impl Document {
    pub(crate) fn open(named: &Named) -> Self {
        let fault = |message: String| Fault { message, help: None, place: Place::default() };
        let text = match named.wrong {
            Some(wrong) => Err(fault(wrong.to_owned())),
            None => match read(&named.path) {
                Err(error) => Err(fault(format!("the file cannot be read: {error}"))),
                Ok(bytes) => String::from_utf8(bytes).map_err(|error| {
                    let at = error.utf8_error().valid_up_to();
                    let message =
                        format!("the file is not UTF-8 text: byte {at} starts no character");
                    Fault { help: Some("save it as UTF-8".to_owned()), ..fault(message) }
                }),
            },
        };
        Self { path: named.path.clone(), text }
    }

    pub(crate) fn at(path: PathBuf) -> Self {
        Self::open(&Named { path, wrong: None })
    }

    /// Reads it, with the records it names, and checks it.
    pub(crate) fn check(&self) -> Outcome<'_> {
        let not_read = |text: &str, faults| {
            Outcome::Unread(Unread { path: self.path.clone(), text: text.to_owned(), faults })
        };
        let text = match &self.text {
            Ok(text) => text,
            Err(fault) => return not_read("", vec![fault.clone()]),
        };
        let mut recipe = match Recipe::read(text) {
            Ok(recipe) => recipe,
            Err(error) => return not_read(text, error.faults),
        };
        let unread: Vec<_> = not_read_yet(&recipe, tomorrow()).collect();
        if !unread.is_empty() {
            return not_read(text, unread);
        }
        match record::read_all(&self.path, &mut recipe) {
            Ok(()) => Outcome::Checked(Checkup::new(self.path.clone(), text, recipe)),
            Err(faults) => not_read(text, faults),
        }
    }

    /// The same for one document, whose faults go to the reader.
    pub(crate) fn check_or_explain(&self) -> Option<Checkup<'_>> {
        match self.check() {
            Outcome::Checked(checkup) => Some(checkup),
            Outcome::Unread(unread) => {
                complain_in_colour(&explained(&unread, io::stderr().is_terminal()));
                None
            }
        }
    }
}

/// Tomorrow by the clock here, since whoever wrote the document may live in a zone that is ahead of it.
fn tomorrow() -> Option<Date> {
    let since = SystemTime::now().duration_since(SystemTime::UNIX_EPOCH).ok()?;
    let days = u16::try_from(since.as_secs() / 86_400 + 1).ok()?;
    Date::new(1970, 1, 1).ok()?.days_later(days)
}

/// Rows that are confirmed on a day that has not come.
fn not_read_yet<'r>(
    recipe: &'r Recipe<'_>,
    latest: Option<Date>,
) -> impl Iterator<Item = Fault> + 'r {
    let later = move |on: Date| latest.is_some_and(|latest| on > latest);
    recipe.confirmed.iter().filter(move |confirmed| later(confirmed.on)).map(|confirmed| Fault {
        message: format!(
            "`on` is {}, a day that has not come: write the day the row was read",
            confirmed.on
        ),
        help: None,
        place: confirmed.place,
    })
}

/// No more of a file is held than a document may have, and a byte that makes it too long.
fn read(path: &Path) -> io::Result<Vec<u8>> {
    let mut bytes = Vec::new();
    let most = u64::try_from(LARGEST).unwrap_or(u64::MAX).saturating_add(1);
    File::open(path)?.take(most).read_to_end(&mut bytes)?;
    if bytes.len() > LARGEST {
        return Err(io::Error::other(format!(
            "it has more than the {LARGEST} bytes that are read"
        )));
    }
    Ok(bytes)
}

/// Every fault of a document with its line, and a caret under it.
pub(crate) fn explained(document: &Unread, colour: bool) -> String {
    let path = shown(&document.path);
    let renderer = if colour { Renderer::styled() } else { Renderer::plain() };
    // The renderer writes out every other character that steers a terminal; these take two bytes too.
    let text = document.text.replace(|c| matches!(c, '\u{80}'..='\u{9f}'), "??");
    let mut out = Vec::new();
    for fault in &document.faults {
        let title = Level::ERROR.primary_title(visible(&fault.message));
        let group = if document.text.is_empty() {
            title.element(annotate_snippets::Origin::path(&path))
        } else {
            let end = fault.place.end.min(document.text.len());
            let span = fault.place.start.min(end)..end;
            title.element(
                Snippet::source(&text).path(&path).annotation(AnnotationKind::Primary.span(span)),
            )
        };
        let group = match &fault.help {
            Some(help) => group.element(Level::HELP.message(visible(help))),
            None => group,
        };
        out.push(renderer.render(&[group]).to_string());
    }
    out.join("\n")
}
