//! After the fire: cooling clocks, degree-hours, growth. Integrals of growth were recorded from
//! SciPy 1.17.1 (`solve_ivp`, Radau, rtol 1e-11).

use greenweight::authority::Authority;
use greenweight::chill::{
    AUSTRALIA, COOLING_US, Cooling, FOOD_CODE_COOLING, Factor, Growth, Holds, LegClock, Pathogen,
    Rate, SLOW_COOL_CONDITIONS, Stay, Was, check, degree_hours, degree_hours_between,
    growth_limits, growth_models, listeria_rate_at, longest_fermentation, ready_to_eat,
    strictest_growth, warm,
};
use greenweight::cite::{Date, Seen};
use greenweight::finding::{Place, Verdict};
use greenweight::range::Range;
use greenweight::shelf::{INTERACTION_A, INTERACTION_B, cell};
use greenweight::trace::{Point, Segment, Track};
use greenweight::units::{Reading, Scale, TemperatureInterval, hours, read_tolerance};
use proptest::prelude::*;
use rstest::rstest;

fn fahrenheit(value: f64) -> Reading {
    Reading::new(value, Scale::Fahrenheit).unwrap()
}

fn celsius(value: f64) -> Reading {
    Reading::new(value, Scale::Celsius).unwrap()
}

fn points(curve: &[(f64, f64)], on: fn(f64) -> Reading) -> Vec<Point> {
    curve.iter().map(|&(h, t)| Point::new(hours(h), on(t)).unwrap()).collect()
}

fn segments(points: &[Point]) -> Vec<Segment> {
    let mut track = Track::new();
    points.iter().filter_map(|point| track.next(*point).unwrap()).collect()
}

fn cooling<'a>(curve: &'a [Point], off: Option<&str>, holds: Holds) -> Cooling<'a> {
    let thermometer = off.map(|off| read_tolerance(off).unwrap());
    Cooling {
        curve,
        cooked_to: None,
        vouched: hours(f64::INFINITY),
        thermometer,
        holds,
        place: Place::default(),
    }
}

fn verdict(curve: &[(f64, f64)], authority: Authority) -> Verdict {
    let points = points(curve, fahrenheit);
    check(&cooling(&points, Some("0 °F"), Holds::default()), authority, None).unwrap().verdict
}

const FC: Authority = Authority::UsFoodCode2022;
const AU: Authority = Authority::AustraliaNewZealand;

// 3-501.14(A): 135 to 70 °F in 2 h and to 41 °F in 6 h in all.
#[rstest]
#[case::fast_first(&[(0.0, 136.0), (0.0001, 135.0), (1.0, 70.0), (6.0, 41.0)], Verdict::Meets)]
#[case::slow_first(&[(0.0, 136.0), (0.0001, 135.0), (2.5, 70.0), (4.5, 41.0)], Verdict::Breaks)]
#[case::at_both_limits(&[(0.0, 135.0), (2.0, 70.0), (6.0, 41.0)], Verdict::Meets)]
#[case::over_in_all(&[(0.0, 135.0), (1.0, 70.0), (6.5, 41.0)], Verdict::Breaks)]
#[case::never_came_down(&[(0.0, 140.0), (1.0, 70.0), (3.0, 50.0)], Verdict::Unproven)]
#[case::never_came_down_in_time(&[(0.0, 140.0), (1.0, 70.0), (7.0, 50.0)], Verdict::Breaks)]
#[case::begins_too_late(&[(0.0, 130.0), (1.0, 70.0), (3.0, 40.0)], Verdict::Unproven)]
#[case::no_curve(&[], Verdict::Unproven)]
fn retail_cooling_has_two_clocks(#[case] curve: &[(f64, f64)], #[case] expected: Verdict) {
    assert_eq!(verdict(curve, FC), expected);
}

// The second clock of the United States is a total; that of Australia a further time from 21 °C.
#[test]
fn one_record_meets_the_one_and_breaks_the_other_both_ways() {
    // Down to 70 °F in an hour, and five more to 41: six in all, and five of four.
    let fast_then_slow = [(0.0, 141.0), (0.2, 135.0), (1.2, 69.8), (6.15, 41.0)];
    assert_eq!(
        (verdict(&fast_then_slow, FC), verdict(&fast_then_slow, AU)),
        (Verdict::Meets, Verdict::Breaks)
    );
    // Australia starts at 60 °C and stops at 21: what lingers above is not counted there.
    let slow_from_the_top = [(0.0, 140.0), (1.95, 69.8), (5.9, 41.0), (6.4, 40.0)];
    assert_eq!(verdict(&slow_from_the_top, AU), Verdict::Meets);
    let lingering = [(0.0, 150.0), (0.5, 134.0), (3.0, 134.0), (3.1, 68.0), (5.0, 41.0)];
    assert_eq!(verdict(&lingering, FC), Verdict::Breaks);
}

