//! Figures that must come out to the last bit, and the checks of each room on plans
//! whose result is known.

use greenweight::authority::Authority;
use greenweight::cite::{Row, Standing};
use greenweight::cook::{self, Animals, FSIS_MEAT_DWELL, Plan, US_CONSUMER, dwell_row};
use greenweight::cure::{
    self, Addition, Additive, Batch, Cure, GreenWeight, Level, Method, Pickle, PickleWeight,
    Premix, PremixMass, Pump, SodiumNitrite, US_BACON_NITRATE, US_BACON_POTASSIUM, US_BACON_SODIUM,
    US_BACON_TOLERANCE, US_INGOING_NITRATE, US_INGOING_NITRITE, US_MINIMUM, Weighed, ingoing,
};
use greenweight::finding::{Finding, Force, Limit, Measure, Mend, Place, Verdict};
use greenweight::food::Food;
use greenweight::range::Range;
use greenweight::smoke::{self, COLD_CEILINGS, ColdSmoke, meat_never_cooked};
use greenweight::store::{self, COLD_FOOD, Cold, HOME_FREEZER, HOME_REFRIGERATOR, Keeping};
use greenweight::units::{
    Mass, PrintedTemperature, Reading, Scale, Time, days, floor_to_division, grams, hours,
    kilograms, ounces, pounds, read_tolerance, seconds,
};
use rstest::rstest;

fn fahrenheit(value: f64) -> Reading {
    Reading::new(value, Scale::Fahrenheit).unwrap()
}

fn exactly<T: Copy + PartialOrd>(value: T) -> Option<Range<T>> {
    Range::exactly(value).ok()
}

/// The finding of one rule.
fn of<'a>(findings: &'a [Finding], rule: &str) -> &'a Finding {
    findings.iter().find(|finding| finding.rule.id == rule).unwrap_or_else(|| panic!("no {rule}"))
}

// Units.

#[rstest]
#[case::an_ounce(1.0, 625.0)]
#[case::a_quarter(0.25, 156.25)]
fn ounces_to_a_hundred_pounds_are_exact(#[case] oz: f64, #[case] mg_per_kg: f64) {
    let premix = PremixMass::new(ounces(oz)).unwrap();
    let pure = Level::<SodiumNitrite, _>::percent(100.0).unwrap();
    let level = ingoing(premix, pure, GreenWeight::new(pounds(100.0)).unwrap());
    assert_eq!(level.mg_per_kg().to_bits(), mg_per_kg.to_bits());
}

#[test]
fn sixteen_ounces_are_one_pound_to_the_last_bit() {
    assert_eq!(ounces(16.0).value.to_bits(), pounds(1.0).value.to_bits());
}

#[test]
fn a_row_is_met_on_the_scale_the_thermometer_has() {
    let at = |celsius| dwell_row(Reading::new(celsius, Scale::Celsius).unwrap()).unwrap().row.key;
    assert_eq!(at(68.3), "155F");
    assert_eq!(at(68.2), "154F");
    let row = FSIS_MEAT_DWELL.iter().find(|row| row.row.key == "155F").unwrap();
    assert_eq!(row.value.temperature, PrintedTemperature::Both(155.0, 68.3));
    // 68.3 °C is 154.94 °F: held against the Fahrenheit figure it would fall short.
    let converted = Reading::new(68.3, Scale::Celsius).unwrap().on(Scale::Fahrenheit);
    assert!(converted < fahrenheit(155.0));
}

#[test]
fn a_thermometer_two_degrees_off_reaches_from_153_to_157() {
    let known = fahrenheit(155.0).within(read_tolerance("2 °F").unwrap()).unwrap();
    assert_eq!((known.low(), known.high()), (fahrenheit(153.0), fahrenheit(157.0)));
    assert_eq!(Limit::AtLeast(fahrenheit(153.0)).judge(&known), Verdict::Meets);
    assert_eq!(Limit::AtLeast(fahrenheit(155.0)).judge(&known), Verdict::Unproven);
    assert_eq!(Limit::AtLeast(fahrenheit(157.5)).judge(&known), Verdict::Breaks);
}

