//! The records that a document names, read from the files beside it.

use std::fs::File;
use std::path::{Component, Path};

use greenweight::recipe::{Fault, Recipe};

/// The most readings of a record that are kept: three weeks of one a second.
const MOST: usize = 2_000_000;

/// Reads every record that a recipe names.
pub(crate) fn read_all(document: &Path, recipe: &mut Recipe<'_>) -> Result<(), Vec<Fault>> {
    let mut faults = Vec::new();
    for component in &mut recipe.components {
        let Some(named) = &component.recorded_in else { continue };
        let place = named.place;
        let file = named.file.clone().into_owned();
        let mut fault = |message: String, help: &str| {
            let help = Some(help.to_owned()).filter(|help| !help.is_empty());
            faults.push(Fault { message, help, place });
        };
        // A document that somebody else wrote names no file outside its folder.
        let beside = Path::new(&file).components().all(|part| matches!(part, Component::Normal(_)));
        if !beside {
            fault(
                format!("`{file}` is not beside the document"),
                "name a file in its folder, or in one below it",
            );
            continue;
        }
        let path = document.parent().unwrap_or(Path::new("")).join(&file);
        match File::open(&path) {
            Err(error) => fault(format!("{file} cannot be read: {error}"), ""),
            Ok(opened) => {
                if let Err(error) = component.read_record(opened, MOST) {
                    fault(format!("{file}, {error}"), "");
                }
            }
        }
    }
    if faults.is_empty() { Ok(()) } else { Err(faults) }
}
