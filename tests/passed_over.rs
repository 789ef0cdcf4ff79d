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

/// What no rule of safety judges, alone and beside a part that is right.
#[rstest]
#[case::soft_cheese_in_a_pack(
    "food = \"cheese\"\n[[component.step]]\ndo = \"pack\"\nvacuum = true\n"
)]
#[case::honey(
    "food = \"sauce\"\nfor_infants = true\n[[component.ingredient]]\nname = \"honey\"\nkind = \"other\"\namount = \"50 g\"\n"
)]
#[case::raw_fish(
    "food = \"fish\"\nraw = true\n[[component.ingredient]]\nname = \"herring\"\nkind = \"fish\"\namount = \"1 kg\"\n"
)]
#[case::raw_egg(
    "food = \"eggs\"\nraw = true\n[[component.ingredient]]\nname = \"egg mousse\"\nkind = \"other\"\namount = \"1 kg\"\n"
)]
#[case::raw_milk(
    "food = \"cheese\"\n[[component.ingredient]]\nname = \"raw milk\"\nkind = \"milk\"\namount = \"1 kg\"\n"
)]
#[case::raw_mince(
    "food = \"ground-meat\"\nraw = true\n[[component.ingredient]]\nname = \"beef\"\nkind = \"meat\"\nfrom = \"beef\"\namount = \"1 kg\"\n"
)]
fn a_part_without_a_rule_is_open_alone_and_beside_a_part_that_is_right(#[case] part: &str) {
    for held_to in ["us-consumer", "us-food-code-2022", "canada"] {
        let alone = open(held_to, &[part]).expect("it is read");
        assert!(!alone.is_empty(), "{held_to}: {part}");
        let beside = format!("[[component]]\nname = \"b\"\n{part}");
        let both = open(held_to, &[PORK, COOK, &beside]).expect("it is read");
        assert_eq!(both, alone, "{held_to}: {part}");
    }
}

/// Rows of a cooling that took twenty hours.
const SLOW: &str = "[[component.cooling]]\nafter = \"0 h\"\ninside = \"165 °F\"\n[[component.cooling]]\nafter = \"8 h\"\ninside = \"100 °F\"\n[[component.cooling]]\nafter = \"20 h\"\ninside = \"36 °F\"\n";

// Food Code, 3-501.14: 135 to 70 °F in two hours, and to 41 °F in six. Every document here cools for twenty.
#[rstest]
#[case::and_served_cold("serve", "at = \"38 °F\"\nfor = \"1 h\"")]
#[case::and_put_away(
    "refrigerate",
    "at = \"36 °F\"\nfor = \"2 days\"\nlike = \"leftovers/meat-or-poultry\""
)]
#[case::and_held_cold("hold", "at = \"36 °F\"\nfor = \"20 h\"")]
fn rows_of_a_slow_cooling_count_whatever_follows_them(#[case] what: &str, #[case] more: &str) {
    let after = step(what, more);
    for (held_to, expected) in [
        ("us-food-code-2022", Verdict::Breaks),
        ("us-fsis", Verdict::Unproven),
        ("great-britain", Verdict::Breaks),
        // Nobody here says how fast: the rows are held against the clocks of the others.
        ("us-consumer", Verdict::Unproven),
        ("canada", Verdict::Unproven),
    ] {
        let found = cooling(held_to, &[PORK, COOK, SLOW, &after]);
        assert_eq!(found, [expected], "{held_to}: {what}");
        // A second cook heals nothing.
        if what == "refrigerate" {
            let found = cooling(held_to, &[PORK, COOK, SLOW, &after, COOK]);
            assert_eq!(found, [expected], "{held_to}: reheated");
        }
    }
}

/// The verdicts of the cooling, in order.
fn cooling(held_to: &str, parts: &[&str]) -> Vec<Verdict> {
    let text = format!("held_to = [\"{held_to}\"]\n{HEAD}{}", parts.concat());
    let found = Recipe::read(&text).expect("it is read").check();
    let of = found.iter().filter(|checked| checked.finding.rule.id == "chill/cooling");
    of.map(|checked| checked.finding.verdict).collect()
}

#[test]
fn a_second_cooling_needs_rows_of_its_own() {
    let fridge = step("refrigerate", "at = \"36 °F\"\nfor = \"1 day\"");
    let fast = SLOW.replace("8 h", "90 min").replace("100 °F", "65 °F").replace("20 h", "5 h");
    let once = cooling("us-food-code-2022", &[PORK, COOK, &fast, &fridge, COOK]);
    assert_eq!(once, [Verdict::Meets]);
    let twice = cooling("us-food-code-2022", &[PORK, COOK, &fast, &fridge, COOK, &fridge]);
    assert_eq!(twice, [Verdict::Meets, Verdict::Unproven]);
}

