//! Makes a PNG of a page small: few colours, those that occur most, in a
//! palette. Reads what the browser writes: eight bits, red, green and blue,
//! with or without alpha, not interlaced.

use std::io::{Read, Write};

use flate2::{Compression, Crc, read::ZlibDecoder, write::ZlibEncoder};

type Result<T> = std::result::Result<T, String>;
type Colour = [u8; 3];

const SIGN: &[u8; 8] = b"\x89PNG\r\n\x1a\n";
/// Colours kept: four bits for each pixel.
const COLOURS: usize = 16;

/// The same picture with a palette.
pub fn small(png: &[u8]) -> Result<Vec<u8>> {
    let (width, pixels) = read(png).ok_or("The browser sent a kind of PNG that is not known.")?;
    let palette = palette(&pixels);
    let mut lines = Vec::new();
    for line in pixels.chunks(width) {
        // No filter: flat areas and letters alike compress best as they are.
        lines.push(0);
        let place = |colour: &Colour| nearest(&palette, colour);
        lines.extend(line.chunks(2).map(|pair| {
            let first = pair.first().map_or(0, place);
            first << 4 | pair.get(1).map_or(0, place)
        }));
    }
    let size = |number: usize| u32::try_from(number).map(u32::to_be_bytes);
    let (wide, high) = (size(width), size(pixels.len() / width.max(1)));
    let (Ok(wide), Ok(high)) = (wide, high) else {
        return Err("The picture is too large.".into());
    };
    let header = [&wide[..], &high[..], &[4, 3, 0, 0, 0]].concat();
    let mut packed = ZlibEncoder::new(Vec::new(), Compression::best());
    let packed = packed
        .write_all(&lines)
        .and_then(|()| packed.finish())
        .map_err(|e| e.to_string())?;
    let mut png = SIGN.to_vec();
    for (kind, bytes) in [
        (b"IHDR", &header),
        (b"PLTE", &palette.concat()),
        (b"IDAT", &packed),
        (b"IEND", &Vec::new()),
    ] {
        chunk(&mut png, kind, bytes);
    }
    Ok(png)
}

fn chunk(png: &mut Vec<u8>, kind: &[u8; 4], bytes: &[u8]) {
    let mut sum = Crc::new();
    sum.update(kind);
    sum.update(bytes);
    png.extend(u32::try_from(bytes.len()).unwrap_or(0).to_be_bytes());
    png.extend(kind);
    png.extend(bytes);
    png.extend(sum.sum().to_be_bytes());
}

/// Width and pixels.
fn read(png: &[u8]) -> Option<(usize, Vec<Colour>)> {
    let mut rest = png.strip_prefix(SIGN)?;
    let (mut header, mut packed) = (None, Vec::new());
    while let Some((length, after)) = rest.split_first_chunk::<4>() {
        let (kind, after) = after.split_first_chunk::<4>()?;
        let (bytes, after) = after.split_at_checked(u32::from_be_bytes(*length) as usize)?;
        match kind {
            b"IHDR" => header = Some(bytes),
            b"IDAT" => packed.extend(bytes),
            _ => {}
        }
        rest = after.get(4..)?;
    }
    let (width, after) = header?.split_first_chunk::<4>()?;
    let each = match after.get(4..)? {
        [8, 2, 0, 0, 0] => 3,
        [8, 6, 0, 0, 0] => 4,
        _ => return None,
    };
    let width = u32::from_be_bytes(*width) as usize;
    let mut lines = Vec::new();
    ZlibDecoder::new(&packed[..]).read_to_end(&mut lines).ok()?;
    let mut above = vec![0; width * each];
    let mut pixels = Vec::new();
    for line in lines.chunks_exact(1 + width * each) {
        let (filter, line) = line.split_first()?;
        above = unfiltered(*filter, line, &above, each)?;
        pixels.extend(above.chunks_exact(each).map(|p| [p[0], p[1], p[2]]));
    }
    Some((width, pixels))
}

/// A line as it was before its filter; PNG specification, section 9.
fn unfiltered(filter: u8, line: &[u8], above: &[u8], each: usize) -> Option<Vec<u8>> {
    let mut out: Vec<u8> = Vec::with_capacity(line.len());
    for (at, byte) in line.iter().enumerate() {
        let before = |of: &[u8]| at.checked_sub(each).map_or(0, |at| of[at]);
        let (left, up, corner) = (before(&out), above[at], before(above));
        let mean = (u16::from(left) + u16::from(up)) / 2;
        let guess = match filter {
            0 => 0,
            1 => left,
            2 => up,
            3 => u8::try_from(mean).ok()?,
            4 => {
                let flat = i16::from(left) + i16::from(up) - i16::from(corner);
                let off = |byte: u8| (flat - i16::from(byte)).abs();
                let mut best = left;
                for other in [up, corner] {
                    if off(other) < off(best) {
                        best = other;
                    }
                }
                best
            }
            _ => return None,
        };
        out.push(byte.wrapping_add(guess));
    }
    Some(out)
}

/// The colours that the most pixels have, each well apart from the others:
/// between ink and paper only so many greys are told apart.
fn palette(pixels: &[Colour]) -> Vec<Colour> {
    let mut sorted = pixels.to_vec();
    sorted.sort_unstable();
    let mut counted: Vec<(usize, Colour)> = sorted
        .chunk_by(|a, b| a == b)
        .map(|same| (same.len(), same[0]))
        .collect();
    counted.sort_unstable_by_key(|(count, colour)| (usize::MAX - count, *colour));
    // Paper, fields and notices differ little, but are large.
    let large = |(count, _): &&(usize, Colour)| count * 200 > pixels.len();
    let large = counted.iter().filter(large).take(COLOURS / 2);
    let mut palette: Vec<Colour> = large.map(|(_, colour)| *colour).collect();
    for apart in [60, 30, 1] {
        for (_, colour) in &counted {
            let near = palette.iter().any(|kept| off(kept, colour) < apart * apart);
            if palette.len() < COLOURS && !near {
                palette.push(*colour);
            }
        }
    }
    palette
}

fn off(a: &Colour, b: &Colour) -> u32 {
    let square = |(a, b): (&u8, &u8)| u32::from(a.abs_diff(*b)).pow(2);
    a.iter().zip(b).map(square).sum()
}

fn nearest(palette: &[Colour], colour: &Colour) -> u8 {
    let best = (0..).zip(palette).min_by_key(|(_, kept)| off(kept, colour));
    best.map_or(0, |(place, _)| place)
}
