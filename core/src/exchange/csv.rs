//! The series of results as CSV after RFC 4180 (Y. Shafranovich, 2005): a line
//! of headings with units, commas, CR LF, a dot for decimals. A text cell that
//! a spreadsheet would take for a formula gets an apostrophe in front: one that
//! begins with `=`, `+`, `-`, `@` or their full-width forms, a tab or a line
//! break. An empty cell is what does not happen.

use crate::analysis::legs::LegAlternator;
use crate::analysis::year::{DayReport, Year};
use crate::decision::arrangements::Comparison;
use crate::report::Report;
use crate::text::{self, arrangements, headings, words};
use crate::units::Reader;

/// A table being written; a comma follows each cell until the line ends.
struct Table(String);

impl Table {
    fn new(headings: &[&str]) -> Table {
        let mut table = Table(String::new());
        for heading in headings {
            table.word(heading);
        }
        table.end();
        table
    }

    /// A text of anybody's.
    fn word(&mut self, word: &str) {
        let quote = word.contains([',', '"', '\r', '\n']);
        if quote {
            self.0.push('"');
        }
        if word.trim_start_matches(' ').starts_with(formula) {
            self.0.push('\'');
        }
        for c in word.chars() {
            if c == '"' {
                self.0.push(c);
            }
            self.0.push(c);
        }
        if quote {
            self.0.push('"');
        }
        self.0.push(',');
    }

    /// Numbers to the thousandth; one that is none leaves its cell empty.
    fn numbers(&mut self, numbers: &[f64]) {
        for number in numbers {
            if number.is_finite() {
                let long = format!("{number:.3}");
                let short = long.trim_end_matches('0').trim_end_matches('.');
                self.0.push_str(if short == "-0" { "0" } else { short });
            }
            self.0.push(',');
        }
    }

    fn end(&mut self) {
        self.0.pop();
        self.0.push_str("\r\n");
    }

    /// A line of numbers alone.
    fn line(&mut self, numbers: &[f64]) {
        self.numbers(numbers);
        self.end();
    }
}

/// Whether a spreadsheet takes a cell that begins like this for a formula.
fn formula(c: char) -> bool {
    matches!(
        c,
        '=' | '+' | '-' | '@' | '\t' | '\r' | '\n' | '＝' | '＋' | '－' | '＠'
    )
}

/// What does not happen is no number.
fn or_none(number: Option<f64>) -> f64 {
    number.unwrap_or(f64::NAN)
}

/// The charging run, moment by moment. The sea trial reads it back.
pub fn run_csv(report: &Report) -> String {
    let mut table = Table::new(&headings::RUN);
    for moment in &report.analyses.run.series {
        let of = |alternator: usize, figure: fn(&crate::analysis::AlternatorMoment) -> f64| {
            or_none(moment.alternators.get(alternator).map(figure))
        };
        table.numbers(&[
            moment.minute,
            moment.charge_pct,
            moment.alternator_a,
            moment.bank_a,
            moment.bank_v,
            of(0, |first| first.volts),
            of(0, |first| first.winding_c),
            of(0, |first| first.case_c),
            of(0, |first| first.rectifier_c),
            moment.air_c,
            of(1, |second| second.winding_c),
            of(1, |second| second.case_c),
            moment.shaft_w,
        ]);
        table.word(words::limited_by(moment.limit));
        table.end();
    }
    table.0
}

/// The legs of the day; nothing but the headings without any.
pub fn legs_csv(report: &Report) -> String {
    let mut table = Table::new(&headings::LEGS);
    let legs = report.analyses.legs.iter().flat_map(|legs| &legs.legs);
    for leg in legs {
        table.word(&leg.name);
        table.word(text::legs::purpose(leg.purpose));
        let of = |alternator: usize, figure: fn(&LegAlternator) -> f64| {
            or_none(leg.alternators.get(alternator).map(figure))
        };
        table.numbers(&[
            leg.rpm,
            leg.pause_h,
            leg.minutes,
            leg.start_a,
            leg.end_a,
            leg.bank_ah,
            leg.from_pct,
            leg.to_pct,
            of(0, |first| first.start.winding_c),
            of(0, |first| first.peak.winding_c),
            of(0, |first| first.peak.case_c),
            of(1, |second| second.peak.winding_c),
            of(1, |second| second.peak.case_c),
            leg.fuel_l,
        ]);
        table.word(words::limited_by(leg.limit));
        table.end();
    }
    table.0
}

