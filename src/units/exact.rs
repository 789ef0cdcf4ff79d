use core::marker::PhantomData;
use uom::si::f64::{Length, Mass, Time, Volume};

/// Units of mass. One avoirdupois pound is 0.453 592 37 kg exactly, and an ounce a
/// sixteenth of it (Weights and Measures Act 1985, Schedule 1, Part V).
pub mod mass {
    pub use uom::si::mass::{gram, kilogram, milligram};

    unit! {
        system: uom::si;
        quantity: uom::si::mass;

        @ounce: 0.028_349_523_125; "oz", "ounce", "ounces";
        @pound: 0.453_592_37; "lb", "pound", "pounds";
    }
}

/// Units of volume, each with the system it belongs to in its name. US customary
/// measures follow from the gallon of 231 cubic inches (NIST Handbook 44,
/// Appendix C), Imperial ones from 4.546 09 L; the Australian tablespoon is
/// 20 mL, every other metric one 15 mL.
pub mod volume {
    pub use uom::si::volume::{liter, milliliter};

    unit! {
        system: uom::si;
        quantity: uom::si::volume;

        @us_gallon: 3.785_411_784_E-3; "gal (US)", "US gallon", "US gallons";
        @us_quart: 0.946_352_946_E-3; "qt (US)", "US quart", "US quarts";
        @us_pint: 0.473_176_473_E-3; "pt (US)", "US pint", "US pints";
        @us_cup: 0.236_588_236_5_E-3; "cup (US)", "US cup", "US cups";
        @us_fluid_ounce: 29.573_529_562_5_E-6; "fl oz (US)", "US fluid ounce", "US fluid ounces";
        @us_tablespoon: 14.786_764_781_25_E-6; "tbsp (US)", "US tablespoon", "US tablespoons";
        @us_teaspoon: 4.928_921_593_75_E-6; "tsp (US)", "US teaspoon", "US teaspoons";
        @imperial_gallon: 4.546_09_E-3; "gal (Imperial)", "Imperial gallon", "Imperial gallons";
        @imperial_pint: 0.568_261_25_E-3; "pt (Imperial)", "Imperial pint", "Imperial pints";
        @imperial_fluid_ounce: 28.413_062_5_E-6; "fl oz (Imperial)", "Imperial fluid ounce", "Imperial fluid ounces";
        @metric_cup: 0.25_E-3; "cup (metric)", "metric cup", "metric cups";
        @metric_tablespoon: 15.0_E-6; "tbsp (metric)", "metric tablespoon", "metric tablespoons";
        @metric_teaspoon: 5.0_E-6; "tsp (metric)", "metric teaspoon", "metric teaspoons";
        @australian_tablespoon: 20.0_E-6; "tbsp (Australian)", "Australian tablespoon", "Australian tablespoons";
    }
}

macro_rules! in_const {
    ($(#[$doc:meta])* $name:ident, $quantity:ident, $per_base:expr) => {
        $(#[$doc])*
        #[must_use]
        pub const fn $name(value: f64) -> $quantity {
            $quantity { dimension: PhantomData, units: PhantomData, value: value * $per_base }
        }
    };
}

in_const!(
    /// A mass in grams, also in a `const`.
    grams, Mass, 1e-3
);
in_const!(
    /// A mass in kilograms, also in a `const`.
    kilograms, Mass, 1.0
);
in_const!(
    /// A mass in avoirdupois ounces, also in a `const`.
    ounces, Mass, 0.028_349_523_125
);
in_const!(
    /// A mass in avoirdupois pounds, also in a `const`.
    ///
    /// ```
    /// use greenweight::units::{Mass, ounces, pounds};
    ///
    /// const POUND: Mass = pounds(1.0);
    /// assert_eq!(POUND, ounces(16.0));
    /// ```
    pounds, Mass, 0.453_592_37
);
in_const!(
    /// A volume in liters, also in a `const`.
    liters, Volume, 1e-3
);
in_const!(
    /// A volume in US gallons, also in a `const`.
    gallons, Volume, 3.785_411_784e-3
);
in_const!(
    /// A time in seconds, also in a `const`.
    seconds, Time, 1.0
);
in_const!(
    /// A time in minutes, also in a `const`.
    minutes, Time, 60.0
);
in_const!(
    /// A time in hours, also in a `const`.
    hours, Time, 3600.0
);
in_const!(
    /// A time in days of 24 hours, also in a `const`.
    days, Time, 86_400.0
);
in_const!(
    /// A length in centimeters, also in a `const`.
    centimeters, Length, 0.01
);
in_const!(
    /// A length in inches of 25.4 mm, also in a `const`.
    inches, Length, 0.0254
);
