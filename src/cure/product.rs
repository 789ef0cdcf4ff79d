use super::batch::{Batch, FINISHED, Known, STRENGTH, Weighed, either};
use super::check::{INGOING_NITRATE, INGOING_NITRITE, NO_ROW};
use super::limit::{Agents, CountedAs, IngoingLimit, MeasuredOn, ProductLimit};
use super::method::{GreenWeight, PremixMass, ingoing, ingoing_between, largest_reading};
use super::premix::Premix;
use super::residue::{
    ONE_DAY, RESIDUE, at_most_added, exactly, judge as judge_residue, unexplained,
};
use super::table::{
    AUSTRALIA_NEW_ZEALAND, CANADA, CODEX, DENMARK, EU, GREAT_BRITAIN, JAPAN, US_ACCELERATORS,
    US_FDA, US_INGOING_NITRATE, US_INGOING_NITRITE,
};
use crate::authority::Authority;
use crate::cite::{Cited, Date};
use crate::finding::{Answer, Finding, Limit, Mend, Missing, Rule, Verdict};
use crate::food::Food;
use crate::level::{
    Agent, Basis, CuringSalts, InPremix, Level, NitrateIon, NitriteIon, OnCheeseMilk,
    OnGreenWeight, OnProductAsMade, SodiumNitrate, SodiumNitrite,
};
use crate::range::Range;
use crate::units::{Mass, kilograms};

const PRODUCT: Missing = Missing::new(
    "the weight of the product as made: an ingredient has no weight",
    "give every ingredient a weight, water and spices too",
);
const LOST: &str = "What an analysis found in one batch does not show what goes into the next. More than the limit may be lost again, or not: have the process checked.";
const MILK: Missing = Missing::new(
    "the weight of the cheese milk",
    "write the milk as an ingredient of kind \"milk\", with its weight",
);
const SODIUM_ONLY: Missing = Missing::new(
    "a limit for the potassium salt: the row names the sodium salt alone",
    "use the sodium salt, or ask the authority",
);
const INGOING: Missing = Missing::new(
    "the level that goes in, which takes the green weight and the method",
    "write the method under cure, and a weight for the meat or the fish",
);
const UNSAID: Missing = Missing::new(
    "as what, or over what, the row counts its figure: its document does not say",
    "ask the authority",
)
.answered_by(Answer::NoTable);
const POTASSIUM: &str =
    "Part of it is the potassium salt, counted by the nitrite or nitrate it holds.";
const ONLY_LEFT: &str =
    "This authority limits what is left, and not what goes in. This is what goes in.";
const SO_MUCH: Missing = Missing::new(
    "a reason for this much: no law here lets more go in than the row below, of another authority",
    "use less, or ask the authority; one analysis does not show what the next batch holds",
);
const INVESTIGATE: &str =
    "The row also prints a residue above which the cause must be looked for. It is not a limit.";

/// What to write when the product is not named, with a product of that authority.
pub(super) fn cured_as(authority: Authority) -> Missing {
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
        Authority::UsFda => {
            "write cured_as = [\"fda/sablefish-salmon-shad\"], \"fda/tuna\", \"fda/smoked-chub\" or, for meat, \"fda/home-cure\"; any other fish is \"fda/other-fish\" and may hold no nitrite"
        }
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
        Authority::UsFda => &US_FDA,
        _ => &[],
    }
}

/// Whether the limits of an authority go by product and this batch may be one. Those of the
/// United States for fish are about meat only where a mix for home cures is named.
pub(super) fn answers(batch: &Batch<'_>, authority: Authority) -> bool {
    let own = |key: &&str| is_product_of(authority, key);
    match authority {
        Authority::UsFda => batch.food == Food::Fish || batch.cured_as.iter().any(own),
        _ => !table(authority).is_empty(),
    }
}

/// Whether a key is of a product of an authority.
pub(super) fn is_product_of(authority: Authority, key: &str) -> bool {
    table(authority).iter().any(|row| row.value.product_key == key)
}

