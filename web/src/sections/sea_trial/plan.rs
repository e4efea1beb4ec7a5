//! What is drawn of a trial: the calculated run, and the readings on it.

use ampwright_core::analysis::{AlternatorMoment, RunReport};
use ampwright_core::decision::calibration::columns::Column;
use ampwright_core::decision::calibration::log::Row;
use ampwright_core::decision::calibration::{Log, stop::StopLimits};

/// Shortest time that is drawn \[min\], and what is left free after the last
/// reading.
const SHORTEST_MIN: f64 = 45.0;
const FREE_MIN: f64 = 5.0;
/// The boat's usual air, where a drawing without anything else begins \[°C\].
const COOL_C: f64 = 20.0;

/// A line or dots: minutes and figures.
pub type Places = Vec<(f64, f64)>;

/// All that is drawn.
#[derive(Debug, Clone, PartialEq)]
pub struct Plan {
    /// The time it reaches to \[min\].
    pub to_min: f64,
    /// Amps and case as calculated.
    pub calculated: [Places; 2],
    /// Amps and case as read.
    pub read: [Places; 2],
    /// Amps and case as typed at the moment.
    pub typed: [Places; 2],
    /// Where to stop by the case \[°C\].
    pub stop_c: f64,
    /// What the regulator holds \[°C\].
    pub holds_c: Option<f64>,
}

impl Plan {
    /// What is drawn of a run, readings and what is typed.
    pub fn of(run: &RunReport, log: &Log, typed: Option<&Row>, limits: &StopLimits) -> Plan {
        let last_min = log.latest().map_or(0.0, |row| row.minute);
        let last_min = typed.map_or(last_min, |row| row.minute.max(last_min));
        let to_min = (last_min + FREE_MIN).max(SHORTEST_MIN);
        let calculated = |of: fn(&AlternatorMoment) -> f64| {
            let moments = run.series.iter();
            let moments = moments.take_while(|moment| moment.minute <= to_min);
            moments
                .filter_map(|moment| Some((moment.minute, of(moment.alternators.first()?))))
                .collect()
        };
        let places = |rows: &[Row], column: Column| -> Places {
            let place = |row: &Row| Some((row.minute, row.get(column)?));
            rows.iter().filter_map(place).collect()
        };
        let typed = typed.map_or(&[][..], std::slice::from_ref);
        Plan {
            to_min,
            calculated: [calculated(|one| one.amperes), calculated(|one| one.case_c)],
            read: [Column::Amps, Column::Case].map(|column| places(&log.rows, column)),
            typed: [Column::Amps, Column::Case].map(|column| places(typed, column)),
            stop_c: limits.case_c,
            holds_c: limits.holds_c,
        }
    }

    /// Lowest and highest current \[A\].
    pub fn amperes(&self) -> (f64, f64) {
        let (_, high) = self.ends(0);
        (0.0, high.max(10.0))
    }

    /// Lowest and highest temperature \[°C\], the stop line included.
    pub fn temperatures(&self) -> (f64, f64) {
        let (low, high) = self.ends(1);
        (low.min(COOL_C), high.max(self.stop_c))
    }

    fn ends(&self, of: usize) -> (f64, f64) {
        let all = [&self.calculated, &self.read, &self.typed];
        let figures = all.iter().flat_map(|places| &places[of]);
        figures.fold((f64::MAX, f64::MIN), |(low, high), (_, figure)| {
            (low.min(*figure), high.max(*figure))
        })
    }
}
