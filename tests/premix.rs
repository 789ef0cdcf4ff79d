//! Levels and premixes at their edges.

use greenweight::cure::{CureError, Level, OnGreenWeight, Premix, PremixMass};
use greenweight::level::SodiumNitrite;
use greenweight::range::Measured;
use greenweight::units::kilograms;

type Nitrite = Level<SodiumNitrite, OnGreenWeight>;

fn level(mg_per_kg: f64) -> Nitrite {
    Level::new(mg_per_kg).unwrap()
}

#[test]
fn levels_are_equal_by_their_figure_and_say_what_they_are_a_level_of() {
    assert_eq!(level(156.0), level(156.0));
    assert_ne!(level(156.0), level(200.0));
    assert_eq!((level(200.0) - level(156.0)).mg_per_kg(), 44.0);
    let shown = format!("{:?}", level(156.0));
    assert!(shown.contains("156 mg/kg") && shown.contains("sodium nitrite"), "{shown}");
    assert!(level(156.0).is_finite());
}

#[test]
fn a_premix_holds_no_more_than_the_whole_of_agents_and_salt_together() {
    let percent = |of: f64| Level::percent(of).unwrap();
    let nitrite = Premix::new().with_sodium_nitrite(percent(60.0)).unwrap();
    assert!(matches!(
        nitrite.with_salt(Level::percent(50.0).unwrap()),
        Err(CureError::MoreThanWhole { sum }) if sum == 1.1e6
    ));
    assert!(matches!(
        nitrite.with_potassium_nitrate(Level::percent(50.0).unwrap()),
        Err(CureError::MoreThanWhole { .. })
    ));
    assert!(nitrite.with_salt(Level::percent(40.0).unwrap()).is_ok());
}

// Two lots, each within the range; only their sum is held against it.
#[test]
fn large_lots_of_premix_mix_as_small_ones_do() {
    let strong = Premix::new().with_sodium_nitrite(Level::percent(6.25).unwrap()).unwrap();
    let tonnes = |t: f64| PremixMass::new(kilograms(t * 1000.0)).unwrap();
    let mixed = Premix::mixed(tonnes(50.0), &strong, tonnes(50.0), &Premix::new()).unwrap();
    assert_eq!(mixed.sodium_nitrite().mg_per_kg(), 31_250.0);
}
