//! Cable and fuse for each run of the arrangement.
//!
//! `runs` says which runs there are and what each must carry (a `lead`; `motors`
//! those of windlass and thruster), `choose` finds
//! the smallest cable and its fuse, `notes` what else to know, `told` names all
//! of it. The sentences stand in [`crate::text`].

mod choose;
mod codes;
mod lead;
mod motors;
mod notes;
mod runs;

use serde::Serialize;

use crate::analysis::RunReport;
use crate::boat::{Chemistry, Flag, Inputs, Worksheet};
use crate::physics::ampacity::{ENGINE_AIR_C, TABLE_AIR_C};
use crate::physics::battery::{LFP_SHORT_OHM_AH, lfp_resistance_ohm};
use crate::physics::cable;
use crate::physics::fuse;
use crate::simulation::alternators::Alternators;

pub use choose::{CableChoice, CableRequest, SizingReason, Table, choose};
pub use codes::{AlternatorFuse, CableRemark, Carries, RunCode, RunEnd, RunNote};

/// Cables and fuses of a boat.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Cables {
    /// Current of a short at the house bank's posts \[A\]: nothing but its
    /// cells' own resistance, warm and full.
    pub short_circuit_a: f64,
    /// What a fuse there should be able to break \[kA\]; none where none is built for it.
    pub breaks_ka: Option<f64>,
    /// Air the cables in the engine space are reckoned in \[°C\].
    pub engine_air_c: f64,
    /// Air of all other cables \[°C\].
    pub other_air_c: f64,
    /// What the insulation is rated for \[°C\].
    pub insulation_c: f64,
    /// Every run there is.
    pub runs: Vec<CableRun>,
    /// The boat's flag, which decides whose rule comes first.
    pub flag: Flag,
    /// How these figures differ from those of the tables.
    pub remarks: Vec<CableRemark>,
}

/// One run.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct CableRun {
    /// Which run it is.
    pub code: RunCode,
    /// Where it begins.
    pub from: RunEnd,
    /// Where it ends.
    pub to: RunEnd,
    /// Current it must carry continuously \[A\].
    pub carries_a: f64,
    /// What current that is.
    pub carries: Carries,
    /// Length one way \[m\].
    pub length_m: f64,
    /// Whether it goes through the engine space.
    pub engine_space: bool,
    /// Air there \[°C\].
    pub air_c: f64,
    /// Loss allowed, out and back \[V\].
    pub allowed_v: f64,
    /// Loss allowed, out and back, of the system voltage \[%\].
    pub allowed_pct: f64,
    /// Gauge that does it; none where no three cables do.
    pub gauge: Option<CableChoice>,
    /// Metric size that does it; none where no three cables do.
    pub metric: Option<CableChoice>,
    /// Circular mils by a rule of the trade, from memory; shown beside.
    pub circular_mils_from_memory: f64,
    /// The gauge that makes; none beyond 4/0.
    pub gauge_from_memory: Option<&'static str>,
    /// What its fuse should be able to break \[kA\]; none where none is built for it.
    pub breaks_ka: Option<f64>,
    /// Least direct voltage its fuse must be rated for \[V\].
    pub fuse_v: f64,
    /// Whether the fuse goes to the house bank; to the start battery otherwise.
    pub fuse_at_house: bool,
    /// Whether the alternator's end wants a fuse too; none where no alternator
    /// is at the other end.
    pub alternator_fuse: Option<AlternatorFuse>,
    /// What else to know about it.
    pub notes: Vec<RunNote>,
}

/// What lead-acid resists, of a 12 V block times its ampere-hours \[Ω·A·h\]:
/// 3 kA from 100 A·h, from memory.
const LEAD_OHM_AH: f64 = 0.4;

