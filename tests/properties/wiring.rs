//! Cables and fuses: what asks more never gets less, and every choice keeps
//! its own bounds.

use ampwright_core::analysis::cable::{
    CableChoice, CableRequest, RunCode, RunEnd, SizingReason, Table, choose,
};
use ampwright_core::boat::{SecondRole, WayKind};
use ampwright_core::exchange::{cables_json, open_link};
use ampwright_core::physics::ampacity::{RATINGS_C, air_factor, engine_factor, gauge_a};
use ampwright_core::physics::cable::{GAUGES, Gauge, copper_c, drop_v};
use ampwright_core::physics::fuse;
use ampwright_core::units::Reader;
use ampwright_core::{Worksheet, report};
use proptest::prelude::*;

use crate::draw::any_sheet;

/// From a fraction of an ampere to 3000 A, 0.1 to 100 m, 12 to 58 V, in cool
/// places and in ovens.
fn asks() -> impl Strategy<Value = CableRequest> {
    (
        (-1.0..3.5f64, -1.0..2.0f64, -1.7..0.8f64),
        (
            10.0..60.0f64,
            0..RATINGS_C.len(),
            any::<(bool, bool)>(),
            30.0..110.0f64,
        ),
    )
        .prop_map(
            |((amperes, length, allowed), (volts, column, (tinned, engine_space), air_c))| {
                CableRequest {
                    amperes: 10f64.powf(amperes).min(3000.0),
                    length_m: 10f64.powf(length),
                    allowed_v: 10f64.powf(allowed),
                    volts,
                    insulation_c: RATINGS_C[column],
                    tinned,
                    engine_space,
                    air_c,
                }
            },
        )
}

/// Larger for more cable; nothing is larger than a run without an answer.
fn rank(chosen: &Result<CableChoice, SizingReason>) -> (u8, f64) {
    chosen
        .as_ref()
        .map_or((u8::MAX, 0.0), |pick| (pick.cables, pick.mm2))
}

fn never_smaller(less: &CableRequest, more: &CableRequest) -> Result<(), TestCaseError> {
    for table in [Table::Gauge, Table::Metric] {
        let (before, after) = (choose(less, table), choose(more, table));
        prop_assert!(rank(&before) <= rank(&after), "{before:?} became {after:?}");
    }
    Ok(())
}

/// What so many cables of a gauge fail at, worked out from the formulas; the
/// fuse if nothing else.
fn fails(ask: &CableRequest, gauge: Gauge, cables: u8) -> SizingReason {
    let factor = if ask.engine_space {
        engine_factor(ask.insulation_c, ask.air_c)
    } else {
        air_factor(ask.insulation_c, ask.air_c)
    };
    let ampacity_a = factor * gauge_a(gauge, ask.insulation_c);
    let each_a = ask.amperes / f64::from(cables);
    let share = if ampacity_a > 0.0 {
        each_a / ampacity_a
    } else {
        1.0
    };
    let copper_c = copper_c(ask.air_c, ask.insulation_c, share);
    let volts = drop_v(ask.length_m, each_a, gauge.ohm_km(ask.tinned), copper_c);
    match (each_a > ampacity_a, volts > ask.allowed_v) {
        (true, true) => SizingReason::HeatAndDrop,
        (true, false) => SizingReason::Heat,
        (false, true) => SizingReason::Drop,
        (false, false) => SizingReason::Fuse,
    }
}

