//! What would mend a cure: computed by the inverse of the formula that found it.

use greenweight::authority::Authority;
use greenweight::cure::{
    Addition, Additive, Batch, Cure, GreenWeight, Level, Method, Pickle, PickleWeight, Premix,
    Pump, Weighed, check,
};
use greenweight::finding::{Finding, Measure, Mend, Place, Verdict};
use greenweight::food::Food;
use greenweight::range::Range;
use greenweight::units::{Mass, grams, kilograms};
use rstest::rstest;

const PLACE: Place = Place { start: 0, end: 0 };

fn nitrite(percent: f64) -> Premix {
    Premix::new().with_sodium_nitrite(Level::percent(percent).unwrap()).unwrap()
}

fn nitrate(percent: f64) -> Premix {
    Premix::new().with_sodium_nitrate(Level::percent(percent).unwrap()).unwrap()
}

fn cure(premix: Premix, mass: f64, scale: Option<f64>) -> Cure {
    let mass = Some(Weighed { mass: grams(mass), scale: scale.map(grams) });
    Cure { mass, strength: Some(premix), place: PLACE }
}

/// Ten kilograms of meat.
fn batch<'a>(food: Food, method: Method, cures: &'a [Cure]) -> Batch<'a> {
    Batch {
        scaled: true,
        method: Some(method),
        green: Range::exactly(GreenWeight::new(kilograms(10.0)).unwrap()).ok(),
        cures,
        ..Batch::of(food)
    }
}

fn of(batch: &Batch<'_>, rule: &str) -> Finding {
    let mut findings = Vec::new();
    check(batch, Authority::UsFsis, None, &mut |finding| findings.push(finding));
    *findings.iter().find(|finding| finding.rule.id == rule).unwrap()
}

fn in_grams(mass: Mass) -> f64 {
    mass.value * 1000.0
}

fn nominal(finding: &Finding) -> f64 {
    let Some(Measure::Level { mg_per_kg, .. }) = finding.nominal else { panic!("{finding:?}") };
    mg_per_kg
}

// 156.25 mg/kg of 10 kg is 25 g of a 6.25 % premix.
#[test]
fn one_premix_is_mended_by_its_weight_even_beside_one_that_brings_something_else() {
    let cures = [cure(nitrite(6.25), 30.0, Some(0.1)), cure(nitrate(4.0), 10.0, Some(0.1))];
    let finding = of(&batch(Food::GroundMeat, Method::Ground, &cures), "cure/ingoing-nitrite");
    let Some(Mend::UseAtMost(most)) = finding.mend else { panic!("{finding:?}") };
    assert!((in_grams(most) - 24.9).abs() < 1e-9, "{most:?}");
}

#[test]
fn two_premixes_are_mended_by_their_share() {
    let cures = [cure(nitrite(6.25), 20.0, Some(1e-6)), cure(nitrite(6.25), 30.0, Some(1e-6))];
    let finding = of(&batch(Food::GroundMeat, Method::Ground, &cures), "cure/ingoing-nitrite");
    let Some(Mend::UseShare(share)) = finding.mend else { panic!("{finding:?}") };
    assert!((share - 0.5).abs() < 1e-6, "{share}");
    // What may be over on a coarse scale, and is under by its weights, has a share under one too.
    let cures = [cure(nitrite(6.25), 12.0, Some(1.0)), cure(nitrite(6.25), 12.5, Some(1.0))];
    let finding = of(&batch(Food::GroundMeat, Method::Ground, &cures), "cure/ingoing-nitrite");
    assert_eq!(finding.verdict, Verdict::Unproven);
    let Some(Mend::UseShare(share)) = finding.mend else { panic!("{finding:?}") };
    assert!((share - 25.0 / 25.5).abs() < 1e-9, "{share}");
}

#[test]
fn nothing_that_is_not_there_needs_a_scale() {
    // A premix of nitrate alone in dry-cured bacon: it breaks, and of nitrite there is none.
    let cures = [cure(nitrate(4.0), 10.0, None)];
    let bacon = batch(Food::Bacon, Method::DryRub, &cures);
    assert_eq!(of(&bacon, "cure/bacon-nitrite").verdict, Verdict::Meets);
    assert_eq!(of(&bacon, "cure/bacon-nitrate").verdict, Verdict::Breaks);
    let unscaled = Batch { scaled: false, ..bacon };
    assert_eq!(of(&unscaled, "cure/bacon-nitrite").verdict, Verdict::Meets);
}

#[test]
fn meat_on_no_stated_scale_proves_nothing_whatever_the_premix_is_weighed_on() {
    let cures = [cure(nitrite(6.25), 20.0, Some(0.1))];
    let unscaled = Batch { scaled: false, ..batch(Food::GroundMeat, Method::Ground, &cures) };
    assert_eq!(of(&unscaled, "cure/ingoing-nitrite").verdict, Verdict::Unproven);
}