// Citations.

#[test]
fn every_row_says_what_is_printed_and_where() {
    let mut rows: Vec<&Row> = Vec::new();
    macro_rules! tables {
        ($($table:expr),+) => { $(rows.extend($table.iter().map(|cited| &cited.row));)+ };
    }
    tables!(
        US_INGOING_NITRITE,
        US_INGOING_NITRATE,
        US_BACON_SODIUM,
        US_BACON_POTASSIUM,
        FSIS_MEAT_DWELL,
        US_CONSUMER,
        COLD_FOOD,
        COLD_CEILINGS
    );
    rows.extend([&US_BACON_NITRATE.row, &US_BACON_TOLERANCE.row, &US_MINIMUM.row]);
    rows.extend([&HOME_FREEZER.row, &HOME_REFRIGERATOR.row]);
    for row in &rows {
        for text in [row.table, row.key, row.printed, row.citation.place] {
            assert!(!text.trim().is_empty(), "{} {}", row.table, row.key);
        }
        let source = row.citation.source;
        for text in [source.key, source.title, source.publisher] {
            assert!(!text.trim().is_empty(), "{} {}", row.table, row.key);
        }
        let words = row.citation.to_string();
        assert!(words.contains(source.title) && words.contains(row.citation.standing.words()));
        if let (Some(from), Some(until)) = (row.in_force.from, row.in_force.until) {
            assert!(from < until, "{} {}", row.table, row.key);
        }
    }
    let mut keys: Vec<_> = rows.iter().map(|row| (row.table, row.key)).collect();
    let count = keys.len();
    keys.sort_unstable();
    keys.dedup();
    assert_eq!(keys.len(), count, "a key stands twice in its table");
}

// Cures.

const PLACE: Place = Place { start: 0, end: 0 };

fn nitrite(percent: f64) -> Option<Premix> {
    Premix::new().with_sodium_nitrite(Level::percent(percent).unwrap()).ok()
}

fn batch<'a>(method: Method, cures: &'a [Cure]) -> Batch<'a> {
    Batch {
        scaled: true,
        method: Some(method),
        green: exactly(GreenWeight::new(pounds(7.0)).unwrap()),
        cures,
        ..Batch::of(if method == Method::Ground { Food::GroundMeat } else { Food::WholeMeat })
    }
}

fn held_to_us(batch: &Batch<'_>) -> Vec<Finding> {
    let mut findings = Vec::new();
    cure::check(batch, Authority::UsFsis, None, &mut |finding| findings.push(finding));
    findings
}

/// Premix to seven pounds of ground meat.
fn seven_pounds(premix: Mass, scale: Option<Mass>, strength: Option<Premix>) -> Finding {
    let cures = [Cure { mass: Some(Weighed { mass: premix, scale }), strength, place: PLACE }];
    *of(&held_to_us(&batch(Method::Ground, &cures)), "cure/ingoing-nitrite")
}

fn nominal(finding: &Finding) -> f64 {
    match finding.nominal {
        Some(Measure::Level { mg_per_kg, .. }) => mg_per_kg,
        other => panic!("{other:?}"),
    }
}

fn limit(finding: &Finding) -> f64 {
    match finding.limit.unwrap().figures().0 {
        Measure::Level { mg_per_kg, .. } => mg_per_kg,
        other => panic!("{other:?}"),
    }
}

