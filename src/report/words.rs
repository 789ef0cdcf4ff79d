//! A finding in words: what both reports say of it.

use core::cmp::Ordering;

use uom::si::f64::{Mass, Time};

use crate::cite::Row;
use crate::finding::{Finding, Force, Held, Limit, Measure, Mend, Rule};
use crate::range::{Range, against};
use crate::recipe::{Confirmed, Recipe};
use crate::units::{
    MassUnit, Reading, Scale, Shown, ShownRange, kitchen_scale, seconds, show_duration, show_mass,
    show_mass_like,
};

pub(super) fn unit(measure: &Measure) -> &'static str {
    match measure {
        Measure::Level { .. } => "mg/kg",
        Measure::Temperature(reading) => reading.scale().symbol(),
        Measure::Duration(_) | Measure::Held(_) => "s",
        Measure::Mass(_) => "kg",
        Measure::Share(_) => "%",
        Measure::Logs(_) => "log",
        Measure::DegreeHours(found) => match found.scale {
            Scale::Fahrenheit => "°F h",
            Scale::Celsius => "°C h",
        },
    }
}

/// The figures a value stands beside.
fn beside(finding: &Finding) -> impl Iterator<Item = f64> {
    let figures = finding.limit.map(|limit| limit.figures());
    let (first, second) = figures.map_or((None, None), |(a, b)| (Some(a), b));
    // A value is only printed beside a figure of its own kind.
    let kind = finding.found.map(|found| core::mem::discriminant(&found.low()));
    [first, second]
        .into_iter()
        .flatten()
        .filter(move |figure| kind == Some(core::mem::discriminant(figure)))
        .map(|figure| figure.number())
}

fn held(held: &Held) -> String {
    format!("{} at {}", show_duration(held.time), reading(held.at))
}

fn one(measure: &Measure, finding: &Finding) -> String {
    match measure {
        Measure::Duration(time) => show_duration(*time).to_string(),
        Measure::Held(time) => held(time),
        _ => beside(finding)
            .fold(Shown::new(measure.number(), unit(measure)), Shown::beside)
            .to_string(),
    }
}

/// Two ends in words; of two that read the same, one.
pub(super) fn ends(low: &str, high: &str) -> String {
    if low == high { low.to_owned() } else { format!("{low} to {high}") }
}

/// A time between two ends.
pub(super) fn times(low: Time, high: Time) -> String {
    ends(&show_duration(low).to_string(), &show_duration(high).to_string())
}

fn between(found: &Range<Measure>, finding: &Finding) -> String {
    let (low, high) = (found.low(), found.high());
    match (low, high) {
        (Measure::Duration(a), Measure::Duration(b)) if b.is_infinite() => {
            format!("at least {}", show_duration(a))
        }
        (Measure::Duration(a), Measure::Duration(b)) => times(a, b),
        (Measure::Held(a), Measure::Held(b)) if a < b => {
            format!("{} at {}", times(a.time, b.time), reading(b.at))
        }
        (Measure::Held(a), _) => held(&a),
        _ if high.number().is_infinite() && low.number() <= 0.0 => "an unknown level of".to_owned(),
        _ if high.number().is_infinite() => {
            format!("at least {}", Shown::new(low.number(), unit(&low)))
        }
        _ => beside(finding)
            .fold(ShownRange::new(low.number(), high.number(), unit(&low)), ShownRange::beside)
            .to_string(),
    }
}

/// What missing a rule means, after its name; nothing where it is safety.
pub(super) const fn force(rule: &Rule) -> &'static str {
    match rule.force {
        Force::Safety => "",
        Force::Quality => ", a limit of quality",
        Force::Advice => ", advice",
    }
}

/// What a level is of, and on what basis.
fn of(measure: &Measure) -> String {
    match measure {
        Measure::Level { agent, basis, .. } => format!(" {agent}, {basis}"),
        Measure::Share(share) => format!(" {}", share.of),
        _ => String::new(),
    }
}

