//! How a cook ends, by whoever says so.

use greenweight::recipe::Recipe;
use rstest::rstest;

const MEAT: &str = "[[component.ingredient]]\nname = \"pork\"\nkind = \"meat\"\nfrom = \"pork\"\namount = \"2 kg\"\n";

fn verdicts(
    held_to: &str,
    thermometer: &str,
    food: &str,
    cook: &str,
    rule: &str,
) -> Vec<&'static str> {
    let meat = if matches!(food, "fish" | "casseroles") { "" } else { MEAT };
    let text = format!(
        "title = \"Invented\"\nheld_to = [\"{held_to}\"]\n[instruments]\n{thermometer}\n[[component]]\nname = \"a\"\nfood = \"{food}\"\n{meat}[[component.step]]\ndo = \"cook\"\nat = \"250 °F\"\n{cook}\n"
    );
    let recipe = Recipe::read(&text).unwrap_or_else(|error| panic!("{error}\n{text}"));
    let found = recipe.check();
    let of_rule = found.iter().filter(|checked| checked.finding.rule.id == rule);
    of_rule.map(|checked| checked.finding.verdict.words()).collect()
}

// By a thermometer of which nobody says how far it is off, nothing is proven; it may still break.
#[rstest]
#[case::chart("us-consumer", "ground-meat", "to = \"165 °F\"", "unproven")]
#[case::chart_broken("us-consumer", "ground-meat", "to = \"150 °F\"", "breaks")]
#[case::table("us-fsis", "ground-meat", "to = \"160 °F\"\nhold = \"5 min\"", "unproven")]
#[case::table_broken("us-fsis", "ground-meat", "to = \"120 °F\"\nhold = \"5 min\"", "breaks")]
#[case::code("us-food-code-2022", "ground-meat", "to = \"160 °F\"\nhold = \"5 min\"", "unproven")]
fn without_a_tolerance_nothing_is_proven(
    #[case] held_to: &str,
    #[case] food: &str,
    #[case] cook: &str,
    #[case] expected: &str,
) {
    assert_eq!(verdicts(held_to, "", food, cook, "cook/endpoint"), [expected]);
    if expected == "unproven" {
        let stated = verdicts(held_to, "thermometer = \"0 °F\"", food, cook, "cook/endpoint");
        assert_eq!(stated, ["meets"]);
    }
}

// Who has no row for a food does not answer for it.
#[rstest]
#[case::fish_in_a_meat_plant("us-fsis", "fish", true)]
#[case::fish_by_the_british_pairs("great-britain", "fish", true)]
#[case::a_casserole_by_the_british_pairs("great-britain", "casseroles", false)]
#[case::meat_by_the_british_pairs("great-britain", "whole-meat", false)]
#[case::nobody("japan", "ground-meat", true)]
#[case::leftovers_in_a_plant("us-fsis", "leftovers", true)]
#[case::the_chart("us-consumer", "fish", false)]
fn an_authority_answers_for_its_own_food(
    #[case] held_to: &str,
    #[case] food: &str,
    #[case] unanswered: bool,
) {
    let cook = "to = \"170 °F\"\nhold = \"10 min\"";
    let of = |rule| verdicts(held_to, "thermometer = \"1 °F\"", food, cook, rule);
    assert_eq!(!of("cook/authority").is_empty(), unanswered, "{:?}", of("cook/authority"));
    assert_eq!(of("cook/endpoint").is_empty(), unanswered, "{:?}", of("cook/endpoint"));
}

fn of_animal(food: &str, from: &str, to: &str) -> Vec<&'static str> {
    let text = format!(
        "title = \"Invented\"\nheld_to = [\"us-consumer\"]\n[instruments]\nthermometer = \"1 °F\"\n[[component]]\nname = \"a\"\nfood = \"{food}\"\n[[component.ingredient]]\nname = \"meat\"\nkind = \"meat\"\n{from}\namount = \"2 kg\"\n[[component.step]]\ndo = \"cook\"\nat = \"250 °F\"\nto = \"{to}\"\n[[component.step]]\ndo = \"rest\"\nfor = \"5 min\"\n"
    );
    let found = Recipe::read(&text).unwrap().check();
    let of_rule = found.iter().filter(|checked| checked.finding.rule.id == "cook/endpoint");
    of_rule.map(|checked| checked.finding.verdict.words()).collect()
}

// Any bird makes it poultry, whole or ground; an animal that is not named may be one.
#[rstest]
#[case::a_roast("whole-meat", "from = \"pork\"", "150 °F", "meets")]
#[case::a_roast_of_turkey("whole-meat", "from = \"turkey\"", "150 °F", "breaks")]
#[case::a_loaf("ground-meat", "from = \"pork\"", "162 °F", "meets")]
#[case::a_loaf_with_chicken("ground-meat", "from = \"chicken\"", "162 °F", "breaks")]
#[case::of_no_named_animal("ground-meat", "", "170 °F", "unproven")]
#[case::a_roast_of_no_named_animal("whole-meat", "", "170 °F", "unproven")]
#[case::leftovers_of_no_named_animal("leftovers", "", "170 °F", "meets")]
fn which_animal_decides(
    #[case] food: &str,
    #[case] from: &str,
    #[case] to: &str,
    #[case] expected: &str,
) {
    assert_eq!(of_animal(food, from, to), [expected]);
}

