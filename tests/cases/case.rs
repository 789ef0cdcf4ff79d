//! A case, and what an operation answers.

use std::collections::BTreeMap;

use greenweight::finding::{Finding, Verdict};
use greenweight::units::{Mass, Reading, Scale, grams, kilograms, ounces, pounds};
use greenweight_references::{read, root};
use serde_json::{Map, Value, json};

pub type Answer = BTreeMap<&'static str, Value>;

pub struct Case {
    pub key: String,
    pub claim: String,
    pub operation: String,
    pub inputs: Map<String, Value>,
    pub expect: Map<String, Value>,
    pub tolerance: f64,
    pub source: String,
    pub seen: String,
}

/// Every case of a room.
pub fn cases_of(room: &str) -> Vec<Case> {
    let text = read(&root().join(format!("references/cases/{room}.toml")));
    let table: toml::Table = text.parse().unwrap();
    let file = serde_json::to_value(table).unwrap();
    file["case"].as_array().unwrap().iter().map(Case::from).collect()
}

impl From<&Value> for Case {
    fn from(case: &Value) -> Self {
        let word = |name: &str| case[name].as_str().unwrap().to_owned();
        let values = |name: &str| case[name].as_object().unwrap().clone();
        Self {
            key: word("key"),
            claim: word("claim"),
            operation: word("operation"),
            inputs: values("inputs"),
            expect: values("expect"),
            tolerance: case["tolerance"].as_f64().unwrap(),
            source: word("source"),
            seen: word("seen"),
        }
    }
}

impl Case {
    pub fn maybe(&self, name: &str) -> Option<f64> {
        self.inputs.get(name).map(|value| value.as_f64().unwrap())
    }

    pub fn number(&self, name: &str) -> f64 {
        self.maybe(name).unwrap_or_else(|| panic!("{}: no {name}", self.key))
    }

    pub fn maybe_word(&self, name: &str) -> Option<&str> {
        self.inputs.get(name).map(|value| value.as_str().unwrap())
    }

    pub fn word(&self, name: &str) -> &str {
        self.maybe_word(name).unwrap_or_else(|| panic!("{}: no {name}", self.key))
    }

    pub fn flag(&self, name: &str) -> Option<bool> {
        self.inputs.get(name).map(|value| value.as_bool().unwrap())
    }

    /// The mass `name`, in the unit at the end of its name.
    pub fn mass(&self, name: &str) -> Mass {
        let in_unit = |unit: &str| self.maybe(&format!("{name}_{unit}"));
        let kg = in_unit("kg").map(kilograms);
        let masses =
            [kg, in_unit("g").map(grams), in_unit("oz").map(ounces), in_unit("lb").map(pounds)];
        masses.into_iter().flatten().next().unwrap_or_else(|| panic!("{}: no {name}", self.key))
    }

    /// The temperature `name`, on a scale.
    pub fn reading_at(&self, name: &str, scale: Scale) -> Reading {
        Reading::new(self.number(name), scale).unwrap()
    }

    /// The temperature `name`, on the scale at the end of its name.
    pub fn reading(&self, name: &str) -> Option<Reading> {
        let on = |ending: &str, scale| {
            Some(Reading::new(self.maybe(&format!("{name}_{ending}"))?, scale).unwrap())
        };
        on("f", Scale::Fahrenheit).or_else(|| on("c", Scale::Celsius))
    }
}

/// The findings of a check, as an answer: the worst verdict of all.
pub fn answer_of(findings: &[Finding]) -> Answer {
    let worst = findings.iter().map(|finding| finding.verdict).max().expect("a finding");
    Answer::from([
        ("verdict", json!(worst.words())),
        ("meets", json!(worst == Verdict::Meets)),
        ("past_advice", json!(findings.iter().any(|finding| finding.past_advice))),
    ])
}
