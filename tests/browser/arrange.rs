//! Arrangements beside each other, one of one's own, and the cheapest way.

use ampwright_core::boat::{WayKind, demo};
use ampwright_core::decision::arrangements::compare;
use ampwright_core::decision::goal_search::Search;
use ampwright_core::text::arrangements::name;
use ampwright_core::units::clock;
use ampwright_tests::driver::Screen;

use crate::desk::Desk;

const FITS: &str = "return document.documentElement.scrollWidth <= innerWidth";

#[test]
fn side_by_side_they_say_what_the_core_says() {
    let desk = Desk::open(Screen::Phone);
    desk.press("#demo");
    // Closed, nothing is reckoned.
    assert!(desk.browser.find("#arrange-cards article").is_err());
    desk.press("#arrangements > summary");
    desk.browser.wait_for("#arrange-cards article").unwrap();
    let expected = compare(&demo()).outcomes;
    let cards = desk.browser.find_all("#arrange-cards article").unwrap();
    assert_eq!(cards.len(), expected.len());
    for (at, outcome) in expected.iter().enumerate() {
        let card = format!("#arrange-cards article:nth-child({})", at + 1);
        assert!(desk.text(&format!("{card} h3")).contains(name(outcome)));
        let first = desk.text(&format!("{card} dl > div:first-child dd"));
        let hours = outcome.hours_day.unwrap();
        assert!(first.starts_with(&clock(60.0 * hours)), "{first}");
    }
    // Best and worst are said in words.
    assert!(!desk.browser.find_all(".cards .best").unwrap().is_empty());
    assert!(!desk.browser.find_all(".cards .worst").unwrap().is_empty());
    desk.browser.wait_script(FITS).unwrap();
    desk.browser.shot("arrangements").unwrap();
    desk.assert_quiet();
}

#[test]
fn one_of_ones_own_is_changed_kept_and_sent() {
    let desk = Desk::open(Screen::Desk);
    desk.press("#demo");
    desk.press("#arrangements > summary");
    desk.browser.wait_for("#way-copy-2").unwrap();
    desk.press("#way-copy-2");
    desk.browser.wait_for("#own-0-name").unwrap();
    desk.fill("#own-0-name", "A <b>large</b> converter");
    desk.choose("#own-0-add", "way_converter_a");
    desk.browser.wait_for("#own-0-way_converter_a").unwrap();
    desk.fill("#own-0-way_converter_a", "1e99");
    let complaint = desk.text("#own-0-way_converter_a-complaint");
    assert!(complaint.contains("1000"), "{complaint}");
    desk.fill("#own-0-way_converter_a", "60");
    // The name stays text, here and in the table.
    let last = "#arrange-table thead th:last-child";
    desk.browser.wait_text(last, "<b>large</b>").unwrap();
    // It travels with the link.
    let sheet = desk.linked();
    assert_eq!(sheet.arrangements.len(), 1);
    assert_eq!(sheet.arrangements[0].name, "A <b>large</b> converter");
    let with = sheet.arrangements[0].on(&sheet);
    assert_eq!(with.inputs.way.converter_a, Some(60.0));
    // And it can be given up.
    desk.press("#own-0-delete");
    desk.browser.wait_gone("#own-0-name").unwrap();
    desk.assert_quiet();
}

#[test]
fn setting_up_a_copy_leaves_the_old_worksheet() {
    let desk = Desk::open(Screen::Phone);
    desk.fill("#ask-bank_capacity_ah", "300");
    desk.wait_kept(r#""bank_capacity_ah":300"#);
    desk.press("#arrangements > summary");
    // The first beside the boat is a warning, which cannot be chosen.
    desk.browser.wait_for("#way-use-2").unwrap();
    assert!(desk.browser.find("#way-use-1").is_err());
    desk.press("#way-use-2");
    desk.browser.wait_for("#arrival").unwrap();
    let linked = desk.linked().inputs;
    assert_eq!(linked.way.kind, WayKind::Direct);
    assert_eq!(linked.bank.capacity_ah, 300.0);
    // Both are on the shelf.
    desk.browser
        .wait_script("return document.querySelectorAll('#sheets li').length === 2")
        .unwrap();
    desk.assert_quiet();
}

#[test]
fn the_cheapest_way_is_the_cores() {
    let desk = Desk::open(Screen::Phone);
    desk.press("#demo");
    desk.press("#goal-fold > summary");
    // Few combinations, so that the search here takes no time.
    let mut sheet = demo();
    for lever in ["machine", "second", "panels", "bank", "loads"] {
        desk.press(&format!("#goal-goal_{lever}"));
        let key = ampwright_core::boat::Key::named(&format!("goal_{lever}")).unwrap();
        sheet.state(key, key.spec().read("no").unwrap()).unwrap();
    }
    desk.fill("#goal-goal_hours", "0.9");
    sheet.inputs.goal.hours = 0.9;
    desk.press("#goal-look");
    desk.browser.wait_for("#goal-found .plans li").unwrap();
    let mut search = Search::new(&sheet);
    while !search.done() {
        search.step(1000);
    }
    let found = search.found();
    let plans = desk.browser.find_all("#goal-found .plans > li").unwrap();
    assert_eq!(plans.len(), found.plans.len());
    let texts: Vec<String> = plans.iter().map(|plan| plan.text().unwrap()).collect();
    for plan in &found.plans {
        let hours = clock(60.0 * plan.hours_day);
        assert!(texts.iter().any(|text| text.contains(&hours)), "{hours}");
    }
    // The one that was asked for comes first.
    let best = &found.plans[found.best.unwrap()];
    assert!(
        texts[0].contains(&clock(60.0 * best.hours_day)),
        "{texts:?}"
    );
    // It goes beside the arrangements.
    desk.press("#goal-keep-0");
    desk.press("#arrangements > summary");
    desk.browser.wait_text("#arrange-cards", "Plan 1").unwrap();
    desk.browser.wait_script(FITS).unwrap();
    // A changed worksheet makes it old news.
    desk.fill("#ask-eng_rpm", "1600");
    desk.browser
        .wait_text("#goal-earlier", "Search again")
        .unwrap();
    // Another boat has no plans yet.
    desk.shelf().press("New boat");
    desk.browser.wait_gone("#goal-found li").unwrap();
    assert_eq!(desk.text("#goal-earlier"), "");
    desk.assert_quiet();
}

#[test]
fn a_search_can_be_stopped_and_the_page_stays_alive() {
    let desk = Desk::open(Screen::Phone);
    desk.press("#demo");
    desk.press("#goal-fold > summary");
    let slow = serde_json::json!({ "rate": 20 });
    desk.browser
        .devtools("Emulation.setCPUThrottlingRate", slow)
        .unwrap();
    desk.press("#goal-look");
    desk.browser
        .wait_text("#goal-progress", "calculated")
        .unwrap();
    // Typing is heard meanwhile.
    let before = desk.answer();
    desk.fill("#ask-eng_rpm", "1800");
    assert_ne!(desk.answer(), before);
    desk.press("#goal-stop");
    desk.browser
        .wait_script("return document.getElementById('goal-stop').classList.contains('hidden')")
        .unwrap();
    assert!(desk.browser.find("#goal-found li").is_err());
    desk.assert_quiet();
}
