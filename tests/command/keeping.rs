//! What is kept cold, packed, thawed, and served cold.

use greenweight::recipe::Recipe;
use rstest::rstest;

const HEAD: &str = "title = \"Invented\"\nmeasures = \"US\"\n[instruments]\nscale = \"1 g\"\nthermometer = \"1 °F\"\n[[component]]\nname = \"a\"\n";
const COOK: &str =
    "[[component.step]]\ndo = \"cook\"\nat = \"180 °F\"\nto = \"165 °F\"\nhold = \"5 min\"\n";
const VACUUM: &str = "[[component.step]]\ndo = \"pack\"\nvacuum = true\n";
const CODE: &str = "us-food-code-2022";

fn verdicts(held_to: &str, component: &str, parts: &[&str], rule: &str) -> Vec<&'static str> {
    let text = format!("held_to = [\"{held_to}\"]\n{HEAD}{component}\n{}", parts.concat());
    let recipe = Recipe::read(&text).unwrap_or_else(|error| panic!("{error}\n{text}"));
    let found = recipe.check();
    let of_rule = found.iter().filter(|checked| checked.finding.rule.id == rule);
    of_rule.map(|checked| checked.finding.verdict.words()).collect()
}

fn step(what: &str, more: &str) -> String {
    format!("[[component.step]]\ndo = \"{what}\"\n{more}\n")
}

fn fridge(at: &str, time: &str) -> String {
    step("refrigerate", &format!("at = \"{at}\"\nfor = \"{time}\"\nlike = \"sausage/cooked\""))
}

const PORK: &str = "[[component.ingredient]]\nname = \"pork\"\nkind = \"meat\"\nfrom = \"pork\"\namount = \"10 kg\"\n";

// The day it is made is day 1 of 7: six days later is the last.
#[rstest]
#[case::six_days(&["6 days"], &["meets"])]
#[case::seven_days(&["7 days"], &["breaks"])]
#[case::in_between(&["6 days 12 h"], &["unproven"])]
#[case::a_day_needs_no_mark(&["24 h"], &[])]
#[case::in_two_steps(&["4 days", "3 days"], &["breaks"])]
#[case::in_a_range(&["5 to 7 days"], &["unproven"])]
fn what_a_shop_keeps_is_used_by_day_seven(#[case] times: &[&str], #[case] expected: &[&str]) {
    let kept: String = times.iter().map(|time| fridge("38 °F", time)).collect();
    let component = "food = \"ground-meat\"";
    assert_eq!(verdicts(CODE, component, &[PORK, COOK, &kept], "chill/date-mark"), expected);
    let raw = verdicts(CODE, component, &[PORK, &kept, COOK], "chill/date-mark");
    assert!(raw.is_empty(), "what is raw needs no date mark");
    let home = verdicts("us-consumer", component, &[PORK, COOK, &kept], "chill/date-mark");
    assert!(home.is_empty());
}

#[test]
fn days_in_a_freezer_do_not_count_and_do_not_start_the_count_again() {
    let freeze = step("freeze", "at = \"0 °F\"\nfor = \"2 months\"");
    let days = |first, second| {
        let parts = [PORK, COOK, &fridge("38 °F", first), &freeze, &fridge("38 °F", second)];
        verdicts(CODE, "food = \"ground-meat\"", &parts, "chill/date-mark")
    };
    assert_eq!(days("3 days", "3 days"), ["meets"]);
    assert_eq!(days("3 days", "4 days"), ["breaks"]);
}

#[test]
fn a_stay_of_unknown_length_has_no_date_and_dry_sour_food_needs_none() {
    let kept = step("refrigerate", "at = \"38 °F\"");
    let of = |component| verdicts(CODE, component, &[PORK, COOK, &kept], "chill/date-mark");
    assert_eq!(of("food = \"ground-meat\""), ["unproven"]);
    assert!(
        of("food = \"ground-meat\"\nanalysis = { water_activity = 0.87, ph = 5.2 }").is_empty()
    );
}

// 38, 40 and 41 °F, 5 and 8 °C are limits of different documents.
#[rstest]
#[case::shop(CODE, "ground-meat", "40 °F", "meets")]
#[case::shop_at_41(CODE, "ground-meat", "41 °F", "unproven")]
#[case::shop_too_warm(CODE, "ground-meat", "43 °F", "breaks")]
#[case::home("us-consumer", "ground-meat", "39 °F", "meets")]
#[case::home_too_warm("us-consumer", "ground-meat", "42 °F", "breaks")]
#[case::england("great-britain", "ground-meat", "7 °C", "meets")]
#[case::england_too_warm("great-britain", "ground-meat", "9 °C", "breaks")]
#[case::australia("australia-new-zealand", "ground-meat", "4 °C", "meets")]
#[case::australia_too_warm("australia-new-zealand", "ground-meat", "7 °C", "breaks")]
#[case::maine_fish("us-maine", "fish", "37 °F", "meets")]
#[case::maine_fish_too_warm("us-maine", "fish", "40 °F", "breaks")]
fn every_authority_has_its_own_cold(
    #[case] held_to: &str,
    #[case] food: &str,
    #[case] at: &str,
    #[case] expected: &str,
) {
    let component = format!("food = \"{food}\"");
    let kept = fridge(at, "2 days");
    let found = verdicts(held_to, &component, &[COOK, &kept], "store/fridge-temperature");
    assert_eq!(found, [expected]);
}

fn thaw(more: &str) -> String {
    step("thaw", more)
}

#[rstest]
#[case::refrigerator("us-consumer", "how = \"refrigerator\"\nat = \"38 °F\"\nfor = \"2 days\"", &["meets"])]
#[case::warm_refrigerator("us-consumer", "how = \"refrigerator\"\nat = \"44 °F\"", &["breaks"])]
#[case::no_temperature("us-consumer", "how = \"refrigerator\"", &["unproven"])]
#[case::cold_water("us-consumer", "how = \"cold-water\"", &["meets"])]
#[case::microwave("us-consumer", "how = \"microwave\"", &["meets"])]
#[case::cooking("us-consumer", "how = \"cooking\"", &["meets"])]
#[case::on_the_counter("us-consumer", "how = \"room\"\nat = \"70 °F\"\nfor = \"3 h\"", &["breaks"])]
#[case::nobody_knows("us-consumer", "at = \"70 °F\"", &["unproven"])]
#[case::a_shop("us-food-code-2022", "how = \"refrigerator\"\nat = \"39 °F\"", &["meets"])]
#[case::running_water("us-food-code-2022", "how = \"running-water\"\nat = \"65 °F\"\nfor = \"4 h\"", &["meets", "meets"])]
#[case::running_too_long("us-food-code-2022", "how = \"running-water\"\nat = \"65 °F\"\nfor = \"5 h\"", &["meets", "breaks"])]
#[case::running_warm("us-food-code-2022", "how = \"running-water\"\nat = \"75 °F\"\nfor = \"1 h\"", &["breaks", "meets"])]
#[case::of_unknown_length("us-food-code-2022", "how = \"running-water\"\nat = \"65 °F\"", &["meets", "unproven"])]
#[case::running_cold("us-food-code-2022", "how = \"running-water\"\nat = \"39 °F\"\nfor = \"9 h\"", &["meets"])]
#[case::no_rule_of_theirs("us-fsis", "how = \"refrigerator\"\nat = \"38 °F\"", &[])]
fn how_food_thaws(#[case] held_to: &str, #[case] more: &str, #[case] expected: &[&str]) {
    let parts = [PORK, &thaw(more), COOK];
    assert_eq!(verdicts(held_to, "food = \"ground-meat\"", &parts, "store/thaw"), expected);
}

// Cold tap water is all that is printed for homes; how cold is printed for shops.
#[rstest]
#[case::cold_at_home("us-consumer", "cold-water", "at = \"65 °F\"", &["meets", "meets"])]
#[case::warm_at_home("us-consumer", "cold-water", "at = \"100 °F\"\nfor = \"6 h\"", &["meets", "unproven"])]
#[case::running_and_how_cold("us-consumer", "running-water", "", &["meets", "unproven"])]
#[case::standing_in_a_shop(CODE, "cold-water", "at = \"65 °F\"\nfor = \"3 h\"", &["unproven", "meets"])]
#[case::standing_warm_in_a_shop(CODE, "cold-water", "at = \"75 °F\"\nfor = \"3 h\"", &["breaks", "meets"])]
fn water_that_thaws_is_cold_and_runs_in_a_shop(
    #[case] held_to: &str,
    #[case] how: &str,
    #[case] more: &str,
    #[case] expected: &[&str],
) {
    let parts = [PORK, &thaw(&format!("how = \"{how}\"\n{more}")), COOK];
    assert_eq!(verdicts(held_to, "food = \"whole-meat\"", &parts, "store/thaw"), expected);
}

