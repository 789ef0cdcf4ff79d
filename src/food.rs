//! What a food is, for the choice of a row.

/// The class of a food, as the tables draw their lines.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize), serde(rename_all = "kebab-case"))]
#[non_exhaustive]
pub enum Food {
    /// Ground or chopped meat, loaves and sausages.
    GroundMeat,
    /// Steaks, chops and roasts of beef, pork, veal, lamb, and whole muscle in general.
    WholeMeat,
    /// Pork belly that becomes bacon.
    Bacon,
    /// Fresh or smoked ham that is cooked here for the first time.
    RawHam,
    /// Ham cooked and packed in an inspected plant, to be reheated.
    PlantPackedHamReheated,
    /// Other fully cooked ham, to be reheated.
    OtherHamReheated,
    /// Whole or cut poultry.
    Poultry,
    /// Ground poultry, alone or mixed into other meat.
    GroundPoultry,
    /// Eggs.
    Eggs,
    /// Fish and shellfish.
    Fish,
    /// Leftovers.
    Leftovers,
    /// Casseroles.
    Casseroles,
    /// Cheese.
    Cheese,
    /// Sauces, creams and dips.
    Sauce,
}

impl Food {
    /// Every class.
    pub const ALL: [Self; 14] = [
        Self::GroundMeat,
        Self::WholeMeat,
        Self::Bacon,
        Self::RawHam,
        Self::PlantPackedHamReheated,
        Self::OtherHamReheated,
        Self::Poultry,
        Self::GroundPoultry,
        Self::Eggs,
        Self::Fish,
        Self::Leftovers,
        Self::Casseroles,
        Self::Cheese,
        Self::Sauce,
    ];

    /// Its key in tables and in recipe documents.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::GroundMeat => "ground-meat",
            Self::WholeMeat => "whole-meat",
            Self::Bacon => "bacon",
            Self::RawHam => "raw-ham",
            Self::PlantPackedHamReheated => "plant-packed-ham-reheated",
            Self::OtherHamReheated => "other-ham-reheated",
            Self::Poultry => "poultry",
            Self::GroundPoultry => "ground-poultry",
            Self::Eggs => "eggs",
            Self::Fish => "fish",
            Self::Leftovers => "leftovers",
            Self::Casseroles => "casseroles",
            Self::Cheese => "cheese",
            Self::Sauce => "sauce",
        }
    }

    /// The class with that key.
    #[must_use]
    pub fn from_key(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|food| food.key() == key)
    }

    /// Whether it is meat that is cooked here for the first time, so that which animal it
    /// is from decides.
    #[must_use]
    pub const fn is_raw_meat(self) -> bool {
        matches!(self, Self::GroundMeat | Self::WholeMeat | Self::Bacon | Self::RawHam)
    }

    /// Whether it is ground or chopped.
    #[must_use]
    pub const fn is_ground(self) -> bool {
        matches!(self, Self::GroundMeat | Self::GroundPoultry)
    }

    /// Whether it is the flesh of mammals or birds.
    #[must_use]
    pub const fn is_meat(self) -> bool {
        !matches!(self, Self::Eggs | Self::Fish | Self::Casseroles | Self::Cheese | Self::Sauce)
    }
}
