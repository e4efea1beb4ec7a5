//! Checks of the answer: hours, currents, temperatures, fuel, the year.

use crate::answers::word;
use crate::says::Says;

impl Says {
    /// Engine hours a day.
    #[track_caller]
    pub fn hours_between(&self, low: f64, high: f64) {
        self.some_between(
            "engine h/day",
            self.report.analyses.day.engine_hours,
            low,
            high,
        );
    }

    /// The engine need not run.
    #[track_caller]
    pub fn no_engine(&self) {
        self.some_between(
            "engine h/day",
            self.report.analyses.day.engine_hours,
            0.0,
            0.0,
        );
    }

    /// No engine run fills this bank, and the answer says so.
    #[track_caller]
    pub fn cannot_charge(&self) {
        let hours = self.report.analyses.day.engine_hours;
        self.holds(hours.is_none(), || format!("{hours:?} h/day, not “cannot”"));
    }

    /// What the alternators hold once everything is hot.
    #[track_caller]
    pub fn hot_amps_between(&self, low: f64, high: f64) {
        self.between("hot A", self.report.analyses.output.hot_a, low, high);
    }

    /// Their output at charging speed when cold.
    #[track_caller]
    pub fn cold_amps_between(&self, low: f64, high: f64) {
        self.between("cold A", self.report.analyses.output.full_cold_a, low, high);
    }

    /// Hot output of the cold output.
    #[track_caller]
    pub fn hot_share_between(&self, low_pct: f64, high_pct: f64) {
        let output = &self.report.analyses.output;
        let share_pct = 100.0 * output.hot_a / output.full_cold_a;
        self.between("hot output, % of cold,", share_pct, low_pct, high_pct);
    }

    /// What holds the hot current.
    #[track_caller]
    pub fn limited_by(&self, limits: &[&str]) {
        let limit = word(&self.report.analyses.output.hot_limit);
        self.holds(limits.contains(&limit.as_str()), || {
            format!("limited by {limit}, not {limits:?}")
        });
    }

    /// The most that flows into the bank in the run.
    #[track_caller]
    pub fn peak_bank_amps_between(&self, low: f64, high: f64) {
        let series = self.report.analyses.run.series.iter();
        let peak = series.map(|m| m.bank_a).fold(f64::NEG_INFINITY, f64::max);
        self.between("peak A into the bank", peak, low, high);
    }

    /// Minutes from “charge from” to “charge to”.
    #[track_caller]
    pub fn minutes_between(&self, low: f64, high: f64) {
        let minutes = self.report.analyses.run.minutes_to_target;
        self.some_between("min to target", minutes, low, high);
    }

    /// The hottest its air gets in the run.
    #[track_caller]
    pub fn space_between(&self, low_c: f64, high_c: f64) {
        self.between(
            "engine space °C",
            self.report.analyses.run.peak_air_c,
            low_c,
            high_c,
        );
    }

    /// The hottest the winding gets in the run.
    #[track_caller]
    pub fn winding_between(&self, low_c: f64, high_c: f64) {
        self.between(
            "winding °C",
            self.report.analyses.run.alternators[0].peak.winding_c,
            low_c,
            high_c,
        );
    }

    /// Peak of a load dump with nothing against it, of the first alternator, at
    /// the worse of charging speed and highest speed.
    #[track_caller]
    pub fn peak_dump_between(&self, low_v: f64, high_v: f64) {
        let machines = &self.disconnect().alternators;
        let peak = machines.first().map(|machine| machine.peak_v());
        self.some_between("load dump V", peak, low_v, high_v);
    }

    /// The current that a load dump cuts off, of the first alternator.
    #[track_caller]
    pub fn dump_amps_between(&self, low_a: f64, high_a: f64) {
        let machines = &self.disconnect().alternators;
        let amperes = machines.first().map(|m| m.charging.amperes);
        self.some_between("load dump A", amperes, low_a, high_a);
    }

    #[track_caller]
    pub fn short_circuit_ka_between(&self, low: f64, high: f64) {
        let kilo = self.wiring().short_circuit_a / 1000.0;
        self.between("short circuit kA", kilo, low, high);
    }

    /// Days from full to the end of the window without the engine.
    #[track_caller]
    pub fn autonomy_between(&self, low: f64, high: f64) {
        let days = self.report.analyses.energy.autonomy_days;
        self.some_between("days of autonomy", days, low, high);
    }

    /// Share of the engine's power at that speed.
    #[track_caller]
    pub fn engine_share_between(&self, low_pct: f64, high_pct: f64) {
        let share = self.report.analyses.engine.peak_share_pct;
        self.between("share of the engine %", share, low_pct, high_pct);
    }

    /// Power at the belt.
    #[track_caller]
    pub fn belt_kw_between(&self, low: f64, high: f64) {
        self.between("belt kW", self.report.analyses.engine.peak_kw, low, high);
    }

    /// Litres a day, the engine run for charging alone.
    #[track_caller]
    pub fn litres_between(&self, low: f64, high: f64) {
        self.some_between("L/day", self.report.analyses.day.fuel_l, low, high);
    }

    /// Engine hours of the year, motoring included.
    #[track_caller]
    pub fn year_hours_between(&self, low: f64, high: f64) {
        let sums = self.year().sums;
        self.between(
            "engine h/year",
            sums.charging_h + sums.motoring_h,
            low,
            high,
        );
    }

    /// The boat goes short of nothing in any month.
    #[track_caller]
    pub fn year_never_short(&self) {
        let short = self.year().months.iter().map(|m| m.short_ah_day);
        let short = short.fold(0.0, f64::max);
        self.holds(short < 0.5, || {
            format!("the year is {short:.1} A·h/day short")
        });
    }
}
