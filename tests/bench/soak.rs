#![forbid(unsafe_code)]
//! A long day at the page: 500 worksheets and 2000 edits in one sitting, and
//! what the browser's memory makes of it. Nothing here passes or fails.
//!
//! `cargo xtask soak` builds the page and runs this.

use std::path::Path;

use ampwright_tests::driver::{Browser, Screen};
use ampwright_tests::server::Server;
use serde_json::{Value, json};

const SHEETS: u32 = 500;
const EDITS_EACH: u32 = 4;
/// Worksheets between two lines of the table.
const STRIDE: u32 = 50;

/// Keeps hold of the wasm's memory, which the page itself does not show.
const HOLD: &str = "
for (const name of ['instantiate', 'instantiateStreaming']) {
    const real = WebAssembly[name];
    WebAssembly[name] = (...given) => real.apply(WebAssembly, given).then((made) => {
        window.held = (made.instance ?? made).exports.memory;
        return made;
    });
}";

/// Makes worksheets as copies of the one that lies open and edits each: its
/// name and three figures. Every edit waits until the page has drawn it, which
/// is timed.
const WORK: &str = "
const [from, to, edits] = arguments;
const drawn = () => new Promise((done) => requestAnimationFrame(() => {
    const after = new MessageChannel();
    after.port1.onmessage = done;
    after.port2.postMessage(0);
}));
const fields = ['#sheet-name', '#ask-bank_capacity_ah', '#ask-alt_rated_a', '#ask-eng_rpm'];
const texts = (sheet) => [`Boat ${sheet}`, 200 + sheet, 60 + sheet % 200, 900 + sheet];
return (async () => {
    let slowest = 0, sum = 0;
    for (let sheet = from; sheet < to; sheet++) {
        document.querySelector('#copy-sheet').click();
        for (let edit = 0; edit < edits; edit++) {
            const start = performance.now();
            const entry = document.querySelector(fields[edit % fields.length]);
            entry.focus();
            entry.value = texts(sheet)[edit % fields.length];
            entry.dispatchEvent(new Event('input', { bubbles: true }));
            entry.dispatchEvent(new Event('focusout', { bubbles: true }));
            await drawn();
            const took = performance.now() - start;
            sum += took;
            slowest = Math.max(slowest, took);
        }
    }
    // The last one is kept when typing rests.
    await new Promise((done) => setTimeout(done, 1000));
    return [sum, (to - from) * edits, slowest];
})();";

/// Opens kept worksheets one after the other.
const LEAF: &str = "
const [times] = arguments;
return (async () => {
    for (let at = 0; at < times; at++) {
        const sheets = document.querySelectorAll('#sheets .title');
        sheets[at * 37 % sheets.length].click();
        await new Promise((done) => setTimeout(done, 20));
    }
})();";

/// Deletes all but the newest worksheet, as a user does.
const CLEAR: &str = "
return (async () => {
    for (let at = 0; at < 20; at++) {
        const buttons = document.querySelectorAll('#sheets [id^=delete-]');
        if (buttons.length < 2) return false;
        buttons[buttons.length - 1].click();
        await new Promise((done) => setTimeout(done, 0));
    }
    return true;
})();";

/// Fills the storage to its brim, then edits.
const BRIM: &str = "
let some = 'x'.repeat(1 << 20), at = 0;
while (some) {
    try { localStorage.setItem(`brim.${at++}`, some); }
    catch { some = some.slice(some.length >> 1 || 1); }
}
const entry = document.querySelector('#sheet-name');
entry.value = 'A boat too many, with a longer name than before';
entry.dispatchEvent(new Event('input', { bubbles: true }));
return new Promise((done) => setTimeout(() => {
    for (; at >= 0; at--) localStorage.removeItem(`brim.${at}`);
    done(document.querySelector('#keeping').textContent);
}, 1000));";

type Result<T> = std::result::Result<T, String>;

