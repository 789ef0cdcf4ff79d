use uom::si::f64::TemperatureInterval;

use super::check::{chills, compare, end_of_cook, is_warm};
use super::document::{Component, Recipe, Step, StepKind};
use crate::authority::Authority;
use crate::chill::{self, Ferment, Stay, Was};
use crate::cook;
use crate::finding::{Finding, Force, Limit, Missing, Place, Placed, Rule, Verdict};
use crate::range::Range;
use crate::shelf;
use crate::smoke;
use crate::store::{self, Thawing};
use crate::trace::Point;
use crate::units::{Reading, seconds};

const WARM: Rule = Rule::new("store/warm-time", "time above refrigeration", Force::Safety);

const UNJUDGED: Missing = Missing::new(
    "a rule for time at this temperature: this version holds none",
    "keep it at 40 °F (4 °C) or below, or have the time in the warm checked by someone licensed to",
);

const HOW_COLD: Missing =
    Missing::new("how cold it is where it is chilled", "write at = \"… °F\" on the step");
const PACKED: Missing = Missing::new(
    "how cold the pack without air is kept",
    "write the step that refrigerates, freezes or opens it",
);
const HOW_WARM: Missing =
    Missing::new("how warm it is in this step", "write at = \"… °F\" on the step");
const DRYING: Missing = Missing::new(
    "what makes a raw, dried product safe: its cure, its acid and its drying together",
    "have the process checked by someone licensed to; an analysis of water activity and pH may show that it needs neither time nor temperature",
);

const KEEPS: Missing = Missing::new(
    "a row of this authority for food that keeps by its water activity or its pH",
    "have the process and the analysis checked by someone licensed to; shops in the United States are held to us-food-code-2022, which has a table",
);

/// The rule about time that no room has a clock for.
pub(super) const RULES: [Rule; 1] = [WARM];

/// A stay of the food at a temperature, and who counts its time.
struct Warm {
    stay: Stay,
    place: Place,
    /// Whether the food is ready to eat in it.
    ready: bool,
    /// Whether the food is made by then: an analysis is of the finished food.
    finished: bool,
    counted: Counted,
}

/// Which clock counts the time of a stay.
#[derive(Clone, Copy, PartialEq)]
enum Counted {
    /// That of every authority.
    ByAll,
    /// That of every one but the Food Code, which asks how hot it is held.
    HeldHot,
    /// That of every one but the Food Code, whose clock of the cooling counts it.
    InCooling,
    /// That of cold smokes.
    InSmoke,
    /// None, and this is missing.
    Unjudged(Missing),
    /// None, and none is asked for.
    Not,
}

