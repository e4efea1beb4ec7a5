//! The boat as prepared numbers, and what happens aboard at one moment.

use super::Limit;
use crate::physics::air;
use crate::physics::battery::{Bank, bank_resistance_ohm};
use crate::physics::fuel::{Willans, friction_kpa, friction_kw, willans};
use crate::physics::losses::{LossModel, Losses, LossesAtSpeed, OpenLosses, RatedLosses};
use crate::physics::output::{OutputCurve, through_points, through_rating};
use crate::physics::roots;
use crate::physics::thermal::{
    AirBalance, Anchor, Machine, Temperatures, calibrate_cooling, fan_factor,
};
use crate::worksheet::{
    AirBasis, Breathing, Curve, Injection, Inputs, RegulatorKind, SensorPlace, WayKind,
};

/// Everything the charging run needs, worked out once.
#[derive(Debug, Clone, Copy)]
pub struct Plant {
    /// Output of the alternator.
    pub curve: OutputCurve,
    /// Its losses.
    pub losses: LossModel,
    losses_here: LossesAtSpeed,
    /// Its lumps at the speed it turns.
    pub machine: Machine,
    /// Factor on its air conductances that meets the anchor.
    pub cooling: f64,
    /// Whether the anchor could be met.
    pub anchored: bool,
    /// Whether the two points of the output curve make a curve.
    pub curve_fits: bool,
    /// Alternator speed \[rpm\].
    pub shaft_rpm: f64,
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
    /// Temperature of everything at the start \[°C\].
    pub start_c: f64,
    held_v: f64,
    bank_limit_a: f64,
    cap_a: f64,
    fold: Option<Fold>,
    converter: Option<Converter>,
}

/// The engine space's air.
#[derive(Debug, Clone, Copy)]
pub struct SpaceAir {
    /// Air through the space \[m³/h\].
    pub flow_m3h: f64,
    flow_w_k: f64,
    wall_w_k: f64,
    engine_w_k: f64,
    outside_c: f64,
    cabin_c: f64,
    heat_j_k: f64,
    measured_hot_c: Option<f64>,
    start_c: f64,
    engine_c: f64,
    warm_up_s: f64,
}

#[derive(Debug, Clone, Copy)]
struct Fold {
    set_point_c: f64,
    band_k: f64,
    sensor: SensorPlace,
}

#[derive(Debug, Clone, Copy)]
struct Converter {
    most_a: f64,
    efficiency: f64,
    start_v: f64,
    services_a: f64,
}

/// What happens aboard at one moment.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Moment {
    /// Alternator current \[A\].
    pub alternator_a: f64,
    /// Voltage at the alternator \[V\].
    pub alternator_v: f64,
    /// Current into the bank \[A\]; negative when the boat draws more than it gets.
    pub bank_a: f64,
    /// Voltage at the bank \[V\].
    pub bank_v: f64,
    /// What holds it there.
    pub limit: Limit,
    /// Losses in the machine.
    pub losses: Losses,
}

impl Moment {
    /// Power the alternator's shaft takes \[W\].
    pub fn shaft_w(&self) -> f64 {
        self.alternator_a * self.alternator_v + self.losses.total_w()
    }
}

impl Plant {
    /// Works out a boat whose house draws `load_a` \[A\] while charging.
    pub fn new(inputs: &Inputs, load_a: f64) -> Plant {
        Plant::at_engine_rpm(inputs, load_a, inputs.eng.rpm)
    }