/// Works out cable and fuse for each run of the chosen arrangement.
pub(crate) fn cables(sheet: &Worksheet, alternators: &Alternators, charging: &RunReport) -> Cables {
    let inputs = &sheet.inputs;
    let short_circuit_a = short_circuit_a(inputs);
    let breaks_ka = fuse::breaks_ka(
        short_circuit_a,
        match inputs.bank.chemistry {
            Chemistry::Lfp => fuse::LITHIUM_KA,
            _ => fuse::START_KA,
        },
    );
    let engine_air_c = charging.peak_air_c.max(ENGINE_AIR_C);
    let other_air_c = inputs.cabin_c().max(TABLE_AIR_C);
    let insulation_c = inputs.cable.insulation.rated_c();
    let runs: Vec<CableRun> = runs::leads(sheet, alternators)
        .into_iter()
        .map(|lead| {
            let air_c = if lead.engine_space {
                engine_air_c
            } else {
                other_air_c
            };
            run(inputs, lead, air_c, breaks_ka)
        })
        .collect();
    Cables {
        remarks: notes::remarks(engine_air_c, insulation_c, &runs),
        short_circuit_a,
        breaks_ka,
        engine_air_c,
        other_air_c,
        insulation_c,
        runs,
        flag: inputs.cable.flag,
    }
}

/// Current of a short at the house bank's posts \[A\], its cells warm and full.
/// For lithium the low end of the cells' ohmic resistance counts: what they
/// resist a long charge with is several times that.
fn short_circuit_a(inputs: &Inputs) -> f64 {
    fuse::short_circuit_a(inputs.house_bank().rest_v(1.0), cells_ohm(inputs), 0.0)
}

/// What the house bank's cells resist a short circuit with \[Ω\].
pub(crate) fn cells_ohm(inputs: &Inputs) -> f64 {
    let bank = inputs.house_bank();
    let ohm_ah = match inputs.bank.chemistry {
        Chemistry::Lfp => inputs.bank.resistance_ohm_ah.min(LFP_SHORT_OHM_AH),
        _ => LEAD_OHM_AH,
    };
    lfp_resistance_ohm(ohm_ah, bank.blocks, bank.capacity_ah)
}

fn run(inputs: &Inputs, lead: lead::Lead, air_c: f64, house_ka: Option<f64>) -> CableRun {
    let ask = CableRequest {
        amperes: lead.amperes,
        length_m: lead.length_m,
        allowed_v: lead.allowed_v,
        volts: lead.volts,
        insulation_c: inputs.cable.insulation.rated_c(),
        tinned: inputs.cable.copper == crate::boat::Copper::Tinned,
        engine_space: lead.engine_space,
        air_c,
    };
    let mils = cable::circular_mils(ask.amperes, ask.length_m, ask.allowed_v);
    let nominal_v = 12.0 * lead.blocks;
    let mut run = CableRun {
        code: lead.code,
        from: lead.from,
        to: lead.to,
        carries_a: ask.amperes,
        carries: lead.carries,
        length_m: ask.length_m,
        engine_space: ask.engine_space,
        air_c,
        allowed_v: ask.allowed_v,
        allowed_pct: 100.0 * ask.allowed_v / nominal_v,
        gauge: choose(&ask, Table::Gauge).ok(),
        metric: choose(&ask, Table::Metric).ok(),
        circular_mils_from_memory: mils,
        gauge_from_memory: cable::gauge_of_mils(mils).map(|gauge| gauge.name),
        breaks_ka: if lead.on_house {
            house_ka
        } else {
            Some(fuse::START_KA)
        },
        fuse_v: ask.volts,
        fuse_at_house: lead.on_house,
        alternator_fuse: lead.from_alternator.then(|| alternator_fuse(ask.length_m)),
        notes: lead.notes,
    };
    notes::add(inputs, &mut run, nominal_v);
    run
}

/// Whether the alternator's end of a lead of that length \[m\] wants a fuse.
fn alternator_fuse(length_m: f64) -> AlternatorFuse {
    if 1000.0 * length_m < fuse::SHEATHED_MM {
        AlternatorFuse::NotNeeded
    } else {
        AlternatorFuse::Wanted
    }
}
