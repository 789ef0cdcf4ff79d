use uom::si::f64::{TemperatureInterval, Time};

use crate::cite::Cited;
use crate::range::Range;
use crate::trace::Segment;
use crate::units::{PrintedTemperature, Scale, seconds};

/// One clock of a cooling schedule: from one temperature down to another, in so long at most.
/// Every leg is a clock of its own: time saved on one is not lent to another.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Leg {
    /// The schedule it belongs to.
    pub schedule: &'static str,
    /// It starts when the food falls below this.
    pub from: PrintedTemperature,
    /// It ends when the food is at or below this.
    pub to: PrintedTemperature,
    /// The time, at most.
    pub most: Time,
}

/// A leg on a record, as it comes: the warmest part counts.
///
/// A probe that may be off makes the time a range: at the longest the food fell below the start as
/// early as it may have, and came down as late. Between two readings the temperature runs
/// straight; in a gap it crosses at its beginning or at its end, whichever is worse. Reheated above the
/// start, the leg begins again, and the worst counts.
///
/// ```
/// use greenweight::chill::{FOOD_CODE_COOLING, LegClock};
/// use greenweight::trace::{Point, Track};
/// use greenweight::units::{Reading, Scale, hours, read_tolerance};
///
/// let [first, total] = &FOOD_CODE_COOLING;
/// let exact = read_tolerance("0 °F")?;
/// // Three readings by hand: between them it cools, and nobody warms it.
/// let vouched = hours(5.0);
/// let clock = |leg| LegClock::new(leg, Scale::Fahrenheit, exact, vouched);
/// let mut clocks = [clock(first), clock(total)];
/// let mut track = Track::new();
/// for (at, inside) in [(0.0, 135.0), (1.0, 70.0), (6.0, 41.0)] {
///     let point = Point::new(hours(at), Reading::new(inside, Scale::Fahrenheit)?)?;
///     if let Some(segment) = track.next(point)? {
///         clocks.iter_mut().for_each(|clock| clock.add(&segment));
///     }
/// }
/// let took = |clock: &LegClock| clock.time().map(|time| time.high().value / 3600.0);
/// assert_eq!(clocks.each_ref().map(took), [Some(1.0), Some(6.0)]);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LegClock {
    leg: &'static Cited<Leg>,
    vouched: Time,
    /// As the coldest the food may be by its probe, and as the warmest.
    cold: Crossings,
    warm: Crossings,
    /// The longest and the shortest that legs which are over took.
    worst: Option<(f64, f64)>,
    last: f64,
    /// Readings below this and above that cross nothing; once it is over, nor do those below both.
    below: f64,
    above: f64,
    over: bool,
    /// Readings at or above this leave it waiting for the start, where it has seen nothing else.
    hot: f64,
    waiting: bool,
}

/// When a line crossed the two temperatures of a leg.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Crossings {
    from: f64,
    to: f64,
    off: f64,
    /// Whether it crosses a gap at its end, and not at its beginning.
    late: bool,
    /// Whether it was at or above the start.
    armed: bool,
    first_start: Option<f64>,
    last_start: Option<f64>,
    end: Option<f64>,
}

impl Crossings {
    /// Follows the line over a segment; whether it is at or above the start at its end.
    #[inline]
    fn add(&mut self, segment: &Segment, vouched: Time) -> bool {
        let (a, b) = (segment.from().celsius() + self.off, segment.to().celsius() + self.off);
        let (begin, late) = (segment.from().seconds(), self.late);
        let at = |level: f64| match (segment.is_gap(vouched), late) {
            (false, _) => begin + segment.seconds() * (level - a) / (b - a),
            (true, false) => begin,
            (true, true) => segment.to().seconds(),
        };
        self.armed |= a >= self.from;
        if self.armed && a >= self.from && b < self.from {
            let start = at(self.from);
            self.first_start.get_or_insert(start);
            self.last_start = Some(start);
        }
        if self.end.is_none() && self.last_start.is_some() && b <= self.to {
            self.end = Some(if a > self.to { at(self.to) } else { begin });
        }
        self.armed |= b >= self.from;
        b >= self.from
    }
}

