//! A bank walked through the hours: sun and other sources in, loads out, engine,
//! generator or shore power by the rule.
//!
//! Within an hour sun and loads are steady; an hour is cut where charging
//! starts or stops, and every ten minutes while it goes on. Uses the hours, the
//! rule and the chargers, and enters what flows (`flow`) in the ledger.

use crate::analysis::year::charger::Charger;
use crate::analysis::year::engine_loads::{DayKind, EngineLoads};
use crate::analysis::year::hour::Hour;
use crate::analysis::year::ledger::EnergyLedger;
use crate::analysis::year::rule::{EngineSchedule, Source};
use crate::physics::battery::Bank;
use crate::simulation::mains_charger::MainsCharger;

/// Longest piece of an hour while the bank is charged \[h\].
const CHARGING_PIECE_H: f64 = 1.0 / 6.0;
/// Shortest piece an hour is cut into \[h\]: nothing is started or stopped more
/// often.
const LEAST_PIECE_H: f64 = 1.0 / 60.0;

/// What charges the bank in a piece of an hour.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
struct Charging {
    /// Age of the engine's run, if it runs \[h\].
    engine_age_h: Option<f64>,
    /// Whether shore power is on, or the generator runs.
    mains: bool,
}

/// What may charge a bank.
#[derive(Debug, Clone)]
pub struct Chargers {
    /// The engine.
    pub engine: Charger,
    /// The charger on shore power, or on the generator.
    pub mains: MainsCharger,
    /// Most current that sun and other sources may bring the bank to \[A\].
    pub limit_a: f64,
}

/// The bank and what charges it.
#[derive(Debug, Clone)]
pub struct YearWalk<'a> {
    /// In the bank \[A·h\].
    pub charge_ah: f64,
    /// All there is room for \[A·h\].
    pub capacity_ah: f64,
    /// Part of what goes into the bank that it keeps, 0 to 1.
    pub kept: f64,
    /// The bank itself.
    pub(super) bank: Bank,
    /// Age of the engine's run \[h\].
    age_h: Option<f64>,
    /// Whether the rule charges the bank.
    pub charging: bool,
    /// How long the generator ran today \[h\].
    generator_today_h: f64,
    /// What runs with engine or generator alone.
    engine_loads: EngineLoads,
    /// The rule.
    pub orders: &'a EngineSchedule,
    pub(super) chargers: &'a Chargers,
}

