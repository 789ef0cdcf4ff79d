use super::batch::{Batch, FINISHED, Known, SCALE, Source, Weighed};
use super::check::NO_ROW;
use super::limit::{AdditiveBasis, AdditiveGroup, AdditiveLimit, Method};
use super::premix::Premix;
use super::table::{
    MOLAR_MASS_ASCORBATE_ANHYDROUS, MOLAR_MASS_ASCORBATE_MONOHYDRATE, US_ACCELERATORS,
    US_CITRIC_REPLACEMENT, US_PHOSPHATES,
};
use crate::authority::Authority;
use crate::cite::{Cited, Date};
use crate::finding::{Answer, Finding, Force, Limit, Mend, Missing, Place, Rule, Verdict};
use crate::food::Food;
use crate::level::{
    AcidPyrophosphate, Agent, Ascorbate, AscorbicAcids, Ascorbics, Citrates, FumaricAcid,
    GluconoDeltaLactone, InPremix, Level, OnGreenWeight, Phosphates,
};
use crate::range::Range;

pub(super) const ACCELERATOR: Rule =
    Rule::new("cure/accelerator", "what speeds a cure", Force::Safety);
pub(super) const PHOSPHATE: Rule =
    Rule::new("cure/phosphate", "phosphate in the product", Force::Safety);

const NO_CURE: Missing = Missing::new(
    "a cure: an accelerator may only go with nitrite or nitrate",
    "leave it out, or write the curing premix as an ingredient",
);
const ELSEWHERE: Missing = Missing::new(
    "a limit of this authority for this additive: this version judges none",
    "see the tables of ascorbates and phosphates elsewhere in references/README.md, or ask the authority",
)
.answered_by(Answer::NoTable);
const TAKEN_UP: Missing = Missing::new(
    "how much of the pickle goes into the meat: all of its phosphate would be too much",
    "put no more phosphate into the pickle than the meat may hold",
);
const UNSUMMED: Missing = Missing::new(
    "how the acids and their salts are counted together: the rows do not say",
    "use one of the two, or keep their sum under the lower limit",
);
const NAMED_PRODUCT: Missing = Missing::new(
    "the product: this additive is allowed in named products only",
    "write cured_as = [\"us/frankfurter-class\"] where it is one; otherwise leave the additive out",
);

/// An additive that goes with a cure.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize), serde(rename_all = "kebab-case"))]
#[non_exhaustive]
pub enum Additive {
    /// Ascorbic acid.
    AscorbicAcid,
    /// Erythorbic acid.
    ErythorbicAcid,
    /// Sodium ascorbate.
    SodiumAscorbate,
    /// Sodium erythorbate.
    SodiumErythorbate,
    /// Citric acid.
    CitricAcid,
    /// Sodium citrate.
    SodiumCitrate,
    /// Fumaric acid.
    FumaricAcid,
    /// Glucono-delta-lactone.
    GluconoDeltaLactone,
    /// Sodium acid pyrophosphate.
    SodiumAcidPyrophosphate,
    /// Another phosphate.
    Phosphate,
}

impl Additive {
    /// Every additive.
    pub const ALL: [Self; 10] = [
        Self::AscorbicAcid,
        Self::ErythorbicAcid,
        Self::SodiumAscorbate,
        Self::SodiumErythorbate,
        Self::CitricAcid,
        Self::SodiumCitrate,
        Self::FumaricAcid,
        Self::GluconoDeltaLactone,
        Self::SodiumAcidPyrophosphate,
        Self::Phosphate,
    ];

