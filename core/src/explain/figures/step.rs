//! Which steps there are on the way to a moment's currents and losses.

/// A step, by its place in each moment's list.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Step {
    CanA,
    FullA,
    FieldX,
    Allowed,
    VoltA,
    BankOhm,
    FluxSquare,
    CopperW,
    DiodeW,
    FieldW,
    IronW,
    FanW,
    LossesW,
}
