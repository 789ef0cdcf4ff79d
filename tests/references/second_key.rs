//! A second keying of the tables that can hurt, typed independently of the
//! first, in `references/second-key/`.

use std::collections::BTreeSet;

use greenweight::units::read_duration;

use greenweight_references::{References, Row, read, root};

fn lines(file: &str) -> Vec<Vec<String>> {
    let text = read(&root().join("references/second-key").join(file));
    let rows = text.lines().filter(|line| !line.starts_with('#')).skip(1);
    rows.map(|line| line.split(',').map(str::to_owned).collect()).collect()
}

fn plain(text: &str) -> String {
    text.replace([',', ';'], "").split_whitespace().collect::<Vec<_>>().join(" ")
}

fn optional(row: &Row, name: &str) -> String {
    row.maybe_number(name).map_or(String::new(), |n| n.to_string())
}

/// Compares `rows` with `typed`, both as lists of cells in the order of the table.
fn same(file: &str, rows: impl IntoIterator<Item = Vec<String>>) {
    let rows: Vec<_> = rows.into_iter().collect();
    let typed = lines(file);
    assert_eq!(rows.len(), typed.len(), "{file}: number of rows");
    for (first, second) in rows.iter().zip(&typed) {
        let number =
            |cell: &String| cell.parse::<f64>().map_or_else(|_| cell.clone(), |n| n.to_string());
        let (first, second): (Vec<_>, Vec<_>) =
            (first.iter().map(number).collect(), second.iter().map(number).collect());
        assert_eq!(first, second, "{file}");
    }
}

fn seconds(words: &str) -> String {
    read_duration(words).unwrap_or_else(|e| panic!("{words}: {e}")).low().value.to_string()
}

pub fn compare(references: &References) {
    let ingoing = &references.table("cure/us-ingoing").rows;
    same(
        "cure-us-ingoing.csv",
        ingoing.iter().map(|row| {
            vec![row.key.clone(), plain(&row.printed), row.number("mg_per_kg").to_string()]
        }),
    );

    let bacon = &references.table("cure/us-bacon").rows;
    same(
        "cure-us-bacon.csv",
        bacon.iter().map(|row| {
            let low = row.number("mg_per_kg");
            let (low, high) = match row.words("operator") {
                "exactly" => (low.to_string(), low),
                "between" => (low.to_string(), row.number("mg_per_kg_high")),
                _ => (String::new(), low),
            };
            vec![
                row.words("formula").to_owned(),
                row.words("agent").to_owned(),
                row.words("operator").to_owned(),
                low,
                high.to_string(),
                optional(row, "ascorbate_mg_per_kg"),
            ]
        }),
    );

    let consumer = &references.table("cook/us-consumer").rows;
    same(
        "cook-us-consumer.csv",
        consumer.iter().map(|row| {
            let rest = row.number("rest_s");
            vec![
                plain(row.words("product")),
                row.number("fahrenheit").to_string(),
                optional(row, "celsius"),
                if rest == 0.0 { String::new() } else { rest.to_string() },
            ]
        }),
    );

    let dwell = &references.table("cook/fsis-meat-dwell").rows;
    let typed = lines("cook-fsis-meat-dwell.csv");
    assert_eq!(dwell.len(), typed.len());
    for (row, cells) in dwell.iter().zip(&typed) {
        let [f, c, six, seven] = cells.as_slice() else { panic!("{cells:?}") };
        assert_eq!(row.number("fahrenheit"), f.parse::<f64>().unwrap());
        assert_eq!(row.number("celsius"), c.parse::<f64>().unwrap(), "{}", row.key);
        assert_eq!(row.number("dwell_6_5_log_s").to_string(), seconds(six), "{}", row.key);
        assert_eq!(row.number("dwell_7_log_s").to_string(), seconds(seven), "{}", row.key);
    }

    let (current, older): (Vec<_>, Vec<_>) =
        references.table("store/cold-food").rows.iter().partition(|row| row.until.is_none());
    let start = |item: &str| plain(item).split(' ').take(3).collect::<Vec<_>>().join(" ");
    same(
        "store-cold-food.csv",
        current.iter().map(|row| {
            let (category, item) = row.words("item").split_once(": ").unwrap();
            vec![
                plain(category),
                start(item),
                plain(row.words("refrigerate")),
                plain(row.words("freeze")),
            ]
        }),
    );
    same(
        "store-cold-food-older.csv",
        older.iter().map(|row| {
            vec![
                start(row.words("item")),
                plain(row.words("refrigerate")),
                plain(row.words("freeze")),
                row.source.clone(),
            ]
        }),
    );

    let mut ceilings = lines("smoke-cold-ceilings.csv");
    for row in &references.table("smoke/cold-ceilings").rows {
        let source = if row.source == "trade-practice" { "none" } else { &row.source };
        let found = ceilings.iter().position(|cells| {
            let [_, key, f, c, hours] = cells.as_slice() else { panic!("{cells:?}") };
            let degrees = row.maybe_number("fahrenheit").map_or_else(
                || c.parse().ok() == row.maybe_number("celsius"),
                |printed| f.parse() == Ok(printed),
            );
            key == source && degrees && *hours == optional(row, "hours")
        });
        ceilings.remove(found.unwrap_or_else(|| panic!("{} is not in the second keying", row.key)));
    }
    assert!(ceilings.is_empty(), "only in the second keying: {ceilings:?}");
}

