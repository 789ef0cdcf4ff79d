use uom::si::f64::Time;

use super::table::GROWTH_MODELS;
use crate::cite::Cited;
use crate::range::{Bounds, OutOfRange, Range, bounds};
use crate::trace::Segment;
use crate::units::{Reading, Scale};

bounds! {
    RATE: "growth rate, natural logarithms an hour", "1/h", 0.0, 100.0;
    B: "slope of a square-root law", "1/(K h^½)", 1e-6, 10.0;
    CELSIUS: "temperature of a growth model", "°C", -50.0, 100.0;
    LAG: "h0, natural logarithms", "", 0.0, 100.0;
    ROOM: "room to grow, log10", "", 0.0, 20.0;
    START: "number at the start, log10 of CFU/g", "", -6.0, 12.0;
}

/// How a growth rate depends on temperature. Rates are natural logarithms an hour: a figure in
/// log₁₀ an hour is 2.303 times as large in these.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Rate {
    /// √μ = b (T − T_min) above T_min; no growth below, and never the square of less than nothing.
    SquareRoot {
        /// b, in 1/(K √h).
        b: f64,
        /// T_min, °C.
        least: f64,
    },
    /// √μ = b (T − T_min) (1 − exp(c (T − T_max))) between T_min and T_max.
    SquareRootToMaximum {
        /// b, in 1/(K √h).
        b: f64,
        /// c, in 1/K.
        c: f64,
        /// T_min, °C.
        least: f64,
        /// T_max, °C.
        most: f64,
    },
    /// μ = a (T − T_min)² (1 − exp(c (T − T_max))) between T_min and T_max.
    SquareTimesMaximum {
        /// a, in 1/(K² h).
        a: f64,
        /// c, in 1/K.
        c: f64,
        /// T_min, °C.
        least: f64,
        /// T_max, °C.
        most: f64,
    },
    /// The cardinal temperatures: μ_opt (T − T_max)(T − T_min)² / ((T_opt − T_min) ((T_opt − T_min)
    /// (T − T_opt) − (T_opt − T_max)(T_opt + T_min − 2T))).
    Cardinal {
        /// T_min, °C.
        least: f64,
        /// T_opt, °C.
        best: f64,
        /// T_max, °C.
        most: f64,
        /// μ_opt, in 1/h.
        at_best: f64,
    },
}

impl Rate {
    /// A square-root law.
    ///
    /// # Errors
    /// [`OutOfRange`] for a slope or a temperature that cannot be.
    pub fn square_root(b: f64, least: Reading) -> Result<Self, OutOfRange> {
        Ok(Self::SquareRoot { b: B.check(b)?, least: celsius(least)? })
    }

    /// The rate at a temperature, in 1/h; zero outside the range of the law.
    ///
    /// ```
    /// use greenweight::chill::Rate;
    /// use greenweight::units::{Reading, Scale};
    ///
    /// // Perfringens in roasted chicken (published cardinal values): 59.8 min to double at 20 °C.
    /// let rate = Rate::Cardinal { least: 8.8, best: 46.4, most: 51.5, at_best: 6.06 };
    /// let at_20 = rate.at(Reading::new(20.0, Scale::Celsius)?);
    /// assert!((60.0 * 2f64.ln() / at_20 - 59.76).abs() < 0.01);
    /// # Ok::<(), greenweight::range::OutOfRange>(())
    /// ```
    #[must_use]
    pub fn at(&self, reading: Reading) -> f64 {
        self.at_celsius(reading.on(Scale::Celsius).value())
    }

