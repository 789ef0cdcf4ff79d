use core::cmp::Ordering;

use uom::si::f64::{TemperatureInterval, Time};

use super::Hold;
use super::table::{
    FSIS_COME_UP, FSIS_MEAT_5_LOG, FSIS_MEAT_DWELL, FSIS_POULTRY_DWELL_CHICKEN,
    FSIS_POULTRY_DWELL_TURKEY,
};
use crate::cite::{Cited, Row};
use crate::finding::Limit;
use crate::range::{OutOfRange, against, bounds};
use crate::trace::{Point, Segment, TraceError, Track};
use crate::units::{PrintedTemperature, Reading, seconds};

bounds! {
    FAT: "fat of a poultry product", "%", 0.0, 100.0;
}

/// A bird, as the tables for poultry know them.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Bird {
    /// Chicken.
    Chicken,
    /// Turkey.
    Turkey,
    /// Another bird, several, or one that is not named: the longer of the two counts.
    Other,
}

/// Which table a record is held against.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub enum Product {
    /// Meat without any poultry, for a 6.5-log reduction.
    Meat,
    /// Meat without any poultry, for a 7-log reduction.
    Meat7Log,
    /// Shelf-stable meat without any poultry, for a 5-log reduction.
    Meat5Log,
    /// A table of temperatures and times: of an edition of the Food Code ([`food_code`]), of
    /// patties ([`PATTIES`](super::PATTIES)).
    ///
    /// [`food_code`]: super::food_code
    Table(&'static [Cited<Hold>]),
    /// Anything that holds any poultry, for a 7-log reduction.
    Poultry {
        /// Which bird.
        bird: Bird,
        /// Fat in percent, where it is known; unknown, and above 12, the last column counts.
        fat: Option<f64>,
    },
}

/// A row of a table, and for how long its temperature was held.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct RowHeld {
    /// The row.
    pub row: &'static Row,
    /// The temperature.
    pub temperature: PrintedTemperature,
    /// The time it asks for; zero where it prints 0 s.
    pub asks: Time,
    /// The longest it was held without a break or a gap, from reading to reading.
    pub held: Time,
    /// When, since the record began, it was held long enough for the first time.
    pub met_at: Option<Time>,
    /// Whether that is enough. A row that prints 0 s takes two readings in a row at it: one
    /// alone proves no time at all.
    pub met: bool,
}

impl RowHeld {
    /// The time it was held over the time that the row asks for; a row of 0 s counts as one
    /// second.
    #[must_use]
    pub fn share(&self) -> f64 {
        self.held.value / self.asks.value.max(1.0)
    }
}

/// The column of the poultry tables for a fat: the one at or above it, the last above 12 and
/// where it is not known.
fn column(fat: Option<f64>) -> Result<usize, OutOfRange> {
    let Some(fat) = fat else { return Ok(11) };
    let fat = FAT.check(fat)?;
    let columns = [1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0, 9.0, 10.0, 11.0];
    let over = |at_most: &&f64| against(fat, **at_most).is_none_or(Ordering::is_gt);
    Ok(columns.iter().filter(over).count())
}

/// The time that a poultry row asks for, and its row: of a bird that is not chicken or turkey
/// the longer of the two cells. `n` counts the rows from the coldest.
fn poultry_cell(
    n: usize,
    bird: Bird,
    fat: Option<f64>,
) -> Result<Option<(PrintedTemperature, f64, &'static Row)>, OutOfRange> {
    let column = column(fat)?;
    let cell = |table: &'static [Cited<super::PoultryDwell>]| {
        let row = table.get(n)?;
        let time = row.value.seconds_by_fat.get(column).copied()?;
        Some((row.value.temperature, time, &row.row))
    };
    let (chicken, turkey) = (cell(&FSIS_POULTRY_DWELL_CHICKEN), cell(&FSIS_POULTRY_DWELL_TURKEY));
    Ok(match bird {
        Bird::Chicken => chicken,
        Bird::Turkey => turkey,
        Bird::Other => match (chicken, turkey) {
            (Some(a), Some(b)) => Some(if a.1 > b.1 { a } else { b }),
            _ => None,
        },
    })
}

