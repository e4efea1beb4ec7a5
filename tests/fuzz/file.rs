#![no_main]
//! Whatever libFuzzer thinks of, as a file.

mod checks;

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| {
    checks::file(&String::from_utf8_lossy(bytes));
});