/// With a record any step that heats may end the cook, and a hold in the cold heats nothing.
#[test]
fn a_hold_in_the_cold_ends_no_recorded_cook() {
    let record = "[[component.record]]\nafter = \"0 min\"\ninside = \"45 °F\"\n[[component.record]]\nafter = \"10 min\"\ninside = \"160 °F\"\n";
    let smoke = step("smoke", "at = \"180 °F\"\nfor = \"3 h\"");
    let hold = step("hold", "at = \"36 °F\"\nfor = \"12 h\"");
    let fridge = step("refrigerate", "at = \"36 °F\"\nfor = \"12 h\"");
    let fast = SLOW.replace("8 h", "90 min").replace("100 °F", "65 °F").replace("20 h", "5 h");
    let of =
        |parts: &[&str]| cooling("us-food-code-2022", &[&[PORK, record, &fast], parts].concat());
    assert_eq!(of(&[&smoke, &fridge, &hold, &fridge]), [Verdict::Meets]);
    assert_eq!(of(&[&hold, &fridge, &smoke, &fridge]), [Verdict::Meets]);
}

// Food Code, 3-501.17: seven days, of which the day it is made is the first. A second cook starts none again.
#[test]
fn a_date_mark_goes_on_through_a_second_cook() {
    let days = |n: u8| step("refrigerate", &format!("at = \"36 °F\"\nfor = \"{n} days\""));
    let marks = |parts: &[&str]| -> Vec<Verdict> {
        let text = format!("held_to = [\"us-food-code-2022\"]\n{HEAD}{}", parts.concat());
        let found = Recipe::read(&text).expect("it is read").check();
        let of = found.iter().filter(|checked| checked.finding.rule.id == "chill/date-mark");
        of.map(|checked| checked.finding.verdict).collect()
    };
    assert_eq!(marks(&[PORK, COOK, &days(8), COOK]), [Verdict::Breaks]);
    assert_eq!(marks(&[PORK, COOK, &days(4), COOK, &days(4)]), [Verdict::Breaks]);
    assert_eq!(marks(&[PORK, COOK, &days(3), COOK, &days(3)]), [Verdict::Meets]);
    assert_eq!(marks(&[PORK, &days(1), COOK, &days(6)]), [Verdict::Meets]);
}

/// A curve from hours and °F.
fn in_rows(curve: &[(f64, f64)]) -> String {
    let row = |(after, inside): &(f64, f64)| {
        format!(
            "[[component.cooling]]\nafter = \"{} min\"\ninside = \"{inside} °F\"\n",
            after * 60.0
        )
    };
    curve.iter().map(row).collect()
}

// The second option of the federal guideline, 120 to 80 °F in an hour and to 55 in five more, "then continuous
// chilling to 40". How long that may take was not read.
#[rstest]
#[case::it_goes_on_falling(&[(1.9, 78.0), (6.4, 53.0), (9.0, 37.0)], Verdict::Meets)]
#[case::within_what_the_thermometer_may_be_off(&[(1.9, 78.0), (6.4, 53.0), (8.0, 44.0), (8.25, 44.5), (9.0, 37.0)], Verdict::Meets)]
#[case::it_stands_still(&[(1.9, 78.0), (6.4, 53.0), (10.0, 53.0), (11.0, 37.0)], Verdict::Unproven)]
#[case::it_warms_again(&[(1.9, 78.0), (6.4, 53.0), (7.5, 57.0), (9.0, 37.0)], Verdict::Unproven)]
#[case::it_is_cold_and_warms_again(&[(1.9, 78.0), (6.4, 53.0), (9.0, 37.0), (10.0, 50.0), (11.0, 37.0)], Verdict::Unproven)]
#[case::it_ends_warm(&[(1.9, 78.0), (6.4, 53.0), (9.0, 45.0)], Verdict::Unproven)]
#[case::it_takes_days(&[(1.9, 78.0), (6.4, 53.0), (40.0, 45.0), (70.0, 37.0)], Verdict::Unproven)]
fn a_schedule_ends_in_the_cold(#[case] later: &[(f64, f64)], #[case] expected: Verdict) {
    let curve = [&[(0.0, 165.0), (1.0, 122.0), (1.1, 118.0)], later].concat();
    let chill = step("chill", "at = \"34 °F\"");
    assert_eq!(cooling("us-fsis", &[PORK, COOK, &in_rows(&curve), &chill]), [expected]);
}

