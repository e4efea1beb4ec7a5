//! What an input is: its key, label, help, unit, range, default and how well
//! it is usually known. Each input stands once, in a `section!` of
//! [`crate::boat`]; form, check, link, file and docs are drawn from there.

mod check;
mod choice;
mod codes;
mod effect;
mod error;
mod excerpt;
mod spec;
mod step;
mod typed;
mod value;

pub use check::Turn;
pub(crate) use choice::choice;
pub(crate) use codes::codes;
pub(crate) use effect::effects;
pub use effect::{Direction, Effect, Effects};
pub use error::{InputError, InputRange};
pub use excerpt::Excerpt;
pub use spec::{Confidence, FieldSpec, Kind, Place, Spread};
pub use typed::parse_number;
pub use value::{Choice, FieldType, KeptValue, Value};