/// Output against engine speed.
pub fn output_csv(report: &Report) -> String {
    let mut table = Table::new(&headings::OUTPUT);
    for point in report.analyses.output.by_engine_rpm.iter() {
        table.line(&[point.engine_rpm, point.cold_a, point.hot_a]);
    }
    table.0
}

/// The year's months.
pub fn year_csv(year: &Year) -> String {
    let mut table = Table::new(&headings::YEAR);
    for month in &year.months {
        table.line(&[
            month.month as f64,
            month.days_aboard,
            month.air_c,
            month.bank_c,
            month.full_hours,
            month.daylight_h,
            month.sun_wh_day,
            month.sun_ah_day,
            month.wasted_ah_day,
            month.wasted_pct,
            month.other_ah_day,
            month.other_wasted_ah_day,
            month.use_ah_day,
            month.engine_ah_day,
            month.engine_h_week,
            month.motoring_h_week,
            month.charging_h,
            month.motoring_h,
            month.fuel_l,
            month.generator_ah_day,
            month.generator_h,
            month.generator_fuel_l,
            month.shore_ah_day,
            month.shore_h_week,
            month.shore_kwh,
            month.sun_share_pct,
            month.lowest_pct,
            f64::from(month.days_below),
            month.short_ah_day,
        ]);
    }
    table.0
}

/// The hours of a settled day of the year.
pub fn day_csv(day: &DayReport) -> String {
    let mut table = Table::new(&headings::DAY);
    for hour in &day.hours {
        table.line(&[
            hour.hour as f64,
            hour.charge_pct,
            hour.sun_w,
            hour.other_w,
            hour.use_w,
            hour.engine_min,
            hour.generator_min,
            hour.shore_min,
        ]);
    }
    table.0
}

/// The arrangements beside each other. Money is in the user's own currency.
pub fn arrangements_csv(comparison: &Comparison) -> String {
    let mut table = Table::new(&headings::ARRANGEMENTS);
    for outcome in &comparison.outcomes {
        table.word(arrangements::name(outcome));
        let changes = arrangements::changes(outcome, &Reader::METRIC);
        table.word(&changes.join("; "));
        table.numbers(&[
            or_none(outcome.hours_day),
            or_none(outcome.hours_year),
            or_none(outcome.generator_h_day),
            or_none(outcome.generator_h_year),
            or_none(outcome.minutes_to_target),
            outcome.start_a,
            outcome.hot_a,
        ]);
        table.word(words::limited_by(outcome.limit));
        table.word(words::part(outcome.hottest.part));
        table.line(&[
            outcome.hottest.celsius,
            outcome.hottest.limit_c,
            or_none(outcome.fuel_year_l),
            outcome.belt_kw,
            outcome.engine_share_pct,
            outcome.bought,
            or_none(outcome.year.map(|year| year.total)),
            or_none(outcome.payback_years),
            outcome.dangers as f64,
            outcome.fixes as f64,
        ]);
    }
    table.0
}

#[cfg(test)]
mod tests {
    use crate::exchange::csv::Table;

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
        table.line(&[1.0, f64::NAN, -0.000_1, -12.345_67, f64::INFINITY, 100.0]);
        assert_eq!(
            table.0,
            "A,\"B, with a comma\"\r\nplain,\"say \"\"so\"\"\",'=1+1,'@SUM(A1),' ＝2,\"two\nlines\",'-3\r\n1,,0,-12.346,,100\r\n"
        );
    }
}
