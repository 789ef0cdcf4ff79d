use uom::si::f64::Time;

use super::document::{Component, Recipe, Step, StepKind};
use super::{composing, curing};
use crate::authority::Authority;
use crate::chill::{self, Cooling, Ferment, Holds, Stay, Was};
use crate::cook::{self, Plan, Process, Stage};
use crate::finding::{Finding, Force, Limit, Missing, Place, Rule, Verdict};
use crate::food::Food;
use crate::range::Range;
use crate::shelf;
use crate::smoke::{self, ColdSmoke, SmokedFish};
use crate::store::{self, Thawing};
use crate::units::{Reading, seconds};
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
    &curing::RULES,
    &cure::RULES,
    &composing::RULES,
    &fat::RULES,
    &cook::RULES,
    &chill::RULES,
    &shelf::RULES,
    &smoke::RULES,
    &store::RULES,
    &[WARM],
];

/// A finding and the component it is about.
#[derive(Debug, Clone, Copy, PartialEq)]
#[cfg_attr(feature = "serde", derive(serde::Serialize))]
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
            self.check_aims(component, &mut report);
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
        let hottest = hottest(component);
        let end = hottest.unwrap_or(component.steps.len());
        let plan = self.plan(component, hottest);
        let hottest = component.steps.get(end);
        // A hold in the cold is no part of the cook. A cold smoke is none either, and warms the food.
        let to_the_end = || component.steps.iter().take(end.saturating_add(1));
        let on_the_way = |step: &&Step| step.kind == StepKind::ColdSmoke || warms(step);
        let stage = |step: &Step| Stage {
            cooks: step.kind != StepKind::ColdSmoke,
            at: step.at.map(|at| at.value),
            time: step.time.map(|time| time.value),
            moisture: step.moisture,
            humidity: step.humidity,
        };
        let stages: Vec<_> = to_the_end().filter(on_the_way).map(stage).collect();
        let process = Process {
            stages: &stages,
            endpoint: plan.inside,
            piece: component.piece,
            come_up: hottest.and_then(|step| step.come_up).map(|time| time.value),
            fermented: to_the_end().any(|step| step.kind == StepKind::Ferment),
            chilled_between: to_the_end().skip_while(|step| !on_the_way(step)).any(chills),
            record: &component.record,
            thermometer: self.instruments.thermometer,
            place: plan.place,
        };
        if let Some(named) = component.recorded_in.as_ref().filter(|_| component.record.is_empty())
        {
            report(cook::unread_record(named.place));
        }
        let plant = self.held_to.contains(&Authority::UsFsis);
        if component.food.is_meat() && !plant {
            process.check_slow().into_iter().for_each(&mut *report);
        }
        if let Some(first) = broken_off(component) {
            let completes = self.completes(component, Some(first), |_| true);
            let step = component.steps.get(first);
            let time = step.and_then(|step| step.time).map(|time| time.value);
            let place = step.map_or(component.place, |step| step.place);
            let code = self.by_food_code(component);
            cook::partial(completes, time, code, place).into_iter().for_each(&mut *report);
        }
        let mut answered = false;
        for &authority in &self.held_to {
            answered |= cook::answers(authority, component.food);
            cook::check(&plan, &process, authority, self.date, report);
        }
        if !answered {
            report(cook::unanswered(plan.place));
        }
    }

    /// The lethalities a component aims at, whatever is cooked.
    fn check_aims(&self, component: &Component<'_>, report: &mut impl FnMut(Finding)) {
        let (record, thermometer) = (component.record.as_slice(), self.instruments.thermometer);
        let process = Process { record, thermometer, ..Process::unknown(component.place) };
        component.aims.iter().map(|aim| process.check_lethality(aim)).for_each(report);
    }

    /// The cook that ends with a step; of none, what the record shows.
    fn plan(&self, component: &Component<'_>, end: Option<usize>) -> Plan {
        let ends = end.and_then(|n| component.steps.get(n));
        let to = ends.and_then(|step| step.to);
        let inside = lower(to.map(|to| to.value), highest(component));
        let planned = ends.and_then(|step| step.hold).map(|hold| hold.value);
        let last = component.steps.iter().rfind(|step| step.kind.heats()).map(|step| step.place);
        Plan {
            food: component.food,
            animals: component.animals(),
            bird: component.bird(),
            fat: self.blend(component, |i| !i.in_pickle).map(|blend| blend.fat.high()),
            inside,
            thermometer: self.instruments.thermometer,
            planned: ends.is_some(),
            held: shorter(planned, inside.and_then(|inside| recorded(component, inside))),
            rested: end.and_then(|end| rest_after(component, end)),
            place: to.map(|to| to.place).or(last).unwrap_or(component.place),
        }
    }

    /// Whether the cook that ends with a step is a whole one, by all of these authorities that say how.
    fn completes(
        &self,
        component: &Component<'_>,
        end: Option<usize>,
        of: impl Fn(Authority) -> bool,
    ) -> Verdict {
        let plan = self.plan(component, end);
        let authorities = self.held_to.iter().filter(|&&authority| of(authority));
        let verdicts = authorities.filter_map(|&a| cook::completes(&plan, a, self.date));
        verdicts.max().unwrap_or(Verdict::Unproven)
    }

    /// Whether it is a roast, no bird, and surely cooked by the chart of roasts.
    fn roasted(&self, component: &Component<'_>) -> bool {
        matches!(component.food, Food::WholeMeat | Food::RawHam)
            && component.animals() == cook::Animals::NoPoultry
            && self.completes(component, hottest(component), Authority::is_food_code)
                == Verdict::Meets
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
        // What is smoked or cooked besides is not only smoked cold, to whatever temperature.
        let heated = |step: &Step| matches!(step.kind, StepKind::Smoke | StepKind::Cook);
        let cold = hottest.is_none() && !component.steps.iter().any(heated);
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
            // A brine without anything that cures is the first hold; a later one is time in the warm.
            let mut before = component.steps.iter().take_while(|step| !smokes(step));
            if let Some(step) = before.find(|step| step.kind == StepKind::Hold) {
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
        let (mut ready, mut smoked) = (Vec::new(), Vec::new());
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
                StepKind::Smoke | StepKind::Cook => !before_the_end,
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
            let cheese = component.food == Food::Cheese && step.kind == StepKind::Smoke;
            if (cheese || step.kind == StepKind::ColdSmoke) && !component.food.is_meat() {
                smoked.push((stay, at.place));
                continue;
            }
            let warm = is_warm(at.value);
            let served = matches!(step.kind, StepKind::Hold | StepKind::Serve);
            // What is cured or fermented and never cooked dries by rules of its own.
            let dries = step.kind == StepKind::Hold && cooked_at.is_none() && keeps_by_itself;
            if unjudged && !dries && exposed(n) {
                ready.push(stay);
            }
            if warm && served && after_the_cook(n) && by_code && !chilled {
                let roast = self.roasted(component);
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
                report(unjudged_at(at.value, if dries { DRYING } else { UNJUDGED }, at.place));
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
        self.check_time_in_smoke(component, &smoked, &everywhere, report);
    }

    /// Time in a warm cold smoke, with the rest of the time in the warm. A smoke is not food left standing:
    /// within the hours of an authority it meets, and beyond them nobody says for how long.
    fn check_time_in_smoke(
        &self,
        component: &Component<'_>,
        smoked: &[(Stay, Place)],
        besides: &[Stay],
        report: &mut impl FnMut(Finding),
    ) {
        let warm = |(stay, _): &&(Stay, Place)| is_warm(stay.at);
        let Some(&(stay, place)) = smoked.iter().find(warm) else { return };
        let stays: Vec<_> = smoked.iter().map(|(stay, _)| stay).chain(besides).copied().collect();
        let (activity, ph) = (component.proximates.water_activity, component.proximates.ph);
        let (mut answered, mut too_long) = (false, false);
        for &authority in &self.held_to {
            let stable = shelf::needs_none(activity, ph, authority).is_some();
            if stable || smoke::says_how_long(authority, component.food) {
                answered = true;
                continue;
            }
            let found = chill::warm(&stays, authority, place);
            too_long |= found.is_some_and(|found| found.verdict == Verdict::Breaks);
            answered |= chill::says_how_long(authority);
            found
                .filter(|found| found.verdict != Verdict::Breaks)
                .into_iter()
                .for_each(&mut *report);
        }
        if too_long || !answered {
            report(unjudged_at(stay.at, UNJUDGED, place));
        }
    }
}

fn is_warm(at: Reading) -> bool {
    Limit::AtMost(store::HOME_REFRIGERATOR.value.on(at.scale())).met_by(at) == Some(false)
}

/// Time in the warm for which no rule of this version is.
fn unjudged_at(at: Reading, missing: Missing, place: Place) -> Finding {
    Finding::new(&WARM, Verdict::Unproven)
        .found(&Range::ordered(at, at))
        .limit(Limit::AtMost(store::HOME_REFRIGERATOR.value.on(at.scale())))
        .row(&store::HOME_REFRIGERATOR.row)
        .missing(missing)
        .at(place)
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

/// The step that ends the hottest cook.
fn hottest(component: &Component<'_>) -> Option<usize> {
    let ends = component.steps.iter().enumerate().filter(|(_, step)| step.ends_a_cook());
    let to = |step: &Step| step.to.map(|to| to.value);
    ends.max_by(|(_, a), (_, b)| compare(to(a), to(b))).map(|(n, _)| n)
}

/// The rest right after a step: what is held first in air that does not let it cool is no gap.
fn rest_after(component: &Component<'_>, end: usize) -> Option<Range<Time>> {
    let to = component.steps.get(end)?.to?.value;
    let kept = |step: &Step| {
        let hot = |at: Reading| Limit::AtLeast(to).met_by(at) == Some(true);
        step.kind == StepKind::Hold && step.at.is_some_and(|at| hot(at.value))
    };
    let next = component.steps.iter().skip(end.saturating_add(1)).find(|step| !kept(step))?;
    (next.kind == StepKind::Rest).then_some(next.time?.value)
}

/// Where the cook ends: at the last step that names an inside temperature, or by its record.
fn end_of_cook(component: &Component<'_>) -> Option<usize> {
    let recorded = !component.record.is_empty();
    let ends = |step: &Step| step.kind.heats() && (step.to.is_some() || recorded);
    component.steps.iter().rposition(ends)
}

/// Whether a step heats the food: a hold in the cold is no part of a cook.
pub(super) fn warms(step: &Step) -> bool {
    step.kind.heats()
        && (step.kind != StepKind::Hold
            || step.to.is_some()
            || step.at.is_none_or(|at| is_warm(at.value)))
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
fn broken_off(component: &Component<'_>) -> Option<usize> {
    let mut steps = component.steps.iter();
    let first = steps.position(Step::ends_a_cook)?;
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
