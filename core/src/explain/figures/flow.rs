//! Currents and powers at an instant: what may flow, what flows into the bank,
//! what the shafts take.

use crate::boat::WayKind;
use crate::explain::figures::moment::ALTERNATOR_A;
use crate::explain::figures::run::{BANK_LIMIT_A, MID_A};
use crate::explain::figures::steps::Step;
use crate::explain::figures::terms::told;
use crate::explain::inputs::charger;
use crate::explain::instant::{Instant, When};
use crate::explain::term::Term;
use crate::physics::charging::{after_services_a, charger_input_a, charger_output_a};
use crate::physics::drive::power_w;
use crate::text::words;

/// Whether the alternator charges the house bank without a DC-DC charger.
fn is_direct(s: &Instant) -> bool {
    s.inputs().way.kind == WayKind::Direct
}

/// The bank's limit, where the regulator is told it.
fn told_limit(s: &Instant) -> Option<Term> {
    s.boat
        .plant
        .linked
        .then(|| s.figure(&BANK_LIMIT_A).symbol("I_bank"))
}

/// The second alternator's own current, where it charges the house bank.
fn second_a(s: &Instant) -> Option<Term> {
    s.boat.two_charge().then(|| {
        let amperes = s.moment.flow.second.amperes;
        told("The second alternator's current then", "A", amperes)
            .symbol("I")
            .of_second()
    })
}

/// The current of the alternators that charge the house bank: the least of what
/// may flow.
pub(super) fn held(s: &Instant) -> Term {
    let can = s.step(Step::CanA);
    let volt = s.step(Step::VoltA).symbol("I_volt");
    if is_direct(s) {
        let mut sources = vec![can.symbol("I_can")];
        if s.boat.two_charge() {
            let other = told(
                "What the second alternator may give then",
                "A",
                second_can_a(s),
            );
            sources.push(other.symbol("I_can").of_second());
        }
        let mut all = vec![Term::Sum(sources)];
        all.extend(told_limit(s));
        all.push(volt);
        return Term::Least(all);
    }
    let out = if s.boat.two_charge() {
        let flow = &s.moment.flow;
        let part_a = flow.bank_a + s.boat.plant.taken_a() - flow.second.amperes;
        told(
            "The DC-DC charger's part then, of what flows to house and bank",
            "A",
            part_a,
        )
        .symbol("I_part")
    } else {
        let charger = if s.boat.plant.converter_works() {
            s.input(charger::CONVERTER_A)
        } else {
            told("From the DC-DC charger, locked out", "A", 0.0)
        };
        let mut all = vec![charger.symbol("I_conv")];
        all.extend(told_limit(s));
        all.push(volt);
        Term::Least(all)
    };
    let given = [
        out,
        bank_volts(s),
        s.input(charger::CONVERTER_EFFICIENCY_PCT),
        s.input(charger::START_V).symbol("V_start"),
    ];
    let mut asked = vec![Term::of(charger_input_a::FORMULA, given)];
    if s.boat.plant.main_services_a() > 0.0 {
        asked.push(s.input(charger::SERVICES_A).symbol("I_serv"));
    }
    let mut all = vec![Term::Least(vec![can.symbol("I_can"), Term::Sum(asked)])];
    all.extend(second_a(s));
    Term::Sum(all)
}

/// What may flow, and what keeps it there.
pub(super) fn limited_by(s: &Instant) -> String {
    let limit = words::limited_by(s.moment.flow.limit);
    format!("The least of what may flow. Limited by {limit}.")
}

fn bank_volts(s: &Instant) -> Term {
    told("At the bank then", "V", s.moment.flow.bank_v).symbol("V_bank")
}

/// What the second alternator may give at the bank's voltage \[A\].
fn second_can_a(s: &Instant) -> f64 {
    let (unit, [_, state]) = (s.boat.unit(1), &s.states);
    let (allowed, _) = unit.allowed(s.seconds, state.sensed_c);
    let field_per_v = unit
        .curve_here
        .field_per_v(unit.machine.rotor_c(state.t.body_c));
    let (full_a, _) = unit
        .curve_here
        .full_field(s.moment.flow.bank_v, field_per_v);
    (allowed * full_a).min(unit.cap_a)
}

/// What flows into the bank.
pub(super) fn into_bank(s: &Instant) -> Term {
    let flows = if is_direct(s) {
        let alternators = match s.when {
            When::Moment => &ALTERNATOR_A,
            _ => &MID_A,
        };
        s.figure(alternators)
            .named("From the alternators then")
            .symbol("I")
    } else {
        let mut in_a = own_amperes(s);
        if s.boat.plant.main_services_a() > 0.0 {
            let services = s.input(charger::SERVICES_A);
            in_a = Term::of(after_services_a::FORMULA, [in_a, services]);
        }
        let given = [
            in_a,
            s.input(charger::CONVERTER_EFFICIENCY_PCT),
            s.input(charger::START_V).symbol("V_start"),
            bank_volts(s),
        ];
        let mut all = vec![Term::of(charger_output_a::FORMULA, given)];
        all.extend(second_a(s));
        Term::Sum(all)
    };
    flows.less(s.drawn())
}

/// The first alternator's own current.
pub(super) fn own_amperes(s: &Instant) -> Term {
    let amperes = s.moment.flow.main.amperes;
    told("The alternator's own current then", "A", amperes).symbol("I")
}

/// The power of all alternators.
pub(super) fn given_w(s: &Instant) -> Term {
    let main = [own_amperes(s), s.own_volts()];
    let mut all = vec![Term::of(power_w::FORMULA, main)];
    if s.boat.plant.second.is_some() {
        let second = &s.moment.flow.second;
        let given = [
            told("The second alternator's current then", "A", second.amperes),
            told("At the second alternator then", "V", second.volts),
        ];
        all.push(Term::of(power_w::FORMULA, given).of_second());
    }
    Term::Sum(all)
}

/// The power all shafts take: what comes out and what is lost.
pub(super) fn taken_w(s: &Instant) -> Term {
    let mut all = vec![given_w(s), s.step(Step::LossesW).symbol("P_loss")];
    if s.boat.plant.second.is_some() {
        let lost_w = s.moment.second_losses.total_w();
        let lost = told("Lost in the second alternator then", "W", lost_w);
        all.push(lost.symbol("P_loss").of_second());
    }
    Term::Sum(all)
}
