//! Two alternators on one bank and the regulators that drive them: one for both,
//! linked, or each on its own; and a cap that is measured at the bank.
//!
//! Two that know nothing of each other (common practice, no source): as long as the
//! bank is below both set voltages both give all they can, which with lithium is
//! nearly the whole charge. A lead bank comes up to the lower set voltage early; from
//! there the other one carries everything, and the first helps only while that one
//! is folded back by heat.

use crate::boat::Boat;
use crate::says::Says;

fn pair(name: &'static str, regulators: &str) -> Boat {
    Boat::new(name)
        .choose("two_role", "house")
        .choose("two_regulators", regulators)
}

/// Two of 100 A on 200 A·h of AGM: it takes 40 to 80 A at half charge, which one of
/// them gives alone, and a few amperes at nine tenths.
fn on_agm(name: &'static str, regulators: &str) -> Boat {
    pair(name, regulators)
        .choose("bank_chemistry", "agm")
        .set("bank_capacity_ah", 200.0)
        .set("bank_charge_v", 14.4)
}

/// What one gives of all that both give in the run \[%\].
fn part_pct(says: &Says, at: usize) -> Option<f64> {
    let sharing = says.report.analyses.sharing.as_ref()?;
    sharing.parts_pct.get(at).copied()
}

#[test]
fn the_second_holds_more_on_lead() {
    on_agm("AGM, second regulator 0.3 V higher", "apart")
        .set("two_voltage_offset_v", 0.3)
        .check(|says| {
            says.finding_says(
                "regulators_fight",
                &[
                    "second alternator's holds 0.30 V more",
                    "the alternator stands idle",
                    "same charge voltage",
                ],
            );
            says.some_between("% by the second", part_pct(says, 1), 55.0, 95.0);
            says.no_danger();
        });
}

#[test]
fn the_second_holds_less_on_lead() {
    on_agm("AGM, second regulator 0.3 V lower", "apart")
        .set("two_voltage_offset_v", -0.3)
        .check(|says| {
            says.finding_says(
                "regulators_fight",
                &["second alternator stands idle", "0.30 V"],
            );
            says.some_between("% by the first", part_pct(says, 0), 55.0, 95.0);
        });
}

#[test]
fn set_alike_they_share() {
    on_agm("AGM, two regulators set alike", "apart").check(|says| {
        says.must_not_find("regulators_fight");
        says.some_between("% by the second", part_pct(says, 1), 45.0, 55.0);
    });
}

#[test]
fn linked_they_share_whatever_is_set() {
    // The offset belongs to regulators on their own; a link has one voltage.
    on_agm("AGM, two linked regulators", "linked_share")
        .set("two_voltage_offset_v", 0.3)
        .check(|says| {
            says.must_not_find("regulators_fight");
            says.some_between("% by the second", part_pct(says, 1), 48.0, 52.0);
        });
}

#[test]
fn lithium_takes_both_nearly_to_the_end() {
    pair("lithium, second regulator 0.2 V higher", "apart")
        .set("bank_capacity_ah", 600.0)
        .set("bank_charge_v", 14.2)
        .set("two_voltage_offset_v", 0.2)
        .check(|says| {
            says.must_not_find("regulators_fight");
            says.some_between("% by the second", part_pct(says, 1), 44.0, 56.0);
        });
}

#[test]
fn a_sent_voltage_holds_for_both() {
    // The battery sends 14.2 V; the second regulator, set 0.3 V higher, obeys it.
    let bank_v = |offset_v: f64| {
        let answers = pair("voltage sent to both", "apart")
            .set("bank_capacity_ah", 600.0)
            .set("bank_charge_v", 14.3)
            .set("run_to_pct", 100.0)
            .choose("reg_link", "limits_and_volts")
            .set("two_voltage_offset_v", offset_v)
            .answers();
        let series = answers.report.analyses.run.series;
        series.iter().map(|at| at.bank_v).fold(0.0, f64::max)
    };
    let (alike_v, higher_v) = (bank_v(0.0), bank_v(0.3));
    assert!((alike_v - higher_v).abs() < 0.01, "{alike_v} {higher_v}");
    assert!(higher_v < 14.25, "{higher_v}");
}

