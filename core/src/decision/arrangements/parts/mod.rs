//! What would have to be bought to get from one set of inputs to another, by
//! the user's price list. Whatever is aboard already is not bought again.
//!
//! `alternators` looks at alternators with their regulators, leads, pulleys and
//! belts; `energy` at chargers, panels, bank and loads.

mod alternators;
mod energy;

use serde::Serialize;

use crate::boat::{Inputs, Worksheet};
use crate::units::Quantity;

/// Something that can be bought.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Purchase {
    /// A DC-DC charger, by its output.
    Charger,
    /// An alternator, by its rating.
    Alternator,
    /// Bracket, pulleys and belt of an alternator that was not there before.
    Bracket,
    /// Another pulley with its belt.
    Pulley,
    /// An external regulator with its sensors.
    Regulator,
    /// A data link from the battery to the regulator.
    DataLink,
    /// Cable and fuses of a charge lead.
    ChargeLead,
    /// Protection against a load dump.
    DumpProtection,
    /// A blower, by the air it moves.
    Blower,
    /// A cool-air duct to the alternator.
    Duct,
    /// A generator, by its output.
    Generator,
    /// A mains charger, by its output.
    MainsCharger,
    /// Solar panels, by their power.
    Panels,
    /// A house bank, by its energy.
    Bank,
    /// Lighter loads, by the charge they save a day.
    LighterLoads,
    /// What the price list does not name, and labour.
    Other,
}

/// Something to buy.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Part {
    /// What.
    pub item: Purchase,
    /// How much of it; none for a single piece.
    pub amount: Option<Quantity>,
    /// Its price.
    pub price: f64,
}

/// What is to be bought, for the page and for print.
pub fn parts(now: &Worksheet, with: &Worksheet) -> Vec<Part> {
    let mut list = Vec::new();
    let use_ah = crate::analysis::energy::energy(now).anchor.use_ah;
    each_part(&now.inputs, &with.inputs, use_ah, &mut |part| {
        list.push(part)
    });
    list
}

/// What it all costs; `use_ah` is the day's use before any change \[A·h\].
pub(crate) fn price(now: &Inputs, with: &Inputs, use_ah: f64) -> f64 {
    let mut sum = 0.0;
    each_part(now, with, use_ah, &mut |part| sum += part.price);
    sum
}

/// Where parts go.
type List<'a> = dyn FnMut(Part) + 'a;

/// Goes through what is to be bought. Prices are those of the changed inputs.
fn each_part(old: &Inputs, new: &Inputs, use_ah: f64, list: &mut List) {
    energy::charger(old, new, list);
    alternators::alternators(old, new, list);
    energy::mains(old, new, list);
    energy::air(old, new, list);
    energy::solar_bank_and_loads(old, new, use_ah, list);
    let other = new.price.other - old.price.other;
    if other != 0.0 {
        one(list, Purchase::Other, other);
    }
}

fn one(list: &mut List, item: Purchase, price: f64) {
    list(Part {
        item,
        amount: None,
        price,
    });
}

/// So much more of something at a price for each of its unit; nothing where it
/// is less.
fn more(list: &mut List, item: Purchase, amount: Quantity, each: f64) {
    if amount.value > 1e-9 {
        // Whole figures, tenths for small ones.
        let decimals = if amount.value < 10.0 { 1 } else { 0 };
        list(Part {
            item,
            amount: Some(amount.to(decimals)),
            price: amount.value * each,
        });
    }
}
