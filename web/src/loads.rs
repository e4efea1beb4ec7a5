//! The list of loads: in the questions and in the worksheet.

use std::cell::RefCell;

use ampwright_core::Report;
use ampwright_core::boat::Section as _;
use ampwright_core::boat::{Basis, Key, Load, LoadRow, typical_loads};
use ampwright_core::schema::FieldType;
use leptos::prelude::*;
use leptos::web_sys::Element;

use crate::desk::Desk;
use crate::draft;
use crate::field;
use crate::form::{self, Row};
use crate::of::{Of, Shown};
use crate::paper::{Act, by_id, set_value, value, write};
use crate::words::figure;

/// The places of the page that show the list.
const PLACES: [&str; 2] = ["ask", "sheet"];

/// What stands on the page.
#[derive(Default)]
struct List {
    /// How many loads; none where there is no list.
    count: Option<usize>,
    drawn: bool,
    rows: Vec<Row>,
    /// Name and share of the day of each load.
    titles: Vec<[String; 2]>,
    total: String,
}

thread_local! {
    static LIST: RefCell<List> = RefCell::new(List::default());
}

/// What its buttons and names do.
pub const ACTS: &[Act] = &[
    ("add-up", |desk, _, _| {
        desk.edit(|sheet| {
            if let Some(key) = Key::named("daily_basis") {
                drop(sheet.state(key, Basis::Listed.to_value()));
            }
            if sheet.loads.is_empty() {
                sheet.loads = typical_loads();
            }
        });
    }),
    ("load-add", |desk, _, _| {
        desk.edit(|sheet| {
            sheet.loads.push(Load {
                name: "New load".into(),
                ..Load::default()
            });
        });
    }),
    ("load-usual", |desk, _, _| {
        desk.edit(|sheet| sheet.loads.extend(typical_loads()));
    }),
    ("load-name", |desk, entry, _| {
        let (at, name) = (at(entry), value(entry));
        desk.edit(|sheet| {
            if let Some(load) = sheet.loads.get_mut(at) {
                load.name = name;
            }
        });
    }),
    ("load-out", |desk, button, _| {
        let at = at(button);
        draft::close_gap(desk, at, place_of, |of| match of {
            Of::Load(at, column) => Of::Load(at.saturating_sub(1), column),
            other => other,
        });
        // What lies open below it moves up with its load.
        for fold in PLACES.map(|place| by_id(&format!("{place}-load-{at}"))) {
            fold.inspect(Element::remove);
        }
        desk.edit(|sheet| {
            if at < sheet.loads.len() {
                sheet.loads.remove(at);
            }
        });
    }),
];

/// The load that an entry belongs to.
fn place_of(of: Of) -> Option<usize> {
    match of {
        Of::Load(at, _) => Some(at),
        _ => None,
    }
}

fn at(element: &Element) -> usize {
    let at = element.get_attribute("data-at");
    at.and_then(|at| at.parse().ok()).unwrap_or(usize::MAX)
}

/// Brings the lists up to date; `afresh` when another worksheet lies open.
pub fn refresh(desk: Desk, afresh: bool) {
    let count = desk.sheet.with_untracked(|sheet| {
        (sheet.inputs.daily.basis == Basis::Listed).then_some(sheet.loads.len())
    });
    LIST.with_borrow_mut(|list| {
        if !list.drawn || afresh || list.count != count {
            *list = List {
                count,
                drawn: true,
                ..List::default()
            };
            for place in PLACES {
                let open = if afresh { Vec::new() } else { opened(place) };
                write(&format!("{place}-loads"), &paper(place, count, list));
                for at in open {
                    write(&format!("{place}-load-{at}@open"), "open");
                }
            }
        }
        form::follow(desk, &mut list.rows, false);
        desk.report.with_untracked(|report| {
            desk.sheet.with_untracked(|sheet| {
                let loads = sheet.loads.get(..list.titles.len()).unwrap_or_default();
                for (at, (load, was)) in loads.iter().zip(&mut list.titles).enumerate() {
                    let now = [load.name.clone(), day(report, at)];
                    if *was != now {
                        for place in PLACES {
                            title(place, at, &now);
                        }
                        *was = now;
                    }
                }
            });
            let now = total(report);
            if list.total != now {
                for place in PLACES {
                    write(&format!("{place}-total"), &now);
                }
                list.total = now;
            }
        });
    });
}

