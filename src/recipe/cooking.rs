use super::check::{analysed_brine, chills, compare, end_of_cook, ends_cook, is_cold, warms};
use super::document::{Component, Recipe, Step, StepKind};
use crate::authority::Authority;
use crate::chill::{self, Cooling, Holds};
use crate::cook::{self, Plan, Process, Stage};
use crate::finding::{Finding, Limit, Missing, Place, Verdict};
use crate::food::Food;
use crate::range::Range;
use crate::smoke;
use crate::trace::{Point, Track, longest_gap};
use crate::units::{Reading, Time, seconds};

const WARMEST: Missing = Missing::new(
    "how the warmest part cools: a record is of the coldest",
    "write the temperatures of the warmest part as [[component.cooling]] rows beside it",
);

impl Recipe<'_> {
    pub(super) fn check_cook(&self, component: &Component<'_>, report: &mut impl FnMut(Finding)) {
        if component.raw || !cooked_by_rule(component.food) {
            return;
        }
        let hottest = hottest(component);
        // Of a cook that is only recorded, the last step that heats.
        let end = hottest.or_else(|| end_of_cook(component)).unwrap_or(component.steps.len());
        let plan = self.plan(component, hottest);
        let hottest = component.steps.get(end);
        // A hold in the cold is no part of the cook. A cold smoke is none either, and warms the food.
        let to_the_end = || component.steps.iter().take(end.saturating_add(1));
        // Nor is a rest between two stages, in which the food is warm still.
        let on_the_way =
            |step: &&Step| matches!(step.kind, StepKind::ColdSmoke | StepKind::Rest) || warms(step);
        let stage = |step: &Step| Stage {
            cooks: !matches!(step.kind, StepKind::ColdSmoke | StepKind::Rest),
            // Air above the band warms nothing out of it where the inside is not to get there.
            at: step.to.filter(|_| step.stays_lukewarm()).or(step.at).map(|at| at.value),
            time: if step.stays_lukewarm() {
                step.lasts()
            } else {
                step.time.map(|time| time.value)
            },
            moisture: step.moisture,
            humidity: step.humidity,
        };
        let stages: Vec<_> = to_the_end().filter(on_the_way).map(stage).collect();
        let process = Process {
            stages: &stages,
            endpoint: plan.inside,
            piece: component.piece,
            // It is all of the way up, on whichever stage it is written.
            come_up: hottest
                .and_then(|step| step.come_up)
                .or_else(|| to_the_end().filter_map(|step| step.come_up).next_back())
                .map(|time| time.value),
            fermented: to_the_end().any(|step| step.kind == StepKind::Ferment),
            chilled_between: to_the_end().skip_while(|step| !on_the_way(step)).any(chills),
            record: &component.record,
            vouched: component.vouched(),
            thermometer: self.instruments.thermometer,
            place: plan.place,
        };
        if let Some(named) = component.recorded_in.as_ref().filter(|_| component.record.is_empty())
        {
            report(cook::unread_record(named.place));
        }
        let mut uncooked = component.steps.iter().take_while(|step| !step.ends_a_cook());
        let served = uncooked.find(|step| step.kind == StepKind::Serve);
        if let Some(served) = served.filter(|_| component.last_cook().is_some()) {
            report(cook::served_raw(served.place));
        }
        if let Some(first) = broken_off(component) {
            let completes = match first.end {
                Some(end) => self.completes(component, Some(end), |_| true),
                // A record is of the whole cook, and the first heating may be only a part of it.
                None => Verdict::Unproven,
            };
            let code = self.by_food_code(component);
            let found = cook::partial(completes, first.time, code, first.place);
            found.into_iter().for_each(&mut *report);
        }
        // The smoke itself judges it, to which temperature and for how long.
        let hot_smoked_fish = component.food == Food::Fish
            && component
                .steps
                .iter()
                .any(|step| step.kind == StepKind::Smoke && step.ends_a_cook());
        let mut answered = false;
        for &authority in &self.held_to {
            let smoked = hot_smoked_fish && smoke::cooks_fish(authority);
            answered |= smoked || cook::answers(authority, component.food);
            cook::check(&plan, &process, authority, self.date, report);
        }
        if !answered {
            let ferments = component.steps.iter().any(|step| step.kind == StepKind::Ferment);
            report(cook::unanswered(&plan, component.cure.is_some() || ferments, self.date));
        }
        let plant = self.held_to.contains(&Authority::UsFsis);
        if component.food.is_meat() && plant {
            return;
        }
        // Each cook that ended, and was cold after it, has a way up of its own.
        let up_to_the_end = component.steps.get(..=end).unwrap_or(&component.steps);
        let cooks: Vec<_> = ways_up(up_to_the_end).collect();
        let [earlier @ .., last] = cooks.as_slice() else { return };
        if earlier.is_empty() {
            process.check_slow().into_iter().for_each(report);
            return;
        }
        let of = |steps: &[Step], way: Process<'_>| {
            let stages: Vec<_> = steps.iter().filter(on_the_way).map(stage).collect();
            let come_up = steps.iter().filter_map(|step| Some(step.come_up?.value)).next_back();
            Process { stages: &stages, come_up, ..way }.check_slow()
        };
        // A record is of the last cook, or of all of them.
        let earlier = earlier.iter().filter_map(|steps| {
            let endpoint = steps.iter().filter_map(|step| Some(step.to?.value)).next_back();
            of(steps, Process { endpoint, record: &[], ..process })
        });
        let slow = earlier.chain(of(last, process)).reduce(Finding::or_worse);
        slow.into_iter().for_each(report);
    }

    /// The lethalities a component aims at, whatever is cooked.
    pub(super) fn check_aims(&self, component: &Component<'_>, report: &mut impl FnMut(Finding)) {
        let (record, thermometer) = (component.record.as_slice(), self.instruments.thermometer);
        let vouched = component.vouched();
        let process = Process { record, vouched, thermometer, ..Process::unknown(component.place) };
        component.aims.iter().map(|aim| process.check_lethality(aim)).for_each(report);
    }

    /// The cook that ends with a step; of none, what the record shows.
    fn plan(&self, component: &Component<'_>, end: Option<usize>) -> Plan {
        let ends = end.and_then(|n| component.steps.get(n));
        let to = ends.and_then(|step| step.to);
        let inside = lower(to.map(|to| to.value), highest(component));
        let planned = ends.and_then(|step| step.hold).map(|hold| hold.value);
        let (recorded, gap) = inside.map_or((None, None), |inside| recorded(component, inside));
        let last = component.steps.iter().rfind(|step| step.kind.heats()).map(|step| step.place);
        Plan {
            food: component.food,
            animals: component.animals(),
            bird: component.bird(),
            fat: self.blend(component, |i| !i.in_pickle).map(|blend| blend.fat.high()),
            inside,
            thermometer: self.instruments.thermometer,
            planned: ends.is_some(),
            held: shorter(planned, recorded),
            gap,
            rested: end.and_then(|end| rest_after(component, end)),
            place: to.map(|to| to.place).or(last).unwrap_or(component.place),
        }
    }

    /// Whether the cook that ends with a step is a whole one, by all of these authorities that say how.
    fn completes(
        &self,
        component: &Component<'_>,
        end: Option<usize>,
        of: impl Fn(Authority) -> bool,
    ) -> Verdict {
        let plan = self.plan(component, end);
        let authorities = self.held_to.iter().filter(|&&authority| of(authority));
        let verdicts = authorities.filter_map(|&a| cook::completes(&plan, a, self.date));
        verdicts.max().unwrap_or(Verdict::Unproven)
    }

    /// Whether it is a roast, no bird, and surely cooked by the chart of roasts.
    pub(super) fn roasted(&self, component: &Component<'_>) -> bool {
        matches!(component.food, Food::WholeMeat | Food::RawHam)
            && component.animals() == cook::Animals::NoPoultry
            && self.completes(component, hottest(component), Authority::is_food_code)
                == Verdict::Meets
    }

    /// Whether it is held to an edition of the Food Code that says how the food is cooked.
    pub(super) fn by_food_code(&self, component: &Component<'_>) -> bool {
        self.held_to.iter().any(|&a| !cook::food_code(a, component.food, false).is_empty())
    }

    /// Cooked food that is kept is cooled, and how fast is judged.
    pub(super) fn check_cooling(
        &self,
        component: &Component<'_>,
        report: &mut impl FnMut(Finding),
    ) {
        let written = component.writes_its_cooling();
        // What is done to the curd of a cheese is no cook.
        let last = end_of_cook(component).filter(|_| component.food != Food::Cheese);
        if last.is_none() && !written {
            return;
        }
        let (curve, vouched) = component.cools();
        let mut colds = cooks_then_cold(component);
        match colds.next() {
            Some((cook, cold)) => {
                self.check_one_cooling(component, Some(cook), curve, vouched, cold, report);
                // One curve is of one cooling.
                colds.for_each(|(cook, cold)| {
                    self.check_one_cooling(component, Some(cook), &[], vouched, cold, report);
                });
            }
            None if !curve.is_empty() => {
                let ends = last.and_then(|last| component.steps.get(last));
                let place = ends.map_or(component.place, |step| step.place);
                self.check_one_cooling(component, last, curve, vouched, place, &mut |finding| {
                    if written || finding.verdict == Verdict::Breaks {
                        report(finding);
                    }
                });
            }
            None => {}
        }
    }

    /// How fast it cools after one cook.
    fn check_one_cooling(
        &self,
        component: &Component<'_>,
        cook: Option<usize>,
        curve: &[Point],
        vouched: Time,
        place: Place,
        report: &mut impl FnMut(Finding),
    ) {
        let [nitrite, ascorbate] = self.ingoing(component);
        // A record of the cook may have been hotter than what is planned.
        let planned = cook.and_then(|cook| component.steps.get(cook)?.to).map(|to| to.value);
        let seen = highest(component);
        let cooked_to = if compare(seen, planned).is_gt() { seen } else { planned };
        let cooling = Cooling {
            curve,
            cooked_to: cooked_to.or(seen),
            vouched,
            thermometer: self.instruments.thermometer,
            holds: Holds {
                nitrite,
                ascorbate,
                brine: analysed_brine(component),
                activity: component.proximates.water_activity,
            },
            place,
        };
        let meat = component.food.is_meat() || component.food == Food::Casseroles;
        // What dries or sours after the cook was another food while it cooled.
        let after = || component.steps.iter().skip(cook.map_or(0, |cook| cook.saturating_add(1)));
        let dries_later = after().any(|step| {
            step.kind.heats() || matches!(step.kind, StepKind::ColdSmoke | StepKind::Ferment)
        });
        let stable = |authority| !dries_later && component.needs_none(authority).is_some();
        let mut held = false;
        for &authority in &self.held_to {
            if stable(authority) {
                held = true;
            } else if meat || chill::cools_any_food(authority) {
                let found = chill::check(&cooling, authority, self.date);
                held |= found.is_some();
                found
                    .map(|found| by_the_warmest(component, found))
                    .into_iter()
                    .for_each(&mut *report);
            }
        }
        if !held && !curve.is_empty() {
            // A record that ends hot shows no cooling.
            let found = chill::check_unheld(&cooling, self.date);
            let shows = |found: &Finding| component.writes_its_cooling() || found.found.is_some();
            found.filter(shows).into_iter().for_each(report);
        }
    }
}

