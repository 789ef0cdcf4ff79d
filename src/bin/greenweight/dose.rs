//! The cook's own question, without a recipe: how much of this premix?

use std::fmt::{Display, Write};

use greenweight::authority::Authority;
use greenweight::cite::Date;
use greenweight::cure::{
    Batch, Cure, Dose, GreenWeight, Level, Method, Pickle, PickleWeight, Premix, Pump, Weighed,
    dose, product_keys,
};
use greenweight::finding::Place;
use greenweight::food::Food;
use greenweight::range::Range;
use greenweight::report::CAUTIONS;
use greenweight::units::{
    Mass, MassUnit, Shown, floor_to_division, grams, ounces, read_concentration, read_duration,
    read_mass, show_mass_like,
};

use super::Dosing;

/// Words for a fault in one argument.
fn in_argument<E: Display>(name: &str) -> impl Fn(E) -> String + '_ {
    move |error| format!("--{name}: {error}")
}

impl Dosing {
    /// The answer in words, or why there is none.
    pub(crate) fn answer(&self) -> Result<String, String> {
        let mass = |text: &str, name: &str| read_mass(text).map_err(in_argument(name));
        let authority = Authority::from_key(&self.held_to)
            .ok_or_else(|| format!("--held-to: `{}` is not an authority here", self.held_to))?;
        let scale = mass(&self.scale, "scale")?;
        let weighed = |shown: Mass| Range::weighed(shown, scale);
        let meat = weighed(mass(&self.meat, "meat")?).map_err(in_argument("meat"))?;
        let green = GreenWeight::range(meat).map_err(in_argument("meat"))?;
        let other = weighed(mass(&self.other, "other")?).map_err(in_argument("other"))?;
        let strength = read_concentration(&self.sodium_nitrite)
            .map_err(in_argument("sodium-nitrite"))
            .and_then(|mg_per_kg| Level::new(mg_per_kg).map_err(in_argument("sodium-nitrite")))?;
        let premix =
            Premix::new().with_sodium_nitrite(strength).map_err(in_argument("sodium-nitrite"))?;
        let method = match &self.method {
            None => None,
            Some(name) => Some(Method::from_key(name).ok_or_else(|| {
                "--method: it is ground, dry-rub, pumped or immersion".to_owned()
            })?),
        };
        let products: Vec<&'static str> = match &self.cured_as {
            None => Vec::new(),
            Some(name) => match product_keys().find(|key| key == name) {
                Some(key) => vec![key],
                None => return Err(format!("--cured-as: `{name}` is in none of the tables")),
            },
        };
        let cures = [Cure {
            mass: Some(Weighed { mass: grams(0.0), scale: Some(scale) }),
            strength: Some(premix),
            place: Place::default(),
        }];
        let food = if method == Some(Method::Ground) { Food::GroundMeat } else { Food::WholeMeat };
        let batch = Batch {
            scaled: true,
            cured_as: &products,
            product: meat.plus(other).ok(),
            method,
            green: Some(green),
            cures: &cures,
            pickle: self.pickle(&weighed)?,
            ..Batch::of(food)
        };
        let dose = dose(&batch, authority, self.date()?).map_err(|error| error.to_string())?;
        Ok(in_words(&dose, scale, strength.mg_per_kg()))
    }

    fn pickle(
        &self,
        weighed: &impl Fn(Mass) -> Result<Range<Mass>, greenweight::range::RangeError>,
    ) -> Result<Option<Pickle>, String> {
        let Some(text) = &self.pickle else { return Ok(None) };
        let shown = read_mass(text).map_err(in_argument("pickle"))?;
        let range = weighed(shown).map_err(in_argument("pickle"))?;
        let weight = PickleWeight::range(range).map_err(in_argument("pickle"))?;
        let taken_up = match &self.taken_up {
            None => None,
            Some(text) => {
                let mg_per_kg = read_concentration(text).map_err(in_argument("taken-up"))?;
                let pump = Pump::new(mg_per_kg / 1e6).map_err(in_argument("taken-up"))?;
                Some(Range::exactly(pump).map_err(in_argument("taken-up"))?)
            }
        };
        let lasts = self.lasts.as_deref().map(read_duration).transpose();
        let lasts = lasts.map_err(in_argument("for"))?.map(|time| time.high());
        let equilibrium = Pickle::comes_to_rest(Some(self.equilibrium), lasts);
        Ok(Some(Pickle { weight, taken_up, equilibrium }))
    }

    fn date(&self) -> Result<Option<Date>, String> {
        let Some(text) = &self.date else { return Ok(None) };
        let parts: Vec<_> = text.split('-').collect();
        let day = match parts.as_slice() {
            [year, month, day] => year.parse().ok().zip(month.parse().ok()).zip(day.parse().ok()),
            _ => None,
        };
        let ((year, month), day) =
            day.ok_or_else(|| "--date: write it as 2026-01-31".to_owned())?;
        Date::new(year, month, day).map(Some).map_err(in_argument("date"))
    }
}

