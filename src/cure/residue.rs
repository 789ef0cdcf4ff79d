use super::batch::{Batch, Known};
use super::limit::Agents;
use super::table::US_RESIDUAL;
use crate::cite::Row;
use crate::finding::{Answer, Finding, Force, Limit, Missing, Rule, Verdict};
use crate::food::Food;
use crate::level::{
    Agent, Level, NitrateIon, NitriteIon, OnFinishedWeight, Residual, SodiumNitrate, SodiumNitrite,
};
use crate::range::Range;

pub(super) const RESIDUE: Rule =
    Rule::new("cure/residue", "what an analysis of the product may find", Force::Safety);

pub(super) const ANALYSIS: Missing = Missing::new(
    "an analysis: no recipe proves what is left in the product",
    "have the finished product analysed through its shelf life, and write analysis = { nitrite = \"… mg/kg\", as = \"sodium-salts\" }",
)
.answered_by(Answer::Outside);
const BOTH: Missing = Missing::new(
    "an analysis of both: this row counts nitrite and nitrate together",
    "have the finished product analysed for both, and write analysis = { nitrite = \"… mg/kg\", nitrate = \"… mg/kg\", as = \"sodium-salts\" }",
)
.answered_by(Answer::Outside);
const OF_BACON: Missing = Missing::new(
    "a limit for the residue in bacon: the analysis found more than any other cured meat may hold",
    "do not eat or sell the batch; have the process checked",
);
const BROUGHT_BY: Missing = Missing::new(
    "what brought the nitrite or nitrate that the analysis found: this authority limits what goes in",
    "write what brought it as an ingredient of kind \"curing-premix\", with its strength and weight",
);
pub(super) const ONE_DAY: &str = "The analysis shows one day; the row holds through the whole shelf life, and nitrite turns partly into nitrate.";

/// What an analysis of the finished product found, as ions. What was not analysed for is
/// `None`.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Analysis {
    /// Nitrite.
    pub nitrite: Option<Level<NitriteIon, Residual>>,
    /// Nitrate.
    pub nitrate: Option<Level<NitrateIon, Residual>>,
}

impl Analysis {
    pub(super) fn sodium_nitrite(&self) -> Option<Level<SodiumNitrite, Residual>> {
        self.nitrite.map(Level::<NitriteIon, Residual>::as_sodium_nitrite)
    }

    pub(super) fn sodium_nitrate(&self) -> Option<Level<SodiumNitrate, Residual>> {
        self.nitrate.map(Level::<NitrateIon, Residual>::as_sodium_nitrate)
    }

    /// Nitrate and nitrite together, counted as sodium nitrite by the nitrogen in them. Where one of the
    /// two was not analysed for, the other is a lower end.
    pub(super) fn together(&self) -> Option<Range<Level<SodiumNitrite, Residual>>> {
        let nitrate =
            self.nitrate.map(Level::<NitrateIon, Residual>::as_nitrogen_in_sodium_nitrite);
        let open = Level::of(f64::INFINITY);
        match (self.sodium_nitrite(), nitrate) {
            (Some(nitrite), Some(nitrate)) => Some(exactly(nitrite + nitrate)),
            (Some(only), None) | (None, Some(only)) => Some(Range::ordered(only, open)),
            (None, None) => None,
        }
    }

    /// Whether it is of an agent that a row is about.
    pub(super) fn is_of(&self, agents: Agents) -> bool {
        match agents {
            Agents::Nitrite => self.nitrite.is_some(),
            Agents::Nitrate => self.nitrate.is_some(),
            Agents::Both => self.nitrite.is_some() || self.nitrate.is_some(),
        }
    }

    /// Whether it found any nitrite.
    #[must_use]
    pub fn found_nitrite(&self) -> bool {
        self.nitrite.is_some_and(|level| level > Level::of(0.0))
    }

    /// Whether it found any nitrite or nitrate.
    #[must_use]
    pub fn found_any(&self) -> bool {
        self.found_nitrite() || self.nitrate.is_some_and(|level| level > Level::of(0.0))
    }
}

pub(super) const fn exactly<A: Agent>(level: Level<A, Residual>) -> Range<Level<A, Residual>> {
    Range::ordered(level, level)
}

/// An analysed level held against a limit of the residue; without one, *unproven*.
pub(super) fn judge<A: Agent>(
    batch: &Batch<'_>,
    limit: Limit<Level<A, Residual>>,
    analysed: Option<Range<Level<A, Residual>>>,
    row: &'static Row,
) -> Finding {
    let Some(known) = analysed else {
        return Finding::new(&RESIDUE, Verdict::Unproven)
            .limit(limit)
            .row(row)
            .missing(ANALYSIS)
            .at(batch.place);
    };
    let finding = Finding::new(&RESIDUE, limit.judge(&known))
        .found(&known)
        .limit(limit)
        .row(row)
        .at(batch.place);
    match finding.verdict {
        Verdict::Unproven if known.high().mg_per_kg() == f64::INFINITY => finding.missing(BOTH),
        _ => finding,
    }
}

/// The residue that the United States allow in what is not bacon. Bacon has no such row: more than
/// the others may hold is asked about.
pub(super) fn united_states(batch: &Batch<'_>, report: &mut impl FnMut(Finding)) {
    let analysed = batch.analysis.sodium_nitrite().map(exactly);
    let finding = judge(batch, US_RESIDUAL.value, analysed, &US_RESIDUAL.row);
    if batch.food != Food::Bacon {
        report(finding);
    } else if finding.verdict == Verdict::Breaks {
        report(finding.left_open(OF_BACON));
    }
}

/// What is asked where an analysis found nitrite or nitrate, nothing that was written brings it, and no row
/// limits what may be left of it.
#[must_use]
pub fn unexplained(batch: &Batch<'_>) -> Finding {
    Finding::unproven(&RESIDUE, BROUGHT_BY, batch.place)
}

/// What was added, on the weight of the finished product, held against a limit of what may
/// be in it. Part of it is gone by then: the level found lies between nothing and all of it,
/// so a recipe can prove such a limit and never break it.
pub(super) fn at_most_added<A: Agent>(
    known: Known<A, OnFinishedWeight>,
    rule: &'static Rule,
    limit: Limit<Level<A, OnFinishedWeight>>,
) -> Finding {
    let range = Range::ordered(Level::of(0.0), known.range.high());
    let finding = Known { range, ..known }.against(rule, limit);
    match (finding.verdict, finding.missing) {
        (Verdict::Unproven, None) => finding.missing(ANALYSIS),
        _ => finding,
    }
}
