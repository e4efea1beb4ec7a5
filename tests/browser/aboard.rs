//! The page as one file: made by the page as by the task runner, and at work
//! from disk.

use crate::desk::{Desk, OPENED, answer};
use crate::site::Site;
use ampwright_tests::driver::{Browser, Screen, patiently};
use serde_json::json;
use std::{env, fs, path::PathBuf, process};
use xtask::{bundle::bundle, places};

/// A folder to download to, gone at the end.
struct Downloads(PathBuf);

impl Downloads {
    fn new() -> Downloads {
        let folder = env::temp_dir().join(format!("ampwright-aboard-{}", process::id()));
        fs::create_dir_all(&folder).unwrap();
        Downloads(folder)
    }

    /// The one file, when it has arrived.
    fn file(&self) -> PathBuf {
        let file = self.0.join("ampwright.html");
        let arrived = || match file.is_file() {
            true => Ok(()),
            false => Err("Nothing was downloaded.".into()),
        };
        patiently(arrived).unwrap();
        file
    }
}

impl Drop for Downloads {
    fn drop(&mut self) {
        fs::remove_dir_all(&self.0).ok();
    }
}

#[test]
fn a_copy_of_the_page_works_from_disk() {
    let mut desk = Desk::open(Screen::Phone);
    desk.browser.wait_data("offline", "ready").unwrap();
    desk.browser.refresh().unwrap();
    desk.browser.wait_for(OPENED).unwrap();
    let build = desk.text("#build");
    desk.press("#demo");
    desk.browser.wait_text("#arrival", "demo").unwrap();
    let demo = desk.answer();

    // The page has all it needs for it.
    desk.site.stop();
    let downloads = Downloads::new();
    desk.browser.download_to(&downloads.0).unwrap();
    desk.press("#aboard");
    desk.browser.wait_text("#aboard-said", "downloads").unwrap();
    let file = downloads.file();
    let made = fs::read_to_string(&file).unwrap();
    // Not `assert_eq`: nobody wants to read a million letters.
    assert!(made == bundle(&places::dist()).unwrap());

    let browser = Browser::open(Screen::Phone).unwrap();
    let address = format!("file://{}", file.display());
    let text = |css: &str| browser.find(css).unwrap().text().unwrap();
    browser.go(&address).unwrap();
    browser.wait_for(OPENED).unwrap();
    browser.wait_text("#offline", "copy in one file").unwrap();
    assert_eq!(text("#build"), build);
    assert!(browser.find("#aboard").is_err());
    browser.find("#demo").unwrap().click().unwrap();
    browser.wait_text("#arrival", "demo").unwrap();
    assert_eq!(answer(&browser), demo);

    // What is typed changes the answer and is there again.
    browser.find("#ask-eng_rpm").unwrap().fill("1111").unwrap();
    let other = answer(&browser);
    assert_ne!(other, demo);
    let kept = "return localStorage.getItem('ampwright.last')";
    browser.wait_script(kept).unwrap();
    browser.go("about:blank").unwrap();
    browser.go(&address).unwrap();
    browser.wait_for(OPENED).unwrap();
    assert_eq!(answer(&browser), other);

    browser.go("about:blank").unwrap();
    let link = format!("{address}#v=2&name=Theirs&alt_rated_a=150&end");
    browser.go(&link).unwrap();
    browser.wait_text("#title", "Theirs").unwrap();
    browser.wait_text("#arrival", "as a copy").unwrap();
    browser.shot("aboard").unwrap();
    assert_eq!(browser.complaints().unwrap(), [""; 0]);
    assert_eq!(browser.requests_beyond(&address).unwrap(), [""; 0]);
    let parts = "return performance.getEntriesByType('resource').filter((e) => !e.name.startsWith('data:')).length";
    assert_eq!(browser.script(parts, &[]).unwrap(), json!(0));

    // And could ask nobody if it wished to.
    let site = Site::start();
    let ask = "return fetch(arguments[0], { mode: 'no-cors' }).then(() => 'sent', () => 'stopped')";
    let asked = browser.script(ask, &[json!(site.url())]).unwrap();
    assert_eq!(asked, json!("stopped"));
}
