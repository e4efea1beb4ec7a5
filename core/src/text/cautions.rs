//! The cautions in words.

use crate::guidance::{COLDEST_LITHIUM_C, CautionCode, FLAT_LEAD_FREEZES_C};
use crate::units::Reader;
use crate::units::quantity::celsius;

/// What a caution is about, in a word or three.
pub const fn about(code: CautionCode) -> &'static str {
    match code {
        CautionCode::ShortCircuits => "Short circuits",
        CautionCode::Insulation => "Insulation",
        CautionCode::DisconnectUnderLoad => "Disconnect under load",
        CautionCode::BatterySwitches => "Battery switches",
        CautionCode::TurningParts => "Turning parts",
        CautionCode::HotParts => "Hot parts",
        CautionCode::Exhaust => "Exhaust",
        CautionCode::LeadGas => "Gas from lead batteries",
        CautionCode::FrozenLead => "Frozen lead batteries",
        CautionCode::Equalising => "Equalising",
        CautionCode::Cold => "Cold",
        CautionCode::Mains => "Mains aboard",
        CautionCode::Rules => "Rules",
    }
}

/// The caution in a few sentences.
pub fn sentence(code: CautionCode, reader: &Reader) -> String {
    match code {
        CautionCode::FrozenLead => format!(
            "A flat lead battery freezes at about {}. A frozen one can burst when it is charged: thaw it first.",
            reader.show(celsius(FLAT_LEAD_FREEZES_C))
        ),
        CautionCode::Cold => format!(
            "Never charge a lithium iron phosphate battery below {}.",
            reader.show(celsius(COLDEST_LITHIUM_C))
        ),
        CautionCode::ShortCircuits => "A lithium bank drives thousands of amperes through a dropped spanner, a lead bank nearly as many. Disconnect it, cover the terminals, take off rings, use insulated tools, and fuse it at the terminal with a fuse that can break its short-circuit current.".to_string(),
        CautionCode::Insulation => "A positive lead that chafes on an engine becomes a welder. Sleeve it, clamp it, keep it off belts and exhaust, and measure it against the block before the fuse goes in.".to_string(),
        CautionCode::DisconnectUnderLoad => "When the battery management system disconnects the bank while the alternator charges it directly, the voltage spike can destroy diodes and electronics. Let its charge-disable signal cut the field first, and never open a switch in the output lead.".to_string(),
        CautionCode::BatterySwitches => "Never open a battery switch or take off a lead while the engine runs: the alternator's voltage spike can destroy diodes and electronics.".to_string(),
        CautionCode::TurningParts => "Belts and fans start without warning. Keep clear with the engine running; take the key out before a hand goes near.".to_string(),
        CautionCode::HotParts => "An alternator's case burns skin for half an hour after the engine has stopped. Measure with clamps and infrared, not with hands.".to_string(),
        CautionCode::Exhaust => "An engine or a generator run at anchor can fill the cockpit and cabin with carbon monoxide, your boat's or your neighbour's. Fit an alarm and keep air moving.".to_string(),
        CautionCode::LeadGas => "A lead battery on charge gives off hydrogen, the start battery too. Keep its box vented and sparks away.".to_string(),
        CautionCode::Equalising => "Equalising makes a flooded bank gas hard: ventilate, keep flames away, switch off what does not withstand the voltage, and stay with it. Never equalise AGM, gel or lithium.".to_string(),
        CautionCode::Mains => "Shore power kills, also people in the water beside the boat, and so do the mains of a generator. The two must never feed the same wires at once: a change-over switch keeps them apart. A charger's mains side is work for a licensed electrician.".to_string(),
        CautionCode::Rules => "This is a calculation, not an inspection. The battery maker's data sheet, the code of your flag and your insurer come first; where they ask for a licensed electrician, use one.".to_string(),
    }
}
