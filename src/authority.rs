//! Whose rules a recipe is held against.

/// A body whose figures a recipe can be held against. Never a default: the caller
/// names one.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[cfg_attr(feature = "serde", derive(serde::Serialize), serde(rename_all = "kebab-case"))]
#[non_exhaustive]
pub enum Authority {
    /// United States, meat and poultry under federal inspection: 9 CFR and the
    /// guidelines of the Food Safety and Inspection Service.
    UsFsis,
    /// United States, shops and restaurants: the Food Code of 2022, where a state adopted it.
    #[cfg_attr(feature = "serde", serde(rename = "us-food-code-2022"))]
    UsFoodCode2022,
    /// The same, edition of 2017.
    #[cfg_attr(feature = "serde", serde(rename = "us-food-code-2017"))]
    UsFoodCode2017,
    /// The same, editions of 2009 and 2013.
    #[cfg_attr(feature = "serde", serde(rename = "us-food-code-2013"))]
    UsFoodCode2013,
    /// United States, home kitchens: the charts of the federal agencies for consumers.
    UsConsumer,
    /// United States, fish: the guidance of the Food and Drug Administration.
    UsFda,
    /// United States, State of Maine, smoked fish.
    UsMaine,
    /// Canada, Province of Ontario, fish plants.
    Ontario,
    /// European Union.
    EuropeanUnion,
    /// Great Britain.
    GreatBritain,
    /// Denmark, its stricter national limits.
    Denmark,
    /// Canada.
    Canada,
    /// Codex Alimentarius.
    Codex,
    /// Australia and New Zealand.
    AustraliaNewZealand,
    /// Japan.
    Japan,
}

impl Authority {
    /// Every authority.
    pub const ALL: [Self; 15] = [
        Self::UsFsis,
        Self::UsFoodCode2022,
        Self::UsFoodCode2017,
        Self::UsFoodCode2013,
        Self::UsConsumer,
        Self::UsFda,
        Self::UsMaine,
        Self::Ontario,
        Self::EuropeanUnion,
        Self::GreatBritain,
        Self::Denmark,
        Self::Canada,
        Self::Codex,
        Self::AustraliaNewZealand,
        Self::Japan,
    ];

    /// Its key in tables and in recipe documents.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::UsFsis => "us-fsis",
            Self::UsFoodCode2022 => "us-food-code-2022",
            Self::UsFoodCode2017 => "us-food-code-2017",
            Self::UsFoodCode2013 => "us-food-code-2013",
            Self::UsConsumer => "us-consumer",
            Self::UsFda => "us-fda",
            Self::UsMaine => "us-maine",
            Self::Ontario => "ontario",
            Self::EuropeanUnion => "european-union",
            Self::GreatBritain => "great-britain",
            Self::Denmark => "denmark",
            Self::Canada => "canada",
            Self::Codex => "codex",
            Self::AustraliaNewZealand => "australia-new-zealand",
            Self::Japan => "japan",
        }
    }

    /// Whether it is an edition of the Food Code.
    #[must_use]
    pub const fn is_food_code(self) -> bool {
        matches!(self, Self::UsFoodCode2022 | Self::UsFoodCode2017 | Self::UsFoodCode2013)
    }

    /// The authority with that key.
    #[must_use]
    pub fn from_key(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|authority| authority.key() == key)
    }
}

/// A kind of kitchen in a country, and whose rules it is held to. It chooses authorities and
/// nothing else: a document may name more of them beside it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
#[non_exhaustive]
pub struct Profile {
    /// Its key in a document: `country/kitchen`.
    pub key: &'static str,
    /// Which kitchen that is.
    pub says: &'static str,
    /// Whose rules it is held to.
    pub authorities: &'static [Authority],
}

const fn profile(
    key: &'static str,
    says: &'static str,
    authorities: &'static [Authority],
) -> Profile {
    Profile { key, says, authorities }
}

const HOME: &str = "a home kitchen; the figures held here do not tell kitchens apart";
const SHOP: &str = "a shop or restaurant; the figures held here do not tell kitchens apart";
const PLANT: &str = "an inspected plant; the figures held here do not tell kitchens apart";

impl Profile {
    /// Every profile.
    pub const ALL: [Self; 25] = {
        use Authority::*;
        [
            profile("us/home", "a home kitchen that cures no meat", &[UsConsumer, UsFda]),
            profile("us/home-curing", "a home kitchen that cures meat", &[UsConsumer, UsFsis]),
            profile("us/shop", "a shop or restaurant that cures no meat", &[UsFoodCode2022]),
            profile("us/shop-curing", "a shop that cures meat", &[UsFoodCode2022, UsFsis]),
            profile("us/plant", "an inspected plant", &[UsFsis]),
            profile("us/fish-plant", "a plant that makes smoked fish", &[UsFda]),
            profile("canada/home", HOME, &[Canada]),
            profile("canada/shop", SHOP, &[Canada]),
            profile("canada/plant", PLANT, &[Canada]),
            profile("canada/ontario-fish-plant", "a fish plant of Ontario", &[Canada, Ontario]),
            profile("european-union/home", HOME, &[EuropeanUnion]),
            profile("european-union/shop", SHOP, &[EuropeanUnion]),
            profile("european-union/plant", PLANT, &[EuropeanUnion]),
            profile("denmark/home", HOME, &[Denmark, EuropeanUnion]),
            profile("denmark/shop", SHOP, &[Denmark, EuropeanUnion]),
            profile("denmark/plant", PLANT, &[Denmark, EuropeanUnion]),
            profile("great-britain/home", HOME, &[GreatBritain]),
            profile("great-britain/shop", SHOP, &[GreatBritain]),
            profile("great-britain/plant", PLANT, &[GreatBritain]),
            profile("australia-new-zealand/home", HOME, &[AustraliaNewZealand]),
            profile("australia-new-zealand/shop", SHOP, &[AustraliaNewZealand]),
            profile("australia-new-zealand/plant", PLANT, &[AustraliaNewZealand]),
            profile("japan/home", HOME, &[Japan]),
            profile("japan/shop", SHOP, &[Japan]),
            profile("japan/plant", PLANT, &[Japan]),
        ]
    };
}
