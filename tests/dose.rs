//! What a dose gives, a check of the same batch meets.
#![cfg(feature = "recipe")]

use greenweight::authority::Authority;
use greenweight::cure::{
    Batch, Cure, Dose, GreenWeight, Level, Method, NoDose, Pickle, PickleWeight, Premix, Pump,
    US_BACON_SODIUM, US_INGOING_NITRITE, Weighed, dose, skin_free,
};
use greenweight::finding::{Finding, Limit, Measure, Place, Verdict};
use greenweight::food::Food;
use greenweight::range::Range;
use greenweight::recipe::Recipe;
use greenweight::units::{Mass, grams, hours, kilograms, kitchen_scale, ounces, pounds};
use proptest::prelude::*;
use rstest::rstest;

/// What is asked of a dose, as a document says it too.
#[derive(Debug, Clone)]
struct Asked {
    authority: Authority,
    product: Option<&'static str>,
    food: Food,
    method: Method,
    meat: f64,
    other: f64,
    strength: f64,
    scale: Mass,
    skin: Option<bool>,
    pickle: f64,
    taken_up: f64,
    equilibrium: Option<bool>,
}

impl Asked {
    fn is_pickled(&self) -> bool {
        matches!(self.method, Method::Pumped | Method::Immersion)
    }

    fn at_rest(&self) -> Option<bool> {
        let said = self.equilibrium.filter(|_| self.method == Method::Immersion);
        Pickle::comes_to_rest(said, Some(hours(12.0)))
    }

    fn strength(&self) -> Premix {
        Premix::new().with_sodium_nitrite(Level::percent(self.strength).unwrap()).unwrap()
    }

    fn dose(&self) -> Result<Dose, NoDose> {
        let weighed = |kg: f64| Range::weighed(kilograms(kg), self.scale).unwrap();
        let meat = weighed(self.meat);
        let mass = Some(Weighed { mass: grams(0.0), scale: Some(self.scale) });
        let cures = [Cure { mass, strength: Some(self.strength()), place: Place::default() }];
        let products: Vec<_> = self.product.into_iter().collect();
        let skinned =
            self.food == Food::Bacon && matches!(self.method, Method::DryRub | Method::Immersion);
        let green = if skinned { skin_free(meat, self.skin).unwrap() } else { meat };
        let pickle = self.is_pickled().then(|| {
            // The premix and the rest of it are weighed apart.
            let weight = Range::weighed(kilograms(self.pickle), self.scale * 2.0).unwrap();
            Pickle {
                weight: PickleWeight::range(weight).unwrap(),
                taken_up: Some(Range::exactly(Pump::new(self.taken_up / 100.0).unwrap()).unwrap()),
                equilibrium: self.at_rest(),
            }
        });
        let batch = Batch {
            scaled: true,
            cured_as: &products,
            product: Some(meat.plus(weighed(self.other)).unwrap()),
            method: Some(self.method),
            green: Some(GreenWeight::range(green).unwrap()),
            cures: &cures,
            pickle,
            ..Batch::of(self.food)
        };
        dose(&batch, self.authority, None)
    }

    /// The document of the batch with this much of the premix.
    fn document(&self, premix: Mass) -> String {
        let kg = |kg: f64| format!("\"{kg:.12} kg\"");
        let method = self.method.key();
        let cure = match self.method {
            Method::Pumped => format!("method = \"{method}\", pump = \"{} %\"", self.taken_up),
            Method::Immersion => {
                let at_rest = self
                    .equilibrium
                    .map_or(String::new(), |rest| format!(", equilibrium = {rest}"));
                format!(
                    "method = \"{method}\", for = \"12 h\", pick_up = \"{} %\"{at_rest}",
                    self.taken_up
                )
            }
            _ => format!("method = \"{method}\""),
        };
        let product = self.product.map_or(String::new(), |key| format!("cured_as = [\"{key}\"]\n"));
        let skin = self.skin.map_or(String::new(), |skin| format!("skin = {skin}\n"));
        let skin = if self.food == Food::Bacon { skin } else { String::new() };
        let (part, water) = if self.is_pickled() {
            let rest = kg(self.pickle - premix.value);
            let water = format!(
                "[[component.ingredient]]\nname = \"water\"\nkind = \"water\"\namount = {rest}\npart = \"pickle\"\n"
            );
            ("part = \"pickle\"\n", water)
        } else {
            ("", String::new())
        };
        format!(
            "title = \"Invented\"\nheld_to = [\"{}\"]\n[instruments]\nscale = {}\n[[component]]\nname = \"a\"\n\
             food = \"{}\"\nraw = true\n{product}cure = {{ {cure} }}\n\
             [[component.ingredient]]\nname = \"meat\"\nkind = \"meat\"\nfrom = \"pork\"\namount = {}\n{skin}\
             [[component.ingredient]]\nname = \"other\"\nkind = \"other\"\namount = {}\n\
             [[component.ingredient]]\nname = \"premix\"\nkind = \"curing-premix\"\namount = {}\n{part}\
             strength = {{ sodium-nitrite = \"{} %\" }}\n{water}",
            self.authority.key(),
            kg(self.scale.value),
            self.food.key(),
            kg(self.meat),
            kg(self.other),
            kg(premix.value),
            self.strength,
        )
    }

