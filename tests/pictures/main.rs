#![forbid(unsafe_code)]
//! Takes the README's pictures of the built page afresh: the demo on a phone
//! by day and by night, and on a desk.
//!
//! `cargo xtask pictures` builds the page and runs this.

mod palette;

use std::{fs, thread, time::Duration};

use ampwright_tests::{
    driver::{Browser, Screen},
    server::Server,
};
use serde_json::json;
use xtask::places;

type Result<T> = std::result::Result<T, String>;

/// Brings a part of the page to the top, under the strip with the answer.
const SCROLL: &str = "
document.activeElement.blur();
document.documentElement.style.setProperty('caret-color', 'transparent');
const part = document.querySelector(arguments[0]);
const rest = () => new Promise((drawn) => setTimeout(drawn, 500));
const go = () => scrollTo(0, part ? part.getBoundingClientRect().top + scrollY - arguments[1] : 0);
go();
// What comes into sight only now gets its true height.
return rest().then(go).then(rest);";

/// A picture: its name, the screen, its size \[CSS pixels\], pixels to one of
/// those, the part on top and how far below the edge, whether by night.
struct Picture {
    name: &'static str,
    screen: Screen,
    size: (u32, u32),
    scale: f64,
    part: (&'static str, u32),
    night: bool,
}

const PICTURES: [Picture; 3] = [
    Picture {
        name: "phone-day",
        screen: Screen::Phone,
        size: (360, 720),
        scale: 1.5,
        part: ("nothing", 0),
        night: false,
    },
    Picture {
        name: "phone-night",
        screen: Screen::Phone,
        size: (360, 720),
        scale: 1.5,
        part: (".chart", 85),
        night: true,
    },
    Picture {
        name: "desk",
        screen: Screen::Desk,
        size: (1280, 720),
        scale: 1.0,
        part: ("nothing", 0),
        night: false,
    },
];

fn main() -> Result<()> {
    let server = Server::start(places::dist(), 0).map_err(|e| e.to_string())?;
    for picture in &PICTURES {
        let file = places::root()
            .join("web/pictures")
            .join(format!("{}.png", picture.name));
        let png = palette::small(&take(picture, &server)?)?;
        fs::write(&file, &png).map_err(|e| format!("{}: {e}.", file.display()))?;
        println!("{:>7} bytes  {}", png.len(), file.display());
    }
    Ok(())
}

fn take(picture: &Picture, server: &Server) -> Result<Vec<u8>> {
    let browser = Browser::open(picture.screen)?;
    browser.go(&server.url())?;
    browser.wait_for("[data-complete] #demo")?.click()?;
    if picture.night {
        browser.wait_for("#look")?.click()?;
    }
    // How sure the answer is stands in the strip as well.
    thread::sleep(Duration::from_secs(1));
    browser.wait_gone(".stale")?;
    let bare = json!({ "hidden": true });
    browser.devtools("Emulation.setScrollbarsHidden", bare)?;
    // The first one sets the size of the screen.
    browser.picture(picture.size, picture.scale)?;
    let (part, below) = picture.part;
    browser.script(SCROLL, &[part.into(), below.into()])?;
    browser.picture(picture.size, picture.scale)
}
