use std::io::{self, Read};

use super::{Point, TimeColumn, TraceError, Track};
use crate::range::bounds;
use crate::units::{Reading, Scale, seconds};

bounds! {
    LINE: "length of a line", "bytes", 0.0, 65_536.0;
}

/// How many bytes may be read ahead of a line.
const AHEAD: usize = 8_192;

/// The longest cell or heading that a message repeats, in characters. Others may read the message.
const QUOTED: usize = 24;

/// Which columns of a file are what.
#[derive(Debug, Clone, PartialEq)]
pub struct Columns<'a> {
    /// The heading of the column of times.
    pub time: &'a str,
    /// How times are written in it.
    pub written: TimeColumn,
    /// The headings of the probes inside the food; the coldest counts.
    pub probes: Vec<&'a str>,
    /// The heading of the dry bulb of the chamber, where it is logged.
    pub chamber: Option<&'a str>,
    /// The heading of its wet bulb, where it is logged.
    pub wet_bulb: Option<&'a str>,
    /// The scale of all of them.
    pub scale: Scale,
}

impl<'a> Columns<'a> {
    /// A column of times and one of a probe, in degrees of a scale.
    #[must_use]
    pub fn new(time: &'a str, written: TimeColumn, probe: &'a str, scale: Scale) -> Self {
        Self { time, written, probes: vec![probe], chamber: None, wet_bulb: None, scale }
    }
}

/// A row of a record.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Instant {
    /// The coldest probe inside the food.
    pub inside: Point,
    /// The warmest, which counts when food cools.
    pub warmest: Point,
    /// The dry bulb of the chamber.
    pub chamber: Option<Reading>,
    /// Its wet bulb.
    pub wet_bulb: Option<Reading>,
}

/// What is wrong with a file, and on which line.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("line {line}: {message}")]
#[non_exhaustive]
pub struct CsvFault {
    /// The line, counted from 1.
    pub line: u64,
    /// What is wrong.
    pub message: String,
}

/// A file that fails at a line longer than any line of readings, so that no such line fills the memory.
struct Bounded<R> {
    file: R,
    /// Bytes since the last line that was whole.
    since: usize,
}

impl<R: Read> Read for Bounded<R> {
    fn read(&mut self, into: &mut [u8]) -> io::Result<usize> {
        let count = self.file.read(into)?;
        self.since = self.since.saturating_add(count);
        let line = self.since.saturating_sub(AHEAD);
        LINE.check(u32::try_from(line).map_or(f64::INFINITY, f64::from))
            .map_err(io::Error::other)?;
        Ok(count)
    }
}

/// The points of a file, one after another, in constant memory.
pub struct Points<R: Read> {
    records: ::csv::StringRecordsIntoIter<Bounded<R>>,
    time: usize,
    probes: Vec<usize>,
    chamber: Option<usize>,
    wet_bulb: Option<usize>,
    written: TimeColumn,
    scale: Scale,
    names: Vec<String>,
    start: Option<f64>,
    track: Track,
    stopped: bool,
}

