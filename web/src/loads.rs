//! The list of loads.

use ampwright_core::fields::{Section, Value};
use ampwright_core::worksheet::{Load, LoadRow, typical_loads};
use leptos::prelude::*;

use crate::desk::Desk;
use crate::field::Entry;
use crate::words::figure;

/// The list, with each row's share of the day. `place` tells apart two
/// showings of it on the page.
#[component]
pub fn Loads(place: &'static str) -> impl IntoView {
    let desk = expect_context::<Desk>();
    let count = Memo::new(move |_| desk.sheet.with(|sheet| sheet.loads.len()));
    let add = move |_| {
        desk.edit(|sheet| {
            sheet.loads.push(Load {
                name: "New load".into(),
                ..Load::default()
            });
        });
    };
    let usual = move |_| desk.edit(|sheet| sheet.loads.extend(typical_loads()));
    let total = move || {
        desk.report.with(|report| {
            let energy = &report.energy;
            format!(
                "At anchor {} W·h, {} A·h; under way {} W·h, {} A·h.",
                figure(energy.anchor.use_wh, 0),
                figure(energy.anchor.use_ah, 0),
                figure(energy.under_way.use_wh, 0),
                figure(energy.under_way.use_ah, 0),
            )
        })
    };
    view! {
        <div class="loads">
            {move || {
                desk.turn.track();
                (0..count.get()).map(|at| view! { <LoadEntry at place/> }).collect_view()
            }}
            <p class="total">{total}</p>
            <p class="buttons">
                <button type="button" on:click=add>"Add a load"</button>
                <button type="button" class:hidden=move || count.get() != 0 on:click=usual>"Start from a usual list"</button>
            </p>
        </div>
    }
}

#[component]
fn LoadEntry(at: usize, place: &'static str) -> impl IntoView {
    let desk = expect_context::<Desk>();
    let name = Memo::new(move |_| {
        desk.sheet.with(|sheet| {
            sheet
                .loads
                .get(at)
                .map(|load| load.name.clone())
                .unwrap_or_default()
        })
    });
    let day = move || {
        desk.report.with(|report| {
            report.energy.rows.get(at).map(|row| {
                let most = row.anchor_wh.max(row.under_way_wh);
                format!("{} W·h", figure(most, 0))
            })
        })
    };
    let rename = move |event| {
        let text = event_target_value(&event);
        desk.edit(|sheet| {
            if let Some(load) = sheet.loads.get_mut(at) {
                load.name = text;
            }
        });
    };
    let remove = move |_| {
        desk.edit(|sheet| {
            if at < sheet.loads.len() {
                sheet.loads.remove(at);
            }
        });
        desk.turn.update(|turn| *turn += 1);
    };
    let columns = LoadRow::FIELDS.iter().enumerate().map(|(column, field)| {
        let id = format!("{place}-load-{at}-{}", field.name);
        let help_id = format!("{id}-help");
        let value = Memo::new(move |_| {
            desk.sheet.with(|sheet| match sheet.loads.get(at) {
                Some(load) => (LoadRow::FIELDS[column].get)(&load.row),
                None => Value::Absent,
            })
        });
        let set = Callback::new(move |value: Value| {
            desk.edit(|sheet| {
                if let Some(load) = sheet.loads.get_mut(at) {
                    (LoadRow::FIELDS[column].set)(&mut load.row, value);
                }
            });
        });
        let stands_for = Signal::stored(None);
        view! {
            <div class="cell">
                <Entry spec=&field.spec id value set stands_for help_id=help_id.clone()/>
                <p class="margin" id=help_id>{field.spec.help}</p>
            </div>
        }
    });
    view! {
        <details class="load">
            <summary>
                <span class="title">{name}</span>
                <span class="leader"></span>
                <span class="said">{day}</span>
            </summary>
            <div class="cell">
                <label for=format!("{place}-load-{at}-name")>"Name"</label>
                <input id=format!("{place}-load-{at}-name") type="text" autocomplete="off"
                    prop:value=name on:input=rename/>
            </div>
            <div class="cells">{columns.collect_view()}</div>
            <p class="buttons"><button type="button" on:click=remove>"Strike this load out"</button></p>
        </details>
    }
}
