//! The verb that answers without a recipe.

use std::process::{Command, Output};

use rstest::rstest;

fn dose(arguments: &[&str]) -> Output {
    Command::new(env!("CARGO_BIN_EXE_greenweight")).arg("dose").args(arguments).output().unwrap()
}

fn said(arguments: &[&str]) -> String {
    let output = dose(arguments);
    assert_eq!(output.status.code(), Some(0), "{}", String::from_utf8_lossy(&output.stderr));
    String::from_utf8(output.stdout).unwrap()
}

const SEVEN_POUNDS: [&str; 8] =
    ["--held-to", "us-fsis", "--method", "ground", "--meat", "7 lb", "--sodium-nitrite", "6.25 %"];

#[test]
fn seven_pounds_take_at_most_7_8_grams_on_a_scale_of_tenths() {
    let said = said(&[&SEVEN_POUNDS[..], &["--scale", "0.1 g"]].concat());
    assert!(said.contains("\nWeigh out at most 7.8 g (0.275 oz)"), "{said}");
    // 7.9378665 g, or 0.28 oz, of 7 lb exactly; the scale may have shown 7 lb for a little
    // less, and what is printed is rounded down.
    assert!(said.contains("the most     7.93 g (0.279 oz)"), "{said}");
    assert!(said.contains("the least    6.1 g"), "{said}");
    assert!(said.contains("from memory"), "{said}");
}

#[test]
fn a_batch_too_small_for_the_scale_is_said_so_with_the_batch_that_is_not() {
    let small = [
        "--held-to",
        "us-fsis",
        "--method",
        "ground",
        "--meat",
        "0.5 lb",
        "--sodium-nitrite",
        "6.25 %",
        "--scale",
        "1 g",
    ];
    assert!(said(&small).contains("too small for this scale"));
    let mend = "Make at least 2.7 times as much, or use a scale with steps of 0.1 g or finer.";
    assert!(said(&small).contains(mend), "{}", said(&small));
    let large = small.map(|word| if word == "0.5 lb" { "1.36 lb" } else { word });
    assert!(said(&large).contains("\nWeigh out at most 1 g"));
}

#[test]
fn an_immersion_is_answered_by_its_method_and_without_one_the_missing_fact_is_named() {
    let tub = [
        "--held-to",
        "us-fsis",
        "--method",
        "immersion",
        "--food",
        "whole-meat",
        "--meat",
        "10 kg",
        "--sodium-nitrite",
        "6.25 %",
        "--scale",
        "0.1 g",
        "--pickle",
        "10 kg",
    ];
    // 200 mg/kg of 20 kg at equilibrium is 4 g of nitrite, 64 g of the premix; by a pick-up of 5 % it would be
    // ten times as much.
    let at_rest = said(&[&tub[..], &["--equilibrium"]].concat());
    assert!(at_rest.starts_with("Weigh out at most 63.9 g"), "{at_rest}");
    let picked_up = [&tub[..], &["--taken-up", "5 %"]].concat();
    let hours = [&picked_up[..], &["--for", "12 h"]].concat();
    assert!(said(&hours).starts_with("Weigh out at most 639.9"), "{}", said(&hours));
    let weeks = [&picked_up[..], &["--for", "3 weeks"]].concat();
    for long in [&weeks, &picked_up] {
        assert!(said(long).starts_with("Weigh out at most 63.9 g"), "it may come to rest");
    }
    let output = dose(&tub);
    assert_eq!(output.status.code(), Some(2));
    assert!(String::from_utf8(output.stderr).unwrap().contains("equilibrium"));
}

/// Why there is no dose.
fn refused(arguments: &[&str]) -> String {
    let output = dose(arguments);
    assert_eq!(output.status.code(), Some(2), "{}", String::from_utf8_lossy(&output.stdout));
    assert!(output.stdout.is_empty());
    String::from_utf8(output.stderr).unwrap()
}

const FIVE_POUNDS: [&str; 8] =
    ["--held-to", "us-fsis", "--meat", "5 lb", "--sodium-nitrite", "6.25 %", "--scale", "0.1 g"];

#[rstest]
#[case::rubbed("dry-rub", &[], "at most 6.4 g")]
#[case::pumped("pumped", &["--pickle", "1 kg", "--taken-up", "10 %"], "19.2 g")]
#[case::immersed("immersion", &["--pickle", "5 lb", "--equilibrium"], "at most 8.2 g")]
fn without_a_food_the_figure_of_bacon_counts_and_is_said_first(
    #[case] method: &str,
    #[case] more: &[&str],
    #[case] amount: &str,
) {
    let asked = [&FIVE_POUNDS[..], &["--method", method], more].concat();
    let said_of_none = said(&asked);
    let first = said_of_none.lines().next().unwrap();
    assert!(first.contains("No food was named") && first.contains("bacon"), "{said_of_none}");
    assert!(said_of_none.contains(&format!("\nWeigh out {amount}")), "{said_of_none}");
    let said_of_bacon = said(&[&asked[..], &["--food", "bacon"]].concat());
    assert!(said_of_bacon.contains(&format!("Weigh out {amount}")), "{said_of_bacon}");
    let said_of_meat = said(&[&asked[..], &["--food", "whole-meat"]].concat());
    assert!(!said_of_meat.contains(&format!("Weigh out {amount}")), "{said_of_meat}");
}