fn report(held_to: &str, component: &str) -> String {
    let folder = tempfile::tempdir().unwrap();
    let document = folder.path().join("a.toml");
    let text = format!(
        "title = \"Invented\"\nheld_to = [\"{held_to}\"]\n[instruments]\nthermometer = \"1 °F\"\n[[component]]\nname = \"a\"\nfood = \"ground-meat\"\n{component}"
    );
    std::fs::write(&document, text).unwrap();
    String::from_utf8(super::check(&[document.to_str().unwrap()]).stdout).unwrap()
}

#[test]
fn a_time_whose_ends_read_the_same_is_printed_once_and_one_without_an_end_as_at_least() {
    let smoke =
        |time: &str| format!("[[component.step]]\ndo = \"smoke\"\nat = \"120 °F\"\n{time}\n");
    let cook =
        "[[component.step]]\ndo = \"cook\"\nat = \"250 °F\"\nfor = \"70 min\"\nto = \"165 °F\"\n";
    let found =
        |stages: &[String]| report("us-consumer", &format!("{MEAT}{}{cook}", stages.concat()));
    let once = found(&[smoke("for = \"70 min\""), smoke("for = \"65 min\"")]);
    assert!(once.contains("found   2 h 15 min\n"), "{once}");
    let open = found(&[smoke("for = \"7 h\""), smoke("")]);
    assert!(open.contains("found   at least 7 h\n"), "{open}");
}

#[test]
fn a_mend_of_hours_is_in_whole_minutes_to_the_safe_side() {
    // 1200 °F h at 23.3 °F above 60 °F are 51.5 hours and some seconds.
    let ferment =
        "[[component.step]]\ndo = \"ferment\"\nat = \"83.3 °F\"\nfor = \"60 h\"\nph = 5.0\n";
    let text = report("us-fsis", &format!("{MEAT}{ferment}"));
    assert!(text.contains("have it acid within 2 days 3 h 30 min at"), "{text}");
}

fn whole(held_to: &str, from: &str, steps: &str, rule: &str) -> Vec<&'static str> {
    let text = format!(
        "title = \"Invented\"\nheld_to = [\"{held_to}\"]\n[instruments]\nthermometer = \"1 °F\"\n[[component]]\nname = \"a\"\nfood = \"whole-meat\"\n[[component.ingredient]]\nname = \"meat\"\nkind = \"meat\"\n{from}\namount = \"2 kg\"\n{steps}"
    );
    let found = Recipe::read(&text).unwrap_or_else(|error| panic!("{error}\n{text}")).check();
    let of_rule = found.iter().filter(|checked| checked.finding.rule.id == rule);
    of_rule.map(|checked| checked.finding.verdict.words()).collect()
}

fn roast(to: &str, hold: &str) -> String {
    format!(
        "[[component.step]]\ndo = \"cook\"\nat = \"250 °F\"\nfor = \"2 h\"\nto = \"{to}\"\n{hold}\n"
    )
}

// Only a roast that was cooked by its chart may be held as cool as one.
#[rstest]
#[case::a_roast("from = \"beef\"", roast("150 °F", "hold = \"5 min\""), "meets")]
#[case::cooked_too_little("from = \"beef\"", roast("140 °F", "hold = \"1 min\""), "unproven")]
#[case::held_for_no_known_time("from = \"beef\"", roast("150 °F", ""), "unproven")]
#[case::a_bird("from = \"turkey\"", roast("172 °F", "hold = \"1 min\""), "unproven")]
#[case::of_no_named_animal("", roast("172 °F", "hold = \"1 min\""), "unproven")]
fn the_hot_holding_of_roasts_is_for_roasts(
    #[case] from: &str,
    #[case] cook: String,
    #[case] expected: &str,
) {
    let held = "[[component.step]]\ndo = \"hold\"\nat = \"132 °F\"\nfor = \"2 h\"\n";
    let found = whole("us-food-code-2022", from, &format!("{cook}{held}"), "cook/hot-holding");
    assert_eq!(found, [expected]);
}

const SMOKED: &str = "[[component.step]]\ndo = \"smoke\"\nat = \"225 °F\"\nfor = \"40 min\"\n";
const SHORT: &str = "[[component.step]]\ndo = \"cook\"\nat = \"250 °F\"\nfor = \"30 min\"\nto = \"120 °F\"\nhold = \"1 min\"\n";

