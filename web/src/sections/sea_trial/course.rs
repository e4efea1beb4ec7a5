//! How the trial goes: in words, and as a drawing on which the readings land.

use ampwright_core::decision::calibration::columns::Column;
use ampwright_core::decision::calibration::outlook::{calculated_case_c, outlook};
use ampwright_core::text::sea_trial;
use leptos::prelude::*;

use super::drawing::TrialDrawing;
use super::stop::limits;
use crate::state::{AppState, Trial};

/// Both of them.
#[component]
pub fn Course() -> impl IntoView {
    let state = AppState::expect();
    let trial = Trial::expect();
    let limits = limits(state);
    let minute = Memo::new(move |_| trial.elapsed_min().map(f64::floor));
    let words = Memo::new(move |_| {
        let (limits, reader) = (limits.get(), state.reader.get());
        trial.with_log(|log| {
            let with_case = log.rows.iter().filter_map(|row| {
                let case_c = row.get(Column::Case)?;
                Some((row.minute, case_c))
            });
            let (last, case_c) = with_case.max_by(|one, other| one.0.total_cmp(&other.0))?;
            let next_c = limits.next_c(case_c);
            let found = outlook(&log.rows, next_c);
            let since_min = minute.get().map_or(0.0, |now| (now - last).max(0.0));
            let goes = sea_trial::outlook(&found, &limits, (case_c, next_c), since_min, &reader);
            let calculated =
                state.settled(|_, report| calculated_case_c(&report.analyses.run, last));
            let against = calculated
                .map(|calculated_c| sea_trial::against_calculation(case_c, calculated_c, &reader));
            Some((goes, against))
        })
    });
    let goes = Signal::derive(move || words.get().map(|(goes, _)| goes));
    let against = Signal::derive(move || words.get().and_then(|(_, against)| against));
    view! {
        <div class="course">
            <p class="outlook" id="trial-outlook" role="status">
                {goes}
            </p>
            <p class="margin" id="trial-against">
                {against}
            </p>
            <TrialDrawing limits />
        </div>
    }
}
