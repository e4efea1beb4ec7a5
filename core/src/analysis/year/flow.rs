//! What flows in a piece of an hour: how much of what is given the bank takes, and
//! what of it is spared or wasted. The walk of [`YearWalk`] goes on in `walk`.

use crate::analysis::year::hour::Hour;
use crate::analysis::year::ledger::{EnergyLedger, MainsAccount};
use crate::analysis::year::rule::Source;
use crate::analysis::year::walk::YearWalk;
use crate::physics::charging::{lost_ah, to_give_ah};

impl YearWalk<'_> {
    /// Most that may flow into the bank \[A\]: its charge limit, or what engine and
    /// mains charger give it without sun and other sources. Those have found their
    /// own limit. A frozen bank takes nothing of any of them.
    pub(super) fn most_a(&self, without_free_a: f64) -> f64 {
        if self.bank.is_frozen(self.charge()) {
            0.0
        } else {
            self.chargers.limit_a.max(without_free_a)
        }
    }

    /// Where what the mains charger gives is entered.
    pub(super) fn mains_account<'b>(&self, ledger: &'b mut EnergyLedger) -> MainsAccount<'b> {
        match self.orders.source {
            Source::Generator => ledger.generator(),
            Source::Engine | Source::Shore | Source::Nothing => ledger.shore(),
        }
    }

    /// Lets currents flow for a time. What a bank cannot take, being full or
    /// charged as fast as it may be, first spares the mains, then the engine, and
    /// then wastes sun and other sources, each by its share; an empty one leaves
    /// loads wanting. Gives what the
    /// engine gave \[A·h\].
    pub(super) fn flow(
        &mut self,
        hour: &Hour,
        given_a: [f64; 2],
        span_h: f64,
        ledger: &mut EnergyLedger,
    ) -> f64 {
        let (sun_ah, use_ah) = (hour.sun_a * span_h, hour.use_a * span_h);
        let other_ah = hour.other_a * span_h;
        let [engine_a, mains_a] = given_a;
        let (mut engine_ah, mut mains_ah) = (engine_a * span_h, mains_a * span_h);
        let net_ah = sun_ah + other_ah + engine_ah + mains_ah - use_ah;
        let begins = self.charge();
        let mut taken_ah = 0.0;
        if net_ah > 0.0 {
            let room_ah = (self.orders.full * self.capacity_ah - self.charge_ah).max(0.0);
            let most_a = self.most_a(engine_a + mains_a - hour.use_a);
            taken_ah = net_ah
                .min(to_give_ah(room_ah, self.kept))
                .min(most_a * span_h);
            let mut spare_ah = net_ah - taken_ah;
            for given_ah in [&mut mains_ah, &mut engine_ah] {
                let spared_ah = spare_ah.min(*given_ah);
                *given_ah -= spared_ah;
                spare_ah -= spared_ah;
            }
            let sun_part = match other_ah > 0.0 {
                true => sun_ah / (sun_ah + other_ah),
                false => 1.0,
            };
            ledger.balance.wasted_ah += spare_ah * sun_part;
            ledger.balance.other_wasted_ah += spare_ah * (1.0 - sun_part);
            ledger.balance.lost_ah += lost_ah(taken_ah, self.kept);
            self.charge_ah += taken_ah * self.kept;
        } else {
            let given_ah = (-net_ah).min(self.charge_ah);
            ledger.balance.short_ah += -net_ah - given_ah;
            self.charge_ah -= given_ah;
        }
        if mains_ah > 0.0 {
            let mains = &self.chargers.mains;
            let volts = mains.volts(begins, taken_ah / span_h);
            let account = self.mains_account(ledger);
            *account.kwh += mains.mains_w(mains_ah, volts) / 1000.0;
            *account.given_ah += mains_ah;
        }
        ledger.balance.other_ah += other_ah;
        ledger.balance.sun_ah += sun_ah;
        ledger.balance.use_ah += use_ah;
        ledger.balance.engine_ah += engine_ah;
        ledger.shaft_kwh += engine_ah * self.chargers.engine.shaft_kwh_ah(begins);
        ledger.lowest_ah = ledger.lowest_ah.min(self.charge_ah);
        engine_ah
    }
}
