//! Every rule in words: its recipes do what its page says, and the pages are those that are made here.
//! `GREENWEIGHT_REWRITE=1` writes them.
#![cfg(feature = "report")]

use std::collections::BTreeMap;
use std::fmt::Write;
use std::path::{Path, PathBuf};

use greenweight::finding::{Force, Rule};
use greenweight::recipe::{Recipe, rules};
use greenweight::report::{Checkup, Format, Outcome, SHORT_CAUTION};
use serde_json::Value;

fn root() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR"))
}

/// What `references/rules/` says of a rule.
struct InWords {
    rule: &'static Rule,
    entry: toml::Table,
}

const KEYS: [&str; 10] = [
    "id",
    "why",
    "mend",
    "tables",
    "meets",
    "breaks",
    "unproven",
    "never_breaks",
    "never_unproven",
    "silent",
];

impl InWords {
    fn text(&self, key: &str) -> &str {
        self.entry.get(key).and_then(toml::Value::as_str).unwrap_or_default().trim()
    }

    fn tables(&self) -> Vec<&str> {
        let tables = self.entry["tables"].as_array().unwrap();
        tables.iter().map(|table| table.as_str().unwrap()).collect()
    }

    /// What stands instead of what in the recipe that meets.
    fn changes(&self, key: &str) -> Option<Vec<(&str, &str)>> {
        let pairs = self.entry.get(key)?.as_array()?.iter();
        Some(pairs.map(|pair| (as_text(&pair[0]), as_text(&pair[1]))).collect())
    }

    fn recipe(&self, key: &str) -> String {
        let meets = self.entry["meets"].as_str().unwrap().to_owned();
        let changes = self.changes(key).unwrap_or_default();
        changes.iter().fold(meets, |text, (from, to)| {
            assert_eq!(text.matches(from).count(), 1, "{}, {key}: {from:?}", self.rule.id);
            text.replace(from, to)
        })
    }

    /// The findings of the rule in one of its recipes, as JSON.
    fn findings(&self, key: &str) -> Vec<Value> {
        let text = self.recipe(key);
        let recipe = Recipe::read(&text)
            .unwrap_or_else(|error| panic!("{}, {key}: {error}\n{text}", self.rule.id));
        let outcome = Outcome::Checked(Checkup::new("recipe.toml".into(), &text, recipe));
        let (_, report) = Format::Json.report(&outcome).unwrap();
        let report: Value = serde_json::from_str(&report).unwrap();
        let found = report["files"][0]["findings"].as_array().unwrap().clone();
        found.into_iter().filter(|finding| finding["rule"] == self.rule.id).collect()
    }

    fn silent(&self) -> bool {
        self.entry.get("silent").is_some_and(|silent| silent.as_bool().unwrap())
    }
}

fn as_text(value: &toml::Value) -> &str {
    value.as_str().expect("a change is text")
}

/// Every rule with its words, in the order of [`rules`].
fn in_words() -> Vec<InWords> {
    let mut entries = BTreeMap::new();
    for file in std::fs::read_dir(root().join("references/rules")).unwrap() {
        let path = file.unwrap().path();
        let table: toml::Table = std::fs::read_to_string(&path).unwrap().parse().unwrap();
        let room = path.file_stem().unwrap().to_str().unwrap().to_owned();
        for entry in table["rule"].as_array().unwrap() {
            let entry = entry.as_table().unwrap().clone();
            let id = entry["id"].as_str().unwrap().to_owned();
            assert!(id.starts_with(&format!("{room}/")), "{id} stands in {}", path.display());
            assert!(entry.keys().all(|key| KEYS.contains(&key.as_str())), "{id}: {entry:?}");
            assert!(entries.insert(id.clone(), entry).is_none(), "{id} twice");
        }
    }
    let words = rules().map(|rule| {
        let entry = entries.remove(rule.id).unwrap_or_else(|| panic!("{} has no words", rule.id));
        InWords { rule, entry }
    });
    let words = words.collect();
    assert!(entries.is_empty(), "words of no rule: {:?}", entries.keys());
    words
}

fn departs(rule: &Rule, finding: &Value) -> bool {
    match rule.force {
        Force::Advice => finding["past_advice"] == true,
        _ => finding["verdict"] == "breaks",
    }
}

