//! How long a pack takes to freeze through, and how long frozen food is at its best.

use uom::si::f64::{Length, Time};

use super::table::{EQUIVALENT_TIME, PRACTICAL_LIFE};
use crate::cite::Cited;
use crate::finding::Limit;
use crate::range::{OutOfRange, Range, bounds};
use crate::units::{Reading, Scale, seconds};

bounds! {
    SIZE: "thickness or diameter", "m", 1e-3, 2.0;
    SURFACE: "heat transfer at the surface", "W/(m² K)", 0.1, 5000.0;
    CONDUCTIVITY: "conductivity", "W/(m K)", 0.01, 10.0;
    WRAPPING: "thickness of the wrapping", "m", 0.0, 0.1;
    HEAT: "latent heat by volume", "J/m³", 1e6, 4e8;
    CAPACITY: "heat capacity by volume", "J/(m³ K)", 5e5, 5e6;
    BIOT: "Biot number", "", 0.2, 20.0;
    STEFAN: "Stefan number", "", 0.15, 0.35;
    PLANCK: "Plank number", "", 0.0, 0.55;
    AROUND: "temperature around it, for this method", "°C", -45.0, -15.0;
    LIFE: "storage life", "s", 1.0, 1e10;
}

/// The shape of what is frozen.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Shape {
    /// A slab that freezes from both sides; its size is its thickness.
    Slab,
    /// A long cylinder; its size is its diameter.
    Cylinder,
    /// A sphere; its size is its diameter.
    Sphere,
}

impl Shape {
    /// How many times faster than a slab of the same size it freezes.
    const fn times(self) -> f64 {
        match self {
            Self::Slab => 1.0,
            Self::Cylinder => 2.0,
            Self::Sphere => 3.0,
        }
    }
}

/// Why no freezing time is given.
#[derive(Debug, Clone, Copy, PartialEq, thiserror::Error)]
#[non_exhaustive]
pub enum NotFreezing {
    /// The middle can never get as cold as that.
    #[error(
        "the air is not colder than what it is to freeze: {around:.1} °C against {wanted:.1} °C"
    )]
    TooWarm {
        /// The temperature around it, °C.
        around: f64,
        /// The temperature that the middle is to have, °C.
        wanted: f64,
    },
    /// A figure outside the range of the method.
    #[error(transparent)]
    OutOfRange(#[from] OutOfRange),
}

/// A pack in the cold: its shape, and how heat leaves it.
///
/// ```
/// use greenweight::store::{Pack, Shape};
/// use greenweight::units::{Reading, Scale, centimeters};
///
/// let celsius = |value| Reading::new(value, Scale::Celsius);
/// // A printed example: meat 10 cm thick between plates, behind 1 mm of cardboard.
/// let pack = Pack::new(Shape::Slab, centimeters(10.0), 600.0, 1.6)?
///     .wrapped(centimeters(0.1), 0.06)?;
/// let time = pack.by_plank(1090.0 * 256e3, celsius(-2.0)?, celsius(-34.0)?)?;
/// assert!((time.value / 3600.0 - 4.11).abs() < 0.01);
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Pack {
    shape: Shape,
    size: f64,
    surface: f64,
    frozen: f64,
}

/// What freezing takes, by volume.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Heats {
    /// Heat capacity before it freezes, J/(m³ K).
    pub unfrozen: f64,
    /// Latent heat, J/m³: that of its water.
    pub latent: f64,
    /// Heat capacity frozen, J/(m³ K).
    pub frozen: f64,
}

impl Heats {
    /// What stands in for the latent heat in Plank's equation, so that it counts what comes before
    /// and after freezing too: c (T_start − T_f) + L + c_frozen (T_f − T_mean), with the mean of
    /// what is frozen, J/m³.
    ///
    /// ```
    /// use greenweight::store::Heats;
    /// use greenweight::units::{Reading, Scale};
    ///
    /// // A printed example, at 1000 kg/m³: 39 + 256 + 27 MJ/m³.
    /// let meat = Heats { unfrozen: 3.22e6, latent: 2.56e8, frozen: 1.67e6 };
    /// let c = |value| Reading::new(value, Scale::Celsius);
    /// let heat = meat.in_place_of_latent(c(10.0)?, c(-2.0)?, c(-18.0)?);
    /// assert!((heat / 1e6 - 321.4).abs() < 0.1);
    /// # Ok::<(), greenweight::range::OutOfRange>(())
    /// ```
    #[must_use]
    pub fn in_place_of_latent(&self, start: Reading, freezing: Reading, mean: Reading) -> f64 {
        let (start, freezing, mean) = (celsius(start), celsius(freezing), celsius(mean));
        self.unfrozen * (start - freezing) + self.latent + self.frozen * (freezing - mean)
    }
}

