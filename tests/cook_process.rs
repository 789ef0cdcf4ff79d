//! The way of a cook to its end: come-up, humidity, records, reheating, holding, and the tables
//! that an authority holds a food to.

use greenweight::authority::Authority;
use greenweight::cook::{
    Aim, Animals, Bird, Moisture, Plan, Process, Resistance, Stage, check, hot_holding, partial,
};
use greenweight::finding::{Finding, Measure, Mend, Place, Verdict};
use greenweight::food::Food;
use greenweight::range::Range;
use greenweight::trace::Point;
use greenweight::units::{Reading, Scale, Time, hours, minutes, pounds, read_tolerance, seconds};
use proptest::prelude::*;
use rstest::rstest;

const PLACE: Place = Place { start: 0, end: 0 };

fn fahrenheit(value: f64) -> Reading {
    Reading::new(value, Scale::Fahrenheit).unwrap()
}

fn exactly(time: Time) -> Option<Range<Time>> {
    Range::exactly(time).ok()
}

fn plan(food: Food, inside: Option<f64>, held: Option<Time>) -> Plan {
    Plan {
        food,
        animals: Animals::NoPoultry,
        bird: Bird::Other,
        fat: None,
        inside: inside.map(fahrenheit),
        thermometer: read_tolerance("0 °F").ok(),
        planned: inside.is_some(),
        held: held.and_then(exactly),
        gap: None,
        rested: None,
        place: PLACE,
    }
}

fn findings(plan: &Plan, process: &Process<'_>, authority: Authority) -> Vec<Finding> {
    let mut findings = Vec::new();
    check(plan, process, authority, None, &mut |finding| findings.push(finding));
    findings
}

/// The finding of a rule by the federal guideline.
fn of(process: &Process<'_>, rule: &str) -> Finding {
    let plan = plan(Food::GroundMeat, Some(160.0), None);
    let found = findings(&plan, process, Authority::UsFsis);
    *found.iter().find(|finding| finding.rule.id == rule).unwrap()
}

fn stage(time: Option<f64>, moisture: Option<Moisture>, humidity: Option<f64>) -> Stage {
    let time = time.map(hours).and_then(exactly);
    Stage { cooks: true, at: Some(fahrenheit(180.0)), time, moisture, humidity }
}

fn cooked(stages: &[Stage], endpoint: f64) -> Process<'_> {
    Process { stages, endpoint: Some(fahrenheit(endpoint)), ..Process::unknown(PLACE) }
}

const STEAM: Option<Moisture> = Some(Moisture::Steam);
const OVEN: Option<Moisture> = Some(Moisture::SealedOven);
const AIR: Option<Moisture> = Some(Moisture::HumidAir);
const CASING: Option<Moisture> = Some(Moisture::Casing);
const BAG: Option<Moisture> = Some(Moisture::SealedBag);

