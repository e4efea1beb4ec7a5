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

#[cfg(test)]
mod tests {
    use super::{MOST, path};
    use ampwright_core::worksheet::{demo, to_link};

    /// The path drawn with four dots to a module, and read by another's decoder.
    fn read(text: &str) -> String {
        let (size, path) = path(text).expect("short enough");
        let wide = size as usize;
        let mut dark = vec![false; wide * wide];
        for run in path.split('M').skip(1) {
            let at: Vec<usize> = run
                .split([' ', 'h', 'v'])
                .take(3)
                .map(|part| part.parse().expect("a number"))
                .collect();
            for x in at[0]..at[0] + at[2] {
                dark[at[1] * wide + x] = true;
            }
        }
        let dot = |x: usize, y: usize| if dark[y / 4 * wide + x / 4] { 0 } else { 255 };
        let mut picture = rqrr::PreparedImage::prepare_from_greyscale(4 * wide, 4 * wide, dot);
        let grids = picture.detect_grids();
        grids[0].decode().expect("a code").1
    }

    #[test]
    fn a_decoder_of_somebody_elses_reads_what_went_in() {
        let demo = format!("https://boat.example/#{}", to_link(&demo()));
        for length in (1..=demo.len()).step_by(23).chain([demo.len()]) {
            let text = &demo[..length];
            assert_eq!(read(text), text);
        }
        assert_eq!(read(&"x".repeat(MOST)), "x".repeat(MOST));
        assert_eq!(path(&"x".repeat(MOST + 1)), None);
    }
}
