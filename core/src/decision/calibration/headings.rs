//! What a heading of a log names, in the words and signs that English, German
//! and French instruments and notebooks use.

use crate::decision::calibration::columns::Column;

/// What a heading names.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Heading {
    /// A time; so many minutes are one of its units.
    Time(f64),
    /// A reading.
    Reading {
        column: Column,
        fahrenheit: bool,
        /// Of speeds: the alternator's own, not the engine's.
        shaft: bool,
    },
    /// Volts of the battery: near those of the alternator, and good enough
    /// where a log has no others.
    BatteryVolts,
    /// Nothing that a trial is about.
    Unknown,
}

/// Words by which a heading is known, the more telling first: "air
/// temperature" is air, "temperature" alone the case.
const WORDS: [(&str, Column); 49] = [
    ("rpm", Column::Rpm),
    ("tr/min", Column::Rpm),
    ("u/min", Column::Rpm),
    ("1/min", Column::Rpm),
    ("min-1", Column::Rpm),
    ("min⁻¹", Column::Rpm),
    ("rev", Column::Rpm),
    ("speed", Column::Rpm),
    ("drehzahl", Column::Rpm),
    ("umdrehung", Column::Rpm),
    ("régime", Column::Rpm),
    ("regime", Column::Rpm),
    ("volt", Column::Volts),
    ("spannung", Column::Volts),
    ("tension", Column::Volts),
    ("amp", Column::Amps),
    ("current", Column::Amps),
    ("strom", Column::Amps),
    ("courant", Column::Amps),
    ("intensité", Column::Amps),
    ("winding", Column::Winding),
    ("stator", Column::Winding),
    ("wicklung", Column::Winding),
    ("bobinage", Column::Winding),
    ("enroulement", Column::Winding),
    ("rectifier", Column::Rectifier),
    ("diode", Column::Rectifier),
    ("plate", Column::Rectifier),
    ("gleichrichter", Column::Rectifier),
    ("redresseur", Column::Rectifier),
    ("air", Column::Air),
    ("ambian", Column::Air),
    ("ambient", Column::Air),
    ("inlet", Column::Air),
    ("space", Column::Air),
    ("room", Column::Air),
    ("luft", Column::Air),
    ("umgebung", Column::Air),
    ("motorraum", Column::Air),
    ("case", Column::Case),
    ("body", Column::Case),
    ("housing", Column::Case),
    ("gehäuse", Column::Case),
    ("carter", Column::Case),
    ("temp", Column::Case),
    ("temperatur", Column::Case),
    ("lichtmaschine", Column::Amps),
    ("alternat", Column::Amps),
    ("alt", Column::Amps),
];

/// Words of batteries: what goes into one is not what the alternator gives.
const BATTERY: [&str; 4] = ["bank", "batt", "house", "akku"];
/// Words of other sources of volts and amps.
const OTHER_SOURCE: [&str; 3] = ["solar", "panel", "shore"];
/// Words of an engine's own temperatures.
const ENGINE: [&str; 7] = [
    "engine", "motor", "moteur", "coolant", "kühl", "water", "oil",
];
/// Words by which a speed is the alternator's own.
const SHAFT: [&str; 4] = ["shaft", "alt", "lichtmaschine", "welle"];

/// What a heading names.
pub(super) fn heading(cell: &str) -> Heading {
    let words = cell.to_lowercase();
    let has = |some: &[&str]| some.iter().any(|word| words.contains(word));
    // "U (V)" is "U".
    let bare = words.split(['(', '[']).next().unwrap_or("").trim();
    let fahrenheit = is_fahrenheit(&words);
    let hot =
        words.contains("temp") && !bare.starts_with("temps") || words.contains('°') || fahrenheit;
    let reading = |column| Heading::Reading {
        column,
        fahrenheit,
        shaft: column == Column::Rpm && has(&SHAFT),
    };
    if has(&OTHER_SOURCE) {
        return Heading::Unknown;
    }
    let known = column(&words, bare, hot);
    if known == Some(Column::Rpm) {
        return reading(Column::Rpm);
    }
    if let Some(minutes) = time_scale(&words).filter(|_| !hot) {
        return Heading::Time(minutes);
    }
    match known {
        Some(Column::Volts) if has(&BATTERY) => Heading::BatteryVolts,
        Some(Column::Case) if has(&ENGINE) && !has(&["case", "alt"]) => Heading::Unknown,
        Some(column) if !has(&BATTERY) => reading(column),
        _ => Heading::Unknown,
    }
}

