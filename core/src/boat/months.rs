//! The year by months: what is otherwise in each month than on the day of the
//! worksheet. A cell left empty follows from the latitude and from the other
//! inputs, so that nobody has to fill any of it in.

use crate::boat::{Inputs, Month, Section, SunBasis, Worksheet, optional, section};
use crate::physics::climate::{MONTH_DAYS, air_season_k, sea_c};
use crate::physics::solar::{MIDDLE_DAYS, SunPlace, full_sun_hours};
use crate::units::{CELSIUS, DAY, HOUR, PERCENT};

/// Months in a year.
pub const MONTHS: usize = 12;

section! {
    /// What is said of one month. Each is empty until somebody says otherwise.
    MonthRow {
        air_c: Option<f64> = optional("Air", CELSIUS, -40.0, 55.0, "outside air of the worksheet, warmer or colder by the season of its latitude", |_| None).measured()
            .help("Outside air while you charge.");
        water_c: Option<f64> = optional("Water", CELSIUS, -2.0, 40.0, "by the latitude; outside air without one", |_| None).measured()
            .help("The sea around the hull. The bank follows it by half.");
        bank_c: Option<f64> = optional("Bank", CELSIUS, -30.0, 70.0, "battery temperature of the worksheet, moved by half of what the water differs", |_| None).measured()
            .help("Of the cells while charging; nearer the cabin's where the bank lies in a heated one.");
        sun_h: Option<f64> = optional("Peak sun hours", HOUR, 0.0, 12.0, "by latitude and sky, or the worksheet's", |_| None)
            .help("Hours of full sun a day that would give the same energy on a level surface.");
        use_pct: Option<f64> = optional("Use", PERCENT, 0.0, 500.0, "100 %", |_| None)
            .help("Share of the usual day's use: more with heating or long nights, less without a refrigerator.");
        days: Option<f64> = optional("Days aboard", DAY, 0.0, 31.0, "its share of the days aboard a year", |_| None)
            .help("Days of this month that you live aboard; 0 when the boat is laid up.");
        wind_pct: Option<f64> = optional("Wind", PERCENT, 0.0, 500.0, "100 %", |_| None)
            .help("Share of what the wind generator brings on average, at anchor and under way: 150 in a windy winter, 50 in a summer of calms. What the water turns follows from the days under way alone.");
    }
}

/// All twelve rows, January first.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Months {
    rows: [MonthRow; MONTHS],
}

impl Months {
    /// What is said of a month.
    pub fn row(&self, month: Month) -> &MonthRow {
        // A month is one of twelve.
        &self.rows[month as usize % MONTHS]
    }

    /// What is said of a month, to be changed.
    pub fn row_mut(&mut self, month: Month) -> &mut MonthRow {
        &mut self.rows[month as usize % MONTHS]
    }

    /// The months of which anything is said, with what is said of them.
    pub fn said(&self) -> impl Iterator<Item = (Month, &MonthRow)> {
        let all = Month::ALL.iter().copied().zip(&self.rows);
        all.filter(|(_, row)| **row != MonthRow::default())
    }
}

/// What a month is calculated with: what was said of it, and what an empty cell
/// stands for.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MonthFigures {
    /// Outside air \[°C\].
    pub air_c: f64,
    /// The sea \[°C\].
    pub water_c: f64,
    /// Cells of the bank \[°C\].
    pub bank_c: f64,
    /// Hours of full sun a day \[h\].
    pub sun_h: f64,
    /// Whether those were stated for this month.
    pub sun_stated: bool,
    /// Share of the usual day's use \[%\].
    pub use_pct: f64,
    /// Days aboard \[d\].
    pub days: f64,
    /// Share of the usual current of a wind generator \[%\].
    pub wind_pct: f64,
}

impl MonthFigures {
    /// In the order of the columns of [`MonthRow`].
    pub const fn columns(&self) -> [f64; 7] {
        [
            self.air_c,
            self.water_c,
            self.bank_c,
            self.sun_h,
            self.use_pct,
            self.days,
            self.wind_pct,
        ]
    }
}

impl Month {
    /// "January".
    pub fn label(self) -> &'static str {
        Month::OPTIONS
            .get(self as usize)
            .map_or("", |option| option.label)
    }

    /// The month of a number from 1 to 12.
    pub fn numbered(number: usize) -> Option<Month> {
        Month::ALL.get(number.checked_sub(1)?).copied()
    }

    /// 1 for January.
    pub const fn number(self) -> usize {
        self as usize + 1
    }
}

