use super::batch::{Batch, FINISHED, Known, SCALE, STRENGTH, Weighed};
use super::check::{NO_ROW, ceiling};
use super::limit::{AdditiveGroup, BaconFormula, BaconLimit, Method};
use super::premix::Premix;
use super::table::{
    US_BACON_NITRATE, US_BACON_POTASSIUM, US_BACON_SKIN, US_BACON_SODIUM, US_BACON_TOLERANCE,
    US_BACON_WEIGHT,
};
use crate::authority::Authority;
use crate::cite::{Cited, Date, Row};
use crate::finding::{Finding, Force, Limit, Mend, Missing, Rule, Verdict};
use crate::level::{Agent, Ascorbate, InPremix, Level, OnGreenWeight, SodiumNitrite};
use crate::range::{Measured as _, Range, RangeError};
use crate::units::Mass;

pub(super) const BACON_NITRITE: Rule =
    Rule::new("cure/bacon-nitrite", "nitrite in bacon", Force::Safety);
pub(super) const BACON_NITRATE: Rule =
    Rule::new("cure/bacon-nitrate", "no nitrate in bacon", Force::Safety);
pub(super) const BACON_ASCORBATE: Rule =
    Rule::new("cure/bacon-ascorbate", "ascorbate or erythorbate in pumped bacon", Force::Safety);

pub(super) const BACON_WEIGHT: Rule = Rule::new(
    "cure/bacon-weight",
    "bacon that weighs no more than the fresh belly",
    Force::Quality,
);

/// How far a whole number of mg/kg may be from what it was rounded from.
pub(super) const ROUNDING: f64 = 0.5;

const SKIN: Missing = Missing::new(
    "whether the bellies were weighed with their skin, which takes up no cure",
    "write skin = true or skin = false beside the amount of the belly",
);
const SKIN_OF_BOTH: Missing = Missing::new(
    "whether the finished bacon was weighed with the skin that the belly had",
    "weigh both without their skin, and write skin = false beside the amount of the belly",
);
const CULTURE: Missing = Missing::new(
    "the sugar and the lactic culture without which so little nitrite is not allowed",
    "use the standard amount; or make it with at least 0.7 % fermentable sugar and a lactic culture, and say so under cure",
);

pub(super) fn nitrate(batch: &Batch<'_>, report: &mut impl FnMut(Finding)) {
    // Any nitrate breaks the rule, whatever the weights: the label alone decides.
    let place = batch
        .cures
        .iter()
        .find(|cure| cure.strength.is_some_and(|premix| premix.nitrate().mg_per_kg() > 0.0));
    let unknown = batch.cures.iter().find(|cure| cure.strength.is_none());
    let finding = |verdict| {
        Finding::new(&BACON_NITRATE, verdict)
            .limit(US_BACON_NITRATE.value)
            .row(&US_BACON_NITRATE.row)
    };
    report(match (place, unknown) {
        (Some(cure), _) => finding(Verdict::Breaks).at(cure.place).mend(Mend::LeaveOut),
        (None, Some(cure)) => finding(Verdict::Unproven).at(cure.place).missing(STRENGTH),
        (None, None) => finding(Verdict::Meets).at(batch.place),
    });
}

pub(super) fn nitrite(
    batch: &Batch<'_>,
    authority: Authority,
    day: Option<Date>,
    report: &mut impl FnMut(Finding),
) {
    let potassium = batch.total(Premix::potassium_nitrite);
    if !potassium.may_be() {
        judge(batch, authority, day, &US_BACON_SODIUM, Premix::sodium_nitrite, report);
    } else if !batch.total(Premix::sodium_nitrite).may_be() {
        judge(batch, authority, day, &US_BACON_POTASSIUM, Premix::potassium_nitrite, report);
    } else {
        judge(batch, authority, day, &US_BACON_SODIUM, as_sodium_nitrite, report);
    }
}

/// Both salts: the potassium salt counts as the sodium salt of the same nitrite.
pub(super) fn as_sodium_nitrite(premix: &Premix) -> Level<SodiumNitrite, InPremix> {
    premix.sodium_nitrite() + premix.potassium_nitrite().as_sodium_nitrite()
}

/// The standard formula of a method.
pub(super) const fn formula_of(method: Option<Method>) -> BaconFormula {
    match method {
        Some(Method::Pumped) => BaconFormula::Pumped,
        Some(Method::Immersion) => BaconFormula::Immersion,
        _ => BaconFormula::DryCure,
    }
}

/// The row of a formula that is in force.
pub(super) fn row_of<A: Agent>(
    table: &'static [Cited<BaconLimit<A>>],
    authority: Authority,
    formula: BaconFormula,
    day: Option<Date>,
) -> Option<&'static Cited<BaconLimit<A>>> {
    table.iter().find(|row| {
        row.value.authority == authority && row.value.formula == formula && row.row.in_force.on(day)
    })
}

