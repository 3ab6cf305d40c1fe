// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/presenter/shop_date.h"

#include "ui/presenter/shift.h"

#include <QDateTime>

namespace rw::ui {

CivilDate shopDate(const Shift& shift) {
    const QDate date = QDateTime::fromMSecsSinceEpoch(shift.now().time_since_epoch().count(), QTimeZone::utc())
                           .toTimeZone(shift.zone())
                           .date();
    return std::chrono::year(date.year()) / date.month() / date.day();
}

CivilDate monthsOn(CivilDate day, int months) {
    const CivilDate wanted = day + std::chrono::months(months);
    return wanted.ok() ? wanted : CivilDate(wanted.year() / wanted.month() / std::chrono::last);
}

} // namespace rw::ui
