//! The lethality of a record of ten million readings, against a plain loop that raises ten to a
//! power for every reading; and the reading of a file against the reader of its fields alone.

use std::fmt::Write;
use std::hint::black_box;

use criterion::{Criterion, Throughput, criterion_group, criterion_main};
use greenweight::cook::{Lethality, Product, Resistance, Verdicts};
use greenweight::trace::{Columns, Point, TimeColumn, Track, read_csv, vouched};
use greenweight::units::{Reading, Scale, read_tolerance, seconds};

const READINGS: u32 = 10_000_000;

/// A second apart, between 55 and 75 °C, to a tenth of a degree as a logger shows it.
fn celsius(n: u32) -> f64 {
    let slow = (f64::from(n) / 700.0).sin() * 9.0 + (f64::from(n) / 53.0).sin();
    ((65.0 + slow) * 10.0).round() / 10.0
}

fn points(count: u32) -> Vec<Point> {
    let point = |n: u32| {
        let reading = Reading::new(celsius(n), Scale::Celsius).unwrap();
        Point::new(seconds(f64::from(n)), reading).unwrap()
    };
    (0..count).map(point).collect()
}

fn lethality() -> Lethality {
    let at = Reading::new(70.0, Scale::Celsius).unwrap();
    let z = read_tolerance("7.5 °C").unwrap();
    let resistance = Resistance::new(seconds(20.0), at, z).unwrap();
    Lethality::new(resistance, Reading::new(55.0, Scale::Celsius).unwrap(), vouched(seconds(1.0)))
        .unwrap()
}

fn ours(points: &[Point]) -> f64 {
    let mut lethality = lethality();
    lethality.add_points(&mut Track::new(), points).unwrap();
    lethality.equivalent().value
}

/// The same as the points come.
fn one_by_one(points: &[Point]) -> f64 {
    let (mut track, mut lethality) = (Track::new(), lethality());
    for point in points {
        if let Ok(Some(segment)) = track.next(*point) {
            lethality.add(&segment);
        }
    }
    lethality.equivalent().value
}

/// The same closed form, with a power for every reading.
fn plain(points: &[Point]) -> f64 {
    let per_kelvin = std::f64::consts::LN_10 / 7.5;
    let rate = |celsius: f64| 10f64.powf((celsius - 70.0) / 7.5);
    let (mut sum, mut before) = (0.0, points[0]);
    let mut rate_before = rate(before.celsius());
    for point in &points[1..] {
        let rate = rate(point.celsius());
        let x = per_kelvin * (point.celsius() - before.celsius());
        let mean = if x.abs() < 1e-6 { rate } else { (rate - rate_before) / x };
        sum += (point.seconds() - before.seconds()) * mean;
        (before, rate_before) = (*point, rate);
    }
    sum
}

fn integrate(criterion: &mut Criterion) {
    for count in [READINGS / 10, READINGS] {
        let points = points(count);
        let (a, b) = (ours(&points), plain(&points));
        assert!((a / b - 1.0).abs() < 1e-6, "{a}, {b}");
        let mut group = criterion.benchmark_group(format!("lethality of {count} readings"));
        group.throughput(Throughput::Elements(u64::from(count))).sample_size(10);
        group.bench_function("plain powf", |bench| bench.iter(|| plain(black_box(&points))));
        group.bench_function("exact", |bench| bench.iter(|| ours(black_box(&points))));
        group.bench_function("exact, one by one", |bench| {
            bench.iter(|| one_by_one(black_box(&points)));
        });
        group.finish();
    }
}

fn judge(criterion: &mut Criterion) {
    let points = points(86_400);
    let mut group = criterion.benchmark_group("a day of one reading a second");
    group.throughput(Throughput::Elements(86_400));
    group.bench_function("every row of a table", |bench| {
        bench.iter(|| {
            let off = read_tolerance("1 °C").unwrap();
            let mut verdicts = Verdicts::new(Product::Meat, off, vouched(seconds(1.0))).unwrap();
            for point in black_box(&points) {
                verdicts.next(*point).unwrap();
            }
            verdicts.met().count()
        });
    });
    group.finish();
}

fn file(criterion: &mut Criterion) {
    let mut text = String::from("second,core\n");
    for n in 0..100_000 {
        writeln!(text, "{n},{}", celsius(n)).unwrap();
    }
    let mut group = criterion.benchmark_group("a file of 100000 readings");
    group.throughput(Throughput::Elements(100_000));
    group.bench_function("its fields alone", |bench| {
        bench.iter(|| {
            let mut reader = csv::Reader::from_reader(black_box(text.as_bytes()));
            reader.records().map(|record| record.unwrap().len()).sum::<usize>()
        });
    });
    group.bench_function("points", |bench| {
        let columns = Columns::new("second", TimeColumn::Seconds, "core", Scale::Celsius);
        bench.iter(|| {
            let instants = read_csv(black_box(text.as_bytes()), &columns).unwrap();
            instants.map(|instant| instant.unwrap().inside.celsius()).sum::<f64>()
        });
    });
    group.finish();
}

criterion_group!(benches, integrate, judge, file);
criterion_main!(benches);
