//! What the readers of quantities accept and refuse, and what printing keeps.
//!
//! Expected masses and volumes are made with the exact units; no figure of any rule
//! stands here.

use greenweight::units::volume::{
    australian_tablespoon, imperial_fluid_ounce, imperial_gallon, imperial_pint, liter, metric_cup,
    metric_tablespoon, metric_teaspoon, milliliter, us_cup, us_fluid_ounce, us_gallon, us_pint,
    us_quart, us_tablespoon, us_teaspoon,
};
use greenweight::units::{
    Amount, Kind, Mass, MassUnit, Measures, ReadError, ReadProblem, Reading, Scale, Shown,
    ShownRange, Volume, floor_to_division, grams, kilograms, minutes, ounces, pounds, read_amount,
    read_concentration, read_duration, read_liquid_amount, read_mass, read_temperature,
    read_tolerance, seconds, show_duration, show_mass, show_mass_like,
};
use proptest::prelude::*;
use rstest::rstest;

const DAY: f64 = 86_400.0;

fn at_fault(text: &str, error: ReadError) -> (ReadProblem, &str) {
    (error.problem(), text.get(error.span()).expect("a span lies within its text"))
}

// Weights

#[rstest]
#[case("0.2 oz", ounces(0.2))]
#[case("1/4 oz", ounces(0.25))]
#[case("¼ oz", ounces(0.25))]
#[case("1¼ oz", ounces(1.25))]
#[case("1 ¼ oz", ounces(1.25))]
#[case("1 1/4 oz", ounces(1.25))]
#[case("1\u{a0}1/4\u{a0}oz", ounces(1.25))]
#[case("1 1\u{2044}4 oz", ounces(1.25))]
#[case("11/4 oz", ounces(2.75))]
#[case("2½ lb", pounds(2.5))]
#[case(".5 oz", ounces(0.5))]
#[case("7 lb", pounds(7.0))]
#[case("2 pounds", pounds(2.0))]
#[case("4 ounces", ounces(4.0))]
#[case("4 Ounces", ounces(4.0))]
#[case("4 oz.", ounces(4.0))]
#[case("3 lbs", pounds(3.0))]
#[case("250 g", grams(250.0))]
#[case("250g", grams(250.0))]
#[case("  250   g  ", grams(250.0))]
#[case("007 g", grams(7.0))]
#[case("3.5 kg", kilograms(3.5))]
#[case("3.5 kilograms", kilograms(3.5))]
#[case("500 mg", Mass::new::<greenweight::units::mass::milligram>(500.0))]
#[case("2 lb 3 oz", ounces(35.0))]
#[case("2lb3oz", ounces(35.0))]
#[case("2 pounds 3 1/2 ounces", ounces(35.5))]
#[case("2 lb ½ oz", ounces(32.5))]
#[case("1 kg 200 g", grams(1200.0))]
#[case("0 g", grams(0.0))]
fn a_weight_reads_as_written(#[case] text: &str, #[case] expected: Mass) {
    assert_eq!(read_mass(text), Ok(expected));
}

#[rstest]
#[case('½', 1.0, 2.0)]
#[case('⅓', 1.0, 3.0)]
#[case('⅔', 2.0, 3.0)]
#[case('¼', 1.0, 4.0)]
#[case('¾', 3.0, 4.0)]
#[case('⅛', 1.0, 8.0)]
#[case('⅜', 3.0, 8.0)]
#[case('⅝', 5.0, 8.0)]
#[case('⅞', 7.0, 8.0)]
#[case('⅕', 1.0, 5.0)]
#[case('⅖', 2.0, 5.0)]
#[case('⅗', 3.0, 5.0)]
#[case('⅘', 4.0, 5.0)]
#[case('⅙', 1.0, 6.0)]
#[case('⅚', 5.0, 6.0)]
fn a_fraction_sign_is_its_fraction(#[case] sign: char, #[case] above: f64, #[case] below: f64) {
    assert_eq!(read_mass(&format!("{sign} lb")), Ok(pounds(above / below)));
    assert_eq!(read_mass(&format!("3{sign} lb")), Ok(pounds((3.0 * below + above) / below)));
}

#[test]
fn one_and_a_quarter_is_not_eleven_quarters() {
    let read = |text| read_mass(text).unwrap();
    assert_eq!(read("1 1/4 oz"), ounces(1.25));
    assert_eq!(read("11/4 oz"), ounces(2.75));
    assert_eq!(read("1/4 oz"), ounces(0.25));
}

#[test]
fn the_number_is_the_one_a_program_would_write() {
    assert_eq!(read_mass("0.2 oz"), Ok(ounces(0.2)));
    assert_eq!(read_mass("0.1 kg"), Ok(kilograms(0.1)));
    assert_eq!(read_mass("123456789.123456 kg"), Ok(kilograms(123_456_789.123_456)));
}

