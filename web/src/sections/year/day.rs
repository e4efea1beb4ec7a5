//! The hours of a settled day: charge above, solar and use below, and when the
//! engine runs.

use std::fmt::Write;
use std::sync::Arc;

use ampwright_core::analysis::year::{HourReport, Year};
use ampwright_core::text;
use ampwright_core::units::quantity::percent;
use ampwright_core::units::{QuantityKind, Reader};
use leptos::prelude::*;

use crate::components::chart::{
    Axis, ChartLine, Field, LEFT, LevelMark, LineStyle, RIGHT, Scale, Stroke, TimeTicks, WIDTH,
    Words, path,
};

const CHARGE: (f64, f64) = (18.0, 96.0);
const POWER: (f64, f64) = (128.0, 206.0);
const BAND: (f64, f64) = (214.0, 230.0);
const HEIGHT: f64 = 252.0;

/// The drawing, and the day in words.
#[component]
pub fn SettledDay(year: Arc<Year>, at: usize, reader: Reader) -> impl IntoView {
    let month = year.months.get(at)?;
    let hours = &month.day.hours;
    let time = Scale::new(0.0, 24.0 * 60.0, LEFT, RIGHT);
    let charge = Axis::new(
        &reader,
        QuantityKind::Percent,
        (0.0, 100.0),
        (CHARGE.1, CHARGE.0),
    );
    let most_w = hours
        .iter()
        .flat_map(|hour| [hour.sun_w, hour.other_w, hour.use_w])
        .fold(10.0, f64::max);
    let power = Axis::rounded(
        &reader,
        QuantityKind::Power,
        (0.0, most_w),
        (POWER.1, POWER.0),
    );
    let bank = hours.iter().map(|hour| hour.charge_pct);
    let bank = bank.chain([month.day.end_charge_pct]).enumerate();
    let mut lines = vec![
        (
            LineStyle::First,
            path(bank.map(|(hour, pct)| (across(&time, hour), charge.place(pct)))),
        ),
        (
            LineStyle::Second,
            steps(hours, &time, &power, |hour| hour.sun_w),
        ),
        (
            LineStyle::Third,
            steps(hours, &time, &power, |hour| hour.use_w),
        ),
    ];
    if year.has_other {
        let other = steps(hours, &time, &power, |hour| hour.other_w);
        lines.push((LineStyle::Fourth, other));
    }
    let runs = [
        ("on", stretches(hours, &time, |hour| hour.engine_min)),
        (
            "on shore",
            stretches(hours, &time, |hour| hour.generator_min),
        ),
        ("on shore", stretches(hours, &time, |hour| hour.shore_min)),
    ];
    let marks = [(year.full_pct, "full"), (year.low_pct, "lowest wanted")];
    let mark = |(pct, words): (f64, &str)| {
        let words = format!("{words} {}", reader.number(percent(pct)));
        view! { <LevelMark y=charge.place(pct) words /> }
    };
    let charged_by = match (year.at_dock, year.by_generator) {
        (true, _) => "dock",
        (_, true) => "generator",
        _ => "engine",
    };
    let mut power_names = vec![(LineStyle::Second, "solar"), (LineStyle::Third, "use")];
    if year.has_other {
        power_names.push((LineStyle::Fourth, "other sources"));
    }
    Some(view! {
        <div class="chart">
            <svg
                viewBox=format!("0 0 {WIDTH} {HEIGHT}")
                role="img"
                aria-label=format!("A settled day in {}", text::year::month(month.month))
            >
                <Field field=CHARGE ticks=2.0 time axis=charge names=vec![(LineStyle::First, "bank")] />
                <Field
                    field=POWER
                    ticks=4.0
                    time
                    axis=power
                    names=power_names
                />
                {lines
                    .into_iter()
                    .map(|(style, d)| view! { <ChartLine style d /> })
                    .collect_view()}
                {runs.map(|(class, d)| view! { <path class=class d=d /> }).collect_view()}
                <Stroke class="edge" from=(LEFT, BAND.1) to=(RIGHT, BAND.1) />
                <Words class="name" at=(LEFT - 4.0, BAND.1 - 4.0) anchor="end" says=charged_by />
                {marks.map(mark).collect_view()}
                <TimeTicks time y=244.0 />
            </svg>
            <p class="told" id="year-day">
                {text::year::settled_day(month, &reader)}
            </p>
        </div>
    })
}

/// Where an hour begins.
fn across(time: &Scale, hour: usize) -> f64 {
    time.place(60.0 * hour as f64)
}

/// A line that stays at each hour's figure until the next.
fn steps(
    hours: &[HourReport],
    time: &Scale,
    axis: &Axis,
    figure: fn(&HourReport) -> f64,
) -> String {
    path(hours.iter().enumerate().flat_map(|(at, hour)| {
        let y = axis.place(figure(hour));
        [(across(time, at), y), (across(time, at + 1), y)]
    }))
}

/// When something runs through a day, by its minutes of each hour: areas of the
/// band at the foot.
fn stretches(hours: &[HourReport], time: &Scale, minutes: fn(&HourReport) -> f64) -> String {
    let of = |at: usize| hours.get(at).map_or(0.0, minutes);
    let mut areas = String::new();
    for at in 0..hours.len() {
        let (from, to) = (across(time, at), across(time, at + 1));
        let width = (to - from) * of(at) / 60.0;
        // Part of an hour lies at its end where the next one goes on with it.
        let begins = of(at + 1) > 0.0 && (at == 0 || of(at - 1) == 0.0);
        let x = if begins { to - width } else { from };
        // Writing to a String cannot fail.
        let _ = write!(
            areas,
            "M{x} {}h{width}v{}h-{width}z",
            BAND.0,
            BAND.1 - BAND.0
        );
    }
    areas
}

#[cfg(test)]
mod tests {
    use std::sync::Arc;

    use ampwright_core::analysis::year;
    use ampwright_core::boat::demo;
    use ampwright_core::units::Reader;
    use leptos::prelude::*;

    use super::SettledDay;
    use crate::components::chart::tests::assert_lines_differ;
    use crate::prerender::part;

    #[test]
    fn its_lines_differ_in_their_dashes() {
        let year = Arc::new(year(&demo()));
        let drawn = part(
            |_| (),
            || view! { <SettledDay year at=6 reader=Reader::METRIC /> },
        );
        assert_eq!(assert_lines_differ(&drawn), 3);
    }
}
