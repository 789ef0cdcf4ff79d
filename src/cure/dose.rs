use uom::si::f64::Mass;

use super::batch::Batch;
use super::check::row;
use super::limit::MeasuredOn;
use super::method::{PremixMass, largest_reading, smallest_premix};
use super::premix::Premix;
use super::product::{largest_in_product, on_meat, product_rows};
use super::table::{US_INGOING_NITRITE, US_MINIMUM};
use super::{CureError, Method};
use crate::authority::Authority;
use crate::cite::{Date, Row};
use crate::finding::{Limit, Missing};
use crate::food::Food;
use crate::level::{CuringSalts, Level};
use crate::range::Range;

/// How much of one premix goes into a batch.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Dose {
    /// The row that gives the ceiling.
    pub ceiling: &'static Row,
    /// The most that stays under it, all inputs at their worst.
    pub most: Mass,
    /// The row that gives a least amount, and the least that reaches it, where the
    /// authority has one for this method.
    pub least: Option<(&'static Row, Mass)>,
    /// The largest reading of the scale that proves the ceiling. `None` when the batch is
    /// too small for the scale.
    pub reading: Option<Mass>,
    /// By how much the batch must grow until one division of the scale can be weighed,
    /// when it is too small.
    pub grow: Option<f64>,
}

/// Why there is no dose.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum NoDose {
    /// A fact is missing.
    #[error("{what} is missing: {say}", what = .0.what, say = .0.say)]
    Missing(Missing),
    /// The authority has no ingoing ceiling for this.
    #[error("this authority has no ingoing ceiling for this product and method on this day")]
    NoRow,
    /// Bacon is pumped to a prescribed amount, which a pickle is made for.
    #[error("pumped bacon has a prescribed amount, not a ceiling: write the recipe and check it")]
    Prescribed,
    /// The inputs have no answer.
    #[error(transparent)]
    Cure(#[from] CureError),
}

/// How much of *this* premix for *this* batch under *this* authority: the most under the
/// ceiling for nitrite, the least that is worth its name, and what a scale can do.
///
/// Only the strength and the scale of the first of `batch.cures` are looked at; a batch
/// for an authority that goes by product is weighed without the premix.
///
/// # Errors
/// [`NoDose`] when a fact is missing or the authority has no ingoing ceiling.
pub fn dose(batch: &Batch<'_>, authority: Authority, day: Option<Date>) -> Result<Dose, NoDose> {
    let cure = batch.cures.first();
    let premix = cure.and_then(|cure| cure.strength).unwrap_or_default();
    let scale = cure.and_then(|cure| cure.mass).and_then(|mass| mass.scale);
    let (ceiling, most, least) = if authority == Authority::UsFsis {
        by_method(batch, &premix, day)?
    } else {
        let (ceiling, most) = by_product(batch, authority, &premix, day)?;
        (ceiling, most, None)
    };
    let reading = largest_reading(batch.surely_below(most), scale);
    let grow = match (reading, scale) {
        // A reading of one division may be off by half of it: three halves must fit.
        (None, Some(division)) => Some((division * 1.5 / most.mass()).value),
        _ => None,
    };
    Ok(Dose { ceiling, most: most.mass(), least, reading, grow })
}

type Window = (&'static Row, PremixMass, Option<(&'static Row, Mass)>);

fn by_method(batch: &Batch<'_>, premix: &Premix, day: Option<Date>) -> Result<Window, NoDose> {
    if batch.food == Food::Bacon {
        return Err(NoDose::Prescribed);
    }
    if let Some(missing) = batch.unknowable() {
        return Err(NoDose::Missing(missing));
    }
    let ceiling =
        row(&US_INGOING_NITRITE, Authority::UsFsis, batch.method, day).ok_or(NoDose::NoRow)?;
    let (figure, _) = ceiling.value.limit.figures();
    let strength = premix.nitrite();
    let most = batch.most(figure, strength).ok_or(CureError::NoAgent { agent: "nitrite" })?;
    let least = match (batch.method, batch.green) {
        (Some(Method::Ground | Method::DryRub), Some(green)) => {
            let (figure, _) = US_MINIMUM.value.figures();
            Some((&US_MINIMUM.row, smallest_premix(figure, strength, green.high())?.mass()))
        }
        _ => None,
    };
    Ok((&ceiling.row, most, least))
}

fn by_product(
    batch: &Batch<'_>,
    authority: Authority,
    premix: &Premix,
    day: Option<Date>,
) -> Result<(&'static Row, PremixMass), NoDose> {
    let rest: Range<Mass> = batch.product.ok_or(NoDose::NoRow)?;
    if let Some(missing) = batch.unknowable().filter(|_| batch.is_pickled()) {
        return Err(NoDose::Missing(missing));
    }
    let mut strictest: Option<(&'static Row, PremixMass)> = None;
    for key in batch.cured_as {
        for row in product_rows(authority, key, day) {
            let ingoing =
                matches!(row.value.measured_on, MeasuredOn::Ingoing | MeasuredOn::IngoingOnProduct);
            let Limit::AtMost(ceiling) = row.value.limit else { continue };
            let strength = row.value.strength_in(premix).filter(|strength| *strength > 0.0);
            let (true, Some(strength)) = (ingoing, strength) else { continue };
            let most = if batch.is_pickled() {
                on_meat::<CuringSalts>(batch, row.value.measured_on, ceiling)
                    .and_then(|ceiling| batch.most(ceiling, Level::of(strength)))
            } else {
                // "Ingoing", and not over what: the meat alone gives the smaller amount.
                let weight = match (row.value.measured_on, batch.green) {
                    (MeasuredOn::Ingoing, Some(green)) => green.low().mass(),
                    (MeasuredOn::Ingoing, None) => return Err(NoDose::NoRow),
                    _ => rest.low(),
                };
                largest_in_product(ceiling, strength, weight)
            };
            let most = most.ok_or(CureError::NoAgent { agent: "nitrite" })?;
            if strictest.is_none_or(|(_, before)| most < before) {
                strictest = Some((&row.row, most));
            }
        }
    }
    strictest.ok_or(NoDose::NoRow)
}
