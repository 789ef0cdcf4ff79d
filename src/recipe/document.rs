use std::borrow::Cow;

use uom::si::f64::{Mass, TemperatureInterval, Time};

use crate::authority::{Authority, Profile};
use crate::cite::{Cited, Date};
use crate::cook::{Aim, Animals, Bird, FSIS_COME_UP, Moisture};
use crate::cure::{Additive, Analysis, Method, Premix, Pump};
use crate::finding::{Place, Placed, Rule};
use crate::food::Food;
use crate::range::Range;
use crate::shelf::{self, Cell};
use crate::store::{Storage, Thawing};
#[cfg(feature = "trace-csv")]
use crate::trace::{Columns, CsvFault, read_csv};
use crate::trace::{Point, TimeColumn, vouched};
use crate::units::{Amount, Measures, Reading, Scale, days, seconds};

/// A recipe, as its document says it.
#[derive(Debug, Clone, PartialEq)]
pub struct Recipe<'a> {
    /// What it is called.
    pub title: Cow<'a, str>,
    /// Whose rules it is held against.
    pub held_to: Vec<Authority>,
    /// The kind of kitchen that chose some of them.
    pub profile: Option<Profile>,
    /// The day whose rules count; without one, only rules never superseded.
    pub date: Option<Date>,
    /// Whose cups and spoons it uses.
    pub measures: Option<Measures>,
    /// How things are weighed and read.
    pub instruments: Instruments,
    /// What is made.
    pub components: Vec<Component<'a>>,
    /// Rows from memory that whoever wrote the recipe read in their document.
    pub confirmed: Vec<Confirmed<'a>>,
}

/// A row of a reference table whose figure is from memory, as it can be confirmed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub struct Remembered {
    /// Which table: the path of its file below `references/`, without the ending.
    pub table: &'static str,
    /// Its key in the table.
    pub key: &'static str,
    /// The remembered figure.
    pub printed: &'static str,
}

/// A row from memory that whoever wrote the recipe says to have read. Every report prints it.
#[derive(Debug, Clone, PartialEq)]
pub struct Confirmed<'a> {
    /// The row.
    pub row: &'static Remembered,
    /// The document it was read in, with its edition.
    pub document: Cow<'a, str>,
    /// The page, paragraph or row there.
    pub at: Cow<'a, str>,
    /// The day it was read.
    pub on: Date,
    /// Where it stands in the recipe.
    pub place: Place,
}

/// How things are weighed and read.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Instruments {
    /// The smallest step the scale shows.
    pub scale: Option<Mass>,
    /// How far the scale may be off besides, either way, where it is known to be.
    pub scale_error: Option<Mass>,
    /// How far the thermometer may be off.
    pub thermometer: Option<TemperatureInterval>,
}

/// One thing that is made: a sausage, a cheese, a sauce.
#[derive(Debug, Clone, PartialEq)]
pub struct Component<'a> {
    /// What it is called.
    pub name: Cow<'a, str>,
    /// The class of food.
    pub food: Food,
    /// Whether it is sold or given away raw, to be cooked by whoever eats it.
    pub raw: bool,
    /// Whether it is a food for infants.
    pub for_infants: bool,
    /// What goes in.
    pub ingredients: Vec<Ingredient<'a>>,
    /// How it is cured.
    pub cure: Option<CurePlan>,
    /// Which products of the curing tables it is.
    pub cured_as: Vec<&'static str>,
    /// The weight of it when it is done.
    pub finished: Option<Mass>,
    /// What an analysis of it found of curing agents.
    pub analysis: Analysis,
    /// What an analysis of it found of fat, moisture and protein.
    pub proximates: Proximates,
    /// Under which names of the tables of composition it is sold.
    pub sold_as: Vec<&'static str>,
    /// The fat that the blend of meat is to have, percent.
    pub fat_target: Option<Placed<Range<f64>>>,
    /// What is done, in order.
    pub steps: Vec<Step>,
    /// Recorded inside temperatures, in order of time.
    pub record: Vec<Point>,
    /// Readings of the dry bulb of the chamber, for a drawing.
    pub chamber: Vec<Point>,
    /// Readings of the warmest part as it cools after the cook, by hand or of the file of
    /// [`Self::record`].
    pub cooling: Vec<Point>,
    /// Whether [`Self::cooling`] is that of the file. Between rows written by hand the food cools
    /// in the cold; of a logger that was silent nobody knows where it was.
    pub cooling_logged: bool,
    /// The file that holds them, where they do not stand in the document.
    pub recorded_in: Option<RecordFile<'a>>,
    /// The lethalities that its record is to show.
    pub aims: Vec<Aim>,
    /// The smallest piece that is cooked.
    pub piece: Option<Mass>,
    /// The day it is made: the first of its days.
    pub made_on: Option<Date>,
    /// The day it is packed, where that is another one.
    pub packed_on: Option<Date>,
    /// Findings that whoever wrote it answers for.
    pub accepted: Vec<Accepted<'a>>,
    /// Where it stands in the document.
    pub place: Place,
}

