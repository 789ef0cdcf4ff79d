//! Immersion, by both methods of the handbook (Processing Inspectors' Calculations
//! Handbook, FSIS Directive 7620.3, chapter 3; the methods from memory).

use greenweight::authority::Authority;
use greenweight::cure::{
    Batch, Cure, GreenWeight, Level, Method, Pickle, PickleWeight, Premix, PremixMass, Pump,
    SodiumNitrite, Weighed, check, equilibrated, immersed, largest_at_equilibrium,
    largest_in_pickle,
};
use greenweight::finding::{Finding, Mend, Place, Verdict};
use greenweight::food::Food;
use greenweight::range::Range;
use greenweight::units::{grams, kilograms};
use proptest::prelude::*;
use rstest::rstest;

/// A tub of 10 kg pickle with `nitrite` grams of nitrite in a premix of 5 %, and 10 kg of meat.
fn tub(nitrite: f64, pick_up: Option<f64>, equilibrium: Option<bool>, bacon: bool) -> Finding {
    let premix = Premix::new().with_sodium_nitrite(Level::percent(5.0).unwrap()).unwrap();
    let cures = [Cure {
        mass: Some(Weighed { mass: grams(nitrite * 20.0), scale: Some(grams(0.001)) }),
        strength: Some(premix),
        place: Place::default(),
    }];
    let taken_up = pick_up.map(|u| Range::exactly(Pump::new(u).unwrap()).unwrap());
    let weight = Range::exactly(PickleWeight::new(kilograms(10.0)).unwrap()).unwrap();
    let batch = Batch {
        scaled: true,
        method: Some(Method::Immersion),
        green: Range::exactly(GreenWeight::new(kilograms(10.0)).unwrap()).ok(),
        cures: &cures,
        pickle: Some(Pickle { weight, taken_up, equilibrium }),
        ..Batch::of(if bacon { Food::Bacon } else { Food::WholeMeat })
    };
    let mut findings = Vec::new();
    check(&batch, Authority::UsFsis, None, &mut |finding| findings.push(finding));
    findings[0]
}

#[rstest]
#[case::short_cure(Some(0.05), Some(false), Verdict::Meets)]
#[case::long_cure(None, Some(true), Verdict::Breaks)]
#[case::which_is_not_said(Some(0.05), None, Verdict::Unproven)]
#[case::nothing_is_said(None, None, Verdict::Unproven)]
fn one_tub_is_50_by_pick_up_and_500_at_equilibrium(
    #[case] pick_up: Option<f64>,
    #[case] equilibrium: Option<bool>,
    #[case] verdict: Verdict,
) {
    // 10 g of nitrite: 50 mg/kg by the first method, 500 by the second, against 200.
    assert_eq!(tub(10.0, pick_up, equilibrium, false).verdict, verdict);
}

#[test]
fn when_the_method_is_not_said_the_range_holds_both_and_the_mend_is_safe_by_both() {
    let finding = tub(10.0, Some(0.05), None, false);
    let found = finding.found.unwrap();
    assert!(
        format!("{:?}", found.low()).contains("49.9")
            && format!("{:?}", found.high()).contains("500.0")
    );
    let Some(Mend::UseAtMost(most)) = finding.mend else { panic!("{finding:?}") };
    assert_eq!(tub(most.value * 1000.0 / 20.0, Some(0.05), None, false).verdict, Verdict::Meets);
}

#[test]
fn immersed_bacon_is_held_to_120_and_not_to_200() {
    // 3 g in 20 kg at equilibrium is 150 mg/kg.
    assert_eq!(tub(3.0, None, Some(true), false).verdict, Verdict::Meets);
    assert_eq!(tub(3.0, None, Some(true), true).verdict, Verdict::Breaks);
}

proptest! {
    #[test]
    fn the_largest_mass_in_a_pickle_or_a_tub_never_passes_the_ceiling(
        ceiling in 1.0..1000.0_f64, strength in 100.0..1e6_f64,
        pickle in 0.1..1000.0_f64, green in 0.1..1000.0_f64, pump in 0.001..1.0_f64,
    ) {
        let ceiling = Level::<SodiumNitrite, _>::new(ceiling).unwrap();
        let strength = Level::new(strength).unwrap();
        let pickle = PickleWeight::new(kilograms(pickle)).unwrap();
        let green = GreenWeight::new(kilograms(green)).unwrap();
        let pump = Pump::new(pump).unwrap();
        let one = largest_in_pickle(ceiling, strength, pickle, pump).unwrap();
        let level = immersed(one, strength, pickle, pump);
        prop_assert!(level <= ceiling && level.mg_per_kg() > ceiling.mg_per_kg() * (1.0 - 1e-14));
        let two = largest_at_equilibrium(ceiling, strength, green, pickle).unwrap();
        let level = equilibrated(two, strength, green, pickle).as_ingoing();
        prop_assert!(level <= ceiling && level.mg_per_kg() > ceiling.mg_per_kg() * (1.0 - 1e-14));
    }

    #[test]
    fn at_equilibrium_more_pickle_or_more_meat_never_raises_the_level(
        grams_in in 0.1..100.0_f64, pickle in 0.1..100.0_f64, green in 0.1..100.0_f64, more in 0.0..10.0_f64,
    ) {
        let premix = PremixMass::new(grams(grams_in)).unwrap();
        let pure = Level::<SodiumNitrite, _>::percent(100.0).unwrap();
        let level = |green: f64, pickle: f64| {
            let green = GreenWeight::new(kilograms(green)).unwrap();
            equilibrated(premix, pure, green, PickleWeight::new(kilograms(pickle)).unwrap())
        };
        prop_assert!(level(green + more, pickle) <= level(green, pickle));
        prop_assert!(level(green, pickle + more) <= level(green, pickle));
    }
}
