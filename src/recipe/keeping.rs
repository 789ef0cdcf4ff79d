//! What is kept cold, packed, thawed and served cold.

use uom::si::f64::Time;

use super::check::analysed_brine;
use super::document::{Component, Kind, Proximates, Recipe, Step, StepKind};
use crate::authority::Authority;
use crate::chill;
use crate::finding::{Finding, Place, Placed};
use crate::food::Food;
use crate::range::Range;
use crate::shelf::{self, Packed};
use crate::store::{self, Afterwards, Cold, FRESH_SAUCE, Keeping, Sauce, Thaw, chart_row};
use crate::units::seconds;

impl Recipe<'_> {
    pub(super) fn check_store(&self, component: &Component<'_>, report: &mut impl FnMut(Finding)) {
        let cooked_at = component.steps.iter().rposition(Step::ends_a_cook);
        let mut vacuum = false;
        let mut kept: [Option<Range<Time>>; 2] = [None, None];
        // Its own rule names the row.
        let fresh = fresh_sauce(component);
        // Ready to eat and kept cold, without the time in a freezer.
        let mut marked: Option<(Option<Range<Time>>, Place)> = None;
        for (n, step) in component.steps.iter().enumerate() {
            vacuum = match step.kind {
                StepKind::Pack => step.vacuum,
                StepKind::Open => false,
                _ => vacuum,
            };
            let (cold, kept) = match (step.kind, &mut kept) {
                (StepKind::Refrigerate, [kept, _]) => (Cold::Refrigerator, kept),
                (StepKind::Freeze, [_, kept]) => (Cold::Freezer, kept),
                _ => continue,
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
                raw: cooked_at.is_none_or(|cook| n < cook),
                vacuum,
                place: step.place,
            };
            for &authority in &self.held_to {
                store::check(&keeping, authority, report);
            }
            let ready = !keeping.raw
                || component.raw
                || matches!(component.food, Food::Cheese | Food::Sauce);
            let marks = ready && cold == Cold::Refrigerator;
            if marks {
                let before = marked.map(|(time, _)| time);
                let now = step.time.map(|time| time.value);
                marked = Some((before.map_or(now, |before| plus(before, now)), step.place));
            }
            let answers = |&authority: &Authority| {
                store::answers(authority) || (marks && authority.is_food_code())
            };
            if !self.held_to.iter().any(answers) {
                report(store::unanswered(step.place));
            }
        }
        let Proximates { water_activity, ph, .. } = component.proximates;
        let Some((time, place)) = marked else { return };
        let marks = self
            .held_to
            .iter()
            .filter(|&&authority| shelf::needs_none(water_activity, ph, authority).is_none());
        let found = marks.filter_map(|&authority| chill::date_mark(time, authority, place));
        found.for_each(report);
    }

    /// What is packed without air rests on something, and is kept for so long.
    pub(super) fn check_packs(&self, component: &Component<'_>, report: &mut impl FnMut(Finding)) {
        let heated = component.steps.iter().any(|step| step.kind.heats());
        for (n, step) in component.steps.iter().enumerate() {
            if step.kind != StepKind::Pack || !step.vacuum {
                continue;
            }
            let packed = component.steps.iter().skip(n.saturating_add(1));
            let mut packed = packed.take_while(|step| step.kind != StepKind::Open);
            let kept = cold_time(packed.clone());
            let chilled = |step: &Step| {
                matches!(step.kind, StepKind::Refrigerate | StepKind::Chill | StepKind::Hold)
            };
            let frozen =
                packed.clone().any(|step| step.kind == StepKind::Freeze) && !packed.any(chilled);
            let packed = Packed {
                food: component.food,
                raw: component.raw && !heated,
                cured_here: component.cure.is_some(),
                frozen,
                activity: component.proximates.water_activity,
                ph: component.proximates.ph,
                brine: analysed_brine(component),
                kept,
                place: step.place,
            };
            for &authority in &self.held_to {
                shelf::check_pack(&packed, authority, report);
            }
        }
    }

    pub(super) fn check_thaws(&self, component: &Component<'_>, report: &mut impl FnMut(Finding)) {
        let cooked_at = component.steps.iter().rposition(Step::ends_a_cook);
        let mut airless = false;
        for (n, step) in component.steps.iter().enumerate() {
            airless = match step.kind {
                StepKind::Pack => step.vacuum,
                StepKind::Open => false,
                _ => airless,
            };
            if step.kind != StepKind::Thaw {
                continue;
            }
            let later = || component.steps.iter().skip(n.saturating_add(1));
            let until = || later().take_while(|step| !step.ends_a_cook());
            let again = until().find(|step| step.kind == StepKind::Freeze);
            let thaw = Thaw {
                food: component.food,
                raw: !component.raw && cooked_at.is_none_or(|cook| n < cook),
                how: step.how,
                at: step.at,
                thermometer: self.instruments.thermometer,
                time: step.time.map(|time| time.value),
                piece: component.piece,
                airless,
                afterwards: Afterwards {
                    cooked_next: later().next().is_some_and(Step::ends_a_cook),
                    kept: cold_time(until()),
                    frozen_again: again.map(|step| step.place),
                },
                place: step.place,
            };
            for &authority in &self.held_to {
                store::check_thaw(&thaw, authority, report);
            }
        }
    }

    /// A sauce that is never cooked.
    pub(super) fn check_sauce(&self, component: &Component<'_>, report: &mut impl FnMut(Finding)) {
        if component.steps.iter().any(Step::ends_a_cook) {
            return;
        }
        let cold = component.steps.iter().filter(|step| step.kind == StepKind::Refrigerate);
        let warmest =
            cold.filter_map(|step| step.at).reduce(|a, b| if b.value > a.value { b } else { a });
        let sauce = Sauce {
            oil: component.holds(&[Kind::Oil]),
            garlic_or_herbs: component.holds(&[Kind::RawGarlic, Kind::FreshHerbs]),
            dairy: component.holds(&[Kind::Yogurt, Kind::Cream]),
            kept: cold_time(component.steps.iter()),
            at: warmest,
            thermometer: self.instruments.thermometer,
            place: component.place,
        };
        store::check_sauce(&sauce, report);
    }
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

/// The time in a refrigerator in some steps; `None` where there is none, or one is not said.
fn cold_time<'s>(steps: impl Iterator<Item = &'s Step>) -> Option<Range<Time>> {
    let cold = steps.filter(|step| step.kind == StepKind::Refrigerate);
    cold.map(|step| step.time.map(|time| time.value)).reduce(plus)?
}
