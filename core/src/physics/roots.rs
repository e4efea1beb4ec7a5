//! Roots of functions of one variable.

/// Where a falling function crosses zero between `low` and `high`; the nearer
/// end if it does not. Regula falsi with halving of the stale side (Illinois
/// rule; M. Dowell, P. Jarratt, BIT 11, 168–174, 1971), until the bracket is
/// narrower than `tolerance` of its position.
pub fn falling(f: impl Fn(f64) -> f64, mut low: f64, mut high: f64, tolerance: f64) -> f64 {
    let (mut at_low, mut at_high) = (f(low), f(high));
    if at_low <= 0.0 {
        return low;
    }
    if at_high >= 0.0 {
        return high;
    }
    for _ in 0..200 {
        if high - low <= tolerance * (1.0 + low.abs().max(high.abs())) {
            break;
        }
        let mut middle = low + (high - low) * at_low / (at_low - at_high);
        if !(middle > low && middle < high) {
            middle = 0.5 * (low + high);
        }
        let value = f(middle);
        if value == 0.0 {
            return middle;
        }
        if value > 0.0 {
            // The other end stays: halve its value so that it moves next time.
            low = middle;
            at_low = value;
            at_high *= 0.5;
        } else {
            high = middle;
            at_high = value;
            at_low *= 0.5;
        }
    }
    0.5 * (low + high)
}
