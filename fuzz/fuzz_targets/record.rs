#![no_main]

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| greenweight_fuzz::record(bytes));
