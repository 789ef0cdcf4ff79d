use std::fmt::Write;

use super::{Generated, References, Row, Table};

const HEAD: &str =
    "// Made from references/ by references/pipeline. Do not edit: change the reference file.\n\n";

fn camel(key: &str) -> String {
    key.split('-').map(|word| word[..1].to_uppercase() + &word[1..]).collect()
}

fn constant(key: &str) -> String {
    key.to_uppercase().replace(['-', '/', '@', '.'], "_")
}

fn number(value: f64) -> String {
    format!("{value:?}")
}

fn option(value: Option<String>) -> String {
    value.map_or("None".to_owned(), |value| format!("Some({value})"))
}

fn date(text: &Option<String>) -> String {
    option(text.as_ref().map(|text| {
        let parts: Vec<u16> = text.split('-').map(|part| part.parse().unwrap()).collect();
        let [year, month, day] = parts.as_slice() else { panic!("date {text}") };
        format!("Date::printed({year}, {month}, {day})")
    }))
}

/// `src/cite/sources.rs`.
pub fn sources(references: &References) -> Generated {
    let mut text = String::from(HEAD);
    text += "use super::Source;\n";
    let in_code: Vec<_> = super::ROOMS.iter().filter_map(|name| room(references, name)).collect();
    for source in &references.sources {
        let name = format!("&sources::{},", constant(&source.key));
        if !in_code.iter().any(|room| room.text.contains(&name)) {
            continue;
        }
        write!(
            text,
            "\npub(crate) static {}: Source = Source {{\n    key: {:?},\n    title: {:?},\n    publisher: {:?},\n    number: {:?},\n    edition: {:?},\n}};\n",
            constant(&source.key), source.key, source.title, source.publisher, source.number, source.edition
        )
        .unwrap();
    }
    Generated { path: "src/cite/sources.rs".to_owned(), text }
}

/// `src/recipe/remembered.rs`: the rows from memory of the tables that code uses.
pub fn remembered(references: &References, rooms: &[Generated]) -> Generated {
    let is_used = |table: &&Table| {
        let named = format!("table: {:?},", table.path);
        rooms.iter().any(|room| room.text.contains(&named))
    };
    let mut rows = String::new();
    let mut count = 0;
    for table in references.tables.iter().filter(is_used) {
        for row in table.rows.iter().filter(|row| row.seen == "memory") {
            count += 1;
            writeln!(
                rows,
                "    Remembered {{ table: {:?}, key: {:?}, printed: {:?} }},",
                table.path, row.key, row.printed
            )
            .unwrap();
        }
    }
    let text = format!(
        "{HEAD}use super::document::Remembered;\n\npub(super) static REMEMBERED: [Remembered; {count}] = [\n{rows}];\n"
    );
    Generated { path: "src/recipe/remembered.rs".to_owned(), text }
}

/// `src/<room>/table.rs`, where the room has a table that code uses.
pub fn room(references: &References, room: &str) -> Option<Generated> {
    let tables: Vec<_> = references.tables.iter().filter(|table| table.room() == room).collect();
    let mut body = String::new();
    for table in tables {
        body += &statics(table);
    }
    if body.is_empty() {
        return None;
    }
    let uses = match room {
        "cure" => {
            "use super::limit::{AdditiveBasis, AdditiveGroup, AdditiveLimit, Agents, BaconFormula, BaconLimit, CountedAs, IngoingLimit, MeasuredOn, Method, ProductLimit};\nuse super::premix::SoldStrength;\nuse crate::authority::Authority;\nuse crate::finding::Limit;\nuse crate::level::*;\nuse crate::range::Range;\n"
        }
        "salt" => {
            "use super::activity::{Pitzer, SaturatedActivity, SaturatedHumidity, TabledActivity};\nuse super::strength::{Density, FreezingPoint, Solubility, SpecificVolume};\n"
        }
        "fat" => {
            "use super::limit::{CompositionLimit, CountryHam, LeastProtein, WeightGain};\nuse super::table_rows::{Composition, CookingYield, KitchenMeasure};\n"
        }
        "cook" => {
            "use super::air::{Barometer, Saturation, WetBulb};\nuse super::hold::Hold;\nuse super::humidity::{HumidityOption, LargePiece};\nuse super::parasite::Freezing;\nuse super::{ComeUpLimit, Dwell, Dwell5, Endpoint, PoultryDwell};\nuse crate::authority::Authority;\nuse crate::food::Food;\nuse crate::units::{PrintedTemperature, Time, centimeters, hours, pounds, seconds};\n"
        }
        "chill" => {
            "use super::clock::Leg;\nuse super::check::Formula;\nuse super::exposure::{Exposure, ReadyToEat};\nuse super::ferment::DegreeHours;\nuse super::growth::{Model, Rate};\nuse super::limits::{GrowthLimit, Pathogen};\nuse super::warm::{WarmTime, Was};\nuse crate::authority::Authority;\nuse crate::finding::Limit;\nuse crate::units::{PrintedTemperature, Scale, Time, days, hours};\n"
        }
        "shelf" => {
            "use super::{Cell, ShelfStable};\nuse crate::finding::Limit;\nuse crate::units::{PrintedTemperature, Time, days, hours};\n"
        }
        "store" => {
            "use super::sauce::GarlicInOil;\nuse super::freezing::{EquivalentTime, PracticalLife};\nuse super::thaw::ThawBird;\nuse super::{ColdHolding, FreezerTime, FridgeTime, Keeps, Storage};\nuse crate::authority::Authority;\nuse crate::units::{PrintedTemperature, Time, days, hours, minutes, pounds};\n"
        }
        "smoke" => {
            "use super::fish::{ChubProcess, HotSmoke, WaterPhase};\nuse super::Ceiling;\nuse crate::authority::Authority;\nuse crate::finding::Limit;\nuse crate::food::Food;\nuse crate::level::Level;\nuse crate::units::{PrintedTemperature, Time, hours, minutes};\n"
        }
        other => panic!("no imports are known for {other}"),
    };
    let dated = if body.contains("Date::printed") { "Date, " } else { "" };
    let text = format!(
        "{HEAD}use crate::cite::{{Citation, Cited, {dated}InForce, Row, Seen, Standing, sources}};\n{uses}{body}"
    );
    Some(Generated { path: format!("src/{room}/table.rs"), text })
}

