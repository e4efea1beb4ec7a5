//! How sure the answer is: reckoned in small pieces while nobody types, so that
//! the page never stands still, and shown as a range.

use std::time::Duration;

use ampwright_core::sure::{Certainty, Range, Reading, Sure};
use leptos::prelude::*;
use leptos::web_sys::HtmlElement;
use wasm_bindgen::JsCast;

use crate::chart::drawing::{Anchor, Drawing};
use crate::chart::scale::Scale;
use crate::desk::Desk;
use crate::words::{axis_time, figure};

/// How long typing must rest before the reckoning begins.
const REST: Duration = Duration::from_millis(400);
/// How long a piece of it may hold up the page \[ms\].
const PIECE_MS: f64 = 10.0;

/// The reckoning as the parts of the page see it.
#[derive(Clone, Copy)]
pub struct Surety {
    /// What came of it last.
    known: RwSignal<Option<Certainty>>,
    /// How many runs are done of one that is on; none when `known` holds.
    under_way: RwSignal<Option<usize>>,
    /// Counts edits: a reckoning of an earlier one is given up.
    turn: StoredValue<u32>,
}

impl Surety {
    /// Follows the open worksheet.
    pub fn of(desk: Desk) -> Surety {
        let surety = Surety {
            known: RwSignal::new(None),
            under_way: RwSignal::new(Some(0)),
            turn: StoredValue::new(0),
        };
        Effect::new(move |_| {
            desk.sheet.track();
            let turn = surety.turn.get_value().wrapping_add(1);
            surety.turn.set_value(turn);
            surety.under_way.set(Some(0));
            set_timeout(move || surety.begin(desk, turn), REST);
        });
        surety
    }

    fn begin(self, desk: Desk, turn: u32) {
        if self.turn.get_value() == turn {
            self.go_on(desk.sheet.with_untracked(Sure::new), turn);
        }
    }

    fn go_on(self, mut sure: Sure, turn: u32) {
        if self.turn.get_value() != turn {
            return;
        }
        if sure.done() {
            self.known.set(Some(sure.certainty()));
            self.under_way.set(None);
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
        let shown = sure.runs() & !63;
        if self.under_way.get_untracked() != Some(shown) {
            self.under_way.set(Some(shown));
        }
        set_timeout(move || self.go_on(sure, turn), Duration::ZERO);
    }

    /// The range of the engine time in a few words, once it is reckoned.
    pub fn engine_range(self) -> Option<String> {
        match self.under_way.get() {
            Some(_) => None,
            None => self
                .known
                .with(|known| known.as_ref().map(|c| c.engine_h.words.clone())),
        }
    }
}

/// Range, what it comes from, and which reading would narrow it.
#[component]
pub fn HowSure() -> impl IntoView {
    let surety = expect_context::<Surety>();
    let progress = move || match surety.under_way.get() {
        Some(runs) => format!("Reckoning: {runs} of {}.", Sure::RUNS),
        None => String::new(),
    };
    view! {
        <section class="sure" id="sure" aria-labelledby="sure-title">
            <h2 id="sure-title">"How sure is this?"</h2>
            <p class="lead">
                {format!("The same boat reckoned {} times, every figure moved within what it may be. Eight times in ten the answer lies in these ranges. ", Sure::RUNS)}
                <span id="sure-progress">{progress}</span>
            </p>
            <div class:stale=move || surety.under_way.get().is_some()>
                {move || surety.known.with(|known| known.as_ref().map(|c| told(c).into_any()))}
            </div>
            <p class="about">"A guess moves within its plausible range, a figure off a plate by 5 % or 5 °C, one you measured by 2 % or 2 °C. What you decide, such as a set-point, stays put. What the formulas themselves get wrong comes on top."</p>
        </section>
    }
}

fn told(certainty: &Certainty) -> impl IntoView + use<> {
    let (engine, hot) = (&certainty.engine_h, &certainty.hot_a);
    // Where the engine time is sure, the amperes may still not be.
    let asked = if engine.readings.is_empty() {
        hot
    } else {
        engine
    };
    let readings = asked.readings.iter();
    view! {
        <p class="told">{engine.sentence.clone()}</p>
        {drawing(engine, 60.0, true)}
        <p class="told">{hot.sentence.clone()}</p>
        {drawing(hot, 1.0, false)}
        <h3>"Which reading would narrow it most"</h3>
        {asked.readings.is_empty().then(|| view! { <p class="lead">"None: no single figure moves it."</p> })}
        <ol class="readings">
            {readings.map(|reading| row(reading, asked).into_any()).collect_view()}
        </ol>
    }
}

fn row(reading: &Reading, asked: &Range) -> impl IntoView + use<> {
    let name = reading.key.name();
    let mut worth = format!("{:.0} % of the spread.", reading.share_pct);
    if reading.width_words != asked.width_words {
        worth += &format!(
            " Once read, a range of about {} instead of {}.",
            reading.width_words, asked.width_words
        );
    }
    let label = format!("go there: {}", reading.what);
    view! {
        <li>
            <div>
                <p><b>{reading.what}</b> " " <span class="said">{reading.section}</span></p>
                <button type="button" class="plain" data-key=name.clone() aria-label=label on:click=move |_| go(&name)>"go there"</button>
            </div>
            <p>{worth}</p>
            <p class="margin">{reading.how}</p>
        </li>
    }
}

/// The range as a bar on a rule, with the answer as it stands.
fn drawing(range: &Range, scale: f64, time: bool) -> impl IntoView + use<> {
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
    view! { <svg viewBox="0 0 360 34" aria-hidden="true" inner_html=drawing.finish()></svg> }
}

/// Opens what lies over a field of the worksheet, and puts the cursor there.
/// The address is left alone: it is for links.
fn go(name: &str) {
    let Some(field) = document().get_element_by_id(&format!("sheet-{name}")) else {
        return;
    };
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
    if let Ok(field) = field.dyn_into::<HtmlElement>() {
        let _ = field.focus();
    }
}
