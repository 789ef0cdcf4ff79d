//! The label of a pack.

use std::process::Command;

use greenweight::cook::US_CONSUMER;
use greenweight::finding::{Force, Verdict};
use greenweight::recipe::Recipe;
use greenweight::report::{Checkup, Label, Says, labels};
use greenweight::units::Scale;
use proptest::prelude::*;
use rstest::rstest;

use super::example;

const COOK: &str = "[[component.step]]\ndo = \"cook\"\nat = \"180 °F\"\nto = \"168 °F\"\nhold = \"5 min\"\n[[component.cooling]]\nafter = \"0 h\"\ninside = \"160 °F\"\n[[component.cooling]]\nafter = \"80 min\"\ninside = \"65 °F\"\n[[component.cooling]]\nafter = \"4 h\"\ninside = \"38 °F\"\n";

fn labelled(text: &str) -> Vec<Label> {
    let recipe = Recipe::read(text).unwrap_or_else(|error| panic!("{error}\n{text}"));
    labels(&Checkup::new("a.toml".into(), text, recipe))
}

fn label(held_to: &str, component: &str, steps: &str) -> Label {
    let text = format!(
        "title = \"Invented\"\nheld_to = [\"{held_to}\"]\n[instruments]\nscale = \"1 g\"\nthermometer = \"1 °F\"\n[[component]]\nname = \"loaf\"\nfood = \"ground-meat\"\n{component}\n[[component.ingredient]]\nname = \"pork\"\nkind = \"meat\"\nfrom = \"pork\"\namount = \"1 kg\"\n{COOK}{steps}"
    );
    labelled(&text).pop().expect("a label")
}

/// What a label says of food that meets every rule of safety.
fn says(label: &Label) -> &Says {
    label.says.as_ref().unwrap_or_else(|open| panic!("{open:?}"))
}

/// The rules that keep a label from saying anything.
fn refused(label: &Label) -> Vec<(&str, &str)> {
    let open = label.says.as_ref().expect_err("it says nothing");
    open.iter().map(|one| (one.rule.id, one.verdict.words())).collect()
}

/// Nothing on it tells anybody how long or how cold it keeps.
fn says_nothing_else(label: &Label) {
    let text = label.to_string();
    assert!(text.contains("DO NOT USE"), "{text}");
    for said in ["made on", "packed on", "keep at", "use by", "freeze", "frozen", "2026", "RAW"] {
        assert!(!text.contains(said), "{said}\n{text}");
    }
}

fn fridge(time: &str) -> String {
    format!(
        "[[component.step]]\ndo = \"refrigerate\"\nat = \"36 °F\"\nfor = \"{time}\"\nlike = \"sausage/cooked\"\n"
    )
}

fn use_by(label: &Label) -> String {
    match &says(label).use_by {
        Ok(day) => day.to_string(),
        Err(why) => why.clone(),
    }
}

// A week by the chart for homes; day 7 of 7 by the Food Code; and never later than the recipe says.
#[rstest]
#[case::home("us-consumer", "1 week", "2026-03-05")]
#[case::shop("us-food-code-2022", "6 days", "2026-03-04")]
#[case::the_recipe_says_less("us-consumer", "3 days", "2026-03-01")]
#[case::a_range("us-consumer", "3 to 5 days", "2026-03-03")]
fn a_day_of_use_is_the_earliest(#[case] held_to: &str, #[case] time: &str, #[case] expected: &str) {
    let label = label(held_to, "made_on = 2026-02-26", &fridge(time));
    assert_eq!(use_by(&label), expected);
}

#[rstest]
#[case::at_home("us-consumer", "8 days", "store/fridge-time")]
#[case::in_a_shop("us-food-code-2022", "7 days", "chill/date-mark")]
fn food_past_its_days_has_no_label(#[case] held_to: &str, #[case] time: &str, #[case] rule: &str) {
    let label = label(held_to, "made_on = 2026-02-26", &fridge(time));
    assert_eq!(refused(&label), [(rule, "breaks")]);
    says_nothing_else(&label);
}

#[test]
fn what_is_unproven_has_no_label_and_what_no_rule_speaks_of_has_no_day() {
    let vacuum = "[[component.step]]\ndo = \"pack\"\nvacuum = true\n";
    let label =
        label("us-consumer", "made_on = 2026-02-26", &(vacuum.to_owned() + &fridge("3 days")));
    assert!(refused(&label).contains(&("store/fridge-time", "unproven")));
    says_nothing_else(&label);
    let nowhere = self::label("us-consumer", "made_on = 2026-02-26", "");
    assert_eq!(use_by(&nowhere), "no rule says how long it keeps");
    assert_eq!(nowhere.use_by(), None);
}

