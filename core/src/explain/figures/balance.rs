//! The heat balance that a temperature meets.

use crate::boat::{AfterStop, WhichAlternator, key};
use crate::explain::figure::Explanation;
use crate::explain::figures::heat::HOT_CARRIED_W;
use crate::explain::figures::space_air::AIR_W_K;
use crate::explain::figures::step::Step;
use crate::explain::instant::{Instant, Part, When};
use crate::explain::term::{Term, described};
use crate::physics::heat_balance::{
    body_c, body_heat_w, rectifier_c, space_air_c, warming_c, winding_c,
};
use crate::text::words;
use crate::units::clock;

/// Why the balance holds.
fn why(s: &Instant) -> String {
    const STEPPED: &str = "The run is stepped through time; at any moment of it heat in is heat carried away and heat stored.";
    match s.when {
        When::Hot => "Settled: heat in is heat out.".to_string(),
        When::Soak => "The hour after the engine stops is stepped through time: no fan turns, nothing is lost in the alternator, and the block goes on heating the space. This is the balance when it is hottest.".to_string(),
        When::Peak(_) => {
            let after = clock(s.seconds / 60.0);
            format!("The highest of the run's moments, after {after}. {STEPPED}")
        }
        _ => STEPPED.to_string(),
    }
}

/// The balance of the part that is looked at.
pub(super) fn balanced(s: &Instant) -> Explanation {
    let term = match s.part {
        Part::Air => return air(s),
        Part::Winding => {
            let given = [
                s.step(Step::CopperW),
                s.winding_body(),
                s.temperature(Part::Case),
                s.winding_air(),
                s.inlet(),
                s.stored(),
            ];
            Term::of(winding_c::FORMULA, given)
        }
        Part::Rectifier => {
            let diodes = if s.turning {
                s.step(Step::DiodeW)
            } else {
                Term::Number(0.0)
            };
            let given = [
                diodes,
                s.rectifier_body(),
                s.temperature(Part::Case),
                s.rectifier_air(),
                s.inlet(),
                s.stored(),
            ];
            Term::of(rectifier_c::FORMULA, given)
        }
        Part::Case => {
            let heat = [
                s.step(Step::IronW),
                s.step(Step::FieldW),
                s.step(Step::FanW),
            ];
            let given = [
                Term::of(body_heat_w::FORMULA, heat),
                s.winding_body(),
                s.temperature(Part::Winding),
                s.rectifier_body(),
                s.temperature(Part::Rectifier),
                s.body_air(),
                s.inlet(),
                s.stored(),
            ];
            Term::of(body_c::FORMULA, given)
        }
    };
    let term = if s.alternator != WhichAlternator::First {
        term.of_second()
    } else {
        term
    };
    Explanation::of(term).note(why(s))
}

fn air(s: &Instant) -> Explanation {
    if s.turning && s.boat.plant.space.measured_hot_c.is_some() {
        return measured_air(s);
    }
    if s.air_w_k() <= 0.0 {
        return Explanation::none("Nothing carries heat to this air or away from it.");
    }
    let (engine_block, flow) = match s.when {
        When::Hot => (s.input(key!(eng.running_c)), s.figure(&AIR_W_K)),
        When::Soak => (
            described("Engine then", "°C", s.engine_c),
            described(
                "Carried off by air for each kelvin, the engine stopped",
                "W/K",
                s.boat.plant.space.after_w_k(s.stopped_s),
            ),
        ),
        _ => (
            described("Engine then", "°C", s.engine_c),
            s.figure(&AIR_W_K),
        ),
    };
    let given = [
        alternators_heat(s),
        s.input(key!(eng.surface_w_k)),
        engine_block,
        flow,
        s.input(key!(space.outside_c)),
        s.input(key!(space.wall_w_k)),
        s.input(key!(space.cabin_c)),
        s.stored(),
    ];
    let explanation = Explanation::of(Term::of(space_air_c::FORMULA, given)).note(why(s));
    if s.when != When::Soak {
        return explanation;
    }
    let explanation = explanation.inputs(&[key!(space.blower_after)]);
    if s.inputs().space.blower_after == AfterStop::Timed {
        explanation.inputs(&[key!(space.blower_run_on_min)])
    } else {
        explanation
    }
}

fn measured_air(s: &Instant) -> Explanation {
    let hot = s.input(key!(space.hot_c)).symbol("T_hot");
    if s.when == When::Hot {
        return Explanation::of(hot).note("You measured it hot.");
    }
    let given = [
        hot,
        described("At the start", "°C", s.boat.plant.space.start_c),
        described("Time since the start", "min", s.seconds / 60.0),
        s.input(key!(eng.warm_up_min)),
    ];
    Explanation::of(Term::of(warming_c::FORMULA, given))
        .note("You measured it hot; it comes up as the engine warms.")
}

/// Heat that all alternators give the air.
fn alternators_heat(s: &Instant) -> Term {
    let first_w = s.heat_w[0];
    let name = "Heat the alternator gives the air";
    let first = match s.when {
        When::Hot => s.figure(&HOT_CARRIED_W),
        _ => described(name, "W", first_w),
    };
    let mut all = vec![first.symbol("P_alt")];
    for ((installed, _), heat_w) in s.boat.others().zip(s.heat_w.iter().skip(1)) {
        let name = format!(
            "Heat the {} gives the air then",
            words::alternator(installed.which)
        );
        all.push(described(&name, "W", *heat_w).symbol("P_alt").of_second());
    }
    Term::Sum(all)
}