    #[inline]
    fn at_celsius(&self, t: f64) -> f64 {
        let square = |x: f64| if x > 0.0 { x * x } else { 0.0 };
        match *self {
            Self::SquareRoot { b, least } => square(b * (t - least)),
            // Outside its ends one factor is negative.
            Self::SquareRootToMaximum { b, c, least, most } => {
                square(b * (t - least) * -libm::expm1(c * (t - most)))
            }
            Self::SquareTimesMaximum { a, c, least, most } => {
                if t <= least || t >= most {
                    return 0.0;
                }
                a * square(t - least) * -libm::expm1(c * (t - most))
            }
            Self::Cardinal { least, best, most, at_best } => {
                if t <= least || t >= most {
                    return 0.0;
                }
                let above = (t - most) * square(t - least);
                let below = (best - least)
                    * ((best - least) * (t - best) - (best - most) * (best + least - 2.0 * t));
                at_best * above / below
            }
        }
    }

    /// ∫ μ dt over a segment on which the temperature runs straight.
    #[inline]
    fn over(&self, segment: &Segment) -> f64 {
        let (a, b) = (segment.from().celsius(), segment.to().celsius());
        let hours = segment.seconds() / 3600.0;
        match *self {
            // The square of a straight line: exact.
            Self::SquareRoot { b: slope, least } => {
                let (low, high) =
                    if a < b { (a - least, b - least) } else { (b - least, a - least) };
                if high <= 0.0 {
                    return 0.0;
                }
                let share = if low < 0.0 { high / (high - low) } else { 1.0 };
                let low = if low < 0.0 { 0.0 } else { low };
                let mean = (low * low + low * high + high * high) / 3.0;
                hours * share * slope * slope * mean
            }
            Self::SquareRootToMaximum { least, most, .. }
            | Self::SquareTimesMaximum { least, most, .. }
            | Self::Cardinal { least, most, .. } => self.quadrature(a, b, hours, least, most),
        }
    }

    /// By Gauss and Legendre, five points on pieces of at most two kelvin, cut where the law ends.
    fn quadrature(&self, a: f64, b: f64, hours: f64, least: f64, most: f64) -> f64 {
        let (low, high) = if a < b { (a, b) } else { (b, a) };
        let (from, to) = (low.max(least), high.min(most));
        if high - low <= 0.0 {
            return hours * self.at_celsius(a);
        }
        if to <= from {
            return 0.0;
        }
        let per_kelvin = hours / (high - low);
        if to - from < 0.25 {
            // Two points serve a piece as short as this: what they miss is the fourth derivative.
            let (middle, half) = ((from + to) * 0.5, (to - from) * 0.5);
            let at = half * NODE_OF_TWO;
            let sum = self.at_celsius(middle - at) + self.at_celsius(middle + at);
            return half * sum * per_kelvin;
        }
        let mut sum = 0.0;
        let mut start = from;
        while start < to {
            let end = (start + 2.0).min(to);
            let (middle, half) = ((start + end) * 0.5, (end - start) * 0.5);
            for (node, weight) in NODES {
                sum += weight * half * self.at_celsius(middle + half * node);
            }
            start = end;
        }
        sum * per_kelvin
    }
}

/// 1/√3, the node of the two-point rule.
const NODE_OF_TWO: f64 = 0.577_350_269_189_625_8;

/// Nodes and weights of the five-point rule on −1 to 1 (Abramowitz and Stegun, Table 25.4).
const NODES: [(f64, f64); 5] = [
    (0.0, 0.568_888_888_888_888_9),
    (0.538_469_310_105_683, 0.478_628_670_499_366_5),
    (-0.538_469_310_105_683, 0.478_628_670_499_366_5),
    (0.906_179_845_938_664, 0.236_926_885_056_189_1),
    (-0.906_179_845_938_664, 0.236_926_885_056_189_1),
];

fn celsius(reading: Reading) -> Result<f64, OutOfRange> {
    CELSIUS.check(reading.on(Scale::Celsius).value())
}

