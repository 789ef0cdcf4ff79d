// Made from references/ by references/pipeline. Do not edit: change the reference file.

use crate::cite::{Citation, Cited, InForce, Row, Seen, Standing, sources};
use super::agent::*;
use super::level::Level;
use super::limit::{BaconFormula, BaconLimit, IngoingLimit, Method};
use crate::authority::Authority;
use crate::finding::Limit;

/// Molar mass of NO2-, g/mol.
pub(super) const MOLAR_MASS_NO2: Cited<f64> = Cited {
        value: 46.005,
        row: Row {
            table: "cure/molar-mass",
            key: "no2",
            printed: "46.005 g/mol",
            citation: Citation { source: &sources::CIAAW_2021, place: "sum of the five-figure atomic weights N 14.007, O 15.999, Na 22.990, K 39.098", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "the electron mass (0.00055 g/mol) of the anion is neglected",
        },
    };

/// Molar mass of NO3-, g/mol.
pub(super) const MOLAR_MASS_NO3: Cited<f64> = Cited {
        value: 62.004,
        row: Row {
            table: "cure/molar-mass",
            key: "no3",
            printed: "62.004 g/mol",
            citation: Citation { source: &sources::CIAAW_2021, place: "sum of the five-figure atomic weights N 14.007, O 15.999, Na 22.990, K 39.098", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "the electron mass (0.00055 g/mol) of the anion is neglected",
        },
    };

/// Molar mass of NaNO2, g/mol.
pub(super) const MOLAR_MASS_NANO2: Cited<f64> = Cited {
        value: 68.995,
        row: Row {
            table: "cure/molar-mass",
            key: "nano2",
            printed: "68.995 g/mol",
            citation: Citation { source: &sources::CIAAW_2021, place: "sum of the five-figure atomic weights N 14.007, O 15.999, Na 22.990, K 39.098", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Molar mass of KNO2, g/mol.
pub(super) const MOLAR_MASS_KNO2: Cited<f64> = Cited {
        value: 85.103,
        row: Row {
            table: "cure/molar-mass",
            key: "kno2",
            printed: "85.103 g/mol",
            citation: Citation { source: &sources::CIAAW_2021, place: "sum of the five-figure atomic weights N 14.007, O 15.999, Na 22.990, K 39.098", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Molar mass of NaNO3, g/mol.
pub(super) const MOLAR_MASS_NANO3: Cited<f64> = Cited {
        value: 84.994,
        row: Row {
            table: "cure/molar-mass",
            key: "nano3",
            printed: "84.994 g/mol",
            citation: Citation { source: &sources::CIAAW_2021, place: "sum of the five-figure atomic weights N 14.007, O 15.999, Na 22.990, K 39.098", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Molar mass of KNO3, g/mol.
pub(super) const MOLAR_MASS_KNO3: Cited<f64> = Cited {
        value: 101.102,
        row: Row {
            table: "cure/molar-mass",
            key: "kno3",
            printed: "101.102 g/mol",
            citation: Citation { source: &sources::CIAAW_2021, place: "sum of the five-figure atomic weights N 14.007, O 15.999, Na 22.990, K 39.098", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Nitrate in bacon, United States
pub static US_BACON_NITRATE: Cited<Limit<Level<NitrateSalts, OnGreenWeight>>> = Cited {
        value: Limit::AtMost(Level::of(0.0)),
        row: Row {
            table: "cure/us-bacon-nitrate",
            key: "no-nitrate-in-bacon",
            printed: "cured meat products other than bacon",
            citation: Citation { source: &sources::CFR9_424_21_2015, place: "424.21(c), class Curing Agents, row nitrate, column Products", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "The nitrate row lists cured products other than bacon, so no method may bring nitrate into bacon.",
        },
    };

/// Variation accepted around the pumped-bacon amount, United States
pub static US_BACON_TOLERANCE: Cited<Limit<Level<SodiumNitrite, OnGreenWeight>>> = Cited {
        value: Limit::Between(Level::of(96.0), Level::of(144.0)),
        row: Row {
            table: "cure/us-bacon-tolerance",
            key: "bacon-pumped-tolerance",
            printed: "120 ppm within 20 percent: 96 to 144 ppm",
            citation: Citation { source: &sources::FSIS_7620_3, place: "bacon section, from page 27", standing: Standing::Handbook, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "Covers pumping and draining, not the formulation.",
        },
    };

/// Ingoing nitrite in bacon, United States: sodium nitrite.
pub static US_BACON_SODIUM: [Cited<BaconLimit<SodiumNitrite>>; 5] = [
    Cited {
        value: BaconLimit { authority: Authority::UsFsis, formula: BaconFormula::Pumped, limit: Limit::Exactly(Level::of(120.0)), ascorbate: Some(Level::of(550.0)), sugar_percent: None, lactic_culture: false },
        row: Row {
            table: "cure/us-bacon",
            key: "bacon-pumped-standard-sodium",
            printed: "sodium nitrite 120 ppm",
            citation: Citation { source: &sources::CFR9_424_22_2015, place: "424.22(b)(1)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "A required amount, not a ceiling. Hydrated ascorbate or erythorbate is scaled up to the anhydrous 550 ppm.",
        },
    },
    Cited {
        value: BaconLimit { authority: Authority::UsFsis, formula: BaconFormula::PumpedA, limit: Limit::Exactly(Level::of(100.0)), ascorbate: Some(Level::of(550.0)), sugar_percent: None, lactic_culture: false },
        row: Row {
            table: "cure/us-bacon",
            key: "bacon-pumped-alt-a-sodium",
            printed: "sodium nitrite 100 ppm",
            citation: Citation { source: &sources::CFR9_424_22_2015, place: "424.22(b)(1)(ii)(A)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "A required amount, not a ceiling. Plants using it are still sampled at random.",
        },
    },
    Cited {
        value: BaconLimit { authority: Authority::UsFsis, formula: BaconFormula::PumpedB, limit: Limit::Between(Level::of(40.0), Level::of(80.0)), ascorbate: Some(Level::of(550.0)), sugar_percent: Some(0.7), lactic_culture: true },
        row: Row {
            table: "cure/us-bacon",
            key: "bacon-pumped-alt-b-sodium",
            printed: "sodium nitrite 40 to 80 ppm",
            citation: Citation { source: &sources::CFR9_424_22_2015, place: "424.22(b)(1)(ii)(B)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "Only with the sugar and the lactic culture together, whose purpose is to stop botulinum toxin. Never on its own.",
        },
    },
    Cited {
        value: BaconLimit { authority: Authority::UsFsis, formula: BaconFormula::Immersion, limit: Limit::AtMost(Level::of(120.0)), ascorbate: None, sugar_percent: None, lactic_culture: false },
        row: Row {
            table: "cure/us-bacon",
            key: "bacon-immersion-sodium",
            printed: "sodium nitrite not over 120 ppm",
            citation: Citation { source: &sources::CFR9_424_22_2015, place: "424.22(b)(2)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "On the actual or estimated skin-free green weight.",
        },
    },
    Cited {
        value: BaconLimit { authority: Authority::UsFsis, formula: BaconFormula::DryCure, limit: Limit::AtMost(Level::of(200.0)), ascorbate: None, sugar_percent: None, lactic_culture: false },
        row: Row {
            table: "cure/us-bacon",
            key: "bacon-dry-sodium",
            printed: "sodium nitrite not over 200 ppm",
            citation: Citation { source: &sources::CFR9_424_22_2015, place: "424.22(b)(3)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "On the actual or estimated skin-free green weight. Not 625: the general dry-cure figure is not for bacon.",
        },
    },
];

/// Ingoing nitrite in bacon, United States: potassium nitrite.
pub static US_BACON_POTASSIUM: [Cited<BaconLimit<PotassiumNitrite>>; 5] = [
    Cited {
        value: BaconLimit { authority: Authority::UsFsis, formula: BaconFormula::Pumped, limit: Limit::Exactly(Level::of(148.0)), ascorbate: Some(Level::of(550.0)), sugar_percent: None, lactic_culture: false },
        row: Row {
            table: "cure/us-bacon",
            key: "bacon-pumped-standard-potassium",
            printed: "potassium nitrite 148 ppm",
            citation: Citation { source: &sources::CFR9_424_22_2015, place: "424.22(b)(1)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "A required amount, not a ceiling. Hydrated ascorbate or erythorbate is scaled up to the anhydrous 550 ppm.",
        },
    },
    Cited {
        value: BaconLimit { authority: Authority::UsFsis, formula: BaconFormula::PumpedA, limit: Limit::Exactly(Level::of(123.0)), ascorbate: Some(Level::of(550.0)), sugar_percent: None, lactic_culture: false },
        row: Row {
            table: "cure/us-bacon",
            key: "bacon-pumped-alt-a-potassium",
            printed: "potassium nitrite 123 ppm",
            citation: Citation { source: &sources::CFR9_424_22_2015, place: "424.22(b)(1)(ii)(A)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "A required amount, not a ceiling. Plants using it are still sampled at random.",
        },
    },
    Cited {
        value: BaconLimit { authority: Authority::UsFsis, formula: BaconFormula::PumpedB, limit: Limit::Between(Level::of(49.0), Level::of(99.0)), ascorbate: Some(Level::of(550.0)), sugar_percent: Some(0.7), lactic_culture: true },
        row: Row {
            table: "cure/us-bacon",
            key: "bacon-pumped-alt-b-potassium",
            printed: "potassium nitrite 49 to 99 ppm",
            citation: Citation { source: &sources::CFR9_424_22_2015, place: "424.22(b)(1)(ii)(B)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "Only with the sugar and the lactic culture together, whose purpose is to stop botulinum toxin. Never on its own.",
        },
    },
    Cited {
        value: BaconLimit { authority: Authority::UsFsis, formula: BaconFormula::Immersion, limit: Limit::AtMost(Level::of(148.0)), ascorbate: None, sugar_percent: None, lactic_culture: false },
        row: Row {
            table: "cure/us-bacon",
            key: "bacon-immersion-potassium",
            printed: "potassium nitrite not over 148 ppm",
            citation: Citation { source: &sources::CFR9_424_22_2015, place: "424.22(b)(2)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "On the actual or estimated skin-free green weight.",
        },
    },
    Cited {
        value: BaconLimit { authority: Authority::UsFsis, formula: BaconFormula::DryCure, limit: Limit::AtMost(Level::of(246.0)), ascorbate: None, sugar_percent: None, lactic_culture: false },
        row: Row {
            table: "cure/us-bacon",
            key: "bacon-dry-potassium",
            printed: "potassium nitrite not over 246 ppm",
            citation: Citation { source: &sources::CFR9_424_22_2015, place: "424.22(b)(3)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "On the actual or estimated skin-free green weight. Not 625: the general dry-cure figure is not for bacon.",
        },
    },
];

/// Ingoing nitrite and nitrate, United States, products other than bacon: nitrite.
pub static US_INGOING_NITRITE: [Cited<IngoingLimit<NitriteSalts>>; 3] = [
    Cited {
        value: IngoingLimit { authority: Authority::UsFsis, methods: &[Method::Pumped, Method::Immersion], limit: Limit::AtMost(Level::of(200.0)), working_figure: Some(200) },
        row: Row {
            table: "cure/us-ingoing",
            key: "nitrite-pickle",
            printed: "2 lb to 100 gal pickle at 10 percent pump level",
            citation: Citation { source: &sources::CFR9_424_21_2015, place: "424.21(c), class Curing Agents, row nitrite, column Amount", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "200 mg/kg follows from the words only when 100 US gallons of pickle weigh 1000 lb; weigh the pickle. No figure in mg/kg is printed.",
        },
    },
    Cited {
        value: IngoingLimit { authority: Authority::UsFsis, methods: &[Method::DryRub], limit: Limit::AtMost(Level::of(625.0)), working_figure: Some(625) },
        row: Row {
            table: "cure/us-ingoing",
            key: "nitrite-dry",
            printed: "1 oz to 100 lb meat or poultry product (dry cure)",
            citation: Citation { source: &sources::CFR9_424_21_2015, place: "424.21(c), class Curing Agents, row nitrite, column Amount", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "No figure in mg/kg is printed; 1 oz to 100 lb is exactly 625 mg/kg.",
        },
    },
    Cited {
        value: IngoingLimit { authority: Authority::UsFsis, methods: &[Method::Ground], limit: Limit::AtMost(Level::of(156.25)), working_figure: Some(156) },
        row: Row {
            table: "cure/us-ingoing",
            key: "nitrite-comminuted",
            printed: "1/4 oz to 100 lb chopped meat, meat byproduct or poultry product",
            citation: Citation { source: &sources::CFR9_424_21_2015, place: "424.21(c), class Curing Agents, row nitrite, column Amount", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "No figure in mg/kg is printed; 1 oz to 100 lb is exactly 625 mg/kg.",
        },
    },
];

/// Ingoing nitrite and nitrate, United States, products other than bacon: nitrate.
pub static US_INGOING_NITRATE: [Cited<IngoingLimit<NitrateSalts>>; 3] = [
    Cited {
        value: IngoingLimit { authority: Authority::UsFsis, methods: &[Method::Pumped, Method::Immersion], limit: Limit::AtMost(Level::of(700.0)), working_figure: Some(700) },
        row: Row {
            table: "cure/us-ingoing",
            key: "nitrate-pickle",
            printed: "7 lb to 100 gal pickle",
            citation: Citation { source: &sources::CFR9_424_21_2015, place: "424.21(c), class Curing Agents, row nitrate, column Amount", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "The nitrate words carry no pump level; it is read at 10 percent, as the nitrite row. No figure in mg/kg is printed.",
        },
    },
    Cited {
        value: IngoingLimit { authority: Authority::UsFsis, methods: &[Method::DryRub], limit: Limit::AtMost(Level::of(2187.5)), working_figure: Some(2187) },
        row: Row {
            table: "cure/us-ingoing",
            key: "nitrate-dry",
            printed: "3 1/2 oz to 100 lb meat or poultry product (dry cure)",
            citation: Citation { source: &sources::CFR9_424_21_2015, place: "424.21(c), class Curing Agents, row nitrate, column Amount", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "No figure in mg/kg is printed; 1 oz to 100 lb is exactly 625 mg/kg.",
        },
    },
    Cited {
        value: IngoingLimit { authority: Authority::UsFsis, methods: &[Method::Ground], limit: Limit::AtMost(Level::of(1718.75)), working_figure: Some(1718) },
        row: Row {
            table: "cure/us-ingoing",
            key: "nitrate-comminuted",
            printed: "2 3/4 oz to 100 lb chopped meat or poultry",
            citation: Citation { source: &sources::CFR9_424_21_2015, place: "424.21(c), class Curing Agents, row nitrate, column Amount", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "No figure in mg/kg is printed; 1 oz to 100 lb is exactly 625 mg/kg.",
        },
    },
];

/// Least ingoing nitrite in a cured product kept cold, United States
pub static US_MINIMUM: Cited<Limit<Level<NitriteSalts, OnGreenWeight>>> = Cited {
        value: Limit::AtLeast(Level::of(120.0)),
        row: Row {
            table: "cure/us-minimum",
            key: "keep-refrigerated-120",
            printed: "at least 120 ppm ingoing in cured products labelled Keep Refrigerated",
            citation: Citation { source: &sources::FSIS_7620_3, place: "chapter 3", standing: Standing::Handbook, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "A policy, not a regulation. It does not apply where heat, pH or moisture control makes the product safe without it.",
        },
    };
