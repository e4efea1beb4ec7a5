//! The answer, in sight all the time.

use ampwright_core::Report;
use ampwright_core::findings::Severity;
use ampwright_core::text::{self, answer, sentence};
use ampwright_core::units::Reader;
use leptos::prelude::*;

use crate::draft;
use crate::legacy::{Section, Text, by_id, written};
use crate::sections::findings::class_of as class;
use crate::state::AppState;
use crate::sure;
use crate::words::escape;
use crate::working::{opened, opener};

/// Engine time, hot amps, what limits, and how many findings.
pub const SECTION: Section = Section {
    // A blank keeps the line while the range is reckoned.
    paper: written(|| {
        r#"<section class="answer" id="answer" aria-label="The answer"><dl>
<div><dt>Engine, a day</dt><dd class="big" id="answer-time"></dd><dd class="small" id="answer-range">&nbsp;</dd><dd class="small" id="answer-need"></dd></div>
<div><dt>Alternator, hot</dt><dd class="big" id="answer-amps"></dd><dd class="small" id="answer-cold"></dd></div>
<div><dt>Limited by</dt><dd class="big word" id="answer-limit"></dd><dd class="small" id="answer-tally"></dd></div>
</dl><p id="answer-verdict"></p><div class="under"><p id="answer-left-out"></p><div id="answer-working"></div></div><p class="unseen" role="status" id="answer-whole"></p></section>"#
            .to_string()
    }),
    parts: &[
        (
            "answer-time",
            Text::Own(|desk| {
                figure(desk, |report| {
                    let time = answer(report, &Reader::METRIC).engine_time;
                    (String::new(), "day.engine_hours", time, "")
                })
            }),
        ),
        (
            "answer-range",
            Text::Own(|desk| {
                desk.report.track();
                // Where no engine runs there is no range of its hours.
                let runs = desk.look(&|_, report| {
                    let hours = report.analyses.day.engine_hours.unwrap_or_default();
                    ["", "runs"][usize::from(hours > 0.0)].to_string()
                });
                let range = sure::engine_range(desk).filter(|_| !runs.is_empty());
                range.unwrap_or("&nbsp;".into())
            }),
        ),
        (
            "answer-need",
            Text::Own(|desk| {
                figure(desk, |report| {
                    let need = format!("{:.0} A·h", report.analyses.day.need_ah);
                    (runs(report.analyses.day.runs), "day.need_ah", need, "")
                })
            }),
        ),
        (
            "answer-amps",
            Text::Own(|desk| {
                figure(desk, |report| {
                    let amps = answer(report, &Reader::METRIC).hot_amps;
                    (String::new(), "machine.hot_a", amps, "")
                })
            }),
        ),
        (
            "answer-cold",
            Text::Own(|desk| {
                figure(desk, |report| {
                    let cold = format!("{:.0} A", report.analyses.machine.full_cold_a);
                    ("of ".to_string(), "machine.full_cold_a", cold, " cold")
                })
            }),
        ),
        (
            "answer-limit",
            Text::Soon(|_, report| {
                text::words::limit(report.analyses.machine.hot_limit).to_string()
            }),
        ),
        ("answer-tally", Text::Soon(|_, report| tally(report))),
        (
            "answer-time@class",
            Text::Soon(|_, report| {
                // Words where hours would stand are longer than those.
                let words = report.analyses.day.trouble.is_some();
                ["big", "big word"][usize::from(words)].to_string()
            }),
        ),
        (
            "answer-verdict",
            Text::Soon(|_, report| answer(report, &Reader::METRIC).verdict),
        ),
        (
            "answer-verdict@class",
            Text::Soon(|_, report| {
                let harmed = !report.verdict.survives();
                ["verdict", "verdict harmed"][usize::from(harmed)].to_string()
            }),
        ),
        ("answer-left-out", Text::Own(draft::left_out)),
        ("answer-working", Text::Own(|desk| opened(desk, "answer"))),
        (
            "answer-whole",
            Text::Soon(|sheet, report| escape(&sentence(sheet, report, &Reader::METRIC))),
        ),
    ],
    acts: &[
        ("findings", |_, _, event| {
            // Goes there without touching the address, which is for links.
            event.prevent_default();
            if let Some(findings) = by_id("findings") {
                findings.scroll_into_view();
            }
        }),
        ("to-entry", draft::go_to_entry),
    ],
    start: |_| (),
};

/// A figure that opens its working: words before it, its name, it, and words
/// behind it.
type Shown = (String, &'static str, String, &'static str);

/// What stands before the ampere-hours of the day.
fn runs(runs: u32) -> String {
    match runs {
        0 | 1 => "for ".to_string(),
        runs => format!("in {runs} runs for "),
    }
}

fn figure(desk: AppState, of: fn(&Report) -> Shown) -> String {
    desk.aside.track();
    desk.report.track();
    desk.look(&|_, report| {
        let (before, id, words, behind) = of(report);
        format!("{before}{}{behind}", opener("answer", id, &words, ""))
    })
}

fn tally(report: &Report) -> String {
    let mut said = String::new();
    for severity in Severity::ALL {
        let found = report.findings.iter();
        let count = found
            .filter(|finding| finding.severity() == severity)
            .count();
        if count > 0 {
            let (class, words) = (class(severity), text::words::tally(severity, count));
            said += &format!(
                "<a class='tally {class}' href='#findings' data-click=findings>{words}</a>"
            );
        }
    }
    said
}