/// The rows of a record are of the coldest part: how the warmest cools they do not show.
fn by_the_warmest(component: &Component<'_>, finding: Finding) -> Finding {
    match finding.verdict {
        Verdict::Meets if component.cooling.is_empty() => finding.left_open(WARMEST),
        _ => finding,
    }
}

/// The steps up to the end of each cook: a new one begins after the cold that follows one that ended.
fn ways_up(steps: &[Step]) -> impl Iterator<Item = &[Step]> {
    let mut ended = false;
    steps.split_inclusive(move |step| {
        ended |= step.ends_a_cook();
        let over = ended && chills(step);
        ended &= !over;
        over
    })
}

/// The steps that end a cook and are followed by cold before the next one, and where that cold is written.
fn cooks_then_cold<'c>(component: &'c Component<'_>) -> impl Iterator<Item = (usize, Place)> + 'c {
    let ends = |step: &Step| ends_cook(component, step);
    let steps = component.steps.iter().enumerate().filter(move |(_, step)| ends(step));
    steps.filter_map(move |(cook, _)| {
        let later = component.steps.iter().skip(cook.saturating_add(1));
        let mut until = later.take_while(|step| !ends(step));
        Some((cook, until.find(|step| chills(step) || is_cold(step))?.place))
    })
}

/// Whether rules say how it is cooked.
fn cooked_by_rule(food: Food) -> bool {
    food.is_meat() || matches!(food, Food::Fish | Food::Eggs | Food::Casseroles)
}

