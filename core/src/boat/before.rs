//! The boat as it is before the change: where arrangements start from.

use crate::boat::section;
use crate::boat::{
    Bank, BanksJoined, Chemistry, Inputs, Packs, RegulatorKind, RegulatorLink, SecondRole, WayKind,
    Worksheet, key,
};
use crate::boat::{choose, optional};
use crate::schema::{choice, effects};
use crate::units::AMPERE_HOUR;

choice! {
    /// What the house bank is made of today.
    OldBattery {
        Flooded = "flooded", "Lead, flooded";
        Agm = "agm", "Lead, AGM";
        Gel = "gel", "Lead, gel";
        Lfp = "lfp", "Lithium already";
    }
}

impl OldBattery {
    /// Its chemistry.
    pub fn chemistry(self) -> Chemistry {
        match self {
            OldBattery::Flooded => Chemistry::Flooded,
            OldBattery::Agm => Chemistry::Agm,
            OldBattery::Gel => Chemistry::Gel,
            OldBattery::Lfp => Chemistry::Lfp,
        }
    }
}

choice! {
    /// How the alternator is connected to the house bank today.
    OldConnection {
        Switch = "switch", "One bank, or a battery switch by hand";
        Relay = "relay", "A relay that joins both banks while charging";
        Splitter = "splitter", "A diode splitter";
        Charger = "charger", "Through a DC-DC charger";
    }
}

section! {
    /// The boat before the change.
    Before {
        battery: OldBattery = choose("House batteries today", OldBattery::OPTIONS, 0).nameplate()
            .help("Printed on the case. Only the comparison asks for it: it shows what the change brings.");
        connection: OldConnection = choose("Alternator's connection today", OldConnection::OPTIONS, 0).nameplate()
            .help("Follow the thick cable from the alternator's B+ post. What joins or splits lead batteries is seldom right for lithium.");
        capacity_ah: Option<f64> = optional("Capacity today", AMPERE_HOUR, 10.0, 5000.0, "as the new bank", |w| Some(w.inputs.bank.capacity_ah)).nameplate()
            .help("On the labels; add up batteries in parallel.");
    }
}

effects! {
    Before: no effect
}

impl Worksheet {
    /// The inputs of the boat before the change; none where nobody has said
    /// what is aboard.
    pub fn before(&self) -> Option<Inputs> {
        let asked = [key!(before.battery), key!(before.connection)];
        let anything = asked.iter().any(|key| self.is_said(*key));
        anything.then(|| self.inputs.before_the_change())
    }
}

impl Inputs {
    /// The boat before the change: the old bank with what is usual for it, the
    /// stock alternator with its built-in regulator, the old connection.
    pub fn before_the_change(&self) -> Inputs {
        let mut old = *self;
        old.bank = Bank {
            chemistry: self.before.battery.chemistry(),
            nominal_v: self.bank.nominal_v,
            capacity_ah: self.before.capacity_ah.unwrap_or(self.bank.capacity_ah),
            temperature_c: self.bank.temperature_c,
            harness_mohm: self.bank.harness_mohm,
            ..Bank::default()
        };
        old.packs = Packs::default();
        old.reg.kind = RegulatorKind::Internal;
        old.reg.link = RegulatorLink::None;
        old.two.role = SecondRole::None;
        (old.way.kind, old.way.joined) = match self.before.connection {
            OldConnection::Charger => (WayKind::Converter, BanksJoined::Nothing),
            OldConnection::Switch => (WayKind::Direct, BanksJoined::Nothing),
            OldConnection::Relay => (WayKind::Direct, BanksJoined::Relay),
            OldConnection::Splitter => (WayKind::Direct, BanksJoined::Splitter),
        };
        // A voltage that was measured with another connection is not that of
        // this one: the regulator senses before the diodes.
        if old.joined() != self.joined() {
            let (was_v, is_v) = (self.joined().loss_v(), old.joined().loss_v());
            old.reg.fixed_v = self.reg.fixed_v.map(|held_v| held_v + was_v - is_v);
        }
        old
    }
}

#[cfg(test)]
mod tests {
    use crate::boat::{Chemistry, OldConnection, RegulatorKind, WayKind, Worksheet, key};
    use crate::schema::FieldType;

    #[test]
    fn a_splitter_costs_the_bank_its_volts() {
        let mut sheet = Worksheet::default();
        assert_eq!(sheet.before(), None);
        sheet
            .state(key!(before.connection), OldConnection::Splitter.to_value())
            .expect("an option");
        let old = sheet.before().expect("it is said");
        // 14.2 V of the regulator less 0.8 V of the diodes.
        assert!((old.held_v() - 13.4).abs() < 1e-9);
        assert_eq!(old.bank.chemistry, Chemistry::Flooded);
        assert_eq!(old.way.kind, WayKind::Direct);
        assert_eq!(old.reg.kind, RegulatorKind::Internal);
    }
}
