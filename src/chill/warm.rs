use uom::si::f64::Time;

use super::table::WARM_TIME;
use crate::authority::Authority;
use crate::cite::Cited;
use crate::finding::{Finding, Force, Limit, Mend, Missing, Place, Rule, Verdict};
use crate::range::Range;
use crate::units::{PrintedTemperature, Reading};

pub(super) const WARM: Rule =
    Rule::new("chill/warm-time", "time between cold and hot", Force::Safety);

const HOW_LONG: Missing =
    Missing::new("how long it stays at this temperature", "write for = \"… min\" on the step");
const PROCEDURE: Missing = Missing::new(
    "a written procedure of time in place of temperature, and that it is served or thrown away in time",
    "keep it cold or hot; otherwise have the procedure at hand before it is used",
);
const MARK: &str = "Time in place of temperature: marked when it leaves the cold or the heat, served or thrown away in time, never put back.";

/// How long food may be out of the cold and not hot.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct WarmTime {
    /// Whose row it is.
    pub authority: Authority,
    /// At or below this it is cold.
    pub cold: PrintedTemperature,
    /// At or above this it is hot.
    pub hot: PrintedTemperature,
    /// Only where the air is above this.
    pub air_above: Option<PrintedTemperature>,
    /// Only for food that is never above this.
    pub never_above: Option<PrintedTemperature>,
    /// The time, at most.
    pub most: Time,
}

impl WarmTime {
    /// Whether a temperature is between cold and hot.
    #[must_use]
    pub fn warm(&self, at: Reading) -> bool {
        let (cold, hot) = (self.cold.on(at.scale()), self.hot.on(at.scale()));
        Limit::AtMost(cold).met_by(at) == Some(false)
            && Limit::AtLeast(hot).met_by(at) == Some(false)
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

fn rows(authority: Authority) -> impl Iterator<Item = &'static Cited<WarmTime>> {
    let food_code = authority.is_food_code();
    let authority = if food_code { Authority::UsFoodCode2022 } else { authority };
    WARM_TIME.iter().filter(move |row| row.value.authority == authority)
}

/// Food at some temperatures, each for so long, held against the rows of an authority: the time in
/// between is added up. `None` where it was never warm by that authority, or has no rows.
#[must_use]
pub fn warm(
    stays: &[(Reading, Option<Range<Time>>)],
    authority: Authority,
    place: Place,
) -> Option<Finding> {
    let first = rows(authority).next()?;
    let warm = || stays.iter().filter(|(at, _)| first.value.warm(*at));
    let hottest = warm().map(|(at, _)| *at).reduce(|a, b| if b > a { b } else { a })?;
    // The strictest row that is for this air; of the Food Code, the longest.
    let by_code = authority.is_food_code();
    let serving = rows(authority).filter(|row| row.value.serves(hottest));
    let shortest = |a: &'static Cited<WarmTime>, b: &'static Cited<WarmTime>| {
        if (b.value.most < a.value.most) != by_code { b } else { a }
    };
    let row = serving.reduce(shortest)?;
    let limit = Limit::AtMost(row.value.most);
    let finding = |verdict| Finding::new(&WARM, verdict).limit(limit).row(&row.row).at(place);
    let mut total: Option<Range<Time>> = None;
    for (_, time) in warm() {
        let Some(time) = time else {
            return Some(finding(Verdict::Unproven).missing(HOW_LONG));
        };
        total = match total {
            Some(total) => total.plus(*time).ok(),
            None => Some(*time),
        };
    }
    let total = total?;
    let found = finding(limit.judge(&total)).found(&total);
    Some(match (found.verdict, by_code) {
        (Verdict::Meets, true) => {
            Finding { verdict: Verdict::Unproven, ..found }.missing(PROCEDURE).note(MARK)
        }
        (Verdict::Meets, false) => found,
        _ => found.mend(Mend::KeepFor(row.value.most)),
    })
}
