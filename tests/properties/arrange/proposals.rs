//! What is proposed does no harm, keeps voltages, and suits what is there.

use ampwright_core::boat::{
    AlternatorVolts, Inputs, InstalledAlternator, RegulatorKind, WhichAlternator,
};
use ampwright_core::decision::arrangements::{Kind, Purchase, Role, compare, parts, proposals};
use ampwright_core::findings::Code;
use ampwright_core::report;
use ampwright_core::text::arrangements;
use proptest::prelude::*;

use crate::arrange::boats::{boat, bought, proposal_of};
use crate::draw::{any_sheet, normal_boat};

proptest! {
    #![proptest_config(crate::cases(150))]

    /// Only the boat as it stands, and the user's own, may be harmful.
    #[test]
    fn no_proposal_does_harm(drawn in normal_boat()) {
        let mut sheet = drawn.0;
        sheet.arrangements.clear();
        let compared = compare(&sheet);
        let outcomes = compared.outcomes.iter();
        for outcome in outcomes.filter(|one| one.role == Role::Proposed) {
            prop_assert_eq!((outcome.dangers, outcome.harm.len()), (0, 0), "{}", arrangements::name(outcome));
        }
        for left_out in &compared.left_out {
            prop_assert!(!left_out.harm.is_empty());
        }
    }

    /// Wherever a proposal leads an alternator, it is of that battery's voltage,
    /// and one that was there is the one it was.
    #[test]
    fn proposals_keep_voltages(drawn in any_sheet()) {
        let sheet = drawn.0;
        for (kind, proposal) in proposals(&sheet) {
            let with = proposal.on(&sheet).inputs;
            for now in with.alternators() {
                prop_assert!(now.fits(), "{kind:?}");
                let same = |then: &InstalledAlternator| {
                    let (then, now) = (then.alternator, now.alternator);
                    then.rated_a == now.rated_a && then.mass_kg == now.mass_kg
                };
                // A bank of 48 V alone made it one of 48; it starts an engine of 12.
                let was = |then: &InstalledAlternator| {
                    let taken_for_48 = then.voltage_assumed() && then.blocks() > 2.0;
                    then.blocks() == now.blocks() || taken_for_48 && now.blocks() == 1.0
                };
                let mut alike = sheet.inputs.alternators().filter(same).peekable();
                prop_assert!(
                    alike.peek().is_none() || alike.any(|then| was(&then)),
                    "{kind:?}"
                );
            }
        }
    }
}

#[test]
fn a_direct_boat_with_a_built_in_regulator_is_offered_an_external_one() {
    let sheet = boat("reg_kind=internal&bank_charge_limit_a=50");
    let compared = compare(&sheet);
    assert_eq!(compared.outcomes[0].kind, Kind::DirectBuiltIn);
    assert!(!compared.outcomes[0].harm.is_empty());
    let with = proposal_of(&sheet, Kind::DirectExternal).expect("the regulator");
    assert_eq!(with.inputs.reg.kind, RegulatorKind::External);
    let cap_a = with.inputs.reg.current_cap_a.expect("a cap");
    assert!(cap_a <= 50.0 && cap_a > 40.0, "{cap_a}");
    // The regulator and nothing else: the lead is there.
    let bought = bought(&sheet, &with);
    assert_eq!(bought, ["External regulator with sensors"]);
}

#[test]
fn a_12_v_alternator_is_not_proposed_for_a_48_v_bank() {
    let sheet =
        boat("bank_nominal_v=48&bank_capacity_ah=200&way_kind=converter&way_converter_a=10");
    assert!(proposal_of(&sheet, Kind::DirectExternal).is_none());
    let with = proposal_of(&sheet, Kind::SecondAlternator).expect("a second alternator");
    assert_eq!(with.inputs.alt.nominal_v, AlternatorVolts::V48);
    assert_eq!(
        with.inputs
            .alternator(WhichAlternator::Second)
            .expect("the stock one")
            .blocks(),
        1.0
    );
    assert!(
        parts(&sheet, &with)
            .iter()
            .any(|part| part.item == Purchase::Alternator)
    );
}

#[test]
fn a_24_v_alternator_brings_its_start_battery() {
    let link = "bank_nominal_v=24&alt_nominal_v=24&alt_rated_a=80";
    let with = proposal_of(&boat(link), Kind::ThroughCharger).expect("through a charger");
    assert_eq!(with.inputs.way.start_v, 28.0);
    assert_eq!(with.inputs.way.lockout_v, 26.0);
    assert_eq!(with.inputs.first_alternator().blocks(), 2.0);
    // With a start battery of 12 V there is no such arrangement.
    let twelve = boat(&format!("{link}&way_start_v=13.9"));
    assert!(proposal_of(&twelve, Kind::ThroughCharger).is_none());
}

#[test]
fn a_larger_alternator_is_larger_and_its_engine_turns_it() {
    let rated_w = |inputs: &Inputs| {
        let installed = inputs.first_alternator();
        installed.alternator.rated_a * 14.0 * installed.blocks()
    };
    for link in [
        "alt_rated_a=35&eng_displacement_l=0.5&reg_kind=internal",
        "alt_rated_a=200&eng_displacement_l=3",
        "bank_nominal_v=24&alt_nominal_v=24&alt_rated_a=100&eng_displacement_l=3",
        "alt_rated_a=250&eng_displacement_l=3",
    ] {
        let sheet = boat(link);
        let Some(with) = proposal_of(&sheet, Kind::LargerAlternator) else {
            continue;
        };
        assert!(rated_w(&with.inputs) > rated_w(&sheet.inputs), "{link}");
        let share_pct = report(&with).analyses.engine.peak_share_pct;
        assert!(share_pct <= 60.0, "{share_pct} {link}");
    }
    // 180 A are less than the 200 there, and nothing usual is more than 250.
    assert!(proposal_of(&boat("alt_rated_a=250"), Kind::LargerAlternator).is_none());
}

/// A charger of 40 A at 12 V takes 40·14/0.91 = 615 W, more than half of the
/// 490 W of a 35 A alternator.
#[test]
fn a_charger_suits_its_alternator() {
    let sheet = boat("alt_rated_a=35&reg_kind=internal");
    let with = proposal_of(&sheet, Kind::ThroughCharger).expect("a small one");
    assert!(with.inputs.charger_a() <= 15.0);
    // One that is too much is told, in watts whatever the voltages.
    let says = |link: &str| {
        let report = report(&boat(link));
        report
            .findings
            .iter()
            .any(|f| f.code() == Code::ConverterLarge)
    };
    // 30 A at 28 V are 923 W, of 1400; 20 A are 615.
    assert!(says(
        "bank_nominal_v=24&way_kind=converter&way_converter_a=30"
    ));
    assert!(!says(
        "bank_nominal_v=24&way_kind=converter&way_converter_a=20"
    ));
}
