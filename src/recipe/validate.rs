//! The bounds of a recipe, whether it is read from a document or built by types. The reader of documents asks the same
//! questions, and answers with places.

use core::fmt;

use super::document::{
    Component, CurePlan, Ingredient, Instruments, Kind, Proximates, Recipe, Step, StepKind,
};
use super::keys::wrong_name;
use super::names::names_a_cure;
use crate::cite::Date;
use crate::cure::{Method, Premix, product_keys};
use crate::fat::name_keys;
use crate::finding::{Finding, Force, Missing, Place, Placed, Rule};
use crate::food::Food;
use crate::level::{Agent, InPremix, LEVEL, Level};
use crate::range::{Bounds, DIVISION, OutOfRange, Range, bounds};
use crate::shelf::{ACTIVITY, PH};
use crate::store::Thawing;
use crate::trace::Point;
use crate::units::{Amount, Reading, TEMPERATURE, TOLERANCE, Time};

bounds! {
    WEIGHT: "amount", "kg", 0.0, 1e6;
    PREMIX: "amount of curing premix", "kg", 1e-9, 1e6;
    pub(super) PIECE: "weight of what is made", "kg", 1e-9, 1e6;
    // As much water as the heaviest amount.
    VOLUME: "amount by volume", "m³", 0.0, 1e3;
    // Three hundred years: no food is kept for longer.
    TIME: "length of time", "s", 0.0, 1e10;
    SHARE: "share", "%", 0.0, 100.0;
    // Each is rounded, and each analysis has its error.
    TOGETHER: "fat, moisture, protein and salt together", "%", 0.0, 105.0;
    pub(super) TAKEN_UP: "pump or pick-up", "mg/kg", 1e3, 1e6;
    pub(super) LOGS: "reduction", "log", 0.0, 100.0;
    // A logger that reads less often vouches for nothing.
    pub(super) INTERVAL: "interval of a logger", "s", 0.001, 900.0;
}

/// The most components of a recipe, and ingredients or steps of a component: what is compared pair by pair
/// stays short.
pub(super) const MANY: usize = 1000;

/// The most of what is short in any kitchen: authorities, names, probes, lethalities, accepted rules.
pub(super) const FEW: usize = 100;

pub(super) const NO_COMPONENT: &str =
    "there is no [[component]]: a recipe makes at least one thing";
pub(super) const SAME_NAME: &str =
    "two components have this name: a report could not tell them apart";
pub(super) const HELD_TO_NOBODY: &str =
    "`held_to` is missing: whose rules is the recipe held against?";
pub(super) const NO_MEAT: &str =
    "an ingredient of kind \"meat\" in a food that holds none: what class of food is it?";
pub(super) const SKIN: &str = "`skin` belongs to the meat of a component whose food is bacon";
pub(super) const RAW: &str =
    "what is sold raw is not cooked to an inside temperature: drop `raw`, or this `to`";
pub(super) const CURES: &str =
    "this is named like something that cures: its kind is \"curing-premix\"";
pub(super) const STRENGTH: &str = "`strength` belongs to an ingredient of kind \"curing-premix\"";
pub(super) const HYDRATED: &str =
    "`hydrated` belongs to an ingredient of kind \"sodium-ascorbate\" or \"sodium-erythorbate\"";
pub(super) const NO_AGENT: &str =
    "a curing premix holds nitrite or nitrate: name what the label names";
pub(super) const MADE_ON: &str = "`packed_on` needs `made_on` beside it: its days count from there";
const PACKED_OUTSIDE: &str =
    "it is packed on none of its days: from when it is made to when its steps end";
pub(super) const PART_OF_THE_COOK: &str =
    "a thaw by the microwave or by cooking is part of the cook: it has no `at` and no `for`";
pub(super) const ABOVE_AT: &str =
    "the inside cannot get hotter than what is around it: `to` is above `at`";
pub(super) const NOT_FORWARD: &str = "a record runs forward: this time is not after the one before";
pub(super) const OTHER_PROTEIN: &str =
    "`other_protein` is a part of `protein`, and is more than all of it";
