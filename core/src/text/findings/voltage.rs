//! What is said of an alternator of another voltage than its battery.

use crate::boat::{WayKind, WhichAlternator};
use crate::findings::VoltageFinding;
use crate::text::words;
use crate::units::Reader;
use crate::units::quantity::volts;

pub(super) fn sentence(finding: &VoltageFinding, reader: &Reader) -> String {
    let whole = |v: f64| reader.show(volts(v).to(0));
    match *finding {
        VoltageFinding::AlternatorVoltageMismatch {
            alternator,
            connected,
            own_v,
            battery_v,
            lifts_to_v,
        } => {
            let battery = match connected {
                WayKind::Direct => "house bank",
                WayKind::Converter => "start battery",
            };
            let why = if own_v < battery_v {
                "it cannot charge that battery, and its regulator and rectifier do not withstand the battery's voltage".to_string()
            } else {
                format!(
                    "its regulator would lift that battery to about {}",
                    whole(lifts_to_v)
                )
            };
            let (own, other) = (whole(own_v), whole(battery_v));
            let remedy = match (connected, alternator) {
                (WayKind::Direct, WhichAlternator::First) => format!(
                    "Connect it to a start battery of {own} and charge the house bank through a DC-DC charger from {own} to {other}, or fit an alternator of {other}"
                ),
                _ => format!("Connect it to a battery of {own}, or fit an alternator of {other}"),
            };
            format!(
                "The {} is built for {own} and its cable leads to the {battery} of {other}. Do not connect it: {why}. It is counted here as charging nothing. {remedy}; if its plate says otherwise, correct the alternator's voltage.",
                words::alternator(alternator)
            )
        }
        VoltageFinding::AlternatorVoltageAssumed {
            alternator,
            bank_v,
            plate_v,
        } => format!(
            "The {} is assumed to be one of {bank} because its cable leads to the {bank} bank. Most engines come with a {twelve} alternator, which cannot charge that bank at all. Read its plate: {fourteen} means {twelve}, {plate} means {bank}. Then enter the alternator's voltage.",
            words::alternator(alternator),
            bank = whole(bank_v),
            plate = whole(plate_v),
            twelve = whole(12.0),
            fourteen = whole(14.0)
        ),
        VoltageFinding::AlternatorVoltageContradiction {
            alternator,
            own_v,
            rating_v,
            rating_system_v,
        } => format!(
            "You entered the {} as one of {}, and its rating at {}, which is usual for {}. One of the two is wrong, and its output with it: read the plate and correct it.",
            words::alternator(alternator),
            whole(own_v),
            reader.show(words::as_entered(volts(rating_v))),
            whole(rating_system_v)
        ),
    }
}
