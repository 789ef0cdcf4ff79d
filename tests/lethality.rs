//! Lethality of a record, the rows it meets, and the come-up clock. Integrals were worked out
//! with mpmath 1.4.1 at forty digits (`quad` over each straight piece).

use greenweight::cook::{Bird, ComeUp, Lethality, Product, Resistance, Verdicts, poultry_time};
use greenweight::trace::{Point, Segment, Track};
use greenweight::units::{Reading, Scale, Time, minutes, read_tolerance, seconds};
use proptest::prelude::*;
use rstest::rstest;

/// For readings with a straight line between them, however far apart.
fn ever() -> Time {
    seconds(f64::INFINITY)
}

fn celsius(value: f64) -> Reading {
    Reading::new(value, Scale::Celsius).unwrap()
}

fn fahrenheit(value: f64) -> Reading {
    Reading::new(value, Scale::Fahrenheit).unwrap()
}

fn segments(points: &[(f64, f64)]) -> Vec<Segment> {
    let mut track = Track::new();
    let point = |&(at, c): &(f64, f64)| Point::new(seconds(at), celsius(c)).unwrap();
    points.iter().filter_map(|at| track.next(point(at)).unwrap()).collect()
}

/// A minute of D at a reference.
fn counter(z: f64, reference: f64, floor: f64) -> Lethality {
    let z = read_tolerance(&format!("{z} °C")).unwrap();
    let resistance = Resistance::new(minutes(1.0), celsius(reference), z).unwrap();
    Lethality::new(resistance, celsius(floor), ever()).unwrap()
}

fn counted(mut counter: Lethality, points: &[(f64, f64)]) -> Lethality {
    for segment in segments(points) {
        counter.add(&segment);
    }
    counter
}

#[rstest]
#[case(10.0, 65.6, 57.8, &[(0.0, 73.48), (195.0, 43.31), (720.0, 56.41), (911.0, 39.24), (1222.0, 41.38), (1774.0, 71.43)], 459.7922218572441)]
#[case(10.0, 65.6, 57.8, &[(0.0, 68.25), (162.0, 63.04), (704.0, 37.84), (741.0, 43.56), (989.0, 61.98), (1465.0, 49.68), (1666.0, 58.36)], 273.1201342303431)]
#[case(5.56, 70.0, 40.0, &[(0.0, 55.58), (285.0, 53.31), (850.0, 79.81), (936.0, 66.85), (1259.0, 69.11), (1785.0, 48.01)], 4106.812296465586)]
#[case(5.56, 65.6, 40.0, &[(0.0, 73.1), (396.0, 38.01), (414.0, 73.13), (415.0, 44.61), (469.0, 56.15), (876.0, 53.89), (1456.0, 63.33)], 700.7283328698389)]
#[case(5.56, 65.6, 54.4, &[(0.0, 35.68), (420.0, 69.11), (541.0, 41.06), (645.0, 35.49), (1122.0, 70.87)], 462.3645034480822)]
#[case(6.0, 65.6, 57.8, &[(0.0, 43.58), (135.0, 53.87), (528.0, 40.24), (959.0, 79.55), (960.0, 47.14), (1272.0, 79.91), (1293.0, 44.48)], 12447.49267296999)]
fn the_integral_is_that_of_forty_digits(
    #[case] z: f64,
    #[case] reference: f64,
    #[case] floor: f64,
    #[case] points: &[(f64, f64)],
    #[case] expected: f64,
) {
    let found = counted(counter(z, reference, floor), points).equivalent().value;
    assert!((found / expected - 1.0).abs() < 1e-12, "{found}, {expected}");
}

