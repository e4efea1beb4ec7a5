//! One input on screen. What it is called, takes and means comes from its
//! description in the core; this is how it looks and how typing is heard.

mod choice;
mod confidence;
mod number;
mod row;
mod stepper;
#[cfg(test)]
mod tests;

use ampwright_core::schema::{FieldSpec, Kind, Value};
use leptos::either::Either;
use leptos::prelude::*;

use crate::state::Target;
use choice::ChoiceEntry;
pub use number::NumberEntry;
pub use row::FieldRow;

/// What an entry shows.
#[derive(Clone, Copy, PartialEq)]
pub struct Entered {
    /// What stands in it.
    pub value: Value,
    /// What it stands for when it is empty.
    pub stands_for: Option<f64>,
}

impl Entered {
    /// What stands in a row of a list; none once the row is gone.
    pub fn in_row(value: Option<Value>) -> Entered {
        Entered {
            value: value.unwrap_or(Value::Absent),
            stands_for: None,
        }
    }
}

/// Label, entry, unit and complaint of one value of any kind. `id` tells apart
/// two entries of one input.
#[component]
pub fn Entry(
    #[prop(into)] id: String,
    target: Target,
    spec: &'static FieldSpec,
    entered: Memo<Entered>,
) -> impl IntoView {
    let absent = match spec.kind {
        Kind::Optional { empty_says, .. } => Some(view! { <small>" empty: " {empty_says}</small> }),
        _ => None,
    };
    let entry = match spec.kind {
        Kind::Choice { options, .. } => Either::Left(view! {
            <ChoiceEntry id=id.clone() target spec options entered />
        }),
        Kind::Number { .. } | Kind::Optional { .. } => Either::Right(view! {
            <NumberEntry id=id.clone() target spec entered />
        }),
    };
    view! {
        <label for=id>{spec.label} {absent}</label>
        {entry}
    }
}
