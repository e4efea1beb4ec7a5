//! The same run by SciPy's LSODA, where Python and SciPy are at hand.

use std::ffi::OsStr;
use std::path::Path;
use std::process::Command;

/// What it took.
pub struct Rival {
    /// Processor time \[ms\].
    pub ms: f64,
    /// Minutes to 80 %.
    pub minutes: f64,
    /// Its tolerance.
    pub tolerance: f64,
    /// Largest part by which our answers are off, and its own.
    pub errors: [f64; 2],
}

/// The run with the loosest tolerance that is no further off than answers of ours:
/// minutes to 80 %, minutes to the end, hottest winding \[°C\].
///
/// # Errors
/// Why there is nothing to compare with.
pub fn lsoda(ours: [f64; 3]) -> Result<Rival, String> {
    let tests = Path::new(env!("CARGO_MANIFEST_DIR"));
    let python = |arguments: &[&OsStr]| {
        Command::new("python3")
            .args(arguments)
            .output()
            .map_err(|fault| format!("python3 cannot be started ({fault})"))
    };
    let probe = python(&["-c".as_ref(), "import scipy".as_ref()])?;
    if !probe.status.success() {
        return Err("SciPy is missing (python3 -m pip install scipy)".to_string());
    }
    let script = tests.join("bench/lsoda.py");
    let runs = tests.join("reference/charge_runs.json");
    let ours = ours.map(|figure| figure.to_string());
    let files = [script.as_os_str(), runs.as_os_str()];
    let figures = ours.iter().map(OsStr::new);
    let arguments: Vec<&OsStr> = files.into_iter().chain(figures).collect();
    let answer = python(&arguments)?;
    if !answer.status.success() {
        return Err(String::from_utf8_lossy(&answer.stderr).into_owned());
    }
    let text = String::from_utf8_lossy(&answer.stdout);
    let numbers = text.split_whitespace().map(str::parse::<f64>);
    match numbers.collect::<Result<Vec<f64>, _>>().as_deref() {
        Ok(&[ms, minutes, tolerance, our_error, error]) => Ok(Rival {
            ms,
            minutes,
            tolerance,
            errors: [our_error, error],
        }),
        _ => Err(format!("its answer is not five numbers: {text}")),
    }
}
