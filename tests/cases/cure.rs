use greenweight::authority::Authority;
use greenweight::cure::{
    Addition, Additive, AdditiveGroup, Agent, Ascorbate, BaconFormula, Batch, Cure, FumaricAcid,
    GluconoDeltaLactone, GreenWeight, IngoingLimit, Level, Method, NitrateSalts, NitriteIon,
    NitriteSalts, OnGreenWeight, Pickle, PickleWeight, Premix, PremixMass, Pump, SodiumNitrite,
    US_ACCELERATORS, US_BACON_SODIUM, US_BACON_TOLERANCE, US_INGOING_NITRATE, US_INGOING_NITRITE,
    Weighed, check, equilibrated, immersed, ingoing, ingoing_between, largest_at_equilibrium,
    largest_in_pickle, largest_premix, pumped,
};
use greenweight::finding::{Limit, Place};
use greenweight::food::Food;
use greenweight::range::Range;
use greenweight::units::{gallons, grams, kilograms, ounces, pounds};
use serde_json::json;

use super::case::{Answer, Case, answer_of};

type Ingoing<A> = Level<A, OnGreenWeight>;

fn premix(case: &Case) -> PremixMass {
    PremixMass::new(case.mass("premix")).unwrap()
}

fn green(case: &Case) -> GreenWeight {
    GreenWeight::new(case.mass("green")).unwrap()
}

fn strength<A: Agent>(case: &Case) -> Level<A, greenweight::cure::InPremix> {
    Level::percent(case.number("strength_percent")).unwrap()
}

fn at_most(case: &Case) -> Ingoing<SodiumNitrite> {
    Level::new(case.number("at_most_mg_per_kg")).unwrap()
}

fn in_grams(mass: PremixMass) -> Answer {
    Answer::from([("grams", json!(mass.mass().value * 1000.0))])
}

fn mg_per_kg(level: f64) -> Answer {
    Answer::from([("mg_per_kg", json!(level))])
}

pub fn ingoing_level(case: &Case) -> Answer {
    let (premix, green) = (premix(case), green(case));
    mg_per_kg(match case.word("agent") {
        "nitrite" => ingoing::<NitriteSalts>(premix, strength(case), green).mg_per_kg(),
        "nitrate" => ingoing::<NitrateSalts>(premix, strength(case), green).mg_per_kg(),
        "glucono-delta-lactone" => {
            ingoing::<GluconoDeltaLactone>(premix, strength(case), green).mg_per_kg()
        }
        "ascorbate" => ingoing::<Ascorbate>(premix, strength(case), green).mg_per_kg(),
        other => panic!("{}: no agent {other}", case.key),
    })
}

pub fn largest(case: &Case) -> Answer {
    in_grams(largest_premix(at_most(case), strength(case), green(case)).unwrap())
}

fn pickle(case: &Case) -> PickleWeight {
    let by_volume = case.maybe("pickle_us_gal").map(|gal| {
        let density = pounds(case.number("pickle_lb_per_us_gal")) / gallons(1.0);
        gallons(gal) * density
    });
    PickleWeight::new(by_volume.unwrap_or_else(|| case.mass("pickle"))).unwrap()
}

fn pump_of(case: &Case, name: &str) -> Pump {
    Pump::new(case.number(name)).unwrap()
}

fn pumped_against<A: Agent>(
    case: &Case,
    rows: &[greenweight::cite::Cited<IngoingLimit<A>>],
) -> Answer {
    let level = pumped(premix(case), strength(case), pickle(case), pump_of(case, "pump"));
    let row = rows
        .iter()
        .find(|row| {
            row.value.authority == Authority::UsFsis && row.value.methods.contains(&Method::Pumped)
        })
        .unwrap();
    let meets = row.value.limit.met_by(level).unwrap();
    Answer::from([("mg_per_kg", json!(level.mg_per_kg())), ("meets", json!(meets))])
}

pub fn pumped_level(case: &Case) -> Answer {
    match case.word("agent") {
        "nitrite" => pumped_against(case, &US_INGOING_NITRITE),
        "nitrate" => pumped_against(case, &US_INGOING_NITRATE),
        other => panic!("{}: no agent {other}", case.key),
    }
}

