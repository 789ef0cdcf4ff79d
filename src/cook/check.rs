use uom::si::f64::{TemperatureInterval, Time};

use super::hold::food_code;
use super::process::{COME_UP, HOT, HUMIDITY, LETHALITY, PARTIAL, Process, RECORD, REHEAT, SLOW};
use super::record::{Bird, Product};
use super::table::{
    CANADA, FSIS_COME_UP, FSIS_MEAT_DWELL, FSIS_POULTRY_SINGLE, UNITED_KINGDOM,
    UNITED_KINGDOM_BURGERS, US_CONSUMER,
};
use super::{Dwell, Endpoint};
use crate::authority::Authority;
use crate::cite::{Cited, Date, Row};
use crate::finding::{
    Answer, Finding, Force, Held, Limit, Mend, Missing, Place, Rule, THERMOMETER, Verdict,
};
use crate::food::Food;
use crate::range::Range;
use crate::units::{PrintedTemperature, Reading, Scale, seconds};

const ENDPOINT: Rule =
    Rule::new("cook/endpoint", "hot enough inside, for long enough", Force::Safety);
const REST: Rule =
    Rule::new("cook/rest", "the rest that belongs to the inside temperature", Force::Safety);
const ANSWERED: Rule =
    Rule::new("cook/authority", "an authority that says how this food is cooked", Force::Safety);

/// The rules of this room.
pub const RULES: [Rule; 11] =
    [ENDPOINT, REST, ANSWERED, RECORD, COME_UP, SLOW, HUMIDITY, LETHALITY, REHEAT, PARTIAL, HOT];

pub(super) const INSIDE: Missing = Missing::new(
    "the inside temperature the cook ends at",
    "write to = \"… °F\", measured in the coldest part",
);
const HELD: Missing = Missing::new(
    "how long the coldest part is held at the temperature",
    "write hold = \"… min\" on the step",
);
const HELD_OR_HOTTER: Missing = Missing {
    say: "write hold = \"… min\" on the step, or cook to a temperature that needs no hold",
    ..HELD
};
const RESTED: Missing = Missing::new(
    "the rest after cooking",
    "write a step do = \"rest\" with for = \"3 min\" or more",
);
const ANIMAL: Missing = Missing::new(
    "which animal the meat is from",
    "write from = \"pork\" on every ingredient of kind \"meat\"",
);
const NO_ROW: Missing = Missing::new(
    "a row of this authority that is in force on the day of the recipe",
    "change the date of the recipe, or hold it against another authority",
);

const POULTRY_NOTE: &str = "An older single endpoint that the guideline still lists; it prefers its tables of times. Counts only with its humidity and come-up time.";
const DWELL_NOTE: &str =
    "Counts only with the humidity and the come-up time of the same guideline.";
const ROAST_NOTE: &str = "The chart of whole roasts, which asks for an oven of its own; a steak or chop that stays whole has a shorter row.";
const HOTTER_NOTE: &str = "A hotter row of the same table asks for less time.";

/// Whether a food holds poultry.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Animals {
    /// None of it is.
    NoPoultry,
    /// Some of it is, or all.
    SomePoultry,
    /// The recipe does not say.
    Unknown,
}

/// How a cook ends, as the recipe plans it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Plan {
    /// The class of the food.
    pub food: Food,
    /// Whether there is poultry in it.
    pub animals: Animals,
    /// The inside temperature that the thermometer shows at the end.
    pub inside: Option<Reading>,
    /// Which bird, where there is poultry in it.
    pub bird: Bird,
    /// The most fat it may hold, percent, where it is known.
    pub fat: Option<f64>,
    /// How far the thermometer may be off.
    pub thermometer: Option<TemperatureInterval>,
    /// Whether that temperature is planned, and not only recorded.
    pub planned: bool,
    /// How long the coldest part is held there.
    pub held: Option<Range<Time>>,
    /// The gap of a record during which it may have been held there.
    pub gap: Option<Range<Time>>,
    /// How long it rests afterwards.
    pub rested: Option<Range<Time>>,
    /// Where the temperature stands in the document.
    pub place: Place,
}

