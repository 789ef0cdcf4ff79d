//! Salt, brine, fat and names in recipe documents, and recipes for another batch.

use greenweight::salt::solubility_row;
use greenweight::units::{Reading, Scale};
use rstest::rstest;
use serde_json::Value;

use super::{check_text, of_rule, root};

fn report(component: &str, ingredients: &[&str], steps: &str) -> Value {
    check_text(&text(component, ingredients, steps)).1
}

fn text(component: &str, ingredients: &[&str], steps: &str) -> String {
    let ingredients: String = ingredients
        .iter()
        .map(|keys| format!("[[component.ingredient]]\nname = \"x\"\n{keys}\n"))
        .collect();
    format!(
        "title = \"Invented\"\nheld_to = [\"us-fsis\"]\n[instruments]\nscale = \"0.1 g\"\nthermometer = \"1 °F\"\n\
         [[component]]\nname = \"a\"\nfood = \"ground-meat\"\n{component}\n{ingredients}{steps}"
    )
}

fn verdicts(report: &Value, rule: &str) -> Vec<String> {
    of_rule(report, rule)
        .iter()
        .map(|finding| finding["verdict"].as_str().unwrap().to_owned())
        .collect()
}

fn meat(kg: &str, fat: &str) -> String {
    format!("kind = \"meat\"\nfrom = \"beef\"\namount = \"{kg}\"\n{fat}")
}

const COOKED: &str = "[[component.step]]\ndo = \"cook\"\nat = \"180 °F\"\nto = \"163 °F\"\n";

// 9 CFR 319.15(a): ground beef holds 30 percent of fat and no added water.
#[rstest]
#[case::at_most("fat = \"30 %\"\nfat_error = \"0 %\"", "meets")]
#[case::beyond("fat = \"30.1 %\"\nfat_error = \"0 %\"", "breaks")]
// A label of 25 is within 6 points of 30, and one of 20 is not beyond it.
#[case::a_label_near_it("fat = \"25 %\"", "unproven")]
#[case::a_lean_label("fat = \"20 %\"", "meets")]
#[case::not_said("", "unproven")]
fn a_name_limits_the_fat(#[case] fat: &str, #[case] verdict: &str) {
    let report = report("raw = true\nsold_as = [\"us/ground-beef\"]", &[&meat("5 kg", fat)], "");
    assert_eq!(verdicts(&report, "fat/name"), [verdict]);
    assert_eq!(verdicts(&report, "fat/water"), ["meets"]);
}

// 2 kg to 5 kg of beef with 20 percent: of oil, 3 kg of fat in 7.
#[rstest]
#[case::oil("oil", "breaks")]
#[case::cream("cream", "unproven")]
#[case::yogurt("yogurt", "unproven")]
#[case::salt("salt", "meets")]
fn what_goes_in_beside_the_meat_brings_its_fat(#[case] kind: &str, #[case] verdict: &str) {
    let beef = meat("5 kg", "fat = \"20 %\"\nfat_error = \"1 %\"");
    let other = format!("kind = \"{kind}\"\namount = \"2 kg\"");
    let report = report("raw = true\nsold_as = [\"us/ground-beef\"]", &[&beef, &other], "");
    assert_eq!(verdicts(&report, "fat/name"), [verdict]);
}

// 9 CFR 319.145(c): 35 percent of fat, by the product before it is cooked or smoked.
#[rstest]
#[case::lean("", "fat = \"30 %\"\nfat_error = \"0 %\"", "meets")]
#[case::fat("", "fat = \"36 %\"\nfat_error = \"0 %\"", "breaks")]
#[case::analysed_when_cooked(
    "analysis = { fat = \"38 %\" }",
    "fat = \"30 %\"\nfat_error = \"0 %\"",
    "meets"
)]
#[case::analysed_when_cooked_alone("analysis = { fat = \"30 %\" }", "", "unproven")]
fn an_italian_sausage_is_held_to_its_fat_before_it_is_cooked(
    #[case] analysis: &str,
    #[case] fat: &str,
    #[case] verdict: &str,
) {
    let component = format!("sold_as = [\"us/italian-sausage\"]\n{analysis}");
    let report = report(&component, &[&meat("5 kg", fat)], COOKED);
    assert_eq!(verdicts(&report, "fat/name"), [verdict]);
}