// FSIS cooking guideline 2021, Table 1, p. 26, and the exemptions of p. 31 to 33.
#[rstest]
#[case::nothing_said(&[stage(Some(2.0), None, None)], 160.0, Verdict::Unproven)]
#[case::a_casing(&[stage(None, CASING, None), stage(None, BAG, None)], 160.0, Verdict::Meets)]
#[case::a_casing_for_one_stage_of_two(&[stage(Some(1.0), CASING, None), stage(Some(1.0), None, None)], 160.0, Verdict::Unproven)]
#[case::a_bag_and_the_rest_not_said(&[stage(Some(3.0), BAG, None), stage(Some(0.2), None, None)], 160.0, Verdict::Unproven)]
#[case::a_casing_and_then_steam(&[stage(Some(2.0), CASING, None), stage(Some(0.5), STEAM, None)], 160.0, Verdict::Unproven)]
#[case::a_casing_and_then_steam_for_long_enough(&[stage(Some(1.0), CASING, None), stage(Some(1.0), STEAM, None)], 160.0, Verdict::Meets)]
#[case::a_casing_for_a_moment(&[stage(Some(0.1), CASING, None), stage(Some(3.0), None, Some(20.0))], 160.0, Verdict::Breaks)]
#[case::steam_for_half(&[stage(Some(2.0), STEAM, None), stage(Some(2.0), None, Some(20.0))], 145.0, Verdict::Meets)]
#[case::steam_for_less(&[stage(Some(1.9), STEAM, None), stage(Some(2.1), None, Some(20.0))], 145.0, Verdict::Breaks)]
#[case::steam_and_the_rest_not_said(&[stage(Some(1.9), STEAM, None), stage(Some(2.1), None, None)], 145.0, Verdict::Unproven)]
#[case::a_sealed_oven_for_half(&[stage(Some(2.0), OVEN, None), stage(Some(2.0), None, Some(20.0))], 145.0, Verdict::Meets)]
#[case::steam_and_sealed_oven_do_not_add(&[stage(Some(1.0), STEAM, None), stage(Some(1.0), OVEN, None), stage(Some(2.0), None, Some(20.0))], 145.0, Verdict::Breaks)]
#[case::steam_below_145(&[stage(Some(4.0), STEAM, None)], 144.0, Verdict::Breaks)]
#[case::humid_for_a_quarter(&[stage(Some(1.0), AIR, Some(90.0)), stage(Some(3.0), None, Some(20.0))], 130.0, Verdict::Meets)]
#[case::humid_for_less_than_an_hour(&[stage(Some(0.9), AIR, Some(90.0)), stage(Some(1.1), None, Some(20.0))], 130.0, Verdict::Breaks)]
#[case::nearly_humid(&[stage(Some(4.0), AIR, Some(89.9))], 160.0, Verdict::Breaks)]
#[case::humid_air_without_its_figure(&[stage(Some(4.0), AIR, None)], 160.0, Verdict::Unproven)]
#[case::half_an_hour_of_steam(&[stage(Some(0.5), STEAM, None)], 160.0, Verdict::Breaks)]
#[case::half_an_hour_humid(&[stage(Some(0.5), None, Some(90.0))], 160.0, Verdict::Meets)]
#[case::humid_all_along_of_no_known_length(&[stage(None, None, Some(95.0)), stage(None, None, Some(90.0))], 130.0, Verdict::Meets)]
#[case::steam_of_no_known_length(&[stage(None, STEAM, None)], 160.0, Verdict::Unproven)]
#[case::no_stages(&[], 160.0, Verdict::Unproven)]
fn humidity_by_one_of_four_options(
    #[case] stages: &[Stage],
    #[case] endpoint: f64,
    #[case] verdict: Verdict,
) {
    let finding = of(&cooked(stages, endpoint), "cook/humidity");
    assert_eq!(finding.verdict, verdict, "{finding:?}");
    assert_eq!(finding.missing.is_some(), verdict == Verdict::Unproven);
}

#[test]
fn what_steam_falls_short_of_is_said() {
    let stages = [stage(Some(1.0), STEAM, None), stage(Some(3.0), None, Some(20.0))];
    let finding = of(&cooked(&stages, 160.0), "cook/humidity");
    let Some(Mend::KeepMoistFor(time)) = finding.mend else { panic!("{finding:?}") };
    assert!((time.value - 7200.0).abs() < 1e-6, "{time:?}");
    assert_eq!(finding.rows[0].unwrap().key, "option-1");
}

// Of options that all fall short, the one that something was done for is reported.
#[rstest]
#[case::sealed(OVEN, None, "option-2")]
#[case::humid(AIR, Some(90.0), "option-3")]
fn the_option_that_was_tried_is_the_one_that_is_named(
    #[case] moisture: Option<Moisture>,
    #[case] humidity: Option<f64>,
    #[case] option: &str,
) {
    let stages = [stage(Some(0.5), moisture, humidity), stage(Some(3.5), None, Some(20.0))];
    let finding = of(&cooked(&stages, 160.0), "cook/humidity");
    assert_eq!(finding.verdict, Verdict::Breaks);
    assert_eq!(finding.rows[0].unwrap().key, option);
}

#[rstest]
#[case::heavy_and_hot(10.0, 250.0, Verdict::Meets)]
#[case::too_light(9.9, 250.0, Verdict::Unproven)]
#[case::too_cool(10.0, 249.0, Verdict::Unproven)]
fn a_large_piece_in_a_hot_oven_needs_no_humidity(
    #[case] lb: f64,
    #[case] oven: f64,
    #[case] verdict: Verdict,
) {
    let hot = Stage { at: Some(fahrenheit(oven)), ..stage(Some(5.0), None, None) };
    let stages = [hot];
    let process = Process { piece: Some(pounds(lb)), ..cooked(&stages, 145.0) };
    assert_eq!(of(&process, "cook/humidity").verdict, verdict);
}