impl Plan {
    fn inside_within(&self) -> Option<Range<Reading>> {
        let inside = self.inside?;
        match self.thermometer {
            Some(tolerance) => inside.within(tolerance).ok(),
            None => Range::exactly(inside).ok(),
        }
    }

    /// A finding without a stated tolerance cannot meet.
    fn doubted(&self, finding: Finding) -> Finding {
        if finding.verdict == Verdict::Meets && self.thermometer.is_none() {
            finding.left_open(THERMOMETER)
        } else {
            finding
        }
    }
}

/// Whether an authority says how a food is cooked.
#[must_use]
pub fn answers(authority: Authority, food: Food) -> bool {
    table_for(authority, food, false, Bird::Other, None).is_some()
        || endpoint_row(authority, food, Animals::NoPoultry, None).is_some()
}

/// The table of temperatures and times that an authority holds a food to; `None` where it has
/// single endpoints, or nothing.
#[must_use]
pub fn table_for(
    authority: Authority,
    food: Food,
    poultry: bool,
    bird: Bird,
    fat: Option<f64>,
) -> Option<Product> {
    let meat = food.is_meat() && food != Food::Leftovers;
    match authority {
        Authority::UsFsis if meat && poultry => Some(Product::Poultry { bird, fat }),
        Authority::UsFsis if meat => Some(Product::Meat),
        Authority::GreatBritain if food == Food::GroundMeat && !poultry => {
            Some(Product::Table(&UNITED_KINGDOM_BURGERS))
        }
        Authority::GreatBritain if food.is_meat() || food == Food::Casseroles => {
            Some(Product::Table(&UNITED_KINGDOM))
        }
        _ => match food_code(authority, food, poultry) {
            [] => None,
            rows => Some(Product::Table(rows)),
        },
    }
}

/// The finding on food that is served before it is cooked.
#[must_use]
pub fn served_raw(place: Place) -> Finding {
    Finding::new(&ENDPOINT, Verdict::Unproven).at(place).missing(Missing::new(
        "that it is cooked before it is served",
        "write the step that cooks it before the one that serves it",
    ))
}

/// The finding when none of the authorities of a recipe says how the food is cooked. Whoever answers for it needs a cook
/// that somebody's rows call a whole one, or food that `ripens` instead of being cooked.
#[must_use]
pub fn unanswered(plan: &Plan, ripens: bool, day: Option<Date>) -> Finding {
    const AUTHORITY: Missing = Missing::new(
        "an authority that says how this food is cooked",
        "add one to held_to, for example \"us-consumer\" or \"us-fsis\"",
    );
    let cooked = |a: Authority| completes(plan, a, day) == Some(Verdict::Meets);
    let instead = ripens && !plan.planned && !holds_poultry(plan.food, plan.animals);
    let answered_for = instead || Authority::ALL.into_iter().any(cooked);
    let missing = if answered_for { AUTHORITY.answered_by(Answer::NoTable) } else { AUTHORITY };
    Finding::unproven(&ANSWERED, missing, plan.place)
}

fn holds_poultry(food: Food, animals: Animals) -> bool {
    animals == Animals::SomePoultry || matches!(food, Food::Poultry | Food::GroundPoultry)
}

