//! What general-purpose scientific libraries say, recorded from them: brine density from
//! CoolProp 8.0.0 (incompressible fluid MNA, aqueous sodium chloride after Melinder) and linear
//! programmes from SciPy 1.17.1 (`scipy.optimize.linprog`).

#![allow(clippy::approx_constant)] // a lot may cost 3.14

use greenweight::salt::Brine;
use greenweight::units::{Reading, Scale};
use rstest::rstest;

/// kg/m³ at 0, 10, 20 and 30 °C.
#[rstest]
#[case(2.0, [1015.21, 1014.31, 1012.47, 1009.68])]
#[case(5.0, [1038.14, 1036.44, 1033.97, 1030.74])]
#[case(8.0, [1061.23, 1058.82, 1055.8, 1052.17])]
#[case(10.0, [1076.77, 1073.94, 1070.58, 1066.7])]
#[case(12.0, [1092.44, 1089.23, 1085.57, 1081.46])]
#[case(15.0, [1116.24, 1112.53, 1108.47, 1104.05])]
#[case(18.0, [1140.38, 1136.28, 1131.88, 1127.18])]
#[case(20.0, [1156.67, 1152.35, 1147.76, 1142.91])]
#[case(22.0, [1173.1, 1168.6, 1163.85, 1158.86])]
fn the_density_of_a_brine_is_that_of_another_library(
    #[case] percent: f64,
    #[case] recorded: [f64; 4],
) {
    let brine = Brine::of_percent(percent).unwrap();
    for (celsius, recorded) in [0.0, 10.0, 20.0, 30.0].into_iter().zip(recorded) {
        let at = Reading::new(celsius, Scale::Celsius).unwrap();
        let found = brine.density_at(at).unwrap().value;
        // Two sets of measurements, and straight lines between rows: within 1.5 kg/m³.
        assert!((found - recorded).abs() < 1.5, "{percent} % at {celsius} °C: {found}, {recorded}");
    }
    let at_20 = brine.density().unwrap().value;
    assert!((at_20 - recorded[2]).abs() < 0.7, "{percent} %: {at_20}, {}", recorded[2]);
}

#[cfg(feature = "least-cost")]
mod least_cost {
    use greenweight::fat::{NoBlend, Offer, Wanted, cheapest};
    use greenweight::range::Range;
    use greenweight::units::kilograms;
    use rstest::rstest;

    /// A hundred kilograms between two fats, from lots with so much fat, cost and amount.
    #[rstest]
    #[case(&[81.1, 70.5, 22.6, 29.1, 79.0, 3.5], &[5.11, 4.99, 3.34, 2.52, 2.39, 2.27], &[46.7, 50.3, 53.2, 79.7, 67.6, 57.3], 29.8, 30.9, Some(233.384_531))]
    #[case(&[16.9, 56.3, 6.8, 6.1, 47.8], &[3.33, 5.59, 4.15, 3.57, 3.48], &[34.9, 20.7, 31.5, 61.5, 32.0], 20.5, 20.5, Some(346.329_583))]
    #[case(&[16.4, 26.3, 79.6, 47.4, 76.7], &[4.2, 4.71, 1.46, 3.71, 3.54], &[72.3, 41.7, 55.9, 23.6, 43.3], 19.8, 20.6, Some(425.238_585))]
    #[case(&[74.0, 36.0, 88.2, 54.3, 55.6, 58.5], &[4.38, 1.75, 3.2, 2.2, 3.01, 1.48], &[78.1, 32.9, 60.3, 38.0, 72.4, 59.7], 17.0, 21.2, None)]
    #[case(&[79.2, 43.7, 50.6, 31.0, 68.4, 5.2], &[2.86, 1.15, 1.61, 5.84, 4.29, 3.14], &[51.4, 72.4, 40.7, 55.4, 61.0, 41.3], 22.8, 26.6, Some(241.483_496))]
    #[case(&[16.1, 84.2, 3.5, 68.5, 73.5, 14.9], &[3.09, 5.08, 1.07, 4.14, 4.97, 3.57], &[63.6, 33.6, 31.9, 41.8, 30.8, 40.8], 29.2, 32.1, Some(278.866_141))]
    #[case(&[43.5, 57.6, 58.3, 19.0, 8.4], &[3.06, 4.82, 5.08, 4.65, 1.57], &[74.8, 68.1, 72.7, 51.4, 74.9], 15.7, 15.9, Some(202.901_282))]
    #[case(&[25.0, 24.6, 19.3, 52.3], &[1.19, 3.95, 1.83, 4.39], &[21.3, 38.6, 76.3, 52.3], 27.2, 30.5, Some(221.234_376))]
    #[case(&[56.1, 19.6, 53.0], &[1.2, 5.01, 5.8], &[71.2, 23.0, 40.3], 19.8, 20.4, None)]
    fn the_cheapest_blend_costs_what_another_solver_says(
        #[case] fat: &[f64],
        #[case] cost: &[f64],
        #[case] most: &[f64],
        #[case] low: f64,
        #[case] high: f64,
        #[case] recorded: Option<f64>,
    ) {
        let offers: Vec<_> = fat
            .iter()
            .zip(cost)
            .zip(most)
            .map(|((&fat, &cost), &most)| Offer {
                fat,
                protein: None,
                cost,
                least: kilograms(0.0),
                most: kilograms(most),
            })
            .collect();
        let wanted = Wanted {
            batch: Range::exactly(kilograms(100.0)).unwrap(),
            fat: Range::new(low, high).unwrap(),
            protein: None,
        };
        match (cheapest(&offers, &wanted), recorded) {
            (Ok(blend), Some(recorded)) => {
                assert!((blend.cost - recorded).abs() < 1e-5, "{} {recorded}", blend.cost);
                let sum: f64 = blend.masses.iter().map(|mass| mass.value).sum();
                assert!((sum - 100.0).abs() < 1e-9);
            }
            (Err(error), None) => assert_eq!(error, NoBlend::Infeasible),
            (found, recorded) => panic!("{found:?} {recorded:?}"),
        }
    }

    #[test]
    fn protein_that_is_wanted_must_be_said() {
        let offer = |protein| Offer {
            fat: 20.0,
            protein,
            cost: 1.0,
            least: kilograms(0.0),
            most: kilograms(10.0),
        };
        let wanted = Wanted {
            batch: Range::exactly(kilograms(5.0)).unwrap(),
            fat: Range::new(0.0, 30.0).unwrap(),
            protein: Range::new(15.0, 100.0).ok(),
        };
        let offers = [offer(Some(18.0)), offer(None)];
        assert_eq!(cheapest(&offers, &wanted), Err(NoBlend::ProteinMissing(1)));
        let lean_and_short = [offer(Some(18.0)), offer(Some(10.0))];
        let blend = cheapest(&lean_and_short, &wanted).unwrap();
        let protein = blend.masses[0].value * 18.0 + blend.masses[1].value * 10.0;
        assert!(protein / 5.0 >= 15.0 - 1e-9);
    }
}
