//! What the browser keeps, and what happens when it does not; and the panel
//! that is shown when the worksheet breaks down.

use crate::desk::{Desk, OPENED, wait_journal};
use crate::site::Site;
use ampwright_tests::driver::{Browser, Profile, Screen};
use serde_json::json;

/// What another tab of the page does: it writes, and this tab is told.
const WRITE: &str = "localStorage.setItem(arguments[0], arguments[1]);
    window.dispatchEvent(new StorageEvent('storage', { key: arguments[0] }));";

fn kept(desk: &Desk, key: &str) -> String {
    let code = "return localStorage.getItem(arguments[0]) ?? ''";
    let text = desk.browser.script(code, &[json!(key)]).unwrap();
    text.as_str().unwrap().to_string()
}

/// What the browser keeps reaches the disk late; the journal does not.
#[test]
fn a_killed_browser_takes_nothing_that_was_in_the_journal() {
    let site = Site::start();
    let profile = Profile::new().unwrap();
    let browser = Browser::open_in(Screen::Desk, &profile).unwrap();
    browser.go(&site.url()).unwrap();
    browser.wait_for(OPENED).unwrap();
    browser.find("#sheet-name").unwrap().fill("Plov").unwrap();
    wait_journal(&browser, "Plov");
    browser.kill();
    let browser = Browser::open_in(Screen::Desk, &profile).unwrap();
    browser.go(&site.url()).unwrap();
    // The page waits half a second for the journal; on a busy machine it may
    // come later, and the worksheet with the next opening.
    browser
        .wait_script("return Object.values(localStorage).some((text) => text.includes('Plov'))")
        .unwrap();
    browser.refresh().unwrap();
    browser.wait_text("#title", "Plov").unwrap();
    browser.wait_text("#sheets", "Plov").unwrap();
    browser.close().unwrap();
}

#[test]
fn blocked_storage_says_so_and_work_goes_on() {
    let desk = Desk::open(Screen::Phone);
    let refuse = json!({ "source": "Object.defineProperty(window, 'localStorage', { get() { throw new DOMException('refused', 'SecurityError'); } });" });
    desk.browser
        .devtools("Page.addScriptToEvaluateOnNewDocument", refuse)
        .unwrap();
    desk.browser.refresh().unwrap();
    desk.browser
        .wait_text("#memory-only", "does not let the page keep")
        .unwrap();
    desk.name("Plover");
    let answer = desk.answer();
    desk.questions().fill("Day's use", "77");
    assert_ne!(desk.answer(), answer);
    // It can still be taken along.
    assert_eq!(desk.linked().name, "Plover");
    let catch = "URL.createObjectURL = (blob) => { blob.text().then((text) => window.saved = text); return '#'; };
        HTMLAnchorElement.prototype.click = () => {};";
    desk.browser.script(catch, &[]).unwrap();
    let files = desk.share().opened("Files and paper");
    files.press("All boats as a file");
    let saved = desk.browser.wait_script("return window.saved").unwrap();
    let saved = ampwright_core::exchange::read_file(saved.as_str().unwrap()).unwrap();
    assert_eq!(saved[0].sheet.name, "Plover");
    desk.assert_quiet();
}

