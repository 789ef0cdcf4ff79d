use uom::si::f64::{Mass, TemperatureInterval, Time};

use super::table::{
    HOME_REFRIGERATOR, THAW_COOK, THAW_COUNTER, THAW_CUTS, THAW_FISH_PACK, THAW_FOOD_CODE_FRIDGE,
    THAW_FOOD_CODE_WATER, THAW_FOOD_CODE_WATER_TIME, THAW_LEAST, THAW_REFREEZE,
    THAW_REFREEZE_MICROWAVE, THAW_REFREEZE_WATER, THAW_SMALL, THAW_TURKEY, THAW_USUAL, THAW_WATER,
};
use crate::authority::Authority;
use crate::cite::{Cited, Row};
use crate::finding::{Finding, Force, Limit, Mend, Missing, Place, Placed, Rule, Verdict};
use crate::food::Food;
use crate::range::Range;
use crate::units::{Reading, days, minutes, pounds};

pub(super) const THAW: Rule = Rule::new("store/thaw", "thawed in a safe way", Force::Safety);
pub(super) const THAW_TIME: Rule =
    Rule::new("store/thaw-time", "time enough to thaw through", Force::Advice);
pub(super) const REFREEZE: Rule =
    Rule::new("store/refreeze", "frozen again only after a safe thaw", Force::Safety);
pub(super) const AFTER_THAW: Rule =
    Rule::new("store/after-thaw", "used soon after it is thawed", Force::Safety);
pub(super) const FISH_PACK: Rule =
    Rule::new("store/fish-pack", "fish out of its airless pack before it thaws", Force::Safety);

const HOW: Missing = Missing::new(
    "how it is thawed",
    "write how = \"refrigerator\", \"cold-water\", \"running-water\", \"microwave\" or \"cooking\" on the step",
);
const COLDLY: Missing = Missing::new(
    "a thaw that keeps its surface cold",
    "thaw it in the refrigerator, in cold water or in the microwave, or cook it frozen",
);
const HOW_COLD: Missing = Missing::new("how cold it is", "write at = \"… °F\" on the step");
const HOW_LONG: Missing = Missing::new("how long it takes", "write for = \"… h\" on the step");
const COOK_NEXT: Missing = Missing::new(
    "that it is cooked at once: thawed in any way but in a refrigerator, parts of it are warm",
    "let a step with an inside temperature follow",
);
const THAWED_COLD: Missing = Missing::new(
    "a refrigerator that is cold enough while it thaws, by the finding on the thaw",
    "thaw it as that finding asks, or cook it before it is frozen again",
);
const HOW_LONG_KEPT: Missing = Missing::new(
    "how long it is kept after it has thawed",
    "write for = \"… h\" on every step until it is cooked",
);
const PIECE: Missing = Missing::new(
    "that it is not left thawed for so long",
    "thaw it later, and write the weight of a large piece as piece",
);
const THAWED: &str =
    "The days count from when it has thawed, which a piece may have before its step is over.";
const STANDING: Missing = Missing::new(
    "a way to thaw that a shop may use: water that stands is none",
    "thaw it in the refrigerator, or under running water that carries off what comes loose",
);
const HOW_WARM: Missing = Missing::new(
    "that the water is cold",
    "use cold tap water; how cold is printed for shops alone, and stands in for homes",
);
const THAWED_LONG: Missing = Missing::new(
    "that it is cooked as soon as it is thawed: no bird takes so long in cold water",
    "thaw it in the refrigerator, or take it out of the water when it is thawed and cook it",
);
const OPEN: Missing = Missing::new(
    "that the pack is opened before it thaws",
    "write a step with do = \"open\" before it",
);

/// How food is thawed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize), serde(rename_all = "kebab-case"))]
pub enum Thawing {
    /// In a refrigerator.
    Refrigerator,
    /// In cold water that is changed every 30 minutes, in a tight bag.
    ColdWater,
    /// Under running water.
    RunningWater,
    /// In a microwave oven.
    Microwave,
    /// As a part of cooking.
    Cooking,
    /// In a warm room.
    Room,
}

impl Thawing {
    /// Every way.
    pub const ALL: [Self; 6] = [
        Self::Refrigerator,
        Self::ColdWater,
        Self::RunningWater,
        Self::Microwave,
        Self::Cooking,
        Self::Room,
    ];