/// Predicted growth on a record, for information: Baranyi and Roberts with a rate that follows the
/// temperature.
///
/// dq/dt = μ q and dN/dt = μ q/(1 + q) (1 − N/N_max) N. With M = ∫ μ dt both have a closed form,
/// whatever the temperature does: q = q₀ eᴹ with q₀ = 1/(e^h₀ − 1), A = ln((1 + q)/(1 + q₀)), and
/// N = N_max / (1 + (N_max/N₀ − 1) e^−A). Nothing is stepped but M.
///
/// It never clears a limit that was not kept: replicates of its measurements differ by as much as the
/// whole limit.
///
/// ```
/// use greenweight::chill::{Growth, Rate};
/// use greenweight::trace::{Point, Track};
/// use greenweight::units::{Reading, Scale, hours};
///
/// let celsius = |value| Reading::new(value, Scale::Celsius);
/// let rate = Rate::square_root(0.03, celsius(5.0)?)?;
/// let mut growth = Growth::new(rate, 2.0, 6.0)?;
/// let mut track = Track::new();
/// for (at, c) in [(0.0, 20.0), (12.0, 20.0)] {
///     if let Some(segment) = track.next(Point::new(hours(at), celsius(c)?)?)? {
///         growth.add(&segment);
///     }
/// }
/// assert!(growth.log10() > 0.0);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Growth {
    rate: Rate,
    h0: f64,
    room: f64,
    sum: f64,
}

impl Growth {
    /// Nothing has grown. `h0` is the work to be done before growth, in natural logarithms (rate
    /// times lag); zero for no lag. `room` is log₁₀ of the largest number over the first.
    ///
    /// # Errors
    /// [`OutOfRange`] for an h0 or a room below zero or absurdly large.
    pub fn new(rate: Rate, h0: f64, room: f64) -> Result<Self, OutOfRange> {
        Ok(Self { rate, h0: LAG.check(h0)?, room: ROOM.check(room)?, sum: 0.0 })
    }

    /// Counts a segment.
    #[inline]
    pub fn add(&mut self, segment: &Segment) {
        self.sum += self.rate.over(segment);
    }

    /// Counts a stretch at one rate, in natural logarithms an hour.
    ///
    /// # Errors
    /// [`OutOfRange`] for a rate below zero or above 100.
    pub fn add_at(&mut self, rate: f64, time: Time) -> Result<(), OutOfRange> {
        self.sum += RATE.check(rate)? * time.value / 3600.0;
        Ok(())
    }

    /// The growth so far, log₁₀: never below zero.
    #[must_use]
    pub fn log10(&self) -> f64 {
        // A = M + ln(e^−M + e^−h0 − e^−M−h0), which loses no digits for small M or large h0.
        let (m, h0) = (self.sum, self.h0);
        let adjusted = m + libm::log(libm::exp(-m) - libm::exp(-h0) * libm::expm1(-m));
        let adjusted = if adjusted > 0.0 { adjusted } else { 0.0 };
        let ln_room = self.room * core::f64::consts::LN_10;
        // ln(N/N₀) = A − ln(1 + (e^A − 1)/e^room).
        let crowded = libm::log1p(libm::exp(-ln_room) * libm::expm1(adjusted));
        (adjusted - crowded) / core::f64::consts::LN_10
    }
}

/// A published set of parameters that was read complete, with the range it is for.
///
/// No lag is credited: bacteria that are used to the cold grow at once.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Model {
    /// The organism.
    pub organism: &'static str,
    /// The food it was measured in. It is for no other.
    pub food: &'static str,
    /// The rate.
    pub rate: Rate,
    /// The rate one published standard deviation slower and faster; `None` where no error was read.
    pub spread: Option<(Rate, Rate)>,
    /// The largest number, log₁₀ of CFU/g.
    pub most: f64,
    /// The temperatures it is for, °C.
    pub valid: (f64, f64),
}

/// What a model predicts: for information, never a proof.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Prediction {
    /// The growth, log₁₀.
    pub log10: f64,
    /// Between the slowest and the fastest rate that is published; `None` where no error was read.
    /// Foods and strains differ by more.
    pub between: Option<Range<f64>>,
}