#[test]
fn it_says_how_cold_when_packed_and_until_when_it_is_best() {
    let freeze = "[[component.step]]\ndo = \"freeze\"\nat = \"-3 °F\"\nfor = \"1 month\"\nlike = \"sausage/cooked\"\n";
    let steps = fridge("2 days") + freeze;
    let component = "made_on = 2026-02-26\npacked_on = 2026-02-27";
    let label = label("us-consumer\", \"us-food-code-2022", component, &steps);
    let text = label.to_string();
    // 36 °F is planned, and colder than both limits; a month of 30 days, the lower end of the chart's advice.
    for line in [
        "made on    2026-02-26",
        "packed on  2026-02-27",
        "keep at    36 °F or below",
        "use by     2026-02-28",
        "freeze by  2026-02-28",
        "at its best until 2026-03-28",
    ] {
        assert!(text.contains(line), "{line}\n{text}");
    }
}

#[rstest]
#[case::in_quotes("made_on = \"2026-02-26\"", "a day without quotes")]
#[case::no_such_day("made_on = 2026-02-30", "")]
#[case::with_a_time("made_on = 2026-02-26T10:00:00", "a day without quotes")]
#[case::packed_alone("packed_on = 2026-02-26", "needs `made_on`")]
#[case::packed_before(
    "made_on = 2026-02-26\npacked_on = 2026-02-25",
    "`packed_on` is 2026-02-25: write 2026-02-26, when it is made, or a later day"
)]
fn a_day_that_cannot_be_is_refused(#[case] days: &str, #[case] message: &str) {
    let text = format!(
        "title = \"t\"\nheld_to = []\n[[component]]\nname = \"a\"\nfood = \"sauce\"\n{days}\n"
    );
    let error = Recipe::read(&text).unwrap_err();
    assert!(error.to_string().contains(message), "{error}");
}

#[test]
fn the_command_prints_it_and_says_by_its_status_whether_there_is_a_day() {
    let run = |path: &str| {
        Command::new(env!("CARGO_BIN_EXE_greenweight")).args(["label", path]).output().unwrap()
    };
    let output = run(example("labelled-loaf").to_str().unwrap());
    let text = String::from_utf8(output.stdout).unwrap();
    assert!(text.contains("use by     2026-08-06"), "{text}");
    assert!(output.status.success());
    let none = run(example("fridge-too-long").to_str().unwrap());
    assert_eq!(none.status.code(), Some(2));
    assert!(String::from_utf8(none.stderr).unwrap().contains("made_on"));
}

proptest! {
    // Whatever the day: it is used within the week, and not before it is made.
    #[test]
    fn any_day_has_its_week(year in 1900u16..9999, month in 1u8..=12, day in 1u8..=28, kept in 1u16..=7) {
        let component = format!("made_on = {year:04}-{month:02}-{day:02}");
        let label = label("us-consumer", &component, &fridge(&format!("{kept} days")));
        let last = label.use_by().unwrap();
        prop_assert_eq!(Some(last), says(&label).made.days_later(kept));
    }
}

// One number of the printed loaf changed, and its label is gone.
#[rstest]
#[case::cooked_too_little("to = \"168 °F\"", "to = \"120 °F\"", "cook/endpoint")]
#[case::left_out(
    "do = \"chill\"\nat = \"34 °F\"",
    "do = \"hold\"\nat = \"80 °F\"",
    "chill/warm-time"
)]
fn whatever_breaks_takes_the_label_away(#[case] from: &str, #[case] to: &str, #[case] rule: &str) {
    let text = std::fs::read_to_string(example("labelled-loaf")).unwrap();
    assert!(text.contains(from));
    let text = text.replace(from, to);
    let label = labelled(&text).pop().unwrap();
    assert_eq!(refused(&label)[0], (rule, "breaks"));
    says_nothing_else(&label);
}

/// Changes of a printed example, one word at a time.
fn changed(name: &str, changes: &[(&str, &str)]) -> String {
    let text = std::fs::read_to_string(example(name)).unwrap();
    changes.iter().fold(text, |text, (from, to)| {
        assert_eq!(text.matches(from).count(), 1, "{from}");
        text.replace(from, to)
    })
}

