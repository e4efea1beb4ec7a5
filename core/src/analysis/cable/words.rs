//! Cables and fuses in words.

use crate::analysis::cable::{CableChoice, CableRun, Cables, SizingReason};
use crate::boat::{Flag, Inputs, RegulatorKind, WayKind};
use crate::physics::ampacity::{ENGINE_AIR_C, engine_factor};
use crate::physics::fuse::{BARE_MM, SHEATHED_MM, STRICT_V};
use crate::units::quantity::{amperes, celsius, percent, volts};
use crate::units::{Quantity, QuantityKind, Reader};

/// Where the figures come from.
pub(super) const SOURCES: &[&str] = &[
    "What a cable bears: 33 CFR 183.425, table 5, one cable in air of 30 °C; in engine spaces its note 1 (0.85 for 105 °C; the other factors from memory), and less where the air is hotter still (own reasoning).",
    "A metric size is given what the table gives to the next gauge with no more copper (own reasoning).",
    "Resistance: gauges by ASTM B258, with 2 % for the strands (from memory); metric sizes by IEC 60228, class 5, the most it allows; at the copper's own temperature.",
    "Fuse: no more than 150 % of what the cable bears, no more than that itself from 50 V up, and its distance from the source: 33 CFR 183.455. At least a quarter above the current, ratings sold, what a fuse can break: common practice.",
    "Several cables side by side, each with its own fuse: common practice.",
    "Shown beside and never used: what ISO 10133 would give, and the circular-mil rule of the trade; both from memory.",
];

/// What the rule says, and what another flag's may change.
pub(super) fn rule(flag: Flag) -> Vec<&'static str> {
    match flag {
        Flag::Us => vec![
            "33 CFR 183 binds the builders of boats with petrol engines, outboards apart. On a diesel boat it is a published table and good practice; insurers there usually go by ABYC E-11, which allows 1828 mm (72 in) of sheathed cable from a battery's post to the fuse (as quoted by others).",
            "Under 50 V it sets no limit for cables in a bundle; give them air all the same.",
        ],
        Flag::Other => vec![
            "The rule of your flag comes first; 33 CFR 183 is used here because it is published. Boats sold in Europe go by ISO 13297, ISO 10133 before it.",
            "Another rule may change three things: what a cable of that size may carry, whether a fuse may be larger than that, and how far from the battery it may sit (200 mm by ISO 10133, from memory). Where a fuse below is larger than what its cable bears, the run says so.",
        ],
    }
}

/// Where the fuse of a run goes.
pub(super) fn fuse_at(on_house: bool, from_machine: bool, length_m: f64) -> String {
    let battery = if on_house {
        "house bank"
    } else {
        "start battery"
    };
    let mut text = format!(
        "On the {battery}'s positive post, or within {:.0} mm (7 in) of it along the cable; within {:.0} mm (40 in) if the cable is sheathed or boxed all that way.",
        BARE_MM.floor(),
        SHEATHED_MM.floor()
    );
    if from_machine {
        text.push_str(if 1000.0 * length_m < SHEATHED_MM {
            " None at the machine if the lead is sheathed: it limits its own current."
        } else {
            " Trade practice wants a second one at the machine, as the lead is longer than 40 in."
        });
    }
    text
}

impl CableChoice {
    /// "2 × 70 mm²".
    pub fn words(&self) -> String {
        match self.cables {
            1 => self.size.to_string(),
            cables => format!("{cables} × {}", self.size),
        }
    }
}

impl SizingReason {
    /// What decided, after "decided by".
    pub const fn words(self) -> &'static str {
        match self {
            SizingReason::Smallest => "nothing, it is the smallest in the table",
            SizingReason::Heat => "what the cable bears",
            SizingReason::Drop => "the loss along it",
            SizingReason::HeatAndDrop => "both what the cable bears and the loss along it",
            SizingReason::Fuse => "the fuse: the size before leaves no room for one",
        }
    }
}

fn sentence(pick: &CableChoice) -> String {
    let each = if pick.cables > 1 { " each" } else { "" };
    format!(
        " {}: bears {:.0} A{each} ({:.0} % to spare), loses {:.2} V ({:.2} V to spare), decided by {}; fuse {} A{each}, of {:.0} to {:.0}.",
        pick.words(),
        pick.ampacity_a,
        pick.spare_pct,
        pick.drop_v,
        pick.spare_v,
        pick.bound.words(),
        pick.fuse_a,
        pick.fuse_least_a.ceil(),
        pick.fuse_most_a.floor()
    )
}

