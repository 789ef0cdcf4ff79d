use super::batch::Batch;
use super::premix::Premix;
use crate::finding::{Finding, Force, Limit, Rule, Verdict};
use crate::level::{Level, NitriteSalts, OnGreenWeight, SodiumNitrite};
use crate::range::Range;

pub(super) const CLAIM: Rule =
    Rule::new("cure/claimed-level", "the level that the recipe itself claims", Force::Safety);

/// A claim is printed in whole mg/kg.
const ROUNDING: f64 = 0.5;

/// How far from another basis a claim may lie and still be told to rest on it.
const NEAR: f64 = 0.02;

/// Holds the ingoing nitrite that a recipe claims against what its weights give, and where
/// the two differ says which wrong basis would explain it. Says nothing where nothing is
/// claimed; where no level can be worked out the claim is unproven.
pub fn claim(batch: &Batch<'_>, report: &mut impl FnMut(Finding)) {
    let Some(claimed) = batch.claimed else { return };
    let known = batch.total(Premix::nitrite);
    if let Some(missing) = batch.no_level().or(known.missing) {
        report(Finding::new(&CLAIM, Verdict::Unproven).missing(missing).at(claimed.place));
        return;
    }
    let (low, high) = (known.range.low().mg_per_kg(), known.range.high().mg_per_kg());
    let right = low - ROUNDING <= claimed.value && claimed.value <= high + ROUNDING;
    let verdict = if right { Verdict::Meets } else { Verdict::Breaks };
    let finding = Finding::new(&CLAIM, verdict)
        .nominal(known.nominal)
        .found(&known.range)
        .limit(Limit::Exactly(Level::<NitriteSalts, OnGreenWeight>::of(claimed.value)))
        .at(claimed.place);
    let why = (!right).then(|| explained(batch, claimed.value, known.nominal.mg_per_kg()));
    report(match why.flatten() {
        Some(note) => finding.note(note),
        None => finding,
    });
}

/// The mistake that turns the level into the claim, if one does.
fn explained(batch: &Batch<'_>, claimed: f64, level: f64) -> Option<&'static str> {
    let middle = |range: Range<f64>| (range.low() + range.high()) * 0.5;
    let green = batch
        .green
        .map(|green| middle(Range::ordered(green.low().mass().value, green.high().mass().value)));
    let product = batch
        .product
        .map(|product| middle(Range::ordered(product.low().value, product.high().value)));
    let taken_up = batch.pickle.and_then(|pickle| pickle.taken_up).map(|taken_up| {
        middle(Range::ordered(taken_up.low().fraction(), taken_up.high().fraction()))
    });
    let ion = Level::<SodiumNitrite, OnGreenWeight>::of(level).as_nitrite_ion();
    let candidates = [
        (
            green.zip(product).map(|(green, product)| level * green / product),
            "It is the level on the weight of everything; the basis is the green weight, the meat alone.",
        ),
        (
            taken_up.map(|pump| level / pump),
            "It is the strength of the pickle; what goes into the meat is that times the pump.",
        ),
        (
            taken_up.map(|pump| level / (1.0 + pump)),
            "It is the level on the pumped weight; the basis is the green weight.",
        ),
        (Some(ion.mg_per_kg()), "It is the level of the nitrite ion; this rule counts the salt."),
    ];
    candidates.into_iter().find_map(|(other, note)| {
        other.filter(|other| (other - claimed).abs() <= NEAR * claimed).map(|_| note)
    })
}
