//! What links and files of version 2 mean, for ever, in the parts that version 1 has
//! not.
//!
//! `version2/` holds blocks of a title, a link as it was sent and the same worksheet as
//! a file. They are never edited, only added to. The figures beneath are REGRESSION
//! VALUES OF OUR OWN OUTPUT, to a tenth.

use ampwright_core::exchange::{open_link, read_json, to_link};
use ampwright_core::{Worksheet, report};

const PARTS: &str = include_str!("version2/parts.txt");

/// The worksheets of frozen blocks with their titles, each once it is known that link
/// and file mean the same and the link is still written so.
pub fn frozen(blocks: &str) -> Vec<(&str, Worksheet)> {
    let mut all = Vec::new();
    for block in blocks.split("\n\n") {
        let mut lines = block.lines().filter(|line| !line.starts_with("##"));
        let [title, link, file] = std::array::from_fn(|_| lines.next().expect("title, link, file"));
        let opened = open_link(link).expect(title);
        assert!(opened.whole, "{title}");
        assert_eq!(opened.remarks, [], "{title}");
        let reading = read_json(file).expect(title);
        assert_eq!(reading.remarks, [], "{title}");
        assert_eq!(opened.sheet, reading.sheet, "{title}");
        assert_eq!(to_link(&opened.sheet), link, "{title}");
        all.push((title, opened.sheet));
    }
    all
}

#[test]
fn parts_mean_what_they_meant() {
    let parts = frozen(PARTS);
    assert_eq!(parts.len(), 12);
    let told: Vec<String> = parts
        .iter()
        .map(|(title, sheet)| {
            let analyses = report(sheet).analyses;
            let run = &analyses.run;
            format!(
                "{title}: {:.1} A hot, {:.1} min, winding {:.1} °C, air after stopping {:.1} °C, {} runs of cable",
                analyses.output.hot_a,
                run.minutes,
                run.alternators[0].peak.winding_c,
                run.soak.air_peak_c,
                analyses.cables.runs.len(),
            )
        })
        .collect();
    insta::assert_snapshot!(told.join("\n"));
}
