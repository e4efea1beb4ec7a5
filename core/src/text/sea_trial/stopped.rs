//! Winding and rotor by their resistance: how to measure them, what follows and what
//! is wrong with what was typed.

use crate::decision::calibration::stopped::{StoppedError, StoppedField};
use crate::units::quantity::celsius;
use crate::units::{CELSIUS, Reader};

/// How it is done, and what to mind.
pub const STOPPED_HOW: [&str; 3] = [
    "Cold, before the start: disconnect the alternator's output lead at the battery. Measure one phase to another at the stator's own terminals, and the field between its two. A winding has a few hundredths of an ohm: that takes a milliohm meter with four leads, not a multimeter. Connect the lead again before the engine starts: an alternator must never run with its output open.",
    "Hot: stop the engine, take the key out, disconnect the same lead, and wait until everything stands still before a hand goes near. Measure at the same terminals, at once and then every half minute, with the seconds since it stopped. The case burns skin; keep the meter's leads clear of belt and fan. Connect the output lead again afterwards.",
    "The field, while it charges at full field: volts between its two terminals, and amps by a clamp on the field lead. The brushes' resistance is in it, so the rotor comes out a little too hot.",
];

/// What a field is called, with its unit.
pub fn stopped_label(field: StoppedField, reader: &Reader) -> String {
    let unit = match field.is_temperature() {
        true => reader
            .other(CELSIUS)
            .map_or(CELSIUS.symbol, |other| other.symbol),
        false => "",
    };
    let label = match field {
        StoppedField::ColdC => "Temperature of all parts, cold",
        StoppedField::ColdOhm => "Winding, cold, Ω or mΩ",
        StoppedField::AirC => "Air when stopped",
        StoppedField::Readings => "After stopping: seconds and the same unit, a line each",
        StoppedField::FieldColdOhm => "Field, cold, Ω",
        StoppedField::FieldV => "Field, hot, V",
        StoppedField::FieldA => "Field, hot, A",
    };
    match unit {
        "" => label.to_string(),
        unit => format!("{label}, {unit}"),
    }
}

/// How hot the winding was.
pub fn winding_was(winding_c: f64, reader: &Reader) -> String {
    format!(
        "The winding was at {} when the engine stopped.",
        reader.show(celsius(winding_c))
    )
}

/// How hot the rotor is, and how much above the case.
pub fn rotor_is(rotor_c: f64, above_case: Option<String>, reader: &Reader) -> String {
    let rotor = reader.show(celsius(rotor_c));
    match above_case {
        None => format!("The rotor is at {rotor}."),
        Some(above) => {
            format!("The rotor is at {rotor}, {above} above the last reading of the case.")
        }
    }
}

/// What is wrong with what was typed, and what to do.
pub fn stopped_error(error: &StoppedError, reader: &Reader) -> String {
    match error {
        StoppedError::Missing(field) => {
            format!("Still missing: {}.", stopped_label(*field, reader))
        }
        StoppedError::NotPossible(field, typed) => {
            format!("{}: “{typed}” cannot be.", stopped_label(*field, reader))
        }
        StoppedError::Line(line) => format!(
            "“{line}” is not seconds after stopping, up to 600, and a resistance. Type it as 40 0.068."
        ),
        StoppedError::TooFew => {
            "One reading later than 30 s after stopping says too little: take two or more.".to_string()
        }
        StoppedError::DoesNotCool => "These readings do not fall towards the air's temperature. Check their order, the unit, and the air's temperature.".to_string(),
        StoppedError::NotBelieved(found_c) => format!(
            "That would be {}, which cannot be. Are all resistances in one unit, and measured at the same terminals?",
            reader.show(celsius(*found_c))
        ),
    }
}

#[cfg(test)]
mod tests {
    use crate::decision::calibration::stopped::{StoppedError, StoppedField};
    use crate::text::sea_trial::{rotor_is, stopped_error, winding_was};
    use crate::units::Reader;

    #[test]
    fn sentences() {
        assert_eq!(
            winding_was(130.2, &Reader::METRIC),
            "The winding was at 130 °C when the engine stopped."
        );
        assert_eq!(
            rotor_is(129.3, Some("22 K".to_string()), &Reader::METRIC),
            "The rotor is at 129 °C, 22 K above the last reading of the case."
        );
        assert_eq!(
            stopped_error(&StoppedError::Missing(StoppedField::ColdC), &Reader::US),
            "Still missing: Temperature of all parts, cold, °F."
        );
        assert_eq!(
            stopped_error(&StoppedError::NotBelieved(900.0), &Reader::METRIC),
            "That would be 900 °C, which cannot be. Are all resistances in one unit, and measured at the same terminals?"
        );
    }
}
