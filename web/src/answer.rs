//! The answer, in sight all the time.

use ampwright_core::report::{Severity, sentence};
use leptos::prelude::*;

use crate::desk::Desk;
use crate::sure::Surety;

/// Engine time, hot amps, what limits, and how many findings.
#[component]
pub fn AnswerStrip() -> impl IntoView {
    let desk = expect_context::<Desk>();
    let surety = expect_context::<Surety>();
    let answer = Memo::new(move |_| desk.report.with(|report| report.answer()));
    let cold = move || {
        desk.report
            .with(|report| format!("of {:.0} A cold", report.machine.full_cold_a))
    };
    let need = move || {
        desk.report
            .with(|report| format!("to put back {:.0} A·h", report.day.need_ah))
    };
    let short = move || desk.report.with(|report| report.machine.hot_limit.short());
    let whole = move || {
        desk.sheet
            .with(|sheet| desk.report.with(|report| sentence(sheet, report)))
    };
    let tally = move || {
        desk.report.with(|report| {
            Severity::ALL.map(|severity| {
                let count = report
                    .findings
                    .iter()
                    .filter(|finding| finding.severity == severity)
                    .count();
                (severity, count)
            })
        })
    };
    view! {
        <section class="answer" id="answer" aria-label="The answer">
            <dl>
                <div>
                    <dt>"Engine, a day"</dt>
                    <dd class="big" id="answer-time">{move || answer.with(|a| a.engine_time.clone())}</dd>
                    // A blank keeps the line while the range is reckoned.
                    <dd class="small" id="answer-range">{move || surety.engine_range().unwrap_or("\u{a0}".to_string())}</dd>
                    <dd class="small">{need}</dd>
                </div>
                <div>
                    <dt>"Alternator, hot"</dt>
                    <dd class="big" id="answer-amps">{move || answer.with(|a| a.hot_amps.clone())}</dd>
                    <dd class="small">{cold}</dd>
                </div>
                <div>
                    <dt>"Held by"</dt>
                    <dd class="big word" id="answer-limit">{short}</dd>
                    <dd class="small" id="answer-tally">
                        {move || tally().into_iter().filter(|(_, count)| *count > 0).map(|(severity, count)| view! {
                            <a class=format!("tally {}", severity.word()) href="#findings" on:click=to_findings>
                                {format!("{count} {}", severity.word())}
                            </a>
                        }).collect_view()}
                    </dd>
                </div>
            </dl>
            <p class="unseen" role="status">{whole}</p>
        </section>
    }
}

/// Goes there without touching the address, which is for links.
fn to_findings(event: leptos::ev::MouseEvent) {
    event.prevent_default();
    if let Some(findings) = document().get_element_by_id("findings") {
        findings.scroll_into_view();
    }
}
