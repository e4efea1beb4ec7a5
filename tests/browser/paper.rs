//! The whole page on paper: few pages, and nothing to press or to fill in.

use crate::desk::{Desk, OPENED};
use ampwright_core::boat::{Worksheet, demo};
use ampwright_core::exchange::{open_link, to_link};
use ampwright_tests::driver::Screen;
use serde_json::json;

/// As many pages as the whole may take.
const MOST_PAGES: usize = 6;

/// A boat with about all there is: two alternators on the house bank, legs of
/// the day, packs in parallel, and loads.
const FULL: &str = "v=2&name=All+there+is&before_battery=agm&before_connection=splitter\
    &bank_nominal_v=12&bank_capacity_ah=800&packs_count=4&daily_use_ah=220&sun_panel_w=600\
    &sun_basis=place&sun_latitude_deg=-18&sun_month=7&alt_rated_a=150&reg_kind=external\
    &reg_current_cap_a=120&way_kind=direct&two_role=house&alt2_rated_a=110&belt_kind=ribs8\
    &belt2_kind=v13&eng_rpm=1600&alt_pulley_ratio=2.6&guard_warning=yes&guard_clamp=clamp\
    &guard_clamp_v=35&guard_switch=no&space_basis=measured&space_hot_c=55\
    &leg=Out+of+harbour~2200~20~anyway&leg=Motoring~1900~120~anyway&leg=At+anchor~~~~0.5~25&end";

fn open(desk: &Desk, sheet: &Worksheet) {
    let address = format!("{}#{}", desk.site.url(), to_link(sheet));
    desk.browser.go(&address).unwrap();
    desk.browser.wait_for(OPENED).unwrap();
    desk.browser.wait_text("#title", &sheet.name).unwrap();
    desk.browser.wait_for("#arrival").unwrap();
    let rests = "return document.querySelector('#sure-progress').textContent === ''";
    desk.browser.wait_script(rests).unwrap();
}

#[test]
fn it_takes_six_pages_at_most() {
    let desk = Desk::open(Screen::Phone);
    for sheet in [demo(), open_link(FULL).unwrap().sheet] {
        open(&desk, &sheet);
        let pages = desk.browser.print().unwrap().pages();
        println!("{}: {pages} pages", sheet.name);
        assert!((2..=MOST_PAGES).contains(&pages), "{}: {pages}", sheet.name);
    }
}

/// What a printer gets, looked at on the screen.
#[test]
fn nothing_on_it_can_be_pressed_or_is_left_to_be_filled_in() {
    let desk = Desk::open(Screen::Desk);
    open(&desk, &demo());
    let paper = json!({ "media": "print" });
    desk.browser
        .devtools("Emulation.setEmulatedMedia", paper)
        .unwrap();
    let say = "dispatchEvent(new Event('beforeprint'))";
    desk.browser.script(say, &[]).unwrap();
    // The boxes to tick of the first run are what that list is for, and a figure
    // that explains itself on screen is a figure on paper.
    let pressed = "return [...document.querySelectorAll(
            'button:not(.how), select, textarea, input:not([type=checkbox]), summary + .body:empty')]
        .filter((one) => one.getClientRects().length > 0)
        .map((one) => one.outerHTML.slice(0, 120))";
    assert_eq!(desk.browser.script(pressed, &[]).unwrap(), json!([]));
    let shown = "return ['answer', 'entered', 'findings', 'arrange-table', 'fit-cable',
            'fit-belt-told', 'fit-settings-told', 'fit-first-told', 'words', 'trial', 'goal', 'year']
        .filter((id) => (document.getElementById(id)?.getClientRects().length ?? 0) > 0)";
    let expected = [
        "answer",
        "entered",
        "findings",
        "arrange-table",
        "fit-cable",
        "fit-belt-told",
        "fit-settings-told",
        "fit-first-told",
    ];
    assert_eq!(desk.browser.script(shown, &[]).unwrap(), json!(expected));
    // The arrangements were worked out for the paper.
    desk.browser
        .wait_text("#arrange-table", "as entered here")
        .unwrap();
    let entered = desk.text("#entered");
    for said in ["420 A·h", "37° N", "nameplate", "Refrigerator"] {
        assert!(entered.contains(said), "{said}: {entered}");
    }
    desk.assert_quiet();
}
