//! A bank walked through the hours: sun in, loads out, the engine by its rule.
//!
//! Within an hour sun and loads are steady; an hour is cut where the engine
//! starts or stops, and every five minutes while it runs.

use super::charger::Charger;
use super::rule::Orders;
use crate::physics::battery::Bank;

/// Longest piece of an hour while the engine runs \[h\].
const ENGINE_PIECE_H: f64 = 1.0 / 12.0;
/// Shortest piece an hour is cut into \[h\]: no engine is started or stopped
/// more often.
const LEAST_PIECE_H: f64 = 1.0 / 60.0;

/// What an hour brings.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Hour {
    /// From the panels \[A\].
    pub sun_a: f64,
    /// Wanted by the loads \[A\].
    pub use_a: f64,
    /// No engine for charging.
    pub quiet: bool,
    /// How much of it, from its beginning, the engine is run anyway \[h\].
    pub motoring_h: f64,
}

/// Sums of a time; what each means stands at [`Balance`](super::Balance).
#[allow(missing_docs)]
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct Tally {
    pub sun_ah: f64,
    pub wasted_ah: f64,
    pub engine_ah: f64,
    pub use_ah: f64,
    pub short_ah: f64,
    pub lost_ah: f64,
    pub engine_h: f64,
    pub motoring_h: f64,
    /// Lowest the bank was \[A·h\].
    pub lowest_ah: f64,
}

impl Tally {
    /// Nothing yet; the bank holds so much \[A·h\].
    pub fn starting(charge_ah: f64) -> Tally {
        Tally {
            lowest_ah: charge_ah,
            ..Tally::default()
        }
    }

    /// Adds what came later.
    pub fn add(&mut self, later: &Tally) {
        self.sun_ah += later.sun_ah;
        self.wasted_ah += later.wasted_ah;
        self.engine_ah += later.engine_ah;
        self.use_ah += later.use_ah;
        self.short_ah += later.short_ah;
        self.lost_ah += later.lost_ah;
        self.engine_h += later.engine_h;
        self.motoring_h += later.motoring_h;
        self.lowest_ah = self.lowest_ah.min(later.lowest_ah);
    }
}

/// The bank and the engine.
#[derive(Debug, Clone)]
pub struct Walker<'a> {
    /// In the bank \[A·h\].
    pub charge_ah: f64,
    /// All there is room for \[A·h\].
    pub capacity_ah: f64,
    kept: f64,
    /// How long the engine has been running \[h\].
    running_h: Option<f64>,
    /// Whether it runs because the rule said so.
    pub charging: bool,
    /// The rule it runs by.
    pub orders: &'a Orders,
    charger: &'a Charger,
}

impl<'a> Walker<'a> {
    /// Begins with a full bank.
    pub fn new(bank: &Bank, orders: &'a Orders, charger: &'a Charger) -> Walker<'a> {
        let charge_ah = orders.full * bank.capacity_ah;
        Walker {
            charge_ah,
            capacity_ah: bank.capacity_ah,
            kept: bank.charge_efficiency,
            running_h: None,
            charging: false,
            orders,
            charger,
        }
    }

    /// State of charge, 0 to 1.
    pub fn charge(&self) -> f64 {
        self.charge_ah / self.capacity_ah
    }

    /// Ampere-hours as a state of charge \[%\].
    pub fn pct(&self, charge_ah: f64) -> f64 {
        (100.0 * charge_ah / self.capacity_ah).clamp(0.0, 100.0)
    }

    /// Goes through an hour.
    // Kept apart, as the other steps of a year are: inlined into each other
    // they make the page larger and no quicker.
    #[inline(never)]
    pub fn hour(&mut self, hour: &Hour, tally: &mut Tally) {
        let mut at = 0.0;
        while at < 1.0 - 1e-9 {
            let motoring = at < hour.motoring_h - 1e-9;
            let wanted = if self.charging {
                self.charge() < self.orders.stop
            } else {
                self.charge() <= self.orders.start
            };
            self.charging = wanted && !hour.quiet;
            let runs = motoring || self.charging;
            let since_h = runs.then(|| self.running_h.unwrap_or(0.0));
            let left_h = if motoring {
                hour.motoring_h - at
            } else {
                1.0 - at
            };
            let span_h = self.piece_h(hour, since_h, left_h);
            let engine_a = since_h.map_or(0.0, |since_h| {
                self.charger.mean_a(since_h, span_h, self.charge())
            });
            self.flow(hour, engine_a, span_h, tally);
            if runs {
                tally.engine_h += span_h;
            }
            if motoring {
                tally.motoring_h += span_h;
            }
            self.running_h = since_h.map(|since_h| since_h + span_h);
            at += span_h;
        }
    }

    /// How long all stays as it is, of the hours that are left.
    fn piece_h(&self, hour: &Hour, since_h: Option<f64>, left_h: f64) -> f64 {
        let (most_h, engine_a) = match since_h {
            Some(since_h) => {
                let most_h = left_h.min(ENGINE_PIECE_H);
                (most_h, self.charger.mean_a(since_h, most_h, self.charge()))
            }
            None => (left_h, 0.0),
        };
        let net_a = hour.sun_a + engine_a - hour.use_a;
        let until = |charge: f64| charge * self.capacity_ah - self.charge_ah;
        let turn_h = if self.charging && net_a > 0.0 {
            until(self.orders.stop) / (net_a * self.kept)
        } else if since_h.is_none() && !hour.quiet && net_a < 0.0 {
            until(self.orders.start) / net_a
        } else {
            return most_h;
        };
        most_h.min(turn_h.max(LEAST_PIECE_H))
    }

    /// Lets currents flow for a time. A full bank first spares the engine, then
    /// wastes the sun; an empty one leaves loads wanting.
    fn flow(&mut self, hour: &Hour, engine_a: f64, span_h: f64, tally: &mut Tally) {
        let (sun_ah, use_ah) = (hour.sun_a * span_h, hour.use_a * span_h);
        let mut engine_ah = engine_a * span_h;
        let net_ah = sun_ah + engine_ah - use_ah;
        if net_ah > 0.0 {
            let room_ah = (self.orders.full * self.capacity_ah - self.charge_ah).max(0.0);
            let taken_ah = net_ah.min(room_ah / self.kept);
            let spare_ah = net_ah - taken_ah;
            let spared_ah = spare_ah.min(engine_ah);
            engine_ah -= spared_ah;
            tally.wasted_ah += spare_ah - spared_ah;
            tally.lost_ah += taken_ah * (1.0 - self.kept);
            self.charge_ah += taken_ah * self.kept;
        } else {
            let given_ah = (-net_ah).min(self.charge_ah);
            tally.short_ah += -net_ah - given_ah;
            self.charge_ah -= given_ah;
        }
        tally.sun_ah += sun_ah;
        tally.use_ah += use_ah;
        tally.engine_ah += engine_ah;
        tally.lowest_ah = tally.lowest_ah.min(self.charge_ah);
    }
}
