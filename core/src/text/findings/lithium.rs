//! What is said of a lithium bank.

use crate::boat::{BanksJoined, OldConnection};
use crate::findings::LithiumFinding;
use crate::physics::battery::{LFP_CHARGE_V, LFP_MOST_V};
use crate::text::findings::management::less_voltage;
use crate::units::Reader;
use crate::units::quantity::{Quantity, QuantityKind, amperes, celsius, volts};

/// Where a cold bank may take its full current again \[°C\].
const WARM_C: f64 = 10.0;
/// Above this a hot bank may take less \[°C\].
const HOT_C: f64 = 50.0;
/// Above this it may take nothing \[°C\].
const HOTTEST_C: f64 = 60.0;

pub(super) fn sentence(finding: &LithiumFinding, reader: &Reader) -> String {
    let show = |quantity| reader.show(quantity);
    match finding {
        LithiumFinding::LithiumCompensated {
            compensation_mv,
            moves_v,
        } => {
            let compensation = Quantity::new(*compensation_mv, QuantityKind::Compensation).to(1);
            let moves = volts(*moves_v).to(2);
            // At 25 °C it moves nothing yet.
            let now = if reader.number(moves) == reader.number(volts(0.0).to(2)) {
                String::new()
            } else {
                format!(", now by {}", show(moves))
            };
            format!(
                "Temperature compensation of {} a cell moves the charge voltage with every degree{now}. It is meant for lead: switch it off for lithium.",
                show(compensation)
            )
        }
        LithiumFinding::LithiumFrozen { bank_c, coldest_c } => format!(
            "The bank is at {} and cannot be charged: lithium iron phosphate must get no current below {}, as that damages its cells for good. Warm it first.",
            show(celsius(*bank_c)),
            show(celsius(*coldest_c))
        ),
        LithiumFinding::LithiumTooHot { bank_c } => format!(
            "The bank is at {} and cannot be charged: lithium iron phosphate must get no current above {}. Let it cool, better below {}.",
            show(celsius(*bank_c)),
            show(celsius(HOTTEST_C)),
            show(celsius(HOT_C))
        ),
        LithiumFinding::LithiumCold { bank_c, limit_a } => format!(
            "At {} the bank may take no more than {}, more as its cells warm, and all of its limit from {} on.",
            show(celsius(*bank_c)),
            show(amperes(*limit_a)),
            show(celsius(WARM_C))
        ),
        LithiumFinding::LithiumHot { bank_c, limit_a } => format!(
            "The bank is at {}: above {} it may take no more than {}, above {} nothing, and it ages fast. Bring it air.",
            show(celsius(*bank_c)),
            show(celsius(HOT_C)),
            show(amperes(*limit_a)),
            show(celsius(HOTTEST_C))
        ),
        LithiumFinding::BanksJoinedToLithium {
            joined,
            built_in,
            held_v,
            charge_v,
        } => joined_to_lithium(*joined, *built_in, [*held_v, *charge_v], reader),
        LithiumFinding::OldConnectionGoes { connection } => match connection {
            // What opens such a relay, and what lithium rests at: common practice.
            OldConnection::Relay => format!(
                "Take out the relay that joins the banks today, or disable it, before the lithium bank is connected: in a 12 V system it opens at about {}, lithium rests above that, and so the two banks would stay joined, engine or not, with nothing to limit the current between them.",
                show(volts(12.8).to(1))
            ),
            // What a diode loses at its rated current: common practice.
            OldConnection::Splitter => format!(
                "Take the diode splitter out of the charge lead: the {} to {} that it loses are missing at the bank, which would never get full, and its heat adds to that of the alternator.",
                reader.number(volts(0.7).to(1)),
                show(volts(0.9).to(1))
            ),
            OldConnection::Switch | OldConnection::Charger => "Give the start battery and the lithium bank circuits of their own: with one bank, or a switch turned by hand, a turn of the switch can take the battery off a running alternator, or join full lithium to empty lead.".to_string(),
        },
        LithiumFinding::LithiumOvervoltage { charge_v, remedy } => format!(
            "The bank is charged to {}, more than {} a cell. As it fills, the battery management system disconnects it with the alternator charging. {}",
            show(volts(*charge_v)),
            show(volts(LFP_MOST_V)),
            less_voltage(*remedy, reader)
        ),
        LithiumFinding::ChargeVoltageNoRoom {
            regulator,
            charge_v,
            cell_v,
            opens_v,
            set_v,
        } => {
            let what = if *regulator {
                "voltage the regulator holds"
            } else {
                "charge voltage"
            };
            format!(
                "The {what}, {}, is {} a cell. The battery management system opens at {} a cell ({}): one cell a little ahead of the others, or a regulator's ripple, and it disconnects the bank under load. Set {} ({} a cell); the bank gets as full.",
                show(volts(*charge_v)),
                show(volts(*cell_v).to(2)),
                show(volts(LFP_MOST_V)),
                show(volts(*opens_v)),
                show(volts(*set_v)),
                show(volts(LFP_CHARGE_V))
            )
        }
    }
}

/// What a relay or a splitter does to a lithium bank, and what to do instead.
fn joined_to_lithium(
    joined: BanksJoined,
    built_in: bool,
    [held_v, charge_v]: [f64; 2],
    reader: &Reader,
) -> String {
    let show = |quantity| reader.show(quantity);
    let wrong = match joined {
        // What opens such a relay, and what lithium rests at: common practice.
        BanksJoined::Nothing | BanksJoined::Relay => format!(
            "A relay that joins the banks does not suit lithium. In a 12 V system it opens at about {} and lithium rests above that, so the banks stay joined with the engine off: the lithium bank goes on charging the start battery, and when the relay closes on a low bank nothing limits the current through it.",
            show(volts(12.8).to(1))
        ),
        BanksJoined::Splitter | BanksJoined::LowLoss if built_in && held_v < charge_v => format!(
            "{} loses {}, and the built-in regulator does not see that: the bank gets {} of the {} it needs, and does not fill. The start battery gets the same charge, meant for lithium.",
            splitter(joined),
            show(volts(joined.loss_v()).to(1)),
            show(volts(held_v)),
            show(volts(charge_v))
        ),
        BanksJoined::Splitter | BanksJoined::LowLoss => format!(
            "{} gives the lead start battery the charge that is meant for lithium, for as long as the engine runs, and is one more hot part in the charge lead.",
            splitter(joined)
        ),
    };
    format!(
        "{wrong} Leave it out: connect the alternator to the house bank and charge the start battery from there through a DC-DC charger, or the other way round."
    )
}

const fn splitter(joined: BanksJoined) -> &'static str {
    match joined {
        BanksJoined::LowLoss => "A low-loss splitter",
        _ => "A diode splitter",
    }
}
