//! Belts: what each carries by the formula and by the rule of thumb, and what it
//! pulls at. A figure's place is its alternator, plus two with the engine at its
//! highest.

use crate::analysis::belt::{BeltLoad, BeltReport};
use crate::boat::{Alternator, Belt, InstalledAlternator, WhichAlternator, key};
use crate::explain::boat::Boat;
use crate::explain::figure::{Explanation, Figure};
use crate::explain::figures::terms::told;
use crate::explain::instant::Instant;
use crate::explain::term::Term;
use crate::physics::belt::{
    BeltType, carries_w, engine_pulley_mm, engine_w, grip, own_pull_n, radians, rule_a, rule_w,
    side_n, speed_m_s, torque_nm, transmits_n, used_pct, usual_wrap_deg,
};

/// How many alternators have belts of their own.
const ALTERNATORS: usize = WhichAlternator::ALL.len();

fn is_there(boat: &Boat, place: usize) -> bool {
    boat.report.analyses.belts.len() > place % ALTERNATORS
}

fn is_entered(boat: &Boat, place: usize) -> bool {
    let belt = boat.report.analyses.belts.get(place % ALTERNATORS);
    belt.is_some_and(|belt| belt.belt.is_some())
}

/// The belt that is looked at.
fn report<'a>(s: &Instant<'a>) -> Option<&'a BeltReport> {
    s.report().analyses.belts.get(s.place % ALTERNATORS)
}

/// What it does at the engine speed that is looked at.
fn load<'a>(s: &Instant<'a>) -> Option<&'a BeltLoad> {
    let belt = report(s)?;
    Some(if s.place < ALTERNATORS {
        &belt.charging
    } else {
        &belt.top
    })
}

/// The alternator that it turns.
fn installed<'a>(s: &Instant<'a>) -> InstalledAlternator<'a> {
    s.boat.installed(s.place % ALTERNATORS)
}

/// What the tables say of its kind of belt.
fn table(s: &Instant) -> Option<BeltType> {
    installed(s).belt.kind.table()
}

/// An input of the belt by its place, such as `Belt::pulley_mm`.
fn input(s: &Instant, place: u8) -> Term {
    s.input(installed(s).which.belt_key(place))
}

fn of(s: &Instant, figures: &'static [Figure; ALTERNATORS]) -> Term {
    let [first, ..] = figures;
    s.figure(figures.get(s.place % ALTERNATORS).unwrap_or(first))
}

fn at_speed(s: &Instant, figures: &'static [Figure; 2 * ALTERNATORS]) -> Term {
    let [first, ..] = figures;
    s.figure(figures.get(s.place).unwrap_or(first))
}

/// A figure of each belt.
macro_rules! each_belt {
    ($($figure:tt)*) => {
        at_each_place!(
            [
                0 "belts.0." "Belt: ",
                1 "belts.1." "Second alternator's belt: ",
            ] of BeltReport, report;
            $($figure)*
        )
    };
}

/// A figure of each belt at both engine speeds.
macro_rules! each_load {
    ($($figure:tt)*) => {
        at_each_place!(
            [
                0 "belts.0.charging." "Belt while charging: ",
                1 "belts.1.charging." "Second alternator's belt while charging: ",
                2 "belts.0.top." "Belt at the highest engine speed: ",
                3 "belts.1.top." "Second alternator's belt at the highest engine speed: ",
            ] of BeltLoad, load;
            $($figure)*
        )
    };
}

static ENGINE_PULLEY_MM: [Figure; ALTERNATORS] = each_belt!(
    "engine_pulley_mm",
    "engine pulley",
    "mm",
    0,
    engine_pulley,
    |belt| belt.engine_pulley_mm,
    is_there
);
static WRAP_DEG: [Figure; ALTERNATORS] = each_belt!(
    "wrap_deg",
    "wrap on the smaller pulley",
    "°",
    0,
    wrap,
    |belt| belt.wrap_deg,
    is_there
);
static TIGHT_N: [Figure; ALTERNATORS] = each_belt!(
    "tight_n",
    "most pull of the tight side",
    "N",
    0,
    tight,
    |belt| belt.tight_n,
    is_entered
);
static SLIPS_AT_RATIO: [Figure; ALTERNATORS] = each_belt!(
    "slips_at_ratio",
    "slips when the tight side is the slack side times",
    "",
    1,
    slips,
    |belt| belt.slips_at_ratio,
    is_entered
);
static RULE_LOW_A: [Figure; ALTERNATORS] = each_belt!(
    "rule_low_a",
    "carries by the rule of thumb, at least",
    "A",
    0,
    rule_low,
    |belt| belt.rule_low_a,
    is_entered
);
static RULE_HIGH_A: [Figure; ALTERNATORS] = each_belt!(
    "rule_high_a",
    "carries by the rule of thumb, at most",
    "A",
    0,
    rule_high,
    |belt| belt.rule_high_a,
    is_entered
);