impl Recipe<'_> {
    /// Time in the warm that no rule of this version judges is said to be unproven, and
    /// not passed over.
    pub(super) fn check_warm(&self, component: &Component<'_>, report: &mut impl FnMut(Finding)) {
        let course = self.course(component, report);
        let mut stays = Vec::new();
        for (n, step) in component.steps.iter().enumerate() {
            let Some(at) = step.at else {
                let unproven = Finding::new(&WARM, Verdict::Unproven).at(step.place);
                let missing = course.of_no_temperature(n, step);
                missing.map(|missing| unproven.missing(missing)).into_iter().for_each(&mut *report);
                continue;
            };
            let stay = course.stay(n, step, at);
            if let Counted::Unjudged(missing) = stay.counted {
                report(unjudged_at(at.value, missing, at.place));
            }
            stays.push(stay);
        }
        self.check_held_hot(component, &stays, report);
        for &authority in &self.held_to {
            check_clocks(&course, &stays, authority, report);
        }
        self.check_time_in_smoke(component, &stays, report);
    }

    /// What of a component decides how its stays are counted, with the findings on its fermentation.
    fn course<'c>(
        &'c self,
        component: &'c Component<'c>,
        report: &mut impl FnMut(Finding),
    ) -> Course<'c> {
        let ferment = |step: &&Step| step.kind == StepKind::Ferment;
        let stages: Vec<_> = component
            .steps
            .iter()
            .filter(ferment)
            .map(|step| Ferment {
                at: step.at.map(|at| at.value),
                time: step.time.map(|time| time.value),
                ph: step.ph,
                place: step.place,
            })
            .collect();
        let mut ferments = false;
        for &authority in &self.held_to {
            let finding = chill::check_fermentation(&stages, authority);
            ferments |= finding.is_some();
            finding.into_iter().for_each(&mut *report);
        }
        let steps = component.steps.iter();
        let cooked_at = end_of_cook(component);
        let makes = |step: &Step| {
            use StepKind::{ColdSmoke, Cook, Ferment, Smoke};
            matches!(step.kind, Smoke | ColdSmoke | Cook | Ferment)
        };
        let needs_none = self.held_to.iter().any(|&a| component.needs_none(a).is_some());
        Course {
            component,
            thermometer: self.instruments.thermometer.unwrap_or_default(),
            held_to: &self.held_to,
            cooked_at,
            made_at: cooked_at.or_else(|| steps.clone().rposition(makes)),
            chilled_at: cooked_at.and_then(|cook| {
                let mut later = steps.enumerate().skip(cook.saturating_add(1));
                later.find(|(_, step)| chills(step)).map(|(n, _)| n)
            }),
            by_code: self.by_food_code(component) && !needs_none,
            ferments,
            keeps_by_itself: component.cure.is_some() || !stages.is_empty(),
        }
    }

    /// What is held hot after its cook, by the Food Code. What is surely colder is held by time, with all
    /// the rest of its time in the warm.
    fn check_held_hot(
        &self,
        component: &Component<'_>,
        stays: &[Warm],
        report: &mut impl FnMut(Finding),
    ) {
        let hot = stays.iter().filter(|stay| stay.counted == Counted::HeldHot);
        if hot.clone().next().is_none() {
            return;
        }
        let (roast, off) = (self.roasted(component), self.instruments.thermometer);
        let judge = |held: &Warm, too_long| {
            cook::hot_holding(held.stay.at, roast, too_long, off, held.place)
        };
        let breaks = |stays: &[Stay]| {
            chill::warm(stays, Authority::UsFoodCode2022, component.place)
                .is_some_and(|found| found.verdict == Verdict::Breaks)
        };
        let clocked = stays.iter().filter(|stay| stay.counted == Counted::ByAll);
        let mut timed: Vec<_> = clocked.map(|stay| stay.stay).collect();
        // What is too long without it breaks the clock of that.
        let already = breaks(&timed);
        let colder = hot.clone().filter(|held| judge(held, true).verdict == Verdict::Breaks);
        timed.extend(colder.map(|held| held.stay));
        let too_long = !already && breaks(&timed);
        hot.map(|held| judge(held, too_long)).for_each(report);
    }

    /// Time in a warm cold smoke, with the rest of the time in the warm. A smoke is not food left standing:
    /// within the hours of an authority it meets, and beyond them nobody says for how long.
    fn check_time_in_smoke(
        &self,
        component: &Component<'_>,
        stays: &[Warm],
        report: &mut impl FnMut(Finding),
    ) {
        let smoked = stays.iter().filter(|stay| stay.counted == Counted::InSmoke);
        let Some(first) = smoked.clone().find(|smoked| is_warm(smoked.stay.at)) else { return };
        let besides = stays.iter().filter(|stay| stay.counted.by_others());
        let stays: Vec<_> = smoked.chain(besides).map(|stay| stay.stay).collect();
        let (activity, ph) = (component.proximates.water_activity, component.proximates.ph);
        let (mut answered, mut too_long) = (false, false);
        for &authority in &self.held_to {
            let stable = shelf::needs_none(activity, ph, authority).is_some();
            if stable || smoke::says_how_long(authority, component.food) {
                answered = true;
                continue;
            }
            let found = chill::warm(&stays, authority, first.place);
            too_long |= found.is_some_and(|found| found.verdict == Verdict::Breaks);
            answered |= chill::says_how_long(authority);
            found
                .filter(|found| found.verdict != Verdict::Breaks)
                .into_iter()
                .for_each(&mut *report);
        }
        if too_long || !answered {
            report(unjudged_at(first.stay.at, UNJUDGED, first.place));
        }
    }
}

/// The stays of a component by the clocks of one authority.
fn check_clocks(
    course: &Course<'_>,
    stays: &[Warm],
    authority: Authority,
    report: &mut impl FnMut(Finding),
) {
    let place = course.component.place;
    let stable = course.component.needs_none(authority);
    stable.map(|cell| shelf::stable(cell, place)).into_iter().for_each(&mut *report);
    if authority == Authority::GreatBritain && course.component.raw {
        return;
    }
    let code = authority.is_food_code();
    let counts = |stay: &&Warm| match stay.counted {
        Counted::ByAll => stable.is_none() || !stay.finished,
        counted => !code && counted.by_others(),
    };
    // An analysis of the finished food may show that it keeps, and this authority holds no row for it.
    let of = course.component.proximates;
    let keeps = shelf::may_need_none(of.water_activity, of.ph)
        && stays.iter().filter(counts).all(|stay| stay.finished || !is_warm(stay.stay.at));
    let excused = |finding: Finding| match finding.verdict {
        Verdict::Breaks if keeps => finding.left_open(KEEPS),
        _ => finding,
    };
    let (counted, at) = told(stays.iter().filter(counts), place);
    chill::warm(&counted, authority, at).map(excused).into_iter().for_each(&mut *report);
    if chill::says_exposure(authority) {
        let (ready, at) = told(stays.iter().filter(|stay| stay.ready), place);
        let found = chill::ready_to_eat(&ready, course.cooked_at.is_some(), at);
        found.map(excused).into_iter().for_each(&mut *report);
    }
}

