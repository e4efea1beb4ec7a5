//! What turns one arrangement into another: changes of the inputs that are
//! complete by themselves. An alternator keeps its voltage, a new charge lead
//! brings what protects against a load dump, and a regulator is set so that
//! neither bank nor belt gets more than it takes.

use crate::analysis::belt::trusted_a;
use crate::boat::key;
use crate::boat::{
    AlternatorVolts, BanksJoined, Chemistry, ClampKind, Inputs, InstalledAlternator, LinkLoss,
    RegulatorKind, RegulatorLink, Rest, Said, SecondRole, StartKept, WayKind, WhichAlternator,
    Worksheet,
};
use crate::decision::arrangements::alternators::{belt_for, most_a, usual};
use crate::simulation::management::setting_within_a;

/// Voltage of a start battery with the engine running, and that under which a
/// DC-DC charger stops, for each 12 V block \[V\]: common practice.
const START_BLOCK_V: f64 = 14.0;
const LOCKOUT_BLOCK_V: f64 = 13.0;
/// No engine starts from a battery of more 12 V blocks than that: common practice.
const MOST_START_BLOCKS: f64 = 2.0;
/// The least a current cap can be set to \[A\]: that of its field.
const LEAST_CAP_A: f64 = 5.0;

/// What the user has said that a change must not move.
#[derive(Debug, Clone, Copy)]
pub(crate) struct Stated {
    /// The start battery's voltage.
    pub start_v: bool,
    /// The size of the DC-DC charger.
    pub charger_a: bool,
}

impl Stated {
    pub(crate) fn of(sheet: &Worksheet) -> Stated {
        let said = |key| sheet.is_said(key);
        let through_charger = sheet.inputs.way.kind == WayKind::Converter;
        Stated {
            start_v: said(key!(way.start_v)) || said(key!(way.lockout_v)) || through_charger,
            charger_a: said(key!(way.converter_a)) || through_charger,
        }
    }
}

/// The boat with an alternator of 12 V, as most engines come with, where nobody
/// gave it a voltage and a bank of 48 V alone made it one of 48.
pub(crate) fn as_engines_come(inputs: &Inputs) -> Inputs {
    let mut with = *inputs;
    let first = inputs.first_alternator();
    if first.voltage_assumed() && first.blocks() > MOST_START_BLOCKS {
        with.alt.nominal_v = AlternatorVolts::V12;
    }
    with
}

/// Whether the first alternator can charge a start battery; one of 48 V has none.
pub(crate) fn can_charge_start(inputs: &Inputs) -> bool {
    as_engines_come(inputs).first_alternator().blocks() <= MOST_START_BLOCKS
}

/// The alternator charges the start battery, and a DC-DC charger of so many
/// amperes the house bank from there.
pub(super) fn through_charger(with: &mut Inputs, stated: Stated, charger_a: f64) {
    *with = as_engines_come(with);
    let before = *with;
    with.way.kind = WayKind::Converter;
    // What the boat has anyway is no change.
    if with.charger_a() != charger_a {
        with.way.converter_a = Some(charger_a);
    }
    with.shore.rest = Rest::Engine;
    start_battery_of(with, &before, stated);
    with.keep_alternator_voltages(&before);
}

/// Where nobody has said the start battery's voltage it is that of the
/// alternator which charges it from now on.
fn start_battery_of(with: &mut Inputs, before: &Inputs, stated: Stated) {
    if !stated.start_v {
        let blocks = before.first_alternator().blocks();
        with.way.start_v = START_BLOCK_V * blocks;
        with.way.lockout_v = LOCKOUT_BLOCK_V * blocks;
    }
}

/// The alternator charges the house bank, held by an external regulator; the
/// start battery is kept by a small DC-DC charger where it was left without.
pub(crate) fn direct(with: &mut Inputs) {
    let before = *with;
    lead_to_bank(with);
    with.keep_alternator_voltages(&before);
    regulate(with);
}

/// The alternator charges the house bank, and the battery sends its limits over a data
/// link; if that is lost, the regulator stops.
pub(super) fn direct_linked(with: &mut Inputs) {
    with.reg.link = RegulatorLink::LimitsAndVolts;
    with.reg.link_loss = LinkLoss::Stops;
    direct(with);
}

