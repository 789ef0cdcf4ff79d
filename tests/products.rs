//! Cures held against authorities that go by product: how each counts, what it notes, what it
//! misses and what would mend it.

use greenweight::authority::Authority;
use greenweight::cite::Date;
use greenweight::cure::{
    Addition, Additive, Analysis, Batch, Cure, GreenWeight, Level, Method, NoDose, Pickle,
    PickleWeight, Premix, Pump, Weighed, check, dose,
};
use greenweight::finding::{Finding, Mend, Place, Verdict};
use greenweight::food::Food;
use greenweight::range::Range;
use greenweight::units::{Mass, grams, kilograms};
use rstest::rstest;

const PLACE: Place = Place { start: 0, end: 0 };

/// Percent of sodium nitrite, potassium nitrite, sodium nitrate and potassium nitrate.
fn premix([na2, k2, na3, k3]: [f64; 4]) -> Premix {
    let percent = |percent| Level::percent(percent).unwrap();
    Premix::new()
        .with_sodium_nitrite(Level::percent(na2).unwrap())
        .and_then(|premix| premix.with_potassium_nitrite(Level::percent(k2).unwrap()))
        .and_then(|premix| premix.with_sodium_nitrate(Level::percent(na3).unwrap()))
        .and_then(|premix| premix.with_potassium_nitrate(percent(k3)))
        .unwrap()
}

fn of_premix(strength: Option<Premix>, mass: f64, scale: f64) -> [Cure; 1] {
    let mass = Weighed { mass: grams(mass), scale: Some(grams(scale)) };
    [Cure { mass: Some(mass), strength, place: PLACE }]
}

fn exactly(kg: f64) -> Option<Range<Mass>> {
    Range::exactly(kilograms(kg)).ok()
}

/// Eight kilograms of ground meat in ten of product, weighed on a scale that plays no part.
fn ground<'a>(products: &'a [&'static str], cures: &'a [Cure]) -> Batch<'a> {
    Batch {
        scaled: true,
        cured_as: products,
        product: exactly(10.0),
        method: Some(Method::Ground),
        green: Range::exactly(GreenWeight::new(kilograms(8.0)).unwrap()).ok(),
        cures,
        ..Batch::of(Food::GroundMeat)
    }
}

fn findings(batch: &Batch<'_>, authority: Authority, day: Option<Date>) -> Vec<Finding> {
    let mut findings = Vec::new();
    check(batch, authority, day, &mut |finding| findings.push(finding));
    findings
}

fn of<'a>(findings: &'a [Finding], rule: &str) -> Vec<&'a Finding> {
    findings.iter().filter(|finding| finding.rule.id == rule).collect()
}

fn nominal(finding: &Finding) -> f64 {
    match finding.nominal.unwrap() {
        greenweight::finding::Measure::Level { mg_per_kg, .. } => mg_per_kg,
        other => panic!("{other:?}"),
    }
}

fn day(year: u16, month: u8, day: u8) -> Option<Date> {
    Date::new(year, month, day).ok()
}

const NEW: Option<fn() -> Option<Date>> = Some(|| day(2026, 1, 1));
const OLD: Option<fn() -> Option<Date>> = Some(|| day(2025, 1, 1));

// A hundred grams in ten kilograms: one percent of the premix is 100 mg/kg. Ratios of the
// molar masses 46.005, 62.004 (ions), 68.995, 85.103 (nitrites), 84.994, 101.102 (nitrates).
#[rstest]
#[case::nitrite_ion(Authority::EuropeanUnion, "eu/heat-treated", NEW, [1.0, 1.0, 0.0, 0.0], "cure/ingoing-nitrite", 100.0 * (46.005 / 68.995 + 46.005 / 85.103))]
#[case::sodium_nitrite(Authority::GreatBritain, "gb/meat-in-general", NEW, [1.0, 1.0, 0.0, 0.0], "cure/ingoing-nitrite", 100.0 * (1.0 + 68.995 / 85.103))]
#[case::nitrate_ion(Authority::EuropeanUnion, "eu/not-heat-treated", NEW, [0.0, 0.0, 0.5, 0.5], "cure/ingoing-nitrate", 50.0 * (62.004 / 84.994 + 62.004 / 101.102))]
#[case::sodium_nitrate(Authority::EuropeanUnion, "eu/not-heat-treated", OLD, [0.0, 0.0, 0.5, 0.5], "cure/ingoing-nitrate", 50.0 * (1.0 + 84.994 / 101.102))]
fn a_row_counts_both_salts_as_it_says(
    #[case] authority: Authority,
    #[case] product: &'static str,
    #[case] day: Option<fn() -> Option<Date>>,
    #[case] strength: [f64; 4],
    #[case] rule: &str,
    #[case] expected: f64,
) {
    let (products, cures) = ([product], of_premix(Some(premix(strength)), 100.0, 1e-6));
    let found = findings(&ground(&products, &cures), authority, day.and_then(|day| day()));
    let level = nominal(of(&found, rule)[0]);
    assert!((level - expected).abs() < 1e-6, "{level}, {expected}");
}

