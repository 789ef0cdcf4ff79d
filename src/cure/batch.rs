use uom::si::f64::Mass;

use super::CureError;
use super::additive::Addition;
use super::limit::Method;
use super::method::{
    GreenWeight, PickleWeight, PremixMass, Pump, coarsest_step, equilibrated, equilibrated_between,
    ingoing, ingoing_between, largest_at_equilibrium, largest_in_pickle, largest_premix,
    largest_reading, pumped, pumped_between,
};
use super::premix::Premix;
use super::residue::Analysis;
use crate::finding::{Finding, Limit, Mend, Missing, Place, Placed, Rule, Verdict};
use crate::food::Food;
use crate::level::{Agent, Basis, InPremix, Level, OnFinishedWeight, OnGreenWeight};
use crate::range::{Measured, Range, widened};
use crate::units::{Time, days, floor_to_division, kilograms};

pub(super) const STRENGTH: Missing = Missing::new(
    "the strength of a curing premix",
    "write strength = { sodium-nitrite = \"… %\" } from the label of the pack; never guess it",
);
const WEIGHT: Missing = Missing::new(
    "the weight of a curing premix: a spoon is not a weight",
    "weigh it, and write the amount in grams or ounces",
);
pub(super) const BEYOND: Missing = Missing::new(
    "a weight of curing premix that a kitchen can have",
    "check the amount and its unit",
);
pub(super) const SCALE: Missing = Missing::new(
    "how finely the curing premix was weighed",
    "write the smallest step of the scale under [instruments], as scale = \"1 g\"",
);
pub(super) const FINISHED: Missing = Missing::new(
    "the weight of the finished product, which the limit is divided by",
    "weigh the batch when it is done, and write finished = \"…\" in the component",
);
const GREEN: Missing = Missing::new(
    "the green weight: every ingredient of kind \"meat\" needs a weight that its scale can show",
    "weigh the meat, in the component that the premix cures",
);
const METHOD: Missing = Missing::new(
    "the cure method",
    "write cure = { method = \"ground\" }, or dry-rub, pumped, immersion",
);
const PICKLED: Missing = Missing::new(
    "how the cure reaches the meat: the method has no pickle, and the premix is in one",
    "write method = \"immersion\" or \"pumped\"; of what is rubbed or mixed in, leave part = \"pickle\" out",
);
const MISFIT: Missing = Missing::new(
    "a cure method that fits the food: ground meat is cured ground, and nothing else is",
    "write method = \"ground\" for ground food, and dry-rub, pumped or immersion for whole cuts",
);
const TOO_LITTLE: Missing = Missing::new(
    "enough pickle: what is to be pumped in weighs more than the pickle",
    "make more pickle, or write the pump that was weighed",
);
const PICKLE: Missing = Missing::new(
    "the weight of the pickle: an ingredient of it has no weight, or is not said to be in it",
    "weigh every ingredient of the pickle, the water too: a volume is no weight; and write part = \"pickle\" on each, on what cures too",
);
const PUMP: Missing = Missing::new(
    "how much of the pickle is pumped in",
    "write pump = \"10 %\" under cure, as weighed",
);
const IMMERSION: Missing = Missing::new(
    "how an immersion cure is reckoned: by its pick-up, or at equilibrium; the two can differ tenfold",
    "write pick_up = \"5 %\" as weighed, and equilibrium = true or false",
);
const NOT_AT_REST: &str = "Between its pick-up and its level at equilibrium: a brine that lasts for days comes near the second, however little the meat gains.";

/// A mass as a scale shows it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Weighed {
    /// The mass as written.
    pub mass: Mass,
    /// The smallest division of the scale, where the recipe says.
    pub scale: Option<Mass>,
}

impl Weighed {
    /// What the mass may be.
    ///
    /// # Errors
    /// [`CureError::OutOfRange`] for a mass or a division that no scale has.
    pub fn range(&self) -> Result<Range<PremixMass>, CureError> {
        PremixMass::range(match self.scale {
            Some(division) => Range::weighed(self.mass, division)?,
            None => Range::exactly(self.mass)?,
        })
    }
}

