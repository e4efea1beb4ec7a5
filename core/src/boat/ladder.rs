//! How much current the bank may take at the temperature of its cells.

use crate::boat::{Bank, Chemistry, Inputs};
use crate::physics::battery::{LFP_LADDER, LadderRate, LadderStep};

/// One step of the most charging current by cell temperature.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ChargeStep {
    /// From so warm \[°C\]; none for "however cold".
    pub from_c: Option<f64>,
    /// Up to so warm \[°C\]; none for "however hot".
    pub to_c: Option<f64>,
    /// Most current \[A\]; 0 where the cells must not be charged.
    pub amperes: f64,
}

/// Why cells must not be charged at their temperature.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum TooColdOrHot {
    /// Too cold.
    Cold,
    /// Too hot.
    Hot,
}

impl Bank {
    /// The ladder of these cells: the published one, or the maker's where it is given.
    fn ladder(&self) -> Vec<LadderStep> {
        let coldest_c = self.coldest_charge_c.unwrap_or(0.0);
        let given = |to_c: f64| {
            if to_c <= 5.0 {
                self.limit_to_5c_a
            } else if to_c <= 10.0 {
                self.limit_to_10c_a
            } else {
                self.limit_over_50c_a
            }
        };
        LFP_LADDER
            .into_iter()
            .filter_map(|step| match step.rate {
                LadderRate::TooCold => Some(LadderStep {
                    to_c: coldest_c,
                    ..step
                }),
                // The maker starts above this step.
                _ if step.to_c <= coldest_c => None,
                LadderRate::Rate(_) => Some(LadderStep {
                    rate: given(step.to_c).map_or(step.rate, |amperes| {
                        LadderRate::Rate(amperes / self.capacity_ah)
                    }),
                    ..step
                }),
                _ => Some(step),
            })
            .collect()
    }

    /// The step of the ladder these cells stand on now.
    fn ladder_step(&self) -> LadderRate {
        let celsius = self.temperature_c;
        self.ladder()
            .into_iter()
            .find(|step| step.holds(celsius))
            .map_or(LadderRate::TooHot, |step| step.rate)
    }
}

impl Inputs {
    /// Current at a rate for each ampere-hour \[A\], as far as packs share it.
    fn rate_a(&self, rate: f64) -> f64 {
        rate * self.bank.capacity_ah * self.packs_part()
    }

    /// Most current at a step of the ladder \[A\], never above the bank's own limit.
    fn at_step_a(&self, rate: LadderRate) -> f64 {
        let own_a = self.own_charge_limit_a();
        match rate {
            LadderRate::TooCold | LadderRate::TooHot => 0.0,
            LadderRate::Rate(rate) => own_a.min(self.rate_a(rate)),
            LadderRate::Whole => own_a,
        }
    }

    /// Most current the bank may take \[A\], its temperature considered.
    pub fn charge_limit_a(&self) -> f64 {
        match self.bank.chemistry {
            Chemistry::Lfp => self.at_step_a(self.bank.ladder_step()),
            _ => self.own_charge_limit_a(),
        }
    }

    /// What the ladder alone allows at the cells' temperature \[A\]; none where
    /// it leaves that to the bank's own limit, and for lead.
    pub(crate) fn ladder_a(&self) -> Option<f64> {
        match (self.bank.chemistry, self.bank.ladder_step()) {
            (Chemistry::Lfp, LadderRate::TooCold | LadderRate::TooHot) => Some(0.0),
            (Chemistry::Lfp, LadderRate::Rate(rate)) => Some(self.rate_a(rate)),
            _ => None,
        }
    }

