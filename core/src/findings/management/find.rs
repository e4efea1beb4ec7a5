//! Finds whether the bank's management system opens while the engine charges.

use crate::analysis::Analyses;
use crate::analysis::load_dump::{Dump, DumpReport, Exposure, LoadDump};
use crate::boat::{
    Chemistry, Inputs, RegulatorKind, RegulatorLink, SecondRole, WayKind, Worksheet,
};
use crate::findings::management::{
    LessCurrent, LessVoltage, LoadLost, ManagementFinding, ManagementOpens, NotHeldBy, OpensFor,
};
use crate::findings::{Finding, add};
use crate::physics::battery::{LFP_BLOCK_CELLS, LFP_CHARGE_V};
use crate::simulation::Limit;
use crate::simulation::management::{OpeningCause, setting_within_a};
use crate::simulation::opening::Opening;

/// How far a current may lie above a bank's limit and still count as held at
/// it: see [`crate::simulation::management`].
const HELD_PART: f64 = 1.02;

/// Whether the bank's management system opens while the engine charges.
pub(crate) fn management_findings(
    sheet: &Worksheet,
    report: &Analyses,
    dumps: &LoadDump,
    found: &mut Vec<Finding>,
) {
    let inputs = &sheet.inputs;
    match &report.run.opening {
        Some(opening) => add(
            found,
            ManagementFinding::ManagementOpens(ManagementOpens {
                after_s: opening.after_s,
                bank_c: inputs.bank.temperature_c,
                cause: opens_for(inputs, opening),
                field_off_first: inputs.field_off_first(),
                load_lost: load_lost(dumps, opening).filter(|_| !inputs.field_off_first()),
            }),
        ),
        None => only_the_house(inputs, report, found),
    }
}

/// Why it opens, and what to do.
fn opens_for(inputs: &Inputs, opening: &Opening) -> OpensFor {
    match opening.cause {
        OpeningCause::OverCurrent => OpensFor::OverCurrent {
            bank_a: opening.bank_a,
            limit_a: inputs.charge_limit_a(),
            by_temperature: inputs.ladder_a().is_some(),
            packs: inputs.pack_count(),
            not_held_by: not_held_by(inputs),
            remedy: less_current(inputs),
        },
        OpeningCause::OverVoltage => OpensFor::OverVoltage {
            bank_v: opening.volts,
            remedy: less_voltage(inputs),
        },
        OpeningCause::Cold => OpensFor::Cold {
            coldest_c: inputs.bank.coldest_charge_c.unwrap_or(0.0),
        },
        OpeningCause::Hot => OpensFor::Hot,
    }
}

/// Why nothing holds the current to the limit.
fn not_held_by(inputs: &Inputs) -> NotHeldBy {
    match (inputs.way.kind, inputs.two.role, inputs.reg.kind) {
        (WayKind::Converter, SecondRole::None | SecondRole::Start, _) => NotHeldBy::Charger,
        (_, _, RegulatorKind::Internal) => NotHeldBy::BuiltInRegulator,
        (_, _, RegulatorKind::External) if inputs.reg.current_cap_a.is_some() => {
            NotHeldBy::CurrentCap
        }
        (_, _, RegulatorKind::External) if inputs.packs_closed() => NotHeldBy::ClosedPacks,
        (_, _, RegulatorKind::External) if inputs.link() == RegulatorLink::Signal => {
            NotHeldBy::SignalOnly
        }
        (_, _, RegulatorKind::External) => NotHeldBy::RegulatorWithoutLink,
    }
}

