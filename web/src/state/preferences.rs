//! How figures are told and filled in on this device: units and decimal sign.
//! No worksheet and no link knows of it.

use ampwright_core::units::{CHOICES, Reader};
use leptos::prelude::*;

use crate::browser::{locale, storage};

const KEPT: &str = "ampwright.units";

/// One choice between units.
#[derive(Clone, Copy, PartialEq, Eq)]
pub enum UnitChoice {
    /// Ampere-hours as watt-hours of the boat's system voltage.
    Charge,
    /// The units of a group of [`CHOICES`], by its place there.
    Group(usize),
}

impl UnitChoice {
    /// Every choice, in the order of the page.
    pub fn all() -> impl Iterator<Item = UnitChoice> {
        std::iter::once(UnitChoice::Charge).chain((0..CHOICES.len()).map(UnitChoice::Group))
    }

    /// What kind of quantity it is about.
    pub fn name(self) -> &'static str {
        match self {
            UnitChoice::Charge => "Charge",
            UnitChoice::Group(at) => CHOICES.get(at).map_or("", |(name, _)| name),
        }
    }

    /// The symbols of the usual units, and of the other ones.
    pub fn symbols(self) -> (String, String) {
        let UnitChoice::Group(at) = self else {
            return ("A·h".to_string(), "W·h".to_string());
        };
        let mut names: (Vec<&str>, Vec<&str>) = (Vec::new(), Vec::new());
        for unit in CHOICES.get(at).map_or(&[][..], |(_, units)| units) {
            let Some(other) = unit.other else { continue };
            // A difference is told in the same degrees, a rate by the same measure.
            let known = names.1.iter().any(|name| other.symbol.starts_with(name));
            if !known {
                names.0.push(unit.symbol);
                names.1.push(other.symbol);
            }
        }
        (names.0.join(", "), names.1.join(", "))
    }

    /// What its list is called on the page and in the storage.
    pub fn id(self) -> String {
        format!("unit-{}", self.name().to_lowercase().replace(' ', "-"))
    }
}

/// The reader's choices.
#[derive(Clone, Copy)]
pub struct Preferences {
    /// Those for which the other units are wanted.
    others: RwSignal<Vec<UnitChoice>>,
    decimal_comma: RwSignal<bool>,
}

impl Preferences {
    /// What a fresh visitor has, and the printed page.
    pub fn new() -> Preferences {
        Preferences {
            others: RwSignal::new(Vec::new()),
            decimal_comma: RwSignal::new(false),
        }
    }

    /// Takes up what this device remembers. Runs in the browser only.
    pub fn restore(self) {
        self.decimal_comma.set(locale::has_decimal_comma());
        let kept = storage::recall(KEPT).unwrap_or_default();
        let others = UnitChoice::all()
            .filter(|choice| kept.split(' ').any(|id| id == choice.id()))
            .collect();
        self.others.set(others);
    }

    /// Whether the other units of a choice are wanted.
    pub fn is_other(self, choice: UnitChoice) -> bool {
        self.others.read().contains(&choice)
    }

    /// Wants the other units of a choice, or no longer, and remembers it.
    pub fn choose(self, choice: UnitChoice, other: bool) {
        self.others.update(|others| {
            others.retain(|one| *one != choice);
            if other {
                others.push(choice);
            }
        });
        self.remember();
    }

    /// Wants the other units of every choice, or of none; ampere-hours stay.
    pub fn choose_all(self, other: bool) {
        let all = (0..CHOICES.len()).map(UnitChoice::Group);
        self.others.set(all.filter(|_| other).collect());
        self.remember();
    }

    fn remember(self) {
        let ids = self.others.with_untracked(|others| {
            let ids: Vec<String> = others.iter().map(|one| one.id()).collect();
            ids.join(" ")
        });
        storage::remember(KEPT, &ids);
    }

    /// Whether decimals stand behind a comma.
    pub fn has_decimal_comma(self) -> bool {
        self.decimal_comma.get()
    }

    /// How entries are filled in.
    pub fn entries(self) -> Reader {
        let others = self.others.read();
        let reader = Reader::METRIC
            .with_unbroken_units()
            .with_decimal_comma(self.decimal_comma.get());
        (0..CHOICES.len()).fold(reader, |reader, at| {
            reader.with_other(at, others.contains(&UnitChoice::Group(at)))
        })
    }

    /// How results are told, aboard a boat of a system voltage \[V\].
    pub fn reader(self, system_v: f64) -> Reader {
        let energy = self.is_other(UnitChoice::Charge).then_some(system_v);
        self.entries().with_charge_as_energy(energy)
    }
}
