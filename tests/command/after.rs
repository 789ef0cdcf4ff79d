//! What becomes of a recipe after the fire: cooling, time in the warm, fermentation, packs.

use rstest::rstest;

const HEAD: &str = "title = \"Invented\"\nmeasures = \"US\"\n[instruments]\nscale = \"1 g\"\nthermometer = \"1 °F\"\n[[component]]\nname = \"a\"\n";
const PORK: &str = "[[component.ingredient]]\nname = \"pork\"\nkind = \"meat\"\nfrom = \"pork\"\namount = \"10 kg\"\n";
const COOK: &str = "[[component.step]]\ndo = \"cook\"\nat = \"180 °F\"\nto = \"165 °F\"\nhold = \"5 min\"\nfor = \"3 h\"\nmoisture = \"casing\"\n";
const CHILL: &str = "[[component.step]]\ndo = \"chill\"\nat = \"34 °F\"\n";

fn verdicts(held_to: &str, component: &str, parts: &[&str], rule: &str) -> Vec<&'static str> {
    let text = format!("held_to = [\"{held_to}\"]\n{HEAD}{component}\n{PORK}{}", parts.concat());
    let recipe = greenweight::recipe::Recipe::read(&text).unwrap();
    let found = recipe.check();
    let of_rule = found.iter().filter(|checked| checked.finding.rule.id == rule);
    of_rule.map(|checked| checked.finding.verdict.words()).collect()
}

// Hung to dry at 55 °F, it is neither hot nor cold, and nobody is told to keep it hot.
#[rstest]
#[case::hung_to_dry("55 °F", "3 days", &[], &["breaks"])]
#[case::for_hours("55 °F", "3 h", &[], &["unproven"])]
#[case::nearer_to_hot("100 °F", "3 h", &["unproven"], &[])]
#[case::cold("38 °F", "3 days", &[], &[])]
fn what_is_held_in_cool_air_after_its_cook_is_not_held_hot(
    #[case] at: &str,
    #[case] time: &str,
    #[case] hot: &[&str],
    #[case] warm: &[&str],
) {
    let hold = format!("[[component.step]]\ndo = \"hold\"\nat = \"{at}\"\nfor = \"{time}\"\n");
    let of = |rule| verdicts("us-food-code-2022", "food = \"ground-meat\"", &[COOK, &hold], rule);
    assert_eq!(of("cook/hot-holding"), hot);
    assert_eq!(of("chill/warm-time"), warm);
}

// Time in place of temperature is one time: every stay that is surely colder is added to the others.
#[rstest]
#[case::within(&[("100 °F", "3 h")], &["unproven"], &[])]
#[case::in_two_stays(&[("100 °F", "3 h"), ("120 °F", "2 h")], &["breaks", "breaks"], &[])]
#[case::of_no_known_length(&[("100 °F", "")], &["unproven"], &[])]
#[case::with_time_on_a_table(&[("100 °F", "3 h"), ("70 °F", "3 h")], &["breaks"], &["unproven"])]
#[case::the_table_is_too_long_by_itself(&[("100 °F", "1 h"), ("70 °F", "9 h")], &["unproven"], &["breaks"])]
#[case::perhaps_hot(&[("134.5 °F", "9 h")], &["unproven"], &[])]
#[case::hot(&[("140 °F", "9 h"), ("100 °F", "1 h")], &["meets", "unproven"], &[])]
fn what_is_held_too_cold_and_too_long_breaks_once(
    #[case] stays: &[(&str, &str)],
    #[case] hot: &[&str],
    #[case] warm: &[&str],
) {
    let served = |(at, time): &(&str, &str)| {
        let time = if time.is_empty() { String::new() } else { format!("for = \"{time}\"\n") };
        format!("[[component.step]]\ndo = \"serve\"\nat = \"{at}\"\n{time}")
    };
    let served: String = stays.iter().map(served).collect();
    let of = |rule| verdicts("us-food-code-2022", "food = \"ground-meat\"", &[COOK, &served], rule);
    assert_eq!(of("cook/hot-holding"), hot);
    assert_eq!(of("chill/warm-time"), warm);
}

