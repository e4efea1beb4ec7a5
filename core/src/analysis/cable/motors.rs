//! Windlass and thruster: motors that run for minutes, with cables of their own.

use crate::analysis::cable::lead::{LEAST_A, Lead};
use crate::analysis::cable::{Carries, RunCode, RunEnd, RunNote};
use crate::boat::{CablePlace, Chemistry, Worksheet};
use crate::physics::cable::allowed_v;

/// A motor with a cable of its own from the house bank.
struct Motor {
    code: RunCode,
    to: RunEnd,
    amperes: f64,
    length_m: f64,
    minutes: f64,
    place: CablePlace,
}

/// Windlass and thruster, as far as there are any; what is the same for all that
/// the house bank feeds is as in `house`.
pub(super) fn motors(sheet: &Worksheet, house: &Lead) -> Vec<Lead> {
    let (inputs, cable) = (&sheet.inputs, &sheet.inputs.cable);
    let all = [
        Motor {
            code: RunCode::Windlass,
            to: RunEnd::Windlass,
            amperes: cable.windlass_a,
            length_m: cable.windlass_m,
            minutes: cable.windlass_min,
            place: cable.windlass_place,
        },
        Motor {
            code: RunCode::Thruster,
            to: RunEnd::Thruster,
            amperes: cable.thruster_a,
            length_m: cable.thruster_m,
            minutes: cable.thruster_min,
            place: cable.thruster_place,
        },
    ];
    let lead = |motor: Motor| {
        let mut notes = vec![
            RunNote::ShortDuty {
                minutes: motor.minutes,
            },
            RunNote::FuseByMotorMaker,
        ];
        if inputs.bank.chemistry == Chemistry::Lfp {
            notes.push(RunNote::BankMustGive {
                motor_a: motor.amperes,
                house_a: sheet.bus_peak_a(),
            });
        }
        Lead {
            code: motor.code,
            from: RunEnd::HouseBank,
            to: motor.to,
            amperes: motor.amperes.max(LEAST_A),
            carries: Carries::MotorFullLoad,
            length_m: motor.length_m,
            engine_space: motor.place == CablePlace::Engine,
            allowed_v: allowed_v(cable.motor_drop_pct / 100.0, house.blocks),
            blocks: house.blocks,
            volts: house.volts,
            on_house: true,
            from_alternator: false,
            notes,
        }
    };
    let there = all.into_iter().filter(|motor| motor.amperes > 0.0);
    there.map(lead).collect()
}
