// Made from references/ by references/pipeline. Do not edit: change the reference file.

use crate::cite::{Citation, Cited, InForce, Row, Seen, Standing, sources};
use super::Cell;

/// Heat-treated and packaged food: water activity and pH together, Food Code 2022, Table A
pub static INTERACTION_A: [Cited<Cell>; 9] = [
    Cited {
        value: Cell { activity: (0.0, false, 0.92, true), ph: (0.0, false, 4.6, true), needs_none: true },
        row: Row {
            table: "shelf/interaction-a",
            key: "aw-to-0-92-ph-to-4-6",
            printed: "water activity <=0.92, pH <=4.6: non-TCS",
            citation: Citation { source: &sources::FOODCODE2022_CH1, place: "1-201.10(B), Table A, row aw <=0.92", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Cell { activity: (0.0, false, 0.92, true), ph: (4.6, true, 5.6, true), needs_none: true },
        row: Row {
            table: "shelf/interaction-a",
            key: "aw-to-0-92-ph-above-4-6-5-6",
            printed: "water activity <=0.92, pH >4.6-5.6: non-TCS",
            citation: Citation { source: &sources::FOODCODE2022_CH1, place: "1-201.10(B), Table A, row aw <=0.92", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Cell { activity: (0.0, false, 0.92, true), ph: (5.6, true, 14.0, true), needs_none: true },
        row: Row {
            table: "shelf/interaction-a",
            key: "aw-to-0-92-ph-above-5-6",
            printed: "water activity <=0.92, pH >5.6: non-TCS",
            citation: Citation { source: &sources::FOODCODE2022_CH1, place: "1-201.10(B), Table A, row aw <=0.92", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Cell { activity: (0.92, true, 0.95, true), ph: (0.0, false, 4.6, true), needs_none: true },
        row: Row {
            table: "shelf/interaction-a",
            key: "aw-above-0-92-0-95-ph-to-4-6",
            printed: "water activity >0.92-0.95, pH <=4.6: non-TCS",
            citation: Citation { source: &sources::FOODCODE2022_CH1, place: "1-201.10(B), Table A, row aw >0.92-0.95", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Cell { activity: (0.92, true, 0.95, true), ph: (4.6, true, 5.6, true), needs_none: true },
        row: Row {
            table: "shelf/interaction-a",
            key: "aw-above-0-92-0-95-ph-above-4-6-5-6",
            printed: "water activity >0.92-0.95, pH >4.6-5.6: non-TCS",
            citation: Citation { source: &sources::FOODCODE2022_CH1, place: "1-201.10(B), Table A, row aw >0.92-0.95", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Cell { activity: (0.92, true, 0.95, true), ph: (5.6, true, 14.0, true), needs_none: false },
        row: Row {
            table: "shelf/interaction-a",
            key: "aw-above-0-92-0-95-ph-above-5-6",
            printed: "water activity >0.92-0.95, pH >5.6: PA",
            citation: Citation { source: &sources::FOODCODE2022_CH1, place: "1-201.10(B), Table A, row aw >0.92-0.95", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Cell { activity: (0.95, true, 1.0, true), ph: (0.0, false, 4.6, true), needs_none: true },
        row: Row {
            table: "shelf/interaction-a",
            key: "aw-above-0-95-ph-to-4-6",
            printed: "water activity >0.95, pH <=4.6: non-TCS",
            citation: Citation { source: &sources::FOODCODE2022_CH1, place: "1-201.10(B), Table A, row aw >0.95", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Cell { activity: (0.95, true, 1.0, true), ph: (4.6, true, 5.6, true), needs_none: false },
        row: Row {
            table: "shelf/interaction-a",
            key: "aw-above-0-95-ph-above-4-6-5-6",
            printed: "water activity >0.95, pH >4.6-5.6: PA",
            citation: Citation { source: &sources::FOODCODE2022_CH1, place: "1-201.10(B), Table A, row aw >0.95", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Cell { activity: (0.95, true, 1.0, true), ph: (5.6, true, 14.0, true), needs_none: false },
        row: Row {
            table: "shelf/interaction-a",
            key: "aw-above-0-95-ph-above-5-6",
            printed: "water activity >0.95, pH >5.6: PA",
            citation: Citation { source: &sources::FOODCODE2022_CH1, place: "1-201.10(B), Table A, row aw >0.95", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Other food: water activity and pH together, Food Code 2022, Table B
pub static INTERACTION_B: [Cited<Cell>; 16] = [
    Cited {
        value: Cell { activity: (0.0, false, 0.88, false), ph: (0.0, false, 4.2, false), needs_none: true },
        row: Row {
            table: "shelf/interaction-b",
            key: "aw-below-0-88-ph-below-4-2",
            printed: "water activity <0.88, pH <4.2: non-TCS",
            citation: Citation { source: &sources::FOODCODE2022_CH1, place: "1-201.10(B), Table B, row aw <0.88", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Cell { activity: (0.0, false, 0.88, false), ph: (4.2, false, 4.6, true), needs_none: true },
        row: Row {
            table: "shelf/interaction-b",
            key: "aw-below-0-88-ph-4-2-4-6",
            printed: "water activity <0.88, pH 4.2-4.6: non-TCS",
            citation: Citation { source: &sources::FOODCODE2022_CH1, place: "1-201.10(B), Table B, row aw <0.88", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Cell { activity: (0.0, false, 0.88, false), ph: (4.6, true, 5.0, true), needs_none: true },
        row: Row {
            table: "shelf/interaction-b",
            key: "aw-below-0-88-ph-above-4-6-5-0",
            printed: "water activity <0.88, pH >4.6-5.0: non-TCS",
            citation: Citation { source: &sources::FOODCODE2022_CH1, place: "1-201.10(B), Table B, row aw <0.88", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Cell { activity: (0.0, false, 0.88, false), ph: (5.0, true, 14.0, true), needs_none: true },
        row: Row {
            table: "shelf/interaction-b",
            key: "aw-below-0-88-ph-above-5-0",
            printed: "water activity <0.88, pH >5.0: non-TCS",
            citation: Citation { source: &sources::FOODCODE2022_CH1, place: "1-201.10(B), Table B, row aw <0.88", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Cell { activity: (0.88, false, 0.9, true), ph: (0.0, false, 4.2, false), needs_none: true },
        row: Row {
            table: "shelf/interaction-b",
            key: "aw-0-88-0-90-ph-below-4-2",
            printed: "water activity 0.88-0.90, pH <4.2: non-TCS",
            citation: Citation { source: &sources::FOODCODE2022_CH1, place: "1-201.10(B), Table B, row aw 0.88-0.90", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Cell { activity: (0.88, false, 0.9, true), ph: (4.2, false, 4.6, true), needs_none: true },
        row: Row {
            table: "shelf/interaction-b",
            key: "aw-0-88-0-90-ph-4-2-4-6",
            printed: "water activity 0.88-0.90, pH 4.2-4.6: non-TCS",
            citation: Citation { source: &sources::FOODCODE2022_CH1, place: "1-201.10(B), Table B, row aw 0.88-0.90", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Cell { activity: (0.88, false, 0.9, true), ph: (4.6, true, 5.0, true), needs_none: true },
        row: Row {
            table: "shelf/interaction-b",
            key: "aw-0-88-0-90-ph-above-4-6-5-0",
            printed: "water activity 0.88-0.90, pH >4.6-5.0: non-TCS",
            citation: Citation { source: &sources::FOODCODE2022_CH1, place: "1-201.10(B), Table B, row aw 0.88-0.90", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Cell { activity: (0.88, false, 0.9, true), ph: (5.0, true, 14.0, true), needs_none: false },
        row: Row {
            table: "shelf/interaction-b",
            key: "aw-0-88-0-90-ph-above-5-0",
            printed: "water activity 0.88-0.90, pH >5.0: PA",
            citation: Citation { source: &sources::FOODCODE2022_CH1, place: "1-201.10(B), Table B, row aw 0.88-0.90", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Cell { activity: (0.9, true, 0.92, true), ph: (0.0, false, 4.2, false), needs_none: true },
        row: Row {
            table: "shelf/interaction-b",
            key: "aw-above-0-90-0-92-ph-below-4-2",
            printed: "water activity >0.90-0.92, pH <4.2: non-TCS",
            citation: Citation { source: &sources::FOODCODE2022_CH1, place: "1-201.10(B), Table B, row aw >0.90-0.92", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Cell { activity: (0.9, true, 0.92, true), ph: (4.2, false, 4.6, true), needs_none: true },
        row: Row {
            table: "shelf/interaction-b",
            key: "aw-above-0-90-0-92-ph-4-2-4-6",
            printed: "water activity >0.90-0.92, pH 4.2-4.6: non-TCS",
            citation: Citation { source: &sources::FOODCODE2022_CH1, place: "1-201.10(B), Table B, row aw >0.90-0.92", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Cell { activity: (0.9, true, 0.92, true), ph: (4.6, true, 5.0, true), needs_none: false },
        row: Row {
            table: "shelf/interaction-b",
            key: "aw-above-0-90-0-92-ph-above-4-6-5-0",
            printed: "water activity >0.90-0.92, pH >4.6-5.0: PA",
            citation: Citation { source: &sources::FOODCODE2022_CH1, place: "1-201.10(B), Table B, row aw >0.90-0.92", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Cell { activity: (0.9, true, 0.92, true), ph: (5.0, true, 14.0, true), needs_none: false },
        row: Row {
            table: "shelf/interaction-b",
            key: "aw-above-0-90-0-92-ph-above-5-0",
            printed: "water activity >0.90-0.92, pH >5.0: PA",
            citation: Citation { source: &sources::FOODCODE2022_CH1, place: "1-201.10(B), Table B, row aw >0.90-0.92", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Cell { activity: (0.92, true, 1.0, true), ph: (0.0, false, 4.2, false), needs_none: true },
        row: Row {
            table: "shelf/interaction-b",
            key: "aw-above-0-92-ph-below-4-2",
            printed: "water activity >0.92, pH <4.2: non-TCS",
            citation: Citation { source: &sources::FOODCODE2022_CH1, place: "1-201.10(B), Table B, row aw >0.92", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Cell { activity: (0.92, true, 1.0, true), ph: (4.2, false, 4.6, true), needs_none: false },
        row: Row {
            table: "shelf/interaction-b",
            key: "aw-above-0-92-ph-4-2-4-6",
            printed: "water activity >0.92, pH 4.2-4.6: PA",
            citation: Citation { source: &sources::FOODCODE2022_CH1, place: "1-201.10(B), Table B, row aw >0.92", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Cell { activity: (0.92, true, 1.0, true), ph: (4.6, true, 5.0, true), needs_none: false },
        row: Row {
            table: "shelf/interaction-b",
            key: "aw-above-0-92-ph-above-4-6-5-0",
            printed: "water activity >0.92, pH >4.6-5.0: PA",
            citation: Citation { source: &sources::FOODCODE2022_CH1, place: "1-201.10(B), Table B, row aw >0.92", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Cell { activity: (0.92, true, 1.0, true), ph: (5.0, true, 14.0, true), needs_none: false },
        row: Row {
            table: "shelf/interaction-b",
            key: "aw-above-0-92-ph-above-5-0",
            printed: "water activity >0.92, pH >5.0: PA",
            citation: Citation { source: &sources::FOODCODE2022_CH1, place: "1-201.10(B), Table B, row aw >0.92", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Barriers of reduced-oxygen packs, Food Code 2022
pub static PACKAGING_BARRIERS_ACTIVITY: Cited<f64> = Cited {
        value: 0.91,
        row: Row {
            table: "shelf/packaging-barriers",
            key: "aw",
            printed: "water activity at most 0.91",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-502.12(B)(2)(a)-(d)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Barriers of reduced-oxygen packs, Food Code 2022
pub static PACKAGING_BARRIERS_PH: Cited<f64> = Cited {
        value: 4.6,
        row: Row {
            table: "shelf/packaging-barriers",
            key: "ph",
            printed: "pH at most 4.6",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-502.12(B)(2)(a)-(d)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };
