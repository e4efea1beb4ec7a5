//! The boat as prepared numbers, and what happens aboard at one moment.

use std::cell::Cell;

use super::Limit;
use super::alternators::Alternators;
use super::management::Management;
use super::sources::{Ready, Source, Terminals, meet};
use super::space_air::SpaceAir;
use super::unit::Unit;
use crate::physics::battery::Bank;
use crate::physics::charging::{after_services_a, bank_a, charger_input_a, charger_output_a};
use crate::physics::drive::power_w;
use crate::physics::fuel::{Willans, friction_kpa, friction_kw, marginal_l_kwh, willans};
use crate::physics::losses::{Losses, OpenLosses};
use crate::physics::thermal::Temperatures;
use crate::worksheet::{Injection, Inputs, SecondRole, WayKind};

/// Everything the charging run needs, worked out once.
#[derive(Debug, Clone, Copy)]
pub struct Plant {
    /// The alternator.
    pub main: Unit,
    /// A second one.
    pub second: Option<SecondUnit>,
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
    /// What the start battery and the engine's services take from the house
    /// bank through a converter turned round \[A\].
    pub back_a: f64,
    /// Temperature of everything at the start \[°C\].
    pub start_c: f64,
    /// The bank's management system; none for lead.
    pub management: Option<Management>,
    pub(crate) held_v: f64,
    /// Most current the bank may take \[A\].
    pub(crate) bank_limit_a: f64,
    /// Whether the regulator is told that limit and holds it.
    pub(crate) linked: bool,
    start_v: f64,
    services_a: f64,
    converter: Option<Converter>,
}

/// A second alternator and what it feeds.
#[derive(Debug, Clone, Copy)]
pub struct SecondUnit {
    /// The machine.
    pub unit: Unit,
    /// Whether it charges the house bank; it keeps the start battery otherwise.
    pub feeds_house: bool,
}

#[derive(Debug, Clone, Copy)]
struct Converter {
    most_a: f64,
    efficiency: f64,
}

/// Temperatures of a machine and what its regulator's sensor feels.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MachineState {
    /// Its lumps, and the air.
    pub t: Temperatures,
    /// What the sensor feels \[°C\].
    pub sensed_c: f64,
}

impl MachineState {
    /// A machine that has stood, all of it at one temperature \[°C\].
    pub fn resting(celsius: f64) -> MachineState {
        MachineState {
            t: Temperatures::all(celsius),
            sensed_c: celsius,
        }
    }
}

/// Current and voltage of one machine.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Output {
    /// \[A\]
    pub amperes: f64,
    /// \[V\]
    pub volts: f64,
}

/// Currents and voltages at one moment.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Flow {
    /// The alternator.
    pub main: Output,
    /// The second one; zero without.
    pub second: Output,
    /// Current into the bank \[A\]; negative when the boat draws more than it gets.
    pub bank_a: f64,
    /// Voltage at the bank \[V\].
    pub bank_v: f64,
    /// What holds it there.
    pub limit: Limit,
}

/// What happens aboard at one moment.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Moment {
    /// Currents and voltages.
    pub flow: Flow,
    /// Losses in the alternator.
    pub losses: Losses,
    /// Losses in the second one.
    pub second_losses: Losses,
}

impl Moment {
    /// Power the alternators' shafts take \[W\].
    pub fn shaft_w(&self) -> f64 {
        self.given_w() + self.losses.total_w() + self.second_losses.total_w()
    }

    /// Power the alternators give \[W\].
    pub fn given_w(&self) -> f64 {
        let power = |output: &Output| power_w(output.amperes, output.volts);
        power(&self.flow.main) + power(&self.flow.second)
    }
}

/// What flows at one moment, and the losses at any temperatures.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Drive {
    flow: Flow,
    main: OpenLosses,
    second: Option<OpenLosses>,
}