// In steps of a whole z the mean of two rates overstates: (1 + 10) / 2 × ln 10 / 9 = 1.407.
#[test]
fn the_mean_of_two_rates_would_overstate_by_two_fifths_and_ours_does_not() {
    let ramp: Vec<_> = (0..4).map(|n| (f64::from(n) * 60.0, 40.0 + f64::from(n) * 10.0)).collect();
    let exact = counted(counter(10.0, 70.0, 30.0), &ramp).equivalent().value;
    let rate = |c: f64| 10_f64.powf((c - 70.0) / 10.0);
    let trapezoid: f64 =
        ramp.windows(2).map(|pair| 60.0 * (rate(pair[0].1) + rate(pair[1].1)) / 2.0).sum();
    let overstated = trapezoid / exact - 1.0;
    assert!((overstated - 0.407).abs() < 0.001, "{overstated}");
    let lower = counted(counter(10.0, 70.0, 30.0), &ramp).equivalent_by_lower_ends().value;
    assert!(lower < exact);
}

#[test]
fn one_ramp_read_every_second_ten_or_sixty_has_one_lethality() {
    let every = |step: u32| {
        let points: Vec<_> = (0..=3600)
            .step_by(usize::try_from(step).unwrap())
            .map(|s| (f64::from(s), 40.0 + f64::from(s) * 35.0 / 3600.0))
            .collect();
        counted(counter(5.56, 65.6, 54.4), &points).logs()
    };
    let (one, ten, sixty) = (every(1), every(10), every(60));
    assert!((one / sixty - 1.0).abs() < 1e-6 && (ten / sixty - 1.0).abs() < 1e-6);
    // In fact they differ by rounding alone.
    assert!((one / sixty - 1.0).abs() < 1e-11, "{one} {sixty}");
}

/// The rows met by readings a minute apart.
fn met(product: Product, tolerance: &str, readings: &[f64]) -> Vec<&'static str> {
    let mut verdicts = Verdicts::new(product, read_tolerance(tolerance).unwrap(), ever()).unwrap();
    for (minute, &reading) in (0_u32..).zip(readings) {
        let at = minutes(f64::from(minute));
        verdicts.next(Point::new(at, fahrenheit(reading)).unwrap()).unwrap();
    }
    verdicts.met().map(|row| row.row.key).collect()
}

const POULTRY: Product = Product::Poultry { bird: Bird::Other, fat: None };

// Meat takes four minutes at 145 °F for 6.5 log; a blend with poultry 13.8.
#[test]
fn a_blend_with_poultry_is_refused_what_meat_is_granted() {
    let four_minutes = [145.0; 5];
    assert_eq!(met(Product::Meat, "0 °F", &four_minutes), ["145F"]);
    assert!(met(POULTRY, "0 °F", &four_minutes).is_empty());
    assert_eq!(met(POULTRY, "0 °F", &[145.0; 15]).last().copied(), Some("turkey-145F"));
}

#[test]
fn one_sample_at_158_fahrenheit_is_no_row() {
    assert!(met(Product::Meat, "0 °F", &[140.0, 158.0, 140.0]).is_empty());
    assert!(met(Product::Meat, "0 °F", &[140.0, 158.0, 158.0]).contains(&"158F"));
}

// 155 °F asks for 22 s. Read once a minute on a thermometer of ±2 °F, 155 is the row of 153,
// which asks for 34 s; read for half a minute it is neither, and 157 is.
#[rstest]
#[case::at_155(155.0, false)]
#[case::at_157(157.0, true)]
fn a_reading_counts_less_the_tolerance(#[case] reading: f64, #[case] is_met: bool) {
    let mut verdicts =
        Verdicts::new(Product::Meat, read_tolerance("2 °F").unwrap(), ever()).unwrap();
    for second in [0.0, 11.0, 22.0] {
        verdicts.next(Point::new(seconds(second), fahrenheit(reading)).unwrap()).unwrap();
    }
    assert_eq!(verdicts.met().next().is_some(), is_met);
    let longer = verdicts.longer().unwrap().value;
    assert_eq!(longer, if is_met { 0.0 } else { 12.0 });
}

// A cook who reads 68.3 °C has reached the row of 155 °F, which prints 68.3 °C beside it.
#[rstest]
#[case(68.3, true)]
#[case(68.2, false)]
fn a_reading_in_celsius_is_held_against_the_printed_celsius(#[case] c: f64, #[case] is_met: bool) {
    let mut verdicts =
        Verdicts::new(Product::Meat, read_tolerance("0 °C").unwrap(), ever()).unwrap();
    for second in [0.0, 22.0] {
        verdicts.next(Point::new(seconds(second), celsius(c)).unwrap()).unwrap();
    }
    assert_eq!(verdicts.met().any(|row| row.row.key == "155F"), is_met);
}