proptest! {
    #![proptest_config(crate::cases(4000))]

    #[test]
    fn a_longer_run(ask in asks(), more in 1.0..20.0f64) {
        never_smaller(&ask, &CableRequest { length_m: ask.length_m * more, ..ask })?;
    }

    #[test]
    fn more_amperes(ask in asks(), more in 1.0..20.0f64) {
        never_smaller(&ask, &CableRequest { amperes: ask.amperes * more, ..ask })?;
    }

    #[test]
    fn a_hotter_place(ask in asks(), more_k in 0.0..60.0f64) {
        never_smaller(&ask, &CableRequest { air_c: ask.air_c + more_k, ..ask })?;
    }

    #[test]
    fn the_engine_space(ask in asks()) {
        let outside = CableRequest { engine_space: false, ..ask };
        let engine = CableRequest { engine_space: true, air_c: ask.air_c.max(50.0), ..ask };
        never_smaller(&outside, &engine)?;
    }

    #[test]
    fn less_loss_allowed(ask in asks(), part in 0.05..1.0f64) {
        never_smaller(&ask, &CableRequest { allowed_v: ask.allowed_v * part, ..ask })?;
    }

    #[test]
    fn tinned_strands(ask in asks()) {
        never_smaller(&CableRequest { tinned: false, ..ask }, &CableRequest { tinned: true, ..ask })?;
    }

    #[test]
    fn every_choice_keeps_its_bounds(ask in asks()) {
        for table in [Table::Gauge, Table::Metric] {
            let Ok(pick) = choose(&ask, table) else { continue };
            let each_a = ask.amperes / f64::from(pick.cables);
            prop_assert!(each_a <= pick.ampacity_a && pick.spare_pct >= 0.0, "{pick:?}");
            prop_assert!(pick.drop_v <= ask.allowed_v && pick.spare_v >= 0.0, "{pick:?}");
            prop_assert!(pick.fuse_a >= 1.25 * each_a, "{pick:?}");
            prop_assert!(pick.fuse_a <= 1.5 * pick.ampacity_a, "{pick:?}");
            prop_assert!(fuse::RATINGS_A.contains(&pick.fuse_a));
            if ask.volts >= 50.0 {
                // None above what the cable bears but the one next to it.
                let between = |a: &&f64| (pick.ampacity_a..pick.fuse_a).contains(*a);
                prop_assert!(fuse::RATINGS_A.iter().find(between).is_none(), "{pick:?}");
            }
            prop_assert!(pick.copper_c <= ask.insulation_c + 1e-9, "{pick:?}");
            prop_assert!(pick.cables == 1 || pick.mm2 >= 50.0, "{pick:?}");
        }
    }

    /// What is said to have decided is what the size before fails at.
    #[test]
    fn the_bound_that_is_named_decided(ask in asks()) {
        let Ok(pick) = choose(&ask, Table::Gauge) else { return Ok(()) };
        let at = GAUGES.iter().position(|gauge| gauge.name == pick.size).expect("a size");
        let before = match (pick.cables, at) {
            (1, 0) => None,
            (1, _) => Some((GAUGES[at - 1], 1)),
            (cables, _) if GAUGES[at - 1].mm2() < 50.0 => Some((GAUGES[13], cables - 1)),
            (cables, _) => Some((GAUGES[at - 1], cables)),
        };
        let bound = before.map_or(SizingReason::Smallest, |(gauge, cables)| fails(&ask, gauge, cables));
        prop_assert_eq!(bound, pick.bound);
    }

    /// Where nothing does it, three of the largest fail at what is named.
    #[test]
    fn none_means_none(ask in asks()) {
        if let Err(bound) = choose(&ask, Table::Gauge) {
            prop_assert_eq!(fails(&ask, GAUGES[13], 3), bound);
        }
    }
}

proptest! {
    #![proptest_config(crate::cases(300))]

    #[test]
    fn only_runs_there_are(drawn in any_sheet()) {
        let inputs = &drawn.0.inputs;
        let keys: Vec<_> = report(&drawn.0).analyses.cables
            .runs
            .iter()
            .map(|run| (run.code, run.to))
            .collect();
        let converter = inputs.way.kind == WayKind::Converter;
        let mut expected = vec![(RunCode::Alternator, if converter { RunEnd::StartBattery } else { RunEnd::HouseBank })];
        match inputs.two.role {
            SecondRole::None => {}
            SecondRole::Start => expected.push((RunCode::SecondAlternator, RunEnd::StartBattery)),
            SecondRole::House => expected.push((RunCode::SecondAlternator, RunEnd::HouseBank)),
        }
        if converter {
            expected.extend([(RunCode::ChargerIn, RunEnd::Charger), (RunCode::ChargerOut, RunEnd::HouseBank)]);
        }
        expected.push((RunCode::Bus, RunEnd::SwitchPanel));
        if inputs.cable.inverter_w > 0.0 {
            expected.push((RunCode::Inverter, RunEnd::Inverter));
        }
        if inputs.cable.windlass_a > 0.0 {
            expected.push((RunCode::Windlass, RunEnd::Windlass));
        }
        if inputs.cable.thruster_a > 0.0 {
            expected.push((RunCode::Thruster, RunEnd::Thruster));
        }
        prop_assert_eq!(keys, expected);
    }
}