#[rstest]
#[case::dried("do = \"hold\"\nat = \"55 °F\"\nfor = \"30 days\"", "unproven")]
#[case::fermented("do = \"ferment\"\nat = \"70 °F\"\nfor = \"2 days\"", "unproven")]
#[case::kept_cold("do = \"hold\"\nat = \"38 °F\"\nfor = \"12 h\"", "meets")]
fn what_dries_is_not_judged_by_its_mix(#[case] step: &str, #[case] verdict: &str) {
    let beef = meat("5 kg", "fat = \"20 %\"");
    let step = format!("[[component.step]]\n{step}\n");
    let report = report("raw = true\nsold_as = [\"us/ground-beef\"]", &[&beef], &step);
    assert_eq!(verdicts(&report, "fat/name"), [verdict]);
}

#[test]
fn ground_beef_may_have_no_water_added() {
    let water = "kind = \"water\"\namount = \"100 g\"";
    let beef = meat("5 kg", "fat = \"10 %\"");
    let report = report("raw = true\nsold_as = [\"us/ground-beef\"]", &[&beef, water], "");
    assert_eq!(verdicts(&report, "fat/water"), ["breaks"]);
}

// 9 CFR 319.141: 3 percent of all ingredients, the water included: 0.300 kg to 9.7 kg.
#[rstest]
#[case::within("299 g", "meets")]
#[case::beyond("301 g", "breaks")]
fn water_is_part_of_what_it_is_divided_by(#[case] water: &str, #[case] verdict: &str) {
    let water = format!("kind = \"water\"\namount = \"{water}\"");
    let pork = meat("9.7 kg", "fat = \"30 %\"");
    let report = report("raw = true\nsold_as = [\"us/fresh-pork-sausage\"]", &[&pork, &water], "");
    assert_eq!(verdicts(&report, "fat/water"), [verdict]);
    assert_eq!(verdicts(&report, "fat/name"), ["meets"]);
}

// 9 CFR 319.180: fat at most 30, fat and added water at most 40, on the finished product.
#[rstest]
#[case::not_analysed("", &["unproven"], &["unproven"])]
#[case::lean_and_wet("fat = \"20 %\", moisture = \"64 %\", protein = \"12 %\"", &["meets"], &["meets"])]
#[case::too_wet("fat = \"25 %\", moisture = \"64 %\", protein = \"12 %\"", &["meets"], &["breaks"])]
#[case::too_fat("fat = \"31 %\", moisture = \"52 %\", protein = \"12 %\"", &["breaks"], &["meets"])]
// Protein that is not of the meat holds no water of the meat: 3 percent of it are 8 points.
#[case::stretched("fat = \"20 %\", moisture = \"64 %\", protein = \"12 %\", other_protein = \"3 %\"", &["meets"], &["breaks"])]
fn a_cooked_sausage_is_held_to_its_analysis(
    #[case] analysis: &str,
    #[case] fat: &[&str],
    #[case] water: &[&str],
) {
    let component = format!("sold_as = [\"us/frankfurter-class\"]\nanalysis = {{ {analysis} }}");
    let report = report(&component, &[&meat("5 kg", "fat = \"20 %\"")], COOKED);
    assert_eq!(verdicts(&report, "fat/name"), fat);
    assert_eq!(verdicts(&report, "fat/water"), water);
}

