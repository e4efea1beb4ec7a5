//! Fitting our output curve to measured points by least squares.

use ampwright_core::physics::output::OutputCurve;

use crate::rms;

/// The curve of least squares in amperes: beginning speeds are tried in turn,
/// and the height that goes with each is linear.
pub fn curve(points: &[(f64, f64)], volts: f64) -> OutputCurve {
    let slowest = points.iter().map(|p| p.0).fold(f64::INFINITY, f64::min);
    let at = |zero_rpm: f64| {
        let unit = OutputCurve {
            infinite_a: 1.0,
            zero_rpm,
            test_v: volts,
            rotor_c: 25.0,
            diode_v: 0.9,
            field_exponent: 0.75,
            speed_exponent: 0.17,
        };
        let shape = |rpm: f64| unit.full_field_a(rpm, volts, 25.0);
        let up: f64 = points.iter().map(|(rpm, a)| shape(*rpm) * a).sum();
        let down: f64 = points.iter().map(|(rpm, _)| shape(*rpm).powi(2)).sum();
        OutputCurve {
            infinite_a: up / down,
            ..unit
        }
    };
    let off = |curve: &OutputCurve| -> f64 {
        let off_a = |(rpm, a): &(f64, f64)| curve.full_field_a(*rpm, volts, 25.0) - a;
        points.iter().map(|p| off_a(p).powi(2)).sum()
    };
    (500..(slowest - 1.0) as i32)
        .map(|rpm| at(f64::from(rpm)))
        .min_by(|a, b| off(a).total_cmp(&off(b)))
        .expect("at least one speed")
}

/// Root mean square error \[%\]: of the largest output, and of each output.
pub fn errors(curve: &OutputCurve, points: &[(f64, f64)]) -> (f64, f64) {
    let most = points.iter().map(|p| p.1).fold(0.0, f64::max);
    let off_a: Vec<(f64, f64)> = points
        .iter()
        .map(|(rpm, a)| (curve.full_field_a(*rpm, curve.test_v, 25.0) - a, *a))
        .collect();
    let part = |divisor: &dyn Fn(f64) -> f64| -> f64 {
        let parts: Vec<f64> = off_a
            .iter()
            .map(|(off, a)| 100.0 * off / divisor(*a))
            .collect();
        rms(&parts)
    };
    (part(&|_| most), part(&|a| a))
}
