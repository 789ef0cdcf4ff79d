use super::agent::{
    Agent, CuringSalts, InPremix, NitrateIon, NitriteIon, OnProductAsMade, SodiumNitrate,
    SodiumNitrite,
};
use super::batch::{Batch, Known};
use super::check::{INGOING_NITRATE, INGOING_NITRITE, NO_ROW};
use super::level::Level;
use super::limit::{Agents, CountedAs, MeasuredOn, ProductLimit};
use super::method::{GreenWeight, PremixMass, ingoing, ingoing_between, largest_reading};
use super::premix::Premix;
use super::table::{AUSTRALIA_NEW_ZEALAND, CANADA, CODEX, DENMARK, EU, GREAT_BRITAIN, JAPAN};
use crate::authority::Authority;
use crate::cite::{Cited, Date};
use crate::finding::{Finding, Force, Limit, Mend, Missing, Rule, Verdict};
use crate::range::Range;
use crate::units::{Mass, kilograms};

pub(super) const RESIDUE: Rule =
    Rule::new("cure/residue", "what an analysis of the product may find", Force::Safety);

const PRODUCT: Missing = Missing::new(
    "the weight of the product as made: an ingredient has no weight",
    "give every ingredient a weight, water and spices too",
);
const ANALYSIS: Missing = Missing::new(
    "an analysis: no recipe proves what is left in the product",
    "have the finished product analysed through its shelf life",
);
const MILK: Missing = Missing::new(
    "the weight of the cheese milk",
    "have the dose to the milk checked by someone licensed to; this version does not judge it",
);
const UNSAID: Missing = Missing::new(
    "as what, or over what, the row counts its figure: its document does not say",
    "ask the authority",
);
const INVESTIGATE: &str =
    "The row also prints a residue above which the cause must be looked for. It is not a limit.";

/// What to write when the product is not named, with a product of that authority.
fn cured_as(authority: Authority) -> Missing {
    let say = match authority {
        Authority::EuropeanUnion => {
            "write cured_as = [\"eu/heat-treated\"], or another product of its table"
        }
        Authority::GreatBritain => {
            "write cured_as = [\"gb/meat-in-general\"], or another product of its table"
        }
        Authority::Denmark => {
            "write cured_as = [\"dk/heat-treated\"], or another product of its table"
        }
        Authority::Canada => "write cured_as = [\"ca/cured\"], or another product of its table",
        Authority::Codex => "write cured_as = [\"codex/083\"], or another product of its table",
        Authority::Japan => "write cured_as = [\"jp/meat\"], or another product of its table",
        _ => "write cured_as = [\"anz/cured-meat\"], or another product of its table",
    };
    Missing::new("which product of this authority's table it is", say)
}

fn table(authority: Authority) -> &'static [Cited<ProductLimit>] {
    match authority {
        Authority::EuropeanUnion => &EU,
        Authority::GreatBritain => &GREAT_BRITAIN,
        Authority::Denmark => &DENMARK,
        Authority::Canada => &CANADA,
        Authority::Codex => &CODEX,
        Authority::AustraliaNewZealand => &AUSTRALIA_NEW_ZEALAND,
        Authority::Japan => &JAPAN,
        _ => &[],
    }
}

pub(super) fn answers(authority: Authority) -> bool {
    !table(authority).is_empty()
}

/// The keys of all products whose limits are in the tables, each at least once.
pub fn product_keys() -> impl Iterator<Item = &'static str> {
    Authority::ALL.into_iter().flat_map(table).map(|row| row.value.product_key)
}

/// The rows of a product that are in force on a day. Without a day, only rows without
/// an end.
///
/// ```
/// use greenweight::{authority::Authority, cite::Date, cure::product_rows};
///
/// let figure = |day| {
///     let mut rows = product_rows(Authority::EuropeanUnion, "eu/heat-treated", Some(day));
///     rows.next().map(|row| row.row.printed)
/// };
/// // The ion from 9 October 2025, the sodium salt before.
/// assert_eq!(figure(Date::new(2025, 10, 8)?), Some("150 mg/kg expressed as NaNO2"));
/// assert_eq!(figure(Date::new(2025, 10, 9)?), Some("80 mg/kg expressed as NO2"));
/// # Ok::<(), greenweight::range::OutOfRange>(())
/// ```
pub fn product_rows(
    authority: Authority,
    product_key: &str,
    day: Option<Date>,
) -> impl Iterator<Item = &'static Cited<ProductLimit>> {
    table(authority).iter().filter(move |row| {
        row.value.product_key == product_key && !row.value.superseded && row.row.in_force.on(day)
    })
}

