//! How the two main answers move when one input rises and all else stays: the
//! sign a reader would expect. `effects!` writes it beneath the section's
//! inputs, and a property test holds the program to it.

/// Which way an answer moves when an input rises.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Direction {
    /// It rises, or stays where something else decides.
    Up,
    /// It falls, or stays where something else decides.
    Down,
    /// It does not move.
    Level,
    /// Either way; why.
    Depends(&'static str),
}

/// The expected signs of one input.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Effect {
    /// Of the current that the alternators hold, hot.
    pub hot_a: Direction,
    /// Of the engine time a day; none at all counts as endless.
    pub hours: Direction,
}

impl Effect {
    /// An input that moves neither, such as a price.
    pub const NONE: Effect = Effect {
        hot_a: Direction::Level,
        hours: Direction::Level,
    };
}

/// A section whose numbers have expected signs.
pub trait Effects {
    /// By name. Every number of the section stands here, unless all that are
    /// missing have no effect.
    const EFFECTS: &'static [(&'static str, Effect)];
    /// What holds for the numbers that do not stand there.
    const OTHERS: Option<Effect>;

    /// The expected signs of an input of the section; none for one that
    /// nobody has written them for.
    fn effect(name: &str) -> Option<Effect> {
        let written = Self::EFFECTS.iter().find(|(known, _)| *known == name);
        written.map(|(_, effect)| *effect).or(Self::OTHERS)
    }
}

/// Writes the expected signs of a section: first that of the hot current, then
/// that of the hours.
macro_rules! effects {
    ($name:ident: no effect) => {
        impl $crate::schema::Effects for $name {
            const EFFECTS: &'static [(&'static str, $crate::schema::Effect)] = &[];
            const OTHERS: Option<$crate::schema::Effect> = Some($crate::schema::Effect::NONE);
        }
    };
    ($name:ident { $($field:ident: $hot:ident $(($hot_why:literal))?, $hours:ident $(($hours_why:literal))?;)+ }) => {
        impl $crate::schema::Effects for $name {
            const EFFECTS: &'static [(&'static str, $crate::schema::Effect)] = &[$(
                (stringify!($field), $crate::schema::Effect {
                    hot_a: $crate::schema::Direction::$hot $(($hot_why))?,
                    hours: $crate::schema::Direction::$hours $(($hours_why))?,
                }),
            )+];
            const OTHERS: Option<$crate::schema::Effect> = None;
        }

        // A name that is no input of the section does not compile.
        const _: fn(&$name) = |section| { $(let _ = section.$field;)+ };
    };
}
pub(crate) use effects;
