//! What an hour of engine and a kilowatt-hour cost.

use crate::boat::section;
use crate::boat::{Chemistry, Inputs};
use crate::boat::{choose, number, optional};
use crate::physics::ageing::{bank_years, cycle_years};
use crate::schema::{choice, effects};
use crate::units::{
    CYCLE, DAY, HOUR, MONEY, MONEY_PER_KILOWATT_HOUR, MONEY_PER_LITRE, PERCENT, YEAR,
};

choice! {
    /// How amounts are written.
    Currency {
        Plain = "none", "no currency";
        Euro = "eur", "€";
        Dollar = "usd", "$";
        Pound = "gbp", "£";
        Crown = "kr", "kr";
        Franc = "fr", "Fr";
        Zloty = "pln", "zł";
        Yen = "jpy", "¥";
    }
}

impl Currency {
    /// The sign that stands before an amount; none where no currency is named.
    pub fn sign(self) -> Option<&'static str> {
        match self {
            Currency::Plain => None,
            _ => Currency::OPTIONS
                .get(self as usize)
                .map(|option| option.label),
        }
    }
}

section! {
    /// Money.
    Cost {
        currency: Currency = choose("Currency", Currency::OPTIONS, 1)
            .help("Only a sign before the figures; nothing is converted. Every price here is a round figure of our own: put in yours.");
        days: f64 = number("Days aboard a year", DAY, 1.0, 366.0, 180.0)
            .help("Days you live aboard. They are spread evenly over the months, unless the table of months says how many fall in which.");
        fuel_l: f64 = number("Fuel", MONEY_PER_LITRE, 0.0, 1.0e5, 1.8).measured()
            .help("What you pay for diesel.");
        service: f64 = number("A service of the engine", MONEY, 0.0, 1.0e7, 150.0)
            .help("Oil, filters and what goes with them, at one service.");
        service_h: f64 = number("A service every", HOUR, 10.0, 5000.0, 150.0).nameplate()
            .help("In the engine's papers: 100 to 250 h (common practice).");
        overhaul: f64 = number("An overhaul or new engine", MONEY, 0.0, 1.0e8, 8000.0)
            .help("The hours it runs wear it out; this is the price of making it as new.");
        overhaul_h: f64 = number("An overhaul after", HOUR, 100.0, 50_000.0, 6000.0)
            .help("4000 to 8000 h for a small diesel (common practice).");
        bank: Option<f64> = optional("The bank, new", MONEY, 0.0, 1.0e8, "its kilowatt-hours at the list's price", |w| Some(w.inputs.usual_bank_price()))
            .help("Every cycle uses up some of its life.");
        cycles: Option<f64> = optional("Full cycles in its life", CYCLE, 10.0, 20_000.0, "3000 for lithium, 500 for lead", |w| Some(usual_cycles(&w.inputs))).nameplate()
            .help("2000 to 5000 for lithium iron phosphate, 200 to 800 for lead emptied by half (common practice).");
        calendar_years: Option<f64> = optional("Years in its life", YEAR, 1.0, 100.0, "15 for lithium, 6 for lead", |w| Some(w.inputs.calendar_years())).nameplate()
            .help("However little it is used: 10 to 20 for lithium iron phosphate, 4 to 8 for lead (common practice). A bank lasts until its cycles or its years are over, whichever is first.");
        shore_kwh: f64 = number("Shore power", MONEY_PER_KILOWATT_HOUR, 0.0, 1000.0, 0.4)
            .help("A kilowatt-hour at the dock.");
        interest_pct: f64 = number("Interest", PERCENT, 0.0, 100.0, 5.0)
            .help("A year, on money put into the boat.");
        years: f64 = number("Parts last", YEAR, 1.0, 50.0, 10.0)
            .help("Years over which a purchase is paid off.");
    }
}

effects! {
    Cost: no effect
}

/// Full cycles to the end of a bank's life: common practice, no source.
fn usual_cycles(inputs: &Inputs) -> f64 {
    match inputs.bank.chemistry {
        Chemistry::Lfp => 3000.0,
        Chemistry::Agm | Chemistry::Gel | Chemistry::Flooded => 500.0,
    }
}

impl Inputs {
    /// Full cycles to the end of the bank's life.
    pub fn bank_cycles(&self) -> f64 {
        self.cost.cycles.unwrap_or_else(|| usual_cycles(self))
    }

    /// Years to the end of the bank's life, however little it is used: common
    /// practice, no source.
    pub fn calendar_years(&self) -> f64 {
        self.cost
            .calendar_years
            .unwrap_or(match self.bank.chemistry {
                Chemistry::Lfp => 15.0,
                Chemistry::Agm | Chemistry::Gel | Chemistry::Flooded => 6.0,
            })
    }

    /// Years that the bank lasts with so much used a year \[A·h\]: by cycles or by
    /// the calendar, whichever ends first.
    pub fn bank_years(&self, use_ah: f64) -> f64 {
        let by_cycles = cycle_years(self.bank_cycles(), self.bank.capacity_ah, use_ah);
        bank_years(by_cycles, self.calendar_years())
    }

    /// Energy the bank holds as its label says \[kWh\]: 12 V for each block of
    /// lead, 12.8 V for each four cells of lithium iron phosphate.
    pub fn bank_kwh(&self) -> f64 {
        let block_v = if self.bank.chemistry == Chemistry::Lfp {
            12.8
        } else {
            12.0
        };
        self.bank.capacity_ah * block_v * self.bank.nominal_v.blocks() / 1000.0
    }

    /// Price of the bank at the list's price, lead at half of lithium's.
    fn usual_bank_price(&self) -> f64 {
        let part = if self.bank.chemistry == Chemistry::Lfp {
            1.0
        } else {
            0.5
        };
        part * self.price.bank_kwh * self.bank_kwh()
    }

    /// Price of the bank.
    pub fn bank_price(&self) -> f64 {
        self.cost.bank.unwrap_or_else(|| self.usual_bank_price())
    }
}
