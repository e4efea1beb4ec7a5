//! The usual arrangements of a boat, each in the sizes it may have.

use crate::boat::{
    BanksJoined, Chemistry, Inputs, RegulatorKind, RegulatorLink, Rest, SecondRole,
    USUAL_CHARGERS_A, WayKind, Worksheet,
};
use crate::decision::arrangements::alternators::{larger_a, second_a};
use crate::decision::arrangements::changes::{
    Stated, add_second, as_engines_come, can_charge_start, direct, direct_linked, replace,
    through_charger,
};
use crate::decision::arrangements::kind::Kind;
use crate::decision::arrangements::mains::{
    larger_chargers_a, put_on_generator, set_mains_charger, usual_chargers_a,
};

/// Panels added where panels are proposed \[W\]: two of a usual size.
const PANELS_W: f64 = 300.0;
/// A usual arrangement, in the sizes it may have, the one to be tried first
/// in the first place. It has none where it makes no sense on this boat.
pub(super) struct Usual {
    pub kind: Kind,
    pub sizes: Vec<Inputs>,
}

/// The usual arrangements, whatever their worth. Where an alternator is not of
/// the voltage of the battery it would be led to there is none.
pub(super) fn usual(sheet: &Worksheet) -> Vec<Usual> {
    let now = &sheet.inputs;
    let stated = Stated::of(sheet);
    let through = through_chargers(now, stated);
    let more_panels = |with: &Inputs| {
        let mut with = *with;
        with.sun.panel_w += PANELS_W;
        with
    };
    let of = |kind, sizes: Vec<Inputs>| Usual {
        kind,
        sizes: sizes.into_iter().filter(fits).collect(),
    };
    vec![
        of(Kind::through(now), through.clone()),
        of(Kind::directly(now), vec![changed(now, direct)]),
        of(Kind::DirectLinked, linked(now)),
        of(Kind::SecondAlternator, seconds(now, stated)),
        of(Kind::LargerAlternator, larger(now)),
        of(
            Kind::ChargerAndPanels,
            through.iter().map(more_panels).collect(),
        ),
        of(
            Kind::NoEngine,
            vec![changed(now, |with| with.shore.rest = Rest::Shore)],
        ),
        of(Kind::Generator, on_generator(now)),
        of(Kind::LargerMainsCharger, larger_chargers(now)),
    ]
}

/// The alternator direct to the bank under its built-in regulator; none where the
/// boat is that already, or has no lithium bank.
pub(super) fn stock_direct(now: &Inputs) -> Option<Inputs> {
    let with = changed(now, |with| {
        with.way.kind = WayKind::Direct;
        with.way.joined = BanksJoined::Nothing;
        with.reg.kind = RegulatorKind::Internal;
        with.reg.link = RegulatorLink::None;
        with.two.role = SecondRole::None;
        with.shore.rest = Rest::Engine;
        with.keep_alternator_voltages(now);
    });
    (now.bank.chemistry == Chemistry::Lfp && with != *now && fits(&with)).then_some(with)
}

/// Direct, and the battery tells the regulator its limits; none where it does
/// already, or where its packs cannot.
fn linked(now: &Inputs) -> Vec<Inputs> {
    let with = changed(now, direct_linked);
    let new = with.link().sends_limits() && !now.link().sends_limits();
    new.then_some(with).into_iter().collect()
}

/// A generator in place of the engine; none where one charges the bank already.
/// One that is aboard keeps its charger.
fn on_generator(now: &Inputs) -> Vec<Inputs> {
    if now.generator_charges() {
        return Vec::new();
    }
    if now.has_generator() {
        return vec![changed(now, |with| with.shore.rest = Rest::Generator)];
    }
    let sizes = usual_chargers_a(now).into_iter();
    sizes
        .map(|charger_a| changed(now, |with| put_on_generator(with, charger_a)))
        .collect()
}

/// A larger mains charger, where one charges the bank.
fn larger_chargers(now: &Inputs) -> Vec<Inputs> {
    let sizes = larger_chargers_a(now).into_iter();
    sizes
        .map(|charger_a| changed(now, |with| set_mains_charger(with, charger_a)))
        .collect()
}

fn changed(now: &Inputs, change: impl Fn(&mut Inputs)) -> Inputs {
    let mut with = *now;
    change(&mut with);
    with
}

/// Whether each alternator is of the voltage of the battery it is led to.
fn fits(with: &Inputs) -> bool {
    with.alternators().all(|installed| installed.fits())
}

/// Through a DC-DC charger of the worksheet's size, or of the largest usual one
/// below that which leaves the alternator half of its power and is not above
/// what the bank may take; smaller ones where that is too much for it.
fn through_chargers(now: &Inputs, stated: Stated) -> Vec<Inputs> {
    if now.two.role != SecondRole::None || !can_charge_start(now) {
        // One alternator is there for the bank already, or none for a start battery.
        return Vec::new();
    }
    let listed_a = now.charger_a();
    let rated_w = as_engines_come(now).first_alternator().rated_w();
    let fits = |charger_a: &f64| now.charger_suits(*charger_a, rated_w);
    let listed = (stated.charger_a || fits(&listed_a)).then_some(listed_a);
    let smaller_a = USUAL_CHARGERS_A
        .into_iter()
        .filter(|charger_a| *charger_a < listed_a && fits(charger_a));
    listed
        .into_iter()
        .chain(smaller_a)
        .map(|charger_a| changed(now, |with| through_charger(with, stated, charger_a)))
        .collect()
}

fn seconds(now: &Inputs, stated: Stated) -> Vec<Inputs> {
    if now.two.role != SecondRole::None || !can_charge_start(now) {
        return Vec::new();
    }
    middle_first(&second_a(&as_engines_come(now)))
        .map(|rated_a| changed(now, |with| add_second(with, rated_a, stated)))
        .collect()
}

fn larger(now: &Inputs) -> Vec<Inputs> {
    // The one there may be of another voltage: only its power is looked at.
    let led_to_bank = changed(now, direct);
    middle_first(&larger_a(&led_to_bank))
        .map(|rated_a| changed(&led_to_bank, |with| replace(with, rated_a)))
        .collect()
}

/// The second of several sizes first, then smaller and then larger ones.
fn middle_first(sizes_a: &[f64]) -> impl Iterator<Item = f64> {
    let middle = if sizes_a.len() > 2 { 1 } else { 0 };
    let smaller = sizes_a.iter().take(middle + 1).rev();
    smaller.chain(sizes_a.iter().skip(middle + 1)).copied()
}
