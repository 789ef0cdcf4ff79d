// Made from references/ by references/pipeline. Do not edit: change the reference file.

use crate::cite::{Citation, Cited, InForce, Row, Seen, Standing, sources};
use super::activity::{Pitzer, SaturatedActivity, SaturatedHumidity, TabledActivity};
use super::strength::{Density, FreezingPoint, Solubility, SpecificVolume};

/// Density of salt water at 20 °C
pub static DENSITY: [Cited<Density>; 14] = [
    Cited {
        value: Density { percent: 1.0, kg_per_m3: 1005.3 },
        row: Row {
            table: "salt/density",
            key: "percent-1",
            printed: "1 percent: 1005.3 kg/m3 at 20 °C",
            citation: Citation { source: &sources::PORADNIK_1974, place: "row 1 percent", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Density { percent: 2.0, kg_per_m3: 1012.2 },
        row: Row {
            table: "salt/density",
            key: "percent-2",
            printed: "2 percent: 1012.2 kg/m3 at 20 °C",
            citation: Citation { source: &sources::PORADNIK_1974, place: "row 2 percent", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Density { percent: 4.0, kg_per_m3: 1026.8 },
        row: Row {
            table: "salt/density",
            key: "percent-4",
            printed: "4 percent: 1026.8 kg/m3 at 20 °C",
            citation: Citation { source: &sources::PORADNIK_1974, place: "row 4 percent", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Density { percent: 6.0, kg_per_m3: 1041.3 },
        row: Row {
            table: "salt/density",
            key: "percent-6",
            printed: "6 percent: 1041.3 kg/m3 at 20 °C",
            citation: Citation { source: &sources::PORADNIK_1974, place: "row 6 percent", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Density { percent: 8.0, kg_per_m3: 1055.9 },
        row: Row {
            table: "salt/density",
            key: "percent-8",
            printed: "8 percent: 1055.9 kg/m3 at 20 °C",
            citation: Citation { source: &sources::PORADNIK_1974, place: "row 8 percent", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Density { percent: 10.0, kg_per_m3: 1070.7 },
        row: Row {
            table: "salt/density",
            key: "percent-10",
            printed: "10 percent: 1070.7 kg/m3 at 20 °C",
            citation: Citation { source: &sources::PORADNIK_1974, place: "row 10 percent", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Density { percent: 12.0, kg_per_m3: 1085.7 },
        row: Row {
            table: "salt/density",
            key: "percent-12",
            printed: "12 percent: 1085.7 kg/m3 at 20 °C",
            citation: Citation { source: &sources::PORADNIK_1974, place: "row 12 percent", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Density { percent: 14.0, kg_per_m3: 1100.9 },
        row: Row {
            table: "salt/density",
            key: "percent-14",
            printed: "14 percent: 1100.9 kg/m3 at 20 °C",
            citation: Citation { source: &sources::PORADNIK_1974, place: "row 14 percent", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Density { percent: 16.0, kg_per_m3: 1116.2 },
        row: Row {
            table: "salt/density",
            key: "percent-16",
            printed: "16 percent: 1116.2 kg/m3 at 20 °C",
            citation: Citation { source: &sources::PORADNIK_1974, place: "row 16 percent", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Density { percent: 18.0, kg_per_m3: 1131.9 },
        row: Row {
            table: "salt/density",
            key: "percent-18",
            printed: "18 percent: 1131.9 kg/m3 at 20 °C",
            citation: Citation { source: &sources::PORADNIK_1974, place: "row 18 percent", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Density { percent: 20.0, kg_per_m3: 1147.8 },
        row: Row {
            table: "salt/density",
            key: "percent-20",
            printed: "20 percent: 1147.8 kg/m3 at 20 °C",
            citation: Citation { source: &sources::PORADNIK_1974, place: "row 20 percent", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Density { percent: 22.0, kg_per_m3: 1164.0 },
        row: Row {
            table: "salt/density",
            key: "percent-22",
            printed: "22 percent: 1164 kg/m3 at 20 °C",
            citation: Citation { source: &sources::PORADNIK_1974, place: "row 22 percent", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Density { percent: 24.0, kg_per_m3: 1180.4 },
        row: Row {
            table: "salt/density",
            key: "percent-24",
            printed: "24 percent: 1180.4 kg/m3 at 20 °C",
            citation: Citation { source: &sources::PORADNIK_1974, place: "row 24 percent", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Density { percent: 26.0, kg_per_m3: 1197.2 },
        row: Row {
            table: "salt/density",
            key: "percent-26",
            printed: "26 percent: 1197.2 kg/m3 at 20 °C",
            citation: Citation { source: &sources::PORADNIK_1974, place: "row 26 percent", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Freezing point of salt water
pub static FREEZING_POINT: [Cited<FreezingPoint>; 20] = [
    Cited {
        value: FreezingPoint { percent: 0.291, depression: 0.18 },
        row: Row {
            table: "salt/freezing-point",
            key: "m-0-05",
            printed: "0.291 percent: 0.18 °C lower",
            citation: Citation { source: &sources::SMITHSONIAN_FP, place: "NaCl, m=0.05", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: FreezingPoint { percent: 0.581, depression: 0.35 },
        row: Row {
            table: "salt/freezing-point",
            key: "m-0-1",
            printed: "0.581 percent: 0.35 °C lower",
            citation: Citation { source: &sources::SMITHSONIAN_FP, place: "NaCl, m=0.1", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: FreezingPoint { percent: 1.0, depression: 0.6 },
        row: Row {
            table: "salt/freezing-point",
            key: "m-0-1728",
            printed: "1 percent: 0.6 °C lower",
            citation: Citation { source: &sources::MELINDER, place: "MNA freezing curve", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: FreezingPoint { percent: 1.44, depression: 0.85 },
        row: Row {
            table: "salt/freezing-point",
            key: "m-0-25",
            printed: "1.44 percent: 0.85 °C lower",
            citation: Citation { source: &sources::SMITHSONIAN_FP, place: "NaCl, m=0.25", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: FreezingPoint { percent: 2.0, depression: 1.2 },
        row: Row {
            table: "salt/freezing-point",
            key: "m-0-3492",
            printed: "2 percent: 1.2 °C lower",
            citation: Citation { source: &sources::MELINDER, place: "MNA freezing curve", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: FreezingPoint { percent: 2.839, depression: 1.68 },
        row: Row {
            table: "salt/freezing-point",
            key: "m-0-5",
            printed: "2.839 percent: 1.68 °C lower",
            citation: Citation { source: &sources::SMITHSONIAN_FP, place: "NaCl, m=0.5", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: FreezingPoint { percent: 3.0, depression: 1.8 },
        row: Row {
            table: "salt/freezing-point",
            key: "m-0-5292",
            printed: "3 percent: 1.8 °C lower",
            citation: Citation { source: &sources::MELINDER, place: "MNA freezing curve", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: FreezingPoint { percent: 3.5, depression: 2.11 },
        row: Row {
            table: "salt/freezing-point",
            key: "m-0-6206",
            printed: "3.5 percent: 2.11 °C lower",
            citation: Citation { source: &sources::MELINDER, place: "MNA freezing curve", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: FreezingPoint { percent: 4.199, depression: 2.6 },
        row: Row {
            table: "salt/freezing-point",
            key: "m-0-75",
            printed: "4.199 percent: 2.6 °C lower",
            citation: Citation { source: &sources::SMITHSONIAN_FP, place: "NaCl, m=0.75", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: FreezingPoint { percent: 5.0, depression: 3.05 },
        row: Row {
            table: "salt/freezing-point",
            key: "m-0-9006",
            printed: "5 percent: 3.05 °C lower",
            citation: Citation { source: &sources::MELINDER, place: "MNA freezing curve", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: FreezingPoint { percent: 8.0, depression: 5.07 },
        row: Row {
            table: "salt/freezing-point",
            key: "m-1-4879",
            printed: "8 percent: 5.07 °C lower",
            citation: Citation { source: &sources::MELINDER, place: "MNA freezing curve", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: FreezingPoint { percent: 10.0, depression: 6.55 },
        row: Row {
            table: "salt/freezing-point",
            key: "m-1-9012",
            printed: "10 percent: 6.55 °C lower",
            citation: Citation { source: &sources::MELINDER, place: "MNA freezing curve", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: FreezingPoint { percent: 12.0, depression: 8.17 },
        row: Row {
            table: "salt/freezing-point",
            key: "m-2-3333",
            printed: "12 percent: 8.17 °C lower",
            citation: Citation { source: &sources::MELINDER, place: "MNA freezing curve", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: FreezingPoint { percent: 15.0, depression: 10.9 },
        row: Row {
            table: "salt/freezing-point",
            key: "m-3-0195",
            printed: "15 percent: 10.9 °C lower",
            citation: Citation { source: &sources::MELINDER, place: "MNA freezing curve", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: FreezingPoint { percent: 18.0, depression: 14.06 },
        row: Row {
            table: "salt/freezing-point",
            key: "m-3-756",
            printed: "18 percent: 14.06 °C lower",
            citation: Citation { source: &sources::MELINDER, place: "MNA freezing curve", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: FreezingPoint { percent: 20.0, depression: 16.46 },
        row: Row {
            table: "salt/freezing-point",
            key: "m-4-2777",
            printed: "20 percent: 16.46 °C lower",
            citation: Citation { source: &sources::MELINDER, place: "MNA freezing curve", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: FreezingPoint { percent: 22.0, depression: 19.1 },
        row: Row {
            table: "salt/freezing-point",
            key: "m-4-8261",
            printed: "22 percent: 19.1 °C lower",
            citation: Citation { source: &sources::MELINDER, place: "MNA freezing curve", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: FreezingPoint { percent: 23.0, depression: 20.51 },
        row: Row {
            table: "salt/freezing-point",
            key: "m-5-111",
            printed: "23 percent: 20.51 °C lower",
            citation: Citation { source: &sources::MELINDER, place: "MNA freezing curve", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: FreezingPoint { percent: 23.3, depression: 21.11 },
        row: Row {
            table: "salt/freezing-point",
            key: "percent-23-3",
            printed: "23.3 percent: 21.11 °C lower",
            citation: Citation { source: &sources::OSU_BRINE, place: "text", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: FreezingPoint { percent: 23.31, depression: 21.12 },
        row: Row {
            table: "salt/freezing-point",
            key: "percent-23-31",
            printed: "23.31 percent: 21.12 °C lower",
            citation: Citation { source: &sources::SALTINST, place: "eutectic", standing: Standing::Paper, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Molar masses of salt and water
pub static MOLAR_MASS_NACL: Cited<f64> = Cited {
        value: 58.443,
        row: Row {
            table: "salt/molar-mass",
            key: "nacl",
            printed: "58.443 g/mol",
            citation: Citation { source: &sources::CIAAW_2021, place: "sum of the five-figure atomic weights Na 22.990, Cl 35.453; that of Cl from memory", standing: Standing::Paper, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Molar masses of salt and water
pub static MOLAR_MASS_WATER: Cited<f64> = Cited {
        value: 18.015,
        row: Row {
            table: "salt/molar-mass",
            key: "water",
            printed: "18.015 g/mol",
            citation: Citation { source: &sources::CIAAW_2021, place: "sum of the five-figure atomic weights H 1.008, O 15.999; that of H from memory", standing: Standing::Paper, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Parameters of the Pitzer equation for salt water
pub static PITZER: Cited<Pitzer> = Cited {
        value: Pitzer { beta0: 0.0765, beta1: 0.2664, c: 0.00127, a: 0.3915, b: 1.2, alpha: 2.0, most: 6.0 },
        row: Row {
            table: "salt/pitzer",
            key: "pitzer-mayorga-1973",
            printed: "beta0 0.0765, beta1 0.2664, C 0.00127",
            citation: Citation { source: &sources::PITZER73, place: "Table I NaCl", standing: Standing::Paper, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "matches the coded Pitzer model of an open library to 1e-5 in aw",
        },
    };

/// Salometer scales
pub static SALOMETER_STANDARD_SCALE: Cited<f64> = Cited {
        value: 26.395,
        row: Row {
            table: "salt/salometer",
            key: "standard-scale",
            printed: "100 degrees are 26.395 percent",
            citation: Citation { source: &sources::SALOM_LEAFLET, place: "formula and text", standing: Standing::Paper, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Salometer scales
pub static SALOMETER_SATURATION_AT_60_F: Cited<f64> = Cited {
        value: 26.395,
        row: Row {
            table: "salt/salometer",
            key: "saturation-at-60-f",
            printed: "100 degrees are 26.395 percent",
            citation: Citation { source: &sources::SALTINST, place: "solubility row 60 F", standing: Standing::Paper, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Salometer scales
pub static SALOMETER_CANNING_GRADING_SCALE: Cited<f64> = Cited {
        value: 25.0,
        row: Row {
            table: "salt/salometer",
            key: "canning-grading-scale",
            printed: "100 degrees are 25 percent",
            citation: Citation { source: &sources::SALOM_LEAFLET, place: "para 2", standing: Standing::Paper, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "a different instrument: 100 degrees = 25 percent",
        },
    };

/// Salometer scales
pub static SALOMETER_UK_BRINEOMETER: Cited<f64> = Cited {
        value: 26.4,
        row: Row {
            table: "salt/salometer",
            key: "uk-brineometer",
            printed: "100 degrees are 26.4 percent",
            citation: Citation { source: &sources::SEAFISH_BRINE, place: "100 degree row", standing: Standing::Paper, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Salometer scales
pub static SALOMETER_FSIS_TRAINING_TEXT: Cited<f64> = Cited {
        value: 26.3,
        row: Row {
            table: "salt/salometer",
            key: "fsis-training-text",
            printed: "100 degrees are 26.3 percent",
            citation: Citation { source: &sources::FSRE, place: "p. 160 fragment", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Salometer scales
pub static SALOMETER_USDA_1924: Cited<f64> = Cited {
        value: 26.5,
        row: Row {
            table: "salt/salometer",
            key: "usda-1924",
            printed: "100 degrees are 26.5 percent",
            citation: Citation { source: &sources::USDA_FB1438, place: "Table 1 last row", standing: Standing::Paper, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Salometer scales
pub static SALOMETER_MODERN_SOLUBILITY_AT_60_F: Cited<f64> = Cited {
        value: 26.354,
        row: Row {
            table: "salt/salometer",
            key: "modern-solubility-at-60-f",
            printed: "100 degrees are 26.354 percent",
            citation: Citation { source: &sources::STEIGER2008, place: "CRC solubility polynomial at 15.556 C; the Steiger model gives 26.349", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "0.04 below the trade figure",
        },
    };

/// Salometer scales
pub static SALOMETER_SATURATION_TAKEN_BY_THE_FSRE_TEXT: Cited<f64> = Cited {
        value: 26.3,
        row: Row {
            table: "salt/salometer",
            key: "saturation-taken-by-the-fsre-text",
            printed: "100 degrees are 26.3 percent",
            citation: Citation { source: &sources::FSRE_2005, place: "page 159-160", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Water activity of saturated salts
pub static SATURATED_ACTIVITY: [Cited<SaturatedActivity>; 18] = [
    Cited {
        value: SaturatedActivity { salt: "LiBr", k1: 620.636, k2: 4.8327 },
        row: Row {
            table: "salt/saturated-activity",
            key: "libr",
            printed: "LiBr: k1 620.636, k2 4.8327",
            citation: Citation { source: &sources::LABUZA_SAT, place: "row LiBr", standing: Standing::Paper, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedActivity { salt: "ZnBr2", k1: 409.626, k2: 3.9159 },
        row: Row {
            table: "salt/saturated-activity",
            key: "znbr2",
            printed: "ZnBr2: k1 409.626, k2 3.9159",
            citation: Citation { source: &sources::LABUZA_SAT, place: "row ZnBr2", standing: Standing::Paper, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedActivity { salt: "KOH", k1: 2094.49, k2: 9.4977 },
        row: Row {
            table: "salt/saturated-activity",
            key: "koh",
            printed: "KOH: k1 2094.49, k2 9.4977",
            citation: Citation { source: &sources::LABUZA_SAT, place: "row KOH", standing: Standing::Paper, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedActivity { salt: "LiCl", k1: 10.8233, k2: 2.2193 },
        row: Row {
            table: "salt/saturated-activity",
            key: "licl",
            printed: "LiCl: k1 10.8233, k2 2.2193",
            citation: Citation { source: &sources::LABUZA_SAT, place: "row LiCl", standing: Standing::Paper, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedActivity { salt: "LiI", k1: 982.733, k2: 5.0477 },
        row: Row {
            table: "salt/saturated-activity",
            key: "lii",
            printed: "LiI: k1 982.733, k2 5.0477",
            citation: Citation { source: &sources::LABUZA_SAT, place: "row LiI", standing: Standing::Paper, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedActivity { salt: "MgCl2", k1: 151.065, k2: 1.6271 },
        row: Row {
            table: "salt/saturated-activity",
            key: "mgcl2",
            printed: "MgCl2: k1 151.065, k2 1.6271",
            citation: Citation { source: &sources::LABUZA_SAT, place: "row MgCl2", standing: Standing::Paper, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedActivity { salt: "NaI", k1: 643.011, k2: 3.1407 },
        row: Row {
            table: "salt/saturated-activity",
            key: "nai",
            printed: "NaI: k1 643.011, k2 3.1407",
            citation: Citation { source: &sources::LABUZA_SAT, place: "row NaI", standing: Standing::Paper, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedActivity { salt: "K2CO3", k1: -3.024, k2: 0.83 },
        row: Row {
            table: "salt/saturated-activity",
            key: "k2co3",
            printed: "K2CO3: k1 -3.024, k2 0.83",
            citation: Citation { source: &sources::LABUZA_SAT, place: "row K2CO3", standing: Standing::Paper, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedActivity { salt: "Mg(NO3)2", k1: 484.699, k2: 2.267 },
        row: Row {
            table: "salt/saturated-activity",
            key: "mg-no3-2",
            printed: "Mg(NO3)2: k1 484.699, k2 2.267",
            citation: Citation { source: &sources::LABUZA_SAT, place: "row Mg(NO3)2", standing: Standing::Paper, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedActivity { salt: "NaBr", k1: 447.805, k2: 2.0575 },
        row: Row {
            table: "salt/saturated-activity",
            key: "nabr",
            printed: "NaBr: k1 447.805, k2 2.0575",
            citation: Citation { source: &sources::LABUZA_SAT, place: "row NaBr", standing: Standing::Paper, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedActivity { salt: "KI", k1: 258.155, k2: 1.2388 },
        row: Row {
            table: "salt/saturated-activity",
            key: "ki",
            printed: "KI: k1 258.155, k2 1.2388",
            citation: Citation { source: &sources::LABUZA_SAT, place: "row KI", standing: Standing::Paper, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedActivity { salt: "NaNO3", k1: 253.38, k2: 1.1493 },
        row: Row {
            table: "salt/saturated-activity",
            key: "nano3",
            printed: "NaNO3: k1 253.38, k2 1.1493",
            citation: Citation { source: &sources::LABUZA_SAT, place: "row NaNO3", standing: Standing::Paper, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedActivity { salt: "NaCl", k1: 23.1092, k2: 0.3607 },
        row: Row {
            table: "salt/saturated-activity",
            key: "nacl",
            printed: "NaCl: k1 23.1092, k2 0.3607",
            citation: Citation { source: &sources::LABUZA_SAT, place: "row NaCl", standing: Standing::Paper, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedActivity { salt: "KBr", k1: 171.275, k2: 0.7828 },
        row: Row {
            table: "salt/saturated-activity",
            key: "kbr",
            printed: "KBr: k1 171.275, k2 0.7828",
            citation: Citation { source: &sources::LABUZA_SAT, place: "row KBr", standing: Standing::Paper, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedActivity { salt: "(NH4)2SO4", k1: 76.8191, k2: 0.469 },
        row: Row {
            table: "salt/saturated-activity",
            key: "nh4-2so4",
            printed: "(NH4)2SO4: k1 76.8191, k2 0.469",
            citation: Citation { source: &sources::LABUZA_SAT, place: "row (NH4)2SO4", standing: Standing::Paper, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedActivity { salt: "KCl", k1: 157.059, k2: 0.6967 },
        row: Row {
            table: "salt/saturated-activity",
            key: "kcl",
            printed: "KCl: k1 157.059, k2 0.6967",
            citation: Citation { source: &sources::LABUZA_SAT, place: "row KCl", standing: Standing::Paper, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedActivity { salt: "KNO3", k1: 192.089, k2: 0.7183 },
        row: Row {
            table: "salt/saturated-activity",
            key: "kno3",
            printed: "KNO3: k1 192.089, k2 0.7183",
            citation: Citation { source: &sources::LABUZA_SAT, place: "row KNO3", standing: Standing::Paper, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedActivity { salt: "K2SO4", k1: 52.7544, k2: 0.2046 },
        row: Row {
            table: "salt/saturated-activity",
            key: "k2so4",
            printed: "K2SO4: k1 52.7544, k2 0.2046",
            citation: Citation { source: &sources::LABUZA_SAT, place: "row K2SO4", standing: Standing::Paper, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Humidity over saturated salts
pub static SATURATED_HUMIDITY: [Cited<SaturatedHumidity>; 27] = [
    Cited {
        value: SaturatedHumidity { salt: "NaOH.H2O", lowest: 15.0, highest: 60.0, a: 5.48, b: 27.0 },
        row: Row {
            table: "salt/saturated-humidity",
            key: "naoh-h2o",
            printed: "NaOH.H2O: 6 percent at 25 °C; A 5.48, B 27",
            citation: Citation { source: &sources::CRC_RH, place: "table row NaOH.H2O", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedHumidity { salt: "LiBr.2H2O", lowest: 10.0, highest: 30.0, a: 0.23, b: 996.0 },
        row: Row {
            table: "salt/saturated-humidity",
            key: "libr-2h2o",
            printed: "LiBr.2H2O: 6 percent at 25 °C; A 0.23, B 996",
            citation: Citation { source: &sources::CRC_RH, place: "table row LiBr.2H2O", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedHumidity { salt: "ZnBr2.2H2O", lowest: 5.0, highest: 30.0, a: 1.69, b: 455.0 },
        row: Row {
            table: "salt/saturated-humidity",
            key: "znbr2-2h2o",
            printed: "ZnBr2.2H2O: 8 percent at 25 °C; A 1.69, B 455",
            citation: Citation { source: &sources::CRC_RH, place: "table row ZnBr2.2H2O", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedHumidity { salt: "KOH.2H2O", lowest: 5.0, highest: 30.0, a: 0.014, b: 1924.0 },
        row: Row {
            table: "salt/saturated-humidity",
            key: "koh-2h2o",
            printed: "KOH.2H2O: 9 percent at 25 °C; A 0.014, B 1924",
            citation: Citation { source: &sources::CRC_RH, place: "table row KOH.2H2O", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedHumidity { salt: "LiCl.H2O", lowest: 20.0, highest: 65.0, a: 14.53, b: -75.0 },
        row: Row {
            table: "salt/saturated-humidity",
            key: "licl-h2o",
            printed: "LiCl.H2O: 11 percent at 25 °C; A 14.53, B -75",
            citation: Citation { source: &sources::CRC_RH, place: "table row LiCl.H2O", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedHumidity { salt: "CaBr2.6H2O", lowest: 11.0, highest: 22.0, a: 0.17, b: 1360.0 },
        row: Row {
            table: "salt/saturated-humidity",
            key: "cabr2-6h2o",
            printed: "CaBr2.6H2O: 16 percent at 25 °C; A 0.17, B 1360",
            citation: Citation { source: &sources::CRC_RH, place: "table row CaBr2.6H2O", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedHumidity { salt: "LiI.3H2O", lowest: 15.0, highest: 65.0, a: 0.15, b: 1424.0 },
        row: Row {
            table: "salt/saturated-humidity",
            key: "lii-3h2o",
            printed: "LiI.3H2O: 18 percent at 25 °C; A 0.15, B 1424",
            citation: Citation { source: &sources::CRC_RH, place: "table row LiI.3H2O", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedHumidity { salt: "CaCl2.6H2O", lowest: 15.0, highest: 25.0, a: 0.11, b: 1653.0 },
        row: Row {
            table: "salt/saturated-humidity",
            key: "cacl2-6h2o",
            printed: "CaCl2.6H2O: 29 percent at 25 °C; A 0.11, B 1653",
            citation: Citation { source: &sources::CRC_RH, place: "table row CaCl2.6H2O", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedHumidity { salt: "MgCl2.6H2O", lowest: 5.0, highest: 45.0, a: 29.26, b: 34.0 },
        row: Row {
            table: "salt/saturated-humidity",
            key: "mgcl2-6h2o",
            printed: "MgCl2.6H2O: 33 percent at 25 °C; A 29.26, B 34",
            citation: Citation { source: &sources::CRC_RH, place: "table row MgCl2.6H2O", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedHumidity { salt: "NaI.2H2O", lowest: 5.0, highest: 45.0, a: 3.62, b: 702.0 },
        row: Row {
            table: "salt/saturated-humidity",
            key: "nai-2h2o",
            printed: "NaI.2H2O: 38 percent at 25 °C; A 3.62, B 702",
            citation: Citation { source: &sources::CRC_RH, place: "table row NaI.2H2O", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedHumidity { salt: "Ca(NO3)2.4H2O", lowest: 10.0, highest: 30.0, a: 1.89, b: 981.0 },
        row: Row {
            table: "salt/saturated-humidity",
            key: "ca-no3-2-4h2o",
            printed: "Ca(NO3)2.4H2O: 51 percent at 25 °C; A 1.89, B 981",
            citation: Citation { source: &sources::CRC_RH, place: "table row Ca(NO3)2.4H2O", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedHumidity { salt: "Mg(NO3)2.6H2O", lowest: 5.0, highest: 35.0, a: 25.28, b: 220.0 },
        row: Row {
            table: "salt/saturated-humidity",
            key: "mg-no3-2-6h2o",
            printed: "Mg(NO3)2.6H2O: 53 percent at 25 °C; A 25.28, B 220",
            citation: Citation { source: &sources::CRC_RH, place: "table row Mg(NO3)2.6H2O", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedHumidity { salt: "NaBr.2H2O", lowest: 0.0, highest: 35.0, a: 20.49, b: 308.0 },
        row: Row {
            table: "salt/saturated-humidity",
            key: "nabr-2h2o",
            printed: "NaBr.2H2O: 58 percent at 25 °C; A 20.49, B 308",
            citation: Citation { source: &sources::CRC_RH, place: "table row NaBr.2H2O", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedHumidity { salt: "NH4NO3", lowest: 10.0, highest: 40.0, a: 3.54, b: 853.0 },
        row: Row {
            table: "salt/saturated-humidity",
            key: "nh4no3",
            printed: "NH4NO3: 62 percent at 25 °C; A 3.54, B 853",
            citation: Citation { source: &sources::CRC_RH, place: "table row NH4NO3", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedHumidity { salt: "KI", lowest: 5.0, highest: 30.0, a: 29.35, b: 254.0 },
        row: Row {
            table: "salt/saturated-humidity",
            key: "ki",
            printed: "KI: 69 percent at 25 °C; A 29.35, B 254",
            citation: Citation { source: &sources::CRC_RH, place: "table row KI", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedHumidity { salt: "SrCl2.6H2O", lowest: 5.0, highest: 30.0, a: 31.58, b: 241.0 },
        row: Row {
            table: "salt/saturated-humidity",
            key: "srcl2-6h2o",
            printed: "SrCl2.6H2O: 71 percent at 25 °C; A 31.58, B 241",
            citation: Citation { source: &sources::CRC_RH, place: "table row SrCl2.6H2O", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedHumidity { salt: "NaNO3", lowest: 10.0, highest: 40.0, a: 26.94, b: 302.0 },
        row: Row {
            table: "salt/saturated-humidity",
            key: "nano3",
            printed: "NaNO3: 74 percent at 25 °C; A 26.94, B 302",
            citation: Citation { source: &sources::CRC_RH, place: "table row NaNO3", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedHumidity { salt: "NaCl", lowest: 10.0, highest: 40.0, a: 69.2, b: 25.0 },
        row: Row {
            table: "salt/saturated-humidity",
            key: "nacl",
            printed: "NaCl: 75 percent at 25 °C; A 69.2, B 25",
            citation: Citation { source: &sources::CRC_RH, place: "table row NaCl", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedHumidity { salt: "NH4Cl", lowest: 10.0, highest: 40.0, a: 35.67, b: 235.0 },
        row: Row {
            table: "salt/saturated-humidity",
            key: "nh4cl",
            printed: "NH4Cl: 79 percent at 25 °C; A 35.67, B 235",
            citation: Citation { source: &sources::CRC_RH, place: "table row NH4Cl", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedHumidity { salt: "KBr", lowest: 5.0, highest: 25.0, a: 40.98, b: 203.0 },
        row: Row {
            table: "salt/saturated-humidity",
            key: "kbr",
            printed: "KBr: 81 percent at 25 °C; A 40.98, B 203",
            citation: Citation { source: &sources::CRC_RH, place: "table row KBr", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedHumidity { salt: "(NH4)2SO4", lowest: 10.0, highest: 40.0, a: 62.06, b: 79.0 },
        row: Row {
            table: "salt/saturated-humidity",
            key: "nh4-2so4",
            printed: "(NH4)2SO4: 81 percent at 25 °C; A 62.06, B 79",
            citation: Citation { source: &sources::CRC_RH, place: "table row (NH4)2SO4", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedHumidity { salt: "KCl", lowest: 5.0, highest: 25.0, a: 49.38, b: 159.0 },
        row: Row {
            table: "salt/saturated-humidity",
            key: "kcl",
            printed: "KCl: 84 percent at 25 °C; A 49.38, B 159",
            citation: Citation { source: &sources::CRC_RH, place: "table row KCl", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedHumidity { salt: "Sr(NO3)2.4H2O", lowest: 5.0, highest: 25.0, a: 28.34, b: 328.0 },
        row: Row {
            table: "salt/saturated-humidity",
            key: "sr-no3-2-4h2o",
            printed: "Sr(NO3)2.4H2O: 85 percent at 25 °C; A 28.34, B 328",
            citation: Citation { source: &sources::CRC_RH, place: "table row Sr(NO3)2.4H2O", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedHumidity { salt: "BaCl2.2H2O", lowest: 5.0, highest: 25.0, a: 69.99, b: 75.0 },
        row: Row {
            table: "salt/saturated-humidity",
            key: "bacl2-2h2o",
            printed: "BaCl2.2H2O: 90 percent at 25 °C; A 69.99, B 75",
            citation: Citation { source: &sources::CRC_RH, place: "table row BaCl2.2H2O", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedHumidity { salt: "CsI", lowest: 5.0, highest: 25.0, a: 70.77, b: 75.0 },
        row: Row {
            table: "salt/saturated-humidity",
            key: "csi",
            printed: "CsI: 91 percent at 25 °C; A 70.77, B 75",
            citation: Citation { source: &sources::CRC_RH, place: "table row CsI", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedHumidity { salt: "KNO3", lowest: 0.0, highest: 50.0, a: 43.22, b: 225.0 },
        row: Row {
            table: "salt/saturated-humidity",
            key: "kno3",
            printed: "KNO3: 92 percent at 25 °C; A 43.22, B 225",
            citation: Citation { source: &sources::CRC_RH, place: "table row KNO3", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SaturatedHumidity { salt: "K2SO4", lowest: 10.0, highest: 50.0, a: 86.75, b: 34.0 },
        row: Row {
            table: "salt/saturated-humidity",
            key: "k2so4",
            printed: "K2SO4: 97 percent at 25 °C; A 86.75, B 34",
            citation: Citation { source: &sources::CRC_RH, place: "table row K2SO4", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Solubility of salt in water
pub static SOLUBILITY: [Cited<Solubility>; 20] = [
    Cited {
        value: Solubility { fahrenheit: -6.0, percent: 23.31 },
        row: Row {
            table: "salt/solubility",
            key: "f-minus-6",
            printed: "-6 °F: 23.31 percent",
            citation: Citation { source: &sources::SALTINST, place: "row -6.0 F", standing: Standing::Paper, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Solubility { fahrenheit: 0.0, percent: 23.83 },
        row: Row {
            table: "salt/solubility",
            key: "f-0",
            printed: "0 °F: 23.83 percent",
            citation: Citation { source: &sources::SALTINST, place: "row 0.0 F", standing: Standing::Paper, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Solubility { fahrenheit: 10.0, percent: 24.7 },
        row: Row {
            table: "salt/solubility",
            key: "f-10",
            printed: "10 °F: 24.7 percent",
            citation: Citation { source: &sources::SALTINST, place: "row 10.0 F", standing: Standing::Paper, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Solubility { fahrenheit: 20.0, percent: 25.53 },
        row: Row {
            table: "salt/solubility",
            key: "f-20",
            printed: "20 °F: 25.53 percent",
            citation: Citation { source: &sources::SALTINST, place: "row 20.0 F", standing: Standing::Paper, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Solubility { fahrenheit: 30.0, percent: 26.16 },
        row: Row {
            table: "salt/solubility",
            key: "f-30",
            printed: "30 °F: 26.16 percent",
            citation: Citation { source: &sources::SALTINST, place: "row 30.0 F", standing: Standing::Paper, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Solubility { fahrenheit: 32.0, percent: 26.29 },
        row: Row {
            table: "salt/solubility",
            key: "f-32",
            printed: "32 °F: 26.29 percent",
            citation: Citation { source: &sources::SALTINST, place: "row 32.0 F", standing: Standing::Paper, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Solubility { fahrenheit: 32.2, percent: 26.31 },
        row: Row {
            table: "salt/solubility",
            key: "f-32-2",
            printed: "32.2 °F: 26.31 percent",
            citation: Citation { source: &sources::SALTINST, place: "row 32.2 F", standing: Standing::Paper, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Solubility { fahrenheit: 40.0, percent: 26.33 },
        row: Row {
            table: "salt/solubility",
            key: "f-40",
            printed: "40 °F: 26.33 percent",
            citation: Citation { source: &sources::SALTINST, place: "row 40.0 F", standing: Standing::Paper, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Solubility { fahrenheit: 50.0, percent: 26.36 },
        row: Row {
            table: "salt/solubility",
            key: "f-50",
            printed: "50 °F: 26.36 percent",
            citation: Citation { source: &sources::SALTINST, place: "row 50.0 F", standing: Standing::Paper, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Solubility { fahrenheit: 60.0, percent: 26.395 },
        row: Row {
            table: "salt/solubility",
            key: "f-60",
            printed: "60 °F: 26.395 percent",
            citation: Citation { source: &sources::SALTINST, place: "row 60.0 F", standing: Standing::Paper, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Solubility { fahrenheit: 70.0, percent: 26.45 },
        row: Row {
            table: "salt/solubility",
            key: "f-70",
            printed: "70 °F: 26.45 percent",
            citation: Citation { source: &sources::SALTINST, place: "row 70.0 F", standing: Standing::Paper, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Solubility { fahrenheit: 80.0, percent: 26.52 },
        row: Row {
            table: "salt/solubility",
            key: "f-80",
            printed: "80 °F: 26.52 percent",
            citation: Citation { source: &sources::SALTINST, place: "row 80.0 F", standing: Standing::Paper, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Solubility { fahrenheit: 100.0, percent: 26.68 },
        row: Row {
            table: "salt/solubility",
            key: "f-100",
            printed: "100 °F: 26.68 percent",
            citation: Citation { source: &sources::SALTINST, place: "row 100.0 F", standing: Standing::Paper, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Solubility { fahrenheit: 125.0, percent: 26.92 },
        row: Row {
            table: "salt/solubility",
            key: "f-125",
            printed: "125 °F: 26.92 percent",
            citation: Citation { source: &sources::SALTINST, place: "row 125.0 F", standing: Standing::Paper, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Solubility { fahrenheit: 150.0, percent: 27.21 },
        row: Row {
            table: "salt/solubility",
            key: "f-150",
            printed: "150 °F: 27.21 percent",
            citation: Citation { source: &sources::SALTINST, place: "row 150.0 F", standing: Standing::Paper, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Solubility { fahrenheit: 175.0, percent: 27.62 },
        row: Row {
            table: "salt/solubility",
            key: "f-175",
            printed: "175 °F: 27.62 percent",
            citation: Citation { source: &sources::SALTINST, place: "row 175.0 F", standing: Standing::Paper, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Solubility { fahrenheit: 200.0, percent: 27.91 },
        row: Row {
            table: "salt/solubility",
            key: "f-200",
            printed: "200 °F: 27.91 percent",
            citation: Citation { source: &sources::SALTINST, place: "row 200.0 F", standing: Standing::Paper, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Solubility { fahrenheit: 212.0, percent: 28.12 },
        row: Row {
            table: "salt/solubility",
            key: "f-212",
            printed: "212 °F: 28.12 percent",
            citation: Citation { source: &sources::SALTINST, place: "row 212.0 F", standing: Standing::Paper, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Solubility { fahrenheit: 220.0, percent: 28.29 },
        row: Row {
            table: "salt/solubility",
            key: "f-220",
            printed: "220 °F: 28.29 percent",
            citation: Citation { source: &sources::SALTINST, place: "row 220.0 F", standing: Standing::Paper, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Solubility { fahrenheit: 227.5, percent: 28.46 },
        row: Row {
            table: "salt/solubility",
            key: "f-227-5",
            printed: "227.5 °F: 28.46 percent",
            citation: Citation { source: &sources::SALTINST, place: "row 227.5 F", standing: Standing::Paper, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "108.7 °C is printed beside it; 227.5 °F is 108.61 °C.",
        },
    },
];

/// Specific volume of salt water
pub static SPECIFIC_VOLUME: [Cited<SpecificVolume>; 63] = [
    Cited {
        value: SpecificVolume { celsius: 0.0, molality: 0.1, cm3_per_g: 0.995732 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-0-m-0-1",
            printed: "0 °C, 0.1 mol/kg: 0.995732 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 0 C, m=0.1", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 0.0, molality: 0.25, cm3_per_g: 0.989259 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-0-m-0-25",
            printed: "0 °C, 0.25 mol/kg: 0.989259 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 0 C, m=0.25", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 0.0, molality: 0.5, cm3_per_g: 0.978889 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-0-m-0-5",
            printed: "0 °C, 0.5 mol/kg: 0.978889 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 0 C, m=0.5", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 0.0, molality: 0.75, cm3_per_g: 0.968991 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-0-m-0-75",
            printed: "0 °C, 0.75 mol/kg: 0.968991 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 0 C, m=0.75", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 0.0, molality: 1.0, cm3_per_g: 0.959525 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-0-m-1",
            printed: "0 °C, 1 mol/kg: 0.959525 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 0 C, m=1.0", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 0.0, molality: 2.0, cm3_per_g: 0.925426 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-0-m-2",
            printed: "0 °C, 2 mol/kg: 0.925426 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 0 C, m=2.0", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 0.0, molality: 3.0, cm3_per_g: 0.896292 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-0-m-3",
            printed: "0 °C, 3 mol/kg: 0.896292 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 0 C, m=3.0", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 0.0, molality: 4.0, cm3_per_g: 0.870996 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-0-m-4",
            printed: "0 °C, 4 mol/kg: 0.870996 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 0 C, m=4.0", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 0.0, molality: 5.0, cm3_per_g: 0.848646 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-0-m-5",
            printed: "0 °C, 5 mol/kg: 0.848646 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 0 C, m=5.0", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 10.0, molality: 0.1, cm3_per_g: 0.995998 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-10-m-0-1",
            printed: "10 °C, 0.1 mol/kg: 0.995998 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 10 C, m=0.1", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 10.0, molality: 0.25, cm3_per_g: 0.989781 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-10-m-0-25",
            printed: "10 °C, 0.25 mol/kg: 0.989781 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 10 C, m=0.25", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 10.0, molality: 0.5, cm3_per_g: 0.979804 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-10-m-0-5",
            printed: "10 °C, 0.5 mol/kg: 0.979804 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 10 C, m=0.5", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 10.0, molality: 0.75, cm3_per_g: 0.970256 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-10-m-0-75",
            printed: "10 °C, 0.75 mol/kg: 0.970256 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 10 C, m=0.75", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 10.0, molality: 1.0, cm3_per_g: 0.961101 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-10-m-1",
            printed: "10 °C, 1 mol/kg: 0.961101 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 10 C, m=1.0", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 10.0, molality: 2.0, cm3_per_g: 0.927905 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-10-m-2",
            printed: "10 °C, 2 mol/kg: 0.927905 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 10 C, m=2.0", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 10.0, molality: 3.0, cm3_per_g: 0.899262 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-10-m-3",
            printed: "10 °C, 3 mol/kg: 0.899262 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 10 C, m=3.0", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 10.0, molality: 4.0, cm3_per_g: 0.874201 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-10-m-4",
            printed: "10 °C, 4 mol/kg: 0.874201 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 10 C, m=4.0", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 10.0, molality: 5.0, cm3_per_g: 0.851958 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-10-m-5",
            printed: "10 °C, 5 mol/kg: 0.851958 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 10 C, m=5.0", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 20.0, molality: 0.1, cm3_per_g: 0.99762 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-20-m-0-1",
            printed: "20 °C, 0.1 mol/kg: 0.99762 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 20 C, m=0.1", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 20.0, molality: 0.25, cm3_per_g: 0.991564 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-20-m-0-25",
            printed: "20 °C, 0.25 mol/kg: 0.991564 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 20 C, m=0.25", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 20.0, molality: 0.5, cm3_per_g: 0.981833 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-20-m-0-5",
            printed: "20 °C, 0.5 mol/kg: 0.981833 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 20 C, m=0.5", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 20.0, molality: 0.75, cm3_per_g: 0.972505 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-20-m-0-75",
            printed: "20 °C, 0.75 mol/kg: 0.972505 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 20 C, m=0.75", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 20.0, molality: 1.0, cm3_per_g: 0.963544 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-20-m-1",
            printed: "20 °C, 1 mol/kg: 0.963544 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 20 C, m=1.0", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 20.0, molality: 2.0, cm3_per_g: 0.930909 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-20-m-2",
            printed: "20 °C, 2 mol/kg: 0.930909 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 20 C, m=2.0", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 20.0, molality: 3.0, cm3_per_g: 0.902565 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-20-m-3",
            printed: "20 °C, 3 mol/kg: 0.902565 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 20 C, m=3.0", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 20.0, molality: 4.0, cm3_per_g: 0.877643 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-20-m-4",
            printed: "20 °C, 4 mol/kg: 0.877643 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 20 C, m=4.0", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 20.0, molality: 5.0, cm3_per_g: 0.855469 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-20-m-5",
            printed: "20 °C, 5 mol/kg: 0.855469 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 20 C, m=5.0", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 25.0, molality: 0.1, cm3_per_g: 0.998834 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-25-m-0-1",
            printed: "25 °C, 0.1 mol/kg: 0.998834 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 25 C, m=0.1", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 25.0, molality: 0.25, cm3_per_g: 0.992832 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-25-m-0-25",
            printed: "25 °C, 0.25 mol/kg: 0.992832 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 25 C, m=0.25", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 25.0, molality: 0.5, cm3_per_g: 0.983185 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-25-m-0-5",
            printed: "25 °C, 0.5 mol/kg: 0.983185 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 25 C, m=0.5", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 25.0, molality: 0.75, cm3_per_g: 0.973932 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-25-m-0-75",
            printed: "25 °C, 0.75 mol/kg: 0.973932 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 25 C, m=0.75", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 25.0, molality: 1.0, cm3_per_g: 0.965038 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-25-m-1",
            printed: "25 °C, 1 mol/kg: 0.965038 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 25 C, m=1.0", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 25.0, molality: 2.0, cm3_per_g: 0.93259 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-25-m-2",
            printed: "25 °C, 2 mol/kg: 0.93259 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 25 C, m=2.0", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 25.0, molality: 3.0, cm3_per_g: 0.904339 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-25-m-3",
            printed: "25 °C, 3 mol/kg: 0.904339 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 25 C, m=3.0", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 25.0, molality: 4.0, cm3_per_g: 0.879457 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-25-m-4",
            printed: "25 °C, 4 mol/kg: 0.879457 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 25 C, m=4.0", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 25.0, molality: 5.0, cm3_per_g: 0.857301 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-25-m-5",
            printed: "25 °C, 5 mol/kg: 0.857301 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 25 C, m=5.0", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 30.0, molality: 0.1, cm3_per_g: 1.000279 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-30-m-0-1",
            printed: "30 °C, 0.1 mol/kg: 1.000279 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 30 C, m=0.1", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 30.0, molality: 0.25, cm3_per_g: 0.994319 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-30-m-0-25",
            printed: "30 °C, 0.25 mol/kg: 0.994319 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 30 C, m=0.25", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 30.0, molality: 0.5, cm3_per_g: 0.984735 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-30-m-0-5",
            printed: "30 °C, 0.5 mol/kg: 0.984735 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 30 C, m=0.5", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 30.0, molality: 0.75, cm3_per_g: 0.975539 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-30-m-0-75",
            printed: "30 °C, 0.75 mol/kg: 0.975539 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 30 C, m=0.75", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 30.0, molality: 1.0, cm3_per_g: 0.966694 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-30-m-1",
            printed: "30 °C, 1 mol/kg: 0.966694 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 30 C, m=1.0", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 30.0, molality: 2.0, cm3_per_g: 0.934382 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-30-m-2",
            printed: "30 °C, 2 mol/kg: 0.934382 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 30 C, m=2.0", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 30.0, molality: 3.0, cm3_per_g: 0.906194 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-30-m-3",
            printed: "30 °C, 3 mol/kg: 0.906194 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 30 C, m=3.0", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 30.0, molality: 4.0, cm3_per_g: 0.881334 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-30-m-4",
            printed: "30 °C, 4 mol/kg: 0.881334 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 30 C, m=4.0", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 30.0, molality: 5.0, cm3_per_g: 0.859185 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-30-m-5",
            printed: "30 °C, 5 mol/kg: 0.859185 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 30 C, m=5.0", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 40.0, molality: 0.1, cm3_per_g: 1.003796 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-40-m-0-1",
            printed: "40 °C, 0.1 mol/kg: 1.003796 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 40 C, m=0.1", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 40.0, molality: 0.25, cm3_per_g: 0.997883 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-40-m-0-25",
            printed: "40 °C, 0.25 mol/kg: 0.997883 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 40 C, m=0.25", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 40.0, molality: 0.5, cm3_per_g: 0.988374 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-40-m-0-5",
            printed: "40 °C, 0.5 mol/kg: 0.988374 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 40 C, m=0.5", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 40.0, molality: 0.75, cm3_per_g: 0.979243 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-40-m-0-75",
            printed: "40 °C, 0.75 mol/kg: 0.979243 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 40 C, m=0.75", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 40.0, molality: 1.0, cm3_per_g: 0.970455 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-40-m-1",
            printed: "40 °C, 1 mol/kg: 0.970455 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 40 C, m=1.0", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 40.0, molality: 2.0, cm3_per_g: 0.938287 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-40-m-2",
            printed: "40 °C, 2 mol/kg: 0.938287 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 40 C, m=2.0", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 40.0, molality: 3.0, cm3_per_g: 0.910145 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-40-m-3",
            printed: "40 °C, 3 mol/kg: 0.910145 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 40 C, m=3.0", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 40.0, molality: 4.0, cm3_per_g: 0.885276 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-40-m-4",
            printed: "40 °C, 4 mol/kg: 0.885276 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 40 C, m=4.0", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 40.0, molality: 5.0, cm3_per_g: 0.863108 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-40-m-5",
            printed: "40 °C, 5 mol/kg: 0.863108 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 40 C, m=5.0", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 50.0, molality: 0.1, cm3_per_g: 1.008064 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-50-m-0-1",
            printed: "50 °C, 0.1 mol/kg: 1.008064 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 50 C, m=0.1", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 50.0, molality: 0.25, cm3_per_g: 1.002161 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-50-m-0-25",
            printed: "50 °C, 0.25 mol/kg: 1.002161 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 50 C, m=0.25", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 50.0, molality: 0.5, cm3_per_g: 0.992668 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-50-m-0-5",
            printed: "50 °C, 0.5 mol/kg: 0.992668 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 50 C, m=0.5", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 50.0, molality: 0.75, cm3_per_g: 0.983551 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-50-m-0-75",
            printed: "50 °C, 0.75 mol/kg: 0.983551 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 50 C, m=0.75", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 50.0, molality: 1.0, cm3_per_g: 0.974772 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-50-m-1",
            printed: "50 °C, 1 mol/kg: 0.974772 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 50 C, m=1.0", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 50.0, molality: 2.0, cm3_per_g: 0.942603 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-50-m-2",
            printed: "50 °C, 2 mol/kg: 0.942603 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 50 C, m=2.0", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 50.0, molality: 3.0, cm3_per_g: 0.914411 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-50-m-3",
            printed: "50 °C, 3 mol/kg: 0.914411 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 50 C, m=3.0", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 50.0, molality: 4.0, cm3_per_g: 0.889473 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-50-m-4",
            printed: "50 °C, 4 mol/kg: 0.889473 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 50 C, m=4.0", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SpecificVolume { celsius: 50.0, molality: 5.0, cm3_per_g: 0.867241 },
        row: Row {
            table: "salt/specific-volume",
            key: "c-50-m-5",
            printed: "50 °C, 5 mol/kg: 0.867241 cm3/g",
            citation: Citation { source: &sources::ROGERS_PITZER, place: "v table, 50 C, m=5.0", standing: Standing::Handbook, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Salt that is usual in sausage
pub static USUAL_LEAST: Cited<f64> = Cited {
        value: 1.5,
        row: Row {
            table: "salt/usual",
            key: "least",
            printed: "1.5 percent of the meat",
            citation: Citation { source: &sources::TRADE_PRACTICE, place: "no document", standing: Standing::CommonPractice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "With less, less protein dissolves to bind, and salt holds back fewer microbes.",
        },
    };

/// Salt that is usual in sausage
pub static USUAL_MOST: Cited<f64> = Cited {
        value: 2.5,
        row: Row {
            table: "salt/usual",
            key: "most",
            printed: "2.5 percent of the meat",
            citation: Citation { source: &sources::TRADE_PRACTICE, place: "no document", standing: Standing::CommonPractice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Water activity of salt water at 25 °C
pub static WATER_ACTIVITY: [Cited<TabledActivity>; 52] = [
    Cited {
        value: TabledActivity { percent: 0.5, activity: 0.99711, spread: 1e-5 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-0-5",
            printed: "0.5 percent: 0.99711",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 1.0, activity: 0.99425, spread: 2e-5 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-1",
            printed: "1 percent: 0.99425",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 1.5, activity: 0.99138, spread: 4e-5 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-1-5",
            printed: "1.5 percent: 0.99138",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 2.0, activity: 0.98848, spread: 6e-5 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-2",
            printed: "2 percent: 0.98848",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 2.5, activity: 0.98555, spread: 7e-5 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-2-5",
            printed: "2.5 percent: 0.98555",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 3.0, activity: 0.98257, spread: 9e-5 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-3",
            printed: "3 percent: 0.98257",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 3.5, activity: 0.97955, spread: 0.0001 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-3-5",
            printed: "3.5 percent: 0.97955",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 4.0, activity: 0.97649, spread: 0.00011 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-4",
            printed: "4 percent: 0.97649",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 4.5, activity: 0.97338, spread: 0.00011 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-4-5",
            printed: "4.5 percent: 0.97338",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 5.0, activity: 0.97021, spread: 0.00011 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-5",
            printed: "5 percent: 0.97021",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 5.5, activity: 0.96699, spread: 0.00014 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-5-5",
            printed: "5.5 percent: 0.96699",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 6.0, activity: 0.96372, spread: 0.00017 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-6",
            printed: "6 percent: 0.96372",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 6.5, activity: 0.96038, spread: 0.00019 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-6-5",
            printed: "6.5 percent: 0.96038",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 7.0, activity: 0.95699, spread: 0.00022 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-7",
            printed: "7 percent: 0.95699",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 7.5, activity: 0.95353, spread: 0.00026 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-7-5",
            printed: "7.5 percent: 0.95353",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 8.0, activity: 0.95, spread: 0.00031 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-8",
            printed: "8 percent: 0.95",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 8.5, activity: 0.9464, spread: 0.00036 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-8-5",
            printed: "8.5 percent: 0.9464",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 9.0, activity: 0.94273, spread: 0.00041 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-9",
            printed: "9 percent: 0.94273",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 9.5, activity: 0.93899, spread: 0.00045 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-9-5",
            printed: "9.5 percent: 0.93899",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 10.0, activity: 0.93516, spread: 0.00049 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-10",
            printed: "10 percent: 0.93516",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 10.5, activity: 0.93126, spread: 0.00053 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-10-5",
            printed: "10.5 percent: 0.93126",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 11.0, activity: 0.92727, spread: 0.00057 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-11",
            printed: "11 percent: 0.92727",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 11.5, activity: 0.9232, spread: 0.0006 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-11-5",
            printed: "11.5 percent: 0.9232",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 12.0, activity: 0.91905, spread: 0.00062 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-12",
            printed: "12 percent: 0.91905",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 12.5, activity: 0.9148, spread: 0.00064 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-12-5",
            printed: "12.5 percent: 0.9148",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 13.0, activity: 0.91046, spread: 0.00066 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-13",
            printed: "13 percent: 0.91046",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 13.5, activity: 0.90602, spread: 0.00067 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-13-5",
            printed: "13.5 percent: 0.90602",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 14.0, activity: 0.90149, spread: 0.00067 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-14",
            printed: "14 percent: 0.90149",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 14.5, activity: 0.89686, spread: 0.00066 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-14-5",
            printed: "14.5 percent: 0.89686",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 15.0, activity: 0.89213, spread: 0.00065 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-15",
            printed: "15 percent: 0.89213",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 15.5, activity: 0.88729, spread: 0.00065 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-15-5",
            printed: "15.5 percent: 0.88729",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 16.0, activity: 0.88235, spread: 0.00068 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-16",
            printed: "16 percent: 0.88235",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 16.5, activity: 0.8773, spread: 0.00069 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-16-5",
            printed: "16.5 percent: 0.8773",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 17.0, activity: 0.87214, spread: 0.00077 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-17",
            printed: "17 percent: 0.87214",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 17.5, activity: 0.86687, spread: 0.00084 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-17-5",
            printed: "17.5 percent: 0.86687",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 18.0, activity: 0.86149, spread: 0.00091 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-18",
            printed: "18 percent: 0.86149",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 18.5, activity: 0.856, spread: 0.00098 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-18-5",
            printed: "18.5 percent: 0.856",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 19.0, activity: 0.85039, spread: 0.00104 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-19",
            printed: "19 percent: 0.85039",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 19.5, activity: 0.84466, spread: 0.00108 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-19-5",
            printed: "19.5 percent: 0.84466",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 20.0, activity: 0.83882, spread: 0.00112 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-20",
            printed: "20 percent: 0.83882",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 20.5, activity: 0.83285, spread: 0.00115 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-20-5",
            printed: "20.5 percent: 0.83285",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 21.0, activity: 0.82677, spread: 0.00115 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-21",
            printed: "21 percent: 0.82677",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 21.5, activity: 0.82056, spread: 0.00114 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-21-5",
            printed: "21.5 percent: 0.82056",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 22.0, activity: 0.81424, spread: 0.00111 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-22",
            printed: "22 percent: 0.81424",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 22.5, activity: 0.80779, spread: 0.00105 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-22-5",
            printed: "22.5 percent: 0.80779",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 23.0, activity: 0.80123, spread: 0.00096 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-23",
            printed: "23 percent: 0.80123",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 23.5, activity: 0.79454, spread: 0.00085 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-23-5",
            printed: "23.5 percent: 0.79454",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 24.0, activity: 0.78773, spread: 0.00081 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-24",
            printed: "24 percent: 0.78773",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 24.5, activity: 0.78079, spread: 0.00081 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-24-5",
            printed: "24.5 percent: 0.78079",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 25.0, activity: 0.77374, spread: 0.0008 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-25",
            printed: "25 percent: 0.77374",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 25.5, activity: 0.76657, spread: 0.00081 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-25-5",
            printed: "25.5 percent: 0.76657",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: TabledActivity { percent: 26.0, activity: 0.75928, spread: 0.00111 },
        row: Row {
            table: "salt/water-activity",
            key: "percent-26",
            printed: "26 percent: 0.75928",
            citation: Citation { source: &sources::STEIGER2008, place: "computed at 25 C", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Density of water
pub static WATER: Cited<f64> = Cited {
        value: 998.2,
        row: Row {
            table: "salt/water",
            key: "at-20-c",
            printed: "998.2 kg/m3",
            citation: Citation { source: &sources::TRADE_PRACTICE, place: "no document", standing: Standing::CommonPractice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "A property of water found in every handbook, here from memory.",
        },
    };
