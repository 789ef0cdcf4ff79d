//! Properties that hold for every input, with exact rational numbers as the judge.

use std::cmp::Ordering;

use greenweight::cite::Date;
use greenweight::cook::{FSIS_MEAT_DWELL, dwell_row};
use greenweight::cure::{
    CureError, GreenWeight, InPremix, Level, NitriteIon, NitriteSalts, OnGreenWeight, Premix,
    PremixMass, SodiumChloride, SodiumNitrite, US_INGOING_NITRITE, ingoing, ingoing_between,
    largest_premix, largest_reading, premix_for_nitrite_and_salt, premix_window, skin_free,
    smallest_premix,
};
use greenweight::finding::{Limit, Verdict};
use greenweight::range::Range;
use greenweight::store::{COLD_FOOD, chart_row};
use greenweight::units::{
    Mass, Reading, Scale, grams, kilograms, mass, ounces, pounds, read_tolerance,
};
use num_rational::BigRational;
use num_traits::Zero;
use proptest::prelude::*;

type Ingoing = Level<SodiumNitrite, OnGreenWeight>;

fn exact(value: f64) -> BigRational {
    BigRational::from_float(value).expect("finite")
}

/// The point `thousandths` of the way from the lower to the upper end, exactly.
fn inside(range: &Range<f64>, thousandths: u16) -> BigRational {
    let share = BigRational::new(thousandths.into(), 1000.into());
    exact(range.low()) + (exact(range.high()) - exact(range.low())) * share
}

fn holds(range: &Range<f64>, value: &BigRational) -> bool {
    range.low().is_finite()
        && range.high().is_finite()
        && range.low() <= range.high()
        && exact(range.low()) <= *value
        && *value <= exact(range.high())
}

/// How many `f64` lie between two positive numbers.
fn ulps(a: f64, b: f64) -> u64 {
    a.to_bits().abs_diff(b.to_bits())
}

fn ranges() -> impl Strategy<Value = Range<f64>> {
    let size = prop_oneof![-1.0..1.0_f64, -1e3..1e3_f64, -1e9..1e9_f64, Just(0.0)];
    (size, prop_oneof![Just(0.0), 0.0..1e-9_f64, 0.0..1e3_f64])
        .prop_map(|(low, width)| Range::new(low, low + width).unwrap())
}

fn level(mg_per_kg: f64) -> Ingoing {
    Level::new(mg_per_kg).unwrap()
}

fn as_weighed(mg_per_kg: f64) -> Level<NitriteSalts, OnGreenWeight> {
    Level::new(mg_per_kg).unwrap()
}

fn of_premix(mg_per_kg: f64) -> Level<SodiumNitrite, InPremix> {
    Level::new(mg_per_kg).unwrap()
}

fn green(kg: f64) -> GreenWeight {
    GreenWeight::new(kilograms(kg)).unwrap()
}

fn premix(kg: f64) -> PremixMass {
    PremixMass::new(kilograms(kg)).unwrap()
}

/// Nothing is written into the tree: a failing input is printed.
fn config() -> ProptestConfig {
    ProptestConfig { cases: 1000, failure_persistence: None, ..ProptestConfig::default() }
}

