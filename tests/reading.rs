//! What a document may not say, and what it is told instead.
#![cfg(feature = "recipe")]

use greenweight::recipe::Recipe;
use rstest::rstest;

const TOP: &str = "title = \"Invented\"\nheld_to = [\"us-consumer\"]\n";
const MEAT: &str = "[[component]]\nname = \"a\"\nfood = \"ground-meat\"\n";

/// The only fault of a document: its message and help, and the text it points at.
fn fault(text: &str) -> (String, String) {
    let error = Recipe::read(text).expect_err(text);
    let [fault] = error.faults.as_slice() else { panic!("{error}") };
    let at = text.get(fault.place.start..fault.place.end).expect("a place in the text");
    (format!("{} {}", fault.message, fault.help.clone().unwrap_or_default()), at.to_owned())
}

#[rstest]
#[case::measures(
    "measures = \"Martian\"",
    "it is one of US, metric, Imperial, Australian",
    "\"Martian\""
)]
#[case::a_day_before_all_days("date = 0000-01-01", "year", "0000-01-01")]
#[case::a_time_of_day("date = 2026-01-31T10:00:00", "a day without quotes", "2026-01-31T10:00:00")]
#[case::a_day_in_quotes("date = \"2026-01-31\"", "a day without quotes", "\"2026-01-31\"")]
#[case::a_kitchen("profile = \"us/hom\"", "did you mean `us/home`?", "\"us/hom\"")]
fn at_the_top(#[case] line: &str, #[case] said: &str, #[case] at: &str) {
    let found = fault(&format!("{TOP}{line}\n{MEAT}"));
    assert!(found.0.contains(said), "{found:?}");
    assert_eq!(found.1, at);
}

