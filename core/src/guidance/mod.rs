//! What to do aboard: what to set in each device, the commissioning list, and
//! the cautions that belong beside both, as codes and quantities. Their sentences
//! are in `text`.
//!
//! It reads worksheet and report and says what follows; it decides nothing that
//! the layers above have not decided.

mod ask_makers;
mod cautions;
pub mod commissioning;
pub mod settings;

pub use ask_makers::{MakerQuestion, maker_questions};
pub use cautions::{
    CAUTIONS, COLDEST_LITHIUM_C, Caution, CautionCode, CautionTopic, FLAT_LEAD_FREEZES_C, cautions,
    cautions_at,
};
pub use commissioning::commissioning;
pub use settings::settings;
