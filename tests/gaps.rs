//! Time between readings that nobody saw: it counts nothing towards a hold and in full towards a clock, so
//! dropping readings never proves anything.

use greenweight::chill::{COOLING_US, FOOD_CODE_COOLING, LegClock};
use greenweight::cook::{ComeUp, Lethality, Product, Resistance, Verdicts};
use greenweight::trace::{Point, Segment, Track, vouched};
use greenweight::units::{Reading, Scale, Time, minutes, read_tolerance, seconds};
use proptest::prelude::*;
use rstest::rstest;

/// Readings that are even a little less far apart vouch for the time between them.
const APART: f64 = 10.0;

fn points(readings: &[(f64, f64)]) -> Vec<Point> {
    let point = |&(minute, f): &(f64, f64)| {
        Point::new(minutes(minute), Reading::new(f, Scale::Fahrenheit).unwrap()).unwrap()
    };
    readings.iter().map(point).collect()
}

fn segments(points: &[Point]) -> Vec<Segment> {
    let mut track = Track::new();
    points.iter().filter_map(|point| track.next(*point).unwrap()).collect()
}

fn verdicts(points: &[Point], apart: Time) -> Verdicts {
    let mut verdicts =
        Verdicts::new(Product::Meat, read_tolerance("1 °F").unwrap(), apart).unwrap();
    for point in points {
        verdicts.next(*point).unwrap();
    }
    verdicts
}

fn lethality(apart: Time) -> Lethality {
    let fahrenheit = |f| Reading::new(f, Scale::Fahrenheit).unwrap();
    let z = read_tolerance("10 °F").unwrap();
    let resistance = Resistance::new(minutes(1.0), fahrenheit(150.0), z).unwrap();
    Lethality::new(resistance, fahrenheit(130.0), apart).unwrap()
}

fn logs(points: &[Point], apart: Time) -> f64 {
    let mut sum = lethality(apart);
    segments(points).iter().for_each(|segment| sum.add(segment));
    sum.logs()
}

fn come_up(points: &[Point], apart: Time) -> [f64; 2] {
    let off = read_tolerance("1 °F").unwrap();
    [ComeUp::shortest(off, apart), ComeUp::within(off, apart)].map(|mut clock| {
        segments(points).iter().for_each(|segment| clock.add(segment));
        clock.time().value / 60.0
    })
}

/// The shortest and the longest that the first leg of the Food Code may take, in minutes.
fn first_leg(points: &[Point], apart: Time) -> Option<(f64, f64)> {
    let [first, _] = &FOOD_CODE_COOLING;
    let off = read_tolerance("0 °F").unwrap();
    let mut clock = LegClock::new(first, Scale::Fahrenheit, off, apart);
    segments(points).iter().for_each(|segment| clock.add(segment));
    clock.time().map(|time| (time.low().value / 60.0, time.high().value / 60.0))
}

#[rstest]
#[case::a_logger_of_seconds(10.0, 35.0)]
#[case::one_of_minutes(60.0, 210.0)]
#[case::by_hand(1200.0, 900.0)]
fn so_far_apart_readings_vouch(#[case] step: f64, #[case] apart: f64) {
    assert_eq!(vouched(seconds(step)), seconds(apart));
}

#[test]
fn hours_without_a_reading_are_no_hold_and_no_lethality() {
    let silent = points(&[(0.0, 150.0), (780.0, 150.0)]);
    assert_eq!(verdicts(&silent, minutes(APART)).met().count(), 0);
    assert_eq!(logs(&silent, minutes(APART)), 0.0);
    // The same readings vouch for all of it only where somebody says so.
    assert!(verdicts(&silent, minutes(780.0)).met().count() > 0);
    assert!(logs(&silent, minutes(780.0)) > 700.0);
    // What is not a number vouches for nothing.
    assert_eq!(verdicts(&silent, minutes(f64::NAN)).met().count(), 0);
}

#[test]
fn a_hold_begins_anew_after_a_gap() {
    let held = points(&[(0.0, 146.0), (3.0, 146.0), (60.0, 146.0), (63.0, 146.0), (64.0, 146.0)]);
    let rows = verdicts(&held, minutes(APART));
    let row = rows.rows().find(|row| row.row.key == "145F").unwrap();
    assert_eq!((row.held, row.met_at), (minutes(4.0), Some(minutes(64.0))));
    // Nothing is left of the time before it.
    assert_eq!(verdicts(&held[..3], minutes(APART)).longer(), Some(minutes(4.0)));
}

#[rstest]
// All of it may have been on the way up, or next to nothing.
#[case::up_through_the_band(&[(0.0, 40.0), (480.0, 158.0)], [0.0, 480.0])]
// It does not leave the band and come back unseen.
#[case::within_the_band(&[(0.0, 60.0), (400.0, 100.0), (405.0, 135.0)], [404.0, 405.0])]
// A fire that died overnight.
#[case::hot_before_and_after(&[(0.0, 140.0), (600.0, 140.0)], [0.0, 600.0])]
// What comes after is cooling.
#[case::after_the_cook(&[(0.0, 140.0), (5.0, 140.0), (600.0, 60.0)], [0.0, 0.0])]
fn a_gap_counts_in_full_to_the_come_up(
    #[case] readings: &[(f64, f64)],
    #[case] expected: [f64; 2],
) {
    let found = come_up(&points(readings), minutes(APART));
    for (found, expected) in found.into_iter().zip(expected) {
        assert!((found - expected).abs() < 1.0, "{found}, {expected}");
    }
}

