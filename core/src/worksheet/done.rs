//! Which steps of the commissioning list are done. They belong to one boat's
//! progress: a file and the browser's storage keep them, a link tells a boat
//! and leaves them out.

use serde_json::Value as Json;

use super::Worksheet;
use crate::fields::quoted;
use crate::first_run::place_of;

impl Worksheet {
    /// Whether a step of the commissioning list is ticked.
    pub fn is_done(&self, id: &str) -> bool {
        self.done.iter().any(|done| done == id)
    }

    /// Ticks a step or takes its tick back; says whether there is such a step.
    pub fn tick(&mut self, id: &str, done: bool) -> bool {
        let Some(place) = place_of(id) else {
            return false;
        };
        self.done.retain(|kept| kept != id);
        if done {
            // In the order of the list, so that the same ticks are the same worksheet.
            let at = self
                .done
                .partition_point(|before| place_of(before) < Some(place));
            self.done.insert(at, id.to_string());
        }
        true
    }
}

/// The ticks as JSON; none without any.
pub(super) fn ticks_to_json(sheet: &Worksheet) -> Option<Json> {
    let ids = sheet.done.iter().map(|id| id.as_str().into());
    (!sheet.done.is_empty()).then(|| Json::Array(ids.collect()))
}

/// Reads ticks; one of a step that there is not is dropped and remarked on.
pub(super) fn ticks_from_json(ids: &[Json], sheet: &mut Worksheet, remarks: &mut Vec<String>) {
    for one in ids {
        let id = one.as_str().unwrap_or_default();
        if !sheet.tick(id, true) {
            remarks.push(format!(
                "No step of the first run is called {}; its tick is left out.",
                quoted(id)
            ));
        }
    }
}

#[cfg(test)]
mod tests {
    use super::Worksheet;

    #[test]
    fn ticks_keep_the_order_of_the_list() {
        let (mut one, mut other) = (Worksheet::default(), Worksheet::default());
        for id in ["set", "isolate", "hot_run"] {
            assert!(one.tick(id, true));
        }
        for id in ["hot_run", "isolate", "set", "set"] {
            assert!(other.tick(id, true));
        }
        assert_eq!(one, other);
        assert_eq!(one.done, ["isolate", "set", "hot_run"]);
        assert!(one.tick("set", false) && !one.is_done("set") && one.is_done("isolate"));
        assert!(!one.tick("paint the hull", true) && one.done.len() == 2);
    }
}
