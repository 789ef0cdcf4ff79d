use uom::si::f64::Mass;

use super::table::{ADDED_WATER_FREE_OTHER_PROTEIN, ADDED_WATER_WATER_TO_PROTEIN, LABEL_ERROR};
use super::table_rows::Composition;
use crate::range::{Bounds, OutOfRange, Range, RangeError, SAME, bounds};
use crate::units::kilograms;

bounds! {
    SHARE: "share of a component", "%", 0.0, 100.0;
    ERROR: "error of an analysis", "points", 0.0, 100.0;
    PART: "weight of a lot", "kg", 0.0, 1e6;
    PROTEIN: "protein", "%", 1e-6, 100.0;
    LEAN: "fat of a product on which protein is reckoned fat-free", "%", 0.0, 99.9;
    WATER_LIMIT: "water, of all ingredients", "%", 0.0, 99.9;
}

/// Why a question about a blend has no answer.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum FatError {
    /// An input is outside its bounds.
    #[error(transparent)]
    OutOfRange(#[from] OutOfRange),
    /// Two inputs do not make a range.
    #[error(transparent)]
    Range(#[from] RangeError),
    /// No mixture of the two reaches the target.
    #[error(
        "{target} % does not lie between {first} % and {second} %, so no blend of the two has it"
    )]
    OutOfReach {
        /// The first lot, percent.
        first: f64,
        /// The second lot, percent.
        second: f64,
        /// The target, percent.
        target: f64,
    },
    /// There is nothing to blend.
    #[error("a blend needs at least one lot that weighs something")]
    Empty,
}

/// What a lot of meat, fat or anything else holds, in percent by mass, each between two ends.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Lot {
    /// Fat.
    pub fat: Range<f64>,
    /// Water, where it is known.
    pub water: Option<Range<f64>>,
    /// Protein, where it is known.
    pub protein: Option<Range<f64>>,
}

impl Lot {
    /// A lot whose fat is known from a label alone: within 6 points of it, either way, and
    /// never below 0 or above 100 (table `fat/label-error`).
    ///
    /// # Errors
    /// [`FatError::OutOfRange`] outside 0 to 100 percent.
    ///
    /// ```
    /// use greenweight::fat::Lot;
    ///
    /// // Ground lamb sold as 15 percent fat was measured at 20.71.
    /// assert!(Lot::labelled(15.0)?.fat.contains(20.71));
    /// # Ok::<(), greenweight::fat::FatError>(())
    /// ```
    pub fn labelled(fat: f64) -> Result<Self, FatError> {
        Self::analysed(fat, LABEL_ERROR.value)
    }

    /// A lot whose fat was analysed, with the error of the analysis in points.
    ///
    /// # Errors
    /// [`FatError::OutOfRange`] outside 0 to 100 percent.
    pub fn analysed(fat: f64, error: f64) -> Result<Self, FatError> {
        let fat = around(fat, error)?;
        Ok(Self { fat, water: None, protein: None })
    }

    /// A lot like a row of the composition table: its mean, with twice the standard error of
    /// the fat where the row prints one. A lot of your own may lie further off.
    ///
    /// # Errors
    /// Never for a row of the table.
    pub fn of_row(row: &Composition) -> Result<Self, FatError> {
        Ok(Self {
            fat: around(row.fat, 2.0 * row.fat_error.unwrap_or(0.0))?,
            water: Some(around(row.water, 0.0)?),
            protein: Some(around(row.protein, 0.0)?),
        })
    }
}

fn around(percent: f64, error: f64) -> Result<Range<f64>, FatError> {
    let (percent, error) = (SHARE.check(percent)?, ERROR.check(error)?);
    Ok(Range::new((percent - error).max(0.0), (percent + error).min(100.0))?)
}

/// A lot and how much of it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Part {
    /// How much.
    pub mass: Range<Mass>,
    /// Of what.
    pub lot: Lot,
}

