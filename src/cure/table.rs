// Made from references/ by references/pipeline. Do not edit: change the reference file.

use crate::cite::{Citation, Cited, Date, InForce, Row, Seen, Standing, sources};
use super::limit::{AdditiveBasis, AdditiveGroup, AdditiveLimit, Agents, BaconFormula, BaconLimit, CountedAs, IngoingLimit, MeasuredOn, Method, ProductLimit};
use super::premix::SoldStrength;
use crate::authority::Authority;
use crate::finding::Limit;
use crate::level::*;
use crate::range::Range;

/// Nitrites and nitrates, Australia and New Zealand
pub static AUSTRALIA_NEW_ZEALAND: [Cited<ProductLimit>; 6] = [
    Cited {
        value: ProductLimit { authority: Authority::AustraliaNewZealand, product_key: "anz/commercially-sterile-canned-cured-meat", product: "commercially sterile canned cured meat", agents: Agents::Nitrite, counted_as: CountedAs::NitrateAndNitriteAsSodiumNitrite, measured_on: MeasuredOn::PresentInTheFood, limit: Limit::AtMost(50.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/australia-new-zealand",
            key: "s15-8-2-1",
            printed: "50 mg/kg",
            citation: Citation { source: &sources::FSANZ_S15, place: "Schedule 15, S15-5, item 8.2.1", standing: Standing::Law, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::AustraliaNewZealand, product_key: "anz/cured-meat", product: "cured meat", agents: Agents::Nitrite, counted_as: CountedAs::NitrateAndNitriteAsSodiumNitrite, measured_on: MeasuredOn::PresentInTheFood, limit: Limit::AtMost(125.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/australia-new-zealand",
            key: "s15-8-2-2",
            printed: "125 mg/kg",
            citation: Citation { source: &sources::FSANZ_S15, place: "Schedule 15, S15-5, item 8.2.2", standing: Standing::Law, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "The 125 figure is also reported by nz-rmp-2009 (secondary).",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::AustraliaNewZealand, product_key: "anz/dried-meat", product: "dried meat", agents: Agents::Nitrite, counted_as: CountedAs::NitrateAndNitriteAsSodiumNitrite, measured_on: MeasuredOn::PresentInTheFood, limit: Limit::AtMost(125.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/australia-new-zealand",
            key: "s15-8-2-3",
            printed: "125 mg/kg",
            citation: Citation { source: &sources::FSANZ_S15, place: "Schedule 15, S15-5, item 8.2.3", standing: Standing::Law, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::AustraliaNewZealand, product_key: "anz/slow-dried-cured-meat", product: "slow dried cured meat", agents: Agents::Nitrate, counted_as: CountedAs::NitrateAndNitriteAsSodiumNitrite, measured_on: MeasuredOn::PresentInTheFood, limit: Limit::AtMost(500.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/australia-new-zealand",
            key: "s15-8-2-4",
            printed: "500 mg/kg",
            citation: Citation { source: &sources::FSANZ_S15, place: "Schedule 15, S15-5, item 8.2.4", standing: Standing::Law, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::AustraliaNewZealand, product_key: "anz/processed-comminuted-meat-poultry-and-game", product: "processed comminuted meat, poultry and game", agents: Agents::Nitrite, counted_as: CountedAs::NitrateAndNitriteAsSodiumNitrite, measured_on: MeasuredOn::PresentInTheFood, limit: Limit::AtMost(125.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/australia-new-zealand",
            key: "s15-8-3",
            printed: "125 mg/kg",
            citation: Citation { source: &sources::FSANZ_S15, place: "Schedule 15, S15-5, item 8.3", standing: Standing::Law, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::AustraliaNewZealand, product_key: "anz/fermented-uncooked-processed-comminuted-meat", product: "fermented, uncooked processed comminuted meat", agents: Agents::Nitrate, counted_as: CountedAs::NitrateAndNitriteAsSodiumNitrite, measured_on: MeasuredOn::PresentInTheFood, limit: Limit::AtMost(500.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/australia-new-zealand",
            key: "s15-8-3-1",
            printed: "500 mg/kg",
            citation: Citation { source: &sources::FSANZ_S15, place: "Schedule 15, S15-5, item 8.3.1", standing: Standing::Law, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
];

/// Nitrites and nitrates, Canada
pub static CANADA: [Cited<ProductLimit>; 5] = [
    Cited {
        value: ProductLimit { authority: Authority::Canada, product_key: "ca/cured", product: "any product called cured", agents: Agents::Both, counted_as: CountedAs::SaltsAsWeighed, measured_on: MeasuredOn::Ingoing, limit: Limit::AtLeast(100.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/canada",
            key: "cured-min",
            printed: "100 ppm",
            citation: Citation { source: &sources::CFIA_MHMP_4_13, place: "4.13.1", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "Current CFIA guidance keeps 'at least 100 ppm' via the Canadian Standards of Identity, volume 7.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::Canada, product_key: "ca/cured", product: "any product called cured", agents: Agents::Both, counted_as: CountedAs::SaltsAsWeighed, measured_on: MeasuredOn::Ingoing, limit: Limit::AtMost(200.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/canada",
            key: "cured-max",
            printed: "200 ppm",
            citation: Citation { source: &sources::CFIA_MHMP_4_13, place: "4.13.1", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "Archived text; the current preventive-control page restates only the minimum and refers to the additive list for maxima.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::Canada, product_key: "ca/slow-cure", product: "preserved meat prepared by slow cure; dry and semi-dry sausage", agents: Agents::Nitrate, counted_as: CountedAs::SaltsAsWeighed, measured_on: MeasuredOn::Ingoing, limit: Limit::AtMost(200.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/canada",
            key: "nitrate-slowcure",
            printed: "200 ppm",
            citation: Citation { source: &sources::CA_PRESERV_LIST_COPY, place: "Part 1 Class 1, potassium nitrate, items (2) and (3)", standing: Standing::Law, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "Printed as 0.32 ounce per 100 pounds or 200 parts per million, calculated prior to any smoking, cooking or fermentation; cover pickle/dry cure must be packed apart from spices.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::Canada, product_key: "ca/other-than-side-bacon", product: "preserved meat and poultry meat other than side bacon", agents: Agents::Nitrite, counted_as: CountedAs::SaltsAsWeighed, measured_on: MeasuredOn::Ingoing, limit: Limit::AtMost(200.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/canada",
            key: "nitrite-general",
            printed: "200 ppm",
            citation: Citation { source: &sources::MEMORY_CURING, place: "not found", standing: Standing::Law, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::Canada, product_key: "ca/side-bacon", product: "side bacon", agents: Agents::Nitrite, counted_as: CountedAs::SaltsAsWeighed, measured_on: MeasuredOn::Ingoing, limit: Limit::AtMost(120.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/canada",
            key: "nitrite-sidebacon",
            printed: "120 ppm",
            citation: Citation { source: &sources::MEMORY_CURING, place: "not found", standing: Standing::Law, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "No separate dry-cured bacon figure remembered: treat 120 as covering all side bacon.",
        },
    },
];

/// Nitrites and nitrates, Codex Alimentarius
pub static CODEX: [Cited<ProductLimit>; 8] = [
    Cited {
        value: ProductLimit { authority: Authority::Codex, product_key: "codex/0822", product: "heat-treated processed meat, poultry, game in whole pieces or cuts (cooked cured ham CXS 96, pork shoulder CXS 97)", agents: Agents::Nitrite, counted_as: CountedAs::NitriteIon, measured_on: MeasuredOn::Residual, limit: Limit::AtMost(80.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/codex",
            key: "0822",
            printed: "80 mg/kg expressed as NO2",
            citation: Citation { source: &sources::CODEX_GSFA_249, place: "08.2.2.0, notes 32 and 288", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::Codex, product_key: "codex/083", product: "processed comminuted meat, poultry, game (luncheon meat CXS 89, chopped meat CXS 98)", agents: Agents::Nitrite, counted_as: CountedAs::NitriteIon, measured_on: MeasuredOn::Residual, limit: Limit::AtMost(80.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/codex",
            key: "083",
            printed: "80 mg/kg expressed as NO2",
            citation: Citation { source: &sources::CODEX_GSFA_249, place: "08.3.0.0, notes 32, 286, 287", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::Codex, product_key: "codex/cornedbeef", product: "corned beef (CXS 88)", agents: Agents::Nitrite, counted_as: CountedAs::NitriteIon, measured_on: MeasuredOn::Residual, limit: Limit::AtMost(30.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/codex",
            key: "cornedbeef",
            printed: "30 mg/kg expressed as NO2",
            citation: Citation { source: &sources::CODEX_GSFA_249, place: "08.3.0.0, note 287", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::Codex, product_key: "codex/cxs88-old-in", product: "corned beef, older CODEX STAN 88-1981", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::IngoingOnProduct, limit: Limit::AtMost(100.0), residual_cap: None, investigate_above: None, superseded: true },
        row: Row {
            table: "cure/codex",
            key: "cxs88-old-in",
            printed: "100 mg/kg expressed as NaNO2",
            citation: Citation { source: &sources::CODEX_CXS88_OLD, place: "4.1.1", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "Superseded by the GSFA. Superseded, and still quoted.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::Codex, product_key: "codex/cxs88-old-res", product: "corned beef, older CODEX STAN 88-1981", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::Residual, limit: Limit::AtMost(50.0), residual_cap: None, investigate_above: None, superseded: true },
        row: Row {
            table: "cure/codex",
            key: "cxs88-old-res",
            printed: "50 mg/kg expressed as NaNO2",
            citation: Citation { source: &sources::CODEX_CXS88_OLD, place: "4.1.2", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "Superseded by the GSFA. Superseded, and still quoted.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::Codex, product_key: "codex/cxs96-old-in", product: "cooked cured ham and similar, older standards", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::IngoingOnProduct, limit: Limit::AtMost(200.0), residual_cap: None, investigate_above: None, superseded: true },
        row: Row {
            table: "cure/codex",
            key: "cxs96-old-in",
            printed: "200 mg/kg expressed as NaNO2",
            citation: Citation { source: &sources::MEMORY_CURING, place: "not found", standing: Standing::Law, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "Superseded by the GSFA. Superseded, and still quoted.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::Codex, product_key: "codex/cxs96-old-res", product: "cooked cured ham and similar, older standards", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::Residual, limit: Limit::AtMost(125.0), residual_cap: None, investigate_above: None, superseded: true },
        row: Row {
            table: "cure/codex",
            key: "cxs96-old-res",
            printed: "125 mg/kg expressed as NaNO2",
            citation: Citation { source: &sources::MEMORY_CURING, place: "not found", standing: Standing::Law, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "Superseded by the GSFA. Superseded, and still quoted.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::Codex, product_key: "codex/0162", product: "ripened cheese", agents: Agents::Nitrate, counted_as: CountedAs::NitrateIon, measured_on: MeasuredOn::Residual, limit: Limit::AtMost(35.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/codex",
            key: "0162",
            printed: "35 mg/kg expressed as NO3",
            citation: Citation { source: &sources::CODEX_GSFA_0162, place: "row NITRATES 35 mg/kg", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "The note column is empty in the copy; GSFA note 30 'as residual NO3 ion' was read, its attachment to this row is from memory.",
        },
    },
];

/// Nitrites, Denmark
pub static DENMARK: [Cited<ProductLimit>; 4] = [
    Cited {
        value: ProductLimit { authority: Authority::Denmark, product_key: "dk/heat-treated", product: "heat-treated meat products (e.g. boiled ham, 08.3.2)", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::IngoingOnProduct, limit: Limit::AtMost(60.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/denmark",
            key: "heat",
            printed: "60 mg/kg expressed as NaNO2",
            citation: Citation { source: &sources::DK_CONSULT_2025, place: "boiled-ham example", standing: Standing::Law, seen: Seen::Reported },
            in_force: InForce::between(None, None),
            note: "Applies also to imported products. Decision (EU) 2024/1225 covered heat-treated products only until 9 October 2025; the 2025 article says 60 continues after that date, so a later approval must exist but was not found. Check before use.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::Denmark, product_key: "dk/meat-in-general", product: "meat products in general", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::IngoingOnProduct, limit: Limit::AtMost(60.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/denmark",
            key: "general",
            printed: "60 mg/kg expressed as NaNO2",
            citation: Citation { source: &sources::MEMORY_CURING, place: "not found", standing: Standing::Law, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::Denmark, product_key: "dk/fermented-and-rolled", product: "fermented salami and some traditional rolled products", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::IngoingOnProduct, limit: Limit::AtMost(100.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/denmark",
            key: "100",
            printed: "100 mg/kg expressed as NaNO2",
            citation: Citation { source: &sources::MEMORY_CURING, place: "not found", standing: Standing::Law, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "Product list uncertain.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::Denmark, product_key: "dk/semi-preserved-and-bacon", product: "semi-preserved, bacon, Wiltshire-type", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::IngoingOnProduct, limit: Limit::AtMost(150.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/denmark",
            key: "150",
            printed: "150 mg/kg expressed as NaNO2",
            citation: Citation { source: &sources::MEMORY_CURING, place: "not found", standing: Standing::Law, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "Product list uncertain.",
        },
    },
];

/// Nitrites and nitrates, European Union
pub static EU: [Cited<ProductLimit>; 88] = [
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/ripened-cheese", product: "hard, semi-hard and semi-soft cheese", agents: Agents::Nitrate, counted_as: CountedAs::NotStated, measured_on: MeasuredOn::CheeseMilk, limit: Limit::AtMost(150.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "0172-nitrate-old",
            printed: "150 mg/kg",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 01.7.2, E 251-252, value 150, footnotes (30)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2026, 10, 9))),
            note: "Basis is the cheese milk (or equivalent level if added after whey removal and water addition), footnote 30; the old row does not name the salt; NaNO3 is the customary reading (memory).",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/ripened-cheese", product: "hard, semi-hard and semi-soft cheese", agents: Agents::Nitrate, counted_as: CountedAs::NitrateIon, measured_on: MeasuredOn::CheeseMilk, limit: Limit::AtMost(75.0), residual_cap: None, investigate_above: Some(35.0), superseded: false },
        row: Row {
            table: "cure/eu",
            key: "0172-nitrate-new",
            printed: "75 mg/kg expressed as NO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 01.7.2, E 251-252, value 75, footnotes (30) (XA) (XB)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2026, 10, 9)), None),
            note: "Basis is the cheese milk (or equivalent level if added after whey removal and water addition), footnote 30.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/swedish-traditional-cheese", product: "three named traditional Swedish cheeses (Gäsene >= 11 months, Kvibille cheddar >= 4 months, Falköping >= 12 months)", agents: Agents::Nitrate, counted_as: CountedAs::NitrateIon, measured_on: MeasuredOn::CheeseMilk, limit: Limit::AtMost(110.0), residual_cap: None, investigate_above: Some(35.0), superseded: false },
        row: Row {
            table: "cure/eu",
            key: "0172-nitrate-se",
            printed: "110 mg/kg expressed as NO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 01.7.2, E 251-252, value 110, footnotes (30) (XA) (XB)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2027, 10, 9))),
            note: "Basis is the cheese milk (or equivalent level if added after whey removal and water addition), footnote 30.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/whey-cheese", product: "cheese milk of hard, semi-hard and semi-soft cheese", agents: Agents::Nitrate, counted_as: CountedAs::NotStated, measured_on: MeasuredOn::CheeseMilk, limit: Limit::AtMost(150.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "0174-nitrate-old",
            printed: "150 mg/kg",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 01.7.4, E 251-252, value 150, footnotes (30)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2026, 10, 9))),
            note: "Basis is the cheese milk (or equivalent level if added after whey removal and water addition), footnote 30; NaNO3 is the customary reading (memory).",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/whey-cheese", product: "cheese milk of hard, semi-hard and semi-soft cheese", agents: Agents::Nitrate, counted_as: CountedAs::NitrateIon, measured_on: MeasuredOn::CheeseMilk, limit: Limit::AtMost(75.0), residual_cap: None, investigate_above: Some(35.0), superseded: false },
        row: Row {
            table: "cure/eu",
            key: "0174-nitrate-new",
            printed: "75 mg/kg expressed as NO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 01.7.4, E 251-252, value 75, footnotes (30) (XA) (XB)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2026, 10, 9)), None),
            note: "Basis is the cheese milk (or equivalent level if added after whey removal and water addition), footnote 30; this row was fixed by corrigendum 32023R2108R(01).",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/cheese-product", product: "hard, semi-hard and semi-soft ripened products", agents: Agents::Nitrate, counted_as: CountedAs::NotStated, measured_on: MeasuredOn::CheeseMilk, limit: Limit::AtMost(150.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "0176-nitrate-old",
            printed: "150 mg/kg",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 01.7.6, E 251-252, value 150, footnotes (30)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2026, 10, 9))),
            note: "Basis is the cheese milk (or equivalent level if added after whey removal and water addition), footnote 30; NaNO3 is the customary reading (memory).",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/cheese-product", product: "hard, semi-hard and semi-soft ripened products", agents: Agents::Nitrate, counted_as: CountedAs::NitrateIon, measured_on: MeasuredOn::CheeseMilk, limit: Limit::AtMost(75.0), residual_cap: None, investigate_above: Some(35.0), superseded: false },
        row: Row {
            table: "cure/eu",
            key: "0176-nitrate-new",
            printed: "75 mg/kg expressed as NO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 01.7.6, E 251-252, value 75, footnotes (30) (XA) (XB)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2026, 10, 9)), None),
            note: "Basis is the cheese milk (or equivalent level if added after whey removal and water addition), footnote 30.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/cheese-analogue", product: "dairy-based cheese analogue", agents: Agents::Nitrate, counted_as: CountedAs::NotStated, measured_on: MeasuredOn::CheeseMilk, limit: Limit::AtMost(150.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "018-nitrate-old",
            printed: "150 mg/kg",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 01.8, E 251-252, value 150, footnotes (30)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2025, 10, 9))),
            note: "Basis is the cheese milk (or equivalent level if added after whey removal and water addition), footnote 30; NaNO3 is the customary reading (memory).",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/cheese-analogue", product: "dairy-based cheese analogue", agents: Agents::Nitrate, counted_as: CountedAs::NitrateIon, measured_on: MeasuredOn::CheeseMilk, limit: Limit::AtMost(75.0), residual_cap: None, investigate_above: Some(35.0), superseded: false },
        row: Row {
            table: "cure/eu",
            key: "018-nitrate-new",
            printed: "75 mg/kg expressed as NO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 01.8, E 251-252, value 75, footnotes (30) (XA) (XB)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 10, 9)), None),
            note: "Basis is the cheese milk (or equivalent level if added after whey removal and water addition), footnote 30; one year EARLIER than real cheese.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/listed-preparation", product: "only: lomo de cerdo adobado, pincho moruno, careta de cerdo adobada, costilla de cerdo adobada, Kasseler, Bräte, Surfleisch, toorvorst, šašlõkk, ahjupraad, kiełbasa surowa biała, kiełbasa surowa metka, tatar wołowy, golonka peklowana", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::IngoingOnProduct, limit: Limit::AtMost(150.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "082-nitrite-old",
            printed: "150 mg/kg expressed as NaNO2",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.2, E 249-250, value 150, footnotes (7)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2025, 10, 9))),
            note: "All other raw meat preparations: no nitrite permitted.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/listed-preparation", product: "only: lomo de cerdo adobado, pincho moruno, careta de cerdo adobada, costilla de cerdo adobada, Kasseler, Bräte, Surfleisch, toorvorst, šašlõkk, ahjupraad, kiełbasa surowa biała, kiełbasa surowa metka, tatar wołowy, golonka peklowana", agents: Agents::Nitrite, counted_as: CountedAs::NitriteIon, measured_on: MeasuredOn::IngoingOnProduct, limit: Limit::AtMost(80.0), residual_cap: Some(45.0), investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "082-nitrite-new",
            printed: "80 mg/kg expressed as NO2",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.2, E 249-250, value 80, footnotes (XC) (XD)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 10, 9)), None),
            note: "All other raw meat preparations: no nitrite permitted.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/not-heat-treated", product: "all", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::IngoingOnProduct, limit: Limit::AtMost(150.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "0831-nitrite-old",
            printed: "150 mg/kg expressed as NaNO2",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.1, E 249-250, value 150, footnotes (7)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2025, 10, 9))),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/not-heat-treated", product: "all", agents: Agents::Nitrite, counted_as: CountedAs::NitriteIon, measured_on: MeasuredOn::IngoingOnProduct, limit: Limit::AtMost(80.0), residual_cap: Some(45.0), investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "0831-nitrite-new",
            printed: "80 mg/kg expressed as NO2",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.1, E 249-250, value 80, footnotes (XC) (XD)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 10, 9)), None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/not-heat-treated", product: "all", agents: Agents::Nitrate, counted_as: CountedAs::SodiumNitrate, measured_on: MeasuredOn::IngoingOnProduct, limit: Limit::AtMost(150.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "0831-nitrate-old",
            printed: "150 mg/kg expressed as NaNO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.1, E 251-252, value 150, footnotes (7)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2025, 10, 9))),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/not-heat-treated", product: "all", agents: Agents::Nitrate, counted_as: CountedAs::NitrateIon, measured_on: MeasuredOn::IngoingOnProduct, limit: Limit::AtMost(90.0), residual_cap: None, investigate_above: Some(90.0), superseded: false },
        row: Row {
            table: "cure/eu",
            key: "0831-nitrate-new",
            printed: "90 mg/kg expressed as NO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.1, E 251-252, value 90, footnotes (XA) (XE)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 10, 9)), None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/bacon-primals-and-dry-sausages-without-nitrite", product: "only large bacon primals and dry sausages without nitrites added", agents: Agents::Nitrate, counted_as: CountedAs::NitrateIon, measured_on: MeasuredOn::IngoingOnProduct, limit: Limit::AtMost(110.0), residual_cap: None, investigate_above: Some(110.0), superseded: false },
        row: Row {
            table: "cure/eu",
            key: "0831-nitrate-new-nonitrite",
            printed: "110 mg/kg expressed as NO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.1, E 251-252, value 110, footnotes (XA) (XF)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 10, 9)), None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/sterilised", product: "only sterilised meat products (Fo > 3.00)", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::IngoingOnProduct, limit: Limit::AtMost(100.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "0832-nitrite-ster-old",
            printed: "100 mg/kg expressed as NaNO2",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.2, E 249-250, value 100, footnotes (7) (58) (59)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2025, 10, 9))),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/sterilised", product: "only sterilised meat products (Fo > 3.00)", agents: Agents::Nitrite, counted_as: CountedAs::NitriteIon, measured_on: MeasuredOn::IngoingOnProduct, limit: Limit::AtMost(55.0), residual_cap: Some(25.0), investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "0832-nitrite-ster-new",
            printed: "55 mg/kg expressed as NO2",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.2, E 249-250, value 55, footnotes (58) (59) (XC) (XG)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 10, 9)), None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/heat-treated", product: "except sterilised (Fo > 3.00)", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::IngoingOnProduct, limit: Limit::AtMost(150.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "0832-nitrite-old",
            printed: "150 mg/kg expressed as NaNO2",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.2, E 249-250, value 150, footnotes (7) (59)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2025, 10, 9))),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/heat-treated", product: "except sterilised (Fo > 3.00)", agents: Agents::Nitrite, counted_as: CountedAs::NitriteIon, measured_on: MeasuredOn::IngoingOnProduct, limit: Limit::AtMost(80.0), residual_cap: Some(45.0), investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "0832-nitrite-new",
            printed: "80 mg/kg expressed as NO2",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.2, E 249-250, value 80, footnotes (59) (XC) (XD)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 10, 9)), None),
            note: "No E 251-252 row exists in 08.3.2: adding nitrate to heat-treated products is not authorised.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/immersed-in-general", product: "traditionally cured products in general", agents: Agents::Nitrite, counted_as: CountedAs::NitriteIon, measured_on: MeasuredOn::ResidualThroughShelfLife, limit: Limit::AtMost(30.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08341-nitrite-generic-new",
            printed: "30 mg/kg expressed as NO2",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.1, E 249-250, value 30, footnotes (XH)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 10, 9)), None),
            note: "Read here as the fallback row, with the product-specific rows prevailing; that reading is the researcher's.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/wiltshire-bacon", product: "Wiltshire bacon and similar", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::ResidualAtEndOfProcess, limit: Limit::AtMost(175.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08341-nitrite-wiltbacon-old",
            printed: "175 mg/kg expressed as NaNO2",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.1, E 249-250, value 175, footnotes (39)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2025, 10, 9))),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/wiltshire-bacon", product: "Wiltshire bacon and similar", agents: Agents::Nitrite, counted_as: CountedAs::NitriteIon, measured_on: MeasuredOn::ResidualThroughShelfLife, limit: Limit::AtMost(105.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08341-nitrite-wiltbacon-new",
            printed: "105 mg/kg expressed as NO2",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.1, E 249-250, value 105, footnotes (XH)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 10, 9)), None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/wiltshire-bacon", product: "Wiltshire bacon and similar", agents: Agents::Nitrate, counted_as: CountedAs::SodiumNitrate, measured_on: MeasuredOn::ResidualAtEndOfProcess, limit: Limit::AtMost(250.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08341-nitrate-wiltbacon-old",
            printed: "250 mg/kg expressed as NaNO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.1, E 251-252, value 250, footnotes (39) (59)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2025, 10, 9))),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/wiltshire-bacon", product: "Wiltshire bacon and similar", agents: Agents::Nitrate, counted_as: CountedAs::NitrateIon, measured_on: MeasuredOn::ResidualThroughShelfLife, limit: Limit::AtMost(150.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08341-nitrate-wiltbacon-new",
            printed: "150 mg/kg expressed as NO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.1, E 251-252, value 150, footnotes (59) (XI)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 10, 9)), None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/wiltshire-ham", product: "Wiltshire ham and similar", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::ResidualAtEndOfProcess, limit: Limit::AtMost(100.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08341-nitrite-wiltham-old",
            printed: "100 mg/kg expressed as NaNO2",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.1, E 249-250, value 100, footnotes (39)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2025, 10, 9))),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/wiltshire-ham", product: "Wiltshire ham and similar", agents: Agents::Nitrite, counted_as: CountedAs::NitriteIon, measured_on: MeasuredOn::ResidualThroughShelfLife, limit: Limit::AtMost(65.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08341-nitrite-wiltham-new",
            printed: "65 mg/kg expressed as NO2",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.1, E 249-250, value 65, footnotes (XH)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 10, 9)), None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/wiltshire-ham", product: "Wiltshire ham and similar", agents: Agents::Nitrate, counted_as: CountedAs::SodiumNitrate, measured_on: MeasuredOn::ResidualAtEndOfProcess, limit: Limit::AtMost(250.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08341-nitrate-wiltham-old",
            printed: "250 mg/kg expressed as NaNO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.1, E 251-252, value 250, footnotes (39) (59)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2025, 10, 9))),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/wiltshire-ham", product: "Wiltshire ham and similar", agents: Agents::Nitrate, counted_as: CountedAs::NitrateIon, measured_on: MeasuredOn::ResidualThroughShelfLife, limit: Limit::AtMost(150.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08341-nitrate-wiltham-new",
            printed: "150 mg/kg expressed as NO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.1, E 251-252, value 150, footnotes (59) (XI)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 10, 9)), None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/entremeada-group", product: "entremeada, entrecosto, chispe, orelheira e cabeça (salgados), toucinho fumado and similar", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::ResidualAtEndOfProcess, limit: Limit::AtMost(175.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08341-nitrite-entremeada-old",
            printed: "175 mg/kg expressed as NaNO2",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.1, E 249-250, value 175, footnotes (39)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2025, 10, 9))),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/entremeada-group", product: "entremeada, entrecosto, chispe, orelheira e cabeça (salgados), toucinho fumado and similar", agents: Agents::Nitrite, counted_as: CountedAs::NitriteIon, measured_on: MeasuredOn::ResidualThroughShelfLife, limit: Limit::AtMost(105.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08341-nitrite-entremeada-new",
            printed: "105 mg/kg expressed as NO2",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.1, E 249-250, value 105, footnotes (XH)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 10, 9)), None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/entremeada-group", product: "entremeada, entrecosto, chispe, orelheira e cabeça (salgados), toucinho fumado and similar", agents: Agents::Nitrate, counted_as: CountedAs::SodiumNitrate, measured_on: MeasuredOn::ResidualAtEndOfProcess, limit: Limit::AtMost(250.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08341-nitrate-entremeada-old",
            printed: "250 mg/kg expressed as NaNO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.1, E 251-252, value 250, footnotes (39) (59)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2025, 10, 9))),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/entremeada-group", product: "entremeada, entrecosto, chispe, orelheira e cabeça (salgados), toucinho fumado and similar", agents: Agents::Nitrate, counted_as: CountedAs::NitrateIon, measured_on: MeasuredOn::ResidualThroughShelfLife, limit: Limit::AtMost(150.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08341-nitrate-entremeada-new",
            printed: "150 mg/kg expressed as NO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.1, E 251-252, value 150, footnotes (59) (XI)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 10, 9)), None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/cured-tongue", product: "cured tongue", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::ResidualAtEndOfProcess, limit: Limit::AtMost(50.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08341-nitrite-tongue-old",
            printed: "50 mg/kg expressed as NaNO2",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.1, E 249-250, value 50, footnotes (39)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2025, 10, 9))),
            note: "No specific new nitrite row: the generic 30 mg/kg residual row applies.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/cured-tongue", product: "cured tongue", agents: Agents::Nitrate, counted_as: CountedAs::SodiumNitrate, measured_on: MeasuredOn::ResidualAtEndOfProcess, limit: Limit::AtMost(10.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08341-nitrate-tongue-old",
            printed: "10 mg/kg expressed as NaNO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.1, E 251-252, value 10, footnotes (39) (59)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2025, 10, 9))),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/cured-tongue", product: "cured tongue", agents: Agents::Nitrate, counted_as: CountedAs::NitrateIon, measured_on: MeasuredOn::ResidualThroughShelfLife, limit: Limit::AtMost(7.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08341-nitrate-tongue-new",
            printed: "7 mg/kg expressed as NO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.1, E 251-252, value 7, footnotes (59) (XI)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 10, 9)), None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/cold-smoked-reindeer", product: "kylmäsavustettu poronliha / kallrökt renkött (cold-smoked reindeer)", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::IngoingOnProduct, limit: Limit::AtMost(150.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08341-nitrite-reindeer-old",
            printed: "150 mg/kg expressed as NaNO2",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.1, E 249-250, value 150, footnotes (7)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2025, 10, 9))),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/cold-smoked-reindeer", product: "kylmäsavustettu poronliha / kallrökt renkött (cold-smoked reindeer)", agents: Agents::Nitrite, counted_as: CountedAs::NitriteIon, measured_on: MeasuredOn::IngoingOnProduct, limit: Limit::AtMost(100.0), residual_cap: Some(50.0), investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08341-nitrite-reindeer-new",
            printed: "100 mg/kg expressed as NO2",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.1, E 249-250, value 100, footnotes (XC) (XJ)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 10, 9)), None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/cold-smoked-reindeer", product: "kylmäsavustettu poronliha / kallrökt renkött (cold-smoked reindeer)", agents: Agents::Nitrate, counted_as: CountedAs::SodiumNitrate, measured_on: MeasuredOn::IngoingOnProduct, limit: Limit::AtMost(300.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08341-nitrate-reindeer-old",
            printed: "300 mg/kg expressed as NaNO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.1, E 251-252, value 300, footnotes (7)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2025, 10, 9))),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/cold-smoked-reindeer", product: "kylmäsavustettu poronliha / kallrökt renkött (cold-smoked reindeer)", agents: Agents::Nitrate, counted_as: CountedAs::NitrateIon, measured_on: MeasuredOn::IngoingOnProduct, limit: Limit::AtMost(180.0), residual_cap: None, investigate_above: Some(95.0), superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08341-nitrate-reindeer-new",
            printed: "180 mg/kg expressed as NO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.1, E 251-252, value 180, footnotes (XA) (XK)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 10, 9)), None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/filet-de-bacon", product: "bacon, filet de bacon and similar", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::IngoingOnProduct, limit: Limit::AtMost(150.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08341-nitrite-filetbacon-old",
            printed: "150 mg/kg expressed as NaNO2",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.1, E 249-250, value 150, footnotes (7)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2025, 10, 9))),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/filet-de-bacon", product: "bacon, filet de bacon and similar", agents: Agents::Nitrite, counted_as: CountedAs::NitriteIon, measured_on: MeasuredOn::IngoingOnProduct, limit: Limit::AtMost(100.0), residual_cap: Some(50.0), investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08341-nitrite-filetbacon-new",
            printed: "100 mg/kg expressed as NO2",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.1, E 249-250, value 100, footnotes (XC) (XJ)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 10, 9)), None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/filet-de-bacon", product: "bacon, filet de bacon and similar WITHOUT added nitrites", agents: Agents::Nitrate, counted_as: CountedAs::SodiumNitrate, measured_on: MeasuredOn::IngoingOnProduct, limit: Limit::AtMost(250.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08341-nitrate-filetbacon-old",
            printed: "250 mg/kg expressed as NaNO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.1, E 251-252, value 250, footnotes (7) (40) (59)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2025, 10, 9))),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/filet-de-bacon", product: "bacon, filet de bacon and similar WITHOUT added nitrites", agents: Agents::Nitrate, counted_as: CountedAs::NitrateIon, measured_on: MeasuredOn::IngoingOnProduct, limit: Limit::AtMost(180.0), residual_cap: None, investigate_above: Some(95.0), superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08341-nitrate-filetbacon-new",
            printed: "180 mg/kg expressed as NO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.1, E 251-252, value 180, footnotes (40) (59) (XA) (XK)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 10, 9)), None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/rohschinken-nass", product: "Rohschinken, nassgepökelt and similar", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::ResidualAtEndOfProcess, limit: Limit::AtMost(50.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08341-nitrite-rohschinken-nass-old",
            printed: "50 mg/kg expressed as NaNO2",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.1, E 249-250, value 50, footnotes (39)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2025, 10, 9))),
            note: "No specific new nitrite row: generic 30 mg/kg residual row applies.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/rohschinken-nass", product: "Rohschinken, nassgepökelt and similar", agents: Agents::Nitrate, counted_as: CountedAs::SodiumNitrate, measured_on: MeasuredOn::ResidualAtEndOfProcess, limit: Limit::AtMost(250.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08341-nitrate-rohschinken-nass-old",
            printed: "250 mg/kg expressed as NaNO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.1, E 251-252, value 250, footnotes (39)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2025, 10, 9))),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/rohschinken-nass", product: "Rohschinken, nassgepökelt and similar", agents: Agents::Nitrate, counted_as: CountedAs::NitrateIon, measured_on: MeasuredOn::ResidualThroughShelfLife, limit: Limit::AtMost(150.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08341-nitrate-rohschinken-nass-new",
            printed: "150 mg/kg expressed as NO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.1, E 251-252, value 150, footnotes (XI)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 10, 9)), None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/dry-cured-in-general", product: "traditionally cured products in general", agents: Agents::Nitrite, counted_as: CountedAs::NitriteIon, measured_on: MeasuredOn::ResidualThroughShelfLife, limit: Limit::AtMost(30.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08342-nitrite-generic-new",
            printed: "30 mg/kg expressed as NO2",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.2, E 249-250, value 30, footnotes (XH)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 10, 9)), None),
            note: "Read here as the fallback row, with the product-specific rows prevailing; that reading is the researcher's.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/dry-cured-bacon", product: "dry cured bacon and similar", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::ResidualAtEndOfProcess, limit: Limit::AtMost(175.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08342-nitrite-drybacon-old",
            printed: "175 mg/kg expressed as NaNO2",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.2, E 249-250, value 175, footnotes (39)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2025, 10, 9))),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/dry-cured-bacon", product: "dry cured bacon and similar", agents: Agents::Nitrite, counted_as: CountedAs::NitriteIon, measured_on: MeasuredOn::ResidualThroughShelfLife, limit: Limit::AtMost(105.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08342-nitrite-drybacon-new",
            printed: "105 mg/kg expressed as NO2",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.2, E 249-250, value 105, footnotes (XH)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 10, 9)), None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/dry-cured-bacon", product: "dry cured bacon and similar", agents: Agents::Nitrate, counted_as: CountedAs::SodiumNitrate, measured_on: MeasuredOn::ResidualAtEndOfProcess, limit: Limit::AtMost(250.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08342-nitrate-drybacon-old",
            printed: "250 mg/kg expressed as NaNO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.2, E 251-252, value 250, footnotes (39) (59)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2025, 10, 9))),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/dry-cured-bacon", product: "dry cured bacon and similar", agents: Agents::Nitrate, counted_as: CountedAs::NitrateIon, measured_on: MeasuredOn::ResidualThroughShelfLife, limit: Limit::AtMost(150.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08342-nitrate-drybacon-new",
            printed: "150 mg/kg expressed as NO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.2, E 251-252, value 150, footnotes (59) (XI)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 10, 9)), None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/dry-cured-ham", product: "dry cured ham and similar", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::ResidualAtEndOfProcess, limit: Limit::AtMost(100.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08342-nitrite-dryham-old",
            printed: "100 mg/kg expressed as NaNO2",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.2, E 249-250, value 100, footnotes (39)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2025, 10, 9))),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/dry-cured-ham", product: "dry cured ham and similar", agents: Agents::Nitrite, counted_as: CountedAs::NitriteIon, measured_on: MeasuredOn::ResidualThroughShelfLife, limit: Limit::AtMost(65.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08342-nitrite-dryham-new",
            printed: "65 mg/kg expressed as NO2",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.2, E 249-250, value 65, footnotes (XH)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 10, 9)), None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/dry-cured-ham", product: "dry cured ham and similar", agents: Agents::Nitrate, counted_as: CountedAs::SodiumNitrate, measured_on: MeasuredOn::ResidualAtEndOfProcess, limit: Limit::AtMost(250.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08342-nitrate-dryham-old",
            printed: "250 mg/kg expressed as NaNO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.2, E 251-252, value 250, footnotes (39) (59)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2025, 10, 9))),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/dry-cured-ham", product: "dry cured ham and similar", agents: Agents::Nitrate, counted_as: CountedAs::NitrateIon, measured_on: MeasuredOn::ResidualThroughShelfLife, limit: Limit::AtMost(150.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08342-nitrate-dryham-new",
            printed: "150 mg/kg expressed as NO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.2, E 251-252, value 150, footnotes (59) (XI)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 10, 9)), None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/jamon-group", product: "jamón curado, paleta curada, lomo embuchado y cecina and similar", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::ResidualAtEndOfProcess, limit: Limit::AtMost(100.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08342-nitrite-jamon-old",
            printed: "100 mg/kg expressed as NaNO2",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.2, E 249-250, value 100, footnotes (39)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2025, 10, 9))),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/jamon-group", product: "jamón curado, paleta curada, lomo embuchado y cecina and similar", agents: Agents::Nitrite, counted_as: CountedAs::NitriteIon, measured_on: MeasuredOn::ResidualThroughShelfLife, limit: Limit::AtMost(65.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08342-nitrite-jamon-new",
            printed: "65 mg/kg expressed as NO2",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.2, E 249-250, value 65, footnotes (XH)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 10, 9)), None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/jamon-group", product: "jamón curado, paleta curada, lomo embuchado y cecina and similar", agents: Agents::Nitrate, counted_as: CountedAs::SodiumNitrate, measured_on: MeasuredOn::ResidualAtEndOfProcess, limit: Limit::AtMost(250.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08342-nitrate-jamon-old",
            printed: "250 mg/kg expressed as NaNO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.2, E 251-252, value 250, footnotes (39) (59)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2025, 10, 9))),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/jamon-group", product: "jamón curado, paleta curada, lomo embuchado y cecina and similar", agents: Agents::Nitrate, counted_as: CountedAs::NitrateIon, measured_on: MeasuredOn::ResidualThroughShelfLife, limit: Limit::AtMost(150.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08342-nitrate-jamon-new",
            printed: "150 mg/kg expressed as NO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.2, E 251-252, value 150, footnotes (59) (XI)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 10, 9)), None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/presunto-group", product: "presunto, presunto da pá e paio do lombo and similar", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::ResidualAtEndOfProcess, limit: Limit::AtMost(100.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08342-nitrite-presunto-old",
            printed: "100 mg/kg expressed as NaNO2",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.2, E 249-250, value 100, footnotes (39)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2025, 10, 9))),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/presunto-group", product: "presunto, presunto da pá e paio do lombo and similar", agents: Agents::Nitrite, counted_as: CountedAs::NitriteIon, measured_on: MeasuredOn::ResidualThroughShelfLife, limit: Limit::AtMost(65.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08342-nitrite-presunto-new",
            printed: "65 mg/kg expressed as NO2",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.2, E 249-250, value 65, footnotes (XH)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 10, 9)), None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/presunto-group", product: "presunto, presunto da pá e paio do lombo and similar", agents: Agents::Nitrate, counted_as: CountedAs::SodiumNitrate, measured_on: MeasuredOn::ResidualAtEndOfProcess, limit: Limit::AtMost(250.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08342-nitrate-presunto-old",
            printed: "250 mg/kg expressed as NaNO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.2, E 251-252, value 250, footnotes (39) (59)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2025, 10, 9))),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/presunto-group", product: "presunto, presunto da pá e paio do lombo and similar", agents: Agents::Nitrate, counted_as: CountedAs::NitrateIon, measured_on: MeasuredOn::ResidualThroughShelfLife, limit: Limit::AtMost(150.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08342-nitrate-presunto-new",
            printed: "150 mg/kg expressed as NO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.2, E 251-252, value 150, footnotes (59) (XI)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 10, 9)), None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/rohschinken-trocken", product: "Rohschinken, trockengepökelt and similar", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::ResidualAtEndOfProcess, limit: Limit::AtMost(50.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08342-nitrite-rohschinken-trocken-old",
            printed: "50 mg/kg expressed as NaNO2",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.2, E 249-250, value 50, footnotes (39)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2025, 10, 9))),
            note: "No specific new nitrite row: generic 30 mg/kg residual row applies.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/rohschinken-trocken", product: "Rohschinken, trockengepökelt and similar", agents: Agents::Nitrate, counted_as: CountedAs::SodiumNitrate, measured_on: MeasuredOn::ResidualAtEndOfProcess, limit: Limit::AtMost(250.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08342-nitrate-rohschinken-trocken-old",
            printed: "250 mg/kg expressed as NaNO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.2, E 251-252, value 250, footnotes (39) (59)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2025, 10, 9))),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/rohschinken-trocken", product: "Rohschinken, trockengepökelt and similar", agents: Agents::Nitrate, counted_as: CountedAs::NitrateIon, measured_on: MeasuredOn::ResidualThroughShelfLife, limit: Limit::AtMost(150.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08342-nitrate-rohschinken-trocken-new",
            printed: "150 mg/kg expressed as NO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.2, E 251-252, value 150, footnotes (59) (XI)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 10, 9)), None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/jambon-sec-without-nitrite", product: "jambon sec, jambon sel and similar dried cured products WITHOUT added nitrites", agents: Agents::Nitrate, counted_as: CountedAs::SodiumNitrate, measured_on: MeasuredOn::ResidualAtEndOfProcess, limit: Limit::AtMost(250.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08342-nitrate-jambonsec-old",
            printed: "250 mg/kg expressed as NaNO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.2, E 251-252, value 250, footnotes (39) (40) (59)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2025, 10, 9))),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/jambon-sec-without-nitrite", product: "jambon sec, jambon sel and similar dried cured products WITHOUT added nitrites", agents: Agents::Nitrate, counted_as: CountedAs::NitrateIon, measured_on: MeasuredOn::ResidualThroughShelfLife, limit: Limit::AtMost(150.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08342-nitrate-jambonsec-new",
            printed: "150 mg/kg expressed as NO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.2, E 251-252, value 150, footnotes (40) (59) (XI)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 10, 9)), None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/otherwise-cured-in-general", product: "traditionally cured products in general", agents: Agents::Nitrite, counted_as: CountedAs::NitriteIon, measured_on: MeasuredOn::ResidualThroughShelfLife, limit: Limit::AtMost(30.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08343-nitrite-generic-new",
            printed: "30 mg/kg expressed as NO2",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.3, E 249-250, value 30, footnotes (XH)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 10, 9)), None),
            note: "Read here as the fallback row, with the product-specific rows prevailing; that reading is the researcher's.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/rohschinken-trocken-nass", product: "Rohschinken, trocken-/nassgepökelt and similar", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::ResidualAtEndOfProcess, limit: Limit::AtMost(50.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08343-nitrite-rohschinken-tn-old",
            printed: "50 mg/kg expressed as NaNO2",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.3, E 249-250, value 50, footnotes (39)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2025, 10, 9))),
            note: "No specific new nitrite row: generic 30 mg/kg residual row applies.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/rohschinken-trocken-nass", product: "Rohschinken, trocken-/nassgepökelt and similar", agents: Agents::Nitrate, counted_as: CountedAs::SodiumNitrate, measured_on: MeasuredOn::ResidualAtEndOfProcess, limit: Limit::AtMost(250.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08343-nitrate-rohschinken-tn-old",
            printed: "250 mg/kg expressed as NaNO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.3, E 251-252, value 250, footnotes (39) (59)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2025, 10, 9))),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/rohschinken-trocken-nass", product: "Rohschinken, trocken-/nassgepökelt and similar", agents: Agents::Nitrate, counted_as: CountedAs::NitrateIon, measured_on: MeasuredOn::ResidualThroughShelfLife, limit: Limit::AtMost(150.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08343-nitrate-rohschinken-tn-new",
            printed: "150 mg/kg expressed as NO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.3, E 251-252, value 150, footnotes (59) (XI)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 10, 9)), None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/jellied-veal-and-brisket", product: "jellied veal and brisket", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::ResidualAtEndOfProcess, limit: Limit::AtMost(50.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08343-nitrite-jelliedveal-old",
            printed: "50 mg/kg expressed as NaNO2",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.3, E 249-250, value 50, footnotes (39)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2025, 10, 9))),
            note: "No specific new nitrite row: generic 30 mg/kg residual row applies.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/jellied-veal-and-brisket", product: "jellied veal and brisket", agents: Agents::Nitrate, counted_as: CountedAs::SodiumNitrate, measured_on: MeasuredOn::ResidualAtEndOfProcess, limit: Limit::AtMost(10.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08343-nitrate-jelliedveal-old",
            printed: "10 mg/kg expressed as NaNO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.3, E 251-252, value 10, footnotes (39) (59)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2025, 10, 9))),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/jellied-veal-and-brisket", product: "jellied veal and brisket", agents: Agents::Nitrate, counted_as: CountedAs::NitrateIon, measured_on: MeasuredOn::ResidualThroughShelfLife, limit: Limit::AtMost(7.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08343-nitrate-jelliedveal-new",
            printed: "7 mg/kg expressed as NO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.3, E 251-252, value 7, footnotes (59) (XI)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 10, 9)), None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/rohwurst-without-nitrite", product: "Rohwürste (salami, Kantwurst) WITHOUT added nitrites", agents: Agents::Nitrate, counted_as: CountedAs::SodiumNitrate, measured_on: MeasuredOn::IngoingOnProduct, limit: Limit::AtMost(300.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08343-nitrate-rohwurst-old",
            printed: "300 mg/kg expressed as NaNO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.3, E 251-252, value 300, footnotes (40) (7)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2025, 10, 9))),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/rohwurst-without-nitrite", product: "Rohwürste (salami, Kantwurst) WITHOUT added nitrites", agents: Agents::Nitrate, counted_as: CountedAs::NitrateIon, measured_on: MeasuredOn::IngoingOnProduct, limit: Limit::AtMost(180.0), residual_cap: None, investigate_above: Some(95.0), superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08343-nitrate-rohwurst-new",
            printed: "180 mg/kg expressed as NO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.3, E 251-252, value 180, footnotes (40) (XA) (XK)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 10, 9)), None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/salchichon-without-nitrite", product: "salchichón y chorizo tradicionales de larga curación and similar WITHOUT added nitrites", agents: Agents::Nitrate, counted_as: CountedAs::SodiumNitrate, measured_on: MeasuredOn::IngoingOnProduct, limit: Limit::AtMost(250.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08343-nitrate-salchichon-old",
            printed: "250 mg/kg expressed as NaNO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.3, E 251-252, value 250, footnotes (40) (7) (59)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2025, 10, 9))),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/salchichon-without-nitrite", product: "salchichón y chorizo tradicionales de larga curación and similar WITHOUT added nitrites", agents: Agents::Nitrate, counted_as: CountedAs::NitrateIon, measured_on: MeasuredOn::IngoingOnProduct, limit: Limit::AtMost(180.0), residual_cap: None, investigate_above: Some(95.0), superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08343-nitrate-salchichon-new",
            printed: "180 mg/kg expressed as NO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.3, E 251-252, value 180, footnotes (40) (59) (XA) (XK)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 10, 9)), None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/vysocina-group", product: "vysočina, selský salám, turistický trvanlivý salám, poličan, herkules, lovecký salám, dunajská klobása, paprikáš and similar", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::IngoingOnProduct, limit: Limit::AtMost(180.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08343-nitrite-vysocina-old",
            printed: "180 mg/kg expressed as NaNO2",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.3, E 249-250, value 180, footnotes (7)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2025, 10, 9))),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/vysocina-group", product: "vysočina, selský salám, turistický trvanlivý salám, poličan, herkules, lovecký salám, dunajská klobása, paprikáš and similar", agents: Agents::Nitrite, counted_as: CountedAs::NitriteIon, measured_on: MeasuredOn::IngoingOnProduct, limit: Limit::AtMost(105.0), residual_cap: Some(50.0), investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08343-nitrite-vysocina-new",
            printed: "105 mg/kg expressed as NO2",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.3, E 249-250, value 105, footnotes (XC) (XJ)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 10, 9)), None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/julskinka-and-leverpastej", product: "Svensk julskinka, Svensk leverpastej and similar", agents: Agents::Nitrite, counted_as: CountedAs::NitriteIon, measured_on: MeasuredOn::IngoingOnProduct, limit: Limit::AtMost(100.0), residual_cap: Some(50.0), investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08343-nitrite-julskinka-new",
            printed: "100 mg/kg expressed as NO2",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.3, E 249-250, value 100, footnotes (XC) (XJ)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 10, 9)), None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/mettwurst-and-teewurst", product: "Mettwurst, Teewurst and similar", agents: Agents::Nitrite, counted_as: CountedAs::NitriteIon, measured_on: MeasuredOn::IngoingOnProduct, limit: Limit::AtMost(100.0), residual_cap: Some(50.0), investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08343-nitrite-mettwurst-new",
            printed: "100 mg/kg expressed as NO2",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.3, E 249-250, value 100, footnotes (XC) (XJ)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 10, 9)), None),
            note: "Spreadable raw sausage has a HIGHER cap than 08.3.1 in general.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/saucisson-sec-without-nitrite", product: "saucisson sec and similar WITHOUT added nitrites", agents: Agents::Nitrate, counted_as: CountedAs::SodiumNitrate, measured_on: MeasuredOn::IngoingOnProduct, limit: Limit::AtMost(250.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08343-nitrate-saucissonsec-old",
            printed: "250 mg/kg expressed as NaNO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.3, E 251-252, value 250, footnotes (40) (7) (59)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2025, 10, 9))),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/saucisson-sec-without-nitrite", product: "saucisson sec and similar WITHOUT added nitrites", agents: Agents::Nitrate, counted_as: CountedAs::NitrateIon, measured_on: MeasuredOn::IngoingOnProduct, limit: Limit::AtMost(180.0), residual_cap: None, investigate_above: Some(95.0), superseded: false },
        row: Row {
            table: "cure/eu",
            key: "08343-nitrate-saucissonsec-new",
            printed: "180 mg/kg expressed as NO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 08.3.4.3, E 251-252, value 180, footnotes (40) (59) (XA) (XK)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 10, 9)), None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/pickled-herring-and-sprat", product: "pickled herring and sprat", agents: Agents::Nitrate, counted_as: CountedAs::NotStated, measured_on: MeasuredOn::NotStated, limit: Limit::AtMost(500.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "092-nitrate-old",
            printed: "500 mg/kg",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 09.2, E 251-252, value 500, footnotes ", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, Some(Date::printed(2025, 10, 9))),
            note: "The old row has no footnote: neither basis nor salt is printed; NaNO3 is the customary reading (memory).",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::EuropeanUnion, product_key: "eu/pickled-herring-and-sprat", product: "pickled herring and sprat", agents: Agents::Nitrate, counted_as: CountedAs::NitrateIon, measured_on: MeasuredOn::IngoingOnProduct, limit: Limit::AtMost(270.0), residual_cap: Some(45.0), investigate_above: None, superseded: false },
        row: Row {
            table: "cure/eu",
            key: "092-nitrate-new",
            printed: "270 mg/kg expressed as NO3",
            citation: Citation { source: &sources::EU_1333_2008_CONS_20260818, place: "Annex II Part E, category 09.2, E 251-252, value 270, footnotes (XA) (XD)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(2025, 10, 9)), None),
            note: "The cap XD is on residual NITRITE (NO2 ion), not nitrate. No nitrite may be added to fish.",
        },
    },
];