// 9 CFR 319.100 and 319.101.
#[rstest]
#[case::brisket("us/corned-beef-brisket", "11.9 kg", "meets")]
#[case::brisket_too_heavy("us/corned-beef-brisket", "12.1 kg", "breaks")]
#[case::brisket_cooked("us/corned-beef-brisket-cooked", "10.5 kg", "breaks")]
#[case::bulk("us/bulk-corned-beef", "11.1 kg", "breaks")]
fn a_cured_cut_may_gain_so_much(#[case] name: &str, #[case] finished: &str, #[case] verdict: &str) {
    let component = format!("raw = true\nsold_as = [\"{name}\"]\nfinished = \"{finished}\"");
    let report = report(&component, &[&meat("10 kg", "")], "");
    assert_eq!(verdicts(&report, "fat/weight-gain"), [verdict]);
}

#[rstest]
#[case::by_analysis(
    "fat = \"10 %\"\nfat_error = \"1 %\"",
    "fat = \"40 %\"\nfat_error = \"1 %\"",
    "25 %",
    "meets"
)]
#[case::missed(
    "fat = \"10 %\"\nfat_error = \"1 %\"",
    "fat = \"40 %\"\nfat_error = \"1 %\"",
    "30 %",
    "breaks"
)]
#[case::explained_by_labels("fat = \"10 %\"", "fat = \"40 %\"", "30 %", "meets")]
#[case::a_band(
    "fat = \"10 %\"\nfat_error = \"1 %\"",
    "fat = \"40 %\"\nfat_error = \"1 %\"",
    "20 to 30 %",
    "meets"
)]
#[case::unknown("", "fat = \"40 %\"", "25 %", "unproven")]
fn a_blend_is_held_to_its_target_within_what_the_lots_are_known_to(
    #[case] lean: &str,
    #[case] fat: &str,
    #[case] target: &str,
    #[case] verdict: &str,
) {
    let component = format!("raw = true\nfat_target = \"{target}\"");
    let report = report(&component, &[&meat("2 kg", lean), &meat("2 kg", fat)], "");
    assert_eq!(verdicts(&report, "fat/target"), [verdict]);
}

// Common practice, no source: 1.5 to 2.5 percent of salt on the meat.
#[rstest]
#[case::usual("20 g", false)]
#[case::little("10 g", true)]
#[case::much("40 g", true)]
fn salt_beside_the_usual_is_noted_and_never_a_break(#[case] salt: &str, #[case] past: bool) {
    let salt = format!("kind = \"salt\"\namount = \"{salt}\"");
    let report = report("raw = true", &[&meat("1 kg", ""), &salt], "");
    let finding = of_rule(&report, "salt/level")[0];
    assert_eq!(
        (&finding["verdict"], &finding["past_advice"]),
        (&Value::from("meets"), &past.into())
    );
}

#[test]
fn the_salt_of_a_premix_counts() {
    // 10 g of plain salt and 10 g of a premix that is 93.75 % salt: 1.94 % on a kilogram.
    let premix = "kind = \"curing-premix\"\nstrength = { sodium-nitrite = \"6.25 %\", salt = \"93.75 %\" }\namount = \"10 g\"";
    let salt = "kind = \"salt\"\namount = \"10 g\"";
    let report = report("raw = true", &[&meat("1 kg", ""), salt, premix], "");
    let found = &of_rule(&report, "salt/level")[0]["found"];
    assert!((found["low"].as_f64().unwrap() - 1.9275).abs() < 1e-3, "{found}");
    assert!((found["high"].as_f64().unwrap() - 1.9475).abs() < 1e-3, "{found}");
}

// Solubility of salt: 26.29 percent at 32 °F, 26.395 at 60 °F.
#[rstest]
#[case::dissolves("355 g", "meets")]
#[case::does_not("365 g", "breaks")]
fn a_pickle_of_more_salt_than_its_water_dissolves_is_noticed(
    #[case] salt: &str,
    #[case] verdict: &str,
) {
    let water = "kind = \"water\"\namount = \"1 kg\"\npart = \"pickle\"";
    let salt = format!("kind = \"salt\"\namount = \"{salt}\"\npart = \"pickle\"");
    let report = report("raw = true", &[&meat("1 kg", ""), water, &salt], "");
    assert_eq!(verdicts(&report, "salt/brine"), [verdict]);
}

