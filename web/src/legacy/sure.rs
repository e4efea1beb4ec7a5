//! How certain the answer is, for sections that are still text.

use ampwright_core::decision::uncertainty::Certainty;

use crate::state::AppState;

/// A text about how certain the answer is, as far as that is worked out.
pub fn certain(text: &dyn Fn(Option<&Certainty>) -> String) -> String {
    text(AppState::expect().uncertainty.certainty().as_deref())
}
