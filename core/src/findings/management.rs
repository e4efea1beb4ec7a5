//! Whether the bank's management system opens while the engine charges.

use crate::analysis::Analyses;
use crate::analysis::load_dump::{Dump, DumpReport, Exposure, LoadDump};
use crate::analysis::peak_loads::called;
use crate::boat::{Chemistry, Inputs, RegulatorKind, SecondRole, WayKind, Worksheet};
use crate::findings::{Finding, Severity, add};
use crate::physics::battery::{LFP_CHARGE_V, LFP_MOST_V};
use crate::simulation::Limit;
use crate::simulation::management::{BLOCK_CELLS, OpeningCause, setting_within_a};
use crate::simulation::opening::Opening;
use crate::units::{after, amperes, degrees};

/// How far a current may lie above a bank's limit and still count as held at
/// it: see [`crate::simulation::management`].
const HELD_PART: f64 = 1.02;

/// Whether the bank's management system opens while the engine charges.
pub(super) fn management_findings(
    sheet: &Worksheet,
    report: &Analyses,
    dumps: &LoadDump,
    found: &mut Vec<Finding>,
) {
    let inputs = &sheet.inputs;
    match &report.run.opening {
        Some(opening) => add(
            found,
            Severity::Stop,
            "management_opens",
            [
                cause(inputs, opening),
                dump(dumps, opening),
                remedy(inputs, opening),
            ]
            .join(" "),
        ),
        None => only_the_house(inputs, report, found),
    }
}

/// Why it opens, and when.
fn cause(inputs: &Inputs, opening: &Opening) -> String {
    let after = format!("{} after the start", after(opening.after_s));
    let limit_a = inputs.charge_limit_a();
    let bank_c = degrees(inputs.bank.temperature_c);
    match opening.cause {
        OpeningCause::OverCurrent => format!(
            "The battery management system disconnects the bank {after}: {:.0} A flow into it and it may take {limit_a:.0} A{}. {}",
            opening.bank_a,
            match inputs.ladder_a() {
                Some(_) => format!(" with its cells at {bank_c} °C"),
                None => String::new(),
            },
            unknown_to(inputs)
        ),
        OpeningCause::OverVoltage => format!(
            "The battery management system disconnects the bank {after}: its cells are charged at {:.1} V, more than {LFP_MOST_V} V a cell.",
            opening.volts
        ),
        OpeningCause::Cold => format!(
            "The bank cannot be charged: its cells are at {bank_c} °C, and the battery management system disconnects it {after}. Metal plates out in lithium cells that are charged too cold and spoils them."
        ),
        OpeningCause::Hot => format!(
            "The bank cannot be charged: its cells are at {bank_c} °C, and the battery management system disconnects it {after}."
        ),
    }
}

/// Why nothing holds the current to the limit.
fn unknown_to(inputs: &Inputs) -> &'static str {
    match (inputs.way.kind, inputs.two.role, inputs.reg.kind) {
        (WayKind::Converter, SecondRole::None | SecondRole::Start, _) => {
            "A DC-DC charger gives what it is set to, whatever the bank may take."
        }
        (_, _, RegulatorKind::Internal) => {
            "A built-in regulator knows volts only, not what the bank may take."
        }
        (_, _, RegulatorKind::External) if inputs.reg.current_cap_a.is_some() => {
            "The regulator's current cap lies above that, or leaves no room for it."
        }
        (_, _, RegulatorKind::External) => {
            "Without a data link or a current cap the regulator does not know that limit."
        }
    }
}

/// What follows for the electronics.
fn dump(dumps: &LoadDump, opening: &Opening) -> String {
    let exposed: Vec<(&DumpReport, Dump)> = dumps
        .machines
        .iter()
        .filter(|machine| machine.exposure == Exposure::Bank)
        .filter_map(|machine| Some((machine, machine.opening?)))
        .filter(|(_, dump)| dump.amperes > 0.0)
        .collect();
    let worst = exposed.iter().reduce(|one, other| {
        if other.1.peak_v > one.1.peak_v {
            other
        } else {
            one
        }
    });
    let Some((machine, dump)) = worst else {
        return "The alternator keeps its start battery, so that its voltage does not jump; the bank is no longer charged, and what hangs on the house side loses its battery.".to_string();
    };
    let loses = match (exposed.len(), dumps.machines.len()) {
        (1, 1) => "The alternator then loses its load".to_string(),
        (1, _) => format!("The {} then loses its load", called(machine.second)),
        _ => "Both alternators then lose their load".to_string(),
    };
    let lost_a: f64 = exposed.iter().map(|(_, dump)| dump.amperes).sum();
    format!(
        "{loses} at {:.0} A and {}.",
        lost_a.min(opening.alternator_a),
        jump(machine, dump)
    )
}

