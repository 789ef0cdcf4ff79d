//! Freezing, frozen life, thawing and opening, held to printed tables and to properties.

use greenweight::chill::{exposed_organisms, exposure};
use greenweight::store::{
    EQUIVALENT_TIME, Heats, LifeUsed, NotFreezing, PRACTICAL_LIFE, Pack, Shape, Span, THAW_TURKEY,
    Thawing, equivalent_time, garlic_in_oil, latest_use, life_between, practical_life, q10,
    thaw_time, thaw_turkey,
};
use greenweight::units::{Reading, Scale, Time, centimeters, days, hours, pounds};
use proptest::prelude::*;
use rstest::rstest;

fn celsius(value: f64) -> Reading {
    Reading::new(value, Scale::Celsius).unwrap()
}

const MEAT: Heats = Heats { unfrozen: 3.675e6, latent: 2.3e8, frozen: 1.9e6 };

fn span(start: f64, middle: f64, around: f64) -> Span {
    Span { start: celsius(start), middle: celsius(middle), around: celsius(around) }
}

fn slab(cm: f64) -> Pack {
    Pack::new(Shape::Slab, centimeters(cm), 20.0, 1.5).unwrap()
}

fn longest(pack: Pack, span: Span) -> Time {
    pack.freezing_time(MEAT, span).unwrap().high()
}

// Printed by the Food Standards Agency: 10 × 10^((90 − T)/z) minutes, z 9 K below 90 °C and 10 K from there up,
// to the figures it prints.
#[test]
fn every_row_of_the_equivalent_times_is_the_formula() {
    assert_eq!(EQUIVALENT_TIME.len(), 21);
    for row in &EQUIVALENT_TIME {
        let z = if row.value.celsius < 90.0 { 9.0 } else { 10.0 };
        let formula = 10.0 * 10f64.powf((90.0 - row.value.celsius) / z);
        let printed = row.value.time.value / 60.0;
        let figure = if printed < 10.0 { 0.05 } else { 0.5 };
        assert!((printed - formula).abs() <= figure, "{}: {formula}", row.row.key);
        // The row at or below a temperature, and never the one above it.
        assert_eq!(equivalent_time(celsius(row.value.celsius + 0.9)).unwrap().row.key, row.row.key);
    }
    assert!(equivalent_time(celsius(79.9)).is_none());
}

#[rstest]
#[case::air_that_is_too_warm(slab(4.0), span(4.0, -18.0, -17.0))]
#[case::air_as_cold_as_the_middle(slab(4.0), span(4.0, -18.0, -18.0))]
#[case::a_home_freezer_and_a_middle_as_cold(slab(4.0), span(4.0, -18.0, -16.0))]
#[case::air_beyond_the_range(slab(4.0), span(4.0, -18.0, -46.0))]
#[case::air_that_is_hardly_cold(slab(4.0), span(4.0, -10.0, -14.0))]
#[case::a_start_that_is_frozen(slab(4.0), span(-9.0, -18.0, -30.0))]
#[case::too_thick(slab(160.0), span(4.0, -18.0, -30.0))]
#[case::too_thin(slab(0.9), span(4.0, -18.0, -30.0))]
fn no_time_is_given_outside_the_range_of_a_method(#[case] pack: Pack, #[case] span: Span) {
    assert!(pack.freezing_time(MEAT, span).is_err());
}

#[test]
fn what_cannot_be_is_refused() {
    for (size, surface, conductivity) in [
        (0.0, 20.0, 1.5),
        (f64::NAN, 20.0, 1.5),
        (4.0, 0.0, 1.5),
        (4.0, 20.0, -1.0),
        (4.0, 20.0, 99.0),
    ] {
        assert!(Pack::new(Shape::Slab, centimeters(size), surface, conductivity).is_err());
    }
    assert!(slab(4.0).wrapped(centimeters(20.0), 0.1).is_err());
    for heats in [
        Heats { latent: f64::NAN, ..MEAT },
        Heats { unfrozen: 0.0, ..MEAT },
        Heats { frozen: 1e9, ..MEAT },
    ] {
        assert!(slab(4.0).freezing_time(heats, span(4.0, -18.0, -30.0)).is_err());
    }
    assert!(matches!(
        slab(4.0).by_plank(2.5e8, celsius(-1.0), celsius(-1.0)),
        Err(NotFreezing::TooWarm { .. })
    ));
}