#[test]
fn what_is_sold_raw_is_raw_when_it_thaws() {
    let of = |held_to: &str, how: &str, rule: &str| {
        let parts = [PORK, &thaw(how), &step("freeze", "at = \"0 °F\"")];
        verdicts(held_to, "food = \"ground-meat\"\nraw = true", &parts, rule)
    };
    let water = "how = \"cold-water\"";
    assert_eq!(of("us-consumer", water, "store/thaw"), ["unproven"]);
    assert_eq!(of("us-consumer", water, "store/refreeze"), ["breaks"]);
    let running = "how = \"running-water\"\nat = \"65 °F\"\nfor = \"1 h\"";
    assert_eq!(of(CODE, running, "store/thaw"), ["meets", "meets"]);
    let cold = "how = \"refrigerator\"\nat = \"36 °F\"\nfor = \"9 days\"";
    assert_eq!(of("us-consumer", cold, "store/after-thaw"), ["breaks"]);
}

#[test]
fn what_is_sold_raw_needs_no_date_mark() {
    let kept = fridge("36 °F", "10 days");
    let of = |pack: &str, rule: &str| {
        verdicts(CODE, "food = \"ground-meat\"\nraw = true", &[PORK, pack, &kept], rule)
    };
    assert!(of("", "chill/date-mark").is_empty());
    assert_eq!(of("", "store/authority"), ["unproven"], "nobody says how long");
    assert!(of(VACUUM, "store/authority").is_empty(), "the days of its pack are said");
}

#[test]
fn days_of_a_thaw_count_for_its_date_and_its_pack() {
    let cold = thaw("how = \"refrigerator\"\nat = \"38 °F\"\nfor = \"9 days\"");
    let freeze = step("freeze", "at = \"0 °F\"");
    let of = |pack: &str, rule: &str| {
        let parts = [PORK, COOK, pack, &freeze, &cold];
        verdicts(CODE, "food = \"ground-meat\"", &parts, rule)
    };
    assert_eq!(of("", "chill/date-mark"), ["breaks"]);
    assert_eq!(of(VACUUM, "shelf/pack-life"), ["meets"]);
    assert_eq!(of(VACUUM, "shelf/packaging-barrier"), ["unproven"]);
    // Days in the cold are days, whatever the step is called.
    let hold = step("hold", "at = \"38 °F\"\nfor = \"9 days\"");
    let held = verdicts(CODE, "food = \"ground-meat\"", &[PORK, COOK, &hold], "chill/date-mark");
    assert_eq!(held, ["breaks"]);
}

#[rstest]
#[case::never_cooked(&[], "unproven")]
#[case::cooked_later(&[&fridge("38 °F", "2 days"), COOK], "unproven")]
#[case::cooked_next(&[COOK], "meets")]
#[case::opened_first(&[&step("open", ""), COOK], "meets")]
#[case::smoked_on_the_way(&[HOT, COOK], "meets")]
fn a_thaw_that_is_part_of_cooking_goes_on_to_the_cook(
    #[case] parts: &[&str],
    #[case] expected: &str,
) {
    for how in ["cooking", "microwave", "cold-water"] {
        let thaw = thaw(&format!("how = \"{how}\""));
        let parts = [&[PORK, thaw.as_str()], parts].concat();
        let found = verdicts("us-consumer", "food = \"whole-meat\"", &parts, "store/thaw");
        assert_eq!(found, [expected], "{how}");
    }
}

#[test]
fn what_thawed_in_water_is_cooked_at_once() {
    let water = thaw("how = \"cold-water\"");
    let of = |parts: &[&str]| {
        let parts = [&[PORK, water.as_str()], parts].concat();
        verdicts("us-consumer", "food = \"ground-meat\"", &parts, "store/thaw")
    };
    assert_eq!(of(&[COOK]), ["meets"]);
    assert_eq!(of(&[&fridge("38 °F", "1 day"), COOK]), ["unproven"]);
}

#[test]
fn what_is_ready_to_eat_is_never_thawed_warm_by_a_shop() {
    let parts = [PORK, COOK, &thaw("how = \"running-water\"\nat = \"65 °F\"\nfor = \"1 h\"")];
    assert_eq!(verdicts(CODE, "food = \"ground-meat\"", &parts, "store/thaw"), ["meets", "breaks"]);
}

#[rstest]
#[case::refrigerator("refrigerator\"\nat = \"38 °F", &["meets"])]
#[case::water("cold-water", &["breaks"])]
#[case::microwave("microwave", &["breaks"])]
fn raw_meat_is_frozen_again_only_from_the_refrigerator(
    #[case] how: &str,
    #[case] expected: &[&str],
) {
    let thaw = thaw(&format!("how = \"{how}\""));
    let freeze = step("freeze", "at = \"0 °F\"");
    let of =
        |parts: &[&str]| verdicts("us-consumer", "food = \"ground-meat\"", parts, "store/refreeze");
    assert_eq!(of(&[PORK, &thaw, &freeze, COOK]), expected);
    assert!(of(&[PORK, &thaw, COOK, &freeze]).is_empty(), "cooked first, it may be frozen");
    let unsaid = step("thaw", "");
    assert_eq!(of(&[PORK, &unsaid, &freeze, COOK]), ["unproven"]);
}

#[rstest]
#[case::ground("ground-meat", "2 days", &["meets"])]
#[case::ground_longer("ground-meat", "3 days", &["breaks"])]
#[case::ground_in_a_range("ground-meat", "2 to 3 days", &["unproven"])]
#[case::cuts("whole-meat", "5 days", &["meets"])]
#[case::cuts_longer("whole-meat", "6 days", &["breaks"])]
#[case::poultry("poultry", "3 days", &["breaks"])]
fn thawed_meat_is_soon_used(#[case] food: &str, #[case] time: &str, #[case] expected: &[&str]) {
    let thaw = thaw("how = \"refrigerator\"\nat = \"38 °F\"\nfor = \"1 day\"");
    let parts = [&thaw, &fridge("38 °F", time), COOK];
    let parts = parts.map(AsRef::as_ref);
    let component = format!("food = \"{food}\"");
    assert_eq!(verdicts("us-consumer", &component, &parts, "store/after-thaw"), expected);
}

#[rstest]
#[case::not_said("for = \"1 day\"", &step("refrigerate", "at = \"38 °F\""), "unproven")]
#[case::chilled("for = \"1 day\"", &step("chill", "at = \"36 °F\"\nfor = \"9 days\""), "breaks")]
#[case::held("for = \"1 day\"", &step("hold", "at = \"36 °F\"\nfor = \"9 days\""), "breaks")]
#[case::left_in_the_thaw("for = \"20 days\"", "", "breaks")]
#[case::a_thaw_of_days_of_an_unknown_piece("for = \"5 days\"", "", "unproven")]
fn days_after_a_thaw_are_counted_whatever_the_step(
    #[case] time: &str,
    #[case] after: &str,
    #[case] expected: &str,
) {
    let thaw = thaw(&format!("how = \"refrigerator\"\nat = \"38 °F\"\n{time}"));
    let parts = [PORK, &thaw, after, COOK];
    let found = verdicts("us-consumer", "food = \"ground-meat\"", &parts, "store/after-thaw");
    assert_eq!(found, [expected]);
    let large = "food = \"poultry\"\npiece = \"20 lb\"";
    let found = verdicts("us-consumer", large, &parts, "store/after-thaw");
    assert_eq!(found.is_empty(), time.contains('5'), "five days are what such a bird takes");
}