#[rstest]
#[case::no_food("[[component]]\nname = \"a\"", "what class of food is it?")]
#[case::no_name("[[component]]\nfood = \"fish\"", "`name` is missing")]
#[case::an_empty_name("[[component]]\nname = \" \"\nfood = \"fish\"", "`name` is empty")]
#[case::a_name_that_turns_the_line(
    "[[component]]\nname = \"a\\u202e\"\nfood = \"fish\"",
    "cannot be printed"
)]
#[case::a_name_of_the_tables(
    "[[component]]\nname = \"a\"\nfood = \"ground-meat\"\nsold_as = [\"us/ground-beaf\"]",
    "did you mean `us/ground-beef`?"
)]
#[case::no_name_of_the_tables(
    "[[component]]\nname = \"a\"\nfood = \"ground-meat\"\ncured_as = [\"moon/cheese\"]",
    "references/README.md lists the tables"
)]
#[case::no_list(
    "[[component]]\nname = \"a\"\nfood = \"ground-meat\"\nsold_as = \"us/ground-beef\"",
    "write it in brackets"
)]
#[case::no_step(
    "[[component]]\nname = \"a\"\nfood = \"fish\"\n[[component.step]]\nat = \"40 °F\"",
    "what is done in this step?"
)]
#[case::a_row(
    "[[component]]\nname = \"a\"\nfood = \"fish\"\n[[component.step]]\ndo = \"refrigerate\"\nlike = \"moon/cheese-of-the-dark-side\"",
    "lists the rows"
)]
#[case::two_of_one_name(
    "[[component]]\nname = \"a\"\nfood = \"fish\"\n[[component]]\nname = \"a\"\nfood = \"fish\"",
    "two components have this name"
)]
#[case::packed_before_it_is_made(
    "[[component]]\nname = \"a\"\nfood = \"fish\"\nmade_on = 2026-02-02\npacked_on = 2026-02-01",
    "`packed_on` is 2026-02-01: write 2026-02-02"
)]
#[case::packed_and_never_made(
    "[[component]]\nname = \"a\"\nfood = \"fish\"\npacked_on = 2026-02-01",
    "needs `made_on` beside it"
)]
#[case::raw_and_cooked(
    "[[component]]\nname = \"a\"\nfood = \"fish\"\nraw = true\n[[component.step]]\ndo = \"cook\"\nto = \"150 °F\"",
    "drop `raw`, or this `to`"
)]
#[case::hotter_inside_than_around(
    "[[component]]\nname = \"a\"\nfood = \"fish\"\n[[component.step]]\ndo = \"cook\"\nat = \"140 °F\"\nto = \"150 °F\"",
    "`to` is above `at`"
)]
#[case::meat_in_a_cheese(
    "[[component]]\nname = \"a\"\nfood = \"cheese\"\n[[component.ingredient]]\nname = \"m\"\nkind = \"meat\"\nfrom = \"pork\"\namount = \"1 kg\"",
    "a food that holds none"
)]
#[case::the_skin_of_a_loaf(
    "[[component]]\nname = \"a\"\nfood = \"ground-meat\"\n[[component.ingredient]]\nname = \"m\"\nkind = \"meat\"\nfrom = \"pork\"\namount = \"1 kg\"\nskin = true",
    "whose food is bacon"
)]
#[case::the_strength_of_salt(
    "[[component]]\nname = \"a\"\nfood = \"ground-meat\"\n[[component.ingredient]]\nname = \"s\"\nkind = \"salt\"\namount = \"1 kg\"\nstrength = { sodium-nitrite = \"6 %\" }",
    "belongs to an ingredient of kind \"curing-premix\""
)]
#[case::a_premix_of_nothing(
    "[[component]]\nname = \"a\"\nfood = \"ground-meat\"\n[[component.ingredient]]\nname = \"s\"\nkind = \"curing-premix\"\namount = \"1 kg\"\nstrength = { salt = \"94 %\" }",
    "name what the label names"
)]
#[case::a_strength_without_an_agent(
    "[[component]]\nname = \"a\"\nfood = \"ground-meat\"\n[[component.ingredient]]\nname = \"s\"\nkind = \"curing-premix\"\namount = \"1 kg\"\nstrength = \"6 %\"",
    "name the agent"
)]
#[case::parts_of_more_than_the_whole(
    "[[component]]\nname = \"a\"\nfood = \"ground-meat\"\n[[component.ingredient]]\nname = \"s\"\nkind = \"curing-premix\"\namount = \"1 kg\"\nstrength = { sodium-nitrite = \"60 %\", salt = \"60 %\" }",
    "more than the premix weighs"
)]
#[case::a_pump_for_a_rub(
    "[[component]]\nname = \"a\"\nfood = \"whole-meat\"\ncure = { method = \"dry-rub\", pump = \"10 %\" }",
    "belongs to a cure of method \"pumped\""
)]
#[case::a_probe_without_quotes(
    "[[component]]\nname = \"a\"\nfood = \"fish\"\nrecorded_in = { file = \"r.csv\", time = \"t\", written = \"seconds\", inside = [1], scale = \"°C\" }",
    "the heading of its column"
)]
#[case::a_reading_at_two_times(
    "[[component]]\nname = \"a\"\nfood = \"fish\"\n[[component.record]]\nafter = \"1 to 2 min\"\ninside = \"60 °C\"",
    "one time, not a range"
)]
#[case::a_reading_without_its_time(
    "[[component]]\nname = \"a\"\nfood = \"fish\"\n[[component.cooling]]\ninside = \"60 °C\"",
    "`after` is missing"
)]
#[case::the_analysis_of_nobody(
    "[[component]]\nname = \"a\"\nfood = \"ground-meat\"\nanalysis = { nitrite = \"20 mg/kg\" }",
    "as what does the laboratory count"
)]
#[case::two_humidities(
    "[[component]]\nname = \"a\"\nfood = \"fish\"\n[[component.step]]\ndo = \"smoke\"\nat = \"160 °F\"\nhumidity = \"60 %\"\nwet_bulb = \"140 °F\"",
    "write one of them"
)]
#[case::a_wet_bulb_alone(
    "[[component]]\nname = \"a\"\nfood = \"fish\"\n[[component.step]]\ndo = \"smoke\"\nwet_bulb = \"140 °F\"",
    "needs the dry bulb beside it"
)]
#[case::a_dry_wick(
    "[[component]]\nname = \"a\"\nfood = \"fish\"\n[[component.step]]\ndo = \"smoke\"\nat = \"160 °F\"\nwet_bulb = \"40 °F\"",
    "did its wick run dry?"
)]
fn of_a_component(#[case] component: &str, #[case] said: &str) {
    let found = fault(&format!("{TOP}{component}\n"));
    assert!(found.0.contains(said), "{found:?}");
}

#[test]
fn a_recipe_makes_something() {
    let (said, _) = fault(TOP);
    assert!(said.contains("there is no [[component]]"), "{said}");
}
