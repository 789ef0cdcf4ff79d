// Made from references/ by references/pipeline. Do not edit: change the reference file.

use crate::cite::{Citation, Cited, InForce, Row, Seen, Standing, sources};
use super::fish::{ChubProcess, HotSmoke, WaterPhase};
use super::Ceiling;
use crate::authority::Authority;
use crate::finding::Limit;
use crate::food::Food;
use crate::level::Level;
use crate::units::{PrintedTemperature, Time, hours, minutes};

/// Brining fish before smoking
pub static BRINING_START: Cited<PrintedTemperature> = Cited {
        value: PrintedTemperature::Both(60.0, 15.56),
        row: Row {
            table: "smoke/brining",
            key: "brine-temperature-at-start-vacuum-map-p-ny-262",
            printed: "brine temperature at start (vacuum/MAP product): 60 °F",
            citation: Citation { source: &sources::NY_262, place: "262.5(a)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Brining fish before smoking
pub static BRINING_ROOM: Cited<PrintedTemperature> = Cited {
        value: PrintedTemperature::Both(38.0, 3.33),
        row: Row {
            table: "smoke/brining",
            key: "brining-longer-than-4-h-area-at-or-belo-ny-262",
            printed: "brining longer than 4 h: area at or below (vacuum/MAP product): 38 °F",
            citation: Citation { source: &sources::NY_262, place: "262.5(a)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Brining fish before smoking
pub static BRINING_ROOM_TIME: Cited<Time> = Cited {
        value: hours(4.0),
        row: Row {
            table: "smoke/brining",
            key: "brining-longer-than-4-h-area-at-or-belo-ny-262",
            printed: "brining longer than 4 h: area at or below (vacuum/MAP product): 38 °F",
            citation: Citation { source: &sources::NY_262, place: "262.5(a)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Process of smoked chub, United States
pub static CHUB: Cited<ChubProcess> = Cited {
        value: ChubProcess { inside: PrintedTemperature::Fahrenheit(160.0), time: minutes(30.0), first: (PrintedTemperature::Fahrenheit(50.0), hours(3.0)), second: (PrintedTemperature::Fahrenheit(38.0), hours(12.0)) },
        row: Row {
            table: "smoke/chub",
            key: "smoked-chub-process",
            printed: "160 °F for 30 minutes; to 50 °F within 3 hours and to 38 °F within 12 hours of the end of smoking; kept at 38 °F or below",
            citation: Citation { source: &sources::CFR21_172_177_2015, place: "172.177(c) heat, (d) cooling and storage", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// How warm a cold-smoking chamber may be
pub static COLD_CEILINGS: [Cited<Ceiling>; 7] = [
    Cited {
        value: Ceiling { food: Food::Fish, air_packed_only: false, authority: Some(Authority::UsFda), temperature: PrintedTemperature::Both(90.0, 32.2), time: None },
        row: Row {
            table: "smoke/cold-ceilings",
            key: "fda",
            printed: "not above 90 °F (32.2 °C)",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "chapter 13, control strategy 1B, page 263", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "Smoker chamber air, recorded continuously; purpose: leave enough spoilage bacteria alive.",
        },
    },
    Cited {
        value: Ceiling { food: Food::Fish, air_packed_only: false, authority: Some(Authority::UsMaine), temperature: PrintedTemperature::Fahrenheit(90.0), time: Some(hours(20.0)) },
        row: Row {
            table: "smoke/cold-ceilings",
            key: "maine-32c",
            printed: "not above 90 °F for at most 20 h",
            citation: Citation { source: &sources::ME_359, place: "s.2(C)(3)(a)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "Smoking chamber air, drying plus smoking period.",
        },
    },
    Cited {
        value: Ceiling { food: Food::Fish, air_packed_only: false, authority: Some(Authority::UsMaine), temperature: PrintedTemperature::Fahrenheit(50.0), time: Some(hours(24.0)) },
        row: Row {
            table: "smoke/cold-ceilings",
            key: "maine-10c",
            printed: "not above 50 °F for at most 24 h",
            citation: Citation { source: &sources::ME_359, place: "s.2(C)(3)(b)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "Smoking chamber air, drying plus smoking period.",
        },
    },
    Cited {
        value: Ceiling { food: Food::Fish, air_packed_only: true, authority: None, temperature: PrintedTemperature::Celsius(32.0), time: Some(hours(20.0)) },
        row: Row {
            table: "smoke/cold-ceilings",
            key: "teaching-text-32c",
            printed: "not above 32 °C for at most 20 h",
            citation: Citation { source: &sources::RU_TEXT, place: "Cold smoked fish", standing: Standing::Handbook, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "Smoking chamber air. A teaching text that repeats rules of this kind; the rules themselves were not read.",
        },
    },
    Cited {
        value: Ceiling { food: Food::Fish, air_packed_only: true, authority: None, temperature: PrintedTemperature::Celsius(10.0), time: Some(hours(24.0)) },
        row: Row {
            table: "smoke/cold-ceilings",
            key: "teaching-text-10c",
            printed: "not above 10 °C for at most 24 h",
            citation: Citation { source: &sources::RU_TEXT, place: "Cold smoked fish", standing: Standing::Handbook, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "Smoking chamber air. A teaching text that repeats rules of this kind; the rules themselves were not read.",
        },
    },
    Cited {
        value: Ceiling { food: Food::Fish, air_packed_only: false, authority: Some(Authority::Ontario), temperature: PrintedTemperature::Both(90.0, 32.2), time: None },
        row: Row {
            table: "smoke/cold-ceilings",
            key: "ontario",
            printed: "32.2 °C (90 °F)",
            citation: Citation { source: &sources::ON_FPG, place: "Rationale, Cold smoking (example)", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "Smoking chamber air.",
        },
    },
    Cited {
        value: Ceiling { food: Food::Cheese, air_packed_only: false, authority: None, temperature: PrintedTemperature::Fahrenheit(90.0), time: None },
        row: Row {
            table: "smoke/cold-ceilings",
            key: "cheese",
            printed: "not above 90 °F",
            citation: Citation { source: &sources::TRADE_PRACTICE, place: "no document", standing: Standing::CommonPractice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "Above it cheese starts to melt and sweat its fat. A limit of quality, of the chamber air; how long cheese may be out of refrigeration is another question.",
        },
    },
];

/// Hot-smoked fish
pub static HOT_FISH: [Cited<HotSmoke>; 2] = [
    Cited {
        value: HotSmoke { authority: Authority::UsMaine, inside: PrintedTemperature::Both(145.0, 62.78), time: minutes(30.0) },
        row: Row {
            table: "smoke/hot-fish",
            key: "me-359-fish-air-packaged",
            printed: "fish, air packaged: 145 °F for 30 min",
            citation: Citation { source: &sources::ME_359, place: "s.2(C)(1)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: HotSmoke { authority: Authority::UsFda, inside: PrintedTemperature::Both(145.0, 62.78), time: minutes(30.0) },
        row: Row {
            table: "smoke/hot-fish",
            key: "fda-haz-2020-fish",
            printed: "fish: 145 °F for 30 min",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "chapter 13, control strategy 1C, page 265", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// When a shop needs a variance
pub static VARIANCE: [Cited<()>; 5] = [
    Cited {
        value: (),
        row: Row {
            table: "smoke/variance",
            key: "smoking-as-preservation-not-for-flavour-only",
            printed: "smoking as preservation (not for flavour only)",
            citation: Citation { source: &sources::WI_3_502_11, place: "3-502.11(A)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: (),
        row: Row {
            table: "smoke/variance",
            key: "curing-food",
            printed: "curing food",
            citation: Citation { source: &sources::WI_3_502_11, place: "3-502.11(B)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: (),
        row: Row {
            table: "smoke/variance",
            key: "additives-or-vinegar-as-preservation-or-to-m",
            printed: "additives or vinegar as preservation or to make a food non-TCS",
            citation: Citation { source: &sources::WI_3_502_11, place: "3-502.11(C)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: (),
        row: Row {
            table: "smoke/variance",
            key: "reduced-oxygen-packing-of-tcs-food-outside-3",
            printed: "reduced oxygen packing of TCS food outside 3-502.12",
            citation: Citation { source: &sources::WI_3_502_11, place: "3-502.11(D)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: (),
        row: Row {
            table: "smoke/variance",
            key: "cold-process-smoked-fish-any-rop-of-smoked-f",
            printed: "cold process smoked fish; any ROP of smoked fish; any nitrite or salt substitute (Michigan)",
            citation: Citation { source: &sources::MI_569, place: "R 285.569.18", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Salt in the water of smoked fish
pub static WATER_PHASE_SALT: [Cited<WaterPhase>; 7] = [
    Cited {
        value: WaterPhase { authority: Authority::UsMaine, cold: Some(false), airless: false, nitrite: None, percent: 2.5 },
        row: Row {
            table: "smoke/water-phase-salt",
            key: "me-359",
            printed: "hot, air: at least 2.5 % of the water phase",
            citation: Citation { source: &sources::ME_359, place: "s.2(C)(1)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: WaterPhase { authority: Authority::UsMaine, cold: Some(false), airless: true, nitrite: None, percent: 3.5 },
        row: Row {
            table: "smoke/water-phase-salt",
            key: "me-359-2",
            printed: "hot, vacuum or MAP: at least 3.5 % of the water phase",
            citation: Citation { source: &sources::ME_359, place: "s.2(C)(2)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: WaterPhase { authority: Authority::UsMaine, cold: Some(false), airless: true, nitrite: Some(Limit::Between(Level::of(100.0), Level::of(200.0))), percent: 3.0 },
        row: Row {
            table: "smoke/water-phase-salt",
            key: "me-359-3",
            printed: "hot, vacuum or MAP: at least 3 % of the water phase with 100 to 200 ppm nitrite",
            citation: Citation { source: &sources::ME_359, place: "s.2(C)(2)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: WaterPhase { authority: Authority::UsMaine, cold: Some(true), airless: false, nitrite: None, percent: 2.5 },
        row: Row {
            table: "smoke/water-phase-salt",
            key: "me-359-4",
            printed: "cold, air: at least 2.5 % of the water phase",
            citation: Citation { source: &sources::ME_359, place: "s.2(C)(4)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: WaterPhase { authority: Authority::UsMaine, cold: Some(true), airless: true, nitrite: None, percent: 3.5 },
        row: Row {
            table: "smoke/water-phase-salt",
            key: "me-359-5",
            printed: "cold, vacuum or MAP: at least 3.5 % of the water phase",
            citation: Citation { source: &sources::ME_359, place: "s.2(C)(5), excerpt ends after the figure", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: WaterPhase { authority: Authority::UsFda, cold: None, airless: true, nitrite: None, percent: 3.5 },
        row: Row {
            table: "smoke/water-phase-salt",
            key: "fda-haz-2020-4",
            printed: "refrigerated reduced oxygen packed smoked or smoke-flavored fish, ROP: at least 3.5 % of the water phase",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "chapter 13, control strategy 1A, page 260", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: WaterPhase { authority: Authority::UsFda, cold: None, airless: true, nitrite: Some(Limit::Between(Level::of(100.0), Level::of(200.0))), percent: 3.0 },
        row: Row {
            table: "smoke/water-phase-salt",
            key: "fda-haz-2020-5",
            printed: "same, where nitrite is permitted, ROP: at least 3 % of the water phase with 100 to 200 ppm nitrite",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "chapter 13, page 260; ceiling page 251", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "10 ppm ceiling for tuna, so the 3.0 percent route is closed to tuna",
        },
    },
];
