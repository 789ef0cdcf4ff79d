use super::check::{chills, compare, end_of_cook, is_warm};
use super::document::{Component, Recipe, Step, StepKind};
use crate::authority::Authority;
use crate::chill::{self, Ferment, Stay, Was};
use crate::cook;
use crate::finding::{Finding, Force, Limit, Missing, Place, Rule, Verdict};
use crate::food::Food;
use crate::range::Range;
use crate::shelf;
use crate::smoke;
use crate::store::{self, Thawing};
use crate::trace::Point;
use crate::units::{Reading, Time, seconds};

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

/// The rule about time that no room has a clock for.
pub(super) const RULES: [Rule; 1] = [WARM];

impl Recipe<'_> {
    /// Time in the warm that no rule of this version judges is said to be unproven, and
    /// not passed over.
    pub(super) fn check_warm(&self, component: &Component<'_>, report: &mut impl FnMut(Finding)) {
        let cooked_at = end_of_cook(component);
        let needs_none = self.held_to.iter().any(|&a| component.needs_none(a).is_some());
        let by_code = self.by_food_code(component) && !needs_none;
        let (mut stays, mut of_others, mut place) = (Vec::new(), Vec::new(), component.place);
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
            let cool = chill::nearer_to_cold(at.value, Authority::UsFoodCode2022);
            if warm && !cool && served && after_the_cook(n) && by_code && !chilled {
                let roast = self.roasted(component);
                let off = self.instruments.thermometer;
                report(cook::hot_holding(at.value, roast, off, at.place));
                // Hot enough for a shop may be warm by another's rule.
                of_others.push(stay);
                place = at.place;
                continue;
            }
            let says = |&authority: &Authority| {
                chill::says_how_long(authority) || (exposed(n) && chill::says_exposure(authority))
            };
            let judged = step.kind != StepKind::Thaw && !dries && self.held_to.iter().any(says);
            if unjudged && judged {
                // A shop's clock of the cooling counts it; another's rule may count it besides.
                let cools = by_code && !chilled && in_cooling_curve(component, n, at.value);
                if cools { &mut of_others } else { &mut stays }.push(stay);
                let time = stay.time.map(|time| time.high());
                if warm && (time.is_none() || time > longest) {
                    (place, longest) = (at.place, time);
                }
                continue;
            }
            if warm && unjudged {
                report(unjudged_at(at.value, if dries { DRYING } else { UNJUDGED }, at.place));
            }
        }
        let everywhere = [stays.as_slice(), of_others.as_slice()].concat();
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

/// Whether a rest after the cook ends while the middle, by the curve of its cooling to the cold, is no
/// colder than the air around it.
fn in_cooling_curve(component: &Component<'_>, rest: usize, air: Reading) -> bool {
    let Some(cook) = end_of_cook(component).filter(|&cook| cook < rest) else { return false };
    let since = component.steps.get(cook.saturating_add(1)..=rest).unwrap_or_default();
    let is_rest = since.last().is_some_and(|step| step.kind == StepKind::Rest);
    let time = |step: &Step| Some(step.time?.value.high());
    let ends = since.iter().try_fold(seconds(0.0), |sum, step| Some(sum + time(step)?));
    let cooled = component.steps.iter().skip(rest).any(chills);
    let warmer = |point: &&Point| point.reading().is_ok_and(|inside| inside >= air);
    // A record shows the cook too: the curve begins where it is hottest.
    let curve = &component.cooling;
    let hottest = curve.iter().max_by(|a, b| compare(a.reading().ok(), b.reading().ok()));
    let until = hottest.zip(curve.iter().rfind(warmer));
    let until = until.map(|(from, to)| seconds(to.seconds() - from.seconds()));
    is_rest && cooled && ends.is_some() && ends <= until
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
