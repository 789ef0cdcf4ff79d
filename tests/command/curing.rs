//! Cures in recipe documents: accelerators, phosphates, fish and home cures, residues, skin,
//! milk, claims, and authorities that differ.

use rstest::rstest;
use serde_json::Value;

use super::{check_text, of_rule};

const SCALES: &str = "[instruments]\nscale = \"0.01 g\"\nthermometer = \"1 °F\"\n";

/// A document of one component, held to one authority.
fn report(authority: &str, component: &str, ingredients: &[&str]) -> Value {
    let ingredients: String = ingredients
        .iter()
        .map(|keys| format!("[[component.ingredient]]\nname = \"x\"\n{keys}\n"))
        .collect();
    check_text(&format!(
        "title = \"Invented\"\nheld_to = [{authority}]\n{SCALES}[[component]]\nname = \"a\"\n{component}\n{ingredients}"
    ))
    .1
}

/// The verdicts of a rule, in the order of the report.
fn verdicts(report: &Value, rule: &str) -> Vec<String> {
    of_rule(report, rule)
        .iter()
        .map(|finding| finding["verdict"].as_str().unwrap().to_owned())
        .collect()
}

const FSIS: &str = "\"us-fsis\"";
const GROUND: &str = "food = \"ground-meat\"\nraw = true\ncure = { method = \"ground\" }";
const MEAT: &str = "kind = \"meat\"\nfrom = \"pork\"\namount = \"10 kg\"";
const PREMIX: &str =
    "kind = \"curing-premix\"\nstrength = { sodium-nitrite = \"6.25 %\" }\namount = \"24 g\"";

fn additive(kind: &str, amount: &str) -> String {
    format!("kind = \"{kind}\"\namount = \"{amount}\"")
}

// 9 CFR 424.21(c), class Curing accelerators: 3/4 oz of the acids, 7/8 oz of the salts, 1 oz
// of fumaric acid and 8 oz of glucono-delta-lactone to 100 lb: 4.6875, 5.46875, 6.25 and 50 g
// to 10 kg.
#[rstest]
#[case::acid_at_most("ascorbic-acid", "4.68 g", "meets")]
#[case::acid_beyond("erythorbic-acid", "4.70 g", "breaks")]
#[case::salt_at_most("sodium-erythorbate", "5.46 g", "meets")]
#[case::salt_beyond("sodium-ascorbate", "5.48 g", "breaks")]
#[case::fumaric_at_most("fumaric-acid", "6.24 g", "meets")]
#[case::fumaric_between_its_two_printed_figures("fumaric-acid", "6.4 g", "breaks")]
#[case::gdl_at_most("glucono-delta-lactone", "49.9 g", "meets")]
#[case::gdl_beyond("glucono-delta-lactone", "50.1 g", "breaks")]
#[case::pyrophosphate_outside_its_products("sodium-acid-pyrophosphate", "10 g", "unproven")]
fn an_accelerator_has_its_own_ceiling(
    #[case] kind: &str,
    #[case] amount: &str,
    #[case] verdict: &str,
) {
    let report = report(FSIS, GROUND, &[MEAT, PREMIX, &additive(kind, amount)]);
    assert_eq!(verdicts(&report, "cure/accelerator"), [verdict]);
}

#[test]
fn a_named_product_may_take_more() {
    let genoa = format!("{GROUND}\ncured_as = [\"us/genoa-salami\"]");
    let report = report(FSIS, &genoa, &[MEAT, PREMIX, &additive("glucono-delta-lactone", "99 g")]);
    assert_eq!(verdicts(&report, "cure/accelerator"), ["meets"]);
}

#[rstest]
#[case::the_finished_weight_is_not_known("", &["meets", "unproven"])]
// 8 oz to 100 lb is half a percent of the meat; dried to half, a lawful 40 g is 0.8 %.
#[case::dried_by_half("finished = \"5 kg\"", &["meets", "breaks"])]
#[case::not_dried("finished = \"9.5 kg\"", &["meets", "meets"])]
fn pyrophosphate_is_held_to_the_meat_and_to_the_finished_product(
    #[case] finished: &str,
    #[case] expected: &[&str],
) {
    let frank = format!("{GROUND}\ncured_as = [\"us/frankfurter-class\"]\n{finished}");
    let sapp = additive("sodium-acid-pyrophosphate", "40 g");
    let report = report(FSIS, &frank, &[MEAT, PREMIX, &sapp]);
    assert_eq!(verdicts(&report, "cure/accelerator"), expected);
}

#[test]
fn an_accelerator_without_a_cure_breaks_and_a_phosphate_does_not_need_one() {
    let report_of = |kind| {
        let more = format!("{GROUND}\nfinished = \"9 kg\"");
        report(FSIS, &more, &[MEAT, &additive(kind, "4 g")])
    };
    assert_eq!(verdicts(&report_of("sodium-ascorbate"), "cure/accelerator"), ["breaks"]);
    let phosphate = report_of("phosphate");
    assert_eq!(verdicts(&phosphate, "cure/phosphate"), ["meets"]);
    assert!(of_rule(&phosphate, "cure/accelerator").is_empty());
}

// 9 CFR 424.21(c), class Miscellaneous: 0.5 percent of the product. 48 g in 10 kg of meat is
// 0.48 %, and 0.53 % once it has shrunk to 9 kg.
#[rstest]
#[case::before_the_shrink("10 kg", "meets")]
#[case::after_the_shrink("9 kg", "breaks")]
fn a_lawful_phosphate_can_pass_its_limit_by_shrinking(
    #[case] finished: &str,
    #[case] verdict: &str,
) {
    let more = format!("{GROUND}\nfinished = \"{finished}\"");
    let report = report(FSIS, &more, &[MEAT, PREMIX, &additive("phosphate", "48 g")]);
    assert_eq!(verdicts(&report, "cure/phosphate"), [verdict]);
}

// Half of the accelerator may be citric acid or citrate.
#[rstest]
#[case::half_and_half("2.73 g", "2.7 g", &["meets", "meets"])]
#[case::more_than_half("2.5 g", "2.8 g", &["meets", "breaks"])]
#[case::too_much_in_all("2.8 g", "2.8 g", &["breaks", "unproven"])]
fn citrates_replace_half_and_count_in_the_sum(
    #[case] ascorbate: &str,
    #[case] citrate: &str,
    #[case] expected: &[&str],
) {
    let (a, c) = (additive("sodium-ascorbate", ascorbate), additive("citric-acid", citrate));
    let report = report(FSIS, GROUND, &[MEAT, PREMIX, &a, &c]);
    let mut found = verdicts(&report, "cure/accelerator");
    // A report shows the worst first; here the sum comes before the share of the citrates.
    let mut expected = expected.to_vec();
    found.sort();
    expected.sort_unstable();
    assert_eq!(found, expected);
}

#[rstest]
#[case::under_both("2 g", "2 g", "meets")]
#[case::between_the_two("2.5 g", "2.5 g", "unproven")]
#[case::over_both("3 g", "3 g", "breaks")]
fn acid_and_salt_together_are_unproven_between_their_two_limits(
    #[case] acid: &str,
    #[case] salt: &str,
    #[case] verdict: &str,
) {
    let (a, s) = (additive("ascorbic-acid", acid), additive("sodium-erythorbate", salt));
    let report = report(FSIS, GROUND, &[MEAT, PREMIX, &a, &s]);
    assert_eq!(verdicts(&report, "cure/accelerator"), [verdict]);
}

#[test]
fn an_additive_by_the_spoon_or_under_a_silent_authority_is_unproven() {
    let spooned = report(FSIS, GROUND, &[MEAT, PREMIX, "kind = \"sodium-ascorbate\""]);
    assert_eq!(verdicts(&spooned, "cure/accelerator"), ["unproven"]);
    let elsewhere = report("\"denmark\"", GROUND, &[MEAT, PREMIX, &additive("phosphate", "4 g")]);
    assert_eq!(verdicts(&elsewhere, "cure/phosphate"), ["unproven"]);
    assert!(of_rule(&elsewhere, "cure/accelerator").is_empty());
}

const PLAIN: &str = "food = \"whole-meat\"\nraw = true\nfinished = \"10 kg\"";

// Half a percent of the product, 50 g, and 50 g to 10 kg of meat from a pickle.
#[rstest]
#[case::mixed_in("40 g", "", &["meets"])]
#[case::too_much("60 g", "", &["breaks"])]
#[case::all_of_a_pickle_may_go_in("40 g", "part = \"pickle\"", &["meets", "meets"])]
#[case::part_of_a_pickle_may_go_in("60 g", "part = \"pickle\"", &["unproven", "unproven"])]
fn phosphate_without_a_cure_needs_no_method(
    #[case] amount: &str,
    #[case] part: &str,
    #[case] expected: &[&str],
) {
    let phosphate = format!("{}\n{part}", additive("phosphate", amount));
    let report = report(FSIS, PLAIN, &[MEAT, &phosphate]);
    assert_eq!(verdicts(&report, "cure/phosphate"), expected);
    for other in ["cure/accelerator", "cure/premix"] {
        assert!(of_rule(&report, other).is_empty(), "{other}");
    }
}

#[rstest]
#[case::a_sauce("food = \"sauce\"", "kind = \"other\"\namount = \"1 kg\"", &[])]
#[case::meat("food = \"ground-meat\"\nraw = true", MEAT, &["unproven"])]
fn an_acid_needs_an_authority_where_there_is_meat(
    #[case] component: &str,
    #[case] ingredient: &str,
    #[case] expected: &[&str],
) {
    let acid = additive("citric-acid", "3 g");
    let report = report("\"us-consumer\"", component, &[ingredient, &acid]);
    assert_eq!(verdicts(&report, "cure/authority"), expected);
    let finding = report.to_string();
    assert!(!finding.contains("leave nitrite and nitrate out"), "{finding}");
}

const BACON: &str = "food = \"bacon\"\nraw = true\nfinished = \"9.9 kg\"\ncure = { method = \"pumped\", pump = \"10 %\" }";

/// Ten kilograms of belly and a kilogram of pickle at a tenth of pump.
fn pumped_bacon(component: &str, erythorbate: &str) -> Value {
    let premix = "kind = \"curing-premix\"\nstrength = { sodium-nitrite = \"6.25 %\" }\namount = \"19.2 g\"\npart = \"pickle\"";
    let accelerator = format!("kind = \"sodium-erythorbate\"\npart = \"pickle\"\n{erythorbate}");
    let water = "kind = \"water\"\namount = \"975.3 g\"\npart = \"pickle\"";
    report(FSIS, component, &[MEAT, premix, &accelerator, water])
}

// 9 CFR 424.22(b)(1) scales a hydrated salt to the 550 mg/kg of the anhydrous one, whose
// weight it gives as about 198: of the monohydrate, × 216.121 / 198.106, it takes 600.
#[rstest]
#[case::anhydrous("amount = \"5.5 g\"", "meets")]
#[case::hydrated_as_if_it_were_not("amount = \"5.5 g\"\nhydrated = true", "breaks")]
#[case::hydrated("amount = \"6.0 g\"\nhydrated = true", "meets")]
fn a_hydrated_erythorbate_is_scaled_up(#[case] erythorbate: &str, #[case] verdict: &str) {
    let report = pumped_bacon(BACON, erythorbate);
    assert_eq!(verdicts(&report, "cure/bacon-ascorbate"), [verdict], "{report:#}");
    // The general ceiling of 547 is not for pumped bacon.
    assert!(of_rule(&report, "cure/accelerator").is_empty());
}

// 9 CFR 319.107.
#[rstest]
#[case::lighter("9.9 kg", "meets")]
#[case::heavier("10.1 kg", "breaks")]
#[case::within_the_scale("10 kg", "unproven")]
fn bacon_may_not_weigh_more_than_the_fresh_belly(#[case] finished: &str, #[case] verdict: &str) {
    let report = pumped_bacon(&BACON.replace("9.9 kg", finished), "amount = \"5.5 g\"");
    assert_eq!(verdicts(&report, "cure/bacon-weight"), [verdict]);
    assert_eq!(of_rule(&report, "cure/bacon-weight")[0]["force"], "quality");
}

// Ten kilograms with their skin, nine without it.
#[rstest]
#[case::lighter_than_without("skin = true", "8.9 kg", "meets")]
#[case::between("skin = true", "9.5 kg", "unproven")]
#[case::heavier_than_with("skin = true", "10.1 kg", "breaks")]
#[case::not_said("", "9.5 kg", "unproven")]
#[case::without("skin = false", "9.9 kg", "meets")]
fn a_rubbed_belly_is_weighed_against_itself_with_its_skin_and_without(
    #[case] skin: &str,
    #[case] finished: &str,
    #[case] verdict: &str,
) {
    let component = format!(
        "food = \"bacon\"\nraw = true\nfinished = \"{finished}\"\ncure = {{ method = \"dry-rub\", at = \"38 °F\", for = \"7 days\" }}"
    );
    let report = report(FSIS, &component, &[&format!("{MEAT}\n{skin}"), PREMIX]);
    assert_eq!(verdicts(&report, "cure/bacon-weight"), [verdict]);
    let missing = of_rule(&report, "cure/bacon-weight")[0]["missing"].is_string();
    assert_eq!(missing, verdict == "unproven");
}

