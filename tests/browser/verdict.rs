//! The first screen says whether the alternator survives, what several runs a
//! day are, and why there may be none.

use ampwright_core::Worksheet;
use ampwright_core::analysis::year;
use ampwright_core::exchange::open_link;
use ampwright_core::findings::OpenQuestion;
use ampwright_core::report;
use ampwright_core::report::Report;
use ampwright_core::text;
use ampwright_core::text::words::day_trouble;
use ampwright_core::units::Reader;
use ampwright_tests::driver::Screen;

use crate::desk::Desk;

const FITS: &str = "return document.documentElement.scrollWidth <= innerWidth";

/// Opens a boat, and works it out natively.
fn boat(desk: &Desk, inputs: &str) -> (Worksheet, Report) {
    let fragment = format!("v=2&{inputs}&end");
    desk.browser
        .go(&format!("{}#{fragment}", desk.site.url()))
        .unwrap();
    desk.browser.wait_for("#arrival").unwrap();
    desk.link();
    let sheet = open_link(&fragment).unwrap().sheet;
    let expected = report(&sheet);
    assert_eq!(
        desk.text("#answer-verdict"),
        text::answer(&expected, &Reader::METRIC).verdict
    );
    desk.browser.wait_script(FITS).unwrap();
    (sheet, expected)
}

fn class(desk: &Desk, css: &str) -> String {
    let class = desk.browser.find(css).unwrap().attribute("class").unwrap();
    class.unwrap_or_default()
}

#[test]
fn the_strip_says_whether_the_alternator_survives() {
    let desk = Desk::open(Screen::Phone);
    let (_, safe) = boat(&desk, "alt_rated_a=60&reg_kind=external&way_kind=direct");
    assert!(safe.verdict.survives());
    assert_eq!(class(&desk, "#answer-verdict"), "verdict");
    let (_, burnt) = boat(
        &desk,
        "reg_kind=internal&way_kind=direct&alt_rated_a=120&bank_capacity_ah=600&space_outside_c=40",
    );
    assert!(!burnt.verdict.survives(), "{:?}", burnt.verdict);
    assert_eq!(class(&desk, "#answer-verdict"), "verdict harmed");
    desk.browser.shot("verdict").unwrap();
    desk.assert_quiet();
}

#[test]
fn several_runs_a_day_and_none_are_told_wherever_hours_stand() {
    let desk = Desk::open(Screen::Touch {
        width: 320,
        height: 640,
    });
    let (_, small) = boat(
        &desk,
        "reg_kind=external&way_kind=direct&bank_capacity_ah=50&reg_link=limits",
    );
    let runs = small.analyses.day.runs;
    assert!(runs > 1);
    let need = format!("in {runs} runs for {:.0} A·h", small.analyses.day.need_ah);
    assert_eq!(desk.text("#answer-need"), need);
    let day = desk.text("#figures-day");
    assert!(day.contains(&format!("{runs} runs")), "{day}");
    let (_, cold) = boat(&desk, "bank_temperature_c=-5");
    let trouble = cold.analyses.day.trouble.map(day_trouble).unwrap();
    assert_eq!(desk.text("#answer-time"), trouble);
    let day = desk.text("#figures-day");
    assert!(day.contains(trouble), "{day}");
    desk.browser.shot("cannot-be-charged").unwrap();
    desk.press("#arrangements > summary");
    let card = "#arrange-cards article:first-child dl";
    desk.browser.wait_text(card, trouble).unwrap();
    desk.assert_quiet();
}

#[test]
fn the_chart_marks_where_the_battery_disconnects() {
    let desk = Desk::open(Screen::Phone);
    boat(&desk, "alt_rated_a=60");
    assert!(desk.browser.find("#run-plot .mark-line.open").is_err());
    let (_, opens) = boat(
        &desk,
        "way_kind=direct&reg_kind=internal&bank_charge_limit_a=50",
    );
    assert!(opens.analyses.run.opening.is_some());
    desk.browser
        .wait_text("#run-lead", "stops the charging")
        .unwrap();
    // An upright line has no width to be seen by.
    desk.browser.find("#run-plot .mark-line.open").unwrap();
    desk.browser.shot("disconnects").unwrap();
    desk.assert_quiet();
}

#[test]
fn a_boat_charged_at_the_dock_has_its_hours_there() {
    let desk = Desk::open(Screen::Phone);
    let (sheet, _) = boat(&desk, "shore_rest=shore&way_kind=direct");
    desk.press("#year > summary");
    desk.browser.wait_for("#year-day").unwrap();
    let expected = year(&sheet);
    assert!(expected.at_dock);
    let january = "#year tbody tr:nth-child(1) > :nth-child(5)";
    let energy = format!("{:.0}", expected.months[0].shore_kwh);
    assert_eq!(desk.text(january), energy);
    desk.browser.wait_script(FITS).unwrap();
    desk.browser.shot("year-dock").unwrap();
    desk.assert_quiet();
}

#[test]
fn what_is_asked_follows_the_boat() {
    let desk = Desk::open(Screen::Desk);
    let shown = |css: &str| desk.browser.find(css).unwrap().shown().unwrap();
    let (volts, link) = ("#ask-alt_nominal_v", "#ask-reg_link");
    boat(&desk, "way_kind=direct&reg_kind=internal");
    assert!(!shown(volts) && !shown(link));
    desk.choose("#ask-reg_kind", "external");
    assert!(!shown(volts) && shown(link));
    desk.choose("#ask-bank_nominal_v", "24");
    assert!(shown(volts));
    desk.choose(volts, "24");
    desk.choose("#ask-bank_nominal_v", "12");
    // Once said it stays in sight.
    assert!(shown(volts));
    desk.assert_quiet();
}

#[test]
fn open_questions_lead_to_their_entry() {
    let desk = Desk::open(Screen::Phone);
    let (_, open) = boat(&desk, "reg_kind=external&way_kind=direct&alt_rated_a=60");
    let question: &OpenQuestion = open.questions.first().unwrap();
    let shown = desk.text("#open-questions li:first-child");
    assert!(
        shown.starts_with(text::question(question, &Reader::METRIC).as_str()),
        "{shown}"
    );
    desk.press("#open-questions li:first-child a");
    let entry = format!("#sheet-{}:focus", question.input().name());
    desk.browser.wait_for(&entry).unwrap();
    desk.assert_quiet();
}
