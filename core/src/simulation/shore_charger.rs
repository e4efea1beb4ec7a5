//! A charger on shore power: what it gives, and how it tapers as the bank fills.

use crate::boat::Inputs;
use crate::physics::battery::Bank;

/// Steps from one state of charge to another.
const STEPS: u32 = 400;

/// A charger on shore power and the bank it fills.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ShoreCharger {
    bank: Bank,
    /// Most it gives bank and loads together \[A\].
    most_a: f64,
    /// Most the bank may take \[A\].
    limit_a: f64,
    /// Voltage it holds at the bank \[V\].
    held_v: f64,
    /// From the shore's energy to that at the bank, 0 to 1.
    efficiency: f64,
}

/// A charge from one state of charge to another.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Fill {
    /// How long it takes \[h\].
    pub hours: f64,
    /// Voltage at the bank, the mean over the ampere-hours \[V\].
    pub mean_v: f64,
}

impl ShoreCharger {
    /// The charger of a worksheet. It holds the bank's charge voltage,
    /// compensated for temperature, as a charger set for that bank does.
    pub fn of(inputs: &Inputs) -> ShoreCharger {
        ShoreCharger {
            bank: inputs.house_bank(),
            most_a: inputs.shore.charger_a,
            limit_a: inputs.charge_limit_a(),
            held_v: inputs.charge_v() + inputs.compensation_v(),
            efficiency: inputs.shore.efficiency_pct / 100.0,
        }
    }

    /// What the bank takes at a state of charge, 0 to 1, however large the
    /// charger \[A\]: the lesser of its charge limit and what its charge voltage
    /// drives into it, (V_charge − V_rest)/R.
    fn accepted_a(&self, soc: f64) -> f64 {
        let driven_a = (self.held_v - self.bank.rest_v(soc)) / self.bank.resistance_ohm(soc);
        driven_a.min(self.limit_a).max(0.0)
    }

    /// What it gives the house side at a state of charge while the loads draw
    /// `load_a` \[A\].
    pub fn given_a(&self, soc: f64, load_a: f64) -> f64 {
        self.most_a.min(load_a + self.accepted_a(soc))
    }

    /// Voltage at the bank at a state of charge for a current into it \[V\].
    pub fn volts(&self, soc: f64, bank_a: f64) -> f64 {
        self.bank.rest_v(soc) + bank_a.max(0.0) * self.bank.resistance_ohm(soc)
    }

    /// What it draws from the shore for a current onto the house side at a
    /// voltage \[W\].
    pub fn shore_w(&self, given_a: f64, volts: f64) -> f64 {
        given_a * volts / self.efficiency
    }

    /// Charges from one state of charge to another, 0 to 1, the loads drawing
    /// `load_a` \[A\] meanwhile, in small steps of charge; none when it does not
    /// get there.
    pub fn fill(&self, from: f64, to: f64, load_a: f64) -> Option<Fill> {
        let step = (to - from).max(0.0) / f64::from(STEPS);
        let capacity_ah = self.bank.capacity_ah;
        let (mut hours, mut volts) = (0.0, 0.0);
        for at in 0..STEPS {
            let soc = from + step * (f64::from(at) + 0.5);
            let bank_a = self.given_a(soc, load_a) - load_a;
            if bank_a <= 0.0 {
                return None;
            }
            hours += step * capacity_ah / (bank_a * self.bank.charge_efficiency);
            volts += self.volts(soc, bank_a);
        }
        Some(Fill {
            hours,
            mean_v: volts / f64::from(STEPS),
        })
    }
}
