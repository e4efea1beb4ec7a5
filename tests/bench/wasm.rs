//! The same charging run on this computer and as wasm in the browser.

use std::fs;

use ampwright_tests::{
    driver::{Browser, Screen},
    server::Server,
};
use xtask::places;

use crate::{Result, boat, median, watch};

/// Runs that `runs.rs` does at once.
const RUNS: u32 = 100;

/// Times the wasm's runs, after some to warm up \[ms\].
const TIME: &str = "
return (async () => {
    const made = await WebAssembly.instantiateStreaming(fetch('bench_runs.wasm'));
    const times = [];
    for (let turn = 0; turn < 12; turn++) {
        const start = performance.now();
        made.instance.exports.main(0, 0);
        times.push(performance.now() - start);
    }
    return times.slice(3);
})();";

pub fn against_native() -> Result<()> {
    let folder = places::target().join("wasm32-unknown-unknown/page");
    // A page of this address that may ask for the program: a browser's own, which it
    // shows where there is none, may not.
    fs::write(
        folder.join("index.html"),
        "<!doctype html><title>Runs</title>",
    )
    .map_err(|e| e.to_string())?;
    let server = Server::start(folder, 0).map_err(|e| e.to_string())?;
    let browser = Browser::open(Screen::Desk)?;
    browser.go(&server.url())?;
    let times = browser.script(TIME, &[])?;
    let times = times.as_array().into_iter().flatten();
    let wasm_ms = median(times.filter_map(|ms| ms.as_f64()).collect()) / f64::from(RUNS);
    let plant = boat::plant();
    let native_ms = 1000.0 * watch::median_s(|| boat::run(&plant));
    println!("\n{:<44} {:>12}", "case B, 35 to 99.5 %", "ms");
    watch::row("native", &[format!("{native_ms:.4}")]);
    watch::row("wasm as the page has it", &[format!("{wasm_ms:.4}")]);
    watch::row("times as long", &[format!("{:.1}", wasm_ms / native_ms)]);
    Ok(())
}