// Both methods claim ten percent: their ranges overlap for the same slab.
#[test]
fn two_methods_agree_within_what_they_claim() {
    let span = span(4.0, -18.0, -30.0);
    let simple = slab(4.0).freezing_time(MEAT, span).unwrap();
    let fitted = slab(4.0).slab_by_regression(MEAT, 246.15e6, celsius(-1.5), span).unwrap();
    assert!(simple.low() < fitted.high() && fitted.low() < simple.high());
    // Plank leaves out what comes before and after, and is shorter than both.
    let plank = slab(4.0).by_plank(MEAT.latent, celsius(-1.5), celsius(-30.0)).unwrap();
    assert!(plank < simple.low() && plank < fitted.low());
    for (enthalpy, freezing, start, around) in [
        (246.15e6, -1.5, 80.0, -30.0),
        (246.15e6, -1.5, 4.0, -14.0),
        (90e6, -1.5, 4.0, -30.0),
        (f64::NAN, -1.5, 4.0, -30.0),
    ] {
        let span = Span { start: celsius(start), around: celsius(around), ..span };
        let time = slab(4.0).slab_by_regression(MEAT, enthalpy, celsius(freezing), span);
        assert!(time.is_err(), "{enthalpy} {start} {around}");
    }
}

#[test]
fn a_life_is_read_between_rows_and_never_beyond_them() {
    let life = |c| practical_life("ground beef", "practical storage life", celsius(c));
    let months = |c| life(c).map(|life| life.value / 86_400.0 / 30.0);
    assert_eq!((months(-12.0), months(-18.0), months(-24.0)), (Some(6.0), Some(10.0), Some(15.0)));
    assert!(months(-15.0).is_some_and(|months| (months - 60f64.sqrt()).abs() < 1e-9));
    assert_eq!((life(-11.9), life(-24.1)), (None, None));
    assert!(practical_life("ground beef", "good", celsius(-18.0)).is_none());
    // The rows at −4 °C, if there were any, are too near the freezing point.
    for row in &PRACTICAL_LIFE {
        assert!(row.value.celsius <= -5.0 && row.value.life > days(0.0), "{}", row.row.key);
    }
    let same = (celsius(-12.0), days(60.0));
    assert!(life_between(same, same, celsius(-12.0)).is_none());
    assert!(q10(same, same).is_none());
    assert!(life_between(same, (celsius(-18.0), days(0.0)), celsius(-15.0)).is_none());
}

#[test]
fn the_order_of_temperatures_does_not_matter_and_a_gap_is_not_filled() {
    let of = |stays: &[(f64, f64)]| {
        let mut used = LifeUsed::of("ground beef", "practical storage life");
        stays.iter().for_each(|&(d, c)| used.add(days(d), celsius(c)));
        used.share()
    };
    let (one, other) = (of(&[(30.0, -12.0), (90.0, -20.0)]), of(&[(90.0, -20.0), (30.0, -12.0)]));
    assert!((one.unwrap() - other.unwrap()).abs() < 1e-15);
    assert_eq!(of(&[(30.0, -12.0), (1.0, -2.0), (30.0, -12.0)]), None);
    // All of its life is one, and half of it a half.
    let life = practical_life("ground beef", "practical storage life", celsius(-20.0)).unwrap();
    let days_of_it = life.value / days(1.0).value;
    assert!((of(&[(days_of_it, -20.0)]).unwrap() - 1.0).abs() < 1e-12);
    assert!((of(&[(days_of_it / 2.0, -20.0)]).unwrap() - 0.5).abs() < 1e-12);
    assert_eq!(of(&[(-1.0, -12.0)]), None);
}

#[test]
fn a_turkey_that_two_rows_share_takes_the_longer() {
    assert_eq!(thaw_turkey(pounds(12.0)).unwrap().value.refrigerator.1, days(4.0));
    assert!(thaw_turkey(pounds(3.9)).is_none() && thaw_turkey(pounds(24.1)).is_none());
    let takes = thaw_time(Thawing::Refrigerator, pounds(20.0)).unwrap();
    assert_eq!((takes.low(), takes.high()), (days(4.0), days(5.0)));
    for how in [Thawing::Microwave, Thawing::Room, Thawing::RunningWater, Thawing::Cooking] {
        assert!(thaw_time(how, pounds(4.0)).is_none());
    }
    // 24 hours to 5 lb, and to 4: the printed days of every turkey lie around them.
    for row in &THAW_TURKEY {
        let takes = thaw_time(Thawing::Refrigerator, row.value.mass.1).unwrap();
        assert!(takes.low() < row.value.refrigerator.1 && row.value.refrigerator.1 <= takes.high());
    }
}

// Five documents say 3, 4, 4, 7 and 10 days; the last two no longer count.
#[test]
fn of_garlic_in_oil_the_strictest_current_row_counts() {
    assert_eq!(garlic_in_oil().unwrap().value.most, days(3.0));
}

