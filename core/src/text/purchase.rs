//! What there is to buy, in words.

use crate::decision::arrangements::{Part, Purchase};
use crate::units::Reader;

/// "Panels, 300 W".
pub fn purchase(part: &Part, reader: &Reader) -> String {
    let what = called(part.item);
    match part.amount.map(|amount| reader.show(amount)) {
        None => what.to_string(),
        Some(amount) if part.item == Purchase::LighterLoads => {
            format!("{what}, {amount} a day saved")
        }
        Some(amount) if part.item == Purchase::MainsCharger => format!("{what}, {amount} more"),
        Some(amount) => format!("{what}, {amount}"),
    }
}

const fn called(item: Purchase) -> &'static str {
    match item {
        Purchase::Charger => "DC-DC charger",
        Purchase::Alternator => "Alternator",
        Purchase::Bracket => "Bracket, pulleys and belt",
        Purchase::Pulley => "Another pulley",
        Purchase::Regulator => "External regulator with sensors",
        Purchase::DataLink => "Data link from battery to regulator",
        Purchase::ChargeLead => "Cable and fuses of a charge lead",
        Purchase::DumpProtection => "Protection against a load dump",
        Purchase::Blower => "Blower",
        Purchase::Duct => "Cool-air duct to the alternator",
        Purchase::Generator => "Generator",
        Purchase::MainsCharger => "Mains charger",
        Purchase::Panels => "Panels",
        Purchase::Bank => "House bank",
        Purchase::LighterLoads => "Lighter loads",
        Purchase::Other => "Other parts and labour",
    }
}
