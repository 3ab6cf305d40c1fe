// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/refusal.h"
#include "core/desk/lot_care.h"
#include "ui/widgets/sheet.h"

#include <QComboBox>
#include <QLineEdit>
#include <QWidget>

#include <optional>

namespace rw::ui {

/// A lot leaves the shelf: into the bin or back to where it came from, and why.
class TakeOffStrip final : public QWidget {
    Q_OBJECT

public:
    explicit TakeOffStrip(QWidget* parent = nullptr);

    /// `tooShort`: an end that no job fits on, so the reason is there already and Enter is enough.
    void start(const Lot& lot, bool tooShort);
    [[nodiscard]] const std::optional<LotId>& lot() const { return m_lot; }
    [[nodiscard]] desk::LotLeaves how() const;
    [[nodiscard]] QString why() const { return m_why->text(); }
    void showRefusal(const Refusal& why);

    [[nodiscard]] QLineEdit* reason() const { return m_why; }

private:
    Sheet* m_sheet;
    QComboBox* m_how;
    QLineEdit* m_why;
    std::optional<LotId> m_lot;
    Sheet::Line m_howLine{};
    Sheet::Line m_whyLine{};
};

} // namespace rw::ui
