//! Records read from comma-separated values: what is read, and every fault with its line.
#![cfg(feature = "trace-csv")]

use greenweight::trace::{Columns, Point, TimeColumn, read_csv};
use greenweight::units::{Reading, Scale};
use proptest::prelude::*;
use rstest::rstest;

fn read(
    file: &str,
    written: TimeColumn,
    probes: &[&'static str],
) -> Result<Vec<Point>, (u64, String)> {
    let columns =
        Columns { probes: probes.to_vec(), ..Columns::new("t", written, "", Scale::Celsius) };
    let fault = |fault: greenweight::trace::CsvFault| (fault.line, fault.message);
    read_csv(file.as_bytes(), &columns)
        .map_err(fault)?
        .map(|at| at.map(|at| at.inside).map_err(fault))
        .collect()
}

#[test]
fn the_coldest_probe_counts_whatever_the_order_of_the_columns() {
    let file = "core,t,flank\n60.5, 0 ,59\n61,1.5,62\n";
    let found = read(file, TimeColumn::Minutes, &["core", "flank"]).unwrap();
    let pairs: Vec<_> = found.iter().map(|point| (point.seconds(), point.celsius())).collect();
    assert_eq!(pairs, [(0.0, 59.0), (90.0, 61.0)]);
    assert_eq!(read(file, TimeColumn::Minutes, &["flank", "core"]).unwrap(), found);
}

#[rstest]
#[case::over_midnight("2026-02-28 23:59:30", "2026-03-01 00:00:10", 40.0)]
#[case::over_a_leap_day("2028-02-28 12:00", "2028-03-01T12:00:00", 2.0 * 86_400.0)]
#[case::over_a_year("2026-12-31 12:00", "2027-01-01 12:00", 86_400.0)]
#[case::over_the_leap_day_of_a_fourth_century("2000-02-29 23:00", "2000-03-01 01:00", 7200.0)]
#[case::over_a_century_without_one("2100-02-28 23:00", "2100-03-01 01:00", 7200.0)]
#[case::a_leap_second("2016-12-31 23:59:60", "2017-01-01 00:00:10", 10.0)]
#[case::within_a_day("08:00", "14:05:30", 21_930.0)]
fn a_clock_is_read_from_where_the_record_began(
    #[case] first: &str,
    #[case] second: &str,
    #[case] expected: f64,
) {
    let file = format!("t,c\n{first},50\n{second},60\n");
    let found = read(&file, TimeColumn::Clock, &["c"]).unwrap();
    assert_eq!((found[0].seconds(), found[1].seconds()), (0.0, expected));
}

#[rstest]
#[case::a_gap("t,c\n0,50\n1,\n", TimeColumn::Minutes, 3, "gap")]
#[case::a_repeat("t,c\n0,50\n0,51\n", TimeColumn::Minutes, 3, "does not come after")]
#[case::backwards("t,c\n5,50\n4,51\n", TimeColumn::Minutes, 3, "does not come after")]
#[case::midnight_without_a_date("t,c\n23:59,50\n00:01,51\n", TimeColumn::Clock, 3, "midnight")]
#[case::no_number("t,c\n0,50\n1,hot\n", TimeColumn::Minutes, 3, "`hot` is not a number")]
#[case::not_finite("t,c\n0,NaN\n", TimeColumn::Minutes, 2, "finite")]
#[case::infinite("t,c\n0,50\ninf,60\n", TimeColumn::Minutes, 3, "finite")]
#[case::impossible("t,c\n0,5000\n", TimeColumn::Minutes, 2, "outside")]
#[case::no_such_day("t,c\n2026-02-30 10:00,50\n", TimeColumn::Clock, 2, "no time")]
#[case::midnight_of_the_next_day("t,c\n24:00,50\n", TimeColumn::Clock, 2, "no time")]
#[case::no_such_minute("t,c\n10:60,50\n", TimeColumn::Clock, 2, "no time")]
#[case::no_such_second("t,c\n10:00:61,50\n", TimeColumn::Clock, 2, "no time")]
#[case::no_such_hour("t,c\n25:00,50\n", TimeColumn::Clock, 2, "no time")]
#[case::a_short_row("t,c\n0,50\n1\n", TimeColumn::Minutes, 3, "")]
#[case::no_such_column(
    "time,c\n0,50\n",
    TimeColumn::Minutes,
    1,
    "no column is headed `t`; there are time, c"
)]
#[case::two_of_a_name("t,c,c\n0,50,51\n", TimeColumn::Minutes, 1, "two columns")]
fn a_fault_names_its_line(
    #[case] file: &str,
    #[case] written: TimeColumn,
    #[case] line: u64,
    #[case] says: &str,
) {
    let (found, message) = read(file, written, &["c"]).unwrap_err();
    assert_eq!(found, line, "{message}");
    assert!(message.contains(says), "{message}");
}