/// A mass in grams and in ounces, each rounded down to a thousandth of an ounce or a
/// hundredth of a gram: for the most of something.
fn down(mass: Mass) -> String {
    let floor = |step: Mass| floor_to_division(mass, step).unwrap_or(mass);
    two(floor(grams(0.01)), floor(ounces(0.001)))
}

/// The same, rounded up: for the least of something.
fn up(mass: Mass) -> String {
    let ceil = |step: Mass| {
        let below = floor_to_division(mass, step).unwrap_or(mass);
        if below < mass { below + step } else { below }
    };
    two(ceil(grams(0.01)), ceil(ounces(0.001)))
}

fn two(in_grams: Mass, in_ounces: Mass) -> String {
    let grams = show_mass_like(in_grams, MassUnit::Gram);
    format!("{grams} ({})", show_mass_like(in_ounces, MassUnit::Ounce))
}

fn in_words(dose: &Dose, scale: Mass, strength: f64) -> String {
    let mut out = String::new();
    // Writing to a String cannot fail.
    let _ = match (dose.reading, dose.grow) {
        (Some(reading), _) => writeln!(
            out,
            "Weigh out at most {} of this premix, on a scale with steps of {}.",
            down(reading),
            two(scale, scale)
        ),
        (None, grow) => writeln!(
            out,
            "The batch is too small for this scale: it cannot prove even one step of {}.\n\
             Make at least {} times as much, or use a finer scale. Or make a stock solution: one\n\
             part of the premix by weight, at least 50 steps of the scale, in nine parts of\n\
             water; it has a tenth of the strength, so ten times the weight is used.",
            two(scale, scale),
            Shown::new((grow.unwrap_or(f64::INFINITY) * 10.0).ceil() / 10.0, "")
        ),
    };
    let _ = writeln!(out, "  the most     {}, rounded down", down(dose.most));
    let _ = writeln!(out, "  ceiling      \"{}\"", dose.ceiling.printed);
    let _ = writeln!(out, "               {}", dose.ceiling.citation);
    if let Some((row, least)) = dose.least {
        let _ = writeln!(out, "  the least    {}, for {}", up(least), row.printed);
        let _ = writeln!(out, "               {}; advice", row.citation);
        if dose.reading.is_none_or(|reading| reading < least) {
            let _ = writeln!(out, "  On this scale no reading proves both.");
        }
    }
    if let Some(reading) = dose.reading {
        let rest = (1.0 - strength / 1e6).max(0.0);
        let _ = writeln!(
            out,
            "  it brings    up to {} besides its nitrite, mostly salt: count it",
            up(reading * rest)
        );
    }
    out.push('\n');
    for caution in CAUTIONS {
        let _ = writeln!(out, "- {caution}");
    }
    out
}
