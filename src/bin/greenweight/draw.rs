//! The records of a check drawn, and its page.

use std::collections::BTreeMap;
use std::ffi::OsStr;
use std::path::Component::Normal;
use std::path::Path;

use greenweight::report::{Checkup, drawings, is_unprintable, to_html};

use crate::output::shown;

/// The names of the files that are drawn for each document: its own, with the folders before it where two
/// documents have the same, and with a number where that is taken too. No two of them are one file on a disk
/// that does not tell capitals from small letters.
pub(crate) fn names<'p>(paths: impl Iterator<Item = &'p Path> + Clone) -> Vec<String> {
    let mut counts = BTreeMap::<_, usize>::new();
    for path in paths.clone() {
        *counts.entry(folded(&stem(path))).or_default() += 1;
    }
    let alone = |path: &Path| counts.get(&folded(&stem(path))).is_none_or(|&n| n < 2);
    let mut taken: BTreeMap<_, usize> =
        paths.clone().filter(|path| alone(path)).map(|path| (folded(&stem(path)), 1)).collect();
    let named = |path: &'p Path| {
        if alone(path) { stem(path) } else { numbered(with_folders(path), &mut taken) }
    };
    paths.map(named).collect()
}

/// A name that is not taken yet, and now is.
fn numbered(name: String, taken: &mut BTreeMap<String, usize>) -> String {
    let mut last = taken.get(&folded(&name)).copied().unwrap_or(0);
    let mut free = name.clone();
    while taken.contains_key(&folded(&free)) {
        last = last.saturating_add(1);
        free = format!("{name}-{last}");
    }
    taken.insert(folded(&name), last.max(1));
    taken.entry(folded(&free)).or_insert(1);
    free
}

/// The name of a document without its ending, as it may stand in the name of a file.
fn stem(path: &Path) -> String {
    plain(path.file_stem().unwrap_or_default())
}

fn with_folders(path: &Path) -> String {
    let folders = path.parent().into_iter().flat_map(Path::components);
    let folders = folders.filter(|part| matches!(part, Normal(_)));
    let parts = folders.map(|part| plain(part.as_os_str()));
    parts.chain([stem(path)]).collect::<Vec<_>>().join("-")
}

fn plain(name: &OsStr) -> String {
    name.to_string_lossy().replace(is_unprintable, "_")
}

/// The same for names that a disk may take for one.
fn folded(name: &str) -> String {
    name.to_uppercase().to_lowercase()
}

/// Draws every record into a folder: `<name>-<component>.svg`.
pub(crate) fn draw(checkup: &Checkup<'_>, name: &str, folder: &Path) -> Result<(), String> {
    made(folder)?;
    for drawn in drawings(checkup).map_err(|error| error.to_string())? {
        let number = drawn.component.saturating_add(1);
        let pictures = [("", drawn.record), ("-cooling", drawn.cooling)];
        for (what, svg) in pictures.into_iter().filter_map(|(what, svg)| Some((what, svg?))) {
            write(&folder.join(format!("{name}-{number}{what}.svg")), &svg)?;
        }
    }
    Ok(())
}

/// Writes the page of a recipe into a folder: `<name>.html`.
pub(crate) fn page(checkup: &Checkup<'_>, name: &str, folder: &Path) -> Result<(), String> {
    made(folder)?;
    write(&folder.join(format!("{name}.html")), &to_html(checkup))
}

fn made(folder: &Path) -> Result<(), String> {
    std::fs::create_dir_all(folder)
        .map_err(|error| format!("{} cannot be made: {error}", shown(folder)))
}

fn write(path: &Path, text: &str) -> Result<(), String> {
    std::fs::write(path, text)
        .map_err(|error| format!("{} cannot be written: {error}", shown(path)))
}
