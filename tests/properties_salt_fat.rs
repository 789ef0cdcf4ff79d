//! Properties of salt, brines, water activity and blends.

use greenweight::cure::{Level, SodiumChloride};
use greenweight::fat::{
    Lot, Part, added_water, after_cooking, blend, change_in_cooking, share_of_first, to_add,
};
use greenweight::level::{OnFinishedWeight, OnGreenWeight};
use greenweight::range::Range;
use greenweight::salt::{
    Added, Brine, Loss, Moisture, Salometer, Tub, WATER_ACTIVITY, after_loss, for_water_phase,
    in_water_phase, mixed, moisture_after_loss, of_green, of_mix, plain_salt, salt_for,
    salt_of_mix, strengthen, water_activity, water_activity_by_short_formula, water_activity_of,
    weaken,
};
use greenweight::units::{Mass, Reading, Scale, kilograms};
use proptest::prelude::*;

fn config() -> ProptestConfig {
    ProptestConfig { cases: 1000, failure_persistence: None, ..ProptestConfig::default() }
}

fn brine(percent: f64) -> Brine {
    Brine::of_percent(percent).unwrap()
}

fn percent<B: greenweight::level::Basis>(percent: f64) -> Level<SodiumChloride, B> {
    Level::percent(percent).unwrap()
}

fn near(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-9 * a.abs().max(b.abs()).max(1.0)
}

fn parts() -> impl Strategy<Value = Vec<(f64, f64, f64, f64)>> {
    // Mass, its spread, fat, its spread.
    prop::collection::vec((0.01..50.0_f64, 0.0..0.2_f64, 0.0..90.0_f64, 0.0..10.0_f64), 1..6)
}

