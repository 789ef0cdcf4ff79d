//! A day of cooling, a reading a second, through every clock that is offered and one model of
//! growth.

use std::hint::black_box;

use criterion::{Criterion, Throughput, criterion_group, criterion_main};
use greenweight::chill::{
    AUSTRALIA, COOLING_US, FOOD_CODE_COOLING, Growth, LegClock, Rate, UNITED_KINGDOM,
};
use greenweight::trace::{Point, Track};
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
    let legs =
        || COOLING_US.iter().chain(&FOOD_CODE_COOLING).chain(&AUSTRALIA).chain(&UNITED_KINGDOM);
    let rate = Rate::Cardinal { least: 10.3, best: 43.5, most: 53.4, at_best: 5.64 };
    let mut group = criterion.benchmark_group("a day of cooling at 1 Hz");
    group.throughput(Throughput::Elements(86_400));
    group.bench_function("every clock and one model", |bench| {
        bench.iter(|| {
            let off = read_tolerance("1 °C").unwrap();
            let mut clocks: Vec<_> =
                legs().map(|leg| LegClock::new(leg, Scale::Celsius, off)).collect();
            let (mut growth, mut track) = (Growth::new(rate, 2.0, 6.0).unwrap(), Track::new());
            for point in black_box(&points) {
                if let Some(segment) = track.next(*point).unwrap() {
                    clocks.iter_mut().for_each(|clock| clock.add(&segment));
                    growth.add(&segment);
                }
            }
            (clocks.iter().filter(|clock| clock.time().is_some()).count(), growth.log10())
        });
    });
    group.bench_function("every clock", |bench| {
        bench.iter(|| {
            let off = read_tolerance("1 °C").unwrap();
            let mut clocks: Vec<_> =
                legs().map(|leg| LegClock::new(leg, Scale::Celsius, off)).collect();
            let mut track = Track::new();
            for point in black_box(&points) {
                if let Some(segment) = track.next(*point).unwrap() {
                    clocks.iter_mut().for_each(|clock| clock.add(&segment));
                }
            }
            clocks.iter().filter(|clock| clock.time().is_some()).count()
        });
    });
    group.finish();
}

criterion_group!(benches, cool);
criterion_main!(benches);