/// The product that a food is, whatever else it is cured as.
pub(super) fn of_food(batch: &Batch<'_>, authority: Authority) -> Option<&'static str> {
    (authority == Authority::Canada && batch.food == Food::Bacon).then_some("ca/side-bacon")
}

/// Whether the figures of what goes into a batch meet one row.
pub(super) fn is_within(batch: &Batch<'_>, row: &'static Cited<ProductLimit>) -> bool {
    let mut within = true;
    going_in(batch, row, &mut |finding| within &= finding.is_within());
    within
}

/// The keys of all products whose limits are in the tables, each at least once.
pub fn product_keys() -> impl Iterator<Item = &'static str> {
    let named = US_ACCELERATORS.iter().filter_map(|row| row.value.product_key);
    Authority::ALL.into_iter().flat_map(table).map(|row| row.value.product_key).chain(named)
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
    let own = |key: &str| is_product_of(authority, key);
    let goes_in = !batch.cures.is_empty();
    let rule = if goes_in { &INGOING_NITRITE } else { &RESIDUE };
    let unproven = |missing| Finding::unproven(rule, missing, batch.place);
    let mut keys = batch.cured_as.iter().copied().filter(|key| own(key)).peekable();
    if keys.peek().is_none() {
        if goes_in || batch.analysis.found_any() {
            report(unproven(cured_as(authority)));
        }
        return;
    }
    let mut judged = false;
    let mut each = |finding| {
        judged = true;
        report(finding);
    };
    for key in keys {
        let mut rows = product_rows(authority, key, day).peekable();
        if rows.peek().is_none() {
            each(unproven(NO_ROW));
        }
        let unlisted = |agents: Agents| {
            let listed = |row: &Cited<ProductLimit>| {
                row.value.agents == agents || row.value.agents == Agents::Both
            };
            !product_rows(authority, key, day).any(listed)
        };
        for row in rows {
            judge(batch, row, &mut each);
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
                each(Finding::new(rule, Verdict::Unproven).missing(NO_ROW).at(batch.place));
            } else if brought && only_left_is_limited(authority, key, day, agents) {
                each(match agents {
                    Agents::Nitrate => shown(batch, rule, &US_INGOING_NITRATE, Premix::nitrate),
                    _ => shown(batch, rule, &US_INGOING_NITRITE, Premix::nitrite),
                });
            }
        }
    }
    if !judged && batch.analysis.found_any() {
        report(unexplained(batch));
    }
}

/// Whether every row of a product for an agent limits what is left, and none what goes in.
fn only_left_is_limited(
    authority: Authority,
    key: &str,
    day: Option<Date>,
    agents: Agents,
) -> bool {
    use MeasuredOn::{
        PresentInTheFood, Residual, ResidualAtEndOfProcess, ResidualThroughShelfLife,
    };
    product_rows(authority, key, day)
        .filter(|row| row.value.agents == agents || row.value.agents == Agents::Both)
        .all(|row| {
            matches!(
                row.value.measured_on,
                PresentInTheFood | Residual | ResidualAtEndOfProcess | ResidualThroughShelfLife
            )
        })
}

/// What goes in where only what is left is limited: shown, and asked about where it is more than the most that
/// any law here lets go in. One analysis is of one batch.
fn shown<A: Agent>(
    batch: &Batch<'_>,
    rule: &'static Rule,
    table: &'static [Cited<IngoingLimit<A>>],
    strength_of: impl Fn(&Premix) -> Level<A, InPremix> + Copy,
) -> Finding {
    if let Some(missing) = batch.no_level() {
        return Finding::unproven(rule, missing, batch.place);
    }
    let figure = |row: &Cited<IngoingLimit<A>>| row.value.limit.figures().0;
    let laxest = table.iter().reduce(|a, b| if figure(b) > figure(a) { b } else { a });
    let Some(laxest) = laxest else { return Finding::unproven(rule, NO_ROW, batch.place) };
    let known = batch.total(strength_of);
    // No mend: a law of others is not what this one asks for.
    let finding = known.against(rule, laxest.value.limit).row(&laxest.row);
    match finding.verdict {
        Verdict::Meets => Finding { limit: None, rows: [None, None], ..finding }.note(ONLY_LEFT),
        _ if finding.missing.is_some() => finding,
        _ => finding.left_open(SO_MUCH),
    }
}

