// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/setting_words.h"

#include "core/calendar/day_hours_text.h"
#include "core/desk/settings.h"
#include "ui/text/format.h"
#include "ui/text/set_up_words.h"
#include "ui/text/words.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace rw::ui {

namespace {
namespace setting = desk::setting;

struct SettingWords {
    Q_DECLARE_TR_FUNCTIONS(SettingWords)
};

/// The texts of one setting. `unit` is said behind the stored value, which stands for "%1".
struct Words {
    std::string_view name;
    const char* word;
    const char* title;
    const char* help;
    const char* unit;
    const char* whenEmpty;
};

// Marked for translation here, translated where they are said.
constexpr std::array kWords{
    Words{setting::kShopName, QT_TRANSLATE_NOOP("SettingWords", "name of the shop"),
          QT_TRANSLATE_NOOP("SettingWords", "Name of the shop"),
          QT_TRANSLATE_NOOP("SettingWords", "It stands on the job card, the tag and the label."), "%1",
          QT_TRANSLATE_NOOP("SettingWords", "no name yet")},
    Words{setting::kClosedDays, QT_TRANSLATE_NOOP("SettingWords", "list of days"),
          QT_TRANSLATE_NOOP("SettingWords", "Closed on"),
          QT_TRANSLATE_NOOP("SettingWords",
                            "Nothing is promised for these days. Write 2026-12-25, or 2026-08-03 to 2026-08-14."),
          "%1", QT_TRANSLATE_NOOP("SettingWords", "no closed days")},
    Words{setting::kMinutesPerJob, QT_TRANSLATE_NOOP("SettingWords", "number of minutes for a job"),
          QT_TRANSLATE_NOOP("SettingWords", "Minutes for a job"),
          QT_TRANSLATE_NOOP("SettingWords", "How long one racket takes at the machine. Promises are made from it."),
          QT_TRANSLATE_NOOP("SettingWords", "%1 minutes"), ""},
    Words{setting::kMarginPercent, QT_TRANSLATE_NOOP("SettingWords", "margin in percent"),
          QT_TRANSLATE_NOOP("SettingWords", "Margin on a promise"),
          QT_TRANSLATE_NOOP("SettingWords", "So much is added to the time that the work in front of a racket takes."),
          QT_TRANSLATE_NOOP("SettingWords", "%1 %"), ""},
    Words{setting::kStepMinutes, QT_TRANSLATE_NOOP("SettingWords", "step in minutes"),
          QT_TRANSLATE_NOOP("SettingWords", "Step of a promise"),
          QT_TRANSLATE_NOOP("SettingWords", "Promised times are rounded up to it: 15 gives 16:15, 16:30, 16:45."),
          QT_TRANSLATE_NOOP("SettingWords", "%1 minutes"), ""},
    Words{setting::kTapeStepMm, QT_TRANSLATE_NOOP("SettingWords", "step in millimetres"),
          QT_TRANSLATE_NOOP("SettingWords", "Step of the tape"),
          QT_TRANSLATE_NOOP("SettingWords", "Cuts are rounded up to it, as the bench reads its tape."),
          QT_TRANSLATE_NOOP("SettingWords", "%1 mm"), ""},
    Words{setting::kScaleStep, QT_TRANSLATE_NOOP("SettingWords", "step in grams"),
          QT_TRANSLATE_NOOP("SettingWords", "Step of the scale"),
          QT_TRANSLATE_NOOP("SettingWords", "In which the scale shows grams. A weigh-in is as sure as its scale."),
          QT_TRANSLATE_NOOP("SettingWords", "%1 g"), ""},
    Words{setting::kCeilingPercent, QT_TRANSLATE_NOOP("SettingWords", "chance in percent"),
          QT_TRANSLATE_NOOP("SettingWords", "Chance that a cut comes short"),
          QT_TRANSLATE_NOOP("SettingWords", "What you accept for one job. A smaller chance cuts longer pieces."),
          QT_TRANSLATE_NOOP("SettingWords", "%1 %"), ""},
    Words{setting::kSpoiledJobCost, QT_TRANSLATE_NOOP("SettingWords", "cost of a spoiled job"),
          QT_TRANSLATE_NOOP("SettingWords", "A spoiled job costs"),
          QT_TRANSLATE_NOOP("SettingWords",
                            "What is lost beside the string when a job must be strung again. With it a cut is made "
                            "longer where that is cheaper; without it the chance alone decides."),
          "%1", QT_TRANSLATE_NOOP("SettingWords", "nobody has said")},
    Words{setting::kRunningShortJobs, QT_TRANSLATE_NOOP("SettingWords", "number of jobs"),
          QT_TRANSLATE_NOOP("SettingWords", "Running short below"),
          QT_TRANSLATE_NOOP("SettingWords", "However seldom a string sells, with fewer whole jobs free it runs short."),
          QT_TRANSLATE_NOOP("SettingWords", "%1 jobs"), ""},
    Words{setting::kShortSide, QT_TRANSLATE_NOOP("SettingWords", "side"),
          QT_TRANSLATE_NOOP("SettingWords", "Short side"),
          QT_TRANSLATE_NOOP("SettingWords", "Where neither the frame, the job nor the last time says so."), "%1", ""},
    Words{
        setting::kLabourRate, QT_TRANSLATE_NOOP("SettingWords", "price of an hour"),
        QT_TRANSLATE_NOOP("SettingWords", "An hour of work"),
        QT_TRANSLATE_NOOP("SettingWords",
                          "What an hour is worth to you. It is shown beside what jobs earned, and taken off nothing."),
        "%1", QT_TRANSLATE_NOOP("SettingWords", "nobody has said")},
    Words{setting::kBadmintonCrosses, QT_TRANSLATE_NOOP("SettingWords", "rise of the crosses"),
          QT_TRANSLATE_NOOP("SettingWords", "Badminton, one number"),
          QT_TRANSLATE_NOOP("SettingWords",
                            "How much higher the crosses are when a customer names one number: 2 lb, 1 kg or 10 %."),
          QT_TRANSLATE_NOOP("SettingWords", "crosses %1 higher"),
          QT_TRANSLATE_NOOP("SettingWords", "crosses as the mains")},
    Words{setting::kAboveMarkedWords, QT_TRANSLATE_NOOP("SettingWords", "wording"),
          QT_TRANSLATE_NOOP("SettingWords", "Above the marked maximum"),
          QT_TRANSLATE_NOOP("SettingWords",
                            "What is read out before a customer says yes. Left blank, the program has words for it."),
          "%1", QT_TRANSLATE_NOOP("SettingWords", "the usual words")},
    Words{setting::kTimeZone, QT_TRANSLATE_NOOP("SettingWords", "time zone"),
          QT_TRANSLATE_NOOP("SettingWords", "Time zone"),
          QT_TRANSLATE_NOOP("SettingWords",
                            "On whose clock the shop lives, whatever this computer shows: Europe/London, Asia/Tokyo."),
          "%1", ""},
    Words{setting::kFirstJobNumber, QT_TRANSLATE_NOOP("SettingWords", "first job number"),
          QT_TRANSLATE_NOOP("SettingWords", "First job number"),
          QT_TRANSLATE_NOOP("SettingWords",
                            "Where the tags go on from an old book. It is set before the first job is logged; from "
                            "then on the ledger counts."),
          "%1", ""},
};

bool isHours(std::string_view name) { return std::ranges::find(setting::kHours, name) != setting::kHours.end(); }

const Words* wordsOf(std::string_view name) {
    const auto* const words = std::ranges::find(kWords, name, &Words::name);
    return words == kWords.end() ? nullptr : words;
}

QString said(const char* text) { return QCoreApplication::translate("SettingWords", text); }

std::vector<CivilDate> daysIn(std::string_view value) { return daysFromText(value).value_or(std::vector<CivilDate>()); }
} // namespace

