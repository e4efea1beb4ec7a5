//! Flooded lead of the same ampere-hours beside this bank.

use crate::analysis::LeadReport;
use crate::boat::key;
use crate::explain::boat::Boat;
use crate::explain::figure::{Explanation, Figure};
use crate::explain::figures::bank::resists_ohm;
use crate::explain::figures::notes::{DAILY, STEPPED, SUN_COVERS};
use crate::explain::figures::run;
use crate::explain::figures::times::{NOT_REACHED, mean_to, time_to};
use crate::explain::instant::Instant;
use crate::explain::term::{Term, described};
use crate::physics::charging::{bank_a, engine_hours};
use crate::simulation::moment::Output;

pub(super) const FIGURES: &[&Figure] = &[
    &ENGINE_HOURS,
    &MINUTES_TO_TARGET,
    &run::MID_BANK_A,
    &MID_BANK_A,
];

fn has_lead(boat: &Boat) -> bool {
    boat.report.analyses.lead.applies()
}

/// What comes of the lead bank; none where the boat has none to compare with.
fn lead(s: &Instant) -> Option<LeadReport> {
    s.report().analyses.lead.report()
}

/// Charge that flooded lead returns of what went in.
fn efficiency(s: &Instant) -> Term {
    let pct = 100.0 * s.boat.lead_bank().charge_efficiency;
    described("Charge efficiency, the usual for flooded lead", "%", pct).symbol("η_lead")
}

static ENGINE_HOURS: Figure = Figure::new(
    "lead.engine_hours",
    "Engine a day, flooded lead",
    "h",
    2,
    |s| {
        let Some((lead, hours)) = lead(s).and_then(|lead| Some((lead, lead.engine_hours?))) else {
            return Explanation::none(
                "No daily engine run puts back into lead what the boat uses.",
            );
        };
        if hours <= 0.0 {
            return Explanation::none(SUN_COVERS);
        }
        let given = [
            described("To put back into the lead bank a day", "A·h", lead.need_ah),
            efficiency(s),
            described(
                "Mean current into the lead bank, of this run",
                "A",
                lead.day_mean_bank_a.unwrap_or(f64::NAN),
            ),
            described(
                "House load meanwhile, at the lead bank's voltage",
                "A",
                lead.house_load_a,
            ),
        ];
        Explanation::of(Term::of(engine_hours::FORMULA, given)).note([STEPPED, DAILY].concat())
    },
)
.only(has_lead)
.is(|s| lead(s)?.engine_hours);

static MINUTES_TO_TARGET: Figure = Figure::new(
    "lead.minutes_to_target",
    "To the target, flooded lead",
    "min",
    0,
    |s| {
        let Some(minutes) = lead(s).and_then(|lead| lead.minutes_to_target) else {
            return Explanation::none(NOT_REACHED);
        };
        let bank = s.boat.lead_bank();
        let to_pct = s.inputs().run.to_pct;
        let mean_a = mean_to(s, bank.capacity_ah, bank.charge_efficiency, minutes, to_pct);
        // A new bank of as many ampere-hours.
        let capacity = s.input(key!(bank.capacity_ah));
        let to = s.input(key!(run.to_pct));
        time_to(s, capacity, minutes, to, efficiency(s), mean_a)
    },
)
.only(has_lead)
.is(|s| lead(s)?.minutes_to_target);

static MID_BANK_A: Figure = Figure::new("lead.mid_bank_a", "… into flooded lead", "A", 0, |s| {
    let Some(lead) = lead(s) else {
        return Explanation::default();
    };
    let (bank, soc) = (s.boat.lead_bank(), lead.mid_charge_pct / 100.0);
    let then = Output {
        amperes: lead.mid_bank_a,
        volts: lead.mid_bank_v,
    };
    let given = [
        described("At the lead bank then", "V", then.volts),
        described(
            "At rest at that state of charge, from the table",
            "V",
            bank.rest_v(soc),
        ),
        described(
            "What such a bank resists, so full",
            "Ω",
            resists_ohm(&bank, soc, then),
        ),
    ];
    Explanation::of(Term::of(bank_a::FORMULA, given)).note(
        "A lead bank resists the more, the fuller it is: that is its falling charge acceptance.",
    )
})
.named("Half-way, into flooded lead")
.only(has_lead)
.is(|s| Some(lead(s)?.mid_bank_a));