    /// The same at another engine speed \[rpm\].
    pub fn at_engine_rpm(inputs: &Inputs, load_a: f64, engine_rpm: f64) -> Plant {
        let alt = &inputs.alt;
        let (curve, curve_fits) = output_curve(inputs);
        let rated = |efficiency_pct: f64| RatedLosses {
            rated_a: alt.rated_a,
            efficiency: efficiency_pct / 100.0,
            field_w: inputs.field_w(),
            iron_share: alt.iron_share_pct / 100.0,
            fan_share: alt.fan_share_pct / 100.0,
            fan_exponent: alt.fan_exponent,
        };
        let losses = LossModel::calibrate(&rated(alt.efficiency_pct), &curve);
        let (anchor_c, anchor_efficiency_pct) = inputs.cooling_anchor();
        let anchor = Anchor {
            winding_c: anchor_c,
            shaft_rpm: alt.anchor_rpm,
            air_c: alt.anchor_air_c,
        };
        let anchor_losses = LossModel::calibrate(&rated(anchor_efficiency_pct), &curve)
            .at_speed(&curve, alt.anchor_rpm);
        let (cooling, anchored) = calibrate_cooling(
            alt.mass_kg,
            alt.rotor_rise_k,
            &curve,
            &anchor_losses,
            &anchor,
        );
        let shaft_rpm = inputs.shaft_rpm(engine_rpm);
        let fan = fan_factor(shaft_rpm, alt.anchor_rpm, alt.cooling_exponent);
        let blocks = inputs.bank.nominal_v.blocks();
        Plant {
            curve,
            losses,
            losses_here: losses.at_speed(&curve, shaft_rpm),
            machine: Machine::new(
                alt.mass_kg,
                cooling * fan,
                inputs.space.recirculation_pct / 100.0,
                alt.rotor_rise_k,
            ),
            cooling,
            anchored,
            curve_fits,
            shaft_rpm,
            bank: Bank {
                cells: 4.0 * blocks,
                capacity_ah: inputs.bank.capacity_ah,
                resistance_ohm: bank_resistance_ohm(
                    inputs.bank.resistance_ohm_ah,
                    blocks,
                    inputs.bank.capacity_ah,
                    inputs.bank.harness_mohm / 1000.0,
                ),
                charge_efficiency: inputs.bank.charge_efficiency_pct / 100.0,
            },
            space: space_air(inputs, engine_rpm),
            fuel: engine_fuel(inputs, engine_rpm),
            belt_efficiency: inputs.eng.belt_efficiency_pct / 100.0,
            load_a,
            start_c: inputs.start_c(),
            held_v: inputs.held_v(),
            bank_limit_a: inputs.charge_limit_a(),
            cap_a: match inputs.reg.kind {
                RegulatorKind::External => inputs.reg.current_cap_a.unwrap_or(f64::INFINITY),
                RegulatorKind::Internal => f64::INFINITY,
            },
            fold: (inputs.reg.kind == RegulatorKind::External).then_some(Fold {
                set_point_c: inputs.reg.set_point_c,
                band_k: inputs.reg.fold_band_k,
                sensor: inputs.reg.sensor,
            }),
            converter: (inputs.way.kind == WayKind::Converter).then_some(Converter {
                most_a: inputs.way.converter_a,
                efficiency: inputs.way.converter_efficiency_pct / 100.0,
                start_v: inputs.way.start_v,
                services_a: inputs.way.services_a,
            }),
        }
    }

    /// Part of full field the regulator allows, 1 to 0 across the band around
    /// the set-point: (T_set + b/2 − T)/b. Common practice, no source.
    fn allowed(&self, t: &Temperatures) -> f64 {
        match &self.fold {
            None => 1.0,
            Some(fold) => {
                let sensed_c = match fold.sensor {
                    SensorPlace::Case => t.body_c,
                    SensorPlace::Winding => t.winding_c,
                    SensorPlace::Rectifier => t.rectifier_c,
                };
                ((fold.set_point_c + 0.5 * fold.band_k - sensed_c) / fold.band_k).clamp(0.0, 1.0)
            }
        }
    }

    /// What flows at a state of charge (0 to 1) and temperatures: the least of
    /// what machine, regulator, converter and bank allow.
    pub fn flow(&self, charge: f64, t: &Temperatures) -> Flow {
        let rest_v = self.bank.rest_v(charge);
        let allowed = self.allowed(t);
        let rotor_c = self.machine.rotor_c(t.body_c);
        // Most that may reach house and bank together, and why.
        let held_a = (self.held_v - rest_v) / self.bank.resistance_ohm + self.load_a;
        let taken_a = self.bank_limit_a + self.load_a;
        let (house_a, house_limit) = if held_a < taken_a {
            (held_a.max(0.0), Limit::ChargeVoltage)
        } else {
            (taken_a, Limit::BankLimit)
        };
        let machine_limit = if allowed < 1.0 {
            Limit::Temperature
        } else {
            Limit::Machine
        };
        match &self.converter {
            None => self.direct(
                rest_v,
                rotor_c,
                allowed,
                machine_limit,
                house_a,
                house_limit,
            ),
            Some(converter) => {
                let given_a = allowed
                    * self
                        .curve
                        .full_field_a(self.shaft_rpm, converter.start_v, rotor_c);
                let (given_a, given_limit) = if self.cap_a < given_a {
                    (self.cap_a, Limit::CurrentCap)
                } else {
                    (given_a, machine_limit)
                };
                self.converted(
                    converter,
                    rest_v,
                    given_a,
                    given_limit,
                    house_a,
                    house_limit,
                )
            }
        }
    }