#[rstest]
// FSIS 2021, tables 3 and 4.
#[case(Bird::Chicken, Some(1.0), 136.0, 63.3)]
#[case(Bird::Chicken, Some(1.1), 136.0, 64.5)]
#[case(Bird::Chicken, Some(12.0), 136.0, 81.4)]
#[case(Bird::Chicken, Some(30.0), 136.0, 81.4)]
#[case(Bird::Chicken, None, 136.0, 81.4)]
fn fat_between_two_columns_takes_the_fatter_one(
    #[case] bird: Bird,
    #[case] fat: Option<f64>,
    #[case] inside: f64,
    #[case] expected: f64,
) {
    let time = poultry_time(fahrenheit(inside), bird, fat).unwrap().unwrap();
    assert!((time.value / 60.0 - expected).abs() < 1e-9);
    assert!(poultry_time(fahrenheit(135.9), bird, fat).unwrap().is_none());
}

#[test]
fn of_another_bird_the_longer_of_the_two_counts_cell_by_cell() {
    for inside in 136..=165 {
        for fat in 0..=13 {
            let (at, fat) = (fahrenheit(f64::from(inside)), Some(f64::from(fat)));
            let time = |bird| poultry_time(at, bird, fat).unwrap().unwrap().value;
            assert_eq!(time(Bird::Other), time(Bird::Chicken).max(time(Bird::Turkey)));
        }
    }
}

#[test]
fn the_come_up_clock_counts_to_the_last_time_it_left_upwards() {
    let clock = |points: &[(f64, f64)]| {
        let mut clock = ComeUp::new(ever());
        for segment in segments(&points.iter().map(|&(h, c)| (h * 3600.0, c)).collect::<Vec<_>>()) {
            clock.add(&segment);
        }
        clock
    };
    let hours = |clock: ComeUp| clock.heating().value / 3600.0;
    // 10 to 54.44 °C in five hours and on; before and after do not count.
    let (low, high) = (10.0, (130.0 - 32.0) / 1.8);
    let plain = clock(&[(0.0, 2.0), (1.0, low), (6.0, high), (7.0, 70.0), (9.0, 5.0)]);
    assert!((hours(plain) - 5.0).abs() < 1e-9);
    assert!(plain.within_limit());
    assert!(plain.so_far() > plain.heating(), "cooling through the band is not heating");
    // It dips back and comes again: the dip counts.
    let dipped = clock(&[(0.0, low), (5.0, high), (5.5, 60.0), (6.0, 50.0), (7.0, 60.0)]);
    assert!(hours(dipped) > 5.5 && dipped.heating() < minutes(7.0 * 60.0));
    let late = clock(&[(0.0, low), (6.1, high), (7.0, 70.0)]);
    assert!(!late.within_limit());
    let mut again = late;
    again.restart();
    assert!(again.within_limit());
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 500, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn hotter_and_longer_never_kill_less(
        steps in prop::collection::vec((1.0..600.0_f64, 30.0..90.0_f64), 2..20),
        hotter in 0.0..10.0_f64, longer in 1.0..3.0_f64,
    ) {
        let record = |more: f64, times: f64| -> Vec<(f64, f64)> {
            let mut at = 0.0;
            steps.iter().map(|&(dt, c)| { at += dt * times; (at, c + more) }).collect()
        };
        let of = |points: &[(f64, f64)]| counted(counter(5.56, 65.6, 54.4), points);
        let plain = of(&record(0.0, 1.0));
        prop_assert!(of(&record(hotter, 1.0)).logs() >= plain.logs() * (1.0 - 1e-12));
        prop_assert!(of(&record(0.0, longer)).logs() >= plain.logs() * (1.0 - 1e-12));
        prop_assert!(plain.logs_by_lower_ends() <= plain.logs() * (1.0 + 1e-12));
    }

    #[test]
    fn a_point_on_the_line_changes_nothing_and_two_parts_add_up(
        steps in prop::collection::vec((1.0..600.0_f64, 30.0..90.0_f64), 3..12),
        at in 0.05..0.95_f64, cut in 1..2_usize,
    ) {
        let mut clock = 0.0;
        let points: Vec<_> = steps.iter().map(|&(dt, c)| { clock += dt; (clock, c) }).collect();
        let whole = counted(counter(5.56, 65.6, 54.4), &points).equivalent().value;
        let mut more = Vec::new();
        for pair in points.windows(2) {
            let (a, b) = (pair[0], pair[1]);
            more.push(a);
            more.push((a.0 + (b.0 - a.0) * at, a.1 + (b.1 - a.1) * at));
        }
        more.push(*points.last().unwrap());
        let dense = counted(counter(5.56, 65.6, 54.4), &more).equivalent().value;
        let near = |a: f64, b: f64| (a - b).abs() <= 1e-9 * a.max(b) + 1e-12;
        prop_assert!(near(whole, dense), "{} {}", whole, dense);
        let first = counted(counter(5.56, 65.6, 54.4), &points[..=cut]).equivalent().value;
        let second = counted(counter(5.56, 65.6, 54.4), &points[cut..]).equivalent().value;
        prop_assert!(near(whole, first + second));
    }

    #[test]
    fn a_longer_record_keeps_every_row_that_was_met(
        readings in prop::collection::vec(120.0..170.0_f64, 2..60), more in prop::collection::vec(30.0..170.0_f64, 0..20),
    ) {
        let before = met(Product::Meat, "1 °F", &readings);
        let all: Vec<_> = readings.iter().chain(&more).copied().collect();
        let after = met(Product::Meat, "1 °F", &all);
        prop_assert!(before.iter().all(|row| after.contains(row)));
        // A better thermometer never loses a row, and a hotter record neither.
        let sure = met(Product::Meat, "0 °F", &readings);
        prop_assert!(before.iter().all(|row| sure.contains(row)));
    }
}

