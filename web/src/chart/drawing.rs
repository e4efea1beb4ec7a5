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

// Writing to a String cannot fail.
impl Drawing {
    /// A straight line.
    pub fn line(&mut self, class: &str, from: (f64, f64), to: (f64, f64)) {
        let _ = write!(
            self.0,
            "<line class='{class}' x1={:.1} y1={:.1} x2={:.1} y2={:.1} />",
            from.0, from.1, to.0, to.1
        );
    }

    /// A word or figure.
    pub fn word(&mut self, class: &str, at: (f64, f64), anchor: Anchor, word: &str) {
        let anchor = match anchor {
            Anchor::Start => "start",
            Anchor::Middle => "middle",
            Anchor::End => "end",
        };
        let _ = write!(
            self.0,
            "<text class='{class}' x={:.1} y={:.1} text-anchor={anchor}>{}</text>",
            at.0,
            at.1,
            escape(word)
        );
    }

    /// A path, in the letters of SVG.
    pub fn path(&mut self, class: &str, path: &str) {
        let _ = write!(self.0, "<path class='{class}' d='{path}' />");
    }

    /// An upright rectangle.
    pub fn area(&mut self, class: &str, corner: (f64, f64), size: (f64, f64)) {
        let _ = write!(
            self.0,
            "<rect class='{class}' x={:.1} y={:.1} width={:.1} height={:.1} />",
            corner.0, corner.1, size.0, size.1
        );
    }

    /// The text.
    pub fn finish(self) -> String {
        self.0
    }
}
