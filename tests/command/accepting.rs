//! Findings that a document answers for, and kitchens that choose authorities.

use greenweight::authority::Profile;
use serde_json::Value;

use super::{check, check_text, of_rule};

/// A roast whose thermometer nobody knows, in a kitchen; `more` follows the component.
fn roast(top: &str, to: &str, more: &str) -> String {
    format!(
        "title = \"Invented\"\n{top}\n[[component]]\nname = \"roast\"\nfood = \"whole-meat\"\n{more}\n\
         [[component.ingredient]]\nname = \"pork loin\"\nkind = \"meat\"\nfrom = \"pork\"\namount = \"2 kg\"\n\
         [[component.step]]\ndo = \"cook\"\nat = \"300 °F\"\nto = \"{to}\"\n\
         [[component.step]]\ndo = \"rest\"\nfor = \"10 min\"\n"
    )
}

const HOME: &str = "held_to = [\"us-consumer\"]";
const ACCEPT: &str = "[[component.accept]]\nrule = \"cook/endpoint\"\nreason = \"the probe was held in ice water: within 1 °F\"";

#[test]
fn an_accepted_finding_keeps_its_verdict_and_its_reason_is_in_every_report() {
    let text = roast(HOME, "150 °F", ACCEPT);
    let (status, report) = check_text(&text);
    let finding = of_rule(&report, "cook/endpoint")[0];
    assert_eq!((status, &finding["verdict"]), (0, &Value::from("unproven")));
    assert_eq!(report["files"][0]["verdict"], "unproven");
    assert_eq!(report["files"][0]["settled"], true);
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("roast.toml");
    std::fs::write(&path, &text).unwrap();
    let pages = folder.path().join("pages");
    for format in ["text", "json", "sarif", "junit"] {
        let arguments = [path.to_str().unwrap(), "--format", format, "--width", "200"];
        let output = check(&[&arguments[..], &["--pages", pages.to_str().unwrap()]].concat());
        let printed = String::from_utf8(output.stdout).unwrap();
        assert!(printed.contains("the probe was held in ice water"), "{format}: {printed}");
    }
    let page = std::fs::read_to_string(pages.join("roast.html")).unwrap();
    assert!(page.contains("the probe was held in ice water"));
    assert_eq!(page.matches("class=\"finding accepted\"").count(), 1);
    assert!(page.contains("class=\"finding meets\"") && !page.contains("class=\"finding breaks\""));
}

#[test]
fn without_its_reason_the_same_finding_fails() {
    let (status, report) = check_text(&roast(HOME, "150 °F", ""));
    assert_eq!((status, &report["files"][0]["settled"]), (1, &Value::from(false)));
    let (status, _) = check_text(&roast(
        HOME,
        "150 °F",
        "[[component.accept]]\nrule = \"cook/endpoint\"\nreason = \" \"",
    ));
    assert_eq!(status, 2);
}

#[test]
fn a_broken_limit_of_safety_cannot_be_accepted() {
    let (status, report) = check_text(&roast(HOME, "120 °F", ACCEPT));
    assert_eq!(status, 1);
    let finding = of_rule(&report, "cook/endpoint")[0];
    assert_eq!((&finding["verdict"], &finding["accepted"]), (&Value::from("breaks"), &Value::Null));
    let in_vain = &report["files"][0]["accepted_in_vain"][0];
    assert_eq!(in_vain["why"], "a broken limit of safety cannot be accepted");
}

#[test]
fn what_is_accepted_for_nothing_is_said() {
    let thermometer = format!("{HOME}\n[instruments]\nthermometer = \"1 °F\"");
    let (status, report) = check_text(&roast(&thermometer, "150 °F", ACCEPT));
    assert_eq!(status, 0);
    let in_vain = &report["files"][0]["accepted_in_vain"][0];
    assert_eq!(in_vain["why"], "there is nothing to accept: drop it");
    assert_eq!(in_vain["rule"], "cook/endpoint");
}

#[test]
fn a_rule_of_another_name_is_no_rule() {
    let (status, report) = check_text(&roast(
        HOME,
        "150 °F",
        "[[component.accept]]\nrule = \"cook/endpoints\"\nreason = \"so\"",
    ));
    assert_eq!(status, 2);
    assert_eq!(report["unread"][0]["faults"][0]["help"], "did you mean `cook/endpoint`?");
}

#[test]
fn a_kitchen_chooses_authorities_and_a_document_may_add_others() {
    let (_, report) =
        check_text(&roast("profile = \"us/shop\"\nheld_to = [\"canada\"]", "150 °F", ""));
    let file = &report["files"][0];
    assert_eq!(file["profile"], "us/shop");
    assert_eq!(file["held_to"], serde_json::json!(["us-food-code-2022", "canada"]));
    let (status, _) = check_text(&roast("", "150 °F", ""));
    assert_eq!(status, 2, "nobody's rules are assumed");
}

#[test]
fn every_kitchen_has_a_name_of_its_own_and_is_held_to_somebody() {
    for (n, profile) in Profile::ALL.iter().enumerate() {
        assert!(!profile.authorities.is_empty() && profile.key.contains('/'), "{profile:?}");
        assert!(Profile::ALL.iter().skip(n + 1).all(|other| other.key != profile.key));
    }
}

#[test]
fn a_label_gives_no_day_for_what_is_only_accepted() {
    let kept = "[[component.step]]\ndo = \"refrigerate\"\nat = \"36 °F\"\nfor = \"2 days\"\nlike = \"leftovers/meat-or-poultry\"\n";
    let label = |accept: &str, top: &str| {
        let text = roast(top, "150 °F", &format!("made_on = 2026-08-03\n{accept}")) + kept;
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("roast.toml");
        std::fs::write(&path, text).unwrap();
        let mut command = std::process::Command::new(env!("CARGO_BIN_EXE_greenweight"));
        let output = command.arg("label").arg(path).output().unwrap();
        (output.status.code(), String::from_utf8(output.stdout).unwrap())
    };
    let proven = format!("{HOME}\n[instruments]\nthermometer = \"1 °F\"");
    assert_eq!(label("", &proven).0, Some(0), "{}", label("", &proven).1);
    let cold = "[[component.accept]]\nrule = \"store/fridge-temperature\"\nreason = \"a good refrigerator\"";
    let (status, printed) = label(&format!("{ACCEPT}\n{cold}"), HOME);
    assert_eq!(status, Some(1), "{printed}");
}
