//! A record of temperatures over time, read as it comes: any length, no memory.
//!
//! A [`Track`] takes points in order and gives the [`Segment`] between each two, after
//! checking that time runs forward and every reading can be. Whatever reckons on a record
//! takes segments: lethality, the come-up clock, how long a temperature was held.
//!
//! ```
//! use greenweight::trace::{Point, Track};
//! use greenweight::units::{Reading, Scale, minutes};
//!
//! let point = |at, f| -> Result<Point, Box<dyn std::error::Error>> {
//!     Ok(Point::new(minutes(at), Reading::new(f, Scale::Fahrenheit)?)?)
//! };
//! let mut track = Track::new();
//! assert!(track.next(point(0.0, 40.0)?)?.is_none());
//! let segment = track.next(point(10.0, 60.0)?)?.ok_or("the second point ends a segment")?;
//! assert_eq!(segment.seconds(), 600.0);
//! assert!(track.next(point(9.0, 61.0)?).is_err(), "time does not run backwards");
//! # Ok::<(), Box<dyn std::error::Error>>(())
//! ```

#[cfg(feature = "trace-csv")]
mod csv;
#[cfg(feature = "plot")]
mod plot;

use core::cmp::Ordering;

use uom::si::f64::{TemperatureInterval, Time};

use crate::range::{OutOfRange, Range, against, bounds};
use crate::units::{Reading, Scale, seconds};

#[cfg(feature = "trace-csv")]
#[cfg_attr(docsrs, doc(cfg(feature = "trace-csv")))]
pub use csv::{Columns, CsvFault, Instant, Points, read_csv};
#[cfg(feature = "plot")]
#[cfg_attr(docsrs, doc(cfg(feature = "plot")))]
pub use plot::{Drawing, Level, NotDrawn, to_svg};

bounds! {
    AT: "time since the record began", "s", 0.0, 1e9;
    INSIDE: "temperature of a probe", "°C", -100.0, 400.0;
    OFF: "tolerance of a probe", "K", 0.0, 50.0;
}

/// So many of its steps apart a logger may be silent: two readings are lost now and then, and times are
/// written rounded. What is further apart is a gap.
const STEPS: f64 = 3.5;

/// However seldom somebody reads, two readings further apart are a gap: meat of the size of a fist may be
/// warmed and cold again between them. A quarter of an hour is a screen, and no published figure.
const SELDOM: f64 = 900.0;

/// The longest time between two readings for which they vouch, by how often the record is read: three and a
/// half of its steps, and a quarter of an hour at most. What is further apart is a gap: nobody
/// knows what the food did in it. Time in a gap counts nothing towards a least time, and all of it
/// towards a most time.
///
/// ```
/// use greenweight::trace::vouched;
/// use greenweight::units::{minutes, seconds};
///
/// assert_eq!(vouched(seconds(10.0)), seconds(35.0));
/// assert_eq!(vouched(minutes(60.0)), minutes(15.0));
/// ```
#[must_use]
pub fn vouched(step: Time) -> Time {
    // What is not a number stays so, and vouches for nothing.
    seconds((STEPS * step.value).clamp(0.0, SELDOM))
}

/// From when to when the longest gap of some in a record lasts.
pub(crate) fn longest_gap(
    record: &[Point],
    vouched: Time,
    of: impl Fn(&Segment) -> bool,
) -> Option<Range<Time>> {
    let pairs = record.windows(2).filter_map(|pair| match *pair {
        [from, to] => Some(Segment { from, to }),
        _ => None,
    });
    let gaps = pairs.filter(|segment| segment.is_gap(vouched) && of(segment));
    let longest = gaps.reduce(|a, b| if b.seconds() > a.seconds() { b } else { a })?;
    Some(Range::ordered(seconds(longest.from.seconds), seconds(longest.to.seconds)))
}

/// A range of times to whole seconds, outward.
pub(crate) fn whole_seconds(time: &Range<Time>) -> Range<Time> {
    let (low, high) = (libm::floor(time.low().value), libm::ceil(time.high().value));
    Range::ordered(seconds(low), seconds(high))
}

/// How a column of times is written.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum TimeColumn {
    /// Seconds since the record began, as a number.
    Seconds,
    /// Minutes since the record began, as a number.
    Minutes,
    /// Hours since the record began, as a number.
    Hours,
    /// A clock: `2026-01-31 14:05:30`, or `14:05` within one day.
    Clock,
}

impl TimeColumn {
    /// Every way.
    pub const ALL: [Self; 4] = [Self::Seconds, Self::Minutes, Self::Hours, Self::Clock];

    /// Its key in a recipe document.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Seconds => "seconds",
            Self::Minutes => "minutes",
            Self::Hours => "hours",
            Self::Clock => "clock",
        }
    }
}

/// An instant of a record.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Point {
    seconds: f64,
    celsius: f64,
    scale: Scale,
}

/// The line between two instants of a record that follow each other.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Segment {
    pub(crate) from: Point,
    pub(crate) to: Point,
}

