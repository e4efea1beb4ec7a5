//! Texts that the browser keeps for this page under names, until somebody
//! clears them away. It may refuse to, or be full.

use std::error::Error;
use std::fmt;

use leptos::prelude::window;
use leptos::task::spawn_local;
use wasm_bindgen_futures::JsFuture;

/// The browser's storage, once it was seen to be there.
pub struct Storage(web_sys::Storage);

/// Why the browser keeps nothing.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum StorageError {
    /// It lets the page keep nothing at all.
    Blocked,
    /// There is no room left.
    Full,
}

impl Error for StorageError {}

impl fmt::Display for StorageError {
    fn fmt(&self, text: &mut fmt::Formatter) -> fmt::Result {
        text.write_str(match self {
            StorageError::Blocked => {
                "This browser does not let the page keep anything; it will be gone when the page is closed."
            }
            StorageError::Full => {
                "The browser's storage takes nothing more; this boat is kept in memory only. Make a link of it, or delete an old one."
            }
        })
    }
}

impl Storage {
    /// Looks whether it is there.
    ///
    /// # Errors
    /// [`StorageError::Blocked`] where it is not.
    pub fn open() -> Result<Storage, StorageError> {
        // What prints the page keeps nothing.
        if cfg!(not(target_arch = "wasm32")) {
            return Err(StorageError::Blocked);
        }
        match window().local_storage() {
            Ok(Some(storage)) => Ok(Storage(storage)),
            _ => Err(StorageError::Blocked),
        }
    }

    /// What is kept under a name.
    pub fn get(&self, name: &str) -> Option<String> {
        self.0.get_item(name).ok().flatten()
    }

    /// Keeps a text under a name, and reads it back.
    ///
    /// # Errors
    /// [`StorageError::Full`] if it is not there afterwards.
    pub fn set(&self, name: &str, text: &str) -> Result<(), StorageError> {
        let set = self.0.set_item(name, text);
        if set.is_ok() && self.get(name).as_deref() == Some(text) {
            Ok(())
        } else {
            Err(StorageError::Full)
        }
    }

    /// Keeps nothing under a name any more.
    pub fn remove(&self, name: &str) {
        let _ = self.0.remove_item(name);
    }

    /// All names.
    pub fn names(&self) -> Vec<String> {
        let count = self.0.length().unwrap_or(0);
        (0..count)
            .filter_map(|at| self.0.key(at).ok().flatten())
            .collect()
    }
}

/// What is remembered under a name; nothing where storage is blocked.
pub fn recall(name: &str) -> Option<String> {
    Storage::open().ok()?.get(name)
}

/// Remembers a preference. Where storage is full or blocked it is forgotten,
/// and the page goes on.
pub fn remember(name: &str, text: &str) {
    if let Ok(storage) = Storage::open() {
        let _ = storage.set(name, text);
    }
}

/// Asks the browser not to clear away what is kept when it is short of room.
pub fn ask_to_persist() {
    let Ok(asked) = window().navigator().storage().persist() else {
        return;
    };
    spawn_local(async move {
        // What it decides, it does not say.
        let _ = JsFuture::from(asked).await;
    });
}
