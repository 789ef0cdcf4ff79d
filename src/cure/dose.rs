use uom::si::f64::Mass;

use super::bacon::{self, formula_of, row_of};
use super::batch::{Batch, Cure, SCALE, Weighed};
use super::check::{self, INGOING_NITRITE, row};
use super::limit::{BaconLimit, MeasuredOn, ProductLimit};
use super::method::{PremixMass, coarsest_step, largest_premix, largest_reading, smallest_premix};
use super::premix::Premix;
use super::product::{self, cured_as, largest_in_product, on_meat, product_rows};
use super::table::{US_BACON_POTASSIUM, US_BACON_SODIUM, US_INGOING_NITRITE, US_MINIMUM};
use super::{CureError, Method};
use crate::authority::Authority;
use crate::cite::{Cited, Date, Row};
use crate::finding::{Limit, Missing, Verdict};
use crate::food::Food;
use crate::level::{Agent, CuringSalts, InPremix, Level, OnGreenWeight};
use crate::range::{Measured as _, Range};
use crate::units::floor_to_division;

/// How much of one premix goes into a batch.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Dose {
    /// The row that gives the ceiling, or the amount that is prescribed.
    pub ceiling: &'static Row,
    /// Whether the row prescribes an amount, which is not to be undercut either.
    pub prescribed: bool,
    /// The most that stays under the ceiling, all inputs at their worst; of a prescribed
    /// amount, that amount.
    pub most: Mass,
    /// The row that gives a least amount, and the least that reaches it, where the
    /// authority has one for this method.
    pub least: Option<(&'static Row, Mass)>,
    /// The largest reading of the scale that [`check`](super::check()) proves. `None` when the
    /// batch is too small for the scale.
    pub reading: Option<Mass>,
    /// By how much the batch must grow until a step of the scale stays under the ceiling, when it is
    /// too small.
    pub grow: Option<f64>,
    /// The coarsest step of a scale that stays under the ceiling in this batch, when it is too
    /// small for the scale.
    pub finer: Option<Mass>,
}

/// Why there is no dose.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum NoDose {
    /// It holds more nitrite than any premix that is sold.
    #[error(
        "this is not a curing premix: none is sold with this much nitrite; neat nitrite is not for a kitchen scale"
    )]
    NotAPremix,
    /// It is a food for infants.
    #[error("food for infants may hold no nitrite and no nitrate: there is no dose")]
    Infants,
    /// A fact is missing.
    #[error("missing: {what}; {say}", what = .0.what, say = .0.say)]
    Missing(Missing),
    /// The authority goes by product, and none is named.
    #[error("missing: {what}; {say}", what = .0.what, say = .0.say)]
    NoProduct(Missing),
    /// The row allows none at all.
    #[error("this product may hold none ({}): there is no dose", .0.printed)]
    NoneAllowed(&'static Row),
    /// The authority has no ingoing ceiling for this.
    #[error(
        "there is no dose: this authority has no limit on what goes in for this food, product and method on this day"
    )]
    NoRow,
    /// Half of the pickle, or more, would be premix.
    #[error(
        "no pickle is half premix: so little of it is taken up that its strength limits nothing; state equilibrium, or the pick-up that the meat really has"
    )]
    NoPickle,
    /// The inputs have no answer.
    #[error(transparent)]
    Cure(#[from] CureError),
}

