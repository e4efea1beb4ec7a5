//! What to mind, and the usual cautions.

use ampwright_core::report::{CAUTIONS, Finding};
use leptos::prelude::*;

use crate::desk::Desk;
use crate::words::escape;

/// Findings, worst first.
#[component]
pub fn Findings() -> impl IntoView {
    let desk = expect_context::<Desk>();
    let findings = Memo::new(move |_| desk.report.with(|report| report.findings.clone()));
    view! {
        <section class="findings" id="findings" aria-labelledby="findings-title">
            <h2 id="findings-title">"What to mind"</h2>
            <p class="lead" class:hidden=move || findings.with(|found| !found.is_empty())>"Nothing stands out in these figures."</p>
            <ul inner_html=move || findings.with(|found| list(found))></ul>
        </section>
    }
}

fn list(findings: &[Finding]) -> String {
    findings
        .iter()
        .map(|finding| {
            let word = finding.severity.word();
            let text = escape(&finding.text);
            format!("<li class={word}><span class=severity>{word}</span><span>{text}</span></li>")
        })
        .collect()
}

/// Cautions that hold whatever the figures say.
#[component]
pub fn Cautions() -> impl IntoView {
    let cautions: String = CAUTIONS
        .iter()
        .map(|caution| format!("<dt>{}</dt><dd>{}</dd>", caution.about, caution.text))
        .collect();
    view! {
        <section class="cautions" aria-labelledby="cautions-title">
            <h2 id="cautions-title">"Cautions"</h2>
            <dl inner_html=cautions></dl>
        </section>
    }
}
