use toml::Spanned;
use toml::de::{DeTable, DeValue};

use super::check::RULES;
use super::document::{
    Accepted, Animal, Component, CurePlan, Ingredient, Instruments, Kind, Proximates, Recipe,
    RecordFile, Step, StepKind,
};
use super::keys::{Fault, Faults, Keys, TOLD, Unreadable, fault, nearest, one_of};
use crate::authority::{Authority, Profile};
use crate::cite::Date;
use crate::cook::{Aim, Moisture, Resistance, air};
use crate::cure::{
    Analysis, Level, Method, Premix, Pump, SodiumNitrate, SodiumNitrite, product_keys,
};
use crate::fat::name_keys;
use crate::finding::{Place, Placed, Rule};
use crate::food::Food;
use crate::range::{Bounds, OutOfRange, Range, bounds};
use crate::store::{Thawing, chart_keys, chart_row};
use crate::trace::{Point, TimeColumn};
use crate::units::{
    Amount, Measures, Scale, read_amount, read_concentration, read_concentrations, read_duration,
    read_liquid_amount, read_mass, read_temperature, read_tolerance,
};

bounds! {
    SCALE: "scale division", "kg", 1e-9, 1e3;
    TOLERANCE: "thermometer tolerance", "K", 0.0, 50.0;
    WEIGHT: "amount", "kg", 0.0, 1e6;
    PREMIX: "amount of curing premix", "kg", 1e-9, 1e6;
    ACTIVITY: "water activity", "", 0.0, 1.0;
    PH: "pH", "", 0.0, 14.0;
    LOGS: "reduction", "log", 0.0, 100.0;
    PUMP: "pump or pick-up", "mg/kg", 1e3, 1e6;
}

const RECIPE: &[&str] =
    &["title", "held_to", "profile", "date", "measures", "instruments", "component", "about"];
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
const INGREDIENT: &[&str] = &[
    "name",
    "kind",
    "amount",
    "scale",
    "from",
    "strength",
    "fat",
    "fat_error",
    "skin",
    "hydrated",
    "part",
    "liquid",
];
const STRENGTH: &[&str] =
    &["sodium-nitrite", "potassium-nitrite", "sodium-nitrate", "potassium-nitrate", "salt"];
const CURE: &[&str] = &[
    "method",
    "pump",
    "pick_up",
    "equilibrium",
    "sugar",
    "culture",
    "at",
    "for",
    "ingoing_nitrite",
];
const ANALYSIS: &[&str] = &[
    "nitrite",
    "nitrate",
    "as",
    "fat",
    "moisture",
    "protein",
    "other_protein",
    "salt",
    "water_activity",
    "ph",
];
const STEP: &[&str] = &[
    "do", "at", "for", "to", "hold", "come_up", "humidity", "wet_bulb", "moisture", "ph", "like",
    "vacuum", "how",
];
const RECORD: &[&str] = &["after", "inside"];
const RECORDED_IN: &[&str] = &["file", "time", "written", "inside", "scale", "chamber"];
const ACCEPT: &[&str] = &["rule", "reason"];
const LETHALITY: &[&str] = &["d", "at", "z", "counted_from", "logs"];

/// The largest document that is read, in bytes. A recipe of a thousand steps is a
/// twentieth of it.
pub const LARGEST: usize = 4 << 20;

/// The most components of a document, and ingredients or steps of a component: what is compared pair by pair
/// stays short.
const MANY: usize = 1000;

/// The most of what is short in any kitchen: authorities, names, probes, lethalities, accepted rules.
const FEW: usize = 100;

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
        fault(faults, keys.place, "there is no [[component]]: a recipe makes at least one thing");
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
            fault(
                faults,
                component.place,
                "two components have this name: a report could not tell them apart",
            );
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
    }
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
            message: "`held_to` is missing: whose rules is the recipe held against?".to_owned(),
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

fn packed_on(keys: &Keys<'_, '_>, faults: &mut Faults) -> Option<Date> {
    let packed = date(keys, "packed_on", faults)?;
    let place = keys.value("packed_on").map_or(keys.place, |value| value.span().into());
    match date(keys, "made_on", &mut Faults::new()) {
        None => {
            fault(faults, place, "`packed_on` needs `made_on` beside it: its days count from there")
        }
        Some(made) if packed < made => fault(faults, place, "it is packed before it is made"),
        Some(_) => {}
    }
    Some(packed)
}

