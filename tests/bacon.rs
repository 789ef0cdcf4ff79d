//! Bacon by its own rules (9 CFR 424.22(b)), and what the general rules leave unproven.

use greenweight::authority::Authority;
use greenweight::cure::{
    Addition, Additive, Batch, Cure, GreenWeight, Level, Method, Pickle, PickleWeight, Premix,
    Pump, Weighed, check,
};
use greenweight::finding::{Finding, Mend, Place, Verdict};
use greenweight::food::Food;
use greenweight::range::Range;
use greenweight::units::{Mass, grams, kilograms};
use rstest::rstest;

/// Ten kilograms of belly and a kilogram of pickle at a tenth of pump, so that a level in
/// mg/kg is so many hundredths of a gram of a pure salt.
fn pumped(
    nitrite: f64,
    scale: Option<Mass>,
    sugar: Option<f64>,
    culture: Option<bool>,
) -> Vec<Finding> {
    let pure = Premix::new().with_sodium_nitrite(Level::percent(100.0).unwrap()).unwrap();
    let weighed = |mg_per_kg: f64| Some(Weighed { mass: grams(mg_per_kg / 100.0), scale });
    let cures = [Cure { mass: weighed(nitrite), strength: Some(pure), place: Place::default() }];
    let additions = [Addition {
        additive: Additive::SodiumErythorbate,
        mass: weighed(550.0),
        hydrated: false,
        place: Place::default(),
    }];
    findings(&Batch {
        method: Some(Method::Pumped),
        green: Range::exactly(GreenWeight::new(kilograms(10.0)).unwrap()).ok(),
        scaled: true,
        cures: &cures,
        pickle: Some(Pickle {
            weight: Range::exactly(PickleWeight::new(kilograms(1.0)).unwrap()).unwrap(),
            taken_up: Range::exactly(Pump::new(0.1).unwrap()).ok(),
            equilibrium: None,
        }),
        additions: &additions,
        sugar_percent: sugar,
        culture,
        ..Batch::of(Food::Bacon)
    })
}

fn findings(batch: &Batch<'_>) -> Vec<Finding> {
    let mut findings = Vec::new();
    check(batch, Authority::UsFsis, None, &mut |finding| findings.push(finding));
    findings
}

fn of(findings: &[Finding], rule: &str) -> Finding {
    *findings.iter().find(|finding| finding.rule.id == rule).unwrap()
}

#[rstest]
#[case::with_both(Some(0.7), Some(true), Verdict::Meets)]
#[case::nothing_said(None, None, Verdict::Unproven)]
#[case::sugar_alone(Some(0.7), None, Verdict::Unproven)]
#[case::culture_alone(None, Some(true), Verdict::Unproven)]
#[case::too_little_sugar(Some(0.6), Some(true), Verdict::Breaks)]
#[case::no_culture(Some(0.7), Some(false), Verdict::Breaks)]
fn sixty_needs_the_sugar_and_the_culture(
    #[case] sugar: Option<f64>,
    #[case] culture: Option<bool>,
    #[case] verdict: Verdict,
) {
    let finding = of(&pumped(60.0, Some(grams(0.001)), sugar, culture), "cure/bacon-nitrite");
    assert_eq!(finding.verdict, verdict);
    assert_eq!(finding.missing.is_some(), verdict != Verdict::Meets);
}

#[rstest]
#[case::as_prescribed(120.0, Some(0.001), Verdict::Meets)]
#[case::alternative_a(100.0, Some(0.001), Verdict::Meets)]
#[case::rounds_to_it(120.4, Some(0.001), Verdict::Meets)]
#[case::a_little_off(121.0, Some(0.001), Verdict::Breaks)]
#[case::off_within_the_scale(119.0, Some(0.1), Verdict::Unproven)]
#[case::strays_too_far(120.0, Some(0.6), Verdict::Unproven)]
#[case::no_scale(120.0, None, Verdict::Unproven)]
#[case::rounds_to_it_without_a_scale(120.4, None, Verdict::Unproven)]
#[case::off_without_a_scale(110.0, None, Verdict::Breaks)]
fn a_prescribed_amount_is_hit_or_missed(
    #[case] nitrite: f64,
    #[case] scale: Option<f64>,
    #[case] verdict: Verdict,
) {
    let finding = of(&pumped(nitrite, scale.map(grams), None, None), "cure/bacon-nitrite");
    assert_eq!(finding.verdict, verdict);
    // What hits it and may stray is not told to weigh what it weighs.
    let hits = (nitrite - 120.0).abs() <= 0.5;
    assert!(!hits || finding.mend.is_none(), "{finding:?}");
    // Only a scale that is not stated is a missing fact here.
    assert_eq!(finding.missing.is_some(), scale.is_none() && verdict == Verdict::Unproven);
}

