//! Words that the page no longer uses: one term for one thing, in today's
//! English.

use ampwright_tests::driver::Screen;

use crate::desk::{Desk, lay_out, unfold};

/// What stood in their place is in use now.
const RETIRED: [&str; 18] = [
    "reckon",
    "machine",
    "appetite",
    "held by heat",
    "held by volts",
    "night look",
    "day look",
    "strike this",
    "finer points",
    "quay",
    "fold-back",
    "foldback",
    "slow start",
    "clamp",
    "straight to",
    "converter",
    "never below",
    "lest",
];

/// Everything the page shows, folds and glossary included, of two boats.
#[test]
fn nothing_shown_uses_a_retired_word() {
    let desk = Desk::open(Screen::Desk);
    let mut found = Vec::new();
    for boat in [
        "",
        "#v=2&two_role=house&reg_kind=external&way_kind=direct&end",
    ] {
        desk.browser
            .go(&format!("{}{boat}", desk.site.url()))
            .unwrap();
        desk.browser.wait_for(crate::desk::OPENED).unwrap();
        unfold(&desk.browser);
        lay_out(&desk.browser);
        let text = desk.text("body").to_lowercase();
        assert!(text.len() > 20_000, "{}", text.len());
        for word in RETIRED {
            for (at, _) in text.match_indices(word) {
                let starts = text[..at]
                    .chars()
                    .next_back()
                    .is_none_or(|before| !before.is_alphabetic());
                if starts {
                    let line = text[..at].rfind('\n').map_or(0, |line| line + 1);
                    let end = text[at..].find('\n').map_or(text.len(), |end| at + end);
                    found.push(format!("{word}: {}", &text[line..end]));
                }
            }
        }
    }
    found.sort();
    found.dedup();
    assert!(found.is_empty(), "{}", found.join("\n"));
}