    /// Whether a lithium bank is too cold or too hot to be charged at all.
    pub fn charge_barred(&self) -> Option<TooColdOrHot> {
        match (self.bank.chemistry, self.bank.ladder_step()) {
            (Chemistry::Lfp, LadderRate::TooCold) => Some(TooColdOrHot::Cold),
            (Chemistry::Lfp, LadderRate::TooHot) => Some(TooColdOrHot::Hot),
            // A maker may allow nothing at the cold or the hot end.
            (Chemistry::Lfp, LadderRate::Rate(rate)) if rate <= 0.0 => {
                Some(if self.bank.temperature_c < 25.0 {
                    TooColdOrHot::Cold
                } else {
                    TooColdOrHot::Hot
                })
            }
            _ => None,
        }
    }

    /// The whole ladder of a lithium bank, coldest step first, neighbours of the
    /// same current joined; empty for lead.
    pub fn charge_ladder(&self) -> Vec<ChargeStep> {
        let mut rows: Vec<ChargeStep> = Vec::new();
        if self.bank.chemistry != Chemistry::Lfp {
            return rows;
        }
        for step in self.bank.ladder() {
            let amperes = self.at_step_a(step.rate);
            let to_c = step.to_c.is_finite().then_some(step.to_c);
            match rows.last_mut() {
                Some(last) if last.amperes == amperes => last.to_c = to_c,
                _ => {
                    let from_c = rows.last().and_then(|last| last.to_c);
                    rows.push(ChargeStep {
                        from_c,
                        to_c,
                        amperes,
                    });
                }
            }
        }
        rows
    }
}

#[cfg(test)]
mod tests {
    use crate::boat::ladder::{ChargeStep, Inputs, TooColdOrHot};

    fn at(celsius: f64) -> Inputs {
        let mut inputs = Inputs::default();
        inputs.bank.temperature_c = celsius;
        inputs
    }

    #[test]
    fn the_published_ladder() {
        // Telecom battery manual, table 4.3, fast continuous, of 400 A·h that
        // may take 200 A.
        for (celsius, amperes) in [
            (-0.1, 0.0),
            (0.0, 40.0),
            (4.9, 40.0),
            (5.0, 80.0),
            (9.9, 80.0),
            (10.0, 200.0),
            (25.0, 200.0),
            (50.0, 200.0),
            (50.1, 40.0),
            (60.0, 40.0),
            (60.1, 0.0),
        ] {
            let found = at(celsius).charge_limit_a();
            assert!((found - amperes).abs() < 1e-9, "{found} at {celsius}");
        }
        assert_eq!(at(-5.0).charge_barred(), Some(TooColdOrHot::Cold));
        assert_eq!(at(61.0).charge_barred(), Some(TooColdOrHot::Hot));
        assert_eq!(at(3.0).charge_barred(), None);
    }

    #[test]
    fn the_makers_ladder_goes_before_it() {
        let mut inputs = at(-5.0);
        inputs.bank.coldest_charge_c = Some(-10.0);
        inputs.bank.limit_to_5c_a = Some(60.0);
        assert_eq!(inputs.charge_limit_a(), 60.0);
        let row = |from_c, to_c, amperes| ChargeStep {
            from_c,
            to_c,
            amperes,
        };
        assert_eq!(
            inputs.charge_ladder(),
            [
                row(None, Some(-10.0), 0.0),
                row(Some(-10.0), Some(5.0), 60.0),
                row(Some(5.0), Some(10.0), 80.0),
                row(Some(10.0), Some(50.0), 200.0),
                row(Some(50.0), Some(60.0), 40.0),
                row(Some(60.0), None, 0.0),
            ]
        );
        inputs.bank.coldest_charge_c = Some(12.0);
        assert_eq!(
            inputs.charge_ladder()[1],
            row(Some(12.0), Some(50.0), 200.0)
        );
    }

    #[test]
    fn the_banks_own_limit_is_never_passed() {
        let mut inputs = at(7.0);
        inputs.bank.charge_limit_a = Some(30.0);
        assert_eq!(inputs.charge_limit_a(), 30.0);
        assert_eq!(inputs.charge_ladder().len(), 3);
    }
}