/// The step that ends the hottest cook.
pub(super) fn hottest(component: &Component<'_>) -> Option<usize> {
    hottest_of(component.steps.iter().enumerate())
}

fn hottest_of<'s>(steps: impl Iterator<Item = (usize, &'s Step)>) -> Option<usize> {
    let to = |step: &Step| step.to.map(|to| to.value);
    let ends = steps.filter(|(_, step)| step.names_an_inside());
    ends.max_by(|(_, a), (_, b)| compare(to(a), to(b))).map(|(n, _)| n)
}

/// The rest right after a step: what is held first in air that does not let it cool is no gap.
fn rest_after(component: &Component<'_>, end: usize) -> Option<Range<Time>> {
    let to = component.steps.get(end)?.to?.value;
    let kept = |step: &Step| {
        let hot = |at: Reading| Limit::AtLeast(to).met_by(at) == Some(true);
        step.kind == StepKind::Hold && step.at.is_some_and(|at| hot(at.value))
    };
    let next = component.steps.iter().skip(end.saturating_add(1)).find(|step| !kept(step))?;
    (next.kind == StepKind::Rest).then_some(next.time?.value)
}

/// The first part of a cook that is chilled and finished later.
struct Part {
    /// The step that ends the hottest cook of it, where one says to which temperature.
    end: Option<usize>,
    /// How long it is known to heat.
    time: Option<Range<Time>>,
    place: Place,
}

