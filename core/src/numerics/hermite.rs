//! Cubic Hermite interpolation: between two points of which value and rate are known.

/// What the cubic that meets two neighbouring states and both their rates makes
/// of them at a time between.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Blend {
    state: [f64; 2],
    rate: [f64; 2],
}

impl Blend {
    /// At a time between two others \[s\]; the nearer end outside them, and the
    /// later one where they are the same.
    pub fn at(from_s: f64, to_s: f64, seconds: f64) -> Blend {
        let span = to_s - from_s;
        if span <= 0.0 {
            return Blend {
                state: [0.0, 1.0],
                rate: [0.0, 0.0],
            };
        }
        let s = ((seconds - from_s) / span).clamp(0.0, 1.0);
        let (s2, s3) = (s * s, s * s * s);
        Blend {
            state: [2.0 * s3 - 3.0 * s2 + 1.0, 3.0 * s2 - 2.0 * s3],
            rate: [(s3 - 2.0 * s2 + s) * span, (s3 - s2) * span],
        }
    }

    /// A figure, from its value and its rate \[1/s\] at the earlier and at the
    /// later time.
    pub fn of(&self, earlier: [f64; 2], later: [f64; 2]) -> f64 {
        self.state[0] * earlier[0]
            + self.rate[0] * earlier[1]
            + self.state[1] * later[0]
            + self.rate[1] * later[1]
    }
}