#[rstest]
#[case::stated(&[], Some(6.0), Verdict::Meets)]
#[case::stated_too_long(&[], Some(6.01), Verdict::Breaks)]
#[case::not_stated(&[], None, Verdict::Unproven)]
#[case::over_in_time(&[stage(Some(3.0), None, None), stage(Some(3.0), None, None)], None, Verdict::Meets)]
#[case::perhaps_not_in_time(&[stage(Some(6.1), None, None)], None, Verdict::Unproven)]
#[case::of_no_known_length(&[stage(Some(1.0), None, None), stage(None, None, None)], None, Verdict::Unproven)]
fn the_come_up_of_a_plan(
    #[case] stages: &[Stage],
    #[case] stated: Option<f64>,
    #[case] verdict: Verdict,
) {
    let come_up = stated.map(hours).and_then(exactly);
    let process = Process { come_up, ..cooked(stages, 160.0) };
    assert_eq!(of(&process, "cook/come-up").verdict, verdict);
}

fn smoked_cold(at: Option<f64>, time: Option<f64>) -> Stage {
    Stage { cooks: false, at: at.map(fahrenheit), ..stage(time, None, None) }
}

// A cold smoke before a cook of three hours.
#[rstest]
#[case::short(Some(75.0), Some(2.0), None, Verdict::Meets)]
#[case::long(Some(75.0), Some(20.0), None, Verdict::Unproven)]
#[case::of_no_known_length(Some(75.0), None, None, Verdict::Unproven)]
#[case::of_no_known_warmth(None, Some(20.0), None, Verdict::Unproven)]
#[case::in_the_cold(Some(45.0), Some(20.0), None, Verdict::Meets)]
#[case::longer_than_what_is_stated(Some(75.0), Some(20.0), Some(2.0), Verdict::Breaks)]
#[case::in_time_and_longer_than_what_is_stated(Some(75.0), Some(5.5), Some(2.0), Verdict::Unproven)]
#[case::within_what_is_stated(Some(75.0), Some(4.0), Some(5.5), Verdict::Meets)]
#[case::of_no_known_length_and_stated(Some(75.0), None, Some(2.0), Verdict::Unproven)]
fn a_cold_smoke_is_part_of_the_way_up(
    #[case] at: Option<f64>,
    #[case] time: Option<f64>,
    #[case] stated: Option<f64>,
    #[case] verdict: Verdict,
) {
    let stages = [smoked_cold(at, time), stage(Some(3.0), CASING, None)];
    let come_up = stated.map(hours).and_then(exactly);
    let process = Process { come_up, ..cooked(&stages, 160.0) };
    assert_eq!(of(&process, "cook/come-up").verdict, verdict);
    // It is no stage of the cook, and needs no moisture.
    assert_eq!(of(&process, "cook/humidity").verdict, Verdict::Meets);
}

#[test]
fn what_the_stages_add_to_a_come_up_time_is_said_and_big_joints_are_not_spoken_of_beside_ground_meat()
 {
    let stages = [smoked_cold(Some(75.0), Some(5.5)), stage(Some(3.0), CASING, None)];
    let stated = |h: f64| Process { come_up: exactly(hours(h)), ..cooked(&stages, 160.0) };
    assert!(of(&stated(2.0), "cook/come-up").note.unwrap().contains("cold smoke"));
    assert_eq!(of(&stated(5.5), "cook/come-up").note, None);
    let found =
        findings(&plan(Food::WholeMeat, Some(160.0), None), &stated(5.5), Authority::UsFsis);
    let clock = found.iter().find(|finding| finding.rule.id == "cook/come-up").unwrap();
    assert!(clock.note.unwrap().contains("briskets"));
}

#[rstest]
#[case::short(&[smoked_cold(Some(75.0), Some(2.0))], Some(Verdict::Meets))]
#[case::long(&[smoked_cold(Some(75.0), Some(9.0))], Some(Verdict::Unproven))]
#[case::of_no_known_length(&[smoked_cold(Some(75.0), None)], Some(Verdict::Unproven))]
#[case::long_and_more_of_no_known_length(&[smoked_cold(Some(75.0), Some(9.0)), smoked_cold(Some(75.0), None)], Some(Verdict::Unproven))]
#[case::of_no_known_warmth_and_short(&[smoked_cold(None, Some(2.0))], Some(Verdict::Meets))]
#[case::of_no_known_warmth(&[smoked_cold(None, Some(9.0))], Some(Verdict::Unproven))]
#[case::in_the_cold(&[smoked_cold(Some(45.0), None)], None)]
#[case::none(&[], None)]
fn hours_of_warm_air_before_a_cook_are_not_passed_over(
    #[case] before: &[Stage],
    #[case] verdict: Option<Verdict>,
) {
    // Air is at least as hot as what it heats: the last stage need not say how hot it is.
    let stages = [before, &[Stage { at: None, ..stage(None, None, None) }]].concat();
    let finding = cooked(&stages, 160.0).check_slow();
    assert_eq!(finding.map(|finding| finding.verdict), verdict);
    let unproven = finding.filter(|finding| finding.verdict == Verdict::Unproven);
    assert!(unproven.is_none_or(|finding| finding.missing.is_some()));
}

