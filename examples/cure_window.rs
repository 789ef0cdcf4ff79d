//! Invented: how much of a curing salt goes into a batch of ground meat, from a
//! program that depends on the crate. Run with `cargo run --example cure_window`.

use greenweight::cure::{
    GreenWeight, Level, NitriteSalts, US_INGOING_NITRITE, US_MINIMUM, largest_reading,
    premix_window,
};
use greenweight::units::{MassUnit, grams, pounds, show_mass, show_mass_like};

fn main() -> Result<(), Box<dyn std::error::Error>> {
    let green = GreenWeight::new(pounds(7.0))?;
    // From the label of the pack, never from a table of common strengths.
    let strength = Level::<NitriteSalts, _>::percent(6.25)?;

    let law = US_INGOING_NITRITE.iter().find(|row| row.row.key == "nitrite-comminuted");
    let law = law.ok_or("the row is in the table")?;
    let (ceiling, _) = law.value.limit.figures();
    let (minimum, _) = US_MINIMUM.value.figures();

    let window = premix_window(minimum, ceiling, strength, green)?;
    let (least, most) = (window.low().mass(), window.high().mass());
    println!("{}: {}", law.row.printed, law.row.citation);
    println!("between {} and {}", show_mass(least), show_mass(most));

    let scale = grams(0.1);
    match largest_reading(window.high(), Some(scale)) {
        Some(reading) => println!(
            "on a scale with steps of {}: at most {} ({})",
            show_mass(scale),
            show_mass(reading),
            show_mass_like(reading, MassUnit::Ounce),
        ),
        None => println!("the batch is too small for this scale"),
    }
    Ok(())
}
