//! Packs in parallel, and drop-in packs that tell nobody anything.

use serde::Serialize;

use crate::analysis::Analyses;
use crate::analysis::load_dump::DumpReport;
use crate::analysis::packs::{PackLoad, PacksReport};
use crate::boat::{Inputs, Worksheet};
use crate::findings::{Code, Finding, Severity, add};

/// How far the packs' capacities may add up to another one than the bank's, of that.
const SAME_PART: f64 = 0.02;

/// What is wrong with packs in parallel.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum PackFinding {
    /// When one pack opens while charging, others get more than they may and follow.
    PacksFollow(PacksOpen),
    /// When one pack opens at the peak house load, the others give more than they may and
    /// follow: the boat goes dark.
    PacksFollowInUse(PacksOpen),
    /// With all connected one pack gives more than it may at the peak house load.
    PackOverDischarged {
        /// The peak house load \[A\].
        load_a: f64,
        /// What the pack with the least resistance gives of it \[A\].
        most_a: f64,
        /// What it may give \[A\].
        limit_a: f64,
        /// The most that all of them may give together \[A\].
        together_a: f64,
    },
    /// The packs' capacities do not add up to the bank's.
    PacksDisagree {
        /// How many packs.
        packs: usize,
        /// Capacity of each \[A·h\].
        pack_ah: f64,
        /// The bank's \[A·h\].
        bank_ah: f64,
    },
    /// The packs have neither signal nor data link.
    DropInPacks {
        /// Whether an alternator charges them directly.
        direct: bool,
        /// Whether what is entered as protection keeps the voltage low enough when
        /// they open.
        guarded: bool,
        /// The voltage to charge them to \[V\].
        charge_v: f64,
    },
}

/// Packs that open in turn.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct PacksOpen {
    /// How many packs.
    pub packs: usize,
    /// Capacity of each \[A·h\].
    pub pack_ah: f64,
    /// What each may take or give \[A\].
    pub limit_a: f64,
    /// The current they share \[A\].
    pub bank_a: f64,
    /// What the most loaded of the others gets once the first one has opened \[A\].
    pub after_first_a: f64,
    /// How many follow the first one.
    pub follow: usize,
    /// The most current at which none follows \[A\].
    pub safe_a: f64,
    /// Whether an alternator on the bank loses its load once all have opened.
    pub load_lost: bool,
    /// Whether the packs have neither signal nor data link.
    pub closed: bool,
}

impl PacksOpen {
    /// Packs that open in turn; none where the others hold.
    fn of(inputs: &Inputs, packs: &PacksReport, load: &PackLoad) -> Option<PacksOpen> {
        let after_first_a = load.after_first_a()?;
        (load.followers() > 0).then(|| PacksOpen {
            packs: packs.packs,
            pack_ah: packs.pack_ah,
            limit_a: load.limit_a,
            bank_a: load.bank_a,
            after_first_a,
            follow: load.followers(),
            safe_a: load.bank_a * load.limit_a / after_first_a,
            load_lost: load.all_open() && inputs.straight_into_house(),
            closed: inputs.packs_closed(),
        })
    }
}

impl PackFinding {
    pub(super) const fn severity(&self) -> Severity {
        match self {
            PackFinding::PacksFollow(_)
            | PackFinding::PacksFollowInUse(_)
            | PackFinding::PackOverDischarged { .. }
            | PackFinding::DropInPacks {
                direct: true,
                guarded: false,
                ..
            } => Severity::Fix,
            PackFinding::PacksDisagree { .. } | PackFinding::DropInPacks { .. } => Severity::Note,
        }
    }

    pub(super) const fn code(&self) -> Code {
        match self {
            PackFinding::PacksFollow(_) => Code::PacksFollow,
            PackFinding::PacksFollowInUse(_) => Code::PacksFollowInUse,
            PackFinding::PackOverDischarged { .. } => Code::PackOverDischarged,
            PackFinding::PacksDisagree { .. } => Code::PacksDisagree,
            PackFinding::DropInPacks { .. } => Code::DropInPacks,
        }
    }
}

/// What there is to say of packs.
pub(super) fn pack_findings(sheet: &Worksheet, report: &Analyses, found: &mut Vec<Finding>) {
    let inputs = &sheet.inputs;
    if let Some(packs) = &report.packs {
        several(inputs, packs, found);
    }
    if inputs.packs_closed() {
        let guarded = |dump: &DumpReport| dump.bank_left_v().is_none_or(|v| !dump.too_much(v));
        add(
            found,
            PackFinding::DropInPacks {
                direct: inputs.straight_into_house(),
                guarded: report.load_dump.alternators.iter().all(guarded),
                charge_v: inputs.charge_v(),
            },
        );
    }
}

fn several(inputs: &Inputs, packs: &PacksReport, found: &mut Vec<Finding>) {
    let charging = packs.charging.as_ref();
    // A pack that gets too much with all connected is told as the bank that opens.
    let follow = charging.and_then(|load| PacksOpen::of(inputs, packs, load));
    if let Some(open) = follow {
        add(found, PackFinding::PacksFollow(open));
    }
    if let Some(load) = &packs.discharging {
        if load.passes_limit() {
            add(
                found,
                PackFinding::PackOverDischarged {
                    load_a: load.bank_a,
                    most_a: load.most_a,
                    limit_a: load.limit_a,
                    together_a: load.limit_a * load.bank_a / load.most_a,
                },
            );
        } else if let Some(open) = PacksOpen::of(inputs, packs, load) {
            add(found, PackFinding::PacksFollowInUse(open));
        }
    }
    let (all_ah, bank_ah) = (packs.packs as f64 * packs.pack_ah, inputs.bank.capacity_ah);
    if (all_ah - bank_ah).abs() > SAME_PART * bank_ah {
        add(
            found,
            PackFinding::PacksDisagree {
                packs: packs.packs,
                pack_ah: packs.pack_ah,
                bank_ah,
            },
        );
    }
}
