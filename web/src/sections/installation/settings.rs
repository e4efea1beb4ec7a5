//! The settings sheet on screen and in print.

use ampwright_core::guidance::settings::Group;
use ampwright_core::guidance::{CautionTopic, maker_questions, settings};
use ampwright_core::text::ask_makers;
use ampwright_core::text::settings as text;
use ampwright_core::units::Reader;
use leptos::prelude::*;

use super::figures::Sentences;
use super::print::PrintAlone;
use crate::components::Caution;
use crate::state::AppState;

/// A device and its settings, each as what, to which value, why, and who says so.
type DeviceWords = (&'static str, Vec<[String; 4]>);

/// Heads of the columns.
const HEADS: [&str; 4] = ["set", "to", "because", "comes from"];

/// What the fold holds.
#[component]
pub fn SettingsSheet() -> impl IntoView {
    let state = AppState::expect();
    let devices = Memo::new(move |_| {
        let reader = state.reader.get();
        state.settled(|sheet, report| {
            let groups = settings(sheet, report).groups;
            groups
                .iter()
                .map(|group| words(group, &reader))
                .collect::<Vec<_>>()
        })
    });
    view! {
        <Caution topic=CautionTopic::Rules />
        <PrintAlone fold="settings" button="Print this sheet" />
        <div id="fit-settings-told">
            <table class="set" id="settings-table">
                <thead>
                    <tr>
                        {HEADS.map(|head| view! { <th scope="col">{head}</th> }).collect_view()}
                    </tr>
                </thead>
                {move || {
                    devices.get().into_iter().map(|device| view! { <Device device /> }).collect_view()
                }}
            </table>
            <AskMakers />
        </div>
    }
}

/// What to ask the makers of battery and regulator before buying; nothing where
/// there is nothing to ask.
#[component]
fn AskMakers() -> impl IntoView {
    let state = AppState::expect();
    let asked = Memo::new(move |_| state.settled(|sheet, _| maker_questions(&sheet.inputs)));
    let list = move || {
        let questions = asked.get().into_iter().map(ask_makers::question);
        let sentences: Vec<String> = questions.map(str::to_string).collect();
        (!sentences.is_empty()).then(|| {
            view! {
                <h3>{ask_makers::HEADING}</h3>
                <Sentences sentences />
            }
        })
    };
    view! { <div id="ask-makers">{list}</div> }
}

fn words(group: &Group, reader: &Reader) -> DeviceWords {
    let row = |setting| {
        let label = text::label(group.code(), setting, reader);
        let value = text::value(setting, reader);
        let reason = text::reason(&setting.reason, reader);
        [label, value, reason, text::source(setting.from).to_string()]
    };
    let rows = group.settings.iter().map(row).collect();
    (text::title(group.device), rows)
}

/// The settings of a device.
#[component]
fn Device(device: DeviceWords) -> impl IntoView {
    let (title, rows) = device;
    let row = |[label, value, reason, source]: [String; 4]| {
        view! {
            <tr>
                <th scope="row">{label}</th>
                <td class="value">{value}</td>
                <td class="why">{reason}</td>
                <td class="from">{source}</td>
            </tr>
        }
    };
    view! {
        <tbody>
            <tr class="name">
                <th colspan="4" scope="rowgroup">
                    {title}
                </th>
            </tr>
            {rows.into_iter().map(row).collect_view()}
        </tbody>
    }
}
