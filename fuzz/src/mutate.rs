/// What is changed: documents that reach every room.
const TEMPLATES: [&str; 6] = [
    include_str!("../../examples/recipes/farm-stall-ring-sausage.toml"),
    include_str!("../../examples/recipes/pumped-bacon.toml"),
    include_str!("../seeds/recipe/immersed-ham.toml"),
    include_str!("../seeds/recipe/many-authorities.toml"),
    include_str!("../seeds/recipe/kept.toml"),
    include_str!("../seeds/recipe/accepted.toml"),
];

const UNITS: [&str; 18] = [
    "g", "kg", "mg", "oz", "lb", "tsp", "cup", "fl oz", "mL", "%", "ppm", "°F", "°C", "min", "h",
    "days", "weeks", "months",
];

/// Bytes that are used up one after the other.
struct Bytes<'a>(&'a [u8]);

impl Bytes<'_> {
    fn next(&mut self) -> Option<usize> {
        let (&first, rest) = self.0.split_first()?;
        self.0 = rest;
        Some(first.into())
    }

    /// A text whose length the next byte gives, without what would end a TOML string.
    fn text(&mut self) -> Option<String> {
        let length = self.next()? % 32;
        let (text, rest) = self.0.split_at(length.min(self.0.len()));
        self.0 = rest;
        let text = String::from_utf8_lossy(text);
        Some(text.chars().filter(|c| !c.is_control() && !matches!(c, '"' | '\\')).collect())
    }

    /// A quantity as somebody might write it.
    fn quantity(&mut self) -> Option<String> {
        let (form, a, b) = (self.next()?, self.next()?, self.next()?);
        let unit = UNITS[self.next()? % UNITS.len()];
        Some(match form % 8 {
            0 => format!("{a} {unit}"),
            1 => format!("{a}.{b} {unit}"),
            2 => format!("{a}/{b} {unit}"),
            3 => format!("{a} {b}/16 {unit}"),
            4 => format!("{a}-{b} {unit}"),
            5 => format!("{a}{b:03}{b:03} {unit}"),
            6 => format!("0.{a:09}{b:03} {unit}"),
            _ => format!("-{a} {unit}"),
        })
    }
}

/// One of the documents, changed as the bytes say: the first chooses it, then each
/// change is a byte for what is done, one or two for the line, and what it needs.
#[must_use]
pub fn mutated(bytes: &[u8]) -> String {
    let mut bytes = Bytes(bytes);
    let template = TEMPLATES[bytes.next().unwrap_or(0) % TEMPLATES.len()];
    let mut lines: Vec<String> = template.lines().map(str::to_owned).collect();
    while change(&mut lines, &mut bytes).is_some() {}
    lines.join("\n")
}

fn change(lines: &mut Vec<String>, bytes: &mut Bytes<'_>) -> Option<()> {
    let what = bytes.next()?;
    let at = bytes.next()? % lines.len().max(1);
    if lines.is_empty() || lines.len() > 400 {
        return None;
    }
    match what % 8 {
        0 | 1 => replace_string(&mut lines[at], &bytes.quantity()?),
        2 => replace_string(&mut lines[at], &bytes.text()?),
        3 => drop(lines.remove(at)),
        4 => lines.insert(at, lines[at].clone()),
        5 => {
            let other = bytes.next()? % lines.len();
            lines.swap(at, other);
        }
        // The string of another line: a word or a quantity that is read elsewhere.
        6 => {
            let other = bytes.next()? % lines.len();
            if let Some(text) = lines[other].split('"').nth(1).map(str::to_owned) {
                replace_string(&mut lines[at], &text);
            }
        }
        _ => lines.insert(at, bytes.text()?),
    }
    Some(())
}

/// Puts a text in place of the first string of a line, if there is one.
fn replace_string(line: &mut String, text: &str) {
    let Some((before, rest)) = line.split_once('"') else { return };
    let Some((_, after)) = rest.split_once('"') else { return };
    *line = format!("{before}\"{text}\"{after}");
}
