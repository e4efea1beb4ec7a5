//! Battery packs in parallel, each with a management system of its own: how they
//! share a current, and what the others get when one of them opens.

use crate::formula::formula;
use crate::physics::sources;

/// One moment of packs that open in turn.
#[derive(Debug, Clone, Copy, PartialEq, serde::Serialize)]
pub struct PackStep {
    /// Packs still connected.
    pub left: usize,
    /// What the one of them with the least resistance gets \[A\].
    pub most_a: f64,
}

/// Resistance of each of several packs with its leads over the middle one, the
/// least first: spread evenly, so that the last lies above the first by `spread`
/// (0 to 1) of the middle. Own reasoning.
fn resistances(packs: usize, spread: f64) -> impl DoubleEndedIterator<Item = f64> {
    (0..packs).map(move |at| relative_ohm(at as f64, packs as f64, spread))
}

/// Resistance of one of `packs` packs (two or more) over that of the middle one, by its
/// `number` from 0: they are spread evenly, so that the last lies above the first by
/// `spread` (0 to 1) of the middle.
#[formula(symbol = "r", unit = "", source = sources::OWN_REASONING)]
pub fn relative_ohm(
    #[symbol("k")] number: f64,
    #[symbol("N")] packs: f64,
    #[symbol("s")] spread: f64,
) -> f64 {
    1.0 + spread * (number - 0.5 * (packs - 1.0)) / (packs - 1.0).max(1.0)
}

/// Part of a current that a pack takes \[%\], by its resistance over the middle one
/// and the sum of all packs' conductances over that of the middle one: Ohm's law.
#[formula(symbol = "p", unit = "%", source = sources::OHM)]
pub fn pack_share_pct(#[symbol("r")] relative_ohm: f64, #[symbol("G")] conductances: f64) -> f64 {
    100.0 * (1.0 / relative_ohm / conductances)
}

/// Sum of the conductances of several packs over that of the middle one.
pub fn conductances(packs: usize, spread: f64) -> f64 {
    resistances(packs, spread).map(|ohm| 1.0 / ohm).sum()
}

/// Sum of the limits of `packs` equal packs \[A\].
#[formula(symbol = "I_all", unit = "A", source = sources::ARITHMETIC)]
pub fn limits_a(#[symbol("N")] packs: f64, #[symbol("I_pack")] limit_a: f64) -> f64 {
    limit_a * packs
}

/// What several packs may take together before the first one is at its limit \[A\]:
/// that of one pack over its part, 0 to 1.
#[formula(symbol = "I_together", unit = "A", source = sources::ARITHMETIC)]
pub fn together_a(#[symbol("I_pack")] limit_a: f64, #[symbol("p")] most_share: f64) -> f64 {
    limit_a / most_share
}

/// A pack's part of a current \[A\]; the part from 0 to 1.
#[formula(symbol = "I_p", unit = "A", source = sources::ARITHMETIC)]
pub fn pack_a(#[symbol("I")] amperes: f64, #[symbol("p")] share: f64) -> f64 {
    amperes * share
}

/// What all packs but one give of a current \[A\]; that one's part from 0 to 1.
#[formula(symbol = "I_others", unit = "A", source = sources::ARITHMETIC)]
pub fn other_packs_a(#[symbol("I")] amperes: f64, #[symbol("p")] share: f64) -> f64 {
    amperes * (1.0 - share)
}

/// Part of a current that each of several packs in parallel takes, 0 to 1, the
/// largest first: they share it as their conductances do (Ohm's law). All of it
/// for a single pack.
pub fn pack_shares(packs: usize, spread: f64) -> Vec<f64> {
    let whole = conductances(packs, spread);
    resistances(packs, spread)
        .map(|ohm| 1.0 / ohm / whole)
        .collect()
}

/// What packs in parallel may take together before the first of them is at its
/// limit, of the sum of their limits, 0 to 1; just 1 for a single pack.
pub fn shared_part(packs: usize, spread: f64) -> f64 {
    match pack_shares(packs, spread).first() {
        Some(most) if packs > 1 => 1.0 / (packs as f64 * most),
        _ => 1.0,
    }
}

/// What several packs still may take once one of them has opened, of what they may
/// take together, 0 to 1; nothing is left of a single one.
pub fn one_out_part(packs: usize, spread: f64) -> f64 {
    let shares = pack_shares(packs, spread);
    let [first, next, ..] = shares.as_slice() else {
        return 0.0;
    };
    // The second one takes this of what the rest share.
    first / (next / (1.0 - first))
}

/// What follows when one of several packs opens while a current \[A\] flows that
/// nothing lowers: the pack with the least resistance goes first, the others take
/// its share, and each that gets more than it bears \[A\] opens in turn. One entry
/// for each time that packs are left; the last one holds, or there is none left
/// and `left` is 0.
pub fn cascade(bank_a: f64, bears_a: f64, packs: usize, spread: f64) -> Vec<PackStep> {
    let conductances: Vec<f64> = resistances(packs, spread).map(|ohm| 1.0 / ohm).collect();
    let mut steps = Vec::new();
    for gone in 1..=packs {
        let left = conductances.get(gone..).unwrap_or_default();
        let whole: f64 = left.iter().sum();
        let most_a = left.first().map_or(0.0, |most| bank_a * most / whole);
        steps.push(PackStep {
            left: left.len(),
            most_a,
        });
        if most_a <= bears_a {
            break;
        }
    }
    steps
}

#[cfg(test)]
mod tests {
    use super::{cascade, one_out_part, pack_shares, shared_part};

    #[test]
    fn alike_packs_share_alike() {
        assert_eq!(pack_shares(1, 0.2), [1.0]);
        assert_eq!(pack_shares(4, 0.0), [0.25; 4]);
        assert_eq!(shared_part(1, 0.2), 1.0);
        assert_eq!(shared_part(4, 0.0), 1.0);
    }

    /// By hand: 0.9 and 1.1 share as 1.1 to 0.9, that is 55 to 45 %; two packs of
    /// 50 A then take 50/0.55 = 90.9 A together, of 100.
    /// By hand: of three alike packs two are left, two thirds; of 0.9, 1 and 1.1 the
    /// two left take 1/(1 + 1/1.1) = 52.4 %, so 50 A each are 95.5 A of 135.9.
    #[test]
    fn one_is_out() {
        assert!((one_out_part(3, 0.0) - 2.0 / 3.0).abs() < 1e-12);
        assert!((one_out_part(3, 0.2) - 95.4545 / 135.9091).abs() < 1e-5);
        assert_eq!(one_out_part(1, 0.2), 0.0);
    }

    #[test]
    fn the_one_with_less_resistance_takes_more() {
        let shares = pack_shares(2, 0.2);
        assert!((shares[0] - 0.55).abs() < 1e-12 && (shares[1] - 0.45).abs() < 1e-12);
        assert!((shared_part(2, 0.2) - 0.909_090_909).abs() < 1e-9);
    }

    /// By hand, packs alike: 130 A over two are 65 A each, more than 50; the last
    /// one would get all 130.
    #[test]
    fn three_packs_of_fifty_amperes() {
        let steps = cascade(130.0, 50.0, 3, 0.0);
        let told: Vec<(usize, f64)> = steps.iter().map(|step| (step.left, step.most_a)).collect();
        assert_eq!(told, [(2, 65.0), (1, 130.0), (0, 0.0)]);
        // 90 A over two are 45 A each, which they bear.
        assert_eq!(cascade(90.0, 50.0, 3, 0.0).len(), 1);
        // A single pack leaves none.
        assert_eq!(cascade(90.0, 50.0, 1, 0.2)[0].left, 0);
    }
}
