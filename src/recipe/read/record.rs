use toml::de::DeValue;

use crate::cook::{Aim, Resistance};
use crate::recipe::document::RecordFile;
use crate::recipe::keys::{Faults, Keys, fault};
use crate::recipe::validate::{FEW, INTERVAL, LOGS, NOT_FORWARD, ends};
use crate::trace::{Point, TimeColumn};
use crate::units::{Scale, read_duration, read_temperature, read_tolerance};

pub(super) const RECORD: &[&str] = &["after", "inside"];
pub(super) const RECORDED_IN: &[&str] =
    &["file", "time", "written", "inside", "scale", "chamber", "interval"];
const MAY_BE_LEFT_OUT: [&str; 2] = ["chamber", "interval"];
pub(super) const LETHALITY: &[&str] = &["d", "at", "z", "counted_from", "logs"];

pub(super) fn aim(keys: &Keys<'_, '_>, faults: &mut Faults) -> Option<Aim> {
    for key in LETHALITY {
        if keys.value(key).is_none() {
            fault(faults, keys.place, format!("`{key}` is missing"));
        }
    }
    let d = keys.quantity("d", read_duration, faults);
    let at = keys.quantity("at", read_temperature, faults);
    let z = keys.quantity("z", read_tolerance, faults);
    let counted_from = keys.quantity("counted_from", read_temperature, faults);
    let logs = keys.plain_number("logs", &LOGS, faults);
    // Of a D between two ends the longer is the harder to reach.
    match Resistance::new(d?.high(), at?, z?) {
        Ok(resistance) => {
            Some(Aim { resistance, counted_from: counted_from?, logs: logs?, place: keys.place })
        }
        Err(error) => {
            fault(faults, keys.place, error.to_string());
            None
        }
    }
}

pub(super) fn recorded_in<'i>(keys: &Keys<'_, 'i>, faults: &mut Faults) -> Option<RecordFile<'i>> {
    for key in RECORDED_IN.iter().filter(|key| !MAY_BE_LEFT_OUT.contains(key)) {
        if keys.value(key).is_none() {
            fault(faults, keys.place, format!("`{key}` is missing"));
        }
    }
    let probes = keys.items("inside", FEW, faults);
    let probes: Vec<_> = probes
        .iter()
        .filter_map(|probe| match probe.get_ref() {
            DeValue::String(name) => Some(name.clone()),
            _ => {
                fault(
                    faults,
                    probe.span().into(),
                    "a probe is the heading of its column, in quotes",
                );
                None
            }
        })
        .collect();
    let scale = |scale: Scale| match scale {
        Scale::Celsius => "°C",
        Scale::Fahrenheit => "°F",
    };
    let interval = keys.bounded(
        "interval",
        read_duration,
        |interval| ends(&INTERVAL, interval.low().value, interval.high().value),
        faults,
    );
    Some(RecordFile {
        file: keys.name("file", faults)?,
        time: keys.name("time", faults)?,
        written: keys.word("written", &TimeColumn::ALL, TimeColumn::key, faults)?,
        probes,
        chamber: keys.name("chamber", faults),
        scale: keys.word("scale", &[Scale::Celsius, Scale::Fahrenheit], scale, faults)?,
        // Of an interval between two ends the shorter vouches for less.
        interval: interval.map(|interval| interval.low()),
        place: keys.place,
    })
}

pub(super) fn record(rows: &[Keys<'_, '_>], faults: &mut Faults) -> Vec<Point> {
    let mut record: Vec<Point> = Vec::with_capacity(rows.len());
    for keys in rows {
        for key in RECORD {
            if keys.value(key).is_none() {
                fault(faults, keys.place, format!("`{key}` is missing"));
            }
        }
        let after = keys.quantity("after", read_duration, faults);
        let inside = keys.quantity("inside", read_temperature, faults);
        let (Some(after), Some(inside)) = (after, inside) else { continue };
        if !after.is_exact() {
            fault(faults, keys.place, "`after` is one time, not a range");
            continue;
        }
        let after = after.low();
        if record.last().is_some_and(|last| last.seconds() >= after.value) {
            fault(faults, keys.place, NOT_FORWARD);
            continue;
        }
        match Point::new(after, inside) {
            Ok(point) => record.push(point),
            Err(error) => fault(faults, keys.place, error.to_string()),
        }
    }
    record
}