    /// The machine on the house bank itself: its current raises the bank's
    /// voltage, which changes what it can give.
    fn direct(
        &self,
        rest_v: f64,
        rotor_c: f64,
        allowed: f64,
        machine_limit: Limit,
        house_a: f64,
        house_limit: Limit,
    ) -> Flow {
        let (most_a, most_limit) = if self.cap_a < house_a {
            (self.cap_a, Limit::CurrentCap)
        } else {
            (house_a, house_limit)
        };
        let bank_v = |amperes: f64| rest_v + (amperes - self.load_a) * self.bank.resistance_ohm;
        let given_a = self.given_a(allowed, rotor_c, most_a, bank_v);
        let (alternator_a, limit) = if given_a >= most_a {
            (most_a, most_limit)
        } else {
            (given_a, machine_limit)
        };
        let volts = bank_v(alternator_a);
        Flow {
            alternator_a,
            alternator_v: volts,
            bank_a: alternator_a - self.load_a,
            bank_v: volts,
            limit,
        }
    }

    /// What the machine gives on a voltage that rises with its current \[A\], or
    /// at least `most_a` if it could give more: Newton's rule, which needs two
    /// or three steps on any usual bank, and a bracketed root where it fails.
    fn given_a(&self, allowed: f64, rotor_c: f64, most_a: f64, bank_v: impl Fn(f64) -> f64) -> f64 {
        const STEPS: usize = 6;
        let at = |amperes: f64| {
            self.curve
                .full_field_with_slope(self.shaft_rpm, bank_v(amperes), rotor_c)
        };
        let mut amperes = most_a.min(0.7 * allowed * self.curve.infinite_a);
        for _ in 0..STEPS {
            let (given, slope) = at(amperes);
            let slope = allowed * slope * self.bank.resistance_ohm;
            let step = (allowed * given - amperes) / (1.0 - slope);
            if slope.abs() > 0.5 || !step.is_finite() {
                break;
            }
            amperes += step;
            // The next step would be about the square of this one.
            if step.abs() <= 1e-5 * (1.0 + amperes.abs()) {
                return amperes;
            }
            if amperes >= most_a && step > 0.0 && allowed * at(most_a).0 >= most_a {
                return most_a;
            }
        }
        let spare_a = |amperes: f64| allowed * at(amperes).0 - amperes;
        roots::falling(spare_a, 0.0, most_a, 1e-10)
    }

    /// The machine on the start battery: the converter draws
    /// I_out·V_house/(η·V_start), services come on top.
    fn converted(
        &self,
        converter: &Converter,
        rest_v: f64,
        given_a: f64,
        given_limit: Limit,
        house_a: f64,
        house_limit: Limit,
    ) -> Flow {
        let (most_a, most_limit) = if converter.most_a < house_a {
            (converter.most_a, Limit::Converter)
        } else {
            (house_a, house_limit)
        };
        let ohm = self.bank.resistance_ohm;
        let bank_v = |out_a: f64| rest_v + (out_a - self.load_a) * ohm;
        let drawn_a = |out_a: f64| {
            out_a * bank_v(out_a).max(0.0) / (converter.efficiency * converter.start_v)
                + converter.services_a
        };
        let (out_a, limit) = if drawn_a(most_a) <= given_a {
            (most_a, most_limit)
        } else {
            let spare_a = |out_a: f64| given_a - drawn_a(out_a);
            (roots::falling(spare_a, 0.0, most_a, 1e-10), given_limit)
        };
        Flow {
            alternator_a: drawn_a(out_a).min(given_a),
            alternator_v: converter.start_v,
            bank_a: out_a - self.load_a,
            bank_v: bank_v(out_a),
            limit,
        }
    }

    /// Losses at a flow, temperature still open.
    pub fn open_losses(&self, flow: &Flow) -> OpenLosses {
        self.losses_here.at(flow.alternator_a, flow.alternator_v)
    }

    /// Everything at one moment.
    pub fn moment(&self, charge: f64, t: &Temperatures) -> Moment {
        let flow = self.flow(charge, t);
        let losses = self
            .open_losses(&flow)
            .with(t.winding_c, self.machine.rotor_c(t.body_c));
        Moment {
            alternator_a: flow.alternator_a,
            alternator_v: flow.alternator_v,
            bank_a: flow.bank_a,
            bank_v: flow.bank_v,
            limit: flow.limit,
            losses,
        }
    }

    /// Full-field output of the machine at the voltage it works at \[A\], with
    /// its rotor at a temperature.
    pub fn full_field_a(&self, volts: f64, rotor_c: f64) -> f64 {
        self.curve.full_field_a(self.shaft_rpm, volts, rotor_c)
    }

