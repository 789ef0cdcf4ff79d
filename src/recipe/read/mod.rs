use toml::de::DeTable;

mod cure;
mod ingredient;
mod record;
mod step;

use super::check::rules;
use super::document::{
    Accepted, Component, Confirmed, DaysOfPacking, Instruments, Kind, Proximates, Recipe,
    Remembered,
};
use super::keys::{Fault, Faults, Keys, TOLD, Unreadable, fault, nearest, one_of};
use super::validate::{self, FEW, MANY, PIECE, inside};
use crate::authority::{Authority, Profile};
use crate::cite::Date;
use crate::cure::{Analysis, product_keys};
use crate::fat::name_keys;
use crate::finding::{Place, Placed};
use crate::food::Food;
use crate::range::{Bounds, DIVISION, Range};
use crate::units::{
    Mass, Measures, TOLERANCE, Time, read_concentration, read_concentrations, read_duration,
    read_mass, read_tolerance,
};

const RECIPE: &[&str] = &[
    "title",
    "held_to",
    "profile",
    "date",
    "measures",
    "instruments",
    "component",
    "about",
    "confirmed",
];
const INSTRUMENTS: &[&str] = &["scale", "scale_error", "thermometer"];
const COMPONENT: &[&str] = &[
    "name",
    "food",
    "raw",
    "for_infants",
    "cured_as",
    "sold_as",
    "fat_target",
    "ingredient",
    "cure",
    "finished",
    "analysis",
    "step",
    "record",
    "cooling",
    "recorded_in",
    "lethality",
    "piece",
    "made_on",
    "packed_on",
    "accept",
];
const ACCEPT: &[&str] = &["rule", "reason"];
const CONFIRMED: &[&str] = &["row", "printed", "document", "place", "on"];
/// The largest document that is read, in bytes. A recipe of a thousand steps is a
/// twentieth of it.
pub const LARGEST: usize = 4 << 20;

/// The most readings: as many as a document can hold.
const READINGS: usize = LARGEST;

impl<'a> Recipe<'a> {
    /// Reads a recipe document.
    ///
    /// # Errors
    /// [`Unreadable`], with every fault that was found and its place, the first hundred of them: text that is not
    /// TOML, lists of thousands, unknown or missing keys, quantities that could be read in two ways, and
    /// values out of range.
    pub fn read(text: &'a str) -> Result<Self, Unreadable> {
        let mut faults = Faults::new();
        if text.len() > LARGEST {
            let message =
                format!("the document has {} bytes; {LARGEST} are read at most", text.len());
            fault(&mut faults, Place::default(), message);
            return Err(Unreadable { faults });
        }
        let table = match DeTable::parse(text) {
            Ok(table) => table,
            Err(error) => {
                let place = error.span().map_or_else(Place::default, Place::from);
                fault(&mut faults, place, format!("this is not TOML: {}", error.message()));
                return Err(Unreadable { faults });
            }
        };
        let keys = Keys::new(text, table.get_ref(), 0..0, RECIPE, &mut faults);
        let recipe = recipe(&keys, &mut faults);
        if faults.is_empty() {
            Ok(recipe)
        } else {
            faults.sort_by_key(|fault| fault.place.start);
            let more = faults.len().saturating_sub(TOLD);
            faults.truncate(TOLD);
            if more > 0 {
                let place = faults.last().map_or_else(Place::default, |last| last.place);
                fault(&mut faults, place, format!("and {more} more faults after this one"));
            }
            Err(Unreadable { faults })
        }
    }
}

fn recipe<'i>(keys: &Keys<'_, 'i>, faults: &mut Faults) -> Recipe<'i> {
    let title = keys.required_name("title", faults);
    keys.name("about", faults);
    let measures = measures(keys, faults);
    let instruments = keys.table("instruments", INSTRUMENTS, faults);
    let components = keys.items("component", MANY, faults);
    if components.is_empty() {
        fault(faults, keys.place, validate::NO_COMPONENT);
    }
    let date = date(keys, "date", faults);
    let components: Vec<_> = components
        .iter()
        .filter_map(|value| {
            let keys = keys.table_of(value, "component", COMPONENT, faults)?;
            Some(component(&keys, measures, date, faults))
        })
        .collect();
    for (n, component) in components.iter().enumerate() {
        if components.iter().take(n).any(|other| other.name == component.name) {
            fault(faults, component.place, validate::SAME_NAME);
        }
    }
    let profile = keys.word("profile", &Profile::ALL, |profile| profile.key, faults);
    Recipe {
        title,
        held_to: held_to(keys, profile.as_ref(), faults),
        profile,
        date,
        measures,
        instruments: instruments
            .map_or_else(Instruments::default, |keys| self::instruments(&keys, faults)),
        components,
        confirmed: confirmed(keys, faults),
    }
}

