//! A day of several legs: nothing of it until it is opened, then what the core
//! says of the day that was listed.

use ampwright_core::boat::usual_legs;
use ampwright_core::units::Reader;
use ampwright_core::{Worksheet, report, text};
use ampwright_tests::driver::{Scope, Screen};

use crate::desk::Desk;

#[test]
fn a_day_of_several_legs() {
    let desk = Desk::open(Screen::Phone);
    assert!(desk.browser.find("#leg-add").is_err());
    desk.press("#legs > summary");
    desk.browser.wait_for("#leg-add").unwrap();
    assert!(desk.browser.find("#legs-table").is_err());

    // A usual day, as the core has it.
    desk.press("#leg-add + button");
    desk.browser.wait_for("#legs-table").unwrap();
    let mut sheet = Worksheet::default();
    sheet.legs = usual_legs(&sheet);
    let day = report(&sheet).analyses.legs.unwrap();
    let totals = text::legs::totals(&day, &Reader::METRIC).join(" ");
    desk.browser.wait_text("#legs-total", &totals).unwrap();
    assert_eq!(desk.linked().legs, sheet.legs);
    let cell = |row: usize, column: usize| {
        desk.text(&format!(
            "#legs-table tbody tr:nth-child({row}) > :nth-child({column})"
        ))
    };
    for (at, leg) in day.legs.iter().enumerate() {
        assert_eq!(cell(at + 1, 1), leg.name);
        assert_eq!(cell(at + 1, 5), format!("{:.0}", leg.bank_ah));
    }
    desk.browser.shot("legs").unwrap();

    // A figure of a leg is typed as one of a load is.
    desk.press("#day-leg-1 > summary");
    desk.browser.wait_for("#day-leg-1-minutes").unwrap();
    desk.fill("#day-leg-1-minutes", "90");
    sheet.legs[1].row.minutes = Some(90.0);
    let longer = report(&sheet).analyses.legs.unwrap();
    let totals = text::legs::totals(&longer, &Reader::METRIC).join(" ");
    desk.browser.wait_text("#legs-total", &totals).unwrap();
    assert_eq!(desk.linked().legs, sheet.legs);

    // A usual day replaces what was typed, and one step takes that back.
    desk.button("Replace by a usual day")
        .unwrap()
        .press()
        .unwrap();
    desk.browser
        .wait_text(
            "#legs-total",
            &text::legs::totals(&day, &Reader::METRIC).join(" "),
        )
        .unwrap();
    assert_eq!(desk.linked().legs, usual_legs(&Worksheet::default()));

    let fits = "return document.documentElement.scrollWidth <= innerWidth";
    desk.browser.wait_script(fits).unwrap();
    desk.assert_quiet();
}
