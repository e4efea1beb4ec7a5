//! The boat of case B of `tests/reference/charge_runs.json`.

use ampwright_core::Worksheet;
use ampwright_core::exchange::open_link;
use ampwright_core::simulation::plant::Plant;
use ampwright_core::simulation::run::{Fineness, Trace, charge};

/// What its house draws meanwhile \[A\].
pub const LOAD_A: f64 = 6.0;

/// Where it differs from the defaults.
const LINK: &str = "v=1&bank_capacity_ah=460&bank_charge_limit_a=10000&bank_charge_v=14.2\
    &alt_rated_a=115&alt_pulley_ratio=2.3&alt_mass_kg=6.2&alt_field_w=50\
    &reg_set_point_c=100&eng_rpm=1450&eng_surface_w_k=20\
    &space_outside_c=29&space_start_c=38&space_leak_m3h=12&space_wall_w_k=10\
    &space_recirculation_pct=20&run_house_load_a=6&run_from_pct=35&run_to_pct=99.5\
    &run_longest_h=12&end";

/// That boat.
pub fn case_b() -> Worksheet {
    let opened = open_link(LINK).expect("a link of ours");
    assert!(
        opened.whole && opened.remarks.is_empty(),
        "{:?}",
        opened.remarks
    );
    opened.sheet
}

/// That boat prepared.
pub fn plant() -> Plant {
    Plant::new(&case_b().inputs, LOAD_A)
}

/// Where its run ends, 0 to 1.
pub const END: f64 = 0.995;

/// Its run, from 35 to 99.5 %.
pub fn run(plant: &Plant) -> Trace {
    charge(plant, 0.35, END, 12.0 * 3600.0, &Fineness::USUAL)
}