#[rstest]
#[case::uncured_fast(&[(0.0, 130.0), (1.5, 80.0), (6.5, 40.0)], Verdict::Meets)]
#[case::uncured_option_2(&[(0.0, 135.0), (1.0, 120.0), (2.0, 80.0), (7.0, 55.0), (9.0, 40.0)], Verdict::Meets)]
#[case::uncured_slow(&[(0.0, 130.0), (5.0, 80.0), (15.0, 45.0)], Verdict::Breaks)]
fn federal_cooling_by_any_option(#[case] curve: &[(f64, f64)], #[case] expected: Verdict) {
    // Known to hold none.
    let zero = Range::exactly(0.0).ok();
    let holds = Holds { nitrite: zero, ascorbate: zero, brine: zero, activity: Some(0.98) };
    let points = points(curve, fahrenheit);
    let finding = check(&cooling(&points, Some("0 °F"), holds), Authority::UsFsis, None).unwrap();
    assert_eq!(finding.verdict, expected, "{finding:?}");
}

// The cured option asks for nitrite and an accelerator; the one of twenty hours for salt.
#[rstest]
#[case::nothing_said(None, None, None, Verdict::Unproven)]
#[case::nitrite_and_no_accelerator_said(Some(150.0), None, None, Verdict::Unproven)]
#[case::nitrite_and_none(Some(150.0), Some(0.0), Some(0.0), Verdict::Breaks)]
#[case::both(Some(150.0), Some(500.0), None, Verdict::Meets)]
#[case::too_little_accelerator(Some(150.0), Some(249.0), Some(0.0), Verdict::Breaks)]
#[case::too_little_nitrite(Some(99.0), Some(500.0), Some(0.0), Verdict::Breaks)]
fn a_cured_product_is_cooled_more_slowly_only_with_its_conditions(
    #[case] nitrite: Option<f64>,
    #[case] ascorbate: Option<f64>,
    #[case] brine: Option<f64>,
    #[case] expected: Verdict,
) {
    let exact = |value: Option<f64>| value.and_then(|value| Range::exactly(value).ok());
    let activity = brine.map(|_| 0.98);
    let (nitrite, ascorbate, brine) = (exact(nitrite), exact(ascorbate), exact(brine));
    let holds = Holds { nitrite, ascorbate, brine, activity };
    let curve = points(&[(0.0, 130.0), (4.9, 80.0), (14.8, 40.0)], fahrenheit);
    let finding = check(&cooling(&curve, Some("0 °F"), holds), Authority::UsFsis, None).unwrap();
    assert_eq!(finding.verdict, expected, "{finding:?}");
}

#[test]
fn an_edition_that_was_superseded_judges_only_beside_one_in_force_that_nobody_read() {
    let day = |year| Date::new(year, 1, 1).ok();
    let curve = points(&[(0.0, 130.0), (1.5, 80.0), (6.5, 40.0)], fahrenheit);
    let on = |day| check(&cooling(&curve, Some("0 °F"), Holds::default()), Authority::UsFsis, day);
    // The rows of 2021 are from memory; those of 1999 print the same, and were reported.
    let finding = on(day(2026)).unwrap();
    let row = finding.rows[0].unwrap();
    assert_eq!(
        (finding.verdict, row.key, row.citation.seen),
        (Verdict::Meets, "fsis-1999-1-1", Seen::Reported)
    );
    assert!(finding.note.is_some(), "it says why an older edition judges");
    // Of 2010 this crate offers no federal schedule: its rows of 1999 are kept for reading.
    assert!(on(day(2010)).is_none());
    assert!(
        COOLING_US
            .iter()
            .any(|row| row.row.key.contains("1999") && row.row.in_force.until.is_some())
    );
}