#[test]
fn a_row_for_both_agents_adds_them_as_weighed_and_says_what_it_does_not() {
    // 0.5 % of each salt of nitrite and nitrate is 2 %: 160 to 200 mg/kg, the divisor being
    // somewhere between the meat and the product.
    let (products, cures) =
        (["ca/cured"], of_premix(Some(premix([0.4, 0.4, 0.4, 0.4])), 100.0, 1e-6));
    let found = findings(&ground(&products, &cures), Authority::Canada, None);
    let nitrite = of(&found, "cure/ingoing-nitrite");
    assert_eq!(nitrite.len(), 2, "a least and a most");
    let range = nitrite[0].found.unwrap();
    let ends = [range.low(), range.high()].map(|end| match end {
        greenweight::finding::Measure::Level { mg_per_kg, .. } => mg_per_kg,
        other => panic!("{other:?}"),
    });
    assert!((ends[0] - 160.0).abs() < 1e-4 && (ends[1] - 200.0).abs() < 1e-4, "{ends:?}");
    // Both are listed together: nothing is said to lack a row.
    assert!(of(&found, "cure/ingoing-nitrate").is_empty());
    // Without the meat the divisor is not known.
    let no_meat = Batch { green: None, ..ground(&products, &cures) };
    let found = findings(&no_meat, Authority::Canada, None);
    assert!(of(&found, "cure/ingoing-nitrite").iter().all(|f| f.verdict == Verdict::Unproven));
}

#[test]
fn an_agent_without_a_row_is_unproven_and_one_that_is_absent_is_not_mentioned() {
    let products = ["eu/heat-treated"];
    let cures = of_premix(Some(premix([0.5, 0.0, 0.5, 0.0])), 100.0, 1e-6);
    let found = findings(&ground(&products, &cures), Authority::EuropeanUnion, day(2026, 1, 1));
    assert_eq!(of(&found, "cure/ingoing-nitrate")[0].verdict, Verdict::Unproven);
    let products = ["eu/not-heat-treated"];
    let cures = of_premix(Some(premix([0.5, 0.0, 0.0, 0.0])), 100.0, 1e-6);
    let found = findings(&ground(&products, &cures), Authority::EuropeanUnion, day(2026, 1, 1));
    assert!(of(&found, "cure/ingoing-nitrate").is_empty());
    assert_eq!(of(&found, "cure/ingoing-nitrite").len(), 1);
    // Of a premix whose strength is not said, either may be in it.
    let cures = of_premix(None, 100.0, 1e-6);
    let found = findings(&ground(&products, &cures), Authority::EuropeanUnion, day(2026, 1, 1));
    for rule in ["cure/ingoing-nitrite", "cure/ingoing-nitrate"] {
        assert_eq!(of(&found, rule)[0].verdict, Verdict::Unproven, "{rule}");
        assert!(of(&found, rule)[0].mend.is_none());
    }
}

#[rstest]
#[case::both_salts_as_the_ion(Authority::EuropeanUnion, "eu/heat-treated", [0.5, 0.5, 0.0, 0.0], true)]
#[case::sodium_alone(Authority::EuropeanUnion, "eu/heat-treated", [0.5, 0.0, 0.0, 0.0], false)]
#[case::by_weight(Authority::Canada, "ca/cured", [0.5, 0.5, 0.0, 0.0], false)]
#[case::potassium_nitrate(Authority::EuropeanUnion, "eu/not-heat-treated", [0.0, 0.0, 0.5, 0.5], true)]
#[case::sodium_nitrate(Authority::EuropeanUnion, "eu/not-heat-treated", [0.0, 0.0, 0.5, 0.0], false)]
fn a_potassium_salt_under_a_figure_for_something_else_is_noted(
    #[case] authority: Authority,
    #[case] product: &'static str,
    #[case] strength: [f64; 4],
    #[case] noted: bool,
) {
    let (products, cures) = ([product], of_premix(Some(premix(strength)), 100.0, 1e-6));
    let found = findings(&ground(&products, &cures), authority, day(2025, 1, 1));
    let ingoing = found.iter().filter(|f| f.rule.id.starts_with("cure/ingoing"));
    let potassium = |f: &Finding| f.note.is_some_and(|note| note.contains("potassium"));
    let of_a_row: Vec<_> = ingoing.filter(|f| f.rows[0].is_some()).collect();
    assert!(!of_a_row.is_empty());
    assert!(of_a_row.iter().all(|f| potassium(f) == noted), "{of_a_row:#?}");
}

