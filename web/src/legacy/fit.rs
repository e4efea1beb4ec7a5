//! A caution as markup, for sections that are still text.

use ampwright_core::Worksheet;
use ampwright_core::guidance::{CautionTopic, cautions_at};
use ampwright_core::text::cautions;
use ampwright_core::units::Reader;

/// The caution that comes first for a place; none if it does not concern the
/// boat.
pub fn caution(sheet: &Worksheet, place: CautionTopic) -> String {
    match cautions_at(&sheet.inputs, place).next() {
        Some(caution) => format!(
            "<b>{}.</b> {}",
            cautions::about(caution.code),
            cautions::sentence(caution.code, &Reader::METRIC)
        ),
        None => String::new(),
    }
}
