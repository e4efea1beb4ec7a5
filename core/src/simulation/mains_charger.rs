//! A charger on the mains, those of the dock or of a generator: what it gives, and
//! how it tapers as the bank fills.

use crate::boat::Inputs;
use crate::physics::battery::Bank;

/// Steps from one state of charge to another.
const STEPS: u32 = 400;

/// A charger on the mains and the bank it fills.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct MainsCharger {
    bank: Bank,
    /// Most it gives bank and loads together \[A\].
    most_a: f64,
    /// Most the bank may take \[A\].
    limit_a: f64,
    /// Voltage it holds at the bank \[V\].
    held_v: f64,
    /// From the energy of the mains to that at the bank, 0 to 1.
    efficiency: f64,
}

/// A charge from one state of charge to another.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Fill {
    /// How long it takes \[h\].
    pub hours: f64,
    /// Voltage at the bank, the mean over the ampere-hours \[V\].
    pub mean_v: f64,
    /// Taken from the mains for bank and loads \[kW·h\].
    pub mains_kwh: f64,
}

impl MainsCharger {
    /// The charger of a worksheet on shore power.
    pub fn on_shore(inputs: &Inputs) -> MainsCharger {
        MainsCharger::of(inputs, inputs.shore.charger_a)
    }

    /// The charger of a worksheet on its generator, which gives no more than that
    /// can for hours on end.
    pub fn on_generator(inputs: &Inputs) -> MainsCharger {
        let charger_a = inputs.generator_charger_a();
        let part = inputs.generator_kw() / inputs.mains_charger_kw(charger_a);
        MainsCharger::of(inputs, charger_a * part.min(1.0))
    }

    /// A charger that gives up to `most_a` \[A\]. It holds the bank's charge voltage, compensated for
    /// temperature, as a charger set for that bank does.
    fn of(inputs: &Inputs, most_a: f64) -> MainsCharger {
        MainsCharger {
            bank: inputs.house_bank(),
            most_a,
            limit_a: inputs.charge_limit_a(),
            held_v: inputs.charge_v() + inputs.compensation_v(),
            efficiency: inputs.shore.efficiency_pct / 100.0,
        }
    }

    /// Most it gives bank and loads together \[A\].
    pub fn most_a(&self) -> f64 {
        self.most_a
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

    /// What it draws from the mains for a current onto the house side at a
    /// voltage \[W\].
    pub fn mains_w(&self, given_a: f64, volts: f64) -> f64 {
        given_a * volts / self.efficiency
    }

    /// Charges from one state of charge to another, 0 to 1, the loads drawing
    /// `load_a` \[A\] meanwhile, in small steps of charge; none when it does not
    /// get there.
    pub fn fill(&self, from: f64, to: f64, load_a: f64) -> Option<Fill> {
        let step = (to - from).max(0.0) / f64::from(STEPS);
        let capacity_ah = self.bank.capacity_ah;
        let (mut hours, mut volts, mut mains_kwh) = (0.0, 0.0, 0.0);
        for at in 0..STEPS {
            let soc = from + step * (f64::from(at) + 0.5);
            let bank_a = self.given_a(soc, load_a) - load_a;
            if bank_a <= 0.0 {
                return None;
            }
            let step_h = step * capacity_ah / (bank_a * self.bank.charge_efficiency);
            let step_v = self.volts(soc, bank_a);
            hours += step_h;
            volts += step_v;
            mains_kwh += self.mains_w(bank_a + load_a, step_v) * step_h / 1000.0;
        }
        Some(Fill {
            hours,
            mean_v: volts / f64::from(STEPS),
            mains_kwh,
        })
    }
}
