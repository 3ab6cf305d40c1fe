// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/refusal.h"
#include "ui/widgets/sheet.h"

#include <QLineEdit>
#include <QWidget>

namespace rw::ui {

/// Where the owner's PIN is typed so that what the shop paid is shown.
class PinSheet final : public QWidget {
    Q_OBJECT

public:
    explicit PinSheet(QWidget* parent = nullptr);

    void start(); ///< empty, with the keyboard on it
    /// What was typed; it does not stand there any longer.
    [[nodiscard]] QString take();
    void showWrong();
    void showRefusal(const Refusal& why);

    [[nodiscard]] QLineEdit* line() const { return m_pin; }
    [[nodiscard]] QString margin() const;

private:
    Sheet* m_sheet;
    QLineEdit* m_pin;
    Sheet::Line m_line{};
};

/// A line in which a PIN is typed: what stands there is seen by nobody.
[[nodiscard]] QLineEdit* makePinLine(const QString& accessibleName, QWidget* parent);

} // namespace rw::ui