/// The findings of a rule that whoever wrote the recipe answers for. They keep their verdict, and every
/// report prints the reason; [`Recipe::accepted`] says of which findings it is heard.
#[derive(Debug, Clone, PartialEq)]
pub struct Accepted<'a> {
    /// The rule.
    pub rule: &'static Rule,
    /// Why.
    pub reason: Cow<'a, str>,
    /// Where it stands in the document.
    pub place: Place,
}

/// Fat, moisture and protein that an analysis found, in percent of the finished product.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Proximates {
    /// Fat.
    pub fat: Option<f64>,
    /// Moisture.
    pub moisture: Option<f64>,
    /// Protein.
    pub protein: Option<f64>,
    /// Of the protein, what is not of the meat.
    pub other_protein: Option<f64>,
    /// Salt.
    pub salt: Option<f64>,
    /// Water activity.
    pub water_activity: Option<f64>,
    /// pH.
    pub ph: Option<f64>,
}

/// What an ingredient is.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Kind {
    /// Meat, meat byproduct or poultry: part of the green weight.
    Meat,
    /// Fish or shellfish: the green weight of what is made of it.
    Fish,
    /// Water or ice.
    Water,
    /// Salt without a curing agent.
    Salt,
    /// A salt, mix or pure substance that brings nitrite or nitrate.
    CuringPremix,
    /// The milk that cheese is made from.
    Milk,
    /// An accelerator of the cure, or a phosphate.
    Additive(Additive),
    /// Oil.
    Oil,
    /// Garlic that is not cooked.
    RawGarlic,
    /// Herbs that are neither dried nor cooked.
    FreshHerbs,
    /// Yogurt, sour cream and the like.
    Yogurt,
    /// Cream.
    Cream,
    /// Anything else.
    Other,
}

impl Kind {
    /// Every kind.
    pub const ALL: [Self; 22] = [
        Self::Meat,
        Self::Fish,
        Self::Water,
        Self::Salt,
        Self::CuringPremix,
        Self::Milk,
        Self::Additive(Additive::AscorbicAcid),
        Self::Additive(Additive::ErythorbicAcid),
        Self::Additive(Additive::SodiumAscorbate),
        Self::Additive(Additive::SodiumErythorbate),
        Self::Additive(Additive::CitricAcid),
        Self::Additive(Additive::SodiumCitrate),
        Self::Additive(Additive::FumaricAcid),
        Self::Additive(Additive::GluconoDeltaLactone),
        Self::Additive(Additive::SodiumAcidPyrophosphate),
        Self::Additive(Additive::Phosphate),
        Self::Oil,
        Self::RawGarlic,
        Self::FreshHerbs,
        Self::Yogurt,
        Self::Cream,
        Self::Other,
    ];

    /// Its key in a document.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Meat => "meat",
            Self::Fish => "fish",
            Self::Water => "water",
            Self::Salt => "salt",
            Self::CuringPremix => "curing-premix",
            Self::Milk => "milk",
            Self::Additive(additive) => additive.key(),
            Self::Oil => "oil",
            Self::RawGarlic => "raw-garlic",
            Self::FreshHerbs => "fresh-herbs",
            Self::Yogurt => "yogurt",
            Self::Cream => "cream",
            Self::Other => "other",
        }
    }
}

impl Kind {
    /// Whether it is part of the green weight.
    #[must_use]
    pub const fn is_green(self) -> bool {
        matches!(self, Self::Meat | Self::Fish)
    }
}

/// Which animal a meat is from.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Animal {
    /// Beef.
    Beef,
    /// Veal.
    Veal,
    /// Pork.
    Pork,
    /// Lamb or mutton.
    Lamb,
    /// Goat.
    Goat,
    /// Venison.
    Venison,
    /// Other mammals.
    OtherMammal,
    /// Chicken.
    Chicken,
    /// Turkey.
    Turkey,
    /// Duck, goose and other birds.
    OtherBird,
}

