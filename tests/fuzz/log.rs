#![no_main]
//! Whatever libFuzzer thinks of, as a log.

mod checks;

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| {
    checks::log(&String::from_utf8_lossy(bytes));
});
