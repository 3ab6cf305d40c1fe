// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/books/person_sheet.h"

#include "ui/text/format.h"
#include "ui/text/set_up_words.h"
#include "ui/widgets/calendar_edits.h"
#include "ui/widgets/choice.h"
#include "ui/widgets/margin_note.h"
#include "ui/widgets/refused_line.h"

#include <QStringList>
#include <QVBoxLayout>

#include <algorithm>

namespace rw::ui {

namespace {
constexpr std::size_t kOnFirstLine = 4;
}

PersonSheet::PersonSheet(QWidget* parent)
    : QWidget(parent)
    , m_sheet(new Sheet(this))
    , m_name(new QLineEdit(m_sheet))
    , m_strings(new Choice(m_sheet)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_sheet);
    m_sheet->setTight();
    m_name->setAccessibleName(tr("Name"));
    m_strings->setAccessibleName(tr("Strings rackets"));
    m_strings->addItem(tr("strings rackets"), true);
    m_strings->addItem(tr("does not string"), false);
    m_nameLine = m_sheet->addLine(tr("&Name"), {m_name, m_strings});
    QList<QWidget*> early;
    QList<QWidget*> late;
    for (std::size_t day = 0; day < m_hours.size(); ++day) {
        m_hours[day] = new HoursEdit(m_sheet);
        m_hours[day]->setMayBeBlank(true);
        m_hours[day]->setPlaceholderText(weekdayText(day));
        m_hours[day]->setAccessibleName(tr("Hours on %1").arg(QLocale().standaloneDayName(static_cast<int>(day) + 1)));
        (day < kOnFirstLine ? early : late) << m_hours[day];
    }
    m_earlyLine = m_sheet->addLine(tr("&Hours"), early);
    m_lateLine = m_sheet->addLine(QString(), late);
    m_off = new DaysEdit(m_sheet);
    m_off->setMayBeBlank(true);
    m_off->setAccessibleName(tr("Days off"));
    m_offLine = m_sheet->addLine(tr("&Away"), m_off);
    for (std::size_t day = 0; day < m_hours.size(); ++day) {
        (day < kOnFirstLine ? m_earlyLine : m_lateLine).note->watch(m_hours[day]);
    }
    m_offLine.note->watch(m_off);
    connect(m_off, &ValueEdit::valueChanged, this, &PersonSheet::showDays);
    setFocusProxy(m_name);
}

void PersonSheet::start(const desk::StaffMember& member) {
    m_member = member;
    m_name->setText(fromUtf8(member.name));
    m_strings->setCurrentIndex(m_strings->findData(member.strings));
    for (std::size_t day = 0; day < m_hours.size(); ++day) {
        m_hours[day]->setValue(member.worker.week ? member.worker.week->at(day) : std::nullopt);
    }
    m_off->setValue(member.worker.daysOff.empty() ? std::nullopt : std::optional(member.worker.daysOff));
    for (const auto& line : {m_nameLine, m_earlyLine, m_lateLine, m_offLine}) {
        line.note->clearAll();
    }
    m_nameLine.note->setNote(tr("promises count on who strings"));
    m_earlyLine.note->setNote(tr("Monday to Thursday, as 10-18"));
    m_lateLine.note->setNote(tr("all left blank: whenever the shop is open"));
    showDays();
    m_name->setFocus(Qt::OtherFocusReason);
    m_name->selectAll();
}

void PersonSheet::showDays() {
    const auto days = m_off->readable();
    const QString words = days ? daysOffText(*days, CivilDate{}) : QString();
    m_offLine.note->setNote(words.isEmpty() ? tr("2026-08-03 to 2026-08-14; nothing is promised on them") : words);
}

std::optional<WeekHours> PersonSheet::week() const {
    if (std::ranges::all_of(m_hours, &ValueEdit::isBlank)) {
        return std::nullopt;
    }
    WeekHours week;
    for (std::size_t day = 0; day < m_hours.size(); ++day) {
        week[day] = m_hours[day]->readable();
    }
    return week;
}

std::optional<desk::StaffMember> PersonSheet::member() {
    m_nameLine.note->setProblem({});
    for (std::size_t day = 0; day < m_hours.size(); ++day) {
        if (m_hours[day]->problem()) {
            (day < kOnFirstLine ? m_earlyLine : m_lateLine).note->sendBackTo(m_hours[day]);
            return std::nullopt;
        }
    }
    if (m_off->problem()) {
        m_offLine.note->sendBackTo(m_off);
        return std::nullopt;
    }
    desk::StaffMember member = *m_member;
    member.name = m_name->text().toStdString();
    member.strings = m_strings->currentData().toBool();
    member.worker.week = week();
    member.worker.daysOff = m_off->readable().value_or(std::vector<CivilDate>());
    return member;
}

void PersonSheet::showRefusal(const Refusal& why) {
    showBeside(why, {{"name", m_name, m_nameLine.note}, {"hours", m_hours[0], m_earlyLine.note}}, m_nameLine.note);
}

QString PersonSheet::margin() const {
    QStringList words;
    for (const auto& line : {m_nameLine, m_earlyLine, m_lateLine, m_offLine}) {
        words << line.note->text();
    }
    return words.join(QLatin1Char('\n'));
}

} // namespace rw::ui
