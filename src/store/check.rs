use uom::si::f64::{TemperatureInterval, Time};

use super::Storage;
use super::sauce::{FRESH, GARLIC};
use super::table::{
    COLD_FOOD, COLD_HOLDING, FREEZER_CHART, HAM_CHART, HOME_FREEZER, HOME_REFRIGERATOR,
    SAUSAGE_CHART,
};
use super::thaw::{AFTER_THAW, FISH_PACK, REFREEZE, THAW, THAW_TIME};
use crate::authority::Authority;
use crate::cite::{Cited, Date};
use crate::finding::{Answer, Finding, Force, Limit, Mend, Missing, Place, Placed, Rule, Verdict};
use crate::food::Food;
use crate::range::Range;
use crate::units::{PrintedTemperature, Reading};

const FRIDGE_TIME: Rule = Rule::new("store/fridge-time", "days in the refrigerator", Force::Safety);
const FRIDGE_COLD: Rule =
    Rule::new("store/fridge-temperature", "a cold enough refrigerator", Force::Safety);
const FREEZER_TIME: Rule =
    Rule::new("store/freezer-time", "months at its best in the freezer", Force::Advice);
const FREEZER_COLD: Rule =
    Rule::new("store/freezer-temperature", "a cold enough freezer", Force::Safety);
const ANSWERED: Rule =
    Rule::new("store/authority", "an authority that says how long this keeps", Force::Safety);

/// The rules of this room.
pub const RULES: [Rule; 12] = [
    FRIDGE_TIME,
    FRIDGE_COLD,
    FREEZER_TIME,
    FREEZER_COLD,
    ANSWERED,
    THAW,
    THAW_TIME,
    REFREEZE,
    AFTER_THAW,
    FISH_PACK,
    GARLIC,
    FRESH,
];

const LIKE: Missing = Missing::new(
    "which row of the storage chart the food is like",
    "write like = \"…\" on the step, with the row that is about this food",
);
const UNLISTED: Missing = Missing::new(
    "how long it keeps: no chart has a row for this food",
    "whoever decided how long it keeps is named under [[component.accept]], with the days",
)
.answered_by(Answer::NoTable);
const WORDS: Missing = Missing::new(
    "a number of days: the chart has words for this food",
    "follow the words of the chart, which stand beside this finding",
);
const VACUUM: Missing = Missing::new(
    "what keeps a pack without air safe: vacuum keeps nothing longer, and favours botulism",
    "keep it frozen, or open the pack; a shop needs an approved process for such packs",
);
const NOT_THIS: Missing = Missing::new(
    "a row of the chart that is about this food",
    "choose a row for the food as you made it; rows for factory-sealed and canned food are not for it",
);
const OTHERWISE: Missing = Missing::new(
    "how long it keeps: days in the cold are judged on a step that refrigerates",
    "write do = \"refrigerate\" on the step, with the row of the chart that it is like",
);
const COLDER: &str = "By its thermometer it may be a little warmer. Frozen food is safe so; it keeps its quality less long.";
const OF_ANOTHER: &str = "The row is about another food, or about factory-sealed or canned food: its months are not those of this one.";
const HOW_LONG: Missing = Missing::new("how long it is kept", "write for = \"… days\" on the step");
const HOW_COLD: Missing = Missing::new("how cold it is kept", "write at = \"… °F\" on the step");

/// Where a food is kept cold.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize), serde(rename_all = "kebab-case"))]
pub enum Cold {
    /// In a refrigerator.
    Refrigerator,
    /// In a freezer.
    Freezer,
}

/// How a food is kept, as the recipe plans it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Keeping {
    /// Where.
    pub cold: Cold,
    /// The row of the chart it is like, found with [`chart_row`].
    pub like: Option<&'static Cited<Storage>>,
    /// How cold.
    pub at: Option<Placed<Reading>>,
    /// How far the thermometer may be off.
    pub thermometer: Option<TemperatureInterval>,
    /// For how long.
    pub time: Option<Placed<Range<Time>>>,
    /// The class of the food.
    pub food: Food,
    /// Whether it is raw when it is put away.
    pub raw: bool,
    /// Whether it is in a pack without air that was made here.
    pub vacuum: bool,
    /// Whether oil, raw garlic, fresh herbs, yogurt or cream went in: it is then more than a food of its class.
    pub mixed: bool,
    /// Where it stands in the document.
    pub place: Place,
}

