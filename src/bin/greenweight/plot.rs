//! The records of a check, drawn.

use std::path::Path;

use greenweight::cook::{Animals, Verdicts, table_for};
use greenweight::food::Food;
use greenweight::recipe::{Component, Recipe};
use greenweight::report::Checkup;
use greenweight::trace::{Drawing, Level, to_svg};
use greenweight::units::{PrintedTemperature, Scale, show_duration};

/// Draws every record into a folder: `<document>-<component>.svg`.
pub(crate) fn draw_all(checkups: &[Checkup<'_>], folder: &Path) -> Result<(), String> {
    std::fs::create_dir_all(folder)
        .map_err(|error| format!("{} cannot be made: {error}", folder.display()))?;
    for checkup in checkups {
        let stem = checkup.path.file_stem().unwrap_or_default().to_string_lossy();
        for (n, component) in checkup.recipe.components.iter().enumerate() {
            let [first, _, ..] = component.record.as_slice() else { continue };
            let drawing = Drawing {
                title: &component.name,
                scale: first.scale(),
                inside: &component.record,
                chamber: &component.chamber,
                levels: &levels(&checkup.recipe, component, first.scale()),
            };
            let path = folder.join(format!("{stem}-{}.svg", n + 1));
            let svg = to_svg(&drawing).map_err(|error| error.to_string())?;
            std::fs::write(&path, svg)
                .map_err(|error| format!("{} cannot be written: {error}", path.display()))?;
        }
    }
    Ok(())
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
    let level = |(authority, product): (greenweight::authority::Authority, _)| {
        let mut verdicts = Verdicts::new(product, off).ok()?;
        for point in &component.record {
            verdicts.next(*point).ok()?;
        }
        let when = |at: Option<greenweight::units::Time>| at.map(|at| at.value);
        let met = verdicts.rows().filter(|row| row.met_at.is_some()).min_by(|a, b| {
            let at = |row: &greenweight::cook::RowHeld| when(row.met_at).unwrap_or(f64::INFINITY);
            at(a).total_cmp(&at(b))
        });
        let nearest = || verdicts.rows().max_by(|a, b| a.share().total_cmp(&b.share()));
        let row = met.or_else(nearest)?;
        let asks = show_duration(row.asks);
        let at = printed(row.temperature, scale);
        let word = if row.met_at.is_some() { "met" } else { "not met" };
        let name = format!("{}: {at} for {asks}, {word}", authority.key());
        Some(Level { name, at: row.temperature.on(scale), met: when(row.met_at) })
    };
    tables.filter_map(level).collect()
}

fn printed(temperature: PrintedTemperature, scale: Scale) -> String {
    let reading = temperature.on(scale);
    format!("{} {}", (reading.value() * 10.0).round() / 10.0, scale.symbol())
}