#[test]
fn the_fermentation_before_a_cook_is_said_to_be_judged_apart() {
    let stages = [stage(Some(3.0), CASING, None)];
    let process = Process { fermented: true, ..cooked(&stages, 160.0) };
    assert!(of(&process, "cook/come-up").note.unwrap().contains("fermentation"));
}

fn record(points: &[(f64, f64)]) -> Vec<Point> {
    points.iter().map(|&(h, f)| Point::new(hours(h), fahrenheit(f)).unwrap()).collect()
}

fn recorded<'a>(points: &'a [Point], off: Option<&str>) -> Process<'a> {
    let thermometer = off.map(|off| read_tolerance(off).unwrap());
    let vouched = hours(f64::INFINITY);
    Process { record: points, vouched, thermometer, ..cooked(&[], 160.0) }
}

// From 40 to 140 °F at 16 °F an hour: 80 of them in five hours.
#[rstest]
#[case::in_time(&[(0.0, 40.0), (6.25, 140.0)], Some("1 °F"), Verdict::Meets)]
#[case::probe_of_no_known_error(&[(0.0, 40.0), (6.25, 140.0)], None, Verdict::Unproven)]
#[case::too_slow(&[(0.0, 40.0), (8.0, 140.0)], Some("1 °F"), Verdict::Breaks)]
#[case::in_time_by_a_good_probe(&[(0.0, 40.0), (7.4, 140.0)], Some("0 °F"), Verdict::Meets)]
#[case::perhaps_by_a_bad_one(&[(0.0, 40.0), (7.4, 140.0)], Some("4 °F"), Verdict::Unproven)]
#[case::never_came_up(&[(0.0, 60.0), (7.0, 100.0)], Some("1 °F"), Verdict::Breaks)]
#[case::cooling_does_not_count(&[(0.0, 40.0), (1.0, 160.0), (12.0, 60.0)], Some("1 °F"), Verdict::Meets)]
#[case::heated_again(&[(0.0, 40.0), (1.0, 131.0), (4.0, 60.0), (8.0, 160.0)], Some("0 °F"), Verdict::Breaks)]
fn the_come_up_of_a_record(
    #[case] points: &[(f64, f64)],
    #[case] off: Option<&str>,
    #[case] verdict: Verdict,
) {
    let points = record(points);
    let finding = of(&recorded(&points, off), "cook/come-up");
    assert_eq!(finding.verdict, verdict, "{:?}", finding.found);
}

// What a probe shows from 60 °F on is not all of the way up.
#[rstest]
#[case::nothing_else_said(60.0, None, &[], false, Verdict::Unproven)]
#[case::stated_besides(60.0, Some(2.0), &[], false, Verdict::Meets)]
#[case::after_a_long_cold_smoke(60.0, Some(2.0), &[smoked_cold(Some(75.0), Some(20.0))], false, Verdict::Breaks)]
#[case::from_the_cold(40.0, None, &[], false, Verdict::Meets)]
#[case::from_the_cold_and_stated_longer(40.0, Some(7.0), &[], false, Verdict::Breaks)]
#[case::chilled_after_a_smoke(40.0, None, &[smoked_cold(Some(75.0), Some(5.5))], true, Verdict::Unproven)]
fn a_record_that_begins_warm_does_not_show_all_of_the_way_up(
    #[case] from: f64,
    #[case] stated: Option<f64>,
    #[case] before: &[Stage],
    #[case] chilled_between: bool,
    #[case] verdict: Verdict,
) {
    let points = record(&[(0.0, from), (1.0, 135.0), (1.5, 160.0)]);
    let stages = [before, &[stage(None, CASING, None)]].concat();
    let process = Process {
        stages: &stages,
        come_up: stated.map(hours).and_then(exactly),
        chilled_between,
        ..recorded(&points, Some("1 °F"))
    };
    let finding = of(&process, "cook/come-up");
    assert_eq!(finding.verdict, verdict, "{finding:?}");
}

