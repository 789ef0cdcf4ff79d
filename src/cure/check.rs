use super::additive::{self, ACCELERATOR, PHOSPHATE};
use super::bacon::{self, BACON_ASCORBATE, BACON_NITRATE, BACON_NITRITE, BACON_WEIGHT};
use super::batch::{Batch, Cure, Known, STRENGTH};
use super::claim::CLAIM;
use super::limit::{IngoingLimit, Method};
use super::premix::{Premix, strongest_sold};
use super::product;
use super::residue::{self, RESIDUE};
use super::table::{
    self, US_INFANT_NO_NITRATE, US_INFANT_NO_NITRITE, US_INGOING_NITRATE, US_INGOING_NITRITE,
    US_MINIMUM,
};
use crate::authority::Authority;
use crate::cite::{Cited, Date};
use crate::finding::{Answer, Finding, Force, Limit, Mend, Missing, Rule, Verdict};
use crate::food::Food;
use crate::level::{Agent, InPremix, Level, NitriteSalts, OnGreenWeight};
use crate::range::Range;

pub(super) const INGOING_NITRITE: Rule =
    Rule::new("cure/ingoing-nitrite", "nitrite that goes into the meat", Force::Safety);
pub(super) const INGOING_NITRATE: Rule =
    Rule::new("cure/ingoing-nitrate", "nitrate that goes into the meat", Force::Safety);
const LEAST_NITRITE: Rule =
    Rule::new("cure/least-nitrite", "enough nitrite to be worth its name", Force::Advice);
const ANSWERED: Rule =
    Rule::new("cure/authority", "an authority that limits this cure", Force::Safety);

const INFANTS: Rule =
    Rule::new("cure/infant-food", "no curing agent in food for infants", Force::Safety);

pub(crate) const PREMIX_STRENGTH: Rule =
    Rule::new("cure/premix-strength", "strength of the curing premix", Force::Safety);

const NEAT: Missing = Missing::new(
    "a curing premix: none is sold with this much nitrite, and neat nitrite is not for a kitchen scale",
    "use a premix as it is sold, and write the strength that its label names",
);

/// The rules of this room.
pub const RULES: [Rule; 14] = [
    PREMIX_STRENGTH,
    INGOING_NITRITE,
    INGOING_NITRATE,
    LEAST_NITRITE,
    BACON_NITRITE,
    BACON_NITRATE,
    BACON_ASCORBATE,
    BACON_WEIGHT,
    ACCELERATOR,
    PHOSPHATE,
    INFANTS,
    RESIDUE,
    CLAIM,
    ANSWERED,
];

pub(super) const NO_ROW: Missing = Missing::new(
    "a limit of this authority for this cure on the day of the recipe",
    "leave out what it has no limit for, or ask the authority what it allows",
);

