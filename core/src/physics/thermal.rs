//! The alternator as three nodes that warm each other and give heat to the air:
//! stator winding, body (stator iron, rotor, housing) and rectifier plate.
//!
//! A network of this kind, and how to measure one, is in S. C. Tang, T. A.
//! Keim, D. J. Perreault, "Thermal modeling of Lundell alternators", IEEE
//! Trans. Energy Conversion 20(1), 25–36, 2005. That paper reports agreement with
//! an experiment; its first page was seen, not its numbers. Shares and exponents
//! here are our own reasoning and from memory: no open measurement of winding,
//! rectifier and case temperatures of a small alternator was found. One
//! temperature, the anchor (`cooling_anchor`), scales them all, and how heat
//! divides between the ways out is known only as a range: that is why a logged run is
//! worth taking.

use crate::numerics::linear;
use crate::physics::copper::COEFFICIENT_PER_K;
use crate::physics::heat_balance::{
    beside_winding_w_k, body_heat_w, heat_to_air_w, inlet_c, rotor_c, to_air_w_k, to_body_w_k,
};
use crate::physics::losses::{Losses, OpenLosses};
use crate::physics::thermal_build::Build;
use crate::physics::thermal_shares::{
    BODY_CAPACITY, FAN_HEAT_IN_BODY, RECTIFIER_BODY, RECTIFIER_CAPACITY, RECTIFIER_CAPACITY_FIXED,
    WINDING_AIR, WINDING_CAPACITY,
};

/// Temperatures of the alternator and its air \[°C\].
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Temperatures {
    /// Stator winding.
    pub winding_c: f64,
    /// Body, where a case sensor sits.
    pub body_c: f64,
    /// Rectifier plate.
    pub rectifier_c: f64,
    /// Air in the engine space.
    pub air_c: f64,
}

impl Temperatures {
    /// Everything at one temperature.
    pub fn all(celsius: f64) -> Temperatures {
        Temperatures {
            winding_c: celsius,
            body_c: celsius,
            rectifier_c: celsius,
            air_c: celsius,
        }
    }

    /// The hotter of each.
    pub fn hotter(&self, other: &Temperatures) -> Temperatures {
        Temperatures {
            winding_c: self.winding_c.max(other.winding_c),
            body_c: self.body_c.max(other.body_c),
            rectifier_c: self.rectifier_c.max(other.rectifier_c),
            air_c: self.air_c.max(other.air_c),
        }
    }
}

/// The three nodes at one shaft speed.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ThermalNetwork {
    /// To air \[W/K\].
    pub winding_air: f64,
    /// To air \[W/K\].
    pub body_air: f64,
    /// To air \[W/K\].
    pub rectifier_air: f64,
    /// Winding to body \[W/K\].
    pub winding_body: f64,
    /// Rectifier to body \[W/K\].
    pub rectifier_body: f64,
    /// Heat capacity \[J/K\].
    pub winding_j_k: f64,
    /// Heat capacity \[J/K\].
    pub body_j_k: f64,
    /// Heat capacity \[J/K\].
    pub rectifier_j_k: f64,
    /// Part of the way from air to body at which air is drawn in, β.
    pub recirculation: f64,
    /// Part of the cooling air a duct brings from outside, 0 to 1.
    pub ducted: f64,
    /// Air that duct brings \[°C\].
    pub duct_c: f64,
    /// Rotor above body \[K\].
    pub rotor_rise_k: f64,
    /// Part of the cooling that there is without the fan, 0 to 1.
    pub still_air: f64,
}

impl ThermalNetwork {
    /// An alternator whose three air conductances are multiplied by `cooling`.
    pub fn new(build: &Build, cooling: f64) -> ThermalNetwork {
        let (size, mass_kg, paths) = (build.size(), build.mass_kg, &build.paths);
        let beside = |share: f64| {
            let reference_w_k = beside_winding_w_k(WINDING_AIR, share);
            to_air_w_k(reference_w_k, size, cooling, 1.0)
        };
        ThermalNetwork {
            winding_air: to_air_w_k(WINDING_AIR, size, cooling, 1.0),
            body_air: beside(paths.body_air),
            rectifier_air: beside(paths.rectifier_air),
            winding_body: to_body_w_k(paths.winding_body_w_k, size),
            rectifier_body: to_body_w_k(RECTIFIER_BODY, size),
            winding_j_k: WINDING_CAPACITY * mass_kg,
            body_j_k: BODY_CAPACITY * mass_kg,
            rectifier_j_k: RECTIFIER_CAPACITY * mass_kg + RECTIFIER_CAPACITY_FIXED,
            recirculation: 0.0,
            ducted: 0.0,
            duct_c: 0.0,
            rotor_rise_k: build.rotor_rise_k,
            still_air: paths.still_air,
        }
    }

    /// This network with its three air conductances multiplied by `factor`, as
    /// [`fan_factor()`](crate::physics::heat_balance::fan_factor()) says.
    pub fn with_fan(self, factor: f64) -> ThermalNetwork {
        ThermalNetwork {
            winding_air: self.winding_air * factor,
            body_air: self.body_air * factor,
            rectifier_air: self.rectifier_air * factor,
            ..self
        }
    }

    /// This network with its fan at a standstill; `fan_factor` is what [`Self::with_fan`]
    /// was given.
    pub fn fan_stopped(&self, fan_factor: f64) -> ThermalNetwork {
        self.with_fan(self.still_air / fan_factor)
    }

