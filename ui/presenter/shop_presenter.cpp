// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/presenter/shop_presenter.h"

#include "ui/text/setting_words.h"

#include <algorithm>

namespace rw::ui {

namespace {
std::vector<desk::SettingText> inOrderOfThePage(const std::vector<desk::SettingText>& all) {
    std::vector<desk::SettingText> shown;
    for (const std::string_view name : settingsShown()) {
        const auto found = std::ranges::find(all, name, &desk::SettingText::name);
        if (found != all.end()) {
            shown.push_back(*found);
        }
    }
    return shown;
}
} // namespace

ShopPresenter::ShopPresenter(DeskRunner& runner, Shift& shift, QObject* parent)
    : SetUpPresenter(runner, shift, parent) {}

void ShopPresenter::load() {
    show([](desk::Transaction& ledger) { return desk::settingTexts(ledger); },
         [this](const std::vector<desk::SettingText>& all) { m_settings = inOrderOfThePage(all); });
}

void ShopPresenter::set(const desk::SettingText& seen, const QString& typed) {
    const desk::SettingChange change{seen.name, seen.value, typed.toStdString()};
    act(
        [change](desk::Transaction& ledger) -> Result<desk::SettingText> {
            if (const auto done = desk::changeSettings(ledger, {change}); !done) {
                return tl::unexpected<Refusal>(done.error());
            }
            const auto all = desk::settingTexts(ledger);
            if (!all) {
                return tl::unexpected<Refusal>(all.error());
            }
            return *std::ranges::find(*all, change.name, &desk::SettingText::name);
        },
        [this](const desk::SettingText& done) { Q_EMIT kept(done); });
}

} // namespace rw::ui
