//! SARIF 2.1.0, held to the schema of the standard (OASIS, `tests/standards/`).

use std::fs;
use std::path::Path;

use serde_json::{Value, json};

use super::{check, example};

fn schema() -> jsonschema::Validator {
    let path =
        Path::new(env!("CARGO_MANIFEST_DIR")).join("tests/standards/sarif-2.1.0.schema.json");
    // Its pattern of a language has a bracket that closes nothing, which a strict reader refuses.
    let text = fs::read_to_string(path).unwrap().replace("[a-zA-Z]{2}]?$", "[a-zA-Z]{2}?$");
    jsonschema::validator_for(&serde_json::from_str(&text).unwrap()).unwrap()
}

fn sarif(paths: &[&str]) -> (Option<i32>, Value) {
    let output = check(&[paths, &["--format", "sarif"]].concat());
    let text = String::from_utf8(output.stdout).unwrap();
    (output.status.code(), serde_json::from_str(&text).unwrap())
}

#[test]
fn every_example_is_valid_by_the_schema_and_the_schema_refuses_what_is_not() {
    let schema = schema();
    let (_, mut report) = sarif(&["examples/recipes"]);
    let errors: Vec<_> =
        schema.iter_errors(&report).map(|e| format!("{e} at {}", e.instance_path())).collect();
    assert!(errors.is_empty(), "{errors:#?}");
    report["runs"][0]["results"][0]["level"] = json!("terrible");
    assert!(!schema.is_valid(&report));
}

#[test]
fn a_finding_stands_on_its_line_with_its_figures_and_its_mend() {
    let path = example("wrong-quarter");
    let (status, report) = sarif(&[path.to_str().unwrap()]);
    assert_eq!(status, Some(1));
    let results = report["runs"][0]["results"].as_array().unwrap();
    let nitrite = results.iter().find(|r| r["ruleId"] == "cure/ingoing-nitrite").unwrap();
    assert_eq!(nitrite["level"], "error");
    let text = nitrite["message"]["text"].as_str().unwrap();
    for part in ["697.5 mg/kg", "at most 156.25 mg/kg", "9 CFR 424.21", "use at most 7 g"] {
        assert!(text.contains(part), "{part}: {text}");
    }
    let place = &nitrite["locations"][0]["physicalLocation"];
    assert_eq!(place["artifactLocation"]["uri"], "examples/recipes/wrong-quarter.toml");
    let line = place["region"]["startLine"].as_u64().unwrap();
    let document = fs::read_to_string(path).unwrap();
    let written = document.lines().nth(usize::try_from(line - 1).unwrap()).unwrap();
    assert!(written.contains("1 1/4 oz"), "{written}");
    // The rule that it names is the one it points at.
    let index = usize::try_from(nitrite["ruleIndex"].as_u64().unwrap()).unwrap();
    assert_eq!(report["runs"][0]["tool"]["driver"]["rules"][index]["id"], "cure/ingoing-nitrite");
}

#[test]
fn unproven_is_a_warning_advice_a_note_and_what_meets_is_left_out() {
    let levels = |name: &str| -> Vec<(String, String)> {
        let (_, report) = sarif(&[example(name).to_str().unwrap()]);
        let results = report["runs"][0]["results"].as_array().unwrap().clone();
        let word = |value: &Value| value.as_str().unwrap().to_owned();
        results.iter().map(|r| (word(&r["ruleId"]), word(&r["level"]))).collect()
    };
    let pair = |rule: &str, level: &str| (rule.to_owned(), level.to_owned());
    assert!(levels("strength-not-said").iter().all(|(_, level)| level == "warning"));
    assert!(!levels("strength-not-said").is_empty());
    assert!(levels("freezer-past-advice").contains(&pair("store/freezer-time", "note")));
    assert!(levels("cheese-too-warm").contains(&pair("smoke/cheese-chamber", "warning")));
    assert!(levels("labelled-loaf").is_empty());
}

#[test]
fn a_document_that_cannot_be_read_is_a_notification_on_its_line() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("a b%ü.toml");
    fs::write(&path, "title = \"t\"\nheld_to = [\"nobody\"]\n").unwrap();
    let (status, report) = sarif(&[path.to_str().unwrap()]);
    assert_eq!(status, Some(2));
    assert!(schema().is_valid(&report));
    let run = &report["runs"][0]["invocations"][0];
    assert_eq!(run["executionSuccessful"], false);
    let all = run["toolExecutionNotifications"].as_array().unwrap();
    let nobody = |told: &&Value| told["message"]["text"].as_str().unwrap().contains("`nobody`");
    let told = all.iter().find(nobody).unwrap();
    assert_eq!(told["locations"][0]["physicalLocation"]["region"]["startLine"], 2);
    let uri = &told["locations"][0]["physicalLocation"]["artifactLocation"]["uri"];
    assert!(uri.as_str().unwrap().ends_with("/a%20b%25%C3%BC.toml"), "{uri}");
}
