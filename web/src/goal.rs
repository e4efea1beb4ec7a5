//! The cheapest way to a goal: what may change is ticked, the search goes on
//! in pieces while the page stays alive, and the few plans that nothing beats
//! are told step by step.

use std::cell::RefCell;
use std::time::Duration;

use ampwright_core::boat::{Key, May, SectionId, Worksheet};
use ampwright_core::decision::goal_search::{Found, Plan, Search};
use ampwright_core::schema::{FieldType, Kind};
use ampwright_core::text;
use ampwright_core::units::{Reader, clock};
use leptos::prelude::*;
use leptos::web_sys::HtmlInputElement;
use wasm_bindgen::JsCast;

use crate::legacy::after;
use crate::legacy::{Section, Text, by_id, written};
use crate::money::money;
use crate::of::Of;
use crate::state::{AppState, count};
use crate::words::{escape, figure};
use crate::{field, own};

/// How long a piece of the search may hold up the page \[ms\].
const PIECE_MS: f64 = 12.0;

/// A search, and what came of the last one.
#[derive(Default)]
struct Looking {
    /// The part that is done of one that is on.
    share: Option<f64>,
    tried: usize,
    found: Option<Found>,
    /// Whether the worksheet has changed since.
    stale: bool,
    /// Counts searches: an earlier one is given up.
    turn: u32,
}

thread_local! {
    static LOOKING: RefCell<Looking> = RefCell::new(Looking::default());
}

/// The section.
pub const SECTION: Section = Section {
    paper: written(|| {
        let about = SectionId::goal;
        let rows: String = about
            .keys()
            .filter(|key| !is_lever(key.spec().kind))
            .map(|key| field::row("goal", key))
            .collect();
        let levers: String = about.keys().map(lever).collect();
        format!(
            r#"<section class="goal" id="goal" aria-labelledby="goal-title"><h2 id="goal-title">{}</h2>
<p class="lead">Say what you are after and what may be changed for it. Combinations of those changes are calculated with the real charging run, prices as above. None that does harm is ever a plan.</p>
<details class="finer" id="goal-fold"><summary>Look for it</summary>{rows}
<fieldset id="goal-levers"><legend>What may be changed</legend><div id="goal-list">{levers}</div></fieldset>
<p class="buttons"><button type="button" id="goal-look" data-click="goal-look">Look for the cheapest way</button>
<button type="button" id="goal-stop" class="hidden" data-click="goal-stop">Stop looking</button>
<span class="said" id="goal-progress" role="status"></span></p>
<div id="goal-found"></div></details></section>"#,
            about.title()
        )
    }),
    parts: &[
        ("goal-progress", Text::Own(progress)),
        (
            "goal-stop@class",
            Text::Own(|desk| {
                desk.aside.track();
                let on = LOOKING.with_borrow(|looking| looking.share.is_some());
                if on { "" } else { "hidden" }.to_string()
            }),
        ),
        ("goal-found", Text::Own(told)),
    ],
    acts: &[
        ("goal-may", |desk, tick, _| {
            let name = tick.get_attribute("data-of").unwrap_or_default();
            if let Some(Of::Input(key)) = Of::named(&name) {
                desk.edit(|sheet| {
                    let now = sheet.inputs.get(key);
                    let other = if now == May::Stay.to_value() {
                        May::Change
                    } else {
                        May::Stay
                    };
                    drop(sheet.state(key, other.to_value()));
                });
            }
        }),
        ("goal-look", |desk, _, _| {
            let search = desk.sheet.with_untracked(Search::new);
            let turn = LOOKING.with_borrow_mut(|looking| {
                looking.turn = looking.turn.wrapping_add(1);
                looking.share = Some(0.0);
                looking.tried = 0;
                looking.turn
            });
            count(desk.aside);
            go_on(desk, search, turn);
        }),
        ("goal-stop", |desk, _, _| {
            LOOKING.with_borrow_mut(|looking| {
                looking.turn = looking.turn.wrapping_add(1);
                looking.share = None;
            });
            count(desk.aside);
        }),
        ("goal-keep", |desk, button, _| {
            let at = button
                .get_attribute("data-at")
                .and_then(|at| at.parse::<usize>().ok());
            let plan =
                LOOKING.with_borrow(|looking| looking.found.as_ref()?.plans.get(at?).cloned());
            if let Some(plan) = plan {
                let mut arrangement = plan.arrangement;
                arrangement.name = format!("Plan {}", at.unwrap_or(0) + 1);
                own::add(desk, arrangement);
            }
        }),
    ],
    start: |desk| {
        desk.at_each_change(|desk| {
            LOOKING.with_borrow_mut(|looking| looking.stale = true);
            desk.sheet.with_untracked(tick);
        });
    },
};

/// Whether an input says what may be changed.
fn is_lever(kind: Kind) -> bool {
    matches!(kind, Kind::Choice { options, .. } if options.first() == May::OPTIONS.first())
}

