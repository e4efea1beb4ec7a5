//! Warnings and notes, and the usual cautions.

use ampwright_core::findings::{Finding, OpenQuestion, Severity};
use ampwright_core::guidance::CAUTIONS;
use ampwright_core::text;
use ampwright_core::text::cautions;
use ampwright_core::units::Reader;

use crate::paper::{Section, Text, written};
use crate::words::escape;

/// Findings, worst first.
pub const SECTION: Section = Section {
    paper: written(|| {
        r#"<section class="findings" id="findings" aria-labelledby="findings-title"><h2 id="findings-title">Warnings and notes</h2>
<p class="lead hidden" id="findings-none">Nothing stands out in these figures.</p><ul id="findings-list"></ul><div id="open-questions"></div></section>"#
            .to_string()
    }),
    parts: &[
        (
            "findings-none@class",
            Text::Soon(|_, report| match report.findings.is_empty() {
                true => "lead".to_string(),
                false => "lead hidden".to_string(),
            }),
        ),
        (
            "findings-list",
            Text::Soon(|_, report| list(&report.findings)),
        ),
        (
            "open-questions",
            Text::Late(|_, report| questions(&report.questions)),
        ),
    ],
    acts: &[],
    start: |_| (),
};

/// What nobody has answered yet, with the way to its entry.
fn questions(open: &[OpenQuestion]) -> String {
    if open.is_empty() {
        return String::new();
    }
    let mut text = String::from("<h3>Still to find out</h3><ul class=ask-once>");
    for question in open {
        let input = question.input().name();
        text += &format!(
            "<li>{} <a href='#sheet-{input}' data-click=to-entry data-entry=sheet-{input}>Enter it</a></li>",
            escape(&text::question(question, &Reader::METRIC))
        );
    }
    text + "</ul>"
}

fn list(findings: &[Finding]) -> String {
    let mut list = String::new();
    for finding in findings {
        list += &item(finding);
    }
    list
}

/// One of them as an item of a list.
pub fn item(finding: &Finding) -> String {
    let word = text::words::severity(finding.severity());
    let class = class(finding.severity());
    let text = escape(&text::findings::sentence(finding, &Reader::METRIC));
    format!("<li class={class}><span class=severity>{word}</span><span>{text}</span></li>")
}

/// The style a severity is shown in.
pub const fn class(severity: Severity) -> &'static str {
    match severity {
        Severity::Danger => "danger",
        Severity::Fix => "fix",
        Severity::Note => "note",
    }
}

/// Cautions that hold whatever the figures say.
pub const CAUTIONS_LIST: Section = Section::still(|| {
    let mut text = r#"<section class="cautions" aria-labelledby="cautions-title"><h2 id="cautions-title">Cautions</h2><dl>"#.to_string();
    for caution in CAUTIONS {
        text += &format!(
            "<dt>{}</dt><dd>{}</dd>",
            cautions::about(caution.code),
            cautions::sentence(caution.code, &Reader::METRIC)
        );
    }
    text + "</dl></section>"
});
