//! What a document, a file name or an argument says, as it is shown: it cannot write lines of a report, move a
//! cursor or turn a line around.

use std::borrow::Cow;
use std::iter::Peekable;
use std::str::Chars;

/// Whether a character would begin a line, move a cursor or turn the line around.
#[must_use]
pub fn is_unprintable(c: char) -> bool {
    c.is_control()
        || matches!(
            c,
            '\u{61c}' | '\u{200e}' | '\u{200f}'
                | '\u{2028}'..='\u{202e}'
                | '\u{2066}'..='\u{2069}'
                // XML has no way to write these.
                | '\u{fffe}' | '\u{ffff}'
        )
}

/// A name, a path or a sentence with whatever cannot be printed written out: a line end as `\n`, an escape as
/// `\u{1b}`.
///
/// ```
/// use greenweight::report::visible;
///
/// assert_eq!(visible("a\nMEETS\u{1b}[2J.toml"), "a\\nMEETS\\u{1b}[2J.toml");
/// ```
#[must_use]
pub fn visible(text: &str) -> Cow<'_, str> {
    written_out(text, |_, _| false)
}

/// The same for a text of several lines, which keeps its line ends and its tabs.
#[must_use]
pub fn visible_lines(text: &str) -> Cow<'_, str> {
    written_out(text, |c, rest| match c {
        '\n' | '\t' => true,
        // Alone it takes the cursor back to the beginning of the line.
        '\r' => rest.peek() == Some(&'\n'),
        _ => false,
    })
}

/// Whether a text holds a character that steers, a line end aside, by its bytes.
fn holds_steering(text: &[u8]) -> bool {
    // All of them begin with one of these bytes, and few bytes of a report are one.
    let begins = |byte: &u8| (*byte < b' ' && *byte != b'\n') || *byte >= 0x7f;
    let mut rest = text;
    while let Some(at) = rest.iter().position(begins) {
        let Some([byte, after @ ..]) = rest.get(at..) else { return false };
        let steers = match (byte, after) {
            (b'\n', _) => false,
            (0..=0x1f | 0x7f, _)
            | (0xc2, [0x80..=0x9f, ..])
            | (0xd8, [0x9c, ..])
            | (0xe2, [0x80, 0x8e | 0x8f | 0xa8..=0xae, ..])
            | (0xe2, [0x81, 0xa6..=0xa9, ..])
            | (0xef, [0xbf, 0xbe | 0xbf, ..]) => true,
            _ => false,
        };
        if steers {
            return true;
        }
        rest = after;
    }
    false
}

/// JSON whose strings hold nothing that steers a terminal: the same values, written with escapes of JSON.
pub(crate) fn in_json(json: String) -> String {
    let steers = |c: char| is_unprintable(c) && c != '\n';
    // Most JSON holds none, and a look at its bytes costs a fraction of one at its characters.
    if !holds_steering(json.as_bytes()) {
        return json;
    }
    let mut out = String::with_capacity(json.len());
    for c in json.chars() {
        if steers(c) {
            // All of them are written with four digits.
            out.push_str(&format!("\\u{:04x}", u32::from(c)));
        } else {
            out.push(c);
        }
    }
    out
}

fn written_out(text: &str, kept: fn(char, &mut Peekable<Chars<'_>>) -> bool) -> Cow<'_, str> {
    if !text.contains(is_unprintable) {
        return Cow::Borrowed(text);
    }
    let mut out = String::with_capacity(text.len());
    let mut rest = text.chars().peekable();
    while let Some(c) = rest.next() {
        if is_unprintable(c) && !kept(c, &mut rest) {
            out.extend(c.escape_default());
        } else {
            out.push(c);
        }
    }
    Cow::Owned(out)
}

#[cfg(test)]
mod tests {
    use super::{holds_steering, is_unprintable};

    #[test]
    fn the_bytes_of_every_character_say_what_the_character_says() {
        for c in ('\0'..=char::MAX).filter(|c| *c != '\n') {
            let text = format!("a{c}b");
            assert_eq!(holds_steering(text.as_bytes()), is_unprintable(c), "{:x}", u32::from(c));
        }
    }
}
