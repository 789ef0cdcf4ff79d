//! What the controller of a smokehouse would link: the core of `greenweight` with neither
//! `std` nor an allocator.
//!
//! That it builds is the test. A static library has to be complete: if `std` came in by
//! any dependency, its panic handler and the one below would be the same language item
//! twice, and if anything allocated, a global allocator would be missing. Both are errors.
#![no_std]

use greenweight::authority::Authority;
use greenweight::cook::{ComeUp, FSIS_MEAT_DWELL, Product, Verdicts, dwell_row};
use greenweight::cure::{
    Batch, Cure, GreenWeight, Level, Method, Premix, PremixMass, SodiumNitrite, Weighed, check,
    ingoing,
};
use greenweight::finding::{Place, Verdict};
use greenweight::food::Food;
use greenweight::range::Range;
use greenweight::trace::{Point, vouched};
use greenweight::units::{Mass, Reading, Scale, kilograms, read_mass, read_tolerance, seconds};

#[panic_handler]
fn halt(_: &core::panic::PanicInfo<'_>) -> ! {
    loop {}
}

/// A short text, passed by value so that no pointer is followed.
#[repr(C)]
pub struct Text {
    bytes: [u8; 31],
    length: u8,
}

impl Text {
    fn mass(&self) -> Option<Mass> {
        let bytes = self.bytes.get(..usize::from(self.length))?;
        read_mass(core::str::from_utf8(bytes).ok()?).ok()
    }
}

/// Ingoing sodium nitrite in mg/kg; -1 for what cannot be read or be so.
#[unsafe(no_mangle)]
pub extern "C" fn greenweight_ingoing(premix: Text, strength_percent: f64, green: Text) -> f64 {
    let level = || {
        let premix = PremixMass::new(premix.mass()?).ok()?;
        let green = GreenWeight::new(green.mass()?).ok()?;
        let strength = Level::<SodiumNitrite, _>::percent(strength_percent).ok()?;
        Some(ingoing(premix, strength, green).mg_per_kg())
    };
    level().unwrap_or(-1.0)
}

/// Whether ground meat with so much premix meets the rules of inspected plants in the
/// United States: 0 meets, 1 unproven, 2 breaks.
#[unsafe(no_mangle)]
pub extern "C" fn greenweight_check(premix: Text, strength_percent: f64, green: Text) -> u8 {
    let place = Place::default();
    let scale = Some(kilograms(0.000_1));
    let strength = Level::percent(strength_percent)
        .ok()
        .and_then(|level| Premix::new().with_sodium_nitrite(level).ok());
    let cures = [Cure { mass: premix.mass().map(|mass| Weighed { mass, scale }), strength, place }];
    let green = green.mass().and_then(|mass| Range::exactly(mass).ok());
    let batch = Batch {
        scaled: true,
        product: green,
        method: Some(Method::Ground),
        green: green.and_then(|mass| GreenWeight::range(mass).ok()),
        cures: &cures,
        place,
        ..Batch::of(Food::GroundMeat)
    };
    let mut worst = None;
    check(&batch, Authority::UsFsis, None, &mut |finding| worst = worst.max(Some(finding.verdict)));
    match worst {
        Some(Verdict::Meets) => 0,
        Some(Verdict::Breaks) => 2,
        Some(Verdict::Unproven) | None => 1,
    }
}

/// Seconds that meat is held at an inside temperature for a 6.5-log reduction; -1 below
/// the first row of the table.
#[unsafe(no_mangle)]
pub extern "C" fn greenweight_dwell_seconds(fahrenheit: f64) -> f64 {
    let reading = Reading::new(fahrenheit, Scale::Fahrenheit).ok();
    let row = reading.and_then(dwell_row);
    row.map_or(-1.0, |row| row.value.for_6_5_log.value)
}

/// How many rows the table of times has.
#[unsafe(no_mangle)]
pub extern "C" fn greenweight_dwell_rows() -> usize {
    FSIS_MEAT_DWELL.len()
}

/// Whether meat that is read at one temperature at two times is held long enough for a row of the table, by a
/// probe of ±1 °F that is read every so many seconds, and came up in time: 1 yes, 0 no, -1 for what is no reading.
#[unsafe(no_mangle)]
pub extern "C" fn greenweight_held(fahrenheit: f64, from: f64, to: f64, step: f64) -> i8 {
    let held = || {
        let (tolerance, apart) = (read_tolerance("1 °F").ok()?, vouched(seconds(step)));
        let mut verdicts = Verdicts::new(Product::Meat, tolerance, apart).ok()?;
        let mut come_up = ComeUp::within(tolerance, apart);
        let reading = Reading::new(fahrenheit, Scale::Fahrenheit).ok()?;
        for at in [from, to] {
            let segment = verdicts.next(Point::new(seconds(at), reading).ok()?).ok()?;
            segment.iter().for_each(|segment| come_up.add(segment));
        }
        let met = verdicts.met().next().is_some();
        Some(i8::from(met && come_up.within_limit()))
    };
    held().unwrap_or(-1)
}
