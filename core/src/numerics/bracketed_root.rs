//! Roots of functions of one variable between two ends.

/// Tries after which the search ends wherever it is. Halving alone would need
/// some hundred for any bracket of ordinary numbers.
const MOST_TRIES: u32 = 200;

/// Where a falling function crosses zero between `low` and `high`; the nearer
/// end if it does not. The answer lies in a bracket narrower than `tolerance`
/// times (1 + its position), at the end of it where the function is nearer zero.
///
/// The method is that of T. R. Chandrupatla, "A new hybrid quadratic/bisection
/// algorithm for finding the zero of a nonlinear function without using
/// derivatives", Advances in Engineering Software 28, 145–149, 1997 (from
/// memory): inverse quadratic interpolation where three points say that the
/// inverse is a function, halving otherwise. The first try is the straight line
/// between both ends instead of the middle, as nearly straight functions are
/// the usual ones here.
pub fn bracketed_root(f: impl Fn(f64) -> f64, low: f64, high: f64, tolerance: f64) -> f64 {
    let (at_low, at_high) = (f(low), f(high));
    if at_low <= 0.0 {
        return low;
    }
    if at_high >= 0.0 {
        return high;
    }
    // The newest point, and the one beyond the root.
    let (mut new, mut at_new) = (high, at_high);
    let (mut far, mut at_far) = (low, at_low);
    let mut share = within(at_new / (at_new - at_far), 0.0);
    for _ in 0..MOST_TRIES {
        let tried = new + share * (far - new);
        let value = f(tried);
        // The point dropped from the bracket, or beside it, still tells of the bend.
        let (old, at_old);
        if (value > 0.0) == (at_new > 0.0) {
            (old, at_old) = (new, at_new);
        } else {
            (old, at_old) = (far, at_far);
            (far, at_far) = (new, at_new);
        }
        (new, at_new) = (tried, value);
        let best = if at_new.abs() < at_far.abs() {
            new
        } else {
            far
        };
        let width = (far - new).abs();
        let allowed = tolerance * (1.0 + new.abs().max(far.abs()));
        if value == 0.0 || width <= allowed {
            return best;
        }
        share = next_share((new, at_new), (far, at_far), (old, at_old));
        share = within(share, 0.5 * allowed / width);
    }
    0.5 * (new + far)
}

/// The next try as a share of the way from the newest point to the far one,
/// each point with its value.
fn next_share(new: (f64, f64), far: (f64, f64), old: (f64, f64)) -> f64 {
    let ((a, fa), (b, fb), (c, fc)) = (new, far, old);
    let xi = (a - b) / (c - b);
    let phi = (fa - fb) / (fc - fb);
    // The inverse through the three points is monotonic between the two.
    if phi * phi < xi && (1.0 - phi) * (1.0 - phi) < 1.0 - xi {
        fa / (fb - fa) * fc / (fb - fc) + (c - a) / (b - a) * fa / (fc - fa) * fb / (fc - fb)
    } else {
        0.5
    }
}

/// A share no nearer to either end than `least`; the middle if it is no number.
fn within(share: f64, least: f64) -> f64 {
    if share.is_finite() {
        share.max(least).min(1.0 - least)
    } else {
        0.5
    }
}

#[cfg(test)]
mod tests {
    use crate::numerics::bracketed_root::bracketed_root;
    use std::cell::Cell;

    /// The root to 1e-12 and how often the function was asked.
    fn counted(f: impl Fn(f64) -> f64, low: f64, high: f64) -> (f64, u32) {
        let asked = Cell::new(0);
        let root = bracketed_root(
            |x| {
                asked.set(asked.get() + 1);
                f(x)
            },
            low,
            high,
            1e-12,
        );
        (root, asked.get())
    }

