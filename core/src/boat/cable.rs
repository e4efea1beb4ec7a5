//! The runs of cable: how long, where, of what; the fuses follow from them.

use crate::boat::section;
use crate::boat::{BanksJoined, Basis, Current, Inputs, SecondRole, WayKind, Worksheet};
use crate::boat::{Input, choose, number, optional};
use crate::schema::{choice, effects};
use crate::units::{AMPERE, METRE, MINUTE, PERCENT, VOLT, WATT};

choice! {
    /// Where a run lies.
    Place {
        Outside = "outside", "Outside the engine space";
        Engine = "engine", "Through the engine space";
    }
}

choice! {
    /// What the insulation is rated for.
    Insulation {
        C60 = "60", "60 °C";
        C75 = "75", "75 °C";
        C80 = "80", "80 °C";
        C90 = "90", "90 °C";
        C105 = "105", "105 °C";
        C125 = "125", "125 °C";
    }
}

impl Insulation {
    /// \[°C\]
    pub fn rated_c(self) -> f64 {
        match self {
            Insulation::C60 => 60.0,
            Insulation::C75 => 75.0,
            Insulation::C80 => 80.0,
            Insulation::C90 => 90.0,
            Insulation::C105 => 105.0,
            Insulation::C125 => 125.0,
        }
    }
}

choice! {
    /// The strands.
    Copper {
        Tinned = "tinned", "Tinned";
        Plain = "plain", "Plain copper";
    }
}

choice! {
    /// Whose rule the boat is under.
    Flag {
        Other = "other", "Another";
        Us = "us", "United States";
    }
}

/// The length of a run, out to its far end.
const fn one_way(label: &'static str, usual_m: f64) -> Input {
    number(label, METRE, 0.1, 100.0, usual_m).measured()
}

/// Where a run lies.
const fn lies(label: &'static str, usual: Place) -> Input {
    choose(label, Place::OPTIONS, usual as usize).help("Cable in a hot place may carry less.")
}

/// What a windlass or a thruster draws; nothing where there is none.
const fn motor_draws(label: &'static str) -> Input {
    number(label, AMPERE, 0.0, 2000.0, 0.0).nameplate()
}

/// How long a windlass or a thruster runs at a time.
const fn motor_runs(label: &'static str) -> Input {
    number(label, MINUTE, 0.1, 60.0, 3.0).nameplate().advanced()
}

