//! Worksheets drawn at random from the table of fields.

use std::fmt;

use ampwright_core::Worksheet;
use ampwright_core::boat::Section;
use ampwright_core::boat::{
    Arrangement, Drawn as LoadDrawn, Key, Leg, LegRow, Load, LoadRow, Month, MonthRow,
    WhichAlternator,
};
use ampwright_core::exchange::to_link;
use ampwright_core::guidance::commissioning::all_ids;
use ampwright_core::schema::{Confidence, FieldSpec, Kind, Value};
use proptest::prelude::*;

/// A worksheet that shows itself as a link.
#[derive(Clone)]
pub struct Drawn(pub Worksheet);

impl fmt::Debug for Drawn {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&to_link(&self.0))
    }
}

/// Any worksheet the form would accept, however odd.
pub fn any_sheet() -> BoxedStrategy<Drawn> {
    // All fields at random, or most of them as they stand.
    prop_oneof![sheet(1, number_in), sheet(20, number_in)].boxed()
}

/// A boat somebody might own: every number within a fifth of its usual value,
/// volts within 2 % of what the system has, charged to 90 % at most.
///
/// Left out are a charge voltage no higher than the bank's rest voltage, where
/// 13 mV decide about amps, and the endless tail of a lead bank.
pub fn normal_boat() -> BoxedStrategy<Drawn> {
    let volts = ["bank_charge_v", "reg_fixed_v", "alt_test_v", "alt2_test_v"];
    (sheet(1, number_near), 0.98..1.02f64)
        .prop_map(move |(mut drawn, factor)| {
            let usual_v = 14.1 * drawn.0.inputs.bank.nominal_v.blocks();
            for key in volts.into_iter().filter_map(Key::named) {
                if drawn.0.inputs.get(key) != Value::Absent {
                    let value = Value::Number(factor * usual_v);
                    drawn.0.state(key, value).expect("within its range");
                }
            }
            fit_alternators(&mut drawn.0);
            // The last percents of a lead bank are an endless tail.
            let to_pct = &mut drawn.0.inputs.run.to_pct;
            *to_pct = to_pct.min(90.0);
            drawn
        })
        .boxed()
}

/// Gives each alternator the voltage of the battery its cable leads to: nobody
/// has another one for long.
fn fit_alternators(sheet: &mut Worksheet) {
    for (name, which) in [
        ("alt_nominal_v", WhichAlternator::First),
        ("alt2_nominal_v", WhichAlternator::Second),
    ] {
        let installed = sheet.inputs.alternator(which);
        let at = installed.map_or(0, |installed| match installed.battery_blocks() {
            1.0 => 1,
            2.0 => 2,
            _ => 3,
        });
        let key = Key::named(name).expect("an input");
        sheet.state(key, Value::Choice(at)).expect("an option");
    }
}

type Numbers = fn(f64, f64, f64) -> BoxedStrategy<f64>;

fn sheet(default_weight: u32, numbers: Numbers) -> impl Strategy<Value = Drawn> {
    let values: Vec<_> = Key::all()
        .map(|key| stated(key, default_weight, numbers))
        .collect();
    let loads = proptest::collection::vec(load(numbers), 0..4);
    let arrangements = proptest::collection::vec(arrangement(numbers), 0..2);
    let ids: Vec<&str> = all_ids().collect();
    let done = proptest::sample::subsequence(ids, 0..6);
    let parts = (loads, arrangements, done);
    ("\\PC{0,12}", values, parts).prop_map(|(name, values, (loads, arrangements, done))| {
        let mut sheet = Worksheet {
            name,
            loads,
            arrangements,
            done: done.into_iter().map(String::from).collect(),
            ..Worksheet::default()
        };
        for (key, stated) in Key::all().zip(values) {
            if let Some((value, known)) = stated {
                sheet.state(key, value).expect("drawn from its range");
                sheet.known.insert(key, known);
            }
        }
        Drawn(sheet)
    })
}

fn stated(
    key: Key,
    default_weight: u32,
    numbers: Numbers,
) -> BoxedStrategy<Option<(Value, Confidence)>> {
    let known = proptest::sample::select(&Confidence::ALL[..]);
    prop_oneof![
        default_weight => Just(None),
        4 => (input(key, numbers), known).prop_map(Some),
    ]
    .boxed()
}

/// What an input may hold.
fn input(key: Key, numbers: Numbers) -> BoxedStrategy<Value> {
    value(key.spec(), Worksheet::default().figure(key), numbers)
}

/// What a field may hold, one that may be left empty around its usual figure.
fn value(spec: &'static FieldSpec, usual: Option<f64>, numbers: Numbers) -> BoxedStrategy<Value> {
    match spec.kind {
        Kind::Number {
            low, high, default, ..
        } => numbers(low, high, default).prop_map(Value::Number).boxed(),
        Kind::Optional { low, high, .. } => {
            let usual = usual.unwrap_or(high);
            prop_oneof![
                Just(Value::Absent),
                numbers(low, high, usual).prop_map(Value::Number),
            ]
            .boxed()
        }
        Kind::Choice { options, .. } => (0..options.len()).prop_map(Value::Choice).boxed(),
    }
}

