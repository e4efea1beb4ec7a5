//! What an alternator is where nobody has said it: its usual mass, field, coupling
//! and cooling; and what its cooling is known by.

use crate::boat::{AlternatorVolts, HotRating, Inputs, InstalledAlternator, Plate};
use crate::physics::drive;

/// Efficiency of the machine that the usual anchor temperature belongs to \[%\].
pub(crate) const USUAL_EFFICIENCY_PCT: f64 = 57.0;
/// Winding temperature on the bench of a small alternator and of a large one
/// \[°C\], and the rated powers they belong to \[W\]; between them a straight line.
///
/// Chosen so that default boats stand in the middle of common practice (no source):
/// hot, a small alternator holds 50 to 60 % of its cold output, a large one 60 to
/// 75 % where its space is aired.
const SMALL_ANCHOR_C: f64 = 135.0;
const LARGE_ANCHOR_C: f64 = 120.0;
const SMALL_W: f64 = 1400.0;
const LARGE_W: f64 = 2800.0;
/// The usual winding temperature at the anchor where a rating in air of 93 °C is
/// published \[°C\]: an alternator that holds full field there within class H (180 °C) stays below 122 °C on the bench, within
/// class 200 below 144 °C (derived with this model).
const HOT_RATED_ANCHOR_C: (f64, f64) = (122.0, 132.0);
/// Heat that passes from winding to case for each kelvin in one of 1520 W, where
/// nobody knows \[W/K\], and the least that it may be: own reasoning.
pub(super) const USUAL_COUPLING_W_K: f64 = 4.0;
pub(crate) const LEAST_COUPLING_W_K: f64 = 2.0;
/// What the winding's temperature may be \[°C\]: own reasoning.
pub(super) const LEAST_ANCHOR_C: f64 = 105.0;
pub(super) const MOST_ANCHOR_C: f64 = 165.0;
/// From where to where it may be if a rating in hot air is published \[°C\].
pub(crate) const HOT_RATED_ANCHOR_SPAN_C: (f64, f64) = (120.0, 145.0);

/// Voltage that ratings are taken at for each 12 V block \[V\]: common practice.
const TEST_BLOCK_V: f64 = 14.0;

/// 14 V for each 12 V block of the alternator's own voltage.
pub(super) fn usual_test_v(installed: &InstalledAlternator) -> f64 {
    TEST_BLOCK_V * installed.blocks()
}

/// How many 12 V blocks an alternator rated at a voltage \[V\] is built for:
/// of 14, 28 and 56 V the nearest.
fn rated_blocks(test_v: f64) -> f64 {
    [1.0, 2.0, 4.0]
        .into_iter()
        .reduce(|near, other: f64| {
            let off = |blocks: f64| (TEST_BLOCK_V * blocks - test_v).abs();
            if off(other) < off(near) { other } else { near }
        })
        .unwrap_or(1.0)
}

pub(super) fn usual_plate_rotor_c(installed: &InstalledAlternator) -> f64 {
    match installed.alternator.plate {
        Plate::Cold => 25.0,
        Plate::Warm => 100.0,
    }
}

/// 0.4 W for each rated ampere of a 14 V machine, hot: see the measured machine in `tests/published`.
pub(super) fn usual_field_w(installed: &InstalledAlternator) -> f64 {
    0.4 * installed.alternator.rated_a * installed.test_v() / TEST_BLOCK_V
}

/// 6 kg for 1400 W and 9.5 kg for 2520 W, common practice; a power of 0.78 goes
/// through both.
pub(super) fn usual_mass_kg(installed: &InstalledAlternator) -> f64 {
    let rated_w = installed.alternator.rated_a * installed.test_v();
    (6.0 * (rated_w / 1400.0).powf(0.78)).clamp(2.0, 60.0)
}

/// What an alternator's cooling is known by.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum CoolingAnchor {
    /// Its winding at full field on the bench.
    Winding {
        /// How hot \[°C\].
        winding_c: f64,
        /// Efficiency of the alternator it was seen on \[%\].
        efficiency_pct: f64,
    },
    /// Its case at a known current.
    Case {
        /// How hot \[°C\].
        case_c: f64,
        /// What it gave \[A\].
        amperes: f64,
    },
}

