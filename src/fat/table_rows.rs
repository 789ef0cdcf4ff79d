use uom::si::f64::Mass;

use super::table::{COMPOSITION, COOKING_YIELD, MEASURES, SPOON_FILL_LEAST, SPOON_FILL_MOST};
use crate::cite::Cited;
use crate::range::{OutOfRange, Range, RangeError, bounds};
use crate::units::grams;

bounds! {
    COUNT: "number of spoons or cups", "", 0.0, 1e6;
}

/// What is in a hundred grams of a raw material: a row.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Composition {
    /// What it is.
    pub description: &'static str,
    /// The group of the table it stands in.
    pub group: &'static str,
    /// The number of the food in the source.
    pub number: &'static str,
    /// Water, g in 100 g.
    pub water: f64,
    /// Protein, g in 100 g.
    pub protein: f64,
    /// Fat, g in 100 g.
    pub fat: f64,
    /// Ash, g in 100 g.
    pub ash: f64,
    /// Carbohydrate by difference, g in 100 g.
    pub carbohydrate: f64,
    /// Sodium, mg in 100 g, where it is printed.
    pub sodium_mg: Option<f64>,
    /// How many samples the fat was measured in, where it is printed.
    pub fat_count: Option<f64>,
    /// Standard error of the mean of the fat, where it is printed: between lots the spread is
    /// √n times as much.
    pub fat_error: Option<f64>,
}

/// The weight of a kitchen measure: a row.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct KitchenMeasure {
    /// Of what.
    pub description: &'static str,
    /// The number of the food in the source.
    pub number: &'static str,
    /// The measure, as printed.
    pub measure: &'static str,
    /// How many of the measure.
    pub amount: f64,
    /// Grams.
    pub grams: f64,
    /// Standard deviation in grams, where it is printed.
    pub sd_grams: Option<f64>,
}

/// What is left after cooking: a row.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CookingYield {
    /// Of what.
    pub description: &'static str,
    /// The number of the food in the source.
    pub number: &'static str,
    /// How it was cooked.
    pub method: &'static str,
    /// Cooked weight, percent of raw.
    pub percent: f64,
    /// The least yield seen.
    pub lowest: Option<f64>,
    /// The most.
    pub highest: Option<f64>,
    /// Change of water, g in 100 g raw; lost is below zero.
    pub water_change: Option<f64>,
    /// Change of fat, g in 100 g raw.
    pub fat_change: Option<f64>,
}

/// The rows whose description holds every one of the words, in any case.
///
/// ```
/// use greenweight::fat::find_composition;
///
/// let backfat: Vec<_> = find_composition("pork backfat").collect();
/// assert_eq!(backfat[0].value.fat, 88.69);
/// ```
pub fn find_composition(words: &str) -> impl Iterator<Item = &'static Cited<Composition>> {
    COMPOSITION.iter().filter(move |row| holds_all(row.value.description, words))
}

/// The measures of foods whose description holds every one of the words.
pub fn find_measures(words: &str) -> impl Iterator<Item = &'static Cited<KitchenMeasure>> {
    MEASURES.iter().filter(move |row| holds_all(row.value.description, words))
}

/// The yields of foods whose description holds every one of the words.
pub fn find_yields(words: &str) -> impl Iterator<Item = &'static Cited<CookingYield>> {
    COOKING_YIELD.iter().filter(move |row| holds_all(row.value.description, words))
}

fn holds_all(description: &str, words: &str) -> bool {
    words.split_whitespace().all(|word| holds(description, word))
}

/// Whether a text holds a word, letter by letter and in any case; without an allocator.
fn holds(text: &str, word: &str) -> bool {
    let (text, word) = (text.as_bytes(), word.as_bytes());
    word.is_empty() || text.windows(word.len()).any(|part| part.eq_ignore_ascii_case(word))
}

impl KitchenMeasure {
    /// Whether it is a spoon or a cup, and not a piece, a clove or a pack.
    #[must_use]
    pub fn is_a_volume(&self) -> bool {
        let first = self.measure.split([' ', ',']).next().unwrap_or("");
        matches!(first, "tsp" | "tbsp" | "cup" | "tablespoon" | "teaspoon")
    }

    /// What so many of the measure may weigh. A spoon or a cup is filled to between 0.78 and
    /// 1.46 of what the row prints (table `fat/spoon-fill`); a piece weighs what the row
    /// prints, give or take two of its standard deviations, where it has one.
    ///
    /// Never for a curing salt: no table here weighs one by the spoon.
    ///
    /// # Errors
    /// [`OutOfRange`] for a count below zero or above a million.
    ///
    /// ```
    /// use greenweight::{fat::find_measures, units::grams};
    ///
    /// let salt = find_measures("salt, table").find(|row| row.value.measure == "tsp");
    /// let spoons = salt.ok_or("no row")?.value.weight(2.0)?;
    /// assert!(spoons.contains(grams(12.0)) && spoons.contains(grams(9.5)));
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    pub fn weight(&self, count: f64) -> Result<Range<Mass>, RangeError> {
        let middle = COUNT.check(count)? / self.amount * self.grams;
        let (low, high) = if self.is_a_volume() {
            (middle * SPOON_FILL_LEAST.value, middle * SPOON_FILL_MOST.value)
        } else {
            let spread = 2.0 * count / self.amount * self.sd_grams.unwrap_or(0.0);
            ((middle - spread).max(0.0), middle + spread)
        };
        Range::new(grams(low), grams(high))
    }
}

bounds! {
    RAW: "raw weight", "kg", 0.0, 1e6;
}

/// What cooking leaves of a raw weight, by a row of yields.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Cooked {
    /// The cooked weight.
    pub weight: Mass,
    /// Water lost, where the row prints it.
    pub water_lost: Option<Mass>,
    /// Fat lost, where the row prints it.
    pub fat_lost: Option<Mass>,
    /// What was lost besides water and fat: juices and solids. Far from zero, the row does not
    /// balance and says nothing about composition.
    pub unexplained: Option<Mass>,
}

impl CookingYield {
    /// What is left of a raw weight.
    ///
    /// cooked = raw × yield / 100; lost = −raw × change / 100.
    ///
    /// # Errors
    /// [`OutOfRange`] for a weight that is none.
    pub fn of(&self, raw: Mass) -> Result<Cooked, OutOfRange> {
        RAW.check(raw.value)?;
        let share = |percent: f64| raw * (percent / 100.0);
        let weight = share(self.percent);
        let (water_lost, fat_lost) =
            (self.water_change.map(|d| share(-d)), self.fat_change.map(|d| share(-d)));
        let unexplained = water_lost.zip(fat_lost).map(|(water, fat)| raw - weight - water - fat);
        Ok(Cooked { weight, water_lost, fat_lost, unexplained })
    }

    /// Whether the losses of the row add up: what is unexplained is between −3 and 4 g in
    /// 100 g raw. The rows that are known not to are far outside of that.
    #[must_use]
    pub fn balances(&self) -> bool {
        let explained = self.water_change.zip(self.fat_change).map(|(water, fat)| water + fat);
        explained
            .is_some_and(|explained| (-3.0..=4.0).contains(&(100.0 - self.percent + explained)))
    }
}