    /// What a check of that document says of the nitrite that goes in.
    fn checked(&self, premix: Mass) -> Vec<Finding> {
        let text = self.document(premix);
        let recipe = Recipe::read(&text).unwrap_or_else(|error| panic!("{error}\n{text}"));
        let goes_in = |finding: &Finding| {
            ["cure/ingoing-nitrite", "cure/bacon-nitrite"].contains(&finding.rule.id)
        };
        recipe.check().into_iter().map(|checked| checked.finding).filter(goes_in).collect()
    }
}

fn most(finding: &Finding) -> f64 {
    match finding.found.expect("a level").high() {
        Measure::Level { mg_per_kg, .. } => mg_per_kg,
        other => panic!("{other:?}"),
    }
}

fn figure(finding: &Finding) -> f64 {
    match finding.limit.expect("a limit") {
        Limit::AtMost(Measure::Level { mg_per_kg, .. })
        | Limit::Exactly(Measure::Level { mg_per_kg, .. }) => mg_per_kg,
        _ => f64::INFINITY,
    }
}

/// Whether the figures of a finding meet its limit, whoever has read the row.
fn holds(finding: &Finding) -> bool {
    match finding.limit {
        Some(Limit::Exactly(_)) => finding.verdict == Verdict::Meets,
        Some(limit) => {
            let within = greenweight::range::SAME * figure(finding);
            most(finding) <= figure(finding) + within
                && finding.verdict != Verdict::Breaks
                && !matches!(limit, Limit::AtLeast(_) if finding.verdict != Verdict::Meets)
        }
        None => false,
    }
}

const MEATS: [(Food, Method); 9] = [
    (Food::GroundMeat, Method::Ground),
    (Food::GroundPoultry, Method::Ground),
    (Food::WholeMeat, Method::DryRub),
    (Food::Poultry, Method::Pumped),
    (Food::RawHam, Method::Pumped),
    (Food::WholeMeat, Method::Immersion),
    (Food::Bacon, Method::DryRub),
    (Food::Bacon, Method::Pumped),
    (Food::Bacon, Method::Immersion),
];

const HELD: [(Authority, Option<&str>); 8] = [
    (Authority::UsFsis, None),
    (Authority::UsFsis, None),
    (Authority::EuropeanUnion, Some("eu/heat-treated")),
    (Authority::EuropeanUnion, Some("eu/not-heat-treated")),
    (Authority::GreatBritain, Some("gb/meat-in-general")),
    (Authority::Denmark, Some("dk/heat-treated")),
    (Authority::Canada, Some("ca/cured")),
    (Authority::Canada, Some("ca/side-bacon")),
];

