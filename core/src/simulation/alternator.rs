//! One alternator on this boat: calibrated once, then at the speed it turns,
//! with what its regulator allows.

use crate::boat::{CapAt, Connection, InstalledAlternator, RegulatorKind};
use crate::physics::drive::shaft_rpm;
use crate::physics::heat_balance::fan_factor;
use crate::physics::losses::{LossModel, Losses, LossesAtSpeed, OpenLosses};
use crate::physics::output::{CurveAtSpeed, OutputCurve};
use crate::physics::regulator::{folded, soft_start};
use crate::physics::thermal::{Temperatures, ThermalNetwork};
use crate::simulation::Limit;
use crate::simulation::cooling::{calibrated_cooling, winding_lead};
use crate::simulation::rated::{alternator_build, installed_network, output_curve, rated_losses};
use crate::simulation::regulators::{BUILT_IN_AT_C, BuiltInRegulator, ExternalRegulator};

/// An alternator with its curve, losses and cooling worked out, for any speed.
/// Calibrating it costs time; once that is done, [`Self::at_engine_rpm`] costs next to
/// nothing.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CalibratedAlternator {
    /// Its output.
    pub curve: OutputCurve,
    /// Its losses.
    pub losses: LossModel,
    /// Factor on its air conductances that meets the anchor.
    pub cooling: f64,
    /// Whether the anchor could be met.
    pub anchored: bool,
    /// Whether the two points of the output curve make a curve.
    pub curve_fits: bool,
    /// Whether it is of the voltage of the battery it is led to; one that is
    /// not must not be connected and gives nothing.
    pub fits: bool,
    /// Where its cable leads.
    pub connection: Connection,
    /// Its thermal network at the anchor's speed.
    network: ThermalNetwork,
    winding_lead: f64,
    anchor_rpm: f64,
    cooling_exponent: f64,
    pulley_ratio: f64,
    cap_a: f64,
    regulator: Option<ExternalRegulator>,
    built_in: Option<BuiltInRegulator>,
}

impl CalibratedAlternator {
    /// One of a worksheet's alternators. Of the worksheet it uses the sections
    /// of that alternator, of the regulator and of the engine space, the voltage
    /// of its battery, and nothing else.
    pub fn of(installed: &InstalledAlternator) -> CalibratedAlternator {
        let (alt, inputs) = (installed.alternator, installed.boat);
        let (curve, curve_fits) = output_curve(installed);
        let losses = LossModel::calibrate(&rated_losses(installed, alt.efficiency_pct), &curve);
        let build = alternator_build(installed);
        let (cooling, anchored) = calibrated_cooling(installed, &curve);
        let network = installed_network(installed, &build, cooling)
            .with_heat_capacity(alt.heat_capacity_factor);
        let reg = installed.regulator();
        let external = reg.kind == RegulatorKind::External;
        let capped_here = external
            && !(reg.cap_measured == CapAt::Battery
                && inputs.bank_cap_a().is_some()
                && installed.connection.on_house());
        CalibratedAlternator {
            curve,
            losses,
            cooling,
            anchored,
            curve_fits,
            fits: installed.fits(),
            connection: installed.connection,
            winding_lead: winding_lead(installed, &curve),
            network,
            anchor_rpm: alt.anchor_rpm,
            cooling_exponent: alt.cooling_exponent,
            pulley_ratio: alt.pulley_ratio,
            cap_a: reg
                .current_cap_a
                .filter(|_| capped_here)
                .unwrap_or(f64::INFINITY),
            regulator: ExternalRegulator::of(installed),
            built_in: BuiltInRegulator::of(installed),
        }
    }

    /// At an engine speed \[rpm\].
    pub fn at_engine_rpm(&self, engine_rpm: f64) -> AlternatorAtSpeed {
        let shaft_rpm = shaft_rpm(self.pulley_ratio, engine_rpm);
        let fan = fan_factor(
            shaft_rpm,
            self.anchor_rpm,
            self.cooling_exponent,
            self.network.still_air,
        );
        AlternatorAtSpeed {
            curve: self.curve,
            losses: self.losses,
            curve_here: self.curve.at_speed(shaft_rpm),
            losses_here: self.losses.at_speed(&self.curve, shaft_rpm),
            connection: self.connection,
            network: self.network.with_fan(fan),
            winding_lead: self.winding_lead,
            cooling: self.cooling,
            anchored: self.anchored,
            curve_fits: self.curve_fits,
            fits: self.fits,
            shaft_rpm,
            fan,
            cap_a: self.cap_a,
            regulator: self.regulator,
            built_in: self.built_in,
        }
    }
}

