//! Invented: a recipe built by types, without a document, and checked. Run with
//! `cargo run --features recipe --example check_in_memory`.

use greenweight::authority::Authority;
use greenweight::cure::{Level, Method, Premix};
use greenweight::finding::Verdict;
use greenweight::food::Food;
use greenweight::recipe::{Animal, Component, CurePlan, Ingredient, Instruments, Kind, Recipe};
use greenweight::units::{grams, kilograms};

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let premix = Premix::new().with_sodium_nitrite(Level::percent(6.25)?)?;
    let meat = Ingredient::new("shoulder", Kind::Meat, kilograms(3.0));
    let cure = Ingredient::new("curing salt", Kind::CuringPremix, grams(9.0));
    let sausage = Component {
        raw: true,
        ingredients: vec![
            Ingredient { from: Some(Animal::Pork), ..meat },
            Ingredient { strength: Some(premix), ..cure },
        ],
        cure: Some(CurePlan::by(Method::Ground)),
        ..Component::new("stall sausage", Food::GroundMeat)
    };
    let recipe = Recipe {
        instruments: Instruments { scale: Some(grams(0.1)), ..Instruments::default() },
        components: vec![sausage],
        ..Recipe::new("Invented", [Authority::UsFsis])
    };
    let findings: Vec<_> = recipe.check().into_iter().map(|checked| checked.finding).collect();
    for finding in &findings {
        println!("{}: {}", finding.rule.asks, finding.verdict);
    }
    let nitrite = findings.iter().find(|finding| finding.rule.id == "cure/ingoing-nitrite");
    let nitrite = nitrite.ok_or("a cured sausage is held against a limit")?;
    assert_eq!(nitrite.verdict, Verdict::Breaks, "9 g is too much for 3 kg");
    Ok(())
}