/// The alternators that lose their load.
fn load_lost(dumps: &LoadDump, opening: &Opening) -> Option<LoadLost> {
    let exposed: Vec<(&DumpReport, Dump)> = dumps
        .alternators
        .iter()
        .filter(|report| report.exposure == Exposure::Bank)
        .filter_map(|report| Some((report, report.opening?)))
        .filter(|(_, dump)| dump.amperes > 0.0)
        .collect();
    let (report, dump) = exposed.iter().reduce(|one, other| {
        if other.1.peak_v > one.1.peak_v {
            other
        } else {
            one
        }
    })?;
    let top = &report.top;
    let lost_a: f64 = exposed.iter().map(|(_, dump)| dump.amperes).sum();
    Some(LoadLost {
        both: exposed.len() > 1,
        alternator: report.alternator,
        lost_a: lost_a.min(opening.alternator_a),
        spike: report.peak_range(dump),
        engine_rpm: dump.engine_rpm,
        top_spike: (top.peak_v > dump.peak_v && top.amperes > 0.0).then(|| report.peak_range(top)),
        top_rpm: top.engine_rpm,
        left_v: report
            .bank_left_v()
            .filter(|left_v| *left_v < report.peak_v()),
        withstand_v: report.bear_v,
    })
}

/// What to set or fit against too much current.
fn less_current(inputs: &Inputs) -> LessCurrent {
    // What holds a bank to its limit with nothing drawn aboard.
    let set_a = setting_within_a(inputs.setting_limit_a());
    let by_link = !inputs.packs_closed();
    if inputs.ladder_a().is_some() {
        let cold = inputs.bank.temperature_c < 25.0;
        return LessCurrent::BetterTemperature {
            cold,
            set_a,
            by_link,
        };
    }
    // Two caps that are measured at the bank each see what both give.
    let each = inputs.two.role == SecondRole::House && inputs.bank_cap_a().is_none();
    let cap_a = if each { 0.5 * set_a } else { set_a };
    match (inputs.way.kind, inputs.reg.kind) {
        (WayKind::Converter, _) if each => LessCurrent::SetChargerAndSecond { set_a },
        (WayKind::Converter, _) => LessCurrent::SetCharger { set_a },
        (WayKind::Direct, RegulatorKind::External) => LessCurrent::SetCap {
            set_a: cap_a,
            each,
            by_link,
        },
        (WayKind::Direct, RegulatorKind::Internal) => LessCurrent::FitRegulator {
            set_a: cap_a,
            each,
            charger_a: set_a,
        },
    }
}

/// What to do about a charge voltage that is too high for lithium cells.
pub(crate) fn less_voltage(inputs: &Inputs) -> LessVoltage {
    let usual_v = LFP_CHARGE_V * LFP_BLOCK_CELLS * inputs.bank.nominal_v.blocks();
    match (inputs.way.kind, inputs.reg.kind) {
        (WayKind::Direct, RegulatorKind::Internal) => LessVoltage::FitRegulator { usual_v },
        _ if inputs.compensation_v() != 0.0 => LessVoltage::SetWithoutCompensation { usual_v },
        _ => LessVoltage::Set { usual_v },
    }
}

/// A current that stays within the limit only while the house draws its part.
fn only_the_house(inputs: &Inputs, report: &Analyses, found: &mut Vec<Finding>) {
    let limit_a = inputs.charge_limit_a();
    let house_a = report.run.house_load_a;
    // What the held voltage or a cap at the bank lets into it does not depend on the
    // house.
    let at_bank = |limit: Limit| match limit {
        Limit::ChargeVoltage => true,
        Limit::CurrentCap => inputs.bank_cap_a().is_some(),
        _ => false,
    };
    let bank_a = report
        .run
        .series
        .iter()
        .filter(|moment| !at_bank(moment.limit))
        .map(|moment| moment.bank_a);
    let without_a = bank_a.fold(0.0, f64::max) + house_a;
    if inputs.bank.chemistry != Chemistry::Lfp
        || inputs.limit_linked()
        || limit_a <= 0.0
        || without_a <= HELD_PART * limit_a + 0.5
    {
        return;
    }
    add(
        found,
        ManagementFinding::LimitHeldByLoads {
            limit_a,
            house_a,
            without_a,
            remedy: less_current(inputs),
        },
    );
}
