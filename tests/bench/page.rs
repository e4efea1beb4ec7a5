#![forbid(unsafe_code)]
//! How quick the finished page is in a browser: a first visit, a keystroke to
//! new results on screen, charging runs a second, and a run beside the same
//! one native. Nothing here passes or fails.
//!
//! `cargo xtask bench` builds the page and runs this after the bench of the
//! calculations.

mod boat;
mod visit;
mod wasm;
mod watch;

use std::time::Duration;

use ampwright_tests::driver::{Browser, Screen};
use ampwright_tests::server::Server;
use serde_json::{Value, json};
use xtask::places;

/// Types a figure; notes when the frame with the answer is drawn, and when
/// that with all the rest is.
const KEYSTROKE: &str = "
const [figure] = arguments;
const entry = document.querySelector('#ask-bank_capacity_ah');
entry.focus();
entry.value = figure;
const drawn = () => new Promise((done) => requestAnimationFrame(() => {
    const after = new MessageChannel();
    after.port1.onmessage = done;
    after.port2.postMessage(0);
}));
const start = performance.now();
entry.dispatchEvent(new Event('input', { bubbles: true }));
drawn().then(() => {
    const first = performance.now() - start;
    setTimeout(() => {
        document.body.offsetHeight;
        window.took = [first, performance.now() - start];
    });
});";

/// Looks for the cheapest way and times it.
const SEARCH: &str = "
window.took = undefined;
const start = performance.now();
document.querySelector('#goal-look').click();
const look = () => {
    if (document.querySelector('#goal-found li')) window.took = performance.now() - start;
    else setTimeout(look, 0);
};
look();";

type Result<T> = std::result::Result<T, String>;

fn main() -> Result<()> {
    let server = Server::start(places::dist(), 0).map_err(|e| e.to_string())?;
    println!("{:<44} {:>12}", "in the browser", "median");
    for (boat, rate) in [("demo", 1), ("demo", 4), ("fresh", 4)] {
        let browser = Browser::open(Screen::Phone)?;
        browser.go(&server.url())?;
        let demo = browser.wait_for("[data-complete] #demo")?;
        if boat == "demo" {
            demo.click()?;
        }
        browser.devtools("Emulation.setCPUThrottlingRate", json!({ "rate": rate }))?;
        // The range is reckoned first.
        std::thread::sleep(Duration::from_secs(3));
        let mut times = [Vec::new(), Vec::new()];
        for figure in 0..11 {
            browser.script("window.took = undefined;", &[])?;
            browser.script(KEYSTROKE, &[json!((200 + 7 * figure).to_string())])?;
            let seen = took(&browser)?;
            for (times, ms) in times.iter_mut().zip([&seen[0], &seen[1]]) {
                times.push(ms.as_f64().ok_or("no time")?);
            }
            std::thread::sleep(Duration::from_millis(1500));
        }
        let names = ["keystroke to the answer", "… to all charts and tables"];
        for (name, times) in names.into_iter().zip(times) {
            let what = format!("{name}, {boat}, {rate}x slower");
            watch::row(&what, &[format!("{:.1} ms", median(times))]);
        }
        if rate == 1 {
            search(&browser)?;
        }
    }
    visit::first_visits()?;
    wasm::against_native()
}

fn search(browser: &Browser) -> Result<()> {
    browser.script("document.getElementById('goal-fold').open = true;", &[])?;
    browser.wait_for("#goal-look")?;
    browser.script(SEARCH, &[])?;
    let ms = took(browser)?.as_f64().ok_or("no time")?;
    let tried = browser.script(
        "return parseInt(document.querySelector('#goal-found .about').textContent)",
        &[],
    )?;
    let a_second = 1000.0 * tried.as_f64().unwrap_or(0.0) / ms;
    let what = "charging runs of the cheapest way";
    watch::row(what, &[format!("{a_second:.0} a s")]);
    Ok(())
}

fn median(mut times: Vec<f64>) -> f64 {
    times.sort_by(f64::total_cmp);
    times.get(times.len() / 2).copied().unwrap_or(f64::NAN)
}

/// What a script of the page found, once it has.
fn took(browser: &Browser) -> Result<Value> {
    for _ in 0..600 {
        let seen = browser.script("return window.took ?? null", &[])?;
        if !seen.is_null() {
            return Ok(seen);
        }
        std::thread::sleep(Duration::from_millis(50));
    }
    Err("The page did not answer.".into())
}