/// Checks what goes into a batch against the rules of one authority on one day.
///
/// Says nothing when the authority has no rule about curing; whoever calls it sees
/// to it that at least one authority answers.
pub fn check(
    batch: &Batch<'_>,
    authority: Authority,
    day: Option<Date>,
    report: &mut impl FnMut(Finding),
) {
    if !answers(batch, authority) {
        return;
    }
    additive::check(batch, authority, day, report);
    if batch.cures.is_empty() {
        found_without_a_cure(batch, authority, day, report);
        return;
    }
    if batch.for_infants {
        infants(batch, authority, report);
    }
    if authority != Authority::UsFsis {
        product::check(batch, authority, day, report);
        return;
    }
    let unknowable = batch.unknowable();
    if batch.food == Food::Bacon {
        match unknowable {
            Some(missing) => report(Finding::unproven(&BACON_NITRITE, missing, batch.place)),
            None => {
                let mut broken = false;
                bacon::nitrite(batch, authority, day, &mut |finding| {
                    broken |= finding.verdict == Verdict::Breaks;
                    report(finding);
                });
                // Pumped bacon has its amount prescribed, and immersed may not hold more than this.
                if batch.method == Some(Method::DryRub) && !broken {
                    least(&batch.total(Premix::nitrite), report);
                }
            }
        }
        bacon::nitrate(batch, report);
        bacon::weight(batch, report);
        residue::united_states(batch, report);
        return;
    }
    let (nitrite, nitrate) = (batch.total(Premix::nitrite), batch.total(Premix::nitrate));
    if nitrite.may_be() {
        let finding = match (unknowable, row(&US_INGOING_NITRITE, authority, batch.method, day)) {
            (Some(missing), _) => Finding::unproven(&INGOING_NITRITE, missing, batch.place),
            (None, None) => Finding::unproven(&INGOING_NITRITE, NO_ROW, batch.place),
            (None, Some(row)) => {
                ceiling(batch, &INGOING_NITRITE, row.value.limit, &nitrite, Premix::nitrite)
                    .row(&row.row)
            }
        };
        report(finding);
        if unknowable.is_none() && finding.verdict != Verdict::Breaks {
            least(&nitrite, report);
        }
    }
    // A strength that is not said is asked for once, beside the nitrite.
    if product::brings(batch, |premix| premix.nitrate().mg_per_kg()) {
        // The row names meat, and of poultry only what is comminuted.
        let row = row(&US_INGOING_NITRATE, authority, batch.method, day)
            .filter(|_| batch.food != Food::Poultry);
        report(match (unknowable, row) {
            (Some(missing), _) => Finding::unproven(&INGOING_NITRATE, missing, batch.place),
            (None, None) => Finding::unproven(&INGOING_NITRATE, NO_ROW, nitrate.place),
            (None, Some(row)) => {
                ceiling(batch, &INGOING_NITRATE, row.value.limit, &nitrate, Premix::nitrate)
                    .row(&row.row)
            }
        });
    }
    residue::united_states(batch, report);
    // No row limits the nitrate that is left, and of nitrite no more can turn into it than went in.
    if !product::brings(batch, |premix| premix.nitrate().mg_per_kg()) && unknowable.is_none() {
        let found = batch.analysis.sodium_nitrate().map_or(0.0, |level| level.mg_per_kg());
        if found > nitrite.range.high().mg_per_kg() * DRIED {
            report(residue::unexplained(batch));
        }
    }
}

/// Nothing that is dried loses more than so much of its weight, and what is in it is so many times denser: a screen,
/// and no published figure.
const DRIED: f64 = 3.0;

/// An analysis is held against what may be left although nothing that was written cures: it is the only
/// witness of a powder under another name.
fn found_without_a_cure(
    batch: &Batch<'_>,
    authority: Authority,
    day: Option<Date>,
    report: &mut impl FnMut(Finding),
) {
    if batch.for_infants && batch.analysis.found_any() {
        report(residue::unexplained(batch));
    }
    if authority != Authority::UsFsis {
        product::check(batch, authority, day, report);
    } else if batch.analysis.nitrite.is_some() {
        residue::united_states(batch, report);
    } else if batch.analysis.found_any() {
        report(residue::unexplained(batch));
    }
}

/// Asks about every curing salt that holds more nitrite than a premix is sold with. Says nothing of the
/// others. Nitrate is left alone: it is sold neat.
///
/// ```
/// use greenweight::cure::{Cure, Level, Premix, strengths};
/// use greenweight::finding::Place;
///
/// let asked = |percent| {
///     let premix = Premix::new().with_sodium_nitrite(Level::percent(percent).unwrap()).unwrap();
///     let cure = Cure { mass: None, strength: Some(premix), place: Place::default() };
///     let mut count = 0;
///     strengths(&[cure], &mut |_| count += 1);
///     count
/// };
/// assert_eq!([asked(6.25), asked(98.0)], [0, 1]);
/// ```
pub fn strengths(cures: &[Cure], report: &mut impl FnMut(Finding)) {
    let Some(sold) = strongest_sold() else { return };
    for cure in cures {
        let Some(premix) = cure.strength.filter(Premix::is_beyond_a_premix) else { continue };
        let level = premix.nitrite();
        let known = Range::ordered(level, level);
        let finding = Finding::unproven(&PREMIX_STRENGTH, NEAT, cure.place).found(&known);
        let finding = finding.limit(Limit::AtMost(sold.value.nitrite.high())).row(&sold.row);
        let neat = table::PREMIX_STRENGTH.iter().find(|row| row.value.neat);
        report(neat.map_or(finding, |neat| finding.row(&neat.row)));
    }
}

