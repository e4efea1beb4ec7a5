//! The drawing: three fields of lines over one axis of time, and a band that
//! shows what limits when. Lines differ by their strokes, not by colour alone.

use ampwright_core::analysis::{Moment, RunReport};
use ampwright_core::boat::{RegulatorKind, Worksheet};
use ampwright_core::units::QuantityKind;
use ampwright_core::units::quantity::celsius;
use leptos::ev::PointerEvent;
use leptos::prelude::*;
use leptos::svg;

use super::limits::LimitBand;
use crate::components::chart::{
    Axis, ChartLine, Cursor, Field, LEFT, LEVEL_ABOVE, LabelBox, LevelMark, LineStyle, RIGHT,
    Scale, Stroke, TimeTicks, WIDTH, Words, path,
};
use crate::state::AppState;

const HEIGHT: f64 = 424.0;
/// Top and bottom of each field.
const AMPERES: (f64, f64) = (18.0, 128.0);
const HEAT: (f64, f64) = (158.0, 288.0);
const CHARGE: (f64, f64) = (318.0, 372.0);
const BAND: (f64, f64) = (380.0, 398.0);

/// A line of a field.
struct Line {
    style: LineStyle,
    name: &'static str,
    figure: fn(&Moment) -> f64,
}

const fn line(style: LineStyle, name: &'static str, figure: fn(&Moment) -> f64) -> Line {
    Line {
        style,
        name,
        figure,
    }
}

static AMPERE_LINES: [Line; 2] = [
    line(LineStyle::First, "alternator", |moment| moment.alternator_a),
    line(LineStyle::Second, "into the bank", |moment| moment.bank_a),
];
static HEAT_LINES: [Line; 4] = [
    line(LineStyle::First, "winding", |moment| {
        moment.alternators[0].winding_c
    }),
    line(LineStyle::Third, "rectifier", |moment| {
        moment.alternators[0].rectifier_c
    }),
    line(LineStyle::Second, "case", |moment| {
        moment.alternators[0].case_c
    }),
    line(LineStyle::Fourth, "air", |moment| moment.air_c),
];
static CHARGE_LINES: [Line; 1] = [line(LineStyle::First, "state of charge", |moment| {
    moment.charge_pct
})];

/// The drawing, with the line where it is read off.
#[component]
pub fn RunDrawing() -> impl IntoView {
    let state = AppState::expect();
    let time = Memo::new(move |_| {
        state.settled(|_, report| Scale::new(0.0, report.analyses.run.minutes, LEFT, RIGHT))
    });
    let amperes = Memo::new(move |_| {
        let reader = state.reader.get();
        let (low, high) = ends(state, &AMPERE_LINES);
        let range = (low.min(0.0), high.max(10.0));
        Axis::rounded(&reader, QuantityKind::Current, range, upwards(AMPERES))
    });
    let marks = Memo::new(move |_| {
        let (_, highest) = ends(state, &HEAT_LINES);
        let mut marks = state.settled(|sheet, _| levels(sheet));
        marks.retain(|(level_c, _)| *level_c < highest + 25.0);
        marks
    });
    let heat = Memo::new(move |_| {
        let reader = state.reader.get();
        let (low, high) = ends(state, &HEAT_LINES);
        let levels = marks.get().into_iter().map(|(level_c, _)| level_c);
        let range = (low, levels.fold(high, f64::max));
        Axis::rounded(&reader, QuantityKind::Temperature, range, upwards(HEAT))
    });
    let charge = Memo::new(move |_| {
        let reader = state.reader.get();
        Axis::new(
            &reader,
            QuantityKind::Percent,
            (0.0, 100.0),
            upwards(CHARGE),
        )
    });
    let told = Memo::new(move |_| {
        let told = |(level_c, words): (f64, &str)| {
            let words = format!("{words} {}", state.number(celsius(level_c)));
            (heat.get().place(level_c), words)
        };
        marks.get().into_iter().map(told).collect::<Vec<_>>()
    });
    let level = |(y, words): (f64, String)| view! { <LevelMark y words /> };
    let opening = Memo::new(move |_| {
        let opening = state.settled(|_, report| report.analyses.run.opening)?;
        Some(time.get().place(opening.after_s / 60.0))
    });
    let labels = Memo::new(move |_| {
        let of_level =
            |(y, words): (f64, String)| LabelBox::of((RIGHT, y - LEVEL_ABOVE), "end", &words);
        let mut labels: Vec<LabelBox> = told.get().into_iter().map(of_level).collect();
        labels.extend(opening.get().map(|x| {
            let (at, anchor) = opens_at(x);
            LabelBox::of(at, anchor, OPENS)
        }));
        labels
    });
    let cursor = Memo::new(move |_| {
        let moment = state.moment()?;
        Some(time.get().place(moment.minute))
    });
    let node = NodeRef::<svg::Svg>::new();
    let read_off = move |event: PointerEvent| {
        // A finger that only hovers reads nothing.
        let moves = event.type_() == "pointermove" && event.buttons() == 0;
        if moves && event.pointer_type() != "mouse" {
            return;
        }
        let Some(drawing) = node.get_untracked() else {
            return;
        };
        let place = drawing.get_bounding_client_rect();
        if place.width() > 0.0 {
            let across = (f64::from(event.client_x()) - place.left()) / place.width() * WIDTH;
            let share = (across - LEFT) / (RIGHT - LEFT);
            state.reading.set(share.clamp(0.0, 1.0));
        }
    };
    view! {
        <svg
            viewBox=format!("0 0 {WIDTH} {HEIGHT}")
            role="img"
            aria-labelledby="chart-title"
            node_ref=node
            on:pointerdown=read_off
            on:pointermove=read_off
        >
            <g id="run-plot">
                <Lines field=AMPERES ticks=4.0 time axis=amperes lines=&AMPERE_LINES />
                <Lines field=HEAT ticks=5.0 time axis=heat lines=&HEAT_LINES />
                <Lines field=CHARGE ticks=2.0 time axis=charge lines=&CHARGE_LINES />
                <Cursor x=cursor fields=vec![AMPERES, HEAT, CHARGE, BAND] labels />
                {move || told.get().into_iter().map(level).collect_view()}
                {move || opening.get().map(|x| view! { <Disconnects x /> })}
                <LimitBand band=BAND time />
                <TimeTicks time y=HEIGHT - 12.0 />
            </g>
        </svg>
    }
}

