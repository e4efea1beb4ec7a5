#![forbid(unsafe_code)]
//! Weighs the finished page, as it is and compressed, against its budget.

use flate2::{Compression, write::GzEncoder};
use std::{
    fs,
    io::{self, Write},
    process::ExitCode,
};
use xtask::{files, places};

/// What something may weigh, compressed with brotli, in bytes.
struct Budget {
    what: &'static str,
    /// What it is meant to stay below.
    wanted: usize,
    /// What it weighs at most until it does: the check fails above this.
    at_most: usize,
}

/// All that a first visit loads. Above what is wanted since the page is made of
/// components, and further since the sea trial, the months, the answer in
/// words, the day as legs, the battery's link and packs in parallel have joined it.
/// In two parts the program weighs a twentieth more than in one, as each is
/// compressed by itself; the first screen can be used a quarter sooner for it.
const WHOLE: Budget = Budget {
    what: "A first visit",
    wanted: 570_000,
    at_most: 760_000,
};
/// All of it but the part of the program that is fetched once the first screen
/// can be used.
const FIRST: Budget = Budget {
    what: "What the first screen waits for",
    wanted: 440_000,
    at_most: 400_000,
};
/// What the part is called that is fetched then.
const LATER: &str = "later-";
/// The calculations and the front end in it, both parts, likewise.
const WASM: Budget = Budget {
    what: "The wasm part",
    wanted: 520_000,
    at_most: 720_000,
};

fn main() -> ExitCode {
    match weigh_all() {
        Ok(true) => ExitCode::SUCCESS,
        Ok(false) => ExitCode::FAILURE,
        Err(e) => {
            eprintln!("{}: {e}.", places::dist().display());
            ExitCode::FAILURE
        }
    }
}

/// Sizes in bytes.
#[derive(Clone, Copy, Default)]
struct Weight {
    raw: usize,
    gzip: usize,
    brotli: usize,
}

impl Weight {
    fn of(bytes: &[u8]) -> io::Result<Weight> {
        let mut gzip = GzEncoder::new(Vec::new(), Compression::best());
        gzip.write_all(bytes)?;
        let mut brotli = brotli::CompressorWriter::new(Vec::new(), 4096, 11, 22);
        brotli.write_all(bytes)?;
        Ok(Weight {
            raw: bytes.len(),
            gzip: gzip.finish()?.len(),
            brotli: brotli.into_inner().len(),
        })
    }

    fn add(&mut self, other: Weight) {
        self.raw += other.raw;
        self.gzip += other.gzip;
        self.brotli += other.brotli;
    }

    fn row(&self, name: &str) {
        let Weight { raw, gzip, brotli } = self;
        println!("{raw:>9} {gzip:>9} {brotli:>9}  {name}");
    }
}

fn weigh_all() -> io::Result<bool> {
    println!("{:>9} {:>9} {:>9}  bytes of", "raw", "gzip", "brotli");
    let [mut whole, mut first, mut wasm] = [Weight::default(); 3];
    for name in files::names(&places::dist())? {
        let weight = Weight::of(&fs::read(places::dist().join(&name))?)?;
        weight.row(&name);
        whole.add(weight);
        if !name.starts_with(LATER) {
            first.add(weight);
        }
        if name.ends_with(".wasm") {
            wasm.add(weight);
        }
    }
    whole.row("everything");
    let within = [
        FIRST.holds(first.brotli),
        WHOLE.holds(whole.brotli),
        WASM.holds(wasm.brotli),
    ];
    Ok(within.into_iter().all(|holds| holds))
}

impl Budget {
    /// Says how much of it is used; whether no more than at most.
    fn holds(&self, bytes: usize) -> bool {
        let Budget {
            what,
            wanted,
            at_most,
        } = self;
        let verdict = match bytes {
            bytes if bytes <= *wanted => format!("within the {wanted} that are wanted"),
            bytes if bytes <= *at_most => {
                format!("OVER the {wanted} that are wanted, within {at_most}")
            }
            _ => format!("OVER {at_most}"),
        };
        println!("{what} takes {bytes} bytes with brotli, {verdict}.");
        bytes <= *at_most
    }
}
