//! The report for builds, against the schema that they read it by (`junit-4.xsd` of the dtkit project, MIT
//! licence; there is no standard).

use uppsala::{Document, XsdValidator, parse};

use super::{check, root};

fn invalid(report: &str) -> Vec<String> {
    let schema = std::fs::read_to_string(root().join("tests/standards/junit-4.xsd")).unwrap();
    let schema = parse(&schema).unwrap();
    let validator = XsdValidator::from_schema(&schema).unwrap();
    let report: Document<'_> = parse(report).unwrap();
    validator.validate(&report).iter().map(ToString::to_string).collect()
}

fn report(paths: &[&str]) -> String {
    let output = check(&[paths, &["--format", "junit"]].concat());
    String::from_utf8(output.stdout).unwrap()
}

#[test]
fn the_report_of_the_examples_and_of_what_cannot_be_read_is_valid() {
    let report = report(&["examples/recipes", "Cargo.toml"]);
    assert_eq!(invalid(&report), [""; 0]);
    let count = |element: &str| report.matches(element).count();
    let examples = std::fs::read_dir(root().join("examples/recipes")).unwrap().flatten();
    let recipes = examples.filter(|entry| entry.path().extension().is_some_and(|e| e == "toml"));
    assert_eq!(count("<testsuite "), recipes.count() + 1);
    assert!(count("<failure ") > 5 && count("<error ") > 0 && count("<system-out>") > 50);
}

#[test]
fn the_schema_would_refuse_a_case_without_a_name() {
    let report = report(&["examples/recipes/labelled-loaf.toml"]);
    let nameless = report.replacen("<testcase name=", "<testcase file=", 1);
    assert!(!invalid(&nameless.replace(" file=\"examples", " assertions=\"examples")).is_empty());
}

#[test]
fn a_suite_counts_what_breaks_and_what_is_unproven_as_failures() {
    let report = report(&["examples/recipes/endpoint-too-low.toml"]);
    assert!(report.contains("failures=\"2\" errors=\"0\" skipped=\"0\""), "{report}");
    assert_eq!(report.matches("type=\"breaks\"").count(), 2);
}

#[test]
fn signs_of_markup_and_characters_that_xml_cannot_hold_are_written_so_that_it_can_be_read() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("a&b<c.toml");
    let text = "title = \"Salt & <smoke>\"\nheld_to = [\"us-consumer\"]\n[[component]]\nname = \"\\\"a\\\" & b\"\nfood = \"whole-meat\"\n";
    std::fs::write(&path, text).unwrap();
    let found = report(&[path.to_str().unwrap()]);
    assert_eq!(invalid(&found), [""; 0]);
    assert!(found.contains("name=\"Salt &amp; &lt;smoke&gt;\""), "{found}");
    std::fs::write(&path, "title = \"a\" \u{1}").unwrap();
    assert_eq!(invalid(&report(&[path.to_str().unwrap()])), [""; 0]);
}