/// What was found, with its range where that says more.
pub(super) fn found(finding: &Finding) -> Option<String> {
    let range = finding.found?;
    let spread = between(&range, finding);
    let of = of(&range.low());
    Some(match finding.nominal.map(|nominal| one(&nominal, finding)) {
        Some(nominal) if nominal != spread => format!("{nominal}{of} ({spread})"),
        _ => format!("{spread}{of}"),
    })
}

/// The limit, with its operator.
pub(super) fn limit(finding: &Finding) -> Option<String> {
    let limit = finding.limit?;
    let shown = |measure: &Measure| match measure {
        Measure::Duration(time) => show_duration(*time).to_string(),
        Measure::Held(time) => held(time),
        _ => Shown::new(measure.number(), unit(measure)).to_string(),
    };
    let (first, second) = limit.figures();
    let figures = match second {
        Some(second) => format!("{} to {}", shown(&first), shown(&second)),
        None => shown(&first),
    };
    Some(format!("{} {figures}{}", limit.operator(), of(&first)))
}

/// How far the nearest end of what was found is from the limit.
pub(super) fn margin(finding: &Finding) -> Option<String> {
    let (found, limit) = (finding.found?, finding.limit?);
    let (figure, _) = limit.figures();
    if core::mem::discriminant(&found.low()) != core::mem::discriminant(&figure) {
        return None;
    }
    let (gap, room, past) = match limit {
        Limit::AtMost(_) | Limit::Below(_) => {
            (found.high().number() - figure.number(), "below", "above")
        }
        Limit::AtLeast(_) | Limit::Above(_) => {
            (found.low().number() - figure.number(), "below", "above")
        }
        _ => return None,
    };
    if !gap.is_finite() {
        return None;
    }
    let side = if gap > 0.0 { past } else { room };
    let size = gap.abs();
    let shown = match figure {
        Measure::Duration(_) | Measure::Held(_) => {
            show_duration(crate::units::seconds(size)).to_string()
        }
        _ => Shown::new(size, unit(&figure)).to_string(),
    };
    let end = if found.low() < found.high() { " at its worst" } else { "" };
    Some(if size <= 0.0 { "exactly at it".to_owned() } else { format!("{shown} {side} it{end}") })
}

/// A mass in grams and, for whoever has no gram scale, in ounces, both rounded down.
fn mass(mass: Mass) -> String {
    let down = |unit: MassUnit| {
        let places = if mass.value < 0.1 { 100.0 } else { 10.0 };
        let count = (unit.count(mass) * places * (1.0 + 4.0 * f64::EPSILON)).floor() / places;
        Shown::new(count, unit.symbol())
    };
    let grams = if mass.value < 1.0 { down(MassUnit::Gram) } else { down(MassUnit::Kilogram) };
    format!("{grams} ({})", down(MassUnit::Ounce))
}

/// A temperature as a label prints it.
#[cfg(feature = "calendar")]
pub(super) fn temperature(at: Reading) -> String {
    reading(at)
}

fn reading(reading: Reading) -> String {
    Shown::new(reading.value(), reading.scale().symbol()).to_string()
}

/// A time beyond an hour in whole minutes: what is a whole one but for rounding stays it.
fn in_minutes(time: Time, round: impl Fn(f64) -> f64) -> String {
    let minutes = time.value / 60.0;
    let nearest = minutes.round();
    let whole =
        if against(minutes, nearest) == Some(Ordering::Equal) { nearest } else { round(minutes) };
    show_duration(if minutes > 60.0 { seconds(whole * 60.0) } else { time }).to_string()
}

fn at_most(time: Time) -> String {
    in_minutes(time, f64::floor)
}

fn at_least(time: Time) -> String {
    in_minutes(time, f64::ceil)
}

