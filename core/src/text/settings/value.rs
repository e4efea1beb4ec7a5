//! What to set, in words.

use crate::guidance::settings::{
    ChargingOff, FieldCut, Period, Setting, SettingCode, SettingValue, StartBatterySource,
    Terminals,
};
use crate::text::settings::words::{cell_limit, sensor_on};
use crate::text::words::at_most;
use crate::units::Reader;
use crate::units::quantity::{Quantity, QuantityKind};

/// What to set.
pub fn value(setting: &Setting, reader: &Reader) -> String {
    let show = |quantity| figure(quantity, reader);
    match setting.value {
        SettingValue::Off => "none".to_string(),
        SettingValue::Exactly { quantity } => show(quantity),
        SettingValue::AtLeast { quantity } => format!("at least {}", show(quantity)),
        SettingValue::AtMost { quantity } => format!("no more than {}", show(quantity)),
        SettingValue::LessThan { quantity } => format!("less than {}", show(quantity)),
        SettingValue::VoltageAt { voltage, at } => {
            format!("{} {}", show(voltage), measured(setting.code, at))
        }
        SettingValue::FloatIfAny { at_most } => {
            format!("none; {} at most where it must have one", show(at_most))
        }
        SettingValue::BelowOrAfter { current, time } => format!(
            "below {} into the bank, or after {}",
            at_most(current, reader),
            hours_or_minutes(time, reader)
        ),
        SettingValue::Compensation { cell, bank } => compensation(cell, bank, reader),
        SettingValue::CellsBetween { from, to } => {
            format!(
                "the cells are at {}, by the table below",
                reader.range(from, to)
            )
        }
        SettingValue::Never => "never, by your figures".to_string(),
        SettingValue::NotFrozenAndBelow { temperature } => {
            format!("it is not frozen and below {}", show(temperature))
        }
        SettingValue::Equalise {
            voltage,
            temperature,
            shortest,
            longest,
            density_difference,
        } => format!(
            "{} at {} for {}, once a month or when densities differ by {}",
            show(voltage),
            show(temperature),
            reader.range(shortest, longest),
            reader.number(density_difference)
        ),
        SettingValue::Once { period } => once(setting.code, period),
        SettingValue::AsHouseBank => "as for the house bank above".to_string(),
        SettingValue::AsFirstAlternator => "as for the first alternator".to_string(),
        SettingValue::ChargeDisableSignal => {
            "charge-disable signal of the battery management system".to_string()
        }
        SettingValue::FollowLink { volts: true } => {
            "follow the current and the voltage limit of the battery".to_string()
        }
        SettingValue::FollowLink { volts: false } => {
            "follow the current limit of the battery".to_string()
        }
        SettingValue::StopCharging => "stop charging, and sound an alarm".to_string(),
        SettingValue::GoOnWithin { voltage, current } => {
            format!("go on with {} and at most {}", show(voltage), show(current))
        }
        SettingValue::ProtectAlternator => {
            "a surge suppressor at the alternator, or a lead battery that stays on it".to_string()
        }
        SettingValue::Fuse { rating, breaks } => fuse(rating, breaks, reader),
        SettingValue::OffTheHouseBank => "leave it off the house bank".to_string(),
        SettingValue::SensedAtBank => {
            "the bank's terminals, by a fused wire of its own".to_string()
        }
        SettingValue::TemperatureLimit { limit, sensor } => {
            format!("{}, sensor {}", show(limit), sensor_on(sensor))
        }
        SettingValue::NoTemperatureLimit => "none: it does not limit the temperature".to_string(),
        SettingValue::Derating { range } => format!("full field to none across {}", show(range)),
        SettingValue::FieldBelow {
            field,
            shaft,
            engine,
        } => format!(
            "{} field below {} of the alternator, {} of the engine",
            show(field),
            show(shaft),
            show(engine)
        ),
        SettingValue::FullFieldAfter { time } => format!("{} to full field", show(time)),
        SettingValue::NotFitted => "none as it comes".to_string(),
        SettingValue::CellVoltage { bank, cell } => cell_voltage(bank, cell, reader),
        SettingValue::ChargingOff { bank, cell, acts } => {
            format!(
                "{}: {}",
                cell_voltage(bank, cell, reader),
                switched_off(acts)
            )
        }
        SettingValue::ContactorOpens {
            bank,
            cell,
            soonest,
            latest,
        } => format!(
            "{}, {} after step 2",
            cell_voltage(bank, cell, reader),
            reader.range(soonest, latest)
        ),
        SettingValue::VoltageFor { voltage, time } => {
            format!("{} for {} without a break", show(voltage), show(time))
        }
        SettingValue::VoltageAfter { voltage, wait } => {
            format!("{}, after {}", show(voltage), show(wait))
        }
        SettingValue::AskBatteryMaker => "from the battery maker".to_string(),
        SettingValue::CellStep { most, .. } => cell_limit(most, reader),
        SettingValue::ChargedBy { source } => charged_by(source).to_string(),
        SettingValue::OpenButForAStart => "open; closed by hand, for a start only".to_string(),
        SettingValue::WithEngineOrCharging => {
            "with the engine only, or while the house bank is charged".to_string()
        }
    }
}

