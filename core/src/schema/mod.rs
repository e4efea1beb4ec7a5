//! What an input is: its key, label, help, unit, range, default and how well
//! it is usually known. Each input stands once, in a `section!` of
//! [`crate::boat`]; form, check, link, file and docs are drawn from there.

mod check;
mod choice;
mod effect;
mod spec;
mod step;
mod value;

pub(crate) use check::no_input;
pub use check::{InputError, parse_number, quoted};
pub(crate) use choice::choice;
pub(crate) use effect::effects;
pub use effect::{Direction, Effect, Effects};
pub use spec::{Confidence, FieldSpec, Kind, Place, Spread};
pub use value::{Choice, FieldType, Value};
