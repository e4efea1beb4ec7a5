//! Numbers as text become numbers.

use lexical_parse_float::FromLexical;

/// The number nearest to a decimal one such as `12.5`, `-.5` or `1e3`; `None`
/// for anything else.
///
/// The standard library's own reader would do, if it did not bring a table of
/// eleven kilobytes that the page would have to carry for its sake.
pub(crate) fn decimal(text: &str) -> Option<f64> {
    f64::from_lexical(text.as_bytes()).ok()
}