fn cooling(rows: &[(&str, u16)]) -> String {
    let row = |(after, f): &(&str, u16)| {
        format!("[[component.cooling]]\nafter = \"{after}\"\ninside = \"{f} °F\"\n")
    };
    rows.iter().map(row).collect()
}

// What rests while it cools is timed by the cooling clock of a shop; what rests longer than its curve is not.
#[rstest]
#[case::within_the_curve(CODE, "for = \"30 min\"", &[])]
#[case::beyond_it(CODE, "for = \"3 h\"", &["unproven"])]
#[case::of_no_known_length(CODE, "", &["unproven"])]
#[case::of_a_home_that_has_no_clock("us-consumer", "for = \"30 min\"", &["meets"])]
fn a_rest_within_the_cooling_curve_is_counted_once(
    #[case] held_to: &str,
    #[case] time: &str,
    #[case] expected: &[&str],
) {
    let rest = format!("[[component.step]]\ndo = \"rest\"\nat = \"70 °F\"\n{time}\n");
    let curve = cooling(&[("0 min", 165), ("30 min", 110), ("2 h", 68), ("5 h", 38)]);
    let of = |parts: &[&str], rule| verdicts(held_to, "food = \"ground-meat\"", parts, rule);
    assert_eq!(of(&[COOK, &rest, CHILL, &curve], "chill/warm-time"), expected);
    if held_to == CODE {
        assert_eq!(of(&[COOK, &rest, CHILL, &curve], "chill/cooling"), ["meets"]);
        assert_eq!(of(&[COOK, &rest, CHILL], "chill/warm-time"), ["unproven"]);
        assert_eq!(of(&[COOK, &rest, &curve], "chill/warm-time"), ["unproven"]);
    }
}

const CODE: &str = "us-food-code-2022";
const SLOW: [(&str, u16); 4] = [("0 h", 140), ("4 h", 79), ("13 h", 39), ("15 h", 38)];

#[rstest]
#[case::fast("us-fsis", "", &[("0 min", 150), ("80 min", 78), ("6 h", 38)], "meets")]
#[case::slow("us-fsis", "", &SLOW, "breaks")]
#[case::retail("us-food-code-2022", "", &[("0 h", 150), ("2 h", 68), ("5 h", 38)], "meets")]
#[case::not_said("us-fsis", "", &[], "unproven")]
fn how_fast_it_cools_is_judged(
    #[case] held_to: &str,
    #[case] component: &str,
    #[case] rows: &[(&str, u16)],
    #[case] expected: &str,
) {
    let component = format!(
        "food = \"ground-meat\"\nanalysis = {{ salt = \"2 %\", moisture = \"60 %\", water_activity = 0.97 }}\n{component}"
    );
    let found = verdicts(held_to, &component, &[COOK, CHILL, &cooling(rows)], "chill/cooling");
    assert_eq!(found, [expected]);
}

// 25 g of 6.25 % to 10 kg are 156 ppm.
const PREMIX: &str = "[[component.ingredient]]\nname = \"c\"\nkind = \"curing-premix\"\nstrength = { sodium-nitrite = \"6.25 %\" }\namount = \"20.0 g\"\nscale = \"0.1 g\"\n";

#[rstest]
#[case::no_accelerator("", "breaks")]
#[case::an_accelerator_whose_least_is_from_memory(
    "[[component.ingredient]]\nname = \"e\"\nkind = \"sodium-erythorbate\"\namount = \"5.0 g\"\nscale = \"0.1 g\"\n",
    "unproven"
)]
#[case::an_accelerator_on_a_coarse_scale(
    "[[component.ingredient]]\nname = \"e\"\nkind = \"sodium-erythorbate\"\namount = \"3 g\"\n",
    "unproven"
)]
fn a_cured_sausage_may_cool_more_slowly_with_its_accelerator(
    #[case] more: &str,
    #[case] expected: &str,
) {
    let component = "food = \"ground-meat\"\ncure = { method = \"ground\" }\nanalysis = { salt = \"2 %\", moisture = \"60 %\", water_activity = 0.97 }";
    let found = verdicts(
        "us-fsis",
        component,
        &[PREMIX, more, COOK, CHILL, &cooling(&SLOW)],
        "chill/cooling",
    );
    assert_eq!(found, [expected]);
}

