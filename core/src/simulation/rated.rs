//! One of a worksheet's alternators as it is rated: its output curve, its losses,
//! and how it is built as far as its heat goes.

use crate::boat::{Curve, InstalledAlternator};
use crate::physics::losses::RatedLosses;
use crate::physics::output::{OutputCurve, through_points, through_rating};
use crate::physics::thermal::ThermalNetwork;
use crate::physics::thermal_build::{Build, HeatPaths};

/// Its output curve, and whether the points it is given by make one.
pub(super) fn output_curve(installed: &InstalledAlternator) -> (OutputCurve, bool) {
    let alt = installed.alternator;
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
        test_v: installed.test_v(),
        rotor_c: installed.plate_rotor_c(),
        diode_v: alt.diode_v,
        field_exponent: alt.field_exponent,
        speed_exponent: alt.speed_exponent,
    };
    (curve, points.is_some())
}

/// How an alternator is built.
pub(crate) fn alternator_build(installed: &InstalledAlternator) -> Build {
    let alternator = installed.alternator;
    Build {
        mass_kg: installed.mass_kg(),
        rated_w: alternator.rated_a * installed.test_v(),
        rotor_rise_k: alternator.rotor_rise_k,
        paths: HeatPaths {
            winding_body_w_k: installed.coupling_w_k(),
            body_air: alternator.case_air_pct / 100.0,
            rectifier_air: alternator.rectifier_air_pct / 100.0,
            still_air: alternator.still_air_pct / 100.0,
        },
    }
}

/// Its thermal network at the anchor's speed, as it is installed: with what it
/// draws in of its own warm air, and through a duct.
pub(super) fn installed_network(
    installed: &InstalledAlternator,
    build: &Build,
    cooling: f64,
) -> ThermalNetwork {
    let space = &installed.boat.space;
    ThermalNetwork {
        recirculation: space.recirculation_pct / 100.0,
        ducted: space.cold_air_pct / 100.0,
        duct_c: space.outside_c,
        ..ThermalNetwork::new(build, cooling)
    }
}

/// What it loses at its rating, were it of some efficiency \[%\].
pub(super) fn rated_losses(installed: &InstalledAlternator, efficiency_pct: f64) -> RatedLosses {
    let alternator = installed.alternator;
    RatedLosses {
        rated_a: alternator.rated_a,
        efficiency: efficiency_pct / 100.0,
        field_w: installed.field_w(),
        iron_share: alternator.iron_share_pct / 100.0,
        fan_share: alternator.fan_share_pct / 100.0,
        fan_exponent: alternator.fan_exponent,
    }
}
