use greenweight::authority::Authority;
use greenweight::fat::{
    COMPOSITION, Composition, CookingYield, KitchenMeasure, Lot, MEASURES, Named, Offer, Part,
    Wanted, added_water, blend, change_in_cooking, cheapest, moisture_to_protein, most_water,
    named, protein_fat_free, share_of_first, to_add,
};
use greenweight::finding::{Finding, Place};
use greenweight::range::Range;
use greenweight::units::{Mass, grams, kilograms, pounds};
use greenweight_references::References;
use serde_json::json;

use super::case::{Answer, Case, answer_of};

fn exactly(mass: Mass) -> Range<Mass> {
    Range::exactly(mass).unwrap()
}

fn point(fat: f64) -> Lot {
    Lot::analysed(fat, 0.0).unwrap()
}

fn middle(range: Range<f64>) -> f64 {
    f64::midpoint(range.low(), range.high())
}

fn in_pounds(mass: Mass) -> f64 {
    mass.value / pounds(1.0).value
}

fn share(case: &Case) -> f64 {
    share_of_first(case.number("first"), case.number("second"), case.number("target")).unwrap()
}

pub fn square(case: &Case) -> Answer {
    Answer::from([
        ("share_first_percent", json!(share(case) * 100.0)),
        ("share_second_percent", json!((1.0 - share(case)) * 100.0)),
    ])
}

pub fn square_batch(case: &Case) -> Answer {
    let (share, batch) = (share(case), case.number("batch_lb"));
    let cost = share * case.number("first_cost") + (1.0 - share) * case.number("second_cost");
    Answer::from([
        ("first_lb", json!(share * batch)),
        ("second_lb", json!((1.0 - share) * batch)),
        ("cost_a_lb", json!(cost)),
    ])
}

pub fn fat_of_blend(case: &Case) -> Answer {
    let part = |name: &str| Part {
        mass: exactly(pounds(case.number(&format!("{name}_lb")))),
        lot: point(case.number(name)),
    };
    let blend = blend(&[part("first"), part("second")]).unwrap();
    Answer::from([("percent", json!(middle(blend.fat)))])
}

pub fn fat_to_add(case: &Case) -> Answer {
    let mass = pounds(case.number("first_lb"));
    let (first, second) = (case.number("first"), case.number("second"));
    let added = to_add(mass, first, second, case.number("target")).unwrap();
    Answer::from([("lb", json!(in_pounds(added)))])
}

fn row(number: &str) -> Composition {
    COMPOSITION.iter().find(|row| row.value.number == number).unwrap().value
}

fn lot(number: &str) -> Lot {
    let row = row(number);
    let point = |value: f64| Range::exactly(value).unwrap();
    Lot { fat: point(row.fat), water: Some(point(row.water)), protein: Some(point(row.protein)) }
}

/// The share of fat tissue in a mixture of lean and fat is found from its fat.
pub fn lean_and_fat(case: &Case) -> Answer {
    let (lean, fat) = (case.word("lean_number"), case.word("fat_number"));
    let of_lean = share_of_first(row(lean).fat, row(fat).fat, case.number("mix_fat")).unwrap();
    let part = |number, share| Part { mass: exactly(kilograms(share)), lot: lot(number) };
    let blend = blend(&[part(lean, of_lean), part(fat, 1.0 - of_lean)]).unwrap();
    Answer::from([
        ("share_of_fat_tissue", json!(1.0 - of_lean)),
        ("water", json!(middle(blend.water.unwrap()))),
        ("protein", json!(middle(blend.protein.unwrap()))),
    ])
}

pub fn blend_of_rows(case: &Case) -> Answer {
    let part = |name: &str| Part {
        mass: exactly(grams(case.number(&format!("{name}_g")))),
        lot: lot(case.word(&format!("{name}_number"))),
    };
    let blend = blend(&[part("first"), part("second")]).unwrap();
    Answer::from([
        ("fat", json!(middle(blend.fat))),
        ("water", json!(middle(blend.water.unwrap()))),
        ("protein", json!(middle(blend.protein.unwrap()))),
    ])
}

fn offer(fat: f64, cost: f64, least: f64, most: f64) -> Offer {
    Offer { fat, protein: None, cost, least: pounds(least), most: pounds(most) }
}

