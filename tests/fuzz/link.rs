#![no_main]
//! Whatever libFuzzer thinks of, as a link.

mod checks;

libfuzzer_sys::fuzz_target!(|bytes: &[u8]| {
    checks::link(&String::from_utf8_lossy(bytes));
});
