//! What an input is: its key, label, help, unit, range, default and how well
//! it is usually known. Each input stands once, in a `section!` of
//! [`crate::worksheet`]; form, check, link, file and docs are drawn from there.

mod check;
mod choice;
mod duration;
mod effect;
mod section;
mod spec;
mod step;
mod unit;
mod value;

pub(crate) use check::no_input;
pub use check::{Complaint, parse_number, quoted};
pub(crate) use choice::choice;
pub(crate) use duration::after;
pub use duration::brief_clock;
pub(crate) use effect::effects;
pub use effect::{Direction, Effect, Effects};
pub use section::{Field, Section};
pub(crate) use section::{section, sections};
pub use spec::{Absent, Kind, Knowledge, Place, Spec, Spread};
pub(crate) use spec::{choose, maybe, number};
pub use unit::{Other, Unit, units};
pub use value::{Choice, Held, Value};
