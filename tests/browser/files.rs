//! Worksheets and tables that go out as files, and files that come in.

use crate::desk::Desk;
use ampwright_core::exchange::read_file;
use ampwright_tests::driver::{Scope, Screen};
use serde_json::{Value, json};

/// Catches what the page saves as a file: its name and its text.
const CATCH: &str = "window.saved = [];
    URL.createObjectURL = (blob) => { blob.text().then((text) => saved.push(text)); return '#'; };
    HTMLAnchorElement.prototype.click = function () { saved.name = this.download; };";

fn saved(desk: &Desk, button: &str) -> (String, String) {
    desk.browser.script(CATCH, &[]).unwrap();
    desk.share().press(button);
    let text = desk.browser.wait_script("return saved[0]").unwrap();
    let name = desk.browser.script("return saved.name", &[]).unwrap();
    let plain = |value: Value| value.as_str().unwrap().to_string();
    (plain(name), plain(text))
}

/// Gives the page a file as the file entry does.
fn import(desk: &Desk, text: &str) {
    let give = "const files = new DataTransfer();
        files.items.add(new File([arguments[0]], 'boats.json'));
        const entry = document.getElementById('import');
        entry.files = files.files;
        entry.dispatchEvent(new Event('change', { bubbles: true }));";
    desk.browser.script(give, &[json!(text)]).unwrap();
}

#[test]
fn worksheets_go_out_as_a_file_and_come_back_beside_the_others() {
    let desk = Desk::open(Screen::Desk);
    desk.name("Plover");
    desk.questions().fill("Rated current", "85");
    desk.wait_kept(r#""alt_rated_a":85"#);
    desk.shelf().press("New boat");
    desk.name("Curlew");
    desk.shelf().button("Curlew").unwrap();
    desk.share().opened("Files and paper");
    let (name, text) = saved(&desk, "All boats as a file");
    assert_eq!(name, "ampwright-worksheets.json");
    let file: Value = serde_json::from_str(&text).unwrap();
    assert_eq!(file["worksheets"].as_array().unwrap().len(), 2);
    // The same by the reader every file goes through.
    assert_eq!(read_file(&text).unwrap().len(), 2);

    let other = Desk::open(Screen::Phone);
    other.name("Already here");
    other.wait_kept("Already here");
    import(&other, &text);
    other.browser.wait_text("#arrival", "2 of 2").unwrap();
    other.shelf().button("Already here").unwrap();
    other.shelf().button("Plover").unwrap();
    let kept = "return Object.keys(localStorage).filter(k => k.startsWith('ampwright.sheet.'))
        .map(k => localStorage.getItem(k)).find(t => t.includes('Plover'))";
    let back = other.browser.wait_script(kept).unwrap();
    assert_eq!(back, desk.browser.script(kept, &[]).unwrap());
    import(&other, "{ not a file");
    other
        .browser
        .wait_text("#arrival", "nothing was added")
        .unwrap();
    other.assert_quiet();
}

#[test]
fn results_go_out_as_tables() {
    let desk = Desk::open(Screen::Desk);
    desk.press("#demo");
    desk.browser.wait_text("#title", "Turnstone").unwrap();
    desk.share().opened("Files and paper");
    for (table, part) in [
        ("The charging run", "Minute (min)"),
        ("Output against engine speed", "Engine (rpm)"),
        ("The year by months", "Month"),
        ("A settled day by hours", "Hour begins (h)"),
        ("The arrangements", "Arrangement"),
    ] {
        let (name, text) = saved(&desk, &format!("Save as a table: {table}"));
        assert!(name.ends_with(".csv"), "{name}");
        assert!(text.contains(part) && text.lines().count() > 4, "{text}");
    }
    desk.assert_quiet();
}
