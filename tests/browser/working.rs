//! Every figure explains itself: open its working, follow it, go back.

use crate::desk::Desk;
use ampwright_core::boat::{Key, demo};
use ampwright_core::explain::{MathNode, Working, working};
use ampwright_core::report;
use ampwright_tests::driver::Screen;

/// A figure's working on the demo, with the house's draw as typed.
fn told(id: &str, load_a: Option<f64>) -> Working {
    let mut sheet = demo();
    sheet.inputs.run.house_load_a = load_a;
    let report = report(&sheet);
    working(&sheet, &report, id).unwrap()
}

/// A figure as the tables write it.
fn figure(made: &Working) -> String {
    let decimals = made.decimals;
    format!("{:.decimals$}", made.value.unwrap())
}

fn by_id(id: &str) -> String {
    format!("[id=\"{id}\"]")
}

fn open_demo(screen: Screen) -> Desk {
    let desk = Desk::open(screen);
    desk.press("#demo");
    desk.browser.wait_text(".masthead", "Demo").unwrap();
    desk
}

fn focused(desk: &Desk) -> String {
    let id = desk.browser.focused().unwrap().property("id").unwrap();
    id.as_str().unwrap().to_string()
}

/// Formulas as read: what the elements hold, one after the other.
fn formulas(desk: &Desk) -> Vec<String> {
    let lines = desk.browser.find_all("#working .formula").unwrap();
    let text = |line: &ampwright_tests::driver::Element| {
        let text = line.property("textContent").unwrap();
        text.as_str().unwrap().replace('\u{a0}', " ")
    };
    lines.iter().map(text).collect()
}

/// What the elements of a formula hold, behind the sign of equality.
fn set(formula: &Option<MathNode>) -> String {
    let markup = formula.as_ref().unwrap().to_string();
    let tags = markup.split('<');
    let text: String = tags
        .filter_map(|tag| Some(tag.split_once('>')?.1))
        .collect();
    format!("={text}")
}

#[test]
fn the_hot_amperes_explain_themselves_follow_and_lead_on() {
    let desk = open_demo(Screen::Phone);
    let hot = told("output.hot_a", None);
    // Closed, there is none.
    assert!(desk.browser.find("#working").is_err());
    desk.press(&by_id("alternator.output.hot_a"));
    desk.browser
        .wait_text("#working-title", &format!("{} A", figure(&hot)))
        .unwrap();
    assert_eq!(
        formulas(&desk),
        [
            set(&hot.mathml.symbols),
            set(&hot.mathml.figures),
            format!("= {} A", figure(&hot))
        ]
    );
    // Elements of a language of their own, not markup that looks like it.
    let real = "return document.querySelector('#working .formula msub').namespaceURI \
                == 'http://www.w3.org/1998/Math/MathML'";
    desk.browser.wait_script(real).unwrap();
    let source = desk.text("#working .source");
    assert_eq!(source, hot.source);

    // Along the chain, to the losses and what they used, and back.
    desk.press(&by_id("on.inner.hot.losses_w"));
    desk.browser
        .wait_text("#working .what", "Lost in the alternator")
        .unwrap();
    desk.press(&by_id("on.inner.hot.diode_w"));
    desk.browser
        .wait_text("#working .what", "Diode loss")
        .unwrap();
    desk.press("#working-back");
    desk.browser
        .wait_text("#working .what", "Lost in the alternator")
        .unwrap();
    desk.browser
        .wait_script("return document.activeElement.id == 'on.inner.hot.diode_w'")
        .unwrap();
    desk.press("#working-back");
    desk.browser
        .wait_text("#working .what", "Hot output")
        .unwrap();
    desk.press("#working-close");
    desk.browser.wait_gone("#working").unwrap();

    let fits = "return document.documentElement.scrollWidth <= innerWidth";
    desk.browser.wait_script(fits).unwrap();
    desk.assert_quiet();
}

#[test]
fn an_open_working_leads_to_its_input_and_follows_it() {
    let desk = open_demo(Screen::Desk);
    let id = "run.house_load_a";
    desk.press("#section-run > summary");
    desk.fill("#sheet-run_house_load_a", "8");
    desk.press(&by_id(&format!("run.{id}")));
    desk.browser.wait_text("#working-title", "8.0 A").unwrap();
    assert_eq!(formulas(&desk)[1], "=8");

    let name = Key::named("run_house_load_a").unwrap().spec().label;
    assert!(desk.text("#working .uses").contains(name));
    desk.press(&by_id("use.run_house_load_a"));
    desk.browser
        .wait_script("return document.activeElement.id == 'sheet-run_house_load_a'")
        .unwrap();
    desk.fill("#sheet-run_house_load_a", "11.5");
    desk.browser.wait_text("#working-title", "11.5 A").unwrap();
    let made = told(id, Some(11.5));
    assert_eq!(formulas(&desk)[1], set(&made.mathml.figures));
    desk.browser.shot("working").unwrap();
    desk.assert_quiet();
}

#[test]
fn a_working_opens_and_closes_by_keyboard() {
    let desk = open_demo(Screen::Desk);
    let button = "answer.output.hot_a";
    let opener = desk.browser.find(&by_id(button)).unwrap();
    let name = opener.label().unwrap();
    let amps = desk.answer().amps;
    assert_eq!(name, format!("How {amps} came about"));
    assert_eq!(opener.attribute("aria-expanded").unwrap().unwrap(), "false");
    let focus = "arguments[0].focus()";
    desk.browser.script(focus, &[opener.as_arg()]).unwrap();
    desk.browser.press("\u{E007}").unwrap();
    let panel = desk.browser.wait_for("#working").unwrap();
    assert_eq!(panel.label().unwrap(), name);
    desk.browser
        .wait_script("return document.activeElement.id == 'working'")
        .unwrap();
    let opener = desk.browser.find(&by_id(button)).unwrap();
    assert_eq!(opener.attribute("aria-expanded").unwrap().unwrap(), "true");
    // Escape closes it, and the cursor is where it was.
    desk.browser.press("\u{E00C}").unwrap();
    desk.browser.wait_gone("#working").unwrap();
    desk.browser
        .wait_script("return document.activeElement.id == 'answer.output.hot_a'")
        .unwrap();
    assert_eq!(focused(&desk), button);
    desk.assert_quiet();
}

#[test]
fn the_workings_are_printed_when_asked_for() {
    let desk = open_demo(Screen::Desk);
    let print = "dispatchEvent(new Event(arguments[0]))";
    let printed = || desk.browser.find_all("#appendix .working").unwrap().len();
    desk.browser.script(print, &["beforeprint".into()]).unwrap();
    assert_eq!(printed(), 0);
    desk.press("#print-workings");
    desk.browser.script(print, &["beforeprint".into()]).unwrap();
    let sheet = demo();
    let all = ampwright_core::explain::workings(&sheet, &report(&sheet));
    assert_eq!(printed(), all.len());
    desk.browser.script(print, &["afterprint".into()]).unwrap();
    assert_eq!(printed(), 0);
    desk.assert_quiet();
}