#[test]
fn exposure_is_stepped_to_the_warmer_band() {
    let most = |organism: &str, at| exposure(organism, at).map(|row| row.value.most);
    let f = |value| Reading::new(value, Scale::Fahrenheit).unwrap();
    let names: Vec<_> = exposed_organisms().collect();
    assert_eq!(names.len(), 14, "{names:?}");
    for name in names {
        let mut before: Option<Time> = None;
        for tenth in 300..1300 {
            let now = most(name, f(f64::from(tenth) / 10.0));
            if let Some(before) = before {
                assert!(now.is_some_and(|now| now <= before), "{name} at {tenth}: a gap");
            }
            before = now.or(before);
        }
        assert!(before.is_some(), "{name}");
    }
    // Printed 50 °F beside 7 to 10 °C: from 7 °C up it counts on both scales.
    assert_eq!(most("S. aureus", f(46.0)), Some(hours(336.0)));
    assert_eq!(most("S. aureus", celsius(8.0)), Some(hours(336.0)));
    assert_eq!(most("nothing", f(60.0)), None);
}

proptest! {
    #[test]
    fn colder_air_and_thinner_packs_freeze_sooner(
        cm in 5.0..12.0f64, thinner in 0.7..1.0f64,
        around in -40.0..-22.0f64, colder in 0.1..4.0f64, shape in 0usize..3,
    ) {
        let shape = [Shape::Slab, Shape::Cylinder, Shape::Sphere][shape];
        let pack = |cm| Pack::new(shape, centimeters(cm), 20.0, 1.5).unwrap();
        let time = longest(pack(cm), span(4.0, -18.0, around));
        prop_assert!(longest(pack(cm), span(4.0, -18.0, around - colder)) < time);
        prop_assert!(longest(pack(cm * thinner), span(4.0, -18.0, around)) <= time);
        prop_assert!(longest(pack(cm).wrapped(centimeters(0.05), 0.2).unwrap(), span(4.0, -18.0, around)) > time);
        prop_assert!(longest(pack(cm), span(10.0, -18.0, around)) > time);
    }

    #[test]
    fn the_thickest_pack_takes_just_the_time(hours_ in 1.0..24.0f64, around in -40.0..-22.0f64) {
        let span = span(4.0, -18.0, around);
        if let Ok(thickest) = slab(4.0).thickest(MEAT, span, hours(hours_)) {
            let takes = longest(thickest, span).value / 3600.0;
            prop_assert!((takes - hours_).abs() < 1e-9 * hours_, "{takes} and {hours_}");
        }
    }

    // Colder never shortens a life.
    #[test]
    fn colder_never_shortens_a_life(row in 0usize..94, at in 0.0..1.0f64, colder in 0.0..1.0f64) {
        let (item, criterion) = (PRACTICAL_LIFE[row].value.item, PRACTICAL_LIFE[row].value.criterion);
        let rows = || PRACTICAL_LIFE.iter().filter(|r| r.value.item == item && r.value.criterion == criterion);
        let warm = rows().map(|r| r.value.celsius).fold(f64::NEG_INFINITY, f64::max);
        let cold = rows().map(|r| r.value.celsius).fold(f64::INFINITY, f64::min);
        let a = warm + (cold - warm) * at;
        let b = a + (cold - a) * colder;
        let life = |c| practical_life(item, criterion, celsius(c)).unwrap();
        prop_assert!(life(b) >= life(a) * (1.0 - 1e-12), "{item}: {a} and {b}");
    }

    #[test]
    fn opening_never_lengthens(unopened in 0.0..400.0f64, after in 0.0..400.0f64, opened in 0.0..400.0f64) {
        let latest = latest_use(days(unopened), days(after), days(opened));
        prop_assert!(latest <= days(unopened));
        prop_assert!(latest <= days(after) + days(opened));
    }
}

// Rows that disagree are kept side by side, and none of them is judged by.
#[test]
fn the_traps_of_the_open_data_set_are_known() {
    let references = greenweight_references::References::read();
    let data = &references.table("store/consumer-data").rows;
    let record = |id: f64| data.iter().find(|row| row.number("record") == id).unwrap();
    // A month for cold-smoked fish in an airless pack; the printed leaflet says eight days.
    assert_eq!(record(167.0).number("refrigerate_from_purchase_max_d"), 30.0);
    let leaflet = &references.table("store/consumer-leaflet").rows;
    assert_eq!(leaflet[1].number("refrigerate_max_d"), 8.0);
    // Two records of fresh ham.
    assert_eq!(record(94.0).number("refrigerate_from_purchase_max_d"), 7.0);
    assert_eq!(record(677.0).number("refrigerate_max_d"), 5.0);
    assert_eq!(data.iter().filter(|row| row.note.starts_with("Flagged: ")).count(), 26);
    // Dempster 1972: vacuum-packed bacon spoils sooner where it is warmer, whatever the cure.
    let bacon = &references.table("store/vacuum-bacon").rows;
    for cure in ["hygienic sweet cure", "commercial sweet cure", "Wiltshire"] {
        let mut lives: Vec<_> = bacon
            .iter()
            .filter(|row| row.words("cure") == cure)
            .map(|row| (row.number("temp_c"), row.number("life_d")))
            .collect();
        lives.sort_by(|a, b| a.0.total_cmp(&b.0));
        assert_eq!(lives.len(), 3, "{cure}");
        assert!(lives.windows(2).all(|pair| pair[0].1 > pair[1].1), "{cure}: {lives:?}");
    }
}

