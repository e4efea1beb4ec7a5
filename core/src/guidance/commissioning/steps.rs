//! Which steps a boat has, the figures that stand in them, and when to stop.
//! Common practice and own reasoning, no source.

use crate::boat::{Chemistry, Inputs, LinkLoss, RegulatorKind, SensorPlace, WayKind};
use crate::guidance::commissioning::figures::Figures;
use crate::guidance::commissioning::{StepCode, StepFigure, StepStop};
use crate::guidance::settings::{cell_steps, sensor_part};
use crate::simulation::management::setting_within_a;
use crate::units::quantity::{
    Quantity, QuantityKind, amperes, celsius, count, kelvin, kilowatts_of, percent, rpm, volts,
};

/// A sensor may differ from the air by so much with all cold \[K\].
const SENSOR_K: f64 = 3.0;
/// A lug may be so far above its own cable \[K\].
const LUG_ABOVE_CABLE_K: f64 = 20.0;
/// Cells of a full lithium bank may differ by so much \[V\].
const CELL_SPREAD_V: f64 = 0.05;
/// Densities in a healthy flooded bank differ by no more.
const DENSITY_SPREAD: f64 = 0.02;
/// From this difference of densities on a flooded bank is equalised.
const EQUALISE_FROM: f64 = 0.03;
/// The current is gone so long after the charge-disable signal \[s\].
const CURRENT_GONE_S: f64 = 2.0;

/// Whether a boat has a step.
pub(super) fn applies(code: StepCode, inputs: &Inputs) -> bool {
    let lithium = inputs.bank.chemistry == Chemistry::Lfp;
    let flooded = inputs.bank.chemistry == Chemistry::Flooded;
    let engine = inputs.engine_charges();
    let external = engine && inputs.reg.kind == RegulatorKind::External;
    let converter = engine && inputs.way.kind == WayKind::Converter;
    let shore_charger = inputs.mains_charger_a() > 0.0;
    let straight = inputs.straight_into_house();
    let linked = engine && inputs.limit_linked();
    // Drop-in packs have nothing to trigger and little to read back.
    let closed = inputs.packs_closed();
    let signalled = lithium && !closed;
    match code {
        StepCode::MakerSheet
        | StepCode::Isolate
        | StepCode::Electrician
        | StepCode::Fuses
        | StepCode::Cables
        | StepCode::LeadVent
        | StepCode::Set
        | StepCode::FuseIn
        | StepCode::LowOrder
        | StepCode::MonthLugs
        | StepCode::MonthSettings => true,
        StepCode::Insulation
        | StepCode::Belt
        | StepCode::Air
        | StepCode::CoAlarm
        | StepCode::Start
        | StepCode::FirstAmps
        | StepCode::Drop
        | StepCode::Agree
        | StepCode::Retension
        | StepCode::HotBegin
        | StepCode::HotRun
        | StepCode::HotLugs
        | StepCode::HotBank
        | StepCode::HotAfter
        | StepCode::HotTrial
        | StepCode::MonthBelt
        | StepCode::MonthHot
        | StepCode::MonthAlarm => engine,
        StepCode::NoSwitch => straight,
        StepCode::Sensor => external,
        StepCode::SenseWire => external && inputs.way.kind == WayKind::Direct,
        StepCode::HotWinding => external && inputs.reg.sensor == SensorPlace::Winding,
        StepCode::Mains | StepCode::ChargerOn => shore_charger,
        StepCode::ConverterOn => converter,
        StepCode::StartVolts => converter || (engine && inputs.feeds_start_back()),
        StepCode::SpikeGuard | StepCode::PacksFull => closed && straight,
        StepCode::PackLeads => inputs.pack_count() > 1,
        StepCode::PackShares => engine && inputs.pack_count() > 1,
        StepCode::LinkReads | StepCode::LinkZero | StepCode::LinkPulled => linked,
        StepCode::CutStill | StepCode::CutGentle => signalled && external && straight,
        StepCode::CutNone => signalled && engine && !external && straight,
        StepCode::CutConverter => signalled && converter,
        StepCode::CutCharger => signalled && shore_charger,
        StepCode::CutWire
        | StepCode::CutOrder
        | StepCode::CutCold
        | StepCode::OpenStill
        | StepCode::MonthCells
        | StepCode::MonthCut => signalled,
        StepCode::MonthFull => !lithium,
        StepCode::MonthWater | StepCode::MonthEqualise => flooded,
    }
}

