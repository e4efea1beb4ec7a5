//! Worksheets that travel: as links, as a text for a forum, as files.

use crate::desk::Desk;
use ampwright_core::exchange::read_file;
use ampwright_tests::driver::Screen;
use serde_json::{Value, json};

/// Catches what the page saves as a file: its name and its text.
const CATCH: &str = "window.saved = [];
    URL.createObjectURL = (blob) => { blob.text().then((text) => saved.push(text)); return '#'; };
    HTMLAnchorElement.prototype.click = function () { saved.name = this.download; };";

fn saved(desk: &Desk, button: &str) -> (String, String) {
    desk.browser.script(CATCH, &[]).unwrap();
    desk.press(button);
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
fn a_link_shows_what_differs_and_leads_back() {
    let desk = Desk::open(Screen::Phone);
    desk.fill("#sheet-name", "Mine");
    desk.fill("#ask-alt_rated_a", "77");
    desk.wait_kept();
    let foreign = format!("{}#v=2&name=Theirs&alt_rated=150&end", desk.site.url());
    desk.browser.go(&foreign).unwrap();
    desk.browser.wait_text("#arrival", "as a copy").unwrap();
    desk.browser
        .wait_text("#arrival", "Understood: 1 input")
        .unwrap();
    desk.press("#changed summary");
    desk.browser.wait_text("#changed-table", "77 A").unwrap();
    desk.browser.wait_text("#changed-table", "150 A").unwrap();
    desk.browser.shot("travel-differences").unwrap();
    desk.press("#back-to-mine");
    desk.browser.wait_text("#title", "Mine").unwrap();
    desk.browser.wait_gone("#arrival").unwrap();
    let rated = desk.browser.find("#ask-alt_rated_a").unwrap();
    assert_eq!(rated.property("value").unwrap(), "77");
    // The copy is there still.
    desk.browser.wait_text("#sheets", "Theirs").unwrap();
    desk.assert_quiet();
}

/// Everything that can be wrong with a link is said, and what stands instead.
#[test]
fn a_spoilt_link_says_what_was_understood() {
    let desk = Desk::open(Screen::Phone);
    let spoilt = "#v=2&name=Theirs&alt_rated=99999&bank_capacity=500&sails=3&load=%3Cb%3EPump~6";
    let spoilt = desk.site.url() + spoilt;
    desk.browser.go(&spoilt).unwrap();
    for said in [
        "Understood: 1 input, 1 load",
        "Not understood, or not as it stands: 2",
        "sails",
        "It stays at",
        "The link is incomplete",
    ] {
        desk.browser.wait_text("#arrival", said).unwrap();
    }
    desk.browser.shot("travel-spoilt").unwrap();
    // What somebody called a load is no markup here.
    let loads = desk.linked().loads;
    assert_eq!(loads[0].name, "<b>Pump");
    let drawn = "return document.querySelectorAll('main b, main script').length";
    let before = desk.browser.script(drawn, &[]).unwrap();
    desk.browser
        .go(&format!(
            "{}#v=2&name=%3Cscript%3Ealert(1)%3C/script%3E&load=Pump~6&end",
            desk.site.url()
        ))
        .unwrap();
    desk.browser.wait_text("#title", "<script>").unwrap();
    desk.browser.wait_text("#sheets", "<script>").unwrap();
    assert_eq!(desk.browser.script(drawn, &[]).unwrap(), before);
    desk.browser
        .go(&format!("{}#once+upon+a+time", desk.site.url()))
        .unwrap();
    desk.browser
        .wait_text("#arrival", "does not begin with")
        .unwrap();
    desk.browser.wait_text("#title", "<script>").unwrap();
    desk.assert_quiet();
}

/// What the page draws is read by a decoder of somebody else's. The drawing's own
/// tests do the same for every length.
#[test]
fn the_code_to_scan_leads_to_the_link() {
    let desk = Desk::open(Screen::Phone);
    desk.fill("#ask-bank_capacity_ah", "610");
    desk.fill("#sheet-name", "Möwe");
    desk.press("#scan summary");
    desk.browser.wait_for("#code svg").unwrap();
    desk.browser.shot("travel-code").unwrap();
    assert_eq!(scanned(&desk), desk.link());
    // It follows what is typed.
    desk.fill("#sheet-name", "Plover");
    let link = desk.link();
    assert!(link.contains("Plover"), "{link}");
    assert_eq!(scanned(&desk), link);
    // Too long: no code, and why.
    let loads = "&load=Somewhat+of+a+load~15".repeat(40);
    let long = format!("{}#v=2{loads}&end", desk.site.url());
    desk.browser.go(&long).unwrap();
    desk.browser.wait_text("#scan", "too long").unwrap();
    desk.browser.wait_gone("#code svg").unwrap();
    desk.assert_quiet();
}

/// What the code on the page says.
fn scanned(desk: &Desk) -> String {
    let drawn = "return [document.querySelector('#code svg').viewBox.baseVal.width,
        document.querySelector('#code path').getAttribute('d')]";
    let drawn = desk.browser.script(drawn, &[]).unwrap();
    let wide = drawn[0].as_u64().unwrap() as usize;
    let mut dark = vec![false; wide * wide];
    for module in drawn[1].as_str().unwrap().split("h1v1h-1z") {
        if let Some((x, y)) = module.trim_start_matches('M').split_once(' ') {
            let [x, y] = [x, y].map(|place| place.parse::<usize>().unwrap());
            dark[y * wide + x] = true;
        }
    }
    // Four dots to a module.
    let dot = |x: usize, y: usize| if dark[y / 4 * wide + x / 4] { 0 } else { 255 };
    let mut picture = rqrr::PreparedImage::prepare_from_greyscale(4 * wide, 4 * wide, dot);
    picture.detect_grids()[0].decode().unwrap().1
}

