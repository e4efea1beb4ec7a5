//! Cable and fuse: the runs as a table, on a narrow screen each as an entry of
//! its own.

use ampwright_core::analysis::cable::{CableChoice, CableRun};
use ampwright_core::boat::SectionId;
use ampwright_core::findings::Finding;
use ampwright_core::guidance::CautionTopic;
use ampwright_core::text;
use ampwright_core::text::words::run_end;
use ampwright_core::units::Reader;
use ampwright_core::units::quantity::{amperes, percent, volts};
use leptos::prelude::*;

use super::FindingsHere;
use super::figures::Sentences;
use super::questions::Questions;
use crate::components::Caution;
use crate::state::AppState;

/// Heads of the columns; on a narrow screen they stand beside the figures.
const HEADS: [&str; 5] = ["Cable", "Ampacity", "Voltage drop", "Sized by", "Fuse"];

/// What the fold holds.
#[component]
pub fn CableAndFuse() -> impl IntoView {
    let state = AppState::expect();
    let runs = Memo::new(move |_| {
        let reader = state.reader.get();
        state.settled(|_, report| {
            let runs = report.analyses.cables.runs.iter();
            runs.map(|run| RunWords::of(run, &reader))
                .collect::<Vec<_>>()
        })
    });
    view! {
        <Caution topic=CautionTopic::Cable />
        <div id="fit-cable-told">
            <FindingsHere belongs=|finding| matches!(finding, Finding::Cable(_)) />
            <table class="runs" role="table" aria-label="Cable and fuse of each run">
                <thead role="rowgroup">
                    <tr role="row">
                        {HEADS
                            .map(|head| {
                                view! {
                                    <th scope="col" role="columnheader">
                                        {head}
                                    </th>
                                }
                            })
                            .collect_view()}
                    </tr>
                </thead>
                {move || runs.get().into_iter().map(|run| view! { <Run run /> }).collect_view()}
            </table>
        </div>
        <Questions of=SectionId::cable />
        <div id="fit-cable-more">
            <RestsOn />
        </div>
    }
}

/// A run as it is told.
#[derive(Clone, PartialEq)]
struct RunWords {
    code: &'static str,
    ends: String,
    carries: String,
    asks: String,
    sizes: Vec<SizeWords>,
    fuse_for: String,
    fuse_at: String,
    notes: Vec<String>,
}

/// A cable that does it: its size, and for each column a figure and what is
/// told beneath it.
#[derive(Clone, PartialEq)]
struct SizeWords {
    size: String,
    cells: [(String, String); 4],
}

impl RunWords {
    fn of(run: &CableRun, reader: &Reader) -> RunWords {
        let sizes = run.metric.iter().chain(&run.gauge);
        let notes = run.notes.iter();
        let mut notes: Vec<String> = notes.map(|note| text::cable::note(note, reader)).collect();
        notes.extend(from_memory(run, reader));
        RunWords {
            code: run.code.name(),
            ends: format!("{} – {}", run_end(run.from), run_end(run.to)),
            carries: reader.show(amperes(run.carries_a)),
            asks: text::cable::asks(run, reader),
            sizes: sizes.map(|choice| SizeWords::of(choice, reader)).collect(),
            fuse_for: text::cable::fuse(run, reader),
            fuse_at: text::cable::fuse_place(run, reader),
            notes,
        }
    }
}

/// What other rules would give, where it is known from memory only.
fn from_memory(run: &CableRun, reader: &Reader) -> Option<String> {
    let gauge = run
        .gauge_from_memory
        .map(|gauge| format!(" the circular-mil rule gives {gauge}."));
    let ampacity = run.metric.and_then(|choice| {
        let ampacity = reader.show(amperes(choice.ampacity_from_memory_a?));
        Some(format!(" ISO 10133 allows {} {ampacity}.", choice.size))
    });
    let beside = [gauge, ampacity].into_iter().flatten().collect::<String>();
    (!beside.is_empty()).then(|| format!("Beside it, from memory:{beside}"))
}