#[test]
fn a_finished_weight_left_out_is_unproven_where_bacon_is_pumped() {
    let report = pumped_bacon(&BACON.replace("finished = \"9.9 kg\"\n", ""), "amount = \"5.5 g\"");
    assert_eq!(verdicts(&report, "cure/bacon-weight"), ["unproven"]);
}

// What a target pump gives when the real one varies: 8 to 12 percent of a pickle made for 120
// is 96 to 144, the band that is accepted around it. It is from memory, so it proves nothing; a wider one strays.
#[rstest]
#[case::as_made("10 %", "meets")]
#[case::within_the_band_from_memory("9 to 11 %", "unproven")]
#[case::straying("7 to 13 %", "unproven")]
fn a_pump_that_varies_is_a_range(#[case] pump: &str, #[case] verdict: &str) {
    let component = BACON.replace("\"10 %\"", &format!("\"{pump}\""));
    let report = pumped_bacon(&component, "amount = \"5.5 g\"");
    assert_eq!(verdicts(&report, "cure/bacon-nitrite"), [verdict]);
}

/// Ten kilograms of belly, rubbed with `grams` of a 6.25 % premix.
fn rubbed_belly(grams: &str, skin: &str) -> Value {
    let component = "food = \"bacon\"\nraw = true\ncure = { method = \"dry-rub\", at = \"38 °F\", for = \"7 days\" }";
    let premix = format!(
        "kind = \"curing-premix\"\nstrength = {{ sodium-nitrite = \"6.25 %\" }}\namount = \"{grams}\""
    );
    report(FSIS, component, &[&format!("{MEAT}\n{skin}"), &premix])
}

// 200 mg/kg of skin-free weight; a tenth of a skin-on belly is skin (from memory), so 180.
#[rstest]
#[case::skin_off("31.9 g", "skin = false", "meets")]
#[case::skin_on("31.9 g", "skin = true", "breaks")]
#[case::skin_on_at_180_by_a_share_from_memory("28.7 g", "skin = true", "unproven")]
#[case::not_said_between("31 g", "", "unproven")]
#[case::not_said_under_both_by_a_share_from_memory("28 g", "", "unproven")]
#[case::not_said_over_both("33 g", "", "breaks")]
fn the_skin_of_a_belly_takes_up_no_cure(
    #[case] grams: &str,
    #[case] skin: &str,
    #[case] verdict: &str,
) {
    let report = rubbed_belly(grams, skin);
    assert_eq!(verdicts(&report, "cure/bacon-nitrite"), [verdict]);
    let missing = &of_rule(&report, "cure/bacon-nitrite")[0]["missing"];
    assert_eq!(missing.is_string(), verdict == "unproven");
}

// The policy of the handbook, 120 mg/kg at least: 19.2 g of the premix in 10 kg.
#[rstest]
#[case::as_good_as_none("2.5 g", &[true])]
#[case::just_below("19.1 g", &[true])]
#[case::enough("20 g", &[false])]
#[case::too_much("33 g", &[])]
fn a_belly_that_is_rubbed_with_too_little_is_noted(#[case] grams: &str, #[case] past: &[bool]) {
    let report = rubbed_belly(grams, "skin = false");
    let found = of_rule(&report, "cure/least-nitrite");
    let noted: Vec<_> = found.iter().map(|finding| finding["past_advice"] == true).collect();
    assert_eq!(noted, past);
    assert!(of_rule(&pumped_bacon(BACON, "amount = \"5.5 g\""), "cure/least-nitrite").is_empty());
}

#[rstest]
#[case::in_force("2000-01-01", "meets")]
#[case::before_its_rows("1999-01-01", "unproven")]
fn the_rows_of_bacon_have_their_days(#[case] date: &str, #[case] verdict: &str) {
    let text = format!(
        "title = \"Invented\"\nheld_to = [\"us-fsis\"]\ndate = {date}\n{SCALES}[[component]]\nname = \"a\"\nfood = \"bacon\"\nraw = true\ncure = {{ method = \"dry-rub\" }}\n\
         [[component.ingredient]]\nname = \"m\"\n{MEAT}\nskin = false\n[[component.ingredient]]\nname = \"c\"\n{PREMIX}\n"
    );
    assert_eq!(verdicts(&check_text(&text).1, "cure/bacon-nitrite"), [verdict]);
}

#[rstest]
#[case::cold_and_timed("at = \"38 °F\", for = \"7 days\"", &[], &["meets"])]
#[case::too_warm("at = \"50 °F\", for = \"7 days\"", &[], &["breaks"])]
#[case::neither_said("", &["unproven"], &["unproven"])]
#[case::no_time("at = \"38 °F\"", &["unproven"], &["meets"])]
fn a_rub_says_how_long_and_how_cold(
    #[case] keys: &str,
    #[case] time: &[&str],
    #[case] cold: &[&str],
) {
    let comma = if keys.is_empty() { "" } else { ", " };
    let component = format!(
        "food = \"whole-meat\"\nraw = true\ncure = {{ method = \"dry-rub\"{comma}{keys} }}"
    );
    let report = report(FSIS, &component, &[MEAT, PREMIX]);
    assert_eq!(verdicts(&report, "cure/time"), time);
    assert_eq!(verdicts(&report, "cure/temperature"), cold);
}

#[test]
fn what_is_mixed_into_ground_meat_needs_no_time() {
    let report = report(FSIS, GROUND, &[MEAT, PREMIX]);
    assert!(of_rule(&report, "cure/time").is_empty());
    assert!(of_rule(&report, "cure/temperature").is_empty());
}

// 9 CFR 424.21(c): not more than 200 ppm in the finished product, as sodium nitrite. 140 of
// the ion is 209.96 of the salt.
#[rstest]
#[case::not_analysed("", "unproven")]
#[case::as_the_salt("analysis = { nitrite = \"140 mg/kg\", as = \"sodium-salts\" }", "meets")]
#[case::as_the_ion("analysis = { nitrite = \"140 mg/kg\", as = \"ions\" }", "breaks")]
#[case::only_nitrate("analysis = { nitrate = \"9 mg/kg\", as = \"ions\" }", "unproven")]
fn a_residue_is_proven_by_an_analysis_alone(#[case] analysis: &str, #[case] verdict: &str) {
    let report = report(FSIS, &format!("{GROUND}\n{analysis}"), &[MEAT, PREMIX]);
    assert_eq!(verdicts(&report, "cure/residue"), [verdict]);
    assert_eq!(verdicts(&report, "cure/ingoing-nitrite"), ["meets"]);
}