#[test]
fn food_that_is_not_kept_need_not_cool() {
    let component = "food = \"ground-meat\"";
    assert!(verdicts("us-fsis", component, &[COOK], "chill/cooling").is_empty());
}

#[rstest]
#[case::home("us-consumer", "2 h", &["meets"])]
#[case::home_longer("us-consumer", "3 h", &["breaks"])]
#[case::retail("us-food-code-2022", "3 h", &["unproven"])]
#[case::plant("us-fsis", "3 h", &[])]
fn time_in_the_warm_is_judged_where_a_rule_is(
    #[case] held_to: &str,
    #[case] time: &str,
    #[case] expected: &[&str],
) {
    let table = format!("[[component.step]]\ndo = \"serve\"\nat = \"70 °F\"\nfor = \"{time}\"\n");
    let component = "food = \"ground-meat\"";
    let rule = "chill/warm-time";
    let parts: &[&str] = &[COOK, &table];
    assert_eq!(verdicts(held_to, component, parts, rule), expected);
    let unjudged = verdicts(held_to, component, parts, "store/warm-time");
    assert_eq!(unjudged.is_empty(), !expected.is_empty());
}

// Held at 136 °F: hot by the Food Code, and between cold and hot by the rule for homes.
#[test]
fn what_is_hot_by_one_rule_is_still_held_against_the_other() {
    let table = "[[component.step]]\ndo = \"serve\"\nat = \"136 °F\"\nfor = \"5 h\"\n";
    let of = |held_to, rule| verdicts(held_to, "food = \"ground-meat\"", &[COOK, table], rule);
    let both = "us-food-code-2022\", \"us-consumer";
    assert_eq!(of(both, "cook/hot-holding"), ["meets"]);
    assert_eq!(of(both, "chill/warm-time"), ["breaks"]);
    assert!(of("us-food-code-2022", "chill/warm-time").is_empty());
}

#[test]
fn dry_and_sour_food_needs_neither_time_nor_temperature() {
    let component = "food = \"ground-meat\"\nanalysis = { water_activity = 0.87, ph = 5.2 }";
    let table = "[[component.step]]\ndo = \"hold\"\nat = \"70 °F\"\nfor = \"30 days\"\n";
    let of = |held_to, rule| verdicts(held_to, component, &[table], rule);
    assert_eq!(of("us-food-code-2022", "shelf/interaction"), ["meets"]);
    assert!(of("us-food-code-2022", "chill/warm-time").is_empty());
    // Homes have no such table: it breaks nothing there, and is not proven.
    assert_eq!(of("us-consumer", "chill/warm-time"), ["unproven"]);
    let wet = component.replace("0.87", "0.97");
    assert_eq!(verdicts("us-consumer", &wet, &[table], "chill/warm-time"), ["breaks"]);
}

// An analysis of the finished food says nothing of the hours before it was finished.
#[rstest]
#[case::cooked(COOK)]
#[case::smoked_cold("[[component.step]]\ndo = \"cold-smoke\"\nat = \"70 °F\"\nfor = \"2 h\"\n")]
fn what_was_warm_before_it_was_dry_and_sour_is_asked(#[case] makes: &str) {
    let component = "food = \"ground-meat\"\nanalysis = { water_activity = 0.86, ph = 4.9 }";
    let stay = "[[component.step]]\ndo = \"pack\"\nat = \"80 °F\"\nfor = \"40 h\"\n";
    let of = |parts: &[&str], rule| verdicts("us-food-code-2022", component, parts, rule);
    assert_eq!(of(&[stay, makes], "chill/warm-time"), ["breaks"]);
    assert!(of(&[makes, stay], "chill/warm-time").is_empty(), "finished");
    assert_eq!(of(&[makes, stay], "shelf/interaction"), ["meets"]);
}