/// What is asked of a run's cable.
pub(super) fn asks(run: &CableRun, reader: &Reader) -> String {
    let place = if run.engine_space {
        "through the engine space"
    } else {
        "outside the engine space"
    };
    format!(
        "From {} to {}, {} one way {place}, in air of {}; it must carry {}, {}, and may lose {} ({}).",
        run.from,
        run.to,
        reader.show(Quantity::new(run.length_m, QuantityKind::Length).to(1)),
        reader.show(celsius(run.air_c)),
        reader.show(amperes(run.carries_a)),
        run.carries,
        reader.show(volts(run.allowed_v).to(2)),
        reader.show(percent(run.allowed_pct).to(1))
    )
}

/// Volts and breaking capacity of a run's fuse; where there is no cable, that.
pub(super) fn fuse_for(run: &CableRun) -> String {
    if run.metric.is_none() && run.gauge.is_none() {
        return "No cable of the tables does it, nor two or three of the largest.".to_string();
    }
    let breaks = match run.breaks_ka {
        Some(ka) => format!(", able to break {ka:.0} kA."),
        None => "; none is commonly built to break this bank's short circuit.".to_string(),
    };
    format!(
        "Fuse for {:.0} V direct current or more{breaks}",
        run.fuse_v.ceil()
    )
}

impl CableRun {
    /// What is asked of its cable, as a reader wants it.
    pub fn asks_for(&self, reader: &Reader) -> String {
        asks(self, reader)
    }

    /// The whole of it in words.
    pub fn says(&self) -> String {
        let mut text = self.asks.clone();
        for pick in picks(self) {
            text.push_str(&sentence(pick));
        }
        text + " " + &self.fuse_for
    }
}

/// What was found for a run, metric first.
fn picks(run: &CableRun) -> impl Iterator<Item = &CableChoice> {
    run.metric.iter().chain(&run.gauge)
}

impl Cables {
    /// How the figures differ from the tables', as a reader wants it.
    pub fn remarks_for(&self, reader: &Reader) -> Vec<String> {
        remarks(self, reader)
    }
}

/// How the figures differ from the tables'.
pub(super) fn remarks(wiring: &Cables, reader: &Reader) -> Vec<String> {
    let mut remarks = Vec::new();
    let (air_c, rated_c) = (wiring.engine_air_c, wiring.insulation_c);
    if air_c > ENGINE_AIR_C + 0.5 && air_c < rated_c {
        remarks.push(format!(
            "The engine space reaches {}, more than the {} of the table for engine spaces; cables there are counted at {} of the table.",
            reader.show(celsius(air_c)),
            reader.show(celsius(ENGINE_AIR_C)),
            reader.show(percent(100.0 * engine_factor(rated_c, air_c)))
        ));
    }
    if wiring.runs.iter().any(|run| run.fuse_v >= STRICT_V) {
        remarks.push("This system works at 50 V or more while charging: fuses are held to what the cable bears instead of half as much again, and three or more current-carrying cables in one bundle may carry 70 % each.".to_string());
    }
    remarks
}

/// What else to know about a run, for its flag and its regulator.
pub(super) fn notes(inputs: &Inputs, run: &mut CableRun, nominal_v: f64) {
    let Some(pick) = run.metric.or(run.gauge) else {
        return;
    };
    let over = picks(run).find(|pick| pick.fuse_a > pick.ampacity_a);
    if let (Flag::Other, Some(over)) = (inputs.cable.flag, over) {
        let note = format!(
            "A fuse of {} A is larger than the {:.0} A that {} bears. 33 CFR allows that; your flag's rule may ask for a thicker cable.",
            over.fuse_a, over.ampacity_a, over.size
        );
        run.notes.push(note);
    }
    if pick.cables > 1 {
        run.notes.push(
            "Cables side by side must be of the same size, make and length, so that they share the current; when one fuse opens the others follow.".to_string(),
        );
    }
    let sensed = inputs.reg.kind == RegulatorKind::External
        && inputs.way.kind == WayKind::Direct
        && run.to == "house bank";
    if sensed && pick.drop_v > 0.01 * nominal_v {
        run.notes.push(format!(
            "Let the regulator feel the volts at the bank's posts: at the machine it would see {:.2} V more than the bank gets.",
            pick.drop_v
        ));
    }
}
