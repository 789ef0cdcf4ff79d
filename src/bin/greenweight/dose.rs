//! The cook's own question, without a recipe: how much of this premix?

use std::fmt::{Display, Write};

use greenweight::authority::Authority;
use greenweight::cite::Date;
use greenweight::cure::{
    Batch, Cure, Dose, GreenWeight, Level, Method, NoDose, Pickle, PickleWeight, Premix, Pump,
    Weighed, dose, product_keys, skin_free,
};
use greenweight::finding::Place;
use greenweight::food::Food;
use greenweight::range::Range;
use greenweight::report::CAUTIONS;
use greenweight::units::{
    Mass, MassUnit, Shown, floor_to_division, grams, kitchen_scale, ounces, read_concentration,
    read_duration, read_mass, show_mass_like,
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
        let other = mass(&self.other, "other")?;
        let product = if other > grams(0.0) {
            let other = weighed(other).map_err(in_argument("other"))?;
            meat.plus(other).map_err(in_argument("other"))?
        } else {
            meat
        };
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
        let (pickle, day) = (self.pickle(scale)?, self.date()?);
        let skin_counts = matches!(method, Some(Method::DryRub | Method::Immersion));
        let of = |food: Food| {
            let green = if food == Food::Bacon && skin_counts {
                skin_free(meat, self.skin).map_err(in_argument("meat"))?
            } else {
                meat
            };
            let batch = Batch {
                scaled: true,
                cured_as: &products,
                product: Some(product),
                method,
                green: Some(GreenWeight::range(green).map_err(in_argument("meat"))?),
                cures: &cures,
                pickle,
                for_infants: self.for_infants,
                ..Batch::of(food)
            };
            let dose = dose(&batch, authority, day).map_err(|error| match error {
                NoDose::NoProduct(missing) => {
                    format!("--cured-as: say {}; {}", missing.what, missing.say)
                }
                error => error.to_string(),
            })?;
            Ok::<_, String>((food, dose))
        };
        let foods: &[Food] = match &self.food {
            Some(name) => &[named(name)?],
            None if method == Some(Method::Ground) => &[Food::GroundMeat],
            None => &[Food::WholeMeat, Food::Bacon],
        };
        let doses = foods.iter().map(|&food| of(food)).collect::<Result<Vec<_>, _>>()?;
        let strictest = doses.into_iter().reduce(|a, b| if b.1.most < a.1.most { b } else { a });
        let (food, dose) = strictest.ok_or_else(|| "--food: it is missing".to_owned())?;
        let unnamed = if self.food.is_none() { no_food(food) } else { "" };
        let skin =
            if food == Food::Bacon && skin_counts && self.skin.is_none() { SKIN } else { "" };
        let gap = if unnamed.is_empty() && skin.is_empty() { "" } else { "\n" };
        Ok(format!("{unnamed}{skin}{gap}{}", in_words(&dose, scale, strength.mg_per_kg())))
    }

    fn pickle(&self, scale: Mass) -> Result<Option<Pickle>, String> {
        let Some(text) = &self.pickle else { return Ok(None) };
        let shown = read_mass(text).map_err(in_argument("pickle"))?;
        // It is weighed twice: the premix, and the rest of it.
        let range = Range::weighed(shown, scale * 2.0).map_err(in_argument("pickle"))?;
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

/// The food of an argument.
fn named(name: &str) -> Result<Food, String> {
    Food::from_key(name).ok_or_else(|| {
        let keys: Vec<_> = Food::ALL.iter().map(|food| food.key()).collect();
        format!("--food: `{name}` is not a food here; it is one of {}", keys.join(", "))
    })
}

const SKIN: &str = "The skin of the belly counts as weighed with it, and takes up no cure. With --skin false it counts as off.\n";

/// What is said first where no food was named.
const fn no_food(counted: Food) -> &'static str {
    match counted {
        Food::Bacon => {
            "No food was named: this is the strictest figure for this method, that of bacon.\n\
             Name the food with --food, as --food whole-meat.\n"
        }
        Food::GroundMeat => "No food was named: this is the figure for ground meat.\n",
        _ => "No food was named: this is the strictest figure for this method.\n",
    }
}

const BETWEEN: &str = "no reading is sure to be under the limit and over the minimum.";

/// What a scale that is too coarse for a batch is told.
fn too_small(dose: &Dose, scale: Mass) -> String {
    let step = show_mass_like(scale, MassUnit::Gram);
    let why = match (dose.prescribed, dose.finer) {
        (true, _) => format!("no reading in steps of {step} is sure to hit the prescribed amount."),
        (false, Some(_)) => format!("one step of {step} could already be over the limit."),
        (false, None) => BETWEEN.to_owned(),
    };
    let grow = dose.grow.map(|grow| {
        format!("Make at least {} times as much", Shown::new((grow * 10.0).ceil() / 10.0, ""))
    });
    let finer = dose.finer.and_then(kitchen_scale).filter(|step| *step < scale);
    let finer = finer.map(|step| {
        let or = if grow.is_some() { ", or use" } else { "Use" };
        format!("{or} a scale with steps of {} or finer", show_mass_like(step, MassUnit::Gram))
    });
    let mend = [grow, finer].into_iter().flatten().collect::<String>();
    let mend =
        if mend.is_empty() { "Make a larger batch, or use a finer scale".to_owned() } else { mend };
    format!("The batch is too small for this scale: {why}\n{mend}.\n")
}

fn in_words(dose: &Dose, scale: Mass, strength: f64) -> String {
    let mut out = String::new();
    let ceiling = dose.ceiling;
    // Writing to a String cannot fail.
    let _ = match dose.reading {
        Some(reading) if dose.prescribed => writeln!(
            out,
            "Weigh out {} of this premix, neither more nor less, on a scale with steps of {}.",
            two(reading, reading),
            two(scale, scale)
        ),
        Some(reading) => writeln!(
            out,
            "Weigh out at most {} of this premix, on a scale with steps of {}.",
            down(reading),
            two(scale, scale)
        ),
        None => write!(out, "{}", too_small(dose, scale)),
    };
    if ceiling.is_from_memory() {
        let _ = writeln!(out, "This limit is from memory: check it before you rely on it.");
    }
    if dose.prescribed {
        let _ = writeln!(out, "  the amount   {}", down(dose.most));
        let _ = writeln!(out, "  prescribed   \"{}\"", ceiling.printed);
    } else {
        let _ = writeln!(out, "  the most     {}, rounded down", down(dose.most));
        let _ = writeln!(out, "  ceiling      \"{}\"", ceiling.printed);
    }
    let _ = writeln!(out, "               {}", ceiling.citation);
    if !ceiling.note.is_empty() {
        let _ = writeln!(out, "  note         {}", ceiling.note);
    }
    if let Some((row, least)) = dose.least {
        let _ = writeln!(out, "  the least    {}, for {}", up(least), row.printed);
        let _ = writeln!(out, "               {}; advice", row.citation);
        if dose.reading.is_none_or(|reading| reading < least) {
            let _ = writeln!(out, "  On this scale {BETWEEN}");
        }
    }
    if let Some(reading) = dose.reading {
        let rest = (1.0 - strength / 1e6).max(0.0);
        let _ = writeln!(
            out,
            "  The rest of the premix (up to {}, mostly salt) adds to the salt in your recipe: count it.",
            up(reading * rest)
        );
    }
    out.push('\n');
    for caution in CAUTIONS {
        let _ = writeln!(out, "- {caution}");
    }
    out
}
