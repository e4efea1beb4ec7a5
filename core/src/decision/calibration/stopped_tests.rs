//! What resistances tell, by hand.

use crate::boat::{Worksheet, key};
use crate::decision::calibration::stopped::{
    Stopped, StoppedError, StoppedField, rotor_rise_k, take_rotor_rise,
};
use crate::schema::Confidence;
use crate::units::Reader;

fn typed(texts: &[(StoppedField, &str)]) -> Stopped {
    let mut stopped = Stopped::default();
    for (field, text) in texts {
        stopped.set(*field, (*text).to_string());
    }
    stopped
}

/// A winding of 50 mΩ at 20 °C that fell from 130 °C towards air of 30 °C with a
/// time of 200 s: by hand 100·e^(−t/200) + 30 at 40, 80 and 120 s is 111.873,
/// 97.032 and 84.881 °C, each 50·(235 + T)/255 mΩ.
#[test]
fn readings_after_stopping_are_led_back() {
    let mut stopped = typed(&[
        (StoppedField::ColdC, "20"),
        (StoppedField::ColdOhm, "50"),
        (StoppedField::AirC, "30"),
        (
            StoppedField::Readings,
            "40 68,0143\n80; 65.1044\n\n120\t62.7218",
        ),
    ]);
    let winding_c = stopped.winding_c(&Reader::METRIC).expect("readings");
    assert!(
        (winding_c.expect("some") - 130.0).abs() < 0.01,
        "{winding_c:?}"
    );
    stopped.set(StoppedField::ColdC, "68".to_string());
    stopped.set(StoppedField::AirC, "86".to_string());
    let in_fahrenheit = stopped.winding_c(&Reader::US).expect("readings");
    assert!((in_fahrenheit.expect("some") - 130.0).abs() < 0.01);
}

/// By hand: 14 V and 3.5 A are 4 Ω; 4/2.8·255 − 235 = 129.3 °C.
#[test]
fn the_field_tells_the_rotor() {
    let stopped = typed(&[
        (StoppedField::ColdC, "20"),
        (StoppedField::FieldColdOhm, "2.8"),
        (StoppedField::FieldV, "14"),
        (StoppedField::FieldA, "3.5"),
    ]);
    let rotor_c = stopped.rotor_c(&Reader::METRIC).expect("readings");
    assert!(
        (rotor_c.expect("some") - 129.286).abs() < 0.01,
        "{rotor_c:?}"
    );
    assert_eq!(stopped.winding_c(&Reader::METRIC), Ok(None));
}

#[test]
fn the_rise_of_the_rotor_goes_into_the_worksheet() {
    assert_eq!(rotor_rise_k(129.3, 100.0), Some(29.0));
    assert_eq!(rotor_rise_k(90.0, 100.0), None);
    assert_eq!(rotor_rise_k(190.0, 100.0), None);
    let mut sheet = Worksheet::default();
    take_rotor_rise(&mut sheet, 29.0);
    assert_eq!(sheet.inputs.alt.rotor_rise_k, 29.0);
    assert_eq!(
        sheet.knowledge(key!(alt.rotor_rise_k)),
        Confidence::Measured
    );
}

#[test]
fn what_tells_nothing_is_refused() {
    let with = |readings: &str| {
        typed(&[
            (StoppedField::ColdC, "20"),
            (StoppedField::ColdOhm, "50"),
            (StoppedField::AirC, "30"),
            (StoppedField::Readings, readings),
        ])
        .winding_c(&Reader::METRIC)
    };
    assert!(with("20 68").is_ok());
    assert_eq!(with("60 68"), Err(StoppedError::TooFew));
    assert_eq!(with("40 66\n80 68"), Err(StoppedError::DoesNotCool));
    assert_eq!(with("40 40\n80 39"), Err(StoppedError::DoesNotCool));
    assert!(matches!(with("40 66 1"), Err(StoppedError::Line(_))));
    assert!(matches!(with("900 66"), Err(StoppedError::Line(_))));
    assert!(matches!(with("0 0.068"), Err(StoppedError::NotBelieved(_))));
    assert!(matches!(with("0 nan"), Err(StoppedError::Line(_))));
    let missing = typed(&[(StoppedField::Readings, "0 68")]).winding_c(&Reader::METRIC);
    assert_eq!(missing, Err(StoppedError::Missing(StoppedField::ColdC)));
    let wrong = typed(&[(StoppedField::Readings, "0 68"), (StoppedField::ColdC, "x")]);
    assert!(matches!(
        wrong.winding_c(&Reader::METRIC),
        Err(StoppedError::NotPossible(StoppedField::ColdC, _))
    ));
}
