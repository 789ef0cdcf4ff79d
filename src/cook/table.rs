// Made from references/ by references/pipeline. Do not edit: change the reference file.

use crate::cite::{Citation, Cited, Date, InForce, Row, Seen, Standing, sources};
use super::{Dwell, Endpoint};
use crate::authority::Authority;
use crate::food::Food;
use crate::units::{PrintedTemperature, seconds};

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
