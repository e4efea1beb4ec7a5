//! What gets hot: each part's own balance, heat in against heat carried away.

use super::boat::{At, Boat, Part, View, given, named};
use super::curve::mark;
use super::expr::{Expr, num};
use crate::physics::losses::Losses;
use crate::physics::thermal::{FAN_HEAT_IN_BODY, Machine, Temperatures};

/// A machine at a moment, and how its symbols and workings are found.
pub(super) struct Side<'a> {
    pub(super) boat: &'a Boat<'a>,
    pub(super) at: At,
    pub(super) number: usize,
    pub(super) machine: Machine,
    pub(super) t: Temperatures,
    pub(super) losses: Losses,
    /// Whether its conductances are those of the workings: the alternator's, turning.
    pub(super) turning: bool,
}

impl Side<'_> {
    fn symbol(&self, symbol: &str) -> String {
        mark(symbol, self.number)
    }

    fn conductance(&self, symbol: &str, tail: &str, name: &str, w_k: f64) -> Expr {
        if self.turning && self.number == 0 {
            self.boat.worked(symbol, At::Never, tail, w_k)
        } else {
            given(&self.symbol(symbol), name, w_k, "W/K")
        }
    }

    pub(super) fn winding_air(&self) -> Expr {
        let w_k = self.machine.winding_air;
        self.conductance("G_w", "inner.winding_air_w_k", "Winding to air", w_k)
    }

    pub(super) fn body_air(&self) -> Expr {
        let w_k = self.machine.body_air;
        self.conductance("G_b", "inner.body_air_w_k", "Body to air", w_k)
    }

    pub(super) fn rectifier_air(&self) -> Expr {
        let w_k = self.machine.rectifier_air;
        self.conductance("G_r", "inner.rectifier_air_w_k", "Rectifier to air", w_k)
    }

    pub(super) fn winding_body(&self) -> Expr {
        let w_k = self.machine.winding_body;
        self.conductance("G_wb", "inner.winding_body_w_k", "Winding to body", w_k)
    }

    pub(super) fn rectifier_body(&self) -> Expr {
        let w_k = self.machine.rectifier_body;
        self.conductance("G_rb", "inner.rectifier_body_w_k", "Rectifier to body", w_k)
    }

    pub(super) fn degrees(&self, symbol: &str, name: &str, tail: &str, celsius: f64) -> Expr {
        if self.number == 0 && self.at == At::Hot {
            named(self.boat.worked(symbol, At::Hot, tail, celsius), name)
        } else {
            given(&self.symbol(symbol), name, celsius, "°C")
        }
    }

    pub(super) fn winding(&self) -> Expr {
        self.degrees("T_w", "Winding", "hot.winding_c", self.t.winding_c)
    }

    pub(super) fn body(&self) -> Expr {
        self.degrees("T_b", "Body", "hot.case_c", self.t.body_c)
    }

    pub(super) fn rectifier(&self) -> Expr {
        self.degrees(
            "T_r",
            "Rectifier plate",
            "hot.rectifier_c",
            self.t.rectifier_c,
        )
    }

    pub(super) fn inlet(&self) -> Expr {
        let celsius = self.machine.inlet_c(&self.t);
        self.degrees("T_in", "Air it draws in", "hot.inlet_c", celsius)
    }

    fn loss(&self, symbol: &str, tail: &str, name: &str, watts: f64) -> Expr {
        if self.number == 0 && self.turning {
            self.boat.worked(symbol, self.at, tail, watts)
        } else {
            given(&self.symbol(symbol), name, watts, "W")
        }
    }

    pub(super) fn fan(&self) -> Expr {
        self.loss(
            "P_fan",
            ".fan_w",
            "Fan and bearing loss then",
            self.losses.fan_w,
        )
    }

    /// Where a part's own balance puts it; a part that is warming stores heat.
    pub(super) fn part(&self, part: Part) -> Expr {
        let (m, l) = (&self.machine, &self.losses);
        let [winding, body, rectifier] = m.rates(&self.t, l);
        let (heat, conductance, stored_w) = match part {
            Part::Winding => (
                self.loss("P_Cu", ".copper_w", "Winding loss then", l.copper_w)
                    + self.winding_body() * self.body()
                    + self.winding_air() * self.inlet(),
                self.winding_body() + self.winding_air(),
                winding * m.winding_j_k,
            ),
            Part::Rectifier => (
                {
                    let from =
                        self.rectifier_body() * self.body() + self.rectifier_air() * self.inlet();
                    if self.turning {
                        self.loss("P_d", ".diode_w", "Diode loss then", l.diode_w) + from
                    } else {
                        from
                    }
                },
                self.rectifier_body() + self.rectifier_air(),
                rectifier * m.rectifier_j_k,
            ),
            _ => (
                self.loss("P_Fe", ".iron_w", "Iron loss then", l.iron_w)
                    + self.loss("P_field", ".field_w", "Field loss then", l.field_w)
                    + num(FAN_HEAT_IN_BODY) * self.fan()
                    + self.winding_body() * self.winding()
                    + self.rectifier_body() * self.rectifier()
                    + self.body_air() * self.inlet(),
                self.winding_body() + self.rectifier_body() + self.body_air(),
                body * m.body_j_k,
            ),
        };
        let sum_w_k = conductance.exact();
        balanced(heat, stored_w, sum_w_k) / conductance
    }
}

/// Less the heat that goes into warming something, or with what it gives up
/// by cooling; left out where it moves the balance by less than the hundredth
/// of a kelvin.
pub(super) fn balanced(heat: Expr, stored_w: f64, sum_w_k: f64) -> Expr {
    if stored_w.abs() < 0.01 * sum_w_k {
        heat
    } else if stored_w > 0.0 {
        let name = "Heat that goes into warming it further then";
        heat - given("P_stored", name, stored_w, "W")
    } else {
        let name = "Heat it gives up by cooling then";
        heat + given("P_stored", name, -stored_w, "W")
    }
}

pub(super) fn side<'a>(boat: &'a Boat<'a>, at: At, view: &View, number: usize) -> Side<'a> {
    let second = number == 1;
    let machines = &view.machines;
    Side {
        boat,
        at,
        number,
        machine: boat.unit(number).machine,
        t: if second { machines[1].t } else { machines[0].t },
        losses: if second {
            view.moment.second_losses
        } else {
            view.moment.losses
        },
        turning: true,
    }
}