#[test]
fn pumped_bacon_is_told_its_amount_neither_more_nor_less() {
    let pumped =
        ["--method", "pumped", "--pickle", "1 kg", "--taken-up", "10 %", "--food", "bacon"];
    let said = said(&[&FIVE_POUNDS[..], &pumped].concat());
    assert!(said.contains("neither more nor less") && said.contains("120 ppm"), "{said}");
}

#[test]
fn no_dose_is_told_of_neat_nitrite_nor_for_infants_nor_for_fish_without_a_row() {
    let ground = [&FIVE_POUNDS[..], &["--method", "ground"]].concat();
    let neat = ground.iter().map(|word| if *word == "6.25 %" { "100 %" } else { word });
    let said = refused(&neat.collect::<Vec<_>>());
    assert!(said.contains("not for a kitchen scale"), "{said}");
    assert!(refused(&[&ground[..], &["--for-infants"]].concat()).contains("infants"));
    assert!(refused(&[&ground[..], &["--food", "fish"]].concat()).contains("no dose"));
    assert!(refused(&[&ground[..], &["--food", "pebbles"]].concat()).contains("whole-meat"));
}

#[test]
fn no_stock_solution_is_told_and_scales_are_those_that_people_own() {
    let coarse: Vec<_> =
        SEVEN_POUNDS.iter().map(|word| if *word == "7 lb" { "0.5 lb" } else { word }).collect();
    let said = said(&[&coarse[..], &["--scale", "1 oz"]].concat());
    assert!(said.contains("use a scale with steps of 0.1 g or finer"), "{said}");
    assert!(!said.contains("solution") && !said.contains("parts of"), "{said}");
}

#[rstest]
#[case::a_bare_number(["7 lb", "6.25", "0.1 g"], "sodium-nitrite")]
#[case::a_fraction_for_a_percent(["7 lb", "106 %", "0.1 g"], "sodium-nitrite")]
#[case::no_strength(["7 lb", "0 %", "0.1 g"], "no")]
#[case::a_comma(["7,5 lb", "6.25 %", "0.1 g"], "meat")]
#[case::no_meat(["0 lb", "6.25 %", "0.1 g"], "meat")]
#[case::no_scale(["7 lb", "6.25 %", "0 g"], "scale division")]
fn what_could_mislead_is_refused(#[case] words: [&str; 3], #[case] named: &str) {
    let [meat, strength, scale] = words;
    let output = dose(&[
        "--held-to",
        "us-fsis",
        "--method",
        "ground",
        "--meat",
        meat,
        "--sodium-nitrite",
        strength,
        "--scale",
        scale,
    ]);
    assert_eq!(output.status.code(), Some(2));
    let said = String::from_utf8(output.stderr).unwrap();
    assert!(said.contains(named), "{said}");
}

#[test]
fn where_limits_go_by_product_the_product_decides() {
    let meat = ["--held-to", "great-britain", "--meat", "2 kg", "--sodium-nitrite", "6.25 %"];
    let plain = [&meat[..], &["--scale", "0.1 g", "--method", "ground"]].concat();
    assert_eq!(dose(&plain).status.code(), Some(2), "of which product is not said");
    let product = [&plain[..], &["--cured-as", "gb/meat-in-general"]].concat();
    assert!(said(&product).contains("Weigh out at most"));
    assert!(refused(&plain).contains("--cured-as"));
    let unknown = [&plain[..], &["--cured-as", "gb/cheese-of-the-moon"]].concat();
    assert_eq!(dose(&unknown).status.code(), Some(2));
}

#[test]
fn no_pickle_is_half_premix() {
    let dose = |taken_up: &str| {
        Command::new(env!("CARGO_BIN_EXE_greenweight"))
            .args(["dose", "--held-to", "us-fsis", "--food", "whole-meat", "--method", "immersion"])
            .args([
                "--meat",
                "10 kg",
                "--sodium-nitrite",
                "6.25 %",
                "--scale",
                "1 g",
                "--for",
                "1 h",
            ])
            .args(["--pickle", "10 kg", "--taken-up", taken_up])
            .output()
            .unwrap()
    };
    let none = dose("0.1 %");
    assert_eq!((none.status.code(), none.stdout.len()), (Some(2), 0));
    assert_eq!(dose("10 %").status.code(), Some(0));
}
