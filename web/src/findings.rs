//! What to mind, and the usual cautions.

use ampwright_core::report::CAUTIONS;
use leptos::prelude::*;

use crate::desk::Desk;

/// Findings, worst first.
#[component]
pub fn Findings() -> impl IntoView {
    let desk = expect_context::<Desk>();
    let findings = Memo::new(move |_| desk.report.with(|report| report.findings.clone()));
    view! {
        <section class="findings" id="findings" aria-labelledby="findings-title">
            <h2 id="findings-title">"What to mind"</h2>
            {move || {
                let findings = findings.get();
                if findings.is_empty() {
                    view! { <p class="lead">"Nothing stands out in these figures."</p> }.into_any()
                } else {
                    view! {
                        <ul>
                            {findings.into_iter().map(|finding| view! {
                                <li class=finding.severity.word()>
                                    <span class="severity">{finding.severity.word()}</span>
                                    <span>{finding.text}</span>
                                </li>
                            }).collect_view()}
                        </ul>
                    }.into_any()
                }
            }}
        </section>
    }
}

/// Cautions that hold whatever the figures say.
#[component]
pub fn Cautions() -> impl IntoView {
    view! {
        <section class="cautions" aria-labelledby="cautions-title">
            <h2 id="cautions-title">"Cautions"</h2>
            <dl>
                {CAUTIONS.iter().map(|caution| view! {
                    <dt>{caution.about}</dt>
                    <dd>{caution.text}</dd>
                }).collect_view()}
            </dl>
        </section>
    }
}
