//! The same boat set up in other ways, side by side: a table on a wide screen,
//! cards to swipe on a narrow one. Worked out only while they lie open, once
//! typing rests.

mod cards;
mod costs;
mod custom;
mod price_chart;
mod prices;
mod rows;
mod table;

use std::sync::Arc;
use std::time::Duration;

use ampwright_core::decision::arrangements::{Comparison, LeftOut, compare};
use ampwright_core::guidance::CautionTopic;
use ampwright_core::text::arrangements::{basis, not_proposed};
use ampwright_core::units::Reader;
use leptos::prelude::*;

use crate::components::{Caution, Fold};
use crate::state::AppState;
use cards::Cards;
use custom::CustomArrangements;
pub use custom::add;
use price_chart::PriceChart;
use prices::Prices;
use rows::judged_rows;
use table::Table;

/// What comes of each arrangement; none until it is first worked out.
type Compared = ReadSignal<Option<Arc<Comparison>>>;

/// How long typing must rest before they are worked out anew.
const REST: Duration = Duration::from_millis(300);

/// The section.
#[component]
pub fn Arrangements() -> impl IntoView {
    view! {
        <section class="arrange" id="arrange" aria-labelledby="arrange-title">
            <h2 id="arrange-title">"Which arrangement, and what to buy first"</h2>
            <p class="lead">
                "The same boat set up in other ways, each calculated the same way. Two alternators in one space heat each other."
            </p>
            <Caution topic=CautionTopic::Exhaust />
            <Fold id="arrangements" title="Compare" printed=true>
                <SideBySide />
                <CustomArrangements />
                <Fold id="arrange-prices" title="Prices and what an hour costs">
                    <Prices />
                </Fold>
                <p class="about">
                    "Every price is a round figure of our own until you put in yours. Berth fees are not counted."
                </p>
            </Fold>
        </section>
    }
}

/// What comes of each arrangement, once that is worked out.
#[component]
fn SideBySide() -> impl IntoView {
    let state = AppState::expect();
    let compared = state.at_rest(REST, compare);
    move || {
        let all = compared.get()?;
        let reader = state.reader.get();
        let Comparison { outcomes, left_out } = &*all;
        let rows = judged_rows(outcomes, &reader);
        let of_what = outcomes.first().map(|today| basis(today, &reader));
        Some(view! {
            <p class="about">{of_what}</p>
            <div id="arrange-table">
                <Table outcomes rows=&rows />
            </div>
            <div id="arrange-left-out">
                <NotProposed left_out reader=&reader />
            </div>
            <div class="chart" id="arrange-chart">
                <PriceChart outcomes reader=&reader />
            </div>
            <Cards outcomes rows=&rows reader=&reader compared />
        })
    }
}

/// Usual arrangements that are not proposed, and why.
#[component]
fn NotProposed<'a>(left_out: &'a [LeftOut], reader: &'a Reader) -> impl IntoView + use<> {
    let one = |(names, why): (String, String)| {
        view! {
            <li>
                <b>{names}</b>
                ": "
                {why}
            </li>
        }
    };
    let all = not_proposed(left_out, reader);
    (!all.is_empty()).then(|| {
        view! {
            <p class="about">"Not proposed, because it would not be safe:"</p>
            <ul>{all.into_iter().map(one).collect_view()}</ul>
        }
    })
}

/// The letter of an arrangement, by its place.
fn letter(at: usize) -> char {
    char::from(b'A' + at.min(25) as u8)
}
