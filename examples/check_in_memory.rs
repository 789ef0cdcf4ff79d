//! Invented: a recipe built by types, without a document, and checked. Run with
//! `cargo run --features recipe --example check_in_memory`.

use greenweight::authority::Authority;
use greenweight::cure::{Level, Method, Premix};
use greenweight::finding::{Place, Verdict};
use greenweight::food::Food;
use greenweight::recipe::{Animal, Component, CurePlan, Ingredient, Instruments, Kind, Recipe};
use greenweight::units::{Amount, Mass, grams, kilograms};

fn ingredient(name: &'static str, kind: Kind, mass: Mass) -> Ingredient<'static> {
    Ingredient {
        name: name.into(),
        kind,
        amount: Some(Amount::Weighed(mass)),
        place: Place::default(),
        scale: None,
        from: None,
        strength: None,
        fat: None,
        in_pickle: false,
    }
}

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let premix = Premix::new().with_sodium_nitrite(Level::percent(6.25)?)?;
    let sausage = Component {
        name: "stall sausage".into(),
        food: Food::GroundMeat,
        raw: true,
        cured_as: Vec::new(),
        ingredients: vec![
            Ingredient {
                from: Some(Animal::Pork),
                ..ingredient("shoulder", Kind::Meat, kilograms(3.0))
            },
            Ingredient {
                strength: Some(premix),
                ..ingredient("curing salt", Kind::CuringPremix, grams(9.0))
            },
        ],
        cure: Some(CurePlan {
            method: Some(Method::Ground),
            taken_up: None,
            equilibrium: None,
            sugar_percent: None,
            culture: None,
            place: Place::default(),
        }),
        steps: Vec::new(),
        record: Vec::new(),
        place: Place::default(),
    };
    let recipe = Recipe {
        title: "Invented".into(),
        held_to: vec![Authority::UsFsis],
        date: None,
        measures: None,
        instruments: Instruments { scale: Some(grams(0.1)), thermometer: None },
        components: vec![sausage],
    };
    for checked in recipe.check() {
        println!("{}: {}", checked.finding.rule.asks, checked.finding.verdict);
        assert_ne!(checked.finding.verdict, Verdict::Meets, "9 g is too much for 3 kg");
    }
    Ok(())
}