/// What a step says with a boat's figures; none where it needs none.
pub(super) fn figure(code: StepCode, f: &Figures) -> Option<StepFigure> {
    let (inputs, analyses) = (f.inputs, &f.report.analyses);
    let run = &analyses.run;
    let figure = match code {
        StepCode::Belt => StepFigure::BeltPower {
            power: kilowatts_of(1000.0 * analyses.engine.peak_kw),
        },
        StepCode::Sensor => StepFigure::Sensor {
            on: sensor_part(inputs.reg.sensor),
            air: celsius(inputs.start_c()),
            within: kelvin(SENSOR_K),
        },
        StepCode::FuseIn => StepFigure::AtRest {
            voltage: volts(inputs.house_bank().rest_v(inputs.run.from_pct / 100.0)),
            soc: percent(inputs.run.from_pct),
        },
        StepCode::Start => StepFigure::Speeds {
            engine: rpm(inputs.eng.rpm),
            shaft: rpm(analyses.alternators[0].shaft_rpm),
        },
        StepCode::FirstAmps => StepFigure::FirstCurrent {
            current: amperes(run.most_a()),
            never_above: volts(f.charge_v),
        },
        StepCode::Drop => StepFigure::VoltageDrop {
            most: volts(inputs.charge_drop_v(f.alternator_blocks())),
        },
        StepCode::Agree => StepFigure::HouseLoad {
            current: amperes(run.house_load_a),
        },
        StepCode::LinkReads => StepFigure::SentLimits {
            current: amperes(inputs.charge_limit_a()),
            voltage: inputs.sent_v().map(volts),
        },
        StepCode::PackShares => {
            let packs = analyses.packs.as_ref()?;
            StepFigure::PackShares {
                least: percent(packs.least_share_pct),
                most: percent(packs.most_share_pct),
                limit: amperes(inputs.pack_limit_now_a()),
            }
        }
        StepCode::LinkPulled => StepFigure::OnLinkLoss {
            stops: inputs.reg.link_loss != LinkLoss::OwnSettings,
            voltage: volts(f.charge_v),
            current: amperes(setting_within_a(f.settings.bank_limit_a)),
        },
        StepCode::PacksFull => StepFigure::HeldAtMost {
            voltage: volts(f.charge_v),
        },
        StepCode::ConverterOn => StepFigure::DcDcCharger {
            from: volts(inputs.way.lockout_v),
            most: amperes(f.settings.converter_setting_a()),
        },
        StepCode::StartVolts => StepFigure::StartBattery {
            voltage: volts(inputs.way.start_v),
        },
        StepCode::ChargerOn => StepFigure::ShoreCharger {
            current: amperes(inputs.mains_charger_a().min(f.settings.setting_limit_a)),
            voltage: volts(f.charge_v),
        },
        StepCode::HotBegin => begin_at(f),
        StepCode::HotRun => StepFigure::EngineSpeed {
            engine: rpm(inputs.eng.rpm),
        },
        StepCode::HotLugs => StepFigure::LugAboveCable {
            most: kelvin(LUG_ABOVE_CABLE_K),
        },
        StepCode::HotAfter => StepFigure::PlateAfterStop {
            plate: celsius(run.alternators[0].soak_peak.rectifier_c),
        },
        StepCode::CutGentle => StepFigure::SmallCurrent {
            below: amperes(0.1 * inputs.alt.rated_a),
        },
        StepCode::CutOrder => {
            let [warning, charging_off, contactor] = f.settings.high_v.map(volts);
            StepFigure::HighVoltage {
                warning,
                charging_off,
                contactor,
            }
        }
        StepCode::CutCold => StepFigure::ByTemperature {
            steps: cell_steps(inputs),
        },
        StepCode::LowOrder => {
            let [warning, loads_off, off] = f.settings.low_v.map(volts);
            StepFigure::LowVoltage {
                warning,
                loads_off,
                off,
            }
        }
        StepCode::MonthHot => StepFigure::HoldsHot {
            hot: amperes(analyses.output.hot_a),
        },
        StepCode::MonthCells => StepFigure::CellSpread {
            most: volts(CELL_SPREAD_V),
        },
        StepCode::MonthWater => StepFigure::DensitySpread {
            most: count(DENSITY_SPREAD).to(2),
        },
        StepCode::MonthFull => StepFigure::Full {
            below: amperes(f.settings.tail_a),
            at: volts(f.charge_v),
        },
        StepCode::MonthEqualise => StepFigure::EqualiseFrom {
            difference: count(EQUALISE_FROM).to(2),
        },
        _ => return None,
    };
    Some(figure)
}

/// How empty the bank is when the hot run begins: what half an hour brings, and
/// a tenth in hand.
fn begin_at(f: &Figures) -> StepFigure {
    let inputs = f.inputs;
    let most_a = f.report.analyses.run.most_a();
    let gain_pct = 50.0 * most_a / inputs.bank.capacity_ah + 10.0;
    let from_pct = inputs.window_high_pct() - gain_pct;
    let low_pct = inputs.window_low_pct();
    StepFigure::BeginAt {
        soc: percent(from_pct.max(low_pct)),
        fills_sooner: from_pct <= low_pct,
    }
}

/// When to stop in a step; none where it says so itself.
pub(super) fn stop(code: StepCode, f: &Figures) -> Option<StepStop> {
    let stop = match code {
        StepCode::FirstAmps => StepStop::BankOrLug {
            bank: volts(f.bank_v),
            lug: celsius(f.lug_c),
        },
        StepCode::ChargerOn => StepStop::BankVoltageOrTemperature {
            voltage: volts(f.bank_v),
            temperature: celsius(f.bank_c),
        },
        StepCode::HotRun | StepCode::MonthHot => StepStop::HotRun {
            case: celsius(f.case_c),
            plate: celsius(f.rectifier_c),
            lug: celsius(f.lug_c),
            coolant: celsius(f.coolant_c),
        },
        StepCode::HotWinding => StepStop::Winding {
            winding: celsius(f.winding_c),
        },
        StepCode::HotLugs => StepStop::Lug {
            lug: celsius(f.lug_c),
        },
        StepCode::HotBank => StepStop::Bank {
            bank: celsius(f.bank_c),
        },
        StepCode::CutGentle | StepCode::LinkZero => StepStop::CurrentRemains {
            within: Quantity::new(CURRENT_GONE_S, QuantityKind::Seconds),
        },
        _ => return None,
    };
    Some(stop)
}