#[test]
fn the_limit_of_a_brine_is_the_row_at_or_below_its_temperature() {
    let water = "kind = \"water\"\namount = \"1 kg\"\npart = \"pickle\"";
    let salt = "kind = \"salt\"\namount = \"200 g\"\npart = \"pickle\"";
    let cure = "raw = true\ncure = { method = \"immersion\", at = \"38 °F\" }";
    let report = report(cure, &[&meat("1 kg", ""), water, salt], "");
    let finding = of_rule(&report, "salt/brine")[0];
    let limit = finding["limit"]["figure"].as_f64().unwrap();
    let at = Reading::new(38.0, Scale::Fahrenheit).unwrap();
    assert!((limit - solubility_row(at).unwrap().value.percent).abs() < 1e-9, "{finding:#}");
}

fn scale(times: &str) -> (i32, String, String) {
    let output = std::process::Command::new(env!("CARGO_BIN_EXE_greenweight"))
        .current_dir(root())
        .args(["scale", "examples/recipes/farm-stall-ring-sausage.toml", "--times", times])
        .output()
        .unwrap();
    let text = |bytes| String::from_utf8(bytes).unwrap();
    (output.status.code().unwrap(), text(output.stdout), text(output.stderr))
}

#[test]
fn a_recipe_for_another_batch_is_rounded_to_the_scale_and_checked_again() {
    let (status, out, _) = scale("2.5");
    assert_eq!(status, 0, "{out}");
    // 7.0 g of premix on steps of 0.1 g, 45 g of salt on steps of 1 g: 112.5 is 113.
    assert!(out.contains("17.5 g") && out.contains("113 g"), "{out}");
    assert!(out.contains("does not scale") && out.contains("inside temperature"), "{out}");
    // A hundredth of the batch: 0.07 g of premix is nothing on steps of 0.1 g.
    let (status, out, _) = scale("0.01");
    assert_eq!(status, 1);
    assert!(out.contains("less than the scale shows"), "{out}");
    let (status, _, error) = scale("0");
    assert_eq!(status, 2);
    assert!(error.contains("0.001 to 10000"), "{error}");
}

// 9 CFR 319.104: protein on the fat-free part. 19.5 at 4.5 of fat is 20.42: under the 20.5 of a
// plain name, over the 18.5 of one with natural juices.
#[rstest]
#[case::plain("us/cooked-ham", "protein = \"19.5 %\", fat = \"4.5 %\"", "breaks")]
#[case::plain_and_leaner("us/cooked-ham", "protein = \"19.6 %\", fat = \"4.5 %\"", "meets")]
#[case::with_juices(
    "us/cooked-ham-with-natural-juices",
    "protein = \"19.5 %\", fat = \"4.5 %\"",
    "meets"
)]
#[case::not_analysed("us/cooked-ham-water-added", "protein = \"19.5 %\"", "unproven")]
fn a_ham_has_the_protein_of_its_name(
    #[case] name: &str,
    #[case] analysis: &str,
    #[case] verdict: &str,
) {
    let component = format!("raw = true\nsold_as = [\"{name}\"]\nanalysis = {{ {analysis} }}");
    let report = report(&component, &[&meat("5 kg", "")], "");
    assert_eq!(verdicts(&report, "fat/protein"), [verdict]);
}

const PREMIX: &str =
    "kind = \"curing-premix\"\nstrength = { sodium-nitrite = \"6.25 %\" }\namount = \"20 g\"";