#[rstest]
#[case::a_good_probe(Some("1 °F"), Verdict::Meets)]
#[case::a_bad_probe(Some("6 °F"), Verdict::Unproven)]
#[case::no_probe(None, Verdict::Unproven)]
fn the_error_of_a_probe_makes_the_clock_a_range(
    #[case] off: Option<&str>,
    #[case] expected: Verdict,
) {
    let curve = points(&[(0.0, 150.0), (1.9, 70.0), (5.7, 40.0), (6.2, 34.0)], fahrenheit);
    let finding = check(&cooling(&curve, off, Holds::default()), FC, None).unwrap();
    assert_eq!(finding.verdict, expected, "{finding:?}");
}

#[test]
fn what_is_reheated_is_cooled_again_and_the_worst_counts() {
    let [first, _] = &FOOD_CODE_COOLING;
    let time = |curve: &[(f64, f64)]| {
        let mut clock = LegClock::new(
            first,
            Scale::Fahrenheit,
            read_tolerance("0 °F").unwrap(),
            hours(f64::INFINITY),
        );
        segments(&points(curve, fahrenheit)).iter().for_each(|segment| clock.add(segment));
        clock.time().map(|time| time.high().value / 3600.0)
    };
    let once = [(0.0, 135.0), (1.0, 70.0)];
    assert_eq!(time(&once), Some(1.0));
    let again = [(0.0, 135.0), (1.0, 70.0), (2.0, 165.0), (2.3, 135.0), (5.3, 70.0)];
    assert!((time(&again).unwrap() - 3.0).abs() < 1e-9);
    let the_other_way = [(0.0, 135.0), (3.0, 70.0), (4.0, 165.0), (4.3, 135.0), (5.3, 70.0)];
    assert!((time(&the_other_way).unwrap() - 3.0).abs() < 1e-9);
    assert_eq!(time(&[(0.0, 40.0), (1.0, 60.0)]), None);
}

// California, 3 CCR 910.15(b): 120 to 40 °F in twenty hours, 120 ppm with 3.5 % brine.
#[test]
fn twenty_hours_take_nitrite_with_salt_or_dryness() {
    let holds = |nitrite: f64, brine: f64, activity: f64| Holds {
        nitrite: Range::exactly(nitrite).ok(),
        brine: Range::exactly(brine).ok(),
        activity: Some(activity),
        ascorbate: None,
    };
    let best = |holds: Holds| {
        SLOW_COOL_CONDITIONS.iter().map(|formula| formula.value.held_by(&holds)).min().unwrap()
    };
    assert_eq!(best(holds(120.0, 3.5, 0.97)), Verdict::Meets);
    assert_eq!(best(holds(119.0, 3.5, 0.97)), Verdict::Breaks);
    assert_eq!(best(holds(40.0, 6.0, 0.97)), Verdict::Meets);
    assert_eq!(best(holds(0.0, 0.0, 0.92)), Verdict::Meets);
    assert_eq!(best(Holds::default()), Verdict::Unproven);
    let slow = COOLING_US.iter().find(|row| row.value.schedule == "california-910.15-b-cured-slow");
    assert_eq!(slow.unwrap().value.most, hours(20.0));
}

// FSIS-GD-2023-0002 and the course of 2005: 1200 below 90 °F, 1000 to 100, 900 above.
#[rstest]
#[case::worked_example(&[(80.0, 55.0)], 1100.0, 1200.0)]
#[case::staged(&[(75.0, 12.0), (85.0, 10.0), (95.0, 12.0)], 850.0, 1000.0)]
#[case::at_90(&[(90.0, 10.0)], 300.0, 1000.0)]
#[case::at_100(&[(100.0, 10.0)], 400.0, 1000.0)]
#[case::above_100(&[(110.0, 18.0)], 900.0, 900.0)]
#[case::below_the_base(&[(50.0, 100.0)], 0.0, 1200.0)]
fn degree_hours_are_limited_by_the_hottest_chamber(
    #[case] stages: &[(f64, f64)],
    #[case] sum: f64,
    #[case] most: f64,
) {
    let stages: Vec<_> = stages.iter().map(|&(f, h)| (fahrenheit(f), hours(h))).collect();
    let (found, row) = degree_hours(&stages, Scale::Fahrenheit).unwrap();
    assert!((found - sum).abs() < 1e-9);
    assert_eq!(row.value.most, most);
    assert!(degree_hours(&[], Scale::Fahrenheit).is_none());
}

