//! A second alternator on the same engine.

use crate::boat::section;
use crate::boat::{Inputs, WayKind, WhichAlternator};
use crate::boat::{choose, number};
use crate::schema::{choice, effects};
use crate::units::VOLT;

choice! {
    /// What a second alternator does.
    SecondRole {
        None = "none", "There is one alternator";
        Start = "start", "The second alternator charges the start battery";
        House = "house", "The second alternator charges the house bank too";
    }
}

choice! {
    /// How the regulators of two alternators on the house bank go together.
    Regulators {
        Together = "together", "One for both";
        LinkedShare = "linked_share", "Two, linked: equal share of what each gives hot";
        LinkedHeat = "linked_heat", "Two, linked: both kept equally warm";
        Apart = "apart", "Two, each on its own";
    }
}

section! {
    /// Whether there is a second alternator.
    Second {
        role: SecondRole = choose("How many", SecondRole::OPTIONS, 0)
            .help("The first alternator charges the house bank. A second one heats the same air and loads the same engine. Where both charge the house bank, both follow the same regulator settings.");
        regulators: Regulators = choose("Regulators of the two", Regulators::OPTIONS, 0).nameplate()
            .help("Two on their own do not share: once the bank is up to the lower charge voltage, the regulator with the higher one carries everything until it cuts its field, and only then does the other help. A link between the two makes them share. Limits of temperature, current and field are the same for both.")
            .when(Inputs::two_on_house);
        voltage_offset_v: f64 = number("Second regulator's charge voltage, above the first", VOLT, -6.0, 6.0, 0.0).measured()
            .spread_by(0.1)
            .help("How much more the second regulator holds, seen at the battery's posts; below zero when it holds less. A regulator that senses at its alternator holds less at the battery by the voltage drop along the lead. Two that are set alike still differ by 0.05 to 0.1 V for each 12 V (common practice).")
            .when(Inputs::regulators_apart);
    }
}

effects! {
    Second {
        voltage_offset_v: Depends("a regulator that holds more charges on where the other one would stop, but the one alternator that does it is hotter"), Depends("as the current");
    }
}

impl Inputs {
    /// Whether two alternators lie on the house bank.
    pub fn two_on_house(&self) -> bool {
        self.way.kind == WayKind::Direct && self.two.role == SecondRole::House
    }

    /// How the regulators of two alternators on the house bank go together; as one
    /// where there are no two.
    pub fn regulators(&self) -> Regulators {
        if self.two_on_house() {
            self.two.regulators
        } else {
            Regulators::Together
        }
    }

    /// Whether two alternators on the house bank have regulators that know nothing
    /// of each other.
    pub fn regulators_apart(&self) -> bool {
        self.regulators() == Regulators::Apart
    }

    /// How much more than the first one's an alternator's regulator holds \[V\]. A
    /// voltage that the battery sends holds for every regulator.
    pub fn held_offset_v(&self, which: WhichAlternator) -> f64 {
        if which == WhichAlternator::First || !self.regulators_apart() {
            return 0.0;
        }
        let own_v = self.two.voltage_offset_v;
        self.sent_v().map_or(own_v, |sent_v| {
            (self.set_v() + own_v).min(sent_v) - self.held_v()
        })
    }
}
