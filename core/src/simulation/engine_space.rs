//! The engine space's air: what warms it and what carries the warmth away.

use crate::boat::{AfterStop, AirBasis, Breathing, Inputs};
use crate::physics::air;
use crate::physics::heat_balance::warming_c;
use crate::physics::thermal::AirBalance;

/// The engine space's air.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct SpaceAir {
    /// Air through the space \[m³/h\].
    pub flow_m3h: f64,
    pub(crate) flow_w_k: f64,
    /// Carried off by air once the engine has stopped, with the blower on and off.
    after_w_k: [f64; 2],
    /// How long the blower runs on after the engine has stopped \[s\].
    pub(super) run_on_s: f64,
    pub(crate) wall_w_k: f64,
    pub(crate) engine_w_k: f64,
    pub(crate) outside_c: f64,
    pub(crate) cabin_c: f64,
    pub(crate) heat_j_k: f64,
    pub(crate) measured_hot_c: Option<f64>,
    pub(crate) start_c: f64,
    engine_c: f64,
    engine_j_k: f64,
    pub(crate) warm_up_s: f64,
}

impl SpaceAir {
    /// With the engine at a speed \[rpm\].
    pub fn new(inputs: &Inputs, engine_rpm: f64) -> SpaceAir {
        let (space, eng) = (&inputs.space, &inputs.eng);
        let drawn_m3h = match eng.breathing {
            Breathing::Space => {
                air::combustion_m3h(eng.displacement_l, engine_rpm, eng.filling_pct / 100.0)
            }
            Breathing::Outside => 0.0,
        };
        let blown_m3h = air::blown_m3h(space.blower_m3h, space.blower_installed_pct / 100.0);
        let leak_m3h = inputs.space_leak_m3h();
        let flow_m3h = drawn_m3h + blown_m3h + leak_m3h;
        let run_on_s = match space.blower_after {
            AfterStop::On => f64::INFINITY,
            AfterStop::Off => 0.0,
            AfterStop::Timed => 60.0 * space.blower_run_on_min,
        };
        SpaceAir {
            flow_m3h,
            flow_w_k: air::flow_w_k(flow_m3h, space.air_kg_m3),
            after_w_k: [blown_m3h + leak_m3h, leak_m3h]
                .map(|after_m3h| air::flow_w_k(after_m3h, space.air_kg_m3)),
            run_on_s,
            wall_w_k: inputs.space_wall_w_k(),
            engine_w_k: inputs.engine_surface_w_k(),
            outside_c: space.outside_c,
            cabin_c: inputs.cabin_c(),
            heat_j_k: inputs.space_heat_capacity_kj_k() * 1000.0,
            measured_hot_c: (space.basis == AirBasis::Measured).then_some(space.hot_c),
            start_c: inputs.start_c(),
            engine_c: eng.running_c,
            engine_j_k: inputs.engine_heat_kj_k() * 1000.0,
            warm_up_s: eng.warm_up_min * 60.0,
        }
    }

    /// Temperature of the engine block \[°C\] at a time \[s\] after the start.
    pub fn engine_c(&self, seconds: f64) -> f64 {
        warming_c(
            self.engine_c,
            self.start_c,
            seconds / 60.0,
            self.warm_up_s / 60.0,
        )
    }

    /// How that rate changes with time alone \[K/s²\], as the block warms up.
    pub fn drift(&self, seconds: f64) -> f64 {
        match self.measured_hot_c {
            Some(_) => 0.0,
            None => {
                let warming = (self.engine_c - self.engine_c(seconds)) / self.warm_up_s;
                self.engine_w_k * warming / self.heat_j_k
            }
        }
    }

    /// Rate of change of the air's temperature \[K/s\] at a time \[s\] after
    /// the start, the alternators giving it some heat \[W\].
    pub fn rate(&self, seconds: f64, air_c: f64, alternators_w: f64) -> f64 {
        match self.measured_hot_c {
            Some(hot_c) => (hot_c - air_c) / self.warm_up_s,
            None => {
                self.balance_w(air_c, self.engine_c(seconds), alternators_w, self.flow_w_k)
                    / self.heat_j_k
            }
        }
    }

    /// Heat carried off by air a time \[s\] after the engine has stopped, for each
    /// kelvin \[W/K\].
    pub(crate) fn after_w_k(&self, seconds: f64) -> f64 {
        let [blowing, still] = self.after_w_k;
        if seconds < self.run_on_s {
            blowing
        } else {
            still
        }
    }

    /// Rates of change of air and engine block a time \[s\] after the engine has
    /// stopped \[K/s\].
    pub fn rates_stopped(
        &self,
        seconds: f64,
        air_c: f64,
        engine_c: f64,
        alternators_w: f64,
    ) -> [f64; 2] {
        let cooling = self.engine_w_k * (air_c - engine_c) / self.engine_j_k;
        let air_w = self.balance_w(air_c, engine_c, alternators_w, self.after_w_k(seconds));
        [air_w / self.heat_j_k, cooling]
    }

    fn balance_w(&self, air_c: f64, engine_c: f64, alternators_w: f64, flow_w_k: f64) -> f64 {
        self.engine_w_k * (engine_c - air_c) + alternators_w
            - flow_w_k * (air_c - self.outside_c)
            - self.wall_w_k * (air_c - self.cabin_c)
    }

    /// The heat balance of the air with the engine warm and other alternators giving it
    /// `other_w` \[W\].
    pub fn balance(&self, other_w: f64) -> AirBalance {
        match self.measured_hot_c {
            Some(hot_c) => AirBalance::Fixed(hot_c),
            None => AirBalance::Open {
                conductance_w_k: self.engine_w_k + self.flow_w_k + self.wall_w_k,
                heat_w: self.engine_w_k * self.engine_c
                    + self.flow_w_k * self.outside_c
                    + self.wall_w_k * self.cabin_c
                    + other_w,
            },
        }
    }
}