pub fn largest_by_pump(case: &Case) -> Answer {
    let most =
        largest_in_pickle(at_most(case), strength(case), pickle(case), pump_of(case, "pump"));
    in_grams(most.unwrap())
}

pub fn pump(case: &Case) -> Answer {
    Answer::from([("accepted", json!(Pump::new(case.number("fraction")).is_ok()))])
}

pub fn pump_from_weights(case: &Case) -> Answer {
    let pump = Pump::from_weights(green(case), case.mass("after")).unwrap();
    Answer::from([("fraction", json!(pump.fraction()))])
}

pub fn immersion(case: &Case) -> Answer {
    let (premix, pickle) = (premix(case), pickle(case));
    let one = immersed::<SodiumNitrite>(premix, strength(case), pickle, pump_of(case, "pick_up"));
    let two =
        equilibrated::<SodiumNitrite>(premix, strength(case), green(case), pickle).as_ingoing();
    Answer::from([
        ("by_pick_up_mg_per_kg", json!(one.mg_per_kg())),
        ("at_equilibrium_mg_per_kg", json!(two.mg_per_kg())),
        (
            "bacon_meets_at_equilibrium",
            json!(bacon_ceiling(BaconFormula::Immersion).met_by(two).unwrap()),
        ),
    ])
}

pub fn largest_in_tub(case: &Case) -> Answer {
    let most = largest_at_equilibrium(at_most(case), strength(case), green(case), pickle(case));
    in_grams(most.unwrap())
}

pub fn weighed(case: &Case) -> Answer {
    let range = Range::weighed(case.mass("shown"), case.mass("division")).unwrap();
    let strength = Range::exactly(strength::<SodiumNitrite>(case)).unwrap();
    let green = Range::exactly(green(case)).unwrap();
    let level = ingoing_between(PremixMass::range(range).unwrap(), strength, green);
    Answer::from([
        ("low_g", json!(range.low().value * 1000.0)),
        ("high_g", json!(range.high().value * 1000.0)),
        ("low_mg_per_kg", json!(level.low().mg_per_kg())),
        ("high_mg_per_kg", json!(level.high().mg_per_kg())),
    ])
}

fn level(case: &Case) -> f64 {
    case.number("mg_per_kg")
}

pub fn sodium_as_potassium(case: &Case) -> Answer {
    let sodium = Ingoing::<SodiumNitrite>::new(level(case)).unwrap();
    mg_per_kg(sodium.as_potassium_nitrite().mg_per_kg())
}

pub fn ion_as_sodium(case: &Case) -> Answer {
    let ion = Ingoing::<NitriteIon>::new(level(case)).unwrap();
    mg_per_kg(ion.as_sodium_nitrite().mg_per_kg())
}

pub fn sodium_as_ion(case: &Case) -> Answer {
    let sodium = Ingoing::<SodiumNitrite>::new(level(case)).unwrap();
    mg_per_kg(sodium.as_nitrite_ion().mg_per_kg())
}

fn bacon_ceiling(formula: BaconFormula) -> Limit<Ingoing<SodiumNitrite>> {
    US_BACON_SODIUM.iter().find(|row| row.value.formula == formula).unwrap().value.limit
}

/// A ceiling is held against the level itself. A pumped formulation is a prescription of
/// several parts, so it goes through the check: a kilogram of pickle at a tenth of pump,
/// weighed on a scale fine enough to play no part.
pub fn bacon(case: &Case) -> Answer {
    let nitrite = case.number("sodium_nitrite_mg_per_kg");
    let formula = match Method::from_key(case.word("method")).unwrap() {
        Method::Pumped => return pumped_bacon(case, nitrite),
        Method::Immersion => BaconFormula::Immersion,
        _ => BaconFormula::DryCure,
    };
    let met = bacon_ceiling(formula).met_by(Level::new(nitrite).unwrap()).unwrap();
    Answer::from([("meets", json!(met))])
}

