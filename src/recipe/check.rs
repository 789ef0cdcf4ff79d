use uom::si::f64::Time;

use super::document::{Component, Recipe, Step, StepKind};
use super::{composing, curing};
use crate::authority::Authority;
use crate::chill::{self, Cooling, Ferment, Holds, Stay, Was};
use crate::cook::{self, Plan, Process, Stage};
use crate::finding::{Finding, Force, Limit, Missing, Rule, Verdict};
use crate::food::Food;
use crate::range::Range;
use crate::shelf;
use crate::smoke::{self, ColdSmoke, SmokedFish};
use crate::store::{self, Thawing};
use crate::units::{Reading, Scale, seconds};
use crate::{cure, fat};

const WARM: Rule = Rule::new("store/warm-time", "time above refrigeration", Force::Safety);

const UNJUDGED: Missing = Missing::new(
    "a rule for time at this temperature: this version holds none",
    "keep it at 40 °F (4 °C) or below, or have the time in the warm checked by someone licensed to",
);

const HOW_COLD: Missing =
    Missing::new("how cold it is where it is chilled", "write at = \"… °F\" on the step");
const HOW_WARM: Missing =
    Missing::new("how warm it is in this step", "write at = \"… °F\" on the step");
const DRYING: Missing = Missing::new(
    "what makes a raw, dried product safe: its cure, its acid and its drying together",
    "have the process checked by someone licensed to; an analysis of water activity and pH may show that it needs neither time nor temperature",
);

/// Every rule that can be reached from a recipe, room by room.
pub const RULES: [&[Rule]; 10] = [
    &[WARM],
    &curing::RULES,
    &cure::RULES,
    &composing::RULES,
    &fat::RULES,
    &cook::RULES,
    &chill::RULES,
    &shelf::RULES,
    &smoke::RULES,
    &store::RULES,
];

/// A finding and the component it is about.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Checked {
    /// Which component, counted from zero.
    pub component: usize,
    /// The finding.
    pub finding: Finding,
}

