//! One input on screen. What it is called, takes and means comes from its
//! description in the core; this is only how it looks and how typing is heard.

use ampwright_core::fields::{Complaint, Kind, Knowledge, Spec, Spread, Value};
use ampwright_core::worksheet::Key;
use leptos::prelude::*;

use crate::desk::Desk;

/// An input of the worksheet, by key. `place` tells apart two showings of one
/// input on the page.
#[component]
pub fn SheetField(key: Key, place: &'static str) -> impl IntoView {
    let desk = expect_context::<Desk>();
    let spec = key.spec();
    let value = Memo::new(move |_| desk.sheet.with(|sheet| sheet.inputs.get(key)));
    let applies = Memo::new(move |_| desk.sheet.with(|sheet| key.applies(&sheet.inputs)));
    let knowledge = Memo::new(move |_| desk.sheet.with(|sheet| sheet.knowledge(key)));
    let said = Memo::new(move |_| desk.sheet.with(|sheet| sheet.is_said(key)));
    let stands_for = Memo::new(move |_| desk.sheet.with(|sheet| sheet.figure(key)));
    let set = Callback::new(move |value: Value| desk.edit(|sheet| drop(sheet.state(key, value))));
    let back = match (place, spec.kind) {
        ("ask", Kind::Number { .. } | Kind::Maybe { .. }) => "I don't know",
        _ => "back to the default",
    };
    // A choice is made, not measured, unless it is one of fact.
    let graded = spec.spread == Some(Spread::Either) || !matches!(spec.kind, Kind::Choice { .. });
    let grade = move |event| {
        let word = event_target_value(&event);
        if let Some(known) = Knowledge::ALL
            .into_iter()
            .find(|known| known.word() == word)
        {
            desk.edit(|sheet| sheet.know(key, known));
        }
    };
    let id = format!("{place}-{}", key.name());
    let help_id = format!("{id}-help");
    view! {
        <div class="row" class:hidden=move || !applies.get()>
            <Entry spec id=id.clone() value set stands_for help_id=help_id.clone()/>
            <p class="margin" id=help_id>
                {graded.then(|| view! {
                    <select class="mark" class:guess=move || knowledge.get() == Knowledge::Guess
                        id=format!("{id}-known") aria-label=format!("{}: how well it is known", spec.label)
                        prop:value=move || knowledge.get().word() on:change=grade>
                        {Knowledge::ALL.map(|known| view! {
                            <option value=known.word() selected=known == knowledge.get_untracked()>{known.word()}</option>
                        })}
                    </select>
                })}
                {spec.help}
                <button type="button" class="plain forget" class:hidden=move || !said.get()
                    on:click=move |_| desk.forget(key)
                    aria-label=format!("{}: {back}", spec.label)>
                    {back}
                </button>
            </p>
        </div>
    }
}

/// Label, entry, unit and complaint of one value.
#[component]
pub fn Entry(
    spec: &'static Spec,
    #[prop(into)] id: String,
    #[prop(into)] value: Signal<Value>,
    set: Callback<Value>,
    /// What an empty field stands for.
    #[prop(into)]
    stands_for: Signal<Option<f64>>,
    #[prop(into)] help_id: String,
) -> impl IntoView {
    let complaint = RwSignal::new(None::<Complaint>);
    let complaint_id = format!("{id}-complaint");
    let described = format!("{complaint_id} {help_id}");
    let entry = match spec.kind {
        Kind::Choice { options, .. } => {
            let on_change = move |event| match spec.read(&event_target_value(&event)) {
                Ok(value) => set.run(value),
                Err(wrong) => complaint.set(Some(wrong)),
            };
            view! {
                <select id=id.clone() aria-describedby=described
                    prop:value=move || spec.write(value.get()) on:change=on_change>
                    {options.iter().enumerate().map(|(at, option)| view! {
                        <option value=option.key selected=move || value.get() == Value::Choice(at)>{option.label}</option>
                    }).collect_view()}
                </select>
            }
            .into_any()
        }
        Kind::Number { .. } | Kind::Maybe { .. } => {
            // What is being typed stays as typed, "1." and "0,5" included.
            let draft = RwSignal::new(None::<String>);
            let on_input = move |event| {
                let text = event_target_value(&event);
                match spec.read(&text) {
                    Ok(value) => {
                        complaint.set(None);
                        set.run(value);
                    }
                    Err(wrong) => complaint.set(Some(wrong)),
                }
                draft.set(Some(text));
            };
            let on_blur = move |_| {
                if complaint.with_untracked(Option::is_none) {
                    draft.set(None);
                }
            };
            let empty_means = match spec.kind {
                Kind::Maybe { .. } => Some(move || match stands_for.get() {
                    Some(figure) => short(figure),
                    None => "none".to_string(),
                }),
                _ => None,
            };
            let unit = spec.unit().map_or("", |unit| unit.symbol);
            view! {
                <span class="entry">
                    <input id=id.clone() type="text" inputmode="decimal" autocomplete="off" enterkeyhint="done"
                        aria-describedby=described
                        aria-invalid=move || complaint.with(Option::is_some).to_string()
                        placeholder=empty_means
                        prop:value=move || draft.get().unwrap_or_else(|| spec.write(value.get()))
                        on:input=on_input on:blur=on_blur/>
                    <span class="unit">{unit}</span>
                </span>
            }
            .into_any()
        }
    };
    let absent = match spec.kind {
        Kind::Maybe { absent, .. } => {
            Some(view! { <small>{format!("empty: {}", absent.says)}</small> })
        }
        _ => None,
    };
    view! {
        <label for=id>{spec.label} {absent}</label>
        {entry}
        <p class="complaint" id=complaint_id role="alert">
            {move || complaint.with(|wrong| wrong.as_ref().map(|wrong| wrong.0.clone()))}
        </p>
    }
}

/// A figure for a placeholder.
fn short(figure: f64) -> String {
    let rounded = (figure * 100.0).round() / 100.0;
    rounded.to_string()
}