/// A tenth of a degree a second, up and down between 58 and 68 °C.
fn saw(count: u32) -> Vec<Point> {
    let celsius_at = |n: u32| {
        let k = n % 200;
        58.0 + f64::from(if k < 100 { k } else { 200 - k }) / 10.0
    };
    (0..=count)
        .map(|n| Point::new(seconds(f64::from(n)), celsius(celsius_at(n))).unwrap())
        .collect()
}

fn at_once(mut counter: Lethality, points: &[Point], chunk: usize) -> Lethality {
    let mut track = Track::new();
    for points in points.chunks(chunk) {
        counter.add_points(&mut track, points).unwrap();
    }
    counter
}

#[test]
fn ten_thousand_small_steps_are_those_of_forty_digits_and_of_a_plain_loop() {
    let points = saw(10_000);
    let found = at_once(counter(7.5, 70.0, 55.0), &points, points.len());
    let exact = found.equivalent().value;
    assert!((exact / 1_680.884_662_422_014_4 - 1.0).abs() < 1e-12, "{exact}");
    let lower = found.equivalent_by_lower_ends().value;
    assert!((lower / 1_655.214_155_076_655_5 - 1.0).abs() < 1e-12, "{lower}");
    let rate = |point: &Point| 10f64.powf((point.celsius() - 70.0) / 7.5);
    let per_kelvin = std::f64::consts::LN_10 / 7.5;
    let plain: f64 = points
        .windows(2)
        .map(|pair| {
            (rate(&pair[1]) - rate(&pair[0]))
                / (per_kelvin * (pair[1].celsius() - pair[0].celsius()))
        })
        .sum();
    assert!((exact / plain - 1.0).abs() < 1e-9, "{plain}");
}

#[test]
fn many_points_at_once_fail_where_one_would() {
    let mut points = saw(1_000);
    points[700] = points[699];
    let mut counter = counter(7.5, 70.0, 55.0);
    let fault = counter.add_points(&mut Track::new(), &points).unwrap_err();
    assert!(fault.to_string().contains("699"), "{fault}");
    // What came before it is counted.
    let before = at_once(self::counter(7.5, 70.0, 55.0), &points[..700], 700);
    assert!((counter.logs() / before.logs() - 1.0).abs() < 1e-12);
}