impl<'a> YearWalk<'a> {
    /// Begins half-way between where charging starts and where it stops.
    pub fn new(
        bank: &Bank,
        orders: &'a EngineSchedule,
        chargers: &'a Chargers,
        engine_loads: EngineLoads,
    ) -> YearWalk<'a> {
        let charge_ah = 0.5 * (orders.start + orders.stop) * bank.capacity_ah;
        YearWalk {
            charge_ah,
            capacity_ah: bank.capacity_ah,
            kept: bank.charge_efficiency,
            bank: *bank,
            age_h: None,
            charging: false,
            generator_today_h: 0.0,
            engine_loads,
            orders,
            chargers,
        }
    }

    /// The engine that charges it.
    pub fn engine(&self) -> &Charger {
        &self.chargers.engine
    }

    /// State of charge, 0 to 1.
    pub fn charge(&self) -> f64 {
        self.charge_ah / self.capacity_ah
    }

    /// Ampere-hours as a state of charge \[%\].
    pub fn pct(&self, charge_ah: f64) -> f64 {
        (100.0 * charge_ah / self.capacity_ah).clamp(0.0, 100.0)
    }

    /// Begins a day: the generator may run again, and where somebody is aboard
    /// loads wait for it or the engine.
    pub fn begin_day(&mut self, aboard: Option<DayKind>) {
        self.generator_today_h = 0.0;
        if let Some(day) = aboard {
            self.engine_loads.begin_day(day);
        }
    }

    /// What waits for engine or generator \[A·h\].
    pub fn waiting_ah(&self) -> f64 {
        self.engine_loads.waiting_ah()
    }

    /// How long the generator may still run today \[h\]; endless where none
    /// charges.
    fn generator_left_h(&self) -> f64 {
        match self.orders.source {
            Source::Generator => (self.orders.generator_h - self.generator_today_h).max(0.0),
            Source::Engine | Source::Shore | Source::Nothing => f64::INFINITY,
        }
    }

    /// Goes through an hour.
    pub fn hour(&mut self, hour: &Hour, ledger: &mut EnergyLedger) {
        let mut at = 0.0;
        while at < 1.0 - 1e-9 {
            let motoring = at < hour.motoring_h - 1e-9;
            let wanted = if self.charging {
                self.charge() < self.orders.stop
            } else {
                self.charge() <= self.orders.start
            };
            let allowed_h = self.generator_left_h();
            self.charging = wanted && !hour.quiet && allowed_h > 1e-9;
            let by_rule = |source: Source| self.charging && self.orders.source == source;
            let runs = motoring || by_rule(Source::Engine);
            let charging = Charging {
                engine_age_h: runs.then(|| self.age_h.unwrap_or(0.0)),
                mains: by_rule(Source::Shore) || by_rule(Source::Generator),
            };
            let left_h = if motoring {
                hour.motoring_h - at
            } else {
                1.0 - at
            };
            let left_h = match self.charging {
                true => left_h.min(allowed_h),
                false => left_h,
            };
            let with_engine = runs || by_rule(Source::Generator);
            let loads_h = left_h.min(CHARGING_PIECE_H);
            let hour = &match (hour.aboard, with_engine) {
                (false, _) => *hour,
                (true, false) => hour.drawing(self.engine_loads.overdue_a()),
                (true, true) => {
                    hour.drawing(self.engine_loads.overdue_a() + self.engine_loads.drawn_a(loads_h))
                }
            };
            let (span_h, given_a) = self.piece(hour, &charging, left_h);
            if with_engine && hour.aboard {
                self.engine_loads.ran(span_h, loads_h);
            }
            let begins = self.charge();
            let engine_ah = self.flow(hour, given_a, span_h, ledger);
            if !motoring {
                ledger.ruled_ah += engine_ah;
            }
            if runs {
                ledger.engine_h += span_h;
            }
            if motoring {
                ledger.motoring_h += span_h;
            }
            if charging.mains {
                *self.mains_account(ledger).hours += span_h;
                self.generator_today_h += span_h;
            }
            self.age_h = charging.engine_age_h.map(|age_h| {
                let engine = &self.chargers.engine;
                age_h + engine.ages_h(age_h, span_h, begins)
            });
            at += span_h;
        }
    }

    /// What engine and mains charger give the house side over a time \[A\]: what
    /// the bank takes at the middle of it, for it takes less as it fills.
    fn given_a(&self, hour: &Hour, charging: &Charging, span_h: f64) -> [f64; 2] {
        let begins = self.charge();
        let at_first_a = self.given_at_a(hour, charging, span_h, begins);
        let free_a = hour.sun_a + hour.other_a;
        let net_a = free_a + at_first_a.iter().sum::<f64>() - hour.use_a;
        if *charging == Charging::default() || net_a <= 0.0 {
            return at_first_a;
        }
        let half_ah = 0.5 * span_h * net_a * self.kept;
        let middle = (begins + half_ah / self.capacity_ah).min(self.orders.full.max(begins));
        self.given_at_a(hour, charging, span_h, middle)
    }

    /// What engine and mains charger give the house side at a state of charge, 0 to
    /// 1, over a time \[A\].
    fn given_at_a(&self, hour: &Hour, charging: &Charging, span_h: f64, soc: f64) -> [f64; 2] {
        let engine_a = charging
            .engine_age_h
            .map_or(0.0, |age_h| self.chargers.engine.mean_a(age_h, span_h, soc));
        let mains_a = if charging.mains {
            // What sun, other sources and engine leave of the loads, and what the
            // bank takes.
            let load_a = hour.use_a - hour.sun_a - hour.other_a - engine_a;
            self.chargers.mains.given_a(soc, load_a).max(0.0)
        } else {
            0.0
        };
        [engine_a, mains_a]
    }

    /// How long all stays as it is, of the hours that are left, and what engine
    /// and mains charger give meanwhile \[A\].
    fn piece(&self, hour: &Hour, charging: &Charging, left_h: f64) -> (f64, [f64; 2]) {
        let idle = *charging == Charging::default();
        let most_h = if idle {
            left_h
        } else {
            left_h.min(CHARGING_PIECE_H)
        };
        let given_a = self.given_a(hour, charging, most_h);
        let [engine_a, mains_a] = given_a;
        let steady_a = engine_a + mains_a - hour.use_a;
        let net_a = (hour.sun_a + hour.other_a + steady_a).min(self.most_a(steady_a));
        let until = |soc: f64| soc * self.capacity_ah - self.charge_ah;
        let turn_h = if self.charging && net_a > 0.0 {
            until(self.orders.stop) / (net_a * self.kept)
        } else if idle && !hour.quiet && net_a < 0.0 {
            until(self.orders.start) / net_a
        } else {
            return (most_h, given_a);
        };
        let turn_h = turn_h.max(LEAST_PIECE_H);
        if turn_h < most_h {
            (turn_h, self.given_a(hour, charging, turn_h))
        } else {
            (most_h, given_a)
        }
    }
}
