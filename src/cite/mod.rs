//! Where a figure comes from, and how firmly.
//!
//! Every published figure in this crate is a [`Cited`] value: the figure with a
//! [`Row`] that keeps what the document prints, which document, where in it,
//! whether it was read there, and when it was in force.

use core::fmt;

#[rustfmt::skip]
pub(crate) mod sources;

/// What kind of statement a figure is. It decides what a broken limit means.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize), serde(rename_all = "kebab-case"))]
#[non_exhaustive]
pub enum Standing {
    /// Statute or regulation.
    Law,
    /// Official guidance or policy.
    Guidance,
    /// Official advice about quality, not safety.
    QualityAdvice,
    /// A handbook or textbook.
    Handbook,
    /// A paper.
    Paper,
    /// What the trade does, without a document.
    CommonPractice,
}

impl Standing {
    /// In words.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Law => "law",
            Self::Guidance => "guidance",
            Self::QualityAdvice => "quality advice",
            Self::Handbook => "handbook",
            Self::Paper => "paper",
            Self::CommonPractice => "common practice, no source",
        }
    }
}

/// How the figure was seen by whoever entered it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize), serde(rename_all = "kebab-case"))]
#[non_exhaustive]
pub enum Seen {
    /// Read in the document itself.
    Read,
    /// Read in another publication that reports it.
    Reported,
    /// Known, and not found again: to be checked before anything rests on it.
    Memory,
    /// Worked out from cited figures.
    Computed,
}

impl Seen {
    /// In words.
    #[must_use]
    pub const fn words(self) -> &'static str {
        match self {
            Self::Read => "read",
            Self::Reported => "reported",
            Self::Memory => "from memory",
            Self::Computed => "computed",
        }
    }
}

/// A document.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[non_exhaustive]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Source {
    /// Its key in `references/sources.toml`.
    pub key: &'static str,
    /// Its title.
    pub title: &'static str,
    /// Who publishes it.
    pub publisher: &'static str,
    /// Its number or section, empty where it has none.
    pub number: &'static str,
    /// Which edition the figures are of.
    pub edition: &'static str,
}

/// A place in a document, and how firmly it stands there.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[non_exhaustive]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Citation {
    /// The document.
    pub source: &'static Source,
    /// The paragraph, page or row.
    pub place: &'static str,
    /// What kind of statement it is.
    pub standing: Standing,
    /// Whether it was read there.
    pub seen: Seen,
}

impl fmt::Display for Citation {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Source { title, number, edition, .. } = self.source;
        if number.is_empty() {
            f.write_str(title)?;
        } else {
            write!(f, "{number}, {title}")?;
        }
        if !edition.is_empty() {
            write!(f, ", {edition}")?;
        }
        write!(f, "; {}; {}, {}", self.place, self.standing.words(), self.seen.words())
    }
}

/// A calendar day.
///
/// ```
/// use greenweight::cite::Date;
///
/// assert!(Date::new(2025, 10, 9)? > Date::new(2025, 10, 8)?);
/// # Ok::<(), greenweight::range::OutOfRange>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Date {
    year: u16,
    month: u8,
    day: u8,
}

crate::range::bounds! {
    YEAR: "year", "", 1900.0, 9999.0;
    MONTH: "month", "", 1.0, 12.0;
    DAY: "day of the month", "", 1.0, 31.0;
}

impl Date {
    /// The day `day` of `month` in `year`.
    ///
    /// # Errors
    /// [`crate::range::OutOfRange`] when the calendar has no such day.
    pub fn new(year: u16, month: u8, day: u8) -> Result<Self, crate::range::OutOfRange> {
        YEAR.check(year.into())?;
        MONTH.check(month.into())?;
        let leap =
            year.is_multiple_of(4) && (!year.is_multiple_of(100) || year.is_multiple_of(400));
        let last = match month {
            2 if leap => 29.0,
            2 => 28.0,
            4 | 6 | 9 | 11 => 30.0,
            _ => 31.0,
        };
        crate::range::Bounds::new("day of the month", "", 1.0, last).check(day.into())?;
        DAY.check(day.into())?;
        Ok(Self { year, month, day })
    }

    /// The day so many days later; `None` after the year 9999.
    ///
    /// ```
    /// use greenweight::cite::Date;
    ///
    /// let packed = Date::new(2028, 2, 27)?;
    /// assert_eq!(packed.days_later(3), Some(Date::new(2028, 3, 1)?));
    /// # Ok::<(), greenweight::range::OutOfRange>(())
    /// ```
    #[cfg(feature = "calendar")]
    #[cfg_attr(docsrs, doc(cfg(feature = "calendar")))]
    #[must_use]
    pub fn days_later(self, days: u16) -> Option<Self> {
        self.later(crate::units::days(days.into()))
    }

    /// The day a time later, in whole days.
    #[cfg(feature = "calendar")]
    pub(crate) fn later(self, time: crate::units::Time) -> Option<Self> {
        let month = time::Month::try_from(self.month).ok()?;
        let day = time::Date::from_calendar_date(self.year.into(), month, self.day).ok()?;
        let later = day.checked_add(time::Duration::saturating_seconds_f64(time.value))?;
        Self::new(u16::try_from(later.year()).ok()?, later.month().into(), later.day()).ok()
    }

    /// A day of a generated table, whose figures are tested, in a `const`.
    pub(crate) const fn printed(year: u16, month: u8, day: u8) -> Self {
        Self { year, month, day }
    }
}

impl fmt::Display for Date {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{:04}-{:02}-{:02}", self.year, self.month, self.day)
    }
}

/// The days on which a row is in force: from `from`, and up to but not including
/// `until`. An end that is not known is open.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[non_exhaustive]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct InForce {
    /// The first day.
    pub from: Option<Date>,
    /// The first day on which it no longer is.
    pub until: Option<Date>,
}

impl InForce {
    pub(crate) const fn between(from: Option<Date>, until: Option<Date>) -> Self {
        Self { from, until }
    }

    /// Whether the row is in force on that day. Without a day, only a row that was
    /// never superseded counts.
    #[must_use]
    pub fn on(&self, day: Option<Date>) -> bool {
        match day {
            Some(day) => {
                self.from.is_none_or(|from| from <= day)
                    && self.until.is_none_or(|until| day < until)
            }
            None => self.until.is_none(),
        }
    }
}

/// A row of a reference table: all of it except the figure.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[non_exhaustive]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
pub struct Row {
    /// Which table: the path of its file below `references/`, without the ending.
    pub table: &'static str,
    /// Its key in the table.
    pub key: &'static str,
    /// What the document prints.
    pub printed: &'static str,
    /// The document and the place.
    pub citation: Citation,
    /// The days on which it is in force.
    pub in_force: InForce,
    /// What a reader must know besides, empty where there is nothing.
    pub note: &'static str,
}

impl Row {
    /// Whether nobody read it in its document: its figure is from memory.
    #[must_use]
    pub fn is_from_memory(&self) -> bool {
        self.citation.seen == Seen::Memory
    }
}

/// A published figure with its row.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Cited<T> {
    /// The figure.
    pub value: T,
    /// Where it comes from.
    pub row: Row,
}
