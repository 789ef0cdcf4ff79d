use uom::si::f64::Mass;

use super::curing::brings_unknown;
use super::document::{Component, Ingredient, Kind, Recipe, Step, StepKind};
use crate::fat::{self, Lot, Named, Part, blend};
use crate::finding::{Finding, Force, Limit, Rule, Share, Verdict};
use crate::food::Food;
use crate::range::Range;
use crate::salt::{Brine, USUAL_LEAST, USUAL_MOST, solubility_row};
use crate::store::HOME_REFRIGERATOR;
use crate::units::{Amount, Reading, Scale};

const SALT: Rule = Rule::new("salt/level", "as much salt as is usual", Force::Advice);
const BRINE: Rule = Rule::new("salt/brine", "a brine whose salt dissolves", Force::Quality);

/// The rules about salt that take a recipe.
pub(super) const RULES: [Rule; 2] = [SALT, BRINE];

const ON_MEAT: &str = "salt, on the meat";
const IN_BRINE: &str = "salt, of the brine";

impl Recipe<'_> {
    pub(super) fn check_composition(
        &self,
        component: &Component<'_>,
        report: &mut impl FnMut(Finding),
    ) {
        self.usual_salt(component, report);
        self.brine(component, report);
        if let Some(target) = component.fat_target {
            fat::target(self.blend(component, |i| i.kind == Kind::Meat), target, report);
        }
        if component.sold_as.is_empty() {
            return;
        }
        let found = component.proximates;
        let product = Named {
            sold_as: &component.sold_as,
            blend: self.blend(component, |i| !i.in_pickle),
            changed: component.steps.iter().any(changes),
            fat: found.fat,
            moisture: found.moisture,
            protein: found.protein,
            other_protein: found.other_protein.unwrap_or(0.0),
            salt: found.salt,
            water_activity: found.water_activity,
            cured: cured(component),
            water: self.water(component),
            all: self.sum(component, |_| true),
            green: self.sum(component, |i| i.kind.is_green()),
            finished: component.finished.and_then(|mass| self.shown(mass, None)),
            place: component.place,
        };
        for &authority in &self.held_to {
            fat::named(&product, authority, report);
        }
    }

    /// The water among the ingredients: none of it weighs nothing.
    fn water(&self, component: &Component<'_>) -> Option<Range<Mass>> {
        let none = Range::exactly(Mass::new::<uom::si::mass::kilogram>(0.0)).ok();
        if component.ingredients.iter().any(|i| i.kind == Kind::Water) {
            self.sum(component, |i| i.kind == Kind::Water)
        } else {
            none
        }
    }

    /// The blend of some ingredients. Meat whose fat is not said leaves it unknown; salt,
    /// premixes and water hold none; oil is fat; anything else may hold any.
    pub(super) fn blend(
        &self,
        component: &Component<'_>,
        of: impl Fn(&Ingredient<'_>) -> bool,
    ) -> Option<Lot> {
        let parts: Option<Vec<Part>> = component
            .ingredients
            .iter()
            .filter(|ingredient| of(ingredient))
            .map(|ingredient| {
                let Some(Amount::Weighed(mass)) = ingredient.amount else { return None };
                let lot = match (ingredient.fat, ingredient.fat_error, ingredient.kind) {
                    (Some(fat), Some(error), _) => Lot::analysed(fat, error).ok()?,
                    (Some(fat), None, _) => Lot::labelled(fat).ok()?,
                    (None, _, Kind::Meat | Kind::Fish | Kind::Milk) => return None,
                    (
                        None,
                        _,
                        Kind::Water | Kind::Salt | Kind::CuringPremix | Kind::Additive(_),
                    ) => Lot::analysed(0.0, 0.0).ok()?,
                    (None, _, Kind::Oil) => Lot::analysed(100.0, 0.0).ok()?,
                    (None, ..) => {
                        Lot { fat: Range::ordered(0.0, 100.0), water: None, protein: None }
                    }
                };
                Some(Part { mass: self.shown(mass, ingredient.scale)?, lot })
            })
            .collect();
        blend(&parts?).ok()
    }

    /// All salt of some ingredients: plain salt, and what premixes bring.
    fn salt(
        &self,
        component: &Component<'_>,
        of: impl Fn(&Ingredient<'_>) -> bool,
    ) -> Option<Range<Mass>> {
        self.sum_by(
            component,
            |i| of(i) && matches!(i.kind, Kind::Salt | Kind::CuringPremix),
            |ingredient, shown| {
                if ingredient.kind == Kind::Salt {
                    return Some(shown);
                }
                let brings = ingredient.strength?.salt();
                let low = shown.low() * (brings.low().mg_per_kg() / 1e6);
                Some(Range::ordered(low, shown.high() * (brings.high().mg_per_kg() / 1e6)))
            },
        )
    }

    /// Salt on the meat of a sausage, beside what is usual: advice.
    fn usual_salt(&self, component: &Component<'_>, report: &mut impl FnMut(Finding)) {
        if component.food != Food::GroundMeat {
            return;
        }
        let (Some(salt), Some(meat)) =
            (self.salt(component, |_| true), self.sum(component, |i| i.kind.is_green()))
        else {
            return;
        };
        // Meat that weighs less than its scale can show has no share of anything.
        if meat.low().value <= 0.0 {
            return;
        }
        let share =
            |salt: Mass, meat: Mass| Share { percent: 100.0 * (salt / meat).value, of: ON_MEAT };
        let known = Range::ordered(share(salt.low(), meat.high()), share(salt.high(), meat.low()));
        let at = |percent| Share { percent, of: ON_MEAT };
        let limit = Limit::Between(at(USUAL_LEAST.value), at(USUAL_MOST.value));
        let finding = Finding::new(&SALT, Verdict::Meets)
            .found(&known)
            .limit(limit)
            .row(&USUAL_LEAST.row)
            .row(&USUAL_MOST.row)
            .at(component.place);
        let past = Finding { past_advice: true, ..finding };
        report(if known.high().percent < USUAL_LEAST.value {
            past.note("It may bind poorly, and salt holds back fewer microbes: nitrite, cold and the cook carry more.")
        } else if known.low().percent > USUAL_MOST.value {
            past.note("Saltier than is usual.")
        } else {
            finding
        });
    }

    /// A pickle of more salt than its water dissolves is not the brine it is reckoned as.
    fn brine(&self, component: &Component<'_>, report: &mut impl FnMut(Finding)) {
        let (Some(salt), Some(water)) = (
            self.salt(component, |i| i.in_pickle),
            self.sum(component, |i| i.in_pickle && i.kind == Kind::Water),
        ) else {
            return;
        };
        let (Ok(weakest), Ok(strongest)) =
            (Brine::of(salt.low(), water.high()), Brine::of(salt.high(), water.low()))
        else {
            return;
        };
        let stated = component.cure.and_then(|cure| cure.at).map(|at| at.value);
        // Where the temperature is not said, that of melting ice: it dissolves least.
        let at = stated.or_else(|| Reading::new(32.0, Scale::Fahrenheit).ok());
        let Some(saturated) = at.and_then(solubility_row) else { return };
        let share = |percent| Share { percent, of: IN_BRINE };
        let known = Range::ordered(share(weakest.percent()), share(strongest.percent()));
        let limit = Limit::AtMost(share(saturated.value.percent));
        let place = component.cure.map_or(component.place, |cure| cure.place);
        let finding = Finding::new(&BRINE, limit.judge(&known)).found(&known).limit(limit);
        report(finding.row(&saturated.row).at(place));
    }
}

/// Whether nitrite or nitrate went in; `None` where a plant may have brought them.
fn cured(component: &Component<'_>) -> Option<bool> {
    let premix = component.holds(&[Kind::CuringPremix]);
    if !premix && component.ingredients.iter().any(brings_unknown) { None } else { Some(premix) }
}

/// Whether a step cooks or dries: what is left to stand, unless it is in the cold, dries.
fn changes(step: &Step) -> bool {
    let cold = Limit::AtMost(HOME_REFRIGERATOR.value.on(Scale::Fahrenheit));
    match step.kind {
        StepKind::Cook | StepKind::Smoke | StepKind::ColdSmoke | StepKind::Ferment => true,
        StepKind::Hold => {
            step.to.is_some() || step.at.is_none_or(|at| cold.met_by(at.value) != Some(true))
        }
        _ => false,
    }
}
