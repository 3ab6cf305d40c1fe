// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/books/people_page.h"

#include "ui/books/person_sheet.h"
#include "ui/presenter/staff_presenter.h"
#include "ui/text/format.h"
#include "ui/text/set_up_words.h"

namespace rw::ui {

PeoplePage::PeoplePage(DeskRunner& runner, Shift& shift, QWidget* parent)
    : SetUpPage(tr("People"), tr("Who works here"), parent)
    , m_presenter(std::make_unique<StaffPresenter>(runner, shift))
    , m_sheet(new PersonSheet(this)) {
    addSheet(m_sheet);
    m_editKey = addKey(tr("Chan&ge"), enterKeys(), [this] { openCurrent(); });
    m_newKey = addKey(tr("Somebody &new"), {QKeySequence(Qt::Key_N)}, [this] { openNew(); });
    const auto retire = [this] { m_presenter->retire(m_presenter->staff()[static_cast<std::size_t>(currentRow())]); };
    m_retireKey = addCommand(tr("&Works here no more"), {QKeySequence(Qt::Key_R)}, retire);
    m_backKey = addCommand(tr("Is &back"), {QKeySequence(Qt::Key_B)}, retire);
    m_confirmKey = addCommand(tr("&Keep it"), enterKeys(), [this] { confirm(); });

    auto* presenter = m_presenter.get();
    connect(presenter, &StaffPresenter::changed, this, &PeoplePage::showStaff);
    connect(presenter, &StaffPresenter::kept, this, [this](const desk::StaffMember& member) {
        if (sheet() != nullptr) {
            closeSheet();
        }
        const QString name = fromUtf8(member.name);
        Q_EMIT said(member.retired ? tr("%1 works here no more, and stays in the history.").arg(name)
                                   : tr("%1 is kept. Promises from now on count on it.").arg(name));
    });
    connect(presenter, &StaffPresenter::refused, this, [this](const Refusal& why) { tellRefusal(why, m_sheet); });
    enableKeys();
}

PeoplePage::~PeoplePage() = default;

void PeoplePage::refresh() { m_presenter->open(); }

void PeoplePage::leave() { m_presenter->close(); }

void PeoplePage::showStaff() {
    std::vector<WordsRow> rows;
    for (const auto& member : m_presenter->staff()) {
        const QString does = member.strings ? tr("strings") : tr("does not string");
        rows.push_back({fromUtf8(member.name), personText(member, m_presenter->today()),
                        member.retired ? tr("◌ has left") : does});
    }
    const QString words = rows.empty() ? tr("Nobody works here yet. N adds who does.")
                                       : tr("Who strings, and when, is what promises are made from.");
    showRows(std::move(rows), words);
}

void PeoplePage::openNew() {
    if (m_newKey->isEnabled()) {
        openSheet(m_sheet);
        m_sheet->start({});
    }
}

void PeoplePage::openCurrent() {
    if (m_editKey->isEnabled()) {
        const auto& member = m_presenter->staff()[static_cast<std::size_t>(currentRow())];
        openSheet(m_sheet);
        m_sheet->start(member);
    }
}

void PeoplePage::enableKeys() {
    if (m_confirmKey == nullptr) {
        return;
    }
    const bool writing = sheet() != nullptr;
    const int row = currentRow();
    const bool chosen = !writing && row >= 0;
    const bool gone = chosen && m_presenter->staff()[static_cast<std::size_t>(row)].retired;
    m_confirmKey->setEnabled(writing);
    m_newKey->setEnabled(!writing && m_presenter->isLoaded());
    m_editKey->setEnabled(chosen);
    m_retireKey->setEnabled(chosen && !gone);
    m_backKey->setEnabled(gone);
    Q_EMIT keysChanged();
}

void PeoplePage::confirm() {
    if (const auto member = m_sheet->member()) {
        m_presenter->keep(*member);
    }
}

} // namespace rw::ui
