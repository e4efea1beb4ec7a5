//! What would have to be bought to get from one set of inputs to another, by
//! the user's price list. Whatever is aboard already is not bought again.
//!
//! `alternators` looks at alternators with their regulators, leads, pulleys and
//! belts; `energy` at chargers, panels, bank and loads.

mod alternators;
mod energy;

use serde::Serialize;

use crate::boat::{Inputs, Worksheet};

/// Something to buy.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Part {
    /// What and how much of it.
    pub what: String,
    /// Its price.
    pub price: f64,
}

/// What is to be bought, for the page and for print.
pub fn parts(now: &Worksheet, with: &Worksheet) -> Vec<Part> {
    let mut list = Vec::new();
    let use_ah = crate::analysis::energy::energy(now).anchor.use_ah;
    each_part(&now.inputs, &with.inputs, use_ah, &mut |item| {
        list.push(Part {
            what: item.words(),
            price: item.price,
        });
    });
    list
}

/// What it all costs; `use_ah` is the day's use before any change \[A·h\].
pub(crate) fn price(now: &Inputs, with: &Inputs, use_ah: f64) -> f64 {
    let mut sum = 0.0;
    each_part(now, with, use_ah, &mut |item| sum += item.price);
    sum
}

/// Something to buy, before it is put into words.
struct Item {
    what: &'static str,
    amount: Option<(f64, &'static str)>,
    price: f64,
}

impl Item {
    /// "Panels, 300 W": whole figures, tenths for small ones.
    fn words(&self) -> String {
        match self.amount {
            None => self.what.to_string(),
            Some((amount, unit)) => {
                let digits = if amount < 10.0 { 1 } else { 0 };
                format!("{}, {amount:.digits$} {unit}", self.what)
            }
        }
    }
}

/// Where items go.
type List<'a> = dyn FnMut(Item) + 'a;

/// Goes through what is to be bought. Prices are those of the changed inputs.
fn each_part(old: &Inputs, new: &Inputs, use_ah: f64, list: &mut List) {
    energy::charger(old, new, list);
    alternators::alternators(old, new, list);
    energy::air(old, new, list);
    energy::solar_bank_and_loads(old, new, use_ah, list);
    let other = new.price.other - old.price.other;
    if other != 0.0 {
        one(list, "Other parts and labour", other);
    }
}

fn one(list: &mut List, what: &'static str, price: f64) {
    list(Item {
        what,
        amount: None,
        price,
    });
}

/// So much more of something at a price for each; nothing where it is less.
fn more(list: &mut List, what: &'static str, amount: f64, unit: &'static str, each: f64) {
    if amount > 1e-9 {
        list(Item {
            what,
            amount: Some((amount, unit)),
            price: amount * each,
        });
    }
}
