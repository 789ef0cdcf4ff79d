use super::document::{Confirmed, Recipe, Remembered};
use super::remembered::REMEMBERED;
use crate::cite::Row;

impl Remembered {
    /// Every row that is from memory and that a rule may judge by.
    ///
    /// ```
    /// use greenweight::recipe::Remembered;
    ///
    /// let mut rows = Remembered::all().iter();
    /// assert!(rows.any(|row| row.table == "cure/denmark" && row.key == "general"));
    /// ```
    #[must_use]
    pub fn all() -> &'static [Self] {
        &REMEMBERED
    }

    /// Whether a row is this one.
    #[must_use]
    pub fn is(&self, row: &Row) -> bool {
        self.table == row.table && self.key == row.key
    }
}

impl<'a> Recipe<'a> {
    /// Who says to have read a row from memory.
    #[must_use]
    pub fn confirmation(&self, row: &Row) -> Option<&Confirmed<'a>> {
        self.confirmed.iter().find(|confirmed| confirmed.row.is(row))
    }
}
