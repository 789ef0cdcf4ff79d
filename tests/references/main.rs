//! The published figures against themselves: each is worked out or read again from
//! the words its document prints, and a second keying must agree.

mod check;
mod counts;
mod second_key;

use greenweight_references::References;

#[test]
fn the_printed_words_of_the_cure_rows_give_their_figures() {
    check::reckon_again(References::read().table("cure/us-ingoing"));
}

#[test]
fn the_atoms_give_the_molar_masses() {
    check::weigh_atoms(References::read().table("cure/molar-mass"));
}

#[test]
fn the_conversions_lie_in_the_interval_that_the_atomic_weights_leave() {
    check::convert_again(References::read().table("cure/conversion-factors"));
}

#[test]
fn celsius_and_fahrenheit_of_a_row_are_one_temperature_but_for_noted_misprints() {
    References::read().tables.iter().for_each(check::compare_scales);
}

#[test]
fn the_words_of_the_storage_chart_give_its_days() {
    check::read_durations_again(References::read().table("store/cold-food"));
}

#[test]
fn dwell_times_fall_as_the_temperature_rises_and_7_log_is_never_shorter() {
    check::falls(References::read().table("cook/fsis-meat-dwell"));
}

#[test]
fn units_are_what_their_rows_say() {
    check::weigh_units(References::read().table("units/customary"));
}

#[test]
fn a_second_keying_of_each_table_agrees_with_the_first() {
    second_key::compare(&References::read());
}

#[test]
fn a_second_keying_of_the_limits_outside_the_united_states_agrees_with_the_first() {
    second_key::compare_elsewhere(&References::read());
}

#[test]
fn a_second_keying_of_what_is_added_to_a_cure_agrees_with_the_first() {
    second_key::compare_additives(&References::read());
}

#[test]
fn a_second_keying_of_the_tables_of_cooking_agrees_with_the_first() {
    second_key::compare_cook(&References::read());
}
