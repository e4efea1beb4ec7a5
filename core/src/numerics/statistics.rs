//! What many figures have in common.

/// Mean and standard deviation of a sample; none without figures. The deviation of a
/// single one is 0.
pub fn mean_and_deviation(figures: impl Iterator<Item = f64> + Clone) -> Option<(f64, f64)> {
    let count = figures.clone().count();
    if count == 0 {
        return None;
    }
    let mean = figures.clone().sum::<f64>() / count as f64;
    let square: f64 = figures.map(|figure| (figure - mean).powi(2)).sum();
    Some((
        mean,
        (square / count.saturating_sub(1).max(1) as f64).sqrt(),
    ))
}

#[cfg(test)]
mod tests {
    use super::mean_and_deviation;

    #[test]
    fn of_none_one_and_several() {
        let of = |figures: &[f64]| mean_and_deviation(figures.iter().copied());
        assert_eq!(of(&[]), None);
        assert_eq!(of(&[3.0]), Some((3.0, 0.0)));
        // Squares 9, 1, 1 and 9 over three.
        let (mean, deviation) = of(&[1.0, 3.0, 5.0, 7.0]).expect("figures");
        assert_eq!(mean, 4.0);
        assert!((deviation - (20.0_f64 / 3.0).sqrt()).abs() < 1e-12);
    }
}
