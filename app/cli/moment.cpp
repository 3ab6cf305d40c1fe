// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/moment.h"

#include "ui/text/format.h"

#include <QDateTime>

namespace rw::cli {

Result<Instant> parseMoment(std::string_view text, const OpeningHours& hours) {
    QDateTime read = QDateTime::fromString(ui::fromUtf8(text), Qt::ISODate);
    if (!read.isValid() || read.date().year() < 1970 || read.date().year() > 2200) {
        return refuse(Code::Unreadable, {{"what", "time like 2026-03-12T10:05"}, {"text", std::string(text)}});
    }
    if (read.timeSpec() == Qt::LocalTime) { // no zone was written
        read = QDateTime(read.date(), read.time(), ui::timeZoneOf(hours.timeZone));
    }
    return Instant(std::chrono::milliseconds(read.toMSecsSinceEpoch()));
}

} // namespace rw::cli