fn part(&(mass, spread, fat, error): &(f64, f64, f64, f64)) -> Part {
    let mass = Range::new(kilograms(mass), kilograms(mass * (1.0 + spread))).unwrap();
    Part { mass, lot: Lot::analysed(fat, error).unwrap() }
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn a_blend_stays_within_what_its_lots_span_and_holds_every_corner(
        lots in parts(), corners in prop::collection::vec((any::<bool>(), any::<bool>()), 6),
    ) {
        let parts: Vec<_> = lots.iter().map(part).collect();
        let found = blend(&parts).unwrap().fat;
        let least = parts.iter().map(|p| p.lot.fat.low()).fold(f64::INFINITY, f64::min);
        let most = parts.iter().map(|p| p.lot.fat.high()).fold(0.0, f64::max);
        prop_assert!(found.low() >= least - 1e-9 && found.high() <= most + 1e-9);
        // Fat is conserved: any masses and fats within the ranges give a mean within the range.
        let (mut sum, mut weight) = (0.0, 0.0);
        for (part, (heavy, fat)) in parts.iter().zip(corners) {
            let mass = if heavy { part.mass.high() } else { part.mass.low() }.value;
            sum += mass * if fat { part.lot.fat.high() } else { part.lot.fat.low() };
            weight += mass;
        }
        prop_assert!(found.contains(sum / weight), "{} not in {found:?}", sum / weight);
    }

    #[test]
    fn two_lots_reach_their_target_and_adding_is_the_same_blend(
        a in 0.0..100.0_f64, b in 0.0..100.0_f64, at in 0.001..1.0_f64, kg in 0.1..100.0_f64,
    ) {
        prop_assume!((a - b).abs() > 1e-3);
        let target = a * at + b * (1.0 - at);
        let share = share_of_first(a, b, target).unwrap();
        prop_assert!((share - at).abs() < 1e-6);
        prop_assert!((share * a + (1.0 - share) * b - target).abs() < 1e-9);
        let added = to_add(kilograms(kg), a, b, target).unwrap().value;
        prop_assert!(((kg * a + added * b) / (kg + added) - target).abs() < 1e-6);
        let beyond = a.max(b) + 1e-6;
        prop_assert!(beyond > 100.0 || share_of_first(a, b, beyond).is_err());
    }

    #[test]
    fn cooking_there_and_back_keeps_the_component(
        raw in 0.0..60.0_f64, change in -20.0..0.0_f64, left in 50.0..100.0_f64,
    ) {
        prop_assume!(raw + change >= 0.0 && 100.0 * (raw + change) / left <= 100.0);
        let cooked = after_cooking(raw, change, left).unwrap();
        prop_assert!(near(change_in_cooking(raw, cooked, left).unwrap(), change));
    }

    #[test]
    fn protein_that_is_not_of_the_meat_never_lowers_the_added_water(
        moisture in 0.0..80.0_f64, protein in 0.0..25.0_f64, other in 0.0..10.0_f64,
    ) {
        let without = added_water(moisture, protein, 0.0).unwrap();
        prop_assert!(added_water(moisture, protein, other).unwrap() >= without);
        prop_assert_eq!(added_water(moisture, protein, other.min(1.0)).unwrap(), without);
    }

    #[test]
    fn the_scales_of_a_brine_are_there_and_back(p in 0.0..26.0_f64) {
        let it = brine(p);
        let degrees = it.degrees(Salometer::STANDARD);
        prop_assert!(near(Brine::of_degrees(degrees, Salometer::STANDARD).unwrap().percent(), p));
        let water = it.grams_per_liter_of_water();
        prop_assert!(near(Brine::of_grams_per_liter_of_water(water).unwrap().percent(), p));
        let inside = it.grams_per_liter_of_brine().unwrap();
        let back = Brine::of_grams_per_liter_of_brine(inside).unwrap().percent();
        prop_assert!((back - p).abs() < 1e-9, "{} {}", back, p);
        // A litre of brine holds less salt than was put to a litre of water.
        prop_assert!(p == 0.0 || inside < water);
    }

    #[test]
    fn making_and_mending_a_brine_conserves_salt_and_water(
        kg in 0.1..1000.0_f64, low in 0.1..20.0_f64, more in 0.1..6.0_f64,
    ) {
        let (weak, strong) = (brine(low), brine(low + more));
        let mass = kilograms(kg);
        let salt = strengthen(mass, weak, strong).unwrap().value;
        prop_assert!(near((kg * low / 100.0 + salt) / (kg + salt), (low + more) / 100.0));
        let water = weaken(mass, strong, weak).unwrap().value;
        prop_assert!(near(kg * (low + more) / 100.0 / (kg + water), low / 100.0));
        prop_assert!(strengthen(mass, strong, weak).is_err() && weaken(mass, weak, strong).is_err());
        let made = Brine::of(salt_for(weak, mass).unwrap(), mass).unwrap();
        prop_assert!(near(made.percent(), low));
        let both = mixed(mass, weak, mass, strong).unwrap().percent();
        prop_assert!(near(both, low + more * 0.5));
    }

    #[test]
    fn the_salt_of_the_water_is_never_less_than_that_of_the_product(
        salt in 0.0..10.0_f64, moisture in 1.0..90.0_f64, loss in 0.0..0.4_f64,
    ) {
        let product: Level<SodiumChloride, OnFinishedWeight> = percent(salt);
        let water = Moisture::of_percent(moisture).unwrap();
        let phase = in_water_phase(product, water).unwrap();
        prop_assert!(phase.as_percent() >= salt);
        let back = for_water_phase(phase, water).unwrap();
        prop_assert!(near(back.as_percent(), salt));
        // Drying only raises both.
        let loss = Loss::new(loss).unwrap();
        let dried = after_loss(percent(salt), loss).unwrap();
        prop_assert!(dried.as_percent() >= salt);
        if let Ok(drier) = moisture_after_loss(water, loss) {
            prop_assume!(drier.percent() + dried.as_percent() <= 100.0 && drier.percent() > 0.0);
            let later = in_water_phase(dried, drier).unwrap();
            prop_assert!(later.as_percent() >= phase.as_percent() - 1e-9);
        }
    }

    #[test]
    fn salt_on_the_meat_and_on_the_mix_convert_there_and_back(
        salt in 0.0..10.0_f64, added in 0.0..3.0_f64, kg in 0.1..100.0_f64,
    ) {
        let added = Added::new(added).unwrap();
        let on_meat: Level<SodiumChloride, OnGreenWeight> = percent(salt);
        let mix = of_mix(on_meat, added);
        prop_assert!(mix.as_percent() <= salt);
        prop_assert!(near(of_green(mix, added).unwrap().as_percent(), salt));
        let grams = salt_of_mix(percent(salt), kilograms(kg)).unwrap().value;
        prop_assert!(near(100.0 * grams / (kg + grams), salt));
    }

    #[test]
    fn plain_salt_is_what_others_do_not_bring(target in 0.1..10.0_f64, shares in prop::collection::vec(0.0..0.3_f64, 0..3)) {
        let brought: Vec<Mass> = shares.iter().map(|share| kilograms(target * share)).collect();
        let sum: f64 = brought.iter().map(|mass| mass.value).sum();
        let plain = plain_salt(kilograms(target), brought).unwrap().value;
        prop_assert!(near(plain + sum, target));
        prop_assert!(plain_salt(kilograms(target), [kilograms(target * 1.01)]).is_err());
    }

    #[test]
    fn at_rest_the_salt_is_all_there_and_shared_as_the_water_is(
        meat in 0.1..10.0_f64, moisture in 1.0..80.0_f64, water in 0.0..10.0_f64, salt in 0.001..0.5_f64,
    ) {
        let tub = Tub {
            meat: kilograms(meat),
            moisture: Moisture::of_percent(moisture).unwrap(),
            water: kilograms(water),
        };
        let phase = tub.water_phase_at_rest(kilograms(salt)).unwrap();
        prop_assert!(phase.mg_per_kg() >= tub.at_rest(kilograms(salt)).unwrap().mg_per_kg());
        prop_assert!(near(tub.salt_for(phase).unwrap().value, salt));
        let inside = tub.salt_in_meat(kilograms(salt)).unwrap().value;
        prop_assert!(inside <= salt * (1.0 + 1e-12));
        // The water in the meat is as salty as all of it.
        let of_meat = inside / (inside + meat * moisture / 100.0);
        prop_assert!(near(of_meat * 100.0, phase.as_percent()));
    }

    #[test]
    fn each_reckoning_of_the_water_activity_is_off_the_way_it_says(p in 0.01..25.9_f64) {
        let phase = percent(p);
        let bound = water_activity(phase).unwrap().value();
        let middle = water_activity_of(brine(p)).unwrap();
        // The bound of the table is above the middle of the models, by less than a row of it.
        prop_assert!(bound >= middle - 1e-9, "{} {}", bound, middle);
        prop_assert!(bound - middle < 0.012);
        if p <= 12.0 {
            let short = water_activity_by_short_formula(phase).unwrap().value();
            prop_assert!(short >= middle - 1e-4 && short - middle < 0.001, "{} {}", short, middle);
        } else {
            prop_assert!(water_activity_by_short_formula(phase).is_err());
        }
        // More salt never reads wetter.
        prop_assert!(water_activity(percent(p + 0.1)).unwrap().value() <= bound);
    }

    #[cfg(feature = "recipe")]
    #[test]
    fn a_recipe_scaled_by_one_and_then_another_is_scaled_by_both(
        a in 0.05..20.0_f64, b in 0.05..20.0_f64, masses in prop::collection::vec(0.001..50.0_f64, 1..5),
    ) {
        let recipe = unscaled_recipe(&masses);
        let in_two = recipe.times(a).unwrap().recipe.times(b).unwrap().recipe;
        let at_once = recipe.times(a * b).unwrap().recipe;
        let (first, second) = (weights(&in_two), weights(&at_once));
        prop_assert!(first.iter().zip(&second).all(|(x, y)| near(*x, *y)));
        // Every share is kept.
        let (before, after) = (weights(&recipe), weights(&at_once));
        let sum = |of: &[f64]| of.iter().sum::<f64>();
        for (x, y) in before.iter().zip(&after) {
            prop_assert!(near(x / sum(&before), y / sum(&after)));
        }
    }

    #[cfg(feature = "recipe")]
    #[test]
    fn rounding_to_a_scale_never_adds_to_a_curing_premix(grams in 1.0..100.0_f64, times in 0.1..30.0_f64) {
        use greenweight::recipe::Kind;
        let mut recipe = unscaled_recipe(&[grams / 1000.0]);
        recipe.instruments.scale = Some(kilograms(0.001));
        for (kind, may_grow) in [(Kind::CuringPremix, false), (Kind::Salt, true)] {
            recipe.components[0].ingredients[0].kind = kind;
            let scaled = weights(&recipe.times(times).unwrap().recipe)[0];
            let exact = grams / 1000.0 * times;
            let step = if may_grow { 0.000_5 } else { 0.001 };
            prop_assert!((scaled - exact).abs() <= step + 1e-12);
            prop_assert!(may_grow || exact < 0.001 || scaled <= exact + 1e-12);
        }
    }

    #[test]
    fn a_brine_that_dissolves_cold_dissolves_warm(p in 20.0..28.0_f64, cold in 32.2..200.0_f64, warmer in 0.0..20.0_f64) {
        let at = |fahrenheit| Reading::new(fahrenheit, Scale::Fahrenheit).unwrap();
        let it = brine(p);
        if it.dissolves_at(at(cold)).unwrap() {
            prop_assert!(it.dissolves_at(at(cold + warmer)).unwrap());
        }
    }
}