#[test]
fn a_cure_after_the_thaw_is_no_waiting() {
    let thaw = thaw("how = \"refrigerator\"\nat = \"38 °F\"\nfor = \"1 day\"");
    let brine = "[[component.ingredient]]\nname = \"salt\"\nkind = \"salt\"\namount = \"100 g\"\npart = \"pickle\"\n";
    let hold = step("hold", "at = \"36 °F\"\nfor = \"9 days\"");
    let parts = [PORK, brine, &thaw, &hold, COOK];
    assert!(
        verdicts("us-consumer", "food = \"whole-meat\"", &parts, "store/after-thaw").is_empty()
    );
}

#[test]
fn what_is_done_for_a_mend_after_the_thaw_meets() {
    let of = |time: &str, kept: &str| {
        let thaw = thaw(&format!("how = \"refrigerator\"\nat = \"38 °F\"\nfor = \"{time}\""));
        let text = format!(
            "held_to = [\"us-consumer\"]\n{HEAD}food = \"ground-meat\"\n{PORK}{thaw}{}{COOK}",
            fridge("38 °F", kept)
        );
        let found = Recipe::read(&text).unwrap().check();
        let finding =
            found.iter().find(|c| c.finding.rule.id == "store/after-thaw").unwrap().finding;
        (finding.verdict.words(), finding.mend)
    };
    use greenweight::{finding::Mend, units::days};
    assert_eq!(of("2 days", "3 days"), ("breaks", Some(Mend::KeepFor(days(1.0)))));
    assert_eq!(of("2 days", "1 day"), ("meets", None));
}

#[test]
fn meat_is_not_frozen_again_after_a_warm_thaw_in_the_refrigerator() {
    let freeze = step("freeze", "at = \"0 °F\"");
    let of = |at: &str| {
        let thaw = thaw(&format!("how = \"refrigerator\"\n{at}"));
        let parts = [PORK, &thaw, &freeze, COOK];
        verdicts("us-consumer", "food = \"ground-meat\"", &parts, "store/refreeze")
    };
    assert_eq!(of("at = \"50 °F\""), ["breaks"]);
    assert_eq!(of(""), ["unproven"]);
}

#[test]
fn raw_days_are_not_days_of_the_cooked_food() {
    let raw = step("refrigerate", "at = \"38 °F\"\nfor = \"2 days\"\nlike = \"sausage/raw\"");
    let parts = [PORK, &raw, COOK, &fridge("38 °F", "6 days")];
    let found = verdicts("us-consumer", "food = \"ground-meat\"", &parts, "store/fridge-time");
    assert_eq!(found, ["meets", "meets"]);
}

#[test]
fn meat_is_raw_in_its_pack_until_something_heats_it() {
    let barrier = |component: &str, parts: &[&str]| {
        verdicts(CODE, component, parts, "shelf/packaging-barrier")
    };
    let (whole, sold) = ("food = \"whole-meat\"", "food = \"whole-meat\"\nraw = true");
    let (cold, open) = (fridge("36 °F", "3 days"), step("open", ""));
    let hold = step("hold", "at = \"36 °F\"\nfor = \"12 h\"");
    assert!(barrier(sold, &[PORK, &hold, VACUUM, &cold]).is_empty());
    assert!(barrier(whole, &[PORK, VACUUM, &cold, &open, COOK]).is_empty());
    assert_eq!(barrier(whole, &[PORK, VACUUM, COOK, &cold]), ["unproven"], "cooked in its pack");
    assert_eq!(barrier(whole, &[PORK, COOK, VACUUM, &cold]), ["unproven"]);
}

// 3-502.12(B)(2): raw meat competes, and meat that is cured counts only from an inspected plant.
#[rstest]
#[case::nothing_known("", "unproven")]
#[case::neither_dry_nor_sour("analysis = { water_activity = 0.97, ph = 6.0 }", "breaks")]
#[case::sour("analysis = { ph = 4.6 }", "meets")]
fn raw_meat_that_was_cured_here_rests_on_a_barrier(#[case] analysis: &str, #[case] expected: &str) {
    let sold = |more: &str| {
        let component = format!("food = \"ground-meat\"\nraw = true\n{analysis}\n{more}");
        verdicts(CODE, &component, &[PORK, VACUUM], "shelf/packaging-barrier")
    };
    assert_eq!(sold("cure = { method = \"ground\" }"), [expected]);
    assert!(sold("").is_empty());
    let component = format!("food = \"bacon\"\ncure = {{ method = \"dry-rub\" }}\n{analysis}");
    let parts = [PORK, VACUUM, &step("open", ""), COOK];
    let found = verdicts(CODE, &component, &parts, "shelf/packaging-barrier");
    assert_eq!(found, ["unproven"], "the analysis is of the finished food");
}

// 3-502.12(F): a pack that is opened within 48 hours needs no plan, if it is labelled.
#[rstest]
#[case::opened_soon("1 day", true, "unproven")]
#[case::opened_late("3 days", true, "breaks")]
#[case::not_opened("1 day", false, "breaks")]
fn a_pack_that_is_soon_opened_rests_on_its_label(
    #[case] time: &str,
    #[case] opened: bool,
    #[case] expected: &str,
) {
    let component = "food = \"ground-meat\"\nanalysis = { water_activity = 0.97, ph = 6.0 }";
    let open = if opened { step("open", "") } else { String::new() };
    let parts = [PORK, COOK, VACUUM, &fridge("36 °F", time), &open];
    assert_eq!(verdicts(CODE, component, &parts, "shelf/packaging-barrier"), [expected]);
}

// 24 hours for 5 lb in a refrigerator, 30 minutes for one in cold water: advice, not a limit.
#[rstest]
#[case::enough("refrigerator", "3 days", false)]
#[case::not_enough("refrigerator", "1 day", true)]
#[case::water("cold-water", "6 h", false)]
#[case::short_water("cold-water", "5 h", true)]
fn a_large_piece_takes_its_time_to_thaw(
    #[case] how: &str,
    #[case] time: &str,
    #[case] past_advice: bool,
) {
    let thaw = thaw(&format!("how = \"{how}\"\nat = \"38 °F\"\nfor = \"{time}\""));
    let text = format!(
        "held_to = [\"us-consumer\"]\n{HEAD}food = \"poultry\"\npiece = \"12 lb\"\n{thaw}{COOK}"
    );
    let recipe = Recipe::read(&text).unwrap();
    let found = recipe.check();
    let time = found.iter().find(|checked| checked.finding.rule.id == "store/thaw-time").unwrap();
    assert_eq!(time.finding.past_advice, past_advice);
    assert_eq!(time.finding.verdict.words(), "meets");
}

#[test]
fn fish_is_taken_out_of_its_airless_pack_before_it_thaws() {
    let thaw = thaw("how = \"refrigerator\"\nat = \"38 °F\"");
    let of = |parts: &[&str]| verdicts("us-consumer", "food = \"fish\"", parts, "store/fish-pack");
    let (open, freeze) = (step("open", ""), step("freeze", "at = \"0 °F\""));
    assert_eq!(of(&[VACUUM, &freeze, &thaw, COOK]), ["unproven"]);
    assert!(of(&[VACUUM, &freeze, &open, &thaw, COOK]).is_empty());
    let pork = [VACUUM, freeze.as_str(), thaw.as_str(), COOK];
    assert!(verdicts("us-consumer", "food = \"ground-meat\"", &pork, "store/fish-pack").is_empty());
}

#[rstest]
#[case::a_month("us-food-code-2022", "30 days", "meets")]
#[case::longer("us-food-code-2022", "31 days", "breaks")]
#[case::an_older_edition("us-food-code-2013", "14 days", "meets")]
#[case::an_older_edition_that_was_not_read("us-food-code-2013", "15 days", "unproven")]
#[case::an_older_edition_beyond_a_month("us-food-code-2013", "31 days", "breaks")]
#[case::ten_days("great-britain", "10 days", "meets")]
#[case::eleven_days("great-britain", "11 days", "breaks")]
fn a_pack_without_air_is_kept_for_so_long(
    #[case] held_to: &str,
    #[case] time: &str,
    #[case] expected: &str,
) {
    let component = "food = \"ground-meat\"";
    let parts = [PORK, COOK, VACUUM, &fridge("36 °F", time)];
    assert_eq!(verdicts(held_to, component, &parts, "shelf/pack-life"), [expected]);
    let opened =
        [PORK, COOK, VACUUM, &fridge("36 °F", "5 days"), &step("open", ""), &fridge("36 °F", time)];
    assert_eq!(verdicts(held_to, component, &opened, "shelf/pack-life"), ["meets"]);
    assert_eq!(
        verdicts(held_to, component, &[PORK, COOK, VACUUM], "shelf/pack-life"),
        ["unproven"]
    );
}

