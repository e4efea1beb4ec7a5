//! A second alternator on the same engine.

use crate::boat::choose;
use crate::boat::section;
use crate::schema::{choice, effects};

choice! {
    /// What a second alternator does.
    SecondRole {
        None = "none", "There is one alternator";
        Start = "start", "A second one keeps the start battery";
        House = "house", "A second one charges the house bank too";
    }
}

section! {
    /// Whether there is a second alternator.
    Second {
        role: SecondRole = choose("How many", SecondRole::OPTIONS, 0)
            .help("The alternator above charges the house bank. One beside it heats the same air and hangs on the same engine. Both follow the same regulator settings where both charge the house bank.");
    }
}

effects! {
    Second: no effect
}
