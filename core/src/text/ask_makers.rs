//! What to ask the makers before buying, in words.

use crate::guidance::MakerQuestion;

/// The heading of the list.
pub const HEADING: &str = "Ask both makers before buying";

/// The question, and why it matters.
pub const fn question(question: MakerQuestion) -> &'static str {
    match question {
        MakerQuestion::SameLanguage => {
            "Both: do battery and regulator use the same messages on the data link, not only the same plug? A common standard (SAE J1939, NMEA 2000, RV-C) is not enough: ask for the pair of models and versions that was tried together."
        }
        MakerQuestion::WhoCommands => {
            "Both: who commands? The battery sends limits and the regulator follows, or a third device does; two that command fight each other."
        }
        MakerQuestion::WhichLimits => {
            "Battery: which limits does it send, current, voltage or both, and do they fall with cold cells and as it fills, before it opens anything?"
        }
        MakerQuestion::OnLoss => {
            "Regulator: what does it do when the link is lost, and after how many seconds? It should stop charging, or go on within settings that hold without the link."
        }
        MakerQuestion::EarlyOrTogether => {
            "Battery: does the charge-disable signal come some seconds before the contactor opens, or at the same moment? Only an early one protects the alternator."
        }
        MakerQuestion::NormallyClosed => {
            "Battery: does a broken wire or a battery that is switched off stop the charge? A contact that is closed as long as all is well does; one that closes to stop does not."
        }
        MakerQuestion::FieldOff => {
            "Regulator: does its input take the field off at once and whatever else it is told, and is it for a contact or for a voltage?"
        }
        MakerQuestion::ChargerStops => {
            "DC-DC charger: does it have an input that stops it by the battery's charge-disable signal, and may it run with no battery at its output?"
        }
        MakerQuestion::SeveralPacks => {
            "Battery: with several packs, does one that is about to open stop the charge for all, and does the limit that is sent fall when one is missing?"
        }
        MakerQuestion::OpensWhen => {
            "Battery: at which current, voltage and cell temperature does each pack open, after how many seconds, and what closes it again?"
        }
        MakerQuestion::InParallel => {
            "Battery: how many packs may lie in parallel, and how are they brought to the same voltage before they are joined?"
        }
        MakerQuestion::AlternatorAllowed => {
            "Battery: may an alternator charge the packs directly, and does the warranty hold then?"
        }
    }
}
