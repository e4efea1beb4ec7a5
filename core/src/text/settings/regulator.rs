//! Why an external or a built-in regulator is set so.

use crate::guidance::settings::{BuiltInReason, RegulatorReason};
use crate::text::words::at_most;
use crate::units::Reader;
use crate::units::quantity::{Quantity, count};

pub(super) fn external(reason: &RegulatorReason, reader: &Reader) -> String {
    let show = |quantity| reader.show(quantity);
    match *reason {
        RegulatorReason::LeadsDropVoltage {
            current,
            resistance,
            drop,
        } => format!(
            "At {} the {} of switch, fuse and cable drop {}.",
            show(current),
            milliohms(resistance, reader),
            show(drop)
        ),
        RegulatorReason::GivesAtLimit { hot } => format!(
            "Around the temperature limit; at that limit the alternator gives {}.",
            show(hot)
        ),
        RegulatorReason::FanIsSlow { shaft } => format!(
            "Its fan is slow there; you charge at {} of the alternator.",
            show(shaft)
        ),
        RegulatorReason::FanIsSlowElsewhere { engine } => format!(
            "Its fan is slow there; with your engine at {} it holds nothing back.",
            show(engine)
        ),
        RegulatorReason::WouldHoldBackEveryRun { shaft } => format!(
            "You charge at {} of the alternator, where a cap would hold back every run: leave it to the temperature limit.",
            show(shaft)
        ),
        RegulatorReason::EngineFirst { engine } => format!(
            "The engine has oil pressure and turns at {} before the belt pulls.",
            show(engine)
        ),
        RegulatorReason::GentleOnBelt { power } => format!(
            "Belt and engine take up {} gently; it gets as hot as without.",
            show(power)
        ),
        RegulatorReason::SparesBeltAndEngine => {
            "Of full field at any speed, cold or hot, to spare belt and engine; it grows with the engine's speed, unlike a current cap.".to_string()
        }
        RegulatorReason::SentAtMost {
            current,
            as_it_fills,
        } => format!(
            "The battery sends up to {}, less with cold or hot cells{}. Your current cap and set voltage stay as a second limit.",
            at_most(current, reader),
            if as_it_fills { " and as it fills" } else { "" }
        ),
        RegulatorReason::NobodyFeelsTheHeat => {
            "Nobody feels how hot the alternator gets then; a regulator that can only go on should go on at half field.".to_string()
        }
        RegulatorReason::NobodyTellsIt => {
            "Nobody tells it then what the bank may take, and the battery may be about to disconnect.".to_string()
        }
        RegulatorReason::HoldsWithoutLink { bank_limit } => format!(
            "Without the link the {} of the bank must hold by a setting, also in the cold: set it lower there.",
            at_most(bank_limit, reader)
        ),
        RegulatorReason::FieldOffFirst { off_at, before } => format!(
            "The field is off at {}, {} before the contactor opens.",
            show(off_at),
            show(before)
        ),
    }
}

/// " at 38 °C", where the bank's temperature counts.
fn at_bank(bank: Option<Quantity>, reader: &Reader) -> String {
    bank.map_or(String::new(), |bank| format!(" at {}", reader.show(bank)))
}

pub(super) fn built_in(reason: &BuiltInReason, reader: &Reader) -> String {
    let show = |quantity| reader.show(quantity);
    match *reason {
        BuiltInReason::HoldsTooMuch { held, bank } => format!(
            "It holds {}, more than the bank is to get{}: it does not belong on this bank.",
            show(held),
            at_bank(bank, reader)
        ),
        BuiltInReason::HoldsTooLittle {
            short,
            charge,
            bank,
        } => format!(
            "Nothing to set. It is {} short of the {} that the bank is charged to{}: the engine alone does not fill it.",
            show(short),
            show(charge),
            at_bank(bank, reader)
        ),
        BuiltInReason::ReadWithBankFull { charge, bank } => format!(
            "Nothing to set; read it with the bank full, which is charged to {}{}.",
            show(charge),
            at_bank(bank, reader)
        ),
        BuiltInReason::NoSensor {
            winding,
            limit,
            charger: None,
        } => format!(
            "It has no sensor: in this run the winding reaches {}; {} is its limit.",
            show(winding),
            show(limit)
        ),
        BuiltInReason::NoSensor {
            winding,
            limit,
            charger: Some(charger),
        } => format!(
            "It has no sensor: at the DC-DC charger's {} the winding reaches {}; {} is its limit.",
            show(charger),
            show(winding),
            show(limit)
        ),
        BuiltInReason::CannotHoldCap { start, bank_limit } => format!(
            "It cannot hold one: it gives up to {}, and the bank may take {}.",
            show(start),
            at_most(bank_limit, reader)
        ),
        BuiltInReason::NothingStopsIt { opens_at } => format!(
            "When the bank disconnects at {}, nothing stops the alternator first.",
            show(opens_at)
        ),
        BuiltInReason::TakeTurns { apart } => format!(
            "Two set {} apart would take turns; let one lead, or link them.",
            show(apart)
        ),
        BuiltInReason::HigherCarriesAll { higher } => format!(
            "As the first one's, both sense wires on the same two posts of the bank. Now they differ by {}: the one with more carries everything until it cuts its field.",
            show(higher)
        ),
        BuiltInReason::Linked { equal_heat } => format!(
            "The link shares the load {}. Give both the same settings: each must hold by itself when the link is lost.",
            if equal_heat {
                "so that both stay equally warm"
            } else {
                "by what each gives hot"
            }
        ),
        BuiltInReason::BankVoltage => {
            "What the bank is charged to; nothing to set on a built-in regulator.".to_string()
        }
        BuiltInReason::ChargesStartBattery { services } => format!(
            "It charges the start battery and feeds {} of engine services; the other one charges the house bank.",
            show(services)
        ),
    }
}

/// A small resistance: "1.5 mΩ".
fn milliohms(resistance: Quantity, reader: &Reader) -> String {
    let milliohms = count(1000.0 * resistance.value).up_to(1);
    format!("{} mΩ", reader.number(milliohms))
}
