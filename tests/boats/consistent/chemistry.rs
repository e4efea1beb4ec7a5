//! A lead bank gets no lithium advice, a lithium bank none for lead.

use ampwright_core::guidance::settings::GroupCode;
use ampwright_core::text;
use ampwright_core::units::Reader;

use crate::answers::said;
use crate::says::{Says, setting_said};

/// Findings that only lithium has.
const LITHIUM: &[&str] = &["lithium_", "management_", "charge_voltage_no_room"];

pub fn check(says: &Says) {
    let lithium = says.lithium();
    for finding in &says.report.findings {
        let said = said(finding);
        let of_lithium = LITHIUM
            .iter()
            .any(|begin| finding.code().name().starts_with(begin));
        let of_lead = finding.code().name().starts_with("lead_");
        let others = if lithium { of_lead } else { of_lithium };
        says.holds(!others, || {
            format!("{} is of the other chemistry", finding.code())
        });
        if !lithium {
            for word in ["ithium", "management system", "LFP"] {
                says.holds(!said.contains(word), || {
                    format!("a lead bank is told of “{word}”: {}", said)
                });
            }
        } else {
            for word in [
                "qualis",
                "Peukert",
                "sulphat",
                "distilled",
                "topped up with water",
            ] {
                says.holds(!said.contains(word), || {
                    format!("a lithium bank is told of “{word}”: {}", said)
                });
            }
        }
    }
    for group in &says.settings().groups {
        for setting in &group.settings {
            let text = setting_said(setting);
            let wrong = !lithium && (text.contains("ithium") || text.contains("management system"));
            says.holds(!wrong, || {
                let (group, code) = (group.code().name(), setting.code.name());
                format!("a lead bank's sheet: {group}.{code}: {text}")
            });
        }
    }
    says.no_group(if lithium {
        GroupCode::LowVolts
    } else {
        GroupCode::Management
    });
    if !lithium {
        for machine in &says.disconnect().alternators {
            for said in &text::load_dump::sentences(machine, &Reader::METRIC) {
                says.holds(
                    !said.contains("ithium") && !said.contains("management"),
                    || format!("a lead bank's disconnect: {said}"),
                );
            }
        }
        says.holds(!says.report.analyses.lead.applies(), || {
            "a lead bank beside lead".to_string()
        });
    }
}
