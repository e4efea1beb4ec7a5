//! What a link and a file of version 2 with legs of the day mean, for ever.
//!
//! `version2/legs.txt` holds a title, a link as it was sent and the same worksheet
//! as a file. It is never edited, only added to. The hours and amperes beneath are
//! REGRESSION VALUES OF OUR OWN OUTPUT, to a hundredth.

use ampwright_core::exchange::open_link;
use ampwright_core::report;

use crate::version2::frozen;

const FROZEN: &str = include_str!("version2/legs.txt");

#[test]
fn links_with_legs_mean_what_they_meant() {
    assert_eq!(frozen(FROZEN).len(), 2);
}

#[test]
fn a_frozen_day_gives_what_it_gave() {
    let block = FROZEN.split("\n\n").next().expect("a block");
    let link = block
        .lines()
        .find(|line| line.starts_with("v="))
        .expect("a link");
    let sheet = open_link(link).expect("a link").sheet;
    let day = report(&sheet).analyses.legs.expect("legs");
    let told: Vec<String> = day
        .legs
        .iter()
        .map(|leg| format!("{:.1} min, {:.1} A·h", leg.minutes, leg.bank_ah))
        .collect();
    insta::assert_snapshot!(told.join("\n"));
}
