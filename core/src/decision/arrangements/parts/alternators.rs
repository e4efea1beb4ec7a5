//! Alternators that were not there before with all that belongs to them, and
//! what changes on those that were.

use crate::boat::{Alternator, Belt, BeltKind, Chemistry, ClampKind, Inputs, RegulatorKind};
use crate::decision::arrangements::parts::{List, Purchase, more, one};
use crate::units::quantity::amperes;

/// An alternator aboard, and what it is connected to.
#[derive(Clone, Copy)]
struct Aboard<'a> {
    alternator: &'a Alternator,
    belt: &'a Belt,
    /// 12 V blocks of the system it is built for.
    blocks: f64,
    /// Whether nobody has said so: then most engines come with one of 12 V.
    voltage_assumed: bool,
    /// Whether its lead goes to the house bank.
    on_bank: bool,
    /// Whether an external regulator holds it.
    regulated: bool,
}

impl Aboard<'_> {
    /// Whether it is the same alternator: rating, mass and voltage, whatever
    /// else is better known about it by now.
    fn same_as(&self, other: &Aboard) -> bool {
        self.alternator.rated_a == other.alternator.rated_a
            && self.alternator.mass_kg == other.alternator.mass_kg
            && (self.blocks == other.blocks || self.voltage_assumed && other.blocks == 1.0)
    }

    fn same_pulley(&self, other: &Aboard) -> bool {
        let (one, two) = (self.belt.kind, other.belt.kind);
        let same_belt = one == two || one == BeltKind::Unsaid || two == BeltKind::Unsaid;
        self.alternator.pulley_ratio == other.alternator.pulley_ratio && same_belt
    }
}

fn aboard(inputs: &Inputs) -> Vec<Aboard<'_>> {
    let external = inputs.reg.kind == RegulatorKind::External;
    let alternators = inputs.alternators();
    let aboard = alternators.map(|installed| Aboard {
        alternator: installed.alternator,
        belt: installed.belt,
        blocks: installed.blocks(),
        voltage_assumed: installed.voltage_assumed(),
        on_bank: installed.connection.on_house(),
        regulated: external && installed.connection.charges_house(),
    });
    aboard.collect()
}

/// Which of those that were there each one is; of all ways to match them the
/// first that leaves most as it is.
fn matched(before: &[Aboard], now: &[Aboard]) -> Vec<Option<usize>> {
    let alike = |one: usize, place: usize| match now.get(one).zip(before.get(place)) {
        Some((one, there)) if there.same_as(one) => 1 + i32::from(there.same_pulley(one)),
        _ => 0,
    };
    let worth = |order: &[usize]| -> i32 {
        let pairs = order.iter().enumerate();
        pairs.map(|(one, place)| alike(one, *place)).sum()
    };
    let best = orders(before.len().max(now.len()))
        .into_iter()
        .reduce(|best, other| {
            if worth(&other) > worth(&best) {
                other
            } else {
                best
            }
        })
        .unwrap_or_default();
    let places = best.into_iter().enumerate().take(now.len());
    places
        .map(|(one, place)| (alike(one, place) > 0).then_some(place))
        .collect()
}

/// Every order of so many places, the one that leaves all where they are first.
fn orders(places: usize) -> Vec<Vec<usize>> {
    (0..places).fold(vec![Vec::new()], |orders, _| {
        let longer = |order: Vec<usize>| {
            let left = (0..places).filter(|place| !order.contains(place));
            left.map(|place| [order.as_slice(), &[place]].concat())
                .collect::<Vec<_>>()
        };
        orders.into_iter().flat_map(longer).collect()
    })
}

/// Alternators with brackets, belts, charge leads and regulators, other
/// pulleys, and what protects against a load dump.
pub(super) fn alternators(old: &Inputs, new: &Inputs, list: &mut List) {
    let price = &new.price;
    let (before, now) = (aboard(old), aboard(new));
    let same = matched(&before, &now);
    // External regulators whose alternators go are free for others of their voltage.
    let mut free: Vec<Option<Aboard>> = before.iter().copied().map(Some).collect();
    for place in same.iter().copied().flatten() {
        if let Some(there) = free.get_mut(place) {
            *there = None;
        }
    }
    let (mut leads, mut regulators) = (0, 0);
    for (one_now, place) in now.iter().zip(same) {
        let there = place.and_then(|place| before.get(place));
        match there {
            Some(there) if there.same_pulley(one_now) => {}
            Some(_) => one(list, Purchase::Pulley, price.pulley),
            None => {
                let rated = amperes(one_now.alternator.rated_a);
                let each = price.machine_a * one_now.blocks;
                more(list, Purchase::Alternator, rated, each);
                one(list, Purchase::Bracket, price.fitting);
            }
        }
        leads += i32::from(there.is_none_or(|there| one_now.on_bank && !there.on_bank));
        // One that was given an external regulator has none of its own any more.
        let has_one = there.is_some_and(|there| there.regulated);
        if one_now.regulated && !has_one {
            let spare = free.iter_mut().find(|spare| {
                spare.is_some_and(|spare| spare.regulated && spare.blocks == one_now.blocks)
            });
            match spare {
                Some(spare) => *spare = None,
                None => regulators += 1,
            }
        }
    }
    if new.engine_charges() {
        for _ in 0..regulators {
            one(list, Purchase::Regulator, price.regulator);
        }
        for _ in 0..leads {
            one(list, Purchase::ChargeLead, price.cable);
        }
        if new.link().sends_limits() && !old.link().sends_limits() {
            one(list, Purchase::DataLink, price.link);
        }
        if clamped(new) && !clamped(old) {
            one(list, Purchase::DumpProtection, price.guard);
        }
    }
}

/// Whether a surge suppressor of its own protects a lithium bank's charge lead.
fn clamped(inputs: &Inputs) -> bool {
    inputs.on_house()
        && inputs.bank.chemistry == Chemistry::Lfp
        && inputs.guard.clamp == ClampKind::Clamp
}