    /// Its key in recipe documents.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::AscorbicAcid => "ascorbic-acid",
            Self::ErythorbicAcid => "erythorbic-acid",
            Self::SodiumAscorbate => "sodium-ascorbate",
            Self::SodiumErythorbate => "sodium-erythorbate",
            Self::CitricAcid => "citric-acid",
            Self::SodiumCitrate => "sodium-citrate",
            Self::FumaricAcid => "fumaric-acid",
            Self::GluconoDeltaLactone => "glucono-delta-lactone",
            Self::SodiumAcidPyrophosphate => "sodium-acid-pyrophosphate",
            Self::Phosphate => "phosphate",
        }
    }

    /// What a rule takes it together with.
    #[must_use]
    pub const fn group(self) -> AdditiveGroup {
        match self {
            Self::AscorbicAcid | Self::ErythorbicAcid => AdditiveGroup::AscorbicAcids,
            Self::SodiumAscorbate | Self::SodiumErythorbate => AdditiveGroup::Ascorbate,
            Self::CitricAcid | Self::SodiumCitrate => AdditiveGroup::Citrates,
            Self::FumaricAcid => AdditiveGroup::FumaricAcid,
            Self::GluconoDeltaLactone => AdditiveGroup::GluconoDeltaLactone,
            Self::SodiumAcidPyrophosphate => AdditiveGroup::AcidPyrophosphate,
            Self::Phosphate => AdditiveGroup::Phosphates,
        }
    }
}

/// An additive as it goes in.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Addition {
    /// What it is.
    pub additive: Additive,
    /// Its mass, or `None` where it is measured by the spoon.
    pub mass: Option<Weighed>,
    /// Whether an ascorbate or erythorbate holds its water of crystallisation, one molecule
    /// to each of the salt: limits count the anhydrous salt.
    pub hydrated: bool,
    /// Where it stands in the document.
    pub place: Place,
}

impl Addition {
    /// How much of the mass counts: 198.106 / 216.121 of a hydrated ascorbate, all of
    /// everything else.
    fn counted<A: Agent>(&self) -> Level<A, InPremix> {
        let share = MOLAR_MASS_ASCORBATE_ANHYDROUS.value / MOLAR_MASS_ASCORBATE_MONOHYDRATE.value;
        let salt = self.additive.group() == AdditiveGroup::Ascorbate;
        Level::of(if self.hydrated && salt { 1e6 * share } else { 1e6 })
    }

    pub(super) fn source<A: Agent>(&self) -> Source<A> {
        Source { mass: self.mass, strength: Some(self.counted()), place: self.place }
    }
}

impl Batch<'_> {
    fn of_groups(&self, groups: &[AdditiveGroup]) -> impl Iterator<Item = &Addition> + Clone {
        self.additions.iter().filter(move |added| groups.contains(&added.additive.group()))
    }

    /// The level on green weight of all additives of some groups.
    pub(super) fn added<A: Agent>(&self, groups: &[AdditiveGroup]) -> Known<A, OnGreenWeight> {
        self.sum_of(self.of_groups(groups).map(Addition::source), |mass, strength| {
            self.level_of(mass, strength)
        })
    }

    /// The only additive of a group: what is weighed of it, and how much of it counts.
    pub(super) fn only_added<A: Agent>(
        &self,
        groups: &[AdditiveGroup],
    ) -> Option<(Weighed, Level<A, InPremix>)> {
        let mut of_group = self.of_groups(groups);
        let only = of_group.next()?;
        if of_group.next().is_some() { None } else { Some((only.mass?, only.counted())) }
    }
}

