//! Which runs the chosen arrangement has, and what each must carry.

use crate::analysis::cable::lead::{LEAST_A, Lead};
use crate::analysis::cable::motors::motors;
use crate::analysis::cable::{Carries, RunCode, RunEnd, RunNote};
use crate::boat::{CablePlace, Inputs, InstalledAlternator, WayKind, WhichAlternator, Worksheet};
use crate::physics::cable::{allowed_v, inverter_a};
use crate::physics::charging::charger_input_a;
use crate::physics::full_field::COLD_ROTOR_C;
use crate::simulation::alternator::CalibratedAlternator;
use crate::simulation::alternators::Alternators;

/// Volts of each 12 V under which an inverter soon stops: common practice.
const INVERTER_LOW_V: f64 = 11.0;

/// Every run there is, in the order the current takes.
pub(super) fn leads(sheet: &Worksheet, alternators: &Alternators) -> Vec<Lead> {
    let inputs = &sheet.inputs;
    let cable = &inputs.cable;
    let by_converter = inputs.way.kind == WayKind::Converter;
    let each = inputs.alternators().zip(&alternators.list);
    let mut leads: Vec<Lead> = each
        .map(|(installed, alternator)| alternator_lead(&installed, alternator))
        .collect();
    let engine = |place: CablePlace| place == CablePlace::Engine;
    let house = Lead {
        code: RunCode::Bus,
        from: RunEnd::HouseBank,
        to: RunEnd::SwitchPanel,
        amperes: sheet.bus_peak_a().max(LEAST_A),
        carries: match cable.bus_peak_a {
            Some(_) => Carries::PeakHouseLoad,
            None => Carries::AssumedPeakHouseLoad,
        },
        length_m: cable.bus_m,
        engine_space: engine(cable.bus_place),
        allowed_v: allowed_v(cable.drop_pct / 100.0, inputs.bank.nominal_v.blocks()),
        blocks: inputs.bank.nominal_v.blocks(),
        volts: house_v(inputs),
        on_house: true,
        from_alternator: false,
        notes: Vec::new(),
    };
    if by_converter {
        let (house_v, start_v) = (house.volts, inputs.way.start_v);
        let out_a = inputs.charger_a();
        let efficiency_pct = inputs.way.converter_efficiency_pct;
        leads.push(Lead {
            code: RunCode::ChargerIn,
            from: RunEnd::StartBattery,
            to: RunEnd::Charger,
            amperes: charger_input_a(out_a, house_v, efficiency_pct / 100.0, start_v),
            carries: Carries::ChargerInput {
                output_a: out_a,
                house_v,
                start_v,
                efficiency_pct,
            },
            length_m: cable.converter_in_m,
            engine_space: engine(cable.converter_in_place),
            allowed_v: allowed_v(cable.drop_pct / 100.0, inputs.start_blocks()),
            blocks: inputs.start_blocks(),
            volts: start_v,
            on_house: false,
            from_alternator: false,
            notes: Vec::new(),
        });
        leads.push(Lead {
            code: RunCode::ChargerOut,
            from: RunEnd::Charger,
            to: RunEnd::HouseBank,
            amperes: out_a,
            carries: Carries::ChargerOutput,
            length_m: cable.converter_out_m,
            engine_space: engine(cable.converter_out_place),
            allowed_v: inputs.charge_drop_v(house.blocks),
            notes: vec![RunNote::ChargerLimitsItself],
            ..house
        });
    }
    let inverter = (cable.inverter_w > 0.0).then(|| {
        let low_v = INVERTER_LOW_V * house.blocks;
        let efficiency_pct = inputs.daily.inverter_efficiency_pct;
        Lead {
            code: RunCode::Inverter,
            to: RunEnd::Inverter,
            amperes: inverter_a(cable.inverter_w, efficiency_pct / 100.0, low_v).max(LEAST_A),
            carries: Carries::InverterInput {
                power_w: cable.inverter_w,
                low_v,
                efficiency_pct,
            },
            length_m: cable.inverter_m,
            engine_space: engine(cable.inverter_place),
            notes: Vec::new(),
            ..house
        }
    });
    let motors = motors(sheet, &house);
    leads.push(house);
    leads.extend(inverter);
    leads.extend(motors);
    leads
}

/// Highest voltage of the house's system \[V\].
fn house_v(inputs: &Inputs) -> f64 {
    inputs.charge_v().max(inputs.held_v())
}

/// The lead of an alternator.
fn alternator_lead(installed: &InstalledAlternator, alternator: &CalibratedAlternator) -> Lead {
    let inputs = installed.boat;
    let to_house = installed.connection.on_house();
    let rpm = inputs.eng.top_rpm.max(inputs.eng.rpm);
    let here = alternator.at_engine_rpm(rpm);
    let curve = &here.curve;
    let full_a = curve.full_field_a(
        here.shaft_rpm,
        curve.test_v,
        curve.rotor_c.min(COLD_ROTOR_C),
    );
    // Too slow to give anything: its rating is what is left to go by.
    let (amperes, carries) = if full_a >= LEAST_A {
        (full_a, Carries::ColdFullField { engine_rpm: rpm })
    } else {
        (installed.alternator.rated_a, Carries::Rating)
    };
    let notes = match here.cap_a {
        cap_a if cap_a < amperes => vec![RunNote::CapNotCounted { cap_a }],
        _ => Vec::new(),
    };
    let (to, blocks, volts) = if to_house {
        (
            RunEnd::HouseBank,
            inputs.bank.nominal_v.blocks(),
            house_v(inputs),
        )
    } else {
        (
            RunEnd::StartBattery,
            inputs.start_blocks(),
            inputs.way.start_v,
        )
    };
    let (code, from, length_m) = match installed.which {
        WhichAlternator::First => (
            RunCode::Alternator,
            RunEnd::Alternator,
            inputs.cable.machine_m,
        ),
        WhichAlternator::Second => (
            RunCode::SecondAlternator,
            RunEnd::SecondAlternator,
            inputs.cable.second_m,
        ),
    };
    Lead {
        code,
        from,
        to,
        amperes,
        carries,
        length_m,
        engine_space: true,
        allowed_v: inputs.charge_drop_v(blocks),
        blocks,
        volts,
        on_house: to_house,
        from_alternator: true,
        notes,
    }
}