prop_compose! {
    fn asked()(
        (food, method) in proptest::sample::select(&MEATS[..]),
        (authority, product) in proptest::sample::select(&HELD[..]),
        meat in prop_oneof![0.2..2.0_f64, 2.0..60.0_f64],
        other in 0.0..0.3_f64,
        strength in prop_oneof![Just(6.25), Just(0.5), 0.4..6.3_f64],
        scale in proptest::sample::select(vec![grams(0.01), grams(0.1), grams(1.0), ounces(0.05), ounces(0.5), ounces(1.0)]),
        skin in proptest::option::of(any::<bool>()),
        pickle in 0.3..2.0_f64,
        taken_up in 5.0..25.0_f64,
        equilibrium in proptest::option::of(any::<bool>()),
    ) -> Asked {
        // As a cook writes them: to the gram, a hundredth of a percent, whole percents of pump.
        let to = |value: f64, per: f64| (value * per).round() / per;
        Asked {
            authority,
            product,
            food,
            method,
            meat: to(meat, 1000.0),
            other: to(meat * other, 1000.0) + 0.001,
            strength: to(strength, 100.0),
            scale,
            skin,
            pickle: to(meat * pickle, 1000.0),
            taken_up: taken_up.round(),
            equilibrium,
        }
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 3000, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn what_a_dose_gives_a_check_meets_and_one_step_more_it_does_not(asked in asked()) {
        let Ok(dose) = asked.dose() else { return Ok(()) };
        let Some(reading) = dose.reading else { return Ok(()) };
        let found = asked.checked(reading);
        prop_assert!(!found.is_empty(), "{}", asked.document(reading));
        for finding in &found {
            prop_assert!(holds(finding), "{finding:?}\n{}", asked.document(reading));
        }
        let own_row = asked.food == Food::Bacon && asked.authority == Authority::Canada;
        if !dose.prescribed && !own_row {
            let more = asked.checked(reading + asked.scale);
            prop_assert!(!more.iter().all(holds), "{more:?}\n{}", asked.document(reading + asked.scale));
        }
    }

    #[test]
    fn where_a_scale_is_too_coarse_the_batch_that_is_named_or_the_scale_is_enough(asked in asked()) {
        let Ok(dose) = asked.dose() else { return Ok(()) };
        let (None, Some(grow)) = (dose.reading, dose.grow) else { return Ok(()) };
        // A least amount too is a window, which a step that fits under the ceiling need not hit.
        prop_assume!(asked.product != Some("ca/cured"));
        prop_assert!(grow > 1.0);
        // A little more than the least, for weights that stand above and below the line.
        let times = (grow * 1.1 * 1000.0).ceil() / 1000.0;
        let larger = Asked {
            meat: asked.meat * times,
            other: asked.other * times,
            pickle: asked.pickle * times,
            ..asked.clone()
        };
        prop_assert!(larger.dose().unwrap().reading.is_some(), "{larger:?}");
        if let Some(scale) = dose.finer.and_then(kitchen_scale) {
            let finer = Asked { scale: scale * 0.9, ..asked };
            let proven = finer.dose().unwrap().reading.is_some();
            prop_assert!(proven, "{finer:?}");
        }
    }
}

const BELLY: Asked = Asked {
    authority: Authority::UsFsis,
    product: None,
    food: Food::Bacon,
    method: Method::DryRub,
    meat: 2.267_961_85,
    other: 0.01,
    strength: 6.25,
    scale: Mass { value: 0.0001, ..ZERO },
    skin: Some(false),
    pickle: 1.0,
    taken_up: 10.0,
    equilibrium: Some(true),
};
const ZERO: Mass = <Mass as greenweight::range::Measured>::ZERO;

fn printed(row: &greenweight::cite::Row) -> (&'static str, &'static str) {
    (row.table, row.key)
}

#[test]
fn five_pounds_of_belly_take_a_third_of_what_other_whole_meat_takes() {
    assert!((pounds(5.0).value - BELLY.meat).abs() < 1e-12);
    let bacon = BELLY.dose().unwrap();
    // 200 mg/kg of 5 lb in a premix of 6.25 %: 7.257 g, and on steps of 0.1 g 7.2 g.
    assert!((bacon.reading.unwrap().value - 0.0072).abs() < 1e-9, "{bacon:?}");
    let rows = US_BACON_SODIUM.iter().map(|row| printed(&row.row));
    assert!(rows.into_iter().any(|row| row == printed(bacon.ceiling)));
    let with_skin = Asked { skin: None, ..BELLY }.dose().unwrap();
    assert!((with_skin.reading.unwrap().value - 0.0064).abs() < 1e-9, "{with_skin:?}");
    let whole = Asked { food: Food::WholeMeat, ..BELLY }.dose().unwrap();
    assert!((whole.reading.unwrap().value - 0.0226).abs() < 1e-9, "{whole:?}");
    let rows = US_INGOING_NITRITE.iter().map(|row| printed(&row.row));
    assert!(rows.into_iter().any(|row| row == printed(whole.ceiling)));
}

#[test]
fn pumped_bacon_is_given_its_prescribed_amount_by_a_scale_that_hits_it() {
    let pumped = Asked { method: Method::Pumped, ..BELLY };
    // 120 mg/kg by a pump of 10 % is 1200 mg in a kilogram of pickle: 19.2 g of 6.25 %.
    let dose = pumped.dose().unwrap();
    assert!(dose.prescribed);
    assert!((dose.reading.unwrap().value - 0.0192).abs() < 1e-9, "{dose:?}");
    // A step of 0.5 g may be a quarter of a gram off: 1.6 mg/kg, and half of one is the most.
    let coarse = Asked { scale: grams(0.5), pickle: 1.003, ..pumped }.dose().unwrap();
    assert_eq!(coarse.reading, None);
    assert_eq!(coarse.finer.and_then(kitchen_scale), Some(grams(0.1)));
}

#[rstest]
#[case::neat(99.0)]
#[case::none_so_strong(12.0)]
fn neat_nitrite_has_no_dose(#[case] strength: f64) {
    assert_eq!(Asked { strength, ..BELLY }.dose(), Err(NoDose::NotAPremix));
}

#[test]
fn fish_has_a_dose_where_a_row_limits_what_goes_in() {
    let fish = |authority, product| {
        let method = Method::DryRub;
        Asked { food: Food::Fish, authority, product, method, ..BELLY }.dose()
    };
    assert_eq!(fish(Authority::UsFsis, None), Err(NoDose::NoRow));
    let none = fish(Authority::UsFda, Some("fda/other-fish"));
    assert!(matches!(none, Err(NoDose::NoneAllowed(row)) if row.key == "other-fish-nitrite"));
    // What may be left is limited, and no amount that goes in shows it.
    let salmon = fish(Authority::UsFda, Some("fda/sablefish-salmon-shad"));
    assert_eq!(salmon, Err(NoDose::NoRow));
    assert!(matches!(fish(Authority::GreatBritain, None), Err(NoDose::NoProduct(_))));
}

#[test]
fn side_bacon_in_canada_goes_by_its_own_row_whatever_else_it_is_cured_as() {
    let canada = |food| {
        let asked =
            Asked { authority: Authority::Canada, product: Some("ca/cured"), food, ..BELLY };
        asked.dose().unwrap().ceiling.key
    };
    assert_eq!(canada(Food::Bacon), "nitrite-sidebacon");
    assert_eq!(canada(Food::WholeMeat), "cured-max");
}