/// Whether a row of the chart is about such a food, made in a kitchen.
fn is_about(row: &Cited<Storage>, food: Food, raw: bool) -> bool {
    let key = row.row.key.split('@').next().unwrap_or("");
    let (group, kind) = key.split_once('/').unwrap_or((key, ""));
    let factory = kind.contains("unopened") || kind.contains("canned") || kind.contains("bought");
    let fits = match (group, kind) {
        ("sausage", "raw") => raw && food.is_ground(),
        ("sausage", _) | ("hot-dogs", _) => !raw && food.is_ground(),
        ("ground-meat", _) => raw && food.is_ground(),
        ("luncheon-meat", _) => !raw && food.is_meat(),
        ("bacon", _) => food == Food::Bacon,
        ("fresh-meat", _) => raw && matches!(food, Food::WholeMeat | Food::Bacon),
        ("ham", "dry-cut" | "country-cooked") => false,
        ("ham", "fresh-uncooked" | "cured-uncooked") => raw && food == Food::RawHam,
        ("ham", _) => {
            !raw && matches!(
                food,
                Food::RawHam | Food::PlantPackedHamReheated | Food::OtherHamReheated
            )
        }
        ("poultry", _) => raw && food == Food::Poultry,
        ("fish" | "shellfish", _) => food == Food::Fish,
        ("eggs", _) => matches!(food, Food::Eggs | Food::Casseroles),
        ("salad", _) => matches!(food, Food::Sauce | Food::Casseroles | Food::Leftovers),
        ("soups-and-stews" | "soup-or-stew", _) => matches!(food, Food::Sauce | Food::Casseroles),
        ("ham-chart", kind) => {
            let ham = matches!(
                food,
                Food::RawHam | Food::PlantPackedHamReheated | Food::OtherHamReheated
            );
            let made_elsewhere =
                ["sealed-at-plant", "store-wrapped", "canned", "country", "prosciutto"];
            ham && raw == kind.ends_with("uncooked")
                && !made_elsewhere.iter().any(|word| kind.contains(word))
        }
        ("sausage-chart", kind) => {
            let cooked = kind.starts_with("hot-dogs") || kind.contains("after-cooking");
            food.is_ground()
                && if raw { kind.starts_with("fresh-sausage-uncooked") } else { cooked }
        }
        ("leftovers", _) => !raw,
        ("freezer-chart", kind) => freezer_row_is_about(kind, food, raw),
        _ => false,
    };
    fits && !factory
}

/// Whether no chart has a row about such a food in a refrigerator: the rows of fish are of raw fish.
fn is_unlisted(keeping: &Keeping) -> bool {
    let food = keeping.food == Food::Cheese || (keeping.food == Food::Fish && !keeping.raw);
    food && !keeping.mixed && !keeping.vacuum
}

/// The same for a row of the freezer's own chart.
fn freezer_row_is_about(kind: &str, food: Food, raw: bool) -> bool {
    let poultry = matches!(food, Food::Poultry | Food::GroundPoultry);
    match kind {
        "bacon-and-sausage" => food == Food::Bacon || food.is_ground(),
        "casseroles" => food == Food::Casseroles,
        "egg-whites-or-egg-substitutes" => food == Food::Eggs,
        "frozen-dinners-and-entrees" => !raw,
        "gravy-meat-or-poultry" => food == Food::Sauce,
        "soups-and-stews" => matches!(food, Food::Casseroles | Food::Sauce | Food::Leftovers),
        "ham-hot-dogs-and-lunch-meats" => !raw && food.is_meat(),
        "meat-cooked" => !raw && food.is_meat() && !poultry,
        "meat-uncooked-ground" => raw && food.is_ground() && !poultry,
        "wild-game-uncooked" => raw && food.is_meat(),
        kind if kind.starts_with("meat-uncooked") => raw && food.is_meat() && !food.is_ground(),
        "poultry-cooked" => !raw && poultry,
        kind if kind.starts_with("poultry-uncooked") => raw && poultry,
        _ => false,
    }
}

