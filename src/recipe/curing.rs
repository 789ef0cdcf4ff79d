use uom::si::f64::{Mass, Time};

use super::check::warms;
use super::document::{Component, CurePlan, Ingredient, Kind, Recipe, StepKind};
use super::names::{names_a_juice, percentages};
use crate::cite::Row;
use crate::cure::{
    self, Addition, Batch, Cure, GreenWeight, Method, NITRATE_PRACTICE, PREMIX_STRENGTH_RULE,
    Pickle, PickleWeight, Premix, Weighed, skin_free,
};
use crate::finding::{Finding, Force, Limit, Missing, Place, Placed, Rule, Verdict};
use crate::food::Food;
use crate::range::{Range, widened};
use crate::store::HOME_REFRIGERATOR;
use crate::units::{Amount, days};

const NO_PREMIX: Rule = Rule::new("cure/premix", "a cure with something that cures", Force::Safety);
const JUICE: Rule =
    Rule::new("cure/vegetable-juice", "a plant that brings nitrite or nitrate", Force::Safety);
const TIME: Rule = Rule::new("cure/time", "how long it cures", Force::Safety);
const COLD: Rule = Rule::new("cure/temperature", "a cure in the cold", Force::Safety);
const QUICK_NITRATE: Rule =
    Rule::new("cure/quick-nitrate", "nitrate only where it has time", Force::Advice);
const DISAGREE: Rule =
    Rule::new("cure/authorities-differ", "one answer from all authorities", Force::Advice);

/// The rules about a cure that take more than its batch.
pub(super) const RULES: [Rule; 6] = [NO_PREMIX, JUICE, TIME, COLD, QUICK_NITRATE, DISAGREE];

const NOTHING_CURES: Missing = Missing::new(
    "what cures: there is a cure and no curing premix",
    "a brine or rub without nitrite is no cure: leave `cure` out; otherwise write the premix as an ingredient of kind \"curing-premix\" with its strength",
);
const JUICE_STRENGTH: Missing = Missing::new(
    "how much nitrite and nitrate this plant brings: powders and juices of celery, chard and the like are cures",
    "write it as kind \"curing-premix\" with the strength its maker has analysed, or leave it out",
);
const TWO_STRENGTHS: Missing = Missing::new(
    "which strength is right: the name of the premix says another than `strength`",
    "write the strength that the label of the pack names, in both places",
);
const HOW_LONG: Missing = Missing::new(
    "how long it cures: a rub or a pickle takes time to reach the middle",
    "write for = \"… days\" under cure",
);
const HOW_COLD: Missing = Missing::new(
    "how cold it cures",
    "write at = \"… °F\" under cure; meat cures in the refrigerator",
);