impl Drive {
    /// With the machines at these temperatures.
    pub(crate) fn at(&self, plant: &Plant, main: &Temperatures, second: &Temperatures) -> Moment {
        let at = |open: &OpenLosses, unit: &Unit, t: &Temperatures| {
            open.with(t.winding_c, unit.machine.rotor_c(t.body_c))
        };
        Moment {
            flow: self.flow,
            losses: at(&self.main, &plant.main, main),
            second_losses: match (&self.second, &plant.second) {
                (Some(open), Some(beside)) => at(open, &beside.unit, second),
                _ => Losses::default(),
            },
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
            main: alternators.main.at_engine_rpm(engine_rpm),
            second: alternators.second.map(|second| SecondUnit {
                unit: second.at_engine_rpm(engine_rpm),
                feeds_house: inputs.two.role == SecondRole::House,
            }),
            back_a: back_a(inputs, bank.rest_v(0.5)),
            management: Management::new(&bank, inputs.charge_limit_a(), inputs.charge_barred()),
            bank,
            space: SpaceAir::new(inputs, engine_rpm),
            fuel: engine_fuel(inputs, engine_rpm),
            belt_efficiency: inputs.eng.belt_efficiency_pct / 100.0,
            load_a,
            start_c: inputs.start_c(),
            held_v: inputs.held_v(),
            bank_limit_a: inputs.charge_limit_a(),
            linked: inputs.limit_linked(),
            start_v: inputs.way.start_v,
            services_a: inputs.way.services_a,
            converter: (inputs.way.kind == WayKind::Converter).then_some(Converter {
                most_a: if inputs.way.start_v < inputs.way.lockout_v {
                    0.0
                } else {
                    inputs.way.converter_a
                },
                efficiency: inputs.way.converter_efficiency_pct / 100.0,
            }),
        }
    }

    /// What flows at a time \[s\] after the start, a state of charge (0 to 1)
    /// and temperatures: the least of what machines, regulator and converter
    /// allow, of what the held voltage lets flow, and of the bank's limit where
    /// the regulator is told it. Nothing else knows that limit. `second` is not looked at where there is no second machine.
    pub fn flow(
        &self,
        seconds: f64,
        charge: f64,
        main: &MachineState,
        second: &MachineState,
    ) -> Flow {
        let terminals = Terminals::new(&self.bank, charge);
        // Most that may reach house and bank together, and why.
        let drawn_a = self.taken_a();
        let held_v = self.held_at(&main.t, &second.t);
        let held_a = bank_a(held_v, terminals.rest_v, terminals.ohm) + drawn_a;
        let taken_a = if self.linked {
            self.bank_limit_a + drawn_a
        } else {
            f64::INFINITY
        };
        let (most_a, most_limit) = if held_a < taken_a {
            (held_a.max(0.0), Limit::ChargeVoltage)
        } else {
            (taken_a, Limit::BankLimit)
        };
        let main = Ready::new(&self.main, seconds, main);
        let beside = self
            .second
            .as_ref()
            .filter(|beside| beside.feeds_house)
            .map(|beside| Ready::new(&beside.unit, seconds, second));
        let from_start = self
            .converter
            .map(|converter| (converter, main.on(self.start_v)));
        let first = |volts: f64| match &from_start {
            None => main.on(volts),
            Some((converter, given)) => self.converted(converter, given, volts),
        };
        let limit = Cell::new(main.limit);
        let guess_a = 0.68 * main.allowed * self.main.curve.infinite_a;
        let given_a = meet(most_a, guess_a, |house_a| {
            let bank_a = house_a - drawn_a;
            let volts = terminals.volts(bank_a);
            let one = first(volts);
            limit.set(one.limit);
            let other = beside.as_ref().map(|beside| beside.on(volts));
            let (other_a, other_slope) = other.map_or((0.0, 0.0), |o| (o.amperes, o.slope));
            (
                one.amperes + other_a,
                (one.slope + other_slope) * terminals.slope(bank_a),
            )
        });
        let house_a = given_a.min(most_a);
        let bank_a = house_a - drawn_a;
        let bank_v = terminals.volts(bank_a);
        // Two machines share what flows as they could give it.
        let other_a = beside.map_or(0.0, |beside| {
            let (one, other) = (first(bank_v).amperes, beside.on(bank_v).amperes);
            if one + other > 0.0 {
                house_a * other / (one + other)
            } else {
                0.0
            }
        });
        let main_a = house_a - other_a;
        Flow {
            main: match &from_start {
                None => Output {
                    amperes: main_a,
                    volts: bank_v,
                },
                Some((converter, given)) => Output {
                    amperes: self.drawn_a(converter, main_a, bank_v).min(given.amperes),
                    volts: self.start_v,
                },
            },
            second: self.second_output(other_a, bank_v, seconds, second),
            bank_a,
            bank_v,
            limit: if given_a >= most_a {
                most_limit
            } else {
                limit.get()
            },
        }
    }

    /// Voltage at which current into the house bank is turned down with the
    /// alternators at these temperatures \[V\]. Of two built-in regulators the
    /// one that holds more decides.
    pub(crate) fn held_at(&self, main: &Temperatures, second: &Temperatures) -> f64 {
        let charger_v = self.main.holds_v(main).unwrap_or(self.held_v);
        self.second
            .as_ref()
            .and_then(|beside| beside.unit.holds_v(second))
            .map_or(charger_v, |beside_v| beside_v.max(charger_v))
    }

