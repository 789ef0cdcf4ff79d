use greenweight::cure::{Level, Pump};
use greenweight::salt::{
    Brine, Loss, Moisture, Salometer, Tub, WATER_ACTIVITY, after_loss, for_water_phase, in_pumped,
    in_water_phase, mixed, moisture_after_loss, osmotic_coefficient, salt_for, salt_of_mix,
    salt_on_green, saturated_activity, saturated_humidity, strengthen, water_activity_of, weaken,
};
use greenweight::units::{Reading, Scale, gallons, kilograms, liters, pounds};
use serde_json::json;

use super::case::{Answer, Case};

fn percent(case: &Case, name: &str) -> Moisture {
    Moisture::of_percent(case.number(name)).unwrap()
}

fn brine_of_case(case: &Case) -> Brine {
    match case.maybe("percent") {
        Some(percent) => Brine::of_percent(percent).unwrap(),
        None => {
            let scale = Salometer::of_percent_at_100(case.number("percent_at_100")).unwrap();
            Brine::of_degrees(case.number("degrees"), scale).unwrap()
        }
    }
}

pub fn brine(case: &Case) -> Answer {
    let brine = brine_of_case(case);
    let mut answer = Answer::from([
        ("percent", json!(brine.percent())),
        ("grams_per_liter_of_water", json!(brine.grams_per_liter_of_water())),
        ("grams_per_kilogram_of_brine", json!(brine.percent() * 10.0)),
    ]);
    if let (Ok(density), Ok(salt)) = (brine.density(), brine.grams_per_liter_of_brine()) {
        answer.insert("kg_per_m3", json!(density.value));
        answer.insert("grams_per_liter_of_brine", json!(salt));
        // A litre of water and its salt, over what a litre of the brine weighs.
        let weight = 998.2 + brine.grams_per_liter_of_water();
        answer.insert("liters_from_a_liter_of_water", json!(weight / density.value));
    }
    answer
}

fn in_pounds(mass: greenweight::units::Mass) -> f64 {
    mass.value / pounds(1.0).value
}

pub fn salt_for_brine(case: &Case) -> Answer {
    let salt = salt_for(brine_of_case(case), case.mass("water")).unwrap();
    Answer::from([("salt_lb", json!(in_pounds(salt)))])
}

pub fn salt_for_saturated(case: &Case) -> Answer {
    let brine = Brine::saturated_at(case.reading_at("fahrenheit", Scale::Fahrenheit)).unwrap();
    let salt = salt_for(brine, case.mass("water")).unwrap();
    Answer::from([("salt_oz", json!(in_pounds(salt) * 16.0))])
}

pub fn salt_in_brine(case: &Case) -> Answer {
    let brine = brine_of_case(case);
    let volume = gallons(case.number("us_quarts") / 4.0);
    let salt = volume * brine.density().unwrap() * (brine.percent() / 100.0);
    Answer::from([("salt_oz", json!(in_pounds(salt) * 16.0))])
}

pub fn brine_of(case: &Case) -> Answer {
    let water = gallons(case.number("water_us_pints") / 8.0)
        * greenweight::salt::Brine::of_percent(0.0).unwrap().density().unwrap();
    let brine = Brine::of(case.mass("salt"), water).unwrap();
    Answer::from([("percent", json!(brine.percent()))])
}

fn degrees(case: &Case, name: &str) -> Brine {
    Brine::of_degrees(case.number(name), Salometer::STANDARD).unwrap()
}

pub fn diluted(case: &Case) -> Answer {
    let water = Brine::of_percent(0.0).unwrap();
    let parts = |name| kilograms(case.number(name));
    let brine = mixed(parts("parts"), degrees(case, "degrees"), parts("parts_water"), water);
    Answer::from([("degrees", json!(brine.unwrap().degrees(Salometer::STANDARD)))])
}

pub fn adjusted(case: &Case) -> Answer {
    let (from, to) = (degrees(case, "degrees"), degrees(case, "to_degrees"));
    let mass = liters(case.number("liters")) * from.density().unwrap();
    match case.operation.as_str() {
        "strengthen" => {
            Answer::from([("salt_kg", json!(strengthen(mass, from, to).unwrap().value))])
        }
        _ => Answer::from([("water_kg", json!(weaken(mass, from, to).unwrap().value))]),
    }
}

pub fn saturated(case: &Case) -> Answer {
    let brine = Brine::saturated_at(case.reading_at("fahrenheit", Scale::Fahrenheit)).unwrap();
    Answer::from([("percent", json!(brine.percent()))])
}

/// A brine of so many moles to the kilogram of water.
fn of_molality(case: &Case) -> Brine {
    Brine::of_grams_per_kilogram_of_water(case.number("molality") * 58.443).unwrap()
}

