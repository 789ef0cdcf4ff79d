//! What the name of an ingredient betrays of it, whatever kind it is given.

use std::borrow::Cow;

use crate::cure::Premix;

/// A part of a name, and the letters in it: most names lack one of them, and are not searched.
struct Part(&'static str, u32);

const fn part(text: &'static str) -> Part {
    Part(text, letters(text))
}

/// A bit for each letter of the English alphabet, in small, one for any digit, one for a number sign and one for
/// whatever is not ASCII.
const fn letters(text: &str) -> u32 {
    let (mut bytes, mut letters) = (text.as_bytes(), 0);
    while let [byte, rest @ ..] = bytes {
        letters |= match *byte {
            byte @ b'a'..=b'z' => 1 << byte.saturating_sub(b'a'),
            b'0'..=b'9' => 1 << 26,
            b'#' => 1 << 27,
            0x80.. => 1 << 28,
            _ => 0,
        };
        bytes = rest;
    }
    letters
}

/// What salts of nitrite and nitrate, and mixes of them, are called in the trade and on labels, in the languages of
/// those whose law is held here and some others. "Cured ham" is a food; "quick cure", and a powder by its number, are
/// not.
static CURES: [Part; 76] = [
    part("nitrit"),
    part("nitrat"),
    part("saltpet"),
    part("salt pet"),
    part("salpet"),
    part("salpêt"),
    part("salitr"),
    part("peklos"),
    part("pökel"),
    part("poekel"),
    part("curing"),
    part("tinted salt"),
    part("sal prunel"),
    part("salt prunel"),
    part("prunella"),
    part("cure "),
    part("cure,"),
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
    part("sal de cura"),
    part("sal curante"),
    part("sal nitro"),
    part("salnitr"),
    part("nps"),
    part("nitriet"),
    part("nitraat"),
    part("pekelzout"),
    part("nitriit"),
    part("salpiet"),
    part("peklow"),
    part("pekluj"),
    part("saletr"),
    part("salietr"),
    part("dusitan"),
    part("dusičnan"),
    part("ledek"),
    part("sanytr"),
    part("rychlos"),
    part("nitrīt"),
    part("nitrāt"),
    part("pácsó"),
    part("salétrom"),
    part("silitr"),
    part("azotit"),
    part("azotat"),
    part("güherçile"),
    part("нитрит"),
    part("нитрат"),
    part("нітрит"),
    part("нітрат"),
    part("селитр"),
    part("селітр"),
    part("νιτρ"),
    part("νίτρ"),
    part("硝"),
    part("질산"),
    part("muối diêm"),
    part("ดินประสิว"),
    part("ไนไตร"),
    part("ไนเตร"),
];

/// Names for the colour of a curing salt, which rock salt from the Himalayas has too.
static PINK: [Part; 2] = [part("pink salt"), part("sel ros")];

/// Whether a name speaks of nitrite or nitrate.
pub(super) fn names_a_cure(name: &str) -> bool {
    let name = small(name);
    let rock_salt = name.contains("himala");
    name.ends_with("cure") || says(&name, &CURES) || (says(&name, &PINK) && !rock_salt)
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

/// The beginnings of words for garlic where cooks write it.
const GARLIC: [&str; 9] = [
    "garlic",
    "knoblauch",
    "knoflook",
    "hvidløg",
    "hvitløk",
    "vitlök",
    "czosnek",
    "aglio",
    "ninniku",
];

/// What is dried and carries no water into oil.
static DRIED: [Part; 6] =
    [part("powder"), part("dried"), part("granul"), part("flake"), part("pulver"), part("trocken")];

/// Whether a name speaks of garlic that is not dried.
pub(super) fn names_garlic(name: &str) -> bool {
    let name = small(name);
    let mut words = name.split(|letter: char| !letter.is_alphanumeric());
    words.any(|word| GARLIC.iter().any(|garlic| word.starts_with(garlic))) && !says(&name, &DRIED)
}

/// Whether a name is that of an oil.
pub(super) fn names_an_oil(name: &str) -> bool {
    const OILS: [&str; 7] = ["oil", "huile", "aceite", "olio", "olie", "olej", "olja"];
    let name = small(name);
    let mut words = name.split(|letter: char| !letter.is_alphanumeric());
    words.any(|word| OILS.contains(&word) || word.ends_with("öl"))
}

/// A percentage in a name, and how far it may have been rounded.
pub(super) struct Percent {
    value: f64,
    off: f64,
}

impl Percent {
    /// Whether a premix holds this much of something that its label may name.
    pub(super) fn may_be_of(&self, premix: &Premix) -> bool {
        let salt = premix.salt();
        let (nitrite, nitrate) = (premix.nitrite().as_percent(), premix.nitrate().as_percent());
        [
            premix.sodium_nitrite().as_percent(),
            premix.potassium_nitrite().as_percent(),
            premix.sodium_nitrate().as_percent(),
            premix.potassium_nitrate().as_percent(),
            nitrite,
            nitrate,
            nitrite + nitrate,
        ]
        .into_iter()
        .any(|percent| percent > 0.0 && (percent - self.value).abs() <= self.off)
            || (salt.is_exact() && (salt.high().as_percent() - self.value).abs() <= self.off)
    }
}

/// Every percentage in a name, as "6.25 %", "6,25%" or "6.25 percent".
pub(super) fn percentages(name: &str) -> impl Iterator<Item = Percent> {
    let name = small(name).replace("per cent", "%").replace("percent", "%").replace("prozent", "%");
    let mut parts: Vec<_> = name.split('%').map(str::to_owned).collect();
    // What stands after the last sign is no percentage.
    parts.pop();
    parts.into_iter().filter_map(|part| {
        let number =
            part.trim_end().rsplit(|c: char| !matches!(c, '0'..='9' | '.' | ',')).next()?;
        let number = number.replace(',', ".");
        let decimals = number.split_once('.').map_or("", |(_, decimals)| decimals);
        let off = decimals.chars().fold(0.5, |off, _| off / 10.0);
        // A hair more, for what dividing by ten rounds away.
        Some(Percent { value: number.parse().ok()?, off: off * 1.000_001 })
    })
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