/// An alternator at the speed it turns.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct AlternatorAtSpeed {
    /// Its output.
    pub curve: OutputCurve,
    /// Its losses.
    pub losses: LossModel,
    /// Its output at the speed it turns.
    pub curve_here: CurveAtSpeed,
    losses_here: LossesAtSpeed,
    /// Where its cable leads.
    pub connection: Connection,
    /// Its thermal network at the speed it turns.
    pub network: ThermalNetwork,
    /// By how much more than calculated its winding may be hotter than its case:
    /// 1 where that is known.
    winding_lead: f64,
    /// Factor on its air conductances that meets the anchor.
    pub cooling: f64,
    /// Whether the anchor could be met.
    pub anchored: bool,
    /// Whether the two points of the output curve make a curve.
    pub curve_fits: bool,
    /// Its own speed \[rpm\].
    pub shaft_rpm: f64,
    /// How its cooling at this speed compares with that at the anchor's.
    pub fan: f64,
    /// Most the regulator lets it give \[A\].
    pub cap_a: f64,
    /// Whether it is of the voltage of the battery it is led to; one that is
    /// not must not be connected and gives nothing.
    pub fits: bool,
    pub(super) regulator: Option<ExternalRegulator>,
    built_in: Option<BuiltInRegulator>,
}

impl AlternatorAtSpeed {
    /// Whether a built-in regulator of it decides the voltage of the house bank.
    pub(super) fn has_built_in(&self) -> bool {
        self.built_in.is_some()
    }

    /// What its built-in regulator holds on the house bank with the alternator
    /// so warm \[V\]; none where it has none or does not lie on that bank.
    ///
    /// 14.4 V at 20 °C, falling by 10 mV/K: technical manual of a small marine
    /// diesel, and of passenger cars (range 0 to 12 mV/K). The regulator sits at
    /// the rear, in the air that is drawn in and on the body: half-way between
    /// the two is own reasoning.
    pub fn holds_v(&self, t: &Temperatures) -> Option<f64> {
        let built_in = self.built_in?;
        let regulator_c = 0.5 * (self.network.inlet_c(t) + t.body_c);
        Some(built_in.volts - built_in.drop_v_k * (regulator_c - BUILT_IN_AT_C))
    }

    /// Part of full field the regulator allows, 0 to 1, and why, at a time
    /// \[s\] after the start with its sensor at a temperature \[°C\].
    pub fn allowed(&self, seconds: f64, sensed_c: f64) -> (f64, Limit) {
        if !self.fits {
            return (0.0, Limit::WrongVoltage);
        }
        let Some(regulator) = &self.regulator else {
            return (1.0, Limit::AlternatorOutput);
        };
        let fold = regulator
            .without_sensor
            .unwrap_or_else(|| folded(regulator.set_point_c, regulator.band_k, sensed_c));
        let ramp = if regulator.ramp_s > 0.0 {
            soft_start(seconds / 60.0, regulator.ramp_s / 60.0)
        } else {
            1.0
        };
        let slow = if self.shaft_rpm < regulator.low_speed_rpm {
            regulator.low_speed_share
        } else {
            1.0
        };
        let least = [
            (1.0, Limit::AlternatorOutput),
            (fold, Limit::Temperature),
            (ramp, Limit::Ramp),
            (slow, Limit::LowSpeed),
            (regulator.field_cap, Limit::FieldCap),
        ];
        least
            .into_iter()
            .reduce(|least, other| if other.0 < least.0 { other } else { least })
            .unwrap_or((1.0, Limit::AlternatorOutput))
    }

    /// Whether its field is let up over some time.
    pub fn starts_slowly(&self) -> bool {
        self.regulator
            .is_some_and(|regulator| regulator.ramp_s > 0.0)
    }

    /// Whether its winding is known as well as the rest of it.
    pub(crate) fn winding_known(&self) -> bool {
        self.winding_lead <= 1.0
    }

    /// What its winding may be at most where only its case is known of \[°C\]; none
    /// where the winding is known as well as the rest.
    pub fn winding_may_be_c(&self, t: &Temperatures) -> Option<f64> {
        let lead_k = (t.winding_c - t.body_c).max(0.0);
        (!self.winding_known()).then_some(t.body_c + self.winding_lead * lead_k)
    }

    /// Full-field output as rated, at this speed \[A\].
    pub fn as_rated_a(&self) -> f64 {
        self.curve
            .full_field_a(self.shaft_rpm, self.curve.test_v, self.curve.rotor_c)
    }

    /// Losses at temperatures, which were open.
    pub fn losses_at(&self, open: &OpenLosses, t: &Temperatures) -> Losses {
        open.with(t.winding_c, self.network.rotor_c(t.body_c))
    }

    /// Losses at a current and voltage, temperature still open.
    pub fn open_losses(&self, amperes: f64, volts: f64) -> OpenLosses {
        self.losses_here.at(amperes, volts)
    }
}