fn rubbed(food: Food, method: Option<Method>, premix: Premix, grams_of_it: f64) -> Vec<Finding> {
    let mass = Some(Weighed { mass: grams(grams_of_it), scale: Some(grams(0.001)) });
    let cures = [Cure { mass, strength: Some(premix), place: Place::default() }];
    findings(&Batch {
        method,
        green: Range::exactly(GreenWeight::new(kilograms(10.0)).unwrap()).ok(),
        scaled: true,
        cures: &cures,
        ..Batch::of(food)
    })
}

#[test]
fn both_nitrites_in_bacon_are_added_up_as_sodium_nitrite() {
    let both = Premix::new().with_sodium_nitrite(Level::percent(50.0).unwrap()).unwrap();
    let both = both.with_potassium_nitrite(Level::percent(50.0).unwrap()).unwrap();
    // 2.2 g of it in 10 kg: 110 of the sodium salt and 110 of the potassium salt, which
    // counts as 89: 199 under the 200 of a dry cure. 2.3 g is 208.
    let nitrite = |g| of(&rubbed(Food::Bacon, Some(Method::DryRub), both, g), "cure/bacon-nitrite");
    assert_eq!(nitrite(2.2).verdict, Verdict::Meets);
    assert_eq!(nitrite(2.3).verdict, Verdict::Breaks);
}

#[test]
fn bacon_without_a_method_is_unproven_by_its_own_rule_and_still_judged_for_nitrate() {
    let nitrate = Premix::new().with_sodium_nitrate(Level::percent(4.0).unwrap()).unwrap();
    let found = rubbed(Food::Bacon, None, nitrate, 10.0);
    assert_eq!(of(&found, "cure/bacon-nitrite").verdict, Verdict::Unproven);
    assert_eq!(of(&found, "cure/bacon-nitrate").verdict, Verdict::Breaks);
    let other = rubbed(Food::WholeMeat, None, nitrate, 10.0);
    assert_eq!(of(&other, "cure/ingoing-nitrate").verdict, Verdict::Unproven);
    assert!(other.iter().all(|finding| !finding.rule.id.contains("bacon")));
}

#[rstest]
#[case::whole_poultry(Food::Poultry, Verdict::Unproven)]
#[case::whole_meat(Food::WholeMeat, Verdict::Meets)]
fn nitrate_has_a_row_for_meat_and_none_for_whole_poultry(
    #[case] food: Food,
    #[case] verdict: Verdict,
) {
    let nitrate = Premix::new().with_sodium_nitrate(Level::percent(4.0).unwrap()).unwrap();
    let found = rubbed(food, Some(Method::DryRub), nitrate, 10.0);
    assert_eq!(of(&found, "cure/ingoing-nitrate").verdict, verdict);
    let nitrite = Premix::new().with_sodium_nitrite(Level::percent(6.25).unwrap()).unwrap();
    let found = rubbed(food, Some(Method::DryRub), nitrite, 10.0);
    assert_eq!(of(&found, "cure/ingoing-nitrite").verdict, Verdict::Meets);
    assert!(found.iter().all(|finding| finding.rule.id != "cure/ingoing-nitrate"));
}

#[test]
fn a_premix_without_a_weight_is_unproven_in_what_its_label_names_alone() {
    let premix = |potassium: f64| {
        let nitrate = Premix::new().with_sodium_nitrate(Level::percent(5.0).unwrap()).unwrap();
        nitrate.with_potassium_nitrite(Level::percent(potassium).unwrap()).unwrap()
    };
    let report_of = |food, potassium| {
        let place = Place::default();
        let cures = [Cure { mass: None, strength: Some(premix(potassium)), place }];
        findings(&Batch {
            method: Some(if food == Food::Bacon { Method::DryRub } else { Method::Ground }),
            green: Range::exactly(GreenWeight::new(kilograms(10.0)).unwrap()).ok(),
            scaled: true,
            cures: &cures,
            ..Batch::of(food)
        })
    };
    let found = report_of(Food::GroundMeat, 0.0);
    assert_eq!(of(&found, "cure/ingoing-nitrate").verdict, Verdict::Unproven);
    assert!(found.iter().all(|finding| finding.rule.id != "cure/ingoing-nitrite"));
    let found = report_of(Food::Bacon, 5.0);
    assert_eq!(of(&found, "cure/bacon-nitrite").verdict, Verdict::Unproven);
}

