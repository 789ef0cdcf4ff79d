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

// Two hundred mg/kg. By pick-up: 200 P / (s u); at rest: 200 (W + P) / s.
#[rstest]
// Ten kilograms of pickle at 5 percent: 200 × 20 / 62500 is 64 g at rest, and far more by
// pick-up.
#[case::at_rest_is_the_smaller(10.0, 0.05, 64.0)]
// One kilogram of pickle at half: 200 / (0.5 × 62500) is 6.4 g by pick-up, and 35.2 at rest.
#[case::by_pick_up_is_the_smaller(1.0, 0.5, 6.4)]
fn an_immersion_that_may_be_either_is_judged_by_the_larger_level_and_mended_by_the_smaller_weight(
    #[case] kg: f64,
    #[case] pick_up: f64,
    #[case] most: f64,
) {
    let cures = [cure(nitrite(6.25), 100.0, Some(1e-6))];
    let finding = of(&immersed(&cures, kg, pick_up), "cure/ingoing-nitrite");
    let Some(Mend::UseAtMost(found)) = finding.mend else { panic!("{finding:?}") };
    assert!((in_grams(found) - most).abs() < 1e-4, "{found:?}");
    let by_pick_up = 100.0 * 62.5 / kg * pick_up;
    let at_rest = 100.0 * 62.5 / (10.0 + kg);
    assert!((nominal(&finding) - by_pick_up.max(at_rest)).abs() < 1e-6, "{finding:?}");
}

// 120 mg/kg in a kilogram of pickle at a tenth of pump is 1.2 g of nitrite: 19.2 g of a 6.25 %
// premix; 550 of ascorbate are 5.5 g. Each to the nearest step of its scale.
#[rstest]
#[case::a_fine_scale(0.01, 19.2, 5.5)]
#[case::half_grams(0.5, 19.0, 5.5)]
#[case::two_grams(2.0, 20.0, 6.0)]
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
