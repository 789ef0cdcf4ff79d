use std::borrow::Cow;
use std::fmt;
use std::ops::Range as Span;

use toml::Spanned;
use toml::de::{DeTable, DeValue};

use crate::finding::{Place, Placed};
use crate::range::{Bounds, OutOfRange};
use crate::units::ReadError;
use crate::visible::is_unprintable;

/// Something in a document that cannot be read.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Fault {
    /// What is wrong.
    pub message: String,
    /// How to write it, where there is more to say.
    pub help: Option<String>,
    /// Where.
    pub place: Place,
}

/// A document that cannot be read, with every reason that was found.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub struct Unreadable {
    /// The reasons, in the order of the document. Never empty.
    pub faults: Vec<Fault>,
}

impl fmt::Display for Unreadable {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        for (n, fault) in self.faults.iter().enumerate() {
            if n > 0 {
                f.write_str("\n")?;
            }
            write!(f, "at byte {}: {}", fault.place.start, fault.message)?;
        }
        Ok(())
    }
}

impl From<Span<usize>> for Place {
    fn from(span: Span<usize>) -> Self {
        Self { start: span.start, end: span.end }
    }
}

/// Reads one table: takes keys out of it, and at the end names those it did not know.
pub(super) struct Keys<'d, 'i> {
    source: &'i str,
    table: &'d DeTable<'i>,
    known: &'static [&'static str],
    /// The marks of its keys.
    present: u64,
    /// Where the table stands.
    pub(super) place: Place,
}

/// A string value with its place.
#[derive(Clone, Copy)]
pub(super) struct Text<'d> {
    pub(super) text: &'d str,
    pub(super) place: Place,
    /// Whether the text stands in the document as it is, so that a part of it has a
    /// place of its own.
    literal: bool,
}

impl Text<'_> {
    /// The place of a part of the text.
    pub(super) fn part(&self, span: Span<usize>) -> Place {
        if !self.literal {
            return self.place;
        }
        let first = self.place.start.saturating_add(1);
        Place { start: first.saturating_add(span.start), end: first.saturating_add(span.end) }
    }
}

/// One bit of 64 that a key shares with few others.
fn mark(key: &str) -> u64 {
    let first = u64::from(key.as_bytes().first().copied().unwrap_or_default());
    let length = u64::try_from(key.len()).unwrap_or_default();
    1_u64.rotate_left(u32::try_from((first * 3 + length) % 64).unwrap_or_default())
}

/// The most faults that are told of a document.
pub(super) const TOLD: usize = 100;

pub(super) type Faults = Vec<Fault>;

pub(super) fn fault(faults: &mut Faults, place: Place, message: impl Into<String>) {
    faults.push(Fault { message: message.into(), help: None, place });
}

/// The known word nearest to one that is not known.
pub(super) fn nearest<'k>(word: &str, known: impl IntoIterator<Item = &'k str>) -> Option<&'k str> {
    // A word of a megabyte is not worth measuring against.
    if word.len() > 64 {
        return None;
    }
    let near = known
        .into_iter()
        .map(|candidate| (strsim::damerau_levenshtein(word, candidate), candidate))
        .min()?;
    // Further away than a quarter of the word it is another word: `hot-smoke` must not
    // become `cold-smoke`.
    let far = word.chars().count().checked_div(4).unwrap_or(0).max(1);
    (near.0 <= far).then_some(near.1)
}

