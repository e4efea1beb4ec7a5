//! The page without a network, and a new version of it: all of one version or
//! none, and none by force.

use crate::desk::OPENED;
use crate::pool::Lent;
use crate::site::{Site, part};
use ampwright_tests::driver::{Browser, Screen};
use serde_json::json;
use std::{fs, path::Path};
use xtask::bundle::integrity;

const TAKE: &str = "#update button";
const TITLE: &str = "return document.title";
const CACHES: &str = "return caches.keys()";

/// A visitor who has the page kept, and opens it from there.
fn kept(site: &Site) -> Lent {
    let browser = Lent::new(Screen::Desk);
    browser.go(&site.url()).unwrap();
    browser.wait_data("offline", "ready").unwrap();
    browser.refresh().unwrap();
    browser.wait_data("offline", "ready").unwrap();
    browser
}

fn caches(browser: &Browser) -> usize {
    let names = browser.script(CACHES, &[]).unwrap();
    names.as_array().unwrap().len()
}

#[test]
fn the_second_visit_needs_no_network() {
    let mut site = Site::start();
    let browser = Lent::new(Screen::Phone);
    browser.go(&site.url()).unwrap();
    browser.wait_data("offline", "ready").unwrap();
    browser.wait_text("#offline", "without a network").unwrap();

    site.stop();
    browser.refresh().unwrap();
    browser.wait_for(OPENED).unwrap();
    browser.go(&format!("{}index.html", site.url())).unwrap();
    browser.wait_for(OPENED).unwrap();
    browser.go(&format!("{}any/deep/path", site.url())).unwrap();
    browser.wait_for(OPENED).unwrap();
    assert_eq!(browser.url().unwrap(), site.url());
    browser.shot("offline").unwrap();
}

#[test]
fn it_works_and_installs_in_a_folder_and_leaves_the_others_alone() {
    let mut site = Site::changed(|folder| {
        let deep = folder.join("some/deep");
        fs::create_dir_all(&deep).unwrap();
        let path = deep.join("path");
        fs::create_dir(&path).unwrap();
        for entry in fs::read_dir(folder).unwrap() {
            let entry = entry.unwrap();
            if entry.file_name() != "some" {
                fs::rename(entry.path(), path.join(entry.file_name())).unwrap();
            }
        }
        fs::create_dir(path.join("other")).unwrap();
        fs::write(
            path.join("other/index.html"),
            "<title>Other</title><link rel=icon href=data:,>",
        )
        .unwrap();
    });
    let url = format!("{}some/deep/path/", site.url());
    let browser = Lent::new(Screen::Phone);
    browser.go(&url).unwrap();
    browser.wait_data("offline", "ready").unwrap();
    let ask = |command: &str| browser.devtools(command, json!({})).unwrap();
    let errors = ask("Page.getInstallabilityErrors");
    assert_eq!(errors["installabilityErrors"], json!([]));
    assert_eq!(ask("Page.getAppManifest")["errors"], json!([]));
    assert_eq!(ask("Page.getAppId")["appId"], json!(url));

    browser.go(&format!("{url}other/")).unwrap();
    assert_eq!(browser.title().unwrap(), "Other");
    site.stop();
    browser.go(&url).unwrap();
    browser.wait_for(OPENED).unwrap();
    assert_eq!(browser.complaints().unwrap(), [""; 0]);
}

#[test]
fn nothing_is_kept_until_all_of_it_arrives() {
    let icon = Path::new("icons/mark-512.png");
    let site = Site::changed(|folder| fs::remove_file(folder.join(icon)).unwrap());
    let browser = Lent::new(Screen::Phone);
    let visit = |offline: &str, told: &str| {
        browser.go(&site.url()).unwrap();
        browser.wait_for(OPENED).unwrap();
        browser.wait_data("offline", offline).unwrap();
        browser.wait_text("#offline", told).unwrap();
    };
    visit("partly", "The next visit tries again");
    assert_eq!(caches(&browser), 0);
    browser.shot("offline-partly").unwrap();

    // There, but not as it was built.
    let right = fs::read(xtask::places::dist().join(icon)).unwrap();
    let (_, cut) = right.split_first().unwrap();
    fs::write(site.folder().join(icon), cut).unwrap();
    visit("partly", "not kept");
    assert_eq!(caches(&browser), 0);

    fs::write(site.folder().join(icon), right).unwrap();
    visit("ready", "kept on this device");
    assert_eq!(caches(&browser), 1);
}