#[test]
fn a_figure_to_look_into_is_noted_and_is_no_limit() {
    let products = ["eu/not-heat-treated"];
    let cures = of_premix(Some(premix([0.0, 0.0, 1.0, 0.0])), 100.0, 1e-6);
    let found = findings(&ground(&products, &cures), Authority::EuropeanUnion, day(2026, 1, 1));
    let nitrate = of(&found, "cure/ingoing-nitrate")[0];
    assert_eq!(nitrate.verdict, Verdict::Meets);
    assert!(nitrate.note.unwrap().contains("not a limit"));
}

// 80 of the ion is 119.98 of sodium nitrite. Of a premix of 0.5 % in 10 kg less 400 g of it:
// m 5000 / (9600 + m) = 119.98, so m = 236.03 g.
#[rstest]
#[case::a_fine_scale(0.1, Some(Mend::UseAtMost(grams(235.9))))]
#[case::half_a_kilo(500.0, None)]
fn too_much_of_a_premix_is_mended_to_what_the_product_can_take(
    #[case] scale: f64,
    #[case] mend: Option<Mend>,
) {
    let products = ["eu/heat-treated"];
    let cures = of_premix(Some(premix([0.5, 0.0, 0.0, 0.0])), 400.0, scale);
    let batch = ground(&products, &cures);
    let found = findings(&batch, Authority::EuropeanUnion, day(2026, 1, 1));
    let finding = of(&found, "cure/ingoing-nitrite")[0];
    match (finding.mend, mend) {
        (Some(Mend::UseAtMost(found)), Some(Mend::UseAtMost(expected))) => {
            assert!((found - expected).value.abs() < 1e-4, "{found:?}");
        }
        // Three halves of a division must fit under 236.03 g.
        (Some(Mend::FinerScale(division)), None) => {
            assert!((division.value - 0.23603 / 1.5).abs() < 1e-4, "{division:?}");
        }
        (found, expected) => panic!("{found:?}, {expected:?}"),
    }
    // What meets its limit needs no mend.
    let cures = of_premix(Some(premix([0.5, 0.0, 0.0, 0.0])), 100.0, 0.1);
    let found = findings(&ground(&products, &cures), Authority::EuropeanUnion, day(2026, 1, 1));
    assert_eq!(of(&found, "cure/ingoing-nitrite")[0].mend, None);
}

#[rstest]
#[case(Authority::EuropeanUnion, "eu/")]
#[case(Authority::GreatBritain, "gb/")]
#[case(Authority::Denmark, "dk/")]
#[case(Authority::Canada, "ca/")]
#[case(Authority::Codex, "codex/")]
#[case(Authority::AustraliaNewZealand, "anz/")]
#[case(Authority::Japan, "jp/")]
fn a_product_that_is_not_named_is_asked_for_with_one_of_that_authority(
    #[case] authority: Authority,
    #[case] key: &str,
) {
    let cures = of_premix(Some(premix([0.5, 0.0, 0.0, 0.0])), 100.0, 0.1);
    let found = findings(&ground(&[], &cures), authority, None);
    assert_eq!(found.len(), 1);
    let say = found[0].missing.unwrap().say;
    assert!(say.contains(key), "{say}");
    // The product it names is one of its table.
    let named = say.split('"').nth(1).unwrap();
    assert!(greenweight::cure::product_rows(authority, named, None).next().is_some(), "{named}");
}

#[test]
fn the_rules_for_fish_say_nothing_of_meat_unless_a_home_cure_is_named() {
    let cures = of_premix(Some(premix([0.5, 0.0, 0.0, 0.0])), 100.0, 0.1);
    let meat = ground(&[], &cures);
    assert!(!greenweight::cure::answers(&meat, Authority::UsFda));
    assert!(findings(&meat, Authority::UsFda, None).is_empty());
    let other = ground(&["eu/heat-treated"], &cures);
    assert!(!greenweight::cure::answers(&other, Authority::UsFda));
    let home = ground(&["fda/home-cure"], &cures);
    assert!(greenweight::cure::answers(&home, Authority::UsFda));
    let fish = Batch { food: Food::Fish, ..meat };
    assert!(greenweight::cure::answers(&fish, Authority::UsFda));
}

/// Ten kilograms of meat in five of pickle with 100 g of one percent: 200 mg/kg of pickle.
fn pickled<'a>(
    products: &'a [&'static str],
    cures: &'a [Cure],
    method: Method,
    taken_up: Option<f64>,
    equilibrium: Option<bool>,
) -> Batch<'a> {
    let exact = |u: f64| Range::exactly(Pump::new(u).unwrap()).unwrap();
    Batch {
        scaled: true,
        cured_as: products,
        product: exactly(10.0),
        method: Some(method),
        green: Range::exactly(GreenWeight::new(kilograms(10.0)).unwrap()).ok(),
        cures,
        pickle: Some(Pickle {
            weight: Range::exactly(PickleWeight::new(kilograms(5.0)).unwrap()).unwrap(),
            taken_up: taken_up.map(exact),
            equilibrium,
        }),
        ..Batch::of(Food::WholeMeat)
    }
}