#[rstest]
#[case::of_a_tenth(0.1)]
#[case::of_a_gram(1.0)]
#[case::of_half_a_gram(0.5)]
fn one_and_a_quarter_for_a_quarter_breaks_and_says_how_much_would_do(#[case] division: f64) {
    let division = grams(division);
    let finding = seven_pounds(ounces(1.25), Some(division), nitrite(6.25));
    assert_eq!(finding.verdict, Verdict::Breaks);
    assert!((nominal(&finding) - 697.544_642_857).abs() < 1e-6);
    assert_eq!(limit(&finding), 156.25);
    // 156.25 mg/kg of 3.175 kg at 6.25 % are 7.938 g; half a division off, and down to
    // what the scale can show.
    let most = grams(7.937_866_475);
    let expected = floor_to_division(most - division * 0.5, division).unwrap();
    assert_eq!(finding.mend, Some(Mend::UseAtMost(expected)));
    let again = seven_pounds(expected, Some(division), nitrite(6.25));
    assert_eq!(again.verdict, Verdict::Meets);
}

#[test]
fn a_quarter_of_an_ounce_of_the_strong_premix_meets() {
    let finding = seven_pounds(ounces(0.25), Some(grams(0.1)), nitrite(6.25));
    assert_eq!(finding.verdict, Verdict::Meets);
    assert!((nominal(&finding) - 139.508_928_571).abs() < 1e-6);
    assert_eq!((finding.missing, finding.mend), (None, None));
}

#[test]
fn one_and_a_quarter_of_a_premix_five_times_weaker_meets() {
    let finding = seven_pounds(ounces(1.25), Some(grams(0.1)), nitrite(1.25));
    assert_eq!(finding.verdict, Verdict::Meets);
    assert!((nominal(&finding) - 139.508_928_571).abs() < 1e-6);
}

#[test]
fn a_premix_of_no_stated_strength_is_unproven_however_little_of_it() {
    let finding = seven_pounds(grams(0.1), Some(grams(0.01)), None);
    assert_eq!(finding.verdict, Verdict::Unproven);
    assert!(finding.missing.unwrap().what.contains("strength"));
}

#[test]
fn a_scale_of_quarter_ounces_cannot_prove_a_quarter_ounce() {
    let finding = seven_pounds(ounces(0.25), Some(ounces(0.25)), nitrite(6.25));
    assert_eq!(finding.verdict, Verdict::Unproven);
    // Even one division may be half as much again.
    assert!(matches!(finding.mend, Some(Mend::FinerScale(_))), "{:?}", finding.mend);
}

#[test]
fn a_scale_that_is_not_stated_cannot_prove_anything() {
    let finding = seven_pounds(ounces(0.25), None, nitrite(6.25));
    assert_eq!(finding.verdict, Verdict::Unproven);
    assert!(finding.missing.unwrap().say.contains("scale"));
    // What breaks without one breaks all the same.
    assert_eq!(seven_pounds(ounces(1.25), None, nitrite(6.25)).verdict, Verdict::Breaks);
}

fn erythorbate(mass: Weighed) -> Addition {
    let additive = Additive::SodiumErythorbate;
    Addition { additive, mass: Some(mass), hydrated: false, place: PLACE }
}

/// Pumped bacon: so much in a kilogram of pickle, at a tenth of pump.
fn pumped_bacon(premix: Premix, nitrite: f64, ascorbate: Option<f64>) -> Vec<Finding> {
    let in_pickle =
        |mg_per_kg: f64| Weighed { mass: grams(mg_per_kg * 0.01), scale: Some(grams(0.001)) };
    let cures = [Cure { mass: Some(in_pickle(nitrite)), strength: Some(premix), place: PLACE }];
    let additions: Vec<_> =
        ascorbate.map(|level| erythorbate(in_pickle(level))).into_iter().collect();
    held_to_us(&Batch {
        food: Food::Bacon,
        pickle: Some(Pickle {
            weight: Range::exactly(PickleWeight::new(kilograms(1.0)).unwrap()).unwrap(),
            taken_up: exactly(Pump::new(0.1).unwrap()),
            equilibrium: None,
        }),
        additions: &additions,
        ..batch(Method::Pumped, &cures)
    })
}

