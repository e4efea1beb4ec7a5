//! Boats that were fitted well, every question answered: there is nothing to
//! put right, and what is worth a note is short. A warning that every boat
//! gets is one that nobody reads.

use crate::boat::Boat;

/// Every question about belt and defences answered.
fn fitted(boat: Boat) -> Boat {
    boat.choose("belt_kind", "ribs8")
        .choose("belt_pump", "no")
        .choose("guard_warning", "yes")
        .choose("guard_clamp", "clamp")
        .choose("guard_lead", "no")
        .choose("guard_switch", "no")
}

fn ordinary() -> Boat {
    fitted(Boat::new("400 A·h LFP, 100 A, external regulator"))
        .set("reg_set_point_c", 100.0)
        .choose("reg_link", "limits")
}

fn through_a_charger() -> Boat {
    Boat::new("200 A·h LFP through 30 A")
        .choose("way_kind", "converter")
        .choose("reg_kind", "internal")
        .set("way_converter_a", 30.0)
        .set("bank_capacity_ah", 200.0)
        .set("daily_use_ah", 60.0)
        .choose("belt_kind", "v13")
        .choose("belt_pump", "no")
        .choose("guard_switch", "no")
}

fn lead() -> Boat {
    fitted(Boat::new("300 A·h AGM, 80 A, external regulator"))
        .choose("bank_chemistry", "agm")
        .set("bank_capacity_ah", 300.0)
        .set("alt_rated_a", 80.0)
        .set("daily_use_ah", 60.0)
        .set("run_from_pct", 65.0)
        .set("reg_set_point_c", 100.0)
        .set("rule_start_pct", 60.0)
        .set("rule_stop_pct", 90.0)
}

fn at_24_v() -> Boat {
    fitted(Boat::new("24 V, 200 A·h LFP, 80 A"))
        .choose("bank_nominal_v", "24")
        .choose("alt_nominal_v", "24")
        .set("bank_capacity_ah", 200.0)
        .set("daily_use_ah", 60.0)
        .set("alt_rated_a", 80.0)
        .set("alt_mass_kg", 9.0)
        .set("eng_displacement_l", 2.5)
        .set("reg_set_point_c", 100.0)
        .choose("reg_link", "limits")
}

fn with_a_blower() -> Boat {
    fitted(Boat::new("large-case 180 A, blower, cool air"))
        .set("alt_rated_a", 180.0)
        .set("alt_mass_kg", 9.5)
        .choose("alt_class", "h")
        .set("alt_efficiency_pct", 62.0)
        .set("alt_anchor_winding_c", 140.0)
        .set("alt_max_rpm", 12_000.0)
        .set("space_blower_m3h", 300.0)
        .set("space_cold_air_pct", 50.0)
        .choose("space_blower_after", "on")
        .set("reg_set_point_c", 100.0)
        .set("eng_displacement_l", 2.2)
        .choose("reg_link", "limits")
}

fn solar() -> Boat {
    through_a_charger()
        .called("solar, a charger, shore power")
        .set("sun_panel_w", 300.0)
}

#[test]
fn nothing_to_put_right() {
    for boat in [
        ordinary(),
        through_a_charger(),
        lead(),
        at_24_v(),
        with_a_blower(),
        solar(),
    ] {
        boat.check(|says| {
            says.no_danger();
            says.no_fix();
            says.notes_at_most(3);
            says.survives();
        });
    }
}

#[test]
fn no_note_for_everybody() {
    let fleet = [
        ordinary(),
        through_a_charger(),
        lead(),
        at_24_v(),
        with_a_blower(),
        solar(),
    ]
    .map(|boat| boat.answers());
    let mut codes: Vec<&str> = fleet
        .iter()
        .flat_map(|answers| answers.report.findings.iter().map(|f| f.code().name()))
        .collect();
    codes.sort_unstable();
    codes.dedup();
    for code in codes {
        let told = fleet.iter().filter(|answers| answers.has(code)).count();
        assert!(told <= 3, "{code} is told to {told} of 6 well fitted boats");
    }
}
