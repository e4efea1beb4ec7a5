//! Why the house bank is guarded so: by a management system, or by a lead
//! bank's alarm and switch.

use crate::guidance::settings::{LowVoltageReason, ManagementReason};
use crate::text::settings::words::rate as show_rate;
use crate::text::words::at_most;
use crate::units::Reader;

pub(super) fn management(reason: &ManagementReason, reader: &Reader) -> String {
    let show = |quantity| reader.show(quantity);
    match *reason {
        ManagementReason::AboveCharge { above } => format!(
            "{} above the charge voltage: it never sounds on a usual day.",
            show(above)
        ),
        ManagementReason::RegulatorNeedsRelay => {
            "A built-in regulator must be opened for such a relay; a DC-DC charger needs none."
                .to_string()
        }
        ManagementReason::AlternatorOffFirst { current } => format!(
            "The alternator must be off before the bank disconnects its {}.",
            show(current)
        ),
        ManagementReason::ChargersOffFirst => {
            "Whatever charges stops before the bank disconnects.".to_string()
        }
        ManagementReason::MostForACell { charge } => format!(
            "Last: the most a cell may have. If the maker's is fixed and lower, lower the charge voltage of {} until all three have room.",
            show(charge)
        ),
        ManagementReason::NearlyEmpty { reserve } => format!(
            "The cells are nearly empty, well below the {} you keep in reserve.",
            show(reserve)
        ),
        ManagementReason::LeftForSafety => {
            "What is left is for navigation lights, radio and bilge pumps.".to_string()
        }
        ManagementReason::SavesTheCells => {
            "Last, to save the cells; charging current should still get in.".to_string()
        }
        ManagementReason::Rate { rate } => format!(
            "{}; colder and hotter cells as in the table above.",
            show_rate(rate, reader)
        ),
        ManagementReason::SharesUnequally { most, together } => format!(
            "They do not share alike: the one with the least resistance takes about {}, so all of them may take {} together.",
            show(most),
            at_most(together, reader)
        ),
        ManagementReason::PackCarries {
            least,
            others_short,
        } => format!(
            "Right at each pack: at least {} for what it carries, and a short circuit at one pack draws {} from the others.",
            show(least),
            show(others_short)
        ),
        ManagementReason::OpensWithoutWarning { opens_at } => format!(
            "They open by themselves at about {} or on too much current, and no wire can take the field off first. A DC-DC charger between start battery and bank does as well.",
            show(opens_at)
        ),
        ManagementReason::WarnsNobody => {
            "The packs warn nobody: set it in the battery monitor or a low-voltage switch."
                .to_string()
        }
        ManagementReason::FixedInside => "Fixed inside the pack.".to_string(),
        ManagementReason::BelongsToItsCells { cells } => format!(
            "They belong to its {} cells; no rule of thumb replaces them.",
            show(cells)
        ),
    }
}

pub(super) fn low_voltage(reason: &LowVoltageReason, reader: &Reader) -> String {
    let show = |quantity| reader.show(quantity);
    match *reason {
        LowVoltageReason::UnderUsualLoad {
            soc,
            rest,
            under_load,
            load,
        } => format!(
            "At {} state of charge it rests at {}, and stands at {} under the usual {}.",
            show(soc),
            show(rest),
            show(under_load),
            show(load)
        ),
        LowVoltageReason::UnderPeakLoad {
            load,
            under_load,
            trips,
        } => format!(
            "{} at once pull it to {}: {}.",
            show(load),
            show(under_load),
            if trips {
                "the wait must be longer than such a load lasts"
            } else {
                "a pump or windlass must not trip it"
            }
        ),
        LowVoltageReason::LosesLife => "Lower, the bank loses life for good.".to_string(),
    }
}
