use uom::si::f64::{TemperatureInterval, Time};

use crate::range::{OutOfRange, bounds};
use crate::trace::{Point, Segment, TraceError, Track};
use crate::units::{Reading, Scale, seconds};

bounds! {
    D: "D-value", "s", 1e-6, 1e9;
    Z: "z-value", "K", 0.1, 100.0;
    CELSIUS: "temperature of a D-value", "°C", -100.0, 400.0;
}

/// How hard an organism is to kill in a food: the time for one log at a temperature, and how
/// many kelvin make that time ten times shorter. From a source that the caller chooses: D and z
/// of one strain in one food are not those of another, and none hold on a surface that dried.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Resistance {
    d: f64,
    reference: f64,
    z: f64,
    z_above: f64,
}

impl Resistance {
    /// D at a temperature, and z.
    ///
    /// # Errors
    /// [`OutOfRange`] for a D outside a microsecond to thirty years, a z outside 0.1 to 100 K,
    /// and a temperature outside −100 to 400 °C.
    pub fn new(d: Time, at: Reading, z: TemperatureInterval) -> Result<Self, OutOfRange> {
        let z = Z.check(z.value)?;
        let (d, reference) = (D.check(d.value)?, CELSIUS.check(at.on(Scale::Celsius).value())?);
        Ok(Self { d, reference, z, z_above: z })
    }

    /// The same with another z above the temperature of D, as the table of *C. botulinum* that
    /// does not break down protein has: 7 °C below 90 °C, 10 °C above.
    ///
    /// # Errors
    /// [`OutOfRange`] for a z outside 0.1 to 100 K.
    pub fn with_z_above(self, z: TemperatureInterval) -> Result<Self, OutOfRange> {
        Ok(Self { z_above: Z.check(z.value)?, ..self })
    }

    /// From measured D-values: the line of least squares through log₁₀ D over temperature, read
    /// at a reference temperature. z = −1 / slope. Two values give the line through both.
    ///
    /// `None` for fewer than two temperatures, for one the line does not fall over, and for a
    /// D, z or temperature out of range.
    ///
    /// ```
    /// use greenweight::cook::Resistance;
    /// use greenweight::units::{Reading, Scale, minutes};
    ///
    /// // A teaching example: 10, 3 and 1 min at 110, 115 and 120 °C give z = 10 °C.
    /// let celsius = |value| Reading::new(value, Scale::Celsius);
    /// let measured = [
    ///     (celsius(110.0)?, minutes(10.0)),
    ///     (celsius(115.0)?, minutes(3.0)),
    ///     (celsius(120.0)?, minutes(1.0)),
    /// ];
    /// let line = Resistance::fit(&measured, celsius(115.0)?).ok_or("no line")?;
    /// assert!((line.z().value - 10.0).abs() < 1e-9);
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    #[must_use]
    pub fn fit(measured: &[(Reading, Time)], at: Reading) -> Option<Self> {
        let points = || measured.iter().map(|(t, d)| (t.on(Scale::Celsius).value(), d.value));
        let (mut count, mut mean_t, mut mean_log) = (0.0, 0.0, 0.0);
        for (t, d) in points() {
            D.check(d).ok()?;
            count += 1.0;
            mean_t += t;
            mean_log += libm::log10(d);
        }
        (mean_t, mean_log) = (mean_t / count, mean_log / count);
        let (mut squares, mut products) = (0.0, 0.0);
        for (t, d) in points() {
            squares += (t - mean_t) * (t - mean_t);
            products += (t - mean_t) * (libm::log10(d) - mean_log);
        }
        let slope = products / squares;
        let z = crate::units::TemperatureInterval::new::<uom::si::temperature_interval::kelvin>(
            -1.0 / slope,
        );
        let log = mean_log + slope * (at.on(Scale::Celsius).value() - mean_t);
        Self::new(seconds(libm::pow(10.0, log)), at, z).ok()
    }

    /// D, the time for one log, at its temperature.
    #[must_use]
    pub fn d(&self) -> Time {
        seconds(self.d)
    }

    /// z below the temperature of D.
    #[must_use]
    pub fn z(&self) -> TemperatureInterval {
        TemperatureInterval::new::<uom::si::temperature_interval::kelvin>(self.z)
    }

