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