#[rstest]
// The European row of heat-treated products from 9 October 2025 caps the residue at 45 of the
// ion, besides the 80 that may go in.
#[case::union_under("\"european-union\"", "eu/heat-treated", "nitrite = \"44 mg/kg\"", "meets")]
#[case::union_over("\"european-union\"", "eu/heat-treated", "nitrite = \"46 mg/kg\"", "breaks")]
// Japan: 0.070 g/kg of the ion.
#[case::japan_under("\"japan\"", "jp/meat", "nitrite = \"70 mg/kg\"", "meets")]
#[case::japan_over("\"japan\"", "jp/meat", "nitrite = \"70.1 mg/kg\"", "breaks")]
// Australia and New Zealand count both, as sodium nitrite: 125 from memory. 40 of nitrite is
// 60 of the salt, and 50 of nitrate 55.6 more.
#[case::both_under_a_row_from_memory(
    "\"australia-new-zealand\"",
    "anz/cured-meat",
    "nitrite = \"40 mg/kg\", nitrate = \"50 mg/kg\"",
    "unproven"
)]
#[case::both_over(
    "\"australia-new-zealand\"",
    "anz/cured-meat",
    "nitrite = \"40 mg/kg\", nitrate = \"60 mg/kg\"",
    "breaks"
)]
#[case::nitrite_alone_is_not_both(
    "\"australia-new-zealand\"",
    "anz/cured-meat",
    "nitrite = \"40 mg/kg\"",
    "unproven"
)]
fn an_analysis_is_counted_as_the_row_counts(
    #[case] authority: &str,
    #[case] product: &str,
    #[case] analysis: &str,
    #[case] verdict: &str,
) {
    let component =
        format!("{GROUND}\ncured_as = [\"{product}\"]\nanalysis = {{ {analysis}, as = \"ions\" }}");
    let report = report(authority, &component, &[MEAT, PREMIX]);
    assert_eq!(verdicts(&report, "cure/residue"), [verdict]);
}

#[test]
fn food_for_infants_may_hold_no_curing_agent() {
    let component = format!("{GROUND}\nfor_infants = true");
    let report_of = |premix| report(FSIS, &component, &[MEAT, premix]);
    assert_eq!(verdicts(&report_of(PREMIX), "cure/infant-food"), ["breaks"]);
    let both = "kind = \"curing-premix\"\nstrength = { sodium-nitrite = \"1 %\", sodium-nitrate = \"1 %\" }\namount = \"1 g\"";
    assert_eq!(verdicts(&report_of(both), "cure/infant-food"), ["breaks", "breaks"]);
    let unknown = "kind = \"curing-premix\"\namount = \"1 g\"";
    assert_eq!(verdicts(&report_of(unknown), "cure/infant-food"), ["unproven"]);
    let adults = report(FSIS, GROUND, &[MEAT, PREMIX]);
    assert!(of_rule(&adults, "cure/infant-food").is_empty());
}

const FISH: &str = "food = \"fish\"\nraw = true\nfinished = \"9 kg\"\ncure = { method = \"dry-rub\", at = \"38 °F\", for = \"1 day\" }";

// 21 CFR 172.175 and 172.170; guide to fish hazards, chapter 13, for any other fish. 24 g of
// 6.25 % is 1.5 g of nitrite in 9 kg of finished fish: at most 167 mg/kg.
#[rstest]
#[case::salmon("fda/sablefish-salmon-shad", "meets")]
#[case::tuna("fda/tuna", "unproven")]
#[case::chub_has_a_least_amount_too("fda/smoked-chub", "unproven")]
#[case::any_other_fish("fda/other-fish", "breaks")]
fn nitrite_in_fish_goes_by_the_species(#[case] species: &str, #[case] verdict: &str) {
    let component = format!("{FISH}\ncured_as = [\"{species}\"]");
    let fish = "kind = \"fish\"\namount = \"10 kg\"";
    let report = report("\"us-fda\"", &component, &[fish, PREMIX]);
    assert_eq!(verdicts(&report, "cure/ingoing-nitrite"), [verdict], "{report:#}");
}

#[test]
fn an_unlisted_fish_with_nitrite_is_never_met() {
    let report_of =
        |premix| report("\"us-fda\"", FISH, &["kind = \"fish\"\namount = \"10 kg\"", premix]);
    let found = report_of(PREMIX);
    assert_eq!(verdicts(&found, "cure/ingoing-nitrite"), ["unproven"]);
    let say = of_rule(&found, "cure/ingoing-nitrite")[0]["say"].as_str().unwrap().to_owned();
    assert!(say.contains("fda/other-fish"), "{say}");
    // A potassium salt has no row there at all.
    let component = format!("{FISH}\ncured_as = [\"fda/sablefish-salmon-shad\"]");
    let potassium =
        "kind = \"curing-premix\"\nstrength = { potassium-nitrite = \"1 %\" }\namount = \"1 g\"";
    let found =
        report("\"us-fda\"", &component, &["kind = \"fish\"\namount = \"10 kg\"", potassium]);
    assert_eq!(verdicts(&found, "cure/ingoing-nitrite"), ["unproven"]);
}

// A mix for home cures: 200 of nitrite and 500 of nitrate in the finished meat. 150 and 600
// are lawful in a plant and not at home.
#[test]
fn a_home_cure_is_held_to_the_finished_meat() {
    let component = "food = \"whole-meat\"\nraw = true\nfinished = \"10 kg\"\ncured_as = [\"fda/home-cure\"]\ncure = { method = \"dry-rub\", at = \"38 °F\", for = \"9 days\" }";
    let mix = "kind = \"curing-premix\"\nstrength = { sodium-nitrite = \"1.5 %\", sodium-nitrate = \"6 %\" }\namount = \"100 g\"";
    let report = report("\"us-fsis\", \"us-fda\"", component, &[MEAT, mix]);
    assert_eq!(verdicts(&report, "cure/ingoing-nitrite"), ["meets", "meets"]);
    assert_eq!(verdicts(&report, "cure/ingoing-nitrate"), ["meets", "unproven"]);
}

#[test]
fn an_analysed_fish_breaks_where_its_recipe_could_not() {
    let component = format!(
        "{FISH}\ncured_as = [\"fda/tuna\"]\nanalysis = {{ nitrite = \"12 mg/kg\", as = \"sodium-salts\" }}"
    );
    let fish = "kind = \"fish\"\namount = \"10 kg\"";
    let report = report("\"us-fda\"", &component, &[fish, PREMIX]);
    assert_eq!(verdicts(&report, "cure/residue"), ["breaks"]);
}

