//! The first run on screen and in print: steps to tick, and the sheet for the
//! readings of the hot run.

use ampwright_core::guidance::commissioning;
use ampwright_core::guidance::commissioning::{Form, StageCode, form};
use ampwright_core::text::commissioning as text_of;
use ampwright_core::units::Reader;
use ampwright_core::{Report, Worksheet};

use crate::words::{escape, figure};

/// The steps, and how many of them are done.
pub fn told(sheet: &Worksheet, report: &Report) -> String {
    let reader = &Reader::METRIC;
    let mut text = String::new();
    let (mut done, mut all) = (0, 0);
    let mut hot = false;
    for stage in commissioning(sheet, report) {
        hot |= stage.code == StageCode::Hot;
        text += &format!(
            "<h3>{}</h3><p class=about>{}</p><ul class=firsts>",
            text_of::title(stage.code),
            text_of::about(stage.code)
        );
        for step in stage.steps {
            let ticked = if step.done { "checked" } else { "" };
            done += usize::from(step.done);
            all += 1;
            text += &format!(
                "<li><label class=tick><input type=checkbox id=first-{0} data-change=first-tick data-step={0} {ticked}><span>{1}</span></label>",
                step.code.name(),
                escape(&text_of::text(&step, reader))
            );
            if let Some(caution) = text_of::caution(step.code) {
                text += "<p class=beware><b>Beware:</b> ";
                text += &escape(caution);
                text += "</p>";
            }
            if let Some(stop) = &step.stop {
                let stop = text_of::stop(stop, reader);
                // "Stop at 70 °C" has the word in it already.
                let (word, rest) = match stop.strip_prefix("Stop ") {
                    Some(rest) => ("Stop ", rest),
                    None => ("Stop: ", &*stop),
                };
                text += "<p class=halt><b>";
                text += word;
                text += "</b>";
                text += &escape(rest);
                text += "</p>";
            }
        }
        text += "</ul>";
    }
    if hot {
        text += &readings(&form(sheet, report));
    }
    format!("<p class=told id=first-count>{done} of {all} done</p>{text}")
}

/// The sheet for the readings: empty cells, what is calculated small in them.
fn readings(form: &Form) -> String {
    let mut text = format!(
        "<table class=form id=first-form><caption>Readings of the hot run, engine held at {} rpm</caption><thead><tr>",
        figure(form.engine_rpm, 0)
    );
    for column in form.columns {
        text += "<th scope=col>";
        text += column;
        text += "</th>";
    }
    text += "</tr></thead><tbody>";
    for row in &form.rows {
        text += "<tr><th scope=row>";
        text += &figure(row.minute, 0);
        text += "</th>";
        let calculated = [
            (row.alternator_a, 0),
            (row.case_c, 0),
            (row.air_c, 0),
            (None, 0),
            (row.volts, 1),
        ];
        for (figure_of, decimals) in calculated {
            text += "<td>";
            if let Some(value) = figure_of {
                text += &figure(value, decimals);
            }
            text += "</td>";
        }
        text += "</tr>";
    }
    text + "</tbody></table><p class=margin>The small figures are calculated; write yours beside them.</p><p class=buttons><button type=button class=plain id=to-trial data-click=to-trial>Type the readings into the sea trial</button></p>"
}