/// An ingredient that brings curing agents.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Cure {
    /// Its mass, or `None` where it is measured by the spoon.
    pub mass: Option<Weighed>,
    /// Its strength, or `None` where the recipe does not say.
    pub strength: Option<Premix>,
    /// Where it stands in the document.
    pub place: Place,
}

/// The pickle of a pumped or immersed cure.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pickle {
    /// The weight of all of it.
    pub weight: Range<PickleWeight>,
    /// How much of it the meat takes up, pumped or picked up, where the recipe says.
    pub taken_up: Option<Range<Pump>>,
    /// Whether an immersion lasts until meat and pickle are at equilibrium, where the
    /// recipe says.
    pub equilibrium: Option<bool>,
}

impl Pickle {
    /// Whether an immersion comes to equilibrium, of what is said of it and how long it lasts: that it does not
    /// counts only where it lasts less than a day. No document that was read says how soon meat and pickle
    /// come to rest; what is counted in days is not held to be far from it.
    #[must_use]
    pub fn comes_to_rest(said: Option<bool>, lasts: Option<Time>) -> Option<bool> {
        let short = lasts.is_some_and(|time| time < days(1.0));
        said.filter(|&at_rest| at_rest || short)
    }
}

/// What is cured, and how.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Batch<'a> {
    /// The class of the food. Bacon has rules of its own.
    pub food: Food,
    /// Which products of the tables it is, for authorities whose limits go by product:
    /// keys such as `eu/heat-treated`.
    pub cured_as: &'a [&'static str],
    /// The weight of all ingredients together but the pickle, or `None` where it cannot be told.
    pub product: Option<Range<Mass>>,
    /// The method, or `None` where the recipe does not say.
    pub method: Option<Method>,
    /// The green weight, or `None` where it cannot be told.
    pub green: Option<Range<GreenWeight>>,
    /// The meat as it was weighed, the skin of bellies with it, where that is more than the green
    /// weight.
    pub with_skin: Option<Range<Mass>>,
    /// Whether meat, pickle and product were weighed on a scale whose division is known.
    pub scaled: bool,
    /// How far the scale may be off besides its division, where it is known to be.
    pub scale_error: Option<Mass>,
    /// Everything that brings curing agents.
    pub cures: &'a [Cure],
    /// The pickle, for a pumped or immersed cure.
    pub pickle: Option<Pickle>,
    /// Accelerators and phosphates that go in beside the cure.
    pub additions: &'a [Addition],
    /// The weight of the batch when it is done, where the recipe says.
    pub finished: Option<Range<Mass>>,
    /// The weight of the milk of a cheese.
    pub milk: Option<Range<Mass>>,
    /// Whether it is a food for infants.
    pub for_infants: bool,
    /// What an analysis of the finished product found.
    pub analysis: Analysis,
    /// The ingoing nitrite that the recipe itself claims, mg/kg of green weight.
    pub claimed: Option<Placed<f64>>,
    /// Whether it is not said if bellies were weighed with their skin. The green weight is
    /// then a range.
    pub skin_unknown: bool,
    /// Added fermentable sugar in percent, where the recipe says.
    pub sugar_percent: Option<f64>,
    /// Whether a lactic culture is added, where the recipe says.
    pub culture: Option<bool>,
    /// Where the cure stands in the document.
    pub place: Place,
}

impl Batch<'_> {
    /// A batch of which nothing is known but the class of its food, to be filled with
    /// `..Batch::of(food)`.
    #[must_use]
    pub const fn of(food: Food) -> Self {
        Self {
            food,
            cured_as: &[],
            product: None,
            method: None,
            green: None,
            with_skin: None,
            scaled: false,
            scale_error: None,
            cures: &[],
            pickle: None,
            additions: &[],
            finished: None,
            milk: None,
            for_infants: false,
            analysis: Analysis { nitrite: None, nitrate: None },
            claimed: None,
            skin_unknown: false,
            sugar_percent: None,
            culture: None,
            place: Place { start: 0, end: 0 },
        }
    }
}

/// One ingredient as it counts towards a level.
pub(super) struct Source<A> {
    pub(super) mass: Option<Weighed>,
    pub(super) strength: Option<Level<A, InPremix>>,
    pub(super) place: Place,
}