    /// The lethal rate at a temperature: how many minutes at the temperature of D one minute
    /// counts for. L = 10^((T − T_ref) / z).
    ///
    /// ```
    /// use greenweight::cook::Resistance;
    /// use greenweight::units::{Reading, Scale, minutes, read_tolerance};
    ///
    /// let celsius = |value| Reading::new(value, Scale::Celsius);
    /// let listeria = Resistance::new(minutes(2.0 / 6.0), celsius(70.0)?, read_tolerance("7.5 °C")?)?;
    /// // FDA fish guide 2020, appendix 4, Table A-3: 0.117 at 63 °C, so 17 min for six logs.
    /// assert!((listeria.rate(celsius(63.0)?) - 0.117).abs() < 0.0006);
    /// assert!((listeria.time_for(6.0, celsius(63.0)?).value / 60.0 - 17.15).abs() < 0.01);
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    #[must_use]
    pub fn rate(&self, at: Reading) -> f64 {
        self.rate_at(at.on(Scale::Celsius).value())
    }

    /// How long a temperature takes for so many logs.
    #[must_use]
    pub fn time_for(&self, logs: f64, at: Reading) -> Time {
        seconds(logs * self.d / self.rate(at))
    }

    fn rate_at(&self, celsius: f64) -> f64 {
        libm::exp(self.per_kelvin(celsius) * (celsius - self.reference))
    }

    /// ln 10 / z, on the side of the reference temperature.
    fn per_kelvin(&self, celsius: f64) -> f64 {
        core::f64::consts::LN_10 / if celsius < self.reference { self.z } else { self.z_above }
    }
}

/// The lethality of a record, as it comes: minutes that count as so many at the temperature of
/// D, and logs.
///
/// Rate L = 10^((T − T_ref) / z); F = ∫ L dt; logs = F / D. Between two readings the
/// temperature is taken to run straight, and the integral is exact:
/// Δt L₁ (eˣ − 1) / x with x = ln 10 (T₂ − T₁) / z. The mean of the two rates would overstate
/// it: by 41 percent where the temperature moves by z between readings. Nothing counts below
/// `counted_from`, the lowest row that was validated, and nothing in a gap.
///
/// It informs. It never stands in for a row that was not met.
///
/// ```
/// use greenweight::cook::{Lethality, Resistance};
/// use greenweight::trace::{Point, Track, vouched};
/// use greenweight::units::{Reading, Scale, minutes, read_tolerance};
///
/// let celsius = |value| Reading::new(value, Scale::Celsius);
/// // Two minutes at 70 °C for six logs, z 7.5 °C.
/// let listeria = Resistance::new(minutes(2.0 / 6.0), celsius(70.0)?, read_tolerance("7.5 °C")?)?;
/// let mut lethality = Lethality::new(listeria, celsius(55.0)?, vouched(minutes(1.0)))?;
/// let mut track = Track::new();
/// for (at, inside) in [(0.0, 70.0), (1.0, 70.0), (2.0, 70.0)] {
///     if let Some(segment) = track.next(Point::new(minutes(at), celsius(inside)?)?)? {
///         lethality.add(&segment);
///     }
/// }
/// assert!((lethality.logs() - 6.0).abs() < 1e-12);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Lethality {
    resistance: Resistance,
    vouched: Time,
    /// ln 10 / z, below the bend and above.
    per_kelvin: [f64; 2],
    /// Where z changes; below everything where it does not.
    bend: f64,
    counted_from: f64,
    /// From here up all counts, and z is one.
    straight_from: f64,
    /// What is summed up, in blocks, so that ten million small sums cost no digits.
    sum: f64,
    block: f64,
    lower: f64,
    lower_block: f64,
    in_block: u32,
    /// The rate at the end of the last segment, and the temperature it is for.
    rate: f64,
    rate_at: f64,
}

/// After so many segments the rate is worked out afresh and the block is added to the sum.
const BLOCK: u32 = 1024;

impl Lethality {
    /// Nothing counted yet, by readings that vouch for the time between them where it is
    /// [no longer](crate::trace::vouched) than `vouched`.
    ///
    /// # Errors
    /// [`OutOfRange`] for a temperature outside −100 to 400 °C.
    pub fn new(
        resistance: Resistance,
        counted_from: Reading,
        vouched: Time,
    ) -> Result<Self, OutOfRange> {
        let bends = (resistance.z - resistance.z_above).abs() > 0.0;
        let bend = if bends { resistance.reference } else { f64::NEG_INFINITY };
        let counted_from = CELSIUS.check(counted_from.on(Scale::Celsius).value())?;
        Ok(Self {
            resistance,
            vouched,
            per_kelvin: [resistance.z, resistance.z_above].map(|z| core::f64::consts::LN_10 / z),
            bend,
            counted_from,
            straight_from: counted_from.max(bend),
            sum: 0.0,
            block: 0.0,
            lower: 0.0,
            lower_block: 0.0,
            in_block: 0,
            rate: 0.0,
            rate_at: f64::NAN,
        })
    }

