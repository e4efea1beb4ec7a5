//! Whether what the battery tells reaches the regulator, and what happens when the
//! data link is lost.

use serde::Serialize;

use crate::analysis::Analyses;
use crate::boat::{Inputs, LinkLoss, NoLink, RegulatorLink, Said, WayKind, Worksheet};
use crate::findings::{Code, Finding, Severity, add};
use crate::simulation::management::{OpeningCause, setting_within_a};
use crate::simulation::opening::Opening;

/// What is wrong with how the battery talks to the regulator.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
#[serde(tag = "code", rename_all = "snake_case")]
pub enum LinkFinding {
    /// The signal or data link that was chosen reaches nothing.
    LinkHasNoEffect {
        /// What was chosen.
        link: RegulatorLink,
        /// Why it has no effect.
        because: NoLink,
        /// Whether a DC-DC charger of its own would protect the alternator already.
        through_charger: bool,
    },
    /// What the regulator does on a lost link is not known, and going on would open
    /// the management system.
    LinkLossNotSaid {
        /// What would happen.
        lost: LostLink,
    },
    /// On a lost link the regulator goes on until the management system opens.
    LinkLossOpens {
        /// What happens.
        lost: LostLink,
        /// Whether a charge-disable signal of its own still cuts the field first.
        signal_stays: bool,
    },
}

/// What happens with the data link gone.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct LostLink {
    /// Why the management system opens.
    pub cause: OpeningCause,
    /// Time after the start \[s\].
    pub after_s: f64,
    /// What flows into the bank then \[A\].
    pub bank_a: f64,
    /// Voltage at the bank then \[V\].
    pub bank_v: f64,
    /// What the bank may take \[A\].
    pub limit_a: f64,
    /// The most to set as a cap that holds without the link \[A\]; none where no
    /// current may flow at all.
    pub cap_a: Option<f64>,
}

impl LostLink {
    fn of(inputs: &Inputs, opening: &Opening) -> LostLink {
        let limit_a = inputs.charge_limit_a();
        LostLink {
            cause: opening.cause,
            after_s: opening.after_s,
            bank_a: opening.bank_a,
            bank_v: opening.volts,
            limit_a,
            cap_a: (limit_a > 0.0).then(|| setting_within_a(limit_a)),
        }
    }
}

impl LinkFinding {
    pub(super) const fn severity(&self) -> Severity {
        match self {
            LinkFinding::LinkHasNoEffect {
                because: NoLink::DcDcCharger,
                ..
            }
            | LinkFinding::LinkLossNotSaid { .. }
            | LinkFinding::LinkLossOpens {
                signal_stays: true, ..
            } => Severity::Note,
            LinkFinding::LinkHasNoEffect { .. } | LinkFinding::LinkLossOpens { .. } => {
                Severity::Fix
            }
        }
    }

    pub(super) const fn code(&self) -> Code {
        match self {
            LinkFinding::LinkHasNoEffect { .. } => Code::LinkHasNoEffect,
            LinkFinding::LinkLossNotSaid { .. } => Code::LinkLossNotSaid,
            LinkFinding::LinkLossOpens { .. } => Code::LinkLossOpens,
        }
    }
}

/// What there is to say of signal and data link.
pub(super) fn link_findings(sheet: &Worksheet, report: &Analyses, found: &mut Vec<Finding>) {
    let inputs = &sheet.inputs;
    if let Some(because) = inputs.link_without_effect() {
        add(
            found,
            LinkFinding::LinkHasNoEffect {
                link: inputs.reg.link,
                because,
                through_charger: inputs.way.kind == WayKind::Converter,
            },
        );
    }
    let Some(opening) = report.link_loss.and_then(|lost| lost.opening) else {
        return;
    };
    let lost = LostLink::of(inputs, &opening);
    match inputs.reg.link_loss {
        LinkLoss::Stops => {}
        LinkLoss::Unsaid => add(found, LinkFinding::LinkLossNotSaid { lost }),
        LinkLoss::OwnSettings => add(
            found,
            LinkFinding::LinkLossOpens {
                lost,
                signal_stays: inputs.charge_disable() == Said::Yes,
            },
        ),
    }
}