    /// Whether that depends on the air as well as on the alternators.
    pub(crate) fn held_by_built_in(&self) -> bool {
        self.main.has_built_in() || self.second.is_some_and(|beside| beside.unit.has_built_in())
    }

    fn second_output(
        &self,
        house_a: f64,
        bank_v: f64,
        seconds: f64,
        state: &MachineState,
    ) -> Output {
        match &self.second {
            None => Output::default(),
            Some(second) if second.feeds_house => Output {
                amperes: house_a,
                volts: bank_v,
            },
            Some(second) => Output {
                amperes: Ready::new(&second.unit, seconds, state)
                    .on(self.start_v)
                    .amperes
                    .min(self.services_a),
                volts: self.start_v,
            },
        }
    }

    /// Whether the main machine also serves the start battery.
    pub(crate) fn main_services_a(&self) -> f64 {
        match &self.second {
            Some(second) if !second.feeds_house => 0.0,
            _ => self.services_a,
        }
    }

    /// What a converter's output \[A\] takes from the start battery's side, and
    /// services on top \[A\].
    fn drawn_a(&self, converter: &Converter, out_a: f64, house_v: f64) -> f64 {
        charger_input_a(out_a, house_v, converter.efficiency, self.start_v) + self.main_services_a()
    }

    /// The main machine through the converter, given what it gives at the
    /// start battery.
    fn converted(&self, converter: &Converter, given: &Source, house_v: f64) -> Source {
        let spare_a = after_services_a(given.amperes, self.main_services_a());
        let able_a = charger_output_a(spare_a, converter.efficiency, self.start_v, house_v);
        if able_a < converter.most_a {
            Source {
                amperes: able_a,
                slope: -able_a / house_v,
                limit: given.limit,
            }
        } else {
            Source {
                amperes: converter.most_a,
                slope: 0.0,
                limit: Limit::Converter,
            }
        }
    }

    /// Everything at one moment.
    pub fn moment(
        &self,
        seconds: f64,
        charge: f64,
        main: &MachineState,
        second: &MachineState,
    ) -> Moment {
        self.drive(seconds, charge, main, second)
            .at(self, &main.t, &second.t)
    }

    /// The same with the losses' temperatures still open: what follows from
    /// time, charge, sensors and rotors alone.
    pub(crate) fn drive(
        &self,
        seconds: f64,
        charge: f64,
        main: &MachineState,
        second: &MachineState,
    ) -> Drive {
        let flow = self.flow(seconds, charge, main, second);
        let open = |unit: &Unit, output: &Output| unit.open_losses(output.amperes, output.volts);
        Drive {
            main: open(&self.main, &flow.main),
            second: self
                .second
                .as_ref()
                .map(|beside| open(&beside.unit, &flow.second)),
            flow,
        }
    }

    /// Whether the regulator lets the field up over some time.
    pub fn starts_slowly(&self) -> bool {
        self.main.starts_slowly()
            || self
                .second
                .is_some_and(|second| second.unit.starts_slowly())
    }

    /// What the house and, through a converter turned round, the start battery
    /// draw from the house bank \[A\].
    pub fn taken_a(&self) -> f64 {
        self.load_a + self.back_a
    }

    /// Whether there is a converter to the house bank and it is not locked out.
    pub(crate) fn converter_works(&self) -> bool {
        self.converter
            .is_some_and(|converter| converter.most_a > 0.0)
    }

    /// Current of the machines that charge the house bank \[A\].
    pub fn charging_a(&self, flow: &Flow) -> f64 {
        match &self.second {
            Some(second) if second.feeds_house => flow.main.amperes + flow.second.amperes,
            _ => flow.main.amperes,
        }
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

/// What a converter turned round takes from the house bank \[A\].
fn back_a(inputs: &Inputs, house_v: f64) -> f64 {
    if !inputs.feeds_start_back() {
        return 0.0;
    }
    let way = &inputs.way;
    let efficiency = way.converter_efficiency_pct / 100.0;
    charger_input_a(way.services_a, way.start_v, efficiency, house_v)
}

/// What the way of injection adds to an engine's friction, C₁ \[kPa\]; see [`friction_kpa`].
pub(crate) fn chamber_kpa(injection: Injection) -> f64 {
    match injection {
        Injection::Direct => 75.0,
        Injection::Chamber => 110.0,
    }
}

fn engine_fuel(inputs: &Inputs, engine_rpm: f64) -> Willans {
    let eng = &inputs.eng;
    let kpa = friction_kpa(chamber_kpa(eng.injection), engine_rpm, eng.stroke_mm);
    willans(
        friction_kw(kpa, eng.displacement_l, engine_rpm),
        eng.indicated_efficiency_pct / 100.0,
        eng.fuel_mj_kg,
        eng.fuel_kg_l,
    )
}
