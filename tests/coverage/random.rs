//! Numbers at random, the same every time.

/// SplitMix64 of G. L. Steele, D. Lea, C. H. Flood, OOPSLA 2014 (from memory).
pub struct Random(u64);

impl Random {
    /// A series of its own for each number.
    pub fn new(seed: u64) -> Random {
        Random(seed.wrapping_mul(0x9e37_79b9_7f4a_7c15) ^ 0x5bd1_e995)
    }

    /// From 0 to 1.
    pub fn share(&mut self) -> f64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut z = self.0;
        z = (z ^ (z >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        z = (z ^ (z >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        ((z ^ (z >> 31)) >> 11) as f64 / (1u64 << 53) as f64
    }

    /// Evenly from one number to another.
    pub fn between(&mut self, low: f64, high: f64) -> f64 {
        low + (high - low) * self.share()
    }

    /// A triangle from −1 to 1, as what is read is off.
    pub fn triangle(&mut self) -> f64 {
        self.share() + self.share() - 1.0
    }

    /// Normally distributed: the sum of twelve even ones, less six.
    pub fn normal(&mut self) -> f64 {
        (0..12).map(|_| self.share()).sum::<f64>() - 6.0
    }
}