// Four times the nitrite, and it lies in a freezer: once its label said that it stayed safe there.
#[test]
fn the_label_of_too_much_nitrite_says_only_that_it_must_not_be_used() {
    let dated = ("food = \"ground-meat\"", "food = \"ground-meat\"\nmade_on = 2026-07-03");
    let text = changed("wrong-quarter", &[dated]);
    let label = labelled(&text).pop().unwrap();
    assert_eq!(refused(&label), [("cure/ingoing-nitrite", "breaks")]);
    says_nothing_else(&label);
    let text = changed("wrong-quarter", &[dated, ("\"1 1/4 oz\"", "\"7 g\"")]);
    assert!(labelled(&text).pop().unwrap().use_by().is_some(), "the same with the right weight");
}

#[test]
fn the_label_names_every_rule_of_safety_that_the_report_has_open_and_no_other() {
    for file in std::fs::read_dir("examples/recipes").unwrap().flatten() {
        let path = file.path();
        if path.extension().is_none_or(|ending| ending != "toml") {
            continue;
        }
        let text = std::fs::read_to_string(&path).unwrap();
        let text = text.replace("\nfood = ", "\nmade_on = 2026-07-03\nfood = ");
        let Ok(recipe) = Recipe::read(&text) else { continue };
        let checkup = Checkup::new(path, &text, recipe);
        for (n, label) in labels(&checkup).iter().enumerate() {
            let open = |f: &greenweight::finding::Finding| {
                f.rule.force == Force::Safety && f.verdict != Verdict::Meets
            };
            let mut wanted: Vec<_> = checkup.findings_of(n).filter(open).collect();
            wanted.sort_by_key(|f| (f.rule.id, f.verdict.words()));
            wanted.dedup_by_key(|f| (f.rule.id, f.verdict.words()));
            let wanted: Vec<_> = wanted.iter().map(|f| (f.rule.id, f.verdict.words())).collect();
            let mut found = label.says.as_ref().map_or_else(|_| refused(label), |_| Vec::new());
            found.sort_unstable();
            assert_eq!(found, wanted, "{}", label.what);
            let printed = label.to_string().to_lowercase();
            assert!(!printed.contains("safe"), "{printed}");
        }
    }
}

#[test]
fn the_colder_of_plan_and_limit_is_on_the_label() {
    // Shops of Great Britain keep at 8 °C; this one plans 4 °C for a loaf, and 39 °F is colder than 4 °C.
    let kept = |at: &str| {
        let steps = fridge("2 days").replace("36 °F", at);
        let label = label("us-consumer\", \"great-britain", "made_on = 2026-02-26", &steps);
        match &label.says {
            Ok(says) => says.keep_at.map(|at| at.to_string()),
            Err(open) => panic!("{open:?}"),
        }
    };
    assert_eq!(kept("3 °C").as_deref(), Some("3 °C"));
    assert_eq!(kept("39 °F").as_deref(), Some("39 °F"));
}

#[test]
fn a_day_of_packing_is_on_the_label_only_where_it_is_written() {
    let steps = "[[component.step]]\ndo = \"pack\"\n".to_owned() + &fridge("2 days");
    let unwritten = label("us-consumer", "made_on = 2026-02-26", &steps);
    assert_eq!(says(&unwritten).packed, None);
    assert!(!unwritten.to_string().contains("packed"), "{unwritten}");
    let written = label("us-consumer", "made_on = 2026-02-26\npacked_on = 2026-02-27", &steps);
    assert!(written.to_string().contains("packed on  2026-02-27"), "{written}");
}

// Two days in the refrigerator and a few hours of cook and cooling end on the third day.
#[rstest]
#[case::a_month_later(
    "2026-01-05",
    "2026-02-05",
    "from 2026-01-05, when it is made, to 2026-01-08"
)]
#[case::the_day_before(
    "2026-01-05",
    "2026-01-04",
    "from 2026-01-05, when it is made, to 2026-01-08"
)]
fn a_day_of_packing_outside_the_days_of_the_steps_is_refused_with_the_range(
    #[case] made: &str,
    #[case] packed: &str,
    #[case] range: &str,
) {
    let text = changed(
        "labelled-loaf",
        &[
            ("made_on = 2026-08-03", &format!("made_on = {made}\npacked_on = {packed}")),
            ("for = \"3 days\"", "for = \"2 days\""),
            ("for = \"2 months\"", "for = \"1 h\""),
        ],
    );
    let error = Recipe::read(&text).unwrap_err().to_string();
    assert!(error.contains(&format!("`packed_on` is {packed}")), "{error}");
    assert!(error.contains(range), "{error}");
    let held = text.replace("to = \"168 °F\"", "to = \"168 °F\"\nhold = \"3 min\"");
    assert!(held != text && Recipe::read(&held).unwrap_err().to_string().contains(range));
    let last = text.replace(&format!("packed_on = {packed}"), "packed_on = 2026-01-08");
    assert!(Recipe::read(&last).is_ok());
}

