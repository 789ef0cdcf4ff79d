//! What is kept cold, packed, thawed and served cold.

use uom::si::f64::Time;

use super::check::{analysed_brine, is_cold, warms};
use super::document::{Component, Ingredient, Kind, Recipe, Step, StepKind};
use super::names::{names_an_oil, names_garlic};
use crate::authority::Authority;
use crate::chill;
use crate::cure::Method;
use crate::finding::{Finding, Place, Placed, Verdict};
use crate::food::Food;
use crate::range::Range;
use crate::shelf::{self, Packed};
use crate::store::{self, Afterwards, Cold, FRESH_SAUCE, Keeping, Sauce, Thaw, Thawing, chart_row};
use crate::units::{Amount, Reading, days, seconds};

/// What has days of its own, or lets other things grow: with it in, a food is more than one of its class.
const MIXED: [Kind; 5] = [Kind::Oil, Kind::RawGarlic, Kind::FreshHerbs, Kind::Yogurt, Kind::Cream];

impl Recipe<'_> {
    pub(super) fn check_store(&self, component: &Component<'_>, report: &mut impl FnMut(Finding)) {
        // Cooked again it is cooked still, and its days go on.
        let cooked_at = component.steps.iter().position(Step::ends_a_cook);
        let mut vacuum = false;
        let mut kept: [Option<Range<Time>>; 2] = [None, None];
        let mut refrigerated: Option<Keeping> = None;
        let mut cooled = false;
        // Its own rule names the row.
        let fresh = fresh_sauce(component);
        for (n, step) in component.steps.iter().enumerate() {
            if cooked_at == Some(n) {
                // What is cooked has days of its own.
                (kept, refrigerated) = ([None, None], None);
            }
            vacuum = step.leaves_airless(vacuum);
            let (cold, kept) = match (step.kind, &mut kept) {
                (StepKind::Refrigerate, [kept, _]) => (Cold::Refrigerator, kept),
                (StepKind::Freeze, [_, kept]) => (Cold::Freezer, kept),
                _ => {
                    let cooked = cooked_at.is_some_and(|cook| n > cook);
                    // The first chill after a cook, of a day at most, is its cooling.
                    let is_last = n.saturating_add(1) == component.steps.len();
                    let unsaid = is_last && step.time.is_none();
                    let cools = cooked && !cooled && is_a_cooling(step) && !unsaid;
                    cooled |= cools;
                    let ripens = !cooked && ripens_in_the_cold(component);
                    let waits = match step.kind {
                        StepKind::Thaw if cooked => thawed_in_the_cold(component, step),
                        StepKind::Thaw => None,
                        _ if cools || ripens => None,
                        _ => waits_in_the_cold(step, is_last),
                    };
                    if let Some(time) = waits {
                        let [kept, _] = &mut kept;
                        self.check_waiting(time, step.place, kept, refrigerated.as_ref(), report);
                    }
                    continue;
                }
            };
            // Days in two steps are days all the same.
            let so_far = kept.filter(|kept| kept.high() > seconds(0.0));
            let time = step.time.map(|time| {
                let sum = so_far.and_then(|so_far| so_far.plus(time.value).ok());
                Placed { value: sum.unwrap_or(time.value), place: time.place }
            });
            *kept = time.map(|time| time.value).or(*kept);
            let keeping = Keeping {
                cold,
                like: step
                    .like
                    .or_else(|| fresh.then(|| chart_row(FRESH_SAUCE, self.date)).flatten()),
                at: step.at,
                thermometer: self.instruments.thermometer,
                time,
                food: component.food,
                raw: component.food != Food::Leftovers && cooked_at.is_none_or(|cook| n < cook),
                vacuum,
                mixed: component.holds(&MIXED),
                place: step.place,
            };
            if cold == Cold::Refrigerator {
                refrigerated = Some(keeping);
            }
            for &authority in &self.held_to {
                // The analysis is of the finished food.
                if keeping.raw || component.needs_none(authority).is_none() {
                    store::check(&keeping, authority, report);
                }
            }
            let marks = cold == Cold::Refrigerator && ready_to_eat(component, n);
            let answers = |&authority: &Authority| {
                store::answers(authority)
                    || (marks && authority.is_food_code())
                    || (vacuum && shelf::says_pack_life(authority, component.food))
            };
            if !self.held_to.iter().any(answers) {
                report(store::unanswered(step.place, step.time.is_some()));
            }
        }
        self.check_date_mark(component, report);
    }

    /// Time in the cold by another name than refrigerating. It counts with the days in the refrigerator, and is judged
    /// like them where the food was in one. `kept` is how long it was cold so far.
    fn check_waiting(
        &self,
        time: Option<Range<Time>>,
        place: Place,
        kept: &mut Option<Range<Time>>,
        refrigerated: Option<&Keeping>,
        report: &mut impl FnMut(Finding),
    ) {
        let Some(time) = time else { return report(store::kept_otherwise(place)) };
        let sum = kept.map_or(Some(time), |kept| kept.plus(time).ok());
        *kept = sum;
        let Some(sum) = sum else { return };
        if let Some(refrigerated) = refrigerated {
            let keeping =
                Keeping { time: Some(Placed { value: sum, place }), place, ..*refrigerated };
            for &authority in &self.held_to {
                // How cold it is was judged where it was refrigerated, and days that meet are told once.
                store::check(&keeping, authority, &mut |finding| {
                    if finding.rule.id == "store/fridge-time" && finding.verdict != Verdict::Meets {
                        report(finding);
                    }
                });
            }
        } else if sum.high() > days(1.0) {
            report(store::kept_otherwise(place));
        }
    }

    /// Ready to eat and kept cold, without the time in a freezer.
    fn check_date_mark(&self, component: &Component<'_>, report: &mut impl FnMut(Finding)) {
        let steps = component.steps.iter().enumerate();
        let ready = steps.filter(|(n, _)| ready_to_eat(component, *n)).map(|(_, step)| step);
        let Some((time, place)) = kept_cold(ready) else { return };
        let marks = self.held_to.iter().filter(|&&a| component.needs_none(a).is_none());
        let found = marks.filter_map(|&authority| chill::date_mark(time, authority, place));
        found.for_each(report);
    }

    /// What is packed without air rests on something, and is kept for so long.
    pub(super) fn check_packs(&self, component: &Component<'_>, report: &mut impl FnMut(Finding)) {
        for (n, step) in component.steps.iter().enumerate() {
            if step.kind != StepKind::Pack || !step.vacuum {
                continue;
            }
            let before = component.steps.iter().take(n);
            let later = component.steps.iter().skip(n.saturating_add(1));
            let mut packed = later.clone().take_while(|step| step.kind != StepKind::Open);
            let kept = kept_cold(packed.clone()).and_then(|(time, _)| time);
            let frozen = packed.clone().any(|step| step.kind == StepKind::Freeze)
                && !packed.clone().any(not_frozen);
            let to_be_cooked = component.raw || later.clone().any(Step::ends_a_cook);
            let heated = before.clone().any(warms) || packed.any(warms);
            let raw = to_be_cooked && !heated;
            // The analysis is of the finished food.
            let analysed = component.raw || !raw;
            let of = component.proximates;
            let mut last = before.rev().filter(|step| step.kind != StepKind::Open);
            let packed = Packed {
                food: component.food,
                raw,
                cured_here: component.cure.is_some(),
                frozen_before: last.next().map(|step| step.kind == StepKind::Freeze),
                frozen,
                opened: later.clone().any(|step| step.kind == StepKind::Open),
                activity: of.water_activity.filter(|_| analysed),
                ph: of.ph.filter(|_| analysed),
                brine: analysed_brine(component).filter(|_| analysed),
                kept,
                place: step.place,
            };
            let asked = packed.raw || packed.food == Food::Fish;
            for &authority in &self.held_to {
                if asked || component.needs_none(authority).is_none() {
                    shelf::check_pack(&packed, authority, report);
                }
            }
        }
    }

    pub(super) fn check_thaws(&self, component: &Component<'_>, report: &mut impl FnMut(Finding)) {
        let cooked_at = component.last_cook();
        let mut airless = false;
        for (n, step) in component.steps.iter().enumerate() {
            airless = step.leaves_airless(airless);
            if step.kind != StepKind::Thaw {
                continue;
            }
            let later = || component.steps.iter().skip(n.saturating_add(1));
            let until = || later().take_while(|step| !step.ends_a_cook());
            let cures = component.cure.is_some() || component.has_pickle();
            // Days of two thaws are days all the same; how long the second one takes is its own matter.
            let waits = until()
                .filter(|step| step.kind != StepKind::Thaw)
                .filter(|step| step.kind != StepKind::Hold || !cures)
                .filter_map(cold);
            let again = until().find(|step| step.kind == StepKind::Freeze);
            let thaw = Thaw {
                food: component.food,
                raw: cooked_at.is_none_or(|cook| n < cook),
                how: step.how,
                at: step.at,
                thermometer: self.instruments.thermometer,
                time: step.time.map(|time| time.value),
                piece: component.piece,
                airless,
                afterwards: Afterwards {
                    cooked_next: later()
                        .find(|step| !leads_to_a_cook(step))
                        .is_some_and(Step::ends_a_cook),
                    kept: waits.reduce(plus).unwrap_or(Range::exactly(seconds(0.0)).ok()),
                    frozen_again: again.map(|step| step.place),
                },
                place: step.place,
            };
            for &authority in &self.held_to {
                if thaw.raw || component.needs_none(authority).is_none() {
                    store::check_thaw(&thaw, authority, report);
                }
            }
        }
    }

    /// A sauce in oil, or one that is never cooked, neither here nor by whoever eats it.
    pub(super) fn check_sauce(&self, component: &Component<'_>, report: &mut impl FnMut(Finding)) {
        let served = |step: &Step| step.kind == StepKind::Serve && step.time.is_some();
        let at_once = |step: &Step| served(step) || step.ends_a_cook();
        let eaten_at_once =
            component.steps.last().is_some_and(served) && component.steps.iter().all(at_once);
        let cooked = component.raw || component.steps.iter().any(Step::ends_a_cook);
        let holds = |is: fn(&Ingredient<'_>) -> bool| component.ingredients.iter().any(is);
        let oil = holds(is_oil) && self.lies_in_oil(component);
        let garlic_or_herbs = holds(is_garlic) || component.holds(&[Kind::FreshHerbs]);
        // What is cooked and no sauce merely holds a spoon of oil, unless garlic lies in it.
        let fresh = component.food == Food::Sauce || !cooked;
        if eaten_at_once || !(fresh || (oil && garlic_or_herbs)) {
            return;
        }
        let kept = kept_cold(component.steps.iter());
        let frozen = component.steps.iter().any(|step| step.kind == StepKind::Freeze);
        // In a freezer alone no time counts.
        let none = Range::exactly(seconds(0.0)).ok().filter(|_| frozen);
        let stays = component.steps.iter().filter(|step| cold(step).is_some());
        let warmer = |a: Option<Placed<Reading>>, b: Option<Placed<Reading>>| {
            let (a, b) = (a?, b?);
            Some(if b.value > a.value { b } else { a })
        };
        let sauce = Sauce {
            oil,
            garlic_or_herbs,
            dairy: fresh && component.holds(&[Kind::Yogurt, Kind::Cream]),
            cooked,
            kept: kept.map_or(none, |(time, _)| time),
            at: stays.map(|step| step.at).reduce(warmer).flatten(),
            thermometer: self.instruments.thermometer,
            place: component.place,
        };
        // Garlic that was acidified may keep: no row of it is held here, and nothing is broken by it.
        let of = component.proximates;
        let acid = shelf::may_need_none(of.water_activity, of.ph);
        store::check_sauce(&sauce, &mut |finding| {
            let broken = finding.verdict == Verdict::Breaks;
            report(if acid && broken { finding.left_open(store::ACIDIFIED) } else { finding });
        });
    }

    /// Whether garlic and herbs may lie in the oil: not where what else is in it surely outweighs the oil, as in a
    /// sauce of tomatoes with a spoon of it.
    fn lies_in_oil(&self, component: &Component<'_>) -> bool {
        // Oil floats: a cubic metre of it weighs less than one of water.
        let most = |i: &Ingredient<'_>| match i.amount? {
            Amount::Weighed(mass) => Some(self.shown(mass, i.scale)?.high().value),
            Amount::ByVolume(volume) => Some(1000.0 * volume.value),
        };
        let least = |i: &Ingredient<'_>| match i.amount? {
            Amount::Weighed(mass) => Some(self.shown(mass, i.scale)?.low().value),
            Amount::ByVolume(_) => None,
        };
        let lies = |i: &&Ingredient<'_>| {
            is_oil(i) || is_garlic(i) || matches!(i.kind, Kind::FreshHerbs | Kind::Salt)
        };
        let (oil, others) = (
            component.ingredients.iter().filter(|i| is_oil(i)).map(most),
            component.ingredients.iter().filter(|i| !lies(i)).filter_map(least),
        );
        let oil: Option<f64> = oil.sum();
        oil.is_none_or(|oil| others.sum::<f64>() <= oil)
    }
}