fn opened(link: &str) -> Worksheet {
    let opened = open_link(link).expect("a link");
    assert!(opened.remarks.is_empty(), "{:?}", opened.remarks);
    opened.sheet
}

fn findings(link: &str) -> Vec<&'static str> {
    let sheet = opened(link);
    let cable = |key: &&str| key.starts_with("cable_") || key.starts_with("fuse_");
    let found = report(&sheet).findings;
    let names = found.iter().map(|found| found.code().name());
    names.filter(cable).collect()
}

#[test]
fn every_finding_is_reached() {
    let mains = "daily_basis=listed&load=Kettle~1000~acw~1~1~100~both~0";
    let listed = [
        (
            "cable_insulation_too_hot",
            "cable_insulation=60&space_basis=measured&space_hot_c=70".to_string(),
        ),
        (
            "cable_none",
            "cable_bus_peak_a=3000&cable_bus_m=100".to_string(),
        ),
        ("cable_parallel", "cable_inverter_w=6000".to_string()),
        ("cable_inverter_unsaid", mains.to_string()),
        ("fuse_must_break", "bank_capacity_ah=800".to_string()),
        (
            "fuse_cannot_break",
            "bank_capacity_ah=5000&bank_resistance_ohm_ah=0.3".to_string(),
        ),
    ];
    for (key, said) in &listed {
        let found = findings(&format!("v=1&{said}&end"));
        assert!(found.contains(key), "{key}: {found:?}");
        // And not on a plain cool boat, its bank small enough for a 10 kA fuse.
        let plain = findings("v=1&bank_capacity_ah=200&space_basis=measured&space_hot_c=45&end");
        assert!(plain.is_empty(), "{plain:?}");
    }
    let unsaid = findings(&format!("v=1&{mains}&cable_inverter_w=1500&end"));
    assert!(!unsaid.contains(&"cable_inverter_unsaid"));
}

/// What the tables do not have is remarked upon beside the figures.
#[test]
fn hot_spaces_and_high_volts_are_remarked() {
    for (said, remark) in [
        ("space_basis=measured&space_hot_c=65", "counted at"),
        ("bank_nominal_v=48", "50 V or more"),
    ] {
        let sheet = opened(&format!("v=1&{said}&end"));
        let cables = report(&sheet).analyses.cables;
        let remarks = cables_json(&cables, &Reader::METRIC)["text"]["remarks"].to_string();
        assert!(remarks.contains(remark), "{remarks}");
    }
}

/// Each input of the section moves something.
#[test]
fn every_cable_input_matters() {
    let base = "way_kind=converter&two_role=start&reg_current_cap_a=60&cable_inverter_w=1500";
    let text = |said: &str| {
        let sheet = opened(&format!("v=1&{base}{said}&end"));
        serde_json::to_string(&report(&sheet).analyses.cables).expect("JSON")
    };
    let plain = text("");
    for said in [
        "&cable_machine_m=9",
        "&cable_second_m=9",
        "&cable_converter_in_m=9",
        "&cable_converter_in_place=outside",
        "&cable_converter_out_m=9",
        "&cable_converter_out_place=engine",
        "&cable_bus_m=9",
        "&cable_bus_place=engine",
        "&cable_bus_peak_a=120",
        "&cable_inverter_m=9",
        "&cable_inverter_place=engine",
        "&cable_insulation=90",
        "&cable_copper=plain",
        "&cable_charge_drop_v=0.1",
        "&cable_drop_pct=1",
        "&cable_flag=us",
    ] {
        assert_ne!(text(said), plain, "{said}");
    }
}