impl Model {
    /// Predicts the growth over a record from a number at the start, log₁₀ of CFU/g.
    ///
    /// # Errors
    /// [`OutOfRange`] for a temperature that the model is not for, and for a start that cannot be.
    ///
    /// ```
    /// use greenweight::chill::growth_models;
    /// use greenweight::trace::{Point, Track};
    /// use greenweight::units::{Reading, Scale, days};
    ///
    /// let salmon = growth_models().find(|row| row.value.food.contains("salmon")).ok_or("none")?;
    /// let at = |day, c| -> Result<Point, Box<dyn std::error::Error>> {
    ///     Ok(Point::new(days(day), Reading::new(c, Scale::Celsius)?)?)
    /// };
    /// let mut track = Track::new();
    /// track.next(at(0.0, 4.0)?)?;
    /// let week = track.next(at(7.0, 4.0)?)?.ok_or("no segment")?;
    /// let predicted = salmon.value.predict(0.0, [week])?;
    /// assert!((predicted.log10 - 7.0 * 0.165).abs() < 0.01);
    /// // One deviation between strains is half as much again.
    /// assert!(predicted.between.is_some_and(|between| between.high() > 1.5 * predicted.log10));
    /// // In a warm kitchen it says nothing.
    /// let warm = track.next(at(8.0, 30.0)?)?.ok_or("no segment")?;
    /// assert!(salmon.value.predict(0.0, [warm]).is_err());
    /// # Ok::<(), Box<dyn std::error::Error>>(())
    /// ```
    pub fn predict(
        &self,
        start: f64,
        record: impl IntoIterator<Item = Segment>,
    ) -> Result<Prediction, OutOfRange> {
        let room = self.most - START.check(start)?;
        let growth = |rate| Growth::new(rate, 0.0, if room > 0.0 { room } else { 0.0 });
        let (slow, fast) = self.spread.unwrap_or((self.rate, self.rate));
        let mut all = [growth(self.rate)?, growth(slow)?, growth(fast)?];
        let valid =
            Bounds::new("temperature of this growth model", "°C", self.valid.0, self.valid.1);
        for segment in record {
            valid.check(segment.from().celsius())?;
            valid.check(segment.to().celsius())?;
            all.iter_mut().for_each(|growth| growth.add(&segment));
        }
        let [plain, slow, fast] = all.map(|growth| growth.log10());
        let between = self.spread.map(|_| Range::ordered(slow, fast));
        Ok(Prediction { log10: plain, between })
    }
}

/// The models whose parameters were read complete.
pub fn growth_models() -> impl Iterator<Item = &'static Cited<Model>> {
    GROWTH_MODELS.iter()
}

/// An exponential growth rate of *Listeria monocytogenes* at another temperature by its square-root
/// law, T_min −1.18 °C: EGR_T ((T − T_min)/(T₀ − T_min))². `None` at or below T_min.
///
/// ```
/// use greenweight::chill::listeria_rate_at;
/// use greenweight::units::{Reading, Scale};
///
/// // 5.4 log in 21 days at 8 °C are 0.1165 a day at 5 °C (printed: 0.116).
/// let celsius = |value| Reading::new(value, Scale::Celsius);
/// let rate = listeria_rate_at(5.4 / 21.0, celsius(8.0)?, celsius(5.0)?).ok_or("too cold")?;
/// assert!((rate - 0.1165).abs() < 0.0001);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[must_use]
pub fn listeria_rate_at(rate: f64, measured: Reading, at: Reading) -> Option<f64> {
    const LEAST: f64 = -1.18;
    let above = |reading: Reading| reading.on(Scale::Celsius).value() - LEAST;
    let (measured, at) = (above(measured), above(at));
    (measured > 0.0 && at > 0.0 && rate >= 0.0).then(|| rate * (at / measured) * (at / measured))
}
