//! Salt: on green weight, on the mix, in the finished product and in its water; brines; and
//! the water activity of salt water.
//!
//! | symbol | meaning | unit |
//! |---|---|---|
//! | p | strength of a brine, or salt of a mix | % by mass |
//! | S, W | salt and moisture of a product | % of it |
//! | M | meat, or everything else in a mix | kg |
//! | V, N | added water, all the salt | kg |
//! | w | moisture of the meat, as a share | |
//! | L | share of weight lost | |
//! | a | everything added, as a share of green weight | |
//! | m | moles of salt to the kilogram of water | mol/kg |
//!
//! Two percent of salt is four different things, and each is a type:
//!
//! | type of the level | salt in |
//! |---|---|
//! | [`OnGreenWeight`](crate::level::OnGreenWeight) | the meat before anything is added |
//! | [`OnProductAsMade`](crate::level::OnProductAsMade) | the whole mix |
//! | [`OnFinishedWeight`](crate::level::OnFinishedWeight) | the finished product |
//! | [`InWaterPhase`](crate::level::InWaterPhase) | the water of the finished product |
//!
//! ```compile_fail,E0308
//! use greenweight::cure::{Level, OnGreenWeight, SodiumChloride};
//! use greenweight::level::InWaterPhase;
//! let on_meat = Level::<SodiumChloride, OnGreenWeight>::percent(2.5)?;
//! let in_water = Level::<SodiumChloride, InWaterPhase>::percent(3.5)?;
//! assert!(on_meat < in_water);
//! # Ok::<(), greenweight::range::OutOfRange>(())
//! ```
//!
//! # The tables
#![doc = include_str!("../../references/pages/salt/salometer.md")]
#![doc = include_str!("../../references/pages/salt/solubility.md")]
#![doc = include_str!("../../references/pages/salt/water-activity.md")]

mod activity;
mod make;
mod phase;
mod strength;
#[rustfmt::skip]
mod table;

pub use activity::{
    AtMostActivity, Pitzer, SaturatedActivity, SaturatedHumidity, TabledActivity,
    osmotic_coefficient, saturated_activity, saturated_humidity, water_activity,
    water_activity_by_short_formula, water_activity_of, water_activity_together,
};
pub use make::{Moisture, Tub, in_pumped, mixed, pumped_in, salt_for, strengthen, weaken};
pub use phase::{
    Added, Loss, after_loss, for_water_phase, in_water_phase, moisture_after_loss, of_green,
    of_mix, plain_salt, salt_of_mix, salt_on_green,
};
pub use strength::{
    Brine, Density, FreezingPoint, Salometer, Solubility, SpecificVolume, solubility_row,
};
pub use table::{
    DENSITY, FREEZING_POINT, MOLAR_MASS_NACL, MOLAR_MASS_WATER, PITZER,
    SALOMETER_CANNING_GRADING_SCALE, SALOMETER_FSIS_TRAINING_TEXT,
    SALOMETER_MODERN_SOLUBILITY_AT_60_F, SALOMETER_SATURATION_AT_60_F,
    SALOMETER_SATURATION_TAKEN_BY_THE_FSRE_TEXT, SALOMETER_STANDARD_SCALE,
    SALOMETER_UK_BRINEOMETER, SALOMETER_USDA_1924, SATURATED_ACTIVITY, SATURATED_HUMIDITY,
    SOLUBILITY, SPECIFIC_VOLUME, USUAL_LEAST, USUAL_MOST, WATER, WATER_ACTIVITY,
};
