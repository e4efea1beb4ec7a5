//! What workings are made from: the boat as prepared numbers, its run, and the
//! moments that are looked at.

use super::expr::{Expr, From, Leaf, leaf};
use super::lines::{self, Line};
use super::symbols::symbol;
use super::{Made, Making};
use crate::charge::plant::{MachineState, Moment, Plant};
use crate::charge::run::{Fineness, Trace, charge};
use crate::charge::soak::{Soak, soak};
use crate::charge::steady::{LATE_S, Settled, settled, warm};
use crate::charge::unit::Unit;
use crate::energy::house_load_a;
use crate::physics::thermal::Temperatures;
use crate::report::Report;
use crate::worksheet::{Inputs, Key, Worksheet};

/// A moment that is looked at.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum At {
    /// Everything settled.
    Hot,
    /// When the run begins.
    Start,
    /// Half-way through its time.
    Mid,
    /// When the shafts take most.
    Hardest,
    /// When a part of a machine (0 the alternator, 1 the second one) is hottest.
    Peak(usize, Part),
    /// The minute somebody asks for.
    Minute,
    /// No moment matters.
    Never,
}

/// A part that gets hot.
#[derive(Debug, Clone, Copy, PartialEq)]
pub(super) enum Part {
    Winding,
    Case,
    Rectifier,
    Air,
}

impl Part {
    pub(super) fn of(self) -> fn(&Temperatures) -> f64 {
        match self {
            Part::Winding => |t| t.winding_c,
            Part::Case => |t| t.body_c,
            Part::Rectifier => |t| t.rectifier_c,
            Part::Air => |t| t.air_c,
        }
    }
}

/// Everything at one moment.
pub(super) struct View {
    pub(super) seconds: f64,
    pub(super) charge: f64,
    pub(super) machines: [MachineState; 2],
    pub(super) moment: Moment,
}

/// A boat to explain.
pub(super) struct Boat<'a> {
    pub(super) sheet: &'a Worksheet,
    pub(super) report: &'a Report,
    pub(super) plant: Plant,
    pub(super) trace: Trace,
    pub(super) hot: Settled,
    pub(super) minute: f64,
}

