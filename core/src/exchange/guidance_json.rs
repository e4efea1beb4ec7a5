//! The settings sheet and the commissioning list as JSON: codes and quantities,
//! and what is said of them.

use serde_json::{Value, json};

use crate::guidance::commissioning::{Form, Stage};
use crate::guidance::settings::Settings;
use crate::text;
use crate::units::Reader;

/// The settings as one JSON object. Each group has its `code` and, as `title`,
/// its heading; each setting its `code`, `value` and `reason` with their
/// quantities, `from`, and as `text` what it is called, what to set and why. `ask`
/// are the questions to the makers, each with its `code` and `text`.
pub fn settings_json(settings: &Settings, reader: &Reader) -> Value {
    let mut json = json!(settings);
    let asked = settings.ask.iter().map(|code| {
        json!({
            "code": code,
            "text": text::ask_makers::question(*code),
        })
    });
    json["ask"] = asked.collect();
    for (group, of) in settings.groups.iter().enumerate() {
        let group_json = &mut json["groups"][group];
        group_json["title"] = text::settings::title(of.device).into();
        for (at, setting) in of.settings.iter().enumerate() {
            group_json["settings"][at]["text"] = json!({
                "label": text::settings::label(of.code(), setting, reader),
                "value": text::settings::value(setting, reader),
                "reason": text::settings::reason(&setting.reason, reader),
            });
        }
    }
    json
}

/// The commissioning list as a JSON list of its stages. Each has its `code`,
/// `title` and `about`; each step its `code`, the quantities of its `figure` and
/// `stop`, `done`, and as `text` what to do, what to beware of and when to stop.
pub fn commissioning_json(stages: &[Stage], reader: &Reader) -> Value {
    let mut json = json!(stages);
    for (stage, of) in stages.iter().enumerate() {
        let stage_json = &mut json[stage];
        stage_json["title"] = text::commissioning::title(of.code).into();
        stage_json["about"] = text::commissioning::about(of.code).into();
        for (at, step) in of.steps.iter().enumerate() {
            let stop = step.stop.as_ref();
            stage_json["steps"][at]["text"] = json!({
                "step": text::commissioning::text(step, reader),
                "caution": text::commissioning::caution(step.code),
                "stop": stop.map(|stop| text::commissioning::stop(stop, reader)),
            });
        }
    }
    json
}

/// The sheet for the readings of the hot run as one JSON object, with its headings
/// as `columns`.
pub fn form_json(form: &Form) -> Value {
    let mut json = json!(form);
    json["columns"] = json!(text::headings::READINGS);
    json
}

#[cfg(test)]
mod tests {
    use crate::boat::Worksheet;
    use crate::exchange::{commissioning_json, settings_json};
    use crate::guidance::{commissioning, settings};
    use crate::report::report;
    use crate::units::Reader;

    #[test]
    fn settings_have_code_quantity_and_sentence() {
        let sheet = Worksheet::default();
        let set = settings(&sheet, &report(&sheet));
        let json = settings_json(&set, &Reader::METRIC);
        let charge = &json["groups"][0];
        assert_eq!(charge["code"], "charge");
        let voltage = &charge["settings"][0];
        assert_eq!(voltage["code"], "voltage");
        assert_eq!(voltage["value"]["kind"], "voltage_at");
        assert_eq!(voltage["value"]["voltage"]["unit"], "V");
        assert_eq!(voltage["reason"]["code"], "cells_in_series");
        assert_eq!(voltage["text"]["value"], "14.2 V at the bank's terminals");
        let us = settings_json(&set, &Reader::US);
        let reason = us["groups"][0]["settings"][0]["text"]["reason"].as_str();
        assert!(reason.is_some_and(|said| said.ends_with("at 77 °F.")));
    }

    #[test]
    fn steps_have_code_quantity_and_sentence() {
        let sheet = Worksheet::default();
        let stages = commissioning(&sheet, &report(&sheet));
        let json = commissioning_json(&stages, &Reader::METRIC);
        assert_eq!(json[0]["code"], "before");
        for (stage, of) in stages.iter().enumerate() {
            for (at, step) in of.steps.iter().enumerate() {
                let found = &json[stage]["steps"][at];
                assert_eq!(found["code"], step.code.name());
                assert!(found["text"]["step"].as_str().is_some());
                assert_eq!(found["text"]["stop"].is_string(), step.stop.is_some());
                assert_eq!(found["stop"].is_object(), step.stop.is_some());
            }
        }
    }
}