/// Several lots blended: each component is the mean of the lots', weighted by mass.
///
/// c = Σ wᵢ cᵢ / Σ wᵢ. The sum below is the same as the one above, so where masses are ranges
/// the ends are taken over the masses together, and the blend never leaves what its lots span.
///
/// # Errors
/// [`FatError::Empty`] without a lot that weighs something; [`FatError::OutOfRange`] for weights
/// that are none.
///
/// ```
/// use greenweight::{fat::{Lot, Part, blend}, range::Range, units::pounds};
///
/// let part = |lb, fat| -> Result<Part, greenweight::fat::FatError> {
///     Ok(Part { mass: Range::exactly(pounds(lb))?, lot: Lot::analysed(fat, 0.0)? })
/// };
/// // Three pounds of fat to ten of lean are not thirty percent.
/// let blend = blend(&[part(10.0, 0.0)?, part(3.0, 100.0)?])?;
/// assert!((blend.fat.high() - 23.0769).abs() < 1e-4);
/// # Ok::<(), greenweight::fat::FatError>(())
/// ```
pub fn blend(parts: &[Part]) -> Result<Lot, FatError> {
    for part in parts {
        PART.check(part.mass.low().value)?;
        PART.check(part.mass.high().value)?;
    }
    let fat = mean(parts, |lot| Some(lot.fat))?.ok_or(FatError::Empty)?;
    Ok(Lot { fat, water: mean(parts, |lot| lot.water)?, protein: mean(parts, |lot| lot.protein)? })
}

/// The weighted mean of one component; `None` where a lot does not say it.
fn mean(
    parts: &[Part],
    component: impl Fn(&Lot) -> Option<Range<f64>> + Copy,
) -> Result<Option<Range<f64>>, FatError> {
    if parts.iter().any(|part| component(&part.lot).is_none()) {
        return Ok(None);
    }
    let low = |part: &Part| component(&part.lot).map_or(0.0, |range| range.low());
    let high = |part: &Part| component(&part.lot).map_or(0.0, |range| range.high());
    let (Some(least), Some(most)) = (extreme(parts, low, false), extreme(parts, high, true)) else {
        return Err(FatError::Empty);
    };
    // Every lot costs a product, two sums and its share of a quotient.
    let slack: f64 = parts.iter().map(|_| SAME).sum();
    Ok(Some(Range::new(least * (1.0 - slack).max(0.0), (most * (1.0 + slack)).min(100.0))?))
}

/// The least or the most mean over all masses in their ranges. It is reached with every lot on
/// one side of some lot at one end of its mass, and the others at the other end.
fn extreme(parts: &[Part], of: impl Fn(&Part) -> f64, most: bool) -> Option<f64> {
    let mean_at = |threshold: f64| {
        let (mut sum, mut weight) = (0.0, 0.0);
        for part in parts {
            let value = of(part);
            let heavy = if most { value >= threshold } else { value <= threshold };
            let mass = if heavy { part.mass.high() } else { part.mass.low() };
            sum += mass.value * value;
            weight += mass.value;
        }
        (weight > 0.0).then(|| sum / weight)
    };
    let means = parts.iter().filter_map(|part| mean_at(of(part)));
    means.reduce(|a, b| if (b > a) == most { b } else { a })
}

/// The share of the first of two lots in a blend that reaches a target: (b − t) / (b − a), the
/// square of the feed trade. The rest is the second.
///
/// # Errors
/// [`FatError::OutOfReach`] when the target does not lie between the two: dropping the sign
/// would hide it.
///
/// ```
/// use greenweight::fat::share_of_first;
///
/// // Boneless cow of 10 percent and trim of 25, to 20: a third and two thirds.
/// assert!((share_of_first(10.0, 25.0, 20.0)? - 1.0 / 3.0).abs() < 1e-12);
/// assert!(share_of_first(10.0, 25.0, 30.0).is_err());
/// # Ok::<(), greenweight::fat::FatError>(())
/// ```
pub fn share_of_first(first: f64, second: f64, target: f64) -> Result<f64, FatError> {
    let (a, b, t) = (SHARE.check(first)?, SHARE.check(second)?, SHARE.check(target)?);
    let (low, high) = if a < b { (a, b) } else { (b, a) };
    if t < low || t > high {
        return Err(FatError::OutOfReach { first, second, target });
    }
    Ok(if high > low { (b - t) / (b - a) } else { 1.0 })
}

/// How much of a second lot brings a mass of a first to a target: M (t − a) / (b − t). Fat trim
/// is not pure fat: `second` is what it holds.
///
/// # Errors
/// [`FatError::OutOfReach`] when the target does not lie between the two, or is the second.
pub fn to_add(first_mass: Mass, first: f64, second: f64, target: f64) -> Result<Mass, FatError> {
    let share = share_of_first(first, second, target)?;
    if share <= 0.0 {
        return Err(FatError::OutOfReach { first, second, target });
    }
    Ok(kilograms(PART.check(first_mass.value)? * (1.0 - share) / share))
}

