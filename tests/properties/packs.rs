//! Packs in parallel.

use ampwright_core::physics::packs::{cascade, pack_shares, shared_part};
use ampwright_core::report;
use proptest::prelude::*;

use crate::draw::{Drawn, any_sheet};

proptest! {
    #![proptest_config(crate::cases(200))]

    /// A harder current never lets fewer packs open.
    #[test]
    fn more_current_opens_no_fewer(
        packs in 1..=16usize,
        spread in 0.0..1.0f64,
        bears_a in 1.0..200.0f64,
        bank_a in 0.0..2000.0f64,
        more in 1.0..2.0f64,
    ) {
        let (few, many) = (cascade(bank_a, bears_a, packs, spread), cascade(more * bank_a, bears_a, packs, spread));
        prop_assert!(few.len() <= many.len());
        for (one, other) in few.iter().zip(&many) {
            prop_assert!(one.most_a <= other.most_a + 1e-9);
        }
        // Each time fewer are left, and each of them gets more.
        for pair in few.windows(2) {
            prop_assert_eq!(pair[1].left + 1, pair[0].left);
            prop_assert!(pair[1].left == 0 || pair[1].most_a > pair[0].most_a);
        }
        prop_assert!(few.len() <= packs && few.last().is_some_and(|last| last.most_a <= bears_a));
    }

    #[test]
    fn shares_add_up(packs in 1..=16usize, spread in 0.0..1.0f64) {
        let shares = pack_shares(packs, spread);
        prop_assert_eq!(shares.len(), packs);
        prop_assert!((shares.iter().sum::<f64>() - 1.0).abs() < 1e-12);
        prop_assert!(shares.windows(2).all(|pair| pair[0] >= pair[1]));
        let part = shared_part(packs, spread);
        prop_assert!(part > 0.0 && part <= 1.0 + 1e-12);
    }
}

proptest! {
    #![proptest_config(crate::cases(40))]

    /// A bank of one pack is what it always was, whatever stands in the fields
    /// that are not shown then.
    #[test]
    fn one_pack_is_the_bank(Drawn(sheet) in any_sheet(), limit_a in 1.0..500.0f64, spread_pct in 0.0..100.0f64) {
        let mut one = sheet.clone();
        one.inputs.packs.count = 1.0;
        let mut other = one.clone();
        other.inputs.packs.charge_limit_a = Some(limit_a);
        other.inputs.packs.discharge_limit_a = Some(limit_a);
        other.inputs.packs.capacity_ah = Some(limit_a);
        other.inputs.packs.spread_pct = spread_pct;
        let stated_a = one.inputs.bank.charge_limit_a;
        prop_assert!(stated_a.is_none_or(|stated_a| one.inputs.own_charge_limit_a() == stated_a));
        let (one, other) = (report(&one), report(&other));
        prop_assert!(one.analyses.packs.is_none());
        prop_assert_eq!(format!("{one:?}"), format!("{other:?}"));
    }
}