impl<'d, 'i> Keys<'d, 'i> {
    pub(super) fn new(
        source: &'i str,
        table: &'d DeTable<'i>,
        place: Span<usize>,
        known: &'static [&'static str],
        faults: &mut Faults,
    ) -> Self {
        let present = table.keys().fold(0, |all, key| all | mark(key.get_ref()));
        let keys = Self { source, table, known, present, place: place.into() };
        keys.refuse_unknown(faults);
        keys
    }

    fn refuse_unknown(&self, faults: &mut Faults) {
        for key in self.table.keys() {
            let name: &str = key.get_ref();
            if self.known.contains(&name) {
                continue;
            }
            // Nor is one after the last that is told.
            let told = faults.len() < TOLD;
            let near = if told { nearest(name, self.known.iter().copied()) } else { None };
            let help = match near {
                Some(near) => format!("did you mean `{near}`?"),
                None => format!("known here: {}", self.known.join(", ")),
            };
            let shown: String = name.chars().take(64).collect();
            faults.push(Fault {
                message: format!("unknown key `{shown}`"),
                help: Some(help),
                place: key.span().into(),
            });
        }
    }

    /// The keys that are there, known or not.
    pub(super) fn names(&self) -> impl Iterator<Item = &'d str> + use<'d, 'i> {
        self.table.keys().map(|key| key.get_ref().as_ref())
    }

    pub(super) fn value(&self, key: &str) -> Option<&'d Spanned<DeValue<'i>>> {
        debug_assert!(self.known.contains(&key));
        // Most keys are in most tables not there, and looking for each costs as much as all the rest.
        if self.present & mark(key) == 0 { None } else { self.table.get(key) }
    }

    fn wrong_type(value: &Spanned<DeValue<'_>>, key: &str, wanted: &str, faults: &mut Faults) {
        let found = value.get_ref().type_str();
        let help = match value.get_ref() {
            DeValue::Integer(_) | DeValue::Float(_) if wanted == "a string" => {
                Some("a quantity is written as text with its unit, as in \"250 g\"".to_owned())
            }
            DeValue::String(_) if key == "strength" => {
                Some("name the agent, as in strength = { sodium-nitrite = \"6.25 %\" }".to_owned())
            }
            DeValue::String(_) if wanted == "a list" => {
                Some(format!("write it in brackets, as in {key} = [\"…\"]"))
            }
            _ => None,
        };
        faults.push(Fault {
            message: format!("`{key}` is {wanted}, and this is of type {found}"),
            help,
            place: value.span().into(),
        });
    }

    /// A string, where the key is there.
    pub(super) fn text(&self, key: &str, faults: &mut Faults) -> Option<Text<'d>> {
        let value = self.value(key)?;
        self.text_of(value, key, faults)
    }

    pub(super) fn text_of(
        &self,
        value: &'d Spanned<DeValue<'i>>,
        key: &str,
        faults: &mut Faults,
    ) -> Option<Text<'d>> {
        let span = value.span();
        match value.get_ref() {
            DeValue::String(text) => {
                let inside = span.start.saturating_add(1)..span.end.saturating_sub(1);
                let literal = self.source.get(inside) == Some(text.as_ref());
                Some(Text { text, place: span.into(), literal })
            }
            _ => {
                Self::wrong_type(value, key, "a string", faults);
                None
            }
        }
    }

    /// A name to keep, borrowed from the document where it can be.
    pub(super) fn name(&self, key: &str, faults: &mut Faults) -> Option<Cow<'i, str>> {
        let value = self.value(key)?;
        match value.get_ref() {
            DeValue::String(text) => Some(text.clone()),
            _ => {
                Self::wrong_type(value, key, "a string", faults);
                None
            }
        }
    }

    /// A name that has to be there.
    pub(super) fn required_name(&self, key: &str, faults: &mut Faults) -> Cow<'i, str> {
        let text = self.required_text(key, faults);
        text.and_then(|_| self.name(key, faults)).unwrap_or_default()
    }

    /// A text that has to be there, with its place.
    pub(super) fn required_text(&self, key: &str, faults: &mut Faults) -> Option<Text<'d>> {
        if self.value(key).is_none() {
            fault(faults, self.place, format!("`{key}` is missing"));
        }
        let text = self.text(key, faults)?;
        match wrong_name(text.text) {
            None => Some(text),
            Some(wrong) => {
                fault(faults, text.place, format!("`{key}` {wrong}"));
                None
            }
        }
    }

    pub(super) fn yes(&self, key: &str, faults: &mut Faults) -> Option<bool> {
        let value = self.value(key)?;
        let yes = value.get_ref().as_bool();
        if yes.is_none() {
            Self::wrong_type(value, key, "true or false", faults);
        }
        yes
    }

    /// One word out of a closed list.
    pub(super) fn word<T: Copy>(
        &self,
        key: &str,
        all: &[T],
        name: impl Fn(T) -> &'static str,
        faults: &mut Faults,
    ) -> Option<T> {
        let text = self.text(key, faults)?;
        one_of(text, key, all, name, faults)
    }

    /// The same, and it has to be there.
    pub(super) fn required_word<T: Copy>(
        &self,
        key: &str,
        asks: &str,
        all: &[T],
        name: impl Fn(T) -> &'static str,
        faults: &mut Faults,
    ) -> Option<T> {
        if self.value(key).is_none() {
            let known: Vec<_> = all.iter().map(|&item| name(item)).collect();
            faults.push(Fault {
                message: format!("`{key}` is missing: {asks}"),
                help: Some(format!("it is one of {}", known.join(", "))),
                place: self.place,
            });
        }
        self.word(key, all, name, faults)
    }

    /// A quantity.
    pub(super) fn quantity<T>(
        &self,
        key: &str,
        read: impl Fn(&str) -> Result<T, ReadError>,
        faults: &mut Faults,
    ) -> Option<T> {
        let text = self.text(key, faults)?;
        match read(text.text) {
            Ok(quantity) => Some(quantity),
            Err(error) => {
                fault(faults, text.part(error.span()), error.to_string());
                None
            }
        }
    }

    /// A quantity with its place.
    pub(super) fn placed<T>(
        &self,
        key: &str,
        read: impl Fn(&str) -> Result<T, ReadError>,
        faults: &mut Faults,
    ) -> Option<Placed<T>> {
        let value = self.quantity(key, read, faults)?;
        let place = self.value(key).map_or(self.place, |value| value.span().into());
        Some(Placed { value, place })
    }

    /// A number without a unit, as TOML writes it.
    pub(super) fn plain_number(
        &self,
        key: &str,
        bounds: &Bounds,
        faults: &mut Faults,
    ) -> Option<f64> {
        let value = self.value(key)?;
        let number = match value.get_ref() {
            DeValue::Float(number) => number.as_str().parse::<f64>().ok(),
            DeValue::Integer(number) => number.as_str().parse::<f64>().ok(),
            _ => None,
        };
        let Some(number) = number else {
            Self::wrong_type(value, key, "a number", faults);
            return None;
        };
        match bounds.check(number) {
            Ok(number) => Some(number),
            Err(error) => {
                fault(faults, value.span().into(), error.to_string());
                None
            }
        }
    }

    /// A quantity that must also lie in bounds.
    pub(super) fn bounded<T>(
        &self,
        key: &str,
        read: impl Fn(&str) -> Result<T, ReadError>,
        check: impl Fn(&T) -> Result<(), OutOfRange>,
        faults: &mut Faults,
    ) -> Option<T> {
        let quantity = self.quantity(key, read, faults)?;
        match check(&quantity) {
            Ok(()) => Some(quantity),
            Err(error) => {
                let place = self.value(key).map_or(self.place, |value| value.span().into());
                fault(faults, place, error.to_string());
                None
            }
        }
    }

    /// A table inside this one.
    pub(super) fn table(
        &self,
        key: &str,
        known: &'static [&'static str],
        faults: &mut Faults,
    ) -> Option<Keys<'d, 'i>> {
        let value = self.value(key)?;
        self.table_of(value, key, known, faults)
    }

    pub(super) fn table_of(
        &self,
        value: &'d Spanned<DeValue<'i>>,
        key: &str,
        known: &'static [&'static str],
        faults: &mut Faults,
    ) -> Option<Keys<'d, 'i>> {
        match value.get_ref() {
            DeValue::Table(table) => {
                Some(Keys::new(self.source, table, value.span(), known, faults))
            }
            _ => {
                Self::wrong_type(value, key, "a table", faults);
                None
            }
        }
    }

    /// The items of an array, of at most so many; none where the key is not there.
    pub(super) fn items(
        &self,
        key: &str,
        most: usize,
        faults: &mut Faults,
    ) -> &'d [Spanned<DeValue<'i>>] {
        match self.value(key) {
            None => &[],
            Some(value) => match value.get_ref() {
                DeValue::Array(items) if items.len() > most => {
                    let place = items.get(most).map_or(self.place, |item| item.span().into());
                    let count = items.len();
                    fault(
                        faults,
                        place,
                        format!("`{key}` has {count} items; {most} are read at most"),
                    );
                    &[]
                }
                DeValue::Array(items) => items,
                _ => {
                    Self::wrong_type(value, key, "a list", faults);
                    &[]
                }
            },
        }
    }
}