#[test]
fn a_british_control_ends_the_ten_days_and_a_weaker_one_does_not() {
    let parts = [PORK, COOK, VACUUM, &fridge("3 °C", "20 days")];
    let of = |analysis: &str| {
        let component = format!("food = \"ground-meat\"\nanalysis = {{ {analysis} }}");
        verdicts("great-britain", &component, &parts, "shelf/pack-life")
    };
    for enough in ["ph = 5.0", "water_activity = 0.97", "salt = \"2.2 %\"\nmoisture = \"60 %\""] {
        let enough = enough.replace('\n', ", ");
        assert!(of(&enough).is_empty(), "{enough}");
    }
    for weak in ["ph = 5.1", "water_activity = 0.971", "salt = \"2.1 %\", moisture = \"60 %\""] {
        assert_eq!(of(weak), ["breaks"], "{weak}");
    }
}

#[test]
fn a_shop_packs_fish_without_air_only_frozen() {
    let of = |parts: &[&str]| verdicts(CODE, "food = \"fish\"", parts, "shelf/packaging-barrier");
    let freeze = step("freeze", "at = \"0 °F\"");
    let cold = thaw("how = \"refrigerator\"\nat = \"36 °F\"\nfor = \"3 days\"");
    assert_eq!(of(&[COOK, &freeze, VACUUM, &freeze]), ["meets"]);
    assert_eq!(of(&[COOK, VACUUM, &freeze]), ["breaks"], "not frozen when it is packed");
    assert_eq!(of(&[VACUUM, &freeze]), ["unproven"], "it may have come frozen");
    assert_eq!(of(&[&freeze, VACUUM, &cold, &freeze]), ["breaks"], "thawed in its pack");
    assert_eq!(of(&[COOK, VACUUM, &fridge("36 °F", "3 days")]), ["breaks"]);
}

// Sliced, packed without air and kept three weeks at 40 °F after a cure at home.
#[test]
fn home_cured_meat_in_a_pack_without_air_for_three_weeks() {
    let cure = "food = \"ground-meat\"\ncure = { method = \"ground\" }";
    let premix = "[[component.ingredient]]\nname = \"c\"\nkind = \"curing-premix\"\nstrength = { sodium-nitrite = \"6.25 %\" }\namount = \"20.0 g\"\nscale = \"0.1 g\"\n";
    let parts = [PORK, premix, COOK, VACUUM, &fridge("39 °F", "3 weeks")];
    assert_eq!(verdicts("us-consumer", cure, &parts, "store/fridge-time"), ["breaks"]);
    let short = [PORK, premix, COOK, VACUUM, &fridge("39 °F", "5 days")];
    assert_eq!(verdicts("us-consumer", cure, &short, "store/fridge-time"), ["unproven"]);
    assert_eq!(verdicts(CODE, cure, &parts, "shelf/packaging-barrier"), ["unproven"]);
    assert_eq!(verdicts(CODE, cure, &parts, "chill/date-mark"), ["breaks"]);
}

fn sauce(kinds: &[&str]) -> String {
    let of = |kind: &&str| {
        format!("[[component.ingredient]]\nname = \"x\"\nkind = \"{kind}\"\namount = \"100 g\"\n")
    };
    kinds.iter().map(of).collect()
}

#[rstest]
#[case::garlic_in_oil(&["oil", "raw-garlic"], "store/garlic-in-oil", "3 days", "4 days")]
#[case::herbs_in_oil(&["oil", "fresh-herbs"], "store/garlic-in-oil", "3 days", "4 days")]
#[case::yogurt(&["yogurt", "raw-garlic"], "store/fresh-sauce", "4 days", "5 days")]
#[case::cream_and_oil(&["cream", "oil", "fresh-herbs"], "store/fresh-sauce", "4 days", "5 days")]
fn a_raw_sauce_is_cold_and_soon_used(
    #[case] kinds: &[&str],
    #[case] rule: &str,
    #[case] short: &str,
    #[case] long: &str,
) {
    let of = |steps: &str| verdicts("denmark", "food = \"sauce\"", &[&sauce(kinds), steps], rule);
    assert_eq!(of(&fridge("38 °F", short)), ["meets", "meets"]);
    assert_eq!(of(&fridge("38 °F", long)), ["breaks", "meets"]);
    assert_eq!(of(&fridge("45 °F", short)), ["meets", "breaks"]);
    assert_eq!(of(""), ["unproven"]);
}

// A cook kills no spores: garlic that was cooked in oil is kept as briefly as raw.
#[rstest]
#[case::in_oil(&["oil", "raw-garlic"], "store/garlic-in-oil", &["breaks", "meets"])]
#[case::in_yogurt(&["yogurt", "raw-garlic"], "store/fresh-sauce", &[])]
fn a_cook_makes_a_sauce_of_yogurt_safe_and_no_garlic_in_oil(
    #[case] kinds: &[&str],
    #[case] rule: &str,
    #[case] expected: &[&str],
) {
    let kinds = sauce(kinds);
    let of = |component: &str, steps: &[&str]| {
        verdicts("denmark", component, &[&[kinds.as_str()], steps].concat(), rule)
    };
    let kept = fridge("38 °F", "6 days");
    let served = step("serve", "at = \"150 °F\"\nfor = \"1 h\"");
    assert_eq!(of("food = \"sauce\"", &[COOK, &kept]), expected);
    assert_eq!(of("food = \"sauce\"\nraw = true", &[&kept]), expected, "cooked by its eater");
    assert!(of("food = \"sauce\"", &[COOK, &served]).is_empty(), "eaten at once");
    assert!(of("food = \"ground-meat\"", &[PORK, COOK, &kept]).is_empty(), "a loaf with oil in it");
    if kinds.contains("\"oil\"") {
        assert_eq!(of("food = \"casseroles\"", &[COOK, &kept]), expected, "a confit is no loaf");
    }
}

#[rstest]
#[case::a_stay_of_unknown_temperature(&format!("{}{}", fridge("36 °F", "1 day"), step("refrigerate", "for = \"1 day\"")), &["meets", "unproven"])]
#[case::held_in_the_cold(&step("hold", "at = \"36 °F\"\nfor = \"9 days\""), &["breaks", "meets"])]
#[case::only_frozen(&step("freeze", "at = \"0 °F\"\nfor = \"1 month\""), &["meets"])]
#[case::eaten_at_once(&step("serve", "at = \"70 °F\"\nfor = \"1 h\""), &[])]
#[case::served_for_who_knows_how_long(&step("serve", "at = \"70 °F\""), &["unproven"])]
fn a_raw_sauce_counts_every_stay_and_no_frozen_one(#[case] steps: &str, #[case] expected: &[&str]) {
    for (kinds, rule) in [
        (["oil", "raw-garlic"], "store/garlic-in-oil"),
        (["cream", "fresh-herbs"], "store/fresh-sauce"),
    ] {
        let parts = [&sauce(&kinds), steps];
        assert_eq!(verdicts("denmark", "food = \"sauce\"", &parts, rule), expected, "{rule}");
    }
}

#[test]
fn raw_sausage_with_oil_and_garlic_is_no_sauce() {
    let parts = [PORK, &sauce(&["oil", "raw-garlic"])];
    let raw = "food = \"ground-meat\"\nraw = true";
    assert!(verdicts("us-consumer", raw, &parts, "store/garlic-in-oil").is_empty());
}

#[test]
fn a_sauce_without_raw_garlic_or_herbs_is_not_asked() {
    let kinds = sauce(&["oil", "yogurt", "other"]);
    for rule in ["store/garlic-in-oil", "store/fresh-sauce"] {
        assert!(verdicts("us-consumer", "food = \"sauce\"", &[&kinds], rule).is_empty());
    }
}

const HOT: &str = "[[component.step]]\ndo = \"smoke\"\nat = \"200 °F\"\n";
const COLD: &str = "[[component.step]]\ndo = \"cold-smoke\"\nat = \"80 °F\"\nfor = \"10 h\"\n";