#[test]
fn a_deleted_worksheet_comes_back() {
    let desk = Desk::open(Screen::Phone);
    let count = "window.asked = 0; navigator.storage.persist = async () => { asked += 1 };";
    desk.browser.script(count, &[]).unwrap();
    desk.name("Plover");
    desk.questions().fill("Rated current", "85");
    desk.wait_kept(r#""alt_rated_a":85"#);
    // The browser is asked once not to clear it away.
    desk.browser.wait_script("return asked === 1").unwrap();
    let before = kept(&desk, "ampwright.sheet.1");
    desk.shelf().press("Plover: delete");
    desk.browser.wait_text("#undo-place", "Plover").unwrap();
    assert_eq!(kept(&desk, "ampwright.sheet.1"), "");
    desk.browser.shot("store-undo").unwrap();
    desk.push("Undo");
    desk.browser.wait_text("#title", "Plover").unwrap();
    assert_eq!(kept(&desk, "ampwright.sheet.1"), before);
    desk.browser.wait_gone("#undo").unwrap();
    desk.assert_quiet();
}

#[test]
fn two_tabs_never_overwrite_each_other() {
    let desk = Desk::open(Screen::Phone);
    desk.name("Mine");
    desk.wait_kept("Mine");
    let theirs = kept(&desk, "ampwright.sheet.1").replace("Mine", "Theirs");
    let write = [json!("ampwright.sheet.1"), json!(theirs)];
    desk.browser.script(WRITE, &write).unwrap();
    desk.browser.wait_text("#elsewhere", "another tab").unwrap();
    desk.browser.shot("store-two-tabs").unwrap();
    desk.questions().fill("Rated current", "85");
    desk.browser
        .wait_text("#elsewhere", "kept as a copy")
        .unwrap();
    assert_eq!(kept(&desk, "ampwright.sheet.1"), theirs);
    assert!(kept(&desk, "ampwright.sheet.2").contains("Mine"));
    desk.push("Open that version");
    desk.browser.wait_text("#title", "Theirs").unwrap();
    desk.browser.wait_gone("#elsewhere").unwrap();
    desk.assert_quiet();
}

#[test]
fn full_storage_says_so_and_work_goes_on() {
    let desk = Desk::open(Screen::Phone);
    desk.name("Plover");
    desk.wait_kept("Plover");
    let fill = "let text = 'x'.repeat(1 << 20);
        for (let at = 0; text; at++) try { localStorage.setItem('other' + at, text) } catch { text = text.slice(1 + text.length / 2) }";
    desk.browser.script(fill, &[]).unwrap();
    let before = kept(&desk, "ampwright.sheet.1");
    desk.name("Plover, with a name much longer than before");
    desk.browser.wait_text("#memory-only", "in memory").unwrap();
    assert!(kept(&desk, "ampwright.sheet.1").len() >= before.len());
    let answer = desk.answer();
    let day = "Day's use";
    desk.questions().fill(day, "77");
    assert_ne!(desk.answer(), answer);
    // What cannot be kept is not lost for another worksheet either.
    desk.shelf().press("New boat");
    desk.browser.wait_text("#undo-place", "Plover").unwrap();
    let room = "for (const key of Object.keys(localStorage)) if (key.startsWith('other')) localStorage.removeItem(key)";
    desk.browser.script(room, &[]).unwrap();
    desk.push("Undo");
    desk.browser.wait_text("#title", "much longer").unwrap();
    assert_eq!(desk.questions().value(day), "77");
}

#[test]
fn what_cannot_be_read_is_left_as_it_is() {
    let desk = Desk::open(Screen::Phone);
    let spoilt = "{\"type\":\"ampwright-worksheet\",\"vers";
    let spoil = "localStorage.setItem('ampwright.sheet.1', arguments[0]);
        localStorage.setItem('ampwright.last', '1');";
    desk.browser.script(spoil, &[json!(spoilt)]).unwrap();
    desk.browser.refresh().unwrap();
    desk.browser
        .wait_text("#arrival", "cannot be read")
        .unwrap();
    desk.questions().fill("Rated current", "85");
    desk.browser.wait_for("#open-2").unwrap();
    assert_eq!(kept(&desk, "ampwright.sheet.1"), spoilt);
    let catch = "URL.createObjectURL = (blob) => { blob.text().then((text) => window.saved = text); return '#'; };
        HTMLAnchorElement.prototype.click = () => {};";
    desk.browser.script(catch, &[]).unwrap();
    desk.press("#file-1");
    let saved = desk.browser.wait_script("return window.saved").unwrap();
    assert_eq!(saved, json!(spoilt));
    desk.assert_quiet();
}

#[test]
fn a_breakdown_hands_over_the_worksheet() {
    let desk = Desk::open(Screen::Phone);
    // What the wasm asks of the browser traps once it is told to.
    let trap = "const start = WebAssembly.instantiateStreaming;
        WebAssembly.instantiateStreaming = (source, imports) => {
          for (const group of Object.values(imports)) for (const [name, act] of Object.entries(group))
            if (typeof act === 'function') group[name] = (...args) => {
              if (window.broken) { window.broken = false; throw new WebAssembly.RuntimeError('unreachable'); }
              return act(...args);
            };
          return start(source, imports);
        };";
    let trap = json!({ "source": trap });
    desk.browser
        .devtools("Page.addScriptToEvaluateOnNewDocument", trap)
        .unwrap();
    desk.name("Plover");
    desk.wait_kept("Plover");
    desk.browser.refresh().unwrap();
    desk.browser.wait_text("#title", "Plover").unwrap();
    let link = desk.link();
    desk.browser.script("window.broken = true", &[]).unwrap();
    desk.browser
        .script("document.getElementById('look').click()", &[])
        .unwrap();
    desk.browser
        .wait_text("#wrong", "Something went wrong here")
        .unwrap();
    desk.browser.shot("store-breakdown").unwrap();
    let text = desk.browser.find("#wrong-text").unwrap();
    let text = text.property("value").unwrap();
    assert!(text.as_str().unwrap().starts_with(&link));
    desk.press("#wrong-copy");
    desk.browser
        .wait_script("return document.querySelector('#wrong [role=status]').textContent")
        .unwrap();
    desk.press("#wrong-reload");
    desk.browser.wait_text("#title", "Plover").unwrap();
}
