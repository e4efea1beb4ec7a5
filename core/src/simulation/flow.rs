//! What flows at one moment: sources, DC-DC charger and bank meet at the bank's
//! terminals.

use std::cell::Cell;

use crate::boat::{Connection, Regulators};
use crate::physics::charging::{bank_a, charger_input_a};
use crate::simulation::Limit;
use crate::simulation::moment::{Flow, ThermalState};
use crate::simulation::operating_point::{Terminals, solve_operating_point};
use crate::simulation::plant::{Converter, Plant};
use crate::simulation::sources::Sources;

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
        let house_load_a = self.taken_a(seconds);
        let (most_a, most_limit) = self.most_a(seconds, soc, &terminals, self.held_at(states));
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

    /// Most that may reach house and bank together while a voltage is held \[V\],
    /// and why.
    fn most_a(&self, seconds: f64, soc: f64, terminals: &Terminals, held_v: f64) -> (f64, Limit) {
        let house_load_a = self.taken_a(seconds);
        let held_a = bank_a(held_v, terminals.rest_v, terminals.ohm) + house_load_a;
        let told_a = if self.linked {
            self.told_limit_a(soc)
        } else {
            f64::INFINITY
        };
        let (accepted_a, accepted_limit) = if self.bank_cap_a < told_a {
            (self.bank_cap_a, Limit::CurrentCap)
        } else {
            (told_a, Limit::BankLimit)
        };
        let accepted_a = accepted_a + house_load_a;
        if self.bank.is_frozen(soc) {
            // Ice takes nothing: the house alone is fed.
            (house_load_a.min(held_a.max(0.0)), Limit::FrozenBank)
        } else if seconds >= self.full_s {
            (house_load_a.min(held_a.max(0.0)), Limit::ChargeVoltage)
        } else if held_a < accepted_a {
            (held_a.max(0.0), Limit::ChargeVoltage)
        } else {
            (accepted_a, accepted_limit)
        }
    }

    /// Whether the regulators of several alternators on the house bank know nothing
    /// of each other.
    pub(crate) fn apart(&self) -> bool {
        self.regulators == Regulators::Apart
    }

    /// Whether a link shares the load between several alternators on the house bank.
    pub(super) fn is_linked_pair(&self) -> bool {
        matches!(
            self.regulators,
            Regulators::LinkedShare | Regulators::LinkedHeat
        )
    }

    /// Voltage at which an alternator's own regulator turns the current into the
    /// house bank down, the alternator so warm \[V\].
    pub(crate) fn held_by(&self, alternator: usize, state: &ThermalState) -> f64 {
        let built_in_v = self.alternators[alternator].holds_v(&state.t);
        let offset_v = self.held_offset_v.get(alternator).copied();
        (built_in_v.unwrap_or(self.held_v) + offset_v.unwrap_or(0.0)).max(0.0)
    }

    /// Voltage at which current into the house bank is turned down with the
    /// alternators so warm \[V\]. Of several that charge it the one that holds
    /// most decides.
    pub(crate) fn held_at(&self, states: &[ThermalState]) -> f64 {
        let held_v = self
            .charging()
            .filter_map(|(at, _)| Some(self.held_by(at, states.get(at)?)));
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
    pub(super) fn charger_takes_a(&self, converter: &Converter, out_a: f64, house_v: f64) -> f64 {
        charger_input_a(out_a, house_v, converter.efficiency, self.start_v)
            + self.services_beside_charger_a()
    }
}
