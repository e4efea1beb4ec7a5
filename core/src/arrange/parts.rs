//! What would have to be bought to get from one set of inputs to another, by
//! the user's price list.

use serde::Serialize;

use crate::energy::energy;
use crate::worksheet::{Alternator, Inputs, RegulatorKind, SecondRole, WayKind, Worksheet};

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
    each_part(
        &now.inputs,
        &with.inputs,
        energy(now).anchor.use_ah,
        &mut |item| {
            let what = match item.amount {
                None => item.what.to_string(),
                // Whole figures, tenths for small ones.
                Some((amount, unit)) => {
                    let digits = if amount < 10.0 { 1 } else { 0 };
                    format!("{}, {amount:.digits$} {unit}", item.what)
                }
            };
            list.push(Part {
                what,
                price: item.price,
            });
        },
    );
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

/// A small converter keeps a start battery \[A\]: common practice.
const BACK_A: f64 = 20.0;

/// Where items go.
type List<'a> = dyn FnMut(Item) + 'a;

/// Goes through what is to be bought. Prices are those of the changed inputs.
fn each_part(old: &Inputs, new: &Inputs, use_ah: f64, list: &mut List) {
    let price = &new.price;
    converter(old, new, list);
    let external = |inputs: &Inputs| inputs.reg.kind == RegulatorKind::External;
    if external(new) && !external(old) {
        one(list, "External regulator with sensors", price.regulator);
    }
    machines(old, new, list);
    if new.straight_into_house() && !old.straight_into_house() {
        one(list, "Cable and fuses of the charge lead", price.cable);
        one(list, "Defences against a disconnect", price.guard);
    }
    let blower_m3h = new.space.blower_m3h - old.space.blower_m3h;
    more(list, "Blower", blower_m3h, "m³/h", price.blower_m3h / 100.0);
    if new.space.cold_air_pct > old.space.cold_air_pct {
        one(list, "Cold-air hose to the machine", price.duct);
    }
    let panel_w = new.sun.panel_w - old.sun.panel_w;
    more(list, "Panels", panel_w, "W", price.panel_w);
    let bank_kwh = if new.bank.chemistry == old.bank.chemistry {
        new.bank_kwh() - old.bank_kwh()
    } else {
        new.bank_kwh()
    };
    more(list, "House bank", bank_kwh, "kW·h", price.bank_kwh);
    let kept = |inputs: &Inputs| 1.0 - inputs.daily.saved_pct / 100.0;
    let saved_ah = use_ah * (1.0 - kept(new) / kept(old));
    more(
        list,
        "Lighter loads",
        saved_ah,
        "A·h a day saved",
        price.saved_ah,
    );
    let other = price.other - old.price.other;
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

fn more(list: &mut List, what: &'static str, amount: f64, unit: &'static str, each: f64) {
    if amount > 1e-9 {
        list(Item {
            what,
            amount: Some((amount, unit)),
            price: amount * each,
        });
    }
}

/// A converter is bought where there was none or a smaller one; one that is
/// there is turned round for nothing.
fn converter(old: &Inputs, new: &Inputs, list: &mut List) {
    let there_a = match old.way.kind {
        WayKind::Converter => old.way.converter_a,
        WayKind::Direct if old.feeds_start_back() => BACK_A,
        WayKind::Direct => 0.0,
    };
    let wanted_a = match new.way.kind {
        _ if !new.engine_charges() => 0.0,
        WayKind::Converter => new.way.converter_a,
        WayKind::Direct if new.feeds_start_back() => BACK_A,
        WayKind::Direct => 0.0,
    };
    more(
        list,
        "DC-DC converter",
        wanted_a - there_a,
        "A",
        new.price.converter_a,
    );
}

/// Machines that were not there before, and other pulleys of those that were.
fn machines(old: &Inputs, new: &Inputs, list: &mut List) {
    let there = aboard(old);
    for machine in aboard(new).into_iter().flatten() {
        let alike = || there.iter().flatten().filter(|b| same_machine(b, machine));
        // Of two alike the one with this pulley.
        let as_it_is = alike().any(|before| before.pulley_ratio == machine.pulley_ratio);
        match alike().next() {
            Some(_) if as_it_is => {}
            Some(_) => one(list, "Another pulley", new.price.pulley),
            None => {
                more(
                    list,
                    "Alternator",
                    machine.rated_a,
                    "A",
                    new.price.machine_a,
                );
                one(list, "Bracket, pulleys and belt", new.price.fitting);
            }
        }
    }
}

fn aboard(inputs: &Inputs) -> [Option<&Alternator>; 2] {
    let second = inputs.two.role != SecondRole::None;
    [Some(&inputs.alt), second.then_some(&inputs.alt2)]
}

/// Whether it is the same machine: rating and mass, whatever else is better
/// known about it by now.
fn same_machine(one: &Alternator, other: &Alternator) -> bool {
    one.rated_a == other.rated_a && one.mass_kg == other.mass_kg
}