#[rstest]
// 8.6 g of pure sodium nitrate in 100 kg of milk is 62.7 mg/kg of the ion, 10.4 g 75.9.
#[case::under("8.6 g", "meets")]
#[case::over("10.4 g", "breaks")]
fn nitrate_for_cheese_is_dosed_to_the_milk(#[case] amount: &str, #[case] verdict: &str) {
    let component = "food = \"cheese\"\ncured_as = [\"eu/ripened-cheese\"]";
    let milk = "kind = \"milk\"\namount = \"100 kg\"";
    let salt = format!(
        "kind = \"curing-premix\"\nstrength = {{ sodium-nitrate = \"100 %\" }}\namount = \"{amount}\""
    );
    let text = |date: &str| {
        check_text(&format!(
            "title = \"Invented\"\nheld_to = [\"european-union\"]\ndate = {date}\n{SCALES}[[component]]\nname = \"a\"\n{component}\n\
             [[component.ingredient]]\nname = \"x\"\n{milk}\n[[component.ingredient]]\nname = \"x\"\n{salt}\n"
        ))
        .1
    };
    assert_eq!(verdicts(&text("2026-10-09"), "cure/ingoing-nitrate"), [verdict]);
    // The row of before does not say as what it counts.
    assert_eq!(verdicts(&text("2026-10-08"), "cure/ingoing-nitrate"), ["unproven"]);
}

#[rstest]
#[case::a_powder("celery powder", &["unproven"])]
#[case::a_juice("Juice of chard", &["unproven"])]
#[case::a_concentrate("celery concentrate", &["unproven"])]
#[case::a_root("beetroot powder", &["unproven"])]
#[case::a_leaf("Spinach powder, dried", &["unproven"])]
#[case::a_word_within_another("orchard juice", &[])]
#[case::a_vegetable("celery, chopped", &[])]
#[case::a_seed("celery seed", &[])]
fn a_plant_that_cures_is_not_passed_over(#[case] name: &str, #[case] expected: &[&str]) {
    let text = format!(
        "title = \"Invented\"\nheld_to = [\"us-fsis\"]\n{SCALES}[[component]]\nname = \"a\"\nfood = \"ground-meat\"\nraw = true\n\
         [[component.ingredient]]\nname = \"m\"\n{MEAT}\n[[component.ingredient]]\nname = \"{name}\"\nkind = \"other\"\namount = \"40 g\"\n"
    );
    assert_eq!(verdicts(&check_text(&text).1, "cure/vegetable-juice"), expected);
}

// A tenth of 24 g of a 6.25 % premix in 5 kg of pickle: 30 mg/kg of the meat.
#[rstest]
#[case::in_the_pickle("part = \"pickle\"", &["breaks", "meets"])]
#[case::perhaps_rubbed_on("", &["unproven", "unproven"])]
fn a_pumped_loin_is_held_to_what_is_pumped_in(#[case] part: &str, #[case] expected: &[&str]) {
    let component = "food = \"whole-meat\"\nraw = true\ncured_as = [\"ca/cured\"]\ncure = { method = \"pumped\", pump = \"10 %\" }";
    let water = "kind = \"water\"\namount = \"4.976 kg\"\npart = \"pickle\"";
    let report = report("\"canada\"", component, &[MEAT, water, &format!("{PREMIX}\n{part}")]);
    let mut found = verdicts(&report, "cure/ingoing-nitrite");
    found.sort();
    assert_eq!(found, expected);
}

// 24 g of 6.25 % in 10 kg is 150 mg/kg. With 2 kg of ice the whole is 12.024 kg: 124.8.
#[rstest]
#[case::right("150 ppm", "meets", "")]
#[case::on_the_whole_batch("125 ppm", "breaks", "weight of everything")]
#[case::as_the_ion("100 ppm", "breaks", "nitrite ion")]
#[case::for_no_known_reason("75 ppm", "breaks", "")]
fn a_claimed_level_is_recomputed(#[case] claim: &str, #[case] verdict: &str, #[case] why: &str) {
    let component = format!(
        "food = \"ground-meat\"\nraw = true\ncure = {{ method = \"ground\", ingoing_nitrite = \"{claim}\" }}"
    );
    let ice = "kind = \"water\"\namount = \"2 kg\"";
    let report = report(FSIS, &component, &[MEAT, PREMIX, ice]);
    assert_eq!(verdicts(&report, "cure/claimed-level"), [verdict]);
    let note = of_rule(&report, "cure/claimed-level")[0]["note"].as_str().unwrap_or("").to_owned();
    assert!(if why.is_empty() { note.is_empty() } else { note.contains(why) }, "{note}");
}

// Limits that go by product need no method, and neither does the level on the meat: 150 mg/kg.
#[rstest]
#[case::right("150 ppm", PREMIX, "meets")]
#[case::wrong("60 ppm", PREMIX, "breaks")]
#[case::by_the_spoon(
    "150 ppm",
    "kind = \"curing-premix\"\nstrength = { sodium-nitrite = \"6.25 %\" }",
    "unproven"
)]
#[case::in_a_pickle_by_no_method(
    "150 ppm",
    "kind = \"curing-premix\"\nstrength = { sodium-nitrite = \"6.25 %\" }\namount = \"24 g\"\npart = \"pickle\"",
    "unproven"
)]
fn a_claim_without_a_method_is_not_passed_over(
    #[case] claim: &str,
    #[case] premix: &str,
    #[case] verdict: &str,
) {
    let component = format!(
        "food = \"ground-meat\"\nraw = true\ncured_as = [\"gb/meat-in-general\"]\ncure = {{ ingoing_nitrite = \"{claim}\" }}"
    );
    let report = report("\"great-britain\"", &component, &[MEAT, premix]);
    assert_eq!(verdicts(&report, "cure/claimed-level"), [verdict]);
}

#[rstest]
// A pickle of 1.2 g of nitrite to the kilogram at a tenth of pump is 120: on the pumped
// weight it would be 109, and in the pickle it is 1200.
#[case::on_the_pumped_weight("109 ppm", "pumped weight")]
#[case::in_the_pickle("1200 ppm", "strength of the pickle")]
fn a_claim_about_a_pickle_is_explained(#[case] claim: &str, #[case] why: &str) {
    let component = BACON.replace("pump = ", &format!("ingoing_nitrite = \"{claim}\", pump = "));
    let report = pumped_bacon(&component, "amount = \"5.5 g\"");
    let finding = of_rule(&report, "cure/claimed-level")[0];
    assert_eq!(finding["verdict"], "breaks");
    assert!(finding["note"].as_str().unwrap().contains(why), "{finding:#}");
}