// A tenth of 200 is 20 mg/kg of meat; the pumped meat weighs a tenth more. At rest 1 g of the
// salt is in fifteen kilograms.
#[rstest]
#[case::pumped(Method::Pumped, Some(0.1), None, 20.0, 20.0 / 1.1)]
#[case::picked_up(Method::Immersion, Some(0.05), Some(false), 10.0, 10.0 / 1.05)]
#[case::at_rest(Method::Immersion, None, Some(true), 1000.0 / 15.0, 1000.0 / 15.0)]
fn of_a_pickle_only_what_is_taken_up_counts(
    #[case] method: Method,
    #[case] taken_up: Option<f64>,
    #[case] equilibrium: Option<bool>,
    #[case] on_meat: f64,
    #[case] on_product: f64,
) {
    let cures = of_premix(Some(premix([1.0, 0.0, 0.0, 0.0])), 100.0, 1e-6);
    let level_of = |authority, product| {
        let products = [product];
        let batch = pickled(&products, &cures, method, taken_up, equilibrium);
        nominal(of(&findings(&batch, authority, None), "cure/ingoing-nitrite")[0])
    };
    let product = level_of(Authority::GreatBritain, "gb/meat-in-general");
    assert!((product - on_product).abs() < 1e-6, "{product}");
    // Canada does not say over what: the meat alone gives the higher level.
    let meat = level_of(Authority::Canada, "ca/cured");
    assert!((meat - on_meat).abs() < 1e-6, "{meat}");
}

#[rstest]
#[case::no_pump(Method::Pumped, None, None)]
#[case::more_than_there_is(Method::Pumped, Some(0.6), None)]
#[case::no_pick_up(Method::Immersion, None, Some(false))]
fn a_pickle_of_which_it_is_not_known_how_much_is_taken_up_is_unproven(
    #[case] method: Method,
    #[case] taken_up: Option<f64>,
    #[case] equilibrium: Option<bool>,
) {
    let cures = of_premix(Some(premix([1.0, 0.0, 0.0, 0.0])), 100.0, 1e-6);
    for (authority, product) in
        [(Authority::GreatBritain, "gb/meat-in-general"), (Authority::Canada, "ca/cured")]
    {
        let products = [product];
        let batch = pickled(&products, &cures, method, taken_up, equilibrium);
        let nameless = Batch { method: None, ..batch };
        for batch in [batch, nameless] {
            let found = findings(&batch, authority, None);
            let nitrite = of(&found, "cure/ingoing-nitrite");
            assert!(nitrite.iter().all(|f| f.verdict == Verdict::Unproven && f.missing.is_some()));
        }
    }
}

#[test]
fn too_much_in_a_pickle_is_mended_by_what_the_product_takes_up() {
    let cures = of_premix(Some(premix([5.0, 0.0, 0.0, 0.0])), 200.0, 0.1);
    let products = ["gb/meat-in-general"];
    let batch = pickled(&products, &cures, Method::Pumped, Some(0.1), None);
    let found = findings(&batch, Authority::GreatBritain, None);
    let finding = of(&found, "cure/ingoing-nitrite")[0];
    assert_eq!(finding.verdict, Verdict::Breaks);
    let Some(Mend::UseAtMost(most)) = finding.mend else { panic!("{finding:?}") };
    let lighter = Pickle {
        weight: Range::exactly(PickleWeight::new(kilograms(4.8) + most).unwrap()).unwrap(),
        ..batch.pickle.unwrap()
    };
    let cures = of_premix(Some(premix([5.0, 0.0, 0.0, 0.0])), most.value * 1000.0, 0.1);
    let mended = Batch { cures: &cures, pickle: Some(lighter), ..batch };
    let found = findings(&mended, Authority::GreatBritain, None);
    assert_eq!(of(&found, "cure/ingoing-nitrite")[0].verdict, Verdict::Meets);
    // And the dose for the same pickle is no more than what is proven.
    let dose = dose(&batch, Authority::GreatBritain, None).unwrap();
    assert!(dose.most.value < 0.1652, "{dose:?}");
}

/// A batch that is seven kilograms when it is done.
fn finished<'a>(products: &'a [&'static str], cures: &'a [Cure]) -> Batch<'a> {
    Batch { finished: exactly(7.0), ..ground(products, cures) }
}