// Table 2, p. 35: 145 °F for 4 min, 144 for 5, 143 for 6.
#[rstest]
#[case::held(&[145.0, 145.0, 145.0], 2.0, Some("0 °F"), Verdict::Meets)]
#[case::a_degree_off(&[145.0, 145.0, 145.0], 2.0, Some("1 °F"), Verdict::Unproven)]
#[case::a_degree_off_and_longer(&[145.0, 145.0, 145.0], 2.5, Some("1 °F"), Verdict::Meets)]
#[case::of_no_known_error(&[145.0, 145.0, 145.0], 2.0, None, Verdict::Unproven)]
#[case::too_short(&[145.0, 145.0], 2.0, Some("1 °F"), Verdict::Breaks)]
#[case::a_dip(&[145.0, 129.0, 145.0], 3.0, Some("0 °F"), Verdict::Breaks)]
#[case::one_reading_at_158(&[120.0, 158.0, 120.0], 3.0, Some("0 °F"), Verdict::Breaks)]
fn a_record_meets_any_row_or_none(
    #[case] every: &[f64],
    #[case] step: f64,
    #[case] off: Option<&str>,
    #[case] verdict: Verdict,
) {
    let at = |n: usize| minutes(step * f64::from(u32::try_from(n).unwrap()));
    let points: Vec<_> =
        every.iter().enumerate().map(|(n, &f)| Point::new(at(n), fahrenheit(f)).unwrap()).collect();
    let finding = of(&recorded(&points, off), "cook/record");
    assert_eq!(finding.verdict, verdict, "{finding:?}");
}

#[test]
fn how_much_longer_would_do_is_said() {
    let points = record(&[(0.0, 120.0), (0.1, 145.0), (0.15, 145.0)]);
    let finding = of(&recorded(&points, Some("0 °F")), "cook/record");
    // Three minutes of four are held.
    let Some(Mend::HoldFor(longer)) = finding.mend else { panic!("{finding:?}") };
    assert!((longer.value - 60.0).abs() < 1e-9, "{longer:?}");
}

#[test]
fn the_row_that_is_named_asks_for_time_and_is_met_with_the_most_to_spare_or_nearest() {
    let key = |points: &[(f64, f64)]| {
        let points = record(points);
        of(&recorded(&points, Some("0 °F")), "cook/record").rows[0].unwrap().key
    };
    // At 160 °F every row is met; that of 157 asks for the shortest time that is one.
    assert_eq!(key(&[(0.0, 160.0), (0.2, 160.0)]), "157F");
    // Three minutes: three quarters of the row of 145, and less of every colder one.
    assert_eq!(key(&[(0.0, 145.0), (0.05, 145.0)]), "145F");
    // A reading at 158 °F asks for no more time, only for another reading.
    let points = record(&[(0.0, 120.0), (0.05, 158.0)]);
    let finding = of(&recorded(&points, Some("0 °F")), "cook/record");
    assert_eq!((finding.verdict, finding.mend), (Verdict::Breaks, None));
}

#[test]
fn without_a_planned_temperature_the_record_alone_is_judged() {
    let points = record(&[(0.0, 150.0), (1.0, 150.0)]);
    let process = recorded(&points, Some("0 °F"));
    let alone = findings(&plan(Food::GroundMeat, None, None), &process, Authority::UsFsis);
    assert!(alone.iter().all(|finding| finding.rule.id != "cook/endpoint"));
    // What is planned is judged besides: whoever repeats it has no record.
    let both = findings(&plan(Food::GroundMeat, Some(130.0), None), &process, Authority::UsFsis);
    let of = |rule: &str| both.iter().find(|finding| finding.rule.id == rule).unwrap().verdict;
    assert_eq!((of("cook/record"), of("cook/endpoint")), (Verdict::Meets, Verdict::Unproven));
}