impl Recipe<'_> {
    /// Runs every rule that applies, in the order of the document.
    #[must_use]
    pub fn check(&self) -> Vec<Checked> {
        let mut findings = Vec::with_capacity(self.components.len().saturating_mul(8));
        for (index, component) in self.components.iter().enumerate() {
            let mut report = |finding| findings.push(Checked { component: index, finding });
            self.check_cure(component, &mut report);
            self.check_composition(component, &mut report);
            self.check_cook(component, &mut report);
            self.check_cooling(component, &mut report);
            self.check_smoke(component, &mut report);
            self.check_store(component, &mut report);
            self.check_warm(component, &mut report);
            self.check_packs(component, &mut report);
            self.check_thaws(component, &mut report);
            self.check_sauce(component, &mut report);
        }
        findings
    }

    fn check_cook(&self, component: &Component<'_>, report: &mut impl FnMut(Finding)) {
        let cooked_by_rule = component.food.is_meat()
            || matches!(component.food, Food::Fish | Food::Eggs | Food::Casseroles);
        if component.raw || !cooked_by_rule {
            return;
        }
        let to = |step: &Step| step.to.map(|to| to.value);
        let heats = || component.steps.iter().enumerate().filter(|(_, step)| step.kind.heats());
        let ends = heats().filter(|(_, step)| step.to.is_some());
        let hottest = ends.max_by(|(_, a), (_, b)| compare(to(a), to(b)));
        // The rest that counts is the one right after the cook.
        let next = hottest.and_then(|(n, _)| component.steps.get(n.saturating_add(1)));
        let rest = next.filter(|step| step.kind == StepKind::Rest);
        let end = hottest.map_or(component.steps.len(), |(n, _)| n);
        let hottest = hottest.map(|(_, step)| step);
        let inside = lower(hottest.and_then(to), highest(component));
        let planned = hottest.and_then(|step| step.hold).map(|hold| hold.value);
        let place = hottest.and_then(|step| step.to).map(|to| to.place);
        let last = heats().next_back().map(|(_, step)| step.place);
        let plan = Plan {
            food: component.food,
            animals: component.animals(),
            bird: component.bird(),
            fat: self.blend(component, |i| !i.in_pickle).map(|blend| blend.fat.high()),
            inside,
            thermometer: self.instruments.thermometer,
            planned: hottest.is_some(),
            held: shorter(planned, inside.and_then(|inside| recorded(component, inside))),
            rested: rest.and_then(|step| step.time).map(|time| time.value),
            place: place.or(last).unwrap_or(component.place),
        };
        let stages: Vec<_> = heats()
            .filter(|(n, step)| *n <= end && warms(step))
            .map(|(_, step)| Stage {
                at: step.at.map(|at| at.value),
                time: step.time.map(|time| time.value),
                moisture: step.moisture,
                humidity: step.humidity,
            })
            .collect();
        let slow = slow_stages(component, end, |_| true);
        let come_up = hottest.and_then(|step| step.come_up).map(|time| longer(time.value, slow));
        let process = Process {
            stages: &stages,
            endpoint: inside,
            piece: component.piece,
            come_up,
            smoked_cold: slow_stages(component, end, |kind| kind == StepKind::ColdSmoke),
            record: &component.record,
            aims: &component.aims,
            thermometer: self.instruments.thermometer,
            place: plan.place,
        };
        if let Some(named) = component.recorded_in.as_ref().filter(|_| component.record.is_empty())
        {
            report(cook::unread_record(named.place));
        }
        let plant = self.held_to.contains(&Authority::UsFsis);
        if let Some(slow) = slow.filter(|_| component.food.is_meat() && !plant) {
            report(cook::slow_warming(slow, plan.place));
        }
        if let Some(first) = broken_off(component) {
            let time = first.time.map(|time| time.value);
            report(cook::partial(time, self.by_food_code(component), first.place));
        }
        let mut answered = false;
        for &authority in &self.held_to {
            answered |= cook::answers(authority, component.food);
            cook::check(&plan, &process, authority, self.date, report);
        }
        if !answered {
            report(cook::unanswered(plan.place));
        }
        process.aims.iter().filter_map(|aim| process.check_lethality(aim)).for_each(report);
    }

    /// Whether it is held to an edition of the Food Code that says how the food is cooked.
    fn by_food_code(&self, component: &Component<'_>) -> bool {
        self.held_to.iter().any(|&a| !cook::food_code(a, component.food, false).is_empty())
    }

    /// Cooked food that is kept is cooled, and how fast is judged.
    fn check_cooling(&self, component: &Component<'_>, report: &mut impl FnMut(Finding)) {
        let Some(cook) = end_of_cook(component) else { return };
        let Some(cold) = component.steps.iter().skip(cook).find(|step| chills(step)) else {
            return;
        };
        let cools = component.food.is_meat()
            || matches!(component.food, Food::Casseroles | Food::Fish | Food::Eggs);
        if !cools {
            return;
        }
        let curve = match component.cooling.as_slice() {
            [] => component.record.as_slice(),
            curve => curve,
        };
        let [nitrite, ascorbate] = self.ingoing(component);
        let cooling = Cooling {
            curve,
            thermometer: self.instruments.thermometer,
            holds: Holds {
                nitrite,
                ascorbate,
                brine: analysed_brine(component),
                activity: component.proximates.water_activity,
            },
            place: cold.place,
        };
        let meat = component.food.is_meat() || component.food == Food::Casseroles;
        // What dries or sours after the cook was another food while it cooled.
        let after = || component.steps.iter().skip(cook.saturating_add(1));
        let dries_later = after().any(|step| {
            step.kind.heats() || matches!(step.kind, StepKind::ColdSmoke | StepKind::Ferment)
        });
        let found = self
            .held_to
            .iter()
            .filter(|&&authority| meat || chill::cools_any_food(authority))
            .filter(|&&authority| dries_later || component.needs_none(authority).is_none())
            .filter_map(|&authority| chill::check(&cooling, authority, self.date));
        found.for_each(report);
    }

    fn check_smoke(&self, component: &Component<'_>, report: &mut impl FnMut(Finding)) {
        for (n, step) in component.steps.iter().enumerate() {
            // Cheese has no hot smoke: every smoke of it is a cold one.
            let cheese = component.food == Food::Cheese && step.kind == StepKind::Smoke;
            if step.kind != StepKind::ColdSmoke && !cheese {
                continue;
            }
            let later = component.steps.iter().skip(n).any(|step| step.ends_a_cook());
            let smoke = ColdSmoke {
                food: component.food,
                cooked_later: later,
                at: step.at.map(|at| at.value),
                thermometer: self.instruments.thermometer,
                time: step.time.map(|time| time.value),
                place: step.at.map_or(step.place, |at| at.place),
            };
            if component.food.is_meat() {
                smoke::meat_never_cooked(&smoke).into_iter().for_each(&mut *report);
                continue;
            }
            let practice = [None];
            let authorities = self.held_to.iter().copied().map(Some).chain(practice);
            let mut answered = false;
            for authority in authorities {
                answered |= smoke::answers(authority, component.food);
                smoke::check(&smoke, authority, self.date, report);
            }
            if !answered {
                report(smoke::unanswered(step.place));
            }
        }
        self.check_smoked_fish(component, report);
        let fish = component.food == Food::Fish;
        let smokes = |step: &Step| {
            step.kind == StepKind::ColdSmoke || (fish && step.kind == StepKind::Smoke)
        };
        let preserves = component.cure.is_some() || component.steps.iter().any(smokes);
        let place = component.cure.map_or(component.place, |cure| cure.place);
        if preserves && component.food != Food::Cheese {
            let reminder = self.held_to.iter().find_map(|&a| smoke::variance(a, place));
            reminder.into_iter().for_each(report);
        }
    }

    fn check_smoked_fish(&self, component: &Component<'_>, report: &mut impl FnMut(Finding)) {
        let smokes = |step: &&Step| matches!(step.kind, StepKind::Smoke | StepKind::ColdSmoke);
        let Some(smoke) = component.steps.iter().find(smokes) else { return };
        if component.food != Food::Fish {
            return;
        }
        let ends = component.steps.iter().filter(|step| step.ends_a_cook());
        let hottest = ends.max_by(|a, b| compare(a.to.map(|to| to.value), b.to.map(|to| to.value)));
        let cold = hottest.is_none() && smoke.kind == StepKind::ColdSmoke;
        let [nitrite, _] = self.ingoing(component);
        let fish = SmokedFish {
            cold,
            airless: component.steps.iter().any(|step| step.kind == StepKind::Pack && step.vacuum),
            brine: analysed_brine(component),
            nitrite,
            less_salt: component.cured_as.contains(&"fda/sablefish-salmon-shad"),
            inside: hottest.and_then(|step| step.to).map(|to| to.value),
            thermometer: self.instruments.thermometer,
            held: hottest.and_then(|step| step.hold).map(|hold| hold.value),
            place: hottest.map_or(smoke.place, |step| step.place),
        };
        for &authority in &self.held_to {
            smoke::check_fish(&fish, authority, report);
        }
        let off = self.instruments.thermometer;
        if let Some(cure) = component.cure {
            let time = cure.time.map(|time| time.value);
            report(smoke::check_brining(cure.at, time, off, cure.place));
        } else if component.ingredients.iter().any(|ingredient| ingredient.in_pickle) {
            // A brine without anything that cures is a hold.
            let before = component.steps.iter().take_while(|step| !smokes(step));
            for step in before.filter(|step| step.kind == StepKind::Hold) {
                let time = step.time.map(|time| time.value);
                report(smoke::check_brining(step.at, time, off, step.place));
            }
        }
    }

    /// Time in the warm that no rule of this version judges is said to be unproven, and
    /// not passed over.
    fn check_warm(&self, component: &Component<'_>, report: &mut impl FnMut(Finding)) {
        let cooked_at = end_of_cook(component);
        let needs_none = self.held_to.iter().any(|&a| component.needs_none(a).is_some());
        let by_code = self.by_food_code(component) && !needs_none;
        let (mut stays, mut held_hot, mut place) = (Vec::new(), Vec::new(), component.place);
        let mut ready = Vec::new();
        // Of several stays the longest is pointed at.
        let mut longest: Option<Time> = None;
        let stages: Vec<_> = component
            .steps
            .iter()
            .filter(|step| step.kind == StepKind::Ferment)
            .map(|step| Ferment {
                at: step.at.map(|at| at.value),
                time: step.time.map(|time| time.value),
                ph: step.ph,
                place: step.place,
            })
            .collect();
        let keeps_by_itself = component.cure.is_some()
            || component.steps.iter().any(|step| step.kind == StepKind::Ferment);
        let after_the_cook = |n: usize| cooked_at.is_some_and(|cook| n > cook);
        // Cooked, or eaten as it is; what is sold raw is cooked by whoever eats it.
        let exposed = |n: usize| !component.raw && (cooked_at.is_none() || after_the_cook(n));
        let (mut ferments, mut chilled) = (false, false);
        for &authority in &self.held_to {
            let finding = chill::check_fermentation(&stages, authority);
            ferments |= finding.is_some();
            finding.into_iter().for_each(&mut *report);
        }
        for (n, step) in component.steps.iter().enumerate() {
            chilled |= after_the_cook(n) && chills(step);
            let before_the_end = cooked_at.is_some_and(|cook| n <= cook);
            let unjudged = match step.kind {
                // Stages of a cook that ends somewhere are the cook's.
                StepKind::Smoke | StepKind::Cook => {
                    !before_the_end && component.food != Food::Cheese
                }
                StepKind::Hold | StepKind::Rest | StepKind::Chill => true,
                StepKind::Pack | StepKind::Serve => true,
                StepKind::Thaw => !self.held_to.iter().any(|&a| store::says_thawing(a)),
                // A fermentation has clocks of its own, where the authority has any.
                StepKind::Ferment => !ferments,
                StepKind::ColdSmoke | StepKind::Refrigerate => false,
                StepKind::Freeze | StepKind::Open => false,
            };
            let Some(at) = step.at else {
                // Cooked food that is chilled somewhere: how cold it is there decides how long it may be.
                let clocked = self.held_to.iter().any(|&a| chill::says_how_long(a));
                let cooling = step.kind == StepKind::Chill
                    && after_the_cook(n)
                    && clocked
                    && component.cooling.is_empty();
                let unproven = Finding::new(&WARM, Verdict::Unproven).at(step.place);
                if cooling {
                    report(unproven.missing(HOW_COLD));
                } else if unjudged && takes_time(step) {
                    report(unproven.missing(HOW_WARM));
                }
                continue;
            };
            let stay = Stay {
                at: at.value,
                time: step.time.map(|time| time.value),
                was: if after_the_cook(n) && !chilled { Was::Hot } else { Was::Cold },
            };
            let ceiling = store::HOME_REFRIGERATOR.value.on(at.value.scale());
            let warm = Limit::AtMost(ceiling).met_by(at.value) == Some(false);
            let served = matches!(step.kind, StepKind::Hold | StepKind::Serve);
            // What is cured or fermented and never cooked dries by rules of its own.
            let dries = step.kind == StepKind::Hold && cooked_at.is_none() && keeps_by_itself;
            if unjudged && !dries && exposed(n) {
                ready.push(stay);
            }
            if warm && served && after_the_cook(n) && by_code && !chilled {
                let roast = matches!(component.food, Food::WholeMeat | Food::RawHam);
                let off = self.instruments.thermometer;
                report(cook::hot_holding(at.value, roast, off, at.place));
                // Hot enough for a shop may be warm by another's rule.
                held_hot.push(stay);
                place = at.place;
                continue;
            }
            let says = |&authority: &Authority| {
                chill::says_how_long(authority) || (exposed(n) && chill::says_exposure(authority))
            };
            let judged = step.kind != StepKind::Thaw && !dries && self.held_to.iter().any(says);
            if unjudged && judged {
                stays.push(stay);
                let time = stay.time.map(|time| time.high());
                if time.is_none() || time > longest {
                    (place, longest) = (at.place, time);
                }
                continue;
            }
            if warm && unjudged {
                let known = Range::ordered(at.value, at.value);
                report(
                    Finding::new(&WARM, Verdict::Unproven)
                        .found(&known)
                        .limit(Limit::AtMost(ceiling))
                        .row(&store::HOME_REFRIGERATOR.row)
                        .missing(if dries { DRYING } else { UNJUDGED })
                        .at(at.place),
                );
            }
        }
        let everywhere = [stays.as_slice(), held_hot.as_slice()].concat();
        for &authority in &self.held_to {
            if let Some(cell) = component.needs_none(authority) {
                report(shelf::stable(cell, component.place));
                continue;
            }
            let stays = if authority.is_food_code() { &stays } else { &everywhere };
            chill::warm(stays, authority, place).into_iter().for_each(&mut *report);
            if chill::says_exposure(authority) {
                let found = chill::ready_to_eat(&ready, cooked_at.is_some(), place);
                found.into_iter().for_each(&mut *report);
            }
        }
    }
}