fn row(table: &Table, row: &Row) -> String {
    format!(
        "Row {{\n            table: {:?},\n            key: {:?},\n            printed: {:?},\n            citation: Citation {{ source: &sources::{}, place: {:?}, standing: Standing::{}, seen: Seen::{} }},\n            in_force: InForce::between({}, {}),\n            note: {:?},\n        }}",
        table.path,
        row.key,
        row.printed,
        constant(&row.source),
        row.place,
        camel(&row.standing),
        camel(&row.seen),
        date(&row.from),
        date(&row.until),
        row.note
    )
}

fn cited(table: &Table, r: &Row, value: &str) -> String {
    format!("    Cited {{\n        value: {value},\n        row: {},\n    }},\n", row(table, r))
}

fn array<'a>(
    table: &Table,
    doc: &str,
    name: &str,
    kind: &str,
    rows: impl IntoIterator<Item = &'a Row>,
    value: impl Fn(&Row) -> String,
) -> String {
    let rows: Vec<_> = rows.into_iter().collect();
    let items: String = rows.iter().map(|row| cited(table, row, &value(row))).collect();
    let shown = doc.replace('\n', " ");
    format!("\n/// {shown}\npub static {name}: [Cited<{kind}>; {}] = [\n{items}];\n", rows.len())
}

fn one(table: &Table, r: &Row, name: &str, keyword: &str, kind: &str, value: &str) -> String {
    let item = cited(table, r, value);
    let item = item.trim().trim_end_matches(',');
    format!("\n/// {}\n{keyword} {name}: Cited<{kind}> = {item};\n", table.title)
}

fn temperature(row: &Row) -> String {
    match (row.maybe_number("fahrenheit"), row.maybe_number("celsius")) {
        (Some(f), Some(c)) => format!("PrintedTemperature::Both({f:?}, {c:?})"),
        (Some(f), None) => format!("PrintedTemperature::Fahrenheit({f:?})"),
        (None, Some(c)) => format!("PrintedTemperature::Celsius({c:?})"),
        (None, None) => panic!("{}: no temperature", row.key),
    }
}

fn level_limit(row: &Row) -> String {
    let low = number(row.number("mg_per_kg"));
    match row.words("operator") {
        "at-most" => format!("Limit::AtMost(Level::of({low}))"),
        "at-least" => format!("Limit::AtLeast(Level::of({low}))"),
        "exactly" => format!("Limit::Exactly(Level::of({low}))"),
        "between" => format!(
            "Limit::Between(Level::of({low}), Level::of({}))",
            number(row.number("mg_per_kg_high"))
        ),
        other => panic!("{}: operator {other}", row.key),
    }
}

/// A struct literal of numbers; each pair is the field in Rust and the figure of the row.
fn fields(kind: &str, row: &Row, pairs: &[&str]) -> String {
    let parts: Vec<_> = pairs
        .iter()
        .map(|pair| {
            let (field, figure) = pair.split_once(':').unwrap();
            format!("{field}: {}", number(row.number(figure)))
        })
        .collect();
    format!("{kind} {{ {} }}", parts.join(", "))
}

fn hold(row: &Row) -> String {
    let time = row.maybe_number("hold_s").unwrap_or(0.0);
    format!("Hold {{ temperature: {}, time: seconds({time:?}) }}", temperature(row))
}

/// Rows of freezing: by how thick a piece is, or, where a row names no thickness, by the
/// temperature in its middle.
fn freezing(table: &Table, name: &str) -> String {
    let value = |row: &Row, thickest: Option<f64>, time: f64| {
        let store = match (row.maybe_number("store_f"), row.maybe_number("store_c")) {
            (Some(f), Some(c)) => format!("PrintedTemperature::Both({f:?}, {c:?})"),
            _ => temperature(row),
        };
        let thickest = option(thickest.map(|cm| format!("centimeters({cm:?})")));
        format!(
            "Freezing {{ freeze: {}, store: {store}, thickest: {thickest}, time: seconds({time:?}) }}",
            temperature(row)
        )
    };
    let kind = "Freezing";
    if table.shape == "freezing-room" {
        return ["group1", "group2"]
            .into_iter()
            .map(|group| {
                let doc = format!("{}: {group}.", table.title);
                let name = format!("{name}_{}", constant(group));
                array(table, &doc, &name, kind, &table.rows, |row| {
                    let thickest = row.number(&format!("{group}_max_in")) * 2.54;
                    value(row, Some(thickest), row.number(&format!("{group}_days")) * 86_400.0)
                })
            })
            .collect();
    }
    let of = |row: &Row| value(row, row.maybe_number("thickest_cm"), row.number("hold_s"));
    let (by_size, by_core): (Vec<_>, Vec<_>) =
        table.rows.iter().partition(|row| row.maybe_number("thickest_cm").is_some());
    if by_size.is_empty() {
        return array(table, &table.title, name, kind, by_core, of);
    }
    let core = format!("{}: by the temperature in the middle.", table.title);
    array(table, &table.title, name, kind, by_size, of)
        + &array(table, &core, &format!("{name}_CORE"), kind, by_core, of)
}

/// The name of a static for one row: the table's alone where it has one row.
fn one_of_several(name: &str, rows: &[Row], row: &Row) -> String {
    if rows.len() == 1 { name.to_owned() } else { format!("{name}_{}", constant(&row.key)) }
}

