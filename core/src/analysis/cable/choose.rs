//! The smallest cable that bears the current, loses no more than allowed and
//! leaves room for a fuse; two or three of them where one is not enough.

use serde::Serialize;

use crate::physics::ampacity::{
    air_factor, ampacity_a, engine_factor, gauge_a, iso_10133_a, metric_a,
};
use crate::physics::cable::{GAUGES, METRICS, copper_c, drop_v, each_a, load_share, spare_pct};
use crate::physics::fuse;

/// Most cables laid side by side.
pub const MOST_CABLES: u8 = 3;

/// Cables thinner than this are not doubled \[mm²\]: 1/0 AWG or 50 mm², as
/// article 310.10 of NFPA 70 has it (from memory).
const LEAST_DOUBLED_MM2: f64 = 50.0;

/// What is asked of a cable.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct CableRequest {
    /// Current it must carry \[A\].
    pub amperes: f64,
    /// Length one way \[m\].
    pub length_m: f64,
    /// Loss allowed, out and back \[V\].
    pub allowed_v: f64,
    /// Highest voltage it works at \[V\].
    pub volts: f64,
    /// What its insulation is rated for \[°C\].
    pub insulation_c: f64,
    /// Whether its strands are tinned.
    pub tinned: bool,
    /// Whether it goes through the engine space.
    pub engine_space: bool,
    /// Air there \[°C\].
    pub air_c: f64,
}

/// What decided about a size: that which the size before failed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum SizingReason {
    /// Nothing: it is the smallest there is.
    Smallest,
    /// What the cable bears.
    Heat,
    /// The loss along it.
    Drop,
    /// Both.
    HeatAndDrop,
    /// No fuse is sold between what it carries and what the cable bears.
    Fuse,
}

/// Which sizes to choose from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Table {
    /// AWG.
    Gauge,
    /// mm².
    Metric,
}

/// A cable and its fuse.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct CableChoice {
    /// As it is written.
    pub size: &'static str,
    /// Copper of one cable \[mm²\].
    pub mm2: f64,
    /// What the table gives to one cable in air of 30 °C \[A\].
    pub table_a: f64,
    /// Resistance of one cable at 20 °C \[Ω/km\].
    pub ohm_km: f64,
    /// How many side by side, each with its own fuse.
    pub cables: u8,
    /// What one of them bears \[A\].
    pub ampacity_a: f64,
    /// What they bear over what they carry \[%\].
    pub spare_pct: f64,
    /// Temperature of the copper at that current \[°C\].
    pub copper_c: f64,
    /// Loss out and back \[V\].
    pub drop_v: f64,
    /// Of the loss allowed, what is left \[V\].
    pub spare_v: f64,
    /// What decided.
    pub bound: SizingReason,
    /// Least rating of a fuse \[A\].
    pub fuse_least_a: f64,
    /// Largest rating of a fuse \[A\].
    pub fuse_most_a: f64,
    /// The smallest sold between them \[A\].
    pub fuse_a: f64,
    /// What a metric size of 105 °C bears outside the engine space by a
    /// standard quoted from memory \[A\]; shown beside.
    pub ampacity_from_memory_a: Option<f64>,
}

/// One size of a table.
#[derive(Clone, Copy)]
struct Size {
    name: &'static str,
    mm2: f64,
    table_a: f64,
    ohm_km: f64,
    memory_a: Option<f64>,
}

/// The size at a position, smallest first; none past the end.
fn size(ask: &CableRequest, table: Table, at: usize) -> Option<Size> {
    let rated_c = ask.insulation_c;
    match table {
        Table::Gauge => GAUGES.get(at).map(|gauge| Size {
            name: gauge.name,
            mm2: gauge.mm2(),
            table_a: gauge_a(*gauge, rated_c),
            ohm_km: gauge.ohm_km(ask.tinned),
            memory_a: None,
        }),
        Table::Metric => METRICS.get(at).map(|metric| Size {
            name: metric.name,
            mm2: metric.mm2,
            table_a: metric_a(metric.mm2, rated_c),
            ohm_km: metric.ohm_km(ask.tinned),
            memory_a: iso_10133_a(metric.mm2).filter(|_| rated_c == 105.0 && !ask.engine_space),
        }),
    }
}

/// The smallest that does it, one cable before two and two before three.
///
/// # Errors
/// What the largest three fail at.
pub fn choose(ask: &CableRequest, table: Table) -> Result<CableChoice, SizingReason> {
    let mut last = SizingReason::Smallest;
    for cables in 1..=MOST_CABLES {
        let mut at = 0;
        while let Some(size) = size(ask, table, at) {
            at += 1;
            if cables > 1 && size.mm2 < LEAST_DOUBLED_MM2 {
                continue;
            }
            match judge(ask, &size, cables, last) {
                Ok(pick) => return Ok(pick),
                Err(bound) => last = bound,
            }
        }
    }
    Err(last)
}

/// Whether so many cables of a size do it; what they fail at if not.
fn judge(
    ask: &CableRequest,
    size: &Size,
    cables: u8,
    bound: SizingReason,
) -> Result<CableChoice, SizingReason> {
    let each_a = each_a(ask.amperes, f64::from(cables));
    let factor = if ask.engine_space {
        engine_factor(ask.insulation_c, ask.air_c)
    } else {
        air_factor(ask.insulation_c, ask.air_c)
    };
    let ampacity_a = ampacity_a(factor, size.table_a);
    // The copper is as hot as its insulation allows when the cable carries all it may.
    let share = if ampacity_a > 0.0 {
        load_share(each_a, ampacity_a)
    } else {
        1.0
    };
    let copper_c = copper_c(ask.air_c, ask.insulation_c, share);
    let drop_v = drop_v(ask.length_m, each_a, size.ohm_km, copper_c);
    match (each_a <= ampacity_a, drop_v <= ask.allowed_v) {
        (false, false) => return Err(SizingReason::HeatAndDrop),
        (false, true) => return Err(SizingReason::Heat),
        (true, false) => return Err(SizingReason::Drop),
        (true, true) => {}
    }
    let (fuse_least_a, fuse_most_a) = fuse::bounds_a(each_a, ampacity_a, ask.volts);
    let fuse_a = fuse::next_a(fuse_least_a)
        .filter(|rating| *rating <= fuse_most_a)
        .ok_or(SizingReason::Fuse)?;
    Ok(CableChoice {
        size: size.name,
        mm2: size.mm2,
        table_a: size.table_a,
        ohm_km: size.ohm_km,
        cables,
        ampacity_a,
        spare_pct: spare_pct(ampacity_a, each_a),
        copper_c,
        drop_v,
        spare_v: ask.allowed_v - drop_v,
        bound,
        fuse_least_a,
        fuse_most_a,
        fuse_a,
        ampacity_from_memory_a: size.memory_a,
    })
}
