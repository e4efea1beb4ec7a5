//! The year aboard: twelve months, hour by hour, the bank charged by the engine,
//! by a generator or at the dock as the user's rule says. Everything that is told of a year
//! rests on it: engine hours, fuel, shore power and use, whoever asks.
//!
//! `weather` spreads sun and use over the hours of a month's days (`hour`), `pattern`
//! says which days are aboard, `charger` tabulates what the engine gives and
//! `climate` what it gives in the months, `engine_loads` holds what runs with
//! the engine alone, `rule` the rule, `fuel` what is burnt, `walk` steps a
//! bank through the hours and enters what flows (`flow`) in a `ledger`. `weeks` walks the weeks of
//! a month, of which `put_back` evens out the last run; `day` walks a settled day,
//! and `month` is what is told. There are no clouds: every
//! day of a month has that month's mean sun. Each month is walked for some
//! weeks once it has settled, and is taken for its days aboard. An
//! engine that cannot charge the bank, by the same test as the day's answer,
//! gives nothing here either.

mod charger;
mod climate;
mod day;
mod engine_loads;
mod flow;
mod fuel;
mod hour;
mod ledger;
mod month;
mod pattern;
mod put_back;
mod rule;
mod walk;
mod weather;
mod weeks;

use serde::Serialize;

use crate::analysis::energy::energy;
use crate::analysis::engine_day::DayTrouble;
use crate::boat::{Inputs, Month, MonthFigures, Worksheet};
use crate::simulation::mains_charger::MainsCharger;

use climate::{Climates, MonthEngine};
use fuel::MonthFuel;
use rule::{EngineSchedule, Source};
use walk::{Chargers, YearWalk};
use weather::Weather;
use weeks::Weeks;

pub(crate) use climate::in_month;
pub use day::{DayReport, HourReport};
pub use ledger::Balance;
pub use month::MonthReport;

const HOURS_A_DAY: usize = 24;
/// Use that may go short before a year counts as not covered, as a part of it.
const MAY_GO_SHORT: f64 = 0.01;

/// A year aboard. Everything in it is a mean year's: no month has weather.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Year {
    /// Whether months differ in sun, temperatures or use.
    pub months_differ: bool,
    /// State of charge at which sun and engine stop \[%\].
    pub full_pct: f64,
    /// The lowest state of charge wanted \[%\].
    pub low_pct: f64,
    /// Voltage that watt-hours and ampere-hours are converted with \[V\].
    pub bank_v: f64,
    /// What the days aboard come to.
    #[serde(flatten)]
    pub sums: YearSums,
    /// Whether the bank is charged at the dock and not by the engine.
    pub at_dock: bool,
    /// Whether a generator charges it.
    pub by_generator: bool,
    /// Whether there are other sources, of wind or water.
    pub has_other: bool,
    /// State of charge at which charging starts \[%\].
    pub start_pct: f64,
    /// Why the engine gives nothing in some or all months aboard, by the first of
    /// them; none when it charges in all.
    pub trouble: Option<DayTrouble>,
    /// The months, January first.
    pub months: Vec<MonthReport>,
}

/// What the days aboard of a year come to.
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize)]
pub struct YearSums {
    /// Days aboard \[d\].
    pub days_aboard: f64,
    /// Engine time for charging, motoring not counted \[h\].
    pub charging_h: f64,
    /// Motoring that would have been done anyway; it charges meanwhile \[h\].
    pub motoring_h: f64,
    /// Fuel of the runs for charging, what the alternators ask while motoring, and
    /// the generator's \[L\].
    pub fuel_l: f64,
    /// Time of the generator \[h\].
    pub generator_h: f64,
    /// Fuel of the generator, a part of `fuel_l` \[L\].
    pub generator_fuel_l: f64,
    /// Taken from shore power \[kW·h\].
    pub shore_kwh: f64,
    /// Used aboard \[A·h\].
    pub use_ah: f64,
    /// Used aboard, at the voltage of [`Year::bank_v`] \[W·h\].
    pub use_wh: f64,
    /// Whether all sources together cover the use, but for a hundredth.
    pub covered: bool,
}

impl YearSums {
    fn of(months: &[MonthReport], bank_v: f64) -> YearSums {
        let sum = |of: fn(&MonthReport) -> f64| months.iter().map(of).fold(0.0, |a, b| a + b);
        let use_ah = sum(|month| month.balance.use_ah);
        YearSums {
            days_aboard: sum(|month| month.days_aboard),
            charging_h: sum(|month| month.charging_h),
            motoring_h: sum(|month| month.motoring_h),
            fuel_l: sum(|month| month.fuel_l),
            generator_h: sum(|month| month.generator_h),
            generator_fuel_l: sum(|month| month.generator_fuel_l),
            shore_kwh: sum(|month| month.shore_kwh),
            use_ah,
            use_wh: use_ah * bank_v,
            covered: sum(|month| month.balance.short_ah) <= MAY_GO_SHORT * use_ah,
        }
    }
}

/// Works out the year.
pub fn year(sheet: &Worksheet) -> Year {
    worked_out(sheet, true)
}

