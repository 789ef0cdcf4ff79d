// Made from references/ by references/pipeline. Do not edit: change the reference file.

use crate::cite::{Citation, Cited, InForce, Row, Seen, Standing, sources};
use super::{Cell, ShelfStable};
use crate::finding::Limit;
use crate::units::{PrintedTemperature, Time, days, hours};

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

/// Packs without air
pub static PACKS_ELSEWHERE_UK: Cited<Time> = Cited {
        value: days(10.0),
        row: Row {
            table: "shelf/packs-elsewhere",
            key: "uk-10-day-rule",
            printed: "UK, 10-day rule: maximum 10 days",
            citation: Citation { source: &sources::FSA_VP_2008_FACTSHEET, place: "how can the risk be minimised", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Packs without air
pub static PACKS_ELSEWHERE_UK_FRESH: Cited<Time> = Cited {
        value: days(13.0),
        row: Row {
            table: "shelf/packs-elsewhere",
            key: "uk-fresh-red-meat-default",
            printed: "UK, fresh red meat default: 13 day maximum",
            citation: Citation { source: &sources::CFA_2021, place: "first paragraph", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "does NOT cover mince, cooked, herbed, spiced or cured meat: those stay under the 10-day rule",
        },
    };

/// Packs without air
pub static PACKS_ELSEWHERE_UK_PH: Cited<f64> = Cited {
        value: 5.0,
        row: Row {
            table: "shelf/packs-elsewhere",
            key: "uk-longer-life-ph",
            printed: "UK, longer life: pH: pH 5.0 or less",
            citation: Citation { source: &sources::VP_CONTROLS_SUMMARY, place: "list of controls", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Packs without air
pub static PACKS_ELSEWHERE_UK_SALT: Cited<f64> = Cited {
        value: 3.5,
        row: Row {
            table: "shelf/packs-elsewhere",
            key: "uk-longer-life-salt",
            printed: "UK, longer life: salt: 3.5 % minimum",
            citation: Citation { source: &sources::VP_CONTROLS_SUMMARY, place: "list of controls", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "the FSA text means salt-on-water, not salt on product weight (that qualifier is memory)",
        },
    };

/// Packs without air
pub static PACKS_ELSEWHERE_UK_ACTIVITY: Cited<f64> = Cited {
        value: 0.97,
        row: Row {
            table: "shelf/packs-elsewhere",
            key: "uk-longer-life-water-activity",
            printed: "UK, longer life: water activity: aw 0.97 or less",
            citation: Citation { source: &sources::VP_CONTROLS_SUMMARY, place: "list of controls", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Packs without air
pub static PACKS_ELSEWHERE_OLDER: Cited<Time> = Cited {
        value: days(14.0),
        row: Row {
            table: "shelf/packs-elsewhere",
            key: "us-older-food-code-edition",
            printed: "US, older Food Code edition: up to 14 days at 41 F or less",
            citation: Citation { source: &sources::COUNTY_ROP_SHEET, place: "first block", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "superseded by 30 days; still quoted",
        },
    };

/// Packs without air in shops, Food Code 2022
pub static PACKS_FOOD_CODE_LIFE: Cited<Time> = Cited {
        value: days(30.0),
        row: Row {
            table: "shelf/packs-food-code",
            key: "rop-life-30d",
            printed: "30 calendar days from packaging to consumption, frozen time not counted, or the maker date if earlier",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-502.12(B)(3)-(4)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Packs without air in shops, Food Code 2022
pub static PACKS_FOOD_CODE_FISH: Cited<()> = Cited {
        value: (),
        row: Row {
            table: "shelf/packs-food-code",
            key: "rop-fish",
            printed: "no ROP of fish unless frozen before, during and after packaging and labelled to be kept frozen",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-502.12(C)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Packs without air in shops, Food Code 2022
pub static PACKS_FOOD_CODE_COLD: Cited<PrintedTemperature> = Cited {
        value: PrintedTemperature::Both(34.0, 1.0),
        row: Row {
            table: "shelf/packs-food-code",
            key: "cookchill-34f",
            printed: "to 34 F within 48 h of reaching 41 F, held there, used within 30 days of packaging, 34 °F",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-502.12(D)(2)(e)(i)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Packs without air in shops, Food Code 2022
pub static PACKS_FOOD_CODE_COLD_WITHIN: Cited<Time> = Cited {
        value: hours(48.0),
        row: Row {
            table: "shelf/packs-food-code",
            key: "cookchill-34f",
            printed: "to 34 F within 48 h of reaching 41 F, held there, used within 30 days of packaging, 34 °F",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-502.12(D)(2)(e)(i)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Packs without air in shops, Food Code 2022
pub static PACKS_FOOD_CODE_COLD_DAYS: Cited<Time> = Cited {
        value: days(30.0),
        row: Row {
            table: "shelf/packs-food-code",
            key: "cookchill-34f",
            printed: "to 34 F within 48 h of reaching 41 F, held there, used within 30 days of packaging, 34 °F",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-502.12(D)(2)(e)(i)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Packs without air in shops, Food Code 2022
pub static PACKS_FOOD_CODE_WEEK: Cited<PrintedTemperature> = Cited {
        value: PrintedTemperature::Both(41.0, 5.0),
        row: Row {
            table: "shelf/packs-food-code",
            key: "cookchill-41f-7d",
            printed: "or at 41 F or less for no more than 7 days, 41 °F",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-502.12(D)(2)(e)(ii)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Packs without air in shops, Food Code 2022
pub static PACKS_FOOD_CODE_WEEK_DAYS: Cited<Time> = Cited {
        value: days(7.0),
        row: Row {
            table: "shelf/packs-food-code",
            key: "cookchill-41f-7d",
            printed: "or at 41 F or less for no more than 7 days, 41 °F",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-502.12(D)(2)(e)(ii)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Packs without air in shops, Food Code 2022
pub static PACKS_FOOD_CODE_CHEESE: Cited<Time> = Cited {
        value: days(30.0),
        row: Row {
            table: "shelf/packs-food-code",
            key: "rop-cheese",
            printed: "commercial hard, pasteurized process or semisoft cheese with nothing added, use-by at most 30 days from packaging",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-502.12(E), end in the file named 8-201.14", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Packs without air in shops, Food Code 2022
pub static PACKS_FOOD_CODE_OPENED: Cited<PrintedTemperature> = Cited {
        value: PrintedTemperature::Both(41.0, 5.0),
        row: Row {
            table: "shelf/packs-food-code",
            key: "rop-48h",
            printed: "no HACCP plan if always labelled with time and date made, held at 41 F or less and taken out of the package within 48 h, 41 °F",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-502.12(F), in the file named 8-201.14", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Packs without air in shops, Food Code 2022
pub static PACKS_FOOD_CODE_OPENED_TIME: Cited<Time> = Cited {
        value: hours(48.0),
        row: Row {
            table: "shelf/packs-food-code",
            key: "rop-48h",
            printed: "no HACCP plan if always labelled with time and date made, held at 41 F or less and taken out of the package within 48 h, 41 °F",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-502.12(F), in the file named 8-201.14", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Shelf stable without cold
pub static SHELF_STABLE_ACIDIFIED: Cited<ShelfStable> = Cited {
        value: ShelfStable { ph: Some(Limit::AtMost(4.6)), activity: None, only_above: Some(0.85), salt: None, both: None },
        row: Row {
            table: "shelf/shelf-stable",
            key: "acidified",
            printed: "acidified food: finished equilibrium pH: ph max 4.6, and aw above 0.85",
            citation: Citation { source: &sources::CFR_114_3, place: "(b)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "foods stored, distributed and retailed refrigerated are outside the part",
        },
    };

/// Shelf stable without cold
pub static SHELF_STABLE_SEAFOOD: Cited<ShelfStable> = Cited {
        value: ShelfStable { ph: Some(Limit::Below(4.6)), activity: Some(Limit::Below(0.85)), only_above: None, salt: Some(20.0), both: None },
        row: Row {
            table: "shelf/shelf-stable",
            key: "seafood-shelf-stable",
            printed: "seafood shelf stable: aw below 0.85, or wps percent min 20, or ph below 4.6",
            citation: Citation { source: &sources::AK_18AAC34, place: "34.122(6)(B)-(C)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Shelf stable without cold
pub static SHELF_STABLE_CANADA: Cited<ShelfStable> = Cited {
        value: ShelfStable { ph: Some(Limit::AtMost(4.6)), activity: Some(Limit::AtMost(0.85)), only_above: None, salt: None, both: Some((5.3, 0.9)) },
        row: Row {
            table: "shelf/shelf-stable",
            key: "canada",
            printed: "pH at most 4.6, or water activity at most 0.85, or pH at most 5.3 with water activity at most 0.90",
            citation: Citation { source: &sources::CFIA_FERM_NOTE, place: "digest, last paragraph", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "weak",
        },
    };
