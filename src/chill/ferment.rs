use uom::si::f64::Time;

use super::table::DEGREE_HOURS;
use crate::authority::Authority;
use crate::cite::Cited;
use crate::finding::{self, Finding, Force, Limit, Mend, Missing, Place, Rule, Verdict};
use crate::range::Range;
use crate::units::{Reading, Scale, hours};

pub(super) const DEGREES: Rule =
    Rule::new("chill/degree-hours", "acid soon enough for how warm it ferments", Force::Safety);

const HOW_LONG: Missing = Missing::new(
    "how warm and how long every stage of the fermentation is",
    "write at = \"… °F\" and for = \"… h\" on every step that ferments",
);
const ACID: Missing = Missing::new(
    "when the product is acid: the pH at the end of a stage",
    "measure it, and write it as ph = … on the step by whose end it was measured",
);
const NOT_YET: Missing = Missing::new(
    "acid: by the pH that was measured it is not acid yet, and the clock runs on",
    "ferment on within the degree-hours, and measure the pH again",
);
const COOLER: Missing = Missing::new(
    "degree-hours for its hottest stage: the other stages use them up",
    "have it acid before that stage begins, or ferment it cooler",
);
const CHAMBER: &str = "The temperature is that of the chamber, and the hottest stage before the acid chooses the limit.";

/// A stage of a fermentation, as a recipe gives it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Ferment {
    /// The temperature of the chamber.
    pub at: Option<Reading>,
    /// How long it takes.
    pub time: Option<Range<Time>>,
    /// The pH measured at its end.
    pub ph: Option<f64>,
    /// Where it stands in the document.
    pub place: Place,
}

/// Holds a fermentation against the degree-hours of an authority; `None` where it has none, or
/// there are no stages.
#[must_use]
pub fn check_fermentation(stages: &[Ferment], authority: Authority) -> Option<Finding> {
    let scale = match authority {
        Authority::UsFsis => Scale::Fahrenheit,
        Authority::Canada => Scale::Celsius,
        _ => return None,
    };
    let first = stages.first()?;
    let rows = || DEGREE_HOURS.iter().filter(|row| row.value.scale == scale);
    let row = rows().next()?;
    let unproven = |missing, place| {
        Some(Finding::new(&DEGREES, Verdict::Unproven).row(&row.row).missing(missing).at(place))
    };
    let acid = |stage: &Ferment| {
        stage.ph.is_some_and(|ph| Limit::AtMost(row.value.until_ph).met_by(ph) == Some(true))
    };
    let soured = stages.iter().position(acid);
    // Where it was measured and not acid, all hours until then count, and more that nobody knows.
    let measured = stages.iter().rposition(|stage| stage.ph.is_some());
    let Some(last) = soured.or(measured) else {
        return unproven(ACID, first.place);
    };
    // The clock ends where the acid was measured: within a stage it may have come sooner.
    let (mut hottest, mut low, mut high) = (f64::NEG_INFINITY, 0.0, 0.0);
    // What the stages below the hottest one count.
    let mut cooler = 0.0;
    for stage in stages.iter().take(last.saturating_add(1)) {
        let (Some(at), Some(time)) = (stage.at, stage.time) else {
            return unproven(HOW_LONG, stage.place);
        };
        let degrees = at.on(scale).value();
        if degrees > hottest {
            (hottest, cooler) = (degrees, high);
        } else if degrees < hottest {
            cooler += row.value.counted(at, time.high());
        }
        low += row.value.counted(at, time.low());
        high += row.value.counted(at, time.high());
    }
    if soured.is_none() {
        high = f64::INFINITY;
    }
    let row = limiting_row(hottest, scale)?;
    let shown = |sum: f64| finding::DegreeHours { sum, scale };
    let limit = Limit::AtMost(row.value.most);
    let verdict = limit.judge(&Range::ordered(low, high));
    let finding = Finding::new(&DEGREES, verdict)
        .found(&Range::ordered(shown(low), shown(high)))
        .limit(Limit::AtMost(shown(row.value.most)))
        .row(&row.row)
        .note(CHAMBER)
        .at(first.place);
    let left = row.value.most - cooler;
    Some(match verdict {
        Verdict::Meets => finding,
        Verdict::Unproven if soured.is_none() => finding.missing(NOT_YET),
        // What the cooler stages count is gone before the hottest begins.
        _ if left > 0.0 => finding.mend(Mend::AcidWithin(hours(left / (hottest - row.value.base)))),
        _ => finding.missing(COOLER),
    })
}

