//! Reads `references/` and makes files from it: the Rust tables of each room, a
//! Markdown page a table, and one JSON export.

mod export;
mod page;
mod row;
mod rust;

use std::collections::BTreeMap;
use std::path::{Path, PathBuf};

pub use row::{Row, Source, Table};

/// Everything below `references/`.
pub struct References {
    pub sources: Vec<Source>,
    pub tables: Vec<Table>,
    cited_by_cases: Vec<String>,
}

/// The root of the repository.
#[must_use]
pub fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..")
}

pub fn read(path: &Path) -> String {
    std::fs::read_to_string(path).unwrap_or_else(|error| panic!("{}: {error}", path.display()))
}

fn toml_files(folder: &Path) -> Vec<PathBuf> {
    let mut files: Vec<_> = std::fs::read_dir(folder)
        .unwrap_or_else(|error| panic!("{}: {error}", folder.display()))
        .map(|entry| entry.unwrap().path())
        .filter(|path| path.extension().is_some_and(|ending| ending == "toml"))
        .collect();
    files.sort();
    files
}

/// The rooms whose tables there are, in the order of the documentation.
pub const ROOMS: [&str; 9] =
    ["units", "cure", "salt", "fat", "cook", "chill", "store", "smoke", "shelf"];

impl References {
    pub fn read() -> Self {
        let folder = root().join("references");
        let sources = row::read_sources(&read(&folder.join("sources.toml")));
        let tables: Vec<_> = ROOMS
            .iter()
            .flat_map(|room| {
                toml_files(&folder.join(room)).into_iter().map(move |path| (room, path))
            })
            .map(|(room, path)| {
                let name = path.file_stem().unwrap().to_str().unwrap();
                Table::read(&format!("{room}/{name}"), &read(&path), &sources)
            })
            .collect();
        let cited_by_cases = toml_files(&folder.join("cases"))
            .iter()
            .flat_map(|path| {
                let cases: toml::Table = read(path).parse().unwrap();
                let cases = cases["case"].as_array().unwrap().clone();
                cases.into_iter().map(|case| case["source"].as_str().unwrap().to_owned())
            })
            .collect();
        Self { sources, tables, cited_by_cases }
    }

    pub fn table(&self, path: &str) -> &Table {
        self.tables
            .iter()
            .find(|table| table.path == path)
            .unwrap_or_else(|| panic!("no table {path}"))
    }

    pub fn source(&self, key: &str) -> &Source {
        self.sources
            .iter()
            .find(|source| source.key == key)
            .unwrap_or_else(|| panic!("no source {key}"))
    }

    /// Whether a row or a case cites the source.
    pub fn cites(&self, source: &str) -> bool {
        let in_rows =
            self.tables.iter().flat_map(|table| &table.rows).any(|row| row.source == source);
        in_rows || self.cited_by_cases.iter().any(|cited| cited == source)
    }

    /// How many rows there are of each `seen` mark.
    pub fn count_by_seen<'a>(rows: impl IntoIterator<Item = &'a Row>) -> BTreeMap<&'a str, usize> {
        let mut counts = BTreeMap::new();
        for row in rows {
            *counts.entry(row.seen.as_str()).or_default() += 1;
        }
        counts
    }

    /// Every file that is made from the references.
    pub fn generated(&self) -> Vec<Generated> {
        let mut files = vec![rust::sources(self), export::tables(self), page::index(self)];
        let rooms: Vec<_> = ROOMS.iter().filter_map(|room| rust::room(self, room)).collect();
        files.push(rust::remembered(self, &rooms));
        files.extend(rooms);
        files.extend(self.tables.iter().map(|table| page::table(self, table)));
        files
    }
}

/// A file made from the references.
pub struct Generated {
    pub path: String,
    pub text: String,
}

impl Generated {
    /// Writes it to its place.
    pub fn write(&self) {
        let path = root().join(&self.path);
        std::fs::create_dir_all(path.parent().unwrap()).unwrap();
        std::fs::write(path, &self.text).unwrap();
    }

    /// Whether the file in the tree is this one.
    pub fn is_current(&self) -> bool {
        std::fs::read_to_string(root().join(&self.path)).is_ok_and(|text| text == self.text)
    }
}
