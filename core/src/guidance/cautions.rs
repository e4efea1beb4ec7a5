//! Cautions that hold whatever the figures say, each with the place where it
//! belongs, so that it stands beside the work it warns of.

use crate::boat::{Chemistry, Inputs};

/// CautionTopic a caution belongs.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum CautionTopic {
    /// Belts, pulleys, fans.
    Belt,
    /// What gets hot.
    Heat,
    /// Cables, fuses, posts.
    Cable,
    /// A bank or switch that opens under charge.
    Disconnect,
    /// The running engine.
    Exhaust,
    /// Lead batteries.
    Lead,
    /// Charging in the cold.
    Cold,
    /// Mains.
    Shore,
    /// Codes, makers, insurers.
    Rules,
}

impl CautionTopic {
    /// Every place, in the order of the list.
    pub const ALL: [CautionTopic; 9] = [
        CautionTopic::Cable,
        CautionTopic::Disconnect,
        CautionTopic::Belt,
        CautionTopic::Heat,
        CautionTopic::Exhaust,
        CautionTopic::Lead,
        CautionTopic::Cold,
        CautionTopic::Shore,
        CautionTopic::Rules,
    ];
}

/// A caution that holds whatever the figures say.
#[derive(Debug, Clone, Copy)]
pub struct Caution {
    /// What it is about.
    pub about: &'static str,
    /// The sentence.
    pub text: &'static str,
    /// CautionTopic it belongs.
    pub place: CautionTopic,
    /// Whether it concerns a boat.
    pub applies: fn(&Inputs) -> bool,
}

/// The cautions that concern a boat, in the order of the list.
pub fn cautions(inputs: &Inputs) -> impl Iterator<Item = &'static Caution> + '_ {
    CAUTIONS.iter().filter(|caution| (caution.applies)(inputs))
}

/// Those of them that belong to one place.
pub fn cautions_at(
    inputs: &Inputs,
    place: CautionTopic,
) -> impl Iterator<Item = &'static Caution> + '_ {
    cautions(inputs).filter(move |caution| caution.place == place)
}

fn opens_under_charge(inputs: &Inputs) -> bool {
    inputs.bank.chemistry == Chemistry::Lfp && inputs.straight_into_house()
}

/// The usual cautions of this work.
pub const CAUTIONS: &[Caution] = &[
    Caution {
        about: "Short circuits",
        text: "A lithium bank drives thousands of amperes through a dropped spanner, a lead bank nearly as many. Disconnect it, cover the terminals, take off rings, use insulated tools, and fuse it at the terminal with a fuse that can break its short-circuit current.",
        place: CautionTopic::Cable,
        applies: |_| true,
    },
    Caution {
        about: "Insulation",
        text: "A positive lead that chafes on an engine becomes a welder. Sleeve it, clamp it, keep it off belts and exhaust, and measure it against the block before the fuse goes in.",
        place: CautionTopic::Cable,
        applies: |_| true,
    },
    Caution {
        about: "Disconnect under load",
        text: "When the battery management system disconnects the bank while the alternator charges it directly, the voltage spike can destroy diodes and electronics. Let its charge-disable signal cut the field first, and never open a switch in the output lead.",
        place: CautionTopic::Disconnect,
        applies: opens_under_charge,
    },
    Caution {
        about: "Battery switches",
        text: "Never open a battery switch or take off a lead while the engine runs: the alternator's voltage spike can destroy diodes and electronics.",
        place: CautionTopic::Disconnect,
        applies: |inputs| !opens_under_charge(inputs),
    },
    Caution {
        about: "Turning parts",
        text: "Belts and fans start without warning. Keep clear with the engine running; take the key out before a hand goes near.",
        place: CautionTopic::Belt,
        applies: Inputs::engine_charges,
    },
    Caution {
        about: "Hot parts",
        text: "An alternator's case burns skin for half an hour after the engine has stopped. Measure with clamps and infrared, not with hands.",
        place: CautionTopic::Heat,
        applies: Inputs::engine_charges,
    },
    Caution {
        about: "Exhaust",
        text: "An engine run at anchor can fill the cockpit and cabin with carbon monoxide, your boat's or your neighbour's. Fit an alarm and keep air moving.",
        place: CautionTopic::Exhaust,
        applies: Inputs::engine_charges,
    },
    Caution {
        about: "Gas from lead batteries",
        text: "A lead battery on charge gives off hydrogen, the start battery too. Keep its box vented and sparks away.",
        place: CautionTopic::Lead,
        applies: |_| true,
    },
    Caution {
        about: "Frozen lead batteries",
        text: "A flat lead battery freezes at about −10 °C. A frozen one can burst when it is charged: thaw it first.",
        place: CautionTopic::Lead,
        applies: |inputs| inputs.bank.chemistry != Chemistry::Lfp,
    },
    Caution {
        about: "Equalising",
        text: "Equalising makes a flooded bank gas hard: ventilate, keep flames away, switch off what does not withstand the voltage, and stay with it. Never equalise AGM, gel or lithium.",
        place: CautionTopic::Lead,
        applies: |inputs| inputs.bank.chemistry == Chemistry::Flooded,
    },
    Caution {
        about: "Cold",
        text: "Never charge a lithium iron phosphate battery below 0 °C.",
        place: CautionTopic::Cold,
        applies: |inputs| inputs.bank.chemistry == Chemistry::Lfp,
    },
    Caution {
        about: "Mains aboard",
        text: "Shore power kills, also people in the water beside the boat. A charger's mains side is work for a licensed electrician.",
        place: CautionTopic::Shore,
        applies: |inputs| inputs.shore.charger_a > 0.0,
    },
    Caution {
        about: "Rules",
        text: "This is a calculation, not an inspection. The battery maker's data sheet, the code of your flag and your insurer come first; where they ask for a licensed electrician, use one.",
        place: CautionTopic::Rules,
        applies: |_| true,
    },
];