/// The row of an authority that gives a food one inside temperature; `None` where it gives none, or pairs of
/// temperature and time. Any poultry in it makes it poultry; bacon is a whole cut that is cooked like one.
///
/// ```
/// use greenweight::authority::Authority;
/// use greenweight::cook::{Animals, endpoint_row};
/// use greenweight::food::Food;
///
/// let row = |food| endpoint_row(Authority::UsConsumer, food, Animals::NoPoultry, None);
/// assert!(row(Food::WholeMeat).is_some_and(|row| row.value.rest.value > 0.0));
/// assert!(row(Food::Cheese).is_none());
/// ```
#[must_use]
pub fn endpoint_row(
    authority: Authority,
    food: Food,
    animals: Animals,
    day: Option<Date>,
) -> Option<&'static Cited<Endpoint>> {
    let poultry = holds_poultry(food, animals);
    let food = match (food, animals) {
        (Food::GroundMeat, Animals::SomePoultry) => Food::GroundPoultry,
        (food, Animals::SomePoultry) if food.is_meat() => match food {
            Food::GroundPoultry | Food::Leftovers => food,
            _ => Food::Poultry,
        },
        (Food::Bacon, _) => Food::WholeMeat,
        (food, _) => food,
    };
    let (table, food): (&[Cited<Endpoint>], Food) = match authority {
        Authority::UsFsis if poultry => (&FSIS_POULTRY_SINGLE, Food::Poultry),
        Authority::Canada => (&CANADA, food),
        _ => (&US_CONSUMER, food),
    };
    table.iter().find(|row| {
        row.value.authority == authority && row.value.food == food && row.row.in_force.on(day)
    })
}

/// Checks how a cook ends against the rules of one authority on one day.
pub fn check(
    plan: &Plan,
    process: &Process<'_>,
    authority: Authority,
    day: Option<Date>,
    report: &mut impl FnMut(Finding),
) {
    if !answers(authority, plan.food) {
        return;
    }
    let unproven =
        |missing| Finding::new(&ENDPOINT, Verdict::Unproven).missing(missing).at(plan.place);
    let poultry = holds_poultry(plan.food, plan.animals);
    let told = poultry || plan.animals == Animals::NoPoultry || !plan.food.is_raw_meat();
    let row = endpoint_row(authority, plan.food, plan.animals, day);
    let product = table_for(authority, plan.food, poultry, plan.bird, plan.fat);
    if !told {
        // An animal that is not named may be a bird.
        return report(unproven(ANIMAL));
    }
    let recorded = product.and_then(|product| process.check_record(product));
    let planned = recorded.is_none() || plan.planned;
    // The single endpoint of poultry, where it is surely reached, is enough.
    let single = |inside: &Range<Reading>| {
        row.is_some_and(|row| {
            let limit = Limit::AtLeast(row.value.temperature.on(inside.low().scale()));
            limit.judge(inside) == Verdict::Meets
        })
    };
    let at_once = row.is_some() && plan.inside_within().is_some_and(|inside| single(&inside));
    let by_time = product.filter(|_| !at_once);
    match (plan.inside_within(), row, by_time) {
        _ if !planned => {}
        (Some(inside), _, Some(product)) => report(dwell(plan, &inside, &product, authority, day)),
        (None, _, Some(_)) => report(unproven(INSIDE)),
        (Some(inside), Some(row), None) => endpoint(plan, &inside, row, report),
        (None, Some(row), None) => {
            let limit = Limit::AtLeast(row.value.temperature.on(Scale::Fahrenheit));
            report(unproven(INSIDE).limit(limit).row(&row.row));
        }
        (_, None, None) => report(unproven(NO_ROW)),
    }
    recorded.into_iter().for_each(&mut *report);
    if authority == Authority::UsFsis && FSIS_COME_UP.row.in_force.on(day) {
        report(process.check_come_up(plan.food));
        report(process.check_humidity());
    }
    let reheated = matches!(
        plan.food,
        Food::Leftovers | Food::OtherHamReheated | Food::PlantPackedHamReheated
    );
    if reheated && !food_code(authority, plan.food, poultry).is_empty() {
        report(process.check_reheat());
    }
}

