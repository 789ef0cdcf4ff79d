//! Dangers that could be written so that no rule sees them: each is asked about, or refused.
#![cfg(feature = "recipe")]

use greenweight::finding::Verdict;
use greenweight::recipe::Recipe;
use rstest::rstest;

const HEAD: &str = "title = \"Invented\"\n[instruments]\nscale = \"1 g\"\nthermometer = \"1 °F\"\n[[component]]\nname = \"a\"\n";
const PORK: &str = "food = \"whole-meat\"\n[[component.ingredient]]\nname = \"pork\"\nkind = \"meat\"\nfrom = \"pork\"\namount = \"2 kg\"\n";
const FISH: &str = "food = \"fish\"\n[[component.ingredient]]\nname = \"char\"\nkind = \"fish\"\namount = \"2 kg\"\n";
const COOK: &str = "[[component.step]]\ndo = \"cook\"\nat = \"300 °F\"\nto = \"170 °F\"\nhold = \"3 min\"\n[[component.step]]\ndo = \"rest\"\nfor = \"10 min\"\n";

fn step(what: &str, more: &str) -> String {
    format!("[[component.step]]\ndo = \"{what}\"\n{more}\n")
}

/// The findings that do not meet; `None` where the document is refused.
fn open(held_to: &str, parts: &[&str]) -> Option<Vec<&'static str>> {
    let text = format!("held_to = [\"{held_to}\"]\n{HEAD}{}", parts.concat());
    let found = Recipe::read(&text).ok()?.check();
    let open = found.iter().filter(|checked| checked.finding.verdict != Verdict::Meets);
    Some(open.map(|checked| checked.finding.rule.id).collect())
}

#[rstest]
#[case("us-consumer")]
#[case("us-food-code-2022")]
#[case("canada")]
fn a_plain_cook_leaves_nothing_open(#[case] held_to: &str) {
    assert_eq!(open(held_to, &[PORK, COOK]), Some(Vec::new()));
}

#[rstest]
#[case::lukewarm_for_two_days("cook", "at = \"105 °F\"\nto = \"100 °F\"\nhold = \"48 h\"")]
#[case::lukewarm_in_smoke("smoke", "at = \"130 °F\"\nto = \"125 °F\"\nfor = \"12 h\"")]
#[case::cold_for_a_month_by_another_name("hold", "at = \"37 °F\"\nfor = \"30 days\"")]
#[case::chilled_for_a_month("chill", "at = \"37 °F\"\nfor = \"30 days\"")]
#[case::rested_for_a_month("rest", "at = \"37 °F\"\nfor = \"30 days\"")]
#[case::packed_for_a_month("pack", "at = \"37 °F\"\nfor = \"30 days\"")]
#[case::thawed_nobody_knows_how("thaw", "")]
fn what_follows_a_cook_under_another_name_is_asked_about(#[case] what: &str, #[case] more: &str) {
    for held_to in ["us-consumer", "us-food-code-2022", "canada", "great-britain"] {
        let open = open(held_to, &[PORK, COOK, &step(what, more)]).expect("it is read");
        assert!(!open.is_empty(), "{held_to}: {what} {more}");
    }
}

#[rstest]
#[case::fish_in_warm_air(FISH, "cook", "at = \"100 °F\"\nfor = \"48 h\"")]
#[case::lukewarm_inside(PORK, "cook", "at = \"160 °F\"\nto = \"120 °F\"\nhold = \"12 h\"")]
#[case::warm_nobody_knows_how_long(FISH, "smoke", "at = \"100 °F\"")]
fn hours_in_the_warm_before_a_cook_are_asked_about(
    #[case] food: &str,
    #[case] what: &str,
    #[case] more: &str,
) {
    for held_to in ["us-consumer", "us-food-code-2022", "canada"] {
        let open = open(held_to, &[food, &step(what, more), COOK]).expect("it is read");
        assert!(open.contains(&"cook/slow-stages"), "{held_to}: {open:?}");
    }
}

#[test]
fn raw_sausage_in_the_cold_for_a_month_is_asked_about_and_a_cure_is_not() {
    let month = step("hold", "at = \"37 °F\"\nfor = \"30 days\"");
    let raw = PORK.replace("whole-meat\"", "ground-meat\"\nraw = true");
    assert_eq!(open("us-consumer", &[&raw, &month]), Some(vec!["store/fridge-time"]));
    let brine = "[[component.ingredient]]\nname = \"salt\"\nkind = \"salt\"\namount = \"100 g\"\npart = \"pickle\"\n";
    assert_eq!(open("us-consumer", &[PORK, brine, &month, COOK]), Some(Vec::new()));
}

#[test]
fn what_is_served_before_it_is_cooked_is_not_cooked() {
    let serve = step("serve", "");
    assert_eq!(open("us-food-code-2022", &[PORK, &serve, COOK]), Some(vec!["cook/endpoint"]));
    assert_eq!(open("us-food-code-2022", &[PORK, COOK, &serve]), Some(Vec::new()));
}

#[test]
fn leftovers_were_cooked_before_they_are_heated_again() {
    let kept = step(
        "refrigerate",
        "at = \"37 °F\"\nfor = \"3 days\"\nlike = \"leftovers/meat-or-poultry\"",
    );
    assert_eq!(open("us-consumer", &["food = \"leftovers\"\n", &kept, COOK]), Some(Vec::new()));
}

