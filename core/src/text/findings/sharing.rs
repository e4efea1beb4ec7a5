//! What is said of two regulators that know nothing of each other.

use crate::findings::SharingFinding;
use crate::text::words;
use crate::units::Reader;
use crate::units::quantity::{minutes, percent, volts};

pub(super) fn sentence(finding: &SharingFinding, reader: &Reader) -> String {
    let show = |quantity| reader.show(quantity);
    let SharingFinding::RegulatorsFight {
        idle,
        charges,
        higher_v,
        minutes: idle_min,
        run_min,
        from_min,
        hot_min,
        part_pct,
    } = *finding;
    let (idle, charges) = (words::alternator(idle), words::alternator(charges));
    let hot = if hot_min > 0.0 {
        format!(
            ", for {} of that at its temperature limit",
            show(minutes(hot_min))
        )
    } else {
        String::new()
    };
    let from = if from_min < 1.0 {
        "from the start".to_string()
    } else {
        format!("from {} on", show(minutes(from_min)))
    };
    let more = if higher_v < 0.005 {
        "a little".to_string()
    } else {
        show(volts(higher_v).to(2))
    };
    format!(
        "The two regulators do not share: the {charges}'s holds {more} more, so {from} the {idle} stands idle for {} of the {} run while the {charges} charges alone{hot}. In the whole run the {charges} gives {}. Set both to the same charge voltage and connect both sense wires to the same two posts of the bank, or fit regulators that are linked and share the load.",
        show(minutes(idle_min)),
        show(minutes(run_min)),
        show(percent(part_pct))
    )
}
