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
};
const SOLAR: Column = Column {
    head: |reader| format!("Solar {}/day", charge_unit(reader)),
    cell: |month| ampere_hours(month.sun_ah_day),
    class: |_| "",
};
const ENGINE: Column = Column {
    head: |_| "Engine h".to_string(),
    cell: |month| hours(month.charging_h),
    class: |_| "strong",
};
const DOCK: Column = Column {
    head: |_| "Dock kW·h".to_string(),
    cell: |month| Quantity::new(month.shore_kwh, QuantityKind::Energy),
    class: |_| "strong",
};
const LOWEST: Column = Column {
    head: |_| "Lowest %".to_string(),
    cell: |month| percent(month.lowest_pct),
    class: |month| if month.days_below > 0 { "below" } else { "" },
};
const WASTED: Column = Column {
    head: |_| "Wasted %".to_string(),
    cell: |month| percent(month.wasted_pct),
    class: |_| "",
};

/// Columns of a boat that is charged at the dock, and of one that is not.
static AT_DOCK: [Column; 6] = [DAYS, SOLAR, ENGINE, DOCK, LOWEST, WASTED];
static AT_ANCHOR: [Column; 5] = [DAYS, SOLAR, ENGINE, LOWEST, WASTED];

/// What the year is like in sentences, and the table.
#[component]
pub fn MonthTable(year: Arc<Year>, reader: Reader) -> impl IntoView {
    let columns: &[Column] = match year.at_dock {
        true => &AT_DOCK,
        false => &AT_ANCHOR,
    };
    let whole = |m: &MonthReport| m.engine_ah_day + m.shore_ah_day + m.sun_ah_day;
    let most = year.months.iter().map(whole).fold(1.0, f64::max);
    let row = |month: &MonthReport| {
        let cell = |column: &Column| {
            let figure = reader.number((column.cell)(month));
            view! { <td class=(column.class)(month)>{figure}</td> }
        };
        let parts = [
            month.engine_ah_day,
            month.shore_ah_day,
            month.sun_ah_day - month.wasted_ah_day,
            month.wasted_ah_day,
        ];
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
        <Legend at_dock=year.at_dock />
    }
}

/// Which part of a bar is what.
#[component]
fn Legend(at_dock: bool) -> impl IntoView {
    let names = [
        ([1.0, 0.0, 0.0, 0.0], " engine", true),
        ([0.0, 1.0, 0.0, 0.0], " shore power", at_dock),
        ([0.0, 0.0, 1.0, 0.0], " solar used", true),
        (
            [0.0, 0.0, 0.0, 1.0],
            " solar wasted: the bank was full",
            true,
        ),
    ];
    view! {
        <p class="margin bars">
            {names
                .into_iter()
                .filter(|(_, _, shown)| *shown)
                .map(|(parts, name, _)| {
                    view! {
                        <span>
                            <Bar most=1.0 parts />
                            {name}
                        </span>
                        " "
                    }
                })
                .collect_view()}
        </p>
    }
}

/// Engine, shore power, solar used and solar wasted one after the other, as
/// parts of the most.
#[component]
fn Bar(most: f64, parts: [f64; 4]) -> impl IntoView {
    let mut from = 0.0;
    let part = |(class, part): (&'static str, f64)| {
        let (x, width) = (from, 100.0 * part / most);
        from += width;
        (width >= 0.05).then(|| {
            view! { <Block class=class at=(x, 1.0) size=(width, 8.0) /> }
        })
    };
    let classes = ["engine", "shore", "sun", "wasted"];
    view! {
        <svg class="bar" viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true">
            {classes.into_iter().zip(parts).map(part).collect_view()}
        </svg>
    }
}
