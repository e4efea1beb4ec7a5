//! What flows at one moment: sources, converter and bank meet at the bank's
//! terminals.

use std::cell::Cell;

use crate::physics::charging::{after_services_a, bank_a, charger_input_a, charger_output_a};
use crate::physics::thermal::Temperatures;
use crate::simulation::Limit;
use crate::simulation::moment::{Flow, Output, ThermalState};
use crate::simulation::operating_point::{
    AlternatorState, SourceCurve, Terminals, solve_operating_point,
};
use crate::simulation::plant::{Converter, Plant};

impl Plant {
    /// What flows at a time \[s\] after the start, a state of charge (0 to 1)
    /// and temperatures: the least of what machines, regulator and converter
    /// allow, of what the held voltage lets flow, and of the bank's limit where
    /// the regulator is told it. Nothing else knows that limit. `second` is not looked at where there is no second machine.
    pub fn flow(
        &self,
        seconds: f64,
        charge: f64,
        main: &ThermalState,
        second: &ThermalState,
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
        let main = AlternatorState::new(&self.main, seconds, main);
        let beside = self
            .second
            .as_ref()
            .filter(|beside| beside.feeds_house)
            .map(|beside| AlternatorState::new(&beside.unit, seconds, second));
        let from_start = self
            .converter
            .map(|converter| (converter, main.on(self.start_v)));
        let first = |volts: f64| match &from_start {
            None => main.on(volts),
            Some((converter, given)) => self.converted(converter, given, volts),
        };
        let limit = Cell::new(main.limit);
        let guess_a = 0.68 * main.allowed * self.main.curve.infinite_a;
        let given_a = solve_operating_point(most_a, guess_a, |house_a| {
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
        state: &ThermalState,
    ) -> Output {
        match &self.second {
            None => Output::default(),
            Some(second) if second.feeds_house => Output {
                amperes: house_a,
                volts: bank_v,
            },
            Some(second) => Output {
                amperes: AlternatorState::new(&second.unit, seconds, state)
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

    /// What a converter's output \[A\] takes from the start battery's side:
    /// I_out·V_house/(η·V_start), and services on top \[A\].
    fn drawn_a(&self, converter: &Converter, out_a: f64, house_v: f64) -> f64 {
        charger_input_a(out_a, house_v, converter.efficiency, self.start_v) + self.main_services_a()
    }

    /// The main machine through the converter, given what it gives at the
    /// start battery.
    fn converted(&self, converter: &Converter, given: &SourceCurve, house_v: f64) -> SourceCurve {
        let spare_a = after_services_a(given.amperes, self.main_services_a());
        let able_a = charger_output_a(spare_a, converter.efficiency, self.start_v, house_v);
        if able_a < converter.most_a {
            SourceCurve {
                amperes: able_a,
                slope: -able_a / house_v,
                limit: given.limit,
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