/// Minutes in one unit of a column of times; `None` if it is none.
fn time_scale(words: &str) -> Option<f64> {
    const TIMES: [&str; 8] = [
        "min", "time", "clock", "elapsed", "zeit", "uhr", "temps", "durée",
    ];
    let begins = |with: &[&str]| with.iter().any(|word| words.starts_with(word));
    if begins(&TIMES) || matches!(words, "t" | "t (min)" | "t (s)" | "h:mm") {
        let seconds = ["second", "sekund", "(s)", "[s]"];
        let seconds = seconds.iter().any(|word| words.contains(word));
        Some(if seconds { 1.0 / 60.0 } else { 1.0 })
    } else if begins(&["sec", "sek"]) {
        Some(1.0 / 60.0)
    } else if begins(&["hour", "heure", "stunde"]) {
        Some(60.0)
    } else {
        None
    }
}

fn column(words: &str, bare: &str, hot: bool) -> Option<Column> {
    match bare {
        "a" | "i" => return Some(Column::Amps),
        "v" | "u" => return Some(Column::Volts),
        "n" => return Some(Column::Rpm),
        _ => {}
    }
    let letters = |c: char| !c.is_alphanumeric();
    let in_volts = || words.split(letters).any(|word| word == "v");
    let known = WORDS
        .iter()
        .find(|(word, column)| words.contains(word) && !(hot && *column == Column::Amps))
        .map(|(_, column)| *column);
    match known {
        // "Alt V" is in volts, whatever "alt" is.
        Some(Column::Amps) | None if in_volts() => Some(Column::Volts),
        None => hot.then_some(Column::Case),
        known => known,
    }
}

fn is_fahrenheit(words: &str) -> bool {
    words.contains("°f")
        || words.contains("(f)")
        || words.contains("fahrenheit")
        || words.ends_with(" f")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn names(column: Column, headings: &[&str]) {
        for words in headings {
            let found = heading(words);
            assert!(
                matches!(found, Heading::Reading { column: found, .. } if found == column),
                "{words}: {found:?}"
            );
        }
    }

    #[test]
    fn headings_of_three_languages() {
        names(
            Column::Volts,
            &[
                "Volts", "Voltage", "U", "U (V)", "Spannung", "Tension", "V", "Alt V", "System V",
            ],
        );
        names(
            Column::Amps,
            &[
                "Amps",
                "Strom",
                "Courant",
                "Intensité (A)",
                "I [A]",
                "Alternator",
                "Strom Lichtmaschine",
            ],
        );
        names(
            Column::Case,
            &[
                "Temp",
                "Temp.",
                "Temperatur",
                "Température alternateur",
                "Case °C",
                "Gehäuse",
                "T (°C)",
                "Alternator temp",
            ],
        );
        names(
            Column::Rpm,
            &[
                "rpm",
                "Drehzahl",
                "tr/min",
                "U/min",
                "1/min",
                "min-1",
                "Régime moteur",
                "Engine speed",
            ],
        );
        names(
            Column::Air,
            &[
                "Air",
                "Lufttemperatur",
                "Température ambiante",
                "Engine room temp",
                "Motorraum °C",
                "Umgebung",
            ],
        );
        names(Column::Winding, &["Stator", "Wicklung", "Bobinage"]);
        names(Column::Rectifier, &["Diodes", "Gleichrichter"]);
    }

    #[test]
    fn times_of_three_languages() {
        for (words, minutes) in [
            ("Minute", 1.0),
            ("Zeit", 1.0),
            ("Zeit (min)", 1.0),
            ("Uhrzeit", 1.0),
            ("Temps", 1.0),
            ("Temps (s)", 1.0 / 60.0),
            ("Sekunden", 1.0 / 60.0),
            ("Heures", 60.0),
        ] {
            assert_eq!(heading(words), Heading::Time(minutes), "{words}");
        }
    }

    #[test]
    fn what_is_of_something_else_is_not_taken() {
        for words in [
            "Bank amps",
            "Battery current",
            "Strom Batterie",
            "Battery temp",
            "Motortemperatur",
            "Coolant °C",
            "Solar V",
            "Mood",
            "SoC (%)",
        ] {
            assert_eq!(heading(words), Heading::Unknown, "{words}");
        }
        for words in [
            "Batt V",
            "Battery voltage",
            "Spannung Batterie",
            "Tension batterie",
        ] {
            assert_eq!(heading(words), Heading::BatteryVolts, "{words}");
        }
    }
}