#[test]
fn the_short_formula_and_the_equation_meet_every_row_within_their_printed_error() {
    for row in &WATER_ACTIVITY {
        let tabled = row.value;
        if let Ok(found) = water_activity_of(brine(tabled.percent)) {
            let error = (found - tabled.activity).abs();
            assert!(error <= tabled.spread + 1e-4, "{} %: {found}", tabled.percent);
        }
        if tabled.percent <= 12.0 {
            let short = water_activity_by_short_formula(percent(tabled.percent)).unwrap().value();
            let error = short - tabled.activity;
            assert!(
                (0.0001 - 1e-4..=0.0006 + 1e-4).contains(&error),
                "{} %: {error}",
                tabled.percent
            );
        }
    }
}

#[test]
fn what_is_outside_a_table_is_refused() {
    let at = |celsius| Reading::new(celsius, Scale::Celsius).unwrap();
    assert!(brine(27.0).density().is_err());
    assert!(brine(23.4).freezing_depression().is_err());
    assert!(brine(10.0).density_at(at(51.0)).is_err());
    assert!(brine(0.2).density_at(at(20.0)).is_err());
    assert!(Brine::saturated_at(at(-22.0)).is_err());
    assert!(water_activity(percent(26.1)).is_err());
    assert!(water_activity_of(brine(26.4)).is_err());
    for nonsense in [-1.0, 101.0, f64::NAN, f64::INFINITY] {
        assert!(Brine::of_percent(nonsense).is_err());
        assert!(Lot::labelled(nonsense).is_err());
        assert!(Loss::new(nonsense).is_err());
        assert!(Moisture::of_percent(nonsense).is_err());
    }
    assert!(blend(&[]).is_err());
    assert!(Brine::of(kilograms(0.0), kilograms(0.0)).is_err());
}