fn confirmed<'i>(keys: &Keys<'_, 'i>, faults: &mut Faults) -> Vec<Confirmed<'i>> {
    let tables = tables(keys, "confirmed", CONFIRMED, FEW, faults);
    let rows: Vec<_> = tables.iter().filter_map(|keys| confirmed_row(keys, faults)).collect();
    for (n, confirmed) in rows.iter().enumerate() {
        if rows.iter().take(n).any(|other| other.row == confirmed.row) {
            fault(faults, confirmed.place, validate::CONFIRMED_TWICE);
        }
    }
    rows
}

/// The tables of a list.
fn tables<'d, 'i>(
    keys: &Keys<'d, 'i>,
    key: &str,
    known: &'static [&'static str],
    most: usize,
    faults: &mut Faults,
) -> Vec<Keys<'d, 'i>> {
    let items = keys.items(key, most, faults).iter();
    items.filter_map(|value| keys.table_of(value, key, known, faults)).collect()
}

/// A row that its reader confirms. What it prints is repeated, so that somebody looked.
fn confirmed_row<'i>(keys: &Keys<'_, 'i>, faults: &mut Faults) -> Option<Confirmed<'i>> {
    let document = keys.required_name("document", faults);
    let at = keys.required_name("place", faults);
    let (row, printed) = (keys.required_text("row", faults), keys.required_text("printed", faults));
    let on = date(keys, "on", faults);
    if keys.value("on").is_none() {
        fault(faults, keys.place, "`on` is missing: on which day was the row read?");
    }
    let row = row.and_then(|named| {
        let path = |row: &Remembered| format!("{}/{}", row.table, row.key);
        let found = Remembered::all().iter().find(|row| path(row) == named.text);
        if found.is_none() {
            let paths: Vec<_> = Remembered::all().iter().map(path).collect();
            let near = nearest(named.text, paths.iter().map(String::as_str));
            faults.push(Fault {
                message: "`row` is a row from memory, and there is none of this name".to_owned(),
                help: Some(match near {
                    Some(near) => format!("did you mean `{near}`?"),
                    None => "a finding that rests on one names it".to_owned(),
                }),
                place: named.place,
            });
        }
        found
    });
    if let (Some(row), Some(printed)) = (row, printed) {
        let words = |text: &str| text.split_whitespace().collect::<Vec<_>>().join(" ");
        if words(printed.text) != words(row.printed) {
            faults.push(Fault {
                message: format!("`printed` is not what the row says: \"{}\"", row.printed),
                help: Some(
                    "repeat it where your document prints the same; where it prints another figure, do not \
                     confirm the row"
                        .to_owned(),
                ),
                place: printed.place,
            });
            return None;
        }
    }
    Some(Confirmed { row: row?, document, at, on: on?, place: keys.place })
}

fn held_to(keys: &Keys<'_, '_>, profile: Option<&Profile>, faults: &mut Faults) -> Vec<Authority> {
    let mut authorities = profile.map_or_else(Vec::new, |profile| profile.authorities.to_vec());
    let items = keys.items("held_to", FEW, faults);
    for value in items {
        let Some(text) = keys.text_of(value, "held_to", faults) else { continue };
        let authority = one_of(text, "held_to", &Authority::ALL, Authority::key, faults);
        if let Some(authority) = authority.filter(|authority| !authorities.contains(authority)) {
            authorities.push(authority);
        }
    }
    if items.is_empty() && keys.value("profile").is_none() {
        let known: Vec<_> = Authority::ALL.into_iter().map(Authority::key).collect();
        faults.push(Fault {
            message: validate::HELD_TO_NOBODY.to_owned(),
            help: Some(format!(
                "write held_to = [\"us-consumer\"], or a kitchen as profile = \"us/home\"; known: {}",
                known.join(", ")
            )),
            place: keys.place,
        });
    }
    authorities
}