#[rstest]
#[case::a_cooked_sauce(
    "food = \"sauce\"\n[[component.ingredient]]\nname = \"stock\"\nkind = \"other\"\namount = \"2 kg\"\n",
    COOK
)]
#[case::a_cook_to_no_stated_temperature(
    PORK,
    "[[component.step]]\ndo = \"hold\"\nat = \"212 °F\"\nfor = \"2 h\"\n"
)]
fn rows_of_a_slow_cooling_count_whatever_was_cooked(#[case] food: &str, #[case] cook: &str) {
    let chill = step("chill", "at = \"34 °F\"");
    assert_eq!(cooling("us-food-code-2022", &[food, cook, SLOW, &chill]), [Verdict::Breaks]);
    assert_eq!(cooling("us-consumer", &[food, cook, SLOW, &chill]), [Verdict::Unproven]);
}

/// So many steps of one kind, each for so long.
fn split(what: &str, more: &str, hours: u32, parts: u32) -> String {
    step(what, &format!("{more}\nfor = \"{} min\"", hours * 60 / parts)).repeat(parts as usize)
}

const COLD: &str = "at = \"37 °F\"";
const KEPT: &str = "like = \"leftovers/meat-or-poultry\"";

// Cooked meat keeps four days by the chart. Days under other names are days, in one stay or in ten.
#[rstest]
#[case::held("hold")]
#[case::served_cold("serve")]
#[case::packed("pack")]
#[case::chilled_again("chill")]
fn time_in_the_cold_counts_whatever_it_is_called_and_however_it_is_split(#[case] what: &str) {
    let fridge = |days: u8| step("refrigerate", &format!("{COLD}\nfor = \"{days} days\"\n{KEPT}"));
    let chill = step("chill", &format!("{COLD}\nfor = \"6 h\""));
    for parts in [1, 2, 10] {
        let more = split(what, COLD, 50, parts);
        let alone = open("us-consumer", &[PORK, COOK, &chill, &more]).expect("it is read");
        assert!(alone.contains(&"store/fridge-time"), "{what}, {parts}: {alone:?}");
        for order in [[fridge(3), more.clone()], [more, fridge(3)]] {
            let found = open("us-consumer", &[PORK, COOK, &chill, &order.concat()]);
            let mut found = found.expect("it is read");
            found.dedup();
            assert_eq!(found, ["store/fridge-time"], "{what}, {parts}");
        }
    }
    let little = split(what, COLD, 4, 2);
    let open = open("us-consumer", &[PORK, COOK, &chill, &fridge(3), &little]);
    assert_eq!(open, Some(Vec::new()), "{what}");
}

#[test]
fn a_hold_in_the_cold_says_how_long() {
    let hold = step("hold", COLD);
    assert_eq!(open("us-consumer", &[PORK, &hold, COOK]), Some(vec!["store/fridge-time"]));
}

// Six hours between 50 and 130 °F, whoever is named.
#[rstest]
#[case::in_air_of_130("smoke", "at = \"130 °F\"")]
#[case::in_air_of_180("cook", "at = \"180 °F\"")]
#[case::nobody_says_how_warm("smoke", "")]
fn a_long_cook_says_how_long_its_way_up_takes(#[case] what: &str, #[case] more: &str) {
    let end = "[[component.step]]\ndo = \"cook\"\nat = \"300 °F\"\nto = \"170 °F\"\nhold = \"3 min\"\ncome_up = \"4 h\"\n[[component.step]]\ndo = \"rest\"\nfor = \"10 min\"\n";
    for held_to in ["us-consumer", "us-food-code-2022", "canada"] {
        for parts in [1, 4] {
            let long = split(what, more, 12, parts);
            let found = open(held_to, &[PORK, &long, COOK]);
            assert_eq!(found, Some(vec!["cook/slow-stages"]), "{held_to}, {parts}");
            let short = split(what, more, 4, parts);
            assert_eq!(
                open(held_to, &[PORK, &short, COOK]),
                Some(Vec::new()),
                "{held_to}, {parts}"
            );
        }
        // Stated, it is judged.
        let hot = split("cook", "at = \"225 °F\"", 12, 1);
        assert_eq!(open(held_to, &[PORK, &hot, end]), Some(Vec::new()), "{held_to}");
    }
}

#[test]
fn rests_are_added_up_after_a_cook_and_on_the_way_to_it() {
    let rests = |n: usize| step("rest", "for = \"55 min\"").repeat(n);
    for held_to in ["us-consumer", "us-food-code-2022", "great-britain"] {
        let found = open(held_to, &[PORK, COOK, &rests(10)]).expect("it is read");
        assert!(found.contains(&"store/warm-time"), "{held_to}: {found:?}");
    }
    let found = open(
        "us-consumer",
        &[PORK, &step("smoke", "at = \"150 °F\"\nfor = \"30 min\""), &rests(8), COOK],
    );
    assert!(found.expect("it is read").contains(&"cook/slow-stages"));
}