    /// Its key in a document.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Refrigerator => "refrigerator",
            Self::ColdWater => "cold-water",
            Self::RunningWater => "running-water",
            Self::Microwave => "microwave",
            Self::Cooking => "cooking",
            Self::Room => "room",
        }
    }
}

/// How long a whole turkey thaws.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct ThawBird {
    /// Its mass, from and to.
    pub mass: (Mass, Mass),
    /// In a refrigerator.
    pub refrigerator: (Time, Time),
    /// In cold water.
    pub cold_water: (Time, Time),
}

/// What is done next with food that was thawed.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Afterwards {
    /// Whether the next step cooks it.
    pub cooked_next: bool,
    /// How long it is kept cold before it is cooked, which may be no time; `None` where that is not said.
    pub kept: Option<Range<Time>>,
    /// Whether it is frozen again before it is cooked, and where that is written.
    pub frozen_again: Option<Place>,
}

/// How a food is thawed, as the recipe plans it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Thaw {
    /// The food.
    pub food: Food,
    /// Whether it is raw.
    pub raw: bool,
    /// How.
    pub how: Option<Thawing>,
    /// The temperature around it.
    pub at: Option<Placed<Reading>>,
    /// How far the thermometer may be off.
    pub thermometer: Option<TemperatureInterval>,
    /// For how long.
    pub time: Option<Range<Time>>,
    /// The piece that is thawed.
    pub piece: Option<Mass>,
    /// Whether it thaws in a pack without air.
    pub airless: bool,
    /// What is done next.
    pub afterwards: Afterwards,
    /// Where it stands in the document.
    pub place: Place,
}

/// How long a mass takes to thaw: at the least, and as it usually does. `None` for the ways that have no
/// published time. Colder refrigerators take longer.
///
/// ```
/// use greenweight::{store::{Thawing, thaw_time}, units::pounds};
///
/// let water = thaw_time(Thawing::ColdWater, pounds(12.0)).ok_or("no time")?;
/// assert!((water.high().value / 3600.0 - 6.0).abs() < 1e-9);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[must_use]
pub fn thaw_time(how: Thawing, mass: Mass) -> Option<Range<Time>> {
    let pounds = (mass / pounds(1.0)).value;
    match how {
        Thawing::Refrigerator => {
            Some(Range::ordered(days(pounds / THAW_LEAST.value), days(pounds / THAW_USUAL.value)))
        }
        Thawing::ColdWater => Range::exactly(minutes(pounds * THAW_WATER.value)).ok(),
        _ => None,
    }
}

/// The row of a whole turkey of a mass; of two that meet at it the heavier one.
#[must_use]
pub fn thaw_turkey(mass: Mass) -> Option<&'static Cited<ThawBird>> {
    let inside = |row: &&Cited<ThawBird>| {
        let (from, to) = row.value.mass;
        Limit::Between(from, to).met_by(mass) == Some(true)
    };
    THAW_TURKEY.iter().rfind(inside)
}

/// Whether an authority says how food is thawed.
#[must_use]
pub fn says_thawing(authority: Authority) -> bool {
    authority == Authority::UsConsumer || authority.is_food_code()
}

/// Checks a thaw against the rules of one authority.
pub fn check_thaw(thaw: &Thaw, authority: Authority, report: &mut impl FnMut(Finding)) {
    let shop = authority.is_food_code();
    if !says_thawing(authority) {
        return;
    }
    if thaw.food == Food::Fish && thaw.airless {
        report(
            Finding::new(&FISH_PACK, Verdict::Unproven)
                .row(&THAW_FISH_PACK.row)
                .missing(OPEN)
                .at(thaw.place),
        );
    }
    let mut worst = Verdict::Meets;
    thawed_safely(thaw, shop, &mut |finding| {
        worst = worst.max(finding.verdict);
        report(finding);
    });
    if !shop && thaw.raw {
        frozen_again(thaw, worst, report);
        soon_used(thaw, report);
    }
    if !shop {
        long_enough(thaw, report);
    }
}