/// From the bottom of a field to its top.
fn upwards((top, bottom): (f64, f64)) -> (f64, f64) {
    (bottom, top)
}

/// Temperatures worth knowing \[°C\].
fn levels(sheet: &Worksheet) -> Vec<(f64, &'static str)> {
    let mut levels = vec![(sheet.inputs.alt.class.limit_c(), "winding limit")];
    if sheet.inputs.reg.kind == RegulatorKind::External {
        levels.push((sheet.inputs.reg.set_point_c, "regulator holds"));
    }
    levels
}

/// The lowest and the highest figure of lines.
fn ends(state: AppState, lines: &[Line]) -> (f64, f64) {
    state.settled(|_, report| {
        let series = &report.analyses.run.series;
        let figures = lines.iter().flat_map(|line| series.iter().map(line.figure));
        figures.fold((f64::MAX, f64::MIN), |(low, high), figure| {
            (low.min(figure), high.max(figure))
        })
    })
}

/// A field and its lines.
#[component]
fn Lines(
    field: (f64, f64),
    ticks: f64,
    time: Memo<Scale>,
    axis: Memo<Axis>,
    lines: &'static [Line],
) -> impl IntoView {
    let state = AppState::expect();
    let names = lines.iter().map(|line| (line.style, line.name)).collect();
    let drawn = |line: &'static Line| {
        let path = Signal::derive(move || {
            let (time, axis) = (time.get(), axis.get());
            state.settled(|_, report| draw(&report.analyses.run, &time, &axis, line.figure))
        });
        view! { <ChartLine style=line.style d=path /> }
    };
    view! {
        <g class="field">
            <Field field ticks time axis names />
            {lines.iter().map(drawn).collect_view()}
        </g>
    }
}

fn draw(run: &RunReport, time: &Scale, axis: &Axis, figure: fn(&Moment) -> f64) -> String {
    let places = run.series.iter();
    path(places.map(|moment| (time.place(moment.minute), axis.place(figure(moment)))))
}

/// What is said where the battery disconnects.
const OPENS: &str = "the battery stops the charging here";

/// Where that is said, and by which of its ends it is anchored.
fn opens_at(x: f64) -> ((f64, f64), &'static str) {
    let y = AMPERES.1 - 6.0;
    if x < 0.5 * (LEFT + RIGHT) {
        ((x + 4.0, y), "start")
    } else {
        ((x - 4.0, y), "end")
    }
}

/// Where the battery disconnects: what follows is as if it had not.
#[component]
fn Disconnects(x: f64) -> impl IntoView {
    let (at, anchor) = opens_at(x);
    view! {
        <Stroke class="mark-line open" from=(x, AMPERES.0) to=(x, BAND.1) />
        <Words class="mark-words open" at anchor says=OPENS />
    }
}