/// Whether an authority says how long food keeps.
#[must_use]
pub fn answers(authority: Authority) -> bool {
    authority == Authority::UsConsumer
}

/// The finding when none of the authorities of a recipe says how long food keeps.
#[must_use]
pub fn unanswered(place: Place, says_how_long: bool) -> Finding {
    if !says_how_long {
        return Finding::unproven(&ANSWERED, HOW_LONG, place);
    }

    Finding::new(&ANSWERED, Verdict::Unproven).at(place).missing(Missing::new(
        "an authority that says how long this keeps",
        "only the charts for homes in the United States, \"us-consumer\", are held here; elsewhere whoever decided how long it keeps is named under [[component.accept]], with the days",
    ).answered_by(Answer::NoTable))
}

/// The finding on food that is kept in the cold for days by another name than refrigerating.
#[must_use]
pub fn kept_otherwise(place: Place) -> Finding {
    Finding::new(&FRIDGE_TIME, Verdict::Unproven).at(place).missing(OTHERWISE)
}

/// The row of the storage chart with this key that is in force on a day, by default
/// the current edition.
///
/// ```
/// use greenweight::{cite::Date, store::chart_row};
///
/// let now = chart_row("ham/canned-shelf-stable-opened", None).ok_or("no row")?;
/// assert_eq!(now.value.refrigerate.printed(), "3 to 4 days");
/// let then = chart_row("ham/canned-shelf-stable-opened", Some(Date::new(2019, 6, 1)?));
/// assert_eq!(then.ok_or("no row")?.value.refrigerate.printed(), "5 to 14 days");
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[must_use]
pub fn chart_row(key: &str, day: Option<Date>) -> Option<&'static Cited<Storage>> {
    charts().find(|row| {
        // An older row's key carries its edition after an @.
        let name = row.row.key.split('@').next();
        name == Some(key) && row.row.in_force.on(day)
    })
}

/// The keys of the current chart.
pub fn chart_keys() -> impl Iterator<Item = &'static str> {
    charts().filter(|row| row.row.in_force.on(None)).map(|row| row.row.key)
}

/// The main chart and those of single commodities.
fn charts() -> impl Iterator<Item = &'static Cited<Storage>> {
    COLD_FOOD.iter().chain(&HAM_CHART).chain(&SAUSAGE_CHART).chain(&FREEZER_CHART)
}

/// Checks how a food is kept against the rules of one authority.
pub fn check(keeping: &Keeping, authority: Authority, report: &mut impl FnMut(Finding)) {
    if !answers(authority) {
        if keeping.cold == Cold::Refrigerator {
            cold_elsewhere(keeping, authority, report);
        }
        return;
    }
    temperature(keeping, report);
    match keeping.cold {
        Cold::Refrigerator => fridge_time(keeping, report),
        Cold::Freezer => freezer_time(keeping, report),
    }
}

fn temperature(keeping: &Keeping, report: &mut impl FnMut(Finding)) {
    let (rule, row): (_, &'static Cited<PrintedTemperature>) = match keeping.cold {
        Cold::Refrigerator => (&FRIDGE_COLD, &HOME_REFRIGERATOR),
        Cold::Freezer => (&FREEZER_COLD, &HOME_FREEZER),
    };
    let Some(at) = keeping.at else {
        report(
            Finding::new(rule, Verdict::Unproven).row(&row.row).missing(HOW_COLD).at(keeping.place),
        );
        return;
    };
    let finding = Finding::at_or_below(rule, row.value, &row.row, at, keeping.thermometer);
    // A freezer that shows 0 °F is one: a degree of its thermometer is a matter of quality.
    let shows = Limit::AtMost(row.value.on(at.value.scale())).met_by(at.value) == Some(true);
    let doubted = shows && finding.verdict != Verdict::Meets && keeping.thermometer.is_some();
    report(if keeping.cold == Cold::Freezer && doubted {
        Finding { verdict: Verdict::Meets, past_advice: true, mend: None, ..finding }.note(COLDER)
    } else {
        finding
    });
}