/// Nitrite of an immersion of 5 kg in some pickle.
fn immersed(cure: &str, water: &str, premix: &str) -> Value {
    let pickle = |kind: &str, amount: &str| {
        format!("kind = {kind}\namount = \"{amount}\"\npart = \"pickle\"")
    };
    let ingredients = [
        MEAT.replace("10 kg", "5 kg"),
        pickle("\"water\"", water),
        pickle("\"curing-premix\"\nstrength = { sodium-nitrite = \"6.25 %\" }", premix),
    ];
    let component = format!(
        "food = \"whole-meat\"\nraw = true\ncure = {{ method = \"immersion\", at = \"36 °F\", {cure} }}"
    );
    report(FSIS, &component, &ingredients.each_ref().map(String::as_str))
}

// 180 g of 6.25 % in 5.18 kg: 174 mg/kg by a pick-up of 8 %, 1105 at equilibrium, against 200.
#[rstest]
#[case::of_hours("equilibrium = false, for = \"8 h\"", "180 g", "meets")]
#[case::of_days("equilibrium = false, for = \"21 days\"", "180 g", "unproven")]
#[case::of_no_known_time("equilibrium = false", "180 g", "unproven")]
#[case::of_which_nothing_is_said("for = \"21 days\"", "180 g", "unproven")]
#[case::at_rest("equilibrium = true, for = \"21 days\"", "180 g", "breaks")]
#[case::of_days_and_weak("equilibrium = false, for = \"21 days\"", "30 g", "meets")]
fn a_brine_of_days_is_not_held_to_its_pick_up_alone(
    #[case] cure: &str,
    #[case] premix: &str,
    #[case] verdict: &str,
) {
    let report = immersed(&format!("pick_up = \"8 %\", {cure}"), "5 kg", premix);
    let finding = of_rule(&report, "cure/ingoing-nitrite")[0];
    assert_eq!(finding["verdict"], verdict, "{finding:#}");
    let explained = finding["note"].as_str().is_some_and(|note| note.contains("for days"));
    let by_both = !cure.contains("true") && !cure.contains(" h\"");
    assert_eq!(explained, by_both, "{finding:#}");
}

#[test]
fn an_immersion_in_litres_is_asked_for_a_weight_and_never_for_a_pump() {
    let report = immersed("pick_up = \"8 %\", for = \"21 days\"", "5 l", "30 g");
    let finding = of_rule(&report, "cure/ingoing-nitrite")[0];
    assert!(finding["missing"].as_str().unwrap().contains("weight of the pickle"), "{finding:#}");
    let say = finding["say"].as_str().unwrap();
    assert!(say.contains("volume is no weight") && !say.contains("pump"), "{finding:#}");
}

#[test]
fn a_pumped_cure_without_its_pump_is_asked_for_it() {
    let report =
        pumped_bacon(&BACON.replace("pump = \"10 %\"", "for = \"1 day\""), "amount = \"5.5 g\"");
    let finding = of_rule(&report, "cure/bacon-nitrite")[0];
    assert!(finding["say"].as_str().unwrap().contains("write pump"), "{finding:#}");
}

const LONG_CURE: &str = "kind = \"curing-premix\"\nstrength = { sodium-nitrite = \"6.25 %\", sodium-nitrate = \"4 %\" }\namount = \"24 g\"";

// Common practice, no source: nitrate works through bacteria, and takes a week at least.
#[rstest]
#[case::cooked_the_same_day("", &[true])]
#[case::after_a_week(", for = \"8 days\"", &[false])]
#[case::after_a_night(", for = \"12 h\"", &[true])]
fn nitrate_in_a_quick_cure_is_noted(#[case] time: &str, #[case] past: &[bool]) {
    assert_eq!(quick_nitrate(time, ""), past);
}

#[rstest]
#[case::fermented("ferment", "10 days", false)]
#[case::fermented_for_a_day("ferment", "1 day", true)]
#[case::smoked_cold("cold-smoke", "8 days", false)]
fn nitrate_works_while_it_ferments(#[case] what: &str, #[case] time: &str, #[case] past: bool) {
    let step = format!("[[component.step]]\ndo = \"{what}\"\nat = \"60 °F\"\nfor = \"{time}\"\n");
    assert_eq!(quick_nitrate("", &step), [past]);
}

/// Whether the advice is departed from, where it is given.
fn quick_nitrate(time: &str, steps: &str) -> Vec<bool> {
    let text = format!(
        "title = \"Invented\"\nheld_to = [\"us-fsis\"]\n{SCALES}[[component]]\nname = \"a\"\nfood = \"ground-meat\"\ncure = {{ method = \"ground\"{time} }}\n\
         [[component.ingredient]]\nname = \"m\"\n{MEAT}\n[[component.ingredient]]\nname = \"c\"\n{LONG_CURE}\n{steps}\
         [[component.step]]\ndo = \"cook\"\nat = \"180 °F\"\nto = \"163 °F\"\n"
    );
    let report = check_text(&text).1;
    let found = of_rule(&report, "cure/quick-nitrate");
    found.iter().map(|finding| finding["past_advice"].as_bool().unwrap()).collect()
}

// Denmark holds to 60 as sodium nitrite, on the product; the Union to 80 of the ion, 120 as
// sodium nitrite. Of 100 the two say different things.
#[test]
fn authorities_that_differ_are_named() {
    let component = format!("{GROUND}\ncured_as = [\"eu/heat-treated\", \"dk/heat-treated\"]");
    let premix =
        "kind = \"curing-premix\"\nstrength = { sodium-nitrite = \"6.25 %\" }\namount = \"16 g\"";
    let both = report("\"european-union\", \"denmark\"", &component, &[MEAT, premix]);
    let finding = of_rule(&both, "cure/authorities-differ")[0];
    assert_eq!(finding["past_advice"], true);
    assert_eq!(finding["sources"].as_array().unwrap().len(), 2);
    let alone = report("\"european-union\"", &component, &[MEAT, premix]);
    assert!(of_rule(&alone, "cure/authorities-differ").is_empty());
}