fn measures(keys: &Keys<'_, '_>, faults: &mut Faults) -> Option<Measures> {
    let text = keys.text("measures", faults)?;
    let measures = Measures::from_name(text.text);
    if measures.is_none() {
        faults.push(Fault {
            message: "`measures` says whose cups and spoons these are".to_owned(),
            help: Some("it is one of US, metric, Imperial, Australian".to_owned()),
            place: text.place,
        });
    }
    measures
}

fn date(keys: &Keys<'_, '_>, key: &str, faults: &mut Faults) -> Option<Date> {
    let value = keys.value(key)?;
    let place = value.span().into();
    let Some(date) = value
        .get_ref()
        .as_datetime()
        .filter(|datetime| datetime.time.is_none())
        .and_then(|datetime| datetime.date)
    else {
        let message = format!("`{key}` is a day without quotes, as in {key} = 2026-01-31");
        fault(faults, place, message);
        return None;
    };
    match Date::new(date.year, date.month, date.day) {
        Ok(date) => Some(date),
        Err(error) => {
            fault(faults, place, error.to_string());
            None
        }
    }
}

fn refuse_packing_day(component: &Component<'_>, keys: &Keys<'_, '_>, faults: &mut Faults) {
    let Some(packed) = component.packed_on else { return };
    let place = keys.value("packed_on").map_or(keys.place, |value| value.span().into());
    match component.days_of_packing() {
        None => fault(faults, place, validate::MADE_ON),
        Some(days) if days.hold(packed) => {}
        Some(DaysOfPacking { made, end }) => {
            let allowed = match end {
                Some(end) => {
                    format!("a day from {made}, when it is made, to {end}, when its steps end")
                }
                None => format!("{made}, when it is made, or a later day"),
            };
            fault(faults, place, format!("`packed_on` is {packed}: write {allowed}"));
        }
    }
}

/// A weight in bounds.
fn mass(keys: &Keys<'_, '_>, key: &str, bounds: &Bounds, faults: &mut Faults) -> Option<Mass> {
    keys.bounded(key, read_mass, |mass| inside(bounds, mass.value), faults)
}

/// A length of time with its place.
fn duration(keys: &Keys<'_, '_>, key: &str, faults: &mut Faults) -> Option<Placed<Range<Time>>> {
    let value = keys.bounded(key, read_duration, validate::lasts, faults)?;
    let place = keys.value(key).map_or(keys.place, |value| value.span().into());
    Some(Placed { value, place })
}

fn instruments(keys: &Keys<'_, '_>, faults: &mut Faults) -> Instruments {
    Instruments {
        scale: mass(keys, "scale", &DIVISION, faults),
        scale_error: mass(keys, "scale_error", &DIVISION, faults),
        thermometer: keys.bounded(
            "thermometer",
            read_tolerance,
            |tolerance| inside(&TOLERANCE, tolerance.value),
            faults,
        ),
    }
}