#[test]
fn the_editions_in_celsius_and_fahrenheit_are_two_tables() {
    // 26 °C for 55 h: 572 of 665 by the Canadian table.
    let (sum, row) = degree_hours(&[(celsius(26.0), hours(55.0))], Scale::Celsius).unwrap();
    assert!((sum - 572.0).abs() < 1e-9);
    assert_eq!(row.value.most, 665.0);
    assert_eq!(longest_fermentation(fahrenheit(110.0)), Some(hours(18.0)));
    assert_eq!(longest_fermentation(fahrenheit(60.0)), None);
    let between = Range::new(hours(50.0), hours(60.0)).unwrap();
    let (range, _) = degree_hours_between(&[(celsius(26.0), between)], Scale::Celsius).unwrap();
    assert!((range.low() - 520.0).abs() < 1e-9 && (range.high() - 624.0).abs() < 1e-9);
}

fn grown(rate: Rate, h0: f64, room: f64, curve: &[(f64, f64)]) -> f64 {
    let mut growth = Growth::new(rate, h0, room).unwrap();
    segments(&points(curve, celsius)).iter().for_each(|segment| growth.add(segment));
    growth.log10()
}

const CHICKEN: Rate = Rate::Cardinal { least: 8.8, best: 46.4, most: 51.5, at_best: 6.06 };
const BEEF: Rate = Rate::Cardinal { least: 10.3, best: 43.5, most: 53.4, at_best: 5.64 };
const STAPHYLOCOCCUS: Rate =
    Rate::SquareRootToMaximum { b: 0.0456, c: 0.447, least: 7.7, most: 46.7 };
const CHEESE: Rate = Rate::SquareRoot { b: 0.040_666_4, least: 5.4235 };

#[rstest]
#[case(CHICKEN, 3.03, 5.7, &[(0.0, 46.5), (2.27, 45.2), (4.28, 27.8), (5.08, 19.1), (6.04, 17.8), (8.26, 16.5), (8.57, 26.6)], 5.699_886_233_115_14)]
#[case(BEEF, 5.5, 5.9, &[(0.0, 11.5), (2.49, 35.5), (4.53, 5.3), (6.2, 4.9), (8.68, 30.3), (9.45, 27.7)], 2.585_986_476_081_588)]
#[case(STAPHYLOCOCCUS, 5.28, 5.5, &[(0.0, 13.6), (1.39, 22.6), (2.24, 3.2), (2.56, 47.0), (3.29, 11.2), (5.11, 17.2)], 0.007_487_245_742_465)]
#[case(CHEESE, 1.94, 4.5, &[(0.0, 29.9), (2.16, 49.2), (3.87, 22.1), (5.8, 34.7), (6.3, 6.1), (7.79, 23.5)], 3.165_507_252_169_172)]
fn growth_at_changing_temperature_is_that_of_a_stiff_solver(
    #[case] rate: Rate,
    #[case] h0: f64,
    #[case] room: f64,
    #[case] curve: &[(f64, f64)],
    #[case] expected: f64,
) {
    let found = grown(rate, h0, room, curve);
    assert!((found - expected).abs() < 2e-8, "{found}");
}

// In short pieces two points serve where five do in long ones.
#[test]
fn a_record_in_short_pieces_grows_as_in_long_ones() {
    let long = [(0.0, 54.0), (6.0, 6.0)];
    let short: Vec<_> =
        (0..=2400).map(|n| (f64::from(n) / 400.0, 54.0 - f64::from(n) / 50.0)).collect();
    for rate in [CHICKEN, BEEF, STAPHYLOCOCCUS, CHEESE] {
        let (one, many) = (grown(rate, 2.0, 9.0, &long), grown(rate, 2.0, 9.0, &short));
        assert!((one / many - 1.0).abs() < 1e-7, "{one}, {many}");
    }
}

// The closed form of Baranyi and Roberts, of its own example: y0 0.01, μ 0.5, K 0.1, h0 5.
#[rstest]
#[case(0.0, -4.605_170_19)]
#[case(10.0, -4.010_095_12)]
#[case(15.0, -2.823_206_24)]
#[case(20.0, -2.361_078_86)]
#[case(40.0, -2.302_587_85)]
fn growth_at_constant_temperature_is_the_closed_form(#[case] time: f64, #[case] ln_y: f64) {
    let mut growth = Growth::new(CHEESE, 5.0, 1.0).unwrap();
    growth.add_at(0.5, hours(time)).unwrap();
    let found = 0.01f64.ln() + growth.log10() * std::f64::consts::LN_10;
    assert!((found - ln_y).abs() < 1e-8, "{found}");
}