#[rstest]
#[case("", ReadProblem::Empty(Kind::Weight), "")]
#[case(" \u{a0}\t", ReadProblem::Empty(Kind::Weight), "")]
#[case("7", ReadProblem::BareNumber(Kind::Weight), "7")]
#[case(" 1 1/4 ", ReadProblem::BareNumber(Kind::Weight), "1 1/4")]
#[case("2 lb 3", ReadProblem::BareNumber(Kind::Weight), "3")]
#[case("two lb", ReadProblem::NotANumber(Kind::Weight), "two")]
#[case("oz", ReadProblem::NotANumber(Kind::Weight), "oz")]
#[case("NaN g", ReadProblem::NotANumber(Kind::Weight), "NaN")]
#[case(". oz", ReadProblem::NotANumber(Kind::Weight), ".")]
#[case("2 stone", ReadProblem::UnknownUnit(Kind::Weight), "stone")]
#[case("2 Mg", ReadProblem::UnknownUnit(Kind::Weight), "Mg")]
#[case("2 (g)", ReadProblem::UnknownUnit(Kind::Weight), "(g)")]
#[case("3 fl g", ReadProblem::UnknownUnit(Kind::Weight), "fl g")]
#[case("5 min", ReadProblem::WrongKind(Kind::Weight), "min")]
#[case("5 %", ReadProblem::WrongKind(Kind::Weight), "%")]
#[case("5 g/kg", ReadProblem::WrongKind(Kind::Weight), "g/kg")]
#[case("1 fl oz", ReadProblem::VolumeForWeight, "fl oz")]
#[case("250 mL", ReadProblem::VolumeForWeight, "mL")]
#[case("1,5 kg", ReadProblem::Comma, ",")]
#[case("1.250,0 g", ReadProblem::Comma, ",")]
#[case("1,000 g", ReadProblem::Comma, ",")]
#[case("2 lb, 3 oz", ReadProblem::Comma, ",")]
#[case("1-1/4 oz", ReadProblem::Hyphen, "1-1/4")]
#[case("1–¼ oz", ReadProblem::Hyphen, "1–¼")]
#[case("1 - 1/4 oz", ReadProblem::Hyphen, "1 - 1/4")]
#[case("2-lb", ReadProblem::Hyphen, "-")]
#[case("1 250 g", ReadProblem::SpacedDigits, "1 250")]
#[case("1.5 250 g", ReadProblem::SpacedDigits, "1.5 250")]
#[case("1 .5 oz", ReadProblem::SpacedDigits, ".")]
#[case("1 / 4 oz", ReadProblem::SpacedSlash, "/")]
#[case("1/ 4 oz", ReadProblem::SpacedSlash, "1/")]
#[case("1 5/4 oz", ReadProblem::ImproperInMixed, "1 5/4")]
#[case("1 4/4 oz", ReadProblem::ImproperInMixed, "1 4/4")]
#[case("1.5/2 oz", ReadProblem::DecimalInFraction, "1.5/")]
#[case("1/2.5 oz", ReadProblem::DecimalInFraction, "1/2.")]
#[case("1.5 1/2 oz", ReadProblem::DecimalInFraction, "1.5 1")]
#[case("1.5½ oz", ReadProblem::DecimalInFraction, "1.5½")]
#[case("1.2.3 g", ReadProblem::TwoPoints, "1.2.3")]
#[case("1..2 g", ReadProblem::TwoPoints, "1..2")]
#[case("5. oz", ReadProblem::PointWithoutDigits, "5.")]
#[case("1/2. oz", ReadProblem::PointWithoutDigits, "1/2.")]
#[case("1/0 oz", ReadProblem::DivisionByZero, "1/0")]
#[case("1 1/0 oz", ReadProblem::DivisionByZero, "1 1/0")]
#[case("1/1001 oz", ReadProblem::FractionTooFine, "1001")]
#[case("２ g", ReadProblem::ForeignDigits, "２")]
#[case("1٣ g", ReadProblem::ForeignDigits, "٣")]
#[case("⅐ oz", ReadProblem::ForeignDigits, "⅐")]
#[case("2 lb 5² oz", ReadProblem::ForeignDigits, "²")]
#[case("1e3 g", ReadProblem::Exponent, "1e3")]
#[case("1.5E-3 g", ReadProblem::Exponent, "1.5E-3")]
#[case("-5 g", ReadProblem::Negative(Kind::Weight), "-5")]
#[case("−5 g", ReadProblem::Negative(Kind::Weight), "−5")]
#[case("2 to -3 lb", ReadProblem::Negative(Kind::Weight), "-3")]
#[case("+5 g", ReadProblem::PlusSign, "+5")]
#[case("1.234567890123456 g", ReadProblem::TooManyDigits, "1.234567890123456")]
#[case("1234567890123456 g", ReadProblem::TooManyDigits, "1234567890123456")]
#[case("0.00000000000000000000001 g", ReadProblem::TooManyDigits, "0.00000000000000000000001")]
#[case("1000000000 g", ReadProblem::TooLarge, "1000000000")]
#[case("1/2/3 oz", ReadProblem::BrokenNumber, "1/2/")]
#[case("½4 oz", ReadProblem::BrokenNumber, "½4")]
#[case("1/2 1/2 oz", ReadProblem::BrokenNumber, "1/2 1")]
#[case("1/x oz", ReadProblem::BrokenNumber, "1/")]
#[case("2 lb.3 oz", ReadProblem::BrokenNumber, ".3")]
#[case("20-25 g", ReadProblem::RangeNotRead(Kind::Weight), "20-25")]
#[case("20 to 25 g", ReadProblem::RangeNotRead(Kind::Weight), "20 to 25")]
#[case("1/4-1/2 oz", ReadProblem::RangeNotRead(Kind::Weight), "1/4-1/2")]
#[case("2 lb - 3 lb", ReadProblem::RangeNotRead(Kind::Weight), "- 3 lb")]
#[case("3 oz 2 lb", ReadProblem::PartOrder, "3 oz 2 lb")]
#[case("200 g 1 kg", ReadProblem::PartOrder, "200 g 1 kg")]
#[case("2 lb 16 oz", ReadProblem::PartTooLarge, "16 oz")]
#[case("1 kg 1000 g", ReadProblem::PartTooLarge, "1000 g")]
#[case("2.5 lb 3 oz", ReadProblem::PartNotWhole, "2.5")]
#[case("2½ lb 3 oz", ReadProblem::PartNotWhole, "2½")]
#[case("2 lb 200 g", ReadProblem::PartUnits, "2 lb 200 g")]
#[case("2 lb 3 lb", ReadProblem::PartUnits, "2 lb 3 lb")]
#[case("250 g meat ", ReadProblem::TrailingText(Kind::Weight), "meat")]
#[case("250 g to taste", ReadProblem::TrailingText(Kind::Weight), "to taste")]
#[case("2 lb 3 oz 1 oz", ReadProblem::TrailingText(Kind::Weight), "1 oz")]
fn a_weight_that_could_be_misread_is_refused(
    #[case] text: &str,
    #[case] problem: ReadProblem,
    #[case] part: &str,
) {
    let found = at_fault(text, read_mass(text).unwrap_err());
    if part.is_empty() {
        assert_eq!(found.0, problem);
    } else {
        assert_eq!(found, (problem, part));
    }
}

