//! Records in files beside a document: read, judged and drawn.

use std::fs;
use std::path::Path;

use greenweight::recipe::Recipe;
use greenweight::trace::Point;
use greenweight::units::{Reading, Scale, minutes};
use proptest::prelude::*;
use rstest::rstest;

use super::{check, check_text, example, of_rule};

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
    let csv = "min,core\n0,40\n60,150\n65,158\n";
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

/// The finding of a rule on a document whose record is in a file, from its report as JSON.
fn found(named: &str, csv: &str, rule: &str) -> serde_json::Value {
    let folder = tempfile::tempdir().unwrap();
    let document = folder.path().join("loaf.toml");
    fs::write(&document, format!("{LOAF}recorded_in = {named}\n{MEAT}{AIM}")).unwrap();
    fs::write(folder.path().join("cook.csv"), csv).unwrap();
    let output = check(&[document.to_str().unwrap(), "--format", "json"]);
    let report = serde_json::from_slice(&output.stdout).unwrap();
    of_rule(&report, rule)[0].clone()
}

// The last is a quarter of an hour, and a minute more.
#[rstest]
#[case::a_probe_lost_for_half_a_day("0,40\n90,131\n120,150\n900,150\n", "unproven", Some((120, 900)))]
#[case::two_hours_of_silence("0,40\n60,120\n70,133\n75,133\n200,133\n205,120\n", "unproven", Some((75, 200)))]
#[case::two_hours_after_one_reading("0,40\n60,133\n175,133\n", "unproven", Some((60, 175)))]
#[case::two_readings_alone("0,150\n5,150\n", "unproven", Some((0, 5)))]
#[case::a_few_by_hand("0,40\n60,140\n75,150\n90,150\n", "meets", None)]
#[case::a_few_a_minute_too_far("0,40\n60,140\n75,150\n91,150\n", "unproven", Some((75, 91)))]
#[case::every_minute_and_ten_lost("0,40\n1,60\n2,90\n3,150\n13,150\n14,90\n", "unproven", Some((3, 13)))]
#[case::every_minute_and_two_lost("0,40\n1,60\n2,90\n3,150\n6,150\n7,90\n", "meets", None)]
#[case::the_top_of_it_lost("0,40\n1,60\n2,90\n3,120\n60,118\n61,117\n", "unproven", Some((3, 60)))]
#[case::seen_to_stay_cold("0,40\n1,60\n2,90\n3,120\n4,125\n5,118\n", "breaks", None)]
fn time_without_a_reading_holds_nothing_and_the_finding_says_when_it_was(
    #[case] csv: &str,
    #[case] verdict: &str,
    #[case] gap: Option<(u32, u32)>,
) {
    let finding = found(NAMED, &format!("min,core\n{csv}"), "cook/record");
    assert_eq!(finding["verdict"], verdict, "{finding}");
    let gap = gap.map(|(from, to)| [f64::from(from) * 60.0, f64::from(to) * 60.0]);
    let said = ["from", "to"].map(|end| finding["gap"][end].as_f64());
    assert_eq!(said, gap.map_or([None, None], |gap| gap.map(Some)), "{finding}");
}

#[rstest]
#[case::of_a_logger_that_says_so("\"5 min\"", "meets")]
#[case::of_one_that_reads_more_often("\"1 min\"", "unproven")]
fn a_stated_interval_counts_in_place_of_the_usual_step(
    #[case] interval: &str,
    #[case] verdict: &str,
) {
    let csv = "min,core\n0,40\n1,60\n2,90\n3,150\n13,150\n14,90\n";
    let named = NAMED.replace(" }", &format!(", interval = {interval} }}"));
    assert_eq!(found(&named, csv, "cook/record")["verdict"], verdict);
}

#[rstest]
#[case::longer_than_readings_vouch(
    "\"16 min\"",
    "interval of a logger of 960 s is outside 0.001 to 900 s"
)]
#[case::nothing("\"0 s\"", "interval of a logger of 0 s")]
#[case::no_time("\"often\"", "often")]
fn an_interval_that_no_logger_has_is_refused(#[case] interval: &str, #[case] says: &str) {
    let folder = tempfile::tempdir().unwrap();
    let named = NAMED.replace(" }", &format!(", interval = {interval} }}"));
    let (status, _, faults) = with(folder.path(), &named, "min,core\n0,40\n");
    assert_eq!(status, Some(2));
    assert!(faults.contains(says), "{faults}");
}

#[rstest]
// All of the gap may have been spent in the warm.
#[case::come_up("0,40\n480,158\n481,158.5\n482,159\n", "cook/come-up", "unproven", [0.0, 480.0])]
// A fire that died overnight.
#[case::hot_on_both_sides("0,40\n1,90\n2,140\n500,140\n501,150\n502,160\n", "cook/come-up", "unproven", [2.0, 500.0])]
#[case::lethality("0,40\n1,90\n2,149\n60,149\n61,120\n", "cook/lethality", "unproven", [2.0, 60.0])]
fn a_gap_counts_to_the_worse_side(
    #[case] csv: &str,
    #[case] rule: &str,
    #[case] verdict: &str,
    #[case] gap: [f64; 2],
) {
    let finding = found(NAMED, &format!("min,core\n{csv}"), rule);
    assert_eq!(finding["verdict"], verdict, "{finding}");
    let said = ["from", "to"].map(|end| finding["gap"][end].as_f64().unwrap() / 60.0);
    assert_eq!(said, gap);
}

