//! What to ask the makers of battery and regulator before either is bought. Common
//! practice, no source.

use crate::boat::{Chemistry, Inputs, RegulatorKind, RegulatorLink, WayKind};
use crate::schema::codes;

codes! {
    /// A question to a maker.
    MakerQuestion {
        /// Whether battery and regulator use the same messages on the data link.
        SameLanguage = "same_language",
        /// Which device commands the others.
        WhoCommands = "who_commands",
        /// Which limits are sent, and how they change.
        WhichLimits = "which_limits",
        /// What the regulator does when the link is lost.
        OnLoss = "on_loss",
        /// Whether the charge-disable signal comes before the contactor opens.
        EarlyOrTogether = "early_or_together",
        /// Whether a broken wire stops the charge.
        NormallyClosed = "normally_closed",
        /// How the regulator takes the field off.
        FieldOff = "field_off",
        /// Whether a DC-DC charger has an input for the signal.
        ChargerStops = "charger_stops",
        /// How the signals of several packs are joined.
        SeveralPacks = "several_packs",
        /// When a drop-in pack opens, and how it closes again.
        OpensWhen = "opens_when",
        /// How many drop-in packs may lie in parallel.
        InParallel = "in_parallel",
        /// Whether an alternator may charge drop-in packs directly.
        AlternatorAllowed = "alternator_allowed",
    }
}

/// The questions that a boat gives rise to, in the order to ask them; none for lead
/// and where no engine charges.
pub fn maker_questions(inputs: &Inputs) -> Vec<MakerQuestion> {
    let asks = |question: &MakerQuestion| is_asked(*question, inputs);
    MakerQuestion::ALL.iter().copied().filter(asks).collect()
}

fn is_asked(question: MakerQuestion, inputs: &Inputs) -> bool {
    if inputs.bank.chemistry != Chemistry::Lfp || !inputs.engine_charges() {
        return false;
    }
    let (closed, several) = (inputs.packs_closed(), inputs.pack_count() > 1);
    let direct = inputs.on_house() && inputs.reg.kind == RegulatorKind::External && !closed;
    let charger = inputs.way.kind == WayKind::Converter && !closed;
    match question {
        MakerQuestion::SameLanguage
        | MakerQuestion::WhoCommands
        | MakerQuestion::WhichLimits
        | MakerQuestion::OnLoss => direct && inputs.link() != RegulatorLink::Signal,
        MakerQuestion::EarlyOrTogether | MakerQuestion::NormallyClosed => direct || charger,
        MakerQuestion::FieldOff => direct,
        MakerQuestion::ChargerStops => charger,
        MakerQuestion::SeveralPacks => several && (direct || charger),
        MakerQuestion::OpensWhen => closed,
        MakerQuestion::InParallel => closed && several,
        MakerQuestion::AlternatorAllowed => closed && inputs.on_house(),
    }
}
