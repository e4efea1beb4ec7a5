//! What flows at one moment: sources, DC-DC charger and bank meet at the bank's
//! terminals.

use std::cell::Cell;

use arrayvec::ArrayVec;

use crate::boat::Connection;
use crate::physics::charging::{after_services_a, bank_a, charger_input_a, charger_output_a};
use crate::simulation::Limit;
use crate::simulation::moment::{Flow, Output, ThermalState};
use crate::simulation::operating_point::{
    AlternatorState, SourceCurve, Terminals, solve_operating_point,
};
use crate::simulation::per_alternator::{MOST_ALTERNATORS, PerAlternator};
use crate::simulation::plant::{Converter, Plant};

impl Plant {
    /// What flows at a time \[s\] after the start, a state of charge (0 to 1)
    /// and each alternator as warm as this: the least of what alternators,
    /// regulator and DC-DC charger allow, of what the held voltage lets flow, and
    /// of the bank's limit where the regulator is told it. Nothing else knows
    /// that limit.
    pub fn flow(&self, seconds: f64, soc: f64, states: &[ThermalState]) -> Flow {
        let terminals = Terminals::new(&self.bank, soc);
        // Most that may reach house and bank together, and why.
        let house_load_a = self.taken_a();
        let held_v = self.held_at(states);
        let held_a = bank_a(held_v, terminals.rest_v, terminals.ohm) + house_load_a;
        let accepted_a = if self.linked {
            self.bank_limit_a + house_load_a
        } else {
            f64::INFINITY
        };
        let (most_a, most_limit) = if held_a < accepted_a {
            (held_a.max(0.0), Limit::ChargeVoltage)
        } else {
            (accepted_a, Limit::BankLimit)
        };
        let sources = HouseSources::new(self, seconds, states);
        let limit = Cell::new(sources.usual_limit());
        let given_a = solve_operating_point(most_a, sources.guess_a(), |house_a| {
            let bank_a = house_a - house_load_a;
            let all = sources.together(terminals.volts(bank_a));
            limit.set(all.limit);
            (all.amperes, all.slope * terminals.slope(bank_a))
        });
        let house_a = given_a.min(most_a);
        let bank_a = house_a - house_load_a;
        let bank_v = terminals.volts(bank_a);
        Flow {
            outputs: sources.outputs(house_a, bank_v),
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
    /// alternators so warm \[V\]. Of several that charge it the one that holds
    /// most decides.
    pub(crate) fn held_at(&self, states: &[ThermalState]) -> f64 {
        let held_v = self
            .alternators
            .iter()
            .zip(states)
            .filter(|(alternator, _)| alternator.connection.charges_house())
            .map(|(alternator, state)| alternator.holds_v(&state.t).unwrap_or(self.held_v));
        held_v.reduce(f64::max).unwrap_or(self.held_v)
    }

    /// Whether that depends on the air as well as on the alternators.
    pub(crate) fn held_by_built_in(&self) -> bool {
        self.alternators.iter().any(|one| one.has_built_in())
    }

    /// What the start battery and the engine's services take of the alternators
    /// that feed the DC-DC charger \[A\]: nothing where another one is there for
    /// them.
    pub(crate) fn services_beside_charger_a(&self) -> f64 {
        let kept = |connection: Connection| connection == Connection::StartBattery;
        if self.alternators.iter().any(|one| kept(one.connection)) {
            0.0
        } else {
            self.services_a
        }
    }

    /// What the DC-DC charger's output \[A\] takes from the start battery's side:
    /// I_out·V_house/(η·V_start), and services on top \[A\].
    fn charger_takes_a(&self, converter: &Converter, out_a: f64, house_v: f64) -> f64 {
        charger_input_a(out_a, house_v, converter.efficiency, self.start_v)
            + self.services_beside_charger_a()
    }
}

/// What can give current to the house at one moment: each alternator on the
/// house bank, and the DC-DC charger from the start battery.
struct HouseSources<'a> {
    plant: &'a Plant,
    alternators: PerAlternator<AlternatorState<'a>>,
    /// What each of those on the start battery can give there; 0 for others \[A\].
    on_start_a: PerAlternator<f64>,
    charger: Option<ChargerState<'a>>,
    /// Whether the DC-DC charger is named first of what limits the current.
    charger_first: bool,
}

/// The DC-DC charger at one moment.
struct ChargerState<'a> {
    converter: &'a Converter,
    /// What the alternators that feed it can give on the start battery \[A\].
    fed_a: f64,
    /// What limits the first of them.
    limit: Limit,
}

impl<'a> HouseSources<'a> {
    fn new(plant: &'a Plant, seconds: f64, states: &[ThermalState]) -> HouseSources<'a> {
        let alternators: PerAlternator<AlternatorState> = plant
            .alternators
            .iter()
            .zip(states)
            .map(|(alternator, state)| AlternatorState::new(alternator, seconds, state))
            .collect();
        let mut charger: Option<ChargerState> = None;
        let mut on_start_a = PerAlternator::new();
        for alternator in &alternators {
            if alternator.connects(Connection::HouseBank) {
                on_start_a.push(0.0);
                continue;
            }
            let given = alternator.on(plant.start_v);
            on_start_a.push(given.amperes);
            if alternator.connects(Connection::StartBattery) {
                continue;
            }
            match (&mut charger, &plant.converter) {
                (Some(charger), _) => charger.fed_a += given.amperes,
                (None, Some(converter)) => {
                    charger = Some(ChargerState {
                        converter,
                        fed_a: given.amperes,
                        limit: given.limit,
                    });
                }
                (None, None) => {}
            }
        }
        let first = alternators.iter().find(|one| one.charges_house());
        let charger_first = first.is_some_and(|one| one.connects(Connection::ThroughCharger));
        HouseSources {
            plant,
            alternators,
            on_start_a,
            charger,
            charger_first,
        }
    }

    /// The first alternator that charges the house bank: what limits it is told.
    fn first(&self) -> Option<&AlternatorState<'a>> {
        self.alternators.iter().find(|one| one.charges_house())
    }

