//! A row of the worksheet.

use crate::components::Button;
use ampwright_core::Worksheet;
use ampwright_core::boat::{Key, is_asked};
use ampwright_core::schema::{Confidence, Kind};
use leptos::prelude::*;

use super::confidence::ConfidenceChoice;
use super::{Entered, Entry};
use crate::state::{AppState, Target};

/// What a row shows beside its entry.
#[derive(Clone, Copy, PartialEq)]
struct Shown {
    entered: Entered,
    /// Whether the input matters as the worksheet stands.
    applies: bool,
    /// Whether somebody filled it in.
    said: bool,
    /// How well it is known.
    known: Confidence,
}

impl Shown {
    fn of(sheet: &Worksheet, key: Key, asked: bool) -> Shown {
        Shown {
            entered: Entered {
                value: sheet.inputs.get(key),
                stands_for: sheet.figure(key),
            },
            applies: match asked {
                true => is_asked(sheet, key),
                false => key.applies(&sheet.inputs),
            },
            said: sheet.is_said(key),
            known: sheet.knowledge(key),
        }
    }
}

/// Label, entry, what is wrong, how well it is known, and where to read it on a
/// boat. `place` tells two showings of one input apart; "ask" is among the
/// questions.
#[component]
pub fn FieldRow(place: &'static str, key: Key) -> impl IntoView {
    let state = AppState::expect();
    let spec = key.spec();
    let asked = place == "ask";
    let shown = Memo::new(move |_| state.sheet.with(|sheet| Shown::of(sheet, key, asked)));
    let id = format!("{place}-{}", key.name());
    let back = match spec.kind {
        Kind::Number { .. } | Kind::Optional { .. } if asked && spec.is_fact() => "I don't know",
        _ => "back to the default",
    };
    let forget = move |_| {
        state.can_undo(format!("{}: {back}", spec.label));
        state.void(Target::Input(key));
        state.edit(|sheet| sheet.forget(key));
    };
    view! {
        <div class="row" class:hidden=Signal::derive(move || !shown.read().applies)>
            <Entry
                id=id.clone()
                target=Target::Input(key)
                spec
                entered=Memo::new(move |_| shown.read().entered)
            />
            <p class="margin" id=format!("{id}-help")>
                {spec
                    .is_fact()
                    .then(|| {
                        let known = Memo::new(move |_| shown.read().known);
                        view! { <ConfidenceChoice key known /> }
                    })}
                <span class="how">{spec.help}</span>
                <Button
                    says=back
                    class="plain forget"
                    name=format!("{}: {back}", spec.label)
                    hidden=Signal::derive(move || !shown.read().said)
                    press=forget
                />
            </p>
        </div>
    }
}
