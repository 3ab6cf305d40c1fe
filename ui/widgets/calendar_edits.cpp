// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/widgets/calendar_edits.h"

#include "core/calendar/civil_date_text.h"
#include "core/calendar/day_hours_text.h"
#include "ui/text/format.h"

#include <QDate>
#include <QLocale>

namespace rw::ui {

namespace {
Result<DayHours> readHours(const std::string& typed) {
    if (const auto hours = dayHoursFromText(typed)) {
        return *hours;
    }
    return refuse(Code::Unreadable, {{"what", std::string("day's hours")}, {"text", typed}});
}

Result<CivilDate> readDate(const std::string& typed) {
    if (const auto date = rw::civilDateFromText(typed)) {
        return *date;
    }
    const QString text = fromUtf8(typed);
    const QLocale locale;
    for (const QString& form : {QStringLiteral("d MMMM yyyy"), QStringLiteral("d MMM yyyy"), QStringLiteral("d.M.yyyy"),
                                locale.dateFormat(QLocale::ShortFormat)}) {
        const QDate date = locale.toDate(text, form);
        // A year of two digits is read as one of the last century.
        if (date.isValid() && date.year() >= 2000) {
            return CivilDate{std::chrono::year(date.year()), std::chrono::month(static_cast<unsigned>(date.month())),
                             std::chrono::day(static_cast<unsigned>(date.day()))};
        }
    }
    return refuse(Code::Unreadable, {{"what", std::string("date")}, {"text", typed}});
}

QString writeHours(const DayHours& hours) { return fromUtf8(dayHoursText(hours)); }
QString writeDate(const CivilDate& date) { return fromUtf8(rw::civilDateText(date)); }
Result<std::vector<CivilDate>> readDays(const std::string& typed) { return daysFromText(typed); }
QString writeDays(const std::vector<CivilDate>& days) { return fromUtf8(daysText(days)); }
} // namespace

HoursEdit::HoursEdit(QWidget* parent)
    : ParsedEdit("day's hours", readHours, writeHours, parent) {}

DateEdit::DateEdit(QWidget* parent)
    : ParsedEdit("date", readDate, writeDate, parent) {
    setPlaceholderText(tr("day"));
}

DaysEdit::DaysEdit(QWidget* parent)
    : ParsedEdit("days", readDays, writeDays, parent) {
    setPlaceholderText(tr("days"));
}

} // namespace rw::ui
