//! What a link and a file of version 2 with other sources, a generator and a bank
//! of some age mean, for ever.
//!
//! `version2/sources.txt` holds a title, a link as it was sent and the same
//! worksheet as a file. It is never edited, only added to. The figures beneath are
//! REGRESSION VALUES OF OUR OWN OUTPUT.

use ampwright_core::exchange::{open_link, read_json, to_link};
use ampwright_core::{Worksheet, report};

const FROZEN: &str = include_str!("version2/sources.txt");

/// Title, link and file of each block.
fn blocks() -> impl Iterator<Item = [&'static str; 3]> {
    FROZEN.split("\n\n").map(|block| {
        let mut lines = block.lines().filter(|line| !line.starts_with("##"));
        std::array::from_fn(|_| lines.next().expect("title, link, file"))
    })
}

fn opened(link: &str) -> Worksheet {
    open_link(link).expect("a link").sheet
}

#[test]
fn links_with_other_sources_mean_what_they_meant() {
    for [title, link, file] in blocks() {
        let opened = open_link(link).expect(title);
        assert!(opened.whole, "{title}");
        assert_eq!(opened.remarks, [], "{title}");
        let reading = read_json(file).expect(title);
        assert_eq!(reading.remarks, [], "{title}");
        assert_eq!(opened.sheet, reading.sheet, "{title}");
        assert_eq!(to_link(&opened.sheet), link, "{title}");
    }
    assert_eq!(blocks().count(), 3);
}

#[test]
fn frozen_sources_give_what_they_gave() {
    let told: Vec<String> = blocks()
        .map(|[title, link, _]| {
            let analyses = report(&opened(link)).analyses;
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
