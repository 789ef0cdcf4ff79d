//! Cure forward and inverse against the same formulas in plain `f64`, and the reading of
//! quantities, each in one run.

use std::hint::black_box;

use criterion::{Criterion, Throughput, criterion_group, criterion_main};
use greenweight::cure::{
    GreenWeight, InPremix, Level, OnGreenWeight, PremixMass, SodiumNitrite, ingoing, largest_premix,
};
use greenweight::units::{
    kilograms, read_amount, read_concentration, read_duration, read_temperature,
};

/// A thousand batches: premix and green weight in kg, strength and ceiling in mg/kg.
fn batches() -> Vec<[f64; 4]> {
    let share = |n: u32, of: u32| f64::from(n * 7919 % of) / f64::from(of);
    (0..1000)
        .map(|n| {
            [
                0.001 + share(n, 997) * 0.1,
                0.5 + share(n, 991) * 50.0,
                5_000.0 + share(n, 983) * 60_000.0,
                100.0 + share(n, 977) * 500.0,
            ]
        })
        .collect()
}

type Typed =
    (PremixMass, GreenWeight, Level<SodiumNitrite, InPremix>, Level<SodiumNitrite, OnGreenWeight>);

fn typed(batches: &[[f64; 4]]) -> Vec<Typed> {
    let one = |&[premix, green, strength, ceiling]: &[f64; 4]| {
        (
            PremixMass::new(kilograms(premix)).unwrap(),
            GreenWeight::new(kilograms(green)).unwrap(),
            Level::new(strength).unwrap(),
            Level::new(ceiling).unwrap(),
        )
    };
    batches.iter().map(one).collect()
}

fn cure(criterion: &mut Criterion) {
    let plain = batches();
    let typed = typed(&plain);
    let mut group = criterion.benchmark_group("cure forward, 1000 batches");
    group.throughput(Throughput::Elements(1000));
    group.bench_function("plain f64", |b| {
        b.iter(|| {
            let plain = black_box(&plain);
            plain.iter().map(|[premix, green, strength, _]| premix * strength / green).sum::<f64>()
        });
    });
    group.bench_function("typed", |b| {
        b.iter(|| {
            let typed = black_box(&typed);
            typed.iter().map(|&(p, g, s, _)| ingoing(p, s, g).mg_per_kg()).sum::<f64>()
        });
    });
    group.finish();

    let mut group = criterion.benchmark_group("cure inverse, 1000 batches");
    group.throughput(Throughput::Elements(1000));
    // The same guarantees by hand: no zero strength, no mass beyond a kitchen, and never
    // above the ceiling.
    group.bench_function("plain f64", |b| {
        b.iter(|| {
            let plain = black_box(&plain);
            let largest = |&[_, green, strength, ceiling]: &[f64; 4]| {
                if strength <= 0.0 {
                    return f64::NAN;
                }
                let mut mass = ceiling * green / strength;
                if !(0.0..=1e6).contains(&mass) {
                    return f64::NAN;
                }
                for _ in 0..8 {
                    if mass * strength / green <= ceiling {
                        break;
                    }
                    mass = mass.next_down();
                }
                mass
            };
            plain.iter().map(largest).sum::<f64>()
        });
    });
    group.bench_function("typed", |b| {
        b.iter(|| {
            let typed = black_box(&typed);
            let largest = |&(_, g, s, c): &Typed| {
                largest_premix(c, s, g).map_or(f64::NAN, |premix| premix.mass().value)
            };
            typed.iter().map(largest).sum::<f64>()
        });
    });
    group.finish();
}

const AMOUNTS: [(&str, &str); 8] = [
    ("0.2 oz", "0.2"),
    ("1 1/4 oz", "1.25"),
    ("1¼ oz", "1.25"),
    ("2 lb 3 oz", "2.1875"),
    ("3.5 kg", "3.5"),
    ("250 g", "250"),
    ("1/4 oz", "0.25"),
    ("676.5 g", "676.5"),
];

fn reading(criterion: &mut Criterion) {
    let mut group = criterion.benchmark_group("reading 8 amounts");
    group.bench_function("their numbers with str::parse", |b| {
        b.iter(|| {
            for (_, number) in black_box(&AMOUNTS) {
                black_box(number.parse::<f64>().unwrap());
            }
        });
    });
    group.bench_function("read_amount", |b| {
        b.iter(|| {
            for (text, _) in black_box(&AMOUNTS) {
                black_box(read_amount(text, None).unwrap());
            }
        });
    });
    group.finish();
    criterion.bench_function("reading a level, a temperature and a time", |b| {
        b.iter(|| {
            black_box(read_concentration(black_box("6.25 %")).unwrap());
            black_box(read_temperature(black_box("68.3 °C")).unwrap());
            black_box(read_duration(black_box("1 h 30 min")).unwrap());
        });
    });
}

criterion_group!(benches, cure, reading);
criterion_main!(benches);