// Of one authority, one row is met and another broken.
#[rstest]
#[case::a_least_amount("\"canada\"", "[\"ca/cured\"]", "8 g")]
#[case::two_products("\"great-britain\"", "[\"gb/meat-in-general\", \"gb/sterilised\"]", "20 g")]
fn an_authority_does_not_differ_from_itself(
    #[case] authority: &str,
    #[case] products: &str,
    #[case] amount: &str,
) {
    let component = format!("{GROUND}\ncured_as = {products}");
    let report = report(authority, &component, &[MEAT, &PREMIX.replace("24 g", amount)]);
    let mut found = verdicts(&report, "cure/ingoing-nitrite");
    found.sort();
    assert_eq!(found, ["breaks", "meets"]);
    assert!(of_rule(&report, "cure/authorities-differ").is_empty());
}

#[rstest]
#[case::skin_of_a_ham("food = \"raw-ham\"", "kind = \"meat\"\nskin = true", "skin")]
#[case::hydrated_salt("food = \"ground-meat\"", "kind = \"salt\"\nhydrated = true", "hydrated")]
#[case::a_pump_the_wrong_way_round(
    "food = \"bacon\"\ncure = { method = \"pumped\", pump = \"12 to 8 %\" }",
    "kind = \"meat\"",
    "range"
)]
#[case::a_pump_of_a_percent_number(
    "food = \"bacon\"\ncure = { method = \"pumped\", pump = \"1200 %\" }",
    "kind = \"meat\"",
    "100"
)]
#[case::an_analysis_of_what(
    "food = \"ground-meat\"\nanalysis = { nitrite = \"9 ppm\" }",
    "kind = \"meat\"",
    "as what"
)]
fn a_key_that_does_not_belong_is_refused(
    #[case] component: &str,
    #[case] ingredient: &str,
    #[case] says: &str,
) {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("r.toml");
    let text = format!(
        "title = \"Invented\"\nheld_to = [\"us-fsis\"]\n[[component]]\nname = \"a\"\n{component}\n[[component.ingredient]]\nname = \"x\"\namount = \"1 kg\"\n{ingredient}\n"
    );
    std::fs::write(&path, text).unwrap();
    let output = super::check(&[path.to_str().unwrap()]);
    let said = String::from_utf8(output.stderr).unwrap();
    assert_eq!(output.status.code(), Some(2), "{said}");
    assert!(said.contains(says), "{said}");
}

/// A premix by its name and its strength in sodium nitrite.
fn named(name: &str, strength: &str, amount: &str) -> Value {
    let premix = format!(
        "kind = \"curing-premix\"\nstrength = {{ {strength} }}\namount = \"{amount}\"\n[[component.ingredient]]\nname = \"y\"\nkind = \"other\""
    );
    let text = format!(
        "title = \"Invented\"\nheld_to = [\"us-fsis\"]\n{SCALES}[[component]]\nname = \"a\"\n{GROUND}\n\
         [[component.ingredient]]\nname = \"x\"\n{MEAT}\n[[component.ingredient]]\nname = \"{name}\"\n{premix}\n"
    );
    check_text(&text).1
}

// Premixes are sold with up to 6.3 % of nitrite. Saltpetre is nitrate, and sold neat.
#[rstest]
#[case::usual("sodium-nitrite = \"6.25 %\"", &[])]
#[case::the_strongest("sodium-nitrite = \"6.3 %\"", &[])]
#[case::none_so_strong("sodium-nitrite = \"12 %\"", &["unproven"])]
#[case::neat("sodium-nitrite = \"99 %\"", &["unproven"])]
#[case::neat_potassium_salt("potassium-nitrite = \"97 %\"", &["unproven"])]
#[case::saltpetre("potassium-nitrate = \"100 %\"", &[])]
fn a_curing_salt_stronger_than_any_premix_is_never_proven_and_no_weight_of_it_is_told(
    #[case] strength: &str,
    #[case] expected: &[&str],
) {
    let report = named("x", strength, "30 g");
    assert_eq!(verdicts(&report, "cure/premix-strength"), expected);
    let over = of_rule(&report, "cure/ingoing-nitrite");
    for finding in over {
        assert_eq!(finding["verdict"], "breaks");
        assert_eq!(finding["mend"].is_null(), !expected.is_empty(), "{finding}");
    }
}

#[rstest]
#[case::of_another_premix("curing salt 6.25 % nitrite", "0.5 %", &["unproven"])]
#[case::the_other_way("nitrite salt, 0,5 %", "6.25 %", &["unproven"])]
#[case::in_words("salt with 0.4 percent nitrite", "6.25 %", &["unproven"])]
#[case::the_same("curing salt 6.25 % nitrite", "6.25 %", &[])]
#[case::rounded("curing salt, 6 %", "6.25 %", &[])]
#[case::no_number("curing salt", "0.5 %", &[])]
fn a_percentage_in_the_name_of_a_premix_is_its_strength(
    #[case] name: &str,
    #[case] strength: &str,
    #[case] expected: &[&str],
) {
    let report = named(name, &format!("sodium-nitrite = \"{strength}\""), "10 g");
    assert_eq!(verdicts(&report, "cure/premix-strength"), expected);
}

const NO_CURE: &str = "kind = \"other\"\namount = \"100 g\"";

/// A sausage in which nothing that is written cures, and what a laboratory found in it.
fn analysed(held_to: &str, product: &str, analysis: &str) -> Value {
    let products =
        if product.is_empty() { String::new() } else { format!("cured_as = [\"{product}\"]\n") };
    let component = format!(
        "food = \"ground-meat\"\nraw = true\n{products}analysis = {{ {analysis}, as = \"sodium-salts\" }}"
    );
    let report = report(&format!("\"{held_to}\""), &component, &[MEAT, NO_CURE]);
    Value::from(of_rule(&report, "cure/residue").into_iter().cloned().collect::<Vec<_>>())
}

// 500 mg/kg of sodium nitrite are 333.4 of the ion, and with 400 of sodium nitrate 824.7 counted together.
#[rstest]
#[case::united_states("us-fsis", "", 500.0, 200.0)]
#[case::wiltshire("great-britain", "gb/wiltshire-bacon", 500.0, 175.0)]
#[case::codex("codex", "codex/083", 333.4, 80.0)]
#[case::japan("japan", "jp/meat", 333.4, 70.0)]
#[case::both_together("australia-new-zealand", "anz/cured-meat", 824.7, 125.0)]
#[case::home_cure("us-fda", "fda/home-cure", 500.0, 200.0)]
#[case::the_cap_beside_an_ingoing_limit("european-union", "eu/heat-treated", 333.4, 45.0)]
fn an_analysis_over_a_limit_breaks_it_though_nothing_written_cures(
    #[case] held_to: &str,
    #[case] product: &str,
    #[case] found: f64,
    #[case] limit: f64,
) {
    let findings = analysed(held_to, product, "nitrite = \"500 mg/kg\", nitrate = \"400 mg/kg\"");
    assert_eq!(findings[0]["verdict"], "breaks", "{findings}");
    assert!((findings[0]["found"]["high"].as_f64().unwrap() - found).abs() < 0.1, "{findings}");
    assert_eq!(findings[0]["limit"]["figure"], limit);
}