// Between 40 and 140 °F for two hours, by a thermometer of 1 °F.
#[rstest]
#[case::surely_hot("141 °F", false)]
#[case::perhaps_hot("140 °F", true)]
#[case::perhaps_cold("40 °F", true)]
#[case::surely_cold("39 °F", false)]
fn a_thermometer_at_the_edge_of_the_warm_proves_nothing(#[case] at: &str, #[case] is_open: bool) {
    let table = step("serve", &format!("at = \"{at}\"\nfor = \"6 h\""));
    let found = open("us-consumer", &[PORK, COOK, &table]).expect("it is read");
    assert_eq!(found.contains(&"chill/warm-time"), is_open, "{found:?}");
}

#[test]
fn a_thaw_has_an_end() {
    let water = |time: &str| {
        step("thaw", &format!("how = \"cold-water\"\nat = \"60 °F\"\nfor = \"{time}\""))
    };
    assert_eq!(open("us-consumer", &[PORK, &water("3 h"), COOK]), Some(Vec::new()));
    assert_eq!(open("us-consumer", &[PORK, &water("3 days"), COOK]), Some(vec!["store/thaw"]));
    let frozen = step("freeze", "at = \"-5 °F\"\nfor = \"30 days\"");
    let fridge = |days: u8| {
        step("thaw", &format!("how = \"refrigerator\"\nat = \"37 °F\"\nfor = \"{days} days\""))
    };
    let cooked =
        |days| open("us-consumer", &[PORK, COOK, &frozen, &fridge(days)]).expect("it is read");
    assert!(!cooked(1).contains(&"store/fridge-time"));
    assert!(cooked(10).contains(&"store/fridge-time"));
}

/// A record of minutes and °F.
fn record(points: &[(u32, u32)]) -> String {
    let row = |(at, f): &(u32, u32)| {
        format!("[[component.record]]\nafter = \"{at} min\"\ninside = \"{f} °F\"\n")
    };
    points.iter().map(row).collect()
}

// What nobody recorded proves no cook, and disproves none.
#[test]
fn a_gap_that_may_hide_the_hottest_part_breaks_nothing() {
    let way_up = [(0, 45), (10, 60), (20, 80), (30, 100), (40, 115)];
    let smoke = step("smoke", "at = \"180 °F\"\nfor = \"4 h\"");
    let of = |more: &[(u32, u32)]| {
        let points = [&way_up[..], more].concat();
        let text =
            format!("held_to = [\"us-food-code-2022\"]\n{HEAD}{PORK}{}{smoke}", record(&points));
        let found = Recipe::read(&text).expect("it is read").check();
        let of = found.iter().find(|checked| checked.finding.rule.id == "cook/record");
        of.expect("the record is judged").finding
    };
    let hidden = of(&[(220, 140), (230, 120), (240, 100)]);
    assert_eq!((hidden.verdict, hidden.gap.is_some()), (Verdict::Unproven, true));
    let seen = of(&[(50, 120), (60, 118), (70, 110), (80, 100)]);
    assert_eq!((seen.verdict, seen.gap), (Verdict::Breaks, None));
}

// Food Code: from 135 °F. A first row at the start, by a thermometer that may be off, shows no cooling that is too slow.
#[rstest]
#[case::surely_above(137, 3, Verdict::Meets)]
#[case::perhaps_at_the_start(135, 3, Verdict::Unproven)]
#[case::perhaps_below(134, 3, Verdict::Unproven)]
#[case::surely_below(130, 3, Verdict::Unproven)]
#[case::too_slow_from_there_on(134, 30, Verdict::Breaks)]
fn a_first_row_at_the_start_of_a_clock_breaks_nothing_by_itself(
    #[case] first: u32,
    #[case] hours: u32,
    #[case] expected: Verdict,
) {
    let rows = in_rows(&[
        (0.0, f64::from(first)),
        (f64::from(hours) / 3.0, 66.0),
        (f64::from(hours), 38.0),
    ]);
    let chill = step("chill", "at = \"34 °F\"");
    assert_eq!(cooling("us-food-code-2022", &[PORK, COOK, &rows, &chill]), [expected]);
}