// At most 200 mg/kg of nitrite and 500 of nitrate in 7 kg: 1.4 g and 3.5 g of the pure salts, 28 g of a premix of 5 %.
#[rstest]
#[case::nitrite_under([5.0, 0.0, 0.0, 0.0], 27.9, "cure/ingoing-nitrite", Verdict::Meets)]
#[case::nitrite_over([5.0, 0.0, 0.0, 0.0], 28.1, "cure/ingoing-nitrite", Verdict::Unproven)]
#[case::nitrate_under([0.0, 0.0, 100.0, 0.0], 3.49, "cure/ingoing-nitrate", Verdict::Meets)]
#[case::nitrate_over([0.0, 0.0, 100.0, 0.0], 3.51, "cure/ingoing-nitrate", Verdict::Unproven)]
#[case::potassium([0.0, 0.0, 0.0, 100.0], 0.1, "cure/ingoing-nitrate", Verdict::Unproven)]
fn a_home_cure_is_proven_by_all_that_went_in(
    #[case] strength: [f64; 4],
    #[case] mass: f64,
    #[case] rule: &str,
    #[case] verdict: Verdict,
) {
    let (products, cures) = (["fda/home-cure"], of_premix(Some(premix(strength)), mass, 0.001));
    let found = findings(&finished(&products, &cures), Authority::UsFda, None);
    let finding = of(&found, rule)[0];
    assert_eq!(finding.verdict, verdict);
    match (verdict, strength[3] > 0.0) {
        (Verdict::Meets, _) => assert_eq!((finding.mend, finding.missing), (None, None)),
        // The most that is proven, half a step of the scale under it.
        (_, false) => {
            let Some(Mend::UseAtMost(most)) = finding.mend else { panic!("{finding:?}") };
            let expected = if strength[0] > 0.0 { 27.999 } else { 3.499 };
            assert!((most.value * 1000.0 - expected).abs() < 1e-9, "{most:?}");
            assert!(finding.missing.unwrap().what.contains("analysis"));
        }
        (_, true) => assert!(finding.missing.unwrap().what.contains("potassium")),
    }
}

#[test]
fn an_unknown_strength_in_a_home_cure_has_no_mend_and_is_asked_for() {
    let (products, cures) = (["fda/home-cure"], of_premix(None, 1.0, 0.001));
    let found = findings(&finished(&products, &cures), Authority::UsFda, None);
    let finding = of(&found, "cure/ingoing-nitrite")[0];
    assert_eq!((finding.verdict, finding.mend), (Verdict::Unproven, None));
    assert!(finding.missing.unwrap().what.contains("strength"));
    let products = ["fda/other-fish"];
    let found = findings(&finished(&products, &cures), Authority::UsFda, None);
    assert!(found[0].missing.unwrap().what.contains("strength"));
}

#[rstest]
// Residues counted as the sodium salt before 9 October 2025, as the ion after: 250 of sodium
// nitrate is 182.4 of the ion, and then 150 of the ion.
#[case::old_under(OLD, 180.0, Verdict::Meets, false)]
#[case::old_over(OLD, 185.0, Verdict::Breaks, false)]
#[case::new_under(NEW, 150.0, Verdict::Meets, true)]
#[case::new_over(NEW, 151.0, Verdict::Breaks, true)]
fn a_residue_is_counted_and_dated_as_its_row_is(
    #[case] day: Option<fn() -> Option<Date>>,
    #[case] ion: f64,
    #[case] verdict: Verdict,
    #[case] through_shelf_life: bool,
) {
    let (products, cures) =
        (["eu/wiltshire-bacon"], of_premix(Some(premix([0.0, 0.0, 1.0, 0.0])), 100.0, 0.1));
    let analysis = Analysis { nitrite: None, nitrate: Level::new(ion).ok() };
    let batch = Batch { analysis, ..ground(&products, &cures) };
    let found = findings(&batch, Authority::EuropeanUnion, day.and_then(|day| day()));
    let residue = of(&found, "cure/residue");
    let nitrate = residue.iter().find(|f| f.missing.is_none()).unwrap();
    assert_eq!(nitrate.verdict, verdict);
    assert_eq!(nitrate.note.is_some_and(|note| note.contains("shelf life")), through_shelf_life);
}

#[test]
fn codex_and_japan_ask_for_the_ion() {
    let cures = of_premix(Some(premix([0.5, 0.0, 0.0, 0.0])), 100.0, 0.1);
    for (authority, product, under, over) in
        [(Authority::Codex, "codex/083", 79.0, 81.0), (Authority::Japan, "jp/meat", 69.0, 71.0)]
    {
        let verdict = |ion: f64| {
            let products = [product];
            let analysis = Analysis { nitrite: Level::new(ion).ok(), nitrate: None };
            let batch = Batch { analysis, ..ground(&products, &cures) };
            let found = findings(&batch, authority, None);
            of(&found, "cure/residue")[0].verdict
        };
        assert_eq!((verdict(under), verdict(over)), (Verdict::Meets, Verdict::Breaks));
    }
}