#[test]
fn cook_chill_takes_the_cold_in_time_and_the_month() {
    use greenweight::shelf::CookChill;
    let of = |to_34: Option<f64>, at_41: f64, from_packing: f64| {
        CookChill { to_34: to_34.map(hours), at_41: days(at_41), from_packing: days(from_packing) }
            .keeps_to_the_code()
    };
    assert!(of(Some(48.0), 0.0, 30.0) && of(None, 7.0, 7.0));
    assert!(!of(Some(48.0), 0.0, 31.0), "the cold came in time, and the month is over");
    assert!(!of(Some(49.0), 0.0, 30.0), "the month is kept, and the cold came late");
    assert!(!of(None, 7.0, 8.0) && !of(Some(40.0), 7.1, 20.0));
}

#[test]
fn a_pack_within_its_days_needs_no_mend_and_a_frozen_one_no_days() {
    use greenweight::authority::Authority;
    use greenweight::finding::{Mend, Place};
    use greenweight::food::Food;
    use greenweight::range::Range;
    use greenweight::shelf::{Packed, check_pack};
    let of = |frozen: bool, kept: f64| {
        let packed = Packed {
            food: Food::GroundMeat,
            raw: true,
            cured_here: false,
            frozen_before: None,
            frozen,
            opened: false,
            activity: None,
            ph: None,
            brine: None,
            kept: Range::exactly(days(kept)).ok(),
            place: Place::default(),
        };
        let mut found = Vec::new();
        check_pack(&packed, Authority::UsFoodCode2022, &mut |finding| found.push(finding));
        found.into_iter().map(|finding| finding.mend).collect::<Vec<_>>()
    };
    assert_eq!(of(false, 30.0), [None]);
    assert_eq!(of(false, 31.0), [Some(Mend::KeepFor(days(30.0)))]);
    assert!(of(true, 31.0).is_empty());
}

#[test]
fn a_smoked_fish_is_judged_by_its_own_authority_and_proven_by_a_thermometer() {
    use greenweight::authority::Authority;
    use greenweight::finding::{Mend, Place, Verdict};
    use greenweight::range::Range;
    use greenweight::smoke::{SmokedFish, check_fish};
    use greenweight::units::{minutes, read_tolerance};
    let fahrenheit = |value| Reading::new(value, Scale::Fahrenheit).unwrap();
    let hot = |authority, inside: f64, held: f64, off: Option<&str>| {
        let fish = SmokedFish {
            cold: false,
            airless: true,
            brine: Range::exactly(4.0).ok(),
            nitrite: None,
            less_salt: false,
            inside: Some(fahrenheit(inside)),
            thermometer: off.map(|off| read_tolerance(off).unwrap()),
            held: Range::exactly(minutes(held)).ok(),
            place: Place::default(),
        };
        let mut found = Vec::new();
        check_fish(&fish, authority, &mut |finding| found.push(finding));
        let of_heat = found.into_iter().filter(|finding| finding.rule.id == "smoke/hot-fish");
        of_heat.map(|finding| (finding.verdict, finding.mend)).collect::<Vec<_>>()
    };
    let fda = Authority::UsFda;
    assert_eq!(hot(fda, 150.0, 30.0, Some("1 °F")), [(Verdict::Meets, None)]);
    assert_eq!(hot(fda, 150.0, 30.0, None), [(Verdict::Unproven, None)]);
    let longer = Mend::HoldFor(minutes(30.0));
    assert_eq!(hot(fda, 150.0, 20.0, Some("1 °F")), [(Verdict::Breaks, Some(longer))]);
    let hotter = Mend::CookTo(fahrenheit(146.0));
    assert_eq!(hot(fda, 140.0, 40.0, Some("1 °F")), [(Verdict::Breaks, Some(hotter))]);
    assert!(hot(Authority::UsConsumer, 150.0, 30.0, Some("1 °F")).is_empty());
}