fn compare(a: Option<Reading>, b: Option<Reading>) -> core::cmp::Ordering {
    a.partial_cmp(&b).unwrap_or(core::cmp::Ordering::Equal)
}

/// Salt in the water of the finished product, percent, by an analysis of both: 100 × salt / (salt +
/// moisture).
pub(super) fn analysed_brine(component: &Component<'_>) -> Option<Range<f64>> {
    let (salt, moisture) = (component.proximates.salt?, component.proximates.moisture?);
    Range::exactly(100.0 * salt / (salt + moisture)).ok()
}

/// Where the cook ends: at the last step that names an inside temperature, or by its record.
fn end_of_cook(component: &Component<'_>) -> Option<usize> {
    let recorded = !component.record.is_empty();
    let ends = |step: &Step| step.kind.heats() && (step.to.is_some() || recorded);
    component.steps.iter().rposition(ends)
}

/// How long the air around it is between 50 and 130 °F in stages before the cook ends: so long, at
/// the least, the food is too. `None` where no stage says how long; one that does not is not counted.
fn slow_stages(
    component: &Component<'_>,
    end: usize,
    counts: impl Fn(StepKind) -> bool,
) -> Option<Range<Time>> {
    let limit = cook::FSIS_COME_UP.value;
    let between = |at: Reading| {
        let f = at.on(Scale::Fahrenheit).value();
        f > limit.low_fahrenheit && f < limit.high_fahrenheit
    };
    let warms =
        |step: &Step| counts(step.kind) && (step.kind.heats() || step.kind == StepKind::ColdSmoke);
    let stages = component.steps.iter().take(end.saturating_add(1));
    let stages = stages.filter(|step| warms(step) && step.at.is_some_and(|at| between(at.value)));
    let times = stages.filter_map(|step| step.time).map(|time| time.value);
    times.reduce(|a, b| a.plus(b).unwrap_or(a))
}

