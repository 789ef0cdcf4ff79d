use uom::si::f64::{TemperatureInterval, Time};

use super::table::{
    BRINING_ROOM, BRINING_ROOM_TIME, BRINING_START, HOT_FISH, VARIANCE, WATER_PHASE_SALT,
};
use crate::authority::Authority;
use crate::cite::{Cited, Row};
use crate::finding::{
    Finding, Force, Held, Limit, Mend, Missing, Place, Placed, Rule, Share, THERMOMETER, Verdict,
};
use crate::level::{Level, Residual, SodiumNitrite};
use crate::range::Range;
use crate::units::{PrintedTemperature, Reading};

pub(super) const SALT: Rule =
    Rule::new("smoke/water-phase-salt", "salt in the water of smoked fish", Force::Safety);
pub(super) const HOT: Rule =
    Rule::new("smoke/hot-fish", "fish smoked hot is hot long enough", Force::Safety);
pub(super) const BRINING: Rule = Rule::new("smoke/brining", "fish brined cold", Force::Safety);
pub(super) const VARIED: Rule =
    Rule::new("smoke/variance", "what a shop does only with a variance", Force::Advice);

const BRINE: Missing = Missing::new(
    "the salt in the water of the finished fish, measured in the loin",
    "write analysis = { salt = \"… %\", moisture = \"… %\" }",
);
const INSIDE: Missing =
    Missing::new("how hot the fish gets inside", "write to = \"… °F\" on the step");
const HELD: Missing =
    Missing::new("how long it stays that hot", "write hold = \"… min\" on the step");
const HOW_COLD: Missing = Missing::new(
    "how cold it is brined",
    "write at = \"… °F\" in the cure or, of a brine without nitrite, on the hold",
);
const NITRITE: Missing = Missing::new(
    "the nitrite in the finished fish: what goes in does not show what is left to allow less salt",
    "have the finished fish analysed, and write analysis = { nitrite = \"… mg/kg\", as = \"sodium-salts\" } beside its salt and moisture; or bring in the full salt",
);
const LISTERIA: &str =
    "It is against botulism. Listeria grows in the cold at 6 % and more of salt.";
const ALONE: &str = "Smoke does not preserve. A shop that smokes or cures to preserve, or makes a food keep by acid or additives, needs a variance and a plan beforehand.";

/// How much salt the water of smoked fish must hold.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct WaterPhase {
    /// Whose row it is.
    pub authority: Authority,
    /// Only for fish that was smoked cold, or hot.
    pub cold: Option<bool>,
    /// Whether it is for packs without air, or for those with it.
    pub airless: bool,
    /// Only with this much nitrite in the finished fish, in a fish that may hold as much. The documents
    /// print ppm of nitrite; it is counted as sodium nitrite, as in the law that allows it.
    pub nitrite: Option<Limit<Level<SodiumNitrite, Residual>>>,
    /// The salt, percent of the water phase, at least.
    pub percent: f64,
}

/// How hot fish is smoked, and how long it stays so.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct HotSmoke {
    /// Whose row it is.
    pub authority: Authority,
    /// The temperature in the coldest part, at least.
    pub inside: PrintedTemperature,
    /// The time at it without a break, at least.
    pub time: Time,
}

/// How smoked chub with nitrite is heated and cooled.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct ChubProcess {
    /// The temperature throughout each fish, at least.
    pub inside: PrintedTemperature,
    /// The time at it, at least.
    pub time: Time,
    /// It is at this within so long after the end of smoking.
    pub first: (PrintedTemperature, Time),
    /// And at this, from the end of smoking too.
    pub second: (PrintedTemperature, Time),
}

impl ChubProcess {
    /// Whether a fish that was held at a temperature, and came down to both of the others in these
    /// times after the end of smoking, keeps to it.
    ///
    /// ```
    /// use greenweight::smoke::CHUB;
    /// use greenweight::units::{Reading, Scale, hours, minutes};
    ///
    /// let at = Reading::new(160.0, Scale::Fahrenheit)?;
    /// assert!(CHUB.value.kept(at, minutes(30.0), hours(3.0), hours(12.0)));
    /// // Both times run from the end of smoking: 3 hours and 12 more are too long.
    /// assert!(!CHUB.value.kept(at, minutes(30.0), hours(3.0), hours(15.0)));
    /// # Ok::<(), greenweight::range::OutOfRange>(())
    /// ```
    #[must_use]
    pub fn kept(&self, inside: Reading, held: Time, to_first: Time, to_second: Time) -> bool {
        let hot = Limit::AtLeast(self.inside.on(inside.scale())).met_by(inside);
        let within = |time: Time, most: Time| Limit::AtMost(most).met_by(time);
        let all = [
            hot,
            Limit::AtLeast(self.time).met_by(held),
            within(to_first, self.first.1),
            within(to_second, self.second.1),
        ];
        all.iter().all(|met| *met == Some(true))
    }
}

/// A fish that is smoked, as the recipe plans it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SmokedFish {
    /// Whether it is smoked cold.
    pub cold: bool,
    /// Whether it is packed without air.
    pub airless: bool,
    /// Salt in its water, percent, by analysis.
    pub brine: Option<Range<f64>>,
    /// Nitrite in the finished fish, by analysis.
    pub nitrite: Option<Level<SodiumNitrite, Residual>>,
    /// Whether it is a fish that the rule for less salt with nitrite is open to: salmon,
    /// sablefish or shad, with nitrite. Tuna may not hold as much nitrite, and chub needs the full salt.
    pub less_salt: bool,
    /// The inside temperature that the smoke ends at.
    pub inside: Option<Reading>,
    /// How far the thermometer may be off.
    pub thermometer: Option<TemperatureInterval>,
    /// How long it stays there.
    pub held: Option<Range<Time>>,
    /// Where it stands in the document.
    pub place: Place,
}

