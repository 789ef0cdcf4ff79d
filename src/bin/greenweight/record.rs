//! The records that a document names, read from the files beside it.

use std::fs::{File, Metadata};
use std::io;
use std::path::{Component, Path};

use greenweight::recipe::{Fault, Recipe};

/// The most readings of a record that are kept: three weeks of one a second.
const MOST: usize = 2_000_000;

/// The longest file of readings that is opened, in bytes: so many readings of a few probes.
const LARGEST: u64 = 256 << 20;

/// What is wrong with a file, and how to mend it.
type Wrong = (String, Option<&'static str>);

/// Reads every record that a recipe names.
pub(crate) fn read_all(document: &Path, recipe: &mut Recipe<'_>) -> Result<(), Vec<Fault>> {
    let mut faults = Vec::new();
    for component in &mut recipe.components {
        let Some(named) = &component.recorded_in else { continue };
        let place = named.place;
        let file = named.file.clone().into_owned();
        let read = open(document, &file).and_then(|opened| {
            let read = component.read_record(opened, MOST);
            read.map_err(|error| (format!("{file}, {error}"), None))
        });
        if let Err((message, help)) = read {
            faults.push(Fault { message, help: help.map(str::to_owned), place });
        }
    }
    if faults.is_empty() { Ok(()) } else { Err(faults) }
}

/// Opens a plain file in the folder of a document, or in one below it. A document may be written by somebody
/// else: it may name a file elsewhere, or a link to one, or a device that never ends.
fn open(document: &Path, file: &str) -> Result<File, Wrong> {
    let elsewhere = || {
        let help =
            "name a file in its folder, or in one below it, and no link that leads out of it";
        (format!("`{file}` is not beside the document"), Some(help))
    };
    let unread = |error: io::Error| (format!("{file} cannot be read: {error}"), None);
    let parts = Path::new(file).components();
    if !parts.into_iter().all(|part| matches!(part, Component::Normal(_))) {
        return Err(elsewhere());
    }
    let folder = document.parent().filter(|folder| *folder != Path::new(""));
    let folder = folder.unwrap_or(Path::new(".")).canonicalize().map_err(unread)?;
    let path = folder.join(file).canonicalize().map_err(unread)?;
    if !path.starts_with(&folder) {
        return Err(elsewhere());
    }
    // Opening a pipe waits until somebody writes to it.
    plain(file, &path.metadata().map_err(unread)?)?;
    let opened = File::open(&path).map_err(unread)?;
    plain(file, &opened.metadata().map_err(unread)?)?;
    Ok(opened)
}

/// Whether it is a file, and no longer than any file of readings.
fn plain(file: &str, found: &Metadata) -> Result<(), Wrong> {
    if !found.is_file() {
        let help = "name a file of comma-separated values: no folder, pipe or device";
        return Err((format!("`{file}` is not a plain file"), Some(help)));
    }
    match found.len() {
        0..=LARGEST => Ok(()),
        size => {
            Err((format!("size of `{file}`: {size} bytes is outside 0 to {LARGEST} bytes"), None))
        }
    }
}
