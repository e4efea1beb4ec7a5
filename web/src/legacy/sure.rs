//! How certain the answer is, for sections that are still text.

use ampwright_core::decision::uncertainty::Certainty;

use crate::legacy::{by_id, focus};
use crate::state::AppState;

/// The range of the engine time in a few words, once it is worked out.
pub fn engine_range(desk: AppState) -> Option<String> {
    desk.uncertainty.engine_range()
}

/// A text about how certain the answer is, as far as that is worked out.
pub fn certain(text: &dyn Fn(Option<&Certainty>) -> String) -> String {
    text(AppState::expect().uncertainty.certainty().as_deref())
}

/// Puts the cursor into a field of the worksheet.
pub fn go(name: &str) {
    let id = format!("sheet-{name}");
    if let Some(field) = by_id(&id) {
        field.scroll_into_view();
    }
    focus(&id);
}
