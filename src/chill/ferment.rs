use uom::si::f64::Time;

use super::table::DEGREE_HOURS;
use crate::cite::Cited;
use crate::finding::Limit;
use crate::range::Range;
use crate::units::{Reading, Scale, hours};

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
    /// The degree-hours, at most.
    pub most: f64,
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
    let on_scale = || stages.iter().map(|(reading, time)| (reading.on(scale).value(), *time));
    let hottest = on_scale().map(|(degrees, _)| degrees).reduce(f64::max)?;
    let row = limiting_row(hottest, scale)?;
    let above = |(degrees, time): (f64, Time)| {
        (degrees - row.value.base).max(0.0) * time.value / hours(1.0).value
    };
    Some((on_scale().map(above).sum(), row))
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
    let row = limiting_row(
        stages.iter().map(|(reading, _)| reading.on(scale).value()).reduce(f64::max)?,
        scale,
    )?;
    let sum = |end: fn(&Range<Time>) -> Time| {
        let above = |(reading, time): &(Reading, Range<Time>)| {
            (reading.on(scale).value() - row.value.base).max(0.0) * end(time).value / 3600.0
        };
        stages.iter().map(above).sum::<f64>()
    };
    Some((Range::new(sum(|time| time.low()), sum(|time| time.high())).ok()?, row))
}