    /// Fuel \[L/h\] to turn the engine and a shaft power \[W\] of the alternator.
    pub fn fuel_l_h(&self, shaft_w: f64) -> f64 {
        self.fuel.idle_l_h + self.marginal_fuel_l_h(shaft_w)
    }

    /// The alternator's part of it \[L/h\].
    pub fn marginal_fuel_l_h(&self, shaft_w: f64) -> f64 {
        self.fuel.slope_l_h_kw * shaft_w / 1000.0 / self.belt_efficiency
    }
}

/// Currents and voltages at one moment.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Flow {
    /// Alternator current \[A\].
    pub alternator_a: f64,
    /// Voltage at the alternator \[V\].
    pub alternator_v: f64,
    /// Current into the bank \[A\].
    pub bank_a: f64,
    /// Voltage at the bank \[V\].
    pub bank_v: f64,
    /// What holds it there.
    pub limit: Limit,
}

impl SpaceAir {
    /// Rate of change of the air's temperature \[K/s\] at a time \[s\] after the start.
    pub fn rate(&self, seconds: f64, air_c: f64, machine_w: f64) -> f64 {
        match self.measured_hot_c {
            Some(hot_c) => (hot_c - air_c) / self.warm_up_s,
            None => {
                let engine_c = self.engine_c
                    + (self.start_c - self.engine_c) * (-seconds / self.warm_up_s).exp();
                (self.engine_w_k * (engine_c - air_c) + machine_w
                    - self.flow_w_k * (air_c - self.outside_c)
                    - self.wall_w_k * (air_c - self.cabin_c))
                    / self.heat_j_k
            }
        }
    }

    /// The balance it comes to with the engine warm.
    pub fn balance(&self) -> AirBalance {
        match self.measured_hot_c {
            Some(hot_c) => AirBalance::Fixed(hot_c),
            None => AirBalance::Open {
                conductance_w_k: self.engine_w_k + self.flow_w_k + self.wall_w_k,
                heat_w: self.engine_w_k * self.engine_c
                    + self.flow_w_k * self.outside_c
                    + self.wall_w_k * self.cabin_c,
            },
        }
    }
}

fn output_curve(inputs: &Inputs) -> (OutputCurve, bool) {
    let alt = &inputs.alt;
    let rating = || through_rating(alt.rated_a, alt.rated_rpm, alt.zero_rpm);
    let points = match alt.curve {
        Curve::Rating => Some(rating()),
        Curve::Points => {
            through_points((alt.second_rpm, alt.second_a), (alt.rated_rpm, alt.rated_a))
        }
    };
    let (infinite_a, zero_rpm) = points.unwrap_or_else(rating);
    let curve = OutputCurve {
        infinite_a,
        zero_rpm,
        test_v: inputs.alternator_test_v(),
        rotor_c: inputs.plate_rotor_c(),
        diode_v: alt.diode_v,
        field_exponent: alt.field_exponent,
        speed_exponent: alt.speed_exponent,
    };
    (curve, points.is_some())
}

fn space_air(inputs: &Inputs, engine_rpm: f64) -> SpaceAir {
    let (space, eng) = (&inputs.space, &inputs.eng);
    let drawn_m3h = match eng.breathing {
        Breathing::Space => {
            air::combustion_m3h(eng.displacement_l, engine_rpm, eng.filling_pct / 100.0)
        }
        Breathing::Outside => 0.0,
    };
    let flow_m3h =
        drawn_m3h + space.blower_m3h * space.blower_installed_pct / 100.0 + space.leak_m3h;
    SpaceAir {
        flow_m3h,
        flow_w_k: air::flow_w_k(flow_m3h, space.air_kg_m3),
        wall_w_k: space.wall_w_k,
        engine_w_k: eng.surface_w_k,
        outside_c: space.outside_c,
        cabin_c: inputs.cabin_c(),
        heat_j_k: space.heat_capacity_kj_k * 1000.0,
        measured_hot_c: (space.basis == AirBasis::Measured).then_some(space.hot_c),
        start_c: inputs.start_c(),
        engine_c: eng.running_c,
        warm_up_s: eng.warm_up_min * 60.0,
    }
}

fn engine_fuel(inputs: &Inputs, engine_rpm: f64) -> Willans {
    let eng = &inputs.eng;
    let chamber_kpa = match eng.injection {
        Injection::Direct => 75.0,
        Injection::Chamber => 110.0,
    };
    let kpa = friction_kpa(chamber_kpa, engine_rpm, eng.stroke_mm);
    willans(
        friction_kw(kpa, eng.displacement_l, engine_rpm),
        eng.indicated_efficiency_pct / 100.0,
        eng.fuel_mj_kg,
        eng.fuel_kg_l,
    )
}