/// Whether an ingredient is oil, or is called so where it is written as anything else.
fn is_oil(ingredient: &Ingredient<'_>) -> bool {
    let named = ingredient.kind == Kind::Other && names_an_oil(&ingredient.name);
    named || ingredient.kind == Kind::Oil
}

/// Whether an ingredient is garlic that is not dried, or is called so where it is written as anything else.
fn is_garlic(ingredient: &Ingredient<'_>) -> bool {
    let named = ingredient.kind == Kind::Other && names_garlic(&ingredient.name);
    named || ingredient.kind == Kind::RawGarlic
}

/// Whether a chill lasts no longer than food takes to cool.
fn is_a_cooling(step: &Step) -> bool {
    let time = step.time.map(|time| time.value.high());
    step.kind == StepKind::Chill && time.is_none_or(|time| time <= days(1.0))
}

/// How long a step that is no refrigerating leaves food in the cold, `Some(None)` where it does not say; `None` where
/// it does not leave it there.
fn waits_in_the_cold(step: &Step, is_last: bool) -> Option<Option<Range<Time>>> {
    use StepKind::{Chill, Hold, Pack, Rest, Serve};
    let cold = matches!(step.kind, Chill | Hold | Pack | Rest | Serve) && is_cold(step);
    let time = step.time.or(step.hold).map(|time| time.value);
    // A chill of no stated length is its cooling, and packing takes no days, where something follows.
    let takes_none = matches!(step.kind, Chill | Pack) && !is_last;
    (cold && (time.is_some() || !takes_none)).then_some(time)
}