#[test]
fn at_24_v() {
    pair("24 V AGM, second regulator 0.6 V higher", "apart")
        .choose("bank_nominal_v", "24")
        .choose("alt_nominal_v", "24")
        .choose("alt2_nominal_v", "24")
        .set("alt_rated_a", 70.0)
        .set("alt2_rated_a", 70.0)
        .choose("bank_chemistry", "agm")
        .set("bank_capacity_ah", 130.0)
        .set("two_voltage_offset_v", 0.6)
        .check(|says| {
            says.finding_says("regulators_fight", &["0.60 V"]);
            says.some_between("% by the second", part_pct(says, 1), 55.0, 97.0);
        });
}

#[test]
fn two_built_in_regulators_a_few_tenths_apart() {
    // The commonest pair there is: each with its own built-in regulator.
    on_agm("two built-in regulators 0.4 V apart", "apart")
        .choose("reg_kind", "internal")
        .set("two_voltage_offset_v", 0.4)
        .check(|says| says.finding_says("regulators_fight", &["0.40 V"]));
}

#[test]
fn equally_warm_means_the_better_cooled_gives_more() {
    // The second one sits in the corner: 190 °C on the bench where the first has 150.
    let run = |regulators: &str| {
        on_agm("one well cooled, one badly", regulators)
            .set("alt2_anchor_winding_c", 190.0)
            .answers()
            .report
            .analyses
    };
    let (by_output, by_heat) = (run("linked_share"), run("linked_heat"));
    let part = |report: &ampwright_core::analysis::Analyses| {
        let sharing = report.sharing.as_ref().expect("two on the bank");
        sharing.parts_pct[0]
    };
    assert!(part(&by_heat) > part(&by_output) + 1.0);
    let apart_k = |report: &ampwright_core::analysis::Analyses| {
        let last = report.run.series.last().expect("a run");
        let [first, second] = [0, 1].map(|at| last.alternators[at].case_c);
        (first - second).abs()
    };
    assert!(apart_k(&by_heat) < 0.7 * apart_k(&by_output));
}

#[test]
fn one_regulator_for_both_is_what_it_was() {
    let run = |regulators: Option<&str>| {
        let boat = Boat::new("one for both").choose("two_role", "house");
        let boat = match regulators {
            Some(regulators) => boat.choose("two_regulators", regulators),
            None => boat,
        };
        format!("{:?}", boat.answers().report.analyses.run)
    };
    assert_eq!(run(None), run(Some("together")));
}

#[test]
fn a_cap_measured_at_the_bank() {
    // 60 A into the bank and 20 A for the house: the alternator gives 80.
    let capped = |at: &str| {
        Boat::new("60 A cap, 20 A of loads")
            .set("reg_current_cap_a", 60.0)
            .choose("reg_cap_measured", at)
            .set("run_house_load_a", 20.0)
    };
    capped("battery").check(|says| {
        says.peak_bank_amps_between(59.0, 60.5);
        says.between(
            "A of the alternator",
            says.report.analyses.run.start_a,
            79.0,
            80.5,
        );
    });
    capped("alternator").check(|says| says.peak_bank_amps_between(39.0, 40.5));
}

#[test]
fn two_caps_measured_at_the_bank_do_not_add_up() {
    // Each sees what both give: 60 A into a bank that bears 100, not 120.
    pair("two regulators that measure at the bank", "apart")
        .set("reg_current_cap_a", 60.0)
        .choose("reg_cap_measured", "battery")
        .set("bank_charge_limit_a", 100.0)
        .check(|says| {
            says.peak_bank_amps_between(59.0, 60.5);
            says.must_not_find("management_opens");
        });
}
