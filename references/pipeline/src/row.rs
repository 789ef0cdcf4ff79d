use std::collections::BTreeSet;
use toml::Value;

#[derive(Debug, serde::Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Source {
    pub key: String,
    pub title: String,
    pub publisher: String,
    pub number: String,
    pub edition: String,
}

pub fn read_sources(text: &str) -> Vec<Source> {
    #[derive(serde::Deserialize)]
    #[serde(deny_unknown_fields)]
    struct File {
        source: Vec<Source>,
    }
    let sources = toml::from_str::<File>(text).expect("references/sources.toml").source;
    let keys: BTreeSet<_> = sources.iter().map(|source| &source.key).collect();
    assert_eq!(keys.len(), sources.len(), "a source key stands twice");
    sources
}

/// One reference table.
pub struct Table {
    /// Its path below `references/`, without the ending.
    pub path: String,
    pub title: String,
    /// What shape of row it has, which decides what Rust is made of it.
    pub shape: String,
    pub authority: Option<String>,
    pub question: String,
    pub does_not_apply: String,
    pub rows: Vec<Row>,
}

/// One row: what every row has, and the figures that only its shape has.
pub struct Row {
    pub key: String,
    pub printed: String,
    pub source: String,
    pub place: String,
    pub standing: String,
    pub seen: String,
    pub note: String,
    pub from: Option<String>,
    pub until: Option<String>,
    pub figures: toml::Table,
}

pub const STANDINGS: [&str; 6] =
    ["law", "guidance", "quality-advice", "handbook", "paper", "common-practice"];
pub const SEEN: [&str; 4] = ["read", "reported", "memory", "computed"];

impl Table {
    pub fn read(path: &str, text: &str, sources: &[Source]) -> Self {
        let mut file: toml::Table = text.parse().unwrap_or_else(|error| panic!("{path}: {error}"));
        let rows = file.remove("row").unwrap_or_else(|| panic!("{path}: no rows"));
        let rows: Vec<_> = rows
            .as_array()
            .unwrap()
            .iter()
            .map(|row| Row::read(path, row.as_table().unwrap().clone()))
            .collect();
        let keys: BTreeSet<_> = rows.iter().map(|row| &row.key).collect();
        assert_eq!(keys.len(), rows.len(), "{path}: a key stands twice");
        for row in &rows {
            assert!(
                sources.iter().any(|s| s.key == row.source),
                "{path}, {}: no source {}",
                row.key,
                row.source
            );
        }
        let mut take = |key: &str| file.remove(key).map(|value| text_of(path, key, &value));
        let need =
            |value: Option<String>, key: &str| value.unwrap_or_else(|| panic!("{path}: no {key}"));
        let table = Self {
            path: path.to_owned(),
            title: need(take("title"), "title"),
            shape: need(take("shape"), "shape"),
            authority: take("authority"),
            question: need(take("question"), "question"),
            does_not_apply: need(take("does_not_apply"), "does_not_apply"),
            rows,
        };
        assert!(file.is_empty(), "{path}: unknown keys {:?}", file.keys().collect::<Vec<_>>());
        table
    }

    pub fn room(&self) -> &str {
        self.path.split('/').next().unwrap()
    }

    /// The value of one row's figure, or the table's where the row has none.
    pub fn authority_of(&self, row: &Row) -> Option<String> {
        let own = row.figures.get("authority").map(|value| value.as_str().unwrap().to_owned());
        own.or_else(|| self.authority.clone()).filter(|name| name != "none")
    }
}

fn text_of(path: &str, key: &str, value: &Value) -> String {
    value.as_str().unwrap_or_else(|| panic!("{path}: {key} is not a string")).to_owned()
}

impl Row {
    fn read(path: &str, mut row: toml::Table) -> Self {
        let mut take = |key: &str| row.remove(key).map(|value| text_of(path, key, &value));
        let key = take("key").unwrap_or_else(|| panic!("{path}: a row without a key"));
        let need = |value: Option<String>, name: &str| {
            value.unwrap_or_else(|| panic!("{path}, {key}: no {name}"))
        };
        let printed = need(take("printed"), "printed");
        let source = need(take("source"), "source");
        let place = need(take("place"), "place");
        let standing = need(take("standing"), "standing");
        let seen = need(take("seen"), "seen");
        assert!(STANDINGS.contains(&standing.as_str()), "{path}, {key}: standing {standing}");
        assert!(SEEN.contains(&seen.as_str()), "{path}, {key}: seen {seen}");
        let note = take("note").unwrap_or_default();
        let from = take("in_force_from");
        let until = take("in_force_until");
        Self { key, printed, source, place, standing, seen, note, from, until, figures: row }
    }

    pub fn has(&self, name: &str) -> bool {
        self.figures.contains_key(name)
    }

    pub fn number(&self, name: &str) -> f64 {
        self.maybe_number(name).unwrap_or_else(|| panic!("{}: no number {name}", self.key))
    }

    pub fn maybe_number(&self, name: &str) -> Option<f64> {
        let value = self.figures.get(name)?;
        Some(value.as_float().unwrap_or_else(|| value.as_integer().expect(name) as f64))
    }

    pub fn words(&self, name: &str) -> &str {
        self.maybe_words(name).unwrap_or_else(|| panic!("{}: no {name}", self.key))
    }

    pub fn maybe_words(&self, name: &str) -> Option<&str> {
        Some(self.figures.get(name)?.as_str().expect(name))
    }

    pub fn pair(&self, name: &str) -> Option<(f64, f64)> {
        let pair = self.figures.get(name)?.as_array().expect(name);
        let [low, high] = pair.as_slice() else { panic!("{}: {name} is not a pair", self.key) };
        Some((low.as_float().unwrap(), high.as_float().unwrap()))
    }

    pub fn list(&self, name: &str) -> Vec<&str> {
        let words = self.figures.get(name).unwrap_or_else(|| panic!("{}: no {name}", self.key));
        words.as_array().expect(name).iter().map(|word| word.as_str().expect(name)).collect()
    }

    pub fn numbers(&self, name: &str) -> Vec<f64> {
        let numbers = self.figures.get(name).unwrap_or_else(|| panic!("{}: no {name}", self.key));
        numbers.as_array().expect(name).iter().map(|n| n.as_float().expect(name)).collect()
    }

    pub fn inner(&self, name: &str) -> &toml::Table {
        self.figures[name].as_table().expect(name)
    }
}
