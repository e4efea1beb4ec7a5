//! Load dump, the battery disconnecting under load: what protects against the
//! voltage spike, and what is left of it.

use ampwright_core::analysis::load_dump::{DumpReport, Mitigation};
use ampwright_core::boat::{SectionId, WhichAlternator};
use ampwright_core::findings::Finding;
use ampwright_core::guidance::CautionTopic;
use ampwright_core::text::{self, load_dump as words};
use ampwright_core::units::quantity::{amperes, rpm, volts};
use ampwright_core::units::{Quantity, QuantityKind, Reader};
use leptos::prelude::*;

use super::bars::{Bar, BarChart, Bars};
use super::figures::{Cell, FigureTable, Figures, Line, Sentences, line};
use super::questions::Questions;
use super::{FindingsHere, alternator_heading};
use crate::components::Caution;
use crate::state::AppState;

/// What the fold holds.
#[component]
pub fn LoadDump() -> impl IntoView {
    let state = AppState::expect();
    let dumps = Memo::new(move |_| {
        let reader = state.reader.get();
        state.settled(|_, report| {
            let dumps = &report.analyses.load_dump.alternators;
            let words = |dump| DumpWords::of(dump, dumps.len() > 1, &reader);
            dumps.iter().map(words).collect::<Vec<_>>()
        })
    });
    let packs = Memo::new(move |_| {
        let reader = state.reader.get();
        state.settled(|_, report| {
            let packs = report.analyses.packs.as_ref();
            packs.map(|packs| text::packs::sentences(packs, &reader))
        })
    });
    let sensor = Memo::new(move |_| {
        let reader = state.reader.get();
        state.settled(|_, report| {
            let loss = report.analyses.sensor_loss.as_ref();
            loss.map(|loss| text::sensor::sentences(loss, &reader))
        })
    });
    view! {
        <Caution topic=CautionTopic::Disconnect />
        <div id="fit-guard-told">
            <FindingsHere belongs=|finding| {
                matches!(
                    finding,
                    Finding::LoadDump(_)
                        | Finding::Link(_)
                        | Finding::Packs(_)
                        | Finding::Sensor(_)
                        | Finding::Sharing(_)
                )
            } />
            {move || dumps.get().into_iter().map(|dump| view! { <Left dump /> }).collect_view()}
        </div>
        <Questions of=SectionId::guard />
        <div id="fit-guard-more">
            {move || packs.get().map(|sentences| view! { <Sentences sentences /> })}
            {move || dumps.get().into_iter().map(|dump| view! { <More dump /> }).collect_view()}
            {move || {
                sensor
                    .get()
                    .map(|sentences| {
                        view! {
                            <h3>"If the temperature sensor fails"</h3>
                            <Sentences sentences />
                        }
                    })
            }}
        </div>
    }
}

/// One alternator's load dump, as it is told.
#[derive(Clone, PartialEq)]
struct DumpWords {
    alternator: WhichAlternator,
    heading: Option<&'static str>,
    /// What is left, in sentences.
    left: Vec<String>,
    bars: Bars,
    protections: Vec<Protection>,
    figures: Figures,
    sentences: Vec<String>,
}

/// Something that protects, as it is told.
#[derive(Clone, PartialEq)]
struct Protection {
    code: &'static str,
    standing: &'static str,
    what: &'static str,
    advice: String,
}

impl Protection {
    fn of(dump: &DumpReport, mitigation: &Mitigation, reader: &Reader) -> Protection {
        Protection {
            code: mitigation.code.name(),
            standing: words::standing(mitigation.standing),
            what: words::mitigation(mitigation.code),
            advice: words::advice(dump, mitigation, reader),
        }
    }
}

/// A voltage, whole \[V\].
fn whole_volts(value: f64) -> Quantity {
    volts(value).to(0)
}

impl DumpWords {
    fn of(dump: &DumpReport, of_two: bool, reader: &Reader) -> DumpWords {
        let withstand = reader.show(whole_volts(dump.bear_v));
        let left = [
            ("Left when the bank disconnects", dump.bank_left_v()),
            ("Left when the switch is opened", dump.switch_left_v()),
        ];
        let sentence = |(when, left_v): (&str, Option<f64>)| {
            let left = reader.show(whole_volts(left_v?));
            Some(format!(
                "{when}: {left}; the electronics withstand {withstand}"
            ))
        };
        DumpWords {
            alternator: dump.alternator,
            heading: alternator_heading(of_two, dump.alternator),
            left: left.into_iter().filter_map(sentence).collect(),
            bars: Bars {
                limit: dump.bear_v,
                limit_words: format!("withstand: {withstand}"),
                bars: bars(dump, reader),
            },
            protections: dump
                .mitigations
                .iter()
                .map(|mitigation| Protection::of(dump, mitigation, reader))
                .collect(),
            figures: figures(dump, reader),
            sentences: words::sentences(dump, reader),
        }
    }
}