impl MonthRow {
    /// Position of a column by name.
    pub fn column(name: &str) -> Option<usize> {
        Self::FIELDS.iter().position(|field| field.name == name)
    }
}

/// The bank follows the water by so much: one half lies against the hull, the
/// other against a cabin that is kept liveable. Own reasoning.
const BANK_FOLLOWS: f64 = 0.5;

impl Worksheet {
    /// What each month is calculated with, January first.
    ///
    /// Where the sun is calculated from a place, air and sea follow the season
    /// of that latitude, and the outside air and the bank's temperature of the
    /// worksheet are those of its month; elsewhere all months are alike.
    pub fn month_figures(&self) -> [MonthFigures; MONTHS] {
        let inputs = &self.inputs;
        let place = (inputs.sun.basis == SunBasis::Place).then_some(inputs.sun.latitude_deg);
        let here = inputs.sun.month;
        let season_k = |month: Month| {
            place.map_or(0.0, |latitude_deg| {
                air_season_k(latitude_deg, month as usize)
                    - air_season_k(latitude_deg, here as usize)
            })
        };
        let water_c = |month: Month| {
            let by_place = || place.map(|latitude_deg| sea_c(latitude_deg, month as usize));
            let stated = self.months.row(month).water_c;
            stated.or_else(by_place).unwrap_or(inputs.space.outside_c)
        };
        // Without a place no month is the worksheet's own.
        let usual_water_c = match place {
            Some(_) => water_c(here),
            None => inputs.space.outside_c,
        };
        let days = self.days_by_month();
        std::array::from_fn(|at| {
            let month = Month::ALL.get(at).copied().unwrap_or(Month::January);
            let row = self.months.row(month);
            let water_c = water_c(month);
            let followed_k = BANK_FOLLOWS * (water_c - usual_water_c);
            MonthFigures {
                air_c: row
                    .air_c
                    .unwrap_or(inputs.space.outside_c + season_k(month)),
                water_c,
                bank_c: row.bank_c.unwrap_or(inputs.bank.temperature_c + followed_k),
                sun_h: row.sun_h.unwrap_or_else(|| inputs.full_sun_hours(month)),
                sun_stated: row.sun_h.is_some(),
                use_pct: row.use_pct.unwrap_or(100.0),
                days: days[at],
                wind_pct: row.wind_pct.unwrap_or(100.0),
            }
        })
    }

    /// Days aboard in each month \[d\]. What the months that say nothing share
    /// is what the others leave of the days aboard a year, by their lengths.
    fn days_by_month(&self) -> [f64; MONTHS] {
        // No month has more days aboard than it has days.
        let stated: [Option<f64>; MONTHS] = std::array::from_fn(|at| {
            let days = self.months.rows[at].days;
            days.map(|days| days.min(MONTH_DAYS[at].ceil()))
        });
        let said: f64 = stated.iter().flatten().fold(0.0, |sum, days| sum + days);
        let open: f64 = stated
            .iter()
            .zip(MONTH_DAYS)
            .filter(|(days, _)| days.is_none())
            .fold(0.0, |sum, (_, length)| sum + length);
        let share = ((self.inputs.cost.days - said) / open.max(1.0)).clamp(0.0, 1.0);
        std::array::from_fn(|at| stated[at].unwrap_or(share * MONTH_DAYS[at]))
    }

    /// Days aboard in the whole year \[d\]: those of the table where it states
    /// all months, else the days aboard a year.
    pub fn days_aboard(&self) -> f64 {
        self.days_by_month()
            .iter()
            .fold(0.0, |sum, days| sum + days)
    }
}

impl Inputs {
    /// Hours of full sun a day in a month \[h\]: as given for every day, or what
    /// the sky of the place lets through.
    pub fn full_sun_hours(&self, month: Month) -> f64 {
        match self.sun.basis {
            SunBasis::Hours => self.sun.full_hours,
            SunBasis::Place => {
                let day = MIDDLE_DAYS.get(month as usize).copied().unwrap_or(1.0);
                let outside_air_mj = SunPlace::on(day).outside_air_mj(self.sun.latitude_deg);
                full_sun_hours(self.sun.clearness, outside_air_mj)
            }
        }
    }
}