impl SizeWords {
    fn of(choice: &CableChoice, reader: &Reader) -> SizeWords {
        let each = if choice.cables > 1 { " each" } else { "" };
        let fuse_range = reader.range(
            amperes(choice.fuse_least_a.ceil()),
            amperes(choice.fuse_most_a.floor()),
        );
        SizeWords {
            size: text::cable::size(choice),
            cells: [
                (
                    reader.show(amperes(choice.ampacity_a)) + each,
                    reader.show(percent(choice.spare_pct)) + " to spare",
                ),
                (
                    reader.show(volts(choice.drop_v).to(2)),
                    reader.show(volts(choice.spare_v).to(2)) + " to spare",
                ),
                (
                    text::cable::sized_by(choice.bound).to_string(),
                    String::new(),
                ),
                // One rating that is sold has a half.
                (
                    reader.show(amperes(choice.fuse_a).up_to(1)) + each,
                    fuse_range,
                ),
            ],
        }
    }
}

/// A run: what is asked of it, both sizes, its fuse.
#[component]
fn Run(run: RunWords) -> impl IntoView {
    view! {
        <tbody role="rowgroup" id=format!("fit-run-{}", run.code)>
            <tr role="row" class="name">
                <th scope="rowgroup" role="rowheader" colspan="5">
                    <span>{run.ends}</span>
                    " "
                    <b>{run.carries}</b>
                </th>
            </tr>
            <tr role="row" class="whole">
                <td role="cell" colspan="5">
                    {run.asks}
                </td>
            </tr>
            {run.sizes.into_iter().map(|size| view! { <Size size /> }).collect_view()}
            <tr role="row" class="whole">
                <td role="cell" colspan="5">
                    <p>
                        <b>{run.fuse_for}</b>
                        " "
                        {run.fuse_at}
                    </p>
                    {run.notes.into_iter().map(|note| view! { <p>{note}</p> }).collect_view()}
                </td>
            </tr>
        </tbody>
    }
}

/// A size: each figure, and beneath it what is to spare.
#[component]
fn Size(size: SizeWords) -> impl IntoView {
    let [_, heads @ ..] = HEADS;
    let cell = |(head, (figure, beneath)): (&'static str, (String, String))| {
        view! {
            <td role="cell" data-head=head>
                <span>{figure} <small>{beneath}</small></span>
            </td>
        }
    };
    view! {
        <tr role="row" class="size">
            <th scope="row" role="rowheader">
                {size.size}
            </th>
            {heads.into_iter().zip(size.cells).map(cell).collect_view()}
        </tr>
    }
}

/// What the figures rest on, the rule, and where they come from.
#[component]
fn RestsOn() -> impl IntoView {
    let state = AppState::expect();
    let base = Signal::derive(move || {
        let reader = state.reader.get();
        state.settled(|_, report| text::cable::basis(&report.analyses.cables, &reader))
    });
    let remarks = Memo::new(move |_| {
        let reader = state.reader.get();
        state.settled(|_, report| {
            let remarks = report.analyses.cables.remarks.iter();
            remarks
                .map(|remark| text::cable::remark(remark, &reader))
                .collect::<Vec<_>>()
        })
    });
    let lists = Memo::new(move |_| {
        state.settled(|_, report| {
            let cables = &report.analyses.cables;
            let owned = |all: &[&str]| all.iter().map(|one| one.to_string()).collect::<Vec<_>>();
            [
                owned(text::cable::rule(cables.flag)),
                owned(text::cable::SOURCES),
            ]
        })
    });
    let list = |(heading, sentences)| {
        view! {
            <h3>{heading}</h3>
            <Sentences sentences class="remarks margin" />
        }
    };
    view! {
        <p class="margin">{base}</p>
        {move || {
            let remark = |remark| view! { <p class="margin">{remark}</p> };
            remarks.get().into_iter().map(remark).collect_view()
        }}
        {move || {
            let headings = ["The rule", "Where this comes from"];
            headings.into_iter().zip(lists.get()).map(list).collect_view()
        }}
    }
}