/// From where to where it freezes, and in what.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Span {
    /// Its temperature at the start.
    pub start: Reading,
    /// The temperature that its middle is to have.
    pub middle: Reading,
    /// The temperature around it.
    pub around: Reading,
}

fn celsius(reading: Reading) -> f64 {
    reading.on(Scale::Celsius).value()
}

fn colder(around: f64, wanted: f64) -> Result<(), NotFreezing> {
    if around < wanted { Ok(()) } else { Err(NotFreezing::TooWarm { around, wanted }) }
}

/// ΔH₁/ΔT₁ + ΔH₂/ΔT₂ of the simplified equation.
fn heat_over_difference(
    heats: Heats,
    start: f64,
    middle: f64,
    around: f64,
) -> Result<f64, NotFreezing> {
    let unfrozen = CAPACITY.check(heats.unfrozen)?;
    let (latent, frozen) = (HEAT.check(heats.latent)?, CAPACITY.check(heats.frozen)?);
    let mean = 1.8 + 0.263 * middle + 0.105 * around;
    colder(around, mean)?;
    colder(mean, start)?;
    let first = unfrozen * (start - mean) / ((start + mean) * 0.5 - around);
    let second = (latent + frozen * (mean - middle)) / (mean - around);
    Ok(first + second)
}

impl Pack {
    /// A pack of a shape and size, with the heat transfer at its surface, W/(m² K), and its
    /// conductivity when frozen, W/(m K).
    ///
    /// # Errors
    /// [`OutOfRange`] for a size outside 1 mm to 2 m, a transfer outside 0.1 to 5000 and a
    /// conductivity outside 0.01 to 10.
    pub fn new(
        shape: Shape,
        size: Length,
        surface: f64,
        conductivity: f64,
    ) -> Result<Self, OutOfRange> {
        Ok(Self {
            shape,
            size: SIZE.check(size.value)?,
            surface: SURFACE.check(surface)?,
            frozen: CONDUCTIVITY.check(conductivity)?,
        })
    }

    /// The same behind a layer of wrapping: 1/h′ = 1/h + x/k.
    ///
    /// # Errors
    /// [`OutOfRange`] for a layer thicker than 10 cm or a conductivity outside 0.01 to 10 W/(m K).
    pub fn wrapped(self, thickness: Length, conductivity: f64) -> Result<Self, OutOfRange> {
        let layer = WRAPPING.check(thickness.value)? / CONDUCTIVITY.check(conductivity)?;
        Ok(Self { surface: 1.0 / (1.0 / self.surface + layer), ..self })
    }

    /// Plank: t = (ρL/(T_f − T_a)) (P D/h + R D²/k), with P and R 1/2 and 1/8 for a slab, half of
    /// them for a cylinder and a third for a sphere.
    ///
    /// It begins at the freezing point and ends when the last of it is frozen: what it takes to get
    /// there, and to get colder, is left out, so the time is too short.
    ///
    /// # Errors
    /// [`NotFreezing`] for air that is not colder than the freezing point, and for a latent heat
    /// outside 1 to 400 MJ/m³.
    pub fn by_plank(
        &self,
        latent: f64,
        freezing: Reading,
        around: Reading,
    ) -> Result<Time, NotFreezing> {
        let (freezing, around) = (celsius(freezing), celsius(around));
        colder(around, freezing)?;
        let heat = HEAT.check(latent)? / (freezing - around);
        Ok(seconds(heat * self.resistance(0.5, 0.125) / self.shape.times()))
    }

    fn resistance(&self, p: f64, r: f64) -> f64 {
        p * self.size / self.surface + r * self.size * self.size / self.frozen
    }

    /// The simplified equation of 1986: t = R/(E h) (ΔH₁/ΔT₁ + ΔH₂/ΔT₂)(1 + Bi/2), with half the
    /// size, a mean freezing temperature 1.8 + 0.263 T_c + 0.105 T_a, and E 1, 2 or 3.
    ///
    /// The time is a range of 10 percent either way, which is as good as such methods are. Its
    /// constants are from memory. It says when a pack may be frozen through, and nothing of safe
    /// cooling or of parasites.
    ///
    /// # Errors
    /// [`NotFreezing`] where the middle cannot get so cold, for air outside −45 to −15 °C, for a
    /// Biot number by full size outside 0.2 to 20, and for heats that cannot be.
    pub fn freezing_time(&self, heats: Heats, span: Span) -> Result<Range<Time>, NotFreezing> {
        let (start, middle, around) =
            (celsius(span.start), celsius(span.middle), celsius(span.around));
        colder(around, middle)?;
        AROUND.check(around)?;
        BIOT.check(self.surface * self.size / self.frozen)?;
        let per_meter = heat_over_difference(heats, start, middle, around)?;
        let half = self.size * 0.5;
        let biot = self.surface * half / self.frozen;
        let time = half / (self.shape.times() * self.surface) * per_meter * (1.0 + biot * 0.5);
        Ok(Range::ordered(seconds(time * 0.9), seconds(time * 1.1)))
    }