/// Whether a cook is a whole one by the temperatures, times and rests of an authority; `None` where
/// it does not say how the food is cooked.
#[must_use]
pub fn completes(plan: &Plan, authority: Authority, day: Option<Date>) -> Option<Verdict> {
    let mut worst = None;
    check(plan, &Process::unknown(plan.place), authority, day, &mut |finding| {
        if [ENDPOINT, REST].contains(finding.rule) {
            worst = worst.max(Some(finding.verdict));
        }
    });
    worst
}

fn shown(plan: &Plan, finding: Finding, inside: &Range<Reading>) -> Finding {
    let finding = finding.found(inside);
    plan.inside.map_or(finding, |reading| finding.nominal(reading))
}

fn endpoint(
    plan: &Plan,
    inside: &Range<Reading>,
    row: &'static Cited<Endpoint>,
    report: &mut impl FnMut(Finding),
) {
    let scale = inside.low().scale();
    let limit = Limit::AtLeast(row.value.temperature.on(scale));
    let verdict = limit.judge(inside);
    let finding = Finding::new(&ENDPOINT, verdict).limit(limit).row(&row.row).at(plan.place);
    let finding = shown(plan, finding, inside);
    let finding = match row.value.authority {
        Authority::UsFsis => finding.note(POULTRY_NOTE),
        _ => finding,
    };
    let finding = plan.doubted(finding);
    report(match (finding.verdict, finding.missing) {
        (Verdict::Meets, _) | (_, Some(_)) => finding,
        _ => finding.mend(Mend::CookTo(above(row.value.temperature.on(scale), plan.thermometer))),
    });
    if row.value.rest > seconds(0.0) {
        let limit = Limit::AtLeast(row.value.rest);
        let finding =
            |verdict| Finding::new(&REST, verdict).limit(limit).row(&row.row).at(plan.place);
        report(match plan.rested.or(plan.held) {
            Some(rested) => {
                let verdict = limit.judge(&rested);
                let finding = finding(verdict).found(&rested);
                match verdict {
                    Verdict::Meets => finding,
                    Verdict::Unproven if plan.rested.is_none() => {
                        finding.mend(Mend::HoldFor(row.value.rest)).in_gap(plan.gap)
                    }
                    _ => finding.mend(Mend::HoldFor(row.value.rest)),
                }
            }
            None => finding(Verdict::Unproven).missing(RESTED),
        });
    }
}

/// The reading at which a thermometer that may be off still proves a temperature.
pub(super) fn above(temperature: Reading, thermometer: Option<TemperatureInterval>) -> Reading {
    let within = thermometer.and_then(|tolerance| temperature.within(tolerance).ok());
    within.map_or(temperature, |range| range.high())
}

/// The row at or below a reading: never between two rows.
///
/// A reading is held against the figure printed on its own scale, so 68.3 °C is the
/// row of 155 °F, which prints 68.3 °C, and 68.2 °C is the row below.
///
/// ```
/// use greenweight::{cook::dwell_row, units::{PrintedTemperature, Reading, Scale, seconds}};
///
/// let row = dwell_row(Reading::new(68.3, Scale::Celsius)?).ok_or("below the table")?;
/// assert_eq!(row.value.temperature, PrintedTemperature::Both(155.0, 68.3));
/// assert_eq!(row.value.for_6_5_log, seconds(22.0));
///
/// let row = dwell_row(Reading::new(68.2, Scale::Celsius)?).ok_or("below the table")?;
/// assert_eq!(row.row.key, "154F");
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[must_use]
pub fn dwell_row(inside: Reading) -> Option<&'static Cited<Dwell>> {
    let reached = |row: &&Cited<Dwell>| {
        Limit::AtLeast(row.value.temperature.on(inside.scale())).met_by(inside) == Some(true)
    };
    FSIS_MEAT_DWELL.iter().rev().find(reached)
}

