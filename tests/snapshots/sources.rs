//! What a link and a file of version 2 with other sources, a generator and a bank
//! of some age mean, for ever.
//!
//! `version2/sources.txt` holds a title, a link as it was sent and the same
//! worksheet as a file. It is never edited, only added to. The figures beneath are
//! REGRESSION VALUES OF OUR OWN OUTPUT.

use ampwright_core::report;

use crate::version2::frozen;

const FROZEN: &str = include_str!("version2/sources.txt");

#[test]
fn frozen_sources_give_what_they_gave() {
    let sources = frozen(FROZEN);
    assert_eq!(sources.len(), 3);
    let told: Vec<String> = sources
        .iter()
        .map(|(title, sheet)| {
            let analyses = report(sheet).analyses;
            let (energy, generator) = (&analyses.energy, &analyses.generator);
            let generator = generator.map_or(String::new(), |generator| {
                let (hours, fuel_l) = (generator.hours, generator.fuel_l);
                format!(", generator {hours:.2?} h, {fuel_l:.2?} L")
            });
            format!(
                "{title}: {:.1} A·h left of {:.1}, the bank holds {:.1}{generator}",
                energy.rest_ah, energy.anchor.use_ah, energy.bank_ah
            )
        })
        .collect();
    insta::assert_snapshot!(told.join("\n"));
}