impl Animal {
    /// Every animal.
    pub const ALL: [Self; 10] = [
        Self::Beef,
        Self::Veal,
        Self::Pork,
        Self::Lamb,
        Self::Goat,
        Self::Venison,
        Self::OtherMammal,
        Self::Chicken,
        Self::Turkey,
        Self::OtherBird,
    ];

    /// Its key in a document.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Beef => "beef",
            Self::Veal => "veal",
            Self::Pork => "pork",
            Self::Lamb => "lamb",
            Self::Goat => "goat",
            Self::Venison => "venison",
            Self::OtherMammal => "other-mammal",
            Self::Chicken => "chicken",
            Self::Turkey => "turkey",
            Self::OtherBird => "other-bird",
        }
    }

    /// Whether it is a bird.
    #[must_use]
    pub const fn is_poultry(self) -> bool {
        matches!(self, Self::Chicken | Self::Turkey | Self::OtherBird)
    }
}

/// Something that goes in.
#[derive(Debug, Clone, PartialEq)]
pub struct Ingredient<'a> {
    /// What it is called.
    pub name: Cow<'a, str>,
    /// What it is.
    pub kind: Kind,
    /// How much of it.
    pub amount: Option<Amount>,
    /// Where the amount stands, or the ingredient where there is none.
    pub place: Place,
    /// The smallest step of the scale it is weighed on, where it is another one.
    pub scale: Option<Mass>,
    /// Which animal it is from.
    pub from: Option<Animal>,
    /// What it brings, for a curing premix whose strength is stated.
    pub strength: Option<Premix>,
    /// How much of it is fat, percent, where it is known: by its label, unless
    /// [`Self::fat_error`] says how far an analysis may be off.
    pub fat: Option<f64>,
    /// How far the analysis of the fat may be off, in points.
    pub fat_error: Option<f64>,
    /// Whether a belly was weighed with its skin, where it is said.
    pub skin_on: Option<bool>,
    /// Whether an ascorbate or erythorbate holds its water of crystallisation.
    pub hydrated: bool,
    /// Whether it is part of the pickle.
    pub in_pickle: bool,
}

/// How a component is cured.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CurePlan {
    /// How the cure reaches the meat.
    pub method: Option<Method>,
    /// How much pickle is pumped in or picked up, as a fraction of green weight.
    pub taken_up: Option<Range<Pump>>,
    /// The ingoing nitrite that the recipe claims, mg/kg of green weight.
    pub claimed: Option<Placed<f64>>,
    /// The temperature that it cures at.
    pub at: Option<Placed<Reading>>,
    /// How long it cures.
    pub time: Option<Placed<Range<Time>>>,
    /// Whether an immersion lasts until meat and pickle are at equilibrium.
    pub equilibrium: Option<bool>,
    /// Added fermentable sugar, in percent.
    pub sugar_percent: Option<f64>,
    /// Whether a lactic culture is added.
    pub culture: Option<bool>,
    /// Where it stands in the document.
    pub place: Place,
}

/// What is done in a step.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum StepKind {
    /// Left at a temperature.
    Hold,
    /// Fermented.
    Ferment,
    /// Smoked warm or hot.
    Smoke,
    /// Smoked cold.
    ColdSmoke,
    /// Cooked.
    Cook,
    /// Rested after cooking.
    Rest,
    /// Chilled.
    Chill,
    /// Packed.
    Pack,
    /// Kept in a refrigerator.
    Refrigerate,
    /// Kept in a freezer.
    Freeze,
    /// Thawed.
    Thaw,
    /// Taken out of its pack.
    Open,
    /// Served.
    Serve,
}

impl StepKind {
    /// Every kind.
    pub const ALL: [Self; 13] = [
        Self::Hold,
        Self::Ferment,
        Self::Smoke,
        Self::ColdSmoke,
        Self::Cook,
        Self::Rest,
        Self::Chill,
        Self::Pack,
        Self::Refrigerate,
        Self::Freeze,
        Self::Thaw,
        Self::Open,
        Self::Serve,
    ];

    /// Its key in a document.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Hold => "hold",
            Self::Ferment => "ferment",
            Self::Smoke => "smoke",
            Self::ColdSmoke => "cold-smoke",
            Self::Cook => "cook",
            Self::Rest => "rest",
            Self::Chill => "chill",
            Self::Pack => "pack",
            Self::Refrigerate => "refrigerate",
            Self::Freeze => "freeze",
            Self::Thaw => "thaw",
            Self::Open => "open",
            Self::Serve => "serve",
        }
    }

    /// Whether the step heats the food.
    #[must_use]
    pub const fn heats(self) -> bool {
        matches!(self, Self::Smoke | Self::Cook | Self::Hold)
    }
}

