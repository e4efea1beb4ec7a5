//! Cables and fuses. The sum: copper's 0.0175 Ω·mm²/m, out and back; area in
//! mm² = 0.0175 × 2 × metres × amperes / volts lost.

use crate::boat::Boat;
use crate::says::Says;

/// Copper of the metric cable of a run, all side by side \[mm²\].
fn mm2(says: &Says, key: &str) -> Option<f64> {
    let runs = &says.wiring().runs;
    let run = runs.iter().find(|run| run.code.name() == key)?;
    let pick = run.metric?;
    Some(pick.mm2 * f64::from(pick.cables))
}

#[test]
fn three_metres_for_100_a() {
    // 0.0175 × 2 × 3 × 100 / 0.3 = 35 mm² cold; warm copper 20 % more: 35 or 50.
    Boat::new("3 m from the alternator").check(|says| {
        says.some_between(
            "mm² from the alternator",
            mm2(says, "alternator"),
            35.0,
            70.0,
        );
        says.must_not_find("cable_none");
    });
}

#[test]
fn forty_metres_for_300_a() {
    // 0.0175 × 2 × 40 × 300 / 0.3 = 1400 mm²: no cable.
    Boat::new("40 m from the alternator")
        .set("alt_rated_a", 300.0)
        .set("alt_mass_kg", 12.0)
        .set("bank_capacity_ah", 800.0)
        .set("eng_displacement_l", 3.0)
        .set("cable_machine_m", 40.0)
        .check(|says| says.danger("cable_none"));
}

#[test]
fn insulation_for_60_degrees_in_75() {
    Boat::new("60 °C insulation in 75 °C")
        .choose("space_basis", "measured")
        .set("space_hot_c", 75.0)
        .choose("cable_insulation", "60")
        .check(|says| says.danger("cable_insulation_too_hot"));
}

#[test]
fn a_large_inverter_at_12_v() {
    // 3000 W / 0.9 / 12 V = 278 A and more at a low bank: a fuse of 350 to 450 A.
    Boat::new("3000 W inverter at 12 V")
        .set("cable_inverter_w", 3000.0)
        .mains_w("cooker", 2000.0, 1.0)
        .check(|says| {
            says.must_not_find("cable_inverter_unsaid");
            let runs = &says.wiring().runs;
            let run = runs.iter().find(|run| run.code.name() == "inverter");
            let carries_a = run.map(|run| run.carries_a);
            says.some_between("A to the inverter", carries_a, 270.0, 340.0);
        });
}

#[test]
fn the_same_inverter_at_48_v() {
    // A quarter of it: 68 to 85 A.
    Boat::new("3000 W inverter at 48 V")
        .choose("bank_nominal_v", "48")
        .choose("way_kind", "converter")
        .choose("reg_kind", "internal")
        .set("way_converter_a", 8.0)
        .set("bank_capacity_ah", 100.0)
        .set("cable_inverter_w", 3000.0)
        .mains_w("cooker", 2000.0, 0.5)
        .check(|says| {
            let runs = &says.wiring().runs;
            let run = runs.iter().find(|run| run.code.name() == "inverter");
            let carries_a = run.map(|run| run.carries_a);
            says.some_between("A to the inverter", carries_a, 66.0, 86.0);
        });
}

#[test]
fn a_windlass_in_the_bow() {
    // 100 A over 12 m with 10 % of 12 V: 0.0175 × 2 × 12 × 100 / 1.2 = 35 mm² cold;
    // warm copper 20 % more. 1.25 × 100 A: a fuse of 125 A or more.
    Boat::new("100 A windlass, 12 m")
        .set("cable_windlass_a", 100.0)
        .set("cable_windlass_m", 12.0)
        .check(|says| {
            says.some_between("mm² to the windlass", mm2(says, "windlass"), 35.0, 50.0);
            let runs = &says.wiring().runs;
            let run = runs.iter().find(|run| run.code.name() == "windlass");
            let fuse_a = run.and_then(|run| run.metric).map(|pick| pick.fuse_a);
            says.some_between("A of its fuse", fuse_a, 125.0, 200.0);
            let said = run.map_or(String::new(), |run| {
                let notes = run.notes.iter();
                let notes = notes.map(|note| {
                    ampwright_core::text::cable::note(note, &ampwright_core::units::Reader::METRIC)
                });
                notes.collect::<Vec<_>>().join(" ")
            });
            for words in ["3 min at a time", "maker", "management system"] {
                says.holds(said.contains(words), || {
                    format!("{words:?} is not in: {said}")
                });
            }
        });
}

#[test]
fn a_thruster_at_24_v() {
    // 300 A over 8 m with 10 % of 24 V: 0.0175 × 2 × 8 × 300 / 2.4 = 35 mm²; 300 A
    // on and on take more copper than that, 70 to 120 mm².
    Boat::new("300 A thruster at 24 V")
        .choose("bank_nominal_v", "24")
        .choose("alt_nominal_v", "24")
        .set("alt_rated_a", 70.0)
        .set("cable_thruster_a", 300.0)
        .set("cable_thruster_m", 8.0)
        .check(|says| {
            says.some_between("mm² to the thruster", mm2(says, "thruster"), 70.0, 120.0);
            says.must_not_find("cable_none");
        });
}
