//! A link as a code to scan: a matrix of modules after ISO/IEC 18004, in bytes
//! and with the least error correction, drawn as one path.

use qrcodegen::{QrCode, QrCodeEcc, QrSegment, Version};

/// The largest code that a phone still scans off another phone's screen: 97
/// modules and the margin, each half a millimetre on a narrow one. Own reckoning.
const LARGEST: u8 = 20;
/// So many characters fit into it (ISO/IEC 18004:2015, table 7).
pub const MOST: usize = 858;
/// Quiet zone around the code \[modules\] (the same, section 6.3.8).
const QUIET: i32 = 4;

/// The drawing of a code; none for a text that is too long.
pub fn drawing(text: &str) -> Option<String> {
    let (size, path) = path(text)?;
    Some(format!(
        "<svg class=code viewBox='0 0 {size} {size}' role=img aria-label='Code with the link to this worksheet'><path d='{path}'/></svg>"
    ))
}

/// The width of the whole and the dark modules, row by row.
fn path(text: &str) -> Option<(i32, String)> {
    let bytes = [QrSegment::make_bytes(text.as_bytes())];
    let (least, most) = (Version::MIN, Version::new(LARGEST));
    let code =
        QrCode::encode_segments_advanced(&bytes, QrCodeEcc::Low, least, most, None, true).ok()?;
    let mut path = String::new();
    for y in 0..code.size() {
        let mut from = None;
        // One beyond the edge is light: it ends the last run.
        for x in 0..=code.size() {
            match (code.get_module(x, y), from) {
                (true, None) => from = Some(x),
                (false, Some(start)) => {
                    let (left, top, run) = (start + QUIET, y + QUIET, x - start);
                    path += &format!("M{left} {top}h{run}v1h-{run}z");
                    from = None;
                }
                _ => {}
            }
        }
    }
    Some((code.size() + 2 * QUIET, path))
}
