//! A drawing as the text between the tags of an `svg`. A view of every line
//! would take several times the code, and longer to put on screen.

use std::fmt::Write;

use crate::words::escape;

/// Where a word stands against its place.
#[derive(Clone, Copy)]
pub enum Anchor {
    Start,
    Middle,
    End,
}

/// Lines, words and areas, in the order they are drawn.
#[derive(Default)]
pub struct Drawing(String);

impl Drawing {
    /// A straight line.
    pub fn line(&mut self, class: &str, from: (f64, f64), to: (f64, f64)) {
        self.begin("<line", class);
        self.places(&[
            (" x1=", from.0),
            (" y1=", from.1),
            (" x2=", to.0),
            (" y2=", to.1),
        ]);
        self.0 += " />";
    }

    /// A word or figure.
    pub fn word(&mut self, class: &str, at: (f64, f64), anchor: Anchor, word: &str) {
        self.begin("<text", class);
        self.places(&[(" x=", at.0), (" y=", at.1)]);
        self.0 += match anchor {
            Anchor::Start => " text-anchor=start>",
            Anchor::Middle => " text-anchor=middle>",
            Anchor::End => " text-anchor=end>",
        };
        self.0 += &escape(word);
        self.0 += "</text>";
    }

    /// A path, in the letters of SVG.
    pub fn path(&mut self, class: &str, path: &str) {
        self.begin("<path", class);
        self.0 += " d='";
        self.0 += path;
        self.0 += "' />";
    }

    /// An upright rectangle.
    pub fn area(&mut self, class: &str, corner: (f64, f64), size: (f64, f64)) {
        self.begin("<rect", class);
        self.places(&[
            (" x=", corner.0),
            (" y=", corner.1),
            (" width=", size.0),
            (" height=", size.1),
        ]);
        self.0 += " />";
    }

    /// The text.
    pub fn finish(self) -> String {
        self.0
    }

    fn begin(&mut self, tag: &str, class: &str) {
        self.0 += tag;
        self.0 += " class='";
        self.0 += class;
        self.0.push('\'');
    }

    fn places(&mut self, places: &[(&str, f64)]) {
        for (name, place) in places {
            self.0 += name;
            tenths(&mut self.0, *place);
        }
    }
}

/// Writes a place on the drawing with one decimal, many times as quickly as the
/// formatting of any number does.
pub fn tenths(text: &mut String, place: f64) {
    let tenths = (10.0 * place).round() as i32;
    if tenths < 0 {
        text.push('-');
    }
    let tenths = tenths.unsigned_abs();
    // Writing to a String cannot fail.
    let _ = write!(text, "{}.{}", tenths / 10, tenths % 10);
}
