use core::cmp::Ordering;

use uom::si::f64::{Mass, TemperatureInterval, Time};

use super::ComeUpLimit;
use super::check::{INSIDE, above};
use super::humidity::{Moisture, humidity_options, large_piece};
use super::lethality::{Lethality, Resistance};
use super::record::{ComeUp, Product, Verdicts};
use super::table::{
    FOOD_CODE_2022_OTHER_FIRST_HEATING, FOOD_CODE_2022_OTHER_HOT_HOLDING,
    FOOD_CODE_2022_OTHER_HOT_HOLDING_ROASTS, FOOD_CODE_2022_OTHER_REHEAT_WITHIN, FSIS_COME_UP,
    FSIS_HUMIDITY, FSIS_LARGE_PIECE,
};
use crate::finding::{
    Finding, Force, Held, Limit, Logs, Mend, Missing, Place, Rule, THERMOMETER, Verdict,
};
use crate::food::Food;
use crate::range::Range;
use crate::trace::{Point, Segment, Track, longest_gap, whole_seconds};
use crate::units::{PrintedTemperature, Reading, Scale, seconds};

pub(super) const COME_UP: Rule =
    Rule::new("cook/come-up", "not too long between 50 and 130 °F on the way up", Force::Safety);
pub(super) const HUMIDITY: Rule =
    Rule::new("cook/humidity", "a surface that stays moist while it cooks", Force::Safety);
pub(super) const RECORD: Rule =
    Rule::new("cook/record", "what the record shows of the cook", Force::Safety);
pub(super) const LETHALITY: Rule =
    Rule::new("cook/lethality", "lethality of the record, for information", Force::Advice);
pub(super) const REHEAT: Rule =
    Rule::new("cook/reheat-time", "reheated within its time", Force::Safety);
pub(super) const PARTIAL: Rule =
    Rule::new("cook/partial", "a cook that is broken off and finished later", Force::Safety);
pub(super) const HOT: Rule =
    Rule::new("cook/hot-holding", "held hot after the cook", Force::Safety);

const CAME_UP: Missing = Missing::new(
    "how long the middle is between 50 and 130 °F on the way up",
    "write come_up = \"… h\" on the step, or the time of every stage, or a record",
);
const CONTRADICTED: Missing = Missing::new(
    "a come-up time that counts every stage: those in air between 50 and 130 °F alone take longer",
    "write come_up with all of their time in it, a cold smoke's too, and that of the cook after them",
);
const MOISTURE: Missing = Missing::new(
    "what keeps the surface moist while it cooks",
    "write moisture = \"casing\", \"sealed-bag\", \"liquid\", \"direct-heat\", \"steam\" or \"sealed-oven\", or humidity = \"… %\", on every stage",
);
const MIXED: Missing = Missing::new(
    "what is asked of a cook that needs no humidity in one stage and does in another",
    "where it stays in its casing, bag or liquid, write so on every stage; otherwise keep the other stages moist for long enough by themselves",
);
const STAGES: Missing = Missing::new(
    "how long every stage takes",
    "write for = \"…\" on every step that smokes or cooks",
);
const REHEATED: Missing =
    Missing::new("how long the reheating takes", "write for = \"…\" on every step that heats");
const PROCEDURE: Missing = Missing::new(
    "a procedure, approved beforehand, and a record of the cooling between",
    "cook it in one go, or have the two cooks approved by your local authority",
);
const UNREAD: Missing = Missing::new(
    "the readings of the record, whose file was not read",
    "check the document with the command, which reads it, or give the readings to the component",
);
const UNSAID: Missing = Missing::new(
    "how warm every stage before the end of the cook is, and how long it takes",
    "write at and for on every step before the cook ends",
);
const TIMED: Missing = Missing::new(
    "a written procedure of time in place of temperature, and that it is served or thrown away in time",
    "what cannot be kept so hot is cooled at once",
);
const WHOLE: Missing = Missing::new(
    "whether the first cook is a whole one, by its inside temperature and the time it is held there",
    "write to and hold on the first cook as on the last, the animals and the tolerance of the thermometer, or cook it in one go",
);
const READINGS: Missing = Missing::new(
    "the readings that it is reckoned from",
    "write them as [[component.record]], or name their file in recorded_in",
);