#[test]
fn a_new_version_waits_until_it_is_wanted() {
    let site = Site::changed(|_| ());
    let browser = kept(&site);
    next_version(site.folder());
    browser.refresh().unwrap();
    browser.wait_data("update", "waiting").unwrap();
    assert_eq!(browser.script(TITLE, &[]).unwrap(), json!("Ampwright"));
    browser.refresh().unwrap();
    browser.wait_for(TAKE).unwrap();
    assert_eq!(browser.script(TITLE, &[]).unwrap(), json!("Ampwright"));
    browser.shot("offline-update").unwrap();

    browser.find(TAKE).unwrap().click().unwrap();
    let new = "return document.title === 'New' && document.documentElement.dataset.offline";
    browser.wait_script(new).unwrap();
    let only = "return caches.keys().then((all) => all.length === 1 && all[0].endsWith('-new'))";
    browser.wait_script(only).unwrap();
}

#[test]
fn a_version_of_which_a_part_is_missing_changes_nothing() {
    let mut site = Site::changed(|_| ());
    let browser = kept(&site);
    next_version(site.folder());
    fs::remove_file(part(site.folder(), "style-")).unwrap();
    let tried = "return navigator.serviceWorker.ready.then((known) => known.update()).then(
        ({ installing }) => new Promise((done) => {
            if (!installing) done('refused');
            else installing.onstatechange = () => done(installing.state);
        }), () => 'refused')";
    let state = browser.script(tried, &[]).unwrap();
    assert!(
        [json!("redundant"), json!("refused")].contains(&state),
        "{state}"
    );
    assert_eq!(caches(&browser), 1);
    site.stop();
    browser.refresh().unwrap();
    browser.wait_for(OPENED).unwrap();
    assert_eq!(browser.script(TITLE, &[]).unwrap(), json!("Ampwright"));
}

#[test]
fn each_window_takes_a_new_version_by_itself() {
    let site = Site::changed(|_| ());
    let browser = kept(&site);
    let first = browser.window().unwrap();
    let second = browser.open_window().unwrap();
    browser.go(&site.url()).unwrap();
    browser.wait_for(OPENED).unwrap();
    let typed = "document.getElementById('open-link').value = 'half typed'";
    browser.script(typed, &[]).unwrap();

    next_version(site.folder());
    browser.use_window(&first).unwrap();
    browser.refresh().unwrap();
    browser.wait_for(TAKE).unwrap().click().unwrap();
    let new = "return document.title === 'New'";
    browser.wait_script(new).unwrap();
    browser.wait_data("offline", "ready").unwrap();

    // The other one goes on as it was, with parts of its own version.
    browser.use_window(&second).unwrap();
    browser.wait_for(TAKE).unwrap();
    let link = browser.find("#open-link").unwrap().property("value");
    assert_eq!(link.unwrap(), json!("half typed"));
    let part = "return fetch(document.querySelector('script[src*=rescue]').src).then((answer) => answer.ok)";
    assert_eq!(browser.script(part, &[]).unwrap(), json!(true));
    assert_eq!(caches(&browser), 2);
    browser.find(TAKE).unwrap().click().unwrap();
    browser.wait_script(new).unwrap();

    browser.close_window(&first).unwrap();
    browser.refresh().unwrap();
    let one = "return caches.keys().then((all) => all.length === 1)";
    browser.wait_script(one).unwrap();
}

/// Turns a served copy into the next version of the page: another title, and a
/// part under another name.
fn next_version(folder: &Path) {
    let old = part(folder, "rescue-");
    fs::rename(&old, folder.join("rescue-new.js")).unwrap();
    let old = old.file_name().unwrap().to_str().unwrap();
    let start = folder.join("index.html");
    let before = integrity(&fs::read(&start).unwrap());
    change(&start, "<title>Ampwright", "<title>New");
    change(&start, old, "rescue-new.js");
    let worker = folder.join("sw.js");
    change(&worker, old, "rescue-new.js");
    change(&worker, &before, &integrity(&fs::read(&start).unwrap()));
    change(&worker, "';\nconst FILES", "-new';\nconst FILES");
}

fn change(file: &Path, from: &str, to: &str) {
    let text = fs::read_to_string(file).unwrap();
    assert!(text.contains(from), "{} lacks {from}", file.display());
    fs::write(file, text.replace(from, to)).unwrap();
}
