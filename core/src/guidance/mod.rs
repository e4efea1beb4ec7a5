//! What to do aboard: what to set in each device, the commissioning list, and
//! the cautions that belong beside both.
//!
//! It reads worksheet and report and says what follows; it decides nothing that
//! the layers above have not decided.

mod cautions;
pub mod commissioning;
pub mod settings;

pub use cautions::{CAUTIONS, Caution, CautionTopic, cautions, cautions_at};
pub use commissioning::commissioning;
pub use settings::settings;
