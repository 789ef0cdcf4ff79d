//! Records in files beside a document: read, judged and drawn.

use std::fs;
use std::path::Path;

use rstest::rstest;

use super::{check, example};

const LOAF: &str = "title = \"Invented\"\nheld_to = [\"us-fsis\"]\n[instruments]\nscale = \"1 g\"\nthermometer = \"2 °F\"\n[[component]]\nname = \"loaf\"\nfood = \"ground-meat\"\n";
const MEAT: &str = "[[component.ingredient]]\nname = \"pork\"\nkind = \"meat\"\nfrom = \"pork\"\namount = \"4 lb\"\n[[component.ingredient]]\nname = \"salt\"\nkind = \"salt\"\namount = \"30 g\"\n[[component.step]]\ndo = \"cook\"\nat = \"180 °F\"\nmoisture = \"casing\"\n";

/// Status, report and faults of a document whose record is in a file.
fn with(folder: &Path, named: &str, csv: &str) -> (Option<i32>, String, String) {
    let document = folder.join("loaf.toml");
    fs::write(&document, format!("{LOAF}recorded_in = {named}\n{MEAT}")).unwrap();
    fs::write(folder.join("cook.csv"), csv).unwrap();
    let plots = folder.join("plots");
    let output = check(&[document.to_str().unwrap(), "--plots", plots.to_str().unwrap()]);
    let text = |bytes: Vec<u8>| String::from_utf8(bytes).unwrap();
    (output.status.code(), text(output.stdout), text(output.stderr))
}

const NAMED: &str =
    r#"{ file = "cook.csv", time = "min", written = "minutes", inside = ["core"], scale = "°F" }"#;

#[test]
fn a_record_is_read_from_its_file_judged_and_drawn() {
    let folder = tempfile::tempdir().unwrap();
    let csv = "min,core\n0,40\n60,130\n90,158\n93,160\n96,161\n";
    let (status, report, faults) = with(folder.path(), NAMED, csv);
    assert_eq!(status, Some(0), "{report}{faults}");
    assert!(report.contains("[cook/record]"), "{report}");
    let svg = fs::read_to_string(folder.path().join("plots/loaf-1.svg")).unwrap();
    assert!(svg.starts_with("<svg") && svg.trim_end().ends_with("</svg>"));
    for word in ["loaf", "inside", "us-fsis", ", met", "hours", "°F"] {
        assert!(svg.contains(word), "{word}");
    }
    assert!(!svg.contains("chamber"));
}

#[test]
fn a_record_that_is_too_cold_breaks_and_is_drawn_as_not_met() {
    let folder = tempfile::tempdir().unwrap();
    let (status, report, _) = with(folder.path(), NAMED, "min,core\n0,40\n60,120\n90,125\n");
    assert_eq!(status, Some(1));
    assert!(report.contains("BREAKS"), "{report}");
    let svg = fs::read_to_string(folder.path().join("plots/loaf-1.svg")).unwrap();
    assert!(svg.contains("not met"));
}

#[rstest]
#[case::a_gap("min,core\n0,40\n60,\n", "line 3")]
#[case::backwards("min,core\n0,40\n60,50\n30,60\n", "line 4")]
#[case::no_number("min,core\n0,40\n60,hot\n", "`hot` is not a number")]
#[case::no_such_column("min,centre\n0,40\n", "no column is headed `core`")]
#[case::impossible("min,core\n0,40\n60,9999\n", "line 3")]
#[case::not_finite("min,core\n0,40\n60,NaN\n", "line 3")]
fn a_fault_in_the_file_has_its_line(#[case] csv: &str, #[case] says: &str) {
    let folder = tempfile::tempdir().unwrap();
    let (status, _, faults) = with(folder.path(), NAMED, csv);
    assert_eq!(status, Some(2), "{faults}");
    assert!(faults.contains(says) && faults.contains("cook.csv"), "{faults}");
    // The document is pointed at, where it names the file.
    assert!(faults.contains("recorded_in"), "{faults}");
}

