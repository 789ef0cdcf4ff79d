//! Many documents, several at a time, reported in the order they were named.

use std::io::{self, IsTerminal};
use std::path::{Path, PathBuf};
use std::process::ExitCode;
use std::time::Duration;

use indicatif::{ProgressBar, ProgressDrawTarget, ProgressStyle};
use rayon::prelude::*;

use greenweight::report::{Format, Outcome, Part, Report, Summary};

use crate::draw;
use crate::files::{Document, Named, explained, named};
use crate::output::{Output, complain, complain_in_colour, unwritten};

/// So many documents are held at a time.
const BATCH: usize = 256;

/// Where drawings go.
pub(crate) struct Drawings<'a> {
    pub(crate) plots: Option<&'a Path>,
    pub(crate) pages: Option<&'a Path>,
}

/// What is printed of one document.
struct Printed {
    part: io::Result<Part>,
    unread: Option<String>,
    drawn: Result<(), String>,
}

pub(crate) fn check_all(
    arguments: &[PathBuf],
    format: Format,
    drawings: &Drawings<'_>,
    no_accepted: bool,
) -> ExitCode {
    match written(arguments, format, drawings) {
        Ok(summary) if summary.unread > 0 => ExitCode::from(2),
        Ok(summary) if summary.settled() && (!no_accepted || summary.accepted == 0) => {
            ExitCode::SUCCESS
        }
        Ok(_) => ExitCode::from(1),
        Err(message) => {
            complain(message);
            ExitCode::from(2)
        }
    }
}

fn written(
    arguments: &[PathBuf],
    format: Format,
    drawings: &Drawings<'_>,
) -> Result<Summary, String> {
    let paths = named(arguments);
    let names = draw::names(paths.iter().map(|named| named.path.as_path()));
    let unwritten = |error| unwritten(&error);
    let mut report = Report::new(format, Output::new()).map_err(unwritten)?;
    let progress = Progress::new(paths.len());
    let colour = io::stderr().is_terminal();
    let mut drawn = Ok(());
    for (paths, names) in paths.chunks(BATCH).zip(names.chunks(BATCH)) {
        let pairs = paths.par_iter().zip(names);
        let printed: Vec<_> =
            pairs.map(|(named, name)| print_one(named, name, format, drawings, colour)).collect();
        progress.more(printed.len());
        for printed in printed {
            if let Some(unread) = printed.unread {
                progress.above(|| complain_in_colour(&unread));
            }
            drawn = drawn.and(printed.drawn);
            report.add(printed.part.map_err(unwritten)?).map_err(unwritten)?;
        }
    }
    progress.done();
    let (summary, _) = report.finish().map_err(unwritten)?;
    drawn.map(|()| summary)
}

fn print_one(
    named: &Named,
    name: &str,
    format: Format,
    drawings: &Drawings<'_>,
    colour: bool,
) -> Printed {
    let document = Document::open(named);
    let outcome = document.check();
    let part = Part::new(format, &outcome);
    match &outcome {
        Outcome::Checked(checkup) => {
            let plots = drawings.plots.map_or(Ok(()), |to| draw::draw(checkup, name, to));
            let pages = drawings.pages.map_or(Ok(()), |to| draw::page(checkup, name, to));
            Printed { part, unread: None, drawn: plots.and(pages) }
        }
        Outcome::Unread(unread) => {
            Printed { part, unread: Some(explained(unread, colour)), drawn: Ok(()) }
        }
    }
}

/// How far it is, on a terminal, when it takes longer than a second.
struct Progress(Option<ProgressBar>);

impl Progress {
    fn new(documents: usize) -> Self {
        // Where the report itself runs down the terminal it shows how far it is.
        if !io::stderr().is_terminal() || io::stdout().is_terminal() {
            return Self(None);
        }
        let length = u64::try_from(documents).unwrap_or(u64::MAX);
        let bar = ProgressBar::with_draw_target(Some(length), ProgressDrawTarget::hidden());
        // The template is a constant, and right.
        if let Ok(style) = ProgressStyle::with_template("{pos} of {len} documents {bar:30} {eta}") {
            bar.set_style(style);
        }
        Self(Some(bar))
    }

    fn more(&self, documents: usize) {
        let Some(bar) = &self.0 else { return };
        if bar.is_hidden() && bar.elapsed() > Duration::from_secs(1) {
            bar.set_draw_target(ProgressDrawTarget::stderr());
        }
        bar.inc(u64::try_from(documents).unwrap_or(u64::MAX));
    }

    /// Writes something that the bar must not be drawn over.
    fn above(&self, write: impl FnOnce()) {
        match &self.0 {
            Some(bar) => bar.suspend(write),
            None => write(),
        }
    }

    fn done(&self) {
        if let Some(bar) = &self.0 {
            bar.finish_and_clear();
        }
    }
}
