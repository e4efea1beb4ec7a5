//! What is worked out when somebody first asks for it: no finding rests on it, and
//! an answer is there sooner without it.

use std::fmt;
use std::ops::Deref;
use std::sync::{Arc, OnceLock};

use serde::{Serialize, Serializer};

/// An analysis that is worked out when somebody first looks at it, and once.
#[derive(Clone)]
pub struct WhenAsked<T> {
    work: Arc<dyn Fn() -> T + Send + Sync>,
    answer: OnceLock<T>,
}

impl<T> WhenAsked<T> {
    pub(super) fn new(work: impl Fn() -> T + Send + Sync + 'static) -> WhenAsked<T> {
        WhenAsked {
            work: Arc::new(work),
            answer: OnceLock::new(),
        }
    }
}

impl<T> Deref for WhenAsked<T> {
    type Target = T;

    fn deref(&self) -> &T {
        self.answer.get_or_init(|| (self.work)())
    }
}

/// Written as what it says.
impl<T: fmt::Debug> fmt::Debug for WhenAsked<T> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        (**self).fmt(f)
    }
}

/// Equal in what they say, whoever was asked already.
impl<T: PartialEq> PartialEq for WhenAsked<T> {
    fn eq(&self, other: &WhenAsked<T>) -> bool {
        **self == **other
    }
}

impl<T: Serialize> Serialize for WhenAsked<T> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        (**self).serialize(serializer)
    }
}