section! {
    /// The runs of cable.
    Cable {
        machine_m: f64 = one_way("Alternator to its battery", 3.0)
            .help("One way, along the cable as it lies; the way back is counted too. Goes through the engine space.");
        second_m: f64 = one_way("Second alternator to its battery", 3.0)
            .help("One way, along the cable as it lies.")
            .when(|i| i.two.role != SecondRole::None);
        converter_in_m: f64 = one_way("Start battery to DC-DC charger", 2.0)
            .help("One way.")
            .when(converter);
        converter_in_place: Place = lies("Cable to the DC-DC charger lies", Place::Engine)
            .when(converter);
        converter_out_m: f64 = one_way("DC-DC charger to house bank", 2.0)
            .help("One way.")
            .when(converter);
        converter_out_place: Place = lies("Cable from the DC-DC charger lies", Place::Outside)
            .when(converter);
        bus_m: f64 = one_way("House bank to switch panel", 2.0)
            .help("One way, to the bus bar or panel that feeds the house.");
        bus_place: Place = lies("Cable to the switch panel lies", Place::Outside).advanced();
        bus_peak_a: Option<f64> = optional("Peak house load", AMPERE, 1.0, 3000.0, "all of the list at once, or 50 A", |w| Some(usual_bus_peak_a(w))).measured()
            .help("At one moment, through that cable; a windlass or thruster with a cable of its own does not count.");
        inverter_w: f64 = number("Inverter", WATT, 0.0, 20_000.0, 0.0).nameplate()
            .help("Power it gives for minutes on end, on its plate; 0 without one.");
        inverter_m: f64 = one_way("House bank to inverter", 1.5)
            .help("One way. Short is worth more here than anywhere.")
            .when(inverter);
        inverter_place: Place = lies("Cable to the inverter lies", Place::Outside).advanced()
            .when(inverter);
        windlass_a: f64 = motor_draws("Windlass")
            .help("What it draws at its working load, on its plate; 0 without one, or where it has no cable from the house bank.");
        windlass_m: f64 = one_way("House bank to windlass", 10.0)
            .help("One way, along the cable as it lies; the way back is counted too.")
            .when(windlass);
        windlass_min: f64 = motor_runs("Windlass runs at a time")
            .help("As long as its maker allows at full load, or as long as you use it. Said beside its cable; the cable is sized as if it ran on and on.")
            .when(windlass);
        windlass_place: Place = lies("Cable to the windlass lies", Place::Outside).advanced()
            .when(windlass);
        thruster_a: f64 = motor_draws("Thruster")
            .help("What it draws at full thrust, on its plate; 0 without one, or where it has a battery of its own.");
        thruster_m: f64 = one_way("House bank to thruster", 10.0)
            .help("One way, along the cable as it lies; the way back is counted too.")
            .when(thruster);
        thruster_min: f64 = motor_runs("Thruster runs at a time")
            .help("As long as its maker allows at full thrust. Said beside its cable; the cable is sized as if it ran on and on.")
            .when(thruster);
        thruster_place: Place = lies("Cable to the thruster lies", Place::Outside).advanced()
            .when(thruster);
        motor_drop_pct: f64 = number("Allowed voltage drop, windlass and thruster", PERCENT, 0.2, 20.0, 10.0).advanced()
            .decided()
            .help("Out and back, of the system voltage, at full load. 10 % is common practice for both; their makers may ask for less.")
            .when(|i| windlass(i) || thruster(i));
        insulation: Insulation = choose("Insulation rated for", Insulation::OPTIONS, 4).nameplate()
            .help("Printed along the cable. Boat cable is usually of 105 °C; unmarked cable counts as 60 °C.");
        copper: Copper = choose("Copper strands", Copper::OPTIONS, 0).nameplate().advanced()
            .help("Tinned strands last longer in salt air and resist a little more.");
        charge_drop_v: Option<f64> = optional("Allowed voltage drop, charging leads", VOLT, 0.02, 6.0, "0.3 V for each 12 V", |w| Some(usual_charge_drop_v(w.inputs.bank.nominal_v.blocks()))).advanced()
            .decided()
            .help("Out and back. 0.2 to 0.3 V for each 12 V (common practice): what is lost there, the battery does not see.");
        drop_pct: f64 = number("Allowed voltage drop, other cables", PERCENT, 0.2, 10.0, 3.0).advanced()
            .decided()
            .help("Out and back, of the system voltage: 3 % for feeders and what must not dim, 10 % where it does not matter.");
        flag: Flag = choose("Flag", Flag::OPTIONS, 0).advanced()
            .help("The rules the boat comes under. This changes what is said about the rule, not the figures.");
    }
}

effects! {
    Cable: no effect
}

fn converter(inputs: &Inputs) -> bool {
    inputs.way.kind == WayKind::Converter
}

fn windlass(inputs: &Inputs) -> bool {
    inputs.cable.windlass_a > 0.0
}

fn thruster(inputs: &Inputs) -> bool {
    inputs.cable.thruster_a > 0.0
}

fn inverter(inputs: &Inputs) -> bool {
    inputs.cable.inverter_w > 0.0
}

/// 0.3 V for each 12 V, common practice.
fn usual_charge_drop_v(blocks: f64) -> f64 {
    0.3 * blocks
}

/// All direct-current loads of the list at once, at least 50 A: own reasoning.
fn usual_bus_peak_a(sheet: &Worksheet) -> f64 {
    const LEAST_A: f64 = 50.0;
    if sheet.inputs.daily.basis == Basis::Figure {
        return LEAST_A;
    }
    let bank_v = sheet.inputs.house_bank().rest_v(0.5);
    let amperes = |load: &crate::boat::Load| {
        let draw = load.row.draw * load.row.count;
        match load.row.kind {
            Current::DcWatts => draw / bank_v,
            Current::DcAmperes => draw,
            Current::AcWatts => 0.0,
        }
    };
    sheet
        .loads
        .iter()
        .map(amperes)
        .fold(0.0, |a, b| a + b)
        .max(LEAST_A)
}

impl Worksheet {
    /// The most the house draws at one moment \[A\].
    pub fn bus_peak_a(&self) -> f64 {
        self.inputs
            .cable
            .bus_peak_a
            .unwrap_or_else(|| usual_bus_peak_a(self))
    }
}

impl Inputs {
    /// Loss allowed in a charging lead of so many 12 V blocks \[V\].
    pub fn charge_drop_v(&self, blocks: f64) -> f64 {
        self.cable
            .charge_drop_v
            .unwrap_or_else(|| usual_charge_drop_v(blocks))
    }

    /// How many 12 V blocks the engine's own system is, by its running voltage; as
    /// many as the house bank where a relay or a splitter joins them.
    pub fn start_blocks(&self) -> f64 {
        if self.joined() != BanksJoined::Nothing {
            return self.bank.nominal_v.blocks();
        }
        (self.way.start_v / 14.0).round().max(1.0)
    }
}
