//! A profile folder: all that a browser keeps.

use super::Result;
use std::{
    env, fs,
    path::{Path, PathBuf},
    process,
    sync::atomic::{AtomicU32, Ordering},
    thread,
    time::Duration,
};

static COUNT: AtomicU32 = AtomicU32::new(0);

/// A fresh folder for one profile, removed when dropped.
pub struct Profile {
    folder: PathBuf,
}

impl Profile {
    pub fn new() -> Result<Profile> {
        let number = COUNT.fetch_add(1, Ordering::Relaxed);
        let name = format!("ampwright-profile-{}-{number}-", process::id());
        let folder = env::temp_dir().join(name);
        // Left behind by a run that was cut short.
        fs::remove_dir_all(&folder).ok();
        fs::create_dir_all(&folder)
            .map_err(|e| format!("No profile folder at {}: {e}", folder.display()))?;
        Ok(Profile { folder })
    }

    pub fn folder(&self) -> &Path {
        &self.folder
    }
}

impl Drop for Profile {
    fn drop(&mut self) {
        // A dying browser may still write for a moment.
        for _ in 0..100 {
            if fs::remove_dir_all(&self.folder).is_ok() || !self.folder.exists() {
                return;
            }
            thread::sleep(Duration::from_millis(100));
        }
    }
}
