//! How sure the answer is: reckoned in small pieces while nobody types, so that
//! the page never stands still, and shown as a range.

use std::cell::RefCell;
use std::time::Duration;

use ampwright_core::decision::uncertainty::{Certainty, Range, Reading, Uncertainty};
use leptos::prelude::*;

use crate::chart::drawing::{Anchor, Drawing};
use crate::chart::scale::Scale;
use crate::legacy::after;
use crate::legacy::{Section, Text, by_id, focus, written};
use crate::state::{AppState, count};
use crate::words::{axis_time, escape, figure};

/// How long typing must rest before the reckoning begins.
const REST: Duration = Duration::from_millis(400);
/// How long a piece of it may hold up the page \[ms\].
const PIECE_MS: f64 = 10.0;

/// What is known, and how far a reckoning is.
#[derive(Default)]
struct Surety {
    /// What came of the last one that was done.
    certainty: Option<Certainty>,
    /// How many runs are done of one that is on.
    under_way: Option<usize>,
    /// Counts edits: a reckoning of an earlier one is given up.
    turn: u32,
}

thread_local! {
    static SURETY: RefCell<Surety> = RefCell::new(Surety::default());
}

/// Range, what it comes from, and which reading would narrow it.
pub const SECTION: Section = Section {
    paper: written(|| {
        format!(
            r#"<section class="sure" id="sure" aria-labelledby="sure-title"><h2 id="sure-title">How sure is this?</h2>
<p class="lead">The same boat reckoned {0} times, every figure moved within what it may be. Eight times in ten the answer lies in these ranges. <span id="sure-progress">Reckoning: 0 of {0}.</span></p>
<div id="sure-told"></div>
<p class="about">A guess moves within its plausible range, a figure off a plate by 5 % or 5 K, one you measured by 2 % or 2 K. What you decide, such as a set-point, stays put. What the formulas themselves get wrong comes on top.</p></section>"#,
            Uncertainty::RUNS
        )
    }),
    parts: &[
        (
            "sure-progress",
            Text::Own(|desk| match under_way(desk) {
                Some(runs) => format!("Reckoning: {runs} of {}.", Uncertainty::RUNS),
                None => String::new(),
            }),
        ),
        (
            "sure-told",
            Text::Own(|desk| {
                desk.surety.track();
                SURETY.with_borrow(|surety| surety.certainty.as_ref().map_or(String::new(), told))
            }),
        ),
        (
            "sure-told@class",
            Text::Own(|desk| match under_way(desk) {
                Some(_) => "stale".to_string(),
                None => String::new(),
            }),
        ),
    ],
    acts: &[("go", |_, button, _| {
        go(&button.get_attribute("data-key").unwrap_or_default())
    })],
    start: |desk| desk.at_each_change(begin_soon),
};

/// Gives up what is under way, and begins when typing rests.
fn begin_soon(desk: AppState) {
    let turn = SURETY.with_borrow_mut(|surety| {
        surety.turn = surety.turn.wrapping_add(1);
        surety.turn
    });
    show(desk, Some(0));
    let begin = move || {
        if is_turn(turn) {
            go_on(desk, desk.sheet.with_untracked(Uncertainty::new), turn);
        }
    };
    after(REST, Box::new(begin));
}

fn under_way(desk: AppState) -> Option<usize> {
    desk.surety.track();
    SURETY.with_borrow(|surety| surety.under_way)
}

/// The range of the engine time in a few words, once it is reckoned.
pub fn engine_range(desk: AppState) -> Option<String> {
    match under_way(desk) {
        Some(_) => None,
        None => Some(certain(&|certainty| {
            certainty.map_or(String::new(), |all| all.engine_h.words.clone())
        })),
    }
}

/// A text about how sure the answer is, as far as that is reckoned for it.
pub fn certain(text: &dyn Fn(Option<&Certainty>) -> String) -> String {
    SURETY.with_borrow(|surety| {
        let done = surety.certainty.as_ref();
        text(done.filter(|_| surety.under_way.is_none()))
    })
}

fn is_turn(turn: u32) -> bool {
    SURETY.with_borrow(|surety| surety.turn == turn)
}

fn show(desk: AppState, runs: Option<usize>) {
    let was = SURETY.with_borrow_mut(|surety| std::mem::replace(&mut surety.under_way, runs));
    if was != runs {
        count(desk.surety);
    }
}

