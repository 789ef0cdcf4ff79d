// Made from references/ by references/pipeline. Do not edit: change the reference file.

use crate::cite::{Citation, Cited, Date, InForce, Row, Seen, Standing, sources};
use super::{FreezerTime, FridgeTime, Keeps, Storage};
use crate::units::PrintedTemperature;

/// Cold food storage chart, United States
pub static COLD_FOOD: [Cited<Storage>; 58] = [
    Cited {
        value: Storage { item: "salad: egg, chicken, ham, tuna and macaroni salads", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "3 to 4 days", days: Some((3.0, 4.0)) }), freeze: FreezerTime(Keeps { printed: "does not freeze well", days: None }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "salad/mixed",
            printed: "refrigerator: 3 to 4 days; freezer: does not freeze well",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "row salad (HHS feed and print)", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "hot dogs: opened package", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "1 week", days: Some((7.0, 7.0)) }), freeze: FreezerTime(Keeps { printed: "1 to 2 months", days: Some((30.0, 60.0)) }), counted_from: "date opened" },
        row: Row {
            table: "store/cold-food",
            key: "hot-dogs/opened",
            printed: "refrigerator: 1 week; freezer: 1 to 2 months",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "hot dogs row 1", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "hot dogs: unopened package", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "2 weeks", days: Some((14.0, 14.0)) }), freeze: FreezerTime(Keeps { printed: "1 to 2 months", days: Some((30.0, 60.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "hot-dogs/unopened",
            printed: "refrigerator: 2 weeks; freezer: 1 to 2 months",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "hot dogs row 2", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "luncheon meat: opened package or deli sliced", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "3 to 5 days", days: Some((3.0, 5.0)) }), freeze: FreezerTime(Keeps { printed: "1 to 2 months", days: Some((30.0, 60.0)) }), counted_from: "date opened or sliced" },
        row: Row {
            table: "store/cold-food",
            key: "luncheon-meat/opened",
            printed: "refrigerator: 3 to 5 days; freezer: 1 to 2 months",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "luncheon meat row 1", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "luncheon meat: unopened package", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "2 weeks", days: Some((14.0, 14.0)) }), freeze: FreezerTime(Keeps { printed: "1 to 2 months", days: Some((30.0, 60.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "luncheon-meat/unopened",
            printed: "refrigerator: 2 weeks; freezer: 1 to 2 months",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "luncheon meat row 2", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "bacon and sausage: bacon", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "1 week", days: Some((7.0, 7.0)) }), freeze: FreezerTime(Keeps { printed: "1 month", days: Some((30.0, 30.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "bacon",
            printed: "refrigerator: 1 week; freezer: 1 month",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "bacon and sausage row 1", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "bacon and sausage: sausage, raw, of chicken, turkey, pork or beef", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "1 to 2 days", days: Some((1.0, 2.0)) }), freeze: FreezerTime(Keeps { printed: "1 to 2 months", days: Some((30.0, 60.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "sausage/raw",
            printed: "refrigerator: 1 to 2 days; freezer: 1 to 2 months",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "bacon and sausage row 2", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "bacon and sausage: sausage, fully cooked, of chicken, turkey, pork or beef", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "1 week", days: Some((7.0, 7.0)) }), freeze: FreezerTime(Keeps { printed: "1 to 2 months", days: Some((30.0, 60.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "sausage/cooked",
            printed: "refrigerator: 1 week; freezer: 1 to 2 months",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "bacon and sausage row 3", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "bacon and sausage: sausage, purchased frozen", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "3 to 4 days", days: Some((3.0, 4.0)) }), freeze: FreezerTime(Keeps { printed: "1 to 2 months", days: Some((30.0, 60.0)) }), counted_from: "refrigerate: after cooking; freeze: from date of purchase" },
        row: Row {
            table: "store/cold-food",
            key: "sausage/bought-frozen",
            printed: "refrigerator: 3 to 4 days; freezer: 1 to 2 months",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "bacon and sausage row 4", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "ground meat: hamburger and ground beef, turkey, chicken, other poultry, veal, pork, lamb and mixtures", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "1 to 2 days", days: Some((1.0, 2.0)) }), freeze: FreezerTime(Keeps { printed: "3 to 4 months", days: Some((90.0, 120.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "ground-meat/any",
            printed: "refrigerator: 1 to 2 days; freezer: 3 to 4 months",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "ground meats and ground poultry row", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "fresh beef, veal, lamb, pork: steaks", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "3 to 5 days", days: Some((3.0, 5.0)) }), freeze: FreezerTime(Keeps { printed: "4 to 12 months", days: Some((120.0, 360.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "fresh-meat/steaks",
            printed: "refrigerator: 3 to 5 days; freezer: 4 to 12 months",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "fresh meat row steaks", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "fresh beef, veal, lamb, pork: chops", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "3 to 5 days", days: Some((3.0, 5.0)) }), freeze: FreezerTime(Keeps { printed: "4 to 12 months", days: Some((120.0, 360.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "fresh-meat/chops",
            printed: "refrigerator: 3 to 5 days; freezer: 4 to 12 months",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "fresh meat row chops", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "fresh beef, veal, lamb, pork: roasts", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "3 to 5 days", days: Some((3.0, 5.0)) }), freeze: FreezerTime(Keeps { printed: "4 to 12 months", days: Some((120.0, 360.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "fresh-meat/roasts",
            printed: "refrigerator: 3 to 5 days; freezer: 4 to 12 months",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "fresh meat row roasts", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "ham: fresh, uncured, uncooked", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "3 to 5 days", days: Some((3.0, 5.0)) }), freeze: FreezerTime(Keeps { printed: "6 months", days: Some((180.0, 180.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "ham/fresh-uncooked",
            printed: "refrigerator: 3 to 5 days; freezer: 6 months",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "ham row 1", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "ham: fresh, uncured, cooked", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "3 to 4 days", days: Some((3.0, 4.0)) }), freeze: FreezerTime(Keeps { printed: "3 to 4 months", days: Some((90.0, 120.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "ham/fresh-cooked",
            printed: "refrigerator: 3 to 4 days; freezer: 3 to 4 months",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "ham row 2", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "ham: cured, cook before eating, uncooked", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "5 to 7 days", days: Some((5.0, 7.0)) }), freeze: FreezerTime(Keeps { printed: "3 to 4 months", days: Some((90.0, 120.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "ham/cured-uncooked",
            printed: "refrigerator: 5 to 7 days; freezer: 3 to 4 months",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "ham row 3", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "or the use-by date",
        },
    },
    Cited {
        value: Storage { item: "ham: fully cooked, vacuum sealed at plant, unopened", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "2 weeks", days: Some((14.0, 14.0)) }), freeze: FreezerTime(Keeps { printed: "1 to 2 months", days: Some((30.0, 60.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "ham/plant-sealed-unopened",
            printed: "refrigerator: 2 weeks; freezer: 1 to 2 months",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "ham row 4", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "or the use-by date; the chart has no row for the same ham after opening",
        },
    },
    Cited {
        value: Storage { item: "ham: cooked, store wrapped, whole", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "1 week", days: Some((7.0, 7.0)) }), freeze: FreezerTime(Keeps { printed: "1 to 2 months", days: Some((30.0, 60.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "ham/store-wrapped-whole",
            printed: "refrigerator: 1 week; freezer: 1 to 2 months",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "ham row 5", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "ham: cooked, store wrapped, slices, half or spiral cut", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "3 to 5 days", days: Some((3.0, 5.0)) }), freeze: FreezerTime(Keeps { printed: "1 to 2 months", days: Some((30.0, 60.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "ham/store-wrapped-cut",
            printed: "refrigerator: 3 to 5 days; freezer: 1 to 2 months",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "ham row 6", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "ham: country ham, cooked", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "1 week", days: Some((7.0, 7.0)) }), freeze: FreezerTime(Keeps { printed: "1 month", days: Some((30.0, 30.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "ham/country-cooked",
            printed: "refrigerator: 1 week; freezer: 1 month",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "ham row 7", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "ham: canned, labelled keep refrigerated, unopened", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "6 to 9 months", days: Some((180.0, 270.0)) }), freeze: FreezerTime(Keeps { printed: "do not freeze", days: None }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "ham/canned-refrigerated-unopened",
            printed: "refrigerator: 6 to 9 months; freezer: do not freeze",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "ham row 8", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "ham: canned, shelf stable, opened", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "3 to 4 days", days: Some((3.0, 4.0)) }), freeze: FreezerTime(Keeps { printed: "1 to 2 months", days: Some((30.0, 60.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "ham/canned-shelf-stable-opened",
            printed: "refrigerator: 3 to 4 days; freezer: 1 to 2 months",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "ham row 9", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "unopened shelf-stable can: room temperature 2 years (earlier edition said 6 to 9 months)",
        },
    },
    Cited {
        value: Storage { item: "ham: prosciutto, Parma or Serrano type, dry, cut", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "2 to 3 months", days: Some((60.0, 90.0)) }), freeze: FreezerTime(Keeps { printed: "1 month", days: Some((30.0, 30.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "ham/dry-cut",
            printed: "refrigerator: 2 to 3 months; freezer: 1 month",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "ham row 10", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "fresh poultry: chicken or turkey, whole", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "1 to 2 days", days: Some((1.0, 2.0)) }), freeze: FreezerTime(Keeps { printed: "1 year", days: Some((365.0, 365.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "poultry/whole",
            printed: "refrigerator: 1 to 2 days; freezer: 1 year",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "poultry row 1", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "fresh poultry: chicken or turkey, pieces", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "1 to 2 days", days: Some((1.0, 2.0)) }), freeze: FreezerTime(Keeps { printed: "9 months", days: Some((270.0, 270.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "poultry/pieces",
            printed: "refrigerator: 1 to 2 days; freezer: 9 months",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "poultry row 2", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "fin fish: fatty fish (bluefish, catfish, mackerel, mullet, salmon, tuna)", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "1 to 3 days", days: Some((1.0, 3.0)) }), freeze: FreezerTime(Keeps { printed: "2 to 3 months", days: Some((60.0, 90.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "fish/fatty",
            printed: "refrigerator: 1 to 3 days; freezer: 2 to 3 months",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "fin fish row 1", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "fin fish: lean fish (cod, flounder, haddock, halibut, sole)", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "1 to 3 days", days: Some((1.0, 3.0)) }), freeze: FreezerTime(Keeps { printed: "6 to 8 months", days: Some((180.0, 240.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "fish/lean-cod-flounder-haddock",
            printed: "refrigerator: 1 to 3 days; freezer: 6 to 8 months",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "fin fish row 2, read in a parser fixture of the page", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "fin fish: lean fish (pollock, ocean perch, rockfish, sea trout)", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "1 to 3 days", days: Some((1.0, 3.0)) }), freeze: FreezerTime(Keeps { printed: "4 to 8 months", days: Some((120.0, 240.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "fish/lean-pollock-perch-rockfish",
            printed: "refrigerator: 1 to 3 days; freezer: 4 to 8 months",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "fin fish row 3", standing: Standing::Guidance, seen: Seen::Memory },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "shellfish: fresh crab meat", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "2 to 4 days", days: Some((2.0, 4.0)) }), freeze: FreezerTime(Keeps { printed: "2 to 4 months", days: Some((60.0, 120.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "shellfish/fresh-crab-meat",
            printed: "refrigerator: 2 to 4 days; freezer: 2 to 4 months",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "shellfish row 1", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "shellfish: fresh lobster", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "2 to 4 days", days: Some((2.0, 4.0)) }), freeze: FreezerTime(Keeps { printed: "2 to 4 months", days: Some((60.0, 120.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "shellfish/fresh-lobster",
            printed: "refrigerator: 2 to 4 days; freezer: 2 to 4 months",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "shellfish row 2", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "shellfish: live crab, lobster", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "1 day", days: Some((1.0, 1.0)) }), freeze: FreezerTime(Keeps { printed: "not recommended", days: None }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "shellfish/live-crab-lobster",
            printed: "refrigerator: 1 day; freezer: not recommended",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "shellfish row 3", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "shellfish: live clams, mussels, oysters, scallops", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "5 to 10 days", days: Some((5.0, 10.0)) }), freeze: FreezerTime(Keeps { printed: "not recommended", days: None }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "shellfish/live-clams-mussels-oysters-scallops",
            printed: "refrigerator: 5 to 10 days; freezer: not recommended",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "shellfish row 4", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "shellfish: shrimp, crayfish", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "3 to 5 days", days: Some((3.0, 5.0)) }), freeze: FreezerTime(Keeps { printed: "6 to 18 months", days: Some((180.0, 540.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "shellfish/shrimp-crayfish",
            printed: "refrigerator: 3 to 5 days; freezer: 6 to 18 months",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "shellfish row 5", standing: Standing::Guidance, seen: Seen::Memory },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "shellfish: shucked clams, mussels, oysters, scallops", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "3 to 10 days", days: Some((3.0, 10.0)) }), freeze: FreezerTime(Keeps { printed: "3 to 4 months", days: Some((90.0, 120.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "shellfish/shucked-clams-mussels-oysters-scallops",
            printed: "refrigerator: 3 to 10 days; freezer: 3 to 4 months",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "shellfish row 6", standing: Standing::Guidance, seen: Seen::Memory },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "shellfish: squid", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "1 to 3 days", days: Some((1.0, 3.0)) }), freeze: FreezerTime(Keeps { printed: "6 to 18 months", days: Some((180.0, 540.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "shellfish/squid",
            printed: "refrigerator: 1 to 3 days; freezer: 6 to 18 months",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "shellfish row 7", standing: Standing::Guidance, seen: Seen::Memory },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "eggs: raw, in shell", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "3 to 5 weeks", days: Some((21.0, 35.0)) }), freeze: FreezerTime(Keeps { printed: "do not freeze in shell; beat yolks and whites together, then freeze", days: None }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "eggs/raw-in-shell",
            printed: "refrigerator: 3 to 5 weeks; freezer: do not freeze in shell; beat yolks and whites together, then freeze",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "eggs row 1", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "eggs: raw whites and yolks", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "2 to 4 days", days: Some((2.0, 4.0)) }), freeze: FreezerTime(Keeps { printed: "12 months", days: Some((360.0, 360.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "eggs/raw-whites-and-yolks",
            printed: "refrigerator: 2 to 4 days; freezer: 12 months",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "eggs row 2", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "yolks do not freeze well (earlier print)",
        },
    },
    Cited {
        value: Storage { item: "eggs: hard cooked", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "1 week", days: Some((7.0, 7.0)) }), freeze: FreezerTime(Keeps { printed: "do not freeze", days: None }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "eggs/hard-cooked",
            printed: "refrigerator: 1 week; freezer: do not freeze",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "eggs row; earlier egg chart copy", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "eggs: egg substitutes, liquid, unopened", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "1 week", days: Some((7.0, 7.0)) }), freeze: FreezerTime(Keeps { printed: "do not freeze", days: None }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "eggs/egg-substitutes-liquid-unopened",
            printed: "refrigerator: 1 week; freezer: do not freeze",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "eggs row", standing: Standing::Guidance, seen: Seen::Memory },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "the earlier edition said 10 days and 12 months",
        },
    },
    Cited {
        value: Storage { item: "eggs: egg substitutes, liquid, opened", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "3 days", days: Some((3.0, 3.0)) }), freeze: FreezerTime(Keeps { printed: "do not freeze", days: None }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "eggs/egg-substitutes-liquid-opened",
            printed: "refrigerator: 3 days; freezer: do not freeze",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "eggs row", standing: Standing::Guidance, seen: Seen::Memory },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "eggs: casseroles with eggs, after baking", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "3 to 4 days", days: Some((3.0, 4.0)) }), freeze: FreezerTime(Keeps { printed: "2 to 3 months", days: Some((60.0, 90.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "eggs/casseroles-with-eggs-after-baking",
            printed: "refrigerator: 3 to 4 days; freezer: 2 to 3 months",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "eggs row; earlier egg chart copies", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "eggs: quiche, after baking", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "3 to 5 days", days: Some((3.0, 5.0)) }), freeze: FreezerTime(Keeps { printed: "2 to 3 months", days: Some((60.0, 90.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "eggs/quiche-after-baking",
            printed: "refrigerator: 3 to 5 days; freezer: 2 to 3 months",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "eggs row", standing: Standing::Guidance, seen: Seen::Memory },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "earlier copies: 3 to 4 days and 1 to 2 months",
        },
    },
    Cited {
        value: Storage { item: "soups and stews: with vegetables or meat", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "3 to 4 days", days: Some((3.0, 4.0)) }), freeze: FreezerTime(Keeps { printed: "2 to 3 months", days: Some((60.0, 90.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "soup-or-stew",
            printed: "refrigerator: 3 to 4 days; freezer: 2 to 3 months",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "soups and stews row", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "leftovers: cooked meat or poultry", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "3 to 4 days", days: Some((3.0, 4.0)) }), freeze: FreezerTime(Keeps { printed: "2 to 6 months", days: Some((60.0, 180.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "leftovers/meat-or-poultry",
            printed: "refrigerator: 3 to 4 days; freezer: 2 to 6 months",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "leftovers row 1", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "leftovers: chicken nuggets or patties", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "3 to 4 days", days: Some((3.0, 4.0)) }), freeze: FreezerTime(Keeps { printed: "1 to 3 months", days: Some((30.0, 90.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "leftovers/nuggets-or-patties",
            printed: "refrigerator: 3 to 4 days; freezer: 1 to 3 months",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "leftovers row 2", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "leftovers: pizza", edition: "2023", refrigerate: FridgeTime(Keeps { printed: "3 to 4 days", days: Some((3.0, 4.0)) }), freeze: FreezerTime(Keeps { printed: "1 to 2 months", days: Some((30.0, 60.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "leftovers/pizza",
            printed: "refrigerator: 3 to 4 days; freezer: 1 to 2 months",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "leftovers row 3", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "egg, chicken, ham, tuna, macaroni salads", edition: "2010", refrigerate: FridgeTime(Keeps { printed: "3 to 5 days", days: Some((3.0, 5.0)) }), freeze: FreezerTime(Keeps { printed: "does not freeze well", days: None }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "salad/mixed@2010",
            printed: "refrigerator: 3 to 5 days; freezer: does not freeze well",
            citation: Citation { source: &sources::FOODSAFETY_CHART_C2010, place: "row of the same name", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, Some(Date::printed(2023, 9, 19))),
            note: "Superseded. Shortened.",
        },
    },
    Cited {
        value: Storage { item: "steaks", edition: "2010", refrigerate: FridgeTime(Keeps { printed: "3 to 5 days", days: Some((3.0, 5.0)) }), freeze: FreezerTime(Keeps { printed: "6 to 12 months", days: Some((180.0, 360.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "fresh-meat/steaks@2010",
            printed: "refrigerator: 3 to 5 days; freezer: 6 to 12 months",
            citation: Citation { source: &sources::FOODSAFETY_CHART_C2010, place: "row of the same name", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, Some(Date::printed(2023, 9, 19))),
            note: "Superseded. ",
        },
    },
    Cited {
        value: Storage { item: "chops", edition: "2010", refrigerate: FridgeTime(Keeps { printed: "3 to 5 days", days: Some((3.0, 5.0)) }), freeze: FreezerTime(Keeps { printed: "4 to 6 months", days: Some((120.0, 180.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "fresh-meat/chops@2010",
            printed: "refrigerator: 3 to 5 days; freezer: 4 to 6 months",
            citation: Citation { source: &sources::FOODSAFETY_CHART_C2010, place: "row of the same name", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, Some(Date::printed(2023, 9, 19))),
            note: "Superseded. ",
        },
    },
    Cited {
        value: Storage { item: "ham, fully cooked, vacuum sealed at plant, unopened", edition: "2019", refrigerate: FridgeTime(Keeps { printed: "use-by date only", days: None }), freeze: FreezerTime(Keeps { printed: "1 to 2 months", days: Some((30.0, 60.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "ham/plant-sealed-unopened@2019",
            printed: "refrigerator: use-by date only; freezer: 1 to 2 months",
            citation: Citation { source: &sources::FOODSAFETY_CHART_C2019, place: "row of the same name", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2023, 9, 19))),
            note: "Superseded. ",
        },
    },
    Cited {
        value: Storage { item: "ham, cooked, store wrapped, slices, half or spiral cut", edition: "2019", refrigerate: FridgeTime(Keeps { printed: "3 to 4 days", days: Some((3.0, 4.0)) }), freeze: FreezerTime(Keeps { printed: "1 to 2 months", days: Some((30.0, 60.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "ham/store-wrapped-cut@2019",
            printed: "refrigerator: 3 to 4 days; freezer: 1 to 2 months",
            citation: Citation { source: &sources::FOODSAFETY_CHART_C2019, place: "row of the same name", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2023, 9, 19))),
            note: "Superseded. Lengthened by a day.",
        },
    },
    Cited {
        value: Storage { item: "ham, canned, shelf stable, opened", edition: "2019", refrigerate: FridgeTime(Keeps { printed: "5 to 14 days", days: Some((5.0, 14.0)) }), freeze: FreezerTime(Keeps { printed: "1 to 2 months", days: Some((30.0, 60.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "ham/canned-shelf-stable-opened@2019",
            printed: "refrigerator: 5 to 14 days; freezer: 1 to 2 months",
            citation: Citation { source: &sources::FOODSAFETY_CHART_C2019, place: "row of the same name", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2023, 9, 19))),
            note: "Superseded: shortened from up to 14 days to 4. An old table is unsafe here.",
        },
    },
    Cited {
        value: Storage { item: "ham, canned, shelf stable, unopened at room temperature", edition: "2019", refrigerate: FridgeTime(Keeps { printed: "6 to 9 months", days: Some((180.0, 270.0)) }), freeze: FreezerTime(Keeps { printed: "not given", days: None }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "ham/canned-shelf-stable-unopened-room-temperature@2019",
            printed: "refrigerator: 6 to 9 months; freezer: not given",
            citation: Citation { source: &sources::FOODSAFETY_CHART_C2019, place: "row of the same name", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2023, 9, 19))),
            note: "Superseded by 2 years. The time is at room temperature, not in a refrigerator.",
        },
    },
    Cited {
        value: Storage { item: "sausage, purchased frozen", edition: "2019", refrigerate: FridgeTime(Keeps { printed: "no row", days: None }), freeze: FreezerTime(Keeps { printed: "no row", days: None }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "sausage/bought-frozen@2019",
            printed: "refrigerator: no row; freezer: no row",
            citation: Citation { source: &sources::FOODSAFETY_CHART_C2019, place: "row of the same name", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2023, 9, 19))),
            note: "Superseded. Row added; refrigerator time counts after cooking.",
        },
    },
    Cited {
        value: Storage { item: "fin fish", edition: "2006", refrigerate: FridgeTime(Keeps { printed: "1 to 2 days", days: Some((1.0, 2.0)) }), freeze: FreezerTime(Keeps { printed: "3 to 6 months", days: Some((90.0, 180.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "fish/any@2006",
            printed: "refrigerator: 1 to 2 days; freezer: 3 to 6 months",
            citation: Citation { source: &sources::LEAFLET_2006, place: "row of the same name", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, Some(Date::printed(2023, 9, 19))),
            note: "Superseded. The fish and shellfish sections are absent from the c2010, c2019 and 2021 prints and were added by September 2023.",
        },
    },
    Cited {
        value: Storage { item: "ham, fully cooked, slices", edition: "older", refrigerate: FridgeTime(Keeps { printed: "3 to 4 days", days: Some((3.0, 4.0)) }), freeze: FreezerTime(Keeps { printed: "1 to 2 months", days: Some((30.0, 60.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "ham/slices@older",
            printed: "refrigerator: 3 to 4 days; freezer: 1 to 2 months",
            citation: Citation { source: &sources::FSIS_COLD_STORAGE_OLD, place: "row of the same name", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, Some(Date::printed(2023, 9, 19))),
            note: "Superseded. ",
        },
    },
    Cited {
        value: Storage { item: "hard sausage, pepperoni, jerky sticks", edition: "older", refrigerate: FridgeTime(Keeps { printed: "2 to 3 weeks", days: Some((14.0, 21.0)) }), freeze: FreezerTime(Keeps { printed: "1 to 2 months", days: Some((30.0, 60.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "sausage/hard@older",
            printed: "refrigerator: 2 to 3 weeks; freezer: 1 to 2 months",
            citation: Citation { source: &sources::FSIS_COLD_STORAGE_OLD, place: "row of the same name", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, Some(Date::printed(2023, 9, 19))),
            note: "Superseded. Use fsis_sausage_chart for dry sausage.",
        },
    },
    Cited {
        value: Storage { item: "egg substitutes, liquid, unopened", edition: "2010", refrigerate: FridgeTime(Keeps { printed: "10 days", days: Some((10.0, 10.0)) }), freeze: FreezerTime(Keeps { printed: "12 months", days: Some((360.0, 360.0)) }), counted_from: "" },
        row: Row {
            table: "store/cold-food",
            key: "eggs/egg-substitutes-liquid-unopened@2010",
            printed: "refrigerator: 10 days; freezer: 12 months",
            citation: Citation { source: &sources::FOODSAFETY_CHART_C2010, place: "row of the same name", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, Some(Date::printed(2023, 9, 19))),
            note: "Superseded. Newer cell is from memory.",
        },
    },
];

/// Temperatures of a home refrigerator and freezer, United States: the refrigerator, at most.
pub static HOME_REFRIGERATOR: Cited<PrintedTemperature> = Cited {
        value: PrintedTemperature::Both(40.0, 4.0),
        row: Row {
            table: "store/home-temperatures",
            key: "refrigerator",
            printed: "40 °F (4 °C) or below",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "table heading, refrigerator column", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    };

/// Temperatures of a home refrigerator and freezer, United States: the freezer, at most.
pub static HOME_FREEZER: Cited<PrintedTemperature> = Cited {
        value: PrintedTemperature::Both(0.0, -18.0),
        row: Row {
            table: "store/home-temperatures",
            key: "freezer",
            printed: "0 °F (−18 °C) or below",
            citation: Citation { source: &sources::FOODSAFETY_CHART_2023, place: "table heading, freezer column", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2023, 9, 19)), None),
            note: "",
        },
    };
