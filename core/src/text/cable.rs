//! What there is to say of cables and fuses beside their figures.

use crate::analysis::cable::{
    AlternatorFuse, CableChoice, CableRemark, CableRun, Cables, Carries, RunNote, SizingReason,
};
use crate::boat::Flag;
use crate::physics::fuse::{BARE_MM, SHEATHED_MM};
use crate::text::words;
use crate::units::Reader;
use crate::units::quantity::{
    Quantity, QuantityKind, amperes, celsius, kiloamperes_of, minutes, percent, rpm, volts,
};

/// Where the figures come from.
pub const SOURCES: &[&str] = &[
    "Ampacity: 33 CFR 183.425, table 5, one cable in air of 30 °C; in engine spaces its note 1 (0.85 for 105 °C; the other factors from memory), and less where the air is hotter still (own reasoning).",
    "A metric size is given what the table gives to the next gauge with no more copper (own reasoning).",
    "Resistance: gauges by ASTM B258, with 2 % for the strands (from memory); metric sizes by IEC 60228, class 5, the most it allows; at the copper's own temperature.",
    "Fuse: no more than 150 % of the cable's ampacity, no more than the ampacity itself from 50 V up, and its distance from the source: 33 CFR 183.455. At least a quarter above the current, the ratings sold, and what a fuse can break: common practice.",
    "Several cables side by side, each with its own fuse: common practice.",
    "Shown for comparison and never used: what ISO 10133 would give, and the circular-mil rule; both from memory.",
];

/// What the rule says for a flag, and what the rule of another flag may change.
pub const fn rule(flag: Flag) -> &'static [&'static str] {
    match flag {
        Flag::Us => &[
            "33 CFR 183 binds the builders of boats with petrol engines, outboards apart. On a diesel boat it is a published table and good practice; insurers there usually go by ABYC E-11, which allows 1828 mm (72 in) of sheathed cable from a battery's post to the fuse (as quoted by others).",
            "Under 50 V it sets no limit for cables in a bundle; give them air all the same.",
        ],
        Flag::Other => &[
            "The rule of your flag comes first; 33 CFR 183 is used here because it is published. Boats sold in Europe go by ISO 13297, and by ISO 10133 before it.",
            "Another rule may change three things: the ampacity of a cable of that size, whether a fuse may be larger than that, and how far from the battery it may sit (200 mm by ISO 10133, from memory). Where a fuse below is larger than its cable's ampacity, the run says so.",
        ],
    }
}

/// A cable or several of them: "2 × 70 mm²".
pub fn size(choice: &CableChoice) -> String {
    match choice.cables {
        1 => choice.size.to_string(),
        cables => format!("{cables} × {}", choice.size),
    }
}

/// What a size was decided by, after "sized by".
pub const fn sized_by(reason: SizingReason) -> &'static str {
    match reason {
        SizingReason::Smallest => "nothing, it is the smallest in the table",
        SizingReason::Heat => "ampacity",
        SizingReason::Drop => "voltage drop",
        SizingReason::HeatAndDrop => "ampacity and voltage drop",
        SizingReason::Fuse => "the fuse: the next smaller size leaves no room for one",
    }
}

/// What current a run carries.
fn carries(carries: Carries, reader: &Reader) -> String {
    let show = |quantity| reader.show(quantity);
    match carries {
        Carries::ColdFullField { engine_rpm } => format!(
            "what the alternator gives cold, at full field, with the engine at {}",
            show(rpm(engine_rpm))
        ),
        Carries::Rating => "the alternator's rating".to_string(),
        Carries::PeakHouseLoad => "the peak house load you entered".to_string(),
        Carries::AssumedPeakHouseLoad => {
            "taken for the peak house load: everything on the list at once, at least 50 A"
                .to_string()
        }
        Carries::ChargerInput {
            output_a,
            house_v,
            start_v,
            efficiency_pct,
        } => format!(
            "what the DC-DC charger takes for {} out at {}, from {} at an efficiency of {}",
            show(amperes(output_a)),
            show(volts(house_v).to(1)),
            show(volts(start_v).to(1)),
            show(percent(efficiency_pct))
        ),
        Carries::ChargerOutput => "the rated output of the DC-DC charger".to_string(),
        Carries::InverterInput {
            power_w,
            low_v,
            efficiency_pct,
        } => format!(
            "what the inverter takes for {} from a low bank of {}, at an efficiency of {}",
            show(Quantity::new(power_w, QuantityKind::Power)),
            show(volts(low_v).to(1)),
            show(percent(efficiency_pct))
        ),
        Carries::MotorFullLoad => "what the motor draws at full load".to_string(),
    }
}

/// What is asked of a run's cable.
pub fn asks(run: &CableRun, reader: &Reader) -> String {
    let show = |quantity| reader.show(quantity);
    let place = if run.engine_space {
        "through the engine space"
    } else {
        "outside the engine space"
    };
    format!(
        "From {} to {}, {} one way {place}, in air of {}. It must carry {}, {}. Allowed voltage drop: {} ({}).",
        words::run_end(run.from),
        words::run_end(run.to),
        show(Quantity::new(run.length_m, QuantityKind::Length).to(1)),
        show(celsius(run.air_c)),
        show(amperes(run.carries_a)),
        carries(run.carries, reader),
        show(volts(run.allowed_v).to(2)),
        show(percent(run.allowed_pct).to(1))
    )
}