fn longer(time: Range<Time>, least: Option<Range<Time>>) -> Range<Time> {
    match least {
        Some(least) if least.low() > time.low() => Range::ordered(
            least.low(),
            if least.high() > time.high() { least.high() } else { time.high() },
        ),
        _ => time,
    }
}

/// Whether a step heats the food: a hold in the cold is no part of a cook.
pub(super) fn warms(step: &Step) -> bool {
    let cold = |at: Reading| {
        Limit::AtMost(store::HOME_REFRIGERATOR.value.on(at.scale())).met_by(at) == Some(true)
    };
    step.kind.heats()
        && (step.kind != StepKind::Hold
            || step.to.is_some()
            || step.at.is_none_or(|at| !cold(at.value)))
}

/// Whether a step without a temperature lets time pass in the warm, for all that it says.
fn takes_time(step: &Step) -> bool {
    match step.kind {
        // Chilled is chilled by its name, and a cook or a thaw by the fire takes its heat from there.
        StepKind::Chill => false,
        StepKind::Thaw if matches!(step.how, Some(Thawing::Cooking | Thawing::Microwave)) => false,
        StepKind::Hold => !step.ends_a_cook(),
        StepKind::Ferment => true,
        // A rest goes on from the fire: of minutes nobody says how warm it is.
        StepKind::Rest => step.time.is_some_and(|time| !chill::always_short(time.value.high())),
        _ => step.time.is_some(),
    }
}

