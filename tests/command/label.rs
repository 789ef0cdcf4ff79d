//! The label of a pack.

use std::process::Command;

use greenweight::recipe::Recipe;
use greenweight::report::{Checkup, Label, labels};
use proptest::prelude::*;
use rstest::rstest;

use super::example;

const COOK: &str = "[[component.step]]\ndo = \"cook\"\nat = \"180 °F\"\nto = \"168 °F\"\nhold = \"5 min\"\n[[component.cooling]]\nafter = \"0 h\"\ninside = \"160 °F\"\n[[component.cooling]]\nafter = \"80 min\"\ninside = \"65 °F\"\n[[component.cooling]]\nafter = \"4 h\"\ninside = \"38 °F\"\n";

fn label(held_to: &str, component: &str, steps: &str) -> Label {
    let text = format!(
        "title = \"Invented\"\nheld_to = [\"{held_to}\"]\n[instruments]\nscale = \"1 g\"\nthermometer = \"1 °F\"\n[[component]]\nname = \"loaf\"\nfood = \"ground-meat\"\n{component}\n[[component.ingredient]]\nname = \"pork\"\nkind = \"meat\"\nfrom = \"pork\"\namount = \"1 kg\"\n{COOK}{steps}"
    );
    let recipe = Recipe::read(&text).unwrap_or_else(|error| panic!("{error}\n{text}"));
    let checkup = Checkup::new("a.toml".into(), &text, recipe);
    labels(&checkup).pop().expect("a label")
}

fn fridge(time: &str) -> String {
    format!(
        "[[component.step]]\ndo = \"refrigerate\"\nat = \"36 °F\"\nfor = \"{time}\"\nlike = \"sausage/cooked\"\n"
    )
}

fn use_by(label: &Label) -> String {
    match &label.use_by {
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
#[case::broken("us-consumer", "8 days", "days in the refrigerator: breaks")]
#[case::broken_in_a_shop(
    "us-food-code-2022",
    "7 days",
    "used within the days of its date mark: breaks"
)]
fn a_day_of_use_is_the_earliest(#[case] held_to: &str, #[case] time: &str, #[case] expected: &str) {
    let label = label(held_to, "made_on = 2026-02-26", &fridge(time));
    assert_eq!(use_by(&label), expected);
}

#[test]
fn what_is_unproven_has_no_day_of_use() {
    let vacuum = "[[component.step]]\ndo = \"pack\"\nvacuum = true\n";
    let label =
        label("us-consumer", "made_on = 2026-02-26", &(vacuum.to_owned() + &fridge("3 days")));
    assert_eq!(use_by(&label), "days in the refrigerator: unproven");
    let nowhere = self::label("us-consumer", "made_on = 2026-02-26", "");
    assert_eq!(use_by(&nowhere), "no rule says how long it keeps");
}

#[test]
fn it_says_how_cold_when_packed_and_until_when_it_is_best() {
    let freeze = "[[component.step]]\ndo = \"freeze\"\nat = \"-3 °F\"\nfor = \"1 month\"\nlike = \"sausage/cooked\"\n";
    let steps = fridge("2 days") + freeze;
    let component = "made_on = 2026-02-26\npacked_on = 2026-02-27";
    let label = label("us-consumer\", \"us-food-code-2022", component, &steps);
    let text = label.to_string();
    // The stricter of 40 and 41 °F; a month of 30 days, the lower end of the chart's advice.
    for line in [
        "made on    2026-02-26",
        "packed on  2026-02-27",
        "keep at    40 °F or below",
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
#[case::packed_before("made_on = 2026-02-26\npacked_on = 2026-02-25", "before it is made")]
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
        let last = label.use_by.unwrap();
        prop_assert_eq!(Some(last), label.made.days_later(kept));
    }
}

// One number of the printed loaf changed, and its day is gone.
#[rstest]
#[case::cooked_too_little(
    "to = \"168 °F\"",
    "to = \"120 °F\"",
    "hot enough inside, for long enough: breaks"
)]
#[case::left_out(
    "do = \"chill\"\nat = \"34 °F\"",
    "do = \"hold\"\nat = \"80 °F\"",
    "time between cold and hot: breaks"
)]
fn whatever_breaks_takes_the_day_away(#[case] from: &str, #[case] to: &str, #[case] why: &str) {
    let text = std::fs::read_to_string(example("labelled-loaf")).unwrap();
    assert!(text.contains(from));
    let text = text.replace(from, to);
    let checkup = Checkup::new("a.toml".into(), &text, Recipe::read(&text).unwrap());
    assert_eq!(use_by(&labels(&checkup)[0]), why);
}

#[test]
fn what_does_not_freeze_and_was_not_packed_is_not_said_to() {
    let text = "title = \"Invented\"\nheld_to = [\"us-consumer\"]\n[instruments]\nthermometer = \"1 °F\"\n[[component]]\nname = \"dip\"\nfood = \"sauce\"\nmade_on = 2026-11-05\n[[component.ingredient]]\nname = \"yogurt\"\nkind = \"yogurt\"\namount = \"500 g\"\n[[component.ingredient]]\nname = \"dill\"\nkind = \"fresh-herbs\"\namount = \"20 g\"\n[[component.step]]\ndo = \"refrigerate\"\nat = \"38 °F\"\nfor = \"3 days\"\n";
    let checkup = Checkup::new("a.toml".into(), text, Recipe::read(text).unwrap());
    let label = labels(&checkup).pop().unwrap().to_string();
    assert!(label.contains("use by     2026-11-08"), "{label}");
    assert!(!label.contains("freeze") && !label.contains("packed"), "{label}");
}