fn thawed_safely(thaw: &Thaw, shop: bool, report: &mut impl FnMut(Finding)) {
    let finding = |verdict, row: &'static Row| Finding::new(&THAW, verdict).row(row).at(thaw.place);
    match thaw.how {
        None => report(finding(Verdict::Unproven, &THAW_COUNTER.row).missing(HOW)),
        Some(Thawing::Room) => report(finding(Verdict::Breaks, &THAW_COUNTER.row).missing(COLDLY)),
        Some(Thawing::Refrigerator) => {
            let row = if shop { &THAW_FOOD_CODE_FRIDGE } else { &HOME_REFRIGERATOR };
            report(match thaw.at {
                Some(at) => Finding::at_or_below(&THAW, row.value, &row.row, at, thaw.thermometer),
                None => finding(Verdict::Unproven, &row.row).missing(HOW_COLD),
            });
        }
        Some(Thawing::RunningWater | Thawing::ColdWater) if shop => in_water(thaw, report),
        Some(Thawing::Cooking) => at_once(thaw, &THAW_COOK.row, report),
        Some(Thawing::Microwave) => at_once(thaw, &THAW_REFREEZE_MICROWAVE.row, report),
        Some(Thawing::ColdWater | Thawing::RunningWater) => {
            at_once(thaw, &THAW_REFREEZE_WATER.row, report);
            at_home_in_water(thaw, report);
        }
    }
}

/// What has warm parts when it has thawed is cooked next, unless it is cooked already.
fn at_once(thaw: &Thaw, row: &'static Row, report: &mut impl FnMut(Finding)) {
    let next = thaw.afterwards.cooked_next || !thaw.raw;
    let finding = |verdict| Finding::new(&THAW, verdict).row(row).at(thaw.place);
    report(if next {
        finding(Verdict::Meets)
    } else {
        finding(Verdict::Unproven).missing(COOK_NEXT)
    });
}

/// How cold the water is, in a home: "cold tap water" is all that is printed for them.
fn at_home_in_water(thaw: &Thaw, report: &mut impl FnMut(Finding)) {
    let row = &THAW_FOOD_CODE_WATER;
    // Longer than the heaviest bird takes is a stay in water, and no thaw.
    if let (Some(heaviest), Some(time)) = (THAW_TURKEY.last(), thaw.time) {
        let limit = Limit::AtMost(heaviest.value.cold_water.1);
        let finding = Finding::new(&THAW, Verdict::Unproven).limit(limit).found(&time);
        if limit.judge(&time) != Verdict::Meets {
            report(finding.row(&heaviest.row).missing(THAWED_LONG).at(thaw.place));
        }
    }
    if let Some(at) = thaw.at {
        let finding = Finding::at_or_below(&THAW, row.value, &row.row, at, thaw.thermometer);
        report(match finding.verdict {
            Verdict::Breaks => Finding { verdict: Verdict::Unproven, ..finding }.missing(HOW_WARM),
            _ => finding,
        });
    } else if thaw.how == Some(Thawing::RunningWater) {
        let finding = Finding::new(&THAW, Verdict::Unproven).row(&row.row);
        report(finding.missing(HOW_COLD).at(thaw.place));
    }
}

/// In water, in a shop: it runs.
fn in_water(thaw: &Thaw, report: &mut impl FnMut(Finding)) {
    let row = &THAW_FOOD_CODE_WATER;
    let finding = |verdict| Finding::new(&THAW, verdict).row(&row.row).at(thaw.place);
    let cool = match thaw.at {
        Some(at) => Finding::at_or_below(&THAW, row.value, &row.row, at, thaw.thermometer),
        None => finding(Verdict::Unproven).missing(HOW_COLD),
    };
    let stands = thaw.how == Some(Thawing::ColdWater) && cool.verdict == Verdict::Meets;
    report(if stands { cool.left_open(STANDING) } else { cool });
    let cold = |at: &Placed<Reading>| {
        let limit = THAW_FOOD_CODE_FRIDGE.value.on(at.value.scale());
        Limit::AtMost(limit).met_by(at.value) == Some(true)
    };
    if thaw.at.as_ref().is_some_and(cold) {
        return;
    }
    // What is ready to eat never gets warmer than the refrigerator; raw food does for four hours.
    let limit = Limit::AtMost(THAW_FOOD_CODE_WATER_TIME.value);
    report(match (thaw.raw, thaw.time) {
        (false, _) => finding(Verdict::Breaks).note("What is ready to eat is never above 41 °F."),
        (true, None) => finding(Verdict::Unproven).limit(limit).missing(HOW_LONG),
        (true, Some(time)) => {
            let found = finding(limit.judge(&time)).limit(limit).found(&time);
            match found.verdict {
                Verdict::Meets => found.note(
                    "The four hours count from 41 °F, with the time until it is cooked or cold again.",
                ),
                _ => found.mend(Mend::KeepFor(THAW_FOOD_CODE_WATER_TIME.value)),
            }
        }
    });
}

