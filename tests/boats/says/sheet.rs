//! Checks of the settings sheet.

use ampwright_core::guidance::settings::{GroupCode, Setting, SettingCode};
use ampwright_core::text::settings as text;
use ampwright_core::units::Reader;

use crate::says::Says;

impl Says {
    #[track_caller]
    pub fn setting_between(&self, group: GroupCode, code: SettingCode, low: f64, high: f64) {
        let number = self.setting(group, code).and_then(Setting::number);
        let what = format!("setting {}.{}", group.name(), code.name());
        self.some_between(&what, number, low, high);
    }

    /// A line of the sheet, value or reason, has one of these words.
    #[track_caller]
    pub fn setting_says(&self, group: GroupCode, code: SettingCode, words: &[&str]) {
        let said = self.setting(group, code).map(setting_said);
        let any = |text: &String| words.iter().any(|word| text.contains(word));
        self.holds(said.as_ref().is_some_and(any), || {
            let (group, code) = (group.name(), code.name());
            format!("{group}.{code} says none of {words:?}: {said:?}")
        });
    }

    /// No group of that name is on the sheet.
    #[track_caller]
    pub fn no_group(&self, group: GroupCode) {
        let any = self.settings().group(group).is_some();
        self.holds(!any, || format!("there are settings of {}", group.name()));
    }
}

/// A setting in words: its value and its reason.
pub fn setting_said(setting: &Setting) -> String {
    let reader = &Reader::METRIC;
    format!(
        "{}: {}",
        text::value(setting, reader),
        text::reason(&setting.reason, reader)
    )
}