#[test]
fn every_rule_has_a_recipe_that_meets_it_one_that_breaks_it_and_one_that_leaves_it_unproven() {
    for words in in_words() {
        let (rule, id) = (words.rule, words.rule.id);
        assert!(!words.text("why").is_empty() && !words.text("mend").is_empty(), "{id}");
        let met = words.findings("meets");
        let meets = |f: &Value| f["verdict"] == "meets" && f["past_advice"] == false;
        assert_eq!(met.is_empty(), words.silent(), "{id} says nothing where it is met, or does");
        assert!(met.iter().all(meets), "{id}: {met:#?}");
        for (key, never) in [("breaks", "never_breaks"), ("unproven", "never_unproven")] {
            let has = words.entry.contains_key(key);
            assert_ne!(has, !words.text(never).is_empty(), "{id}: {key} or {never}");
            let found = words.findings(key);
            let wanted = match key {
                _ if !has => true,
                "breaks" => found.iter().any(|finding| departs(rule, finding)),
                _ => {
                    found.iter().any(|finding| finding["verdict"] == "unproven")
                        && found.iter().all(|finding| finding["verdict"] != "breaks")
                }
            };
            assert!(wanted, "{id}, {key}: {found:#?}");
        }
    }
}

#[test]
fn every_table_that_a_finding_cites_is_on_the_page_of_its_rule() {
    for words in in_words() {
        let tables = words.tables();
        for table in &tables {
            let page = root().join("references/pages").join(table).with_extension("md");
            assert!(page.is_file(), "{}: no page {table}", words.rule.id);
        }
        for finding in ["meets", "breaks", "unproven"].iter().flat_map(|key| words.findings(key)) {
            for source in finding["sources"].as_array().unwrap() {
                let table = source["table"].as_str().unwrap();
                assert!(tables.contains(&table), "{}: {table}", words.rule.id);
            }
        }
    }
}

/// What a report says of the rule in one of its recipes, the worst first.
fn said(out: &mut String, findings: &[Value]) {
    let worst = |finding: &&Value| match finding["verdict"].as_str() {
        Some("breaks") => 2,
        Some("unproven") => 1,
        _ => i32::from(finding["past_advice"] == true),
    };
    let Some(finding) = findings.iter().max_by_key(worst) else {
        writeln!(out, "The report says nothing of it.\n").unwrap();
        return;
    };
    let text = |value: &Value| value.as_str().map(str::to_owned);
    let sources = finding["sources"].as_array().unwrap();
    let memory = sources.iter().any(|source| source["seen"] == "memory");
    let lines = [
        ("found", text(&finding["found"]["text"])),
        ("missing", text(&finding["missing"])),
        ("limit", text(&finding["limit"]["text"])),
        ("source", memory.then(|| "from memory: check it".to_owned())),
        ("mend", text(&finding["mend"])),
        ("note", text(&finding["note"])),
    ];
    writeln!(out, "```text").unwrap();
    let past = if finding["past_advice"] == true { ", past advice" } else { "" };
    writeln!(out, "{}{past}", finding["verdict"].as_str().unwrap()).unwrap();
    for (name, line) in lines.into_iter().filter_map(|(name, line)| Some((name, line?))) {
        writeln!(out, "{name:<8}{line}").unwrap();
    }
    writeln!(out, "```\n").unwrap();
}

fn force(rule: &Rule) -> &'static str {
    match rule.force {
        Force::Safety => "a limit of safety",
        Force::Quality => "a limit of quality",
        _ => "advice: to depart from it is a note, never a break",
    }
}

fn page(words: &InWords) -> String {
    let mut out = String::new();
    let rule = words.rule;
    writeln!(out, "<!-- Made from references/rules by tests/rules.rs. Do not edit. -->\n").unwrap();
    writeln!(out, "# {}: {}\n", rule.id, rule.asks).unwrap();
    writeln!(out, "{}.\n\n{}\n", capital(force(rule)), words.text("why")).unwrap();
    writeln!(out, "## How to mend it\n\n{}\n", words.text("mend")).unwrap();
    writeln!(out, "{SHORT_CAUTION}\n").unwrap();
    writeln!(out, "## Sources\n").unwrap();
    for table in words.tables() {
        writeln!(out, "- [{table}](../../{table}.md)").unwrap();
    }
    if words.tables().is_empty() {
        writeln!(
            out,
            "No figure: it holds the recipe against itself, or asks for what is missing."
        )
        .unwrap();
    }
    writeln!(out, "\n## A recipe that meets it\n\n```toml\n{}\n```\n", words.text("meets"))
        .unwrap();
    said(&mut out, &words.findings("meets"));
    for (key, never, heading) in [
        ("breaks", "never_breaks", "One that breaks it"),
        ("unproven", "never_unproven", "One that leaves it unproven"),
    ] {
        let heading = match (key, rule.force) {
            ("breaks", Force::Advice) => "One that departs from it",
            _ => heading,
        };
        writeln!(out, "## {heading}\n").unwrap();
        match words.changes(key) {
            None => writeln!(out, "There is none. {}\n", words.text(never)).unwrap(),
            Some(changes) => {
                for (from, to) in changes {
                    let (from, to) = (from.trim_matches('\n'), to.trim_matches('\n'));
                    writeln!(out, "Instead of\n\n```toml\n{from}\n```\n").unwrap();
                    let nothing = "nothing stands there.\n".to_owned();
                    let written = format!("it says\n\n```toml\n{to}\n```\n");
                    let it = if to.trim().is_empty() { nothing } else { written };
                    writeln!(out, "{it}").unwrap();
                }
                said(&mut out, &words.findings(key));
            }
        }
    }
    out.trim_end().to_owned() + "\n"
}

fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map(char::to_uppercase).into_iter().flatten().chain(letters).collect()
}

/// The list of rules by room, with the three recipes of each.
fn index(all: &[InWords]) -> String {
    let mut out = "<!-- Made from references/rules by tests/rules.rs. Do not edit. -->\n\n# Rules\n\n\
        Every rule that a recipe can be held to, room by room. Its identity stands in every report and does not\n\
        change. Behind each stands a page: why, how to mend it, the tables, and an invented recipe that meets it,\n\
        one that breaks it (or departs from advice) and one that leaves it unproven, which are run by the tests.\n"
        .to_owned();
    let mut room = "";
    for words in all {
        let (of, name) = words.rule.id.split_once('/').unwrap();
        if of != room {
            room = of;
            writeln!(out, "\n## {room}\n").unwrap();
            writeln!(out, "| rule | asks | force | meets | breaks | unproven |").unwrap();
            writeln!(out, "|---|---|---|---|---|---|").unwrap();
        }
        let shown = |key: &str| if words.entry.contains_key(key) { "shown" } else { "never" };
        let met = if words.silent() { "shown, says nothing" } else { "shown" };
        let force = force(words.rule).split(':').next().unwrap();
        writeln!(
            out,
            "| [{}]({of}/{name}.md) | {} | {force} | {met} | {} | {} |",
            words.rule.id,
            words.rule.asks,
            shown("breaks"),
            shown("unproven")
        )
        .unwrap();
    }
    out
}

/// The pages and words, for programs.
fn rust(all: &[InWords]) -> String {
    let mut out = format!(
        "// Made from references/rules by tests/rules.rs. Do not edit.\n\nuse super::rules::InWords;\n\n\
         #[rustfmt::skip]\npub(super) static IN_WORDS: [InWords; {}] = [\n",
        all.len()
    );
    for words in all {
        let id = words.rule.id;
        let joined = |key: &str| words.text(key).split_whitespace().collect::<Vec<_>>().join(" ");
        writeln!(
            out,
            "    InWords {{\n        rule: {id:?},\n        why: {:?},\n        mend: {:?},\n        page: include_str!(\"../../references/pages/rules/{id}.md\"),\n    }},",
            joined("why"),
            joined("mend")
        )
        .unwrap();
    }
    out.push_str("];\n");
    out
}

#[test]
fn the_pages_are_those_made_from_the_words() {
    let all = in_words();
    let pages = root().join("references/pages/rules");
    let mut files: BTreeMap<PathBuf, String> = all
        .iter()
        .map(|words| (pages.join(words.rule.id).with_extension("md"), page(words)))
        .collect();
    files.insert(pages.join("README.md"), index(&all));
    files.insert(root().join("src/report/rules_table.rs"), rust(&all));
    if std::env::var_os("GREENWEIGHT_REWRITE").is_some() {
        for (path, text) in &files {
            std::fs::create_dir_all(path.parent().unwrap()).unwrap();
            std::fs::write(path, text).unwrap();
        }
    }
    for (path, text) in &files {
        let found = std::fs::read_to_string(path).unwrap_or_default();
        assert!(found == *text, "{} is not what references/rules gives", path.display());
    }
    let rooms = std::fs::read_dir(&pages).unwrap().flatten().map(|entry| entry.path());
    let rooms =
        rooms.filter(|path| path.is_dir()).flat_map(|room| std::fs::read_dir(room).unwrap());
    for left in rooms.map(|entry| entry.unwrap().path()) {
        assert!(files.contains_key(&left), "{} is of no rule", left.display());
    }
}
