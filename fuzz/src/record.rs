use greenweight::cook::{Bird, ComeUp, Lethality, PATTIES, Product, Resistance, Verdicts};
use greenweight::trace::{Columns, Drawing, Point, TimeColumn, Track, read_csv, to_svg, vouched};
use greenweight::units::{Reading, Scale, read_tolerance, seconds};

/// Bytes are a file of readings, or a fault with its line; what was read can be reckoned on. The
/// first byte chooses how times are written and on which scale.
pub fn record(bytes: &[u8]) {
    let (choice, file) = bytes.split_first().map_or((0, bytes), |(first, rest)| (*first, rest));
    let written = TimeColumn::ALL[usize::from(choice % 4)];
    let scale = if choice & 4 == 0 { Scale::Celsius } else { Scale::Fahrenheit };
    let mut columns = Columns::new("t", written, "c", scale);
    if choice & 8 != 0 {
        columns.chamber = Some("o");
    }
    let Ok(rows) = read_csv(file, &columns) else { return };
    let mut points: Vec<Point> = Vec::new();
    for row in rows {
        match row {
            Ok(row) => points.push(row.inside),
            Err(fault) => {
                assert!(!fault.message.is_empty());
                break;
            }
        }
    }
    assert!(points.windows(2).all(|pair| pair[0].seconds() < pair[1].seconds()));
    reckon(&points);
    let drawing =
        Drawing { title: "", scale, inside: &points, chamber: &points, levels: &[], foot: "" };
    assert_eq!(to_svg(&drawing).is_ok(), points.len() > 1);
}

fn reckon(points: &[Point]) {
    let at = Reading::new(70.0, Scale::Celsius).unwrap();
    let z = read_tolerance("7.5 °C").unwrap();
    let resistance = Resistance::new(seconds(20.0), at, z).unwrap();
    let apart = vouched(seconds(20.0));
    let lethality =
        || Lethality::new(resistance, Reading::new(55.0, Scale::Celsius).unwrap(), apart);
    let (mut blocks, mut each) = (lethality().unwrap(), lethality().unwrap());
    blocks.add_points(&mut Track::new(), points).unwrap();
    let (mut track, mut clock) = (Track::new(), ComeUp::new(apart));
    for point in points {
        if let Some(segment) = track.next(*point).unwrap() {
            each.add(&segment);
            clock.add(&segment);
        }
    }
    let (exact, lower) = (each.logs(), each.logs_by_lower_ends());
    assert!(exact.is_finite() && lower >= 0.0 && lower <= exact * (1.0 + 1e-9));
    assert!((blocks.logs() - exact).abs() <= 1e-9 * exact.max(1e-300));
    let span = points.last().map_or(0.0, |last| last.seconds() - points[0].seconds());
    assert!(clock.so_far().value <= span * (1.0 + 1e-9) && clock.heating() <= clock.so_far());
    let poultry = Product::Poultry { bird: Bird::Other, fat: None };
    for product in [Product::Meat, poultry, Product::Table(&PATTIES)] {
        let verdicts = |off: &str| {
            let mut verdicts = Verdicts::new(product, read_tolerance(off).unwrap(), apart).unwrap();
            for point in points {
                verdicts.next(*point).unwrap();
            }
            verdicts
        };
        let (plain, off) = (verdicts("0 °C"), verdicts("2 °C"));
        assert!(off.met().count() <= plain.met().count(), "a worse probe proves more");
        assert!(plain.rows().all(|row| row.held.value <= span && row.met == row.met_at.is_some()));
    }
}
