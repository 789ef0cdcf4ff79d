use uom::si::f64::Mass;

use super::document::{Component, Ingredient, Kind, Recipe, Step, StepKind};
use crate::cook::{self, Plan};
use crate::cure::{self, Batch, Cure, GreenWeight, Pickle, PickleWeight, Pump, Weighed};
use crate::finding::{Finding, Force, Missing, Rule, Verdict};
use crate::food::Food;
use crate::range::Range;
use crate::smoke::{self, ColdSmoke};
use crate::store::{self, Cold, Keeping};
use crate::units::{Amount, Reading};

const NO_PREMIX: Rule = Rule::new("cure/premix", "a cure with something that cures", Force::Safety);

/// Every rule that can be reached from a recipe, room by room.
pub const RULES: [&[Rule]; 5] =
    [&[NO_PREMIX], &cure::RULES, &cook::RULES, &smoke::RULES, &store::RULES];

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
            self.check_cook(component, &mut report);
            self.check_smoke(component, &mut report);
            self.check_store(component, &mut report);
        }
        findings
    }

    fn check_cure(&self, component: &Component<'_>, report: &mut impl FnMut(Finding)) {
        let premixes = || component.ingredients.iter().filter(|i| i.kind == Kind::CuringPremix);
        let place = component.cure.map_or(component.place, |cure| cure.place);
        if premixes().next().is_none() {
            if component.cure.is_some() {
                report(Finding::new(&NO_PREMIX, Verdict::Unproven).at(place).missing(Missing::new(
                    "what cures: there is a cure and no curing premix",
                    "write the premix as an ingredient of kind \"curing-premix\" with its strength",
                )));
            }
            return;
        }
        let scale = |ingredient: &Ingredient<'_>| ingredient.scale.or(self.instruments.scale);
        let weighed = |ingredient: &Ingredient<'_>| match ingredient.amount {
            Some(Amount::Weighed(mass)) => Some(Weighed { mass, scale: scale(ingredient) }),
            _ => None,
        };
        let cures: Vec<Cure> = premixes()
            .map(|premix| Cure {
                mass: weighed(premix),
                strength: premix.strength,
                place: premix.place,
            })
            .collect();
        let ascorbates = || component.ingredients.iter().filter(|i| i.kind == Kind::Ascorbate);
        let cure = component.cure;
        let batch = Batch {
            bacon: component.food == Food::Bacon,
            cured_as: &component.cured_as,
            product: self.sum(component, |i| !i.in_pickle),
            method: cure.and_then(|cure| cure.method),
            green: self
                .sum(component, |i| i.kind == Kind::Meat)
                .and_then(|m| GreenWeight::range(m).ok()),
            cures: &cures,
            pickle: self.pickle(component),
            ascorbate: ascorbates().filter_map(weighed).reduce(together),
            sugar_percent: cure.and_then(|cure| cure.sugar_percent),
            culture: cure.and_then(|cure| cure.culture),
            place,
        };
        let mut answered = false;
        for &authority in &self.held_to {
            answered |= cure::answers(authority);
            cure::check(&batch, authority, self.date, report);
        }
        if !answered {
            report(cure::unanswered(place));
        }
    }

    /// The mass of all ingredients of a kind, or `None` when one of them has no weight
    /// or there is none.
    fn sum(
        &self,
        component: &Component<'_>,
        of: impl Fn(&Ingredient<'_>) -> bool,
    ) -> Option<Range<Mass>> {
        let mut sum: Option<Range<Mass>> = None;
        for ingredient in component.ingredients.iter().filter(|ingredient| of(ingredient)) {
            let Some(Amount::Weighed(mass)) = ingredient.amount else { return None };
            let range = match ingredient.scale.or(self.instruments.scale) {
                Some(division) => Range::weighed(mass, division).ok()?,
                None => Range::exactly(mass).ok()?,
            };
            sum = Some(match sum {
                Some(sum) => sum.plus(range).ok()?,
                None => range,
            });
        }
        sum
    }

    fn pickle(&self, component: &Component<'_>) -> Option<Pickle> {
        let weight = PickleWeight::range(self.sum(component, |i| i.in_pickle)?).ok()?;
        let cure = component.cure?;
        let taken_up = cure.taken_up.and_then(|fraction| Pump::new(fraction).ok());
        Some(Pickle {
            weight,
            taken_up: taken_up.and_then(|pump| Range::exactly(pump).ok()),
            equilibrium: cure.equilibrium,
        })
    }

    fn check_cook(&self, component: &Component<'_>, report: &mut impl FnMut(Finding)) {
        let cooked_by_rule = component.food.is_meat()
            || matches!(component.food, Food::Fish | Food::Eggs | Food::Casseroles);
        if component.raw || !cooked_by_rule {
            return;
        }
        let heats = || component.steps.iter().filter(|step| step.kind.heats());
        let ends: Vec<&Step> = heats().filter(|step| step.to.is_some()).collect();
        let to = |step: &Step| step.to.map(|to| to.value);
        let hottest = ends.into_iter().max_by(|a, b| compare(to(a), to(b)));
        let last = heats().next_back();
        let rests = component.steps.iter().filter(|step| step.kind == StepKind::Rest);
        let plan = Plan {
            food: component.food,
            animals: component.animals(),
            inside: lower(hottest.and_then(to), highest(component)),
            thermometer: self.instruments.thermometer,
            held: hottest.and_then(|step| step.hold).map(|hold| hold.value),
            rested: rests.filter_map(|step| step.time).map(|time| time.value).next(),
            place: hottest
                .and_then(|step| step.to)
                .map(|to| to.place)
                .or(last.map(|step| step.place))
                .unwrap_or(component.place),
        };
        let mut answered = false;
        for &authority in &self.held_to {
            answered |= cook::answers(authority, component.food);
            cook::check(&plan, authority, self.date, report);
        }
        if !answered {
            report(cook::unanswered(plan.place));
        }
    }

    fn check_smoke(&self, component: &Component<'_>, report: &mut impl FnMut(Finding)) {
        for (n, step) in component.steps.iter().enumerate() {
            // Cheese has no hot smoke: every smoke of it is a cold one.
            let cheese = component.food == Food::Cheese && step.kind == StepKind::Smoke;
            if step.kind != StepKind::ColdSmoke && !cheese {
                continue;
            }
            let later =
                component.steps.iter().skip(n).any(|step| step.kind.heats() && step.to.is_some());
            let smoke = ColdSmoke {
                food: component.food,
                cooked_later: later || component.raw,
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
    }

    fn check_store(&self, component: &Component<'_>, report: &mut impl FnMut(Finding)) {
        for step in &component.steps {
            let cold = match step.kind {
                StepKind::Refrigerate => Cold::Refrigerator,
                StepKind::Freeze => Cold::Freezer,
                _ => continue,
            };
            let keeping =
                Keeping { cold, like: step.like, at: step.at, time: step.time, place: step.place };
            for &authority in &self.held_to {
                store::check(&keeping, authority, report);
            }
            if !self.held_to.iter().any(|&authority| store::answers(authority)) {
                report(store::unanswered(step.place));
            }
        }
    }
}

/// Two weighings of one thing: the coarser scale stands for both.
fn together(a: Weighed, b: Weighed) -> Weighed {
    let scale = a.scale.zip(b.scale).map(|(a, b)| if a > b { a } else { b });
    Weighed { mass: a.mass + b.mass, scale }
}

fn compare(a: Option<Reading>, b: Option<Reading>) -> core::cmp::Ordering {
    a.partial_cmp(&b).unwrap_or(core::cmp::Ordering::Equal)
}

/// The highest recorded inside temperature.
fn highest(component: &Component<'_>) -> Option<Reading> {
    component.record.iter().map(|point| Some(point.inside)).max_by(|&a, &b| compare(a, b))?
}

/// The lower of what is planned and what was recorded; where one is missing, the
/// other.
fn lower(planned: Option<Reading>, recorded: Option<Reading>) -> Option<Reading> {
    match (planned, recorded) {
        (Some(planned), Some(recorded)) if recorded < planned => Some(recorded),
        (planned, recorded) => planned.or(recorded),
    }
}
