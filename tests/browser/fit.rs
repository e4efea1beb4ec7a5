//! Fit it safely: nothing of it until a fold is opened, then what the core
//! says, and it follows what is answered there.

use crate::desk::Desk;
use ampwright_core::analysis::cable::Cables;
use ampwright_core::boat::{Key, Worksheet};
use ampwright_core::report;
use ampwright_core::schema::Value;
use ampwright_core::text::cable;
use ampwright_core::units::Reader;
use ampwright_tests::driver::Screen;

fn state(sheet: &mut Worksheet, name: &str, value: Value) {
    sheet.state(Key::named(name).unwrap(), value).unwrap();
}

fn wires(sheet: &Worksheet) -> Cables {
    report(sheet).analyses.cables
}

/// How much a fold holds.
fn elements(desk: &Desk, fold: &str) -> u64 {
    let code = "return document.querySelector(`#fit-${arguments[0]} > .body`).childElementCount";
    let elements = desk.browser.script(code, &[fold.into()]).unwrap();
    elements.as_u64().unwrap()
}

/// Metric size of a run, as shown.
fn size(desk: &Desk, run: &str) -> String {
    desk.text(&format!("#fit-run-{run} .size th"))
}

#[test]
fn a_longer_lead_asks_for_a_thicker_cable() {
    let desk = Desk::open(Screen::Phone);
    assert_eq!(elements(&desk, "cable"), 0);
    desk.press("#fit-cable > summary");
    desk.browser.wait_for("#fit-run-alternator").unwrap();

    let mut sheet = Worksheet::default();
    let before = wires(&sheet);
    let pick = before.runs[0].metric.unwrap();
    assert_eq!(size(&desk, "alternator"), cable::size(&pick));
    let caution = desk.text("#fit-cable .caution");
    assert!(caution.contains("dropped spanner"), "{caution}");

    desk.press("#section-cable > summary");
    desk.browser.wait_for("#sheet-cable_machine_m").unwrap();
    // Answered in the fold, shown in the fold, and in the worksheet.
    desk.fill("#fit-cable_machine_m", "6,5");
    state(&mut sheet, "cable_machine_m", Value::Number(6.5));
    let after = wires(&sheet);
    let thicker = after.runs[0].metric.unwrap();
    assert!(thicker.mm2 * f64::from(thicker.cables) > pick.mm2);
    let shown = "#fit-run-alternator .size th";
    desk.browser
        .wait_text(shown, &cable::size(&thicker))
        .unwrap();
    let whole = desk.browser.find("#sheet-cable_machine_m").unwrap();
    assert_eq!(whole.property("value").unwrap(), "6.5");
    let entry = desk.text("#fit-run-alternator");
    for part in [
        format!("{:.2}\u{a0}V", thicker.drop_v),
        format!("{}\u{a0}A", thicker.fuse_a),
        cable::fuse(&after.runs[0], &Reader::METRIC),
        cable::asks(&after.runs[0], &Reader::METRIC),
    ] {
        let part = part.replace('\u{a0}', " ");
        let entry = entry.replace('\u{a0}', " ");
        assert!(entry.contains(&part), "{part} is not in {entry}");
    }
    desk.browser.shot("fit-cable").unwrap();

    // An inverter has a run of its own and asks how long it is.
    desk.fill("#fit-cable_inverter_w", "2000");
    desk.browser.wait_for("#fit-run-inverter").unwrap();
    desk.browser.wait_for("#fit-cable_inverter_m").unwrap();

    // What is found about cables stands here, and with all other findings.
    desk.fill("#fit-cable_inverter_w", "6000");
    for place in ["#fit-cable-told", "#findings-list"] {
        desk.browser
            .wait_text(place, "One cable is not enough from house bank to inverter")
            .unwrap();
    }

    // Wrong figures are answered where they are typed, and nothing moves.
    desk.fill("#fit-cable_machine_m", "far");
    let complaint = desk.text("#fit-cable_machine_m-complaint");
    assert!(complaint.contains("not a number"), "{complaint}");
    assert_eq!(desk.text("#sheet-cable_machine_m-complaint"), "");
    assert_eq!(size(&desk, "alternator"), cable::size(&thicker));

    desk.press("#fit-cable > summary");
    desk.browser.wait_gone("#fit-run-alternator").unwrap();
    assert_eq!(elements(&desk, "cable"), 0);
    desk.assert_quiet();
}

#[test]
fn a_belt_that_is_named_is_measured_against_its_load() {
    let desk = Desk::open(Screen::Phone);
    assert_eq!(elements(&desk, "belt"), 0);
    desk.press("#fit-belt > summary");
    desk.browser
        .wait_text("#fit-belt-told", "Which belt turns the alternator?")
        .unwrap();
    assert!(desk.browser.find("#fit-belt-told .told").is_err());
    desk.choose("#fit-belt_kind", "v10");
    desk.browser.wait_for("#fit-belt-told .told").unwrap();
    let small = desk.text("#fit-belt-told .told");
    desk.choose("#fit-belt_kind", "ribs10");
    let code = format!(
        "const p = document.querySelector('#fit-belt-told .told').textContent; return p !== {small:?} && p"
    );
    desk.browser.wait_script(&code).unwrap();
    desk.browser.wait_text("#fit-belt-more", "Torque").unwrap();
    desk.browser.shot("fit-belt").unwrap();
    desk.assert_quiet();
}

#[test]
fn the_defences_are_answered_and_what_is_left_follows() {
    let desk = Desk::open(Screen::Phone);
    assert_eq!(elements(&desk, "guard"), 0);
    desk.press("#fit-guard > summary");
    let stands = |key: &str, word: &str| {
        let place = format!("#fit-defence-{key} .standing");
        desk.browser.wait_text(&place, word).unwrap();
    };
    stands("clamp", "not entered");
    let left = |sheet: &Worksheet| {
        let machine = &report(sheet).analyses.load_dump.alternators[0];
        format!("{:.0} V", machine.bank_left_v().unwrap())
    };
    let mut sheet = desk.regulate();
    let bare = left(&sheet);
    desk.browser
        .wait_text("#fit-guard-told .told", &bare)
        .unwrap();

    desk.choose("#fit-guard_clamp", "clamp");
    state(&mut sheet, "guard_clamp", Value::Choice(2));
    let clamped = left(&sheet);
    assert_ne!(bare, clamped);
    desk.browser
        .wait_text("#fit-guard-told .told", &clamped)
        .unwrap();
    stands("clamp", "there");
    desk.choose("#fit-guard_lead", "no");
    stands("lead", "missing");
    desk.browser.shot("fit-guard").unwrap();

    let fits = "return document.documentElement.scrollWidth <= innerWidth";
    desk.browser.wait_script(fits).unwrap();
    // No id stands twice on the page.
    let twice = "const ids = [...document.querySelectorAll('[id]')].map(e => e.id);
        return ids.filter((id, at) => ids.indexOf(id) !== at).join(' ')";
    assert_eq!(desk.browser.script(twice, &[]).unwrap(), "");
    desk.assert_quiet();
}
