//! Worksheets that travel: as links and as a text for a forum.

use crate::desk::Desk;
use ampwright_tests::driver::{Scope, Screen};

#[test]
fn a_link_shows_what_differs_and_leads_back() {
    let desk = Desk::open(Screen::Phone);
    desk.name("Mine");
    let questions = desk.questions();
    questions.fill("Rated current", "77");
    desk.wait_kept(r#""alt_rated_a":77"#);
    let foreign = format!("{}#v=2&name=Theirs&alt_rated=150&end", desk.site.url());
    desk.browser.go(&foreign).unwrap();
    desk.browser.wait_text("#arrival", "as a copy").unwrap();
    desk.browser
        .wait_text("#arrival", "Understood: 1 input")
        .unwrap();
    let shown = desk.fold("Show what differs from the one before").unwrap();
    shown.press().unwrap();
    desk.browser.wait_text("#changed-table", "77 A").unwrap();
    desk.browser.wait_text("#changed-table", "150 A").unwrap();
    desk.browser.shot("travel-differences").unwrap();
    desk.push("Back to mine");
    desk.browser.wait_text("#title", "Mine").unwrap();
    desk.browser.wait_gone("#arrival").unwrap();
    assert_eq!(questions.value("Rated current"), "77");
    // The copy is there still.
    desk.shelf().button("Theirs").unwrap();
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
    let drawn = "return [...document.querySelectorAll('main b, main script')]
        .filter((made) => /Pump|alert/.test(made.textContent)).length";
    assert_eq!(desk.browser.script(drawn, &[]).unwrap(), 0);
    desk.browser
        .go(&format!(
            "{}#v=2&name=%3Cscript%3Ealert(1)%3C/script%3E&load=Pump~6&end",
            desk.site.url()
        ))
        .unwrap();
    desk.browser.wait_text("#title", "<script>").unwrap();
    desk.shelf().wait_text("<script>");
    assert_eq!(desk.browser.script(drawn, &[]).unwrap(), 0);
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
    desk.questions().fill("Capacity", "610");
    desk.name("Möwe");
    let scan = desk.share().opened("QR code");
    desk.browser.wait_for("#code svg").unwrap();
    desk.browser.shot("travel-code").unwrap();
    assert_eq!(scanned(&desk), desk.link());
    // It follows what is typed.
    desk.name("Plover");
    let link = desk.link();
    assert!(link.contains("Plover"), "{link}");
    assert_eq!(scanned(&desk), link);
    // Too long: no code, and why.
    let loads = "&load=Somewhat+of+a+load~15".repeat(40);
    let long = format!("{}#v=2{loads}&end", desk.site.url());
    desk.browser.go(&long).unwrap();
    scan.wait_text("too long");
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
    desk.questions().fill("Rated current", "90");
    let changes = desk.share().opened("What I changed");
    changes.wait_text("150 A");
    changes.wait_text("90 A");
    desk.browser.shot("travel-changes").unwrap();
    let forum = desk.share().opened("A text for a forum");
    forum.wait_value("The text", "What was changed");
    changes.fill("Compare with a link", "v=2&alt_rated=60&end");
    changes.wait_text("60 A");
    desk.assert_quiet();
}

#[test]
fn two_kept_worksheets_are_compared() {
    let desk = Desk::open(Screen::Desk);
    desk.name("Before the refit");
    desk.questions().fill("Rated current", "60");
    desk.wait_kept(r#""alt_rated_a":60"#);
    desk.shelf().press("Copy this one");
    desk.name("After the refit");
    desk.questions().fill("Rated current", "200");
    let changes = desk.share().opened("What I changed");
    changes.choose("Compare with one kept here", "Before the refit");
    for part in ["Alternator, cold", "60 A", "200 A", "Before the refit"] {
        changes.wait_text(part);
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
    desk.name("Mine");
    desk.wait_kept("Mine");
    let newer = format!("{}#v=9&alt_rated=150&end", desk.site.url());
    desk.browser.go(&newer).unwrap();
    desk.browser.wait_text("#arrival", "version 9").unwrap();
    desk.browser.wait_text("#title", "Mine").unwrap();
    desk.push("Got it");
    desk.browser.wait_gone("#arrival").unwrap();
}

#[test]
fn a_text_for_a_forum_is_marked_up_as_wanted() {
    let desk = Desk::open(Screen::Desk);
    desk.name("Plover");
    let forum = desk.share().opened("A text for a forum");
    forum.wait_value("The text", "Plover");
    assert!(forum.value("The text").starts_with("Plover"));
    forum.pick("BBCode");
    forum.wait_value("The text", "[b]Plover[/b]");
    assert!(forum.value("The text").starts_with("[b]Plover[/b]"));
    // The ranges join once they are reckoned.
    forum.wait_value("The text", "in 80 % of cases");
    let whole = forum.value("The text");
    assert!(whole.contains(&format!("[url]{}[/url]", desk.link())));
    desk.browser.shot("travel-forum").unwrap();
    desk.assert_quiet();
}

/// A helper changed figures of a boat that was shared, and its name as well.
#[test]
fn a_link_is_taken_as_a_proposal_for_a_boat_of_ones_own() {
    let desk = Desk::open(Screen::Phone);
    desk.name("Mine");
    desk.questions().fill("Rated current", "77");
    desk.wait_kept(r#""alt_rated_a":77"#);
    let link = "#v=2&name=Better&alt_rated_a=150~n&bank_capacity_ah=300~m&end";
    let address = format!("{}{link}", desk.site.url());
    desk.browser.go(&address).unwrap();
    desk.browser.wait_text("#arrival", "as a copy").unwrap();
    let known = |desk: &Desk, name: &str| {
        let key = ampwright_core::boat::Key::named(name).unwrap();
        desk.linked().knowledge(key).word()
    };
    // Of another boat its figures are as well known as they were sent.
    assert_eq!(known(&desk, "alt_rated_a"), "nameplate");
    desk.choose("#proposal-for", &desk_number(&desk, "Mine"));
    desk.browser.wait_text("#arrival", "proposed").unwrap();
    assert_eq!(known(&desk, "alt_rated_a"), "proposed");
    assert_eq!(known(&desk, "bank_capacity_ah"), "proposed");
    desk.fold("Show what differs from the one before")
        .unwrap()
        .press()
        .unwrap();
    desk.browser.wait_text("#changed-table", "77 A").unwrap();
    desk.browser.shot("travel-proposal").unwrap();
    // It is another boat after all.
    desk.choose("#proposal-for", "");
    desk.browser
        .wait_script(
            "return !document.querySelector('#arrival').textContent.includes('“proposed”')",
        )
        .unwrap();
    assert_eq!(known(&desk, "bank_capacity_ah"), "measured");
    desk.push("Back to mine");
    desk.browser.wait_text("#title", "Mine").unwrap();
    desk.assert_quiet();
}

/// Under which number a boat is kept.
fn desk_number(desk: &Desk, name: &str) -> String {
    let number = format!(
        "return Object.keys(localStorage).filter((key) => key.startsWith('ampwright.sheet.'))
            .find((key) => localStorage.getItem(key).includes({name:?})).split('.').pop()"
    );
    let number = desk.browser.script(&number, &[]).unwrap();
    number.as_str().unwrap().to_string()
}