#[test]
fn another_z_above_the_reference_bends_the_rate_there() {
    let z = |k: &str| read_tolerance(k).unwrap();
    let botulinum = Resistance::new(minutes(1.0), celsius(90.0), z("7 °C")).unwrap();
    let bent = botulinum.with_z_above(z("10 °C")).unwrap();
    let resistance_above = Resistance::new(minutes(1.0), celsius(90.0), z("10 °C")).unwrap();
    let count = |resistance, points: &[(f64, f64)]| {
        counted(Lethality::new(resistance, celsius(70.0), ever()).unwrap(), points)
    };
    // A ramp across the bend is its two halves.
    let ramp = count(bent, &[(0.0, 80.0), (200.0, 100.0)]);
    let below = count(botulinum, &[(0.0, 80.0), (100.0, 90.0)]);
    let above = count(resistance_above, &[(0.0, 90.0), (100.0, 100.0)]);
    let sum = below.equivalent().value + above.equivalent().value;
    assert!((ramp.equivalent().value / sum - 1.0).abs() < 1e-12);
    // Down again it is the same.
    let down = count(bent, &[(0.0, 100.0), (200.0, 80.0)]);
    assert!((down.equivalent().value / sum - 1.0).abs() < 1e-12);
    // By its lower end: the whole ramp at 80 °C.
    let rate = bent.rate(celsius(80.0));
    assert!((ramp.equivalent_by_lower_ends().value / (200.0 * rate) - 1.0).abs() < 1e-12);
}

#[test]
fn a_line_needs_two_temperatures_and_has_to_fall() {
    let fit = |pairs: &[(f64, f64)]| {
        let pairs: Vec<_> = pairs.iter().map(|&(t, d)| (celsius(t), seconds(d))).collect();
        Resistance::fit(&pairs, celsius(60.0))
    };
    assert!(fit(&[]).is_none());
    assert!(fit(&[(60.0, 60.0)]).is_none());
    assert!(fit(&[(60.0, 60.0), (60.0, 6.0)]).is_none());
    assert!(fit(&[(60.0, 60.0), (70.0, 600.0)]).is_none());
    assert!(fit(&[(60.0, 60.0), (70.0, 0.0)]).is_none());
    let line = fit(&[(60.0, 60.0), (70.0, 6.0)]).unwrap();
    assert!((line.d().value - 60.0).abs() < 1e-9 && (line.z().value - 10.0).abs() < 1e-9);
}

proptest! {
    // In blocks or one by one, in whatever pieces they come, rough or smooth.
    #[test]
    fn many_points_at_once_count_as_one_by_one(
        steps in prop::collection::vec((0.1..2.0f64, -0.3..0.3f64), 300..900),
        rough in prop::collection::vec((0usize..300, -20.0..20.0f64), 0..3),
        chunk in 1usize..900, start in 52.0..70.0f64,
    ) {
        let (mut at, mut c) = (0.0, start);
        let mut points = Vec::new();
        for (n, (dt, dc)) in steps.iter().enumerate() {
            let jump: f64 = rough.iter().filter(|(at, _)| *at == n).map(|(_, jump)| jump).sum();
            at += dt;
            c = (c + dc + jump).clamp(30.0, 95.0);
            points.push(Point::new(seconds(at), celsius(c)).unwrap());
        }
        let mut one_by_one = counter(7.5, 70.0, 55.0);
        let mut track = Track::new();
        for point in &points {
            if let Some(segment) = track.next(*point).unwrap() {
                one_by_one.add(&segment);
            }
        }
        let blocks = at_once(counter(7.5, 70.0, 55.0), &points, chunk);
        let same = |a: f64, b: f64| (a - b).abs() <= 1e-11 * a.abs().max(1e-300);
        prop_assert!(same(blocks.logs(), one_by_one.logs()));
        prop_assert!(same(blocks.logs_by_lower_ends(), one_by_one.logs_by_lower_ends()));
    }
}