fn inside(bounds: &Bounds, value: f64) -> Result<(), OutOfRange> {
    bounds.check(value).map(|_| ())
}

fn instruments(keys: &Keys<'_, '_>, faults: &mut Faults) -> Instruments {
    Instruments {
        scale: keys.bounded("scale", read_mass, |mass| inside(&SCALE, mass.value), faults),
        scale_error: keys.bounded(
            "scale_error",
            read_mass,
            |mass| inside(&SCALE, mass.value),
            faults,
        ),
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
    let food = keys.word("food", &Food::ALL, Food::key, faults);
    if keys.value("food").is_none() {
        let known: Vec<_> = Food::ALL.into_iter().map(Food::key).collect();
        faults.push(Fault {
            message: "`food` is missing: what class of food is it?".to_owned(),
            help: Some(format!("it is one of {}", known.join(", "))),
            place: keys.place,
        });
    }
    let each = |key: &'static str, known, most, faults: &mut Faults| {
        let items: &[Spanned<DeValue<'i>>] = keys.items(key, most, faults);
        items
            .iter()
            .filter_map(|value| keys.table_of(value, key, known, faults))
            .collect::<Vec<_>>()
    };
    let ingredients = each("ingredient", INGREDIENT, MANY, faults);
    let steps = each("step", STEP, MANY, faults);
    let record = each("record", RECORD, READINGS, faults);
    let cooling = each("cooling", RECORD, READINGS, faults);
    let aims = each("lethality", LETHALITY, FEW, faults);
    let accepted = each("accept", ACCEPT, FEW, faults);
    let ingredients: Vec<_> =
        ingredients.iter().map(|keys| ingredient(keys, measures, faults)).collect();
    let holds_meat = food
        .is_none_or(|food| food.is_meat() || matches!(food, Food::Casseroles | Food::Leftovers));
    for meat in ingredients.iter().filter(|i| i.kind == Kind::Meat && !holds_meat) {
        let message =
            "an ingredient of kind \"meat\" in a food that holds none: what class of food is it?";
        fault(faults, meat.place, message);
    }
    for belly in ingredients.iter().filter(|i| i.skin_on.is_some()) {
        if food.is_some_and(|food| food != Food::Bacon) || belly.kind != Kind::Meat {
            fault(
                faults,
                belly.place,
                "`skin` belongs to the meat of a component whose food is bacon",
            );
        }
    }
    let steps: Vec<_> = steps.iter().filter_map(|keys| step(keys, date, faults)).collect();
    let raw = keys.yes("raw", faults).unwrap_or(false);
    if let Some(to) = steps.iter().filter(|step| step.kind.heats()).find_map(|step| step.to)
        && raw
    {
        let message =
            "what is sold raw is not cooked to an inside temperature: drop `raw`, or this `to`";
        fault(faults, to.place, message);
    }
    let analysed = keys.table("analysis", ANALYSIS, faults);
    Component {
        name,
        // Without a class the recipe is not returned, only its faults.
        food: food.unwrap_or(Food::Sauce),
        raw,
        for_infants: keys.yes("for_infants", faults).unwrap_or(false),
        ingredients,
        cured_as: products(keys, "cured_as", product_keys, "curing", faults),
        cure: keys.table("cure", CURE, faults).map(|keys| cure(&keys, faults)),
        finished: keys.bounded("finished", read_mass, |mass| inside(&WEIGHT, mass.value), faults),
        analysis: analysed.as_ref().map_or_else(Analysis::default, |keys| analysis(keys, faults)),
        proximates: analysed
            .as_ref()
            .map_or_else(Proximates::default, |keys| proximates(keys, faults)),
        sold_as: products(keys, "sold_as", name_keys, "composition", faults),
        fat_target: keys.placed("fat_target", read_concentrations, faults).map(|target| {
            let percent = |ppm: f64| ppm / 1e4;
            let (low, high) = (percent(target.value.low()), percent(target.value.high()));
            Placed { value: Range::ordered(low, high), place: target.place }
        }),
        steps,
        record: self::record(&record, faults),
        chamber: Vec::new(),
        cooling: self::record(&cooling, faults),
        aims: aims.iter().filter_map(|keys| aim(keys, faults)).collect(),
        recorded_in: keys
            .table("recorded_in", RECORDED_IN, faults)
            .and_then(|keys| recorded_in(&keys, faults)),
        piece: keys.bounded("piece", read_mass, |mass| inside(&WEIGHT, mass.value), faults),
        made_on: self::date(keys, "made_on", faults),
        packed_on: packed_on(keys, faults),
        accepted: accepted.iter().filter_map(|keys| self::accepted(keys, faults)).collect(),
        place: keys.place,
    }
}

fn accepted<'i>(keys: &Keys<'_, 'i>, faults: &mut Faults) -> Option<Accepted<'i>> {
    let reason = keys.required_name("reason", faults);
    keys.required_name("rule", faults);
    let rule = keys.text("rule", faults)?;
    static EVERY: [&[Rule]; 10] = RULES;
    let all = || EVERY.iter().flat_map(|room| room.iter());
    let found = all().find(|known| known.id == rule.text);
    if found.is_none() {
        let near = if rule.text.len() > 64 {
            None
        } else {
            nearest(rule.text, all().map(|known| known.id))
        };
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

fn analysis(keys: &Keys<'_, '_>, faults: &mut Faults) -> Analysis {
    let ions = keys.word("as", &["ions", "sodium-salts"], |word| word, faults);
    let agents = ["nitrite", "nitrate"].iter().any(|key| keys.value(key).is_some());
    if keys.value("as").is_none() && agents {
        faults.push(Fault {
            message: "`as` is missing: as what does the laboratory count its figures?".to_owned(),
            help: Some("it is \"ions\" (NO2, NO3) or \"sodium-salts\" (NaNO2, NaNO3)".to_owned()),
            place: keys.place,
        });
    }
    let mut level = |key| keys.quantity(key, read_concentration, faults);
    let (nitrite, nitrate) = (level("nitrite"), level("nitrate"));
    if ions == Some("ions") {
        return Analysis {
            nitrite: nitrite.and_then(|level| Level::new(level).ok()),
            nitrate: nitrate.and_then(|level| Level::new(level).ok()),
        };
    }
    let nitrite = nitrite.and_then(|level| Level::<SodiumNitrite, _>::new(level).ok());
    let nitrate = nitrate.and_then(|level| Level::<SodiumNitrate, _>::new(level).ok());
    Analysis {
        nitrite: nitrite.map(Level::<SodiumNitrite, _>::as_nitrite_ion),
        nitrate: nitrate.map(Level::<SodiumNitrate, _>::as_nitrate_ion),
    }
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
                let near = if text.text.len() > 64 { None } else { nearest(text.text, known()) };
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

fn ingredient<'i>(
    keys: &Keys<'_, 'i>,
    measures: Option<Measures>,
    faults: &mut Faults,
) -> Ingredient<'i> {
    let kind = keys.word("kind", &Kind::ALL, Kind::key, faults);
    if keys.value("kind").is_none() {
        let known: Vec<_> = Kind::ALL.into_iter().map(Kind::key).collect();
        faults.push(Fault {
            message: "`kind` is missing: what is this ingredient?".to_owned(),
            help: Some(format!("it is one of {}", known.join(", "))),
            place: keys.place,
        });
    }
    let kind = kind.unwrap_or(Kind::Other);
    let name = keys.required_name("name", faults);
    if kind != Kind::CuringPremix && names_a_cure(&name) {
        let place = keys.value("name").map_or(keys.place, |value| value.span().into());
        fault(
            faults,
            place,
            "this is named like something that cures: its kind is \"curing-premix\"",
        );
    }
    let liquid = keys.yes("liquid", faults).unwrap_or(kind == Kind::Water);
    let amount = keys.bounded(
        "amount",
        |text| {
            if liquid { read_liquid_amount(text, measures) } else { read_amount(text, measures) }
        },
        |amount| match amount {
            Amount::Weighed(mass) if kind == Kind::CuringPremix => inside(&PREMIX, mass.value),
            Amount::Weighed(mass) => inside(&WEIGHT, mass.value),
            Amount::ByVolume(_) => Ok(()),
        },
        faults,
    );
    if keys.value("part").is_some() {
        keys.word("part", &["pickle"], |part| part, faults);
    }
    if keys.value("strength").is_some() && kind != Kind::CuringPremix {
        let place = keys.value("strength").map_or(keys.place, |value| value.span().into());
        fault(faults, place, "`strength` belongs to an ingredient of kind \"curing-premix\"");
    }
    Ingredient {
        name,
        kind,
        amount,
        place: keys.value("amount").map_or(keys.place, |value| value.span().into()),
        scale: keys.bounded("scale", read_mass, |mass| inside(&SCALE, mass.value), faults),
        from: keys.word("from", &Animal::ALL, Animal::key, faults),
        strength: keys.table("strength", STRENGTH, faults).and_then(|keys| strength(&keys, faults)),
        fat: percent(keys, "fat", faults),
        fat_error: percent(keys, "fat_error", faults),
        skin_on: keys.yes("skin", faults),
        hydrated: hydrated(keys, kind, faults),
        in_pickle: keys.value("part").is_some(),
    }
}

/// A share, in percent.
fn percent(keys: &Keys<'_, '_>, key: &str, faults: &mut Faults) -> Option<f64> {
    keys.quantity(key, read_concentration, faults).map(|ppm| ppm / 1e4)
}

fn proximates(keys: &Keys<'_, '_>, faults: &mut Faults) -> Proximates {
    Proximates {
        fat: percent(keys, "fat", faults),
        moisture: percent(keys, "moisture", faults),
        protein: percent(keys, "protein", faults),
        other_protein: percent(keys, "other_protein", faults),
        salt: percent(keys, "salt", faults),
        water_activity: keys.plain_number("water_activity", &ACTIVITY, faults),
        ph: keys.plain_number("ph", &PH, faults),
    }
}

fn hydrated(keys: &Keys<'_, '_>, kind: Kind, faults: &mut Faults) -> bool {
    let hydrated = keys.yes("hydrated", faults).unwrap_or(false);
    let salt = matches!(kind.key(), "sodium-ascorbate" | "sodium-erythorbate");
    if hydrated && !salt {
        let place = keys.value("hydrated").map_or(keys.place, |value| value.span().into());
        let message = "`hydrated` belongs to an ingredient of kind \"sodium-ascorbate\" or \"sodium-erythorbate\"";
        fault(faults, place, message);
    }
    hydrated
}

/// Whether a name speaks of nitrite or nitrate.
fn names_a_cure(name: &str) -> bool {
    let name = name.to_lowercase();
    ["nitrite", "nitrate", "saltpet", "curing salt", "pink salt"]
        .iter()
        .any(|word| name.contains(word))
}

fn strength(keys: &Keys<'_, '_>, faults: &mut Faults) -> Option<Premix> {
    let before = faults.len();
    let mut level = |key| keys.quantity(key, read_concentration, faults).unwrap_or(0.0);
    let levels = [
        level("sodium-nitrite"),
        level("potassium-nitrite"),
        level("sodium-nitrate"),
        level("potassium-nitrate"),
    ];
    let [na2, k2, na3, k3] = levels;
    let salt = keys.quantity("salt", read_concentration, faults);
    if faults.len() > before {
        return None;
    }
    if levels.iter().all(|&level| level <= 0.0) {
        let message = "a curing premix holds nitrite or nitrate: name what the label names";
        fault(faults, keys.place, message);
        return None;
    }
    let premix = || {
        let premix = Premix::new()
            .with_sodium_nitrite(Level::new(na2)?)?
            .with_potassium_nitrite(Level::new(k2)?)?
            .with_sodium_nitrate(Level::new(na3)?)?
            .with_potassium_nitrate(Level::new(k3)?)?;
        match salt {
            Some(salt) => premix.with_salt(Level::new(salt)?),
            None => Ok(premix),
        }
    };
    match premix() {
        Ok(premix) => Some(premix),
        Err(error) => {
            fault(faults, keys.place, error.to_string());
            None
        }
    }
}

fn cure(keys: &Keys<'_, '_>, faults: &mut Faults) -> CurePlan {
    let method = keys.word("method", &Method::ALL, Method::key, faults);
    let mut fraction = |key, of: Method| {
        let both = |pump: &Range<f64>| {
            inside(&PUMP, pump.low())?;
            inside(&PUMP, pump.high())
        };
        let pump = keys.bounded(key, read_concentrations, both, faults)?;
        if method.is_some_and(|method| method != of) {
            let place = keys.value(key).map_or(keys.place, |value| value.span().into());
            let message = format!("`{key}` belongs to a cure of method \"{}\"", of.key());
            fault(faults, place, message);
        }
        let fraction = |level: f64| Pump::new(level / 1e6).ok();
        Range::new(fraction(pump.low())?, fraction(pump.high())?).ok()
    };
    let pump = fraction("pump", Method::Pumped);
    let pick_up = fraction("pick_up", Method::Immersion);
    CurePlan {
        method,
        taken_up: pump.or(pick_up),
        equilibrium: keys.yes("equilibrium", faults),
        sugar_percent: keys.quantity("sugar", read_concentration, faults).map(|ppm| ppm / 1e4),
        culture: keys.yes("culture", faults),
        claimed: keys.placed("ingoing_nitrite", read_concentration, faults),
        at: keys.placed("at", read_temperature, faults),
        time: keys.placed("for", read_duration, faults),
        place: keys.place,
    }
}

fn step(keys: &Keys<'_, '_>, date: Option<Date>, faults: &mut Faults) -> Option<Step> {
    let kind = keys.word("do", &StepKind::ALL, StepKind::key, faults);
    if keys.value("do").is_none() {
        let known: Vec<_> = StepKind::ALL.into_iter().map(StepKind::key).collect();
        faults.push(Fault {
            message: "`do` is missing: what is done in this step?".to_owned(),
            help: Some(format!("it is one of {}", known.join(", "))),
            place: keys.place,
        });
    }
    let like = keys.text("like", faults).and_then(|text| {
        let row = chart_row(text.text, date);
        if row.is_none() {
            let near = if text.text.len() > 64 { None } else { nearest(text.text, chart_keys()) };
            faults.push(Fault {
                message: "`like` names a row of the storage chart, and on the day of the recipe there is none of this name"
                    .to_owned(),
                help: Some(match near {
                    Some(near) => format!("did you mean `{near}`?"),
                    None => "references/pages/store/cold-food.md lists the rows".to_owned(),
                }),
                place: text.place,
            });
        }
        row
    });
    let step = Step {
        kind: kind?,
        at: keys.placed("at", read_temperature, faults),
        time: keys.placed("for", read_duration, faults),
        to: keys.placed("to", read_temperature, faults),
        hold: keys.placed("hold", read_duration, faults),
        humidity: humidity(keys, faults),
        moisture: keys.word("moisture", &Moisture::ALL, Moisture::key, faults),
        ph: keys.plain_number("ph", &PH, faults),
        come_up: keys.placed("come_up", read_duration, faults),
        like,
        vacuum: keys.yes("vacuum", faults).unwrap_or(false),
        how: keys.word("how", &Thawing::ALL, Thawing::key, faults),
        place: keys.place,
    };
    refuse_misplaced(keys, step.kind, faults);
    if let (Some(at), Some(to)) = (step.at, step.to)
        && step.kind.heats()
        && at.value < to.value
    {
        fault(
            faults,
            to.place,
            "the inside cannot get hotter than what is around it: `to` is above `at`",
        );
    }
    Some(step)
}

const HEATS: &[StepKind] = &[StepKind::Smoke, StepKind::Cook, StepKind::Hold];
const AIR: &[StepKind] =
    &[StepKind::Smoke, StepKind::Cook, StepKind::Hold, StepKind::ColdSmoke, StepKind::Ferment];

/// Keys that no rule reads but on some steps: elsewhere they would be passed over.
const BELONGS: [(&str, &[StepKind]); 9] = [
    ("to", HEATS),
    ("hold", HEATS),
    ("come_up", HEATS),
    ("moisture", HEATS),
    ("humidity", AIR),
    ("wet_bulb", AIR),
    ("like", &[StepKind::Refrigerate, StepKind::Freeze]),
    ("vacuum", &[StepKind::Pack]),
    ("how", &[StepKind::Thaw]),
];

fn refuse_misplaced(keys: &Keys<'_, '_>, kind: StepKind, faults: &mut Faults) {
    for (key, kinds) in BELONGS {
        let Some(value) = keys.value(key).filter(|_| !kinds.contains(&kind)) else { continue };
        let kinds: Vec<_> = kinds.iter().map(|kind| format!("\"{}\"", kind.key())).collect();
        faults.push(Fault {
            message: format!("`{key}` says nothing on a step with do = \"{}\"", kind.key()),
            help: Some(match key {
                "to" => "how food cools is written as [[component.cooling]] rows; `to` belongs to a step that cooks".to_owned(),
                "vacuum" => "write a step with do = \"pack\" and vacuum = true before it, and one with do = \"open\" after".to_owned(),
                _ => format!("it belongs to {}", kinds.join(", ")),
            }),
            place: value.span().into(),
        });
    }
}

/// The relative humidity around the food: as stated, or from its wet bulb at the pressure of sea
/// level, which is the least that the two bulbs can mean higher up.
fn humidity(keys: &Keys<'_, '_>, faults: &mut Faults) -> Option<f64> {
    let stated = percent(keys, "humidity", faults);
    let Some(wet) = keys.placed("wet_bulb", read_temperature, faults) else { return stated };
    if stated.is_some() {
        fault(faults, wet.place, "`humidity` and `wet_bulb` say the same: write one of them");
        return None;
    }
    let Some(dry) = keys.quantity("at", read_temperature, faults) else {
        fault(faults, wet.place, "`wet_bulb` needs the dry bulb beside it: write `at`");
        return None;
    };
    let sea = air::standard_pressure(0.0).ok()?;
    match air::relative_humidity(dry, wet.value, sea) {
        Ok(percent) => Some(percent),
        Err(error) => {
            fault(faults, wet.place, error.to_string());
            None
        }
    }
}

fn aim(keys: &Keys<'_, '_>, faults: &mut Faults) -> Option<Aim> {
    for key in LETHALITY {
        if keys.value(key).is_none() {
            fault(faults, keys.place, format!("`{key}` is missing"));
        }
    }
    let d = keys.quantity("d", read_duration, faults);
    let at = keys.quantity("at", read_temperature, faults);
    let z = keys.quantity("z", read_tolerance, faults);
    let counted_from = keys.quantity("counted_from", read_temperature, faults);
    let logs = keys.plain_number("logs", &LOGS, faults);
    // Of a D between two ends the longer is the harder to reach.
    match Resistance::new(d?.high(), at?, z?) {
        Ok(resistance) => {
            Some(Aim { resistance, counted_from: counted_from?, logs: logs?, place: keys.place })
        }
        Err(error) => {
            fault(faults, keys.place, error.to_string());
            None
        }
    }
}

fn recorded_in<'i>(keys: &Keys<'_, 'i>, faults: &mut Faults) -> Option<RecordFile<'i>> {
    for key in RECORDED_IN.iter().filter(|key| **key != "chamber") {
        if keys.value(key).is_none() {
            fault(faults, keys.place, format!("`{key}` is missing"));
        }
    }
    let probes = keys.items("inside", FEW, faults);
    let probes: Vec<_> = probes
        .iter()
        .filter_map(|probe| match probe.get_ref() {
            DeValue::String(name) => Some(name.clone()),
            _ => {
                fault(
                    faults,
                    probe.span().into(),
                    "a probe is the heading of its column, in quotes",
                );
                None
            }
        })
        .collect();
    let scale = |scale: Scale| match scale {
        Scale::Celsius => "°C",
        Scale::Fahrenheit => "°F",
    };
    Some(RecordFile {
        file: keys.name("file", faults)?,
        time: keys.name("time", faults)?,
        written: keys.word("written", &TimeColumn::ALL, TimeColumn::key, faults)?,
        probes,
        chamber: keys.name("chamber", faults),
        scale: keys.word("scale", &[Scale::Celsius, Scale::Fahrenheit], scale, faults)?,
        place: keys.place,
    })
}

fn record(rows: &[Keys<'_, '_>], faults: &mut Faults) -> Vec<Point> {
    let mut record: Vec<Point> = Vec::with_capacity(rows.len());
    for keys in rows {
        for key in RECORD {
            if keys.value(key).is_none() {
                fault(faults, keys.place, format!("`{key}` is missing"));
            }
        }
        let after = keys.quantity("after", read_duration, faults);
        let inside = keys.quantity("inside", read_temperature, faults);
        let (Some(after), Some(inside)) = (after, inside) else { continue };
        if !after.is_exact() {
            fault(faults, keys.place, "`after` is one time, not a range");
            continue;
        }
        let after = after.low();
        if record.last().is_some_and(|last| last.seconds() >= after.value) {
            fault(
                faults,
                keys.place,
                "a record runs forward: this time is not after the one before",
            );
            continue;
        }
        match Point::new(after, inside) {
            Ok(point) => record.push(point),
            Err(error) => fault(faults, keys.place, error.to_string()),
        }
    }
    record
}
