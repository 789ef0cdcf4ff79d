/// A substance that cures, as a type. A level of one does not compare with a level of
/// another.
pub trait Agent: Copy + core::fmt::Debug + private::Sealed + 'static {
    /// Its name.
    const NAME: &'static str;
}

/// What a level is divided by, as a type. Levels on different bases do not compare.
pub trait Basis: Copy + core::fmt::Debug + private::Sealed + 'static {
    /// Its name.
    const NAME: &'static str;
}

mod private {
    pub trait Sealed {}
}

macro_rules! kinds {
    ($kind:ident: $($(#[$doc:meta])* $name:ident = $words:literal;)+) => {
        $(
            $(#[$doc])*
            #[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
            pub struct $name;
            impl private::Sealed for $name {}
            impl $kind for $name {
                const NAME: &'static str = $words;
            }
        )+
    };
}

kinds! { Agent:
    /// Sodium nitrite, NaNO2.
    SodiumNitrite = "sodium nitrite";
    /// Potassium nitrite, KNO2.
    PotassiumNitrite = "potassium nitrite";
    /// Sodium nitrate, NaNO3.
    SodiumNitrate = "sodium nitrate";
    /// Potassium nitrate, KNO3.
    PotassiumNitrate = "potassium nitrate";
    /// The nitrite ion, NO2-.
    NitriteIon = "nitrite ion";
    /// The nitrate ion, NO3-.
    NitrateIon = "nitrate ion";
    /// Sodium or potassium nitrite as weighed: what a rule means that gives both
    /// salts one figure.
    NitriteSalts = "nitrite";
    /// Sodium or potassium nitrate as weighed.
    NitrateSalts = "nitrate";
    /// Nitrite and nitrate salts together, as weighed.
    CuringSalts = "nitrite and nitrate";
    /// Sodium ascorbate or sodium erythorbate, anhydrous.
    Ascorbate = "ascorbate or erythorbate";
    /// Ascorbic or erythorbic acid.
    AscorbicAcids = "ascorbic or erythorbic acid";
    /// Any of the four: the acids and their sodium salts.
    Ascorbics = "ascorbic or erythorbic acid and their salts";
    /// Citric acid or sodium citrate.
    Citrates = "citric acid or citrate";
    /// Fumaric acid.
    FumaricAcid = "fumaric acid";
    /// Glucono-delta-lactone.
    GluconoDeltaLactone = "glucono-delta-lactone";
    /// Sodium acid pyrophosphate.
    AcidPyrophosphate = "sodium acid pyrophosphate";
    /// Phosphates, as weighed.
    Phosphates = "phosphate";
    /// Sodium chloride, common salt.
    SodiumChloride = "salt";
}

kinds! { Basis:
    /// The premix itself: a level on this basis is the strength of a curing salt.
    InPremix = "of the premix";
    /// Ingoing, on the green weight of the meat block.
    OnGreenWeight = "ingoing, on green weight";
    /// On the weight of meat and pickle together, once they are one system.
    OnMeatAndPickle = "on meat and pickle together";
    /// Ingoing, on the weight of the whole product when the cure is added: meat, water,
    /// salt, spices and all.
    OnProductAsMade = "ingoing, on the product as made";
    /// In the water of the finished product: salt / (salt + water).
    InWaterPhase = "in the water phase";
    /// On the weight of the milk that cheese is made from.
    OnCheeseMilk = "in the cheese milk";
    /// Ingoing, on the weight of the finished product.
    OnFinishedWeight = "ingoing, on finished weight";
    /// What an analysis finds in the finished product.
    Residual = "residual, in the finished product";
}