fn authority(table: &Table, row: &Row) -> String {
    format!("Authority::{}", camel(&table.authority_of(row).unwrap()))
}

fn statics(table: &Table) -> String {
    let rows = &table.rows;
    let of_agent = |agent: &'static str| rows.iter().filter(move |row| row.words("agent") == agent);
    let name = constant(table.path.split('/').nth(1).unwrap());
    match table.shape.as_str() {
        // Read by people and by other programs; no code of this crate uses them.
        "unit" | "words" | "rounded-pair" | "listed" | "regression" => String::new(),
        "premix-strength" => array(table, &table.title, &name, "SoldStrength", rows, |row| {
            let percent = row.figures["sodium_nitrite_percent"].as_array().unwrap();
            let [low, high] = percent.as_slice() else { panic!("{}: not a range", row.key) };
            let level = |end: &toml::Value| format!("Level::of({:?})", end.as_float().unwrap() * 1e4);
            format!(
                "SoldStrength {{ nitrite: Range::ordered({}, {}), neat: {} }}",
                level(low),
                level(high),
                row.has("neat"),
            )
        }),
        "curing-limit" if table.authority.as_deref() == Some("none") => String::new(),
        "curing-limit" => array(table, &table.title, &name, "ProductLimit", rows, |row| {
            let counted_as = match row.words("counted_as") {
                "nitrate-and-nitrite-as-sodium-nitrite" => "NitrateAndNitriteAsSodiumNitrite".to_owned(),
                other => camel(other),
            };
            let figure = match row.maybe_number("mg_per_kg_high") {
                Some(high) => format!("{:?}, {high:?}", row.number("mg_per_kg")),
                None => number(row.number("mg_per_kg")),
            };
            let limit = camel(row.words("operator"));
            format!(
                "ProductLimit {{ authority: {}, product_key: {:?}, product: {:?}, agents: Agents::{}, counted_as: CountedAs::{counted_as}, measured_on: MeasuredOn::{}, limit: Limit::{limit}({figure}), residual_cap: {}, investigate_above: {}, superseded: {} }}",
                authority(table, row),
                row.words("product_key"),
                row.words("product"),
                camel(row.words("substance")),
                camel(row.words("basis")),
                option(row.maybe_number("residual_cap_mg_per_kg").map(number)),
                option(row.maybe_number("investigate_above_mg_per_kg").map(number)),
                row.has("superseded"),
            )
        }),
        "ingoing-limit" => ["nitrite-salts", "nitrate-salts"]
            .into_iter()
            .map(|agent| {
                let short = agent.split('-').next().unwrap();
                array(
                    table,
                    &format!("{}: {short}.", table.title),
                    &format!("{name}_{}", short.to_uppercase()),
                    &format!("IngoingLimit<{}>", camel(agent)),
                    of_agent(agent),
                    |row| {
                        let methods = match row.words("method") {
                            "pickle" => "&[Method::Pumped, Method::Immersion]".to_owned(),
                            method => format!("&[Method::{}]", camel(method)),
                        };
                        format!(
                            "IngoingLimit {{ authority: {}, methods: {methods}, limit: {}, working_figure: {} }}",
                            authority(table, row),
                            level_limit(row),
                            option(row.maybe_number("working_figure").map(|n| n.to_string())),
                        )
                    },
                )
            })
            .collect(),
        "bacon-limit" => ["sodium-nitrite", "potassium-nitrite"]
            .into_iter()
            .map(|agent| {
                array(
                    table,
                    &format!("{}: {}.", table.title, agent.replace('-', " ")),
                    &format!("{name}_{}", agent.split('-').next().unwrap().to_uppercase()),
                    &format!("BaconLimit<{}>", camel(agent)),
                    of_agent(agent),
                    |row| {
                        let formula = match row.words("formula") {
                            "bacon-pumped-standard" => "Pumped",
                            "bacon-pumped-alt-a" => "PumpedA",
                            "bacon-pumped-alt-b" => "PumpedB",
                            "bacon-immersion" => "Immersion",
                            "bacon-dry" => "DryCure",
                            other => panic!("formula {other}"),
                        };
                        format!(
                            "BaconLimit {{ authority: {}, formula: BaconFormula::{formula}, limit: {}, ascorbate: {}, sugar_percent: {}, lactic_culture: {} }}",
                            authority(table, row),
                            level_limit(row),
                            option(row.maybe_number("ascorbate_mg_per_kg").map(|n| format!("Level::of({n:?})"))),
                            option(row.maybe_number("sugar_percent").map(number)),
                            row.has("lactic_culture"),
                        )
                    },
                )
            })
            .collect(),
        "level-limit" => rows
            .iter()
            .map(|row| {
                let basis = row.maybe_words("in").map_or("OnGreenWeight".to_owned(), camel);
                let kind = format!("Limit<Level<{}, {basis}>>", camel(row.words("agent")));
                one(table, row, &one_of_several(&name, rows, row), "pub static", &kind, &level_limit(row))
            })
            .collect(),
        "figure" => rows
            .iter()
            .map(|row| {
                let name = one_of_several(&name, rows, row);
                one(table, row, &name, "pub static", "f64", &number(row.number("value")))
            })
            .collect(),
        "additive-limit" => {
            let judged = rows.iter().filter(|row| row.has("group"));
            array(table, &table.title, &name, "AdditiveLimit", judged, |row| {
                let methods: Vec<_> = row.list("methods").into_iter().map(|m| format!("Method::{}", camel(m))).collect();
                format!(
                    "AdditiveLimit {{ authority: {}, group: AdditiveGroup::{}, methods: &[{}], product_key: {:?}, on: AdditiveBasis::{}, limit: Limit::AtMost({}) }}",
                    authority(table, row),
                    camel(row.words("group")),
                    methods.join(", "),
                    row.maybe_words("product_key"),
                    camel(row.words("on")),
                    number(row.number("mg_per_kg")),
                )
            })
        }
        "molar-mass" => rows
            .iter()
            .map(|row| {
                let name = format!("MOLAR_MASS_{}", constant(&row.key));
                let doc = format!("Molar mass of {}, g/mol.", row.words("species"));
                one(table, row, &name, "pub(super) const", "f64", &number(row.number("g_per_mol")))
                    .replace(&format!("/// {}", table.title), &format!("/// {doc}"))
            })
            .collect(),
        "salometer" => rows
            .iter()
            .filter(|row| row.has("percent_at_100"))
            .map(|row| {
                let name = format!("{name}_{}", constant(&row.key));
                one(table, row, &name, "pub static", "f64", &number(row.number("percent_at_100")))
            })
            .collect(),
        "brine-density" => array(table, &table.title, &name, "Density", rows, |row| {
            fields("Density", row, &["percent:percent_w_w", "kg_per_m3:kg_per_m3"])
        }),
        "specific-volume" => array(table, &table.title, &name, "SpecificVolume", rows, |row| {
            fields("SpecificVolume", row, &["celsius:celsius", "molality:molality", "cm3_per_g:cm3_per_g"])
        }),
        "solubility" => array(table, &table.title, &name, "Solubility", rows, |row| {
            fields("Solubility", row, &["fahrenheit:fahrenheit", "percent:percent_w_w"])
        }),
        "freezing-point" => array(table, &table.title, &name, "FreezingPoint", rows, |row| {
            fields("FreezingPoint", row, &["percent:percent_w_w", "depression:depression_k"])
        }),
        "water-activity" => array(table, &table.title, &name, "TabledActivity", rows, |row| {
            fields("TabledActivity", row, &["percent:percent_w_w", "activity:aw", "spread:spread"])
        }),
        "pitzer" => {
            let [row, ..] = rows.as_slice() else { panic!("{}: no rows", table.path) };
            let value = fields(
                "Pitzer",
                row,
                &["beta0:beta0", "beta1:beta1", "c:c_phi", "a:a_phi", "b:b", "alpha:alpha", "most:m_max"],
            );
            one(table, row, &name, "pub static", "Pitzer", &value)
        }
        "saturated-humidity" => array(table, &table.title, &name, "SaturatedHumidity", rows, |row| {
            let rest = fields("", row, &["lowest:celsius_low", "highest:celsius_high", "a:a", "b:b"]);
            format!("SaturatedHumidity {{ salt: {:?}, {}", row.words("salt"), rest.trim_start_matches(" { "))
        }),
        "saturated-activity" => array(table, &table.title, &name, "SaturatedActivity", rows, |row| {
            let rest = fields("", row, &["k1:k1", "k2:k2"]);
            format!("SaturatedActivity {{ salt: {:?}, {}", row.words("salt"), rest.trim_start_matches(" { "))
        }),
        "composition" => array(table, &table.title, &name, "Composition", rows, |row| {
            let some = |field: &str| option(row.maybe_number(field).map(number));
            format!(
                "Composition {{ description: {:?}, group: {:?}, number: {:?}, water: {}, protein: {}, fat: {}, ash: {}, carbohydrate: {}, sodium_mg: {}, fat_count: {}, fat_error: {} }}",
                row.words("description"),
                row.words("group"),
                row.maybe_words("ndb").unwrap_or_default(),
                number(row.number("water_g")),
                number(row.number("protein_g")),
                number(row.number("fat_g")),
                number(row.number("ash_g")),
                number(row.maybe_number("carbohydrate_by_difference_g").unwrap_or(0.0)),
                some("sodium_mg"),
                some("fat_n"),
                some("fat_se"),
            )
        }),
        "measure" => array(table, &table.title, &name, "KitchenMeasure", rows, |row| {
            format!(
                "KitchenMeasure {{ description: {:?}, number: {:?}, measure: {:?}, amount: {}, grams: {}, sd_grams: {} }}",
                row.words("description"),
                row.maybe_words("ndb").unwrap_or_default(),
                row.words("measure"),
                number(row.number("amount")),
                number(row.number("grams")),
                option(row.maybe_number("sd_g").map(number)),
            )
        }),
        "cooking-yield" => array(table, &table.title, &name, "CookingYield", rows, |row| {
            let some = |field: &str| option(row.maybe_number(field).map(number));
            format!(
                "CookingYield {{ description: {:?}, number: {:?}, method: {:?}, percent: {}, lowest: {}, highest: {}, water_change: {}, fat_change: {} }}",
                row.words("description"),
                row.maybe_words("ndb").unwrap_or_default(),
                row.words("method"),
                number(row.number("yield_pct")),
                some("yield_min_pct"),
                some("yield_max_pct"),
                some("moisture_change_g"),
                some("fat_change_g"),
            )
        }),
        "composition-limit" => {
            let judged = rows.iter().filter(|row| row.has("product_key"));
            array(table, &table.title, &name, "CompositionLimit", judged, |row| {
                let some = |field: &str| option(row.maybe_number(field).map(number));
                format!(
                    "CompositionLimit {{ authority: crate::authority::{}, product_key: {:?}, product: {:?}, fat: {}, fat_of_uncooked: {}, water_of_ingredients: {}, added_water: {}, fat_and_added_water: {} }}",
                    authority(table, row),
                    row.words("product_key"),
                    row.words("product"),
                    some("fat_max_percent"),
                    row.has("fat_of_uncooked"),
                    some("water_max_percent"),
                    option(row.maybe_number("added_water_max_percent").or(row.maybe_number("added_water_percent")).map(number)),
                    some("fat_plus_added_water_max_percent"),
                )
            })
        }
        "least-protein" => {
            let judged = rows.iter().filter(|row| row.has("product_key"));
            array(table, &table.title, &name, "LeastProtein", judged, |row| {
                format!(
                    "LeastProtein {{ authority: crate::authority::{}, product_key: {:?}, percent: {} }}",
                    authority(table, row),
                    row.words("product_key"),
                    number(row.number("min_pff_percent")),
                )
            })
        }
        "country-ham" => {
            let judged = rows.iter().filter(|row| {
                ["salt_percent_min", "brine_percent_min", "weight_loss_percent_min"].iter().any(|key| row.has(key))
            });
            array(table, &table.title, &name, "CountryHam", judged, |row| {
                let some = |field: &str| option(row.maybe_number(field).map(number));
                format!(
                    "CountryHam {{ salt: {}, brine: {}, activity: {}, loss: {} }}",
                    some("salt_percent_min"),
                    some("brine_percent_min"),
                    some("water_activity_max"),
                    some("weight_loss_percent_min"),
                )
            })
        }
        "weight-gain" => array(table, &table.title, &name, "WeightGain", rows, |row| {
            format!(
                "WeightGain {{ authority: crate::authority::{}, product_key: {:?}, percent_of_green: {} }}",
                authority(table, row),
                row.words("product_key"),
                number(row.number("max_percent_of_green_weight")),
            )
        }),
        "dwell-5-log" => array(table, &table.title, &name, "Dwell5", rows, |row| {
            format!("Dwell5 {{ temperature: {}, time: seconds({:?}) }}", temperature(row), row.number("dwell_5_log_s"))
        }),
        "freezing" | "freezing-room" => freezing(table, &name),
        "legs" => array(table, &table.title, &name, "Leg", rows, |row| {
            let at = |end: &str| {
                // Where documents disagree on an end, the stricter one is judged by.
                let figure = |scale: &str| {
                    row.maybe_number(&format!("judged_{scale}_{end}")).or(row.maybe_number(&format!("{scale}_{end}")))
                };
                match (figure("fahrenheit"), figure("celsius")) {
                    (Some(f), Some(c)) => format!("PrintedTemperature::Both({f:?}, {c:?})"),
                    (None, Some(c)) => format!("PrintedTemperature::Celsius({c:?})"),
                    _ => panic!("{}: no temperature {end}", row.key),
                }
            };
            format!(
                "Leg {{ schedule: {:?}, from: {}, to: {}, most: hours({:?}) }}",
                row.words("schedule"),
                at("from"),
                at("to"),
                row.number("max_hours"),
            )
        }),
        "growth-limit" => {
            let named = rows.iter().filter(|row| row.has("pathogen"));
            array(table, &table.title, &name, "GrowthLimit", named, |row| {
                // Of a range the end that is the stricter: growth at the coldest, sourest, driest, saltiest.
                let least = |figure: &str, range: &str| {
                    option(row.maybe_number(figure).or(row.pair(range).map(|(low, _)| low)).map(number))
                };
                let salt = row.maybe_number("max_wps_percent").or(row.pair("max_salt_percent_range").map(|(_, high)| high));
                let dry = if row.has("aw_above") { least("aw_above", "") } else { least("min_aw", "min_aw_range") };
                format!(
                    "GrowthLimit {{ pathogen: Pathogen::{}, celsius: {}, ph: {}, activity: {}, salt: {} }}",
                    camel(row.words("pathogen")),
                    least("min_c", "min_c_range"),
                    least("min_ph", "min_ph_range"),
                    dry,
                    option(salt.map(number)),
                )
            })
        }
        "growth-model" => {
            let usable = rows.iter().filter(|row| row.has("law"));
            array(table, &table.title, &name, "Model", usable, |row| {
                let of = |name: &str| row.number(name);
                let (rate, spread) = match row.words("law") {
                    "square-root-from-reference" => {
                        let rate = |per_day: f64, least: f64| {
                            let b = (per_day / 24.0).sqrt() / (of("t_ref_c") - least);
                            format!("Rate::SquareRoot {{ b: {b:?}, least: {least:?} }}")
                        };
                        let (per_day, least) = (of("mu_ref_ln_per_day"), of("tmin_c"));
                        let (per_day_sd, least_sd) = (of("mu_ref_sd_between"), of("tmin_sd_between_c"));
                        let slow = rate(per_day - per_day_sd, least + least_sd);
                        let fast = rate(per_day + per_day_sd, least - least_sd);
                        (rate(per_day, least), format!("Some(({slow}, {fast}))"))
                    }
                    "square-times-maximum" => {
                        let rate = format!(
                            "Rate::SquareTimesMaximum {{ a: {:?}, c: {:?}, least: {:?}, most: {:?} }}",
                            of("a"), of("b"), of("tmin_c"), of("tmax_c")
                        );
                        (rate, "None".to_owned())
                    }
                    other => panic!("{}: law {other}", row.key),
                };
                format!(
                    "Model {{ organism: {:?}, food: {:?}, rate: {rate}, spread: {spread}, most: {:?}, valid: ({:?}, {:?}) }}",
                    row.words("organism"),
                    row.words("food"),
                    of("nmax_log10_cfu_g"),
                    of("valid_from_c"),
                    of("valid_to_c"),
                )
            })
        }
        "practical-life" => array(table, &table.title, &name, "PracticalLife", rows, |row| {
            let months = row.maybe_number("life_months").or(row.maybe_number("life_months_min"));
            format!(
                "PracticalLife {{ item: {:?}, criterion: {:?}, celsius: {:?}, life: days({:?}) }}",
                row.words("item"),
                row.words("criterion"),
                row.number("temp_c"),
                // The lower end, which is the advice.
                months.unwrap() * 30.0,
            )
        }),
        "thaw-turkey" => array(table, &table.title, &name, "ThawBird", rows, |row| {
            let range = |low: &str, high: &str, unit: &str| {
                format!("({unit}({:?}), {unit}({:?}))", row.number(low), row.number(high))
            };
            format!(
                "ThawBird {{ mass: {}, refrigerator: {}, cold_water: {} }}",
                range("weight_min_lb", "weight_max_lb", "pounds"),
                range("refrigerator_min_d", "refrigerator_max_d", "days"),
                range("cold_water_min_h", "cold_water_max_h", "hours"),
            )
        }),
        "equivalent-time" => array(table, &table.title, &name, "EquivalentTime", rows, |row| {
            format!(
                "EquivalentTime {{ celsius: {:?}, time: minutes({:?}) }}",
                row.number("temp_c"),
                row.number("minutes"),
            )
        }),
        "garlic-in-oil" => array(table, &table.title, &name, "GarlicInOil", rows, |row| {
            format!("GarlicInOil {{ most: days({:?}), current: {} }}", row.number("days_max"), row.figures.get("current").is_none_or(|v| v.as_bool().unwrap()))
        }),
        "exposure" => array(table, &table.title, &name, "Exposure", rows, |row| {
            let end = |end: &str| {
                let figure = |scale: &str| row.maybe_number(&format!("{scale}_{end}"));
                Some(format!("PrintedTemperature::Both({:?}, {:?})", figure("fahrenheit")?, figure("celsius")?))
            };
            format!(
                "Exposure {{ organism: {:?}, from: {}, up_to: {}, most: hours({:?}) }}",
                row.words("organism"),
                end("from").unwrap(),
                option(end("to")),
                row.number("max_hours"),
            )
        }),
        "exposure-summary" => {
            let timed = rows.iter().filter(|row| row.has("max_hours"));
            array(table, &table.title, &name, "ReadyToEat", timed, |row| {
                let f = |name: &str| row.maybe_number(name).map(|f| format!("PrintedTemperature::Fahrenheit({f:?})"));
                format!(
                    "ReadyToEat {{ cooked: {}, ever_above: {}, never_above: {}, from: {}, warm: {}, hot: {}, most: hours({:?}), most_warm: {} }}",
                    row.words("food").starts_with("cooked"),
                    option(f("trigger_above_f")),
                    option(f("never_above_f")),
                    f("from_f").unwrap(),
                    f("warm_f").unwrap(),
                    f("to_f").unwrap(),
                    row.number("max_hours"),
                    option(row.maybe_number("max_hours_above_70f").map(|h| format!("hours({h:?})"))),
                )
            })
        }
        "warm" => array(table, &table.title, &name, "WarmTime", rows, |row| {
            let at = |name: &str| {
                let figure = |scale: &str| row.maybe_number(&format!("{name}_{scale}"));
                match (figure("f"), figure("c")) {
                    (Some(f), Some(c)) => Some(format!("PrintedTemperature::Both({f:?}, {c:?})")),
                    (None, Some(c)) => Some(format!("PrintedTemperature::Celsius({c:?})")),
                    _ => None,
                }
            };
            format!(
                "WarmTime {{ authority: {}, was: {}, cold: {}, hot: {}, air_above: {}, never_above: {}, most: Limit::{}(hours({:?})) }}",
                authority(table, row),
                option(row.maybe_words("was").map(|was| format!("Was::{}", camel(was)))),
                at("cold").unwrap(),
                at("hot").unwrap(),
                option(at("air_above")),
                option(at("never_above")),
                camel(row.maybe_words("operator").unwrap_or("at-most")),
                row.number("max_hours"),
            )
        }),
        "formula" => {
            let held = rows.iter().filter(|row| row.has("min_nitrite_ppm") || row.has("max_aw"));
            array(table, &table.title, &name, "Formula", held, |row| {
                let figure = |name: &str| option(row.maybe_number(name).map(number));
                format!(
                    "Formula {{ nitrite: {}, ascorbate: {}, brine: {}, activity: {} }}",
                    figure("min_nitrite_ppm"),
                    figure("min_ascorbate_ppm"),
                    figure("min_brine_percent"),
                    figure("max_aw"),
                )
            })
        }
        "degree-hours" => array(table, &table.title, &name, "DegreeHours", rows, |row| {
            format!(
                "DegreeHours {{ scale: Scale::{}, base: {:?}, hottest: {}, below: {}, until_ph: {:?}, most: {:?} }}",
                camel(row.words("scale")),
                row.number("base"),
                option(row.maybe_number("up_to").map(number)),
                row.has("strictly_below") && row.figures["strictly_below"].as_bool().unwrap(),
                row.number("until_ph"),
                row.number("limit"),
            )
        }),
        "interaction" => array(table, &table.title, &name, "Cell", rows, |row| {
            let truth = |name: &str| row.figures[name].as_bool().unwrap();
            let band = |of: &str| {
                format!(
                    "({:?}, {}, {:?}, {})",
                    row.number(&format!("{of}_low")),
                    truth(&format!("{of}_above")),
                    row.number(&format!("{of}_high")),
                    truth(&format!("{of}_up_to")),
                )
            };
            format!(
                "Cell {{ activity: {}, ph: {}, needs_none: {} }}",
                band("aw"),
                band("ph"),
                truth("needs_no_time_or_temperature"),
            )
        }),
        "humidity" => array(table, &table.title, &name, "HumidityOption", rows, |row| {
            let endpoint = row.maybe_number("endpoint_min_f").map(|f| {
                format!("PrintedTemperature::Both({f:?}, {:?})", row.number("endpoint_min_c"))
            });
            format!(
                "HumidityOption {{ share_of_the_cook: {:?}, at_least: hours({:?}), endpoint: {}, relative_humidity: {}, shortest_cook: hours({:?}) }}",
                row.number("min_fraction_of_cook_time"),
                row.maybe_number("min_hours").unwrap_or(0.0),
                option(endpoint),
                option(row.maybe_number("rh_pct").map(number)),
                row.maybe_number("min_total_cook_hours").unwrap_or(0.0),
            )
        }),
        "humid-air" => rows
            .iter()
            .map(|row| {
                let name = constant(&row.key);
                let (kind, names): (_, &[&str]) = if row.has("c_ln") {
                    ("Saturation", &["c_inverse", "c0", "c1", "c2", "c3", "c4", "c_ln"])
                } else if row.has("latent") {
                    ("WetBulb", &["latent", "latent_slope", "air", "vapour", "water"])
                } else if row.has("power") {
                    ("Barometer", &["at_sea", "per_metre", "power"])
                } else {
                    return one(table, row, &name, "pub(super) static", "f64", &number(row.number("ratio")));
                };
                let pairs: Vec<_> = names.iter().map(|name| format!("{name}:{name}")).collect();
                let pairs: Vec<_> = pairs.iter().map(String::as_str).collect();
                one(table, row, &name, "pub(super) static", kind, &fields(kind, row, &pairs))
            })
            .collect(),
        "rules" => rows
            .iter()
            .filter(|row| row.has("constant"))
            .map(|row| {
                let name = format!("{name}_{}", constant(row.words("constant")));
                if let Some(most) = row.maybe_number("max_aw").or(row.maybe_number("max_ph")) {
                    return one(table, row, &name, "pub static", "f64", &number(most));
                }
                if let (Some(f), Some(c)) = (row.maybe_number("limit_f"), row.maybe_number("limit_c")) {
                    let printed = format!("PrintedTemperature::Both({f:?}, {c:?})");
                    let at = one(table, row, &name, "pub static", "PrintedTemperature", &printed);
                    let time = row.maybe_number("max_hours").map(|h| {
                        one(table, row, &format!("{name}_TIME"), "pub static", "Time", &format!("hours({h:?})"))
                    });
                    let days = row.maybe_number("max_days").map(|d| {
                        one(table, row, &format!("{name}_DAYS"), "pub static", "Time", &format!("days({d:?})"))
                    });
                    let within = row.maybe_number("within_hours").map(|h| {
                        one(table, row, &format!("{name}_WITHIN"), "pub static", "Time", &format!("hours({h:?})"))
                    });
                    return [Some(at), time, within, days].into_iter().flatten().collect();
                }
                if let Some(value) = row.maybe_number("value") {
                    return one(table, row, &name, "pub static", "f64", &number(value));
                }
                if let Some(days) = row.maybe_number("max_days") {
                    return one(table, row, &name, "pub static", "Time", &format!("days({days:?})"));
                }
                // Words alone: there is the row to name.
                if !["max_s", "hold_s", "fahrenheit"].iter().any(|figure| row.has(figure)) {
                    return one(table, row, &name, "pub static", "()", "()");
                }
                match row.maybe_number("max_s") {
                    Some(most) => one(table, row, &name, "pub static", "Time", &format!("seconds({most:?})")),
                    None => {
                        let own = one(table, row, &name, "pub static", "Hold", &hold(row));
                        let Some(f) = row.maybe_number("roast_temp_f") else { return own };
                        let printed = format!("PrintedTemperature::Both({f:?}, {:?})", row.number("roast_temp_c"));
                        let value = format!("Hold {{ temperature: {printed}, time: seconds(0.0) }}");
                        own + &one(table, row, &format!("{name}_ROASTS"), "pub static", "Hold", &value)
                    }
                }
            })
            .collect(),
        "hold" => array(table, &table.title, &name, "Hold", rows, hold),
        "poultry-dwell" => ["chicken", "turkey"]
            .into_iter()
            .map(|bird| {
                let of_bird = rows.iter().filter(|row| row.words("bird") == bird);
                let name = format!("{name}_{}", constant(bird));
                array(table, &format!("{}: {bird}.", table.title), &name, "PoultryDwell", of_bird, |row| {
                    format!(
                        "PoultryDwell {{ temperature: {}, seconds_by_fat: [{}] }}",
                        temperature(row),
                        row.numbers("dwell_7_log_s").into_iter().map(number).collect::<Vec<_>>().join(", "),
                    )
                })
            })
            .collect(),
        "parameter" => rows
            .iter()
            .filter(|row| ["come-up-time-max", "humidity-exempt-weight"].contains(&row.key.as_str()))
            .map(|row| {
                if row.key == "humidity-exempt-weight" {
                    let value = format!("LargePiece {{ mass: pounds({:?}), oven: PrintedTemperature::Both({:?}, {:?}) }}", row.number("min_lb"), row.number("oven_min_f"), row.number("oven_min_c"));
                    return one(table, row, "FSIS_LARGE_PIECE", "pub static", "LargePiece", &value);
                }
                let value = format!("ComeUpLimit {{ low_fahrenheit: {:?}, high_fahrenheit: {:?}, most: seconds({:?}) }}", row.number("low_f"), row.number("high_f"), row.number("max_s"));
                one(table, row, "FSIS_COME_UP", "pub static", "ComeUpLimit", &value)
            })
            .collect(),
        "envelope" => String::new(),
        "endpoint" => array(table, &table.title, &name, "Endpoint", rows, |row| {
            format!(
                "Endpoint {{ authority: {}, food: Food::{}, temperature: {}, rest: seconds({:?}) }}",
                authority(table, row),
                camel(row.words("food")),
                temperature(row),
                row.number("rest_s")
            )
        }),
        // A row for every food class that it names; one without is for people to read.
        "endpoints" => {
            let items: Vec<_> = rows
                .iter()
                .filter(|row| row.has("foods"))
                .flat_map(|row| row.list("foods").into_iter().map(move |food| (row, food)))
                .map(|(row, food)| {
                    let value = format!(
                        "Endpoint {{ authority: {}, food: Food::{}, temperature: {}, rest: seconds(0.0) }}",
                        authority(table, row),
                        camel(food),
                        temperature(row),
                    );
                    cited(table, row, &value)
                })
                .collect();
            format!("\n/// {}\npub static {name}: [Cited<Endpoint>; {}] = [\n{}];\n", table.title, items.len(), items.concat())
        }
        "dwell" => array(table, &table.title, &name, "Dwell", rows, |row| {
            format!(
                "Dwell {{ temperature: {}, for_6_5_log: seconds({:?}), for_7_log: seconds({:?}) }}",
                temperature(row),
                row.number("dwell_6_5_log_s"),
                row.number("dwell_7_log_s")
            )
        }),
        "storage" => array(table, &table.title, &name, "Storage", rows, |row| {
            let keeps = |words: &str, days: &str| {
                let pair = option(row.pair(days).map(|(low, high)| format!("({low:?}, {high:?})")));
                format!("Keeps {{ printed: {:?}, days: {pair} }}", row.words(words))
            };
            format!(
                "Storage {{ item: {:?}, edition: {:?}, refrigerate: FridgeTime({}), freeze: FreezerTime({}), counted_from: {:?} }}",
                row.words("item"),
                row.words("edition"),
                keeps("refrigerate", "refrigerate_days"),
                keeps("freeze", "freeze_days"),
                row.maybe_words("counted_from").unwrap_or_default(),
            )
        }),
        "temperature-limit" => rows
            .iter()
            .map(|row| {
                assert_eq!(row.words("operator"), "at-most");
                let name = format!("HOME_{}", constant(&row.key));
                let doc = format!("/// {}: the {}, at most.", table.title, row.key);
                one(table, row, &name, "pub static", "PrintedTemperature", &temperature(row))
                    .replace(&format!("/// {}", table.title), &doc)
            })
            .collect(),
        "named" => array(table, &table.title, &name, "()", rows, |_| "()".to_owned()),
        "shelf-stable" => rows
            .iter()
            .filter(|row| row.has("constant"))
            .map(|row| {
                let name = format!("{name}_{}", constant(row.words("constant")));
                let limit = |figures: &[(&str, &str)]| {
                    let found = figures.iter().find_map(|(figure, operator)| {
                        Some(format!("Limit::{operator}({:?})", row.maybe_number(figure)?))
                    });
                    option(found)
                };
                let both = row.maybe_number("or_ph_max_with_aw").zip(row.maybe_number("and_aw_max"));
                let value = format!(
                    "ShelfStable {{ ph: {}, activity: {}, only_above: {}, salt: {}, both: {} }}",
                    limit(&[("ph_max", "AtMost"), ("or_ph_below", "Below")]),
                    limit(&[("aw_below", "Below"), ("or_aw_max", "AtMost")]),
                    option(row.maybe_number("and_aw_above").map(number)),
                    option(row.maybe_number("or_wps_percent_min").map(number)),
                    option(both.map(|(ph, aw)| format!("({ph:?}, {aw:?})"))),
                );
                one(table, row, &name, "pub static", "ShelfStable", &value)
            })
            .collect(),
        "cold-holding" => array(table, &table.title, &name, "ColdHolding", rows, |row| {
            format!(
                "ColdHolding {{ authority: {}, fish: {}, temperature: {} }}",
                authority(table, row),
                row.maybe_words("food") == Some("fish"),
                temperature(row),
            )
        }),
        "water-phase" => {
            let judged = rows.iter().filter(|row| row.has("authority"));
            array(table, &table.title, &name, "WaterPhase", judged, |row| {
                let nitrite = row.maybe_number("with_nitrite_ppm_min").map(|least| {
                    let most = row.number("with_nitrite_ppm_max");
                    format!("Limit::Between(Level::of({least:?}), Level::of({most:?}))")
                });
                format!(
                    "WaterPhase {{ authority: {}, cold: {}, airless: {}, nitrite: {}, percent: {:?} }}",
                    authority(table, row),
                    option(row.maybe_words("smoked").map(|smoked| (smoked == "cold").to_string())),
                    row.figures["airless"].as_bool().unwrap(),
                    option(nitrite),
                    row.number("wps_percent_min"),
                )
            })
        }
        "chub" => rows
            .iter()
            .map(|row| {
                let f = |name: &str| format!("PrintedTemperature::Fahrenheit({:?})", row.number(name));
                let value = format!(
                    "ChubProcess {{ inside: {}, time: minutes({:?}), first: ({}, hours({:?})), second: ({}, hours({:?})) }}",
                    f("heat_fahrenheit"),
                    row.number("heat_minutes"),
                    f("cool_to_fahrenheit_first"),
                    row.number("cool_hours_first"),
                    f("cool_to_fahrenheit_second"),
                    row.number("cool_hours_second"),
                );
                one(table, row, &name, "pub static", "ChubProcess", &value)
            })
            .collect(),
        "hot-smoke" => {
            let judged = rows.iter().filter(|row| row.has("authority"));
            array(table, &table.title, &name, "HotSmoke", judged, |row| {
                format!(
                    "HotSmoke {{ authority: {}, inside: PrintedTemperature::Both({:?}, {:?}), time: minutes({:?}) }}",
                    authority(table, row),
                    row.number("internal_f_min"),
                    row.number("internal_c_min"),
                    row.number("hold_min"),
                )
            })
        }
        "smoke-ceiling" => array(table, &table.title, &name, "Ceiling", rows, |row| {
            let air = row.words("food") == "fish-air-packed";
            let food = if air { "fish" } else { row.words("food") };
            format!(
                "Ceiling {{ food: Food::{}, air_packed_only: {air}, authority: {}, temperature: {}, time: {} }}",
                camel(food),
                option(table.authority_of(row).map(|name| format!("Authority::{}", camel(&name)))),
                temperature(row),
                option(row.maybe_number("hours").map(|n| format!("hours({n:?})"))),
            )
        }),
        other => panic!("{}: shape {other}", table.path),
    }
}