/// What may be changed, to be ticked.
fn lever(key: Key) -> String {
    let (spec, name) = (key.spec(), key.name());
    if !is_lever(spec.kind) {
        return String::new();
    }
    let sheet = Worksheet::default();
    let [hidden, ticked] = [
        ("hidden", !key.applies(&sheet.inputs)),
        ("checked", sheet.inputs.get(key) != May::Stay.to_value()),
    ]
    .map(|(word, is)| if is { word } else { "" });
    format!(
        "<label class='tick {hidden}'><input type=checkbox id=goal-{name} data-change=goal-may data-of={name} {ticked}><span>{} <small>{}</small></span></label>",
        spec.label,
        escape(spec.help)
    )
}

/// Ticks what the worksheet says may be changed.
fn tick(sheet: &Worksheet) {
    for key in SectionId::goal.keys() {
        let Some(tick) = by_id(&format!("goal-{}", key.name())) else {
            continue;
        };
        if !is_lever(key.spec().kind) {
            continue;
        }
        let ticked = sheet.inputs.get(key) != May::Stay.to_value();
        tick.unchecked_ref::<HtmlInputElement>().set_checked(ticked);
        if let Some(label) = tick.parent_element() {
            let hidden = !key.applies(&sheet.inputs);
            label.set_class_name(if hidden { "tick hidden" } else { "tick" });
        }
    }
}

/// A piece of the search, and the next one when the page has had its turn.
fn go_on(desk: AppState, mut search: Search, turn: u32) {
    if LOOKING.with_borrow(|looking| looking.turn) != turn {
        return;
    }
    let clock = window().performance();
    let now = || clock.as_ref().map_or(f64::MAX, |clock| clock.now());
    let end = now() + PIECE_MS;
    loop {
        search.step(4);
        if search.done() || now() >= end {
            break;
        }
    }
    let done = search.done();
    let shown = LOOKING.with_borrow_mut(|looking| {
        let before = looking.tried / 200;
        looking.tried = search.tried();
        looking.share = (!done).then(|| search.share());
        if done {
            looking.found = Some(search.found());
            looking.stale = false;
        }
        done || looking.tried / 200 != before
    });
    if shown {
        count(desk.aside);
    }
    if !done {
        after(Duration::ZERO, Box::new(move || go_on(desk, search, turn)));
    }
}

fn progress(desk: AppState) -> String {
    desk.aside.track();
    desk.track_later();
    LOOKING.with_borrow(|looking| match (looking.share, &looking.found) {
        (Some(_), _) => format!("{} combinations reckoned…", looking.tried),
        (None, Some(_)) if looking.stale => {
            "The worksheet has changed since: look again.".to_string()
        }
        _ => String::new(),
    })
}

fn told(desk: AppState) -> String {
    desk.aside.track();
    desk.track_later();
    LOOKING.with_borrow(|looking| match &looking.found {
        Some(found) => desk.sheet.with_untracked(|sheet| plans(sheet, found)),
        None => String::new(),
    })
}

fn plans(sheet: &Worksheet, found: &Found) -> String {
    let said = text::goal_search(found, &Reader::METRIC);
    let mut text = String::new();
    for sentence in said {
        text += &format!("<p class=told>{}</p>", escape(&sentence));
    }
    text += &format!(
        "<p class=about>{} of {} combinations calculated; {} left out because they would overheat or overload a part, or disconnect the bank.",
        found.tried, found.combinations, found.harmful
    );
    if found.plans.is_empty() {
        return text + "</p>";
    }
    text += " No other beats these on money and hours:</p><ol class=plans>";
    for (at, plan) in found.plans.iter().enumerate() {
        text += &one(sheet, at, plan, found.best == Some(at));
    }
    text + "</ol>"
}

fn one(sheet: &Worksheet, at: usize, plan: &Plan, best: bool) -> String {
    let (class, flag) = match (best, plan.meets) {
        (true, _) => (
            "best",
            "<small class=best>this one meets the goal best</small>",
        ),
        (_, true) => ("", "<small>meets the goal</small>"),
        _ => ("short", "<small>falls short of the goal</small>"),
    };
    let mut text = format!(
        "<li class='{class}'><p><b>{}</b>: engine <b>{}</b> a day, {} A hot, {} L a year {flag}</p>",
        money(sheet, plan.bought),
        clock(60.0 * plan.hours_day),
        figure(plan.hot_a, 0),
        figure(plan.fuel_year_l, 0)
    );
    if plan.steps.is_empty() {
        text += "<p class=margin>Nothing is changed.</p>";
    } else {
        text += "<ol class=steps>";
        for step in &plan.steps {
            text += &format!(
                "<li>{}, for {}</li>",
                escape(&step.sentence()),
                money(sheet, step.price)
            );
        }
        text += &format!(
            "</ol><button type=button class=plain id=goal-keep-{at} data-click=goal-keep data-at={at}>Put it beside the arrangements</button>"
        );
    }
    text + "</li>"
}
