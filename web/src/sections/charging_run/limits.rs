//! The band that shows what limits when.

use ampwright_core::simulation::Limit;
use ampwright_core::text::words;
use leptos::prelude::*;

use crate::components::chart::{Block, Scale, Words};
use crate::state::AppState;

/// How wide a letter of its words is, on the wide side.
const LETTER: f64 = 5.6;

/// A stretch of the band.
#[derive(Clone, PartialEq)]
struct Stretch {
    from: f64,
    width: f64,
    limit: Limit,
}

/// One stretch for each limit, its words in it where there is room.
#[component]
pub fn LimitBand(
    /// Top and bottom.
    band: (f64, f64),
    time: Memo<Scale>,
) -> impl IntoView {
    let state = AppState::expect();
    let (top, bottom) = band;
    let stretches = Memo::new(move |_| {
        let time = time.get();
        state.settled(|_, report| {
            let stretches = report.analyses.run.stretches.iter();
            stretches
                .map(|stretch| {
                    let from = time.place(stretch.from_min);
                    Stretch {
                        from,
                        width: (time.place(stretch.to_min) - from).max(0.5),
                        limit: stretch.limit,
                    }
                })
                .collect::<Vec<_>>()
        })
    });
    let drawn = move |stretch: Stretch| {
        let words = [
            words::limit(stretch.limit),
            words::limit_in_brief(stretch.limit),
        ];
        let has_room = |word: &&str| stretch.width > LETTER * word.len() as f64 + LETTER;
        let middle = stretch.from + 0.5 * stretch.width;
        let word = words.into_iter().find(has_room).map(|word| {
            view! {
                <Words class="limit-word" at=(middle, bottom - 5.5) says=word />
            }
        });
        view! {
            <Block
                class=format!("limit {}", class_of(stretch.limit))
                at=(stretch.from, top)
                size=(stretch.width, bottom - top)
            />
            {word}
        }
    };
    move || stretches.get().into_iter().map(drawn).collect_view()
}

/// The style a limit is shown in.
const fn class_of(limit: Limit) -> &'static str {
    match limit {
        Limit::AlternatorOutput | Limit::WrongVoltage => "output",
        Limit::CurrentCap
        | Limit::Ramp
        | Limit::LowSpeed
        | Limit::FieldCap
        | Limit::Manoeuvring => "cap",
        Limit::Temperature => "heat",
        Limit::BankLimit | Limit::FrozenBank => "bank",
        Limit::ChargeVoltage => "voltage",
        Limit::Converter => "converter",
    }
}
