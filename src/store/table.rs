// Made from references/ by references/pipeline. Do not edit: change the reference file.

use crate::cite::{Citation, Cited, Date, InForce, Row, Seen, Standing, sources};
use super::sauce::GarlicInOil;
use super::freezing::{EquivalentTime, PracticalLife};
use super::thaw::ThawBird;
use super::{ColdHolding, FreezerTime, FridgeTime, Keeps, Storage};
use crate::authority::Authority;
use crate::units::{PrintedTemperature, Time, days, hours, minutes, pounds};

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

/// How cold food is kept
pub static COLD_HOLDING: [Cited<ColdHolding>; 5] = [
    Cited {
        value: ColdHolding { authority: Authority::UsFoodCode2022, fish: false, temperature: PrintedTemperature::Both(41.0, 5.0) },
        row: Row {
            table: "store/cold-holding",
            key: "food-code",
            printed: "cold holding maximum, 41 °F",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-501.16(A)(2)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: ColdHolding { authority: Authority::GreatBritain, fish: false, temperature: PrintedTemperature::Celsius(8.0) },
        row: Row {
            table: "store/cold-holding",
            key: "england",
            printed: "England: chill holding: offence above",
            citation: Citation { source: &sources::UK_2013_2996, place: "Sch 4 para 2(1)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: ColdHolding { authority: Authority::AustraliaNewZealand, fish: false, temperature: PrintedTemperature::Celsius(5.0) },
        row: Row {
            table: "store/cold-holding",
            key: "australia",
            printed: "5 °C or colder",
            citation: Citation { source: &sources::FSANZ_TEMP, place: "Safe temperatures paragraph", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "The cold end of the row of safe temperatures.",
        },
    },
    Cited {
        value: ColdHolding { authority: Authority::UsMaine, fish: true, temperature: PrintedTemperature::Both(38.0, 3.33) },
        row: Row {
            table: "store/cold-holding",
            key: "maine-fish",
            printed: "38 °F (3.3 °C)",
            citation: Citation { source: &sources::ME_359, place: "s.3(A)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: ColdHolding { authority: Authority::UsFda, fish: true, temperature: PrintedTemperature::Both(40.0, 4.4) },
        row: Row {
            table: "store/cold-holding",
            key: "fda-fish-barriers",
            printed: "40 °F (4.4 °C) or below, with the salt or nitrite that the pack rests on",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "chapter 13, pages 246, 252 and 266", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "Where cold is the only barrier it is below 38 °F, and every pack carries its own proof of temperature.",
        },
    },
];

/// Heating equal to 10 minutes at 90 °C
pub static EQUIVALENT_TIME: [Cited<EquivalentTime>; 21] = [
    Cited {
        value: EquivalentTime { celsius: 80.0, time: minutes(129.0) },
        row: Row {
            table: "store/equivalent-time",
            key: "80-c",
            printed: "80 °C: 129 min",
            citation: Citation { source: &sources::FSA_VP_TRAINING, place: "table, 80 C", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: EquivalentTime { celsius: 81.0, time: minutes(100.0) },
        row: Row {
            table: "store/equivalent-time",
            key: "81-c",
            printed: "81 °C: 100 min",
            citation: Citation { source: &sources::FSA_VP_TRAINING, place: "table, 81 C", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: EquivalentTime { celsius: 82.0, time: minutes(77.0) },
        row: Row {
            table: "store/equivalent-time",
            key: "82-c",
            printed: "82 °C: 77 min",
            citation: Citation { source: &sources::FSA_VP_TRAINING, place: "table, 82 C", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: EquivalentTime { celsius: 83.0, time: minutes(60.0) },
        row: Row {
            table: "store/equivalent-time",
            key: "83-c",
            printed: "83 °C: 60 min",
            citation: Citation { source: &sources::FSA_VP_TRAINING, place: "table, 83 C", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: EquivalentTime { celsius: 84.0, time: minutes(46.0) },
        row: Row {
            table: "store/equivalent-time",
            key: "84-c",
            printed: "84 °C: 46 min",
            citation: Citation { source: &sources::FSA_VP_TRAINING, place: "table, 84 C", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: EquivalentTime { celsius: 85.0, time: minutes(36.0) },
        row: Row {
            table: "store/equivalent-time",
            key: "85-c",
            printed: "85 °C: 36 min",
            citation: Citation { source: &sources::FSA_VP_TRAINING, place: "table, 85 C", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: EquivalentTime { celsius: 86.0, time: minutes(28.0) },
        row: Row {
            table: "store/equivalent-time",
            key: "86-c",
            printed: "86 °C: 28 min",
            citation: Citation { source: &sources::FSA_VP_TRAINING, place: "table, 86 C", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: EquivalentTime { celsius: 87.0, time: minutes(22.0) },
        row: Row {
            table: "store/equivalent-time",
            key: "87-c",
            printed: "87 °C: 22 min",
            citation: Citation { source: &sources::FSA_VP_TRAINING, place: "table, 87 C", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: EquivalentTime { celsius: 88.0, time: minutes(17.0) },
        row: Row {
            table: "store/equivalent-time",
            key: "88-c",
            printed: "88 °C: 17 min",
            citation: Citation { source: &sources::FSA_VP_TRAINING, place: "table, 88 C", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: EquivalentTime { celsius: 89.0, time: minutes(13.0) },
        row: Row {
            table: "store/equivalent-time",
            key: "89-c",
            printed: "89 °C: 13 min",
            citation: Citation { source: &sources::FSA_VP_TRAINING, place: "table, 89 C", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: EquivalentTime { celsius: 90.0, time: minutes(10.0) },
        row: Row {
            table: "store/equivalent-time",
            key: "90-c",
            printed: "90 °C: 10 min",
            citation: Citation { source: &sources::FSA_VP_TRAINING, place: "table, 90 C", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: EquivalentTime { celsius: 91.0, time: minutes(7.9) },
        row: Row {
            table: "store/equivalent-time",
            key: "91-c",
            printed: "91 °C: 7.9 min",
            citation: Citation { source: &sources::FSA_VP_TRAINING, place: "table, 91 C", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: EquivalentTime { celsius: 92.0, time: minutes(6.3) },
        row: Row {
            table: "store/equivalent-time",
            key: "92-c",
            printed: "92 °C: 6.3 min",
            citation: Citation { source: &sources::FSA_VP_TRAINING, place: "table, 92 C", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: EquivalentTime { celsius: 93.0, time: minutes(5.0) },
        row: Row {
            table: "store/equivalent-time",
            key: "93-c",
            printed: "93 °C: 5 min",
            citation: Citation { source: &sources::FSA_VP_TRAINING, place: "table, 93 C", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: EquivalentTime { celsius: 94.0, time: minutes(4.0) },
        row: Row {
            table: "store/equivalent-time",
            key: "94-c",
            printed: "94 °C: 4 min",
            citation: Citation { source: &sources::FSA_VP_TRAINING, place: "table, 94 C", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: EquivalentTime { celsius: 95.0, time: minutes(3.2) },
        row: Row {
            table: "store/equivalent-time",
            key: "95-c",
            printed: "95 °C: 3.2 min",
            citation: Citation { source: &sources::FSA_VP_TRAINING, place: "table, 95 C", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: EquivalentTime { celsius: 96.0, time: minutes(2.5) },
        row: Row {
            table: "store/equivalent-time",
            key: "96-c",
            printed: "96 °C: 2.5 min",
            citation: Citation { source: &sources::FSA_VP_TRAINING, place: "table, 96 C", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: EquivalentTime { celsius: 97.0, time: minutes(2.0) },
        row: Row {
            table: "store/equivalent-time",
            key: "97-c",
            printed: "97 °C: 2 min",
            citation: Citation { source: &sources::FSA_VP_TRAINING, place: "table, 97 C", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: EquivalentTime { celsius: 98.0, time: minutes(1.6) },
        row: Row {
            table: "store/equivalent-time",
            key: "98-c",
            printed: "98 °C: 1.6 min",
            citation: Citation { source: &sources::FSA_VP_TRAINING, place: "table, 98 C", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: EquivalentTime { celsius: 99.0, time: minutes(1.3) },
        row: Row {
            table: "store/equivalent-time",
            key: "99-c",
            printed: "99 °C: 1.3 min",
            citation: Citation { source: &sources::FSA_VP_TRAINING, place: "table, 99 C", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: EquivalentTime { celsius: 100.0, time: minutes(1.0) },
        row: Row {
            table: "store/equivalent-time",
            key: "100-c",
            printed: "100 °C: 1 min",
            citation: Citation { source: &sources::FSA_VP_TRAINING, place: "table, 100 C", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Freezer storage chart
pub static FREEZER_CHART: [Cited<Storage>; 16] = [
    Cited {
        value: Storage { item: "bacon and sausage", edition: "2010 to 2013", refrigerate: FridgeTime(Keeps { printed: "not in this chart", days: None }), freeze: FreezerTime(Keeps { printed: "1 to 2 months", days: Some((30.0, 60.0)) }), counted_from: "" },
        row: Row {
            table: "store/freezer-chart",
            key: "freezer-chart/bacon-and-sausage",
            printed: "bacon and sausage: refrigerator not in this chart; freezer 1 to 2 months",
            citation: Citation { source: &sources::FSIS_FREEZING, place: "row 1", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "casseroles", edition: "2010 to 2013", refrigerate: FridgeTime(Keeps { printed: "not in this chart", days: None }), freeze: FreezerTime(Keeps { printed: "2 to 3 months", days: Some((60.0, 90.0)) }), counted_from: "" },
        row: Row {
            table: "store/freezer-chart",
            key: "freezer-chart/casseroles",
            printed: "casseroles: refrigerator not in this chart; freezer 2 to 3 months",
            citation: Citation { source: &sources::FSIS_FREEZING, place: "row 2", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "egg whites or egg substitutes", edition: "2010 to 2013", refrigerate: FridgeTime(Keeps { printed: "not in this chart", days: None }), freeze: FreezerTime(Keeps { printed: "12 months", days: Some((360.0, 360.0)) }), counted_from: "" },
        row: Row {
            table: "store/freezer-chart",
            key: "freezer-chart/egg-whites-or-egg-substitutes",
            printed: "egg whites or egg substitutes: refrigerator not in this chart; freezer 12 months",
            citation: Citation { source: &sources::FSIS_FREEZING, place: "row 3", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "frozen dinners and entrees", edition: "2010 to 2013", refrigerate: FridgeTime(Keeps { printed: "not in this chart", days: None }), freeze: FreezerTime(Keeps { printed: "3 to 4 months", days: Some((90.0, 120.0)) }), counted_from: "" },
        row: Row {
            table: "store/freezer-chart",
            key: "freezer-chart/frozen-dinners-and-entrees",
            printed: "frozen dinners and entrees: refrigerator not in this chart; freezer 3 to 4 months",
            citation: Citation { source: &sources::FSIS_FREEZING, place: "row 4", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "gravy, meat or poultry", edition: "2010 to 2013", refrigerate: FridgeTime(Keeps { printed: "not in this chart", days: None }), freeze: FreezerTime(Keeps { printed: "2 to 3 months", days: Some((60.0, 90.0)) }), counted_from: "" },
        row: Row {
            table: "store/freezer-chart",
            key: "freezer-chart/gravy-meat-or-poultry",
            printed: "gravy, meat or poultry: refrigerator not in this chart; freezer 2 to 3 months",
            citation: Citation { source: &sources::FSIS_FREEZING, place: "row 5", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "ham, hot dogs and lunch meats", edition: "2010 to 2013", refrigerate: FridgeTime(Keeps { printed: "not in this chart", days: None }), freeze: FreezerTime(Keeps { printed: "1 to 2 months", days: Some((30.0, 60.0)) }), counted_from: "" },
        row: Row {
            table: "store/freezer-chart",
            key: "freezer-chart/ham-hot-dogs-and-lunch-meats",
            printed: "ham, hot dogs and lunch meats: refrigerator not in this chart; freezer 1 to 2 months",
            citation: Citation { source: &sources::FSIS_FREEZING, place: "row 6", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "meat, uncooked roasts", edition: "2010 to 2013", refrigerate: FridgeTime(Keeps { printed: "not in this chart", days: None }), freeze: FreezerTime(Keeps { printed: "4 to 12 months", days: Some((120.0, 360.0)) }), counted_from: "" },
        row: Row {
            table: "store/freezer-chart",
            key: "freezer-chart/meat-uncooked-roasts",
            printed: "meat, uncooked roasts: refrigerator not in this chart; freezer 4 to 12 months",
            citation: Citation { source: &sources::FSIS_FREEZING, place: "row 7", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "meat, uncooked steaks or chops", edition: "2010 to 2013", refrigerate: FridgeTime(Keeps { printed: "not in this chart", days: None }), freeze: FreezerTime(Keeps { printed: "4 to 12 months", days: Some((120.0, 360.0)) }), counted_from: "" },
        row: Row {
            table: "store/freezer-chart",
            key: "freezer-chart/meat-uncooked-steaks-or-chops",
            printed: "meat, uncooked steaks or chops: refrigerator not in this chart; freezer 4 to 12 months",
            citation: Citation { source: &sources::FSIS_FREEZING, place: "row 8", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "meat, uncooked ground", edition: "2010 to 2013", refrigerate: FridgeTime(Keeps { printed: "not in this chart", days: None }), freeze: FreezerTime(Keeps { printed: "3 to 4 months", days: Some((90.0, 120.0)) }), counted_from: "" },
        row: Row {
            table: "store/freezer-chart",
            key: "freezer-chart/meat-uncooked-ground",
            printed: "meat, uncooked ground: refrigerator not in this chart; freezer 3 to 4 months",
            citation: Citation { source: &sources::FSIS_FREEZING, place: "row 9", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "meat, cooked", edition: "2010 to 2013", refrigerate: FridgeTime(Keeps { printed: "not in this chart", days: None }), freeze: FreezerTime(Keeps { printed: "2 to 3 months", days: Some((60.0, 90.0)) }), counted_from: "" },
        row: Row {
            table: "store/freezer-chart",
            key: "freezer-chart/meat-cooked",
            printed: "meat, cooked: refrigerator not in this chart; freezer 2 to 3 months",
            citation: Citation { source: &sources::FSIS_FREEZING, place: "row 10", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "poultry, uncooked whole", edition: "2010 to 2013", refrigerate: FridgeTime(Keeps { printed: "not in this chart", days: None }), freeze: FreezerTime(Keeps { printed: "12 months", days: Some((360.0, 360.0)) }), counted_from: "" },
        row: Row {
            table: "store/freezer-chart",
            key: "freezer-chart/poultry-uncooked-whole",
            printed: "poultry, uncooked whole: refrigerator not in this chart; freezer 12 months",
            citation: Citation { source: &sources::FSIS_FREEZING, place: "row 11", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "poultry, uncooked parts", edition: "2010 to 2013", refrigerate: FridgeTime(Keeps { printed: "not in this chart", days: None }), freeze: FreezerTime(Keeps { printed: "9 months", days: Some((270.0, 270.0)) }), counted_from: "" },
        row: Row {
            table: "store/freezer-chart",
            key: "freezer-chart/poultry-uncooked-parts",
            printed: "poultry, uncooked parts: refrigerator not in this chart; freezer 9 months",
            citation: Citation { source: &sources::FSIS_FREEZING, place: "row 12", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "poultry, uncooked giblets", edition: "2010 to 2013", refrigerate: FridgeTime(Keeps { printed: "not in this chart", days: None }), freeze: FreezerTime(Keeps { printed: "3 to 4 months", days: Some((90.0, 120.0)) }), counted_from: "" },
        row: Row {
            table: "store/freezer-chart",
            key: "freezer-chart/poultry-uncooked-giblets",
            printed: "poultry, uncooked giblets: refrigerator not in this chart; freezer 3 to 4 months",
            citation: Citation { source: &sources::FSIS_FREEZING, place: "row 13", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "poultry, cooked", edition: "2010 to 2013", refrigerate: FridgeTime(Keeps { printed: "not in this chart", days: None }), freeze: FreezerTime(Keeps { printed: "4 months", days: Some((120.0, 120.0)) }), counted_from: "" },
        row: Row {
            table: "store/freezer-chart",
            key: "freezer-chart/poultry-cooked",
            printed: "poultry, cooked: refrigerator not in this chart; freezer 4 months",
            citation: Citation { source: &sources::FSIS_FREEZING, place: "row 14", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "soups and stews", edition: "2010 to 2013", refrigerate: FridgeTime(Keeps { printed: "not in this chart", days: None }), freeze: FreezerTime(Keeps { printed: "2 to 3 months", days: Some((60.0, 90.0)) }), counted_from: "" },
        row: Row {
            table: "store/freezer-chart",
            key: "freezer-chart/soups-and-stews",
            printed: "soups and stews: refrigerator not in this chart; freezer 2 to 3 months",
            citation: Citation { source: &sources::FSIS_FREEZING, place: "row 15", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "wild game, uncooked", edition: "2010 to 2013", refrigerate: FridgeTime(Keeps { printed: "not in this chart", days: None }), freeze: FreezerTime(Keeps { printed: "8 to 12 months", days: Some((240.0, 360.0)) }), counted_from: "" },
        row: Row {
            table: "store/freezer-chart",
            key: "freezer-chart/wild-game-uncooked",
            printed: "wild game, uncooked: refrigerator not in this chart; freezer 8 to 12 months",
            citation: Citation { source: &sources::FSIS_FREEZING, place: "row 16", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Garlic or herbs in oil
pub static GARLIC_IN_OIL: [Cited<GarlicInOil>; 5] = [
    Cited {
        value: GarlicInOil { most: days(4.0), current: true },
        row: Row {
            table: "store/garlic-in-oil",
            key: "nchfp-garlic-4-days",
            printed: "at most 4 days",
            citation: Citation { source: &sources::NCHFP_GARLIC, place: "page reviewed Feb 2015, after Nummer et al. 2011", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: GarlicInOil { most: days(7.0), current: false },
        row: Row {
            table: "store/garlic-in-oil",
            key: "nchfp-garlic-7-days",
            printed: "at most 7 days",
            citation: Citation { source: &sources::NCHFP_GARLIC, place: "older text, ref. Harris 2002", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: GarlicInOil { most: days(10.0), current: false },
        row: Row {
            table: "store/garlic-in-oil",
            key: "psu-oil-10-days",
            printed: "at most 10 days",
            citation: Citation { source: &sources::PSU_OIL, place: "page", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "also says freeze",
        },
    },
    Cited {
        value: GarlicInOil { most: days(3.0), current: true },
        row: Row {
            table: "store/garlic-in-oil",
            key: "mu-oil-3-days",
            printed: "at most 3 days",
            citation: Citation { source: &sources::MU_OIL, place: "page (2-3 days)", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: GarlicInOil { most: days(4.0), current: true },
        row: Row {
            table: "store/garlic-in-oil",
            key: "okstate-oil-4-days",
            printed: "at most 4 days",
            citation: Citation { source: &sources::OKSTATE_OIL, place: "page (2-4 days, or three months as it words it for other methods)", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Ham storage chart
pub static HAM_CHART: [Cited<Storage>; 20] = [
    Cited {
        value: Storage { item: "fresh (uncured) ham, uncooked", edition: "undated web edition", refrigerate: FridgeTime(Keeps { printed: "3 to 5 days", days: Some((3.0, 5.0)) }), freeze: FreezerTime(Keeps { printed: "6 months", days: Some((180.0, 180.0)) }), counted_from: "" },
        row: Row {
            table: "store/ham-chart",
            key: "ham-chart/fresh-uncured-ham-uncooked",
            printed: "fresh (uncured) ham, uncooked: refrigerator 3 to 5 days; freezer 6 months",
            citation: Citation { source: &sources::FSIS_HAM, place: "row 1", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "fresh (uncured) ham, cooked", edition: "undated web edition", refrigerate: FridgeTime(Keeps { printed: "3 to 4 days", days: Some((3.0, 4.0)) }), freeze: FreezerTime(Keeps { printed: "3 to 4 months", days: Some((90.0, 120.0)) }), counted_from: "" },
        row: Row {
            table: "store/ham-chart",
            key: "ham-chart/fresh-uncured-ham-cooked",
            printed: "fresh (uncured) ham, cooked: refrigerator 3 to 4 days; freezer 3 to 4 months",
            citation: Citation { source: &sources::FSIS_HAM, place: "row 2", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "cured ham, cook before eating, uncooked", edition: "undated web edition", refrigerate: FridgeTime(Keeps { printed: "5 to 7 days", days: Some((5.0, 7.0)) }), freeze: FreezerTime(Keeps { printed: "3 to 4 months", days: Some((90.0, 120.0)) }), counted_from: "" },
        row: Row {
            table: "store/ham-chart",
            key: "ham-chart/cured-ham-cook-before-eating-uncooked",
            printed: "cured ham, cook before eating, uncooked: refrigerator 5 to 7 days; freezer 3 to 4 months",
            citation: Citation { source: &sources::FSIS_HAM, place: "row 3", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "or the use-by date",
        },
    },
    Cited {
        value: Storage { item: "cured ham, cook before eating, after the consumer cooks it", edition: "undated web edition", refrigerate: FridgeTime(Keeps { printed: "3 to 5 days", days: Some((3.0, 5.0)) }), freeze: FreezerTime(Keeps { printed: "1 to 2 months", days: Some((30.0, 60.0)) }), counted_from: "" },
        row: Row {
            table: "store/ham-chart",
            key: "ham-chart/cured-ham-cook-before-eating-after-the-consumer-cooks-it",
            printed: "cured ham, cook before eating, after the consumer cooks it: refrigerator 3 to 5 days; freezer 1 to 2 months",
            citation: Citation { source: &sources::FSIS_HAM, place: "row 4", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "cooked ham, vacuum sealed at plant, undated, unopened", edition: "undated web edition", refrigerate: FridgeTime(Keeps { printed: "2 weeks", days: Some((14.0, 14.0)) }), freeze: FreezerTime(Keeps { printed: "1 to 2 months", days: Some((30.0, 60.0)) }), counted_from: "" },
        row: Row {
            table: "store/ham-chart",
            key: "ham-chart/cooked-ham-vacuum-sealed-at-plant-undated-unopened",
            printed: "cooked ham, vacuum sealed at plant, undated, unopened: refrigerator 2 weeks; freezer 1 to 2 months",
            citation: Citation { source: &sources::FSIS_HAM, place: "row 5", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "cooked ham, vacuum sealed at plant, dated, unopened", edition: "undated web edition", refrigerate: FridgeTime(Keeps { printed: "use-by date", days: None }), freeze: FreezerTime(Keeps { printed: "1 to 2 months", days: Some((30.0, 60.0)) }), counted_from: "" },
        row: Row {
            table: "store/ham-chart",
            key: "ham-chart/cooked-ham-vacuum-sealed-at-plant-dated-unopened",
            printed: "cooked ham, vacuum sealed at plant, dated, unopened: refrigerator use-by date; freezer 1 to 2 months",
            citation: Citation { source: &sources::FSIS_HAM, place: "row 6", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "cooked ham, vacuum sealed at plant, dated or undated, opened", edition: "undated web edition", refrigerate: FridgeTime(Keeps { printed: "3 to 5 days", days: Some((3.0, 5.0)) }), freeze: FreezerTime(Keeps { printed: "1 to 2 months", days: Some((30.0, 60.0)) }), counted_from: "" },
        row: Row {
            table: "store/ham-chart",
            key: "ham-chart/cooked-ham-vacuum-sealed-at-plant-dated-or-undated-opened",
            printed: "cooked ham, vacuum sealed at plant, dated or undated, opened: refrigerator 3 to 5 days; freezer 1 to 2 months",
            citation: Citation { source: &sources::FSIS_HAM, place: "row 7", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "cooked ham, whole, store wrapped", edition: "undated web edition", refrigerate: FridgeTime(Keeps { printed: "7 days", days: Some((7.0, 7.0)) }), freeze: FreezerTime(Keeps { printed: "1 to 2 months", days: Some((30.0, 60.0)) }), counted_from: "" },
        row: Row {
            table: "store/ham-chart",
            key: "ham-chart/cooked-ham-whole-store-wrapped",
            printed: "cooked ham, whole, store wrapped: refrigerator 7 days; freezer 1 to 2 months",
            citation: Citation { source: &sources::FSIS_HAM, place: "row 8", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "cooked ham, half, store wrapped", edition: "undated web edition", refrigerate: FridgeTime(Keeps { printed: "3 to 5 days", days: Some((3.0, 5.0)) }), freeze: FreezerTime(Keeps { printed: "1 to 2 months", days: Some((30.0, 60.0)) }), counted_from: "" },
        row: Row {
            table: "store/ham-chart",
            key: "ham-chart/cooked-ham-half-store-wrapped",
            printed: "cooked ham, half, store wrapped: refrigerator 3 to 5 days; freezer 1 to 2 months",
            citation: Citation { source: &sources::FSIS_HAM, place: "row 9", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "cooked ham, slices, store wrapped", edition: "undated web edition", refrigerate: FridgeTime(Keeps { printed: "3 to 5 days", days: Some((3.0, 5.0)) }), freeze: FreezerTime(Keeps { printed: "1 to 2 months", days: Some((30.0, 60.0)) }), counted_from: "" },
        row: Row {
            table: "store/ham-chart",
            key: "ham-chart/cooked-ham-slices-store-wrapped",
            printed: "cooked ham, slices, store wrapped: refrigerator 3 to 5 days; freezer 1 to 2 months",
            citation: Citation { source: &sources::FSIS_HAM, place: "row 10", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "spiral-cut ham and leftovers of consumer-cooked ham", edition: "undated web edition", refrigerate: FridgeTime(Keeps { printed: "3 to 5 days", days: Some((3.0, 5.0)) }), freeze: FreezerTime(Keeps { printed: "1 to 2 months", days: Some((30.0, 60.0)) }), counted_from: "" },
        row: Row {
            table: "store/ham-chart",
            key: "ham-chart/spiral-cut-ham-and-leftovers-of-consumer-cooked-ham",
            printed: "spiral-cut ham and leftovers of consumer-cooked ham: refrigerator 3 to 5 days; freezer 1 to 2 months",
            citation: Citation { source: &sources::FSIS_HAM, place: "row 11", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "country ham, uncooked, cut", edition: "undated web edition", refrigerate: FridgeTime(Keeps { printed: "2 to 3 months", days: Some((60.0, 90.0)) }), freeze: FreezerTime(Keeps { printed: "1 month", days: Some((30.0, 30.0)) }), counted_from: "" },
        row: Row {
            table: "store/ham-chart",
            key: "ham-chart/country-ham-uncooked-cut",
            printed: "country ham, uncooked, cut: refrigerator 2 to 3 months; freezer 1 month",
            citation: Citation { source: &sources::FSIS_HAM, place: "row 12", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "a whole uncut country ham may be kept at room temperature up to 1 year; after that quality, not safety, is the concern",
        },
    },
    Cited {
        value: Storage { item: "country ham, cooked", edition: "undated web edition", refrigerate: FridgeTime(Keeps { printed: "7 days", days: Some((7.0, 7.0)) }), freeze: FreezerTime(Keeps { printed: "1 month", days: Some((30.0, 30.0)) }), counted_from: "" },
        row: Row {
            table: "store/ham-chart",
            key: "ham-chart/country-ham-cooked",
            printed: "country ham, cooked: refrigerator 7 days; freezer 1 month",
            citation: Citation { source: &sources::FSIS_HAM, place: "row 13", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "canned ham, keep refrigerated, unopened", edition: "undated web edition", refrigerate: FridgeTime(Keeps { printed: "6 to 9 months", days: Some((180.0, 270.0)) }), freeze: FreezerTime(Keeps { printed: "do not freeze", days: None }), counted_from: "" },
        row: Row {
            table: "store/ham-chart",
            key: "ham-chart/canned-ham-keep-refrigerated-unopened",
            printed: "canned ham, keep refrigerated, unopened: refrigerator 6 to 9 months; freezer do not freeze",
            citation: Citation { source: &sources::FSIS_HAM, place: "row 14", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "canned ham, keep refrigerated, opened", edition: "undated web edition", refrigerate: FridgeTime(Keeps { printed: "7 days", days: Some((7.0, 7.0)) }), freeze: FreezerTime(Keeps { printed: "1 to 2 months", days: Some((30.0, 60.0)) }), counted_from: "" },
        row: Row {
            table: "store/ham-chart",
            key: "ham-chart/canned-ham-keep-refrigerated-opened",
            printed: "canned ham, keep refrigerated, opened: refrigerator 7 days; freezer 1 to 2 months",
            citation: Citation { source: &sources::FSIS_HAM, place: "row 15", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "canned ham, shelf stable, opened", edition: "undated web edition", refrigerate: FridgeTime(Keeps { printed: "3 to 4 days", days: Some((3.0, 4.0)) }), freeze: FreezerTime(Keeps { printed: "1 to 2 months", days: Some((30.0, 60.0)) }), counted_from: "" },
        row: Row {
            table: "store/ham-chart",
            key: "ham-chart/canned-ham-shelf-stable-opened",
            printed: "canned ham, shelf stable, opened: refrigerator 3 to 4 days; freezer 1 to 2 months",
            citation: Citation { source: &sources::FSIS_HAM, place: "row 16", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "unopened: 2 years at room temperature",
        },
    },
    Cited {
        value: Storage { item: "lunch-meat ham, sealed at plant, unopened", edition: "undated web edition", refrigerate: FridgeTime(Keeps { printed: "2 weeks", days: Some((14.0, 14.0)) }), freeze: FreezerTime(Keeps { printed: "1 to 2 months", days: Some((30.0, 60.0)) }), counted_from: "" },
        row: Row {
            table: "store/ham-chart",
            key: "ham-chart/lunch-meat-ham-sealed-at-plant-unopened",
            printed: "lunch-meat ham, sealed at plant, unopened: refrigerator 2 weeks; freezer 1 to 2 months",
            citation: Citation { source: &sources::FSIS_HAM, place: "row 17", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "or the use-by date",
        },
    },
    Cited {
        value: Storage { item: "lunch-meat ham, sealed at plant, after opening", edition: "undated web edition", refrigerate: FridgeTime(Keeps { printed: "3 to 5 days", days: Some((3.0, 5.0)) }), freeze: FreezerTime(Keeps { printed: "1 to 2 months", days: Some((30.0, 60.0)) }), counted_from: "" },
        row: Row {
            table: "store/ham-chart",
            key: "ham-chart/lunch-meat-ham-sealed-at-plant-after-opening",
            printed: "lunch-meat ham, sealed at plant, after opening: refrigerator 3 to 5 days; freezer 1 to 2 months",
            citation: Citation { source: &sources::FSIS_HAM, place: "row 18", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "lunch-meat ham, sliced in store", edition: "undated web edition", refrigerate: FridgeTime(Keeps { printed: "3 to 5 days", days: Some((3.0, 5.0)) }), freeze: FreezerTime(Keeps { printed: "1 to 2 months", days: Some((30.0, 60.0)) }), counted_from: "" },
        row: Row {
            table: "store/ham-chart",
            key: "ham-chart/lunch-meat-ham-sliced-in-store",
            printed: "lunch-meat ham, sliced in store: refrigerator 3 to 5 days; freezer 1 to 2 months",
            citation: Citation { source: &sources::FSIS_HAM, place: "row 19", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "prosciutto, Parma or Serrano type, dry, cut", edition: "undated web edition", refrigerate: FridgeTime(Keeps { printed: "2 to 3 months", days: Some((60.0, 90.0)) }), freeze: FreezerTime(Keeps { printed: "1 month", days: Some((30.0, 30.0)) }), counted_from: "" },
        row: Row {
            table: "store/ham-chart",
            key: "ham-chart/prosciutto-parma-or-serrano-type-dry-cut",
            printed: "prosciutto, Parma or Serrano type, dry, cut: refrigerator 2 to 3 months; freezer 1 month",
            citation: Citation { source: &sources::FSIS_HAM, place: "row 20", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
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

/// Practical storage life of frozen food
pub static PRACTICAL_LIFE: [Cited<PracticalLife>; 94] = [
    Cited {
        value: PracticalLife { item: "beef carcass, unpackaged", criterion: "practical storage life", celsius: -12.0, life: days(240.0) },
        row: Row {
            table: "store/practical-life",
            key: "beef-carcass-unpackaged-12",
            printed: "beef carcass, unpackaged, -12 °C: 8 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "beef carcass, unpackaged", criterion: "practical storage life", celsius: -18.0, life: days(450.0) },
        row: Row {
            table: "store/practical-life",
            key: "beef-carcass-unpackaged-18",
            printed: "beef carcass, unpackaged, -18 °C: 15 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "beef carcass, unpackaged", criterion: "practical storage life", celsius: -24.0, life: days(720.0) },
        row: Row {
            table: "store/practical-life",
            key: "beef-carcass-unpackaged-24",
            printed: "beef carcass, unpackaged, -24 °C: 24 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "beef steaks and cuts", criterion: "practical storage life", celsius: -12.0, life: days(240.0) },
        row: Row {
            table: "store/practical-life",
            key: "beef-steaks-and-cuts-12",
            printed: "beef steaks and cuts, -12 °C: 8 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "beef steaks and cuts", criterion: "practical storage life", celsius: -18.0, life: days(540.0) },
        row: Row {
            table: "store/practical-life",
            key: "beef-steaks-and-cuts-18",
            printed: "beef steaks and cuts, -18 °C: 18 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "beef steaks and cuts", criterion: "practical storage life", celsius: -24.0, life: days(720.0) },
        row: Row {
            table: "store/practical-life",
            key: "beef-steaks-and-cuts-24",
            printed: "beef steaks and cuts, -24 °C: 24 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "ground beef", criterion: "practical storage life", celsius: -12.0, life: days(180.0) },
        row: Row {
            table: "store/practical-life",
            key: "ground-beef-12",
            printed: "ground beef, -12 °C: 6 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "ground beef", criterion: "practical storage life", celsius: -18.0, life: days(300.0) },
        row: Row {
            table: "store/practical-life",
            key: "ground-beef-18",
            printed: "ground beef, -18 °C: 10 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "ground beef", criterion: "practical storage life", celsius: -24.0, life: days(450.0) },
        row: Row {
            table: "store/practical-life",
            key: "ground-beef-24",
            printed: "ground beef, -24 °C: 15 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "veal carcass or cuts", criterion: "practical storage life", celsius: -12.0, life: days(180.0) },
        row: Row {
            table: "store/practical-life",
            key: "veal-carcass-or-cuts-12",
            printed: "veal carcass or cuts, -12 °C: 6 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "veal carcass or cuts", criterion: "practical storage life", celsius: -18.0, life: days(360.0) },
        row: Row {
            table: "store/practical-life",
            key: "veal-carcass-or-cuts-18",
            printed: "veal carcass or cuts, -18 °C: 12 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "veal carcass or cuts", criterion: "practical storage life", celsius: -24.0, life: days(450.0) },
        row: Row {
            table: "store/practical-life",
            key: "veal-carcass-or-cuts-24",
            printed: "veal carcass or cuts, -24 °C: 15 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "lamb carcass, grass fed", criterion: "practical storage life", celsius: -12.0, life: days(540.0) },
        row: Row {
            table: "store/practical-life",
            key: "lamb-carcass-grass-fed-12",
            printed: "lamb carcass, grass fed, -12 °C: 18 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "lamb carcass, grass fed", criterion: "practical storage life", celsius: -18.0, life: days(720.0) },
        row: Row {
            table: "store/practical-life",
            key: "lamb-carcass-grass-fed-18",
            printed: "lamb carcass, grass fed, -18 °C: 24 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "lamb carcass, grass fed", criterion: "practical storage life", celsius: -24.0, life: days(720.0) },
        row: Row {
            table: "store/practical-life",
            key: "lamb-carcass-grass-fed-24",
            printed: "lamb carcass, grass fed, -24 °C: > 24 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "lamb steaks", criterion: "practical storage life", celsius: -12.0, life: days(360.0) },
        row: Row {
            table: "store/practical-life",
            key: "lamb-steaks-12",
            printed: "lamb steaks, -12 °C: 12 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "lamb steaks", criterion: "practical storage life", celsius: -18.0, life: days(540.0) },
        row: Row {
            table: "store/practical-life",
            key: "lamb-steaks-18",
            printed: "lamb steaks, -18 °C: 18 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "lamb steaks", criterion: "practical storage life", celsius: -24.0, life: days(720.0) },
        row: Row {
            table: "store/practical-life",
            key: "lamb-steaks-24",
            printed: "lamb steaks, -24 °C: 24 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "pork carcass, unpackaged", criterion: "practical storage life", celsius: -12.0, life: days(180.0) },
        row: Row {
            table: "store/practical-life",
            key: "pork-carcass-unpackaged-12",
            printed: "pork carcass, unpackaged, -12 °C: 6 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "pork carcass, unpackaged", criterion: "practical storage life", celsius: -18.0, life: days(300.0) },
        row: Row {
            table: "store/practical-life",
            key: "pork-carcass-unpackaged-18",
            printed: "pork carcass, unpackaged, -18 °C: 10 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "pork carcass, unpackaged", criterion: "practical storage life", celsius: -24.0, life: days(450.0) },
        row: Row {
            table: "store/practical-life",
            key: "pork-carcass-unpackaged-24",
            printed: "pork carcass, unpackaged, -24 °C: 15 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "pork steaks and cuts", criterion: "practical storage life", celsius: -12.0, life: days(180.0) },
        row: Row {
            table: "store/practical-life",
            key: "pork-steaks-and-cuts-12",
            printed: "pork steaks and cuts, -12 °C: 6 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "pork steaks and cuts", criterion: "practical storage life", celsius: -18.0, life: days(300.0) },
        row: Row {
            table: "store/practical-life",
            key: "pork-steaks-and-cuts-18",
            printed: "pork steaks and cuts, -18 °C: 10 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "pork steaks and cuts", criterion: "practical storage life", celsius: -24.0, life: days(450.0) },
        row: Row {
            table: "store/practical-life",
            key: "pork-steaks-and-cuts-24",
            printed: "pork steaks and cuts, -24 °C: 15 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "bacon, sliced, vacuum packed", criterion: "practical storage life", celsius: -12.0, life: days(360.0) },
        row: Row {
            table: "store/practical-life",
            key: "bacon-sliced-vacuum-packed-12",
            printed: "bacon, sliced, vacuum packed, -12 °C: 12 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping; bacon shows no gain below -12 C in this table",
        },
    },
    Cited {
        value: PracticalLife { item: "bacon, sliced, vacuum packed", criterion: "practical storage life", celsius: -18.0, life: days(360.0) },
        row: Row {
            table: "store/practical-life",
            key: "bacon-sliced-vacuum-packed-18",
            printed: "bacon, sliced, vacuum packed, -18 °C: 12 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping; bacon shows no gain below -12 C in this table",
        },
    },
    Cited {
        value: PracticalLife { item: "bacon, sliced, vacuum packed", criterion: "practical storage life", celsius: -24.0, life: days(360.0) },
        row: Row {
            table: "store/practical-life",
            key: "bacon-sliced-vacuum-packed-24",
            printed: "bacon, sliced, vacuum packed, -24 °C: 12 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping; bacon shows no gain below -12 C in this table",
        },
    },
    Cited {
        value: PracticalLife { item: "lard", criterion: "practical storage life", celsius: -12.0, life: days(270.0) },
        row: Row {
            table: "store/practical-life",
            key: "lard-12",
            printed: "lard, -12 °C: 9 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "lard", criterion: "practical storage life", celsius: -18.0, life: days(360.0) },
        row: Row {
            table: "store/practical-life",
            key: "lard-18",
            printed: "lard, -18 °C: 12 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "lard", criterion: "practical storage life", celsius: -24.0, life: days(450.0) },
        row: Row {
            table: "store/practical-life",
            key: "lard-24",
            printed: "lard, -24 °C: 15 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "chicken, whole or cuts", criterion: "practical storage life", celsius: -12.0, life: days(270.0) },
        row: Row {
            table: "store/practical-life",
            key: "chicken-whole-or-cuts-12",
            printed: "chicken, whole or cuts, -12 °C: 9 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "chicken, whole or cuts", criterion: "practical storage life", celsius: -18.0, life: days(540.0) },
        row: Row {
            table: "store/practical-life",
            key: "chicken-whole-or-cuts-18",
            printed: "chicken, whole or cuts, -18 °C: 18 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "chicken, whole or cuts", criterion: "practical storage life", celsius: -24.0, life: days(720.0) },
        row: Row {
            table: "store/practical-life",
            key: "chicken-whole-or-cuts-24",
            printed: "chicken, whole or cuts, -24 °C: > 24 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "turkey, whole", criterion: "practical storage life", celsius: -12.0, life: days(240.0) },
        row: Row {
            table: "store/practical-life",
            key: "turkey-whole-12",
            printed: "turkey, whole, -12 °C: 8 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "turkey, whole", criterion: "practical storage life", celsius: -18.0, life: days(450.0) },
        row: Row {
            table: "store/practical-life",
            key: "turkey-whole-18",
            printed: "turkey, whole, -18 °C: 15 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "turkey, whole", criterion: "practical storage life", celsius: -24.0, life: days(720.0) },
        row: Row {
            table: "store/practical-life",
            key: "turkey-whole-24",
            printed: "turkey, whole, -24 °C: > 24 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "duck or goose, whole", criterion: "practical storage life", celsius: -12.0, life: days(180.0) },
        row: Row {
            table: "store/practical-life",
            key: "duck-or-goose-whole-12",
            printed: "duck or goose, whole, -12 °C: 6 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "duck or goose, whole", criterion: "practical storage life", celsius: -18.0, life: days(360.0) },
        row: Row {
            table: "store/practical-life",
            key: "duck-or-goose-whole-18",
            printed: "duck or goose, whole, -18 °C: 12 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "duck or goose, whole", criterion: "practical storage life", celsius: -24.0, life: days(540.0) },
        row: Row {
            table: "store/practical-life",
            key: "duck-or-goose-whole-24",
            printed: "duck or goose, whole, -24 °C: 18 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "liver", criterion: "practical storage life", celsius: -12.0, life: days(120.0) },
        row: Row {
            table: "store/practical-life",
            key: "liver-12",
            printed: "liver, -12 °C: 4 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "liver", criterion: "practical storage life", celsius: -18.0, life: days(360.0) },
        row: Row {
            table: "store/practical-life",
            key: "liver-18",
            printed: "liver, -18 °C: 12 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "liver", criterion: "practical storage life", celsius: -24.0, life: days(540.0) },
        row: Row {
            table: "store/practical-life",
            key: "liver-24",
            printed: "liver, -24 °C: 18 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "fatty fish, glazed", criterion: "practical storage life", celsius: -12.0, life: days(90.0) },
        row: Row {
            table: "store/practical-life",
            key: "fatty-fish-glazed-12",
            printed: "fatty fish, glazed, -12 °C: 3 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "fatty fish, glazed", criterion: "practical storage life", celsius: -18.0, life: days(150.0) },
        row: Row {
            table: "store/practical-life",
            key: "fatty-fish-glazed-18",
            printed: "fatty fish, glazed, -18 °C: 5 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "fatty fish, glazed", criterion: "practical storage life", celsius: -24.0, life: days(270.0) },
        row: Row {
            table: "store/practical-life",
            key: "fatty-fish-glazed-24",
            printed: "fatty fish, glazed, -24 °C: > 9 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "lean fish", criterion: "practical storage life", celsius: -12.0, life: days(120.0) },
        row: Row {
            table: "store/practical-life",
            key: "lean-fish-12",
            printed: "lean fish, -12 °C: 4 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "lean fish", criterion: "practical storage life", celsius: -18.0, life: days(270.0) },
        row: Row {
            table: "store/practical-life",
            key: "lean-fish-18",
            printed: "lean fish, -18 °C: 9 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "lean fish", criterion: "practical storage life", celsius: -24.0, life: days(360.0) },
        row: Row {
            table: "store/practical-life",
            key: "lean-fish-24",
            printed: "lean fish, -24 °C: > 12 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "shellfish in shell, cooked", criterion: "practical storage life", celsius: -12.0, life: days(120.0) },
        row: Row {
            table: "store/practical-life",
            key: "shellfish-in-shell-cooked-12",
            printed: "shellfish in shell, cooked, -12 °C: 4 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "shellfish in shell, cooked", criterion: "practical storage life", celsius: -18.0, life: days(180.0) },
        row: Row {
            table: "store/practical-life",
            key: "shellfish-in-shell-cooked-18",
            printed: "shellfish in shell, cooked, -18 °C: 6 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "shellfish in shell, cooked", criterion: "practical storage life", celsius: -24.0, life: days(360.0) },
        row: Row {
            table: "store/practical-life",
            key: "shellfish-in-shell-cooked-24",
            printed: "shellfish in shell, cooked, -24 °C: > 12 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "shrimp, cooked and peeled", criterion: "practical storage life", celsius: -12.0, life: days(60.0) },
        row: Row {
            table: "store/practical-life",
            key: "shrimp-cooked-and-peeled-12",
            printed: "shrimp, cooked and peeled, -12 °C: 2 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "shrimp, cooked and peeled", criterion: "practical storage life", celsius: -18.0, life: days(150.0) },
        row: Row {
            table: "store/practical-life",
            key: "shrimp-cooked-and-peeled-18",
            printed: "shrimp, cooked and peeled, -18 °C: 5 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "shrimp, cooked and peeled", criterion: "practical storage life", celsius: -24.0, life: days(270.0) },
        row: Row {
            table: "store/practical-life",
            key: "shrimp-cooked-and-peeled-24",
            printed: "shrimp, cooked and peeled, -24 °C: > 9 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "clams and oysters", criterion: "practical storage life", celsius: -12.0, life: days(120.0) },
        row: Row {
            table: "store/practical-life",
            key: "clams-and-oysters-12",
            printed: "clams and oysters, -12 °C: 4 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "clams and oysters", criterion: "practical storage life", celsius: -18.0, life: days(180.0) },
        row: Row {
            table: "store/practical-life",
            key: "clams-and-oysters-18",
            printed: "clams and oysters, -18 °C: 6 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "clams and oysters", criterion: "practical storage life", celsius: -24.0, life: days(270.0) },
        row: Row {
            table: "store/practical-life",
            key: "clams-and-oysters-24",
            printed: "clams and oysters, -24 °C: > 9 months (practical storage life)",
            citation: Citation { source: &sources::IIR_1986, place: "practical storage life table", standing: Standing::QualityAdvice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "recalled values, verify against the book before shipping",
        },
    },
    Cited {
        value: PracticalLife { item: "white fish, gutted", criterion: "good", celsius: -9.0, life: days(30.0) },
        row: Row {
            table: "store/practical-life",
            key: "white-fish-gutted-good-9",
            printed: "white fish, gutted, -9 °C: 1 months (good)",
            citation: Citation { source: &sources::LOVE_1967, place: "Table 1", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: PracticalLife { item: "white fish, gutted", criterion: "inedible", celsius: -9.0, life: days(120.0) },
        row: Row {
            table: "store/practical-life",
            key: "white-fish-gutted-inedible-9",
            printed: "white fish, gutted, -9 °C: 4 months (inedible)",
            citation: Citation { source: &sources::LOVE_1967, place: "Table 1", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: PracticalLife { item: "white fish, gutted", criterion: "good, IIR", celsius: -18.0, life: days(90.0) },
        row: Row {
            table: "store/practical-life",
            key: "white-fish-gutted-good-iir-18",
            printed: "white fish, gutted, -18 °C: 3-5 months (good, IIR)",
            citation: Citation { source: &sources::LOVE_1967, place: "Table 1", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: PracticalLife { item: "white fish, gutted", criterion: "good", celsius: -21.0, life: days(120.0) },
        row: Row {
            table: "store/practical-life",
            key: "white-fish-gutted-good-21",
            printed: "white fish, gutted, -21 °C: 4 months (good)",
            citation: Citation { source: &sources::LOVE_1967, place: "Table 1", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: PracticalLife { item: "white fish, gutted", criterion: "inedible", celsius: -21.0, life: days(450.0) },
        row: Row {
            table: "store/practical-life",
            key: "white-fish-gutted-inedible-21",
            printed: "white fish, gutted, -21 °C: 15 months (inedible)",
            citation: Citation { source: &sources::LOVE_1967, place: "Table 1", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: PracticalLife { item: "white fish, gutted", criterion: "good, IIR", celsius: -25.0, life: days(180.0) },
        row: Row {
            table: "store/practical-life",
            key: "white-fish-gutted-good-iir-25",
            printed: "white fish, gutted, -25 °C: 6-8 months (good, IIR)",
            citation: Citation { source: &sources::LOVE_1967, place: "Table 1", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: PracticalLife { item: "white fish, gutted", criterion: "good", celsius: -29.0, life: days(240.0) },
        row: Row {
            table: "store/practical-life",
            key: "white-fish-gutted-good-29",
            printed: "white fish, gutted, -29 °C: 8 months (good)",
            citation: Citation { source: &sources::LOVE_1967, place: "Table 1", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: PracticalLife { item: "herring, gutted", criterion: "good", celsius: -9.0, life: days(30.0) },
        row: Row {
            table: "store/practical-life",
            key: "herring-gutted-good-9",
            printed: "herring, gutted, -9 °C: 1 months (good)",
            citation: Citation { source: &sources::LOVE_1967, place: "Table 1", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: PracticalLife { item: "herring, gutted", criterion: "inedible", celsius: -9.0, life: days(90.0) },
        row: Row {
            table: "store/practical-life",
            key: "herring-gutted-inedible-9",
            printed: "herring, gutted, -9 °C: 3 months (inedible)",
            citation: Citation { source: &sources::LOVE_1967, place: "Table 1", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: PracticalLife { item: "herring, gutted", criterion: "good, IIR", celsius: -18.0, life: days(60.0) },
        row: Row {
            table: "store/practical-life",
            key: "herring-gutted-good-iir-18",
            printed: "herring, gutted, -18 °C: 2-3 months (good, IIR)",
            citation: Citation { source: &sources::LOVE_1967, place: "Table 1", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: PracticalLife { item: "herring, gutted", criterion: "good", celsius: -21.0, life: days(90.0) },
        row: Row {
            table: "store/practical-life",
            key: "herring-gutted-good-21",
            printed: "herring, gutted, -21 °C: 3 months (good)",
            citation: Citation { source: &sources::LOVE_1967, place: "Table 1", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: PracticalLife { item: "herring, gutted", criterion: "inedible", celsius: -21.0, life: days(180.0) },
        row: Row {
            table: "store/practical-life",
            key: "herring-gutted-inedible-21",
            printed: "herring, gutted, -21 °C: 6 months (inedible)",
            citation: Citation { source: &sources::LOVE_1967, place: "Table 1", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: PracticalLife { item: "herring, gutted", criterion: "good, IIR", celsius: -25.0, life: days(90.0) },
        row: Row {
            table: "store/practical-life",
            key: "herring-gutted-good-iir-25",
            printed: "herring, gutted, -25 °C: 3-5 months (good, IIR)",
            citation: Citation { source: &sources::LOVE_1967, place: "Table 1", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: PracticalLife { item: "herring, gutted", criterion: "good", celsius: -29.0, life: days(180.0) },
        row: Row {
            table: "store/practical-life",
            key: "herring-gutted-good-29",
            printed: "herring, gutted, -29 °C: 6 months (good)",
            citation: Citation { source: &sources::LOVE_1967, place: "Table 1", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: PracticalLife { item: "flatfish", criterion: "good, IIR", celsius: -18.0, life: days(120.0) },
        row: Row {
            table: "store/practical-life",
            key: "flatfish-good-iir-18",
            printed: "flatfish, -18 °C: 4-6 months (good, IIR)",
            citation: Citation { source: &sources::LOVE_1967, place: "Table 1", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: PracticalLife { item: "flatfish", criterion: "good, IIR", celsius: -25.0, life: days(210.0) },
        row: Row {
            table: "store/practical-life",
            key: "flatfish-good-iir-25",
            printed: "flatfish, -25 °C: 7-10 months (good, IIR)",
            citation: Citation { source: &sources::LOVE_1967, place: "Table 1", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: PracticalLife { item: "smoked white fish", criterion: "good", celsius: -9.0, life: days(30.0) },
        row: Row {
            table: "store/practical-life",
            key: "smoked-white-fish-good-9",
            printed: "smoked white fish, -9 °C: 1 months (good)",
            citation: Citation { source: &sources::LOVE_1967, place: "Table 1", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: PracticalLife { item: "smoked white fish", criterion: "inedible", celsius: -9.0, life: days(90.0) },
        row: Row {
            table: "store/practical-life",
            key: "smoked-white-fish-inedible-9",
            printed: "smoked white fish, -9 °C: 3 months (inedible)",
            citation: Citation { source: &sources::LOVE_1967, place: "Table 1", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: PracticalLife { item: "smoked white fish", criterion: "good", celsius: -21.0, life: days(105.0) },
        row: Row {
            table: "store/practical-life",
            key: "smoked-white-fish-good-21",
            printed: "smoked white fish, -21 °C: 3.5 months (good)",
            citation: Citation { source: &sources::LOVE_1967, place: "Table 1", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: PracticalLife { item: "smoked white fish", criterion: "inedible", celsius: -21.0, life: days(300.0) },
        row: Row {
            table: "store/practical-life",
            key: "smoked-white-fish-inedible-21",
            printed: "smoked white fish, -21 °C: 10 months (inedible)",
            citation: Citation { source: &sources::LOVE_1967, place: "Table 1", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: PracticalLife { item: "smoked white fish", criterion: "good", celsius: -29.0, life: days(210.0) },
        row: Row {
            table: "store/practical-life",
            key: "smoked-white-fish-good-29",
            printed: "smoked white fish, -29 °C: 7 months (good)",
            citation: Citation { source: &sources::LOVE_1967, place: "Table 1", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: PracticalLife { item: "kippers", criterion: "good", celsius: -9.0, life: days(21.0) },
        row: Row {
            table: "store/practical-life",
            key: "kippers-good-9",
            printed: "kippers, -9 °C: 3 weeks (good)",
            citation: Citation { source: &sources::LOVE_1967, place: "Table 1", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: PracticalLife { item: "kippers", criterion: "inedible", celsius: -9.0, life: days(60.0) },
        row: Row {
            table: "store/practical-life",
            key: "kippers-inedible-9",
            printed: "kippers, -9 °C: 2 months (inedible)",
            citation: Citation { source: &sources::LOVE_1967, place: "Table 1", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: PracticalLife { item: "kippers", criterion: "good", celsius: -21.0, life: days(60.0) },
        row: Row {
            table: "store/practical-life",
            key: "kippers-good-21",
            printed: "kippers, -21 °C: 2 months (good)",
            citation: Citation { source: &sources::LOVE_1967, place: "Table 1", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: PracticalLife { item: "kippers", criterion: "inedible", celsius: -21.0, life: days(150.0) },
        row: Row {
            table: "store/practical-life",
            key: "kippers-inedible-21",
            printed: "kippers, -21 °C: 5 months (inedible)",
            citation: Citation { source: &sources::LOVE_1967, place: "Table 1", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: PracticalLife { item: "kippers", criterion: "good", celsius: -29.0, life: days(135.0) },
        row: Row {
            table: "store/practical-life",
            key: "kippers-good-29",
            printed: "kippers, -29 °C: 4.5 months (good)",
            citation: Citation { source: &sources::LOVE_1967, place: "Table 1", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: PracticalLife { item: "white fish, gutted", criterion: "inedible", celsius: -29.0, life: days(1440.0) },
        row: Row {
            table: "store/practical-life",
            key: "white-fish-gutted-inedible-29",
            printed: "white fish, gutted, -29 °C: more than 4 years (inedible)",
            citation: Citation { source: &sources::LOVE_1967, place: "Table 1", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: PracticalLife { item: "kippers, vacuum packed", criterion: "good", celsius: -29.0, life: days(360.0) },
        row: Row {
            table: "store/practical-life",
            key: "kippers-vacuum-packed-good-29",
            printed: "kippers, vacuum packed, -29 °C: more than 1 year (good)",
            citation: Citation { source: &sources::LOVE_1967, place: "Table 1", standing: Standing::QualityAdvice, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "column taken to be -29 C from its position",
        },
    },
    Cited {
        value: PracticalLife { item: "beef, regular cuts", criterion: "practical storage life", celsius: -17.78, life: days(360.0) },
        row: Row {
            table: "store/practical-life",
            key: "beef-regular-cuts-17-78",
            printed: "beef, regular cuts, -17.78 °C: 12 months (practical storage life)",
            citation: Citation { source: &sources::WFLO_FROZEN_MEATS, place: "expected storage life table (0 F and -20 F columns)", standing: Standing::QualityAdvice, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: PracticalLife { item: "beef, regular cuts", criterion: "practical storage life", celsius: -28.89, life: days(540.0) },
        row: Row {
            table: "store/practical-life",
            key: "beef-regular-cuts-28-89",
            printed: "beef, regular cuts, -28.89 °C: 18 months (practical storage life)",
            citation: Citation { source: &sources::WFLO_FROZEN_MEATS, place: "expected storage life table (0 F and -20 F columns)", standing: Standing::QualityAdvice, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: PracticalLife { item: "lamb, regular cuts", criterion: "practical storage life", celsius: -17.78, life: days(360.0) },
        row: Row {
            table: "store/practical-life",
            key: "lamb-regular-cuts-17-78",
            printed: "lamb, regular cuts, -17.78 °C: 12 months (practical storage life)",
            citation: Citation { source: &sources::WFLO_FROZEN_MEATS, place: "expected storage life table (0 F and -20 F columns)", standing: Standing::QualityAdvice, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: PracticalLife { item: "lamb, regular cuts", criterion: "practical storage life", celsius: -28.89, life: days(540.0) },
        row: Row {
            table: "store/practical-life",
            key: "lamb-regular-cuts-28-89",
            printed: "lamb, regular cuts, -28.89 °C: 18 months (practical storage life)",
            citation: Citation { source: &sources::WFLO_FROZEN_MEATS, place: "expected storage life table (0 F and -20 F columns)", standing: Standing::QualityAdvice, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: PracticalLife { item: "veal, regular cuts", criterion: "practical storage life", celsius: -17.78, life: days(300.0) },
        row: Row {
            table: "store/practical-life",
            key: "veal-regular-cuts-17-78",
            printed: "veal, regular cuts, -17.78 °C: 10 months (practical storage life)",
            citation: Citation { source: &sources::WFLO_FROZEN_MEATS, place: "expected storage life table (0 F and -20 F columns)", standing: Standing::QualityAdvice, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: PracticalLife { item: "veal, regular cuts", criterion: "practical storage life", celsius: -28.89, life: days(480.0) },
        row: Row {
            table: "store/practical-life",
            key: "veal-regular-cuts-28-89",
            printed: "veal, regular cuts, -28.89 °C: 16 months (practical storage life)",
            citation: Citation { source: &sources::WFLO_FROZEN_MEATS, place: "expected storage life table (0 F and -20 F columns)", standing: Standing::QualityAdvice, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: PracticalLife { item: "pork, regular cuts", criterion: "practical storage life", celsius: -17.78, life: days(300.0) },
        row: Row {
            table: "store/practical-life",
            key: "pork-regular-cuts-17-78",
            printed: "pork, regular cuts, -17.78 °C: 10 months (practical storage life)",
            citation: Citation { source: &sources::WFLO_FROZEN_MEATS, place: "expected storage life table, 0 F column", standing: Standing::QualityAdvice, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "the -20 F cell was lost in the scan",
        },
    },
    Cited {
        value: PracticalLife { item: "bacon, properly packaged", criterion: "good quality", celsius: -17.78, life: days(120.0) },
        row: Row {
            table: "store/practical-life",
            key: "bacon-properly-packaged-good-quality-17-78",
            printed: "bacon, properly packaged, -17.78 °C: 4-6 months (good quality)",
            citation: Citation { source: &sources::WFLO_FROZEN_MEATS, place: "text under the table", standing: Standing::QualityAdvice, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "text statement; the table cells for ham and bacon read 3-4 (0 F) and 5-6 (-20 F) but their row is not certain in the scan",
        },
    },
    Cited {
        value: PracticalLife { item: "sausage, properly packaged", criterion: "good quality", celsius: -17.78, life: days(60.0) },
        row: Row {
            table: "store/practical-life",
            key: "sausage-properly-packaged-good-quality-17-78",
            printed: "sausage, properly packaged, -17.78 °C: 2-4 months (good quality)",
            citation: Citation { source: &sources::WFLO_FROZEN_MEATS, place: "text under the table", standing: Standing::QualityAdvice, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Sausage storage chart
pub static SAUSAGE_CHART: [Cited<Storage>; 10] = [
    Cited {
        value: Storage { item: "fresh sausage, uncooked", edition: "undated web edition", refrigerate: FridgeTime(Keeps { printed: "1 to 2 days", days: Some((1.0, 2.0)) }), freeze: FreezerTime(Keeps { printed: "1 to 2 months", days: Some((60.0, 60.0)) }), counted_from: "" },
        row: Row {
            table: "store/sausage-chart",
            key: "sausage-chart/fresh-sausage-uncooked-unopened",
            printed: "fresh sausage, uncooked: refrigerator 1 to 2 days; freezer 1 to 2 months",
            citation: Citation { source: &sources::FSIS_SAUSAGE, place: "row 1", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "fresh sausage, uncooked", edition: "undated web edition", refrigerate: FridgeTime(Keeps { printed: "1 to 2 days", days: Some((1.0, 2.0)) }), freeze: FreezerTime(Keeps { printed: "1 to 2 months", days: Some((60.0, 60.0)) }), counted_from: "" },
        row: Row {
            table: "store/sausage-chart",
            key: "sausage-chart/fresh-sausage-uncooked-opened",
            printed: "fresh sausage, uncooked: refrigerator 1 to 2 days; freezer 1 to 2 months",
            citation: Citation { source: &sources::FSIS_SAUSAGE, place: "row 1", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "fresh sausage, after cooking by the consumer", edition: "undated web edition", refrigerate: FridgeTime(Keeps { printed: "not applicable", days: None }), freeze: FreezerTime(Keeps { printed: "2 to 3 months", days: Some((90.0, 90.0)) }), counted_from: "" },
        row: Row {
            table: "store/sausage-chart",
            key: "sausage-chart/fresh-sausage-after-cooking-by-the-consumer-unopened",
            printed: "fresh sausage, after cooking by the consumer: refrigerator not applicable; freezer 2 to 3 months",
            citation: Citation { source: &sources::FSIS_SAUSAGE, place: "row 2", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "fresh sausage, after cooking by the consumer", edition: "undated web edition", refrigerate: FridgeTime(Keeps { printed: "3 to 4 days", days: Some((3.0, 4.0)) }), freeze: FreezerTime(Keeps { printed: "2 to 3 months", days: Some((90.0, 90.0)) }), counted_from: "" },
        row: Row {
            table: "store/sausage-chart",
            key: "sausage-chart/fresh-sausage-after-cooking-by-the-consumer-opened",
            printed: "fresh sausage, after cooking by the consumer: refrigerator 3 to 4 days; freezer 2 to 3 months",
            citation: Citation { source: &sources::FSIS_SAUSAGE, place: "row 2", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "hard or dry sausage", edition: "undated web edition", refrigerate: FridgeTime(Keeps { printed: "whole: 6 weeks in pantry, indefinitely in refrigerator", days: None }), freeze: FreezerTime(Keeps { printed: "1 to 2 months", days: Some((60.0, 60.0)) }), counted_from: "" },
        row: Row {
            table: "store/sausage-chart",
            key: "sausage-chart/hard-or-dry-sausage-unopened",
            printed: "hard or dry sausage: refrigerator whole: 6 weeks in pantry, indefinitely in refrigerator; freezer 1 to 2 months",
            citation: Citation { source: &sources::FSIS_SAUSAGE, place: "row 3", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "another copy of the rule gives 5 days after opening; the FSIS chart copies say 3 weeks",
        },
    },
    Cited {
        value: Storage { item: "hard or dry sausage", edition: "undated web edition", refrigerate: FridgeTime(Keeps { printed: "3 weeks or until it turns rancid", days: Some((21.0, 21.0)) }), freeze: FreezerTime(Keeps { printed: "1 to 2 months", days: Some((60.0, 60.0)) }), counted_from: "" },
        row: Row {
            table: "store/sausage-chart",
            key: "sausage-chart/hard-or-dry-sausage-opened",
            printed: "hard or dry sausage: refrigerator 3 weeks or until it turns rancid; freezer 1 to 2 months",
            citation: Citation { source: &sources::FSIS_SAUSAGE, place: "row 3", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "another copy of the rule gives 5 days after opening; the FSIS chart copies say 3 weeks",
        },
    },
    Cited {
        value: Storage { item: "hot dogs and other cooked sausage", edition: "undated web edition", refrigerate: FridgeTime(Keeps { printed: "2 weeks", days: Some((14.0, 14.0)) }), freeze: FreezerTime(Keeps { printed: "1 to 2 months", days: Some((60.0, 60.0)) }), counted_from: "" },
        row: Row {
            table: "store/sausage-chart",
            key: "sausage-chart/hot-dogs-and-other-cooked-sausage-unopened",
            printed: "hot dogs and other cooked sausage: refrigerator 2 weeks; freezer 1 to 2 months",
            citation: Citation { source: &sources::FSIS_SAUSAGE, place: "row 4", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "hot dogs and other cooked sausage", edition: "undated web edition", refrigerate: FridgeTime(Keeps { printed: "7 days", days: Some((7.0, 7.0)) }), freeze: FreezerTime(Keeps { printed: "1 to 2 months", days: Some((60.0, 60.0)) }), counted_from: "" },
        row: Row {
            table: "store/sausage-chart",
            key: "sausage-chart/hot-dogs-and-other-cooked-sausage-opened",
            printed: "hot dogs and other cooked sausage: refrigerator 7 days; freezer 1 to 2 months",
            citation: Citation { source: &sources::FSIS_SAUSAGE, place: "row 4", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "summer sausage (semi-dry), keep refrigerated", edition: "undated web edition", refrigerate: FridgeTime(Keeps { printed: "3 months", days: Some((90.0, 90.0)) }), freeze: FreezerTime(Keeps { printed: "1 to 2 months", days: Some((60.0, 60.0)) }), counted_from: "" },
        row: Row {
            table: "store/sausage-chart",
            key: "sausage-chart/summer-sausage-semi-dry-keep-refrigerated-unopened",
            printed: "summer sausage (semi-dry), keep refrigerated: refrigerator 3 months; freezer 1 to 2 months",
            citation: Citation { source: &sources::FSIS_SAUSAGE, place: "row 5", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: Storage { item: "summer sausage (semi-dry), keep refrigerated", edition: "undated web edition", refrigerate: FridgeTime(Keeps { printed: "3 weeks", days: Some((21.0, 21.0)) }), freeze: FreezerTime(Keeps { printed: "1 to 2 months", days: Some((60.0, 60.0)) }), counted_from: "" },
        row: Row {
            table: "store/sausage-chart",
            key: "sausage-chart/summer-sausage-semi-dry-keep-refrigerated-opened",
            printed: "summer sausage (semi-dry), keep refrigerated: refrigerator 3 weeks; freezer 1 to 2 months",
            citation: Citation { source: &sources::FSIS_SAUSAGE, place: "row 5", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Thawing in shops, Food Code 2022
pub static THAW_FOOD_CODE_FRIDGE: Cited<PrintedTemperature> = Cited {
        value: PrintedTemperature::Both(41.0, 5.0),
        row: Row {
            table: "store/thaw-food-code",
            key: "thaw-fridge",
            printed: "thaw under refrigeration, food at or below, 41 °F",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-501.13(A)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Thawing in shops, Food Code 2022
pub static THAW_FOOD_CODE_WATER: Cited<PrintedTemperature> = Cited {
        value: PrintedTemperature::Both(70.0, 21.0),
        row: Row {
            table: "store/thaw-food-code",
            key: "thaw-water",
            printed: "running water at or below 70 F with flow that floats off particles; RTE never above 41 F; raw at most 4 h above 41 F counting preparation or re-chill, 70 °F",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-501.13(B)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Thawing in shops, Food Code 2022
pub static THAW_FOOD_CODE_WATER_TIME: Cited<Time> = Cited {
        value: hours(4.0),
        row: Row {
            table: "store/thaw-food-code",
            key: "thaw-water",
            printed: "running water at or below 70 F with flow that floats off particles; RTE never above 41 F; raw at most 4 h above 41 F counting preparation or re-chill, 70 °F",
            citation: Citation { source: &sources::FOODCODE2022, place: "3-501.13(B)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Thawing a whole turkey
pub static THAW_TURKEY: [Cited<ThawBird>; 4] = [
    Cited {
        value: ThawBird { mass: (pounds(4.0), pounds(12.0)), refrigerator: (days(1.0), days(3.0)), cold_water: (hours(2.0), hours(6.0)) },
        row: Row {
            table: "store/thaw-turkey",
            key: "4-to-12-lb",
            printed: "4 to 12 lb: refrigerator 1 to 3 days, cold water 2 to 6 h",
            citation: Citation { source: &sources::FSIS_TURKEY_THAW, place: "4 to 12 lb line", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "older USDA tables still quoted by producers are one day shorter (1-2, 2-3, 3-4 days)",
        },
    },
    Cited {
        value: ThawBird { mass: (pounds(12.0), pounds(16.0)), refrigerator: (days(3.0), days(4.0)), cold_water: (hours(6.0), hours(8.0)) },
        row: Row {
            table: "store/thaw-turkey",
            key: "12-to-16-lb",
            printed: "12 to 16 lb: refrigerator 3 to 4 days, cold water 6 to 8 h",
            citation: Citation { source: &sources::FSIS_TURKEY_THAW, place: "12 to 16 lb line", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "older USDA tables still quoted by producers are one day shorter (1-2, 2-3, 3-4 days)",
        },
    },
    Cited {
        value: ThawBird { mass: (pounds(16.0), pounds(20.0)), refrigerator: (days(4.0), days(5.0)), cold_water: (hours(8.0), hours(10.0)) },
        row: Row {
            table: "store/thaw-turkey",
            key: "16-to-20-lb",
            printed: "16 to 20 lb: refrigerator 4 to 5 days, cold water 8 to 10 h",
            citation: Citation { source: &sources::FSIS_TURKEY_THAW, place: "16 to 20 lb line", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "older USDA tables still quoted by producers are one day shorter (1-2, 2-3, 3-4 days)",
        },
    },
    Cited {
        value: ThawBird { mass: (pounds(20.0), pounds(24.0)), refrigerator: (days(5.0), days(6.0)), cold_water: (hours(10.0), hours(12.0)) },
        row: Row {
            table: "store/thaw-turkey",
            key: "20-to-24-lb",
            printed: "20 to 24 lb: refrigerator 5 to 6 days, cold water 10 to 12 h",
            citation: Citation { source: &sources::FSIS_TURKEY_THAW, place: "20 to 24 lb line", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "older USDA tables still quoted by producers are one day shorter (1-2, 2-3, 3-4 days)",
        },
    },
];

/// Thawing
pub static THAW_LEAST: Cited<f64> = Cited {
        value: 5.0,
        row: Row {
            table: "store/thaw",
            key: "refrigerator-time",
            printed: "refrigerator, time: 24 h per 5 lb (at least)",
            citation: Citation { source: &sources::MSU_E3259, place: "refrigerator bullets", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Thawing
pub static THAW_USUAL: Cited<f64> = Cited {
        value: 4.0,
        row: Row {
            table: "store/thaw",
            key: "refrigerator-time-whole-turkey-and-meat",
            printed: "refrigerator, time, whole turkey and meat: 24 h per 4 to 5 lb",
            citation: Citation { source: &sources::FSIS_TURKEY_THAW, place: "refrigerator section", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Thawing
pub static THAW_SMALL: Cited<Time> = Cited {
        value: days(2.0),
        row: Row {
            table: "store/thaw",
            key: "refrigerator-hold-after-thawing-ground-meat-stew-me",
            printed: "refrigerator, hold after thawing: ground meat, stew meat, poultry, seafood: 1 to 2 days",
            citation: Citation { source: &sources::MSU_E3259, place: "refrigerator bullets", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Thawing
pub static THAW_CUTS: Cited<Time> = Cited {
        value: days(5.0),
        row: Row {
            table: "store/thaw",
            key: "refrigerator-hold-after-thawing-red-meat-cuts",
            printed: "refrigerator, hold after thawing: red meat cuts: 3 to 5 days",
            citation: Citation { source: &sources::MSU_E3259, place: "refrigerator bullets", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Thawing
pub static THAW_REFREEZE: Cited<()> = Cited {
        value: (),
        row: Row {
            table: "store/thaw",
            key: "refrigerator-refreeze-without-cooking",
            printed: "refrigerator, refreeze without cooking: allowed, some loss of quality",
            citation: Citation { source: &sources::MSU_E3259, place: "refrigerator bullets", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Thawing
pub static THAW_WATER: Cited<f64> = Cited {
        value: 30.0,
        row: Row {
            table: "store/thaw",
            key: "cold-water-time",
            printed: "cold water, time: 30 min per lb",
            citation: Citation { source: &sources::FSIS_TURKEY_THAW, place: "cold water section", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Thawing
pub static THAW_REFREEZE_WATER: Cited<()> = Cited {
        value: (),
        row: Row {
            table: "store/thaw",
            key: "cold-water-refreeze-without-cooking",
            printed: "cold water, refreeze without cooking: not allowed; cook first",
            citation: Citation { source: &sources::MSU_E3259, place: "cold water bullets", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Thawing
pub static THAW_REFREEZE_MICROWAVE: Cited<()> = Cited {
        value: (),
        row: Row {
            table: "store/thaw",
            key: "microwave-cook-at-once-refreeze-only-after-cookin",
            printed: "microwave, cook at once; refreeze only after cooking: cook immediately",
            citation: Citation { source: &sources::MSU_E3259, place: "microwave bullets", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Thawing
pub static THAW_COOK: Cited<()> = Cited {
        value: (),
        row: Row {
            table: "store/thaw",
            key: "none-cook-from-frozen-cooking-time",
            printed: "none (cook from frozen), cooking time: 50 percent longer",
            citation: Citation { source: &sources::MSU_E3259, place: "last paragraph", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Thawing
pub static THAW_FISH_PACK: Cited<()> = Cited {
        value: (),
        row: Row {
            table: "store/thaw",
            key: "reduced-oxygen-packed-fish-l-open-package",
            printed: "reduced-oxygen packed fish labelled keep frozen until use, open package: remove from package before thawing in the refrigerator, or before or immediately after thawing in running water",
            citation: Citation { source: &sources::MSU_VACFISH, place: "quoted label text", standing: Standing::Guidance, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Thawing
pub static THAW_COUNTER: Cited<()> = Cited {
        value: (),
        row: Row {
            table: "store/thaw",
            key: "counter-warm-room-car-bas-forbidden",
            printed: "counter, warm room, car, basement, forbidden: never",
            citation: Citation { source: &sources::MSU_E3259, place: "first paragraph", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };
