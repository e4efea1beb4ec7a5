//! Cautions that hold whatever the figures say, each with the place where it
//! belongs, so that it stands beside the work it warns of. Their sentences are in
//! `text::cautions`.

use crate::boat::{Chemistry, Inputs};
use crate::schema::codes;

codes! {
    /// A caution.
    CautionCode {
        /// A tool across a battery's terminals.
        ShortCircuits = "short_circuits",
        /// A positive lead that chafes.
        Insulation = "insulation",
        /// A bank that disconnects while an alternator charges it directly.
        DisconnectUnderLoad = "disconnect_under_load",
        /// A battery switch opened with the engine running.
        BatterySwitches = "battery_switches",
        /// Belts and fans.
        TurningParts = "turning_parts",
        /// Parts that burn skin.
        HotParts = "hot_parts",
        /// Carbon monoxide.
        Exhaust = "exhaust",
        /// Hydrogen from lead batteries.
        LeadGas = "lead_gas",
        /// A frozen lead battery.
        FrozenLead = "frozen_lead",
        /// Equalising a flooded bank.
        Equalising = "equalising",
        /// Charging lithium in the cold.
        Cold = "cold",
        /// Shore power.
        Mains = "mains",
        /// Codes, makers, insurers.
        Rules = "rules",
    }
}

/// What a caution belongs to.
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

/// A flat lead battery freezes at about this \[°C\]; common practice.
pub const FLAT_LEAD_FREEZES_C: f64 = -10.0;
/// Lithium iron phosphate must not be charged below this \[°C\]; common practice.
pub const COLDEST_LITHIUM_C: f64 = 0.0;

/// A caution that holds whatever the figures say.
#[derive(Debug, Clone, Copy)]
pub struct Caution {
    /// Its name.
    pub code: CautionCode,
    /// What it belongs to.
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
        code: CautionCode::ShortCircuits,
        place: CautionTopic::Cable,
        applies: |_| true,
    },
    Caution {
        code: CautionCode::Insulation,
        place: CautionTopic::Cable,
        applies: |_| true,
    },
    Caution {
        code: CautionCode::DisconnectUnderLoad,
        place: CautionTopic::Disconnect,
        applies: opens_under_charge,
    },
    Caution {
        code: CautionCode::BatterySwitches,
        place: CautionTopic::Disconnect,
        applies: |inputs| !opens_under_charge(inputs),
    },
    Caution {
        code: CautionCode::TurningParts,
        place: CautionTopic::Belt,
        applies: Inputs::engine_charges,
    },
    Caution {
        code: CautionCode::HotParts,
        place: CautionTopic::Heat,
        applies: Inputs::engine_charges,
    },
    Caution {
        code: CautionCode::Exhaust,
        place: CautionTopic::Exhaust,
        applies: |inputs| inputs.engine_charges() || inputs.has_generator(),
    },
    Caution {
        code: CautionCode::LeadGas,
        place: CautionTopic::Lead,
        applies: |_| true,
    },
    Caution {
        code: CautionCode::FrozenLead,
        place: CautionTopic::Lead,
        applies: |inputs| inputs.bank.chemistry != Chemistry::Lfp,
    },
    Caution {
        code: CautionCode::Equalising,
        place: CautionTopic::Lead,
        applies: |inputs| inputs.bank.chemistry == Chemistry::Flooded,
    },
    Caution {
        code: CautionCode::Cold,
        place: CautionTopic::Cold,
        applies: |inputs| inputs.bank.chemistry == Chemistry::Lfp,
    },
    Caution {
        code: CautionCode::Mains,
        place: CautionTopic::Shore,
        applies: |inputs| inputs.mains_charger_a() > 0.0,
    },
    Caution {
        code: CautionCode::Rules,
        place: CautionTopic::Rules,
        applies: |_| true,
    },
];