/// The change that would mend the finding.
pub(super) fn mend(finding: &Finding) -> Option<String> {
    let computed = finding.mend.map(|mend| match mend {
        Mend::UseAtMost(most) => format!("use at most {} of this premix", mass(most)),
        Mend::Weigh(target) => format!(
            "weigh out {} ({})",
            show_mass(target),
            show_mass_like(target, MassUnit::Ounce)
        ),
        Mend::UseShare(share) => {
            let percent = (share * 1000.0).floor() / 10.0;
            format!("use at most {percent} % of the written weight of every curing premix")
        }
        Mend::LeaveOut => "leave it out, or use a premix without it".to_owned(),
        Mend::FinerScale(division) => match kitchen_scale(division) {
            Some(step) => format!(
                "the batch is too small for this scale: use a scale with steps of {} or finer, or make a larger batch",
                show_mass_like(step, MassUnit::Gram)
            ),
            None => "the batch is too small for any kitchen scale: make a larger batch".to_owned(),
        },
        Mend::CookTo(to) => format!("cook until the thermometer shows {}", reading(to)),
        Mend::HoldFor(time) => format!("hold it there for at least {}", at_least(time)),
        Mend::AcidWithin(time) => format!(
            "have it acid within {} at the hottest chamber, or ferment it cooler",
            at_most(time)
        ),
        Mend::CoolWithin(time) => {
            format!("cool it through this stretch in at most {}", at_most(time))
        }
        Mend::KeepMoistFor(time) => {
            format!("keep it moist so for at least {}", at_least(time))
        }
        Mend::KeepAtOrBelow(at) => format!("keep it at {} or below by the thermometer", reading(at)),
        Mend::KeepAtOrAbove(at) => format!("keep it at {} or above by the thermometer", reading(at)),
        Mend::HeatWithin(time) => format!("heat it faster: in at most {}", at_most(time)),
        Mend::BringTo(share) => {
            format!("bring it to at least {} {}", Shown::new(share.percent, "%"), share.of)
        }
        Mend::KeepFor(time) => format!("keep it for at most {}", at_most(time)),
    });
    match (computed, finding.missing) {
        (Some(computed), Some(missing)) => Some(format!("{computed}; {}", missing.say)),
        (Some(computed), None) => Some(computed),
        (None, Some(missing)) => Some(missing.say.to_owned()),
        (None, None) => None,
    }
}

/// Where a row stands, and whether nobody read it there, or who did.
pub(super) fn source(row: &Row, recipe: &Recipe<'_>) -> String {
    if !row.is_from_memory() {
        return row.citation.to_string();
    }
    match recipe.confirmation(row) {
        Some(confirmed) => format!("{} ({})", row.citation, confirmation(confirmed)),
        None => format!(
            "{} (this figure is from memory: check it. Row {}/{})",
            row.citation, row.table, row.key
        ),
    }
}

/// Who says to have read a row from memory.
pub(super) fn confirmation(confirmed: &Confirmed<'_>) -> String {
    let Confirmed { document, at, on, .. } = confirmed;
    format!("the writer of the recipe read it in {document}, {at}, on {on}")
}

/// What is missing, and the gap of the record that it is missing in.
pub(super) fn missing(finding: &Finding) -> Option<String> {
    let what = finding.missing?.what;
    let Some(gap) = finding.gap else { return Some(what.to_owned()) };
    let (from, to) = (at_most(gap.low()), at_least(gap.high()));
    Some(format!("{what}: there is none from {from} to {to} of the record"))
}

/// All of a finding in sentences: what is asked, the verdict, the figures, the document and the mend.
pub(super) fn sentences(finding: &Finding, recipe: &Recipe<'_>) -> String {
    let mut text = format!("{}: {}.", finding.rule.asks, finding.verdict.words());
    let mut add = |name: &str, value: Option<String>| {
        if let Some(value) = value {
            text.push_str(&format!(" {name}: {value}."));
        }
    };
    add("Found", found(finding));
    add("Limit", limit(finding));
    add("Missing", missing(finding));
    for row in finding.rows.into_iter().flatten() {
        add("Source", Some(source(row, recipe)));
        add(
            "About the source",
            Some(row.note.trim_end_matches('.').to_owned()).filter(|n| !n.is_empty()),
        );
    }
    add("Mend", mend(finding));
    add("Note", finding.note.map(|note| note.trim_end_matches('.').to_owned()));
    text
}