/// The same in a pickle of `kg` kilograms.
fn immersed<'a>(cures: &'a [Cure], kg: f64, pick_up: f64) -> Batch<'a> {
    let pickle = Pickle {
        weight: Range::exactly(PickleWeight::new(kilograms(kg)).unwrap()).unwrap(),
        taken_up: Range::exactly(Pump::new(pick_up).unwrap()).ok(),
        equilibrium: None,
    };
    Batch { pickle: Some(pickle), ..batch(Food::WholeMeat, Method::Immersion, cures) }
}

// Two hundred mg/kg. By pick-up: m s u / P; at rest: m s / (W + P); P without the premix taken out.
#[rstest]
#[case::at_rest_is_the_larger(10.0, 0.05)]
#[case::by_pick_up_is_the_larger(1.0, 0.5)]
fn an_immersion_that_may_be_either_is_judged_by_the_larger_level_and_mended_by_the_smaller_weight(
    #[case] kg: f64,
    #[case] pick_up: f64,
) {
    let level = |grams: f64| {
        let pickle = kg - (100.0 - grams) / 1000.0;
        (grams * 62.5 / pickle * pick_up).max(grams * 62.5 / (10.0 + pickle))
    };
    let cures = [cure(nitrite(6.25), 100.0, Some(1e-6))];
    let finding = of(&immersed(&cures, kg, pick_up), "cure/ingoing-nitrite");
    assert!((nominal(&finding) - level(100.0)).abs() < 1e-6, "{finding:?}");
    let Some(Mend::UseAtMost(most)) = finding.mend else { panic!("{finding:?}") };
    let mended = level(in_grams(most));
    assert!(mended <= 200.0 && mended > 199.0, "{mended}");
}

// A kilogram of pickle at a tenth of pump. In the 940 g beside the premix, m × 6250 / (940 + m) is
// 120 at 18.40 g; in the 970 g beside the ascorbate, m × 100 000 / (970 + m) is 550 at 5.36 g.
#[rstest]
#[case::a_fine_scale(0.01, 18.4, 5.36)]
#[case::half_grams(0.5, 18.5, 5.5)]
#[case::two_grams(2.0, 18.0, 6.0)]
fn a_prescribed_amount_is_mended_to_the_nearest_step(
    #[case] scale: f64,
    #[case] premix: f64,
    #[case] ascorbate: f64,
) {
    let cures = [cure(nitrite(6.25), 60.0, Some(scale))];
    let additions = [Addition {
        additive: Additive::SodiumErythorbate,
        mass: Some(Weighed { mass: grams(30.0), scale: Some(grams(scale)) }),
        hydrated: false,
        place: PLACE,
    }];
    let bacon = Batch {
        additions: &additions,
        pickle: Some(Pickle {
            weight: Range::new(
                PickleWeight::new(kilograms(0.9)).unwrap(),
                PickleWeight::new(kilograms(1.1)).unwrap(),
            )
            .unwrap(),
            taken_up: Range::new(Pump::new(0.09).unwrap(), Pump::new(0.11).unwrap()).ok(),
            equilibrium: None,
        }),
        ..batch(Food::Bacon, Method::Pumped, &cures)
    };
    for (rule, expected) in [("cure/bacon-nitrite", premix), ("cure/bacon-ascorbate", ascorbate)] {
        let finding = of(&bacon, rule);
        let Some(Mend::Weigh(mass)) = finding.mend else { panic!("{finding:?}") };
        assert!((in_grams(mass) - expected).abs() < 1e-9, "{rule}: {mass:?}");
    }
}

#[test]
fn two_premixes_of_a_pickle_are_mended_by_the_share_that_the_lighter_pickle_takes() {
    let weighed =
        |share: f64| [60.0, 40.0].map(|grams| cure(nitrite(6.25), grams * share, Some(1e-6)));
    let pumped = |cures: &[Cure], kg: f64| {
        let batch = Batch { method: Some(Method::Pumped), ..immersed(cures, kg, 0.05) };
        of(&batch, "cure/ingoing-nitrite")
    };
    let finding = pumped(&weighed(1.0), 1.0);
    let Some(Mend::UseShare(share)) = finding.mend else { panic!("{finding:?}") };
    let less = share * (1.0 - 1e-6);
    let mended = pumped(&weighed(less), 0.9 + 0.1 * less);
    assert_eq!(mended.verdict, Verdict::Meets, "{share}");
    assert!(nominal(&mended) > 199.9, "{mended:?}");
}