    /// What limits the current where nothing had to be solved for.
    fn usual_limit(&self) -> Limit {
        self.first()
            .map_or(Limit::AlternatorOutput, |first| first.limit)
    }

    /// About what flows \[A\].
    fn guess_a(&self) -> f64 {
        self.first().map_or(0.0, |first| {
            0.68 * first.allowed * first.alternator.curve.infinite_a
        })
    }

    fn on_house(&self) -> impl Iterator<Item = &AlternatorState<'a>> {
        let on_house = |one: &&AlternatorState| one.connects(Connection::HouseBank);
        self.alternators.iter().filter(on_house)
    }

    /// What all of them can give at a voltage of the house bank.
    fn together(&self, volts: f64) -> SourceCurve {
        let mut all = SourceCurve {
            amperes: 0.0,
            slope: 0.0,
            limit: self.usual_limit(),
        };
        if let Some(charger) = &self.charger {
            let given = self.converted(charger, volts);
            all.amperes += given.amperes;
            all.slope += given.slope;
            if self.charger_first {
                all.limit = given.limit;
            }
        }
        for (at, alternator) in self.on_house().enumerate() {
            let given = alternator.on(volts);
            all.amperes += given.amperes;
            all.slope += given.slope;
            if at == 0 && !self.charger_first {
                all.limit = given.limit;
            }
        }
        all
    }

    /// What the DC-DC charger can give.
    fn converted(&self, charger: &ChargerState, house_v: f64) -> SourceCurve {
        let plant = self.plant;
        let spare_a = after_services_a(charger.fed_a, plant.services_beside_charger_a());
        let efficiency = charger.converter.efficiency;
        let able_a = charger_output_a(spare_a, efficiency, plant.start_v, house_v);
        if able_a < charger.converter.most_a {
            SourceCurve {
                amperes: able_a,
                slope: -able_a / house_v,
                limit: charger.limit,
            }
        } else {
            SourceCurve {
                amperes: charger.converter.most_a,
                slope: 0.0,
                limit: Limit::Converter,
            }
        }
    }

    /// What each source gives of what flows to house and bank \[A\]: the DC-DC
    /// charger, if there is one, and each alternator on the house bank. They share
    /// it as they could give it, and the first has what the others leave.
    fn shares_a(&self, house_a: f64, bank_v: f64) -> ArrayVec<f64, { MOST_ALTERNATORS + 1 }> {
        let mut shares_a = ArrayVec::new();
        if usize::from(self.charger.is_some()) + self.on_house().count() < 2 {
            shares_a.push(house_a);
            return shares_a;
        }
        let charger = self.charger.iter();
        shares_a.extend(charger.map(|one| self.converted(one, bank_v).amperes));
        shares_a.extend(self.on_house().map(|one| one.on(bank_v).amperes));
        let all_a: f64 = shares_a.iter().sum();
        let mut left_a = house_a;
        if let Some((first, others)) = shares_a.split_first_mut() {
            for other in others {
                *other = part(house_a, *other, all_a);
                left_a -= *other;
            }
            *first = left_a;
        }
        shares_a
    }

    /// What each alternator gives while so much flows to house and bank \[A\].
    fn outputs(&self, house_a: f64, bank_v: f64) -> PerAlternator<Output> {
        let plant = self.plant;
        let mut shares_a = self.shares_a(house_a, bank_v).into_iter();
        let (fed_a, wanted_a) = match &self.charger {
            None => (0.0, 0.0),
            Some(charger) => {
                let out_a = shares_a.next().unwrap_or(0.0);
                let wanted_a = plant.charger_takes_a(charger.converter, out_a, bank_v);
                (charger.fed_a, wanted_a)
            }
        };
        let kept_a = self.on_start_a_of(Connection::StartBattery);
        let mut outputs = PerAlternator::new();
        for (alternator, own_a) in self.alternators.iter().zip(&self.on_start_a) {
            let on_start = |wanted_a: f64, all_a: f64| Output {
                amperes: part(wanted_a, *own_a, all_a).min(*own_a),
                volts: plant.start_v,
            };
            outputs.push(match alternator.alternator.connection {
                Connection::HouseBank => Output {
                    amperes: shares_a.next().unwrap_or(0.0),
                    volts: bank_v,
                },
                Connection::ThroughCharger => on_start(wanted_a, fed_a),
                Connection::StartBattery => on_start(plant.services_a, kept_a),
            });
        }
        outputs
    }

    /// What all alternators of a connection can give at the start battery \[A\].
    fn on_start_a_of(&self, connection: Connection) -> f64 {
        let each = self.alternators.iter().zip(&self.on_start_a);
        let of = each.filter(|(one, _)| one.connects(connection));
        of.map(|(_, amperes)| amperes).sum()
    }
}

/// What one gives of what is wanted of all \[A\]: as much of it as it could give
/// of what all could; nothing where they give nothing, all where it is alone.
fn part(wanted_a: f64, own_a: f64, all_a: f64) -> f64 {
    if all_a <= 0.0 {
        0.0
    } else if own_a == all_a {
        wanted_a
    } else {
        wanted_a * own_a / all_a
    }
}
