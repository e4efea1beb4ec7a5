//! The same run by SciPy's LSODA, where Python and SciPy are at hand.

use std::path::Path;
use std::process::Command;

/// Milliseconds and minutes to 80 %.
///
/// # Errors
/// Why there is nothing to compare with.
pub fn lsoda() -> Result<(f64, f64), String> {
    let tests = Path::new(env!("CARGO_MANIFEST_DIR"));
    let python = |arguments: &[&Path]| {
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
    let answer = python(&[&script, &runs])?;
    if !answer.status.success() {
        return Err(String::from_utf8_lossy(&answer.stderr).into_owned());
    }
    let text = String::from_utf8_lossy(&answer.stdout);
    let mut numbers = text.split_whitespace().map(str::parse::<f64>);
    match (numbers.next(), numbers.next()) {
        (Some(Ok(ms)), Some(Ok(minutes))) => Ok((ms, minutes)),
        _ => Err(format!("its answer is not two numbers: {text}")),
    }
}