/// Nitrite (as weighed) and ascorbates or erythorbates, ingoing on green weight in mg/kg, for the
/// rules of other rooms; `None` where something is missing.
#[must_use]
pub fn ingoing_levels(batch: &Batch<'_>) -> [Option<Range<f64>>; 2] {
    let nothing = Range::exactly(0.0).ok();
    let accelerated = batch.of_groups(&ASCORBICS).next().is_some();
    let unknowable = batch.unknowable().is_some();
    if unknowable {
        let none_of = |any: bool| if any { None } else { nothing };
        return [none_of(!batch.cures.is_empty()), none_of(accelerated)];
    }
    let nitrite = batch.total(Premix::nitrite);
    let ascorbics = batch.added::<Ascorbics>(&ASCORBICS);
    let range = |missing: bool, low: f64, high: f64| {
        if missing { None } else { Some(Range::ordered(low, high)) }
    };
    let (n, a) = (nitrite.range, ascorbics.range);
    [
        range(
            nitrite.missing.is_some() || !nitrite.scaled,
            n.low().mg_per_kg(),
            n.high().mg_per_kg(),
        ),
        range(
            ascorbics.missing.is_some() || !ascorbics.scaled,
            a.low().mg_per_kg(),
            a.high().mg_per_kg(),
        ),
    ]
}

const ASCORBICS: [AdditiveGroup; 2] = [AdditiveGroup::AscorbicAcids, AdditiveGroup::Ascorbate];

/// Checks what goes in beside the curing agents.
pub(super) fn check(
    batch: &Batch<'_>,
    authority: Authority,
    day: Option<Date>,
    report: &mut impl FnMut(Finding),
) {
    let first = |phosphate| {
        let is_one = |added: &&Addition| added.additive == Additive::Phosphate;
        batch.additions.iter().find(|added| is_one(added) == phosphate)
    };
    let here = authority == Authority::UsFsis;
    if let Some(first) = first(false) {
        if here {
            accelerators(batch, first, day, report);
        } else {
            report(Finding::unproven(&ACCELERATOR, ELSEWHERE, first.place));
        }
    }
    if let Some(first) = first(true) {
        if here {
            phosphates(batch, first, day, report);
        } else {
            report(Finding::unproven(&PHOSPHATE, ELSEWHERE, first.place));
        }
    }
}

fn accelerators(
    batch: &Batch<'_>,
    first: &Addition,
    day: Option<Date>,
    report: &mut impl FnMut(Finding),
) {
    if batch.cures.is_empty() {
        let finding = Finding::new(&ACCELERATOR, Verdict::Breaks).missing(NO_CURE);
        report(finding.mend(Mend::LeaveOut).at(first.place));
        return;
    }
    if let Some(missing) = batch.unknowable() {
        report(Finding::unproven(&ACCELERATOR, missing, first.place));
        return;
    }
    ascorbics(batch, day, report);
    citrates(batch, report);
    use AdditiveGroup as Group;
    each::<FumaricAcid>(batch, Group::FumaricAcid, batch.method, day, report);
    each::<GluconoDeltaLactone>(batch, Group::GluconoDeltaLactone, batch.method, day, report);
    each::<AcidPyrophosphate>(batch, Group::AcidPyrophosphate, batch.method, day, report);
}

/// Phosphate needs no cure, and without one no method is said: of a pickle all of it may go in, or
/// none.
fn phosphates(
    batch: &Batch<'_>,
    first: &Addition,
    day: Option<Date>,
    report: &mut impl FnMut(Finding),
) {
    let group = AdditiveGroup::Phosphates;
    if batch.method.is_some() || !batch.cures.is_empty() {
        match batch.unknowable() {
            Some(missing) => report(Finding::unproven(&PHOSPHATE, missing, first.place)),
            None => each::<Phosphates>(batch, group, batch.method, day, report),
        }
        return;
    }
    let all = Batch { pickle: None, ..*batch };
    if let Some(missing) = all.no_level() {
        report(Finding::unproven(&PHOSPHATE, missing, first.place));
        return;
    }
    let method = match (batch.is_pickled(), batch.food.is_ground()) {
        (true, _) => Method::Immersion,
        (false, true) => Method::Ground,
        (false, false) => Method::DryRub,
    };
    each::<Phosphates>(&all, group, Some(method), day, &mut |finding| {
        report(if batch.is_pickled() && finding.verdict == Verdict::Breaks {
            Finding { verdict: Verdict::Unproven, ..finding }.missing(TAKEN_UP)
        } else {
            finding
        });
    });
}

