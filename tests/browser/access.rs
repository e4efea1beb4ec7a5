//! The page for everybody: nothing that axe-core finds fault with, text twice
//! as large, a screen 320 px wide, and targets that a thumb finds.

use crate::desk::{Desk, lay_out, unfold};
use ampwright_tests::driver::{Browser, Screen};
use serde_json::{Value, json};
use std::fs;
use xtask::places;

/// A boat with two machines, loads and an arrangement of its own: few inputs
/// stay hidden.
const BOAT: &str = "#v=2&name=Turnstone&daily_basis=listed&two_role=house&guard_clamp=avalanche&load=Lights~15&load=Refrigerator~45~~~24~45&way=Larger~alt_rated~180&cost_currency=eur&end";

fn open(screen: Screen) -> Desk {
    let desk = Desk::open(screen);
    let url = format!("{}{BOAT}", desk.site.url());
    desk.browser.go(&url).unwrap();
    desk.browser.wait_text(".notice", "from a link").unwrap();
    unfold(&desk.browser);
    lay_out(&desk.browser);
    desk
}

/// What a script finds, as lines; nothing when all is well.
fn found(browser: &Browser, script: &str) -> Vec<String> {
    let found = browser.script(script, &[]).unwrap();
    let lines = found.as_array().unwrap().iter();
    lines.map(|line| line.as_str().unwrap().into()).collect()
}

#[test]
fn axe_core_finds_nothing() {
    let axe = fs::read_to_string(places::axe())
        .expect("`cargo xtask test browser` gets axe-core, see tests/axe");
    let look_at = "return axe.run(document, { resultTypes: ['violations'] }).then((seen) =>
        seen.violations.flatMap((rule) => rule.nodes.map((node) =>
            `${rule.id}: ${node.target} ${node.failureSummary}`)).concat(
            seen.passes.length > 20 ? [] : ['axe-core looked at nothing']))";
    for screen in [Screen::Phone, Screen::Desk] {
        let desk = open(screen);
        desk.browser.script(&axe, &[]).unwrap();
        for look in ["day", "night"] {
            desk.browser.wait_data("look", look).unwrap();
            let faults = found(&desk.browser, look_at);
            assert!(
                faults.is_empty(),
                "{screen:?}, {look}:\n{}",
                faults.join("\n")
            );
            desk.press("#look");
        }
        desk.assert_quiet();
    }
}

/// What is wider than the screen, or cut off though it is text to be read.
const LOST: &str = "
const wide = document.documentElement.clientWidth;
const lost = [];
if (document.documentElement.scrollWidth > wide) lost.push(`the page is ${document.documentElement.scrollWidth} wide`);
const name = (element) => `${element.tagName} ${element.id || element.className}: ${element.textContent.trim().slice(0, 40)}`;
for (const element of document.querySelectorAll('body *')) {
    if (!element.checkVisibility() || element.closest('svg')) continue;
    const box = element.getBoundingClientRect();
    const style = getComputedStyle(element);
    const scrolls = (e) => e && (['auto', 'scroll'].includes(getComputedStyle(e).overflowX) || scrolls(e.parentElement));
    if (box.width > 1 && box.right > wide + 1 && !scrolls(element.parentElement)) lost.push(`beyond the edge, ${name(element)}`);
    const shut = style.overflow === 'hidden' || style.overflow === 'clip';
    if (shut && box.width > 2 && box.height > 2 && (element.scrollWidth > element.clientWidth + 1 || element.scrollHeight > element.clientHeight + 1)) lost.push(`cut off, ${name(element)}`);
}
return lost.slice(0, 20);";

#[test]
fn nothing_is_lost_on_a_screen_320_wide() {
    let desk = open(Screen::Touch {
        width: 320,
        height: 640,
    });
    assert_eq!(found(&desk.browser, LOST), [""; 0]);
    desk.browser.shot("access-320").unwrap();
}

#[test]
fn nothing_is_lost_with_text_twice_as_large() {
    let tablet = Screen::Touch {
        width: 768,
        height: 1024,
    };
    let screens = [
        ("desk", Screen::Desk),
        ("tablet", tablet),
        ("phone", Screen::Phone),
    ];
    for (name, screen) in screens {
        let desk = open(screen);
        let usual = text_px(&desk.browser);
        let twice = "document.documentElement.style.setProperty('font-size', '200%')";
        desk.browser.script(twice, &[]).unwrap();
        assert_eq!(text_px(&desk.browser), 2.0 * usual);
        // What follows the width of its place is drawn anew in the next frames.
        unfold(&desk.browser);
        assert_eq!(found(&desk.browser, LOST), [""; 0], "{name}");
        desk.browser.shot(&format!("access-twice-{name}")).unwrap();
    }
}

fn text_px(browser: &Browser) -> f64 {
    let size = "return parseFloat(getComputedStyle(document.querySelector('#paper p')).fontSize)";
    let size: Value = browser.script(size, &[]).unwrap();
    size.as_f64().unwrap()
}

/// What can be touched and is smaller than 44 px, or covered by something else
/// but for a few pixels between neighbours. What is drawn around it for the
/// thumb counts, and its label. A word in a line of text need not be so large;
/// nor the strip's figures, which stand in the tables as well.
const SMALL: &str = "
const small = [];
for (const element of document.querySelectorAll('button, input, select, textarea, summary, a[href]')) {
    if (!element.checkVisibility() || element.disabled || getComputedStyle(element).display === 'inline' || element.closest('.answer')) continue;
    const target = element.closest('label') ?? element;
    target.scrollIntoView({ block: 'center', inline: 'center' });
    const box = target.getBoundingClientRect();
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    const hit = (dx, dy) => target.contains(document.elementFromPoint(x + dx, y + dy));
    const reach = (dx, dy) => { let far = 0; while (far < 44 && hit(dx * (far + 1), dy * (far + 1))) far++; return far; };
    const found = [reach(-1, 0) + reach(1, 0) + 1, reach(0, -1) + reach(0, 1) + 1];
    const around = getComputedStyle(target, '::after');
    const more = (one, other) => around.position === 'absolute' ? -(parseFloat(around[one]) + parseFloat(around[other])) : 0;
    const drawn = [box.width + more('left', 'right'), box.height + more('top', 'bottom')];
    if (Math.min(...drawn) < 43.9 || Math.min(...found) < 37) small.push(`${element.tagName} ${element.id || element.className} in ${element.parentElement.id || element.parentElement.className}: drawn ${drawn.map(Math.round)}, found ${found}`);
}
return [...new Set(small)].slice(0, 60);";

#[test]
fn a_thumb_finds_every_target() {
    let desk = open(Screen::Phone);
    assert_eq!(found(&desk.browser, SMALL), [""; 0]);
    let targets = "return document.querySelectorAll('button, select, summary').length > 200";
    assert_eq!(desk.browser.script(targets, &[]).unwrap(), json!(true));
}
