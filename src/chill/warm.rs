use uom::si::f64::{TemperatureInterval, Time};

use super::table::WARM_TIME;
use crate::authority::Authority;
use crate::cite::Cited;
use crate::finding::{Answer, Finding, Force, Limit, Mend, Missing, Place, Rule, Verdict};
use crate::range::Range;
use crate::units::{PrintedTemperature, Reading, minutes, seconds};

pub(super) const WARM: Rule =
    Rule::new("chill/warm-time", "time between cold and hot", Force::Safety);

pub(super) const HOW_LONG: Missing =
    Missing::new("how long it stays at this temperature", "write for = \"… min\" on the step");
const PROCEDURE: Missing = Missing::new(
    "a written procedure of time in place of temperature, and that it is served or thrown away in time",
    "keep it cold or hot; otherwise have the procedure at hand before it is used",
)
.answered_by(Answer::Outside);
const ONCE: &str = "A defence that is there once only. Food that was kept so is cooled to be kept safe, or thrown away.";
const MARK: &str = "Time in place of temperature: marked when it leaves the cold or the heat, served or thrown away in time, never put back.";

/// What food was before it is neither.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Was {
    /// Cold.
    Cold,
    /// Hot.
    Hot,
}

/// Food at a temperature for so long.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stay {
    /// The temperature.
    pub at: Reading,
    /// How far the thermometer may be off: at the edge of the cold and of the hot it may be warm.
    pub off: TemperatureInterval,
    /// For how long, where it is known.
    pub time: Option<Range<Time>>,
    /// What it was before.
    pub was: Was,
}

/// How long food may be out of the cold and not hot.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct WarmTime {
    /// Whose row it is.
    pub authority: Authority,
    /// Only for food that was this before.
    pub was: Option<Was>,
    /// At or below this it is cold.
    pub cold: PrintedTemperature,
    /// At or above this it is hot.
    pub hot: PrintedTemperature,
    /// Only where the air is above this.
    pub air_above: Option<PrintedTemperature>,
    /// Only for food that is never above this.
    pub never_above: Option<PrintedTemperature>,
    /// The time, as the row prints it.
    pub most: Limit<Time>,
}

impl WarmTime {
    /// Whether a temperature is between cold and hot.
    #[must_use]
    pub fn warm(&self, at: Reading) -> bool {
        let (cold, hot) = (self.cold.on(at.scale()), self.hot.on(at.scale()));
        Limit::AtMost(cold).met_by(at) == Some(false)
            && Limit::AtLeast(hot).met_by(at) == Some(false)
    }

    /// How long a stay is warm: of one that may be, and is not by its reading, up to all of its time. `Some(None)`
    /// where its time is not known.
    fn of(&self, stay: &Stay) -> Option<Option<Range<Time>>> {
        if self.warm(stay.at) {
            return Some(stay.time);
        }
        let known = stay.at.within(stay.off).ok()?;
        let perhaps = self.warm(known.low()) || self.warm(known.high());
        perhaps.then(|| stay.time.map(|time| Range::ordered(seconds(0.0), time.high())))
    }

    fn time(&self) -> Time {
        match self.most {
            Limit::AtMost(time) | Limit::Below(time) => time,
            _ => Time::default(),
        }
    }

    /// The longest time that meets it, by minutes.
    fn longest(&self) -> Time {
        match self.most {
            Limit::Below(time) => time - minutes(1.0),
            _ => self.time(),
        }
    }

    fn serves(&self, hottest: Reading) -> bool {
        let above = |printed: PrintedTemperature| {
            Limit::AtMost(printed.on(hottest.scale())).met_by(hottest) == Some(false)
        };
        self.air_above.is_none_or(above) && self.never_above.is_none_or(|at| !above(at))
    }
}

/// Whether an authority says how long food may be warm.
#[must_use]
pub fn says_how_long(authority: Authority) -> bool {
    rows(authority).next().is_some()
}

/// Whether a temperature is nearer to the cold of an authority than to its hot: food held there is
/// not held hot.
#[must_use]
pub fn nearer_to_cold(at: Reading, authority: Authority) -> bool {
    rows(authority).next().is_some_and(|row| {
        let (cold, hot) = (row.value.cold.on(at.scale()), row.value.hot.on(at.scale()));
        at.value() - cold.value() < hot.value() - at.value()
    })
}

fn rows(authority: Authority) -> impl Iterator<Item = &'static Cited<WarmTime>> {
    let food_code = authority.is_food_code();
    let authority = if food_code { Authority::UsFoodCode2022 } else { authority };
    WARM_TIME.iter().filter(move |row| row.value.authority == authority)
}

/// Whether a time is within that of every row, whatever the authority and the temperature.
#[must_use]
pub fn always_short(time: Time) -> bool {
    WARM_TIME.iter().all(|row| row.value.most.met_by(time) == Some(true))
}

/// Food at some temperatures, each for so long, held against the rows of an authority: the time in
/// between is added up. `None` where it was never warm by that authority, or has no rows.
#[must_use]
pub fn warm(stays: &[Stay], authority: Authority, place: Place) -> Option<Finding> {
    let sides = [None, Some(Was::Cold), Some(Was::Hot)];
    let findings = sides.into_iter().filter_map(|was| of_side(stays, authority, was, place));
    findings.reduce(Finding::or_worse)
}

/// Two times together; without an end where one of them has none.
pub(super) fn together(a: Range<Time>, b: Range<Time>) -> Range<Time> {
    let open = Range::ordered(a.low() + b.low(), seconds(f64::INFINITY));
    a.plus(b).unwrap_or(open)
}

/// The same by the rows for food that was hot, or cold, before; of `None` by those for any.
fn of_side(
    stays: &[Stay],
    authority: Authority,
    was: Option<Was>,
    place: Place,
) -> Option<Finding> {
    let rows = || rows(authority).filter(|row| row.value.was == was);
    let first = rows().next()?;
    let of_side = |stay: &&Stay| was.is_none_or(|was| stay.was == was);
    let warm = || stays.iter().filter(of_side).filter_map(|s| Some((s.at, first.value.of(s)?)));
    let hottest = warm().map(|(at, _)| at).reduce(|a, b| if b > a { b } else { a })?;
    // The strictest row that is for this air; of the Food Code, the longest.
    let by_code = authority.is_food_code();
    let serving = rows().filter(|row| row.value.serves(hottest));
    let shortest = |a: &'static Cited<WarmTime>, b: &'static Cited<WarmTime>| {
        if (b.value.time() < a.value.time()) != by_code { b } else { a }
    };
    let row = serving.reduce(shortest)?;
    let limit = row.value.most;
    let finding = |verdict| Finding::new(&WARM, verdict).limit(limit).row(&row.row).at(place);
    let mut total: Option<Range<Time>> = None;
    for (_, time) in warm() {
        let Some(time) = time else {
            return Some(finding(Verdict::Unproven).missing(HOW_LONG));
        };
        total = Some(total.map_or(time, |total| together(total, time)));
    }
    let total = total?;
    let found = finding(limit.judge(&total)).found(&total);
    Some(match (found.verdict, by_code) {
        (Verdict::Unproven, _) if total.high().is_infinite() => found.missing(HOW_LONG),
        (Verdict::Meets, true) => found.left_open(PROCEDURE).note(MARK),
        (Verdict::Meets, false) if was.is_some() => found.note(ONCE),
        (Verdict::Meets, false) => found,
        _ => found.mend(Mend::KeepFor(row.value.longest())),
    })
}