/// Whether a premix is known to bring something.
pub(super) fn brings(batch: &Batch<'_>, strength_of: impl Fn(&Premix) -> f64) -> bool {
    batch.cures.iter().any(|cure| cure.strength.is_some_and(|premix| strength_of(&premix) > 0.0))
}

/// Holds a batch against one row.
fn judge(batch: &Batch<'_>, row: &'static Cited<ProductLimit>, report: &mut impl FnMut(Finding)) {
    let limit = &row.value;
    let concerns = match limit.agents {
        Agents::Nitrite => brings(batch, |premix| premix.nitrite().mg_per_kg()),
        Agents::Nitrate => brings(batch, |premix| premix.nitrate().mg_per_kg()),
        Agents::Both => !batch.cures.is_empty(),
    };
    let unknown = batch.cures.iter().any(|cure| cure.strength.is_none());
    let goes_in = concerns || unknown;
    if goes_in {
        going_in(batch, row, report);
    }
    // What an analysis found is judged whatever went in: nitrite turns into nitrate, and what brought it may
    // stand in no recipe.
    if goes_in || batch.analysis.is_of(limit.agents) {
        left_over(batch, row, goes_in, report);
    }
}

/// Holds what goes in against a row that limits it.
fn going_in(
    batch: &Batch<'_>,
    row: &'static Cited<ProductLimit>,
    report: &mut impl FnMut(Finding),
) {
    let limit = &row.value;
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
        MeasuredOn::CheeseMilk => report(match (batch.milk, limit.counted_as) {
            (None, _) => unproven(rule, MILK),
            (Some(milk), CountedAs::NitrateIon) => in_milk(batch, rule, row, milk, nitrate_ion),
            _ => unproven(rule, UNSAID),
        }),
        MeasuredOn::FinishedProduct => match limit.counted_as {
            CountedAs::SodiumNitrite => {
                in_finished(batch, rule, row, Premix::sodium_nitrite, report);
            }
            CountedAs::SodiumNitrate => {
                in_finished(batch, rule, row, Premix::sodium_nitrate, report);
            }
            _ => report(unproven(rule, UNSAID)),
        },
        MeasuredOn::NotStated => report(unproven(rule, UNSAID)),
        MeasuredOn::ResidualAtEndOfProcess
        | MeasuredOn::ResidualThroughShelfLife
        | MeasuredOn::Residual
        | MeasuredOn::PresentInTheFood => {}
    }
}

/// Holds what may be left against a row that limits it, by the analysis where there is one.
fn left_over(
    batch: &Batch<'_>,
    row: &'static Cited<ProductLimit>,
    goes_in: bool,
    report: &mut impl FnMut(Finding),
) {
    let limit = &row.value;
    let unsaid =
        || Finding::new(&RESIDUE, Verdict::Unproven).row(&row.row).missing(UNSAID).at(batch.place);
    let judged = || residue(batch, row, limit.counted_as).unwrap_or_else(unsaid);
    match limit.measured_on {
        MeasuredOn::ResidualThroughShelfLife => report(judged().note(ONE_DAY)),
        MeasuredOn::ResidualAtEndOfProcess
        | MeasuredOn::Residual
        | MeasuredOn::PresentInTheFood => report(judged()),
        // Where something goes in, it is judged beside what goes in.
        MeasuredOn::FinishedProduct if !goes_in => report(judged()),
        _ => {}
    }
    if let Some(cap) = limit.residual_cap {
        let cap = Limit::AtMost(Level::of(cap));
        let analysed = batch.analysis.nitrite.map(exactly);
        report(judge_residue(batch, cap, analysed, &row.row).note(
            "Besides the ingoing limit the row caps the residue, from all sources and through the whole shelf life.",
        ));
    }
}

