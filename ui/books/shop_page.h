// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "ui/books/set_up_page.h"
#include "ui/port/desk_runner.h"

#include <memory>

namespace rw::ui {

class SettingSheet;
class Shift;
class ShopPresenter;

/// "The shop": its name, its hours, and what its promises and cuts are made from.
class ShopPage final : public SetUpPage {
    Q_OBJECT

public:
    ShopPage(DeskRunner& runner, Shift& shift, QWidget* parent = nullptr);
    ~ShopPage() override;

    [[nodiscard]] QString name() const override { return tr("The shop"); }
    void refresh() override;
    void leave() override;

    [[nodiscard]] SettingSheet* settingSheet() const { return m_sheet; }

    void openCurrent();

protected:
    void enableKeys() override;

private:
    void showSettings();

    Shift& m_shift;
    std::unique_ptr<ShopPresenter> m_presenter;
    SettingSheet* m_sheet;
    QAction* m_editKey = nullptr;
    QAction* m_confirmKey = nullptr;
};

} // namespace rw::ui