static BELT_M_S: [Figure; 4] = each_load!(
    "belt_m_s",
    "speed",
    "m/s",
    1,
    speed,
    |load| load.belt_m_s,
    is_there
);
static SHAFT_NM: [Figure; 4] = each_load!(
    "shaft_nm",
    "torque at the alternator's shaft",
    "N·m",
    1,
    torque,
    |load| load.shaft_nm,
    is_there
);
static ENGINE_W: [Figure; 4] = each_load!(
    "engine_w",
    "power asked of the engine",
    "W",
    0,
    of_engine,
    |load| load.engine_w,
    is_there
);
static RULE_W: [Figure; 4] = each_load!(
    "rule_w",
    "power by the rule of thumb",
    "W",
    0,
    by_rule,
    |load| load.rule_w,
    is_there
);
static CARRIES_W: [Figure; 4] = each_load!(
    "carries_w",
    "carries by the formula",
    "W",
    0,
    carries,
    |load| load.carries_w,
    is_entered
);
static FORMULA_PCT: [Figure; 4] = each_load!(
    "formula_pct",
    "used of what it carries by the formula",
    "%",
    0,
    used_of_formula,
    |load| load.formula_pct,
    is_entered
);
static RULE_PCT: [Figure; 4] = each_load!(
    "rule_pct",
    "used of what it carries by the rule of thumb",
    "%",
    0,
    used_of_rule,
    |load| load.rule_pct,
    is_entered
);
static SIDE_N: [Figure; 4] = each_load!(
    "side_n",
    "pull on the end of the crankshaft",
    "N",
    0,
    side,
    |load| load.side_n,
    is_entered
);

/// Every figure of every belt.
pub(super) fn all() -> impl Iterator<Item = &'static Figure> {
    let of_belts = [
        &ENGINE_PULLEY_MM,
        &WRAP_DEG,
        &TIGHT_N,
        &SLIPS_AT_RATIO,
        &RULE_LOW_A,
        &RULE_HIGH_A,
    ];
    let at_speeds = [
        &BELT_M_S,
        &SHAFT_NM,
        &ENGINE_W,
        &RULE_W,
        &CARRIES_W,
        &FORMULA_PCT,
        &RULE_PCT,
        &SIDE_N,
    ];
    of_belts
        .into_iter()
        .flatten()
        .chain(at_speeds.into_iter().flatten())
}

/// Power at the alternator's shaft then.
fn shaft_w(s: &Instant) -> Term {
    let shaft_w = load(s).map_or(f64::NAN, |load| load.shaft_w);
    told("Power at the alternator's shaft then", "W", shaft_w).symbol("P")
}

fn amperes(s: &Instant) -> Term {
    let amperes = load(s).map_or(f64::NAN, |load| load.amperes);
    told("What the alternator gives then", "A", amperes)
}

fn shaft_rpm(s: &Instant) -> Term {
    let rpm = load(s).map_or(f64::NAN, |load| load.shaft_rpm);
    told("Speed of the alternator's shaft then", "rpm", rpm)
}

fn blocks(s: &Instant) -> Term {
    told("12 V blocks of its system", "", installed(s).blocks())
}

fn pulley(s: &Instant) -> Term {
    input(s, Belt::pulley_mm)
}

fn engine_pulley(s: &Instant) -> Explanation {
    if installed(s).belt.engine_mm.is_some() {
        return Explanation::of(input(s, Belt::engine_mm).symbol("D"));
    }
    let ratio = s.input(installed(s).key(Alternator::pulley_ratio));
    Explanation::of(Term::of(engine_pulley_mm::FORMULA, [ratio, pulley(s)]))
}

fn wrap(s: &Instant) -> Explanation {
    if installed(s).belt.wrap_deg.is_some() {
        return Explanation::of(input(s, Belt::wrap_deg).symbol("θ"));
    }
    let given = [
        of(s, &ENGINE_PULLEY_MM),
        pulley(s),
        input(s, Belt::centres_mm),
    ];
    Explanation::of(Term::of(usual_wrap_deg::FORMULA, given))
        .note("An open belt: π is half a turn.")
}

