//! A text that an entry does not take leaves no other value in force.

use std::time::Duration;

use ampwright_core::boat::{Key, LoadRow, Section as _, typical_loads};
use ampwright_core::schema::Value;
use ampwright_tests::driver::{Screen, keys};

use crate::desk::Desk;

const LEFT_OUT: &str = "#answer-left-out";
/// Both showings of one input.
const PLACES: [&str; 2] = ["ask", "sheet"];

fn entered(desk: &Desk, css: &str) -> String {
    let value = desk.browser.find(css).unwrap().property("value").unwrap();
    value.as_str().unwrap().to_string()
}

/// What the link carries, which is what is in force.
fn linked(desk: &Desk, key: &str) -> Value {
    desk.linked().inputs.get(Key::named(key).unwrap())
}

/// What is kept of the open worksheet, as text.
fn kept(desk: &Desk) -> String {
    std::thread::sleep(Duration::from_millis(600));
    let text =
        "return localStorage.getItem('ampwright.sheet.' + localStorage.getItem('ampwright.last'))";
    let text = desk.browser.script(text, &[]).unwrap();
    text.as_str().unwrap_or_default().to_string()
}

/// Opens the whole worksheet.
fn open_all(desk: &Desk) {
    let open = "for (const fold of document.querySelectorAll('.rest details.section, .rest details.finer')) fold.open = true";
    desk.browser.script(open, &[]).unwrap();
}

/// Another place that shows the input, in sight or not.
fn elsewhere(place: &str, key: &str) -> String {
    let other = if place == "ask" { "sheet" } else { "ask" };
    format!("#{other}-{key}")
}

#[test]
fn what_an_entry_does_not_take_is_not_in_force() {
    let desk = Desk::open(Screen::Desk);
    open_all(&desk);
    let before = desk.answer();
    for place in PLACES {
        for (key, label, stands, text) in [
            ("alt_pulley_ratio", "Pulley ratio", 2.2, "150/65"),
            ("bank_capacity_ah", "Capacity", 400.0, "460400"),
            ("alt_pulley_ratio", "Pulley ratio", 2.2, "-5"),
            ("bank_capacity_ah", "Capacity", 400.0, "1e99"),
            ("alt_pulley_ratio", "Pulley ratio", 2.2, "letters"),
            ("alt_pulley_ratio", "Pulley ratio", 2.2, "2.4.1"),
        ] {
            let entry = format!("#{place}-{key}");
            desk.fill(&entry, text);
            let said = desk.text(&format!("{entry}-complaint"));
            assert!(said.contains(text), "{said}");
            assert!(said.contains(&format!("{stands}")), "{said}");
            assert_eq!(entered(&desk, &entry), text);
            assert_eq!(
                desk.text(LEFT_OUT),
                format!("Not included: {label} “{text}”")
            );
            assert_eq!(desk.answer(), before, "{entry} {text}");
            assert_eq!(linked(&desk, key), Value::Number(stands), "{text}");
            let known = desk.linked().known;
            assert_eq!(known.get(Key::named(key).unwrap()), None, "{text}");
            assert_eq!(entered(&desk, &elsewhere(place, key)), stands.to_string());
            // Left as it is, it stays so, and can be reached from the answer.
            desk.browser.press(keys::TAB).unwrap();
            assert_eq!(entered(&desk, &entry), text);
            assert_eq!(linked(&desk, key), Value::Number(stands), "{text}");
            desk.browser
                .find("#answer-left-out a")
                .unwrap()
                .click()
                .unwrap();
            let focused = desk.browser.focused().unwrap().attribute("id").unwrap();
            assert_eq!(focused, Some(format!("{place}-{key}")));
            // A figure ends it.
            desk.fill(&entry, &stands.to_string());
            assert_eq!(desk.text(LEFT_OUT), "");
            assert_eq!(desk.text(&format!("{entry}-complaint")), "");
            desk.press("#form-title");
            desk.browser
                .script(
                    "document.querySelector(arguments[0]).closest('.row').querySelector('.forget').click()",
                    &[entry.into()],
                )
                .unwrap();
        }
    }
    desk.assert_quiet();
}

#[test]
fn what_is_typed_is_in_force_while_it_is_valid() {
    let desk = Desk::open(Screen::Desk);
    let ratio = "#ask-alt_pulley_ratio";
    for (text, stands) in [("1,", 1.0), ("1,5", 1.5), ("1,5x", 2.2), ("1,52", 1.52)] {
        // Key by key in one go, as somebody types who does not leave the entry.
        let field = desk.browser.find(ratio).unwrap();
        let all = format!("{}a{}{}", keys::CONTROL, keys::CONTROL, keys::BACKSPACE);
        field.type_text(&all).unwrap();
        field.type_text(text).unwrap();
        assert_eq!(
            linked(&desk, "alt_pulley_ratio"),
            Value::Number(stands),
            "{text}"
        );
        assert_eq!(entered(&desk, ratio), text);
        assert_eq!(desk.text(LEFT_OUT).is_empty(), stands != 2.2, "{text}");
    }
    // Left, it is what the next typing goes back to.
    desk.press("#form-title");
    assert_eq!(entered(&desk, ratio), "1.52");
    desk.fill(ratio, "x");
    assert_eq!(linked(&desk, "alt_pulley_ratio"), Value::Number(1.52));
    // Done with, though not left.
    desk.fill(ratio, &format!("3{}", keys::ENTER));
    desk.fill(ratio, "3/");
    assert_eq!(linked(&desk, "alt_pulley_ratio"), Value::Number(3.0));
    desk.assert_quiet();
}