#[rstest]
#[case("Nitritpökelsalz")]
#[case("sel nitrité")]
#[case("E250")]
#[case("salpetre")]
#[case("peklosól")]
#[case("powder no 1")]
#[case("Cure #2")]
#[case("quick cure")]
#[case("salt peter")]
#[case("tinted salt")]
#[case("sel rosé")]
#[case("pink salt")]
#[case("sal prunella")]
#[case("sal de cura")]
#[case("NPS")]
#[case("нитритная соль")]
#[case("saletra")]
#[case("亜硝酸塩")]
fn a_cure_by_another_kind_is_refused(#[case] name: &str) {
    let salt = format!(
        "[[component.ingredient]]\nname = \"{name}\"\nkind = \"salt\"\namount = \"50 g\"\n"
    );
    assert_eq!(open("us-consumer", &[PORK, &salt, COOK]), None, "{name}");
}

#[rstest]
#[case("smoked paprika")]
#[case("cured ham, diced")]
#[case("sea salt")]
#[case("number 10 pepper")]
#[case("Himalayan pink salt")]
#[case("sel rose de l'Himalaya")]
#[case("turnips and capers")]
fn what_is_no_cure_is_read(#[case] name: &str) {
    let other = format!(
        "[[component.ingredient]]\nname = \"{name}\"\nkind = \"other\"\namount = \"50 g\"\n"
    );
    assert!(open("us-consumer", &[PORK, &other, COOK]).is_some(), "{name}");
}

#[rstest]
#[case::opened("open", "at = \"80 °F\"")]
#[case::opened_for_days("open", "for = \"30 days\"")]
#[case::thawed_by_cooking("thaw", "how = \"cooking\"\nat = \"70 °F\"\nfor = \"30 days\"")]
#[case::thawed_in_a_microwave("thaw", "how = \"microwave\"\nfor = \"12 h\"")]
fn a_time_that_no_clock_would_count_is_refused(#[case] what: &str, #[case] more: &str) {
    assert_eq!(open("us-consumer", &[PORK, COOK, &step(what, more)]), None);
}

#[test]
fn an_analysis_does_not_clear_what_surely_went_in() {
    let belly = |grams: &str| {
        format!(
            "food = \"whole-meat\"\ncured_as = [\"fda/home-cure\"]\ncure = {{ method = \"dry-rub\", at = \"36 °F\", for = \"10 days\" }}\n\
             analysis = {{ nitrite = \"20 mg/kg\", nitrate = \"20 mg/kg\", as = \"ions\" }}\n\
             [[component.ingredient]]\nname = \"pork\"\nkind = \"meat\"\nfrom = \"pork\"\namount = \"5 kg\"\n\
             [[component.ingredient]]\nname = \"premix\"\nkind = \"curing-premix\"\nstrength = {{ sodium-nitrite = \"6.25 %\" }}\namount = \"{grams}\"\n"
        )
    };
    assert_eq!(open("us-fda", &[&belly("12 g")]), Some(vec!["cook/authority"]));
    let ten_times = open("us-fda", &[&belly("160 g")]).unwrap();
    assert!(ten_times.contains(&"cure/ingoing-nitrite"), "{ten_times:?}");
}

const COOLED: &str = "[[component.step]]\ndo = \"chill\"\nat = \"36 °F\"\nfor = \"22 h\"\n";

fn rows(rows: &[(&str, &str)]) -> String {
    let row = |(after, inside): &(&str, &str)| {
        format!("[[component.cooling]]\nafter = \"{after}\"\ninside = \"{inside}\"\n")
    };
    rows.iter().map(row).collect()
}

#[test]
fn what_warms_again_after_it_was_cooled_is_not_cooled() {
    let steady = [("0 min", "165 °F"), ("60 min", "68 °F"), ("2 h", "36 °F")];
    let again = [&steady[..], &[("10 h", "110 °F"), ("21 h", "36 °F")]].concat();
    let between =
        [("0 min", "165 °F"), ("60 min", "68 °F"), ("90 min", "100 °F"), ("3 h", "36 °F")];
    let of = |curve: &[(&str, &str)]| {
        let open = open("us-food-code-2022", &[PORK, COOK, COOLED, &rows(curve)]).unwrap();
        open.contains(&"chill/cooling")
    };
    assert!(!of(&steady) && of(&again) && of(&between));
}

#[test]
fn a_stated_way_up_of_days_is_asked_about_whoever_is_named() {
    let slow = COOK.replace("hold = ", "come_up = \"40 h\"\nhold = ");
    for held_to in ["us-consumer", "us-food-code-2022", "canada", "great-britain"] {
        let open = open(held_to, &[PORK, &slow]).unwrap();
        assert!(open.contains(&"cook/slow-stages"), "{held_to}: {open:?}");
    }
}

#[test]
fn a_pack_without_air_that_is_left_standing_is_asked_about() {
    let pack = step("pack", "vacuum = true");
    let frozen = step("freeze", "at = \"-4 °F\"\nfor = \"1 month\"");
    let of = |parts: &[&str]| open("canada", parts).unwrap().contains(&"store/warm-time");
    assert!(of(&[PORK, COOK, &pack]) && of(&[PORK, COOK, &pack, &step("serve", "")]));
    assert!(!of(&[PORK, COOK, &pack, &frozen]) && !of(&[PORK, COOK, &pack, &step("open", "")]));
}

#[test]
fn british_hours_of_display_are_not_for_raw_food() {
    let raw = PORK.replace("whole-meat\"", "whole-meat\"\nraw = true");
    let stands = step("rest", "at = \"37 °C\"\nfor = \"1 h\"");
    assert_eq!(open("great-britain", &[&raw, &stands]), Some(vec!["store/warm-time"]));
}
