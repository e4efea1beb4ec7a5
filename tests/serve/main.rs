#![forbid(unsafe_code)]
//! Serves the finished page on this computer, until it is stopped.
//!
//! `cargo xtask serve` builds the page and runs this.

use ampwright_tests::server::Server;
use std::{env, process::ExitCode};
use xtask::places;

/// Where the page is served unless told otherwise.
const PORT: u16 = 8080;

fn main() -> ExitCode {
    match start() {
        Ok(server) => {
            println!("Ampwright is at {}", server.url());
            eprintln!("Press Ctrl+C to stop.");
            server.wait();
            ExitCode::SUCCESS
        }
        Err(message) => {
            eprintln!("{message}");
            ExitCode::FAILURE
        }
    }
}

/// On the port wished for, or by default on a likely one or else on any.
fn start() -> Result<Server, String> {
    let on = |port: u16| {
        Server::start(places::dist(), port).map_err(|e| format!("Port {port} cannot be used: {e}."))
    };
    match env::args().nth(1) {
        None => on(PORT).or_else(|_| on(0)),
        Some(port) => on(port
            .parse()
            .map_err(|_| format!("\"{port}\" is no port."))?),
    }
}