const TOO_LONG: &str =
    "It stands for longer than food may be held by time alone. What has stood so is thrown away.";
const LONG_COOKS: &str = "For bone-in hams and briskets the guideline knows no proof of this time; it names the toxin that survives as the risk.";
const STAGES_COUNT: &str = "Stages before the end of the cook count, a cold smoke too: the food is no warmer than its air.";
const FERMENTED: &str =
    "The fermentation before it is not in this time: its degree-hours are judged apart.";
const DRIED: &str = "A surface that was salted, smoked or dried before the cook resists heat, and this rule does not make up for it.";
const INFORMS: &str = "It informs: it stands in for no row that was not met. D and z are those the recipe gives; none hold on a surface that dried.";
const SPARSE: &str = "Of the lower end of every stretch between two readings less is left: the readings are far apart. It informs, and stands in for no row.";
const ANY_ROW: &str =
    "Any row of one table that the coldest probe held counts, whatever was planned.";

/// A stage on the way to the end of a cook: what is around the food, and for how long.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Stage {
    /// Whether it is part of the cook: a cold smoke is not, and warms the food all the same.
    pub cooks: bool,
    /// The temperature around the food.
    pub at: Option<Reading>,
    /// How long it takes.
    pub time: Option<Range<Time>>,
    /// What keeps the surface moist.
    pub moisture: Option<Moisture>,
    /// The relative humidity in percent.
    pub humidity: Option<f64>,
}

/// The lethality that a recipe aims at: an organism of its choice.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Aim {
    /// D and z.
    pub resistance: Resistance,
    /// Only what is at or above this counts: the lowest temperature it was validated at.
    pub counted_from: Reading,
    /// The reduction aimed at, in powers of ten.
    pub logs: f64,
    /// Where it stands in the document.
    pub place: Place,
}

pub(super) const SLOW: Rule =
    Rule::new("cook/slow-stages", "warmed in time on the way to the cook", Force::Safety);
const SLOWLY: Missing = Missing::new(
    "what keeps it safe in hours of warm air: its cure, its salt, its acid",
    "shorten the stages between 50 and 130 °F, or have the process checked by someone licensed to",
);

/// The way of a cook to its end.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Process<'a> {
    /// Its stages, in order.
    pub stages: &'a [Stage],
    /// The inside temperature it ends at.
    pub endpoint: Option<Reading>,
    /// The mass of the smallest piece.
    pub piece: Option<Mass>,
    /// How long the middle is between 50 and 130 °F on the way up, where that is stated.
    pub come_up: Option<Range<Time>>,
    /// Whether it was fermented before.
    pub fermented: bool,
    /// Whether it is chilled between its stages, so that a record may be of the last of them alone.
    pub chilled_between: bool,
    /// Readings of the coldest probe.
    pub record: &'a [Point],
    /// The longest time between two of them for which they [vouch](crate::trace::vouched).
    pub vouched: Time,
    /// How far the probe may be off.
    pub thermometer: Option<TemperatureInterval>,
    /// Where it stands in the document.
    pub place: Place,
}

const BAND: &ComeUpLimit = &FSIS_COME_UP.value;

/// From this on, in degrees Fahrenheit, air is that of an oven. No document was read for it: a screen, common practice
/// of hot smoking.
const AIR_OF_AN_OVEN: f64 = 225.0;

fn fahrenheit(at: Reading) -> f64 {
    at.on(Scale::Fahrenheit).value()
}

/// Whether a stage does not say what keeps the surface moist.
fn unsaid(stage: &Stage) -> bool {
    stage.humidity.is_none() && matches!(stage.moisture, None | Some(Moisture::HumidAir))
}

