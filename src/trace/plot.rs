use plotters::prelude::*;

use super::Point;
use crate::units::{Reading, Scale};
use crate::visible::visible;

/// A temperature that is marked across a drawing.
#[derive(Debug, Clone, PartialEq)]
pub struct Level {
    /// What it says, as `145 °F, 4 min`.
    pub name: String,
    /// The temperature.
    pub at: Reading,
    /// When it was met, in seconds since the record began.
    pub met: Option<f64>,
}

/// A record as it is drawn: what was inside, what was around it, and the levels it is held to.
#[derive(Debug, Clone, PartialEq)]
pub struct Drawing<'a> {
    /// The heading.
    pub title: &'a str,
    /// The scale of the axis.
    pub scale: Scale,
    /// The coldest probe inside the food.
    pub inside: &'a [Point],
    /// The dry bulb of the chamber, where it was logged.
    pub chamber: &'a [Point],
    /// The levels.
    pub levels: &'a [Level],
    /// What stands below it, in small type.
    pub foot: &'a str,
}

/// Why a record was not drawn.
#[derive(Debug, Clone, PartialEq, thiserror::Error)]
#[error("the record cannot be drawn: {0}")]
pub struct NotDrawn(String);

/// So many points are drawn of a line, however long the record is.
const DRAWN: usize = 1200;

/// A record as an SVG picture: time along, temperature up. The lines are named where they end
/// and differ in their dashes, so that nothing rests on colour.
///
/// Of a long record the coldest and the hottest reading of every stretch are drawn.
///
/// # Errors
/// [`NotDrawn`] for a record without two readings.
///
/// ```
/// use greenweight::trace::{Drawing, Point, to_svg};
/// use greenweight::units::{Reading, Scale, minutes};
///
/// let point = |at, f| -> Result<Point, Box<dyn std::error::Error>> {
///     Ok(Point::new(minutes(at), Reading::new(f, Scale::Fahrenheit)?)?)
/// };
/// let inside = [point(0.0, 40.0)?, point(90.0, 158.0)?];
/// let svg = to_svg(&Drawing {
///     title: "Invented loaf",
///     scale: Scale::Fahrenheit,
///     inside: &inside,
///     chamber: &[],
///     levels: &[],
///     foot: "An invented record.",
/// })?;
/// assert!(svg.starts_with("<svg") && svg.contains("Invented loaf"));
/// # Ok::<(), Box<dyn std::error::Error>>(())
/// ```
pub fn to_svg(drawing: &Drawing<'_>) -> Result<String, NotDrawn> {
    let (Some(first), Some(last)) = (drawing.inside.first(), drawing.inside.last()) else {
        return Err(NotDrawn("it is empty".to_owned()));
    };
    let (begin, end) = (first.seconds(), last.seconds());
    if end <= begin {
        return Err(NotDrawn("it has one reading".to_owned()));
    }
    let mut svg = String::new();
    draw(&mut svg, drawing, begin / 3600.0, end / 3600.0)
        .map_err(|error| NotDrawn(error.to_string()))?;
    Ok(svg)
}

type Fault = Box<dyn std::error::Error>;

fn draw(svg: &mut String, drawing: &Drawing<'_>, begin: f64, end: f64) -> Result<(), Fault> {
    let degrees = |celsius: f64| match drawing.scale {
        Scale::Celsius => celsius,
        Scale::Fahrenheit => celsius * 1.8 + 32.0,
    };
    let inside: Vec<_> = thinned(drawing.inside).map(|(at, c)| (at, degrees(c))).collect();
    let chamber: Vec<_> = thinned(drawing.chamber).map(|(at, c)| (at, degrees(c))).collect();
    let levels = drawing.levels.iter().map(|level| level.at.on(drawing.scale).value());
    let all = inside.iter().chain(&chamber).map(|(_, degrees)| *degrees).chain(levels);
    let (low, high) =
        all.fold((f64::INFINITY, f64::NEG_INFINITY), |(l, h), x| (l.min(x), h.max(x)));
    let room = ((high - low) * 0.06).max(1.0);

    let area = SVGBackend::with_string(svg, (960, 540)).into_drawing_area();
    area.fill(&WHITE)?;
    let mut chart = ChartBuilder::on(&area)
        .caption(visible(drawing.title), ("sans-serif", 20))
        .margin(16)
        .margin_bottom(32)
        .x_label_area_size(44)
        .y_label_area_size(56)
        .build_cartesian_2d(begin..end + (end - begin) * 0.12, low - room..high + room)?;
    let unit = match drawing.scale {
        Scale::Celsius => "°C",
        Scale::Fahrenheit => "°F",
    };
    chart
        .configure_mesh()
        .light_line_style(WHITE)
        .x_desc("hours")
        .y_desc(unit)
        .x_label_formatter(&|hours| format!("{hours:.1}"))
        .y_label_formatter(&|degrees| format!("{degrees:.0}"))
        .draw()?;
    let text = ("sans-serif", 14).into_font();
    // Names stand where the line is not: left of a rising one, in the middle of a falling one.
    let falls = matches!((inside.first(), inside.last()), (Some(a), Some(b)) if b.1 < a.1);
    let named_at = if falls { begin + (end - begin) * 0.5 } else { begin };
    for level in drawing.levels {
        let at = level.at.on(drawing.scale).value();
        let line = DashedLineSeries::new([(begin, at), (end, at)], 2, 4, BLACK.stroke_width(1));
        chart.draw_series(line)?;
        let name =
            Text::new(visible(&level.name).into_owned(), (named_at, at + room * 0.5), text.clone());
        chart.draw_series(core::iter::once(name))?;
        if let Some(met) = level.met {
            let mark = TriangleMarker::new((met / 3600.0, at), 7, BLACK.filled());
            chart.draw_series(core::iter::once(mark))?;
        }
    }
    let ends = |line: &[(f64, f64)]| line.last().copied();
    if let Some(named) = ends(&chamber) {
        let line = DashedLineSeries::new(chamber, 8, 5, RGBColor(120, 60, 0).stroke_width(2));
        chart.draw_series(line)?;
        chart.draw_series(core::iter::once(Text::new(" chamber", named, text.clone())))?;
    }
    if let Some(named) = ends(&inside) {
        chart.draw_series(LineSeries::new(inside, RGBColor(0, 60, 120).stroke_width(2)))?;
        chart.draw_series(core::iter::once(Text::new(" inside", named, text)))?;
    }
    area.draw(&Text::new(visible(drawing.foot), (16, 518), ("sans-serif", 13)))?;
    area.present()?;
    drop(chart);
    drop(area);
    Ok(())
}

/// Hours and degrees Celsius of the coldest and the hottest reading of every stretch.
fn thinned(record: &[Point]) -> impl Iterator<Item = (f64, f64)> + '_ {
    let stretch = record.len().div_ceil(DRAWN / 2).max(1);
    record.chunks(stretch).flat_map(|points| {
        let by = |a: &&Point, b: &&Point| a.celsius().total_cmp(&b.celsius());
        let (coldest, hottest) = (points.iter().min_by(by), points.iter().max_by(by));
        let mut both: Vec<_> = coldest.into_iter().chain(hottest).collect();
        both.sort_by(|a, b| a.seconds().total_cmp(&b.seconds()));
        both.dedup();
        both.into_iter().map(|point| (point.seconds() / 3600.0, point.celsius()))
    })
}
