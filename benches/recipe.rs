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

/// A recipe of its own for each number: three sausages that differ in their weights, temperatures and times, the
/// cheese and the sauce of the example; about forty findings.
fn generated(n: usize) -> String {
    let (head, rest) = EXAMPLE.split_once("[[component]]").unwrap();
    let end = rest.match_indices("[[component]]").next().unwrap().0;
    let (sausage, others) = rest.split_at(end);
    let sausage = |k: usize| {
        let vary = |most: usize| (n * 31 + k * 7) % most;
        let varied = sausage
            .replace("name = \"ring sausage\"", &format!("name = \"ring sausage {k}\""))
            .replace("amount = \"4 lb\"", &format!("amount = \"{}.{} lb\"", 3 + vary(3), vary(10)))
            .replace("amount = \"7.0 g\"", &format!("amount = \"{}.{} g\"", 5 + vary(4), vary(10)))
            .replace("to = \"163 °F\"", &format!("to = \"{} °F\"", 155 + vary(12)))
            .replace("for = \"5 days\"", &format!("for = \"{} days\"", 3 + vary(6)));
        format!("[[component]]{varied}")
    };
    let text = format!("{head}{}{}{}{others}", sausage(0), sausage(1), sausage(2));
    let code = |line: &str| line.split('#').next().unwrap_or("").trim_end().to_owned();
    text.lines().map(code).filter(|line| !line.is_empty()).collect::<Vec<_>>().join("\n")
}

fn many(criterion: &mut Criterion) {
    const RECIPES: usize = 10_000;
    let texts: Vec<_> = (0..RECIPES).map(generated).collect();
    let findings: usize = texts.iter().map(|text| Recipe::read(text).unwrap().check().len()).sum();
    println!("{:.1} findings a recipe", findings as f64 / RECIPES as f64);
    let mut group = criterion.benchmark_group("ten thousand recipes");
    group.sample_size(10);
    group.throughput(Throughput::Elements(RECIPES.try_into().unwrap()));
    group.bench_function("TOML alone", |b| {
        b.iter(|| {
            texts
                .iter()
                .map(|text| DeTable::parse(black_box(text)).unwrap().get_ref().len())
                .sum::<usize>()
        });
    });
    group.bench_function("read", |b| {
        b.iter(|| {
            texts
                .iter()
                .map(|text| Recipe::read(black_box(text)).unwrap().components.len())
                .sum::<usize>()
        });
    });
    group.bench_function("read and check", |b| {
        b.iter(|| {
            texts
                .iter()
                .map(|text| Recipe::read(black_box(text)).unwrap().check().len())
                .sum::<usize>()
        });
    });
    let read: Vec<_> = texts.iter().map(|text| Recipe::read(text).unwrap()).collect();
    group.bench_function("check alone", |b| {
        b.iter(|| read.iter().map(|recipe| black_box(recipe).check().len()).sum::<usize>());
    });
    group.finish();
}

criterion_group!(benches, recipe, many);
criterion_main!(benches);
