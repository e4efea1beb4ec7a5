//! How often the answers work out what flows at a moment, which is nearly all
//! of their work. The bounds are a quarter above what it takes now, regression
//! values of our own, so that a change which doubles the work fails here on
//! every machine alike.

use crate::Worksheet;
use crate::boat::demo;
use crate::decision::arrangements::compare;
use crate::decision::goal_search::Search;
use crate::decision::uncertainty::Uncertainty;
use crate::exchange::open_link;
use crate::report::report;
use crate::simulation::counted::flows_in;

/// Holds a count below a bound, and above half of it, so that the bound follows
/// when the work becomes less.
#[track_caller]
fn hold(flows: u64, most: u64) {
    assert!(flows <= most, "{flows} flows, {most} at most");
    assert!(flows > most / 2, "{flows} flows: lower the bound of {most}");
}

fn boat(link: &str) -> Worksheet {
    let opened = open_link(&format!("v=2&{link}&end")).expect("a link");
    assert!(opened.remarks.is_empty(), "{:?}", opened.remarks);
    opened.sheet
}

/// What a keystroke takes before the answer stands on the page.
#[test]
fn one_report() {
    hold(flows_in(|| report(&Worksheet::default())), 1100);
    hold(flows_in(|| report(&demo())), 2080);
}

/// … and with the lead bank beside it, which is asked for after the answer.
#[test]
fn one_report_with_its_lead_bank() {
    let all = |sheet: &Worksheet| flows_in(|| report(sheet).analyses.lead.report());
    hold(all(&Worksheet::default()), 2600);
    hold(all(&demo()), 3550);
}

#[test]
fn one_combination_of_the_goal_search() {
    const MANY: u64 = 200;
    let mut search = Search::new(&demo());
    let flows = flows_in(|| search.step(MANY as usize));
    assert_eq!(search.tried() as u64, MANY);
    hold(flows / MANY, 740);
}

#[test]
fn one_run_of_how_sure_it_is() {
    const MANY: u64 = 64;
    let mut sure = Uncertainty::new(&demo());
    hold(flows_in(|| sure.step(MANY as usize)) / MANY, 970);
}

#[test]
fn all_arrangements() {
    hold(flows_in(|| compare(&demo())), 121_000);
}

/// Each leg is one run more, and no leg is worked out again for every other.
#[test]
fn a_day_of_legs_grows_with_its_legs() {
    let flows = |legs: usize| {
        let leg = "&leg=Under+way~2200~30~anyway~0.5";
        let sheet = boat(&format!(
            "way_kind=direct&reg_kind=external{}",
            leg.repeat(legs)
        ));
        assert_eq!(sheet.legs.len(), legs);
        flows_in(|| report(&sheet))
    };
    let (none, three, twelve) = (flows(0), flows(3), flows(12));
    let (a_few, many) = (three - none, twelve - none);
    assert!(many < 5 * a_few, "{none} {three} {twelve}");
}