#[test]
fn a_pack_of_after_its_last_day_has_no_day_of_use() {
    // The steps go on for two months in the freezer; the days in the refrigerator do not.
    let packed = "made_on = 2026-08-03\npacked_on = 2026-08-20";
    let text = changed("labelled-loaf", &[("made_on = 2026-08-03", packed)]);
    let label = labelled(&text).pop().unwrap();
    assert_eq!(label.use_by(), None);
    let why = says(&label).use_by.as_ref().unwrap_err();
    assert!(why.contains("2026-08-20") && why.contains("2026-08-06"), "{why}");
}

/// A raw sausage of pork, kept cold for a day.
fn raw(held_to: &str, from: &str) -> Label {
    let text = format!(
        "title = \"Invented\"\nheld_to = [\"{held_to}\"]\n[instruments]\nscale = \"1 g\"\nthermometer = \"1 °F\"\n[[component]]\nname = \"raw sausage\"\nfood = \"ground-meat\"\nraw = true\nmade_on = 2026-02-26\n[[component.ingredient]]\nname = \"meat\"\nkind = \"meat\"\nfrom = \"{from}\"\namount = \"1 kg\"\n[[component.step]]\ndo = \"refrigerate\"\nat = \"36 °F\"\nfor = \"1 day\"\nlike = \"sausage/raw\"\n"
    );
    labelled(&text).pop().unwrap()
}

#[rstest]
#[case::of_pork("pork", "ground-meat")]
#[case::of_turkey("turkey", "ground-poultry")]
fn raw_food_says_that_it_is_raw_and_how_hot_it_must_get(#[case] from: &str, #[case] key: &str) {
    let label = raw("us-consumer", from);
    let row = US_CONSUMER.iter().find(|row| row.value.food.key() == key).unwrap();
    let to = says(&label).raw.and_then(|raw| raw.to).unwrap();
    assert_eq!(to.row.key, row.row.key);
    let figure = row.value.temperature.on(Scale::Fahrenheit).value();
    let printed = label.to_string();
    assert!(printed.contains("RAW: cook it through"), "{printed}");
    assert!(printed.contains(&format!("to {figure} °F")), "{printed}");
}

#[test]
fn cooked_food_does_not_say_that_it_is_raw() {
    let label = label("us-consumer", "made_on = 2026-02-26", &fridge("3 days"));
    assert_eq!(says(&label).raw, None);
    assert!(!label.to_string().contains("RAW"));
}

#[test]
fn it_ends_with_whose_rules_it_counts_by_and_that_local_rules_come_first() {
    let good = label("us-consumer", "made_on = 2026-02-26", &fridge("3 days"));
    let bad = label("us-consumer", "made_on = 2026-02-26", &fridge("8 days"));
    for label in [good, bad] {
        let text = label.to_string();
        let last = text.lines().last().unwrap();
        for said in ["us-consumer", "from memory", "Local codes and licensed practice come first"] {
            assert!(last.contains(said), "{text}");
        }
    }
}

#[test]
fn what_does_not_freeze_and_was_not_packed_is_not_said_to() {
    let text = "title = \"Invented\"\nheld_to = [\"us-consumer\"]\n[instruments]\nthermometer = \"1 °F\"\n[[component]]\nname = \"dip\"\nfood = \"sauce\"\nmade_on = 2026-11-05\n[[component.ingredient]]\nname = \"yogurt\"\nkind = \"yogurt\"\namount = \"500 g\"\n[[component.ingredient]]\nname = \"dill\"\nkind = \"fresh-herbs\"\namount = \"20 g\"\n[[component.step]]\ndo = \"refrigerate\"\nat = \"38 °F\"\nfor = \"3 days\"\n";
    let label = labelled(text).pop().unwrap().to_string();
    assert!(label.contains("use by     2026-11-08"), "{label}");
    assert!(!label.contains("freeze") && !label.contains("packed"), "{label}");
}