    /// The regressions of 1977 to 1984 for a slab: Plank's equation with the enthalpy down to −10 °C
    /// and P and R that depend on the Biot, Plank and Stefan numbers, then a correction for a middle
    /// that is to be colder or warmer than −10 °C. A range of 10 percent either way; from memory.
    ///
    /// `enthalpy` is that between the freezing point and −10 °C, J/m³.
    ///
    /// # Errors
    /// [`NotFreezing`] where the middle cannot get so cold, and outside the ranges of the method: Biot
    /// 0.2 to 20, Stefan 0.15 to 0.35, Plank 0 to 0.55, air −45 to −15 °C.
    pub fn slab_by_regression(
        &self,
        heats: Heats,
        enthalpy: f64,
        freezing: Reading,
        span: Span,
    ) -> Result<Range<Time>, NotFreezing> {
        let (start, middle, around) =
            (celsius(span.start), celsius(span.middle), celsius(span.around));
        let freezing = celsius(freezing);
        colder(around, middle)?;
        colder(around, -10.0)?;
        AROUND.check(around)?;
        let enthalpy = HEAT.check(enthalpy)?;
        let biot = BIOT.check(self.surface * self.size / self.frozen)?;
        let stefan =
            STEFAN.check(CAPACITY.check(heats.frozen)? * (freezing - around) / enthalpy)?;
        let plank =
            PLANCK.check(CAPACITY.check(heats.unfrozen)? * (start - freezing) / enthalpy)?;
        let p = 0.5072 + 0.2018 * plank + stefan * (0.3224 * plank + 0.0105 / biot + 0.0681);
        let r = 0.1684 + stefan * (0.2740 * plank - 0.0135);
        let to_minus_ten = enthalpy / (freezing - around) * self.resistance(p, r);
        // 1.65 carries W/(m K).
        let rest = libm::log((middle - around) / (-10.0 - around));
        let time = to_minus_ten * (1.0 - 1.65 * stefan / self.frozen * rest);
        Ok(Range::ordered(seconds(time * 0.9), seconds(time * 1.1)))
    }

    /// The thickest pack of this kind that is frozen through in a time, by [`Self::freezing_time`] at
    /// its longest.
    ///
    /// # Errors
    /// As for [`Self::freezing_time`], of the pack that is found.
    pub fn thickest(&self, heats: Heats, span: Span, within: Time) -> Result<Self, NotFreezing> {
        let (start, middle, around) =
            (celsius(span.start), celsius(span.middle), celsius(span.around));
        colder(around, middle)?;
        let per_meter = heat_over_difference(heats, start, middle, around)?;
        // 1.1 s R (1 + h R/(2k)) = t, for half the size R.
        let slope = 1.1 * per_meter / (self.shape.times() * self.surface);
        let bend = self.surface / (2.0 * self.frozen);
        let half = (libm::sqrt(1.0 + 4.0 * bend * within.value / slope) - 1.0) / (2.0 * bend);
        let found = Self { size: SIZE.check(2.0 * half)?, ..*self };
        found.freezing_time(heats, span)?;
        Ok(found)
    }

    /// Its thickness or diameter.
    #[must_use]
    pub fn size(&self) -> Length {
        crate::units::centimeters(self.size * 100.0)
    }
}

/// How long frozen food is at its best at a temperature: advice, never a limit.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct PracticalLife {
    /// The food.
    pub item: &'static str,
    /// What ends the time: `practical storage life`, `good`, `inedible`.
    pub criterion: &'static str,
    /// The temperature, °C.
    pub celsius: f64,
    /// The time; of a range its lower end.
    pub life: Time,
}

/// Storage life between two temperatures at which it was measured: its logarithm runs straight. `None`
/// for a temperature outside them, for two that are the same, and for a life that is not above zero.
///
/// ```
/// use greenweight::store::life_between;
/// use greenweight::units::{Reading, Scale, days};
///
/// let at = |c| Reading::new(c, Scale::Celsius);
/// // 6 months at −12 °C and 10 at −18 °C: 7.7 at −15 °C.
/// let life = life_between((at(-12.0)?, days(180.0)), (at(-18.0)?, days(300.0)), at(-15.0)?);
/// assert!(life.is_some_and(|life| (life.value / 86_400.0 / 30.0 - 7.746).abs() < 0.001));
/// # Ok::<(), greenweight::range::OutOfRange>(())
/// ```
#[must_use]
pub fn life_between(
    (at_a, a): (Reading, Time),
    (at_b, b): (Reading, Time),
    at: Reading,
) -> Option<Time> {
    let (ta, tb, t) = (celsius(at_a), celsius(at_b), celsius(at));
    let (a, b) = (LIFE.check(a.value).ok()?, LIFE.check(b.value).ok()?);
    let share = (ta - t) / (ta - tb);
    let inside = (0.0..=1.0).contains(&share);
    inside.then(|| seconds(a * libm::exp(share * libm::log(b / a))))
}

