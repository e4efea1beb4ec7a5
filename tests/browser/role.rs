//! The names by which the tests find things are those that a screen reader
//! says: the browser's own, of every button, entry, list, heading and region.

use crate::desk::{Desk, lay_out, unfold};
use ampwright_tests::driver::{Role, Scope, Screen};
use serde_json::{Value, json};

/// Each role, and what the browser's own tree of accessibility calls it.
const ROLES: [(Role, &str); 13] = [
    (Role::Button, "button"),
    (Role::Checkbox, "checkbox"),
    (Role::Choice, "combobox"),
    (Role::Field, "textbox"),
    (Role::Fold, "DisclosureTriangle"),
    (Role::Group, "group"),
    (Role::Heading, "heading"),
    (Role::Link, "link"),
    (Role::Navigation, "navigation"),
    (Role::Radio, "radio"),
    (Role::Region, "region"),
    (Role::Slider, "slider"),
    (Role::Table, "table"),
];

#[test]
fn names_are_those_a_screen_reader_says() {
    let desk = Desk::open(Screen::Desk);
    unfold(&desk.browser);
    lay_out(&desk.browser);
    // Between two looks at the page between which nothing was drawn anew.
    let look = || ROLES.map(|(role, _)| desk.browser.names(role).unwrap());
    let still = (0..20).find_map(|_| {
        let names = look();
        let tree = "Accessibility.getFullAXTree";
        let tree = desk.browser.devtools(tree, json!({})).unwrap();
        (look() == names).then_some((names, tree))
    });
    let (names, tree) = still.expect("the page comes to rest");
    let heard = tree["nodes"].as_array().unwrap();
    for ((role, told), mut names) in ROLES.into_iter().zip(names) {
        let mut heard: Vec<String> = heard
            .iter()
            .filter(|node| node["ignored"] != json!(true) && node["role"]["value"] == told)
            .map(|node| plain(&node["name"]["value"]))
            .collect();
        assert!(!names.is_empty() || role == Role::Navigation, "{role:?}");
        // What is left over on either side.
        names.retain(|name| match heard.iter().position(|other| other == name) {
            Some(at) => {
                heard.swap_remove(at);
                false
            }
            None => true,
        });
        assert!(
            names.is_empty() && heard.is_empty(),
            "{role:?}: only the script says {names:?}, only the browser {heard:?}"
        );
    }
}

fn plain(name: &Value) -> String {
    let name = name.as_str().unwrap_or_default();
    let name = name.split_whitespace().collect::<Vec<_>>().join(" ");
    // Drawn in front by the style: the mark of a fold, the dot after a number.
    let bare = ["− ", "+ ", ". "]
        .iter()
        .find_map(|mark| name.strip_prefix(mark));
    bare.unwrap_or(&name).to_string()
}
