//! The charging arrangement.

use crate::boat::section;
use crate::boat::{Inputs, InstalledAlternator, SecondRole};
use crate::boat::{choose, number, optional};
use crate::schema::{choice, effects};
use crate::units::{AMPERE, PERCENT, VOLT};

choice! {
    /// How the alternator's current reaches the house bank.
    WayKind {
        Direct = "direct", "Direct: alternator to house bank";
        Converter = "converter", "Through a DC-DC charger: alternator to start battery to house bank";
    }
}

choice! {
    /// What lies between an alternator that is connected direct and the house
    /// bank, and charges the start battery as well.
    BanksJoined {
        Nothing = "nothing", "Nothing but fuse and switch";
        Relay = "relay", "A relay that joins both banks while charging";
        Splitter = "splitter", "A diode splitter";
        LowLoss = "low_loss", "A low-loss splitter, with transistors for diodes";
    }
}

impl BanksJoined {
    /// What it loses between the alternator and the bank \[V\]: 0.7 to 0.9 V for
    /// a diode, 0.1 V for a transistor; common practice, no source.
    pub(crate) const fn loss_v(self) -> f64 {
        match self {
            BanksJoined::Nothing | BanksJoined::Relay => 0.0,
            BanksJoined::Splitter => 0.8,
            BanksJoined::LowLoss => 0.1,
        }
    }
}

choice! {
    /// Where the start battery gets its charge when the machine works straight
    /// into the house bank.
    StartKept {
        Apart = "apart", "Something else";
        House = "house", "A DC-DC charger from the house bank to the start battery";
    }
}

section! {
    /// The charging arrangement.
    Way {
        kind: WayKind = choose("Arrangement", WayKind::OPTIONS, 1)
            .help("Direct is quicker and asks more of the alternator; through a DC-DC charger the alternator sees a steady, modest load.");
        joined: BanksJoined = choose("Between alternator and house bank", BanksJoined::OPTIONS, 0).nameplate()
            .help("What is to charge the start battery as well. Relays and splitters are made for two lead banks; what one does to lithium is said among the warnings.")
            .when(Inputs::may_be_joined);
        converter_a: Option<f64> = optional("DC-DC charger output", AMPERE, 1.0, 1000.0, "a size that takes half of what the alternator is rated for", |w| Some(w.inputs.usual_charger_a())).nameplate().spread_pct(25.0)
            .help("Rated current on the house side; add up chargers in parallel.")
            .when(|i| i.way.kind == WayKind::Converter);
        converter_efficiency_pct: f64 = number("DC-DC charger efficiency", PERCENT, 50.0, 99.0, 91.0).nameplate().spread(88.0, 94.0)
            .help("88 to 94 %; in its data sheet.")
            .when(through_converter);
        lockout_v: f64 = number("DC-DC charger locks out below", VOLT, 8.0, 56.0, 13.0).nameplate().advanced()
            .help("Start battery voltage under which it stops, so that it never empties that battery: about 13.0 V in a 12 V system.")
            .when(|i| i.way.kind == WayKind::Converter);
        start_kept: StartKept = choose("Start battery is kept by", StartKept::OPTIONS, 0)
            .help("An alternator connected directly to the house bank does not charge the start battery. A DC-DC charger from the house bank feeds it and the engine's services; a panel or charger of its own would be something else.")
            .when(|i| i.may_be_joined() && i.way.joined == BanksJoined::Nothing);
        start_v: f64 = number("Start battery voltage, running", VOLT, 12.0, 60.0, 14.0).measured().spread(13.6, 14.4)
            .help("At the start battery with the engine running: 13.6 to 14.4 V in a 12 V engine system.")
            .when(serves_start);
        services_a: f64 = number("Engine services and start battery", AMPERE, 0.0, 100.0, 5.0).spread(3.0, 8.0)
            .help("What else the alternator on the start battery feeds: instruments, pumps, topping it up. 3 to 8 A.")
            .when(serves_start);
    }
}

effects! {
    Way {
        converter_a: Up, Down;
        converter_efficiency_pct: Down, Down;
        lockout_v: Down, Up;
        start_v: Depends("a DC-DC charger asks for fewer amperes at more volts, but locks out at few"), Depends("as the current");
        services_a: Up, Up;
    }
}

/// Whether the start battery hangs on these machines at all.
fn serves_start(inputs: &Inputs) -> bool {
    through_converter(inputs) || inputs.two.role == SecondRole::Start
}

/// Whether a converter stands between the two batteries, whichever way round.
fn through_converter(inputs: &Inputs) -> bool {
    inputs.way.kind == WayKind::Converter || inputs.feeds_start_back()
}

