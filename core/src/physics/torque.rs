//! What torque a diesel has below its rated speed.

use crate::formula::formula;
use crate::physics::sources;

/// Share of its rated torque that a diesel's full-load torque would have at a
/// standstill if its curve went on to there: direct injection. Coefficients of
/// the relation of Leiderman and Khlystov, from memory.
pub const DIRECT: f64 = 0.5;
/// Share of its rated torque that the curve of a diesel with a pre-chamber has at a
/// standstill, from memory as [`DIRECT`] is. (0.7 is given for a swirl chamber; the lower
/// figure is used for both, to be on the safe side.)
pub const CHAMBER: f64 = 0.6;

/// Full-load torque of a naturally aspirated diesel over that at its rated
/// speed: k + (2 − k)·x − x², with x the speed over the rated one (0 to 1) and
/// k one of [`DIRECT`] and [`CHAMBER`].
///
/// This is the relation of Leiderman and Khlystov for an engine's full-load
/// power, P/P_rated = a·x + b·x² − c·x³ with a = k, b = 2 − k, c = 1
/// (coefficients from memory; discussed in "New Leiderman–Khlystov
/// coefficients for estimating engine full load characteristics and
/// performance", Chinese Journal of Mechanical Engineering 32, 2019, abstract
/// seen). Near half of the rated speed it gives up to a tenth more than the
/// rated torque; that is not counted on here, as a small engine's injection is
/// rarely set as well as on the test bench (own reasoning). At a low idle it is
/// 0.7 to 0.9: filling, injection and combustion are poor there.
#[formula(symbol = "k_T", unit = "", source = sources::TORQUE)]
pub fn torque_share(#[symbol("x")] speed_share: f64, #[symbol("k_0")] at_standstill: f64) -> f64 {
    let x = speed_share.clamp(0.0, 1.0);
    (at_standstill + (2.0 - at_standstill) * x - x.powi(2)).min(1.0)
}

/// Speed of an engine over its highest, no more than 1.
#[formula(symbol = "x", unit = "", source = sources::TORQUE)]
pub fn speed_share(#[symbol("n_E")] engine_rpm: f64, #[symbol("n_top")] top_rpm: f64) -> f64 {
    (engine_rpm / top_rpm).min(1.0)
}

/// Power an engine has at a speed \[kW\], from that at its highest speed: power
/// follows speed and torque.
#[formula(symbol = "P_has", unit = "kW", source = sources::TORQUE)]
pub fn available_kw(
    #[symbol("P_E")] rated_kw: f64,
    #[symbol("x")] speed_share: f64,
    #[symbol("k_T")] torque_share: f64,
) -> f64 {
    rated_kw * speed_share * torque_share
}

#[cfg(test)]
mod tests {
    use crate::physics::torque::{CHAMBER, DIRECT, torque_share};

    #[test]
    fn rated_torque_at_rated_speed_and_less_at_idle() {
        for chamber in [DIRECT, CHAMBER] {
            assert_eq!(torque_share(1.0, chamber), 1.0);
            assert_eq!(torque_share(1.4, chamber), 1.0);
            let idle = torque_share(800.0 / 3600.0, chamber);
            assert!((0.7..0.9).contains(&idle), "{idle}");
        }
    }

    #[test]
    fn power_only_rises_with_speed() {
        for chamber in [DIRECT, CHAMBER] {
            let power = |x: f64| x * torque_share(x, chamber);
            for step in 0..100 {
                let x = f64::from(step) / 100.0;
                assert!(power(x + 0.01) > power(x), "at {x}");
                assert!(torque_share(x, chamber) <= 1.0);
            }
        }
    }
}
