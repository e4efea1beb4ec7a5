//! What a bank's books hold: where the ampere-hours of a time went, and what
//! engine, generator and shore power took for them. [`Balance`] is what is told of it. Uses
//! nothing else of the year.

use serde::Serialize;

/// The ampere-hours of a month, with the days between weekends aboard: sun −
/// wasted + other − other wasted + engine + generator + shore − use + short −
/// lost = change. The engine, the generator or shore power puts back what the month has taken from the bank, so that only what
/// the bank gained and cannot give back is a change.
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize)]
pub struct Balance {
    /// Offered by the panels \[A·h\].
    pub sun_ah: f64,
    /// Of that, not taken: the bank was full or charged as fast as it may be \[A·h\].
    pub wasted_ah: f64,
    /// Brought by the other sources \[A·h\].
    pub other_ah: f64,
    /// Of that, not taken \[A·h\].
    pub other_wasted_ah: f64,
    /// From the engine \[A·h\].
    pub engine_ah: f64,
    /// From the generator \[A·h\].
    pub generator_ah: f64,
    /// From shore power \[A·h\].
    pub shore_ah: f64,
    /// Wanted by the loads \[A·h\].
    pub use_ah: f64,
    /// Of that, not given: the bank was empty \[A·h\].
    pub short_ah: f64,
    /// Lost in charging \[A·h\].
    pub lost_ah: f64,
    /// Change of the bank from beginning to end \[A·h\].
    pub change_ah: f64,
}

impl Balance {
    /// Adds what came later; its change is the bank's, and is not summed.
    fn add(&mut self, later: &Balance) {
        self.sun_ah += later.sun_ah;
        self.wasted_ah += later.wasted_ah;
        self.other_ah += later.other_ah;
        self.other_wasted_ah += later.other_wasted_ah;
        self.engine_ah += later.engine_ah;
        self.generator_ah += later.generator_ah;
        self.shore_ah += later.shore_ah;
        self.use_ah += later.use_ah;
        self.short_ah += later.short_ah;
        self.lost_ah += later.lost_ah;
    }

    /// That of a time so many times as long.
    pub fn times(&self, times: f64) -> Balance {
        Balance {
            sun_ah: times * self.sun_ah,
            wasted_ah: times * self.wasted_ah,
            other_ah: times * self.other_ah,
            other_wasted_ah: times * self.other_wasted_ah,
            engine_ah: times * self.engine_ah,
            generator_ah: times * self.generator_ah,
            shore_ah: times * self.shore_ah,
            use_ah: times * self.use_ah,
            short_ah: times * self.short_ah,
            lost_ah: times * self.lost_ah,
            change_ah: times * self.change_ah,
        }
    }
}

/// Sums of a time, while it is walked.
#[derive(Debug, Clone, Copy, PartialEq, Default)]
pub struct EnergyLedger {
    /// Where the ampere-hours went. What the bank holds more at the end is entered
    /// by whoever closes the ledger; 0 until then.
    pub balance: Balance,
    /// Of the engine's, what it gave while it ran by the rule \[A·h\].
    pub ruled_ah: f64,
    /// Time with the engine running \[h\].
    pub engine_h: f64,
    /// Of that, motoring that would have been done anyway \[h\].
    pub motoring_h: f64,
    /// Taken by the alternators' shafts \[kWh\].
    pub shaft_kwh: f64,
    /// Time with the generator running \[h\].
    pub generator_h: f64,
    /// Taken by the charger on it \[kW·h\].
    pub generator_kwh: f64,
    /// Time on shore power \[h\].
    pub shore_h: f64,
    /// Taken from the shore \[kW·h\].
    pub shore_kwh: f64,
    /// Lowest the bank was \[A·h\].
    pub lowest_ah: f64,
}

/// What one mains gave, while it is walked: ampere-hours, time, and energy taken.
pub struct MainsAccount<'a> {
    /// Onto the house side \[A·h\].
    pub given_ah: &'a mut f64,
    /// Time on it \[h\].
    pub hours: &'a mut f64,
    /// Taken from it \[kW·h\].
    pub kwh: &'a mut f64,
}

impl EnergyLedger {
    /// Shore power's account.
    pub fn shore(&mut self) -> MainsAccount<'_> {
        MainsAccount {
            given_ah: &mut self.balance.shore_ah,
            hours: &mut self.shore_h,
            kwh: &mut self.shore_kwh,
        }
    }

    /// The generator's account.
    pub fn generator(&mut self) -> MainsAccount<'_> {
        MainsAccount {
            given_ah: &mut self.balance.generator_ah,
            hours: &mut self.generator_h,
            kwh: &mut self.generator_kwh,
        }
    }

    /// Nothing yet; the bank holds so much \[A·h\].
    pub fn starting(charge_ah: f64) -> EnergyLedger {
        EnergyLedger {
            lowest_ah: charge_ah,
            ..EnergyLedger::default()
        }
    }

    /// Adds what came later.
    pub fn add(&mut self, later: &EnergyLedger) {
        self.balance.add(&later.balance);
        self.ruled_ah += later.ruled_ah;
        self.shaft_kwh += later.shaft_kwh;
        self.engine_h += later.engine_h;
        self.motoring_h += later.motoring_h;
        self.generator_h += later.generator_h;
        self.generator_kwh += later.generator_kwh;
        self.shore_h += later.shore_h;
        self.shore_kwh += later.shore_kwh;
        self.lowest_ah = self.lowest_ah.min(later.lowest_ah);
    }
}
