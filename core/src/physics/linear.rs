//! Small systems of linear equations.

/// Solves `rows · x = right` by elimination with row exchange; `None` if the
/// rows do not determine x.
pub fn solve<const N: usize>(mut rows: [[f64; N]; N], mut right: [f64; N]) -> Option<[f64; N]> {
    for pivot in 0..N {
        let best =
            (pivot..N).max_by(|&a, &b| rows[a][pivot].abs().total_cmp(&rows[b][pivot].abs()))?;
        rows.swap(pivot, best);
        right.swap(pivot, best);
        if rows[pivot][pivot].abs() < 1e-12 {
            return None;
        }
        for row in pivot + 1..N {
            let factor = rows[row][pivot] / rows[pivot][pivot];
            let above = rows[pivot];
            for (cell, above) in rows[row].iter_mut().zip(above) {
                *cell -= factor * above;
            }
            right[row] -= factor * right[pivot];
        }
    }
    for row in (0..N).rev() {
        let known: f64 = (row + 1..N)
            .map(|column| rows[row][column] * right[column])
            .sum();
        right[row] = (right[row] - known) / rows[row][row];
    }
    right.iter().all(|x| x.is_finite()).then_some(right)
}
