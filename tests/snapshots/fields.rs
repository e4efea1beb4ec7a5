//! Every field: name, label, what it takes, what it is when nobody has said.

use ampwright_core::boat::{Field, Section};
use ampwright_core::boat::{Key, LoadRow};
use ampwright_core::schema::{FieldSpec, Kind, Place};
use ampwright_core::text::errors::span;
use ampwright_core::units::Reader;

fn line(name: &str, spec: &FieldSpec) -> String {
    let takes = match spec.kind {
        Kind::Choice { options, .. } => {
            let keys: Vec<_> = options.iter().map(|option| option.key).collect();
            keys.join(", ")
        }
        _ => span(spec, &Reader::METRIC),
    };
    let default = match spec.kind {
        Kind::Optional { empty_says, .. } => format!("empty: {empty_says}"),
        _ => spec.write(spec.default()),
    };
    let deep = if spec.place == Place::Advanced {
        ", deep"
    } else {
        ""
    };
    format!(
        "{name} | {} | {takes} | {default} | {}{deep}",
        spec.label,
        spec.usual.word()
    )
}

#[test]
fn worksheet_fields() {
    let lines: Vec<String> = Key::all()
        .map(|key| line(&key.name(), key.spec()))
        .collect();
    insta::assert_snapshot!(lines.join("\n"));
}

#[test]
fn load_columns() {
    let of = |field: &Field<LoadRow>| line(field.name, &field.spec);
    let lines: Vec<String> = LoadRow::FIELDS.iter().map(of).collect();
    insta::assert_snapshot!(lines.join("\n"));
}

/// What the form says beneath each field.
#[test]
fn helps() {
    let lines: Vec<String> = Key::all()
        .map(|key| format!("{}: {}", key.name(), key.spec().help))
        .collect();
    insta::assert_snapshot!(lines.join("\n"));
}
