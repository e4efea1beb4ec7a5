//! Which figure explains itself, and the way along the figures it used. At
//! most one of the page does at a time.

use std::fmt;

use ampwright_core::explain::Working;
use leptos::prelude::*;

use crate::browser::page;

/// A place of the page whose figures explain themselves: the same figure may
/// stand in several.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ExplainedAt {
    /// The answer.
    Answer,
    /// What is read off the charging run.
    Reading,
    /// A table of figures, by its name.
    Table(&'static str),
    /// An arrangement, by its place in the comparison.
    Arrangement(usize),
}

/// As the ids of its figures begin.
impl fmt::Display for ExplainedAt {
    fn fmt(&self, f: &mut fmt::Formatter) -> fmt::Result {
        match self {
            ExplainedAt::Answer => f.write_str("answer"),
            ExplainedAt::Reading => f.write_str("reading"),
            ExplainedAt::Table(name) => f.write_str(name),
            ExplainedAt::Arrangement(at) => write!(f, "arrangement-{at}"),
        }
    }
}

/// Explains a figure by its name in the report.
pub type Explain = Callback<&'static str, Option<Working>>;

#[derive(Clone)]
struct Open {
    at: ExplainedAt,
    /// The figures on the way, by their names in the report; the last one is
    /// shown.
    trail: Vec<&'static str>,
}

/// The explanation that lies open.
#[derive(Clone, Copy)]
pub struct Explanations {
    open: RwSignal<Option<Open>>,
    /// Whether all explanations are printed at the end of the page.
    pub in_print: RwSignal<bool>,
}

/// The id of the panel.
pub const PANEL: &str = "working";

impl Explanations {
    /// None.
    pub fn new() -> Explanations {
        Explanations {
            open: RwSignal::new(None),
            in_print: RwSignal::new(false),
        }
    }

    /// Whether one lies open at a place.
    pub fn is_at(self, at: ExplainedAt) -> bool {
        self.open
            .with(|open| open.as_ref().is_some_and(|open| open.at == at))
    }

    /// Whether the one of a figure was opened at a place.
    pub fn is_open(self, at: ExplainedAt, id: &str) -> bool {
        self.open.with(|open| {
            let here = open.as_ref().filter(|open| open.at == at);
            here.is_some_and(|open| open.trail.first() == Some(&id))
        })
    }

    /// The figure that is explained.
    pub fn shown(self) -> Option<&'static str> {
        self.open.with(|open| open.as_ref()?.trail.last().copied())
    }

    /// The figure that led to it.
    pub fn before(self) -> Option<&'static str> {
        self.open
            .with(|open| open.as_ref()?.trail.iter().nth_back(1).copied())
    }

    /// Opens a figure's explanation and puts the cursor into it, or closes it.
    pub fn toggle(self, at: ExplainedAt, id: &'static str) {
        if untrack(|| self.is_open(at, id)) {
            return self.close();
        }
        let trail = vec![id];
        self.open.set(Some(Open { at, trail }));
        page::focus_soon(PANEL.to_string());
    }

    /// Goes on to a figure that the shown one used.
    pub fn follow(self, id: &'static str) {
        self.open.update(|open| {
            if let Some(open) = open {
                open.trail.retain(|on_the_way| *on_the_way != id);
                open.trail.push(id);
            }
        });
        page::focus_soon(PANEL.to_string());
    }

    /// Comes back to the figure before, and to what led on from there.
    pub fn back(self) {
        let left = self.open.try_update(|open| open.as_mut()?.trail.pop());
        if let Some(left) = left.flatten() {
            page::focus_soon(format!("on.{left}"));
        }
    }

    /// Closes it, and comes back to where it was opened.
    pub fn close(self) {
        if let Some(opener) = self.put_away() {
            page::focus_soon(opener);
        }
    }

    /// Closes it and leaves the cursor to others; the id of what opened it.
    pub fn put_away(self) -> Option<String> {
        let was = self.open.try_update(Option::take).flatten()?;
        let first = was.trail.first()?;
        Some(format!("{}.{first}", was.at))
    }
}