/// How long what is cooked lies thawed in a refrigerator before its thaw is over.
fn thawed_in_the_cold(component: &Component<'_>, step: &Step) -> Option<Option<Range<Time>>> {
    let time = step.time.filter(|_| step.how == Some(Thawing::Refrigerator))?;
    let left = store::left_thawed(time.value, component.piece);
    (left.high() > seconds(0.0)).then_some(Some(left))
}

/// Whether days in the cold make it what it is: in its cure, its brine, its acid, or as a cheese.
fn ripens_in_the_cold(component: &Component<'_>) -> bool {
    // What is ground with its cure has it in the middle at once.
    component.cure.is_some_and(|cure| cure.method != Some(Method::Ground))
        || component.food == Food::Cheese
        || component.has_pickle()
        || component.steps.iter().any(|step| step.kind == StepKind::Ferment)
}

/// Whether it is a sauce of yogurt or cream with raw garlic or herbs.
fn fresh_sauce(component: &Component<'_>) -> bool {
    component.food == Food::Sauce
        && component.holds(&[Kind::RawGarlic, Kind::FreshHerbs])
        && component.holds(&[Kind::Yogurt, Kind::Cream])
}

/// Both times together; `None` where one is not known.
fn plus(a: Option<Range<Time>>, b: Option<Range<Time>>) -> Option<Range<Time>> {
    a?.plus(b?).ok()
}

