//! The belt that turns the alternator.

use crate::boat::InstalledAlternator;
use crate::boat::guard::Said;
use crate::boat::section;
use crate::boat::{choose, number, optional_of_alternator};
use crate::physics::belt::{self, BeltType, RIBS_6, RIBS_8, RIBS_10, TWO_V13, V10, V13};
use crate::schema::{choice, effects};
use crate::units::{DEGREE, MILLIMETRE, NEWTON, NONE};

choice! {
    /// Kinds of belt.
    BeltKind {
        Unsaid = "unsaid", "Not known yet";
        V10 = "v10", "One V-belt, 10 mm wide";
        V13 = "v13", "One V-belt, 13 mm wide";
        TwoV13 = "two_v13", "Two V-belts, 13 mm wide";
        Ribs6 = "ribs6", "Multi-rib belt, 6 ribs";
        Ribs8 = "ribs8", "Multi-rib belt, 8 ribs";
        Ribs10 = "ribs10", "Multi-rib belt, 10 ribs";
    }
}

impl BeltKind {
    /// V-belts, smallest first.
    pub const V: [BeltKind; 3] = [BeltKind::V10, BeltKind::V13, BeltKind::TwoV13];
    /// Multi-rib belts, smallest first.
    pub const RIBS: [BeltKind; 3] = [BeltKind::Ribs6, BeltKind::Ribs8, BeltKind::Ribs10];

    /// What the tables say of it; none as long as it is not said.
    pub fn table(self) -> Option<BeltType> {
        match self {
            BeltKind::Unsaid => None,
            BeltKind::V10 => Some(V10),
            BeltKind::V13 => Some(V13),
            BeltKind::TwoV13 => Some(TWO_V13),
            BeltKind::Ribs6 => Some(RIBS_6),
            BeltKind::Ribs8 => Some(RIBS_8),
            BeltKind::Ribs10 => Some(RIBS_10),
        }
    }
}

section! {
    /// The belt that turns an alternator.
    Belt {
        kind: BeltKind = choose("Belt", BeltKind::OPTIONS, 0).measured()
            .help("Measured across its back: 10 and 13 mm are the usual V-belts; a multi-rib belt is flat with small grooves along it, count the ribs.");
        pulley_mm: f64 = number("Alternator pulley", MILLIMETRE, 30.0, 300.0, 65.0).measured()
            .help("Diameter at the belt's middle line, a few millimetres less than across the rims of a V-belt pulley. 55 to 75 mm is usual.")
            .when_of_alternator(said);
        engine_mm: Option<f64> = optional_of_alternator("Engine pulley", MILLIMETRE, 30.0, 600.0, "the alternator's pulley times the pulley ratio", |a| Some(usual_engine_mm(a))).measured()
            .help("The same on the crankshaft, or on whatever else drives this belt.")
            .when_of_alternator(said);
        centres_mm: f64 = number("Centre distance", MILLIMETRE, 80.0, 2000.0, 300.0).measured()
            .help("From the middle of one pulley to the middle of the other.")
            .when_of_alternator(said);
        wrap_deg: Option<f64> = optional_of_alternator("Wrap angle", DEGREE, 30.0, 300.0, "from pulleys and centre distance", |a| Some(usual_wrap_deg(a))).measured()
            .help("How far round the smaller pulley the belt lies: 180 is half-way round. Look where a third pulley or an idler changes it.")
            .when_of_alternator(said);
        pump: Said = choose("Turns the water pump too", Said::OPTIONS, 0)
            .help("Where one belt turns both, the pump's bearing carries the alternator's pull, and a belt that slips or breaks stops the cooling.")
            .when_of_alternator(said);
        friction: f64 = number("Friction", NONE, 0.1, 0.6, 0.3).advanced()
            .help("Between belt and pulley: 0.3 dry, 0.2 wet or cold, up to 0.4.")
            .when_of_alternator(said);
        tight_n: Option<f64> = optional_of_alternator("Most pull of the tight side", NEWTON, 50.0, 10_000.0, "350 N for a 10 mm, 475 N for a 13 mm V-belt, 105 N a rib (from memory)", |a| a.belt_tight_n()).nameplate().advanced()
            .help("Of all belts or ribs together, from the belt maker's sheet.")
            .when_of_alternator(said);
    }
}

effects! {
    Belt: no effect
}

fn said(installed: &InstalledAlternator) -> bool {
    installed.belt.kind != BeltKind::Unsaid
}

fn usual_engine_mm(installed: &InstalledAlternator) -> f64 {
    belt::engine_pulley_mm(installed.alternator.pulley_ratio, installed.belt.pulley_mm)
}

/// Never less than the field takes: pulleys that near do not fit side by side,
/// and a finding says so.
fn usual_wrap_deg(installed: &InstalledAlternator) -> f64 {
    belt::usual_wrap_deg(
        installed.engine_pulley_mm(),
        installed.belt.pulley_mm,
        installed.belt.centres_mm,
    )
}

impl InstalledAlternator<'_> {
    /// Engine pulley \[mm\].
    pub fn engine_pulley_mm(&self) -> f64 {
        self.belt.engine_mm.unwrap_or_else(|| usual_engine_mm(self))
    }

    /// Wrap on the smaller pulley \[°\].
    pub fn belt_wrap_deg(&self) -> f64 {
        self.belt.wrap_deg.unwrap_or_else(|| usual_wrap_deg(self))
    }

    /// Most pull of the belt's tight side \[N\]; none as long as the belt is not said.
    pub fn belt_tight_n(&self) -> Option<f64> {
        let usual = self.belt.kind.table()?;
        Some(self.belt.tight_n.unwrap_or(usual.tight_n))
    }
}