/// A recipe of so many ingredients on a scale that is not stated, so that nothing is rounded.
#[cfg(feature = "recipe")]
fn unscaled_recipe(masses: &[f64]) -> greenweight::recipe::Recipe<'static> {
    use greenweight::food::Food;
    use greenweight::recipe::{Component, Ingredient, Kind, Recipe};
    let ingredients =
        masses.iter().map(|&kg| Ingredient::new("x", Kind::Other, kilograms(kg))).collect();
    Recipe {
        components: vec![Component { ingredients, ..Component::new("x", Food::Sauce) }],
        ..Recipe::new("Invented", [])
    }
}

#[cfg(feature = "recipe")]
fn weights(recipe: &greenweight::recipe::Recipe<'_>) -> Vec<f64> {
    let weighed = |amount| match amount {
        Some(greenweight::units::Amount::Weighed(mass)) => mass.value,
        other => panic!("{other:?}"),
    };
    recipe.components[0].ingredients.iter().map(|i| weighed(i.amount)).collect()
}

#[test]
fn as_many_of_a_measure_as_its_row_prints_weigh_what_it_prints() {
    use greenweight::fat::MEASURES;
    use greenweight::units::grams;
    let odd = MEASURES.iter().filter(|row| (row.value.amount - 1.0).abs() > 0.01).count();
    assert!(odd > 3, "rows of half a spoon and of two slices are among them");
    for row in &MEASURES {
        let measure = &row.value;
        let weight = |count: f64| measure.weight(count).unwrap();
        assert!(weight(measure.amount).contains(grams(measure.grams)), "{measure:?}");
        // Some prints are of one or two figures: thrice as many are within their rounding of thrice as much.
        let thrice = weight(3.0 * measure.amount);
        assert!(thrice.contains(grams(3.0 * measure.grams)), "{measure:?}: {thrice:?}");
        assert!(weight(0.0).contains(grams(0.0)));
    }
    assert!(MEASURES[0].value.weight(-1.0).is_err());
}

#[test]
fn water_activities_together_are_their_product_and_none_is_more_than_one() {
    use greenweight::salt::water_activity_together;
    let together = water_activity_together([0.9, 0.8]).unwrap();
    assert!((together - 0.72).abs() < 1e-15);
    assert!((water_activity_together([]).unwrap() - 1.0).abs() < f64::EPSILON, "water alone");
    for wrong in [-0.1, 1.1, f64::NAN] {
        assert!(water_activity_together([0.9, wrong]).is_err());
    }
}

#[cfg(feature = "recipe")]
#[test]
fn a_volume_is_scaled_as_a_weight_is_and_is_noted() {
    use greenweight::recipe::Recipe;
    use greenweight::units::Amount;
    let text = "title = \"Invented\"\nheld_to = [\"us-consumer\"]\nmeasures = \"US\"\n[[component]]\nname = \"a\"\nfood = \"sauce\"\n[[component.ingredient]]\nname = \"water\"\nkind = \"water\"\namount = \"2 cups\"\n";
    let recipe = Recipe::read(text).unwrap();
    let scaled = recipe.times(3.0).unwrap();
    let volume = |recipe: &Recipe<'_>| match recipe.components[0].ingredients[0].amount {
        Some(Amount::ByVolume(volume)) => volume.value,
        other => panic!("{other:?}"),
    };
    assert!(near(volume(&scaled.recipe), 3.0 * volume(&recipe)));
}
