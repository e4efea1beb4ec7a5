//! Settings and commissioning lists of a few boats, in words.

use ampwright_core::boat::demo;
use ampwright_core::exchange::open_link;
use ampwright_core::guidance::commissioning::{Form, FormRow, form};
use ampwright_core::guidance::settings::Source;
use ampwright_core::guidance::{commissioning, settings};
use ampwright_core::text;
use ampwright_core::units::Reader;
use ampwright_core::{Worksheet, report};

const READER: &Reader = &Reader::METRIC;

fn set(sheet: &Worksheet) -> String {
    let mut lines = Vec::new();
    for group in settings(sheet, &report(sheet)).groups {
        let (code, title) = (group.code(), text::settings::title(group.device));
        lines.push(format!("[{}] {title}", code.name()));
        for setting in &group.settings {
            let from = match setting.from {
                Source::Worksheet(key) => key.name(),
                other => text::settings::source(other).to_string(),
            };
            lines.push(format!(
                "  {} | {}: {}\n      {} ({from})",
                setting.code.name(),
                text::settings::label(code, setting, READER),
                text::settings::value(setting, READER),
                text::settings::reason(&setting.reason, READER)
            ));
        }
    }
    lines.join("\n")
}

fn listed(sheet: &Worksheet) -> String {
    let mut lines = Vec::new();
    for stage in commissioning(sheet, &report(sheet)) {
        let code = stage.code;
        lines.push(format!(
            "[{}] {}: {}",
            code.name(),
            text::commissioning::title(code),
            text::commissioning::about(code)
        ));
        for step in &stage.steps {
            let (id, text) = (step.code.name(), text::commissioning::text(step, READER));
            lines.push(format!("  {id} | {text}"));
            let caution = text::commissioning::caution(step.code);
            lines.extend(caution.map(|caution| format!("      Caution: {caution}")));
            let stop = step.stop.as_ref();
            let stop = stop.map(|stop| text::commissioning::stop(stop, READER));
            lines.extend(stop.map(|stop| format!("      {stop}")));
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
    let lines: Vec<String> = std::iter::once(text::headings::READINGS.join(" | "))
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