// Doubling times from published cardinal values (abstract), worked out independently.
#[rstest]
#[case(CHICKEN, 20.0, 0.69591)]
#[case(CHICKEN, 45.0, 5.96569)]
#[case(BEEF, 8.0, 0.0)]
#[case(BEEF, 25.0, 1.80815)]
#[case(BEEF, 55.0, 0.0)]
#[case(STAPHYLOCOCCUS, 15.0, 0.110_808_939)]
#[case(STAPHYLOCOCCUS, 45.0, 0.819_669_449)]
#[case(STAPHYLOCOCCUS, 50.0, 0.0)]
fn rates_are_those_of_their_parameters(#[case] rate: Rate, #[case] t: f64, #[case] mu: f64) {
    assert!((rate.at(celsius(t)) - mu).abs() < 1e-5);
}

/// A curve as the reference file writes it: hours:celsius, falling straight or exponentially.
fn written(curve: &str, exponential: bool) -> Vec<(f64, f64)> {
    let ends: Vec<(f64, f64)> = curve
        .split(' ')
        .map(|pair| pair.split_once(':').unwrap())
        .map(|(at, c)| (at.parse().unwrap(), c.parse().unwrap()))
        .collect();
    match ends.as_slice() {
        &[(_, from), (time, to)] if exponential => (0..=200)
            .map(|n| f64::from(n) / 200.0)
            .map(|share| (time * share, from * (to / from).powf(share)))
            .collect(),
        _ => ends,
    }
}

// What was measured, and what a set of parameters of another food predicts, without lag and without
// a ceiling: the most that it can say. The two disagree by more than the whole limit of one log.
#[test]
fn predictions_and_measurements_disagree_and_the_disagreement_is_shown() {
    let references = greenweight_references::References::read();
    let table = references.table("chill/measured-cooling");
    let (mut compared, mut apart, mut unsafe_side) = (0, 0, Vec::new());
    for row in table.rows.iter().filter(|row| row.has("curve_c")) {
        let curve = written(row.words("curve_c"), row.words("falls") == "exponential");
        let set = if row.words("set") == "cp-braised-beef" { BEEF } else { CHICKEN };
        let predicted = grown(set, 0.0, 20.0, &curve);
        let (measured, gap) = match (
            row.maybe_number("log10_increase"),
            row.maybe_number("log10_at_most"),
            row.maybe_number("log10_at_least"),
        ) {
            (Some(log10), _, _) => (format!("{log10}"), predicted - log10),
            (_, Some(most), _) => (format!("at most {most}"), (predicted - most).max(0.0)),
            (_, _, Some(least)) => (format!("at least {least}"), (predicted - least).min(0.0)),
            _ => panic!("{}: nothing was measured", row.key),
        };
        println!("{:<24} measured {measured:<11} predicted {predicted:>6.2}", row.key);
        compared += 1;
        apart += i32::from(gap.abs() > 1.0);
        if gap < 0.0 {
            unsafe_side.push(row.key.clone());
        }
    }
    println!("{compared} compared, {apart} of them more than 1 log apart");
    assert!(compared >= 18 && apart * 2 > compared, "{apart} of {compared}");
    assert!(unsafe_side.is_empty(), "predicted less than was measured: {unsafe_side:?}");
}

#[test]
fn listeria_rates_are_rescaled_as_printed() {
    // FDA and FSIS risk assessment 2003, Appendix 8, Table 1.
    let rows = [
        (8.0, 5.4, 21.0, 0.116),
        (10.0, 3.5, 9.0, 0.119),
        (4.0, 2.8, 21.0, 0.19),
        (4.0, 1.0, 10.0, 0.142),
    ];
    for (t, log10, days, printed) in rows {
        let found = listeria_rate_at(log10 / days, celsius(t), celsius(5.0)).unwrap();
        assert!((found - printed).abs() <= 0.001, "{found}");
    }
    assert_eq!(listeria_rate_at(0.1, celsius(-2.0), celsius(5.0)), None);
}