// The rules of the Food Code that are of food which needs time or temperature ask nothing of what needs neither.
#[rstest]
#[case::cooling(&[COOK, CHILL], "chill/cooling")]
#[case::held_warm(&[COOK, "[[component.step]]\ndo = \"serve\"\nat = \"100 °F\"\nfor = \"9 h\"\n"], "cook/hot-holding")]
#[case::held_cool(&[COOK, "[[component.step]]\ndo = \"serve\"\nat = \"70 °F\"\nfor = \"9 h\"\n"], "chill/warm-time")]
#[case::pack_life(&[COOK, VACUUM, KEPT], "shelf/pack-life")]
#[case::cold_holding(&[COOK, KEPT], "store/fridge-temperature")]
fn what_needs_neither_is_not_asked_for_either(#[case] parts: &[&str], #[case] rule: &str) {
    let of = |component: &str| {
        verdicts("us-food-code-2022", &format!("food = \"ground-meat\"\n{component}"), parts, rule)
    };
    assert!(of("analysis = { water_activity = 0.80, ph = 4.4 }").is_empty());
    assert_ne!(of("analysis = { water_activity = 0.97, ph = 5.9 }"), ["meets"]);
}

#[test]
fn what_dries_after_its_cook_was_another_food_while_it_cooled() {
    let component = "food = \"ground-meat\"\nanalysis = { water_activity = 0.80, ph = 4.4 }";
    let dry = "[[component.step]]\ndo = \"hold\"\nat = \"55 °F\"\nfor = \"30 days\"\n";
    let found = verdicts("us-food-code-2022", component, &[COOK, CHILL, dry], "chill/cooling");
    assert_eq!(found, ["unproven"]);
}

const KEPT: &str = "[[component.step]]\ndo = \"refrigerate\"\nat = \"45 °F\"\nfor = \"60 days\"\n";

fn ferment(at: &str, time: &str, ph: &str) -> String {
    format!("[[component.step]]\ndo = \"ferment\"\nat = \"{at}\"\nfor = \"{time}\"\n{ph}\n")
}

#[rstest]
#[case::in_time(&[("80 °F", "55 h", "ph = 5.3")], "us-fsis", "meets")]
#[case::too_long(&[("80 °F", "61 h", "ph = 5.3")], "us-fsis", "breaks")]
#[case::a_hotter_end_chooses_the_limit(&[("80 °F", "30 h", ""), ("101 °F", "8 h", "ph = 5.1")], "us-fsis", "breaks")]
#[case::what_comes_after_the_acid_does_not_count(&[("80 °F", "30 h", "ph = 5.2"), ("101 °F", "90 h", "")], "us-fsis", "meets")]
#[case::never_acid(&[("80 °F", "30 h", "ph = 5.4")], "us-fsis", "unproven")]
#[case::never_acid_and_too_long(&[("80 °F", "61 h", "ph = 5.4")], "us-fsis", "breaks")]
#[case::too_long_before_it_was_measured(&[("80 °F", "50 h", ""), ("80 °F", "11 h", "ph = 5.4"), ("80 °F", "5 h", "")], "us-fsis", "breaks")]
#[case::not_acid_and_then_not_measured(&[("80 °F", "30 h", "ph = 5.4"), ("80 °F", "40 h", "")], "us-fsis", "unproven")]
#[case::a_range(&[("80 °F", "50 to 70 h", "ph = 5.3")], "us-fsis", "unproven")]
#[case::canada(&[("26 °C", "55 h", "ph = 5.3")], "canada", "meets")]
#[case::canada_longer(&[("26 °C", "64 h", "ph = 5.3")], "canada", "breaks")]
fn a_fermentation_has_its_degree_hours(
    #[case] stages: &[(&str, &str, &str)],
    #[case] held_to: &str,
    #[case] expected: &str,
) {
    let stages: String = stages.iter().map(|(at, time, ph)| ferment(at, time, ph)).collect();
    let found = verdicts(held_to, "food = \"ground-meat\"", &[&stages], "chill/degree-hours");
    assert_eq!(found, [expected]);
}