/// All of some times together; `None` of none, and where one is not known.
fn sum(times: impl Iterator<Item = Option<Range<Time>>>) -> Option<Range<Time>> {
    let add =
        |a: Range<Time>, b: Range<Time>| Range::ordered(a.low() + b.low(), a.high() + b.high());
    times.reduce(|a, b| Some(add(a?, b?)))?
}

/// So long, and nobody knows how much longer.
fn at_least(time: Range<Time>) -> Range<Time> {
    Range::ordered(time.low(), seconds(f64::INFINITY))
}

/// The longer of two times.
fn longer(a: Range<Time>, b: Range<Time>) -> Range<Time> {
    Range::ordered(a.low().max(b.low()), a.high().max(b.high()))
}

impl Process<'_> {
    /// A cook of which only its place in a document is known.
    #[must_use]
    pub fn unknown(place: Place) -> Self {
        Self {
            stages: &[],
            endpoint: None,
            piece: None,
            come_up: None,
            fermented: false,
            chilled_between: false,
            record: &[],
            vouched: seconds(0.0),
            thermometer: None,
            place,
        }
    }

    /// The stages of the cook itself.
    fn cook(&self) -> impl Iterator<Item = &Stage> {
        self.stages.iter().filter(|stage| stage.cooks)
    }

    /// The time of the cook itself.
    fn total(&self) -> Option<Range<Time>> {
        sum(self.cook().map(|stage| stage.time))
    }

    /// How long it takes from the cold to the end, whatever is around the food.
    fn on_the_way(&self) -> Option<Range<Time>> {
        let cold = |stage: &Stage| stage.at.is_some_and(|at| fahrenheit(at) <= BAND.low_fahrenheit);
        sum(self.stages.iter().filter(|stage| !cold(stage)).map(|stage| stage.time))
    }

    /// The stages that are in air between 50 and 130 °F, or may be.
    fn slow(&self) -> impl Iterator<Item = &Stage> {
        let hot = |end: Reading| fahrenheit(end) >= BAND.high_fahrenheit;
        // Air is at least as hot as what it heats.
        let ends_hot = self.endpoint.is_some_and(hot);
        let last = self.stages.len().saturating_sub(1);
        let slow = move |(n, stage): &(usize, &Stage)| match stage.at.map(fahrenheit) {
            Some(f) => f > BAND.low_fahrenheit && f < BAND.high_fahrenheit,
            None => *n < last || !ends_hot,
        };
        self.stages.iter().enumerate().filter(slow).map(|(_, stage)| stage)
    }

    /// How long the air is between 50 and 130 °F: so long, at the least, the food is too. Without an
    /// end where a stage does not say how long; `None` where there is no such stage.
    fn in_warm_air(&self) -> Option<Range<Time>> {
        let open = Range::ordered(seconds(0.0), seconds(f64::INFINITY));
        let least = |stage: &Stage| {
            let time = stage.time.unwrap_or(open);
            if stage.at.is_some() { time } else { Range::ordered(seconds(0.0), time.high()) }
        };
        sum(self.slow().map(|stage| Some(least(stage))))
    }

    /// All of its time in air that is no oven's, where that is more than six hours: the middle may be between 50 and
    /// 130 °F for as long. A stage that does not say how warm it is counts too.
    fn perhaps_slow(&self) -> Option<Range<Time>> {
        let cool = |stage: &&Stage| {
            stage.at.is_none_or(|at| {
                let at = fahrenheit(at);
                at > BAND.low_fahrenheit && at < AIR_OF_AN_OVEN
            })
        };
        let none = Range::ordered(seconds(0.0), seconds(0.0));
        let times = self.stages.iter().filter(cool).map(|stage| stage.time.unwrap_or(none));
        let time = sum(times.map(Some))?;
        let long = Limit::AtMost(BAND.most).judge(&time) != Verdict::Meets;
        long.then(|| Range::ordered(seconds(0.0), time.high()))
    }

    /// Stages in air between 50 and 130 °F before the end of the cook. Over six hours together it is for an
    /// expert: a screen, not a limit that is broken. A longer cook in hotter air says how long its come-up takes.
    #[must_use]
    pub fn check_slow(&self) -> Option<Finding> {
        let limit = Limit::AtMost(BAND.most);
        // A record that shows the way up counts like a time that somebody states, where that is longer.
        let came_up = self.came_up(limit);
        let longest = |time: Option<Range<Time>>| time.map_or(seconds(0.0), |time| time.high());
        let (air, perhaps) = (self.in_warm_air(), self.perhaps_slow());
        let other = came_up.or(perhaps);
        let time = if longest(other) > longest(air) { other } else { air.or(other) }?;
        let unsaid = came_up.is_none() && longest(perhaps) > longest(air);
        let finding = |verdict| {
            Finding::new(&SLOW, verdict).limit(limit).row(&FSIS_COME_UP.row).at(self.place)
        };
        let known = |time: Range<Time>| time.high().is_finite();
        let said = self.slow().all(|stage| stage.at.is_some() && stage.time.is_some_and(known));
        Some(match limit.judge(&time) {
            Verdict::Meets => finding(Verdict::Meets).found(&time),
            Verdict::Unproven if !said => finding(Verdict::Unproven).missing(UNSAID),
            Verdict::Unproven if unsaid => finding(Verdict::Unproven).found(&time).missing(CAME_UP),
            _ => finding(Verdict::Unproven).found(&time).missing(SLOWLY),
        })
    }

    /// A finding on a record proves nothing by a probe of unknown error.
    fn doubted(&self, finding: Finding) -> Finding {
        if finding.verdict == Verdict::Meets && self.thermometer.is_none() {
            finding.left_open(THERMOMETER)
        } else {
            finding
        }
    }

    /// The time between the temperatures of the come-up rule by the record, from the least to
    /// the most that the error of the probe allows.
    fn recorded_come_up(&self) -> Option<Range<Time>> {
        let off = self.thermometer.unwrap_or_default();
        let mut track = Track::new();
        let mut least = ComeUp::shortest(off, self.vouched);
        let mut most = ComeUp::within(off, self.vouched);
        for point in self.record {
            if let Some(segment) = track.next(*point).ok()? {
                least.add(&segment);
                most.add(&segment);
            }
        }
        track.last()?;
        // It may have come up, or not: then nothing is known of how little it took.
        let perhaps = most.came_up() && !least.came_up();
        let shortest = if perhaps { seconds(0.0) } else { least.time() };
        Range::new(shortest, most.time()).ok().as_ref().map(whole_seconds)
    }

    /// The longest gap of the record before the food came up for the last time, or of all of it where it
    /// never did.
    fn gap_on_the_way(&self) -> Option<Range<Time>> {
        let up = |point: &&Point| {
            self.at_warmest(**point).is_some_and(|at| fahrenheit(at) >= BAND.high_fahrenheit)
        };
        let last = self.record.iter().rfind(up).or(self.record.last())?;
        longest_gap(self.record, self.vouched, |gap| gap.to().seconds() <= last.seconds())
    }

    /// The warmest that a point of the record may be, by how far the probe may be off.
    fn at_warmest(&self, point: Point) -> Option<Reading> {
        point.more(self.thermometer.unwrap_or_default()).ok()?.reading().ok()
    }

    /// Whether the record begins before the food is at 50 °F, and so shows all of its way up.
    fn recorded_from_the_cold(&self) -> bool {
        let first = self.record.first().and_then(|point| self.at_warmest(*point));
        !self.chilled_between && first.is_some_and(|at| fahrenheit(at) <= BAND.low_fahrenheit)
    }

    /// The come-up time as it is stated and recorded: the longer of both. A record that begins warm
    /// does not show how long the food took before.
    fn came_up(&self, limit: Limit<Time>) -> Option<Range<Time>> {
        match (self.come_up, self.recorded_come_up()) {
            (Some(stated), Some(seen)) => Some(longer(stated, seen)),
            (None, Some(seen)) => {
                let tells = self.recorded_from_the_cold() || limit.judge(&seen) == Verdict::Breaks;
                tells.then_some(seen)
            }
            (stated, None) => stated,
        }
    }

    /// Whether the food comes up from 50 to 130 °F in time.
    pub(super) fn check_come_up(&self, food: Food) -> Finding {
        let limit = Limit::AtMost(BAND.most);
        let finding = |verdict| {
            let finding = Finding::new(&COME_UP, verdict).limit(limit).row(&FSIS_COME_UP.row);
            let finding = finding.at(self.place);
            if self.fermented { finding.note(FERMENTED) } else { finding }
        };
        let Some(time) = self.came_up(limit) else {
            // A cook that is over in time came up in time.
            return match self.on_the_way() {
                Some(total) if limit.judge(&total) == Verdict::Meets => {
                    finding(Verdict::Meets).found(&total)
                }
                _ => finding(Verdict::Unproven).missing(CAME_UP),
            };
        };
        let slow = self.in_warm_air().filter(|slow| slow.low() > time.low());
        // Shorter than its stages, it leaves some of them out, and says nothing of the rest.
        // Hours of a stage that does not say how warm it is may all be slow.
        let long = |time: Range<Time>| limit.judge(&time) != Verdict::Meets;
        let unsaid = self.cook().any(|stage| stage.at.is_none() && stage.time.is_some_and(long));
        let contradicted = slow.is_some_and(|slow| slow.low() > time.high());
        let time = slow.map_or(time, |slow| longer(time, slow));
        // A cold smoke of unknown length may be left out of what is stated.
        let untold = !self.recorded_from_the_cold()
            && self.slow().any(|stage| !stage.cooks && stage.time.is_none());
        let time = if contradicted || untold || unsaid { at_least(time) } else { time };
        let verdict = limit.judge(&time);
        let missing = match (contradicted, untold) {
            _ if unsaid => UNSAID,
            (true, _) => CONTRADICTED,
            (false, true) => STAGES,
            (false, false) => CAME_UP,
        };
        let found = finding(verdict).found(&time);
        let found = match (slow, food) {
            (Some(_), _) => found.note(STAGES_COUNT),
            (None, Food::WholeMeat | Food::RawHam) if !self.fermented => found.note(LONG_COOKS),
            _ => found,
        };
        if verdict == Verdict::Unproven && time.high().is_infinite() {
            return found.missing(missing);
        }
        if verdict == Verdict::Unproven
            && let Some(gap) = self.gap_on_the_way()
        {
            return found.in_gap(Some(gap));
        }
        let found = found.or_mend(Mend::HeatWithin(BAND.most));
        if self.record.is_empty() { found } else { self.doubted(found) }
    }

    /// The time during which a stage may be kept moist so: surely, and perhaps.
    fn humid(&self, so: impl Fn(&Stage) -> bool) -> Option<Range<Time>> {
        let zero = seconds(0.0);
        let (mut surely, mut perhaps) = (zero, zero);
        for stage in self.cook() {
            let time = stage.time?;
            // No row says what a stage that needs no humidity counts for beside one that does.
            let perhaps_so = unsaid(stage) || stage.moisture.is_some_and(Moisture::exempt);
            if so(stage) {
                surely += time.low();
            }
            if so(stage) || perhaps_so {
                perhaps += time.high();
            }
        }
        Range::new(surely, perhaps).ok()
    }

    /// Whether the surface stays moist while it cooks.
    pub(super) fn check_humidity(&self) -> Finding {
        let finding = |verdict| Finding::new(&HUMIDITY, verdict).at(self.place);
        let [.., whole_cook] = &FSIS_HUMIDITY;
        let all = |so: &dyn Fn(&Stage) -> bool| self.cook().next().is_some() && self.cook().all(so);
        if all(&|stage| stage.moisture.is_some_and(Moisture::exempt)) {
            return finding(Verdict::Meets).row(&whole_cook.row).note(DRIED);
        }
        let large = |stage: &Stage| {
            self.piece.zip(stage.at).is_some_and(|(piece, at)| large_piece(piece, at))
        };
        if all(&large) {
            return finding(Verdict::Meets).row(&FSIS_LARGE_PIECE.row).note(DRIED);
        }
        let humid_air = |least: f64| {
            move |stage: &Stage| stage.humidity.is_some_and(|percent| percent >= least)
        };
        let least = whole_cook.value.relative_humidity.unwrap_or(f64::INFINITY);
        if all(&humid_air(least)) {
            return finding(Verdict::Meets).row(&whole_cook.row).note(DRIED);
        }
        let unproven = |missing| finding(Verdict::Unproven).row(&whole_cook.row).missing(missing);
        if self.cook().all(|stage| stage.moisture.is_none() && stage.humidity.is_none()) {
            return unproven(MOISTURE);
        }
        let total = self.total().filter(|total| total.high().is_finite());
        let Some(total) = total else { return unproven(STAGES) };
        let Some(endpoint) = self.endpoint else { return unproven(INSIDE) };
        let missing = if self.cook().any(unsaid) { MOISTURE } else { MIXED };
        let mut best: Option<(Finding, bool)> = None;
        for (option, required, row) in humidity_options(total.high(), endpoint) {
            let by = match option {
                1 => self.humid(|stage| stage.moisture == Some(Moisture::Steam)),
                2 => self.humid(|stage| stage.moisture == Some(Moisture::SealedOven)),
                _ => self.humid(humid_air(least)),
            };
            let Some(time) = by else { continue };
            let limit = Limit::AtLeast(required);
            let verdict = limit.judge(&time);
            let found = finding(verdict).found(&time).limit(limit).row(&row.row).note(DRIED);
            let found = match verdict {
                Verdict::Meets => found,
                Verdict::Breaks => found.mend(Mend::KeepMoistFor(required)),
                Verdict::Unproven => found.missing(missing),
            };
            // The best verdict counts; of equal ones the first that anything was done for.
            let tried = time.low() > seconds(0.0);
            let better = best.is_none_or(|(best, was_tried)| {
                verdict < best.verdict || (verdict == best.verdict && tried && !was_tried)
            });
            if better {
                best = Some((found, tried));
            }
        }
        best.map_or(unproven(missing), |(best, _)| best)
    }

    /// Whether what was recorded meets any row of a table; `None` without a record.
    pub(super) fn check_record(&self, product: Product) -> Option<Finding> {
        let off = self.thermometer.unwrap_or_default();
        // What was held on both sides of a gap may have been held in it.
        let ever = seconds(f64::INFINITY);
        let mut surely = Verdicts::new(product, off, self.vouched).ok()?;
        let mut perhaps = Verdicts::new(product, TemperatureInterval::default(), ever).ok()?;
        for point in self.record {
            surely.next(*point).ok()?;
            perhaps.next(point.more(off).ok()?).ok()?;
        }
        // The row that is met with the most to spare, or that is nearest to being met.
        let best = |rows: &Verdicts, met: bool| {
            let rows = rows.rows().filter(|row| row.met || !met);
            // A row that asks for no time says less of the cook than one that does.
            let timed = |row: &super::RowHeld| row.asks > seconds(0.0);
            rows.max_by(|a, b| {
                (timed(a), a.share()).partial_cmp(&(timed(b), b.share())).unwrap_or(Ordering::Equal)
            })
        };
        let (met, possible) = (best(&surely, true), best(&perhaps, true));
        let nearest = best(&surely, false);
        // A gap after which it is no warmer, or from whose end on it cools, may hide the hottest part of a cook.
        let hidden = || {
            let hottest = self.record.iter().map(|point| point.celsius()).fold(f64::MIN, f64::max);
            longest_gap(self.record, self.vouched, |gap: &Segment| {
                let (to, last) = (gap.to(), self.record.last());
                let cools = to.celsius() >= hottest && last.is_some_and(|last| to != *last);
                to.celsius() <= gap.from().celsius() || cools
            })
        };
        let (verdict, gap) = match (met, possible) {
            (Some(_), _) => (Verdict::Meets, None),
            (None, Some(row)) => (Verdict::Unproven, self.gap_at(row.temperature)),
            (None, None) => match hidden() {
                Some(gap) => (Verdict::Unproven, Some(gap)),
                None => (Verdict::Breaks, None),
            },
        };
        let row = met.or(possible).or(nearest)?;
        let scale = self.record.first()?.scale();
        let at = row.temperature.on(scale);
        // Where a gap leaves it open, the finding shows how long it was held outside the gap.
        let open = gap.and_then(|_| surely.rows().find(|held| held.row.key == row.row.key));
        let shown = met.or(open).or(nearest)?;
        let held = Held { time: shown.held, at: shown.temperature.on(scale) };
        let finding = Finding::new(&RECORD, verdict)
            .found(&Range::ordered(held, held))
            .limit(Limit::AtLeast(Held { time: row.asks, at }))
            .row(row.row)
            .note(ANY_ROW)
            .at(self.place);
        Some(match (verdict, surely.longer()) {
            (Verdict::Meets, _) => self.doubted(finding),
            _ if gap.is_some() => finding.in_gap(gap),
            (_, Some(longer)) if longer > seconds(0.0) => finding.mend(Mend::HoldFor(longer)),
            _ => finding,
        })
    }

    /// The longest gap of the record before and after which the food may be so hot.
    fn gap_at(&self, temperature: PrintedTemperature) -> Option<Range<Time>> {
        let hot = |point: Point| {
            self.at_warmest(point).is_some_and(|at| {
                Limit::AtLeast(temperature.on(at.scale())).met_by(at) == Some(true)
            })
        };
        longest_gap(self.record, self.vouched, |gap| hot(gap.from()) && hot(gap.to()))
    }

    /// The lethality of [`Self::record`] by one aim. It is found between the probe at its coldest and
    /// at its warmest. Where the sum of lower ends would not reach the aim, the note says that the
    /// readings are far apart.
    #[must_use]
    pub fn check_lethality(&self, aim: &Aim) -> Finding {
        let unproven = Finding::new(&LETHALITY, Verdict::Unproven).missing(READINGS).at(aim.place);
        self.lethality(aim).unwrap_or(unproven)
    }

    fn lethality(&self, aim: &Aim) -> Option<Finding> {
        let off = self.thermometer.unwrap_or_default();
        let count = |vouched| Lethality::new(aim.resistance, aim.counted_from, vouched).ok();
        // The upper end takes the food in a gap to be what its two ends say.
        let (ever, vouched) = (seconds(f64::INFINITY), self.vouched);
        let (mut cold, mut plain, mut warm) = (count(vouched)?, count(vouched)?, count(ever)?);
        let mut tracks = [Track::new(), Track::new(), Track::new()];
        let [first, second, third] = &mut tracks;
        for point in self.record {
            let cases = [
                (&mut *first, &mut cold, point.less(off).ok()?),
                (&mut *second, &mut plain, *point),
                (&mut *third, &mut warm, point.more(off).ok()?),
            ];
            for (track, lethality, point) in cases {
                if let Some(segment) = track.next(point).ok()? {
                    lethality.add(&segment);
                }
            }
        }
        second.last()?;
        let floor = aim.counted_from.on(Scale::Celsius).value();
        let found = Range::new(cold.logs(), warm.logs()).ok()?;
        let limit = Limit::AtLeast(aim.logs);
        let reached = limit.met_by(cold.logs()) == Some(true);
        let surely = limit.met_by(cold.logs_by_lower_ends()) == Some(true);
        let verdict = match reached && self.thermometer.is_some() {
            true => Verdict::Meets,
            false => Verdict::Unproven,
        };
        let finding = Finding::new(&LETHALITY, verdict)
            .nominal(Logs(plain.logs()))
            .found(&Range::ordered(Logs(found.low()), Logs(found.high())))
            .limit(Limit::AtLeast(Logs(aim.logs)))
            .note(if reached && !surely { SPARSE } else { INFORMS })
            .at(aim.place);
        Some(match self.thermometer {
            None => finding.missing(THERMOMETER),
            Some(_) if limit.judge(&found) == Verdict::Breaks => {
                // Advice is never broken.
                Finding { verdict: Verdict::Meets, past_advice: true, ..finding }
            }
            Some(_) if reached => finding,
            Some(_) => finding.in_gap(longest_gap(self.record, vouched, |gap| {
                gap.from().celsius().max(gap.to().celsius()) + off.value >= floor
            })),
        })
    }

    /// Whether food that is reheated gets there in time.
    pub(super) fn check_reheat(&self) -> Finding {
        let row = &FOOD_CODE_2022_OTHER_REHEAT_WITHIN;
        let limit = Limit::AtMost(row.value);
        let finding =
            |verdict| Finding::new(&REHEAT, verdict).limit(limit).row(&row.row).at(self.place);
        match self.total() {
            Some(total) => {
                let found = finding(limit.judge(&total)).found(&total);
                match found.verdict {
                    Verdict::Unproven if total.high().is_infinite() => found.missing(REHEATED),
                    _ => found.or_mend(Mend::HeatWithin(row.value)),
                }
            }
            None => finding(Verdict::Unproven).missing(REHEATED),
        }
    }
}

