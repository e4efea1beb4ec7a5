//! Cable and fuse for each run of the arrangement.
//!
//! `runs` says which runs there are and what each must carry, `choose` finds
//! the smallest cable and its fuse, `words` says it. Not part of the report but
//! for its findings: it is asked for by itself.

mod choose;
mod runs;
mod words;

use serde::Serialize;

use crate::analysis::RunReport;
use crate::boat::{Chemistry, Inputs, Worksheet};
use crate::physics::ampacity::{ENGINE_AIR_C, TABLE_AIR_C};
use crate::physics::battery::{LFP_SHORT_OHM_AH, lfp_resistance_ohm};
use crate::physics::cable;
use crate::physics::fuse;
use crate::simulation::alternators::Alternators;
use crate::units::Reader;

pub use choose::{CableChoice, CableRequest, SizingReason, Table, choose};

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
    /// What the rule says, and what another flag's may change.
    pub rule: Vec<&'static str>,
    /// Where the figures come from.
    pub sources: &'static [&'static str],
    /// How these figures differ from the tables', in sentences.
    pub remarks: Vec<String>,
}

/// One run.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct CableRun {
    /// Its name, the same for ever.
    pub key: &'static str,
    /// Where it comes from.
    pub from: &'static str,
    /// Where it leads.
    pub to: &'static str,
    /// Current it must carry for ever \[A\].
    pub carries_a: f64,
    /// What current that is.
    pub carries: String,
    /// Length one way \[m\].
    pub length_m: f64,
    /// Whether it goes through the engine space.
    pub engine_space: bool,
    /// Air there \[°C\].
    pub air_c: f64,
    /// Loss allowed, out and back \[V\].
    pub allowed_v: f64,
    /// The same, of the system voltage \[%\].
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
    /// Where the fuse goes.
    pub fuse_at: String,
    /// What is asked of its cable, in words.
    pub asks: String,
    /// Volts and breaking capacity of its fuse in words, or that there is no cable.
    pub fuse_for: String,
    /// What else to know about it.
    pub notes: Vec<String>,
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
    let engine_air_c = charging.peak.air_c.max(ENGINE_AIR_C);
    let other_air_c = inputs.cabin_c().max(TABLE_AIR_C);
    let insulation_c = inputs.cable.insulation.rated_c();
    let runs = runs::leads(sheet, alternators)
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
    let mut wiring = Cables {
        short_circuit_a,
        breaks_ka,
        engine_air_c,
        other_air_c,
        insulation_c,
        runs,
        rule: words::rule(inputs.cable.flag),
        sources: words::SOURCES,
        remarks: Vec::new(),
    };
    wiring.remarks = words::remarks(&wiring, &Reader::METRIC);
    wiring
}

/// Current of a short at the house bank's posts \[A\], its cells warm and full.
/// For lithium the low end of the cells' ohmic resistance counts: what they
/// resist a long charge with is several times that.
fn short_circuit_a(inputs: &Inputs) -> f64 {
    let bank = inputs.house_bank();
    let ohm_ah = match inputs.bank.chemistry {
        Chemistry::Lfp => inputs.bank.resistance_ohm_ah.min(LFP_SHORT_OHM_AH),
        _ => LEAD_OHM_AH,
    };
    let cells_ohm = lfp_resistance_ohm(ohm_ah, bank.blocks, bank.capacity_ah);
    fuse::short_circuit_a(bank.rest_v(1.0), cells_ohm, 0.0)
}

fn run(inputs: &Inputs, lead: runs::Lead, air_c: f64, house_ka: Option<f64>) -> CableRun {
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
        key: lead.key,
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
        fuse_at: words::fuse_at(lead.on_house, lead.from_machine, ask.length_m),
        asks: String::new(),
        fuse_for: String::new(),
        notes: lead.notes,
    };
    words::notes(inputs, &mut run, nominal_v);
    run.asks = words::asks(&run, &Reader::METRIC);
    run.fuse_for = words::fuse_for(&run);
    run
}