/// The time that a product of poultry is held at a reading, for a 7-log reduction: of the row
/// at or below it. `None` below the first row.
///
/// # Errors
/// [`OutOfRange`] for a fat outside 0 to 100 percent.
///
/// ```
/// use greenweight::cook::{Bird, poultry_time};
/// use greenweight::units::{Reading, Scale};
///
/// let at_145 = Reading::new(145.0, Scale::Fahrenheit)?;
/// let minutes = |bird, fat| poultry_time(at_145, bird, fat).map(|time| time.map(|t| t.value / 60.0));
/// // Meat takes four minutes here; chicken from 8.4 and turkey up to 13.8.
/// assert_eq!(minutes(Bird::Chicken, Some(1.0))?, Some(8.4));
/// assert_eq!(minutes(Bird::Other, None)?, Some(13.8));
/// # Ok::<(), greenweight::range::OutOfRange>(())
/// ```
pub fn poultry_time(
    inside: Reading,
    bird: Bird,
    fat: Option<f64>,
) -> Result<Option<Time>, OutOfRange> {
    let mut found = None;
    for n in 0..ROWS {
        let Some((temperature, time, _)) = poultry_cell(n, bird, fat)? else { continue };
        if inside >= temperature.on(inside.scale()) {
            found = Some(seconds(time));
        }
    }
    Ok(found)
}

/// Whether a time is enough for a row; a row of 0 s takes some time all the same.
fn enough(held: f64, asks: f64) -> bool {
    held > 0.0 && held >= asks
}

/// No table has more rows.
const ROWS: usize = 31;

impl Product {
    /// The rows of its table, from the coldest; none for a fat that cannot be.
    pub(super) fn rows(
        &self,
    ) -> impl Iterator<Item = (PrintedTemperature, Time, &'static Row)> + '_ {
        (0..ROWS).filter_map(|n| {
            let (temperature, asks, row) = self.row(n).ok()??;
            Some((temperature, seconds(asks), row))
        })
    }

    /// A row of its table, counted from the coldest.
    fn row(&self, n: usize) -> Result<Option<(PrintedTemperature, f64, &'static Row)>, OutOfRange> {
        Ok(match *self {
            Self::Poultry { bird, fat } => poultry_cell(n, bird, fat)?,
            Self::Table(rows) => {
                rows.get(n).map(|row| (row.value.temperature, row.value.time.value, &row.row))
            }
            Self::Meat => FSIS_MEAT_DWELL
                .get(n)
                .map(|row| (row.value.temperature, row.value.for_6_5_log.value, &row.row)),
            Self::Meat7Log => FSIS_MEAT_DWELL
                .get(n)
                .map(|row| (row.value.temperature, row.value.for_7_log.value, &row.row)),
            Self::Meat5Log => FSIS_MEAT_5_LOG
                .get(n)
                .map(|row| (row.value.temperature, row.value.time.value, &row.row)),
        })
    }
}

/// A record held against every row of a table at once, as it comes.
///
/// The coldest probe counts, less its tolerance, and only from reading to reading: what lies
/// between a reading below a row and one above it is not credited to it, and neither is a gap.
///
/// ```
/// use greenweight::cook::{Product, Verdicts};
/// use greenweight::trace::{Point, vouched};
/// use greenweight::units::{Reading, Scale, minutes, read_tolerance};
///
/// let fahrenheit = |value| Reading::new(value, Scale::Fahrenheit);
/// let every_minute = vouched(minutes(1.0));
/// let mut verdicts = Verdicts::new(Product::Meat, read_tolerance("2 °F")?, every_minute)?;
/// for minute in 0..10 {
///     let at = minutes(f64::from(minute));
///     verdicts.next(Point::new(at, fahrenheit(147.0)?)?)?;
/// }
/// // 147 °F on a thermometer of ±2 °F is the row of 145 °F, four minutes; nine were held.
/// let met = verdicts.met().next().ok_or("no row is met")?;
/// assert!(met.row.key == "145F" || met.held >= met.asks);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Verdicts {
    product: Product,
    tolerance: TemperatureInterval,
    vouched: Time,
    track: Track,
    /// Since when each row's temperature is held, in seconds.
    since: [Option<f64>; ROWS],
    /// The longest each was held.
    longest: [f64; ROWS],
    /// When each was met, in seconds.
    met_at: [Option<f64>; ROWS],
}

