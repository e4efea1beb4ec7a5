//! The finished page, served for one test.

use ampwright_tests::server::Server;
use std::{
    env, fs,
    path::{Path, PathBuf},
    process,
    sync::atomic::{AtomicU32, Ordering},
};
use xtask::{files, places};

/// A running copy of the page.
pub struct Site {
    server: Server,
    copy: Option<PathBuf>,
}

impl Site {
    /// Serves the finished page.
    pub fn start() -> Site {
        Site::serve(finished(), None)
    }

    /// Serves a copy of the finished page that the test may change first.
    pub fn changed(change: impl FnOnce(&Path)) -> Site {
        static COUNT: AtomicU32 = AtomicU32::new(0);
        let number = COUNT.fetch_add(1, Ordering::Relaxed);
        let name = format!("ampwright-site-{}-{number}", process::id());
        let copy = env::temp_dir().join(name);
        fs::remove_dir_all(&copy).ok();
        files::copy(&finished(), &copy).expect("the page can be copied");
        change(&copy);
        Site::serve(copy.clone(), Some(copy))
    }

    fn serve(folder: PathBuf, copy: Option<PathBuf>) -> Site {
        let server = Server::start(folder, 0).expect("a free port");
        Site { server, copy }
    }

    /// The address of the start page.
    pub fn url(&self) -> String {
        self.server.url()
    }

    /// The folder that is served, when it is a copy.
    pub fn folder(&self) -> &Path {
        self.copy.as_deref().expect("a copy of the page")
    }

    /// Takes the network away.
    pub fn stop(&mut self) {
        self.server.stop();
    }
}

impl Drop for Site {
    fn drop(&mut self) {
        self.server.stop();
        if let Some(copy) = &self.copy {
            fs::remove_dir_all(copy).ok();
        }
    }
}

/// The one file of a page whose name holds this.
pub fn part(folder: &Path, word: &str) -> PathBuf {
    let mut found = fs::read_dir(folder)
        .expect("a folder")
        .map(|entry| entry.expect("an entry").path())
        .filter(|file| {
            file.file_name()
                .is_some_and(|name| name.to_string_lossy().contains(word))
        });
    match (found.next(), found.next()) {
        (Some(file), None) => file,
        _ => panic!("{} holds not one file like {word}", folder.display()),
    }
}

fn finished() -> PathBuf {
    let dist = places::dist();
    assert!(
        dist.join("index.html").is_file(),
        "There is no finished page yet: run `cargo xtask build` first."
    );
    dist
}