/// A choice in a sentence.
fn choice(choice: &CableChoice, reader: &Reader) -> String {
    let show = |quantity| reader.show(quantity);
    let each = if choice.cables > 1 { " each" } else { "" };
    format!(
        "{}: ampacity {}{each} ({} to spare), voltage drop {} ({} to spare), sized by {}; fuse {}{each}, of {}.",
        size(choice),
        show(amperes(choice.ampacity_a)),
        show(percent(choice.spare_pct)),
        show(volts(choice.drop_v).to(2)),
        show(volts(choice.spare_v).to(2)),
        sized_by(choice.bound),
        // One rating that is sold has a half.
        show(amperes(choice.fuse_a).up_to(1)),
        reader.range(
            amperes(choice.fuse_least_a.ceil()),
            amperes(choice.fuse_most_a.floor())
        )
    )
}

/// Voltage and breaking capacity of a run's fuse; where there is no cable, that.
pub fn fuse(run: &CableRun, reader: &Reader) -> String {
    if run.metric.is_none() && run.gauge.is_none() {
        return "No cable of the tables is enough, nor two or three of the largest.".to_string();
    }
    let breaks = match run.breaks_ka {
        Some(ka) => format!(
            ", able to break {}.",
            reader.show(Quantity::new(ka, QuantityKind::ShortCircuitCurrent))
        ),
        None => "; none is commonly built to break this bank's short circuit.".to_string(),
    };
    format!(
        "Fuse for {} direct current or more{breaks}",
        reader.show(volts(run.fuse_v.ceil()).to(0))
    )
}

/// Where the fuse of a run goes.
pub fn fuse_place(run: &CableRun, reader: &Reader) -> String {
    let battery = if run.fuse_at_house {
        "house bank"
    } else {
        "start battery"
    };
    let distance = |mm: f64| reader.show(Quantity::new(mm.floor(), QuantityKind::Size));
    let alternator = match run.alternator_fuse {
        None => "",
        Some(AlternatorFuse::NotNeeded) => {
            " None at the alternator if the lead is sheathed: it limits its own current."
        }
        Some(AlternatorFuse::Wanted) => {
            " Common practice wants a second one at the alternator, as the lead is long."
        }
    };
    format!(
        "On the {battery}'s positive post, or within {} of it along the cable; within {} if the cable is sheathed or boxed all that way.{alternator}",
        distance(BARE_MM),
        distance(SHEATHED_MM)
    )
}

/// What else to know about a run.
pub fn note(note: &RunNote, reader: &Reader) -> String {
    let show = |quantity| reader.show(quantity);
    match *note {
        RunNote::CapNotCounted { cap_a } => format!(
            "The regulator's current cap of {} is not counted on: a cap can fail or be changed.",
            show(words::as_entered(amperes(cap_a)))
        ),
        RunNote::ChargerLimitsItself => {
            "The DC-DC charger limits its own current and the bank does not, so the fuse goes to the bank's end.".to_string()
        }
        RunNote::FuseAboveAmpacity {
            fuse_a,
            ampacity_a,
            size,
        } => format!(
            "A fuse of {} is larger than the ampacity of {size}, {}. 33 CFR allows that; your flag's rule may ask for a thicker cable.",
            show(amperes(fuse_a).up_to(1)),
            show(amperes(ampacity_a))
        ),
        RunNote::ShortDuty { minutes: at_a_time } => format!(
            "Counted as if it ran on and on; it runs for {} at a time. A thinner cable, above its continuous ampacity for that long, only where the motor's maker says so; the voltage drop counts all the same.",
            show(words::as_entered(minutes(at_a_time)))
        ),
        RunNote::FuseByMotorMaker => {
            "The motor's maker names its fuse or breaker, and that comes first: it must carry the start and the full load for the time allowed and open on a stalled motor.".to_string()
        }
        RunNote::BankMustGive { motor_a, house_a } => format!(
            "The bank must give {} and up to {} for the house beside it: ask the battery maker what its management system lets out for so long. If it opens there, everything aboard goes off.",
            show(words::as_entered(amperes(motor_a))),
            show(amperes(house_a))
        ),
        RunNote::ParallelAlike => {
            "Cables side by side must be of the same size, make and length, so that they share the current; when one fuse opens, the others follow.".to_string()
        }
        RunNote::SenseAtBank { drop_v } => format!(
            "Let the regulator sense the voltage at the bank's posts: at the alternator it would see {} more than the bank gets.",
            show(volts(drop_v).to(2))
        ),
    }
}

/// What the figures rest on: air, insulation, and the bank's short circuit.
pub fn basis(cables: &Cables, reader: &Reader) -> String {
    format!(
        "Calculated for air of {} in the engine space and {} elsewhere, insulation rated for {}, and {} from a short at the house bank's posts.",
        reader.show(celsius(cables.engine_air_c)),
        reader.show(celsius(cables.other_air_c)),
        reader.show(celsius(cables.insulation_c)),
        reader.show(kiloamperes_of(cables.short_circuit_a)),
    )
}

/// How the figures differ from those of the tables.
pub fn remark(remark: &CableRemark, reader: &Reader) -> String {
    match *remark {
        CableRemark::HotEngineSpace {
            air_c,
            table_c,
            factor_pct,
        } => format!(
            "The engine space reaches {}, more than the {} of the table for engine spaces; cables there are counted at {} of the table.",
            reader.show(celsius(air_c)),
            reader.show(celsius(table_c)),
            reader.show(percent(factor_pct))
        ),
        CableRemark::HighVoltage => "This system works at 50 V or more while charging: no fuse is larger than the cable's ampacity or, where no such rating is sold, the next one up (under 50 V a fuse may be half as large again). Three or more current-carrying cables in one bundle may carry 70 % each.".to_string(),
    }
}

/// All of a run in sentences: what is asked, what was found, its fuse.
pub fn run(run: &CableRun, reader: &Reader) -> String {
    let mut said = vec![asks(run, reader)];
    let found = run.metric.iter().chain(&run.gauge);
    said.extend(found.map(|found| choice(found, reader)));
    said.push(fuse(run, reader));
    said.join(" ")
}
