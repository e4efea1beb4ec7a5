//! What is said of a management system that disconnects the bank.

use crate::findings::{
    LessCurrent, LessVoltage, LoadLost, ManagementFinding, ManagementOpens, NotHeldBy, OpensFor,
};
use crate::physics::battery::LFP_MOST_V;
use crate::text::words;
use crate::units::Reader;
use crate::units::quantity::{amperes, celsius, rpm, seconds, volts};

pub(super) fn sentence(finding: &ManagementFinding, reader: &Reader) -> String {
    let show = |quantity| reader.show(quantity);
    match finding {
        ManagementFinding::ManagementOpens(opens) => [
            why(opens, reader),
            follows(opens, reader),
            remedy(&opens.cause, reader),
        ]
        .join(" "),
        ManagementFinding::LimitHeldByLoads {
            limit_a,
            house_a,
            without_a,
            remedy,
        } => format!(
            "The bank stays within the {} it may take only while the house draws {}. With nothing drawn, {} flow into it and the battery management system may disconnect it. {}",
            show(amperes(*limit_a)),
            show(amperes(*house_a)),
            show(amperes(*without_a)),
            less_current(*remedy, reader)
        ),
    }
}

/// Why it disconnects the bank, and when.
fn why(opens: &ManagementOpens, reader: &Reader) -> String {
    let show = |quantity| reader.show(quantity);
    let bank = show(celsius(opens.bank_c));
    let after = format!("{} after the start", show(seconds(opens.after_s)));
    let acts = if opens.field_off_first {
        "stops the alternator"
    } else {
        "disconnects the bank"
    };
    let acts_on_it = if opens.field_off_first {
        "stops the alternator"
    } else {
        "disconnects it"
    };
    match opens.cause {
        OpensFor::OverCurrent {
            bank_a,
            limit_a,
            by_temperature,
            packs,
            not_held_by,
            ..
        } => {
            let at = if by_temperature {
                format!(" with its cells at {bank}")
            } else {
                String::new()
            };
            format!(
                "The battery management system {acts} {after}: {} flow into the bank and it may take {}{at}{}. {}",
                show(amperes(bank_a)),
                show(amperes(limit_a)),
                if packs > 1 {
                    format!(", as its {packs} packs do not share alike")
                } else {
                    String::new()
                },
                unlimited(not_held_by)
            )
        }
        OpensFor::OverVoltage { bank_v, .. } => format!(
            "The battery management system {acts} {after}: the bank's cells are charged at {}, more than {} a cell.",
            show(volts(bank_v).to(1)),
            show(volts(LFP_MOST_V))
        ),
        OpensFor::Cold { .. } => format!(
            "The bank cannot be charged: its cells are at {bank}, and the battery management system {acts_on_it} {after}. Lithium cells that are charged too cold are damaged for good."
        ),
        OpensFor::Hot => format!(
            "The bank cannot be charged: its cells are at {bank}, and the battery management system {acts_on_it} {after}."
        ),
    }
}

/// Why nothing holds the current to the limit.
const fn unlimited(by: NotHeldBy) -> &'static str {
    match by {
        NotHeldBy::Charger => {
            "A DC-DC charger gives what it is set to, whatever the bank may take."
        }
        NotHeldBy::BuiltInRegulator => {
            "A built-in regulator holds a voltage only; it does not know what the bank may take."
        }
        NotHeldBy::CurrentCap => {
            "The regulator's current cap lies above that, or leaves no room for it."
        }
        NotHeldBy::SignalOnly => {
            "A charge-disable signal says stop, not how much: the regulator does not know that limit."
        }
        NotHeldBy::ClosedPacks => {
            "Drop-in packs tell nobody what they may take, and give no warning."
        }
        NotHeldBy::RegulatorWithoutLink => {
            "Without a data link or a current cap the regulator does not know that limit."
        }
    }
}

/// What follows for charging and for the electronics.
fn follows(opens: &ManagementOpens, reader: &Reader) -> String {
    if opens.field_off_first {
        "The field is off first, so no load is cut off and nothing is damaged; but the bank is no longer charged, or only on and off.".to_string()
    } else {
        load_lost(opens.load_lost.as_ref(), reader)
    }
}

