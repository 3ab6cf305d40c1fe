// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/change_settings.h"
#include "ui/presenter/set_up_presenter.h"

#include <QString>

#include <vector>

namespace rw::ui {

/// The shop itself: its settings, one by one.
class ShopPresenter final : public SetUpPresenter {
    Q_OBJECT

public:
    ShopPresenter(DeskRunner& runner, Shift& shift, QObject* parent = nullptr);

    /// Those that the page shows, in its order.
    [[nodiscard]] const std::vector<desk::SettingText>& settings() const { return m_settings; }
    /// `seen`: the setting as it stood when somebody began to change it.
    void set(const desk::SettingText& seen, const QString& typed);

Q_SIGNALS:
    void kept(const rw::desk::SettingText& setting);

protected:
    void load() override;

private:
    std::vector<desk::SettingText> m_settings;
};

} // namespace rw::ui
