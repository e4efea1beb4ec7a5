//! Belt and shaft: by formula and by rule of thumb.

use ampwright_core::analysis::belt::{BeltLoad, BeltReport};
use ampwright_core::boat::{SectionId, WhichAlternator};
use ampwright_core::findings::Finding;
use ampwright_core::guidance::CautionTopic;
use ampwright_core::text;
use ampwright_core::units::quantity::{amperes, count, percent, rpm};
use ampwright_core::units::{Quantity, QuantityKind, Reader};
use leptos::prelude::*;

use super::bars::{Bar, BarChart, Bars};
use super::figures::{Cell, FigureTable, Figures, Line, Sentences, line};
use super::questions::Questions;
use super::{FindingsHere, alternator_heading};
use crate::components::Caution;
use crate::state::AppState;

/// Shares above this are told as this \[%\].
const MOST_PCT: f64 = 999.0;

/// What the fold holds.
#[component]
pub fn BeltAndShaft() -> impl IntoView {
    let state = AppState::expect();
    let questions = Memo::new(move |_| {
        let reader = state.reader.get();
        state.settled(|_, report| {
            let open = report.questions.iter();
            open.map(|question| text::question(question, &reader))
                .collect::<Vec<_>>()
        })
    });
    let belts = Memo::new(move |_| {
        let reader = state.reader.get();
        state.settled(|_, report| {
            let belts = &report.analyses.belts;
            let belt = |belt| BeltWords::of(belt, belts.len() > 1, &reader);
            belts.iter().map(belt).collect::<Vec<_>>()
        })
    });
    let has_second = Signal::derive(move || {
        state.sheet.with(|sheet| {
            let second = sheet.inputs.alternator(WhichAlternator::Second);
            second.is_some()
        })
    });
    view! {
        <Caution topic=CautionTopic::Belt />
        <div id="fit-belt-told">
            <FindingsHere belongs=|finding| matches!(finding, Finding::Belt(_)) />
            {move || {
                let question = |question| view! { <p class="lead">{question}</p> };
                questions.get().into_iter().map(question).collect_view()
            }}
            {move || belts.get().into_iter().map(|belt| view! { <Used belt /> }).collect_view()}
        </div>
        <Questions of=SectionId::belt />
        <Questions of=SectionId::belt2 heading=SectionId::belt2.title() applies=has_second />
        <div id="fit-belt-more">
            {move || belts.get().into_iter().map(|belt| view! { <More belt /> }).collect_view()}
        </div>
    }
}

/// One alternator's belt, as it is told.
#[derive(Clone, PartialEq)]
struct BeltWords {
    heading: Option<&'static str>,
    /// How much of it is used; none as long as nobody has said which it is.
    used: Option<(String, Bars)>,
    tables: [Figures; 3],
    sentences: Vec<String>,
}

impl BeltWords {
    fn of(belt: &BeltReport, of_two: bool, reader: &Reader) -> BeltWords {
        let (now, top) = (&belt.charging, &belt.top);
        BeltWords {
            heading: alternator_heading(of_two, belt.alternator),
            used: belt.worst_pct.map(|worst_pct| {
                let worst = reader.show(percent(worst_pct.min(MOST_PCT)));
                (worst, used(belt, reader))
            }),
            tables: [
                side_by_side("While charging", belt, now, reader),
                side_by_side("Cold, engine at its highest", belt, top, reader),
                both(belt, reader),
            ],
            sentences: text::belt::sentences(belt, reader),
        }
    }
}

/// How much of what a belt carries is used.
fn used(belt: &BeltReport, reader: &Reader) -> Bars {
    let bars = [
        ("formula, charging", belt.charging.formula_pct),
        ("formula, top speed", belt.top.formula_pct),
        ("rule, charging", belt.charging.rule_pct),
        ("rule, top speed", belt.top.rule_pct),
    ];
    let bar = |(what, used_pct): (&'static str, Option<f64>)| {
        let used_pct = used_pct.unwrap_or_default().min(MOST_PCT);
        Bar {
            what,
            from: 0.0,
            to: used_pct,
            words: reader.show(percent(used_pct)),
        }
    };
    Bars {
        limit: 100.0,
        limit_words: "all it carries".to_string(),
        bars: bars.map(bar).into(),
    }
}

/// A power \[W\].
fn watts(value: f64) -> Quantity {
    Quantity::new(value, QuantityKind::Power)
}

/// A force \[N\].
fn newtons(value: f64) -> Quantity {
    Quantity::new(value, QuantityKind::Force)
}

/// At one engine speed: the formula beside the rule of thumb.
fn side_by_side(when: &str, belt: &BeltReport, load: &BeltLoad, reader: &Reader) -> Figures {
    let rule = Cell::between(belt.rule_low_a.map(amperes), belt.rule_high_a.map(amperes));
    let lines = [
        line("At its shaft", [load.shaft_w, load.rule_w], watts),
        Line(
            "The belt carries",
            [Cell::of(load.carries_w.map(watts)), rule],
        ),
        line("… of that used", [load.formula_pct, load.rule_pct], percent),
    ];
    let caption = format!(
        "{when}: {}, {}",
        reader.show(rpm(load.engine_rpm)),
        reader.show(amperes(load.amperes))
    );
    Figures::new(reader, caption, ["by formula", "by rule of thumb"], lines)
}

/// What has no rule of thumb.
fn both(belt: &BeltReport, reader: &Reader) -> Figures {
    let (now, top) = (&belt.charging, &belt.top);
    let torque = |value| Quantity::new(value, QuantityKind::Torque).to(1);
    let belt_speed = |value| Quantity::new(value, QuantityKind::BeltSpeed).to(1);
    let angle = |value| Quantity::new(value, QuantityKind::Angle);
    let lines = [
        line("Engine", [now.engine_rpm, top.engine_rpm], rpm),
        line(
            "Alternator's own speed",
            [now.shaft_rpm, top.shaft_rpm],
            rpm,
        ),
        line("Output", [now.amperes, top.amperes], amperes),
        line("Torque at its shaft", [now.shaft_nm, top.shaft_nm], torque),
        line("Taken from the engine", [now.engine_w, top.engine_w], watts),
        line("Belt speed", [now.belt_m_s, top.belt_m_s], belt_speed),
        line("Wrap on the smaller pulley", [belt.wrap_deg; 2], angle),
        line("Most pull of the tight side", [belt.tight_n; 2], newtons),
        line(
            "Slips when tight is slack times",
            [belt.slips_at_ratio; 2],
            |ratio| count(ratio).to(1),
        ),
        line(
            "Pull on the crankshaft's end",
            [now.side_n, top.side_n],
            newtons,
        ),
    ];
    Figures::new(
        reader,
        "The belt at both speeds",
        ["charging", "top speed"],
        lines,
    )
}

/// How much of a belt is used.
#[component]
fn Used(belt: BeltWords) -> impl IntoView {
    belt.used.map(|(worst, bars)| {
        view! {
            {belt.heading.map(|heading| view! { <h3>{heading}</h3> })}
            <p class="told">"Used of what the belt carries, at worst: " {worst}</p>
            <BarChart bars />
        }
    })
}

/// The figures and the sentences.
#[component]
fn More(belt: BeltWords) -> impl IntoView {
    view! {
        {belt.heading.map(|heading| view! { <h3>{heading}</h3> })}
        {belt.tables.map(|figures| view! { <FigureTable figures /> }).collect_view()}
        <Sentences sentences=belt.sentences />
    }
}
