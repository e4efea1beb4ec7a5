//! "Fit it safely": cable and fuse, belt and shaft, what happens when the
//! battery disconnects under load, what to set, the first run. Each is a fold
//! with its caution, its results and the inputs it asks for.

mod bars;
mod belt;
mod cable;
mod commissioning;
mod figures;
mod load_dump;
mod print;
mod questions;
mod readings;
mod settings;

use ampwright_core::boat::WhichAlternator;
use ampwright_core::findings::Finding;
use leptos::prelude::*;

use crate::components::Fold;
use crate::sections::findings::{FindingList, said};
use crate::state::AppState;
use belt::BeltAndShaft;
use cable::CableAndFuse;
use commissioning::FirstRun;
use load_dump::LoadDump;
use settings::SettingsSheet;

/// The section.
#[component]
pub fn Installation() -> impl IntoView {
    view! {
        <section class="fit" aria-labelledby="fit-title">
            <h2 id="fit-title">"Fit it safely"</h2>
            <p class="lead">
                "For this boat as entered: which cable and fuse, whether the belt carries it, what happens when the battery disconnects under load, what to set, and how to try it out."
            </p>
            <Fold
                id="fit-cable"
                title="Cable and fuse"
                class="section"
                note="sizes, fuses, where they go"
            >
                <CableAndFuse />
            </Fold>
            <Fold
                id="fit-belt"
                title="Belt and shaft"
                class="section"
                note="what it carries and pulls at"
            >
                <BeltAndShaft />
            </Fold>
            <Fold
                id="fit-guard"
                title="Load dump"
                class="section"
                note="when the battery disconnects under load"
                printed=false
            >
                <LoadDump />
            </Fold>
            <Fold
                id="fit-settings"
                title="Settings sheet"
                class="section"
                note="what to set in each device"
            >
                <SettingsSheet />
            </Fold>
            <Fold id="fit-first" title="First run" class="section" note="a list to tick off">
                <FirstRun />
            </Fold>
        </section>
    }
}

/// Those of the warnings and notes that belong to a fold.
#[component]
fn FindingsHere(belongs: fn(&Finding) -> bool) -> impl IntoView {
    let state = AppState::expect();
    let found = Memo::new(move |_| {
        state.settled(|_, report| {
            let here = report.findings.iter().filter(|finding| belongs(finding));
            said(state, here)
        })
    });
    view! { <FindingList class="findings" found /> }
}

/// Which alternator is meant, where there are two.
fn alternator_heading(of_two: bool, alternator: WhichAlternator) -> Option<&'static str> {
    of_two.then_some(match alternator {
        WhichAlternator::First => "The alternator",
        WhichAlternator::Second => "The second alternator",
    })
}