fn broken_off(component: &Component<'_>) -> Option<Part> {
    let heats =
        |step: &Step| step.ends_a_cook() || matches!(step.kind, StepKind::Smoke | StepKind::Cook);
    let mut later = component.steps.iter().skip_while(|step| !heats(step));
    later.find(|step| chills(step))?;
    later.find(|step| step.ends_a_cook())?;
    let steps = component.steps.iter().enumerate();
    let part = steps.skip_while(|(_, step)| !heats(step)).take_while(|(_, step)| !chills(step));
    let heating = part.clone().map(|(_, step)| step).filter(|step| heats(step));
    let end = hottest_of(part);
    let named = end.and_then(|end| component.steps.get(end));
    let times = heating.clone().filter_map(|step| Some(step.time?.value));
    Some(Part {
        end,
        time: times.reduce(|sum, time| sum.plus(time).unwrap_or(sum)),
        place: named.or(heating.clone().next())?.place,
    })
}

/// The highest recorded inside temperature.
fn highest(component: &Component<'_>) -> Option<Reading> {
    component.record.iter().map(|point| point.reading().ok()).max_by(|&a, &b| compare(a, b))?
}

/// How long the record stays at or above a temperature without a break, from reading to reading; `None`
/// where nothing was recorded. The lower end leaves out every gap, the upper end counts those that begin and end so
/// hot. Beside it stands the longest of these gaps.
fn recorded(
    component: &Component<'_>,
    inside: Reading,
) -> (Option<Range<Time>>, Option<Range<Time>>) {
    let reached = |point: &Point| {
        point.reading().is_ok_and(|reading| {
            Limit::AtLeast(inside.on(reading.scale())).met_by(reading) == Some(true)
        })
    };
    let longest = |vouched: Time| {
        let (mut longest, mut since, mut track) = (seconds(0.0), None, Track::new());
        for point in &component.record {
            let after = seconds(point.seconds());
            let segment = track.next(*point).ok().flatten();
            let known = segment.is_none_or(|segment| !segment.is_gap(vouched));
            since = since.filter(|_| known && reached(point)).or(reached(point).then_some(after));
            let run = since.map_or(seconds(0.0), |since| after - since);
            longest = longest.max(run);
        }
        longest
    };
    if component.record.is_empty() {
        return (None, None);
    }
    let vouched = component.vouched();
    let (least, most) = (longest(vouched), longest(seconds(f64::INFINITY)));
    let gap =
        longest_gap(&component.record, vouched, |gap| reached(&gap.from()) && reached(&gap.to()));
    (Range::new(least, most).ok(), gap)
}

/// The shorter of what is planned and what was recorded; where one is missing, the other.
fn shorter(planned: Option<Range<Time>>, recorded: Option<Range<Time>>) -> Option<Range<Time>> {
    match (planned, recorded) {
        (Some(planned), Some(recorded)) => Some(Range::ordered(
            planned.low().min(recorded.low()),
            planned.high().min(recorded.high()),
        )),
        (planned, recorded) => planned.or(recorded),
    }
}

/// The lower of what is planned and what was recorded; where one is missing, the
/// other.
fn lower(planned: Option<Reading>, recorded: Option<Reading>) -> Option<Reading> {
    match (planned, recorded) {
        (Some(planned), Some(recorded)) if recorded < planned => Some(recorded),
        (planned, recorded) => planned.or(recorded),
    }
}