// Food Code, 3-401.11(B): a roast of 131 °F. It is never at the 135 °F of the clock, which counts from the end of its cook.
#[rstest]
#[case::in_time(&[(0.0, 132.0), (1.5, 66.0), (5.0, 38.0)], Verdict::Meets)]
#[case::too_slow(&[(0.0, 132.0), (4.0, 66.0), (8.0, 38.0)], Verdict::Breaks)]
fn a_roast_that_was_never_hotter_cools_from_the_end_of_its_cook(
    #[case] curve: &[(f64, f64)],
    #[case] expected: Verdict,
) {
    let roast =
        "[[component.step]]\ndo = \"cook\"\nat = \"250 °F\"\nto = \"132 °F\"\nhold = \"2 h\"\n";
    let chill = step("chill", "at = \"34 °F\"");
    assert_eq!(cooling("us-food-code-2022", &[PORK, roast, &in_rows(curve), &chill]), [expected]);
}

/// The rules that are open in a plant that smokes fish hot, by the guidance for it.
#[rstest]
#[case::hot_enough("150 °F", true)]
#[case::too_cool("120 °F", false)]
fn a_hot_smoke_is_the_cook_of_a_fish(#[case] to: &str, #[case] is_right: bool) {
    let smoke = step(
        "smoke",
        &format!("at = \"180 °F\"\nto = \"{to}\"\nhold = \"35 min\"\ncome_up = \"2 h\""),
    );
    let found = open("us-fda", &[FISH, &smoke]).expect("it is read");
    assert_eq!(found.contains(&"smoke/hot-fish"), !is_right, "{found:?}");
    assert!(!is_right || !found.contains(&"cook/authority"), "{found:?}");
}

#[test]
fn each_cook_has_a_way_up_of_its_own() {
    let slow = |more: &str| {
        step(
            "cook",
            &format!("at = \"150 °F\"\nfor = \"8 h\"\nto = \"148 °F\"\nhold = \"10 min\"\n{more}"),
        )
    };
    let rest = step("rest", "for = \"10 min\"");
    let fridge = step(
        "refrigerate",
        "at = \"37 °F\"\nfor = \"2 days\"\nlike = \"leftovers/meat-or-poultry\"",
    );
    let said = slow("come_up = \"3 h\"");
    assert_eq!(open("us-consumer", &[PORK, &said, &rest, &fridge, COOK]), Some(Vec::new()));
    let unsaid = open("us-consumer", &[PORK, &slow(""), &rest, &fridge, COOK]);
    assert_eq!(unsaid, Some(vec!["cook/slow-stages"]));
}

// Twenty hours are for cured food that holds what the schedule asks for, by whoever is held to it.
#[test]
fn no_analysis_of_the_finished_food_makes_a_slow_cooling_fast_where_nobody_has_a_clock() {
    let rows = in_rows(&[(0.0, 160.0), (0.75, 121.0), (2.5, 79.0), (17.0, 38.0)]);
    let chill = step("chill", "at = \"36 °F\"");
    let dry = "analysis = { water_activity = 0.91 }\n";
    for component in [PORK.to_owned(), format!("{dry}{PORK}")] {
        assert_eq!(cooling("us-consumer", &[&component, COOK, &rows, &chill]), [Verdict::Unproven]);
    }
}

// Three days in the cold, and no more: Clostridium botulinum.
#[rstest]
#[case::by_their_kinds("olive oil", "oil", "garlic", "raw-garlic", true)]
#[case::by_their_names("olive oil", "other", "garlic cloves", "other", true)]
#[case::in_another_language("Olivenöl", "other", "Knoblauch", "other", true)]
#[case::dried("olive oil", "oil", "garlic powder", "other", false)]
#[case::boiled_is_no_oil("boiled water", "other", "garlic", "other", false)]
fn garlic_in_oil_is_known_by_name_too(
    #[case] oil: &str,
    #[case] oil_kind: &str,
    #[case] garlic: &str,
    #[case] garlic_kind: &str,
    #[case] is_open: bool,
) {
    let ingredient = |name: &str, kind: &str, amount: &str| {
        format!(
            "[[component.ingredient]]\nname = \"{name}\"\nkind = \"{kind}\"\namount = \"{amount}\"\n"
        )
    };
    let sauce = format!(
        "food = \"sauce\"\n{}{}",
        ingredient(oil, oil_kind, "500 g"),
        ingredient(garlic, garlic_kind, "50 g")
    );
    let fridge = step("refrigerate", "at = \"37 °F\"\nfor = \"4 days\"\nlike = \"salad/mixed\"");
    let found = open("us-consumer", &[&sauce, &fridge]).expect("it is read");
    assert_eq!(found.contains(&"store/garlic-in-oil"), is_open, "{found:?}");
}