/// The stays for a clock, and where the longest in the warm is written, which is pointed at.
fn told<'s>(stays: impl Iterator<Item = &'s Warm> + Clone, otherwise: Place) -> (Vec<Stay>, Place) {
    let warm = stays.clone().filter(|warm| is_warm(warm.stay.at));
    let longer = |a: &'s Warm, b: &'s Warm| match (a.stay.time, b.stay.time) {
        (Some(a_time), Some(b_time)) if a_time.high() < b_time.high() => b,
        (Some(_), None) => b,
        _ => a,
    };
    let place = warm.reduce(longer).map_or(otherwise, |longest| longest.place);
    (stays.map(|warm| warm.stay).collect(), place)
}

impl Counted {
    /// Whether the clocks of all authorities but the Food Code count it.
    fn by_others(self) -> bool {
        matches!(self, Self::ByAll | Self::HeldHot | Self::InCooling)
    }
}

/// What of a component decides how its stays are counted.
struct Course<'r> {
    component: &'r Component<'r>,
    /// How far the thermometer may be off.
    thermometer: TemperatureInterval,
    held_to: &'r [Authority],
    cooked_at: Option<usize>,
    /// The step that makes it what it is: the end of its cook, or the last that heats, smokes or ferments it.
    made_at: Option<usize>,
    /// Where it is first chilled after its cook.
    chilled_at: Option<usize>,
    /// Whether the Food Code asks how hot it is held.
    by_code: bool,
    /// Whether an authority has a clock for its fermentation.
    ferments: bool,
    /// Whether it is cured or fermented.
    keeps_by_itself: bool,
}

