//! How the battery talks to the regulator: not at all, by a charge-disable
//! signal, or over a data link; and what it says reaches.

use serde::Serialize;

use crate::boat::{Chemistry, Inputs, RegulatorKind, Said, WayKind};
use crate::physics::battery::{LFP_BLOCK_CELLS, LFP_CHARGE_V};
use crate::schema::choice;

choice! {
    /// What the regulator is told by the battery's management system.
    RegulatorLink {
        None = "none", "Nothing";
        Limits = "limits", "Data link: the battery sends the current it may take";
        Signal = "signal", "A charge-disable signal only";
        LimitsAndVolts = "limits_and_volts", "Data link: the battery sends current and voltage limits";
    }
}

impl RegulatorLink {
    /// Whether limits are sent over a data link.
    pub const fn sends_limits(self) -> bool {
        matches!(self, RegulatorLink::Limits | RegulatorLink::LimitsAndVolts)
    }
}

choice! {
    /// What a regulator does when its data link is lost.
    LinkLoss {
        Unsaid = "unsaid", "Not known yet";
        Stops = "stops", "It stops charging";
        OwnSettings = "own", "It goes on with its own set voltages";
    }
}

/// Why a signal or data link cannot reach what charges the bank.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum NoLink {
    /// A built-in regulator has no input for either.
    BuiltInRegulator,
    /// The packs have neither a signal nor a data link.
    ClosedPacks,
    /// The alternator charges the start battery; the DC-DC charger does not hear it.
    DcDcCharger,
}

impl Inputs {
    /// Whether the battery could tell the regulator anything.
    pub(super) fn can_be_linked(&self) -> bool {
        self.reg.kind == RegulatorKind::External
            && self.on_house()
            && self.bank.chemistry == Chemistry::Lfp
            && !self.packs_closed()
    }

    /// Whether the input for it is of any use, or stands at something that has no
    /// effect and must be seen.
    pub(super) fn link_is_asked(&self) -> bool {
        self.can_be_linked() || self.link_without_effect().is_some()
    }

    /// What the battery tells the regulator, where it reaches it.
    pub fn link(&self) -> RegulatorLink {
        if self.can_be_linked() {
            self.reg.link
        } else {
            RegulatorLink::None
        }
    }

    /// Why what was chosen of signal and link has no effect; none where it has, and
    /// where nothing was chosen.
    pub fn link_without_effect(&self) -> Option<NoLink> {
        if self.reg.link == RegulatorLink::None || self.bank.chemistry != Chemistry::Lfp {
            return None;
        }
        if self.packs_closed() {
            Some(NoLink::ClosedPacks)
        } else if !self.on_house() {
            Some(NoLink::DcDcCharger)
        } else if self.reg.kind == RegulatorKind::Internal {
            Some(NoLink::BuiltInRegulator)
        } else {
            None
        }
    }

    /// Whether the bank's charge limit is held through a data link. A DC-DC
    /// charger beside a second alternator does not hear it: where its output
    /// alone is above the limit, no regulator can hold that.
    pub fn limit_linked(&self) -> bool {
        let charger_a = match self.way.kind {
            WayKind::Direct => 0.0,
            WayKind::Converter => self.charger_a(),
        };
        self.link().sends_limits() && charger_a <= self.charge_limit_a()
    }

    /// The voltage limit that the battery sends over a data link \[V\]: what lithium
    /// iron phosphate is charged to day by day; none where it sends none.
    pub fn sent_v(&self) -> Option<f64> {
        let sends = self.link() == RegulatorLink::LimitsAndVolts && self.limit_linked();
        sends.then(|| LFP_CHARGE_V * LFP_BLOCK_CELLS * self.bank.nominal_v.blocks())
    }

    /// Whether a charge-disable signal of the management system cuts the field.
    pub fn charge_disable(&self) -> Said {
        if self.packs_closed() {
            Said::No
        } else if self.link() == RegulatorLink::Signal {
            Said::Yes
        } else {
            self.guard.warning
        }
    }

    /// Whether the field of every alternator on the house bank is off before the
    /// management system opens its contactor: by a charge-disable signal, or over a
    /// data link on which the limit goes to nothing.
    pub fn field_off_first(&self) -> bool {
        self.can_be_linked() && (self.link().sends_limits() || self.charge_disable() == Said::Yes)
    }
}
