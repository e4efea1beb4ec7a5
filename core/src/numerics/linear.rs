//! Small systems of linear equations.

/// A square matrix split into triangles, ready to solve for many right sides.
#[derive(Debug, Clone, Copy)]
pub struct Factors<const N: usize> {
    rows: [[f64; N]; N],
    order: [usize; N],
}

impl<const N: usize> Factors<N> {
    /// Splits a matrix by elimination with row exchange; `None` if its rows
    /// depend on each other.
    pub fn of(mut rows: [[f64; N]; N]) -> Option<Factors<N>> {
        let mut order: [usize; N] = std::array::from_fn(|row| row);
        for pivot in 0..N {
            let best = (pivot..N)
                .max_by(|&a, &b| rows[a][pivot].abs().total_cmp(&rows[b][pivot].abs()))?;
            rows.swap(pivot, best);
            order.swap(pivot, best);
            let above = rows[pivot];
            if above[pivot].abs() < 1e-12 {
                return None;
            }
            for row in &mut rows[pivot + 1..] {
                if row[pivot] == 0.0 {
                    continue;
                }
                let factor = row[pivot] / above[pivot];
                row[pivot] = factor;
                for (cell, above) in row.iter_mut().zip(above).skip(pivot + 1) {
                    *cell -= factor * above;
                }
            }
        }
        Some(Factors { rows, order })
    }

    /// Solves for one right side.
    pub fn solve(&self, right: &[f64; N]) -> [f64; N] {
        let mut x: [f64; N] = self.order.map(|row| right[row]);
        for row in 0..N {
            let known: f64 = (0..row)
                .map(|column| self.rows[row][column] * x[column])
                .sum();
            x[row] -= known;
        }
        for row in (0..N).rev() {
            let known: f64 = (row + 1..N)
                .map(|column| self.rows[row][column] * x[column])
                .sum();
            x[row] = (x[row] - known) / self.rows[row][row];
        }
        x
    }
}

/// Solves `rows · x = right`; `None` if the rows do not determine x.
pub fn solve<const N: usize>(rows: [[f64; N]; N], right: [f64; N]) -> Option<[f64; N]> {
    let x = Factors::of(rows)?.solve(&right);
    x.iter().all(|x| x.is_finite()).then_some(x)
}