fn chills(step: &Step) -> bool {
    matches!(step.kind, StepKind::Chill | StepKind::Refrigerate | StepKind::Freeze)
}

/// The first part of a cook that is chilled and finished later.
fn broken_off<'c>(component: &'c Component<'_>) -> Option<&'c Step> {
    let mut steps = component.steps.iter();
    let first = steps.find(|step| step.ends_a_cook())?;
    steps.find(|step| chills(step))?;
    steps.find(|step| step.ends_a_cook())?;
    Some(first)
}

/// The highest recorded inside temperature.
fn highest(component: &Component<'_>) -> Option<Reading> {
    component.record.iter().map(|point| point.reading().ok()).max_by(|&a, &b| compare(a, b))?
}

/// How long the record stays at or above a temperature without a break, from reading to
/// reading; `None` where nothing was recorded.
fn recorded(component: &Component<'_>, inside: Reading) -> Option<Range<Time>> {
    let (mut longest, mut since) = (seconds(0.0), None);
    component.record.first()?;
    for point in &component.record {
        let after = seconds(point.seconds());
        let reached = point.reading().is_ok_and(|reading| {
            Limit::AtLeast(inside.on(reading.scale())).met_by(reading) == Some(true)
        });
        since = if reached { since.or(Some(after)) } else { None };
        let run = since.map_or(seconds(0.0), |since| after - since);
        if run > longest {
            longest = run;
        }
    }
    Range::exactly(longest).ok()
}

/// The shorter of what is planned and what was recorded; where one is missing, the other.
fn shorter(planned: Option<Range<Time>>, recorded: Option<Range<Time>>) -> Option<Range<Time>> {
    match (planned, recorded) {
        (Some(planned), Some(recorded)) if recorded.low() < planned.low() => Some(recorded),
        (planned, recorded) => planned.or(recorded),
    }
}

/// The lower of what is planned and what was recorded; where one is missing, the
/// other.
fn lower(planned: Option<Reading>, recorded: Option<Reading>) -> Option<Reading> {
    match (planned, recorded) {
        (Some(planned), Some(recorded)) if recorded < planned => Some(recorded),
        (planned, recorded) => planned.or(recorded),
    }
}