#[rstest]
#[case::above("../cook.csv")]
#[case::absolute("/etc/passwd")]
#[case::through("a/../../cook.csv")]
fn a_file_outside_the_folder_of_the_document_is_not_opened(#[case] file: &str) {
    let folder = tempfile::tempdir().unwrap();
    let named = NAMED.replace("cook.csv", file);
    let (status, _, faults) = with(folder.path(), &named, "min,core\n0,40\n");
    assert_eq!(status, Some(2));
    assert!(faults.contains("is not beside the document"), "{faults}");
}

#[test]
fn a_file_that_is_missing_is_said_so() {
    let folder = tempfile::tempdir().unwrap();
    let named = NAMED.replace("cook.csv", "other.csv");
    let (status, _, faults) = with(folder.path(), &named, "");
    assert_eq!(status, Some(2));
    assert!(faults.contains("other.csv cannot be read"), "{faults}");
}

#[rstest]
#[case::no_scale(", scale = \"°F\"", "", "`scale` is missing")]
#[case::another_scale("\"°F\"", "\"K\"", "°C")]
#[case::probes_not_in_a_list("[\"core\"]", "\"core\"", "inside")]
#[case::no_name("[\"core\"]", "[1]", "heading of its column")]
fn columns_that_are_not_said_are_faults(#[case] old: &str, #[case] new: &str, #[case] says: &str) {
    let folder = tempfile::tempdir().unwrap();
    let (status, _, faults) = with(folder.path(), &NAMED.replace(old, new), "min,core\n0,40\n");
    assert_eq!(status, Some(2), "{faults}");
    assert!(faults.contains(says), "{faults}");
}

// As a library, a recipe opens no file: what was not read is not proven.
#[test]
fn a_record_that_nobody_read_is_unproven_and_one_that_was_given_is_judged() {
    use greenweight::finding::Verdict;
    let text = format!("{LOAF}recorded_in = {NAMED}\n{MEAT}");
    let mut recipe = greenweight::recipe::Recipe::read(&text).unwrap();
    let of = |recipe: &greenweight::recipe::Recipe<'_>| {
        let found = recipe.check();
        found.iter().find(|checked| checked.finding.rule.id == "cook/record").unwrap().finding
    };
    assert_eq!(of(&recipe).verdict, Verdict::Unproven);
    let csv = "min,core\n0,40\n60,150\n90,158\n";
    recipe.components[0].read_record(csv.as_bytes(), 3).unwrap();
    assert_eq!(of(&recipe).verdict, Verdict::Meets);
    let fault = recipe.components[0].read_record(csv.as_bytes(), 2).unwrap_err();
    assert!(fault.message.contains("more than 2 readings"), "{fault}");
}

#[test]
fn the_example_with_a_record_is_drawn_with_its_chamber() {
    let folder = tempfile::tempdir().unwrap();
    let example = example("recorded-loaf");
    let output = check(&[example.to_str().unwrap(), "--plots", folder.path().to_str().unwrap()]);
    assert_eq!(output.status.code(), Some(0));
    let svg = fs::read_to_string(folder.path().join("recorded-loaf-1.svg")).unwrap();
    assert!(svg.contains("chamber") && svg.contains(", met"));
}

const AIM: &str = "[[component.lethality]]\nd = \"1 min\"\nat = \"150 °F\"\nz = \"10 °F\"\ncounted_from = \"130 °F\"\nlogs = 5\n";

#[rstest]
#[case::complete("", "", None)]
#[case::no_z("z = \"10 °F\"\n", "", Some("`z` is missing"))]
#[case::no_time("\"1 min\"", "\"1 kg\"", Some("duration"))]
#[case::a_z_of_nothing("\"10 °F\"", "\"0 °F\"", Some("z-value"))]
#[case::logs_in_words("logs = 5", "logs = \"five\"", Some("a number"))]
#[case::too_many_logs("logs = 5", "logs = 500", Some("reduction"))]
fn an_aim_is_read_or_its_fault_said(
    #[case] old: &str,
    #[case] new: &str,
    #[case] says: Option<&str>,
) {
    let text = format!(
        "{LOAF}{}{MEAT}",
        if old.is_empty() { AIM.to_owned() } else { AIM.replacen(old, new, 1) }
    );
    match (greenweight::recipe::Recipe::read(&text), says) {
        (Ok(recipe), None) => assert_eq!(recipe.components[0].aims.len(), 1),
        (Err(error), Some(says)) => {
            let messages: String = error.faults.iter().map(|fault| fault.message.clone()).collect();
            assert!(messages.contains(says), "{messages}");
        }
        (other, _) => panic!("{other:?}"),
    }
}

