//! Where the ampere-hours of a run went.

use crate::physics::battery::Bank;
use crate::simulation::trace::Trace;

impl Trace {
    /// Ampere-hours that flowed into the bank until a time \[s\], less what it
    /// gave. A bank keeps less of what flows in than it gives of what flows out, so
    /// the state of charge is read where the current turns round.
    pub fn bank_ah(&self, until_s: f64) -> f64 {
        /// How near such a turn is found \[s\].
        const NEAR_S: f64 = 1e-6;
        let last_s = until_s.min(self.last_s());
        let charges = |seconds: f64| self.flow(seconds).bank_a > 0.0;
        let (mut begin_s, mut begin) = (0.0, self.soc_at(0.0));
        let (mut looked_s, mut was) = (0.0, charges(0.0));
        let mut sum_ah = 0.0;
        for seconds in self.looked_at(last_s).into_iter().chain([last_s]) {
            let is = charges(seconds);
            if is != was {
                let (mut before_s, mut after_s) = (looked_s, seconds);
                while after_s - before_s > NEAR_S {
                    let middle_s = 0.5 * (before_s + after_s);
                    if charges(middle_s) == was {
                        before_s = middle_s;
                    } else {
                        after_s = middle_s;
                    }
                }
                if before_s > begin_s {
                    let soc = self.soc_at(before_s);
                    sum_ah += flowed_ah(&self.plant.bank, begin, soc);
                    (begin_s, begin) = (before_s, soc);
                }
            }
            (looked_s, was) = (seconds, is);
        }
        sum_ah + flowed_ah(&self.plant.bank, begin, self.soc_at(last_s))
    }
}

/// What flowed between two states of charge (0 to 1) in a time in which the
/// current did not turn round \[A·h\].
fn flowed_ah(bank: &Bank, from: f64, to: f64) -> f64 {
    let kept_ah = (to - from) * bank.capacity_ah;
    if kept_ah > 0.0 {
        kept_ah / bank.charge_efficiency
    } else {
        kept_ah
    }
}