/// What is wrong with a record.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum TraceError {
    /// A time or a temperature that cannot be.
    #[error(transparent)]
    OutOfRange(#[from] OutOfRange),
    /// A time that is not after the one before.
    #[error("the reading at {at} s does not come after the one at {before} s")]
    NotForward {
        /// The time before, in seconds.
        before: f64,
        /// This time, in seconds.
        at: f64,
    },
}

impl Point {
    /// A reading at a time since the record began.
    ///
    /// # Errors
    /// [`TraceError::OutOfRange`] for a time below zero or beyond thirty years, and for a
    /// temperature outside −100 to 400 °C.
    pub fn new(at: Time, reading: Reading) -> Result<Self, TraceError> {
        let celsius = reading.on(Scale::Celsius).value();
        let (seconds, celsius) = (AT.check(at.value)?, INSIDE.check(celsius)?);
        Ok(Self { seconds, celsius, scale: reading.scale() })
    }

    /// The colder of two probes at one instant.
    #[must_use]
    pub fn colder(self, other: Self) -> Self {
        if other.celsius < self.celsius { other } else { self }
    }

    /// The warmer of two probes at one instant.
    #[must_use]
    pub fn warmer(self, other: Self) -> Self {
        if other.celsius > self.celsius { other } else { self }
    }

    /// The same with the probe off by its tolerance, to the cold side.
    ///
    /// # Errors
    /// [`TraceError::OutOfRange`] for a tolerance below 0 or above 50 K.
    pub fn less(self, tolerance: TemperatureInterval) -> Result<Self, TraceError> {
        Ok(Self { celsius: self.celsius - OFF.check(tolerance.value)?, ..self })
    }

    /// The same with the probe off by its tolerance, to the warm side.
    ///
    /// # Errors
    /// As for [`Self::less`].
    pub fn more(self, tolerance: TemperatureInterval) -> Result<Self, TraceError> {
        Ok(Self { celsius: self.celsius + OFF.check(tolerance.value)?, ..self })
    }

    /// Seconds since the record began.
    #[must_use]
    #[inline]
    pub const fn seconds(self) -> f64 {
        self.seconds
    }

    /// The temperature, on the scale that was read.
    ///
    /// # Errors
    /// [`OutOfRange`] never, for a point that exists.
    pub fn reading(self) -> Result<Reading, OutOfRange> {
        Ok(Reading::new(self.celsius, Scale::Celsius)?.on(self.scale))
    }

    /// The scale that was read.
    #[must_use]
    pub const fn scale(self) -> Scale {
        self.scale
    }

    /// Degrees Celsius.
    #[must_use]
    #[inline]
    pub const fn celsius(self) -> f64 {
        self.celsius
    }
}

impl Segment {
    /// How long it lasts, in seconds.
    #[must_use]
    #[inline]
    pub fn seconds(&self) -> f64 {
        self.to.seconds - self.from.seconds
    }

    /// Whether it is longer than its ends vouch for, so that nobody knows what lies between.
    #[must_use]
    #[inline]
    pub fn is_gap(&self, vouched: Time) -> bool {
        against(self.seconds(), vouched.value).is_none_or(Ordering::is_gt)
    }

    /// Its beginning.
    #[must_use]
    #[inline]
    pub const fn from(&self) -> Point {
        self.from
    }

    /// Its end.
    #[must_use]
    #[inline]
    pub const fn to(&self) -> Point {
        self.to
    }

    /// How much of it, in seconds, lies at or above a temperature, on the straight line
    /// between its ends.
    #[must_use]
    pub fn seconds_at_or_above(&self, celsius: f64) -> f64 {
        let (a, b) = (self.from.celsius, self.to.celsius);
        let (low, high) = if a < b { (a, b) } else { (b, a) };
        if low >= celsius {
            self.seconds()
        } else if high < celsius {
            0.0
        } else {
            self.seconds() * (high - celsius) / (high - low)
        }
    }
}

/// The order of a record, point by point.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Track {
    last: Option<Point>,
}

impl Track {
    /// A record that has not begun.
    #[must_use]
    pub const fn new() -> Self {
        Self { last: None }
    }

    /// Takes the next point, and gives the segment that ends in it; none for the first.
    ///
    /// # Errors
    /// [`TraceError::NotForward`] for a time that is not after the one before.
    #[inline]
    pub fn next(&mut self, point: Point) -> Result<Option<Segment>, TraceError> {
        let Some(from) = self.last else {
            self.last = Some(point);
            return Ok(None);
        };
        if point.seconds <= from.seconds {
            return Err(TraceError::NotForward { before: from.seconds, at: point.seconds });
        }
        self.last = Some(point);
        Ok(Some(Segment { from, to: point }))
    }

    /// Goes on from a point that is known to come after the last one.
    pub(crate) const fn skip_to(&mut self, point: Point) {
        self.last = Some(point);
    }

    /// The last point.
    #[must_use]
    pub const fn last(&self) -> Option<Point> {
        self.last
    }
}
