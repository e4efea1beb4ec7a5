//! "Fit it safely": cable and fuse, belt and shaft, what happens when the bank
//! disconnects. Each is a fold with its caution, its results and the inputs it
//! asks for; nothing of it is reckoned while it is closed.

mod belt;
mod cable;
mod guard;
mod table;

use ampwright_core::Report;
use ampwright_core::fields::Place;
use ampwright_core::report::CAUTIONS;
use ampwright_core::worksheet::SectionId;

use crate::paper::{Section, Text, written};
use crate::{field, findings};

/// A fold of the chapter.
struct Fold {
    /// What its ids begin with, after `fit-`.
    name: &'static str,
    title: &'static str,
    /// What there is to find in it.
    about: &'static str,
    /// Which caution stands at its head.
    caution: &'static str,
    /// Whose inputs it asks for.
    asks: &'static [SectionId],
}

const FOLDS: [Fold; 3] = [
    Fold {
        name: "cable",
        title: "Cable and fuse",
        about: "sizes, fuses, where they go",
        caution: "Short circuits",
        asks: &[SectionId::cable],
    },
    Fold {
        name: "belt",
        title: "Belt and shaft",
        about: "what it carries and pulls at",
        caution: "Hot and turning parts",
        asks: &[SectionId::belt, SectionId::belt2],
    },
    Fold {
        name: "guard",
        title: "When the bank disconnects",
        about: "what volts are left",
        caution: "Disconnect under load",
        asks: &[SectionId::guard],
    },
];

/// The chapter.
pub const SECTION: Section = Section {
    paper: written(|| {
        let mut text = r#"<section class="fit" aria-labelledby="fit-title"><h2 id="fit-title">Fit it safely</h2><p class="lead">For this boat as it stands in the worksheet: which cable and fuse, whether the belt carries it, and what happens when the bank lets go.</p>"#.to_string();
        for fold in &FOLDS {
            text += &paper(fold);
        }
        text + "</section>"
    }),
    parts: &[
        (
            "fit-cable-told",
            Text::Own(|desk| desk.tell_open("fit-cable", cable::told)),
        ),
        (
            "fit-cable-more",
            Text::Own(|desk| desk.tell_open("fit-cable", cable::more)),
        ),
        (
            "fit-belt-told",
            Text::Own(|desk| desk.tell_open("fit-belt", belt::told)),
        ),
        (
            "fit-belt-more",
            Text::Own(|desk| desk.tell_open("fit-belt", belt::more)),
        ),
        (
            "fit-guard-told",
            Text::Own(|desk| desk.tell_open("fit-guard", guard::told)),
        ),
        (
            "fit-guard-more",
            Text::Own(|desk| desk.tell_open("fit-guard", guard::more)),
        ),
        (
            "fit-asks-belt2@class",
            Text::Late(|sheet, _| match sheet.inputs.as_second() {
                Some(_) => String::new(),
                None => "hidden".to_string(),
            }),
        ),
    ],
    acts: &[],
    start: |_| (),
};

fn paper(fold: &Fold) -> String {
    let Fold {
        name, title, about, ..
    } = fold;
    let mut text = format!(
        "<details class=section id=fit-{name} data-toggle=fold><summary><span class=title>{title}</span><span class=leader></span><span class=said>{about}</span></summary>"
    );
    for caution in CAUTIONS.iter().filter(|c| c.about == fold.caution) {
        text += &format!(
            "<p class=caution><b>{}.</b> {}</p>",
            caution.about, caution.text
        );
    }
    text += &format!("<div id=fit-{name}-told></div>");
    for section in fold.asks {
        let heading = match section {
            SectionId::belt2 => section.title(),
            _ => "Your answers",
        };
        text += &format!(
            "<div id=fit-asks-{}><h3>{heading}</h3>{}</div>",
            section.prefix(),
            rows(*section)
        );
    }
    text + &format!("<div id=fit-{name}-more></div></details>")
}

/// The inputs of a section, the less usual ones in a fold of their own; a
/// belt's are too few for that.
fn rows(section: SectionId) -> String {
    let [mut plain, mut deep] = [const { String::new() }; 2];
    let folds = !matches!(section, SectionId::belt | SectionId::belt2);
    for key in section.keys() {
        let row = field::row("fit", key);
        if folds && key.spec().place == Place::Deep {
            deep += &row;
        } else {
            plain += &row;
        }
    }
    if folds {
        plain += &format!("<details class=finer><summary>Finer points</summary>{deep}</details>");
    }
    plain
}

/// Those of the report's findings that belong to a fold.
fn found(report: &Report, keys: &[&str]) -> String {
    let mut list = String::new();
    for finding in &report.findings {
        if keys.contains(&finding.key) {
            list += &findings::item(finding);
        }
    }
    format!("<ul class=findings>{list}</ul>")
}

/// Which machine is meant, where there are two.
fn heading(many: bool, second: bool) -> &'static str {
    match (many, second) {
        (false, _) => "",
        (true, false) => "<h3>The alternator</h3>",
        (true, true) => "<h3>The second alternator</h3>",
    }
}
