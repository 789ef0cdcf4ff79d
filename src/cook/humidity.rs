use uom::si::f64::{Mass, Time};

use super::table::{FSIS_HUMIDITY, FSIS_LARGE_PIECE};
use crate::cite::Cited;
use crate::finding::Limit;
use crate::range::{OutOfRange, bounds};
use crate::units::{PrintedTemperature, Reading, seconds};

bounds! {
    COOK: "time of a cook", "s", 0.0, 1e7;
}

/// A way of keeping the surface of a product from drying while it cooks, so that the times of
/// the tables hold for it.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct HumidityOption {
    /// For this share of the cooking time,
    pub share_of_the_cook: f64,
    /// and at least for so long.
    pub at_least: Time,
    /// Only for a product that ends at this temperature or above.
    pub endpoint: Option<PrintedTemperature>,
    /// The relative humidity in percent, where the row names one.
    pub relative_humidity: Option<f64>,
    /// Only for a cook that takes so long or longer.
    pub shortest_cook: Time,
}

/// A piece so large, in an oven so hot, that the row asks for no humidity.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct LargePiece {
    /// The mass, at least.
    pub mass: Mass,
    /// The temperature of the oven, at least.
    pub oven: PrintedTemperature,
}

/// What keeps the surface moist during a step.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub enum Moisture {
    /// Live steam, for the time of the step (option 1).
    Steam,
    /// A sealed oven, doors and dampers closed (option 2).
    SealedOven,
    /// Air of this step's relative humidity (options 3 and 4).
    HumidAir,
    /// Immersed in a liquid.
    Liquid,
    /// In a sealed bag that lets no moisture through.
    SealedBag,
    /// In a casing that holds moisture: natural, cellulose, collagen, fibrous, plastic.
    Casing,
    /// Over direct heat: grill, broiler, flame or pan.
    DirectHeat,
}

impl Moisture {
    /// Every one.
    pub const ALL: [Self; 7] = [
        Self::Steam,
        Self::SealedOven,
        Self::HumidAir,
        Self::Liquid,
        Self::SealedBag,
        Self::Casing,
        Self::DirectHeat,
    ];

    /// Its key in a recipe document.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::Steam => "steam",
            Self::SealedOven => "sealed-oven",
            Self::HumidAir => "humid-air",
            Self::Liquid => "liquid",
            Self::SealedBag => "sealed-bag",
            Self::Casing => "casing",
            Self::DirectHeat => "direct-heat",
        }
    }

    /// Whether the guideline asks for no humidity at all (p. 31 to 33).
    #[must_use]
    pub const fn exempt(self) -> bool {
        matches!(self, Self::Liquid | Self::SealedBag | Self::Casing | Self::DirectHeat)
    }
}

/// For how long an option must keep a cook humid: the greater of its share of the cooking time
/// and its least time. Options are counted from 1, as the guideline prints them; `None` for
/// another number, and for a cook the option does not serve (too short, or ending too cold).
///
/// # Errors
/// [`OutOfRange`] for a cooking time below zero or beyond a hundred days.
///
/// ```
/// use greenweight::cook::humid_time;
/// use greenweight::units::{Reading, Scale, hours};
///
/// let at = |f| Reading::new(f, Scale::Fahrenheit);
/// assert_eq!(humid_time(1, hours(6.0), at(150.0)?)?, Some(hours(3.0)));
/// assert_eq!(humid_time(3, hours(3.0), at(140.0)?)?, Some(hours(1.0)));
/// // Steam does not serve a product that ends below 145 °F.
/// assert_eq!(humid_time(1, hours(6.0), at(140.0)?)?, None);
/// # Ok::<(), greenweight::range::OutOfRange>(())
/// ```
pub fn humid_time(
    option: usize,
    cook: Time,
    endpoint: Reading,
) -> Result<Option<Time>, OutOfRange> {
    let cook = COOK.check(cook.value)?;
    let Some(row) = option.checked_sub(1).and_then(|n| FSIS_HUMIDITY.get(n)) else {
        return Ok(None);
    };
    let hot = |least: PrintedTemperature| {
        Limit::AtLeast(least.on(endpoint.scale())).met_by(endpoint) == Some(true)
    };
    let serves = cook >= row.value.shortest_cook.value && row.value.endpoint.is_none_or(hot);
    let time = (row.value.share_of_the_cook * cook).max(row.value.at_least.value);
    Ok(serves.then(|| seconds(time)))
}

/// The options that serve a cook, with their rows.
pub fn humidity_options(
    cook: Time,
    endpoint: Reading,
) -> impl Iterator<Item = (usize, Time, &'static Cited<HumidityOption>)> {
    FSIS_HUMIDITY.iter().enumerate().filter_map(move |(n, row)| {
        let option = n.wrapping_add(1);
        let time = humid_time(option, cook, endpoint).ok()??;
        Some((option, time, row))
    })
}

/// Whether a piece is so large, and the oven so hot, that no humidity is asked for.
#[must_use]
pub fn large_piece(mass: Mass, oven: Reading) -> bool {
    let row = &FSIS_LARGE_PIECE.value;
    let hot = Limit::AtLeast(row.oven.on(oven.scale())).met_by(oven) == Some(true);
    hot && Limit::AtLeast(row.mass).met_by(mass) == Some(true)
}