#[rstest]
#[case::enough("us-fda", VACUUM, "salt = \"2.4 %\", moisture = \"65 %\"", &["meets"])]
#[case::too_little("us-fda", VACUUM, "salt = \"2.2 %\", moisture = \"65 %\"", &["breaks"])]
#[case::not_measured("us-fda", VACUUM, "ph = 6.0", &["unproven"])]
#[case::maine_with_air("us-maine", "", "salt = \"1.7 %\", moisture = \"65 %\"", &["meets"])]
#[case::maine_without("us-maine", VACUUM, "salt = \"1.7 %\", moisture = \"65 %\"", &["breaks"])]
#[case::of_a_pack_with_air_the_guide_was_not_read("us-fda", "", "ph = 6.0", &[])]
fn smoked_fish_holds_salt_in_its_water(
    #[case] held_to: &str,
    #[case] pack: &str,
    #[case] analysis: &str,
    #[case] expected: &[&str],
) {
    let component = format!("food = \"fish\"\nanalysis = {{ {analysis} }}");
    let found = verdicts(held_to, &component, &[COLD, pack], "smoke/water-phase-salt");
    assert_eq!(found, expected);
}

/// A premix that brings 120 mg/kg of nitrite to the salmon, on its green weight.
const SALMON: &str = "[[component.ingredient]]\nname = \"salmon\"\nkind = \"fish\"\namount = \"5 kg\"\n\
    [[component.ingredient]]\nname = \"cure\"\nkind = \"curing-premix\"\namount = \"9.6 g\"\nstrength = { sodium-nitrite = \"6.25 %\" }\n";

// 2.1 % of salt to 65 % of water are 3.13 %: enough with 100 to 200 ppm of nitrite in the finished fish.
#[rstest]
#[case::analysed(SALMON, ", nitrite = \"120 mg/kg\", as = \"sodium-salts\"", "meets")]
#[case::what_goes_in_shows_nothing(SALMON, "", "unproven")]
#[case::too_little_left(SALMON, ", nitrite = \"90 mg/kg\", as = \"sodium-salts\"", "breaks")]
#[case::more_left_than_may_be(SALMON, ", nitrite = \"250 mg/kg\", as = \"sodium-salts\"", "breaks")]
#[case::no_nitrite_at_all("", "", "breaks")]
fn nitrite_of_the_finished_fish_lets_it_go_with_less_salt(
    #[case] fish: &str,
    #[case] nitrite: &str,
    #[case] expected: &str,
) {
    let component = format!(
        "food = \"fish\"\ncured_as = [\"fda/sablefish-salmon-shad\"]\ncure = {{ method = \"dry-rub\" }}\n\
         analysis = {{ salt = \"2.1 %\", moisture = \"65 %\"{nitrite} }}"
    );
    let found = verdicts("us-fda", &component, &[fish, COLD, VACUUM], "smoke/water-phase-salt");
    assert_eq!(found, [expected]);
}

#[rstest]
#[case::hot_enough("to = \"147 °F\"\nhold = \"30 min\"", "meets")]
#[case::on_the_edge("to = \"145 °F\"\nhold = \"30 min\"", "unproven")]
#[case::too_cold("to = \"140 °F\"\nhold = \"60 min\"", "breaks")]
#[case::too_short("to = \"150 °F\"\nhold = \"29 min\"", "breaks")]
#[case::not_held("to = \"150 °F\"", "unproven")]
#[case::nothing_said("", "unproven")]
fn fish_smoked_hot_is_hot_for_half_an_hour(#[case] more: &str, #[case] expected: &str) {
    for held_to in ["us-fda", "us-maine"] {
        let smoke = format!("{HOT}{more}\n");
        let found = verdicts(held_to, "food = \"fish\"", &[&smoke], "smoke/hot-fish");
        assert_eq!(found, [expected], "{held_to}");
    }
}

#[rstest]
#[case::short("at = \"55 °F\", for = \"3 h\"", "meets")]
#[case::short_and_warm("at = \"65 °F\", for = \"3 h\"", "breaks")]
#[case::long("at = \"36 °F\", for = \"12 h\"", "meets")]
#[case::long_and_warm("at = \"42 °F\", for = \"12 h\"", "breaks")]
#[case::of_unknown_length("at = \"55 °F\"", "breaks")]
#[case::how_cold("for = \"3 h\"", "unproven")]
fn fish_is_brined_cold(#[case] cure: &str, #[case] expected: &str) {
    let component = format!("food = \"fish\"\ncure = {{ method = \"immersion\", {cure} }}");
    assert_eq!(verdicts("us-fda", &component, &[COLD], "smoke/brining"), [expected]);
}

#[test]
fn fish_that_is_smoked_cold_and_then_hot_is_smoked_hot() {
    for then in [HOT, "[[component.step]]\ndo = \"cook\"\nat = \"200 °F\"\n"] {
        let found = verdicts("us-fda", "food = \"fish\"", &[COLD, then], "smoke/hot-fish");
        assert_eq!(found, ["unproven"], "{then}");
    }
    assert!(verdicts("us-fda", "food = \"fish\"", &[COLD], "smoke/hot-fish").is_empty());
}

// A smoke is no food left standing: within the hours of an authority it meets, beyond them nobody says.
#[rstest]
#[case::within_the_hours("us-consumer", "cheese", "80 °F", "2 h", &["meets"], &[])]
#[case::beyond_them("us-consumer", "cheese", "80 °F", "72 h", &[], &["unproven"])]
#[case::where_nobody_says("us-fda", "fish", "80 °F", "1 h", &[], &["unproven"])]
#[case::by_a_ceiling_with_its_time("us-maine", "fish", "80 °F", "10 h", &[], &[])]
#[case::by_one_of_two("us-fda\", \"us-maine", "fish", "80 °F", "10 h", &[], &[])]
#[case::of_two_one_is_beyond("us-maine\", \"us-consumer", "fish", "80 °F", "10 h", &[], &["unproven"])]
#[case::cold("us-consumer", "cheese", "38 °F", "72 h", &[], &[])]
fn hours_in_a_warm_cold_smoke_are_not_passed_over(
    #[case] held_to: &str,
    #[case] food: &str,
    #[case] at: &str,
    #[case] time: &str,
    #[case] judged: &[&str],
    #[case] unjudged: &[&str],
) {
    let component = format!("food = \"{food}\"");
    let smoke = step("cold-smoke", &format!("at = \"{at}\"\nfor = \"{time}\""));
    let of = |rule| verdicts(held_to, &component, &[&smoke], rule);
    assert_eq!(of("chill/warm-time"), judged);
    assert_eq!(of("store/warm-time"), unjudged);
}

#[test]
fn a_cold_smoke_is_added_to_the_other_time_in_the_warm() {
    let at = |kind: &str| step(kind, "at = \"70 °F\"\nfor = \"80 min\"");
    let parts = [at("cold-smoke"), at("serve")];
    let parts: Vec<_> = parts.iter().map(String::as_str).collect();
    let found = verdicts("us-consumer", "food = \"cheese\"", &parts, "store/warm-time");
    assert_eq!(found, ["unproven"]);
}

#[test]
fn a_shop_that_smokes_or_cures_to_preserve_is_reminded_of_its_variance() {
    let of = |held_to: &str, component: &str, step: &str| {
        verdicts(held_to, component, &[step], "smoke/variance")
    };
    assert_eq!(of(CODE, "food = \"fish\"", COLD), ["meets"]);
    let text = format!("held_to = [\"{CODE}\"]\n{HEAD}food = \"fish\"\n{COLD}");
    let found = Recipe::read(&text).unwrap().check();
    let reminder = found.iter().find(|c| c.finding.rule.id == "smoke/variance").unwrap();
    assert!(reminder.finding.past_advice, "a note, that is printed among the notes");
    assert_eq!(of(CODE, "food = \"ground-meat\"\ncure = { method = \"ground\" }", COOK), ["meets"]);
    assert!(of(CODE, "food = \"ground-meat\"", COOK).is_empty());
    assert!(of("us-fda", "food = \"fish\"", COLD).is_empty());
    assert!(of(CODE, "food = \"cheese\"", COLD).is_empty());
}

