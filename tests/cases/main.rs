//! Every check case of `references/cases` against this crate, and the case files
//! against their schema. `cargo test --test cases -- --nocapture` prints how many cases
//! there are of each mark.

mod case;
mod chill;
mod cook;
mod cure;
mod elsewhere;
mod fat;
mod lethality;
mod salt;
mod smoke;
mod store;
mod units;

use std::collections::{BTreeMap, BTreeSet};

use case::{Answer, Case, cases_of};
use greenweight_references::{References, read, root};
use rstest::rstest;
use serde_json::{Value, json};

/// The rooms that have a case file.
const ROOMS: [&str; 10] = [
    "units",
    "cure",
    "cure-elsewhere",
    "salt",
    "fat",
    "cook",
    "lethality",
    "chill",
    "store",
    "smoke",
];

fn run(case: &Case) -> Answer {
    match case.operation.as_str() {
        "mass" => units::mass(case),
        "same_mass" => units::same_mass(case),
        "volume" => units::volume(case),
        "two_volumes" => units::two_volumes(case),
        "density" => units::density(case),
        "celsius" => units::celsius(case),
        "tolerance" => units::tolerance(case),
        "judge_reading" => units::judge_reading(case),
        "ingoing" => cure::ingoing_level(case),
        "largest_premix" => cure::largest(case),
        "pumped" => cure::pumped_level(case),
        "largest_in_pickle" => cure::largest_by_pump(case),
        "pump" => cure::pump(case),
        "pump_from_weights" => cure::pump_from_weights(case),
        "immersion" => cure::immersion(case),
        "largest_at_equilibrium" => cure::largest_in_tub(case),
        "weighed" => cure::weighed(case),
        "sodium_as_potassium_nitrite" => cure::sodium_as_potassium(case),
        "ion_as_sodium_nitrite" => cure::ion_as_sodium(case),
        "sodium_nitrite_as_ion" => cure::sodium_as_ion(case),
        "bacon" => cure::bacon(case),
        "accepted_band" => cure::accepted_band(case),
        "ion_as_sodium_nitrate" => elsewhere::ion_as_sodium_nitrate(case),
        "sodium_nitrate_as_ion" => elsewhere::sodium_nitrate_as_ion(case),
        "concentration" => units::concentration(case),
        "two_printed_figures" => cure::two_printed_figures(case),
        "bacon_weight" => cure::bacon_weight(case),
        "fda_analysis" => elsewhere::fda_analysis(case),
        "home_cure" => elsewhere::home_cure(case),
        "stricter" => elsewhere::stricter(case),
        "cut" => elsewhere::cut(case),
        "premix_for_ion" => elsewhere::premix_for_ion(case),
        "mixed_up" => elsewhere::mixed_up(case),
        "lookup" => elsewhere::lookup(case),
        "product_level" => elsewhere::product_level(case),
        "ratio" => elsewhere::ratio(case),
        "analysed" => elsewhere::analysed(case),
        "brine" => salt::brine(case),
        "salt_for_brine" => salt::salt_for_brine(case),
        "salt_for_saturated" => salt::salt_for_saturated(case),
        "salt_in_brine" => salt::salt_in_brine(case),
        "brine_of" => salt::brine_of(case),
        "diluted" => salt::diluted(case),
        "strengthen" => salt::adjusted(case),
        "weaken" => salt::adjusted(case),
        "saturated" => salt::saturated(case),
        "density_at" => salt::density_at(case),
        "freezing" => salt::freezing(case),
        "water_phase" => salt::water_phase(case),
        "salt_for_water_phase" => salt::salt_for_water_phase(case),
        "water_phase_dried" => salt::water_phase_dried(case),
        "dried_sausage" => salt::dried_sausage(case),
        "salt_after_loss" => salt::salt_after_loss(case),
        "activity" => salt::activity(case),
        "osmotic" => salt::osmotic(case),
        "saturated_humidity" => salt::humidity(case),
        "saturated_activity" => salt::saturated_salt(case),
        "tub" => salt::tub(case),
        "salt_on_green" => salt::salt_on_meat(case),
        "salt_of_mix" => salt::salt_on_meat(case),
        "in_pumped" => salt::pumped(case),
        "square" => fat::square(case),
        "square_batch" => fat::square_batch(case),
        "fat_of_blend" => fat::fat_of_blend(case),
        "fat_to_add" => fat::fat_to_add(case),
        "lean_and_fat" => fat::lean_and_fat(case),
        "blend_of_rows" => fat::blend_of_rows(case),
        "cheapest_sausage" => fat::cheapest_sausage(case),
        "cheapest_loaf" => fat::cheapest_loaf(case),
        "added_water" => fat::water_added(case),
        "frankfurter" => fat::frankfurter(case),
        "named_fat" => fat::named_fat(case),
        "weight_gain" => fat::weight_gain(case),
        "moisture_protein" => fat::ratio(case),
        "most_water" => fat::water_at_most(case),
        "protein_fat_free" => fat::pff(case),
        "cooked" => fat::cooked(case),
        "change_in_cooking" => fat::change(case),
        "measure" => fat::measure(case),
        "two_measures" => fat::two_measures(case),
        "spooned" => fat::spooned(case),
        "label" => fat::label(case),
        "regression" => fat::regression(case),
        "proximates" => fat::proximates(case),
        "cooked_fat" => fat::cooked_fat(case),
        "salt_share" => fat::salt_share(case),
        "dwell" => cook::dwell(case),
        "cook" => cook::cook(case),
        "hold" => lethality::hold(case),
        "poultry" => lethality::poultry(case),
        "poultry_span" => lethality::poultry_span(case),
        "held" => lethality::held(case),
        "reheat" => lethality::reheat(case),
        "humid_time" => lethality::humid_time(case),
        "humidity_options" => lethality::humidity_options(case),
        "large_piece" => lethality::large_piece(case),
        "come_up" => lethality::come_up(case),
        "come_up_again" => lethality::come_up_again(case),
        "required" => lethality::required(case),
        "equivalent" => lethality::equivalent(case),
        "fitted" => lethality::fitted(case),
        "fitted_table" => lethality::fitted_table(case),
        "equation" => lethality::equation(case),
        "integrated" => lethality::integrated(case),
        "one_step" => lethality::one_step(case),
        "logs_of_hold" => lethality::logs_of_hold(case),
        "freezing_against_parasites" => lethality::freezing(case),
        "listeria_rate" => chill::listeria_rate(case),
        "grown" => chill::grown(case),
        "cardinal" => chill::cardinal(case),
        "square_root" => chill::square_root(case),
        "square_root_to_maximum" => chill::square_root_to_maximum(case),
        "degree_hours" => chill::degree_hours(case),
        "longest_fermentation" => chill::longest_fermentation(case),
        "cooled" => chill::cooled(case),
        "slow_cure" => chill::slow_cure(case),
        "warm" => chill::warm(case),
        "ready_to_eat" => chill::ready_to_eat(case),
        "exposure" => chill::exposure(case),
        "date_mark" => chill::date_mark(case),
        "shelf_stable" => chill::shelf_stable(case),
        "cook_chill" => chill::cook_chill(case),
        "model_rate" => chill::model_rate(case),
        "model_stage" => chill::model_stage(case),
        "plank" => store::plank(case),
        "plank_enthalpy" => store::enthalpy(case),
        "plank_ratio" => store::plank_ratio(case),
        "freezing_time" => store::freezing_time(case),
        "freezing_regression" => store::freezing_regression(case),
        "equivalent_time" => store::equivalent(case),
        "thaw_turkey" => store::turkey(case),
        "thaw_time" => store::thaws(case),
        "refreeze" => store::refreeze(case),
        "opened" => store::opened(case),
        "life_between" => store::between(case),
        "q10" => store::of_ten_kelvin(case),
        "airless" => store::airless(case),
        "smoked_fish" => smoke::smoked_fish(case),
        "smoked_chub" => smoke::smoked_chub(case),
        "interaction" => chill::interaction(case),
        "barrier" => chill::barrier(case),
        "chart" => store::chart(case),
        "keep" => store::keep(case),
        "cold_smoke" => smoke::cold_smoke(case),
        other => panic!("{}: no operation {other}", case.key),
    }
}

