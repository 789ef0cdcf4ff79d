//! Findings that a document answers for, and kitchens that choose authorities.

use greenweight::authority::Profile;
use rstest::rstest;
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
const PROBE: &str = "[instruments]\nthermometer = \"1 °F\"";
const ACCEPT: &str =
    "[[component.accept]]\nrule = \"cook/endpoint\"\nreason = \"the probe was held in ice water\"";
const DAYS: &str = "[[component.accept]]\nrule = \"store/fridge-time\"\nreason = \"seven days, by the dairy that made it\"";

/// A cheese in a refrigerator, of which no chart has a row.
fn cheese(ingredients: &str, steps: &str, accept: &str) -> String {
    format!(
        "title = \"Invented\"\n{HOME}\n{PROBE}\n[[component]]\nname = \"cheese\"\nfood = \"cheese\"\n\
         made_on = 2026-08-03\n\
         [[component.ingredient]]\nname = \"hard cheese\"\nkind = \"other\"\namount = \"1 kg\"\n{ingredients}\n\
         {steps}\n[[component.step]]\ndo = \"refrigerate\"\nat = \"37 °F\"\nfor = \"7 days\"\n{accept}\n"
    )
}

/// Why what is accepted under a rule is not heard.
fn why<'a>(report: &'a Value, rule: &str) -> Option<&'a str> {
    let in_vain = report["files"][0]["accepted_in_vain"].as_array().unwrap();
    in_vain.iter().find(|accepted| accepted["rule"] == rule)?["why"].as_str()
}

const PAST: &str =
    "the figure may be past its limit of safety: show that it is not, or change the recipe";
const SAYABLE: &str = "the recipe can say what is missing: write it, in place of accepting";

#[test]
fn an_accepted_finding_keeps_its_verdict_and_its_reason_is_in_every_report() {
    let text = cheese("", "", DAYS);
    let (status, report) = check_text(&text);
    let finding = of_rule(&report, "store/fridge-time")[0];
    assert_eq!((status, &finding["verdict"]), (0, &Value::from("unproven")));
    assert_eq!(report["files"][0]["verdict"], "unproven");
    assert_eq!(report["files"][0]["settled"], true);
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("cheese.toml");
    std::fs::write(&path, &text).unwrap();
    let pages = folder.path().join("pages");
    for format in ["text", "json", "sarif", "junit"] {
        let arguments = [path.to_str().unwrap(), "--format", format, "--width", "200"];
        let output = check(&[&arguments[..], &["--pages", pages.to_str().unwrap()]].concat());
        let printed = String::from_utf8(output.stdout).unwrap();
        assert!(printed.contains("by the dairy that made it"), "{format}: {printed}");
    }
    let page = std::fs::read_to_string(pages.join("cheese.html")).unwrap();
    assert!(page.contains("by the dairy that made it"));
    assert_eq!(page.matches("class=\"finding accepted\"").count(), 1);
    assert!(page.contains("class=\"finding meets\"") && !page.contains("class=\"finding breaks\""));
}

#[test]
fn where_nothing_is_to_be_accepted_the_status_is_that_of_the_findings_and_the_reason_stays() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("cheese.toml");
    std::fs::write(&path, cheese("", "", DAYS)).unwrap();
    let output = check(&[path.to_str().unwrap(), "--no-accepted", "--width", "200"]);
    assert_eq!(output.status.code(), Some(1));
    assert!(String::from_utf8(output.stdout).unwrap().contains("by the dairy that made it"));
    let proven = format!("{HOME}\n{PROBE}");
    std::fs::write(&path, roast(&proven, "150 °F", "")).unwrap();
    assert_eq!(check(&[path.to_str().unwrap(), "--no-accepted"]).status.code(), Some(0));
}

#[test]
fn without_its_reason_the_same_finding_fails() {
    let (status, report) = check_text(&cheese("", "", ""));
    assert_eq!((status, &report["files"][0]["settled"]), (1, &Value::from(false)));
    let blank = "[[component.accept]]\nrule = \"store/fridge-time\"\nreason = \" \"";
    assert_eq!(check_text(&cheese("", "", blank)).0, 2);
}

#[test]
fn a_broken_limit_of_safety_cannot_be_accepted() {
    let (status, report) = check_text(&roast(HOME, "120 °F", ACCEPT));
    assert_eq!(status, 1);
    let finding = of_rule(&report, "cook/endpoint")[0];
    assert_eq!((&finding["verdict"], &finding["accepted"]), (&Value::from("breaks"), &Value::Null));
    let broken = "a broken limit of safety cannot be accepted";
    assert_eq!(why(&report, "cook/endpoint"), Some(broken));
}

