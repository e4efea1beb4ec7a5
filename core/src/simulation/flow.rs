//! What flows at one moment: sources, DC-DC charger and bank meet at the bank's
//! terminals.

use std::cell::Cell;

use crate::boat::Connection;
use crate::physics::charging::{after_services_a, bank_a, charger_input_a, charger_output_a};
use crate::simulation::Limit;
use crate::simulation::moment::{Flow, Output, ThermalState};
use crate::simulation::operating_point::{
    AlternatorState, SourceCurve, Terminals, solve_operating_point,
};
use crate::simulation::per_alternator::{MOST_ALTERNATORS, PerAlternator, listed};
use crate::simulation::plant::{Converter, Plant};

impl Plant {
    /// What flows at a time \[s\] after the start, a state of charge (0 to 1)
    /// and each alternator as warm as this: the least of what alternators,
    /// regulator and DC-DC charger allow, of what the held voltage lets flow, and
    /// of the bank's limit where the regulator is told it. Nothing else knows
    /// that limit. A frozen bank takes no charge.
    pub fn flow(&self, seconds: f64, soc: f64, states: &[ThermalState]) -> Flow {
        #[cfg(test)]
        crate::simulation::counted::note_flow();
        let terminals = Terminals::new(&self.bank, soc);
        // Most that may reach house and bank together, and why.
        let house_load_a = self.taken_a(seconds);
        let held_v = self.held_at(states);
        let held_a = bank_a(held_v, terminals.rest_v, terminals.ohm) + house_load_a;
        let accepted_a = if self.linked {
            self.told_limit_a(soc) + house_load_a
        } else {
            f64::INFINITY
        };
        let (most_a, most_limit) = if self.bank.is_frozen(soc) {
            // Ice takes nothing: the house alone is fed.
            (house_load_a.min(held_a.max(0.0)), Limit::FrozenBank)
        } else if seconds >= self.full_s {
            (house_load_a.min(held_a.max(0.0)), Limit::ChargeVoltage)
        } else if held_a < accepted_a {
            (held_a.max(0.0), Limit::ChargeVoltage)
        } else {
            (accepted_a, Limit::BankLimit)
        };
        let sources = Sources::new(self, self.turning_s + seconds, states);
        let limit = Cell::new(most_limit);
        let given_a = solve_operating_point(most_a, sources.guess_a, |house_a| {
            let bank_a = house_a - house_load_a;
            let (amperes, slope) = sources.together(terminals.volts(bank_a), &limit);
            (amperes, slope * terminals.slope(bank_a))
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

/// What can give current to the house at one moment.
enum HouseSource<'a> {
    /// An alternator on the house bank.
    Alternator(AlternatorState<'a>),
    /// The DC-DC charger from the start battery.
    Charger {
        converter: &'a Converter,
        /// What the alternators that feed it can give on the start battery \[A\].
        fed_a: f64,
        /// What limits the first of them.
        limit: Limit,
    },
}

/// All that can give current at one moment.
struct Sources<'a> {
    plant: &'a Plant,
    /// To the house, in the order of the alternators; the DC-DC charger in place
    /// of the first one that feeds it.
    to_house: PerAlternator<HouseSource<'a>>,
    /// What each alternator on the start battery can give there; 0 for others \[A\].
    on_start_a: [f64; MOST_ALTERNATORS],
    /// About what flows to the house \[A\].
    guess_a: f64,
}

impl HouseSource<'_> {
    /// What it can give at a voltage of the house bank.
    #[inline]
    fn on(&self, plant: &Plant, house_v: f64) -> SourceCurve {
        match self {
            HouseSource::Alternator(alternator) => alternator.on(house_v),
            HouseSource::Charger {
                converter,
                fed_a,
                limit,
            } => {
                let spare_a = after_services_a(*fed_a, plant.services_beside_charger_a());
                let able_a =
                    charger_output_a(spare_a, converter.efficiency, plant.start_v, house_v);
                if able_a < converter.most_a {
                    SourceCurve {
                        amperes: able_a,
                        slope: -able_a / house_v,
                        limit: *limit,
                    }
                } else {
                    SourceCurve {
                        amperes: converter.most_a,
                        slope: 0.0,
                        limit: Limit::Converter,
                    }
                }
            }
        }
    }
}

impl<'a> Sources<'a> {
    fn new(plant: &'a Plant, seconds: f64, states: &[ThermalState]) -> Sources<'a> {
        let mut sources = Sources {
            plant,
            to_house: PerAlternator::new(),
            on_start_a: [0.0; MOST_ALTERNATORS],
            guess_a: 0.0,
        };
        for (at, (alternator, state)) in plant.alternators.iter().zip(states).enumerate() {
            let now = AlternatorState::new(alternator, seconds, state);
            if sources.to_house.is_empty() {
                sources.guess_a = 0.68 * now.allowed * alternator.curve.infinite_a;
            }
            sources.add(at, alternator.connection, now);
        }
        sources
    }

    fn add(&mut self, at: usize, connection: Connection, now: AlternatorState<'a>) {
        if connection.on_house() {
            self.to_house.push(HouseSource::Alternator(now));
            return;
        }
        let given = now.on(self.plant.start_v);
        self.on_start_a[at] = given.amperes;
        if connection == Connection::StartBattery {
            return;
        }
        for source in &mut self.to_house {
            if let HouseSource::Charger { fed_a, .. } = source {
                *fed_a += given.amperes;
                return;
            }
        }
        if let Some(converter) = &self.plant.converter {
            self.to_house.push(HouseSource::Charger {
                converter,
                fed_a: given.amperes,
                limit: given.limit,
            });
        }
    }

    /// What all of them can give to the house at a voltage of its bank \[A\], and
    /// how that changes with the voltage \[A/V\]; `limit` becomes that of the first.
    #[inline]
    fn together(&self, house_v: f64, limit: &Cell<Limit>) -> (f64, f64) {
        let (mut amperes, mut slope) = (0.0, 0.0);
        for (at, source) in self.to_house.iter().enumerate() {
            let one = source.on(self.plant, house_v);
            amperes += one.amperes;
            slope += one.slope;
            if at == 0 {
                limit.set(one.limit);
            }
        }
        (amperes, slope)
    }

    /// What each source gives of what flows to house and bank \[A\]: they share it
    /// as they could give it, and the first has what the others leave.
    fn shares_a(&self, house_a: f64, bank_v: f64) -> [f64; MOST_ALTERNATORS] {
        let mut shares_a = [0.0; MOST_ALTERNATORS];
        let mut left_a = house_a;
        if self.to_house.len() > 1 {
            for (share_a, source) in shares_a.iter_mut().zip(&self.to_house) {
                *share_a = source.on(self.plant, bank_v).amperes;
            }
            let all_a = shares_a.iter().sum();
            for share_a in shares_a.iter_mut().skip(1) {
                *share_a = part(house_a, *share_a, all_a);
                left_a -= *share_a;
            }
        }
        shares_a[0] = left_a;
        shares_a
    }

    /// What each alternator gives while so much flows to house and bank \[A\].
    fn outputs(&self, house_a: f64, bank_v: f64) -> PerAlternator<Output> {
        let plant = self.plant;
        let shares_a = self.shares_a(house_a, bank_v);
        let mut of_charger = (0.0, 0.0);
        let mut direct_a = [0.0; MOST_ALTERNATORS];
        let mut direct = direct_a.iter_mut();
        for (source, share_a) in self.to_house.iter().zip(shares_a) {
            match source {
                HouseSource::Alternator(_) => {
                    if let Some(place) = direct.next() {
                        *place = share_a;
                    }
                }
                HouseSource::Charger {
                    converter, fed_a, ..
                } => {
                    of_charger = (plant.charger_takes_a(converter, share_a, bank_v), *fed_a);
                }
            }
        }
        let mut direct = direct_a.into_iter();
        let each = plant.alternators.iter().zip(&self.on_start_a);
        listed(each.map(|(alternator, own_a)| {
            let (wanted_a, all_a) = match alternator.connection {
                Connection::HouseBank => {
                    return Output {
                        amperes: direct.next().unwrap_or(0.0),
                        volts: bank_v,
                    };
                }
                Connection::ThroughCharger => of_charger,
                Connection::StartBattery => (plant.services_a, self.kept_a()),
            };
            Output {
                amperes: part(wanted_a, *own_a, all_a).min(*own_a),
                volts: plant.start_v,
            }
        }))
    }

    /// What all alternators that keep the start battery can give there \[A\].
    fn kept_a(&self) -> f64 {
        let each = self.plant.alternators.iter().zip(&self.on_start_a);
        let kept = each.filter(|(one, _)| one.connection == Connection::StartBattery);
        kept.map(|(_, amperes)| amperes).sum()
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
