//! What a line of a table says.

use ampwright_core::Report;
use ampwright_core::explain::label;
use ampwright_core::units::QuantityKind;

/// A line of a table.
pub struct Line {
    /// The figure's name in the report.
    pub id: &'static str,
    /// What this table calls it, where that is not what every table does.
    pub called: Option<&'static str>,
    /// What kind of figure it is.
    pub kind: QuantityKind,
    /// The figure in the unit of its kind; none where it does not happen.
    pub figure: fn(&Report) -> Option<f64>,
    /// Decimals it is shown with.
    pub decimals: usize,
    /// A unit of its own, in place of that of its kind.
    pub unit: Option<&'static str>,
    /// What stands there without a figure; the line is left out if nothing does.
    pub without: Option<&'static str>,
    /// Whether the unit stands beside what stands there without a figure.
    pub keeps_unit: bool,
    /// Whether it is a time that may be made up of several runs.
    pub runs: Runs,
}

/// Whose runs make up a time.
#[derive(Clone, Copy, PartialEq, Eq)]
pub enum Runs {
    /// It is no such time.
    None,
    /// Those of the day.
    Day,
    /// Those of the day with a bank of lead.
    Lead,
}

/// A line by the figure's name in the report, its kind, and where it stands.
pub const fn line(
    id: &'static str,
    kind: QuantityKind,
    figure: fn(&Report) -> Option<f64>,
) -> Line {
    Line {
        id,
        called: None,
        kind,
        figure,
        decimals: 0,
        unit: None,
        without: None,
        keeps_unit: false,
        runs: Runs::None,
    }
}

impl Line {
    /// What it is; "…" goes on from the line above.
    pub fn label(&self) -> &'static str {
        self.called.unwrap_or_else(|| label(self.id))
    }

    /// Called otherwise than in other tables.
    pub const fn called(mut self, label: &'static str) -> Line {
        self.called = Some(label);
        self
    }

    /// With so many decimals.
    pub const fn to(mut self, decimals: usize) -> Line {
        self.decimals = decimals;
        self
    }

    /// In a unit of its own.
    pub const fn unit(mut self, unit: &'static str) -> Line {
        self.unit = Some(unit);
        self
    }

    /// What stands there without a figure.
    pub const fn or(mut self, words: &'static str) -> Line {
        self.without = Some(words);
        self
    }

    /// What stands there without a figure, the unit beside it.
    pub const fn or_of_unit(mut self, words: &'static str) -> Line {
        self.keeps_unit = true;
        self.or(words)
    }

    /// A time that several runs make up.
    pub const fn in_runs(mut self, runs: Runs) -> Line {
        self.runs = runs;
        self
    }
}