/// The lots of the problem that pass its rules on age and on the cold of the store.
pub fn cheapest_sausage(case: &Case) -> Answer {
    let batch = case.number("batch_lb");
    let kilogram = 1.0 / pounds(1.0).value;
    let lots = [(70.0, 1.56), (23.0, 1.78), (60.0, 1.69), (50.0, 1.89), (20.0, 2.45)];
    let offers = lots.map(|(fat, cost)| offer(fat, cost * kilogram, 0.0, batch));
    let fat = case.number("fat");
    let wanted =
        Wanted { batch: exactly(pounds(batch)), fat: Range::exactly(fat).unwrap(), protein: None };
    let blend = cheapest(&offers, &wanted).unwrap();
    Answer::from([
        ("cost_a_lb", json!(blend.cost / batch)),
        ("trimmings_lb", json!(in_pounds(blend.masses[0]))),
        ("shoulder_lb", json!(in_pounds(blend.masses[1]))),
    ])
}

/// Beef of 75 percent lean and pork of 60 to at least 70 of lean.
pub fn cheapest_loaf(case: &Case) -> Answer {
    let kilogram = 1.0 / pounds(1.0).value;
    let cost = |name| case.number(name) * kilogram;
    let offers = [
        offer(25.0, cost("beef_cost"), 0.0, case.number("beef_most_lb")),
        offer(40.0, cost("pork_cost"), case.number("pork_least_lb"), 10_000.0),
    ];
    let wanted = Wanted {
        batch: Range::new(pounds(case.number("batch_least_lb")), pounds(10_000.0)).unwrap(),
        fat: Range::new(0.0, 30.0).unwrap(),
        protein: None,
    };
    let blend = cheapest(&offers, &wanted).unwrap();
    Answer::from([
        ("beef_lb", json!(in_pounds(blend.masses[0]))),
        ("pork_lb", json!(in_pounds(blend.masses[1]))),
        ("cost", json!(blend.cost)),
    ])
}

pub fn water_added(case: &Case) -> Answer {
    let water = added_water(case.number("moisture"), case.number("protein"), 0.0).unwrap();
    Answer::from([("added_water", json!(water))])
}

