//! The series of results as CSV after RFC 4180 (Y. Shafranovich, 2005): a line
//! of headings with units, commas, CR LF, a dot for decimals. A text cell that
//! a spreadsheet would take for a formula gets an apostrophe in front: one that
//! begins with `=`, `+`, `-`, `@` or their full-width forms, a tab or a line
//! break. An empty cell is what does not happen.

use crate::arrange::Comparison;
use crate::report::Report;
use crate::year::{DayReport, Year};

/// A table being written.
struct Table {
    text: String,
    begun: bool,
}

impl Table {
    fn new(headings: &[&str]) -> Table {
        let mut table = Table {
            text: String::new(),
            begun: false,
        };
        for heading in headings {
            table.word(heading);
        }
        table.end();
        table
    }

    /// A text of anybody's.
    fn word(&mut self, word: &str) {
        self.part();
        let mut cell = String::new();
        if word.trim_start_matches(' ').starts_with(formula) {
            cell.push('\'');
        }
        cell.push_str(word);
        if cell.contains([',', '"', '\r', '\n']) {
            cell = format!("\"{}\"", cell.replace('"', "\"\""));
        }
        self.text.push_str(&cell);
    }

    /// A number to the thousandth.
    fn number(&mut self, number: impl Into<Option<f64>>) {
        self.part();
        let Some(number) = number.into().filter(|number| number.is_finite()) else {
            return;
        };
        let long = format!("{number:.3}");
        let short = long.trim_end_matches('0').trim_end_matches('.');
        self.text.push_str(if short == "-0" { "0" } else { short });
    }

    fn numbers<const N: usize>(&mut self, numbers: [f64; N]) {
        for number in numbers {
            self.number(number);
        }
    }

    fn part(&mut self) {
        if self.begun {
            self.text.push(',');
        }
        self.begun = true;
    }

    fn end(&mut self) {
        self.text.push_str("\r\n");
        self.begun = false;
    }
}

/// Whether a spreadsheet takes a cell that begins like this for a formula.
fn formula(c: char) -> bool {
    matches!(
        c,
        '=' | '+' | '-' | '@' | '\t' | '\r' | '\n' | '＝' | '＋' | '－' | '＠'
    )
}

/// The charging run, moment by moment. The sea trial reads it back.
pub fn run_csv(report: &Report) -> String {
    let mut table = Table::new(&[
        "Minute (min)",
        "State of charge (%)",
        "Alternator current (A)",
        "Into the bank (A)",
        "At the bank (V)",
        "Alternator volts (V)",
        "Winding (°C)",
        "Case (°C)",
        "Rectifier (°C)",
        "Air (°C)",
        "Second machine's winding (°C)",
        "Second machine's case (°C)",
        "Power at the shafts (W)",
        "Held by",
    ]);
    for moment in &report.run.series {
        table.numbers([
            moment.minute,
            moment.charge_pct,
            moment.alternator_a,
            moment.bank_a,
            moment.bank_v,
            moment.alternator_v,
            moment.winding_c,
            moment.case_c,
            moment.rectifier_c,
            moment.air_c,
        ]);
        table.number(moment.second_winding_c);
        table.number(moment.second_case_c);
        table.number(moment.shaft_w);
        table.word(moment.limit.words());
        table.end();
    }
    table.text
}

/// Output against engine speed.
pub fn output_csv(report: &Report) -> String {
    let mut table = Table::new(&["Engine (rpm)", "Cold, as rated (A)", "Hot, on and on (A)"]);
    for point in &report.machine.by_engine_rpm {
        table.numbers([point.engine_rpm, point.cold_a, point.hot_a]);
        table.end();
    }
    table.text
}

/// The year's months.
pub fn year_csv(year: &Year) -> String {
    let mut table = Table::new(&[
        "Month",
        "Full sun a day (h)",
        "Daylight (h)",
        "Panels offer a day (W·h)",
        "Panels offer a day (A·h)",
        "Found the bank full, a day (A·h)",
        "Found the bank full (%)",
        "Use a day (A·h)",
        "Engine gives a day (A·h)",
        "Engine a week (h)",
        "Of that motoring anyway (h)",
        "Sun's part (%)",
        "Lowest state of charge (%)",
        "Days below the lowest wanted, of 28",
        "Not given, a day (A·h)",
    ]);
    for month in &year.months {
        table.numbers([
            month.month as f64,
            month.full_hours,
            month.daylight_h,
            month.sun_wh_day,
            month.sun_ah_day,
            month.wasted_ah_day,
            month.wasted_pct,
            month.use_ah_day,
            month.engine_ah_day,
            month.engine_h_week,
            month.motoring_h_week,
            month.sun_share_pct,
            month.lowest_pct,
            f64::from(month.days_below),
            month.short_ah_day,
        ]);
        table.end();
    }
    table.text
}

/// The hours of a settled day of the year.
pub fn day_csv(day: &DayReport) -> String {
    let mut table = Table::new(&[
        "Hour begins (h)",
        "State of charge (%)",
        "Panels offer (W)",
        "Use (W)",
        "Engine runs (min)",
    ]);
    for hour in &day.hours {
        table.numbers([
            hour.hour as f64,
            hour.charge_pct,
            hour.sun_w,
            hour.use_w,
            hour.engine_min,
        ]);
        table.end();
    }
    table.text
}

/// The arrangements beside each other. Money is in the user's own currency.
pub fn arrangements_csv(comparison: &Comparison) -> String {
    let mut table = Table::new(&[
        "Arrangement",
        "Changes",
        "Engine a day (h)",
        "Engine a year (h)",
        "Run to the target (min)",
        "At the start (A)",
        "Hot (A)",
        "Held by",
        "Hottest part",
        "It gets (°C)",
        "It bears (°C)",
        "Fuel a year (L)",
        "Belts take at most (kW)",
        "Of the engine (%)",
        "To be bought (money)",
        "A year costs (money)",
        "Paid back after (a)",
        "Findings: stop",
        "Findings: mend",
    ]);
    for outcome in &comparison.outcomes {
        table.word(&outcome.name);
        table.word(&outcome.changes.join("; "));
        table.number(outcome.hours_day);
        table.number(outcome.hours_year);
        table.number(outcome.minutes_to_target);
        table.numbers([outcome.start_a, outcome.hot_a]);
        table.word(outcome.limit.words());
        table.word(outcome.hottest.part);
        table.numbers([outcome.hottest.celsius, outcome.hottest.limit_c]);
        table.number(outcome.fuel_year_l);
        table.numbers([outcome.belt_kw, outcome.engine_share_pct, outcome.bought]);
        table.number(outcome.year.map(|year| year.total));
        table.number(outcome.payback_years);
        table.numbers([outcome.stop as f64, outcome.mend as f64]);
        table.end();
    }
    table.text
}

#[cfg(test)]
mod tests {
    use super::Table;

    #[test]
    fn cells() {
        let mut table = Table::new(&["A", "B, with a comma"]);
        for word in [
            "plain",
            "say \"so\"",
            "=1+1",
            "@SUM(A1)",
            " ＝2",
            "two\nlines",
            "-3",
        ] {
            table.word(word);
        }
        table.end();
        for number in [
            Some(1.0),
            None,
            Some(-0.000_1),
            Some(-12.345_67),
            Some(f64::NAN),
            Some(100.0),
        ] {
            table.number(number);
        }
        table.end();
        assert_eq!(
            table.text,
            "A,\"B, with a comma\"\r\nplain,\"say \"\"so\"\"\",'=1+1,'@SUM(A1),' ＝2,\"two\nlines\",'-3\r\n1,,0,-12.346,,100\r\n"
        );
    }
}