fn tight(s: &Instant) -> Explanation {
    if installed(s).belt.tight_n.is_some() {
        return Explanation::of(input(s, Belt::tight_n).symbol("T₁"));
    }
    let kind = installed(s).which.belt_key(Belt::kind);
    Explanation::none("What tables give such a belt, from memory; all its belts or ribs together.")
        .inputs(&[kind])
}

fn wrap_in_radians(s: &Instant) -> Term {
    Term::of(radians::FORMULA, [of(s, &WRAP_DEG)])
}

fn slips(s: &Instant) -> Explanation {
    let groove_deg = table(s).map_or(f64::NAN, |table| table.groove_deg);
    let given = [
        input(s, Belt::friction),
        told(
            "Angle between the flanks of a groove, from memory",
            "°",
            groove_deg,
        ),
        wrap_in_radians(s),
    ];
    Explanation::of(Term::of(grip::FORMULA, given))
        .note("Both sides less the pull from the belt's own weight.")
}

fn rule(s: &Instant, rule_12v_a: Option<f64>) -> Explanation {
    let given = [
        told(
            "What the rule of thumb gives such a belt in a 12 V system, half round the pulley",
            "A",
            rule_12v_a.unwrap_or(f64::NAN),
        ),
        of(s, &WRAP_DEG),
        blocks(s),
    ];
    Explanation::of(Term::of(rule_a::FORMULA, given))
        .note("The bracket is what is left of it for this wrap; more than half a turn counts as half a turn.")
}

fn rule_low(s: &Instant) -> Explanation {
    rule(s, table(s).map(|table| table.rule_a.0))
}

fn rule_high(s: &Instant) -> Explanation {
    rule(s, table(s).map(|table| table.rule_a.1))
}

fn speed(s: &Instant) -> Explanation {
    Explanation::of(Term::of(speed_m_s::FORMULA, [pulley(s), shaft_rpm(s)]))
}

fn torque(s: &Instant) -> Explanation {
    Explanation::of(Term::of(torque_nm::FORMULA, [shaft_w(s), shaft_rpm(s)]))
}

fn of_engine(s: &Instant) -> Explanation {
    let given = [shaft_w(s), s.input(key!(eng.belt_efficiency_pct))];
    Explanation::of(Term::of(engine_w::FORMULA, given))
}

fn by_rule(s: &Instant) -> Explanation {
    Explanation::of(Term::of(rule_w::FORMULA, [amperes(s), blocks(s)]))
        .note("A horsepower for each 25 A at 12 V.")
}

fn carries(s: &Instant) -> Explanation {
    let kg_m = table(s).map_or(f64::NAN, |table| table.kg_m);
    let weight = [
        told(
            "Weight of the belt, all belts or ribs together, from memory",
            "kg/m",
            kg_m,
        ),
        at_speed(s, &BELT_M_S),
    ];
    let given = [
        of(s, &TIGHT_N),
        Term::of(own_pull_n::FORMULA, weight),
        of(s, &SLIPS_AT_RATIO),
        at_speed(s, &BELT_M_S),
    ];
    Explanation::of(Term::of(carries_w::FORMULA, given))
        .note("The pull that the belt hands on when it is about to slip, times its speed; m · v² is the pull from its own weight. For a new, tight and dry belt.")
}

fn used_of_formula(s: &Instant) -> Explanation {
    let given = [shaft_w(s), at_speed(s, &CARRIES_W).symbol("P_most")];
    Explanation::of(Term::of(used_pct::FORMULA, given))
}

fn used_of_rule(s: &Instant) -> Explanation {
    let given = [amperes(s).symbol("I"), of(s, &RULE_HIGH_A).symbol("I_rule")];
    Explanation::of(Term::of(used_pct::FORMULA, given))
}

fn side(s: &Instant) -> Explanation {
    let usual = table(s).map_or(f64::NAN, |table| table.usual_ratio);
    let ratio = Term::Least(vec![
        of(s, &SLIPS_AT_RATIO).symbol("r_slip"),
        told(
            "Tight over slack side that such a belt is tightened for, from memory",
            "",
            usual,
        )
        .symbol("r_usual"),
    ]);
    let pull = Term::of(transmits_n::FORMULA, [shaft_w(s), at_speed(s, &BELT_M_S)]);
    Explanation::of(Term::of(side_n::FORMULA, [pull, ratio, wrap_in_radians(s)]))
        .note("The pulls of both sides of the belt added as arrows.")
}
