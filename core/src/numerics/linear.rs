//! Small systems of linear equations.

/// A square matrix split into triangles, ready to solve for many right sides.
#[derive(Debug, Clone, Copy)]
pub struct Lu<const N: usize> {
    rows: [[f64; N]; N],
    order: [usize; N],
}

impl<const N: usize> Lu<N> {
    /// Splits a matrix by elimination with row exchange; `None` if its rows
    /// depend on each other.
    pub fn of(mut rows: [[f64; N]; N]) -> Option<Lu<N>> {
        let mut order: [usize; N] = std::array::from_fn(|row| row);
        for pivot in 0..N {
            let mut best = pivot;
            for row in pivot + 1..N {
                if rows[row][pivot].abs() > rows[best][pivot].abs() {
                    best = row;
                }
            }
            if rows[best][pivot].abs() < 1e-12 {
                return None;
            }
            rows.swap(pivot, best);
            order.swap(pivot, best);
            let (done, below) = rows.split_at_mut(pivot + 1);
            let above = &done[pivot];
            for row in below.iter_mut().filter(|row| row[pivot] != 0.0) {
                let factor = row[pivot] / above[pivot];
                row[pivot] = factor;
                let right_of_it = row[pivot + 1..].iter_mut();
                for (entry, above) in right_of_it.zip(&above[pivot + 1..]) {
                    *entry -= factor * above;
                }
            }
        }
        Some(Lu { rows, order })
    }

    /// Solves for one right side.
    pub fn solve(&self, right: &[f64; N]) -> [f64; N] {
        let mut x: [f64; N] = self.order.map(|row| right[row]);
        for (row, factors) in self.rows.iter().enumerate() {
            for column in 0..row {
                x[row] -= factors[column] * x[column];
            }
        }
        for (row, factors) in self.rows.iter().enumerate().rev() {
            for column in row + 1..N {
                x[row] -= factors[column] * x[column];
            }
            x[row] /= factors[row];
        }
        x
    }
}

/// Solves `rows · x = right`; `None` if the rows do not determine x.
pub fn solve<const N: usize>(rows: [[f64; N]; N], right: [f64; N]) -> Option<[f64; N]> {
    let x = Lu::of(rows)?.solve(&right);
    x.iter().all(|x| x.is_finite()).then_some(x)
}