impl LegClock {
    /// Nothing recorded yet. The leg's figures are those printed on the scale of the probe, whose readings
    /// vouch for the time between them where it is [no longer](crate::trace::vouched) than `vouched`.
    #[must_use]
    pub fn new(
        leg: &'static Cited<Leg>,
        scale: Scale,
        tolerance: TemperatureInterval,
        vouched: Time,
    ) -> Self {
        let celsius = |printed: PrintedTemperature| printed.on(scale).on(Scale::Celsius).value();
        let (from, to) = (celsius(leg.value.from), celsius(leg.value.to));
        let line = |off: f64, late: bool| {
            let none = None;
            Crossings {
                from,
                to,
                off,
                late,
                armed: false,
                first_start: none,
                last_start: none,
                end: none,
            }
        };
        let off = tolerance.value.abs();
        let (below, above) = (from - off, to + off);
        let (cold, warm) = (line(-off, false), line(off, true));
        let hot = from + off;
        let (over, waiting) = (false, false);
        let (worst, last) = (None, 0.0);
        Self { leg, vouched, cold, warm, worst, last, below, above, over, hot, waiting }
    }

    /// The leg.
    #[must_use]
    pub const fn leg(&self) -> &'static Cited<Leg> {
        self.leg
    }

    /// Counts a segment.
    #[inline]
    pub fn add(&mut self, segment: &Segment) {
        // Most segments cross nothing, by either line.
        let (a, b) = (segment.from().celsius(), segment.to().celsius());
        if a < self.below && b < self.below {
            if self.over {
                return;
            }
            if a > self.above && b > self.above {
                self.last = segment.to().seconds();
                return;
            }
        } else if self.waiting && a >= self.hot && b >= self.hot {
            return;
        }
        self.cross(segment);
    }

    #[inline(never)]
    fn cross(&mut self, segment: &Segment) {
        self.last = segment.to().seconds();
        self.cold.add(segment, self.vouched);
        let hot_again = self.warm.add(segment, self.vouched);
        if hot_again && self.warm.end.is_some() {
            // What was cooled is hot again: that leg is over, and another begins.
            if let Some((longest, shortest)) = self.now() {
                let (l, s) = self.worst.unwrap_or((0.0, 0.0));
                self.worst = Some((longest.max(l), shortest.max(s)));
            }
            for line in [&mut self.cold, &mut self.warm] {
                (line.first_start, line.last_start, line.end) = (None, None, None);
                line.armed = true;
            }
        }
        self.over = self.cold.end.is_some() && self.warm.end.is_some();
        let fresh = |line: &Crossings| line.armed && line.last_start.is_none();
        self.waiting = fresh(&self.cold) && fresh(&self.warm);
    }

    /// The longest and the shortest of the leg that is running.
    fn now(&self) -> Option<(f64, f64)> {
        let begun = self.cold.first_start.or(self.warm.first_start)?;
        let longest = match (self.cold.first_start, self.warm.end) {
            (Some(start), Some(end)) => end - start,
            _ => f64::INFINITY,
        };
        let start = self.warm.last_start.unwrap_or(self.last).max(begun);
        let end = self.cold.end.unwrap_or(self.last);
        Some((longest, (end - start).max(0.0)))
    }

    /// How long the leg took, between what the probe allows; without an upper end where the food
    /// did not surely come down, or `None` where it was never at the start.
    #[must_use]
    pub fn time(&self) -> Option<Range<Time>> {
        let (longest, shortest) = match (self.now(), self.worst) {
            (Some((a, b)), Some((l, s))) => (a.max(l), b.max(s)),
            (Some(now), None) => now,
            (None, worst) => worst?,
        };
        Some(Range::ordered(seconds(shortest.min(longest)), seconds(longest)))
    }
}