/// Checks a batch against an authority whose limits go by product.
pub(super) fn check(
    batch: &Batch<'_>,
    authority: Authority,
    day: Option<Date>,
    report: &mut impl FnMut(Finding),
) {
    let own = |key: &str| table(authority).iter().any(|row| row.value.product_key == key);
    let unproven = |missing| {
        Finding::new(&INGOING_NITRITE, Verdict::Unproven).missing(missing).at(batch.place)
    };
    let mut keys = batch.cured_as.iter().copied().filter(|key| own(key)).peekable();
    if keys.peek().is_none() {
        report(unproven(cured_as(authority)));
        return;
    }
    for key in keys {
        let mut rows = product_rows(authority, key, day).peekable();
        if rows.peek().is_none() {
            report(unproven(NO_ROW));
        }
        let unlisted = |agents: Agents| {
            let listed = |row: &Cited<ProductLimit>| {
                row.value.agents == agents || row.value.agents == Agents::Both
            };
            !product_rows(authority, key, day).any(listed)
        };
        for row in rows {
            judge(batch, row, report);
        }
        // A row for one agent does not speak of the other, and silence allows nothing.
        for (agents, rule, brought) in [
            (
                Agents::Nitrite,
                &INGOING_NITRITE,
                brings(batch, |premix| premix.nitrite().mg_per_kg()),
            ),
            (
                Agents::Nitrate,
                &INGOING_NITRATE,
                brings(batch, |premix| premix.nitrate().mg_per_kg()),
            ),
        ] {
            if brought && unlisted(agents) {
                report(Finding::new(rule, Verdict::Unproven).missing(NO_ROW).at(batch.place));
            }
        }
    }
}

fn brings(batch: &Batch<'_>, strength_of: impl Fn(&Premix) -> f64) -> bool {
    batch.cures.iter().any(|cure| cure.strength.is_some_and(|premix| strength_of(&premix) > 0.0))
}

/// Holds a batch against one row.
fn judge(batch: &Batch<'_>, row: &'static Cited<ProductLimit>, report: &mut impl FnMut(Finding)) {
    let limit = &row.value;
    let concerns = match limit.agents {
        Agents::Nitrite => brings(batch, |premix| premix.nitrite().mg_per_kg()),
        Agents::Nitrate => brings(batch, |premix| premix.nitrate().mg_per_kg()),
        Agents::Both => true,
    };
    let unknown = batch.cures.iter().any(|cure| cure.strength.is_none());
    if !concerns && !unknown {
        return;
    }
    let rule = if limit.agents == Agents::Nitrate { &INGOING_NITRATE } else { &INGOING_NITRITE };
    let unproven = |rule, missing| {
        Finding::new(rule, Verdict::Unproven).row(&row.row).missing(missing).at(batch.place)
    };
    match limit.measured_on {
        MeasuredOn::Ingoing | MeasuredOn::IngoingOnProduct => report(match limit.counted_as {
            CountedAs::NitriteIon => hold(batch, rule, row, nitrite_ion),
            CountedAs::NitrateIon => hold(batch, rule, row, nitrate_ion),
            CountedAs::SodiumNitrite => hold(batch, rule, row, sodium_nitrite),
            CountedAs::SodiumNitrate => hold(batch, rule, row, sodium_nitrate),
            CountedAs::SaltsAsWeighed => match limit.agents {
                Agents::Nitrite => hold(batch, rule, row, Premix::nitrite),
                Agents::Nitrate => hold(batch, rule, row, Premix::nitrate),
                Agents::Both => hold(batch, rule, row, curing_salts),
            },
            CountedAs::NitrateAndNitriteAsSodiumNitrite | CountedAs::NotStated => {
                unproven(rule, UNSAID)
            }
        }),
        MeasuredOn::CheeseMilk => report(unproven(rule, MILK)),
        MeasuredOn::NotStated => report(unproven(rule, UNSAID)),
        MeasuredOn::ResidualAtEndOfProcess
        | MeasuredOn::ResidualThroughShelfLife
        | MeasuredOn::Residual
        | MeasuredOn::PresentInTheFood => report(unproven(&RESIDUE, ANALYSIS)),
    }
    if limit.residual_cap.is_some() {
        report(unproven(&RESIDUE, ANALYSIS).note(
            "Besides the ingoing limit the row caps the residue, from all sources and through the whole shelf life.",
        ));
    }
}

fn nitrite_ion(premix: &Premix) -> Level<NitriteIon, InPremix> {
    premix.sodium_nitrite().as_nitrite_ion() + premix.potassium_nitrite().as_nitrite_ion()
}

fn nitrate_ion(premix: &Premix) -> Level<NitrateIon, InPremix> {
    premix.sodium_nitrate().as_nitrate_ion() + premix.potassium_nitrate().as_nitrate_ion()
}

fn sodium_nitrite(premix: &Premix) -> Level<SodiumNitrite, InPremix> {
    premix.sodium_nitrite() + premix.potassium_nitrite().as_sodium_nitrite()
}

fn sodium_nitrate(premix: &Premix) -> Level<SodiumNitrate, InPremix> {
    premix.sodium_nitrate() + premix.potassium_nitrate().as_sodium_nitrate()
}

fn curing_salts(premix: &Premix) -> Level<CuringSalts, InPremix> {
    Level::of(premix.nitrite().mg_per_kg() + premix.nitrate().mg_per_kg())
}

