//! The driver process and the browser it starts.

use super::{Engine, Result, engine::is_heard};
use std::{
    fs,
    io::{BufRead, BufReader, Write},
    path::{Path, PathBuf},
    process::{Child, Command, Stdio},
    sync::mpsc,
    thread,
    time::{Duration, Instant},
};

/// Starts the driver and ends it when it is told so, or when whoever started
/// this is gone, however that came about; then it clears up, once no browser is
/// left that writes there. The browser ends with the driver, and a display that
/// was started for it as one of its group.
const KEEPER: &str = r#"$DISPLAY_FIRST "$DRIVER" --port="$PORT" &
read -r told
kill -s KILL -- "$GROUP$!"
if [ -n "$told" ] || [ -z "$LITTER" ]; then exit; fi
uses='index($0, ENVIRON["LITTER"]) { found = 1 } END { exit !found }'
left=600
while [ "$left" -gt 0 ] && cat /proc/[0-9]*/cmdline 2>/dev/null | tr '\0' '\n' | awk "$uses"
do left=$((left - 1)); sleep 0.1; done
rm -rf "$LITTER""#;

/// One driver process of our own.
pub struct Driver {
    keeper: Child,
    port: u16,
    profile: PathBuf,
}

impl Driver {
    /// Starts a driver on a port that it picks itself. A profile that is
    /// `litter` goes with it, should there be nobody left to take it away.
    pub fn start(engine: Engine, profile: &Path, litter: bool) -> Result<Driver> {
        let program = engine.driver()?;
        let litter = if litter {
            profile.as_os_str()
        } else {
            "".as_ref()
        };
        let mut keeper = Command::new("sh");
        keeper
            .args(["-c", KEEPER])
            .env("DRIVER", &program)
            .env("LITTER", litter);
        let port = engine.prepare(&mut keeper)?;
        let mut keeper = keeper
            .stdin(Stdio::piped())
            .stdout(Stdio::piped())
            .stderr(Stdio::null())
            .spawn()
            .map_err(|e| format!("{} does not start: {e}", program.display()))?;
        let output = keeper.stdout.take();
        let mut driver = Driver {
            keeper,
            port: 0,
            profile: profile.to_path_buf(),
        };
        let (tell, hear) = mpsc::channel();
        thread::spawn(move || {
            // Reads on to the end, so that the driver never waits for us.
            for line in BufReader::new(output?).lines().map_while(|line| line.ok()) {
                if let Some(port) = Engine::port_in(&line) {
                    tell.send(port).ok();
                }
            }
            Some(())
        });
        let patience = Duration::from_secs(120);
        driver.port = match port {
            Some(port) => heard(port, patience)?,
            None => hear
                .recv_timeout(patience)
                .map_err(|_| "The driver did not say on which port it listens.".to_string())?,
        };
        Ok(driver)
    }

    pub fn port(&self) -> u16 {
        self.port
    }

    /// Ends the driver and every process of its browser that is still there.
    pub fn end(&mut self) {
        // A browser told to close needs a moment to store everything.
        let patience = Instant::now() + Duration::from_secs(30);
        while !self.browsers().is_empty() && Instant::now() < patience {
            thread::sleep(Duration::from_millis(50));
        }
        self.kill();
    }

    /// The same without a moment to store anything.
    pub fn kill(&mut self) {
        let left = self.browsers();
        if !left.is_empty() {
            Command::new("kill").arg("-KILL").args(left).status().ok();
        }
        if let Some(mut told) = self.keeper.stdin.take() {
            writeln!(told, "end").ok();
        }
        self.keeper.wait().ok();
    }

    /// The process ids of the browser, told by its profile folder, which no
    /// other browser has.
    fn browsers(&self) -> Vec<String> {
        let mark = self.profile.to_string_lossy();
        let Ok(processes) = fs::read_dir("/proc") else {
            return Vec::new();
        };
        processes
            .filter_map(|entry| entry.ok()?.file_name().into_string().ok())
            .filter(|name| name.bytes().all(|b| b.is_ascii_digit()))
            .filter(|name| {
                fs::read(format!("/proc/{name}/cmdline"))
                    .is_ok_and(|line| String::from_utf8_lossy(&line).contains(&*mark))
            })
            .collect()
    }
}

impl Drop for Driver {
    fn drop(&mut self) {
        self.kill();
    }
}

/// A port, once the driver listens on it.
fn heard(port: u16, patience: Duration) -> Result<u16> {
    let until = Instant::now() + patience;
    while Instant::now() < until {
        if is_heard(port) {
            return Ok(port);
        }
        thread::sleep(Duration::from_millis(50));
    }
    Err(format!("The driver does not listen on port {port}."))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::driver::{Profile, patiently};

    fn until_gone(port: u16) {
        let gone = || match is_heard(port) {
            true => Err("The driver listens still.".into()),
            false => Ok(()),
        };
        assert_eq!(patiently(gone), Ok(()));
    }

    #[test]
    fn a_driver_ends_when_it_is_told() {
        let profile = Profile::new().unwrap();
        let driver = Driver::start(Engine::Chromium, profile.folder(), false).unwrap();
        let port = driver.port();
        assert!(is_heard(port));
        drop(driver);
        until_gone(port);
    }

    #[test]
    fn a_driver_ends_with_whoever_started_it_and_clears_up() {
        let profile = Profile::new().unwrap();
        let mut driver = Driver::start(Engine::Chromium, profile.folder(), true).unwrap();
        let port = driver.port();
        drop(driver.keeper.stdin.take());
        driver.keeper.wait().unwrap();
        until_gone(port);
        assert!(!profile.folder().exists());
    }
}