pub(super) const CONFIRMED_TWICE: &str =
    "this row is confirmed twice: write once where and when it was read";
const NOT_TAKEN_UP: &str = "a pump or a pick-up belongs to a cure that is pumped or immersed";
const TOO_MANY: &str = "there are more of these than are checked";
const NO_PRODUCT: &str = "no table has a product of this name";
const NO_ROW: &str = "the storage chart has no such row on the day of the recipe";

/// A component with an impossible field is judged by no other rule.
const IMPOSSIBLE: Rule = Rule::new(
    "recipe/impossible-figure",
    "figures and names that a recipe can have",
    Force::Safety,
);
pub(super) const RULES: [Rule; 1] = [IMPOSSIBLE];

const POSSIBLE: Missing = Missing::new(
    "figures and names that a recipe can have: nothing else is judged before",
    "ask Recipe::validate, which names each field, its value and the range it may have",
);

/// A field of a recipe with something in it that no recipe can have.
///
/// ```
/// use greenweight::authority::Authority;
/// use greenweight::food::Food;
/// use greenweight::recipe::{Component, Proximates, Recipe};
///
/// let mut trout = Component::new("trout", Food::Fish);
/// trout.proximates = Proximates { salt: Some(3000.0), ..Proximates::default() };
/// let recipe = Recipe { components: vec![trout], ..Recipe::new("Invented", [Authority::UsFda]) };
/// let impossible = recipe.validate();
/// assert_eq!(
///     impossible[0].to_string(),
///     "component[0].analysis.salt: share of 3000 % is outside 0 to 100 %"
/// );
/// ```
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[error("{path}: {problem}")]
#[non_exhaustive]
pub struct Impossible {
    /// The field.
    pub path: FieldPath,
    /// What is wrong with it.
    pub problem: Problem,
    /// Where it stands, in a recipe that was read from a document.
    pub place: Place,
}

/// A field of a recipe. It is written `component[0].step[2].come_up`.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub struct FieldPath {
    /// Which component, counted from zero; none for what belongs to the whole recipe.
    pub component: Option<usize>,
    /// Which of a list of the component, by its key in a document, counted from zero.
    pub item: Option<(&'static str, usize)>,
    /// The key of the field in a document.
    pub field: &'static str,
}

impl fmt::Display for FieldPath {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if let Some(n) = self.component {
            write!(f, "component[{n}].")?;
        }
        if let Some((list, n)) = self.item {
            write!(f, "{list}[{n}].")?;
        }
        f.write_str(self.field)
    }
}

