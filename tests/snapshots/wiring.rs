//! Cables and fuses of a few boats, in words.

use ampwright_core::boat::demo;
use ampwright_core::exchange::open_link;
use ampwright_core::text::cable;
use ampwright_core::text::findings::sentence;
use ampwright_core::text::words::severity;
use ampwright_core::units::Reader;
use ampwright_core::{Worksheet, report};

fn told(sheet: &Worksheet) -> String {
    let report = report(sheet);
    let wiring = &report.analyses.cables;
    let mut lines = vec![format!("short circuit {:.0} A", wiring.short_circuit_a)];
    for run in &wiring.runs {
        lines.push(format!(
            "{}: {}\n  {}",
            run.code,
            cable::run(run, &Reader::METRIC),
            cable::fuse_place(run, &Reader::METRIC)
        ));
        lines.extend(
            run.notes
                .iter()
                .map(|note| format!("  {}", cable::note(note, &Reader::METRIC))),
        );
    }
    lines.extend(cable::rule(wiring.flag).iter().map(ToString::to_string));
    lines.extend(
        wiring
            .remarks
            .iter()
            .map(|remark| cable::remark(remark, &Reader::METRIC)),
    );
    let cable = |key: &str| key.starts_with("cable_") || key.starts_with("fuse_");
    for found in report
        .findings
        .iter()
        .filter(|found| cable(found.code().name()))
    {
        let (word, text) = (severity(found.severity()), sentence(found, &Reader::METRIC));
        lines.push(format!("{word} {}: {text}", found.code()));
    }
    lines.join("\n")
}

fn told_of(link: &str) -> String {
    let opened = open_link(link).expect("a link");
    assert!(opened.remarks.is_empty(), "{link}: {:?}", opened.remarks);
    told(&opened.sheet)
}

#[test]
fn demo_wiring() {
    insta::assert_snapshot!(told(&demo()));
}

#[test]
fn converter_wiring() {
    insta::assert_snapshot!(told_of(
        "v=1&way_kind=converter&cable_inverter_w=2000&cable_flag=us&end"
    ));
}

/// Two machines, a cap, 48 V, plain copper.
#[test]
fn high_voltage_wiring() {
    insta::assert_snapshot!(told_of(
        "v=1&bank_nominal_v=48&two_role=house&reg_current_cap_a=50&cable_copper=plain&cable_inverter_w=5000&cable_machine_m=0.8&end"
    ));
}

/// More than one cable bears, more than three do, hotter than the insulation.
#[test]
fn strained_wiring() {
    insta::assert_snapshot!(told_of(
        "v=1&bank_capacity_ah=5000&bank_resistance_ohm_ah=0.3&cable_inverter_w=6000&cable_bus_peak_a=3000&cable_bus_m=100&cable_insulation=60&space_basis=measured&space_hot_c=70&end"
    ));
}
