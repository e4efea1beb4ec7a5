//! The answer, in sight all the time: engine time, hot amperes, what limits
//! them, how many findings there are, and what it does not include.

use ampwright_core::Report;
use ampwright_core::findings::Severity;
use ampwright_core::text::{self, sentence};
use ampwright_core::units::quantity::{ampere_hours, amperes};
use leptos::either::Either;
use leptos::prelude::*;

use crate::components::EntryLink;
use crate::components::explanation::{Explanation, Opener};
use crate::sections::findings::class_of;
use crate::state::saved_boats::is_fresh;
use crate::state::{AppState, ExplainedAt, LeftOut};

const AT: ExplainedAt = ExplainedAt::Answer;

/// The section.
#[component]
pub fn Answer() -> impl IntoView {
    let state = AppState::expect();
    let answer = Memo::new(move |_| {
        let reader = state.reader.get();
        state.now(|_, report| text::answer(report, &reader))
    });
    let limit = Signal::derive(move || {
        state.now(|_, report| text::words::limit(report.analyses.output.hot_limit).to_string())
    });
    let is_example = Memo::new(move |_| state.now(|sheet, _| is_fresh(sheet)));
    let example =
        Signal::derive(move || if is_example.get() { "Example: " } else { "" }.to_string());
    let harmed = Signal::derive(move || state.now(|_, report| !report.verdict.survives()));
    let whole = Signal::derive(move || {
        let reader = state.reader.get();
        state.now(|sheet, report| sentence(sheet, report, &reader))
    });
    view! {
        <section class="answer" id="answer" aria-label="The answer">
            <dl>
                <RunningTime answer />
                <HotAmperes hot=Signal::derive(move || answer.get().hot_amps) />
                <div>
                    <dt>"Limited by"</dt>
                    <dd class="big word" id="answer-limit">
                        {limit}
                    </dd>
                    <dd class="small" id="answer-tally">
                        <Tally />
                    </dd>
                </div>
            </dl>
            <p id="answer-verdict" class="verdict" class:harmed=harmed class:example=is_example>
                {example} {Signal::derive(move || answer.get().verdict)}
            </p>
            <div class="under">
                <p id="answer-left-out">
                    <NotIncluded />
                </p>
                <div id="answer-working">
                    <Explanation at=AT />
                </div>
            </div>
            <p class="unseen" role="status" id="answer-whole">
                {whole}
            </p>
        </section>
    }
}

/// How long the engine, or a generator in its place, runs a day, how sure that is,
/// and for what.
#[component]
fn RunningTime(answer: Memo<text::Answer>) -> impl IntoView {
    let state = AppState::expect();
    // Words where hours would stand are longer than those.
    let in_words = Signal::derive(move || {
        state.now(|_, report| {
            let generator = report.analyses.generator.and_then(|one| one.trouble);
            generator.or(report.analyses.day.trouble).is_some()
        })
    });
    let time = Signal::derive(move || answer.get().time);
    let opens = Memo::new(move |_| {
        state.now(|_, report| match report.analyses.generator {
            Some(_) => ["generator.hours", "generator.day_ah"],
            None => ["day.engine_hours", "day.need_ah"],
        })
    });
    let range = Memo::new(move |_| {
        // Where no engine runs there is no range of its hours.
        let runs = state.now(|_, report| report.analyses.day.engine_hours > Some(0.0));
        let range = state
            .uncertainty
            .engine_range()
            .filter(|_| runs)
            .unwrap_or_default();
        // A blank keeps the line while the range is worked out.
        if range.is_empty() {
            "\u{a0}".to_string()
        } else {
            range
        }
    });
    let need = Signal::derive(move || {
        state.now(|_, report| state.show(ampere_hours(text::put_back_ah(&report.analyses))))
    });
    view! {
        <div>
            <dt>{Signal::derive(move || answer.get().runs)} ", a day"</dt>
            <dd class="big" class:word=in_words id="answer-time">
                {move || view! { <Opener at=AT id=opens.get()[0] words=time /> }}
            </dd>
            <dd class="small" id="answer-range">
                {range}
            </dd>
            <dd class="small" id="answer-need">
                {Signal::derive(move || state.now(|_, report| in_runs(report)))}
                " "
                {move || view! { <Opener at=AT id=opens.get()[1] words=need /> }}
            </dd>
        </div>
    }
}

/// What stands before the ampere-hours of the day.
fn in_runs(report: &Report) -> String {
    let generator = report.analyses.generator.as_ref();
    match generator.map_or(report.analyses.day.runs, |generator| generator.runs) {
        0 | 1 => "for".to_string(),
        runs => format!("in {runs} runs for"),
    }
}

/// What the alternator holds when it is hot.
#[component]
fn HotAmperes(hot: Signal<String>) -> impl IntoView {
    let state = AppState::expect();
    let cold = Signal::derive(move || {
        state.now(|_, report| state.show(amperes(report.analyses.output.full_cold_a)))
    });
    view! {
        <div>
            <dt>"Alternator, hot"</dt>
            <dd class="big" id="answer-amps">
                <Opener at=AT id="output.hot_a" words=hot />
            </dd>
            <dd class="small" id="answer-cold">
                "of "
                <Opener at=AT id="output.full_cold_a" words=cold />
                " cold"
            </dd>
        </div>
    }
}

/// How many findings of each severity there are; leads to them.
#[component]
fn Tally() -> impl IntoView {
    let state = AppState::expect();
    let counts = Memo::new(move |_| {
        state.now(|_, report| {
            let found = Severity::ALL.into_iter().map(|severity| {
                let found = report.findings.iter();
                let found = found.filter(|finding| finding.severity() == severity);
                (severity, found.count())
            });
            found.filter(|(_, count)| *count > 0).collect::<Vec<_>>()
        })
    });
    let link = move |(severity, count): (Severity, usize)| {
        view! {
            <a class=format!("tally {}", class_of(severity)) href="#findings-title">
                {text::words::tally(severity, count)}
            </a>
        }
    };
    move || counts.get().into_iter().map(link).collect_view()
}

/// What was typed that the answer does not include, with the way there.
#[component]
fn NotIncluded() -> impl IntoView {
    let state = AppState::expect();
    let links = move || {
        let left_out = state.left_out().into_iter();
        left_out.enumerate().map(not_included).collect::<Vec<_>>()
    };
    move || {
        let links = links();
        (!links.is_empty()).then(|| view! { "Not included: " {links} })
    }
}

fn not_included((at, left_out): (usize, LeftOut)) -> impl IntoView {
    let typed = match left_out.text.trim() {
        "" => Either::Left("(empty)"),
        text => {
            let typed = text::errors::quoted(text);
            Either::Right(view! { <kbd>{typed}</kbd> })
        }
    };
    view! {
        {(at > 0).then_some(", ")}
        <EntryLink to=left_out.entry>{left_out.label} " " {typed}</EntryLink>
    }
}