#[test]
fn pumped_bacon_as_prescribed_meets_every_rule() {
    let findings = pumped_bacon(nitrite(100.0).unwrap(), 120.0, Some(550.0));
    for rule in ["cure/bacon-nitrite", "cure/bacon-nitrate", "cure/bacon-ascorbate"] {
        assert_eq!(of(&findings, rule).verdict, Verdict::Meets, "{rule}");
    }
}

#[test]
fn the_figure_for_sausage_breaks_in_pumped_bacon() {
    let findings = pumped_bacon(nitrite(100.0).unwrap(), 156.0, Some(550.0));
    let finding = of(&findings, "cure/bacon-nitrite");
    assert_eq!((finding.verdict, limit(finding)), (Verdict::Breaks, 120.0));
}

#[test]
fn eighty_in_pumped_bacon_is_not_met_without_sugar_and_culture() {
    let findings = pumped_bacon(nitrite(100.0).unwrap(), 80.0, Some(550.0));
    let finding = of(&findings, "cure/bacon-nitrite");
    assert_eq!(finding.verdict, Verdict::Unproven);
}

#[test]
fn pumped_bacon_without_ascorbate_breaks() {
    let findings = pumped_bacon(nitrite(100.0).unwrap(), 120.0, None);
    assert_eq!(of(&findings, "cure/bacon-ascorbate").verdict, Verdict::Breaks);
}

#[test]
fn any_nitrate_breaks_in_bacon() {
    let premix = nitrite(6.25).unwrap().with_sodium_nitrate(Level::percent(4.0).unwrap()).unwrap();
    let findings = pumped_bacon(premix, 1.0, Some(550.0));
    let finding = of(&findings, "cure/bacon-nitrate");
    assert_eq!((finding.verdict, finding.mend), (Verdict::Breaks, Some(Mend::LeaveOut)));
}

#[test]
fn the_dry_cure_figure_of_other_meat_breaks_in_bacon() {
    let mass = Weighed { mass: ounces(0.07), scale: Some(grams(0.001)) };
    let cures = [Cure { mass: Some(mass), strength: nitrite(100.0), place: PLACE }];
    let dry = batch(Method::DryRub, &cures);
    let findings = held_to_us(&Batch { food: Food::Bacon, ..dry });
    let finding = of(&findings, "cure/bacon-nitrite");
    assert_eq!((finding.verdict, limit(finding)), (Verdict::Breaks, 200.0));
    assert!((nominal(finding) - 625.0).abs() < 1e-9);
    // Any other meat may have it, to the figure.
    assert_eq!(limit(of(&held_to_us(&dry), "cure/ingoing-nitrite")), 625.0);
}

// Cooks.

fn plan(food: Food, inside: f64) -> Plan {
    Plan {
        food,
        animals: Animals::NoPoultry,
        bird: cook::Bird::Other,
        fat: None,
        inside: Some(fahrenheit(inside)),
        thermometer: read_tolerance("2 °F").ok(),
        planned: true,
        held: None,
        gap: None,
        rested: None,
        place: PLACE,
    }
}

fn for_seconds(time: f64) -> Option<Range<Time>> {
    exactly(seconds(time))
}

fn cooked(plan: &Plan, authority: Authority) -> Vec<Finding> {
    let mut findings = Vec::new();
    cook::check(plan, &cook::Process::unknown(PLACE), authority, None, &mut |finding| {
        findings.push(finding)
    });
    findings
}

#[rstest]
#[case::proven(162.0, Verdict::Meets)]
#[case::at_the_limit(160.0, Verdict::Unproven)]
#[case::too_low(155.0, Verdict::Breaks)]
fn ground_meat_at_home_is_proven_two_degrees_above_160(
    #[case] inside: f64,
    #[case] verdict: Verdict,
) {
    let findings = cooked(&plan(Food::GroundMeat, inside), Authority::UsConsumer);
    let finding = of(&findings, "cook/endpoint");
    assert_eq!(finding.verdict, verdict);
    if verdict == Verdict::Meets {
        assert_eq!(finding.mend, None);
    } else {
        assert_eq!(finding.mend, Some(Mend::CookTo(fahrenheit(162.0))));
    }
}