/// Reads a record of comma-separated values with a line of headings.
///
/// Every row must hold the time and every probe; a gap, a repeat, a time that runs backwards, a
/// reading that is no number or cannot be, a line of more than 65536 bytes: each is a fault with its line,
/// and nothing after it is read. A fault repeats no more of a file than a short cell.
///
/// # Errors
/// [`CsvFault`] when the headings cannot be read or lack a column.
///
/// ```
/// use greenweight::trace::{Columns, TimeColumn, read_csv};
/// use greenweight::units::Scale;
///
/// let file = "minute,core,flank\n0,120,124\n1,121,\n";
/// let mut columns = Columns::new("minute", TimeColumn::Minutes, "core", Scale::Fahrenheit);
/// columns.probes.push("flank");
/// let mut points = read_csv(file.as_bytes(), &columns)?;
/// assert!(points.next().is_some_and(|point| point.is_ok()));
/// let fault = points.next().and_then(Result::err).ok_or("a gap is a fault")?;
/// assert_eq!(fault.line, 3);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn read_csv<R: Read>(file: R, columns: &Columns<'_>) -> Result<Points<R>, CsvFault> {
    let mut reader = ::csv::ReaderBuilder::new()
        .trim(::csv::Trim::All)
        .buffer_capacity(AHEAD)
        .from_reader(Bounded { file, since: 0 });
    let headings = reader.headers().map_err(|error| fault(1, error.to_string()))?.clone();
    reader.get_mut().since = 0;
    let find = |name: &str| {
        let mut found = headings.iter().enumerate().filter(|(_, heading)| *heading == name);
        match (found.next(), found.next()) {
            (Some((n, _)), None) => Ok(n),
            (Some(_), Some(_)) => Err(fault(1, format!("two columns are headed `{name}`"))),
            (None, _) => {
                let known = known(&headings);
                Err(fault(1, format!("no column is headed `{name}`{known}")))
            }
        }
    };
    if columns.probes.is_empty() {
        return Err(fault(1, "no probe is named".to_owned()));
    }
    let probes: Result<Vec<_>, _> = columns.probes.iter().map(|name| find(name)).collect();
    Ok(Points {
        time: find(columns.time)?,
        probes: probes?,
        chamber: columns.chamber.map(find).transpose()?,
        wet_bulb: columns.wet_bulb.map(find).transpose()?,
        written: columns.written,
        scale: columns.scale,
        names: headings.iter().map(str::to_owned).collect(),
        records: reader.into_records(),
        start: None,
        track: Track::new(),
        stopped: false,
    })
}

/// The headings of a file that looks like a table, and otherwise how many columns it has.
fn known(headings: &::csv::StringRecord) -> String {
    let quoted: Option<Vec<_>> = headings.iter().map(quoted).collect();
    match quoted {
        Some(quoted) if quoted.len() > 1 => format!("; there are {}", quoted.join(", ")),
        _ => format!("; columns in this line, between commas: {}", headings.len()),
    }
}

/// A text that is short enough to be repeated in a message, and printable.
fn quoted(text: &str) -> Option<&str> {
    let short = text.chars().count() <= QUOTED;
    let printable = |c: char| c.is_alphanumeric() || c.is_ascii_punctuation() || " °".contains(c);
    (short && text.chars().all(printable)).then_some(text)
}

/// A cell in a message: itself, or what it is.
fn cell(text: &str) -> String {
    quoted(text).map_or("a long or unprintable cell".to_owned(), |text| format!("`{text}`"))
}

fn fault(line: u64, message: String) -> CsvFault {
    CsvFault { line, message }
}

impl<R: Read> Iterator for Points<R> {
    type Item = Result<Instant, CsvFault>;

    fn next(&mut self) -> Option<Self::Item> {
        if self.stopped {
            return None;
        }
        let record = match self.records.next()? {
            Ok(record) => record,
            Err(error) => {
                self.stopped = true;
                let reached = self.records.reader().position().line();
                let line = error.position().map_or(reached, ::csv::Position::line);
                return Some(Err(fault(line, error.to_string())));
            }
        };
        self.records.reader_mut().get_mut().since = 0;
        let line = record.position().map_or(0, ::csv::Position::line);
        let point = self.instant(&record).map_err(|message| fault(line, message));
        self.stopped = point.is_err();
        Some(point)
    }
}