/// A row of a table of times, as a product of some bird or fat has it.
type Asked = (PrintedTemperature, Time, &'static Row);

/// Holds a cook against the table of times of its product.
fn dwell(
    plan: &Plan,
    inside: &Range<Reading>,
    product: &Product,
    authority: Authority,
    day: Option<Date>,
) -> Finding {
    let unproven = |missing| {
        Finding::new(&ENDPOINT, Verdict::Unproven).found(inside).missing(missing).at(plan.place)
    };
    let rows = || product.rows().filter(|(_, _, row)| row.in_force.on(day));
    let Some(coldest) = rows().next() else { return unproven(NO_ROW) };
    let scale = inside.low().scale();
    let zero = seconds(0.0);
    let held = plan.held.unwrap_or(Range::ordered(zero, zero));
    let reached = |reading: Reading| {
        let at = |(temperature, _, _): &Asked| Limit::AtLeast(temperature.on(reading.scale()));
        rows().filter(|row| at(row).met_by(reading) == Some(true)).last()
    };
    let needs = |(_, asks, _): Asked| Limit::AtLeast(asks);
    let (surest, best) = (reached(inside.low()), reached(inside.high()));
    let meets = surest.is_some_and(|row| needs(row).met_by(held.low()) == Some(true));
    let possible = best.is_some_and(|row| needs(row).met_by(held.high()) == Some(true));
    let row = surest.or(best).unwrap_or(coldest);
    let at_once = rows().find(|&(_, asks, _)| asks <= zero);
    let (temperature, asks, cited) = row;
    let (verdict, missing) = match (meets, best) {
        (true, _) => (Verdict::Meets, None),
        (false, None) => (Verdict::Breaks, None),
        (false, Some(_)) if plan.held.is_none() => {
            let held = if at_once.is_some() { HELD_OR_HOTTER } else { HELD };
            (Verdict::Unproven, Some(held))
        }
        (false, Some(_)) if possible => (Verdict::Unproven, None),
        (false, Some(_)) => (Verdict::Breaks, None),
    };
    let roast = matches!(plan.food, Food::WholeMeat | Food::Bacon | Food::RawHam);
    let wrong = verdict != Verdict::Meets && surest.is_some();
    let note = match product {
        Product::Table(_) if roast && authority.is_food_code() => Some(ROAST_NOTE),
        // The mend is a longer hold here.
        Product::Table(_) if wrong && rows().any(|(_, time, _)| time < asks) => Some(HOTTER_NOTE),
        Product::Table(_) => None,
        _ => Some(DWELL_NOTE),
    };
    let finding = Finding::new(&ENDPOINT, verdict).row(cited).at(plan.place);
    let finding = Finding { note, ..finding };
    let finding = Finding { missing, ..finding };
    // Where no row is reached, or one that asks for no time, the temperature is what is
    // judged; everywhere else the time at it.
    let at = temperature.on(scale);
    let timed = best.is_some() && asks > zero && plan.held.is_some();
    let finding = if timed {
        let shown = plan.inside.unwrap_or(inside.low());
        finding
            .nominal(Held { time: held.low(), at: shown })
            .found(&Range::ordered(
                Held { time: held.low(), at: inside.low() },
                Held { time: held.high(), at: inside.low() },
            ))
            .limit(needs(row).map(|time| Held { time, at }))
    } else {
        let limit = match best {
            Some(_) if missing.is_some() => needs(row).map(|time| Held { time, at }.into()),
            _ => Limit::AtLeast(at.into()),
        };
        Finding { limit: Some(limit), ..shown(plan, finding, inside) }
    };
    let mend = match surest {
        Some((_, asks, _)) => Some(Mend::HoldFor(asks)),
        None => at_once.map(|(temperature, _, _)| {
            Mend::CookTo(above(temperature.on(scale), plan.thermometer))
        }),
    };
    let finding = match mend {
        Some(mend) if verdict != Verdict::Meets => finding.mend(mend),
        _ => plan.doubted(finding),
    };
    match verdict {
        Verdict::Unproven if possible => finding.in_gap(plan.gap),
        _ => finding,
    }
}