/// What the year's days aboard come to: those of [`year`], without its settled
/// days, which take half of the time.
pub fn year_sums(sheet: &Worksheet) -> YearSums {
    worked_out(sheet, false).sums
}

fn worked_out(sheet: &Worksheet, with_days: bool) -> Year {
    let energy = energy(sheet);
    let orders = EngineSchedule::of(&sheet.inputs);
    let figures = sheet.month_figures();
    let aboard = figures.iter().filter(|month| month.days > 0.0).collect();
    let mut climates = Climates::new(sheet, &orders, aboard);
    let fuel = MonthFuel::of(sheet);
    let mut walked: Vec<Walked> = Vec::new();
    let mut months = Vec::with_capacity(figures.len());
    for (month, figures) in Month::ALL.iter().zip(&figures) {
        let weather = Weather::new(sheet, &energy, *month, figures);
        if figures.days <= 0.0 {
            months.push(MonthReport::ashore(&weather));
            continue;
        }
        let known = walked.iter().find(|known| known.weather.alike(&weather));
        if let Some(known) = known {
            months.push(known.report(&weather));
            continue;
        }
        let engine = climates.engine(figures);
        let next = Walked::new(sheet, &orders, engine, weather, fuel, with_days);
        months.push(next.report(&next.weather));
        walked.push(next);
    }
    let first = months.first();
    let differ = |month: &MonthReport| {
        let day = |month: &MonthReport| (month.sun_wh_day, month.air_c, month.bank_c);
        first.is_some_and(|first| day(first) != day(month))
    };
    let has_other = sheet.inputs.has_other_sources();
    let flows = |month: &MonthFigures| (month.use_pct, has_other.then_some(month.wind_pct));
    let used = |month: &MonthFigures| figures.first().map(flows) != Some(flows(month));
    Year {
        months_differ: months.iter().any(differ) || figures.iter().any(used),
        full_pct: 100.0 * orders.full,
        low_pct: 100.0 * orders.low,
        bank_v: energy.bank_v,
        sums: YearSums::of(&months, energy.bank_v),
        at_dock: orders.source == Source::Shore,
        by_generator: orders.source == Source::Generator,
        has_other,
        start_pct: 100.0 * orders.start,
        trouble: months.iter().find_map(|month| month.trouble),
        months,
    }
}

/// Why the mains give the bank of a month nothing where the rule begins to charge
/// it; none where they do, or are not asked to.
fn mains_trouble(inputs: &Inputs, orders: &EngineSchedule) -> Option<DayTrouble> {
    if inputs.engine_charges() {
        None
    } else if inputs.charge_barred().is_some() {
        Some(DayTrouble::CannotBeCharged)
    } else {
        let frozen = inputs.house_bank().is_frozen(orders.start);
        frozen.then_some(DayTrouble::BankFrozen)
    }
}

/// A month that was walked.
struct Walked {
    weather: Weather,
    trouble: Option<DayTrouble>,
    mains_trouble: Option<DayTrouble>,
    weeks: Weeks,
    fuel: MonthFuel,
    day: DayReport,
}

impl Walked {
    fn new(
        sheet: &Worksheet,
        orders: &EngineSchedule,
        engine: MonthEngine,
        weather: Weather,
        fuel: MonthFuel,
        with_days: bool,
    ) -> Walked {
        let inputs = in_month(&sheet.inputs, &weather.figures);
        let mains_trouble = mains_trouble(&inputs, orders);
        let orders = orders.without_engine(engine.trouble.is_some());
        let orders = orders.without_mains(mains_trouble);
        let chargers = Chargers {
            engine: engine.charger,
            mains: match inputs.generator_charges() {
                true => MainsCharger::on_generator(&inputs),
                false => MainsCharger::on_shore(&inputs),
            },
            limit_a: inputs.charge_limit_a(),
        };
        let mut walker = YearWalk::new(
            &inputs.house_bank(),
            &orders,
            &chargers,
            weather.engine_loads.clone(),
        );
        let weeks = Weeks::walked(&weather, &mut walker);
        Walked {
            day: match with_days {
                true => DayReport::settled(&weather, walker),
                false => DayReport::default(),
            },
            trouble: engine.trouble.filter(|_| inputs.engine_charges()),
            mains_trouble,
            weeks,
            fuel,
            weather,
        }
    }

    /// What is told of a month that is like this one, but for its days aboard.
    fn report(&self, weather: &Weather) -> MonthReport {
        let mut report = MonthReport::of(weather, &self.weeks);
        let times = report.days_aboard / self.weeks.days_aboard;
        let shaft_kwh = self.weeks.ledger.shaft_kwh * times;
        let generator_kwh = self.weeks.ledger.generator_kwh * times;
        report.generator_fuel_l = self.fuel.generator_l(report.generator_h, generator_kwh);
        report.fuel_l = self.fuel.engine_l(report.charging_h, shaft_kwh) + report.generator_fuel_l;
        report.trouble = self.trouble;
        report.mains_trouble = self.mains_trouble;
        report.day = self.day.clone();
        report
    }
}