#[rstest]
#[case::cooked_short("2 h", "75 °F", "", &["meets"])]
#[case::cooked_long("4 h", "75 °F", "", &["breaks"])]
#[case::cooked_hotter("1.5 h", "85 °F", "", &["breaks"])]
#[case::cooked_cool("5 h", "60 °F", "", &["meets"])]
#[case::eaten_raw("2 h", "75 °F", "raw", &["meets"])]
#[case::eaten_raw_longer("2.5 h", "75 °F", "raw", &["breaks"])]
#[case::cold("50 h", "45 °F", "", &[])]
fn ready_to_eat_fish_is_warm_for_so_long(
    #[case] time: &str,
    #[case] at: &str,
    #[case] raw: &str,
    #[case] expected: &[&str],
) {
    let served = step("serve", &format!("at = \"{at}\"\nfor = \"{time}\""));
    let component = "food = \"fish\"";
    let cook = if raw.is_empty() { COOK } else { "" };
    assert_eq!(verdicts("us-fda", component, &[cook, &served], "chill/exposure"), expected);
    let unsaid = step("serve", &format!("at = \"{at}\""));
    let unproven: &[&str] = if expected.is_empty() { &[] } else { &["unproven"] };
    assert_eq!(verdicts("us-fda", component, &[cook, &unsaid], "chill/exposure"), unproven);
}

#[test]
fn raw_fish_that_somebody_else_cooks_is_not_ready_to_eat() {
    let hold = step("hold", "at = \"60 °F\"\nfor = \"7 h\"");
    let of = |rule: &str| verdicts("us-fda", "food = \"fish\"\nraw = true", &[&hold], rule);
    assert!(of("chill/exposure").is_empty());
    assert_eq!(of("store/warm-time"), ["unproven"], "and it is not passed over");
}

#[rstest]
#[case::held("us-consumer", &[&*step("hold", "for = \"12 h\""), COOK], 1)]
#[case::held_by_nobodys_clock("denmark", &[&*step("hold", "for = \"12 h\""), COOK], 1)]
#[case::in_a_room("us-fsis", &[&*thaw("how = \"room\"\nfor = \"12 h\""), COOK], 1)]
#[case::thawing_is_judged_by_its_own_rule("us-consumer", &[&*thaw("how = \"room\"\nfor = \"12 h\""), COOK], 0)]
#[case::served("us-consumer", &[COOK, &step("serve", "for = \"5 h\"")], 1)]
#[case::served_at_once("us-consumer", &[COOK, &step("serve", "")], 0)]
#[case::fermented("denmark", &[&*step("ferment", "for = \"30 h\"")], 1)]
#[case::rested("us-consumer", &[COOK, &step("rest", "for = \"10 min\"")], 0)]
#[case::rested_overnight("us-consumer", &[COOK, &step("rest", "for = \"10 h\"")], 1)]
fn time_at_no_stated_temperature_is_not_passed_over(
    #[case] held_to: &str,
    #[case] parts: &[&str],
    #[case] expected: usize,
) {
    let found =
        verdicts(held_to, "food = \"whole-meat\"", &[&[PORK], parts].concat(), "store/warm-time");
    assert_eq!(found, vec!["unproven"; expected]);
}

// The row says less than two hours: what is done for its mend meets.
#[test]
fn a_british_display_is_mended_to_less_than_its_limit() {
    use greenweight::{finding::Mend, units::minutes};
    let of = |time: &str| {
        let served = step("serve", &format!("at = \"50 °C\"\nfor = \"{time}\""));
        let text = format!(
            "held_to = [\"great-britain\"]\n{HEAD}food = \"ground-meat\"\n{PORK}{COOK}{served}"
        );
        let found = Recipe::read(&text).unwrap().check();
        found.iter().find(|c| c.finding.rule.id == "chill/warm-time").unwrap().finding
    };
    assert_eq!(of("3 h").mend, Some(Mend::KeepFor(minutes(119.0))));
    assert_eq!(of("119 min").verdict.words(), "meets");
}

#[test]
fn months_of_another_foods_row_are_noted() {
    let of = |like: &str| {
        let freeze =
            step("freeze", &format!("at = \"-5 °F\"\nfor = \"2 months\"\nlike = \"{like}\""));
        let text = format!(
            "held_to = [\"us-consumer\"]\n{HEAD}food = \"ground-meat\"\n{PORK}{COOK}{freeze}"
        );
        let found = Recipe::read(&text).unwrap().check();
        let time = found.iter().find(|c| c.finding.rule.id == "store/freezer-time").unwrap();
        (time.finding.verdict.words(), time.finding.past_advice)
    };
    assert_eq!(of("poultry/whole"), ("meets", true));
    assert_eq!(of("sausage/cooked"), ("meets", false));
    assert_eq!(of("freezer-chart/meat-cooked"), ("meets", false));
}

// Hot food has less than two hours on display, chilled food less than four.
#[rstest]
#[case::hot("55 °C", "1 h 55 min", "", "meets")]
#[case::hot_for_two_hours("55 °C", "2 h", "", "breaks")]
#[case::chilled("12 °C", "3 h 55 min", "chill", "meets")]
#[case::chilled_for_four("12 °C", "4 h", "chill", "breaks")]
fn a_british_display_is_once_and_short(
    #[case] at: &str,
    #[case] time: &str,
    #[case] before: &str,
    #[case] expected: &str,
) {
    let before = if before.is_empty() { String::new() } else { step("chill", "at = \"3 °C\"") };
    let served = step("serve", &format!("at = \"{at}\"\nfor = \"{time}\""));
    let parts = [PORK, COOK, &before, &served];
    let found = verdicts("great-britain", "food = \"ground-meat\"", &parts, "chill/warm-time");
    assert_eq!(found, [expected]);
}

// An hour on the table before the fire and one and a half after it are more than two.
#[test]
fn tempering_before_the_smoke_counts() {
    let temper = step("hold", "at = \"68 °F\"\nfor = \"1 h\"");
    let of = |time: &str| {
        let served = step("serve", &format!("at = \"70 °F\"\nfor = \"{time}\""));
        let parts = [PORK, &temper, COOK, &served];
        verdicts("us-consumer", "food = \"ground-meat\"", &parts, "chill/warm-time")
    };
    assert_eq!(of("1 h"), ["meets"]);
    assert_eq!(of("1 h 30 min"), ["breaks"]);
}

#[rstest]
#[case("chill", "how = \"room\"")]
#[case("refrigerate", "vacuum = true")]
#[case("freeze", "vacuum = true")]
#[case("chill", "to = \"38 °F\"")]
#[case("rest", "hold = \"10 min\"")]
#[case("serve", "like = \"sausage/cooked\"")]
#[case("pack", "humidity = \"90 %\"")]
#[case("cold-smoke", "come_up = \"2 h\"")]
fn what_no_rule_would_read_on_a_step_is_refused_and_not_passed_over(
    #[case] step: &str,
    #[case] key: &str,
) {
    let text = format!(
        "held_to = [\"us-consumer\"]\n{HEAD}food = \"ground-meat\"\n[[component.step]]\ndo = \"{step}\"\n{key}\n"
    );
    let error = Recipe::read(&text).unwrap_err();
    let [fault] = error.faults.as_slice() else { panic!("{error}") };
    let name = key.split_once(' ').unwrap().0;
    assert_eq!(fault.message, format!("`{name}` says nothing on a step with do = \"{step}\""));
    assert!(
        fault.help.is_some()
            && text[fault.place.start..].starts_with(key.split_once("= ").unwrap().1)
    );
}

#[test]
fn a_brine_without_anything_that_cures_is_judged_as_a_hold() {
    let pickle = "[[component.ingredient]]\nname = \"salt\"\nkind = \"salt\"\namount = \"100 g\"\npart = \"pickle\"\n";
    let of = |at: &str, pickle: &str| {
        let hold = step("hold", &format!("at = \"{at}\"\nfor = \"12 h\""));
        verdicts("us-fda", "food = \"fish\"", &[pickle, &hold, COLD], "smoke/brining")
    };
    assert_eq!(of("36 °F", pickle), ["meets"]);
    assert_eq!(of("42 °F", pickle), ["breaks"]);
    assert!(of("42 °F", "").is_empty(), "without a pickle it is only kept");
    // What is held after its brine dries: time in the warm.
    let dried = [
        pickle,
        &step("hold", "at = \"36 °F\""),
        &step("hold", "at = \"65 °F\"\nfor = \"1 h\""),
        COLD,
    ];
    assert_eq!(verdicts("us-fda", "food = \"fish\"", &dried, "smoke/brining"), ["meets"]);
    assert!(!verdicts("us-fda", "food = \"fish\"", &dried, "store/warm-time").is_empty());
}