/// Usual sizes of DC-DC chargers \[A\], the largest first: common practice, no
/// source.
pub(crate) const USUAL_CHARGERS_A: [f64; 9] = [60.0, 50.0, 40.0, 30.0, 25.0, 20.0, 15.0, 10.0, 5.0];
/// The part of the alternator's rated power that a DC-DC charger may take:
/// common practice, no source.
const CHARGER_SHARE: f64 = 0.5;
/// Volts with the engine running for each 12 V block: common practice.
const RUNNING_BLOCK_V: f64 = 14.0;

impl InstalledAlternator<'_> {
    /// What it gives at its rating \[W\].
    pub(crate) fn rated_w(&self) -> f64 {
        self.alternator.rated_a * RUNNING_BLOCK_V * self.blocks()
    }
}

impl Inputs {
    /// Rated current of the DC-DC charger on its house side \[A\].
    pub fn charger_a(&self) -> f64 {
        let stated_a = self.way.converter_a;
        stated_a.unwrap_or_else(|| self.usual_charger_a())
    }

    /// The largest usual size of DC-DC charger that suits alternator and bank
    /// \[A\]; the smallest where none does.
    pub(crate) fn usual_charger_a(&self) -> f64 {
        let rated_w = self.first_alternator().rated_w();
        let suits = |charger_a: &f64| {
            self.leaves_enough(*charger_a, rated_w) && *charger_a <= self.unlinked_limit_a()
        };
        let [.., smallest_a] = USUAL_CHARGERS_A;
        let largest_a = USUAL_CHARGERS_A.into_iter().find(suits);
        largest_a.unwrap_or(smallest_a)
    }

    /// Whether a DC-DC charger of an output \[A\] leaves an alternator of a rating
    /// \[W\] enough of its power and the bank may take what it gives.
    pub(crate) fn charger_suits(&self, charger_a: f64, rated_w: f64) -> bool {
        self.leaves_enough(charger_a, rated_w) && charger_a <= self.setting_limit_a()
    }

    /// Whether a DC-DC charger of an output \[A\] takes no more than its share of an
    /// alternator's rating \[W\].
    pub(crate) fn leaves_enough(&self, charger_a: f64, rated_w: f64) -> bool {
        self.charger_takes_w(charger_a) <= CHARGER_SHARE * rated_w
    }

    /// What a DC-DC charger of an output \[A\] takes from the start battery's
    /// side, the house bank nearly full \[W\].
    pub(crate) fn charger_takes_w(&self, output_a: f64) -> f64 {
        let house_v = RUNNING_BLOCK_V * self.bank.nominal_v.blocks();
        output_a * house_v / (self.way.converter_efficiency_pct / 100.0)
    }

    /// Whether an alternator's output lies straight on the house bank.
    pub(crate) fn on_house(&self) -> bool {
        self.alternators()
            .any(|installed| installed.connection.on_house())
    }

    /// Whether the engine is run to charge the house bank straight.
    pub(crate) fn straight_into_house(&self) -> bool {
        self.engine_charges() && self.on_house()
    }

    /// Whether one alternator, connected direct, is all that there is: then it
    /// may charge both banks.
    fn may_be_joined(&self) -> bool {
        self.way.kind == WayKind::Direct && self.two.role == SecondRole::None
    }

    /// What joins or splits the banks.
    pub fn joined(&self) -> BanksJoined {
        match self.may_be_joined() {
            true => self.way.joined,
            false => BanksJoined::Nothing,
        }
    }

    /// Whether the house bank feeds the start battery.
    pub fn feeds_start_back(&self) -> bool {
        self.may_be_joined()
            && self.way.joined == BanksJoined::Nothing
            && self.way.start_kept == StartKept::House
    }
}

#[cfg(test)]
mod tests {
    use crate::boat::{Inputs, NominalVolts};

    /// Half of a rating at 14 V, through 91 %: 100 A are 1400 W, 700 W of them
    /// give 637 W, 45 A at 14 V; the usual size below is 40 A.
    #[test]
    fn a_charger_that_nobody_stated_suits_the_alternator() {
        let charger_a = |rated_a: f64, nominal_v, capacity_ah: f64| {
            let mut inputs = Inputs::default();
            inputs.alt.rated_a = rated_a;
            inputs.bank.nominal_v = nominal_v;
            inputs.bank.capacity_ah = capacity_ah;
            inputs.charger_a()
        };
        for (rated_a, expected_a) in [(35.0, 15.0), (60.0, 25.0), (100.0, 40.0), (160.0, 60.0)] {
            assert_eq!(charger_a(rated_a, NominalVolts::V12, 400.0), expected_a);
        }
        // 24 V take twice the watts at the same amperes.
        let mut inputs = Inputs::default();
        inputs.bank.nominal_v = NominalVolts::V24;
        inputs.alt.nominal_v = crate::boat::AlternatorVolts::V12;
        assert_eq!(inputs.charger_a(), 20.0);
        // A bank of 50 A·h takes 25 A, whatever the alternator gives.
        assert_eq!(charger_a(160.0, NominalVolts::V12, 50.0), 25.0);
    }
}
