//! A text as a QR code, a matrix of modules after ISO/IEC 18004:2015.

use qrcodegen::{QrCode, QrCodeEcc, QrSegment, Version};

/// The largest version that a phone still scans off another phone's screen: 97
/// modules and the margin, each half a millimetre on a narrow one (own
/// reasoning).
const LARGEST: u8 = 20;
/// Most bytes it holds with the least error correction (table 7).
pub const MOST_BYTES: usize = 858;
/// How wide the margin around the code must be \[modules\] (6.3.8).
const MARGIN: i32 = 4;

/// A code as a drawing.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Drawing {
    /// How wide and high it is, with its margin \[modules\].
    pub wide: i32,
    /// The dark modules, as the path of a drawing.
    pub dark: String,
}

/// Draws a text as a code; nothing if it is too long for one.
pub fn draw(text: &str) -> Option<Drawing> {
    let bytes = [QrSegment::make_bytes(text.as_bytes())];
    // More correction where it costs no larger code; the mask that is easiest to
    // read.
    let code = QrCode::encode_segments_advanced(
        &bytes,
        QrCodeEcc::Low,
        Version::MIN,
        Version::new(LARGEST),
        None,
        true,
    );
    let code = code.ok()?;
    let mut dark = String::new();
    for y in 0..code.size() {
        for x in (0..code.size()).filter(|x| code.get_module(*x, y)) {
            dark += &format!("M{} {}h1v1h-1z", x + MARGIN, y + MARGIN);
        }
    }
    let wide = code.size() + 2 * MARGIN;
    Some(Drawing { wide, dark })
}

#[cfg(test)]
mod tests {
    use super::{Drawing, MOST_BYTES, draw};

    /// What a decoder of somebody else's reads off a drawing.
    fn scanned(drawing: &Drawing) -> String {
        let wide = drawing.wide as usize;
        let mut dark = vec![false; wide * wide];
        for module in drawing.dark.split("h1v1h-1z") {
            if let Some((x, y)) = module.trim_start_matches('M').split_once(' ') {
                let [x, y] = [x, y].map(|place| place.parse::<usize>().unwrap());
                dark[y * wide + x] = true;
            }
        }
        // Four dots to a module.
        let dot = |x: usize, y: usize| if dark[y / 4 * wide + x / 4] { 0 } else { 255 };
        let mut picture = rqrr::PreparedImage::prepare_from_greyscale(4 * wide, 4 * wide, dot);
        picture.detect_grids()[0].decode().unwrap().1
    }

    /// Each version, filled to its last byte and with the first byte more.
    #[test]
    fn every_length_is_read_again() {
        let text = "Ampwright#v=2&alt_rated=90~m;Möwe".repeat(30);
        let mut long = 1;
        for most in [
            17, 32, 53, 78, 106, 134, 154, 192, 230, 271, 321, 367, 425, 458, 520, 586, 644, 718,
            792, 858,
        ] {
            for length in [long, most] {
                let text = &text[..text.floor_char_boundary(length)];
                let drawing = draw(text).expect("short enough");
                assert_eq!(scanned(&drawing), text);
            }
            long = most + 1;
        }
    }

    #[test]
    fn what_is_too_long_has_no_code() {
        assert!(draw(&"a".repeat(MOST_BYTES)).is_some());
        assert_eq!(draw(&"a".repeat(MOST_BYTES + 1)), None);
    }
}
