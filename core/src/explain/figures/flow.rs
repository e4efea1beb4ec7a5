//! Currents and powers at an instant: what may flow, what flows into the bank,
//! what the shafts take.

use crate::boat::{InstalledAlternator, WayKind, key};
use crate::explain::figure::Figure;
use crate::explain::figures::bank_limit::bank_limits;
use crate::explain::figures::step::Step;
use crate::explain::instant::Instant;
use crate::explain::term::{Term, described};
use crate::physics::charging::{after_services_a, charger_input_a, charger_output_a};
use crate::physics::drive::power_w;
use crate::physics::regulator::{HELD_BAND_V, allowed_a, held_part};
use crate::simulation::alternator::AlternatorAtSpeed;
use crate::simulation::moment::{Output, ThermalState};
use crate::text::words;

/// Whether the alternator charges the house bank without a DC-DC charger.
fn is_direct(s: &Instant) -> bool {
    s.inputs().way.kind == WayKind::Direct
}

/// The own current of each other alternator that charges the house bank.
fn others_a(s: &Instant) -> Vec<Term> {
    let others = s.boat.others_on_house();
    others
        .map(|(installed, _)| {
            let name = format!("The {}'s current then", words::alternator(installed.which));
            described(&name, "A", output(s, &installed).amperes)
                .symbol("I")
                .of_second()
        })
        .collect()
}

/// What an alternator gives then.
fn output(s: &Instant, installed: &InstalledAlternator) -> Output {
    s.moment.flow.outputs[installed.which.index()]
}

/// The current of the alternators that charge the house bank: the least of what
/// may flow.
pub(super) fn held(s: &Instant) -> Term {
    let can = s.step(Step::CanA);
    let volt = s.step(Step::VoltA).symbol("I_volt");
    if is_direct(s) {
        let mut sources = vec![held_back(s, 0, can.symbol("I_can"))];
        for (installed, alternator) in s.boat.others_on_house() {
            let name = format!(
                "What the {} may give then",
                words::alternator(installed.which)
            );
            let can_a = can_a(s, alternator, &s.states[installed.which.index()]);
            let can = described(&name, "A", can_a).symbol("I_can").of_second();
            sources.push(held_back(s, installed.which.index(), can));
        }
        let mut all = vec![Term::Sum(sources)];
        all.extend(bank_limits(s));
        all.push(volt);
        return Term::Least(all);
    }
    let out = if s.boat.several_charge() {
        let others = s.boat.others_on_house();
        let others_a: f64 = others.map(|(one, _)| output(s, &one).amperes).sum();
        let part_a = s.moment.flow.bank_a + s.boat.plant.taken_a(s.seconds) - others_a;
        described(
            "The DC-DC charger's part then, of what flows to house and bank",
            "A",
            part_a,
        )
        .symbol("I_part")
    } else {
        let charger = if s.boat.plant.converter_works() {
            s.input(key!(way.converter_a))
        } else {
            described("From the DC-DC charger, locked out", "A", 0.0)
        };
        let mut all = vec![charger.symbol("I_conv")];
        all.extend(bank_limits(s));
        all.push(volt);
        Term::Least(all)
    };
    let given = [
        out,
        bank_volts(s),
        s.input(key!(way.converter_efficiency_pct)),
        s.input(key!(way.start_v)).symbol("V_start"),
    ];
    let mut asked = vec![Term::of(charger_input_a::FORMULA, given)];
    if s.boat.plant.services_beside_charger_a() > 0.0 {
        asked.push(s.input(key!(way.services_a)).symbol("I_serv"));
    }
    let mut all = vec![Term::Least(vec![can.symbol("I_can"), Term::Sum(asked)])];
    all.extend(others_a(s));
    Term::Sum(all)
}

/// What an alternator may give, as far as a regulator on its own lets it by the
/// voltage.
fn held_back(s: &Instant, alternator: usize, can: Term) -> Term {
    let plant = &s.boat.plant;
    if !plant.apart() {
        return can;
    }
    let held = described(
        "What its own regulator holds then",
        "V",
        plant.held_by(alternator, &s.states[alternator]),
    );
    let given = [
        if alternator == 0 {
            held
        } else {
            held.symbol("V_held").of_second()
        },
        bank_volts(s),
        described(
            "Band in which it takes the field back",
            "V",
            HELD_BAND_V * plant.bank.blocks,
        ),
    ];
    let part = Term::of(held_part::FORMULA, given);
    Term::of(allowed_a::FORMULA, [part, can])
}

/// What may flow, and what keeps it there.
pub(super) fn limited_by(s: &Instant) -> String {
    let limit = words::limited_by(s.moment.flow.limit);
    format!("The least of what may flow. Limited by {limit}.")
}

fn bank_volts(s: &Instant) -> Term {
    described("At the bank then", "V", s.moment.flow.bank_v).symbol("V_bank")
}

/// What an alternator may give at the bank's voltage \[A\].
fn can_a(s: &Instant, alternator: &AlternatorAtSpeed, state: &ThermalState) -> f64 {
    let (allowed, _) = alternator.allowed(s.seconds, state.sensed_c);
    let rotor_c = alternator.network.rotor_c(state.t.body_c);
    let field_per_v = alternator.curve_here.field_per_v(rotor_c);
    let (full_a, _) = alternator
        .curve_here
        .full_field(s.moment.flow.bank_v, field_per_v);
    (allowed * full_a).min(alternator.cap_a)
}

/// What flows into the bank, given the figure of what the alternators charge it with
/// at that moment.
pub(super) fn into_bank(s: &Instant, alternators: &'static Figure) -> Term {
    let flows = if is_direct(s) {
        s.figure(alternators)
            .named("From the alternators then")
            .symbol("I")
    } else {
        let mut in_a = own_amperes(s);
        if s.boat.plant.services_beside_charger_a() > 0.0 {
            let services = s.input(key!(way.services_a));
            in_a = Term::of(after_services_a::FORMULA, [in_a, services]);
        }
        let given = [
            in_a,
            s.input(key!(way.converter_efficiency_pct)),
            s.input(key!(way.start_v)).symbol("V_start"),
            bank_volts(s),
        ];
        let mut all = vec![Term::of(charger_output_a::FORMULA, given)];
        all.extend(others_a(s));
        Term::Sum(all)
    };
    flows.less(s.drawn())
}

/// The first alternator's own current.
pub(super) fn own_amperes(s: &Instant) -> Term {
    let amperes = s.moment.flow.outputs[0].amperes;
    described("The alternator's own current then", "A", amperes).symbol("I")
}

/// The power of all alternators.
pub(super) fn given_w(s: &Instant) -> Term {
    let first = [own_amperes(s), s.own_volts()];
    let mut all = vec![Term::of(power_w::FORMULA, first)];
    for (installed, _) in s.boat.others() {
        let (name, output) = (words::alternator(installed.which), output(s, &installed));
        let given = [
            described(&format!("The {name}'s current then"), "A", output.amperes),
            described(&format!("At the {name} then"), "V", output.volts),
        ];
        all.push(Term::of(power_w::FORMULA, given).of_second());
    }
    Term::Sum(all)
}

/// The power all shafts take: what comes out and what is lost.
pub(super) fn taken_w(s: &Instant) -> Term {
    let mut all = vec![given_w(s), s.step(Step::LossesW).symbol("P_loss")];
    for (installed, _) in s.boat.others() {
        let lost_w = s.moment.losses[installed.which.index()].total_w();
        let name = format!("Lost in the {} then", words::alternator(installed.which));
        all.push(described(&name, "W", lost_w).symbol("P_loss").of_second());
    }
    Term::Sum(all)
}
