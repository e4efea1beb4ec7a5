//! What a row of the worksheet shows for what stands in it.

use ampwright_core::boat::{Chemistry, Key, WayKind, key};
use ampwright_core::schema::{Confidence, Value};
use leptos::prelude::*;

use super::FieldRow;
use crate::prerender::part;
use crate::state::{AppState, Target};

fn row(key: Key, prepare: impl FnOnce(AppState)) -> String {
    part(prepare, || view! { <FieldRow place="sheet" key /> })
}

/// What an attribute of the row's entry says.
fn attribute<'a>(html: &'a str, name: &str) -> Option<&'a str> {
    let (_, entry) = html.split_once("<input")?;
    let (entry, _) = entry.split_once('>')?;
    let (_, after) = entry.split_once(&format!(" {name}=\""))?;
    after.split('"').next()
}

/// The text of the row, without its markup.
fn words(html: &str) -> String {
    let mut text = String::new();
    for part in html.split('<') {
        text.push_str(part.split_once('>').map_or(part, |(_, after)| after));
        text.push(' ');
    }
    text
}

#[test]
fn a_figure_has_its_label_its_unit_and_where_to_read_it() {
    let capacity = key!(bank.capacity_ah);
    let html = row(capacity, |state| {
        let stated = |sheet: &mut ampwright_core::Worksheet| {
            sheet
                .state(capacity, Value::Number(420.0))
                .expect("in range")
        };
        state.sheet.update(stated);
    });
    assert!(
        html.contains(r#"<label for="sheet-bank_capacity_ah">"#),
        "{html}"
    );
    assert_eq!(attribute(&html, "value"), Some("420"));
    assert_eq!(attribute(&html, "aria-invalid"), Some("false"));
    assert_eq!(
        attribute(&html, "aria-describedby"),
        Some("sheet-bank_capacity_ah-complaint sheet-bank_capacity_ah-help")
    );
    let words = words(&html);
    assert!(
        words.contains(capacity.spec().label) && words.contains("A·h"),
        "{words}"
    );
    assert!(words.contains(capacity.spec().help), "{words}");
}

#[test]
fn what_is_refused_stays_as_typed_with_the_figure_that_is_used() {
    let capacity = key!(bank.capacity_ah);
    let html = row(capacity, |state| {
        for typed in ["much", "5"] {
            let why = capacity.spec().read(typed).expect_err("no capacity");
            let id = "sheet-bank_capacity_ah";
            state.refuse(id, Target::Input(capacity), typed.to_string(), why);
        }
    });
    assert_eq!(attribute(&html, "value"), Some("5"));
    assert_eq!(attribute(&html, "aria-invalid"), Some("true"));
    let (_, complaint) = html.split_once(r#"role="alert""#).expect("a complaint");
    assert!(complaint.contains("10 to 5000"), "{complaint}");
    assert!(
        complaint.contains("400 A·h is used until you correct it."),
        "{complaint}"
    );
}

#[test]
fn a_figure_left_empty_shows_what_it_stands_for() {
    let html = row(key!(bank.charge_v), |_| ());
    assert_eq!(attribute(&html, "value"), Some(""));
    let lithium = attribute(&html, "placeholder").map(str::to_string);
    let html = row(key!(bank.charge_v), |state| {
        state
            .sheet
            .update(|sheet| sheet.inputs.bank.chemistry = Chemistry::Flooded);
    });
    assert!(lithium.is_some());
    assert_ne!(attribute(&html, "placeholder").map(str::to_string), lithium);
}

#[test]
fn entries_are_in_the_readers_units() {
    let outside = key!(space.outside_c);
    let set = |state: AppState| {
        state
            .sheet
            .update(|sheet| sheet.inputs.space.outside_c = 30.0)
    };
    let metric = row(outside, set);
    assert_eq!(attribute(&metric, "value"), Some("30"));
    assert!(words(&metric).contains("°C"));
    let us = row(outside, |state| {
        set(state);
        state.preferences.choose_all(true);
    });
    assert_eq!(attribute(&us, "value"), Some("86"));
    assert!(words(&us).contains("°F"));
}

#[test]
fn what_does_not_concern_the_boat_is_hidden() {
    let charger = |kind: WayKind| {
        row(key!(way.converter_a), move |state| {
            state.sheet.update(|sheet| sheet.inputs.way.kind = kind);
        })
    };
    let is_hidden = |html: &str| html.starts_with(r#"<div class="row hidden""#);
    assert!(is_hidden(&charger(WayKind::Direct)));
    assert!(!is_hidden(&charger(WayKind::Converter)));
}

#[test]
fn a_choice_has_its_options_and_the_one_that_stands() {
    let html = row(key!(bank.chemistry), |state| {
        state
            .sheet
            .update(|sheet| sheet.inputs.bank.chemistry = Chemistry::Agm);
    });
    for option in Chemistry::OPTIONS {
        assert!(
            html.contains(&format!(r#"<option value="{}""#, option.key)),
            "{html}"
        );
    }
    assert_eq!(html.matches(" selected").count(), 1, "{html}");
    assert!(html.contains(r#"<option value="agm" selected"#), "{html}");
}

#[test]
fn how_well_it_is_known_is_part_of_the_row() {
    let rated = key!(alt.rated_a);
    let html = row(rated, |state| {
        state.sheet.update(|sheet| {
            sheet.state(rated, Value::Number(90.0)).expect("in range");
            sheet.know(rated, Confidence::Measured);
        });
    });
    let (_, known) = html
        .split_once("<select")
        .expect("a choice of how well it is known");
    assert!(
        known.contains(r#"<option value="measured" selected"#),
        "{known}"
    );
}