    /// Counts a segment.
    #[inline]
    pub fn add(&mut self, segment: &Segment) {
        if segment.is_gap(self.vouched) {
            return;
        }
        let (a, b) = (segment.from.celsius(), segment.to.celsius());
        if a < self.straight_from || b < self.straight_from {
            *self = self.with_parts_of(*segment);
            return;
        }
        self.in_block = self.in_block.wrapping_add(1);
        // Bit for bit the same reading: the rate at its end is known.
        #[allow(clippy::float_cmp)]
        let known = self.rate_at == a;
        if !known || self.in_block >= BLOCK {
            self.settle();
            self.rate = self.resistance.rate_at(a);
        }
        let [_, above] = self.per_kelvin;
        self.count(segment.seconds(), self.rate, above * (b - a));
        self.rate_at = b;
    }

    /// Counts the next points of a record, as [`Track::next`] and [`Self::add`] would one by one;
    /// of many points at a time that is three times as fast.
    ///
    /// # Errors
    /// [`TraceError::NotForward`] for a time that is not after the one before; what comes before
    /// it is counted.
    ///
    /// ```
    /// use greenweight::cook::{Lethality, Resistance};
    /// use greenweight::trace::{Point, Track};
    /// use greenweight::units::{Reading, Scale, minutes, read_tolerance};
    ///
    /// let at_70 = Reading::new(70.0, Scale::Celsius)?;
    /// let resistance = Resistance::new(minutes(1.0), at_70, read_tolerance("10 °C")?)?;
    /// let mut lethality = Lethality::new(resistance, at_70, minutes(5.0))?;
    /// let points = [Point::new(minutes(0.0), at_70)?, Point::new(minutes(5.0), at_70)?];
    /// lethality.add_points(&mut Track::new(), &points)?;
    /// assert_eq!(lethality.equivalent(), minutes(5.0));
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    pub fn add_points(&mut self, track: &mut Track, points: &[Point]) -> Result<(), TraceError> {
        let mut steps = Steps { x: [0.0; LANES], seconds: [0.0; LANES] };
        for block in points.chunks(LANES) {
            if let (Some(before), Ok(many)) = (track.last(), <&[Point; LANES]>::try_from(block))
                && steps.are_smooth(self, before, many)
            {
                self.count_smooth(before, &steps);
                let [.., last] = many;
                track.skip_to(*last);
                continue;
            }
            for point in block {
                if let Some(segment) = track.next(*point)? {
                    self.add(&segment);
                }
            }
        }
        Ok(())
    }

    fn count_smooth(&mut self, before: Point, steps: &Steps) {
        self.settle();
        let mut means = [0.0; LANES];
        for (mean, x) in means.iter_mut().zip(&steps.x) {
            *mean = series(*x);
        }
        // Four stretches side by side, each as if it began at a rate of one: none waits for another.
        let mut runs = [Run { rate: 1.0, exact: 0.0, lower: 0.0 }; RUNS];
        for n in 0..LANES / RUNS {
            for (lane, run) in runs.iter_mut().enumerate() {
                let at = lane * (LANES / RUNS) + n;
                let (Some(x), Some(seconds), Some(mean)) =
                    (steps.x.get(at), steps.seconds.get(at), means.get(at))
                else {
                    continue;
                };
                run.count(*x, *seconds, *mean);
            }
        }
        let mut rate = self.resistance.rate_at(before.celsius());
        let (mut exact, mut lower) = (0.0, 0.0);
        for run in runs {
            exact += rate * run.exact;
            lower += rate * run.lower;
            rate *= run.rate;
        }
        self.rate_at = f64::NAN;
        (self.sum, self.lower) = (self.sum + exact, self.lower + lower);
    }

    /// Counts a stretch that begins at a rate and ends eˣ times as high.
    #[inline]
    fn count(&mut self, seconds: f64, rate: f64, x: f64) {
        let mean = mean_of_exp(x);
        let growth = 1.0 + x * mean;
        let counts = seconds * rate;
        self.block += counts * mean;
        self.lower_block += counts * if growth < 1.0 { growth } else { 1.0 };
        self.rate = rate * growth;
    }

    /// With a segment of which part, or all, lies below what is counted, or across the bend. By
    /// value, so that a caller's loop can keep the sums in registers.
    #[cold]
    #[inline(never)]
    fn with_parts_of(mut self, segment: Segment) -> Self {
        self.settle();
        self.rate_at = f64::NAN;
        let (a, b) = (segment.from.celsius(), segment.to.celsius());
        let seconds = segment.seconds_at_or_above(self.counted_from);
        if seconds <= 0.0 {
            return self;
        }
        // What lies above the floor, and counts; by the lower end, the floor itself.
        let floor = self.counted_from;
        let (from, to) = (if a < floor { floor } else { a }, if b < floor { floor } else { b });
        let [below, above] = self.per_kelvin;
        let (bend, rate) = (self.bend, self.resistance.rate_at(from));
        if (from < bend) == (to < bend) {
            let per_kelvin = if from < bend { below } else { above };
            self.count(seconds, rate, per_kelvin * (to - from));
            return self;
        }
        let share = (bend - from) / (to - from);
        let (first, second) = if from < bend { (below, above) } else { (above, below) };
        let lower = self.lower_block;
        self.count(seconds * share, rate, first * (bend - from));
        self.count(seconds * (1.0 - share), 1.0, second * (to - bend));
        // One segment has one lower end.
        let end = self.resistance.rate_at(to);
        self.lower_block = lower + seconds * if rate < end { rate } else { end };
        self
    }

