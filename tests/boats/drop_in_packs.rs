//! Packs that are closed: nothing goes in to set them and no signal comes out.

use ampwright_core::guidance::settings::{GroupCode, SettingCode};
use ampwright_core::guidance::{MakerQuestion, maker_questions};

use crate::boat::Boat;
use crate::parallel_packs::{has_step, three};

#[test]
fn drop_in_packs_straight_on_the_alternator() {
    // No wire, no link: a spike and nothing against it. 13.8 V is the target.
    let drop_in = |name| {
        three(name)
            .choose("packs_management", "closed")
            .set("reg_current_cap_a", 90.0)
    };
    drop_in("drop-in packs, no protection").check(|says| {
        says.fix("drop_in_packs");
        says.finding_says("drop_in_packs", &["without warning", "13.8 V"]);
        says.setting_between(GroupCode::Charge, SettingCode::Voltage, 13.7, 13.9);
        says.setting_says(
            GroupCode::Management,
            SettingCode::InPlaceOfSignal,
            &["surge suppressor"],
        );
        for code in [SettingCode::HighWarning, SettingCode::HighChargingOff] {
            says.holds(says.setting(GroupCode::Management, code).is_none(), || {
                format!("{} is to be set in a closed pack", code.name())
            });
        }
        let cut = says.setting(GroupCode::Regulator, SettingCode::FieldCut);
        says.holds(cut.is_none(), || "a signal that is not there".into());
        for id in ["cut_wire", "cut_still", "cut_gentle", "month_cut"] {
            says.holds(!has_step(says, id), || format!("step {id}"));
        }
        says.holds(has_step(says, "spike_guard"), || {
            "no step for the spike".into()
        });
        let asked = maker_questions(&says.sheet.inputs);
        says.holds(asked.contains(&MakerQuestion::AlternatorAllowed), || {
            "whether an alternator may charge them is not asked".into()
        });
    });
    drop_in("drop-in packs with a surge suppressor")
        .choose("guard_clamp", "clamp")
        .set("guard_clamp_v", 30.0)
        .set("guard_clamp_j", 500.0)
        .check(|says| {
            says.note("drop_in_packs");
            says.must_not_find("disconnect_unguarded");
        });
}

#[test]
fn a_signal_chosen_for_drop_in_packs() {
    three("drop-in packs with a signal")
        .choose("packs_management", "closed")
        .choose("reg_link", "signal")
        .set("reg_current_cap_a", 90.0)
        .check(|says| {
            says.fix("link_has_no_effect");
            says.finding_says("link_has_no_effect", &["no charge-disable signal"]);
            says.must_not_find("warning_alone");
        });
}

#[test]
fn drop_in_packs_behind_a_charger() {
    // The safe way: 30 A, nothing that spikes, two packs bear it.
    Boat::new("two drop-in packs behind 30 A")
        .choose("way_kind", "converter")
        .choose("reg_kind", "internal")
        .set("way_converter_a", 30.0)
        .set("bank_capacity_ah", 200.0)
        .set("daily_use_ah", 60.0)
        .set("packs_count", 2.0)
        .choose("packs_management", "closed")
        .check(|says| {
            says.note("drop_in_packs");
            says.no_danger();
            says.must_not_find("packs_follow");
            says.holds(!has_step(says, "cut_converter"), || {
                "a signal is to be triggered that is not there".into()
            });
        });
}
