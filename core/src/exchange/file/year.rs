//! Reading the months of a file.

use serde_json::{Map, Value as Json};

use crate::boat::reading::Remark;
use crate::boat::{Month, MonthRow, Worksheet};
use crate::exchange::file::parts::{dropped, read_figures};
use crate::exchange::remarks::Remarks;
use crate::schema::Excerpt;

pub(super) fn read_year(year: &Map<String, Json>, sheet: &mut Worksheet, remarks: &mut Remarks) {
    for (part, json) in year {
        match (part.as_str(), json) {
            ("months", Json::Array(months)) => {
                for month in months {
                    read_month(month, sheet, remarks);
                }
            }
            (part, _) => remarks.push(dropped(part)),
        }
    }
}

fn read_month(json: &Json, sheet: &mut Worksheet, remarks: &mut Remarks) {
    let number = json.get("month");
    let month = number
        .and_then(Json::as_u64)
        .and_then(|number| Month::numbered(usize::try_from(number).ok()?));
    let (Some(month), Some(told)) = (month, json.as_object()) else {
        let month = number.map_or(String::new(), Json::to_string);
        remarks.push(Remark::UnknownMonth {
            month: Excerpt::of(&month),
        });
        return;
    };
    let row = sheet.months.row_mut(month);
    if *row != MonthRow::default() {
        remarks.push(Remark::MonthTwice { month });
    }
    let figures = told.iter().filter(|(name, _)| *name != "month");
    let unknown = |name| Remark::UnknownMonthFigure { name };
    let refused = |error, kept| Remark::MonthValueRefused { month, error, kept };
    read_figures(row, figures, remarks, unknown, refused);
}