impl InstalledAlternator<'_> {
    /// How many 12 V blocks it is built for: as stated, else by the voltage of
    /// its rating, else as the battery its cable leads to.
    pub fn blocks(&self) -> f64 {
        let stated = self.alternator.nominal_v.blocks();
        stated
            .or_else(|| self.blocks_by_rating())
            .unwrap_or_else(|| self.battery_blocks())
    }

    /// How many 12 V blocks the voltage of its rating is usual for; none where
    /// that is not stated.
    pub fn blocks_by_rating(&self) -> Option<f64> {
        self.alternator.test_v.map(rated_blocks)
    }

    /// Whether nobody has said its voltage and it is taken as one of more than
    /// 12 V because of the house bank its cable leads to.
    pub fn voltage_assumed(&self) -> bool {
        self.alternator.nominal_v == AlternatorVolts::Same
            && self.alternator.test_v.is_none()
            && self.connection.on_house()
            && self.battery_blocks() > 1.0
    }

    /// Its mass \[kg\].
    pub fn mass_kg(&self) -> f64 {
        self.alternator
            .mass_kg
            .unwrap_or_else(|| usual_mass_kg(self))
    }

    /// Voltage its rating was taken at \[V\].
    pub fn test_v(&self) -> f64 {
        self.alternator.test_v.unwrap_or_else(|| usual_test_v(self))
    }

    /// Rotor temperature its rating was taken at \[°C\].
    pub fn plate_rotor_c(&self) -> f64 {
        self.alternator
            .plate_rotor_c
            .unwrap_or_else(|| usual_plate_rotor_c(self))
    }

    /// Field power at full field \[W\].
    pub fn field_w(&self) -> f64 {
        self.alternator
            .field_w
            .unwrap_or_else(|| usual_field_w(self))
    }

    /// What its cooling is known by.
    ///
    /// A stated temperature was seen on this alternator, with its own losses. The
    /// usual one belongs to one of usual efficiency: were it fitted to the losses
    /// of a better one, the better alternator would seem to be cooled worse and
    /// hold fewer amps, which is nonsense.
    pub fn cooling_anchor(&self) -> CoolingAnchor {
        let alternator = self.alternator;
        let case = alternator.anchor_case_c.zip(alternator.anchor_case_a);
        match (case, alternator.anchor_winding_c) {
            (Some((case_c, amperes)), _) => CoolingAnchor::Case { case_c, amperes },
            (None, Some(winding_c)) => CoolingAnchor::Winding {
                winding_c,
                efficiency_pct: alternator.efficiency_pct,
            },
            (None, None) => CoolingAnchor::Winding {
                winding_c: self.usual_anchor_c(),
                efficiency_pct: USUAL_EFFICIENCY_PCT,
            },
        }
    }

    /// Heat that passes from its winding to its case for each kelvin, told of an
    /// alternator of 1520 W \[W/K\].
    pub fn coupling_w_k(&self) -> f64 {
        let stated = self.alternator.coupling_w_k;
        stated.unwrap_or(USUAL_COUPLING_W_K)
    }

    /// Whether its cooling is known by its case.
    pub(crate) fn known_by_case(&self) -> bool {
        matches!(self.cooling_anchor(), CoolingAnchor::Case { .. })
    }

    /// Whether only its case is known of, and how far the winding's temperature
    /// lies above that is anybody's guess.
    pub fn winding_unknown(&self) -> bool {
        self.known_by_case() && self.alternator.coupling_w_k.is_none()
    }

    /// Winding temperature at full field on the bench where nobody knows \[°C\].
    pub(super) fn usual_anchor_c(&self) -> f64 {
        let rated_w = self.alternator.rated_a * self.test_v();
        let size = ((rated_w - SMALL_W) / (LARGE_W - SMALL_W)).clamp(0.0, 1.0);
        let usual_c = SMALL_ANCHOR_C + size * (LARGE_ANCHOR_C - SMALL_ANCHOR_C);
        match self.alternator.hot_rating {
            HotRating::None => usual_c,
            HotRating::At93 => usual_c.clamp(HOT_RATED_ANCHOR_C.0, HOT_RATED_ANCHOR_C.1),
        }
    }

    /// Its shaft speed at an engine speed \[rpm\].
    pub fn shaft_rpm(&self, engine_rpm: f64) -> f64 {
        drive::shaft_rpm(self.alternator.pulley_ratio, engine_rpm)
    }
}

impl Inputs {
    /// States the voltage of each alternator that was there `before` where the
    /// arrangement now would make another one of it: an alternator keeps the
    /// voltage it was built for wherever its cable leads.
    pub fn keep_alternator_voltages(&mut self, before: &Inputs) {
        for was in before.alternators() {
            let blocks = was.blocks();
            let moved = self
                .alternator(was.which)
                .is_some_and(|now| now.blocks() != blocks);
            if let Some(volts) = AlternatorVolts::of_blocks(blocks).filter(|_| moved) {
                self.alternator_mut(was.which).nominal_v = volts;
            }
        }
    }
}