#[test]
fn what_is_measured_and_not_acid_is_not_told_which_ph_to_write() {
    let text = format!(
        "held_to = [\"us-fsis\"]\n{HEAD}food = \"ground-meat\"\n{PORK}{}",
        ferment("80 °F", "30 h", "ph = 5.4")
    );
    let found = greenweight::recipe::Recipe::read(&text).unwrap().check();
    let of_rule = found.iter().find(|c| c.finding.rule.id == "chill/degree-hours");
    let missing = of_rule.unwrap().finding.missing.unwrap();
    assert!(missing.what.contains("not acid yet") && !missing.say.contains("ph ="), "{missing:?}");
}

// 50 h at 75 °F are 750 of the 900 that a hotter stage leaves: three hours at 110 °F.
#[test]
fn the_cooler_stages_are_taken_off_the_mend_of_the_hottest() {
    use greenweight::finding::Mend;
    let of = |cool: &str, hot: &str| {
        let stages = [ferment("75 °F", cool, ""), ferment("110 °F", hot, "ph = 5.2")].concat();
        let text = format!("held_to = [\"us-fsis\"]\n{HEAD}food = \"ground-meat\"\n{PORK}{stages}");
        let found = greenweight::recipe::Recipe::read(&text).unwrap().check();
        found.iter().find(|c| c.finding.rule.id == "chill/degree-hours").unwrap().finding
    };
    let Some(Mend::AcidWithin(time)) = of("50 h", "8 h").mend else { panic!() };
    assert!((time.value / 3600.0 - 3.0).abs() < 1e-9, "{time:?}");
    assert_eq!(of("50 h", "3 h").verdict.words(), "meets");
    let none_left = of("70 h", "1 h");
    assert_eq!((none_left.verdict.words(), none_left.mend), ("breaks", None));
}

#[test]
fn cured_meat_is_told_that_the_british_schedule_is_of_uncured() {
    let text = format!(
        "held_to = [\"great-britain\"]\n{HEAD}food = \"ground-meat\"\ncure = {{ method = \"ground\" }}\n{PORK}{PREMIX}{COOK}{CHILL}{}",
        cooling(&SLOW)
    );
    let found = greenweight::recipe::Recipe::read(&text).unwrap().check();
    let cooled = found.iter().find(|c| c.finding.rule.id == "chill/cooling").unwrap().finding;
    assert!(cooled.note.is_some_and(|note| note.contains("uncured meat")), "{:?}", cooled.note);
}

#[test]
fn a_fermentation_is_unproven_where_no_clock_is_its_own() {
    let stage = ferment("75 °F", "20 h", "ph = 5.2");
    let of = |held_to, rule| verdicts(held_to, "food = \"ground-meat\"", &[&stage], rule);
    assert!(of("us-fsis", "store/warm-time").is_empty());
    for held_to in ["denmark", "us-food-code-2022", "us-consumer"] {
        assert_eq!(of(held_to, "store/warm-time"), ["unproven"], "{held_to}");
        assert!(of(held_to, "chill/warm-time").is_empty(), "it is not left standing");
    }
}

const VACUUM: &str = "[[component.step]]\ndo = \"pack\"\nvacuum = true\n";

#[rstest]
#[case::nothing_known("", "", "unproven")]
#[case::dry("analysis = { water_activity = 0.91 }", "", "meets")]
#[case::sour("analysis = { ph = 4.6 }", "", "meets")]
#[case::neither("analysis = { water_activity = 0.915, ph = 5.5 }", "", "breaks")]
#[case::cured_here(
    "analysis = { water_activity = 0.96, ph = 6.0 }\ncure = { method = \"ground\" }",
    PREMIX,
    "breaks"
)]
fn a_pack_without_air_rests_on_a_barrier(
    #[case] component: &str,
    #[case] more: &str,
    #[case] expected: &str,
) {
    let component = format!("food = \"ground-meat\"\n{component}");
    let rule = "shelf/packaging-barrier";
    let parts = [more, COOK, VACUUM];
    assert_eq!(verdicts("us-food-code-2022", &component, &parts, rule), [expected]);
    assert!(verdicts("us-consumer", &component, &parts, rule).is_empty());
    let frozen = [more, COOK, VACUUM, "[[component.step]]\ndo = \"freeze\"\nat = \"0 °F\"\n"];
    assert!(verdicts("us-food-code-2022", &component, &frozen, rule).is_empty());
}