#[test]
fn a_thermometer_of_unknown_tolerance_proves_no_endpoint() {
    let plan = Plan { thermometer: None, ..plan(Food::GroundMeat, 200.0) };
    let findings = cooked(&plan, Authority::UsConsumer);
    assert_eq!(findings[0].verdict, Verdict::Unproven);
    assert!(findings[0].missing.unwrap().say.contains("thermometer"));
}

#[rstest]
#[case::rested(Some(180.0), Verdict::Meets)]
#[case::too_short(Some(179.0), Verdict::Breaks)]
#[case::not_said(None, Verdict::Unproven)]
fn a_roast_at_home_needs_its_rest(#[case] rest: Option<f64>, #[case] verdict: Verdict) {
    let rested = rest.and_then(for_seconds);
    let findings = cooked(&Plan { rested, ..plan(Food::WholeMeat, 147.0) }, Authority::UsConsumer);
    assert_eq!(of(&findings, "cook/endpoint").verdict, Verdict::Meets);
    assert_eq!(of(&findings, "cook/rest").verdict, verdict);
}

#[rstest]
#[case::not_said(None, Verdict::Unproven)]
#[case::enough_only_if_the_thermometer_is_right(Some(22.0), Verdict::Unproven)]
#[case::enough_at_153(Some(34.0), Verdict::Meets)]
#[case::too_short_even_at_157(Some(13.0), Verdict::Breaks)]
fn at_155_and_two_degrees_off_the_time_is_that_of_153(
    #[case] held: Option<f64>,
    #[case] verdict: Verdict,
) {
    let row = FSIS_MEAT_DWELL.iter().find(|row| row.row.key == "153F").unwrap();
    assert_eq!(row.value.for_6_5_log, seconds(34.0));
    let held = held.and_then(for_seconds);
    let findings = cooked(&Plan { held, ..plan(Food::GroundMeat, 155.0) }, Authority::UsFsis);
    assert_eq!(of(&findings, "cook/endpoint").verdict, verdict);
}

#[rstest]
#[case::some(Animals::SomePoultry)]
#[case::unknown(Animals::Unknown)]
fn the_meat_table_clears_no_poultry_and_no_unnamed_animal(#[case] animals: Animals) {
    // The meat table asks for no time at 158 °F.
    let held = for_seconds(1.0);
    let plan = Plan { held, ..plan(Food::GroundMeat, 160.0) };
    assert_eq!(cooked(&plan, Authority::UsFsis)[0].verdict, Verdict::Meets);
    let findings = cooked(&Plan { animals, ..plan }, Authority::UsFsis);
    assert_ne!(findings[0].verdict, Verdict::Meets);
}

// Cold keeping.

fn kept(cold: Cold, at: f64, time: f64) -> Vec<Finding> {
    let keeping = Keeping {
        cold,
        like: store::chart_row("sausage/cooked", None),
        mixed: false,
        at: Some(fahrenheit(at).into()),
        thermometer: read_tolerance("0 °F").ok(),
        time: exactly(days(time)).map(Into::into),
        food: Food::GroundMeat,
        raw: false,
        vacuum: false,
        place: PLACE,
    };
    let mut findings = Vec::new();
    store::check(&keeping, Authority::UsConsumer, &mut |finding| findings.push(finding));
    findings
}

#[rstest]
#[case::within(60.0, false)]
#[case::past(90.0, true)]
#[case::years(4000.0, true)]
fn a_freezer_time_past_the_advice_is_noted_and_never_breaks(#[case] time: f64, #[case] past: bool) {
    let findings = kept(Cold::Freezer, 0.0, time);
    let finding = of(&findings, "store/freezer-time");
    assert_eq!((finding.verdict, finding.past_advice), (Verdict::Meets, past));
    assert_eq!(finding.rule.force, Force::Advice);
}