#[test]
fn the_share_of_a_row_is_the_time_held_over_the_time_asked() {
    let mut verdicts =
        Verdicts::new(Product::Meat, read_tolerance("0 °F").unwrap(), ever()).unwrap();
    for at in [0.0, 3.0] {
        verdicts.next(Point::new(minutes(at), fahrenheit(158.0)).unwrap()).unwrap();
    }
    let share = |key: &str| verdicts.rows().find(|row| row.row.key == key).unwrap().share();
    // 145 °F asks for four minutes, 158 for none: it counts as a second.
    assert_eq!((share("145F"), share("158F"), share("159F")), (0.75, 180.0, 0.0));
}

// Half of each segment lies below what is counted, on either side of the bend: each side has its own z.
#[test]
fn what_is_cut_off_below_a_bend_keeps_the_z_of_its_side() {
    let z = |kelvin: &str| read_tolerance(kelvin).unwrap();
    let of = |below: &str, above: &str, floor: f64, points: &[(f64, f64)]| {
        let resistance = Resistance::new(minutes(1.0), celsius(90.0), z(below)).unwrap();
        let resistance = resistance.with_z_above(z(above)).unwrap();
        let counter = Lethality::new(resistance, celsius(floor), ever()).unwrap();
        counted(counter, points).equivalent().value
    };
    let below = [(0.0, 70.0), (600.0, 90.0)];
    assert!((of("7 °C", "10 °C", 80.0, &below) - of("7 °C", "7 °C", 80.0, &below)).abs() < 1e-9);
    assert!((of("7 °C", "10 °C", 80.0, &below) - of("10 °C", "10 °C", 80.0, &below)).abs() > 1.0);
    let above = [(0.0, 90.0), (600.0, 110.0)];
    let halved = [(300.0, 100.0), (600.0, 110.0)];
    let counts = of("7 °C", "10 °C", 100.0, &above);
    assert!((counts - of("10 °C", "10 °C", 100.0, &halved)).abs() < 1e-9);
}

#[test]
fn it_has_come_up_only_where_the_band_was_left_upwards() {
    let came = |points: &[(f64, f64)], off: &str| {
        let mut clock = ComeUp::within(read_tolerance(off).unwrap(), ever());
        segments(points).iter().for_each(|segment| clock.add(segment));
        clock.came_up()
    };
    // 130 °F is 54.4 °C.
    assert!(came(&[(0.0, 4.0), (600.0, 55.0)], "0 °C"));
    assert!(!came(&[(0.0, 4.0), (600.0, 54.0)], "0 °C"));
    // By a probe that may be off by 2 K it may have been left at 53 °C; not at 52.
    assert!(came(&[(0.0, 4.0), (600.0, 53.0)], "2 °C"));
    assert!(!came(&[(0.0, 4.0), (600.0, 52.0)], "2 °C"));
}

// Whatever step of a block is the steep one, the first and the last among them.
#[test]
fn a_steep_step_anywhere_is_counted_exactly() {
    for steep in [255, 256, 257, 300, 510, 511, 512] {
        let points: Vec<_> = (0..1024)
            .map(|n| {
                let c = if n > steep { 78.0 } else { 66.0 } + 0.001 * f64::from(n % 7);
                Point::new(seconds(f64::from(n)), celsius(c)).unwrap()
            })
            .collect();
        let mut at_once = counter(7.5, 70.0, 55.0);
        at_once.add_points(&mut Track::new(), &points).unwrap();
        let (mut one_by_one, mut track) = (counter(7.5, 70.0, 55.0), Track::new());
        for point in &points {
            if let Some(segment) = track.next(*point).unwrap() {
                one_by_one.add(&segment);
            }
        }
        let (a, b) = (at_once.logs(), one_by_one.logs());
        assert!((a / b - 1.0).abs() < 1e-13, "{steep}: {a} and {b}");
        let (a, b) = (at_once.logs_by_lower_ends(), one_by_one.logs_by_lower_ends());
        assert!((a / b - 1.0).abs() < 1e-13, "{steep}: {a} and {b} by lower ends");
    }
}
