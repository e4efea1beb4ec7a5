//! How sure the answer is: a range appears without the page standing still, and
//! narrows when somebody measures.

use crate::desk::Desk;
use ampwright_core::decision::uncertainty::Uncertainty;
use ampwright_core::text;
use ampwright_tests::driver::Screen;

/// Waits until the range is reckoned, and gives its words.
fn range(desk: &Desk) -> String {
    let told = "const p = document.querySelector('#sure-progress');
        return p && p.textContent === '' && document.querySelector('#answer-range').textContent.trim()";
    let told = desk.browser.wait_script(told).unwrap();
    told.as_str().unwrap().to_string()
}

#[test]
fn a_range_appears_and_a_reading_narrows_it() {
    let desk = Desk::open(Screen::Phone);
    let sheet = desk.regulate();
    let mut expected = Uncertainty::new(&sheet);
    expected.step(Uncertainty::RUNS);
    let expected = expected.certainty();
    let words = text::uncertainty::range(&expected.engine_h);
    desk.browser.wait_text("#answer-range", &words).unwrap();
    assert!(
        desk.text("#sure")
            .contains(&text::uncertainty::sentence(&expected.hot_a))
    );
    let strip = desk.browser.find("#answer").unwrap().rect().unwrap();
    assert!(strip[3] <= 130.0, "the strip is {} high", strip[3]);
    desk.browser.shot("sure-range").unwrap();

    // The button goes to the figure behind its closed section.
    let best = expected.engine_h.readings.first().unwrap().key.name();
    let address = desk.browser.url().unwrap();
    desk.press(&format!(".readings [data-key=\"{best}\"]"));
    let field = desk.browser.focused().unwrap();
    assert_eq!(
        field.attribute("id").unwrap().unwrap(),
        format!("sheet-{best}")
    );
    assert!(field.shown().unwrap());
    assert_eq!(desk.browser.url().unwrap(), address);
    desk.browser.shot("sure-gone-there").unwrap();

    let width = |desk: &Desk| {
        let bar = desk.browser.find("#sure svg:last-of-type .range").unwrap();
        let axis = desk.browser.find("#sure svg:last-of-type .edge").unwrap();
        bar.rect().unwrap()[2] / axis.rect().unwrap()[2]
    };
    let before = width(&desk);
    let mark = format!("#sheet-{best}-help .mark");
    let [_, _, wide, high] = desk.browser.find(&mark).unwrap().rect().unwrap();
    assert!(high >= 44.0 && wide > 20.0, "the mark is {wide} by {high}");
    desk.choose(&mark, "measured");
    desk.browser
        .wait_script("return document.querySelector('#sure-progress').textContent !== ''")
        .unwrap();
    range(&desk);
    let after = width(&desk);
    assert!(after < before, "{after} of the rule against {before}");
    desk.browser.shot("sure-measured").unwrap();
    desk.assert_quiet();
}

/// How long the page stands still depends on the machine, so that is printed
/// only; but it must be reckoned in pieces, with the page shown in between.
#[test]
fn it_is_reckoned_in_pieces() {
    let desk = Desk::open(Screen::Phone);
    range(&desk);
    let watch = "window.stood = [0];
        window.shown = new Set();
        const progress = document.querySelector('#sure-progress');
        new MutationObserver(() => window.shown.add(progress.textContent))
            .observe(progress, { characterData: true, childList: true, subtree: true });
        new PerformanceObserver(list => list.getEntries().forEach(task => {
            if (task.startTime > window.typed + 300) window.stood.push(task.duration);
        })).observe({ type: 'longtask' });
        document.querySelector('#ask-eng_rpm').addEventListener('input', () => {
            window.typed = performance.now();
            window.shown.clear();
        })";
    desk.browser.script(watch, &[]).unwrap();
    desk.fill("#ask-eng_rpm", "1400");
    desk.browser
        .wait_script("return window.shown.has('')")
        .unwrap();
    let number = |code: &str| desk.browser.script(code, &[]).unwrap().as_f64().unwrap();
    let took = number("return performance.now() - window.typed");
    let longest = number("return Math.max(...window.stood)");
    println!(
        "how sure: {took:.0} ms after the last key; longest task {longest:.0} ms (0: below 50)"
    );
    let pieces = number("return [...window.shown].filter(text => / of 512/.test(text)).length");
    assert!(pieces >= 3.0, "shown {pieces} times");
    desk.assert_quiet();
}

/// What is on the page in the moment after another boat came: nothing of the one
/// before.
#[test]
fn a_range_of_another_boat_is_never_shown() {
    let desk = Desk::open(Screen::Desk);
    range(&desk);
    let told = "return document.querySelector('#sure-told').textContent";
    assert_ne!(desk.browser.script(told, &[]).unwrap(), "");
    let come = "return new Promise((done) => {
        addEventListener('hashchange', () => setTimeout(() => done([
            document.querySelector('#answer-range').textContent.trim(),
            document.querySelector('#sure-told').textContent,
        ])), { once: true });
        location.hash = 'v=2&alt_rated=60&reg_kind=external&way_kind=direct&end';
    })";
    let shown = desk.browser.script(come, &[]).unwrap();
    assert_eq!(shown, serde_json::json!(["", ""]));
    // Of this boat, with a figure changed, what was told last is out of sight.
    range(&desk);
    desk.questions().fill("Engine speed while charging", "1400");
    let seen = "return getComputedStyle(document.querySelector('#sure-told')).visibility";
    assert_eq!(desk.browser.script(seen, &[]).unwrap(), "hidden");
    range(&desk);
    assert_eq!(desk.browser.script(seen, &[]).unwrap(), "visible");
    desk.assert_quiet();
}