/// A level by the masses as written, and between what they may be.
pub(super) type NominalAndRange<A, B> = (Level<A, B>, Range<Level<A, B>>);

/// A level that is known, perhaps only from below.
pub(super) struct Known<A, B> {
    pub(super) nominal: Level<A, B>,
    pub(super) range: Range<Level<A, B>>,
    pub(super) missing: Option<Missing>,
    /// Whether every mass in it was weighed on a scale whose division is known.
    pub(super) scaled: bool,
    /// What is to be said of how it was reckoned.
    pub(super) note: Option<&'static str>,
    pub(super) place: Place,
}

impl<A: Agent, B: Basis> Known<A, B> {
    pub(super) fn zero(place: Place) -> Self {
        let zero = Level::of(0.0);
        Self {
            nominal: zero,
            range: Range::ordered(zero, zero),
            missing: None,
            scaled: true,
            note: None,
            place,
        }
    }

    pub(super) fn is_zero(&self) -> bool {
        self.range.high().mg_per_kg() <= 0.0
    }

    /// Whether there may be any.
    pub(super) fn may_be(&self) -> bool {
        !self.is_zero() || self.missing.is_some()
    }

    /// A finding of this level held against a limit. What is missing leaves the level
    /// open upwards; a scale that is not stated leaves even a met limit unproven.
    pub(super) fn against(&self, rule: &'static Rule, limit: Limit<Level<A, B>>) -> Finding {
        let range = match self.missing {
            None => self.range,
            Some(_) => Range::ordered(self.range.low(), Level::of(f64::INFINITY)),
        };
        let verdict = limit.judge(&range);
        let finding = Finding::new(rule, verdict).found(&range).limit(limit).at(self.place);
        let finding = Finding { note: self.note, ..finding };
        let finding = if self.missing.is_none() { finding.nominal(self.nominal) } else { finding };
        match (verdict, self.missing, self.scaled) {
            (Verdict::Unproven, Some(missing), _) => finding.missing(missing),
            (Verdict::Meets, None, false) if !self.is_zero() => finding.left_open(SCALE),
            _ => finding,
        }
    }
}

