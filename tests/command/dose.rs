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
    assert!(said.starts_with("Weigh out at most 7.8 g (0.275 oz)"), "{said}");
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
    assert!(said(&small).contains("Make at least 2.7 times as much"));
    let large = small.map(|word| if word == "0.5 lb" { "1.36 lb" } else { word });
    assert!(said(&large).starts_with("Weigh out at most 1 g"));
}

#[test]
fn an_immersion_is_answered_by_its_method_and_without_one_the_missing_fact_is_named() {
    let tub = [
        "--held-to",
        "us-fsis",
        "--method",
        "immersion",
        "--meat",
        "10 kg",
        "--sodium-nitrite",
        "100 %",
        "--scale",
        "0.01 g",
        "--pickle",
        "10 kg",
    ];
    // 200 mg/kg of 20 kg at equilibrium is 4 g; by a pick-up of 5 % it would be 40 g.
    assert!(said(&[&tub[..], &["--equilibrium"]].concat()).starts_with("Weigh out at most 3.99 g"));
    let picked_up = [&tub[..], &["--taken-up", "5 %"]].concat();
    let hours = [&picked_up[..], &["--for", "12 h"]].concat();
    assert!(said(&hours).starts_with("Weigh out at most 39.9"));
    let weeks = [&picked_up[..], &["--for", "3 weeks"]].concat();
    for long in [&weeks, &picked_up] {
        assert!(said(long).starts_with("Weigh out at most 3.99 g"), "it may come to rest");
    }
    let output = dose(&tub);
    assert_eq!(output.status.code(), Some(2));
    assert!(String::from_utf8(output.stderr).unwrap().contains("equilibrium"));
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
    assert!(said(&product).starts_with("Weigh out at most"));
    let unknown = [&plain[..], &["--cured-as", "gb/cheese-of-the-moon"]].concat();
    assert_eq!(dose(&unknown).status.code(), Some(2));
}
