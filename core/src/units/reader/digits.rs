//! Digits: grouped by thousands, shortened, and how many are worth telling.

use crate::units::Other;

/// A narrow space that keeps together what it stands between.
pub(super) const THIN: char = '\u{202f}';

/// The digits before the decimal sign in groups of three.
pub(super) fn by_thousands(number: &str) -> String {
    let is_digit = |letter: char| letter.is_ascii_digit();
    let first = number.find(is_digit).unwrap_or(number.len());
    let (minus, digits) = number.split_at(first);
    let whole = digits.chars().take_while(|digit| is_digit(*digit)).count();
    let mut grouped = minus.to_string();
    for (at, digit) in digits.chars().enumerate() {
        if at > 0 && at < whole && (whole - at).is_multiple_of(3) {
            grouped.push(THIN);
        }
        grouped.push(digit);
    }
    grouped
}

/// How many more decimals the other unit needs so that its last digit is not
/// more than twice as coarse as the first unit's: two for inches, one for
/// gallons, none for feet.
pub(super) fn more_decimals(other: &Other) -> usize {
    let mut step = 1.0 / other.scale;
    let mut more = 0;
    while step > 2.0 {
        step *= 0.1;
        more += 1;
    }
    more
}

/// Without noughts at the end, at most so many.
pub(super) fn shortened(text: &str, most: usize) -> &str {
    let mut text = text;
    for _ in 0..most {
        let Some(shorter) = text.strip_suffix('0') else {
            break;
        };
        text = shorter;
    }
    text.strip_suffix('.').unwrap_or(text)
}
