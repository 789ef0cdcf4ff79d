// Made from references/ by references/pipeline. Do not edit: change the reference file.

use crate::cite::{Citation, Cited, Date, InForce, Row, Seen, Standing, sources};
use super::clock::Leg;
use super::check::Formula;
use super::exposure::{Exposure, ReadyToEat};
use super::ferment::DegreeHours;
use super::growth::{Model, Rate};
use super::limits::{GrowthLimit, Pathogen};
use super::warm::{WarmTime, Was};
use crate::authority::Authority;
use crate::finding::Limit;
use crate::units::{PrintedTemperature, Scale, Time, days, hours};

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
        value: Leg { schedule: "fsis-2021-3-cured", from: PrintedTemperature::Both(80.0, 26.7), to: PrintedTemperature::Both(40.0, 4.4), most: hours(10.0) },
        row: Row {
            table: "chill/cooling-us",
            key: "fsis-2021-3-cured-2",
            printed: "fsis-2021-3-cured, leg 2: 80 to 45 °F in 10 h",
            citation: Citation { source: &sources::FSIS_STAB_2021, place: "option table, not seen", standing: Standing::Guidance, seen: Seen::Memory },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "Judged to 40 °F: reports of this leg disagree, 45 °F or 40 °F, and the guideline itself was not read.",
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

/// Time that ready-to-eat food may be warm, FDA fish guide
pub static EXPOSURE_SUMMARY: [Cited<ReadyToEat>; 8] = [
    Cited {
        value: ReadyToEat { cooked: false, ever_above: Some(PrintedTemperature::Fahrenheit(70.0)), never_above: None, from: PrintedTemperature::Fahrenheit(50.0), warm: PrintedTemperature::Fahrenheit(70.0), hot: PrintedTemperature::Fahrenheit(135.0), most: hours(2.0), most_warm: None },
        row: Row {
            table: "chill/exposure-summary",
            key: "raw-ready-to-eat-ever-above-70-f-time-between",
            printed: "raw ready-to-eat: ever above 70 F: time between 50 F and 135 F",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "page 417", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: ReadyToEat { cooked: false, ever_above: None, never_above: None, from: PrintedTemperature::Fahrenheit(50.0), warm: PrintedTemperature::Fahrenheit(70.0), hot: PrintedTemperature::Fahrenheit(135.0), most: hours(4.0), most_warm: Some(hours(2.0)) },
        row: Row {
            table: "chill/exposure-summary",
            key: "raw-ready-to-eat-alternative-4-h-between-50-f",
            printed: "raw ready-to-eat: alternative: 4 h between 50 F and 135 F, at most 2 h of it between 70 F and 135 F",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "page 417", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: ReadyToEat { cooked: false, ever_above: None, never_above: Some(PrintedTemperature::Fahrenheit(70.0)), from: PrintedTemperature::Fahrenheit(50.0), warm: PrintedTemperature::Fahrenheit(70.0), hot: PrintedTemperature::Fahrenheit(135.0), most: hours(5.0), most_warm: None },
        row: Row {
            table: "chill/exposure-summary",
            key: "raw-ready-to-eat-above-50-f-but-never-above-70",
            printed: "raw ready-to-eat: above 50 F but never above 70 F",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "page 417", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: ReadyToEat { cooked: true, ever_above: Some(PrintedTemperature::Fahrenheit(80.0)), never_above: None, from: PrintedTemperature::Fahrenheit(50.0), warm: PrintedTemperature::Fahrenheit(70.0), hot: PrintedTemperature::Fahrenheit(135.0), most: hours(1.0), most_warm: None },
        row: Row {
            table: "chill/exposure-summary",
            key: "cooked-ready-to-eat-ever-above-80-f-time-between",
            printed: "cooked ready-to-eat: ever above 80 F: time between 50 F and 135 F",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "page 417", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: ReadyToEat { cooked: true, ever_above: Some(PrintedTemperature::Fahrenheit(80.0)), never_above: None, from: PrintedTemperature::Fahrenheit(50.0), warm: PrintedTemperature::Fahrenheit(70.0), hot: PrintedTemperature::Fahrenheit(135.0), most: hours(4.0), most_warm: Some(hours(1.0)) },
        row: Row {
            table: "chill/exposure-summary",
            key: "cooked-ready-to-eat-alternative-ever-above-80-f",
            printed: "cooked ready-to-eat: alternative, ever above 80 F: 4 h, at most 1 h of it above 70 F",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "page 418", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: ReadyToEat { cooked: true, ever_above: Some(PrintedTemperature::Fahrenheit(70.0)), never_above: Some(PrintedTemperature::Fahrenheit(80.0)), from: PrintedTemperature::Fahrenheit(50.0), warm: PrintedTemperature::Fahrenheit(70.0), hot: PrintedTemperature::Fahrenheit(135.0), most: hours(2.0), most_warm: None },
        row: Row {
            table: "chill/exposure-summary",
            key: "cooked-ready-to-eat-above-70-f-but-never-above-80",
            printed: "cooked ready-to-eat: above 70 F but never above 80 F",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "page 418", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: ReadyToEat { cooked: true, ever_above: None, never_above: Some(PrintedTemperature::Fahrenheit(80.0)), from: PrintedTemperature::Fahrenheit(50.0), warm: PrintedTemperature::Fahrenheit(70.0), hot: PrintedTemperature::Fahrenheit(135.0), most: hours(4.0), most_warm: Some(hours(2.0)) },
        row: Row {
            table: "chill/exposure-summary",
            key: "cooked-ready-to-eat-alternative-never-above-80-f",
            printed: "cooked ready-to-eat: alternative, never above 80 F: 4 h above 50 F, at most 2 h of it above 70 F",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "page 418", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: ReadyToEat { cooked: true, ever_above: None, never_above: Some(PrintedTemperature::Fahrenheit(70.0)), from: PrintedTemperature::Fahrenheit(50.0), warm: PrintedTemperature::Fahrenheit(70.0), hot: PrintedTemperature::Fahrenheit(135.0), most: hours(5.0), most_warm: None },
        row: Row {
            table: "chill/exposure-summary",
            key: "cooked-ready-to-eat-above-50-f-but-never-above-70",
            printed: "cooked ready-to-eat: above 50 F but never above 70 F",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "page 418", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Time that a food may be warm, FDA fish guide Table A-2
pub static EXPOSURE: [Cited<Exposure>; 48] = [
    Cited {
        value: Exposure { organism: "Bacillus cereus", from: PrintedTemperature::Both(39.2, 4.0), up_to: Some(PrintedTemperature::Both(43.0, 6.0)), most: hours(120.0) },
        row: Row {
            table: "chill/exposure",
            key: "bacillus-cereus-39-2-43",
            printed: "Bacillus cereus, 39.2-43 °F: 5 days",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Exposure { organism: "Bacillus cereus", from: PrintedTemperature::Both(44.0, 7.0), up_to: Some(PrintedTemperature::Both(59.0, 15.0)), most: hours(24.0) },
        row: Row {
            table: "chill/exposure",
            key: "bacillus-cereus-44-59",
            printed: "Bacillus cereus, 44-59 °F: 1 day",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Exposure { organism: "Bacillus cereus", from: PrintedTemperature::Both(60.0, 16.0), up_to: Some(PrintedTemperature::Both(70.0, 21.0)), most: hours(6.0) },
        row: Row {
            table: "chill/exposure",
            key: "bacillus-cereus-60-70",
            printed: "Bacillus cereus, 60-70 °F: 6 hours",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Exposure { organism: "Bacillus cereus", from: PrintedTemperature::Both(70.0, 21.0), up_to: None, most: hours(3.0) },
        row: Row {
            table: "chill/exposure",
            key: "bacillus-cereus-70",
            printed: "Bacillus cereus, >70 °F: 3 hours",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Exposure { organism: "Campylobacter jejuni", from: PrintedTemperature::Both(86.0, 30.0), up_to: Some(PrintedTemperature::Both(93.0, 34.0)), most: hours(48.0) },
        row: Row {
            table: "chill/exposure",
            key: "campylobacter-jejuni-86-93",
            printed: "Campylobacter jejuni, 86-93 °F: 48 hours",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Exposure { organism: "Campylobacter jejuni", from: PrintedTemperature::Both(93.0, 34.0), up_to: None, most: hours(12.0) },
        row: Row {
            table: "chill/exposure",
            key: "campylobacter-jejuni-93",
            printed: "Campylobacter jejuni, >93 °F: 12 hours",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Exposure { organism: "C. botulinum A, proteolytic B, F", from: PrintedTemperature::Both(50.0, 10.0), up_to: Some(PrintedTemperature::Both(70.0, 21.0)), most: hours(11.0) },
        row: Row {
            table: "chill/exposure",
            key: "c-botulinum-a-proteolytic-b-f-50-70",
            printed: "C. botulinum A, proteolytic B, F, 50-70 °F: 11 hours",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Exposure { organism: "C. botulinum A, proteolytic B, F", from: PrintedTemperature::Both(70.0, 21.0), up_to: None, most: hours(2.0) },
        row: Row {
            table: "chill/exposure",
            key: "c-botulinum-a-proteolytic-b-f-70",
            printed: "C. botulinum A, proteolytic B, F, >70 °F: 2 hours",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Exposure { organism: "C. botulinum E, non-proteolytic", from: PrintedTemperature::Both(37.9, 3.3), up_to: Some(PrintedTemperature::Both(41.0, 5.0)), most: hours(168.0) },
        row: Row {
            table: "chill/exposure",
            key: "c-botulinum-e-non-proteolytic-37-9-41",
            printed: "C. botulinum E, non-proteolytic, 37.9-41 °F: 7 days",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Exposure { organism: "C. botulinum E, non-proteolytic", from: PrintedTemperature::Both(42.0, 6.0), up_to: Some(PrintedTemperature::Both(50.0, 10.0)), most: hours(48.0) },
        row: Row {
            table: "chill/exposure",
            key: "c-botulinum-e-non-proteolytic-42-50",
            printed: "C. botulinum E, non-proteolytic, 42-50 °F: 2 days",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Exposure { organism: "C. botulinum E, non-proteolytic", from: PrintedTemperature::Both(51.0, 11.0), up_to: Some(PrintedTemperature::Both(70.0, 21.0)), most: hours(11.0) },
        row: Row {
            table: "chill/exposure",
            key: "c-botulinum-e-non-proteolytic-51-70",
            printed: "C. botulinum E, non-proteolytic, 51-70 °F: 11 hours",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Exposure { organism: "C. botulinum E, non-proteolytic", from: PrintedTemperature::Both(70.0, 21.0), up_to: None, most: hours(6.0) },
        row: Row {
            table: "chill/exposure",
            key: "c-botulinum-e-non-proteolytic-70",
            printed: "C. botulinum E, non-proteolytic, >70 °F: 6 hours",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Exposure { organism: "C. perfringens", from: PrintedTemperature::Both(50.0, 10.0), up_to: Some(PrintedTemperature::Both(54.0, 12.0)), most: hours(504.0) },
        row: Row {
            table: "chill/exposure",
            key: "c-perfringens-50-54",
            printed: "C. perfringens, 50-54 °F: 21 days",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Exposure { organism: "C. perfringens", from: PrintedTemperature::Both(55.0, 13.0), up_to: Some(PrintedTemperature::Both(57.0, 14.0)), most: hours(24.0) },
        row: Row {
            table: "chill/exposure",
            key: "c-perfringens-55-57",
            printed: "C. perfringens, 55-57 °F: 1 day",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Exposure { organism: "C. perfringens", from: PrintedTemperature::Both(58.0, 15.0), up_to: Some(PrintedTemperature::Both(70.0, 21.0)), most: hours(6.0) },
        row: Row {
            table: "chill/exposure",
            key: "c-perfringens-58-70",
            printed: "C. perfringens, 58-70 °F: 6 hours",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "footnote 1: additional data needed",
        },
    },
    Cited {
        value: Exposure { organism: "C. perfringens", from: PrintedTemperature::Both(70.0, 21.0), up_to: None, most: hours(2.0) },
        row: Row {
            table: "chill/exposure",
            key: "c-perfringens-70",
            printed: "C. perfringens, >70 °F: 2 hours",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Exposure { organism: "E. coli, pathogenic", from: PrintedTemperature::Both(43.7, 6.6), up_to: Some(PrintedTemperature::Both(50.0, 10.0)), most: hours(48.0) },
        row: Row {
            table: "chill/exposure",
            key: "e-coli-pathogenic-43-7-50",
            printed: "E. coli, pathogenic, 43.7-50 °F: 2 days",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "A-2 prints 6.6 C where A-1 prints 6.5 C",
        },
    },
    Cited {
        value: Exposure { organism: "E. coli, pathogenic", from: PrintedTemperature::Both(51.0, 11.0), up_to: Some(PrintedTemperature::Both(70.0, 21.0)), most: hours(5.0) },
        row: Row {
            table: "chill/exposure",
            key: "e-coli-pathogenic-51-70",
            printed: "E. coli, pathogenic, 51-70 °F: 5 hours",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Exposure { organism: "E. coli, pathogenic", from: PrintedTemperature::Both(70.0, 21.0), up_to: None, most: hours(2.0) },
        row: Row {
            table: "chill/exposure",
            key: "e-coli-pathogenic-70",
            printed: "E. coli, pathogenic, >70 °F: 2 hours",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Exposure { organism: "L. monocytogenes", from: PrintedTemperature::Both(31.3, -0.4), up_to: Some(PrintedTemperature::Both(41.0, 5.0)), most: hours(168.0) },
        row: Row {
            table: "chill/exposure",
            key: "l-monocytogenes-31-3-41",
            printed: "L. monocytogenes, 31.3-41 °F: 7 days",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Exposure { organism: "L. monocytogenes", from: PrintedTemperature::Both(42.0, 6.0), up_to: Some(PrintedTemperature::Both(50.0, 10.0)), most: hours(24.0) },
        row: Row {
            table: "chill/exposure",
            key: "l-monocytogenes-42-50",
            printed: "L. monocytogenes, 42-50 °F: 1 day",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Exposure { organism: "L. monocytogenes", from: PrintedTemperature::Both(51.0, 11.0), up_to: Some(PrintedTemperature::Both(70.0, 21.0)), most: hours(7.0) },
        row: Row {
            table: "chill/exposure",
            key: "l-monocytogenes-51-70",
            printed: "L. monocytogenes, 51-70 °F: 7 hours",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Exposure { organism: "L. monocytogenes", from: PrintedTemperature::Both(71.0, 22.0), up_to: Some(PrintedTemperature::Both(86.0, 30.0)), most: hours(3.0) },
        row: Row {
            table: "chill/exposure",
            key: "l-monocytogenes-71-86",
            printed: "L. monocytogenes, 71-86 °F: 3 hours",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Exposure { organism: "L. monocytogenes", from: PrintedTemperature::Both(86.0, 30.0), up_to: None, most: hours(1.0) },
        row: Row {
            table: "chill/exposure",
            key: "l-monocytogenes-86",
            printed: "L. monocytogenes, >86 °F: 1 hour",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Exposure { organism: "Salmonella", from: PrintedTemperature::Both(41.4, 5.2), up_to: Some(PrintedTemperature::Both(50.0, 10.0)), most: hours(48.0) },
        row: Row {
            table: "chill/exposure",
            key: "salmonella-41-4-50",
            printed: "Salmonella, 41.4-50 °F: 2 days",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Exposure { organism: "Salmonella", from: PrintedTemperature::Both(51.0, 11.0), up_to: Some(PrintedTemperature::Both(70.0, 21.0)), most: hours(5.0) },
        row: Row {
            table: "chill/exposure",
            key: "salmonella-51-70",
            printed: "Salmonella, 51-70 °F: 5 hours",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Exposure { organism: "Salmonella", from: PrintedTemperature::Both(70.0, 21.0), up_to: None, most: hours(2.0) },
        row: Row {
            table: "chill/exposure",
            key: "salmonella-70",
            printed: "Salmonella, >70 °F: 2 hours",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Exposure { organism: "Shigella", from: PrintedTemperature::Both(43.0, 6.1), up_to: Some(PrintedTemperature::Both(50.0, 10.0)), most: hours(48.0) },
        row: Row {
            table: "chill/exposure",
            key: "shigella-43-50",
            printed: "Shigella, 43-50 °F: 2 days",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Exposure { organism: "Shigella", from: PrintedTemperature::Both(51.0, 11.0), up_to: Some(PrintedTemperature::Both(70.0, 21.0)), most: hours(5.0) },
        row: Row {
            table: "chill/exposure",
            key: "shigella-51-70",
            printed: "Shigella, 51-70 °F: 5 hours",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Exposure { organism: "Shigella", from: PrintedTemperature::Both(70.0, 21.0), up_to: None, most: hours(2.0) },
        row: Row {
            table: "chill/exposure",
            key: "shigella-70",
            printed: "Shigella, >70 °F: 2 hours",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Exposure { organism: "S. aureus", from: PrintedTemperature::Both(44.6, 7.0), up_to: Some(PrintedTemperature::Both(50.0, 10.0)), most: hours(336.0) },
        row: Row {
            table: "chill/exposure",
            key: "s-aureus-50",
            printed: "S. aureus, 50 °F: 14 days",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "printed 50 F beside 7-10 C; the Fahrenheit cell looks incomplete (44.6-50)",
        },
    },
    Cited {
        value: Exposure { organism: "S. aureus", from: PrintedTemperature::Both(51.0, 11.0), up_to: Some(PrintedTemperature::Both(70.0, 21.0)), most: hours(12.0) },
        row: Row {
            table: "chill/exposure",
            key: "s-aureus-51-70",
            printed: "S. aureus, 51-70 °F: 12 hours",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "footnote 1: additional data needed",
        },
    },
    Cited {
        value: Exposure { organism: "S. aureus", from: PrintedTemperature::Both(70.0, 21.0), up_to: None, most: hours(3.0) },
        row: Row {
            table: "chill/exposure",
            key: "s-aureus-70",
            printed: "S. aureus, >70 °F: 3 hours",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Exposure { organism: "V. cholerae", from: PrintedTemperature::Both(50.0, 10.0), up_to: Some(PrintedTemperature::Both(50.0, 10.0)), most: hours(504.0) },
        row: Row {
            table: "chill/exposure",
            key: "v-cholerae-50",
            printed: "V. cholerae, 50 °F: 21 days",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Exposure { organism: "V. cholerae", from: PrintedTemperature::Both(51.0, 11.0), up_to: Some(PrintedTemperature::Both(70.0, 21.0)), most: hours(6.0) },
        row: Row {
            table: "chill/exposure",
            key: "v-cholerae-51-70",
            printed: "V. cholerae, 51-70 °F: 6 hours",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Exposure { organism: "V. cholerae", from: PrintedTemperature::Both(71.0, 22.0), up_to: Some(PrintedTemperature::Both(80.0, 27.0)), most: hours(2.0) },
        row: Row {
            table: "chill/exposure",
            key: "v-cholerae-71-80",
            printed: "V. cholerae, 71-80 °F: 2 hours",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Exposure { organism: "V. cholerae", from: PrintedTemperature::Both(80.0, 27.0), up_to: None, most: hours(1.0) },
        row: Row {
            table: "chill/exposure",
            key: "v-cholerae-80",
            printed: "V. cholerae, >80 °F: 1 hour",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "footnote 2: cooked, ready-to-eat foods only",
        },
    },
    Cited {
        value: Exposure { organism: "V. parahaemolyticus", from: PrintedTemperature::Both(41.0, 5.0), up_to: Some(PrintedTemperature::Both(50.0, 10.0)), most: hours(504.0) },
        row: Row {
            table: "chill/exposure",
            key: "v-parahaemolyticus-41-50",
            printed: "V. parahaemolyticus, 41-50 °F: 21 days",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Exposure { organism: "V. parahaemolyticus", from: PrintedTemperature::Both(51.0, 11.0), up_to: Some(PrintedTemperature::Both(70.0, 21.0)), most: hours(6.0) },
        row: Row {
            table: "chill/exposure",
            key: "v-parahaemolyticus-51-70",
            printed: "V. parahaemolyticus, 51-70 °F: 6 hours",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Exposure { organism: "V. parahaemolyticus", from: PrintedTemperature::Both(71.0, 22.0), up_to: Some(PrintedTemperature::Both(80.0, 27.0)), most: hours(2.0) },
        row: Row {
            table: "chill/exposure",
            key: "v-parahaemolyticus-71-80",
            printed: "V. parahaemolyticus, 71-80 °F: 2 hours",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Exposure { organism: "V. parahaemolyticus", from: PrintedTemperature::Both(80.0, 27.0), up_to: None, most: hours(1.0) },
        row: Row {
            table: "chill/exposure",
            key: "v-parahaemolyticus-80",
            printed: "V. parahaemolyticus, >80 °F: 1 hour",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "footnote 2: cooked, ready-to-eat foods only",
        },
    },
    Cited {
        value: Exposure { organism: "V. vulnificus", from: PrintedTemperature::Both(46.4, 8.0), up_to: Some(PrintedTemperature::Both(50.0, 10.0)), most: hours(504.0) },
        row: Row {
            table: "chill/exposure",
            key: "v-vulnificus-46-4-50",
            printed: "V. vulnificus, 46.4-50 °F: 21 days",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Exposure { organism: "V. vulnificus", from: PrintedTemperature::Both(51.0, 11.0), up_to: Some(PrintedTemperature::Both(70.0, 21.0)), most: hours(6.0) },
        row: Row {
            table: "chill/exposure",
            key: "v-vulnificus-51-70",
            printed: "V. vulnificus, 51-70 °F: 6 hours",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Exposure { organism: "V. vulnificus", from: PrintedTemperature::Both(71.0, 22.0), up_to: Some(PrintedTemperature::Both(80.0, 27.0)), most: hours(2.0) },
        row: Row {
            table: "chill/exposure",
            key: "v-vulnificus-71-80",
            printed: "V. vulnificus, 71-80 °F: 2 hours",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Exposure { organism: "V. vulnificus", from: PrintedTemperature::Both(80.0, 27.0), up_to: None, most: hours(1.0) },
        row: Row {
            table: "chill/exposure",
            key: "v-vulnificus-80",
            printed: "V. vulnificus, >80 °F: 1 hour",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "footnote 2: cooked, ready-to-eat foods only",
        },
    },
    Cited {
        value: Exposure { organism: "Y. enterocolitica", from: PrintedTemperature::Both(29.7, -1.3), up_to: Some(PrintedTemperature::Both(50.0, 10.0)), most: hours(24.0) },
        row: Row {
            table: "chill/exposure",
            key: "y-enterocolitica-29-7-50",
            printed: "Y. enterocolitica, 29.7-50 °F: 1 day",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Exposure { organism: "Y. enterocolitica", from: PrintedTemperature::Both(51.0, 11.0), up_to: Some(PrintedTemperature::Both(70.0, 21.0)), most: hours(6.0) },
        row: Row {
            table: "chill/exposure",
            key: "y-enterocolitica-51-70",
            printed: "Y. enterocolitica, 51-70 °F: 6 hours",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Exposure { organism: "Y. enterocolitica", from: PrintedTemperature::Both(70.0, 21.0), up_to: None, most: hours(2.5) },
        row: Row {
            table: "chill/exposure",
            key: "y-enterocolitica-70",
            printed: "Y. enterocolitica, >70 °F: 2.5 hours",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-2, page 422", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Holding, time, thawing, dates and packaging, Food Code 2022
pub static FOOD_CODE_2022_DATE_MARK: Cited<PrintedTemperature> = Cited {
        value: PrintedTemperature::Both(41.0, 5.0),
        row: Row {
            table: "chill/food-code-2022",
            key: "date-mark",
            printed: "RTE TCS food held over 24 h at 41 F or less: at most 7 days, day of preparation or opening = day 1; not past a safety use-by date, 41 °F",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-501.17(A), (B)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Holding, time, thawing, dates and packaging, Food Code 2022
pub static FOOD_CODE_2022_DATE_MARK_DAYS: Cited<Time> = Cited {
        value: days(7.0),
        row: Row {
            table: "chill/food-code-2022",
            key: "date-mark",
            printed: "RTE TCS food held over 24 h at 41 F or less: at most 7 days, day of preparation or opening = day 1; not past a safety use-by date, 41 °F",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-501.17(A), (B)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

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

/// Limits of growth of pathogens, 1992
pub static GROWTH_LIMITS_1992: [Cited<GrowthLimit>; 15] = [
    Cited {
        value: GrowthLimit { pathogen: Pathogen::Salmonella, celsius: Some(6.5), ph: Some(4.5), activity: Some(0.95), salt: None },
        row: Row {
            table: "chill/growth-limits-1992",
            key: "salmonella",
            printed: "Salmonella: from 6.5 °C, to 47 °C, pH from 4.5, water activity above 0.95",
            citation: Citation { source: &sources::BAD_BUG_1992, place: "row Salmonella", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "aw: S. Newport 0.941, S. Typhimurium 0.945",
        },
    },
    Cited {
        value: GrowthLimit { pathogen: Pathogen::BotulinumProteolytic, celsius: Some(10.0), ph: Some(4.7), activity: Some(0.93), salt: None },
        row: Row {
            table: "chill/growth-limits-1992",
            key: "c-botulinum-a-and-b",
            printed: "C. botulinum A and B: from 10 °C, to 50 °C, pH from 4.7, pH to 9, water activity above 0.93",
            citation: Citation { source: &sources::BAD_BUG_1992, place: "row C. botulinum A and B", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: GrowthLimit { pathogen: Pathogen::BotulinumNonProteolytic, celsius: Some(5.0), ph: None, activity: None, salt: None },
        row: Row {
            table: "chill/growth-limits-1992",
            key: "c-botulinum-non-proteolytic-b",
            printed: "C. botulinum non-proteolytic B: from 5 °C",
            citation: Citation { source: &sources::BAD_BUG_1992, place: "row C. botulinum non-proteolytic B", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: GrowthLimit { pathogen: Pathogen::BotulinumNonProteolytic, celsius: Some(3.3), ph: None, activity: Some(0.965), salt: None },
        row: Row {
            table: "chill/growth-limits-1992",
            key: "c-botulinum-e",
            printed: "C. botulinum E: from 3.3 °C, water activity above 0.965",
            citation: Citation { source: &sources::BAD_BUG_1992, place: "row C. botulinum E", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "upper temperature printed 15-30",
        },
    },
    Cited {
        value: GrowthLimit { pathogen: Pathogen::BotulinumNonProteolytic, celsius: Some(4.0), ph: None, activity: None, salt: None },
        row: Row {
            table: "chill/growth-limits-1992",
            key: "c-botulinum-f",
            printed: "C. botulinum F: from 4 °C",
            citation: Citation { source: &sources::BAD_BUG_1992, place: "row C. botulinum F", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: GrowthLimit { pathogen: Pathogen::StaphylococcusGrowth, celsius: Some(7.0), ph: Some(4.2), activity: Some(0.86), salt: None },
        row: Row {
            table: "chill/growth-limits-1992",
            key: "s-aureus",
            printed: "S. aureus: from 7 °C, to 45 °C, pH from 4.2, pH to 9.3, water activity above 0.86",
            citation: Citation { source: &sources::BAD_BUG_1992, place: "row S. aureus", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: GrowthLimit { pathogen: Pathogen::Campylobacter, celsius: Some(25.0), ph: Some(5.5), activity: None, salt: None },
        row: Row {
            table: "chill/growth-limits-1992",
            key: "campylobacter-jejuni",
            printed: "Campylobacter jejuni: from 25 °C, to 42 °C, pH from 5.5, pH to 8",
            citation: Citation { source: &sources::BAD_BUG_1992, place: "row Campylobacter jejuni", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "lower than A-1 (30 C)",
        },
    },
    Cited {
        value: GrowthLimit { pathogen: Pathogen::Yersinia, celsius: Some(1.0), ph: Some(4.4), activity: None, salt: None },
        row: Row {
            table: "chill/growth-limits-1992",
            key: "yersinia-enterocolitica",
            printed: "Yersinia enterocolitica: from 1 °C, to 44 °C, pH from 4.4, pH to 9",
            citation: Citation { source: &sources::BAD_BUG_1992, place: "row Yersinia enterocolitica", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: GrowthLimit { pathogen: Pathogen::Listeria, celsius: Some(0.0), ph: Some(4.4), activity: Some(0.92), salt: None },
        row: Row {
            table: "chill/growth-limits-1992",
            key: "listeria-monocytogenes",
            printed: "Listeria monocytogenes: from 0 °C, to 45 °C, pH from 4.4, pH to 9.4, water activity above 0.92",
            citation: Citation { source: &sources::BAD_BUG_1992, place: "row Listeria monocytogenes", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "aw updated from ICMSF 1996",
        },
    },
    Cited {
        value: GrowthLimit { pathogen: Pathogen::VibrioCholerae, celsius: Some(8.0), ph: Some(6.0), activity: Some(0.95), salt: None },
        row: Row {
            table: "chill/growth-limits-1992",
            key: "vibrio-cholerae-o1",
            printed: "Vibrio cholerae O1: from 8 °C, to 42 °C, pH from 6, pH to 9.6, water activity above 0.95",
            citation: Citation { source: &sources::BAD_BUG_1992, place: "row Vibrio cholerae O1", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: GrowthLimit { pathogen: Pathogen::VibrioParahaemolyticus, celsius: Some(12.8), ph: Some(5.0), activity: Some(0.94), salt: None },
        row: Row {
            table: "chill/growth-limits-1992",
            key: "vibrio-parahaemolyticus",
            printed: "Vibrio parahaemolyticus: from 12.8 °C, to 40 °C, pH from 5, pH to 9.6, water activity above 0.94",
            citation: Citation { source: &sources::BAD_BUG_1992, place: "row Vibrio parahaemolyticus", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: GrowthLimit { pathogen: Pathogen::Perfringens, celsius: Some(10.0), ph: Some(5.5), activity: Some(0.93), salt: None },
        row: Row {
            table: "chill/growth-limits-1992",
            key: "c-perfringens",
            printed: "C. perfringens: from 10 °C, to 52 °C, pH from 5.5, pH to 8, water activity above 0.93",
            citation: Citation { source: &sources::BAD_BUG_1992, place: "row C. perfringens", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: GrowthLimit { pathogen: Pathogen::BacillusCereus, celsius: Some(10.0), ph: Some(4.9), activity: Some(0.95), salt: None },
        row: Row {
            table: "chill/growth-limits-1992",
            key: "bacillus-cereus",
            printed: "Bacillus cereus: from 10 °C, to 49 °C, pH from 4.9, pH to 9.3, water activity above 0.95",
            citation: Citation { source: &sources::BAD_BUG_1992, place: "row Bacillus cereus", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: GrowthLimit { pathogen: Pathogen::EscherichiaColi, celsius: Some(2.5), ph: Some(4.6), activity: Some(0.935), salt: None },
        row: Row {
            table: "chill/growth-limits-1992",
            key: "escherichia-coli",
            printed: "Escherichia coli: from 2.5 °C, to 45 °C, pH from 4.6, pH to 9.5, water activity above 0.935",
            citation: Citation { source: &sources::BAD_BUG_1992, place: "row Escherichia coli", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: GrowthLimit { pathogen: Pathogen::Shigella, celsius: Some(8.0), ph: None, activity: None, salt: None },
        row: Row {
            table: "chill/growth-limits-1992",
            key: "shigella",
            printed: "Shigella: from 8 °C, to 45 °C",
            citation: Citation { source: &sources::BAD_BUG_1992, place: "row Shigella", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "pH upper 9-11",
        },
    },
];

/// Limits of growth, other sources
pub static GROWTH_LIMITS_OTHER: [Cited<GrowthLimit>; 4] = [
    Cited {
        value: GrowthLimit { pathogen: Pathogen::Listeria, celsius: Some(-1.5), ph: Some(4.2), activity: Some(0.9), salt: Some(16.0) },
        row: Row {
            table: "chill/growth-limits-other",
            key: "listeria-monocytogenes",
            printed: "Listeria monocytogenes: from -1.5 or 3 °C, to 45 °C, pH from 4.2 or 4.3, water activity from 0.9 or 0.93",
            citation: Citation { source: &sources::SANCO_LM_2008, place: "growth table", standing: Standing::Paper, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "a no-growth aw of 0.92 is not safe if the 0.90 end is right",
        },
    },
    Cited {
        value: GrowthLimit { pathogen: Pathogen::BotulinumNonProteolytic, celsius: Some(3.3), ph: Some(5.0), activity: Some(0.97), salt: None },
        row: Row {
            table: "chill/growth-limits-other",
            key: "c-botulinum-type-e-and-non-proteolytic",
            printed: "C. botulinum type E and non-proteolytic: from 3.3 °C, to 45 °C, pH from 5, pH to 9, water activity from 0.97",
            citation: Citation { source: &sources::SNYDER_SUMMARY, place: "entry 3 (Hauschild 1989)", standing: Standing::Paper, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: GrowthLimit { pathogen: Pathogen::BotulinumNonProteolytic, celsius: Some(3.3), ph: None, activity: None, salt: None },
        row: Row {
            table: "chill/growth-limits-other",
            key: "c-botulinum-type-e-and-non-proteolytic-b-f",
            printed: "C. botulinum type E and non-proteolytic B, F: from 3.3 °C",
            citation: Citation { source: &sources::FDA_HAZ_CH8_3ED, place: "Potential Food Safety Hazard", standing: Standing::Paper, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: GrowthLimit { pathogen: Pathogen::BotulinumProteolytic, celsius: Some(10.0), ph: None, activity: None, salt: None },
        row: Row {
            table: "chill/growth-limits-other",
            key: "c-botulinum-type-a-and-proteolytic-b-f",
            printed: "C. botulinum type A and proteolytic B, F: from 10 °C",
            citation: Citation { source: &sources::FDA_HAZ_CH8_3ED, place: "Potential Food Safety Hazard", standing: Standing::Paper, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Limits of growth of pathogens, FDA fish guide Table A-1
pub static GROWTH_LIMITS: [Cited<GrowthLimit>; 15] = [
    Cited {
        value: GrowthLimit { pathogen: Pathogen::BacillusCereus, celsius: Some(4.0), ph: Some(4.3), activity: Some(0.92), salt: Some(10.0) },
        row: Row {
            table: "chill/growth-limits",
            key: "bacillus-cereus",
            printed: "Bacillus cereus: from 4 °C, to 55 °C, pH from 4.3, pH to 9.3, water activity from 0.92, to 10 % salt in the water",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-1, page 421", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "growth much delayed, over 24 h, at 131 F (footnote 1)",
        },
    },
    Cited {
        value: GrowthLimit { pathogen: Pathogen::Campylobacter, celsius: Some(30.0), ph: Some(4.9), activity: Some(0.987), salt: Some(1.7) },
        row: Row {
            table: "chill/growth-limits",
            key: "campylobacter-jejuni",
            printed: "Campylobacter jejuni: from 30 °C, to 45 °C, pH from 4.9, pH to 9.5, water activity from 0.987, to 1.7 % salt in the water",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-1, page 421", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: GrowthLimit { pathogen: Pathogen::BotulinumProteolytic, celsius: Some(10.0), ph: Some(4.6), activity: Some(0.935), salt: Some(10.0) },
        row: Row {
            table: "chill/growth-limits",
            key: "clostridium-botulinum-type-a-proteolytic-b-and-f",
            printed: "Clostridium botulinum type A, proteolytic B and F: from 10 °C, to 48 °C, pH from 4.6, pH to 9, water activity from 0.935, to 10 % salt in the water",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-1, page 421", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: GrowthLimit { pathogen: Pathogen::BotulinumNonProteolytic, celsius: Some(3.3), ph: Some(5.0), activity: Some(0.97), salt: Some(5.0) },
        row: Row {
            table: "chill/growth-limits",
            key: "clostridium-botulinum-type-e-non-proteolytic-b-and-f",
            printed: "Clostridium botulinum type E, non-proteolytic B and F: from 3.3 °C, to 45 °C, pH from 5, pH to 9, water activity from 0.97, to 5 % salt in the water",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-1, page 421", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: GrowthLimit { pathogen: Pathogen::Perfringens, celsius: Some(10.0), ph: Some(5.0), activity: Some(0.93), salt: Some(7.0) },
        row: Row {
            table: "chill/growth-limits",
            key: "clostridium-perfringens",
            printed: "Clostridium perfringens: from 10 °C, to 52 °C, pH from 5, pH to 9, water activity from 0.93, to 7 % salt in the water",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-1, page 421", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: GrowthLimit { pathogen: Pathogen::EscherichiaColi, celsius: Some(6.5), ph: Some(4.0), activity: Some(0.95), salt: Some(6.5) },
        row: Row {
            table: "chill/growth-limits",
            key: "escherichia-coli-pathogenic",
            printed: "Escherichia coli (pathogenic): from 6.5 °C, to 49.4 °C, pH from 4, pH to 10, water activity from 0.95, to 6.5 % salt in the water",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-1, page 421", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: GrowthLimit { pathogen: Pathogen::Listeria, celsius: Some(-0.4), ph: Some(4.4), activity: Some(0.92), salt: Some(10.0) },
        row: Row {
            table: "chill/growth-limits",
            key: "listeria-monocytogenes",
            printed: "Listeria monocytogenes: from -0.4 °C, to 45 °C, pH from 4.4, pH to 9.4, water activity from 0.92, to 10 % salt in the water",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-1, page 421", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: GrowthLimit { pathogen: Pathogen::Salmonella, celsius: Some(5.2), ph: Some(3.7), activity: Some(0.94), salt: Some(8.0) },
        row: Row {
            table: "chill/growth-limits",
            key: "salmonella",
            printed: "Salmonella: from 5.2 °C, to 46.2 °C, pH from 3.7, pH to 9.5, water activity from 0.94, to 8 % salt in the water",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-1, page 421", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: GrowthLimit { pathogen: Pathogen::Shigella, celsius: Some(6.1), ph: Some(4.8), activity: Some(0.96), salt: Some(5.2) },
        row: Row {
            table: "chill/growth-limits",
            key: "shigella",
            printed: "Shigella: from 6.1 °C, to 47.1 °C, pH from 4.8, pH to 9.3, water activity from 0.96, to 5.2 % salt in the water",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-1, page 421", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: GrowthLimit { pathogen: Pathogen::StaphylococcusGrowth, celsius: Some(7.0), ph: Some(4.0), activity: Some(0.83), salt: Some(20.0) },
        row: Row {
            table: "chill/growth-limits",
            key: "staphylococcus-aureus-growth",
            printed: "Staphylococcus aureus, growth: from 7 °C, to 50 °C, pH from 4, pH to 10, water activity from 0.83, to 20 % salt in the water",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-1, page 421", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: GrowthLimit { pathogen: Pathogen::StaphylococcusToxin, celsius: Some(10.0), ph: Some(4.0), activity: Some(0.85), salt: Some(10.0) },
        row: Row {
            table: "chill/growth-limits",
            key: "staphylococcus-aureus-toxin",
            printed: "Staphylococcus aureus, toxin: from 10 °C, to 48 °C, pH from 4, pH to 9.8, water activity from 0.85, to 10 % salt in the water",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-1, page 421", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: GrowthLimit { pathogen: Pathogen::VibrioCholerae, celsius: Some(10.0), ph: Some(5.0), activity: Some(0.97), salt: Some(6.0) },
        row: Row {
            table: "chill/growth-limits",
            key: "vibrio-cholerae",
            printed: "Vibrio cholerae: from 10 °C, to 43 °C, pH from 5, pH to 10, water activity from 0.97, to 6 % salt in the water",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-1, page 421", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: GrowthLimit { pathogen: Pathogen::VibrioParahaemolyticus, celsius: Some(5.0), ph: Some(4.8), activity: Some(0.94), salt: Some(10.0) },
        row: Row {
            table: "chill/growth-limits",
            key: "vibrio-parahaemolyticus",
            printed: "Vibrio parahaemolyticus: from 5 °C, to 45.3 °C, pH from 4.8, pH to 11, water activity from 0.94, to 10 % salt in the water",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-1, page 421", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: GrowthLimit { pathogen: Pathogen::VibrioVulnificus, celsius: Some(8.0), ph: Some(5.0), activity: Some(0.96), salt: Some(5.0) },
        row: Row {
            table: "chill/growth-limits",
            key: "vibrio-vulnificus",
            printed: "Vibrio vulnificus: from 8 °C, to 43 °C, pH from 5, pH to 10, water activity from 0.96, to 5 % salt in the water",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-1, page 421", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: GrowthLimit { pathogen: Pathogen::Yersinia, celsius: Some(-1.3), ph: Some(4.2), activity: Some(0.945), salt: Some(7.0) },
        row: Row {
            table: "chill/growth-limits",
            key: "yersinia-enterocolitica",
            printed: "Yersinia enterocolitica: from -1.3 °C, to 42 °C, pH from 4.2, pH to 10, water activity from 0.945, to 7 % salt in the water",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "Table A-1, page 421", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Published sets of growth parameters
pub static GROWTH_MODELS: [Cited<Model>; 2] = [
    Cited {
        value: Model { organism: "Listeria monocytogenes", food: "vacuum-packed cold-smoked salmon", rate: Rate::SquareRoot { b: 0.01821738432733203, least: -2.9 }, spread: Some((Rate::SquareRoot { b: 0.018349349833777177, least: -0.97 }, Rate::SquareRoot { b: 0.018039875171486135, least: -4.83 })), most: 7.27, valid: (-3.0, 25.0) },
        row: Row {
            table: "chill/growth-models",
            key: "lm-cold-smoked-salmon",
            printed: "Listeria monocytogenes in vacuum-packed cold-smoked salmon: mu(T) = mu_ref*((T-Tmin)/(Tref-Tmin))^2 for T>Tmin else 0; log10 N rises by mu*t/ln(10), cut at Nmax; no lag term",
            citation: Citation { source: &sources::MC2D_LM, place: "section The Model, list below equation DMS; variability values in section Growth Parameters", standing: Standing::Paper, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "units are per DAY and natural log. The text gives Nmax 7.27, the code beside it uses 7.3",
        },
    },
    Cited {
        value: Model { organism: "Salmonella", food: "raw chicken", rate: Rate::SquareTimesMaximum { a: 0.0019, c: 0.29, least: 3.35, most: 48.01 }, spread: None, most: 9.5, valid: (10.0, 45.0) },
        row: Row {
            table: "chill/growth-models",
            key: "salmonella-chicken-juneja2007",
            printed: "Salmonella in raw chicken: mu = 0.0019*(T-3.35)^2*(1-exp(0.29*(T-48.01)))",
            citation: Citation { source: &sources::KOSFA_38_5_1043_T1, place: "rows LT, GRRETR, GRAMTR, MPD", standing: Standing::Paper, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "the table labels the rate log10 per hour. Read so it gives a doubling time of 8.8 min at 37 C and 20 min at 25 C, faster than Salmonella can grow; as ln per hour 20 min and 47 min. The measured sausage rates of kosfa-36-2-262-t1 also sit on the ln reading. Juneja 2007 itself: abstract only. Its temperature range from phtnet.org mb337",
        },
    },
];

/// Least temperatures of growth
pub static GROWTH_TEMPERATURES: [Cited<GrowthLimit>; 10] = [
    Cited {
        value: GrowthLimit { pathogen: Pathogen::Salmonella, celsius: Some(7.0), ph: None, activity: None, salt: None },
        row: Row {
            table: "chill/growth-temperatures",
            key: "salmonella",
            printed: "Salmonella: 7 °C",
            citation: Citation { source: &sources::TOMPKIN_TABLE1, place: "Table 1", standing: Standing::Paper, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: GrowthLimit { pathogen: Pathogen::EscherichiaColi, celsius: Some(7.0), ph: None, activity: None, salt: None },
        row: Row {
            table: "chill/growth-temperatures",
            key: "pathogenic-e-coli-7-to-8-c",
            printed: "pathogenic E. coli (7 to 8 C): 7 °C",
            citation: Citation { source: &sources::TOMPKIN_TABLE1, place: "Table 1", standing: Standing::Paper, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: GrowthLimit { pathogen: Pathogen::Listeria, celsius: Some(-0.4), ph: None, activity: None, salt: None },
        row: Row {
            table: "chill/growth-temperatures",
            key: "l-monocytogenes",
            printed: "L. monocytogenes: -0.4 °C",
            citation: Citation { source: &sources::TOMPKIN_TABLE1, place: "Table 1", standing: Standing::Paper, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: GrowthLimit { pathogen: Pathogen::Yersinia, celsius: Some(-1.3), ph: None, activity: None, salt: None },
        row: Row {
            table: "chill/growth-temperatures",
            key: "y-enterocolitica",
            printed: "Y. enterocolitica: -1.3 °C",
            citation: Citation { source: &sources::TOMPKIN_TABLE1, place: "Table 1", standing: Standing::Paper, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: GrowthLimit { pathogen: Pathogen::Campylobacter, celsius: Some(32.0), ph: None, activity: None, salt: None },
        row: Row {
            table: "chill/growth-temperatures",
            key: "campylobacter-jejuni",
            printed: "Campylobacter jejuni: 32 °C",
            citation: Citation { source: &sources::TOMPKIN_TABLE1, place: "Table 1", standing: Standing::Paper, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: GrowthLimit { pathogen: Pathogen::StaphylococcusGrowth, celsius: Some(7.0), ph: None, activity: None, salt: None },
        row: Row {
            table: "chill/growth-temperatures",
            key: "s-aureus",
            printed: "S. aureus: 7 °C",
            citation: Citation { source: &sources::TOMPKIN_TABLE1, place: "Table 1", standing: Standing::Paper, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: GrowthLimit { pathogen: Pathogen::BacillusCereus, celsius: Some(4.0), ph: None, activity: None, salt: None },
        row: Row {
            table: "chill/growth-temperatures",
            key: "b-cereus-psychrotrophic",
            printed: "B. cereus psychrotrophic: 4 °C",
            citation: Citation { source: &sources::TOMPKIN_TABLE1, place: "Table 1", standing: Standing::Paper, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: GrowthLimit { pathogen: Pathogen::Perfringens, celsius: Some(12.0), ph: None, activity: None, salt: None },
        row: Row {
            table: "chill/growth-temperatures",
            key: "c-perfringens",
            printed: "C. perfringens: 12 °C",
            citation: Citation { source: &sources::TOMPKIN_TABLE1, place: "Table 1", standing: Standing::Paper, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: GrowthLimit { pathogen: Pathogen::BotulinumNonProteolytic, celsius: Some(3.3), ph: None, activity: None, salt: None },
        row: Row {
            table: "chill/growth-temperatures",
            key: "c-botulinum-non-proteolytic",
            printed: "C. botulinum non-proteolytic: 3.3 °C",
            citation: Citation { source: &sources::TOMPKIN_TABLE1, place: "Table 1", standing: Standing::Paper, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: GrowthLimit { pathogen: Pathogen::BotulinumProteolytic, celsius: Some(10.0), ph: None, activity: None, salt: None },
        row: Row {
            table: "chill/growth-temperatures",
            key: "c-botulinum-proteolytic",
            printed: "C. botulinum proteolytic: 10 °C",
            citation: Citation { source: &sources::TOMPKIN_TABLE1, place: "Table 1", standing: Standing::Paper, seen: Seen::Reported },
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
pub static WARM_TIME: [Cited<WarmTime>; 8] = [
    Cited {
        value: WarmTime { authority: Authority::UsConsumer, was: None, cold: PrintedTemperature::Both(40.0, 4.4), hot: PrintedTemperature::Both(140.0, 60.0), air_above: None, never_above: None, most: Limit::AtMost(hours(2.0)) },
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
        value: WarmTime { authority: Authority::UsConsumer, was: None, cold: PrintedTemperature::Both(40.0, 4.4), hot: PrintedTemperature::Both(140.0, 60.0), air_above: Some(PrintedTemperature::Both(90.0, 32.2)), never_above: None, most: Limit::AtMost(hours(1.0)) },
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
        value: WarmTime { authority: Authority::UsFoodCode2022, was: None, cold: PrintedTemperature::Both(41.0, 5.0), hot: PrintedTemperature::Both(135.0, 57.0), air_above: None, never_above: None, most: Limit::AtMost(hours(4.0)) },
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
        value: WarmTime { authority: Authority::UsFoodCode2022, was: None, cold: PrintedTemperature::Both(41.0, 5.0), hot: PrintedTemperature::Both(135.0, 57.0), air_above: None, never_above: Some(PrintedTemperature::Both(70.0, 21.0)), most: Limit::AtMost(hours(6.0)) },
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
        value: WarmTime { authority: Authority::AustraliaNewZealand, was: None, cold: PrintedTemperature::Celsius(5.0), hot: PrintedTemperature::Celsius(60.0), air_above: None, never_above: None, most: Limit::AtMost(hours(2.0)) },
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
        value: WarmTime { authority: Authority::AustraliaNewZealand, was: None, cold: PrintedTemperature::Celsius(5.0), hot: PrintedTemperature::Celsius(60.0), air_above: None, never_above: None, most: Limit::AtMost(hours(4.0)) },
        row: Row {
            table: "chill/warm-time",
            key: "australia-4-h",
            printed: "2 to 4 h: use at once; over 4 h: discard",
            citation: Citation { source: &sources::QLD_SOMERSET, place: "heading seen, text cut", standing: Standing::Guidance, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "Its bounds are those of the row of safe temperatures.",
        },
    },
    Cited {
        value: WarmTime { authority: Authority::GreatBritain, was: Some(Was::Hot), cold: PrintedTemperature::Celsius(8.0), hot: PrintedTemperature::Celsius(63.0), air_above: None, never_above: None, most: Limit::Below(hours(2.0)) },
        row: Row {
            table: "chill/warm-time",
            key: "great-britain-hot-display",
            printed: "kept for service or on display for less than 2 h, once only, below 63 °C",
            citation: Citation { source: &sources::UK_2005_2059, place: "Sch 4 para 7(2)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "A defence, not an allowance. Its lower bound is that of the row of chilled food.",
        },
    },
    Cited {
        value: WarmTime { authority: Authority::GreatBritain, was: Some(Was::Cold), cold: PrintedTemperature::Celsius(8.0), hot: PrintedTemperature::Celsius(63.0), air_above: None, never_above: None, most: Limit::Below(hours(4.0)) },
        row: Row {
            table: "chill/warm-time",
            key: "great-britain-chilled-display",
            printed: "kept for service or on display for less than 4 h, once only, above 8 °C",
            citation: Citation { source: &sources::UK_NI_2006_3, place: "Sch 4 para 5(1)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "A defence, not an allowance. Read in the regulations of Northern Ireland. Its upper bound is that of the row of hot food.",
        },
    },
];