impl Batch<'_> {
    /// Why a batch cannot be held to rules that go by method, if that is so.
    pub(super) fn unknowable(&self) -> Option<Missing> {
        let ground = self.method == Some(Method::Ground);
        match self.method {
            None => Some(METHOD),
            Some(_) if ground != self.food.is_ground() => Some(MISFIT),
            Some(Method::Ground | Method::DryRub) if self.pickle.is_some() => Some(PICKLED),
            Some(_) => self.no_level(),
        }
    }

    /// Why no level on green weight can be worked out at all, if that is so. Without a pickle it
    /// takes no method.
    pub(super) fn no_level(&self) -> Option<Missing> {
        match self.method {
            None if self.is_pickled() => Some(METHOD),
            None | Some(Method::Ground | Method::DryRub) => self.green.is_none().then_some(GREEN),
            Some(Method::Pumped) => {
                match self.pickle.map(|pickle| (pickle.weight, pickle.taken_up)) {
                    None => Some(PICKLE),
                    Some((_, None)) => Some(PUMP),
                    Some((weight, Some(taken_up))) => {
                        let needed =
                            self.green.map(|green| green.low().mass() * taken_up.low().fraction());
                        needed
                            .is_none_or(|needed| needed > weight.high().mass())
                            .then_some(if needed.is_none() { GREEN } else { TOO_LITTLE })
                    }
                }
            }
            Some(Method::Immersion) => match self.pickle {
                None => Some(PICKLE),
                Some(Pickle { equilibrium: Some(true), .. }) => {
                    self.green.is_none().then_some(GREEN)
                }
                Some(Pickle { taken_up: None, .. }) => Some(IMMERSION),
                Some(Pickle { equilibrium: None, .. }) => self.green.is_none().then_some(GREEN),
                Some(_) => None,
            },
        }
    }

    /// What a mass may be: the division of its scale, and how far the scale may be off.
    pub(super) fn weighed(&self, shown: Weighed) -> Option<Range<PremixMass>> {
        let range = shown.range().ok()?;
        let Some(error) = self.scale_error else { return Some(range) };
        PremixMass::range(widened(Range::ordered(range.low().mass(), range.high().mass()), error))
            .ok()
    }

    /// The most that is left of a mass once the scale is off by all it may be.
    pub(super) fn surely_below(&self, most: PremixMass) -> PremixMass {
        let less = most.mass() - self.scale_error.unwrap_or(Mass::ZERO);
        PremixMass::new(less).unwrap_or(PremixMass::NONE)
    }

    pub(super) fn level_of<A: Agent>(
        &self,
        premix: Weighed,
        strength: Level<A, InPremix>,
    ) -> Option<NominalAndRange<A, OnGreenWeight>> {
        let weighed = self.weighed(premix)?;
        let shown = PremixMass::new(premix.mass).ok()?;
        let strengths = Range::ordered(strength, strength);
        let by_pickle = |pickle: &Pickle, taken_up: Range<Pump>| {
            let nominal = pumped(shown, strength, pickle.middle()?, middle_of(taken_up)?);
            Some((nominal, pumped_between(weighed, strengths, pickle.weight, taken_up)))
        };
        match self.method {
            None if self.is_pickled() => None,
            None | Some(Method::Ground | Method::DryRub) => {
                let green = self.green?;
                let nominal = ingoing(shown, strength, middle_green(green)?);
                Some((nominal, ingoing_between(weighed, strengths, green)))
            }
            Some(Method::Pumped) => {
                let pickle = self.pickle.as_ref()?;
                by_pickle(pickle, pickle.taken_up?)
            }
            Some(Method::Immersion) => {
                let pickle = self.pickle.as_ref()?;
                let by_pick_up = pickle.taken_up.and_then(|taken_up| by_pickle(pickle, taken_up));
                let at_rest = self.green.and_then(|green| {
                    let middle = (middle_green(green)?, pickle.middle()?);
                    let nominal = equilibrated(shown, strength, middle.0, middle.1).as_ingoing();
                    let range = equilibrated_between(weighed, strengths, green, pickle.weight);
                    Some((nominal, range))
                });
                match pickle.equilibrium {
                    Some(true) => at_rest,
                    Some(false) => by_pick_up,
                    None => Some(either(by_pick_up?, at_rest?)),
                }
            }
        }
    }

    /// The level of one agent on green weight, over all ingredients.
    pub(super) fn total<A: Agent>(
        &self,
        strength_of: impl Fn(&Premix) -> Level<A, InPremix>,
    ) -> Known<A, OnGreenWeight> {
        self.total_by(strength_of, |mass, strength| self.level_of(mass, strength))
    }

    /// The level of one agent over all ingredients, each reckoned by `level_of`.
    pub(super) fn total_by<A: Agent, B: Basis>(
        &self,
        strength_of: impl Fn(&Premix) -> Level<A, InPremix>,
        level_of: impl Fn(Weighed, Level<A, InPremix>) -> Option<NominalAndRange<A, B>>,
    ) -> Known<A, B> {
        let sources = self.cures.iter().map(|cure| Source {
            mass: cure.mass,
            strength: cure.strength.as_ref().map(&strength_of),
            place: cure.place,
        });
        self.sum_of(sources, level_of)
    }

    /// The level of some ingredients together.
    pub(super) fn sum_of<A: Agent, B: Basis>(
        &self,
        sources: impl Iterator<Item = Source<A>>,
        level_of: impl Fn(Weighed, Level<A, InPremix>) -> Option<NominalAndRange<A, B>>,
    ) -> Known<A, B> {
        let note = self.may_be_at_rest().then_some(NOT_AT_REST);
        let mut known = Known { scaled: self.scaled, note, ..Known::zero(self.place) };
        let brings = |source: &Source<A>| source.strength.is_none_or(|s| s.mg_per_kg() > 0.0);
        for source in sources.filter(brings) {
            let (Some(mass), Some(strength)) = (source.mass, source.strength) else {
                known.missing = Some(if source.strength.is_none() { STRENGTH } else { WEIGHT });
                known.place = source.place;
                continue;
            };
            let sum = level_of(mass, strength).and_then(|(nominal, range)| {
                let sum = known.range.plus(range).ok()?;
                // Rounding outward must not leave less than nothing.
                let low = if sum.low() < Level::ZERO { Level::ZERO } else { sum.low() };
                Some((known.nominal + nominal, Range::ordered(low, sum.high())))
            });
            let Some((nominal, range)) = sum else {
                known.missing = Some(BEYOND);
                known.place = source.place;
                continue;
            };
            (known.nominal, known.range) = (nominal, range);
            known.scaled &= mass.scale.is_some();
            if known.missing.is_none() {
                known.place = source.place;
            }
        }
        known
    }

    /// Whether meat and pickle may be at equilibrium, and may not.
    fn may_be_at_rest(&self) -> bool {
        self.method == Some(Method::Immersion)
            && self.pickle.is_some_and(|pickle| pickle.equilibrium.is_none())
    }

    /// Whether a curing salt is stronger than any premix: no weight of it is worked out.
    fn is_beyond_a_premix(&self) -> bool {
        self.cures.iter().any(|cure| cure.strength.is_some_and(|p| p.is_beyond_a_premix()))
    }

    /// The only ingredient that brings the agent: what is weighed of it, and its strength.
    pub(super) fn only_source<A: Agent>(
        &self,
        strength_of: impl Fn(&Premix) -> Level<A, InPremix>,
    ) -> Option<(Weighed, Level<A, InPremix>)> {
        let mut sources = self
            .cures
            .iter()
            .filter_map(|cure| Some((cure.mass?, strength_of(&cure.strength?))))
            .filter(|(_, strength)| strength.mg_per_kg() > 0.0);
        let only = sources.next();
        if sources.next().is_some() || self.is_beyond_a_premix() { None } else { only }
    }

    /// What would bring the level under a ceiling.
    pub(super) fn mend_ceiling<A: Agent>(
        &self,
        ceiling: Level<A, OnGreenWeight>,
        known: &Known<A, OnGreenWeight>,
        strength_of: impl Fn(&Premix) -> Level<A, InPremix>,
    ) -> Option<Mend> {
        if self.is_beyond_a_premix() && ceiling > Level::of(0.0) {
            return None;
        }
        self.mend_below(ceiling, known, self.only_source(strength_of))
    }

    /// What would bring the level under a ceiling, where `source` is the only ingredient
    /// that brings it.
    pub(super) fn mend_below<A: Agent>(
        &self,
        ceiling: Level<A, OnGreenWeight>,
        known: &Known<A, OnGreenWeight>,
        source: Option<(Weighed, Level<A, InPremix>)>,
    ) -> Option<Mend> {
        if ceiling.mg_per_kg() <= 0.0 {
            return Some(Mend::LeaveOut);
        }
        let Some((shown, strength)) = source else {
            let (ceiling, high) = (ceiling.mg_per_kg(), known.range.high().mg_per_kg());
            let rest = self.rest_of_pickle(self.weighed_in()?)?;
            let share = ceiling * rest / (high - ceiling * (1.0 - rest));
            return (share.is_finite() && share < 1.0).then_some(Mend::UseShare(share));
        };
        let most = self.most_in_lighter(self.most(ceiling, strength)?, shown)?;
        match (largest_reading(self.surely_below(most), shown.scale), shown.scale) {
            (Some(reading), _) => Some(Mend::UseAtMost(reading)),
            (None, Some(_)) => Some(Mend::FinerScale(coarsest_step(most))),
            (None, None) => None,
        }
    }

    /// All premixes and additives together, as much as they may be.
    fn weighed_in(&self) -> Option<Mass> {
        let cures = self.cures.iter().map(|cure| cure.mass);
        let mut masses = cures.chain(self.additions.iter().map(|added| added.mass)).flatten();
        masses.try_fold(Mass::ZERO, |sum, mass| Some(sum + self.weighed(mass)?.high().mass()))
    }

    /// What a premix of a pickle is spread in: the pickle, and at rest the meat with it.
    fn spread_in(&self) -> Option<Mass> {
        let pickle = self.pickle.filter(|_| self.is_pickled())?;
        let at_rest = self.method == Some(Method::Immersion) && pickle.equilibrium == Some(true);
        let green = if at_rest { self.green?.low().mass() } else { Mass::ZERO };
        Some(pickle.weight.low().mass() + green)
    }

    /// The share of a pickle that stays without some of it; all of what is no pickle.
    fn rest_of_pickle(&self, without: Mass) -> Option<f64> {
        let Some(all) = self.spread_in() else { return Some(1.0) };
        let rest = 1.0 - (without / all).value;
        (rest > 0.0).then_some(rest)
    }

    /// Less of a premix leaves its pickle lighter, and what is left of it counts for more: of
    /// the `most` in a pickle as it is, the most in one that lacks the difference.
    fn most_in_lighter(&self, most: PremixMass, shown: Weighed) -> Option<PremixMass> {
        let rest = self.rest_of_pickle(self.weighed(shown)?.high().mass())?;
        let share = rest / self.rest_of_pickle(most.mass())?;
        PremixMass::new(most.mass() * share.min(1.0)).ok()
    }
}

