//! The one way out for every verb: what is printed, and what is said of what went wrong.

use std::fmt::Display;
use std::io::{self, Write};
use std::path::Path;
use std::process::ExitCode;

use greenweight::report::{visible, visible_lines};

/// Standard output, until whoever reads it has read enough: the rest is done all the same, for the exit status.
pub(crate) struct Output {
    out: io::BufWriter<io::Stdout>,
    closed: bool,
}

impl Output {
    pub(crate) fn new() -> Self {
        Self { out: io::BufWriter::new(io::stdout()), closed: false }
    }

    fn unless_closed<T>(&mut self, done: io::Result<T>, instead: T) -> io::Result<T> {
        match done {
            Err(error) if error.kind() == io::ErrorKind::BrokenPipe => {
                self.closed = true;
                Ok(instead)
            }
            done => done,
        }
    }
}

impl Write for Output {
    fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
        if self.closed {
            return Ok(bytes.len());
        }
        let done = self.out.write(bytes);
        self.unless_closed(done, bytes.len())
    }

    fn flush(&mut self) -> io::Result<()> {
        if self.closed {
            return Ok(());
        }
        let done = self.out.flush();
        self.unless_closed(done, ())
    }
}

/// Prints all of a text, and ends with the status; or with 2 where it could not be printed.
pub(crate) fn print(text: &str, status: ExitCode) -> ExitCode {
    let mut out = Output::new();
    match out.write_all(text.as_bytes()).and_then(|()| out.flush()) {
        Ok(()) => status,
        Err(error) => {
            complain(unwritten(&error));
            ExitCode::from(2)
        }
    }
}

/// Why standard output is not what it should be.
pub(crate) fn unwritten(error: &io::Error) -> String {
    format!("the output could not be written: {error}")
}

/// Says what went wrong.
pub(crate) fn complain(said: impl Display) {
    complain_in_colour(&visible_lines(&said.to_string()));
}

/// The same of a text whose escapes are its own.
pub(crate) fn complain_in_colour(said: &str) {
    // Where nobody can be told, the exit status tells.
    let _ = writeln!(io::stderr(), "{said}");
}

/// A path in a sentence.
pub(crate) fn shown(path: &Path) -> String {
    visible(&path.display().to_string()).into_owned()
}