#[rstest]
#[case::stated("humidity = \"90 %\"", Some(90.0))]
// Computed with PsychroLib 2.5.0: 60 °C and 54.4 °C are 75.095 percent.
#[case::by_its_bulbs("at = \"60 °C\"\nwet_bulb = \"54.4 °C\"", Some(75.095))]
#[case::both("at = \"60 °C\"\nwet_bulb = \"54.4 °C\"\nhumidity = \"90 %\"", None)]
#[case::swapped("at = \"54.4 °C\"\nwet_bulb = \"60 °C\"", None)]
#[case::no_dry_bulb("wet_bulb = \"60 °C\"", None)]
fn humidity_is_stated_or_worked_out_from_the_wet_bulb(
    #[case] keys: &str,
    #[case] percent: Option<f64>,
) {
    let text = format!("{LOAF}{MEAT}[[component.step]]\ndo = \"cook\"\n{keys}\n");
    let humidity = greenweight::recipe::Recipe::read(&text)
        .ok()
        .and_then(|recipe| recipe.components[0].steps[1].humidity);
    assert_eq!(humidity.is_some(), percent.is_some());
    if let (Some(found), Some(percent)) = (humidity, percent) {
        assert!((found - percent).abs() < 2e-3, "{found}");
    }
}

/// The verdict of a rule on a document in the words of its components.
fn verdict(held_to: &str, rest: &str, rule: &str) -> Option<&'static str> {
    let text = format!("{}{rest}", LOAF.replace("us-fsis", held_to));
    let recipe = greenweight::recipe::Recipe::read(&text).unwrap();
    let found = recipe.check();
    found.iter().find(|c| c.finding.rule.id == rule).map(|c| c.finding.verdict.words())
}

#[test]
fn a_cook_broken_off_and_finished_later_is_noticed() {
    let first = MEAT.replace("moisture", "to = \"120 °F\"\nfor = \"2 h\"\nmoisture");
    let chill = "[[component.step]]\ndo = \"chill\"\nat = \"34 °F\"\n";
    let last = "[[component.step]]\ndo = \"cook\"\nat = \"200 °F\"\nto = \"163 °F\"\n";
    let rule = "cook/partial";
    let broken = format!("{first}{chill}{last}");
    assert_eq!(verdict("us-food-code-2022", &broken, rule), Some("breaks"));
    assert_eq!(verdict("us-fsis", &broken, rule), Some("unproven"));
    assert_eq!(verdict("us-fsis", &format!("{first}{last}{chill}"), rule), None);
}

#[test]
fn hot_holding_is_judged_by_the_food_code_and_unproven_without_it() {
    let hold = |f: u16| {
        format!(
            "{}[[component.step]]\ndo = \"hold\"\nat = \"{f} °F\"\n",
            MEAT.replace("moisture", "to = \"163 °F\"\nmoisture")
        )
    };
    assert_eq!(verdict("us-food-code-2022", &hold(140), "cook/hot-holding"), Some("meets"));
    assert_eq!(verdict("us-food-code-2022", &hold(134), "cook/hot-holding"), Some("unproven"));
    assert_eq!(verdict("us-fsis", &hold(140), "cook/hot-holding"), None);
    assert_eq!(verdict("us-fsis", &hold(140), "store/warm-time"), Some("unproven"));
}

#[test]
fn how_it_cools_is_drawn_with_the_ends_of_its_clocks() {
    let folder = tempfile::tempdir().unwrap();
    let example =
        Path::new(env!("CARGO_MANIFEST_DIR")).join("examples/recipes/farm-stall-ring-sausage.toml");
    let output = check(&[example.to_str().unwrap(), "--plots", folder.path().to_str().unwrap()]);
    assert!(output.status.success());
    let path = folder.path().join("farm-stall-ring-sausage-1-cooling.svg");
    let svg = fs::read_to_string(path).unwrap();
    for named in ["80 °F within 1 h 30 min of 130 °F", "40 °F within 5 h of 80 °F"] {
        assert!(svg.contains(named), "{named}");
    }
    // Both ends were reached, and are marked.
    assert_eq!(svg.matches("<polygon").count(), 2);
}