/// The analysis held against a row of the residue, counted as the row counts.
fn residue(
    batch: &Batch<'_>,
    row: &'static Cited<ProductLimit>,
    counted_as: CountedAs,
) -> Option<Finding> {
    let limit = row.value.limit;
    let found = &batch.analysis;
    Some(match counted_as {
        CountedAs::NitriteIon => {
            judge_residue(batch, limit.map(Level::of), found.nitrite.map(exactly), &row.row)
        }
        CountedAs::NitrateIon => {
            judge_residue(batch, limit.map(Level::of), found.nitrate.map(exactly), &row.row)
        }
        CountedAs::SodiumNitrite => judge_residue(
            batch,
            limit.map(Level::of),
            found.sodium_nitrite().map(exactly),
            &row.row,
        ),
        CountedAs::SodiumNitrate => judge_residue(
            batch,
            limit.map(Level::of),
            found.sodium_nitrate().map(exactly),
            &row.row,
        ),
        CountedAs::NitrateAndNitriteAsSodiumNitrite => {
            judge_residue(batch, limit.map(Level::of), found.together(), &row.row)
        }
        CountedAs::SaltsAsWeighed | CountedAs::NotStated => return None,
    })
}

/// Holds what goes into the cheese milk against a row.
fn in_milk<A: Agent>(
    batch: &Batch<'_>,
    rule: &'static Rule,
    row: &'static Cited<ProductLimit>,
    milk: Range<Mass>,
    strength_of: impl Fn(&Premix) -> Level<A, InPremix> + Copy,
) -> Finding {
    let Ok(milk) = GreenWeight::range(milk) else {
        return Finding::new(rule, Verdict::Unproven).row(&row.row).missing(MILK).at(batch.place);
    };
    let known: Known<A, OnCheeseMilk> = divided_by(batch, milk, strength_of);
    known.against(rule, row.value.limit.map(Level::of)).row(&row.row)
}

/// A row about the finished product: what an analysis found in it, where there is one; else what goes in. More
/// than the limit that went in is told beside an analysis that found less.
fn in_finished<A: Agent>(
    batch: &Batch<'_>,
    rule: &'static Rule,
    row: &'static Cited<ProductLimit>,
    strength_of: impl Fn(&Premix) -> Level<A, InPremix> + Copy,
    report: &mut impl FnMut(Finding),
) {
    let analysed = if row.value.agents == Agents::Nitrite {
        batch.analysis.sodium_nitrite().map(Level::mg_per_kg)
    } else {
        batch.analysis.sodium_nitrate().map(Level::mg_per_kg)
    };
    let (none, _) = row.value.limit.figures();
    let Some(level) = analysed.filter(|_| none > 0.0) else {
        report(reckoned_in_finished(batch, rule, row, strength_of));
        return;
    };
    let level = Some(exactly(Level::<A, _>::of(level)));
    report(judge_residue(batch, row.value.limit.map(Level::of), level, &row.row));
    // An analysis is of one batch; what is repeated is what goes in, of either salt.
    let nitrite = row.value.agents == Agents::Nitrite;
    let either = |premix: &Premix| -> Level<A, InPremix> {
        let (nitrites, nitrates) = (premix.nitrite().mg_per_kg(), premix.nitrate().mg_per_kg());
        Level::of(if nitrite { nitrites } else { nitrates })
    };
    let went_in = batch.total(either).against(rule, row.value.limit.map(Level::of));
    if went_in.verdict != Verdict::Meets {
        report(Finding { verdict: Verdict::Unproven, ..went_in }.row(&row.row).note(LOST));
    }
}

