//! The charging arrangement.

use crate::boat::section;
use crate::boat::{Inputs, InstalledAlternator, SecondRole};
use crate::boat::{choose, number};
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
        converter_a: f64 = number("DC-DC charger output", AMPERE, 1.0, 1000.0, 40.0).nameplate().spread_pct(25.0)
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
            .when(|i| i.way.kind == WayKind::Direct && i.two.role == SecondRole::None);
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

/// Volts with the engine running for each 12 V block: common practice.
const RUNNING_BLOCK_V: f64 = 14.0;

impl InstalledAlternator<'_> {
    /// What it gives at its rating \[W\].
    pub(crate) fn rated_w(&self) -> f64 {
        self.alternator.rated_a * RUNNING_BLOCK_V * self.blocks()
    }
}

impl Inputs {
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

    /// Whether the house bank feeds the start battery.
    pub fn feeds_start_back(&self) -> bool {
        self.way.kind == WayKind::Direct
            && self.two.role == SecondRole::None
            && self.way.start_kept == StartKept::House
    }
}