/// What the level is divided by: the product as made. A row that says "ingoing" and not
/// over what may mean the meat alone, so the divisor is known only between the two.
fn divisor(batch: &Batch<'_>, measured_on: MeasuredOn) -> Option<Range<GreenWeight>> {
    let product = GreenWeight::range(batch.product?).ok()?;
    match (measured_on, batch.green) {
        (MeasuredOn::Ingoing, Some(green)) => Range::new(green.low(), product.high()).ok(),
        (MeasuredOn::Ingoing, None) => None,
        _ => Some(product),
    }
}

/// Holds the level on the product as made against an ingoing row.
fn hold<A: Agent>(
    batch: &Batch<'_>,
    rule: &'static Rule,
    row: &'static Cited<ProductLimit>,
    strength_of: impl Fn(&Premix) -> Level<A, InPremix> + Copy,
) -> Finding {
    let Some(product) = divisor(batch, row.value.measured_on) else {
        return Finding::new(rule, Verdict::Unproven)
            .row(&row.row)
            .missing(PRODUCT)
            .at(batch.place);
    };
    let known: Known<A, OnProductAsMade> = batch.total_by(strength_of, |mass, strength| {
        let middle = GreenWeight::new((product.low().mass() + product.high().mass()) * 0.5).ok()?;
        let nominal = ingoing(PremixMass::new(mass.mass).ok()?, strength, middle);
        let range =
            ingoing_between(mass.range().ok()?, Range::ordered(strength, strength), product);
        let as_made = |level: Level<A, _>| Level::of(level.mg_per_kg());
        Some((as_made(nominal), Range::ordered(as_made(range.low()), as_made(range.high()))))
    });
    let limit = row.value.limit.map(Level::of);
    let finding = known.against(rule, limit).row(&row.row);
    let finding = match row.value.investigate_above {
        Some(_) => finding.note(INVESTIGATE),
        None => finding,
    };
    let wrong = finding.verdict != Verdict::Meets && finding.missing.is_none();
    match mend(batch, row.value.limit, product, strength_of) {
        Some(mend) if wrong => finding.mend(mend),
        _ => finding,
    }
}

/// The most of the only premix under a ceiling.
fn mend<A: Agent>(
    batch: &Batch<'_>,
    limit: Limit<f64>,
    product: Range<GreenWeight>,
    strength_of: impl Fn(&Premix) -> Level<A, InPremix> + Copy,
) -> Option<Mend> {
    let Limit::AtMost(ceiling) = limit else { return None };
    let (scale, strength) = batch.only_source(strength_of)?;
    let premixes = batch.cures.iter().filter_map(|cure| cure.mass);
    let premixes: f64 = premixes.map(|weighed| weighed.mass.value).sum();
    let rest = kilograms((product.low().mass().value - premixes).max(0.0));
    let most = largest_in_product(ceiling, strength.mg_per_kg(), rest)?;
    match (largest_reading(most, scale), scale) {
        (Some(reading), _) => Some(Mend::UseAtMost(reading)),
        (None, Some(_)) => Some(Mend::FinerScale(most.mass() / 1.5)),
        (None, None) => None,
    }
}

/// The most of a premix under a ceiling, added to the `rest` of a product. The premix is
/// part of what it is divided by: m s / (rest + m) = ceiling, so
/// m = ceiling × rest / (s − ceiling). `None` for a premix no stronger than the ceiling.
pub(super) fn largest_in_product(ceiling: f64, strength: f64, rest: Mass) -> Option<PremixMass> {
    let over = strength - ceiling;
    if over <= 0.0 {
        return None;
    }
    // A few units in the last place below, for the roundings on the way.
    let most = ceiling * rest.value / over * (1.0 - 4.0 * f64::EPSILON);
    PremixMass::new(kilograms(most)).ok()
}

impl ProductLimit {
    /// The strength of a premix counted as this row counts it, mg/kg; `None` where the row
    /// does not say or is about something else.
    pub(super) fn strength_in(&self, premix: &Premix) -> Option<f64> {
        Some(match (self.counted_as, self.agents) {
            (CountedAs::NitriteIon, _) => nitrite_ion(premix).mg_per_kg(),
            (CountedAs::NitrateIon, _) => nitrate_ion(premix).mg_per_kg(),
            (CountedAs::SodiumNitrite, _) => sodium_nitrite(premix).mg_per_kg(),
            (CountedAs::SodiumNitrate, _) => sodium_nitrate(premix).mg_per_kg(),
            (CountedAs::SaltsAsWeighed, Agents::Nitrite) => premix.nitrite().mg_per_kg(),
            (CountedAs::SaltsAsWeighed, Agents::Nitrate) => premix.nitrate().mg_per_kg(),
            (CountedAs::SaltsAsWeighed, Agents::Both) => curing_salts(premix).mg_per_kg(),
            _ => return None,
        })
    }
}
