// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/text/moment_text.h"

#include <QCoreApplication>
#include <QRegularExpression>
#include <QStringList>

#include <optional>

namespace rw::ui {

namespace {
struct MomentText {
    Q_DECLARE_TR_FUNCTIONS(MomentText)
};
constexpr std::chrono::minutes kWholeDay{24 * 60};

/// Which of the names `word` begins, from its second letter on; 1 is the first. Nothing when none, or several.
template<class NameOf>
std::optional<int> whichOf(const QString& word, int count, NameOf nameOf) {
    std::optional<int> found;
    for (int i = 1; i <= count; ++i) {
        if (word.size() >= 2 && nameOf(i).startsWith(word, Qt::CaseInsensitive)) {
            if (found) {
                return std::nullopt;
            }
            found = i;
        }
    }
    return found;
}

/// A day and a time, read word by word.
class Reader {
public:
    Reader(const QDate& today, const QLocale& locale)
        : m_today(today)
        , m_locale(locale) {}

    [[nodiscard]] bool read(const QString& text) {
        const QStringList words =
            text.split(QRegularExpression(QStringLiteral("[\\s,]+")), Qt::SkipEmptyParts);
        for (const QString& word : words) {
            if (!readTime(word) && !readDate(word) && !readName(word)) {
                return false;
            }
        }
        return !words.isEmpty() && (!m_month || m_day) && (!m_day || m_month);
    }

    [[nodiscard]] const std::optional<QTime>& time() const { return m_time; }
    [[nodiscard]] bool hasDate() const { return m_date || m_day || m_weekday; }
    /// The day that is meant; `todayIsOver`: a weekday that is today's is the one in a week.
    [[nodiscard]] QDate date(bool todayIsOver) const {
        if (m_date) {
            return *m_date;
        }
        if (m_day) {
            const QDate thisYear(m_year.value_or(m_today.year()), *m_month, *m_day);
            return m_year || thisYear >= m_today ? thisYear : QDate(m_today.year() + 1, *m_month, *m_day);
        }
        if (m_weekday) {
            const int days = (*m_weekday - m_today.dayOfWeek() + 7) % 7;
            return m_today.addDays(days == 0 && todayIsOver ? 7 : days);
        }
        return todayIsOver ? m_today.addDays(1) : m_today;
    }

private:
    bool readTime(const QString& word) {
        static const QRegularExpression clock(QStringLiteral("^(\\d{1,2}):(\\d{2})$"));
        const auto match = clock.match(word);
        const QTime time(match.captured(1).toInt(), match.captured(2).toInt());
        if (!match.hasMatch() || !time.isValid() || m_time) {
            return false;
        }
        m_time = time;
        return true;
    }

    bool readDate(const QString& word) {
        if (const QDate iso = QDate::fromString(word, Qt::ISODate); iso.isValid() && !hasDate()) {
            m_date = iso;
            return true;
        }
        static const QRegularExpression numbers(QStringLiteral("^(\\d{1,2})[./](\\d{1,2})[.]?$"));
        if (const auto match = numbers.match(word); match.hasMatch() && !m_day) {
            const bool monthFirst =
                m_locale.dateFormat(QLocale::ShortFormat).startsWith(QLatin1Char('M'), Qt::CaseInsensitive);
            m_day = match.captured(monthFirst ? 2 : 1).toInt();
            m_month = match.captured(monthFirst ? 1 : 2).toInt();
            return QDate(m_today.year(), *m_month, *m_day).isValid();
        }
        static const QRegularExpression yearAlone(QStringLiteral("^(20\\d{2})$"));
        if (const auto match = yearAlone.match(word); match.hasMatch() && m_month && !m_year) {
            m_year = match.captured(1).toInt();
            return true;
        }
        static const QRegularExpression dayAlone(QStringLiteral("^(\\d{1,2})[.]?$"));
        if (const auto match = dayAlone.match(word); match.hasMatch() && !m_day) {
            m_day = match.captured(1).toInt();
            return *m_day >= 1 && *m_day <= 31;
        }
        return false;
    }

    bool readName(const QString& word) {
        if (word.compare(MomentText::tr("today"), Qt::CaseInsensitive) == 0 && !hasDate()) {
            m_date = m_today;
            return true;
        }
        if (word.compare(MomentText::tr("tomorrow"), Qt::CaseInsensitive) == 0 && !hasDate()) {
            m_date = m_today.addDays(1);
            return true;
        }
        const auto month = whichOf(word, 12, [this](int i) { return m_locale.monthName(i); });
        if (month && !m_month && m_day) {
            m_month = month;
            return QDate(2024, *m_month, *m_day).isValid(); // a leap year: the 29th is a day
        }
        const auto weekday = whichOf(word, 7, [this](int i) { return m_locale.dayName(i); });
        if (weekday && !m_weekday) {
            m_weekday = weekday;
            return true;
        }
        return false;
    }

    QDate m_today;
    const QLocale& m_locale;
    std::optional<QTime> m_time;
    std::optional<QDate> m_date;
    std::optional<int> m_day;
    std::optional<int> m_month;
    std::optional<int> m_year;
    std::optional<int> m_weekday;
};

CivilDate civil(const QDate& date) {
    return std::chrono::year(date.year()) / date.month() / date.day();
}

std::chrono::minutes closingOn(const OpeningHours& hours, const QDate& date) {
    const auto open = hoursOn(hours, civil(date));
    return open ? open->to : kWholeDay;
}
} // namespace

Result<Instant> momentFromText(const QString& text, Instant now, const OpeningHours& hours, const QLocale& locale) {
    const CivilDate today = localDate(hours, now);
    Reader reader(QDate(static_cast<int>(today.year()), static_cast<int>(static_cast<unsigned>(today.month())),
                        static_cast<int>(static_cast<unsigned>(today.day()))),
                  locale);
    const auto unreadable = [&] {
        return refuse(Code::Unreadable, {{"what", std::string("time")}, {"text", text.toStdString()}});
    };
    if (!reader.read(text) || (!reader.hasDate() && !reader.time())) {
        return unreadable();
    }
    const auto minutesOn = [&](const QDate& date) {
        return reader.time() ? std::chrono::minutes(reader.time()->hour() * 60 + reader.time()->minute())
                             : closingOn(hours, date);
    };
    const QDate sooner = reader.date(false);
    if (!sooner.isValid()) {
        return unreadable();
    }
    const Instant first = toInstant(hours, civil(sooner), minutesOn(sooner));
    const QDate later = reader.date(true);
    const Instant wanted = first > now ? first : toInstant(hours, civil(later), minutesOn(later));
    if (wanted <= now) {
        return refuse(Code::ImpossibleValue, {{"key", std::string("must by")},
                                              {"text", text.toStdString()},
                                              {"expected", std::string("a time that is still to come")}});
    }
    return wanted;
}

} // namespace rw::ui