impl Batch<'_> {
    /// Whether the cure is in a pickle, of which only what is taken up goes into the meat.
    pub(super) fn is_pickled(&self) -> bool {
        match self.method {
            Some(Method::Pumped | Method::Immersion) => true,
            Some(Method::Ground | Method::DryRub) => false,
            None => self.pickle.is_some(),
        }
    }

    /// The weight of the product as made, with what it has taken up of its pickle.
    pub(super) fn as_made(&self) -> Option<Range<GreenWeight>> {
        let product = self.product?;
        let Some(pickle) = self.pickle.filter(|_| self.is_pickled()) else {
            return GreenWeight::range(product).ok();
        };
        let green = self.green?;
        // At rest the level in the meat is that of the pickle, however much it took up.
        let by_pick_up = pickle.taken_up.filter(|_| pickle.equilibrium != Some(true));
        let most =
            by_pick_up.map_or(Mass::ZERO, |share| green.high().mass() * share.high().fraction());
        let surely = self.method == Some(Method::Pumped) || pickle.equilibrium == Some(false);
        let least = by_pick_up
            .filter(|_| surely)
            .map_or(Mass::ZERO, |share| green.low().mass() * share.low().fraction());
        GreenWeight::range(product.plus(Range::ordered(least, most)).ok()?).ok()
    }

    /// A level on green weight as a level on the weight of the finished product. `None` where
    /// one of the two is not known.
    pub(super) fn on_finished<A: Agent>(
        &self,
        known: &Known<A, OnGreenWeight>,
    ) -> Option<Known<A, OnFinishedWeight>> {
        self.divided_by(known, GreenWeight::range(self.finished?).ok()?)
    }

    /// A level on green weight as a level on another weight: × green weight / that weight.
    pub(super) fn divided_by<A: Agent, B: Basis>(
        &self,
        known: &Known<A, OnGreenWeight>,
        weight: Range<GreenWeight>,
    ) -> Option<Known<A, B>> {
        let green = self.green?;
        let share = |green: GreenWeight, weight: GreenWeight| (green.mass() / weight.mass()).value;
        let at = |level: Level<A, _>, share: f64| level.mg_per_kg() * share;
        let low = at(known.range.low(), share(green.low(), weight.high()));
        let high = at(known.range.high(), share(green.high(), weight.low()));
        let nominal = at(known.nominal, share(middle_green(green)?, middle_green(weight)?));
        let outward = |value: f64, step: fn(f64) -> f64| Level::of(step(step(value)).max(0.0));
        Some(Known {
            nominal: Level::of(nominal),
            range: Range::ordered(outward(low, f64::next_down), outward(high, f64::next_up)),
            missing: known.missing,
            scaled: known.scaled,
            note: known.note,
            place: known.place,
        })
    }

    /// The most of an ingredient of this strength under a ceiling, all inputs at their
    /// worst.
    pub(super) fn most<A: Agent>(
        &self,
        ceiling: Level<A, OnGreenWeight>,
        strength: Level<A, InPremix>,
    ) -> Option<PremixMass> {
        let by_pickle = |pickle: &Pickle| {
            largest_in_pickle(ceiling, strength, pickle.weight.low(), pickle.taken_up?.high()).ok()
        };
        let at_rest = |pickle: &Pickle| {
            largest_at_equilibrium(ceiling, strength, self.green?.low(), pickle.weight.low()).ok()
        };
        match self.method? {
            Method::Ground | Method::DryRub => {
                largest_premix(ceiling, strength, self.green?.low()).ok()
            }
            Method::Pumped => by_pickle(&self.pickle?),
            Method::Immersion => {
                let pickle = self.pickle?;
                match pickle.equilibrium {
                    Some(true) => at_rest(&pickle),
                    Some(false) => by_pickle(&pickle),
                    None => {
                        let (one, two) = (by_pickle(&pickle)?, at_rest(&pickle)?);
                        Some(if one < two { one } else { two })
                    }
                }
            }
        }
    }

    /// A finding that misses a prescribed amount, with the mass that would hit it.
    pub(super) fn mend_target<A: Agent>(
        &self,
        finding: Finding,
        target: Level<A, OnGreenWeight>,
        source: Option<(Weighed, Level<A, InPremix>)>,
    ) -> Finding {
        if finding.verdict == Verdict::Meets || finding.missing.is_some() {
            return finding;
        }
        let mend = source.and_then(|(shown, strength)| {
            let mass = self.hitting(target, shown.mass, strength)?;
            Some(Mend::Weigh(match shown.scale {
                // The nearest reading, and not the one below: it is a target.
                Some(division) => floor_to_division(mass + division * 0.5, division).ok()?,
                None => mass,
            }))
        });
        mend.map_or(finding, |mend| finding.mend(mend))
    }

    /// The mass that hits a target in place of the one that is `shown`. It is part of the pickle:
    /// m s u / (rest + m) = target, so m = target × rest / (s u − target).
    fn hitting<A: Agent>(
        &self,
        target: Level<A, OnGreenWeight>,
        shown: Mass,
        strength: Level<A, InPremix>,
    ) -> Option<Mass> {
        let pickle = self.pickle?;
        let rest = (pickle.middle()?.mass() - shown).value;
        let taken_up = strength.mg_per_kg() * middle_of(pickle.taken_up?)?.fraction();
        let kg = target.mg_per_kg() * rest / (taken_up - target.mg_per_kg());
        PremixMass::new(kilograms(kg)).ok().map(PremixMass::mass)
    }

    /// The mass that hits a target in a pickle of this weight: m s u / pickle = target.
    pub(super) fn hitting_in<A: Agent>(
        &self,
        target: Level<A, OnGreenWeight>,
        strength: Level<A, InPremix>,
    ) -> Option<Mass> {
        let pickle = self.pickle?;
        let taken_up = strength.mg_per_kg() * middle_of(pickle.taken_up?)?.fraction();
        let kg = target.mg_per_kg() * pickle.middle()?.mass().value / taken_up;
        PremixMass::new(kilograms(kg)).ok().map(PremixMass::mass)
    }
}

impl Pickle {
    fn middle(&self) -> Option<PickleWeight> {
        PickleWeight::new((self.weight.low().mass() + self.weight.high().mass()) * 0.5).ok()
    }
}

fn middle_of(taken_up: Range<Pump>) -> Option<Pump> {
    Pump::new((taken_up.low().fraction() + taken_up.high().fraction()) * 0.5).ok()
}

fn middle_green(green: Range<GreenWeight>) -> Option<GreenWeight> {
    GreenWeight::new((green.low().mass() + green.high().mass()) * 0.5).ok()
}

/// One of two reckonings, and it is not known which: the larger stands as nominal, and
/// the range holds both.
pub(super) fn either<A: Agent, B: Basis>(
    a: NominalAndRange<A, B>,
    b: NominalAndRange<A, B>,
) -> NominalAndRange<A, B> {
    let lower = |a, b| if a < b { a } else { b };
    let higher = |a, b| if a > b { a } else { b };
    let range = Range::ordered(lower(a.1.low(), b.1.low()), higher(a.1.high(), b.1.high()));
    (higher(a.0, b.0), range)
}
