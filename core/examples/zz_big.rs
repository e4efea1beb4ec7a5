use ampwright_core::trial;
use ampwright_core::worksheet::*;
use std::time::Instant;
fn t<R>(what: &str, f: impl FnOnce() -> R) -> R {
    let s = Instant::now();
    let r = f();
    println!("{what}: {:?}", s.elapsed());
    r
}
fn link(what: &str, l: &str) {
    match t(what, || open_link(l)) {
        Ok(o) => println!(
            "   ok loads {} ways {} remarks {} lost {} name {}",
            o.sheet.loads.len(),
            o.sheet.arrangements.len(),
            o.remarks.len(),
            o.lost,
            o.sheet.name.len()
        ),
        Err(e) => println!("   {e}"),
    }
}
fn file(what: &str, l: &str) {
    match t(what, || read_file(l)) {
        Ok(o) => println!(
            "   ok {} loads {} remarks {} {:?}",
            o.len(),
            o[0].sheet.loads.len(),
            o[0].remarks.len(),
            o[0].remarks.last()
        ),
        Err(e) => println!("   {}", e.0.chars().take(300).collect::<String>()),
    }
}
fn main() {
    link(
        "5MB junk parts",
        &format!("v=1{}&end", "&x".repeat(2_500_000)),
    );
    link(
        "5MB junk names",
        &format!("v=1{}&end", "&x=".repeat(1_700_000)),
    );
    link("5MB loads", &format!("v=1{}&end", "&load=".repeat(850_000)));
    link(
        "100k loads",
        &format!("v=1{}&end", "&load=a~5".repeat(100_000)),
    );
    link(
        "5MB name",
        &format!("v=1&name={}&end", "%C3%A9".repeat(850_000)),
    );
    link(
        "way many",
        &format!("v=1&way=x{}&end", "~alt_rated~50".repeat(380_000)),
    );
    link(
        "way junk",
        &format!("v=1&way=x{}&end", "~".repeat(5_000_000)),
    );
    link("ways", &format!("v=1{}&end", "&way=".repeat(1_000_000)));
    link(
        "~s",
        &format!("v=1&bank_capacity={}&end", "~".repeat(5_000_000)),
    );
    link("controls", &"\n".repeat(5_000_000));
    let head = r#"{"type":"ampwright-worksheet","version":1"#;
    file("10k brackets", &"[".repeat(10_000));
    file(
        "brackets in",
        &format!("{head},\"x\":{}", "{\"a\":".repeat(10_000)),
    );
    file(
        "127 nested",
        &format!(
            "{head},\"inputs\":{{\"bank_capacity_ah\":{}{}}}}}",
            "[".repeat(120),
            "]".repeat(120)
        ),
    );
    file("50MB blanks", &" ".repeat(50_000_000));
    file(
        "50MB empties",
        &format!("{head},\"loads\":[{}1]}}", "{},".repeat(16_000_000)),
    );
    file(
        "100k loads",
        &format!("{head},\"loads\":[{}1]}}", "{\"draw\":5},".repeat(100_000)),
    );
    file(
        "50MB junk loads",
        &format!("{head},\"loads\":[{}1]}}", "1,".repeat(25_000_000)),
    );
    file(
        "done",
        &format!("{head},\"done\":[{}1]}}", "\"set\",".repeat(1_000_000)),
    );
    file(
        "50MB name",
        &format!("{head},\"name\":\"{}\"}}", "a".repeat(50_000_000)),
    );
    file(
        "many sheets",
        &format!(
            "{{\"type\":\"ampwright-worksheets\",\"version\":1,\"worksheets\":[{}7]}}",
            format!("{head}}},").repeat(100_000)
        ),
    );
    file(
        "many junk",
        &format!(
            "{{\"type\":\"ampwright-worksheets\",\"version\":1,\"worksheets\":[{}7]}}",
            "7,".repeat(5_000_000)
        ),
    );
    for (w, l) in [
        ("blank rows", "1 2 3 4 5 6\n".repeat(100_000)),
        ("one line", "1,".repeat(5_000_000)),
        ("junk lines", "x\n".repeat(5_000_000)),
        ("quotes", "\"".repeat(10_000_000)),
        ("commas", ",\n".repeat(5_000_000)),
        (
            "heads",
            "min,".to_string() + &"amps,".repeat(2_000_000) + "\n1,2",
        ),
        ("colons", "1:".repeat(2_000_000)),
        ("blanks", "1 ,\n".repeat(1_000_000)),
    ] {
        let r = t(w, || trial::read(&l));
        println!(
            "   rows {} remarks {} longest {:?}",
            r.rows.len(),
            r.remarks.len(),
            r.remarks.iter().map(|s| s.len()).max()
        );
    }
}
