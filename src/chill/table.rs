// Made from references/ by references/pipeline. Do not edit: change the reference file.

use crate::cite::{Citation, Cited, Date, InForce, Row, Seen, Standing, sources};
use super::clock::Leg;
use super::check::Formula;
use super::ferment::DegreeHours;
use super::warm::WarmTime;
use crate::authority::Authority;
use crate::units::{PrintedTemperature, Scale, hours};

/// Cooling in Australia
pub static AUSTRALIA: [Cited<Leg>; 2] = [
    Cited {
        value: Leg { schedule: "australia", from: PrintedTemperature::Celsius(60.0), to: PrintedTemperature::Celsius(21.0), most: hours(2.0) },
        row: Row {
            table: "chill/australia",
            key: "stage-1",
            printed: "cooling stage 1: 60 to 21 °C in 2 h",
            citation: Citation { source: &sources::AU_3_2_2, place: "cl 7(3)", standing: Standing::Law, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Leg { schedule: "australia", from: PrintedTemperature::Celsius(21.0), to: PrintedTemperature::Celsius(5.0), most: hours(4.0) },
        row: Row {
            table: "chill/australia",
            key: "stage-2",
            printed: "cooling stage 2 (a FURTHER 4 h): 21 to 5 °C in 4 h",
            citation: Citation { source: &sources::AU_3_2_2, place: "cl 7(3)", standing: Standing::Law, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Cooling cooked meat and poultry, United States plants and California
pub static COOLING_US: [Cited<Leg>; 18] = [
    Cited {
        value: Leg { schedule: "fsis-1999-1", from: PrintedTemperature::Both(130.0, 54.4), to: PrintedTemperature::Both(80.0, 26.7), most: hours(1.5) },
        row: Row {
            table: "chill/cooling-us",
            key: "fsis-1999-1-1",
            printed: "fsis-1999-1, leg 1: 130 to 80 °F in 1.5 h",
            citation: Citation { source: &sources::OSU_117, place: "Rapid Chill", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, Some(Date::printed(2022, 12, 14))),
            note: "",
        },
    },
    Cited {
        value: Leg { schedule: "fsis-1999-1", from: PrintedTemperature::Both(80.0, 26.7), to: PrintedTemperature::Both(40.0, 4.4), most: hours(5.0) },
        row: Row {
            table: "chill/cooling-us",
            key: "fsis-1999-1-2",
            printed: "fsis-1999-1, leg 2: 80 to 40 °F in 5 h",
            citation: Citation { source: &sources::OSU_117, place: "Rapid Chill", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, Some(Date::printed(2022, 12, 14))),
            note: "6.5 h in all",
        },
    },
    Cited {
        value: Leg { schedule: "fsis-1999-2", from: PrintedTemperature::Both(120.0, 48.9), to: PrintedTemperature::Both(55.0, 12.8), most: hours(6.0) },
        row: Row {
            table: "chill/cooling-us",
            key: "fsis-1999-2-1",
            printed: "fsis-1999-2, leg 1: 120 to 55 °F in 6 h",
            citation: Citation { source: &sources::MSU_APPB_OPT2, place: "text", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, Some(Date::printed(2022, 12, 14))),
            note: "then chilled on to 40 F; chilling starts within 90 min after cooking (osu-117); text warns that over 1 h between 120 and 80 F makes compliance less certain",
        },
    },
    Cited {
        value: Leg { schedule: "fsis-1999-2-warning", from: PrintedTemperature::Both(120.0, 48.9), to: PrintedTemperature::Both(80.0, 26.7), most: hours(1.0) },
        row: Row {
            table: "chill/cooling-us",
            key: "fsis-1999-2-warning-1",
            printed: "fsis-1999-2-warning, leg 1: 120 to 80 °F in 1 h",
            citation: Citation { source: &sources::MSU_APPB_OPT2, place: "last sentence of option 2 quoted", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, Some(Date::printed(2022, 12, 14))),
            note: "",
        },
    },
    Cited {
        value: Leg { schedule: "fsis-1999-cured", from: PrintedTemperature::Both(130.0, 54.4), to: PrintedTemperature::Both(80.0, 26.7), most: hours(5.0) },
        row: Row {
            table: "chill/cooling-us",
            key: "fsis-1999-cured-1",
            printed: "fsis-1999-cured, leg 1: 130 to 80 °F in 5 h",
            citation: Citation { source: &sources::CFIA_COOLING, place: "FSIS 1999 parameters quoted by CFIA", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, Some(Date::printed(2022, 12, 14))),
            note: "",
        },
    },
    Cited {
        value: Leg { schedule: "fsis-1999-cured", from: PrintedTemperature::Both(80.0, 26.7), to: PrintedTemperature::Both(45.0, 7.2), most: hours(10.0) },
        row: Row {
            table: "chill/cooling-us",
            key: "fsis-1999-cured-2",
            printed: "fsis-1999-cured, leg 2: 80 to 45 °F in 10 h",
            citation: Citation { source: &sources::CFIA_COOLING, place: "same", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, Some(Date::printed(2022, 12, 14))),
            note: "15 h in all. DISAGREEMENT: osu-117 prints the second leg as 80 to 40 F in 10 h and Osterbauer 2017 uses 26.7 to 4.4 C in 10 h; CFIA prints 45 F (7.2 C)",
        },
    },
    Cited {
        value: Leg { schedule: "fsis-2021-1.1", from: PrintedTemperature::Both(130.0, 54.4), to: PrintedTemperature::Both(80.0, 26.7), most: hours(1.5) },
        row: Row {
            table: "chill/cooling-us",
            key: "fsis-2021-1-1-1",
            printed: "fsis-2021-1.1, leg 1: 130 to 80 °F in 1.5 h",
            citation: Citation { source: &sources::FSIS_STAB_2021, place: "option table, not seen", standing: Standing::Guidance, seen: Seen::Memory },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Leg { schedule: "fsis-2021-1.1", from: PrintedTemperature::Both(80.0, 26.7), to: PrintedTemperature::Both(40.0, 4.4), most: hours(5.0) },
        row: Row {
            table: "chill/cooling-us",
            key: "fsis-2021-1-1-2",
            printed: "fsis-2021-1.1, leg 2: 80 to 40 °F in 5 h",
            citation: Citation { source: &sources::FSIS_STAB_2021, place: "option table, not seen", standing: Standing::Guidance, seen: Seen::Memory },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Leg { schedule: "fsis-2021-1.2", from: PrintedTemperature::Both(130.0, 54.4), to: PrintedTemperature::Both(80.0, 26.7), most: hours(1.75) },
        row: Row {
            table: "chill/cooling-us",
            key: "fsis-2021-1-2-1",
            printed: "fsis-2021-1.2, leg 1: 130 to 80 °F in 1.75 h",
            citation: Citation { source: &sources::FSIS_STAB_2021, place: "option table, not seen; weak memory", standing: Standing::Guidance, seen: Seen::Memory },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Leg { schedule: "fsis-2021-1.2", from: PrintedTemperature::Both(80.0, 26.7), to: PrintedTemperature::Both(40.0, 4.4), most: hours(4.75) },
        row: Row {
            table: "chill/cooling-us",
            key: "fsis-2021-1-2-2",
            printed: "fsis-2021-1.2, leg 2: 80 to 40 °F in 4.75 h",
            citation: Citation { source: &sources::FSIS_STAB_2021, place: "option table, not seen; weak memory", standing: Standing::Guidance, seen: Seen::Memory },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Leg { schedule: "fsis-2021-2", from: PrintedTemperature::Both(120.0, 48.9), to: PrintedTemperature::Both(80.0, 26.7), most: hours(1.0) },
        row: Row {
            table: "chill/cooling-us",
            key: "fsis-2021-2-1",
            printed: "fsis-2021-2, leg 1: 120 to 80 °F in 1 h",
            citation: Citation { source: &sources::FSIS_STAB_2021, place: "option table; the 1 h limit between 49 and 27 C for uncured products is confirmed by two 2021-aware abstracts (MMB 17650, 17657)", standing: Standing::Guidance, seen: Seen::Memory },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Leg { schedule: "fsis-2021-2", from: PrintedTemperature::Both(80.0, 26.7), to: PrintedTemperature::Both(55.0, 12.8), most: hours(5.0) },
        row: Row {
            table: "chill/cooling-us",
            key: "fsis-2021-2-2",
            printed: "fsis-2021-2, leg 2: 80 to 55 °F in 5 h",
            citation: Citation { source: &sources::FSIS_STAB_2021, place: "option table, not seen", standing: Standing::Guidance, seen: Seen::Memory },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "then continuous chilling to 40 F; whether a time limit is set for 55 to 40 F was not seen",
        },
    },
    Cited {
        value: Leg { schedule: "fsis-2021-3-cured", from: PrintedTemperature::Both(130.0, 54.4), to: PrintedTemperature::Both(80.0, 26.7), most: hours(5.0) },
        row: Row {
            table: "chill/cooling-us",
            key: "fsis-2021-3-cured-1",
            printed: "fsis-2021-3-cured, leg 1: 130 to 80 °F in 5 h",
            citation: Citation { source: &sources::FSIS_STAB_2021, place: "option table, not seen", standing: Standing::Guidance, seen: Seen::Memory },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "memory of conditions: at least 100 ppm ingoing nitrite AND at least 250 ppm ingoing erythorbate or ascorbate (natural sources allowed if equivalent)",
        },
    },
    Cited {
        value: Leg { schedule: "fsis-2021-3-cured", from: PrintedTemperature::Both(80.0, 26.7), to: PrintedTemperature::Both(45.0, 7.2), most: hours(10.0) },
        row: Row {
            table: "chill/cooling-us",
            key: "fsis-2021-3-cured-2",
            printed: "fsis-2021-3-cured, leg 2: 80 to 45 °F in 10 h",
            citation: Citation { source: &sources::FSIS_STAB_2021, place: "option table, not seen", standing: Standing::Guidance, seen: Seen::Memory },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Leg { schedule: "fsis-2021-4-cured-salt", from: PrintedTemperature::Both(120.0, 48.9), to: PrintedTemperature::Both(40.0, 4.4), most: hours(20.0) },
        row: Row {
            table: "chill/cooling-us",
            key: "fsis-2021-4-cured-salt-1",
            printed: "fsis-2021-4-cured-salt, leg 1: 120 to 40 °F in 20 h",
            citation: Citation { source: &sources::FSIS_STAB_2021, place: "option table, not seen; same 20 h form printed in ca-3ccr-910-15", standing: Standing::Guidance, seen: Seen::Memory },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Leg { schedule: "california-910.15-a1", from: PrintedTemperature::Both(135.0, 57.2), to: PrintedTemperature::Both(70.0, 21.1), most: hours(2.0) },
        row: Row {
            table: "chill/cooling-us",
            key: "california-910-15-a1-1",
            printed: "california-910.15-a1, leg 1: 135 to 70 °F in 2 h",
            citation: Citation { source: &sources::CA_3CCR_910_15, place: "(a)(1)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Leg { schedule: "california-910.15-a1", from: PrintedTemperature::Both(70.0, 21.1), to: PrintedTemperature::Both(41.0, 5.0), most: hours(4.0) },
        row: Row {
            table: "chill/cooling-us",
            key: "california-910-15-a1-2",
            printed: "california-910.15-a1, leg 2: 70 to 41 °F in 4 h",
            citation: Citation { source: &sources::CA_3CCR_910_15, place: "(a)(1)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Leg { schedule: "california-910.15-b-cured-slow", from: PrintedTemperature::Both(120.0, 48.9), to: PrintedTemperature::Both(40.0, 4.4), most: hours(20.0) },
        row: Row {
            table: "chill/cooling-us",
            key: "california-910-15-b-cured-slow-1",
            printed: "california-910.15-b-cured-slow, leg 1: 120 to 40 °F in 20 h",
            citation: Citation { source: &sources::CA_3CCR_910_15, place: "(b)(1)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "plus one condition of group 2 and one of group 3, see slow_cool_condition",
        },
    },
];

/// Conditions of the cured options, FSIS 2021
pub static CURED_CONDITIONS: [Cited<Formula>; 1] = [
    Cited {
        value: Formula { nitrite: Some(100.0), ascorbate: Some(250.0), brine: None, activity: None },
        row: Row {
            table: "chill/cured-conditions",
            key: "option-3",
            printed: "at least 100 ppm ingoing nitrite and at least 250 ppm ingoing erythorbate or ascorbate",
            citation: Citation { source: &sources::FSIS_STAB_2021, place: "option table, not seen", standing: Standing::Guidance, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "Natural sources are allowed if equivalent.",
        },
    },
];

/// Degree-hours of a fermentation before pH 5.3
pub static DEGREE_HOURS: [Cited<DegreeHours>; 6] = [
    Cited {
        value: DegreeHours { scale: Scale::Fahrenheit, base: 60.0, hottest: Some(90.0), below: true, until_ph: 5.3, most: 1200.0 },
        row: Row {
            table: "chill/degree-hours",
            key: "usa-below-90-f",
            printed: "USA, below 90 F: 1200",
            citation: Citation { source: &sources::FSRE_2005, place: "section Critical Processing Stages, page 163 or 164", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "FSRE reports the American Meat Institute GMP. It says limited to, not fewer than; the base, the pH 5.3 end and the choice by highest temperature are primary in fsis-gd-2023-0002 page 37.",
        },
    },
    Cited {
        value: DegreeHours { scale: Scale::Fahrenheit, base: 60.0, hottest: Some(100.0), below: false, until_ph: 5.3, most: 1000.0 },
        row: Row {
            table: "chill/degree-hours",
            key: "usa-90-to-100-f",
            printed: "USA, 90 to 100 F: 1000",
            citation: Citation { source: &sources::FSRE_2005, place: "section Critical Processing Stages, page 163 or 164", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "FSRE reports the American Meat Institute GMP. It says limited to, not fewer than; the base, the pH 5.3 end and the choice by highest temperature are primary in fsis-gd-2023-0002 page 37.",
        },
    },
    Cited {
        value: DegreeHours { scale: Scale::Fahrenheit, base: 60.0, hottest: None, below: false, until_ph: 5.3, most: 900.0 },
        row: Row {
            table: "chill/degree-hours",
            key: "usa-above-100-f",
            printed: "USA, above 100 F: 900",
            citation: Citation { source: &sources::FSRE_2005, place: "section Critical Processing Stages, page 163 or 164", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "FSRE reports the American Meat Institute GMP. It says limited to, not fewer than; the base, the pH 5.3 end and the choice by highest temperature are primary in fsis-gd-2023-0002 page 37.",
        },
    },
    Cited {
        value: DegreeHours { scale: Scale::Celsius, base: 15.6, hottest: Some(33.0), below: true, until_ph: 5.3, most: 665.0 },
        row: Row {
            table: "chill/degree-hours",
            key: "canada-below-33-c",
            printed: "Canada, below 33 C: 665",
            citation: Citation { source: &sources::CFIA_FERM_NOTE, place: "digest of the staphylococcus section", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "Weak: language-model digest of the CFIA page, limits given with a less-than sign. The hours table was not reproduced.",
        },
    },
    Cited {
        value: DegreeHours { scale: Scale::Celsius, base: 15.6, hottest: Some(37.0), below: false, until_ph: 5.3, most: 555.0 },
        row: Row {
            table: "chill/degree-hours",
            key: "canada-33-to-37-c",
            printed: "Canada, 33 to 37 C: 555",
            citation: Citation { source: &sources::CFIA_FERM_NOTE, place: "digest of the staphylococcus section", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "Weak: language-model digest of the CFIA page, limits given with a less-than sign. The hours table was not reproduced.",
        },
    },
    Cited {
        value: DegreeHours { scale: Scale::Celsius, base: 15.6, hottest: None, below: false, until_ph: 5.3, most: 500.0 },
        row: Row {
            table: "chill/degree-hours",
            key: "canada-above-37-c",
            printed: "Canada, above 37 C: 500",
            citation: Citation { source: &sources::CFIA_FERM_NOTE, place: "digest of the staphylococcus section", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "Weak: language-model digest of the CFIA page, limits given with a less-than sign. The hours table was not reproduced.",
        },
    },
];

/// Cooling in shops and restaurants, Food Code 2022
pub static FOOD_CODE_COOLING: [Cited<Leg>; 2] = [
    Cited {
        value: Leg { schedule: "food-code", from: PrintedTemperature::Both(135.0, 57.0), to: PrintedTemperature::Both(70.0, 21.0), most: hours(2.0) },
        row: Row {
            table: "chill/food-code-cooling",
            key: "cool-1",
            printed: "cooked TCS food, stage 1: 135 to 70 °F, 2 h",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-501.14(A)(1)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Leg { schedule: "food-code", from: PrintedTemperature::Both(135.0, 57.0), to: PrintedTemperature::Both(41.0, 5.0), most: hours(6.0) },
        row: Row {
            table: "chill/food-code-cooling",
            key: "cool-total",
            printed: "cooked TCS food, TOTAL from 135 F: 135 to 41 °F, 6 h",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-501.14(A)(2)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Conditions of California slow cooling of cured products
pub static SLOW_COOL_CONDITIONS: [Cited<Formula>; 3] = [
    Cited {
        value: Formula { nitrite: Some(120.0), ascorbate: None, brine: Some(3.5), activity: None },
        row: Row {
            table: "chill/slow-cool-conditions",
            key: "group-3-a",
            printed: "at least 120 ppm nitrite and 3.5 % brine",
            citation: Citation { source: &sources::CA_3CCR_910_15, place: "(b)(3)(A)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Formula { nitrite: Some(40.0), ascorbate: None, brine: Some(6.0), activity: None },
        row: Row {
            table: "chill/slow-cool-conditions",
            key: "group-3-b",
            printed: "at least 40 ppm nitrite and 6 % brine",
            citation: Citation { source: &sources::CA_3CCR_910_15, place: "(b)(3)(B)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Formula { nitrite: None, ascorbate: None, brine: None, activity: Some(0.92) },
        row: Row {
            table: "chill/slow-cool-conditions",
            key: "group-3-c",
            printed: "water activity at most 0.92",
            citation: Citation { source: &sources::CA_3CCR_910_15, place: "(b)(3)(C)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Cooling cooked meat, United Kingdom industry guidance
pub static UNITED_KINGDOM: [Cited<Leg>; 10] = [
    Cited {
        value: Leg { schedule: "uncured-good-practice", from: PrintedTemperature::Celsius(70.0), to: PrintedTemperature::Celsius(50.0), most: hours(1.0) },
        row: Row {
            table: "chill/united-kingdom",
            key: "uncured-good-practice-70-50",
            printed: "uncured good practice: 70 to 50 °C in 1 h",
            citation: Citation { source: &sources::JAMES_MEAT_REFRIG, place: "Table 16.7 rows Good practice / Maximum (from Gaze et al. 1998, Table 16.1)", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Leg { schedule: "uncured-good-practice", from: PrintedTemperature::Celsius(50.0), to: PrintedTemperature::Celsius(12.0), most: hours(6.0) },
        row: Row {
            table: "chill/united-kingdom",
            key: "uncured-good-practice-50-12",
            printed: "uncured good practice: 50 to 12 °C in 6 h",
            citation: Citation { source: &sources::JAMES_MEAT_REFRIG, place: "Table 16.7 rows Good practice / Maximum (from Gaze et al. 1998, Table 16.1)", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Leg { schedule: "uncured-good-practice", from: PrintedTemperature::Celsius(12.0), to: PrintedTemperature::Celsius(5.0), most: hours(1.0) },
        row: Row {
            table: "chill/united-kingdom",
            key: "uncured-good-practice-12-5",
            printed: "uncured good practice: 12 to 5 °C in 1 h",
            citation: Citation { source: &sources::JAMES_MEAT_REFRIG, place: "Table 16.7 rows Good practice / Maximum (from Gaze et al. 1998, Table 16.1)", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Leg { schedule: "uncured-good-practice", from: PrintedTemperature::Celsius(70.0), to: PrintedTemperature::Celsius(5.0), most: hours(8.0) },
        row: Row {
            table: "chill/united-kingdom",
            key: "uncured-good-practice-70-5",
            printed: "uncured good practice: 70 to 5 °C in 8 h",
            citation: Citation { source: &sources::JAMES_MEAT_REFRIG, place: "Table 16.7 rows Good practice / Maximum (from Gaze et al. 1998, Table 16.1)", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Leg { schedule: "uncured-maximum", from: PrintedTemperature::Celsius(70.0), to: PrintedTemperature::Celsius(50.0), most: hours(2.5) },
        row: Row {
            table: "chill/united-kingdom",
            key: "uncured-maximum-70-50",
            printed: "uncured maximum: 70 to 50 °C in 2.5 h",
            citation: Citation { source: &sources::JAMES_MEAT_REFRIG, place: "Table 16.7 rows Good practice / Maximum (from Gaze et al. 1998, Table 16.1)", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Leg { schedule: "uncured-maximum", from: PrintedTemperature::Celsius(50.0), to: PrintedTemperature::Celsius(12.0), most: hours(6.0) },
        row: Row {
            table: "chill/united-kingdom",
            key: "uncured-maximum-50-12",
            printed: "uncured maximum: 50 to 12 °C in 6 h",
            citation: Citation { source: &sources::JAMES_MEAT_REFRIG, place: "Table 16.7 rows Good practice / Maximum (from Gaze et al. 1998, Table 16.1)", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Leg { schedule: "uncured-maximum", from: PrintedTemperature::Celsius(12.0), to: PrintedTemperature::Celsius(5.0), most: hours(1.5) },
        row: Row {
            table: "chill/united-kingdom",
            key: "uncured-maximum-12-5",
            printed: "uncured maximum: 12 to 5 °C in 1.5 h",
            citation: Citation { source: &sources::JAMES_MEAT_REFRIG, place: "Table 16.7 rows Good practice / Maximum (from Gaze et al. 1998, Table 16.1)", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Leg { schedule: "uncured-maximum", from: PrintedTemperature::Celsius(70.0), to: PrintedTemperature::Celsius(5.0), most: hours(10.0) },
        row: Row {
            table: "chill/united-kingdom",
            key: "uncured-maximum-70-5",
            printed: "uncured maximum: 70 to 5 °C in 10 h",
            citation: Citation { source: &sources::JAMES_MEAT_REFRIG, place: "Table 16.7 rows Good practice / Maximum (from Gaze et al. 1998, Table 16.1)", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Leg { schedule: "cured-good-practice", from: PrintedTemperature::Celsius(70.0), to: PrintedTemperature::Celsius(5.0), most: hours(10.0) },
        row: Row {
            table: "chill/united-kingdom",
            key: "cured-good-practice-70-5",
            printed: "cured good practice: 70 to 5 °C in 10 h",
            citation: Citation { source: &sources::JAMES_MEAT_REFRIG, place: "Table 16.2 total row", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "cured = at least 2.5% salt on water phase and 100 ppm ingoing nitrite; times about 25% longer",
        },
    },
    Cited {
        value: Leg { schedule: "cured-maximum", from: PrintedTemperature::Celsius(70.0), to: PrintedTemperature::Celsius(5.0), most: hours(12.5) },
        row: Row {
            table: "chill/united-kingdom",
            key: "cured-maximum-70-5",
            printed: "cured maximum: 70 to 5 °C in 12.5 h",
            citation: Citation { source: &sources::JAMES_MEAT_REFRIG, place: "Table 16.2 total row", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "stage cells unreadable in the scan except one printed 1.75",
        },
    },
];

/// Time that food may be between cold and hot
pub static WARM_TIME: [Cited<WarmTime>; 6] = [
    Cited {
        value: WarmTime { authority: Authority::UsConsumer, cold: PrintedTemperature::Both(40.0, 4.4), hot: PrintedTemperature::Both(140.0, 60.0), air_above: None, never_above: None, most: hours(2.0) },
        row: Row {
            table: "chill/warm-time",
            key: "consumer-2-h",
            printed: "between 40 and 140 °F: refrigerate within 2 h",
            citation: Citation { source: &sources::US_EATRIGHT, place: "How long can foods remain unrefrigerated", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "Its bounds are those of the row of the danger zone.",
        },
    },
    Cited {
        value: WarmTime { authority: Authority::UsConsumer, cold: PrintedTemperature::Both(40.0, 4.4), hot: PrintedTemperature::Both(140.0, 60.0), air_above: Some(PrintedTemperature::Both(90.0, 32.2)), never_above: None, most: hours(1.0) },
        row: Row {
            table: "chill/warm-time",
            key: "consumer-1-h",
            printed: "between 40 and 140 °F: within 1 h where the air is above 90 °F",
            citation: Citation { source: &sources::US_EATRIGHT, place: "How long can foods remain unrefrigerated", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: WarmTime { authority: Authority::UsFoodCode2022, cold: PrintedTemperature::Both(41.0, 5.0), hot: PrintedTemperature::Both(135.0, 57.0), air_above: None, never_above: None, most: hours(4.0) },
        row: Row {
            table: "chill/warm-time",
            key: "tphc-4h",
            printed: "time only, 4 h; start at 41 F or less or 135 F or more; marked; cooked and served, served or discarded within 4 h",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-501.19(B)", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: WarmTime { authority: Authority::UsFoodCode2022, cold: PrintedTemperature::Both(41.0, 5.0), hot: PrintedTemperature::Both(135.0, 57.0), air_above: None, never_above: Some(PrintedTemperature::Both(70.0, 21.0)), most: hours(6.0) },
        row: Row {
            table: "chill/warm-time",
            key: "tphc-6h",
            printed: "time only, 6 h; start at 41 F or less, never above 70 F, warmest part watched unless the air is assured; discard if 70 F is passed",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-501.19(C)", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: WarmTime { authority: Authority::AustraliaNewZealand, cold: PrintedTemperature::Celsius(5.0), hot: PrintedTemperature::Celsius(60.0), air_above: None, never_above: None, most: hours(2.0) },
        row: Row {
            table: "chill/warm-time",
            key: "australia-2-h",
            printed: "under 2 h outside 5-60 C: use or put back under control",
            citation: Citation { source: &sources::QLD_SOMERSET, place: "Four-hour/two-hour guide", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "Its bounds are those of the row of safe temperatures.",
        },
    },
    Cited {
        value: WarmTime { authority: Authority::AustraliaNewZealand, cold: PrintedTemperature::Celsius(5.0), hot: PrintedTemperature::Celsius(60.0), air_above: None, never_above: None, most: hours(4.0) },
        row: Row {
            table: "chill/warm-time",
            key: "australia-4-h",
            printed: "2 to 4 h: use at once; over 4 h: discard",
            citation: Citation { source: &sources::QLD_SOMERSET, place: "heading seen, text cut", standing: Standing::Guidance, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "Its bounds are those of the row of safe temperatures.",
        },
    },
];
