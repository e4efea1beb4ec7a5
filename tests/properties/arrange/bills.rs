//! What would have to be bought, as a yard would bill it.

use ampwright_core::boat::{
    AlternatorVolts, ClampKind, NominalVolts, RegulatorKind, SecondRole, StartKept, WayKind,
    Worksheet,
};
use ampwright_core::decision::arrangements::{Kind, Purchase, parts, proposals};
use proptest::prelude::*;

use crate::arrange::boats::{boat, bought, proposal_of};
use crate::draw::normal_boat;

proptest! {
    #![proptest_config(crate::cases(150))]

    /// Going there and staying there costs nothing more.
    #[test]
    fn what_is_there_is_not_bought(drawn in normal_boat()) {
        for (_, proposal) in proposals(&drawn.0) {
            let with = proposal.on(&drawn.0);
            prop_assert!(parts(&with, &with).is_empty());
            for part in parts(&drawn.0, &with) {
                prop_assert!(part.price >= 0.0, "{part:?}");
            }
        }
    }
}

/// A second machine on the house bank brings a lead of its own, whatever the
/// first one feeds.
#[test]
fn a_second_machine_on_the_bank_brings_its_lead() {
    let mut now = Worksheet::default();
    now.inputs.way.kind = WayKind::Converter;
    let mut with = now.clone();
    with.inputs.two.role = SecondRole::House;
    with.inputs.alt2.rated_a = 180.0;
    let bought = bought(&now, &with);
    for what in ["Alternator, 180 A", "Cable and fuses of a charge lead"] {
        assert!(bought.iter().any(|part| part == what), "{bought:?}");
    }
}

/// What the parts come to, as an electrician would write the bill.
#[test]
fn parts_are_what_a_yard_would_bill() {
    // A second alternator beside one that is regulated and led to the bank.
    let now = boat("way_kind=direct");
    let with = proposal_of(&now, Kind::SecondAlternator).expect("a second one");
    assert_eq!(
        bought(&now, &with),
        [
            "Alternator, 180 A",
            "Bracket, pulleys and belt",
            "External regulator with sensors",
            "Cable and fuses of a charge lead",
        ]
    );
    // In its place the regulator moves over.
    let with = proposal_of(&now, Kind::LargerAlternator).expect("a larger one");
    assert!(!bought(&now, &with).contains(&"External regulator with sensors".to_string()));
    // The same figures at another voltage are another alternator.
    let mut with = now.clone();
    with.inputs.bank.nominal_v = NominalVolts::V24;
    with.inputs.alt.nominal_v = AlternatorVolts::V24;
    assert!(bought(&now, &with).contains(&"Alternator, 100 A".to_string()));
    // A suppressor that is there is not bought again.
    let mut now = boat("way_kind=converter&reg_kind=internal");
    now.inputs.guard.clamp = ClampKind::Clamp;
    let with = proposal_of(&now, Kind::DirectExternal).expect("direct");
    assert!(bought(&now, &with).contains(&"Protection against a load dump".to_string()));
    let mut guarded = with.clone();
    guarded.inputs.reg.kind = RegulatorKind::Internal;
    let gained = bought(&guarded, &with);
    assert_eq!(gained, ["External regulator with sensors"]);
}

#[test]
fn a_charger_is_turned_round_between_like_voltages_only() {
    let back = |link: &str| {
        let now = boat(link);
        let mut with = now.clone();
        with.inputs.way.kind = WayKind::Direct;
        with.inputs.way.start_kept = StartKept::House;
        let charger = parts(&now, &with)
            .into_iter()
            .find(|part| part.item == Purchase::Charger);
        charger.map(|part| part.price)
    };
    assert_eq!(back("way_kind=converter"), None);
    // From 24 V down to 12 V is another device than from 12 up to 24.
    assert!(back("way_kind=converter&bank_nominal_v=24").is_some());
}