/// The limits outside the United States, keyed a second time in one file.
pub fn compare_elsewhere(references: &References) {
    let typed = lines("cure-elsewhere.csv");
    let tables = [
        ("eu", "cure/eu"),
        ("gb", "cure/great-britain"),
        ("ca", "cure/canada"),
        ("codex", "cure/codex"),
        ("anz", "cure/australia-new-zealand"),
        ("jp", "cure/japan"),
        ("dk", "cure/denmark"),
    ];
    let mut compared = 0;
    for (short, path) in tables {
        let typed: Vec<_> = typed.iter().filter(|cells| cells[0] == short).collect();
        let rows = &references.table(path).rows;
        assert_eq!(rows.len(), typed.len(), "{path}: number of rows");
        for (row, cells) in rows.iter().zip(typed) {
            let [_, id, figure, unit, expressed_as, basis, from, until, cap, investigate] =
                cells.as_slice()
            else {
                panic!("{cells:?}")
            };
            let at = format!("{path}, {} against {id}", row.key);
            let scale = if unit == "g/kg" { 1000.0 } else { 1.0 };
            let figure = figure.parse::<f64>().unwrap() * scale;
            assert!((row.number("mg_per_kg") - figure).abs() < 1e-9, "{at}");
            let counted = match row.words("counted_as") {
                "nitrite-ion" => "NO2",
                "nitrate-ion" => "NO3",
                "sodium-nitrite" => "NaNO2",
                "sodium-nitrate" => "NaNO3",
                "salts-as-weighed" => "salt",
                "nitrate-and-nitrite-as-sodium-nitrite" => "total",
                _ => "unsaid",
            };
            assert_eq!(counted, expressed_as, "{at}");
            let measured = match row.words("basis") {
                "ingoing" | "ingoing-on-product" => "ingoing",
                "cheese-milk" => "milk",
                "residual-at-end-of-process" => "end",
                "residual-through-shelf-life" => "life",
                "residual" => "residual",
                "present-in-the-food" => "present",
                _ => "unsaid",
            };
            assert_eq!(measured, basis, "{at}");
            assert_eq!(row.from.clone().unwrap_or_default(), *from, "{at}");
            assert_eq!(row.until.clone().unwrap_or_default(), *until, "{at}");
            assert_eq!(optional(row, "residual_cap_mg_per_kg"), *cap, "{at}");
            assert_eq!(optional(row, "investigate_above_mg_per_kg"), *investigate, "{at}");
            compared += 1;
        }
    }
    assert_eq!(compared, typed.len(), "rows of a table that is not compared");
}

