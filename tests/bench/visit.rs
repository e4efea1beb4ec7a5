//! A first visit with a slow phone: a processor four times slower, 1.6 Mbit/s,
//! 150 ms to the host, which sends brotli.

use std::{
    fs,
    io::Write,
    path::{Path, PathBuf},
};

use ampwright_tests::{
    driver::{Browser, Screen},
    server::Server,
};
use serde_json::json;
use xtask::{files, places};

use crate::{Result, median, took, watch};

const VISITS: usize = 5;

/// Notes when the questions can be read and when they can be answered.
const WATCH: &str = "
let words;
const look = () => {
    const now = performance.now();
    if (document.querySelector('.questions h3')?.offsetHeight) words ??= now;
    if ('ready' in document.documentElement.dataset) window.took = [words, now];
    else requestAnimationFrame(look);
};
requestAnimationFrame(look);";

pub fn first_visits() -> Result<()> {
    let server = Server::start(packed()?, 0).map_err(|e| e.to_string())?;
    let mut times = [Vec::new(), Vec::new(), Vec::new()];
    for _ in 0..VISITS {
        let browser = Browser::open(Screen::Phone)?;
        browser.devtools("Network.enable", json!({}))?;
        browser.devtools(
            "Network.emulateNetworkConditions",
            json!({ "offline": false, "latency": 150, "downloadThroughput": 200_000, "uploadThroughput": 200_000 }),
        )?;
        browser.devtools("Emulation.setCPUThrottlingRate", json!({ "rate": 4 }))?;
        browser.devtools(
            "Page.addScriptToEvaluateOnNewDocument",
            json!({ "source": WATCH }),
        )?;
        browser.go(&server.url())?;
        let seen = took(&browser)?;
        let paint = "return performance.getEntriesByName('first-contentful-paint')[0]?.startTime";
        let paint = browser.script(paint, &[])?;
        for (times, ms) in times.iter_mut().zip([&paint, &seen[0], &seen[1]]) {
            times.push(ms.as_f64().ok_or("no time")?);
        }
    }
    println!(
        "\n{:<44} {:>12}",
        "first visit, 4x slower, 1.6 Mbit/s, 150 ms", "median"
    );
    let names = ["first paint", "the questions can be read", "ready to type"];
    for (name, times) in names.into_iter().zip(times) {
        watch::row(name, &[format!("{:.0} ms", median(times))]);
    }
    Ok(())
}

/// The page with each file compressed beside it.
fn packed() -> Result<PathBuf> {
    let folder = places::target().join("bench/page");
    fs::remove_dir_all(&folder).ok();
    pack(&folder).map_err(|e| format!("{}: {e}.", folder.display()))?;
    Ok(folder)
}

fn pack(folder: &Path) -> std::io::Result<()> {
    files::copy(&places::dist(), folder)?;
    for name in files::names(folder)? {
        let mut brotli = brotli::CompressorWriter::new(Vec::new(), 4096, 11, 22);
        brotli.write_all(&fs::read(folder.join(&name))?)?;
        fs::write(folder.join(format!("{name}.br")), brotli.into_inner())?;
    }
    Ok(())
}
