//! A straight line through points: least squares (C. F. Gauss, 1809).

/// Where it is at nought and how steep; none of points that all lie at one place.
pub fn straight_line(points: &[(f64, f64)]) -> Option<(f64, f64)> {
    let count = points.len() as f64;
    let mean = |of: fn(&(f64, f64)) -> f64| points.iter().map(of).sum::<f64>() / count;
    let (x, y) = (mean(|point| point.0), mean(|point| point.1));
    let square: f64 = points.iter().map(|point| (point.0 - x).powi(2)).sum();
    let both: f64 = points.iter().map(|(at, is)| (at - x) * (is - y)).sum();
    (square > 0.0).then(|| (y - both / square * x, both / square))
}

#[cfg(test)]
mod tests {
    use crate::numerics::line::straight_line;

    /// By hand: through 1, 3 and 5 at 0, 1 and 2, and the mean of what is off.
    #[test]
    fn lines() {
        let through = straight_line(&[(0.0, 1.0), (1.0, 3.0), (2.0, 5.0)]);
        assert_eq!(through, Some((1.0, 2.0)));
        let off = straight_line(&[(0.0, 0.0), (0.0, 2.0), (2.0, 3.0)]).expect("a line");
        assert!((off.0 - 1.0).abs() < 1e-12 && (off.1 - 1.0).abs() < 1e-12);
        assert_eq!(straight_line(&[(1.0, 2.0), (1.0, 3.0)]), None);
        assert_eq!(straight_line(&[]), None);
    }
}