#[rstest]
#[case::no_product_named("great-britain", "")]
#[case::only_what_goes_in_is_limited("denmark", "dk/heat-treated")]
#[case::no_row_for_what_is_left("canada", "ca/cured")]
fn an_analysis_that_no_row_limits_asks_what_brought_it(
    #[case] held_to: &str,
    #[case] product: &str,
) {
    let found = analysed(held_to, product, "nitrite = \"500 mg/kg\"");
    assert_eq!(found[0]["verdict"], "unproven", "{found}");
    let none = analysed(held_to, product, "nitrite = \"0 mg/kg\"");
    assert_eq!(none, Value::from(Vec::<Value>::new()));
}

// 150 mg/kg of the nitrate ion, from all sources; 2000 of sodium nitrate are 1459.
#[rstest]
#[case::over("2000 mg/kg", "breaks")]
#[case::under("150 mg/kg", "meets")]
fn nitrate_that_was_found_counts_though_only_nitrite_was_added(
    #[case] nitrate: &str,
    #[case] verdict: &str,
) {
    let component = format!(
        "food = \"whole-meat\"\nraw = true\ncured_as = [\"eu/dry-cured-ham\"]\ncure = {{ method = \"dry-rub\" }}\n\
         analysis = {{ nitrite = \"10 mg/kg\", nitrate = \"{nitrate}\", as = \"sodium-salts\" }}"
    );
    let report = report("\"european-union\"", &component, &[MEAT, PREMIX]);
    let found = of_rule(&report, "cure/residue");
    let of_nitrate: Vec<_> =
        found.iter().filter(|f| f["found"]["text"].as_str().unwrap().contains("nitrate")).collect();
    assert_eq!(of_nitrate.len(), 1, "{found:?}");
    assert_eq!(of_nitrate[0]["verdict"], verdict);
    assert_eq!(of_nitrate[0]["limit"]["figure"], 150.0);
}

// One of two that are counted together is the least there can be.
#[test]
fn half_an_analysis_can_break_a_row_for_both_and_not_meet_it() {
    let anz = |analysis| analysed("australia-new-zealand", "anz/cured-meat", analysis);
    assert_eq!(anz("nitrite = \"130 mg/kg\"")[0]["verdict"], "breaks");
    let little = anz("nitrite = \"30 mg/kg\"");
    assert_eq!(little[0]["verdict"], "unproven");
    assert_eq!(little[0]["found"]["low"], 30.0);
    // Both are under it, and the row is from memory.
    let both = anz("nitrite = \"30 mg/kg\", nitrate = \"10 mg/kg\"");
    assert!(both[0]["found"]["high"].as_f64() < both[0]["limit"]["figure"].as_f64());
    assert_eq!(
        (&both[0]["verdict"], &both[0]["sources"][0]["seen"]),
        (&"unproven".into(), &"memory".into())
    );
}

#[test]
fn bacon_with_more_left_than_other_meat_may_hold_is_asked_about() {
    let bacon = |found: &str| {
        let component = format!(
            "food = \"bacon\"\nraw = true\nanalysis = {{ nitrite = \"{found}\", as = \"sodium-salts\" }}"
        );
        verdicts(&report(FSIS, &component, &[MEAT, NO_CURE]), "cure/residue")
    };
    assert_eq!(bacon("500 mg/kg"), ["unproven"]);
    // Nothing that is written brings it.
    assert_eq!(bacon("100 mg/kg"), ["unproven"]);
    assert!(bacon("0 mg/kg").is_empty());
}

// 24 g of 6.25 % to 10 kg are 150 mg/kg; 2 kg are 12 500, and no law here lets more than 625 go in.
#[rstest]
#[case::usual("24 g", "meets", 150.0)]
#[case::thousands("2 kg", "unproven", 12_500.0)]
fn what_goes_in_is_shown_where_only_what_is_left_is_limited(
    #[case] amount: &str,
    #[case] verdict: &str,
    #[case] nominal: f64,
) {
    let component = format!(
        "{GROUND}\ncured_as = [\"jp/meat\"]\nanalysis = {{ nitrite = \"35 mg/kg\", as = \"sodium-salts\" }}"
    );
    let premix = PREMIX.replace("24 g", amount);
    let report = report("\"japan\"", &component, &[MEAT, &premix]);
    assert_eq!(verdicts(&report, "cure/residue"), ["meets"]);
    let found = of_rule(&report, "cure/ingoing-nitrite");
    assert_eq!(found.len(), 1);
    assert_eq!(found[0]["verdict"], verdict);
    let level = found[0]["found"]["nominal"].as_f64().unwrap();
    assert!((level - nominal).abs() < 0.01, "{level}");
    assert!(found[0]["mend"].as_str().is_none_or(|mend| !mend.contains("at most")));
    let limit = &found[0]["limit"]["figure"];
    assert_eq!(limit.as_f64(), (verdict == "unproven").then_some(625.0));
}

// Meat brings no nitrite of its own, and no more of it turns into nitrate than went in.
#[rstest]
#[case::nitrite_and_nothing_that_cures(NO_CURE, "nitrite = \"35 mg/kg\"", "unproven")]
#[case::none_and_nothing_that_cures(NO_CURE, "nitrite = \"0 mg/kg\"", "meets")]
#[case::more_nitrate_than_nitrite_went_in(
    PREMIX,
    "nitrite = \"35 mg/kg\", nitrate = \"5000 mg/kg\"",
    "unproven"
)]
#[case::a_little_nitrate(PREMIX, "nitrite = \"35 mg/kg\", nitrate = \"60 mg/kg\"", "meets")]
fn an_analysis_that_no_ingredient_explains_is_asked_about(
    #[case] cure: &str,
    #[case] analysis: &str,
    #[case] verdict: &str,
) {
    let component = format!(
        "food = \"whole-meat\"\nraw = true\nanalysis = {{ {analysis}, as = \"sodium-salts\" }}"
    );
    let component = if cure == PREMIX {
        format!("{component}\ncure = {{ method = \"ground\" }}")
            .replace("whole-meat", "ground-meat")
    } else {
        component
    };
    let found = verdicts(&report(FSIS, &component, &[MEAT, cure]), "cure/residue");
    assert_eq!(found.iter().max().map(String::as_str), Some(verdict), "{found:?}");
}