/// How far the voltage jumps, now and with the engine at its highest.
fn jump(machine: &DumpReport, dump: &Dump) -> String {
    let (top, bear_v) = (&machine.top, machine.bear_v);
    let mut peaks = format!(
        "the voltage jumps to {} at {:.0} rpm",
        machine.peak_words(dump),
        dump.engine_rpm
    );
    if top.peak_v > dump.peak_v && top.amperes > 0.0 {
        peaks += &format!(
            ", and to {} with the engine at {:.0} rpm",
            machine.peak_words(top),
            top.engine_rpm
        );
    }
    match machine.bank_left_v() {
        Some(left_v) if left_v < machine.peak_v() => format!(
            "without protection {peaks}; with what is entered as protection {left_v:.0} V are left, where electronics withstand {bear_v:.0} V"
        ),
        _ => format!("{peaks}; electronics withstand {bear_v:.0} V"),
    }
}

/// What to set or fit.
fn remedy(inputs: &Inputs, opening: &Opening) -> String {
    match opening.cause {
        OpeningCause::OverCurrent => less_current(inputs),
        OpeningCause::OverVoltage => less_voltage(inputs),
        OpeningCause::Cold => {
            let coldest_c = degrees(inputs.bank.coldest_charge_c.unwrap_or(0.0));
            format!(
                "Warm the bank above {coldest_c} °C before anything charges it, and keep the alternator from charging until then."
            )
        }
        OpeningCause::Hot => {
            "Let it cool below 60 °C, better below 50 °C, and bring it more air.".to_string()
        }
    }
}

fn less_current(inputs: &Inputs) -> String {
    let set = amperes(setting_a(inputs));
    if inputs.ladder_a().is_some() {
        let (first, words) = if inputs.bank.temperature_c < 25.0 {
            ("Warm the bank to 10 °C", "cold")
        } else {
            ("Let the bank cool below 50 °C", "hot")
        };
        return format!(
            "{first} before it is charged, so that it may take more, or fit an external regulator with a data link, which follows the limit. With neither, {set} are the most to set while the bank is as {words} as this."
        );
    }
    let direct = inputs.way.kind == WayKind::Direct;
    let both = inputs.two.role == SecondRole::House;
    let cap = if both {
        format!("{} on each alternator", amperes(0.5 * setting_a(inputs)))
    } else {
        set.clone()
    };
    match (direct, both, inputs.reg.kind) {
        (false, false, _) => format!("Set the DC-DC charger's output to {set} or less."),
        (false, true, _) => format!(
            "Set the DC-DC charger's output and the second alternator's current cap to {set} or less together."
        ),
        (true, _, RegulatorKind::External) => format!(
            "Set a current cap of {cap}, which holds even when nothing aboard draws, or let the battery tell the regulator its limit over a data link."
        ),
        (true, _, RegulatorKind::Internal) => format!(
            "Fit an external regulator with a current cap of {cap}, or charge through a DC-DC charger of {set} at most."
        ),
    }
}

/// What holds a bank to its limit with nothing drawn aboard \[A\].
fn setting_a(inputs: &Inputs) -> f64 {
    setting_within_a(inputs.charge_limit_a())
}

/// What to do about a charge voltage that is too high for lithium cells.
pub(super) fn less_voltage(inputs: &Inputs) -> String {
    let usual_v = LFP_CHARGE_V * BLOCK_CELLS * inputs.bank.nominal_v.blocks();
    match (inputs.way.kind, inputs.reg.kind) {
        (WayKind::Direct, RegulatorKind::Internal) => format!(
            "A built-in regulator cannot be set: fit an external one for {usual_v:.1} V, or charge through a DC-DC charger set to {usual_v:.1} V."
        ),
        _ if inputs.compensation_v() != 0.0 => format!(
            "Set the charge voltage to {usual_v:.1} V and switch temperature compensation off."
        ),
        _ => format!("Set the charge voltage to {usual_v:.1} V."),
    }
}

/// A current that stays within the limit only while the house draws its part.
fn only_the_house(inputs: &Inputs, report: &Analyses, found: &mut Vec<Finding>) {
    let limit_a = inputs.charge_limit_a();
    let taken_a = report.run.house_load_a;
    // What the held voltage lets into the bank does not depend on the house.
    let bank_a = report
        .run
        .series
        .iter()
        .filter(|moment| moment.limit != Limit::ChargeVoltage)
        .map(|moment| moment.bank_a);
    let most_a = bank_a.fold(0.0, f64::max) + taken_a;
    if inputs.bank.chemistry != Chemistry::Lfp
        || inputs.limit_linked()
        || limit_a <= 0.0
        || most_a <= HELD_PART * limit_a + 0.5
    {
        return;
    }
    add(
        found,
        Severity::Mend,
        "limit_held_by_loads",
        format!(
            "The bank stays within the {limit_a:.0} A it may take only while the house draws {taken_a:.0} A. With nothing drawn {most_a:.0} A flow into it and the battery management system may disconnect it. {}",
            less_current(inputs)
        ),
    );
}