/// A cook by the Food Code, and how it cools in the readings of its file.
fn cooled(readings: &str) -> serde_json::Value {
    let named = NAMED.replace(" }", ", interval = \"10 min\" }");
    let head = LOAF.replace("us-fsis", "us-food-code-2022");
    let document = format!(
        "{head}recorded_in = {named}\n{}[[component.step]]\ndo = \"refrigerate\"\nat = \"36 °F\"\nfor = \"1 day\"\n",
        MEAT.replace("moisture", "to = \"165 °F\"\nmoisture")
    );
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("loaf.toml");
    fs::write(&path, document).unwrap();
    fs::write(folder.path().join("cook.csv"), format!("min,core\n{readings}")).unwrap();
    let output = check(&[path.to_str().unwrap(), "--format", "json"]);
    let report = serde_json::from_slice(&output.stdout).unwrap();
    of_rule(&report, "chill/cooling")[0].clone()
}

#[test]
fn a_recorder_that_fell_silent_may_have_cooled_at_the_worst_moment_and_rows_by_hand_cool_evenly() {
    let finding = cooled("0,165\n10,160\n140,66\n150,60\n300,38\n310,37\n");
    assert_eq!(finding["verdict"], "unproven", "{finding}");
    assert_eq!([&finding["gap"]["from"], &finding["gap"]["to"]], [600.0, 8400.0]);
    // Two hours and ten minutes at the longest, and no time at the least.
    assert_eq!([&finding["found"]["low"], &finding["found"]["high"]], [0.0, 7800.0]);
    let rows = [("0 min", 165), ("10 min", 160), ("2 h 20 min", 66), ("5 h", 38)];
    let rows = rows.map(|(after, f)| {
        format!("[[component.cooling]]\nafter = \"{after}\"\ninside = \"{f} °F\"\n")
    });
    let (_, report) = check_text(&format!(
        "{}{}{}[[component.step]]\ndo = \"refrigerate\"\nat = \"36 °F\"\nfor = \"1 day\"\n",
        LOAF.replace("us-fsis", "us-food-code-2022"),
        MEAT.replace("moisture", "to = \"165 °F\"\nmoisture"),
        rows.concat()
    ));
    let by_hand = of_rule(&report, "chill/cooling")[0];
    assert_eq!(
        (by_hand["verdict"].as_str(), &by_hand["gap"]),
        (Some("meets"), &serde_json::Value::Null)
    );
}

// The plan holds five minutes, and the record one reading, hours of silence and another: neither held nor broken.
#[test]
fn a_plan_is_not_broken_by_a_gap_in_its_record() {
    let text = format!(
        "{LOAF}{}{}",
        MEAT.replace("moisture", "to = \"147 °F\"\nhold = \"5 min\"\nmoisture"),
        [("0 min", 40), ("1 min", 90), ("2 min", 147), ("4 h", 147)]
            .map(|(after, f)| {
                format!("[[component.record]]\nafter = \"{after}\"\ninside = \"{f} °F\"\n")
            })
            .concat()
    );
    let (status, report) = check_text(&text);
    assert_eq!(status, 1);
    let endpoint = of_rule(&report, "cook/endpoint")[0];
    assert_eq!(endpoint["verdict"], "unproven", "{endpoint}");
    assert_eq!([&endpoint["found"]["low"], &endpoint["found"]["high"]], [0.0, 300.0]);
    assert_eq!([&endpoint["gap"]["from"], &endpoint["gap"]["to"]], [120.0, 14_400.0]);
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 200, failure_persistence: None, ..ProptestConfig::default() })]

    // Readings so far apart that each that is dropped leaves a gap. The first and the last stay: the record begins
    // in the cold, and ends as it ends.
    #[test]
    fn dropping_readings_of_a_document_proves_nothing(
        rows in prop::collection::vec((8u32..=15, 35.0..165.0f64, any::<bool>()), 4..40),
        rises in any::<bool>(),
    ) {
        let mut at = 0;
        let readings = rows.iter().map(|&(step, f, kept)| { at += step; (at, f, kept) });
        let mut readings: Vec<_> = readings.collect();
        // Either a cook that ends hot, or one that cools.
        let count = f64::from(u32::try_from(readings.len()).unwrap());
        for (n, reading) in (0u32..).zip(&mut readings) {
            let share = f64::from(n) / (count - 1.0);
            reading.1 = match rises {
                true => reading.1.max(165.0 * share),
                false => 165.0 - 128.0 * share,
            };
        }
        let ends = [0, readings.len() - 1].map(|n| readings[n].0);
        let points = |all: bool| -> Vec<Point> {
            let kept = readings.iter().filter(|(at, _, kept)| all || *kept || ends.contains(at));
            kept.map(|&(at, f, _)| {
                let reading = Reading::new(f, Scale::Fahrenheit).unwrap();
                Point::new(minutes(f64::from(at)), reading).unwrap()
            }).collect()
        };
        let text = format!(
            "{}{MEAT}[[component.step]]\ndo = \"refrigerate\"\nat = \"36 °F\"\nfor = \"1 day\"\n{AIM}",
            LOAF.replace("us-fsis\"", "us-fsis\", \"us-food-code-2022\", \"australia-new-zealand\"")
        );
        let met = |all: bool| {
            let mut recipe = Recipe::read(&text).unwrap();
            recipe.components[0].record = points(all);
            let rules = ["cook/record", "cook/come-up", "cook/lethality", "chill/cooling"];
            let found = recipe.check().into_iter().map(|checked| checked.finding);
            let found = found.filter(|finding| rules.contains(&finding.rule.id));
            found.map(|finding| (finding.rule.id, finding.is_met())).collect::<Vec<_>>()
        };
        let (full, thin) = (met(true), met(false));
        prop_assert_eq!(full.len(), thin.len());
        for (full, thin) in full.iter().zip(&thin) {
            prop_assert!(full.0 == thin.0 && (full.1 || !thin.1), "{:?} {:?}", full, thin);
        }
    }
}