/// By how much ten kelvin shorten a storage life: (L₂/L₁)^(10/(T₁ − T₂)).
#[must_use]
pub fn q10((at_a, a): (Reading, Time), (at_b, b): (Reading, Time)) -> Option<f64> {
    let (a, b) = (LIFE.check(a.value).ok()?, LIFE.check(b.value).ok()?);
    let apart = celsius(at_a) - celsius(at_b);
    let q = libm::exp(10.0 / apart * libm::log(b / a));
    q.is_finite().then_some(q)
}

/// The storage life of an item at a temperature, from the rows on both sides. `None` outside the
/// temperatures of its rows, and above −5 °C.
#[must_use]
pub fn practical_life(item: &str, criterion: &str, at: Reading) -> Option<Time> {
    const WARMEST: f64 = -5.0;
    if Limit::AtMost(WARMEST).met_by(celsius(at)) != Some(true) {
        return None;
    }
    let rows = || {
        PRACTICAL_LIFE
            .iter()
            .filter(|row| row.value.item == item && row.value.criterion == criterion)
    };
    let nearest = |above: bool| {
        let side = rows().filter(|row| {
            if above { row.value.celsius >= celsius(at) } else { row.value.celsius <= celsius(at) }
        });
        side.reduce(|a, b| {
            let gap = |row: &Cited<PracticalLife>| (row.value.celsius - celsius(at)).abs();
            if gap(b) < gap(a) { b } else { a }
        })
    };
    let (warm, cold) = (nearest(true)?, nearest(false)?);
    let reading = |row: &Cited<PracticalLife>| Reading::new(row.value.celsius, Scale::Celsius).ok();
    if core::ptr::eq(warm, cold) {
        return Some(warm.value.life);
    }
    life_between((reading(warm)?, warm.value.life), (reading(cold)?, cold.value.life), at)
}

/// How much of its life frozen food has used up: the sum of times over lives, whatever their order.
/// At 1 it is past its best, and no less safe.
///
/// ```
/// use greenweight::store::LifeUsed;
/// use greenweight::units::{Reading, Scale, days};
///
/// let at = |c| Reading::new(c, Scale::Celsius);
/// let mut used = LifeUsed::of("ground beef", "practical storage life");
/// used.add(days(60.0), at(-18.0)?);
/// used.add(days(30.0), at(-12.0)?);
/// // 2 of 10 months and 1 of 6.
/// assert!(used.share().is_some_and(|share| (share - (0.2 + 1.0 / 6.0)).abs() < 1e-9));
/// used.add(days(1.0), at(5.0)?);
/// assert_eq!(used.share(), None);
/// # Ok::<(), greenweight::range::OutOfRange>(())
/// ```
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LifeUsed<'a> {
    item: &'a str,
    criterion: &'a str,
    share: Option<f64>,
}

impl<'a> LifeUsed<'a> {
    /// None of it.
    #[must_use]
    pub const fn of(item: &'a str, criterion: &'a str) -> Self {
        Self { item, criterion, share: Some(0.0) }
    }

    /// Counts a time at a temperature.
    pub fn add(&mut self, time: Time, at: Reading) {
        let life = practical_life(self.item, self.criterion, at);
        let known = life.filter(|_| time.value >= 0.0);
        self.share = self.share.zip(known).map(|(share, life)| share + time.value / life.value);
    }

    /// The share that is used; `None` once it was at a temperature of which nothing is known.
    #[must_use]
    pub const fn share(&self) -> Option<f64> {
        self.share
    }
}

/// A heating that counts like 10 minutes at 90 °C.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct EquivalentTime {
    /// The temperature, °C.
    pub celsius: f64,
    /// The time.
    pub time: Time,
}

/// How long food must be at a temperature to count like 10 minutes at 90 °C against non-proteolytic
/// *Clostridium botulinum*: the row at or below it. `None` below 80 °C.
///
/// The FDA's table for fish (`references/cook/fda-botulinum.toml`) asks longer below 90 °C: 51.8 minutes and
/// not 36 at 85 °C.
#[must_use]
pub fn equivalent_time(at: Reading) -> Option<&'static Cited<EquivalentTime>> {
    let reached = |row: &&Cited<EquivalentTime>| {
        Limit::AtLeast(row.value.celsius).met_by(celsius(at)) == Some(true)
    };
    EQUIVALENT_TIME.iter().rfind(reached)
}
