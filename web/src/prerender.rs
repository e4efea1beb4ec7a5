//! The page as the build writes it: what a fresh boat gives, so that there is
//! something to read before the wasm arrives. `cargo xtask stamp` puts it into
//! `index.html`.

use leptos::prelude::*;

use crate::app::App;
use crate::state::AppState;

/// Everything within `#app`.
pub fn page() -> String {
    Owner::new_root(None).with(|| {
        AppState::provide();
        view! { <App /> }.to_html()
    })
}
