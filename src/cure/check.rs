use uom::si::f64::Mass;

use super::CureError;
use super::agent::{Agent, Ascorbate, Basis, InPremix, NitriteSalts, OnGreenWeight};
use super::level::Level;
use super::limit::{BaconFormula, BaconLimit, IngoingLimit, Method};
use super::method::{
    GreenWeight, PickleWeight, PremixMass, Pump, equilibrated, equilibrated_between, ingoing,
    ingoing_between, largest_at_equilibrium, largest_in_pickle, largest_premix, largest_reading,
    pumped, pumped_between,
};
use super::premix::Premix;
use super::table::{
    US_BACON_NITRATE, US_BACON_POTASSIUM, US_BACON_SODIUM, US_BACON_TOLERANCE, US_INGOING_NITRATE,
    US_INGOING_NITRITE, US_MINIMUM,
};
use crate::authority::Authority;
use crate::cite::{Cited, Date, Row};
use crate::finding::{Finding, Force, Limit, Mend, Missing, Place, Rule, Verdict};
use crate::food::Food;
use crate::range::{Measured, Range};
use crate::units::{floor_to_division, kilograms};

pub(super) const INGOING_NITRITE: Rule =
    Rule::new("cure/ingoing-nitrite", "nitrite that goes into the meat", Force::Safety);
pub(super) const INGOING_NITRATE: Rule =
    Rule::new("cure/ingoing-nitrate", "nitrate that goes into the meat", Force::Safety);
const LEAST_NITRITE: Rule =
    Rule::new("cure/least-nitrite", "enough nitrite to be worth its name", Force::Advice);
const BACON_NITRITE: Rule = Rule::new("cure/bacon-nitrite", "nitrite in bacon", Force::Safety);
const BACON_NITRATE: Rule = Rule::new("cure/bacon-nitrate", "no nitrate in bacon", Force::Safety);
const BACON_ASCORBATE: Rule =
    Rule::new("cure/bacon-ascorbate", "ascorbate or erythorbate in pumped bacon", Force::Safety);
const ANSWERED: Rule =
    Rule::new("cure/authority", "an authority that limits this cure", Force::Safety);

/// The rules of this room.
pub const RULES: [Rule; 8] = [
    INGOING_NITRITE,
    INGOING_NITRATE,
    LEAST_NITRITE,
    BACON_NITRITE,
    BACON_NITRATE,
    BACON_ASCORBATE,
    super::product::RESIDUE,
    ANSWERED,
];

const STRENGTH: Missing = Missing::new(
    "the strength of a curing premix",
    "write strength = { sodium-nitrite = \"… %\" } from the label of the pack; never guess it",
);
const WEIGHT: Missing = Missing::new(
    "the weight of a curing premix: a spoon is not a weight",
    "weigh it, and write the amount in grams or ounces",
);
const BEYOND: Missing = Missing::new(
    "a weight of curing premix that a kitchen can have",
    "check the amount and its unit",
);
const SCALE: Missing = Missing::new(
    "how finely the curing premix was weighed",
    "write the smallest step of the scale under [instruments], as scale = \"1 g\"",
);
const GREEN: Missing = Missing::new(
    "the green weight: every ingredient of kind \"meat\" needs a weight that its scale can show",
    "weigh the meat, in the component that the premix cures",
);
pub(super) const NO_ROW: Missing = Missing::new(
    "a limit of this authority for this cure on the day of the recipe",
    "hold the recipe against another authority, or change its date",
);
const METHOD: Missing = Missing::new(
    "the cure method",
    "write cure = { method = \"ground\" }, or dry-rub, pumped, immersion",
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
    "the weight of the pickle and the pump",
    "give every ingredient of the pickle its weight and part = \"pickle\", and write pump = \"10 %\"",
);
const IMMERSION: Missing = Missing::new(
    "how an immersion cure is reckoned: by its pick-up, or at equilibrium; the two can differ tenfold",
    "write pick_up = \"5 %\" as weighed, and equilibrium = true or false",
);
const CULTURE: Missing = Missing::new(
    "the sugar and the lactic culture without which so little nitrite is not allowed",
    "use the standard amount; or make it with at least 0.7 % fermentable sugar and a lactic culture, and say so under cure",
);

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

