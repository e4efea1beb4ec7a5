//! Every field: name, label, what it takes, what it is when nobody has said.

use ampwright_core::fields::{Field, Kind, Place, Section, Spec};
use ampwright_core::worksheet::{Key, LoadRow};

fn line(name: &str, spec: &Spec) -> String {
    let takes = match spec.kind {
        Kind::Choice { options, .. } => {
            let keys: Vec<_> = options.iter().map(|option| option.key).collect();
            keys.join(", ")
        }
        _ => spec.span(),
    };
    let default = match spec.kind {
        Kind::Maybe { absent, .. } => format!("empty: {}", absent.says),
        _ => spec.write(spec.default()),
    };
    let deep = if spec.place == Place::Deep {
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