/// The charge lead to the house bank, with what belongs to it.
fn lead_to_bank(with: &mut Inputs) {
    with.shore.rest = Rest::Engine;
    let is_joined = with.joined() != BanksJoined::Nothing;
    with.way.joined = BanksJoined::Nothing;
    if with.way.kind == WayKind::Direct && !is_joined {
        return;
    }
    with.way.kind = WayKind::Direct;
    with.way.start_kept = StartKept::House;
    if with.bank.chemistry == Chemistry::Lfp {
        // Drop-in packs have no such signal.
        if !with.packs_closed() {
            with.guard.warning = Said::Yes;
        }
        if !matches!(with.guard.clamp, ClampKind::Clamp | ClampKind::Avalanche) {
            with.guard.clamp = ClampKind::Clamp;
        }
    }
}

/// An external regulator, its current cap set where it needs one.
pub(crate) fn regulate(with: &mut Inputs) {
    with.reg.kind = RegulatorKind::External;
    hold_current(with);
}

/// Puts another alternator with a multi-rib belt in the first place, for the
/// battery that one is led to; a current cap was that of the one before.
pub(crate) fn replace(with: &mut Inputs, rated_a: f64) {
    let blocks = with.first_alternator().battery_blocks();
    with.reg.current_cap_a = None;
    with.alt = usual(rated_a, blocks, &with.alt, &with.eng);
    with.belt = belt_for(rated_a, blocks);
    hold_current(with);
}

/// Puts another alternator on the bank; the one that was there charges the
/// start battery.
pub(crate) fn add_second(with: &mut Inputs, rated_a: f64, stated: Stated) {
    *with = as_engines_come(with);
    let before = *with;
    start_battery_of(with, &before, stated);
    with.alt2 = before.alt;
    with.belt2 = before.belt;
    with.two.role = SecondRole::Start;
    lead_to_bank(with);
    with.reg.kind = RegulatorKind::External;
    // The one that was there stays what it is.
    let blocks = before.first_alternator().blocks();
    let moved = with.alternator(WhichAlternator::Second);
    let is_other = moved.is_none_or(|moved| moved.blocks() != blocks);
    if let Some(volts) = AlternatorVolts::of_blocks(blocks).filter(|_| is_other) {
        with.alt2.nominal_v = volts;
    }
    replace(with, rated_a);
}

/// Lowers the regulator's current cap to what the bank may take and the belts
/// carry, where the alternators could give more.
pub(crate) fn hold_current(with: &mut Inputs) {
    if let Some(cap_a) = cap_wanted_a(with) {
        with.reg.current_cap_a = Some(cap_a);
    }
}

/// The current cap that the regulator of alternators on the house bank ought
/// to have, in whole amperes; none where the one it has, or the alternators'
/// own size, is enough.
pub(crate) fn cap_wanted_a(inputs: &Inputs) -> Option<f64> {
    if inputs.reg.kind != RegulatorKind::External || !inputs.on_house() {
        return None;
    }
    let on_bank = || on_bank(inputs);
    let stated_a = stated_cap_a(inputs);
    let together_a: f64 = on_bank().map(|installed| gives_a(&installed)).sum();
    let limit_a = inputs.setting_limit_a();
    let mut cap_a = f64::INFINITY;
    if together_a > limit_a && !inputs.limit_linked() {
        // One setting serves both.
        cap_a = setting_within_a(limit_a) / on_bank().count().max(1) as f64;
    }
    for installed in on_bank() {
        let gives_a = gives_a(&installed);
        if let Some(trusted_a) = trusted_a(&installed).filter(|most_a| gives_a > *most_a) {
            cap_a = cap_a.min(trusted_a);
        }
    }
    let cap_a = cap_a.floor().max(LEAST_CAP_A);
    (cap_a < stated_a && cap_a.is_finite()).then_some(cap_a)
}

/// Each alternator that charges the house bank directly.
fn on_bank(inputs: &Inputs) -> impl Iterator<Item = InstalledAlternator<'_>> {
    inputs
        .alternators()
        .filter(|installed| installed.connection.on_house())
}

/// The regulator's current cap; endless without one \[A\].
fn stated_cap_a(inputs: &Inputs) -> f64 {
    match inputs.reg.kind {
        RegulatorKind::External => inputs.reg.current_cap_a.unwrap_or(f64::INFINITY),
        RegulatorKind::Internal => f64::INFINITY,
    }
}

/// The most an alternator ever gives under its regulator \[A\].
fn gives_a(installed: &InstalledAlternator) -> f64 {
    most_a(installed.alternator).min(stated_cap_a(installed.boat))
}
