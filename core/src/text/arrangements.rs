//! What there is to say of arrangements beside their figures.

use crate::decision::arrangements::Disconnect;
use crate::units::Reader;
use crate::units::quantity::volts;

/// What happens when the bank disconnects under load, in a few words.
pub fn disconnect(disconnect: &Disconnect, reader: &Reader) -> String {
    let whole = |v| reader.show(volts(v).to(0));
    match *disconnect {
        Disconnect::BatteryStays => "nothing: a battery stays on the alternator".to_string(),
        Disconnect::Withstood {
            left_v,
            withstand_v,
        } => format!(
            "{} for a moment, electronics withstand {}",
            whole(left_v),
            whole(withstand_v)
        ),
        Disconnect::TooMuchLeft {
            left_v,
            withstand_v,
        } => format!(
            "{} left, electronics withstand only {}",
            whole(left_v),
            whole(withstand_v)
        ),
        Disconnect::NoProtection { left_v } => {
            format!("up to {}, no protection entered", whole(left_v))
        }
    }
}
