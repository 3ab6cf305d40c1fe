// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/format.h"

#include <QCoreApplication>
#include <QDateTime>

#include <cmath>

namespace rw::ui {

namespace {
struct Format {
    Q_DECLARE_TR_FUNCTIONS(Format)
};

QLocale withoutGroups(QLocale locale) {
    locale.setNumberOptions(locale.numberOptions() | QLocale::OmitGroupSeparator);
    return locale;
}

/// `scaled` units of 10^-places, trailing noughts dropped.
QString shortNumber(std::int64_t scaled, int places, const QLocale& locale) {
    double power = std::pow(10.0, places);
    int shown = places;
    for (std::int64_t rest = scaled; shown > 0 && rest % 10 == 0; rest /= 10) {
        --shown;
    }
    return withoutGroups(locale).toString(static_cast<double>(scaled) / power, 'f', shown);
}

/// A number with at most `decimals` decimals, trailing noughts dropped.
QString roundedNumber(double value, int decimals, const QLocale& locale) {
    return shortNumber(std::llround(value * std::pow(10.0, decimals)), decimals, locale);
}

QDateTime at(Instant instant, const QTimeZone& zone) {
    return QDateTime::fromMSecsSinceEpoch(instant.time_since_epoch().count(), zone);
}

QString unitWord(TensionUnit unit) { return unit == TensionUnit::Pound ? QStringLiteral("lb") : QStringLiteral("kg"); }
} // namespace

QString fromUtf8(std::string_view text) { return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size())); }

QString lengthNumber(Length length, const QLocale& locale) { return shortNumber(length.millimetres(), 3, locale); }

QString lengthText(Length length, const QLocale& locale) {
    return Format::tr("%1 m").arg(lengthNumber(length, locale));
}

QString heldText(Length length, const QLocale& locale) {
    constexpr std::int64_t kCentimetre = 10;
    const std::int64_t over = (length.millimetres() % kCentimetre + kCentimetre) % kCentimetre;
    return lengthText(length - Length::fromMillimetres(over), locale);
}

QString aboutLengthText(double millimetres, const QLocale& locale) {
    return Format::tr("%1 m").arg(withoutGroups(locale).toString(millimetres / 1000.0, 'f', 2));
}

QString tensionNumber(const Tension& tension, const QLocale& locale) {
    return shortNumber(tension.hundredths(), 2, locale);
}

QString tensionText(const Tension& tension, const QLocale& locale) {
    return tensionNumber(tension, locale) + QLatin1Char(' ') + unitWord(tension.unit());
}

QString tensionPairText(const TensionPair& pair, const QLocale& locale) {
    if (pair.mains.unit() == pair.crosses.unit()) {
        return tensionNumber(pair.mains, locale) + QLatin1Char('/') + tensionText(pair.crosses, locale);
    }
    return tensionText(pair.mains, locale) + QStringLiteral(" / ") + tensionText(pair.crosses, locale);
}

QString derivedTensionText(double value, TensionUnit unit, int decimals, const QLocale& locale) {
    return roundedNumber(value, decimals, locale) + QLatin1Char(' ') + unitWord(unit);
}

QString moneyText(const Money& money, const QLocale& locale) {
    const int decimals = money.currency().decimals();
    const double amount = static_cast<double>(money.minor()) / std::pow(10.0, decimals);
    const std::string code = money.currency().code();
    if (code == "GBP" || code == "EUR") {
        // The C locale has no idea where a sign stands.
        QLocale place = locale.language() == QLocale::C ? QLocale(QLocale::English, QLocale::UnitedKingdom) : locale;
        place.setNumberOptions(locale.numberOptions());
        // Less than nothing has a minus sign here, not the bookkeepers' brackets.
        const QString sign = amount < 0 ? place.negativeSign() : QString();
        return sign + place.toCurrencyString(std::abs(amount),
                                             code == "GBP" ? QStringLiteral("£") : QStringLiteral("€"), decimals);
    }
    return locale.toString(amount, 'f', decimals) + QLatin1Char(' ') + fromUtf8(code);
}

QString gaugeText(const StringArticle& article, const QLocale& locale) {
    const QString thickness =
        withoutGroups(locale).toString(article.diameterMm(), 'f', article.diameterMicrometres % 10 == 0 ? 2 : 3);
    const QString millimetres = Format::tr("%1 mm").arg(thickness);
    if (article.gaugeName.empty()) {
        return millimetres;
    }
    return Format::tr("%1 (%2)").arg(millimetres, fromUtf8(article.gaugeName));
}

QString headLengthsText(double headLengths) {
    const auto halves = static_cast<qlonglong>(std::llround(headLengths * 2));
    const qlonglong whole = halves / 2;
    const bool half = halves % 2 != 0;
    QString number = whole == 0 && half ? QString() : QString::number(whole);
    if (half) {
        number += QChar(u'½');
    }
    return halves > 0 && halves <= 2 ? Format::tr("%1 head length").arg(number)
                                     : Format::tr("%1 head lengths").arg(number);
}

QString chanceText(double chance, const QLocale& locale) {
    if (chance > 0.5) {
        return Format::tr("more likely than not");
    }
    if (!(chance >= 0.0001)) {
        return Format::tr("less than 1 in %1").arg(withoutGroups(locale).toString(10000));
    }
    double one = 1.0 / chance;
    const double grain = one < 20 ? 1 : one < 200 ? 10 : one < 2000 ? 100 : 1000;
    one = std::round(one / grain) * grain;
    return Format::tr("about 1 in %1").arg(withoutGroups(locale).toString(static_cast<qlonglong>(one)));
}

QTimeZone timeZoneOf(std::string_view ianaName) {
    const QTimeZone zone(QByteArray(ianaName.data(), static_cast<qsizetype>(ianaName.size())));
    return zone.isValid() ? zone : QTimeZone::utc();
}

QString dateText(Instant instant, const QTimeZone& zone, const QLocale& locale) {
    return locale.toString(at(instant, zone).date(), QStringLiteral("d MMMM yyyy"));
}

QString shortDateText(Instant instant, Instant now, const QTimeZone& zone, const QLocale& locale) {
    const QDate date = at(instant, zone).date();
    const bool thisYear = date.year() == at(now, zone).date().year();
    return locale.toString(date, thisYear ? QStringLiteral("ddd d MMM") : QStringLiteral("ddd d MMM yyyy"));
}

QString momentText(Instant instant, const QTimeZone& zone, const QLocale& locale) {
    return locale.toString(at(instant, zone), QStringLiteral("ddd d MMM HH:mm"));
}

QString promiseText(Instant promise, Instant now, const QTimeZone& zone, const QLocale& locale) {
    const QDateTime then = at(promise, zone);
    const qint64 days = at(now, zone).date().daysTo(then.date());
    const QString clock = locale.toString(then.time(), QStringLiteral("HH:mm"));
    if (days == 0) {
        return Format::tr("today %1").arg(clock);
    }
    if (days == 1) {
        return Format::tr("tomorrow %1").arg(clock);
    }
    return shortDateText(promise, now, zone, locale) + QLatin1Char(' ') + clock;
}

} // namespace rw::ui
