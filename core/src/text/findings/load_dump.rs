//! What is said of a battery that disconnects under load.

use crate::findings::LoadDumpFinding;
use crate::physics::dump::TOUCH_V;
use crate::text::words;
use crate::units::Reader;
use crate::units::quantity::{Quantity, QuantityKind, volts};

pub(super) fn sentence(finding: &LoadDumpFinding, reader: &Reader) -> String {
    let whole = |v| reader.show(volts(v).to(0));
    let tenths = |v| reader.show(volts(v).to(1));
    let joules = |j| reader.show(Quantity::new(j, QuantityKind::SpikeEnergy));
    match *finding {
        LoadDumpFinding::DisconnectNotSaid {
            alternator,
            spike,
            withstand_v,
        } => format!(
            "Nothing is entered yet on what protects the electronics when the bank disconnects under load: without protection the voltage at the {} jumps to {}, and electronics withstand {}. Answer the questions under “Load dump”.",
            words::alternator(alternator),
            words::voltage_range(spike, reader),
            whole(withstand_v)
        ),
        LoadDumpFinding::DisconnectUnguarded {
            alternator,
            left,
            withstand_v,
            external_regulator,
            closed_packs,
        } => format!(
            "If the bank disconnects under load, a voltage spike of {} from the {} reaches electronics that withstand {}. {}",
            words::voltage_range(left, reader),
            words::alternator(alternator),
            whole(withstand_v),
            if closed_packs {
                "Drop-in packs give no signal that could cut the field first: fit a surge suppressor, keep a lead battery on the alternator, or charge through a DC-DC charger."
            } else if external_regulator {
                "Let the charge-disable signal of the battery management system cut the field first, and fit a surge suppressor or keep a lead battery on the alternator."
            } else {
                "A built-in regulator has no field wire to cut: fit a surge suppressor, keep a lead battery on the alternator, or charge through a DC-DC charger."
            }
        ),
        LoadDumpFinding::WarningAlone {
            alternator,
            spike,
            by_link,
        } => format!(
            "Only the {} stands between the {} and the electronics. A battery management system that opens without it, on a short circuit or a fault of its own, leaves {}: a surge suppressor, or a lead battery on the alternator, is the second defence.",
            if by_link {
                "data link"
            } else {
                "charge-disable signal"
            },
            words::alternator(alternator),
            words::voltage_range(spike, reader)
        ),
        LoadDumpFinding::SwitchInLead { left } => {
            let leaves = match left {
                Some(left) => format!("leaves {}", words::voltage_range(left, reader)),
                None => "cuts its load off".to_string(),
            };
            format!(
                "A switch in the output lead, opened with the engine running, {leaves}. Take it out, or make sure that nobody can open it before the engine stands still."
            )
        }
        LoadDumpFinding::TouchVoltage { charge_v } => format!(
            "The bank is charged at {}. Above {touch} direct current protection against touch begins, and 48 V electronics are not made for it (ISO 21780, from memory). Set a charge voltage below {touch}.",
            tenths(charge_v),
            touch = whole(TOUCH_V)
        ),
        LoadDumpFinding::ClampTooLow { clamp_v, charge_v } => format!(
            "A surge suppressor of {} conducts all the time at a charge voltage of {} and burns out. Fit one well above that and below what the electronics withstand.",
            tenths(clamp_v),
            tenths(charge_v)
        ),
        LoadDumpFinding::ClampTooSmall { clamp_j, needs_j } => format!(
            "The surge suppressor takes {} at once and would have to take up to {}: the first voltage spike may destroy it. Fit a larger one, or several.",
            joules(clamp_j),
            joules(needs_j)
        ),
    }
}