prop_compose! {
    fn batches()(
        ceiling in prop_oneof![0.01..2500.0_f64, Just(156.25), Just(625.0)],
        // No weaker than that a premix for the heaviest batch is under a thousand tonnes, which is
        // the most that is accepted.
        strength in prop_oneof![300.0..1e6_f64, Just(62_500.0), Just(5_000.0)],
        green in prop_oneof![0.01..10.0_f64, 10.0..1e5_f64],
    ) -> (f64, f64, f64) { (ceiling, strength, green) }
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn a_sum_a_difference_and_a_product_of_ranges_hold_the_true_one(
        a in ranges(), b in ranges(), i in 0..=1000_u16, j in 0..=1000_u16,
    ) {
        let (x, y) = (inside(&a, i), inside(&b, j));
        prop_assert!(holds(&a.plus(b).unwrap(), &(&x + &y)));
        prop_assert!(holds(&a.minus(b).unwrap(), &(&x - &y)));
        prop_assert!(holds(&a.times(b).unwrap(), &(&x * &y)));
    }

    #[test]
    fn a_quotient_of_ranges_holds_the_true_one_unless_the_divisor_may_be_zero(
        a in ranges(), b in ranges(), i in 0..=1000_u16, j in 0..=1000_u16,
    ) {
        let (x, y) = (inside(&a, i), inside(&b, j));
        match a.over::<f64, f64>(b) {
            Ok(quotient) => {
                prop_assert!(!b.contains(0.0) && !y.is_zero());
                prop_assert!(holds(&quotient, &(x / y)));
            }
            Err(_) => prop_assert!(b.contains(0.0) || b.low().abs().min(b.high().abs()) < 1e-290),
        }
    }

    #[test]
    fn what_a_scale_shows_is_among_what_the_mass_may_be(
        shown in 0.0..1e4_f64, division in 1e-6..1.0_f64,
    ) {
        let range = Range::weighed(kilograms(shown), kilograms(division)).unwrap();
        prop_assert!(range.contains(kilograms(shown)));
        prop_assert!(range.low() <= range.high() && range.low() >= kilograms(0.0));
    }

    #[test]
    fn a_tolerance_has_no_32_degrees_in_it(
        reading in -100.0..300.0_f64, tenths in 0..=400_u16, celsius: bool,
    ) {
        let f = f64::from(tenths) / 10.0;
        let tolerance = read_tolerance(&format!("{f} °F")).unwrap();
        let (scale, half) =
            if celsius { (Scale::Celsius, f / 1.8) } else { (Scale::Fahrenheit, f) };
        let known = Reading::new(reading, scale).unwrap().within(tolerance).unwrap();
        prop_assert!((known.high().value() - reading - half).abs() < 1e-6);
        prop_assert!((reading - known.low().value() - half).abs() < 1e-6);
        prop_assert_eq!(known.low().scale(), scale);
    }

    #[test]
    fn a_verdict_is_that_of_every_point_of_the_range(
        kind in 0..6_u8, first in 0..20_i32, second in 0..20_i32, low in -5..25_i32, width in 0..12_i32,
    ) {
        let figure = |half: i32| f64::from(half) / 2.0;
        let limit = limit(kind, figure(first.min(second)), figure(first.max(second)));
        // Quarters, so that every figure of a limit inside the range is sampled.
        let known = Range::new(figure(low), figure(low + width)).unwrap();
        let points: Vec<_> = (2 * low..=2 * (low + width))
            .map(|quarter| limit.met_by(f64::from(quarter) / 4.0).unwrap())
            .collect();
        let expected = if points.iter().all(|met| *met) {
            Verdict::Meets
        } else if points.iter().any(|met| *met) {
            Verdict::Unproven
        } else {
            Verdict::Breaks
        };
        prop_assert_eq!(limit.judge(&known), expected, "{:?} of {:?}", limit, known);
    }

    #[test]
    fn to_know_less_never_turns_a_verdict_into_meets(
        kind in 0..6_u8, a in 0.0..10.0_f64, b in 0.0..10.0_f64, low in -1.0..11.0_f64,
        width in 0.0..5.0_f64, down in 0.0..5.0_f64, up in 0.0..5.0_f64,
    ) {
        let limit = limit(kind, a.min(b), a.max(b));
        let known = Range::new(low, low + width).unwrap();
        let less = Range::new(low - down, low + width + up).unwrap();
        if limit.judge(&known) != Verdict::Meets {
            prop_assert_ne!(limit.judge(&less), Verdict::Meets);
        }
        if limit.judge(&known) != Verdict::Breaks {
            prop_assert_ne!(limit.judge(&less), Verdict::Breaks);
        }
    }

    #[test]
    fn the_largest_premix_put_back_never_passes_the_ceiling(
        (ceiling, strength, meat) in batches(),
    ) {
        let (limit, strength, green) = (level(ceiling), of_premix(strength), green(meat));
        let most = largest_premix(limit, strength, green).unwrap();
        let back = ingoing(most, strength, green).mg_per_kg();
        prop_assert!(back <= ceiling, "{back} is over {ceiling}");
        prop_assert!(ulps(back, ceiling) <= 4, "{back} is far below {ceiling}");
    }

    #[test]
    fn the_smallest_premix_put_back_never_misses_the_minimum(
        (minimum, strength, meat) in batches(),
    ) {
        let (limit, strength, green) = (level(minimum), of_premix(strength), green(meat));
        let least = smallest_premix(limit, strength, green).unwrap();
        let back = ingoing(least, strength, green).mg_per_kg();
        prop_assert!(back >= minimum, "{back} is under {minimum}");
        prop_assert!(ulps(back, minimum) <= 4, "{back} is far above {minimum}");
    }

    #[test]
    fn a_window_is_empty_when_the_minimum_is_above_the_ceiling_and_only_then(
        (ceiling, strength, meat) in batches(), share in 0.5..1.5_f64,
    ) {
        let minimum = ceiling * share;
        let window = premix_window(level(minimum), level(ceiling), of_premix(strength), green(meat));
        match window {
            Ok(window) => {
                prop_assert!(minimum <= ceiling && window.low() <= window.high());
            }
            Err(CureError::EmptyWindow { .. }) => prop_assert!(minimum > ceiling * (1.0 - 1e-14)),
            Err(other) => prop_assert!(false, "{other}"),
        }
    }

    #[test]
    fn a_premix_for_nitrite_and_salt_meets_both_and_there_is_none_when_the_windows_part(
        nitrite in (1.0..300.0_f64, 1.0..2.0_f64), salt in (0.5..4.0_f64, 1.0..1.5_f64),
        strength in 0.1..10.0_f64, meat in 0.1..1e3_f64,
    ) {
        let wanted = Range::new(as_weighed(nitrite.0), as_weighed(nitrite.0 * nitrite.1)).unwrap();
        let salted = |percent: f64| Level::<SodiumChloride, _>::percent(percent).unwrap();
        let salts = Range::new(salted(salt.0), salted(salt.0 * salt.1)).unwrap();
        let premix = Premix::new().with_sodium_nitrite(Level::percent(strength).unwrap()).unwrap();
        let premix = premix.with_salt(Level::percent(100.0 - strength).unwrap()).unwrap();
        match premix_for_nitrite_and_salt(wanted, salts, &premix, green(meat)) {
            Ok(window) => for mass in [window.low(), window.high()] {
                let nitrite = ingoing(mass, premix.nitrite(), green(meat));
                let salt = ingoing(mass, premix.salt().low(), green(meat));
                prop_assert!(wanted.contains(nitrite) && salts.contains(salt));
            },
            Err(CureError::NotBoth { nitrite, salt }) => {
                prop_assert!(nitrite.high() < salt.low() || salt.high() < nitrite.low());
            }
            Err(CureError::EmptyWindow { .. }) => {
                prop_assert!(nitrite.1 < 1.0 + 1e-14 || salt.1 < 1.0 + 1e-14);
            }
            Err(other) => prop_assert!(false, "{other}"),
        }
    }

    #[test]
    fn skin_never_adds_to_the_green_weight_and_not_knowing_holds_both(kg in 0.01..1e4_f64) {
        let belly = Range::exactly(kilograms(kg)).unwrap();
        let (on, off) = (skin_free(belly, Some(true)).unwrap(), skin_free(belly, Some(false)).unwrap());
        let unknown = skin_free(belly, None).unwrap();
        prop_assert!(on.high() < off.low());
        prop_assert!(unknown.contains(on.low()) && unknown.contains(off.high()));
    }

    #[test]
    fn mixing_two_premixes_weighs_their_strengths_and_their_salt(
        a in 1e-4..1.0_f64, b in 1e-4..1.0_f64, s in 0.0..50.0_f64, t in 0.0..50.0_f64,
    ) {
        let made = |percent: f64| {
            let premix = Premix::new().with_sodium_nitrite(Level::percent(percent).unwrap()).unwrap();
            premix.with_salt(Level::percent(100.0 - percent).unwrap()).unwrap()
        };
        let mixed = Premix::mixed(premix(a), &made(s), premix(b), &made(t)).unwrap();
        let expected = (a * s + b * t) / (a + b) * 1e4;
        prop_assert!((mixed.nitrite().mg_per_kg() - expected).abs() <= 1e-9);
        prop_assert!((mixed.salt().low().mg_per_kg() + expected - 1e6).abs() <= 1e-6);
        let unsaid = Premix::mixed(premix(a), &made(s), premix(b), &Premix::new()).unwrap();
        prop_assert!(!unsaid.salt().is_exact());
    }

    #[test]
    fn a_level_goes_up_with_the_premix_and_down_with_the_meat(
        kg in 1e-4..10.0_f64, (_, strength, meat) in batches(), times in 1.0..100.0_f64,
    ) {
        let strength = of_premix(strength);
        let once = ingoing(premix(kg), strength, green(meat)).mg_per_kg();
        let more = ingoing(premix(kg * times), strength, green(meat)).mg_per_kg();
        prop_assert!(more >= once && ulps(more, once * times) <= 8);
        prop_assume!(meat * times <= 1e6);
        let spread = ingoing(premix(kg), strength, green(meat * times)).mg_per_kg();
        prop_assert!(spread <= once && ulps(spread, once / times) <= 8);
    }

    #[test]
    fn two_premixes_are_as_much_as_their_blend(
        a in 1e-4..1.0_f64, b in 1e-4..1.0_f64, s in 0.0..1e6_f64, t in 0.0..1e6_f64, meat in 0.1..1e3_f64,
    ) {
        let apart = ingoing(premix(a), of_premix(s), green(meat))
            + ingoing(premix(b), of_premix(t), green(meat));
        let blend = ((a * s + b * t) / (a + b)).min(1e6);
        let mixed = ingoing(premix(a + b), of_premix(blend), green(meat));
        let (apart, mixed) = (apart.mg_per_kg(), mixed.mg_per_kg());
        prop_assert!((apart - mixed).abs() <= 1e-14 * apart.max(mixed));
    }

    #[test]
    fn the_unit_a_mass_is_written_in_never_changes_the_verdict(
        row in 0..3_usize, meat_lb in 1..500_u32, billionths in -3..=3_i32,
    ) {
        let limit = US_INGOING_NITRITE[row].value.limit;
        let strength = Level::percent(6.25).unwrap();
        let weights = in_units(pounds(f64::from(meat_lb)));
        let at = limit.figures().0.mg_per_kg() / 62_500.0 * f64::from(meat_lb) * 16.0;
        let masses = in_units(ounces(at * (1.0 + f64::from(billionths) * 1e-9)));
        for mass in masses {
            for weight in weights {
                let green = GreenWeight::new(weight).unwrap();
                let level = ingoing(PremixMass::new(mass).unwrap(), strength, green);
                prop_assert_eq!(limit.met_by(level), Some(billionths <= 0), "{:?}", level);
                let known = Range::exactly(level).unwrap();
                prop_assert_eq!(limit.judge(&known) == Verdict::Meets, billionths <= 0);
            }
        }
    }

    #[test]
    fn the_largest_reading_is_under_the_ceiling_with_the_scale_at_its_worst(
        (ceiling, strength, meat) in batches(),
        division in prop_oneof![Just(0.1), Just(0.5), Just(1.0), Just(0.01), 0.001..30.0_f64],
    ) {
        let (limit, strength, green) = (level(ceiling), of_premix(strength), green(meat));
        let most = largest_premix(limit, strength, green).unwrap();
        let division = grams(division);
        match largest_reading(most, Some(division)) {
            Some(reading) => {
                let worst = Range::weighed(reading, division).unwrap().high();
                let level = ingoing(PremixMass::new(worst).unwrap(), strength, green);
                prop_assert_eq!(Limit::AtMost(limit).met_by(level), Some(true));
                // One division more would not do.
                let next = exact(reading.value) + exact(division.value) * exact(1.5);
                prop_assert!(next >= exact(most.mass().value) * exact(1.0 - 1e-12));
            }
            None => prop_assert!(most.mass() < division * 1.5 * (1.0 + 1e-12)),
        }
    }

    #[test]
    fn a_range_of_levels_holds_the_exact_level_of_every_corner(
        m in 1e-4..1.0_f64, s in 100.0..1e6_f64, w in 0.1..1e3_f64,
        dm in 0.0..0.5_f64, ds in 0.0..0.5_f64, dw in 0.0..0.5_f64,
    ) {
        let ends = |value: f64, share: f64| (value * (1.0 - share), value);
        let (masses, strengths, greens) = (ends(m, dm), ends(s, ds), ends(w, dw));
        let known = ingoing_between(
            Range::new(premix(masses.0), premix(masses.1)).unwrap(),
            Range::new(of_premix(strengths.0), of_premix(strengths.1)).unwrap(),
            Range::new(green(greens.0), green(greens.1)).unwrap(),
        );
        let known = Range::new(known.low().mg_per_kg(), known.high().mg_per_kg()).unwrap();
        for m in [masses.0, masses.1] {
            for s in [strengths.0, strengths.1] {
                for w in [greens.0, greens.1] {
                    prop_assert!(holds(&known, &(exact(m) * exact(s) / exact(w))));
                }
            }
        }
    }

    #[test]
    fn the_dwell_row_is_the_one_at_or_below_and_hotter_is_never_longer(
        cooler in 125.0..165.0_f64, more in 0.0..10.0_f64, celsius: bool,
    ) {
        let scale = if celsius { Scale::Celsius } else { Scale::Fahrenheit };
        let reading = |f: f64| Reading::new(f, Scale::Fahrenheit).unwrap().on(scale);
        let (cool, hot) = (reading(cooler), reading(cooler + more));
        if let Some(row) = dwell_row(cool) {
            prop_assert!(row.value.temperature.on(scale).value() <= cool.value() + 1e-9);
            let hotter = dwell_row(hot).expect("hotter than a row");
            prop_assert!(hotter.value.for_6_5_log <= row.value.for_6_5_log);
            prop_assert!(hotter.value.for_7_log <= row.value.for_7_log);
        }
        let above = match dwell_row(cool) {
            Some(row) => FSIS_MEAT_DWELL.iter().skip_while(|next| next.row.key != row.row.key).nth(1),
            None => FSIS_MEAT_DWELL.first(),
        };
        if let Some(next) = above {
            prop_assert!(next.value.temperature.on(scale).value() > cool.value());
        }
    }

    #[test]
    fn a_superseded_row_of_the_chart_is_found_only_before_its_date(
        row in 0..COLD_FOOD.len(), year in 2005..2027_u16, month in 1..=12_u8, day in 1..=28_u8,
    ) {
        let key = COLD_FOOD[row].row.key.split('@').next().unwrap();
        let day = Date::new(year, month, day).unwrap();
        if let Some(now) = chart_row(key, None) {
            prop_assert!(now.row.in_force.until.is_none());
            prop_assert!(!now.row.key.contains('@'));
        }
        if let Some(then) = chart_row(key, Some(day)) {
            let force = then.row.in_force;
            prop_assert!(force.from.is_none_or(|from| from <= day));
            prop_assert!(force.until.is_none_or(|until| day < until));
        }
    }

    #[test]
    fn ion_and_salt_convert_there_and_back(mg_per_kg in 1e-3..1e5_f64) {
        let ion = Level::<NitriteIon, OnGreenWeight>::new(mg_per_kg).unwrap();
        let back = ion.as_sodium_nitrite().as_nitrite_ion().mg_per_kg();
        prop_assert!(ulps(back, mg_per_kg) <= 4);
        let salt = level(mg_per_kg);
        let back = salt.as_potassium_nitrite().as_sodium_nitrite().mg_per_kg();
        prop_assert!(ulps(back, mg_per_kg) <= 4);
        prop_assert_eq!(
            salt.as_nitrite_ion().mg_per_kg().partial_cmp(&mg_per_kg),
            Some(Ordering::Less)
        );
    }
}

fn limit(kind: u8, a: f64, b: f64) -> Limit<f64> {
    match kind {
        0 => Limit::AtMost(a),
        1 => Limit::Below(a),
        2 => Limit::AtLeast(a),
        3 => Limit::Above(a),
        4 => Limit::Exactly(a),
        _ => Limit::Between(a, b),
    }
}

/// One mass, written in grams, ounces, pounds and kilograms.
fn in_units(of: Mass) -> [Mass; 4] {
    [
        grams(of.get::<mass::gram>()),
        ounces(of.get::<mass::ounce>()),
        pounds(of.get::<mass::pound>()),
        kilograms(of.get::<mass::kilogram>()),
    ]
}

#[test]
fn eighty_of_the_ion_are_119_98_of_sodium_nitrite() {
    let ion = Level::<NitriteIon, OnGreenWeight>::new(80.0).unwrap();
    assert!((ion.as_sodium_nitrite().mg_per_kg() - 119.98).abs() < 0.005);
}
