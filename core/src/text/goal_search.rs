//! What a goal search found, in sentences.

use crate::decision::goal_search::{Change, Found, Step, Unmet};
use crate::text::findings::sentences;
use crate::units::Reader;
use crate::units::quantity::{amperes, minutes};

/// What there is to say before the plans, one sentence or a few each.
pub fn goal_search(found: &Found, reader: &Reader) -> Vec<String> {
    let mut said = Vec::new();
    if !found.today.is_empty() {
        said.push(format!(
            "Your boat as it stands is not safe to run like this, so leaving it unchanged is not a plan. {}",
            sentences(&found.today, reader)
        ));
    }
    match &found.unmet {
        None => {}
        Some(Unmet::NothingSafe { always }) => {
            let kept: Vec<_> = found
                .today
                .iter()
                .filter(|finding| always.contains(&finding.code()))
                .cloned()
                .collect();
            said.push(if kept.is_empty() {
                "None of these combinations is safe. Let more be changed, or put right what is wrong today first.".to_string()
            } else {
                format!(
                    "None of these combinations is safe, because none of them changes this: {} Put that right first, then search again.",
                    sentences(&kept, reader)
                )
            });
        }
        Some(Unmet::OutOfReach) => said.push(
            "None of the safe combinations reaches the goal. Let more be changed, or ask for less."
                .to_string(),
        ),
    }
    said
}

/// What a step changes: "a blower with 200 m³/h more".
pub fn step_change(step: &Step, reader: &Reader) -> String {
    let amount = step
        .amount
        .map_or_else(String::new, |amount| reader.show(amount));
    let what = match step.change {
        Change::Blower => format!("a blower with {amount} more"),
        Change::Duct => "a cool-air duct to the alternator".to_string(),
        Change::TemperatureLimit => format!("a temperature limit of {amount} at the regulator"),
        Change::CurrentCap => format!("a current cap of {amount} at the regulator"),
        Change::Charger => format!("a DC-DC charger of {amount}"),
        Change::Direct => "direct to the bank, with an external regulator".to_string(),
        Change::Regulator => "an external regulator with a temperature sensor".to_string(),
        Change::LargerAlternator => format!("an alternator of {amount} in its place"),
        Change::SecondAlternator => format!("a second alternator of {amount} for the bank"),
        Change::Pulley => format!("a smaller alternator pulley: ratio higher by {amount}"),
        Change::Panels => format!("{amount} more of solar panels"),
        Change::Bank => format!("a bank of {amount}"),
        Change::LighterLoads => format!("loads lighter by {amount}"),
        Change::Generator => {
            format!("a generator with a mains charger of {amount}, in place of the engine")
        }
        Change::MainsCharger => format!("a mains charger of {amount} on the generator"),
    };
    match step.cap {
        None => what,
        Some(cap) => format!("{what}, its current cap set to {}", reader.show(cap)),
    }
}

/// A step with what it brings; the price stands beside it.
pub fn plan_step(step: &Step, reader: &Reader) -> String {
    let more_a = step.adds_a.round();
    let current = if more_a == 0.0 {
        String::new()
    } else {
        let plus = if more_a > 0.0 { "+" } else { "" };
        format!("{plus}{} hot, ", reader.show(amperes(more_a)))
    };
    let saved_min = 60.0 * step.saves_h;
    let time = reader.show(minutes(saved_min.abs()));
    let time = if saved_min.abs() < 0.5 {
        "no time by itself".to_string()
    } else if saved_min > 0.0 {
        format!("{time} a day less")
    } else {
        format!("{time} a day more")
    };
    format!("{}: {current}{time}", step_change(step, reader))
}