#[test]
fn what_is_accepted_for_nothing_is_said() {
    let thermometer = format!("{HOME}\n{PROBE}");
    let (status, report) = check_text(&roast(&thermometer, "150 °F", ACCEPT));
    assert_eq!(status, 0);
    assert_eq!(why(&report, "cook/endpoint"), Some("there is nothing to accept: drop it"));
}

fn accepted(rule: &str) -> String {
    format!("[[component.accept]]\nrule = \"{rule}\"\nreason = \"family recipe\"")
}

const OIL_AND_HERBS: &str = "[[component.ingredient]]\nname = \"oil\"\nkind = \"oil\"\namount = \"500 g\"\n\
     [[component.ingredient]]\nname = \"rosemary\"\nkind = \"fresh-herbs\"\namount = \"5 g\"";

#[rstest]
#[case::tolerance("cook/endpoint", roast(HOME, "150 °F", &accepted("cook/endpoint")))]
#[case::time("store/fridge-time", roast(HOME, "150 °F", &accepted("store/fridge-time"))
    + "[[component.step]]\ndo = \"refrigerate\"\nat = \"36 °F\"\nlike = \"leftovers/meat-or-poultry\"\n")]
#[case::row_of_the_chart("store/fridge-time", roast(HOME, "150 °F", &accepted("store/fridge-time"))
    + "[[component.step]]\ndo = \"refrigerate\"\nat = \"36 °F\"\nfor = \"60 days\"\n")]
#[case::more_than_a_cheese("store/fridge-time", cheese(OIL_AND_HERBS, "", DAYS))]
#[case::pack_without_air(
    "store/fridge-time",
    cheese("", "[[component.step]]\ndo = \"pack\"\nvacuum = true", DAYS)
)]
#[case::temperature("store/fridge-temperature", roast(HOME, "150 °F", &accepted("store/fridge-temperature"))
    + "[[component.step]]\ndo = \"refrigerate\"\nfor = \"2 days\"\nlike = \"leftovers/meat-or-poultry\"\n")]
#[case::animal("cook/endpoint",
    roast(HOME, "150 °F", &accepted("cook/endpoint")).replace("from = \"pork\"\n", ""))]
fn what_the_recipe_can_say_cannot_be_accepted(#[case] rule: &str, #[case] text: String) {
    let (status, report) = check_text(&text);
    assert_eq!(status, 1);
    let found = of_rule(&report, rule);
    assert!(found.iter().any(|finding| finding["verdict"] == "unproven"), "{found:#?}");
    assert!(found.iter().all(|finding| finding["accepted"].is_null()), "{found:#?}");
    assert_eq!(why(&report, rule), Some(SAYABLE));
}

/// A sausage of a plant; its cure is one step of a scale below the limit, or as it is written.
fn cured(cure: &str, accept: &str) -> String {
    format!(
        "title = \"Invented\"\nheld_to = [\"us-fsis\"]\n[instruments]\nscale = \"0.1 g\"\n[[component]]\n\
         name = \"sausage\"\nfood = \"ground-meat\"\nraw = true\ncure = {{ method = \"ground\" }}\n{accept}\n\
         [[component.ingredient]]\nname = \"pork\"\nkind = \"meat\"\nfrom = \"pork\"\namount = \"2 kg\"\n\
         [[component.ingredient]]\nname = \"curing salt\"\nkind = \"curing-premix\"\n{cure}\n"
    )
}

const WEIGHED: &str = "strength = { sodium-nitrite = \"6.25 %\" }\namount = \"4.5 g\"";

#[rstest]
#[case::a_spoon("strength = { sodium-nitrite = \"6.25 %\" }\namount = \"100 mL\"")]
#[case::no_strength("amount = \"200 g\"")]
#[case::at_the_limit("strength = { sodium-nitrite = \"6.25 %\" }\namount = \"5 g\"")]
fn a_dose_that_may_be_past_its_limit_cannot_be_accepted(#[case] cure: &str) {
    let (status, report) = check_text(&cured(cure, &accepted("cure/ingoing-nitrite")));
    assert_eq!(status, 1);
    let finding = of_rule(&report, "cure/ingoing-nitrite")[0];
    assert_eq!(finding["verdict"], "unproven");
    let (high, limit) = (finding["found"]["high"].as_f64(), finding["limit"]["figure"].as_f64());
    assert!(high.is_none() || high > limit, "{finding:#?}");
    assert!(finding["accepted"].is_null());
    assert_eq!(why(&report, "cure/ingoing-nitrite"), Some(PAST));
}

