//! How many rows each document's table has, so that none is lost on the way. The numbers were
//! counted from the documents' figures as they were gathered, not from these files.

use greenweight_references::References;

const ROWS: [(&str, usize); 201] = [
    // 9 CFR 424.21(c): nitrite and nitrate for pickle, dry cure and chopped meat.
    ("cure/us-ingoing", 6),
    // The same: ten rows of accelerators. That of citric acid and citrates stands apart, and that
    // of pyrophosphate is two, one on the meat and one on the finished product.
    ("cure/us-accelerators", 10),
    ("cure/us-citric-replacement", 1),
    ("cure/us-phosphates", 5),
    // 9 CFR 424.22(b): five formulas, each for the sodium and the potassium salt.
    ("cure/us-bacon", 10),
    ("cure/us-bacon-nitrate", 1),
    ("cure/us-bacon-tolerance", 1),
    ("cure/us-bacon-skin", 1),
    ("cure/us-bacon-weight", 1),
    ("cure/us-bacon-test", 1),
    ("cure/us-residual", 1),
    ("cure/us-infant", 2),
    // A least level, and two remarks beside it.
    ("cure/us-minimum", 1),
    ("cure/us-minimum-remarks", 2),
    // 21 CFR 172.170, .175, .177 and the guide to fish hazards: five products, of which two have
    // nitrate too, and the process of one.
    ("cure/us-fda", 7),
    ("cure/us-fda-action", 2),
    ("cure/eu", 88),
    ("cure/eu-footnotes", 17),
    ("cure/great-britain", 14),
    // Eight national rows outside the Union's own, four of them Danish.
    ("cure/denmark", 4),
    ("cure/other-national", 4),
    ("cure/canada", 5),
    ("cure/codex", 8),
    ("cure/australia-new-zealand", 6),
    ("cure/japan", 7),
    ("cure/phosphates-elsewhere", 8),
    ("cure/ascorbates-elsewhere", 6),
    ("cure/rounded-pairs", 3),
    ("cure/conversion-factors", 15),
    // Ten rules of the Union, two national ones, one of Codex, two of the United States.
    ("cure/conditions", 15),
    // Four strengths of the United States and five of other countries, one of them the same.
    ("cure/premix-strength", 8),
    ("salt/brine-uk", 10),
    ("salt/brine-uk-leaflet", 10),
    ("salt/brine-us", 12),
    ("salt/solubility", 20),
    ("salt/density", 14),
    ("salt/specific-volume", 63),
    ("salt/freezing-point", 20),
    ("salt/pitzer", 4),
    ("salt/water-activity", 52),
    ("salt/water-activity-by-temperature", 48),
    ("salt/salt-for-water-activity", 15),
    ("salt/activity-formulas", 6),
    ("salt/saturated-humidity", 27),
    ("salt/saturated-activity", 18),
    ("salt/saturated-fixed", 12),
    ("salt/norrish", 6),
    ("salt/foods", 15),
    ("salt/food-groups", 4),
    ("salt/salometer", 10),
    ("fat/composition", 255),
    ("fat/measures", 244),
    ("fat/cooking-yield", 66),
    ("fat/regression", 6),
    ("fat/derived-yield", 32),
    // Eight densities of salt and two facts about its sodium.
    ("fat/salt-density", 10),
    ("fat/fat-limits", 10),
    // Fifteen rows of the federal text, and two of pork sausage read in older parts of it; the
    // other seventeen older readings stand apart.
    ("fat/product-limits", 17),
    ("fat/product-limits-older", 17),
    // Six, of which that of bacon stands with its cure.
    ("fat/weight-gain", 5),
    ("fat/protein-fat-free", 16),
    ("fat/country-ham", 12),
    // Three of the federal text, five from memory, nine and two reported elsewhere.
    ("fat/moisture-protein", 19),
    ("fat/binders", 20),
    ("fat/antioxidants", 21),
    ("fat/ingredients", 20),
    ("fat/lean-points", 11),
    // Twelve, of which the usual salt stands with the salt.
    ("fat/grinding", 11),
    ("fat/uncertainty", 22),
    // The cook's room: 31 rows each for 6.5 and 7 log, and for 5; thirty of each bird.
    ("cook/us-consumer", 11),
    ("cook/fsis-meat-dwell", 31),
    ("cook/fsis-meat-5-log", 31),
    ("cook/fsis-poultry-dwell", 60),
    ("cook/fsis-humidity", 4),
    // Thirteen, of which the single endpoint of poultry stands apart.
    ("cook/fsis-parameters", 12),
    ("cook/fsis-poultry-single", 1),
    ("cook/performance-standards", 5),
    ("cook/patties", 7),
    ("cook/patties-rules", 3),
    ("cook/food-code", 5),
    ("cook/food-code-ground", 4),
    ("cook/food-code-roasts", 17),
    ("cook/food-code-roasts-older", 9),
    ("cook/food-code-ovens", 3),
    ("cook/food-code-other", 15),
    ("cook/food-code-2022", 3),
    ("cook/food-code-2022-ground", 4),
    ("cook/food-code-2022-roasts", 17),
    ("cook/food-code-2022-ovens", 3),
    ("cook/food-code-2022-other", 14),
    ("cook/new-york-roasts", 29),
    // Thirty-six endpoints of other countries in four tables.
    ("cook/canada", 23),
    ("cook/united-kingdom", 5),
    ("cook/united-kingdom-burgers", 3),
    ("cook/elsewhere", 5),
    ("cook/canada-targets", 2),
    ("cook/fish-freezing", 3),
    ("cook/fish-freezing-exempt", 5),
    ("cook/fish-freezing-records", 3),
    ("cook/trichina-heat", 13),
    ("cook/trichina-rules", 3),
    ("cook/trichina-freezing", 3),
    ("cook/trichina-freezing-pennsylvania", 3),
    ("cook/trichina-freezing-core", 8),
    ("cook/trichina-freezing-europe", 16),
    ("cook/trichina-measured", 9),
    ("cook/trichina-sausage-drying", 11),
    ("cook/trichina-drying-reduction", 5),
    ("cook/trichina-low-salt", 14),
    ("cook/trichina-ham-drying", 12),
    ("cook/trichina-curing", 14),
    ("cook/d-and-z", 57),
    ("cook/fitted-lines", 33),
    ("cook/envelopes", 3),
    ("cook/fda-listeria", 23),
    ("cook/fda-botulinum", 16),
    // Eight pressures and seven humidity ratios.
    ("cook/saturated-air", 15),
    // After the fire. Two rows of the Food Code and two of Australia stand apart as clocks; growth
    // models are nine and eleven, equations seven and five.
    ("chill/animal-health", 10),
    ("chill/australia", 2),
    ("chill/canada", 2),
    ("chill/cooling-us", 18),
    ("chill/date-mark-exempt", 7),
    ("chill/date-mark-exempt-older", 7),
    ("chill/degree-hours", 6),
    ("chill/degree-hours-constant", 19),
    ("chill/degree-hours-notes", 1),
    ("chill/edition-status", 2),
    ("chill/exposure", 48),
    ("chill/exposure-summary", 9),
    // Thirty rules of 2022, of which two stand as clocks, two as time out of temperature, one as cold
    // holding, two with thawing and thirteen with packs.
    ("chill/food-code-2022", 10),
    ("chill/food-code-cooling", 2),
    ("chill/food-code-states", 35),
    ("chill/growth-equations", 12),
    ("chill/growth-limits", 15),
    ("chill/growth-limits-1992", 17),
    ("chill/growth-limits-other", 4),
    ("chill/growth-models", 20),
    ("chill/growth-observed", 6),
    // Ten rates on sausage and two of perfringens; twenty-three sightings.
    ("chill/growth-measured", 12),
    ("chill/growth-seen", 23),
    ("chill/growth-temperatures", 10),
    ("chill/growth-uncertainty", 6),
    ("chill/inactivation", 2),
    ("chill/inactivation-regressions", 9),
    // Nine, of which the English ceiling of chilled food stands with cold holding.
    ("chill/national", 8),
    // Twenty-six coolings with growth, four roasts, six cooling times and one slow smoke.
    ("chill/measured-cooling", 37),
    ("chill/post-lethality", 19),
    ("chill/slow-cool-conditions", 5),
    ("chill/slow-heating", 2),
    ("chill/stabilization", 10),
    ("chill/united-kingdom", 10),
    // Two of the Food Code, three of other countries, of which one is two: by the air. Two British
    // defences, which stand among the national rows too.
    ("chill/warm-time", 8),
    ("shelf/botulinum-barriers", 3),
    ("shelf/fermented", 20),
    ("shelf/interaction-a", 9),
    ("shelf/interaction-b", 16),
    ("shelf/packaging-barriers", 4),
    ("shelf/packs-elsewhere", 18),
    ("shelf/packs-food-code", 13),
    ("shelf/pathogens", 2),
    ("shelf/sausage-profiles", 5),
    // Eight limits, and Canada's.
    ("shelf/shelf-stable", 9),
    ("shelf/classes", 8),
    ("shelf/pathogens-elsewhere", 13),
    // Keeping. Forty-six rows now and twelve older ones; five rows of sausage, unopened and opened.
    ("store/chart-editions", 12),
    ("store/ham-chart", 20),
    ("store/sausage-chart", 10),
    ("store/freezer-chart", 16),
    ("store/consumer-data", 269),
    ("store/consumer-leaflet", 2),
    ("store/practical-life", 94),
    ("store/q10", 9),
    ("store/chilled-reported", 20),
    ("store/vacuum-bacon", 9),
    ("store/thaw", 19),
    ("store/thaw-turkey", 4),
    ("store/thaw-food-code", 2),
    ("store/limits", 11),
    ("store/equivalent-time", 21),
    ("store/freezing-shapes", 3),
    ("store/freezing-regression", 3),
    ("store/freezing-simple", 1),
    ("store/freezing-geometry", 9),
    ("store/cooling-geometry", 2),
    ("store/garlic-in-oil", 5),
    ("store/garlic-acid", 1),
    ("store/sauces", 12),
    // Nine ceilings: two are of strips, and one from memory was read later in the guide itself.
    ("smoke/cold-ceilings", 7),
    ("smoke/strips", 2),
    ("smoke/chub", 1),
    ("smoke/definitions", 15),
    // Eight endpoints, of which that of chub has its own process, and one of the guide.
    ("smoke/hot-fish", 8),
    ("smoke/water-phase-salt", 23),
    ("smoke/brining", 11),
    ("smoke/storage", 14),
    ("smoke/variance", 5),
    ("smoke/pah", 5),
    ("smoke/wood", 4),
    ("smoke/challenge", 5),
    ("smoke/schedules", 4),
    ("smoke/surface", 3),
];

#[test]
fn every_table_has_as_many_rows_as_its_documents_gave() {
    let references = References::read();
    for (table, rows) in ROWS {
        assert_eq!(references.table(table).rows.len(), rows, "{table}");
    }
}

#[test]
fn every_table_of_these_rooms_is_counted_or_is_our_own() {
    let own = [
        "cure/molar-mass",
        "cure/nitrate-practice",
        "salt/water",
        "salt/molar-mass",
        "salt/usual",
        "fat/label-error",
        "fat/spoon-fill",
        "fat/added-water",
        "cook/humid-air",
        // One condition that stands as a remark beside its row.
        "chill/cured-conditions",
        // Counted by the second keyings of the chart.
        "store/cold-food",
        "store/home-temperatures",
        // Rows of five other tables side by side.
        "store/cold-holding",
    ];
    let rooms = ["cure", "salt", "fat", "cook", "chill", "shelf", "store", "smoke"];
    for table in References::read().tables.iter().filter(|table| rooms.contains(&table.room())) {
        let known = own.contains(&table.path.as_str());
        let counted = ROWS.iter().any(|(path, _)| *path == table.path);
        assert!(known || counted, "{} is not counted", table.path);
    }
}
