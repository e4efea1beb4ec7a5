//! What readings would decide: which arrangement, and how to set what is aboard.

use crate::decision::uncertainty::{ArrangementChoice, Deciding, NamedArrangement, SettingChoice};
use crate::text::arrangements::named;
use crate::units::Reader;
use crate::units::quantity::{amperes, celsius};

/// Which arrangement, and the reading that decides it.
pub fn arrangement(choice: &ArrangementChoice) -> String {
    let name = |of: &NamedArrangement| format!("“{}”", named(of.kind, &of.own_name));
    let best = name(&choice.best);
    let Some(rival) = &choice.rival else {
        return format!(
            "Which arrangement: {best} costs least a year, all in, in every case. No reading would change that."
        );
    };
    let then = match &choice.reading {
        Some(reading) => first(reading, "it decides between the two"),
        None => " No single reading would change the choice.".to_string(),
    };
    format!(
        "Which arrangement: {best} costs least a year, all in, in {:.0} of 100 cases, {} in most of the others.{then}",
        choice.best_pct.clamp(1.0, 99.0),
        name(rival),
    )
}

/// A setting that hangs on what is not known, and the reading that tells it.
pub fn setting(choice: &SettingChoice, reader: &Reader) -> String {
    let said = |sentence: String, reading: &Option<Deciding>, decides: &str| {
        let then = reading.as_ref().map(|reading| first(reading, decides));
        sentence + &then.unwrap_or_default()
    };
    match choice {
        SettingChoice::CurrentCap {
            low_a,
            high_a,
            reading,
        } => {
            let (low, high) = (amperes(*low_a).to(0), amperes(*high_a).to(0));
            let (low, high) = (reader.number(low), reader.show(high));
            let sentence = format!(
                "Current cap: it follows what the alternator holds hot by itself, {low} to {high}."
            );
            said(sentence, reading, "it narrows that most")
        }
        SettingChoice::TemperatureLimit {
            set_point_c,
            too_hot_pct,
            reading,
        } => {
            let limit = reader.show(celsius(*set_point_c));
            let sentence = format!(
                "Temperature limit at the regulator: at {limit} the winding gets hotter than its insulation withstands in {too_hot_pct:.0} of 100 cases."
            );
            said(sentence, reading, "it decides whether the limit may stay")
        }
        SettingChoice::ChargerOutput {
            rated_a,
            fed_pct,
            reading,
        } => {
            let rated = reader.show(amperes(*rated_a));
            let sentence = format!(
                "DC-DC charger: the alternator, hot, feeds all of its {rated} in {fed_pct:.0} of 100 cases."
            );
            said(
                sentence,
                reading,
                "it decides whether the charger may be so large",
            )
        }
    }
}

fn first(reading: &Deciding, decides: &str) -> String {
    format!(
        " Measure or look up first: “{}” ({}); {decides}.",
        reading.what, reading.section
    )
}

#[cfg(test)]
mod tests {
    use crate::boat::key;
    use crate::decision::arrangements::Kind;
    use crate::decision::uncertainty::{
        ArrangementChoice, Deciding, NamedArrangement, SettingChoice,
    };
    use crate::text::decisions::{arrangement, setting};
    use crate::units::Reader;

    const PLATE: Deciding = Deciding {
        key: key!(alt.plate),
        what: "Rating is for",
        section: "Alternator",
    };

    fn of(kind: Kind, own_name: &str) -> NamedArrangement {
        NamedArrangement {
            kind,
            own_name: own_name.to_string(),
        }
    }

    #[test]
    fn arrangements() {
        let mut choice = ArrangementChoice {
            best: of(Kind::DirectExternal, ""),
            best_pct: 59.4,
            rival: Some(of(Kind::Own, "Cheap one")),
            reading: Some(PLATE),
        };
        assert_eq!(
            arrangement(&choice),
            "Which arrangement: “Direct, with an external regulator” costs least a year, all in, in 59 of 100 cases, “Cheap one” in most of the others. Measure or look up first: “Rating is for” (Alternator); it decides between the two."
        );
        choice.reading = None;
        choice.best_pct = 99.9;
        assert_eq!(
            arrangement(&choice),
            "Which arrangement: “Direct, with an external regulator” costs least a year, all in, in 99 of 100 cases, “Cheap one” in most of the others. No single reading would change the choice."
        );
        choice.rival = None;
        assert_eq!(
            arrangement(&choice),
            "Which arrangement: “Direct, with an external regulator” costs least a year, all in, in every case. No reading would change that."
        );
    }

    #[test]
    fn settings() {
        let cap = SettingChoice::CurrentCap {
            low_a: 49.97,
            high_a: 89.4,
            reading: Some(PLATE),
        };
        assert_eq!(
            setting(&cap, &Reader::METRIC),
            "Current cap: it follows what the alternator holds hot by itself, 50 to 89 A. Measure or look up first: “Rating is for” (Alternator); it narrows that most."
        );
        let limit = SettingChoice::TemperatureLimit {
            set_point_c: 100.0,
            too_hot_pct: 12.4,
            reading: None,
        };
        assert_eq!(
            setting(&limit, &Reader::US),
            "Temperature limit at the regulator: at 212 °F the winding gets hotter than its insulation withstands in 12 of 100 cases."
        );
        let charger = SettingChoice::ChargerOutput {
            rated_a: 40.0,
            fed_pct: 60.0,
            reading: Some(PLATE),
        };
        assert_eq!(
            setting(&charger, &Reader::METRIC),
            "DC-DC charger: the alternator, hot, feeds all of its 40 A in 60 of 100 cases. Measure or look up first: “Rating is for” (Alternator); it decides whether the charger may be so large."
        );
    }
}
