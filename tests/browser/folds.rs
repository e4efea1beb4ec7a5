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
fn on_paper_every_section_lies_open_and_closes_again() {
    let desk = Desk::open(Screen::Desk);
    let say = |event: &str| {
        let code = "dispatchEvent(new Event(arguments[0]))";
        desk.browser.script(code, &[event.into()]).unwrap();
    };
    let closed = "return [...document.querySelectorAll('details.section:not([open])')]
        .map((fold) => fold.id)";
    let inputs = "return document.querySelectorAll('.sheet .section input').length";
    let look = |code: &str| desk.browser.script(code, &[]).unwrap();
    assert_eq!(look(inputs), json!(0));
    say("beforeprint");
    // The words are the same for every boat.
    assert_eq!(look(closed), json!(["words"]));
    assert!(look(inputs).as_u64() > Some(50), "{}", look(inputs));
    // What is advanced is printed with what they belong to.
    let finer = "return document.querySelector('#bank-finer').open";
    assert_eq!(look(finer), json!(true));
    say("afterprint");
    assert_eq!(look(inputs), json!(0));
    let open = "return document.querySelectorAll('details[open]').length";
    assert_eq!(look(open), json!(0));
    let kept = "return localStorage.getItem('ampwright.folds')";
    assert_eq!(look(kept), json!(null));
    desk.assert_quiet();
}
