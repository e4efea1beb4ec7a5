//! How well an alternator is cooled, by what is known of it.

use crate::boat::{
    CoolingAnchor, InstalledAlternator, LEAST_COUPLING_W_K, USUAL_EFFICIENCY_PCT, key,
};
use crate::numerics::bracketed_root;
use crate::physics::cooling_anchor::{
    CaseAnchor, WindingAnchor, cooling_by_case, cooling_by_winding,
};
use crate::physics::losses::{LossModel, LossesAtSpeed};
use crate::physics::output::OutputCurve;
use crate::physics::thermal::AirBalance;
use crate::physics::thermal_build::{Build, HeatPaths};
use crate::simulation::rated::{alternator_build, installed_network, output_curve, rated_losses};

/// The cooling factor that meets what is known of an alternator, and whether one
/// does.
pub(super) fn calibrated_cooling(
    installed: &InstalledAlternator,
    curve: &OutputCurve,
) -> (f64, bool) {
    match installed.cooling_anchor() {
        CoolingAnchor::Winding {
            winding_c,
            efficiency_pct,
        } => by_winding(installed, curve, winding_c, efficiency_pct),
        CoolingAnchor::Case { case_c, amperes } => {
            let anchor = case_anchor(installed, curve, case_c, amperes);
            let efficiency_pct = installed.alternator.efficiency_pct;
            let losses = losses_at_anchor(installed, curve, efficiency_pct);
            let build = alternator_build(installed);
            let cooled = |cooling: f64| installed_network(installed, &build, cooling);
            cooling_by_case(cooled, &losses, &anchor)
        }
    }
}

/// The cooling factor of one with its own losses whose winding reaches a
/// temperature at full field on the bench \[°C\].
pub(crate) fn cooling_of_winding(
    installed: &InstalledAlternator,
    curve: &OutputCurve,
    winding_c: f64,
) -> f64 {
    let efficiency_pct = installed.alternator.efficiency_pct;
    by_winding(installed, curve, winding_c, efficiency_pct).0
}

/// The winding's temperature at full field on the bench \[°C\] of an alternator with
/// its own losses that is cooled like one of usual efficiency whose winding
/// reaches `usual_c` \[°C\].
pub(crate) fn winding_cooled_as_usual_c(installed: &InstalledAlternator, usual_c: f64) -> f64 {
    if installed.alternator.efficiency_pct == USUAL_EFFICIENCY_PCT {
        return usual_c;
    }
    let (curve, _) = output_curve(installed);
    let (cooling, _) = by_winding(installed, &curve, usual_c, USUAL_EFFICIENCY_PCT);
    winding_of_cooling_c(installed, &curve, cooling)
}

/// The winding's temperature at full field on the bench \[°C\] that gives an
/// alternator with its own losses a cooling factor; the nearest one that the
/// worksheet takes.
pub(crate) fn winding_of_cooling_c(
    installed: &InstalledAlternator,
    curve: &OutputCurve,
    cooling: f64,
) -> f64 {
    let (low, high) = anchor_range_c();
    let spare = |winding_c: f64| cooling_of_winding(installed, curve, winding_c) - cooling;
    bracketed_root(spare, low, high, 1e-9)
}

/// Lowest and highest winding temperature on the bench that the worksheet takes \[°C\].
pub(crate) fn anchor_range_c() -> (f64, f64) {
    let range = key!(alt.anchor_winding_c).spec().range();
    range.unwrap_or((80.0, 260.0))
}

/// By how much more than calculated the winding may be hotter than the case: 1
/// where that is known. Where only the case is, the winding of an alternator with
/// as hot a case may follow it as loosely as any does.
pub(super) fn winding_lead(installed: &InstalledAlternator, curve: &OutputCurve) -> f64 {
    let CoolingAnchor::Case { case_c, amperes } = installed.cooling_anchor() else {
        return 1.0;
    };
    if !installed.winding_unknown() {
        return 1.0;
    }
    let anchor = case_anchor(installed, curve, case_c, amperes);
    let losses = losses_at_anchor(installed, curve, installed.alternator.efficiency_pct);
    let lead_k = |build: &Build| {
        let cooled = |cooling: f64| installed_network(installed, build, cooling);
        let (cooling, _) = cooling_by_case(cooled, &losses, &anchor);
        let open = losses.at(anchor.amperes, anchor.volts);
        let air = AirBalance::Fixed(anchor.air_c);
        let settled = cooled(cooling).settled(&open, &air);
        settled.map(|t| t.winding_c - t.body_c)
    };
    let build = alternator_build(installed);
    let loose = Build {
        paths: HeatPaths {
            winding_body_w_k: LEAST_COUPLING_W_K.min(build.paths.winding_body_w_k),
            ..build.paths
        },
        ..build
    };
    match (lead_k(&loose), lead_k(&build)) {
        (Some(loose_k), Some(lead_k)) if lead_k > 0.0 => (loose_k / lead_k).max(1.0),
        _ => build.paths.winding_body_w_k / loose.paths.winding_body_w_k,
    }
}

fn by_winding(
    installed: &InstalledAlternator,
    curve: &OutputCurve,
    winding_c: f64,
    efficiency_pct: f64,
) -> (f64, bool) {
    let anchor = WindingAnchor {
        winding_c,
        shaft_rpm: installed.alternator.anchor_rpm,
        air_c: installed.alternator.anchor_air_c,
    };
    let losses = losses_at_anchor(installed, curve, efficiency_pct);
    cooling_by_winding(&alternator_build(installed), curve, &losses, &anchor)
}

fn case_anchor(
    installed: &InstalledAlternator,
    curve: &OutputCurve,
    case_c: f64,
    amperes: f64,
) -> CaseAnchor {
    CaseAnchor {
        case_c,
        amperes,
        volts: curve.test_v,
        air_c: installed.alternator.anchor_air_c,
    }
}

fn losses_at_anchor(
    installed: &InstalledAlternator,
    curve: &OutputCurve,
    efficiency_pct: f64,
) -> LossesAtSpeed {
    let rated = rated_losses(installed, efficiency_pct);
    LossModel::calibrate(&rated, curve).at_speed(curve, installed.alternator.anchor_rpm)
}