/// How much of *this* premix for *this* batch under *this* authority: the most under the
/// ceiling for nitrite, the least that is worth its name, and what a scale can do. Bacon goes by
/// its own rows; where it is pumped, the amount is prescribed.
///
/// The reading is the largest one with which the same batch meets [`check`](super::check()).
/// Only the strength and the scale of the first of `batch.cures` are looked at; a batch for an
/// authority that goes by product is weighed without the premix, and a pickle with it.
///
/// # Errors
/// [`NoDose`] when a fact is missing, the authority has no ingoing ceiling, or the curing salt
/// is stronger than any premix.
pub fn dose(batch: &Batch<'_>, authority: Authority, day: Option<Date>) -> Result<Dose, NoDose> {
    let cure = batch.cures.first();
    let premix = cure.and_then(|cure| cure.strength).unwrap_or_default();
    let scale = cure.and_then(|cure| cure.mass).and_then(|mass| mass.scale);
    let asked = Asked { batch, premix, scale, day };
    if premix.is_beyond_a_premix() {
        return Err(NoDose::NotAPremix);
    }
    if batch.for_infants {
        return Err(NoDose::Infants);
    }
    if !batch.scaled {
        return Err(NoDose::Missing(SCALE));
    }
    let dose = if authority != Authority::UsFsis {
        asked.by_product(authority)?
    } else if !check::answers(batch, authority) {
        return Err(NoDose::NoRow);
    } else if let Some(missing) = batch.unknowable() {
        return Err(NoDose::Missing(missing));
    } else if batch.food == Food::Bacon {
        asked.bacon()?
    } else {
        asked.by_method()?
    };
    // The pickle is weighed with its premix, and no water takes up as much of it as half of the whole.
    let half = batch.pickle.map(|pickle| pickle.weight.low().mass() * 0.5);
    match half {
        Some(half) if dose.most >= half => Err(NoDose::NoPickle),
        _ => Ok(dose),
    }
}

/// A dose that is asked for.
struct Asked<'a> {
    batch: &'a Batch<'a>,
    premix: Premix,
    scale: Option<Mass>,
    day: Option<Date>,
}

