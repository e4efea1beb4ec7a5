//! The boat as prepared numbers, and what happens aboard at one moment.

use crate::boat::{Inputs, Regulators, WayKind};
use crate::physics::battery::Bank;
use crate::physics::charging::charger_input_a;
use crate::physics::fuel::{Willans, marginal_l_kwh};
use crate::physics::losses::OpenLosses;
use crate::simulation::alternator::AlternatorAtSpeed;
use crate::simulation::alternators::Alternators;
use crate::simulation::engine_fuel::engine_fuel;
use crate::simulation::engine_load::SwitchedLoad;
use crate::simulation::engine_space::SpaceAir;
use crate::simulation::management::{Management, OpeningCause, sent_limit_a};
use crate::simulation::moment::{Flow, Moment, Output, ThermalState};
use crate::simulation::per_alternator::{PerAlternator, listed};

/// Everything the charging run needs, worked out once.
#[derive(Debug, Clone, PartialEq)]
pub struct Plant {
    /// The alternators, at the speed they turn.
    pub alternators: PerAlternator<AlternatorAtSpeed>,
    /// The bank.
    pub bank: Bank,
    /// Engine space.
    pub space: SpaceAir,
    /// Fuel.
    pub fuel: Willans,
    /// What the belt passes on, 0 to 1.
    pub belt_efficiency: f64,
    /// What the boat draws meanwhile \[A\].
    pub load_a: f64,
    /// What it draws on top of that from the start until a time.
    pub engine_loads: Vec<SwitchedLoad>,
    /// Time after the start from which the bank is full and takes nothing \[s\].
    pub(super) full_s: f64,
    /// How long the engine has turned already when the run begins \[s\].
    pub(super) turning_s: f64,
    /// What the start battery and the engine's services take from the house
    /// bank through a converter turned round \[A\].
    pub back_a: f64,
    /// Temperature of everything at the start \[°C\].
    pub start_c: f64,
    /// The bank's management system; none for lead.
    pub management: Option<Management>,
    pub(crate) held_v: f64,
    /// How the regulators of several alternators on the house bank go together.
    pub(super) regulators: Regulators,
    /// How much more each alternator's own regulator holds \[V\].
    pub(super) held_offset_v: PerAlternator<f64>,
    /// Most current into the bank where the regulator measures it there \[A\].
    pub(crate) bank_cap_a: f64,
    /// Most current the bank may take \[A\].
    pub(crate) bank_limit_a: f64,
    /// Whether the regulator is told that limit and holds it.
    pub(crate) linked: bool,
    /// Whether the limit it is told falls as the bank fills.
    pub(super) tapers: bool,
    pub(super) start_v: f64,
    pub(super) services_a: f64,
    pub(super) converter: Option<Converter>,
}

#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) struct Converter {
    pub(super) most_a: f64,
    pub(super) efficiency: f64,
}

/// What flows at one moment, and the losses at any temperatures.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Drive {
    pub(super) flow: Flow,
    pub(super) losses: PerAlternator<OpenLosses>,
}

impl Drive {
    /// With the alternators at these temperatures.
    pub(crate) fn at(&self, plant: &Plant, states: &[ThermalState]) -> Moment {
        let each = plant.alternators.iter().zip(&self.losses).zip(states);
        Moment {
            flow: self.flow.clone(),
            losses: each
                .map(|((alternator, open), state)| alternator.losses_at(open, &state.t))
                .collect(),
        }
    }
}

impl Plant {
    /// Works out a boat whose house draws `load_a` \[A\] while charging. Who
    /// asks for several of one boat calibrates its [`Alternators`] once.
    pub fn new(inputs: &Inputs, load_a: f64) -> Plant {
        Alternators::of(inputs).plant(inputs, load_a)
    }

    /// The boat with its alternators at an engine speed \[rpm\].
    pub(super) fn with(
        alternators: &Alternators,
        inputs: &Inputs,
        load_a: f64,
        engine_rpm: f64,
    ) -> Plant {
        let bank = inputs.house_bank();
        Plant {
            alternators: alternators
                .list
                .iter()
                .map(|alternator| alternator.at_engine_rpm(engine_rpm))
                .collect(),
            back_a: back_a(inputs, bank.rest_v(0.5)),
            management: Management::new(
                &bank,
                inputs.charge_limit_a(),
                inputs.charge_barred().map(OpeningCause::from),
            ),
            bank,
            space: SpaceAir::new(inputs, engine_rpm),
            fuel: engine_fuel(inputs, engine_rpm),
            belt_efficiency: inputs.eng.belt_efficiency_pct / 100.0,
            load_a,
            engine_loads: Vec::new(),
            full_s: f64::INFINITY,
            turning_s: 0.0,
            start_c: inputs.start_c(),
            held_v: inputs.held_v(),
            regulators: inputs.regulators(),
            held_offset_v: inputs
                .alternators()
                .map(|installed| inputs.held_offset_v(installed.which))
                .collect(),
            bank_cap_a: inputs.bank_cap_a().unwrap_or(f64::INFINITY),
            bank_limit_a: inputs.charge_limit_a(),
            linked: inputs.limit_linked(),
            tapers: inputs.sent_v().is_some(),
            start_v: inputs.way.start_v,
            services_a: inputs.way.services_a,
            converter: (inputs.way.kind == WayKind::Converter).then_some(Converter {
                most_a: if inputs.way.start_v < inputs.way.lockout_v {
                    0.0
                } else {
                    inputs.charger_a()
                },
                efficiency: inputs.way.converter_efficiency_pct / 100.0,
            }),
        }
    }

