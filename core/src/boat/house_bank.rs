//! The house bank as it is: of some age, at some temperature, in some condition.

use crate::boat::bank::usual_charge_efficiency_pct;
use crate::boat::{Chemistry, Inputs};
use crate::physics::ageing::{aged_ah, aged_ohm_ah};
use crate::physics::battery::{Bank as PhysicalBank, Cells, LeadKind, lfp_cold_factor};
use crate::physics::charging::{lithium_ohm, ohm, peukert_share};

impl Inputs {
    /// Part of its capacity that the bank loses a year \[%\]: common practice, no
    /// source.
    pub fn fade_pct(&self) -> f64 {
        self.bank.fade_pct.unwrap_or(match self.bank.chemistry {
            Chemistry::Lfp => 2.0,
            Chemistry::Agm | Chemistry::Gel | Chemistry::Flooded => 5.0,
        })
    }

    /// Capacity at the bank's age \[A·h\].
    pub fn bank_ah(&self) -> f64 {
        let fade = self.fade_pct() / 100.0;
        aged_ah(self.bank.capacity_ah, fade, self.bank.age_years)
    }

    /// Part of its capacity the bank gives at a steady draw \[A\]: lead gives
    /// less than its 20-hour rating to a harder draw, by Peukert's law. A
    /// gentler one is not credited with more.
    pub fn given_share(&self, draw_a: f64) -> f64 {
        match self.bank.chemistry.lead() {
            Some(lead) if draw_a > 0.0 => peukert_share(draw_a, self.bank_ah(), lead.peukert),
            _ => 1.0,
        }
    }

    /// The cells of a lead bank in the condition and at the temperature they are;
    /// none for lithium.
    pub(crate) fn lead_cells(&self) -> Option<LeadKind> {
        let kind = self.bank.chemistry.lead()?;
        let kind = kind.of_condition(self.bank.acceptance_pct / 100.0);
        Some(kind.at_temperature(self.bank.temperature_c))
    }

    /// The bank for the physics.
    pub fn house_bank(&self) -> PhysicalBank {
        let blocks = self.bank.nominal_v.blocks();
        let rise = self.bank.rise_pct / 100.0;
        let ohm_ah = aged_ohm_ah(self.bank.resistance_ohm_ah, rise, self.bank.age_years);
        PhysicalBank {
            blocks,
            capacity_ah: self.bank_ah(),
            cells: match self.lead_cells() {
                Some(kind) => Cells::Lead(kind),
                None => Cells::Lfp(lithium_ohm(
                    ohm_ah,
                    blocks,
                    self.bank.capacity_ah,
                    lfp_cold_factor(self.bank.temperature_c),
                )),
            },
            harness_ohm: ohm(self.bank.harness_mohm),
            compensation_v: self.lead_shift_v(),
            charge_efficiency: self
                .bank
                .charge_efficiency_pct
                .unwrap_or_else(|| usual_charge_efficiency_pct(self))
                / 100.0,
            temperature_c: self.bank.temperature_c,
        }
    }
}

#[cfg(test)]
mod tests {
    use std::f64::consts::FRAC_1_SQRT_2;

    use crate::boat::{Chemistry, Inputs};

    #[test]
    fn a_hard_draw_gets_less_out_of_lead() {
        // By hand: 100 A·h over 20 h, k = 1.25, 20 A: 20 h/4^1.25 is 3.5355 h,
        // that is 4^−0.25 of the rating.
        let mut inputs = Inputs::default();
        inputs.bank.capacity_ah = 100.0;
        assert_eq!(inputs.given_share(20.0), 1.0);
        inputs.bank.chemistry = Chemistry::Flooded;
        assert!((inputs.given_share(20.0) - FRAC_1_SQRT_2).abs() < 1e-9);
        assert_eq!(inputs.given_share(2.0), 1.0);
    }
}
