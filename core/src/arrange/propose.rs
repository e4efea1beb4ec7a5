//! The usual arrangements, written down as changes of the worksheet.

use super::large;
use crate::worksheet::{
    Arrangement, Belt, BeltKind, ClampKind, Inputs, RegulatorKind, Rest, Said, SecondRole,
    StartKept, WayKind, Worksheet,
};

/// Rating of the larger machine that is proposed \[A\]: a usual size.
const LARGE_A: f64 = 180.0;
/// Panels added where panels are proposed \[W\]: two of a usual size.
const PANELS_W: f64 = 300.0;

/// A name, and what it changes.
type Usual = (&'static str, fn(&mut Inputs));

/// The usual arrangements. One that has no changes is what the worksheet
/// says already.
pub fn proposals(sheet: &Worksheet) -> Vec<Arrangement> {
    let now = &sheet.inputs;
    let usual: [Usual; 6] = [
        ("Stock machine and converter", through_converter),
        ("Regulated, straight to the bank", straight),
        ("A second machine for the bank", second_machine),
        ("A larger machine in its place", larger_machine),
        ("Converter, and more panels", |with| {
            through_converter(with);
            with.sun.panel_w += PANELS_W;
        }),
        ("Sun and shore, no engine", |with| {
            with.shore.rest = Rest::Shore;
        }),
    ];
    usual
        .iter()
        .map(|(name, change)| {
            let mut with = *now;
            change(&mut with);
            Arrangement::between(name, now, &with)
        })
        .collect()
}

/// The machine that came with the engine.
fn stock(with: &mut Inputs) {
    if with.two.role == SecondRole::Start {
        with.alt = with.alt2;
    }
    with.two.role = SecondRole::None;
    with.shore.rest = Rest::Engine;
}

fn through_converter(with: &mut Inputs) {
    stock(with);
    with.way.kind = WayKind::Converter;
    with.reg.kind = RegulatorKind::Internal;
}

pub(crate) fn straight(with: &mut Inputs) {
    stock(with);
    let new = with.way.kind != WayKind::Direct;
    with.way.kind = WayKind::Direct;
    with.way.start_kept = StartKept::House;
    with.reg.kind = RegulatorKind::External;
    // What is bought along with a new lead; see `parts`.
    if new && with.guard.warning == Said::Unsaid {
        with.guard.warning = Said::Yes;
    }
    if new && with.guard.clamp == ClampKind::Unsaid {
        with.guard.clamp = ClampKind::Clamp;
    }
}

fn second_machine(with: &mut Inputs) {
    if with.two.role == SecondRole::Start {
        // There is one already.
        return;
    }
    stock(with);
    add_second(with, LARGE_A);
}

/// Puts a large machine on the bank; the one that was there keeps the start
/// battery.
pub(crate) fn add_second(with: &mut Inputs, rated_a: f64) {
    straight(with);
    with.alt2 = with.alt;
    with.belt2 = with.belt;
    with.two.role = SecondRole::Start;
    put_large(with, rated_a);
}

/// Puts a large machine with its multi-rib belt in the first place.
pub(crate) fn put_large(with: &mut Inputs, rated_a: f64) {
    with.alt = large(rated_a, &with.alt, &with.eng);
    with.belt = Belt {
        kind: if rated_a > 200.0 {
            BeltKind::Ribs8
        } else {
            BeltKind::Ribs6
        },
        ..Belt::default()
    };
}

fn larger_machine(with: &mut Inputs) {
    straight(with);
    put_large(with, LARGE_A);
}
