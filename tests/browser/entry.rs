//! A text that an entry does not take leaves no other value in force.

use ampwright_core::boat::{Key, LoadRow, Section as _, typical_loads};
use ampwright_core::schema::Value;
use ampwright_tests::driver::{Scope, Screen, keys};

use crate::desk::{Desk, wait_journal};
use crate::page::{Part, label};

/// What the link carries, which is what is in force.
fn linked(desk: &Desk, key: &str) -> Value {
    desk.linked().inputs.get(Key::named(key).unwrap())
}

const RATIO: &str = "Pulley ratio";

/// Both showings of each input, and the worksheet opened.
fn places(desk: &Desk) -> [Part<'_>; 2] {
    desk.sheet().open_all();
    [desk.questions(), desk.sheet()]
}

#[test]
fn what_an_entry_does_not_take_is_not_in_force() {
    let desk = Desk::open(Screen::Desk);
    let before = desk.answer();
    let places = places(&desk);
    for (place, elsewhere) in [(&places[0], &places[1]), (&places[1], &places[0])] {
        for (key, stands, text) in [
            ("alt_pulley_ratio", 2.2, "150/x"),
            ("bank_capacity_ah", 400.0, "460400"),
            ("alt_pulley_ratio", 2.2, "-5"),
            ("bank_capacity_ah", 400.0, "1e99"),
            ("alt_pulley_ratio", 2.2, "letters"),
            ("alt_pulley_ratio", 2.2, "2.4.1"),
        ] {
            let entry = label(key);
            place.fill(entry, text);
            let said = place.complaint(entry);
            assert!(said.contains(text), "{said}");
            assert!(said.contains(&format!("{stands}")), "{said}");
            assert_eq!(place.value(entry), text);
            let left_out = format!("Not included: {entry} “{text}”");
            assert_eq!(desk.left_out(), left_out);
            assert_eq!(desk.answer(), before, "{entry} {text}");
            assert_eq!(linked(&desk, key), Value::Number(stands), "{text}");
            let known = desk.linked().known;
            assert_eq!(known.get(Key::named(key).unwrap()), None, "{text}");
            assert_eq!(elsewhere.value(entry), stands.to_string());
            // Left as it is, it stays so, and can be reached from the answer.
            desk.browser.press(keys::TAB).unwrap();
            assert_eq!(place.value(entry), text);
            assert_eq!(linked(&desk, key), Value::Number(stands), "{text}");
            let way = desk.strip().link(&format!("{entry}…")).unwrap();
            way.click().unwrap();
            let field = place.field(entry).unwrap();
            desk.browser.wait_focused(&field).unwrap();
            // A figure ends it.
            place.fill(entry, &stands.to_string());
            assert_eq!(desk.left_out(), "");
            assert_eq!(place.complaint(entry), "");
            leave(&desk);
            // "I don't know", or "back to the default".
            place.press(&format!("{entry}: …"));
        }
    }
    desk.assert_quiet();
}

/// Touches something that is no entry.
fn leave(desk: &Desk) {
    desk.heading("All inputs").unwrap().press().unwrap();
}

#[test]
fn what_is_typed_is_in_force_while_it_is_valid() {
    let desk = Desk::open(Screen::Desk);
    let questions = desk.questions();
    for (text, stands) in [("1,", 1.0), ("1,5", 1.5), ("1,5x", 2.2), ("1,52", 1.52)] {
        // Key by key in one go, as somebody types who does not leave the entry.
        let field = questions.field(RATIO).unwrap();
        let all = format!("{}a{}{}", keys::CONTROL, keys::CONTROL, keys::BACKSPACE);
        field.type_text(&all).unwrap();
        field.type_text(text).unwrap();
        assert_eq!(
            linked(&desk, "alt_pulley_ratio"),
            Value::Number(stands),
            "{text}"
        );
        assert_eq!(questions.value(RATIO), text);
        assert_eq!(desk.left_out().is_empty(), stands != 2.2, "{text}");
    }
    // Left, it is what the next typing goes back to.
    leave(&desk);
    assert_eq!(questions.value(RATIO), "1.52");
    questions.fill(RATIO, "x");
    assert_eq!(linked(&desk, "alt_pulley_ratio"), Value::Number(1.52));
    // Done with, though not left.
    questions.fill(RATIO, &format!("3{}", keys::ENTER));
    questions.fill(RATIO, "3/");
    assert_eq!(linked(&desk, "alt_pulley_ratio"), Value::Number(3.0));
    desk.assert_quiet();
}

#[test]
fn an_emptied_entry_says_what_is_used() {
    let desk = Desk::open(Screen::Desk);
    let places = places(&desk);
    let [questions, sheet] = &places;
    questions.fill(RATIO, &format!("2.6{}", keys::ENTER));
    let before = desk.answer();
    for place in &places {
        place.fill(RATIO, "");
        let said = place.complaint(RATIO);
        assert!(
            said.ends_with("Empty: 2.6 is used until you enter a figure, 0.5 to 6."),
            "{said}"
        );
        assert_eq!(desk.left_out(), "Not included: Pulley ratio (empty)");
        assert_eq!(desk.answer(), before);
        assert_eq!(linked(&desk, "alt_pulley_ratio"), Value::Number(2.6));
    }
    // Emptied in the second place, the first shows what is used.
    assert_eq!(questions.value(RATIO), "2.6");
    assert_eq!(questions.complaint(RATIO), "");
    // One that may be empty is taken as such.
    let limit = "Charge current limit…";
    sheet.fill(limit, "5x");
    sheet.fill(limit, "");
    assert_eq!(sheet.complaint(limit), "");
    assert_eq!(linked(&desk, "bank_charge_limit_a"), Value::Absent);
    desk.assert_quiet();
}

