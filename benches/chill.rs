//! A day of cooling, a reading a second, through every clock that is offered and one model of
//! growth.

use std::hint::black_box;

use criterion::{Criterion, Throughput, criterion_group, criterion_main};
use greenweight::authority::Authority;
use greenweight::chill::{Cooling, Growth, Holds, Rate, check};
use greenweight::finding::Place;
use greenweight::trace::{Point, Track, vouched};
use greenweight::units::{Reading, Scale, read_tolerance, seconds};

fn day() -> Vec<Point> {
    let celsius = |n: u32| 2.0 + 68.0 * (-f64::from(n) / 9_000.0).exp();
    let point = |n: u32| {
        let reading = Reading::new(celsius(n), Scale::Celsius).unwrap();
        Point::new(seconds(f64::from(n)), reading).unwrap()
    };
    (0..86_400).map(point).collect()
}

fn cool(criterion: &mut Criterion) {
    let points = day();
    let cooling = Cooling {
        cooked_to: None,
        curve: &points,
        vouched: vouched(seconds(1.0)),
        thermometer: read_tolerance("1 °C").ok(),
        holds: Holds::default(),
        place: Place::default(),
    };
    let authorities = [
        Authority::UsFsis,
        Authority::UsFoodCode2022,
        Authority::AustraliaNewZealand,
        Authority::GreatBritain,
    ];
    let clocks = || authorities.map(|authority| check(black_box(&cooling), authority, None));
    let rate = Rate::Cardinal { least: 10.3, best: 43.5, most: 53.4, at_best: 5.64 };
    let grown = || {
        let (mut growth, mut track) = (Growth::new(rate, 2.0, 6.0).unwrap(), Track::new());
        for point in black_box(&points) {
            if let Some(segment) = track.next(*point).unwrap() {
                growth.add(&segment);
            }
        }
        growth.log10()
    };
    let mut group = criterion.benchmark_group("a day of cooling at 1 Hz");
    group.throughput(Throughput::Elements(86_400));
    group.bench_function("every clock and one model", |bench| bench.iter(|| (clocks(), grown())));
    group.bench_function("every clock", |bench| bench.iter(clocks));
    group.bench_function("one model", |bench| bench.iter(grown));
    group.finish();
}

criterion_group!(benches, cool);
criterion_main!(benches);