/// A record that is named and was not read.
#[must_use]
pub fn unread_record(place: Place) -> Finding {
    Finding::new(&RECORD, Verdict::Unproven).missing(UNREAD).at(place)
}

/// A cook in two parts, with a cold time between: `first` is how long the first heating takes, and
/// `completes` whether it is a whole cook by itself, which may be heated again.
#[must_use]
pub fn partial(
    completes: Verdict,
    first: Option<Range<Time>>,
    food_code: bool,
    place: Place,
) -> Option<Finding> {
    let row = &FOOD_CODE_2022_OTHER_FIRST_HEATING;
    let finding = |verdict| Finding::new(&PARTIAL, verdict).row(&row.row).at(place);
    let limit = Limit::AtMost(row.value);
    Some(match (completes, first.filter(|_| food_code)) {
        (Verdict::Meets, _) => return None,
        (Verdict::Unproven, _) => finding(Verdict::Unproven).missing(WHOLE),
        (Verdict::Breaks, Some(first)) if limit.judge(&first) == Verdict::Breaks => {
            let found = finding(Verdict::Breaks).found(&first).limit(limit);
            // A shorter first heating needs the procedure all the same.
            found.mend(Mend::HeatWithin(row.value)).missing(PROCEDURE)
        }
        (Verdict::Breaks, _) => finding(Verdict::Unproven).missing(PROCEDURE),
    })
}