/// The weight of a belly without its skin, which is what the rules for immersed and dry
/// cured bacon divide by: × (1 − 0.10) where the skin is on and was not weighed. Where it is
/// not said, the two are the ends of a range.
///
/// Source: table `cure/us-bacon-skin`, from memory.
///
/// # Errors
/// [`RangeError`] for a mass that is not a number.
///
/// ```
/// use greenweight::{cure::skin_free, range::Range, units::kilograms};
///
/// let belly = Range::exactly(kilograms(10.0))?;
/// assert_eq!(skin_free(belly, Some(true))?.high(), kilograms(9.0));
/// assert_eq!(skin_free(belly, Some(false))?, belly);
/// assert_eq!(skin_free(belly, None)?, Range::new(kilograms(9.0), kilograms(10.0))?);
/// # Ok::<(), greenweight::range::RangeError>(())
/// ```
pub fn skin_free(belly: Range<Mass>, skin_on: Option<bool>) -> Result<Range<Mass>, RangeError> {
    let without = |mass: Mass| mass * (1.0 - US_BACON_SKIN.value);
    match skin_on {
        Some(false) => Ok(belly),
        Some(true) => Range::new(without(belly.low()), without(belly.high())),
        None => Range::new(without(belly.low()), belly.high()),
    }
}

/// Bacon may not weigh more than the fresh uncured belly. A dry cure only takes weight away.
pub(super) fn weight(batch: &Batch<'_>, report: &mut impl FnMut(Finding)) {
    let row = &US_BACON_WEIGHT.row;
    let unproven = |missing| {
        Finding::new(&BACON_WEIGHT, Verdict::Unproven).row(row).missing(missing).at(batch.place)
    };
    let (Some(finished), Some(green)) = (batch.finished, batch.green) else {
        if batch.method != Some(Method::DryRub) {
            report(unproven(FINISHED));
        }
        return;
    };
    let at_most = |belly: Mass| Limit::AtMost(belly * US_BACON_WEIGHT.value);
    // The skin may be on both, or come off between the two.
    let with_skin = batch.with_skin.map_or(green.high().mass(), |belly| belly.high());
    let surely = at_most(green.low().mass()).judge(&finished);
    let perhaps = at_most(with_skin).judge(&finished);
    let verdict = match (surely, perhaps) {
        (Verdict::Meets, _) if batch.scaled => Verdict::Meets,
        (_, Verdict::Breaks) => Verdict::Breaks,
        _ => Verdict::Unproven,
    };
    let finding = Finding::new(&BACON_WEIGHT, verdict)
        .found(&finished)
        .limit(at_most(if verdict == Verdict::Breaks { with_skin } else { green.low().mass() }))
        .row(row)
        .at(batch.place);
    report(match verdict {
        Verdict::Unproven if !batch.scaled => finding.missing(SCALE),
        Verdict::Unproven if batch.with_skin.is_some() => finding.missing(SKIN_OF_BOTH),
        _ => finding,
    });
}

fn judge<A: Agent>(
    batch: &Batch<'_>,
    authority: Authority,
    day: Option<Date>,
    table: &'static [Cited<BaconLimit<A>>],
    strength_of: impl Fn(&Premix) -> Level<A, InPremix> + Copy,
    report: &mut impl FnMut(Finding),
) {
    let nitrite = batch.total(strength_of);
    let formula = match batch.method {
        Some(Method::Pumped) => pumped_formula(&nitrite, table),
        method => formula_of(method),
    };
    let Some(row) = row_of(table, authority, formula, day) else {
        report(Finding::new(&BACON_NITRITE, Verdict::Unproven).missing(NO_ROW).at(batch.place));
        return;
    };
    let finding = held(batch, row, strength_of);
    report(with_culture(batch, &row.value, finding));
    if let Some(prescribed) = row.value.ascorbate {
        ascorbate(batch, prescribed, &row.row, report);
    }
}

/// What goes into bacon, held against one row.
pub(super) fn held<A: Agent>(
    batch: &Batch<'_>,
    row: &'static Cited<BaconLimit<A>>,
    strength_of: impl Fn(&Premix) -> Level<A, InPremix> + Copy,
) -> Finding {
    let (limit, nitrite) = (row.value.limit, batch.total(strength_of));
    match limit {
        Limit::Exactly(target) => {
            let finding = on_target(&BACON_NITRITE, target, accepted_around(target), &nitrite);
            let finding = finding.row(&row.row);
            // What is within the last printed digit over all of its range needs no tolerance.
            let ends = [nitrite.range.low(), nitrite.range.high()];
            let strays = |level: Level<A, _>| (level.mg_per_kg() - target.mg_per_kg()).abs();
            let exact = ends.into_iter().all(|level| strays(level) <= 1.0);
            let finding = if exact { finding } else { finding.row(&US_BACON_TOLERANCE.row) };
            // A formulation that hits it and strays is not mended by its own weight.
            let missed = |_: &_| !close(nitrite.nominal, target);
            batch.mend_target(finding, target, batch.only_source(strength_of).filter(missed))
        }
        Limit::Between(least, most) => {
            let finding = nitrite.against(&BACON_NITRITE, limit).row(&row.row);
            let middle = Level::of((least.mg_per_kg() + most.mg_per_kg()) * 0.5);
            // What strays wider than the window fits it by no weight.
            let share = |a: Level<A, _>, b: Level<A, _>| a.mg_per_kg() / b.mg_per_kg();
            let fits = share(nitrite.range.high(), nitrite.range.low()) < share(most, least);
            let source = batch.only_source(strength_of).filter(|_| fits);
            batch.mend_target(finding, middle, source)
        }
        _ => {
            let finding = ceiling(batch, &BACON_NITRITE, limit, &nitrite, strength_of);
            let finding = finding.row(&row.row);
            // A belly without its skin needs no estimate of it.
            let skinned = batch.with_skin.is_none();
            let finding = if skinned { finding } else { finding.row(&US_BACON_SKIN.row) };
            match finding.missing {
                None if batch.skin_unknown && finding.verdict == Verdict::Unproven => {
                    finding.missing(SKIN)
                }
                _ => finding,
            }
        }
    }
}