/// The rows for a group and a method, those of a named product before the general ones.
fn rows<'a>(
    batch: &'a Batch<'_>,
    group: AdditiveGroup,
    method: Option<Method>,
    day: Option<Date>,
) -> impl Iterator<Item = &'static Cited<AdditiveLimit>> + Clone + 'a {
    let fits = move |row: &&'static Cited<AdditiveLimit>| {
        let named = row.value.product_key.is_none_or(|key| batch.cured_as.contains(&key));
        let method = method.is_some_and(|method| row.value.methods.contains(&method));
        row.value.group == group && named && method && row.row.in_force.on(day)
    };
    let all = US_ACCELERATORS.iter().chain(&US_PHOSPHATES).filter(fits);
    let own = all.clone().filter(|row| row.value.product_key.is_some());
    let general = all.filter(|row| row.value.product_key.is_none());
    own.chain(general)
}

/// Holds the additives of one group against its row on green weight and its row on
/// finished weight, where it has them.
fn each<A: Agent>(
    batch: &Batch<'_>,
    group: AdditiveGroup,
    method: Option<Method>,
    day: Option<Date>,
    report: &mut impl FnMut(Finding),
) {
    let Some(first) = batch.of_groups(&[group]).next() else { return };
    let rule = if group == AdditiveGroup::Phosphates { &PHOSPHATE } else { &ACCELERATOR };
    let known = batch.added::<A>(&[group]);
    let on = |basis| rows(batch, group, method, day).find(|row| row.value.on == basis);
    let (green, finished) = (on(AdditiveBasis::GreenWeight), on(AdditiveBasis::FinishedWeight));
    if green.is_none() && finished.is_none() {
        let named = US_ACCELERATORS
            .iter()
            .any(|row| row.value.group == group && row.value.product_key.is_some());
        let missing = if named { NAMED_PRODUCT } else { NO_ROW };
        report(Finding::new(rule, Verdict::Unproven).missing(missing).at(first.place));
    }
    if let Some(row) = green {
        report(hold(batch, rule, row, &known, batch.only_added(&[group])));
    }
    let Some(row) = finished else { return };
    report(match batch.on_finished(&known) {
        Some(known) => known.against(rule, row.value.limit.map(Level::of)).row(&row.row),
        None => Finding::new(rule, Verdict::Unproven)
            .row(&row.row)
            .missing(known.missing.unwrap_or(FINISHED))
            .at(first.place),
    });
}

fn hold<A: Agent>(
    batch: &Batch<'_>,
    rule: &'static Rule,
    row: &'static Cited<AdditiveLimit>,
    known: &Known<A, OnGreenWeight>,
    source: Option<(Weighed, Level<A, InPremix>)>,
) -> Finding {
    let limit = row.value.limit.map(Level::of);
    let finding = known.against(rule, limit).row(&row.row);
    let (ceiling, _) = limit.figures();
    match batch.mend_below(ceiling, known, source) {
        Some(mend) if finding.verdict != Verdict::Meets && finding.missing.is_none() => {
            finding.mend(mend)
        }
        _ => finding,
    }
}

