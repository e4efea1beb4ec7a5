//! Files and paper: every boat, tables of results, and the printed page.

use crate::components::Button;
use ampwright_core::analysis::year;
use ampwright_core::decision::arrangements::compare;
use ampwright_core::exchange::{arrangements_csv, day_csv, output_csv, run_csv, year_csv};
use ampwright_core::{Report, Worksheet};
use leptos::prelude::*;

use crate::browser::{files, printing};
use crate::state::AppState;
use crate::state::saved_boats::title;

/// A table of results as a file.
#[derive(Clone, Copy)]
struct Table {
    /// What it is of.
    title: &'static str,
    /// What is added to the boat's name to name the file.
    name: &'static str,
    write: fn(&Worksheet, &Report) -> String,
}

const TABLES: [Table; 5] = [
    Table {
        title: "The charging run",
        name: "run",
        write: |_, report| run_csv(report),
    },
    Table {
        title: "Output against engine speed",
        name: "output",
        write: |_, report| output_csv(report),
    },
    Table {
        title: "The year by months",
        name: "year",
        write: |sheet, _| year_csv(&year(sheet)),
    },
    Table {
        title: "A settled day by hours",
        name: "day",
        write: |sheet, _| {
            let year = year(sheet);
            let month = year.months.get(sheet.inputs.sun.month as usize);
            month.map_or(String::new(), |month| day_csv(&month.day))
        },
    },
    Table {
        title: "The arrangements",
        name: "arrangements",
        write: |sheet, _| arrangements_csv(&compare(sheet)),
    },
];

/// What can be saved and printed.
#[component]
pub fn Files() -> impl IntoView {
    let state = AppState::expect();
    let left_out = RwSignal::new(0_usize);
    let save_all = move |_| {
        let all = state.all_as_file();
        left_out.set(all.left_out);
        files::save_text("ampwright-worksheets.json", &all.file.to_string());
    };
    let warning = Signal::derive(move || {
        match left_out.get() {
        0 => None,
        1 => Some("One boat cannot be read and is not in the file. “File” beside it in the list saves its text.".to_string()),
        many => Some(format!("{many} boats cannot be read and are not in the file. “File” beside each in the list saves its text.")),
    }
    });
    let table = |(at, table): (usize, Table)| {
        let save = move |_| {
            let (name, text) = state.glance(|sheet, report| {
                (title(&sheet.name).to_string(), (table.write)(sheet, report))
            });
            files::save_text(&format!("{name}-{}.csv", table.name), &text);
        };
        view! {
            <li>
                <span>{table.title}</span>
                <Button
                    says="Save"
                    id=format!("csv-{at}")
                    class="plain"
                    name=format!("Save as a table: {}", table.title)
                    press=save
                />
            </li>
        }
    };
    view! {
        <p class="buttons">
            <Button says="All boats as a file" id="save-all" press=save_all />
            <Button says="Print this boat" press=move |()| printing::print() />
            <span class="said" role="status">
                {warning}
            </span>
        </p>
        <p class="about">
            "On paper stands what matters aboard: the answer, what was entered, warnings, arrangements, cables, belt, settings and the first run, on about six pages. The settings sheet and the first run can be printed by themselves, from where they stand."
        </p>
        <p class="about">"Results as tables for any spreadsheet (CSV):"</p>
        <ul class="tables-out">{TABLES.into_iter().enumerate().map(table).collect_view()}</ul>
    }
}