impl Verdicts {
    /// Nothing recorded yet, by a probe that may be off so much, whose readings vouch for the time
    /// between them where it is [no longer](crate::trace::vouched) than `vouched`.
    ///
    /// # Errors
    /// [`OutOfRange`] for a fat outside 0 to 100 percent.
    pub fn new(
        product: Product,
        tolerance: TemperatureInterval,
        vouched: Time,
    ) -> Result<Self, OutOfRange> {
        product.row(0)?;
        Ok(Self {
            product,
            tolerance,
            vouched,
            track: Track::new(),
            since: [None; ROWS],
            longest: [0.0; ROWS],
            met_at: [None; ROWS],
        })
    }

    /// Takes the next reading of the coldest probe, and gives the segment that ends in it, for
    /// other reckonings.
    ///
    /// # Errors
    /// [`TraceError`] when time does not run forward, or the tolerance is out of range.
    pub fn next(&mut self, point: Point) -> Result<Option<Segment>, TraceError> {
        let segment = self.track.next(point)?;
        if segment.is_some_and(|segment| segment.is_gap(self.vouched)) {
            // What was held is held anew from here.
            self.since = [None; ROWS];
        }
        let Ok(surely) = point.less(self.tolerance)?.reading() else { return Ok(segment) };
        for n in 0..ROWS {
            let Ok(Some((temperature, asks, _))) = self.product.row(n) else { continue };
            // Held against the figure printed on the scale that was read.
            let limit = Limit::AtLeast(temperature.on(surely.scale()));
            let reached = limit.met_by(surely) == Some(true);
            let (Some(since), Some(longest), Some(met_at)) =
                (self.since.get_mut(n), self.longest.get_mut(n), self.met_at.get_mut(n))
            else {
                continue;
            };
            if !reached {
                *since = None;
                continue;
            }
            let start = *since.get_or_insert(point.seconds());
            let held = point.seconds() - start;
            if held > *longest {
                *longest = held;
            }
            if enough(held, asks) {
                met_at.get_or_insert(point.seconds());
            }
        }
        Ok(segment)
    }

    /// Every row, from the coldest, with how long it was held.
    pub fn rows(&self) -> impl Iterator<Item = RowHeld> + '_ {
        self.longest.iter().zip(&self.met_at).enumerate().filter_map(|(n, (&held, met_at))| {
            let (temperature, asks, row) = self.product.row(n).ok()??;
            let (met, met_at) = (enough(held, asks), met_at.map(seconds));
            Some(RowHeld {
                row,
                temperature,
                asks: seconds(asks),
                held: seconds(held),
                met_at,
                met,
            })
        })
    }

    /// The rows that are met.
    pub fn met(&self) -> impl Iterator<Item = RowHeld> + '_ {
        self.rows().filter(|row| row.met)
    }

    /// How much longer at the present temperature would meet a row; `None` where the present
    /// temperature is below the first row, and zero where a row is met.
    #[must_use]
    pub fn longer(&self) -> Option<Time> {
        if self.met().next().is_some() {
            return Some(seconds(0.0));
        }
        let now = self.track.last()?.seconds();
        let mut least: Option<f64> = None;
        for (n, since) in self.since.iter().enumerate() {
            let (Some(since), Ok(Some((_, asks, _)))) = (since, self.product.row(n)) else {
                continue;
            };
            // A row of 0 s takes one more reading, whenever it comes.
            let more = (asks - (now - since)).max(0.0);
            least = Some(least.map_or(more, |least| least.min(more)));
        }
        least.map(seconds)
    }
}