// 3-401.11 and 3-403.11 of the editions; 165 °F for 15 s until 2013, less than a second since.
#[rstest]
#[case(Authority::UsFoodCode2022, Food::GroundMeat, 155.0, 17.0, Verdict::Meets)]
#[case(Authority::UsFoodCode2022, Food::GroundMeat, 155.0, 16.0, Verdict::Breaks)]
#[case(Authority::UsFoodCode2017, Food::GroundMeat, 150.0, 60.0, Verdict::Meets)]
#[case(Authority::UsFoodCode2013, Food::GroundMeat, 155.0, 15.0, Verdict::Meets)]
#[case(Authority::UsFoodCode2022, Food::Poultry, 165.0, 1.0, Verdict::Meets)]
#[case(Authority::UsFoodCode2013, Food::Poultry, 165.0, 1.0, Verdict::Breaks)]
#[case(Authority::UsFoodCode2022, Food::Poultry, 164.9, 999.0, Verdict::Breaks)]
#[case::a_roast(Authority::UsFoodCode2022, Food::WholeMeat, 145.0, 15.0, Verdict::Breaks)]
#[case::a_roast_held(Authority::UsFoodCode2022, Food::WholeMeat, 145.0, 240.0, Verdict::Meets)]
#[case::fish(Authority::UsFoodCode2017, Food::Fish, 145.0, 15.0, Verdict::Meets)]
#[case::eggs_not_to_order(Authority::UsFoodCode2022, Food::Eggs, 145.0, 15.0, Verdict::Breaks)]
#[case::stuffed(Authority::UsFoodCode2022, Food::Casseroles, 155.0, 60.0, Verdict::Breaks)]
#[case::reheated(Authority::UsFoodCode2022, Food::Leftovers, 165.0, 15.0, Verdict::Meets)]
#[case::reheated_too_briefly(
    Authority::UsFoodCode2022,
    Food::Leftovers,
    165.0,
    14.0,
    Verdict::Breaks
)]
#[case::from_a_plant(
    Authority::UsFoodCode2022,
    Food::PlantPackedHamReheated,
    135.0,
    1.0,
    Verdict::Meets
)]
// Food Standards Agency pairs; burgers by the Advisory Committee of 2007: 65 °C takes 13.6 min.
#[case(Authority::GreatBritain, Food::Poultry, 158.0, 120.0, Verdict::Meets)]
#[case(Authority::GreatBritain, Food::WholeMeat, 149.0, 600.0, Verdict::Meets)]
#[case::a_burger(Authority::GreatBritain, Food::GroundMeat, 149.0, 600.0, Verdict::Breaks)]
#[case::a_burger_held(Authority::GreatBritain, Food::GroundMeat, 149.0, 816.0, Verdict::Meets)]
// Health Canada's chart.
#[case(Authority::Canada, Food::GroundMeat, 160.0, 0.0, Verdict::Meets)]
#[case(Authority::Canada, Food::GroundMeat, 159.0, 0.0, Verdict::Breaks)]
#[case::a_whole_bird(Authority::Canada, Food::Poultry, 165.0, 0.0, Verdict::Breaks)]
#[case::a_whole_bird_at_82(Authority::Canada, Food::Poultry, 180.0, 0.0, Verdict::Meets)]
#[case::shellfish(Authority::Canada, Food::Fish, 158.0, 0.0, Verdict::Breaks)]
fn an_endpoint_is_that_of_its_authority_and_edition(
    #[case] authority: Authority,
    #[case] food: Food,
    #[case] inside: f64,
    #[case] held: f64,
    #[case] verdict: Verdict,
) {
    let plan = plan(food, Some(inside), Some(seconds(held)));
    let found = findings(&plan, &Process::unknown(PLACE), authority);
    let finding = found.iter().find(|finding| finding.rule.id == "cook/endpoint").unwrap();
    assert_eq!(finding.verdict, verdict, "{finding:?}");
}

#[test]
fn any_poultry_makes_it_poultry_everywhere() {
    for authority in [
        Authority::UsFsis,
        Authority::UsFoodCode2022,
        Authority::UsFoodCode2013,
        Authority::Canada,
        Authority::UsConsumer,
    ] {
        let meat = plan(Food::GroundMeat, Some(160.0), Some(seconds(15.0)));
        let mixed = Plan { animals: Animals::SomePoultry, ..meat };
        let verdict = |plan: &Plan| {
            let found = findings(plan, &Process::unknown(PLACE), authority);
            found.iter().find(|finding| finding.rule.id == "cook/endpoint").unwrap().verdict
        };
        assert_eq!(verdict(&meat), Verdict::Meets, "{authority:?}");
        // The federal guideline keeps 160 °F as an older endpoint of poultry.
        let fsis = authority == Authority::UsFsis;
        assert_eq!(verdict(&mixed) == Verdict::Meets, fsis, "{authority:?}");
    }
}

