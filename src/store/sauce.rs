use uom::si::f64::{TemperatureInterval, Time};

use super::check::chart_row;
use super::table::{GARLIC_IN_OIL, HOME_REFRIGERATOR};
use crate::cite::{Cited, Row};
use crate::finding::{Finding, Force, Limit, Mend, Missing, Place, Placed, Rule, Verdict};
use crate::range::Range;
use crate::units::Reading;

pub(super) const GARLIC: Rule =
    Rule::new("store/garlic-in-oil", "garlic or herbs in oil, cold and soon used", Force::Safety);
pub(super) const FRESH: Rule = Rule::new(
    "store/fresh-sauce",
    "a sauce of yogurt or cream with raw garlic or herbs, cold and soon used",
    Force::Safety,
);

#[cfg(feature = "recipe")]
pub(crate) const ACIDIFIED: Missing = Missing::new(
    "a row for garlic or herbs that were acidified: the days are those of fresh ones",
    "have the process and the analysis checked by someone licensed to, or keep it no longer than fresh garlic",
);
const COLD: Missing = Missing::new(
    "that it is kept cold, how cold, and for how long",
    "write a step with do = \"refrigerate\", at and for",
);
const BOTULISM: &str = "Under oil there is no air, and in garlic and herbs there are spores. Made acid by a tested procedure it is another food; lemon juice or vinegar are none.";
const ACID: &str = "The acid of yogurt does not kill: in such a sauce Listeria outlived ten weeks in the cold. No published time was found; prepared salads are the nearest.";

/// How long garlic or herbs in oil keep cold, by one document.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct GarlicInOil {
    /// The time, at most.
    pub most: Time,
    /// Whether the document still says so.
    pub current: bool,
}

/// The row of the storage chart that is nearest to a sauce of yogurt or cream with raw garlic or herbs.
pub const FRESH_SAUCE: &str = "salad/mixed";

/// A sauce, as the recipe plans it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Sauce {
    /// Whether there is oil in it.
    pub oil: bool,
    /// Whether there is raw garlic, or are fresh herbs, in it.
    pub garlic_or_herbs: bool,
    /// Whether there is yogurt or cream in it.
    pub dairy: bool,
    /// Whether it is cooked, here or by whoever eats it: that kills Listeria, and no spores.
    pub cooked: bool,
    /// How long it is kept cold, all in all, without the time in a freezer; `None` where that is not said.
    pub kept: Option<Range<Time>>,
    /// The warmest it is kept at; `None` where one of them is not said.
    pub at: Option<Placed<Reading>>,
    /// How far the thermometer may be off.
    pub thermometer: Option<TemperatureInterval>,
    /// Where it stands in the document.
    pub place: Place,
}

/// The strictest current row of garlic in oil.
#[must_use]
pub fn garlic_in_oil() -> Option<&'static Cited<GarlicInOil>> {
    let current = GARLIC_IN_OIL.iter().filter(|row| row.value.current);
    current.reduce(|a, b| if b.value.most < a.value.most { b } else { a })
}

/// Checks a sauce of oil, and one of yogurt or cream that is never cooked. It is asked whoever's rules the recipe is held to.
pub fn check_sauce(sauce: &Sauce, report: &mut impl FnMut(Finding)) {
    if !sauce.garlic_or_herbs {
        return;
    }
    if sauce.oil && !sauce.dairy {
        if let Some(row) = garlic_in_oil() {
            keep(sauce, &GARLIC, row.value.most, &row.row, BOTULISM, report);
        }
    } else if sauce.dairy && !sauce.cooked {
        let salad = chart_row(FRESH_SAUCE, None);
        if let Some((row, most)) = salad.and_then(|row| Some((row, row.value.refrigerate.time()?)))
        {
            keep(sauce, &FRESH, most.high(), &row.row, ACID, report);
        }
    }
}

fn keep(
    sauce: &Sauce,
    rule: &'static Rule,
    most: Time,
    row: &'static Row,
    note: &'static str,
    report: &mut impl FnMut(Finding),
) {
    let limit = Limit::AtMost(most);
    let finding =
        |verdict| Finding::new(rule, verdict).row(row).limit(limit).note(note).at(sauce.place);
    let Some(kept) = sauce.kept else {
        report(finding(Verdict::Unproven).missing(COLD));
        return;
    };
    let found = finding(limit.judge(&kept)).found(&kept);
    report(found.or_mend(Mend::KeepFor(most)));
    if kept.high() <= Time::default() {
        return;
    }
    let Some(at) = sauce.at else {
        report(finding(Verdict::Unproven).missing(COLD));
        return;
    };
    let home = &HOME_REFRIGERATOR;
    report(Finding::at_or_below(rule, home.value, &home.row, at, sauce.thermometer));
}