impl Recipe<'_> {
    pub(super) fn check_cure(&self, component: &Component<'_>, report: &mut impl FnMut(Finding)) {
        juices(component, report);
        let premixes = || component.ingredients.iter().filter(|i| i.kind == Kind::CuringPremix);
        let place = component.cure.map_or(component.place, |cure| cure.place);
        let cured = premixes().next().is_some();
        if !cured && component.cure.is_some() {
            report(Finding::new(&NO_PREMIX, Verdict::Unproven).at(place).missing(NOTHING_CURES));
        }
        let (cures, additions) = self.brings(component);
        // An acid in a sauce speeds no cure.
        let flesh = component.food.is_meat()
            || component.food == Food::Fish
            || component.holds(&[Kind::Meat, Kind::Fish]);
        let additions: &[Addition] = if cured || flesh { &additions } else { &[] };
        let goes_in = cured || !additions.is_empty();
        let analysis = &component.analysis;
        if !goes_in && analysis.nitrite.is_none() && analysis.nitrate.is_none() {
            return;
        }
        let batch = self.batch(component, &cures, additions, place);
        let mut answered = false;
        let mut verdicts = Verdicts::default();
        let mut residue_is_open = false;
        for &authority in &self.held_to {
            answered |= cure::answers(&batch, authority);
            let mut own = Verdicts::default();
            cure::check(&batch, authority, self.date, &mut |finding| {
                own.note(&finding);
                let residue = finding.rule.id == "cure/residue";
                residue_is_open |= residue && finding.verdict != Verdict::Meets;
                report(finding);
            });
            verdicts.add(&own);
        }
        // Meat brings no nitrite of its own: whatever row it keeps, somebody added it.
        if !cured && analysis.found_nitrite() && answered && !residue_is_open {
            report(cure::unexplained(&batch));
        }
        if !answered && (goes_in || analysis.found_any()) {
            report(cure::unanswered(&batch));
        }
        verdicts.differ(place, report);
        cure::strengths(&cures, report);
        contradicted_by_name(component, report);
        if goes_in {
            cure::claim(&batch, report);
        }
        if cured {
            self.time_and_temperature(component, report);
            quick_nitrate(component, report);
        }
    }

    /// The curing premixes and the additives of a component.
    fn brings(&self, component: &Component<'_>) -> (Vec<Cure>, Vec<Addition>) {
        let ingredients = &component.ingredients;
        let cures = ingredients
            .iter()
            .filter(|ingredient| ingredient.kind == Kind::CuringPremix)
            .map(|premix| Cure {
                mass: self.weighed(premix),
                strength: premix.strength,
                place: premix.place,
            })
            .collect();
        let additions = ingredients
            .iter()
            .filter_map(|ingredient| {
                let Kind::Additive(additive) = ingredient.kind else { return None };
                Some(Addition {
                    additive,
                    mass: self.weighed(ingredient),
                    hydrated: ingredient.hydrated,
                    place: ingredient.place,
                })
            })
            .collect();
        (cures, additions)
    }

    /// Nitrite and ascorbates, ingoing on green weight, mg/kg.
    pub(super) fn ingoing(&self, component: &Component<'_>) -> [Option<Range<f64>>; 2] {
        // What a plant brings is not known.
        if component.ingredients.iter().any(brings_unknown) {
            return [None, None];
        }
        let (cures, additions) = self.brings(component);
        cure::ingoing_levels(&self.batch(component, &cures, &additions, component.place))
    }

    fn batch<'a>(
        &self,
        component: &'a Component<'_>,
        cures: &'a [Cure],
        additions: &'a [Addition],
        place: Place,
    ) -> Batch<'a> {
        let cure = component.cure;
        // Whatever a level is divided by: for limits that go by product, all of it.
        let by_product = !component.cured_as.is_empty();
        let divides = |i: &&Ingredient<'_>| {
            by_product || i.kind.is_green() || i.kind == Kind::Milk || i.in_pickle
        };
        let by_skin = component.food == Food::Bacon
            && cure.is_some_and(|cure| {
                matches!(cure.method, Some(Method::DryRub | Method::Immersion))
            });
        let meats = || component.ingredients.iter().filter(|i| i.kind == Kind::Meat);
        let skin = by_skin && meats().any(|meat| meat.skin_on != Some(false));
        Batch {
            scaled: component
                .ingredients
                .iter()
                .filter(divides)
                .all(|ingredient| self.scale_of(ingredient).is_some()),
            cured_as: &component.cured_as,
            // An ingredient of the pickle without a weight leaves what is taken up unknown.
            product: self.sum(component, |_| true).and(self.sum(component, |i| !i.in_pickle)),
            method: cure.and_then(|cure| cure.method),
            green: self.green(component, by_skin),
            with_skin: self.sum(component, |i| skin && i.kind.is_green()),
            scale_error: self.instruments.scale_error,
            cures,
            pickle: self.pickle(component),
            additions,
            finished: component.finished.and_then(|mass| self.shown(mass, None)),
            milk: self.sum(component, |i| i.kind == Kind::Milk),
            for_infants: component.for_infants,
            analysis: component.analysis,
            claimed: cure.and_then(|cure| cure.claimed),
            skin_unknown: by_skin && meats().any(|meat| meat.skin_on.is_none()),
            sugar_percent: cure.and_then(|cure| cure.sugar_percent),
            culture: cure.and_then(|cure| cure.culture),
            place,
            ..Batch::of(component.food)
        }
    }

    fn scale_of(&self, ingredient: &Ingredient<'_>) -> Option<Mass> {
        ingredient.scale.or(self.instruments.scale)
    }

    fn weighed(&self, ingredient: &Ingredient<'_>) -> Option<Weighed> {
        match ingredient.amount {
            Some(Amount::Weighed(mass)) => Some(Weighed { mass, scale: self.scale_of(ingredient) }),
            _ => None,
        }
    }

    /// What a mass may be that a scale shows.
    pub(super) fn shown(&self, mass: Mass, scale: Option<Mass>) -> Option<Range<Mass>> {
        let range = match scale.or(self.instruments.scale) {
            Some(division) => Range::weighed(mass, division).ok()?,
            None => Range::exactly(mass).ok()?,
        };
        Some(match self.instruments.scale_error {
            Some(error) => widened(range, error),
            None => range,
        })
    }

    /// The mass of all ingredients of a kind, or `None` when one of them has no weight
    /// or there is none.
    pub(super) fn sum(
        &self,
        component: &Component<'_>,
        of: impl Fn(&Ingredient<'_>) -> bool,
    ) -> Option<Range<Mass>> {
        self.sum_by(component, of, |_, shown| Some(shown))
    }

    pub(super) fn sum_by(
        &self,
        component: &Component<'_>,
        of: impl Fn(&Ingredient<'_>) -> bool,
        counts: impl Fn(&Ingredient<'_>, Range<Mass>) -> Option<Range<Mass>>,
    ) -> Option<Range<Mass>> {
        let mut sum: Option<Range<Mass>> = None;
        for ingredient in component.ingredients.iter().filter(|ingredient| of(ingredient)) {
            let Some(Amount::Weighed(mass)) = ingredient.amount else { return None };
            let range = counts(ingredient, self.shown(mass, ingredient.scale)?)?;
            sum = Some(match sum {
                Some(sum) => sum.plus(range).ok()?,
                None => range,
            });
        }
        sum
    }

    /// The green weight; of bellies that are immersed or rubbed without their skin.
    fn green(&self, component: &Component<'_>, by_skin: bool) -> Option<Range<GreenWeight>> {
        let green = |i: &Ingredient<'_>| i.kind.is_green();
        let sum = self.sum_by(component, green, |belly, shown| {
            if by_skin { skin_free(shown, belly.skin_on).ok() } else { Some(shown) }
        });
        GreenWeight::range(sum?).ok()
    }

    /// The pickle. A premix or an additive that is no part of it would be counted by what is
    /// taken up, and may be rubbed on: then nothing is known of it.
    fn pickle(&self, component: &Component<'_>) -> Option<Pickle> {
        let beside = |i: &Ingredient<'_>| {
            !i.in_pickle && matches!(i.kind, Kind::CuringPremix | Kind::Additive(_))
        };
        let cure = component.cure;
        // A rub that stands beside a pickle is asked about, whatever is in which.
        let dry = matches!(cure.and_then(|c| c.method), Some(Method::Ground | Method::DryRub));
        if component.ingredients.iter().any(beside) && !dry {
            return None;
        }
        let weight = PickleWeight::range(self.sum(component, |i| i.in_pickle)?).ok()?;
        // It lies in the pickle for as long as the steps say, too.
        let said = cure.and_then(|cure| cure.time).map(|time| time.value.high());
        let until = component.steps.iter().take_while(|step| !warms(step));
        let cold = until.filter(|step| step.kind == StepKind::Hold);
        let held = cold.filter_map(|step| step.time).map(|time| time.value.high());
        let lasts = [said, held.reduce(|a, b| a + b)].into_iter().flatten();
        let lasts = lasts.reduce(|a, b| if b > a { b } else { a });
        Some(Pickle {
            weight,
            taken_up: cure.and_then(|cure| cure.taken_up),
            equilibrium: Pickle::comes_to_rest(cure.and_then(|cure| cure.equilibrium), lasts),
        })
    }

    /// A rub or a pickle works its way inwards for days: how long, and how cold, is part of
    /// the recipe. No document here prints a least time, so a time is asked for and not judged.
    fn time_and_temperature(&self, component: &Component<'_>, report: &mut impl FnMut(Finding)) {
        let Some(cure) = component.cure else { return };
        let CurePlan { at, time, place, .. } = cure;
        if matches!(cure.method, Some(Method::DryRub | Method::Immersion)) && time.is_none() {
            report(Finding::new(&TIME, Verdict::Unproven).missing(HOW_LONG).at(place));
        }
        match at {
            Some(at) => {
                let home = &HOME_REFRIGERATOR;
                let off = self.instruments.thermometer;
                report(Finding::at_or_below(&COLD, home.value, &home.row, at, off));
            }
            None if matches!(cure.method, Some(Method::DryRub | Method::Immersion)) => {
                report(Finding::new(&COLD, Verdict::Unproven).missing(HOW_COLD).at(place));
            }
            None => {}
        }
    }
}

/// A percentage in the name of a premix is its strength, or nobody knows what it is.
fn contradicted_by_name(component: &Component<'_>, report: &mut impl FnMut(Finding)) {
    for premix in component.ingredients.iter().filter(|i| i.kind == Kind::CuringPremix) {
        let Some(strength) = premix.strength else { continue };
        let named = || percentages(&premix.name);
        if named().next().is_some() && !named().any(|percent| percent.may_be_of(&strength)) {
            report(Finding::unproven(&PREMIX_STRENGTH_RULE, TWO_STRENGTHS, premix.place));
        }
    }
}

/// Plants that are cures by another name, where they are not written as one.
fn juices(component: &Component<'_>, report: &mut impl FnMut(Finding)) {
    for ingredient in component.ingredients.iter().filter(|i| brings_unknown(i)) {
        let finding = Finding::new(&JUICE, Verdict::Unproven).missing(JUICE_STRENGTH);
        report(finding.at(ingredient.place));
    }
}

/// Whether an ingredient is a plant that brings nitrite or nitrate, and nobody says how much.
pub(super) fn brings_unknown(ingredient: &Ingredient<'_>) -> bool {
    ingredient.kind != Kind::CuringPremix && names_a_juice(&ingredient.name)
}

/// Whether an ingredient brings nitrite, or may.
pub(super) fn may_bring_nitrite(ingredient: &Ingredient<'_>) -> bool {
    let none = |premix: Premix| premix.nitrite().mg_per_kg() <= 0.0;
    let cures = ingredient.kind == Kind::CuringPremix && !ingredient.strength.is_some_and(none);
    cures || brings_unknown(ingredient)
}

/// Nitrate in what is cooked before it had a week to work.
fn quick_nitrate(component: &Component<'_>, report: &mut impl FnMut(Finding)) {
    let brings = |premix: Premix| premix.nitrate().mg_per_kg() > 0.0;
    let bringing = component.ingredients.iter().find(|i| i.strength.is_some_and(brings));
    let cooked = component.steps.iter().any(|step| step.kind.heats() && step.to.is_some());
    let (Some(premix), true) = (bringing, cooked && component.food != Food::Bacon) else { return };
    let waits = |step: &&super::document::Step| {
        use StepKind::{ColdSmoke, Ferment, Hold, Refrigerate};
        matches!(step.kind, Hold | Refrigerate | Ferment | ColdSmoke)
    };
    let least = |time: Placed<Range<Time>>| time.value.low();
    let before = component.steps.iter().take_while(|step| step.to.is_none()).filter(waits);
    let stood = before.filter_map(|step| step.time).map(least).fold(days(0.0), |a, b| a + b);
    // The cure itself may be written as steps too.
    let cured = component.cure.and_then(|cure| cure.time).map_or(days(0.0), least);
    let longest = if cured > stood { cured } else { stood };
    let enough = days(NITRATE_PRACTICE.value);
    let known = Range::ordered(longest, longest);
    let finding = Finding::new(&QUICK_NITRATE, Verdict::Meets)
        .found(&known)
        .limit(Limit::AtLeast(enough))
        .row(&NITRATE_PRACTICE.row)
        .at(premix.place);
    report(match Limit::AtLeast(enough).met_by(longest) {
        Some(true) => finding,
        _ => Finding { past_advice: true, ..finding }.note(
            "Most of it is still nitrate when it is cooked: a premix without nitrate is for quick cures.",
        ),
    });
}

/// What authorities say about each agent, to see whether they differ.
#[derive(Default)]
struct Verdicts {
    /// For nitrite and for nitrate, a row that is met and one that is broken.
    rows: [(Option<&'static Row>, Option<&'static Row>); 2],
}

impl Verdicts {
    fn note(&mut self, finding: &Finding) {
        let [nitrite, nitrate] = &mut self.rows;
        let (meets, breaks) = match finding.rule.id {
            "cure/ingoing-nitrite" | "cure/bacon-nitrite" => nitrite,
            "cure/ingoing-nitrate" | "cure/bacon-nitrate" => nitrate,
            _ => return,
        };
        let [row, _] = finding.rows;
        match finding.verdict {
            Verdict::Meets => *meets = meets.or(row),
            Verdict::Breaks => *breaks = breaks.or(row),
            Verdict::Unproven => {}
        }
    }

    /// Takes in what one authority says: it allows what breaks none of its rows.
    fn add(&mut self, own: &Self) {
        for ((meets, breaks), (met, broken)) in self.rows.iter_mut().zip(own.rows) {
            *breaks = breaks.or(broken);
            *meets = meets.or(met.filter(|_| broken.is_none()));
        }
    }

    fn differ(&self, place: Place, report: &mut impl FnMut(Finding)) {
        for rows in self.rows {
            let (Some(meets), Some(breaks)) = rows else { continue };
            let finding = Finding::new(&DISAGREE, Verdict::Meets).row(meets).row(breaks).at(place);
            report(Finding { past_advice: true, ..finding }.note(
                "What the first document allows the second forbids: say under whose rules the recipe is published.",
            ));
        }
    }
}
