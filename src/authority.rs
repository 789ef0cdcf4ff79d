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
    /// United States, home kitchens: the charts of the federal agencies for consumers.
    UsConsumer,
    /// United States, fish: the guidance of the Food and Drug Administration.
    UsFda,
    /// United States, State of Maine, smoked fish.
    UsMaine,
    /// Canada, Province of Ontario, fish plants.
    Ontario,
}

impl Authority {
    /// Every authority.
    pub const ALL: [Self; 5] =
        [Self::UsFsis, Self::UsConsumer, Self::UsFda, Self::UsMaine, Self::Ontario];

    /// Its key in tables and in recipe documents.
    #[must_use]
    pub const fn key(self) -> &'static str {
        match self {
            Self::UsFsis => "us-fsis",
            Self::UsConsumer => "us-consumer",
            Self::UsFda => "us-fda",
            Self::UsMaine => "us-maine",
            Self::Ontario => "ontario",
        }
    }

    /// The authority with that key.
    #[must_use]
    pub fn from_key(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|authority| authority.key() == key)
    }
}
