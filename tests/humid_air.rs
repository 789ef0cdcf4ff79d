//! Humid air against figures from outside this crate: ASHRAE Handbook Fundamentals 2017,
//! chapter 1, Tables 2 and 3 (rows of `cook/saturated-air`), values computed with the
//! general-purpose libraries PsychroLib 2.5.0 (the same equations), CoolProp 8.0.0 (a real gas)
//! and IAPWS-IF97 (steam), and worked examples of textbooks.

use greenweight::cook::air::{
    AirError, humidity_ratio, relative_humidity, saturation_pressure, standard_pressure, wet_bulb,
};
use greenweight::units::{Reading, Scale};
use greenweight_references::References;
use proptest::prelude::*;
use rstest::rstest;

const SEA: f64 = 101_325.0;

fn celsius(value: f64) -> Reading {
    Reading::new(value, Scale::Celsius).unwrap()
}

fn near(found: f64, expected: f64, relative: f64) {
    assert!((found / expected - 1.0).abs() <= relative, "{found}, {expected}");
}

#[test]
fn saturated_air_is_that_of_the_handbook_within_its_digits() {
    let references = References::read();
    for row in &references.table("cook/saturated-air").rows {
        let at = celsius(row.number("celsius"));
        if let Some(pascal) = row.maybe_number("pascal") {
            // 1.08 Pa is printed to three figures.
            let relative = if pascal < 10.0 { 0.01 } else { 3e-4 };
            near(saturation_pressure(at).unwrap(), pascal, relative);
        } else {
            // A perfect gas falls short of the table by 1.2 percent at 85 °C.
            let ratio = humidity_ratio(at, at, SEA).unwrap();
            near(ratio, row.number("humidity_ratio"), 0.0125);
        }
    }
}

// The same equation in PsychroLib, and steam by IAPWS-IF97.
#[rstest]
#[case(0.01, 611.657, 611.657)]
#[case(5.0, 872.4867, 872.5749)]
#[case(20.0, 2338.8037, 2339.2148)]
#[case(25.0, 3169.2165, 3169.7469)]
#[case(40.0, 7383.46, 7384.4275)]
#[case(50.0, 12349.8565, 12351.2704)]
#[case(60.0, 19943.7606, 19945.8019)]
#[case(71.1, 32712.3715, 32715.1794)]
#[case(80.0, 47411.6115, 47414.7199)]
#[case(100.0, 101418.7168, 101417.9779)]
fn vapour_is_saturated_as_elsewhere(
    #[case] t: f64,
    #[case] same_equation: f64,
    #[case] steam: f64,
) {
    let found = saturation_pressure(celsius(t)).unwrap();
    near(found, same_equation, 1e-7);
    near(found, steam, 5e-4);
}

// Wet bulbs of PsychroLib, and of a real gas by CoolProp.
#[rstest]
#[case(20.0, 50.0, 13.7834, 13.7765)]
#[case(25.0, 60.0, 19.4711, 19.4674)]
#[case(50.0, 30.0, 32.3299, 32.3327)]
#[case(54.4, 50.0, 42.4664, 42.4756)]
#[case(60.0, 20.0, 34.9199, 34.9268)]
#[case(60.0, 40.0, 43.764, 43.7771)]
#[case(60.0, 90.0, 57.8871, 57.8899)]
#[case(76.7, 5.0, 32.5793, 32.5745)]
#[case(80.0, 5.0, 34.0174, 34.013)]
#[case(80.0, 30.0, 54.9427, 54.9515)]
#[case(80.0, 60.0, 68.3613, 68.3604)]
#[case(93.3, 5.0, 39.9403, 39.9212)]
#[case(107.2, 5.0, 46.3859, 46.3343)]
fn the_wet_bulb_is_that_of_others(
    #[case] t: f64,
    #[case] percent: f64,
    #[case] same_equation: f64,
    #[case] real_gas: f64,
) {
    let found = wet_bulb(celsius(t), percent, SEA).unwrap().value();
    // PsychroLib stops within a thousandth of a kelvin.
    assert!((found - same_equation).abs() <= 0.002, "{found}");
    assert!((found - real_gas).abs() <= 0.06, "{found}");
}

#[rstest]
#[case(30.0, 25.0, 0.66954, 0.66962)]
#[case(40.0, 20.0, 0.13979, 0.14022)]
#[case(60.0, 54.4, 0.75095, 0.75067)]
#[case(76.7, 57.2, 0.39482, 0.39459)]
#[case(76.7, 60.0, 0.45838, 0.45817)]
#[case(80.0, 60.0, 0.39648, 0.39637)]
fn relative_humidity_is_that_of_others(
    #[case] t: f64,
    #[case] wet: f64,
    #[case] same_equation: f64,
    #[case] real_gas: f64,
) {
    let found = relative_humidity(celsius(t), celsius(wet), SEA).unwrap() / 100.0;
    assert!((found - same_equation).abs() <= 2e-5, "{found}");
    assert!((found - real_gas).abs() <= 6e-4, "{found}");
}

