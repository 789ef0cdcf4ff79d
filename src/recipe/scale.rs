use uom::si::f64::Mass;

use super::document::{Kind, Recipe, StepKind};
use crate::finding::Place;
use crate::range::{OutOfRange, bounds};
use crate::units::{Amount, floor_to_division};

bounds! {
    TIMES: "how many times the batch", "", 1e-3, 1e4;
}

/// A recipe made for another batch.
#[derive(Debug, Clone, PartialEq)]
#[non_exhaustive]
pub struct Scaled<'a> {
    /// The recipe, to be checked again.
    pub recipe: Recipe<'a>,
    /// What does not scale with the batch, and where it stands.
    pub unscaled: Vec<Unscaled>,
}

/// Something that does not scale.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[non_exhaustive]
pub struct Unscaled {
    /// What it is, and what to do.
    pub note: &'static str,
    /// Where it stands in the document.
    pub place: Place,
}

const TOO_FINE: &str =
    "the scaled weight is less than the scale shows: weigh it on a finer one, or make more";
const SPOON: &str =
    "a spoon or a cup is not a weight, and its error grows with the count: weigh it";
const COOK: &str =
    "a time and a chamber do not scale with the batch: cook to the inside temperature and its hold";
const CHILL: &str = "a larger batch chills more slowly: measure that it is cold in time";
const CURE: &str =
    "how long a cure takes goes with the thickness of the pieces, not with the batch";

impl<'a> Recipe<'a> {
    /// The same recipe for so many times the batch. Every weight is multiplied, and shown as
    /// its scale can show it: a curing premix rounded down, so that the rounding adds nothing
    /// to it, everything else to the nearest step. Shares stay as they are; times, temperatures
    /// and days do not scale, and are listed.
    ///
    /// Check the result again: what was rounded may no longer prove what it did.
    ///
    /// # Errors
    /// [`OutOfRange`] outside a thousandth and ten thousand times.
    ///
    /// ```
    /// use greenweight::{recipe::Recipe, units::{Amount, grams}};
    ///
    /// let text = std::fs::read_to_string("examples/recipes/farm-stall-ring-sausage.toml")?;
    /// let recipe = Recipe::read(&text).map_err(|_| "unreadable")?;
    /// let twice = recipe.times(2.0)?;
    /// let premix = &twice.recipe.components[0].ingredients[2];
    /// assert_eq!(premix.amount, Some(Amount::Weighed(grams(14.0))));
    /// assert!(!twice.unscaled.is_empty());
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    pub fn times(&self, factor: f64) -> Result<Scaled<'a>, OutOfRange> {
        TIMES.check(factor)?;
        let mut recipe = self.clone();
        let mut unscaled = Vec::new();
        let mut note = |note, place| unscaled.push(Unscaled { note, place });
        for component in &mut recipe.components {
            for ingredient in &mut component.ingredients {
                let division = ingredient.scale.or(self.instruments.scale);
                match &mut ingredient.amount {
                    Some(Amount::Weighed(mass)) => {
                        let exact = *mass * factor;
                        let cure = ingredient.kind == Kind::CuringPremix;
                        *mass = shown(exact, division, cure);
                        if mass.value <= 0.0 && exact.value > 0.0 {
                            *mass = exact;
                            note(TOO_FINE, ingredient.place);
                        }
                    }
                    Some(Amount::ByVolume(volume)) => {
                        *volume *= factor;
                        note(SPOON, ingredient.place);
                    }
                    None => {}
                }
            }
            component.finished =
                component.finished.map(|mass| shown(mass * factor, self.instruments.scale, false));
            if let Some(cure) = component.cure.filter(|cure| cure.time.is_some()) {
                note(CURE, cure.place);
            }
            for step in component.steps.iter().filter(|step| step.time.is_some()) {
                match step.kind {
                    StepKind::Smoke | StepKind::Cook => note(COOK, step.place),
                    StepKind::Chill => note(CHILL, step.place),
                    _ => {}
                }
            }
        }
        Ok(Scaled { recipe, unscaled })
    }
}

/// A mass as a scale can show it.
fn shown(exact: Mass, division: Option<Mass>, down: bool) -> Mass {
    match division {
        None => exact,
        Some(division) if down => floor_to_division(exact, division).unwrap_or(exact),
        Some(division) => floor_to_division(exact + division * 0.5, division).unwrap_or(exact),
    }
}