/// One step.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Step {
    /// What is done.
    pub kind: StepKind,
    /// The temperature around the food.
    pub at: Option<Placed<Reading>>,
    /// For how long.
    pub time: Option<Placed<Range<Time>>>,
    /// The inside temperature it ends at.
    pub to: Option<Placed<Reading>>,
    /// How long the inside stays at that temperature.
    pub hold: Option<Placed<Range<Time>>>,
    /// The relative humidity around the food, in percent: as stated, or worked out from the wet
    /// bulb.
    pub humidity: Option<f64>,
    /// What keeps the surface of the food moist.
    pub moisture: Option<Moisture>,
    /// How long the middle is between 50 and 130 °F on the way to `to`.
    pub come_up: Option<Placed<Range<Time>>>,
    /// The pH measured at the end of the step.
    pub ph: Option<f64>,
    /// The row of the storage chart it is like.
    pub like: Option<&'static Cited<Storage>>,
    /// Whether it is packed without air.
    pub vacuum: bool,
    /// How it is thawed.
    pub how: Option<Thawing>,
    /// Where it stands in the document.
    pub place: Place,
}

impl Step {
    /// Whether it heats, and says to which inside temperature.
    pub(super) const fn names_an_inside(&self) -> bool {
        self.kind.heats() && self.to.is_some()
    }

    /// Whether a cook ends with it: it heats, to an inside temperature above those in which what lives in
    /// food grows.
    pub(super) fn ends_a_cook(&self) -> bool {
        self.names_an_inside() && !self.stays_lukewarm()
    }

    /// Whether the inside is not brought out of the temperatures of the come-up clock.
    pub(super) fn stays_lukewarm(&self) -> bool {
        let band = FSIS_COME_UP.value.high_fahrenheit;
        self.to.is_some_and(|to| to.value.on(Scale::Fahrenheit).value() < band)
    }

    /// Whether what is in a pack without air is so after it.
    pub(super) fn leaves_airless(&self, before: bool) -> bool {
        match self.kind {
            StepKind::Pack => self.vacuum,
            StepKind::Open => false,
            _ => before,
        }
    }

    /// The most of its time; what takes minutes or hours and does not say it counts nothing, and what may take
    /// days has none.
    fn takes_at_most(&self) -> Option<Time> {
        use StepKind::{Cook, Open, Pack, Rest, Serve, Smoke};
        let short = matches!(self.kind, Smoke | Cook | Rest | Pack | Open | Serve);
        let unsaid = short.then(|| seconds(0.0));
        let time = self.time.map(|time| time.value.high()).or(unsaid)?;
        Some(time + self.hold.map_or(seconds(0.0), |hold| hold.value.high()))
    }

    /// Its time, with that for which the inside is held at its end. A hold alone does not say how
    /// long the way up to it takes: it lasts for that, at least.
    pub(super) fn lasts(&self) -> Option<Range<Time>> {
        match (self.time, self.hold) {
            (Some(time), Some(hold)) => time.value.plus(hold.value).ok(),
            (Some(time), None) => Some(time.value),
            (None, hold) => {
                hold.map(|hold| Range::ordered(hold.value.low(), seconds(f64::INFINITY)))
            }
        }
    }
}

/// A file of readings that belongs to a component. Reading a recipe reads no other file:
/// whoever has the file gives its points to [`Component::record`].
#[derive(Debug, Clone, PartialEq)]
pub struct RecordFile<'a> {
    /// Its path, beside the document.
    pub file: Cow<'a, str>,
    /// The heading of the column of times.
    pub time: Cow<'a, str>,
    /// How times are written in it: `seconds`, `minutes`, `hours` or `clock`.
    pub written: TimeColumn,
    /// The headings of the probes inside the food.
    pub probes: Vec<Cow<'a, str>>,
    /// The heading of the dry bulb of the chamber, for a drawing.
    pub chamber: Option<Cow<'a, str>>,
    /// Their scale.
    pub scale: Scale,
    /// How often the logger reads, from 0.001 to 900 s, where it is said; otherwise the usual step of its readings
    /// counts.
    pub interval: Option<Time>,
    /// Where it stands in the document.
    pub place: Place,
}