/// The fat that the meat must have for a target on the finished mix: t (M + W + D) / M, `added`
/// being the water and dry matter that come to it.
///
/// # Errors
/// [`FatError::OutOfRange`] when the meat would have to be more than fat.
pub fn meat_fat_for(target: f64, meat: Mass, added: Mass) -> Result<f64, FatError> {
    let meat = Bounds::new("weight of the meat", "kg", 1e-9, 1e6).check(meat.value)?;
    let added = PART.check(added.value)?;
    Ok(SHARE.check(SHARE.check(target)? * (meat + added) / meat)?)
}

/// The added water of a cooked sausage from its analysis, in percent of the product:
/// M − 4 (P − max(0, P₂ − 1)), P₂ being protein that is not of the meat.
///
/// Raw meat comes out below zero, as it should: muscle holds less water than four times its
/// protein. Keep the sign for checks, and drop it for labels.
///
/// Source: 9 CFR 318.22(b), table `fat/added-water`.
///
/// # Errors
/// [`FatError::OutOfRange`] outside 0 to 100 percent.
///
/// ```
/// use greenweight::fat::added_water;
///
/// assert_eq!(added_water(55.0, 12.0, 0.0)?, 7.0);
/// # Ok::<(), greenweight::fat::FatError>(())
/// ```
pub fn added_water(moisture: f64, protein: f64, other_protein: f64) -> Result<f64, FatError> {
    let (m, p, other) =
        (SHARE.check(moisture)?, SHARE.check(protein)?, SHARE.check(other_protein)?);
    let taken_off = (other - ADDED_WATER_FREE_OTHER_PROTEIN.value).max(0.0);
    Ok(m - ADDED_WATER_WATER_TO_PROTEIN.value * (p - taken_off))
}

/// Moisture to protein, a term of labels and never of safety: how much of the water a microbe
/// can use is another question.
///
/// # Errors
/// [`FatError::OutOfRange`] without protein.
pub fn moisture_to_protein(moisture: f64, protein: f64) -> Result<f64, FatError> {
    Ok(SHARE.check(moisture)? / PROTEIN.check(protein)?)
}

/// Protein of a cured pork product on its fat-free part: 100 P / (100 − F), P being the protein
/// of the raw pork (9 CFR 319.104).
///
/// # Errors
/// [`FatError::OutOfRange`] outside 0 to 100 percent.
pub fn protein_fat_free(protein: f64, fat: f64) -> Result<f64, FatError> {
    Ok(100.0 * SHARE.check(protein)? / (100.0 - LEAN.check(fat)?))
}

/// The most water under a limit that is a percentage of all ingredients, the water itself
/// included: R p / (100 − p), R being the rest.
///
/// # Errors
/// [`FatError::OutOfRange`] above 99.9 percent.
///
/// ```
/// use greenweight::{fat::most_water, units::kilograms};
///
/// // Three percent of the whole is 0.300 kg to 9.7 kg, and not 0.291.
/// assert!((most_water(3.0, kilograms(9.7))?.value - 0.3).abs() < 1e-12);
/// # Ok::<(), greenweight::fat::FatError>(())
/// ```
pub fn most_water(percent: f64, rest: Mass) -> Result<Mass, FatError> {
    let p = WATER_LIMIT.check(percent)?;
    Ok(kilograms(PART.check(rest.value)? * p / (100.0 - p)))
}

/// A component after a loss: 100 (c + d) / Y, d being its change in grams to 100 g raw and Y
/// the yield in percent.
///
/// # Errors
/// [`FatError::OutOfRange`] when more is lost than there is, or nothing is left.
pub fn after_cooking(raw: f64, change: f64, yield_percent: f64) -> Result<f64, FatError> {
    let left = Bounds::new("yield", "%", 1e-6, 1000.0).check(yield_percent)?;
    let kept = SHARE.check(SHARE.check(raw)? + change)?;
    Ok(SHARE.check(100.0 * kept / left)?)
}

/// The change of a component to 100 g raw, from the raw and the cooked percentage and the
/// yield: Y c / 100 − c₀.
///
/// # Errors
/// [`FatError::OutOfRange`] outside 0 to 100 percent.
pub fn change_in_cooking(raw: f64, cooked: f64, yield_percent: f64) -> Result<f64, FatError> {
    Ok(yield_percent / 100.0 * SHARE.check(cooked)? - SHARE.check(raw)?)
}
