//! Documents that cannot be read.

use rstest::rstest;

use super::{check, example, root};

/// An otherwise good document with one line changed, and what is said of it.
fn said_of(find: &str, replace: &str) -> (i32, String) {
    let good = std::fs::read_to_string(root().join(example("farm-stall-ring-sausage"))).unwrap();
    assert!(good.contains(find), "the example has no {find}");
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("r.toml");
    std::fs::write(&path, good.replacen(find, replace, 1)).unwrap();
    let output = check(&[path.to_str().unwrap()]);
    (output.status.code().unwrap(), String::from_utf8(output.stderr).unwrap())
}

#[rstest]
#[case::a_hyphen(
    "amount = \"4 lb\"",
    "amount = \"1-1/4 lb\"",
    "r.toml:23:11",
    "write `1 1/4` for one and a quarter"
)]
#[case::a_comma("amount = \"4 lb\"", "amount = \"1,8 kg\"", "r.toml:23:12", "a comma is not read")]
#[case::both_marks(
    "amount = \"4 lb\"",
    "amount = \"1.250,0 g\"",
    "r.toml:23",
    "a comma is not read"
)]
#[case::a_bare_number("amount = \"4 lb\"", "amount = \"4\"", "r.toml:23", "unit")]
#[case::a_number_without_quotes(
    "amount = \"4 lb\"",
    "amount = 4",
    "r.toml:23:10",
    "text with its unit"
)]
#[case::ounces_of_a_liquid("amount = \"1 cup\"", "amount = \"8 oz\"", "r.toml:", "fl oz")]
#[case::whose_cups("measures = \"US\"\n", "", "r.toml:", "whose measures")]
#[case::an_unknown_key("fat = \"25 %\"", "fatt = \"25 %\"", "r.toml:24:1", "did you mean `fat`?")]
#[case::an_unknown_word(
    "kind = \"meat\"",
    "kind = \"maet\"",
    "r.toml:21:8",
    "did you mean `meat`?"
)]
#[case::an_unknown_row(
    "like = \"sausage/cooked\"",
    "like = \"sausage/coked\"",
    "r.toml:",
    "did you mean `sausage/cooked`?"
)]
#[case::no_scale_letter("at = \"38 °F\"", "at = \"38\"", "r.toml:", "°F")]
#[case::a_strength_over_the_whole("\"6.25 %\" }", "\"106 %\" }", "r.toml:", "100")]
#[case::a_strength_as_a_fraction("\"6.25 %\" }", "\"0.0625\" }", "r.toml:", "%")]
#[case::no_authority(
    "held_to = [\"us-fsis\", \"us-consumer\"]",
    "held_to = []",
    "r.toml:",
    "us-consumer"
)]
#[case::not_toml("title = ", "title ", "r.toml:4", "not TOML")]
#[case::a_day_that_is_not(
    "measures = \"US\"",
    "measures = \"US\"\ndate = 2026-02-30",
    "r.toml:7",
    "TOML"
)]
#[case::a_division_of_nothing(
    "scale = \"1 g\"  ",
    "scale = \"0 g\"  ",
    "r.toml:9",
    "scale division of 0 kg is outside"
)]
fn a_document_that_could_mislead_is_refused_with_its_place_and_how_to_write_it(
    #[case] find: &str,
    #[case] replace: &str,
    #[case] place: &str,
    #[case] words: &str,
) {
    let (status, said) = said_of(find, replace);
    assert_eq!(status, 2, "{said}");
    assert!(said.contains(place), "no {place} in:\n{said}");
    assert!(said.contains(words), "no {words} in:\n{said}");
    assert!(said.contains('^'), "no caret in:\n{said}");
}

#[test]
fn every_fault_of_a_document_is_said_at_once() {
    let good = std::fs::read_to_string(root().join(example("farm-stall-ring-sausage"))).unwrap();
    let bad = good
        .replace("\"4 lb\"", "\"4\"")
        .replace("\"3 lb\"", "\"3,5 lb\"")
        .replace("do = \"chill\"", "do = \"chil\"");
    let error = greenweight::recipe::Recipe::read(&bad).unwrap_err();
    assert_eq!(error.faults.len(), 3);
    assert!(error.faults.is_sorted_by_key(|fault| fault.place.start));
}

#[test]
fn bytes_that_are_not_text_are_said_so() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("r.toml");
    std::fs::write(&path, b"title = \"\xff\"").unwrap();
    let output = check(&[path.to_str().unwrap()]);
    assert_eq!(output.status.code(), Some(2));
    assert!(String::from_utf8(output.stderr).unwrap().contains("byte 9"));
}

#[test]
fn a_document_too_large_is_refused() {
    let large = format!("title = \"{}\"", "x".repeat(5 << 20));
    let error = greenweight::recipe::Recipe::read(&large).unwrap_err();
    assert!(error.faults[0].message.contains("bytes"));
}

#[test]
fn a_record_that_runs_backwards_is_refused_and_one_that_is_cooler_than_the_plan_counts() {
    let good = std::fs::read_to_string(root().join(example("farm-stall-ring-sausage"))).unwrap();
    let record = |first: &str, second: &str| {
        let rows = format!(
            "[[component.record]]\nafter = \"{first}\"\ninside = \"40 °F\"\n\n[[component.record]]\nafter = \"{second}\"\ninside = \"150 °F\"\n\n"
        );
        good.replacen(
            "# ---------------------------------------------------------------- the cheese",
            &rows,
            1,
        )
    };
    let error = greenweight::recipe::Recipe::read(&record("2 h", "1 h")).unwrap_err();
    assert!(error.faults[0].message.contains("runs forward"));
    let text = record("1 h", "3 h");
    let recipe = greenweight::recipe::Recipe::read(&text).unwrap();
    let broken = recipe.check().iter().any(|checked| {
        checked.finding.rule.id == "cook/endpoint"
            && checked.finding.verdict == greenweight::finding::Verdict::Breaks
    });
    assert!(broken, "planned to 163 °F, recorded at 150 °F at the most");
}