// The most of a premix of one percent under the strictest row, to 10 kg without it:
// m s / (10 + m) = ceiling; on the meat alone m s / 8 = ceiling.
#[rstest]
#[case::nitrite_ion(Authority::EuropeanUnion, "eu/heat-treated", NEW, [1.0, 0.0, 0.0, 0.0], 80.0, 10_000.0 * 46.005 / 68.995, 10.0)]
#[case::sodium_nitrite(Authority::EuropeanUnion, "eu/heat-treated", OLD, [1.0, 0.0, 0.0, 0.0], 150.0, 10_000.0, 10.0)]
#[case::nitrate_ion(Authority::EuropeanUnion, "eu/not-heat-treated", NEW, [0.0, 0.0, 1.0, 0.0], 90.0, 10_000.0 * 62.004 / 84.994, 10.0)]
#[case::sodium_nitrate(Authority::EuropeanUnion, "eu/not-heat-treated", OLD, [0.0, 0.0, 1.0, 0.0], 150.0, 10_000.0, 10.0)]
// Canada does not say over what: the meat alone, 8 kg, gives the smaller amount.
#[case::nitrite_by_weight(Authority::Canada, "ca/side-bacon", NEW, [1.0, 0.0, 0.0, 0.0], 120.0, 10_000.0, 8.0)]
#[case::nitrate_by_weight(Authority::Canada, "ca/slow-cure", NEW, [0.0, 0.0, 1.0, 0.0], 200.0, 10_000.0, 8.0)]
#[case::both_by_weight(Authority::Canada, "ca/cured", NEW, [0.5, 0.0, 0.5, 0.0], 200.0, 10_000.0, 8.0)]
fn the_dose_is_counted_as_the_row_counts(
    #[case] authority: Authority,
    #[case] product: &'static str,
    #[case] day: Option<fn() -> Option<Date>>,
    #[case] strength: [f64; 4],
    #[case] ceiling: f64,
    #[case] counted: f64,
    #[case] rest: f64,
) {
    let (products, cures) = ([product], of_premix(Some(premix(strength)), 1.0, 0.1));
    let dose = dose(&ground(&products, &cures), authority, day.and_then(|day| day())).unwrap();
    let on_meat = authority == Authority::Canada;
    let expected = ceiling * rest / (counted - if on_meat { 0.0 } else { ceiling });
    let most = dose.most.value;
    assert!((most - expected).abs() < 1e-9, "{most}, {expected}");
    assert!(counted * most / (rest + if on_meat { 0.0 } else { most }) <= ceiling);
}

#[rstest]
#[case::stricter_first(["ca/side-bacon", "ca/cured"])]
#[case::stricter_last(["ca/cured", "ca/side-bacon"])]
fn the_strictest_row_gives_the_dose_whichever_stands_first(#[case] products: [&'static str; 2]) {
    let cures = of_premix(Some(premix([1.0, 0.0, 0.0, 0.0])), 1.0, 0.1);
    let dose = dose(&ground(&products, &cures), Authority::Canada, None).unwrap();
    let expected = 120.0 * 8.0 / 10_000.0;
    assert!((dose.most.value - expected).abs() < 1e-9, "{}", dose.most.value);
}

#[test]
fn a_row_that_counts_on_the_meat_gives_no_dose_where_the_meat_is_not_known() {
    let (products, cures) = (["ca/cured"], of_premix(Some(premix([1.0, 0.0, 0.0, 0.0])), 1.0, 0.1));
    let batch = Batch { green: None, ..ground(&products, &cures) };
    assert!(matches!(dose(&batch, Authority::Canada, None), Err(NoDose::NoRow)));
}

#[test]
fn a_product_of_another_authority_names_none_of_this_one() {
    let (products, cures) =
        (["eu/heat-treated"], of_premix(Some(premix([1.0, 0.0, 0.0, 0.0])), 1.0, 0.1));
    let found = findings(&ground(&products, &cures), Authority::Canada, None);
    let nitrite = of(&found, "cure/ingoing-nitrite");
    assert!(nitrite.iter().all(|finding| finding.verdict == Verdict::Unproven));
    assert!(nitrite[0].missing.unwrap().say.contains("ca/cured"));
}

#[test]
fn a_cheese_without_its_milk_asks_for_the_milk() {
    let (products, cures) =
        (["eu/ripened-cheese"], of_premix(Some(premix([0.0, 0.0, 10.0, 0.0])), 1.0, 0.1));
    let batch = Batch { food: Food::Cheese, green: None, milk: None, ..ground(&products, &cures) };
    let found = findings(&batch, Authority::EuropeanUnion, None);
    let asked = of(&found, "cure/ingoing-nitrate")[0].missing.unwrap();
    assert!(asked.what.contains("milk"), "{asked:?}");
}

