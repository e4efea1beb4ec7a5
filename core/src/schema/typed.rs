//! Figures as people write them: with a unit behind, several of a kind as a
//! product, a ratio as a fraction, a latitude with its half of the globe.

use crate::units::{KILOWATT, NONE, Other, UnitOfMeasure};

/// A mechanical horsepower \[kW\]: NIST Special Publication 811 (2008), appendix B.8.
const HORSEPOWER_KW: f64 = 0.745_699_87;
/// A metric horsepower \[kW\]: the same table.
const METRIC_HORSEPOWER_KW: f64 = 0.735_498_75;

/// Reads a number as people type it: a comma or a dot for decimals, blanks
/// around it and between thousands, a leading plus or a typographic minus.
/// Anything else is `None`.
pub fn parse_number(text: &str) -> Option<f64> {
    let tidy: String = text
        .trim()
        .chars()
        .map(|c| match c {
            ',' => '.',
            '\u{2212}' => '-',
            other => other,
        })
        .filter(|c| !matches!(c, ' ' | '\u{a0}' | '\u{202f}'))
        .collect();
    let numeric = |c: char| c.is_ascii_digit() || matches!(c, '.' | '-' | '+' | 'e' | 'E');
    if tidy.is_empty() || !tidy.chars().all(numeric) {
        return None;
    }
    tidy.parse().ok()
}

/// Reads a figure into the unit it is kept in. Without a unit behind it, it is
/// in the one its entry shows.
pub(super) fn read_figure(text: &str, unit: &UnitOfMeasure, shown: Option<Other>) -> Option<f64> {
    if let Some(number) = parse_number(text) {
        return Some(shown.map_or(number, |shown| shown.back(number)));
    }
    if unit == NONE {
        return fraction(text);
    }
    if unit.is_latitude {
        return latitude(text);
    }
    if let Some(product) = product(text) {
        return Some(shown.map_or(product, |shown| shown.back(product)));
    }
    let known = [(unit.symbol, None)]
        .into_iter()
        .chain(unit.other.map(|other| (other.symbol, Some(other))));
    for (symbol, other) in known {
        if let Some(number) = before_unit(text, symbol) {
            return Some(other.map_or(number, |other| other.back(number)));
        }
    }
    if unit == KILOWATT {
        let metric = before_unit(text, "PS").map(|number| number * METRIC_HORSEPOWER_KW);
        return metric.or_else(|| Some(before_unit(text, "hp")? * HORSEPOWER_KW));
    }
    None
}

/// "150/65" or "150:65": one diameter over another.
fn fraction(text: &str) -> Option<f64> {
    let (over, under) = text.split_once(['/', ':'])?;
    let (over, under) = (parse_number(over)?, parse_number(under)?);
    (under != 0.0).then(|| over / under)
}

/// "2 x 200": several of a kind.
fn product(text: &str) -> Option<f64> {
    let (count, each) = text.split_once(['x', 'X', '×', '*'])?;
    Some(parse_number(count)? * parse_number(each)?)
}

/// "36 N", "18° S": south is below zero.
fn latitude(text: &str) -> Option<f64> {
    let text = text.trim();
    let half = text.chars().last()?.to_ascii_uppercase();
    let degrees = match half {
        'N' | 'S' => text.get(..text.len() - 1)?,
        _ => text,
    };
    let degrees = parse_number(degrees.trim_end().trim_end_matches('°'))?;
    // A sign and a half of the globe would say it twice.
    match half {
        'N' | 'S' if degrees < 0.0 => None,
        'S' => Some(-degrees),
        _ => Some(degrees),
    }
}

/// The number before a unit, whose dots and capitals do not matter: "400 Ah".
fn before_unit(text: &str, symbol: &str) -> Option<f64> {
    let plain = |text: &str| -> String {
        let letters = text.chars().filter(|c| !matches!(c, '·' | ' '));
        letters.flat_map(char::to_lowercase).collect()
    };
    let symbol = plain(symbol);
    let text = plain(text);
    let number = text.strip_suffix(&symbol).filter(|_| !symbol.is_empty())?;
    parse_number(number)
}

#[cfg(test)]
mod tests {
    use crate::schema::typed::read_figure;
    use crate::units::{AMPERE_HOUR, CELSIUS, KILOWATT, LATITUDE, NONE, UnitOfMeasure};

    fn close(text: &str, unit: &UnitOfMeasure, wanted: f64) {
        let read = read_figure(text, unit, None);
        assert!(
            read.is_some_and(|read| (read - wanted).abs() < 1e-9),
            "{text}: {read:?}"
        );
    }

    #[test]
    fn as_people_write_it() {
        close("1 200", AMPERE_HOUR, 1200.0);
        close("400 Ah", AMPERE_HOUR, 400.0);
        close("400A·h", AMPERE_HOUR, 400.0);
        close("2 x 200", AMPERE_HOUR, 400.0);
        close("3×105", AMPERE_HOUR, 315.0);
        close("150/65", NONE, 150.0 / 65.0);
        close("150 : 62,5", NONE, 2.4);
        close("40 N", LATITUDE, 40.0);
        close("18°s", LATITUDE, -18.0);
        close("-18", LATITUDE, -18.0);
        // 550 ft·lbf/s and 75 kgf·m/s by hand: 745.70 W and 735.50 W.
        close("30 hp", KILOWATT, 30.0 * 0.745_699_87);
        close("40PS", KILOWATT, 40.0 * 0.735_498_75);
        close("77 °F", CELSIUS, 25.0);
        close("25°c", CELSIUS, 25.0);
    }

    #[test]
    fn nothing_else() {
        for (text, unit) in [
            ("", NONE),
            ("1/0", NONE),
            ("1/2/3", NONE),
            ("-18 S", LATITUDE),
            ("N", LATITUDE),
            ("40 W", LATITUDE),
            ("400 V", AMPERE_HOUR),
            ("Ah", AMPERE_HOUR),
            ("2 x", AMPERE_HOUR),
            ("2 x 3 x 4", AMPERE_HOUR),
            ("ten", KILOWATT),
            ("S", LATITUDE),
            ("ß", LATITUDE),
        ] {
            assert_eq!(read_figure(text, unit, None), None, "{text}");
        }
        // In the unit its entry shows, where none is written.
        assert_eq!(read_figure("77", CELSIUS, CELSIUS.other), Some(25.0));
    }
}
