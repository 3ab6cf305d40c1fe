// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/books/machines_page.h"

#include "ui/books/machine_sheet.h"
#include "ui/presenter/machines_presenter.h"
#include "ui/text/format.h"
#include "ui/text/set_up_words.h"

namespace rw::ui {

MachinesPage::MachinesPage(DeskRunner& runner, Shift& shift, QWidget* parent)
    : SetUpPage(tr("Machines"), tr("What the shop strings on"), parent)
    , m_presenter(std::make_unique<MachinesPresenter>(runner, shift))
    , m_sheet(new MachineSheet(this)) {
    addSheet(m_sheet);
    m_editKey = addKey(tr("Chan&ge"), enterKeys(), [this] { openCurrent(); });
    m_newKey = addKey(tr("A &new machine"), {QKeySequence(Qt::Key_N)}, [this] { openNew(); });
    const auto retire = [this] {
        m_presenter->retire(m_presenter->machines()[static_cast<std::size_t>(currentRow())]);
    };
    m_retireKey = addCommand(tr("&Retire it"), {QKeySequence(Qt::Key_R)}, retire);
    m_backKey = addCommand(tr("&Bring it back"), {QKeySequence(Qt::Key_B)}, retire);
    m_confirmKey = addCommand(tr("&Keep it"), enterKeys(), [this] { confirm(); });

    auto* presenter = m_presenter.get();
    connect(presenter, &MachinesPresenter::changed, this, &MachinesPage::showMachines);
    connect(presenter, &MachinesPresenter::kept, this, [this](const desk::Machine& machine) {
        if (sheet() != nullptr) {
            closeSheet();
        }
        const QString name = fromUtf8(machine.name);
        Q_EMIT said(machine.retired ? tr("%1 is retired: the bench offers it no more.").arg(name)
                                    : tr("%1 is kept; the bench offers it.").arg(name));
    });
    connect(presenter, &MachinesPresenter::refused, this, [this](const Refusal& why) { tellRefusal(why, m_sheet); });
    enableKeys();
}

MachinesPage::~MachinesPage() = default;

void MachinesPage::refresh() { m_presenter->open(); }

void MachinesPage::leave() { m_presenter->close(); }

void MachinesPage::showMachines() {
    std::vector<WordsRow> rows;
    for (const auto& machine : m_presenter->machines()) {
        rows.push_back({fromUtf8(machine.name), machineDialText(machine), machine.retired ? tr("◌ retired") : QString()});
    }
    const QString words = rows.empty() ? tr("The shop has no machine yet. N adds one.")
                                       : tr("As many rackets are strung at once as there are machines and people.");
    showRows(std::move(rows), words);
}

void MachinesPage::openNew() {
    if (m_newKey->isEnabled()) {
        openSheet(m_sheet);
        m_sheet->start({.id = std::nullopt, .name = {}, .unit = TensionUnit::Pound});
    }
}

void MachinesPage::openCurrent() {
    if (m_editKey->isEnabled()) {
        const auto& machine = m_presenter->machines()[static_cast<std::size_t>(currentRow())];
        openSheet(m_sheet);
        m_sheet->start(machine);
    }
}

void MachinesPage::enableKeys() {
    if (m_confirmKey == nullptr) {
        return;
    }
    const bool writing = sheet() != nullptr;
    const int row = currentRow();
    const bool chosen = !writing && row >= 0;
    const bool retired = chosen && m_presenter->machines()[static_cast<std::size_t>(row)].retired;
    m_confirmKey->setEnabled(writing);
    m_newKey->setEnabled(!writing && m_presenter->isLoaded());
    m_editKey->setEnabled(chosen);
    m_retireKey->setEnabled(chosen && !retired);
    m_backKey->setEnabled(retired);
    Q_EMIT keysChanged();
}

void MachinesPage::confirm() {
    if (const auto machine = m_sheet->machine()) {
        m_presenter->keep(*machine);
    }
}

} // namespace rw::ui