/// A figure; a current is never rounded up.
fn figure(quantity: Quantity, reader: &Reader) -> String {
    match quantity.kind {
        QuantityKind::Current => at_most(quantity, reader),
        _ => reader.show(quantity),
    }
}

/// "125 A, must break 10 kA".
fn fuse(rating: Option<Quantity>, breaks: Option<Quantity>, reader: &Reader) -> String {
    let rating = rating.map_or("none is sold large enough".to_string(), |rating| {
        reader.show(rating)
    });
    match breaks {
        Some(breaks) => format!("{rating}, able to break {}", reader.show(breaks)),
        None => format!("{rating}; none is built for such a short circuit"),
    }
}

fn measured(code: SettingCode, at: Terminals) -> &'static str {
    match (code, at) {
        (SettingCode::Voltage, Terminals::HouseBank) => "at the bank's terminals",
        (_, Terminals::HouseBank) => "at the house bank",
        (_, Terminals::StartBattery) => "at the start battery",
    }
}

/// Whole hours as hours: "4 h".
fn hours_or_minutes(time: Quantity, reader: &Reader) -> String {
    let hours = time.value / 60.0;
    if hours >= 1.0 && hours.fract() == 0.0 {
        reader.show(Quantity::new(hours, QuantityKind::Hours))
    } else {
        reader.show(time)
    }
}

fn compensation(cell: Quantity, bank: Quantity, reader: &Reader) -> String {
    if cell.value == 0.0 {
        return format!("none: {}", reader.show(bank));
    }
    format!(
        "{} for each cell, {} for the bank",
        reader.show(cell),
        reader.show(bank)
    )
}

fn once(code: SettingCode, period: Period) -> String {
    let period = match period {
        Period::Week => "once a week",
        Period::Month => "once a month",
    };
    match code {
        SettingCode::Water => format!("check it {period}"),
        _ => period.to_string(),
    }
}

fn cell_voltage(bank: Quantity, cell: Quantity, reader: &Reader) -> String {
    format!("{} ({} a cell)", reader.show(bank), reader.show(cell))
}

const fn switched_off(acts: ChargingOff) -> &'static str {
    match (acts.field, acts.dc_dc_charger) {
        (Some(FieldCut::AtRegulator), false) => "field off, chargers off",
        (Some(FieldCut::AtRegulator), true) => "field off, DC-DC charger and mains charger off",
        (Some(FieldCut::ByRelay), false) => "field off by a relay, chargers off",
        (Some(FieldCut::ByRelay), true) => {
            "field off by a relay, DC-DC charger and mains charger off"
        }
        (None, true) => "DC-DC charger and mains charger off",
        (None, false) => "chargers off",
    }
}

const fn charged_by(source: StartBatterySource) -> &'static str {
    match source {
        StartBatterySource::ShoreChargerOrAlternator => {
            "an output of the mains charger, and the alternator when the engine runs"
        }
        StartBatterySource::Alternator => "the alternator, before the DC-DC charger",
        StartBatterySource::WithHouseBank => "the alternator, together with the house bank",
        StartBatterySource::DcDcCharger => "the DC-DC charger from the house bank",
        StartBatterySource::SecondAlternator => "the second alternator",
        StartBatterySource::NotGiven => {
            "a charger, panel or alternator of its own: you have not entered which"
        }
    }
}