fn main() -> Result<()> {
    let folder = Path::new(env!("CARGO_MANIFEST_DIR")).join("../dist");
    let server = Server::start(folder, 0).map_err(|e| e.to_string())?;
    let browser = Browser::open(Screen::Desk)?;
    browser.devtools(
        "Page.addScriptToEvaluateOnNewDocument",
        json!({ "source": HOLD }),
    )?;
    browser.go(&server.url())?;
    browser.wait_for("[data-complete] #demo")?.click()?;
    browser.devtools("Performance.enable", json!({}))?;
    println!(
        "{:<26} {:>7} {:>9} {:>9} {:>8} {:>10} {:>9} {:>9} {:>9}",
        "after", "edits", "heap", "wasm", "nodes", "listeners", "storage", "an edit", "slowest"
    );
    row(&browser, "opening", 0, None)?;
    for from in (0..SHEETS).step_by(STRIDE as usize) {
        let to = (from + STRIDE).min(SHEETS);
        let mut took = Took::default();
        // Some at a time: a script may run for half a minute.
        for some in (from..to).step_by(10) {
            let work = [json!(some), json!((some + 10).min(to)), json!(EDITS_EACH)];
            took.add(&browser.script(WORK, &work)?);
        }
        let after = format!("{to} worksheets");
        row(&browser, &after, to * EDITS_EACH, Some(&took))?;
    }
    for _ in 0..10 {
        browser.script(LEAF, &[json!(10)])?;
    }
    row(&browser, "opening 100 of them", SHEETS * EDITS_EACH, None)?;
    while browser.script(CLEAR, &[])? == json!(true) {}
    row(&browser, "deleting all but one", SHEETS * EDITS_EACH, None)?;
    let said = browser.script(BRIM, &[])?;
    println!("With the storage full the page says: {said}");
    for complaint in browser.complaints()? {
        println!("The browser complains: {complaint}");
    }
    Ok(())
}

/// How long edits took \[ms\].
#[derive(Default)]
struct Took {
    sum: f64,
    count: f64,
    slowest: f64,
}

impl Took {
    fn add(&mut self, some: &Value) {
        let figure = |at: usize| some[at].as_f64().unwrap_or(f64::NAN);
        self.sum += figure(0);
        self.count += figure(1);
        self.slowest = self.slowest.max(figure(2));
    }
}

/// One line of the table, after the browser has cleared away what it can.
fn row(browser: &Browser, after: &str, edits: u32, took: Option<&Took>) -> Result<()> {
    for _ in 0..2 {
        browser.devtools("HeapProfiler.collectGarbage", json!({}))?;
    }
    let metrics = browser.devtools("Performance.getMetrics", json!({}))?;
    let metric = |name: &str| {
        let all = metrics["metrics"].as_array().into_iter().flatten();
        let found = all.clone().find(|metric| metric["name"] == name);
        found.map_or(f64::NAN, |metric| {
            metric["value"].as_f64().unwrap_or(f64::NAN)
        })
    };
    let look = "return [window.held?.buffer.byteLength ?? -1,
        Object.entries(localStorage).reduce((sum, [key, text]) => sum + key.length + text.length, 0)]";
    let seen = browser.script(look, &[])?;
    let mb = |bytes: f64| bytes / 1e6;
    print!(
        "{after:<26} {edits:>7} {:>6.2} MB {:>6.2} MB {:>8} {:>10} {:>6.2} MB",
        mb(metric("JSHeapUsedSize")),
        mb(seen[0].as_f64().unwrap_or(f64::NAN)),
        metric("Nodes"),
        metric("JSEventListeners"),
        mb(seen[1].as_f64().unwrap_or(f64::NAN)),
    );
    if let Some(took) = took {
        let mean = took.sum / took.count.max(1.0);
        print!(" {mean:>6.1} ms {:>6.1} ms", took.slowest);
    }
    println!();
    Ok(())
}