/// The acids and their salts, with the citrates that replace part of them. Pumped bacon has
/// an ascorbate rule of its own.
fn ascorbics(batch: &Batch<'_>, day: Option<Date>, report: &mut impl FnMut(Finding)) {
    let bacon = batch.food == Food::Bacon && batch.method == Some(Method::Pumped);
    let present = |group| batch.of_groups(&[group]).next().is_some();
    let row = |group| rows(batch, group, batch.method, day).next();
    let groups = [AdditiveGroup::AscorbicAcids, AdditiveGroup::Ascorbate, AdditiveGroup::Citrates];
    let acids = present(AdditiveGroup::AscorbicAcids);
    let salts = present(AdditiveGroup::Ascorbate) && !bacon;
    match (acids, salts) {
        (false, false) => {}
        (true, false) => {
            let Some(row) = row(AdditiveGroup::AscorbicAcids) else { return };
            let with_citrates = [AdditiveGroup::AscorbicAcids, AdditiveGroup::Citrates];
            let known = batch.added::<AscorbicAcids>(&with_citrates);
            let source = batch.only_added(&with_citrates);
            report(hold(batch, &ACCELERATOR, row, &known, source));
        }
        (false, true) => {
            let Some(row) = row(AdditiveGroup::Ascorbate) else { return };
            let with_citrates = [AdditiveGroup::Ascorbate, AdditiveGroup::Citrates];
            let known = batch.added::<Ascorbate>(&with_citrates);
            let source = batch.only_added(&with_citrates);
            report(hold(batch, &ACCELERATOR, row, &known, source));
        }
        (true, true) => {
            let (Some(acids), Some(salts)) =
                (row(AdditiveGroup::AscorbicAcids), row(AdditiveGroup::Ascorbate))
            else {
                return;
            };
            // Under the lower limit both are met; over the higher one neither is.
            let known = batch.added::<Ascorbics>(&groups);
            let lower = known.against(&ACCELERATOR, acids.value.limit.map(Level::of));
            let higher = known.against(&ACCELERATOR, salts.value.limit.map(Level::of));
            let finding = match (lower.verdict, higher.verdict) {
                (Verdict::Breaks, Verdict::Breaks) => higher,
                (Verdict::Breaks, _) => {
                    Finding { verdict: Verdict::Unproven, ..lower }.missing(UNSUMMED)
                }
                _ => lower,
            };
            report(finding.row(&acids.row).row(&salts.row));
        }
    }
}

/// Citrates replace up to half of an ascorbic: they weigh no more than what is left of it.
fn citrates(batch: &Batch<'_>, report: &mut impl FnMut(Finding)) {
    let Some(first) = batch.of_groups(&[AdditiveGroup::Citrates]).next() else { return };
    let row = &US_CITRIC_REPLACEMENT.row;
    let erythorbic = |added: &Addition| {
        matches!(added.additive, Additive::ErythorbicAcid | Additive::SodiumErythorbate)
    };
    let bird = matches!(batch.food, Food::Poultry | Food::GroundPoultry);
    if bird && batch.additions.iter().any(erythorbic) {
        report(
            Finding::new(&ACCELERATOR, Verdict::Unproven).row(row).missing(NO_ROW).at(first.place),
        );
        return;
    }
    let citrates = batch.added::<Citrates>(&[AdditiveGroup::Citrates]);
    let ascorbics = batch.added::<Ascorbics>(&ASCORBICS);
    if let Some(missing) = citrates.missing.or(ascorbics.missing) {
        report(
            Finding::new(&ACCELERATOR, Verdict::Unproven).row(row).missing(missing).at(first.place),
        );
        return;
    }
    let level = |level: Level<Ascorbics, OnGreenWeight>| Level::of(level.mg_per_kg());
    let (low, high) = (level(ascorbics.range.low()), level(ascorbics.range.high()));
    let least = Limit::AtMost(low).judge(&citrates.range);
    let verdict = match (least, Limit::AtMost(high).judge(&citrates.range)) {
        (Verdict::Meets, _) if citrates.scaled && ascorbics.scaled => Verdict::Meets,
        (_, Verdict::Breaks) => Verdict::Breaks,
        _ => Verdict::Unproven,
    };
    let unscaled = verdict == Verdict::Unproven && !(citrates.scaled && ascorbics.scaled);
    let finding = Finding::new(&ACCELERATOR, verdict)
        .nominal(citrates.nominal)
        .found(&citrates.range)
        .limit(Limit::AtMost(level(ascorbics.nominal)))
        .row(row)
        .at(first.place);
    report(if unscaled { finding.missing(SCALE) } else { finding });
}