impl Course<'_> {
    fn cooked(&self, n: usize) -> bool {
        self.cooked_at.is_some_and(|cook| n > cook)
    }

    fn chilled(&self, n: usize) -> bool {
        self.chilled_at.is_some_and(|chilled| n >= chilled)
    }

    /// Cooked, or eaten as it is; what is sold raw is cooked by whoever eats it.
    fn exposed(&self, n: usize) -> bool {
        !self.component.raw && (self.cooked_at.is_none() || self.cooked(n))
    }

    fn somebody(&self, says: impl Fn(Authority) -> bool) -> bool {
        self.held_to.iter().any(|&authority| says(authority))
    }

    /// Whether the time of a step has no rule of its own.
    fn passes(&self, n: usize, step: &Step) -> bool {
        match step.kind {
            // Stages of a cook that ends somewhere are the cook's.
            StepKind::Smoke | StepKind::Cook => self.cooked_at.is_none_or(|cook| n > cook),
            StepKind::Hold | StepKind::Rest | StepKind::Chill => true,
            StepKind::Pack | StepKind::Serve => true,
            StepKind::Thaw => !self.somebody(store::says_thawing),
            // A fermentation has clocks of its own, where the authority has any.
            StepKind::Ferment => !self.ferments,
            StepKind::ColdSmoke | StepKind::Refrigerate => false,
            StepKind::Freeze | StepKind::Open => false,
        }
    }

    /// What is missing of a step that does not say how warm it is.
    fn of_no_temperature(&self, n: usize, step: &Step) -> Option<Missing> {
        if self.packs_and_leaves(n, step) {
            return Some(PACKED);
        }
        // Cooked food that is chilled somewhere: how cold it is there decides how long it may be.
        let cools = step.kind == StepKind::Chill
            && self.cooked(n)
            && self.somebody(chill::says_how_long)
            && self.component.cooling.is_empty();
        match cools {
            true => Some(HOW_COLD),
            false => {
                (self.passes(n, step) && takes_time(self.component, n, step)).then_some(HOW_WARM)
            }
        }
    }

    /// Whether it is a pack without air of which nothing says how it is kept, or that it is opened.
    fn packs_and_leaves(&self, n: usize, step: &Step) -> bool {
        use StepKind::{Chill, Freeze, Hold, Open, Refrigerate};
        let kept = |step: &Step| matches!(step.kind, Chill | Freeze | Hold | Open | Refrigerate);
        let later = self.component.steps.iter().skip(n.saturating_add(1));
        let stable = self.somebody(|authority| self.component.needs_none(authority).is_some());
        step.kind == StepKind::Pack && step.vacuum && !stable && !later.into_iter().any(kept)
    }

    fn stay(&self, n: usize, step: &Step, at: Placed<Reading>) -> Warm {
        let hot = self.cooked(n) && !self.chilled(n);
        Warm {
            stay: Stay {
                off: self.thermometer,
                at: step.to.filter(|_| step.stays_lukewarm()).unwrap_or(at).value,
                time: step.lasts(),
                was: if hot { Was::Hot } else { Was::Cold },
            },
            place: at.place,
            ready: self.passes(n, step)
                && !self.ripens(n, step)
                && self.exposed(n)
                && !self.smokes(step),
            finished: self.made_at.is_none_or(|made| n > made),
            counted: self.counted(n, step, at.value),
        }
    }

    fn counted(&self, n: usize, step: &Step, at: Reading) -> Counted {
        // The British hours are those of food on display, which nobody cooks afterwards.
        let shown = |a| a != Authority::GreatBritain || !self.component.raw;
        let says = |a| {
            (chill::says_how_long(a) && shown(a)) || (self.exposed(n) && chill::says_exposure(a))
        };
        let judged = step.kind != StepKind::Thaw && !self.ripens(n, step) && self.somebody(says);
        if self.smokes(step) {
            Counted::InSmoke
        } else if !self.passes(n, step) {
            Counted::Not
        } else if self.held_hot(n, step, at) {
            Counted::HeldHot
        } else if judged && self.cools(n, at) {
            // A shop's clock of the cooling counts it; another's rule may count it besides.
            Counted::InCooling
        } else if judged {
            Counted::ByAll
        } else if !is_warm(at) {
            Counted::Not
        } else {
            Counted::Unjudged(if self.dries(step) { DRYING } else { UNJUDGED })
        }
    }

    /// Whether its time is that of a cold smoke: every smoke of cheese is one, and that of cured meat that is sold raw.
    fn smokes(&self, step: &Step) -> bool {
        let Component { food, raw, .. } = *self.component;
        let stays_raw = raw && self.component.cure.is_some() && step.kind == StepKind::Smoke;
        stays_raw || (self.component.is_smoked_cold(step) && !food.is_meat())
    }

    /// What is cured or fermented and never cooked dries by rules of its own.
    fn dries(&self, step: &Step) -> bool {
        step.kind == StepKind::Hold && self.cooked_at.is_none() && self.keeps_by_itself
    }

    /// Whether it ferments or dries raw, which is not left standing: no clock of that is for it.
    fn ripens(&self, n: usize, step: &Step) -> bool {
        self.dries(step) || (step.kind == StepKind::Ferment && !self.cooked(n))
    }

    /// Whether a shop holds it hot. Hot enough for a shop may be warm by another's rule.
    fn held_hot(&self, n: usize, step: &Step, at: Reading) -> bool {
        let served = matches!(step.kind, StepKind::Hold | StepKind::Serve);
        let cool = chill::nearer_to_cold(at, Authority::UsFoodCode2022);
        let stands = self.by_code && served && self.cooked(n) && !self.chilled(n);
        stands && is_warm(at) && !cool
    }

    fn cools(&self, n: usize, at: Reading) -> bool {
        self.by_code && !self.chilled(n) && in_cooling_curve(self.component, n, at)
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
fn takes_time(component: &Component<'_>, n: usize, step: &Step) -> bool {
    match step.kind {
        // Chilled is chilled by its name, and a cook or a thaw by the fire takes its heat from there.
        StepKind::Chill => false,
        StepKind::Thaw if matches!(step.how, Some(Thawing::Cooking | Thawing::Microwave)) => false,
        StepKind::Thaw if step.how != Some(Thawing::Refrigerator) => true,
        StepKind::Hold => !step.ends_a_cook(),
        StepKind::Ferment => true,
        // A rest goes on from the fire: of minutes nobody says how warm it is. Many of them are hours.
        StepKind::Rest if step.time.is_some() => {
            let rests = component.steps.iter().filter(|step| step.kind == StepKind::Rest);
            let unsaid = rests.filter(|rest| rest.at.is_none()).filter_map(|rest| rest.time);
            let all = unsaid.fold(seconds(0.0), |sum, time| sum + time.value.high());
            !chill::always_short(all)
        }
        // What is served and put away again has stood on a table, for however long.
        StepKind::Serve if step.time.is_none() => {
            component.steps.iter().skip(n.saturating_add(1)).any(chills)
        }
        _ => step.time.is_some(),
    }
}