/// How cold shops and plants keep it.
fn cold_elsewhere(keeping: &Keeping, authority: Authority, report: &mut impl FnMut(Finding)) {
    // What one edition of the Food Code says here, all do.
    let code = authority.is_food_code();
    let authority = if code { Authority::UsFoodCode2022 } else { authority };
    let fish = keeping.food == Food::Fish;
    let rows = COLD_HOLDING
        .iter()
        .filter(|row| row.value.authority == authority && (fish || !row.value.fish));
    for row in rows {
        report(match keeping.at {
            Some(at) => Finding::at_or_below(
                &FRIDGE_COLD,
                row.value.temperature,
                &row.row,
                at,
                keeping.thermometer,
            ),
            None => Finding::new(&FRIDGE_COLD, Verdict::Unproven)
                .row(&row.row)
                .missing(HOW_COLD)
                .at(keeping.place),
        });
    }
}

fn fridge_time(keeping: &Keeping, report: &mut impl FnMut(Finding)) {
    let finding = |verdict| Finding::new(&FRIDGE_TIME, verdict).at(keeping.place);
    let Some(like) = keeping.like else {
        let missing = if is_unlisted(keeping) { UNLISTED } else { LIKE };
        report(finding(Verdict::Unproven).missing(missing));
        return;
    };
    let finding = |verdict| finding(verdict).row(&like.row);
    if !is_about(like, keeping.food, keeping.raw) {
        report(finding(Verdict::Unproven).missing(NOT_THIS));
        return;
    }
    let Some(time) = keeping.time else {
        report(finding(Verdict::Unproven).missing(HOW_LONG));
        return;
    };
    let finding = |verdict| finding(verdict).at(time.place);
    let time = time.value;
    let Some(chart) = like.value.refrigerate.time() else {
        report(finding(Verdict::Unproven).found(&time).missing(WORDS));
        return;
    };
    let limit = Limit::AtMost(chart.high());
    // A recipe that says "3 to 5 days" lets its reader take 5.
    let longest = Range::ordered(time.high(), time.high());
    let verdict = limit.judge(&longest);
    let finding = finding(verdict).found(&time).limit(limit);
    let past = Limit::AtMost(chart.low()).met_by(time.high()) == Some(false);
    report(match verdict {
        Verdict::Meets if keeping.vacuum => finding.left_open(VACUUM),
        Verdict::Meets if past => {
            finding.note("Within the limit, and past the shorter time that the chart advises.")
        }
        Verdict::Meets => finding,
        _ => finding.mend(Mend::KeepFor(chart.high())),
    });
}

fn freezer_time(keeping: &Keeping, report: &mut impl FnMut(Finding)) {
    // Advice asks for nothing: what the recipe leaves out is not missed here.
    let (Some(like), Some(time)) = (keeping.like, keeping.time) else {
        return;
    };
    let place = time.place;
    let time = time.value;
    let finding = Finding::new(&FREEZER_TIME, Verdict::Meets).found(&time).row(&like.row).at(place);
    if !is_about(like, keeping.food, keeping.raw) {
        report(Finding { past_advice: true, ..finding }.note(OF_ANOTHER));
        return;
    }
    let Some(chart) = like.value.freeze.time() else {
        report(Finding { past_advice: true, ..finding }
            .note("The chart has words in place of a time. They are about quality, unless the food was never frozen in time."));
        return;
    };
    let limit = Limit::AtMost(chart.high());
    let finding = finding.limit(limit);
    if limit.met_by(time.high()) == Some(true) {
        report(finding);
    } else {
        report(Finding { past_advice: true, ..finding }.mend(Mend::KeepFor(chart.high())).note(
            "Past its best, not unsafe: food kept frozen at 0 °F (−18 °C) or below stays safe.",
        ));
    }
}