#[test]
fn a_spoon_is_not_a_weight() {
    let error = read_mass("3 tsp").unwrap_err();
    assert_eq!(error.problem(), ReadProblem::VolumeForWeight);
    assert!(error.to_string().contains("not a weight"));
}

#[rstest]
#[case("7", "say the unit")]
#[case("1,5 kg", "write 1.5 for one and a half and 1500 for fifteen hundred")]
#[case("1-1/4 oz", "`1 1/4` for one and a quarter")]
#[case("1 5/4 oz", "`2 1/4`")]
#[case("1e3 g", "write 1000")]
#[case("3 oz 2 lb", "`2 lb 3 oz`")]
#[case("2 stone", "mg, g, kg, oz or lb")]
fn a_refusal_says_how_to_write_it(#[case] text: &str, #[case] advice: &str) {
    let message = read_mass(text).unwrap_err().to_string();
    assert!(message.contains(advice), "{message}");
}

// Amounts

#[rstest]
#[case("4 tsp", Measures::UsCustomary, Volume::new::<us_teaspoon>(4.0))]
#[case("1/2 cup", Measures::UsCustomary, Volume::new::<us_cup>(0.5))]
#[case("2 tbsp", Measures::UsCustomary, Volume::new::<us_tablespoon>(2.0))]
#[case("2 Tbsp.", Measures::UsCustomary, Volume::new::<us_tablespoon>(2.0))]
#[case("1 fl oz", Measures::UsCustomary, Volume::new::<us_fluid_ounce>(1.0))]
#[case("8 fl. oz.", Measures::UsCustomary, Volume::new::<us_fluid_ounce>(8.0))]
#[case("2 fluid ounces", Measures::UsCustomary, Volume::new::<us_fluid_ounce>(2.0))]
#[case("1 gal", Measures::UsCustomary, Volume::new::<us_gallon>(1.0))]
#[case("1 qt", Measures::UsCustomary, Volume::new::<us_quart>(1.0))]
#[case("1 pt", Measures::UsCustomary, Volume::new::<us_pint>(1.0))]
#[case("1 cup", Measures::Metric, Volume::new::<metric_cup>(1.0))]
#[case("1 tbsp", Measures::Metric, Volume::new::<metric_tablespoon>(1.0))]
#[case("1 tsp", Measures::Metric, Volume::new::<metric_teaspoon>(1.0))]
#[case("1 cup", Measures::Australian, Volume::new::<metric_cup>(1.0))]
#[case("1 tbsp", Measures::Australian, Volume::new::<australian_tablespoon>(1.0))]
#[case("1 tsp", Measures::Australian, Volume::new::<metric_teaspoon>(1.0))]
#[case("1 gallon", Measures::Imperial, Volume::new::<imperial_gallon>(1.0))]
#[case("1 quart", Measures::Imperial, Volume::new::<imperial_gallon>(0.25))]
#[case("1 pint", Measures::Imperial, Volume::new::<imperial_pint>(1.0))]
#[case("5 fl oz", Measures::Imperial, Volume::new::<imperial_fluid_ounce>(5.0))]
fn a_measure_has_the_size_its_system_gives_it(
    #[case] text: &str,
    #[case] measures: Measures,
    #[case] expected: Volume,
) {
    assert_eq!(read_amount(text, Some(measures)), Ok(Amount::ByVolume(expected)));
    assert_eq!(read_liquid_amount(text, Some(measures)), Ok(Amount::ByVolume(expected)));
    assert_eq!(read_amount(text, None).unwrap_err().problem(), ReadProblem::WhoseMeasures);
}

#[rstest]
#[case("250 mL", Volume::new::<milliliter>(250.0))]
#[case("250ml", Volume::new::<milliliter>(250.0))]
#[case("1 L", Volume::new::<liter>(1.0))]
#[case("1.5 l", Volume::new::<liter>(1.5))]
#[case("2 litres", Volume::new::<liter>(2.0))]
fn a_liter_is_nobodys_in_particular(#[case] text: &str, #[case] expected: Volume) {
    assert_eq!(read_amount(text, None), Ok(Amount::ByVolume(expected)));
}

#[rstest]
#[case("1 tsp", Measures::Imperial, ReadProblem::ImperialSpoonOrCup)]
#[case("1 tbsp", Measures::Imperial, ReadProblem::ImperialSpoonOrCup)]
#[case("1 cup", Measures::Imperial, ReadProblem::ImperialSpoonOrCup)]
#[case("1 gal", Measures::Metric, ReadProblem::NotOfTheseMeasures(Measures::Metric))]
#[case("1 fl oz", Measures::Australian, ReadProblem::NotOfTheseMeasures(Measures::Australian))]
#[case("1 cup 2 tbsp", Measures::UsCustomary, ReadProblem::PartUnits)]
#[case("1-1/2 cups", Measures::UsCustomary, ReadProblem::Hyphen)]
#[case("2-3 tsp", Measures::UsCustomary, ReadProblem::RangeNotRead(Kind::Amount))]
#[case("1 T", Measures::UsCustomary, ReadProblem::UnknownUnit(Kind::Amount))]
fn a_measure_without_one_size_is_refused(
    #[case] text: &str,
    #[case] measures: Measures,
    #[case] problem: ReadProblem,
) {
    assert_eq!(read_amount(text, Some(measures)).unwrap_err().problem(), problem);
}