/// Food held hot after its cook, by the Food Code: a `roast` that was surely cooked by its chart may
/// be held somewhat colder. Colder food may be held by time, unless it stands `too_long` for any.
#[must_use]
pub fn hot_holding(
    at: Reading,
    roast: bool,
    too_long: bool,
    thermometer: Option<TemperatureInterval>,
    place: Place,
) -> Finding {
    let row = match roast {
        true => &FOOD_CODE_2022_OTHER_HOT_HOLDING_ROASTS,
        false => &FOOD_CODE_2022_OTHER_HOT_HOLDING,
    };
    let limit = Limit::AtLeast(row.value.temperature.on(at.scale()));
    let known = match thermometer {
        Some(off) => at.within(off).unwrap_or(Range::ordered(at, at)),
        None => Range::ordered(at, at),
    };
    let finding = |verdict| {
        let finding = Finding::new(&HOT, verdict).found(&known).nominal(at);
        finding.limit(limit).row(&row.row).at(place)
    };
    match (limit.judge(&known), thermometer) {
        (Verdict::Meets, Some(_)) => finding(Verdict::Meets),
        (Verdict::Meets, None) => finding(Verdict::Unproven).missing(THERMOMETER),
        (verdict, _) => {
            let hot = Mend::KeepAtOrAbove(above(row.value.temperature.on(at.scale()), thermometer));
            match (verdict, too_long) {
                (Verdict::Breaks, true) => finding(verdict).mend(hot).note(TOO_LONG),
                _ => finding(Verdict::Unproven).mend(hot).missing(TIMED),
            }
        }
    }
}
