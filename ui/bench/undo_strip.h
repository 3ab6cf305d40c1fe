// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/desk/undo.h"

#include <QLabel>
#include <QWidget>

#include <optional>

namespace rw::ui {

/// Says what would be taken back; a second key does it.
class UndoStrip final : public QWidget {
    Q_OBJECT

public:
    explicit UndoStrip(QWidget* parent = nullptr);

    void start(const desk::LastDone& last);
    /// What it was opened for. Precondition: it was started.
    [[nodiscard]] const desk::LastDone& last() const { return *m_last; }
    void showRefusal(const Refusal& why);
    [[nodiscard]] QLabel* question() const { return m_what; }

private:
    std::optional<desk::LastDone> m_last;
    QLabel* m_what;
    QLabel* m_keys;
};

} // namespace rw::ui