    /// This network with its heat capacities multiplied by `factor`, as a logged run may ask.
    pub fn with_heat_capacity(self, factor: f64) -> ThermalNetwork {
        ThermalNetwork {
            winding_j_k: self.winding_j_k * factor,
            body_j_k: self.body_j_k * factor,
            rectifier_j_k: self.rectifier_j_k * factor,
            ..self
        }
    }

    /// Rotor temperature \[°C\].
    pub fn rotor_c(&self, body_c: f64) -> f64 {
        rotor_c(body_c, self.rotor_rise_k)
    }

    /// Air at the alternator's inlet \[°C\]. (That the duct's air also airs the space
    /// is left out.)
    pub fn inlet_c(&self, t: &Temperatures) -> f64 {
        inlet_c(
            t.air_c,
            self.recirculation,
            t.body_c,
            self.ducted,
            self.duct_c,
        )
    }

    /// Heat it gives to the air of the space \[W\].
    pub fn heat_to_air_w(&self, t: &Temperatures, losses: &Losses) -> f64 {
        heat_to_air_w(
            self.winding_air,
            t.winding_c,
            self.inlet_c(t),
            self.body_air,
            t.body_c,
            self.rectifier_air,
            t.rectifier_c,
            losses.fan_w,
        )
    }

    /// Rates of change of winding, body and rectifier \[K/s\].
    pub fn rates(&self, t: &Temperatures, losses: &Losses) -> [f64; 3] {
        let inlet_c = self.inlet_c(t);
        let to_body_w = self.winding_body * (t.winding_c - t.body_c);
        let plate_w = self.rectifier_body * (t.rectifier_c - t.body_c);
        [
            (losses.copper_w - to_body_w - self.winding_air * (t.winding_c - inlet_c))
                / self.winding_j_k,
            (body_heat_w(losses.iron_w, losses.field_w, losses.fan_w) + to_body_w + plate_w
                - self.body_air * (t.body_c - inlet_c))
                / self.body_j_k,
            (losses.diode_w - plate_w - self.rectifier_air * (t.rectifier_c - inlet_c))
                / self.rectifier_j_k,
        ]
    }

    /// Where all temperatures settle for given losses: the heat balance is
    /// linear in them, copper's rise with temperature included. `air` is the
    /// engine space's own balance, `conductance·T_air = heat + alternator's heat`.
    ///
    /// `None` when there is no such state: copper loss grows faster with
    /// temperature than cooling.
    pub fn settled(&self, losses: &OpenLosses, air: &AirBalance) -> Option<Temperatures> {
        // Inlet = drawn·((1−β)·air + β·body) + hose·T_hose.
        let drawn = 1.0 - self.ducted;
        let beta = drawn * self.recirculation;
        let fresh = drawn * (1.0 - self.recirculation);
        let duct_c = self.ducted * self.duct_c;
        // Loss at 0 °C and its growth per degree, by IEC 60028's straight line.
        let zero = 1.0 - 20.0 * COEFFICIENT_PER_K;
        let copper_k = losses.copper_20c_w * COEFFICIENT_PER_K;
        let field_k = losses.field_20c_w * COEFFICIENT_PER_K;
        let field_0 = losses.field_20c_w * (zero + COEFFICIENT_PER_K * self.rotor_rise_k);
        let (wa, ba, da) = (self.winding_air, self.body_air, self.rectifier_air);
        let (wb, db) = (self.winding_body, self.rectifier_body);
        let conduct = wa + ba + da;
        // Unknowns: winding, body, rectifier, air.
        let rows = [
            [wb + wa - copper_k, -wb - wa * beta, 0.0, -wa * fresh],
            [-wb, wb + db + ba * (1.0 - beta) - field_k, -db, -ba * fresh],
            [0.0, -db - da * beta, db + da, -da * fresh],
            match air {
                AirBalance::Fixed(_) => [0.0, 0.0, 0.0, 1.0],
                AirBalance::Open {
                    conductance_w_k, ..
                } => [
                    -wa,
                    -ba + conduct * beta,
                    -da,
                    conductance_w_k + conduct * fresh,
                ],
            },
        ];
        let heat = [
            losses.copper_20c_w * zero + wa * duct_c,
            losses.iron_w + field_0 + FAN_HEAT_IN_BODY * losses.fan_w + ba * duct_c,
            losses.diode_w + da * duct_c,
            match air {
                AirBalance::Fixed(air_c) => *air_c,
                AirBalance::Open { heat_w, .. } => {
                    heat_w + (1.0 - FAN_HEAT_IN_BODY) * losses.fan_w - conduct * duct_c
                }
            },
        ];
        let [winding_c, body_c, rectifier_c, air_c] = linear::solve(rows, heat)?;
        let settled = Temperatures {
            winding_c,
            body_c,
            rectifier_c,
            air_c,
        };
        // Beyond thermal runaway the straight lines cross again, far below.
        let coldest_c = if self.ducted > 0.0 {
            air_c.min(self.duct_c)
        } else {
            air_c
        };
        let node = |celsius: f64| (coldest_c - 1.0..1e3).contains(&celsius);
        let sane =
            node(winding_c) && node(body_c) && node(rectifier_c) && (-100.0..1e3).contains(&air_c);
        sane.then_some(settled)
    }
}

/// What the engine space's air does.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum AirBalance {
    /// It is at this temperature \[°C\], whatever the alternator does.
    Fixed(f64),
    /// It settles where `conductance·T = heat + alternator's heat`.
    Open {
        /// Of ventilation, walls and engine surface together \[W/K\].
        conductance_w_k: f64,
        /// The same conductances times the temperatures beyond them \[W\].
        heat_w: f64,
    },
}