/// Peaks and what is left of them, beside what the standard tests with.
fn bars(dump: &DumpReport, reader: &Reader) -> Vec<Bar> {
    let bar = |what, to: Option<f64>| {
        to.map(|to| Bar {
            what,
            from: 0.0,
            to,
            words: reader.show(whole_volts(to)),
        })
    };
    let standard = dump.standard_low_v.zip(dump.standard_high_v);
    [
        bar("peak, charging", Some(dump.charging.peak_v)),
        bar("peak, top speed", Some(dump.top.peak_v)),
        standard.map(|(from, to)| Bar {
            what: "standard's test",
            from,
            to,
            words: reader.range(whole_volts(from), whole_volts(to)),
        }),
        bar("left, bank", dump.bank_left_v()),
        bar("left, switch", dump.switch_left_v()),
    ]
    .into_iter()
    .flatten()
    .collect()
}

/// Everything at both speeds.
fn figures(dump: &DumpReport, reader: &Reader) -> Figures {
    let (now, top) = (&dump.charging, &dump.top);
    let ohms = |decimals| move |value| Quantity::new(value, QuantityKind::Resistance).to(decimals);
    let joules = |value| Quantity::new(value, QuantityKind::SpikeEnergy);
    let test_v = Cell::between(
        dump.standard_low_v.map(whole_volts),
        dump.standard_high_v.map(whole_volts),
    );
    let test_ohm = Cell::between(
        dump.standard_low_ohm.map(ohms(1)),
        dump.standard_high_ohm.map(ohms(1)),
    );
    let test_j = [now, top].map(|at| {
        Cell::between(
            at.standard_low_j.map(joules),
            at.standard_high_j.map(joules),
        )
    });
    let lines = [
        line("Engine", [now.engine_rpm, top.engine_rpm], rpm),
        line("Current cut off", [now.amperes, top.amperes], amperes),
        line("Voltage before", [now.volts, top.volts], |v| volts(v).to(1)),
        line(
            "Internal resistance",
            [now.internal_ohm, top.internal_ohm],
            ohms(2),
        ),
        Line("… in the standard's test", [test_ohm; 2]),
        line("Peak, our estimate", [now.peak_v, top.peak_v], whole_volts),
        Line("… in the standard's test", [test_v; 2]),
        line(
            "A surge suppressor takes of our peak",
            [now.clamp_j, top.clamp_j],
            joules,
        ),
        Line("… of the standard's", test_j),
        line(
            "Left when the bank disconnects",
            [now.bank_left_v, top.bank_left_v],
            whole_volts,
        ),
        line(
            "Left when the switch is opened",
            [now.switch_left_v, top.switch_left_v],
            whole_volts,
        ),
        line("Electronics withstand", [dump.bear_v; 2], whole_volts),
    ];
    Figures::new(reader, "At both speeds", ["charging", "top speed"], lines)
}

/// What is left, and every protection with its standing.
#[component]
fn Left(dump: DumpWords) -> impl IntoView {
    let suffix = match dump.alternator {
        WhichAlternator::First => "",
        WhichAlternator::Second => "-second",
    };
    let protection = |protection: Protection| {
        let standing = protection.standing;
        view! {
            <li id=format!("fit-defence-{}{suffix}", protection.code) data-stands=standing>
                <span class="standing">{standing}</span>
                <span>
                    <b>{protection.what} "."</b>
                    " "
                    {protection.advice}
                </span>
            </li>
        }
    };
    view! {
        {dump.heading.map(|heading| view! { <h3>{heading}</h3> })}
        {dump.left.into_iter().map(|left| view! { <p class="told">{left}</p> }).collect_view()}
        <BarChart bars=dump.bars />
        <ul class="defences">{dump.protections.into_iter().map(protection).collect_view()}</ul>
    }
}

/// The figures and the sentences.
#[component]
fn More(dump: DumpWords) -> impl IntoView {
    view! {
        {dump.heading.map(|heading| view! { <h3>{heading}</h3> })}
        <FigureTable figures=dump.figures />
        <Sentences sentences=dump.sentences />
    }
}
