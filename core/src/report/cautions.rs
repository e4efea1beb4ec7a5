//! Cautions that hold whatever the figures say.

/// A caution that holds whatever the figures say.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Caution {
    /// What it is about.
    pub about: &'static str,
    /// The sentence.
    pub text: &'static str,
}

/// The usual cautions of this work.
pub const CAUTIONS: &[Caution] = &[
    Caution {
        about: "Short circuits",
        text: "A lithium bank gives thousands of amperes into a dropped spanner. Disconnect it, cover the posts, take off rings, use insulated tools, and fuse it at the post with a fuse that can break its current.",
    },
    Caution {
        about: "Disconnect under load",
        text: "When the battery management system opens while the alternator works straight into the bank, the voltage jumps and can destroy diodes and electronics. Let its warning contact cut the field first, and never open a switch in the output lead.",
    },
    Caution {
        about: "Hot and turning parts",
        text: "Belts and fans start without warning and an alternator case burns skin. Keep clear with the engine running; measure with clamps and infrared, not with hands.",
    },
    Caution {
        about: "Exhaust",
        text: "An engine run at anchor can fill the cockpit and cabin with carbon monoxide, your boat's or your neighbour's. Fit an alarm and keep air moving.",
    },
    Caution {
        about: "Gas from lead batteries",
        text: "A lead battery on charge gives off hydrogen. Keep its box vented and sparks away.",
    },
    Caution {
        about: "Cold",
        text: "Never charge a lithium iron phosphate battery below 0 °C.",
    },
    Caution {
        about: "Rules",
        text: "This is a reckoning, not an inspection. The battery maker's sheet, the code of your flag and your insurer come first; where they ask for a licensed electrician, use one.",
    },
];