    /// This boat with a bank of which nothing is frozen.
    pub(crate) fn thawed(&self) -> Plant {
        Plant {
            bank: self.bank.thawed(),
            ..self.clone()
        }
    }

    /// The current limit that the regulator is told at a state of charge, 0 to 1
    /// \[A\].
    pub(crate) fn told_limit_a(&self, soc: f64) -> f64 {
        if self.tapers {
            sent_limit_a(self.bank_limit_a, self.bank.capacity_ah, soc)
        } else {
            self.bank_limit_a
        }
    }

    /// Everything at one moment: at a time \[s\] after the start, a state of
    /// charge (0 to 1) and each alternator as warm as this.
    pub fn moment(&self, seconds: f64, soc: f64, states: &[ThermalState]) -> Moment {
        self.drive(seconds, soc, states).at(self, states)
    }

    /// Everything at one moment, the losses' temperatures still open: what
    /// follows from time, state of charge, sensors and rotors alone.
    pub(crate) fn drive(&self, seconds: f64, soc: f64, states: &[ThermalState]) -> Drive {
        let flow = self.flow(seconds, soc, states);
        let each = self.alternators.iter().zip(&flow.outputs);
        let open = |(alternator, output): (&AlternatorAtSpeed, &Output)| {
            alternator.open_losses(output.amperes, output.volts)
        };
        Drive {
            losses: listed(each.map(open)),
            flow,
        }
    }

    /// Each alternator as it has stood, all at the temperature of the start.
    pub fn resting(&self) -> PerAlternator<ThermalState> {
        let resting = |_: &AlternatorAtSpeed| ThermalState::resting(self.start_c);
        self.alternators.iter().map(resting).collect()
    }

    /// Whether the regulator lets the field up over some time.
    pub fn starts_slowly(&self) -> bool {
        self.alternators
            .iter()
            .any(AlternatorAtSpeed::starts_slowly)
    }

    /// Whether there is a converter to the house bank and it is not locked out.
    pub(crate) fn converter_works(&self) -> bool {
        self.converter
            .is_some_and(|converter| converter.most_a > 0.0)
    }

    /// The alternators that charge the house bank, each with its place.
    pub fn charging(&self) -> impl Iterator<Item = (usize, &AlternatorAtSpeed)> {
        let all = self.alternators.iter().enumerate();
        all.filter(|(_, alternator)| alternator.connection.charges_house())
    }

    /// Current of the alternators that charge the house bank \[A\].
    pub fn charging_a(&self, flow: &Flow) -> f64 {
        let outputs = self.alternators.iter().zip(&flow.outputs);
        outputs
            .filter(|(alternator, _)| alternator.connection.charges_house())
            .map(|(_, output)| output.amperes)
            .sum()
    }

    /// Fuel for a shaft power \[W\] of the alternators, on top of what turns the
    /// engine \[L/h\].
    pub fn marginal_fuel_l_h(&self, shaft_w: f64) -> f64 {
        self.marginal_l_kwh() * shaft_w / 1000.0
    }

    /// Fuel for a kilowatt-hour at the alternators' shafts, on top of what turns
    /// the engine \[L/kW·h\].
    pub fn marginal_l_kwh(&self) -> f64 {
        marginal_l_kwh(self.fuel.slope_l_h_kw, self.belt_efficiency)
    }
}

impl Alternators {
    /// The boat with these alternators, its house drawing `load_a` \[A\] while
    /// charging. `inputs` may differ from those they were calibrated with in
    /// all that is not of an alternator, its regulator or its cooling air.
    pub fn plant(&self, inputs: &Inputs, load_a: f64) -> Plant {
        self.plant_at(inputs, load_a, inputs.eng.rpm)
    }

    /// The boat with these alternators at another engine speed \[rpm\]; see
    /// [`Self::plant`].
    pub fn plant_at(&self, inputs: &Inputs, load_a: f64, engine_rpm: f64) -> Plant {
        Plant::with(self, inputs, load_a, engine_rpm)
    }
}

/// What a converter turned round takes from the house bank \[A\].
fn back_a(inputs: &Inputs, house_v: f64) -> f64 {
    if !inputs.feeds_start_back() {
        return 0.0;
    }
    let way = &inputs.way;
    let efficiency = way.converter_efficiency_pct / 100.0;
    charger_input_a(way.services_a, way.start_v, efficiency, house_v)
}