// From 135 to 70 °F by the Food Code: it falls below the one in the first gap, and below the other in the second.
#[rstest]
#[case::not_a_number(f64::NAN)]
#[case::backwards(-60.0)]
#[case::none(0.0)]
fn a_step_that_no_record_has_vouches_for_nothing(#[case] step: f64) {
    let held = points(&[(0.0, 160.0), (1.0, 160.0)]);
    assert!(segments(&held)[0].is_gap(vouched(seconds(step))));
}

#[test]
fn a_cooling_clock_crosses_a_gap_at_its_worse_end() {
    let readings = points(&[(0.0, 150.0), (30.0, 120.0), (35.0, 100.0), (95.0, 60.0)]);
    assert_eq!(first_leg(&readings, minutes(APART)), Some((5.0, 95.0)));
    let (line, same) = first_leg(&readings, minutes(60.0)).unwrap();
    assert!((line - 65.0).abs() < 1e-9 && (same - line).abs() < 1e-9);
}

/// Minutes and degrees Fahrenheit.
type Readings = Vec<(f64, f64)>;

/// Readings so near that each is a gap's worth away from the next but one, and some of them.
fn some_of(readings: std::ops::Range<f64>) -> impl Strategy<Value = [Readings; 2]> {
    prop::collection::vec((0.501 * APART..APART, readings, any::<bool>()), 3..40).prop_map(|rows| {
        let mut at = 0.0;
        let all = rows.iter().map(|&(step, f, kept)| {
            at += step;
            ((at, f), kept)
        });
        let all: Vec<_> = all.collect();
        let last = all.len() - 1;
        let kept = all.iter().enumerate().filter(|(n, (_, kept))| *kept || *n == 0 || *n == last);
        [all.iter().map(|(at, _)| *at).collect(), kept.map(|(_, (at, _))| *at).collect()]
    })
}

proptest! {
    #[test]
    fn dropping_readings_never_meets_a_row_nor_adds_lethality([all, kept] in some_of(125.0..165.0)) {
        let (all, kept, apart) = (points(&all), points(&kept), minutes(APART));
        let (full, thin) = (verdicts(&all, apart), verdicts(&kept, apart));
        for (full, thin) in full.rows().zip(thin.rows()) {
            prop_assert!(thin.held <= full.held && (full.met || !thin.met));
        }
        prop_assert!(logs(&kept, apart) <= logs(&all, apart) * (1.0 + 1e-12));
    }

    // A cook is over when it is hot: the last reading stays.
    #[test]
    fn dropping_readings_never_shortens_the_way_up([mut all, mut kept] in some_of(40.0..140.0)) {
        for record in [&mut all, &mut kept] {
            record.last_mut().unwrap().1 = 140.0;
        }
        let [least, most] = come_up(&points(&all), minutes(APART));
        let [_, thin] = come_up(&points(&kept), minutes(APART));
        prop_assert!(least <= most && most <= thin + 1e-9, "{least} {most} {thin}");
    }

    #[test]
    fn dropping_readings_never_cools_faster([mut all, mut kept] in some_of(0.0..1.0)) {
        // The readings fall; each is colder by its share.
        let last = all.last().unwrap().0;
        for record in [&mut all, &mut kept] {
            record.iter_mut().for_each(|(at, f)| *f = 160.0 - 125.0 * *at / last - *f * 1e-3);
        }
        for leg in FOOD_CODE_COOLING.iter().chain(&COOLING_US) {
            let off = read_tolerance("1 °F").unwrap();
            let time = |readings: &[(f64, f64)]| {
                let mut clock = LegClock::new(leg, Scale::Fahrenheit, off, minutes(APART));
                segments(&points(readings)).iter().for_each(|segment| clock.add(segment));
                clock.time().map(|time| (time.low(), time.high()))
            };
            if let (Some((least, most)), Some((short, long))) = (time(&all), time(&kept)) {
                prop_assert!(long.value >= most.value - 1e-6 && short.value <= least.value + 1e-6);
            }
        }
    }

    // Vouching for less proves less, in blocks as one by one.
    #[test]
    fn the_shorter_the_time_that_is_vouched_for_the_less_is_proven(
        steps in prop::collection::vec((0.1..4.0f64, 140.0..150.0f64), 300..600),
        apart in 0.5..4.0f64, less in 0.1..1.0f64,
    ) {
        let mut at = 0.0;
        let readings = steps.iter().map(|&(step, f)| { at += step; (at, f) });
        let points = points(&readings.collect::<Vec<_>>());
        let (apart, less) = (minutes(apart), minutes(apart * less));
        prop_assert!(logs(&points, less) <= logs(&points, apart));
        let met = |apart| verdicts(&points, apart).met().count();
        prop_assert!(met(less) <= met(apart));
        let mut at_once = lethality(apart);
        at_once.add_points(&mut Track::new(), &points).unwrap();
        prop_assert!((at_once.logs() - logs(&points, apart)).abs() <= 1e-9 * at_once.logs());
    }
}
