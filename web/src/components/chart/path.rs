//! Paths in the letters of SVG.

use std::fmt::Write;

/// A line through places, from left to right.
pub fn path(places: impl IntoIterator<Item = (f64, f64)>) -> String {
    let mut path = String::new();
    for (at, (x, y)) in places.into_iter().enumerate() {
        path.push(if at == 0 { 'M' } else { 'L' });
        push_tenths(&mut path, x);
        path.push(' ');
        push_tenths(&mut path, y);
    }
    path
}

/// A place on a drawing, with one decimal.
pub fn tenths(place: f64) -> String {
    let mut text = String::new();
    push_tenths(&mut text, place);
    text
}

/// Many times as quickly as the formatting of any number does.
fn push_tenths(text: &mut String, place: f64) {
    let tenths = (10.0 * place).round() as i32;
    let minus = if tenths < 0 { "-" } else { "" };
    let tenths = tenths.unsigned_abs();
    // Writing to a String cannot fail.
    let _ = write!(text, "{minus}{}.{}", tenths / 10, tenths % 10);
}

#[cfg(test)]
mod tests {
    use super::{path, tenths};

    #[test]
    fn places_have_one_decimal() {
        assert_eq!([0.04, -0.26, 12.0].map(tenths), ["0.0", "-0.3", "12.0"]);
        assert_eq!(path([(1.0, 2.0), (3.55, 4.0)]), "M1.0 2.0L3.6 4.0");
    }
}
