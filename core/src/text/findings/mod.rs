//! Findings as sentences: what is wrong with figures, why it matters, and what
//! to do. One file for each subject, as in `findings`.

mod belt;
mod cable;
mod charge;
mod day;
mod engine;
mod generator;
mod heat;
mod inputs;
mod lead;
mod legs;
mod link;
mod lithium;
mod load_dump;
mod management;
mod packs;
mod sensor;
mod sharing;
mod speed;
mod voltage;

#[cfg(test)]
mod tests;

use crate::findings::Finding;
use crate::units::Reader;

/// A finding in a sentence or a few, with its figures as the reader wants them.
pub fn sentence(finding: &Finding, reader: &Reader) -> String {
    match finding {
        Finding::Management(finding) => management::sentence(finding, reader),
        Finding::Link(finding) => link::sentence(finding, reader),
        Finding::Packs(finding) => packs::sentence(finding, reader),
        Finding::Voltage(finding) => voltage::sentence(finding, reader),
        Finding::Inputs(finding) => inputs::sentence(finding, reader),
        Finding::Heat(finding) => heat::sentence(finding, reader),
        Finding::Sensor(finding) => sensor::sentence(finding, reader),
        Finding::Sharing(finding) => sharing::sentence(finding, reader),
        Finding::Leg(finding) => legs::sentence(finding, reader),
        Finding::Speed(finding) => speed::sentence(finding, reader),
        Finding::Day(finding) => day::sentence(finding, reader),
        Finding::Charge(finding) => charge::sentence(finding, reader),
        Finding::Lithium(finding) => lithium::sentence(finding, reader),
        Finding::Lead(finding) => lead::sentence(finding, reader),
        Finding::Engine(finding) => engine::sentence(finding, reader),
        Finding::Generator(finding) => generator::sentence(finding, reader),
        Finding::Belt(finding) => belt::sentence(finding, reader),
        Finding::LoadDump(finding) => load_dump::sentence(finding, reader),
        Finding::Cable(finding) => cable::sentence(finding, reader),
    }
}

/// Several findings, one after the other.
pub fn sentences(findings: &[Finding], reader: &Reader) -> String {
    let all: Vec<String> = findings
        .iter()
        .map(|finding| sentence(finding, reader))
        .collect();
    all.join(" ")
}
