//! Reading and checking a recipe, against parsing its TOML alone, in one run.

use std::hint::black_box;

use criterion::{Criterion, Throughput, criterion_group, criterion_main};
use greenweight::recipe::Recipe;
use toml::de::DeTable;

const EXAMPLE: &str = include_str!("../examples/recipes/farm-stall-ring-sausage.toml");

/// The example without its comments: what a generated recipe looks like.
fn bare() -> String {
    let code = |line: &str| line.split('#').next().unwrap_or("").trim_end().to_owned();
    EXAMPLE.lines().map(code).filter(|line| !line.is_empty()).collect::<Vec<_>>().join("\n")
}

fn recipe(criterion: &mut Criterion) {
    for (name, text) in [("with comments", EXAMPLE.to_owned()), ("bare", bare())] {
        let mut group = criterion.benchmark_group(format!("recipe, {name}"));
        group.throughput(Throughput::Bytes(text.len().try_into().unwrap()));
        group.bench_function("TOML alone", |b| {
            b.iter(|| DeTable::parse(black_box(&text)).unwrap());
        });
        group.bench_function("read", |b| b.iter(|| Recipe::read(black_box(&text)).unwrap()));
        group.bench_function("read and check", |b| {
            b.iter(|| Recipe::read(black_box(&text)).unwrap().check());
        });
        group.finish();
    }
}

criterion_group!(benches, recipe);
criterion_main!(benches);