#[test]
fn what_was_changed_since_the_link_is_told() {
    let desk = Desk::open(Screen::Phone);
    let link = format!("{}#v=2&alt_rated=150&end", desk.site.url());
    desk.browser.go(&link).unwrap();
    desk.browser.wait_text("#arrival", "as a copy").unwrap();
    desk.fill("#ask-alt_rated_a", "90");
    desk.press("#compare summary");
    desk.browser.wait_text("#compare-table", "150 A").unwrap();
    desk.browser.wait_text("#compare-table", "90 A").unwrap();
    desk.browser.shot("travel-changes").unwrap();
    desk.press("#forum summary");
    let told = "return document.getElementById('forum-text').value.includes('What was changed')";
    desk.browser.wait_script(told).unwrap();
    desk.fill("#compare-link", "v=2&alt_rated=60&end");
    desk.browser.wait_text("#compare-table", "60 A").unwrap();
    desk.assert_quiet();
}

#[test]
fn two_kept_worksheets_are_compared() {
    let desk = Desk::open(Screen::Desk);
    desk.fill("#sheet-name", "Before the refit");
    desk.fill("#ask-alt_rated_a", "60");
    desk.wait_kept();
    desk.press("#copy-sheet");
    desk.fill("#sheet-name", "After the refit");
    desk.fill("#ask-alt_rated_a", "200");
    desk.press("#compare summary");
    let kept = "#compare-kept option:nth-child(2)";
    desk.browser.wait_text(kept, "Before the refit").unwrap();
    desk.choose("#compare-kept", "1");
    for part in ["Alternator, cold", "60 A", "200 A", "Before the refit"] {
        desk.browser.wait_text("#compare-table", part).unwrap();
    }
    // Results first, then what makes them differ.
    let first = "#compare-table tr:first-child small";
    desk.browser.wait_text(first, "Result").unwrap();
    let last = "#compare-table tr:last-child";
    desk.browser.wait_text(last, "Rated current").unwrap();
    desk.assert_quiet();
}

#[test]
fn a_link_of_a_newer_program_changes_nothing() {
    let desk = Desk::open(Screen::Phone);
    desk.fill("#sheet-name", "Mine");
    desk.wait_kept();
    let newer = format!("{}#v=9&alt_rated=150&end", desk.site.url());
    desk.browser.go(&newer).unwrap();
    desk.browser.wait_text("#arrival", "version 9").unwrap();
    desk.browser.wait_text("#title", "Mine").unwrap();
    desk.press("#keep-copy");
    desk.browser.wait_gone("#arrival").unwrap();
}

#[test]
fn a_text_for_a_forum_is_marked_up_as_wanted() {
    let desk = Desk::open(Screen::Desk);
    desk.fill("#sheet-name", "Plover");
    desk.press("#forum summary");
    let text = "return document.getElementById('forum-text').value";
    desk.browser
        .wait_script(&format!("{text}.startsWith('Plover')"))
        .unwrap();
    desk.press("#forum .tick:nth-of-type(3) input");
    desk.browser
        .wait_script(&format!("{text}.startsWith('[b]Plover[/b]')"))
        .unwrap();
    // The ranges join once they are reckoned.
    desk.browser
        .wait_script(&format!("{text}.includes('8 of 10 cases')"))
        .unwrap();
    let whole = desk.browser.script(text, &[]).unwrap();
    let whole = whole.as_str().unwrap();
    assert!(whole.contains(&format!("[url]{}[/url]", desk.link())));
    desk.browser.shot("travel-forum").unwrap();
    desk.assert_quiet();
}

#[test]
fn worksheets_go_out_as_a_file_and_come_back_beside_the_others() {
    let desk = Desk::open(Screen::Desk);
    desk.fill("#sheet-name", "Plover");
    desk.fill("#ask-alt_rated_a", "85");
    desk.wait_kept();
    desk.press("#new-sheet");
    desk.fill("#sheet-name", "Curlew");
    desk.browser.wait_text("#sheets", "Curlew").unwrap();
    desk.press("#files summary");
    let (name, text) = saved(&desk, "#save-all");
    assert_eq!(name, "ampwright-worksheets.json");
    let file: Value = serde_json::from_str(&text).unwrap();
    assert_eq!(file["worksheets"].as_array().unwrap().len(), 2);
    // The same by the reader every file goes through.
    assert_eq!(read_file(&text).unwrap().len(), 2);

    let other = Desk::open(Screen::Phone);
    other.fill("#sheet-name", "Already here");
    other.wait_kept();
    import(&other, &text);
    other.browser.wait_text("#arrival", "2 of 2").unwrap();
    other.browser.wait_text("#sheets", "Already here").unwrap();
    other.browser.wait_text("#sheets", "Plover").unwrap();
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
    desk.press("#files summary");
    for (button, part) in [
        ("#csv-0", "Minute (min)"),
        ("#csv-1", "Engine (rpm)"),
        ("#csv-2", "Month"),
        ("#csv-3", "Hour begins (h)"),
        ("#csv-4", "Arrangement"),
    ] {
        let (name, text) = saved(&desk, button);
        assert!(name.ends_with(".csv"), "{name}");
        assert!(text.contains(part) && text.lines().count() > 4, "{text}");
    }
    desk.assert_quiet();
}