    #[inline]
    fn settle(&mut self) {
        self.sum += self.block;
        self.lower += self.lower_block;
        (self.block, self.lower_block, self.in_block) = (0.0, 0.0, 0);
    }

    /// The time that counts, as time at the temperature of D.
    #[must_use]
    pub fn equivalent(&self) -> Time {
        seconds(self.sum + self.block)
    }

    /// The same with the lower end of every segment counted for all of it: for readings so
    /// far apart that a straight line between them is a guess.
    #[must_use]
    pub fn equivalent_by_lower_ends(&self) -> Time {
        seconds(self.lower + self.lower_block)
    }

    /// Logs: the equivalent time over D.
    #[must_use]
    pub fn logs(&self) -> f64 {
        self.equivalent().value / self.resistance.d
    }

    /// Logs by the lower ends.
    #[must_use]
    pub fn logs_by_lower_ends(&self) -> f64 {
        self.equivalent_by_lower_ends().value / self.resistance.d
    }
}

/// So many points are counted at once, in so many stretches.
const LANES: usize = 256;
const RUNS: usize = 4;

/// What a stretch counts to, as if it began at a rate of one, and the rate at its end.
#[derive(Clone, Copy)]
struct Run {
    rate: f64,
    exact: f64,
    lower: f64,
}

impl Run {
    #[inline]
    fn count(&mut self, x: f64, seconds: f64, mean: f64) {
        let growth = 1.0 + x * mean;
        let counts = seconds * self.rate;
        self.exact += counts * mean;
        self.lower += counts * if growth < 1.0 { growth } else { 1.0 };
        self.rate *= growth;
    }
}

/// Steps from point to point.
struct Steps {
    x: [f64; LANES],
    seconds: [f64; LANES],
}

impl Steps {
    /// Takes the steps to the points of a block; whether they run forward without a gap, above what is
    /// counted, and each so small that the series serves.
    #[inline]
    fn are_smooth(&mut self, lethality: &Lethality, before: Point, block: &[Point; LANES]) -> bool {
        let ([_, above], floor) = (lethality.per_kelvin, lethality.straight_from);
        let vouched = lethality.vouched.value;
        let ([first, rest @ ..], [x, xs @ ..], [time, times @ ..]) =
            (block, &mut self.x, &mut self.seconds);
        let step = |from: &Point, to: &Point| {
            let (seconds, x) =
                (to.seconds() - from.seconds(), above * (to.celsius() - from.celsius()));
            let near = (seconds > 0.0) & (seconds <= vouched);
            let smooth = near & (to.celsius() >= floor) & (x.abs() < SMALL);
            (seconds, x, smooth)
        };
        let mut smooth = before.celsius() >= floor;
        let (seconds, rise, small) = step(&before, first);
        (*time, *x) = (seconds, rise);
        smooth &= small;
        for (((x, time), from), to) in xs.iter_mut().zip(times).zip(block).zip(rest) {
            let (seconds, rise, small) = step(from, to);
            (*time, *x) = (seconds, rise);
            smooth &= small;
        }
        smooth
    }
}

/// Below this what the series leaves out is under 10⁻¹³ of it.
const SMALL: f64 = 0.0625;

/// (eˣ − 1) / x, and 1 at zero.
#[inline]
fn mean_of_exp(x: f64) -> f64 {
    if x.abs() < SMALL { series(x) } else { libm::expm1(x) / x }
}

/// The same for a small x: the series of 1 / n!.
#[inline]
fn series(x: f64) -> f64 {
    const C: [f64; 7] =
        [1.0, 1.0 / 2.0, 1.0 / 6.0, 1.0 / 24.0, 1.0 / 120.0, 1.0 / 720.0, 1.0 / 5_040.0];
    let [c0, c1, c2, c3, c4, c5, c6] = C;
    // In pairs, so that they need not wait for each other.
    let (x2, low, middle) = (x * x, c0 + c1 * x, c2 + c3 * x);
    let (high, highest) = (c4 + c5 * x, c6);
    let x4 = x2 * x2;
    (low + middle * x2) + (high + highest * x2) * x4
}