#[test]
fn an_ounce_alone_is_a_weight_but_not_of_a_liquid() {
    let us = Some(Measures::UsCustomary);
    assert_eq!(read_amount("8 oz", us), Ok(Amount::Weighed(ounces(8.0))));
    let error = read_liquid_amount("8 oz", us).unwrap_err();
    assert_eq!(at_fault("8 oz", error), (ReadProblem::OunceOfLiquid, "oz"));
    assert_eq!(read_liquid_amount("2 lb 3 oz", us), Ok(Amount::Weighed(ounces(35.0))));
    assert_eq!(read_liquid_amount("200 g", None), Ok(Amount::Weighed(grams(200.0))));
}

#[rstest]
#[case(Measures::UsCustomary)]
#[case(Measures::Metric)]
#[case(Measures::Imperial)]
#[case(Measures::Australian)]
fn measures_are_found_by_their_name(#[case] measures: Measures) {
    assert_eq!(Measures::from_name(measures.name()), Some(measures));
    assert_eq!(Measures::from_name("cups"), None);
}

// Concentrations

#[rstest]
#[case("156 ppm", 156.0)]
#[case("156ppm", 156.0)]
#[case("250 mg/kg", 250.0)]
#[case("5 g/kg", 5000.0)]
#[case("6.25 %", 62_500.0)]
#[case("6.25%", 62_500.0)]
#[case("6 1/4 %", 62_500.0)]
#[case("0.5 %", 5000.0)]
#[case("0.4 %", 4000.0)]
#[case("4 %", 40_000.0)]
#[case("0.0156 %", 156.0)]
#[case("0.00000001 %", 0.0001)]
#[case("100 %", 1e6)]
#[case("0 ppm", 0.0)]
fn a_concentration_is_exact_in_parts_per_million(#[case] text: &str, #[case] expected: f64) {
    assert_eq!(read_concentration(text), Ok(expected));
}

#[rstest]
#[case("156", ReadProblem::BareNumber(Kind::Concentration), "156")]
#[case("100.01 %", ReadProblem::AboveTheWhole, "100.01 %")]
#[case("1000001 ppm", ReadProblem::AboveTheWhole, "1000001 ppm")]
#[case("5 g", ReadProblem::WrongKind(Kind::Concentration), "g")]
#[case("5 g/L", ReadProblem::UnknownUnit(Kind::Concentration), "g/L")]
#[case("6,25 %", ReadProblem::Comma, ",")]
#[case("2-3 %", ReadProblem::RangeNotRead(Kind::Concentration), "2-3")]
#[case("6.25 % salt", ReadProblem::TrailingText(Kind::Concentration), "salt")]
#[case("-1 %", ReadProblem::Negative(Kind::Concentration), "-1")]
fn what_is_not_a_concentration_is_refused(
    #[case] text: &str,
    #[case] problem: ReadProblem,
    #[case] part: &str,
) {
    assert_eq!(at_fault(text, read_concentration(text).unwrap_err()), (problem, part));
}

// Temperatures

#[rstest]
#[case("155 °F", 155.0, Scale::Fahrenheit)]
#[case("155 degF", 155.0, Scale::Fahrenheit)]
#[case("155 deg F", 155.0, Scale::Fahrenheit)]
#[case("155 degrees Fahrenheit", 155.0, Scale::Fahrenheit)]
#[case("155 F", 155.0, Scale::Fahrenheit)]
#[case("155°F", 155.0, Scale::Fahrenheit)]
#[case("155 ° F", 155.0, Scale::Fahrenheit)]
#[case("155 ℉", 155.0, Scale::Fahrenheit)]
#[case("0 °F", 0.0, Scale::Fahrenheit)]
#[case("-0 °F", 0.0, Scale::Fahrenheit)]
#[case("68.3 °C", 68.3, Scale::Celsius)]
#[case("68.3 degC", 68.3, Scale::Celsius)]
#[case("68.3℃", 68.3, Scale::Celsius)]
#[case("-18 °C", -18.0, Scale::Celsius)]
#[case("−18 °C", -18.0, Scale::Celsius)]
#[case("–18 °C", -18.0, Scale::Celsius)]
fn a_temperature_keeps_its_scale(#[case] text: &str, #[case] value: f64, #[case] scale: Scale) {
    let reading = read_temperature(text).unwrap();
    assert_eq!((reading.value(), reading.scale()), (value, scale));
    assert!(reading.value().is_sign_positive() || value < 0.0);
}

#[rstest]
#[case("155", ReadProblem::ScaleMissing, "155")]
#[case("155°", ReadProblem::ScaleMissing, "°")]
#[case("155 degrees", ReadProblem::ScaleMissing, "degrees")]
#[case("341 K", ReadProblem::UnknownUnit(Kind::Temperature), "K")]
#[case("155 g", ReadProblem::WrongKind(Kind::Temperature), "g")]
#[case("-300 °C", ReadProblem::TemperatureOutOfRange, "-300 °C")]
#[case("2000 °C", ReadProblem::TemperatureOutOfRange, "2000 °C")]
#[case("150-155 °F", ReadProblem::RangeNotRead(Kind::Temperature), "150-155")]
#[case("68,3 °C", ReadProblem::Comma, ",")]
#[case("- 18 °C", ReadProblem::NotANumber(Kind::Temperature), "")]
#[case("--18 °C", ReadProblem::Negative(Kind::Temperature), "-18")]
#[case("155 °F core", ReadProblem::TrailingText(Kind::Temperature), "core")]
fn a_temperature_without_its_scale_is_refused(
    #[case] text: &str,
    #[case] problem: ReadProblem,
    #[case] part: &str,
) {
    assert_eq!(at_fault(text, read_temperature(text).unwrap_err()), (problem, part));
}

