//! The driver process and the browser it starts.

use super::Result;
use std::{
    fs,
    io::{BufRead, BufReader, Write},
    path::{Path, PathBuf},
    process::{Child, Command, Stdio},
    sync::mpsc,
    thread,
    time::{Duration, Instant},
};
use xtask::programs;

/// Starts the driver and ends it when it is told so, or when whoever started
/// this is gone, however that came about; then it clears up. The browser ends
/// with the driver.
const KEEPER: &str = r#""$DRIVER" --port=0 &
read -r told
kill -KILL $!
if [ -z "$told" ] && [ -n "$LITTER" ]; then sleep 2; rm -rf "$LITTER"; fi"#;

/// One driver process of our own.
pub struct Driver {
    keeper: Child,
    port: u16,
    profile: PathBuf,
}

impl Driver {
    /// Starts a driver on a port that it picks itself. A profile that is
    /// `litter` goes with it, should there be nobody left to take it away.
    pub fn start(profile: &Path, litter: bool) -> Result<Driver> {
        let program = programs::chromedriver().ok_or(
            "The program chromedriver is not on the search path; \
             `cargo xtask test` says how to install it.",
        )?;
        let litter = if litter {
            profile.as_os_str()
        } else {
            "".as_ref()
        };
        let mut keeper = Command::new("sh")
            .args(["-c", KEEPER])
            .env("DRIVER", &program)
            .env("LITTER", litter)
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
                if let Some(port) = port_in(&line) {
                    tell.send(port).ok();
                }
            }
            Some(())
        });
        driver.port = hear
            .recv_timeout(Duration::from_secs(60))
            .map_err(|_| "chromedriver did not say on which port it listens.".to_string())?;
        Ok(driver)
    }

    pub fn port(&self) -> u16 {
        self.port
    }

    /// Ends the driver and every process of its browser that is still there.
    pub fn end(&mut self) {
        // A browser told to close needs a moment to store everything.
        let patience = Instant::now() + Duration::from_secs(10);
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

/// The port in the sentence "… was started successfully on port 40123."
fn port_in(line: &str) -> Option<u16> {
    let (_, after) = line.split_once("successfully on port ")?;
    after.trim_end_matches(['.', '\r']).parse().ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_port_is_read_from_the_greeting() {
        let line = "ChromeDriver was started successfully on port 40123.";
        assert_eq!(port_in(line), Some(40123));
        assert_eq!(port_in("Please protect ports used by it."), None);
    }
}
