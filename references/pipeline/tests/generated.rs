//! What is made from the references is what is in the tree. To make it anew:
//!
//! ```sh
//! GREENWEIGHT_REWRITE=1 cargo test -p greenweight-references
//! ```

use greenweight_references::{References, read, root};
use serde_json::{Value, json};

#[test]
fn every_generated_file_is_what_the_references_make() {
    let files = References::read().generated();
    if std::env::var_os("GREENWEIGHT_REWRITE").is_some() {
        files.iter().for_each(greenweight_references::Generated::write);
    }
    let stale: Vec<_> =
        files.iter().filter(|file| !file.is_current()).map(|file| &file.path).collect();
    assert!(
        stale.is_empty(),
        "these files differ from the references; the head of this test says how to mend it: {stale:#?}"
    );
}

#[test]
fn every_source_is_cited() {
    let references = References::read();
    let unused: Vec<_> = references.sources.iter().filter(|s| !references.cites(&s.key)).collect();
    assert!(unused.is_empty(), "sources that no row and no case cites: {unused:?}");
}

#[test]
fn a_practice_without_a_source_was_not_read_in_one() {
    let references = References::read();
    for table in &references.tables {
        for row in table.rows.iter().filter(|row| row.standing == "common-practice") {
            assert_ne!(row.seen, "read", "{}: {}", table.path, row.key);
        }
    }
}

#[test]
fn the_export_is_valid_by_its_schema_and_the_schema_refuses_an_unknown_mark() {
    let parse = |path: &str| serde_json::from_str::<Value>(&read(&root().join(path))).unwrap();
    let validator =
        jsonschema::validator_for(&parse("references/export/tables.schema.json")).unwrap();
    let mut export = parse("references/export/tables.json");
    let errors: Vec<_> =
        validator.iter_errors(&export).map(|e| format!("{e} at {}", e.instance_path())).collect();
    assert!(errors.is_empty(), "{errors:#?}");
    export["tables"][0]["rows"][0]["seen"] = json!("somewhere");
    assert!(!validator.is_valid(&export));
}