/// What is wrong with a name that a report prints.
pub(super) fn wrong_name(name: &str) -> Option<&'static str> {
    if name.trim().is_empty() {
        return Some("is empty");
    }
    // What would move a cursor or turn the line around has no place in a report.
    let printable = name.bytes().all(|byte| matches!(byte, b' '..=b'~'));
    let wrong = !printable && name.contains(is_unprintable);
    wrong.then_some("holds a character that cannot be printed")
}

/// Words that a kitchen says, and what they are here.
const SPOKEN: [(&str, &str); 12] = [
    ("cool", "chill"),
    ("brine", "hold"),
    ("dry", "hold"),
    ("store", "refrigerate"),
    ("fridge", "refrigerate"),
    ("vacuum", "pack"),
    ("roast", "cook"),
    ("dry-cure", "dry-rub"),
    ("herb", "fresh-herbs"),
    ("herbs", "fresh-herbs"),
    ("garlic", "raw-garlic"),
    ("pork belly", "bacon"),
];

/// The word of a list that somebody meant: by what a kitchen says, or the nearest.
fn meant<'k, I: Iterator<Item = &'k str>>(word: &str, words: &impl Fn() -> I) -> Option<&'k str> {
    let spoken = SPOKEN.iter().find(|(spoken, _)| *spoken == word);
    let known = spoken.and_then(|(_, here)| words().find(|known| known == here));
    known.or_else(|| nearest(word, words()))
}

/// A word of a closed list, or a fault that names the nearest.
pub(super) fn one_of<T: Copy>(
    text: Text<'_>,
    key: &str,
    all: &[T],
    name: impl Fn(T) -> &'static str,
    faults: &mut Faults,
) -> Option<T> {
    let found = all.iter().copied().find(|&item| name(item) == text.text);
    if found.is_none() {
        let words = || all.iter().map(|&item| name(item));
        let near = meant(text.text, &words);
        let shown: String = text.text.chars().take(64).collect();
        faults.push(Fault {
            message: format!("`{key}` cannot be `{shown}`"),
            help: Some(match near {
                Some(near) => format!("did you mean `{near}`?"),
                None => format!("it is one of {}", words().collect::<Vec<_>>().join(", ")),
            }),
            place: text.place,
        });
    }
    found
}
