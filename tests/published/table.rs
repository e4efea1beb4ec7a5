//! The data files: a line of origin, a line of column names, numbers.

/// Rows of numbers of a file in `data`.
pub fn rows<const N: usize>(file: &str) -> Vec<[f64; N]> {
    let mut lines = file.lines();
    let origin = lines.next().expect("a line of origin");
    assert!(origin.starts_with("# Source: ") || origin.starts_with("# Origin: "));
    let names = lines.next().expect("column names");
    assert_eq!(names.split(',').count(), N, "{names}");
    lines
        .map(|line| {
            let cells: Vec<f64> = line
                .split(',')
                .map(|cell| cell.parse().expect("a number"))
                .collect();
            cells.try_into().expect("as many cells as names")
        })
        .collect()
}

/// Slope of ln y against ln x: the exponent of a power law.
pub fn exponent(points: &[(f64, f64)]) -> f64 {
    let count = points.len() as f64;
    let logs: Vec<(f64, f64)> = points.iter().map(|(x, y)| (x.ln(), y.ln())).collect();
    let mean_x = logs.iter().map(|p| p.0).sum::<f64>() / count;
    let mean_y = logs.iter().map(|p| p.1).sum::<f64>() / count;
    let up: f64 = logs.iter().map(|p| (p.0 - mean_x) * (p.1 - mean_y)).sum();
    let down: f64 = logs.iter().map(|p| (p.0 - mean_x).powi(2)).sum();
    up / down
}

/// The value at `x` between neighbouring points.
pub fn between(points: &[(f64, f64)], x: f64) -> f64 {
    let after = points
        .partition_point(|p| p.0 <= x)
        .clamp(1, points.len() - 1);
    let ((x0, y0), (x1, y1)) = (points[after - 1], points[after]);
    y0 + (y1 - y0) * (x - x0) / (x1 - x0)
}
