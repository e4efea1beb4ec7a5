//! Ticks of the commissioning list in a file.

use serde_json::Value as Json;

use crate::boat::Worksheet;
use crate::boat::reading::Remark;
use crate::exchange::remarks::Remarks;
use crate::schema::Excerpt;

/// The ticks as JSON; none without any.
pub(super) fn ticks_to_json(sheet: &Worksheet) -> Option<Json> {
    let ids = sheet.done.iter().map(|id| id.as_str().into());
    (!sheet.done.is_empty()).then(|| Json::Array(ids.collect()))
}

/// Reads ticks; one of a step that there is not is dropped and remarked on.
pub(super) fn ticks_from_json(ids: &[Json], sheet: &mut Worksheet, remarks: &mut Remarks) {
    for one in ids {
        let id = one.as_str().unwrap_or_default();
        if !sheet.tick(id, true) {
            remarks.push(Remark::UnknownTick {
                step: Excerpt::of(id),
            });
        }
    }
}