QString settingWord(std::string_view name) {
    if (isHours(name)) {
        return SettingWords::tr("day's hours");
    }
    const Words* words = wordsOf(name);
    return words == nullptr ? QString() : said(words->word);
}

const std::vector<std::string_view>& settingsShown() {
    static const std::vector<std::string_view> shown{
        setting::kShopName,
        setting::kTimeZone,
        setting::kHours[0],
        setting::kHours[1],
        setting::kHours[2],
        setting::kHours[3],
        setting::kHours[4],
        setting::kHours[5],
        setting::kHours[6],
        setting::kClosedDays,
        setting::kMinutesPerJob,
        setting::kMarginPercent,
        setting::kStepMinutes,
        setting::kTapeStepMm,
        setting::kScaleStep,
        setting::kCeilingPercent,
        setting::kSpoiledJobCost,
        setting::kLabourRate,
        setting::kRunningShortJobs,
        setting::kShortSide,
        setting::kBadmintonCrosses,
        setting::kAboveMarkedWords,
        setting::kFirstJobNumber,
    };
    return shown;
}

QString settingTitle(std::string_view name) {
    if (isHours(name)) {
        const auto day = std::ranges::find(setting::kHours, name) - setting::kHours.begin();
        return SettingWords::tr("Open on %1").arg(QLocale().standaloneDayName(static_cast<int>(day) + 1));
    }
    const Words* words = wordsOf(name);
    return words == nullptr ? fromUtf8(name) : said(words->title);
}

QString settingHelp(std::string_view name) {
    if (isHours(name)) {
        return SettingWords::tr("Write 10-18 or 9:30-17:00; left blank, the shop is closed.");
    }
    const Words* words = wordsOf(name);
    return words == nullptr ? QString() : said(words->help);
}

QString settingText(std::string_view name, std::string_view value, const Currency& currency, const QLocale& locale) {
    if (isHours(name)) {
        return value.empty() ? SettingWords::tr("closed") : fromUtf8(value);
    }
    const Words* words = wordsOf(name);
    if (words == nullptr) {
        return fromUtf8(value);
    }
    if (value.empty()) {
        return said(words->whenEmpty);
    }
    if (name == setting::kShortSide) {
        return sideWord(value == sideText(Side::Right) ? Side::Right : Side::Left);
    }
    if (name == setting::kClosedDays) {
        return daysOffText(daysIn(value), CivilDate{}, 4, locale);
    }
    if (name == setting::kSpoiledJobCost || name == setting::kLabourRate) {
        const auto money = Money::tryParse(value, currency);
        return money ? moneyText(*money, locale) : fromUtf8(value);
    }
    if (name == setting::kCeilingPercent || name == setting::kScaleStep) {
        return said(words->unit).arg(locale.toString(fromUtf8(value).toDouble()));
    }
    return said(words->unit).arg(fromUtf8(value));
}

} // namespace rw::ui
