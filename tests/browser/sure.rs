//! How sure the answer is: a range appears without the page standing still, and
//! narrows when somebody measures.

use crate::desk::Desk;
use ampwright_core::sure::Sure;
use ampwright_core::worksheet::Worksheet;
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
    let first = range(&desk);
    let sheet = Worksheet::default();
    let mut expected = Sure::new(&sheet);
    expected.step(Sure::RUNS);
    let expected = expected.certainty();
    assert_eq!(first, expected.engine_h.words);
    assert!(desk.text("#sure").contains(&expected.hot_a.sentence));
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
    let mark = format!("#sheet-{best}-known");
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

/// Whether the page stood still depends on the machine: the figure is printed,
/// and a whole reckoning in one piece would be found out.
#[test]
fn the_page_does_not_stand_still() {
    let desk = Desk::open(Screen::Phone);
    range(&desk);
    let watch = "window.stood = [];
        new PerformanceObserver(list => list.getEntries().forEach(e => window.stood.push([e.startTime, e.duration])))
            .observe({ type: 'longtask' })";
    desk.browser.script(watch, &[]).unwrap();
    desk.fill("#ask-eng_rpm", "1400");
    let typed = desk
        .browser
        .script("return performance.now()", &[])
        .unwrap();
    desk.browser
        .wait_script("return document.querySelector('#sure-progress').textContent !== ''")
        .unwrap();
    range(&desk);
    let took = desk
        .browser
        .script("return performance.now() - arguments[0]", &[typed.clone()])
        .unwrap();
    // Only what comes after the edit itself and the rest that follows it.
    let longest = desk
        .browser
        .script(
            "return Math.max(0, ...window.stood.filter(s => s[0] > arguments[0] + 300).map(s => s[1]))",
            &[typed],
        )
        .unwrap();
    let longest = longest.as_f64().unwrap();
    println!("how sure: {took} ms after the edit; longest task {longest} ms (0: below 50)");
    assert!(longest < 250.0, "the page stood still for {longest} ms");
    desk.assert_quiet();
}
