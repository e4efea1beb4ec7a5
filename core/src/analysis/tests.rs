use crate::analysis::{Analyses, analyse, analyse_with, flooded};
use crate::boat::{Key, SecondRole, Worksheet};
use crate::schema::Value;
use crate::simulation::alternators::Alternators;

/// A boat of two alternators that asks for a blower too.
fn boat(anchor_c: f64) -> Worksheet {
    let mut sheet = Worksheet::default();
    for (name, number) in [
        ("alt_anchor_winding_c", anchor_c),
        ("alt2_anchor_winding_c", anchor_c),
        ("space_wanted_a", 90.0),
    ] {
        let key = Key::named(name).expect("a key");
        sheet.state(key, Value::Number(number)).expect("in range");
    }
    sheet.inputs.two.role = SecondRole::House;
    sheet
}

/// All that hangs on the alternators, as text.
fn told(report: &Analyses) -> [String; 8] {
    [
        format!("{:?} {:?}", report.output, report.alternators),
        format!("{:?}", report.run),
        format!("{:?}", report.day),
        format!("{:?}", report.engine),
        format!("{:?}", report.lead.report()),
        format!("{:?}", report.belts),
        format!("{:?}", report.load_dump),
        format!("{:?}", report.cables),
    ]
}

/// Whoever calibrated an alternator anew would find the cooler one of the
/// worksheet instead of the hot one handed over.
#[test]
fn alternators_are_calibrated_once_for_everything() {
    let (cool, hot) = (boat(120.0), boat(190.0));
    let handed = analyse_with(&cool, Alternators::of(&hot.inputs));
    let expected = told(&analyse(&hot));
    assert_eq!(told(&handed), expected);
    let own = told(&analyse(&cool));
    for at in 0..5 {
        assert_ne!(own[at], expected[at], "the anchor moves it");
    }
}

#[test]
fn an_alternator_is_the_same_at_another_speed_and_with_another_bank() {
    let sheet = boat(150.0);
    let alternators = Alternators::of(&sheet.inputs);
    let mut faster = sheet.inputs;
    faster.eng.rpm = 2200.0;
    faster.space.blower_m3h = 120.0;
    let flooded = flooded(&sheet.inputs);
    for other in [faster, flooded] {
        assert_eq!(Alternators::of(&other), alternators);
        let (reused, anew) = (
            alternators.plant(&other, 5.0),
            crate::simulation::plant::Plant::new(&other, 5.0),
        );
        assert_eq!(format!("{reused:?}"), format!("{anew:?}"));
    }
}
