#![forbid(unsafe_code)]
//! How quick the finished page is in a browser: a keystroke to new results on
//! screen, and charging runs a second. Nothing here passes or fails.
//!
//! `cargo xtask bench` builds the page and runs this after the bench of the
//! calculations.

use std::path::Path;
use std::time::Duration;

use ampwright_tests::driver::{Browser, Screen};
use ampwright_tests::server::Server;
use serde_json::{Value, json};

/// Types a figure and waits until the page has answered and been laid out.
const KEYSTROKE: &str = "
const [figure, done] = arguments;
const entry = document.querySelector('#ask-eng_rpm');
entry.focus();
entry.value = figure;
const start = performance.now();
entry.dispatchEvent(new Event('input', { bubbles: true }));
requestAnimationFrame(() => {
    const drawn = new MessageChannel();
    drawn.port1.onmessage = () => { window.took = performance.now() - start; };
    drawn.port2.postMessage(0);
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
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../dist");
    let server = Server::start(folder, 0).map_err(|e| e.to_string())?;
    println!("{:<44} {:>12}", "in the browser", "median");
    for rate in [1, 4] {
        let browser = Browser::open(Screen::Phone)?;
        browser.go(&server.url())?;
        browser.wait_for("#paper:enabled #demo")?.click()?;
        browser.devtools("Emulation.setCPUThrottlingRate", json!({ "rate": rate }))?;
        // The range is reckoned first.
        std::thread::sleep(Duration::from_secs(3));
        let mut times = Vec::new();
        for figure in 0..9 {
            browser.script("window.took = undefined;", &[])?;
            browser.script(KEYSTROKE, &[json!((1300 + 25 * figure).to_string())])?;
            times.push(took(&browser)?);
            std::thread::sleep(Duration::from_millis(1500));
        }
        times.sort_by(f64::total_cmp);
        let what = format!("keystroke to new results, {rate}x slower processor");
        println!("{what:<44} {:>9.1} ms", times[times.len() / 2]);
        if rate == 1 {
            browser.script("document.getElementById('goal-fold').open = true;", &[])?;
            browser.script(SEARCH, &[])?;
            let ms = took(&browser)?;
            let tried = browser.script(
                "return parseInt(document.querySelector('#goal-found .about').textContent)",
                &[],
            )?;
            let tried = tried.as_f64().unwrap_or(0.0);
            println!(
                "{:<44} {:>9.0} a s",
                "charging runs of the cheapest way",
                1000.0 * tried / ms
            );
        }
    }
    Ok(())
}

fn took(browser: &Browser) -> Result<f64> {
    for _ in 0..600 {
        if let Value::Number(ms) = browser.script("return window.took ?? null", &[])? {
            return ms.as_f64().ok_or("no time".into());
        }
        std::thread::sleep(Duration::from_millis(50));
    }
    Err("The page did not answer.".into())
}