/// Whether it is ready to eat after a step: cooked, or a food that needs no cook.
fn ready_to_eat(component: &Component<'_>, n: usize) -> bool {
    // A second cook does not start the days again.
    let cook = component.steps.iter().position(Step::ends_a_cook);
    let needs_none = matches!(component.food, Food::Cheese | Food::Sauce);
    !component.raw && (needs_none || cook.is_some_and(|cook| n > cook))
}

/// Whether a step goes on to the cook without a stop.
fn leads_to_a_cook(step: &Step) -> bool {
    let heats = matches!(step.kind, StepKind::Smoke | StepKind::Cook) && step.to.is_none();
    let takes_no_time = matches!(step.kind, StepKind::Open | StepKind::Pack);
    heats || (takes_no_time && step.time.is_none())
}

/// Whether food in a pack is not frozen in this step. What is cooked from frozen was frozen until then.
fn not_frozen(step: &Step) -> bool {
    matches!(step.kind, StepKind::Refrigerate | StepKind::Chill | StepKind::Hold)
        || (step.kind == StepKind::Thaw && step.how != Some(Thawing::Cooking))
}

/// How long a step keeps food cold, `Some(None)` where it does not say; `None` where it does not keep it so.
fn cold(step: &Step) -> Option<Option<Range<Time>>> {
    let time = step.time.map(|time| time.value);
    let is_cold = step.at.map(|at| store::cold_somewhere(at.value));
    match (step.kind, step.how) {
        _ if step.ends_a_cook() => None,
        (StepKind::Thaw, Some(Thawing::Cooking | Thawing::Microwave)) => None,
        (StepKind::Refrigerate | StepKind::Thaw, _) => Some(time),
        (StepKind::Chill | StepKind::Hold, _) if is_cold != Some(false) => Some(time),
        (StepKind::Pack | StepKind::Serve | StepKind::Rest, _) if is_cold == Some(true) => {
            time.map(Some)
        }
        _ => None,
    }
}

/// The time in the cold in some steps, which may not be said, and the last of them; `None` where there is none.
fn kept_cold<'s>(steps: impl Iterator<Item = &'s Step>) -> Option<(Option<Range<Time>>, Place)> {
    // A chill of no stated length is its cooling, which has clocks of its own.
    let cools = |step: &&Step| step.kind == StepKind::Chill && step.time.is_none();
    let kept = steps.filter(|step| !cools(step));
    let kept = kept.filter_map(|step| Some((cold(step)?, step.place)));
    kept.reduce(|(a, _), (b, place)| (plus(a, b), place))
}
