//! What is read off the run at a moment, and the slider that chooses it.

use ampwright_core::analysis::Moment;
use ampwright_core::schema::parse_number;
use ampwright_core::text::words;
use ampwright_core::units::Quantity;
use ampwright_core::units::quantity::{amperes, celsius, kilowatts_of, minutes, percent, volts};
use leptos::ev::KeyboardEvent;
use leptos::prelude::*;

use crate::components::explanation::{Explanation, Opener};
use crate::state::{AppState, ExplainedAt};

/// A figure of a moment: what it is, its name in the report, and the figure.
type Figure = (&'static str, &'static str, fn(&Moment) -> Quantity);

static FIGURES: [Figure; 9] = [
    ("alternator", "moment.alternator_a", |m| {
        amperes(m.alternator_a)
    }),
    ("into the bank", "moment.bank_a", |m| amperes(m.bank_a)),
    ("at the bank", "moment.bank_v", |m| volts(m.bank_v).to(2)),
    ("charge", "moment.charge_pct", |m| percent(m.charge_pct)),
    ("winding", "moment.winding_c", |m| {
        celsius(m.alternators[0].winding_c)
    }),
    ("rectifier", "moment.rectifier_c", |m| {
        celsius(m.alternators[0].rectifier_c)
    }),
    ("case", "moment.case_c", |m| {
        celsius(m.alternators[0].case_c)
    }),
    ("air", "moment.air_c", |m| celsius(m.air_c)),
    ("shaft", "moment.shaft_w", |m| kilowatts_of(m.shaft_w).to(2)),
];

/// Chooses the moment. Arrow keys go from moment to moment.
#[component]
pub fn ReadingSlider() -> impl IntoView {
    let state = AppState::expect();
    let place = Signal::derive(move || (state.reading.get() * 100.0).to_string());
    let step = move |event: KeyboardEvent| {
        let by = match event.key().as_str() {
            "ArrowRight" | "ArrowUp" => 1,
            "ArrowLeft" | "ArrowDown" => -1,
            _ => return,
        };
        event.prevent_default();
        state.step_reading(by);
    };
    view! {
        <label class="reading-label" for="reading">
            "Time into the run"
        </label>
        <input
            id="reading"
            type="range"
            min="0"
            max="100"
            step="any"
            value=place
            prop:value=place
            aria-valuetext=Signal::derive(move || state.moment().map(|moment| state.show(minutes(moment.minute))))
            on:input:target=move |event| {
                if let Some(percent) = parse_number(&event.target().value()) {
                    state.reading.set(percent / 100.0);
                }
            }
            on:keydown=step
        />
    }
}

/// The figures of the moment, each of which opens its explanation.
#[component]
pub fn Reading() -> impl IntoView {
    let state = AppState::expect();
    let moment = Memo::new(move |_| state.moment());
    let time = Signal::derive(move || {
        moment
            .get()
            .map(|moment| state.show(minutes(moment.minute)))
    });
    let limit = Signal::derive(move || {
        moment
            .get()
            .map(|moment| words::limit(moment.limit).to_string())
    });
    let figure = |(what, id, of): &'static Figure| {
        let words = Signal::derive(move || {
            let figure = moment.get().map(|moment| state.show(of(&moment)));
            figure.unwrap_or_default()
        });
        view! {
            <div>
                <dt>{*what}</dt>
                <dd>
                    <Opener at=ExplainedAt::Reading id=*id words />
                </dd>
            </div>
        }
    };
    view! {
        <dl class="reading" id="reading-values" class:hidden=Signal::derive(move || moment.get().is_none())>
            <div>
                <dt>"after"</dt>
                <dd>{time}</dd>
            </div>
            {FIGURES.iter().map(figure).collect_view()}
            <div>
                <dt>"limited by"</dt>
                <dd>{limit}</dd>
            </div>
        </dl>
        <div id="reading-working">
            <Explanation at=ExplainedAt::Reading />
        </div>
    }
}