#[rstest]
#[case("2 °F", 2.0 / 1.8)]
#[case("±2 °F", 2.0 / 1.8)]
#[case("± 2 °F", 2.0 / 1.8)]
#[case("+-2 degF", 2.0 / 1.8)]
#[case("+/-2 F", 2.0 / 1.8)]
#[case("1 °C", 1.0)]
#[case("0.5 °C", 0.5)]
#[case("½ °C", 0.5)]
#[case("0 °F", 0.0)]
fn a_tolerance_has_no_offset(#[case] text: &str, #[case] kelvin: f64) {
    assert_eq!(read_tolerance(text).unwrap().value, kelvin);
}

#[rstest]
#[case("2", ReadProblem::ScaleMissing)]
#[case("±2°", ReadProblem::ScaleMissing)]
#[case("-2 °F", ReadProblem::Negative(Kind::Tolerance))]
#[case("+2 °F", ReadProblem::PlusSign)]
#[case("51 °C", ReadProblem::ToleranceOutOfRange)]
#[case("±", ReadProblem::NotANumber(Kind::Tolerance))]
#[case("2 K", ReadProblem::UnknownUnit(Kind::Tolerance))]
fn a_tolerance_that_no_thermometer_has_is_refused(
    #[case] text: &str,
    #[case] problem: ReadProblem,
) {
    assert_eq!(read_tolerance(text).unwrap_err().problem(), problem);
}

// Durations

#[rstest]
#[case("45 s", 45.0)]
#[case("22 seconds", 22.0)]
#[case("90 min", 5400.0)]
#[case("1 h 30 min", 5400.0)]
#[case("1h30min", 5400.0)]
#[case("1 hr. 30 min.", 5400.0)]
#[case("1 1/2 h", 5400.0)]
#[case("1½ hours", 5400.0)]
#[case("1/3 h", 1200.0)]
#[case("1 h 30 min 15.5 s", 5415.5)]
#[case("5 days", 5.0 * DAY)]
#[case("2 weeks", 14.0 * DAY)]
#[case("1 week 3 days", 10.0 * DAY)]
#[case("3 months", 90.0 * DAY)]
#[case("1 year", 365.0 * DAY)]
#[case("1 year 6 months", 545.0 * DAY)]
fn one_duration_is_an_exact_range(#[case] text: &str, #[case] expected: f64) {
    let range = read_duration(text).unwrap();
    assert!(range.is_exact());
    assert_eq!(range.low(), seconds(expected));
}

#[rstest]
#[case("20-25 min", 1200.0, 1500.0)]
#[case("20–25 min", 1200.0, 1500.0)]
#[case("20 - 25 min", 1200.0, 1500.0)]
#[case("20 to 25 min", 1200.0, 1500.0)]
#[case("20 min to 25 min", 1200.0, 1500.0)]
#[case("45 s - 1 min", 45.0, 60.0)]
#[case("1 h 20 min to 1 h 25 min", 4800.0, 5100.0)]
#[case("1/2-1 h", 1800.0, 3600.0)]
#[case("1-1 1/2 h", 3600.0, 5400.0)]
#[case("1 to 3/2 h", 3600.0, 5400.0)]
#[case("3-4 months", 90.0 * DAY, 120.0 * DAY)]
#[case("2 to 3 days", 2.0 * DAY, 3.0 * DAY)]
#[case("20-20 min", 1200.0, 1200.0)]
fn a_range_of_durations_keeps_both_ends(#[case] text: &str, #[case] low: f64, #[case] high: f64) {
    let range = read_duration(text).unwrap();
    assert_eq!((range.low(), range.high()), (seconds(low), seconds(high)));
}

#[rstest]
#[case("90", ReadProblem::BareNumber(Kind::Duration), "90")]
#[case("20-25", ReadProblem::BareNumber(Kind::Duration), "25")]
#[case("20 min-25", ReadProblem::BareNumber(Kind::Duration), "25")]
#[case("5 m", ReadProblem::UnknownUnit(Kind::Duration), "m")]
#[case("5 g", ReadProblem::WrongKind(Kind::Duration), "g")]
#[case("25-20 min", ReadProblem::FallingRange, "25-20")]
#[case("1-1/2 h", ReadProblem::HyphenOrRange, "1-1/2")]
#[case("1–½ h", ReadProblem::HyphenOrRange, "1–½")]
#[case("1-3/2 h", ReadProblem::HyphenOrRange, "1-3/2")]
#[case("1 to 1/2 h", ReadProblem::FallingRange, "1 to 1/2")]
#[case("20- min", ReadProblem::Hyphen, "-")]
#[case("20--25 min", ReadProblem::Negative(Kind::Duration), "-25")]
#[case("1 h 20-25 min", ReadProblem::RangeOfParts, "1 h 20-25 min")]
#[case("2 to 3 h 30 min", ReadProblem::RangeOfParts, "2 to 3 h 30 min")]
#[case("20-25-30 min", ReadProblem::Hyphen, "-")]
#[case("20 min to 25 min to 30 min", ReadProblem::TrailingText(Kind::Duration), "to 30 min")]
#[case("30 min 1 h", ReadProblem::PartOrder, "1 h")]
#[case("1 h 1 h", ReadProblem::PartOrder, "1 h")]
#[case("1 h 90 min", ReadProblem::PartTooLarge, "90 min")]
#[case("1 year 12 months", ReadProblem::PartTooLarge, "12 months")]
#[case("1.5 h 30 min", ReadProblem::PartNotWhole, "1.5")]
#[case("1 h, 30 min", ReadProblem::Comma, ",")]
#[case("45 s per side", ReadProblem::TrailingText(Kind::Duration), "per side")]
fn a_duration_that_could_be_misread_is_refused(
    #[case] text: &str,
    #[case] problem: ReadProblem,
    #[case] part: &str,
) {
    assert_eq!(at_fault(text, read_duration(text).unwrap_err()), (problem, part));
}