// With ice on the wick: computed with PsychroLib 2.5.0.
#[test]
fn ice_on_the_wick_has_an_equation_of_its_own() {
    let percent = relative_humidity(celsius(5.0), celsius(-2.0), SEA).unwrap();
    assert!((percent - 13.111_62).abs() < 1e-3, "{percent}");
    let wet = wet_bulb(celsius(2.0), 20.0, SEA).unwrap().value();
    assert!((wet + 3.480_86).abs() < 2e-3, "{wet}");
    let percent = relative_humidity(celsius(1.0), celsius(0.5), SEA).unwrap();
    assert!((percent - 91.492_27).abs() < 1e-3, "{percent}");
}

// What a wet surface is held near: computed with PsychroLib.
#[rstest]
#[case(120.0, 20.0, 81.85)]
#[case(160.0, 30.0, 118.61)]
#[case(180.0, 5.0, 94.99)]
#[case(180.0, 20.0, 121.98)]
#[case(200.0, 5.0, 103.92)]
#[case(225.0, 2.0, 101.99)]
fn a_wet_surface_is_far_below_its_oven(#[case] oven: f64, #[case] percent: f64, #[case] wet: f64) {
    let oven = Reading::new(oven, Scale::Fahrenheit).unwrap();
    let found = wet_bulb(oven, percent, SEA).unwrap();
    assert_eq!(found.scale(), Scale::Fahrenheit);
    assert!((found.value() - wet).abs() <= 0.01, "{found:?}");
}

// Printed examples: ASHRAE Fundamentals 2017 chapter 1 example 1; Rajput 10.4; Geankoplis 9.3-4
// (read from a chart).
#[rstest]
#[case::ashrae(40.0, 20.0, SEA, 0.0065, 1e-4)]
#[case::rajput(35.0, 25.0, 101_320.0, 0.016, 2e-4)]
#[case::geankoplis(60.0, 29.5, SEA, 0.0135, 1e-4)]
#[case::at_500_metres(30.0, 25.0, 95_461.0, 0.019_228_127, 6e-6)]
fn humidity_ratios_are_those_of_printed_examples(
    #[case] t: f64,
    #[case] wet: f64,
    #[case] pressure: f64,
    #[case] printed: f64,
    #[case] tolerance: f64,
) {
    let found = humidity_ratio(celsius(t), celsius(wet), pressure).unwrap();
    assert!((found - printed).abs() <= tolerance, "{found}");
}

// ASHRAE Fundamentals 2017 chapter 1, Table 1.
#[rstest]
#[case(-500.0, 107_478.0)]
#[case(500.0, 95_461.0)]
#[case(4_000.0, 61_640.0)]
fn the_pressure_at_an_altitude_is_that_of_the_handbook(#[case] metres: f64, #[case] pascal: f64) {
    assert!((standard_pressure(metres).unwrap() - pascal).abs() <= 1.0);
}

#[test]
fn bulbs_that_cannot_be_are_refused() {
    let humidity = |dry, wet| relative_humidity(celsius(dry), celsius(wet), SEA);
    assert!(matches!(humidity(60.0, 61.0), Err(AirError::WetAboveDry { .. })));
    assert!(matches!(humidity(100.0, 10.0), Err(AirError::TooDry { .. })));
    let text = humidity(60.0, 61.0).unwrap_err().to_string();
    assert!(text.contains("61") && text.contains("60"), "{text}");
    assert!(matches!(humidity(151.0, 60.0), Err(AirError::OutOfRange(_))));
    assert!(wet_bulb(celsius(60.0), 101.0, SEA).is_err());
    assert!(wet_bulb(celsius(60.0), 50.0, 1_000.0).is_err());
    assert!(standard_pressure(f64::NAN).is_err());
    assert!(saturation_pressure(celsius(201.0)).is_err());
    // At 120 °C and sea level the vapour of 90 percent would boil.
    assert!(matches!(wet_bulb(celsius(120.0), 90.0, SEA), Err(AirError::Boils { .. })));
}

proptest! {
    #[test]
    fn the_way_to_the_wet_bulb_and_back_is_the_identity(
        t in 0.5..99.0f64, percent in 1.0..99.0f64, pressure in 60_000.0..SEA,
    ) {
        prop_assume!(saturation_pressure(celsius(t)).unwrap() * percent / 100.0 < pressure * 0.9);
        let wet = wet_bulb(celsius(t), percent, pressure).unwrap();
        // Ice and water on the wick differ: the two equations do not meet at the melting point.
        prop_assume!(wet.value() > 0.5 || wet.value() < -0.5);
        let back = relative_humidity(celsius(t), wet, pressure).unwrap();
        prop_assert!((back - percent).abs() < 1e-6, "{back}");
    }

    #[test]
    fn a_wetter_wick_means_more_humid_air_and_so_does_thinner_air(
        t in 30.0..95.0f64, below in 1.0..20.0f64, more in 0.1..0.9f64,
    ) {
        let wet = |below: f64| celsius(t - below);
        let Ok(dry) = relative_humidity(celsius(t), wet(below), SEA) else { return Ok(()) };
        prop_assert!(relative_humidity(celsius(t), wet(below * more), SEA).unwrap() > dry);
        // A wick hotter than water boils at that pressure is in no air.
        prop_assume!(saturation_pressure(wet(below)).unwrap() < 75_000.0);
        prop_assert!(relative_humidity(celsius(t), wet(below), 80_000.0).unwrap() >= dry);
    }
}
