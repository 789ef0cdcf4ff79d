//! The records of a check drawn, and its page.

use std::collections::BTreeMap;
use std::path::Component::Normal;
use std::path::Path;

use greenweight::report::{Checkup, drawings, to_html};

/// The names of the files that are drawn for each document: its own, and with the folders before it where
/// two documents have the same.
pub(crate) fn names<'p>(paths: impl Iterator<Item = &'p Path> + Clone) -> Vec<String> {
    let stem = |path: &Path| path.file_stem().unwrap_or_default().to_string_lossy().into_owned();
    let mut counts = BTreeMap::<_, usize>::new();
    for path in paths.clone() {
        *counts.entry(stem(path)).or_default() += 1;
    }
    let named = |path: &'p Path| {
        let stem = stem(path);
        if counts.get(&stem).is_none_or(|&n| n < 2) {
            return stem;
        }
        let folders = path.parent().into_iter().flat_map(Path::components);
        let folders = folders.filter(|part| matches!(part, Normal(_)));
        let parts = folders.map(|part| part.as_os_str().to_string_lossy().into_owned());
        parts.chain([stem]).collect::<Vec<_>>().join("-")
    };
    paths.map(named).collect()
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
        .map_err(|error| format!("{} cannot be made: {error}", folder.display()))
}

fn write(path: &Path, text: &str) -> Result<(), String> {
    std::fs::write(path, text)
        .map_err(|error| format!("{} cannot be written: {error}", path.display()))
}