// Food Code 2022, 1-201.10(B).
#[rstest]
#[case(true, 0.94, 5.0, true)]
#[case(true, 0.92, 6.0, true)]
#[case(true, 0.93, 5.6, true)]
#[case(true, 0.95, 5.7, false)]
#[case(true, 0.96, 4.6, true)]
#[case(true, 0.96, 4.7, false)]
#[case(false, 0.93, 5.6, false)]
#[case(false, 0.90, 5.0, true)]
#[case(false, 0.90, 5.1, false)]
#[case(false, 0.91, 5.0, false)]
#[case(false, 0.91, 4.6, true)]
#[case(false, 0.87, 6.5, true)]
#[case(false, 0.88, 6.5, false)]
#[case(false, 0.93, 4.19, true)]
#[case(false, 0.93, 4.2, false)]
fn water_activity_and_ph_together(
    #[case] packaged: bool,
    #[case] activity: f64,
    #[case] ph: f64,
    #[case] needs_none: bool,
) {
    let found = cell(packaged, activity, ph).unwrap().unwrap();
    assert_eq!(found.value.needs_none, needs_none, "{}", found.row.printed);
}

#[test]
fn every_food_has_one_cell() {
    for packaged in [true, false] {
        let table: &[_] = if packaged { &INTERACTION_A } else { &INTERACTION_B };
        let mut seen = std::collections::BTreeSet::new();
        for a in 5..=100 {
            for p in 15..=130 {
                let (activity, ph) = (f64::from(a) / 100.0, f64::from(p) / 10.0);
                seen.insert(cell(packaged, activity, ph).unwrap().unwrap().row.key);
            }
        }
        assert_eq!(seen.len(), table.len());
        assert!(cell(packaged, 1.01, 5.0).is_err() && cell(packaged, 0.9, 15.0).is_err());
        assert!(cell(packaged, f64::NAN, 5.0).is_err());
        // What a sensor that failed shows is no food.
        assert!(cell(packaged, 0.0, 5.0).is_err() && cell(packaged, 0.9, 0.0).is_err());
    }
}

fn stays(stays: &[(f64, Option<f64>)], authority: Authority) -> Option<Verdict> {
    let stays: Vec<_> = stays
        .iter()
        .map(|&(f, h)| Stay {
            off: TemperatureInterval::default(),
            at: fahrenheit(f),
            time: h.and_then(|h| Range::exactly(hours(h)).ok()),
            was: Was::Cold,
        })
        .collect();
    warm(&stays, authority, Place::default()).map(|finding| finding.verdict)
}

const HOME: Authority = Authority::UsConsumer;

#[rstest]
#[case::two_hours(HOME, &[(70.0, Some(2.0))], Some(Verdict::Meets))]
#[case::a_little_more(HOME, &[(70.0, Some(2.01))], Some(Verdict::Breaks))]
#[case::added_up(HOME, &[(70.0, Some(1.5)), (60.0, Some(1.0))], Some(Verdict::Breaks))]
#[case::an_hour_in_hot_air(HOME, &[(91.0, Some(1.01))], Some(Verdict::Breaks))]
#[case::at_ninety(HOME, &[(90.0, Some(2.0))], Some(Verdict::Meets))]
#[case::cold(HOME, &[(40.0, Some(90.0))], None)]
#[case::hot(HOME, &[(140.0, Some(90.0))], None)]
#[case::of_no_known_length(HOME, &[(70.0, None)], Some(Verdict::Unproven))]
// The retail zone is 41 to 135 °F, and its time takes a procedure.
#[case::at_41(FC, &[(41.0, Some(9.0))], None)]
#[case::by_time_alone(FC, &[(80.0, Some(4.0))], Some(Verdict::Unproven))]
#[case::over_four_hours(FC, &[(80.0, Some(4.1))], Some(Verdict::Breaks))]
#[case::never_above_70(FC, &[(70.0, Some(6.0))], Some(Verdict::Unproven))]
#[case::over_six(FC, &[(70.0, Some(6.1))], Some(Verdict::Breaks))]
#[case::above_70_within_six(FC, &[(71.0, Some(5.0))], Some(Verdict::Breaks))]
#[case::australia(AU, &[(70.0, Some(2.0))], Some(Verdict::Meets))]
#[case::australia_longer(AU, &[(70.0, Some(2.1))], Some(Verdict::Breaks))]
#[case::says_nothing(Authority::UsFsis, &[(70.0, Some(9.0))], None)]
fn time_between_cold_and_hot_is_added_up(
    #[case] authority: Authority,
    #[case] at: &[(f64, Option<f64>)],
    #[case] expected: Option<Verdict>,
) {
    assert_eq!(stays(at, authority), expected);
}

fn falling() -> impl Strategy<Value = Vec<(f64, f64)>> {
    prop::collection::vec((0.05..1.5f64, 1.0..30.0f64), 4..12).prop_map(|steps| {
        let (mut at, mut f) = (0.0, 150.0);
        let mut curve = vec![(at, f)];
        for (time, fall) in steps {
            (at, f) = (at + time, (f - fall).max(33.0));
            curve.push((at, f));
        }
        curve.push((at + 1.0, 33.0));
        curve
    })
}

