// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/refusal.h"
#include "core/stock/lot.h"
#include "ui/widgets/sheet.h"

#include <QLineEdit>
#include <QWidget>

#include <optional>

namespace rw::ui {

class LengthEdit;

/// Typing what is really on a reel, and why if somebody likes.
class CorrectStrip final : public QWidget {
    Q_OBJECT

public:
    explicit CorrectStrip(QWidget* parent = nullptr);

    void start(const Lot& lot);
    [[nodiscard]] const std::optional<LotId>& lot() const { return m_lot; }
    /// Shows what cannot be read; nothing then.
    std::optional<Length> measured();
    [[nodiscard]] QString why() const { return m_why->text(); }
    void showRefusal(const Refusal& why);

private:
    Sheet* m_sheet;
    LengthEdit* m_measured;
    QLineEdit* m_why;
    std::optional<LotId> m_lot;
    Sheet::Line m_line{};
    Sheet::Line m_whyLine{};
};

} // namespace rw::ui