/// What is cured, and how.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Batch<'a> {
    /// The class of the food. Bacon has rules of its own.
    pub food: Food,
    /// Which products of the tables it is, for authorities whose limits go by product:
    /// keys such as `eu/heat-treated`.
    pub cured_as: &'a [&'static str],
    /// The weight of all ingredients together, or `None` where it cannot be told.
    pub product: Option<Range<Mass>>,
    /// The method, or `None` where the recipe does not say.
    pub method: Option<Method>,
    /// The green weight, or `None` where it cannot be told.
    pub green: Option<Range<GreenWeight>>,
    /// Whether meat, pickle and product were weighed on a scale whose division is known.
    pub scaled: bool,
    /// Everything that brings curing agents.
    pub cures: &'a [Cure],
    /// The pickle, for a pumped or immersed cure.
    pub pickle: Option<Pickle>,
    /// Ascorbate or erythorbate, anhydrous; `None` where there is none.
    pub ascorbate: Option<Weighed>,
    /// Added fermentable sugar in percent, where the recipe says.
    pub sugar_percent: Option<f64>,
    /// Whether a lactic culture is added, where the recipe says.
    pub culture: Option<bool>,
    /// Where the cure stands in the document.
    pub place: Place,
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
            place,
        }
    }

    pub(super) fn is_zero(&self) -> bool {
        self.range.high().mg_per_kg() <= 0.0
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
        let finding = if self.missing.is_none() { finding.nominal(self.nominal) } else { finding };
        match (verdict, self.missing, self.scaled) {
            (Verdict::Unproven, Some(missing), _) => finding.missing(missing),
            (Verdict::Meets, None, false) if !self.is_zero() => {
                Finding { verdict: Verdict::Unproven, ..finding }.missing(SCALE)
            }
            _ => finding,
        }
    }
}