impl<R: Read> Points<R> {
    fn instant(&mut self, record: &::csv::StringRecord) -> Result<Instant, String> {
        let cell = |column: usize| -> Result<&str, String> {
            let text = record.get(column).unwrap_or("");
            let name = self.names.get(column).map_or("", String::as_str);
            if text.is_empty() { Err(format!("`{name}` is empty: a gap")) } else { Ok(text) }
        };
        let at = in_seconds(cell(self.time)?, self.written)?;
        let start = *self.start.get_or_insert(match self.written {
            TimeColumn::Clock => at,
            _ => 0.0,
        });
        let (mut coldest, mut warmest): (Option<Point>, Option<Point>) = (None, None);
        for &probe in &self.probes {
            let reading = reading(cell(probe)?, self.scale)?;
            let at = at - start;
            if at < 0.0 {
                return Err(backwards(cell(self.time)?));
            }
            let point = Point::new(seconds(at), reading).map_err(|error| error.to_string())?;
            coldest = Some(coldest.map_or(point, |coldest| coldest.colder(point)));
            warmest = Some(warmest.map_or(point, |warmest| warmest.warmer(point)));
        }
        let none = || "no probe is named".to_owned();
        let (inside, warmest) = (coldest.ok_or_else(none)?, warmest.ok_or_else(none)?);
        let other = |column: Option<usize>| {
            column.map(|column| reading(cell(column)?, self.scale)).transpose()
        };
        let (chamber, wet_bulb) = (other(self.chamber)?, other(self.wet_bulb)?);
        self.track.next(inside).map_err(|error: TraceError| error.to_string())?;
        Ok(Instant { inside, warmest, chamber, wet_bulb })
    }
}

fn backwards(text: &str) -> String {
    let text = cell(text);
    format!("{text} is before the record began: a clock without its date ends at midnight")
}

fn reading(text: &str, scale: Scale) -> Result<Reading, String> {
    Reading::new(number(text)?, scale).map_err(|error| error.to_string())
}

fn number(text: &str) -> Result<f64, String> {
    let value: f64 = text.parse().map_err(|_| format!("{} is not a number", cell(text)))?;
    if value.is_finite() {
        Ok(value)
    } else {
        Err(format!("{} is not a finite number", cell(text)))
    }
}

fn in_seconds(text: &str, written: TimeColumn) -> Result<f64, String> {
    match written {
        TimeColumn::Seconds => number(text),
        TimeColumn::Minutes => Ok(number(text)? * 60.0),
        TimeColumn::Hours => Ok(number(text)? * 3600.0),
        TimeColumn::Clock => clock(text),
    }
}

/// `2026-01-31 14:05:30`, with a `T` or a space, with or without date and seconds.
fn clock(text: &str) -> Result<f64, String> {
    let wrong = || format!("{} is no time: write 2026-01-31 14:05:30, or 14:05", cell(text));
    let (date, time) = match text.split_once(['T', ' ']) {
        Some((date, time)) => (Some(date), time),
        None => (None, text),
    };
    let mut parts = time.splitn(3, ':').map(|part| part.parse::<f64>().ok());
    let (Some(Some(hours)), Some(Some(minutes))) = (parts.next(), parts.next()) else {
        return Err(wrong());
    };
    let seconds = match parts.next() {
        None => 0.0,
        Some(Some(seconds)) => seconds,
        Some(None) => return Err(wrong()),
    };
    let whole = |value: f64, below: f64| value >= 0.0 && value < below;
    if !whole(hours, 24.0) || !whole(minutes, 60.0) || !whole(seconds, 61.0) {
        return Err(wrong());
    }
    let days = match date {
        None => 0.0,
        Some(date) => days_of(date).ok_or_else(wrong)?,
    };
    Ok(days * 86_400.0 + hours * 3600.0 + minutes * 60.0 + seconds)
}

/// Days since 1 March of the year 0, of the calendar in use.
fn days_of(date: &str) -> Option<f64> {
    let mut parts = date.splitn(3, '-').map(|part| part.parse::<u16>().ok());
    let (year, month, day) = (parts.next()??, parts.next()??, parts.next()??);
    let (small_month, small_day) = (u8::try_from(month).ok()?, u8::try_from(day).ok()?);
    crate::cite::Date::new(year, small_month, small_day).ok()?;
    let (year, month, day) = (i64::from(year), i64::from(month), i64::from(day));
    let (year, month) = if month > 2 { (year, month - 3) } else { (year - 1, month + 9) };
    let days = 365 * year + year.div_euclid(4) - year.div_euclid(100)
        + year.div_euclid(400)
        + (153 * month + 2).div_euclid(5)
        + day;
    // Days of ten thousand years are exact in a float.
    i32::try_from(days).ok().map(f64::from)
}