pub fn density_at(case: &Case) -> Answer {
    let at = case.reading_at("celsius", Scale::Celsius);
    // Sixteen decimals of a molality on the edge of the table may lie a hair outside it.
    let brine = of_molality(case);
    Answer::from([("kg_per_m3", json!(brine.density_at(at).unwrap().value))])
}

pub fn freezing(case: &Case) -> Answer {
    Answer::from([("kelvin", json!(of_molality(case).freezing_depression().unwrap()))])
}

pub fn water_phase(case: &Case) -> Answer {
    let salt = Level::percent(case.number("salt_percent")).unwrap();
    let phase = in_water_phase(salt, percent(case, "moisture_percent")).unwrap();
    Answer::from([("percent", json!(phase.as_percent()))])
}

pub fn salt_for_water_phase(case: &Case) -> Answer {
    let phase = Level::percent(case.number("phase_percent")).unwrap();
    let salt = for_water_phase(phase, percent(case, "moisture_percent")).unwrap();
    Answer::from([("percent", json!(salt.as_percent()))])
}

fn dried(case: &Case, loss: f64) -> (f64, f64, f64) {
    let loss = Loss::new(loss).unwrap();
    let salt = after_loss(Level::percent(case.number("salt_percent")).unwrap(), loss).unwrap();
    let moisture = moisture_after_loss(percent(case, "moisture_percent"), loss).unwrap();
    let phase = in_water_phase(salt, moisture).unwrap();
    (salt.as_percent(), moisture.percent(), phase.as_percent())
}

pub fn water_phase_dried(case: &Case) -> Answer {
    let (_, _, phase) = dried(case, case.number("loss_percent") / 100.0);
    Answer::from([("percent", json!(phase))])
}

pub fn dried_sausage(case: &Case) -> Answer {
    let (salt, moisture, phase) = dried(case, case.number("loss"));
    Answer::from([
        ("salt_percent", json!(salt)),
        ("moisture_percent", json!(moisture)),
        ("phase_percent", json!(phase)),
    ])
}

pub fn salt_after_loss(case: &Case) -> Answer {
    let salt = Level::percent(case.number("percent")).unwrap();
    let finished = after_loss(salt, Loss::new(case.number("loss")).unwrap()).unwrap();
    Answer::from([("percent", json!(finished.as_percent()))])
}

pub fn activity(case: &Case) -> Answer {
    let brine = brine_of_case(case);
    // Above 6 mol/kg the equation is refused, and the last row of the table is left.
    let tabled = || {
        let row = WATER_ACTIVITY.iter().find(|row| row.value.percent == brine.percent());
        row.map(|row| row.value.activity)
    };
    let activity = water_activity_of(brine).ok().or_else(tabled);
    Answer::from([("activity", json!(activity.unwrap()))])
}

pub fn osmotic(case: &Case) -> Answer {
    Answer::from([("phi", json!(osmotic_coefficient(case.number("molality")).unwrap()))])
}

pub fn humidity(case: &Case) -> Answer {
    let row = saturated_humidity(case.word("salt")).unwrap().value;
    let range = row.at(case.reading_at("celsius", Scale::Celsius)).unwrap();
    Answer::from([("percent", json!(f64::midpoint(range.low(), range.high())))])
}

pub fn saturated_salt(case: &Case) -> Answer {
    let row = saturated_activity(case.word("salt")).unwrap().value;
    let at: Reading = case.reading_at("celsius", Scale::Celsius);
    Answer::from([("activity", json!(row.at(at).unwrap()))])
}

pub fn tub(case: &Case) -> Answer {
    let tub = Tub {
        meat: case.mass("meat"),
        moisture: percent(case, "moisture_percent"),
        water: case.mass("water"),
    };
    let salt = case.mass("salt");
    Answer::from([
        ("phase_percent", json!(tub.water_phase_at_rest(salt).unwrap().as_percent())),
        ("in_meat_g", json!(tub.salt_in_meat(salt).unwrap().value * 1000.0)),
    ])
}

pub fn salt_on_meat(case: &Case) -> Answer {
    let meat = case.mass("meat");
    let percent = case.number("percent");
    let salt = match case.operation.as_str() {
        "salt_on_green" => salt_on_green(Level::percent(percent).unwrap(), meat),
        _ => salt_of_mix(Level::percent(percent).unwrap(), meat),
    };
    Answer::from([("grams", json!(salt.unwrap().value * 1000.0))])
}

pub fn pumped(case: &Case) -> Answer {
    let pump = Pump::new(case.number("pump")).unwrap();
    let level = in_pumped(brine_of_case(case), pump);
    Answer::from([("percent", json!(level.as_percent()))])
}
