//! The months as a table, a bar at the end of each row.

use std::sync::Arc;

use ampwright_core::analysis::year::{MonthReport, Year};
use ampwright_core::text;
use ampwright_core::units::quantity::{ampere_hours, percent};
use ampwright_core::units::{Quantity, QuantityKind, Reader};
use leptos::prelude::*;

use crate::components::chart::Block;

/// A column of the table.
struct Column {
    head: fn(&Reader) -> String,
    cell: fn(&MonthReport) -> Quantity,
    /// The style of a cell.
    class: fn(&MonthReport) -> &'static str,
    /// Which boats have it.
    there: fn(&Year) -> bool,
}

/// Hours of a month, to a tenth \[h\].
fn hours(value: f64) -> Quantity {
    Quantity::new(value, QuantityKind::Hours).to(1)
}

fn charge_unit(reader: &Reader) -> &'static str {
    reader.unit(QuantityKind::Charge)
}

const DAYS: Column = Column {
    head: |_| "Days aboard".to_string(),
    cell: |month| Quantity::new(month.days_aboard, QuantityKind::Count),
    class: |_| "",
    there: |_| true,
};
const SOLAR: Column = Column {
    head: |reader| format!("Solar {}/day", charge_unit(reader)),
    cell: |month| ampere_hours(month.sun_ah_day),
    class: |_| "",
    there: |_| true,
};
const ENGINE: Column = Column {
    head: |_| "Engine h".to_string(),
    cell: |month| hours(month.charging_h),
    class: |_| "strong",
    there: |_| true,
};
const DOCK: Column = Column {
    head: |_| "Dock kW·h".to_string(),
    cell: |month| Quantity::new(month.shore_kwh, QuantityKind::Energy),
    class: |_| "strong",
    there: |year| year.at_dock,
};
const OTHER: Column = Column {
    head: |reader| format!("Other {}/day", charge_unit(reader)),
    cell: |month| ampere_hours(month.other_ah_day),
    class: |_| "",
    there: |year| year.has_other,
};
const GENERATOR: Column = Column {
    head: |_| "Generator h".to_string(),
    cell: |month| hours(month.generator_h),
    class: |_| "strong",
    there: |year| year.by_generator,
};
const LOWEST: Column = Column {
    head: |_| "Lowest %".to_string(),
    cell: |month| percent(month.lowest_pct),
    class: |month| if month.days_below > 0 { "below" } else { "" },
    there: |_| true,
};
const WASTED: Column = Column {
    head: |_| "Wasted %".to_string(),
    cell: |month| percent(month.wasted_pct),
    class: |_| "",
    there: |_| true,
};

/// Every column.
static COLUMNS: [Column; 8] = [DAYS, SOLAR, OTHER, ENGINE, GENERATOR, DOCK, LOWEST, WASTED];

/// What charges, as a bar shows it: the style of its part, what it is called, its
/// ampere-hours a day, and which boats have it.
struct Given {
    class: &'static str,
    name: &'static str,
    ah_day: fn(&MonthReport) -> f64,
    there: fn(&Year) -> bool,
}

/// In the order of the bar.
static GIVEN: [Given; 6] = [
    Given {
        class: "engine",
        name: " engine",
        ah_day: |month| month.engine_ah_day,
        there: |_| true,
    },
    Given {
        class: "generator",
        name: " generator",
        ah_day: |month| month.generator_ah_day,
        there: |year| year.by_generator,
    },
    Given {
        class: "shore",
        name: " shore power",
        ah_day: |month| month.shore_ah_day,
        there: |year| year.at_dock,
    },
    Given {
        class: "other",
        name: " other sources",
        ah_day: |month| month.other_ah_day - month.other_wasted_ah_day,
        there: |year| year.has_other,
    },
    Given {
        class: "sun",
        name: " solar used",
        ah_day: |month| month.sun_ah_day - month.wasted_ah_day,
        there: |_| true,
    },
    Given {
        class: "wasted",
        name: " wasted: the bank was full",
        ah_day: |month| month.wasted_ah_day + month.other_wasted_ah_day,
        there: |_| true,
    },
];

/// What the year is like in sentences, and the table.
#[component]
pub fn MonthTable(year: Arc<Year>, reader: Reader) -> impl IntoView {
    let columns: Vec<&Column> = COLUMNS
        .iter()
        .filter(|column| (column.there)(&year))
        .collect();
    let whole = |month: &MonthReport| parts(month).iter().fold(0.0, |sum, part| sum + part);
    let most = year.months.iter().map(whole).fold(1.0, f64::max);
    let row = |month: &MonthReport| {
        let cell = |column: &&Column| {
            let figure = reader.number((column.cell)(month));
            view! { <td class=(column.class)(month)>{figure}</td> }
        };
        let parts = parts(month);
        view! {
            <tr>
                <th scope="row">{text::year::month(month.month).chars().take(3).collect::<String>()}</th>
                {columns.iter().map(cell).collect_view()}
                <td>
                    <Bar most parts />
                </td>
            </tr>
        }
    };
    let alike = "Every month is alike here. To tell summer from winter, choose “From latitude, month and sky” above, or fill in the months.";
    view! {
        <p class="told">{text::year::sentences(&year, &reader).join(" ")}</p>
        <p class="lead">{(!year.months_differ).then_some(alike)}</p>
        <div class="scroll" tabindex="0" role="region" aria-label="The months as a table">
            <table class="run months">
                <thead>
                    <tr>
                        <th scope="col">"Month"</th>
                        {columns
                            .iter()
                            .map(|column| view! { <th scope="col">{(column.head)(&reader)}</th> })
                            .collect_view()}
                        <th scope="col">{format!("{} a day", charge_unit(&reader))}</th>
                    </tr>
                </thead>
                <tbody>{year.months.iter().map(row).collect_view()}</tbody>
            </table>
        </div>
        <Legend year=&year />
    }
}

/// What each source gives in a day of a month \[A·h\].
fn parts(month: &MonthReport) -> [f64; GIVEN.len()] {
    GIVEN.each_ref().map(|given| (given.ah_day)(month))
}

/// Which part of a bar is what.
#[component]
fn Legend<'a>(year: &'a Year) -> impl IntoView + use<> {
    let names = GIVEN.iter().enumerate();
    let names = names.filter(|(_, given)| (given.there)(year));
    view! {
        <p class="margin bars">
            {names
                .map(|(at, given)| {
                    let mut parts = [0.0; GIVEN.len()];
                    parts[at] = 1.0;
                    view! {
                        <span>
                            <Bar most=1.0 parts />
                            {given.name}
                        </span>
                        " "
                    }
                })
                .collect_view()}
        </p>
    }
}

/// What charges one after the other, as parts of the most.
#[component]
fn Bar(most: f64, parts: [f64; GIVEN.len()]) -> impl IntoView {
    let mut from = 0.0;
    let part = |(given, part): (&'static Given, f64)| {
        let (x, width) = (from, 100.0 * part / most);
        from += width;
        (width >= 0.05).then(|| {
            view! { <Block class=given.class at=(x, 1.0) size=(width, 8.0) /> }
        })
    };
    view! {
        <svg class="bar" viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true">
            {GIVEN.iter().zip(parts).map(part).collect_view()}
        </svg>
    }
}
