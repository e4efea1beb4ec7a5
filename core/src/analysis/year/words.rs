//! The year in words.

use crate::analysis::year::{MonthReport, Year};
use crate::boat::Month;
use crate::units::quantity::ampere_hours;
use crate::units::{Reader, clock};

impl MonthReport {
    /// "January".
    pub fn name(&self) -> &'static str {
        Month::OPTIONS
            .get(self.month.saturating_sub(1))
            .map_or("", |option| option.label)
    }

    /// What its settled day is like, in a sentence or two.
    pub fn day_words(&self) -> String {
        let day = &self.day;
        let pattern = match day.repeats_days {
            Some(1) => "At anchor every day goes like this.".to_string(),
            Some(days) if day.engine_h + day.shore_h > 0.0 => {
                let most = if day.shore_h > day.engine_h {
                    "the longest at the dock"
                } else {
                    "the most engine"
                };
                format!(
                    "At anchor all repeats itself every {days} days; this is the day with {most}."
                )
            }
            Some(days) => {
                format!("At anchor all repeats itself every {days} days; this is one of them.")
            }
            None => "At anchor no two days are quite alike; this is one of them.".to_string(),
        };
        let mut engine = if day.engine_h > 0.0 {
            format!(" The engine runs {}.", clock(60.0 * day.engine_h))
        } else {
            " No engine.".to_string()
        };
        if day.shore_h > 0.0 {
            engine += &format!(" Shore power charges for {}.", clock(60.0 * day.shore_h));
        }
        let at = |hour: usize, pct: f64| format!("{pct:.0} % at {hour} h");
        let mut low = (day.end_charge_pct, 24);
        let mut high = low;
        for hour in day.hours.iter().rev() {
            if hour.charge_pct <= low.0 {
                low = (hour.charge_pct, hour.hour);
            }
            if hour.charge_pct >= high.0 {
                high = (hour.charge_pct, hour.hour);
            }
        }
        format!(
            "{pattern}{engine} The bank is lowest, {}, and highest, {}.",
            at(low.1, low.0),
            at(high.1, high.0)
        )
    }
}

impl Year {
    /// What there is to say, most telling first, one sentence each.
    pub fn sentences(&self) -> Vec<String> {
        self.sentences_for(&Reader::METRIC)
    }

    /// The same as [`Year::sentences`], as a reader wants it.
    pub fn sentences_for(&self, reader: &Reader) -> Vec<String> {
        let mut said = Vec::new();
        // An engine that is never asked for is no trouble.
        let asked = |m: &MonthReport| m.lowest_pct <= self.start_pct + 0.5;
        if let (Some(trouble), false) = (self.trouble, self.at_dock)
            && self.months.iter().any(asked)
        {
            said.push(format!(
                "{} In this year it is not run for charging.",
                trouble.sentence()
            ));
        } else {
            said.push(self.engine_words());
        }
        if self.at_dock {
            said.push(self.shore_words());
        }
        let empty: Vec<&MonthReport> = self
            .months
            .iter()
            .filter(|m| m.short_ah_day > 0.0)
            .collect();
        if let Some(worst) = most(&empty, |month| month.short_ah_day) {
            said.push(format!(
                "The bank runs empty in {}; in {} the boat goes short of {} a day.{}",
                months(empty.len()),
                worst.name(),
                reader.show(ampere_hours(worst.short_ah_day.max(1.0))),
                match (self.at_dock, self.trouble) {
                    (true, _) =>
                        " The shore charger is too small for this use, or cannot charge this bank.",
                    (false, None) => {
                        " The engine may not start early enough or long enough for this use."
                    }
                    (false, Some(_)) => "",
                }
            ));
        }
        let below: Vec<&MonthReport> = self.months.iter().filter(|m| m.days_below > 0).collect();
        if let Some(worst) = most(&below, |month| f64::from(month.days_below)) {
            said.push(format!(
                "The bank falls below the {:.0} % you want kept in hand in {}; in {} on {} days of 28.",
                self.low_pct,
                months(below.len()),
                worst.name(),
                worst.days_below
            ));
        }
        said
    }

    fn shore_words(&self) -> String {
        let all: Vec<&MonthReport> = self.months.iter().collect();
        match most(&all, |month| month.shore_kwh) {
            Some(worst) if self.shore_kwh >= 0.5 => {
                let months = if self.sun_by_month {
                    format!(", most of it in {}", worst.name())
                } else {
                    String::new()
                };
                format!(
                    "The bank is charged at the dock whenever it falls to {:.0} %: some {:.0} kWh a year{months}.",
                    self.start_pct, self.shore_kwh
                )
            }
            _ => "Shore power is not needed in any month.".to_string(),
        }
    }

    fn engine_words(&self) -> String {
        let all: Vec<&MonthReport> = self.months.iter().collect();
        let motoring_h: f64 = all.iter().map(|m| m.motoring_h_week).sum::<f64>() * 52.0 / 12.0;
        let charging_h = self.engine_h - motoring_h;
        let anyway = if motoring_h >= 0.5 {
            format!(", and {motoring_h:.0} h motoring anyway, which charges too")
        } else {
            String::new()
        };
        match most(&all, |month| month.engine_h_week - month.motoring_h_week) {
            Some(_) if charging_h < 0.5 => {
                format!("The engine need not be run for charging in any month{anyway}.")
            }
            Some(worst) if self.sun_by_month => format!(
                "The engine is run for charging some {charging_h:.0} h a year{anyway}. It runs longest in {}.",
                worst.name()
            ),
            _ => format!("The engine is run for charging some {charging_h:.0} h a year{anyway}."),
        }
    }
}

fn most<'a>(
    months: &[&'a MonthReport],
    by: impl Fn(&MonthReport) -> f64,
) -> Option<&'a MonthReport> {
    months
        .iter()
        .copied()
        .max_by(|a, b| by(a).total_cmp(&by(b)))
}

fn months(count: usize) -> String {
    match count {
        1 => "one month".to_string(),
        12 => "every month".to_string(),
        count => format!("{count} months"),
    }
}
