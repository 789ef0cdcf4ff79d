/// Turns a byte of a text into its line and column, both counted from one.
#[derive(Debug)]
pub struct Lines<'a> {
    text: &'a str,
    starts: Vec<usize>,
}

impl<'a> Lines<'a> {
    /// Finds the lines of a text.
    #[must_use]
    pub fn new(text: &'a str) -> Self {
        let after = text.match_indices('\n').map(|(at, _)| at.saturating_add(1));
        Self { text, starts: core::iter::once(0).chain(after).collect() }
    }

    /// The line of a byte, and its column in characters.
    #[must_use]
    pub fn of(&self, byte: usize) -> (usize, usize) {
        let line = self.starts.partition_point(|&start| start <= byte);
        let start = line.checked_sub(1).and_then(|n| self.starts.get(n)).copied().unwrap_or(0);
        let before = self.text.get(start..byte).unwrap_or("");
        (line, before.chars().count().saturating_add(1))
    }
}