// 9 CFR 319.106: 18 percent of weight lost, and with nitrite 4 percent of salt, without it 10
// percent in the water or a water activity of 0.92.
#[rstest]
#[case::cured(true, "8.2 kg", "salt = \"4 %\"", &["meets", "meets"])]
#[case::cured_and_short_of_salt(true, "8.2 kg", "salt = \"3.9 %\"", &["breaks", "meets"])]
#[case::too_heavy(true, "8.3 kg", "salt = \"4 %\"", &["breaks", "meets"])]
#[case::not_cured_by_activity(false, "8.1 kg", "water_activity = 0.92", &["meets", "meets"])]
#[case::not_cured_by_brine(false, "8.1 kg", "salt = \"6 %\", moisture = \"54 %\"", &["meets", "meets"])]
#[case::neither(false, "8.1 kg", "salt = \"5 %\", moisture = \"54 %\", water_activity = 0.95", &["breaks", "meets"])]
#[case::not_analysed(false, "8.1 kg", "moisture = \"54 %\"", &["meets", "unproven"])]
fn a_country_ham_has_lost_weight_and_holds_salt(
    #[case] cured: bool,
    #[case] finished: &str,
    #[case] analysis: &str,
    #[case] expected: &[&str],
) {
    let component = format!(
        "raw = true\nsold_as = [\"us/country-ham\"]\nfinished = \"{finished}\"\nanalysis = {{ {analysis} }}"
    );
    let pork = meat("10.001 kg", "");
    let ingredients: &[&str] = if cured { &[&pork, PREMIX] } else { &[&pork] };
    let mut found = verdicts(&report(&component, ingredients, ""), "fat/country-ham");
    found.sort();
    assert_eq!(found, expected);
}

// Whether a plant brought nitrite is not known: 4 percent of salt is then asked for as well.
#[rstest]
#[case::dry_and_salted("salt = \"4 %\", water_activity = 0.91", &["meets", "meets", "meets"])]
#[case::dry("salt = \"3 %\", water_activity = 0.91", &["meets", "meets", "unproven"])]
fn a_country_ham_with_celery_powder_is_not_taken_for_uncured(
    #[case] analysis: &str,
    #[case] expected: &[&str],
) {
    let component = format!(
        "raw = true\nsold_as = [\"us/country-ham\"]\nfinished = \"8.1 kg\"\nanalysis = {{ {analysis} }}"
    );
    let plant = "kind = \"other\"\namount = \"40 g\"";
    let text = text(&component, &[&meat("10.001 kg", ""), plant], "");
    let text = text
        .replace(&format!("name = \"x\"\n{plant}"), &format!("name = \"celery powder\"\n{plant}"));
    let mut found = verdicts(&check_text(&text).1, "fat/country-ham");
    found.sort();
    assert_eq!(found, expected);
}

// A scale with steps of 0.1 g that may be off by 2 g besides: 24 g of a 6.25 % premix in 10 kg
// is 150, and 26 g 162.5.
#[test]
fn the_error_of_a_scale_is_part_of_what_a_mass_may_be() {
    let report = |error: &str| {
        check_text(&format!(
            "title = \"Invented\"\nheld_to = [\"us-fsis\"]\n[instruments]\nscale = \"0.1 g\"\n{error}\n\
             [[component]]\nname = \"a\"\nfood = \"ground-meat\"\nraw = true\ncure = {{ method = \"ground\" }}\n\
             [[component.ingredient]]\nname = \"m\"\n{}\n[[component.ingredient]]\nname = \"c\"\n{}\n",
            meat("10 kg", ""),
            PREMIX.replace("20 g", "24 g"),
        ))
        .1
    };
    assert_eq!(verdicts(&report(""), "cure/ingoing-nitrite"), ["meets"]);
    let off = report("scale_error = \"2 g\"");
    assert_eq!(verdicts(&off, "cure/ingoing-nitrite"), ["unproven"]);
    // 25 g less two is 23 at most, and half a step besides: 22.9 g.
    let mend = of_rule(&off, "cure/ingoing-nitrite")[0]["mend"].as_str().unwrap().to_owned();
    assert!(mend.contains("22.9 g"), "{mend}");
}
