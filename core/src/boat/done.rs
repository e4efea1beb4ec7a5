//! Which steps of the commissioning list are done. They belong to one boat's
//! progress: a file and the browser's storage keep them, a link tells a boat
//! and leaves them out.

use crate::boat::Worksheet;

/// The steps of the commissioning list of any boat, in its order. An id never
/// changes once released: ticks are kept under it.
pub(crate) const COMMISSIONING_STEPS: &[&str] = &[
    "maker_sheet",
    "isolate",
    "electrician",
    "fuses",
    "cables",
    "insulation",
    "no_switch",
    "belt",
    "sensor",
    "sense_wire",
    "cut_wire",
    "spike_guard",
    "pack_leads",
    "air",
    "lead_vent",
    "co_alarm",
    "mains",
    "set",
    "fuse_in",
    "start",
    "first_amps",
    "drop",
    "agree",
    "link_reads",
    "pack_shares",
    "converter_on",
    "start_volts",
    "charger_on",
    "retension",
    "hot_begin",
    "hot_run",
    "hot_winding",
    "hot_lugs",
    "hot_bank",
    "hot_after",
    "hot_trial",
    "cut_still",
    "cut_gentle",
    "link_zero",
    "link_pulled",
    "packs_full",
    "cut_none",
    "cut_converter",
    "cut_charger",
    "cut_order",
    "cut_cold",
    "open_still",
    "low_order",
    "month_belt",
    "month_lugs",
    "month_hot",
    "month_cells",
    "month_water",
    "month_full",
    "month_equalise",
    "month_settings",
    "month_cut",
    "month_alarm",
];

/// The place of a step in the whole list; none if there is no such step.
fn place_of(id: &str) -> Option<usize> {
    COMMISSIONING_STEPS.iter().position(|step| *step == id)
}

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

#[cfg(test)]
mod tests {
    use crate::boat::done::Worksheet;

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
