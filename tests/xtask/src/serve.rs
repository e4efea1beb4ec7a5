//! Builds the page and serves it on this computer.

use crate::{Result, page, run::cargo_command, run::succeed};

/// The server is a program of the tests, so that the task runner itself is
/// built sooner.
pub fn serve(port: Option<u16>) -> Result<()> {
    page::build()?;
    let mut serve = cargo_command(&[
        "run",
        "--quiet",
        "--locked",
        "--package=ampwright-tests",
        "--features=server",
        "--bin=serve",
    ]);
    if let Some(port) = port {
        serve.arg("--").arg(port.to_string());
    }
    succeed(serve)
}