/// Whether an authority says how hot a fish that is smoked hot gets inside: such a smoke is its cook.
#[must_use]
pub fn cooks_fish(authority: Authority) -> bool {
    HOT_FISH.iter().any(|row| row.value.authority == authority)
}

/// Checks a smoked fish against the rows of one authority.
pub fn check_fish(fish: &SmokedFish, authority: Authority, report: &mut impl FnMut(Finding)) {
    let rows = |with_nitrite: bool| {
        WATER_PHASE_SALT.iter().filter(move |row| {
            row.value.authority == authority
                && row.value.airless == fish.airless
                && row.value.cold.is_none_or(|cold| cold == fish.cold)
                && row.value.nitrite.is_some() == with_nitrite
        })
    };
    // Of rows that are the same verdict, the one that rests on salt alone is the one to mend by.
    let salts = rows(false).chain(rows(true).filter(|_| fish.less_salt)).map(|row| salt(fish, row));
    salts.reduce(Finding::or_better).into_iter().for_each(&mut *report);
    if !fish.cold {
        let rows = HOT_FISH.iter().filter(|row| row.value.authority == authority);
        rows.map(|row| hot(fish, row)).for_each(report);
    }
}

fn salt(fish: &SmokedFish, row: &'static Cited<WaterPhase>) -> Finding {
    let of = "salt, of the water phase";
    let share = |percent: f64| Share { percent, of };
    let limit = Limit::AtLeast(row.value.percent);
    let finding = |verdict| {
        Finding::new(&SALT, verdict)
            .row(&row.row)
            .limit(limit.map(share))
            .note(LISTERIA)
            .at(fish.place)
    };
    let Some(brine) = fish.brine else {
        return finding(Verdict::Unproven).missing(BRINE);
    };
    // What goes in is not what is left, so nitrite counts by analysis alone.
    let nitrite = match (row.value.nitrite, fish.nitrite) {
        (None, _) => Verdict::Meets,
        (Some(window), Some(known)) => window.judge(&Range::ordered(known, known)),
        (Some(_), None) => Verdict::Unproven,
    };
    let salted = limit.judge(&brine);
    let found = finding(salted.max(nitrite))
        .found(&Range::ordered(share(brine.low()), share(brine.high())));
    match salted {
        Verdict::Meets if nitrite == Verdict::Unproven => found.missing(NITRITE),
        _ => found.or_mend(Mend::BringTo(share(row.value.percent))),
    }
}

fn hot(fish: &SmokedFish, row: &'static Cited<HotSmoke>) -> Finding {
    let finding = |verdict| Finding::new(&HOT, verdict).row(&row.row).at(fish.place);
    let Some(inside) = fish.inside else {
        return finding(Verdict::Unproven).missing(INSIDE);
    };
    let least = row.value.inside.on(inside.scale());
    let limit = Limit::AtLeast(least);
    let known = fish.thermometer.and_then(|off| inside.within(off).ok());
    let range = known.unwrap_or(Range::ordered(inside, inside));
    let warm = limit.judge(&range);
    let found = finding(warm).nominal(inside).found(&range).limit(limit);
    if warm != Verdict::Meets {
        let up = fish.thermometer.and_then(|off| least.within(off).ok());
        return found.mend(Mend::CookTo(up.map_or(least, |range| range.high())));
    }
    if known.is_none() {
        return found.left_open(THERMOMETER);
    }
    let limit = Limit::AtLeast(row.value.time);
    let Some(held) = fish.held else {
        return finding(Verdict::Unproven).limit(limit).missing(HELD);
    };
    let at = |time: Time, at: Reading| Held { time, at };
    let verdict = limit.judge(&held);
    let found = finding(verdict)
        .found(&Range::ordered(at(held.low(), range.low()), at(held.high(), range.low())))
        .limit(limit.map(|time| at(time, least)));
    found.or_mend(Mend::HoldFor(row.value.time))
}

/// How fish is brined: the brine at the start, and the room of a long brining. It is asked whoever's
/// rules the recipe is held to.
pub fn check_brining(
    at: Option<Placed<Reading>>,
    time: Option<Range<Time>>,
    thermometer: Option<TemperatureInterval>,
    place: Place,
) -> Finding {
    // A brining of unknown length may be a long one.
    let short = time
        .is_some_and(|time| Limit::AtMost(BRINING_ROOM_TIME.value).judge(&time) == Verdict::Meets);
    let row: &'static Cited<PrintedTemperature> =
        if short { &BRINING_START } else { &BRINING_ROOM };
    match at {
        Some(at) => Finding::at_or_below(&BRINING, row.value, &row.row, at, thermometer),
        None => Finding::new(&BRINING, Verdict::Unproven).row(&row.row).missing(HOW_COLD).at(place),
    }
}

/// What a shop that smokes or cures to preserve is reminded of; `None` for other authorities.
#[must_use]
pub fn variance(authority: Authority, place: Place) -> Option<Finding> {
    let row: &'static Row = &VARIANCE.first()?.row;
    let reminder = Finding::new(&VARIED, Verdict::Meets).row(row).note(ALONE).at(place);
    authority.is_food_code().then_some(Finding { past_advice: true, ..reminder })
}
