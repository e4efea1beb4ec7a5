//! How often a range held the truth.

use ampwright_core::Worksheet;
use ampwright_core::decision::uncertainty::{Answers, Certainty, Range, Uncertainty};

/// How often the ranges held the truth.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub struct Coverage {
    /// Boats asked.
    pub boats: u32,
    /// Of them, those whose hot current lay in its range.
    pub hot_a: u32,
    /// Of them, those whose engine time lay in its range.
    pub engine_h: u32,
    /// Sum of the widths of the hot current's range over the range's middle.
    width: f64,
}

impl Coverage {
    /// Counts one boat.
    pub fn count(&mut self, told: &Certainty, truth: &Answers) {
        self.boats += 1;
        self.hot_a += u32::from(holds(&told.hot_a, truth.hot_a));
        self.engine_h += u32::from(holds(&told.engine_h, truth.engine_h));
        self.width += told.hot_a.width / told.hot_a.middle.unwrap_or(f64::INFINITY);
    }

    /// The sum of two.
    pub fn and(self, other: Coverage) -> Coverage {
        Coverage {
            boats: self.boats + other.boats,
            hot_a: self.hot_a + other.hot_a,
            engine_h: self.engine_h + other.engine_h,
            width: self.width + other.width,
        }
    }

    /// Part of the boats whose hot current lay in its range \[%\].
    pub fn hot_a_pct(&self) -> f64 {
        100.0 * f64::from(self.hot_a) / f64::from(self.boats)
    }

    /// Part of the boats whose engine time lay in its range \[%\].
    pub fn engine_h_pct(&self) -> f64 {
        100.0 * f64::from(self.engine_h) / f64::from(self.boats)
    }

    /// Mean width of the hot current's range, of its middle \[%\].
    pub fn width_pct(&self) -> f64 {
        100.0 * self.width / f64::from(self.boats)
    }
}

fn holds(range: &Range, truth: f64) -> bool {
    let end = |end: Option<f64>| end.unwrap_or(f64::INFINITY);
    end(range.low) <= truth && truth <= end(range.high)
}

/// The ranges of a worksheet.
pub fn told(sheet: &Worksheet) -> Certainty {
    let mut uncertainty = Uncertainty::new(sheet);
    uncertainty.step(usize::MAX);
    uncertainty.certainty()
}
