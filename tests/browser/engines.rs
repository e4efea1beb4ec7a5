//! The way to a first answer in Firefox and in WebKit: what a browser may do
//! otherwise than Chromium, in which everything else is tried.

use std::{env, fs, process};

use ampwright_core::boat::{Key, key};
use ampwright_core::schema::Value;
use ampwright_core::units::clock;
use ampwright_core::{Worksheet, report};
use ampwright_tests::driver::{Browser, Engine, Scope, Screen, patiently};
use serde_json::json;
use xtask::{bundle::bundle, places};

use crate::desk::{Desk, OPENED, answer, unfold};
use crate::site::Site;

/// The tests in each of the other browsers, named after it.
macro_rules! in_each {
    ($($test:ident),+ $(,)?) => {
        mod firefox {
            $(#[test] fn $test() { super::$test(super::Engine::Firefox); })+
        }
        mod webkit {
            $(#[test] fn $test() { super::$test(super::Engine::WebKit); })+
        }
    };
}

in_each!(
    a_first_answer,
    a_link_and_what_is_kept,
    every_part_opens,
    units_and_look,
    without_a_network,
    from_disk,
    what_the_policy_stops,
);

mod chromium {
    #[test]
    fn what_the_policy_stops() {
        super::what_the_policy_stops(super::Engine::Chromium);
    }
}

/// The engine time that the core has for a worksheet, as the strip says it.
fn time(said: &[(Key, f64)]) -> String {
    let mut sheet = Worksheet::default();
    for (key, number) in said {
        sheet.state(*key, Value::Number(*number)).expect("in range");
    }
    let hours = report(&sheet)
        .analyses
        .day
        .engine_hours
        .expect("a day closes");
    clock(60.0 * hours)
}

fn wait_time(desk: &Desk, time: &str) {
    let shown = desk.browser.wait_text("#answer-time", time);
    shown.unwrap_or_else(|why| panic!("{why}: {:?}", desk.answer()));
}

fn a_first_answer(engine: Engine) {
    let desk = Desk::open_in(engine, Screen::Phone);
    wait_time(&desk, &time(&[]));
    desk.fill("#ask-daily_use_ah", "150");
    wait_time(&desk, &time(&[(key!(daily.use_ah), 150.0)]));
    desk.fill("#ask-bank_capacity_ah", "2 x 230");
    desk.fill("#ask-alt_rated_a", "140");
    let said = [
        (key!(daily.use_ah), 150.0),
        (key!(bank.capacity_ah), 460.0),
        (key!(alt.rated_a), 140.0),
    ];
    wait_time(&desk, &time(&said));
    // What is no figure is said beside the entry, and the answer stays.
    desk.fill("#ask-bank_capacity_ah", "many");
    let complaint = "#ask-bank_capacity_ah-complaint";
    desk.browser
        .wait_text(complaint, "is used until you correct it")
        .unwrap();
    wait_time(&desk, &time(&said));
    desk.fill("#ask-bank_capacity_ah", "460,0");
    wait_time(&desk, &time(&said));
    desk.choose("#ask-reg_kind", "external");
    desk.choose("#ask-way_kind", "direct");
    let regulated = desk.linked().inputs;
    assert_eq!(regulated.bank.capacity_ah, 460.0);
    assert_eq!(regulated.alt.rated_a, 140.0);
}

fn a_link_and_what_is_kept(engine: Engine) {
    let desk = Desk::open_in(engine, Screen::Desk);
    desk.fill("#ask-bank_capacity_ah", "333");
    let link = desk.link();
    let told = desk.answer();
    desk.wait_kept("333");
    desk.browser.go("about:blank").unwrap();
    desk.browser.go(&desk.site.url()).unwrap();
    desk.browser.wait_for(OPENED).unwrap();
    assert_eq!(desk.answer(), told);
    let capacity = desk.browser.find("#ask-bank_capacity_ah").unwrap();
    assert_eq!(capacity.value().unwrap(), "333");
    // Somebody else opens the link.
    let other = Browser::open_as(engine, Screen::Desk).unwrap();
    other.go(&link).unwrap();
    other.wait_for(OPENED).unwrap();
    assert_eq!(answer(&other), told);
}

fn every_part_opens(engine: Engine) {
    let desk = Desk::open_in(engine, Screen::Desk);
    let listen = "window.wrong = [];
        addEventListener('error', (event) => wrong.push(event.message));
        addEventListener('unhandledrejection', (event) => wrong.push(String(event.reason)));";
    desk.browser.script(listen, &[]).unwrap();
    desk.press("#demo");
    desk.browser.wait_text("#arrival", "demo").unwrap();
    unfold(&desk.browser);
    let held = "return document.querySelectorAll('#arrange-cards article').length > 3
        && document.querySelectorAll('svg').length > 3";
    desk.browser.wait_script(held).unwrap();
    // Every figure has its working, set as a formula.
    let explain = "document.querySelector('#reading-values button').click()";
    desk.browser.script(explain, &[]).unwrap();
    desk.browser.wait_for("#reading-working math").unwrap();
    let wrong = desk.browser.script("return window.wrong", &[]).unwrap();
    assert_eq!(wrong, json!([]));
}

fn units_and_look(engine: Engine) {
    let desk = Desk::open_in(engine, Screen::Phone);
    desk.fill("#ask-space_outside_c", "30");
    desk.press("#units > summary");
    desk.button("US units").unwrap().click().unwrap();
    let outside = desk.browser.find("#ask-space_outside_c").unwrap();
    outside.wait_value("86").unwrap();
    let paper = "return getComputedStyle(document.body).backgroundColor";
    let day = desk.browser.script(paper, &[]).unwrap();
    desk.button("Night mode").unwrap().click().unwrap();
    let differs = format!("return getComputedStyle(document.body).backgroundColor !== {day}");
    desk.browser.wait_script(&differs).unwrap();
}

fn without_a_network(engine: Engine) {
    let mut desk = Desk::open_in(engine, Screen::Phone);
    desk.browser.wait_data("offline", "ready").unwrap();
    desk.fill("#ask-bank_capacity_ah", "321");
    desk.wait_kept("321");
    let told = desk.answer();
    desk.site.stop();
    // Not loaded again: Firefox' driver asks the network then, whatever is kept.
    desk.browser.go("about:blank").unwrap();
    desk.browser.go(&desk.site.url()).unwrap();
    desk.browser.wait_for(OPENED).unwrap();
    assert_eq!(desk.answer(), told);
}

/// The content policy is the page's own; each browser has to keep to it.
fn what_the_policy_stops(engine: Engine) {
    let desk = Desk::open_in(engine, Screen::Desk);
    let elsewhere = Site::start();
    let tries = "const [elsewhere] = arguments;
        window.stopped = [];
        document.addEventListener('securitypolicyviolation', (event) =>
            stopped.push(event.effectiveDirective.replace(/-(elem|attr)$/, '')));
        const put = (tag, given) =>
            document.body.append(Object.assign(document.createElement(tag), given));
        put('script', { textContent: 'window.ran = true' });
        put('script', { src: `${elsewhere}boot.js` });
        put('style', { textContent: 'body { color: red }' });
        put('img', { src: `${elsewhere}icons/any.png` });
        put('iframe', { src: elsewhere });
        fetch(elsewhere, { mode: 'no-cors' }).then(() => { window.ran = true; }, () => {});";
    desk.browser
        .script(tries, &[json!(elsewhere.url())])
        .unwrap();
    let stopped = "return ['connect-src', 'frame-src', 'img-src', 'script-src', 'style-src']
        .filter((one) => !window.stopped.includes(one)).join() || 'all'";
    let all = patiently(|| match desk.browser.script(stopped, &[])? {
        all if all == "all" => Ok(()),
        missing => Err(format!("Not stopped: {missing}.")),
    });
    assert_eq!(all, Ok(()));
    let ran = desk.browser.script("return window.ran ?? null", &[]);
    assert_eq!(ran.unwrap(), json!(null));
}

fn from_disk(engine: Engine) {
    let name = format!("ampwright-{engine:?}-{}.html", process::id());
    let file = env::temp_dir().join(name);
    fs::write(&file, bundle(&places::dist()).unwrap()).unwrap();
    let browser = Browser::open_as(engine, Screen::Desk).unwrap();
    browser.go(&format!("file://{}", file.display())).unwrap();
    browser.wait_for(OPENED).unwrap();
    browser
        .find("#ask-daily_use_ah")
        .unwrap()
        .fill("150")
        .unwrap();
    let told = time(&[(key!(daily.use_ah), 150.0)]);
    browser.wait_text("#answer-time", &told).unwrap();
    // It could ask nobody if it wished to.
    let site = Site::start();
    let ask = "return fetch(arguments[0], { mode: 'no-cors' }).then(() => 'sent', () => 'stopped')";
    let asked = browser.script(ask, &[json!(site.url())]).unwrap();
    assert_eq!(asked, json!("stopped"));
    fs::remove_file(&file).ok();
}
