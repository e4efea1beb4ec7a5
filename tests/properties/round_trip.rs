//! A worksheet comes back from a link and from a file as it went.

use ampwright_core::Worksheet;
use ampwright_core::worksheet::{open_link, read_json, to_json, to_link};
use proptest::prelude::*;

use crate::draw::any_sheet;

proptest! {
    #![proptest_config(crate::cases(2000))]

    #[test]
    fn through_a_link(drawn in any_sheet()) {
        let link = to_link(&drawn.0);
        prop_assert!(link.is_ascii());
        let opened = open_link(&link).expect("a link of ours");
        prop_assert!(opened.whole);
        prop_assert_eq!(&opened.remarks, &Vec::<String>::new());
        // A link tells a boat, not what was done on it.
        let told = Worksheet { done: Vec::new(), ..drawn.0 };
        prop_assert_eq!(&opened.sheet, &told);
        prop_assert_eq!(to_link(&opened.sheet), link);
    }

    #[test]
    fn through_json(drawn in any_sheet()) {
        let text = to_json(&drawn.0).to_string();
        let reading = read_json(&text).expect("a file of ours");
        prop_assert_eq!(&reading.remarks, &Vec::<String>::new());
        prop_assert_eq!(&reading.sheet, &drawn.0);
    }

    #[test]
    fn a_cut_link_is_noticed(drawn in any_sheet(), part in 0.0..1.0f64) {
        let link = to_link(&drawn.0);
        let cut = (link.len() as f64 * part) as usize;
        if let Ok(opened) = open_link(&link[..cut]) {
            prop_assert!(!opened.whole);
            prop_assert!(!opened.remarks.is_empty());
        }
    }
}