#[test]
fn an_emptied_entry_says_what_is_used() {
    let desk = Desk::open(Screen::Desk);
    open_all(&desk);
    desk.fill("#ask-alt_pulley_ratio", &format!("2.6{}", keys::ENTER));
    let before = desk.answer();
    for place in PLACES {
        let entry = format!("#{place}-alt_pulley_ratio");
        desk.fill(&entry, "");
        let said = desk.text(&format!("{entry}-complaint"));
        assert!(
            said.ends_with("Empty: 2.6 is used until you enter a figure, 0.5 to 6."),
            "{said}"
        );
        assert_eq!(desk.text(LEFT_OUT), "Not included: Pulley ratio (empty)");
        assert_eq!(desk.answer(), before);
        assert_eq!(linked(&desk, "alt_pulley_ratio"), Value::Number(2.6));
    }
    // Emptied in the second place, the first shows what is used.
    assert_eq!(entered(&desk, "#ask-alt_pulley_ratio"), "2.6");
    assert_eq!(desk.text("#ask-alt_pulley_ratio-complaint"), "");
    // One that may be empty is taken as such.
    desk.fill("#sheet-bank_charge_limit_a", "5x");
    desk.fill("#sheet-bank_charge_limit_a", "");
    assert_eq!(desk.text("#sheet-bank_charge_limit_a-complaint"), "");
    assert_eq!(linked(&desk, "bank_charge_limit_a"), Value::Absent);
    desk.assert_quiet();
}

#[test]
fn pasted_stepped_and_interrupted_it_is_the_same() {
    let desk = Desk::open(Screen::Desk);
    let ratio = "#ask-alt_pulley_ratio";
    let paste = |text: &str| {
        let code =
            "const entry = document.querySelector(arguments[0]); entry.focus(); entry.select();
            document.execCommand('insertText', false, arguments[1])";
        desk.browser
            .script(code, &[ratio.into(), text.into()])
            .unwrap();
    };
    paste("150/65");
    assert_eq!(linked(&desk, "alt_pulley_ratio"), Value::Number(2.2));
    // A step goes on from what is in force, and is whole.
    desk.browser.press(keys::UP).unwrap();
    assert_eq!(entered(&desk, ratio), "2.22");
    assert_eq!(desk.text(LEFT_OUT), "");
    paste("9x");
    assert_eq!(linked(&desk, "alt_pulley_ratio"), Value::Number(2.22));
    // The window loses the focus while somebody looks the figure up elsewhere.
    desk.fill(ratio, "1");
    let away = "const entry = document.activeElement;
        entry.dispatchEvent(new FocusEvent('focusout', { bubbles: true }));
        dispatchEvent(new Event('blur'))";
    desk.browser.script(away, &[]).unwrap();
    desk.browser
        .find(ratio)
        .unwrap()
        .type_text("50/65")
        .unwrap();
    assert_eq!(linked(&desk, "alt_pulley_ratio"), Value::Number(2.22));
    // Nothing of it is kept.
    assert!(kept(&desk).contains("\"alt_pulley_ratio\":2.22"));
    let journal = "return new Promise((done) => {
        indexedDB.open('ampwright').onsuccess = ({ target }) => {
            const table = target.result.transaction('kept').objectStore('kept');
            table.getAll().onsuccess = ({ target }) => done(target.result.map(({ text }) => text).join());
        };
    })";
    let journal = desk.browser.script(journal, &[]).unwrap().to_string();
    assert!(journal.contains("alt_pulley_ratio\\\":2.22"), "{journal}");
    desk.browser.refresh().unwrap();
    desk.browser.wait_for(crate::desk::OPENED).unwrap();
    assert_eq!(entered(&desk, ratio), "2.22");
    assert_eq!(linked(&desk, "alt_pulley_ratio"), Value::Number(2.22));
    assert_eq!(desk.text(LEFT_OUT), "");
    // Another worksheet knows nothing of what was half typed in this one.
    desk.fill(ratio, "x");
    desk.press("#new-sheet");
    assert_eq!(desk.text(LEFT_OUT), "");
    assert_eq!(entered(&desk, ratio), "2.2");
    desk.assert_quiet();
}

