//! Straight lines between known points.

/// A figure at `x` from points (x, y) in rising order of x: straight between
/// them, level outside. None without any point; where two share an x, the later.
pub fn interpolate(points: &[(f64, f64)], x: f64) -> Option<f64> {
    let after = points.partition_point(|point| point.0 <= x);
    let before = after.checked_sub(1).and_then(|at| points.get(at));
    match (before, points.get(after)) {
        (Some(&(x0, y0)), Some(&(x1, y1))) => Some(y0 + (y1 - y0) * (x - x0) / (x1 - x0)),
        (Some(&(_, y)), None) | (None, Some(&(_, y))) => Some(y),
        (None, None) => None,
    }
}

/// A figure from a table whose entries stand one apart, at a place between them
/// counted from 0: straight between entries, level outside, 0 from an empty one.
pub fn interpolate_evenly(table: &[f64], place: f64) -> f64 {
    let last = table.len().saturating_sub(1);
    let before = (place.max(0.0) as usize).min(last);
    match (table.get(before), table.get(before + 1)) {
        (Some(a), Some(b)) => a + (b - a) * (place - before as f64).clamp(0.0, 1.0),
        (Some(a), None) => *a,
        _ => 0.0,
    }
}

#[cfg(test)]
mod tests {
    use crate::numerics::interpolation::{interpolate, interpolate_evenly};

    #[test]
    fn straight_between_and_level_outside() {
        let points = [(1.0, 10.0), (3.0, 20.0), (3.0, 30.0)];
        for (x, y) in [
            (0.0, 10.0),
            (1.0, 10.0),
            (2.0, 15.0),
            (3.0, 30.0),
            (9.0, 30.0),
        ] {
            assert_eq!(interpolate(&points, x), Some(y), "{x}");
        }
        assert_eq!(interpolate(&[], 1.0), None);
    }

    #[test]
    fn entries_one_apart() {
        let table = [0.0, 10.0, 40.0];
        for (place, y) in [
            (-1.0, 0.0),
            (0.5, 5.0),
            (1.0, 10.0),
            (1.5, 25.0),
            (7.0, 40.0),
        ] {
            assert_eq!(interpolate_evenly(&table, place), y, "{place}");
        }
        assert_eq!(interpolate_evenly(&[], 1.0), 0.0);
    }
}
