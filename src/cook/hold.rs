use uom::si::f64::Time;

use super::table::{
    FOOD_CODE, FOOD_CODE_2022, FOOD_CODE_2022_GROUND, FOOD_CODE_2022_OTHER_REHEAT,
    FOOD_CODE_2022_OTHER_REHEAT_PACKAGED, FOOD_CODE_2022_ROASTS, FOOD_CODE_GROUND,
    FOOD_CODE_ROASTS,
};
use crate::authority::Authority;
use crate::cite::Cited;
use crate::finding::Limit;
use crate::food::Food;
use crate::units::{PrintedTemperature, Reading};

/// A row that gives a temperature of the coldest part, and how long it is held.
#[derive(Debug, Clone, Copy, PartialEq)]
#[non_exhaustive]
pub struct Hold {
    /// The temperature, at least.
    pub temperature: PrintedTemperature,
    /// The time; zero where the row prints none. "Less than a second" stands as one second.
    pub time: Time,
}

/// The row of a table at or below a reading: never between two rows. `None` below the first.
///
/// ```
/// use greenweight::cook::{FOOD_CODE_2022_ROASTS, hold_row};
/// use greenweight::units::{Reading, Scale, minutes};
///
/// // 134 °F is not printed: the row of 133 counts.
/// let at_134 = Reading::new(134.0, Scale::Fahrenheit)?;
/// let row = hold_row(&FOOD_CODE_2022_ROASTS, at_134).ok_or("below the table")?;
/// assert_eq!(row.value.time, minutes(56.0));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
#[must_use]
pub fn hold_row(table: &'static [Cited<Hold>], inside: Reading) -> Option<&'static Cited<Hold>> {
    table.iter().rev().find(|row| {
        Limit::AtLeast(row.value.temperature.on(inside.scale())).met_by(inside) == Some(true)
    })
}

/// What an edition of the Food Code asks of a food that is cooked in a shop or restaurant, from
/// the coldest row; empty for a food it does not name, and for another authority.
///
/// States adopt editions at different times, so the edition is the authority. Where a class
/// holds foods with rows of their own, the longer rows count: a whole cut is held to the chart
/// of roasts and not to the 15 s of a steak, eggs to those that are not cooked to order.
///
/// ```
/// use greenweight::authority::Authority;
/// use greenweight::cook::food_code;
/// use greenweight::food::Food;
/// use greenweight::units::seconds;
///
/// let rows = |edition| food_code(edition, Food::GroundMeat, false);
/// // 155 °F: 17 s in 2022, 15 s in 2013.
/// assert_eq!(rows(Authority::UsFoodCode2022)[2].value.time, seconds(17.0));
/// assert_eq!(rows(Authority::UsFoodCode2013)[0].value.time, seconds(15.0));
/// // Any poultry in it makes it poultry.
/// assert_eq!(food_code(Authority::UsFoodCode2013, Food::GroundMeat, true)[0].row.key, "same-list-165f");
/// ```
#[must_use]
pub fn food_code(edition: Authority, food: Food, poultry: bool) -> &'static [Cited<Hold>] {
    use core::slice::from_ref;
    let [intact_2022, other_2022, bird_2022] = &FOOD_CODE_2022;
    let [intact_2017, other_2017, bird_2017, other_2013, bird_2013] = &FOOD_CODE;
    let (intact, other, bird, ground, roasts): (_, _, _, &[_], &[_]) = match edition {
        Authority::UsFoodCode2022 => {
            let (ground, roasts) = (&FOOD_CODE_2022_GROUND, &FOOD_CODE_2022_ROASTS);
            (intact_2022, other_2022, bird_2022, ground, roasts)
        }
        Authority::UsFoodCode2017 => {
            (intact_2017, other_2017, bird_2017, &FOOD_CODE_GROUND, &FOOD_CODE_ROASTS)
        }
        // Fifteen seconds where later editions have seventeen.
        Authority::UsFoodCode2013 => {
            (intact_2017, other_2013, bird_2013, from_ref(other_2013), &FOOD_CODE_ROASTS)
        }
        _ => return &[],
    };
    match food {
        Food::Leftovers | Food::OtherHamReheated => from_ref(&FOOD_CODE_2022_OTHER_REHEAT),
        Food::PlantPackedHamReheated => from_ref(&FOOD_CODE_2022_OTHER_REHEAT_PACKAGED),
        _ if poultry => from_ref(bird),
        Food::Poultry | Food::GroundPoultry | Food::Casseroles => from_ref(bird),
        Food::GroundMeat => ground,
        Food::WholeMeat | Food::Bacon | Food::RawHam => roasts,
        Food::Fish => from_ref(intact),
        Food::Eggs => from_ref(other),
        Food::Cheese | Food::Sauce => &[],
    }
}