/// A limit on degree-hours before pH 5.3, for chambers up to a temperature.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct DegreeHours {
    /// The scale of its figures: two editions that are not each other converted.
    pub scale: Scale,
    /// Degrees above this count.
    pub base: f64,
    /// The hottest chamber it is for; none for the last row.
    pub hottest: Option<f64>,
    /// Whether the chamber must be below that, and not at it.
    pub below: bool,
    /// The clock runs until the product has this pH.
    pub until_ph: f64,
    /// The degree-hours, at most.
    pub most: f64,
}

impl DegreeHours {
    /// What a stay in the chamber counts.
    fn counted(&self, chamber: Reading, time: Time) -> f64 {
        (chamber.on(self.scale).value() - self.base).max(0.0) * time.value / hours(1.0).value
    }
}

/// Degree-hours of a fermentation until pH 5.3: the sum of what the chamber is above the base,
/// times hours. And the row that limits them: by the hottest chamber of all.
///
/// The temperature is the chamber's. `None` without a stage.
///
/// ```
/// use greenweight::chill::degree_hours;
/// use greenweight::units::{Reading, Scale, hours};
///
/// // A worked example: 55 h at 80 °F are 1100 of at most 1200.
/// let stages = [(Reading::new(80.0, Scale::Fahrenheit)?, hours(55.0))];
/// let (sum, row) = degree_hours(&stages, Scale::Fahrenheit).ok_or("no stage")?;
/// assert_eq!((sum, row.value.most), (1100.0, 1200.0));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[must_use]
pub fn degree_hours(
    stages: &[(Reading, Time)],
    scale: Scale,
) -> Option<(f64, &'static Cited<DegreeHours>)> {
    let degrees = stages.iter().map(|(reading, _)| reading.on(scale).value());
    let row = limiting_row(degrees.reduce(f64::max)?, scale)?;
    Some((stages.iter().map(|&(reading, time)| row.value.counted(reading, time)).sum(), row))
}

/// The row for a hottest chamber, on its scale.
fn limiting_row(hottest: f64, scale: Scale) -> Option<&'static Cited<DegreeHours>> {
    DEGREE_HOURS.iter().filter(|row| row.value.scale == scale).find(|row| {
        match (row.value.hottest, row.value.below) {
            (None, _) => true,
            (Some(limit), true) => Limit::Below(limit).met_by(hottest) == Some(true),
            (Some(limit), false) => Limit::AtMost(limit).met_by(hottest) == Some(true),
        }
    })
}

/// The longest time that a constant chamber may take to pH 5.3; `None` at or below the base, where
/// no clock runs.
#[must_use]
pub fn longest_fermentation(chamber: Reading) -> Option<Time> {
    let degrees = chamber.value();
    let row = limiting_row(degrees, chamber.scale())?;
    let above = degrees - row.value.base;
    (above > 0.0).then(|| hours(row.value.most / above))
}

/// A range of degree-hours from ranges of times: of the shortest times and of the longest.
#[must_use]
pub fn degree_hours_between(
    stages: &[(Reading, Range<Time>)],
    scale: Scale,
) -> Option<(Range<f64>, &'static Cited<DegreeHours>)> {
    let degrees = stages.iter().map(|(reading, _)| reading.on(scale).value());
    let row = limiting_row(degrees.reduce(f64::max)?, scale)?;
    let sum = |end: fn(&Range<Time>) -> Time| {
        stages.iter().map(|(reading, time)| row.value.counted(*reading, end(time))).sum::<f64>()
    };
    Some((Range::new(sum(|time| time.low()), sum(|time| time.high())).ok()?, row))
}
