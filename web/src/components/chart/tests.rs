//! Lines of one field differ by their dashes, whatever the look.

use std::collections::BTreeSet;

use leptos::prelude::*;

use super::{ChartLine, LineStyle};
use crate::prerender::{page, part};

/// Dashes of the data lines of each field of a drawing; a drawing without fields
/// of its own is one.
pub fn dashes_by_field(svg: &str) -> Vec<Vec<String>> {
    let of_field = |field: &str| {
        let tags = field.split("<path").skip(1);
        let tags = tags.map(|tag| tag.split_once('>').map_or(tag, |(tag, _)| tag));
        let lines = tags.filter(|tag| tag.contains("class=\"line "));
        let dashes = lines.map(|tag| {
            let dashes = tag.split_once("stroke-dasharray=\"");
            dashes.map_or("unbroken".to_string(), |(_, rest)| {
                rest.split('"').next().unwrap_or_default().to_string()
            })
        });
        dashes.collect::<Vec<_>>()
    };
    svg.split("<g class=\"field\"").map(of_field).collect()
}

/// Fails where two lines of a field have the same dashes; how many lines there
/// are in all.
#[track_caller]
pub fn assert_lines_differ(svg: &str) -> usize {
    let fields = dashes_by_field(svg);
    for dashes in &fields {
        let different: BTreeSet<_> = dashes.iter().collect();
        assert_eq!(different.len(), dashes.len(), "{dashes:?}");
    }
    fields.iter().map(Vec::len).sum()
}

#[test]
fn lines_of_the_page_differ_in_their_dashes() {
    let page = page();
    let lines = page.split("<svg").skip(1);
    let lines =
        lines.map(|svg| assert_lines_differ(svg.split("</svg>").next().unwrap_or_default()));
    let lines: Vec<usize> = lines.filter(|lines| *lines > 0).collect();
    // The charging run with its three fields, output against speed, and the sea
    // trial with two.
    assert_eq!(lines, [7, 2, 2]);
}

#[test]
fn two_lines_alike_are_noticed() {
    let twice = || {
        view! {
            <ChartLine style=LineStyle::Third d="M0 0" />
            <ChartLine style=LineStyle::Third d="M0 1" />
        }
    };
    let dashes = dashes_by_field(&part(|_| (), twice));
    assert_eq!(dashes, [["4 2.5", "4 2.5"]]);
}
