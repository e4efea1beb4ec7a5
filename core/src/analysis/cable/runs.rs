//! Which runs the chosen arrangement has, and what each must carry.

use crate::analysis::peak_loads::called;
use crate::boat::{CablePlace, Inputs, InstalledAlternator, WayKind, WhichAlternator, Worksheet};
use crate::physics::full_field::COLD_ROTOR_C;
use crate::simulation::alternator::CalibratedAlternator;
use crate::simulation::alternators::Alternators;

/// Volts of each 12 V under which an inverter soon stops: common practice.
const INVERTER_LOW_V: f64 = 11.0;
/// Nothing is reckoned for less than this \[A\].
const LEAST_A: f64 = 1.0;

/// One run, before a cable is chosen.
pub(super) struct Lead {
    pub key: &'static str,
    pub from: &'static str,
    pub to: &'static str,
    pub amperes: f64,
    pub carries: String,
    pub length_m: f64,
    pub engine_space: bool,
    pub allowed_v: f64,
    /// 12 V blocks of the system it belongs to.
    pub blocks: f64,
    /// Highest voltage it works at.
    pub volts: f64,
    /// Whether the house bank feeds a short in it; the start battery otherwise.
    pub on_house: bool,
    pub from_machine: bool,
    pub notes: Vec<String>,
}

const HOUSE: &str = "house bank";
const START: &str = "start battery";

/// Every run there is, in the order the current takes.
pub(super) fn leads(sheet: &Worksheet, alternators: &Alternators) -> Vec<Lead> {
    let inputs = &sheet.inputs;
    let cable = &inputs.cable;
    let by_converter = inputs.way.kind == WayKind::Converter;
    let each = inputs.alternators().zip(&alternators.list);
    let mut leads: Vec<Lead> = each
        .map(|(installed, alternator)| charge_lead(&installed, alternator))
        .collect();
    let engine = |place: CablePlace| place == CablePlace::Engine;
    let house = Lead {
        key: "bus",
        from: HOUSE,
        to: "switch panel",
        amperes: sheet.bus_peak_a().max(LEAST_A),
        carries: match cable.bus_peak_a {
            Some(_) => "the most the house draws at one moment, as stated",
            None => "what is taken for the most the house draws: all of the list at once, or 50 A",
        }
        .to_string(),
        length_m: cable.bus_m,
        engine_space: engine(cable.bus_place),
        allowed_v: cable.drop_pct / 100.0 * 12.0 * inputs.bank.nominal_v.blocks(),
        blocks: inputs.bank.nominal_v.blocks(),
        volts: house_v(inputs),
        on_house: true,
        from_machine: false,
        notes: Vec::new(),
    };
    if by_converter {
        let (house_v, start_v) = (house.volts, inputs.way.start_v);
        let out_a = inputs.way.converter_a;
        let efficiency_pct = inputs.way.converter_efficiency_pct;
        leads.push(Lead {
            key: "converter_in",
            from: START,
            to: "converter",
            amperes: out_a * house_v / (efficiency_pct / 100.0 * start_v),
            carries: format!(
                "what the converter takes: {out_a:.0} A out at {house_v:.1} V, from {start_v:.1} V at {efficiency_pct:.0} % efficiency"
            ),
            length_m: cable.converter_in_m,
            engine_space: engine(cable.converter_in_place),
            allowed_v: cable.drop_pct / 100.0 * 12.0 * inputs.start_blocks(),
            blocks: inputs.start_blocks(),
            volts: start_v,
            on_house: false,
            from_machine: false,
            notes: Vec::new(),
        });
        leads.push(Lead {
            key: "converter_out",
            from: "converter",
            to: HOUSE,
            amperes: out_a,
            carries: "the converter's rated output".to_string(),
            length_m: cable.converter_out_m,
            engine_space: engine(cable.converter_out_place),
            allowed_v: inputs.charge_drop_v(house.blocks),
            notes: vec![
                "The converter limits its own current; the bank does not, so the fuse goes to the bank's end.".to_string(),
            ],
            ..house
        });
    }
    let inverter = (cable.inverter_w > 0.0).then(|| {
        let low_v = INVERTER_LOW_V * house.blocks;
        let efficiency_pct = inputs.daily.inverter_efficiency_pct;
        Lead {
            key: "inverter",
            to: "inverter",
            amperes: (cable.inverter_w / (efficiency_pct / 100.0 * low_v)).max(LEAST_A),
            carries: format!(
                "what the inverter takes for {:.0} W from a low bank of {low_v:.1} V, at {efficiency_pct:.0} % efficiency",
                cable.inverter_w
            ),
            length_m: cable.inverter_m,
            engine_space: engine(cable.inverter_place),
            notes: Vec::new(),
            ..house
        }
    });
    leads.push(house);
    leads.extend(inverter);
    leads
}

/// Highest voltage of the house's system \[V\].
fn house_v(inputs: &Inputs) -> f64 {
    inputs.charge_v().max(inputs.held_v())
}

/// The lead of an alternator.
fn charge_lead(installed: &InstalledAlternator, alternator: &CalibratedAlternator) -> Lead {
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
    // Too slow to give anything: the plate is what is left to go by.
    let (amperes, carries) = if full_a >= LEAST_A {
        let what =
            format!("what the machine gives cold, at full field, with the engine at {rpm:.0} rpm");
        (full_a, what)
    } else {
        (
            installed.alternator.rated_a,
            "what stands on the machine's plate".to_string(),
        )
    };
    let notes = match inputs.reg.current_cap_a {
        Some(cap_a) if cap_a < amperes && here.cap_a.is_finite() => vec![format!(
            "The regulator's cap of {cap_a:.0} A is not counted on: a cap can fail or be set anew."
        )],
        _ => Vec::new(),
    };
    let (to, blocks, volts) = if to_house {
        (HOUSE, inputs.bank.nominal_v.blocks(), house_v(inputs))
    } else {
        (START, inputs.start_blocks(), inputs.way.start_v)
    };
    let (key, length_m) = match installed.which {
        WhichAlternator::First => ("alternator", inputs.cable.machine_m),
        WhichAlternator::Second => ("second_alternator", inputs.cable.second_m),
    };
    Lead {
        key,
        from: called(installed.which),
        to,
        amperes,
        carries,
        length_m,
        engine_space: true,
        allowed_v: inputs.charge_drop_v(blocks),
        blocks,
        volts,
        on_house: to_house,
        from_machine: true,
        notes,
    }
}