#[cfg(feature = "trace-csv")]
impl Component<'_> {
    /// Reads [`Self::record`], [`Self::chamber`] and, where none is written, [`Self::cooling`] from what [`Self::recorded_in`] names.
    ///
    /// # Errors
    /// [`CsvFault`] with its line: whatever [`read_csv`] refuses, and a record of more than
    /// `most` readings, which takes 72 bytes each.
    #[cfg_attr(docsrs, doc(cfg(feature = "trace-csv")))]
    pub fn read_record(&mut self, file: impl std::io::Read, most: usize) -> Result<(), CsvFault> {
        let Some(named) = &self.recorded_in else { return Ok(()) };
        let columns = Columns {
            probes: named.probes.iter().map(AsRef::as_ref).collect(),
            chamber: named.chamber.as_deref(),
            ..Columns::new(&named.time, named.written, "", named.scale)
        };
        let (mut inside, mut chamber, mut cooling) = (Vec::new(), Vec::new(), Vec::new());
        for (n, instant) in read_csv(file, &columns)?.enumerate() {
            let instant = instant?;
            if n >= most {
                let message = format!("the record holds more than {most} readings");
                return Err(CsvFault { line: 0, message });
            }
            let at = seconds(instant.inside.seconds());
            inside.push(instant.inside);
            cooling.push(instant.warmest);
            chamber.extend(instant.chamber.and_then(|reading| Point::new(at, reading).ok()));
        }
        (self.record, self.chamber) = (inside, chamber);
        if self.cooling.is_empty() {
            (self.cooling, self.cooling_logged) = (cooling, true);
        }
        Ok(())
    }
}

impl<'a> Recipe<'a> {
    /// A recipe of which nothing is known but its title and whose rules it is held to, to be filled with
    /// `..Recipe::new(title, held_to)`.
    #[must_use]
    pub fn new(title: impl Into<Cow<'a, str>>, held_to: impl Into<Vec<Authority>>) -> Self {
        Self {
            title: title.into(),
            held_to: held_to.into(),
            profile: None,
            date: None,
            measures: None,
            instruments: Instruments::default(),
            components: Vec::new(),
            confirmed: Vec::new(),
        }
    }
}

impl<'a> Component<'a> {
    /// A component of which nothing is known but its name and its class of food, to be
    /// filled with `..Component::new(name, food)`.
    #[must_use]
    pub fn new(name: impl Into<Cow<'a, str>>, food: Food) -> Self {
        Self {
            name: name.into(),
            food,
            raw: false,
            for_infants: false,
            ingredients: Vec::new(),
            cure: None,
            cured_as: Vec::new(),
            finished: None,
            analysis: Analysis::default(),
            proximates: Proximates::default(),
            sold_as: Vec::new(),
            fat_target: None,
            steps: Vec::new(),
            record: Vec::new(),
            chamber: Vec::new(),
            cooling: Vec::new(),
            cooling_logged: false,
            recorded_in: None,
            aims: Vec::new(),
            piece: None,
            made_on: None,
            packed_on: None,
            accepted: Vec::new(),
            place: Place::default(),
        }
    }
}

impl<'a> Ingredient<'a> {
    /// A weighed ingredient of which nothing else is known.
    #[must_use]
    pub fn new(name: impl Into<Cow<'a, str>>, kind: Kind, mass: Mass) -> Self {
        Self {
            name: name.into(),
            kind,
            amount: Some(Amount::Weighed(mass)),
            place: Place::default(),
            scale: None,
            from: None,
            strength: None,
            fat: None,
            fat_error: None,
            skin_on: None,
            hydrated: false,
            in_pickle: false,
        }
    }
}

impl CurePlan {
    /// A cure of which nothing is known but its method.
    #[must_use]
    pub fn by(method: Method) -> Self {
        Self {
            method: Some(method),
            taken_up: None,
            claimed: None,
            at: None,
            time: None,
            equilibrium: None,
            sugar_percent: None,
            culture: None,
            place: Place::default(),
        }
    }
}

