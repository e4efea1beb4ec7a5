//! A generator with a mains charger, to charge in place of the engine.

use crate::boat::{Inputs, Rest};
use crate::boat::{number, optional, section};
use crate::physics::generator::{charger_takes_kw, usual_full_l_h};
use crate::schema::effects;
use crate::units::{AMPERE, HOUR, KILOWATT, LITRE_PER_HOUR, MONEY_PER_HOUR};

section! {
    /// A generator with a mains charger.
    Generator {
        kw: Option<f64> = optional("Generator's output", KILOWATT, 0.3, 100.0, "none aboard; in a comparison one that suits its charger", |w| w.inputs.has_generator().then(|| w.inputs.generator_kw())).nameplate()
            .help("What it gives for hours on end, from its plate; less than its peak.");
        charger_a: Option<f64> = optional("Mains charger on it", AMPERE, 1.0, 1000.0, "the charger on shore power", |w| Some(w.inputs.shore.charger_a)).nameplate()
            .help("Most it gives house bank and loads together, in amperes at the bank. Left empty, the generator feeds the charger that shore power does.")
            .when(Inputs::has_generator);
        full_l_h: Option<f64> = optional("Fuel at full output", LITRE_PER_HOUR, 0.05, 40.0, "0.33 L for each kW·h", |w| Some(w.inputs.generator_full_l_h())).nameplate().spread_pct(20.0)
            .help("Litres an hour in its papers. A quarter of it goes into turning the generator, whatever it gives, so that it burns most for each kW·h at light load.")
            .when(Inputs::has_generator);
        wear_h: f64 = number("Service and wear, an hour", MONEY_PER_HOUR, 0.0, 1.0e5, 1.5)
            .help("Oil, filters, impellers and its part of a new one, for each hour it runs.")
            .when(Inputs::has_generator);
        hours_day: f64 = number("May run a day", HOUR, 0.0, 24.0, 24.0)
            .decided()
            .help("As long as you and your neighbours put up with its noise. The quiet hours of the start/stop rule hold for it too.")
            .when(Inputs::has_generator);
    }
}

effects! {
    Generator: no effect
}

/// A generator is usually chosen so that its charger takes this part of it:
/// common practice, no source.
const USUAL_LOAD: f64 = 0.75;
/// The smallest that is usually fitted \[kW\]: common practice, no source.
const LEAST_KW: f64 = 2.0;
/// Volts while charging, for each 12 V block: common practice.
const CHARGING_BLOCK_V: f64 = 14.0;

impl Inputs {
    /// Whether a generator is aboard, or is to charge the bank.
    pub fn has_generator(&self) -> bool {
        self.genset.kw.is_some() || self.generator_charges()
    }

    /// Whether a generator puts back what the sun does not.
    pub fn generator_charges(&self) -> bool {
        self.shore.rest == Rest::Generator
    }

    /// Most that the charger on the generator gives \[A\].
    pub fn generator_charger_a(&self) -> f64 {
        self.genset.charger_a.unwrap_or(self.shore.charger_a)
    }

    /// What a charger of so many amperes takes from the mains at most \[kW\].
    pub fn mains_charger_kw(&self, charger_a: f64) -> f64 {
        let volts = CHARGING_BLOCK_V * self.bank.nominal_v.blocks();
        charger_takes_kw(charger_a, volts, self.shore.efficiency_pct / 100.0)
    }

    /// What the generator gives for hours on end \[kW\]: as stated, or the next
    /// half kilowatt above what suits its charger.
    pub fn generator_kw(&self) -> f64 {
        self.genset.kw.unwrap_or_else(|| {
            let wanted_kw = self.mains_charger_kw(self.generator_charger_a()) / USUAL_LOAD;
            ((2.0 * wanted_kw).ceil() / 2.0).max(LEAST_KW)
        })
    }

    /// Fuel at full output \[L/h\].
    pub fn generator_full_l_h(&self) -> f64 {
        let usual = || usual_full_l_h(self.generator_kw());
        self.genset.full_l_h.unwrap_or_else(usual)
    }
}

#[cfg(test)]
mod tests {
    use crate::boat::{Inputs, NominalVolts};

    /// 80 A × 14 V / 0.88 is 1.27 kW; over 0.75 1.70 kW, so the smallest of 2 kW.
    /// At 48 V it is four times as much: 6.79 kW, up to 7.
    #[test]
    fn a_generator_that_nobody_stated_suits_its_charger() {
        let mut inputs = Inputs::default();
        inputs.genset.charger_a = Some(80.0);
        assert_eq!(inputs.generator_kw(), 2.0);
        inputs.bank.nominal_v = NominalVolts::V48;
        assert_eq!(inputs.generator_kw(), 7.0);
        assert!((inputs.generator_full_l_h() - 2.29).abs() < 0.01);
    }
}
