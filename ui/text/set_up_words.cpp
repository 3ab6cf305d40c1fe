// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/set_up_words.h"

#include "core/calendar/day_hours_text.h"
#include "ui/text/forecast_words.h"
#include "ui/text/format.h"
#include "ui/text/words.h"

#include <QCoreApplication>
#include <QDate>
#include <QStringList>

#include <algorithm>

namespace rw::ui {

namespace {
struct SetUpWords {
    Q_DECLARE_TR_FUNCTIONS(SetUpWords)
};

QDate dateOf(CivilDate date) {
    return {static_cast<int>(date.year()), static_cast<int>(static_cast<unsigned>(date.month())),
            static_cast<int>(static_cast<unsigned>(date.day()))};
}

QString numberText(double value, const QLocale& locale) { return locale.toString(value, 'g', 6); }

/// "16 to 20 March 2026", "30 March to 2 April 2026".
QString stretchText(CivilDate first, CivilDate last, const QLocale& locale) {
    if (first == last) {
        return civilDateText(first, locale);
    }
    const bool sameMonth = first.year() == last.year() && first.month() == last.month();
    const QString start = sameMonth                     ? QString::number(static_cast<unsigned>(first.day()))
                          : first.year() == last.year() ? locale.toString(dateOf(first), QStringLiteral("d MMMM"))
                                                        : civilDateText(first, locale);
    return SetUpWords::tr("%1 to %2").arg(start, civilDateText(last, locale));
}
} // namespace

QString weekdayText(std::size_t day, const QLocale& locale) {
    return locale.standaloneDayName(static_cast<int>(day) + 1, QLocale::ShortFormat);
}

QString weekText(const WeekHours& week, const QLocale& locale) {
    QStringList parts;
    for (std::size_t first = 0; first < week.size();) {
        std::size_t last = first;
        while (last + 1 < week.size() && week[last + 1] == week[first]) {
            ++last;
        }
        if (week[first]) {
            const QString days = first == last ? weekdayText(first, locale)
                                               : SetUpWords::tr(last == first + 1 ? "%1, %2" : "%1 to %2")
                                                     .arg(weekdayText(first, locale), weekdayText(last, locale));
            parts << SetUpWords::tr("%1 %2").arg(days, fromUtf8(dayHoursText(*week[first])));
        }
        first = last + 1;
    }
    return parts.isEmpty() ? SetUpWords::tr("never") : parts.join(QStringLiteral(", "));
}

QString daysOffText(const std::vector<CivilDate>& days, CivilDate today, int atMost, const QLocale& locale) {
    using std::chrono::sys_days;
    QStringList parts;
    for (auto first = std::ranges::lower_bound(days, today); first != days.end();) {
        auto last = first;
        while (last + 1 != days.end() && sys_days(*(last + 1)) == sys_days(*last) + std::chrono::days(1)) {
            ++last;
        }
        if (parts.size() == atMost) {
            parts << QStringLiteral("…");
            break;
        }
        parts << stretchText(*first, *last, locale);
        first = last + 1;
    }
    return parts.join(QStringLiteral(", "));
}

QString personText(const desk::StaffMember& member, CivilDate today, const QLocale& locale) {
    const QString hours =
        member.worker.week ? weekText(*member.worker.week, locale) : SetUpWords::tr("whenever the shop is open");
    const QString off = daysOffText(member.worker.daysOff, today, 3, locale);
    return off.isEmpty() ? hours : SetUpWords::tr("%1; away %2").arg(hours, off);
}

QString machineDialText(const desk::Machine& machine, const QLocale& locale) {
    return SetUpWords::tr("dial in %1, steps of %2, reach %3")
        .arg(fromUtf8(unitText(machine.unit)), numberText(machine.stepHundredths / 100.0, locale),
             lengthText(machine.reach, locale));
}

QString frameText(const FrameModel& frame, const QLocale& locale) {
    QStringList parts{sportWord(frame.sport), patternText(frame.pattern)};
    const auto& marked = frame.marked;
    if (marked.lowest && marked.highest) {
        parts << SetUpWords::tr("%1 to %2")
                     .arg(tensionText(*marked.lowest, locale), tensionText(*marked.highest, locale));
    } else if (marked.highest) {
        parts << SetUpWords::tr("up to %1").arg(tensionText(*marked.highest, locale));
    } else if (marked.lowest) {
        parts << SetUpWords::tr("from %1").arg(tensionText(*marked.lowest, locale));
    }
    return parts.join(QStringLiteral(", "));
}

QString headText(const FrameModel& frame, const QLocale& locale) {
    const Hoop& hoop = frame.hoop;
    QStringList parts;
    if (hoop.lengthMm && hoop.widthMm) {
        parts
            << SetUpWords::tr("%1 × %2 mm").arg(numberText(*hoop.lengthMm, locale), numberText(*hoop.widthMm, locale));
    } else if (hoop.lengthMm) {
        parts << SetUpWords::tr("%1 mm long").arg(numberText(*hoop.lengthMm, locale));
    } else if (hoop.widthMm) {
        parts << SetUpWords::tr("%1 mm wide").arg(numberText(*hoop.widthMm, locale));
    }
    if (hoop.headAreaCm2) {
        parts << SetUpWords::tr("%1 cm²").arg(locale.toString(*hoop.headAreaCm2, 'g', 4));
    }
    if (hoop.openThroat) {
        parts << SetUpWords::tr("open throat");
    }
    return parts.isEmpty() ? SetUpWords::tr("nothing is measured; lengths take the usual head of the sport")
                           : parts.join(QStringLiteral(", "));
}

QString usualCutTitle(const desk::UsualCut& cut) {
    QStringList parts{pieceWord(cut.role)};
    if (!cut.route.empty()) {
        parts << fromUtf8(cut.route);
    }
    parts << (cut.material ? materialWord(*cut.material) : SetUpWords::tr("any string"));
    return parts.join(QStringLiteral(", "));
}

QString usualCutText(const desk::UsualCut& cut, const QLocale& locale) {
    return cut.shortSide ? SetUpWords::tr("%1, short side %2")
                               .arg(lengthText(cut.cut, locale), lengthText(*cut.shortSide, locale))
                         : lengthText(cut.cut, locale);
}

QString holdsText(const desk::DatedPrices& dated, const QLocale& locale) {
    switch (dated.holds) {
    case desk::Holds::Now:
        return SetUpWords::tr("● holds now");
    case desk::Holds::Later:
        return SetUpWords::tr("○ from %1").arg(civilDateText(dated.list.validFrom, locale));
    case desk::Holds::Past:
        break;
    }
    return SetUpWords::tr("past");
}

QString priceListTitle(const PriceList& list, const QLocale& locale) {
    return SetUpWords::tr("From %1").arg(civilDateText(list.validFrom, locale));
}

QString priceListText(const PriceList& list, const QLocale& locale) {
    QStringList parts;
    const auto labour = std::ranges::find(list.lines, ChargeKind::Labour, &PriceLine::kind);
    if (labour != list.lines.end()) {
        parts << SetUpWords::tr("labour %1").arg(moneyText(labour->amount, locale));
    }
    const auto count = [&](ChargeKind kind) { return std::ranges::count(list.lines, kind, &PriceLine::kind); };
    const auto beds = count(ChargeKind::FullBed);
    parts << (beds == 1 ? SetUpWords::tr("1 string") : SetUpWords::tr("%1 strings").arg(beds));
    if (const auto extras = count(ChargeKind::Extra); extras != 0) {
        parts << (extras == 1 ? SetUpWords::tr("1 extra") : SetUpWords::tr("%1 extras").arg(extras));
    }
    const bool taxed = std::ranges::any_of(list.lines, [](const auto& line) { return line.taxHundredthsPercent != 0; });
    if (taxed) {
        parts << taxRuleText(list.taxRule);
    }
    return parts.join(QStringLiteral(", "));
}

QString taxRuleText(TaxRule rule) {
    return rule == TaxRule::Included ? SetUpWords::tr("tax included") : SetUpWords::tr("tax added");
}

QString priceLineTitle(const PriceLine& line) {
    QString title;
    switch (line.kind) {
    case ChargeKind::Labour:
        title = SetUpWords::tr("Labour");
        break;
    case ChargeKind::OwnStringLabour:
        title = SetUpWords::tr("Labour, the customer's own string");
        break;
    case ChargeKind::Rush:
        title = SetUpWords::tr("Rush");
        break;
    case ChargeKind::FullBed:
        title = SetUpWords::tr("Full bed of any string");
        break;
    case ChargeKind::HalfBed:
        title = SetUpWords::tr("Half a bed of any string");
        break;
    case ChargeKind::Packet:
        title = SetUpWords::tr("Packet of any string");
        break;
    default:
        title = fromUtf8(line.label);
        break;
    }
    if (line.sport) {
        title = SetUpWords::tr("%1, %2").arg(title, sportWord(*line.sport));
    }
    return line.method ? SetUpWords::tr("%1, %2").arg(title, methodWord(*line.method)) : title;
}

QString taxText(int hundredthsPercent, const QLocale& locale) {
    return hundredthsPercent == 0 ? SetUpWords::tr("no tax")
                                  : SetUpWords::tr("tax %1 %").arg(numberText(hundredthsPercent / 100.0, locale));
}

QString stringPricesText(const desk::StringPrices& prices, const QLocale& locale) {
    QStringList parts;
    const auto say = [&](const QString& what, const std::optional<Money>& amount) {
        if (amount) {
            parts << SetUpWords::tr("%1 %2").arg(what, moneyText(*amount, locale));
        }
    };
    say(SetUpWords::tr("full bed"), prices.fullBed);
    say(SetUpWords::tr("half a bed"), prices.halfBed);
    say(SetUpWords::tr("packet"), prices.packet);
    return parts.isEmpty() ? SetUpWords::tr("no price: it cannot be sold") : parts.join(QStringLiteral(", "));
}

} // namespace rw::ui
