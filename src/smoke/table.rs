// Made from references/ by references/pipeline. Do not edit: change the reference file.

use crate::cite::{Citation, Cited, InForce, Row, Seen, Standing, sources};
use super::Ceiling;
use crate::authority::Authority;
use crate::food::Food;
use crate::units::{PrintedTemperature, hours};

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
