// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/setting_words.h"

#include "core/desk/settings.h"

#include <QCoreApplication>

#include <algorithm>

namespace rw::ui {

namespace {
struct SettingWords {
    Q_DECLARE_TR_FUNCTIONS(SettingWords)
};
} // namespace

QString settingWord(std::string_view name) {
    namespace setting = desk::setting;
    if (std::ranges::find(setting::kHours, name) != setting::kHours.end()) {
        return SettingWords::tr("day's hours");
    }
    if (name == setting::kShopName) {
        return SettingWords::tr("name of the shop");
    }
    if (name == setting::kTimeZone) {
        return SettingWords::tr("time zone");
    }
    if (name == setting::kClosedDays) {
        return SettingWords::tr("list of days");
    }
    if (name == setting::kMinutesPerJob) {
        return SettingWords::tr("number of minutes for a job");
    }
    if (name == setting::kMarginPercent) {
        return SettingWords::tr("margin in percent");
    }
    if (name == setting::kStepMinutes) {
        return SettingWords::tr("step in minutes");
    }
    if (name == setting::kRunningShortJobs) {
        return SettingWords::tr("number of jobs");
    }
    if (name == setting::kTapeStepMm) {
        return SettingWords::tr("step in millimetres");
    }
    if (name == setting::kCeilingPercent) {
        return SettingWords::tr("chance in percent");
    }
    if (name == setting::kFirstJobNumber) {
        return SettingWords::tr("job number");
    }
    if (name == setting::kShortSide) {
        return SettingWords::tr("side");
    }
    if (name == setting::kSpoiledJobCost) {
        return SettingWords::tr("cost of a spoiled job");
    }
    return {};
}

} // namespace rw::ui