/// What is wrong with a field.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum Problem {
    /// A figure that it cannot have, with the range it may have.
    #[error(transparent)]
    OutOfRange(#[from] OutOfRange),
    /// A key that says nothing on a step of this kind.
    #[error("it says nothing on a step with do = \"{}\"", .0.key())]
    Misplaced(StepKind),
    /// A name that is empty, or that cannot be printed.
    #[error("the name {0}")]
    Name(&'static str),
    /// What cannot stand beside another field, in words.
    #[error("{0}")]
    Contradiction(&'static str),
}

const HEATS: &[StepKind] = &[StepKind::Smoke, StepKind::Cook, StepKind::Hold];
const AIR: &[StepKind] =
    &[StepKind::Smoke, StepKind::Cook, StepKind::Hold, StepKind::ColdSmoke, StepKind::Ferment];
const ALL_BUT_OPEN: &[StepKind] = &[
    StepKind::Hold,
    StepKind::Ferment,
    StepKind::Smoke,
    StepKind::ColdSmoke,
    StepKind::Cook,
    StepKind::Rest,
    StepKind::Chill,
    StepKind::Pack,
    StepKind::Refrigerate,
    StepKind::Freeze,
    StepKind::Thaw,
    StepKind::Serve,
];

/// The steps on which a key says something: elsewhere no rule would read it.
pub(super) fn belongs(key: &str) -> Option<&'static [StepKind]> {
    Some(match key {
        "at" | "for" => ALL_BUT_OPEN,
        "to" | "hold" | "come_up" | "moisture" => HEATS,
        "humidity" | "wet_bulb" => AIR,
        "like" => &[StepKind::Refrigerate, StepKind::Freeze],
        "vacuum" => &[StepKind::Pack],
        "how" => &[StepKind::Thaw],
        _ => return None,
    })
}

/// Whether a food may hold meat.
pub(super) const fn holds_meat(food: Food) -> bool {
    food.is_meat() || matches!(food, Food::Casseroles | Food::Leftovers)
}

/// The step of raw food that names an inside temperature.
pub(super) fn cooked_to(steps: &[Step]) -> Option<(usize, Placed<Reading>)> {
    let heats = steps.iter().enumerate().filter(|(_, step)| step.kind.heats());
    heats.filter_map(|(n, step)| Some((n, step.to?))).next()
}

/// Whether an ingredient can hold water of crystallisation.
pub(super) fn crystallises(kind: Kind) -> bool {
    matches!(kind.key(), "sodium-ascorbate" | "sodium-erythorbate")
}

/// Where a thaw that is part of the cook has a temperature or a time of its own.
pub(super) fn thaw_of_its_own(step: &Step) -> Option<Place> {
    let in_the_cook = matches!(step.how, Some(Thawing::Microwave | Thawing::Cooking));
    let place = step.at.map(|at| at.place).or(step.time.map(|time| time.place));
    place.filter(|_| in_the_cook)
}

/// An inside temperature above that of what heats it.
pub(super) fn above_its_air(step: &Step) -> Option<Placed<Reading>> {
    let (at, to) = (step.at?, step.to?);
    (step.kind.heats() && at.value < to.value).then_some(to)
}

/// A figure.
pub(super) fn inside(bounds: &Bounds, value: f64) -> Result<(), OutOfRange> {
    bounds.check(value).map(|_| ())
}

/// Both ends of a range.
pub(super) fn ends(bounds: &Bounds, low: f64, high: f64) -> Result<(), OutOfRange> {
    inside(bounds, low)?;
    inside(bounds, high)
}

/// Both ends of a time.
pub(super) fn lasts(time: &Range<Time>) -> Result<(), OutOfRange> {
    ends(&TIME, time.low().value, time.high().value)
}

/// An amount of an ingredient.
pub(super) fn weighs(amount: &Amount, kind: Kind) -> Result<(), OutOfRange> {
    let (bounds, value) = match amount {
        Amount::Weighed(mass) if kind == Kind::CuringPremix => (&PREMIX, mass.value),
        Amount::Weighed(mass) => (&WEIGHT, mass.value),
        Amount::ByVolume(volume) => (&VOLUME, volume.value),
    };
    inside(bounds, value)
}

/// What an analysis found, together.
pub(super) fn whole(found: &Proximates) -> Result<(), OutOfRange> {
    let parts = [found.fat, found.moisture, found.protein, found.salt];
    inside(&TOGETHER, parts.into_iter().flatten().sum())
}

/// Whether more protein is said not to be of the meat than there is.
pub(super) fn too_much_other_protein(found: &Proximates) -> bool {
    matches!((found.other_protein, found.protein), (Some(other), Some(all)) if other > all)
}

impl Recipe<'_> {
    /// Every field with something in it that no recipe can have; empty where it can be checked. In a document
    /// [`Recipe::read`] refuses the same; this asks it of a recipe that was built by types. [`Recipe::check`] asks
    /// it first.
    #[must_use]
    pub fn validate(&self) -> Vec<Impossible> {
        let mut found = Vec::new();
        let mut walk =
            Walk { component: None, item: None, place: Place::default(), found: &mut found };
        walk.recipe(self);
        found
    }
}

