use std::io::{self, Write};

use super::{CAUTIONS, Layout, Outcome, json, junit, sarif, text};
use crate::finding::Verdict;
use crate::visible::in_json;

/// How a report is written.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
#[non_exhaustive]
pub enum Format {
    /// For a person: of each recipe what breaks first, then what is unproven and what to add, what was
    /// accepted and why, then what meets, and at the end the cautions. What could not be read is not in it:
    /// that goes to whoever can mend it.
    Text(Layout),
    /// For a machine. Its shape is `report.schema.json`.
    Json,
    /// For code hosts, as SARIF 2.1.0: every finding that breaks, is unproven or departs from advice, on its
    /// line. What meets is left out. An unproven finding fails the check as a broken one does, and is a
    /// warning; only a broken limit of safety is an error, and advice is a note. What is accepted is suppressed
    /// with its reason.
    Sarif,
    /// For builds, as JUnit XML: a suite a recipe, a case a finding.
    Junit,
}

impl Format {
    /// The report of one document alone.
    ///
    /// # Errors
    /// As [`Part::new`].
    pub fn report(self, outcome: &Outcome<'_>) -> io::Result<(Summary, String)> {
        let mut report = Report::new(self, Vec::new())?;
        report.add(Part::new(self, outcome)?)?;
        let (summary, bytes) = report.finish()?;
        Ok((summary, String::from_utf8(bytes).map_err(io::Error::other)?))
    }
}

/// The part of a report that one document makes.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Part {
    text: String,
    /// `None` where the document could not be read.
    verdict: Option<Verdict>,
    settled: bool,
}

impl Part {
    /// Renders what became of a document.
    ///
    /// # Errors
    /// Only when serialising fails, which finite numbers and text do not.
    pub fn new(format: Format, outcome: &Outcome<'_>) -> io::Result<Self> {
        match outcome {
            Outcome::Checked(checkup) => {
                let text = match format {
                    Format::Text(layout) => text::recipe(checkup, layout),
                    Format::Json => in_json(json::file(checkup)?),
                    Format::Sarif => in_json(sarif::results(checkup)?),
                    Format::Junit => junit::checked(checkup)?,
                };
                let (verdict, settled) = (Some(checkup.verdict()), checkup.settled());
                Ok(Self { text, verdict, settled })
            }
            Outcome::Unread(unread) => {
                let text = match format {
                    Format::Text(_) => String::new(),
                    Format::Json => in_json(json::not_read(unread)?),
                    Format::Sarif => in_json(sarif::notifications(unread)?),
                    Format::Junit => junit::not_read(unread)?,
                };
                Ok(Self { text, verdict: None, settled: false })
            }
        }
    }
}

/// How many documents came out how.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
#[non_exhaustive]
pub struct Summary {
    /// Everything meets.
    pub meets: usize,
    /// Something breaks.
    pub breaks: usize,
    /// Nothing breaks and something is unproven.
    pub unproven: usize,
    /// Of these, where whatever does not meet is accepted in the document.
    pub accepted: usize,
    /// Could not be read.
    pub unread: usize,
}

impl Summary {
    /// Documents in all.
    #[must_use]
    pub fn documents(&self) -> usize {
        [self.meets, self.breaks, self.unproven, self.unread]
            .into_iter()
            .fold(0, usize::saturating_add)
    }

    /// Whether every document was read, and in each everything meets or is accepted.
    #[must_use]
    pub fn settled(&self) -> bool {
        let open = self.breaks.saturating_add(self.unproven);
        self.unread == 0 && open == self.accepted
    }

    fn count(&mut self, part: &Part) {
        let count = match part.verdict {
            None => &mut self.unread,
            Some(Verdict::Meets) => &mut self.meets,
            Some(Verdict::Breaks) => &mut self.breaks,
            Some(Verdict::Unproven) => &mut self.unproven,
        };
        *count = count.saturating_add(1);
        if part.settled && part.verdict != Some(Verdict::Meets) {
            self.accepted = self.accepted.saturating_add(1);
        }
    }
}

/// A report being written.
#[derive(Debug)]
pub struct Report<W> {
    format: Format,
    out: W,
    summary: Summary,
    /// What stands after all that was checked.
    later: Vec<String>,
    /// Whether an item stands before the next one in a list.
    second: bool,
}

impl<W: Write> Report<W> {
    /// Begins it.
    ///
    /// # Errors
    /// Those of the writer.
    pub fn new(format: Format, mut out: W) -> io::Result<Self> {
        match format {
            Format::Text(_) => {}
            Format::Json => json::begin(&mut out)?,
            Format::Sarif => sarif::begin(&mut out)?,
            Format::Junit => junit::begin(&mut out)?,
        }
        let (summary, later) = (Summary::default(), Vec::new());
        Ok(Self { format, out, summary, later, second: false })
    }

    /// Writes the next part, which was rendered for the same format.
    ///
    /// # Errors
    /// Those of the writer.
    pub fn add(&mut self, part: Part) -> io::Result<()> {
        self.summary.count(&part);
        match (self.format, part.verdict) {
            (Format::Json | Format::Sarif, None) => self.later.push(part.text),
            (Format::Json | Format::Sarif, _) if part.text.is_empty() => {}
            (Format::Json | Format::Sarif, _) => {
                let before = if self.second { ",\n" } else { "\n" };
                self.second = true;
                self.out.write_all(before.as_bytes())?;
                self.out.write_all(part.text.as_bytes())?;
            }
            (Format::Text(_) | Format::Junit, _) => self.out.write_all(part.text.as_bytes())?,
        }
        Ok(())
    }

    /// Ends it, and gives back what it was written to.
    ///
    /// # Errors
    /// Those of the writer.
    pub fn finish(mut self) -> io::Result<(Summary, W)> {
        let later = self.later.join(",\n");
        let out = &mut self.out;
        match self.format {
            Format::Text(layout) => out.write_all(text::end(&self.summary, layout).as_bytes())?,
            Format::Json => json::end(out, &later, &CAUTIONS)?,
            Format::Sarif => sarif::end(out, &later)?,
            Format::Junit => junit::end(out)?,
        }
        self.out.flush()?;
        Ok((self.summary, self.out))
    }
}