// 3/4 oz of acids and 7/8 oz of their salts to 100 lb: 468.75 and 546.875 mg/kg. Of both,
// 500 mg/kg may be either.
#[test]
fn acids_and_salts_between_their_limits_are_unproven() {
    let cures = of_premix(Some(premix([6.25, 0.0, 0.0, 0.0])), 16.0, 0.1);
    let additions = [
        added(Additive::AscorbicAcid, 2.0, Some(0.001)),
        added(Additive::SodiumErythorbate, 2.0, Some(0.001)),
    ];
    let found = accelerators(&Batch { additions: &additions, ..ground(&[], &cures) });
    let both = found.iter().find(|finding| finding.rows[1].is_some()).unwrap();
    assert_eq!(both.verdict, Verdict::Unproven);
    assert!(both.missing.is_some());
}

fn added(additive: Additive, mass: f64, scale: Option<f64>) -> Addition {
    let mass = Some(Weighed { mass: grams(mass), scale: scale.map(grams) });
    Addition { additive, mass, hydrated: false, place: PLACE }
}

fn accelerators(batch: &Batch<'_>) -> Vec<Finding> {
    let mut found = findings(batch, Authority::UsFsis, None);
    found.retain(|finding| finding.rule.id == "cure/accelerator");
    found
}

// 3/4 oz of the acid to 100 lb: 3.75 g to 8 kg of meat.
#[test]
fn too_much_of_an_accelerator_is_mended_and_enough_is_not() {
    let cures = of_premix(Some(premix([6.25, 0.0, 0.0, 0.0])), 16.0, 0.1);
    let with = |additions: &[Addition]| accelerators(&Batch { additions, ..ground(&[], &cures) });
    let over = with(&[added(Additive::AscorbicAcid, 4.0, Some(0.01))]);
    let Some(Mend::UseAtMost(most)) = over[0].mend else { panic!("{over:?}") };
    assert!((most.value * 1000.0 - 3.74).abs() < 1e-9, "{most:?}");
    let under = with(&[added(Additive::AscorbicAcid, 3.0, Some(0.01))]);
    assert_eq!((under[0].verdict, under[0].mend), (Verdict::Meets, None));
    // Of two, each has its share to give.
    let two = [
        added(Additive::AscorbicAcid, 2.0, Some(0.01)),
        added(Additive::ErythorbicAcid, 2.0, Some(0.01)),
    ];
    let over = with(&two);
    assert!(matches!(over[0].mend, Some(Mend::UseShare(_))), "{over:?}");
    // By the spoon it is not known, and there is nothing to compute.
    let spooned = with(&[Addition { mass: None, ..two[0] }]);
    assert_eq!((spooned[0].verdict, spooned[0].mend), (Verdict::Unproven, None));
    // On a scale that is not said even a little proves nothing.
    let unsaid = with(&[added(Additive::AscorbicAcid, 3.0, None)]);
    assert_eq!((unsaid[0].verdict, unsaid[0].mend), (Verdict::Unproven, None));
    assert!(unsaid[0].missing.unwrap().what.contains("how finely"));
}

#[test]
fn an_additive_without_a_row_is_asked_for_by_product_only_where_a_product_has_one() {
    let cures = of_premix(Some(premix([6.25, 0.0, 0.0, 0.0])), 16.0, 0.1);
    let missing = |additive, food, method| {
        let additions = [added(additive, 1.0, Some(0.01))];
        let batch =
            Batch { food, method: Some(method), additions: &additions, ..ground(&[], &cures) };
        accelerators(&batch)[0].missing.unwrap().what
    };
    let fumaric = missing(Additive::FumaricAcid, Food::WholeMeat, Method::DryRub);
    assert!(fumaric.contains("a limit of this authority"), "{fumaric}");
    let sapp = missing(Additive::SodiumAcidPyrophosphate, Food::GroundMeat, Method::Ground);
    assert!(sapp.contains("named products"), "{sapp}");
}

#[rstest]
// 7/8 oz to 100 lb: 4.375 g to 8 kg. Only pumped bacon has a rule of its own.
#[case::rubbed_bacon(Food::Bacon, Method::DryRub, 1)]
#[case::rubbed_meat(Food::WholeMeat, Method::DryRub, 1)]
fn the_ceiling_of_ascorbate_holds_for_all_but_pumped_bacon(
    #[case] food: Food,
    #[case] method: Method,
    #[case] expected: usize,
) {
    let cures = of_premix(Some(premix([6.25, 0.0, 0.0, 0.0])), 16.0, 0.1);
    let additions = [added(Additive::SodiumErythorbate, 4.5, Some(0.01))];
    let batch = Batch { food, method: Some(method), additions: &additions, ..ground(&[], &cures) };
    let found = accelerators(&batch);
    assert_eq!(found.len(), expected);
    assert!(found.iter().all(|finding| finding.verdict == Verdict::Breaks));
}

