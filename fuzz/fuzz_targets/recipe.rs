#![no_main]

libfuzzer_sys::fuzz_target!(|text: &str| greenweight_fuzz::recipe(text));
