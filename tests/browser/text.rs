//! What somebody wrote stays text, wherever the page shows it.

use crate::desk::{Desk, unfold};
use ampwright_tests::driver::Screen;
use serde_json::json;

/// Would leave a mark if any of it were taken for markup.
const EVIL: &str = "%3Cimg%20src%3Dx%20onerror%3D%22window.marked%3D1%22%20class%3Dmarked%3E%22%27%3E%3C%2Ftextarea%3E%3Cb%20class%3Dmarked%3Ex%3C%2Fb%3E";

const MARKS: &str = "return document.querySelectorAll('.marked').length + (window.marked ?? 0)";

#[test]
fn script_in_a_name_stays_text() {
    let desk = Desk::open(Screen::Desk);
    let link = format!(
        "#v=2&name={EVIL}&daily_basis=listed&load={EVIL}~15&load={EVIL}~{EVIL}&way={EVIL}~alt_rated~180&way={EVIL}~{EVIL}~{EVIL}&{EVIL}={EVIL}&{EVIL}&bank_capacity={EVIL}&alt_rated=100~{EVIL}&end"
    );
    let url = format!("{}{link}", desk.site.url());
    desk.browser.go(&url).unwrap();
    desk.browser.wait_text(".notice", "No input").unwrap();
    look_everywhere(&desk);
    // As a log, and as a link opened from within.
    let evil = "a <img src=x onerror=\"window.marked=1\" class=marked>";
    desk.fill("#trial-log", &format!("min;{evil}\n0;{evil}\n{evil};3"));
    desk.browser
        .wait_text("#trial-log-remarks", "<img")
        .unwrap();
    desk.fill("#open-link", &format!("v=2&{evil}=3&end"));
    desk.press("#take-link");
    desk.browser.wait_text(".notice", "<img").unwrap();
    look_everywhere(&desk);
    // From the storage, where both are kept.
    desk.wait_kept("window.marked");
    desk.browser.go(&desk.site.url()).unwrap();
    desk.browser.wait_for(crate::desk::OPENED).unwrap();
    let sheets = "return document.querySelector('#sheets').textContent.includes('<img')";
    desk.browser.wait_script(sheets).unwrap();
    look_everywhere(&desk);
    desk.assert_quiet();
}

/// Opens all folds and looks for what markup would have left.
fn look_everywhere(desk: &Desk) {
    unfold(&desk.browser);
    assert_eq!(desk.browser.script(MARKS, &[]).unwrap(), json!(0));
}
