//! The inputs that a fold asks for.

use ampwright_core::boat::{Key, SectionId};
use ampwright_core::schema::Place;
use leptos::prelude::*;

use crate::components::{FieldRow, Fold};

/// The inputs of a section of the worksheet, the less usual ones in a fold of
/// their own; a belt's are too few for that.
#[component]
pub fn Questions(
    of: SectionId,
    #[prop(default = "Your answers")] heading: &'static str,
    /// Whether they concern this boat.
    #[prop(default = true.into(), into)]
    applies: Signal<bool>,
) -> impl IntoView {
    let prefix = of.prefix();
    let folds = !matches!(of, SectionId::belt | SectionId::belt2);
    let is_advanced = move |key: &Key| folds && key.spec().place == Place::Advanced;
    let rows = |keys: Vec<Key>| {
        keys.into_iter()
            .map(|key| view! { <FieldRow place="fit" key /> })
            .collect_view()
    };
    view! {
        <div id=format!("fit-asks-{prefix}") class:hidden=Signal::derive(move || !applies.get())>
            <h3>{heading}</h3>
            {rows(of.keys().filter(|key| !is_advanced(key)).collect())}
            {folds
                .then(|| {
                    view! {
                        <Fold id=format!("fit-{prefix}-finer") title="Advanced">
                            {rows(of.keys().filter(is_advanced).collect())}
                        </Fold>
                    }
                })}
        </div>
    }
}