impl Batch<'_> {
    /// Why no level can be worked out at all, if that is so.
    pub(super) fn unknowable(&self) -> Option<Missing> {
        let ground = self.method == Some(Method::Ground);
        if self.method.is_some() && ground != self.food.is_ground() {
            return Some(MISFIT);
        }
        match self.method {
            None => Some(METHOD),
            Some(Method::Ground | Method::DryRub) => self.green.is_none().then_some(GREEN),
            Some(Method::Pumped) => {
                match self.pickle.and_then(|pickle| Some((pickle.weight, pickle.taken_up?))) {
                    None => Some(PICKLE),
                    Some((weight, taken_up)) => {
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

    fn level_of<A: Agent>(
        &self,
        premix: Weighed,
        strength: Level<A, InPremix>,
    ) -> Option<NominalAndRange<A, OnGreenWeight>> {
        let weighed = premix.range().ok()?;
        let shown = PremixMass::new(premix.mass).ok()?;
        let strengths = Range::ordered(strength, strength);
        let by_pickle = |pickle: &Pickle, taken_up: Range<Pump>| {
            let nominal = pumped(shown, strength, pickle.middle()?, middle_of(taken_up)?);
            Some((nominal, pumped_between(weighed, strengths, pickle.weight, taken_up)))
        };
        match self.method? {
            Method::Ground | Method::DryRub => {
                let green = self.green?;
                let nominal = ingoing(shown, strength, middle_green(green)?);
                Some((nominal, ingoing_between(weighed, strengths, green)))
            }
            Method::Pumped => {
                let pickle = self.pickle.as_ref()?;
                by_pickle(pickle, pickle.taken_up?)
            }
            Method::Immersion => {
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
    fn total<A: Agent>(
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
        let mut known = Known { scaled: self.scaled, ..Known::zero(self.place) };
        for cure in self.cures {
            let (Some(mass), Some(strength)) = (cure.mass, cure.strength) else {
                known.missing = Some(if cure.strength.is_none() { STRENGTH } else { WEIGHT });
                known.place = cure.place;
                continue;
            };
            let strength = strength_of(&strength);
            if strength.mg_per_kg() <= 0.0 {
                continue;
            }
            let sum = level_of(mass, strength).and_then(|(nominal, range)| {
                let sum = known.range.plus(range).ok()?;
                // Rounding outward must not leave less than nothing.
                let low = if sum.low() < Level::ZERO { Level::ZERO } else { sum.low() };
                Some((known.nominal + nominal, Range::ordered(low, sum.high())))
            });
            let Some((nominal, range)) = sum else {
                known.missing = Some(BEYOND);
                known.place = cure.place;
                continue;
            };
            (known.nominal, known.range) = (nominal, range);
            known.scaled &= mass.scale.is_some();
            if known.missing.is_none() {
                known.place = cure.place;
            }
        }
        known
    }

    /// The only ingredient that brings the agent: its scale and its strength.
    pub(super) fn only_source<A: Agent>(
        &self,
        strength_of: impl Fn(&Premix) -> Level<A, InPremix>,
    ) -> Option<(Option<Mass>, Level<A, InPremix>)> {
        let mut sources = self
            .cures
            .iter()
            .filter_map(|cure| Some((cure.mass?.scale, strength_of(&cure.strength?))))
            .filter(|(_, strength)| strength.mg_per_kg() > 0.0);
        let only = sources.next();
        if sources.next().is_some() { None } else { only }
    }

    /// What would bring the level under a ceiling.
    fn mend_ceiling<A: Agent>(
        &self,
        ceiling: Level<A, OnGreenWeight>,
        known: &Known<A, OnGreenWeight>,
        strength_of: impl Fn(&Premix) -> Level<A, InPremix>,
    ) -> Option<Mend> {
        if ceiling.mg_per_kg() <= 0.0 {
            return Some(Mend::LeaveOut);
        }
        let Some((scale, strength)) = self.only_source(strength_of) else {
            let share = ceiling.mg_per_kg() / known.range.high().mg_per_kg();
            return (share.is_finite() && share < 1.0).then_some(Mend::UseShare(share));
        };
        let most = self.most(ceiling, strength)?;
        match (largest_reading(most, scale), scale) {
            (Some(reading), _) => Some(Mend::UseAtMost(reading)),
            // A reading of one division may be off by half of it: three halves must fit.
            (None, Some(_)) => Some(Mend::FinerScale(most.mass() / 1.5)),
            (None, None) => None,
        }
    }
}

impl Batch<'_> {
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
    fn mend_target<A: Agent>(
        &self,
        finding: Finding,
        target: Level<A, OnGreenWeight>,
        source: Option<(Option<Mass>, Level<A, InPremix>)>,
    ) -> Finding {
        let (scale, strength) = source.map_or((None, None), |(scale, s)| (scale, Some(s)));
        if finding.verdict == Verdict::Meets || finding.missing.is_some() {
            return finding;
        }
        let mass = self.pickle.zip(strength).and_then(|(pickle, strength)| {
            let per_kilogram = strength.mg_per_kg() * middle_of(pickle.taken_up?)?.fraction();
            let kg = target.mg_per_kg() * pickle.middle()?.mass().value / per_kilogram;
            PremixMass::new(kilograms(kg)).ok()
        });
        let shown = |mass: PremixMass| match scale {
            // The nearest reading, and not the one below: it is a target.
            Some(division) => {
                floor_to_division(mass.mass() + division * 0.5, division).unwrap_or(mass.mass())
            }
            None => mass.mass(),
        };
        mass.map_or(finding, |mass| finding.mend(Mend::Weigh(shown(mass))))
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
fn either<A: Agent>(
    a: NominalAndRange<A, OnGreenWeight>,
    b: NominalAndRange<A, OnGreenWeight>,
) -> NominalAndRange<A, OnGreenWeight> {
    let lower = |a, b| if a < b { a } else { b };
    let higher = |a, b| if a > b { a } else { b };
    let range = Range::ordered(lower(a.1.low(), b.1.low()), higher(a.1.high(), b.1.high()));
    (higher(a.0, b.0), range)
}

/// Checks what goes into a batch against the rules of one authority on one day.
///
/// Says nothing when the authority has no rule about curing; whoever calls it sees
/// to it that at least one authority answers.
pub fn check(
    batch: &Batch<'_>,
    authority: Authority,
    day: Option<Date>,
    report: &mut impl FnMut(Finding),
) {
    if batch.cures.is_empty() || !answers(authority, batch.food) {
        return;
    }
    if authority != Authority::UsFsis {
        super::product::check(batch, authority, day, report);
        return;
    }
    if let Some(missing) = batch.unknowable() {
        let rule = if batch.food == Food::Bacon { &BACON_NITRITE } else { &INGOING_NITRITE };
        report(Finding::new(rule, Verdict::Unproven).missing(missing).at(batch.place));
        if batch.food == Food::Bacon {
            bacon_nitrate(batch, report);
        }
        return;
    }
    if batch.food == Food::Bacon {
        bacon_nitrite(batch, authority, report);
        bacon_nitrate(batch, report);
        return;
    }
    if row(&US_INGOING_NITRITE, authority, batch.method, day).is_none() {
        report(Finding::new(&INGOING_NITRITE, Verdict::Unproven).missing(NO_ROW).at(batch.place));
        return;
    }
    let nitrite = batch.total(Premix::nitrite);
    let shown = !nitrite.is_zero() || nitrite.missing.is_some();
    if let Some(row) = row(&US_INGOING_NITRITE, authority, batch.method, day).filter(|_| shown) {
        let finding = ceiling(batch, &INGOING_NITRITE, row.value.limit, &nitrite, Premix::nitrite);
        report(finding.row(&row.row));
        if finding.verdict != Verdict::Breaks {
            least(&nitrite, report);
        }
    }
    let nitrate = batch.total(Premix::nitrate);
    if batch.food == Food::Poultry && !nitrate.is_zero() {
        // The row names meat, and of poultry only what is comminuted.
        report(Finding::new(&INGOING_NITRATE, Verdict::Unproven).missing(NO_ROW).at(nitrate.place));
        return;
    }
    if let Some(row) =
        row(&US_INGOING_NITRATE, authority, batch.method, day).filter(|_| !nitrate.is_zero())
    {
        let finding = ceiling(batch, &INGOING_NITRATE, row.value.limit, &nitrate, Premix::nitrate);
        report(finding.row(&row.row));
    }
}

/// Whether an authority has rules about curing a food. Those of the United States for
/// inspected plants are about meat and poultry: nitrite in fish has other limits.
#[must_use]
pub fn answers(authority: Authority, food: Food) -> bool {
    (authority == Authority::UsFsis && food.is_meat()) || super::product::answers(authority)
}

/// The finding when none of the authorities of a recipe limits its cure.
#[must_use]
pub fn unanswered(place: Place) -> Finding {
    Finding::new(&ANSWERED, Verdict::Unproven).at(place).missing(Missing::new(
        "an authority with limits for nitrite or nitrate in this food",
        "for meat add one to held_to, for example \"us-fsis\"; for fish, eggs, cheese and sauces leave nitrite and nitrate out",
    ))
}

pub(super) fn row<A: Agent>(
    table: &'static [Cited<IngoingLimit<A>>],
    authority: Authority,
    method: Option<Method>,
    day: Option<Date>,
) -> Option<&'static Cited<IngoingLimit<A>>> {
    table.iter().find(|row| {
        row.value.authority == authority
            && method.is_some_and(|method| row.value.methods.contains(&method))
            && row.row.in_force.on(day)
    })
}

fn ceiling<A: Agent>(
    batch: &Batch<'_>,
    rule: &'static Rule,
    limit: Limit<Level<A, OnGreenWeight>>,
    known: &Known<A, OnGreenWeight>,
    strength_of: impl Fn(&Premix) -> Level<A, InPremix>,
) -> Finding {
    let finding = known.against(rule, limit);
    let (ceiling, _) = limit.figures();
    match (finding.verdict, batch.mend_ceiling(ceiling, known, strength_of)) {
        (Verdict::Breaks | Verdict::Unproven, Some(mend)) if finding.missing.is_none() => {
            finding.mend(mend)
        }
        _ => finding,
    }
}

/// The policy of a least level in products that must be kept cold: advice.
fn least(nitrite: &Known<NitriteSalts, OnGreenWeight>, report: &mut impl FnMut(Finding)) {
    if nitrite.missing.is_some() || nitrite.is_zero() {
        return;
    }
    let limit = US_MINIMUM.value;
    let reached = limit.judge(&nitrite.range) == Verdict::Meets;
    let mut finding = Finding::new(&LEAST_NITRITE, Verdict::Meets)
        .nominal(nitrite.nominal)
        .found(&nitrite.range)
        .limit(limit)
        .row(&US_MINIMUM.row)
        .at(nitrite.place);
    if !reached {
        finding.past_advice = true;
        finding = finding.note("It may hold less than a product that must be kept cold should, unless something else makes it safe.");
    }
    report(finding);
}

fn bacon_nitrate(batch: &Batch<'_>, report: &mut impl FnMut(Finding)) {
    // Any nitrate breaks the rule, whatever the weights: the label alone decides.
    let place = batch
        .cures
        .iter()
        .find(|cure| cure.strength.is_some_and(|premix| premix.nitrate().mg_per_kg() > 0.0));
    let unknown = batch.cures.iter().find(|cure| cure.strength.is_none());
    let finding = |verdict| {
        Finding::new(&BACON_NITRATE, verdict)
            .limit(US_BACON_NITRATE.value)
            .row(&US_BACON_NITRATE.row)
    };
    report(match (place, unknown) {
        (Some(cure), _) => finding(Verdict::Breaks).at(cure.place).mend(Mend::LeaveOut),
        (None, Some(cure)) => finding(Verdict::Unproven).at(cure.place).missing(STRENGTH),
        (None, None) => finding(Verdict::Meets).at(batch.place),
    });
}

fn bacon_nitrite(batch: &Batch<'_>, authority: Authority, report: &mut impl FnMut(Finding)) {
    let potassium = batch.total(Premix::potassium_nitrite);
    if potassium.is_zero() {
        bacon(batch, authority, &US_BACON_SODIUM, Premix::sodium_nitrite, report);
    } else if batch.total(Premix::sodium_nitrite).is_zero() {
        bacon(batch, authority, &US_BACON_POTASSIUM, Premix::potassium_nitrite, report);
    } else {
        // Both salts: the potassium salt counts as the sodium salt of the same nitrite.
        let both = |premix: &Premix| {
            premix.sodium_nitrite() + premix.potassium_nitrite().as_sodium_nitrite()
        };
        bacon(batch, authority, &US_BACON_SODIUM, both, report);
    }
}

fn bacon<A: Agent>(
    batch: &Batch<'_>,
    authority: Authority,
    table: &'static [Cited<BaconLimit<A>>],
    strength_of: impl Fn(&Premix) -> Level<A, InPremix> + Copy,
    report: &mut impl FnMut(Finding),
) {
    let nitrite = batch.total(strength_of);
    let find = |formula| {
        table
            .iter()
            .find(move |row| row.value.authority == authority && row.value.formula == formula)
    };
    let formula = match batch.method {
        Some(Method::Pumped) => pumped_formula(&nitrite, table),
        Some(Method::Immersion) => BaconFormula::Immersion,
        _ => BaconFormula::DryCure,
    };
    let Some(row) = find(formula) else {
        report(Finding::new(&BACON_NITRITE, Verdict::Unproven).missing(NO_ROW).at(batch.place));
        return;
    };
    let limit = row.value.limit;
    let finding = match limit {
        Limit::Exactly(target) => {
            let finding = on_target(&BACON_NITRITE, target, accepted_around(target), &nitrite);
            let finding = finding.row(&row.row).row(&US_BACON_TOLERANCE.row);
            batch.mend_target(finding, target, batch.only_source(strength_of))
        }
        _ => ceiling(batch, &BACON_NITRITE, limit, &nitrite, strength_of).row(&row.row),
    };
    report(with_culture(batch, &row.value, finding));
    if let Some(prescribed) = row.value.ascorbate {
        ascorbate(batch, prescribed, &row.row, report);
    }
}

/// A formula that asks for sugar and a lactic culture breaks without them.
fn with_culture<A: Agent>(batch: &Batch<'_>, limit: &BaconLimit<A>, finding: Finding) -> Finding {
    let enough = limit
        .sugar_percent
        .is_none_or(|least| batch.sugar_percent.is_some_and(|sugar| sugar >= least));
    let too_little = limit
        .sugar_percent
        .is_some_and(|least| batch.sugar_percent.is_some_and(|sugar| sugar < least));
    let without = limit.lactic_culture && batch.culture == Some(false);
    let cultured = !limit.lactic_culture || batch.culture == Some(true);
    match finding.verdict {
        Verdict::Meets if too_little || without => {
            Finding { verdict: Verdict::Breaks, ..finding }.missing(CULTURE)
        }
        Verdict::Meets if !(enough && cultured) => {
            Finding { verdict: Verdict::Unproven, ..finding }.missing(CULTURE)
        }
        _ => finding,
    }
}

/// Which of the three pumped formulas a level aims at.
fn pumped_formula<A: Agent>(
    nitrite: &Known<A, OnGreenWeight>,
    table: &'static [Cited<BaconLimit<A>>],
) -> BaconFormula {
    let aims = |row: &&Cited<BaconLimit<A>>| match row.value.limit {
        Limit::Exactly(target) => close(nitrite.nominal, target),
        Limit::Between(..) => row.value.limit.met_by(nitrite.nominal) == Some(true),
        _ => false,
    };
    table.iter().find(aims).map_or(BaconFormula::Pumped, |row| row.value.formula)
}

/// A prescribed amount is printed in whole mg/kg; a formulation that rounds to it is it.
fn close<A: Agent>(nominal: Level<A, OnGreenWeight>, target: Level<A, OnGreenWeight>) -> bool {
    (nominal.mg_per_kg() - target.mg_per_kg()).abs() <= 0.5
}

/// A level held against a prescribed amount. `accepted` is how far one belly may stray
/// from the amount; without it only the formulation is judged.
fn on_target<A: Agent>(
    rule: &'static Rule,
    target: Level<A, OnGreenWeight>,
    accepted: Option<Limit<Level<A, OnGreenWeight>>>,
    known: &Known<A, OnGreenWeight>,
) -> Finding {
    let finding = known.against(rule, Limit::Exactly(target));
    if known.missing.is_some() {
        return finding;
    }
    let strays = accepted.is_some_and(|band| band.judge(&known.range) != Verdict::Meets);
    let within_reach = known.range.contains(target) && !known.range.is_exact();
    let verdict = match (close(known.nominal, target), strays) {
        (true, false) if known.scaled => Verdict::Meets,
        (true, _) => Verdict::Unproven,
        (false, _) if within_reach => Verdict::Unproven,
        (false, _) => Verdict::Breaks,
    };
    let missing = (verdict == Verdict::Unproven && !known.scaled).then_some(SCALE);
    Finding { verdict, missing, ..finding }
}

/// The variation that is accepted around the standard amount, as a share of any.
fn accepted_around<A>(target: Level<A, OnGreenWeight>) -> Option<Limit<Level<A, OnGreenWeight>>>
where
    A: Agent,
{
    let Limit::Between(low, high) = US_BACON_TOLERANCE.value else {
        return None;
    };
    let middle = (low.mg_per_kg() + high.mg_per_kg()) * 0.5;
    let end = |end: f64| Level::of(target.mg_per_kg() * end / middle);
    Some(Limit::Between(end(low.mg_per_kg()), end(high.mg_per_kg())))
}

fn ascorbate(
    batch: &Batch<'_>,
    prescribed: Level<Ascorbate, OnGreenWeight>,
    row: &'static Row,
    report: &mut impl FnMut(Finding),
) {
    let pure = Level::<Ascorbate, InPremix>::of(1e6);
    let known = match batch.ascorbate.map(|mass| (mass, batch.level_of(mass, pure))) {
        None => Known::zero(batch.place),
        Some((mass, Some((nominal, range)))) => Known {
            nominal,
            range,
            missing: None,
            scaled: mass.scale.is_some(),
            place: batch.place,
        },
        Some((_, None)) => Known { missing: Some(BEYOND), ..Known::zero(batch.place) },
    };
    let finding = on_target(&BACON_ASCORBATE, prescribed, None, &known).row(row);
    report(batch.mend_target(
        finding,
        prescribed,
        Some((batch.ascorbate.and_then(|a| a.scale), pure)),
    ));
}
