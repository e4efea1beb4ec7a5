//! "Fit it safely": cable and fuse, belt and shaft, what happens when the bank
//! disconnects, what to set, the first run. Each is a fold with its caution, its
//! results and the inputs it asks for; nothing of it is reckoned while it is
//! closed.

mod belt;
mod cable;
mod first;
mod guard;
mod print;
mod settings;
mod table;

use ampwright_core::boat::SectionId;
use ampwright_core::findings::Finding;
use ampwright_core::guidance::{CautionTopic, cautions_at};
use ampwright_core::schema::Place;
use ampwright_core::text::cautions;
use ampwright_core::units::Reader;
use ampwright_core::{Report, Worksheet};
use leptos::web_sys::HtmlInputElement;
use wasm_bindgen::JsCast;

use crate::field;
use crate::legacy::finding;
use crate::legacy::{Section, Text, by_id, focus, listen, written};

/// A fold of the chapter.
struct Fold {
    /// What its ids begin with, after `fit-`.
    name: &'static str,
    title: &'static str,
    /// What there is to find in it.
    about: &'static str,
    /// Whose inputs it asks for.
    asks: &'static [SectionId],
    /// What its button says that prints it.
    print: &'static str,
}

const FOLDS: [Fold; 5] = [
    Fold {
        name: "cable",
        title: "Cable and fuse",
        about: "sizes, fuses, where they go",
        asks: &[SectionId::cable],
        print: "",
    },
    Fold {
        name: "belt",
        title: "Belt and shaft",
        about: "what it carries and pulls at",
        asks: &[SectionId::belt, SectionId::belt2],
        print: "",
    },
    Fold {
        name: "guard",
        title: "When the bank disconnects",
        about: "what survives",
        asks: &[SectionId::guard],
        print: "",
    },
    Fold {
        name: "settings",
        title: "Settings sheet",
        about: "what to set in each device",
        asks: &[],
        print: "Print this sheet",
    },
    Fold {
        name: "first",
        title: "First run",
        about: "a list to tick off",
        asks: &[],
        print: "Print the list",
    },
];

/// The chapter.
pub const SECTION: Section = Section {
    paper: written(|| {
        let mut text = r#"<section class="fit" aria-labelledby="fit-title"><h2 id="fit-title">Fit it safely</h2><p class="lead">For this boat as it stands in the worksheet: which cable and fuse, whether the belt carries it, what happens when the bank lets go, what to set, and how to try it out.</p>"#.to_string();
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
            "fit-settings-told",
            Text::Own(|desk| desk.tell_open("fit-settings", settings::told)),
        ),
        (
            "fit-first-told",
            Text::Own(|desk| desk.tell_open("fit-first", first::told)),
        ),
        (
            "fit-cable-caution",
            Text::Late(|sheet, _| caution(sheet, CautionTopic::Cable)),
        ),
        (
            "fit-belt-caution",
            Text::Late(|sheet, _| caution(sheet, CautionTopic::Belt)),
        ),
        (
            "fit-guard-caution",
            Text::Late(|sheet, _| caution(sheet, CautionTopic::Disconnect)),
        ),
        (
            "fit-settings-caution",
            Text::Late(|sheet, _| caution(sheet, CautionTopic::Rules)),
        ),
        (
            "fit-first-caution",
            Text::Late(|sheet, _| caution(sheet, CautionTopic::Cable)),
        ),
        (
            "fit-asks-belt2@class",
            Text::Late(|sheet, _| match sheet.inputs.as_second() {
                Some(_) => String::new(),
                None => "hidden".to_string(),
            }),
        ),
    ],
    acts: &[
        ("print", |desk, button, _| print::print(desk, button)),
        ("first-tick", |desk, entry, _| {
            let step = entry.get_attribute("data-step").unwrap_or_default();
            let done = entry.unchecked_ref::<HtmlInputElement>().checked();
            desk.edit(|sheet| {
                sheet.tick(&step, done);
            });
        }),
        ("to-trial", |_, _, _| {
            if let Some(trial) = by_id("trial") {
                trial.scroll_into_view();
            }
            focus("trial-log");
        }),
    ],
    start: |desk| listen(desk, "afterprint", |_, _| print::set_class("")),
};

/// The caution that comes first for a place; none if it does not concern the
/// boat.
pub fn caution(sheet: &Worksheet, place: CautionTopic) -> String {
    match cautions_at(&sheet.inputs, place).next() {
        Some(caution) => format!(
            "<b>{}.</b> {}",
            cautions::about(caution.code),
            cautions::sentence(caution.code, &Reader::METRIC)
        ),
        None => String::new(),
    }
}

fn paper(fold: &Fold) -> String {
    let Fold {
        name, title, about, ..
    } = fold;
    let mut text = format!(
        "<details class=section id=fit-{name} data-toggle=fold><summary><span class=title>{title}</span><span class=leader></span><span class=said>{about}</span></summary><p class=caution id=fit-{name}-caution></p>"
    );
    if !fold.print.is_empty() {
        text += &format!(
            "<p class=buttons><button type=button id=print-{name} data-click=print data-fold={name}>{}</button></p><div class=head id=fit-{name}-head></div>",
            fold.print
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
        if folds && key.spec().place == Place::Advanced {
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
fn found(report: &Report, belongs: fn(&Finding) -> bool) -> String {
    let mut list = String::new();
    for finding in report.findings.iter().filter(|finding| belongs(finding)) {
        list += &finding::item(finding);
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