#[test]
fn how_well_a_figure_is_known_comes_back_with_it() {
    let desk = Desk::open(Screen::Desk);
    let key = Key::named("alt_pulley_ratio").unwrap();
    desk.fill("#ask-alt_pulley_ratio", "150/65");
    assert!(!desk.linked().is_said(key));
    // Graded while a text waits: of what is in force.
    desk.choose(".row:has(#ask-alt_pulley_ratio) .mark", "measured");
    desk.fill("#ask-alt_pulley_ratio", "2x");
    let sheet = desk.linked();
    assert_eq!(sheet.knowledge(key).word(), "measured");
    assert_eq!(sheet.inputs.get(key), Value::Number(2.2));
    // Given up, nothing waits any more.
    desk.browser
        .script(
            "document.querySelector('.row:has(#ask-alt_pulley_ratio) .forget').click()",
            &[],
        )
        .unwrap();
    assert_eq!(entered(&desk, "#ask-alt_pulley_ratio"), "2.2");
    assert_eq!(desk.text("#ask-alt_pulley_ratio-complaint"), "");
    desk.assert_quiet();
}

#[test]
fn in_other_units_the_figure_used_is_told_in_them() {
    let desk = Desk::open(Screen::Desk);
    let other = "localStorage.setItem('ampwright.units', 'unit-temperature'); location.reload()";
    desk.browser.script(other, &[]).unwrap();
    let fahrenheit =
        "return document.querySelector('[data-ready] #ask-space_outside_c')?.value === '82.4'";
    desk.browser.wait_script(fahrenheit).unwrap();
    desk.fill("#ask-space_outside_c", "");
    let said = "#ask-space_outside_c-complaint";
    desk.browser.wait_text(said, "82.4 °F is used").unwrap();
    desk.fill("#ask-space_outside_c", "900");
    assert_eq!(linked(&desk, "space_outside_c"), Value::Number(28.0));
    // Chosen the other way in mid-entry, the page opens afresh.
    let back = "localStorage.setItem('ampwright.units', ''); location.reload()";
    desk.browser.script(back, &[]).unwrap();
    let celsius =
        "return document.querySelector('[data-ready] #ask-space_outside_c')?.value === '28'";
    desk.browser.wait_script(celsius).unwrap();
    assert_eq!(linked(&desk, "space_outside_c"), Value::Number(28.0));
    desk.assert_quiet();
}

#[test]
fn loads_and_arrangements_of_ones_own_keep_their_figures() {
    let desk = Desk::open(Screen::Desk);
    desk.press("#add-it-up");
    desk.browser.wait_for("#ask-load-2").unwrap();
    let open = "for (const fold of document.querySelectorAll('details.load')) fold.open = true";
    desk.browser.script(open, &[]).unwrap();
    let column = LoadRow::FIELDS
        .iter()
        .position(|field| field.spec.unit().is_some());
    let column = column.unwrap();
    let name = LoadRow::FIELDS[column].name;
    let loads = typical_loads();
    let before = desk.linked().loads;
    assert_eq!(before, loads);
    desk.fill(&format!("#ask-load-2-{name}"), "1/2");
    let left_out = format!(
        "Not included: {}: {} “1/2”",
        loads[2].name,
        LoadRow::FIELDS[column].spec.label
    );
    assert_eq!(desk.text(LEFT_OUT), left_out);
    assert_eq!(desk.linked().loads, before);
    // Another load goes: the text moves up with its load.
    desk.press("#ask-load-0 [data-click=load-out]");
    assert_eq!(desk.linked().loads, before[1..]);
    assert_eq!(entered(&desk, &format!("#ask-load-1-{name}")), "1/2");
    assert_eq!(desk.text(LEFT_OUT), left_out);
    desk.press("#ask-load-1 [data-click=load-out]");
    assert_eq!(desk.text(LEFT_OUT), "");
    // An arrangement of one's own.
    desk.press("#arrangements > summary");
    desk.browser.wait_for("#own-new").unwrap();
    desk.press("#own-new");
    desk.browser.wait_for("#own-0-add").unwrap();
    desk.choose("#own-0-add", "alt_pulley_ratio");
    desk.browser.wait_for("#own-0-alt_pulley_ratio").unwrap();
    let key = Key::named("alt_pulley_ratio").unwrap();
    desk.fill("#own-0-alt_pulley_ratio", "150/65");
    let changes = desk.linked().arrangements[0].changes.clone();
    assert_eq!(changes, [(key, Value::Number(2.2))]);
    assert!(
        desk.text(LEFT_OUT)
            .contains("My arrangement 1: Pulley ratio “150/65”")
    );
    // The worksheet's own figure is another one.
    desk.fill("#ask-alt_pulley_ratio", "2.4");
    assert_eq!(entered(&desk, "#own-0-alt_pulley_ratio"), "150/65");
    assert_eq!(linked(&desk, "alt_pulley_ratio"), Value::Number(2.4));
    // Redrawn with one more change, it is still there.
    desk.choose("#own-0-add", "alt_rated_a");
    desk.browser.wait_for("#own-0-alt_rated_a").unwrap();
    assert_eq!(entered(&desk, "#own-0-alt_pulley_ratio"), "150/65");
    desk.press("#own-0-delete");
    assert_eq!(desk.text(LEFT_OUT), "");
    desk.assert_quiet();
}