/// What is added to a cure, and what may be in the finished product, in the United States.
pub fn compare_additives(references: &References) {
    let named = |agent: &str| agent.replace('-', " ");
    let figure = |cell: &str| cell.parse::<f64>().unwrap().to_bits();
    let mut first = BTreeSet::new();
    for row in &references.table("cure/us-accelerators").rows {
        let figures = ["mg_per_kg", "mg_per_kg_from_percent"];
        for mg_per_kg in figures.iter().filter_map(|name| row.maybe_number(name)) {
            for agent in row.list("agents") {
                first.insert((named(agent), mg_per_kg.to_bits()));
            }
        }
    }
    for row in &references.table("cure/us-phosphates").rows {
        first.extend(
            row.maybe_number("mg_per_kg").map(|mg| ("phosphates".to_owned(), mg.to_bits())),
        );
    }
    let ours = |agent: &str| first.iter().any(|(known, _)| *known == named(agent));
    let second: BTreeSet<_> = lines("cure-us-additives.csv")
        .iter()
        .filter(|cells| !cells[2].is_empty() && ours(&cells[0]))
        .map(|cells| (named(&cells[0]), figure(&cells[2])))
        .collect();
    assert_eq!(first, second, "cure-us-additives.csv");
    assert_eq!(second.len(), 10);

    let finished = lines("cure-us-finished.csv");
    let mut compared = 0;
    for row in &references.table("cure/us-fda").rows {
        let foods: &[&str] = match row.words("product_key") {
            "fda/tuna" => &["smoked cured tunafish products"],
            "fda/sablefish-salmon-shad" => {
                &["smoked cured sablefish", "smoked cured salmon", "smoked cured shad"]
            }
            "fda/home-cure" => {
                &["home-cured meat and meat products including poultry and wild game"]
            }
            "fda/smoked-chub" => &["smoked chub (commercial)"],
            // Whatever is not in the list: there is no line of it.
            "fda/other-fish" => &[],
            other => panic!("{other}"),
        };
        let low = row.number("mg_per_kg");
        let expected = match row.maybe_number("mg_per_kg_high") {
            Some(high) => format!("{low};{high}"),
            None => low.to_string(),
        };
        for food in foods {
            let agent = format!("sodium {}", row.words("substance"));
            let found = finished.iter().find(|cells| cells[0] == *food && cells[1] == agent);
            assert_eq!(found.map(|cells| cells[2].as_str()), Some(&*expected), "{food}, {agent}");
            compared += 1;
        }
    }
    let residual = &references.table("cure/us-residual").rows[0];
    let last = finished.last().unwrap();
    assert_eq!(residual.number("mg_per_kg").to_string(), last[2]);
    // All but that and the salt of the chub, which stands with smoked fish.
    assert_eq!(compared + 2, finished.len());
}

/// The dwell tables of the cook's room.
pub fn compare_cook(references: &References) {
    let table = |path| references.table(path).rows.iter();
    let cells = |row: &Row, names: &[&str]| -> Vec<String> {
        names.iter().map(|name| row.number(name).to_string()).collect()
    };
    let poultry = table("cook/fsis-poultry-dwell").map(|row| {
        let mut typed = vec![row.words("bird").to_owned(), row.number("fahrenheit").to_string()];
        typed.extend(row.numbers("dwell_7_log_s").iter().map(f64::to_string));
        typed
    });
    same("cook-fsis-poultry.csv", poultry);
    let five =
        table("cook/fsis-meat-5-log").map(|row| cells(row, &["fahrenheit", "dwell_5_log_s"]));
    same("cook-fsis-meat-5-log.csv", five);
    let patties = table("cook/patties").map(|row| cells(row, &["fahrenheit", "hold_s"]));
    same("cook-patties.csv", patties);
    let heat =
        table("cook/trichina-heat").map(|row| cells(row, &["fahrenheit", "celsius", "hold_s"]));
    same("cook-trichina-heat.csv", heat);
    let hours = |row: &Row, group: &str| {
        let days = row.number(&format!("group{group}_days"));
        let f = row.number("fahrenheit").to_string();
        vec!["1".to_owned(), f, group.to_owned(), (days * 24.0).to_string()]
    };
    let rooms: Vec<_> = ["1", "2"]
        .iter()
        .flat_map(|group| table("cook/trichina-freezing").map(move |row| hours(row, group)))
        .collect();
    let core = table("cook/trichina-freezing-core").map(|row| {
        let f = row.number("fahrenheit").to_string();
        vec!["2".to_owned(), f, String::new(), row.number("hold_h").to_string()]
    });
    let mut first: Vec<_> = rooms.into_iter().chain(core).collect();
    let mut second = lines("cook-trichina-freezing.csv");
    first.sort();
    second.sort();
    assert_eq!(first, second, "cook-trichina-freezing.csv");
    let shop = |which: &'static str, path| {
        table(path).map(move |row| {
            let (f, s) = (row.number("fahrenheit"), row.number("hold_s"));
            vec![which.to_owned(), f.to_string(), s.to_string()]
        })
    };
    same(
        "cook-food-code-2022.csv",
        shop("ground", "cook/food-code-2022-ground")
            .chain(shop("roast", "cook/food-code-2022-roasts")),
    );

    after_the_fire(references);
    keeping(references);
}

