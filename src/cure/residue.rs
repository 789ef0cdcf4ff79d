use super::batch::{Batch, Known};
use super::table::US_RESIDUAL;
use crate::cite::Row;
use crate::finding::{Answer, Finding, Force, Limit, Missing, Rule, Verdict};
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
.from(Answer::Outside);
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

    /// Nitrate and nitrite together, counted as sodium nitrite by the nitrogen in them.
    pub(super) fn together(&self) -> Option<Level<SodiumNitrite, Residual>> {
        let nitrate = self.nitrate?;
        let as_nitrite = nitrate.as_nitrogen_in_sodium_nitrite();
        Some(self.sodium_nitrite()? + as_nitrite)
    }
}

/// An analysed level held against a limit of the residue; without one, *unproven*.
pub(super) fn judge<A: Agent>(
    batch: &Batch<'_>,
    limit: Limit<Level<A, Residual>>,
    analysed: Option<Level<A, Residual>>,
    row: &'static Row,
) -> Finding {
    let Some(level) = analysed else {
        return Finding::new(&RESIDUE, Verdict::Unproven)
            .limit(limit)
            .row(row)
            .missing(ANALYSIS)
            .at(batch.place);
    };
    let known = Range::ordered(level, level);
    Finding::new(&RESIDUE, limit.judge(&known)).found(&known).limit(limit).row(row).at(batch.place)
}

/// The residue that the United States allow in what is not bacon.
pub(super) fn united_states(batch: &Batch<'_>, report: &mut impl FnMut(Finding)) {
    let analysed = batch.analysis.sodium_nitrite();
    report(judge(batch, US_RESIDUAL.value, analysed, &US_RESIDUAL.row));
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