#[test]
fn a_fresh_sauce_needs_no_row_of_the_chart() {
    let kinds = sauce(&["yogurt", "raw-garlic"]);
    let of = |time: &str| {
        let kept = step("refrigerate", &format!("at = \"38 °F\"\nfor = \"{time}\""));
        verdicts("us-consumer", "food = \"sauce\"", &[&kinds, &kept], "store/fridge-time")
    };
    assert_eq!(of("3 days"), ["meets"]);
    assert_eq!(of("5 days"), ["breaks"]);
}

// A drying room is no kitchen table: what is cured or fermented and never cooked is unproven there.
#[rstest]
#[case::fermented(
    "",
    "[[component.step]]\ndo = \"ferment\"\nat = \"75 °F\"\nfor = \"30 h\"\nph = 5.2\n"
)]
#[case::cured("cure = { method = \"dry-rub\" }", "")]
fn drying_is_unproven_and_not_time_in_the_warm(#[case] cure: &str, #[case] ferment: &str) {
    let dry = step("hold", "at = \"55 °F\"\nfor = \"20 days\"");
    let component = format!("food = \"whole-meat\"\nraw = true\n{cure}");
    let of = |rule| verdicts("us-consumer\", \"us-fsis", &component, &[PORK, ferment, &dry], rule);
    assert!(!of("chill/warm-time").contains(&"breaks"), "{:?}", of("chill/warm-time"));
    assert_eq!(of("store/warm-time"), ["unproven"]);
    let plain = verdicts(
        "us-consumer",
        "food = \"whole-meat\"\nraw = true",
        &[PORK, &dry],
        "chill/warm-time",
    );
    assert_eq!(plain, ["breaks"]);
}

#[rstest]
#[case::shop(CODE, "breaks")]
#[case::australia("australia-new-zealand", "breaks")]
fn cooked_fish_is_cooled_too_where_the_rule_is_for_any_food(
    #[case] held_to: &str,
    #[case] expected: &str,
) {
    let row = |after: &str, f: u16| {
        format!("[[component.cooling]]\nafter = \"{after}\"\ninside = \"{f} °F\"\n")
    };
    let slow = [row("0 h", 150), row("30 h", 38)].concat();
    let chill = step("chill", "at = \"34 °F\"");
    let of = |held_to: &str, parts: &[&str]| {
        verdicts(held_to, "food = \"fish\"", parts, "chill/cooling")
    };
    assert_eq!(of(held_to, &[COOK, &chill, &slow]), [expected]);
    assert_eq!(of(held_to, &[COOK, &chill]), ["unproven"]);
    // Its schedules are of meat: rows of a slow cooling are not passed over for that.
    assert_eq!(of("us-fsis", &[COOK, &chill, &slow]), ["unproven"]);
    let fast = [row("0 h", 150), row("1 h", 65), row("4 h", 38)].concat();
    assert!(of("us-fsis", &[COOK, &chill, &fast]).is_empty());
}

// Twenty days of cold smoke are not nothing because a cook follows.
#[rstest]
#[case::an_hour("1 h", "meets")]
#[case::six_hours("6 h", "meets")]
#[case::seven_hours("7 h", "unproven")]
#[case::for_days("480 h", "unproven")]
fn warm_stages_before_a_cook_are_added_up(#[case] time: &str, #[case] expected: &str) {
    let smoke = step("cold-smoke", &format!("at = \"75 °F\"\nfor = \"{time}\""));
    let component = "food = \"ground-meat\"";
    let of = |held_to: &str, rule: &str| verdicts(held_to, component, &[PORK, &smoke, COOK], rule);
    assert_eq!(of("us-consumer", "cook/slow-stages"), [expected]);
    assert!(of("us-fsis", "cook/slow-stages").is_empty(), "a plant has its come-up clock");
    let cook = "[[component.step]]\ndo = \"cook\"\nat = \"180 °F\"\nto = \"165 °F\"\nhold = \"5 min\"\nfor = \"3 h\"\ncome_up = \"3 h\"\n";
    let clock = verdicts("us-fsis", component, &[PORK, &smoke, cook], "cook/come-up");
    // Six hours of smoke are more than the three that are stated, and the cook takes some besides.
    let stated = match time {
        "1 h" => "meets",
        "6 h" => "unproven",
        _ => "breaks",
    };
    assert_eq!(clock, [stated], "what is stated cannot be shorter than its stages");
    let unsaid = cook.replace("come_up = \"3 h\"\n", "");
    let clock = verdicts("us-fsis", component, &[PORK, &smoke, &unsaid], "cook/come-up");
    let enough = if time == "1 h" { "meets" } else { "unproven" };
    assert_eq!(clock, [enough]);
}

#[test]
fn food_that_was_chilled_is_not_held_hot() {
    let of = |chill: &str, rule: &str| {
        let served = step("serve", "at = \"100 °F\"\nfor = \"12 h\"");
        verdicts(CODE, "food = \"ground-meat\"", &[PORK, COOK, chill, &served], rule)
    };
    let chill = step("chill", "at = \"34 °F\"");
    assert!(of(&chill, "cook/hot-holding").is_empty());
    assert_eq!(of(&chill, "chill/warm-time"), ["breaks"]);
    assert_eq!(of("", "cook/hot-holding"), ["breaks"], "too long for any clock");
    assert!(of("", "chill/warm-time").is_empty(), "said once");
}

// A freezer that shows 0 °F by a thermometer of ±1 °F is a freezer.
#[rstest]
#[case::colder("-2 °F", "meets", false)]
#[case::at_zero("0 °F", "meets", true)]
#[case::warmer("3 °F", "breaks", false)]
fn a_degree_at_the_freezer_is_a_note(
    #[case] at: &str,
    #[case] verdict: &str,
    #[case] past_advice: bool,
) {
    let freeze = step("freeze", &format!("at = \"{at}\"\nfor = \"1 month\""));
    let text =
        format!("held_to = [\"us-consumer\"]\n{HEAD}food = \"ground-meat\"\n{PORK}{COOK}{freeze}");
    let recipe = Recipe::read(&text).unwrap();
    let found = recipe.check();
    let cold = found.iter().find(|c| c.finding.rule.id == "store/freezer-temperature").unwrap();
    assert_eq!((cold.finding.verdict.words(), cold.finding.past_advice), (verdict, past_advice));
}

#[rstest]
#[case("do = \"cool\"", "step", "`chill`")]
#[case("do = \"brine\"", "step", "`hold`")]
#[case("name = \"x\"\nkind = \"herbs\"", "ingredient", "`fresh-herbs`")]
fn what_a_kitchen_says_is_understood(#[case] line: &str, #[case] table: &str, #[case] meant: &str) {
    let text =
        format!("held_to = [\"us-fsis\"]\n{HEAD}food = \"sauce\"\n[[component.{table}]]\n{line}\n");
    let error = Recipe::read(&text).unwrap_err();
    let help = error.faults.iter().filter_map(|fault| fault.help.as_deref());
    assert!(help.clone().any(|help| help.contains(meant)), "{:?}", help.collect::<Vec<_>>());
}

#[test]
fn of_several_stays_the_longest_is_pointed_at() {
    let (long, short) = (
        step("hold", "at = \"70 °F\"\nfor = \"8 h\""),
        step("chill", "at = \"45 °F\"\nfor = \"1 h\""),
    );
    let text = format!("held_to = [\"us-consumer\"]\n{HEAD}food = \"fish\"\n{long}{COOK}{short}");
    let recipe = Recipe::read(&text).unwrap();
    let found = recipe.check();
    let warm = found.iter().find(|c| c.finding.rule.id == "chill/warm-time").unwrap();
    let place = warm.finding.place;
    assert_eq!(&text[place.start..place.end], "\"70 °F\"");
}

#[test]
fn chilled_without_a_temperature_is_unproven_where_a_clock_is() {
    let of = |held_to: &str, chill: &str| {
        verdicts(held_to, "food = \"ground-meat\"", &[PORK, COOK, chill], "store/warm-time")
    };
    let unsaid = step("chill", "");
    assert_eq!(of("us-consumer", &unsaid), ["unproven"]);
    assert!(of("us-consumer", &step("chill", "at = \"36 °F\"")).is_empty());
    assert!(of("us-fsis", &unsaid).is_empty(), "it asks for the cooling itself");
}