/// Whether an authority has rules about curing such a batch. Those of the United States for
/// inspected plants are about meat and poultry: nitrite in fish has other limits.
#[must_use]
pub fn answers(batch: &Batch<'_>, authority: Authority) -> bool {
    (authority == Authority::UsFsis && batch.food.is_meat()) || product::answers(batch, authority)
}

/// Food for infants holds no curing agent; what the label names decides.
fn infants(batch: &Batch<'_>, authority: Authority, report: &mut impl FnMut(Finding)) {
    if authority != Authority::UsFsis {
        report(Finding::new(&INFANTS, Verdict::Unproven).missing(NO_ROW).at(batch.place));
        return;
    }
    for cure in batch.cures {
        let Some(strength) = cure.strength else {
            let finding = Finding::new(&INFANTS, Verdict::Unproven).missing(STRENGTH);
            report(finding.row(&US_INFANT_NO_NITRITE.row).at(cure.place));
            continue;
        };
        for (row, level) in [
            (&US_INFANT_NO_NITRITE.row, strength.nitrite().mg_per_kg()),
            (&US_INFANT_NO_NITRATE.row, strength.nitrate().mg_per_kg()),
        ] {
            if level > 0.0 {
                let finding = Finding::new(&INFANTS, Verdict::Breaks).row(row);
                report(finding.mend(Mend::LeaveOut).at(cure.place));
            }
        }
    }
}

const AUTHORITY: Missing = Missing::new(
    "an authority with limits for nitrite or nitrate in this food",
    "for meat add one to held_to, for example \"us-fsis\" for a plant, or \"us-fda\" with cured_as = [\"fda/home-cure\"] for a cure at home; for fish, eggs, cheese and sauces leave nitrite and nitrate out",
);
const AUTHORITY_OF_ADDITIVES: Missing = Missing::new(
    "an authority with limits for accelerators and phosphates in this food",
    "for meat add one to held_to, for example \"us-fsis\" for a plant; otherwise leave them out",
)
.answered_by(Answer::NoTable);

/// The finding when none of the authorities of a recipe limits what goes into a batch.
#[must_use]
pub fn unanswered(batch: &Batch<'_>) -> Finding {
    let additives_alone = batch.cures.is_empty() && !batch.additions.is_empty();
    let missing = if additives_alone { AUTHORITY_OF_ADDITIVES } else { AUTHORITY };
    Finding::unproven(&ANSWERED, missing, batch.place)
}

pub(super) fn row<A: Agent>(
    table: &'static [Cited<IngoingLimit<A>>],
    authority: Authority,
    method: Option<Method>,
    day: Option<Date>,
) -> Option<&'static Cited<IngoingLimit<A>>> {
    table.iter().find(|row| {
        row.value.authority == authority
            && method.is_some_and(|method| row.value.methods.contains(&method))
            && row.row.in_force.on(day)
    })
}

pub(super) fn ceiling<A: Agent>(
    batch: &Batch<'_>,
    rule: &'static Rule,
    limit: Limit<Level<A, OnGreenWeight>>,
    known: &Known<A, OnGreenWeight>,
    strength_of: impl Fn(&Premix) -> Level<A, InPremix>,
) -> Finding {
    let finding = known.against(rule, limit);
    let (ceiling, _) = limit.figures();
    match (finding.verdict, batch.mend_ceiling(ceiling, known, strength_of)) {
        (Verdict::Breaks | Verdict::Unproven, Some(mend)) if finding.missing.is_none() => {
            finding.mend(mend)
        }
        _ => finding,
    }
}

/// The policy of a least level in products that must be kept cold: advice.
fn least(nitrite: &Known<NitriteSalts, OnGreenWeight>, report: &mut impl FnMut(Finding)) {
    if nitrite.missing.is_some() || nitrite.is_zero() {
        return;
    }
    let limit = US_MINIMUM.value;
    let reached = limit.judge(&nitrite.range) == Verdict::Meets;
    let mut finding = Finding::new(&LEAST_NITRITE, Verdict::Meets)
        .nominal(nitrite.nominal)
        .found(&nitrite.range)
        .limit(limit)
        .row(&US_MINIMUM.row)
        .at(nitrite.place);
    if !reached {
        finding.past_advice = true;
        finding = finding.note("It may hold less than a product that must be kept cold should, unless something else makes it safe.");
    }
    report(finding);
}
