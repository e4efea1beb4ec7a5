//! Settings and commissioning lists of a few boats, in words.

use ampwright_core::boat::demo;
use ampwright_core::exchange::open_link;
use ampwright_core::guidance::commissioning::{Form, FormRow, form};
use ampwright_core::guidance::settings::Source;
use ampwright_core::guidance::{commissioning, settings};
use ampwright_core::{Worksheet, report};

fn set(sheet: &Worksheet) -> String {
    let mut lines = Vec::new();
    for group in settings(sheet, &report(sheet)).groups {
        lines.push(format!("[{}] {}", group.key, group.title));
        for line in group.lines {
            let from = match line.from {
                Source::Worksheet(name) => name,
                other => other.words(),
            };
            lines.push(format!(
                "  {} | {}: {}\n      {} ({from})",
                line.key, line.what, line.value, line.why
            ));
        }
    }
    lines.join("\n")
}

fn listed(sheet: &Worksheet) -> String {
    let mut lines = Vec::new();
    for stage in commissioning(sheet, &report(sheet)) {
        lines.push(format!("[{}] {}: {}", stage.key, stage.title, stage.about));
        for step in stage.steps {
            lines.push(format!("  {} | {}", step.id, step.text));
            lines.extend(
                step.caution
                    .map(|caution| format!("      Caution: {caution}")),
            );
            lines.extend(step.stop.map(|stop| format!("      {stop}")));
        }
    }
    lines.join("\n")
}

fn sheet_of(form: &Form) -> String {
    let cell = |figure: Option<f64>, digits: usize| {
        figure.map_or(String::new(), |figure| format!("{figure:.digits$}"))
    };
    let row = |row: &FormRow| {
        [
            format!("{:.0}", row.minute),
            cell(row.alternator_a, 0),
            cell(row.case_c, 0),
            cell(row.air_c, 0),
            format!("{:.0}", form.engine_rpm),
            cell(row.volts, 1),
        ]
        .join(" | ")
    };
    let rows = form.rows.iter().map(row);
    let lines: Vec<String> = std::iter::once(form.columns.join(" | "))
        .chain(rows)
        .collect();
    lines.join("\n")
}

fn opened(link: &str) -> Worksheet {
    let opened = open_link(link).expect("a link");
    assert!(opened.remarks.is_empty(), "{link}: {:?}", opened.remarks);
    opened.sheet
}

#[test]
fn demo_settings() {
    insta::assert_snapshot!(set(&demo()));
}

#[test]
fn demo_first_run() {
    insta::assert_snapshot!(listed(&demo()));
}

#[test]
fn demo_form() {
    insta::assert_snapshot!(sheet_of(&form(&demo(), &report(&demo()))));
}

/// A converter, a built-in regulator, flooded lead.
#[test]
fn converter_settings() {
    insta::assert_snapshot!(set(&opened(
        "v=1&way_kind=converter&reg_kind=internal&bank_chemistry=flooded&end"
    )));
}

/// Two machines of a cap on a small 24 V bank, with a set-point too high.
#[test]
fn second_machine_settings() {
    insta::assert_snapshot!(set(&opened(
        "v=1&bank_nominal_v=24&bank_capacity_ah=200&two_role=house&reg_current_cap_a=80&reg_set_point_c=118&end"
    )));
}

#[test]
fn unwatched_settings() {
    insta::assert_snapshot!(set(&opened("v=1&reg_kind=internal&reg_fixed_v=14.4&end")));
}

#[test]
fn shore_only() {
    let sheet = opened("v=1&shore_rest=shore&bank_chemistry=agm&end");
    insta::assert_snapshot!(format!("{}\n\n{}", set(&sheet), listed(&sheet)));
}