// Two pairs stand in the rule, 90 °F for 20 h and 50 °F for 24 h; nothing is read between them.
#[test]
fn fish_at_85_for_22_hours_fits_neither_pair() {
    let of = |at: &str, time: &str| {
        let smoke = step("cold-smoke", &format!("at = \"{at}\"\nfor = \"{time}\""));
        verdicts("us-maine", "food = \"fish\"", &[&smoke], "smoke/cold-chamber")
    };
    assert_eq!(of("85 °F", "22 h"), ["breaks"]);
    assert_eq!(of("85 °F", "20 h"), ["meets"]);
    assert_eq!(of("48 °F", "22 h"), ["meets"]);
}

// Above 90 °F cheese starts to melt: common practice, no source, and a limit of quality.
#[test]
fn cheese_at_95_is_spoiled_and_not_dangerous() {
    let smoke = step("cold-smoke", "at = \"95 °F\"\nfor = \"2 h\"");
    let text = format!("held_to = [\"us-consumer\"]\n{HEAD}food = \"cheese\"\n{smoke}");
    let found = Recipe::read(&text).unwrap().check();
    let chamber =
        found.iter().find(|c| c.finding.rule.id == "smoke/cheese-chamber").unwrap().finding;
    assert_eq!(chamber.verdict.words(), "breaks");
    assert_eq!(chamber.rule.force, greenweight::finding::Force::Quality);
    let citation = chamber.rows[0].unwrap().citation;
    assert_eq!(citation.standing.words(), "common practice, no source");
}

/// Whether a row answers for a food: for another one the days stay unproven, and the months get a note.
fn answers(food: &str, raw: bool, step_kind: &str, like: &str) -> bool {
    let raw = if raw { "raw = true\n" } else { COOK };
    let kept = step(step_kind, &format!("at = \"0 °F\"\nfor = \"1 h\"\nlike = \"{like}\""));
    let text = format!("held_to = [\"us-consumer\"]\n{HEAD}food = \"{food}\"\n{raw}{kept}");
    let recipe = Recipe::read(&text).unwrap_or_else(|error| panic!("{error}\n{text}"));
    let found = recipe.check();
    let rule = if step_kind == "freeze" { "store/freezer-time" } else { "store/fridge-time" };
    let finding = found.iter().find(|checked| checked.finding.rule.id == rule).unwrap().finding;
    finding.verdict == greenweight::finding::Verdict::Meets && !finding.past_advice
}

#[rstest]
#[case("freeze", "freezer-chart/bacon-and-sausage", &["bacon", "ground-meat", "raw bacon", "raw ground-meat", "ground-poultry"], &["poultry", "fish"])]
#[case("freeze", "freezer-chart/casseroles", &["casseroles"], &["ground-meat", "raw ground-meat"])]
#[case("freeze", "freezer-chart/frozen-dinners-and-entrees", &["poultry", "casseroles"], &["raw poultry"])]
#[case("freeze", "freezer-chart/ham-hot-dogs-and-lunch-meats", &["ground-meat", "raw-ham"], &["raw ground-meat", "fish"])]
#[case("freeze", "freezer-chart/meat-cooked", &["whole-meat", "ground-meat"], &["raw whole-meat", "poultry"])]
#[case("freeze", "freezer-chart/meat-uncooked-ground", &["raw ground-meat"], &["ground-meat", "raw ground-poultry", "raw whole-meat"])]
#[case("freeze", "freezer-chart/meat-uncooked-roasts", &["raw whole-meat"], &["whole-meat", "raw ground-meat"])]
#[case("freeze", "freezer-chart/poultry-cooked", &["poultry", "ground-poultry"], &["raw poultry", "whole-meat"])]
#[case("freeze", "freezer-chart/poultry-uncooked-whole", &["raw poultry"], &["poultry", "raw whole-meat"])]
#[case("refrigerate", "ham/fresh-cooked", &["raw-ham"], &["raw raw-ham", "whole-meat"])]
#[case("refrigerate", "ham-chart/fresh-uncured-ham-uncooked", &["raw raw-ham"], &["raw-ham", "raw whole-meat"])]
#[case("refrigerate", "ham-chart/spiral-cut-ham-and-leftovers-of-consumer-cooked-ham", &["raw-ham"], &["raw raw-ham", "whole-meat"])]
#[case("refrigerate", "ham-chart/cooked-ham-whole-store-wrapped", &[], &["raw-ham", "raw raw-ham"])]
#[case("refrigerate", "sausage-chart/fresh-sausage-after-cooking-by-the-consumer-opened", &["ground-meat"], &["raw ground-meat", "whole-meat"])]
#[case("refrigerate", "sausage-chart/hot-dogs-and-other-cooked-sausage-unopened", &[], &["ground-meat", "raw ground-meat"])]
fn a_row_of_a_chart_answers_for_its_food_and_for_no_other(
    #[case] kept: &str,
    #[case] like: &str,
    #[case] of: &[&str],
    #[case] not_of: &[&str],
) {
    let answers = |food: &&str| match food.strip_prefix("raw ") {
        Some(food) => answers(food, true, kept, like),
        None => answers(food, false, kept, like),
    };
    for food in of {
        assert!(answers(food), "{like} is about {food}");
    }
    for food in not_of {
        assert!(!answers(food), "{like} is not about {food}");
    }
}

#[rstest]
#[case::a_jar_of_oil("amount = \"200 g\"", "", true)]
#[case::a_sauce_of_tomatoes(
    "amount = \"30 g\"",
    "[[component.ingredient]]\nname = \"tomatoes\"\nkind = \"other\"\namount = \"1 kg\"\n",
    false
)]
#[case::by_the_spoon(
    "amount = \"2 tbsp\"",
    "[[component.ingredient]]\nname = \"tomatoes\"\nkind = \"other\"\namount = \"1 kg\"\n",
    false
)]
#[case::more_oil_than_tomatoes(
    "amount = \"1 kg\"",
    "[[component.ingredient]]\nname = \"tomatoes\"\nkind = \"other\"\namount = \"500 g\"\n",
    true
)]
#[case::nobody_knows_how_much(
    "",
    "[[component.ingredient]]\nname = \"tomatoes\"\nkind = \"other\"\namount = \"1 kg\"\n",
    true
)]
#[case::nobody_knows_how_much_else(
    "amount = \"30 g\"",
    "[[component.ingredient]]\nname = \"tomatoes\"\nkind = \"other\"\n",
    true
)]
fn garlic_lies_in_oil_unless_something_else_surely_outweighs_it(
    #[case] oil: &str,
    #[case] besides: &str,
    #[case] asked: bool,
) {
    let oil = format!("[[component.ingredient]]\nname = \"oil\"\nkind = \"oil\"\n{oil}\n");
    let garlic =
        "[[component.ingredient]]\nname = \"garlic\"\nkind = \"raw-garlic\"\namount = \"300 g\"\n";
    let kept = step("refrigerate", "at = \"36 °F\"\nfor = \"4 days\"");
    let found = verdicts(
        "us-consumer",
        "food = \"sauce\"",
        &[&oil, garlic, besides, COOK, &kept],
        "store/garlic-in-oil",
    );
    let expected: &[&str] = if asked { &["breaks", "meets"] } else { &[] };
    assert_eq!(found, expected, "its days and its cold");
}

#[test]
fn dry_and_sour_fish_is_asked_about_its_pack_and_dry_and_sour_meat_is_not() {
    let fish = "[[component.ingredient]]\nname = \"fish\"\nkind = \"fish\"\namount = \"2 kg\"\n";
    let kept = step("refrigerate", "at = \"36 °F\"\nfor = \"5 days\"");
    let of = |food: &str, meat: &str| {
        let component =
            format!("food = \"{food}\"\nanalysis = {{ water_activity = 0.80, ph = 4.4 }}");
        let parts = [meat, COOK, VACUUM, kept.as_str()];
        verdicts(CODE, &component, &parts, "shelf/packaging-barrier")
    };
    assert_eq!(of("fish", fish), ["breaks"], "fish is packed so only while it is frozen");
    assert!(of("ground-meat", PORK).is_empty());
}
