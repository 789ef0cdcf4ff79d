use crate::authority::Authority;
use crate::chill;
use crate::cook::{Animals, RowHeld, Verdicts, table_for};
use crate::finding::Finding;
use crate::food::Food;
use crate::recipe::{Component, Recipe};
use crate::trace::{Drawing, Level, NotDrawn, Point, to_svg};
use crate::units::{PrintedTemperature, Scale, Time, show_duration};

use super::{Checkup, SHORT_CAUTION};
use crate::cite::Row;

/// What is drawn of one component.
#[derive(Debug, Clone, PartialEq, Eq)]
#[non_exhaustive]
pub struct Drawn {
    /// The component, counted from zero.
    pub component: usize,
    /// The record of its cook, with the rows it is held to.
    pub record: Option<String>,
    /// How it cools, with the ends of the clocks it is held to.
    pub cooling: Option<String>,
}

/// The records of a checked recipe as SVG pictures.
///
/// # Errors
/// [`NotDrawn`] for a record without two readings at different times.
pub fn drawings(checkup: &Checkup<'_>) -> Result<Vec<Drawn>, NotDrawn> {
    let components = checkup.recipe.components.iter().enumerate();
    let drawn = components.map(|(n, component)| {
        let cooling = cooling(checkup, n, component)?;
        let record = match component.record.as_slice() {
            [first, _, ..] => Some(to_svg(&Drawing {
                title: &component.name,
                scale: first.scale(),
                inside: &component.record,
                chamber: &component.chamber,
                levels: &levels(&checkup.recipe, component, first.scale()),
                foot: SHORT_CAUTION,
            })?),
            _ => None,
        };
        Ok(Drawn { component: n, record, cooling })
    });
    drawn.collect()
}

/// The warmest part from its hottest on, with the ends of the clocks that it was judged by.
fn cooling(
    checkup: &Checkup<'_>,
    n: usize,
    component: &Component<'_>,
) -> Result<Option<String>, NotDrawn> {
    let judged = |finding: &Finding| finding.rule.id == "chill/cooling";
    let findings: Vec<_> = checkup.findings_of(n).filter(judged).collect();
    let curve = &component.cooling;
    let by =
        |(_, a): &(usize, &Point), (_, b): &(usize, &Point)| a.celsius().total_cmp(&b.celsius());
    let hottest = curve.iter().enumerate().max_by(by).map_or(0, |(n, _)| n);
    let curve = curve.get(hottest..).unwrap_or_default();
    let ([first, _, ..], false) = (curve, findings.is_empty()) else { return Ok(None) };
    let scale = first.scale();
    let answering = checkup.recipe.held_to.iter().filter(|&&authority| chill::answers(authority));
    let levels: Vec<_> = answering
        .zip(&findings)
        .flat_map(|(&authority, finding)| {
            chill::legs(authority, finding).map(move |leg| (authority, leg))
        })
        .map(|(authority, leg)| Level {
            name: format!(
                "{}: {} within {} of {}{}",
                authority.key(),
                printed(leg.value.to, scale),
                show_duration(leg.value.most),
                printed(leg.value.from, scale),
                remembered(&leg.row)
            ),
            at: leg.value.to.on(scale),
            met: reached(curve, leg.value.to),
        })
        .collect();
    let title = format!("{}, cooling", component.name);
    let (chamber, foot) = (&[][..], SHORT_CAUTION);
    let drawing = Drawing { title: &title, scale, inside: curve, chamber, levels: &levels, foot };
    to_svg(&drawing).map(Some)
}

/// When a cooling curve was at or below a temperature first, in seconds.
fn reached(curve: &[Point], to: PrintedTemperature) -> Option<f64> {
    let celsius = to.on(Scale::Celsius).value();
    let below =
        |pair: &&[Point]| matches!(pair, [a, b] if a.celsius() > celsius && b.celsius() <= celsius);
    match curve.windows(2).find(below)? {
        [a, b] => {
            let share = (a.celsius() - celsius) / (a.celsius() - b.celsius());
            Some(a.seconds() + share * (b.seconds() - a.seconds()))
        }
        _ => None,
    }
}

/// Of every authority with a table of times: the row that was met first, or the one that was
/// nearest to it.
fn levels(recipe: &Recipe<'_>, component: &Component<'_>, scale: Scale) -> Vec<Level> {
    let bird = matches!(component.food, Food::Poultry | Food::GroundPoultry);
    let poultry = bird || component.animals() != Animals::NoPoultry;
    let tables = recipe.held_to.iter().filter_map(|&authority| {
        Some((authority, table_for(authority, component.food, poultry, component.bird(), None)?))
    });
    let off = recipe.instruments.thermometer.unwrap_or_default();
    let level = |(authority, product): (Authority, _)| {
        let mut verdicts = Verdicts::new(product, off, component.vouched()).ok()?;
        for point in &component.record {
            verdicts.next(*point).ok()?;
        }
        let when = |at: Option<Time>| at.map(|at| at.value);
        let met = verdicts.rows().filter(|row| row.met_at.is_some()).min_by(|a, b| {
            let at = |row: &RowHeld| when(row.met_at).unwrap_or(f64::INFINITY);
            at(a).total_cmp(&at(b))
        });
        let nearest = || verdicts.rows().max_by(|a, b| a.share().total_cmp(&b.share()));
        let row = met.or_else(nearest)?;
        let asks = show_duration(row.asks);
        let at = printed(row.temperature, scale);
        let word = if row.met_at.is_some() { "met" } else { "not met" };
        let from = remembered(row.row);
        let name = format!("{}: {at} for {asks}, {word}{from}", authority.key());
        Some(Level { name, at: row.temperature.on(scale), met: when(row.met_at) })
    };
    tables.filter_map(level).collect()
}

/// What the name of a line says of a figure that nobody read.
fn remembered(row: &Row) -> &'static str {
    if row.is_from_memory() { ", from memory" } else { "" }
}

fn printed(temperature: PrintedTemperature, scale: Scale) -> String {
    let reading = temperature.on(scale);
    format!("{} {}", (reading.value() * 10.0).round() / 10.0, scale.symbol())
}