proptest! {
    // The same curve in less time.
    #[test]
    fn cooling_faster_never_breaks_what_cooling_slower_met(curve in falling(), share in 0.2..1.0f64) {
        let faster: Vec<_> = curve.iter().map(|&(h, f)| (h * share, f)).collect();
        for authority in [FC, AU, Authority::UsFsis, Authority::GreatBritain] {
            prop_assert!(verdict(&faster, authority) <= verdict(&curve, authority));
        }
    }

    #[test]
    fn a_point_on_the_line_changes_nothing(curve in falling(), at in 0.01..0.99f64, n in 0usize..4) {
        let (a, b) = (curve[n], curve[n + 1]);
        let mut more = curve.clone();
        more.insert(n + 1, (a.0 + (b.0 - a.0) * at, a.1 + (b.1 - a.1) * at));
        for leg in FOOD_CODE_COOLING.iter().chain(&AUSTRALIA) {
            let time = |curve: &[(f64, f64)]| {
                let mut clock = LegClock::new(leg, Scale::Fahrenheit, read_tolerance("1 °F").unwrap(), hours(f64::INFINITY));
                segments(&points(curve, fahrenheit)).iter().for_each(|s| clock.add(s));
                clock.time().map(|time| (time.low().value, time.high().value))
            };
            let (Some(one), Some(two)) = (time(&curve), time(&more)) else { continue };
            prop_assert!((one.0 - two.0).abs() < 1e-6 && (one.1 - two.1).abs() < 1e-6);
        }
        let celsius_curve = |curve: &[(f64, f64)]| -> Vec<_> {
            curve.iter().map(|&(h, f)| (h, (f - 32.0) / 1.8)).collect()
        };
        let grown = |curve: &[(f64, f64)]| grown(BEEF, 2.0, 6.0, &celsius_curve(curve));
        prop_assert!((grown(&curve) - grown(&more)).abs() < 1e-6);
    }

    #[test]
    fn growth_never_falls_with_time_and_is_never_negative(curve in falling(), h0 in 0.0..8.0f64, room in 0.5..8.0f64) {
        let mut growth = Growth::new(CHICKEN, h0, room).unwrap();
        let mut before = growth.log10();
        prop_assert!(before.abs() < 1e-12);
        for segment in segments(&points(&curve, fahrenheit)) {
            growth.add(&segment);
            let now = growth.log10();
            prop_assert!(now >= before - 1e-12 && now <= room + 1e-9);
            before = now;
        }
    }

    // A worse probe never proves more.
    #[test]
    fn a_worse_probe_proves_nothing_more(curve in falling(), off in 0.0..3.0f64, worse in 0.0..3.0f64) {
        let points = points(&curve, fahrenheit);
        let verdict = |off: f64| {
            let off = format!("{off:.3} °F");
            check(&cooling(&points, Some(&off), Holds::default()), FC, None).unwrap().verdict
        };
        let (good, bad) = (verdict(off), verdict(off + worse));
        prop_assert!(bad != Verdict::Meets || good == Verdict::Meets);
        prop_assert!(bad != Verdict::Breaks || good == Verdict::Breaks);
    }
}

#[test]
fn every_source_keeps_its_limit_and_the_strictest_counts() {
    use Factor::{Activity, Celsius, Ph, Salt};
    let strictest =
        |pathogen, factor| strictest_growth(pathogen, factor).and_then(|row| row.value.of(factor));
    for (pathogen, factor, expected) in [
        (Pathogen::Perfringens, Celsius, 10.0),
        (Pathogen::Campylobacter, Celsius, 25.0),
        (Pathogen::EscherichiaColi, Celsius, 2.5),
        (Pathogen::Listeria, Celsius, -1.5),
        (Pathogen::Listeria, Activity, 0.90),
        (Pathogen::Listeria, Salt, 16.0),
        (Pathogen::Salmonella, Ph, 3.7),
        (Pathogen::BotulinumNonProteolytic, Activity, 0.965),
        (Pathogen::StaphylococcusToxin, Activity, 0.85),
        (Pathogen::StaphylococcusGrowth, Activity, 0.83),
    ] {
        assert_eq!(strictest(pathogen, factor), Some(expected), "{pathogen:?} {factor:?}");
        for row in growth_limits(pathogen) {
            let Some(value) = row.value.of(factor) else { continue };
            let milder = if factor == Salt { value <= expected } else { value >= expected };
            assert!(milder, "{}: {value}", row.row.key);
        }
    }
    assert_eq!(growth_limits(Pathogen::Perfringens).count(), 3);
    assert_eq!(growth_limits(Pathogen::VibrioVulnificus).count(), 1);
}