/// Which loads lie open, by their place in the list.
fn opened(place: &str) -> Vec<usize> {
    let fold = |at: usize| {
        let css = format!("#{place}-loads .load:nth-of-type({})", at + 1);
        document().query_selector(&css).ok().flatten()
    };
    (0..)
        .map_while(|at| fold(at).map(|fold| (at, fold)))
        .filter(|(_, fold)| fold.has_attribute("open"))
        .map(|(at, _)| at)
        .collect()
}

fn title(place: &str, at: usize, [name, day]: &[String; 2]) {
    for (part, text) in [("title", name), ("day", day)] {
        if let Some(element) = by_id(&format!("{place}-load-{at}-{part}")) {
            element.set_text_content(Some(text));
        }
    }
    if let Some(entry) = by_id(&format!("{place}-load-{at}-name")) {
        set_value(&entry, name);
    }
}

/// Where the list will stand, as a fresh worksheet has it.
pub fn place(place: &str) -> String {
    let text = paper(place, None, &mut List::default());
    format!("<div id={place}-loads>{text}</div>")
}

/// Stand for the id and the number of a load in the form of one.
const ID: &str = "~id~";
const AT: &str = "~at~";

/// The form of a load, written once into the page to be copied from there.
pub fn form() -> String {
    let mut text = format!(
        "<template id=load-form><details class=load id={ID}><summary><span class=title id={ID}-title></span><span class=leader></span><span class=said id={ID}-day></span></summary><div class=cell><label for={ID}-name>Name</label><input id={ID}-name type=text maxlength=80 autocomplete=off data-input=load-name data-at={AT}></div><div class=cells>"
    );
    for (column, field) in LoadRow::FIELDS.iter().enumerate() {
        let id = format!("{ID}-{}", field.name);
        text += &format!(
            "<div class=cell>{}<p class=margin id={id}-help>{}</p></div>",
            field::entry(&field.spec, &id, &format!("{AT}.{column}"), &Shown::bare()),
            field.spec.help
        );
    }
    text + &format!(
        "</div><p class=buttons><button type=button data-click=load-out data-at={AT}>Strike this load out</button></p></details></template>"
    )
}

/// The list as text, or the button that begins one.
fn paper(place: &str, count: Option<usize>, list: &mut List) -> String {
    let Some(count) = count else {
        return match place {
            "ask" => {
                "<button type=button id=add-it-up data-click=add-up>Help me add it up</button>"
            }
            _ => "",
        }
        .to_string();
    };
    list.titles = vec![[String::new(), String::new()]; count];
    let form = by_id("load-form").map_or(String::new(), |form| form.inner_html());
    let mut text = String::from("<div class=loads>");
    for at in 0..count {
        let id = format!("{place}-load-{at}");
        text += &form.replace(ID, &id).replace(AT, &at.to_string());
        for (column, field) in LoadRow::FIELDS.iter().enumerate() {
            let id = format!("{id}-{}", field.name);
            list.rows.push(Row::new(id, Of::Load(at, column)));
        }
    }
    let usual = if count == 0 { "" } else { "hidden" };
    text + &format!(
        "<p class=total id={place}-total></p><p class=buttons><button type=button id={place}-load-add data-click=load-add>Add a load</button> <button type=button class='{usual}' data-click=load-usual>Start from a usual list</button></p></div>"
    )
}

fn day(report: &Report, at: usize) -> String {
    report
        .analyses
        .energy
        .rows
        .get(at)
        .map_or(String::new(), |row| {
            let most = row.anchor_wh.max(row.under_way_wh);
            format!("{} W·h", figure(most, 0))
        })
}

fn total(report: &Report) -> String {
    let energy = &report.analyses.energy;
    format!(
        "At anchor {} W·h, {} A·h; under way {} W·h, {} A·h.",
        figure(energy.anchor.use_wh, 0),
        figure(energy.anchor.use_ah, 0),
        figure(energy.under_way.use_wh, 0),
        figure(energy.under_way.use_ah, 0),
    )
}
