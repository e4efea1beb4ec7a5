use crate::units::quantity::{
    Quantity, QuantityKind, ampere_hours, amperes, celsius, count, kelvin, millimetres, minutes,
    money, percent, volts,
};
use crate::units::{CHOICES, DEGREE, LATITUDE, Reader};

fn length(value: f64) -> Quantity {
    Quantity::new(value, QuantityKind::Length).to(1)
}

#[test]
fn a_difference_of_temperatures_has_no_offset() {
    assert_eq!(Reader::US.show(celsius(100.0)), "212 °F");
    assert_eq!(Reader::US.show(kelvin(100.0)), "180 °F");
    assert_eq!(Reader::METRIC.show(kelvin(5.0)), "5 K");
}

#[test]
fn minus_is_a_true_one_and_never_stands_before_nought() {
    let show = |value| Reader::METRIC.show(celsius(value));
    assert_eq!(
        [-7.0, -0.4, -0.0, 0.4].map(show),
        ["−7 °C", "0 °C", "0 °C", "0 °C"]
    );
    assert_eq!(Reader::US.show(celsius(-17.8)), "0 °F");
    assert_eq!(Reader::US.show(celsius(-40.0)), "−40 °F");
}

#[test]
fn the_other_units_of_each_group() {
    let of = |value, kind| Reader::US.show(Quantity::new(value, kind));
    assert_eq!(Reader::US.show(length(3.0)), "9.8 ft");
    assert_eq!(Reader::US.show(millimetres(71.0)), "2.80 in");
    assert_eq!(of(38.0, QuantityKind::Fuel), "10.0 US gal");
    assert_eq!(of(170.0, QuantityKind::AirFlow), "100 cfm");
    assert_eq!(Reader::US.show(amperes(70.0)), "70 A");
}

#[test]
fn charge_as_energy_is_told_at_the_voltage() {
    let reader = Reader::METRIC.with_charge_as_energy(Some(24.0));
    assert_eq!(reader.show(ampere_hours(100.0)), "2400 W·h");
    assert_eq!(reader.show(amperes(100.0)), "100 A");
}

#[test]
fn one_group_changes_alone() {
    let lengths = CHOICES
        .iter()
        .position(|(name, _)| *name == "Length")
        .unwrap();
    let reader = Reader::METRIC
        .with_other(lengths, true)
        .with_other(99, true);
    assert_eq!(reader.show(length(3.0)), "9.8 ft");
    assert_eq!(reader.show(celsius(20.0)), "20 °C");
}

#[test]
fn decimals_and_comma() {
    let comma = Reader::METRIC.with_decimal_comma(true);
    assert_eq!(comma.show(volts(14.25)), "14,25 V");
    assert_eq!(comma.show(percent(80.0).up_to(2)), "80 %");
    assert_eq!(comma.show(percent(80.5).up_to(2)), "80,5 %");
    assert_eq!(comma.show(count(2.5).to(2)), "2,50");
    assert_eq!(comma.show(minutes(125.0)), "2 h 05 min");
    assert_eq!(comma.show(amperes(100.0).up_to(1)), "100 A");
}

#[test]
fn ranges_of_inputs_are_in_the_unit_they_are_typed_in() {
    let (celsius, none) = (crate::units::CELSIUS, crate::units::NONE);
    assert_eq!(
        Reader::METRIC.input_range(-40.0, 60.0, celsius),
        "−40 to 60 °C"
    );
    assert_eq!(
        Reader::US.input_range(-40.0, 60.0, celsius),
        "−40 to 140 °F"
    );
    let comma = Reader::METRIC.with_decimal_comma(true);
    assert_eq!(comma.input_range(0.1, 0.6, none), "0,1 to 0,6");
}

#[test]
fn money_has_its_sign_and_thousands() {
    let euro = Reader::METRIC.with_currency(Some("€"));
    let show = |amount| euro.show(money(amount));
    assert_eq!(
        [0.4, 999.6, 12_345.0, 1_234_567.0, -90.0, -1234.0].map(show),
        [
            "€ 0",
            "€ 1 000",
            "€ 12 345",
            "€ 1 234 567",
            "€ −90",
            "€ −1 234"
        ]
        .map(|text| text.replace(' ', "\u{202f}"))
    );
    let comma = Reader::METRIC.with_decimal_comma(true);
    assert_eq!(comma.show(money(0.456).to(2)), "0,46");
    assert_eq!(comma.show(money(1234.5).to(2)), "1\u{202f}234,50");
    assert_eq!(euro.range(money(5.0), money(20.0)), "€\u{202f}5 to 20");
}

#[test]
fn long_figures_are_grouped() {
    let show = |figure| Reader::METRIC.show(count(figure));
    assert_eq!(
        [9999.0, 20_000.0, 1_234_567.0].map(show),
        ["9999", "20\u{202f}000", "1\u{202f}234\u{202f}567"]
    );
}

#[test]
fn no_line_ends_between_a_figure_and_its_unit() {
    let reader = Reader::METRIC.with_unbroken_units();
    assert_eq!(reader.show(amperes(70.0)), "70\u{a0}A");
    assert_eq!(reader.show(minutes(125.0)), "2\u{a0}h 05\u{a0}min");
    assert_eq!(reader.range(amperes(1.0), amperes(5.0)), "1 to 5\u{a0}A");
    assert_eq!(
        reader.input_range(-40.0, 60.0, crate::units::CELSIUS),
        "−40 to 60\u{a0}°C"
    );
}

#[test]
fn two_figures_share_a_unit() {
    let reader = Reader::METRIC;
    assert_eq!(reader.range(amperes(1.0), amperes(5.0)), "1 to 5 A");
    assert_eq!(
        reader.both(millimetres(68.0), millimetres(150.0)),
        "68 and 150 mm"
    );
    let angle = Quantity::new(120.0, QuantityKind::Angle);
    assert_eq!(reader.show(angle), "120°");
}

#[test]
fn a_latitude_is_north_or_south_and_an_angle_is_neither() {
    let reader = Reader::METRIC.with_decimal_comma(true);
    let told = |degrees| reader.entered(degrees, LATITUDE);
    assert_eq!([-18.0, 36.5, 0.0].map(told), ["18° S", "36,5° N", "0° N"]);
    assert_eq!(reader.input_range(-70.0, 70.0, LATITUDE), "70° S to 70° N");
    assert_eq!(reader.entered(180.0, DEGREE), "180°");
}