// Printing

#[rstest]
#[case(139.5, "139.5")]
#[case(156.25, "156.25")]
#[case(0.000_25, "0.00025")]
#[case(156.0, "156")]
#[case(155.9971, "156")]
#[case(0.1 + 0.2, "0.3")]
#[case(2.0 / 3.0, "0.6667")]
#[case(1234.5, "1234.5")]
#[case(1_234_567.8, "1234568")]
#[case(62_500.0, "62500")]
#[case(0.0, "0")]
#[case(-0.0, "0")]
#[case(-17.777_777_777, "-17.78")]
#[case(1e-20, "1e-20")]
#[case(2e20, "2e20")]
#[case(f64::NAN, "NaN")]
#[case(f64::NEG_INFINITY, "-inf")]
fn a_number_has_as_many_digits_as_it_needs(#[case] value: f64, #[case] printed: &str) {
    assert_eq!(Shown::new(value, "").to_string(), printed);
    assert_eq!(Shown::new(value, "ppm").to_string(), format!("{printed} ppm"));
}

#[rstest]
#[case(156.4, &[156.0], "156.4")]
#[case(155.97, &[156.0], "155.97")]
#[case(155.997_123, &[156.0], "155.997")]
#[case(156.000_000_123_4, &[156.0], "156.0000001")]
#[case(156.0, &[156.0], "156")]
#[case(156.000_000_000_000_03, &[156.0], "156")]
#[case(155.999_999_999_999_97, &[156.0], "156")]
#[case(119.999_123, &[120.0, 156.0], "119.999")]
#[case(156.000_4, &[120.0, 156.0], "156.0004")]
#[case(156.000_4, &[156.0, 120.0], "156.0004")]
#[case(1e-12, &[0.0], "1e-12")]
#[case(5.0, &[f64::NAN], "5")]
fn a_print_never_crosses_the_limit_beside_it(
    #[case] value: f64,
    #[case] limits: &[f64],
    #[case] printed: &str,
) {
    let shown = limits.iter().fold(Shown::new(value, ""), |shown, limit| shown.beside(*limit));
    assert_eq!(shown.to_string(), printed);
}

#[test]
fn beside_infinity_a_value_prints_as_itself() {
    assert_eq!(Shown::new(5.0, "g").beside(f64::INFINITY).to_string(), "5 g");
    assert_eq!(ShownRange::new(5.0, f64::INFINITY, "g").to_string(), "5 to inf g");
}

#[test]
fn a_value_at_an_awkward_limit_is_printed_as_the_limit() {
    let limit: f64 = (155.0 - 32.0) / 1.8;
    let print = |value| Shown::new(value, "°C").beside(limit).to_string();
    assert_eq!(print(limit.next_up().next_up()), print(limit));
}

#[rstest]
#[case(138.7321, 140.1234, &[], "138.7 to 140.2 mg/kg")]
#[case(138.7, 140.25, &[], "138.7 to 140.25 mg/kg")]
#[case(156.0, 156.0, &[], "156 mg/kg")]
#[case(0.1 + 0.2, 0.3, &[], "0.3 mg/kg")]
#[case(140.1234, 138.7321, &[], "138.7 to 140.2 mg/kg")]
#[case(156.041_23, 156.981_2, &[156.0, 157.0], "156.04 to 156.99 mg/kg")]
#[case(138.7_f64.next_down(), 140.2, &[], "138.7 to 140.2 mg/kg")]
#[case(155.999_999_999, 156.000_000_001, &[156.0], "155.9 to 156.1 mg/kg")]
#[case(155.999_999_999, 156.000_000_001, &[], "156 mg/kg")]
#[case(0.0, 0.000_123_456_7, &[], "0 to 0.0001235 mg/kg")]
fn a_range_is_printed_outward(
    #[case] low: f64,
    #[case] high: f64,
    #[case] limits: &[f64],
    #[case] printed: &str,
) {
    let shown = ShownRange::new(low, high, "mg/kg");
    let shown = limits.iter().fold(shown, |shown, limit| shown.beside(*limit));
    assert_eq!(shown.to_string(), printed);
}

#[rstest]
#[case(grams(6.2), "6.2 g")]
#[case(grams(999.5), "999.5 g")]
#[case(kilograms(1.0), "1 kg")]
#[case(kilograms(45.359_237), "45.36 kg")]
#[case(grams(0.0), "0 g")]
fn a_mass_is_in_grams_below_a_kilogram(#[case] mass: Mass, #[case] printed: &str) {
    assert_eq!(show_mass(mass).to_string(), printed);
}

