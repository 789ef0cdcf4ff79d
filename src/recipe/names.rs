//! What the name of an ingredient betrays of it, whatever kind it is given.

use std::borrow::Cow;

/// A part of a name, and the letters in it: most names lack one of them, and are not searched.
struct Part(&'static str, u32);

const fn part(text: &'static str) -> Part {
    Part(text, letters(text))
}

/// A bit for each letter of the English alphabet, in small, one for any digit and one for a number sign.
const fn letters(text: &str) -> u32 {
    let (mut bytes, mut letters) = (text.as_bytes(), 0);
    while let [byte, rest @ ..] = bytes {
        letters |= match *byte {
            byte @ b'a'..=b'z' => 1 << byte.saturating_sub(b'a'),
            b'0'..=b'9' => 1 << 26,
            b'#' => 1 << 27,
            _ => 0,
        };
        bytes = rest;
    }
    letters
}

/// What salts of nitrite and nitrate, and mixes of them, are called in the trade and on labels. "Cured ham" is a
/// food; "quick cure", and a powder by its number, are not.
static CURES: [Part; 30] = [
    part("nitrit"),
    part("nitrat"),
    part("saltpet"),
    part("salpet"),
    part("salpêt"),
    part("salitre"),
    part("peklos"),
    part("pökel"),
    part("poekel"),
    part("curing"),
    part("pink salt"),
    part("cure "),
    part("#1"),
    part("#2"),
    part("# 1"),
    part("# 2"),
    part("no 1"),
    part("no 2"),
    part("no. 1"),
    part("no. 2"),
    part("nr. 1"),
    part("nr. 2"),
    part("e249"),
    part("e250"),
    part("e251"),
    part("e252"),
    part("e 249"),
    part("e 250"),
    part("e 251"),
    part("e 252"),
];

/// Whether a name speaks of nitrite or nitrate.
pub(super) fn names_a_cure(name: &str) -> bool {
    let name = small(name);
    name.ends_with("cure") || says(&name, &CURES)
}

/// The beginnings of the names of plants that take up much nitrate.
const PLANTS: [&str; 11] = [
    "celer",
    "chard",
    "vegetable",
    "beet",
    "spinach",
    "lettuce",
    "rocket",
    "arugula",
    "rucola",
    "parsley",
    "mangold",
];

/// What is made of them where they cure: chopped, they season.
static FORMS: [Part; 6] = [
    part("powder"),
    part("juice"),
    part("ferment"),
    part("cultured"),
    part("extract"),
    part("concentrate"),
];

/// Whether a name speaks of a plant that brings nitrite or nitrate.
pub(super) fn names_a_juice(name: &str) -> bool {
    let name = small(name);
    let mut words = name.split(|letter: char| !letter.is_alphanumeric());
    says(&name, &FORMS) && words.any(|word| PLANTS.iter().any(|plant| word.starts_with(plant)))
}

/// The name in small letters; most are.
fn small(name: &str) -> Cow<'_, str> {
    let is_small = |byte: u8| byte.is_ascii() && !byte.is_ascii_uppercase();
    if name.bytes().all(is_small) { Cow::Borrowed(name) } else { Cow::Owned(name.to_lowercase()) }
}

fn says(name: &str, parts: &[Part]) -> bool {
    let there = letters(name);
    let has = |Part(text, letters): &Part| there & letters == *letters && name.contains(text);
    parts.iter().any(has)
}