/// The finding on a component with an impossible field, at its place.
pub(super) fn unjudged(impossible: &Impossible, component: &Component<'_>) -> Finding {
    let place =
        if impossible.place == Place::default() { component.place } else { impossible.place };
    let finding = Finding::unproven(&IMPOSSIBLE, POSSIBLE, place);
    match impossible.problem {
        Problem::Contradiction(says) => finding.note(says),
        _ => finding,
    }
}

/// A walk through a recipe.
struct Walk<'f> {
    component: Option<usize>,
    item: Option<(&'static str, usize)>,
    /// Where what it looks at stands.
    place: Place,
    found: &'f mut Vec<Impossible>,
}

impl Walk<'_> {
    fn found(&mut self, field: &'static str, problem: Problem) {
        let path = FieldPath { component: self.component, item: self.item, field };
        self.found.push(Impossible { path, problem, place: self.place });
    }

    fn says(&mut self, field: &'static str, is_wrong: bool, says: &'static str) {
        if is_wrong {
            self.found(field, Problem::Contradiction(says));
        }
    }

    fn result(&mut self, field: &'static str, result: Result<(), OutOfRange>) {
        if let Err(error) = result {
            self.found(field, error.into());
        }
    }

    fn bounded(&mut self, field: &'static str, bounds: &Bounds, value: Option<f64>) {
        if let Some(value) = value {
            self.result(field, inside(bounds, value));
        }
    }

    fn name(&mut self, field: &'static str, name: &str) {
        if let Some(wrong) = wrong_name(name) {
            self.found(field, Problem::Name(wrong));
        }
    }

    fn count(&mut self, field: &'static str, count: usize, most: usize) {
        self.says(field, count > most, TOO_MANY);
    }

    fn time(&mut self, field: &'static str, time: Option<Placed<Range<Time>>>) {
        if let Some(time) = time {
            self.result(field, lasts(&time.value));
        }
    }

    fn temperature(&mut self, field: &'static str, at: Option<Placed<Reading>>) {
        let kelvin = at.map(|at| at.value.temperature().value);
        self.bounded(field, &TEMPERATURE, kelvin);
    }

    fn recipe(&mut self, recipe: &Recipe<'_>) {
        self.name("title", &recipe.title);
        self.says("held_to", recipe.held_to.is_empty(), HELD_TO_NOBODY);
        self.count("held_to", recipe.held_to.len(), FEW);
        self.instruments(&recipe.instruments);
        self.says("component", recipe.components.is_empty(), NO_COMPONENT);
        self.count("component", recipe.components.len(), MANY);
        self.count("confirmed", recipe.confirmed.len(), FEW);
        for (n, confirmed) in recipe.confirmed.iter().enumerate() {
            self.within("confirmed", n, confirmed.place);
            self.name("document", &confirmed.document);
            self.name("place", &confirmed.at);
            let mut others = recipe.confirmed.iter().take(n.min(FEW));
            self.says("row", others.any(|other| other.row == confirmed.row), CONFIRMED_TWICE);
        }
        (self.item, self.place) = (None, Place::default());
        for (n, component) in recipe.components.iter().enumerate() {
            self.component = Some(n);
            self.place = component.place;
            let others = recipe.components.iter().take(n.min(MANY));
            let same = others.map(|other| &other.name).any(|name| *name == component.name);
            self.says("name", same, SAME_NAME);
            self.component(component, recipe.date);
        }
    }

    fn instruments(&mut self, instruments: &Instruments) {
        self.bounded("instruments.scale", &DIVISION, instruments.scale.map(|mass| mass.value));
        let error = instruments.scale_error.map(|mass| mass.value);
        self.bounded("instruments.scale_error", &DIVISION, error);
        let off = instruments.thermometer.map(|tolerance| tolerance.value);
        self.bounded("instruments.thermometer", &TOLERANCE, off);
    }

    fn component(&mut self, component: &Component<'_>, date: Option<Date>) {
        self.name("name", &component.name);
        let lists = [
            ("ingredient", component.ingredients.len(), MANY),
            ("step", component.steps.len(), MANY),
            ("cured_as", component.cured_as.len(), FEW),
            ("sold_as", component.sold_as.len(), FEW),
            ("lethality", component.aims.len(), FEW),
            ("accept", component.accepted.len(), FEW),
        ];
        for (list, count, most) in lists {
            self.count(list, count, most);
        }
        let mut cured_as = component.cured_as.iter();
        let stranger = cured_as.any(|name| product_keys().all(|key| key != *name));
        self.says("cured_as", stranger, NO_PRODUCT);
        let mut sold_as = component.sold_as.iter();
        let stranger = sold_as.any(|name| name_keys().all(|key| key != *name));
        self.says("sold_as", stranger, NO_PRODUCT);
        self.bounded("finished", &PIECE, component.finished.map(|mass| mass.value));
        self.bounded("piece", &PIECE, component.piece.map(|mass| mass.value));
        if let Some(Placed { value: fat, .. }) = component.fat_target {
            self.result("fat_target", ends(&SHARE, fat.low(), fat.high()));
        }
        if let Some(packed) = component.packed_on {
            match component.days_of_packing() {
                None => self.says("packed_on", true, MADE_ON),
                Some(days) => self.says("packed_on", !days.hold(packed), PACKED_OUTSIDE),
            }
        }
        if let Some(file) = &component.recorded_in {
            self.bounded("recorded_in.interval", &INTERVAL, file.interval.map(|time| time.value));
        }
        self.analysis(component);
        if let Some(cure) = &component.cure {
            self.cure(cure);
        }
        for (n, ingredient) in component.ingredients.iter().enumerate() {
            self.within("ingredient", n, ingredient.place);
            self.ingredient(ingredient, component.food);
        }
        for (n, step) in component.steps.iter().enumerate() {
            self.within("step", n, step.place);
            self.step(step, date);
        }
        if let Some((n, to)) = cooked_to(&component.steps).filter(|_| component.raw) {
            self.within("step", n, to.place);
            self.says("to", true, RAW);
        }
        for (n, aim) in component.aims.iter().enumerate() {
            self.within("lethality", n, aim.place);
            self.bounded("logs", &LOGS, Some(aim.logs));
            self.temperature("counted_from", Some(aim.counted_from.into()));
        }
        for (n, accepted) in component.accepted.iter().enumerate() {
            self.within("accept", n, accepted.place);
            self.name("reason", &accepted.reason);
        }
        let records = [
            ("record", &component.record),
            ("chamber", &component.chamber),
            ("cooling", &component.cooling),
        ];
        for (list, points) in records {
            if let Some(n) = stands_still(points) {
                self.within(list, n, component.place);
                self.says("after", true, NOT_FORWARD);
            }
        }
        self.item = None;
    }

    fn within(&mut self, list: &'static str, n: usize, place: Place) {
        (self.item, self.place) = (Some((list, n)), place);
    }

    fn analysis(&mut self, component: &Component<'_>) {
        let found = &component.proximates;
        let shares = [
            ("analysis.fat", found.fat),
            ("analysis.moisture", found.moisture),
            ("analysis.protein", found.protein),
            ("analysis.other_protein", found.other_protein),
            ("analysis.salt", found.salt),
        ];
        let before = self.found.len();
        for (field, share) in shares {
            self.bounded(field, &SHARE, share);
        }
        if self.found.len() == before {
            self.result("analysis", whole(found));
            self.says("analysis.other_protein", too_much_other_protein(found), OTHER_PROTEIN);
        }
        self.bounded("analysis.water_activity", &ACTIVITY, found.water_activity);
        self.bounded("analysis.ph", &PH, found.ph);
        let (nitrite, nitrate) = (component.analysis.nitrite, component.analysis.nitrate);
        self.bounded("analysis.nitrite", &LEVEL, nitrite.map(Level::mg_per_kg));
        self.bounded("analysis.nitrate", &LEVEL, nitrate.map(Level::mg_per_kg));
    }

    fn cure(&mut self, cure: &CurePlan) {
        if let Some(share) = cure.taken_up {
            let [low, high] = [share.low(), share.high()].map(|end| end.fraction() * 1e6);
            self.result("cure.pump", ends(&TAKEN_UP, low, high));
            let soaked = matches!(cure.method, None | Some(Method::Pumped | Method::Immersion));
            self.says("cure.pump", !soaked, NOT_TAKEN_UP);
        }
        self.bounded("cure.ingoing_nitrite", &LEVEL, cure.claimed.map(|claimed| claimed.value));
        self.temperature("cure.at", cure.at);
        self.time("cure.for", cure.time);
        self.bounded("cure.sugar", &SHARE, cure.sugar_percent);
    }

    fn ingredient(&mut self, ingredient: &Ingredient<'_>, food: Food) {
        let Ingredient { kind, .. } = *ingredient;
        self.name("name", &ingredient.name);
        self.says("name", kind != Kind::CuringPremix && names_a_cure(&ingredient.name), CURES);
        if let Some(amount) = &ingredient.amount {
            self.result("amount", weighs(amount, kind));
        }
        self.bounded("scale", &DIVISION, ingredient.scale.map(|mass| mass.value));
        self.bounded("fat", &SHARE, ingredient.fat);
        self.bounded("fat_error", &SHARE, ingredient.fat_error);
        self.says("kind", kind == Kind::Meat && !holds_meat(food), NO_MEAT);
        let belly = kind == Kind::Meat && food == Food::Bacon;
        self.says("skin", ingredient.skin_on.is_some() && !belly, SKIN);
        self.says("hydrated", ingredient.hydrated && !crystallises(kind), HYDRATED);
        if let Some(premix) = &ingredient.strength {
            self.says("strength", kind != Kind::CuringPremix, STRENGTH);
            self.premix(premix);
        }
    }

    fn premix(&mut self, premix: &Premix) {
        fn of<A: Agent>(level: Level<A, InPremix>) -> f64 {
            level.mg_per_kg()
        }
        let levels = [
            of(premix.sodium_nitrite()),
            of(premix.potassium_nitrite()),
            of(premix.sodium_nitrate()),
            of(premix.potassium_nitrate()),
        ];
        for level in levels.into_iter().chain([of(premix.salt().low()), of(premix.salt().high())]) {
            self.bounded("strength", &LEVEL, Some(level));
        }
        self.says("strength", levels.iter().all(|&level| level <= 0.0), NO_AGENT);
    }

    fn step(&mut self, step: &Step, date: Option<Date>) {
        let fields = [
            ("at", step.at.is_some()),
            ("for", step.time.is_some()),
            ("to", step.to.is_some()),
            ("hold", step.hold.is_some()),
            ("come_up", step.come_up.is_some()),
            ("moisture", step.moisture.is_some()),
            ("humidity", step.humidity.is_some()),
            ("like", step.like.is_some()),
            ("vacuum", step.vacuum),
            ("how", step.how.is_some()),
        ];
        for (field, is_there) in fields {
            if is_there && belongs(field).is_some_and(|kinds| !kinds.contains(&step.kind)) {
                self.found(field, Problem::Misplaced(step.kind));
            }
        }
        self.temperature("at", step.at);
        self.time("for", step.time);
        self.temperature("to", step.to);
        self.time("hold", step.hold);
        self.time("come_up", step.come_up);
        self.bounded("humidity", &SHARE, step.humidity);
        self.bounded("ph", &PH, step.ph);
        let superseded = step.like.is_some_and(|row| !row.row.in_force.on(date));
        self.says("like", superseded, NO_ROW);
        self.says("how", thaw_of_its_own(step).is_some(), PART_OF_THE_COOK);
        self.says("to", above_its_air(step).is_some(), ABOVE_AT);
    }
}

/// The first reading that is not after the one before.
fn stands_still(points: &[Point]) -> Option<usize> {
    let mut last = f64::NEG_INFINITY;
    points.iter().position(|point| {
        let stands = point.seconds() <= last;
        last = point.seconds();
        stands
    })
}
