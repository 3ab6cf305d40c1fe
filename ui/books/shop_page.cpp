// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/books/shop_page.h"

#include "core/desk/settings.h"
#include "ui/books/setting_sheet.h"
#include "ui/presenter/shop_presenter.h"
#include "ui/text/setting_words.h"

#include <algorithm>

namespace rw::ui {

ShopPage::ShopPage(DeskRunner& runner, Shift& shift, QWidget* parent)
    : SetUpPage(tr("The shop"), tr("What the shop goes by"), parent)
    , m_shift(shift)
    , m_presenter(std::make_unique<ShopPresenter>(runner, shift))
    , m_sheet(new SettingSheet(this)) {
    addSheet(m_sheet);
    m_editKey = addKey(tr("Chan&ge"), enterKeys(), [this] { openCurrent(); });
    m_confirmKey =
        addCommand(tr("&Keep it"), enterKeys(), [this] { m_presenter->set(m_sheet->seen(), m_sheet->typed()); });

    auto* presenter = m_presenter.get();
    connect(presenter, &ShopPresenter::changed, this, &ShopPage::showSettings);
    connect(presenter, &ShopPresenter::kept, this, [this](const desk::SettingText& setting) {
        closeSheet();
        Q_EMIT said(tr("%1: %2.").arg(settingTitle(setting.name),
                                      settingText(setting.name, setting.value, m_shift.shop().currency)));
    });
    connect(presenter, &ShopPresenter::refused, this, [this](const Refusal& why) { tellRefusal(why, m_sheet); });
    enableKeys();
}

ShopPage::~ShopPage() = default;

void ShopPage::refresh() { m_presenter->open(); }

void ShopPage::leave() { m_presenter->close(); }

void ShopPage::showSettings() {
    std::vector<WordsRow> rows;
    for (const auto& setting : m_presenter->settings()) {
        // What is said seven times is not read: how hours are written stands beside the line that they are written in.
        const bool hours = std::ranges::find(desk::setting::kHours, setting.name) != desk::setting::kHours.end();
        rows.push_back({settingTitle(setting.name), hours ? QString() : settingHelp(setting.name),
                        settingText(setting.name, setting.value, m_shift.shop().currency)});
    }
    showRows(std::move(rows), tr("What is changed here holds from now on; jobs that are logged stay as they are."));
}

void ShopPage::openCurrent() {
    if (m_editKey->isEnabled()) {
        const auto setting = m_presenter->settings()[static_cast<std::size_t>(currentRow())];
        openSheet(m_sheet);
        m_sheet->start(setting);
    }
}

void ShopPage::enableKeys() {
    if (m_confirmKey == nullptr) {
        return;
    }
    const bool writing = sheet() != nullptr;
    m_confirmKey->setEnabled(writing);
    m_editKey->setEnabled(!writing && currentRow() >= 0);
    Q_EMIT keysChanged();
}

} // namespace rw::ui