#[rstest]
#[case::both_weighed(Some(0.01), Some(0.01), Verdict::Meets, false)]
#[case::the_citrate_on_what_scale(None, Some(0.01), Verdict::Unproven, true)]
#[case::the_ascorbate_on_what_scale(Some(0.01), None, Verdict::Unproven, true)]
fn half_citrate_is_proven_only_on_scales_that_are_said(
    #[case] citrate: Option<f64>,
    #[case] ascorbate: Option<f64>,
    #[case] verdict: Verdict,
    #[case] scale_missing: bool,
) {
    let cures = of_premix(Some(premix([6.25, 0.0, 0.0, 0.0])), 16.0, 0.1);
    let additions = [
        added(Additive::CitricAcid, 1.0, citrate),
        added(Additive::SodiumAscorbate, 2.0, ascorbate),
    ];
    let found = accelerators(&Batch { additions: &additions, ..ground(&[], &cures) });
    let share = found.iter().find(|finding| finding.rows[0].unwrap().key == "citric-replacement");
    let share = share.unwrap();
    assert_eq!(share.verdict, verdict);
    assert_eq!(share.missing.is_some(), scale_missing);
    // In poultry the row does not name the erythorbates.
    let bird = [
        added(Additive::CitricAcid, 1.0, citrate),
        added(Additive::SodiumErythorbate, 2.0, ascorbate),
    ];
    let batch = Batch { food: Food::GroundPoultry, additions: &bird, ..ground(&[], &cures) };
    let found = accelerators(&batch);
    let share = found.iter().find(|finding| finding.rows[0].unwrap().key == "citric-replacement");
    assert_eq!(share.unwrap().verdict, Verdict::Unproven);
    // With an ascorbate it does.
    let batch = Batch { food: Food::GroundPoultry, additions: &additions, ..ground(&[], &cures) };
    let found = accelerators(&batch);
    let share = found.iter().find(|finding| finding.rows[0].unwrap().key == "citric-replacement");
    assert_eq!(share.unwrap().verdict, verdict);
}

#[test]
fn a_citrate_that_may_be_over_half_is_unproven_and_misses_nothing() {
    let cures = of_premix(Some(premix([6.25, 0.0, 0.0, 0.0])), 16.0, 0.1);
    let additions = [
        added(Additive::CitricAcid, 2.0, Some(0.1)),
        added(Additive::SodiumAscorbate, 2.0, Some(0.1)),
    ];
    let found = accelerators(&Batch { additions: &additions, ..ground(&[], &cures) });
    let share = found.iter().find(|finding| finding.rows[0].unwrap().key == "citric-replacement");
    let share = share.unwrap();
    assert_eq!((share.verdict, share.missing), (Verdict::Unproven, None));
}

#[test]
fn bacon_weighed_on_no_stated_scale_proves_no_weight() {
    let cures = of_premix(Some(premix([6.25, 0.0, 0.0, 0.0])), 16.0, 0.1);
    let weight = |scaled, kg| {
        let batch = Batch {
            food: Food::Bacon,
            method: Some(Method::DryRub),
            scaled,
            finished: exactly(kg),
            ..ground(&[], &cures)
        };
        let found = findings(&batch, Authority::UsFsis, None);
        let finding = of(&found, "cure/bacon-weight")[0];
        (finding.verdict, finding.missing.is_some())
    };
    assert_eq!(weight(true, 7.0), (Verdict::Meets, false));
    assert_eq!(weight(false, 7.0), (Verdict::Unproven, true));
    assert_eq!(weight(false, 9.0), (Verdict::Breaks, false));
    // A belly known to a tenth of a kilogram, and a side that weighs as much.
    let batch = Batch {
        food: Food::Bacon,
        method: Some(Method::DryRub),
        finished: exactly(8.0),
        green: Range::new(
            GreenWeight::new(kilograms(7.9)).unwrap(),
            GreenWeight::new(kilograms(8.1)).unwrap(),
        )
        .ok(),
        ..ground(&[], &cures)
    };
    let found = findings(&batch, Authority::UsFsis, None);
    let finding = of(&found, "cure/bacon-weight")[0];
    assert_eq!((finding.verdict, finding.missing), (Verdict::Unproven, None));
}

#[test]
fn one_unknown_premix_beside_a_known_one_has_no_mend_and_no_least_level() {
    let known = of_premix(Some(premix([6.25, 0.0, 0.0, 0.0])), 16.0, 0.1);
    let both = [known[0], Cure { strength: None, ..known[0] }];
    let found = findings(&ground(&[], &both), Authority::UsFsis, None);
    let nitrite = of(&found, "cure/ingoing-nitrite")[0];
    assert_eq!((nitrite.verdict, nitrite.mend), (Verdict::Unproven, None));
    assert!(of(&found, "cure/least-nitrite").is_empty());
    // Nor is there one where there is no nitrite at all.
    let nitrate = of_premix(Some(premix([0.0, 0.0, 4.0, 0.0])), 16.0, 0.1);
    let found = findings(&ground(&[], &nitrate), Authority::UsFsis, None);
    assert!(of(&found, "cure/least-nitrite").is_empty());
}