#[rstest]
#[case(pounds(100.0), MassUnit::Ounce, "1600 oz")]
#[case(ounces(4.0), MassUnit::Pound, "0.25 lb")]
#[case(ounces(0.2), MassUnit::Ounce, "0.2 oz")]
#[case(ounces(1.0), MassUnit::Gram, "28.35 g")]
#[case(grams(5.0), MassUnit::Kilogram, "0.005 kg")]
fn a_mass_is_printed_in_the_unit_asked_for(
    #[case] mass: Mass,
    #[case] unit: MassUnit,
    #[case] printed: &str,
) {
    assert_eq!(show_mass_like(mass, unit).to_string(), printed);
}

#[rstest]
#[case(0.0, "0 s")]
#[case(22.0, "22 s")]
#[case(45.0, "45 s")]
#[case(22.5, "22.5 s")]
#[case(59.999_9, "59.9999 s")]
#[case(60.0, "1 min")]
#[case(5400.0, "1 h 30 min")]
#[case(5400.25, "1 h 30 min 0.25 s")]
#[case(3.0 * DAY, "3 days")]
#[case(DAY + 3600.0, "1 day 1 h")]
#[case(-5400.0, "-1 h 30 min")]
#[case(f64::NAN, "NaN s")]
#[case(f64::INFINITY, "inf s")]
fn a_duration_leaves_out_what_is_zero(#[case] time: f64, #[case] printed: &str) {
    assert_eq!(show_duration(seconds(time)).to_string(), printed);
}

#[rstest]
#[case(155.0, Scale::Fahrenheit, "155 °F")]
#[case(68.3, Scale::Celsius, "68.3 °C")]
#[case(179.0 / 1.8, Scale::Celsius, "99.44 °C")]
#[case(-18.0, Scale::Celsius, "-18 °C")]
#[case(-0.001, Scale::Celsius, "0 °C")]
fn a_reading_is_printed_in_hundredths_at_most(
    #[case] value: f64,
    #[case] scale: Scale,
    #[case] printed: &str,
) {
    assert_eq!(Reading::new(value, scale).unwrap().to_string(), printed);
}

#[rstest]
#[case(grams(6.2), grams(0.1), grams(6.2))]
#[case(grams(6.27), grams(0.5), grams(6.0))]
#[case(grams(6.0), grams(1.0), grams(6.0))]
#[case(grams(5.99), grams(1.0), grams(5.0))]
#[case(grams(0.4), grams(1.0), grams(0.0))]
#[case(ounces(0.3), ounces(0.1), ounces(0.3))]
fn the_most_a_scale_can_show_is_whole_divisions(
    #[case] mass: Mass,
    #[case] division: Mass,
    #[case] expected: Mass,
) {
    let floor = floor_to_division(mass, division).unwrap();
    assert!(floor <= mass);
    assert!((floor.value - expected.value).abs() <= 1e-15);
}

#[rstest]
#[case(grams(f64::NAN), grams(1.0))]
#[case(grams(-1.0), grams(1.0))]
#[case(grams(1.0), grams(0.0))]
#[case(grams(1.0), grams(f64::NAN))]
#[case(kilograms(f64::INFINITY), grams(1.0))]
fn a_scale_that_is_none_is_an_error(#[case] mass: Mass, #[case] division: Mass) {
    assert!(floor_to_division(mass, division).is_err());
}

// Properties

fn lies(value: f64, limit: f64) -> std::cmp::Ordering {
    if (value - limit).abs() <= 16.0 * f64::EPSILON * limit.abs() {
        std::cmp::Ordering::Equal
    } else {
        value.partial_cmp(&limit).expect("finite")
    }
}

/// Texts out of the pieces that quantities are made of, which arbitrary characters
/// seldom hit.
fn pieces() -> impl Strategy<Value = String> {
    let piece = prop::sample::select(vec![
        "1",
        "20",
        "0",
        "007",
        ".",
        ",",
        "/",
        "⁄",
        "-",
        "–",
        "−",
        "+",
        "±",
        "½",
        "⅐",
        "２",
        " ",
        "\u{a0}",
        "e",
        "E3",
        "oz",
        "lb",
        "g",
        "kg",
        "fl",
        "tsp",
        "%",
        "ppm",
        "mg/kg",
        "°",
        "deg",
        "F",
        "℃",
        "h",
        "min",
        "to",
        "months",
        "year",
        "999999999999999999",
        "(",
        "é",
        "\u{10ffff}",
    ]);
    prop::collection::vec(piece, 0..9).prop_map(|pieces| pieces.concat())
}

