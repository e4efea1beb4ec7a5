//! Why an alternator is set so.

use crate::guidance::settings::AlternatorReason;
use crate::text::words::{at_most, part as name};
use crate::units::Reader;

pub(super) fn reason(reason: &AlternatorReason, reader: &Reader) -> String {
    let show = |quantity| reader.show(quantity);
    match *reason {
        AlternatorReason::FeedsStartBattery { charger_from } => format!(
            "It feeds the start battery; the DC-DC charger works from {} up.",
            show(charger_from)
        ),
        AlternatorReason::ShareIsNothing { bank_limit } => format!(
            "Its share of the bank's {} would be next to nothing.",
            at_most(bank_limit, reader)
        ),
        AlternatorReason::AsGiven { hot } => {
            format!("As you set it; it holds {} hot.", show(hot))
        }
        AlternatorReason::PartOfHot { part, hot } => format!(
            "{} of the {} that it holds hot, as you set it.",
            show(part),
            show(hot)
        ),
        AlternatorReason::AsGivenAtBank { house } => format!(
            "As you set it, measured at the bank's shunt; the alternator gives {} more for the house.",
            show(house)
        ),
        AlternatorReason::HoldsHot {
            hot,
            engine,
            margin,
        } => format!(
            "It holds {} hot with the engine at {}; {} more spares it while cold.",
            show(hot),
            show(engine),
            show(margin)
        ),
        AlternatorReason::Rating { bank_limit: None } => "What it is rated at.".to_string(),
        AlternatorReason::Rating {
            bank_limit: Some(bank_limit),
        } => format!(
            "What it is rated at; the bank may take {}.",
            at_most(bank_limit, reader)
        ),
        AlternatorReason::BankLimit {
            bank_limit,
            one_pack_out,
        } => format!(
            "A little less than the {} the bank may take from everything that charges it{}; the house may be drawing nothing.",
            at_most(bank_limit, reader),
            if one_pack_out {
                ", even with one pack out"
            } else {
                ""
            }
        ),
        AlternatorReason::PartTooHot { over } => format!(
            "In this run a part gets or may get {} too hot; enter this limit and look again.",
            show(over)
        ),
        AlternatorReason::BelowLimit { below, part, limit } => format!(
            "{} below the {}'s limit of {}.",
            show(below),
            name(part),
            show(limit)
        ),
    }
}