/// What follows for the electronics.
fn load_lost(lost: Option<&LoadLost>, reader: &Reader) -> String {
    let show = |quantity| reader.show(quantity);
    let Some(lost) = lost else {
        return "The alternator keeps its start battery, so there is no voltage spike; the bank is no longer charged, and everything on the house side loses its battery.".to_string();
    };
    let loses = if lost.both {
        "Both alternators then lose their load".to_string()
    } else {
        format!(
            "The {} then loses its load",
            words::alternator(lost.alternator)
        )
    };
    let mut spikes = format!(
        "the voltage jumps to {} at {}",
        words::voltage_range(lost.spike, reader),
        show(rpm(lost.engine_rpm))
    );
    if let Some(top) = lost.top_spike {
        spikes += &format!(
            ", and to {} with the engine at {}",
            words::voltage_range(top, reader),
            show(rpm(lost.top_rpm))
        );
    }
    let withstand = show(volts(lost.withstand_v).to(0));
    let what = match lost.left_v {
        Some(left_v) => format!(
            "without protection {spikes}; the protection you entered leaves {}, and electronics withstand {withstand}",
            show(volts(left_v).to(0))
        ),
        None => format!("{spikes}; electronics withstand {withstand}"),
    };
    format!("{loses} of {} and {what}.", show(amperes(lost.lost_a)))
}

/// What to set or fit.
fn remedy(cause: &OpensFor, reader: &Reader) -> String {
    match *cause {
        OpensFor::OverCurrent { remedy, .. } => less_current(remedy, reader),
        OpensFor::OverVoltage { remedy, .. } => less_voltage(remedy, reader),
        OpensFor::Cold { coldest_c } => format!(
            "Warm the bank above {} before anything charges it, and keep the alternator from charging until then.",
            reader.show(celsius(coldest_c))
        ),
        OpensFor::Hot => format!(
            "Let it cool below {}, better below {}, and bring it more air.",
            reader.show(celsius(60.0)),
            reader.show(celsius(50.0))
        ),
    }
}

fn less_current(remedy: LessCurrent, reader: &Reader) -> String {
    let most = |a| words::at_most(amperes(a), reader);
    let cap = |a, each| match each {
        true => format!("{} on each alternator", most(a)),
        false => most(a),
    };
    match remedy {
        LessCurrent::BetterTemperature {
            cold,
            set_a,
            by_link,
        } => {
            let (first, like) = if cold {
                ("Warm the bank to", "cold")
            } else {
                ("Let the bank cool below", "hot")
            };
            let good_c = if cold { 10.0 } else { 50.0 };
            let otherwise = if by_link {
                ", or fit an external regulator with a data link, which follows the limit. With neither, "
            } else {
                ". Until then "
            };
            format!(
                "{first} {} before it is charged, so that it may take more{otherwise}{} is the most to set while the bank is as {like} as this.",
                reader.show(celsius(good_c)),
                most(set_a)
            )
        }
        LessCurrent::SetCharger { set_a } => {
            format!("Set the DC-DC charger's output to {} or less.", most(set_a))
        }
        LessCurrent::SetChargerAndSecond { set_a } => format!(
            "Set the DC-DC charger's output and the second alternator's current cap to {} or less together.",
            most(set_a)
        ),
        LessCurrent::SetCap {
            set_a,
            each,
            by_link,
        } => format!(
            "Set a current cap of {}, which holds even when nothing aboard draws{}.",
            cap(set_a, each),
            if by_link {
                ", or let the battery tell the regulator its limit over a data link"
            } else {
                ""
            }
        ),
        LessCurrent::FitRegulator {
            set_a,
            each,
            charger_a,
        } => format!(
            "Fit an external regulator with a current cap of {}, or charge through a DC-DC charger of {} at most.",
            cap(set_a, each),
            most(charger_a)
        ),
    }
}

/// What to do about a charge voltage that is too high for lithium cells.
pub(super) fn less_voltage(remedy: LessVoltage, reader: &Reader) -> String {
    let show = |v| reader.show(volts(v).to(1));
    match remedy {
        LessVoltage::FitRegulator { usual_v } => format!(
            "A built-in regulator cannot be set: fit an external one for {0}, or charge through a DC-DC charger set to {0}.",
            show(usual_v)
        ),
        LessVoltage::SetWithoutCompensation { usual_v } => format!(
            "Set the charge voltage to {} and switch temperature compensation off.",
            show(usual_v)
        ),
        LessVoltage::Set { usual_v } => format!("Set the charge voltage to {}.", show(usual_v)),
    }
}