impl Component<'_> {
    /// Which bird is in it: chicken or turkey alone, or another, several or none named.
    #[must_use]
    pub fn bird(&self) -> Bird {
        let meats = self.ingredients.iter().filter(|i| i.kind == Kind::Meat);
        let mut birds = meats.filter_map(|meat| meat.from).filter(|animal| animal.is_poultry());
        let bird = |animal| match animal {
            Animal::Chicken => Bird::Chicken,
            Animal::Turkey => Bird::Turkey,
            _ => Bird::Other,
        };
        let Some(first) = birds.next().map(bird) else { return Bird::Other };
        if birds.all(|animal| bird(animal) == first) { first } else { Bird::Other }
    }

    /// The longest time between two readings of [`Self::record`] for which they vouch: by how often
    /// its logger reads, as it is said or by its usual step. A single step is no usual one.
    pub(crate) fn vouched(&self) -> Time {
        let said = self.recorded_in.as_ref().and_then(|file| file.interval);
        vouched(said.or_else(|| usual_step(&self.record)).unwrap_or_default())
    }

    /// The readings by which it cools, and the longest time between two of them for which they vouch.
    pub(crate) fn cools(&self) -> (&[Point], Time) {
        match self.cooling.as_slice() {
            [] => (&self.record, self.vouched()),
            curve if self.cooling_logged => (curve, self.vouched()),
            curve => (curve, seconds(f64::INFINITY)),
        }
    }

    /// Whether it lies in a pickle.
    pub(super) fn has_pickle(&self) -> bool {
        self.ingredients.iter().any(|ingredient| ingredient.in_pickle)
    }

    /// Whether rows in the document are of its cooling, whatever is cooked and whatever follows; a record in a file
    /// may be of the cook alone.
    pub(super) fn writes_its_cooling(&self) -> bool {
        !self.cooling.is_empty() && !self.cooling_logged
    }

    /// The days on which it may be packed; `None` where it does not say when it is made.
    pub(super) fn days_of_packing(&self) -> Option<DaysOfPacking> {
        let made = self.made_on?;
        let cured = self.cure.filter(|cure| cure.method != Some(Method::Ground));
        let cured = cured.map(|cure| cure.time.map(|time| time.value.high()));
        let mut times = self.steps.iter().map(Step::takes_at_most).chain(cured);
        // Begun late in the day, the last hours are of the next.
        let sum = times.try_fold(days(1.0), |sum, time| Some(sum + time?));
        let end = sum.filter(|_| !self.steps.is_empty()).and_then(|sum| made.later(sum));
        Some(DaysOfPacking { made, end })
    }

    /// The last step that ends a cook.
    pub(crate) fn last_cook(&self) -> Option<usize> {
        self.steps.iter().rposition(Step::ends_a_cook)
    }

    /// Whether a step smokes it cold: cheese has no other smoke.
    pub(super) fn is_smoked_cold(&self, step: &Step) -> bool {
        let cheese = self.food == Food::Cheese && step.kind == StepKind::Smoke;
        cheese || step.kind == StepKind::ColdSmoke
    }

    /// Whether an ingredient of any of these kinds is in it.
    pub(super) fn holds(&self, kinds: &[Kind]) -> bool {
        self.ingredients.iter().any(|ingredient| kinds.contains(&ingredient.kind))
    }

    /// The cell by which it needs neither time nor temperature, by its analysis and one authority.
    pub(super) fn needs_none(&self, authority: Authority) -> Option<&'static Cited<Cell>> {
        shelf::needs_none(self.proximates.water_activity, self.proximates.ph, authority)
    }

    /// Whether there is poultry in it.
    #[must_use]
    pub fn animals(&self) -> Animals {
        let mut meats = self.ingredients.iter().filter(|i| i.kind == Kind::Meat).peekable();
        if meats.peek().is_none() {
            return Animals::Unknown;
        }
        let mut animals = Animals::NoPoultry;
        for meat in meats {
            match meat.from {
                Some(animal) if animal.is_poultry() => return Animals::SomePoultry,
                Some(_) => {}
                None => animals = Animals::Unknown,
            }
        }
        animals
    }
}

/// The days on which something may be packed.
#[derive(Debug, Clone, Copy)]
pub(super) struct DaysOfPacking {
    /// The day it is made.
    pub(super) made: Date,
    /// The day its steps end; open where a step may take days and does not say how many.
    pub(super) end: Option<Date>,
}

impl DaysOfPacking {
    pub(super) fn hold(&self, packed: Date) -> bool {
        packed >= self.made && self.end.is_none_or(|end| packed <= end)
    }
}

/// The step that half of the steps of a record are no longer than; `None` of fewer than two.
fn usual_step(record: &[Point]) -> Option<Time> {
    let between = |pair: &[Point]| match pair {
        [from, to] => to.seconds() - from.seconds(),
        _ => f64::INFINITY,
    };
    let mut steps: Vec<f64> = record.windows(2).map(between).collect();
    let half = steps.len().checked_sub(2)?.saturating_add(1) / 2;
    let (_, usual, _) = steps.select_nth_unstable_by(half, f64::total_cmp);
    Some(seconds(*usual))
}
