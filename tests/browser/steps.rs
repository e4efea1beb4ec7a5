//! Figures that are stepped without typing: by buttons and by arrow keys.

use crate::desk::Desk;
use ampwright_core::boat::Key;
use ampwright_core::schema::Value;
use ampwright_tests::driver::Screen;

const CAPACITY: &str = "#ask-bank_capacity_ah";
const LESS: &str = ".nudges button:first-child";
const MORE: &str = ".nudges button:last-child";

fn value(desk: &Desk, css: &str) -> String {
    let value = desk.browser.find(css).unwrap().property("value").unwrap();
    value.as_str().unwrap().to_string()
}

#[test]
fn a_thumb_steps_the_figure_it_touched() {
    let desk = Desk::open(Screen::Touch {
        width: 320,
        height: 640,
    });
    let browser = &desk.browser;
    assert!(browser.find(MORE).is_err());
    desk.press(CAPACITY);
    desk.press(MORE);
    assert_eq!(value(&desk, CAPACITY), "405");
    desk.press(LESS);
    desk.press(LESS);
    assert_eq!(value(&desk, CAPACITY), "395");
    let key = Key::named("bank_capacity_ah").unwrap();
    assert_eq!(desk.linked().inputs.get(key), Value::Number(395.0));
    // Both entries of the figure say so.
    desk.press("#section-bank > summary");
    desk.browser.wait_for("#sheet-bank_capacity_ah").unwrap();
    assert_eq!(value(&desk, "#sheet-bank_capacity_ah"), "395");
    let name = "return document.querySelector('.nudges button:last-child').ariaLabel";
    assert_eq!(browser.script(name, &[]).unwrap(), "Capacity: more");
    // Held down it goes on, and lets go.
    let held = "const more = document.querySelector('.nudges button:last-child');
        more.dispatchEvent(new PointerEvent('pointerdown', { bubbles: true }))";
    browser.script(held, &[]).unwrap();
    let goes_on = "return document.querySelector('#ask-bank_capacity_ah').value > 405";
    browser.wait_script(goes_on).unwrap();
    // It would take several steps in so long.
    let let_go = "const more = document.querySelector('.nudges button:last-child');
        more.dispatchEvent(new PointerEvent('pointerup', { bubbles: true }));
        more.click();
        const reached = document.querySelector('#ask-bank_capacity_ah').value;
        return new Promise((done) => setTimeout(() =>
            done(reached === document.querySelector('#ask-bank_capacity_ah').value), 400))";
    assert_eq!(browser.script(let_go, &[]).unwrap(), true);
    // One pair on the page, at the entry last touched, of a thumb's size.
    desk.press("#ask-alt_pulley_ratio");
    desk.press(MORE);
    assert_eq!(value(&desk, "#ask-alt_pulley_ratio"), "2.22");
    let pair =
        "const box = document.querySelector('.nudges').lastElementChild.getBoundingClientRect();
        return [document.querySelectorAll('.nudges').length, Math.round(box.height),
            document.documentElement.scrollWidth]";
    let pair = browser.script(pair, &[]).unwrap();
    assert_eq!(pair, serde_json::json!([1, 44, 320]));
    browser.shot("steps").unwrap();
    desk.assert_quiet();
}

#[test]
fn arrow_keys_step_in_the_unit_shown_and_mend_what_was_mistyped() {
    let desk = Desk::open(Screen::Desk);
    let press = |css: &str, key: &str| {
        let code = format!(
            "const entry = document.querySelector('{css}'); entry.focus();
            return !entry.dispatchEvent(new KeyboardEvent('keydown',
                {{ key: '{key}', bubbles: true, cancelable: true }}))"
        );
        desk.browser.script(&code, &[]).unwrap() == true
    };
    desk.fill(CAPACITY, "x");
    assert!(press(CAPACITY, "ArrowUp"));
    assert_eq!(value(&desk, CAPACITY), "405");
    assert_eq!(desk.text("#ask-bank_capacity_ah-complaint"), "");
    assert!(!press(CAPACITY, "5"));
    // No buttons where there is no thumb.
    assert!(desk.browser.find(MORE).is_err());
    let other = "localStorage.setItem('ampwright.units', 'unit-temperature'); location.reload()";
    desk.browser.script(other, &[]).unwrap();
    let fahrenheit =
        "return document.querySelector('[data-ready] #ask-space_outside_c')?.value === '82.4'";
    desk.browser.wait_script(fahrenheit).unwrap();
    assert!(press("#ask-space_outside_c", "ArrowDown"));
    assert_eq!(value(&desk, "#ask-space_outside_c"), "82");
    desk.assert_quiet();
}