impl Asked<'_> {
    fn by_method(&self) -> Result<Dose, NoDose> {
        let (batch, strength) = (self.batch, self.premix.nitrite());
        let row = row(&US_INGOING_NITRITE, Authority::UsFsis, batch.method, self.day);
        let row = row.ok_or(NoDose::NoRow)?;
        let limit = row.value.limit;
        let (figure, _) = limit.figures();
        let most = batch.most(figure, strength).ok_or(CureError::NoAgent { agent: "nitrite" })?;
        let dose = self.at_most(&row.row, most, |batch| {
            let known = batch.total(Premix::nitrite);
            check::ceiling(batch, &INGOING_NITRITE, limit, &known, Premix::nitrite).is_within()
        });
        Ok(Dose { least: self.least()?, ..dose })
    }

    /// The least of a policy for what is kept cold.
    fn least(&self) -> Result<Option<(&'static Row, Mass)>, NoDose> {
        let (Some(Method::Ground | Method::DryRub), Some(green)) =
            (self.batch.method, self.batch.green)
        else {
            return Ok(None);
        };
        let (figure, _) = US_MINIMUM.value.figures();
        let least = smallest_premix(figure, self.premix.nitrite(), green.high())?;
        Ok(Some((&US_MINIMUM.row, least.mass())))
    }

    fn bacon(&self) -> Result<Dose, NoDose> {
        let none = |level: f64| level <= 0.0;
        if none(self.premix.potassium_nitrite().mg_per_kg()) {
            self.bacon_by(&US_BACON_SODIUM, Premix::sodium_nitrite)
        } else if none(self.premix.sodium_nitrite().mg_per_kg()) {
            self.bacon_by(&US_BACON_POTASSIUM, Premix::potassium_nitrite)
        } else {
            self.bacon_by(&US_BACON_SODIUM, bacon::as_sodium_nitrite)
        }
    }

    fn bacon_by<A: Agent>(
        &self,
        table: &'static [Cited<BaconLimit<A>>],
        strength_of: impl Fn(&Premix) -> Level<A, InPremix> + Copy,
    ) -> Result<Dose, NoDose> {
        let formula = formula_of(self.batch.method);
        let row = row_of(table, Authority::UsFsis, formula, self.day).ok_or(NoDose::NoRow)?;
        let (strength, limit) = (strength_of(&self.premix), row.value.limit);
        let (figure, _) = limit.figures();
        let most = self.batch.most(figure, strength);
        let most = most.ok_or(CureError::NoAgent { agent: A::NAME })?;
        let held = |batch: &Batch<'_>| bacon::held(batch, row, strength_of);
        if let Limit::Exactly(target) = limit {
            // The formulation hits it, and no tolerance that nobody read is needed for it.
            let hits = |batch: &Batch<'_>| {
                held(batch).unless_remembered(|_| false).verdict == Verdict::Meets
            };
            return self.exactly(&row.row, target, strength, hits);
        }
        let least = if self.batch.method == Some(Method::DryRub) { self.least()? } else { None };
        Ok(Dose { least, ..self.at_most(&row.row, most, |batch| held(batch).is_within()) })
    }

    fn by_product(&self, authority: Authority) -> Result<Dose, NoDose> {
        let batch = self.batch;
        if !check::answers(batch, authority) {
            return Err(NoDose::NoRow);
        }
        let named = || batch.cured_as.iter().copied().chain(product::of_food(batch, authority));
        let rows = || named().flat_map(|key| product_rows(authority, key, self.day));
        if batch.cured_as.iter().all(|key| !product::is_product_of(authority, key)) {
            return Err(NoDose::NoProduct(cured_as(authority)));
        }
        let none = Limit::AtMost(0.0);
        if let Some(row) = rows().find(|row| row.value.limit == none) {
            return Err(NoDose::NoneAllowed(&row.row));
        }
        if let Some(missing) = batch.unknowable().filter(|_| batch.is_pickled()) {
            return Err(NoDose::Missing(missing));
        }
        let concerns = |row: &&'static Cited<ProductLimit>| {
            let ProductLimit { measured_on, .. } = row.value;
            let ingoing = matches!(measured_on, MeasuredOn::Ingoing | MeasuredOn::IngoingOnProduct);
            ingoing && row.value.strength_in(&self.premix).is_some_and(|strength| strength > 0.0)
        };
        let mut strictest: Option<(&'static Row, PremixMass)> = None;
        for row in rows() {
            let (Limit::AtMost(ceiling), true) = (row.value.limit, concerns(&row)) else {
                continue;
            };
            let most = self.most_of_product(&row.value, ceiling)?;
            if strictest.is_none_or(|(_, before)| most < before) {
                strictest = Some((&row.row, most));
            }
        }
        let (ceiling, most) = strictest.ok_or(NoDose::NoRow)?;
        let within = |batch: &Batch<'_>, of: fn(&Limit<f64>) -> bool| {
            let mut rows = rows().filter(concerns).filter(|row| of(&row.value.limit));
            rows.all(|row| product::is_within(batch, row))
        };
        let dose = self.at_most(ceiling, most, |batch| {
            within(batch, |limit| matches!(limit, Limit::AtMost(_)))
        });
        // A row may ask for a least amount too, and a coarse scale need not hit what lies between.
        let reading = dose.reading.filter(|&reading| {
            self.scale.is_none() || self.proves(reading, |batch| within(batch, |_| true))
        });
        Ok(Dose { reading, ..dose })
    }

    fn most_of_product(&self, limit: &ProductLimit, ceiling: f64) -> Result<PremixMass, NoDose> {
        let batch = self.batch;
        let strength = limit.strength_in(&self.premix).unwrap_or_default();
        let most = match (limit.measured_on, batch.green, batch.product) {
            _ if batch.is_pickled() => on_meat::<CuringSalts>(batch, limit.measured_on, ceiling)
                .and_then(|ceiling| batch.most(ceiling, Level::of(strength))),
            // "Ingoing", and not over what: the meat alone gives the smaller amount.
            (MeasuredOn::Ingoing, Some(green), _) => {
                let (ceiling, strength) =
                    (Level::<CuringSalts, OnGreenWeight>::of(ceiling), Level::of(strength));
                largest_premix(ceiling, strength, green.low()).ok()
            }
            (MeasuredOn::IngoingOnProduct, _, Some(rest)) => {
                largest_in_product(ceiling, strength, rest.low())
            }
            _ => return Err(NoDose::NoRow),
        };
        Ok(most.ok_or(CureError::NoAgent { agent: "nitrite" })?)
    }

    /// The dose under a ceiling. `is_met` says whether a batch with the premix in it is under it.
    fn at_most(
        &self,
        ceiling: &'static Row,
        most: PremixMass,
        is_met: impl Fn(&Batch<'_>) -> bool,
    ) -> Dose {
        let reading = self.largest_proven(most, is_met);
        let (grow, finer) = match (reading, self.scale) {
            (None, Some(division)) => {
                let finer = coarsest_step(most);
                (Some((division / finer).value).filter(|grow| *grow > 1.0), Some(finer))
            }
            _ => (None, None),
        };
        Dose { ceiling, prescribed: false, most: most.mass(), least: None, reading, grow, finer }
    }

    /// The dose that hits a prescribed amount of a pickle: m s u / pickle = target.
    fn exactly<A: Agent>(
        &self,
        ceiling: &'static Row,
        target: Level<A, OnGreenWeight>,
        strength: Level<A, InPremix>,
        is_met: impl Fn(&Batch<'_>) -> bool,
    ) -> Result<Dose, NoDose> {
        let most = self.batch.hitting_in(target, strength);
        let most = most.ok_or(CureError::NoAgent { agent: A::NAME })?;
        let nearest = |division: Mass| floor_to_division(most + division * 0.5, division).ok();
        let reading = self.scale.map_or(Some(most), nearest);
        let reading =
            reading.filter(|&reading| self.scale.is_none() || self.proves(reading, &is_met));
        // Half a step may not take it further from the target than the printed figure is rounded.
        let finer = most * (2.0 * bacon::ROUNDING / target.mg_per_kg());
        let (grow, finer) = match (reading, self.scale) {
            (None, Some(division)) => (Some((division / finer).value), Some(finer)),
            _ => (None, None),
        };
        let grow = grow.filter(|grow| *grow > 1.0);
        Ok(Dose { ceiling, prescribed: true, most, least: None, reading, grow, finer })
    }

    /// Whether the batch with this reading of the premix in it meets, reckoned as a check does.
    fn proves(&self, reading: Mass, is_met: impl Fn(&Batch<'_>) -> bool) -> bool {
        let mass = Weighed { mass: reading, scale: self.scale };
        let strength = Some(self.premix);
        let cures = [Cure { mass: Some(mass), strength, place: self.batch.place }];
        let product = match (self.batch.product, self.batch.weighed(mass)) {
            (Some(rest), Some(premix)) if !self.batch.is_pickled() => {
                rest.plus(Range::ordered(premix.low().mass(), premix.high().mass())).ok()
            }
            (product, _) => product,
        };
        is_met(&Batch { cures: &cures, product, ..*self.batch })
    }

    /// The largest reading that is proven. Its inverse gives the first guess; where weights that
    /// stand above and below the line leave less, it is sought below.
    fn largest_proven(
        &self,
        most: PremixMass,
        is_met: impl Fn(&Batch<'_>) -> bool,
    ) -> Option<Mass> {
        let guess = largest_reading(self.batch.surely_below(most), self.scale)?;
        let Some(division) = self.scale else { return Some(guess) };
        if self.proves(guess, &is_met) {
            return Some(guess);
        }
        let (mut fits, mut over) = (Mass::ZERO, guess);
        // A double has 53 bits to halve.
        for _ in 0..64 {
            let middle = floor_to_division((fits + over) * 0.5, division).ok()?;
            if middle <= fits {
                break;
            }
            if self.proves(middle, &is_met) { fits = middle } else { over = middle }
        }
        (fits > Mass::ZERO).then_some(fits)
    }
}
