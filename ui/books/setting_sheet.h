// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/refusal.h"
#include "core/desk/change_settings.h"
#include "ui/widgets/sheet.h"

#include <QComboBox>
#include <QLineEdit>
#include <QWidget>

namespace rw::ui {

/// One setting of the shop, with what follows from it beside it. What it may say is the ledger's to judge.
class SettingSheet final : public QWidget {
    Q_OBJECT

public:
    explicit SettingSheet(QWidget* parent = nullptr);

    void start(const desk::SettingText& setting);
    [[nodiscard]] const desk::SettingText& seen() const { return m_seen; } ///< as it stood then
    [[nodiscard]] QString typed() const;
    void showRefusal(const Refusal& why);

    [[nodiscard]] QString margin() const;

private:
    [[nodiscard]] bool isChoice() const;

    desk::SettingText m_seen;
    Sheet* m_sheet;
    QLineEdit* m_text;
    QComboBox* m_side;
    Sheet::Line m_line{};
};

} // namespace rw::ui