fn after_the_fire(references: &References) {
    let legs = &references.table("chill/cooling-us").rows;
    same(
        "chill-cooling-legs.csv",
        legs.iter().map(|row| {
            let figures = ["leg", "fahrenheit_from", "fahrenheit_to", "max_hours"];
            let figures = figures.map(|name| optional(row, name));
            [vec![row.words("schedule").to_owned()], figures.to_vec()].concat()
        }),
    );
    let figures_of = |file: &str, table: &str, first: Option<&str>, names: &[&str]| {
        same(
            file,
            references.table(table).rows.iter().map(|row| {
                let first = first.map(|name| match name {
                    "key" => row.key.clone(),
                    name => plain(row.words(name)),
                });
                let figures = names.iter().map(|name| optional(row, name));
                first.into_iter().chain(figures).collect()
            }),
        );
    };
    let cooled = ["fahrenheit_from", "fahrenheit_to", "max_hours"];
    figures_of("chill-food-code-cooling.csv", "chill/food-code-cooling", Some("key"), &cooled);
    let cooled = ["celsius_from", "celsius_to", "max_hours"];
    figures_of("chill-australia.csv", "chill/australia", None, &cooled);
    figures_of("chill-united-kingdom.csv", "chill/united-kingdom", Some("product"), &cooled);
    let limits = ["min_c", "min_ph", "min_aw", "max_wps_percent"];
    figures_of("chill-growth-limits.csv", "chill/growth-limits", Some("organism"), &limits);

    let warm = &references.table("chill/warm-time").rows;
    let bounds = ["cold_f", "cold_c", "hot_f", "hot_c", "max_hours"];
    same(
        "chill-warm-time.csv",
        warm.iter().filter(|row| !row.has("was")).map(|row| {
            [vec![row.key.clone()], bounds.map(|name| optional(row, name)).to_vec()].concat()
        }),
    );
    let degrees = &references.table("chill/degree-hours").rows;
    same(
        "chill-degree-hours.csv",
        degrees.iter().map(|row| {
            let of = |name: &str| plain(row.words(name));
            vec![of("country"), of("range_text"), optional(row, "limit")]
        }),
    );
    let exposure = &references.table("chill/exposure").rows;
    same(
        "chill-exposure.csv",
        exposure.iter().map(|row| {
            let of = |name: &str| plain(row.words(name));
            vec![of("organism"), of("range_f"), optional(row, "max_hours")]
        }),
    );
    let slow = &references.table("chill/slow-cool-conditions").rows;
    let held = slow.iter().filter(|row| row.has("min_nitrite_ppm") || row.has("max_aw"));
    same(
        "chill-slow-cool-conditions.csv",
        held.map(|row| {
            let figures = ["min_nitrite_ppm", "min_brine_percent", "max_aw"];
            let figures = figures.map(|name| optional(row, name)).to_vec();
            [vec![row.words("choice").to_owned()], figures].concat()
        }),
    );
    for (file, table) in [
        ("shelf-interaction-a.csv", "shelf/interaction-a"),
        ("shelf-interaction-b.csv", "shelf/interaction-b"),
    ] {
        let cells = &references.table(table).rows;
        same(
            file,
            cells.iter().map(|row| {
                let none = row.figures["needs_no_time_or_temperature"].as_bool().unwrap();
                let result = if none { "none" } else { "assess" };
                let of = |name: &str| plain(row.words(name));
                vec![of("aw"), of("ph"), result.to_owned()]
            }),
        );
    }
}

/// The first cells of every line.
fn columns(file: &str, of: &[usize]) -> Vec<Vec<String>> {
    let cells = |line: Vec<String>| of.iter().map(|&n| line[n].clone()).collect();
    lines(file).into_iter().map(cells).collect()
}