#[rstest]
#[case(119.0, Verdict::Meets)]
#[case(121.0, Verdict::Breaks)]
fn reheating_takes_no_more_than_two_hours(#[case] time: f64, #[case] verdict: Verdict) {
    let stages = [stage(Some(time / 60.0), None, None)];
    let plan = plan(Food::Leftovers, Some(165.0), Some(seconds(15.0)));
    let rule = |process: &Process<'_>, authority| {
        let found = findings(&plan, process, authority);
        found.iter().find(|finding| finding.rule.id == "cook/reheat-time").map(|f| f.verdict)
    };
    let process = cooked(&stages, 165.0);
    assert_eq!(rule(&process, Authority::UsFoodCode2022), Some(verdict));
    assert_eq!(rule(&process, Authority::UsConsumer), None);
    let unknown = Process::unknown(PLACE);
    assert_eq!(rule(&unknown, Authority::UsFoodCode2022), Some(Verdict::Unproven));
}

#[test]
fn a_cook_that_is_broken_off_is_never_proven_and_breaks_after_an_hour() {
    let of = |whole, m: Option<f64>, code| {
        partial(whole, m.map(minutes).and_then(exactly), code, PLACE).map(|f| f.verdict)
    };
    let verdict = |m, code| of(Verdict::Breaks, m, code).unwrap();
    assert_eq!(verdict(Some(60.0), true), Verdict::Unproven);
    assert_eq!(verdict(Some(61.0), true), Verdict::Breaks);
    assert_eq!(verdict(Some(61.0), false), Verdict::Unproven);
    assert_eq!(verdict(None, true), Verdict::Unproven);
    // A whole cook that is heated again is none.
    assert_eq!(of(Verdict::Meets, Some(61.0), true), None);
    assert_eq!(of(Verdict::Unproven, Some(61.0), true), Some(Verdict::Unproven));
}

#[rstest]
#[case::hot(137.0, false, Some("2 °F"), Verdict::Meets)]
#[case::hot_if_the_thermometer_is_right(136.0, false, Some("2 °F"), Verdict::Unproven)]
#[case::a_roast(132.0, true, Some("2 °F"), Verdict::Meets)]
#[case::not_a_roast(132.0, false, Some("2 °F"), Verdict::Unproven)]
#[case::by_no_known_thermometer(150.0, false, None, Verdict::Unproven)]
fn hot_food_is_held_at_135_and_a_roast_at_130(
    #[case] at: f64,
    #[case] roast: bool,
    #[case] off: Option<&str>,
    #[case] verdict: Verdict,
) {
    let off = off.map(|off| read_tolerance(off).unwrap());
    let finding = hot_holding(fahrenheit(at), roast, false, off, PLACE);
    assert_eq!(finding.verdict, verdict);
    assert_eq!(finding.missing.is_some(), verdict != Verdict::Meets);
}

#[test]
fn food_that_is_held_too_cold_is_told_how_hot_whatever_is_known_of_the_thermometer() {
    for (off, hot) in [(None, 130.0), (Some("2 °F"), 132.0)] {
        let off = off.map(|off| read_tolerance(off).unwrap());
        let finding = hot_holding(fahrenheit(100.0), true, false, off, PLACE);
        assert_eq!(finding.mend, Some(Mend::KeepAtOrAbove(fahrenheit(hot))));
        assert!(finding.missing.unwrap().what.contains("time in place of temperature"));
    }
}

// 67 °C takes the ten minutes of the row of 65 °C in Britain; 70 °C would take two.
#[rstest]
#[case::in_britain(Authority::GreatBritain, 67.0, 2.0, Some("hotter row"))]
#[case::in_britain_long_enough(Authority::GreatBritain, 70.0, 2.0, None)]
#[case::in_britain_at_its_hottest(Authority::GreatBritain, 85.0, 0.0, None)]
#[case::in_a_shop(Authority::UsFoodCode2022, 58.0, 2.0, Some("oven of its own"))]
fn the_chart_of_roasts_is_spoken_of_where_it_is_and_a_hotter_row_where_there_is_one(
    #[case] authority: Authority,
    #[case] celsius: f64,
    #[case] held: f64,
    #[case] note: Option<&str>,
) {
    let inside = Reading::new(celsius, Scale::Celsius).ok();
    let held = exactly(minutes(held));
    let plan = Plan { inside, planned: true, held, ..plan(Food::WholeMeat, None, None) };
    let found = findings(&plan, &cooked(&[], 160.0), authority);
    let finding = found.iter().find(|finding| finding.rule.id == "cook/endpoint").unwrap();
    assert_eq!(finding.note.is_some(), note.is_some(), "{finding:?}");
    assert!(note.is_none_or(|note| finding.note.unwrap().contains(note)), "{finding:?}");
}