fn product<'a>(sold_as: &'a [&'static str]) -> Named<'a> {
    Named {
        sold_as,
        blend: None,
        changed: false,
        fat: None,
        moisture: None,
        protein: None,
        other_protein: 0.0,
        salt: None,
        water_activity: None,
        cured: Some(false),
        water: Range::exactly(kilograms(0.0)).ok(),
        all: Range::exactly(kilograms(1.0)).ok(),
        green: None,
        finished: None,
        place: Place::default(),
    }
}

fn findings(product: &Named<'_>, rule: &str) -> Vec<Finding> {
    let mut findings = Vec::new();
    named(product, Authority::UsFsis, &mut |finding| findings.push(finding));
    findings.retain(|finding| finding.rule.id == rule);
    findings
}

pub fn frankfurter(case: &Case) -> Answer {
    let product = Named {
        fat: case.maybe("fat"),
        moisture: case.maybe("moisture"),
        protein: case.maybe("protein"),
        ..product(&["us/frankfurter-class"])
    };
    let verdict = |rule| answer_of(&findings(&product, rule))["verdict"].clone();
    Answer::from([("fat_verdict", verdict("fat/name")), ("water_verdict", verdict("fat/water"))])
}

/// The key of a name, as the tables hold it.
fn sold_as(case: &Case) -> [&'static str; 1] {
    [greenweight::fat::name_keys().find(|key| *key == case.word("sold_as")).unwrap()]
}

pub fn named_fat(case: &Case) -> Answer {
    let name = sold_as(case);
    answer_of(&findings(&Named { fat: case.maybe("fat"), ..product(&name) }, "fat/name"))
}

pub fn weight_gain(case: &Case) -> Answer {
    let name = sold_as(case);
    let product = Named {
        green: Some(exactly(case.mass("green"))),
        finished: Some(exactly(case.mass("finished"))),
        ..product(&name)
    };
    answer_of(&findings(&product, "fat/weight-gain"))
}

pub fn ratio(case: &Case) -> Answer {
    let ratio = moisture_to_protein(case.number("moisture"), case.number("protein")).unwrap();
    Answer::from([("ratio", json!(ratio))])
}

pub fn water_at_most(case: &Case) -> Answer {
    let most = most_water(case.number("percent"), case.mass("rest")).unwrap();
    Answer::from([("kg", json!(most.value))])
}

/// The name is that of the highest row of the chart that is reached.
pub fn pff(case: &Case) -> Answer {
    let percent = protein_fat_free(case.number("protein"), case.number("fat")).unwrap();
    let references = References::read();
    let rows = references.table("fat/protein-fat-free").rows.iter();
    let ham: Vec<_> = rows.filter(|row| row.words("product") == "cooked ham, loin").collect();
    let reached = ham
        .iter()
        .filter(|row| row.maybe_number("min_pff_percent").is_some_and(|least| percent >= least))
        .max_by(|a, b| a.number("min_pff_percent").total_cmp(&b.number("min_pff_percent")));
    let name = reached.map_or_else(
        || ham.iter().find(|row| !row.has("min_pff_percent")).unwrap().words("name"),
        |row| row.words("name"),
    );
    Answer::from([("percent", json!(percent)), ("name", json!(name))])
}

pub fn cooked(case: &Case) -> Answer {
    let row = CookingYield {
        description: "",
        number: "",
        method: "",
        percent: case.number("yield_percent"),
        lowest: None,
        highest: None,
        water_change: case.maybe("water_change"),
        fat_change: case.maybe("fat_change"),
    };
    // The row of the case is one of the table.
    assert!(greenweight::fat::COOKING_YIELD.iter().any(|other| {
        other.value.percent == row.percent && other.value.water_change == row.water_change
    }));
    let cooked = row.of(case.mass("raw")).unwrap();
    let in_grams = |mass: Mass| json!(mass.value * 1000.0);
    Answer::from([
        ("cooked_g", in_grams(cooked.weight)),
        ("water_lost_g", in_grams(cooked.water_lost.unwrap())),
        ("fat_lost_g", in_grams(cooked.fat_lost.unwrap())),
        ("unexplained_g", in_grams(cooked.unexplained.unwrap())),
        ("balances", json!(row.balances())),
    ])
}

pub fn change(case: &Case) -> Answer {
    let (raw, cooked) = (case.number("raw"), case.number("cooked"));
    let change = change_in_cooking(raw, cooked, case.number("yield_percent")).unwrap();
    Answer::from([("change", json!(change))])
}

fn measure_row(number: &str, measure: &str) -> KitchenMeasure {
    let mut rows = MEASURES.iter().map(|row| row.value);
    rows.find(|row| row.number == number && row.measure == measure)
        .unwrap_or_else(|| panic!("no row for {number}, {measure}"))
}

pub fn measure(case: &Case) -> Answer {
    let row = measure_row(case.word("number"), case.word("measure"));
    Answer::from([("grams", json!(row.grams / row.amount * case.number("amount")))])
}

pub fn two_measures(case: &Case) -> Answer {
    let of = |name| measure_row(case.word("number"), case.word(name));
    let (first, second) = (of("first"), of("second"));
    Answer::from([
        ("first_grams", json!(first.grams / first.amount * case.number("times"))),
        ("second_grams", json!(second.grams / second.amount)),
    ])
}

pub fn spooned(case: &Case) -> Answer {
    let density = case.number("grams_per_ml");
    let ml = Range::new(case.number("ml_low"), case.number("ml_high")).unwrap();
    let grams = ml.times::<f64, f64>(Range::exactly(density).unwrap()).unwrap();
    Answer::from([("low_g", json!(grams.low())), ("high_g", json!(grams.high()))])
}

pub fn label(case: &Case) -> Answer {
    let lot = Lot::labelled(case.number("label")).unwrap();
    Answer::from([("contains", json!(lot.fat.contains(case.number("measured"))))])
}

/// By the lines of the table, which are not in the library: the rows they were drawn through
/// are.
pub fn regression(case: &Case) -> Answer {
    let references = References::read();
    let line = |nutrient: &str| {
        let mut rows = references.table("fat/regression").rows.iter();
        let row = rows
            .find(|row| row.words("product").contains("beef") && row.words("nutrient") == nutrient)
            .unwrap();
        json!(row.number("a") + row.number("b") * case.number("fat"))
    };
    Answer::from([("water", line("water")), ("protein", line("protein")), ("ash", line("ash"))])
}

pub fn proximates(case: &Case) -> Answer {
    let row = row(case.word("number"));
    Answer::from([("sum", json!(row.water + row.protein + row.fat + row.ash + row.carbohydrate))])
}

/// The fat of broiled patties of ground beef that had so much fat raw.
pub fn cooked_fat(case: &Case) -> Answer {
    let lean = 100.0 - case.number("raw_fat");
    let words = format!("ground {lean}% patty broiled");
    let row = greenweight::fat::find_composition(&words).next().unwrap();
    Answer::from([("fat", json!(row.value.fat))])
}

pub fn salt_share(case: &Case) -> Answer {
    let salt = case.number("grams_a_cup") * case.number("cups");
    let share = 100.0 * (grams(salt) / case.mass("meat")).value;
    Answer::from([("grams", json!(salt)), ("percent", json!(share))])
}
