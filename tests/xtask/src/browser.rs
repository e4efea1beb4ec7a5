//! Makes sure that there are browsers to test in.

use crate::{
    Result,
    run::{answer, command, say, succeed},
    tools::install,
    versions::GECKODRIVER,
};
use std::path::PathBuf;
use xtask::programs;

/// A browser that the tests drive, with the packages that bring it.
struct Wanted {
    name: &'static str,
    packages: &'static [&'static str],
    missing: fn() -> Vec<String>,
}

const CHROMIUM: Wanted = Wanted {
    name: "Chromium and its driver",
    packages: &["chromium", "chromium-driver", "fonts-dejavu-core"],
    missing: || {
        let browser = format!("a browser ({})", programs::BROWSERS.join(", "));
        let driver = "chromedriver in the browser's version".to_string();
        absent([
            (programs::browser(), browser),
            (programs::chromedriver(), driver),
        ])
    },
};

const FIREFOX: Wanted = Wanted {
    name: "Firefox",
    packages: &["firefox-esr"],
    missing: || absent([(programs::firefox(), "Firefox".to_string())]),
};

const WEBKIT: Wanted = Wanted {
    name: "WebKit, its driver and a display for it",
    packages: &["webkit2gtk-driver", "xvfb", "xauth"],
    missing: || {
        absent([
            (programs::webkit_driver(), "WebKitWebDriver".to_string()),
            (
                programs::webkit_browser(),
                "WebKit's MiniBrowser".to_string(),
            ),
            (programs::find(&["xvfb-run"]), "xvfb-run".to_string()),
        ])
    },
};

/// Finds Chromium and its driver, or installs them where that is possible.
pub fn ready() -> Result<()> {
    CHROMIUM.ready()
}

/// Finds Firefox or installs it; its driver is built where there is none.
pub fn firefox() -> Result<()> {
    FIREFOX.ready()?;
    match programs::geckodriver() {
        Some(_) => Ok(()),
        None => install("geckodriver", GECKODRIVER, &[], "2 to 3 minutes"),
    }
}

/// Finds WebKit and its driver, or installs them where that is possible.
pub fn webkit() -> Result<()> {
    WEBKIT.ready()
}

impl Wanted {
    fn ready(&self) -> Result<()> {
        let Err(missing) = self.present() else {
            return Ok(());
        };
        let Some(right) = right_to_install() else {
            return Err(missing);
        };
        say(&format!("Installing {}; usually a minute.", self.name));
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
        install.extend(self.packages);
        apt(&["update"])
            .and_then(|()| apt(&install))
            .map_err(|e| format!("{e} {missing}"))?;
        self.present()
    }

    fn present(&self) -> Result<()> {
        let missing = (self.missing)();
        if missing.is_empty() {
            return Ok(());
        }
        Err(format!(
            "The search path lacks {}. Please install {}; on Debian: apt-get install {}.",
            missing.join(" and "),
            self.name,
            self.packages.join(" ")
        ))
    }
}

/// What of these is not there.
fn absent<const COUNT: usize>(programs: [(Option<PathBuf>, String); COUNT]) -> Vec<String> {
    let absent = programs.into_iter().filter(|(found, _)| found.is_none());
    absent.map(|(_, name)| name).collect()
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
