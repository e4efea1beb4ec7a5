//! Makes sure that there is a browser to test in.

use crate::{
    Result,
    run::{answer, command, say, succeed},
};
use xtask::programs;

const PACKAGES: [&str; 3] = ["chromium", "chromium-driver", "fonts-dejavu-core"];

/// Finds the browser and its driver, or installs them where that is possible.
pub fn ready() -> Result<()> {
    let Err(missing) = present() else {
        return Ok(());
    };
    let Some(right) = right_to_install() else {
        return Err(missing);
    };
    say("Installing Chromium and its driver; usually a minute.");
    let apt = |args: &[&str]| {
        let mut words: Vec<&str> = right.to_vec();
        words.extend([
            "env",
            "DEBIAN_FRONTEND=noninteractive",
            "apt-get",
            "--quiet",
        ]);
        words.extend(args);
        let mut line = command(words[0]);
        line.args(&words[1..]);
        succeed(line)
    };
    let mut install = vec!["install", "--yes", "--no-install-recommends"];
    install.extend(PACKAGES);
    apt(&["update"])
        .and_then(|()| apt(&install))
        .map_err(|e| format!("{e} {missing}"))?;
    present()
}

fn present() -> Result<()> {
    let mut missing = Vec::new();
    if programs::browser().is_none() {
        missing.push(format!("a browser ({})", programs::BROWSERS.join(", ")));
    }
    if programs::chromedriver().is_none() {
        missing.push("chromedriver in the browser's version".to_string());
    }
    if missing.is_empty() {
        return Ok(());
    }
    Err(format!(
        "The search path lacks {}. Please install Chromium and its driver; \
         on Debian: apt-get install {}.",
        missing.join(" and "),
        PACKAGES.join(" ")
    ))
}

/// The words to put before apt-get, when there is one and we may use it.
fn right_to_install() -> Option<&'static [&'static str]> {
    programs::find(&["apt-get"])?;
    let mut id = command("id");
    id.arg("-u");
    if answer(id)? == "0" {
        return Some(&[]);
    }
    let mut sudo = command("sudo");
    sudo.args(["-n", "true"]);
    answer(sudo).map(|_| &["sudo", "-n"][..])
}
