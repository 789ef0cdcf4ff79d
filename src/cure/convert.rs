use crate::level::{
    Agent, Basis, Level, NitrateIon, NitrateSalts, NitriteIon, NitriteSalts, OnGreenWeight,
    OnMeatAndPickle, PotassiumNitrate, PotassiumNitrite, SodiumNitrate, SodiumNitrite,
};

/// A single substance, of known molar mass.
pub trait Substance: Agent {
    /// Grams per mole, from the five-figure atomic weights N 14.007, O 15.999,
    /// Na 22.990, K 39.098.
    const MOLAR_MASS: f64;
}

macro_rules! molar_mass {
    ($($name:ident = $row:ident;)+) => {
        $(impl Substance for $name {
            const MOLAR_MASS: f64 = super::table::$row.value;
        })+
    };
}

molar_mass! {
    SodiumNitrite = MOLAR_MASS_NANO2;
    PotassiumNitrite = MOLAR_MASS_KNO2;
    SodiumNitrate = MOLAR_MASS_NANO3;
    PotassiumNitrate = MOLAR_MASS_KNO3;
    NitriteIon = MOLAR_MASS_NO2;
    NitrateIon = MOLAR_MASS_NO3;
}

impl<A: Substance, B: Basis> Level<A, B> {
    /// The same amount of substance weighed as another salt or ion:
    /// level × M(to) / M(from).
    fn weighed_as<C: Substance>(self) -> Level<C, B> {
        Level::of(self.mg_per_kg() * C::MOLAR_MASS / A::MOLAR_MASS)
    }
}

macro_rules! weighed_as {
    ($($(#[$doc:meta])* $from:ident => $name:ident -> $to:ident;)+) => {
        $(impl<B: Basis> Level<$from, B> {
            $(#[$doc])*
            #[must_use]
            pub fn $name(self) -> Level<$to, B> {
                self.weighed_as()
            }
        })+
    };
}

weighed_as! {
    /// The sodium nitrite that holds this nitrite ion: × 68.995 / 46.005 = 1.499 73.
    NitriteIon => as_sodium_nitrite -> SodiumNitrite;
    /// The sodium nitrite that holds the same nitrite: × 68.995 / 85.103 = 0.810 72.
    PotassiumNitrite => as_sodium_nitrite -> SodiumNitrite;
    /// The nitrite ion in this salt: × 46.005 / 68.995 = 0.666 79.
    SodiumNitrite => as_nitrite_ion -> NitriteIon;
    /// The nitrite ion in this salt: × 46.005 / 85.103 = 0.540 58.
    PotassiumNitrite => as_nitrite_ion -> NitriteIon;
    /// The potassium nitrite that holds the same nitrite: × 85.103 / 68.995 = 1.233 47.
    SodiumNitrite => as_potassium_nitrite -> PotassiumNitrite;
    /// The sodium nitrate that holds this nitrate ion: × 84.994 / 62.004 = 1.370 78.
    NitrateIon => as_sodium_nitrate -> SodiumNitrate;
    /// The sodium nitrate that holds the same nitrate: × 84.994 / 101.102 = 0.840 68.
    PotassiumNitrate => as_sodium_nitrate -> SodiumNitrate;
    /// The nitrate ion in this salt: × 62.004 / 84.994 = 0.729 51.
    SodiumNitrate => as_nitrate_ion -> NitrateIon;
    /// The nitrate ion in this salt: × 62.004 / 101.102 = 0.613 28.
    PotassiumNitrate => as_nitrate_ion -> NitrateIon;
}

impl<B: Basis> Level<NitrateIon, B> {
    /// The sodium nitrite that holds as much nitrogen as this nitrate: × 68.995 / 62.004.
    /// Where a rule counts nitrate and nitrite together as sodium nitrite.
    #[must_use]
    pub fn as_nitrogen_in_sodium_nitrite(self) -> Level<SodiumNitrite, B> {
        self.weighed_as()
    }
}

macro_rules! as_weighed {
    ($($from:ident -> $to:ident;)+) => {
        $(impl<B: Basis> Level<$from, B> {
            /// The salt as weighed, for a rule that gives the sodium and the potassium
            /// salt one figure by weight.
            #[must_use]
            pub const fn as_weighed(self) -> Level<$to, B> {
                Level::of(self.mg_per_kg())
            }
        })+
    };
}

as_weighed! {
    SodiumNitrite -> NitriteSalts;
    PotassiumNitrite -> NitriteSalts;
    SodiumNitrate -> NitrateSalts;
    PotassiumNitrate -> NitrateSalts;
}

impl<A: Agent> Level<A, OnMeatAndPickle> {
    /// The level as ingoing: what the second immersion method holds against a limit on
    /// green weight, meat and pickle having come to the same level.
    #[must_use]
    pub const fn as_ingoing(self) -> Level<A, OnGreenWeight> {
        Level::of(self.mg_per_kg())
    }
}