/// A formula that asks for sugar and a lactic culture breaks without them.
fn with_culture<A: Agent>(batch: &Batch<'_>, limit: &BaconLimit<A>, finding: Finding) -> Finding {
    let enough = limit
        .sugar_percent
        .is_none_or(|least| batch.sugar_percent.is_some_and(|sugar| sugar >= least));
    let too_little = limit
        .sugar_percent
        .is_some_and(|least| batch.sugar_percent.is_some_and(|sugar| sugar < least));
    let without = limit.lactic_culture && batch.culture == Some(false);
    let cultured = !limit.lactic_culture || batch.culture == Some(true);
    match finding.verdict {
        Verdict::Meets if too_little || without => {
            Finding { verdict: Verdict::Breaks, ..finding }.missing(CULTURE)
        }
        Verdict::Meets if !(enough && cultured) => finding.left_open(CULTURE),
        _ => finding,
    }
}

/// Which of the three pumped formulas a level aims at.
fn pumped_formula<A: Agent>(
    nitrite: &Known<A, OnGreenWeight>,
    table: &'static [Cited<BaconLimit<A>>],
) -> BaconFormula {
    let aims = |row: &&Cited<BaconLimit<A>>| match row.value.limit {
        Limit::Exactly(target) => close(nitrite.nominal, target),
        Limit::Between(..) => row.value.limit.met_by(nitrite.nominal) == Some(true),
        _ => false,
    };
    table.iter().find(aims).map_or(BaconFormula::Pumped, |row| row.value.formula)
}

/// A prescribed amount is printed in whole mg/kg; a formulation that rounds to it is it.
fn close<A: Agent>(nominal: Level<A, OnGreenWeight>, target: Level<A, OnGreenWeight>) -> bool {
    (nominal.mg_per_kg() - target.mg_per_kg()).abs() <= ROUNDING
}

/// A level held against a prescribed amount. `accepted` is how far one belly may stray
/// from the amount; without it only the formulation is judged.
fn on_target<A: Agent>(
    rule: &'static Rule,
    target: Level<A, OnGreenWeight>,
    accepted: Option<Limit<Level<A, OnGreenWeight>>>,
    known: &Known<A, OnGreenWeight>,
) -> Finding {
    let finding = known.against(rule, Limit::Exactly(target));
    if known.missing.is_some() {
        return finding;
    }
    let strays = accepted.is_some_and(|band| band.judge(&known.range) != Verdict::Meets);
    let within_reach = known.range.contains(target) && !known.range.is_exact();
    let verdict = match (close(known.nominal, target), strays) {
        (true, false) if known.scaled => Verdict::Meets,
        (true, _) => Verdict::Unproven,
        (false, _) if within_reach => Verdict::Unproven,
        (false, _) => Verdict::Breaks,
    };
    let missing = (verdict == Verdict::Unproven && !known.scaled).then_some(SCALE);
    Finding { verdict, missing, ..finding }
}

/// The variation that is accepted around the standard amount, as a share of any.
fn accepted_around<A>(target: Level<A, OnGreenWeight>) -> Option<Limit<Level<A, OnGreenWeight>>>
where
    A: Agent,
{
    let Limit::Between(low, high) = US_BACON_TOLERANCE.value else {
        return None;
    };
    let middle = (low.mg_per_kg() + high.mg_per_kg()) * 0.5;
    let end = |end: f64| Level::of(target.mg_per_kg() * end / middle);
    Some(Limit::Between(end(low.mg_per_kg()), end(high.mg_per_kg())))
}

fn ascorbate(
    batch: &Batch<'_>,
    prescribed: Level<Ascorbate, OnGreenWeight>,
    row: &'static Row,
    report: &mut impl FnMut(Finding),
) {
    let salts = [AdditiveGroup::Ascorbate];
    let known = batch.added::<Ascorbate>(&salts);
    let finding = on_target(&BACON_ASCORBATE, prescribed, None, &known).row(row);
    // Where there is none yet, what a fine scale would be told.
    let none = Weighed { mass: Mass::ZERO, scale: None };
    let source =
        if known.is_zero() { Some((none, Level::of(1e6))) } else { batch.only_added(&salts) };
    report(batch.mend_target(finding, prescribed, source));
}
