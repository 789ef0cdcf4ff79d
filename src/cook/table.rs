// Made from references/ by references/pipeline. Do not edit: change the reference file.

use crate::cite::{Citation, Cited, Date, InForce, Row, Seen, Standing, sources};
use super::air::{Barometer, Saturation, WetBulb};
use super::hold::Hold;
use super::humidity::{HumidityOption, LargePiece};
use super::parasite::Freezing;
use super::{ComeUpLimit, Dwell, Dwell5, Endpoint, PoultryDwell};
use crate::authority::Authority;
use crate::food::Food;
use crate::units::{PrintedTemperature, Time, centimeters, hours, pounds, seconds};

/// Cooking endpoints for consumers, Canada
pub static CANADA: [Cited<Endpoint>; 10] = [
    Cited {
        value: Endpoint { authority: Authority::Canada, food: Food::WholeMeat, temperature: PrintedTemperature::Both(160.0, 71.0), rest: seconds(0.0) },
        row: Row {
            table: "cook/canada",
            key: "canada-pork-pieces-and-whole-cuts-ham-71",
            printed: "pork pieces and whole cuts, ham: 71 °C",
            citation: Citation { source: &sources::HC_CHART, place: "chart row (printed in F in that copy)", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Endpoint { authority: Authority::Canada, food: Food::RawHam, temperature: PrintedTemperature::Both(160.0, 71.0), rest: seconds(0.0) },
        row: Row {
            table: "cook/canada",
            key: "canada-pork-pieces-and-whole-cuts-ham-71",
            printed: "pork pieces and whole cuts, ham: 71 °C",
            citation: Citation { source: &sources::HC_CHART, place: "chart row (printed in F in that copy)", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Endpoint { authority: Authority::Canada, food: Food::GroundMeat, temperature: PrintedTemperature::Both(160.0, 71.0), rest: seconds(0.0) },
        row: Row {
            table: "cook/canada",
            key: "canada-ground-beef-veal-lamb-pork-and-mixtur-71",
            printed: "ground beef, veal, lamb, pork and mixtures: 71 °C",
            citation: Citation { source: &sources::HC_CHART, place: "chart row (printed in F in that copy)", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Endpoint { authority: Authority::Canada, food: Food::GroundPoultry, temperature: PrintedTemperature::Both(165.0, 74.0), rest: seconds(0.0) },
        row: Row {
            table: "cook/canada",
            key: "canada-ground-poultry-and-mixtures-74",
            printed: "ground poultry and mixtures: 74 °C",
            citation: Citation { source: &sources::HC_CHART, place: "chart row (printed in F in that copy)", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Endpoint { authority: Authority::Canada, food: Food::Poultry, temperature: PrintedTemperature::Both(180.0, 82.0), rest: seconds(0.0) },
        row: Row {
            table: "cook/canada",
            key: "canada-whole-poultry-82",
            printed: "whole poultry: 82 °C",
            citation: Citation { source: &sources::HC_CHART, place: "chart row (printed in F in that copy)", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Endpoint { authority: Authority::Canada, food: Food::Eggs, temperature: PrintedTemperature::Both(165.0, 74.0), rest: seconds(0.0) },
        row: Row {
            table: "cook/canada",
            key: "canada-egg-dishes-74",
            printed: "egg dishes: 74 °C",
            citation: Citation { source: &sources::HC_CHART, place: "chart row (printed in F in that copy)", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Endpoint { authority: Authority::Canada, food: Food::Fish, temperature: PrintedTemperature::Both(165.0, 74.0), rest: seconds(0.0) },
        row: Row {
            table: "cook/canada",
            key: "canada-shellfish-74",
            printed: "shellfish: 74 °C",
            citation: Citation { source: &sources::HC_CHART, place: "chart row (printed in F in that copy)", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Endpoint { authority: Authority::Canada, food: Food::Leftovers, temperature: PrintedTemperature::Both(165.0, 74.0), rest: seconds(0.0) },
        row: Row {
            table: "cook/canada",
            key: "canada-hot-dogs-stuffing-leftovers-74",
            printed: "hot dogs, stuffing, leftovers: 74 °C",
            citation: Citation { source: &sources::HC_CHART, place: "chart row (printed in F in that copy)", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Endpoint { authority: Authority::Canada, food: Food::Casseroles, temperature: PrintedTemperature::Both(165.0, 74.0), rest: seconds(0.0) },
        row: Row {
            table: "cook/canada",
            key: "canada-hot-dogs-stuffing-leftovers-74",
            printed: "hot dogs, stuffing, leftovers: 74 °C",
            citation: Citation { source: &sources::HC_CHART, place: "chart row (printed in F in that copy)", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Endpoint { authority: Authority::Canada, food: Food::OtherHamReheated, temperature: PrintedTemperature::Both(165.0, 74.0), rest: seconds(0.0) },
        row: Row {
            table: "cook/canada",
            key: "canada-hot-dogs-stuffing-leftovers-74",
            printed: "hot dogs, stuffing, leftovers: 74 °C",
            citation: Citation { source: &sources::HC_CHART, place: "chart row (printed in F in that copy)", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Freezing fish against parasites
pub static FISH_FREEZING: [Cited<Freezing>; 3] = [
    Cited {
        value: Freezing { freeze: PrintedTemperature::Both(-4.0, -20.0), store: PrintedTemperature::Both(-4.0, -20.0), thickest: None, time: seconds(604800.0) },
        row: Row {
            table: "cook/fish-freezing",
            key: "1",
            printed: "frozen and stored: -4 °F (-20 °C), then -4 °F (-20 °C), 168 h",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-402.11(A)(1)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Freezing { freeze: PrintedTemperature::Both(-31.0, -35.0), store: PrintedTemperature::Both(-31.0, -35.0), thickest: None, time: seconds(54000.0) },
        row: Row {
            table: "cook/fish-freezing",
            key: "2",
            printed: "frozen until solid and stored: -31 °F (-35 °C), then -31 °F (-35 °C), 15 h",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-402.11(A)(2)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Freezing { freeze: PrintedTemperature::Both(-31.0, -35.0), store: PrintedTemperature::Both(-4.0, -20.0), thickest: None, time: seconds(86400.0) },
        row: Row {
            table: "cook/fish-freezing",
            key: "3",
            printed: "frozen until solid, then stored: -31 °F (-35 °C), then -4 °F (-20 °C), 24 h",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-402.11(A)(3)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Ground meat in the Food Code 2022
pub static FOOD_CODE_2022_GROUND: [Cited<Hold>; 4] = [
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(145.0, 63.0), time: seconds(180.0) },
        row: Row {
            table: "cook/food-code-2022-ground",
            key: "145",
            printed: "145 °F, 3 minutes",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-401.11(A)(2) text and chart", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(150.0, 66.0), time: seconds(60.0) },
        row: Row {
            table: "cook/food-code-2022-ground",
            key: "150",
            printed: "150 °F, 1 minute",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-401.11(A)(2) text and chart", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(155.0, 68.0), time: seconds(17.0) },
        row: Row {
            table: "cook/food-code-2022-ground",
            key: "155",
            printed: "155 °F, 17 seconds",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-401.11(A)(2) text and chart", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(158.0, 70.0), time: seconds(1.0) },
        row: Row {
            table: "cook/food-code-2022-ground",
            key: "158",
            printed: "158 °F, < 1 second (instantaneous)",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-401.11(A)(2) text and chart", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Other rules on cooking of the Food Code 2022
pub static FOOD_CODE_2022_OTHER_FIRST_HEATING: Cited<Time> = Cited {
        value: seconds(3600.0),
        row: Row {
            table: "cook/food-code-2022-other",
            key: "3-401-14",
            printed: "non-continuous cooking: first heating no longer than",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-401.14(A)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Other rules on cooking of the Food Code 2022
pub static FOOD_CODE_2022_OTHER_REHEAT: Cited<Hold> = Cited {
        value: Hold { temperature: PrintedTemperature::Both(165.0, 74.0), time: seconds(15.0) },
        row: Row {
            table: "cook/food-code-2022-other",
            key: "3-403-11-a-165",
            printed: "reheating for hot holding, all parts reach, 15 s",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-403.11(A)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Other rules on cooking of the Food Code 2022
pub static FOOD_CODE_2022_OTHER_REHEAT_PACKAGED: Cited<Hold> = Cited {
        value: Hold { temperature: PrintedTemperature::Both(135.0, 57.0), time: seconds(0.0) },
        row: Row {
            table: "cook/food-code-2022-other",
            key: "3-403-11-c-135",
            printed: "ready-to-eat food from an inspected plant, for hot holding",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-403.11(C)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Other rules on cooking of the Food Code 2022
pub static FOOD_CODE_2022_OTHER_REHEAT_WITHIN: Cited<Time> = Cited {
        value: seconds(7200.0),
        row: Row {
            table: "cook/food-code-2022-other",
            key: "3-403-11-d",
            printed: "time from 41 F to the reheat temperature not over",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-403.11(D)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Other rules on cooking of the Food Code 2022
pub static FOOD_CODE_2022_OTHER_HOT_HOLDING: Cited<Hold> = Cited {
        value: Hold { temperature: PrintedTemperature::Both(135.0, 57.0), time: seconds(0.0) },
        row: Row {
            table: "cook/food-code-2022-other",
            key: "3-501-16-a-1-135",
            printed: "hot holding; roasts cooked or reheated by the roast rules 130 F",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-501.16(A)(1)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Other rules on cooking of the Food Code 2022
pub static FOOD_CODE_2022_OTHER_HOT_HOLDING_ROASTS: Cited<Hold> = Cited {
        value: Hold { temperature: PrintedTemperature::Both(130.0, 54.0), time: seconds(0.0) },
        row: Row {
            table: "cook/food-code-2022-other",
            key: "3-501-16-a-1-135",
            printed: "hot holding; roasts cooked or reheated by the roast rules 130 F",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-501.16(A)(1)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Whole roasts in the Food Code 2022
pub static FOOD_CODE_2022_ROASTS: [Cited<Hold>; 17] = [
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(130.0, 54.4), time: seconds(6720.0) },
        row: Row {
            table: "cook/food-code-2022-roasts",
            key: "130",
            printed: "130 °F, 112 min",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-401.11(B)(1) chart, row 130", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(131.0, 55.0), time: seconds(5340.0) },
        row: Row {
            table: "cook/food-code-2022-roasts",
            key: "131",
            printed: "131 °F, 89 min",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-401.11(B)(1) chart, row 131", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(133.0, 56.1), time: seconds(3360.0) },
        row: Row {
            table: "cook/food-code-2022-roasts",
            key: "133",
            printed: "133 °F, 56 min",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-401.11(B)(1) chart, row 133", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(135.0, 57.2), time: seconds(2160.0) },
        row: Row {
            table: "cook/food-code-2022-roasts",
            key: "135",
            printed: "135 °F, 36 min",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-401.11(B)(1) chart, row 135", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(136.0, 57.8), time: seconds(1680.0) },
        row: Row {
            table: "cook/food-code-2022-roasts",
            key: "136",
            printed: "136 °F, 28 min",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-401.11(B)(1) chart, row 136", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(138.0, 58.9), time: seconds(1080.0) },
        row: Row {
            table: "cook/food-code-2022-roasts",
            key: "138",
            printed: "138 °F, 18 min",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-401.11(B)(1) chart, row 138", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(140.0, 60.0), time: seconds(720.0) },
        row: Row {
            table: "cook/food-code-2022-roasts",
            key: "140",
            printed: "140 °F, 12 min",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-401.11(B)(1) chart, row 140", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(142.0, 61.1), time: seconds(480.0) },
        row: Row {
            table: "cook/food-code-2022-roasts",
            key: "142",
            printed: "142 °F, 8 min",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-401.11(B)(1) chart, row 142", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(144.0, 62.2), time: seconds(300.0) },
        row: Row {
            table: "cook/food-code-2022-roasts",
            key: "144",
            printed: "144 °F, 5 min",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-401.11(B)(1) chart, row 144", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(145.0, 62.8), time: seconds(240.0) },
        row: Row {
            table: "cook/food-code-2022-roasts",
            key: "145",
            printed: "145 °F, 4 min",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-401.11(B)(1) chart, row 145", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(147.0, 63.9), time: seconds(134.0) },
        row: Row {
            table: "cook/food-code-2022-roasts",
            key: "147",
            printed: "147 °F, 134 s",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-401.11(B)(1) chart, row 147", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(149.0, 65.0), time: seconds(85.0) },
        row: Row {
            table: "cook/food-code-2022-roasts",
            key: "149",
            printed: "149 °F, 85 s",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-401.11(B)(1) chart, row 149", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(151.0, 66.1), time: seconds(54.0) },
        row: Row {
            table: "cook/food-code-2022-roasts",
            key: "151",
            printed: "151 °F, 54 s",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-401.11(B)(1) chart, row 151", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(153.0, 67.2), time: seconds(34.0) },
        row: Row {
            table: "cook/food-code-2022-roasts",
            key: "153",
            printed: "153 °F, 34 s",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-401.11(B)(1) chart, row 153", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(155.0, 68.3), time: seconds(22.0) },
        row: Row {
            table: "cook/food-code-2022-roasts",
            key: "155",
            printed: "155 °F, 22 s",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-401.11(B)(1) chart, row 155", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(157.0, 69.4), time: seconds(14.0) },
        row: Row {
            table: "cook/food-code-2022-roasts",
            key: "157",
            printed: "157 °F, 14 s",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-401.11(B)(1) chart, row 157", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(158.0, 70.0), time: seconds(0.0) },
        row: Row {
            table: "cook/food-code-2022-roasts",
            key: "158",
            printed: "158 °F",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-401.11(B)(1) chart, row 158", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Cooking temperatures of the Food Code 2022
pub static FOOD_CODE_2022: [Cited<Hold>; 3] = [
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(145.0, 63.0), time: seconds(15.0) },
        row: Row {
            table: "cook/food-code-2022",
            key: "eggs-broken-to-order-fish-and-intact-meat-game-raised-or-ins",
            printed: "eggs broken to order; fish and intact meat, game raised or inspected: 145 °F (63 °C) for 15 s",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-401.11(A)(1)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(155.0, 68.0), time: seconds(17.0) },
        row: Row {
            table: "cook/food-code-2022",
            key: "ratites-nonintact-meats-comminuted-fish-and-game-eggs-not-to",
            printed: "ratites, nonintact meats, comminuted fish and game, eggs not to order: 155 °F (68 °C) for 17 s",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-401.11(A)(2)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "2022 says nonintact meats where 2017 listed tenderized and injected meat",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(165.0, 74.0), time: seconds(1.0) },
        row: Row {
            table: "cook/food-code-2022",
            key: "poultry-baluts-wild-game-stuffed-items-stuffing-holding-fish",
            printed: "poultry, baluts, wild game, stuffed items, stuffing holding fish, meat, poultry or ratites: 165 °F (74 °C) for < 1 second (instantaneous)",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-401.11(A)(3)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Ground meat in the Food Code as adopted by states
pub static FOOD_CODE_GROUND: [Cited<Hold>; 4] = [
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(145.0, 63.0), time: seconds(180.0) },
        row: Row {
            table: "cook/food-code-ground",
            key: "145f",
            printed: "145 °F: 3 minutes",
            citation: Citation { source: &sources::VA700, place: "A 2 text and chart", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(150.0, 66.0), time: seconds(60.0) },
        row: Row {
            table: "cook/food-code-ground",
            key: "150f",
            printed: "150 °F: 1 minute",
            citation: Citation { source: &sources::VA700, place: "A 2 text and chart", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(155.0, 68.0), time: seconds(17.0) },
        row: Row {
            table: "cook/food-code-ground",
            key: "155f",
            printed: "155 °F: 17 seconds",
            citation: Citation { source: &sources::WAC2022, place: "(1)(b) chart", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(158.0, 70.0), time: seconds(1.0) },
        row: Row {
            table: "cook/food-code-ground",
            key: "158f",
            printed: "158 °F: <1 second (instantaneous)",
            citation: Citation { source: &sources::VA700, place: "A 2 text and chart", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Whole roasts in an older Food Code
pub static FOOD_CODE_ROASTS_OLDER: [Cited<Hold>; 9] = [
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(130.0, 54.0), time: seconds(7260.0) },
        row: Row {
            table: "cook/food-code-roasts-older",
            key: "130f",
            printed: "130 °F: 7260 s",
            citation: Citation { source: &sources::MN0340OLD, place: "item B chart, row 130", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(132.0, 56.0), time: seconds(4620.0) },
        row: Row {
            table: "cook/food-code-roasts-older",
            key: "132f",
            printed: "132 °F: 4620 s",
            citation: Citation { source: &sources::MN0340OLD, place: "item B chart, row 132", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(134.0, 57.0), time: seconds(2820.0) },
        row: Row {
            table: "cook/food-code-roasts-older",
            key: "134f",
            printed: "134 °F: 2820 s",
            citation: Citation { source: &sources::MN0340OLD, place: "item B chart, row 134", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(136.0, 58.0), time: seconds(1920.0) },
        row: Row {
            table: "cook/food-code-roasts-older",
            key: "136f",
            printed: "136 °F: 1920 s",
            citation: Citation { source: &sources::MN0340OLD, place: "item B chart, row 136", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(138.0, 59.0), time: seconds(1140.0) },
        row: Row {
            table: "cook/food-code-roasts-older",
            key: "138f",
            printed: "138 °F: 1140 s",
            citation: Citation { source: &sources::MN0340OLD, place: "item B chart, row 138", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(140.0, 60.0), time: seconds(720.0) },
        row: Row {
            table: "cook/food-code-roasts-older",
            key: "140f",
            printed: "140 °F: 720 s",
            citation: Citation { source: &sources::MN0340OLD, place: "item B chart, row 140", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(142.0, 61.0), time: seconds(480.0) },
        row: Row {
            table: "cook/food-code-roasts-older",
            key: "142f",
            printed: "142 °F: 480 s",
            citation: Citation { source: &sources::MN0340OLD, place: "item B chart, row 142", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(144.0, 62.0), time: seconds(300.0) },
        row: Row {
            table: "cook/food-code-roasts-older",
            key: "144f",
            printed: "144 °F: 300 s",
            citation: Citation { source: &sources::MN0340OLD, place: "item B chart, row 144", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(145.0, 63.0), time: seconds(180.0) },
        row: Row {
            table: "cook/food-code-roasts-older",
            key: "145f",
            printed: "145 °F: 180 s",
            citation: Citation { source: &sources::MN0340OLD, place: "item B chart, row 145", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Whole roasts in the Food Code as adopted by states
pub static FOOD_CODE_ROASTS: [Cited<Hold>; 17] = [
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(130.0, 54.4), time: seconds(6720.0) },
        row: Row {
            table: "cook/food-code-roasts",
            key: "130f",
            printed: "130 °F: 112 min",
            citation: Citation { source: &sources::WAC2022, place: "Table 3-2, row 130", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(131.0, 55.0), time: seconds(5340.0) },
        row: Row {
            table: "cook/food-code-roasts",
            key: "131f",
            printed: "131 °F: 89 min",
            citation: Citation { source: &sources::WAC2022, place: "Table 3-2, row 131", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(133.0, 56.1), time: seconds(3360.0) },
        row: Row {
            table: "cook/food-code-roasts",
            key: "133f",
            printed: "133 °F: 56 min",
            citation: Citation { source: &sources::WAC2022, place: "Table 3-2, row 133", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(135.0, 57.2), time: seconds(2160.0) },
        row: Row {
            table: "cook/food-code-roasts",
            key: "135f",
            printed: "135 °F: 36 min",
            citation: Citation { source: &sources::WAC2022, place: "Table 3-2, row 135", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(136.0, 57.8), time: seconds(1680.0) },
        row: Row {
            table: "cook/food-code-roasts",
            key: "136f",
            printed: "136 °F: 28 min",
            citation: Citation { source: &sources::WAC2022, place: "Table 3-2, row 136", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(138.0, 58.9), time: seconds(1080.0) },
        row: Row {
            table: "cook/food-code-roasts",
            key: "138f",
            printed: "138 °F: 18 min",
            citation: Citation { source: &sources::WAC2022, place: "Table 3-2, row 138", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(140.0, 60.0), time: seconds(720.0) },
        row: Row {
            table: "cook/food-code-roasts",
            key: "140f",
            printed: "140 °F: 12 min",
            citation: Citation { source: &sources::WAC2022, place: "Table 3-2, row 140", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(142.0, 61.1), time: seconds(480.0) },
        row: Row {
            table: "cook/food-code-roasts",
            key: "142f",
            printed: "142 °F: 8 min",
            citation: Citation { source: &sources::WAC2022, place: "Table 3-2, row 142", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(144.0, 62.2), time: seconds(300.0) },
        row: Row {
            table: "cook/food-code-roasts",
            key: "144f",
            printed: "144 °F: 5 min",
            citation: Citation { source: &sources::WAC2022, place: "Table 3-2, row 144", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(145.0, 62.8), time: seconds(240.0) },
        row: Row {
            table: "cook/food-code-roasts",
            key: "145f",
            printed: "145 °F: 4 min",
            citation: Citation { source: &sources::WAC2022, place: "Table 3-2, row 145", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(147.0, 63.9), time: seconds(134.0) },
        row: Row {
            table: "cook/food-code-roasts",
            key: "147f",
            printed: "147 °F: 134 s",
            citation: Citation { source: &sources::WAC2022, place: "Table 3-2, row 147", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(149.0, 65.0), time: seconds(85.0) },
        row: Row {
            table: "cook/food-code-roasts",
            key: "149f",
            printed: "149 °F: 85 s",
            citation: Citation { source: &sources::WAC2022, place: "Table 3-2, row 149", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(151.0, 66.1), time: seconds(54.0) },
        row: Row {
            table: "cook/food-code-roasts",
            key: "151f",
            printed: "151 °F: 54 s",
            citation: Citation { source: &sources::WAC2022, place: "Table 3-2, row 151", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(153.0, 67.2), time: seconds(34.0) },
        row: Row {
            table: "cook/food-code-roasts",
            key: "153f",
            printed: "153 °F: 34 s",
            citation: Citation { source: &sources::WAC2022, place: "Table 3-2, row 153", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(155.0, 68.3), time: seconds(22.0) },
        row: Row {
            table: "cook/food-code-roasts",
            key: "155f",
            printed: "155 °F: 22 s",
            citation: Citation { source: &sources::WAC2022, place: "Table 3-2, row 155", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(157.0, 69.4), time: seconds(14.0) },
        row: Row {
            table: "cook/food-code-roasts",
            key: "157f",
            printed: "157 °F: 14 s",
            citation: Citation { source: &sources::WAC2022, place: "Table 3-2, row 157", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(158.0, 70.0), time: seconds(0.0) },
        row: Row {
            table: "cook/food-code-roasts",
            key: "158f",
            printed: "158 °F: 0 s",
            citation: Citation { source: &sources::WAC2022, place: "Table 3-2, row 158", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Cooking temperatures of the Food Code as adopted by states
pub static FOOD_CODE: [Cited<Hold>; 5] = [
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(145.0, 63.0), time: seconds(15.0) },
        row: Row {
            table: "cook/food-code",
            key: "eggs-broken-for-immediate-service-fish-intact-meat-commercia",
            printed: "145 °F: 15 s",
            citation: Citation { source: &sources::VA700, place: "A 1", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "at or above",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(155.0, 68.0), time: seconds(17.0) },
        row: Row {
            table: "cook/food-code",
            key: "ratites-mechanically-tenderized-or-injected-meat-comminuted",
            printed: "155 °F: 17 s",
            citation: Citation { source: &sources::VA700, place: "A 2", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "2013 and earlier Codes: 15 s",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(165.0, 74.0), time: seconds(1.0) },
        row: Row {
            table: "cook/food-code",
            key: "poultry-baluts-wild-game-stuffed-fish-meat-pasta-poultry-rat",
            printed: "165 °F: 1 s",
            citation: Citation { source: &sources::VA700, place: "A 3", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "printed as less than 1 second (instantaneous); 2013 and earlier Codes: 15 s",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(155.0, 68.0), time: seconds(15.0) },
        row: Row {
            table: "cook/food-code",
            key: "same-list-155f",
            printed: "155 °F: 15 s",
            citation: Citation { source: &sources::MN0340, place: "A(2)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "superseded",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(165.0, 74.0), time: seconds(15.0) },
        row: Row {
            table: "cook/food-code",
            key: "same-list-165f",
            printed: "165 °F: 15 s",
            citation: Citation { source: &sources::MN0340, place: "A(3)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "superseded",
        },
    },
];

/// Humidity while meat and poultry cook, FSIS 2021
pub static FSIS_HUMIDITY: [Cited<HumidityOption>; 4] = [
    Cited {
        value: HumidityOption { share_of_the_cook: 0.5, at_least: hours(1.0), endpoint: Some(PrintedTemperature::Both(145.0, 62.8)), relative_humidity: None, shortest_cook: hours(1.0) },
        row: Row {
            table: "cook/fsis-humidity",
            key: "option-1",
            printed: "Option 1, steam: the greater of half the cooking time and 1 h; 145 °F or more at the end; not for cooks under 1 h",
            citation: Citation { source: &sources::FSIS2021, place: "Table 1, p. 26, option 1", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: HumidityOption { share_of_the_cook: 0.5, at_least: hours(1.0), endpoint: Some(PrintedTemperature::Both(145.0, 62.8)), relative_humidity: None, shortest_cook: hours(1.0) },
        row: Row {
            table: "cook/fsis-humidity",
            key: "option-2",
            printed: "Option 2, sealed oven: the greater of half the cooking time and 1 h; 145 °F or more at the end; not for cooks under 1 h",
            citation: Citation { source: &sources::FSIS2021, place: "Table 1, p. 26, option 2", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: HumidityOption { share_of_the_cook: 0.25, at_least: hours(1.0), endpoint: None, relative_humidity: Some(90.0), shortest_cook: hours(1.0) },
        row: Row {
            table: "cook/fsis-humidity",
            key: "option-3",
            printed: "Option 3, 90 % relative humidity or more: the greater of a quarter of the cooking time and 1 h; any endpoint; not for cooks under 1 h",
            citation: Citation { source: &sources::FSIS2021, place: "Table 1, p. 26, option 3", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: HumidityOption { share_of_the_cook: 1.0, at_least: hours(0.0), endpoint: None, relative_humidity: Some(90.0), shortest_cook: hours(0.0) },
        row: Row {
            table: "cook/fsis-humidity",
            key: "option-4",
            printed: "Option 4, 90 % relative humidity or more for the whole cook: any endpoint",
            citation: Citation { source: &sources::FSIS2021, place: "Table 1, p. 26, option 4", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
];

/// Dwell times for a 5-log reduction of Salmonella in meat, FSIS 2021
pub static FSIS_MEAT_5_LOG: [Cited<Dwell5>; 31] = [
    Cited {
        value: Dwell5 { temperature: PrintedTemperature::Both(130.0, 54.4), time: seconds(5160.0) },
        row: Row {
            table: "cook/fsis-meat-5-log",
            key: "130F",
            printed: "130 °F: 86 min.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 6, p. 59, row 130", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell5 { temperature: PrintedTemperature::Both(131.0, 55.0), time: seconds(4140.0) },
        row: Row {
            table: "cook/fsis-meat-5-log",
            key: "131F",
            printed: "131 °F: 69 min.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 6, p. 59, row 131", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell5 { temperature: PrintedTemperature::Both(132.0, 55.6), time: seconds(3300.0) },
        row: Row {
            table: "cook/fsis-meat-5-log",
            key: "132F",
            printed: "132 °F: 55 min.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 6, p. 59, row 132", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell5 { temperature: PrintedTemperature::Both(133.0, 56.1), time: seconds(2640.0) },
        row: Row {
            table: "cook/fsis-meat-5-log",
            key: "133F",
            printed: "133 °F: 44 min.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 6, p. 59, row 133", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell5 { temperature: PrintedTemperature::Both(134.0, 56.7), time: seconds(2100.0) },
        row: Row {
            table: "cook/fsis-meat-5-log",
            key: "134F",
            printed: "134 °F: 35 min.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 6, p. 59, row 134", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell5 { temperature: PrintedTemperature::Both(135.0, 57.2), time: seconds(1680.0) },
        row: Row {
            table: "cook/fsis-meat-5-log",
            key: "135F",
            printed: "135 °F: 28 min.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 6, p. 59, row 135", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell5 { temperature: PrintedTemperature::Both(136.0, 57.8), time: seconds(1320.0) },
        row: Row {
            table: "cook/fsis-meat-5-log",
            key: "136F",
            printed: "136 °F: 22 min.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 6, p. 59, row 136", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell5 { temperature: PrintedTemperature::Both(137.0, 58.4), time: seconds(1080.0) },
        row: Row {
            table: "cook/fsis-meat-5-log",
            key: "137F",
            printed: "137 °F: 18 min.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 6, p. 59, row 137", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "58.4 °C is printed beside it; 137 °F is 58.33 °C.",
        },
    },
    Cited {
        value: Dwell5 { temperature: PrintedTemperature::Both(138.0, 58.9), time: seconds(840.0) },
        row: Row {
            table: "cook/fsis-meat-5-log",
            key: "138F",
            printed: "138 °F: 14 min.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 6, p. 59, row 138", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell5 { temperature: PrintedTemperature::Both(139.0, 59.5), time: seconds(660.0) },
        row: Row {
            table: "cook/fsis-meat-5-log",
            key: "139F",
            printed: "139 °F: 11 min.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 6, p. 59, row 139", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "59.5 °C is printed beside it; 139 °F is 59.44 °C.",
        },
    },
    Cited {
        value: Dwell5 { temperature: PrintedTemperature::Both(140.0, 60.0), time: seconds(540.0) },
        row: Row {
            table: "cook/fsis-meat-5-log",
            key: "140F",
            printed: "140 °F: 9 min.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 6, p. 59, row 140", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell5 { temperature: PrintedTemperature::Both(141.0, 60.6), time: seconds(420.0) },
        row: Row {
            table: "cook/fsis-meat-5-log",
            key: "141F",
            printed: "141 °F: 7 min.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 6, p. 59, row 141", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell5 { temperature: PrintedTemperature::Both(142.0, 61.1), time: seconds(360.0) },
        row: Row {
            table: "cook/fsis-meat-5-log",
            key: "142F",
            printed: "142 °F: 6 min.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 6, p. 59, row 142", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell5 { temperature: PrintedTemperature::Both(143.0, 61.7), time: seconds(300.0) },
        row: Row {
            table: "cook/fsis-meat-5-log",
            key: "143F",
            printed: "143 °F: 5 min.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 6, p. 59, row 143", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell5 { temperature: PrintedTemperature::Both(144.0, 62.2), time: seconds(240.0) },
        row: Row {
            table: "cook/fsis-meat-5-log",
            key: "144F",
            printed: "144 °F: 4 min.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 6, p. 59, row 144", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell5 { temperature: PrintedTemperature::Both(145.0, 62.8), time: seconds(180.0) },
        row: Row {
            table: "cook/fsis-meat-5-log",
            key: "145F",
            printed: "145 °F: 3 min.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 6, p. 59, row 145", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell5 { temperature: PrintedTemperature::Both(146.0, 63.3), time: seconds(130.0) },
        row: Row {
            table: "cook/fsis-meat-5-log",
            key: "146F",
            printed: "146 °F: 130 sec.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 6, p. 59, row 146", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell5 { temperature: PrintedTemperature::Both(147.0, 63.9), time: seconds(103.0) },
        row: Row {
            table: "cook/fsis-meat-5-log",
            key: "147F",
            printed: "147 °F: 103 sec.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 6, p. 59, row 147", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell5 { temperature: PrintedTemperature::Both(148.0, 64.4), time: seconds(82.0) },
        row: Row {
            table: "cook/fsis-meat-5-log",
            key: "148F",
            printed: "148 °F: 82 sec.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 6, p. 59, row 148", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell5 { temperature: PrintedTemperature::Both(149.0, 65.0), time: seconds(65.0) },
        row: Row {
            table: "cook/fsis-meat-5-log",
            key: "149F",
            printed: "149 °F: 65 sec.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 6, p. 59, row 149", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell5 { temperature: PrintedTemperature::Both(150.0, 65.6), time: seconds(52.0) },
        row: Row {
            table: "cook/fsis-meat-5-log",
            key: "150F",
            printed: "150 °F: 52 sec.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 6, p. 59, row 150", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell5 { temperature: PrintedTemperature::Both(151.0, 66.1), time: seconds(41.0) },
        row: Row {
            table: "cook/fsis-meat-5-log",
            key: "151F",
            printed: "151 °F: 41 sec.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 6, p. 59, row 151", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell5 { temperature: PrintedTemperature::Both(152.0, 66.7), time: seconds(33.0) },
        row: Row {
            table: "cook/fsis-meat-5-log",
            key: "152F",
            printed: "152 °F: 33 sec.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 6, p. 59, row 152", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell5 { temperature: PrintedTemperature::Both(153.0, 67.2), time: seconds(26.0) },
        row: Row {
            table: "cook/fsis-meat-5-log",
            key: "153F",
            printed: "153 °F: 26 sec.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 6, p. 59, row 153", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell5 { temperature: PrintedTemperature::Both(154.0, 67.8), time: seconds(21.0) },
        row: Row {
            table: "cook/fsis-meat-5-log",
            key: "154F",
            printed: "154 °F: 21 sec.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 6, p. 59, row 154", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell5 { temperature: PrintedTemperature::Both(155.0, 68.3), time: seconds(17.0) },
        row: Row {
            table: "cook/fsis-meat-5-log",
            key: "155F",
            printed: "155 °F: 17 sec.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 6, p. 59, row 155", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell5 { temperature: PrintedTemperature::Both(156.0, 68.9), time: seconds(14.0) },
        row: Row {
            table: "cook/fsis-meat-5-log",
            key: "156F",
            printed: "156 °F: 14 sec.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 6, p. 59, row 156", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell5 { temperature: PrintedTemperature::Both(157.0, 69.4), time: seconds(11.0) },
        row: Row {
            table: "cook/fsis-meat-5-log",
            key: "157F",
            printed: "157 °F: 11 sec.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 6, p. 59, row 157", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell5 { temperature: PrintedTemperature::Both(158.0, 70.0), time: seconds(0.0) },
        row: Row {
            table: "cook/fsis-meat-5-log",
            key: "158F",
            printed: "158 °F: 0 sec.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 6, p. 59, row 158", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell5 { temperature: PrintedTemperature::Both(159.0, 70.6), time: seconds(0.0) },
        row: Row {
            table: "cook/fsis-meat-5-log",
            key: "159F",
            printed: "159 °F: 0 sec.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 6, p. 59, row 159", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell5 { temperature: PrintedTemperature::Both(160.0, 71.1), time: seconds(0.0) },
        row: Row {
            table: "cook/fsis-meat-5-log",
            key: "160F",
            printed: "160 °F: 0 sec.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 6, p. 59, row 160", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
];

/// Dwell times for a 6.5- and a 7-log reduction of Salmonella in meat, FSIS 2021
pub static FSIS_MEAT_DWELL: [Cited<Dwell>; 31] = [
    Cited {
        value: Dwell { temperature: PrintedTemperature::Both(130.0, 54.4), for_6_5_log: seconds(6720.0), for_7_log: seconds(7260.0) },
        row: Row {
            table: "cook/fsis-meat-dwell",
            key: "130F",
            printed: "130 °F (54.4 °C): 6.5-log 112 min., 7-log 121 min.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 2, p. 35, row 130", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell { temperature: PrintedTemperature::Both(131.0, 55.0), for_6_5_log: seconds(5340.0), for_7_log: seconds(5820.0) },
        row: Row {
            table: "cook/fsis-meat-dwell",
            key: "131F",
            printed: "131 °F (55.0 °C): 6.5-log 89 min., 7-log 97 min.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 2, p. 35, row 131", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell { temperature: PrintedTemperature::Both(132.0, 55.6), for_6_5_log: seconds(4260.0), for_7_log: seconds(4620.0) },
        row: Row {
            table: "cook/fsis-meat-dwell",
            key: "132F",
            printed: "132 °F (55.6 °C): 6.5-log 71 min., 7-log 77 min.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 2, p. 35, row 132", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell { temperature: PrintedTemperature::Both(133.0, 56.1), for_6_5_log: seconds(3360.0), for_7_log: seconds(3720.0) },
        row: Row {
            table: "cook/fsis-meat-dwell",
            key: "133F",
            printed: "133 °F (56.1 °C): 6.5-log 56 min., 7-log 62 min.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 2, p. 35, row 133", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell { temperature: PrintedTemperature::Both(134.0, 56.7), for_6_5_log: seconds(2700.0), for_7_log: seconds(2820.0) },
        row: Row {
            table: "cook/fsis-meat-dwell",
            key: "134F",
            printed: "134 °F (56.7 °C): 6.5-log 45 min., 7-log 47 min.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 2, p. 35, row 134", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell { temperature: PrintedTemperature::Both(135.0, 57.2), for_6_5_log: seconds(2160.0), for_7_log: seconds(2220.0) },
        row: Row {
            table: "cook/fsis-meat-dwell",
            key: "135F",
            printed: "135 °F (57.2 °C): 6.5-log 36 min., 7-log 37 min.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 2, p. 35, row 135", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell { temperature: PrintedTemperature::Both(136.0, 57.8), for_6_5_log: seconds(1680.0), for_7_log: seconds(1920.0) },
        row: Row {
            table: "cook/fsis-meat-dwell",
            key: "136F",
            printed: "136 °F (57.8 °C): 6.5-log 28 min., 7-log 32 min.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 2, p. 35, row 136", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell { temperature: PrintedTemperature::Both(137.0, 58.4), for_6_5_log: seconds(1380.0), for_7_log: seconds(1440.0) },
        row: Row {
            table: "cook/fsis-meat-dwell",
            key: "137F",
            printed: "137 °F (58.4 °C): 6.5-log 23 min., 7-log 24 min.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 2, p. 35, row 137", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "Prints 58.4 °C where 137 °F is 58.3 °C.",
        },
    },
    Cited {
        value: Dwell { temperature: PrintedTemperature::Both(138.0, 58.9), for_6_5_log: seconds(1080.0), for_7_log: seconds(1140.0) },
        row: Row {
            table: "cook/fsis-meat-dwell",
            key: "138F",
            printed: "138 °F (58.9 °C): 6.5-log 18 min., 7-log 19 min.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 2, p. 35, row 138", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell { temperature: PrintedTemperature::Both(139.0, 59.5), for_6_5_log: seconds(900.0), for_7_log: seconds(900.0) },
        row: Row {
            table: "cook/fsis-meat-dwell",
            key: "139F",
            printed: "139 °F (59.5 °C): 6.5-log 15 min., 7-log 15 min.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 2, p. 35, row 139", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "Prints 59.5 °C where 139 °F is 59.4 °C.",
        },
    },
    Cited {
        value: Dwell { temperature: PrintedTemperature::Both(140.0, 60.0), for_6_5_log: seconds(720.0), for_7_log: seconds(720.0) },
        row: Row {
            table: "cook/fsis-meat-dwell",
            key: "140F",
            printed: "140 °F (60.0 °C): 6.5-log 12 min., 7-log 12 min.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 2, p. 35, row 140", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell { temperature: PrintedTemperature::Both(141.0, 60.6), for_6_5_log: seconds(540.0), for_7_log: seconds(600.0) },
        row: Row {
            table: "cook/fsis-meat-dwell",
            key: "141F",
            printed: "141 °F (60.6 °C): 6.5-log 9 min., 7-log 10 min.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 2, p. 35, row 141", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell { temperature: PrintedTemperature::Both(142.0, 61.1), for_6_5_log: seconds(480.0), for_7_log: seconds(480.0) },
        row: Row {
            table: "cook/fsis-meat-dwell",
            key: "142F",
            printed: "142 °F (61.1 °C): 6.5-log 8 min., 7-log 8 min.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 2, p. 35, row 142", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell { temperature: PrintedTemperature::Both(143.0, 61.7), for_6_5_log: seconds(360.0), for_7_log: seconds(360.0) },
        row: Row {
            table: "cook/fsis-meat-dwell",
            key: "143F",
            printed: "143 °F (61.7 °C): 6.5-log 6 min., 7-log 6 min.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 2, p. 35, row 143", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell { temperature: PrintedTemperature::Both(144.0, 62.2), for_6_5_log: seconds(300.0), for_7_log: seconds(300.0) },
        row: Row {
            table: "cook/fsis-meat-dwell",
            key: "144F",
            printed: "144 °F (62.2 °C): 6.5-log 5 min., 7-log 5 min.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 2, p. 35, row 144", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell { temperature: PrintedTemperature::Both(145.0, 62.8), for_6_5_log: seconds(240.0), for_7_log: seconds(240.0) },
        row: Row {
            table: "cook/fsis-meat-dwell",
            key: "145F",
            printed: "145 °F (62.8 °C): 6.5-log 4 min., 7-log 4 min.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 2, p. 35, row 145", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell { temperature: PrintedTemperature::Both(146.0, 63.3), for_6_5_log: seconds(169.0), for_7_log: seconds(182.0) },
        row: Row {
            table: "cook/fsis-meat-dwell",
            key: "146F",
            printed: "146 °F (63.3 °C): 6.5-log 169 sec., 7-log 182 sec.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 2, p. 35, row 146", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell { temperature: PrintedTemperature::Both(147.0, 63.9), for_6_5_log: seconds(134.0), for_7_log: seconds(144.0) },
        row: Row {
            table: "cook/fsis-meat-dwell",
            key: "147F",
            printed: "147 °F (63.9 °C): 6.5-log 134 sec., 7-log 144 sec.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 2, p. 35, row 147", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell { temperature: PrintedTemperature::Both(148.0, 64.4), for_6_5_log: seconds(107.0), for_7_log: seconds(115.0) },
        row: Row {
            table: "cook/fsis-meat-dwell",
            key: "148F",
            printed: "148 °F (64.4 °C): 6.5-log 107 sec., 7-log 115 sec.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 2, p. 35, row 148", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell { temperature: PrintedTemperature::Both(149.0, 65.0), for_6_5_log: seconds(85.0), for_7_log: seconds(91.0) },
        row: Row {
            table: "cook/fsis-meat-dwell",
            key: "149F",
            printed: "149 °F (65.0 °C): 6.5-log 85 sec., 7-log 91 sec.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 2, p. 35, row 149", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell { temperature: PrintedTemperature::Both(150.0, 65.6), for_6_5_log: seconds(67.0), for_7_log: seconds(72.0) },
        row: Row {
            table: "cook/fsis-meat-dwell",
            key: "150F",
            printed: "150 °F (65.6 °C): 6.5-log 67 sec., 7-log 72 sec.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 2, p. 35, row 150", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell { temperature: PrintedTemperature::Both(151.0, 66.1), for_6_5_log: seconds(54.0), for_7_log: seconds(58.0) },
        row: Row {
            table: "cook/fsis-meat-dwell",
            key: "151F",
            printed: "151 °F (66.1 °C): 6.5-log 54 sec., 7-log 58 sec.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 2, p. 35, row 151", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell { temperature: PrintedTemperature::Both(152.0, 66.7), for_6_5_log: seconds(43.0), for_7_log: seconds(46.0) },
        row: Row {
            table: "cook/fsis-meat-dwell",
            key: "152F",
            printed: "152 °F (66.7 °C): 6.5-log 43 sec., 7-log 46 sec.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 2, p. 35, row 152", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell { temperature: PrintedTemperature::Both(153.0, 67.2), for_6_5_log: seconds(34.0), for_7_log: seconds(37.0) },
        row: Row {
            table: "cook/fsis-meat-dwell",
            key: "153F",
            printed: "153 °F (67.2 °C): 6.5-log 34 sec., 7-log 37 sec.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 2, p. 35, row 153", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell { temperature: PrintedTemperature::Both(154.0, 67.8), for_6_5_log: seconds(27.0), for_7_log: seconds(29.0) },
        row: Row {
            table: "cook/fsis-meat-dwell",
            key: "154F",
            printed: "154 °F (67.8 °C): 6.5-log 27 sec., 7-log 29 sec.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 2, p. 35, row 154", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell { temperature: PrintedTemperature::Both(155.0, 68.3), for_6_5_log: seconds(22.0), for_7_log: seconds(23.0) },
        row: Row {
            table: "cook/fsis-meat-dwell",
            key: "155F",
            printed: "155 °F (68.3 °C): 6.5-log 22 sec., 7-log 23 sec.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 2, p. 35, row 155", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell { temperature: PrintedTemperature::Both(156.0, 68.9), for_6_5_log: seconds(17.0), for_7_log: seconds(19.0) },
        row: Row {
            table: "cook/fsis-meat-dwell",
            key: "156F",
            printed: "156 °F (68.9 °C): 6.5-log 17 sec., 7-log 19 sec.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 2, p. 35, row 156", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell { temperature: PrintedTemperature::Both(157.0, 69.4), for_6_5_log: seconds(14.0), for_7_log: seconds(15.0) },
        row: Row {
            table: "cook/fsis-meat-dwell",
            key: "157F",
            printed: "157 °F (69.4 °C): 6.5-log 14 sec., 7-log 15 sec.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 2, p. 35, row 157", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Dwell { temperature: PrintedTemperature::Both(158.0, 70.0), for_6_5_log: seconds(0.0), for_7_log: seconds(0.0) },
        row: Row {
            table: "cook/fsis-meat-dwell",
            key: "158F",
            printed: "158 °F (70.0 °C): 6.5-log 0 sec., 7-log 0 sec.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 2, p. 35, row 158", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "Printed as 0 seconds: reached, it is enough. Not a lethality of zero time.",
        },
    },
    Cited {
        value: Dwell { temperature: PrintedTemperature::Both(159.0, 70.6), for_6_5_log: seconds(0.0), for_7_log: seconds(0.0) },
        row: Row {
            table: "cook/fsis-meat-dwell",
            key: "159F",
            printed: "159 °F (70.6 °C): 6.5-log 0 sec., 7-log 0 sec.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 2, p. 35, row 159", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "Printed as 0 seconds: reached, it is enough. Not a lethality of zero time.",
        },
    },
    Cited {
        value: Dwell { temperature: PrintedTemperature::Both(160.0, 71.1), for_6_5_log: seconds(0.0), for_7_log: seconds(0.0) },
        row: Row {
            table: "cook/fsis-meat-dwell",
            key: "160F",
            printed: "160 °F (71.1 °C): 6.5-log 0 sec., 7-log 0 sec.",
            citation: Citation { source: &sources::FSIS2021, place: "Table 2, p. 35, row 160", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "Printed as 0 seconds: reached, it is enough. Not a lethality of zero time.",
        },
    },
];

/// Other parameters of the FSIS cooking guideline, 2021
pub static FSIS_COME_UP: Cited<ComeUpLimit> = Cited {
        value: ComeUpLimit { low_fahrenheit: 50.0, high_fahrenheit: 130.0, most: seconds(21600.0) },
        row: Row {
            table: "cook/fsis-parameters",
            key: "come-up-time-max",
            printed: "Total time the product is between 50 and 130 F while heating",
            citation: Citation { source: &sources::FSIS2021, place: "p. 24, Come-Up-Time Option", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    };

/// Other parameters of the FSIS cooking guideline, 2021
pub static FSIS_LARGE_PIECE: Cited<LargePiece> = Cited {
        value: LargePiece { mass: pounds(10.0), oven: PrintedTemperature::Both(250.0, 121.0) },
        row: Row {
            table: "cook/fsis-parameters",
            key: "humidity-exempt-weight",
            printed: "Pieces this heavy in an oven this hot need no humidity step",
            citation: Citation { source: &sources::FSIS2021, place: "p. 31", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    };

/// Dwell times for a 7-log reduction of Salmonella in chicken and turkey by fat, FSIS 2021: chicken.
pub static FSIS_POULTRY_DWELL_CHICKEN: [Cited<PoultryDwell>; 30] = [
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(136.0, 57.8), seconds_by_fat: [3798.0, 3870.0, 3942.0, 4020.0, 4104.0, 4194.0, 4284.0, 4380.0, 4488.0, 4602.0, 4734.0, 4884.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "chicken-136F",
            printed: "chicken, 136 °F: 63.3 min, 64.5 min, 65.7 min, 67 min, 68.4 min, 69.9 min, 71.4 min, 73 min, 74.8 min, 76.7 min, 78.9 min, 81.4 min for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 3, p. 37, row 136", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(137.0, 58.3), seconds_by_fat: [3006.0, 3060.0, 3126.0, 3192.0, 3258.0, 3330.0, 3408.0, 3492.0, 3582.0, 3684.0, 3798.0, 3930.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "chicken-137F",
            printed: "chicken, 137 °F: 50.1 min, 51 min, 52.1 min, 53.2 min, 54.3 min, 55.5 min, 56.8 min, 58.2 min, 59.7 min, 61.4 min, 63.3 min, 65.5 min for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 3, p. 37, row 137", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(138.0, 58.9), seconds_by_fat: [2382.0, 2430.0, 2478.0, 2532.0, 2592.0, 2652.0, 2718.0, 2784.0, 2862.0, 2952.0, 3054.0, 3174.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "chicken-138F",
            printed: "chicken, 138 °F: 39.7 min, 40.5 min, 41.3 min, 42.2 min, 43.2 min, 44.2 min, 45.3 min, 46.4 min, 47.7 min, 49.2 min, 50.9 min, 52.9 min for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 3, p. 37, row 138", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(139.0, 59.4), seconds_by_fat: [1896.0, 1932.0, 1974.0, 2016.0, 2064.0, 2112.0, 2172.0, 2232.0, 2298.0, 2376.0, 2466.0, 2580.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "chicken-139F",
            printed: "chicken, 139 °F: 31.6 min, 32.2 min, 32.9 min, 33.6 min, 34.4 min, 35.2 min, 36.2 min, 37.2 min, 38.3 min, 39.6 min, 41.1 min, 43 min for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 3, p. 37, row 139", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(140.0, 60.0), seconds_by_fat: [1512.0, 1542.0, 1572.0, 1608.0, 1650.0, 1692.0, 1740.0, 1788.0, 1848.0, 1920.0, 2004.0, 2100.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "chicken-140F",
            printed: "chicken, 140 °F: 25.2 min, 25.7 min, 26.2 min, 26.8 min, 27.5 min, 28.2 min, 29 min, 29.8 min, 30.8 min, 32 min, 33.4 min, 35 min for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 3, p. 37, row 140", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(141.0, 60.6), seconds_by_fat: [1206.0, 1230.0, 1260.0, 1290.0, 1320.0, 1356.0, 1392.0, 1440.0, 1494.0, 1554.0, 1626.0, 1722.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "chicken-141F",
            printed: "chicken, 141 °F: 20.1 min, 20.5 min, 21 min, 21.5 min, 22 min, 22.6 min, 23.2 min, 24 min, 24.9 min, 25.9 min, 27.1 min, 28.7 min for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 3, p. 37, row 141", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(142.0, 61.1), seconds_by_fat: [966.0, 984.0, 1008.0, 1032.0, 1056.0, 1086.0, 1122.0, 1164.0, 1206.0, 1260.0, 1326.0, 1410.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "chicken-142F",
            printed: "chicken, 142 °F: 16.1 min, 16.4 min, 16.8 min, 17.2 min, 17.6 min, 18.1 min, 18.7 min, 19.4 min, 20.1 min, 21 min, 22.1 min, 23.5 min for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 3, p. 37, row 142", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(143.0, 61.7), seconds_by_fat: [780.0, 792.0, 810.0, 828.0, 852.0, 876.0, 906.0, 936.0, 978.0, 1026.0, 1086.0, 1158.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "chicken-143F",
            printed: "chicken, 143 °F: 13 min, 13.2 min, 13.5 min, 13.8 min, 14.2 min, 14.6 min, 15.1 min, 15.6 min, 16.3 min, 17.1 min, 18.1 min, 19.3 min for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 3, p. 37, row 143", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(144.0, 62.2), seconds_by_fat: [624.0, 636.0, 648.0, 666.0, 684.0, 708.0, 732.0, 756.0, 792.0, 834.0, 888.0, 954.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "chicken-144F",
            printed: "chicken, 144 °F: 10.4 min, 10.6 min, 10.8 min, 11.1 min, 11.4 min, 11.8 min, 12.2 min, 12.6 min, 13.2 min, 13.9 min, 14.8 min, 15.9 min for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 3, p. 37, row 144", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(145.0, 62.8), seconds_by_fat: [504.0, 516.0, 522.0, 534.0, 552.0, 570.0, 588.0, 612.0, 642.0, 678.0, 726.0, 780.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "chicken-145F",
            printed: "chicken, 145 °F: 8.4 min, 8.6 min, 8.7 min, 8.9 min, 9.2 min, 9.5 min, 9.8 min, 10.2 min, 10.7 min, 11.3 min, 12.1 min, 13 min for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 3, p. 37, row 145", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(146.0, 63.3), seconds_by_fat: [408.0, 414.0, 420.0, 432.0, 444.0, 456.0, 474.0, 492.0, 516.0, 546.0, 588.0, 636.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "chicken-146F",
            printed: "chicken, 146 °F: 6.8 min, 6.9 min, 7 min, 7.2 min, 7.4 min, 7.6 min, 7.9 min, 8.2 min, 8.6 min, 9.1 min, 9.8 min, 10.6 min for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 3, p. 37, row 146", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(147.0, 63.9), seconds_by_fat: [330.0, 330.0, 336.0, 342.0, 354.0, 366.0, 378.0, 396.0, 414.0, 444.0, 474.0, 516.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "chicken-147F",
            printed: "chicken, 147 °F: 5.5 min, 5.5 min, 5.6 min, 5.7 min, 5.9 min, 6.1 min, 6.3 min, 6.6 min, 6.9 min, 7.4 min, 7.9 min, 8.6 min for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 3, p. 37, row 147", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(148.0, 64.4), seconds_by_fat: [264.0, 264.0, 270.0, 270.0, 282.0, 288.0, 300.0, 312.0, 330.0, 348.0, 378.0, 408.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "chicken-148F",
            printed: "chicken, 148 °F: 4.4 min, 4.4 min, 4.5 min, 4.5 min, 4.7 min, 4.8 min, 5 min, 5.2 min, 5.5 min, 5.8 min, 6.3 min, 6.8 min for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 3, p. 37, row 148", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(149.0, 65.0), seconds_by_fat: [210.0, 210.0, 210.0, 216.0, 216.0, 228.0, 234.0, 246.0, 258.0, 276.0, 294.0, 324.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "chicken-149F",
            printed: "chicken, 149 °F: 3.5 min, 3.5 min, 3.5 min, 3.6 min, 3.6 min, 3.8 min, 3.9 min, 4.1 min, 4.3 min, 4.6 min, 4.9 min, 5.4 min for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 3, p. 37, row 149", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(150.0, 65.6), seconds_by_fat: [162.0, 162.0, 162.0, 162.0, 168.0, 174.0, 180.0, 186.0, 198.0, 210.0, 228.0, 252.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "chicken-150F",
            printed: "chicken, 150 °F: 2.7 min, 2.7 min, 2.7 min, 2.7 min, 2.8 min, 2.9 min, 3 min, 3.1 min, 3.3 min, 3.5 min, 3.8 min, 4.2 min for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 3, p. 37, row 150", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(151.0, 66.1), seconds_by_fat: [126.0, 120.0, 120.0, 126.0, 126.0, 126.0, 132.0, 138.0, 150.0, 156.0, 174.0, 186.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "chicken-151F",
            printed: "chicken, 151 °F: 2.1 min, 2 min, 2 min, 2.1 min, 2.1 min, 2.1 min, 2.2 min, 2.3 min, 2.5 min, 2.6 min, 2.9 min, 3.1 min for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 3, p. 37, row 151", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(152.0, 66.7), seconds_by_fat: [90.0, 90.0, 90.0, 96.0, 96.0, 96.0, 102.0, 102.0, 108.0, 114.0, 126.0, 138.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "chicken-152F",
            printed: "chicken, 152 °F: 1.5 min, 1.5 min, 1.5 min, 1.6 min, 1.6 min, 1.6 min, 1.7 min, 1.7 min, 1.8 min, 1.9 min, 2.1 min, 2.3 min for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 3, p. 37, row 152", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(153.0, 67.2), seconds_by_fat: [72.0, 72.0, 72.0, 72.0, 78.0, 78.0, 78.0, 78.0, 84.0, 84.0, 84.0, 96.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "chicken-153F",
            printed: "chicken, 153 °F: 1.2 min, 1.2 min, 1.2 min, 1.2 min, 1.3 min, 1.3 min, 1.3 min, 1.3 min, 1.4 min, 1.4 min, 1.4 min, 1.6 min for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 3, p. 37, row 153", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(154.0, 67.8), seconds_by_fat: [55.9, 56.9, 58.0, 59.1, 60.0, 60.0, 60.0, 66.0, 66.0, 66.0, 66.0, 66.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "chicken-154F",
            printed: "chicken, 154 °F: 55.9 sec, 56.9 sec, 58 sec, 59.1 sec, 1 min, 1 min, 1 min, 1.1 min, 1.1 min, 1.1 min, 1.1 min, 1.1 min for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 3, p. 37, row 154", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(155.0, 68.3), seconds_by_fat: [44.2, 45.0, 45.9, 46.8, 47.7, 48.6, 49.5, 50.4, 51.4, 52.4, 53.4, 54.4] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "chicken-155F",
            printed: "chicken, 155 °F: 44.2 sec, 45 sec, 45.9 sec, 46.8 sec, 47.7 sec, 48.6 sec, 49.5 sec, 50.4 sec, 51.4 sec, 52.4 sec, 53.4 sec, 54.4 sec for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 3, p. 37, row 155", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(156.0, 68.9), seconds_by_fat: [35.0, 35.6, 36.3, 37.0, 37.7, 38.4, 39.2, 39.9, 40.7, 41.4, 42.2, 43.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "chicken-156F",
            printed: "chicken, 156 °F: 35 sec, 35.6 sec, 36.3 sec, 37 sec, 37.7 sec, 38.4 sec, 39.2 sec, 39.9 sec, 40.7 sec, 41.4 sec, 42.2 sec, 43 sec for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 3, p. 37, row 156", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(157.0, 69.4), seconds_by_fat: [27.7, 28.2, 28.7, 29.3, 29.8, 30.4, 31.0, 31.6, 32.2, 32.8, 33.4, 34.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "chicken-157F",
            printed: "chicken, 157 °F: 27.7 sec, 28.2 sec, 28.7 sec, 29.3 sec, 29.8 sec, 30.4 sec, 31 sec, 31.6 sec, 32.2 sec, 32.8 sec, 33.4 sec, 34 sec for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 3, p. 37, row 157", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(158.0, 70.0), seconds_by_fat: [21.9, 22.3, 22.7, 23.2, 23.6, 24.0, 24.5, 25.0, 25.4, 25.9, 26.4, 26.9] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "chicken-158F",
            printed: "chicken, 158 °F: 21.9 sec, 22.3 sec, 22.7 sec, 23.2 sec, 23.6 sec, 24 sec, 24.5 sec, 25 sec, 25.4 sec, 25.9 sec, 26.4 sec, 26.9 sec for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 3, p. 37, row 158", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(159.0, 70.6), seconds_by_fat: [17.3, 17.6, 18.0, 18.3, 18.7, 19.0, 19.4, 19.8, 20.1, 20.5, 20.9, 21.3] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "chicken-159F",
            printed: "chicken, 159 °F: 17.3 sec, 17.6 sec, 18 sec, 18.3 sec, 18.7 sec, 19 sec, 19.4 sec, 19.8 sec, 20.1 sec, 20.5 sec, 20.9 sec, 21.3 sec for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 3, p. 37, row 159", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(160.0, 71.1), seconds_by_fat: [13.7, 14.0, 14.2, 14.5, 14.8, 15.0, 15.3, 15.6, 15.9, 16.2, 16.5, 16.9] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "chicken-160F",
            printed: "chicken, 160 °F: 13.7 sec, 14 sec, 14.2 sec, 14.5 sec, 14.8 sec, 15 sec, 15.3 sec, 15.6 sec, 15.9 sec, 16.2 sec, 16.5 sec, 16.9 sec for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 3, p. 37, row 160", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(161.0, 71.7), seconds_by_fat: [10.8, 11.0, 11.2, 11.5, 11.7, 11.9, 12.1, 12.4, 12.6, 12.8, 13.1, 13.3] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "chicken-161F",
            printed: "chicken, 161 °F: 10.8 sec, 11 sec, 11.2 sec, 11.5 sec, 11.7 sec, 11.9 sec, 12.1 sec, 12.4 sec, 12.6 sec, 12.8 sec, 13.1 sec, 13.3 sec for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 3, p. 37, row 161", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(162.0, 72.2), seconds_by_fat: [0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 9.6, 9.8, 10.0, 10.2, 10.3, 10.5] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "chicken-162F",
            printed: "chicken, 162 °F: 0 sec., 0 sec., 0 sec., 0 sec., 0 sec., 0 sec., 9.6 sec, 9.8 sec, 10 sec, 10.2 sec, 10.3 sec, 10.5 sec for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 3, p. 37, row 162", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(163.0, 72.8), seconds_by_fat: [0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "chicken-163F",
            printed: "chicken, 163 °F: 0 sec., 0 sec., 0 sec., 0 sec., 0 sec., 0 sec., 0 sec., 0 sec., 0 sec., 0 sec., 0 sec., 0 sec. for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 3, p. 37, row 163", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(164.0, 73.3), seconds_by_fat: [0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "chicken-164F",
            printed: "chicken, 164 °F: 0 sec., 0 sec., 0 sec., 0 sec., 0 sec., 0 sec., 0 sec., 0 sec., 0 sec., 0 sec., 0 sec., 0 sec. for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 3, p. 37, row 164", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(165.0, 73.9), seconds_by_fat: [0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "chicken-165F",
            printed: "chicken, 165 °F: 0 sec., 0 sec., 0 sec., 0 sec., 0 sec., 0 sec., 0 sec., 0 sec., 0 sec., 0 sec., 0 sec., 0 sec. for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 3, p. 37, row 165", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
];

/// Dwell times for a 7-log reduction of Salmonella in chicken and turkey by fat, FSIS 2021: turkey.
pub static FSIS_POULTRY_DWELL_TURKEY: [Cited<PoultryDwell>; 30] = [
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(136.0, 57.8), seconds_by_fat: [3840.0, 3858.0, 3876.0, 3894.0, 3918.0, 3948.0, 3978.0, 4014.0, 4056.0, 4104.0, 4170.0, 4248.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "turkey-136F",
            printed: "turkey, 136 °F: 64 min, 64.3 min, 64.6 min, 64.9 min, 65.3 min, 65.8 min, 66.3 min, 66.9 min, 67.6 min, 68.4 min, 69.5 min, 70.8 min for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 4, p. 38, row 136", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(137.0, 58.3), seconds_by_fat: [3114.0, 3132.0, 3144.0, 3168.0, 3192.0, 3216.0, 3246.0, 3282.0, 3318.0, 3372.0, 3432.0, 3510.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "turkey-137F",
            printed: "turkey, 137 °F: 51.9 min, 52.2 min, 52.4 min, 52.8 min, 53.2 min, 53.6 min, 54.1 min, 54.7 min, 55.3 min, 56.2 min, 57.2 min, 58.5 min for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 4, p. 38, row 137", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(138.0, 58.9), seconds_by_fat: [2532.0, 2550.0, 2562.0, 2580.0, 2604.0, 2628.0, 2652.0, 2688.0, 2724.0, 2772.0, 2832.0, 2910.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "turkey-138F",
            printed: "turkey, 138 °F: 42.2 min, 42.5 min, 42.7 min, 43 min, 43.4 min, 43.8 min, 44.2 min, 44.8 min, 45.4 min, 46.2 min, 47.2 min, 48.5 min for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 4, p. 38, row 138", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(139.0, 59.4), seconds_by_fat: [2064.0, 2076.0, 2094.0, 2106.0, 2124.0, 2148.0, 2172.0, 2202.0, 2238.0, 2286.0, 2346.0, 2424.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "turkey-139F",
            printed: "turkey, 139 °F: 34.4 min, 34.6 min, 34.9 min, 35.1 min, 35.4 min, 35.8 min, 36.2 min, 36.7 min, 37.3 min, 38.1 min, 39.1 min, 40.4 min for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 4, p. 38, row 139", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(140.0, 60.0), seconds_by_fat: [1686.0, 1698.0, 1710.0, 1722.0, 1740.0, 1758.0, 1782.0, 1812.0, 1848.0, 1890.0, 1950.0, 2022.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "turkey-140F",
            printed: "turkey, 140 °F: 28.1 min, 28.3 min, 28.5 min, 28.7 min, 29 min, 29.3 min, 29.7 min, 30.2 min, 30.8 min, 31.5 min, 32.5 min, 33.7 min for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 4, p. 38, row 140", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(141.0, 60.6), seconds_by_fat: [1380.0, 1392.0, 1398.0, 1410.0, 1428.0, 1446.0, 1464.0, 1494.0, 1530.0, 1572.0, 1626.0, 1692.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "turkey-141F",
            printed: "turkey, 141 °F: 23 min, 23.2 min, 23.3 min, 23.5 min, 23.8 min, 24.1 min, 24.4 min, 24.9 min, 25.5 min, 26.2 min, 27.1 min, 28.2 min for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 4, p. 38, row 141", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(142.0, 61.1), seconds_by_fat: [1134.0, 1140.0, 1146.0, 1158.0, 1170.0, 1188.0, 1206.0, 1230.0, 1266.0, 1302.0, 1356.0, 1422.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "turkey-142F",
            printed: "turkey, 142 °F: 18.9 min, 19 min, 19.1 min, 19.3 min, 19.5 min, 19.8 min, 20.1 min, 20.5 min, 21.1 min, 21.7 min, 22.6 min, 23.7 min for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 4, p. 38, row 142", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(143.0, 61.7), seconds_by_fat: [930.0, 936.0, 942.0, 954.0, 966.0, 978.0, 996.0, 1020.0, 1044.0, 1080.0, 1128.0, 1188.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "turkey-143F",
            printed: "turkey, 143 °F: 15.5 min, 15.6 min, 15.7 min, 15.9 min, 16.1 min, 16.3 min, 16.6 min, 17 min, 17.4 min, 18 min, 18.8 min, 19.8 min for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 4, p. 38, row 143", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(144.0, 62.2), seconds_by_fat: [768.0, 768.0, 774.0, 780.0, 792.0, 804.0, 822.0, 840.0, 864.0, 900.0, 942.0, 996.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "turkey-144F",
            printed: "turkey, 144 °F: 12.8 min, 12.8 min, 12.9 min, 13 min, 13.2 min, 13.4 min, 13.7 min, 14 min, 14.4 min, 15 min, 15.7 min, 16.6 min for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 4, p. 38, row 144", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(145.0, 62.8), seconds_by_fat: [630.0, 636.0, 636.0, 642.0, 648.0, 660.0, 678.0, 690.0, 714.0, 744.0, 780.0, 828.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "turkey-145F",
            printed: "turkey, 145 °F: 10.5 min, 10.6 min, 10.6 min, 10.7 min, 10.8 min, 11 min, 11.3 min, 11.5 min, 11.9 min, 12.4 min, 13 min, 13.8 min for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 4, p. 38, row 145", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(146.0, 63.3), seconds_by_fat: [522.0, 522.0, 522.0, 528.0, 534.0, 540.0, 552.0, 570.0, 588.0, 612.0, 648.0, 690.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "turkey-146F",
            printed: "turkey, 146 °F: 8.7 min, 8.7 min, 8.7 min, 8.8 min, 8.9 min, 9 min, 9.2 min, 9.5 min, 9.8 min, 10.2 min, 10.8 min, 11.5 min for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 4, p. 38, row 146", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(147.0, 63.9), seconds_by_fat: [426.0, 426.0, 426.0, 432.0, 438.0, 444.0, 450.0, 462.0, 480.0, 504.0, 528.0, 564.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "turkey-147F",
            printed: "turkey, 147 °F: 7.1 min, 7.1 min, 7.1 min, 7.2 min, 7.3 min, 7.4 min, 7.5 min, 7.7 min, 8 min, 8.4 min, 8.8 min, 9.4 min for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 4, p. 38, row 147", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(148.0, 64.4), seconds_by_fat: [348.0, 348.0, 348.0, 348.0, 354.0, 360.0, 366.0, 378.0, 390.0, 408.0, 432.0, 462.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "turkey-148F",
            printed: "turkey, 148 °F: 5.8 min, 5.8 min, 5.8 min, 5.8 min, 5.9 min, 6 min, 6.1 min, 6.3 min, 6.5 min, 6.8 min, 7.2 min, 7.7 min for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 4, p. 38, row 148", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(149.0, 65.0), seconds_by_fat: [282.0, 282.0, 282.0, 282.0, 282.0, 288.0, 294.0, 300.0, 312.0, 324.0, 348.0, 372.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "turkey-149F",
            printed: "turkey, 149 °F: 4.7 min, 4.7 min, 4.7 min, 4.7 min, 4.7 min, 4.8 min, 4.9 min, 5 min, 5.2 min, 5.4 min, 5.8 min, 6.2 min for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 4, p. 38, row 149", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(150.0, 65.6), seconds_by_fat: [228.0, 222.0, 222.0, 222.0, 222.0, 228.0, 234.0, 240.0, 246.0, 258.0, 270.0, 294.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "turkey-150F",
            printed: "turkey, 150 °F: 3.8 min, 3.7 min, 3.7 min, 3.7 min, 3.7 min, 3.8 min, 3.9 min, 4 min, 4.1 min, 4.3 min, 4.5 min, 4.9 min for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 4, p. 38, row 150", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(151.0, 66.1), seconds_by_fat: [180.0, 174.0, 174.0, 174.0, 174.0, 174.0, 180.0, 186.0, 192.0, 198.0, 210.0, 228.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "turkey-151F",
            printed: "turkey, 151 °F: 3 min, 2.9 min, 2.9 min, 2.9 min, 2.9 min, 2.9 min, 3 min, 3.1 min, 3.2 min, 3.3 min, 3.5 min, 3.8 min for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 4, p. 38, row 151", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(152.0, 66.7), seconds_by_fat: [138.0, 138.0, 138.0, 138.0, 138.0, 138.0, 138.0, 138.0, 144.0, 150.0, 162.0, 168.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "turkey-152F",
            printed: "turkey, 152 °F: 2.3 min, 2.3 min, 2.3 min, 2.3 min, 2.3 min, 2.3 min, 2.3 min, 2.3 min, 2.4 min, 2.5 min, 2.7 min, 2.8 min for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 4, p. 38, row 152", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(153.0, 67.2), seconds_by_fat: [108.0, 108.0, 114.0, 114.0, 114.0, 114.0, 114.0, 114.0, 114.0, 114.0, 114.0, 126.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "turkey-153F",
            printed: "turkey, 153 °F: 1.8 min, 1.8 min, 1.9 min, 1.9 min, 1.9 min, 1.9 min, 1.9 min, 1.9 min, 1.9 min, 1.9 min, 1.9 min, 2.1 min for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 4, p. 38, row 153", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(154.0, 67.8), seconds_by_fat: [90.0, 90.0, 90.0, 90.0, 90.0, 90.0, 90.0, 90.0, 90.0, 96.0, 96.0, 96.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "turkey-154F",
            printed: "turkey, 154 °F: 1.5 min, 1.5 min, 1.5 min, 1.5 min, 1.5 min, 1.5 min, 1.5 min, 1.5 min, 1.5 min, 1.6 min, 1.6 min, 1.6 min for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 4, p. 38, row 154", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(155.0, 68.3), seconds_by_fat: [72.0, 72.0, 72.0, 72.0, 72.0, 72.0, 72.0, 78.0, 78.0, 78.0, 78.0, 78.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "turkey-155F",
            printed: "turkey, 155 °F: 1.2 min, 1.2 min, 1.2 min, 1.2 min, 1.2 min, 1.2 min, 1.2 min, 1.3 min, 1.3 min, 1.3 min, 1.3 min, 1.3 min for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 4, p. 38, row 155", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(156.0, 68.9), seconds_by_fat: [59.0, 59.3, 59.5, 59.8, 60.0, 60.0, 60.0, 60.0, 60.0, 60.0, 60.0, 60.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "turkey-156F",
            printed: "turkey, 156 °F: 59 sec, 59.3 sec, 59.5 sec, 59.8 sec, 1 min, 1 min, 1 min, 1 min, 1 min, 1 min, 1 min, 1 min for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 4, p. 38, row 156", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(157.0, 69.4), seconds_by_fat: [47.9, 48.1, 48.3, 48.5, 48.8, 49.0, 49.2, 49.5, 49.7, 49.9, 50.2, 50.4] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "turkey-157F",
            printed: "turkey, 157 °F: 47.9 sec, 48.1 sec, 48.3 sec, 48.5 sec, 48.8 sec, 49 sec, 49.2 sec, 49.5 sec, 49.7 sec, 49.9 sec, 50.2 sec, 50.4 sec for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 4, p. 38, row 157", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(158.0, 70.0), seconds_by_fat: [38.8, 39.0, 39.2, 39.4, 39.6, 39.8, 40.0, 40.1, 40.3, 40.5, 40.7, 40.9] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "turkey-158F",
            printed: "turkey, 158 °F: 38.8 sec, 39 sec, 39.2 sec, 39.4 sec, 39.6 sec, 39.8 sec, 40 sec, 40.1 sec, 40.3 sec, 40.5 sec, 40.7 sec, 40.9 sec for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 4, p. 38, row 158", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(159.0, 70.6), seconds_by_fat: [31.5, 31.7, 31.8, 32.0, 32.1, 32.3, 32.4, 32.6, 32.7, 32.9, 33.0, 33.2] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "turkey-159F",
            printed: "turkey, 159 °F: 31.5 sec, 31.7 sec, 31.8 sec, 32 sec, 32.1 sec, 32.3 sec, 32.4 sec, 32.6 sec, 32.7 sec, 32.9 sec, 33 sec, 33.2 sec for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 4, p. 38, row 159", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(160.0, 71.1), seconds_by_fat: [25.6, 25.7, 25.8, 26.0, 26.1, 26.2, 26.3, 26.4, 26.6, 26.7, 26.8, 26.9] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "turkey-160F",
            printed: "turkey, 160 °F: 25.6 sec, 25.7 sec, 25.8 sec, 26 sec, 26.1 sec, 26.2 sec, 26.3 sec, 26.4 sec, 26.6 sec, 26.7 sec, 26.8 sec, 26.9 sec for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 4, p. 38, row 160", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(161.0, 71.7), seconds_by_fat: [20.8, 20.9, 21.0, 21.1, 21.2, 21.3, 21.4, 21.5, 21.6, 21.7, 21.8, 21.9] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "turkey-161F",
            printed: "turkey, 161 °F: 20.8 sec, 20.9 sec, 21 sec, 21.1 sec, 21.2 sec, 21.3 sec, 21.4 sec, 21.5 sec, 21.6 sec, 21.7 sec, 21.8 sec, 21.9 sec for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 4, p. 38, row 161", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(162.0, 72.2), seconds_by_fat: [16.9, 16.9, 17.0, 17.1, 17.2, 17.3, 17.3, 17.4, 17.5, 17.6, 17.7, 17.7] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "turkey-162F",
            printed: "turkey, 162 °F: 16.9 sec, 16.9 sec, 17 sec, 17.1 sec, 17.2 sec, 17.3 sec, 17.3 sec, 17.4 sec, 17.5 sec, 17.6 sec, 17.7 sec, 17.7 sec for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 4, p. 38, row 162", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(163.0, 72.8), seconds_by_fat: [13.7, 13.7, 13.8, 13.9, 13.9, 14.0, 14.1, 14.1, 14.2, 14.3, 14.3, 14.4] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "turkey-163F",
            printed: "turkey, 163 °F: 13.7 sec, 13.7 sec, 13.8 sec, 13.9 sec, 13.9 sec, 14 sec, 14.1 sec, 14.1 sec, 14.2 sec, 14.3 sec, 14.3 sec, 14.4 sec for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 4, p. 38, row 163", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(164.0, 73.3), seconds_by_fat: [11.1, 11.2, 11.2, 11.3, 11.3, 11.4, 11.4, 11.5, 11.5, 11.6, 11.6, 11.7] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "turkey-164F",
            printed: "turkey, 164 °F: 11.1 sec, 11.2 sec, 11.2 sec, 11.3 sec, 11.3 sec, 11.4 sec, 11.4 sec, 11.5 sec, 11.5 sec, 11.6 sec, 11.6 sec, 11.7 sec for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 4, p. 38, row 164", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
    Cited {
        value: PoultryDwell { temperature: PrintedTemperature::Both(165.0, 73.9), seconds_by_fat: [0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0] },
        row: Row {
            table: "cook/fsis-poultry-dwell",
            key: "turkey-165F",
            printed: "turkey, 165 °F: 0 sec., 0 sec., 0 sec., 0 sec., 0 sec., 0 sec., 0 sec., 0 sec., 0 sec., 0 sec., 0 sec., 0 sec. for 1 to 12 % fat",
            citation: Citation { source: &sources::FSIS2021, place: "Table 4, p. 38, row 165", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "",
        },
    },
];

/// Single inside temperatures for cooked poultry, FSIS 2021
pub static FSIS_POULTRY_SINGLE: [Cited<Endpoint>; 1] = [
    Cited {
        value: Endpoint { authority: Authority::UsFsis, food: Food::Poultry, temperature: PrintedTemperature::Fahrenheit(160.0), rest: seconds(0.0) },
        row: Row {
            table: "cook/fsis-poultry-single",
            key: "cooked-poultry",
            printed: "160 °F, instantaneous",
            citation: Citation { source: &sources::FSIS2021, place: "p. 39, key question, item 1", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2021, 12, 14)), None),
            note: "An older option that the guideline still lists; it prefers its tables of times.",
        },
    },
];

/// Equations of humid air
pub(super) static SATURATION_OVER_WATER: Cited<Saturation> = Cited {
        value: Saturation { c_inverse: -5800.2206, c0: 1.3914993, c1: -0.048640239, c2: 4.1764768e-5, c3: -1.4452093e-8, c4: 0.0, c_ln: 6.5459673 },
        row: Row {
            table: "cook/humid-air",
            key: "saturation-over-water",
            printed: "ln p = c₋₁/T + c₀ + c₁T + c₂T² + c₃T³ + c ln T, T in K and p in Pa, from 0.01 to 200 °C",
            citation: Citation { source: &sources::ASHRAE_F17, place: "equation 6", standing: Standing::Handbook, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Equations of humid air
pub(super) static SATURATION_OVER_ICE: Cited<Saturation> = Cited {
        value: Saturation { c_inverse: -5674.5359, c0: 6.3925247, c1: -0.009677843, c2: 6.2215701e-7, c3: 2.0747825e-9, c4: -9.484024e-13, c_ln: 4.1635019 },
        row: Row {
            table: "cook/humid-air",
            key: "saturation-over-ice",
            printed: "the same with c₄T⁴, from -100 to 0.01 °C",
            citation: Citation { source: &sources::ASHRAE_F17, place: "equation 5; c₃, c₄ and that of the logarithm from memory, confirmed by its values", standing: Standing::Handbook, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Equations of humid air
pub(super) static HUMIDITY_RATIO: Cited<f64> = Cited {
        value: 0.621945,
        row: Row {
            table: "cook/humid-air",
            key: "humidity-ratio",
            printed: "W = 0.621945 pᵥ / (p − pᵥ)",
            citation: Citation { source: &sources::ASHRAE_F17, place: "equation 20", standing: Standing::Handbook, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Equations of humid air
pub(super) static WET_BULB_WATER: Cited<WetBulb> = Cited {
        value: WetBulb { latent: 2501.0, latent_slope: 2.326, air: 1.006, vapour: 1.86, water: 4.186 },
        row: Row {
            table: "cook/humid-air",
            key: "wet-bulb-water",
            printed: "W = ((2501 − 2.326 t*) W*ₛ − 1.006 (t − t*)) / (2501 + 1.86 t − 4.186 t*)",
            citation: Citation { source: &sources::ASHRAE_F17, place: "equation 33", standing: Standing::Handbook, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Equations of humid air
pub(super) static WET_BULB_ICE: Cited<WetBulb> = Cited {
        value: WetBulb { latent: 2830.0, latent_slope: 0.24, air: 1.006, vapour: 1.86, water: 2.1 },
        row: Row {
            table: "cook/humid-air",
            key: "wet-bulb-ice",
            printed: "W = ((2830 − 0.24 t*) W*ₛ − 1.006 (t − t*)) / (2830 + 1.86 t − 2.1 t*)",
            citation: Citation { source: &sources::ASHRAE_F17, place: "equation 35", standing: Standing::Handbook, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Equations of humid air
pub(super) static PRESSURE_BY_ALTITUDE: Cited<Barometer> = Cited {
        value: Barometer { at_sea: 101325.0, per_metre: 2.25577e-5, power: 5.2559 },
        row: Row {
            table: "cook/humid-air",
            key: "pressure-by-altitude",
            printed: "p = 101 325 (1 − 2.25577 × 10⁻⁵ Z)^5.2559, Z in m and p in Pa",
            citation: Citation { source: &sources::ASHRAE_F17, place: "equation 3", standing: Standing::Handbook, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Whole roasts in New York
pub static NEW_YORK_ROASTS: [Cited<Hold>; 29] = [
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(130.0, 54.0), time: seconds(7260.0) },
        row: Row {
            table: "cook/new-york-roasts",
            key: "130f",
            printed: "130 °F: 121 min",
            citation: Citation { source: &sources::NY271, place: "roast chart, row 130", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(131.0, 55.0), time: seconds(5820.0) },
        row: Row {
            table: "cook/new-york-roasts",
            key: "131f",
            printed: "131 °F: 97 min",
            citation: Citation { source: &sources::NY271, place: "roast chart, row 131", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(132.0, 56.0), time: seconds(4620.0) },
        row: Row {
            table: "cook/new-york-roasts",
            key: "132f",
            printed: "132 °F: 77 min",
            citation: Citation { source: &sources::NY271, place: "roast chart, row 132", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(133.0, 56.0), time: seconds(3720.0) },
        row: Row {
            table: "cook/new-york-roasts",
            key: "133f",
            printed: "133 °F: 62 min",
            citation: Citation { source: &sources::NY271, place: "roast chart, row 133", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(134.0, 57.0), time: seconds(2820.0) },
        row: Row {
            table: "cook/new-york-roasts",
            key: "134f",
            printed: "134 °F: 47 min",
            citation: Citation { source: &sources::NY271, place: "roast chart, row 134", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(135.0, 57.0), time: seconds(2220.0) },
        row: Row {
            table: "cook/new-york-roasts",
            key: "135f",
            printed: "135 °F: 37 min",
            citation: Citation { source: &sources::NY271, place: "roast chart, row 135", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(136.0, 58.0), time: seconds(1920.0) },
        row: Row {
            table: "cook/new-york-roasts",
            key: "136f",
            printed: "136 °F: 32 min",
            citation: Citation { source: &sources::NY271, place: "roast chart, row 136", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(137.0, 58.0), time: seconds(1440.0) },
        row: Row {
            table: "cook/new-york-roasts",
            key: "137f",
            printed: "137 °F: 24 min",
            citation: Citation { source: &sources::NY271, place: "roast chart, row 137", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(138.0, 59.0), time: seconds(1140.0) },
        row: Row {
            table: "cook/new-york-roasts",
            key: "138f",
            printed: "138 °F: 19 min",
            citation: Citation { source: &sources::NY271, place: "roast chart, row 138", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(139.0, 60.0), time: seconds(900.0) },
        row: Row {
            table: "cook/new-york-roasts",
            key: "139f",
            printed: "139 °F: 15 min",
            citation: Citation { source: &sources::NY271, place: "roast chart, row 139", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "60 °C is printed beside it; 139 °F is 59.44 °C.",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(140.0, 60.0), time: seconds(720.0) },
        row: Row {
            table: "cook/new-york-roasts",
            key: "140f",
            printed: "140 °F: 12 min",
            citation: Citation { source: &sources::NY271, place: "roast chart, row 140", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(141.0, 61.0), time: seconds(600.0) },
        row: Row {
            table: "cook/new-york-roasts",
            key: "141f",
            printed: "141 °F: 10 min",
            citation: Citation { source: &sources::NY271, place: "roast chart, row 141", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(142.0, 61.0), time: seconds(480.0) },
        row: Row {
            table: "cook/new-york-roasts",
            key: "142f",
            printed: "142 °F: 8 min",
            citation: Citation { source: &sources::NY271, place: "roast chart, row 142", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(143.0, 62.0), time: seconds(360.0) },
        row: Row {
            table: "cook/new-york-roasts",
            key: "143f",
            printed: "143 °F: 6 min",
            citation: Citation { source: &sources::NY271, place: "roast chart, row 143", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(144.0, 62.0), time: seconds(300.0) },
        row: Row {
            table: "cook/new-york-roasts",
            key: "144f",
            printed: "144 °F: 5 min",
            citation: Citation { source: &sources::NY271, place: "roast chart, row 144", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(145.0, 63.0), time: seconds(240.0) },
        row: Row {
            table: "cook/new-york-roasts",
            key: "145f",
            printed: "145 °F: 4 min",
            citation: Citation { source: &sources::NY271, place: "roast chart, row 145", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(146.0, 63.0), time: seconds(182.0) },
        row: Row {
            table: "cook/new-york-roasts",
            key: "146f",
            printed: "146 °F: 182 s",
            citation: Citation { source: &sources::NY271, place: "roast chart, row 146", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(147.0, 64.0), time: seconds(144.0) },
        row: Row {
            table: "cook/new-york-roasts",
            key: "147f",
            printed: "147 °F: 144 s",
            citation: Citation { source: &sources::NY271, place: "roast chart, row 147", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(148.0, 64.0), time: seconds(115.0) },
        row: Row {
            table: "cook/new-york-roasts",
            key: "148f",
            printed: "148 °F: 115 s",
            citation: Citation { source: &sources::NY271, place: "roast chart, row 148", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(149.0, 65.0), time: seconds(91.0) },
        row: Row {
            table: "cook/new-york-roasts",
            key: "149f",
            printed: "149 °F: 91 s",
            citation: Citation { source: &sources::NY271, place: "roast chart, row 149", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(150.0, 66.0), time: seconds(72.0) },
        row: Row {
            table: "cook/new-york-roasts",
            key: "150f",
            printed: "150 °F: 72 s",
            citation: Citation { source: &sources::NY271, place: "roast chart, row 150", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(151.0, 66.0), time: seconds(58.0) },
        row: Row {
            table: "cook/new-york-roasts",
            key: "151f",
            printed: "151 °F: 58 s",
            citation: Citation { source: &sources::NY271, place: "roast chart, row 151", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(152.0, 67.0), time: seconds(46.0) },
        row: Row {
            table: "cook/new-york-roasts",
            key: "152f",
            printed: "152 °F: 46 s",
            citation: Citation { source: &sources::NY271, place: "roast chart, row 152", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(153.0, 67.0), time: seconds(37.0) },
        row: Row {
            table: "cook/new-york-roasts",
            key: "153f",
            printed: "153 °F: 37 s",
            citation: Citation { source: &sources::NY271, place: "roast chart, row 153", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(154.0, 68.0), time: seconds(29.0) },
        row: Row {
            table: "cook/new-york-roasts",
            key: "154f",
            printed: "154 °F: 29 s",
            citation: Citation { source: &sources::NY271, place: "roast chart, row 154", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(155.0, 68.0), time: seconds(23.0) },
        row: Row {
            table: "cook/new-york-roasts",
            key: "155f",
            printed: "155 °F: 23 s",
            citation: Citation { source: &sources::NY271, place: "roast chart, row 155", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(156.0, 69.0), time: seconds(19.0) },
        row: Row {
            table: "cook/new-york-roasts",
            key: "156f",
            printed: "156 °F: 19 s",
            citation: Citation { source: &sources::NY271, place: "roast chart, row 156", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(157.0, 69.0), time: seconds(15.0) },
        row: Row {
            table: "cook/new-york-roasts",
            key: "157f",
            printed: "157 °F: 15 s",
            citation: Citation { source: &sources::NY271, place: "roast chart, row 157", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(158.0, 70.0), time: seconds(0.0) },
        row: Row {
            table: "cook/new-york-roasts",
            key: "158f",
            printed: "158 °F: 0 s",
            citation: Citation { source: &sources::NY271, place: "roast chart, row 158", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Cooked uncured meat patties, United States
pub static PATTIES: [Cited<Hold>; 7] = [
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(151.0, 66.1), time: seconds(41.0) },
        row: Row {
            table: "cook/patties",
            key: "151F",
            printed: "151 °F: 41 s",
            citation: Citation { source: &sources::CFR9_318_23_2015, place: "(b)(1) table, row 151", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(152.0, 66.7), time: seconds(32.0) },
        row: Row {
            table: "cook/patties",
            key: "152F",
            printed: "152 °F: 32 s",
            citation: Citation { source: &sources::CFR9_318_23_2015, place: "(b)(1) table, row 152", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(153.0, 67.2), time: seconds(26.0) },
        row: Row {
            table: "cook/patties",
            key: "153F",
            printed: "153 °F: 26 s",
            citation: Citation { source: &sources::CFR9_318_23_2015, place: "(b)(1) table, row 153", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(154.0, 67.8), time: seconds(20.0) },
        row: Row {
            table: "cook/patties",
            key: "154F",
            printed: "154 °F: 20 s",
            citation: Citation { source: &sources::CFR9_318_23_2015, place: "(b)(1) table, row 154", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(155.0, 68.3), time: seconds(16.0) },
        row: Row {
            table: "cook/patties",
            key: "155F",
            printed: "155 °F: 16 s",
            citation: Citation { source: &sources::CFR9_318_23_2015, place: "(b)(1) table, row 155", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(156.0, 68.9), time: seconds(13.0) },
        row: Row {
            table: "cook/patties",
            key: "156F",
            printed: "156 °F: 13 s",
            citation: Citation { source: &sources::CFR9_318_23_2015, place: "(b)(1) table, row 156", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(157.0, 69.4), time: seconds(10.0) },
        row: Row {
            table: "cook/patties",
            key: "157F",
            printed: "157 °F: 10 s",
            citation: Citation { source: &sources::CFR9_318_23_2015, place: "(b)(1) table, row 157", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Freezing against trichinae by core temperature (removed in 2018)
pub static TRICHINA_FREEZING_CORE: [Cited<Freezing>; 8] = [
    Cited {
        value: Freezing { freeze: PrintedTemperature::Both(0.0, -17.8), store: PrintedTemperature::Both(0.0, -17.8), thickest: None, time: seconds(381600.0) },
        row: Row {
            table: "cook/trichina-freezing-core",
            key: "0",
            printed: "0 °F (-17.8 °C) in the middle: 106 h",
            citation: Citation { source: &sources::CFR9_318_10_2015, place: "(c)(2)(iv) Table 2, row 0; centre of the piece", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Freezing { freeze: PrintedTemperature::Both(-5.0, -20.6), store: PrintedTemperature::Both(-5.0, -20.6), thickest: None, time: seconds(295200.0) },
        row: Row {
            table: "cook/trichina-freezing-core",
            key: "5",
            printed: "-5 °F (-20.6 °C) in the middle: 82 h",
            citation: Citation { source: &sources::CFR9_318_10_2015, place: "(c)(2)(iv) Table 2, row -5; centre of the piece", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Freezing { freeze: PrintedTemperature::Both(-10.0, -23.3), store: PrintedTemperature::Both(-10.0, -23.3), thickest: None, time: seconds(226800.0) },
        row: Row {
            table: "cook/trichina-freezing-core",
            key: "10",
            printed: "-10 °F (-23.3 °C) in the middle: 63 h",
            citation: Citation { source: &sources::CFR9_318_10_2015, place: "(c)(2)(iv) Table 2, row -10; centre of the piece", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Freezing { freeze: PrintedTemperature::Both(-15.0, -26.1), store: PrintedTemperature::Both(-15.0, -26.1), thickest: None, time: seconds(172800.0) },
        row: Row {
            table: "cook/trichina-freezing-core",
            key: "15",
            printed: "-15 °F (-26.1 °C) in the middle: 48 h",
            citation: Citation { source: &sources::CFR9_318_10_2015, place: "(c)(2)(iv) Table 2, row -15; centre of the piece", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Freezing { freeze: PrintedTemperature::Both(-20.0, -28.9), store: PrintedTemperature::Both(-20.0, -28.9), thickest: None, time: seconds(126000.0) },
        row: Row {
            table: "cook/trichina-freezing-core",
            key: "20",
            printed: "-20 °F (-28.9 °C) in the middle: 35 h",
            citation: Citation { source: &sources::CFR9_318_10_2015, place: "(c)(2)(iv) Table 2, row -20; centre of the piece", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Freezing { freeze: PrintedTemperature::Both(-25.0, -31.7), store: PrintedTemperature::Both(-25.0, -31.7), thickest: None, time: seconds(79200.0) },
        row: Row {
            table: "cook/trichina-freezing-core",
            key: "25",
            printed: "-25 °F (-31.7 °C) in the middle: 22 h",
            citation: Citation { source: &sources::CFR9_318_10_2015, place: "(c)(2)(iv) Table 2, row -25; centre of the piece", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Freezing { freeze: PrintedTemperature::Both(-30.0, -34.5), store: PrintedTemperature::Both(-30.0, -34.5), thickest: None, time: seconds(28800.0) },
        row: Row {
            table: "cook/trichina-freezing-core",
            key: "30",
            printed: "-30 °F (-34.5 °C) in the middle: 8 h",
            citation: Citation { source: &sources::CFR9_318_10_2015, place: "(c)(2)(iv) Table 2, row -30; centre of the piece", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "Prints -34.5 °C, where -30 °F is -34.4 °C.",
        },
    },
    Cited {
        value: Freezing { freeze: PrintedTemperature::Both(-35.0, -37.2), store: PrintedTemperature::Both(-35.0, -37.2), thickest: None, time: seconds(1800.0) },
        row: Row {
            table: "cook/trichina-freezing-core",
            key: "35",
            printed: "-35 °F (-37.2 °C) in the middle: 0.5 h",
            citation: Citation { source: &sources::CFR9_318_10_2015, place: "(c)(2)(iv) Table 2, row -35; centre of the piece", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Freezing against trichinae in Europe
pub static TRICHINA_FREEZING_EUROPE: [Cited<Freezing>; 8] = [
    Cited {
        value: Freezing { freeze: PrintedTemperature::Celsius(-25.0), store: PrintedTemperature::Celsius(-25.0), thickest: Some(centimeters(25.0)), time: seconds(864000.0) },
        row: Row {
            table: "cook/trichina-freezing-europe",
            key: "1-room-air-pieces-up-to-25-cm-25-0",
            printed: "room air, pieces up to 25 cm: -25 °C for 240 h",
            citation: Citation { source: &sources::FR1986VIII, place: "methode 1", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Freezing { freeze: PrintedTemperature::Celsius(-25.0), store: PrintedTemperature::Celsius(-25.0), thickest: Some(centimeters(50.0)), time: seconds(1728000.0) },
        row: Row {
            table: "cook/trichina-freezing-europe",
            key: "1-room-air-pieces-over-25-and-up-to-50-cm-25-0",
            printed: "room air, pieces over 25 and up to 50 cm: -25 °C for 480 h",
            citation: Citation { source: &sources::FR1986VIII, place: "methode 1", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Freezing { freeze: PrintedTemperature::Celsius(-15.0), store: PrintedTemperature::Celsius(-15.0), thickest: Some(centimeters(15.0)), time: seconds(1728000.0) },
        row: Row {
            table: "cook/trichina-freezing-europe",
            key: "2-pieces-up-to-15-cm-15-0",
            printed: "pieces up to 15 cm: -15 °C for 480 h",
            citation: Citation { source: &sources::FR1986VIII, place: "methode 2", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Freezing { freeze: PrintedTemperature::Celsius(-23.0), store: PrintedTemperature::Celsius(-23.0), thickest: Some(centimeters(15.0)), time: seconds(864000.0) },
        row: Row {
            table: "cook/trichina-freezing-europe",
            key: "2-pieces-up-to-15-cm-23-0",
            printed: "pieces up to 15 cm: -23 °C for 240 h",
            citation: Citation { source: &sources::FR1986VIII, place: "methode 2", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Freezing { freeze: PrintedTemperature::Celsius(-29.0), store: PrintedTemperature::Celsius(-29.0), thickest: Some(centimeters(15.0)), time: seconds(518400.0) },
        row: Row {
            table: "cook/trichina-freezing-europe",
            key: "2-pieces-up-to-15-cm-29-0",
            printed: "pieces up to 15 cm: -29 °C for 144 h",
            citation: Citation { source: &sources::FR1986VIII, place: "methode 2", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Freezing { freeze: PrintedTemperature::Celsius(-15.0), store: PrintedTemperature::Celsius(-15.0), thickest: Some(centimeters(50.0)), time: seconds(2592000.0) },
        row: Row {
            table: "cook/trichina-freezing-europe",
            key: "2-pieces-over-15-and-up-to-50-cm-15-0",
            printed: "pieces over 15 and up to 50 cm: -15 °C for 720 h",
            citation: Citation { source: &sources::FR1986VIII, place: "methode 2", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Freezing { freeze: PrintedTemperature::Celsius(-25.0), store: PrintedTemperature::Celsius(-25.0), thickest: Some(centimeters(50.0)), time: seconds(1728000.0) },
        row: Row {
            table: "cook/trichina-freezing-europe",
            key: "2-pieces-over-15-and-up-to-50-cm-25-0",
            printed: "pieces over 15 and up to 50 cm: -25 °C for 480 h",
            citation: Citation { source: &sources::FR1986VIII, place: "methode 2", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Freezing { freeze: PrintedTemperature::Celsius(-29.0), store: PrintedTemperature::Celsius(-29.0), thickest: Some(centimeters(50.0)), time: seconds(1036800.0) },
        row: Row {
            table: "cook/trichina-freezing-europe",
            key: "2-pieces-over-15-and-up-to-50-cm-29-0",
            printed: "pieces over 15 and up to 50 cm: -29 °C for 288 h",
            citation: Citation { source: &sources::FR1986VIII, place: "methode 2", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Freezing against trichinae in Europe: by the temperature in the middle.
pub static TRICHINA_FREEZING_EUROPE_CORE: [Cited<Freezing>; 8] = [
    Cited {
        value: Freezing { freeze: PrintedTemperature::Celsius(-18.0), store: PrintedTemperature::Celsius(-18.0), thickest: None, time: seconds(381600.0) },
        row: Row {
            table: "cook/trichina-freezing-europe",
            key: "3-core-18-0",
            printed: "core: -18 °C for 106 h",
            citation: Citation { source: &sources::FR1986VIII, place: "methode 3", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Freezing { freeze: PrintedTemperature::Celsius(-21.0), store: PrintedTemperature::Celsius(-21.0), thickest: None, time: seconds(295200.0) },
        row: Row {
            table: "cook/trichina-freezing-europe",
            key: "3-core-21-0",
            printed: "core: -21 °C for 82 h",
            citation: Citation { source: &sources::FR1986VIII, place: "methode 3", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Freezing { freeze: PrintedTemperature::Celsius(-23.5), store: PrintedTemperature::Celsius(-23.5), thickest: None, time: seconds(226800.0) },
        row: Row {
            table: "cook/trichina-freezing-europe",
            key: "3-core-23-5",
            printed: "core: -23.5 °C for 63 h",
            citation: Citation { source: &sources::FR1986VIII, place: "methode 3", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Freezing { freeze: PrintedTemperature::Celsius(-26.0), store: PrintedTemperature::Celsius(-26.0), thickest: None, time: seconds(172800.0) },
        row: Row {
            table: "cook/trichina-freezing-europe",
            key: "3-core-26-0",
            printed: "core: -26 °C for 48 h",
            citation: Citation { source: &sources::FR1986VIII, place: "methode 3", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Freezing { freeze: PrintedTemperature::Celsius(-29.0), store: PrintedTemperature::Celsius(-29.0), thickest: None, time: seconds(126000.0) },
        row: Row {
            table: "cook/trichina-freezing-europe",
            key: "3-core-29-0",
            printed: "core: -29 °C for 35 h",
            citation: Citation { source: &sources::FR1986VIII, place: "methode 3", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Freezing { freeze: PrintedTemperature::Celsius(-32.0), store: PrintedTemperature::Celsius(-32.0), thickest: None, time: seconds(79200.0) },
        row: Row {
            table: "cook/trichina-freezing-europe",
            key: "3-core-32-0",
            printed: "core: -32 °C for 22 h",
            citation: Citation { source: &sources::FR1986VIII, place: "methode 3", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Freezing { freeze: PrintedTemperature::Celsius(-35.0), store: PrintedTemperature::Celsius(-35.0), thickest: None, time: seconds(28800.0) },
        row: Row {
            table: "cook/trichina-freezing-europe",
            key: "3-core-35-0",
            printed: "core: -35 °C for 8 h",
            citation: Citation { source: &sources::FR1986VIII, place: "methode 3", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Freezing { freeze: PrintedTemperature::Celsius(-37.0), store: PrintedTemperature::Celsius(-37.0), thickest: None, time: seconds(1800.0) },
        row: Row {
            table: "cook/trichina-freezing-europe",
            key: "3-core-37-0",
            printed: "core: -37 °C for 0.5 h",
            citation: Citation { source: &sources::FR1986VIII, place: "methode 3", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Freezing against trichinae in Pennsylvania: group1.
pub static TRICHINA_FREEZING_PENNSYLVANIA_GROUP1: [Cited<Freezing>; 3] = [
    Cited {
        value: Freezing { freeze: PrintedTemperature::Fahrenheit(5.0), store: PrintedTemperature::Fahrenheit(5.0), thickest: Some(centimeters(15.24)), time: seconds(1728000.0) },
        row: Row {
            table: "cook/trichina-freezing-pennsylvania",
            key: "5",
            printed: "5 °F: 20 days up to 6 in thick, 30 days above that and up to 27 in",
            citation: Citation { source: &sources::PACODE1_333, place: "(a) table, row 5", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Freezing { freeze: PrintedTemperature::Fahrenheit(-10.0), store: PrintedTemperature::Fahrenheit(-10.0), thickest: Some(centimeters(15.24)), time: seconds(864000.0) },
        row: Row {
            table: "cook/trichina-freezing-pennsylvania",
            key: "10",
            printed: "-10 °F: 10 days up to 6 in thick, 10 days above that and up to 27 in",
            citation: Citation { source: &sources::PACODE1_333, place: "(a) table, row -10", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "printed 10 for group 2; the federal rule and jama1954 have 20: treat as a misprint, use 20",
        },
    },
    Cited {
        value: Freezing { freeze: PrintedTemperature::Fahrenheit(-20.0), store: PrintedTemperature::Fahrenheit(-20.0), thickest: Some(centimeters(15.24)), time: seconds(518400.0) },
        row: Row {
            table: "cook/trichina-freezing-pennsylvania",
            key: "20",
            printed: "-20 °F: 6 days up to 6 in thick, 12 days above that and up to 27 in",
            citation: Citation { source: &sources::PACODE1_333, place: "(a) table, row -20", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Freezing against trichinae in Pennsylvania: group2.
pub static TRICHINA_FREEZING_PENNSYLVANIA_GROUP2: [Cited<Freezing>; 3] = [
    Cited {
        value: Freezing { freeze: PrintedTemperature::Fahrenheit(5.0), store: PrintedTemperature::Fahrenheit(5.0), thickest: Some(centimeters(68.58)), time: seconds(2592000.0) },
        row: Row {
            table: "cook/trichina-freezing-pennsylvania",
            key: "5",
            printed: "5 °F: 20 days up to 6 in thick, 30 days above that and up to 27 in",
            citation: Citation { source: &sources::PACODE1_333, place: "(a) table, row 5", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Freezing { freeze: PrintedTemperature::Fahrenheit(-10.0), store: PrintedTemperature::Fahrenheit(-10.0), thickest: Some(centimeters(68.58)), time: seconds(864000.0) },
        row: Row {
            table: "cook/trichina-freezing-pennsylvania",
            key: "10",
            printed: "-10 °F: 10 days up to 6 in thick, 10 days above that and up to 27 in",
            citation: Citation { source: &sources::PACODE1_333, place: "(a) table, row -10", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "printed 10 for group 2; the federal rule and jama1954 have 20: treat as a misprint, use 20",
        },
    },
    Cited {
        value: Freezing { freeze: PrintedTemperature::Fahrenheit(-20.0), store: PrintedTemperature::Fahrenheit(-20.0), thickest: Some(centimeters(68.58)), time: seconds(1036800.0) },
        row: Row {
            table: "cook/trichina-freezing-pennsylvania",
            key: "20",
            printed: "-20 °F: 6 days up to 6 in thick, 12 days above that and up to 27 in",
            citation: Citation { source: &sources::PACODE1_333, place: "(a) table, row -20", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Freezing against trichinae by room temperature (removed in 2018): group1.
pub static TRICHINA_FREEZING_GROUP1: [Cited<Freezing>; 3] = [
    Cited {
        value: Freezing { freeze: PrintedTemperature::Fahrenheit(5.0), store: PrintedTemperature::Fahrenheit(5.0), thickest: Some(centimeters(15.24)), time: seconds(1728000.0) },
        row: Row {
            table: "cook/trichina-freezing",
            key: "5",
            printed: "5 °F: 20 days up to 6 in thick, 30 days above that and up to 27 in",
            citation: Citation { source: &sources::CFR9_318_10_2015, place: "(c)(2) Table 1, row 5; groups (c)(2)(i), (ii)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Freezing { freeze: PrintedTemperature::Fahrenheit(-10.0), store: PrintedTemperature::Fahrenheit(-10.0), thickest: Some(centimeters(15.24)), time: seconds(864000.0) },
        row: Row {
            table: "cook/trichina-freezing",
            key: "10",
            printed: "-10 °F: 10 days up to 6 in thick, 20 days above that and up to 27 in",
            citation: Citation { source: &sources::CFR9_318_10_2015, place: "(c)(2) Table 1, row -10; groups (c)(2)(i), (ii)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Freezing { freeze: PrintedTemperature::Fahrenheit(-20.0), store: PrintedTemperature::Fahrenheit(-20.0), thickest: Some(centimeters(15.24)), time: seconds(518400.0) },
        row: Row {
            table: "cook/trichina-freezing",
            key: "20",
            printed: "-20 °F: 6 days up to 6 in thick, 12 days above that and up to 27 in",
            citation: Citation { source: &sources::CFR9_318_10_2015, place: "(c)(2) Table 1, row -20; groups (c)(2)(i), (ii)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Freezing against trichinae by room temperature (removed in 2018): group2.
pub static TRICHINA_FREEZING_GROUP2: [Cited<Freezing>; 3] = [
    Cited {
        value: Freezing { freeze: PrintedTemperature::Fahrenheit(5.0), store: PrintedTemperature::Fahrenheit(5.0), thickest: Some(centimeters(68.58)), time: seconds(2592000.0) },
        row: Row {
            table: "cook/trichina-freezing",
            key: "5",
            printed: "5 °F: 20 days up to 6 in thick, 30 days above that and up to 27 in",
            citation: Citation { source: &sources::CFR9_318_10_2015, place: "(c)(2) Table 1, row 5; groups (c)(2)(i), (ii)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Freezing { freeze: PrintedTemperature::Fahrenheit(-10.0), store: PrintedTemperature::Fahrenheit(-10.0), thickest: Some(centimeters(68.58)), time: seconds(1728000.0) },
        row: Row {
            table: "cook/trichina-freezing",
            key: "10",
            printed: "-10 °F: 10 days up to 6 in thick, 20 days above that and up to 27 in",
            citation: Citation { source: &sources::CFR9_318_10_2015, place: "(c)(2) Table 1, row -10; groups (c)(2)(i), (ii)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Freezing { freeze: PrintedTemperature::Fahrenheit(-20.0), store: PrintedTemperature::Fahrenheit(-20.0), thickest: Some(centimeters(68.58)), time: seconds(1036800.0) },
        row: Row {
            table: "cook/trichina-freezing",
            key: "20",
            printed: "-20 °F: 6 days up to 6 in thick, 12 days above that and up to 27 in",
            citation: Citation { source: &sources::CFR9_318_10_2015, place: "(c)(2) Table 1, row -20; groups (c)(2)(i), (ii)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Heating against trichinae (removed in 2018)
pub static TRICHINA_HEAT: [Cited<Hold>; 13] = [
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(120.0, 49.0), time: seconds(75600.0) },
        row: Row {
            table: "cook/trichina-heat",
            key: "120",
            printed: "21 hours",
            citation: Citation { source: &sources::CFR9_318_10_2015, place: "(c)(1)(i) table, row 120", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(122.0, 50.0), time: seconds(34200.0) },
        row: Row {
            table: "cook/trichina-heat",
            key: "122",
            printed: "9.5 hours",
            citation: Citation { source: &sources::CFR9_318_10_2015, place: "(c)(1)(i) table, row 122", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(124.0, 51.1), time: seconds(16200.0) },
        row: Row {
            table: "cook/trichina-heat",
            key: "124",
            printed: "4.5 hours",
            citation: Citation { source: &sources::CFR9_318_10_2015, place: "(c)(1)(i) table, row 124", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(126.0, 52.2), time: seconds(7200.0) },
        row: Row {
            table: "cook/trichina-heat",
            key: "126",
            printed: "2 hours",
            citation: Citation { source: &sources::CFR9_318_10_2015, place: "(c)(1)(i) table, row 126", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(128.0, 53.4), time: seconds(3600.0) },
        row: Row {
            table: "cook/trichina-heat",
            key: "128",
            printed: "1 hour",
            citation: Citation { source: &sources::CFR9_318_10_2015, place: "(c)(1)(i) table, row 128", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "Prints 53.4 °C, where 128 °F is 53.3 °C.",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(130.0, 54.5), time: seconds(1800.0) },
        row: Row {
            table: "cook/trichina-heat",
            key: "130",
            printed: "30 minutes",
            citation: Citation { source: &sources::CFR9_318_10_2015, place: "(c)(1)(i) table, row 130", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "Prints 54.5 °C, where 130 °F is 54.4 °C.",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(132.0, 55.6), time: seconds(900.0) },
        row: Row {
            table: "cook/trichina-heat",
            key: "132",
            printed: "15 minutes",
            citation: Citation { source: &sources::CFR9_318_10_2015, place: "(c)(1)(i) table, row 132", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(134.0, 56.7), time: seconds(360.0) },
        row: Row {
            table: "cook/trichina-heat",
            key: "134",
            printed: "6 minutes",
            citation: Citation { source: &sources::CFR9_318_10_2015, place: "(c)(1)(i) table, row 134", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(136.0, 57.8), time: seconds(180.0) },
        row: Row {
            table: "cook/trichina-heat",
            key: "136",
            printed: "3 minutes",
            citation: Citation { source: &sources::CFR9_318_10_2015, place: "(c)(1)(i) table, row 136", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(138.0, 58.9), time: seconds(120.0) },
        row: Row {
            table: "cook/trichina-heat",
            key: "138",
            printed: "2 minutes",
            citation: Citation { source: &sources::CFR9_318_10_2015, place: "(c)(1)(i) table, row 138", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(140.0, 60.0), time: seconds(60.0) },
        row: Row {
            table: "cook/trichina-heat",
            key: "140",
            printed: "1 minute",
            citation: Citation { source: &sources::CFR9_318_10_2015, place: "(c)(1)(i) table, row 140", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(142.0, 61.1), time: seconds(60.0) },
        row: Row {
            table: "cook/trichina-heat",
            key: "142",
            printed: "1 minute",
            citation: Citation { source: &sources::CFR9_318_10_2015, place: "(c)(1)(i) table, row 142", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(144.0, 62.2), time: seconds(0.0) },
        row: Row {
            table: "cook/trichina-heat",
            key: "144",
            printed: "Instant",
            citation: Citation { source: &sources::CFR9_318_10_2015, place: "(c)(1)(i) table, row 144", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Pairs of temperature and time for burgers, United Kingdom
pub static UNITED_KINGDOM_BURGERS: [Cited<Hold>; 3] = [
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(149.0, 65.0), time: seconds(816.0) },
        row: Row {
            table: "cook/united-kingdom-burgers",
            key: "uk-burgers-equivalent-65",
            printed: "burgers, equivalent: 65 °C for 816 s",
            citation: Citation { source: &sources::ACMSF2007, place: "summary", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "printed 13.6 minutes",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(158.0, 70.0), time: seconds(120.0) },
        row: Row {
            table: "cook/united-kingdom-burgers",
            key: "uk-burgers-70",
            printed: "burgers: 70 °C for 120 s",
            citation: Citation { source: &sources::ACMSF2007, place: "summary", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "or equivalent with z = 6 C",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(167.0, 75.0), time: seconds(18.0) },
        row: Row {
            table: "cook/united-kingdom-burgers",
            key: "uk-burgers-equivalent-75",
            printed: "burgers, equivalent: 75 °C for 18 s",
            citation: Citation { source: &sources::ACMSF2007, place: "summary", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Pairs of temperature and time, United Kingdom
pub static UNITED_KINGDOM: [Cited<Hold>; 5] = [
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(140.0, 60.0), time: seconds(2700.0) },
        row: Row {
            table: "cook/united-kingdom",
            key: "uk-any-food-to-be-cooked-through-food-stan-60",
            printed: "any food to be cooked through (Food Standards Agency pairs): 60 °C for 2700 s",
            citation: Citation { source: &sources::FSAUK_RELAY, place: "list", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(149.0, 65.0), time: seconds(600.0) },
        row: Row {
            table: "cook/united-kingdom",
            key: "uk-any-food-to-be-cooked-through-food-stan-65",
            printed: "any food to be cooked through (Food Standards Agency pairs): 65 °C for 600 s",
            citation: Citation { source: &sources::FSAUK_RELAY, place: "list", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(158.0, 70.0), time: seconds(120.0) },
        row: Row {
            table: "cook/united-kingdom",
            key: "uk-any-food-to-be-cooked-through-food-stan-70",
            printed: "any food to be cooked through (Food Standards Agency pairs): 70 °C for 120 s",
            citation: Citation { source: &sources::FSAUK_RELAY, place: "list", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(167.0, 75.0), time: seconds(30.0) },
        row: Row {
            table: "cook/united-kingdom",
            key: "uk-any-food-to-be-cooked-through-food-stan-75",
            printed: "any food to be cooked through (Food Standards Agency pairs): 75 °C for 30 s",
            citation: Citation { source: &sources::FSAUK_RELAY, place: "list", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Hold { temperature: PrintedTemperature::Both(176.0, 80.0), time: seconds(6.0) },
        row: Row {
            table: "cook/united-kingdom",
            key: "uk-any-food-to-be-cooked-through-food-stan-80",
            printed: "any food to be cooked through (Food Standards Agency pairs): 80 °C for 6 s",
            citation: Citation { source: &sources::FSAUK_RELAY, place: "list", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Inside temperatures for home cooks, United States
pub static US_CONSUMER: [Cited<Endpoint>; 11] = [
    Cited {
        value: Endpoint { authority: Authority::UsConsumer, food: Food::WholeMeat, temperature: PrintedTemperature::Both(145.0, 62.8), rest: seconds(180.0) },
        row: Row {
            table: "cook/us-consumer",
            key: "whole-meat",
            printed: "145 °F (62.8 °C) and allow to rest for at least 3 minutes",
            citation: Citation { source: &sources::FSISCHART, place: "chart, row of that product", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 4, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Endpoint { authority: Authority::UsConsumer, food: Food::GroundMeat, temperature: PrintedTemperature::Both(160.0, 71.1), rest: seconds(0.0) },
        row: Row {
            table: "cook/us-consumer",
            key: "ground-meat",
            printed: "160 °F (71.1 °C)",
            citation: Citation { source: &sources::FSISCHART, place: "chart, row of that product", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 4, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Endpoint { authority: Authority::UsConsumer, food: Food::GroundPoultry, temperature: PrintedTemperature::Fahrenheit(165.0), rest: seconds(0.0) },
        row: Row {
            table: "cook/us-consumer",
            key: "ground-poultry",
            printed: "165 °F",
            citation: Citation { source: &sources::FSISCHART, place: "chart, row of that product", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 4, 14)), None),
            note: "No Celsius figure is printed on this row.",
        },
    },
    Cited {
        value: Endpoint { authority: Authority::UsConsumer, food: Food::RawHam, temperature: PrintedTemperature::Both(145.0, 62.8), rest: seconds(180.0) },
        row: Row {
            table: "cook/us-consumer",
            key: "raw-ham",
            printed: "145 °F (62.8 °C) and allow to rest for at least 3 minutes",
            citation: Citation { source: &sources::FSISCHART, place: "chart, row of that product", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 4, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Endpoint { authority: Authority::UsConsumer, food: Food::PlantPackedHamReheated, temperature: PrintedTemperature::Both(140.0, 60.0), rest: seconds(0.0) },
        row: Row {
            table: "cook/us-consumer",
            key: "plant-packed-ham-reheated",
            printed: "140 °F (60.0 °C)",
            citation: Citation { source: &sources::FSISCHART, place: "chart, row of that product", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 4, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Endpoint { authority: Authority::UsConsumer, food: Food::OtherHamReheated, temperature: PrintedTemperature::Both(165.0, 73.9), rest: seconds(0.0) },
        row: Row {
            table: "cook/us-consumer",
            key: "other-ham-reheated",
            printed: "165 °F (73.9 °C)",
            citation: Citation { source: &sources::FSISCHART, place: "chart, row of that product", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 4, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Endpoint { authority: Authority::UsConsumer, food: Food::Poultry, temperature: PrintedTemperature::Both(165.0, 73.9), rest: seconds(0.0) },
        row: Row {
            table: "cook/us-consumer",
            key: "poultry",
            printed: "165 °F (73.9 °C)",
            citation: Citation { source: &sources::FSISCHART, place: "chart, row of that product", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 4, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Endpoint { authority: Authority::UsConsumer, food: Food::Eggs, temperature: PrintedTemperature::Both(160.0, 71.1), rest: seconds(0.0) },
        row: Row {
            table: "cook/us-consumer",
            key: "eggs",
            printed: "160 °F (71.1 °C)",
            citation: Citation { source: &sources::FSISCHART, place: "chart, row of that product", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 4, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Endpoint { authority: Authority::UsConsumer, food: Food::Fish, temperature: PrintedTemperature::Both(145.0, 62.8), rest: seconds(0.0) },
        row: Row {
            table: "cook/us-consumer",
            key: "fish",
            printed: "145 °F (62.8 °C)",
            citation: Citation { source: &sources::FSISCHART, place: "chart, row of that product", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 4, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Endpoint { authority: Authority::UsConsumer, food: Food::Leftovers, temperature: PrintedTemperature::Both(165.0, 73.9), rest: seconds(0.0) },
        row: Row {
            table: "cook/us-consumer",
            key: "leftovers",
            printed: "165 °F (73.9 °C)",
            citation: Citation { source: &sources::FSISCHART, place: "chart, row of that product", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 4, 14)), None),
            note: "",
        },
    },
    Cited {
        value: Endpoint { authority: Authority::UsConsumer, food: Food::Casseroles, temperature: PrintedTemperature::Both(165.0, 73.9), rest: seconds(0.0) },
        row: Row {
            table: "cook/us-consumer",
            key: "casseroles",
            printed: "165 °F (73.9 °C)",
            citation: Citation { source: &sources::FSISCHART, place: "chart, row of that product", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 4, 14)), None),
            note: "",
        },
    },
];
