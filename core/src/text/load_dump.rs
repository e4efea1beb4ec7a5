//! What there is to say when a battery disconnects under load, beside the figures.

use crate::analysis::load_dump::{
    Dump, DumpReport, Exposure, Mitigation, MitigationCode, Standing,
};
use crate::boat::WhichAlternator;
use crate::physics::dump::{TOUCH_V, withstand_v};
use crate::text::words;
use crate::units::Reader;
use crate::units::quantity::{Quantity, QuantityKind, amperes, count, rpm, volts};

/// Nominal voltage from which protection against touch matters \[V\].
const HIGH_NOMINAL_V: f64 = 30.0;

fn whole_v(v: f64, reader: &Reader) -> String {
    reader.show(volts(v).to(0))
}

fn joules(j: f64, reader: &Reader) -> String {
    reader.show(Quantity::new(j, QuantityKind::SpikeEnergy))
}

/// Whether something that protects is there, in a word or two.
pub const fn standing(standing: Standing) -> &'static str {
    match standing {
        Standing::Present => "there",
        Standing::Missing => "missing",
        Standing::Unsaid => "not entered",
        Standing::NoUse => "no use here",
    }
}

/// What something that protects is called.
pub const fn mitigation(code: MitigationCode) -> &'static str {
    match code {
        MitigationCode::DataLink => "Data link on which the battery's limit goes to nothing first",
        MitigationCode::ChargeDisable => "Charge-disable signal that cuts the field first",
        MitigationCode::SurgeSuppressor => "Surge suppressor, or a rectifier of avalanche diodes",
        MitigationCode::LeadBattery => "Lead battery that stays on the alternator",
        MitigationCode::NoSwitch => "No switch in the output lead",
    }
}

/// What something that protects does on an alternator, and what to do about it.
pub fn advice(dump: &DumpReport, mitigation: &Mitigation, reader: &Reader) -> String {
    match (mitigation.code, mitigation.standing) {
        (MitigationCode::DataLink, _) => "The regulator ramps the field down as the limit falls, before the battery management system opens anything. Try it once with the engine running. It does not help when the plug is pulled, or when the battery management system opens without warning: keep a second defence.".to_string(),
        (MitigationCode::ChargeDisable, Standing::NoUse) if dump.external_regulator => {
            "Drop-in packs give no such signal: their management system opens without warning.".to_string()
        }
        (MitigationCode::ChargeDisable, Standing::NoUse) => {
            "The regulator is built in: there is no field wire that the signal could cut.".to_string()
        }
        (MitigationCode::ChargeDisable, _) => "With the field cut 1 to 5 s before the bank disconnects, nothing flows any more and there is no spike. Try it once with the engine running: the current must be gone before anything opens. It does not help when the battery management system opens without warning, on a short circuit or a fault of its own: keep a second defence.".to_string(),
        (MitigationCode::SurgeSuppressor, standing) => suppressor(dump, standing, reader),
        (MitigationCode::LeadBattery, _) => format!(
            "It goes on taking the {} and holds the voltage near {} for a moment, as long as nothing can part it from the alternator and it is in fair health.",
            reader.show(amperes(dump.charging.amperes)),
            whole_v(dump.lead_left_v, reader)
        ),
        (MitigationCode::NoSwitch, _) => "Opened with the engine running, a switch there makes the same spike, and only a surge suppressor on the alternator's side of it helps. A fuse protects the cable and stays.".to_string(),
    }
}

fn suppressor(dump: &DumpReport, standing: Standing, reader: &Reader) -> String {
    let (now, top) = (&dump.charging, &dump.top);
    let clamp_v = whole_v(dump.clamp_v, reader);
    let needs = format!(
        "it has to take {} with the engine at {} and {} at {}",
        joules(now.clamp_j, reader),
        reader.show(rpm(now.engine_rpm)),
        joules(top.clamp_j, reader),
        reader.show(rpm(top.engine_rpm))
    );
    let Some(rated_j) = dump.clamp_rated_j else {
        return if standing == Standing::Present {
            format!("To hold {clamp_v} {needs}; see in its data sheet whether it can.")
        } else {
            format!("To hold {clamp_v} {needs}, by our estimate.")
        };
    };
    let rated = joules(rated_j, reader);
    if rated_j < now.clamp_j.max(top.clamp_j) {
        return format!(
            "To hold {clamp_v} {needs}, more than the {rated} it is rated for: the first spike may destroy it."
        );
    }
    match now.standard_high_j {
        Some(standard_j) if rated_j < standard_j => format!(
            "To hold {clamp_v} {needs}. It is rated for {rated}: enough for our estimate, not for the {} of the standard's highest peak.",
            joules(standard_j, reader)
        ),
        _ => format!("To hold {clamp_v} {needs}. It is rated for {rated}, which is enough."),
    }
}

