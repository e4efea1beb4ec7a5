//! Folds that remember whether they are open, and the glossary one tap away.

use crate::desk::{Desk, OPENED};
use ampwright_core::text::glossary::GLOSSARY;
use ampwright_tests::driver::Screen;
use serde_json::json;

#[test]
fn folds_lie_open_where_they_were_left_open() {
    let desk = Desk::open(Screen::Phone);
    let open = || {
        let open = "return [...document.querySelectorAll('details[open]')].map((fold) => fold.id)";
        desk.browser.script(open, &[]).unwrap()
    };
    assert_eq!(open(), json!([]));
    desk.press("#section-bank > summary");
    desk.browser.wait_for("#bank-finer > summary").unwrap();
    desk.press("#bank-finer > summary");
    desk.press("#fit-cable > summary");
    desk.browser.wait_for("#fit-run-alternator").unwrap();
    let kept = "return localStorage.getItem('ampwright.folds')?.split(' ').length === 3";
    desk.browser.wait_script(kept).unwrap();
    // Where a fold below others lies in sight, once it lies still.
    let lies =
        "const top = () => document.getElementById('section-bank').getBoundingClientRect().top;
        return new Promise((done) => {
            let still = 0, last;
            const look = () => {
                still = top() === last ? still + 1 : 0;
                last = top();
                if (still < 60) requestAnimationFrame(look);
                else done(last);
            };
            look();
        })";
    let scroll = "document.getElementById('section-bank').scrollIntoView({ block: 'center' })";
    desk.browser.script(scroll, &[]).unwrap();
    let lies = || desk.browser.script(lies, &[]).unwrap().as_f64().unwrap();
    let before = lies();
    desk.browser.refresh().unwrap();
    desk.browser.wait_for(OPENED).unwrap();
    assert_eq!(open(), json!(["fit-cable", "section-bank", "bank-finer"]));
    // What such a fold holds is drawn again, and the page lies where it lay.
    desk.browser.wait_for("#fit-run-alternator").unwrap();
    let after = lies();
    assert!((after - before).abs() < 60.0, "{before} {after}");
    for fold in ["section-bank", "fit-cable"] {
        desk.press(&format!("#{fold} > summary"));
    }
    let kept = "return localStorage.getItem('ampwright.folds') === 'bank-finer'";
    desk.browser.wait_script(kept).unwrap();
    desk.assert_quiet();
}

#[test]
fn the_words_are_one_tap_away_and_so_is_the_way_back() {
    let desk = Desk::open(Screen::Touch {
        width: 320,
        height: 640,
    });
    let browser = &desk.browser;
    browser.find("[data-to=words]").unwrap().click().unwrap();
    let in_sight = "const box = document.querySelector('#words dt').getBoundingClientRect();
        return box.top > 0 && box.bottom < innerHeight";
    browser.wait_script(in_sight).unwrap();
    let focus = "return document.activeElement.parentElement.id";
    assert_eq!(browser.script(focus, &[]).unwrap(), "words");
    let all = desk.text("#words");
    for entry in GLOSSARY {
        assert!(all.contains(entry.means), "{}", entry.word);
    }
    browser.shot("folds-words").unwrap();
    browser.find("[data-back=words]").unwrap().click().unwrap();
    let back = "return scrollY === 0 && document.activeElement.dataset.to === 'words'
        && !document.getElementById('words').open";
    browser.wait_script(back).unwrap();
    let fits = "return document.documentElement.scrollWidth <= innerWidth";
    browser.wait_script(fits).unwrap();
    desk.assert_quiet();
}

#[test]
fn on_paper_sections_lie_open_and_close_again() {
    let desk = Desk::open(Screen::Desk);
    let say = |event: &str| {
        let code = "dispatchEvent(new Event(arguments[0]))";
        desk.browser.script(code, &[event.into()]).unwrap();
    };
    let open = "return [...document.querySelectorAll('details[open]')].map((fold) => fold.id)";
    let look = |code: &str| desk.browser.script(code, &[]).unwrap();
    assert_eq!(look(open), json!([]));
    say("beforeprint");
    // All that is filled in stands there in words, in place of the entries.
    let printed = [
        "arrangements",
        "fit-cable",
        "fit-belt",
        "fit-settings",
        "fit-first",
    ];
    assert_eq!(look(open), json!(printed));
    let entered = "return document.querySelector('#entered h2')?.textContent ?? ''";
    assert_eq!(look(entered), json!("As entered"));
    say("afterprint");
    assert_eq!(look(open), json!([]));
    let kept = "return localStorage.getItem('ampwright.folds')";
    assert_eq!(look(kept), json!(null));
    assert_eq!(look(entered), json!(""));
    desk.assert_quiet();
}