/// Frozen again while it is raw, in a home: only from a refrigerator that was cold.
fn frozen_again(thaw: &Thaw, thawed: Verdict, report: &mut impl FnMut(Finding)) {
    let Some(place) = thaw.afterwards.frozen_again else { return };
    let finding = |verdict, row: &'static Row| Finding::new(&REFREEZE, verdict).row(row).at(place);
    report(match thaw.how {
        None => finding(Verdict::Unproven, &THAW_REFREEZE_WATER.row).missing(HOW),
        Some(Thawing::Refrigerator) => {
            let found = finding(thawed, &THAW_REFREEZE.row);
            if thawed == Verdict::Meets { found } else { found.missing(THAWED_COLD) }
        }
        Some(Thawing::Microwave) => finding(Verdict::Breaks, &THAW_REFREEZE_MICROWAVE.row),
        Some(_) => finding(Verdict::Breaks, &THAW_REFREEZE_WATER.row),
    });
}

/// Kept after it thawed raw in a refrigerator. After any other thaw it is cooked at once, which is asked above.
fn soon_used(thaw: &Thaw, report: &mut impl FnMut(Finding)) {
    if thaw.how != Some(Thawing::Refrigerator) {
        return;
    }
    let small = thaw.food.is_ground() || matches!(thaw.food, Food::Poultry | Food::Fish);
    let row = if small { &THAW_SMALL } else { &THAW_CUTS };
    let limit = Limit::AtMost(row.value);
    let finding =
        |verdict| Finding::new(&AFTER_THAW, verdict).row(&row.row).limit(limit).at(thaw.place);
    let none = Time::default();
    let until_thawed = Range::ordered(none, none);
    let thawed = thaw.time.map_or(until_thawed, |time| left_thawed(time, thaw.piece));
    if thawed.high() <= none && thaw.afterwards.kept.is_some_and(|kept| kept.high() <= none) {
        return;
    }
    let all = thaw.afterwards.kept.and_then(|kept| kept.plus(thawed).ok());
    let Some(all) = all else {
        report(finding(Verdict::Unproven).missing(HOW_LONG_KEPT));
        return;
    };
    let found = finding(limit.judge(&all)).found(&all);
    let most = row.value - thawed.high();
    report(match found.verdict {
        Verdict::Meets => found,
        _ if thawed.high() <= none => found.mend(Mend::KeepFor(row.value)),
        _ if most > none => found.mend(Mend::KeepFor(most)).note(THAWED),
        _ => found.missing(PIECE).note(THAWED),
    });
}

/// How long a piece lies thawed before its thaw is over. One of unknown weight may take as short, or as long,
/// as any whose time is printed.
pub(crate) fn left_thawed(time: Range<Time>, piece: Option<Mass>) -> Range<Time> {
    let none = Time::default();
    let printed = THAW_TURKEY.iter().map(|row| row.value.refrigerator);
    let (least, longest) =
        printed.fold((time.high(), none), |all, row| (all.0.min(row.0), all.1.max(row.1)));
    let usual = piece.map(|piece| {
        let usual = thaw_time(Thawing::Refrigerator, piece).map_or(none, |takes| takes.high());
        let turkey = thaw_turkey(piece).map_or(none, |row| row.value.refrigerator.1);
        usual.max(turkey).max(least)
    });
    let beyond = |time: Time, takes: Option<Time>, otherwise: Time| {
        (time - takes.unwrap_or(otherwise)).max(none)
    };
    Range::ordered(beyond(time.low(), usual, longest), beyond(time.high(), usual, least))
}

/// Whether the time is as long as such a piece takes: advice.
fn long_enough(thaw: &Thaw, report: &mut impl FnMut(Finding)) {
    let (Some(how), Some(piece), Some(time)) = (thaw.how, thaw.piece, thaw.time) else { return };
    let Some(takes) = thaw_time(how, piece) else { return };
    let limit = Limit::AtLeast(takes.low());
    let row = if how == Thawing::ColdWater { &THAW_WATER } else { &THAW_LEAST };
    let enough = limit.met_by(time.low()) == Some(true);
    let found = Finding::new(&THAW_TIME, Verdict::Meets)
        .row(&row.row)
        .limit(limit)
        .found(&time)
        .at(thaw.place);
    report(Finding { past_advice: !enough, ..found });
}
