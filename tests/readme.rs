//! What the README shows is what the command and the tables say.
#![cfg(feature = "cli")]

use std::path::Path;
use std::process::Command;

fn root() -> &'static Path {
    Path::new(env!("CARGO_MANIFEST_DIR"))
}

fn readme() -> String {
    std::fs::read_to_string(root().join("README.md")).unwrap()
}

/// The fenced block after a marker.
fn shown(marker: &str) -> String {
    let readme = readme();
    let after = readme.split_once(marker).unwrap_or_else(|| panic!("no {marker}")).1;
    let block = after.split("```").nth(1).unwrap();
    block.split_once('\n').unwrap().1.to_owned()
}

#[test]
fn the_report_it_shows_is_the_one_the_command_prints() {
    let output = Command::new(env!("CARGO_BIN_EXE_greenweight"))
        .args(["check", "examples/recipes/wrong-quarter.toml"])
        .current_dir(root())
        .output()
        .unwrap();
    assert_eq!(output.status.code(), Some(1));
    let report = String::from_utf8(output.stdout).unwrap();
    assert!(report.starts_with(&shown("<!-- shown: wrong-quarter -->")), "{report}");
}

#[test]
fn the_document_it_shows_can_be_read_and_meets() {
    let document = shown("## How to write a recipe document");
    let recipe = greenweight::recipe::Recipe::read(&document).unwrap();
    let findings = recipe.check();
    assert!(findings.len() > 4);
    for checked in findings {
        assert_eq!(checked.finding.verdict, greenweight::finding::Verdict::Meets, "{checked:#?}");
    }
}

#[test]
fn the_counts_it_gives_are_those_of_the_tables() {
    use greenweight_references::References;
    let references = References::read();
    let rows = || references.tables.iter().flat_map(|table| &table.rows);
    let counts = References::count_by_seen(rows());
    let line = format!(
        "{} rows: {} read in the document, {} reported by another publication, {} from memory, {} computed.",
        rows().count(),
        counts["read"],
        counts["reported"],
        counts["memory"],
        counts["computed"]
    );
    assert!(readme().contains(&line), "the README should say: {line}");
}

#[test]
fn every_key_it_lists_is_known_and_every_known_key_is_listed() {
    let schema =
        std::fs::read_to_string(root().join("references/schema/recipe.schema.json")).unwrap();
    let schema: serde_json::Value = serde_json::from_str(&schema).unwrap();
    let keys = |pointer: &str| {
        schema.pointer(pointer).unwrap().as_object().unwrap().keys().cloned().collect::<Vec<_>>()
    };
    let readme = readme();
    let places = ["/properties", "/properties/instruments/properties"];
    let inner = ["component", "ingredient", "step"].map(|name| format!("/$defs/{name}/properties"));
    for key in places.iter().map(|p| keys(p)).chain(inner.iter().map(|p| keys(p))).flatten() {
        let listed = readme.contains(&format!("`{key}`"))
            || readme.contains(&format!("[{key}]"))
            || readme.contains(&format!(".{key}]"));
        assert!(listed, "the README does not list `{key}`");
    }
}