/// What there is to say of one alternator, one sentence or two each.
pub fn sentences(dump: &DumpReport, reader: &Reader) -> Vec<String> {
    let name = words::alternator(dump.alternator);
    if !dump.fits {
        return vec![format!(
            "The {name} is built for another voltage than the battery its cable leads to and must not be connected: there is no load to lose."
        )];
    }
    let mut said = vec![what_happens(dump, reader)];
    if dump.exposure == Exposure::StartBattery && dump.alternator == WhichAlternator::First {
        said.push("The DC-DC charger loses its bank instead: whatever is on the house side is then fed by it alone. Ask its maker whether it may run without a battery.".to_string());
    }
    said.push(peaks(dump, reader));
    said.push(standard(dump, reader));
    if dump.nominal_v > HIGH_NOMINAL_V {
        said.push(format!(
            "Electronics of 48 V systems are made for {touch} continuously and about {} for a moment (ISO 21780, from memory); above {touch} direct current, protection against touch begins.",
            whole_v(withstand_v(4.0), reader),
            touch = whole_v(TOUCH_V, reader)
        ));
    }
    if let Some(left_v) = dump.bank_left_v() {
        let when = if dump.defended() {
            "With the protection you entered"
        } else {
            "With no protection entered"
        };
        said.push(left(when, left_v, dump, reader));
    }
    if let Some(left_v) = dump.switch_left_v() {
        let when = "When the switch in its output lead is opened";
        said.push(left(when, left_v, dump, reader));
    }
    said
}

/// What the alternator charges, and what can part the two.
fn what_happens(dump: &DumpReport, reader: &Reader) -> String {
    let name = words::alternator(dump.alternator);
    match dump.exposure {
        Exposure::Bank => format!(
            "The {name} charges the house bank directly. If the bank's management system disconnects while {} flow, that current has nowhere to go and the voltage jumps.",
            reader.show(amperes(dump.charging.amperes))
        ),
        Exposure::LeadBank => format!(
            "The {name} charges a lead bank directly, and such a bank does not disconnect by itself. Only a switch, a blown fuse or a loose terminal parts the two."
        ),
        Exposure::StartBattery => format!(
            "The {name} keeps the start battery whatever the house bank does, so there is no voltage spike on it when the bank disconnects. Only a switch, a blown fuse or a loose terminal would make one."
        ),
    }
}

/// How high the voltage would go with nothing against it.
fn peaks(dump: &DumpReport, reader: &Reader) -> String {
    let (now, top) = (&dump.charging, &dump.top);
    let parted = match dump.exposure {
        Exposure::Bank => "With no protection",
        Exposure::LeadBank | Exposure::StartBattery => {
            "If it is parted all the same, with no protection"
        }
    };
    let peak = |dump_at: &Dump| words::voltage_range(dump.peak_range(dump_at), reader);
    let ohm = |ohm: f64| Quantity::new(ohm, QuantityKind::Resistance).to(2);
    format!(
        "{parted}, the voltage would peak at {} with the engine at {} and at {} at {}, behind {}. This is an estimate of our own; its upper end is wider by a factor of {}, as wide as the range of the standard's test.",
        peak(now),
        reader.show(rpm(now.engine_rpm)),
        peak(top),
        reader.show(rpm(top.engine_rpm)),
        reader.range(
            ohm(now.internal_ohm.min(top.internal_ohm)),
            ohm(now.internal_ohm.max(top.internal_ohm))
        ),
        reader.show(count(dump.margin).to(2))
    )
}

/// What the standard tests with, and what a surge suppressor takes.
fn standard(dump: &DumpReport, reader: &Reader) -> String {
    let (now, top) = (&dump.charging, &dump.top);
    let ours = format!(
        "a surge suppressor of {} takes {} at charging speed and {} with the engine at its highest",
        whole_v(dump.clamp_v, reader),
        joules(now.clamp_j, reader),
        joules(top.clamp_j, reader)
    );
    let tested = dump.standard_low_v.zip(dump.standard_high_v);
    let behind = dump.standard_low_ohm.zip(dump.standard_high_ohm);
    let taken = now.standard_low_j.zip(now.standard_high_j);
    let (Some((low_v, high_v)), Some((low_ohm, high_ohm)), Some((low_j, high_j))) =
        (tested, behind, taken)
    else {
        return format!("ISO 16750-2 has no pulse for this voltage. Of our estimate {ours}.");
    };
    let ohm = |ohm| Quantity::new(ohm, QuantityKind::Resistance).up_to(2);
    let joules = |j| Quantity::new(j, QuantityKind::SpikeEnergy);
    format!(
        "ISO 16750-2 tests electronics with {} behind {}. Of our estimate {ours}; of the standard's peaks, {} at charging speed.",
        reader.range(volts(low_v).to(0), volts(high_v).to(0)),
        reader.range(ohm(low_ohm), ohm(high_ohm)),
        reader.range(joules(low_j), joules(high_j))
    )
}

/// What is left, against what the electronics withstand.
fn left(when: &str, left_v: f64, dump: &DumpReport, reader: &Reader) -> String {
    let withstand = whole_v(dump.bear_v, reader);
    let range = words::voltage_range(dump.left_range(left_v), reader);
    if left_v > dump.bear_v {
        format!(
            "{when}, {range} are left, more than the {withstand} that the electronics withstand."
        )
    } else if dump.too_much(left_v) {
        format!(
            "{when}, {range} are left by that estimate, too near the {withstand} that the electronics withstand to rely on."
        )
    } else {
        format!(
            "{when}, up to {} are left, within the {withstand} that the electronics withstand. That holds only while every part of it works: try it, and check it each season.",
            whole_v(left_v, reader)
        )
    }
}