#[rstest]
#[case::units("units")]
#[case::cure("cure")]
#[case::cure_elsewhere("cure-elsewhere")]
#[case::salt("salt")]
#[case::fat("fat")]
#[case::cook("cook")]
#[case::lethality("lethality")]
#[case::chill("chill")]
#[case::store("store")]
#[case::smoke("smoke")]
fn every_case_gives_what_it_says(#[case] room: &str) {
    let mut wrong = Vec::new();
    for case in cases_of(room) {
        let answer = run(&case);
        for (name, expected) in &case.expect {
            let got = answer.get(name.as_str());
            let got = got.unwrap_or_else(|| panic!("{}: nothing gives {name}", case.key));
            let same = match (got.as_f64(), expected.as_f64()) {
                (Some(a), Some(b)) if case.tolerance > 0.0 => (a - b).abs() <= case.tolerance,
                (Some(a), Some(b)) => a.to_bits() == b.to_bits(),
                _ => got == expected,
            };
            if !same {
                let key = &case.key;
                wrong.push(format!("{key}: {name} is {got}, expected {expected}. {}", case.claim));
            }
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn every_case_file_is_run() {
    let folder = root().join("references/cases");
    let files: BTreeSet<_> = std::fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().path())
        .filter(|path| path.extension().is_some_and(|ending| ending == "toml"))
        .map(|path| path.file_stem().unwrap().to_str().unwrap().to_owned())
        .collect();
    assert_eq!(files, ROOMS.iter().map(|room| (*room).to_owned()).collect());
}

#[test]
fn every_source_of_a_case_is_in_the_list_and_keys_are_unlike() {
    let references = References::read();
    for room in ROOMS {
        let mut keys = BTreeSet::new();
        for case in cases_of(room) {
            references.source(&case.source);
            assert!(keys.insert(case.key.clone()), "{room}: {} stands twice", case.key);
        }
    }
}

#[test]
fn a_case_of_trade_practice_was_not_read_in_a_document() {
    for case in ROOMS.iter().flat_map(|room| cases_of(room)) {
        if case.source == "trade-practice" {
            assert_eq!(case.seen, "memory", "{}", case.key);
        }
    }
}

#[test]
fn the_counts_by_mark_are_printed_and_every_room_has_cases() {
    let mut all = BTreeMap::new();
    for room in ROOMS {
        let mut counts = BTreeMap::new();
        for case in cases_of(room) {
            *counts.entry(case.seen.clone()).or_insert(0) += 1;
            *all.entry(case.seen).or_insert(0) += 1;
        }
        assert!(!counts.is_empty(), "{room} has no case");
        println!("{room}: {counts:?}");
    }
    println!("all: {all:?}, {} cases", all.values().sum::<i32>());
}

#[rstest]
#[case::units("units")]
#[case::cure("cure")]
#[case::cure_elsewhere("cure-elsewhere")]
#[case::salt("salt")]
#[case::fat("fat")]
#[case::cook("cook")]
#[case::lethality("lethality")]
#[case::chill("chill")]
#[case::store("store")]
#[case::smoke("smoke")]
fn every_case_file_is_valid_by_the_schema_and_a_case_without_a_source_is_not(#[case] room: &str) {
    let folder = root().join("references/cases");
    let schema: Value = serde_json::from_str(&read(&folder.join("cases.schema.json"))).unwrap();
    let validator = jsonschema::validator_for(&schema).unwrap();
    let table: toml::Table = read(&folder.join(format!("{room}.toml"))).parse().unwrap();
    let mut cases = serde_json::to_value(table).unwrap();
    let errors: Vec<_> =
        validator.iter_errors(&cases).map(|e| format!("{e} at {}", e.instance_path())).collect();
    assert!(errors.is_empty(), "{errors:#?}");

    let valid = cases.clone();
    cases["case"][0].as_object_mut().unwrap().remove("source");
    assert!(!validator.is_valid(&cases));
    for (field, wrong) in [
        ("seen", json!("somewhere")),
        ("operation", json!("guess")),
        ("tolerance", json!(-1)),
        ("claim", json!("")),
    ] {
        let mut cases = valid.clone();
        cases["case"][0][field] = wrong;
        assert!(!validator.is_valid(&cases), "{field}");
    }
}
