//! The two JSON Schemas against what they describe.

use jsonschema::Validator;
use serde_json::{Value, json};

use super::{check, root};

fn validator(name: &str) -> Validator {
    let path = root().join("references/schema").join(name);
    let schema: Value = serde_json::from_str(&std::fs::read_to_string(path).unwrap()).unwrap();
    jsonschema::validator_for(&schema).unwrap()
}

fn errors(validator: &Validator, value: &Value) -> Vec<String> {
    validator.iter_errors(value).map(|e| format!("{e} at {}", e.instance_path())).collect()
}

fn as_json(value: &toml::Value) -> Value {
    match value {
        toml::Value::String(text) => json!(text),
        toml::Value::Integer(n) => json!(n),
        toml::Value::Float(n) => json!(n),
        toml::Value::Boolean(b) => json!(b),
        toml::Value::Datetime(d) => json!(d.to_string()),
        toml::Value::Array(items) => items.iter().map(as_json).collect(),
        toml::Value::Table(t) => {
            Value::Object(t.iter().map(|(k, v)| (k.clone(), as_json(v))).collect())
        }
    }
}

#[test]
fn every_report_is_valid_by_its_schema() {
    let validator = validator("report.schema.json");
    let output = check(&["examples/recipes", "Cargo.toml", "--format", "json"]);
    let report: Value = serde_json::from_slice(&output.stdout).unwrap();
    assert!(report["files"].as_array().unwrap().len() > 8);
    assert_eq!(report["unread"][0]["path"], "Cargo.toml");
    assert_eq!(errors(&validator, &report), [""; 0]);
}

#[test]
fn the_report_schema_refuses_a_fourth_verdict() {
    let validator = validator("report.schema.json");
    let output = check(&["examples/recipes", "--format", "json"]);
    let mut report: Value = serde_json::from_slice(&output.stdout).unwrap();
    report["files"][0]["findings"][0]["verdict"] = json!("fine");
    assert!(!validator.is_valid(&report));
}

#[test]
fn every_example_is_valid_by_the_recipe_schema_and_a_wrong_key_is_not() {
    let validator = validator("recipe.schema.json");
    for entry in std::fs::read_dir(root().join("examples/recipes")).unwrap() {
        let path = entry.unwrap().path();
        if path.extension().is_none_or(|ending| ending != "toml") {
            continue;
        }
        let table: toml::Table = std::fs::read_to_string(&path).unwrap().parse().unwrap();
        let mut document = as_json(&toml::Value::Table(table));
        assert_eq!(errors(&validator, &document), [""; 0], "{}", path.display());
        document["component"][0]["fod"] = json!("ground-meat");
        assert!(!validator.is_valid(&document));
    }
}

#[test]
fn the_recipe_schema_and_the_reader_know_the_same_words() {
    use greenweight::{
        authority::Authority, cook::Moisture, cure::Method, food::Food, recipe, trace::TimeColumn,
    };
    let path = root().join("references/schema/recipe.schema.json");
    let schema: Value = serde_json::from_str(&std::fs::read_to_string(path).unwrap()).unwrap();
    let words = |pointer: &str| -> Vec<String> {
        let list = schema.pointer(pointer).unwrap_or_else(|| panic!("{pointer}"));
        serde_json::from_value(list.clone()).unwrap()
    };
    let of = |names: &[&str]| names.iter().map(|name| (*name).to_owned()).collect::<Vec<_>>();
    let defs = "/$defs";
    assert_eq!(words("/properties/held_to/items/enum"), of(&Authority::ALL.map(Authority::key)));
    assert_eq!(
        words(&format!("{defs}/component/properties/food/enum")),
        of(&Food::ALL.map(Food::key))
    );
    assert_eq!(
        words(&format!("{defs}/component/properties/cure/properties/method/enum")),
        of(&Method::ALL.map(Method::key))
    );
    assert_eq!(
        words(&format!("{defs}/ingredient/properties/kind/enum")),
        of(&recipe::Kind::ALL.map(recipe::Kind::key))
    );
    assert_eq!(
        words(&format!("{defs}/ingredient/properties/from/enum")),
        of(&recipe::Animal::ALL.map(recipe::Animal::key))
    );
    assert_eq!(
        words(&format!("{defs}/step/properties/do/enum")),
        of(&recipe::StepKind::ALL.map(recipe::StepKind::key))
    );
    assert_eq!(
        words(&format!("{defs}/step/properties/moisture/enum")),
        of(&Moisture::ALL.map(Moisture::key))
    );
    assert_eq!(
        words(&format!("{defs}/component/properties/recorded_in/properties/written/enum")),
        of(&TimeColumn::ALL.map(TimeColumn::key))
    );
}

#[test]
fn the_recipe_schema_refuses_a_key_on_a_step_that_the_reader_refuses_there() {
    let validator = validator("recipe.schema.json");
    let document = |step: Value| json!({ "title": "x", "profile": "us/home", "component": [{ "name": "a", "food": "fish", "step": [step] }] });
    assert_eq!(errors(&validator, &document(json!({ "do": "pack", "vacuum": true }))), [""; 0]);
    for (key, value) in [("vacuum", json!(true)), ("how", json!("room")), ("to", json!("150 °F"))]
    {
        assert!(
            !validator.is_valid(&document(json!({ "do": "refrigerate", key: value }))),
            "{key}"
        );
    }
    let nobody = json!({ "title": "x", "component": [{ "name": "a", "food": "fish" }] });
    assert!(!validator.is_valid(&nobody), "nobody's rules are assumed");
}