#[test]
fn hours_in_the_warm_that_no_rule_allows_cannot_be_accepted() {
    let stands = "[[component.step]]\ndo = \"hold\"\nat = \"25 °C\"\nfor = \"12 h\"\n";
    let eu = format!("held_to = [\"european-union\"]\n{PROBE}");
    let both = format!("{}\n{}", accepted("store/warm-time"), accepted("cook/authority"));
    let (status, report) = check_text(&(roast(&eu, "150 °F", &both) + stands));
    let warm = of_rule(&report, "store/warm-time")[0];
    assert_eq!((status, &warm["verdict"]), (1, &Value::from("unproven")));
    assert!(warm["found"]["low"].as_f64() > warm["limit"]["figure"].as_f64());
    assert!(warm["accepted"].is_null());
    assert_eq!(why(&report, "store/warm-time"), Some(PAST));
    // That no authority of the European Union says how hot is a gap in the tables.
    assert_eq!(of_rule(&report, "cook/authority")[0]["accepted"], "family recipe");
    assert_eq!(why(&report, "cook/authority"), None);
}

#[test]
fn what_a_laboratory_alone_can_say_is_accepted() {
    let (status, report) = check_text(&cured(WEIGHED, &accepted("cure/residue")));
    let finding = of_rule(&report, "cure/residue")[0];
    assert_eq!((&finding["verdict"], status), (&Value::from("unproven"), 0), "{report:#}");
    assert_eq!(finding["accepted"], "family recipe");
    assert_eq!(check_text(&cured(WEIGHED, "")).0, 1);
}

#[test]
fn a_chart_that_is_not_held_is_accepted_and_one_that_is_held_is_not() {
    let kept = |like: &str| {
        format!(
            "[[component.step]]\ndo = \"refrigerate\"\nat = \"36 °F\"\nfor = \"9 days\"\n{like}"
        )
    };
    let plant = format!("held_to = [\"european-union\", \"us-consumer\"]\n{PROBE}");
    let accept = accepted("store/fridge-time");
    let like = "like = \"leftovers/meat-or-poultry\"\n";
    let (status, report) = check_text(&(roast(&plant, "150 °F", &accept) + &kept(like)));
    assert_eq!(
        (status, &of_rule(&report, "store/fridge-time")[0]["verdict"]),
        (1, &"breaks".into())
    );
    let plant = format!("held_to = [\"european-union\"]\n{PROBE}");
    let accept = format!("{}\n{}", accepted("store/authority"), accepted("cook/authority"));
    let (status, report) = check_text(&(roast(&plant, "150 °F", &accept) + &kept("")));
    assert_eq!((status, of_rule(&report, "store/authority").len()), (0, 1), "{report:#}");
}

#[test]
fn a_broken_limit_of_quality_is_accepted() {
    let smoke = "[[component.step]]\ndo = \"cold-smoke\"\nat = \"95 °F\"\nfor = \"2 h\"";
    let (_, report) = check_text(&cheese("", smoke, &accepted("smoke/cheese-chamber")));
    let finding = of_rule(&report, "smoke/cheese-chamber")[0];
    assert_eq!((&finding["force"], &finding["verdict"]), (&"quality".into(), &"breaks".into()));
    assert_eq!(finding["accepted"], "family recipe");
    assert_eq!(why(&report, "smoke/cheese-chamber"), None);
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
    let label = |text: &str| {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("recipe.toml");
        std::fs::write(&path, text).unwrap();
        let mut command = std::process::Command::new(env!("CARGO_BIN_EXE_greenweight"));
        let output = command.arg("label").arg(path).output().unwrap();
        (output.status.code(), String::from_utf8(output.stdout).unwrap())
    };
    let kept = "[[component.step]]\ndo = \"refrigerate\"\nat = \"36 °F\"\nfor = \"2 days\"\nlike = \"leftovers/meat-or-poultry\"\n";
    let proven = roast(&format!("{HOME}\n{PROBE}"), "150 °F", "made_on = 2026-08-03") + kept;
    assert_eq!(label(&proven).0, Some(0), "{}", label(&proven).1);
    let accepted = cheese("", "", DAYS);
    assert_eq!(check_text(&accepted).0, 0);
    let (status, printed) = label(&accepted);
    assert_eq!(status, Some(1), "{printed}");
}