// Measured on sausage and in meat, beside what the two models and the cardinal temperatures say: the
// same order of size, and up to twice apart.
#[test]
fn rates_that_were_measured_stand_beside_those_of_models() {
    let references = greenweight_references::References::read();
    let chicken = growth_models().find(|row| row.value.organism == "Salmonella").unwrap();
    let mut beside = 0;
    for row in &references.table("chill/growth-measured").rows {
        let at = celsius(row.number("temp_c"));
        let (measured, model) = match row.maybe_number("rate_log10_per_h") {
            Some(rate) => (rate, chicken.value.rate.at(at) / std::f64::consts::LN_10),
            None => (row.number("rate_ln_per_h"), BEEF.at(at)),
        };
        println!("{:<30} measured {measured:.3}, model {model:.3}", row.key);
        assert!(model > measured * 0.4 && model < measured * 5.0, "{}: {model}", row.key);
        beside += 1;
    }
    assert_eq!(beside, 12);
    // The nitrite of 10 ppm went with faster growth than none: a little is no protection.
    let rate = |key: &str| {
        let rows = &references.table("chill/growth-measured").rows;
        rows.iter().find(|row| row.key == key).unwrap().number("rate_log10_per_h")
    };
    assert!(rate("salmonella-10-c-10-ppm-1-salt") > rate("salmonella-10-c-0-ppm-1-salt"));
}

#[test]
fn what_is_kept_too_long_is_mended_to_the_days_before_the_last() {
    use greenweight::finding::Mend;
    use greenweight::units::days;
    let kept = Range::exactly(days(9.0)).ok();
    let finding = greenweight::chill::date_mark(kept, FC, Place::default()).unwrap();
    assert_eq!(finding.mend, Some(Mend::KeepFor(days(6.0))));
    let kept = Range::exactly(days(6.0)).ok();
    let meets = greenweight::chill::date_mark(kept, FC, Place::default()).unwrap();
    assert_eq!((meets.verdict, meets.mend), (Verdict::Meets, None));
}

#[test]
fn what_is_hot_is_not_exposed_and_a_stay_of_unknown_length_is_unproven() {
    let stay = |f: f64, h: Option<f64>| Stay {
        off: TemperatureInterval::default(),
        at: fahrenheit(f),
        time: h.and_then(|h| Range::exactly(hours(h)).ok()),
        was: Was::Hot,
    };
    let of = |stays: &[Stay]| ready_to_eat(stays, true, Place::default()).map(|f| f.verdict);
    assert_eq!(of(&[stay(135.0, Some(9.0)), stay(150.0, Some(9.0))]), None);
    assert_eq!(of(&[stay(50.0, Some(90.0))]), None);
    let hot_and_cool = [stay(140.0, Some(9.0)), stay(60.0, Some(5.0))];
    assert_eq!(of(&hot_and_cool), Some(Verdict::Meets));
    assert_eq!(of(&[stay(134.0, Some(1.0))]), Some(Verdict::Meets));
    assert_eq!(of(&[stay(134.0, Some(1.1))]), Some(Verdict::Breaks));
    assert_eq!(of(&[stay(60.0, None)]), Some(Verdict::Unproven));
    let mend = |stays: &[Stay]| ready_to_eat(stays, true, Place::default()).unwrap().mend;
    let five = greenweight::finding::Mend::KeepFor(hours(5.0));
    assert_eq!(
        (mend(&[stay(60.0, Some(6.0))]), mend(&[stay(60.0, Some(5.0))])),
        (Some(five), None)
    );
    // The row by how warm it ever gets: five hours at 60 °F, four of 80 °F with two of them warm.
    assert_eq!(of(&[stay(60.0, Some(5.1))]), Some(Verdict::Breaks));
    assert_eq!(of(&[stay(60.0, Some(2.0)), stay(80.0, Some(2.0))]), Some(Verdict::Meets));
    assert_eq!(of(&[stay(60.0, Some(1.0)), stay(80.0, Some(2.1))]), Some(Verdict::Breaks));
}