#[rstest]
#[case::at_the_limit(7.0, Verdict::Meets)]
#[case::past(7.5, Verdict::Breaks)]
fn a_refrigerator_time_past_the_limit_breaks(#[case] time: f64, #[case] verdict: Verdict) {
    let findings = kept(Cold::Refrigerator, 38.0, time);
    let finding = of(&findings, "store/fridge-time");
    assert_eq!((finding.verdict, finding.past_advice), (verdict, false));
    assert_eq!(finding.rule.force, Force::Safety);
    if verdict == Verdict::Breaks {
        assert_eq!(finding.mend, Some(Mend::KeepFor(days(7.0))));
    }
}

// Cold smoke.

fn smoked(food: Food, at: f64, time: f64) -> ColdSmoke {
    ColdSmoke {
        food,
        cooked_later: false,
        at: Some(fahrenheit(at)),
        thermometer: read_tolerance("2 °F").ok(),
        time: exactly(hours(time)),
        place: PLACE,
    }
}

fn held_to(smoke: &ColdSmoke, authority: Option<Authority>) -> Vec<Finding> {
    let mut findings = Vec::new();
    smoke::check(smoke, authority, None, &mut |finding| findings.push(finding));
    findings
}

#[test]
fn warm_cheese_breaks_a_limit_of_quality_by_common_practice() {
    let findings = held_to(&smoked(Food::Cheese, 95.0, 2.0), None);
    let finding = of(&findings, "smoke/cheese-chamber");
    assert_eq!((finding.verdict, finding.rule.force), (Verdict::Breaks, Force::Quality));
    let citation = finding.rows[0].unwrap().citation;
    assert_eq!(citation.standing, Standing::CommonPractice);
    assert_eq!(citation.source.key, "trade-practice");
    assert_eq!(finding.mend, Some(Mend::KeepAtOrBelow(fahrenheit(88.0))));
    assert_eq!(held_to(&smoked(Food::Cheese, 88.0, 2.0), None)[0].verdict, Verdict::Meets);
}

#[rstest]
#[case::the_warmer_pair(85.0, 20.0, Verdict::Meets)]
#[case::two_hours_more(85.0, 22.0, Verdict::Breaks)]
#[case::between_the_pairs(60.0, 22.0, Verdict::Breaks)]
#[case::the_cooler_pair(48.0, 24.0, Verdict::Meets)]
fn nothing_is_read_between_the_two_pairs_of_maine(
    #[case] at: f64,
    #[case] time: f64,
    #[case] verdict: Verdict,
) {
    let findings = held_to(&smoked(Food::Fish, at, time), Some(Authority::UsMaine));
    assert_eq!(findings.len(), 1);
    assert_eq!(findings[0].verdict, verdict);
}

#[test]
fn a_meat_smoked_cold_and_never_cooked_is_unproven() {
    let smoke = smoked(Food::GroundMeat, 60.0, 6.0);
    let finding = meat_never_cooked(&smoke).unwrap();
    assert_eq!(finding.verdict, Verdict::Unproven);
    assert!(finding.missing.is_some());
    assert_eq!(meat_never_cooked(&ColdSmoke { cooked_later: true, ..smoke }), None);
    assert_eq!(meat_never_cooked(&smoked(Food::Cheese, 60.0, 6.0)), None);
}

#[test]
fn nothing_is_near_infinity_and_the_two_infinities_are_not_one() {
    use core::cmp::Ordering;
    use greenweight::range::against;
    let infinite = f64::INFINITY;
    assert_eq!(against(5.0, infinite), Some(Ordering::Less));
    assert_eq!(against(infinite, infinite), Some(Ordering::Equal));
    assert_eq!(against(-infinite, infinite), Some(Ordering::Less));
    assert_eq!(against(f64::NAN, 1.0), None);
    assert_eq!(Limit::AtMost(156.25).met_by(infinite), Some(false));
}
