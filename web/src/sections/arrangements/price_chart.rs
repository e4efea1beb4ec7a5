//! Engine time drawn against money.

use ampwright_core::decision::arrangements::Outcome;
use ampwright_core::text::arrangements::name;
use ampwright_core::units::Reader;
use ampwright_core::units::quantity::money;
use leptos::prelude::*;

use super::letter;
use crate::components::chart::{Block, LEFT, RIGHT, Scale, Stroke, WIDTH, Words};
use ampwright_core::units::axis_clock;

const TOP: f64 = 18.0;
const BOTTOM: f64 = 168.0;
const BEGIN: f64 = LEFT + 12.0;

/// Engine time a day against the price of each arrangement.
#[component]
pub fn PriceChart<'a>(outcomes: &'a [Outcome], reader: &'a Reader) -> impl IntoView + use<> {
    let dearest = outcomes.iter().map(|o| o.bought).fold(100.0, f64::max);
    let hours = outcomes.iter().filter_map(|o| o.hours_day);
    let longest = 60.0 * hours.fold(0.5, f64::max);
    let price = Scale::new(0.0, 1.08 * dearest, BEGIN, RIGHT);
    let time = Scale::new(0.0, 1.1 * longest, BOTTOM, TOP);
    let points = points(outcomes, &price, &time);
    let names: String = points
        .iter()
        .map(|point| format!("{} {}. ", point.letter, point.name))
        .collect();
    let rule = |minutes: f64| {
        let y = time.place(minutes);
        view! {
            <Stroke class="rule" from=(BEGIN, y) to=(RIGHT, y) />
            <Words class="tick" at=(BEGIN - 4.0, y + 3.5) anchor="end" says=axis_clock(minutes) />
        }
    };
    let tick = |amount: f64| {
        let x = price.place(amount);
        view! {
            <Stroke class="edge" from=(x, BOTTOM) to=(x, BOTTOM + 4.0) />
            <Words class="tick" at=(x, BOTTOM + 15.0) says=reader.show(money(amount)) />
        }
    };
    let point = |point: Point| {
        let Point { x, y, .. } = point;
        // Letters of points that lie together stand one beside the other.
        let beside = x + 6.0 + 9.0 * point.neighbours as f64;
        view! {
            <Block class="point" at=(x - 3.0, y - 3.0) size=(6.0, 6.0) />
            <Words class="name" at=(beside, y - 4.0) anchor="start" says=point.letter.to_string() />
        }
    };
    view! {
        <svg
            viewBox=format!("0 0 {WIDTH} 202")
            role="img"
            aria-label="Engine time a day against the price of each arrangement; the same figures stand in the table"
        >
            {time.time_ticks(5.0).into_iter().map(rule).collect_view()}
            <Stroke class="edge" from=(BEGIN, BOTTOM) to=(RIGHT, BOTTOM) />
            {price.ticks(5.0).into_iter().map(tick).collect_view()}
            <Words class="name" at=(BEGIN, 10.0) anchor="start" says="engine a day" />
            <Words class="name" at=(RIGHT, BOTTOM + 28.0) anchor="end" says="to buy" />
            {points.into_iter().map(point).collect_view()}
        </svg>
        <p class="margin">{names} "Nearer to the lower left corner is better."</p>
    }
}

/// Where an arrangement stands on the drawing.
struct Point {
    letter: char,
    name: String,
    x: f64,
    y: f64,
    /// How many stand there already.
    neighbours: usize,
}

fn points(outcomes: &[Outcome], price: &Scale, time: &Scale) -> Vec<Point> {
    let mut points: Vec<Point> = Vec::new();
    for (at, outcome) in outcomes.iter().enumerate() {
        let Some(hours) = outcome.hours_day else {
            continue;
        };
        let (x, y) = (price.place(outcome.bought), time.place(60.0 * hours));
        let is_near = |other: &&Point| (other.x - x).abs() < 12.0 && (other.y - y).abs() < 10.0;
        let neighbours = points.iter().filter(is_near).count();
        points.push(Point {
            letter: letter(at),
            name: name(outcome).to_string(),
            x,
            y,
            neighbours,
        });
    }
    points
}
