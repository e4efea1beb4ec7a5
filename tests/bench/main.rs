#![forbid(unsafe_code)]
//! How long the calculations take, and how far the usual step is from a ten
//! times finer one. Nothing here passes or fails.
//!
//! `cargo run --release -p ampwright-tests --features bench --bin bench`

mod boat;
mod rival;
mod scale;
mod watch;

use std::hint::black_box;

use ampwright_core::boat::demo;
use ampwright_core::decision::arrangements::compare;
use ampwright_core::decision::goal_search::Search;
use ampwright_core::decision::uncertainty::Uncertainty;
use ampwright_core::simulation::plant::Plant;
use ampwright_core::simulation::run::{Fineness, Trace, charge};
use ampwright_core::simulation::steady_state::settled;
use ampwright_core::{Worksheet, report};

use watch::row;

const RUN_H: f64 = 8.0;

fn main() {
    if cfg!(debug_assertions) {
        println!("(not a release build: the times mean little)\n");
    }
    let sheet = boat::case_b();
    let plant = boat::plant();
    speed(&sheet, &plant);
    accuracy(&plant);
    against_lsoda(&plant);
    scale::table();
}

/// Eight hours from a quarter, which do not quite fill the bank.
fn eight_hours(plant: &Plant, fineness: &Fineness) -> Trace {
    charge(plant, 0.25, 1.0, RUN_H * 3600.0, fineness)
}

fn speed(sheet: &Worksheet, plant: &Plant) {
    println!("{:<44} {:>12} {:>10}", "calculation", "median", "a second");
    let trace = eight_hours(plant, &Fineness::USUAL);
    let what = format!("charging run of {RUN_H} h, {} steps", trace.steps());
    time_row(&what, || eight_hours(plant, &Fineness::USUAL).steps());
    let finer = Fineness::USUAL.finer(10.0);
    let what = format!(
        "… ten times finer, {} steps",
        eight_hours(plant, &finer).steps()
    );
    time_row(&what, || eight_hours(plant, &finer).steps());
    time_row("preparing a boat (Plant::new)", || {
        Plant::new(black_box(&sheet.inputs), boat::LOAD_A)
    });
    time_row("where it settles (settled)", || {
        settled(black_box(plant), 0.6)
    });
    time_row("whole report, this boat", || report(black_box(sheet)));
    let demo = demo();
    time_row("whole report, the demo boat", || report(black_box(&demo)));
    time_row("all arrangements of the demo boat", || {
        compare(black_box(&demo))
    });
    let mut search = Search::new(&demo);
    time_row("one combination of the cheapest way", || {
        if search.done() {
            search = Search::new(&demo);
        }
        search.step(1);
    });
    let mut sure = Uncertainty::new(&demo);
    time_row("one of 512 runs of how sure it is", || {
        if sure.done() {
            sure = Uncertainty::new(&demo);
        }
        sure.step(1);
    });
}

fn accuracy(plant: &Plant) {
    let usual = eight_hours(plant, &Fineness::USUAL);
    let finer = eight_hours(plant, &Fineness::USUAL.finer(10.0));
    println!(
        "\n{:<44} {:>12} {:>10} {:>10}",
        "usual against ten times finer", "usual", "finer", "off"
    );
    let mut worst: f64 = 0.0;
    let mut compare = |what: &str, usual: f64, finer: f64| {
        let off_pct = 100.0 * (usual / finer - 1.0);
        worst = worst.max(off_pct.abs());
        row(
            what,
            &[
                format!("{usual:.3}"),
                format!("{finer:.3}"),
                format!("{off_pct:+.4} %"),
            ],
        );
    };
    for target in [0.60, 0.80, 0.90] {
        if let (Some(a), Some(b)) = (usual.reaches(target), finer.reaches(target)) {
            compare(
                &format!("minutes to {:.0} %", 100.0 * target),
                a / 60.0,
                b / 60.0,
            );
        }
    }
    let last_s = RUN_H * 3600.0;
    let mean_a = |trace: &Trace| trace.alternator_ah(last_s) / RUN_H;
    compare("mean amperes", mean_a(&usual), mean_a(&finer));
    compare(
        "charge at the end, %",
        100.0 * usual.soc_at(last_s),
        100.0 * finer.soc_at(last_s),
    );
    let peak = |trace: &Trace| trace.hottest(last_s)[0].winding_c;
    compare("hottest winding, °C", peak(&usual), peak(&finer));
    println!("{:<44} {worst:>35.4} %", "worst");
}

/// Case B of the reference runs: from 35 to 99.5 %.
fn against_lsoda(plant: &Plant) {
    println!(
        "\n{:<44} {:>12} {:>10}",
        "case B, 35 to 99.5 %", "ms", "min to 80 %"
    );
    let run = || boat::run(plant);
    let ours_ms = 1000.0 * watch::median_s(run);
    let trace = run();
    let minutes_to = |soc: f64| trace.reaches(soc).map_or(f64::NAN, |s| s / 60.0);
    let (minutes, end) = (minutes_to(0.8), minutes_to(boat::END));
    let hottest_c = trace.hottest(60.0 * end)[0].winding_c;
    row(
        "this program",
        &[format!("{ours_ms:.4}"), format!("{minutes:.3}")],
    );
    match rival::lsoda([minutes, end, hottest_c]) {
        Ok(rival) => {
            row(
                &format!("SciPy LSODA to {:e}, best of 5", rival.tolerance),
                &[format!("{:.3}", rival.ms), format!("{:.3}", rival.minutes)],
            );
            row("times as long", &[format!("{:.0}", rival.ms / ours_ms)]);
            let errors = rival.errors.map(|error| format!("{:.4} %", 100.0 * error));
            row("most that an answer is off, ours and its", &errors);
        }
        Err(why) => println!("SciPy LSODA: not run: {why}"),
    }
}

/// A row with the median and how many would fit in a second.
fn time_row<T>(what: &str, work: impl FnMut() -> T) {
    let seconds = watch::median_s(work);
    row(
        what,
        &[
            format!("{:.1} µs", 1e6 * seconds),
            format!("{:.0}", 1.0 / seconds),
        ],
    );
}