#[test]
fn what_takes_too_long_is_told_how_long_it_may_take() {
    let process = Process { come_up: exactly(hours(7.0)), ..cooked(&[], 160.0) };
    let mend = of(&process, "cook/come-up").mend;
    assert_eq!(mend, Some(Mend::HeatWithin(hours(6.0))));
    let stages = [stage(Some(3.0), None, None)];
    let plan = plan(Food::Leftovers, Some(165.0), Some(seconds(15.0)));
    let found = findings(&plan, &cooked(&stages, 165.0), Authority::UsFoodCode2022);
    let reheated = found.iter().find(|finding| finding.rule.id == "cook/reheat-time").unwrap();
    assert_eq!(reheated.mend, Some(Mend::HeatWithin(hours(2.0))));
}

fn aim(logs: f64) -> Aim {
    let z = read_tolerance("10 °F").unwrap();
    let resistance = Resistance::new(seconds(60.0), fahrenheit(150.0), z).unwrap();
    Aim { resistance, counted_from: fahrenheit(130.0), logs, place: PLACE }
}

#[test]
fn lethality_informs_and_never_breaks() {
    // Ten minutes at the temperature of D: ten logs, and 10^0.2 of that at 2 °F more.
    let points = record(&[(0.0, 150.0), (1.0 / 6.0, 150.0)]);
    let process = recorded(&points, Some("2 °F"));
    let finding = process.check_lethality(&aim(6.0));
    assert_eq!((finding.verdict, finding.past_advice), (Verdict::Meets, false));
    let ends = finding.found.unwrap();
    let logs = |measure| match measure {
        Measure::Logs(logs) => logs.0,
        other => panic!("{other:?}"),
    };
    let factor = 10.0_f64.powf(0.2);
    assert!((logs(ends.low()) - 10.0 / factor).abs() < 1e-9);
    assert!((logs(ends.high()) - 10.0 * factor).abs() < 1e-9);
    let straddles = process.check_lethality(&aim(10.0));
    assert_eq!(straddles.verdict, Verdict::Unproven);
    let short = process.check_lethality(&aim(20.0));
    assert_eq!((short.verdict, short.past_advice), (Verdict::Meets, true));
    assert!(short.note.unwrap().contains("stands in for no row"));
    let blind = recorded(&points, None).check_lethality(&aim(6.0));
    assert_eq!(blind.verdict, Verdict::Unproven);
    let unread = Process::unknown(PLACE).check_lethality(&aim(6.0));
    assert_eq!(unread.verdict, Verdict::Unproven);
    assert!(unread.missing.is_some());
    assert!(!finding.note.unwrap().contains("far apart"));
    // One long step up: reached by the integral, and not by its lower end.
    let steep = record(&[(0.0, 131.0), (1.0, 160.0)]);
    let process = recorded(&steep, Some("0 °F"));
    let reached = process.check_lethality(&aim(6.0));
    assert_eq!(reached.verdict, Verdict::Meets);
    assert!(reached.note.unwrap().contains("far apart"));
    let not_reached = process.check_lethality(&aim(600.0));
    assert!(!not_reached.note.unwrap().contains("far apart"));
}

proptest! {
    // Widening what is known of the probe never proves more.
    #[test]
    fn a_worse_probe_never_proves_what_a_better_one_does_not(
        inside in prop::collection::vec(125.0..165.0f64, 2..20),
        off in 0.0..4.0f64, worse in 0.0..4.0f64,
    ) {
        let points: Vec<_> = inside
            .iter()
            .zip(0u32..)
            .map(|(&f, n)| Point::new(minutes(f64::from(n)), fahrenheit(f)).unwrap())
            .collect();
        let rules = ["cook/record", "cook/come-up"];
        let verdicts = |off: f64| {
            let process = recorded(&points, Some(&format!("{off:.3} °F")));
            rules.map(|rule| of(&process, rule).verdict)
        };
        for (good, bad) in verdicts(off).into_iter().zip(verdicts(off + worse)) {
            prop_assert!(bad != Verdict::Meets || good == Verdict::Meets);
            prop_assert!(bad != Verdict::Breaks || good == Verdict::Breaks);
        }
    }

    // More steam, or longer, never turns what meets into what does not.
    #[test]
    fn more_steam_is_never_worse(steamed in 0.0..6.0f64, dry in 0.0..6.0f64, more in 0.0..3.0f64) {
        let verdict = |steamed: f64| {
            let stages = [stage(Some(steamed), STEAM, None), stage(Some(dry), None, Some(20.0))];
            of(&cooked(&stages, 150.0), "cook/humidity").verdict
        };
        prop_assert!(verdict(steamed + more) <= verdict(steamed));
    }
}
