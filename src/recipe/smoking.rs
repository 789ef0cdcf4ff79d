use super::check::analysed_brine;
use super::cooking::hottest;
use super::curing::may_bring_nitrite;
use super::document::{Component, Recipe, Step, StepKind};
use crate::finding::Finding;
use crate::food::Food;
use crate::level::{Level, NitriteIon};
use crate::smoke::{self, ColdSmoke, SmokedFish};

impl Recipe<'_> {
    pub(super) fn check_smoke(&self, component: &Component<'_>, report: &mut impl FnMut(Finding)) {
        for (n, step) in component.steps.iter().enumerate() {
            if !component.is_smoked_cold(step) {
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
        let hottest = hottest(component).and_then(|n| component.steps.get(n));
        // What is smoked or cooked besides is not only smoked cold, to whatever temperature.
        let heated = |step: &Step| matches!(step.kind, StepKind::Smoke | StepKind::Cook);
        let cold = hottest.is_none() && !component.steps.iter().any(heated);
        let nitrite = component.analysis.nitrite.map(Level::<NitriteIon, _>::as_sodium_nitrite);
        // A fish without nitrite, so far as anybody says, has no claim to less salt.
        let with_nitrite = nitrite.is_some() || component.ingredients.iter().any(may_bring_nitrite);
        let less_salt = component.cured_as.contains(&"fda/sablefish-salmon-shad");
        let fish = SmokedFish {
            cold,
            airless: component.steps.iter().any(|step| step.kind == StepKind::Pack && step.vacuum),
            brine: analysed_brine(component),
            nitrite,
            less_salt: less_salt && with_nitrite,
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
        } else if component.has_pickle() {
            // A brine without anything that cures is the first hold; a later one is time in the warm.
            let mut before = component.steps.iter().take_while(|step| !smokes(step));
            if let Some(step) = before.find(|step| step.kind == StepKind::Hold) {
                let time = step.time.map(|time| time.value);
                report(smoke::check_brining(step.at, time, off, step.place));
            }
        }
    }
}
