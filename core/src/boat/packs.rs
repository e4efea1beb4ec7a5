//! Battery packs in parallel, each with a management system of its own.

use crate::boat::section;
use crate::boat::{Chemistry, Inputs};
use crate::boat::{choose, number, optional};
use crate::physics::packs::{one_out_part, shared_part};
use crate::schema::{choice, effects};
use crate::units::{AMPERE, AMPERE_HOUR, PERCENT, PIECE};

choice! {
    /// What the packs' management systems let out.
    PackManagement {
        Open = "open", "Signal or link, or not known";
        Closed = "closed", "Nothing: drop-in packs";
    }
}

/// Most packs in parallel.
pub const MOST_PACKS: usize = 16;

section! {
    /// The packs of a lithium house bank.
    Packs {
        management: PackManagement = choose("What the packs' management systems give out", PackManagement::OPTIONS, 0).nameplate()
            .help("Drop-in packs keep their management system inside: it opens without warning, and no wire can stop the alternator first. Packs with a charge-disable signal or a data link have terminals or a plug for it.")
            .when(lithium);
        count: f64 = number("Packs in parallel", PIECE, 1.0, 16.0, 1.0).nameplate()
            .help("Each with a management system of its own that can open by itself; 1 for a bank with one management system. Packs in series count as one.")
            .when(lithium);
        capacity_ah: Option<f64> = optional("Capacity of each pack", AMPERE_HOUR, 5.0, 5000.0, "the bank's, shared by all", |w| Some(w.inputs.usual_pack_ah())).nameplate().advanced()
            .help("On its label. All of them together should make the capacity of the house bank.")
            .when(several);
        charge_limit_a: Option<f64> = optional("Charge limit of each pack", AMPERE, 1.0, 10_000.0, "its part of the bank's limit", |w| Some(w.inputs.usual_pack_limit_a())).nameplate().spread_pct(40.0)
            .help("At which its own management system opens; on its label or data sheet.")
            .when(several);
        discharge_limit_a: Option<f64> = optional("Discharge limit of each pack", AMPERE, 1.0, 10_000.0, "not known", |_| None).nameplate().advanced()
            .help("At which its own management system opens; on its label or data sheet, often 1 A for each A·h.")
            .when(several);
        spread_pct: f64 = number("Spread of their resistance", PERCENT, 0.0, 100.0, 20.0).advanced().spread(10.0, 40.0)
            .help("From the pack with the least resistance to that with the most, leads and lugs included: 10 to 30 % with leads of the same length to common bars (common practice, no source), more without. The pack with the least takes most of the current.")
            .when(several);
    }
}

effects! {
    Packs {
        count: Depends("only what is told the bank's limit, or set by it, follows"), Depends("as the current");
        capacity_ah: Level, Level;
        charge_limit_a: Depends("only what is told the bank's limit, or set by it, follows"), Depends("as the current");
        discharge_limit_a: Level, Level;
        spread_pct: Depends("only what is told the bank's limit, or set by it, follows"), Depends("as the current");
    }
}

fn lithium(inputs: &Inputs) -> bool {
    inputs.bank.chemistry == Chemistry::Lfp
}

fn several(inputs: &Inputs) -> bool {
    inputs.pack_count() > 1
}

impl Inputs {
    /// How many packs a lithium bank has in parallel, 1 to [`MOST_PACKS`]; lead has
    /// no management system that opens and counts as one.
    pub fn pack_count(&self) -> usize {
        if lithium(self) {
            (self.packs.count.round() as usize).clamp(1, MOST_PACKS)
        } else {
            1
        }
    }

    /// Whether the management systems of a lithium bank give out neither a signal
    /// nor a data link.
    pub fn packs_closed(&self) -> bool {
        lithium(self) && self.packs.management == PackManagement::Closed
    }

    /// The bank's capacity, shared by all packs \[A·h\].
    fn usual_pack_ah(&self) -> f64 {
        self.bank.capacity_ah / self.pack_count() as f64
    }

    /// Capacity of each pack \[A·h\].
    pub fn pack_ah(&self) -> f64 {
        self.packs
            .capacity_ah
            .filter(|_| several(self))
            .unwrap_or_else(|| self.usual_pack_ah())
    }

    /// A pack's part of the bank's limit \[A\].
    fn usual_pack_limit_a(&self) -> f64 {
        let bank_a = self.bank.charge_limit_a;
        bank_a.unwrap_or_else(|| self.usual_rate_a()) / self.pack_count() as f64
    }

    /// The charge limit stated for each of several packs \[A\].
    fn stated_pack_limit_a(&self) -> Option<f64> {
        self.packs.charge_limit_a.filter(|_| several(self))
    }

    /// At which charge current each pack opens \[A\], its cells at their usual
    /// temperature: the lower of what is stated for the pack and for the bank.
    pub fn pack_limit_a(&self) -> f64 {
        match (self.stated_pack_limit_a(), self.bank.charge_limit_a) {
            (Some(pack_a), Some(_)) => pack_a.min(self.usual_pack_limit_a()),
            (Some(pack_a), None) => pack_a,
            (None, _) => self.usual_pack_limit_a(),
        }
    }

    /// Most that one pack may be charged with at the temperature of its cells \[A\].
    pub fn pack_limit_now_a(&self) -> f64 {
        self.charge_limit_a() / (self.pack_count() as f64 * self.packs_part())
    }

    /// What the bank's limit is taken for where it is not stated \[A\]: that of its
    /// packs, or what is usual for its capacity.
    pub(super) fn usual_charge_limit_a(&self) -> f64 {
        self.stated_pack_limit_a().map_or_else(
            || self.usual_rate_a(),
            |pack_a| pack_a * self.pack_count() as f64,
        )
    }

    /// By how much the packs' resistances differ, 0 to 1.
    pub fn pack_spread(&self) -> f64 {
        self.packs.spread_pct / 100.0
    }

    /// What is left of the bank's limit to set where one pack may open by itself and
    /// nothing lowers the current then, 0 to 1; just 1 for a single pack, and where a
    /// signal or a data link stops or lowers it.
    fn setting_part(&self) -> f64 {
        if self.field_off_first() || self.limit_linked() {
            1.0
        } else {
            self.one_out_part()
        }
    }

    /// What is left of the bank's limit once a pack has opened, 0 to 1; just 1 for
    /// a single pack. Packs that share better without the one with the least
    /// resistance bear more then, but never before.
    fn one_out_part(&self) -> f64 {
        if several(self) {
            one_out_part(self.pack_count(), self.pack_spread()).min(1.0)
        } else {
            1.0
        }
    }

    /// The most that anything may give which neither signal nor data link stops, at
    /// the bank's usual temperatures \[A\].
    pub(super) fn unlinked_limit_a(&self) -> f64 {
        self.own_charge_limit_a() * self.one_out_part()
    }

    /// The most to set at whatever charges the bank \[A\], a regulator's overshoot
    /// aside: its limit, or what its packs still bear once one of them has opened.
    pub fn setting_limit_a(&self) -> f64 {
        self.charge_limit_a() * self.setting_part()
    }

    /// The most to set at whatever charges the bank, at its usual temperatures \[A\].
    pub fn own_setting_limit_a(&self) -> f64 {
        self.own_charge_limit_a() * self.setting_part()
    }

    /// What the packs may take together before the first of them is at its limit,
    /// of the sum of their limits, 0 to 1; just 1 for a single pack.
    pub(super) fn packs_part(&self) -> f64 {
        shared_part(self.pack_count(), self.pack_spread())
    }
}
