//! Inputs that each make sense and together do not.

use crate::boat::Worksheet;
use crate::findings::{Finding, Severity, add};
use crate::simulation::plant::Plant;

/// Inputs that each make sense and together do not.
pub(super) fn input_findings(sheet: &Worksheet, plant: &Plant, found: &mut Vec<Finding>) {
    let inputs = &sheet.inputs;
    if !plant.main.curve_fits {
        add(
            found,
            Severity::Stop,
            "curve_points",
            format!(
                "No output curve passes through {} A at {} rpm and {} A at {} rpm. The slower point must have clearly less current, but not next to nothing; until then the rating alone is used.",
                inputs.alt.second_a,
                inputs.alt.second_rpm,
                inputs.alt.rated_a,
                inputs.alt.rated_rpm
            ),
        );
    }
    if !plant.main.losses.plausible {
        add(
            found,
            Severity::Stop,
            "efficiency_too_high",
            format!(
                "An efficiency of {} % at the rating leaves nothing for the copper once diodes, field, iron and fan have had their share. Enter the figure at full load, or smaller shares.",
                inputs.alt.efficiency_pct
            ),
        );
    }
    if !plant.main.anchored {
        add(
            found,
            Severity::Stop,
            "anchor_out_of_reach",
            "No cooling makes this machine settle at the winding temperature given for the bench; the nearest possible is used. Check that temperature, its speed and its air.".to_string(),
        );
    }
    if inputs.run.to_pct <= inputs.run.from_pct {
        add(
            found,
            Severity::Mend,
            "target_below_start",
            format!(
                "The charge is to end at {} % and starts at {} %: there is nothing to do.",
                inputs.run.to_pct, inputs.run.from_pct
            ),
        );
    }
    if inputs.window_low_pct() >= inputs.window_high_pct() {
        add(
            found,
            Severity::Mend,
            "empty_window",
            format!(
                "A bank that is full at {} % and never to go below {} % has nothing to give.",
                inputs.window_high_pct(),
                inputs.window_low_pct()
            ),
        );
    }
}