fn refuse_or_read(text: &str) {
    let us = Some(Measures::UsCustomary);
    for error in [
        read_mass(text).err(),
        read_amount(text, us).err(),
        read_amount(text, None).err(),
        read_liquid_amount(text, us).err(),
        read_concentration(text).err(),
        read_temperature(text).err(),
        read_tolerance(text).err(),
        read_duration(text).err(),
    ]
    .into_iter()
    .flatten()
    {
        assert!(text.get(error.span()).is_some(), "{text:?}: {error:?}");
        assert!(!error.to_string().is_empty());
    }
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 1000, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn no_text_makes_a_reader_panic(text in "(?s).*") {
        refuse_or_read(&text);
    }

    #[test]
    fn no_pieces_of_quantities_make_a_reader_panic(text in pieces()) {
        refuse_or_read(&text);
    }

    #[test]
    fn a_mixed_number_is_its_whole_and_its_fraction(
        whole in 0_u32..100_000, below in 1_u32..=1000, part in 0.0_f64..1.0,
    ) {
        let above = (f64::from(below) * part).floor();
        let value = (f64::from(whole) * f64::from(below) + above) / f64::from(below);
        prop_assert_eq!(read_mass(&format!("{whole} {above}/{below} oz")), Ok(ounces(value)));
        let sum = f64::from(whole) + above / f64::from(below);
        prop_assert!((value - sum).abs() <= f64::EPSILON * value);
    }

    #[test]
    fn a_fraction_is_its_quotient(above in 0_u32..1_000_000, below in 1_u32..=1000) {
        let value = f64::from(above) / f64::from(below);
        prop_assert_eq!(read_mass(&format!("{above}/{below} lb")), Ok(pounds(value)));
    }

    #[test]
    fn a_decimal_is_the_nearest_number(whole in 0_u32..999_999_999, decimals in "[0-9]{1,6}") {
        let text = format!("{whole}.{decimals}");
        let value: f64 = text.parse().unwrap();
        prop_assert_eq!(read_mass(&format!("{text} kg")), Ok(kilograms(value)));
        prop_assert_eq!(read_mass(&format!("{text}oz")), Ok(ounces(value)));
    }

    #[test]
    fn a_percentage_is_the_nearest_number_of_parts_per_million(
        whole in 0_u32..100, decimals in "[0-9]{1,13}",
    ) {
        let text = format!("{whole}.{decimals}");
        let ppm: f64 = format!("{text}e4").parse().unwrap();
        prop_assert_eq!(read_concentration(&format!("{text} %")), Ok(ppm));
        let ppm: f64 = format!("{text}e3").parse().unwrap();
        prop_assert_eq!(read_concentration(&format!("{text} g/kg")), Ok(ppm));
    }

    #[test]
    fn pounds_and_ounces_are_so_many_ounces(lb in 0_u32..10_000, oz in 0_u32..16) {
        prop_assert_eq!(
            read_mass(&format!("{lb} lb {oz} oz")),
            Ok(ounces(f64::from(lb) * 16.0 + f64::from(oz))),
        );
    }

    #[test]
    fn a_temperature_printed_is_read_back(tenths in -4000_i32..12_000) {
        let reading = Reading::new(f64::from(tenths) / 10.0, Scale::Fahrenheit).unwrap();
        prop_assert_eq!(read_temperature(&reading.to_string()), Ok(reading));
    }

    #[test]
    fn a_duration_printed_is_read_back(ms in 0_u64..100_000_000_000) {
        let time = ms as f64 / 1000.0;
        let printed = show_duration(seconds(time)).to_string();
        let read = read_duration(&printed).unwrap().low().value;
        prop_assert!((read - time).abs() <= 5e-4 * time.min(1.0), "{} for {}", printed, time);
    }

    #[test]
    fn a_printed_mass_is_read_back_to_its_digits(mg in 0_u32..1_000_000_000) {
        let mass = kilograms(f64::from(mg) / 1e6);
        let read = read_mass(&show_mass(mass).to_string()).unwrap();
        prop_assert!((read.value - mass.value).abs() <= 5.1e-4 * mass.value);
    }

    #[test]
    fn a_print_lies_to_its_limits_as_the_value_does(
        limit in prop_oneof![0.0..1e6_f64, (0_u32..1000).prop_map(f64::from), -1e3..1e3_f64],
        other in 0.0..1e6_f64,
        off in prop_oneof![Just(0.0), -1.0..1.0_f64, -1e-6..1e-6_f64, -1e-13..1e-13_f64],
    ) {
        let value = limit * (1.0 + off);
        let printed = Shown::new(value, "").beside(limit).beside(other).to_string();
        let back: f64 = printed.parse().unwrap();
        prop_assert_eq!(lies(back, limit), lies(value, limit), "{} beside {}", printed, limit);
        prop_assert_eq!(lies(back, other), lies(value, other), "{} beside {}", printed, other);
        prop_assert!((back - value).abs() <= 5.1e-4 * value.abs());
    }

    #[test]
    fn a_printed_range_holds_the_range(
        low in prop_oneof![0.0..1e4_f64, 1e-9..1e-3_f64], width in prop_oneof![0.0..10.0_f64, 0.0..1e-6_f64],
        limit in 0.0..1e4_f64,
    ) {
        let high = low * (1.0 + width);
        let printed = ShownRange::new(low, high, "").beside(limit).to_string();
        let (first, last) = printed.split_once(" to ").unwrap_or((&printed, &printed));
        let (first, last): (f64, f64) = (first.parse().unwrap(), last.parse().unwrap());
        if printed.contains(" to ") {
            prop_assert!(first <= low * (1.0 + 16.0 * f64::EPSILON), "{} for {}", printed, low);
            prop_assert!(last >= high * (1.0 - 16.0 * f64::EPSILON), "{} for {}", printed, high);
        }
        prop_assert_eq!(lies(first, limit), lies(low, limit));
        prop_assert_eq!(lies(last, limit), lies(high, limit));
        prop_assert!((first - low).abs() <= 1.1e-3 * low && (last - high).abs() <= 1.1e-3 * high);
    }

    #[test]
    fn the_most_a_scale_can_show_never_exceeds(
        mass in prop_oneof![0.0..10.0_f64, 0.0..1e6_f64],
        division in prop_oneof![1e-9..1.0_f64, Just(1e-3), Just(1e-4), Just(5e-4)],
    ) {
        let floor = floor_to_division(kilograms(mass), kilograms(division)).unwrap();
        prop_assert!(floor.value <= mass);
        prop_assert!(mass - floor.value <= division * (1.0 + 1e-9));
        let count = floor.value / division;
        prop_assert!((count - count.round()).abs() <= 1e-9 * count.max(1.0));
    }
}

#[test]
fn a_minute_and_sixty_seconds_are_one_duration() {
    assert_eq!(read_duration("1 min").unwrap().low(), minutes(1.0));
    assert_eq!(read_duration("60 s").unwrap().low(), minutes(1.0));
}