/// Holds what goes in, on the weight of the finished product, against a row about the
/// finished product.
fn reckoned_in_finished<A: Agent>(
    batch: &Batch<'_>,
    rule: &'static Rule,
    row: &'static Cited<ProductLimit>,
    strength_of: impl Fn(&Premix) -> Level<A, InPremix> + Copy,
) -> Finding {
    let limit = row.value.limit;
    let unproven = |missing| {
        Finding::new(rule, Verdict::Unproven).row(&row.row).missing(missing).at(batch.place)
    };
    let nitrite = row.value.agents == Agents::Nitrite;
    let (ceiling, _) = limit.figures();
    if ceiling <= 0.0 {
        // None at all: what the label names decides, whatever the weights.
        let level = |premix: &Premix| {
            if nitrite { premix.nitrite().mg_per_kg() } else { premix.nitrate().mg_per_kg() }
        };
        let bringing =
            batch.cures.iter().find(|cure| cure.strength.is_some_and(|p| level(&p) > 0.0));
        return match bringing {
            Some(cure) => Finding::new(rule, Verdict::Breaks)
                .limit(limit.map(Level::<A, OnGreenWeight>::of))
                .row(&row.row)
                .mend(Mend::LeaveOut)
                .at(cure.place),
            None => unproven(STRENGTH),
        };
    }
    let potassium = brings(batch, |premix| {
        let (nitrite_too, nitrate) = (premix.potassium_nitrite(), premix.potassium_nitrate());
        if nitrite { nitrite_too.mg_per_kg() } else { nitrate.mg_per_kg() }
    });
    if potassium {
        return unproven(SODIUM_ONLY);
    }
    if batch.unknowable().is_some() {
        return unproven(INGOING);
    }
    let green = batch.total(strength_of);
    let Some(finished) = batch.on_finished(&green) else {
        return unproven(green.missing.unwrap_or(FINISHED));
    };
    let finding = at_most_added(finished, rule, limit.map(Level::of)).row(&row.row);
    let (Limit::AtMost(_), Some(weight), Some(green_weight)) = (limit, batch.finished, batch.green)
    else {
        return finding;
    };
    let share = weight.low().value / green_weight.high().mass().value;
    match batch.mend_ceiling(Level::of(ceiling * share), &green, strength_of) {
        Some(mend) if finding.verdict != Verdict::Meets && green.missing.is_none() => {
            finding.mend(mend)
        }
        _ => finding,
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
    let product = batch.as_made()?;
    match (measured_on, batch.green) {
        (MeasuredOn::Ingoing, Some(green)) => Range::new(green.low(), product.high()).ok(),
        (MeasuredOn::Ingoing, None) => None,
        _ => Some(product),
    }
}

/// What goes in, by what a row divides it by: of a pickle only what is taken up.
fn level<A: Agent>(
    batch: &Batch<'_>,
    measured_on: MeasuredOn,
    strength_of: impl Fn(&Premix) -> Level<A, InPremix> + Copy,
) -> Result<Known<A, OnProductAsMade>, Missing> {
    if !batch.is_pickled() {
        return Ok(divided_by(batch, divisor(batch, measured_on).ok_or(PRODUCT)?, strength_of));
    }
    if let Some(missing) = batch.unknowable() {
        return Err(missing);
    }
    let green = batch.total(strength_of);
    let product = batch.as_made().and_then(|weight| batch.divided_by(&green, weight));
    let known: Known<A, OnProductAsMade> = product.ok_or(PRODUCT)?;
    if measured_on != MeasuredOn::Ingoing {
        return Ok(known);
    }
    let on = |level: Level<A, OnGreenWeight>| Level::of(level.mg_per_kg());
    let on_meat = Range::ordered(on(green.range.low()), on(green.range.high()));
    let (nominal, range) = either((known.nominal, known.range), (on(green.nominal), on_meat));
    Ok(Known { nominal, range, ..known })
}

/// Holds the level on the product as made against an ingoing row.
fn hold<A: Agent>(
    batch: &Batch<'_>,
    rule: &'static Rule,
    row: &'static Cited<ProductLimit>,
    strength_of: impl Fn(&Premix) -> Level<A, InPremix> + Copy,
) -> Finding {
    let known = match level(batch, row.value.measured_on, strength_of) {
        Ok(known) => known,
        Err(missing) => {
            return Finding::new(rule, Verdict::Unproven)
                .row(&row.row)
                .missing(missing)
                .at(batch.place);
        }
    };
    let limit = row.value.limit.map(Level::of);
    let finding = known.against(rule, limit).row(&row.row);
    let nitrite = row.value.agents == Agents::Nitrite;
    let potassium = brings(batch, |premix| {
        let (one, other) = (premix.potassium_nitrite(), premix.potassium_nitrate());
        if nitrite { one.mg_per_kg() } else { other.mg_per_kg() }
    });
    let by_weight = row.value.counted_as == CountedAs::SaltsAsWeighed;
    let finding = match row.value.investigate_above {
        Some(_) => finding.note(INVESTIGATE),
        None if potassium && !by_weight => finding.note(POTASSIUM),
        None => finding,
    };
    let wrong = finding.verdict != Verdict::Meets && finding.missing.is_none();
    match mend(batch, &row.value, strength_of) {
        Some(mend) if wrong => finding.mend(mend),
        _ => finding,
    }
}

/// A level over all ingredients, divided by one weight.
fn divided_by<A: Agent, B: Basis>(
    batch: &Batch<'_>,
    weight: Range<GreenWeight>,
    strength_of: impl Fn(&Premix) -> Level<A, InPremix> + Copy,
) -> Known<A, B> {
    batch.total_by(strength_of, |mass, strength| {
        let middle = GreenWeight::new((weight.low().mass() + weight.high().mass()) * 0.5).ok()?;
        let nominal = ingoing(PremixMass::new(mass.mass).ok()?, strength, middle);
        let range =
            ingoing_between(batch.weighed(mass)?, Range::ordered(strength, strength), weight);
        let on = |level: Level<A, OnGreenWeight>| Level::of(level.mg_per_kg());
        Some((on(nominal), Range::ordered(on(range.low()), on(range.high()))))
    })
}

/// The most of a premix under a ceiling.
fn mend<A: Agent>(
    batch: &Batch<'_>,
    limit: &ProductLimit,
    strength_of: impl Fn(&Premix) -> Level<A, InPremix> + Copy,
) -> Option<Mend> {
    let Limit::AtMost(ceiling) = limit.limit else { return None };
    if batch.is_pickled() {
        let ceiling = on_meat(batch, limit.measured_on, ceiling)?;
        return batch.mend_ceiling(ceiling, &batch.total(strength_of), strength_of);
    }
    let product = divisor(batch, limit.measured_on)?;
    let (Weighed { scale, .. }, strength) = batch.only_source(strength_of)?;
    let premixes = batch.cures.iter().filter_map(|cure| cure.mass);
    let premixes: f64 = premixes.map(|weighed| weighed.mass.value).sum();
    let rest = kilograms((product.low().mass().value - premixes).max(0.0));
    let most = largest_in_product(ceiling, strength.mg_per_kg(), rest)?;
    match (largest_reading(batch.surely_below(most), scale), scale) {
        (Some(reading), _) => Some(Mend::UseAtMost(reading)),
        (None, Some(_)) => Some(Mend::FinerScale(most.mass() / 1.5)),
        (None, None) => None,
    }
}

/// The ceiling of a row as a level on green weight, all weights at their worst.
pub(super) fn on_meat<A: Agent>(
    batch: &Batch<'_>,
    measured_on: MeasuredOn,
    ceiling: f64,
) -> Option<Level<A, OnGreenWeight>> {
    if measured_on == MeasuredOn::Ingoing {
        return Some(Level::of(ceiling));
    }
    let share = batch.as_made()?.low().mass() / batch.green?.high().mass();
    // A few units in the last place below, for the roundings on the way.
    Some(Level::of(ceiling * share.value * (1.0 - 8.0 * f64::EPSILON)))
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
