// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/books/tell_sheet.h"

#include "ui/model/job_line_model.h"
#include "ui/text/format.h"
#include "ui/text/sentences.h"
#include "ui/widgets/choice.h"
#include "ui/widgets/margin_note.h"

#include <QVBoxLayout>

namespace rw::ui {

TellSheet::TellSheet(QWidget* parent)
    : QWidget(parent)
    , m_sheet(new Sheet(this))
    , m_how(new Choice(m_sheet)) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_sheet);
    m_how->setAccessibleName(tr("How the customer was told"));
    m_how->addItem(tr("phone"), QStringLiteral("phone"));
    m_how->addItem(tr("message"), QStringLiteral("message"));
    m_how->addItem(tr("email"), QStringLiteral("email"));
    m_how->addItem(tr("in person"), QStringLiteral("in person"));
    setFocusProxy(m_how);
    m_line = m_sheet->addLine(tr("Told by"), m_how);
}

void TellSheet::start(const desk::OpenMatter& matter) {
    m_job = matter.job.id;
    QString whom = fromUtf8(matter.job.customer);
    if (!matter.job.phone.empty()) {
        whom += QStringLiteral(", ") + fromUtf8(matter.job.phone);
    }
    m_line.note->clearAll();
    m_line.note->setNote(tr("%1 of %2 is ready. Enter notes it, Esc goes back").arg(jobLineTitle(matter.job), whom));
    m_how->setFocus(Qt::OtherFocusReason);
}

QString TellSheet::how() const { return m_how->currentData().toString(); }

void TellSheet::showRefusal(const Refusal& why) { m_line.note->setProblem(sentenceFor(why)); }

} // namespace rw::ui
