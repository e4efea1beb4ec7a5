//! Reading the run off at a moment.

use ampwright_core::units::quantity::{amperes, celsius, minutes};
use leptos::prelude::*;

use super::reading::{Reading, ReadingSlider};
use crate::prerender::part;
use crate::state::AppState;

/// Both parts, read off at a share of the run, and what the report has there.
fn read_at(share: f64) -> (String, [String; 3]) {
    let mut told = None;
    let html = part(
        |state| {
            state.reading.set(share);
            told = state.moment().map(|moment| {
                [
                    state.show(minutes(moment.minute)),
                    state.show(amperes(moment.alternator_a)),
                    state.show(celsius(moment.alternators[0].winding_c)),
                ]
            });
        },
        || {
            view! {
                <ReadingSlider />
                <Reading />
            }
        },
    );
    (html, told.expect("the boat that nobody entered charges"))
}

#[test]
fn the_figures_are_those_of_the_moment() {
    for share in [0.0, 0.5, 1.0] {
        let (html, told) = read_at(share);
        for figure in &told {
            assert!(html.contains(figure.as_str()), "{figure}: {html}");
        }
        // The slider says in words where it stands.
        assert!(
            html.contains(&format!(r#"aria-valuetext="{}""#, told[0])),
            "{html}"
        );
    }
}

#[test]
fn the_winding_is_warmer_later() {
    let winding = |share| read_at(share).1[2].clone();
    assert_ne!(winding(0.0), winding(1.0));
}

#[test]
fn a_step_goes_to_the_next_moment_and_stays_within_the_run() {
    let minutes_after = |steps: &[isize]| {
        let mut minute = 0.0;
        part(
            |state: AppState| {
                state.reading.set(0.0);
                for by in steps {
                    state.step_reading(*by);
                }
                minute = state.moment().map_or(f64::NAN, |moment| moment.minute);
            },
            || (),
        );
        minute
    };
    let begin = minutes_after(&[]);
    assert_eq!(begin, 0.0);
    assert!(minutes_after(&[1]) > begin);
    assert_eq!(minutes_after(&[1, -1]), begin);
    assert_eq!(minutes_after(&[-1]), begin);
    let end = minutes_after(&[1000]);
    assert!(end > minutes_after(&[1]));
    assert_eq!(minutes_after(&[1000, 1]), end);
}