/// Evenly or by orders of magnitude across the range, or at one of its ends.
fn number_in(low: f64, high: f64, _usual: f64) -> BoxedStrategy<f64> {
    let span = high - low;
    let spread = (-6.0..=0.0f64).prop_map(move |power| low + span * 10f64.powf(power));
    prop_oneof![
        4 => low..=high,
        3 => spread.prop_map(move |x| x.clamp(low, high)),
        1 => Just(low),
        1 => Just(high),
    ]
    .boxed()
}

/// Within a fifth of the usual value.
fn number_near(low: f64, high: f64, usual: f64) -> BoxedStrategy<f64> {
    let reach = 0.2 * usual.abs();
    (usual - reach..=usual + reach)
        .prop_map(move |x| x.clamp(low, high))
        .boxed()
}

fn arrangement(numbers: Numbers) -> impl Strategy<Value = Arrangement> {
    let keys: Vec<Key> = Key::all().collect();
    let change = proptest::sample::select(keys)
        .prop_flat_map(move |key| input(key, numbers).prop_map(move |value| (key, value)));
    ("\\PC{0,12}", proptest::collection::vec(change, 0..5)).prop_map(|(name, changes)| {
        let mut arrangement = Arrangement {
            name,
            changes: Vec::new(),
        };
        for (key, value) in changes {
            arrangement.put(key, Some(value));
        }
        arrangement
    })
}

/// A worksheet with some of its months filled in.
pub fn with_months(sheet: impl Strategy<Value = Drawn>) -> impl Strategy<Value = Drawn> {
    let any = proptest::collection::vec(month(number_in), 12);
    let usual = proptest::collection::vec(month(number_near), 12);
    (sheet, prop_oneof![any, usual]).prop_map(|(mut drawn, months)| {
        for (month, row) in Month::ALL.iter().zip(months) {
            *drawn.0.months.row_mut(*month) = row;
        }
        drawn
    })
}

/// A worksheet with legs of the day, and with loads that run with the engine.
pub fn with_legs(sheet: impl Strategy<Value = Drawn>) -> impl Strategy<Value = Drawn> {
    let legs = proptest::collection::vec(leg(), 1..4);
    let with_engine = proptest::collection::vec(any::<bool>(), 4);
    (sheet, legs, with_engine).prop_map(|(mut drawn, legs, with_engine)| {
        drawn.0.legs = legs;
        for (load, with_engine) in drawn.0.loads.iter_mut().zip(with_engine) {
            load.row.drawn = match with_engine {
                true => LoadDrawn::WithEngine,
                false => LoadDrawn::OverDay,
            };
        }
        drawn
    })
}

/// A leg somebody might enter: some without a time, most after a pause.
fn leg() -> impl Strategy<Value = Leg> {
    let column = |field: &'static ampwright_core::boat::Field<LegRow>| {
        let drawn = value(&field.spec, Some(60.0), number_in);
        prop_oneof![1 => Just(field.spec.default()), 2 => drawn].boxed()
    };
    let columns: Vec<_> = LegRow::FIELDS.iter().map(column).collect();
    ("\\PC{0,12}", columns).prop_map(|(name, values)| {
        let mut leg = Leg {
            name,
            row: LegRow::default(),
        };
        for (field, value) in LegRow::FIELDS.iter().zip(values) {
            field.set(&mut leg.row, value);
        }
        leg
    })
}

/// Air, water, bank, sun, use and days of a usual month.
const USUAL_MONTH: [f64; 6] = [20.0, 17.0, 22.0, 4.0, 100.0, 15.0];

/// Most months say nothing.
fn month(numbers: Numbers) -> impl Strategy<Value = MonthRow> {
    let columns: Vec<_> = MonthRow::FIELDS
        .iter()
        .zip(USUAL_MONTH)
        .map(|(field, usual)| {
            let said = value(&field.spec, Some(usual), numbers);
            prop_oneof![9 => Just(Value::Absent), 1 => said].boxed()
        })
        .collect();
    columns.prop_map(|values| {
        let mut row = MonthRow::default();
        for (field, value) in MonthRow::FIELDS.iter().zip(values) {
            field.set(&mut row, value);
        }
        row
    })
}

fn load(numbers: Numbers) -> impl Strategy<Value = Load> {
    // Over the day; see `with_legs`.
    let columns: Vec<_> = LoadRow::FIELDS
        .iter()
        .filter(|field| field.name != "drawn")
        .map(|field| value(&field.spec, None, numbers))
        .collect();
    ("\\PC{0,12}", columns).prop_map(|(name, values)| {
        let mut load = Load {
            name,
            row: LoadRow::default(),
        };
        for (field, value) in LoadRow::FIELDS.iter().zip(values) {
            field.set(&mut load.row, value);
        }
        load
    })
}