fn keeping(references: &References) {
    let ham = &references.table("store/ham-chart").rows;
    same(
        "store-fsis-ham.csv",
        ham.iter().map(|row| {
            ["item", "refrigerate", "freeze"].map(|name| plain(row.words(name))).to_vec()
        }),
    );
    let freezer = &references.table("store/freezer-chart").rows;
    same(
        "store-fsis-freezer.csv",
        freezer.iter().map(|row| {
            let (low, high) = row.pair("freeze_days").unwrap();
            vec![plain(row.words("item")), (low / 30.0).to_string(), (high / 30.0).to_string()]
        }),
    );
    // Typed as one line a sausage; the reference file has a row unopened and one opened.
    let sausage = &references.table("store/sausage-chart").rows;
    for (rows, second) in sausage.chunks(2).zip(lines("store-fsis-sausage.csv")) {
        assert_eq!(plain(rows[0].words("item")), second[0]);
        if second[1].is_empty() {
            assert_eq!(rows[0].words("refrigerate"), second[2]);
        }
        assert_eq!(rows[1].words("refrigerate"), second[3]);
        assert_eq!(rows[1].words("freeze"), second[4]);
    }
    let equal = &references.table("store/equivalent-time").rows;
    same(
        "store-equivalent-time.csv",
        equal.iter().map(|row| vec![optional(row, "temp_c"), optional(row, "minutes")]),
    );
    let lives = &references.table("store/practical-life").rows;
    let second = columns("store-practical-life.csv", &[0, 2, 3, 7]);
    assert_eq!(lives.len(), second.len());
    for (row, second) in lives.iter().zip(second) {
        let months = row.maybe_number("life_months").or(row.maybe_number("life_months_min"));
        let first = [
            plain(row.words("item")),
            optional(row, "temp_c"),
            months.unwrap().to_string(),
            plain(row.words("criterion")),
        ];
        assert_eq!(first.to_vec(), second);
    }
    let packs = &references.table("shelf/packs-elsewhere").rows;
    for (row, second) in packs.iter().zip(columns("store-vacuum.csv", &[0, 1, 2])) {
        let days = row.maybe_number("max_days").or(row.maybe_number("max_d"));
        let days = days.map_or(String::new(), |days| days.to_string());
        assert_eq!(vec![plain(row.words("name")), row.words("region").to_owned(), days], second);
    }
    let turkey = &references.table("store/thaw-turkey").rows;
    let figures: Vec<_> = columns("store-thaw.csv", &[1, 2]);
    for row in turkey {
        for (name, unit) in [
            ("refrigerator_min_d", "d"),
            ("refrigerator_max_d", "d"),
            ("cold_water_min_h", "h"),
            ("cold_water_max_h", "h"),
        ] {
            let line = vec![optional(row, name), unit.to_owned()];
            assert!(figures.contains(&line), "{}: {line:?}", row.key);
        }
    }
    let salt = &references.table("smoke/water-phase-salt").rows;
    let second = columns("smoke-water-phase-salt.csv", &[0, 1, 2, 3]);
    for row in salt.iter().filter(|row| row.has("authority")) {
        let who = if row.words("authority") == "us-maine" { "Maine" } else { "FDA 2020" };
        let pack = if row.figures["airless"].as_bool().unwrap() { "rop" } else { "air" };
        let nitrite = if row.has("with_nitrite_ppm_min") { "yes" } else { "no" };
        let line = [who, pack, nitrite, &optional(row, "wps_percent_min")].map(str::to_owned);
        assert!(second.contains(&line.to_vec()), "{line:?}");
    }
    let hot = &references.table("smoke/hot-fish").rows;
    let second = columns("smoke-hot-endpoint.csv", &[1, 3]);
    for row in hot.iter().filter(|row| row.has("internal_f_min")) {
        let line = vec![optional(row, "internal_f_min"), optional(row, "hold_min")];
        assert!(second.contains(&line), "{line:?}");
    }
    let pah = &references.table("smoke/pah").rows;
    same(
        "smoke-pah.csv",
        pah.iter().map(|row| {
            vec![
                plain(row.words("food")),
                optional(row, "bap_ug_kg"),
                optional(row, "pah4_ug_kg"),
                row.maybe_words("valid_from").unwrap_or_default().to_owned(),
            ]
        }),
    );
    let brining = &references.table("smoke/brining").rows;
    for (row, second) in brining.iter().zip(columns("smoke-brining.csv", &[1])) {
        let f = row.maybe_number("temp_f_max").or(row.maybe_number("limit_f"));
        assert_eq!(vec![f.map_or(String::new(), |f| f.to_string())], second, "{}", row.key);
    }
}