#[test]
fn nothing_is_read_after_a_fault() {
    let columns = Columns::new("t", TimeColumn::Seconds, "c", Scale::Celsius);
    let mut points = read_csv("t,c\n0,50\n1,x\n2,60\n".as_bytes(), &columns).unwrap();
    assert!(points.next().unwrap().is_ok());
    assert!(points.next().unwrap().is_err());
    assert!(points.next().is_none());
}

#[test]
fn the_chamber_and_its_wet_bulb_are_read_beside_the_probes() {
    let columns = Columns {
        chamber: Some("dry"),
        wet_bulb: Some("wet"),
        ..Columns::new("t", TimeColumn::Seconds, "c", Scale::Celsius)
    };
    let file = "t,wet,dry,c\n0,60,80,50\n1,,80,51\n";
    let mut points = read_csv(file.as_bytes(), &columns).unwrap();
    let first = points.next().unwrap().unwrap();
    let value = |reading: Option<Reading>| reading.unwrap().value();
    assert_eq!((value(first.chamber), value(first.wet_bulb)), (80.0, 60.0));
    let fault = points.next().unwrap().unwrap_err();
    assert!(fault.line == 3 && fault.message.contains("`wet` is empty"), "{fault}");
    let missing = Columns { chamber: Some("oven"), ..columns };
    assert!(read_csv(file.as_bytes(), &missing).is_err());
}

proptest! {
    #[test]
    fn any_text_is_points_or_a_fault(text in "[t,c0-9.:\\-\n \"]{0,80}") {
        let file = format!("t,c\n{text}");
        for written in [TimeColumn::Seconds, TimeColumn::Clock] {
            if let Ok(points) = read(&file, written, &["c"]) {
                prop_assert!(points.windows(2).all(|pair| pair[0].seconds() < pair[1].seconds()));
            }
        }
    }
}

#[rstest]
#[case(TimeColumn::Seconds, "seconds", 1.0)]
#[case(TimeColumn::Minutes, "minutes", 60.0)]
#[case(TimeColumn::Hours, "hours", 3600.0)]
#[case(TimeColumn::Clock, "clock", f64::NAN)]
fn a_column_of_times_has_its_unit(
    #[case] written: TimeColumn,
    #[case] key: &str,
    #[case] one: f64,
) {
    assert_eq!(written.key(), key);
    if one.is_finite() {
        let found = read("t,c\n0,50\n1.5,60\n", written, &["c"]).unwrap();
        assert_eq!(found[1].seconds(), 1.5 * one);
    }
}

#[test]
fn the_warmest_probe_is_kept_beside_the_coldest_whatever_their_order() {
    let file = "t,a,b,c\n0,60,62,61\n1,60,59,58\n2,57,58,59\n";
    for probes in [["a", "b", "c"], ["c", "a", "b"], ["b", "c", "a"]] {
        let columns = Columns {
            probes: probes.to_vec(),
            ..Columns::new("t", TimeColumn::Minutes, "", Scale::Celsius)
        };
        let found: Vec<_> = read_csv(file.as_bytes(), &columns)
            .unwrap()
            .map(|instant| instant.unwrap())
            .map(|instant| (instant.inside.celsius(), instant.warmest.celsius()))
            .collect();
        assert_eq!(found, [(60.0, 62.0), (58.0, 60.0), (57.0, 59.0)]);
    }
}

#[test]
fn a_probe_that_is_off_moves_a_point_both_ways() {
    let off = greenweight::units::read_tolerance("2 °C").unwrap();
    let point = read("t,c\n0,50\n", TimeColumn::Minutes, &["c"]).unwrap()[0];
    assert_eq!(point.more(off).unwrap().celsius(), 52.0);
    assert_eq!(point.less(off).unwrap().celsius(), 48.0);
    assert_eq!(point.more(off).unwrap().seconds(), point.seconds());
}