    #[track_caller]
    fn finds(f: impl Fn(f64) -> f64, low: f64, high: f64, root: f64, most: u32) {
        let (found, asked) = counted(f, low, high);
        let off = (found - root).abs() / (1.0 + root.abs());
        assert!(off <= 1e-12, "{found} for {root}");
        assert!(asked <= most, "asked {asked} times, {most} allowed");
    }

    #[test]
    fn smooth_functions_take_few_evaluations() {
        const MOST: u32 = 14;
        finds(|x| 0.3 - x, 0.0, 1.0, 0.3, 4);
        finds(|x| 3.0 - x * x, 0.0, 10.0, 3.0_f64.sqrt(), MOST);
        finds(|x| (-x).exp() - 0.2, 0.0, 10.0, 5.0_f64.ln(), MOST);
        finds(
            |x: f64| x.cos() - x,
            0.0,
            1.0,
            0.739_085_133_215_160_6,
            MOST,
        );
        finds(
            |x| -x * x * x + 2.0 * x + 5.0,
            2.0,
            3.0,
            2.094_551_481_542_326_6,
            MOST,
        );
        finds(
            |x| 150.0 / (1.0 + x) - x,
            0.0,
            300.0,
            0.5 * (601.0_f64.sqrt() - 1.0),
            MOST,
        );
        finds(|x| 1.0 - (x / 700.0).powi(3), 0.0, 1000.0, 700.0, MOST);
    }

    #[test]
    fn a_kink_or_a_step_costs_no_more_than_halving() {
        let kinked = |x: f64| {
            if x < 37.0 {
                50.0 - x
            } else {
                13.0 - 1e3 * (x - 37.0)
            }
        };
        finds(kinked, 0.0, 200.0, 37.013, 30);
        // A plateau just above zero, then a fall.
        let flat = |x: f64| if x < 80.0 { 1e-6 } else { 80.0 - x + 1e-6 };
        finds(flat, 0.0, 100.0, 80.000_001, 60);
        let steep = |x: f64| if x < 55.5 { 1.0 } else { -1e9 };
        finds(steep, 0.0, 100.0, 55.5, 60);
        // Flat at the root, to the ninth power: nothing interpolates that.
        let (found, asked) = counted(|x| (1.0 - x).powi(9), 0.0, 3.5);
        assert!((found - 1.0).abs() < 0.05, "{found}");
        assert!(asked <= 120, "{asked}");
    }

    #[test]
    fn no_crossing_gives_the_nearer_end() {
        assert_eq!(bracketed_root(|x| -1.0 - x, 2.0, 5.0, 1e-9), 2.0);
        assert_eq!(bracketed_root(|x| 9.0 - x, 2.0, 5.0, 1e-9), 5.0);
        assert_eq!(bracketed_root(|x| 2.0 - x, 2.0, 5.0, 1e-9), 2.0);
        assert_eq!(bracketed_root(|x| 5.0 - x, 2.0, 5.0, 1e-9), 5.0);
    }

    #[test]
    fn what_is_no_number_on_one_side_does_not_stop_it() {
        let broken = |x: f64| if x > 4.0 { f64::NAN } else { 3.0 - x };
        assert!((bracketed_root(broken, 0.0, 3.9, 1e-12) - 3.0).abs() < 1e-11);
        let endless = |x: f64| if x < 1.0 { f64::INFINITY } else { 3.0 - x };
        assert!((bracketed_root(endless, 0.0, 10.0, 1e-12) - 3.0).abs() < 1e-11);
    }

    #[test]
    fn a_coarse_tolerance_is_met_and_stops_early() {
        let (asked, f) = (Cell::new(0), |x: f64| 2.0 - x.sqrt());
        let counting = |x: f64| {
            asked.set(asked.get() + 1);
            f(x)
        };
        let root = bracketed_root(counting, 0.0, 100.0, 1e-3);
        assert!((root - 4.0).abs() <= 1e-3 * 5.0, "{root}");
        assert!(asked.get() <= 10, "{}", asked.get());
    }
}
