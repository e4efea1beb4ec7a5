//! Packs in parallel, each with a management system of its own: how they share,
//! what the others get when one opens, and what a short circuit draws from each.

use serde::Serialize;

use crate::analysis::RunReport;
use crate::analysis::cable::Cables;
use crate::boat::{Inputs, Worksheet};
use crate::physics::fuse;
use crate::physics::packs::{PackStep, cascade, limits_a, other_packs_a, pack_a, pack_shares};
use crate::simulation::management::opens_above_a;

/// The packs of a bank that has several.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct PacksReport {
    /// How many.
    pub packs: usize,
    /// Capacity of each \[A·h\].
    pub pack_ah: f64,
    /// Part of a current that the one with the least resistance takes \[%\].
    pub most_share_pct: f64,
    /// Part that the one with the most resistance takes \[%\].
    pub least_share_pct: f64,
    /// Sum of their charge limits \[A\].
    pub limits_a: f64,
    /// What they may take together until the first one is at its limit \[A\].
    pub together_a: f64,
    /// While charging; none where nothing charges the bank in the run.
    pub charging: Option<PackLoad>,
    /// With the peak house load; none where the discharge limit is not known.
    pub discharging: Option<PackLoad>,
    /// What a short circuit draws from one pack \[A\].
    pub short_a: f64,
    /// What a short circuit at one pack draws from all the others together \[A\].
    pub others_short_a: f64,
    /// What the fuse of each pack should be able to break \[kA\]; none where none
    /// is built for it.
    pub breaks_ka: Option<f64>,
    /// The least rating of that fuse \[A\]: see [`fuse::least_rating_a()`].
    pub fuse_least_a: f64,
    /// The next one that is sold \[A\]; none beyond the largest.
    pub fuse_a: Option<f64>,
}

/// A current that the packs share.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct PackLoad {
    /// The current \[A\].
    pub bank_a: f64,
    /// What each pack bears \[A\].
    pub limit_a: f64,
    /// What the one with the least resistance gets of it \[A\].
    pub most_a: f64,
    /// Whether the current is lowered or cut once one pack has opened: over a data
    /// link, or by a charge-disable signal.
    pub lowered: bool,
    /// What follows when one opens, step by step; none where the current is lowered.
    pub steps: Vec<PackStep>,
}

impl PackLoad {
    fn new(bank_a: f64, limit_a: f64, packs: usize, spread: f64, lowered: bool) -> PackLoad {
        let most = pack_shares(packs, spread).first().copied().unwrap_or(1.0);
        PackLoad {
            bank_a,
            limit_a,
            most_a: pack_a(bank_a, most),
            lowered,
            steps: if lowered {
                Vec::new()
            } else {
                cascade(bank_a, opens_above_a(limit_a), packs, spread)
            },
        }
    }

    /// How many packs follow the first one.
    pub fn followers(&self) -> usize {
        self.steps.len().saturating_sub(1)
    }

    /// Whether all of them open in the end.
    pub fn all_open(&self) -> bool {
        self.steps.last().is_some_and(|step| step.left == 0)
    }

    /// What the most loaded of the others gets once the first one has opened \[A\];
    /// none where the current is lowered then.
    pub fn after_first_a(&self) -> Option<f64> {
        self.steps.first().map(|step| step.most_a)
    }

    /// Whether one of them gets more than it bears with all connected.
    pub fn passes_limit(&self) -> bool {
        self.most_a > opens_above_a(self.limit_a)
    }
}

/// The packs; none for a single one and for lead.
pub(super) fn packs_report(
    sheet: &Worksheet,
    run: &RunReport,
    cables: &Cables,
) -> Option<PacksReport> {
    let inputs = &sheet.inputs;
    let packs = inputs.pack_count();
    if packs < 2 {
        return None;
    }
    let spread = inputs.pack_spread();
    let shares = pack_shares(packs, spread);
    let most = shares.first().copied().unwrap_or(1.0);
    let least = shares.last().copied().unwrap_or(1.0);
    let charging = charging(inputs, run);
    let discharging = inputs
        .packs
        .discharge_limit_a
        .map(|limit_a| PackLoad::new(sheet.bus_peak_a(), limit_a, packs, spread, false));
    let of_all_a = cables.short_circuit_a;
    let short_a = pack_a(of_all_a, most);
    let others_short_a = other_packs_a(of_all_a, least);
    // What it carries on and on, in the worst case.
    let carries_a = pack_a(carried_a(sheet), most);
    let fuse_least_a = fuse::least_rating_a(carries_a);
    Some(PacksReport {
        packs,
        pack_ah: inputs.pack_ah(),
        most_share_pct: 100.0 * most,
        least_share_pct: 100.0 * least,
        limits_a: limits_a(packs as f64, inputs.pack_limit_a()),
        together_a: inputs.own_charge_limit_a(),
        charging,
        discharging,
        short_a,
        others_short_a,
        breaks_ka: fuse::breaks_ka(short_a.max(others_short_a), fuse::LITHIUM_KA),
        fuse_least_a,
        fuse_a: fuse::next_a(fuse_least_a),
    })
}

/// What all packs together carry on and on, in the worst case \[A\]: the peak house
/// load, or what may flow into them.
pub(crate) fn carried_a(sheet: &Worksheet) -> f64 {
    sheet.bus_peak_a().max(sheet.inputs.own_charge_limit_a())
}

/// The most that flows into the bank in the run, as far as it gets.
fn charging(inputs: &Inputs, run: &RunReport) -> Option<PackLoad> {
    let bank_a = run
        .series
        .iter()
        .map(|moment| moment.bank_a)
        .fold(run.opening.map_or(0.0, |opening| opening.bank_a), f64::max);
    let limit_a = inputs.pack_limit_now_a();
    let lowered = inputs.limit_linked() || inputs.field_off_first();
    (bank_a > 0.0 && limit_a > 0.0).then(|| {
        PackLoad::new(
            bank_a,
            limit_a,
            inputs.pack_count(),
            inputs.pack_spread(),
            lowered,
        )
    })
}