/// Nitrites and nitrates, Great Britain
pub static GREAT_BRITAIN: [Cited<ProductLimit>; 14] = [
    Cited {
        value: ProductLimit { authority: Authority::GreatBritain, product_key: "gb/meat-in-general", product: "Meat products in general", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::IngoingOnProduct, limit: Limit::AtMost(150.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/great-britain",
            key: "meat-in-general-nitrite",
            printed: "150 mg/kg expressed as NaNO2",
            citation: Citation { source: &sources::UKSI_2007_1778, place: "Schedule 1", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "Read in the 2007 England regulations; that Great Britain keeps the value after the European change rests on a written answer of July 2025.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::GreatBritain, product_key: "gb/sterilised", product: "Sterilised meat products (Fo > 3.00)", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::IngoingOnProduct, limit: Limit::AtMost(100.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/great-britain",
            key: "sterilised-nitrite",
            printed: "100 mg/kg expressed as NaNO2",
            citation: Citation { source: &sources::UKSI_2007_1778, place: "Schedule 1", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "Read in the 2007 England regulations; that Great Britain keeps the value after the European change rests on a written answer of July 2025.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::GreatBritain, product_key: "gb/wiltshire-bacon", product: "Wiltshire bacon; entremeada, entrecosto, chispe, orelheira e cabeça (salgados); toucinho fumado; similar", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::ResidualAtEndOfProcess, limit: Limit::AtMost(175.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/great-britain",
            key: "wiltshire-bacon-nitrite",
            printed: "175 mg/kg expressed as NaNO2",
            citation: Citation { source: &sources::UKSI_2007_1778, place: "Schedule 1", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "Read in the 2007 England regulations; that Great Britain keeps the value after the European change rests on a written answer of July 2025.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::GreatBritain, product_key: "gb/wiltshire-ham", product: "Wiltshire ham and similar", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::ResidualAtEndOfProcess, limit: Limit::AtMost(100.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/great-britain",
            key: "wiltshire-ham-nitrite",
            printed: "100 mg/kg expressed as NaNO2",
            citation: Citation { source: &sources::UKSI_2007_1778, place: "Schedule 1", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "Read in the 2007 England regulations; that Great Britain keeps the value after the European change rests on a written answer of July 2025.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::GreatBritain, product_key: "gb/rohschinken-nass", product: "Rohschinken, nassgepökelt and similar", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::ResidualAtEndOfProcess, limit: Limit::AtMost(50.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/great-britain",
            key: "rohschinken-nass-nitrite",
            printed: "50 mg/kg expressed as NaNO2",
            citation: Citation { source: &sources::UKSI_2007_1778, place: "Schedule 1", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "Read in the 2007 England regulations; that Great Britain keeps the value after the European change rests on a written answer of July 2025.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::GreatBritain, product_key: "gb/cured-tongue", product: "Cured tongue", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::ResidualAtEndOfProcess, limit: Limit::AtMost(50.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/great-britain",
            key: "cured-tongue-nitrite",
            printed: "50 mg/kg expressed as NaNO2",
            citation: Citation { source: &sources::UKSI_2007_1778, place: "Schedule 1", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "Read in the 2007 England regulations; that Great Britain keeps the value after the European change rests on a written answer of July 2025.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::GreatBritain, product_key: "gb/dry-cured-bacon", product: "Dry cured bacon and similar", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::ResidualAtEndOfProcess, limit: Limit::AtMost(175.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/great-britain",
            key: "dry-cured-bacon-nitrite",
            printed: "175 mg/kg expressed as NaNO2",
            citation: Citation { source: &sources::UKSI_2007_1778, place: "Schedule 1", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "Read in the 2007 England regulations; that Great Britain keeps the value after the European change rests on a written answer of July 2025.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::GreatBritain, product_key: "gb/dry-cured-ham", product: "Dry cured ham; jamón curado group; presunto group; similar", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::ResidualAtEndOfProcess, limit: Limit::AtMost(100.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/great-britain",
            key: "dry-cured-ham-nitrite",
            printed: "100 mg/kg expressed as NaNO2",
            citation: Citation { source: &sources::UKSI_2007_1778, place: "Schedule 1", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "Read in the 2007 England regulations; that Great Britain keeps the value after the European change rests on a written answer of July 2025.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::GreatBritain, product_key: "gb/rohschinken-trocken", product: "Rohschinken, trockengepökelt and similar", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::ResidualAtEndOfProcess, limit: Limit::AtMost(50.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/great-britain",
            key: "rohschinken-trocken-nitrite",
            printed: "50 mg/kg expressed as NaNO2",
            citation: Citation { source: &sources::UKSI_2007_1778, place: "Schedule 1", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "Read in the 2007 England regulations; that Great Britain keeps the value after the European change rests on a written answer of July 2025.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::GreatBritain, product_key: "gb/vysocina-group", product: "Vysočina group and similar", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::IngoingOnProduct, limit: Limit::AtMost(180.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/great-britain",
            key: "vysocina-group-nitrite",
            printed: "180 mg/kg expressed as NaNO2",
            citation: Citation { source: &sources::UKSI_2007_1778, place: "Schedule 1", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "Read in the 2007 England regulations; that Great Britain keeps the value after the European change rests on a written answer of July 2025.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::GreatBritain, product_key: "gb/rohschinken-trocken-nass", product: "Rohschinken, trocken-/nassgepökelt and similar", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::ResidualAtEndOfProcess, limit: Limit::AtMost(50.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/great-britain",
            key: "rohschinken-trocken-nass-nitrite",
            printed: "50 mg/kg expressed as NaNO2",
            citation: Citation { source: &sources::UKSI_2007_1778, place: "Schedule 1", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "Read in the 2007 England regulations; that Great Britain keeps the value after the European change rests on a written answer of July 2025.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::GreatBritain, product_key: "gb/not-heat-treated", product: "Non-heat-treated meat products", agents: Agents::Nitrate, counted_as: CountedAs::SodiumNitrate, measured_on: MeasuredOn::IngoingOnProduct, limit: Limit::AtMost(150.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/great-britain",
            key: "not-heat-treated-nitrate",
            printed: "150 mg/kg expressed as NaNO3",
            citation: Citation { source: &sources::UKSI_2007_1778, place: "Schedule 1", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "Read in the 2007 England regulations; that Great Britain keeps the value after the European change rests on a written answer of July 2025.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::GreatBritain, product_key: "gb/cold-smoked-reindeer", product: "Kylmäsavustettu poronliha / kallrökt renkött", agents: Agents::Nitrate, counted_as: CountedAs::SodiumNitrate, measured_on: MeasuredOn::IngoingOnProduct, limit: Limit::AtMost(300.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/great-britain",
            key: "cold-smoked-reindeer-nitrate",
            printed: "300 mg/kg expressed as NaNO3",
            citation: Citation { source: &sources::UKSI_2007_1778, place: "Schedule 1", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "Read in the 2007 England regulations; that Great Britain keeps the value after the European change rests on a written answer of July 2025.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::GreatBritain, product_key: "gb/wiltshire-bacon-nitrate", product: "Wiltshire bacon, Wiltshire ham, entremeada group, Rohschinken nassgepökelt, similar", agents: Agents::Nitrate, counted_as: CountedAs::SodiumNitrate, measured_on: MeasuredOn::ResidualAtEndOfProcess, limit: Limit::AtMost(250.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/great-britain",
            key: "wiltshire-bacon-nitrate-nitrate",
            printed: "250 mg/kg expressed as NaNO3",
            citation: Citation { source: &sources::UKSI_2007_1778, place: "Schedule 1", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "Read in the 2007 England regulations; that Great Britain keeps the value after the European change rests on a written answer of July 2025.",
        },
    },
];

/// Nitrites and nitrates, Japan
pub static JAPAN: [Cited<ProductLimit>; 7] = [
    Cited {
        value: ProductLimit { authority: Authority::Japan, product_key: "jp/meat", product: "meat products", agents: Agents::Both, counted_as: CountedAs::NitriteIon, measured_on: MeasuredOn::Residual, limit: Limit::AtMost(70.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/japan",
            key: "meat",
            printed: "0.07 g/kg expressed as NO2",
            citation: Citation { source: &sources::JP_USE_STANDARDS, place: "Color fixatives: potassium nitrate, sodium nitrate, sodium nitrite", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "Older edition of the table; newer editions not visible at this row.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::Japan, product_key: "jp/whale", product: "whale meat bacon", agents: Agents::Both, counted_as: CountedAs::NitriteIon, measured_on: MeasuredOn::Residual, limit: Limit::AtMost(70.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/japan",
            key: "whale",
            printed: "0.07 g/kg expressed as NO2",
            citation: Citation { source: &sources::JP_USE_STANDARDS, place: "Color fixatives: potassium nitrate, sodium nitrate, sodium nitrite", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "Older edition of the table; newer editions not visible at this row.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::Japan, product_key: "jp/fishham", product: "fish ham", agents: Agents::Both, counted_as: CountedAs::NitriteIon, measured_on: MeasuredOn::Residual, limit: Limit::AtMost(50.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/japan",
            key: "fishham",
            printed: "0.05 g/kg expressed as NO2",
            citation: Citation { source: &sources::JP_USE_STANDARDS, place: "Color fixatives: potassium nitrate, sodium nitrate, sodium nitrite", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "Older edition of the table; newer editions not visible at this row.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::Japan, product_key: "jp/fishsausage", product: "fish sausage", agents: Agents::Both, counted_as: CountedAs::NitriteIon, measured_on: MeasuredOn::Residual, limit: Limit::AtMost(50.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/japan",
            key: "fishsausage",
            printed: "0.05 g/kg expressed as NO2",
            citation: Citation { source: &sources::JP_USE_STANDARDS, place: "Color fixatives: potassium nitrate, sodium nitrate, sodium nitrite", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "Older edition of the table; newer editions not visible at this row.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::Japan, product_key: "jp/ikura", product: "ikura (salted/processed salmon roe)", agents: Agents::Both, counted_as: CountedAs::NitriteIon, measured_on: MeasuredOn::Residual, limit: Limit::AtMost(5.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/japan",
            key: "ikura",
            printed: "0.005 g/kg expressed as NO2",
            citation: Citation { source: &sources::JP_USE_STANDARDS, place: "Color fixatives: potassium nitrate, sodium nitrate, sodium nitrite", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "Older edition of the table; newer editions not visible at this row.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::Japan, product_key: "jp/sujiko", product: "sujiko (salted salmon roe)", agents: Agents::Both, counted_as: CountedAs::NitriteIon, measured_on: MeasuredOn::Residual, limit: Limit::AtMost(5.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/japan",
            key: "sujiko",
            printed: "0.005 g/kg expressed as NO2",
            citation: Citation { source: &sources::JP_USE_STANDARDS, place: "Color fixatives: potassium nitrate, sodium nitrate, sodium nitrite", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "Older edition of the table; newer editions not visible at this row.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::Japan, product_key: "jp/tarako", product: "tarako (salted pollack roe)", agents: Agents::Both, counted_as: CountedAs::NitriteIon, measured_on: MeasuredOn::Residual, limit: Limit::AtMost(5.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/japan",
            key: "tarako",
            printed: "0.005 g/kg expressed as NO2",
            citation: Citation { source: &sources::JP_USE_STANDARDS, place: "Color fixatives: potassium nitrate, sodium nitrate, sodium nitrite", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "Older edition of the table; newer editions not visible at this row.",
        },
    },
];

/// Molar mass of NO2-, g/mol.
pub(super) const MOLAR_MASS_NO2: Cited<f64> = Cited {
        value: 46.005,
        row: Row {
            table: "cure/molar-mass",
            key: "no2",
            printed: "46.005 g/mol",
            citation: Citation { source: &sources::CIAAW_2021, place: "sum of the five-figure atomic weights N 14.007, O 15.999, Na 22.990, K 39.098", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "the electron mass (0.00055 g/mol) of the anion is neglected",
        },
    };

/// Molar mass of NO3-, g/mol.
pub(super) const MOLAR_MASS_NO3: Cited<f64> = Cited {
        value: 62.004,
        row: Row {
            table: "cure/molar-mass",
            key: "no3",
            printed: "62.004 g/mol",
            citation: Citation { source: &sources::CIAAW_2021, place: "sum of the five-figure atomic weights N 14.007, O 15.999, Na 22.990, K 39.098", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "the electron mass (0.00055 g/mol) of the anion is neglected",
        },
    };

/// Molar mass of NaNO2, g/mol.
pub(super) const MOLAR_MASS_NANO2: Cited<f64> = Cited {
        value: 68.995,
        row: Row {
            table: "cure/molar-mass",
            key: "nano2",
            printed: "68.995 g/mol",
            citation: Citation { source: &sources::CIAAW_2021, place: "sum of the five-figure atomic weights N 14.007, O 15.999, Na 22.990, K 39.098", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Molar mass of KNO2, g/mol.
pub(super) const MOLAR_MASS_KNO2: Cited<f64> = Cited {
        value: 85.103,
        row: Row {
            table: "cure/molar-mass",
            key: "kno2",
            printed: "85.103 g/mol",
            citation: Citation { source: &sources::CIAAW_2021, place: "sum of the five-figure atomic weights N 14.007, O 15.999, Na 22.990, K 39.098", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Molar mass of NaNO3, g/mol.
pub(super) const MOLAR_MASS_NANO3: Cited<f64> = Cited {
        value: 84.994,
        row: Row {
            table: "cure/molar-mass",
            key: "nano3",
            printed: "84.994 g/mol",
            citation: Citation { source: &sources::CIAAW_2021, place: "sum of the five-figure atomic weights N 14.007, O 15.999, Na 22.990, K 39.098", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Molar mass of KNO3, g/mol.
pub(super) const MOLAR_MASS_KNO3: Cited<f64> = Cited {
        value: 101.102,
        row: Row {
            table: "cure/molar-mass",
            key: "kno3",
            printed: "101.102 g/mol",
            citation: Citation { source: &sources::CIAAW_2021, place: "sum of the five-figure atomic weights N 14.007, O 15.999, Na 22.990, K 39.098", standing: Standing::Paper, seen: Seen::Computed },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Molar mass of sodium ascorbate or erythorbate, anhydrous, C6H7NaO6, g/mol.
pub(super) const MOLAR_MASS_ASCORBATE_ANHYDROUS: Cited<f64> = Cited {
        value: 198.106,
        row: Row {
            table: "cure/molar-mass",
            key: "ascorbate-anhydrous",
            printed: "198.106 g/mol",
            citation: Citation { source: &sources::CIAAW_2021, place: "sum of the five-figure atomic weights C 12.011, H 1.008, O 15.999, Na 22.990; those of C and H from memory", standing: Standing::Paper, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "The bacon rule itself prints about 198 (9 CFR 424.22(b)(1)).",
        },
    };

/// Molar mass of sodium ascorbate or erythorbate monohydrate, C6H7NaO6 with H2O, g/mol.
pub(super) const MOLAR_MASS_ASCORBATE_MONOHYDRATE: Cited<f64> = Cited {
        value: 216.121,
        row: Row {
            table: "cure/molar-mass",
            key: "ascorbate-monohydrate",
            printed: "216.121 g/mol",
            citation: Citation { source: &sources::CIAAW_2021, place: "sum of the five-figure atomic weights C 12.011, H 1.008, O 15.999, Na 22.990; those of C and H from memory", standing: Standing::Paper, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Practice of the trade in curing
pub static NITRATE_PRACTICE: Cited<f64> = Cited {
        value: 7.0,
        row: Row {
            table: "cure/nitrate-practice",
            key: "nitrate-wants-weeks",
            printed: "nitrate only for cures of a week and more, and for dried products",
            citation: Citation { source: &sources::TRADE_PRACTICE, place: "no document", standing: Standing::CommonPractice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "Nitrate cures only as fast as bacteria turn it into nitrite. In what is cooked within days most of it stays nitrate.",
        },
    };

/// Strengths at which curing premixes are commonly sold
pub static PREMIX_STRENGTH: [Cited<SoldStrength>; 8] = [
    Cited {
        value: SoldStrength { nitrite: Range::ordered(Level::of(59000.0), Level::of(63000.0)), neat: false },
        row: Row {
            table: "cure/premix-strength",
            key: "us-nitrite",
            printed: "US-type pink curing salt, nitrite only",
            citation: Citation { source: &sources::TRADE_PRACTICE, place: "no document", standing: Standing::CommonPractice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "Mostly 6.25 percent; 5.9 to 6.3 percent are about. The label of the pack wins: take the fraction as an input, never hard-code it.",
        },
    },
    Cited {
        value: SoldStrength { nitrite: Range::ordered(Level::of(62500.0), Level::of(62500.0)), neat: false },
        row: Row {
            table: "cure/premix-strength",
            key: "us-nitrite-nitrate",
            printed: "US-type curing salt for long dry cures, nitrite plus nitrate",
            citation: Citation { source: &sources::TRADE_PRACTICE, place: "no document", standing: Standing::CommonPractice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "Nitrate share varies by maker. Not for bacon in the US.",
        },
    },
    Cited {
        value: SoldStrength { nitrite: Range::ordered(Level::of(4000.0), Level::of(6000.0)), neat: false },
        row: Row {
            table: "cure/premix-strength",
            key: "eu-nitrite-salt",
            printed: "EU-type nitrite curing salt (used as the whole salt of the recipe)",
            citation: Citation { source: &sources::TRADE_PRACTICE, place: "no document", standing: Standing::CommonPractice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "About ten times weaker than the US premix: confusing the two is a tenfold error in either direction.",
        },
    },
    Cited {
        value: SoldStrength { nitrite: Range::ordered(Level::of(5000.0), Level::of(5000.0)), neat: false },
        row: Row {
            table: "cure/premix-strength",
            key: "retail-complete-cure",
            printed: "retail complete cure with salt and sugar, nitrite plus nitrate",
            citation: Citation { source: &sources::TRADE_PRACTICE, place: "no document", standing: Standing::CommonPractice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "Strength differs by maker: take it from the label of the pack.",
        },
    },
    Cited {
        value: SoldStrength { nitrite: Range::ordered(Level::of(4000.0), Level::of(5000.0)), neat: false },
        row: Row {
            table: "cure/premix-strength",
            key: "germany-by-law-then",
            printed: "nitrite curing salt of 0.4 to 0.5 percent, the range of the law at the time",
            citation: Citation { source: &sources::DE_BAFF_HOFMANN, place: "see source", standing: Standing::Paper, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SoldStrength { nitrite: Range::ordered(Level::of(8000.0), Level::of(9000.0)), neat: false },
        row: Row {
            table: "cure/premix-strength",
            key: "germany-stronger",
            printed: "a stronger nitrite curing salt of 0.8 to 0.9 percent",
            citation: Citation { source: &sources::DE_CVUA_BLUTWURST, place: "see source", standing: Standing::Paper, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "The report lays an over-limit blood sausage to this mix.",
        },
    },
    Cited {
        value: SoldStrength { nitrite: Range::ordered(Level::of(6000.0), Level::of(6000.0)), neat: false },
        row: Row {
            table: "cure/premix-strength",
            key: "six-tenths",
            printed: "curing salt of 0.6 percent, sold in France and elsewhere",
            citation: Citation { source: &sources::TRADE_PRACTICE, place: "no document", standing: Standing::CommonPractice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: SoldStrength { nitrite: Range::ordered(Level::of(970000.0), Level::of(1000000.0)), neat: true },
        row: Row {
            table: "cure/premix-strength",
            key: "neat",
            printed: "food-grade sodium nitrite, neat",
            citation: Citation { source: &sources::TRADE_PRACTICE, place: "no document", standing: Standing::CommonPractice, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "Not for kitchens: very small amounts can kill, and no kitchen scale weighs it safely.",
        },
    },
];

/// Curing accelerators, United States
pub static US_ACCELERATORS: [Cited<AdditiveLimit>; 9] = [
    Cited {
        value: AdditiveLimit { authority: Authority::UsFsis, group: AdditiveGroup::AscorbicAcids, methods: &[Method::Pumped, Method::Immersion], product_key: None, on: AdditiveBasis::GreenWeight, limit: Limit::AtMost(468.75) },
        row: Row {
            table: "cure/us-accelerators",
            key: "ascorbic-pickle",
            printed: "75 oz to 100 gal pickle at 10 percent pump level",
            citation: Citation { source: &sources::CFR9_424_21_2015, place: "424.21(c), class Curing accelerators, row ascorbic acid and erythorbic acid", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(1999, 12, 23)), None),
            note: "",
        },
    },
    Cited {
        value: AdditiveLimit { authority: Authority::UsFsis, group: AdditiveGroup::AscorbicAcids, methods: &[Method::Ground, Method::DryRub], product_key: None, on: AdditiveBasis::GreenWeight, limit: Limit::AtMost(468.75) },
        row: Row {
            table: "cure/us-accelerators",
            key: "ascorbic-meat",
            printed: "3/4 oz to 100 lb meat, meat byproduct or poultry product",
            citation: Citation { source: &sources::CFR9_424_21_2015, place: "424.21(c), class Curing accelerators, row ascorbic acid and erythorbic acid", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(1999, 12, 23)), None),
            note: "",
        },
    },
    Cited {
        value: AdditiveLimit { authority: Authority::UsFsis, group: AdditiveGroup::Ascorbate, methods: &[Method::Pumped, Method::Immersion], product_key: None, on: AdditiveBasis::GreenWeight, limit: Limit::AtMost(546.875) },
        row: Row {
            table: "cure/us-accelerators",
            key: "ascorbate-pickle",
            printed: "87.5 oz to 100 gal pickle at 10 percent pump level",
            citation: Citation { source: &sources::CFR9_424_21_2015, place: "424.21(c), class Curing accelerators, row sodium ascorbate and sodium erythorbate", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(1999, 12, 23)), None),
            note: "",
        },
    },
    Cited {
        value: AdditiveLimit { authority: Authority::UsFsis, group: AdditiveGroup::Ascorbate, methods: &[Method::Ground, Method::DryRub], product_key: None, on: AdditiveBasis::GreenWeight, limit: Limit::AtMost(546.875) },
        row: Row {
            table: "cure/us-accelerators",
            key: "ascorbate-meat",
            printed: "7/8 oz to 100 lb meat, meat byproduct or poultry product",
            citation: Citation { source: &sources::CFR9_424_21_2015, place: "424.21(c), class Curing accelerators, row sodium ascorbate and sodium erythorbate", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(1999, 12, 23)), None),
            note: "",
        },
    },
    Cited {
        value: AdditiveLimit { authority: Authority::UsFsis, group: AdditiveGroup::FumaricAcid, methods: &[Method::Ground], product_key: None, on: AdditiveBasis::GreenWeight, limit: Limit::AtMost(625.0) },
        row: Row {
            table: "cure/us-accelerators",
            key: "fumaric",
            printed: "0.065 percent (or 1 oz to 100 lb) of the meat or poultry before processing",
            citation: Citation { source: &sources::CFR9_424_21_2015, place: "424.21(c), class Curing accelerators, row Fumaric acid", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(1999, 12, 23)), None),
            note: "The two printed figures differ (625 and 650 ppm); use 625.",
        },
    },
    Cited {
        value: AdditiveLimit { authority: Authority::UsFsis, group: AdditiveGroup::GluconoDeltaLactone, methods: &[Method::Ground], product_key: None, on: AdditiveBasis::GreenWeight, limit: Limit::AtMost(5000.0) },
        row: Row {
            table: "cure/us-accelerators",
            key: "gdl",
            printed: "8 oz to each 100 lb of meat or meat byproduct",
            citation: Citation { source: &sources::CFR9_424_21_2015, place: "424.21(c), class Curing accelerators, row Glucono delta lactone", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(1999, 12, 23)), None),
            note: "",
        },
    },
    Cited {
        value: AdditiveLimit { authority: Authority::UsFsis, group: AdditiveGroup::GluconoDeltaLactone, methods: &[Method::Ground], product_key: Some("us/genoa-salami"), on: AdditiveBasis::GreenWeight, limit: Limit::AtMost(10000.0) },
        row: Row {
            table: "cure/us-accelerators",
            key: "gdl-genoa",
            printed: "16 oz to 100 lb of meat (1.0 percent)",
            citation: Citation { source: &sources::CFR9_424_21_2015, place: "424.21(c), class Curing accelerators, row Glucono delta lactone", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(1999, 12, 23)), None),
            note: "",
        },
    },
    Cited {
        value: AdditiveLimit { authority: Authority::UsFsis, group: AdditiveGroup::AcidPyrophosphate, methods: &[Method::Ground], product_key: Some("us/frankfurter-class"), on: AdditiveBasis::GreenWeight, limit: Limit::AtMost(5000.0) },
        row: Row {
            table: "cure/us-accelerators",
            key: "sapp",
            printed: "alone or with other accelerators 8 oz in 100 lb of the meat, or meat and meat byproduct, content of the formula",
            citation: Citation { source: &sources::CFR9_424_21_2015, place: "424.21(c), class Curing accelerators, row Sodium acid pyrophosphate", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(1999, 12, 23)), None),
            note: "",
        },
    },
    Cited {
        value: AdditiveLimit { authority: Authority::UsFsis, group: AdditiveGroup::AcidPyrophosphate, methods: &[Method::Ground], product_key: Some("us/frankfurter-class"), on: AdditiveBasis::FinishedWeight, limit: Limit::AtMost(5000.0) },
        row: Row {
            table: "cure/us-accelerators",
            key: "sapp-finished",
            printed: "nor 0.5 percent in the finished product",
            citation: Citation { source: &sources::CFR9_424_21_2015, place: "424.21(c), class Curing accelerators, row Sodium acid pyrophosphate", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(1999, 12, 23)), None),
            note: "",
        },
    },
];

/// Nitrate in bacon, United States
pub static US_BACON_NITRATE: Cited<Limit<Level<NitrateSalts, OnGreenWeight>>> = Cited {
        value: Limit::AtMost(Level::of(0.0)),
        row: Row {
            table: "cure/us-bacon-nitrate",
            key: "no-nitrate-in-bacon",
            printed: "cured meat products other than bacon",
            citation: Citation { source: &sources::CFR9_424_21_2015, place: "424.21(c), class Curing Agents, row nitrate, column Products", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "The nitrate row lists cured products other than bacon, so no method may bring nitrate into bacon.",
        },
    };

/// Share of skin in a belly cured with its skin, United States
pub static US_BACON_SKIN: Cited<f64> = Cited {
        value: 0.1,
        row: Row {
            table: "cure/us-bacon-skin",
            key: "skin-share",
            printed: "10 percent skin; 108 ppm immersed and 180 ppm dry on skin-on weight (potassium nitrite 133 and 222)",
            citation: Citation { source: &sources::FSIS_7620_3, place: "bacon section, from page 27 (exact page not seen)", standing: Standing::Handbook, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "A working estimate; skin takes up practically no cure. The rule itself says actual or estimated skin-free weight (9 CFR 424.22(b)(2) and (3)).",
        },
    };

/// Variation accepted around the pumped-bacon amount, United States
pub static US_BACON_TOLERANCE: Cited<Limit<Level<SodiumNitrite, OnGreenWeight>>> = Cited {
        value: Limit::Between(Level::of(96.0), Level::of(144.0)),
        row: Row {
            table: "cure/us-bacon-tolerance",
            key: "bacon-pumped-tolerance",
            printed: "120 ppm within 20 percent: 96 to 144 ppm",
            citation: Citation { source: &sources::FSIS_7620_3, place: "bacon section, from page 27", standing: Standing::Handbook, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "Covers pumping and draining, not the formulation.",
        },
    };

/// Weight of finished bacon, United States
pub static US_BACON_WEIGHT: Cited<f64> = Cited {
        value: 1.0,
        row: Row {
            table: "cure/us-bacon-weight",
            key: "no-gain",
            printed: "not more than the weight of the fresh uncured pork belly",
            citation: Citation { source: &sources::CFR9_319_107, place: "319.107", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    };

/// Ingoing nitrite in bacon, United States: sodium nitrite.
pub static US_BACON_SODIUM: [Cited<BaconLimit<SodiumNitrite>>; 5] = [
    Cited {
        value: BaconLimit { authority: Authority::UsFsis, formula: BaconFormula::Pumped, limit: Limit::Exactly(Level::of(120.0)), ascorbate: Some(Level::of(550.0)), sugar_percent: None, lactic_culture: false },
        row: Row {
            table: "cure/us-bacon",
            key: "bacon-pumped-standard-sodium",
            printed: "sodium nitrite 120 ppm",
            citation: Citation { source: &sources::CFR9_424_22_2015, place: "424.22(b)(1)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(1999, 12, 23)), None),
            note: "A required amount, not a ceiling. Hydrated ascorbate or erythorbate is scaled up to the anhydrous 550 ppm.",
        },
    },
    Cited {
        value: BaconLimit { authority: Authority::UsFsis, formula: BaconFormula::PumpedA, limit: Limit::Exactly(Level::of(100.0)), ascorbate: Some(Level::of(550.0)), sugar_percent: None, lactic_culture: false },
        row: Row {
            table: "cure/us-bacon",
            key: "bacon-pumped-alt-a-sodium",
            printed: "sodium nitrite 100 ppm",
            citation: Citation { source: &sources::CFR9_424_22_2015, place: "424.22(b)(1)(ii)(A)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(1999, 12, 23)), None),
            note: "A required amount, not a ceiling. Plants using it are still sampled at random.",
        },
    },
    Cited {
        value: BaconLimit { authority: Authority::UsFsis, formula: BaconFormula::PumpedB, limit: Limit::Between(Level::of(40.0), Level::of(80.0)), ascorbate: Some(Level::of(550.0)), sugar_percent: Some(0.7), lactic_culture: true },
        row: Row {
            table: "cure/us-bacon",
            key: "bacon-pumped-alt-b-sodium",
            printed: "sodium nitrite 40 to 80 ppm",
            citation: Citation { source: &sources::CFR9_424_22_2015, place: "424.22(b)(1)(ii)(B)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(1999, 12, 23)), None),
            note: "Only with the sugar and the lactic culture together, whose purpose is to stop botulinum toxin. Never on its own.",
        },
    },
    Cited {
        value: BaconLimit { authority: Authority::UsFsis, formula: BaconFormula::Immersion, limit: Limit::AtMost(Level::of(120.0)), ascorbate: None, sugar_percent: None, lactic_culture: false },
        row: Row {
            table: "cure/us-bacon",
            key: "bacon-immersion-sodium",
            printed: "sodium nitrite not over 120 ppm",
            citation: Citation { source: &sources::CFR9_424_22_2015, place: "424.22(b)(2)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(1999, 12, 23)), None),
            note: "On the actual or estimated skin-free green weight.",
        },
    },
    Cited {
        value: BaconLimit { authority: Authority::UsFsis, formula: BaconFormula::DryCure, limit: Limit::AtMost(Level::of(200.0)), ascorbate: None, sugar_percent: None, lactic_culture: false },
        row: Row {
            table: "cure/us-bacon",
            key: "bacon-dry-sodium",
            printed: "sodium nitrite not over 200 ppm",
            citation: Citation { source: &sources::CFR9_424_22_2015, place: "424.22(b)(3)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(1999, 12, 23)), None),
            note: "On the actual or estimated skin-free green weight. Not 625: the general dry-cure figure is not for bacon.",
        },
    },
];

/// Ingoing nitrite in bacon, United States: potassium nitrite.
pub static US_BACON_POTASSIUM: [Cited<BaconLimit<PotassiumNitrite>>; 5] = [
    Cited {
        value: BaconLimit { authority: Authority::UsFsis, formula: BaconFormula::Pumped, limit: Limit::Exactly(Level::of(148.0)), ascorbate: Some(Level::of(550.0)), sugar_percent: None, lactic_culture: false },
        row: Row {
            table: "cure/us-bacon",
            key: "bacon-pumped-standard-potassium",
            printed: "potassium nitrite 148 ppm",
            citation: Citation { source: &sources::CFR9_424_22_2015, place: "424.22(b)(1)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(1999, 12, 23)), None),
            note: "A required amount, not a ceiling. Hydrated ascorbate or erythorbate is scaled up to the anhydrous 550 ppm.",
        },
    },
    Cited {
        value: BaconLimit { authority: Authority::UsFsis, formula: BaconFormula::PumpedA, limit: Limit::Exactly(Level::of(123.0)), ascorbate: Some(Level::of(550.0)), sugar_percent: None, lactic_culture: false },
        row: Row {
            table: "cure/us-bacon",
            key: "bacon-pumped-alt-a-potassium",
            printed: "potassium nitrite 123 ppm",
            citation: Citation { source: &sources::CFR9_424_22_2015, place: "424.22(b)(1)(ii)(A)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(1999, 12, 23)), None),
            note: "A required amount, not a ceiling. Plants using it are still sampled at random.",
        },
    },
    Cited {
        value: BaconLimit { authority: Authority::UsFsis, formula: BaconFormula::PumpedB, limit: Limit::Between(Level::of(49.0), Level::of(99.0)), ascorbate: Some(Level::of(550.0)), sugar_percent: Some(0.7), lactic_culture: true },
        row: Row {
            table: "cure/us-bacon",
            key: "bacon-pumped-alt-b-potassium",
            printed: "potassium nitrite 49 to 99 ppm",
            citation: Citation { source: &sources::CFR9_424_22_2015, place: "424.22(b)(1)(ii)(B)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(1999, 12, 23)), None),
            note: "Only with the sugar and the lactic culture together, whose purpose is to stop botulinum toxin. Never on its own.",
        },
    },
    Cited {
        value: BaconLimit { authority: Authority::UsFsis, formula: BaconFormula::Immersion, limit: Limit::AtMost(Level::of(148.0)), ascorbate: None, sugar_percent: None, lactic_culture: false },
        row: Row {
            table: "cure/us-bacon",
            key: "bacon-immersion-potassium",
            printed: "potassium nitrite not over 148 ppm",
            citation: Citation { source: &sources::CFR9_424_22_2015, place: "424.22(b)(2)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(1999, 12, 23)), None),
            note: "On the actual or estimated skin-free green weight.",
        },
    },
    Cited {
        value: BaconLimit { authority: Authority::UsFsis, formula: BaconFormula::DryCure, limit: Limit::AtMost(Level::of(246.0)), ascorbate: None, sugar_percent: None, lactic_culture: false },
        row: Row {
            table: "cure/us-bacon",
            key: "bacon-dry-potassium",
            printed: "potassium nitrite not over 246 ppm",
            citation: Citation { source: &sources::CFR9_424_22_2015, place: "424.22(b)(3)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(1999, 12, 23)), None),
            note: "On the actual or estimated skin-free green weight. Not 625: the general dry-cure figure is not for bacon.",
        },
    },
];

/// Citric acid and citrate in place of an ascorbic accelerator, United States
pub static US_CITRIC_REPLACEMENT: Cited<f64> = Cited {
        value: 0.5,
        row: Row {
            table: "cure/us-citric-replacement",
            key: "citric-replacement",
            printed: "up to 50 percent of the ascorbic acid, erythorbic acid, sodium ascorbate or sodium erythorbate used",
            citation: Citation { source: &sources::CFR9_424_21_2015, place: "424.21(c), class Curing accelerators, row Citric acid or sodium citrate", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(1999, 12, 23)), None),
            note: "For cured poultry the row names only ascorbic acid and sodium ascorbate as replaceable.",
        },
    };

/// Nitrite and nitrate in fish and in mixes for home cures, United States
pub static US_FDA: [Cited<ProductLimit>; 7] = [
    Cited {
        value: ProductLimit { authority: Authority::UsFda, product_key: "fda/tuna", product: "smoked cured tunafish products", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::FinishedProduct, limit: Limit::AtMost(10.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/us-fda",
            key: "tuna-nitrite",
            printed: "10 parts per million (0.001 percent)",
            citation: Citation { source: &sources::CFR21_172_175, place: "172.175(a)(1)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::UsFda, product_key: "fda/sablefish-salmon-shad", product: "smoked, cured sablefish, salmon and shad", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::FinishedProduct, limit: Limit::AtMost(200.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/us-fda",
            key: "sablefish-salmon-shad-nitrite",
            printed: "sodium nitrite max 200 ppm",
            citation: Citation { source: &sources::CFR21_172_175, place: "172.175(a)(2)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::UsFda, product_key: "fda/sablefish-salmon-shad", product: "smoked, cured sablefish, salmon and shad", agents: Agents::Nitrate, counted_as: CountedAs::SodiumNitrate, measured_on: MeasuredOn::FinishedProduct, limit: Limit::AtMost(500.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/us-fda",
            key: "sablefish-salmon-shad-nitrate",
            printed: "sodium nitrate max 500 ppm",
            citation: Citation { source: &sources::CFR21_172_170, place: "172.170(a)(1); same number in 172.175(a)(2)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::UsFda, product_key: "fda/home-cure", product: "meat-curing preparations for home curing of meat and meat products, including poultry and wild game", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::FinishedProduct, limit: Limit::AtMost(200.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/us-fda",
            key: "home-cure-nitrite",
            printed: "sodium nitrite max 200 ppm",
            citation: Citation { source: &sources::CFR21_172_175, place: "172.175(a)(3)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "A retail pack must carry directions that keep the product within these limits and 'keep out of the reach of children'.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::UsFda, product_key: "fda/home-cure", product: "meat-curing preparations for home curing of meat and meat products, including poultry and wild game", agents: Agents::Nitrate, counted_as: CountedAs::SodiumNitrate, measured_on: MeasuredOn::FinishedProduct, limit: Limit::AtMost(500.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/us-fda",
            key: "home-cure-nitrate",
            printed: "sodium nitrate max 500 ppm",
            citation: Citation { source: &sources::CFR21_172_170, place: "172.170(a)(2)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "500 ppm nitrate is far below the plant figures of 1718 and 2187.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::UsFda, product_key: "fda/smoked-chub", product: "smoked chub (commercial)", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::FinishedProduct, limit: Limit::Between(100.0, 200.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/us-fda",
            key: "smoked-chub-nitrite",
            printed: "sodium nitrite min 100 ppm; sodium nitrite max 200 ppm",
            citation: Citation { source: &sources::CFR21_172_177_2015, place: "172.177(b)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "In the edible portion of the finished product, measured in the loin muscle, with at least 3.5 percent water-phase salt.",
        },
    },
    Cited {
        value: ProductLimit { authority: Authority::UsFda, product_key: "fda/other-fish", product: "any other fish species", agents: Agents::Nitrite, counted_as: CountedAs::SodiumNitrite, measured_on: MeasuredOn::FinishedProduct, limit: Limit::AtMost(0.0), residual_cap: None, investigate_above: None, superseded: false },
        row: Row {
            table: "cure/us-fda",
            key: "other-fish-nitrite",
            printed: "nitrite for the five named fish; none for any other",
            citation: Citation { source: &sources::FDA_HAZ_2020, place: "chapter 13, page 251", standing: Standing::Guidance, seen: Seen::Read },
            in_force: InForce::between(None, None),
            note: "The guide names salmon, sable, shad and chub with 200 ppm and tuna with 10 ppm.",
        },
    },
];

/// No nitrite or nitrate in infant foods, United States
pub static US_INFANT_NO_NITRATE: Cited<Limit<Level<NitrateSalts, OnGreenWeight>>> = Cited {
        value: Limit::AtMost(Level::of(0.0)),
        row: Row {
            table: "cure/us-infant",
            key: "no-nitrate",
            printed: "not in baby, junior and toddler foods",
            citation: Citation { source: &sources::CFR9_424_21_2015, place: "424.21(c), class Curing Agents, row nitrate, column Products", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(1999, 12, 23)), None),
            note: "",
        },
    };

/// No nitrite or nitrate in infant foods, United States
pub static US_INFANT_NO_NITRITE: Cited<Limit<Level<NitriteSalts, OnGreenWeight>>> = Cited {
        value: Limit::AtMost(Level::of(0.0)),
        row: Row {
            table: "cure/us-infant",
            key: "no-nitrite",
            printed: "not in baby, junior, or toddler foods",
            citation: Citation { source: &sources::CFR9_424_21_2015, place: "424.21(c), class Curing Agents, row nitrite, column Products", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(1999, 12, 23)), None),
            note: "",
        },
    };

/// Ingoing nitrite and nitrate, United States, products other than bacon: nitrite.
pub static US_INGOING_NITRITE: [Cited<IngoingLimit<NitriteSalts>>; 3] = [
    Cited {
        value: IngoingLimit { authority: Authority::UsFsis, methods: &[Method::Pumped, Method::Immersion], limit: Limit::AtMost(Level::of(200.0)), working_figure: Some(200) },
        row: Row {
            table: "cure/us-ingoing",
            key: "nitrite-pickle",
            printed: "2 lb to 100 gal pickle at 10 percent pump level",
            citation: Citation { source: &sources::CFR9_424_21_2015, place: "424.21(c), class Curing Agents, row nitrite, column Amount", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(1999, 12, 23)), None),
            note: "200 mg/kg follows from the words only when 100 US gallons of pickle weigh 1000 lb; weigh the pickle. No figure in mg/kg is printed.",
        },
    },
    Cited {
        value: IngoingLimit { authority: Authority::UsFsis, methods: &[Method::DryRub], limit: Limit::AtMost(Level::of(625.0)), working_figure: Some(625) },
        row: Row {
            table: "cure/us-ingoing",
            key: "nitrite-dry",
            printed: "1 oz to 100 lb meat or poultry product (dry cure)",
            citation: Citation { source: &sources::CFR9_424_21_2015, place: "424.21(c), class Curing Agents, row nitrite, column Amount", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(1999, 12, 23)), None),
            note: "No figure in mg/kg is printed; 1 oz to 100 lb is exactly 625 mg/kg.",
        },
    },
    Cited {
        value: IngoingLimit { authority: Authority::UsFsis, methods: &[Method::Ground], limit: Limit::AtMost(Level::of(156.25)), working_figure: Some(156) },
        row: Row {
            table: "cure/us-ingoing",
            key: "nitrite-comminuted",
            printed: "1/4 oz to 100 lb chopped meat, meat byproduct or poultry product",
            citation: Citation { source: &sources::CFR9_424_21_2015, place: "424.21(c), class Curing Agents, row nitrite, column Amount", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(1999, 12, 23)), None),
            note: "No figure in mg/kg is printed; 1 oz to 100 lb is exactly 625 mg/kg.",
        },
    },
];

/// Ingoing nitrite and nitrate, United States, products other than bacon: nitrate.
pub static US_INGOING_NITRATE: [Cited<IngoingLimit<NitrateSalts>>; 3] = [
    Cited {
        value: IngoingLimit { authority: Authority::UsFsis, methods: &[Method::Pumped, Method::Immersion], limit: Limit::AtMost(Level::of(700.0)), working_figure: Some(700) },
        row: Row {
            table: "cure/us-ingoing",
            key: "nitrate-pickle",
            printed: "7 lb to 100 gal pickle",
            citation: Citation { source: &sources::CFR9_424_21_2015, place: "424.21(c), class Curing Agents, row nitrate, column Amount", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(1999, 12, 23)), None),
            note: "The nitrate words carry no pump level; it is read at 10 percent, as the nitrite row. No figure in mg/kg is printed.",
        },
    },
    Cited {
        value: IngoingLimit { authority: Authority::UsFsis, methods: &[Method::DryRub], limit: Limit::AtMost(Level::of(2187.5)), working_figure: Some(2187) },
        row: Row {
            table: "cure/us-ingoing",
            key: "nitrate-dry",
            printed: "3 1/2 oz to 100 lb meat or poultry product (dry cure)",
            citation: Citation { source: &sources::CFR9_424_21_2015, place: "424.21(c), class Curing Agents, row nitrate, column Amount", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(1999, 12, 23)), None),
            note: "No figure in mg/kg is printed; 1 oz to 100 lb is exactly 625 mg/kg.",
        },
    },
    Cited {
        value: IngoingLimit { authority: Authority::UsFsis, methods: &[Method::Ground], limit: Limit::AtMost(Level::of(1718.75)), working_figure: Some(1718) },
        row: Row {
            table: "cure/us-ingoing",
            key: "nitrate-comminuted",
            printed: "2 3/4 oz to 100 lb chopped meat or poultry",
            citation: Citation { source: &sources::CFR9_424_21_2015, place: "424.21(c), class Curing Agents, row nitrate, column Amount", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(1999, 12, 23)), None),
            note: "No figure in mg/kg is printed; 1 oz to 100 lb is exactly 625 mg/kg.",
        },
    },
];

/// Least ingoing nitrite in a cured product kept cold, United States
pub static US_MINIMUM: Cited<Limit<Level<NitriteSalts, OnGreenWeight>>> = Cited {
        value: Limit::AtLeast(Level::of(120.0)),
        row: Row {
            table: "cure/us-minimum",
            key: "keep-refrigerated-120",
            printed: "at least 120 ppm ingoing in cured products labelled Keep Refrigerated",
            citation: Citation { source: &sources::FSIS_7620_3, place: "chapter 3", standing: Standing::Handbook, seen: Seen::Memory },
            in_force: InForce::between(None, None),
            note: "A policy, not a regulation. It does not apply where heat, pH or moisture control makes the product safe without it.",
        },
    };

/// Phosphates, United States
pub static US_PHOSPHATES: [Cited<AdditiveLimit>; 2] = [
    Cited {
        value: AdditiveLimit { authority: Authority::UsFsis, group: AdditiveGroup::Phosphates, methods: &[Method::Pumped, Method::Immersion], product_key: None, on: AdditiveBasis::GreenWeight, limit: Limit::AtMost(5000.0) },
        row: Row {
            table: "cure/us-phosphates",
            key: "phosphate-pickle",
            printed: "5 percent phosphate in pickle at 10 percent pump level",
            citation: Citation { source: &sources::CFR9_424_21_2015, place: "424.21(c), class Miscellaneous, phosphate rows (purpose: less cooked-out juice)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(1999, 12, 23)), None),
            note: "Five percent of the pickle at a ten percent pump is 5000 mg/kg of green weight; at another pump the strength of the pickle changes and that figure does not.",
        },
    },
    Cited {
        value: AdditiveLimit { authority: Authority::UsFsis, group: AdditiveGroup::Phosphates, methods: &[Method::Ground, Method::DryRub, Method::Pumped, Method::Immersion], product_key: None, on: AdditiveBasis::FinishedWeight, limit: Limit::AtMost(5000.0) },
        row: Row {
            table: "cure/us-phosphates",
            key: "phosphate-product",
            printed: "0.5 percent phosphate in meat food product (only clear solution may be injected)",
            citation: Citation { source: &sources::CFR9_424_21_2015, place: "424.21(c), class Miscellaneous, phosphate rows (purpose: less cooked-out juice)", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(1999, 12, 23)), None),
            note: "Not where the inspection regulations forbid phosphate. In sausage 319.140 allows phosphates only in cooked sausage. How several phosphates are summed is not stated in the row.",
        },
    },
];

/// Nitrite that may be left in a finished product, United States
pub static US_RESIDUAL: Cited<Limit<Level<SodiumNitrite, Residual>>> = Cited {
        value: Limit::AtMost(Level::of(200.0)),
        row: Row {
            table: "cure/us-residual",
            key: "nitrite-residual-200",
            printed: "not more than 200 ppm in the finished product",
            citation: Citation { source: &sources::CFR9_424_21_2015, place: "424.21(c), class Curing Agents, row nitrite, end of column Amount", standing: Standing::Law, seen: Seen::Read },
            in_force: InForce::between(Some(Date::printed(1999, 12, 23)), None),
            note: "The table points bacon to \"paragraph (b) of this section\"; the bacon rule actually stands in 424.22(b). A stale cross-reference in the law, not a second rule.",
        },
    };
