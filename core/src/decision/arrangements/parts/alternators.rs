//! Alternators that were not there before with all that belongs to them, and
//! what changes on those that were.

use crate::boat::{
    Alternator, Belt, BeltKind, Chemistry, ClampKind, Inputs, RegulatorKind, SecondRole, WayKind,
};
use crate::decision::arrangements::parts::{List, Purchase, more, one};
use crate::units::quantity::amperes;

/// An alternator aboard, and what it is connected to.
#[derive(Clone, Copy)]
struct Aboard<'a> {
    alternator: &'a Alternator,
    belt: &'a Belt,
    /// 12 V blocks of the system it is built for.
    blocks: f64,
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
            && self.blocks == other.blocks
    }

    fn same_pulley(&self, other: &Aboard) -> bool {
        let (one, two) = (self.belt.kind, other.belt.kind);
        let same_belt = one == two || one == BeltKind::Unsaid || two == BeltKind::Unsaid;
        self.alternator.pulley_ratio == other.alternator.pulley_ratio && same_belt
    }
}

/// One or two alternators.
type Pair<'a> = [Option<Aboard<'a>>; 2];

fn aboard(inputs: &Inputs) -> Pair<'_> {
    let external = inputs.reg.kind == RegulatorKind::External;
    let first = Aboard {
        alternator: &inputs.alt,
        belt: &inputs.belt,
        blocks: inputs.alternator_blocks(),
        on_bank: inputs.way.kind == WayKind::Direct,
        regulated: external,
    };
    let on_bank = inputs.two.role == SecondRole::House;
    let second = inputs.as_second().map(|seen| Aboard {
        alternator: &inputs.alt2,
        belt: &inputs.belt2,
        blocks: seen.alternator_blocks(),
        on_bank,
        regulated: external && on_bank,
    });
    [Some(first), second]
}

/// Which of those that were there each one is; of two ways to match them the
/// one that leaves more as it is.
fn matched(before: &Pair, now: &Pair) -> [Option<usize>; 2] {
    let alike = |one: usize, place: usize| {
        let pair = now.get(one).zip(before.get(place));
        match pair {
            Some((Some(one), Some(there))) if there.same_as(one) => {
                1 + i32::from(there.same_pulley(one))
            }
            _ => 0,
        }
    };
    let straight = alike(0, 0) + alike(1, 1);
    let crossed = alike(0, 1) + alike(1, 0);
    let places = if crossed > straight { [1, 0] } else { [0, 1] };
    let [first, second] = places;
    [
        (alike(0, first) > 0).then_some(first),
        (alike(1, second) > 0).then_some(second),
    ]
}

/// Alternators with brackets, belts, charge leads and regulators, other
/// pulleys, and what protects against a load dump.
pub(super) fn alternators(old: &Inputs, new: &Inputs, list: &mut List) {
    let price = &new.price;
    let (before, now) = (aboard(old), aboard(new));
    let same = matched(&before, &now);
    // External regulators whose alternators go are free for others of their voltage.
    let mut free: Pair = before;
    for place in same.into_iter().flatten() {
        if let Some(there) = free.get_mut(place) {
            *there = None;
        }
    }
    let (mut leads, mut regulators) = (0, 0);
    for (one_now, place) in now.iter().zip(same) {
        let Some(one_now) = one_now else { continue };
        let there = place.and_then(|place| before.get(place).copied().flatten());
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
