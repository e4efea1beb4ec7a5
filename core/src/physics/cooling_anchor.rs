//! How well an alternator is cooled, from one temperature that is known of it:
//! its winding at full field, or its case at a known current.

use crate::numerics::bracketed_root;
use crate::physics::losses::{Losses, LossesAtSpeed};
use crate::physics::output::OutputCurve;
use crate::physics::thermal::{AirBalance, Temperatures, ThermalNetwork};
use crate::physics::thermal_build::Build;

/// Cooling factors between which one is looked for.
const SPAN: (f64, f64) = (0.02, 50.0);

/// A winding at full field, whose temperature scales an alternator's cooling.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct WindingAnchor {
    /// Winding \[°C\].
    pub winding_c: f64,
    /// At this shaft speed \[rpm\].
    pub shaft_rpm: f64,
    /// In air of this temperature \[°C\].
    pub air_c: f64,
}

/// A case at a known current aboard, whose temperature scales an alternator's
/// cooling.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CaseAnchor {
    /// Case \[°C\].
    pub case_c: f64,
    /// At this current \[A\], at the speed the losses are taken at.
    pub amperes: f64,
    /// At this voltage \[V\].
    pub volts: f64,
    /// In air of this temperature near it \[°C\].
    pub air_c: f64,
}

/// The cooling factor that makes an alternator at full field settle at its anchor,
/// and whether there is one between a fiftieth and fifty; if not, the nearer end.
///
/// With the winding's temperature given, a trial temperature of the body
/// fixes current and losses; the winding's balance then gives the factor, the
/// rectifier's its temperature, and the body's balance is left to be met.
pub fn cooling_by_winding(
    build: &Build,
    curve: &OutputCurve,
    losses: &LossesAtSpeed,
    anchor: &WindingAnchor,
) -> (f64, bool) {
    let unit = ThermalNetwork::new(build, 1.0);
    let rise_k = (anchor.winding_c - anchor.air_c).max(1.0);
    let winding_c = anchor.air_c + rise_k;
    let losses_at = |body_c: f64| {
        let rotor_c = unit.rotor_c(body_c);
        let amperes = curve.full_field_a(anchor.shaft_rpm, curve.test_v, rotor_c);
        losses.at(amperes, curve.test_v).with(winding_c, rotor_c)
    };
    let cooling_at = |body_c: f64, losses: &Losses| {
        (losses.copper_w - unit.winding_body * (winding_c - body_c)) / (unit.winding_air * rise_k)
    };
    let left_w = |body_c: f64| {
        let losses = losses_at(body_c);
        let cooling = cooling_at(body_c, &losses).clamp(SPAN.0, SPAN.1);
        let network = ThermalNetwork::new(build, cooling);
        let (air, body) = (network.rectifier_air, network.rectifier_body);
        let t = Temperatures {
            winding_c,
            body_c,
            rectifier_c: (losses.diode_w + body * body_c + air * anchor.air_c) / (air + body),
            air_c: anchor.air_c,
        };
        network.rates(&t, &losses)[1]
    };
    let body_c = bracketed_root(left_w, anchor.air_c, winding_c + 500.0, 1e-12);
    let cooling = cooling_at(body_c, &losses_at(body_c));
    let clamped = cooling.clamp(SPAN.0, SPAN.1);
    (clamped, cooling == clamped)
}

/// The cooling factor that makes the case of an alternator settle at its anchor,
/// and whether there is one between a fiftieth and fifty; if not, the nearer end.
/// `losses` are those at the anchor's shaft speed.
///
/// More cooling always means a cooler case; where there is so little that the
/// copper's losses run away, the case counts as endlessly hot.
///
/// `cooled` is the alternator as it is installed, with a cooling factor: what it
/// draws in of its own warm air was there when the case was read.
pub fn cooling_by_case(
    cooled: impl Fn(f64) -> ThermalNetwork,
    losses: &LossesAtSpeed,
    anchor: &CaseAnchor,
) -> (f64, bool) {
    let case_c = anchor.case_c.max(anchor.air_c + 1.0);
    let open = losses.at(anchor.amperes, anchor.volts);
    /// Stands for a case that never settles \[K\].
    const ENDLESS_K: f64 = 1e4;
    let too_hot_k = |log_cooling: f64| {
        let settled = cooled(log_cooling.exp()).settled(&open, &AirBalance::Fixed(anchor.air_c));
        settled.map_or(ENDLESS_K, |t| t.body_c - case_c)
    };
    let (low, high) = (SPAN.0.ln(), SPAN.1.ln());
    if too_hot_k(low) <= 0.0 {
        return (SPAN.0, false);
    }
    if too_hot_k(high) >= 0.0 {
        return (SPAN.1, false);
    }
    (bracketed_root(too_hot_k, low, high, 1e-12).exp(), true)
}
