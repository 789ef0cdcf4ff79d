use std::fmt::Write;

use greenweight::recipe::{Recipe, Scaled};
use greenweight::report::{Lines, visible};
use greenweight::units::{Amount, MassUnit, show_mass, show_mass_like};

/// A scaled recipe: what to weigh out, and what does not scale.
pub(super) fn in_words(scaled: &Scaled<'_>, text: &str, times: f64) -> String {
    let mut out = String::new();
    // Writing to a String cannot fail.
    let _ = writeln!(out, "{times} times the batch, as the scales show it:\n");
    weights(&mut out, &scaled.recipe);
    if !scaled.unscaled.is_empty() {
        out.push_str("\nwhat does not scale:\n");
    }
    let lines = Lines::new(text);
    let mut unscaled = scaled.unscaled.clone();
    unscaled.sort_by_key(|note| note.place.start);
    for note in &unscaled {
        let _ = writeln!(out, "- line {}: {}", lines.of(note.place.start).0, note.note);
    }
    out.push('\n');
    out
}

fn weights(out: &mut String, recipe: &Recipe<'_>) {
    for component in &recipe.components {
        let _ = writeln!(out, "  {}", visible(&component.name));
        for ingredient in &component.ingredients {
            let _ = match ingredient.amount {
                Some(Amount::Weighed(mass)) => writeln!(
                    out,
                    "    {} ({})  {}",
                    show_mass(mass),
                    show_mass_like(mass, MassUnit::Ounce),
                    visible(&ingredient.name)
                ),
                _ => writeln!(out, "    by the spoon or cup  {}", visible(&ingredient.name)),
            };
        }
    }
}