/// How long a product is between 50 and 130 °F while it heats (table `cook/fsis-parameters`):
/// at most six hours, for a toxin that survives every cook.
///
/// What is in the band counts up to the last time the product leaves it upwards; what comes
/// after is cooling, which has clocks of its own. The clock starts again only once a lethal row
/// was met ([`Self::restart`]): a first cook that failed keeps counting.
///
/// All of a gap may have been spent in the band: the longest time counts it in full, however hot the food is
/// on both sides of it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ComeUp {
    low: f64,
    high: f64,
    /// At or above this it has come up.
    up: f64,
    vouched: Time,
    /// Whether it counts the longest that the time may be, or the shortest.
    longest: bool,
    counted: f64,
    pending: f64,
    came_up: bool,
}

impl ComeUp {
    /// Nothing counted yet, by a probe that is right, whose readings vouch for the time between them
    /// where it is [no longer](crate::trace::vouched) than `vouched`.
    #[must_use]
    pub fn new(vouched: Time) -> Self {
        Self::within(TemperatureInterval::default(), vouched)
    }

    /// The same by a probe that may be off so much, as the longest the time may be: the band is
    /// that much wider at both ends, and the product has left it upwards where it may have.
    #[must_use]
    pub fn within(tolerance: TemperatureInterval, vouched: Time) -> Self {
        Self::by(tolerance, vouched, true)
    }

    /// The shortest that it may be. A gap counts only where it begins and ends in the band.
    #[must_use]
    pub fn shortest(tolerance: TemperatureInterval, vouched: Time) -> Self {
        Self::by(-tolerance, vouched, false)
    }

    fn by(tolerance: TemperatureInterval, vouched: Time, longest: bool) -> Self {
        let limit = FSIS_COME_UP.value;
        let celsius = |fahrenheit: f64| (fahrenheit - 32.0) / 1.8;
        let (low, high) = (celsius(limit.low_fahrenheit), celsius(limit.high_fahrenheit));
        let off = tolerance.value;
        let (counted, pending, came_up) = (0.0, 0.0, false);
        let (low, high, up) = (low - off, high + off, high - off);
        Self { low, high, up, vouched, longest, counted, pending, came_up }
    }

    /// Counts a segment.
    pub fn add(&mut self, segment: &Segment) {
        let inside = |point: Point| point.celsius() >= self.low && point.celsius() < self.high;
        self.pending += if !segment.is_gap(self.vouched) {
            let above = |celsius| segment.seconds_at_or_above(celsius);
            (above(self.low) - above(self.high)).max(0.0)
        } else if self.longest || (inside(segment.from()) && inside(segment.to())) {
            segment.seconds()
        } else {
            0.0
        };
        if segment.to().celsius() >= self.up {
            // It came up: all that was counted on the way belongs to heating.
            self.counted += self.pending;
            self.pending = 0.0;
            self.came_up = true;
        }
    }

    /// The time in the band up to the last time the product left it upwards.
    #[must_use]
    pub fn heating(&self) -> Time {
        seconds(self.counted)
    }

    /// Whether it ever came up.
    #[must_use]
    pub fn came_up(&self) -> bool {
        self.came_up
    }

    /// The time that counts: that of [`Self::heating`], and for a product that never came up all
    /// that it spent in the band so far.
    #[must_use]
    pub fn time(&self) -> Time {
        if self.came_up { self.heating() } else { self.so_far() }
    }

    /// The time in the band with what has passed since, for a product that still heats.
    #[must_use]
    pub fn so_far(&self) -> Time {
        seconds(self.counted + self.pending)
    }

    /// Starts again: only once a lethal row was met.
    pub fn restart(&mut self) {
        (self.counted, self.pending, self.came_up) = (0.0, 0.0, false);
    }

    /// Whether the limit is kept.
    #[must_use]
    pub fn within_limit(&self) -> bool {
        self.time() <= FSIS_COME_UP.value.most
    }
}
