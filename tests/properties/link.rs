//! How the battery talks to the regulator: who is told more never opens earlier.

use ampwright_core::boat::{
    Chemistry, LinkLoss, NoLink, PackManagement, RegulatorKind, RegulatorLink, Said, WayKind,
};
use ampwright_core::findings::{Code, Finding, ManagementFinding};
use ampwright_core::{Worksheet, report};
use proptest::prelude::*;

use crate::draw::{Drawn, any_sheet, normal_boat};

/// From nothing to all limits.
const MORE_AND_MORE: [RegulatorLink; 4] = [
    RegulatorLink::None,
    RegulatorLink::Signal,
    RegulatorLink::Limits,
    RegulatorLink::LimitsAndVolts,
];

fn linked(sheet: &Worksheet, link: RegulatorLink) -> Worksheet {
    let mut sheet = sheet.clone();
    sheet.inputs.reg.link = link;
    sheet
}

/// When the management system acts \[s\]; endless where it never does.
fn opens_s(sheet: &Worksheet) -> f64 {
    let opening = report(sheet).analyses.run.opening;
    opening.map_or(f64::INFINITY, |opening| opening.after_s)
}

/// Whether something is cut off under load.
fn under_load(sheet: &Worksheet) -> bool {
    report(sheet).findings.iter().any(|finding| {
        matches!(
            finding,
            Finding::Management(ManagementFinding::ManagementOpens(opens)) if !opens.field_off_first
        )
    })
}

proptest! {
    #![proptest_config(crate::cases(60))]

    #[test]
    fn more_limits_never_open_earlier(Drawn(sheet) in normal_boat()) {
        let times = MORE_AND_MORE.map(|link| opens_s(&linked(&sheet, link)));
        for pair in times.windows(2) {
            prop_assert!(pair[0] <= pair[1] + 0.2, "{times:?}");
        }
        let loads = MORE_AND_MORE.map(|link| under_load(&linked(&sheet, link)));
        for pair in loads.windows(2) {
            prop_assert!(pair[0] || !pair[1], "{loads:?}");
        }
    }

    /// What is not reached changes no current, and is told.
    #[test]
    fn what_reaches_nothing_changes_nothing(Drawn(sheet) in any_sheet()) {
        let without = linked(&sheet, RegulatorLink::None);
        for link in MORE_AND_MORE {
            let with = linked(&sheet, link);
            let Some(because) = with.inputs.link_without_effect() else { continue };
            let (with, without) = (report(&with), report(&without));
            prop_assert_eq!(&with.analyses.run.series, &without.analyses.run.series);
            let told = with.findings.iter().find(|f| f.code() == Code::LinkHasNoEffect);
            prop_assert!(told.is_some());
            let closed = sheet.inputs.packs_closed();
            prop_assert_eq!(because == NoLink::ClosedPacks, closed);
        }
    }

    /// A signal said in either place is the same signal.
    #[test]
    fn one_signal_is_one_signal(Drawn(sheet) in normal_boat()) {
        let mut sheet = sheet.clone();
        sheet.inputs.bank.chemistry = Chemistry::Lfp;
        sheet.inputs.packs.management = PackManagement::Open;
        sheet.inputs.reg.kind = RegulatorKind::External;
        sheet.inputs.way.kind = WayKind::Direct;
        let by_link = linked(&sheet, RegulatorLink::Signal);
        let mut by_guard = linked(&sheet, RegulatorLink::None);
        by_guard.inputs.guard.warning = Said::Yes;
        prop_assert_eq!(by_link.inputs.link(), RegulatorLink::Signal);
        let (one, other) = (report(&by_link), report(&by_guard));
        prop_assert_eq!(one.analyses.load_dump, other.analyses.load_dump);
        prop_assert_eq!(one.verdict, other.verdict);
        prop_assert_eq!(one.findings.len(), other.findings.len());
    }

    /// A regulator that stops on a lost link needs no more said of it.
    #[test]
    fn stopping_is_safe(Drawn(sheet) in any_sheet()) {
        let mut sheet = linked(&sheet, RegulatorLink::Limits);
        sheet.inputs.reg.link_loss = LinkLoss::Stops;
        let codes: Vec<Code> = report(&sheet).findings.iter().map(Finding::code).collect();
        prop_assert!(!codes.contains(&Code::LinkLossOpens) && !codes.contains(&Code::LinkLossNotSaid));
    }
}