// A whole cook that is chilled and heated again was not broken off. All of the first heating counts.
#[rstest]
#[case::whole("us-food-code-2022", roast("165 °F", "hold = \"1 min\""), &[])]
#[case::without_its_rest("us-consumer", roast("165 °F", ""), &["unproven"])]
#[case::not_whole("us-food-code-2022", roast("120 °F", "hold = \"1 min\""), &["breaks"])]
#[case::perhaps_whole("us-food-code-2022", roast("150 °F", ""), &["unproven"])]
#[case::to_no_stated_end("us-food-code-2022", SMOKED.to_string(), &["unproven"])]
#[case::whole_after_a_smoke("us-food-code-2022", SMOKED.to_string() + &roast("165 °F", "hold = \"1 min\""), &[])]
#[case::not_whole_after_a_smoke("us-food-code-2022", SMOKED.to_string() + SHORT, &["breaks"])]
#[case::smoked_cold("us-food-code-2022", SMOKED.replace("smoke", "cold-smoke"), &[])]
#[case::held_in_the_cold("us-food-code-2022", SMOKED.replace("smoke", "hold").replace("225", "36"), &[])]
fn a_cook_is_broken_off_where_it_was_no_whole_one(
    #[case] held_to: &str,
    #[case] first: String,
    #[case] expected: &[&str],
) {
    let chill = "[[component.step]]\ndo = \"chill\"\nat = \"34 °F\"\n";
    let steps = format!("{first}{chill}{}", roast("170 °F", "hold = \"1 min\""));
    assert_eq!(whole(held_to, "from = \"pork\"", &steps, "cook/partial"), expected);
}

#[rstest]
#[case::in_a_hot_oven(
    "[[component.step]]\ndo = \"hold\"\nat = \"150 °F\"\nfor = \"1 h\"\n",
    "meets"
)]
#[case::in_a_cooler_one(
    "[[component.step]]\ndo = \"hold\"\nat = \"100 °F\"\nfor = \"1 h\"\n",
    "unproven"
)]
#[case::at_once("", "meets")]
fn a_rest_counts_from_where_it_was_kept_hot(#[case] held: &str, #[case] expected: &str) {
    let rest = "[[component.step]]\ndo = \"rest\"\nfor = \"5 min\"\n";
    let steps = format!("{}{held}{rest}", roast("148 °F", ""));
    assert_eq!(whole("us-consumer", "from = \"pork\"", &steps, "cook/rest"), [expected]);
}

// Whatever the food is, and whether or not it is cooked here.
#[rstest]
#[case("ground-meat")]
#[case("sauce")]
fn an_aim_without_readings_is_not_passed_over(#[case] food: &str) {
    let aim = "[[component.lethality]]\nd = \"1 min\"\nat = \"150 °F\"\nz = \"10 °F\"\ncounted_from = \"130 °F\"\nlogs = 5\n";
    let text = format!(
        "title = \"Invented\"\nheld_to = [\"us-consumer\"]\n[[component]]\nname = \"a\"\nfood = \"{food}\"\n{aim}"
    );
    let found = Recipe::read(&text).unwrap().check();
    let aims = found.iter().filter(|checked| checked.finding.rule.id == "cook/lethality");
    let aims: Vec<_> = aims.map(|checked| checked.finding).collect();
    assert_eq!(aims.len(), 1);
    assert!(aims[0].verdict.words() == "unproven" && aims[0].missing.is_some(), "{aims:?}");
}

// A hotter cook is offered where the table has a row that asks for no time.
#[rstest]
#[case::without_such_a_row("us-food-code-2022", false)]
#[case::with_one("us-fsis", true)]
fn a_temperature_that_needs_no_hold_is_offered_where_there_is_one(
    #[case] held_to: &str,
    #[case] offered: bool,
) {
    let cook = "[[component.step]]\ndo = \"cook\"\nat = \"250 °F\"\nto = \"150 °F\"\n";
    let text = report(held_to, &format!("{MEAT}{cook}"));
    assert_eq!(text.contains("needs no hold"), offered, "{text}");
}

// Hot enough, and not said for how long: what is missing is said.
#[test]
fn a_time_that_is_missing_is_named() {
    let text = format!(
        "title = \"Invented\"\nheld_to = [\"us-fsis\"]\n[instruments]\nthermometer = \"1 °F\"\n[[component]]\nname = \"a\"\nfood = \"ground-meat\"\n{MEAT}[[component.step]]\ndo = \"cook\"\nat = \"250 °F\"\nto = \"150 °F\"\n"
    );
    let found = Recipe::read(&text).unwrap().check();
    let end = found.iter().find(|c| c.finding.rule.id == "cook/endpoint").unwrap().finding;
    assert_eq!(end.verdict.words(), "unproven");
    assert!(end.missing.is_some_and(|missing| missing.what.contains("how long")), "{end:?}");
}
