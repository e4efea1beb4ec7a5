//! Builds the page and serves it on this computer.

use crate::{Result, page, run::say};
use ampwright_tests::{places, server::Server};

/// Where the page is served unless told otherwise.
const PORT: u16 = 8080;

pub fn serve(args: &[&str]) -> Result<()> {
    let wish = match args {
        [] => None,
        ["--port", port] => Some(read_port(port)?),
        [arg] if arg.starts_with("--port=") => Some(read_port(&arg["--port=".len()..])?),
        other => {
            return Err(format!(
                "serve does not know \"{}\"; it takes --port N.",
                other.join(" ")
            ));
        }
    };
    page::build()?;
    let mut server = start(wish)?;
    println!("Ampwright is at {}", server.url());
    say("Press Ctrl+C to stop.");
    server.wait();
    Ok(())
}

fn read_port(text: &str) -> Result<u16> {
    text.parse()
        .map_err(|_| format!("\"{text}\" is no port; give a number from 0 (any) to 65535."))
}

/// On the port wished for, or by default on a likely one or else on any.
fn start(wish: Option<u16>) -> Result<Server> {
    let first = wish.unwrap_or(PORT);
    match Server::start(places::dist(), first) {
        Ok(server) => Ok(server),
        Err(_) if wish.is_none() => Server::start(places::dist(), 0)
            .map_err(|e| format!("No port on this computer is free: {e}.")),
        Err(e) => Err(format!("Port {first} cannot be used: {e}.")),
    }
}