// 120 mg/kg by 10 percent of a pickle of 2 kg: 120 × 2 / 0.1 is 2.4 g of the pure salt, 48 g of 5 %.
#[test]
fn the_mend_of_a_pickle_goes_by_its_weight() {
    let premix = Premix::new().with_sodium_nitrite(Level::percent(5.0).unwrap()).unwrap();
    let mass = Some(Weighed { mass: grams(60.0), scale: Some(grams(0.1)) });
    let cures = [Cure { mass, strength: Some(premix), place: Place::default() }];
    // The rest of the pickle is 1952 g: with the 48 that are right it is 2 kg.
    let weight = PickleWeight::new(kilograms(1.952) + grams(60.0)).unwrap();
    let found = findings(&Batch {
        method: Some(Method::Pumped),
        green: Range::exactly(GreenWeight::new(kilograms(10.0)).unwrap()).ok(),
        scaled: true,
        cures: &cures,
        pickle: Some(Pickle {
            weight: Range::exactly(weight).unwrap(),
            taken_up: Range::exactly(Pump::new(0.1).unwrap()).ok(),
            equilibrium: None,
        }),
        ..Batch::of(Food::Bacon)
    });
    let finding = of(&found, "cure/bacon-nitrite");
    assert_eq!(finding.verdict, Verdict::Breaks);
    let Some(Mend::Weigh(mass)) = finding.mend else { panic!("{finding:?}") };
    assert!((mass.value - 0.048).abs() < 1e-9, "{mass:?}");
}

/// A premix of 6.25 % in two kilograms of pickle beside it, pumped between two shares.
fn strays(grams_of_it: f64, [low, high]: [f64; 2]) -> Finding {
    let premix = Premix::new().with_sodium_nitrite(Level::percent(6.25).unwrap()).unwrap();
    let mass = Some(Weighed { mass: grams(grams_of_it), scale: Some(grams(0.001)) });
    let cures = [Cure { mass, strength: Some(premix), place: Place::default() }];
    let weight = PickleWeight::new(kilograms(2.0) + grams(grams_of_it)).unwrap();
    let found = findings(&Batch {
        method: Some(Method::Pumped),
        green: Range::exactly(GreenWeight::new(kilograms(10.0)).unwrap()).ok(),
        scaled: true,
        cures: &cures,
        pickle: Some(Pickle {
            weight: Range::exactly(weight).unwrap(),
            taken_up: Range::new(Pump::new(low).unwrap(), Pump::new(high).unwrap()).ok(),
            equilibrium: None,
        }),
        sugar_percent: Some(1.0),
        culture: Some(true),
        ..Batch::of(Food::Bacon)
    });
    of(&found, "cure/bacon-nitrite")
}

// 40 to 80: 24.5 g of 6.25 % is 76 mg/kg by a tenth, and 13.5 g is 42.
#[rstest]
#[case::perhaps_too_much(24.5)]
#[case::perhaps_too_little(13.5)]
fn a_window_is_mended_to_its_middle(#[case] written: f64) {
    let finding = strays(written, [0.09, 0.11]);
    assert_eq!(finding.verdict, Verdict::Unproven);
    let Some(Mend::Weigh(mass)) = finding.mend else { panic!("{finding:?}") };
    assert_eq!(strays(mass.value * 1000.0, [0.09, 0.11]).verdict, Verdict::Meets);
    // Its page says that it is not about pumped bacon.
    assert!(finding.rows[1].is_none(), "{finding:?}");
}

#[test]
fn a_pump_that_strays_wider_than_the_window_has_no_mend() {
    let finding = strays(19.0, [0.05, 0.15]);
    assert_eq!((finding.verdict, finding.mend), (Verdict::Unproven, None));
}
