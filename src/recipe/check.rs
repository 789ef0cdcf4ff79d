use super::document::{Component, Recipe, Step, StepKind};
use super::{composing, curing, validate, warm};
use crate::finding::{Finding, Force, Limit, Missing, Rule};
use crate::range::Range;
use crate::units::Reading;
use crate::{chill, cook, cure, fat, shelf, smoke, store};

const UNJUDGED: Rule =
    Rule::new("recipe/unjudged", "component that a rule of safety judges", Force::Safety);

const NO_RULE: Missing = Missing::new(
    "a rule of safety that judges this component: none of this version has anything to say about it",
    "write what is done with it: the steps that cook it, keep it cold or serve it, with at and for; where no rule is held for such food, have it checked by someone licensed to",
);

static OF_RECIPES: [Rule; 1] = [UNJUDGED];

/// Every rule that can be reached from a recipe, room by room.
pub static RULES: [&[Rule]; 12] = [
    &OF_RECIPES,
    &validate::RULES,
    &curing::RULES,
    &cure::RULES,
    &composing::RULES,
    &fat::RULES,
    &cook::RULES,
    &chill::RULES,
    &shelf::RULES,
    &smoke::RULES,
    &store::RULES,
    &warm::RULES,
];

/// The same, one after the other.
pub fn rules() -> impl Iterator<Item = &'static Rule> {
    RULES.iter().flat_map(|room| room.iter())
}

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
    /// Runs every rule that applies, in the order of the document. A component with an impossible field
    /// ([`Self::validate`]) has one finding, which says so, and no other.
    #[must_use]
    pub fn check(&self) -> Vec<Checked> {
        let impossible = self.validate();
        let mut findings = Vec::with_capacity(self.components.len().saturating_mul(8));
        for (index, component) in self.components.iter().enumerate() {
            let mut judged = false;
            let mut report = |finding: Finding| {
                let finding = finding.unless_remembered(|row| self.confirmation(row).is_some());
                judged |= finding.rule.force == Force::Safety;
                findings.push(Checked { component: index, finding });
            };
            let mut here =
                impossible.iter().filter(|i| i.path.component.is_none_or(|n| n == index));
            if let Some(first) = here.next() {
                report(validate::unjudged(first, component));
                continue;
            }
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
            // What no rule looks at is not fine: beside others it would be passed over.
            if !judged {
                let finding = Finding::unproven(&UNJUDGED, NO_RULE, component.place);
                findings.push(Checked { component: index, finding });
            }
        }
        findings
    }
}

pub(super) fn is_warm(at: Reading) -> bool {
    Limit::AtMost(store::HOME_REFRIGERATOR.value.on(at.scale())).met_by(at) == Some(false)
}

/// Whether a step says that it is cold around the food.
pub(super) fn is_cold(step: &Step) -> bool {
    step.at.is_some_and(|at| !is_warm(at.value))
}

pub(super) fn compare(a: Option<Reading>, b: Option<Reading>) -> core::cmp::Ordering {
    a.partial_cmp(&b).unwrap_or(core::cmp::Ordering::Equal)
}

/// Salt in the water of the finished product, percent, by an analysis of both: 100 × salt / (salt +
/// moisture).
pub(super) fn analysed_brine(component: &Component<'_>) -> Option<Range<f64>> {
    let (salt, moisture) = (component.proximates.salt?, component.proximates.moisture?);
    Range::exactly(100.0 * salt / (salt + moisture)).ok()
}

/// Whether a cook ends with a step, by what it says or by the record.
pub(super) fn ends_cook(component: &Component<'_>, step: &Step) -> bool {
    step.ends_a_cook() || (!component.record.is_empty() && warms(step))
}

/// Where the cook ends: at the last step that ends one, or by its record.
pub(super) fn end_of_cook(component: &Component<'_>) -> Option<usize> {
    component.steps.iter().rposition(|step| ends_cook(component, step))
}

/// Whether a step heats the food: a hold in the cold is no part of a cook.
pub(super) fn warms(step: &Step) -> bool {
    step.kind.heats()
        && (step.kind != StepKind::Hold
            || step.to.is_some()
            || step.at.is_none_or(|at| is_warm(at.value)))
}

pub(super) fn chills(step: &Step) -> bool {
    matches!(step.kind, StepKind::Chill | StepKind::Refrigerate | StepKind::Freeze)
}
