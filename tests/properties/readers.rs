//! What the fuzz targets ask of the readers, asked of texts drawn at random:
//! any bytes, and good texts spoilt in several places.

use ampwright_core::exchange::{open_link, read_file, to_collection, to_json, to_link};
use proptest::prelude::*;
use proptest::sample::Index;

use crate::draw::any_sheet;

#[path = "../fuzz/checks.rs"]
mod checks;

const LOG: &str = "time;alternator A;case (°F);air;shaft rpm;volts\n23:58;90;100;85;3000;14.1\n0:03;80,5;150;90;3000;14.2\n";

/// One way to spoil a text: where, how much, and what with.
#[derive(Debug, Clone)]
enum Spoil {
    Cut(Index),
    Leave(Index, usize),
    Twice(Index, usize),
    Put(Index, String),
    Byte(Index, u8),
}

fn spoil() -> impl Strategy<Value = Spoil> {
    let words = proptest::sample::select(vec![
        "&", "=", "~", "%", "%ff", "+", "&end", "amp;", "v=1", "1e999", "-0", "\"", "{", "]", ",",
        ":", "null", "\n", ";", "\t", "name", "load=", "way=", "\u{feff}", "<script>",
    ]);
    prop_oneof![
        any::<Index>().prop_map(Spoil::Cut),
        (any::<Index>(), 1..40usize).prop_map(|(at, long)| Spoil::Leave(at, long)),
        (any::<Index>(), 1..40usize).prop_map(|(at, long)| Spoil::Twice(at, long)),
        (any::<Index>(), words).prop_map(|(at, word)| Spoil::Put(at, word.to_string())),
        (any::<Index>(), any::<u8>()).prop_map(|(at, byte)| Spoil::Byte(at, byte)),
    ]
}

fn spoilt(text: &str, spoils: &[Spoil]) -> String {
    let mut bytes = text.as_bytes().to_vec();
    for spoil in spoils {
        let place = |at: &Index| at.index(bytes.len() + 1);
        let to = |from: usize, long: usize| (from + long).min(bytes.len());
        match spoil {
            Spoil::Cut(at) => bytes.truncate(place(at)),
            Spoil::Leave(at, long) => {
                let from = place(at);
                bytes.drain(from..to(from, *long));
            }
            Spoil::Twice(at, long) => {
                let from = place(at);
                let again = bytes[from..to(from, *long)].to_vec();
                bytes.splice(from..from, again);
            }
            Spoil::Put(at, word) => {
                let from = place(at);
                bytes.splice(from..from, word.bytes());
            }
            Spoil::Byte(at, byte) => {
                let from = place(at);
                if let Some(old) = bytes.get_mut(from) {
                    *old = *byte;
                }
            }
        }
    }
    String::from_utf8_lossy(&bytes).into_owned()
}

proptest! {
    #![proptest_config(crate::cases(2000))]

    #[test]
    fn any_bytes(bytes in proptest::collection::vec(any::<u8>(), 0..300)) {
        let text = String::from_utf8_lossy(&bytes);
        checks::link(&text);
        checks::link(&format!("v=1&{text}"));
        checks::file(&text);
        checks::log(&text);
    }

    #[test]
    fn good_texts_spoilt(drawn in any_sheet(), spoils in proptest::collection::vec(spoil(), 1..6)) {
        checks::link(&spoilt(&to_link(&drawn.0), &spoils));
        checks::file(&spoilt(&to_json(&drawn.0).to_string(), &spoils));
        checks::log(&spoilt(LOG, &spoils));
    }

    #[test]
    fn many_in_one_file(one in any_sheet(), other in any_sheet(), spoils in proptest::collection::vec(spoil(), 1..6)) {
        let sheets = [one.0, other.0];
        let text = to_collection(&sheets).to_string();
        let readings = read_file(&text).expect("a file of ours");
        prop_assert_eq!(readings.len(), 2);
        for (reading, sheet) in readings.iter().zip(&sheets) {
            prop_assert!(reading.remarks.is_empty());
            prop_assert_eq!(&reading.sheet, sheet);
        }
        checks::file(&spoilt(&text, &spoils));
    }
}

proptest! {
    #![proptest_config(crate::cases(60))]

    /// Wherever a link is cut, it says so.
    #[test]
    fn every_cut_is_noticed(drawn in any_sheet()) {
        let link = to_link(&drawn.0);
        for cut in 0..link.len() {
            if let Ok(opened) = open_link(&link[..cut]) {
                prop_assert!(!opened.whole, "{}", &link[..cut]);
                prop_assert!(!opened.remarks.is_empty());
            }
        }
    }

    /// What mail and forums do to a link does not hurt it.
    #[test]
    fn usual_damage_is_undone(drawn in any_sheet(), at in any::<Index>()) {
        let link = to_link(&drawn.0);
        let at = at.index(link.len());
        let broken = format!("#{}\r\n{}>).", &link[..at], &link[at..]).replace('&', "&amp;");
        let opened = open_link(&broken).expect("a link of ours");
        prop_assert!(opened.whole);
        prop_assert_eq!(opened.lost, 0);
        prop_assert_eq!(opened.sheet, checks::unticked(&drawn.0));
    }
}

/// Texts far longer than any of ours, and nested deep: answered at once, in
/// few words, and with no more than a worksheet holds.
#[test]
fn endless_texts_are_borne() {
    let head = r#"{"type":"ampwright-worksheet","version":2"#;
    for part in [
        "&x",
        "&x=",
        "&load=",
        "&load=a~5",
        "&way=",
        "~",
        "%C3%A9",
        "\n",
    ] {
        for long in [900_000, 5_000_000] {
            checks::link(&format!("v=1&name={}&end", part.repeat(long / part.len())));
        }
    }
    let rows = |what: &str, one: &str, count: usize| {
        format!(
            "{head},\"{what}\":[{}{one}]}}",
            format!("{one},").repeat(count)
        )
    };
    for file in [
        "[".repeat(10_000),
        "{\"a\":".repeat(10_000),
        format!(
            "{head},\"loads\":{}{}",
            "[".repeat(10_000),
            "]".repeat(10_000)
        ),
        format!(
            "{head},\"inputs\":{{\"bank_capacity_ah\":{}{}}}}}",
            "[".repeat(100),
            "]".repeat(100)
        ),
        rows("loads", r#"{"draw":5}"#, 100_000),
        rows("loads", "{}", 1_000_000),
        rows("loads", "7", 1_000_000),
        rows("arrangements", "{}", 100_000),
        rows("done", "7", 1_000_000),
        format!("{head},\"name\":\"{}\"}}", "é".repeat(4_000_000)),
        " ".repeat(50_000_000),
    ] {
        checks::file(&file);
    }
    for line in [
        "1 2 3 4 5 6\n",
        "1,",
        "x\n",
        "\"",
        ",\n",
        "min,amps;",
        "1:",
        "1e9,\r",
        "\u{2212}",
    ] {
        checks::log(&line.repeat(10_000_000 / line.len()));
    }
}