impl Boat<'_> {
    pub(super) fn new<'a>(sheet: &'a Worksheet, report: &'a Report) -> Boat<'a> {
        let run = &sheet.inputs.run;
        let plant = Plant::new(&sheet.inputs, house_load_a(sheet));
        let (from, last_s) = (run.from_pct / 100.0, run.longest_h * 3600.0);
        Boat {
            sheet,
            report,
            trace: charge(&plant, from, 1.0, last_s, &Fineness::USUAL),
            hot: settled(&plant, 0.5 * (from + run.to_pct / 100.0)),
            plant,
            minute: 0.0,
        }
    }

    pub(super) fn inputs(&self) -> &Inputs {
        &self.sheet.inputs
    }

    /// When the run ends \[s\].
    pub(super) fn end_s(&self) -> f64 {
        self.report.run.minutes * 60.0
    }

    /// The heat after it.
    pub(super) fn soak(&self) -> Soak {
        soak(&self.plant, &self.trace, self.end_s())
    }

    /// The second machine where a machine is asked for by number.
    pub(super) fn unit(&self, machine: usize) -> &Unit {
        match &self.plant.second {
            Some(second) if machine == 1 => &second.unit,
            _ => &self.plant.main,
        }
    }

    /// Everything at a moment.
    pub(super) fn view(&self, at: At) -> View {
        let seconds = match at {
            At::Hot => return self.settled_view(),
            At::Start | At::Never => 0.0,
            At::Mid => 0.5 * self.end_s(),
            At::Hardest => {
                let series = self.report.run.series.iter();
                let hardest = series.reduce(|a, b| if b.shaft_w > a.shaft_w { b } else { a });
                hardest.map_or(0.0, |moment| moment.minute * 60.0)
            }
            At::Peak(machine, part) => self.trace.peak_s(self.end_s(), machine, part.of()),
            At::Minute => self.minute * 60.0,
        };
        let sample = self.trace.sample(seconds);
        View {
            seconds,
            charge: sample.charge,
            machines: self.trace.states(seconds),
            moment: sample.moment,
        }
    }

    fn settled_view(&self) -> View {
        let run = &self.inputs().run;
        let charge = (run.from_pct + run.to_pct) / 200.0;
        let machines = [
            warm(&self.plant.main, &self.hot.temperatures),
            warm(self.unit(1), &self.hot.second),
        ];
        let [main, second] = &machines;
        View {
            seconds: LATE_S,
            charge,
            moment: self.plant.moment(LATE_S, charge, main, second),
            machines,
        }
    }

    /// An input of the worksheet.
    #[inline(never)]
    pub(super) fn input(&self, name: &str) -> Expr {
        self.keyed(name, symbol(name).to_string())
    }

    /// An input of the alternator (0) or the second one (1), by its name there.
    pub(super) fn alt(&self, machine: usize, name: &str) -> Expr {
        let first = format!("alt_{name}");
        if machine == 0 {
            self.input(&first)
        } else {
            self.keyed(&format!("alt2_{name}"), format!("{}′", symbol(&first)))
        }
    }

    fn keyed(&self, name: &str, symbol: String) -> Expr {
        let key = Key::named(name);
        let value = key.and_then(|key| self.sheet.figure(key)).unwrap_or(0.0);
        leaf(Leaf {
            symbol,
            name: key.map_or_else(String::new, label),
            value,
            unit: key
                .and_then(|key| key.spec().unit())
                .map_or("", |unit| unit.symbol),
            from: key.map_or(From::Given, From::Input),
        })
    }

    /// A figure with a working of its own, looked for by the end of its name:
    /// the one of this moment is pointed at.
    #[inline(never)]
    pub(super) fn worked(&self, symbol: &str, at: At, tail: &str, value: f64) -> Expr {
        let first = lines::find(&mut |line| line.id.ends_with(tail));
        let exact = lines::find(&mut |line| {
            line.id.ends_with(tail) && (line.at == at || line.at == At::Never)
        });
        // The one of another moment only lends its name and unit.
        leaf(Leaf {
            symbol: symbol.to_string(),
            name: exact.or(first).map_or_else(String::new, Line::name),
            value,
            unit: first.map_or("", |line| line.unit),
            from: exact.map_or(From::Given, |line| From::Working(line.id)),
        })
    }
}

/// The same figure under another name.
pub(super) fn named(mut expr: Expr, name: &str) -> Expr {
    if let Some(leaf) = expr.leaf_mut() {
        leaf.name = name.to_string();
    }
    expr
}

/// A constant, or a figure that the run gave.
#[inline(never)]
pub(super) fn given(symbol: &str, name: &str, value: f64, unit: &'static str) -> Expr {
    leaf(Leaf {
        symbol: symbol.to_string(),
        name: name.to_string(),
        value,
        unit,
        from: From::Given,
    })
}

/// What the form calls an input; a label that goes on from the one above it
/// is put together.
pub(super) fn label(key: Key) -> String {
    let own = key.spec().label;
    let above = key
        .section
        .keys()
        .take_while(|other| *other != key)
        .map(|other| other.spec().label)
        .filter(|label| !label.starts_with('…'));
    match own.strip_prefix('…').zip(above.last()) {
        Some((rest, above)) => format!("{above},{rest}"),
        None => own.to_string(),
    }
}

/// A result with its formula.
#[inline(never)]
pub(super) fn made(value: f64, expr: Expr, note: &str) -> Made {
    Box::new(Making {
        value: Some(value),
        expr: Some(expr),
        note: note.to_string(),
        also: &[],
    })
}

/// A result without one, or none.
#[inline(never)]
pub(super) fn told(value: Option<f64>, note: &str) -> Made {
    Box::new(Making {
        value,
        expr: None,
        note: note.to_string(),
        also: &[],
    })
}