fn pumped_bacon(case: &Case, nitrite: f64) -> Answer {
    let in_pickle =
        |mg_per_kg: f64| Weighed { mass: grams(mg_per_kg * 0.01), scale: Some(grams(1e-6)) };
    let pure = Premix::new().with_sodium_nitrite(Level::percent(100.0).unwrap()).unwrap();
    let cures =
        [Cure { mass: Some(in_pickle(nitrite)), strength: Some(pure), place: Place::default() }];
    let ascorbate = case.maybe("ascorbate_mg_per_kg").filter(|level| *level > 0.0);
    let additions: Vec<_> =
        ascorbate.map(|level| erythorbate(in_pickle(level))).into_iter().collect();
    let batch = Batch {
        scaled: true,
        method: Some(Method::Pumped),
        green: Range::exactly(GreenWeight::new(kilograms(10.0)).unwrap()).ok(),
        cures: &cures,
        pickle: Some(Pickle {
            weight: Range::exactly(PickleWeight::new(kilograms(1.0)).unwrap()).unwrap(),
            taken_up: Range::exactly(Pump::new(0.1).unwrap()).ok(),
            equilibrium: None,
        }),
        additions: &additions,
        finished: Range::exactly(kilograms(9.9)).ok(),
        sugar_percent: case.maybe("sugar_percent"),
        culture: case.flag("culture"),
        ..Batch::of(Food::Bacon)
    };
    let mut findings = Vec::new();
    check(&batch, Authority::UsFsis, None, &mut |finding| findings.push(finding));
    answer_of(&findings)
}

fn erythorbate(mass: Weighed) -> Addition {
    Addition {
        additive: Additive::SodiumErythorbate,
        mass: Some(mass),
        hydrated: false,
        place: Place::default(),
    }
}

/// A limit that a row prints in two ways.
pub fn two_printed_figures(case: &Case) -> Answer {
    let ounces = PremixMass::new(ounces(case.number("oz"))).unwrap();
    let meat = GreenWeight::new(pounds(case.number("meat_lb"))).unwrap();
    let pure = Level::<FumaricAcid, _>::percent(100.0).unwrap();
    let percent = Level::<FumaricAcid, OnGreenWeight>::percent(case.number("percent")).unwrap();
    let row = US_ACCELERATORS.iter().find(|row| row.value.group == AdditiveGroup::FumaricAcid);
    Answer::from([
        ("from_oz_mg_per_kg", json!(ingoing(ounces, pure, meat).mg_per_kg())),
        ("from_percent_mg_per_kg", json!(percent.mg_per_kg())),
        ("ceiling_mg_per_kg", json!(row.unwrap().value.limit.figures().0)),
    ])
}

pub fn bacon_weight(case: &Case) -> Answer {
    let pure = Premix::new().with_sodium_nitrite(Level::percent(100.0).unwrap()).unwrap();
    let mass = Weighed { mass: grams(1.0), scale: Some(grams(1e-6)) };
    let cures = [Cure { mass: Some(mass), strength: Some(pure), place: Place::default() }];
    let batch = Batch {
        scaled: true,
        method: Some(Method::DryRub),
        green: Range::exactly(green(case)).ok(),
        finished: Range::exactly(case.mass("finished")).ok(),
        cures: &cures,
        ..Batch::of(Food::Bacon)
    };
    let mut findings = Vec::new();
    check(&batch, Authority::UsFsis, None, &mut |finding| findings.push(finding));
    findings.retain(|finding| finding.rule.id == "cure/bacon-weight");
    answer_of(&findings)
}

pub fn accepted_band(case: &Case) -> Answer {
    let target = Limit::Exactly(case.number("target_mg_per_kg"));
    assert_eq!(bacon_ceiling(BaconFormula::Pumped).map(Level::mg_per_kg), target);
    let Limit::Between(low, high) = US_BACON_TOLERANCE.value else { panic!("a band") };
    Answer::from([
        ("low_mg_per_kg", json!(low.mg_per_kg())),
        ("high_mg_per_kg", json!(high.mg_per_kg())),
    ])
}