fn go_on(desk: AppState, mut sure: Uncertainty, turn: u32) {
    if !is_turn(turn) {
        return;
    }
    if sure.done() {
        let certainty = sure.certainty();
        SURETY.with_borrow_mut(|surety| {
            surety.certainty = Some(certainty);
        });
        show(desk, None);
        return;
    }
    let clock = window().performance();
    let now = || clock.as_ref().map_or(f64::MAX, |clock| clock.now());
    let end = now() + PIECE_MS;
    loop {
        sure.step(1);
        if sure.done() || now() >= end {
            break;
        }
    }
    // Each showing costs the page a layout: one for every 64 runs will do.
    show(desk, Some(sure.runs() & !63));
    after(Duration::ZERO, Box::new(move || go_on(desk, sure, turn)));
}

fn told(certainty: &Certainty) -> String {
    let (engine, hot) = (&certainty.engine_h, &certainty.hot_a);
    // Where the engine time is sure, the amperes may still not be.
    let asked = if engine.readings.is_empty() {
        hot
    } else {
        engine
    };
    let mut text = format!(
        "<p class=told>{}</p>{}<p class=told>{}</p>{}<h3>Which reading would narrow it most</h3>",
        escape(&engine.sentence),
        drawing(engine, 60.0, true),
        escape(&hot.sentence),
        drawing(hot, 1.0, false)
    );
    if asked.readings.is_empty() {
        text += "<p class=lead>None: no single figure moves it.</p>";
    }
    text += "<ol class=readings>";
    for reading in &asked.readings {
        text += &row(reading, asked);
    }
    text + "</ol>"
}

fn row(reading: &Reading, asked: &Range) -> String {
    let name = reading.key.name();
    let mut worth = format!("{:.0} % of the spread.", reading.share_pct);
    if reading.width_words != asked.width_words {
        worth += &format!(
            " Once read, a range of about {} instead of {}.",
            reading.width_words, asked.width_words
        );
    }
    let what = escape(reading.what);
    format!(
        "<li><div><p><b>{what}</b> <span class=said>{}</span></p><button type=button class=plain id=go-{name} data-click=go data-key={name} aria-label='go there: {what}'>go there</button></div><p>{worth}</p><p class=margin>{}</p></li>",
        reading.section,
        crate::field::how(&name)
    )
}

/// The range as a bar on a rule, with the answer as it stands.
fn drawing(range: &Range, scale: f64, time: bool) -> String {
    const ENDS: (f64, f64) = (8.0, 352.0);
    const LINE: f64 = 12.0;
    let scaled = |figure: Option<f64>| figure.map(|figure| figure * scale);
    let (low, high) = (scaled(range.low), scaled(range.high));
    let stands = scaled(range.stands);
    let most = [low, high, stands]
        .into_iter()
        .flatten()
        .fold(0.0, f64::max);
    let axis = Scale::new(0.0, (1.15 * most).max(10.0), ENDS.0, ENDS.1);
    // "Never" lies beyond the paper.
    let place = move |figure: Option<f64>| figure.map_or(ENDS.1, |figure| axis.place(figure));
    let (from, to) = (place(low), place(high));
    let ticks = if time {
        axis.time_ticks(7.0)
    } else {
        axis.ticks(6.0)
    };
    let words = move |tick: f64| match time {
        true => axis_time(tick),
        false => format!("{} A", figure(tick, 0)),
    };
    let mut drawing = Drawing::default();
    drawing.line("edge", (ENDS.0, LINE), (ENDS.1, LINE));
    for tick in ticks {
        let x = axis.place(tick);
        let anchor = match tick == 0.0 {
            true => Anchor::Start,
            false => Anchor::Middle,
        };
        drawing.line("edge", (x, LINE), (x, LINE + 4.0));
        drawing.word("tick", (x, LINE + 16.0), anchor, &words(tick));
    }
    drawing.area("range", (from, LINE - 5.0), ((to - from).max(1.0), 5.0));
    let stands = place(stands);
    drawing.line("stands", (stands, LINE - 10.0), (stands, LINE));
    format!(
        "<svg viewBox='0 0 360 34' aria-hidden=true>{}</svg>",
        drawing.finish()
    )
}

/// Opens what lies over a field of the worksheet, and puts the cursor there.
/// The address is left alone: it is for links.
pub fn go(name: &str) {
    let id = format!("sheet-{name}");
    let Some(field) = by_id(&id) else { return };
    let mut around = field.parent_element();
    while let Some(element) = around {
        if element.tag_name() == "DETAILS" {
            let _ = element.set_attribute("open", "");
        }
        around = element.parent_element();
    }
    if let Ok(Some(row)) = field.closest(".row") {
        row.scroll_into_view();
    }
    focus(&id);
}