#[test]
fn pasted_stepped_and_interrupted_it_is_the_same() {
    let desk = Desk::open(Screen::Desk);
    let questions = desk.questions();
    let paste = |text: &str| {
        let code = "const [entry, text] = arguments; entry.focus(); entry.select();
            document.execCommand('insertText', false, text)";
        let entry = questions.field(RATIO).unwrap();
        let given = [entry.as_arg(), text.into()];
        desk.browser.script(code, &given).unwrap();
    };
    paste("150/65");
    assert_eq!(linked(&desk, "alt_pulley_ratio"), Value::Number(2.2));
    // A step goes on from what is in force, and is whole.
    desk.browser.press(keys::UP).unwrap();
    assert_eq!(questions.value(RATIO), "2.22");
    assert_eq!(desk.left_out(), "");
    paste("9x");
    assert_eq!(linked(&desk, "alt_pulley_ratio"), Value::Number(2.22));
    // The window loses the focus while somebody looks the figure up elsewhere.
    questions.fill(RATIO, "1");
    let away = "const entry = document.activeElement;
        entry.dispatchEvent(new FocusEvent('focusout', { bubbles: true }));
        dispatchEvent(new Event('blur'))";
    desk.browser.script(away, &[]).unwrap();
    let entry = questions.field(RATIO).unwrap();
    entry.type_text("50/65").unwrap();
    assert_eq!(linked(&desk, "alt_pulley_ratio"), Value::Number(2.22));
    // Nothing of it is kept.
    desk.wait_kept(r#""alt_pulley_ratio":2.22"#);
    wait_journal(&desk.browser, r#""alt_pulley_ratio":2.22"#);
    desk.browser.refresh().unwrap();
    desk.browser.wait_for(crate::desk::OPENED).unwrap();
    let questions = desk.questions();
    assert_eq!(questions.value(RATIO), "2.22");
    assert_eq!(linked(&desk, "alt_pulley_ratio"), Value::Number(2.22));
    assert_eq!(desk.left_out(), "");
    // Another worksheet knows nothing of what was half typed in this one.
    questions.fill(RATIO, "x");
    desk.shelf().press("New boat");
    assert_eq!(desk.left_out(), "");
    assert_eq!(questions.value(RATIO), "2.2");
    desk.assert_quiet();
}

#[test]
fn how_well_a_figure_is_known_comes_back_with_it() {
    let desk = Desk::open(Screen::Desk);
    let key = Key::named("alt_pulley_ratio").unwrap();
    let questions = desk.questions();
    questions.fill(RATIO, "150/65");
    assert!(!desk.linked().is_said(key));
    // Graded while a text waits: of what is in force.
    questions.choose("Pulley ratio: how well it is known", "measured");
    questions.fill(RATIO, "2x");
    let sheet = desk.linked();
    assert_eq!(sheet.knowledge(key).word(), "measured");
    assert_eq!(sheet.inputs.get(key), Value::Number(2.2));
    // Given up, nothing waits any more.
    questions.press("Pulley ratio: I don't know");
    assert_eq!(questions.value(RATIO), "2.2");
    assert_eq!(questions.complaint(RATIO), "");
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
    let questions = desk.questions();
    questions.fill("Outside air", "");
    questions.wait_text("82.4 °F is used");
    questions.fill("Outside air", "900");
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
    let questions = desk.questions();
    questions.press("Help me add it up");
    let column = LoadRow::FIELDS
        .iter()
        .find(|field| field.spec.unit().is_some());
    let column = column.unwrap().spec.label;
    let loads = typical_loads();
    let load = |at: usize| questions.opened(&format!("{}…", loads[at].name));
    let before = desk.linked().loads;
    assert_eq!(before, loads);
    load(2).fill(column, "1/2");
    let left_out = format!("Not included: {}: {column} “1/2”", loads[2].name);
    assert_eq!(desk.left_out(), left_out);
    assert_eq!(desk.linked().loads, before);
    // Another load goes: the text stays with its load.
    load(0).press("Delete this load");
    assert_eq!(desk.linked().loads, before[1..]);
    assert_eq!(load(2).value(column), "1/2");
    assert_eq!(desk.left_out(), left_out);
    load(2).press("Delete this load");
    assert_eq!(desk.left_out(), "");
    // An arrangement of one's own.
    let own = desk
        .part("Which arrangement, and what to buy first")
        .opened("Compare");
    own.press("Begin one from this boat");
    desk.browser.wait_for("#own-0-add").unwrap();
    desk.choose("#own-0-add", "alt_pulley_ratio");
    let key = Key::named("alt_pulley_ratio").unwrap();
    own.fill(RATIO, "150/65");
    let changes = desk.linked().arrangements[0].changes.clone();
    assert_eq!(changes, [(key, Value::Number(2.2))]);
    let left_out = desk.left_out();
    assert!(left_out.contains("My arrangement 1: Pulley ratio “150/65”"));
    // The worksheet's own figure is another one.
    questions.fill(RATIO, "2.4");
    assert_eq!(own.value(RATIO), "150/65");
    assert_eq!(linked(&desk, "alt_pulley_ratio"), Value::Number(2.4));
    // Redrawn with one more change, it is still there.
    desk.choose("#own-0-add", "alt_rated_a");
    own.field("Rated current").unwrap();
    assert_eq!(own.value(RATIO), "150/65");
    desk.press("#own-0-delete");
    assert_eq!(desk.left_out(), "");
    desk.assert_quiet();
}
