//! Which of the usual ways to charge an arrangement is.

use serde::Serialize;

use crate::boat::{BanksJoined, Inputs, RegulatorKind, Rest, SecondRole, WayKind};

/// Which of the usual ways to charge an arrangement is. What each is called
/// stands in [`text::arrangements`](crate::text::arrangements).
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Kind {
    /// The boat before the change.
    Before,
    /// A stock alternator led to a lithium bank as it is.
    StockDirect,
    /// The alternator charges the start battery, a DC-DC charger the bank.
    ThroughCharger,
    /// The alternator charges the start battery, a smaller DC-DC charger than the boat
    /// has the bank.
    SmallerCharger,
    /// The alternator charges the start battery, a DC-DC charger and more panels the
    /// bank.
    ChargerAndPanels,
    /// The alternator direct to the bank under an external regulator.
    DirectExternal,
    /// Direct under an external regulator that the battery tells its limits.
    DirectLinked,
    /// The alternator direct to the bank under its built-in regulator.
    DirectBuiltIn,
    /// Direct under an external regulator, as the boat is, with a current cap.
    CurrentCap,
    /// A second alternator for the bank, beside the engine's own.
    SecondAlternator,
    /// Two alternators that both charge the bank.
    TwoAlternators,
    /// A larger alternator in the place of the first.
    LargerAlternator,
    /// Solar and shore power; the engine does not charge.
    NoEngine,
    /// A generator with a mains charger; the engine does not charge.
    Generator,
    /// A larger mains charger at the dock or on the generator.
    LargerMainsCharger,
    /// One of the user's own, under a name of theirs.
    Own,
}

impl Kind {
    /// The boat as it stands.
    pub(super) fn as_it_stands(now: &Inputs) -> Kind {
        match (now.shore.rest, now.two.role, now.way.kind, now.reg.kind) {
            (Rest::Shore, ..) => Kind::NoEngine,
            (Rest::Generator, ..) => Kind::Generator,
            (_, SecondRole::House, ..) => Kind::TwoAlternators,
            (_, SecondRole::Start, ..) => Kind::SecondAlternator,
            (_, _, WayKind::Converter, _) => Kind::ThroughCharger,
            (_, _, WayKind::Direct, RegulatorKind::External) => Kind::DirectExternal,
            (_, _, WayKind::Direct, RegulatorKind::Internal) => Kind::DirectBuiltIn,
        }
    }

    /// The alternator led to the bank under an external regulator: where it is so
    /// already, all it can still lack is a current cap.
    pub(super) fn directly(now: &Inputs) -> Kind {
        let is_direct = now.way.kind == WayKind::Direct && now.joined() == BanksJoined::Nothing;
        match (is_direct, now.reg.kind) {
            (true, RegulatorKind::External) => Kind::CurrentCap,
            _ => Kind::DirectExternal,
        }
    }

    /// The bank charged through a DC-DC charger.
    pub(super) fn through(now: &Inputs) -> Kind {
        match now.way.kind {
            WayKind::Converter => Kind::SmallerCharger,
            WayKind::Direct => Kind::ThroughCharger,
        }
    }
}
