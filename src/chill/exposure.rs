use uom::si::f64::Time;

use super::table::{EXPOSURE, EXPOSURE_SUMMARY};
use super::warm::{HOW_LONG, Stay, together};
use crate::authority::Authority;
use crate::cite::Cited;
use crate::finding::{Finding, Force, Limit, Mend, Place, Rule, Verdict};
use crate::range::Range;
use crate::units::{PrintedTemperature, Reading, seconds};

pub(super) const EXPOSED: Rule =
    Rule::new("chill/exposure", "time that ready-to-eat food is warm", Force::Safety);

/// How long food with one organism may be in a band of temperatures.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Exposure {
    /// The organism.
    pub organism: &'static str,
    /// The band begins here.
    pub from: PrintedTemperature,
    /// It ends here; the last of an organism has no end.
    pub up_to: Option<PrintedTemperature>,
    /// The time, at most.
    pub most: Time,
}

/// How long ready-to-eat food may be warm, by how warm it ever gets.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct ReadyToEat {
    /// Whether the row is for food that was cooked here.
    pub cooked: bool,
    /// Only for food that is ever above this.
    pub ever_above: Option<PrintedTemperature>,
    /// Only for food that is never above this.
    pub never_above: Option<PrintedTemperature>,
    /// Time above this counts.
    pub from: PrintedTemperature,
    /// Time above this counts against [`Self::most_warm`] too.
    pub warm: PrintedTemperature,
    /// From this up it is hot, and no time counts.
    pub hot: PrintedTemperature,
    /// The time, at most.
    pub most: Time,
    /// The time above [`Self::warm`], at most.
    pub most_warm: Option<Time>,
}

fn above(at: Reading, printed: PrintedTemperature) -> bool {
    Limit::AtMost(printed.on(at.scale())).met_by(at) == Some(false)
}

/// The row of the FDA's guide for an organism at a constant temperature. It is stepped: between two
/// bands the warmer one counts. `None` below the coldest band, where the guide has no time, and for
/// an organism it does not name.
///
/// Times at several temperatures do not add up; the guide warns against reading between its rows.
///
/// ```
/// use greenweight::chill::exposure;
/// use greenweight::units::{Reading, Scale};
///
/// let hours = |f| {
///     let row = exposure("L. monocytogenes", Reading::new(f, Scale::Fahrenheit).ok()?)?;
///     Some(row.value.most.value / 3600.0)
/// };
/// assert_eq!(hours(50.0), Some(24.0));
/// // Above 50 °F and below 51 °F the band from 51 °F counts.
/// assert_eq!(hours(50.5), hours(60.0));
/// assert_eq!(hours(30.0), None);
/// ```
#[must_use]
pub fn exposure(organism: &str, at: Reading) -> Option<&'static Cited<Exposure>> {
    let rows = || EXPOSURE.iter().filter(|row| row.value.organism == organism);
    let below = |row: &Cited<Exposure>| {
        Limit::AtLeast(row.value.from.on(at.scale())).met_by(at) == Some(false)
    };
    if rows().next().is_none_or(below) {
        return None;
    }
    rows().find(|row| row.value.up_to.is_none_or(|up_to| !above(at, up_to)))
}

/// The organisms of [`exposure`].
pub fn exposed_organisms() -> impl Iterator<Item = &'static str> {
    let names = EXPOSURE.iter().map(|row| row.value.organism);
    names
        .scan("", |last, name| Some((core::mem::replace(last, name) != name).then_some(name)))
        .flatten()
}

/// Whether an authority says how long ready-to-eat food may be exposed.
#[must_use]
pub fn says_exposure(authority: Authority) -> bool {
    authority == Authority::UsFda
}

/// Ready-to-eat food at some temperatures, each for so long, held against the FDA's guide: the time
/// is added up, and of the rows for food that gets as warm, one is enough. `None` where it stays
/// cold or hot.
#[must_use]
pub fn ready_to_eat(stays: &[Stay], cooked: bool, place: Place) -> Option<Finding> {
    // The best verdict; of two that are the same the row that leaves more time.
    let mut best: Option<(Finding, Time)> = None;
    for row in EXPOSURE_SUMMARY.iter().filter(|row| row.value.cooked == cooked) {
        let counts = |at: Reading| above(at, row.value.from) && !hot(at, row.value.hot);
        let warm = || stays.iter().filter(|stay| counts(stay.at));
        let hottest = warm().map(|stay| stay.at).reduce(|a, b| if b > a { b } else { a })?;
        let serves = row.value.ever_above.is_none_or(|from| above(hottest, from))
            && row.value.never_above.is_none_or(|most| !above(hottest, most));
        if !serves {
            continue;
        }
        let finding = |verdict| Finding::new(&EXPOSED, verdict).row(&row.row).at(place);
        let all = sum(warm());
        let hot = sum(warm().filter(|stay| above(stay.at, row.value.warm)));
        let judged = match (all, hot) {
            (Some(all), Some(hot)) => {
                let total = (Limit::AtMost(row.value.most), all);
                let part = row.value.most_warm.map(|most| (Limit::AtMost(most), hot));
                let worse = |(limit, time): &(Limit<Time>, Range<Time>)| limit.judge(time);
                let worst = part.filter(|part| worse(part) > worse(&total)).unwrap_or(total);
                let (limit, time) = worst;
                let found = finding(limit.judge(&time)).found(&time).limit(limit);
                match (found.verdict, limit) {
                    (Verdict::Meets, _) => found,
                    (Verdict::Unproven, _) if time.high().is_infinite() => found.missing(HOW_LONG),
                    (_, Limit::AtMost(most)) => found.mend(Mend::KeepFor(most)),
                    _ => found,
                }
            }
            _ => finding(Verdict::Unproven).limit(Limit::AtMost(row.value.most)).missing(HOW_LONG),
        };
        let better = |(best, most): (Finding, Time)| {
            judged.verdict < best.verdict
                || (judged.verdict == best.verdict && row.value.most > most)
        };
        if best.is_none_or(better) {
            best = Some((judged, row.value.most));
        }
    }
    best.map(|(finding, _)| finding)
}

fn hot(at: Reading, hot: PrintedTemperature) -> bool {
    Limit::AtLeast(hot.on(at.scale())).met_by(at) == Some(true)
}

/// All of their times; `None` where one is not known.
fn sum<'a>(mut stays: impl Iterator<Item = &'a Stay>) -> Option<Range<Time>> {
    let none = Range::exactly(seconds(0.0)).ok()?;
    stays.try_fold(none, |sum, stay| Some(together(sum, stay.time?)))
}
