//! What there is to say of packs in parallel beside their findings.

use crate::analysis::packs::{PackLoad, PacksReport};
use crate::text::words::{as_entered, at_most};
use crate::units::Reader;
use crate::units::quantity::{ampere_hours, amperes, kiloamperes_of, percent};

/// How the packs share, what follows when one opens, and what a short circuit
/// draws; one sentence or two each.
pub fn sentences(packs: &PacksReport, reader: &Reader) -> Vec<String> {
    let mut said = vec![share(packs, reader)];
    said.extend(
        packs
            .charging
            .as_ref()
            .map(|load| opens("While charging", load, reader)),
    );
    said.extend(
        packs
            .discharging
            .as_ref()
            .map(|load| opens("At the peak house load", load, reader)),
    );
    said.push(short(packs, reader));
    said
}

/// How they share a current.
fn share(packs: &PacksReport, reader: &Reader) -> String {
    format!(
        "{} packs of {} do not share a current alike: each takes {} to {} of it. Their limits add up to {}, and the first one is at its own with {} into all of them.",
        packs.packs,
        reader.show(as_entered(ampere_hours(packs.pack_ah))),
        reader.show(percent(packs.least_share_pct)),
        reader.show(percent(packs.most_share_pct)),
        reader.show(amperes(packs.limits_a)),
        at_most(amperes(packs.together_a), reader)
    )
}

/// What follows when one opens.
fn opens(when: &str, load: &PackLoad, reader: &Reader) -> String {
    let show = |a| reader.show(amperes(a));
    let shared = format!(
        "{when}, of {} the pack with the least resistance takes {}; its limit is {}.",
        show(load.bank_a),
        show(load.most_a),
        show(load.limit_a)
    );
    let Some(first_a) = load.after_first_a() else {
        return format!(
            "{shared} When one opens, the current is lowered or cut before the others get too much."
        );
    };
    let follow = match load.followers() {
        0 => "and they hold".to_string(),
        _ if load.all_open() => "and all of them open in turn".to_string(),
        1 => "and one of them opens too".to_string(),
        follow => format!("and {follow} of them open too"),
    };
    if load.steps.first().is_some_and(|step| step.left == 1) {
        let follow = if load.followers() == 0 {
            "and it holds"
        } else {
            "and it opens too"
        };
        return format!(
            "{shared} When one opens, the other gets {}, {follow}.",
            show(first_a)
        );
    }
    format!(
        "{shared} When one opens, the others get up to {} each, {follow}.",
        show(first_a)
    )
}

/// What a short circuit draws, and the fuse of each.
fn short(packs: &PacksReport, reader: &Reader) -> String {
    let kilo = |a: f64| reader.show(kiloamperes_of(a).to(1));
    let breaks = match packs.breaks_ka {
        Some(breaks_ka) => format!(
            "must be able to break {}",
            reader.show(kiloamperes_of(1000.0 * breaks_ka))
        ),
        None => "would have to break more than any is built for".to_string(),
    };
    format!(
        "A short circuit draws {} from one pack, and one at a pack draws {} from the others: the fuse of each sits at the pack and {breaks}.",
        kilo(packs.short_a),
        kilo(packs.others_short_a)
    )
}
