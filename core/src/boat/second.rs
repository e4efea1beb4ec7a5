//! A second alternator on the same engine.

use crate::boat::choose;
use crate::boat::section;
use crate::schema::{choice, effects};

choice! {
    /// What a second alternator does.
    SecondRole {
        None = "none", "There is one alternator";
        Start = "start", "The second alternator charges the start battery";
        House = "house", "The second alternator charges the house bank too";
    }
}

section! {
    /// Whether there is a second alternator.
    Second {
        role: SecondRole = choose("How many", SecondRole::OPTIONS, 0)
            .help("The first alternator charges the house bank. A second one heats the same air and loads the same engine. Where both charge the house bank, both follow the same regulator settings.");
    }
}

effects! {
    Second: no effect
}
