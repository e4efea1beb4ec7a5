//! The year: nothing of it until it is opened, then what the core says.

use crate::desk::Desk;
use ampwright_core::analysis::year;
use ampwright_core::boat::Month;
use ampwright_core::exchange::open_link;
use ampwright_core::text::year::settled_day;
use ampwright_core::units::Reader;
use ampwright_tests::driver::{Scope as _, Screen};

const LINK: &str = "#v=2&sun_panel_w=320&sun_basis=place&sun_latitude_deg=43.5&sun_month=6&end";

/// The cells of a month, January first.
fn cell(desk: &Desk, month: usize, column: usize) -> String {
    desk.text(&format!(
        "#year tbody tr:nth-child({month}) > :nth-child({column})"
    ))
}

#[test]
fn the_year_is_the_cores_and_follows_the_worksheet() {
    let desk = Desk::open(Screen::Phone);
    desk.browser
        .go(&format!("{}{LINK}", desk.site.url()))
        .unwrap();
    desk.browser.wait_for("#arrival").unwrap();
    // Closed, it is not reckoned.
    assert!(desk.browser.find("#year-day").is_err());
    desk.press("#year > summary");
    desk.browser.wait_for("#year-day").unwrap();

    let mut sheet = open_link(LINK).unwrap().sheet;
    let expected = year(&sheet);
    for month in [1, 6, 12] {
        let m = &expected.months[month - 1];
        assert_eq!(cell(&desk, month, 2), format!("{:.0}", m.days_aboard));
        assert_eq!(cell(&desk, month, 3), format!("{:.0}", m.sun_ah_day));
        assert_eq!(cell(&desk, month, 4), format!("{:.1}", m.charging_h));
        assert_eq!(cell(&desk, month, 5), format!("{:.0}", m.lowest_pct));
    }
    // The day drawn is that of the worksheet's month until another is chosen.
    assert_eq!(
        desk.text("#year-day"),
        settled_day(&expected.months[5], &Reader::METRIC)
    );
    desk.choose("#year-month", "11");
    let december = settled_day(&expected.months[11], &Reader::METRIC);
    desk.browser.wait_text("#year-day", &december).unwrap();
    desk.browser.shot("year").unwrap();

    // It follows once typing rests.
    desk.fill("#ask-daily_use_ah", "60");
    sheet.inputs.daily.use_ah = 60.0;
    let less = year(&sheet).months[0].charging_h;
    let january = "#year tbody tr:nth-child(1) > :nth-child(4)";
    desk.browser
        .wait_text(january, &format!("{less:.1}"))
        .unwrap();

    let fits = "return document.documentElement.scrollWidth <= innerWidth";
    desk.browser.wait_script(fits).unwrap();
    desk.assert_quiet();
}

/// The table of months: what a cell stands for, one's own figure, a refused one
/// with its sentence, and a year filled in at a stroke.
#[test]
fn months_are_filled_in_and_refused() {
    let desk = Desk::open(Screen::Phone);
    desk.browser
        .go(&format!("{}{LINK}", desk.site.url()))
        .unwrap();
    desk.browser.wait_for("#arrival").unwrap();
    desk.press("#year > summary");
    desk.browser.wait_for("#months > summary").unwrap();
    desk.press("#months > summary");
    desk.browser.wait_for("#months-1-days").unwrap();
    desk.button("Live aboard all year")
        .unwrap()
        .press()
        .unwrap();
    desk.choose("#months-column", "0");
    desk.browser.wait_for("#months-1-air_c").unwrap();
    desk.field("January").unwrap().fill("4").unwrap();
    desk.field("February").unwrap().fill("400").unwrap();
    desk.browser
        .wait_for("#months-2-air_c-complaint:not(:empty)")
        .unwrap();
    assert!(desk.text("#months-2-air_c-complaint").contains("400"));

    let sheet = desk.linked();
    let row = |month| *sheet.months.row(month);
    assert_eq!(row(Month::January).air_c, Some(4.0));
    assert_eq!(row(Month::February).air_c, None);
    assert_eq!(row(Month::July).days, Some(31.0));
    let fits = "return document.documentElement.scrollWidth <= innerWidth";
    desk.browser.wait_script(fits).unwrap();
    desk.assert_quiet();
}

/// Without panels the season can still be that of a place.
#[test]
fn a_boat_without_panels_has_a_latitude() {
    let desk = Desk::open(Screen::Phone);
    desk.press("#year > summary");
    desk.browser.wait_for("#months > summary").unwrap();
    desk.press("#months > summary");
    desk.browser.wait_for("#months-sun_basis").unwrap();
    desk.choose("#months-sun_basis", "place");
    desk.fill("#months-sun_latitude_deg", "18 S");
    let months = desk.linked().month_figures();
    // South of the line January is the warm one.
    assert!(months[0].air_c > months[6].air_c, "{months:?}");
    desk.assert_quiet();
}
