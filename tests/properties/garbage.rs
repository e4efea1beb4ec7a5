//! No text whatever brings the readers down.

use ampwright_core::boat::Key;
use ampwright_core::exchange::{open_link, read_json, to_json, to_link};
use ampwright_core::schema::Value;
use proptest::prelude::*;

use crate::draw::any_sheet;

/// Texts that look a little like ours.
fn nearly() -> impl Strategy<Value = String> {
    let word = prop_oneof![
        "\\PC{0,20}",
        Just("v=2".to_string()),
        Just("&load=".to_string()),
        Just("&name=%ff%".to_string()),
        Just("bank_capacity_ah=1e999~m".to_string()),
        Just("~".to_string()),
        Just("&end".to_string()),
        Just("{\"type\":\"ampwright-worksheet\",\"version\":1,".to_string()),
        Just("\"inputs\":{\"alt_test_v\":null,".to_string()),
        Just("\"loads\":[{\"draw\":[]}],".to_string()),
        Just("}".to_string()),
    ];
    proptest::collection::vec(word, 0..8).prop_map(|words| words.concat())
}

proptest! {
    #![proptest_config(crate::cases(2000))]

    #[test]
    fn any_text_as_link(text in any::<String>(), nearly in nearly()) {
        let _ = open_link(&text);
        let _ = open_link(&nearly);
        let _ = open_link(&format!("v=2&{nearly}"));
    }

    #[test]
    fn any_text_as_json(text in any::<String>(), nearly in nearly()) {
        let _ = read_json(&text);
        let _ = read_json(&nearly);
    }

    #[test]
    fn any_text_in_any_field(text in any::<String>(), nearly in nearly()) {
        for key in Key::all() {
            for text in [&text, &nearly] {
                if let Ok(Value::Number(number)) = key.spec().read(text) {
                    let (low, high) = key.spec().range().expect("a number's range");
                    prop_assert!((low..=high).contains(&number));
                }
            }
        }
    }

    /// One character of a good text changed.
    #[test]
    fn a_damaged_text(drawn in any_sheet(), place in any::<prop::sample::Index>(), c in any::<char>()) {
        for text in [to_link(&drawn.0), to_json(&drawn.0).to_string()] {
            let mut chars: Vec<char> = text.chars().collect();
            let at = place.index(chars.len());
            chars[at] = c;
            let damaged: String = chars.into_iter().collect();
            let _ = open_link(&damaged);
            let _ = read_json(&damaged);
        }
    }
}