fn component<'i>(
    keys: &Keys<'_, 'i>,
    measures: Option<Measures>,
    date: Option<Date>,
    faults: &mut Faults,
) -> Component<'i> {
    let name = keys.required_name("name", faults);
    let asks = "what class of food is it?";
    let food = keys.required_word("food", asks, &Food::ALL, Food::key, faults);
    let ingredients = tables(keys, "ingredient", ingredient::INGREDIENT, MANY, faults);
    let steps = tables(keys, "step", step::STEP, MANY, faults);
    let readings = tables(keys, "record", record::RECORD, READINGS, faults);
    let cooling = tables(keys, "cooling", record::RECORD, READINGS, faults);
    let aims = tables(keys, "lethality", record::LETHALITY, FEW, faults);
    let accepted = tables(keys, "accept", ACCEPT, FEW, faults);
    let ingredients: Vec<_> =
        ingredients.iter().map(|keys| ingredient::ingredient(keys, measures, faults)).collect();
    let holds_meat = food.is_none_or(validate::holds_meat);
    for meat in ingredients.iter().filter(|i| i.kind == Kind::Meat && !holds_meat) {
        fault(faults, meat.place, validate::NO_MEAT);
    }
    for belly in ingredients.iter().filter(|i| i.skin_on.is_some()) {
        if food.is_some_and(|food| food != Food::Bacon) || belly.kind != Kind::Meat {
            fault(faults, belly.place, validate::SKIN);
        }
    }
    let steps: Vec<_> = steps.iter().filter_map(|keys| step::step(keys, date, faults)).collect();
    let raw = keys.yes("raw", faults).unwrap_or(false);
    if let Some((_, to)) = validate::cooked_to(&steps).filter(|_| raw) {
        fault(faults, to.place, validate::RAW);
    }
    let analysed = keys.table("analysis", cure::ANALYSIS, faults);
    let component = Component {
        name,
        // Without a class the recipe is not returned, only its faults.
        food: food.unwrap_or(Food::Sauce),
        raw,
        for_infants: keys.yes("for_infants", faults).unwrap_or(false),
        ingredients,
        cured_as: products(keys, "cured_as", product_keys, "curing", faults),
        cure: keys.table("cure", cure::CURE, faults).map(|keys| cure::cure(&keys, faults)),
        finished: mass(keys, "finished", &PIECE, faults),
        analysis: analysed
            .as_ref()
            .map_or_else(Analysis::default, |keys| cure::analysis(keys, faults)),
        proximates: analysed
            .as_ref()
            .map_or_else(Proximates::default, |keys| cure::proximates(keys, faults)),
        sold_as: products(keys, "sold_as", name_keys, "composition", faults),
        fat_target: keys.placed("fat_target", read_concentrations, faults).map(|target| {
            let percent = |ppm: f64| ppm / 1e4;
            let (low, high) = (percent(target.value.low()), percent(target.value.high()));
            Placed { value: Range::ordered(low, high), place: target.place }
        }),
        steps,
        record: record::record(&readings, faults),
        chamber: Vec::new(),
        cooling: record::record(&cooling, faults),
        cooling_logged: false,
        aims: aims.iter().filter_map(|keys| record::aim(keys, faults)).collect(),
        recorded_in: keys
            .table("recorded_in", record::RECORDED_IN, faults)
            .and_then(|keys| record::recorded_in(&keys, faults)),
        piece: mass(keys, "piece", &PIECE, faults),
        made_on: self::date(keys, "made_on", faults),
        packed_on: self::date(keys, "packed_on", faults),
        accepted: accepted.iter().filter_map(|keys| self::accepted(keys, faults)).collect(),
        place: keys.place,
    };
    refuse_packing_day(&component, keys, faults);
    component
}

fn accepted<'i>(keys: &Keys<'_, 'i>, faults: &mut Faults) -> Option<Accepted<'i>> {
    let reason = keys.required_name("reason", faults);
    let rule = keys.required_text("rule", faults)?;
    let found = rules().find(|known| known.id == rule.text);
    if found.is_none() {
        let near = nearest(rule.text, rules().map(|known| known.id));
        let help = near.map_or("`greenweight rules` lists them all".to_owned(), |near| {
            format!("did you mean `{near}`?")
        });
        faults.push(Fault {
            message: "`rule` is the identity of a rule, and there is none of this name".to_owned(),
            help: Some(help),
            place: rule.place,
        });
    }
    Some(Accepted { rule: found?, reason, place: keys.place })
}

/// The products that a key names, out of those of a table.
fn products<I: Iterator<Item = &'static str>>(
    keys: &Keys<'_, '_>,
    key: &str,
    known: fn() -> I,
    table: &str,
    faults: &mut Faults,
) -> Vec<&'static str> {
    let mut products = Vec::new();
    for value in keys.items(key, FEW, faults) {
        let Some(text) = keys.text_of(value, key, faults) else { continue };
        match known().find(|&name| name == text.text) {
            Some(name) => products.push(name),
            None => {
                let near = nearest(text.text, known());
                faults.push(Fault {
                    message: format!(
                        "`{key}` names a product of a {table} table, and there is none of this name"
                    ),
                    help: Some(match near {
                        Some(near) => format!("did you mean `{near}`?"),
                        None => "references/README.md lists the tables".to_owned(),
                    }),
                    place: text.place,
                });
            }
        }
    }
    products
}

/// A share, in percent.
fn percent(keys: &Keys<'_, '_>, key: &str, faults: &mut Faults) -> Option<f64> {
    keys.quantity(key, read_concentration, faults).map(|ppm| ppm / 1e4)
}
